"""Dates told by their distance from another one, and by ages: reckoned from both bounds (rules of our own)."""

from types import MappingProxyType

import pytest
from tests.every_row import every_row

from boxlore.core.dates.phrases import KnownDates, PhraseSettings, read

SOUTH = PhraseSettings(hemisphere="south")


def told(wedding: str) -> KnownDates:
    return KnownDates(events=MappingProxyType({"the wedding": wedding, "we moved": wedding}))


NEAR = [  # words, when the wedding was, EDTF, a word of the question
    ("the summer before the wedding", "1931-05-09", "1930-22", None),
    ("the summer after the wedding", "1931-12-20", "1932-22", None),
    ("two summers before the wedding", "1931-05-09", None, "Which year"),
    ("a couple of winters after the wedding", "1931-05-09", None, "Which year"),
    ("a few summers after the wedding", "1931-05-09", None, "How many"),
    ("a couple of years after the wedding", "1931-05-09", "1933~", None),
    ("a couple of weeks after the wedding", "1931-05-09", "[1931-05-16..1931-05-30]", None),
    ("a year or so after the wedding", "1931-05-09", "1932~", None),
    ("the spring after the wedding", "1931-12-20", "1932-21", None),
    ("the autumn before the wedding", "1931-09-01", "1930-23", None),
    ("the winter before the wedding", "1931-02-10", "1930-24", "season"),
    ("the summer before the wedding", "1931-07-10", "1931-22", "season"),
    ("the summer after the wedding", "1931-07-10", "1931-22", "season"),
    ("the summer after the wedding", "1931", None, "Which year"),
    ("the summer after the wedding", "1931-01/1931-02", "1931-22", None),
    ("the month after the wedding", "1931-05", "1931-06", None),
    ("the month before the wedding", "1931-01", "1930-12", None),
    ("the month before the wedding", "1931", "1931~", None),
    ("two months after the wedding", "1931-05-09", "1931-07~", None),
    ("the week before the wedding", "1931", "1931~", None),
    ("the week before the wedding", "1931-05-09", "[1931-05-02..1931-05-08]", None),
    ("two weeks after the wedding", "1931-05-09", "1931-05-23~", None),
    ("a fortnight before the wedding", "1931-05-15", "1931-05-01~", None),
    ("the day after the wedding", "1931-05-09", "1931-05-10", None),
    ("three days before the wedding", "1931-05-09", "1931-05-06", None),
    ("three days before the wedding", "1931-05-09/1931-05-10", "[1931-05-06..1931-05-07]", None),
    ("a few days after the wedding", "1931-05-09", "[1931-05-11..1931-05-15]", None),
    ("the Sunday after the wedding", "1931-05-09", "1931-05-10", None),
    ("the Sunday before the wedding", "1931-05-09", "1931-05-03", None),
    ("the Saturday before the wedding", "1931-05-09", "1931-05-02", None),
    ("the Saturday after the wedding", "1931-05-09", "1931-05-16", None),
    ("the Sunday before the wedding", "1931-05", None, "which day"),
    ("ten years to the day after the wedding", "1931-05-09", "1941-05-09", None),
    ("a year to the day after the wedding", "1931-05", "[1932-05-01..1932-05-31]", None),
    ("ten years to the day before the wedding", "1932-02-29", "1922-02-28", None),
    ("auf den Tag genau", "1932-02-29", None, None),
    ("two weeks to the day after the wedding", "1931-05-09", "1931-05-23", None),
    ("a few months after the wedding", "1931-05", "[1931-07-01..1931-11-30]", None),
    ("a few months before the wedding", "1931-05", "[1930-11-01..1931-03-31]", None),
    ("a few weeks after the wedding", "1931-05-09", "[1931-05-23..1931-06-20]", None),
    ("the Christmas after the wedding", "1931-05-09", "1931-12-25", None),
    ("the Christmas before the wedding", "1931-05-09", "1930-12-25", None),
    ("Easter before the wedding", "1931-05-09", "1931-04-05", None),
    ("Easter after the wedding", "1931-05-09", "1932-03-27", None),
    ("the Armistice before the wedding", "1931-05-09", "1918-11-11", None),
    ("the Armistice after the wedding", "1931-05-09", None, "no day"),
    ("Thanksgiving before the wedding", "1931-05-09", None, "Whose Thanksgiving"),
    ("three years after we moved", "1935-04", "1938~", None),
    ("a few years after we moved", "1935-04", "[1937..1941]", None),
    ("two years before the wedding", "1931", "1929~", None),
    ("the year after the wedding", "1931-12/1932-01", "[1932~,1933~]", None),
    ("the year after the wedding", "193X", None, "some years"),
    ("the year after the wedding", "[..1931]", None, "one side"),
    ("the year of the wedding", "1931-05", "1931", None),
    ("the year of the wedding", "1931-05~", "1931~", None),
    ("the year of the wedding", "1931/1932", None, "some years"),
    ("the month of the wedding", "1931-05-09", "1931-05", None),
    ("the month of the wedding", "1931", "1931", None),
    ("the day of the wedding", "1931-05-09", "1931-05-09", None),
    ("1931, the week of the wedding", "1931-05-09", "[1931-05-03..1931-05-10]", None),
    ("June 1931 the wedding", "1931", "1931-06", None),
    ("the first Easter after the wedding", "1931-05-09", "1932-03-27", None),
    ("the last Christmas before the wedding", "1931-05-09", "1930-12-25", None),
    ("the summer of the wedding", "1931-12/1932-01", None, "exactly"),
    ("the week of the wedding", "1931-05", "1931-05", None),
    ("the summer of the wedding", "1931-06", "1931-22", None),
    ("the summer of the wedding", "1931", "1931-22", None),
    ("the winter of the wedding", "1931-02-10", "1930-24", None),
    ("the summer of the wedding", "1931/1932", None, "Which year"),
    ("the wedding", "1931-05-09", "1931-05-09", None),
    ("about the time of the wedding", "1931-05-09", "1931-05-09~", None),
    ("before the wedding", "1931-05-09", "[..1931-05-09]", None),
    ("between the wedding and Christmas 1931", "1931-05-09", "[1931-05-09..1931-12-25]", None),
    ("the fortnight before the wedding", "1931-05-15", "[1931-05-01..1931-05-14]", None),
    ("the three years after the wedding", "1931-05-09", "[1931-05-10..1934-05-09]", None),
    ("the two weeks after the wedding", "1931-05", "[1931-05-02..1931-06-14]", None),
    ("the week of the wedding", "1931-05-09", "[1931-05-03..1931-05-10]", None),
    ("the weekend after the wedding", "1931-05-09", None, "Which weekend"),
    ("the weekend after the wedding", "1931-05-06", "1931-05-09/1931-05-10", None),
    ("two weekends after the wedding", "1931-05-06", None, "two weekends after"),
    ("the wedding 1931", "1931-05-09", "1931-05-09", None),
    ("the wedding 1932", "1931-05-09", None, "do not go together"),
    ("the wedding, 9 May", "1931-05-09", "1931-05-09", None),
    ("the wedding, 10 May", "1931-05-09", None, "do not go together"),
    ("May, the wedding", "1940-11/1941-08", "1941-05", None),
    ("Easter, the wedding", "1940-11/1941-08", "1941-04-13", None),
    ("summer, the wedding", "1940-11/1941-08", "1941-22", None),
    ("May, the wedding", "1940/1941", None, "In which year"),
    ("May, the wedding", "1910/1941", None, "In which year"),
    ("May, the wedding", "[..1941]", None, "In which year"),
    ("between the wedding and 1940", "[..1931]", None, "open"),
    ("the wedding or 1940", "1931/..", None, "open"),
    ("the wedding, not after 1920", "[..1931]", "[..1920]", None),
    ("the wedding or Christmas 1940", "1931-05-09/1931-05-10", "[1931-05-09..1931-05-10,1940-12-25]", None),
]  # fmt: skip


