"""Two parts of a phrase, each read by itself, and what they come to together: phrases of our own, common practice, no
source. Ruth (born on 9 May 1951) tells; the wedding was on 26 February 1949, the move in November 1953, the fire in
1936."""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import KnownDates, PhraseSettings, read

KNOWN = KnownDates(
    births=MappingProxyType({"ruth": "1951-05-09", "moira": "1925-11-30"}),
    events=MappingProxyType({"the wedding": "1949-02-26", "the move": "1953-11"}),
    perhaps=MappingProxyType({"fire": (("the shop fire", "1936"),)}),
    narrator="1951-05-09",
)
SOUTH = PhraseSettings("dmy", "south", ("NZ",), "en")

HALVES = (  # words, the first choices in their order, words of the question
    ("just before the wedding, or just after",
     "[1949-01-27~..1949-02-26~,1949-02-26~..1949-03-28~] [1949-01-27~..1949-02-26~] [1949-02-26~..1949-03-28~]",
     "is between 27 January 1949 and 26 February 1949 or between 26 February 1949 and 28 March 1949 meant"),
    ("the same year as the fire, or the year after", "[1936,1937] 1936 1937", "is 1936 or 1937 meant"),
    ("the year of the wedding or the one before", "[1948,1949] 1949 1948", "1948"),
    ("the wedding or the year after", "1949-02-26", ""),
    ("the year of the flood, or just after", "", "the flood"),
    ("in the year before the wedding, but after the move", "", ""),
    ("in the year before the move, but after the wedding", "1952~ [1949-02-26..]", ""),
    ("in the year before the wedding, but not in spring", "", ""),
    ("the wedding - or the day after", "[1949-02-26,1949-02-27]", ""),
    ("after the fire, but Moira wasn't yet twenty", "[1936-01-01..1945-11-29]", ""),
    ("the year after the big snow, 48?", "1948?", "Not understood: “the year after the big snow”"),
    ("the year of the slump, 31 or 32", "[1931,1932]", "the slump"),
    ("the year of the flood 36", "1936", "Not understood: “the year of the flood”"),
    ("the year of the flood 36 miles off", "", "flood"),
    ("the winter the 48 geese came, Dunedin", "", "geese"),
    ("5 May 1957 (printed 2 June)", "1957-05-05 [..1957-06-02]", "is 5 May 1957 or not later than 2 June 1957 meant"),
    ("before 1957 (printed 2 June)", "[..1956]", "printed"),
    ("Ruth at school, nine or ten", "[1960-05-09..1962-05-08]", ""),
    ("when I was at the farm, about twelve", "[1962~..1965~]", "Not understood"),
    ("Moira by the mill, maybe six", "1932~", "by the mill"),
    ("Moira and Ruth by the mill, about six", "", ""),
    ("Moira was five, maybe six", "", ""),
    ("not before the wedding, or just after", "", ""),
    ("the fire and the year after, or", "", ""),
    ("after the fire, after the fire", "[1936..]", ""),
    ("the fire, or since the year dot, since when", "", ""),
    ("after the wedding, from 1950 to 1952", "1950/1952", ""),
)  # fmt: skip


@every_row(("words", "choices", "asks"), HALVES)
def test_each_of_two_parts_is_read_and_asked_about(words: str, choices: str, asks: str) -> None:
    reading = read(words, SOUTH, KNOWN)
    assert reading.edtf is None
    assert " ".join(reading.alternatives).startswith(choices), reading
    assert asks in (reading.ask or ""), reading


