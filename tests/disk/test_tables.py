"""Tables that somebody wrote. The grammar is that of RFC 4180 (2.5 to 2.7); what is refused is ours."""

import os
import tempfile
from pathlib import Path

import pytest
from tests.every_row import every_row

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.disk.tables import LONGEST_CELL, TableRow, lacks_column, read_any_table, read_table


def read(tmp_path: Path, text: str) -> list[TableRow]:
    path = tmp_path / "told.csv"
    path.write_bytes(text.encode())
    return read_table(path, lambda names: None)


def test_rows_come_with_the_line_on_which_they_begin(tmp_path: Path) -> None:
    rows = read(tmp_path, '\ufeffitem, text ,\r\nA,"one, ""two""\nthree",\r\n\r\n,\u200b, \nB\nC,four,,,\n')
    assert rows == [
        TableRow(2, {"item": "A", "text": 'one, "two"\nthree'}),
        TableRow(6, {"item": "B", "text": ""}),
        TableRow(7, {"item": "C", "text": "four"}),
    ]


def test_an_empty_file_has_no_rows(tmp_path: Path) -> None:
    assert read(tmp_path, "") == []


def test_a_line_of_unicode_within_a_cell_parts_no_row(tmp_path: Path) -> None:
    assert read(tmp_path, "item,text\nA,one\u2028two\n") == [TableRow(2, {"item": "A", "text": "one\u2028two"})]


@pytest.mark.parametrize("text", ["item,text\nA,Reval, 1908\nB,x\n", "item,text,\nA,Reval, 1908\nB,x\n"])
def test_a_cell_under_no_heading_is_the_fault_of_its_row(tmp_path: Path, text: str) -> None:
    parted, good = read(tmp_path, text)
    assert parted.fault == "“1908” stands under no heading: put words that hold a comma in quotation marks."
    assert (parted.line, good.fault, good.cells["text"]) == (2, "", "x")


REFUSED = [
    ('item,text\nA,x\nB,"open\nC,y\n', "told.csv cannot be read as a table: line 3 (unexpected end of data)"),
    ('item,text\nA,"open\nB,"closed"\n', "told.csv cannot be read as a table: line 2 ("),
    (f'item,text\nA,"{"x" * (LONGEST_CELL + 1)}"\n', "told.csv cannot be read as a table: line 2 (field larger"),
    ("item,text,item\nA,x,B\n", "told.csv has two columns “item”. Give each column a name of its own."),
]


@pytest.mark.parametrize(("text", "sentence"), REFUSED, ids=["open", "swallowed", "without end", "twice"])
def test_what_is_no_table(tmp_path: Path, text: str, sentence: str) -> None:
    with pytest.raises(WrongUse) as refused:
        read(tmp_path, text)
    assert str(refused.value).startswith(sentence)
    assert refused.value.what_to_do


LETTERS = "item;text\nTRA-0001;Königsberg, “Rõõm”\n"
"""With a byte order mark and without (RFC 2781, 3.2 and 4.3; RFC 4627, 3); the codecs are Python's."""


@every_row("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be"])
def test_tables_in_every_unicode_of_spreadsheets_are_read(tmp_path: Path, encoding: str) -> None:
    path = tmp_path / "told.csv"
    path.write_bytes(LETTERS.encode(encoding))
    (row,) = read_table(path, lambda names: None)
    assert row.cells["text"] == "Königsberg, “Rõõm”"
    assert read_any_table(path, lambda names: None).rows == [row]


@every_row("encoding", ["cp1252", "utf-32", "utf-32-le", "utf-32-be"])
def test_what_spreadsheets_write_besides_is_named(tmp_path: Path, encoding: str) -> None:
    path = tmp_path / "told.csv"
    path.write_bytes(LETTERS.encode(encoding))
    with pytest.raises(WrongUse, match=r"told\.csv is not in UTF-8\. Save it as CSV in UTF-8\."):
        read_table(path, lambda names: None)


@every_row("sign", [",", ";", "\t"])
def test_a_table_from_elsewhere_may_be_in_windows_1252_and_it_is_said(tmp_path: Path, sign: str) -> None:
    path = tmp_path / "told.csv"
    path.write_bytes(f"item{sign}text\r\nTRA-0001{sign}“Rõõm” – ja siis\r\n".encode("cp1252"))
    table = read_any_table(path, lambda names: None)
    assert [row.cells["text"] for row in table.rows] == ["“Rõõm” – ja siis"]
    assert "was read as Windows-1252" in table.note
    path.write_bytes(b"item,text\r\nTRA-0001,\x81\r\n")  # a byte that Windows-1252 leaves free
    with pytest.raises(WrongUse, match="is not in UTF-8"):
        read_any_table(path, lambda names: None)


