"""The dates of a unit cover all that is dated in it, and say how many items are not (DACS 2.4, from memory)."""

from dataclasses import replace

from tests.every_row import every_row

from boxlore.core.crosswalk.extent import Extent
from boxlore.core.dates.reading import DateReading
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.statements import KEEPER, Sure

ASKED = "1 item undated, or with a date that is still asked about"
RANGES: dict[str, tuple[list[str], str]] = {
    "a range": (["1931", "1968-12-25"], "1931-1968"),
    "one year": (["1912", "1912-05"], "1912"),
    "nothing": ([""], "undated"),
    "one that is asked about": (["1968", "1975", ""], f"1968-1975; {ASKED}"),
    "one without a beginning that is earlier": (["1968", "1975", "/1932"], "not later than 1932-1975"),
    "one without a beginning that is within": (["1912", "1975", "/1932"], "1912-1975"),
    "only one without a beginning": (["/1932"], "not later than 1932"),
    "one without an end that is later": (["1912", "1980/"], "1912-not earlier than 1980"),
    "one without an end that is within": (["1912", "1990", "1980/"], "1912-1990"),
    "only one without an end": (["1980/"], "not earlier than 1980"),
}


def dated(edtf: str) -> Record:
    value = DateReading.from_edtf(edtf) if edtf else None
    view = StatementView(
        statement="s", field="date", words=edtf or "the thirties", language="en", source=KEEPER, said_by="",
        sure=Sure.SURE, audience="anyone", recorded_at="", value=value,
    )  # fmt: skip
    return Record(id=edtf, number="TRA-0001", told={"date": (view,)})


def test_a_date_that_is_withheld_is_not_undated_and_what_the_family_keeps_is_not_given() -> None:
    """DACS 2.4: “undated” is a statement of its own (from memory)."""
    extent = Extent(not_given=frozenset({"kept"}))
    withheld = Record(id="w", number="TRA-0002", hidden=frozenset({"date"}))
    for record in (withheld, dated("1931"), Record(id="kept", number="TRA-0003")):
        extent.add(record)
    assert (extent.items, extent.given, extent.kept) == (3, 2, 1)
    assert extent.years == "1931; 1 item with a date that is not given here" and extent.date_words == "1931"
    assert extent.words == "2 photographs; besides 1 item that is kept by the family"
    assert extent.kept_words == "1 item kept by the family"
    alone = Extent()
    alone.add(withheld)
    assert alone.years == withheld.formal_date == "date not given here"


@every_row("name", RANGES)
def test_the_dates_of_a_unit(name: str) -> None:
    dates, words = RANGES[name]
    extent = Extent()
    for edtf in dates:
        extent.add(dated(edtf))
    assert extent.years == words
    assert extent.date_words == words.replace(f"; {ASKED}", ", undated")


def test_who_is_counted_first_is_who_is_told_first() -> None:
    """A title made of names is the same each time it is made (DACS 2.3, from memory: titles are formal)."""
    told = dated("").told["date"][0]
    shown = tuple(PersonShown(told=told, name=f"p{at}", person=f"p{at}") for at in range(12))
    extent = Extent()
    extent.add(Record(id="a", number="TRA-0001", people=shown[::-1]))
    extent.add(Record(id="b", number="TRA-0002", people=shown[:1]))
    assert [ident for ident, _ in extent.people.most_common()] == ["p0", *(f"p{at}" for at in range(11, 0, -1))]


def test_what_is_counted_of_each_item() -> None:
    """Extent by kinds and containers (DACS 2.5, from memory); a photographer stands once, a closed scan not at all."""
    told = dated("").told["date"][0]
    scan = ScanFile(id="f", path="a.jpg", sha256="0", bytes=1, width=1, height=1, media_type="image/jpeg")
    view = replace(told, field="place", words="Reval", value=PlaceReading("Reval", "match", (Place(name="Tallinn"),)))
    first = Record(
        id="a", number="TRA-0001", mark=Mark((("box", "1"), ("folder", "2")), 1), found_in="shoebox", scans=(scan,),
        people=(PersonShown(told=told, name="Anna Lind", role="photographer"),),
        told={"place": (view,), "process": (replace(told, field="process", words="gelatin silver print"),)},
    )  # fmt: skip
    closed = replace(first, id="b", scans=(replace(scan, id="g"),), closed_scans=True)
    letter = Record(id="c", number="TRA-0003", kind="letter", mark=Mark((("box", "2"),), 1))
    extent = Extent()
    for record in (first, closed, letter, Record(id="d", number="TRA-0004")):
        extent.add(record)
    assert extent.words == "3 photographs, 1 letter; 2 boxes, 1 folder"
    assert Extent().words == ""
    assert (extent.scans, extent.found_in, list(extent.creators)) == (1, {"shoebox": 2}, ["Anna Lind"])
    assert (extent.places, extent.languages) == ({"Tallinn": 2}, {"en": 4})
    assert extent.processes == {"gelatin silver print": "http://vocab.getty.edu/aat/300128695"}


LENT = [
    (0, ""),
    (1, ", but for the original of 1 item, which somebody lent (TRA-0001)"),
    (3, ", but for the originals of 3 items, which somebody lent (TRA-0001, TRA-0002 and TRA-0003)"),
    (21, ", but for the originals of 21 items, which somebody lent (the inventory says which)"),
]


@every_row(("count", "said"), LENT)
def test_what_somebody_lent_is_named(count: int, said: str) -> None:
    records = [Record(id=f"i{at}", number=f"TRA-{at:04}") for at in range(1, 23)]
    extent = Extent(lent_items=frozenset(record.id for record in records[:count]))
    for record in records:
        extent.add(record)
    assert (extent.lent_words, extent.given) == (said, 22)
