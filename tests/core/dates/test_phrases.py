"""What people say, as case files (cases/dates): words, EDTF, question, settings. Each file names its convention.

To add a case, add a line. Settings: dmy or mdy, south. A question is checked by one of its words.
"""

from pathlib import Path
from types import MappingProxyType

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row, every_row_by_group

from boxlore.core.dates.edtf import State, check
from boxlore.core.dates.lexicon import HOLIDAY_NAMES
from boxlore.core.dates.phrases import KnownDates, PhraseSettings, read, read_strict

HERE = Path(__file__).parent / "cases"


def cases() -> dict[str, list[tuple[str, str, str, str]]]:
    files = {path.stem: path.read_text(encoding="utf-8").splitlines() for path in sorted(HERE.glob("*.txt"))}
    return {
        name: [_four(line) for line in lines if line.strip() and not line.startswith("#")]
        for name, lines in files.items()
    }


def _four(line: str) -> tuple[str, str, str, str]:
    parts = [part.strip() for part in line.split("|")]
    words, edtf, ask, setting = [*parts, *("", "-", "-", "")[len(parts) :]]
    return words, edtf, ask, setting


CASES = cases()


def test_no_year_that_is_denied_is_offered() -> None:
    for words in (
        "nem 1935 nem 1936",
        "ni en 1935 ni en 1936",
        "weder 1935 noch 1936",
        "ani w maju, ani w czerwcu 1938",
    ):
        assert read(words).choices == ()


def test_where_a_war_is_an_end_its_own_edge_and_a_third_of_it_are_offered() -> None:
    at_home = PhraseSettings(countries=("NZ",))
    assert read("between 1912 and the start of the First War", at_home).choices == ("1912/1914-08", "1912/1915-12~")
    assert read("between the end of the First War and 1920", at_home).choices == ("1918-11/1920", "1917-07~/1920")


def test_how_many_cases_there_are() -> None:
    assert sum(map(len, CASES.values())) >= 3000


@every_row_by_group(("words", "edtf", "ask", "setting"), CASES)
def test_case(words: str, edtf: str, ask: str, setting: str) -> None:
    order = setting if setting in ("dmy", "mdy") else None
    hemisphere = "south" if setting == "south" else "north"
    countries = (setting,) if setting.isupper() else ()
    language = setting if len(setting) == 2 and setting.islower() else ""
    settings = PhraseSettings(order=order, hemisphere=hemisphere, countries=countries, language=language)
    reading = read(words, settings)
    assert (reading.edtf.text if reading.edtf else "-") == edtf
    if ask == "-":
        assert reading.ask is None
    else:
        assert reading.ask is not None and all(word in reading.ask for word in ask.split())
    assert reading.text == words


