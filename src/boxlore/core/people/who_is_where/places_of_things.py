"""Where a place is told of a thing, and is no row and no side of the picture: `in the back seat`, `on the front step`.

    thing = [small words] ("front" / "back" / "left" / …) noun {noun}    ; written small, and no word of people
          / [small words] ("front" / "back" / …) "of the" noun          ; but not `of the picture`
    depth = side "from the front" ":"                              ; an order into the picture, which no number tells

The whole phrase is kept as it was told, as a note of whoever it is told of (`where`): a part of it tells no place. A
word that goes on with a sentence is no noun: one that does something (`the one at the back wearing a hat`), that says
how (`only`), or that leads to somebody (`with`).
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.position_words_table import BEFORE_A_NAME, NOUNS, SIDES
from boxlore.core.people.who_is_where.tokens import PLACES, Element, each_as_one, over

_OF_A_THING = ("front", "back", "rear", "top", "bottom", "left", "right", "middle", "side")
"""Words of a place in English that stand before a noun as they stand alone; elsewhere they change, or join it."""

_ENDS = ("comma", "end", "colon", "and", "dash", "my")
_NO_NOUN = ("ing", "ed", "ly", "wards", "most")
_SHORTEST = 3


def with_places_of_things(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, each such phrase as one."""
    return each_as_one(elements, _end, lambda told: replace(over(told[0], told, text), kind="where"))


def _end(elements: Sequence[Element], at: int) -> int:
    """Behind the phrase that begins here; 0 where none does."""
    length = _length(elements[at], elements[at + 1 :]) if elements[at].kind in PLACES else 0
    return at + length if length else 0


def _length(first: Element, behind: Sequence[Element]) -> int:
    """How many elements the phrase takes that begins with the first; 0 for none."""
    if not behind:
        return 0
    if first.kind in SIDES and [piece.kind for piece in behind[:2]] in (
        ["from_front", "colon"],
        ["from_back", "colon"],
    ):
        return 2
    if first.plain.split()[-1] not in _OF_A_THING:
        return 0
    if of_what := _of_a_thing(behind):
        return 1 + of_what
    things = next((at for at, piece in enumerate(behind) if not _is_thing(piece)), len(behind))
    return 1 + things if 0 < things < _MOST_NOUNS and _ends(behind[things:], behind[things - 1]) else 0


_MOST_NOUNS = 3


def _of_a_thing(behind: Sequence[Element]) -> int:
    """How many elements `of the table` takes; 0 for none, and for the picture itself."""
    is_led = len(behind) > 2 and behind[0].plain == "of" and behind[1].plain in small_words.THE
    is_thing = is_led and _is_thing(behind[2]) and behind[2].plain not in _PICTURES
    return 3 if is_thing and _ends(behind[3:], behind[2]) else 0


_PICTURES = frozenset("picture photo photograph image print group row line".split())


def _is_thing(word: Element) -> bool:
    plain = word.plain
    is_noun = word.kind == "word" and word.text.islower() and len(plain) >= _SHORTEST and plain in english_words()
    is_somebody = bool(relation(word)) or NOUNS.get(plain, "thing") != "thing" or plain in _SMALL
    return is_noun and not is_somebody and not plain.endswith(_NO_NOUN)


def _ends(behind: Sequence[Element], noun: Element) -> bool:
    """Whether the noun ends its phrase; one that may be a verb (`holds`) only before a mark."""
    if not behind:
        return True
    at_mark = behind[0].kind in _ENDS
    opens_somebody = behind[0].is_large or behind[0].plain in small_words.ARTICLES
    return at_mark or (opens_somebody and not noun.plain.endswith("s"))


_SMALL = frozenset().union(
    small_words.LEADS,
    small_words.WITH,
    small_words.OF,
    small_words.EVERYONE,
    small_words.BEGIN_A_REMARK,
    small_words.NOT_IN_IT,
    small_words.RELATIVES,
    small_words.CARDINALS,
    small_words.SUBJECTS,
    BEFORE_A_NAME,
)
