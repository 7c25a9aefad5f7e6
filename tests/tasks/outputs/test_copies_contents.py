"""The contents page of a folder of copies (rules of our own, no outside source)."""

from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.tasks.outputs.copies_contents import COLUMNS, FILE_NAME, CopyLine, read_contents, write_contents


def line(number: str, copy: str, **more: str) -> CopyLine:
    told = {"mark": "1/1/1", "scan": "scans/a.jpg", "sha256_of_scan": "a", "sha256_of_copy": "b", "made_for": "family"}
    return CopyLine(copy=copy, number=number, **{**told, **more})


def test_both_ways_in_the_order_of_the_numbers_without_what_is_gone(tmp_path: Path) -> None:
    for name in ("b.jpg", "a, “odd”.jpg"):
        (tmp_path / name).write_bytes(b"x")
    lines = [line("TRA-0002", "b.jpg", longest="800", how="encoded"), line("TRA-0001", "a, “odd”.jpg", additions="yes")]
    write_contents(tmp_path, [*lines, line("TRA-0003", "gone.jpg")])
    assert read_contents(tmp_path) == [lines[1], lines[0]]
    written = (tmp_path / FILE_NAME).read_bytes()
    assert written.decode("utf-8").splitlines()[0] == "\ufeff" + ",".join(COLUMNS)  # RFC 3629, 6
    (tmp_path / FILE_NAME).write_bytes(written.removeprefix("\ufeff".encode()))
    assert read_contents(tmp_path) == [lines[1], lines[0]], "of an earlier version, without the mark"


def test_no_page_and_rows_that_are_none(tmp_path: Path) -> None:
    assert read_contents(tmp_path) == []
    (tmp_path / FILE_NAME).write_bytes(b"copy,number,made_for\n\xff,TRA-0001,family\n,,\nonly\n")
    assert [one.number for one in read_contents(tmp_path)] == ["TRA-0001"]
    (tmp_path / FILE_NAME).unlink()
    (tmp_path / FILE_NAME).mkdir()
    with pytest.raises(CouldNot, match="A folder stands where a file is wanted"):
        read_contents(tmp_path)


def test_what_stays_when_an_item_moves(tmp_path: Path) -> None:
    assert line("TRA-0001", "box-1/a.jpg").key == line("TRA-0001", "box-2/a.jpg").key
    assert line("TRA-0001", "a.jpg").key != line("TRA-0001", "a.jpg", longest="800").key
