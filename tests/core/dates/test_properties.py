"""What holds of every reading, whatever the day, the month, the year and the language.

A day is drawn, and said in words that allow it: its bounds must hold it. Doubt said of a whole is doubt of each of its
dates. A phrase reads as its translation does, whichever numbers stand in it.
"""

import re
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.core.dates.test_languages import SAID, TOLD
from tests.drawn import drawn

from boxlore.core.dates.context import qualified
from boxlore.core.dates.edtf_values import Day
from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.dates.phrases import PhraseSettings, read
from boxlore.core.dates.reading import DateReading

DAYS = st.dates(date(1851, 1, 1), date(1999, 12, 31))
LATER = st.integers(1, 9000).map(lambda days: timedelta(days=days))
MONTHS = "January February March April May June July August September October November December".split()
SEASON_OF = {month: season for season, months in (("spring", (3, 4, 5)), ("summer", (6, 7, 8)), ("autumn", (9, 10, 11)))
             for month in months}  # fmt: skip
PARTS = ("early", "mid", "late")
MARKS = {"probably": "?", "about": "~"}


def said(day: date) -> list[str]:
    """Words of English that allow a day, from the exact to the wide; none of them leaves a century or an order open."""
    month, year = MONTHS[day.month - 1], day.year
    of_month, of_year = (PARTS[min((day.day - 1) // 10, 2)], PARTS[(day.month - 1) // 4])
    following = MONTHS[day.month % 12]
    ways = [
        f"{day.day} {month} {year}", f"{month} {day.day}, {year}", f"{day:%A}, {day.day} {month} {year}", str(day),
        f"a day in {month} {year}", f"{month} or {following} {year}", f"the {year // 10 * 10}s",
        f"{day.day} {month[:3].upper()} {year}", f"{month} {year}", f"{of_month} {month} {year}", f"{year}",
        f"{of_year} {year}",
        f"the week of {day.day} {month} {year}", f"{year - 1} or {year}", f"between {year - 2} and {year}",
    ]  # fmt: skip
    if day.month in SEASON_OF:
        ways.append(f"the {SEASON_OF[day.month]} of {year}")
    return ways


@drawn(150)
@given(DAYS)
def test_bounds_hold_the_day_that_the_words_allow(day: date) -> None:
    for words in said(day):
        reading = read(words)
        assert reading.edtf is not None or reading.ask, words
        if reading.ask is None:
            first, last = reading.earliest, reading.latest
            assert first is not None and last is not None
            assert first <= Day(day.year, day.month, day.day) <= last, words


@drawn(150)
@given(DAYS, LATER)
def test_bounds_of_limits_and_spans_hold_both_ends(day: date, later: timedelta) -> None:
    end = day + later
    first, last = f"{day.day} {MONTHS[day.month - 1]} {day.year}", f"{end.day} {MONTHS[end.month - 1]} {end.year}"
    for words in (f"from {first} to {last}", f"between {first} and {last}", f"{first} or {last}", f"{first} - {last}"):
        reading = read(words)
        assert (reading.ask, str(reading.earliest), str(reading.latest)) == (None, str(day), str(end)), words
    for limit, edge in (("by", end), ("before", end - timedelta(days=1))):
        assert (str(read(f"{limit} {last}").latest), read(f"{limit} {last}").earliest) == (str(edge), None)
    for limit, edge in (("since", day), ("after", day + timedelta(days=1))):
        assert (str(read(f"{limit} {first}").earliest), read(f"{limit} {first}").latest) == (str(edge), None)


DECADE_PARTS = {"early": (0, 3), "mid": (4, 6), "late": (7, 9)}
WITHIN = ("Christmas Day", "12 June", "June", "the summer")
FIRST_AND_LAST = {"Christmas Day": ((12, 25), (12, 25)), "12 June": ((6, 12), (6, 12)), "June": ((6, 1), (6, 30)),
                  "the summer": ((6, 1), (8, 31))}  # fmt: skip


def stretches(day: date) -> list[tuple[str, date, date]]:
    """A unit or a part told over something finer or coarser, and the days that the words allow."""
    month, year = MONTHS[day.month - 1], day.year
    told, monday = f"{day.day} {month} {year}", day - timedelta(day.weekday())
    ways = [
        (f"the week of {told}", monday, monday + timedelta(6)),
        (f"the week of {day:%A}, {told}", monday, monday + timedelta(6)),
        (f"the week beginning {told}", day, day + timedelta(6)),
        (f"the week ending {told}", day - timedelta(6), day),
        (f"the month of {told}", day.replace(day=1), day.replace(day=28)),
        (f"the year of {told}", date(year, 1, 1), date(year, 12, 31)),
    ]
    if day.weekday() > 4:
        ways.append((f"the weekend of {told}", monday + timedelta(5), monday + timedelta(6)))
    for part, (first, last) in DECADE_PARTS.items():
        begin, end = year // 10 * 10 + first, year // 10 * 10 + last
        for finer in WITHIN:
            low, high = (date(at, *edge) for at, edge in zip((begin, end), FIRST_AND_LAST[finer], strict=True))
            ways.append((f"{finer}, {part} {year // 10 * 10}s", low, high))
            ways.append((f"{finer} in the {part} {year // 10 * 10}s", low, high))
    return ways


@drawn(40)
@given(DAYS, LATER)
def test_units_and_parts_over_other_dates_hold_what_their_words_allow_beside_any_operator(
    day: date, later: timedelta
) -> None:
    """“The week of 3 May 1938” is no single day, nor is “Christmas, mid-1930s” one Christmas; or it is asked."""
    end = day + later
    other = f"{end.day} {MONTHS[end.month - 1]} {end.year}"
    for words, first, last in stretches(day):
        alone, either, probably, by = (
            read(said) for said in (words, f"{words} or {other}", f"probably {words}", f"by {words}")
        )
        assert bool(alone.edtf) == bool(by.edtf), words
        for reading in (alone, probably, either, by):
            assert reading.edtf is not None or reading.ask, reading.text
            if reading.ask is None:
                assert reading.latest and reading.latest >= Day(last.year, last.month, last.day), reading.text
                assert reading is by or (
                    reading.earliest and reading.earliest <= Day(first.year, first.month, first.day)
                ), reading.text


@drawn(60)
@given(DAYS, st.sampled_from(("{d} {m} or {n} {y}", "{d} or {e} {m} or {n} {y}", "the first Sunday in {m} or {n} {y}")))
def test_a_day_that_two_months_may_share_is_asked_about(day: date, form: str) -> None:
    month, following = MONTHS[day.month - 1], MONTHS[day.month % 12]
    words = form.format(d=min(day.day, 27), e=28, m=month, n=following, y=day.year)
    if day.month < 12:
        assert read(words).ask is not None, words


OPERATORS = ("{0}", "{0} or {1}", "{0} and {1}", "between {0} and {1}", "from {0} to {1}", "before {0}", "after {0}")
DATES = st.tuples(DAYS, st.sampled_from(("{0.year}", "{1} {0.year}", "{0.day} {1} {0.year}"))).map(
    lambda pair: pair[1].format(pair[0], MONTHS[pair[0].month - 1])
)


@drawn(300)
@given(st.sampled_from(OPERATORS), DATES, DATES, st.sampled_from(list(MARKS)))
def test_qualifiers_commute_with_operators(operator: str, first: str, second: str, qualifier: str) -> None:
    """“Probably between A and B” is “between A and B”, each of them probable."""
    words = operator.format(first, second)
    bare, doubted = read(words), read(f"{qualifier} {words}")
    if bare.edtf is None:  # a span that ends before it begins
        assert doubted.edtf is None
    else:
        assert doubted.edtf is not None and doubted.ask == bare.ask is None
        assert doubted.edtf.text == qualified(bare.edtf.text, MARKS[qualifier])


@drawn(100)
@given(DATES, DATES)
def test_both_qualifiers_are_one_in_either_order(first: str, second: str) -> None:
    texts = [read(f"{words} {first} or {second}").edtf for words in ("probably about", "about, probably")]
    assert texts[0] == texts[1] is not None and "%" in texts[0].text


NUMBERS = st.tuples(st.integers(2, 26), st.integers(1851, 2009), st.integers(2, 10))


def with_numbers(words: str, numbers: tuple[int, int, int]) -> str:
    """A phrase of SAID or TOLD with other days and years in it."""
    day, year, later = numbers
    new = {"12": str(day), "13": str(day + 1), "1936": str(year), "1938": str(year + later)}
    return re.sub(r"\d+", lambda match: new[match[0]], words)


@pytest.mark.parametrize("code", sorted(TOLD))
@drawn(12)
@given(NUMBERS)
def test_a_phrase_reads_as_its_translation_does_with_any_numbers(code: str, numbers: tuple[int, int, int]) -> None:
    for english, told in zip(SAID, TOLD[code], strict=True):
        if told:
            here = PhraseSettings(hemisphere="south" if code == "mi" else "north")
            meant, reading = read(with_numbers(english, numbers), here), read(with_numbers(told, numbers))
            asked = meant.ask and meant.ask.replace(meant.text, reading.text)
            assert reading.edtf == meant.edtf, reading.text
            assert reading.ask == asked or _is_of_the_old_style(code, reading), reading.text


def _is_of_the_old_style(code: str, reading: DateReading) -> bool:
    """Whether it is only asked whether a day before 1918 is Julian."""
    return (
        code in ("et", "lt", "lv", "ru")
        and bool(reading.first_year and reading.first_year < 1919)
        and ("old style" in str(reading.ask))
    )


def test_every_language_is_among_them() -> None:
    assert len(TOLD) == len(LANGUAGES) - 1


UNTOLD = ("zorblat", "kvexl", "мбрух", "zorblat kvexl", "Zorblat's")
"""Words that no language has."""
BESIDE_IT = (
    "{0}, {1}", "{0} ({1})", "{0} [{1}]", "{0} {1}", "{1} {0}", "{1}, {0}", "({1}) {0}", "{0} – {1}", "{0}; {1}",
    "{1}: {0}", "{0}: {1}", "{0} / {1}", "{0} or {1}", "{1} or {0}", "{0} {1}?", "before {1} {0}", "{0} and {1}",
    "probably {0}, {1}", "{0}, probably {1}", "{0}, not {1}", "the {1} {0}", "{0}. {1}", "{0}, {1}, Dunedin",
)  # fmt: skip
SAID_WHOLE = (
    "{0.day} {1} {0.year}", "{1} {0.year}", "{0.year}", "Christmas {0.year}", "summer {0.year}", "the {2}0s",
    "early {2}0s", "about {0.year}", "{0.year} or {3}", "before {0.year}", "between {0.year} and {3}", "{0}",
    "from {1} {0.year} to {3}", "two years before {0.year}", "{0.year}, no, {3}", "{0.year}, not {3}", "the war",
    "the first Sunday in {1} {0.year}", "{0.day}.{0.month}.{0.year}", "winter {0.year}-{3}", "vuonna {0.year}",
)  # fmt: skip


@drawn(400)
@given(DAYS, st.sampled_from(SAID_WHOLE), st.sampled_from(BESIDE_IT), st.sampled_from(UNTOLD))
def test_a_word_that_nobody_knows_never_vanishes(day: date, form: str, beside: str, word: str) -> None:
    """What it may turn about is asked, wherever it stands; a name with a capital letter may be a place."""
    whole = form.format(day, MONTHS[day.month - 1], day.year // 10, day.year + 1)
    for language in ("", "en", "de", "et"):
        reading = read(beside.format(whole, word), PhraseSettings(order="dmy", language=language))
        named = word[0].isupper() and beside.startswith("{0}, {1}")
        assert reading.edtf is None or reading.ask or named, reading.text
