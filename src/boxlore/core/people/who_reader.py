"""Who is in a picture, and where: “Back row, left to right: Anna, my sister, and Tom; the girl in front is Ruth”, read.

Theory of operation
===================

The problem. People are told in one breath: several names, rows, sides, numbers, kin words and remarks, in any order
and in many languages. What is read must never make a person of a word that is none, and must lose nothing.

The idea. The text becomes elements (`position_tokens`): rows, directions, sides, numbers, marks, notes in brackets, the
small words between names, and plain words. A reader with a little state walks over them:

    text   = part {end part}                       ; ends: “;”, “.”, a new line
    part   = {place} [":"] item {("," / "and" / "with") item}
    place  = row / direction / side / number / ordinal ["from the left"]
    item   = [number] words [note] {place}

- A row stands until the next row, a direction until the next direction, a side or number for one item.
- If the first place of a part stands behind words (“Anna on the left, Ruth on the right”), all its places belong to
  the words before them; else to the words behind them.
- Plain words are gathered until an item ends, and are then looked at (`who_words`): a name, by `name_reader`; kin and a
  name (“my sister Anna”: Anna, noted as “my sister”); a remark on the name before it (“Anna, my sister, …”); a
  description of one person; somebody unknown. Anything else asks, and makes nobody.

- Somebody described and then named is one person (“the girl in front is Ruth”: Ruth, noted as “the girl”).

What always holds: every plain word ends in the words or the note of some person told, except those that only join
(`who_small_words_table`); nobody has a position below 0.

An example. “Anna, my sister, is third from the left” is three items, `Anna`, `my sister` and a place: the second is a
remark on the first, and the place belongs to the words before it. One person, at position 3.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from boxlore.core.people import position_words_table as table
from boxlore.core.people.name_reader import NOTHING_KNOWN, read_name
from boxlore.core.people.name_tokens import token_of
from boxlore.core.people.name_traditions import KnownNames
from boxlore.core.people.position_tokens import PLACES, ROW_KINDS, ROW_NAMES, Element, elements_of
from boxlore.core.people.positions import Placed
from boxlore.core.people.who_apposition import joined_to_names
from boxlore.core.people.who_items import end_item, noted
from boxlore.core.people.who_order import in_order
from boxlore.core.people.who_places import COLON, place_behind, put_place
from boxlore.core.people.who_remarks import begins_remark, is_absent, surely_named
from boxlore.core.people.who_shared import share_family
from boxlore.core.people.who_small_words_table import EVERYONE, HOLDING
from boxlore.core.people.who_state import Ahead, Reader
from boxlore.core.people.who_words import (
    before_place,
    begins_person,
    is_description,
    is_my,
    is_of_several,
    names_somebody,
    relation,
    share_kin,
    stands_for_me,
)


@dataclass(frozen=True, slots=True)
class WhoTold:
    """Everyone a text names, in the order told, by row and from the left; `placed` says whether it tells any place."""

    people: tuple[Placed, ...] = ()
    placed: bool = False


@lru_cache(maxsize=4096)
def read_who(text: str, known: KnownNames = NOTHING_KNOWN) -> WhoTold:
    """Everyone a text names with their places. Any text gives what can be made of it."""
    reader = Reader(text, known)
    elements = elements_of(text.strip())
    reader.text = text.strip()
    numbers = [element.inside[0].value for element in elements if _is_number(element)]
    reader.brackets_count = len(numbers) > 1 and sorted(numbers) == list(range(1, len(numbers) + 1))
    reader.brackets_lead = bool(elements) and _is_number(elements[0])
    for at, element in enumerate(elements):
        _take(reader, element, elements[at + 1 :])
    end_item(reader)
    items = joined_to_names(reader.items)
    share_family(items, known)
    return WhoTold(tuple(in_order(items, reader.rtl_groups, reader.totals)), reader.placed)


def _is_number(element: Element) -> bool:
    return element.kind == "note" and [piece.kind for piece in element.inside] == ["number"]


def forget_names() -> None:
    """Let go of every name that was read: a strike calls it, for they are told words."""
    read_who.cache_clear()
    read_name.cache_clear()
    token_of.cache_clear()


def one_by_one(text: str, known: KnownNames = NOTHING_KNOWN) -> list[str]:
    """The words of each person a text names, with what is noted of them in brackets; those not known are left out."""
    people = [person for person in read_who(text, known).people if person.words]
    return [f"{person.words} ({person.note})" if person.note else person.words for person in people]


# One element


def _take(reader: Reader, element: Element, further: Sequence[Element]) -> None:
    kind = _kind_here(reader, element, further)
    _take_as(reader, element, kind, further)
    reader.previous = "equals" if element.text == "=" else kind


def _take_as(reader: Reader, element: Element, kind: str, further: Sequence[Element]) -> None:
    following = further[0].kind if further else ""
    if kind in PLACES or kind in ("position", "from the right"):
        put_place(reader, replace(element, kind=kind), further)
    elif kind == "number":
        _number(reader, element, following)
    elif kind in ("comma", "and", "with", "end"):
        end_item(reader, before=kind, following=further)
        if element.kind in _SIDES:  # `Dot is to the left of Nora`
            reader.items[-1].side, reader.placed = element.kind, True
        elif element.kind == "verb" and reader.beside_side in _SIDES:
            reader.ahead.side, reader.beside_side = reader.beside_side, ""
        after_comma = kind == "and" and reader.previous == "comma"
        reader.after_posture = False
        if element.phrase in HOLDING:
            reader.ahead.is_beside = True
        reader.joined = "too" if after_comma else kind if kind in ("and", "with") else ""
        if element.kind == "end":
            reader.behind, reader.ahead, reader.side_stays, reader.family_stays = None, Ahead(), "", ""
            reader.part_begins, reader.part_absent = len(reader.items), False
    elif kind == "note":
        _note(reader, element)
    elif kind == "nextto":
        _next_to(reader, element)
    elif kind == "verb":
        _verb(reader, further)
    elif kind == "colon":
        if reader.words and further and begins_person(further) and _is_header(reader):
            _end_header(reader)
        elif reader.words and reader.joined == "and" and is_description(reader.words) and _describes_last(reader):
            end_item(reader)  # `the bride and groom: Anna and Joe`
    elif kind == "beside":
        reader.aside = [element]
    elif kind == "opens beside":
        reader.opens_beside, reader.ahead = True, Ahead()
        reader.beside_side = reader.previous if reader.previous in _SIDES else element.kind
        reader.placed = reader.placed or reader.beside_side in _SIDES
    elif reader.aside:
        reader.aside.append(element)
    elif kind not in ("dash", "hash", "of"):
        as_told = {"my": "my", "kin": "word"}.get(kind, element.kind)
        reader.words.append(replace(element, kind=as_told))
        if element.text == "?" and len(reader.words) > 1 and further:
            end_item(reader)


_SIDES = ("left", "right")


def _beside_somebody(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of an element of `Dot is to the left of Nora`, `in front of Nora is Dot`, `next to Nora is Dot`, where
    one is told beside another; an empty string for any other."""
    kinds = [following.kind for following in further[:2]]
    if element.plain == "of" and reader.previous in (*PLACES, "with", "opens beside") and further[:1]:
        return "of" if further[0].is_large and not reader.words else ""
    if element.kind == "verb" and reader.opens_beside and reader.words and begins_person(further):
        reader.opens_beside = False
        return "and"
    is_of = further[:1] != () and len(further) > 1 and further[0].plain == "of" and further[1].is_large
    opens = not reader.words and len(reader.items) == reader.part_begins
    if opens and element.kind == "with" and kinds[:1] == ["word"] and further[0].is_large:
        return "opens beside" if any(following.kind == "verb" for following in further[1:4]) else ""
    if element.kind in _SIDES and is_of:
        return "opens beside" if opens else "with"
    return ""