@every_row(("words", "wedding", "edtf", "ask"), NEAR)
def test_near_an_event(words: str, wedding: str, edtf: str | None, ask: str | None) -> None:
    reading = read(words, PhraseSettings(), told(wedding))
    assert (reading.edtf.text if reading.edtf else None) == edtf
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)


def test_seasons_of_the_south() -> None:
    reading = read("the summer after the wedding", SOUTH, told("1931-03-20"))
    assert reading.edtf and reading.edtf.text == "1931-30"
    running = read("the summer after the wedding", SOUTH, told("1931-12-20"))
    assert running.edtf and running.edtf.text == "1931-30" and running.alternatives == ("1932-30",)


def test_choices_where_the_bounds_lead_to_two_seasons() -> None:
    assert read("the summer after the wedding", known=told("1931")).alternatives == ("1931-22", "1932-22")


FAMILY = KnownDates(
    births=MappingProxyType(
        {
            "ruth": "1901-12-30",
            "con": "190X",
            "jo": "19XX",
            "leida": "1904-02-29",
            "ada": "1904-05",
            "zoe": "9990-01-01",
            "mart": "1901-06-14",
            "ilo": "1950-06-14",
        }
    ),
    deaths=MappingProxyType({"mart": "1955", "ruth": ""}),
    narrator="1920-03",
    pictured=MappingProxyType({"Ada": "1930-06-12"}),
)
AGES = [  # words, EDTF, a word of the question
    ("when Ruth was five", "[1906-12-30..1907-12-29]", None),
    ("Ruth aged five", "[1906-12-30..1907-12-29]", None),
    ("Ruth, aged about 5", "[1905~..1908~]", None),
    ("Ruth's 21st birthday", "1922-12-30", None),
    ("Ruth on her 21st birthday", "1922-12-30", None),
    ("Leida's 21st birthday", "1925-02-28", None),
    ("Ada's 21st birthday", "1925-05", None),
    ("Con's 21st birthday", "1921/1930", None),
    ("when Con was five", "1905/1914", None),
    ("when Jo was five", None, "exactly"),
    ("Zoe's 21st birthday", None, "exactly"),
    ("when I was six", "[1926-03..1927-03]", None),
    ("at the age of six", "[1936-06-12..1937-06-11]", None),
    ("aged 5", "[1935-06-12..1936-06-11]", None),
    ("on her 21st", "1951-06-12", None),
    ("on my 21st birthday", "1941-03", None),
    ("when she was 6", "[1936-06-12..1937-06-11]", None),
    ("mit sechs Jahren", "[1936-06-12..1937-06-11]", None),
    ("Ruth was five", "[1906-12-30..1907-12-29]", None),
    ("Ruth aged 5 or 6", "[1906-12-30..1908-12-29]", None),
    ("Ruth aged 5 or 7", "[1906-12-30..1907-12-29,1908-12-30..1909-12-29]", None),
    ("Con aged 5 or 7", "[1905..1914,1907..1916]", None),
    ("Con aged 5 or 6", "1905/1915", None),
    ("when Leida was 20", "[1924-02-29..1925-02-27]", None),
    ("Ruth aged 5 6", None, None),
    ("Ruth aged 5 or 6 or 7", None, None),
    ("Ruth in her twenties", "1921/1931", None),
    ("in my teens", "1933/1940", None),
    ("quand j'avais sept ans", "[1927-03..1928-03]", None),
    ("in her twenties", "1950/1960", None),
    ("Jo in her twenties", None, "exactly"),
    ("when Ruth was twenties", None, "1920s"),
    ("Ruth aged 5 in her twenties", None, "1920s"),
    ("Ruth aged 5 weeks", "[1902-02-03..1902-02-09]", None),
    ("Ruth's 40th", "1941-12-30", None),
    ("Dad's 40th", None, "When was Dad born?"),
    ("at 5", None, None),
    ("als ich sechs war", "[1926-03..1927-03]", None),
    ("kui ma olin kuue aastane", "[1926-03..1927-03]", None),
    ("quand j'avais six ans", "[1926-03..1927-03]", None),
    ("when Ma was thirty", None, "When was Ma born?"),
    ("when Uncle Bo was five", None, "When was Uncle Bo born?"),
    ("Bo’s 21st birthday", None, "When was Bo born?"),
    ("Leida was three weeks old", "[1904-03-21..1904-03-27]", None),
    ("Leida at six months", "[1904-08-29..1904-09-28]", None),
    ("Leida, 18 months old", "[1905-08-29..1905-09-28]", None),
    ("Leida aged 3 days", "1904-03-03", None),
    ("Ada aged 1 month", "[1904-06-01..1904-07-30]", None),
    ("Ruth aged 2 months", "[1902-02-28..1902-03-29]", None),
    ("I was six months", "[1920-09-01..1920-10-30]", None),
    ("Ruth 5 weeks", None, "3 February 1902"),
    ("our Ruth on the donkey, aged 3", None, "meant?"),
    ("Ruth with Jane aged 3", None, None),
    ("Ruth on the donkey, 3", None, None),
    ("Ruth aged 3, Whitby", None, "meant?"),
    ("Ruth's 18th, in the Institute", "1919-12-30", None),
    ("Jo's 18th, in the Institute", None, None),
    ("Ruth, 4, with big doll", None, "meant?"),
    ("Ruth about 200", None, None),
    ("Ruth about two", None, "is between 1902 and 1905"),
    ("Ruth must be about three", None, "meant?"),
    ("Ruth, 4, with doll", None, "meant?"),
    ("Ruth, 4, with doll 1906", None, "1906"),
    ("Ruth aged 5 and Leida aged 3", "[1907-02-28..1907-12-29]", None),
    ("Ruth and Leida, aged 5 and 3", "[1907-02-28..1907-12-29]", None),
    ("Ruth 5, Leida 3", None, "meant?"),
    ("Ruth 5 yrs, me 12", None, "do not go together"),
    ("Ruth nearly 5, Leida 2 yrs", "[1906-02-28..1906-12-29]", None),
    ("Ruth aged 5, Leida", None, None),
    ("Ruth 5 doll", None, None),
    ("Ruth aged 200, Leida 3", None, None),
    ("Ruth aged about 5 weeks", "[1902-01-27~..1902-02-16~]", None),
    ("Ruth aged 5 weeks 3 days", None, None),
    ("Ruth aged 5 or 6 weeks", None, None),
    ("Ruth aged 5 decades", None, None),
    ("I must have been six", "1926~", None),
    ("Ada would have been ten that year", "1914~", None),
    ("Ilo would have been fifty that year", "2000~", None),
    ("Leida would have been ten that year", "1914~", None),
    ("Ruth would have been ten that year", "1911~", None),
    ("Ruth would have been ten", "1912~", None),
    ("Con would have been ten that year", "1910/1919", None),
    ("Leida hadn't turned five", "[1904-02-29..1909-02-27]", None),
    ("hadn't turned five", None, None),
    ("just before Ruth turned ten", "[1911-11-30~..1911-12-30~]", None),
    ("the summer Ruth turned ten", None, "another season"),
    ("the week before my 21st birthday", "[1941-02-22..1941-03-30]", None),
    ("the day after Ruth's 21st birthday", "1922-12-31", None),
    ("between Ruth's 21st birthday and 1925", "1922-12-30/1925", None),
    ("the day after Ruth and Leida's 21st birthday", None, None),
    ("kui ma olin seitsmeaastane", "[1927-03..1928-03]", None),
    ("kun olin seitsemänvuotias", "[1927-03..1928-03]", None),
    ("als ich siebenjährig war", "[1927-03..1928-03]", None),
    ("Ruth 3-aastaselt", "[1904-12-30..1905-12-29]", None),
    ("an Ruths fünftem Geburtstag", "1906-12-30", None),
    ("Ruth oli sajaaastane", "[2001-12-30..2002-12-29]", None),
    ("Ruth oli tuhandeaastane", None, None),
    ("Ruth oli mõneaastane", None, None),
    ("when Ruth was the fifth", None, None),
    ("when Ruth was 200", None, None),
    ("when Ruth was nearly ten", "[1910-12-30..1911-12-29]", None),
    ("als Ruth fast zehn war", "[1910-12-30..1911-12-29]", None),
    ("Ruth, almost on her 21st birthday", "[1921-12-30..1922-12-29]", None),
    ("when Ruth was under ten", "[1901-12-30..1911-12-29]", None),
    ("when I was no more than ten", "[1920-03-01..1931-03-30]", None),
    ("when I was less than ten", "[1920-03-01..1930-03-30]", None),
    ("when I was fewer than ten", None, "when was that?"),
    ("kui ma olin alla kümne", "[1920-03-01..1930-03-30]", None),
    ("when Ruth was over fifty", "[1951-12-30..]", None),
    ("when Ruth was over 50 or 60", None, None),
    ("when Mart was over fifty", "[1951-06-14..1955-12-31]", None),
    ("when Mart was over twenty", "[1921-06-14..1955-12-31]", None),
    ("when Mart was thirty", "[1931-06-14..1932-06-13]", None),
    ("when Mart was sixty", None, "after the death"),
    ("on Mart's 60th birthday", None, "after the death"),
    ("when Ilo was ninety", "[2040-06-14..2041-06-13]", "a year to come"),
    ("the year Ruth turned ten", "1911", None),
    ("in the year when Con turned 21", "1921/1930", None),
    ("the year of Ruth's 40th birthday", "1941", None),
    ("in Ruth's tenth year", "[1910-12-30..1911-12-29]", None),
    ("in the tenth year", None, None),
    ("when Ruth and Con were five", None, "when was that?"),
    ("when Ruth Bo was five", None, "when was that?"),
    ("Ruth's birthday 1920", "1920-12-30", None),
    ("Ruth's birthday, 1890", None, "1890"),
    ("Ruth's birthday", "XXXX-12-30", "In which year?"),
    ("the day before Ruth's birthday, 1920", "1920-12-29", None),
    ("a week after Ruth's birthday in 1920", "1921-01-06~", None),
    ("an Ruths Geburtstag 1920 oder 1921", "[1920-12-30,1921-12-30]", None),
    ("while Ruth was in her twenties", "1921/1931", None),
    ("Ruth over eighty", "[1981-12-30..]", None),
    ("Ruth, at least seven weeks old", "[1902-02-17..]", None),
    ("Ruth was over seven months old", "[1902-07-30..]", None),
    ("Ruth at three and a half", "[1905-05-30~..1905-08-29~]", None),
    ("Ruth two and a half weeks old", "[1902-01-13..1902-01-19]", None),
    ("Ruth at two and a half months", "[1902-02-28..1902-03-29]", None),
    ("when Ruth was five and Mart was six", "[1907-06-14..1907-12-29]", None),
    ("when Ruth was five and Mart was thirty", None, "do not go together"),
    ("when Ruth was five and Mart was here", None, None),
    ("when Ruth was five and Mart six", None, None),
    ("Leida's 100th birthday", "2004-02-29", None),
    ("Ruth 7 or 8", None, "is between 30 December 1908 and 29 December 1910 meant?"),
    ("Ruth 7?? or 8", None, "is between 30 December 1908 and 29 December 1910 meant?"),
    ("Ruth 0 or 7", None, None),
    ("when Ruth was minus two", None, "that is before the birth"),
    ("Ruth's birthday in the forties", None, "194"),
    ("Con's birthday 1920", None, "1920"),
    ("Ruth's birthday party 1920", "1920-12-30", None),
    ("Ruth's birthday in the 1920s", "192X-12-30", None),
    ("Ruth and Con, birthday 1920", None, "1920"),
    ("Ruth mit 14, zur Konfirmation", None, "zur Konfirmation"),
    ("Ruth leeripäev, ta oli siis 18", None, "between 30 December 1919"),
    ("zur Konfirmation, Ruth und Con", None, "when was that?"),
    ("Ruth mit 14, zur Konfirmation, Ostern", None, "Ostern"),
    ("Ruth mit 14, Ostern 1920", None, "together"),
    ("Ruth leeripäev, ta oli siis 18, 3. mai 1920", None, "1920"),
    ("zur Konfirmation, Ruth, im Garten", None, "when was that?"),
]  # fmt: skip


