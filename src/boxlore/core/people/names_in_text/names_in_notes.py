"""Every name that may stand in what is told beside a name: `Lou (who is Louisa Garrod)`, `the baker (Ann Pell)`.

Such words are a note of who somebody is, and part of no name. They may be the name of somebody living all the same, so
a row of words written large is sought in all other words, unless it plainly is none. What is none (all of this is of
our own): a lone English word or a time of the year that is nobody's given name, words for kin and titles before the
name, a place that was told as one or stands behind a small word for places (`from Tartu`).
"""

import re
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass

from boxlore.core.people.names.short_forms_table import TIMES
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import KIN_WORDS, PARTICLES, TITLES
from boxlore.core.people.names_in_text.ordinary_words import DOES, TOO_COMMON, is_english
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, Word, read_text

_BEFORE_PLACES = frozenset(
    "from in at near to on by aus im bei nach auf en a na w we z ze v ve do iz em i till från fra ur из в во на "
    "à dans sur nel nella in op te".split()
)
"""Small words that a place stands behind, and hardly ever a name."""
_IN = frozenset("in nel nella".split())
"""Those of them that no name stands behind: `in Florence`."""
_OF = frozenset("of de von van du di da av af".split())
"""The same where nothing stands before them in the note; behind a word of kin a name follows: `son of Tom`."""
_OTHERS = _OF | frozenset("with and med mit avec con com och und ja z ze s с и".split())
"""Words behind which somebody else is told."""
_INSIDE = re.compile(r"[(\[]([^()\[\]]*)")
_SHORTEST = 3
"""Letters of a word that is sought."""


@dataclass(frozen=True, slots=True)
class NameInNote:
    """A name that may stand in a note; `is_anothers` where the words tell of somebody else: `Olive's mother`."""

    words: str
    is_anothers: bool


def in_brackets(words: str) -> list[str]:
    """What stands in brackets."""
    return _INSIDE.findall(words)


def names_in_note(note: str, places: Collection[str] = ()) -> Iterator[NameInNote]:
    """Each row of words in a note that may be a name; `places` are names of places, folded."""
    words = read_text(note).words
    at = 0
    while at < len(words):
        end = at + 1
        while _is_large(words[at]) and end < len(words) and _goes_on(words, end):
            end += 1
        while words[end - 1].folded in PARTICLES and end - 1 > at:
            end -= 1
        if _is_large(words[at]) and (name := _name(words[at:end])) and not _is_a_place(words, at, end, places):
            told = note[name[0].start : name[-1].end]
            bare = APOSTROPHES.split(told)[0] if _is_whose(name[-1]) else told
            before = words[at - 1].folded if at else ""
            is_time = name[-1].folded in TIMES and words[end : end + 1] and words[end].folded.isdigit()
            if len(bare) >= _SHORTEST and not is_time:  # `May 1926`
                yield NameInNote(bare, _is_whose(name[-1]) or before in _OTHERS)
        at = end


def _is_large(word: Word) -> bool:
    return not word.spelled[0].islower() and word.spelled[0].isalpha()


def _goes_on(words: Sequence[Word], at: int) -> bool:
    """Whether a word is of the row before it: also a particle with a large word behind it, `Pieter de Wit`."""
    is_joined = words[at].before in (" ", "-", ". ") and not _is_whose(words[at - 1])
    leads = words[at].folded in PARTICLES and any(_is_large(word) for word in words[at + 1 : at + 3])
    return is_joined and (_is_large(words[at]) or leads)


def _is_whose(word: Word) -> bool:
    return len(APOSTROPHES.split(word.folded)) > 1 and APOSTROPHES.split(word.folded)[-1] in ("s", "")


def _name(row: Sequence[Word]) -> Sequence[Word]:
    """The words of a row that may be a name: without those of kin, and of a row that is not English as a whole
    without the English words before it."""
    start = next((at for at, word in enumerate(row) if word.folded not in KIN_WORDS), len(row))
    left = row[start:]
    named = next((at for at, word in enumerate(left) if not _is_no_name(word)), len(left))
    is_titled = any(word.folded in TITLES for word in left)
    if named == len(left):
        return left if len(left) > 1 else ()
    return left if is_titled and named else left[named:]


def _is_no_name(word: Word) -> bool:
    """Whether a word alone is nobody's name, as far as is known."""
    stem = APOSTROPHES.split(word.folded)[0]
    is_word = is_english(stem) or stem in TOO_COMMON | DOES or stem in TIMES or stem in TITLES or len(stem) < _SHORTEST
    return is_word and stem not in CALLED


def _is_a_place(words: Sequence[Word], at: int, end: int, places: Collection[str]) -> bool:
    """Whether the row is a place: told as one, or behind a small word; where it has no known given name."""
    before = words[at - 1].folded if at else ""
    if any(APOSTROPHES.split(word.folded)[0] in CALLED for word in words[at:end]):
        return before in _IN
    is_behind = before in _BEFORE_PLACES or (at == 1 and before in _OF)
    return is_behind or " ".join(word.folded for word in words[at:end]) in places
