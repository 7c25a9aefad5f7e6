"""The end of the album: who is who, the places, and where the words come from."""

import re
from collections.abc import Container, Iterable, Mapping, Sequence
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.names.list_order import list_key
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.statements import Sure, fold
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.print_run import Printing
from boxlore.sheets.printable_words import isolated

IndexRow = dict[str, Any]
"""A row of an index: a `name`, what stands behind it (`more`), what to `see` instead, and its `items`, each a number
and the mark that stands behind its page.
"""


def people_index(records: Sequence[Record], printing: Printing) -> list[dict[str, Any]]:
    """The index of people, in two groups: those with a name, and those only described (“a dock hand”).

    Behind a name stand the years of its life, behind a page `?` where it is not sure who is shown; another name that
    someone bore refers to the one used here.
    """
    names: dict[str, dict[str, str]] = {}
    roles: dict[str, set[str]] = {}
    called: set[str] = set()
    lives: dict[str, str] = {}
    others: dict[str, str] = {}
    for record in records:
        for person in record.named_people:
            name = _sorted_name(person, printing)
            _add(names, name, record.number, unsure=is_doubted(person))
            roles.setdefault(name, set()).add(person.role)
            if is_name(name) or ", " in printing.sort_names.get(person.person, ""):
                called.add(name)
            lives[name] = printing.lives.get(person.person, "")
            others |= dict.fromkeys(printing.other_names.get(person.person, ()), name)
    with_name: list[IndexRow] = []
    without: list[IndexRow] = []
    for name, items in names.items():
        taker = printing.say("photographer") if roles[name] == {"photographer"} else ""
        row = _row(name, items, more=", ".join(filter(None, (lives[name], taker))))
        (with_name if name in called else without).append(row)
    for further, name in others.items():
        if further not in names:
            (with_name if name in called else without).append(_row(further, {}, see=name))
    return _groups([("", with_name), (printing.say("Without a name"), without)], printing)


def _sorted_name(person: PersonShown, printing: Printing) -> str:
    return captions.one_line(printing.sort_names.get(person.person, person.name))


def is_name(words: str) -> bool:
    """Whether these words are a name, not only a description (“a dock hand”): no small first letter, no `?`."""
    first_letter = next((letter for letter in words if letter.isalpha()), "a")
    return not first_letter.islower() and "?" not in words


def years_of(person: Person, say: Say) -> str:
    """The years of a life as an index gives them: `1888–1962`, `born about 1924`, `died 1943`; empty if not told."""
    born, died = _year(person.born, say), _year(person.died, say)
    if born and died:
        return f"{born}–{died}"
    return say("born {year}", year=born) if born else say("died {year}", year=died) if died else ""


def _year(date: DateReading | None, say: Say) -> str:
    if date is None or date.edtf is None or date.first_year is None:
        return ""
    unsure = date.edtf.text[-1] in "~?%" or date.first_year != (date.latest.year if date.latest else None)
    return say("about {year}", year=date.first_year) if unsure else str(date.first_year)


def other_sort_names(person: Person) -> tuple[str, ...]:
    """The name under the further surnames that someone bore: `Rourke, Leida` → `Tamm, Leida`."""
    surname, _, called = person.sort_name.partition(", ")
    return tuple(f"{further}, {called}" for further in person.surnames if called and further != surname)


def places_index(records: Sequence[Record], printing: Printing) -> list[dict[str, Any]]:
    """The index of places, as they are called in the captions: each once, under the words that most captions have, and
    of those the shortest. From further words in which no such name stands it is referred to.
    """
    places: dict[str, dict[str, list[str]]] = {}
    for record in records:
        if line := captions.place_line(record, printing.style):
            town = town_of(record) if not record.disputed("place") else None
            by_words = places.setdefault(f"{town.geonames}" if town else line, {})
            by_words.setdefault(captions.capital(line), []).append(record.number)
    rows = []
    for by_words in places.values():
        name, *further = sorted(by_words, key=lambda words: (-len(by_words[words]), len(words)))
        rows.append(_row(name, {number: "" for numbers in by_words.values() for number in numbers}))
        rows += [_row(words, {}, see=name) for words in further if not is_told_in(name, words)]
    return _groups([("", rows)], printing)


def town_of(record: Record) -> Place | None:
    """The town that the place of a record was found as, or None."""
    place = record.place
    return place if place and place.geonames and place.city else None


def is_told_in(name: str, words: str) -> bool:
    """Whether the first words of a place's name stand in others: `Kärdla` in `Near Kärdla, Hiiumaa`. What brackets say
    is ours: what the place is called now.
    """
    return fold(re.split(r"[,(]", name)[0].strip()) in fold(words.partition(" (")[0])


def sources(records: Iterable[Record], printing: Printing, noted: Container[str] = ()) -> list[dict[str, str]]:
    """For each photograph with a known source: its number, its title, and who says so; of those `noted` by their
    numbers what is written on them and what is worked out too.
    """
    found = []
    for record in records:
        said = captions.sentence(captions.source_line(record, printing.style))
        words = [said, *(notes(record, printing) if record.number in noted else ())]
        title = isolated(f"{record.number} · {captions.title(record, printing.style)}")
        found.append({"number": record.number, "title": title, "words": isolated(" ".join(filter(None, words)))})
    return [row for row in found if row["words"]]


def notes(record: Record, printing: Printing) -> list[str]:
    """What is written on a photograph, and its date where that is worked out, each as a sentence."""
    lines = captions.inscription_line(record, printing.style), captions.worked_out_line(record, printing.style)
    return [captions.sentence(line) for line in lines if line]


def is_doubted(person: PersonShown) -> bool:
    """Whether it is not sure that this is who is shown."""
    return person.sure in (Sure.GUESS, Sure.LIKELY)


def _add(items_by_name: dict[str, dict[str, str]], name: str, number: str, *, unsure: bool = False) -> None:
    """Note an item under a name, with `?` as its mark where the name is not sure there, and nowhere sure."""
    items = items_by_name.setdefault(name, {})
    items[number] = "?" if unsure and items.get(number, "?") else ""


def _row(name: str, items: Mapping[str, str], *, more: str = "", see: str = "") -> IndexRow:
    return {"name": isolated(name), "more": isolated(more), "see": isolated(see), "items": list(items.items())}


def _groups(groups: Sequence[tuple[str, Sequence[IndexRow]]], printing: Printing) -> list[dict[str, Any]]:
    """The groups that have rows, each in the order of a list."""
    return [
        {"title": title, "rows": sorted(rows, key=lambda row: list_key(row["name"], printing.language))}
        for title, rows in groups
        if rows
    ]