@every_row(("words", "edtf", "ask"), AGES)
def test_ages(words: str, edtf: str | None, ask: str | None) -> None:
    reading = read(words, PhraseSettings(), FAMILY)
    assert (reading.edtf.text if reading.edtf else None) == edtf
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)


@pytest.mark.parametrize(("words", "ask"), [("when I was six", "When were you born?"), ("aged 5", "Who was that")])
def test_whose_age_is_asked(words: str, ask: str) -> None:
    assert ask in str(read(words).ask)


EVENTS = [
    ("the summer before the wedding", "When was the wedding?"), ("Grandma's wedding", "When was Grandma's wedding?"),
    ("three years after we moved", "“we moved”: when was that?"), ("before the wedding", "When was the wedding?"),
    ("before Reval", None), (
        "the summer of Reval 1938",
        "“the summer of Reval 1938”: which of these is meant? Not understood: “summer of Reval”.",
    ), ("Reval", None),
]  # fmt: skip


@pytest.mark.parametrize(("words", "ask"), EVENTS)
def test_an_event_without_a_date_is_asked_for(words: str, ask: str | None) -> None:
    assert read(words).ask == ask


PICTURED = [  # words, who is in the picture, EDTF, the question, its choices (rules of our own)
    ("on her 21st", {"Aino Tamm": "1910-02-03"}, "1931-02-03", None, ()),
    ("aged 5", {"Aino Tamm": ""}, None, "When was Aino Tamm born?", ()),
    (
        "on her 21st",
        {"Aino Tamm": "1910-02-03", "Mavis Rourke": "1912"},
        None,
        "“on her 21st”: is Aino Tamm or Mavis Rourke meant?",
        ("1931-02-03", "1933"),
    ),
    (
        "aged 5",
        {"Jaan": "", "Aino": "1910-02-03", "Con": ""},
        None,
        "“aged 5”: is Aino, Jaan or Con meant? The birth of Jaan and of Con is not told.",
        ("[1915-02-03..1916-02-02]",),
    ),
    ("aged 5 or 6", {"Aino": "1910", "Jaan": "1912"}, None, "is Aino or Jaan", ("[1915~,1916~]", "[1917~,1918~]")),
    ("in her twenties", {"Aino": "1910", "Jaan": "1912"}, None, "is Aino or Jaan", ("1930/1940", "1932/1942")),
    ("when she was ten", {"Aino": "1910", "Jaan": ""}, None, "The birth of Jaan is not told.", ("1920~",)),
    ("when I was six", {"Aino": "1910", "Jaan": "1912"}, None, "When were you born?", ()),
    ("when Aino was six", {"Mavis": "1910"}, None, "When was Aino born?", ()),
]


