"""Makes `core/people/names_in_text/small_words_table.py`: words of many languages that look like fond forms of names.

They are the stop words of the package `stopwordsiso` 0.7.1 (MIT licence), Estonian ones from memory, of which that
list has few, countries, towns of more than 100,000, and the words of the tagged texts of WordNet 3.0 (package
`wordnet-base` of Debian): those that the rules of `fond_names` take for a form of any known given name, and that are
none of their own; and all Cyrillic stop words that are no names, which are never a name in Latin letters written in
Cyrillic ones. Run after a new release, or a change of those rules, with the folder of WordNet's files:
python tests/core/people/names_in_text/make_small_words.py [FOLDER]
"""

import json
import lzma
import sys
from importlib.metadata import files, version
from pathlib import Path
from textwrap import wrap

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names_in_text.fond_names import FondNames
from boxlore.core.people.names_in_text.text_normalising import script_of
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.country_words_table import COUNTRY_WORDS
from boxlore.core.statements import fold

PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names_in_text" / "small_words_table.py"
WORDNET = Path("/usr/share/wordnet")
LARGE_TOWN = 100_000
CYRILLIC_LANGUAGES = ("bg", "ru", "uk")
LANGUAGES = "bg ca cs da de en es et fi fr ga hr hu it lt lv nl no pl pt ro ru sk sl sv uk".split()
ESTONIAN = (
    "kas kui siis mis kes see seal siin oli olid ning veel juba kuid aga meil teil neil nad nemad tema meie teie minu "
    "sinu mida kus kust kuhu millal miks ent ega ehk just vist alati enne parast koos ilma peal all ees taga juures "
    "suur vaike vana uus hea meri talv suvi kevad sugis paev ohtu kool maja kirik sadam laev pilt kiri ema isa vend ode"
).split()


def towns() -> set[str]:
    """Towns of more than 100,000, folded: GeoNames (CC BY 4.0), as this project ships it."""
    with lzma.open(PACKAGE / "gazetteer" / "data" / "cities.tsv.xz", "rt", encoding="utf-8") as lines:
        rows = [line.rstrip("\n").split("\t") for line in lines]
    return {fold(row[1]) for row in rows if int(row[7] or 0) > LARGE_TOWN}


def english(folder: Path) -> set[str]:
    """The words of the tagged texts of WordNet 3.0 that are written small, and the odd forms of its verbs."""
    tagged = {line.partition("%")[0] for line in (folder / "cntlist.rev").read_text("ascii").splitlines()}
    odd = {line.split()[0] for line in (folder / "verb.exc").read_text("ascii").splitlines()}
    return {word for word in tagged | odd if word.islower()}


def table(folder: Path = WORDNET) -> str:
    """The text of the module."""
    path = next(file.locate() for file in files("stopwordsiso") or () if file.name == "stopwords-iso.json")
    by_language = json.loads(Path(str(path)).read_text("utf-8"))
    words = {fold(word) for language in LANGUAGES for word in by_language[language]} | set(ESTONIAN) | english(folder)
    countries = {fold(name) for name in COUNTRY_NAMES.values()} | towns()
    countries |= {word for words_in in COUNTRY_WORDS.values() for word in words_in.split("|")}
    words |= countries | {f"{country}{end}" for country in countries for end in ("n", "i", "ns", "ens")}
    names = FondNames(((name, script_of(name[0])) for name in CALLED), small_words=frozenset())
    kept = sorted(word for word in words - CALLED if word.isalpha() and names.of(word, script_of(word[0])))
    head = (
        f'"""Small words and places of many languages, folded: stopwordsiso {version("stopwordsiso")} (MIT licence), '
    )
    head += 'WordNet 3.0, places; made by make_small_words.py."""\n'
    lines = "\n".join(f"    {line}" for line in wrap(" ".join(kept), 114))
    cyrillic = {fold(word) for language in CYRILLIC_LANGUAGES for word in by_language[language]} - CALLED
    stops = "\n".join(f"    {line}" for line in wrap(" ".join(sorted(filter(str.isalpha, cyrillic))), 114))
    small = f'SMALL_WORDS = frozenset(\n    """\n{lines}\n    """.split()\n)\n'
    return f'{head}\n{small}\nCYRILLIC_STOPS = frozenset(\n    """\n{stops}\n    """.split()\n)\n'


if __name__ == "__main__":
    TABLE.write_text(table(*map(Path, sys.argv[1:])), encoding="utf-8")
