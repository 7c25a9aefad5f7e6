"""What a scan's file says, as statements about the item: which line of a file becomes which of our fields.

They hold until somebody says more (`core.records.in_force`). What a file says of its own making is none: who scanned
it, by which machine, and when. A date of creation counts as the picture's only if it is not the moment of the scan: it
is not the day on which the camera or scanner says that it worked, and it has no time of day, or one that no clock gave:
it lies before there were such machines, or it is the noon or midnight that programs put behind a bare day. Common
practice, no source.
"""

import re
from contextlib import suppress
from dataclasses import dataclass

from boxlore.core.fields.areas import Area, area_of
from boxlore.core.fields.file_names import words_in_name
from boxlore.core.fields.pictures import Embedded

FIELD_OF_LINE = {
    "title": "title",
    "headline": "title",
    "caption": "story",
    "keywords": "keyword",
    "people": "person",
    "date": "date",
    "place": "place",
}
"""The name of a line (`Embedded.lines`), without its language -> the field that it is told in."""

SEVERAL = ("keywords", "people")
"""Lines that hold several values, parted by semicolons."""


@dataclass(frozen=True, slots=True)
class FileStatement:
    """Words of one field that a file says, and the language that it says they are in; '' for none."""

    field: str
    words: str
    language: str = ""


def statements_of(embedded: Embedded) -> list[FileStatement]:
    """The statements of a file, each once; none of a file whose words were struck.

    Of several dates or titles the one that holds comes last, as the later of two is in force: the one that is read
    first; of titles that in the language that a file shows to everybody, before its other languages, and a headline.
    """
    if embedded.are_struck:
        return []
    statements: dict[tuple[str, str], FileStatement] = {}
    scanned = {words[:10] for name, words in embedded.lines if name == "scanned"}
    for name, words in embedded.lines:
        line, _, language = name.partition(".")
        field = FIELD_OF_LINE.get(line)
        if field is None or (field == "date" and not _is_of_the_picture(words, scanned)):
            continue
        for value in words.split("; ") if line in SEVERAL else [words]:
            if says_something(value) or field == "date":
                statements.setdefault((field, value), FileStatement(field, value, language))
    of_one = [statement for statement in statements.values() if statement.field in ("date", "title")]
    return [statement for statement in statements.values() if statement not in of_one] + of_one[::-1]


def says_something(words: str) -> bool:
    """Whether words are more than the name of a file: a title or caption is often that alone (`DSC_0042`)."""
    return bool(words.strip()) and (" " in words.strip() or bool(words_in_name(words)) or not words.isascii())


_CLOCK = re.compile(r"(\d{4})[-:]?\d\d[-:]?\d\d[T ](\d\d):?(\d\d)(?::?(\d\d))?")
"""A moment in ISO 8601 or as Exif writes one (DC-008, 4.6.5.4): year, hour, minute, second."""
NO_MACHINE = "1990"
"""Before this year no machine that makes picture files wrote the time (from memory)."""


def is_of_a_clock(words: str) -> bool:
    """Whether a date has a time of day, and one that a machine's clock may have given."""
    moment = _CLOCK.match(words.strip())
    if moment is None:
        return "T" in words or " " in words.strip()
    year, hour, minute, second = moment.groups()
    return year >= NO_MACHINE and not (hour in ("00", "12") and {minute, second or "00"} == {"00"})


def _is_of_the_picture(words: str, scanned: set[str]) -> bool:
    """Whether a date of creation is not plainly that of the scan. Exif writes a day with colons (DC-008, 4.6.5.4)."""
    day = words[:10]
    return not is_of_a_clock(words) and not {day, day.replace("-", ":")} & scanned


def regions_of(embedded: Embedded) -> list[tuple[str, Area]]:
    """Who a file says is seen where on its picture as it is stored; none of a file whose words were struck."""
    found = []
    for name, words in embedded.lines if not embedded.are_struck else ():
        *parts, who = words.split(" ", 4)
        if name == "region" and len(parts) == 4:
            with suppress(ValueError):
                found.append((who, area_of([float(part) for part in parts])))
    return found
