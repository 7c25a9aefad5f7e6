"""Whether a word of every day, written large because a sentence begins with it, is a thing by what is told of it.

Rule kept: what follows must be told of things alone (`things_told_table`): what waters, plants and seasons do or have
done to them (`Oja voolas läbi karjamaa.`), what hills, roads and seasons are (`Mäki oli jyrkkä`), or that several are
something, where a family would have its article (`Summers were short`). `Sepp naeris` is a question, and `Mäki oli
iloinen`. It is told in a language that the small words around tell of, in which the word is one.
"""

from collections.abc import Collection, Sequence
from functools import cache

from boxlore.core.people.names_in_text.known_words import is_noun_in
from boxlore.core.people.names_in_text.text_normalising import Word
from boxlore.core.people.names_in_text.things_told_table import ANY_BETWEEN, ARE, DO, VERY, WAS, WERE

_MOST_BETWEEN = 3
"""Words that may stand before what a thing is: `oli lapsele liiga järsk`."""
_TABLES = {"do": DO, "are": ARE, "was": WAS, "were": WERE, "very": VERY}


@cache
def _rows(table: str, language: str) -> tuple[frozenset[str], tuple[str, ...]]:
    """The words of one row, and the beginnings of words."""
    row = _TABLES[table].get(language, "").split()
    whole = frozenset(word for word in row if not word.endswith("-"))
    return whole, tuple(word.removesuffix("-") for word in row if word.endswith("-"))


def _is_in(folded: str, table: str, language: str) -> bool:
    whole, beginnings = _rows(table, language)
    return folded in whole or folded.startswith(beginnings)


def is_copula(folded: str, language: str) -> bool:
    """Whether a word stands between something and what it is."""
    return _is_in(folded, "was", language)


def is_thing_by_what_is_told(words: Sequence[Word], at: int, languages: Collection[str]) -> bool:
    """Whether what stands behind a word that begins a sentence is told of things alone in one of these languages."""
    behind = _behind(words, at)
    if not behind:
        return False
    return any(
        is_noun_in(words[at].folded, language)
        and (
            _is_in(behind[0], "do", language)
            or _is_in(behind[0], "were", language)
            or _is_in(behind[0], "are", language)
            or (_is_in(behind[0], "was", language) and _is_so(behind[1:], language))
        )
        for language in languages
    )


def _is_so(told: Sequence[str], language: str) -> bool:
    """Whether a quality of things is told, and before it no more than how much: not `was on the steep path`."""
    for folded in told:
        if _is_in(folded, "are", language):
            return True
        if language not in ANY_BETWEEN and not _is_in(folded, "very", language):
            return False
    return False


def _behind(words: Sequence[Word], at: int) -> list[str]:
    """The small words right behind, as far as no stop parts them."""
    folded: list[str] = []
    last = at + 1 + _MOST_BETWEEN
    for word, after in zip(words[at + 1 : last + 1], (*words[at + 2 : last + 2], None), strict=False):
        is_half = after is not None and after.before == "-"
        if word.before != " " or word.spelled[0].isupper() or is_half:
            break
        folded.append(word.folded)
    return folded
