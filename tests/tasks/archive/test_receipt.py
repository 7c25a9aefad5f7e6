"""What an archive sends back. One item has one reference of one archive (DACS 2.1: the code identifies the unit); what
else holds of several archives, and the words of a refusal, are rules of our own."""

import csv
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from tests.every_row import every_row

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind
from boxlore.tasks.archive.receipt import COLUMNS, WHOLE, Received, blank_rows, read_receipt
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings

MUSEUM, LIBRARY = "Port Chalmers Museum", "Dunedin Library"


@pytest.fixture
def mine(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "tamm", Settings(title="A family", prefix="TR"))
    with open_collection(tmp_path / "tamm", on_day=date(2026, 11, 25)) as opened:
        act = opened.act("told")
        for number in ("TRA-0001", "TRA-0002"):
            item = act.new(Kind.ITEM)
            act.state(item, "number", number)
            act.state(item, "title", "The boat")
        act.done()
        yield opened


def send(collection: Collection, *rows: tuple[str, ...], archive: str = MUSEUM) -> Received:
    path = collection.folder.parent / "receipt.csv"
    path.write_text("\n".join(",".join(row) for row in (COLUMNS, *rows)), "utf-8")
    return read_receipt(collection, path, archive=archive)


def one(number: str, reference: str, ident: str = "", title: str = "The boat") -> tuple[str, ...]:
    return (number, ident, title, "", reference, "")


def record(collection: Collection, number: str = "TRA-0001") -> Record:
    return record_of(collection, find_item(collection, number).id)


def references(collection: Collection, number: str = "TRA-0001") -> list[str]:
    return [view.words for view in record(collection, number).all("archive_reference")]


def test_what_an_archive_calls_an_item_now_takes_the_place_of_what_it_called_it_before(mine: Collection) -> None:
    send(mine, one("TRA-0001", "PA-1"))
    again = send(mine, one("TRA-0001", "PA-2"))
    assert (again.references, again.replaced, references(mine)) == (1, 1, ["PA-2"])
    assert again.said_of_references == ["1 takes the place of one that this archive had given before."]
    send(mine, one("TRA-0001", "Ω-1"), archive=LIBRARY)
    assert references(mine) == ["PA-2", "Ω-1"], "what another archive calls it stands beside"
    back = send(mine, one("TRA-0001", "PA-1"), archive=MUSEUM.upper())
    assert (back.replaced, sorted(references(mine))) == (1, ["PA-1", "Ω-1"]), "it goes back to what it was"
    told = [row for row in mine.store.every_words() if row[2] == "archive_reference"]
    assert [row[3] for row in told] == ["PA-1", "PA-2", "Ω-1", "PA-1"], "and the log keeps all of it"


def test_the_whole_has_one_reference_of_one_archive_too(mine: Collection) -> None:
    send(mine, one("", "MS 1", title=WHOLE))
    assert send(mine, one("", "MS 2", f"urn:uuid:{mine.id}", WHOLE)).replaced == 1
    assert [words for subject, _, words in mine.store.words_of(["archive_reference"])] == ["MS 2"]


def test_receipts_that_name_no_archive_are_of_one(mine: Collection) -> None:
    send(mine, one("TRA-0001", "PA-1"), archive="")
    send(mine, one("TRA-0001", "PA-2"), archive="")
    assert references(mine) == ["PA-2"]
    send(mine, one("TRA-0001", "PA-3"))
    assert references(mine) == ["PA-2", "PA-3"]
    (mine.folder / "archive.toml").write_text(f'repository = "{LIBRARY}"', "utf-8")
    send(mine, one("TRA-0001", "Ω-4"), archive=LIBRARY)
    assert references(mine) == ["PA-3", "Ω-4"], "one that named none was of the archive of archive.toml"
    send(mine, one("TRA-0001", "Ω-5"), archive="")
    assert references(mine) == ["PA-3", "Ω-5"]


def test_a_reference_that_the_keeper_told_is_not_an_archives(mine: Collection) -> None:
    act = mine.act("told")
    act.state(find_item(mine, "TRA-0001"), "archive_reference", "A 7")
    act.done()
    send(mine, one("TRA-0001", "PA-1"), archive="")
    assert references(mine) == ["A 7", "PA-1"]


def test_what_comes_back_as_it_went_out_says_nothing_new(mine: Collection) -> None:
    for archive, words in ((MUSEUM, "PA-1"), (LIBRARY, "Ω-1")):
        send(mine, one("TRA-0001", words), archive=archive)
    sent = list(blank_rows([record(mine)], CollectionFacts(id=mine.id, title="A family", on_day=date(2026, 11, 25))))[2]
    assert sent[4] == "PA-1; Ω-1"
    assert send(mine, sent).references == 0
    assert send(mine, one("TRA-0001", "PA-2"), one("tra-0001", "PA-2")).references == 1


