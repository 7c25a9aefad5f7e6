"""Which century lives leave for a year that is told without it."""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import NOTHING_KNOWN, KnownDates, PhraseSettings, read

BORN_1936 = KnownDates(narrator="1936-03-14")
WITH_RUTH = KnownDates(pictured=MappingProxyType({"Ruth": "1930~", "Joe": ""}))
OF_A_LIFE = KnownDates(narrator="1936-03-14", first_year=0)
WITH_ELDERS = KnownDates(narrator="1936-03-14", eldest=1899)
ALONE = KnownDates(narrator="1936-03-14", eldest=1930)
LOOSE = KnownDates(narrator="[..1936]")

SETTLED = [
    ("JUN 63", BORN_1936, "1963-06", None),
    ("'52 or '53", BORN_1936, "[1952,1953]", None),
    ("1.v.36", BORN_1936, "1936-05-01", None),
    ("in the late fifties", BORN_1936, "1957~/1959~", None),
    ("56/57", BORN_1936, "1956/1957", None),
    ("Sunday 12 June '38", BORN_1936, "1938-06-12", None),
    ("Monday 12 June '38", BORN_1936, "1938-06-12", "was a Sunday"),
    ("MAY 71", BORN_1936, "1971-05", "1971"),
    ("MAY 71", WITH_ELDERS, "1971-05", None),
    ("MAY 98", WITH_ELDERS, "1998-05", None),
    ("MAY 71", ALONE, "1971-05", "1971"),
    ("summer '18", BORN_1936, "1918-22", "1918"),
    ("the 1900s", BORN_1936, "19XX", "century"),
    ("early in the century", BORN_1936, "1900~/1933~", "century"),
    ("the twenties", BORN_1936, "192X", "1920s"),
    ("JUN 63", WITH_RUTH, "1963-06", None),
    ("JUN 91", WITH_RUTH, "1991-06", None),
    ("JUN '15", WITH_RUTH, "1915-06", "1915"),
    ("JUN 63", OF_A_LIFE, "1963-06", "1963"),
    ("JUN 63", LOOSE, "1963-06", "1963"),
    ("JUN 63", NOTHING_KNOWN, "1963-06", "1963"),
]


@every_row(("words", "known", "edtf", "ask"), SETTLED)
def test_a_century_is_asked_where_lives_leave_several(
    words: str, known: KnownDates, edtf: str | None, ask: str | None
) -> None:
    """Nobody is in a picture before the birth, and nobody tells of people who were in one a lifetime before hers
    (common practice, no source)."""
    reading = read(words, PhraseSettings(), known)
    assert (reading.edtf.text if reading.edtf else None) == edtf
    assert reading.ask is None if ask is None else ask in str(reading.ask)