def test_a_feast_beside_what_is_known_to_its_year_alone_is_asked_about() -> None:
    known = KnownDates(
        events=MappingProxyType({"the fire": "1936", "the slip": "1936-07", "the wedding": "1949-02-26"})
    )
    for words, edtf, choices in (
        ("the Christmas before the fire", None, ("1935-12-25", "1936-12-25")),
        ("the Easter after the fire", None, ("1936-04-12", "1937-03-28")),  # Easter by dateutil
        ("the Christmas after the fire", "1936-12-25", ()),
        ("the Christmas before the slip", "1935-12-25", ()),
        ("the Christmas before the wedding", "1948-12-25", ()),
    ):
        reading = read(words, SOUTH, known)
        assert (reading.edtf and reading.edtf.text, reading.alternatives) == (edtf, choices), words


def test_a_longer_name_of_another_day_is_asked_about() -> None:
    known = KnownDates(
        events=MappingProxyType({"the wedding": "1949-02-26", "the move": "1953-11"}),
        perhaps=MappingProxyType(
            {"golden wedding": (("50 years after the wedding", "1999-02-26"),), "over here": (("the move", "1953-11"),)}
        ),
    )
    for words, edtf, others, ask in (
        ("our golden wedding", "1999-02-26", ("1949-02-26",), "is 50 years after the wedding meant?"),
        ("the day after the golden wedding", "1999-02-27", ("1949-02-27",), "is 50 years"),
        ("the wedding", "1949-02-26", (), ""),
        ("the second year of the wedding", "[1950-02-26..1951-02-26]", (), ""),
        ("the first year of the move", "1953-11/1954-11-30", (), ""),
        ("our first year over here", "1953-11/1954-11-30", (), "is the move meant?"),
    ):
        reading = read(words, SOUTH, known)
        assert (reading.edtf and reading.edtf.text, reading.alternatives) == (edtf, others), reading
        assert ask in (reading.ask or ""), words


def test_an_event_named_as_a_time_of_history_is_asked_about_with_its_own_days() -> None:
    known = KnownDates(events=MappingProxyType({"põgenemist": "1944-09"}))  # Estonian for the flight
    reading = read("nädal enne põgenemist", PhraseSettings(language="et"), known)
    assert reading.edtf and reading.edtf.text == "[1944-08-25..1944-09-29]", reading


def test_a_feast_beside_an_age_is_the_one_at_that_age() -> None:
    reading = read("Xmas, Ruth 4", SOUTH, KNOWN)
    assert reading.alternatives == ("1955-12-25",), reading


def test_ages_of_halves_and_between_two_numbers() -> None:
    for words, edtf, choices in (
        ("Ruth aged 2 1/2", "[1953-10-09~..1954-01-08~]", ()),
        ("when Ruth was between two and three", "[1953-05-09..1955-05-08]", ()),
        ("Ruth between 2 and 3", None, ("[1953-05-09..1955-05-08]",)),
        ("when Ruth was between two", None, ()),
        ("Ruth's 5th b'day", "1956-05-09", ()),
    ):
        reading = read(words, SOUTH, KNOWN)
        assert (reading.edtf and reading.edtf.text, reading.alternatives) == (edtf, choices), reading


def test_other_languages_tell_ours_and_ages_as_english_does() -> None:
    here = MappingProxyType({"hier": (("the move", "1953-11"),), "siin": (("the move", "1953-11"),)})
    known = KnownDates(births=MappingProxyType({"ruth": "1951-05-09"}), narrator="1951-05-09", perhaps=here)
    for words, language, first in (
        ("unser zweites Weihnachten hier", "de", "1954-12-25"),
        ("meie esimene jõul siin", "et", "1953-12-25"),
        ("Ruths zweites Weihnachten", "de", "1952-12-25"),
        ("kui ma olin kaheteistkümnene", "et", "[1963-05-09..1964-05-08]"),
        ("Ruth viiene", "et", "[1956-05-09..1957-05-08]"),
        ("als ich noch zur Schule ging", "de", "[1957-05-09..1967-05-08]"),
        ("kui ma veel koolis käisin", "et", "[1957-05-09..1967-05-08]"),
    ):
        assert read(words, PhraseSettings(language=language), known).choices[:1] == (first,), words
