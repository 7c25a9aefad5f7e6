"""Makes `exports/language_codes_table.py` of ISO 639, as pycountry has it: the English name and the bibliographic code.

Run after a new release of pycountry: python tests/exports/make_language_codes.py
"""

from importlib.metadata import version
from pathlib import Path

import pycountry

TABLE = Path(__file__).parents[2] / "src" / "boxlore" / "exports" / "language_codes_table.py"


def table() -> str:
    """The text of the module."""
    rows = [
        f'    "{row.alpha_2}": ("{row.name.partition(" (")[0]}", "{getattr(row, "bibliographic", row.alpha_3)}"),'
        for row in sorted((row for row in pycountry.languages if hasattr(row, "alpha_2")), key=lambda row: row.alpha_2)
    ]
    head = (
        f"ISO 639-1 code -> (English name, ISO 639-2/B code): Debian's iso-codes by pycountry {version('pycountry')}."
    )
    made = "Made by tests/exports/make_language_codes.py."
    lines = [f'"""{head}', "", made, '"""', "", "LANGUAGES: dict[str, tuple[str, str]] = {", *rows, "}"]
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    TABLE.write_text(table(), "utf-8")