KNOWN = KnownDates(
    births=MappingProxyType({"ruth": "1930", "aunt aino": "1920-05", "con": "[..1930]"}),
    events=MappingProxyType({"the wedding": "1952-06-14", "joe came home": "1946-08-03", "the flood": "[..1930]"}),
)
FAMILY = [
    ("when Ruth was five", "1935~"),
    ("Christmas the year of the wedding", "1952-12-25"),
    ("Easter in the year Joe came home", "1946-04-21"),
    ("Christmas the year of the flood", None),
    ("two Christmases before the wedding", None),
    ("the second Christmas after the wedding", "1953-12-25"),
    ("two Christmases before Ruth", None),
    ("the first Christmas Joe came home", "1946-12-25"),
    ("the first summer Joe came home", "1946-22"),
    ("the last Christmas Joe came home", None),
    ("about thirty-eight, before the wedding", "1938~"),
    ("two Christmases before 1938", None),
    ("Aunt Aino aged 5 years and 6 months", "[1925-11-01..1925-12-30]"),
    ("Aunt Aino, 2 yrs 3 mths", "[1922-08-01..1922-09-29]"),
    ("when Ruth was 5", "1935~"),
    ("when Ruth was about twenty-one", "1951~"),
    ("when Aunt Aino was ten", "[1930-05..1931-05]"),
    ("Aunt Aino aged 4½", "[1924-05..1925-05]"),
    ("kai Aunt Aino buvo dešimt metų", "[1930-05..1931-05]"),
    ("kai Aunt Aino buvo penkeri metai", "[1925-05..1926-05]"),
    ("Aunt Aino 5 gadu vecumā", "[1925-05..1926-05]"),
    ("kui Aunt Aino oli kuueaastane", "[1926-05..1927-05]"),
    ("als Aunt Aino sechs war", "[1926-05..1927-05]"),
    ("Aunt Aino mit sechs Jahren", "[1926-05..1927-05]"),
    ("quand Aunt Aino avait six ans", "[1926-05..1927-05]"),
    ("Aunt Aino à six ans", "[1926-05..1927-05]"),
    ("cuando Aunt Aino tenía seis años", "[1926-05..1927-05]"),
    ("a los seis años de Aunt Aino", "[1926-05..1927-05]"),
    ("quando Aunt Aino aveva sei anni", "[1926-05..1927-05]"),
    ("quando a Aunt Aino tinha seis anos", "[1926-05..1927-05]"),
    ("toen Aunt Aino zes was", "[1926-05..1927-05]"),
    ("da Aunt Aino var seks år", "[1926-05..1927-05]"),
    ("när Aunt Aino var sex år", "[1926-05..1927-05]"),
    ("kun Aunt Aino oli kuusivuotias", "[1926-05..1927-05]"),
    ("когда Aunt Aino было шесть лет", "[1926-05..1927-05]"),
    ("gdy Aunt Aino miała sześć lat", "[1926-05..1927-05]"),
    ("kad Aunt Aino bija seši gadi", "[1926-05..1927-05]"),
    ("když bylo Aunt Aino šest let", "[1926-05..1927-05]"),
    ("amikor Aunt Aino hatéves volt", "[1926-05..1927-05]"),
    ("when Aunt Aino was rising five", "[1924-05..1925-05]"),
    ("Aunt Aino was 3 going on 4", "[1923-05..1924-05]"),
    ("kui Aunt Aino oli seitsmene", "[1927-05..1928-05]"),
    ("three days before the wedding, or four", "[1952-06-10..1952-06-11]"),
    ("after the wedding, maybe that Christmas", None),
    ("the year after the wedding", "1953~"),
    ("the year of the wedding", "1952"),
    ("the summer Joe came home", "1946-22"),
    ("the winter Joe came home", None),
    ("the week Joe came home", "[1946-07-28..1946-08-04]"),
    ("the month after the wedding", "[1952-06-15..1952-07-14]"),
    ("the month Joe came home", "1946-08"),
    ("the year of the flood", None),
    ("when Con was five", None),
    ("when Con was little", None),
    ("the wedding Joe came home", None),
    ("Whitsun the year before the wedding", None),
    ("autumn the year before the wedding", "1951-23"),
    ("the year after Joe came home, autumn", None),
    ("the year before Joe came home, Christmas", "1945-12-25"),
    ("Christmas, the year before Joe came home", "1945-12-25"),
    ("two years before the wedding, Christmas", None),
    ("Christmas 1938, the year before the wedding", None),
    ("after the wedding, two years or so", "1954~"),
    ("after the wedding, maybe a year", "1953%"),
    ("after the wedding, two", None),
    ("po vestuvių kokie dveji metai", None),
    ("через год после the wedding", "1953~"),
    ("Aunt Aino som konfirmand, 14 år", None),
    ("Aunt Aino leeripäev, 17-aastasena", None),
    ("when Aunt Aino was nobbut three", None),
    ("when Aunt Aino was nobbut 0", None),
    ("Christmas, the year before 1938", None),
    ("een jaar of twee na the wedding", "1954~"),
    ("Aunt Aino was a week old", "[1920-05-08..1920-06-13]"),
    ("Christmas, the year of the wedding", "1952-12-25"),
    ("Aunt Aino before she was 20", "[..1940-05]"),
    ("summer, a year after the wedding", "1953-22"),
    ("no verão, um ano depois de the wedding", "1953-22"),
    ("Aunt Aino, 6ft, aged 19", None),
    ("Easter, when Aunt Aino was 9", "1930-04-20"),  # born in May 1920
    ("Christmas, Aunt Aino was six", "1926-12-25"),
    ("Aunt Aino was six, Christmas", "1926-12-25"),
    ("Aunt Aino i trettioårsåldern", "[1949~..1952~]"),
    ("Aunt Aino i 30-årsåldern", "[1949~..1952~]"),
    ("Aunt Aino is seventeen there", "[1937-05..1938-05]"),
    ("ein oder zwei Jahre nach the wedding", "[1953~..1954~]"),
    ("ett eller två år efter the wedding", "[1953~..1954~]"),
    ("rok dva po the wedding", "[1953~..1954~]"),
    ("года через два после the wedding", "1954~"),
    ("года два после the wedding", "1954~"),
    ("после the wedding, года два", "1954~"),
    ("dopo the wedding, un paio d'anni", "1954~"),
    ("efter the wedding, ett par år", "1954~"),
    ("after the wedding, that same autumn", "1952-23"),
    ("after the wedding that same autumn", "1952-23"),
    ("im Jahr, als Joe came home", "1946"),
    ("when Aunt Aino was a year old", "[1921-05..1922-05]"),
    ("als Aunt Aino ein Jahr alt war", "[1921-05..1922-05]"),
    ("когда Aunt Aino был год", "[1921-05..1922-05]"),
    ("Aunt Aino, roczek", "[1921-05..1922-05]"),
    ("Aunt Aino, een jaar", None),
    ("years old Aunt Aino", None),
    ("Aunt Aino 4 1/2 år", "[1924-05..1925-05]"),
]


