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

What always holds: every plain word ends in the words or the note of some person told; nobody has a position below 0.

An example. “Anna, my sister, is third from the left” is three items, `Anna`, `my sister` and a place: the second is a
remark on the first, and the place belongs to the words before it. One person, at position 3.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from dataclasses import field as starts
from functools import lru_cache

from boxlore.core.people import position_words_table as table
from boxlore.core.people.name_reader import NOTHING_KNOWN, read_name
from boxlore.core.people.name_tokens import token_of
from boxlore.core.people.name_traditions import KnownNames
from boxlore.core.people.name_words_table import TITLES
from boxlore.core.people.position_tokens import PLACES, ROW_KINDS, Element, elements_of
from boxlore.core.people.positions import Placed
from boxlore.core.people.who_order import Item, in_order
from boxlore.core.people.who_words import begins_person, between, is_remark, person_named


@dataclass(frozen=True, slots=True)
class WhoTold:
    """Everyone a text names, in the order told, by row and from the left; `placed` says whether it tells any place."""

    people: tuple[Placed, ...] = ()
    placed: bool = False


@dataclass(slots=True)
class _Ahead:
    """A place told before the words that it belongs to."""

    number: int = 0
    position: int = 0
    side: str = ""
    side_words: str = ""
    note: str = ""


@dataclass(slots=True)
class _Reader:
    """The state while one text is read."""

    text: str
    known: KnownNames
    items: list[Item] = starts(default_factory=list)
    words: list[Element] = starts(default_factory=list)
    notes: list[Element] = starts(default_factory=list)
    aside: list[Element] = starts(default_factory=list)
    """What somebody has with them: “with her dog”."""
    ahead: _Ahead = starts(default_factory=_Ahead)
    row: str = ""
    backwards: bool = False
    group: int = 0
    rtl_groups: set[int] = starts(default_factory=set)
    side_stays: str = ""
    behind: bool | None = None
    """Whether places of this part stand behind the words; None until the first one."""
    part_begins: int = 0
    joined: bool = False
    """Whether “and” stood before the item that is gathered."""
    placed: bool = False
    brackets_count: bool = False
    """Whether numbers in brackets are those of the people: 1 and on, each once."""


@lru_cache(maxsize=4096)
def read_who(text: str, known: KnownNames = NOTHING_KNOWN) -> WhoTold:
    """Everyone a text names with their places. Any text gives what can be made of it."""
    reader = _Reader(text, known)
    elements = elements_of(text.strip())
    reader.text = text.strip()
    numbers = [element.inside[0].value for element in elements if _is_number(element)]
    reader.brackets_count = len(numbers) > 1 and sorted(numbers) == list(range(1, len(numbers) + 1))
    for at, element in enumerate(elements):
        _take(reader, element, elements[at + 1 :])
    _end_item(reader)
    return WhoTold(tuple(in_order(reader.items, reader.rtl_groups)), reader.placed)


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


def _take(reader: _Reader, element: Element, further: Sequence[Element]) -> None:
    following = further[0].kind if further else ""
    kind = _kind_here(reader, element, further)
    if kind in PLACES or kind in ("position", "from the right"):
        _place(reader, replace(element, kind=kind), following)
    elif kind == "number":
        _number(reader, element, following)
    elif kind in ("comma", "and", "with", "end"):
        _end_item(reader, before=element.kind, following=further)
        reader.joined = element.kind in ("and", "with")
        if element.kind == "end":
            reader.behind, reader.ahead, reader.side_stays = None, _Ahead(), ""
            reader.part_begins = len(reader.items)
    elif kind == "note":
        _note(reader, element)
    elif kind == "beside":
        reader.aside = [element]
    elif reader.aside:
        reader.aside.append(element)
    elif kind not in ("colon", "dash", "hash", "verb"):
        reader.words.append(element)
        if element.text == "?" and len(reader.words) > 1 and further:
            _end_item(reader)


