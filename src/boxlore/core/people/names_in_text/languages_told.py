"""Which languages a sentence may be of, so that a word of one decides nothing in a sentence of another.

Rule kept: a language is told by the words that a dictionary of it has, and once more by its small ones (`on`, `på`,
`les`). A sentence may be of each language that has more than half as many as the one that has most; where no word tells
anything, of every language.
Which words these are, and which things of one language are a verb or a small word in another, dictionaries say
(`agreeing_words_table`).

An example. In “Stark bar korgen” no small word stands, so that it may be Swedish, and `bar` what Stark did; in “Stark
bar by the window” two are English, and none is Swedish.
"""

from collections.abc import Collection, Sequence
from functools import cache, lru_cache

from boxlore.core.people.names_in_text.agreeing_words_table import DONE, SMALL
from boxlore.core.people.names_in_text.known_words import is_noun_in
from boxlore.core.people.names_in_text.text_normalising import Word

_SENTENCE_ENDS = frozenset('.!?\n"“”„«»')


@cache
def _small() -> dict[str, frozenset[str]]:
    return {language: frozenset(row.split()) for language, row in SMALL.items()}


@cache
def _done() -> dict[str, frozenset[str]]:
    return {language: frozenset(row.split()) for language, row in DONE.items()}


def languages_told(words: Sequence[Word], at: int) -> frozenset[str]:
    """By the sentence of a word, but for the word itself and the one behind it, which are in question."""
    counts = dict.fromkeys(_small(), 0)
    for beside in _sentence_around(words, at):
        if beside not in (at, at + 1):
            for language, told in _told_by(words[beside].folded):
                counts[language] += told
    most = max(counts.values())
    return frozenset(language for language, count in counts.items() if 2 * count > most or not most)


@lru_cache(1 << 13)
def _told_by(folded: str) -> tuple[tuple[str, int], ...]:
    """Each language that a word tells, and how much."""
    said = ((language, (folded in small) + is_noun_in(folded, language)) for language, small in _small().items())
    return tuple((language, told) for language, told in said if told)


def forget_languages() -> None:
    """Forget all words that were looked at: a strike calls it, by `forget_shapes`."""
    _told_by.cache_clear()


def is_any_told(languages: Collection[str]) -> bool:
    """Whether anything told these languages, so that they are not every one."""
    return len(languages) < len(_small())


def is_done_in(folded: str, languages: Collection[str]) -> bool:
    """Whether a thing of another language is what somebody does in one of these, or joins words."""
    return any(folded in done for language, done in _done().items() if language in languages)


def is_told_in_english(words: Sequence[Word], at: int) -> bool:
    """Whether English words decide what a word is: not where the one behind it is a verb in another language that the
    sentence may be of."""
    if at + 1 == len(words) or not words[at + 1].before.isspace():
        return True
    behind = words[at + 1].folded
    possible = [language for language, done in _done().items() if behind in done]
    return not possible or languages_told(words, at).isdisjoint(possible)


def joins_words_elsewhere(words: Sequence[Word], at: int) -> bool:
    """Whether the word behind is a small one in another language than English that the sentence may be of."""
    possible = languages_told(words, at) - {"en"}
    return any(words[at + 1].folded in small for language, small in _small().items() if language in possible)


def _sentence_around(words: Sequence[Word], at: int) -> range:
    first, last = at, at + 1
    while first and _SENTENCE_ENDS.isdisjoint(words[first].before):
        first -= 1
    while last < len(words) and _SENTENCE_ENDS.isdisjoint(words[last].before):
        last += 1
    return range(first, last)
