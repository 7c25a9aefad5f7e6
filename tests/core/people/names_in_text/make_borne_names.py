"""Makes `core/people/names_in_text/borne_names_table.py`: what speaks for a person, and what for something else.

    family names   those that one in 100,000 and more bear in the United States census of 1990 (public domain, in the
                   package names 0.3.0), and those of the registers of many countries in the package Faker 40.63.0 (MIT
                   licence), in the letters of each, without those that are English words
    given names    of the same two packages, besides those of `given_names_table`
    places         those of the gazetteer (GeoNames, CC BY 4.0) of 1,000 people where English is spoken, of 5,000 with
                   a given name elsewhere, of 50,000 without, the larger parts of countries, and countries
    makes          of cars, by their first word (the package @faker-js/faker 10.6.0, MIT licence)
    famous         names of one word by which all know somebody who was born a hundred years ago, or is told of in books
                   (WordNet 3.0), as far as few others bear them
    books          what they are called, in two words and more (@faker-js/faker)

Run after a new release, with the packages wordnet-base and names, and with the definitions of @faker-js/faker as JSON:
node -e 'o=[];f=require("@faker-js/faker").allFakers;for(k in f){r=f[k].rawDefinitions;
o.push({...r.book,make:r.vehicle?.manufacturer})};console.log(JSON.stringify(o))' > books.json
python tests/core/people/names_in_text/make_borne_names.py books.json
"""

import json
import lzma
import re
import sys
from collections.abc import Iterable, Iterator
from importlib import import_module
from pathlib import Path
from textwrap import wrap

from tests.core.people.names.make_given_names import census
from tests.core.people.names_in_text.make_known_names import BORN_BEFORE, ENGLISH, PERSON, SELDOM, WORDNET
from tests.core.people.names_in_text.shortened_words import shortened

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.names_in_text.text_normalising import read_text
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary
from boxlore.core.places.country_words_table import COUNTRY_WORDS

PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names_in_text" / "borne_names_table.py"
LOCALES = (
    "ar_AA ar_DZ az_AZ bg_BG cs_CZ da_DK de_AT de_CH de_DE de_LU el_GR en_GB en_IE en_IN en_NZ en_US es_AR es_CL es_ES "
    "es_MX et_EE fa_IR fi_FI fr_BE fr_CA fr_CH fr_FR ga_IE he_IL hr_HR hu_HU hy_AM it_IT ka_GE lt_LT lv_LV nl_BE nl_NL "
    "no_NO pl_PL pt_BR pt_PT ro_RO ru_RU sk_SK sl_SI sv_SE uk_UA"
).split()
OTHER_LETTERS = "ar_AA ar_DZ bg_BG el_GR fa_IR he_IL hi_IN hy_AM ka_GE mk_MK ru_RU uk_UA".split()
IN_CENSUS = 0.001
"""Per cent that bear a family name, at least."""
LARGE, LARGE_AND_A_NAME, LARGE_ELSEWHERE = 1_000, 5_000, 50_000
NEAR = frozenset("EE FI LV SE".split())
"""Countries of which places are known by each of their names."""
SHORTEST, LONG_GIVEN = 3, 5
HEAD = (
    '"""Names of families, places and books, and the famous, folded: names 0.3.0, Faker 40.63.0, GeoNames, '
    'WordNet 3.0, @faker-js/faker 10.6.0; made by make_borne_names.py."""  # noqa: E501'
)
_SIDE = re.compile("^(?:North|South|East|West|Greater) ")
_YEAR = re.compile(r"(?<!\d)\d{3,4}(?!\d)")


def one_word(name: str) -> str:
    """A name as a text's words are read; nothing where it is several."""
    words = read_text(name).words
    return words[0].folded if len(words) == 1 and words[0].folded.isalpha() else ""


def registered_whole(locales: Iterable[str], kind: str) -> Iterator[str]:
    """The names of a kind (`first_names`, `last_names`) in the registers of some countries, as they stand there."""
    for locale in locales:
        provider = import_module(f"faker.providers.person.{locale}").Provider
        for row in dir(provider):
            names = getattr(provider, row)
            if row.startswith(kind) and isinstance(names, (tuple, list, dict, set)):
                yield from names


def registered(locales: Iterable[str], kind: str) -> Iterator[str]:
    """The same, as a text's words are read."""
    return map(one_word, registered_whole(locales, kind))


def families() -> set[str]:
    """The family names that are no words."""
    borne = census("all.last")
    names = {name for name, share in borne.items() if share >= IN_CENSUS} | set(registered(LOCALES, "last_names"))
    names = {name for name in names if len(name) >= SHORTEST} - CALLED - TITLES
    return {name for name in names if not (name in english_words() or is_ordinary(name))}


