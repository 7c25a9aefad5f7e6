"""Makes `core/people/names_in_text/known_names_table.py`: names of two words and more that all know, and of places.

The names are those of WordNet 3.0 that are written large (data.noun(5WN)): of people who were born a hundred years ago
or are told of in books, and of whatever else is no person, as far as a word of them is a given name or an English word
too. Of people only those whose family name is seldom, in the census of 1990 (public domain, in the package names
0.3.0), more so of those who lived: a John Adams may be a neighbour. And those of GeoNames (CC BY 4.0, the gazetteer of
this project) in countries where English is spoken that begin with no given name. Run after a new release, with the
package wordnet-base: python tests/core/people/names_in_text/make_known_names.py
"""

import lzma
import re
import textwrap
from collections.abc import Iterator
from pathlib import Path

from tests.core.people.names.make_given_names import census

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.statements import fold

WORDNET = Path("/usr/share/wordnet")
PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names_in_text" / "known_names_table.py"
PERSON = "18"
BORN_BEFORE = 1926
SELDOM, SELDOM_ELSE = 0.01, 0.03
"""Per cent of the census that bear a family name, at most; and of somebody who is only told of."""
ENGLISH = frozenset("AU CA GB IE NZ ZA".split())
LARGEST_ELSEWHERE = 50_000
WIDTH = 118
HEAD = (
    '"""Names of two words and more that all know, folded: WordNet 3.0, GeoNames (CC BY 4.0); '
    'made by make_known_names.py."""\n'
)

_BETWEEN = re.compile(r"[ _-]")
_YEAR = re.compile(r"(?<!\d)\d{3,4}(?!\d)")


def known(folder: Path, families: dict[str, float]) -> Iterator[str]:
    """The names of WordNet, folded."""
    for line in (folder / "data.noun").read_text("ascii").splitlines():
        cells = line.split()
        if line.startswith(" "):
            continue
        for name in cells[4 : 4 + 2 * int(cells[3], 16) : 2]:
            parts = _BETWEEN.split(name)
            if len(parts) == 1 or not (parts[0][:1].isupper() and parts[-1][:1].isupper()):
                continue
            if cells[1] != PERSON or _is_of_all(line.partition("|")[2], fold(parts[-1]), families):
                yield fold(name)


def _is_of_all(told: str, last: str, families: dict[str, float]) -> bool:
    """Whether all know somebody by what is told and by the last word of the name; not `Mark Anthony`."""
    years = [int(year) for year in _YEAR.findall(told)]
    share = families.get(last, 0)
    if years or last in CALLED:
        return share <= SELDOM and min(years, default=0) < BORN_BEFORE
    return share <= SELDOM_ELSE


def places() -> Iterator[str]:
    """Names of places, folded."""
    with lzma.open(PACKAGE / "gazetteer" / "data" / "cities.tsv.xz", "rt", encoding="utf-8") as lines:
        for row in (line.rstrip("\n").split("\t") for line in lines):
            is_large = row[2] == "US" and int(row[7] or 0) > LARGEST_ELSEWHERE
            if (row[2] in ENGLISH or is_large) and " " in row[1] and fold(row[1]).split()[0] not in CALLED | TITLES:
                yield fold(row[1])


def _may_be_one(name: str) -> bool:
    """`Box Hill`: where each word is a name, two families may be called so."""
    return EVERYDAY.issuperset(name.split())


def table() -> str:
    """The text of the module."""
    words = CALLED | EVERYDAY | english_words()
    named = {name for name in known(WORDNET, census("all.last")) if not words.isdisjoint(_BETWEEN.split(name))}
    names = sorted(" ".join(_BETWEEN.split(name)) for name in named.union(places()))
    names = [name for name in dict.fromkeys(names) if name.replace(" ", "").isalpha() and not _may_be_one(name)]
    rows = textwrap.wrap(", ".join(name.replace(" ", "_") for name in names), WIDTH, break_long_words=False)
    told = "\n".join(rows).replace("_", " ")
    return f'{HEAD}\nNAMES = """\n{told}\n"""\n'


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
