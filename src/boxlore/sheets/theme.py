"""The look of what is printed: fonts, sizes, colours and margins, read from a TOML file that the keeper may change.

A theme is data alone: no file, markup or address in it is used, except the folder of fonts that it names. Large print
follows the guidelines of the Council of Citizens with Low Vision International (from memory): at least 18 points, wide
line spacing, a sans-serif face, left-aligned. The contrast of text must be at least 7 to 1 (WCAG 2.2, 1.4.6).
"""

import re
import tomllib
from dataclasses import dataclass, fields

from boxlore.core.errors import WrongUse

SERIF, SANS = "Libertinus Serif", "Noto Sans"
FALLBACK = (
    SERIF, "New Computer Modern", SANS, "Noto Sans Hebrew", "Noto Sans Arabic", "Noto Sans Armenian",
    "Noto Sans Georgian", "Noto Sans Thai",
)  # fmt: skip
"""Fonts tried for a letter that the theme's own fonts lack."""

LEAST_CONTRAST = 7.0
"""WCAG 2.2, 1.4.6 (enhanced): those who look at old photographs have old eyes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Theme:
    """How a printed output looks.

    `size` is in points, and no letter is smaller; `leading` (the space between lines) in parts of it, margins in
    millimetres, colours as #rrggbb. `fonts_from` is a folder with further fonts.
    """

    fonts: tuple[str, ...] = (SERIF,)
    fonts_from: str = ""
    size: float = 11.0
    leading: float = 0.55
    ink: str = "#2b2420"
    soft: str = "#544840"
    line: str = "#cdbfae"
    paper: str = "#f4eee4"
    margin_side: float = 12.0
    margin_top: float = 16.0
    margin_bottom: float = 14.0


LARGE_PRINT = Theme(
    fonts=(SANS,), size=18.0, leading=0.75, ink="#000000", soft="#333333", line="#777777", paper="#ffffff",
    margin_side=8.0,
)  # fmt: skip

LINEN = Theme(
    size=12.0, leading=0.65, ink="#35261a", soft="#55402c", line="#d8c4a4", paper="#fbf3e4",
    margin_side=20.0, margin_top=20.0, margin_bottom=18.0,
)  # fmt: skip
"""A book with wide margins and brown ink."""

SLATE = Theme(
    fonts=(SANS,), leading=0.62, ink="#1a242e", soft="#3a4754", line="#b8c4cf", paper="#eef2f5", margin_side=16.0,
)  # fmt: skip
"""A plain face in blue-grey ink."""

THEMES = {"plain": Theme(), "large-print": LARGE_PRINT, "linen": LINEN, "slate": SLATE}

_RANGES = {
    "size": (6.0, 40.0),
    "leading": (0.3, 2.0),
    "margin_side": (8.0, 60.0),
    "margin_top": (12.0, 60.0),
    "margin_bottom": (12.0, 60.0),
}
"""Setting -> the least and the greatest value."""
_COLOUR = re.compile(r"#[0-9a-fA-F]{6}\Z")


def read_theme(text: str, name: str = "the theme") -> Theme:
    """A theme from TOML. Settings that it leaves out are taken from the theme that its `like` names, else from `plain`.

    `name` is used in errors. Raises WrongUse, which names the setting at fault and what may stand there.
    """
    try:
        settings = tomllib.loads(text)
    except (tomllib.TOMLDecodeError, RecursionError) as error:
        raise WrongUse(f"{name} cannot be read: {error}.", "Mend that line.") from error
    like = settings.pop("like", "plain")
    if like not in THEMES:
        raise WrongUse(f"{name} is like “{like}”, which is no theme.", f"There are: {', '.join(THEMES)}.")
    known = {field.name for field in fields(Theme)}
    if unknown := sorted(set(settings) - known):
        raise WrongUse(f"{name} has “{unknown[0]}”, which no theme has.", f"Known: {', '.join(sorted(known))}.")
    base = {field.name: getattr(THEMES[like], field.name) for field in fields(Theme)}
    values = {key: _value(key, value, name) for key, value in settings.items()}
    theme = Theme(**(base | values))
    _readable(theme, name)
    return theme


def _value(key: str, value: object, name: str) -> object:
    """The value of one setting. Raises WrongUse for one that is not allowed."""
    if key == "fonts":
        if isinstance(value, list) and value and all(isinstance(font, str) for font in value):
            return tuple(value)
        raise WrongUse(f"{name}: fonts must be a list of names.", 'Such as fonts = ["Libertinus Serif"].')
    if key == "fonts_from":
        if isinstance(value, str):
            return value
        raise WrongUse(f"{name}: fonts_from must be a folder's name in quotes.")
    if key in _RANGES:
        low, high = _RANGES[key]
        if isinstance(value, int | float) and not isinstance(value, bool) and low <= value <= high:
            return value
        raise WrongUse(f"{name}: {key} is {value!r}.", f"It may be from {low:g} to {high:g}.")
    if isinstance(value, str) and _COLOUR.match(value):
        return value
    raise WrongUse(f"{name}: {key} is {value!r}.", "A colour is written #rrggbb, such as #2b2420.")


def _readable(theme: Theme, name: str) -> None:
    """Raise WrongUse if a colour of text has too little contrast with the paper or with white."""
    for key in ("ink", "soft"):
        for ground in ("#ffffff", theme.paper):
            ratio = contrast(getattr(theme, key), ground)
            if ratio < LEAST_CONTRAST:
                raise WrongUse(
                    f"{name}: {key} on {ground} has a contrast of {ratio:.1f} to 1.",
                    f"Choose a darker {key} or a lighter paper: {LEAST_CONTRAST} to 1 and more can be read by most.",
                )


def contrast(colour: str, ground: str) -> float:
    """The contrast ratio of two colours (#rrggbb), from 1 to 21 (WCAG 2.2, “contrast ratio”)."""
    light, dark = sorted((_luminance(colour), _luminance(ground)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    """The relative luminance of a colour (WCAG 2.2, “relative luminance”)."""
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
