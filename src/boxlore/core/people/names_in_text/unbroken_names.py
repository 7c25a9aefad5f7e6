"""Names in scripts that part no words, Chinese and Japanese, and in Korean, which joins its small words to a name.

The problem. `王建国在公园` is one word to a search; who asks about each such text asks about every temple.

The idea. A name is a family name with what people are given behind it, where no word of the dictionary begins in its
place: `张伟`, `佐藤健一`, `김민준`; a family name behind which somebody is addressed (`陈老师`, `鈴木さん`);
a given name by a small word of affection (`小芳`), or one alone behind a small word (`ゆみこ`, `수진`).
What all know is a place is none (`富山`), unless somebody is addressed.

Data: `unbroken_names_table`; the words of address are from memory (common practice, no source).
"""

import re
from collections.abc import Iterator
from functools import cache

from boxlore.core.people.names_in_text import unbroken_names_table as table

_RUN = re.compile(r"[\u3040-\u30ff\u3400-\u9fff々]+|[\uac00-\ud7a3]+")
_KANA = re.compile(r"[\u3040-\u30ff]")
_HANGUL = re.compile(r"[\uac00-\ud7a3]")
_ADDRESSED = tuple(
    "老师 先生 太太 女士 小姐 叔叔 阿姨 奶奶 爷爷 伯伯 大爷 大妈 师傅 医生 同学 家 老師 さん くん ちゃん 様 君 氏 "
    "夫妻 一家 夫妇 伯母 伯父 姐 哥 叔 姨".split()
)
"""Behind a family name: who is addressed, or the family."""
_CALLED = ("ちゃん", "くん", "さん")
_JOINS = frozenset("とのやは")
"""Japanese small words before a name."""
_NO_FAMILIES = frozenset(
    "金 和 在 与 于 从 向 有 家 老 小 大 的 是 年 月 日 时 万 方 元 上 下 "
    "东 西 南 北 水 花 海 山 后 前 明 成 白 红".split()
)
"""Signs that are family names, and words of every day much more often: behind them a whole name must be known."""
_SMALL = frozenset("的了和在与是有于")
"""Small words, which nobody is given."""
_FONDLY = frozenset("小阿老")
_JOSA = re.compile(r"(이랑|에게|한테|이네|이의|[과와은는이가을를의도랑네씨])?$")
"""Small words behind a Korean name."""
_LONGEST_WORD = 4


@cache
def _set(rows: str) -> frozenset[str]:
    """The words of a table."""
    return frozenset(rows.split())


@cache
def _signs() -> frozenset[str]:
    return frozenset("".join(table.CHINESE_GIVEN.split())) - _SMALL


@cache
def _syllables() -> frozenset[str]:
    return frozenset("".join(table.KOREAN_GIVEN.split()))


def names_unbroken(words: str) -> Iterator[tuple[int, int]]:
    """(start, end) of each name in a text."""
    for run in _RUN.finditer(words):
        if _HANGUL.match(run[0]):
            end = _korean(run[0])
            if end:
                yield run.start(), run.start() + end
            continue
        read = _japanese if _KANA.search(run[0]) or not _is_chinese(words) else _chinese
        at = 0
        while at < len(run[0]):
            length = read(run[0], at)
            if length:
                yield run.start() + at, run.start() + at + length
            at += length or _word(run[0], at)


def _is_chinese(words: str) -> bool:
    """Whether a text of Chinese signs alone is Chinese; where kana stands, it is not."""
    return not _KANA.search(words)


def _word(run: str, at: int) -> int:
    """How many signs the longest word of the dictionary that begins here has, 1 where none does."""
    return _longest(run, at, _set(table.CHINESE_WORDS)) or 1


def _longest(run: str, at: int, words: frozenset[str]) -> int:
    """How many signs the longest of the words that begins here has, 0 where none does."""
    ends = (at + n for n in range(_LONGEST_WORD, 1, -1) if at + n <= len(run))
    return next((end - at for end in ends if run[at:end] in words), 0)


def _chinese(run: str, at: int) -> int:
    """How many signs the name that begins here has."""
    family = run[at]
    if family in _FONDLY and at + 1 < len(run) and _word(run, at) == _word(run, at + 1) == 1:
        return 2 if run[at + 1] in _signs() or run[at + 1] in _set(table.CHINESE_FAMILIES) else 0
    if _is_japanese(run, at):
        return _japanese(run, at)
    if family not in _set(table.CHINESE_FAMILIES) or _word(run, at) > 1:
        return 0
    if run.startswith(_ADDRESSED, at + 1):
        return 1
    given = [sign for sign in run[at + 1 : at + 3] if sign in _signs()]
    if not given or run[at + 1] not in _signs():
        return 0
    is_two = len(given) == 2 and run[at + 2] not in _NO_FAMILIES and _word(run, at + 2) == 1
    if family in _NO_FAMILIES:
        return 3 if is_two and at == 0 and len(run) == 3 else 0
    return 3 if is_two else 2


def _is_japanese(run: str, at: int) -> bool:
    """Whether two signs are a Japanese family name with a given one behind it, as no Chinese name is."""
    return run[at : at + 2] in _set(table.JAPANESE_FAMILIES) and _given_at(run, at + 2) > 1 and _word(run, at) == 1


def _given_at(run: str, at: int) -> int:
    return _longest(run, at, _set(table.JAPANESE_GIVEN))


def _japanese(run: str, at: int) -> int:
    """How many signs the name that begins here has."""
    for family in (run[at : at + n] for n in (4, 3, 2) if at + n <= len(run)):
        if family in _set(table.JAPANESE_FAMILIES):
            given = _given_at(run, at + len(family))
            if given:
                return len(family) + given
            if run.startswith(_ADDRESSED, at + len(family)):
                return len(family)
    end = at + _given_at(run, at)
    name = run[at:end]
    if end == at or name in _set(table.JAPANESE_PLACES) or _word(run, at) > 1:
        return 0
    is_alone = end == len(run) and (not at or run[at - 1] in _JOINS)
    return end - at if is_alone or run.startswith(_CALLED, end) else 0


def _korean(run: str) -> int:
    """How many syllables of a word are a name: the word without the small word behind it."""
    bare = _JOSA.sub("", run)
    for name in dict.fromkeys((run, bare)):
        is_given = name in _set(table.KOREAN_GIVEN)
        is_whole = len(name) == 3 and name[0] in _set(table.KOREAN_FAMILIES) and set(name[1:]) <= _syllables()
        if is_given or is_whole:
            return len(name)
    return 0
