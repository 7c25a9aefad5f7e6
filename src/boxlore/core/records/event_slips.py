"""Slips in what is told of an event: “the week before the weding”, where a wedding is told.

A word that nobody knows is the nearest one of the told events, or of what such events are called; it is only ever asked
about. What a slip is stands in `core.dates.spelling`.
"""

from collections.abc import Container, Iterable, Iterator

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.dates.lexicon import PIECE, trie
from boxlore.core.dates.spelling import is_slip, repairs
from boxlore.core.people.life_event_words import ALONE, OWN, bare
from boxlore.core.records.events import FamilyEvent

FEWEST_LETTERS = 4
MOST_MENDED = 3


def mended(words: str, events: Iterable[FamilyEvent], names: Container[str]) -> Iterator[str]:
    """The words with the one of them mended that nobody knows and that may be a slip, as each word that may be meant;
    `names` are those of the family, in small letters, which are no slips."""
    told = nfc(words)
    unknown = [token for token in lex(told) if token.kinds == {"name"} and token.end - token.start >= FEWEST_LETTERS]
    slips = [(token, told[token.start : token.end].casefold()) for token in unknown]
    known: frozenset[str] = frozenset()
    for event in events:
        if event.edtf and event.own:
            known |= frozenset(PIECE.findall(bare(event.name)))
            known |= frozenset(piece for way in _ways(event.told_kind) for piece in PIECE.findall(way))
    for token, slip in slips:
        if slip not in names and slip not in known and slip not in trie().following:
            meant = sorted(
                word
                for word in known
                if len(word) >= FEWEST_LETTERS and (is_slip(slip, word) or _consonants(slip) == _consonants(word))
            )
            for word in meant[:MOST_MENDED]:
                yield f"{told[: token.start]}{word}{told[token.end :]}"
    yield from repairs(lex(told), told)  # “week befor the move”


def _consonants(word: str) -> str:
    """A word as who writes in haste has it, without its vowels: “marrd”."""
    return word[0] + word[1:].translate(_NO_VOWELS)


_NO_VOWELS = str.maketrans("", "", "aeiouy")


def _ways(kind: str) -> Iterator[str]:
    """How events of a kind are told by whom they happened to."""
    yield from (*ALONE.get(kind, ()), *OWN.get(kind, ()))
