"""Names in Han characters and in Latin letters. Readings: pypinyin (Unihan); the table is what its script makes."""

from pathlib import Path

import pytest
from tests.every_row import every_row
from tests.made_tables import check_table

from boxlore.core.people.names.han_characters import parted, plainest, read_as, spelled, wade_giles

WADE_GILES = [
    ("xiao", "hsiao"), ("zhang", "chang"), ("qing", "ching"), ("dong", "tung"), ("guo", "kuo"), ("luo", "lo"),
    ("shuo", "shuo"), ("jian", "chien"), ("xie", "hsieh"), ("xue", "hsueh"), ("lv", "lu"), ("zi", "tzu"), ("he", "ho"),
    ("cai", "tsai"), ("mei", "mei"), ("an", "an"), ("ren", "jen"), ("zuo", "tso"),
]  # fmt: skip
"""Syllables of pinyin as Wade and Giles spell them, without apostrophes (from memory of their table)."""


@every_row(("pinyin", "spelling"), WADE_GILES)
def test_wade_giles(pinyin: str, spelling: str) -> None:
    assert wade_giles(pinyin) == spelling


def test_characters_have_one_form() -> None:
    assert plainest("陳曉梅 and 櫻井, 桜井, Chen") == "陈晓梅 and 樱井, 樱井, Chen"


def test_how_a_name_is_spelled() -> None:
    assert {("xiao", "mei"), ("hsiao", "mei")} <= set(spelled("曉梅"))
    assert spelled("はなこ") == [] == spelled("")
    assert len(spelled("曾重乐")) <= 16


def test_a_word_in_syllables() -> None:
    assert [parted(word) for word in ("xiaomei", "guolin", "fangan", "ruth", "")] == [
        ("xiao", "mei"), ("guo", "lin"), ("fang", "an"), (), ()
    ]  # fmt: skip


def test_where_characters_are_read_so() -> None:
    assert list(read_as("照片陈晓梅和大小妹", ("chen", "xiao", "mei"))) == [2]
    assert list(read_as("陈", ("chen", "mei"))) == []


def test_the_table_is_what_the_script_makes() -> None:
    pytest.importorskip("opencc")
    pytest.importorskip("pypinyin")
    check_table(Path(__file__).parent / "make_han_characters.py", "another release of pypinyin or OpenCC")
