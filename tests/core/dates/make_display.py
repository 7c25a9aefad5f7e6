"""Makes `core/dates/display_patterns.py`: how CLDR writes days, months, quarters and spans in each language.

Run after a new release of babel, or when a language is added: python tests/core/dates/make_display.py
"""

import re
from pathlib import Path

from babel import Locale
from babel.core import get_cldr_version

LANGUAGES = "en_GB en_US et de fr es it pt nl da sv nb fi ru pl lv lt cs hu mi"
TABLE = Path(__file__).parents[3] / "src" / "boxlore" / "core" / "dates" / "display_patterns.py"
MENDED = {"y. 'gada'. MMMM": "y. 'gada' MMMM"}
"""A pattern of CLDR with a full stop too much, which the same language's pattern with a day does not have."""


def pattern(cldr: str) -> str:
    """`d. MMMM y` → `{d}. {m} {y}`; `{s}` is the month's name where it stands alone."""
    parts = []
    for quoted, field, rest in re.findall(r"'([^']*)'|(d+|MMMM|LLLL|y+)|([^'dMLy]+)", MENDED.get(cldr, cldr)):
        parts.append(quoted + {"": "", "d": "{d}", "MMMM": "{m}", "LLLL": "{s}", "y": "{y}"}[field] + rest)
    return "".join(parts)


def row(code: str) -> tuple[str, ...]:
    """Day, month, day without a year, span, era, months within a date and alone, quarters."""
    locale = Locale.parse(code)
    skeletons = locale.datetime_skeletons
    names = [locale.months[use]["wide"] for use in ("format", "stand-alone")]
    return (
        pattern(locale.date_formats["long"].pattern),
        pattern(skeletons["yMMMM"].pattern),
        pattern(skeletons["MMMMd"].pattern),
        locale.interval_formats[None],
        f"{{y}} {locale.eras['abbreviated'][0]}",
        *("|".join(months[month] for month in range(1, 13)) for months in names),
        "|".join(locale.quarters["format"]["wide"][quarter] for quarter in range(1, 5)),
    )


def table() -> str:
    """The text of the module."""
    lines = [
        f'"""How dates are written: Unicode CLDR {get_cldr_version()}, made by tests/core/dates/make_display.py."""',
        "",
        "PATTERNS: dict[str, tuple[str, str, str, str, str, str, str, str]] = {",
    ]
    for code in LANGUAGES.split():
        cells = "".join(f'        "{" ".join(cell.split())}",\n' for cell in row(code))  # no thin or fixed blanks
        lines.append(f'    "{code.replace("_", "-")}": (\n{cells}    ),')
    lines.append("}")
    lines.append(
        '"""Day, month, day without a year, span, years before Christ, the months within a date and alone, quarters."""'
    )
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
