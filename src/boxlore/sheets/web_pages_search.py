"""What the pages are searched by: people by every name and by what they are to others, photographs by all that is told
of them and by their years.

It is data in scripts, because a page opened from a disk may not load JSON. The words are as they were told, and the
page folds them: folded words are other words to whoever looks for names in them. Rows: `n` number or `h` path of a
page, `t` title, `w` what stands under it, `p` the small picture, `f` the words to search.
"""

import json
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from boxlore.core.crosswalk import captions, references
from boxlore.core.crosswalk.captions import Style
from boxlore.core.records.item_record import Record
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.album_chapters import decade_in_short, years_known
from boxlore.sheets.album_indexes import town_of

IN_A_PART = 300
"""Photographs, or people, in one file; further files are loaded when somebody searches."""

MOST_YEARS = 20
"""A date that may mean more years than these is not found by each of them."""


def search_files(
    records: Sequence[Record],
    cards: Mapping[str, Any],
    people: Sequence[Mapping[str, Any]],
    faces: Mapping[str, Any],
    style: Style,
) -> Iterator[tuple[str, str]]:
    """(name of a file, its text). The first is loaded with the page, and says how many further ones there are."""
    terms = {subject["href"]: _by_names(subject) for subject in people}
    told = _told_by_town(records)
    rows = [_photograph(record, cards[record.id], terms, told, style) for record in records]
    yield from _parts("search-people", "boxlorePeople", [_person(subject, faces) for subject in people])
    yield from _parts("search-data", "boxlorePages", rows)


def _parts(file: str, name: str, rows: Sequence[Mapping[str, Any]]) -> Iterator[tuple[str, str]]:
    for number in range(1, parts_of(len(rows)) + 1):
        behind = f"-{number}" if number > 1 else ""
        part = rows[(number - 1) * IN_A_PART : number * IN_A_PART]
        yield f"{file}{behind}.js", _script(f"{name}{number if number > 1 else ''}", part)


def parts_of(count: int) -> int:
    """How many files there are of so many photographs, or people."""
    return max(1, -(-count // IN_A_PART))


def _photograph(
    record: Record,
    card: Mapping[str, Any],
    terms: Mapping[str, Sequence[str]],
    told: Mapping[int | None, Mapping[str, None]],
    style: Style,
) -> dict[str, Any]:
    said = Style(say=style.say, dates=style.dates)
    words = [captions.title(record, said), captions.caption(record, "full", said), references.reference(record, said)]
    words += [statement.words for statement in (*record.all("inscription"), *record.all("keyword"))]
    words += [term for href in card["people"] for term in terms.get(href, ())]
    words += told[town.geonames] if (town := town_of(record)) else ()
    row = {"n": record.number, "t": card["title"], "w": card["where_when"], "p": card["small"]}
    return row | {"f": [line for line in (*words, _years(record, style.say)) if line]}


def _told_by_town(records: Sequence[Record]) -> dict[int | None, dict[str, None]]:
    """Every word by which each town was told: whoever looks for `Reval` finds what was told as `Tallinn`, too."""
    told: dict[int | None, dict[str, None]] = {}
    for record in records:
        if town := town_of(record):
            told.setdefault(town.geonames, {})[captions.bare(record.words("place"))] = None
    return told


def _years(record: Record, say: Say) -> str:
    """`1938 1930s`: the years that the date may mean, and their decade."""
    years = years_known(record)
    if years is None or years[1] - years[0] > MOST_YEARS:
        return ""
    spelled = [str(year) for year in range(years[0], years[1] + 1)]
    return " ".join([*spelled, *dict.fromkeys(decade_in_short(int(year) // 10 * 10, say) for year in spelled)])


def _person(subject: Mapping[str, Any], faces: Mapping[str, Any]) -> dict[str, Any]:
    face = faces.get(subject["href"])
    return {
        "h": subject["href"],
        "t": subject["name"],
        "w": ", ".join(part for part in (subject["life"], subject["count"]) if part),
        "p": face.small if face else "",
        "f": [subject["name"], *_by_names(subject)],
    }


def _by_names(subject: Mapping[str, Any]) -> list[str]:
    """What somebody is searched by besides the name that captions use: every further name, and kin."""
    return list(dict.fromkeys([*subject["called"], *subject["other_names"], *subject["kin_words"]]))


def _script(name: str, rows: Sequence[Mapping[str, Any]]) -> str:
    lines = ",\n".join(json.dumps(row, ensure_ascii=False).replace("<", "\\u003c") for row in rows)
    return f"window.{name} = [\n{lines}\n];\n"