@every_row(("words", "edtf"), FAMILY)
def test_ages_and_events_of_the_family(words: str, edtf: str) -> None:
    """Reckoned from the person's or the event's own date, about (our convention);
    an age of somebody whose day of birth is known is the days from one birthday to the day before the next."""
    assert read(words, PhraseSettings(), KNOWN).to_json()["edtf"] == edtf


BESIDE = [  # words, those that are named as not understood, the choices
    ("Christmas dinner, Aunt Aino was over six", "Christmas dinner", "[1926-05-01..]"),
    ("May dinner, Aunt Aino was six", "May dinner", "1926-05 1927-05"),
    ("Christmas dinner, Aunt Aino was six", "Christmas dinner", "1926-12-25"),
    ("Thursday, Aunt Aino was six", "Thursday", "[1926-05..1927-05]"),
    ("May, when Aunt Aino was six", "", "1926-05 1927-05"),
    ("Christmas, when Aunt Aino was about six", "", "1925-12-25 1926-12-25 1927-12-25 1928-12-25"),
    ("Christmas, when Con was over six", "", "XXXX-12-25"),
    ("31 June, Aunt Aino was six", "", "1926-06-30 1926-07-01 1926-06"),
    ("Christmas, the year of the flood", "year", "1930-12-25 [..1930]"),
    ("Con's birthday 1920", "Con's birthday", "1920"),
    ("Aunt Aino about 4, so 1935", "", "1935 [1923~..1926~]"),
    ("Aunt Aino, in the garden, aged 4", "", "[1924-05..1925-05]"),
    ("Aunt Aino and Ruth, Ruth aged 4", "Aunt Aino and Ruth", "1934~"),
    ("Aunt Aino, aged 19, at the mill", "at the mill", "[1939-05..1940-05]"),
    ("Aunt Aino, 19, before she wed", "before she wed", "[1939-05..1940-05]"),
    ("autumn, after the wedding", "", "1952-23 1953-23"),
    ("after the flood, that same autumn", "", "1930-23 [1930..]"),
    ("een oder zwei na the wedding", "oder zwei", "1952-06-14 [1952-06-14..]"),
    ("ein oder zwei nach the wedding", "oder zwei", "[1952-06-14..]"),
    ("rok po dva the wedding", "rok po dva", "1952-06-14"),
    ("года два the wedding", "года два", "1952-06-14"),
]


@every_row(("words", "unread", "choices"), BESIDE)
def test_an_age_or_an_event_beside_other_words_is_asked_about(words: str, unread: str, choices: str) -> None:
    """Our convention: what is told beside it is a choice where it is a date, and named where it is not understood."""
    reading = read(words, PhraseSettings(), KNOWN)
    assert reading.edtf is None and " ".join(reading.alternatives) == choices
    assert (
        str(reading.ask).endswith(f" Not understood: “{unread}”.") if unread else "understood" not in str(reading.ask)
    )


