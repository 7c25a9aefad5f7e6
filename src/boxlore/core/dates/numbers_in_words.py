"""Numbers told as words: `nineteen thirty-eight`, `nineteen oh five`, `tuhat üheksasada kolmkümmend`, `twenty-first`.

A year is told as two numbers (`nineteen forty`), with hundreds (`nineteen hundred and five`) or with thousands. Two
numbers below fifteen hundred are a time of day (`ten thirty`), and no year.
"""

from functools import cache, lru_cache
from typing import NamedTuple

from boxlore.core.dates.lexicon import ANY_LANGUAGE, Node, Sense, number_words, trie, word_endings
from boxlore.core.dates.pieces import Piece

OLDEST = 120
"""No age is told that is greater (common practice, no source)."""

JOINS = frozenset(("and", "und", "en", "og", "och", "y", "e", "et", "ja", "-", "i", "mā"))
_COMPOUND_JOINS = ("und", "en", "og", "ën", "a", "")
_KINDS = ("number", "ordinal_word")


def spoken(pieces: list[Piece], at: int, root: Node) -> tuple[tuple[Sense, ...], int] | None:
    """The number that begins at a piece, as senses, and the piece after it; None if there is none.

    A word may be another number in another language (`tres`: 3 in Spanish, 60 in Danish): each is gone on with in its
    own languages, and the longest numbers are kept. What it is before digits or at the end is kept by the word.
    """
    if at + 1 == len(pieces) or pieces[at + 1][1] == "digits":
        alone = _of_one_word(pieces[at][0])
        return (alone, at + 1) if alone else None
    return _spoken(pieces, at, root)


@lru_cache(1024)
def _of_one_word(word: str) -> tuple[Sense, ...]:
    number = _spoken([(word, "word", 0, len(word))], 0, trie())
    return number[0] if number else ()


def _spoken(pieces: list[Piece], at: int, root: Node) -> tuple[tuple[Sense, ...], int] | None:
    senses: dict[tuple[str, object], int] = {}
    end = at
    for first in _values(pieces, at, root):
        number = _number(pieces, first, root)
        if number is None or number[1] < end:
            continue
        if number[1] > end:
            senses, end = {}, number[1]
        key = number[0].kind, number[0].value
        senses[key] = senses.get(key, 0) | number[0].languages
    return (tuple(Sense(*known, languages) for known, languages in senses.items()), end) if senses else None


_SAID_OF_AN_AGE = {
    "aged_endings": "aged", "birthday_endings": "birthday", "about_age_endings": "years_old",
    "age_endings": "years_old",
}  # fmt: skip
"""Endings and the kind of word that each stands for, those first that say more: “kuusivuotiaana” is “aged six” too."""


_ENDINGS_OF_NUMBERS = (*_SAID_OF_AN_AGE, "decade_word_endings")


@cache
def _endings() -> tuple[str, ...]:
    return tuple({ending for which in _ENDINGS_OF_NUMBERS for ending, _ in word_endings(which)})


def number_and_ending(word: str) -> list[Sense]:
    """`seitsmeaastane`, `siebenjährig`: a number and the word of age written as one with it, as two senses, one after
    the other; `viisikymmentäluvun`: a decade, as one. None for another word."""
    if not word.endswith(_endings()):
        return []  # most
    for which in _ENDINGS_OF_NUMBERS:
        for ending, bits in word_endings(which):
            if not word.endswith(ending):
                continue
            for values, ordinal, languages in _taken_apart(word.removesuffix(ending), bits):
                state = _added(0, 0, values, 0)
                value = state[0] + state[1] if state and not ordinal else 0
                about = "about" if which == "about_age_endings" else None
                if which in _SAID_OF_AN_AGE and 0 < value <= OLDEST:
                    return [Sense("day", (value, 0), languages), Sense(_SAID_OF_AN_AGE[which], about, languages)]
                if which == "decade_word_endings" and value in range(10, 100, 10):
                    return [Sense("decade", value, languages)]
    return []


class _Value(NamedTuple):
    """The values of one word (several if it is a compound), whether it is an ordinal, the piece after it, languages."""

    values: list[int]
    ordinal: bool
    after: int
    languages: int


