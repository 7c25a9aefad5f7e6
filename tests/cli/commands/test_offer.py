"""`boxlore offer`: the list out, the answer back (our own contract)."""

import csv
from pathlib import Path

import pytest


def test_an_offer_goes_out_and_its_answer_comes_back(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", mine, "offer", tmp_path / "offer", "--box", "1")
    assert (code, out) == (0, "")
    listed = tmp_path / "offer" / "offer.csv"
    with open(listed, encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))
    assert f"{len(rows)} items, " in err and "are not shown: closed, or for the living's sake." in err
    rows[0]["Wanted"], rows[1]["Wanted"], rows[2]["Wanted"] = "Yes", "no", "perhaps"
    rows.append({**rows[0], "Number": "TRA-9999", "Wanted": "yes"})
    with open(listed, "w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, rows[0])
        writer.writeheader()
        writer.writerows(rows)
    code, out, err = run("-c", mine, "offer", "--answer", listed)
    assert (code, out) == (1, "")
    assert "Line 4: “perhaps” is neither yes nor no." in err
    assert f"Line {len(rows) + 1}: there is no photograph TRA-9999 here." in err
    assert "1 is wanted, 1 is not. Next: boxlore transfer OUT --wanted" in err
    assert f"{len(rows) - 4} lines have neither yes nor no: ask the archive about what is on it." in err
    code, _, err = run("-c", mine, "transfer", tmp_path / "wanted", "--wanted", "--originals", "no", "--yes")
    assert "1 record," in err


def test_a_line_whose_columns_have_slipped_is_refused(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    answer = tmp_path / "answer.csv"
    answer.write_text("Number,Title,Wanted\nTRA-0001,Reval, 1908,yes\nTRA-0002,Hull,no\n", "utf-8")
    code, _, err = run("-c", mine, "offer", "--answer", answer)
    assert code == 1 and "Line 2: “yes” stands under no heading" in err and "0 are wanted, 1 is not." in err


WRONG = [
    (["offer"], "There is no folder to write to. Say: boxlore offer OUT, or boxlore offer --answer FILE.csv."),
    (["offer", "--answer", "{tmp}/none.csv"], "There is no file {tmp}/none.csv."),
    (
        ["offer", "--answer", "{tmp}/bare.csv"],
        "bare.csv lacks the column Number or Wanted. Use the offer.csv of the list.",
    ),
    (["offer", "--answer", "{tmp}/latin.csv"], "latin.csv is not in UTF-8."),
]


@pytest.mark.parametrize(("arguments", "sentence"), WRONG)
def test_what_is_no_answer_is_said(run, demo: Path, tmp_path: Path, arguments: list[str], sentence: str) -> None:  # type: ignore[no-untyped-def]
    (tmp_path / "bare.csv").write_text("a,b\n1,2\n", "utf-8")
    (tmp_path / "latin.csv").write_bytes(b"Number,Wanted\nTRA-0001,\x81\n")  # a byte that Windows-1252 leaves free
    code, out, err = run("-c", demo, *[argument.format(tmp=tmp_path) for argument in arguments])
    assert (code, out) == (2, "")
    assert sentence.format(tmp=tmp_path) in err
