"""Themes (WCAG 2.2 for contrast; CCLVI large-print guidelines: 18 points and more)."""

import pytest

from boxlore.core.errors import WrongUse
from boxlore.sheets.theme import LARGE_PRINT, LEAST_CONTRAST, THEMES, Theme, contrast, read_theme

RATIOS = [
    # from memory: black on white 21, the grey #767676 is the lightest that passes 4.5 on white (WebAIM, WCAG guides)
    ("#000000", "#ffffff", 21.0),
    ("#ffffff", "#ffffff", 1.0),
    ("#767676", "#ffffff", 4.54),
    ("#777777", "#ffffff", 4.48),
    ("#ff0000", "#ffffff", 4.0),
]


@pytest.mark.parametrize(("one", "other", "ratio"), RATIOS)
def test_contrast(one: str, other: str, ratio: float) -> None:
    assert contrast(one, other) == contrast(other, one) == pytest.approx(ratio, abs=0.005)


@pytest.mark.parametrize("name", THEMES)
def test_the_themes_can_be_read(name: str) -> None:
    theme = THEMES[name]
    for ground in (theme.paper, "#ffffff"):
        assert contrast(theme.ink, ground) >= LEAST_CONTRAST
        assert contrast(theme.soft, ground) >= LEAST_CONTRAST


def test_large_print_is_large() -> None:
    assert LARGE_PRINT.size >= 18


def test_a_theme_of_ones_own() -> None:
    made = read_theme('like = "large-print"\nsize = 20\nfonts = ["Libertinus Serif"]\nink = "#101010"\n')
    assert (made.size, made.fonts, made.ink) == (20, ("Libertinus Serif",), "#101010")
    assert read_theme("") == Theme()


REFUSED = [
    ("size =", "cannot be read"),
    ('like = "fancy"', "no theme"),
    ('colour = "red"', "“colour”, which no theme has"),
    ("size = 3", "from 6 to 40"),
    ("size = true", "from 6 to 40"),
    ('ink = "red"', "#rrggbb"),
    ('ink = "#fff"', "#rrggbb"),
    ("fonts = []", "list of names"),
    ('fonts = "Serif"', "list of names"),
    ("fonts_from = 3", "folder’s name".replace("’", "'")),
    ('soft = "#bbbbbb"', "contrast of 1."),
    ('paper = "#555555"', "contrast of"),
]


@pytest.mark.parametrize(("text", "why"), REFUSED)
def test_what_no_theme_may_hold(text: str, why: str) -> None:
    with pytest.raises(WrongUse) as refused:
        read_theme(text, "mine.toml")
    assert why in str(refused.value) and "mine.toml" in str(refused.value)
