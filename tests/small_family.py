"""Three photographs of the invented family, for tests that make the same output again and again."""

import csv
from datetime import date
from pathlib import Path

from boxlore.core.statements import KEEPER, Kind
from boxlore.disk.shipped import shipped
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.demo.every_task import SETTINGS
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_table
from boxlore.tasks.telling.statements import Teller, Telling

ITEMS = ("harbour", "kristjan", "farm")
PEOPLE = (
    {"given": "Kristjan", "family": "Tamm", "born": "1838", "died": "1909"},
    {"given": "Mia", "family": "Rourke", "born": "2016"},
)
TOLD = (
    ("TRA-0001", "title", "Reval harbour with the ships in"),
    ("TRA-0001", "date", "before 1910"),
    ("TRA-0001", "place", "Reval"),
    ("TRA-0001", "story", "Mia Rourke asked which ship was his."),
    ("TRA-0002", "title", "Kristjan Tamm"),
    ("TRA-0002", "person", "Kristjan Tamm"),
    ("TRA-0002", "story", "He built boats."),
    ("TRA-0003", "title", "The farm"),
    ("TRA-0003", "person", "Mia Rourke"),
)
"""Who lives is named in a story of one item and is shown by another: neither goes outside."""


def make_small_family(home: Path, on_day: date) -> None:
    """A collection of three items with their scans, of what was told of them, and of two people, one of them living."""
    start(home, SETTINGS, on_day=on_day)
    shown = shipped("demo_family")
    with open(shown / "intake.csv", encoding="utf-8", newline="") as file:
        rows = [row for row in csv.DictReader(file) if row["item"] in ITEMS]
    with open_collection(home, on_day=on_day) as collection:
        taken = take_in(collection, by_table(enumerate(rows, 2), shown), IntakeOptions(copy=True))
        assert [result.state for result in taken] == ["taken"] * len(ITEMS)
        teller, act = Teller(collection), collection.act("two people")
        for person in PEOPLE:
            subject = act.new(Kind.PERSON)
            for field, words in person.items():
                teller.add(act, subject, field, words, Telling())
        act.done()
        for number, field, words in TOLD:
            teller.tell(find_item(collection, number), field, words, Telling(source=KEEPER, audience="anyone"))
