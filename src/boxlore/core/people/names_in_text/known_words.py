"""Whether a word is a common one of a language, by the dictionaries of `known_words_table`.

Rule kept: a dictionary says that a word is there; that nobody is meant by it, only the sentence does.
"""

from collections.abc import Collection, Iterator
from functools import cache

from boxlore.core.people.names_in_text.agreeing_words_table import AGREEING
from boxlore.core.people.names_in_text.known_words_table import KNOWN

NOUNS_WRITTEN_LARGE = "de nouns"


@cache
def words_known(language: str) -> frozenset[str]:
    """The common words of a language, folded; taken apart when it is first asked for, since they are many."""
    return frozenset(written_out(KNOWN.get(language, ""))).union(*(row.split() for row in AGREEING.get(language, ())))


def written_out(rows: str) -> Iterator[str]:
    """The words of a table that writes each without what it has in common with the one before."""
    before = ""
    for row in rows.split():
        before = before[: int(row[0])] + row[1:]
        yield before


def languages_with(folded: str, languages: Collection[str]) -> list[str]:
    """Those of the languages that have a word as they write it small."""
    return [language for language in languages if folded in words_known(language)]


def is_known_anywhere(folded: str) -> bool:
    """Whether a folded word is one of any of the languages."""
    return any(folded in words_known(language) for language in KNOWN)


def is_noun_in(folded: str, language: str) -> bool:
    """Whether it may be a noun or an adjective there; a German noun is written large."""
    return folded in words_known(language) or (language == "de" and folded in words_known(NOUNS_WRITTEN_LARGE))
