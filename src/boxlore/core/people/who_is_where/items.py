"""One person of who stands where, added to those told: at the place told before the words, or as who the one described
before is (`phrases` tells which words are somebody's)."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from boxlore.core.people.names.words_table import KIN_WORDS, SUFFIXES, TITLES
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.groups import group_of
from boxlore.core.people.who_is_where.item_words import (
    between,
    definitely,
    how_many,
    is_description,
    is_of_several,
)
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.position_words_table import COUPLES, ROW_CLASSES
from boxlore.core.people.who_is_where.reader_state import Reader
from boxlore.core.people.who_is_where.remarks import head_and_remark, is_absent
from boxlore.core.people.who_is_where.somebody import person_named
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold


def add(reader: Reader, person: Placed, words: Sequence[Element], *, is_name: bool) -> None:
    """One person at the place told before the words, or who the one described before is."""
    if reader.identifies:
        described = reader.items[-1]
        unsure = person.unsure or described.person.unsure
        likely = person.likely and not described.person.unsure
        note = _all_notes(described.person, person.note)
        described.person = replace(person, note=note, unsure=unsure, likely=likely)
        described.is_name, described.is_described, reader.identifies = is_name, False, False
        described.is_identified = is_name
        described.definite = "" if is_name else described.definite
        reader.identified = not is_name
        return
    if reader.identified and is_name and not reader.joined and not reader.place_since:
        kin = reader.items[-1]
        kin.person = replace(person, note=", ".join(filter(None, (kin.person.note, kin.person.words, person.note))))
        kin.is_name, reader.identified = True, False
        return
    reader.identified = False
    ahead = reader.ahead
    side = ahead.side or reader.side_stays
    item = Item(person, reader.row, ahead.number, ahead.position, side, ahead.side_words, is_name, reader.group)
    item.from_right, item.right_words = ahead.from_right, ahead.right_words
    item.is_held = bool(reader.items) and (ahead.is_held or _is_held(reader, person))
    goes_on = reader.joined == "and" and len(reader.items) > reader.part_begins and reader.items[-1].is_beside
    item.is_beside = bool(reader.items) and (ahead.is_beside or goes_on)
    if item.is_held or item.is_beside:
        is_elsewhere = fold(person.note.split(", ")[-1]).startswith(small_words.ABOVE_OR_BELOW)
        stands_otherwise = item.is_beside and reader.place_since and reader.row in ROW_CLASSES[3:]
        row = reader.row if stands_otherwise else reader.items[-1].row
        item.row = "" if is_elsewhere else row  # `Top left Isa, below her Dod`
    item.is_unmarked, reader.mark_since = not reader.mark_since, False
    item.of_group = reader.family_stays
    if is_name and reader.family_ahead[0]:
        note, item.of_group = reader.family_ahead
        item.person, reader.family_ahead = noted(person, note), ("", "")
    item.joined = reader.joined
    item.beside_whom, reader.whom = reader.whom, ""
    item.has_place, item.in_case = bool(item.row), reader.in_case
    item.is_described = bool(words) and person.is_person and not is_name and is_description(words)
    item.part = reader.part_begins
    item.definite = definitely(words) if words and person.is_person and not is_name else ""
    is_couple = 0 < len(words) < _SHORTEST_NAMED_COUPLE and words[-1].plain in COUPLES  # `los novios`
    are_told = is_couple or (bool(words) and (is_of_several(words) or group_of(words) is not None))
    item.is_several = are_told and not person.is_person
    item.width = how_many(words) if words and not person.is_person else 1
    if reader.last_absent or (words and words[0].kind == "or"):
        item.width = 0
    if reader.last_absent:
        item.row = ""
    reader.items.append(item)


_SHORTEST_NAMED_COUPLE = 3


def _is_held(reader: Reader, person: Placed) -> bool:
    """`Tom on her knee`, told behind somebody: whoever is held has no place of her own in the row."""
    words = person.note.split(", ")[-1].split()
    on_whom = len(words) > 1 and fold(words[-1]) in small_words.HELD_ON and fold(words[0]) not in small_words.WITH
    return on_whom and len(reader.items) > reader.part_begins


def _all_notes(described: Placed, note: str) -> str:
    who = "" if fold(described.words) in small_words.SUBJECTS else described.words  # `she on the left is Anna`
    return ", ".join(filter(None, (who, described.note, note)))


def noted(person: Placed, *notes: str) -> Placed:
    note = ", ".join(note for note in (person.note, *notes) if note)
    return replace(person, note=note)


def people_named(reader: Reader, words: Sequence[Element], told: str) -> Iterable[tuple[Placed, bool]]:
    """One person, or the two of `Mr. and Mrs. Pell`."""
    absent = reader.part_absent or (reader.last_absent and reader.joined == "and")
    absent = absent or (is_absent(words) and not head_and_remark(words, reader.text, reader.known))
    reader.last_absent = absent
    if absent:
        yield Placed(told, 0, asks=f"Is “{told}” someone in the picture?", is_person=False), False
        return
    titles = [word for word in words if word.kind == "title"]
    rest = words[len(titles) :]
    names = [word for word in rest if not leads_a_name(word)]
    if titles and names and len(names) < len(rest):
        small = (at for at, word in enumerate(names) if at and word.text.islower() and word.plain not in SUFFIXES)
        ends = next(small, len(names))
        name, note = between(names[:ends], reader.text), between(names[ends:], reader.text)
        yield Placed(f"{titles[0].text} {name}", 0), True
        yield Placed(f"{rest[0].text} {name}", 0, note=note), True
        return
    yield person_named(words, reader.text, reader.known, surely=reader.joined == "with" or reader.in_case)


def leads_a_name(word: Element) -> bool:
    return word.plain in TITLES or (word.plain in KIN_WORDS and word.is_large)
