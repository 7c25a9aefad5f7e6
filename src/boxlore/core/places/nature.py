"""The lines of the tables of nature taken apart, and words for kinds of nature, which may be told or left out.

A line: `NO: lake Mjøsa=Mjösa 60.7 11.0 .4; Femunden 62.2 11.9`, as `nature_north_table` tells.
"""

import re
from collections.abc import Iterable, Iterator
from functools import cache

from boxlore.core.places.features_table import FEATURES, Feature
from boxlore.core.places.historic_regions_table import REGIONS, Region
from boxlore.core.places.nature_north_table import NATURE_NORTH
from boxlore.core.places.nature_overseas_table import NATURE_OVERSEAS
from boxlore.core.places.nature_south_table import NATURE_SOUTH
from boxlore.core.places.regions_europe_table import REGIONS_EUROPE
from boxlore.core.places.regions_isles_table import REGIONS_ISLES
from boxlore.core.places.regions_overseas_table import REGIONS_OVERSEAS
from boxlore.core.places.taking_apart import fold_place
from boxlore.core.places.villages_table import VILLAGES

KINDS = {
    "lake": 0.15, "river": 0.6, "island": 0.15, "mountain": 0.1, "valley": 0.3, "region": 0.4, "fjord": 0.3, "sea": 0.3,
    "village": 0.06,
}  # fmt: skip
"""How many degrees one of a kind goes each way, where its row says nothing (our rule, rough)."""

_LINE = re.compile(r"(?P<countries>[A-Z]{2}(?: [A-Z]{2})*): (?P<kind>[a-z]+) (?P<rows>[^:]+?)(?=\n[A-Z]{2}[ :]|\s*\Z)")
_ROW = re.compile(r"(?P<names>.+?) (?P<lat>-?[\d.]+) (?P<lon>-?[\d.]+)(?: (?P<size>[\d.]+))?$")


def features_of_lines(lines: str) -> Iterator[Feature]:
    """The features of a table's lines."""
    for line in _LINE.finditer(lines):
        for written in line["rows"].split(";"):
            row = _ROW.match(" ".join(written.split()))
            assert row is not None, written
            name, *others = row["names"].split("=")
            size = float(row["size"] or KINDS[line["kind"]])
            lat, lon = float(row["lat"]), float(row["lon"])
            bare = _BRACKET.sub("", name)
            names = "|".join(dict.fromkeys([*([bare] if bare != name else []), *others]))
            yield Feature(name, names, line["countries"], lat, lon, size, min(size * 1.5, 60))


_BRACKET = re.compile(r"\s\([^)]*\)$")

_KINDS_TOLD: dict[str, str] = {
    "lake": "lake lac lago see järv järvi sjö sjön sjø sjøen sø søen jezioro ezers ezeras ozero озеро jezero tó tava "
    "pleso loch lough llyn meer vatn vatnet lagoa",
    "river": "river rivière riviere rio río fleuve fluss jõgi joki älv älven elv elva å ån åen rzeka upe upė reka река "
    "řeka rieka folyó fiume rivier afon râul rijeka річка рака",
    "island": "island islands isle isles insel inseln île ile îles isola isole isla islas ilha saar saared saari ö ön "
    "øy øya ø øen wyspa sala ostrov остров острова sziget eiland otok insula nisi ada pulau ey eyja",
    "mountain": "mount mt mountain mountains mtn mont monte berg berge gebirge hill hills peak range góra góry mägi "
    "mäed vuori tunturi fjell fjellet fjäll fjället hegy hegység gora гора горы hora hory vrch kalns kalnas kalnai "
    "pico puy piz ben planina munții muntele vârful szczyt glacier gletscher breen jökull pass col passo "
    "przełęcz",
    "sea": "bay gulf fjord fjorden laht lahti bukt bukta bucht baie golfe golfo baía bahía zatoka zaliv залив öböl "
    "sea mer mar meri mere hav havet morze more море tenger sound harbour harbor strait",
    "land": "valley dal dalen dolina völgy долина vallée val valle tal org plain plains peninsula halbinsel półwysep "
    "poolsaar félsziget полуостров region falls fall waterfall vodopad водопад foss fossen beach rand strand "
    "plage playa praia strandja plaża",
}  # fmt: skip
"""Words that say which kind of feature is meant, before or behind its name (common practice, no source)."""

