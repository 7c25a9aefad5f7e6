"""Setting type: letters without a glyph are found, one by one, and the rest is kept."""

import shutil
import subprocess
from datetime import date
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.sheets import typesetting
from boxlore.sheets.print_run import Printing, shared
from boxlore.sheets.theme import LARGE_PRINT, Theme
from boxlore.sheets.transfer_papers import InventoryLine, inventory_pdf
from boxlore.sheets.typeset_apart import typeset_apart
from boxlore.sheets.typesetting import (
    MISSING,
    Letters,
    families,
    letters_lacking,
    make_pdf,
    template,
    texts,
    with_missing_glyphs,
)

SCRIPTS = {
    "Estonian": "Õõ Ää Öö Üü Šš Žž",
    "Māori": "Āā Ēē Īī Ōō Ūū",
    "Russian": "Школа в Хаапсалу, ё",
    "Greek": "Ελληνικά",
    "Hebrew": "שָׁלוֹם",
    "Arabic": "صورة العائلة",
    "Armenian": "Ընտանիք",
    "Georgian": "ოჯახი",
    "Thai": "ครอบครัว",
    "signs": "“”‘’„«»–—…·×†§¶°½£€№□",
}


def test_the_scripts_that_are_covered() -> None:
    for theme in (Theme(), LARGE_PRINT):
        for script, words in SCRIPTS.items():
            assert letters_lacking([words], theme) == Letters(), script


def machine_has(letter: str) -> bool:
    """Whether fontconfig knows a font of this machine that has the letter."""
    if not shutil.which("fc-list"):
        pytest.skip("fc-list (Debian: fontconfig) is missing")
    listed = subprocess.run(["fc-list", f":charset={ord(letter):x}"], capture_output=True, check=True)
    return bool(listed.stdout.strip())


OF_THE_MACHINE = "家ߊ"
"""A Chinese character and a letter of N'Ko: neither our fonts nor those of the typesetter have them."""


def test_letters_that_our_fonts_lack_come_from_the_machine_or_are_named() -> None:
    """The machine's fonts are those that fontconfig lists; U+10FFF0 is in private use, and in no font."""
    letters = letters_lacking([f"Reval \U0010fff0 and {OF_THE_MACHINE} नमस्ते Ōtākou"], Theme())
    for letter in OF_THE_MACHINE:
        assert (letter in letters.missing) is not machine_has(letter), letter
    assert "\U0010fff0" in letters.missing and not set("RevalŌनमस्ते") & letters.missing
    assert letters.need_machine is any(map(machine_has, OF_THE_MACHINE))


def test_a_page_with_letters_of_the_machine_is_made(tmp_path: Path, printing: Printing) -> None:
    """PDF/A-2a and PDF/UA-1 let the typesetter make no page with a letter that no font has."""
    words = "".join(filter(machine_has, OF_THE_MACHINE))
    data = {**shared(printing, "labels"), "heading": f"x {words}", "wide": 1, "high": 1, "between": 1, "rows": []}
    pdf, findings = make_pdf("labels.typ", {**data, "words": {"advice": "x"}}, Theme(), tmp_path, printing.printed_on)
    assert pdf.startswith(b"%PDF") and not findings


def test_only_those_are_replaced() -> None:
    data = {"a": ["x家", {"b": "族y"}], "n": 1, "plain": "é"}
    assert with_missing_glyphs(data, {"家", "族"}) == {"a": [f"x{MISSING}", {"b": f"{MISSING}y"}], "n": 1, "plain": "é"}
    assert sorted(texts(data)) == ["x家", "é", "族y"]


def test_a_plain_face_falls_back_on_plain_ones() -> None:
    assert families(LARGE_PRINT)[:2] == ["Noto Sans", "Noto Sans Hebrew"]
    assert families(Theme())[:2] == ["Libertinus Serif", "New Computer Modern"]


def test_templates_hold_no_address_and_no_import_but_our_own() -> None:
    for name in ("common.typ", "album.typ", "slips.typ", "labels.typ", "worksheet.typ"):
        source = template(name).decode()
        assert "http" not in source and "@preview" not in source
        assert source.count("#import") == source.count('#import "common.typ": *')


def test_what_is_long_is_set_apart_to_the_same_bytes(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The memory of a long table is given back; the same data and the same day give the same bytes either way."""
    line = InventoryLine("TRA-0001", "1/1/1", "Hay « été »", "1931")
    apart, here = [], []
    for kept, most in ((here, 10**9), (apart, 0)):
        monkeypatch.setattr(typesetting, "MOST_HERE", most)
        kept.append(
            inventory_pdf("Home", "1 photograph.", [("Box 1", [line])], paper="a4", printed_on=date(2026, 11, 25))
        )
    assert apart == here and apart[0].startswith(b"%PDF")
    with pytest.raises(CouldNot, match="A PDF was not made"):
        typeset_apart({"main.typ": b"#nothing-of-this-name()"}, {}, {"root": str(tmp_path)})
