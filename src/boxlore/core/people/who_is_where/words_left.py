"""Whether all words of an answer are held by the people and places made of it: what is not must be kept beside them.

In doubt a word is left, for an answer that is kept in vain harms nobody. A word is held

- in the words or the note of somebody told;
- as a mark, and as a word that only joins or leads, or says no more than that somebody is there (`is`, before what it
  is said of: `war` at the end is a noun);
- as one who is not known, if nothing but a place is told of that one (`to ukjente` are two, `teisi ei tea` others);
- as a doubt, if somebody told is a guess or asks;
- as a number, a direction or an order of people of whom places are known;
- as a row that somebody has a place in, and as a side that a number tells too (a centre needs one on each side), where
  the words are those for it and no more: `far right`, `standing behind her` say more. So do a word that holds
  (`süles`), a preposition that tells where (`between`), and where an order begins (`clockwise from top left`).
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.labels import ROMANS
from boxlore.core.people.who_is_where.tokens import PLACES, ROW_KINDS, Element, elements_of
from boxlore.core.people.who_is_where.written_out import MIDDLE, Placed
from boxlore.core.statements import fold

_MARKS = ("comma", "end", "colon", "dash")
_STRUCTURE = (*_MARKS, "hash", "of", "and", "filler")
_TELLS_PLACES = (*PLACES, "number", "ordinal", "position", "from the right", "position before", "row", "from_left")
_LEADS = small_words.LEADS.union(small_words.ARTICLES, small_words.EVERYONE, small_words.WITH) - small_words.SAY_HOW
_IN_THE_MIDDLE = 3
"""How many stand in a row of which a number tells the centre."""


@dataclass(frozen=True, slots=True)
class _Held:
    """What the people made of an answer hold: their words, the rows in which somebody has a place and how many stand
    there, and whether one of them is in doubt."""

    words: frozenset[str]
    rows: Counter[str]
    in_doubt: bool


def leaves_words(text: str, people: Sequence[Placed], *, placed: bool) -> bool:
    """Whether the answer has words that neither somebody told of these people nor a place holds."""
    told = " ".join(f"{person.words} {person.note}" for person in people if person.words)
    rows = Counter(person.row for person in people if person.position) if placed else Counter[str]()
    in_doubt = any(person.unsure or person.asks for person in people)
    return _any_left(elements_of(text.strip()), _Held(frozenset(words_in(told)), rows, in_doubt))


def _any_left(elements: Sequence[Element], held: _Held) -> bool:
    """Whether one of the elements is not held, those in brackets too."""
    for at, element in enumerate(elements):
        if element.inside:
            if _any_left(element.inside, held):
                return True
        elif not (held.words.issuperset(words_in(element.text)) or _is_held(elements, at, held)):
            return True
    return False


def _is_held(elements: Sequence[Element], at: int, held: _Held) -> bool:
    element = elements[at]
    if element.kind in _STRUCTURE or (element.plain in _LEADS and element.kind != "verb"):
        return True
    if element.kind == "unknown":
        return _is_alone(elements, at)
    if element.kind in ("unsure", "or"):
        return held.in_doubt
    if element.kind == "verb":
        return (
            small_words.IS.issuperset(element.plain.split())
            and at + 1 < len(elements)
            and elements[at + 1].kind not in _MARKS
        )
    return _is_held_by_a_place(element, held.rows)


def _is_alone(elements: Sequence[Element], at: int) -> bool:
    """Whether nothing but a place is told of one who is not known."""
    sides = (elements[at + 1 :], elements[:at][::-1])
    return all(_begins_with_places(side) for side in sides)


def _begins_with_places(elements: Sequence[Element]) -> bool:
    for element in elements:
        if element.kind in _STRUCTURE:
            return True
        if element.kind not in (*PLACES, "number", "note", "with", "unsure") and element.plain not in _LEADS:
            return False
    return True


def _is_held_by_a_place(element: Element, rows: Counter[str]) -> bool:
    if element.kind in (*ROW_KINDS, *table.SIDES) and not _says_only_where(element):
        return False
    if element.kind in ROW_KINDS:
        return element.kind in rows
    if element.kind == "centre":
        return MIDDLE in rows or any(count >= _IN_THE_MIDDLE for count in rows.values())
    tells = element.kind in _TELLS_PLACES and not (element.kind in table.ORDERS and " " in element.text)
    return tells and bool(rows)


def _says_only_where(element: Element) -> bool:
    """Whether the phrase is made of the words for its row or side, and of small words without emphasis, alone."""
    stems = _STEMS.get(element.kind, ()) + _COUNTED
    words = [word for word in words_in(element.text) if word not in _WORDS.get(element.kind, _SMALL) | _SMALL]
    return all(word.startswith(stems) or word[0].isdigit() or word.upper() in ROMANS for word in words)


def words_in(text: str) -> list[str]:
    """The words of a text, folded, without marks."""
    apart = "".join(letter if letter.isalnum() else " " for letter in fold(text))
    return apart.split()


_WORDS: dict[str, frozenset[str]] = {}
"""Of each row and side the words that are one by themselves: `front` of `in the front row`."""
for _kind, _phrase in table.PLACE_PHRASES:
    if " " not in _phrase:
        _WORDS[_kind] = _WORDS.get(_kind, frozenset()).union(words_in(_phrase))

_WORDS["centre"] |= _WORDS["middle"]
_STEMS = {
    kind: tuple(word.rstrip("*") for place, word in table.PLACE_PHRASES if place == kind and word.endswith("*"))
    for kind in _WORDS
}
for _kind, _adjectives in table.ROW_ADJECTIVES:
    _STEMS[_kind] += _adjectives
_COUNTED = tuple(word.rstrip("*") for _, word in table.ORDINALS)
_FROM = ("from_left", "from_right", "from_back", "from_front")
_SMALL = table.BEFORE_A_PLACE | _WORDS["row"] | small_words.BEFORE_A_SIDE | frozenset(small_words.CARDINALS)
_SMALL |= {word for kind, phrase in table.PLACE_PHRASES if kind in _FROM for word in words_in(phrase)}
_SMALL -= small_words.EMPHASIS
