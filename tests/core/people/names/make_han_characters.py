"""Makes `core/people/names/han_characters_table.py`: how Han characters are read, and which are one character.

The readings are those of the package pypinyin (of the Unihan database, kMandarin and others), without tones; the
simplified forms those of the dictionaries of OpenCC, as opencc-python-reimplemented has them, and for Japan its table
of variants. Characters: those of GB 2312 and of the common part of Big5 (A440 to C67E). Run after a new release of
either package:
python tests/core/people/names/make_han_characters.py
"""

import unicodedata
from collections import defaultdict
from importlib.metadata import version
from pathlib import Path

import opencc
from pypinyin import Style, pinyin

TABLE = Path(__file__).parents[4] / "src" / "boxlore" / "core" / "people" / "names" / "han_characters_table.py"
DICTIONARIES = Path(opencc.__file__).parent / "dictionary"
MOST_READINGS = 3


def common() -> set[str]:
    """The characters that are common in simplified and in traditional writing."""
    pairs = [bytes((high, low)) for high in range(0xA1, 0xFF) for low in range(0x40, 0xFF)]
    simplified = {pair.decode("gb2312", "ignore") for pair in pairs if pair[0] >= 0xB0}
    traditional = {pair.decode("big5", "ignore") for pair in pairs if b"\xa4\x40" <= pair <= b"\xc6\x7e"}
    return {letter for letter in simplified | traditional if "\u4e00" <= letter[:1] <= "\u9fff" and len(letter) == 1}


def plainest() -> dict[str, str]:
    """Each traditional or Japanese character with the simplified one that is the same."""
    rows = [row.split("\t") for row in (DICTIONARIES / "TSCharacters.txt").read_text("utf-8").splitlines() if row]
    simpler = {row[0]: row[1].split()[0] for row in rows if len(row[0]) == 1}
    for row in (DICTIONARIES / "JPVariants.txt").read_text("utf-8").splitlines():
        old, _, new = row.partition("\t")
        for japanese in new.split():
            simpler.setdefault(japanese, simpler.get(old, old))
    return {letter: same for letter, same in simpler.items() if letter != same and len(same) == 1}


def readings(letter: str) -> list[str]:
    """How it is read, the commonest first, without tones: `ü` as `v`, which people type for it."""
    said = pinyin(letter, style=Style.NORMAL, heteronym=True, errors="ignore", v_to_u=False)
    return [word for word in dict.fromkeys(said[0] if said else ()) if word.isascii() and word.isalpha()][
        :MOST_READINGS
    ]


def table() -> str:
    """The text of the module."""
    simpler = {old: new for old, new in plainest().items() if unicodedata.category(old) == "Lo"}
    letters = common()
    simpler = {old: new for old, new in simpler.items() if old in letters or new in letters}
    by_reading: dict[str, set[str]] = defaultdict(set)
    for letter in {simpler.get(letter, letter) for letter in letters}:
        for reading in readings(letter):
            by_reading[reading].add(letter)
    head = f"pypinyin {version('pypinyin')} and opencc-python-reimplemented {version('opencc-python-reimplemented')}"
    lines = [
        f'"""Han characters by reading and by plainest form: {head}; '
        'made by tests/core/people/names/make_han_characters.py."""',
        "",
    ]
    lines += ['READINGS = """']
    lines += [f"{reading} {''.join(sorted(of))}" for reading, of in sorted(by_reading.items())]
    lines += [
        '"""',
        '"""A reading in Mandarin without tones, and all characters that are read so, line by line."""',
        "",
    ]
    lines += [f'OTHER_FORMS = "{"".join(simpler)}"', f'PLAINEST_FORMS = "{"".join(simpler.values())}"']
    lines += [
        '"""Traditional and Japanese characters, and in the same order the simplified ones that are the same."""',
        "",
    ]
    return "\n".join(lines)


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