def test_an_item_is_known_by_its_identifier_alone(mine: Collection) -> None:
    ident = f"urn:uuid:{find_item(mine, 'TRA-0002').id}"
    received = send(mine, one("", "PA-2", ident), one("", "PA-3", "urn:uuid:another"), one("", "PA-4"))
    assert references(mine, "TRA-0002") == ["PA-2"]
    assert received.refused == (
        "Line 3: There is no photograph urn:uuid:another here.",
        "Line 4: a reference without an item's number or identifier.",
    )


def test_one_reference_for_two_items_is_taken_and_said(mine: Collection) -> None:
    received = send(mine, one("TRA-0001", "PA-1"), one("TRA-0002", "PA-1"))
    sentence = "“PA-1” is the reference of TRA-0001, TRA-0002: ask the archive where it was meant for one of them."
    assert (received.references, received.shared, received.refused) == (2, (sentence,), ())
    assert received.said_of_references == [sentence]
    assert send(mine, one("TRA-0002", "PA-2")).shared == ()
    assert send(mine, one("TRA-0002", "PA-1")).shared == (sentence,), "also of an item that this receipt does not tell"


def test_two_references_for_one_item_are_asked(mine: Collection) -> None:
    received = send(mine, one("TRA-0001", "PA-1"), one("TRA-0001", "PA-2"))
    assert references(mine) == ["PA-1"]
    assert received.refused == ("Line 3: it has the reference “PA-1” in line 2; write both in one cell.",)


FAULTS = [
    ("=1+1", True, False), ("'=A2", True, False), ("#REF!", True, False), ("#N/A", True, False),
    ("#NAME?", True, False), ("#DIV/0!", True, False), ("####", True, False), ("Err:508", True, False),
    ("3E05", False, True), ("2.02611E+11", False, True), ("3,1e+5", False, True),
    ("12.11.1932 00:00:00", False, True), ("12/11/1932", False, True), ("1932-11-12 00:00:00", False, True),
    ("11/12/32 0:00", False, True), ("12-Nov", False, True), ("12-nov-1932", False, True), ("Nov-32", False, True),
    ("1932.11.12", False, False), ("12/11/32", False, False), ("PCM-12", False, False), ("12.11/1932", False, False),
    ("#12", False, False), ("E 305", False, False), ("-7", False, False), ("P=Q", False, False), ("13E5", False, False),
]  # fmt: skip
"""ISO/IEC 29500-1, 18.17.3 and 18.8.30 (from memory): what stands in a cell, whether it is refused, whether it is asked
about."""


