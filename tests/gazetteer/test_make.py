"""The shipped data from GeoNames' own tables (its readme.txt: 19 columns; areas: code and name)."""

import json
import lzma
from pathlib import Path

import pytest

from boxlore.core.places.area_names_table import AREA_NAMES, REPLACED
from boxlore.core.places.renamed_cities_table import RENAMED
from boxlore.core.places.taking_apart import fold_place
from boxlore.gazetteer import make

LONG = "A name of more than sixty letters which no printed caption would bear is left out"
ROWS = [
    "588335\tTartu\tTartu\tDorpat,Yuryev,TAY,Tartu\t58.38\t26.73\tP\tPPLA\tEE\t\t18\t793\t\t\t91407\t\t62\tEurope/Tallinn\t2023",
    f"1\tPärnu\tParnu\t{LONG},Pernau,Pernau\t58.39\t24.5\tP\tPPLA\tEE\t\t11\t624\t\t\t50643\t\t9\tEurope/Tallinn\t2023",
]
MADE = [
    "588335\tTartu\tEE\t18\t793\t58.38\t26.73\t91407\tDorpat|Yuryev",
    "1\tPärnu\tEE\t11\t624\t58.39\t24.5\t50643\tParnu|Pernau",
]


def unpacked(path: Path) -> list[str]:
    return lzma.decompress(path.read_bytes()).decode().split("\n")


def test_the_data_are_made_of_the_tables(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Airport codes, names of over sixty letters and the main name again are left out of the other names."""
    (tmp_path / "cities.txt").write_text("\n".join(ROWS) + "\n", "utf-8")
    for name, code in (("one", "EE.18"), ("two", "EE.18.793")):
        (tmp_path / f"{name}.json").write_text(json.dumps([{"code": code, "name": "Tartu"}]), "utf-8")
    monkeypatch.setattr(make, "DATA", tmp_path / "data")
    make.make(tmp_path / "cities.txt", tmp_path / "one.json", tmp_path / "two.json")
    assert unpacked(tmp_path / "data" / "cities.tsv.xz") == MADE
    assert unpacked(tmp_path / "data" / "areas.tsv.xz") == ["EE.18\tTartu", "EE.18.793\tTartu"]
    assert (tmp_path / "data" / "version.txt").read_text("utf-8") == make.VERSION + "\n"


def test_the_shipped_data_say_what_they_were_made_of() -> None:
    assert (make.DATA / "version.txt").read_text("utf-8").strip() == make.VERSION


CAPITALS = {
    "Thanh Hóa": "VN.34", "Long Xuyên": "VN.01", "Ho Chi Minh City": "VN.20", "Hanoi": "VN.44", "Da Nang": "VN.78",
    "Vinh": "VN.58", "Nha Trang": "VN.54", "Huế": "VN.66", "Drammen": "NO.30", "Skien": "NO.38", "Tromsø": "NO.54",
}  # fmt: skip
"""Towns, and the code of the province that they are the seat of (general knowledge, from memory)."""


def test_renamed_cities_have_their_name_of_today_and_years_in_order() -> None:
    rows = {(row[1], row[2]) for row in (line.split("\t") for line in unpacked(make.DATA / "cities.tsv.xz"))}
    folded = {(fold_place(name), country) for name, country in rows}
    assert [row.now for row in RENAMED if (fold_place(row.now), row.country) not in folded] == []
    assert [row.now for row in RENAMED if any(last and last < first for _, first, last in row.names)] == []


def test_areas_whose_codes_the_list_lacks_have_a_name_of_ours() -> None:
    """Each lies in the shipped data under the code that our table names."""
    rows = [line.split("\t") for line in unpacked(make.DATA / "cities.tsv.xz")]
    assert {row[1]: f"{row[2]}.{row[3]}" for row in rows if row[1] in CAPITALS and row[2] in "VN NO"} == CAPITALS
    borne = {f"{row[2]}.{row[3]}" for row in rows if row[2] in (*REPLACED, "NO", "ET", "MT") and row[3]}
    listed = {code for code, _ in (line.split("\t") for line in unpacked(make.DATA / "areas.tsv.xz"))}
    assert not borne - AREA_NAMES.keys() - {code for code in listed if code[:2] not in REPLACED}
    assert not AREA_NAMES.keys() - borne
