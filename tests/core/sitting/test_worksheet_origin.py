"""Of which collection a worksheet is (our own rules; the check letter is ISO/IEC 7064, tested with the codes)."""

import re

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.sitting.worksheet_origin import before, read_origin, read_said, write_origin

OURS, THEIRS = write_origin("0193a1b2-0000-7000-8000-000000000001"), write_origin("another")


def test_a_code_of_a_collection_comes_back_however_it_is_typed() -> None:
    assert re.fullmatch(r"[0-9A-HJKMNP-TV-Z]{6}-[0-9A-Z]", OURS) and OURS != THEIRS
    for at in range(200):
        code = write_origin(f"collection {at}")
        typed = code.lower().replace("0", "o").replace("1", "l")
        assert read_origin(f" {typed.replace('-', '')} ") == read_origin(typed.replace("-", " ")) == code


@every_row("words", ["", "7KQ2M9", "TRA-0001", OURS[:-1] + ("A" if OURS[-1] != "A" else "B"), f"{OURS}{OURS}"])
def test_what_is_no_code_of_a_collection(words: str) -> None:
    with pytest.raises(WrongUse, match="is no code of a collection"):
        read_origin(words)


SAID = f"""# Type each answer after its code.
# collection: {OURS.lower()} (leave it)
# TRA-0001 · Box 1
A1-S-B: A long day
collection: stamps-a great many
# TRA-0002, a remark
# TRA-2 is none
COLLECTION = {THEIRS.replace("-", " ")}
A2-D-X: 1931
"""


def test_what_a_file_says_of_where_its_answers_belong() -> None:
    said = read_said(SAID)
    assert said.origins == ((2, OURS), (8, THEIRS))
    assert said.headings == ((3, "TRA-0001"), (6, "TRA-0002"))
    assert [line for line in said.text.splitlines() if "ollection" in line] == ["collection: stamps-a great many"]
    assert len(said.text.splitlines()) == len(SAID.splitlines())
    assert [before(line, said.origins) for line in (1, 4, 9)] == ["", OURS, THEIRS]


def test_a_mistyped_code_of_a_collection_above_the_answers_is_said() -> None:
    for typed in ("7KQ2M9-9", "7KQ2M99", "", "Tamm"):
        with pytest.raises(WrongUse, match=f"“{typed}” is no code of a collection"):
            read_said(f"\nCollection: {typed}\nA1-S-B: A long day")
    assert read_said("# Collection: of the Tamms\nA1-S-B: x").origins == ()
    assert read_said(f"Collection: {OURS.replace('-', '')} (leave it)\nA1-S-B: x").origins == ((1, OURS),)
