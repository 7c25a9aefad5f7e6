"""Somebody told by whom they stand beside: `Next to Annie stands Piet Bos`, `Left of Lena: Ned`.

    clause = {row} [posture] head anchors is somebody / {row} head anchor doing somebody
    head    = ("next to" / "with") / side ("of" / "next to") / ("behind" / "in front") ["of"]
            / "beside" ["of" / "with"]                      ; a word that may stand alone (`bredvid`, `рядом с`)
    anchors = anchor {"and" anchor}                         ; `between Ada and Florrie`
    anchor  = ["the" / "my"] word {word}
    doing   = small word {small word}                         ; a verb that no table has: `Behind Nora hides Dot`
    is      = (verb / posture) [verb / posture] / ":" / "," / "-"     ; "," and "-" only where the head has an `of`

A clause begins where a part begins: at the start, and behind a mark, `and` or a row. Whoever is the anchor is in the
picture too, and is another person: no family name and no word of kin that is told behind the verb is hers. The head
and what stands for `is` are marked as one element each (`beside head`, `beside is`); the reader takes the rest as it
takes all people. Words that are not wholly so are no clause, and stay as they are.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.words_table import TITLES
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.before_things import is_before_a_thing
from boxlore.core.people.who_is_where.item_words import begins_person
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    BEFORE_IN_A_CASE,
    BEFORE_WHOM,
    BESIDE_SEVERAL,
    OF,
    SIDE_OF,
    WITH,
)
from boxlore.core.people.who_is_where.tokens import MARKERS_OF_NAMES, ROW_KINDS, Element

BESIDE_SIDES = ("left", "right")
POSTURES = table.ROW_CLASSES[3:]
_IS = ("verb", *POSTURES)
_BEGIN = ("comma", "end", "colon", "and", "dash", *ROW_KINDS)
_ANCHOR = ("word", "my", "me", "and", "of", "note")
_LONGEST = 9
_OF = SIDE_OF | OF


@dataclass(frozen=True, slots=True)
class _Head:
    """The head of a clause: from which element it goes, and behind which it ends."""

    begins: int
    end: int
    of: bool = False
    """Whether a word for `of` stands in it, so that a comma may stand for `is`."""
    between: bool = False
    """Whether it is told of two: `between`."""


def with_beside(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, the head of each clause and what stands for `is` marked."""
    marked: list[Element] = []
    at = 0
    while at < len(elements):
        begins = at == 0 or elements[at - 1].kind in _BEGIN
        lead = int(elements[at].kind in POSTURES and at + 1 < len(elements))  # `sitting next to Mum`
        head = _head(elements, at + lead) if begins else None
        spot, behind = _is(elements, head) if head else (0, 0)
        if head and spot:
            first, last = elements[at], elements[head.end - 1]
            kind = elements[head.begins].kind
            side = kind if kind in BESIDE_SIDES else ""
            told = text[first.start : last.end]
            marked.append(replace(last, kind="beside head", text=told, start=first.start, value=_SIDES.index(side)))
            marked += elements[head.end : spot]
            marked.append(replace(elements[spot], kind="beside is"))
            at = behind
        else:
            marked.append(elements[at])
            at += 1
    return marked


_SIDES = ("", *BESIDE_SIDES)


def side_of(head: Element) -> str:
    """On which side of the anchor a head says that somebody stands; empty where it says none."""
    return _SIDES[head.value]


def _head(elements: Sequence[Element], at: int) -> _Head | None:
    """The head that begins here; None where none does."""
    first, further = elements[at], elements[at + 1 : at + 2]
    of = bool(further) and further[0].plain in _OF and not further[0].is_large
    with_too = bool(further) and further[0].kind == "with" and further[0].phrase not in table.HOLDING
    if first.kind == "with" and first.phrase not in table.HOLDING:
        return _Head(at, at + 1, between=first.plain in BESIDE_SEVERAL - WITH)
    if first.kind in BESIDE_SIDES and (of or with_too):
        return _Head(at, at + 2, of)
    if first.kind in ("front", "back") and first.phrase in BEFORE_WHOM:
        if is_before_a_thing(elements[at + 1 :]):
            return None  # `Vor der Kirche: …`
        return _Head(at, at + 1 + of, of)
    if first.kind == "word" and first.plain in BEFORE_IN_A_CASE:
        return _Head(at, at + 1)  # `За бабушкой стоит …`
    if first.kind == "nextto":
        return _Head(at, at + 1 + (of or with_too), of)
    return None


def _is(elements: Sequence[Element], head: _Head) -> tuple[int, int]:
    """Where what stands for `is` stands behind the anchors of a head, and where somebody is told behind it; two noughts
    where it is no clause."""
    at = head.end
    while at < len(elements) and at - head.end < _LONGEST and (elements[at].kind in _ANCHOR or _is_small(elements[at])):
        at += 1
    anchors, behind = elements[head.end : at], at + 1
    if not anchors or not _is_anchor(anchors):
        return 0, 0
    if does := _does(anchors):
        return head.end + does[0], head.end + does[1]
    if behind >= len(elements):
        return 0, 0
    is_verb = elements[behind].kind in _IS
    if is_verb and elements[at].kind in (*_IS, "comma"):  # `est assis`, `À côté de papa, c'est …`
        behind += 1
    between = head.between and any(piece.kind == "and" for piece in anchors)  # `Entre Rosa y Blas, Nuria`
    may_be_comma = is_verb or head.of or between or _is_behind_a_posture(elements, head)  # `sitting next to Mum, Reg`
    joins = elements[at].kind in (*_IS, "colon") or (elements[at].kind in ("comma", "dash") and may_be_comma)
    return (at, behind) if joins and begins_person(elements[behind:]) else (0, 0)


def _is_behind_a_posture(elements: Sequence[Element], head: _Head) -> bool:
    return head.begins > 0 and elements[head.begins - 1].kind in POSTURES


def _does(words: Sequence[Element]) -> tuple[int, int] | None:
    """Where the small words of `maman se cache le petit Louis` begin, and where somebody is told behind them; None for
    words that are not so."""
    names = [at for at, word in enumerate(words) if word.is_large or relation(word)]
    if not names:
        return None
    first = names[0] + 1
    while first < len(words) and (words[first].is_large or token_of(words[first].text).is_particle):
        first += 1
    behind = first
    while behind < len(words) and _is_small(words[behind]) and not begins_person(words[behind:]):
        behind += 1
    return (first, behind) if first < behind < len(words) and behind - first <= _MOST_WORDS_OF_A_VERB else None


def _is_small(word: Element) -> bool:
    """A word that may be of a verb: `se` of `se cache` too, which is `with` of another language."""
    is_marker = word.text.endswith(".") or word.plain in MARKERS_OF_NAMES  # `Kari Nygård f. Haugen`
    return (word.kind == "word" and not is_marker) or word.text == "se"


_MOST_WORDS_OF_A_VERB = 3


def _is_anchor(words: Sequence[Element]) -> bool:
    """Whether each of the words between two `and` begins with somebody: a name, or kin behind an article or `my`."""
    first = words[0]
    is_somebody = first.kind in ("my", "me") or first.is_large or first.plain in ARTICLES or bool(relation(first))
    is_somebody = is_somebody or first.plain in TITLES  # `Ved siden af fru Bruun`
    return is_somebody and begins_person(words) and words[-1].kind not in ("and", "of")
