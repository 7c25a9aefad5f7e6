"""Dates as families write them: expected forms are what each language's own users write (common practice, no source);
months, patterns and names of quarters are CLDR's, held against babel by `test_display_patterns`."""

from tests.every_row import every_row

from boxlore.core.dates import edtf
from boxlore.core.dates.display_patterns import PATTERNS
from boxlore.core.dates.display_words import WORDS
from boxlore.core.dates.family_display import FamilyWay, family_display

ENGLISH = [  # language, order, EDTF, shown
    ("en", "", "1912-05-12", "12 May 1912"),
    ("en", "dmy", "1912-05-12", "12 May 1912"),
    ("en", "mdy", "1912-05-12", "May 12, 1912"),
    ("en-US", "", "1912-05-12", "May 12, 1912"),
    ("en-NZ", "", "1912-05-12", "12 May 1912"),
    ("en", "", "1912-05", "May 1912"),
    ("en", "", "XXXX-06-12", "12 June"),
    ("en", "", "XXXX-06", "June"),
    ("en", "", "1960-22", "summer 1960"),
    ("en", "", "1960-30", "summer 1960–61"),
    ("en", "", "1960-34", "2nd quarter 1960"),
    ("en", "", "1960-37", "first third 1960"),
    ("en", "", "193X", "the 1930s"),
    ("en", "", "193X~", "about the 1930s"),
    ("en", "", "18XX", "the 1800s"),
    ("en", "", "1912-05-12?", "probably 12 May 1912"),
    ("en", "", "1912%", "probably about 1912"),
    ("en", "", "[..1912]", "not later than 1912"),
    ("en", "", "[1912..]", "not earlier than 1912"),
    ("en", "", "[1946..1948]", "between 1946 and 1948"),
    ("en", "", "[1946,1948]", "1946 or 1948"),
    ("en", "", "{1946,1948}", "1946 and 1948"),
    ("en", "", "1946/1948", "1946–1948"),
    ("en", "", "1946-05-12/1946-06-03", "12 May 1946 – 3 June 1946"),
    ("en", "", "1946~/1948~", "about 1946–1948"),
    ("en", "", "1946/1948~", "1946 - about 1948"),
    ("en", "", "../1948", "until 1948"),
    ("en", "", "1946/..", "from 1946"),
    ("en", "", "-0043", "44 BC"),
    ("en", "", "1912-1X", "1912 (1X)"),
    ("en", "", "1912-XX", "1912"),
    ("en", "", "1950S2", "between 1900 and 1999"),
]

IN_LANGUAGES = [
    ("et", "12. mai 1912", "1960. aasta suvi", "umbes 1935", "1930. aastad"),
    ("de", "12. Mai 1912", "Sommer 1960", "etwa 1935", "1930er Jahre"),
    ("fr", "12 mai 1912", "été 1960", "vers 1935", "les années 1930"),
    ("es", "12 de mayo de 1912", "verano de 1960", "hacia 1935", "la década de 1930"),
    ("it", "12 maggio 1912", "estate 1960", "circa 1935", "anni 1930"),
    ("pt", "12 de maio de 1912", "verão de 1960", "aproximadamente 1935", "década de 1930"),
    ("nl", "12 mei 1912", "zomer 1960", "omstreeks 1935", "de jaren 1930"),
    ("da", "12. maj 1912", "sommeren 1960", "omkring 1935", "1930’erne"),
    ("sv", "12 maj 1912", "sommaren 1960", "omkring 1935", "1930-talet"),
    ("nb", "12. mai 1912", "sommeren 1960", "omkring 1935", "1930-årene"),
    ("nn", "12. mai 1912", "sommeren 1960", "omkring 1935", "1930-årene"),
    ("fi", "12. toukokuuta 1912", "kesä 1960", "noin 1935", "1930-luku"),
    ("ru", "12 мая 1912 г.", "лето 1960", "примерно 1935", "1930-е годы"),
    ("pl", "12 maja 1912", "lato 1960", "mniej więcej 1935", "lata 1930–1939"),
    ("lv", "1912. gada 12. maijs", "1960. gada vasara", "aptuveni 1935", "1930. gadi"),
    ("lt", "1912 m. gegužės 12 d.", "1960 m. vasara", "maždaug 1935", "1930-ieji"),
    ("cs", "12. května 1912", "léto 1960", "přibližně 1935", "léta 1930–1939"),
    ("mi", "12 Mei 1912", "raumati 1960", "tata ki 1935", "ngā tau 1930"),
    ("xx", "12 May 1912", "summer 1960", "about 1935", "the 1930s"),
]


@every_row(("language", "order", "text", "shown"), ENGLISH)
def test_english(language: str, order: str, text: str, shown: str) -> None:
    assert family_display(edtf.parsed(text), FamilyWay(language, order)) == shown


@every_row(("language", "day", "season", "about", "decade"), IN_LANGUAGES)
def test_in_the_family_s_language(language: str, day: str, season: str, about: str, decade: str) -> None:
    texts = ("1912-05-12", "1960-22", "1935~", "193X")
    shown = tuple(family_display(edtf.parsed(text), FamilyWay(language)) for text in texts)
    assert shown == (day, season, about, decade)


FIRST_DAYS = [
    ("fr", "1912-05-01", "1er mai 1912"), ("fr", "XXXX-05-01", "1er mai"), ("fr", "1912-05-11", "11 mai 1912"),
    ("fr", "1912-05-01/1912-05-02", "1er mai 1912 – 2 mai 1912"), ("de", "1912-05-01", "1. Mai 1912"),
    ("es", "1912-05-01", "1 de mayo de 1912"), ("en", "1912-05-01", "1 May 1912"),
]  # fmt: skip


@every_row(("language", "text", "shown"), FIRST_DAYS)
def test_the_first_day_of_a_month(language: str, text: str, shown: str) -> None:
    assert family_display(edtf.parsed(text), FamilyWay(language)) == shown


def test_every_language_has_its_patterns() -> None:
    assert {code.split("-")[0] for code in PATTERNS} == set(WORDS)