IN_TENS = [
    ("Aunt Aino, Mitte dreißig", "1954~/1957~"),
    ("Aunt Aino Anfang 40", "1960~/1964~ 1940"),
    ("Aunt Aino um die dreißig", "[1949~..1952~]"),
    ("Aunt Aino in den Dreißigern", "1950/1960 193X"),
    ("Aunt Aino i tyverne", "1940/1950 192X"),
    ("Aunt Aino først i tyverne", "1940~/1944~ 1920~/1923~"),
    ("Aunt Aino in the thirties", "193X 1950/1960"),
    ("Aunt Aino avait une vingtaine d'années", "[1939~..1942~]"),
    ("Aunt Aino, la trentaine", "1950/1960"),
    ("Aunt Aino, thirty-something", "1950/1960"),
    ("Aunt Aino Mitte dreißig Ende vierzig", ""),
    ("Aunt Aino, la trentaine, Paris", ""),
    ("Aunt Aino, twenty-something, thirty-something", ""),
    ("les années trente, Aunt Aino", "193X"),
    ("двадцатые годы, Aunt Aino", "192X 202X"),
    ("Aunt Aino 40", "[1960-05..1961-05]"),
]


@every_row(("words", "choices"), IN_TENS)
def test_ages_in_tens_beside_a_name_are_asked_about(words: str, choices: str) -> None:
    """An age, and ten years of a century where the word may tell them (our convention)."""
    reading = read(words, PhraseSettings(), KNOWN)
    assert reading.edtf is None and " ".join(reading.alternatives) == choices


