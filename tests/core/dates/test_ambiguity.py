"""What is decided of every reading of a text (rules of our own): asked where it may mean several, never lost.

Properties: the bounds hold the days that the words allow; qualifiers commute with operators; no word is passed over.
"""

import datetime
from types import MappingProxyType

from hypothesis import example, given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.dates.edtf import State, check, parse
from boxlore.core.dates.edtf_values import Day
from boxlore.core.dates.phrases import KnownDates, PhraseSettings, read

MONTHS = "January February March April May June July August September October November December".split()
DAYS = st.dates(datetime.date(1840, 1, 1), datetime.date(2019, 12, 31))
WAYS = (
    "{d} {m} {y}",
    "{m} {d}, {y}",
    "{y} {m} {d}",
    "{m} {y}",
    "{y}",
    "in {y}",
    "the {y0}s",
    "{y}-{n:02d}-{d:02d}",
    "{d}-{m}-{y}",
    "{d}.{n}.{y}",
    "the {d}th of {m} {y}",
    "{y}.{n}.{d}",
    "{y}, {d} {m}",
    "{d} {m}, {y}",
    "the year {y}",
    "{m} of {y}",
    "{of_month} {m} {y}",
    "{of_year} {y}",
    "some time in {y}",
    "photo taken {d} {m} {y}",
    "({d} {m} {y})",
)
PARTS = ("early", "mid", "late")
AROUND = (
    "{0}",
    "about {0}",
    "probably {0}",
    "{0}?",
    "by {0}",
    "since {0}",
    "{0} or later",
    "{0} or earlier",
    "not before {0}",
    "not after {0}",
    "between {0} and {1}",
    "from {0} to {1}",
    "{0} or {1}",
    "either {0} or {1}",
    "{0} - {1}",
    "{0} and {1}",
    "probably between {0} and {1}",
    "until {0}",
)