def places(elsewhere: set[str]) -> set[str]:
    """Names of places and of the larger parts of countries; of several words with `_` between."""
    found: set[str] = set()
    data = PACKAGE / "gazetteer" / "data"
    with lzma.open(data / "cities.tsv.xz", "rt", encoding="utf-8") as lines:
        for row in (line.rstrip("\n").split("\t") for line in lines):
            least = LARGE if row[2] in ENGLISH else LARGE_ELSEWHERE
            people = int(row[7] or 0)
            if people >= least or (people >= LARGE_AND_A_NAME and one_word(row[1]) in CALLED):
                found.update(
                    (
                        several(row[1]),
                        *(several(name) for name in row[8].split("|") if row[2] in NEAR or name in elsewhere),
                    )
                )
    with lzma.open(data / "areas.tsv.xz", "rt", encoding="utf-8") as lines:
        for code, name in (line.rstrip("\n").split("\t") for line in lines):
            if code.count(".") == 1 or code.startswith("GB"):
                found.update((several(name), several(_SIDE.sub("", name))))
    return found | {several(name) for names in COUNTRY_WORDS.values() for name in names.split("|")}


def several(name: str) -> str:
    """The words of a name, folded, with `_` between; nothing where they are many."""
    words = [word.folded for word in read_text(name).words]
    return "_".join(words) if len(words) < 4 and all(map(str.isalpha, words)) and len("".join(words)) > 2 else ""


def famous() -> Iterator[str]:
    """Those of one word whom all know."""
    borne = census("all.last")
    for line in (WORDNET / "data.noun").read_text("ascii").splitlines():
        cells = line.split()
        if line.startswith(" ") or cells[1] != PERSON:
            continue
        born = min(map(int, _YEAR.findall(line.partition("|")[2])), default=0)
        for name in cells[4 : 4 + 2 * int(cells[3], 16) : 2]:
            folded = one_word(name)
            if name[0].isupper() and folded and born < BORN_BEFORE and borne.get(folded, 0) <= SELDOM:
                yield folded


def books(definitions: Path) -> Iterator[str]:
    """What books are called, in two words and more, also without what leads to a name in a title."""
    for book in json.loads(definitions.read_text("utf-8")):
        for title in (book or {}).get("title", ()):
            yield from _whole([word.folded for word in read_text(title).words])


def makes(definitions: Path) -> Iterator[str]:
    """Makes of cars, by their first word."""
    for in_language in json.loads(definitions.read_text("utf-8")):
        for make in (in_language or {}).get("make", ()):
            first = read_text(make).words[0].folded
            if len(first) >= SHORTEST and first.isascii() and not is_ordinary(first):
                yield first


def _whole(words: list[str]) -> Iterator[str]:
    first = next((at for at, word in enumerate(words) if word in CALLED), 0)
    for rest in (words, words[first:]):
        if len(rest) > 1 and all(map(str.isalpha, rest)) and not CALLED.isdisjoint(rest):
            yield " ".join(rest)


def table(definitions: Path) -> str:
    """The text of the module."""
    names = families()
    given = {name for name in registered(LOCALES, "first_names") if name.isascii() and len(name) >= SHORTEST}
    given |= {name for kind in ("female.first", "male.first") for name in census(kind) if len(name) >= SHORTEST}
    given = {name for name in given - CALLED - TITLES if not (name in english_words() or is_ordinary(name))}
    borne = {name: share for kind in ("female.first", "male.first") for name, share in census(kind).items()}
    called = {name for name in CALLED - EVERYDAY - names if borne.get(name, 0) > SELDOM or len(name) < LONG_GIVEN}
    alone = set(famous()) - called - english_words()
    other = set(registered(OTHER_LETTERS, "first_names"))
    unlike = {name for name in other if not name.isascii()}
    sets = (
        ("FAMILIES", names, "Family names that are no English words; each without what it shares with the one before."),
        ("GIVEN_TOO", given, "Given names that may be family names or places too, or are seldom."),
        ("PLACES", places({name.capitalize() for name in unlike}), "Places, and the larger parts of countries."),
        ("MAKES", makes(definitions), "Makes of cars."),
        ("FAMOUS", {name for name in alone if not is_ordinary(name)}, "Of one word, whom all know."),
        ("GIVEN_ELSEWHERE", unlike, "Given names in other letters than Latin ones."),
    )  # fmt: skip
    parts = [HEAD]
    for name, of_it, said in sets:
        rows = wrap(" ".join(shortened(set(of_it) - {""})), 116)
        parts += ["", f'{name} = """', *rows, '"""', f'"""{said}"""']
    whole = wrap(", ".join(sorted({title.replace(" ", "_") for title in books(definitions)})), 116)
    parts += [
        "",
        'BOOKS = """',
        *(row.replace("_", " ") for row in whole),
        '"""',
        '"""What they are called, whole and from the name in it on."""',
    ]
    return "\n".join([*parts, ""])


if __name__ == "__main__":
    TABLE.write_text(table(Path(sys.argv[1])), encoding="utf-8")
