"""The shipped data from GeoNames' own tables (its readme.txt: 19 columns; areas: code and name)."""

import json
import lzma
from pathlib import Path

import pytest

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
