"""Our tables opened and saved by a spreadsheet: LibreOffice Calc, which an archive's office may well have (Debian:
libreoffice-calc-nogui). It opens what we write, and what it saves, in the ways that an office saves, is read as it was
typed. CSV: RFC 4180; what a spreadsheet makes of a cell that begins a formula is common practice, no source.
"""

import csv
import shutil
import subprocess
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from tests.drawn import IN_CI

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.statements import Kind, Subject
from boxlore.exports.inventory import as_table
from boxlore.tasks.archive.receipt import COLUMNS, WHOLE, blank_rows, read_receipt
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings

CALC = shutil.which("soffice") if IN_CI else None
pytestmark = pytest.mark.skipif(CALC is None, reason="LibreOffice is started in CI alone, for some seconds")

TITLE, REMARK = '=SUM(1;2) is no sum, “Jaanipäev”; "so", he said', "Mould on TRA-0001; dried, “käes”"
SAVED = {"semicolons, Windows-1252": ("59", "1", "cp1252", ";"), "tabs, UTF-16": ("9", "65535", "utf-16", "\t")}
"""How it is saved: the column mark and the character set as LibreOffice numbers them (CSV filter parameters in its
help), and as Python names them."""


@pytest.fixture
def mine(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "mine", Settings(title="A family", prefix="TR"), on_day=date(2026, 11, 25))
    with open_collection(tmp_path / "mine", on_day=date(2026, 11, 25)) as collection:
        act = collection.act("one item")
        item = act.new(Kind.ITEM)
        act.state(item, "number", "TRA-0001")
        act.state(item, "title", TITLE)
        act.done()
        yield collection


def calc(home: Path, *arguments: str) -> None:
    """Run LibreOffice without a window, with settings of its own."""
    command = [str(CALC), f"-env:UserInstallation={(home / 'settings').as_uri()}", "--headless", *arguments]
    subprocess.run(command, cwd=home, check=True, capture_output=True, timeout=120)


def test_a_receipt_that_a_spreadsheet_saved_is_read_as_it_was_typed(mine: Collection, tmp_path: Path) -> None:
    record = record_of(mine, find_item(mine, "TRA-0001").id)
    heading, whole, item = blank_rows(
        [record], CollectionFacts(id=mine.id, title="A family", on_day=date(2026, 11, 25))
    )
    assert heading == COLUMNS and item[2] == TITLE
    rows = [heading, (*whole[:3], "2026/117 ä", *whole[4:]), (*item[:4], "PA 1-7", REMARK)]
    (tmp_path / "receipt.csv").write_bytes(b"".join(as_table(rows)))
    calc(tmp_path, "--infilter=CSV:44,34,76,1", "--convert-to", "ods", "receipt.csv")
    for name, (mark, charset, encoding, parted) in SAVED.items():
        out = tmp_path / charset
        how = f"csv:Text - txt - csv (StarCalc):{mark},34,{charset},1"
        calc(tmp_path, "--convert-to", how, "--outdir", str(out), "receipt.ods")
        text = (out / "receipt.csv").read_text(encoding)
        cells = list(csv.reader(text.splitlines(), delimiter=parted))
        assert [row[:2] + row[3:] for row in cells] == [[*row[:2], *row[3:]] for row in map(list, rows)], name
        assert cells[2][2] == f"'{TITLE}", "a cell that would be a formula is told as text"
        assert (cells[1][2], cells[2][4]) == (WHOLE, "PA 1-7")
        received = read_receipt(mine, out / "receipt.csv", archive=f"Museum, {name}")
        assert (received.accessions, received.refused) == (("2026/117 ä",), ()), name
    told = record_of(mine, record.id)
    assert {view.words for view in told.all("archive_reference")} == {"PA 1-7"}
    remarks = [
        row.words for row, _ in mine.store.statements(Subject(Kind.ITEM, record.id)) if row.field == "archive_remark"
    ]
    assert set(remarks) == {REMARK}