@every_row(("cell", "refused", "asked"), FAULTS)
@every_row("name", ["Accession number", "The archive's reference"])
def test_what_a_spreadsheet_made_of_a_number_is_not_taken_without_a_word(
    mine: Collection, cell: str, refused: bool, asked: bool, name: str
) -> None:
    row = ("TRA-0001", "", "The boat", *((cell, "") if name == COLUMNS[3] else ("", cell)), "")
    path = mine.folder.parent / "receipt.csv"
    with open(path, "w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows([COLUMNS, row])
    received = read_receipt(mine, path, archive=f"Museum of {name} {cell}")
    taken = (*received.accessions, *(words for words in references(mine) if words == cell))
    assert taken == (() if refused else (cell,))
    assert [f"“{cell.lstrip(chr(39))}” is a fault" in words for words in received.refused] == [True] * refused
    assert [f"“{cell}” may be what a spreadsheet made" in words for words in received.said_of_references] == (
        [True] * asked
    )


ELSEWHERE = "urn:uuid:6f1c1f0e-0000-4000-8000-000000000001"
ACCESSION = ("", "", WHOLE, "2026/14", "", "")


@every_row(
    "rows",
    [
        (ACCESSION, one("TRA-0001", "PA-1", ELSEWHERE)),
        (("TRA-0777", "", "", "2026/14", "", ""), one("TRA-0001", "PA-1", ELSEWHERE), one("TRA-0002", "PA-2")),
        (ACCESSION, one("TRA-0777", "PA-1"), one("", "PA-2", ELSEWHERE)),
        (one("TRA-0001", "PA-1"), ("TRA-0002", ELSEWHERE, "", "", "", "")),
    ],
)
def test_a_receipt_of_another_collection_changes_nothing(mine: Collection, rows: tuple[tuple[str, ...], ...]) -> None:
    before = list(mine.store.every_words())
    with pytest.raises(WrongUse, match=r"is a receipt of another collection; line .* Nothing of it was taken in"):
        send(mine, *rows)
    assert list(mine.store.every_words()) == before


def test_nothing_of_a_line_that_is_refused_is_taken(mine: Collection) -> None:
    received = send(mine, ("TRA-0777", "", "", "2026/14", "", ""), one("TRA-0001", "PA-1"))
    assert (received.accessions, received.references) == ((), 1)
    assert received.refused == ("Line 2: There is no photograph TRA-0777 here.",)


def test_a_line_with_the_identifier_of_the_collection_is_of_the_whole(mine: Collection) -> None:
    accrual = ("", f"urn:uuid:{mine.id}", WHOLE, "2026/131", "", "")
    received = send(mine, ACCESSION, accrual, one("TRA-0777", "PA-1"))
    assert (received.accessions, received.remarks) == (("2026/14", "2026/131"), 0)
    assert received.refused == ("Line 4: There is no photograph TRA-0777 here.",)


def test_different_numbers_of_items_are_no_accession_of_the_whole_and_are_asked_about(mine: Collection) -> None:
    """Describing Archives: A Content Standard, 5.2: an accession number is of what came at one time; from memory."""

    def items(*numbers: str) -> list[tuple[str, ...]]:
        return [(f"TRA-000{at}", "", "The boat", number, "", "") for at, number in enumerate(numbers, 1)]

    sentence = (
        "Lines of items have the accession numbers “2026/115” and “2026/114”, and no line of the whole has one: "
        "ask the archive which is that of the transfer."
    )
    received = send(mine, *items("2026/115", "2026/114"))
    assert (received.accessions, received.remarks, received.said_of_references) == ((), 2, [sentence])
    assert record(mine).words("archive_remark") == "Accession number 2026/115"

    received = send(mine, *items("#REF!", "2026/114"))
    assert (received.accessions, received.said_of_references, len(received.refused)) == (("2026/114",), [], 1)
    # the one that the whole had before is no remark on an item
    received = send(mine, *items("2026/116", "2026/114"), archive=LIBRARY)
    assert (received.accessions, received.remarks, len(received.said_of_references)) == ((), 1, 1)
    # each item's line, or the line of the whole, has that of the whole
    assert send(mine, *items("2026/117", "2026/117")).accessions == ("2026/117",)
    received = send(mine, *items("2026/118", "2026/118.2"), ("", "", WHOLE, "2026/118", "", ""))
    assert (received.accessions, received.remarks, received.said_of_references) == (("2026/118",), 1, [])


def test_one_line_that_is_none_of_ours_takes_no_other_with_it(mine: Collection) -> None:
    """A fault of a spreadsheet (ISO/IEC 29500-1, 18.17.3; from memory) in an identifier, or one line pasted from
    elsewhere, says nothing of the others."""
    third = mine.act("told")
    item = third.new(Kind.ITEM)
    third.state(item, "number", "TRA-0003")
    third.done()
    received = send(
        mine,
        one("TRA-0001", "PA-1"),
        one("TRA-0002", "PA-2", "#REF!"),
        one("TRA-0003", "PA-3", ELSEWHERE, title=""),
        ACCESSION,
        one("TRA-0003", "PA-4", title=""),
    )
    assert (received.references, received.accessions) == (2, ("2026/14",))
    assert received.refused == (
        "Line 3: “#REF!” is a fault or a formula of a spreadsheet: ask the archive what it wrote.",
        "Line 4: TRA-0003 has another identifier here.",
    )


WITHOUT = "Number,Title,Accession number,The archive's reference,Remarks"
SORTED = "Line {}: Its title is that of TRA-000{}: was one column sorted alone? Ask the archive what it wrote."


@pytest.mark.parametrize(
    ("heading", "lines", "references", "refused"),
    [
        (WITHOUT, ["TRA-0001,The quay,,PA-1,", ",the whole transfer,2026/14,,", ",A sitting,,R-1,"], 1,
         ["Line 4: It has no identifier, by which a sitting or a box is known."]),
        (WITHOUT, ["TRA-0001,The quay,,PA-1,", "TRA-0002,The yard,,PA-2,"], 2, []),
        (WITHOUT, ["TRA-0001,The quay,,PA-1,", "TRA-0002,The  QUAY,,PA-2,"], 1, [SORTED.format(3, 1)]),
        (",".join(COLUMNS), ["TRA-0001,,The yard,,PA-1,", "TRA-0002,,The quay,,PA-2,", "TRA-0002,,The mole,,P-9,"], 1,
         [SORTED.format(2, 2), SORTED.format(3, 1)]),
        (",".join(COLUMNS), ["TRA-0001,,The pond,,PA-1,", "TRA-0002,,The mole,,PA-2,"], 0, None),
    ],
)  # fmt: skip
def test_titles_say_whether_a_column_was_sorted_alone(
    tmp_path: Path, heading: str, lines: list[str], references: int, refused: list[str] | None
) -> None:
    """Our own rule: a title that went out beside another number is asked about; one that nobody has here is none."""
    start(tmp_path / "tamm", Settings(title="A family", prefix="TR"))
    with open_collection(tmp_path / "tamm", on_day=date(2026, 11, 25)) as collection:
        act = collection.act("told")
        for number, title in (("TRA-0001", "The quay"), ("TRA-0002", "The yard")):
            item = act.new(Kind.ITEM)
            act.state(item, "number", number)
            act.state(item, "title", title)
        act.done()
        path = tmp_path / "receipt.csv"
        path.write_text("\n".join([heading, *lines]), "utf-8")
        if refused is None:
            with pytest.raises(WrongUse, match="No title of it is one of here"):
                read_receipt(collection, path, archive=MUSEUM)
            return
        received = read_receipt(collection, path, archive=MUSEUM)
    assert (received.references, list(received.refused)) == (references, refused)