def _kind_here(reader: _Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of an element where it stands: small words are plain words where nothing needs them."""
    kind = element.kind
    following = further[0] if further else None
    if kind in PLACES and element.phrase in table.WEAK and not _is_head(element, further, reader):
        return "word"
    if kind == "and":
        joins = following is not None and (reader.words or reader.items) and following.kind not in ("comma", "end")
        doubtful = len(element.text) == 1 and element.text not in "&+"
        return "and" if joins and (not doubtful or (reader.words and begins_person(further))) else "word"
    if kind == "with":
        if following is not None and (reader.words or reader.items) and begins_person(further):
            return "with"
        return "beside" if reader.words and reader.words[0].is_large and len(element.text) > 2 else "word"
    if kind == "ordinal" and following is not None and following.kind in ("verb", "colon") and not reader.words:
        return "position"
    if kind == "verb":
        touches = following is not None and following.kind in (*PLACES, "position", "from the right", "colon", "verb")
        opens = not reader.words and bool(further) and begins_person(further)
        return "verb" if touches or opens else "word"
    if kind == "dash" and reader.words:
        return "comma"
    if kind in ("ordinal", "row", "from_left", "from_right"):
        return "word"
    return kind


def _is_head(element: Element, further: Sequence[Element], reader: _Reader) -> bool:
    """Whether a row that is also a plain word is told as one: before a colon or a direction, or behind a name alone."""
    kinds = [following.kind for following in further[:2]]
    following = kinds[0] if kinds else ""
    if following in ("colon", "dash", *table.DIRECTIONS) or (
        kinds[1:] and following == "comma" and kinds[1] in table.DIRECTIONS
    ):
        return True
    if following == "note" and any(piece.kind in table.DIRECTIONS for piece in further[0].inside):
        return True
    if following in (*ROW_KINDS, *table.SIDES):
        return True
    if reader.behind is False and not reader.words and following == "word" and further[0].is_large:
        return True
    ends = following in ("", "comma", "end", "and")
    return ends and bool(reader.words or reader.items) and len(element.text) > 1


def _place(reader: _Reader, element: Element, following: str) -> None:
    """A row, a direction, a side or a position: of the words before it, or of those behind it."""
    reader.placed = True
    if all(word.plain in table.BEFORE_A_PLACE for word in reader.words):
        reader.words = []
    told_before = bool(reader.words) or len(reader.items) > reader.part_begins
    if reader.behind is None:
        reader.behind = told_before and following != "colon"
    elif following == "colon":
        reader.behind = False
    if reader.words:
        _end_item(reader)
    if reader.behind and len(reader.items) > reader.part_begins:
        _place_behind(reader, element)
    else:
        _place_ahead(reader, element, following)


def _place_behind(reader: _Reader, element: Element) -> None:
    item = reader.items[-1]
    if element.kind in ROW_KINDS:
        for earlier in reversed(reader.items[reader.part_begins :]):
            if earlier.has_place:
                break
            earlier.row, earlier.has_place = element.kind, True
    elif element.kind in table.DIRECTIONS:
        for earlier in reader.items:
            _direct(reader, earlier, element.kind)
    elif element.kind == "position":
        item.position = element.value
    elif element.kind == "from the right":
        item.person = _noted(item.person, element.text)
        item.position = -1
    else:
        item.side, item.side_words = element.kind, element.text


def _direct(reader: _Reader, item: Item, direction: str) -> None:
    if direction == "rtl":
        reader.rtl_groups.add(item.group)
    elif direction != "ltr":
        item.row = direction


def _place_ahead(reader: _Reader, element: Element, following: str) -> None:
    if element.kind in table.DIRECTIONS:
        reader.backwards = element.kind == "rtl"
        if element.kind in ("clockwise", "counterclockwise"):
            reader.row = element.kind
    elif element.kind == "position":
        reader.ahead.position = element.value
    elif element.kind == "from the right":
        reader.ahead.position, reader.ahead.note = -1, element.text
    elif element.kind in table.SIDES:
        reader.ahead.side, reader.ahead.side_words = element.kind, element.text
        reader.side_stays = element.kind if following == "colon" else ""
    else:
        reader.row, reader.ahead, reader.side_stays = element.kind, _Ahead(), ""
    reader.group += 1
    if reader.backwards:
        reader.rtl_groups.add(reader.group)


def _number(reader: _Reader, element: Element, following: str) -> None:
    """A number before a name begins an item; behind one it is a remark (`Anna, 5`)."""
    numbered = any(item.number for item in reader.items)
    if reader.words and not (numbered or reader.ahead.number):
        reader.words.append(replace(element, kind="word"))
        return
    if not reader.words and not numbered and reader.items and following in ("", "comma", "end", "and"):
        reader.words.append(replace(element, kind="word"))
        return
    _end_item(reader)
    reader.ahead = _Ahead(number=element.value)
    reader.placed = True


def _note(reader: _Reader, element: Element) -> None:
    """A note in brackets is a place, a number, or a remark on the words before it."""
    if _is_number(element) and reader.brackets_count:
        reader.placed = True
        if reader.words:
            _end_item(reader)
            reader.items[-1].number = element.inside[0].value
        else:
            reader.ahead = _Ahead(number=element.inside[0].value)
        return
    inside = element.inside
    places = [piece for piece in inside if piece.kind in PLACES or piece.kind == "position"]
    if places and len(places) == len([piece for piece in inside if piece.kind not in ("comma", "end")]):
        if not reader.words and not reader.items:
            for place in places:
                _place(reader, place, "colon")
            return
        _end_item(reader)
        reader.behind = True if reader.behind is None else reader.behind
        reader.placed = True
        for place in places:
            _place_behind(reader, place)
        return
    reader.notes.append(element)


# One person


def _end_item(reader: _Reader, before: str = "", following: Sequence[Element] = ()) -> None:
    """The words gathered so far as one person, or as a remark on the one before."""
    words, ahead = reader.words, reader.ahead
    notes = [note.text for note in reader.notes]
    if reader.aside:
        notes.append(reader.text[reader.aside[0].start : reader.aside[-1].end])
    if before == "and" and words and all(word.plain in TITLES for word in words) and following:
        reader.words = [replace(word, kind="title") for word in words]
        return
    reader.words, reader.notes, reader.aside = [], [], []
    if not words and not notes:
        return
    if not words and reader.items:
        last = reader.items[-1]
        last.person = _noted(last.person, *notes)
        return
    told = reader.text[words[0].start : words[-1].end] if words else ""
    is_year = all(word.text.isdigit() for word in words) and not ahead.number
    if reader.items and (is_year or _is_remark(reader, words)):
        last = reader.items[-1]
        last.person = _noted(last.person, told, *notes)
        if before == "and" and not last.person.asks:
            last.person = replace(last.person, asks=f"Is “{told}” {last.person.words}, or someone else?")
        return
    if reader.items and _goes_on(reader, told):
        last = reader.items[-1]
        last.person = _noted(replace(last.person, words=f"{last.person.words}, {told}"), *notes)
        return
    side = ahead.side or reader.side_stays
    for person, is_name in _people(reader, words, told):
        noted = _noted(person, ahead.note, *notes)
        item = Item(noted, reader.row, ahead.number, ahead.position, side, ahead.side_words, is_name, reader.group)
        item.has_place = bool(reader.row)
        reader.items.append(item)
        ahead = _Ahead()
    reader.ahead = _Ahead()
    reader.joined = False


def _noted(person: Placed, *notes: str) -> Placed:
    note = ", ".join(note for note in (person.note, *notes) if note)
    return replace(person, note=note)


def _is_remark(reader: _Reader, words: Sequence[Element]) -> bool:
    """Whether the words say something of the name before them: `Anna, my sister, …`, `Tom, aged 5`."""
    last = reader.items[-1]
    if not last.is_name or last.person.note or reader.joined or reader.ahead.number:
        return False
    if len(reader.items) <= reader.part_begins:
        return False
    return is_remark(words)


def _goes_on(reader: _Reader, told: str) -> bool:
    """Whether the words go on with the name before them: `Rusk, Jr.`, `Joan Rusk, née Pell`."""
    last = reader.items[-1]
    if not last.is_name or reader.joined or told.split()[0].rstrip(".").lower() in TITLES:
        return False
    before, after = read_name(last.person.words, reader.known), read_name(f"{last.person.words}, {told}", reader.known)
    return after != before and replace(
        after, born_as="", married_as="", suffix="", nickname="", religious=""
    ) == replace(before, born_as="", married_as="", suffix="", nickname="", religious="")


def _people(reader: _Reader, words: Sequence[Element], told: str) -> Iterable[tuple[Placed, bool]]:
    """One person, or the two of `Mr. and Mrs. Pell`."""
    titles = [word for word in words if word.kind == "title"]
    rest = words[len(titles) :]
    names = [word for word in rest if word.plain not in TITLES]
    if titles and names and len(names) < len(rest):
        name = between(names, reader.text)
        for title in (titles[0], rest[0]):
            yield Placed(f"{title.text} {name}", 0), True
        return
    yield person_named(words, reader.text, reader.known)
