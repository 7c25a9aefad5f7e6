"""The people and the records that the tests of audience and closing dates share: each place where a name may stand."""

from datetime import date
from typing import Any

from boxlore.core.people.consent import make_consent
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.audience import EMBEDDED, FILE_NAME, FOUND_IN, MARK, SHOWN, WHO_SAYS, Recipient, To
from boxlore.core.records.item_record import Conflict, PersonShown, Record, ScanFile, StatementView
from boxlore.core.records.living import life_of
from boxlore.core.records.marks import Mark
from boxlore.core.records.withheld import withhold
from boxlore.core.statements import KEEPER, Said, Source, Sure

TODAY = date(2026, 11, 25)
PLAIN = "The boat came in."


def person(ident: str, given: str, family: str = "Rourke", **more: Any) -> Person:
    name = f"{given} {family}"
    forms = (name, f"{given[0]}. {family}")
    return Person(id=ident, name=name, sort_name=name, forms=forms, calls=(given,), surnames=(family,), **more)


MIA = person("mia", "Mia", also=("mia-too",))
"""She lives, and has consented to nothing. The keeper has called two entries one: she has two ids."""

TOM = person("tom", "Tom", dead=True)
OLD_MIA = person("old-mia", "Mia", dead=True)
"""Long dead, with the name of somebody living."""

SEEN_ONLY = person("con", "Con", consents=(make_consent(["name"], "2026-11-25"),))
"""He lives, may be named, and has not consented to be shown."""

PEOPLE = (MIA, TOM, OLD_MIA, SEEN_ONLY)
LIVES = {one.id: life_of(one, TODAY) for one in PEOPLE}


def recipient(to: To, **more: Any) -> Recipient:
    return Recipient(to=to, on_day=TODAY, withheld=withhold(PEOPLE, LIVES, to, TODAY), **more)


OUTSIDE, FAMILY, ARCHIVE = (recipient(to) for to in (To.OUTSIDE, To.FAMILY, To.ARCHIVE))


def said(words: str = PLAIN, field: str = "story", by: Source = KEEPER, **more: Any) -> StatementView:
    values: dict[str, Any] = {
        "statement": f"{field} {len(words)}", "sure": Sure.SURE, "audience": "anyone", "recorded_at": "",
        "language": "en", "said_by": "",
    }  # fmt: skip
    return StatementView(field=field, words=words, source=by, **{**values, **more})


def shown(ident: str, name: str, words: str = "the girl in front", **more: Any) -> PersonShown:
    return PersonShown(told=said(words, "person"), name=name, person=ident, **more)


def scan(path: str = "scans/harbour.jpg", embedded: str = "") -> ScanFile:
    return ScanFile(
        id="s", path=path, sha256="", bytes=1, width=1, height=1, media_type="image/jpeg", embedded=embedded
    )


def record(**parts: Any) -> Record:
    return Record(id="item", number="TRA-0001", **parts)


def stories(*views: StatementView) -> dict[str, tuple[StatementView, ...]]:
    return {"story": views}


BOX = Mark((("box", "Mia's letters"),), 4)
LETTER = Source(Said.DOCUMENT, "letter of Mia Rourke")

SIDES = (said("1975", "date"), said("when Mia was nine", "date"))

MIAS_BAY = PlaceReading("the bay", "match", (Place(name="Mia's bay"),))
NAMED: dict[str, tuple[Record, str]] = {
    "in the words": (record(told=stories(said("Mia fell in."))), "story"),
    "by her picture": (record(people=(shown("mia", "Mia Rourke"),)), "person"),
    "by her other entry": (record(people=(shown("mia-too", "Mia Rourke"),)), "person"),
    "as who told it": (record(told=stories(said(by=Source(Said.NARRATOR, "mia"), said_by="Mia Rourke"))), WHO_SAYS),
    "as who told it, by her other entry": (
        record(told=stories(said(by=Source(Said.NARRATOR, "mia-too"), said_by="Mia Rourke"))), WHO_SAYS,
    ),
    "as a dead namesake who told it": (
        record(told=stories(said(by=Source(Said.NARRATOR, "old-mia"), said_by="Mia Rourke"))), WHO_SAYS,
    ),
    "as a teller nobody knows": (record(told=stories(said(by=Source(Said.NARRATOR, "a neighbour")))), WHO_SAYS),
    "in what a document is called": (record(told=stories(said(by=LETTER))), WHO_SAYS),
    "as a dead namesake in the picture": (record(people=(shown("old-mia", "Mia Rourke"),)), "person"),
    "in how things lay": (record(found_in="Mia's shoebox"), FOUND_IN),
    "on the box": (record(mark=BOX), MARK),
    "inside a file": (record(scans=(scan(embedded="dc:title Mia"),)), EMBEDDED),
    "in the name of a file": (record(scans=(scan("scans/mia_rourke-1.jpg"),)), FILE_NAME),
    "by a picture that may not be shown": (record(people=(shown("con", "Con Rourke"),), scans=(scan(),)), SHOWN),
    "in a title that says who is on it, and may not be shown": (
        record(told={"title": (said("Con on the quay", "title"),)}, scans=(scan(),)), "title",
    ),
    "in what a place is called that the words were read as": (
        record(told={"place": (said("the bay", field="place", value=MIAS_BAY),)}), "place",
    ),
    "as who did not know": (record(asked=(said("", field="place", by=Source(Said.NARRATOR, "mia")),)), WHO_SAYS),
    "in what was said instead of an answer": (record(asked=(said("Ask Mia", field="date"),)), "date"),
    "in one side of a conflict": (record(conflicts=(Conflict("date", SIDES, "they cannot both be so"),)), "date"),
}  # fmt: skip
"""Where somebody stands who may not be named, or not be shown, outside: the record, and what the place is called."""
