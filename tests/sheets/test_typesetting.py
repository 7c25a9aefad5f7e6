"""Setting type: letters without a glyph are found, one by one, and the rest is kept."""

from boxlore.sheets.theme import LARGE_PRINT, Theme
from boxlore.sheets.typesetting import MISSING, families, template, texts, with_missing_glyphs, without_glyph

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
            assert without_glyph([words], theme) == set(), script


def test_letters_without_a_glyph_are_found_among_many() -> None:
    assert without_glyph(["Reval \U00013000 and 家族 Ōtākou"], Theme()) == {"\U00013000", "家", "族"}


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
