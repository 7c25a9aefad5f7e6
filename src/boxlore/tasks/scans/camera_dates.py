"""The camera's own date in a file: the day of the picture where it is no picture of a print, else when it was scanned.

No file says which of the two it is. So it is asked once for all that an intake took in, and told of the pictures only
if the keeper says so; until then it stays a fact about the scan.
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from boxlore.core.crosswalk.file_statements import is_of_a_clock
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.findings import several
from boxlore.core.records.item_record import AS_SCANNED, Record
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import Selection, records
from boxlore.tasks.scans.what_files_say import NAME
from boxlore.tasks.telling.statements import Teller, Telling

CAMERA = Source(Said.FILE, "the camera's clock")
_DAY = re.compile(r"(\d{4})[:-](\d{2})[:-](\d{2})")
"""The beginning of a date in Exif (DC-008, 4.6.5.4), and of one in XMP."""


@dataclass(frozen=True, slots=True)
class CameraDate:
    """An item (id), and the day on which the camera or scanner says that it made the picture of its front."""

    item: str
    day: str


def camera_dates(collection: Collection, numbers: Sequence[str]) -> list[CameraDate]:
    """Those of these items whose date neither a person nor another part of the file tells."""
    if not numbers:
        return []
    dates = ((record, _day_of(record)) for record in records(collection, Selection(items=tuple(numbers))))
    return [CameraDate(record.id, day) for record, day in dates if day and not _is_dated(record)]


def _day_of(record: Record) -> str:
    for scan in record.scans:
        if scan.side == "recto" and scan.role == AS_SCANNED and not scan.area:
            for name, words in EMBEDDED_WORDS.read(scan.embedded).lines:
                of_a_clock = name == "scanned" or (name == "date" and is_of_a_clock(words))
                if of_a_clock and (day := _DAY.match(words)) and day[1] > "1900":
                    return "-".join(day.groups())
    return ""


def _is_dated(record: Record) -> bool:
    """Whether the date is told by more than the name of the file."""
    return any(view.source != NAME for view in record.all("date"))


def question(dates: Sequence[CameraDate]) -> str:
    """What the keeper is asked once, without the question mark's answers."""
    days = sorted(date.day for date in dates)
    span = days[0] if days[0] == days[-1] else f"{days[0]} to {days[-1]}"
    carries = "carries" if len(dates) == 1 else "carry"
    return f"{several(len(dates), 'picture')} {carries} the date of the machine that made the file ({span})."


def tell_camera_dates(collection: Collection, dates: Iterable[CameraDate]) -> None:
    """Tell the camera's day of each as the date of the picture, with the camera as who says it; one act."""
    teller, act = Teller(collection), collection.act("the camera's own dates")
    for date in dates:
        teller.add(act, Subject(Kind.ITEM, date.item), "date", date.day, Telling(source=CAMERA))
    act.done()
