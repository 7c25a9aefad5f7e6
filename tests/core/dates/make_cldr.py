"""Makes `core/dates/cldr_table.py`: names of months and days of the week in every form that CLDR has of them.

Run after a new release of babel, or when a language is added: python tests/core/dates/make_cldr.py
"""

from pathlib import Path

from babel import Locale
from babel.core import get_cldr_version

LANGUAGES = "en et de fr es it pt nl da sv nb fi ru pl lv lt cs hu mi"
TABLE = Path(__file__).parents[3] / "src" / "boxlore" / "core" / "dates" / "cldr_table.py"


def forms(names: object, key: int) -> str:
    """Every form of one name, long and short, alone and within a date, without full stops."""
    found = dict.fromkeys(
        str(names[use][width][key]).casefold().strip(".")  # type: ignore[index]
        for use in ("format", "stand-alone")
        for width in ("wide", "abbreviated")
    )
    return "|".join(found)


def table() -> str:
    """The text of the module."""
    lines = [
        f'"""Months and days of the week: Unicode CLDR {get_cldr_version()}, made by tests/core/dates/make_cldr.py."""',
        "",
    ]
    for name, attribute, keys in (("MONTHS", "months", range(1, 13)), ("WEEKDAYS", "days", range(7))):
        lines.append(f"{name}: dict[str, tuple[str, ...]] = {{")
        for code in LANGUAGES.split():
            names = getattr(Locale(code), attribute)
            row = ", ".join(f'"{forms(names, key)}"' for key in keys)
            lines.append(f'    "{code}": ({row}),')
        lines.append("}  # fmt: skip")
    first, second = lines.index("}  # fmt: skip"), len(lines) - 1
    lines.insert(first + 1, '"""January to December, each with its forms."""')
    lines.insert(first + 2, "")
    lines.insert(second + 3, '"""Monday to Sunday."""')
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
