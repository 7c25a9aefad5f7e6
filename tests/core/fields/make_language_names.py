"""Makes `core/fields/language_names_table.py`: what languages are called, from Unicode CLDR.

Each has its English name, its own, and those in the languages of `make_country_words.py`. A name of two languages is
left out. Run after a new release of babel: python tests/core/fields/make_language_names.py
"""

from pathlib import Path

from babel import Locale
from babel.core import get_cldr_version
from babel.localedata import locale_identifiers

from boxlore.core.fields.language import is_language
from boxlore.core.statements import fold

LANGUAGES = "en et de fr es it pt nl da sv nb fi ru uk pl lv lt cs sk hu ro hr sl el tr mi"
TABLE = Path(__file__).parents[3] / "src" / "boxlore" / "core" / "fields" / "language_names_table.py"


def names() -> dict[str, list[str]]:
    """Language tag -> folded names."""
    tags_of: dict[str, set[str]] = {}
    in_english = {fold(name): tag for tag, name in Locale("en").languages.items() if is_language(tag)}
    own = {tag: Locale(tag).languages.get(tag) for tag in locale_identifiers() if tag.isalpha()}
    told = [(tag, name) for tag, name in own.items() if name]
    told += [pair for language in LANGUAGES.split() for pair in Locale(language).languages.items()]
    for tag, name in told:
        if is_language(tag) and in_english.get(fold(name), tag) == tag:
            tags_of.setdefault(fold(name), set()).add(tag)
    names_of: dict[str, list[str]] = {}
    for name, tags in sorted(tags_of.items()):
        if len(tags) == 1 and "(" not in name:
            names_of.setdefault(tags.pop(), []).append(name)
    return dict(sorted(names_of.items()))


def table() -> str:
    """The text of the module."""
    rows = [f'    "{tag}": "{"|".join(words)}",' for tag, words in names().items()]
    head = f"What languages are called, in English, in themselves and in others: Unicode CLDR {get_cldr_version()}."
    made = "Folded. Made by tests/core/fields/make_language_names.py."
    return "\n".join([f'"""{head}', "", f"{made}", '"""', "", "LANGUAGE_NAMES: dict[str, str] = {", *rows, "}", ""])


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