TWO_LIVES = KnownDates(
    births=MappingProxyType({"ruth": "1932-03-04", "bob": "[1931-12-20..1932-01-05]"}),
    events=MappingProxyType({"the wedding": "1952-06-14"}),
    narrator="1930-05-10",
    pictured=MappingProxyType({"Ruth": "1932-03-04"}),
)
WHOSE_AGE = [
    ("16 yrs old", "[1948-03-04..1949-03-03]"),
    ("Ruth just turned five", "[1937-03-04~..1937-04-03~]"),
    ("the morning after the wedding", "1952-06-15"),
    ("half a year after the wedding", "1952-12~"),
    ("tenía unos seis años", "[1937~..1940~]"),
    ("Ruth 6 a. vana", "[1938-03-04..1939-03-03]"),
    ("ik was een jaar of zes", "[1935~..1938~]"),
    ("jeg var vel seks år", "1936~"),
    ("за год до the wedding", "1951~"),
    ("kaksi vuotta the wedding jälkeen", "1954~"),
    ("kurz bevor the wedding", "[1952-05-15~..1952-06-14~]"),
    ("a year and a half after the wedding", "1953-12~"),
    ("two and a half years after the wedding", "1954-12~"),
    ("anderthalb Jahre vor the wedding", "1950-12~"),
    ("Ruth 21 today!", "1953-03-04"),
    ("Ruth is 5 today", "1937-03-04"),
    ("in her thirties", "1962/1972"),
    ("in her early thirties", "1962~/1966~"),
    ("Ruth's first birthday", "1933-03-04"),
    ("the day Ruth turned six", "1938-03-04"),
    ("Ruth's tenth year", "[1941-03-04..1942-03-03]"),
    ("Ruth not yet two", "[1932-03-04..1934-03-03]"),
    ("a week before Ruth's sixth birthday", "1938-02-25~"),
    ("aged about six", "[1937~..1940~]"),
    ("Ruth at 6 mths", "[1932-09-04..1932-10-03]"),
    ("Ruth, 3 weeks old", "[1932-03-25..1932-03-31]"),
    ("my 21st", "1951-05-10"),
    ("my twenty-first birthday", "1951-05-10"),
    ("the summer before I turned ten", "1939-22"),
    ("a fortnight after the wedding", "1952-06-28~"),
    ("three years to the day after the wedding", "1955-06-14"),
    ("a few months after the wedding", "[1952-08-14..1952-12-14]"),
    ("the Christmas after the wedding", "1952-12-25"),
    ("Ruths sechster Geburtstag", "1938-03-04"),
    ("zu Ruths sechstem Geburtstag", "1938-03-04"),
    ("le jour de mes 20 ans", "1950-05-10"),
    ("l'été de mes vingt ans", "1950-22"),
    ("l'année de mes vingt ans", "1950"),
    ("el verano de mis veinte años", "1950-22"),
    ("en mis veinte", "1950/1960"),
    ("el año en que cumplí veinte", "1950"),
    ("l'estate dei miei vent'anni", "1950-22"),
    ("o verão dos meus vinte anos", "1950-22"),
    ("à l'âge de six ans", "[1938-03-04..1939-03-03]"),
    ("Ruth âgée de 6 mois", "[1932-09-04..1932-10-03]"),
    ("con seis años", "[1938-03-04..1939-03-03]"),
    ("cuando cumplí diez años", "1940-05-10"),
    ("a sei anni", "[1938-03-04..1939-03-03]"),
    ("quando ho compiuto dieci anni", "1940-05-10"),
    ("aos seis anos", "[1938-03-04..1939-03-03]"),
    ("op mijn zesde verjaardag", "1936-05-10"),
    ("Ruth op zesjarige leeftijd", "[1938-03-04..1939-03-03]"),
    ("på min tioårsdag", "1940-05-10"),
    ("på hennes sjätte födelsedag", "1938-03-04"),
    ("på min 50-årsdag", "1980-05-10"),
    ("på 6-årsdagen", "1938-03-04"),
    ("da jeg fylte seks", "1936-05-10"),
    ("Ruth seks år gammel", "[1938-03-04..1939-03-03]"),
    ("som seksårig", "[1938-03-04..1939-03-03]"),
    ("kuusivuotiaana", "[1938-03-04..1939-03-03]"),
    ("Ruth 6-vuotiaana", "[1938-03-04..1939-03-03]"),
    ("50-vuotispäivänäni", "1980-05-10"),
    ("kuueaastaselt", "[1938-03-04..1939-03-03]"),
    ("minu kümnendal sünnipäeval", "1940-05-10"),
    ("в шесть лет", "[1938-03-04..1939-03-03]"),
    ("w wieku sześciu lat", "[1938-03-04..1939-03-03]"),
    ("na moje dziesiąte urodziny", "1940-05-10"),
    ("když mi bylo deset", "[1940-05-10..1941-05-09]"),
    ("v šesti letech", "[1938-03-04..1939-03-03]"),
    ("k mým desátým narozeninám", "1940-05-10"),
    ("sešu gadu vecumā", "[1938-03-04..1939-03-03]"),
    ("manā desmitajā dzimšanas dienā", "1940-05-10"),
    ("būdama šešerių", "[1938-03-04..1939-03-03]"),
    ("per mano dešimtąjį gimtadienį", "1940-05-10"),
    ("hatévesen", "[1938-03-04..1939-03-03]"),
    ("a tizedik születésnapomon", "1940-05-10"),
    ("hatéves koromban", "[1936-05-10..1937-05-09]"),
    ("Ruth, 3 months", "[1932-06-04..1932-07-03]"),
    ("Ruth (3 weeks)", "[1932-03-25..1932-03-31]"),
    ("Me at sixteen", "[1946-05-10..1947-05-09]"),
    ("Ruth at 13 or 14", "[1945-03-04..1947-03-03]"),
    ("ma olin siis 7-8 aastane", "[1937-05-10..1939-05-09]"),
    ("Ruth's first Christmas", "1932-12-25"),
    ("Ruth's first summer", "1932-22"),
    ("my first Christmas", "1930-12-25"),
    ("her first Christmas", "1932-12-25"),
    ("Ruth's second winter", "1933-24"),
    ("Ruth's first Easter", "1932-03-27"),
    ("Ruth's 2nd Candlemas", "1934-02-02"),
    ("Bob's first Christmas", "[1931-12-25,1932-12-25]"),
]
ASKED_AGES = [
    ("the summer I turned twenty", "another season", ("1950-22~", "1949-22~")),
    ("Bob, 7 yrs, with Ruth", "meant", ("1938/1939",)),
    ("the house, 16 years old", None, ()),
    ("Ruth fifth today", "which year", ()),
    ("Ruth at seven", "a time of day", ("[1939-03-04..1940-03-03]",)),
    ("Ruth at no 18", None, ()),
    ("Ruth was early ten", None, ()),
    ("Ruth's first Mother's Day", "Whose", ("1932-03-06",)),
    ("Ruth's Christmas", "year", ("XXXX-12-25",)),
    ("me, 17", "meant", ("[1947-05-10..1948-05-09]",)),
    ("ich, 17", "meant", ("[1947-05-10..1948-05-09]",)),
    ("Ruth, two and a half", "meant", ("[1934-03-04..1935-03-03]",)),
    ("Ruth, two and half", "meant", ("[1934-03-04..1935-03-03]",)),
    ("Bob's first winter", "Which year", ("1931-24", "1932-24")),
    ("their first Christmas", "go together", ("1933-12-25", "1933-03-04")),
    ("Ruth's last Christmas", "which year", ()),
    ("Ruth's first Christmas 1932", "Which", ("1932-12-25", "1933-03-04")),
]


