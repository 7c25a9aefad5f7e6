"""Makes `core/people/names/nicknames_table.py`: what people say for English given names.

The names are those of the package `nicknames` 1.0.1 (Apache License 2.0), a list that genealogists made. Left out are
forms of two letters, full forms of short names, and English words that are no known given name. Run after a new
release: python tests/core/people/names/make_nicknames.py
"""

import csv
from importlib.metadata import files, version
from pathlib import Path
from textwrap import wrap

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names_in_text.ordinary_words import is_english

TABLE = Path(__file__).parents[4] / "src" / "boxlore" / "core" / "people" / "names" / "nicknames_table.py"
SHORTEST = 3


def table() -> str:
    """The text of the module."""
    path = next(file.locate() for file in files("nicknames") or () if file.name == "names.csv")
    rows: dict[str, set[str]] = {}
    for row in csv.DictReader(Path(str(path)).read_text("utf-8").splitlines()):
        full, short = row["name1"], row["name2"]
        is_word = is_english(short) and short not in CALLED
        is_full = len(short) > len(full) and not short.endswith(("ie", "ey", "y", "i"))  # `thomas` of `thom`
        if len(short) >= SHORTEST and not is_full and short.isalpha() and full.isalpha() and not is_word:
            rows.setdefault(full, set()).add(short)
    text = ", ".join(f"{full}: {' '.join(sorted(shorts))}" for full, shorts in sorted(rows.items()))
    head = f'"""Short forms of English given names: nicknames {version("nicknames")} (Apache License 2.0); '
    head += 'made by make_nicknames.py."""\n'
    return f'{head}\nNICKNAMES = """\n{chr(10).join(wrap(text, 118, break_on_hyphens=False))}\n"""\n'


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
