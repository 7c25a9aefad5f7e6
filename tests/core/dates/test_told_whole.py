"""All that was told is in what is asked: parts put together, sets named whole, a day of a land's history.

Phrases of our own (no source); feasts and ages are reckoned by the rules that their own tests check.
"""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import KnownDates, PhraseSettings, Whom, make_ready, read

KNOWN = KnownDates(
    births=MappingProxyType({"ruth": "1930-05-02"}),
    events=MappingProxyType({"the wedding": "1954-09-18"}),
    narrator="1931-03-14",
)

WHOLE = [  # words, the choices in their order, words of the question
    ("about 1950, before August", "[1950-01~..1950-07~]", "between January 1950 and July 1950"),
    ("circa 1950, avant août", "[1950-01~..1950-07~]", ""),
    ("1938, before Easter", "[1938-01-01..1938-04-16]", ""),
    ("19th cent., last quarter", "1875/1899 18XX", "1875"),
    ("19. sajandi viimane veerand", "1875/1899 18XX", "1875"),
    ("19. sajand, viimane veerand", "1875/1899 18XX", ""),
    ("Eid after Ramadan, 1958", "1958-04-21~ 1958-06-28~ 1958-03-22~/1958-04-20~", ""),
    ("first week of the Christmas holidays, 1961", "1961-12-24/1962-01-06 1961", ""),
    ("I was six or seven, so it'd be thirty-seven or thirty-eight",
     "[1937-03-14..1938-12-31] [1937-03-14..1939-03-13] [1937,1938]", ""),
    ("I was six so it must have been 1937", "[1937-03-14?..1937-12-31?] 1937?", ""),
    ("I was six, by the pump, in 1937", "[1937-03-14..1937-12-31] 1937 [1937-03-14..1938-03-13]", "pump"),
    ("por el 23 o el 24", "[1923~,1924~]", ""),
    ("por el 23 o el 27", "", ""),
    ("por el 7 o el 8", "", ""),
    ("37, and the pump", "", ""),
    ("Route 66", "", ""),
    ("back says Xmas 1938 but Des reckons it was the one before", "1937-12-25 1938-12-25", "1937"),
    ("the girls, Xmas 1938 and 1939, or was that the one before", "{1938-12-25,1939-12-25}", ""),
    ("Friday the 13th, 1953", "1953-02-13 1953-03-13 1953-11-13 1953", ""),
    ("printed on the edge: MAR • 64", "[..1964-03] 1964-03 1964", ""),
    ("about 66 or", "", ""),
    ("sumer 1949 at the seside", "1949-22 1949", "“seside”"),
    ("ferry 1931, at the quay", "1931", "“ferry”"),
    ("Sumer or autum 1949, the girls", "1949", "“Sumer"),
    ("the Tuesday week after the wedding", "1954-09-28 [1954-09-19..1954-09-25]", ""),
    ("Christmas Eve, the first one after the wedding", "1954-12-24", ""),
    ("some time in the thirties, before Elsie was born", "193X", ""),
    ("3 September 1938, the day war broke out", "1938-09-03 1914-08-01/1914-08-04 1939-09-01/1939-09-03 1938",
     "Which is right"),
    ("1918-1915", "", "ends before"),
    ("1938-1939-1940", "1938/1939 1940", ""),
    ("not 1944, some other year", "", "not"),
    ("Aug. 1914, just as war broke out", "1914-08-01/1914-08-04 1914 1914-08", ""),
    ("Fernspr. 4 19 38", "", ""),
    ("the mill, before 15 June 1938, the girls, after 13 June 1938",
     "[..1938-06-14] [1938-06-14..] 1938-06-14", "mill"),
    ("about 1950, before January", "1950~", ""),
    ("T. 1938", "1938", ""),
    ("Jaan suri 1971, pilt 1958", "1958 1958-01", ""),
]  # fmt: skip


@every_row(("words", "choices", "asks"), WHOLE)
def test_what_is_asked_holds_all_that_was_told(words: str, choices: str, asks: str) -> None:
    reading = read(words, PhraseSettings(order="dmy", language="en"), KNOWN)
    assert reading.edtf is None
    assert " ".join(reading.alternatives) == choices
    assert asks in (reading.ask or "")


IN_FULL = [  # words, the reading, the choices beside it, words of the question
    ("Pfingsten '36 oder '37", "[1936-05-31,1937-05-16]", (), "31 May 1936 or 16 May 1937"),
    ("194? or maybe 195?", "[194X?,195X?]", (), "is the 1940s or the 1950s meant"),
    ("summer or autumn '38", "[1938-22,1938-23]", (), "is 1938 meant"),
    ("depois do 25 de Abril", "[XXXX-04-25..]", ("[1974-04-26..]",), "In which year"),
    ("25 de Abril", "XXXX-04-25", ("1974-04-25",), "In which year"),
    ("25 April", "XXXX-04-25", (), "In which year"),
    ("26 de Abril", "XXXX-04-26", (), "In which year"),
]


@every_row(("words", "edtf", "others", "asks"), IN_FULL)
def test_a_question_names_all_that_is_meant(words: str, edtf: str, others: tuple[str, ...], asks: str) -> None:
    reading = read(words, PhraseSettings(order="dmy"))
    assert (reading.edtf and reading.edtf.text, reading.alternatives) == (edtf, others)
    assert asks in (reading.ask or "")


def test_an_event_that_is_perhaps_meant_fills_an_open_year() -> None:
    known = KnownDates(perhaps=MappingProxyType({"hochzeit": (("the wedding of Ruth", "1954-09-18"),)}))
    reading = read("Weihnachten, das erste nach der Hochzeit", known=known)
    assert "1954-12-25" in reading.choices
    assert reading.ask is not None and "the wedding of Ruth" in reading.ask


LIKELY = KnownDates(likely=MappingProxyType({"zosia": (Whom("Zofia", "1930-04"),)}))


@every_row(
    ("words", "edtf", "asks"),
    [
        ("Zosia, 3 latka", "[1933-04..1934-04]", "is Zofia meant?"),
        ("Zosia", "", ""),  # no date by whoever is meant
        ("1938", "1938", ""),  # nobody is asked about
    ],
)
def test_a_pet_form_asks_who_is_meant(words: str, edtf: str, asks: str) -> None:
    make_ready()
    reading = read(words, PhraseSettings(language="pl"), LIKELY)
    assert (reading.edtf.text if reading.edtf else "") == edtf
    assert asks in (reading.ask or "")