@every_row("ends", ["\n", "\r\n", "\r"])
def test_lines_of_a_title_above_the_heading_are_no_rows_and_are_said(tmp_path: Path, ends: str) -> None:
    """Common practice of offices, no source; lines are counted as the file has them."""
    path = tmp_path / "told.csv"
    lines = ["Port Chalmers Museum, receipt;", ";", 'item;"text"', "TRA-0001;Kopli, the yard"]
    path.write_text(ends.join(lines), "utf-8", newline="")
    table = read_any_table(path, lambda names: None, ("item", "text"))
    assert [(row.line, row.cells) for row in table.rows] == [(4, {"item": "TRA-0001", "text": "Kopli, the yard"})]
    assert table.note == "What stands above the heading, in line 3, is no row: “Port Chalmers Museum, receipt;”."
    path.write_text(ends.join(lines[1:]), "utf-8", newline="")
    assert read_any_table(path, lambda names: None, ("item", "text")).note == ""
    path.write_text(ends.join(["sep=;", *lines[2:]]), "utf-8", newline="")
    assert len(read_any_table(path, lambda names: None, ("item", "text")).rows) == 1


CARRIAGE_RETURNS = (
    ("item,text\rA,x\rB,y\r", [(2, "x"), (3, "y")]),
    ('"item";"text"\r"A";"x; y"\r"B";"y"', [(2, "x; y"), (3, "y")]),
    ('sep=;\ritem;text\rA;"two\rlines"\r\rB;y\r', [(3, "two\nlines"), (6, "y")]),
    ("item,text\r\nA,x\r\nB,y\r\n", [(2, "x"), (3, "y")]),
)


@every_row(("text", "cells"), CARRIAGE_RETURNS)
def test_lines_that_end_in_a_carriage_return_alone_are_lines(text: str, cells: list[tuple[int, str]]) -> None:
    """As spreadsheets save “CSV (Macintosh)” (common practice, no source)."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "told.csv"
        for encoding in ("utf-8-sig", "utf-16"):
            path.write_bytes(text.encode(encoding))
            rows = read_table(path, lambda names: None)
            assert [(row.line, row.cells["text"]) for row in rows] == cells


def test_other_signs_between_the_columns_are_seen() -> None:
    assert str(lacks_column(Path("a.csv"), ["item;text"], "item", "Add it.")) == (
        "a.csv has no column item. Its columns must be parted by commas. Add it."
    )
    assert str(lacks_column(Path("a.csv"), ["text"], "item", "Add it.")) == "a.csv has no column item. Add it."


@pytest.mark.parametrize("sign", [",", ";", "\t"])
def test_the_heading_says_what_parts_the_columns(tmp_path: Path, sign: str) -> None:
    """Spreadsheets of countries with a decimal comma write semicolons (common practice, no source)."""
    path = tmp_path / "a.csv"
    other = {",": ";", ";": ",", "\t": ","}[sign]
    path.write_text(f"item{sign}text\n1{sign}The boat{other} at last\n", "utf-8")
    assert read_table(path, lambda names: None) == [TableRow(2, {"item": "1", "text": f"The boat{other} at last"})]


def test_what_is_no_file_is_not_waited_for(tmp_path: Path) -> None:
    """A pipe that nobody writes into, and a device without an end (null(4))."""
    os.mkfifo(tmp_path / "told.csv")
    for path in (tmp_path / "told.csv", Path("/dev/zero")):
        with pytest.raises(CouldNot, match="no file"):
            read_table(path, lambda names: None)


def test_a_formula_that_we_guarded_is_read_as_it_was_told(tmp_path: Path) -> None:
    (tmp_path / "told.csv").write_bytes(b"item,text\r\nA,'=1+1\r\nB,'tis\r\n")
    assert [row.cells["text"] for row in read_table(tmp_path / "told.csv", lambda names: None)] == ["=1+1", "'tis"]


NAMED_SIGNS = (
    ("sep=;\r\nitem;text\r\n1;Reval, 1908\r\n", 3),
    ("\ufeffsep=;\nitem;text\n1;Reval, 1908\n", 3),
    ("\nSEP=;\n\nitem;text\n1;Reval, 1908\n", 5),
    ('"sep=;"\r\nitem;text\r\n1;"Reval, 1908"\r\n', 3),
    ("sep=|\nitem|text\n1|Reval, 1908\n", 3),
    ("sep=\t\nitem\ttext\n1\tReval, 1908\n", 3),
    ('sep=,\nitem,text\n1,"Reval, 1908"\n', 3),
    ('"sep=;",\nitem,text\n1,"Reval, 1908"\n', 3),  # saved again by a program that kept the line as a row
    ('sep=;\nitem,text\n1,"Reval, 1908"\n', 3),
    ('\n\nitem,text\n1,"Reval, 1908"\n', 4),
)


@every_row(("text", "line"), NAMED_SIGNS)
def test_a_first_line_that_names_the_sign_between_columns_is_understood(text: str, line: int) -> None:
    """`sep=;`, as spreadsheets write and read it (common practice, no source)."""
    with tempfile.TemporaryDirectory() as folder:
        assert read(Path(folder), text) == [TableRow(line, {"item": "1", "text": "Reval, 1908"})]


def test_a_column_called_so_is_one(tmp_path: Path) -> None:
    assert read(tmp_path, "sep=a,text\n1,x\n") == [TableRow(2, {"sep=a": "1", "text": "x"})]
