"""How far a date may be wrong: tolerances of our own words, in several languages (common practice, no source)."""

from tests.every_row import every_row

from boxlore.core.dates.phrases import read
from boxlore.core.dates.tolerances import give_or_take, within

TOLD = [  # words, the date, the years; empty for none
    ("about 1910, give or take a year or two", "about 1910", 2),
    ("c. 1925 (give or take five years)", "c. 1925", 5),
    ("1948, plus or minus a couple of years", "1948", 2),
    ("1948, plus or minus a few years", "1948", 6),
    ("about 1925, give or take two or three years", "about 1925", 3),
    ("1910, a year or two either side", "1910", 2),
    ("um 1910, ein oder zwei Jahre hin oder her", "um 1910", 2),
    ("vers 1910, à un an ou deux près", "vers 1910", 2),
    ("ca. 1910, et år eller to fra eller til", "ca. 1910", 2),
    ("1910 ±3", "1910", 3),
    ("1910 ±0", "", 0),
    ("1910, give or take a year", "", 0),
    ("1910, give or take ninety years", "", 0),
    ("1910, give or take a month or two", "", 0),
    ("1910, give or take two Rourkes", "", 0),
    ("the year the ferry sank, they were all there for years", "", 0),
]


@every_row(("words", "date", "years"), TOLD)
def test_what_stands_beside_a_date(words: str, date: str, years: int) -> None:
    assert give_or_take(words) == ((date, years) if date else None)


@every_row(
    ("words", "date", "years"),
    [
        ("within a year or two of 1910", "1910", 2),
        ("within a few years of the wedding", "the wedding", 6),
        ("within a mile or two of Reval", "", 0),
        ("three years either side of the wedding", "the wedding", 3),
        ("two or three years on either side of 1910", "1910", 3),
        ("a mile each side of Reval", "", 0),
        ("within 50 years of 1910", "", 0),
        ("1910", "", 0),
    ],
)
def test_what_stands_before_a_date(words: str, date: str, years: int) -> None:
    assert within(words) == ((date, years) if date else None)


@every_row(
    ("words", "edtf"),
    [
        ("about 1910, give or take a year or two", "[1908..1912]"),
        ("within a year or two of 1910", "[1908..1912]"),
        ("within a year or two of June", None),
        ("within a year or two of the flood", None),
        ("within a year of after 1910", None),
        ("9999, give or take two years", None),
        ("0001 ±3", None),
        ("within five years of 9998", None),
    ],
)
def test_what_is_read_by_it(words: str, edtf: str | None) -> None:
    reading = read(words)
    assert (reading.edtf and reading.edtf.text) == edtf
