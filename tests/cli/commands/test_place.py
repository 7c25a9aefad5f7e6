"""`boxlore place` and `boxlore places` (our own contract; names and dates of places: tests/gazetteer/cases)."""

import io
import json
from pathlib import Path

import pytest

SENTENCES = [
    (["Dorpat", "--year", "1880"], "Dorpat → match: Tartu, Estonia; then Dorpat, Russian Empire", 0),
    (
        ["Lahore", "--year", "1947"],
        "Lahore → match: Lahore, Punjab, Pakistan; who governed it in 1947 is not known here, or changed that year",
        0,
    ),
    (["Lahore", "--year", "1948"], "Lahore → match: Lahore, Punjab, Pakistan", 0),
    (["the old mill"], "the old mill → kept: kept as told", 1),
]


@pytest.mark.parametrize(("arguments", "sentence", "code"), SENTENCES)
def test_a_place_is_answered_in_one_sentence(run, arguments: list[str], sentence: str, code: int) -> None:  # type: ignore[no-untyped-def]
    left, out, _ = run("place", *arguments)
    assert (left, out.rstrip("\n")) == (code, sentence)


def test_a_dash_reads_places_with_their_years(run, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    monkeypatch.setattr("sys.stdin", io.StringIO("Dorpat\t2000\nDorpat\t\nDorpat\n"))
    code, out, _ = run("place", "--json", "--year", "1880", "-")
    then = [json.loads(line)["choices"][0]["country_then"] for line in out.splitlines()]
    assert (code, then) == (0, ["Estonia", "Russian Empire", "Russian Empire"])


def test_what_is_no_year_is_said(run, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    monkeypatch.setattr("sys.stdin", io.StringIO("Dorpat\tlong ago\n"))
    code, out, err = run("place", "-")
    assert (code, out) == (2, "")
    assert "“long ago” is no year. Write a line as: place, a tab, a year." in err


@pytest.fixture
def home(run, tmp_path: Path) -> Path:  # type: ignore[no-untyped-def]
    assert run("new", tmp_path / "tamm")[0] == 0
    return tmp_path / "tamm"


def test_places_of_the_familys_own(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", home, "places")
    assert (code, out) == (0, "")
    assert err.startswith("No place of the family's own yet.")
    added = ["--inside", "Port Chalmers, New Zealand", "--at", "-45.82, 170.62", "--also", "The cottage"]
    code, _, err = run("-c", home, "places", "add", "Grandpa's house", *added)
    assert (code, err) == (0, "“Grandpa's house” is a place of the family's own now.\n")
    code, out, err = run("-c", home, "places")
    assert (code, err) == (0, "")
    assert out.startswith("Grandpa's house (also The cottage), in Port Chalmers, ")
    assert out.rstrip().endswith("New Zealand  45.82° S, 170.62° E")
    (row,) = [json.loads(line) for line in run("-c", home, "places", "--json")[1].splitlines()]
    assert row == {
        "names": ["Grandpa's house", "The cottage"],
        "inside": "Port Chalmers, New Zealand",
        "point": [-45.82, 170.62],
    }
    assert run("-c", home, "place", "the cottage")[1].startswith("the cottage → match: Grandpa's house, Port Chalmers")


def test_an_own_place_that_lies_elsewhere_than_said_is_asked_about(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run(
        "-c", home, "places", "add", "The farm", "--inside", "Tallinn, Estonia", "--at", "-45.82, 170.62"
    )
    assert code == 1
    assert len(err.splitlines()) == 2


TARTU = (
    "588335\tTartu\tTartu\tDorpat,Yuryev\t58.38062\t26.72509\tP\tPPLA\tEE\t\t18\t793\t\t\t91407\t\t62\tEurope/Tallinn\t"
    "2023-03-01"
)
HAMLET = "999999\tKuuse talu\tKuuse talu\t\t58.5\t26.5\tP\tPPL\tEE\t\t18\t\t\t\t4\t\t60\tEurope/Tallinn\t2023-03-01"
"""Rows of GeoNames' 19 columns (its readme.txt, “The main 'geoname' table”); the hamlet is invented."""


def test_a_bigger_gazetteer_is_taken_in(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    (tmp_path / "EE.txt").write_text(f"{TARTU}\n{HAMLET}\n", "utf-8")
    assert run("-c", home, "place", "Kuuse talu")[1].startswith("Kuuse talu → kept")
    code, _, err = run("-c", home, "places", "import", tmp_path / "EE.txt", "--country", "ee")
    assert code == 0
    assert "places and areas are known to this collection now, beside the shipped ones." in err
    assert run("-c", home, "place", "Kuuse talu")[1].startswith("Kuuse talu → match: Kuuse talu")
