"""Tables of cells: RFC 4180 as Python's own reader has it; what a spreadsheet runs is OWASP's list (from memory)."""

import csv
import io

from hypothesis import given
from hypothesis import strategies as st
from tests.every_row import every_row

from boxlore.core.fields.cells import FORMULA, guarded, read_cells, read_rows, unguarded, write_row

BOTH_WAYS = [
    ("", ""),
    ("'", "'"),
    ("'tis", "'tis"),
    ("The wharf", "The wharf"),
    ("=HYPERLINK(1)", "'=HYPERLINK(1)"),
    ("'=1", "''=1"),
    ("''+1", "'''+1"),
    ("-5", "'-5"),
    ("@x", "'@x"),
    ("\t=1", "'\t=1"),
    ("＝1", "'＝1"),  # the wide sign is what is tested
]


@every_row(("words", "cell"), BOTH_WAYS)
def test_a_formula_is_none_and_its_words_come_back(words: str, cell: str) -> None:
    assert (guarded(words), unguarded(cell)) == (cell, words)


@given(st.lists(st.text(alphabet=st.sampled_from("'=+-@\t\r\n,;\"ab＝"), max_size=12), min_size=1, max_size=4))
def test_what_is_written_is_read_again(cells: list[str]) -> None:
    heading = [f"column {at}" for at in range(len(cells))]
    text = write_row(heading) + write_row(cells)
    assert list(read_rows(io.StringIO(text, newline=""))) == [dict(zip(heading, cells, strict=True))]
    plain = list(csv.reader(io.StringIO(text, newline="")))
    assert not any(cell.startswith(FORMULA) for cell in plain[1])


def test_a_cell_may_have_any_length() -> None:
    """Python's own limit is 131,072 characters (csv.field_size_limit)."""
    words = "x" * 200_000
    assert list(read_rows([write_row(["Story"]), write_row([words])])) == [{"Story": words}]
    assert next(read_cells([write_row([words])])) == [words]


def test_a_short_row_has_empty_cells_and_an_empty_table_no_rows() -> None:
    assert list(read_rows(["a,b\r\n", "1\r\n"])) == [{"a": "1", "b": ""}]
    assert list(read_rows([])) == []
