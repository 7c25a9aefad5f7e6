"""Makes `core/places/country_words_table.py`: what countries are called in other languages, from Unicode CLDR.

Run after a new release of babel, or when a language is added: python tests/core/places/make_country_words.py
"""

from pathlib import Path

from babel import Locale
from babel.core import get_cldr_version

from boxlore.core.places.abbreviations_table import COUNTRIES
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.taking_apart import fold_place

LANGUAGES = "et de fr es it pt nl da sv nb fi ru uk pl lv lt cs sk hu ro hr sl el tr mi"
TABLE = Path(__file__).parents[3] / "src" / "boxlore" / "core" / "places" / "country_words_table.py"


def words() -> dict[str, list[str]]:
    """Country code -> folded names. A name of several countries, one in English, and the word island are left out."""
    english = {fold_place(name) for name in (*COUNTRY_NAMES.values(), *COUNTRIES)} | {"island"}
    codes_of: dict[str, set[str]] = {}
    for language in LANGUAGES.split():
        for code, name in Locale(language).territories.items():
            if code in COUNTRY_NAMES and len(fold_place(name)) > 3:
                codes_of.setdefault(fold_place(name), set()).add(code)
    names_of: dict[str, list[str]] = {}
    for name, codes in sorted(codes_of.items()):
        if len(codes) == 1 and name not in english:
            names_of.setdefault(codes.pop(), []).append(name)
    return dict(sorted(names_of.items()))


def table() -> str:
    """The text of the module."""
    rows = [f'    "{code}": "{"|".join(names)}",' for code, names in words().items()]
    head = f"What countries are called in other languages: Unicode CLDR {get_cldr_version()}, folded."
    made = "Made by tests/core/places/make_country_words.py."
    return "\n".join([f'"""{head}', "", f"{made}", '"""', "", "COUNTRY_WORDS: dict[str, str] = {", *rows, "}", ""])


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
