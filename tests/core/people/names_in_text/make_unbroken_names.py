"""Makes `core/people/names_in_text/unbroken_names_table.py`: names in scripts that part no words.

    Chinese     family names of the registers in Faker 40.63.0 (MIT licence); signs of given names, by the names of
                people in the dictionary of jieba 0.42.1 (MIT licence), and its words, where no name begins
    Japanese    the family names and the given ones of IPADIC 2.7.0-20070801 (its licence is in NOTICE.txt) that are
                likeliest by its own costs, and its places that are family names too
    Korean      family and given names of Faker

Run after a new release, with the package jieba and a folder with the files of the package mecab-ipadic:
python tests/core/people/names_in_text/make_unbroken_names.py IPADIC
"""

import csv
import re
import sys
from collections import Counter
from collections.abc import Iterable, Iterator
from importlib.metadata import files
from math import inf
from pathlib import Path
from textwrap import wrap

from tests.core.people.names_in_text.make_borne_names import registered_whole

PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names_in_text" / "unbroken_names_table.py"
CHINESE = ("zh_CN", "zh_TW")
IN_NAMES = 8
"""Names of people in which a sign of a given name stands, at least."""
USED, USED_LIKE_A_NAME = 200, 10
"""How often a word of the dictionary was counted, at least; and one that begins as a name does."""
LIKELIEST = 4000
KANA = re.compile(r"[\u3040-\u309f]+")
HEAD = '"""Names in scripts that part no words: Faker, jieba, IPADIC; made by make_unbroken_names.py."""'


def dictionary() -> Iterator[tuple[str, int, str]]:
    """(word, how often, what it is) of Chinese."""
    path = next(file for file in files("jieba") or () if file.name == "dict.txt" and file.parent.name == "jieba")
    for line in path.read_text(encoding="utf-8").splitlines():
        word, count, kind = line.split()
        yield word, int(count), kind


def chinese() -> tuple[set[str], set[str], set[str]]:
    """Family names, the signs of given names, and words that begin with a family name."""
    families = set(registered_whole(CHINESE, "last_names"))
    rows = list(dictionary())
    signs = Counter(
        sign for word, _, kind in rows if kind == "nr" and len(word) == 3 and word[0] in families for sign in word[1:]
    )
    given = {sign for sign, count in signs.items() if count >= IN_NAMES}
    given |= {sign for name in registered_whole(CHINESE, "first_names") for sign in name}
    words = {
        word
        for word, count, kind in rows
        if 1 < len(word) < 5 and count >= _least(kind, begins=word[0] in families and word[1] in given)
    }
    return families, given, words


def _least(kind: str, *, begins: bool) -> float:
    """How often a word must have been counted: no name of a person that begins as one."""
    if kind.startswith("nr"):
        return inf if begins else USED
    return (0 if kind == "ns" else USED_LIKE_A_NAME) if begins else USED


def japanese(folder: Path) -> tuple[list[str], list[str], set[str]]:
    """Family names, given names, and places that are family names too."""
    with open(folder / "Noun.name.csv", encoding="euc-jp") as lines:
        rows = sorted(csv.reader(lines), key=lambda row: int(row[3]))
    families = list(dict.fromkeys(row[0] for row in rows if row[7] == "姓" and len(row[0]) > 1))[:LIKELIEST]
    given = list(dict.fromkeys(row[0] for row in rows if row[7] == "名" and len(row[0]) > 1))
    given = [name for at, name in enumerate(given) if at < LIKELIEST or KANA.fullmatch(name)]
    with open(folder / "Noun.place.csv", encoding="euc-jp") as lines:
        places = {row[0] for row in csv.reader(lines)}
    return families, given, places & {*families, *given}


def table(folder: Path) -> str:
    """The text of the module."""
    families, signs, words = chinese()
    families_ja, given_ja, places = japanese(folder)
    sets: tuple[tuple[str, Iterable[str], str], ...] = (
        ("CHINESE_FAMILIES", families, "Family names."),
        ("CHINESE_GIVEN", ("".join(sorted(signs)),), "Signs of given names."),
        ("CHINESE_WORDS", words, "Words, which are no names."),
        ("JAPANESE_FAMILIES", families_ja, "Family names."),
        ("JAPANESE_GIVEN", given_ja, "Given names."),
        ("JAPANESE_PLACES", places, "Places that are names too."),
        ("KOREAN_FAMILIES", registered_whole(("ko_KR",), "last_names"), "Family names."),
        ("KOREAN_GIVEN", registered_whole(("ko_KR",), "first_names"), "Given names."),
    )
    parts = [HEAD]
    for name, of_it, said in sets:
        parts += ["", f'{name} = """', *wrap(" ".join(sorted(set(of_it))), 110), '"""', f'"""{said}"""']
    return "\n".join([*parts, ""])


if __name__ == "__main__":
    TABLE.write_text(table(Path(sys.argv[1])), encoding="utf-8")
