"""Odd records for the exports: every EDTF form, no title, forty people, right-to-left text, very long stories."""

from hypothesis import strategies as st

from boxlore.core.dates.reading import DateReading
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import Conflict, PersonShown, Record, Related, ScanFile, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.statements import KEEPER, ReadingValue, Said, Source, Sure

EDTF_FORMS = (
    "1912", "1912-04", "1912-04-29", "1912~", "1912?", "1912%", "1912-21", "191X", "19XX", "1912-XX", "1912-XX-XX",
    "1912/1914", "1912~/1914?", "../1914", "1912/..", "/1914", "1912/", "[1912,1914]", "{1912,1914}", "[..1912]",
    "Y170000", "-0044", "?1912-04", "1912-?04-29", "1950S2", "1912-04-29T10:00:00Z", "Y-17E7",
)  # fmt: skip
"""One of each form of the specification (Library of Congress, EDTF, 4 February 2019), levels 0 to 2."""

WORDS = st.text(st.characters(exclude_categories=("Cs",)), max_size=60)
ODD = st.one_of(
    WORDS,
    st.just("שלום, סבתא"),
    st.just("=1+1"),
    st.just("a]]>b & <c> \"d\" 'e' \\f\ng\rh\ti"),
    st.just("\x00\x0b\ufffe"),
    st.just("story " * 3334),
)
IDS = st.uuids(version=4).map(str)


def told(field: str, words: st.SearchStrategy[str] = ODD, value: st.SearchStrategy[ReadingValue | None] | None = None):  # type: ignore[no-untyped-def,type-arg]
    return st.builds(
        StatementView,
        statement=IDS,
        field=st.just(field),
        words=words,
        language=st.sampled_from(("", "en", "et", "en_NZ", "not a language")),
        source=st.sampled_from((KEEPER, Source(Said.INSCRIPTION, "verso"), Source(Said.NARRATOR, "x y"))),
        said_by=st.sampled_from(("", "Leida Rourke")),
        sure=st.sampled_from((Sure.SURE, Sure.LIKELY, Sure.GUESS)),
        audience=st.sampled_from(("anyone", "archive:2060-01-01")),
        recorded_at=st.just("2026-11-25T10:15:30.250Z"),
        value=st.none() if value is None else value,
    )


DATES = told("date", value=st.sampled_from(EDTF_FORMS).map(DateReading.from_edtf))
PLACE = PlaceReading("Reval", "match", (Place(name="Tallinn", country="Estonia"),))
PLACES = told("place", value=st.sampled_from((None, PLACE)))


def gathered(
    fields: tuple[st.SearchStrategy[StatementView], ...],
) -> st.SearchStrategy[dict[str, tuple[StatementView, ...]]]:
    def by_field(rows: list[StatementView]) -> dict[str, tuple[StatementView, ...]]:
        found: dict[str, tuple[StatementView, ...]] = {}
        for one in rows:
            found[one.field] = (*found.get(one.field, ()), one)
        return found

    return st.lists(st.one_of(*fields), max_size=6).map(by_field)


FIELDS = tuple(
    told(name) for name in ("title", "story", "inscription", "process", "keyword", "occasion", "rights_holder")
)
SCANS = st.builds(
    ScanFile,
    id=IDS,
    path=st.just("scans/TRA-0001_f.jpg"),
    sha256=st.just("a" * 64),
    bytes=st.just(9),
    width=st.just(3),
    height=st.just(2),
    media_type=st.just("image/jpeg"),
    side=st.sampled_from(("recto", "verso")),
)
PEOPLE = st.builds(
    PersonShown,
    told=told("person"),
    name=WORDS.filter(str.strip),
    role=st.sampled_from(("person", "named", "photographer")),
    area=st.sampled_from(((), (0.1, 0.2), (0.1, 0.2, 0.3, 0.4))),
    scan=IDS,
    number=st.integers(0, 40),
)
RECORDS = st.builds(
    Record,
    id=IDS,
    number=st.integers(1, 9999).map("TRA-{:04d}".format),
    kind=st.sampled_from(("print", "negative", "letter", "card")),
    mark=st.sampled_from((None, Mark((("box", "3"), ("folder", "12 & <b>")), 4), Mark((("album", "א"),)))),
    found_in=ODD,
    size_mm=st.sampled_from(((), (90.0, 60.5))),
    scans=st.lists(SCANS, max_size=3).map(tuple),
    told=gathered((DATES, PLACES, *FIELDS)),
    people=st.one_of(st.just(()), st.lists(PEOPLE, max_size=40).map(tuple)),
    related=st.just((Related(kind="same_picture", number="TRA-0002"),)),
    conflicts=st.sampled_from(((), (Conflict("date", (), "these dates cannot both be so"),))),
    not_known=st.sampled_from((frozenset(), frozenset({"date"}))),
    closed_scans=st.booleans(),
)
