"""Sizes against the definition of the inch; guidance against its worked examples.

4 × 6 in at 300 ppi = 1200 × 1800; 8 × 10 in at 400 ppi = 3200 × 4000 (36 CFR 1236); 108 × 165 mm at 600 ppi = 2551 ×
3898; 24 × 36 mm at 4000 ppi = 3780 × 5669.
"""

import pytest
from tests.every_row import every_row

from boxlore.core.originals.scan_quality import (
    FILM,
    TEXT,
    ScanFacts,
    guide_for,
    largest_print,
    pixels,
    pixels_an_inch,
    scan_findings,
    verso_missing,
)


@pytest.mark.parametrize(
    ("millimetres", "ppi", "wanted"),
    [
        ((4 * 25.4, 6 * 25.4), 300, (1200, 1800)),
        ((8 * 25.4, 10 * 25.4), 400, (3200, 4000)),
        ((108, 165), 600, (2551, 3898)),
        ((24, 36), 4000, (3780, 5669)),
    ],
)
def test_pixels_by_the_definition(millimetres: tuple[float, float], ppi: int, wanted: tuple[int, int]) -> None:
    assert tuple(pixels(length, ppi) for length in millimetres) == wanted
    assert pixels_an_inch(wanted[0], millimetres[0]) == pytest.approx(ppi, rel=1e-3)


def test_the_largest_print() -> None:
    assert largest_print(1800, 1200) == pytest.approx((152.4, 101.6))


@pytest.mark.parametrize(
    ("kind", "size", "least"),
    [
        ("print", (57, 70), 800),
        ("print", (101.6, 152.4), 600),
        ("print", (), 600),
        ("print", (127, 177.8), 400),
        ("print", (203, 254), 300),
        ("card", (108, 165), 400),
    ],
)
def test_guidance_by_size(kind: str, size: tuple[float, ...], least: int) -> None:
    assert guide_for(kind, size).least == least


def test_film_and_text_have_their_own() -> None:
    assert guide_for("negative", (24, 36)) is FILM
    assert guide_for("negative", (203, 254)).least == 300
    assert guide_for("letter", (210, 297)) is TEXT


FINE = ScanFacts(width=2400, height=3600, size_mm=(101.6, 152.4), ppi=600, bits=8, colours=3, profile=True, turned=1)


def rules(**more: object) -> list[str]:
    facts = {name: getattr(FINE, name) for name in FINE.__slots__} | more
    return [one.rule.removeprefix("scan.") for one in scan_findings(ScanFacts(**facts))]  # type: ignore[arg-type]  # fields of it


def test_a_good_scan_asks_nothing() -> None:
    assert rules() == []


@every_row(
    ("more", "rule"),
    [
        ({"width": 1200, "height": 1800, "ppi": 300}, ["coarse"]),
        ({"width": 1200, "height": 1800, "ppi": 0, "size_mm": ()}, []),
        ({"ppi": 200, "size_mm": ()}, ["coarse"]),
        ({"ppi": 1200}, ["resized"]),
        ({"width": 3600, "height": 2400}, ["sideways"]),
        ({"turned": 6}, ["turned"]),
        ({"width": 3600, "height": 2400, "turned": 6}, ["turned"]),
        ({"bits": 1}, ["depth"]),
        ({"bits": 16}, []),
        ({"profile": False}, ["profile"]),
        ({"profile": False, "colours": 1}, []),
        ({"profile": None}, []),
        ({"width": 2340, "height": 3510}, []),
    ],
)
def test_each_rule(more: dict[str, object], rule: list[str]) -> None:
    assert rules(**more) == rule


def test_a_hint_is_only_a_question_and_a_coarse_scan_is_welcome() -> None:
    (hint,) = scan_findings(ScanFacts(width=2400, height=3600, size_mm=(101.6, 152.4), ppi=1200))
    assert hint.message.endswith("?") and hint.severity == "note"
    (coarse,) = scan_findings(ScanFacts(width=600, height=900, size_mm=(101.6, 152.4)))
    assert "Better than none" in coarse.message and "600" in coarse.message


@pytest.mark.parametrize(
    ("sides", "written", "count"),
    [({"recto"}, True, 1), ({"recto", "verso"}, True, 0), ({"recto"}, False, 0), (set(), True, 0)],
)
def test_the_back_is_wanted_where_writing_is_noted(sides: set[str], written: bool, count: int) -> None:
    assert len(verso_missing(sides, written)) == count