@every_row(("words", "ask", "choices"), ASKED_AGES)
def test_what_may_be_an_age_or_a_feast_of_a_life_is_asked(
    words: str, ask: str | None, choices: tuple[str, ...]
) -> None:
    """“At seven” may be in the evening, and a feast may be another country's (everyday usage)."""
    reading = read(words, PhraseSettings(), TWO_LIVES)
    assert reading.edtf is None
    assert reading.ask is None if ask is None else ask in str(reading.ask)
    assert reading.alternatives == choices


@every_row(("words", "edtf"), WHOSE_AGE)
def test_whose_age_it_is_in_every_language(words: str, edtf: str) -> None:
    """“My” is the narrator's, “her” or nobody's that of who is in the picture (everyday usage)."""
    reading = read(words, PhraseSettings(), TWO_LIVES)
    assert (reading.edtf and reading.edtf.text, reading.ask) == (edtf, None)


NAMES_LIKE_WORDS = (
    "when Jo was six", "när Hans var sex", "when Sue was six", "when Mia was six", "när Min var sex", "Kuu aged six",
    "when Anni was six", "Fez aged six", "kui Mina oli kuuene", "quand Ella avait six ans", "when Con was five",
)  # fmt: skip


@every_row("words", NAMES_LIKE_WORDS)
def test_a_name_that_is_a_word_of_another_language_is_a_name(words: str) -> None:
    """Nobody's age is reckoned from the birth of somebody else (given names in use, common practice)."""
    reading = read(words, PhraseSettings(), TWO_LIVES)
    assert reading.edtf is None
    assert reading.ask and reading.ask.endswith("born?")


AUGUST = KnownDates(births=MappingProxyType({"august": "1902-09-03"}))
NAMED_AS_A_MONTH = [
    ("August 1938 in the garden", "August 1938", ("1938-08",)),
    ("the picnic, 12 August", "which year", ("XXXX-08-12",)),
    ("Haapsalu 1938. a. august", "August 1938", ("1938-08",)),
    ("August, 12", "1914", ("[1914-09-03..1915-09-02]",)),
]


@every_row(("words", "ask", "choices"), NAMED_AS_A_MONTH)
def test_a_name_that_is_a_month_is_one_beside_a_year_or_behind_a_day(
    words: str, ask: str, choices: tuple[str, ...]
) -> None:
    """August is a given name of the family (common practice, no source)."""
    reading = read(words, PhraseSettings(), AUGUST)
    assert (reading.edtf, reading.alternatives) == (None, choices)
    assert ask in str(reading.ask)


I_WAS_SIX = (
    "amikor hatéves voltam",
    "kui ma olin kuuene",
    "quand j'avais six ans",
    "cuando yo tenía seis años",
    "quando avevo sei anni",
    "quando eu tinha seis anos",
    "toen ik zes was",
    "da jeg var seks år gammel",
    "när jag var sex",
    "da jeg var seks",
    "kun olin kuusivuotias",
    "когда мне было шесть лет",
    "мне тут шесть лет",
    "man te seši gadi",
    "kiedy miałem sześć lat",
    "kad man bija seši gadi",
    "kai man buvo šešeri metai",
    "když mi bylo šest",
)


@every_row("words", I_WAS_SIX)
def test_when_i_was_six_in_every_language(words: str) -> None:
    """From one birthday to the day before the next (everyday usage)."""
    reading = read(words, PhraseSettings(), KnownDates(narrator="1930-05-10"))
    assert (reading.edtf and reading.edtf.text, reading.ask) == ("[1936-05-10..1937-05-09]", None)


LAST_OF_A_LIFE = [
    ("Ruth's last Christmas", "1938-12-25"),
    ("Ruth's last Easter", "1938-04-17"),
    ("Ruth's last New Year", "1939-01-01"),
    ("Ruth's last summer", "1938-22"),
    ("in Ruth's last year", "[1938-02-02..1939-02-02]"),
    ("Bob's last Christmas", "1937-12-25"),
    ("Bob's last Easter", "1937-03-28"),
    ("Bob's last New Year", "1938-01-01"),
    ("Mabel's last Christmas", "1937-12-25"),
    ("Olive's last Christmas", "[1936-12-25,1937-12-25]"),
]