_ALSO_IS = ("ir",)
"""`is` of one language that is `and` of another one (Latvian, Lithuanian)."""


def _kind_here(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of an element where it stands: small words are plain words where nothing needs them."""
    kind = element.kind
    following = further[0] if further else None
    if kind in ROW_KINDS and element.plain in EVERYONE and following is not None and following.kind in ROW_KINDS:
        return "word"
    if kind in ("and", "with", "verb") and not reader.words and is_my(element) and further and relation(further[0]):
        return "my"
    if beside := _beside_somebody(reader, element, further):
        return beside
    if kind == "verb" and relation(element) and following is not None and following.is_large and not _describes(reader):
        return "kin"  # English, Swedish `son`, which is `are` in Spanish
    if kind != "me" and reader.joined and not reader.words and stands_for_me(element, further):
        return "me"
    if kind in PLACES and element.phrase in table.WEAK and not _is_head(element, further, reader):
        return "word"
    if (
        kind == "and"
        and not reader.words
        and element.plain in _ALSO_IS
        and begins_person(further)
        and _describes(reader)
    ):
        return "verb"
    if kind == "and" and reader.words and share_kin(reader.words[-1], further):
        return "word"
    if kind == "and":
        joins = following is not None and (reader.words or reader.items) and following.kind not in ("comma", "end")
        doubtful = len(element.text) == 1 and element.text not in "&+"
        return (
            "and"
            if joins and (not doubtful or ((reader.words or reader.previous in PLACES) and begins_person(further)))
            else "word"
        )
    if kind == "with":
        if following is not None and (reader.words or reader.items) and begins_person(further):
            return "with"
        return "beside" if reader.words and reader.words[0].is_large and len(element.text) > 2 else "word"
    if kind == "ordinal" and following is not None and not before_place(reader.words):
        goes_on = begins_person(further) and any(item.position > 0 for item in reader.items[reader.part_begins :])
        if following.kind == "colon" and reader.row in ROW_NAMES.values() and element.value in ROW_NAMES:
            return ROW_NAMES[element.value]  # `first row: …; second: …`
        if following.kind in ("verb", "colon") or goes_on:
            return "position"
    if kind == "verb":
        touches = following is not None and following.kind in (*PLACES, "position", "from the right", "colon", "verb")
        opens = not reader.words and bool(further) and begins_person(further)
        tells = begins_person(further) and _describes(reader) if further else False
        return "verb" if touches or opens or tells else "word"
    if kind == "dash" and (reader.words or (further and begins_person(further) and _describes(reader))):
        return "comma" if reader.words else "verb"
    if kind == "me" and reader.words and element.plain == "me" and following is not None:
        return "and" if following.is_large or relation(following) else "me"  # Māori: `Hēmi me Mere`
    if kind in ("ordinal", "row", "from_left", "from_right", "from_back", "from_front"):
        return "word"
    return kind


def _describes(reader: Reader) -> bool:
    """Whether what was told last describes somebody whom a name may follow: `the girl in front`."""
    if reader.words:
        return is_description(reader.words) or is_of_several(reader.words)
    return _describes_last(reader)


def _describes_last(reader: Reader) -> bool:
    return len(reader.items) > reader.part_begins and reader.items[-1].is_described


def _is_header(reader: Reader) -> bool:
    """Whether the words before a colon only open a list: they name nobody, or are words of which no name is known."""
    if not names_somebody(reader.words, reader.text):
        return True
    told = reader.text[reader.words[0].start : reader.words[-1].end]
    return not is_description(reader.words) and not surely_named(reader.words, told, reader.known)


def _end_header(reader: Reader) -> None:
    """The words that only open a list: they name nobody, and take no place in it."""
    if begins_remark(reader.words):  # `In the boat: Anna and Tom`
        reader.ahead.note = reader.text[reader.words[0].start : reader.words[-1].end]
        reader.words = []
        return
    already = len(reader.items)
    absent = is_absent(reader.words)
    end_item(reader, before="colon")
    reader.part_absent = absent
    for item in reader.items[already:]:
        item.width, item.is_name = 0, False
        asks = item.person.asks or f"Is “{item.person.words}” someone in the picture?"
        item.person = replace(item.person, is_person=False, asks=asks)


def _verb(reader: Reader, further: Sequence[Element]) -> None:
    """`is` between somebody described and a name: `the girl in front is Ruth`."""
    if further and begins_person(further) and _describes(reader):
        if reader.words and is_of_several(reader.words):
            _end_header(reader)
            return
        end_item(reader)
        reader.identifies = bool(reader.items)


def _next_to(reader: Reader, element: Element) -> None:
    """`next to her`, said of the words before it or behind it: on which side is not told, so that it is a note."""
    reader.words = before_place(reader.words)
    if reader.words:
        end_item(reader)
        reader.items[-1].person = noted(reader.items[-1].person, element.text)
        reader.items[-1].is_beside = True
    else:
        reader.ahead.note, reader.ahead.is_beside, reader.place_since = element.text, True, True


_POSTURES = ("verb", "standing", "seated", "kneeling", "lying")


def _is_head(element: Element, further: Sequence[Element], reader: Reader) -> bool:
    """Whether a row that is also a plain word is told as one: before a colon or a direction, or behind a name alone."""
    kinds = [following.kind for following in further[:2]]
    following = kinds[0] if kinds else ""
    if following in ("colon", "dash", *table.DIRECTIONS) or (
        kinds[1:] and following == "comma" and kinds[1] in table.DIRECTIONS
    ):
        return True
    if following == "note" and any(piece.kind in table.DIRECTIONS for piece in further[0].inside):
        return True
    if following in (*ROW_KINDS, *table.SIDES, "position", "from the right"):
        return True
    if not reader.words and following in ("my", "word") and not further[0].is_large and begins_person(further):
        return True
    if following == "verb":
        return not reader.words or reader.words[-1].plain in table.BEFORE_A_PLACE or is_description(reader.words)
    if reader.previous in _POSTURES and (reader.words or reader.items) and further and begins_person(further):
        return True  # `Fred stands behind Nell`: his row
    if reader.behind is False and not reader.words and following == "word" and further[0].is_large:
        return True
    ends = following in ("", "comma", "end", "and")
    return ends and bool(reader.words or reader.items) and len(element.text) > 1


def _number(reader: Reader, element: Element, following: str) -> None:
    """A number before a name begins an item; behind one it is a remark (`Anna, 5`)."""
    numbered = any(item.number for item in reader.items)
    if reader.words and not (numbered or reader.ahead.number):
        reader.words.append(replace(element, kind="word"))
        return
    if reader.previous == "equals" and not reader.words and reader.items and not reader.items[-1].number:
        reader.items[-1].number, reader.placed = element.value, True
        return
    if not reader.words and not numbered and reader.items and following in ("", "comma", "end", "and"):
        reader.words.append(replace(element, kind="word"))
        return
    end_item(reader)
    reader.ahead = Ahead(number=element.value)
    reader.placed = True


def _note(reader: Reader, element: Element) -> None:
    """A note in brackets is a place, a number, or a remark on the words before it."""
    if _is_number(element) and reader.brackets_count:
        reader.placed = True
        if reader.words and reader.brackets_lead:
            end_item(reader)
        if reader.words:
            end_item(reader)
            reader.items[-1].number = element.inside[0].value
        else:
            reader.ahead = Ahead(number=element.inside[0].value)
        return
    inside = [piece for piece in element.inside if piece.plain not in EVERYONE]
    if [piece.kind for piece in inside] == ["unknown"] and not reader.words:
        reader.words = inside
        return
    places = [piece for piece in inside if piece.kind in (*PLACES, "position", "from the right")]
    if places and len(places) == len([piece for piece in inside if piece.kind not in ("comma", "end")]):
        if not reader.words and not reader.items:
            for place in places:
                put_place(reader, place, (COLON,))
            return
        end_item(reader)
        reader.behind = True if reader.behind is None else reader.behind
        reader.placed = True
        for place in places:
            place_behind(reader, place, of_all=len(inside) < len(element.inside))
        return
    reader.notes.append(element)
