"""Makes `core/people/names/given_names_table.py`: given names of Europe and where Europeans went.

The names are those of the package Faker (MIT licence), which has them from the registers of each country, and those of
the United States census of 1990 (public domain, in the package names 0.3.0) that at least three in 100,000 bear. Left
out are those that are family names there as well (in the census: more often than given ones), countries and large
towns, and words of the tables of this project: they are no evidence of a given name. Run after a new release:
python tests/core/people/names/make_given_names.py
"""

import lzma
from collections.abc import Iterator
from importlib import import_module
from importlib.metadata import files, version
from pathlib import Path

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.lists_table import GIVEN
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import position_words_table as places
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.places.country_words_table import COUNTRY_WORDS
from boxlore.core.statements import fold

PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names" / "given_names_table.py"
LOCALES = (
    "cs_CZ da_DK de_AT de_CH de_DE el_GR en_GB en_IE en_IN en_NZ en_US es_AR es_CA es_CL es_ES es_MX et_EE fi_FI fr_BE "
    "fr_CA fr_CH fr_FR ga_IE hr_HR hu_HU is_IS it_IT lt_LT lv_LV nl_BE nl_NL no_NO pl_PL pt_BR pt_PT ro_RO ru_RU sk_SK "
    "sl_SI sv_SE uk_UA"
).split()
NAMES_A_LINE = 16
COMMON_IN_CENSUS = 0.003
"""Per cent of the women, or the men, of the census that bear a name."""

LARGE_TOWN = 100_000
OTHER_WORDS = set("hung sung sunshine precious alpha buffy".split())


def names_of(locale: str, kind: str) -> Iterator[str]:
    """The names of a kind (`first_names`, `last_names`) in a locale, folded."""
    provider = import_module(f"faker.providers.person.{locale}").Provider
    for row in dir(provider):
        if row.startswith(kind) and isinstance(getattr(provider, row), (tuple, list, dict)):
            yield from (fold(name) for name in getattr(provider, row) if " " not in name)


def census(kind: str) -> dict[str, float]:
    """Each name of a table of the census, folded, and how many in a hundred bear it."""
    path = next(file for file in files("names") or () if file.name == f"dist.{kind}")
    rows = (line.split() for line in path.read_text(encoding="ascii").splitlines())
    return {fold(row[0]): float(row[1]) for row in rows}


def places_on_maps() -> set[str]:
    """Countries in every language, and towns of more than 100,000, folded."""
    countries = {word for words_in in COUNTRY_WORDS.values() for word in words_in.split("|")}
    with lzma.open(PACKAGE / "gazetteer" / "data" / "cities.tsv.xz", "rt", encoding="utf-8") as lines:
        rows = [line.rstrip("\n").split("\t") for line in lines]
    return countries | {fold(row[1]) for row in rows if int(row[7] or 0) > LARGE_TOWN} | OTHER_WORDS


def told_family_first() -> set[str]:
    """Names of peoples who tell the family name first: of them, the order says what is given."""
    vietnamese = {name for kind in ("first_names", "last_names", "middle_names") for name in names_of("vi_VN", kind)}
    tables = lists.CHINESE_FAMILY | lists.VIETNAMESE_FAMILY | lists.VIETNAMESE_MIDDLE | lists.KOREAN_FAMILY
    return vietnamese | tables | lists.KOREAN_SYLLABLES | set("dong hoa huong".split())


def words() -> set[str]:
    """Words that are something else in this project: kin, people, places, titles, particles, times, English words."""
    phrases = [phrase for _, phrase in (*places.PLACE_PHRASES, *places.WORDS_BETWEEN)]
    tables = {word.rstrip("*") for phrase in phrases for word in phrase.split()} | set(places.NOUNS)
    tables |= words_of.KIN_WORDS.keys() | words_of.TITLES | words_of.PARTICLES | words_of.FILIATION | words_of.SUFFIXES
    return tables | english_words() | small_words.TIMES_OF_THE_YEAR | set(small_words.CARDINALS) | small_words.ARTICLES


def main() -> None:
    given = {name for locale in LOCALES for name in names_of(locale, "first_names")}
    family = {name for locale in LOCALES for name in names_of(locale, "last_names")}
    counted: dict[str, float] = {}
    for kind in ("female.first", "male.first"):
        for name, share in census(kind).items():
            counted[name] = max(share, counted.get(name, 0))
    families, left_out = census("all.last"), places_on_maps() | told_family_first()
    for name, share in counted.items():
        if share >= COMMON_IN_CENSUS and name not in left_out | given:
            given.add(name)
            family |= {name} if families.get(name, 0) > share else set()
    kept = sorted(name for name in given - family - words() - GIVEN if len(name) > 2 and name.isalpha())
    both = sorted(name for name in (given & family) - words() - GIVEN if len(name) > 2 and name.isalpha())
    head = f'"""Given names, folded: Faker {version("faker")}, names {version("names")}; '
    head += 'made by tests/core/people/names/make_given_names.py."""\n'
    also = '"""Given names that are family names too: somebody, whichever of the two it is."""\n'
    table = f'{head}\nFURTHER_GIVEN = """\n{_lines(kept)}\n"""\n\nGIVEN_OR_FAMILY = """\n{_lines(both)}\n"""\n{also}'
    TABLE.write_text(table, encoding="utf-8")


def _lines(names: list[str]) -> str:
    return "\n".join(" ".join(names[at : at + NAMES_A_LINE]) for at in range(0, len(names), NAMES_A_LINE))


if __name__ == "__main__":
    main()