@every_row(("words", "pictured", "edtf", "ask", "choices"), PICTURED)
def test_an_age_of_who_is_in_the_picture(
    words: str, pictured: dict[str, str], edtf: str | None, ask: str | None, choices: tuple[str, ...]
) -> None:
    reading = read(words, known=KnownDates(pictured=MappingProxyType(pictured)))
    assert (reading.edtf.text if reading.edtf else None) == edtf
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)
    assert reading.alternatives == choices


BESIDE = [  # words of a teller born in March 1920, what the question holds, the choices (rules of our own)
    (
        "my last year at school, I'd have been fourteen",
        "Not understood: “my last year at school”",
        ("[1934-03..1935-03]",),
    ),
    ("до войны, мне было лет семь", "is between", ("[1927-03..1928-03]",)),
    ("before the war, when I was seven", "is between", ("[1927-03..1928-03]",)),
    ("the mill in 1960, I was five", "“mill in”", ("[1925-03..1926-03]", "1960")),
    ("the mill in June 1925, I was five", "“mill in”", ("1925-06", "[1925-03..1926-03]")),
    (
        "the mill, the dog in the war, I was five",
        "which of these is meant? Not understood: “the mill”, “dog in the”.",
        (
            "[1925-03..1926-03]",
            "1914-07/1918-11",
            "1917-04/1918-11",
            "1915-05/1918-11",
            "1939-09/1945-09",
            "1941-12/1945-09",
            "1941-06/1944-11",
        ),
    ),
]


@every_row(("words", "ask", "choices"), BESIDE)
def test_an_age_beside_another_part_loses_neither(words: str, ask: str, choices: tuple[str, ...]) -> None:
    reading = read(words, known=KnownDates(narrator="1920-03"))
    assert reading.edtf is None and ask in str(reading.ask)
    assert reading.alternatives == choices