_KIND_OF = {fold_place(word): kind for kind, words in _KINDS_TOLD.items() for word in words.split()}

_SMALL = frozenset("of the de du des la le di do da del della delle dos der die das van von den".split())
"""Small words between a word for the kind and the name: `fleuve du Saint-Laurent`."""


def without_kind_word(folded: str) -> str:
    """A folded name without a word for its kind at its beginning or end, and small words behind that; as it is where
    there is none, or nothing would be left.
    """
    words = folded.split()
    if len(words) > 1 and words[-1] in _KIND_OF:
        return fold_place(" ".join(words[:-1]))
    if len(words) > 1 and words[0] in _KIND_OF:
        rest = words[1:]
        while len(rest) > 1 and rest[0] in _SMALL:
            rest = rest[1:]
        return fold_place(" ".join(rest))  # `saint` now stands first
    return folded


def is_other_kind(told: str, names: Iterable[str]) -> bool:
    """Whether words for kinds in folded names tell of another kind than that of the told one: what ends with `gulf` is
    none of what is called `hill`; a valley may be told for its river.
    """
    kind = _kind_told(told)
    kinds = {_kind_told(fold_place(name)) for name in names} - {""}
    return bool(kind and kinds) and kind not in kinds and {kind, *kinds} != {"land", "river"}


def _kind_told(folded: str) -> str:
    first, *more = folded.split() or [""]
    return (_KIND_OF.get(more[-1]) or _KIND_OF.get(first, "")) if more else ""


@cache
def regions_by_name() -> dict[str, list[Region]]:
    """Every feature of the tables by its folded names, as a region."""
    by_name: dict[str, list[Region]] = {}
    own = [(feature.region, True) for feature in FEATURES]
    for lines in (NATURE_NORTH, NATURE_SOUTH, NATURE_OVERSEAS, VILLAGES):
        own += [(feature.region, False) for feature in features_of_lines(lines)]
    countries = _countries_of_regions()
    for region, is_finer in own:
        for name in region.aliases:
            folded = fold_place(name)
            finer = set() if is_finer else countries.get(folded, set()) | countries.get(f"the {folded}", set())
            if not name.isascii():  # `Møn` is not Monmouthshire's `Mon.`
                finer &= set(region.now)
            if finer:
                continue
            rows = by_name.setdefault(folded, [])
            if not any(set(region.now) & set(row.now) for row in rows):  # told twice: the first, of the finer table
                rows.append(region)
    return by_name


def _countries_of_regions() -> dict[str, set[str]]:
    """The countries in which the tables of regions, which are finer, have each folded name."""
    countries: dict[str, set[str]] = {}
    for region in (*REGIONS, *REGIONS_ISLES, *REGIONS_OVERSEAS, *REGIONS_EUROPE):
        for folded in map(fold_place, (region.name, *region.aliases)):
            countries.setdefault(folded, set()).update(region.now)
    return countries


def is_written_so(words: str) -> bool:
    """Whether a name of the tables has these very letters, some with a mark (`Fanø`): a town elsewhere that is written
    without it is not meant.
    """
    folded = fold_place(words)
    if words.isascii() or not folded.isascii():
        return False
    names = (name for region in regions_by_name().get(folded, ()) for name in region.aliases)
    return words.casefold() in map(str.casefold, names)


@cache
def regions_by_bare_name() -> dict[str, list[Region]]:
    """The same by their names without the word for the kind, for those told with another one (`River Tisza`)."""
    by_name: dict[str, list[Region]] = {}
    for folded, regions in regions_by_name().items():
        rows = by_name.setdefault(without_kind_word(folded), [])
        rows += [region for region in regions if region not in rows]
    return by_name


def rivers_of_bare_name(bare: str) -> list[Region]:
    """The rivers of a name without the word for their kind."""
    return [row for row in regions_by_bare_name().get(bare, []) if _kind_told(fold_place(row.name)) == "river"]