def said(way: str, day: datetime.date) -> str:
    of_month, of_year = (PARTS[min((day.day - 1) // 10, 2)], PARTS[(day.month - 1) // 4])
    slots = {"d": day.day, "m": MONTHS[day.month - 1], "n": day.month, "y": day.year, "y0": day.year // 10 * 10}
    return way.format(**slots, of_month=of_month, of_year=of_year)


@drawn(400)
@given(DAYS, DAYS, st.sampled_from(WAYS), st.sampled_from(AROUND))
def test_the_bounds_hold_the_days_that_the_words_allow(
    one: datetime.date, other: datetime.date, way: str, around: str
) -> None:
    first, last = sorted((one, other))
    words = around.format(said(way, first), said(way, last))
    reading = read(words, PhraseSettings(order="dmy"))
    assert reading.edtf is not None, words
    for day in (first, last) if "{1}" in around else (first,):
        meant = Day(day.year, day.month, day.day)
        assert reading.earliest is None or reading.earliest <= meant, words
        assert reading.latest is None or meant <= reading.latest, words


@drawn(200)
@given(DAYS, st.sampled_from(WAYS))
def test_before_and_after_end_and_begin_beside_their_date(day: datetime.date, way: str) -> None:
    words = said(way, day)
    alone, before, after = (read(f"{limit}{words}", PhraseSettings(order="dmy")) for limit in ("", "before ", "after "))
    assert alone.earliest and alone.latest and before.latest and after.earliest
    for earlier, later in ((before.latest, alone.earliest), (alone.latest, after.earliest)):
        one, following = (datetime.date(bound.year, bound.month, bound.day) for bound in (earlier, later))
        apart = (following - one).days
        assert apart == 1 or (apart < 1 and way.startswith("{of_")), words


DATES = st.sampled_from("1938|June 1938|12 June 1938|the summer of 1938|the 1930s|Easter 1938|winter 1938".split("|"))
JOINED = st.sampled_from(["{}", "before {}", "after {}", "{} or June 1940", "between {} and June 1940", "{} or later"])


@drawn(200)
@given(DATES, JOINED, st.sampled_from([("about", "~"), ("probably", "?"), ("perhaps about", "%")]))
def test_doubt_before_an_operator_is_doubt_of_each_date(date: str, joined: str, doubt: tuple[str, str]) -> None:
    words, mark = doubt
    plain, doubted = read(joined.format(date)), read(f"{words} {joined.format(date)}")
    assert plain.edtf and doubted.edtf
    assert doubted.edtf.text.replace(mark, "") == plain.edtf.text
    assert all(end is None or any(end.marks) for pair in doubted.edtf.parts for end in pair)
    assert (doubted.earliest, doubted.latest) == (plain.earliest, plain.latest)


@drawn(200)
@given(DATES, st.sampled_from(["Reval {}", "{} Reval", "{} of hats", "page {}", "{} kg", "not {}", "{} {}"]))
def test_a_word_in_no_table_is_never_passed_over(date: str, around: str) -> None:
    assert read(around.format(date, date)).edtf is None


CENTURIES = [
    ("Easter ’64", "“Easter ’64”: is 1964 meant?", "1964-03-29", ("1864-03-27",)),
    ("June 3, '09", "“June 3, '09”: is 1909 meant?", "1909-06-03", ("2009-06-03",)),
    ("the '50s", "“the '50s”: are the 1950s meant?", "195X", ("185X",)),
    ("'37-'38", "“'37-'38”: is 1937 meant?", "1937/1938", ()),
    ("37-38", "“37-38”: are 1937 to 1938 meant?", "1937/1938", ()),
    (
        "turn of the century",
        "“turn of the century”: is the turn to 1900 meant?",
        "1895~/1905~",
        ("1995~/2005~",),
    ),
    ("the 1800s", "“the 1800s”: is the century meant, or its first ten years?", "18XX", ("180X",)),
    ("1904-05", "“1904-05”: is May 1904 or 1904–1905 meant?", "1904/1905", ("1904-05", "1904/1905")),
    ("1999-01", "“1999-01”: is January 1999 or 1999–2001 meant?", "1999-01", ("1999-01", "1999/2001")),
    ("1943 Neujhar", "“1943 Neujhar”: is 1 January 1943 meant?", "1943-01-01", ("1943",)),
    (
        "Junli 1938",
        "“Junli 1938”: is June 1938 or July 1938 meant?",
        "[1938-06,1938-07]",
        ("1938-06", "1938-07", "1938"),
    ),
    ("7/4/1952", "Day or month first?", "[1952-04-07,1952-07-04]", ("1952-04-07", "1952-07-04")),
    ("na 1938", "“na 1938”: is 1938 or not earlier than 1939 meant?", "1938", ("1938", "[1939..]")),
    (
        "during WW1",
        "Whose war is meant? Its years differ by country.",
        "1914/1918",
        ("1914-07/1918-11", "1917-04/1918-11", "1915-05/1918-11"),
    ),
    ("1648/49", "A dual year: old or new style?", "[1648,1649]", ("1649", "1648")),
    (
        "15 March 1648/49",
        "A dual year: old or new style?",
        "[1648-03-15,1649-03-15]",
        ("1649-03-15", "1649-03-25", "1648-03-15"),
    ),
]


@every_row(("words", "ask", "edtf", "choices"), CENTURIES)
def test_a_question_names_the_words_and_gives_the_choices(
    words: str, ask: str, edtf: str, choices: tuple[str, ...]
) -> None:
    reading = read(words)
    assert (reading.ask, reading.edtf and reading.edtf.text, reading.alternatives) == (ask, edtf, choices)


WITHOUT_A_DATE = [
    ("the war", "Which war?", ("1914-07/1918-11", "1917-04/1918-11")),
    ("summer", "In which year was that summer?", ()),
    ("before the war", "Which war?", ("[..1914-07]", "[..1917-04]")),
    ("Easter", "In which year was that Easter?", ()),
    ("summer 1938 - 1939", "One summer", ("1938-30", "{1938-22,1939-22}")),
    ("spring 1938/39", "each year", ("{1938-21,1939-21}",)),
    (
        "Christmas or New Year 1938",
        "Of which year",
        ("[1938-12-25,1939-01-01]", "[1937-12-25,1938-01-01]", "[1938-12-25,1938-01-01]"),
    ),
    ("jul eller nyår 1938", "Of which year", ("[1938-12-25,1939-01-01]",)),
    ("Christmas 1938 or Easter", "Of which year", ("[1938-12-25,1939-04-09]", "[1938-12-25,1938-04-17]")),
    ("autumn 1938 or spring", "Of which year", ("[1938-23,1939-21]", "[1938-23,1938-21]")),
    ("winter 1938 or spring", "Of which year", ("[1938-24,1939-21]", "[1938-24,1938-21]")),
    ("Brumaire an VIII", "Republican", ()),
    ("31.2.1938", "no day 31", ("1938-02-28", "1938-03-03", "1938-02")),
    ("29/2/37", "no day 29", ("1937-02-28", "1937-03-01", "1937-02", "1936-02-29")),
    ("31 vi 1938", "no day 31", ("1938-06-30", "1938-07-01", "1938-06")),
    ("32/2/1937", "no day like that", ()),
    ("98 2 30", "no day like that", ()),
    ("the first Christmas of the war", "Which war?", ("1914-12-25", "1917-12-25")),
    ("the second summer of the Boer War", "Which war?", ("1901-22",)),
    ("the ninth winter of the Blitz", "not so many", ()),
    ("last year of the war", "The First World War or the Second World War.", ("1917-11/1918-11", "1944-05/1945-05")),
    ("Boer War", "Which war?", ("1899-10/1902-05", "1880-12/1881-03")),
    ("28 ottobre XIV", "of which year?", ("1936-10-28", "1935-10-28")),
    ("31 April", "no day 31", ("XXXX-04-30", "XXXX-05-01", "XXXX-04")),
    ("0 June 1938", "June 1938", ("1938-06",)),
    ("the second week of June", "In which year", ()),
    ("fifth Sunday in June 1938", "has no", ()),
    ("coronation day", "Which Coronation Day?", ("1953-06-02", "1937-05-12")),
    ("Coronation year", "Which Coronation?", ("1953", "1937", "1911", "1902")),
    ("New Zealand Day 1950", "not kept", ("1950",)),
    ("31 June 1938", "no day 31", ()),
    ("the ninth week of June 1938", "no such week", ()),
    ("Easter after the war", "Which war?", ("1919-04-20", "1946-04-21")),
    ("from 1938 to after", "to after", ("1938/..",)),
    ("school year of the 1930s", "Which school year", ()),
    ("1900-1910s", "decade", ()),
    ("1938 to before 1939", "not later than 1938", ("1938", "[..1938]")),
    ("before 1938/..", "not later than 1937", ("[..1937]",)),
    ("before 1.1.0001", "outside the years 1 to 9999", ()),
    ("the day after 31.12.9999", "outside the years 1 to 9999", ()),
    ("4.6.0000 w/e", "outside the years 1 to 9999", ()),
    ("0-1X", "Something here is no date", ()),
    ("summer 1948 (", "is summer 1948 meant", ("1948-22",)),
    ("the war, enne küüditamist", "Which war", ("1914-07/1918-11",)),
    ("June, July 1938", "or both", ("[1938-06,1938-07]", "1938-06/1938-07", "1938-06", "1938-07")),
    ("Feb, Mar 1936", "or both", ("[1936-02,1936-03]", "1936-02/1936-03", "1936-02", "1936-03")),
    ("Boxing Day or the day after, 1948", "meant", ("[1948-12-26,1948-12-27]", "1948-12-26", "1948-12-27")),
    ("About 1940, before 20 January 1940", "Which", ("[1940~..1940-01-19]", "[..1940-01-19]", "1940~")),
    ("about 1940, after June 1940", "Which", ("[1940-07-01..1940~]", "[1940-07..]", "1940~")),
    ("1940s, wartime anyway", "Which years", ("[1940..1945]", "[1941..1945]", "[1941..1944]", "194X")),
    ("after Christmas 1948 but before Easter", "In which year", ("[1948-12-26..1949-04-16]",)),
    ("no earlier than May 1940 and no later than the autumn", "In which", ("[1940-05..1940-11]", "[1940-05..1941-11]")),
    ("1937, no, a year later", "meant", ("1938", "1937")),
    ("1938, but not May", "without", ("[1938-01..1938-04]", "[1938-06..1938-12]")),
    ("the summer we had the measles, 1938", "meant", ("1938-22", "1938")),
    ("Summer Hill, 1938", "which of these", ("1938", "1938-22")),
    ("Easter of 1951, because the twins weren't born till June", "meant", ("1951-03-25",)),
]


@every_row(("words", "ask", "choices"), WITHOUT_A_DATE)
def test_what_must_be_chosen_first(words: str, ask: str | None, choices: tuple[str, ...]) -> None:
    reading = read(words)
    assert reading.edtf is None or ask == "decade"
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)
    assert reading.alternatives[: len(choices)] == choices


DISAGREEING = [  # the day told, and what else may be meant (weekdays by `cal` of Unix, feasts by dateutil.easter)
    ("Mon 12 June 1938", "1938-06-12", ("1938-06-13", "1933-06-12", "1939-06-12")),
    ("Sunday 29 February 1932", "1932-02-29", ("1932-02-28", "1920-02-29", "1948-02-29")),
    ("Easter, 3 April 1938", "1938-04-03", ("1938-04-17",)),
    ("Advent, 2 January 1930", "1930-01-02", ("1930-11-30/1930-12-24",)),
    ("Thursday, Easter Sunday 17 April 1938", "1938-04-17", ("1938-04-14", "1930-04-17", "1941-04-17")),
    ("Mon 12 June '38", "1938-06-12", ()),
    ("10 February 1733/4", "[1733-02-10,1734-02-10]", ("1734-02-10", "1734-02-21", "1733-02-10")),
    ("February 1733/4", "[1733-02,1734-02]", ("1734-02", "1733-02")),
]


@every_row(("words", "edtf", "choices"), DISAGREEING)
def test_a_day_that_another_word_denies_is_asked_with_what_fits(
    words: str, edtf: str, choices: tuple[str, ...]
) -> None:
    reading = read(words)
    assert reading.edtf and reading.edtf.text == edtf
    assert reading.ask and reading.alternatives == choices


def test_the_year_in_which_it_is_told_is_the_last_that_is_not_asked_about() -> None:
    known = KnownDates(this_year=1960)
    assert read("1960", known=known).ask is None
    assert "to come" in str(read("1961", known=known).ask)
    assert read("the 1960s", known=known).ask is None
    assert "to come" in str(read("1938 or 1970", known=known).ask)
    assert read("'59", known=known).alternatives == ("1859",)


def test_a_day_after_the_one_on_which_it_is_told_is_asked_about() -> None:
    known = KnownDates(this_year=1960, today="1960-11-29")
    for words in ("30 November 1960", "Christmas 1960", "June or Christmas 1960", "1961", "1950 or December 1960"):
        assert "to come" in str(read(words, known=known).ask), words
    assert "a day to come" in str(read("Christmas 1960", known=known).ask)
    for words in ("29 November 1960", "Easter or June 1960", "autumn 1960", "1960", "since 1960", "the 1960s"):
        assert read(words, known=known).ask is None, words


def test_nothing_is_photographed_before_there_were_photographs() -> None:
    """The oldest photograph known is of 1826 or 1827 (N. Niépce; from memory)."""
    for words in ("14 March 1396", "1825", "18 June 1815", "the 1790s", "before 1812", "1066 or 1938", "1581-1587"):
        assert "before there were photographs" in str(read(words).ask), words
    for words in ("1826", "before 1938", "the 19th century", "between 1810 and 1860", "after 1815"):
        assert read(words).ask is None, words
    assert read("14 March 1396", known=KnownDates(first_year=0)).ask is None


SETTINGS = [
    ("Thanksgiving 1963", PhraseSettings(countries=("CA",)), "1963-10-14", None),
    ("Mother's Day 1950", PhraseSettings(countries=("GB",)), "1950-03-19", None),
    ("Queen's Birthday 1955", PhraseSettings(countries=("NZ",)), "1955-06-06", None),
    ("Queen's Birthday 1955", PhraseSettings(), "1955-06-06", "Whose"),
    ("Anniversary Day 1930", PhraseSettings(countries=("AU",)), "1930-01-26", None),
    ("Midsummer 1938", PhraseSettings(hemisphere="south"), "1938-06-24", "December"),
    ("summer holidays 1938", PhraseSettings(hemisphere="south"), "1938-12/1939-02", "Which"),
    ("summer 1938-39", PhraseSettings(hemisphere="south"), "1938-30", None),
    ("the southern summer of 1938", PhraseSettings(), "1938-30", "ended in it"),
    ("the northern summer of 1938", PhraseSettings(hemisphere="south"), "1938-22", None),
    ("the Second World War", PhraseSettings(countries=("US",)), "1941-12/1945-09", None),
    # The occupation of Norway, and Britain's two wars, which were New Zealand's too: from memory.
    ("under andre verdenskrig", PhraseSettings(countries=("NO",)), "1940-04/1945-05", None),
    ("the First World War", PhraseSettings(countries=("NZ",)), "1914-08/1918-11", None),
    ("the Boer War", PhraseSettings(countries=("NZ",)), None, "Which war?"),
    ("before the war", PhraseSettings(countries=("EE",)), None, "Which war?"),
    ("during the war", PhraseSettings(countries=("NZ",)), None, "Which war?"),
    ("Labour Weekend 1956", PhraseSettings(countries=("NZ",)), "1956-10-19/1956-10-22", None),
    ("the Second World War", PhraseSettings(), "1939/1945", "Whose"),
    ("before the Second World War", PhraseSettings(), "[..1939-09]", "Whose"),
    ("after the First World War", PhraseSettings(), "[1918-11..]", None),
    ("the year after the Boer War", PhraseSettings(), None, "Which war"),
    ("the year after the Korean War", PhraseSettings(), "1954", None),
    ("the year before the Korean War", PhraseSettings(), "1949", None),
    ("Sunday 12 June 1938", PhraseSettings(), "1938-06-12", None),
    ("Monday 12 June 1938", PhraseSettings(), "1938-06-12", "Sunday"),
    ("Sunday 30 May 1938 old style", PhraseSettings(), "1938-06-12", None),
    ("Christmas 1917 old style", PhraseSettings(), "1918-01-07", None),
    ("Easter 1938 old style", PhraseSettings(), "1938-04-24", None),
    ("June 1912 old style", PhraseSettings(), "1912-06", "which day"),
    ("Ramadan 1938", PhraseSettings(), "1938-10-25~/1938-11-23~", None),
    ("Eid al-Fitr 2000", PhraseSettings(), "2000-01-08~", "Which Eid"),
]


@every_row(("words", "own", "edtf", "ask"), SETTINGS)
def test_what_the_collection_and_the_calendar_settle(
    words: str, own: PhraseSettings, edtf: str | None, ask: str | None
) -> None:
    """Ramadan 1938 began on 25 October, Eid al-Fitr of 2000 fell on 8 January and 27 December (tables, from memory)."""
    reading = read(words, own)
    assert (reading.edtf and reading.edtf.text) == edtf
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)


FAMILY = KnownDates(events=MappingProxyType({"the wedding": "1931-05-09"}), births=MappingProxyType({"ruth": "1930"}))
WORDS = st.sampled_from(
    (
        "about between and 1920 1950s june the before after or 3 '51 easter week of summer war not from to ? , - / ( "
        ") 1904-05 7/4/52 winter early late century 19th XIX fifties years two first last Sunday christmas old style "
        "no wedding Ruth aged 5 when was bc since until either probably 12th Adar 5698 her 21st school year turn "
        "mid-1930s 193- 194? 1648/49 southern later earlier 30 feb 2480 '00s 1800s advent passover ramadan ww2 VI jul "
        "mar na po do half d'août 12.6.1938 ' "
    ).split()
)


@drawn(800)
@example("summer do 1648/49 na d'août", None, False)
@given(st.lists(WORDS, min_size=1, max_size=7).map(" ".join), st.sampled_from(["dmy", "mdy", None]), st.booleans())
def test_whatever_is_said_is_a_date_a_question_or_kept(words: str, order: str | None, south: bool) -> None:
    reading = read(words, PhraseSettings(order, "south" if south else "north"), FAMILY)
    assert reading.edtf is None or check(reading.edtf.text).state is State.VALID
    assert all(parse(choice) for choice in reading.alternatives)
