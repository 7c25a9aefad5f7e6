"""The housing of the demo: where its boxes stand, what they are made of, a survey of three prints, a climate log."""

import csv
from collections.abc import Mapping
from pathlib import Path

from boxlore.core.statements import Subject
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.originals.climate import keep_log
from boxlore.tasks.originals.housing_changes import About, new_location, note_container
from boxlore.tasks.originals.survey import SurveyAnswer, note

LOG, LOG_AT = "wash_house.csv", "Wash-house"


def house(collection: Collection, home: Path, items: Mapping[str, Subject]) -> int:
    """Carry out `housing.csv` in the folder `home`, row by row, and keep the climate log. Returns the number of rows.

    `items` maps the keys of the demo's tables to the items made from them.
    """
    with open(home / "housing.csv", encoding="utf-8", newline="") as file:
        rows = [{name: value or "" for name, value in row.items()} for row in csv.DictReader(file)]
    for row in rows:
        around = tuple(part for part in (row["surroundings"],) if part)
        if row["what"] == "location":
            new_location(collection, row["key"], kind=row["kind"], inside=row["at"], surroundings=around)
        elif row["what"] == "container":
            about = About(
                materials=row["materials"],
                capacity=row["capacity"],
                tested=row["tested"],
                at=row["at"],
                surroundings=around,
            )
            note_container(collection, row["key"], about, kind=row["kind"])
        else:
            note(collection, items[row["key"]].id, _answer(row))
    keep_log(collection, home / LOG, LOG_AT)
    return len(rows)


def _answer(row: Mapping[str, str]) -> SurveyAnswer:
    return SurveyAnswer(
        enclosure=row["enclosure"] or None,
        attached=(row["attached"],) if row["attached"] else None,
        condition=(row["condition"],) if row["condition"] else None,
    )