@every_row(("words", "edtf"), LAST_OF_A_LIFE)
def test_the_last_feast_or_season_of_a_life(words: str, edtf: str) -> None:
    """The one that came last before a death (Easter by dateutil.easter)."""
    names = ("ruth", "bob", "mabel", "olive")
    deaths = dict(zip(names, ("1939-02-02", "1938-01-20", "1938-04-01/1938-05-31", "1937"), strict=True))
    known = KnownDates(births=MappingProxyType(dict.fromkeys(names, "1880")), deaths=MappingProxyType(deaths))
    assert edtf in read(words, PhraseSettings(), known).choices


def test_two_digits_behind_in_ask_even_where_a_life_tells_the_century() -> None:
    """They may count something (our convention)."""
    reading = read("back in 62", PhraseSettings(), KnownDates(narrator="1985"))
    assert (reading.choices, reading.ask) == (("1962",), "“back in 62”: is 1962 meant?")


def test_a_birth_of_the_russian_empire_asks_nothing() -> None:
    """Ages are reckoned from it (our convention: thirteen days are little in a life)."""
    reading = read("5 мая 1904", PhraseSettings(), KnownDates(first_year=0))
    assert (reading.edtf and reading.edtf.text, reading.ask) == ("1904-05-05", None)


@drawn(400)
@given(st.text(max_size=60))
def test_nonsense_never_crashes_and_what_is_read_is_valid(words: str) -> None:
    found = read(words)
    if found.edtf is not None:
        assert check(found.edtf.text).state is State.VALID


WORDS = st.sampled_from(
    "about between and 1920 1950s june the before after or 3 '51 easter week of summer war not from to ?".split()
)


@drawn(600)
@given(st.lists(WORDS, min_size=1, max_size=8).map(" ".join))
def test_words_of_dates_in_any_order_never_crash(words: str) -> None:
    reading = read(words)
    assert reading.edtf is None or check(reading.edtf.text).state is State.VALID


def test_a_long_text_is_a_story_and_is_kept() -> None:
    reading = read("1920 " * 100)
    assert (reading.edtf, reading.text) == (None, "1920 " * 100)


STRICT = [
    ("1985-04-12", State.VALID, 0), ("[1667,1760-12]", State.VALID, 0), ("1985-", State.INCOMPLETE, 6),
    ("", State.INCOMPLETE, 1), ("1985-13", State.WRONG, 6), ("about 1920", State.WRONG, 1),
]  # fmt: skip


@pytest.mark.parametrize(("text", "state", "column"), STRICT)
def test_the_standard_only(text: str, state: State, column: int) -> None:
    """The valid ones are examples of the EDTF specification (2019), Levels 0 and 2."""
    reading = read_strict(text)
    assert reading.state is state
    assert (reading.edtf is not None) is (state is State.VALID)
    if reading.edtf is None:
        assert reading.fault.column == column and reading.fault.message


MONTHS = "January February March April May June July August September October November December".split()
BESIDE = ("{}, {} 1953", "{1} 1953, {0}", "{} 1953, {}", "{}, 12 {} 1953")


def test_a_month_that_is_told_is_never_lost_in_silence() -> None:
    """Beside every fifth feast of the table, seasons and more: what asks nothing lies within the month and the day that
    were told, but for the night between two years, which is of both, and is told by the second of them."""
    lost = []
    things = [*sorted(HOLIDAY_NAMES)[::5], "summer holidays", "first day of school", "spring", "summer", "winter"]
    for number, thing in enumerate(things):
        for form in BESIDE:
            month = (number * 5 + len(thing)) % 12 + 1
            said = form.format(thing, MONTHS[month - 1])
            reading = read(said, PhraseSettings(order="dmy"))
            if reading.edtf is None or reading.ask or reading.edtf.text.endswith(("-01-01", "1952-12-31")):
                continue
            first, last = reading.earliest, reading.latest
            day = 12 if "12" in said else 0
            whole = first and last and (first.year, first.month) == (last.year, last.month) == (1953, month)
            if not whole or (day and not reading.edtf.text.endswith("-12")):
                lost.append((said, reading.edtf.text))
    assert lost == []