def _number(pieces: list[Piece], first: _Value, root: Node) -> tuple[Sense, int] | None:
    """number = value *( [ join ] value ), all of one language; value = a word of the table of numbers, or several
    written as one."""
    state = _added(0, 0, first.values, 0)
    if state is None:
        return None
    total, current, pair = state
    ordinal, languages, last = first.ordinal, first.languages, first.after
    following = last
    while following < len(pieces):
        further = [value for value in _values(pieces, following, root) if value.languages & languages]
        if not further:
            if not ordinal and pieces[following][0] in JOINS and following - last < 3:
                following += 1
                continue
            break
        (values, is_ordinal, after, bits) = further[0]
        if ordinal and not (is_ordinal and current % 100 in (20, 30, 40, 50, 60) and values[0] < 10):
            break  # “dwudziestego pierwszego” is the 21st
        state = _added(total, current, values, 1)
        if state is None:
            break
        total, current, paired = state
        pair, ordinal, languages, last = pair or paired, is_ordinal, languages & bits, after
        following = last
    return _sense(total + current, ordinal, pair, languages, last)


def _sense(value: int, ordinal: bool, pair: bool, languages: int, last: int) -> tuple[Sense, int] | None:
    """A year, the name of a thing where there is no such year, an ordinal or a number; None if it is none of them."""
    if value >= 1000:
        return (Sense("year", f"{value:04d}", languages) if 1500 <= value <= 2099 else Sense("name")), last
    if value > 100 or value == 0 or (pair and value < 1500):
        return None
    return Sense("ordinal" if ordinal else "day", value if ordinal else (value, 0), languages), last


def _values(pieces: list[Piece], at: int, root: Node) -> list[_Value]:
    """What the word or words at a piece are worth: of the longest entry, in each language that has it."""
    word, group = pieces[at][:2]
    node, best = root.following.get(word), []
    following = at + 1
    while node is not None:
        numbers = [sense for sense in node.senses if sense.kind in _KINDS]
        if numbers:
            best = [
                _Value([int(str(sense.value))], sense.kind == "ordinal_word", following, sense.languages)
                for sense in numbers
            ]
        if following >= len(pieces):
            break
        node = node.following.get(pieces[following][0])
        following += 1
    if not best and group == "word" and len(word) > 6:
        return [_Value(values, ordinal, at + 1, bits) for values, ordinal, bits in _taken_apart(word, ANY_LANGUAGE)]
    return best


def _taken_apart(word: str, languages: int) -> list[tuple[list[int], bool, int]]:
    """The numbers of which a word is made (`fünfundvierzig` → 5, 40), whether the last is an ordinal, and its
    languages; none if something is left over."""
    table = number_words()
    ways = []
    for value, is_ordinal, bits in table.get(word, ()):
        if bits & languages:
            ways.append(([value], is_ordinal, bits & languages))
    if ways:
        return ways
    for size in range(len(word) - 1, 1, -1):
        for value, is_ordinal, bits in table.get(word[:size], ()):
            if is_ordinal or not bits & languages:
                continue
            rest = word[size:]
            for join in _COMPOUND_JOINS:
                if rest.startswith(join):
                    for values, last_ordinal, common in _taken_apart(rest[len(join) :], bits & languages):
                        ways.append(([value, *values], last_ordinal, common))
        if ways:
            return ways
    return []


def _added(total: int, current: int, values: list[int], count: int) -> tuple[int, int, bool] | None:
    """The sum with further values, and whether they made a year of two numbers; None where they do not go on from
    it."""
    pair = False
    for value in values:
        under = current % 100
        if value == 1000:
            total, current = total + max(current, 1) * 1000, 0
        elif value == 100:
            if current > 20:
                return None
            current = max(current, 1) * 100
        elif value >= 200:
            current += value
        elif not count and not current and not total:
            current = value
        elif value == 0 and 15 <= current <= 20:
            current, pair = current * 100, True
        elif value < 10 and current % 10 == 0 and (under >= 20 or under == 0) and value:
            current += value
        elif value >= 20 and value % 10 == 0 and 0 < under < 10:
            current += value  # the unit stands first: fünfundvierzig
        elif value >= 10 and under == 0 and (current or total):
            current += value
        elif 10 <= value < 20 and under in (60, 80):
            current += value  # soixante-quinze
        elif 15 <= current <= 20 and value >= 10 and not total:
            current, pair = current * 100 + value, True
        else:
            return None
        count = 1
    return total, current, pair
