"""Dates in the borders of prints as people copy them, and what a careful person would conclude: developed in that
month, and taken two years before it at most (common practice, no source)."""

from tests.core.evidence.family import BACK, days_of, item, shown, told, worked_out
from tests.every_row import every_row

from boxlore.core.statements import KEEPER

BORDERS = (
    ("note", "JUL 57 printed on the white edge", "1955-07-01 1957-07-31"),
    ("note", "The border says MAR • 56", "1954-03-01 1956-03-31"),
    ("story", "the edge of the print is dated October 1958", "1956-10-01 1958-10-31"),
    ("condition", "stamped in the margin: 1961", "1959-01-01 1961-12-31"),
    ("note", "auf dem Rand gedruckt: MAI 58", "1956-05-01 1958-05-31"),
    ("note", "servale trükitud mai 1958", "1956-05-01 1958-05-31"),
    ("inscription", "AUG 1961", "1959-08-01 1961-08-31"),
    ("inscription", "1961", "1959-01-01 1961-12-31"),
    ("inscription", "AUG 57", "1955-08-01 1957-08-31"),
    # no date, several, or one that is of something else
    ("note", "the border says HAPPY 56", "- -"),
    ("note", "a deckle edge, printed in the 1950s", "1920-01-01 -"),  # of the edge alone
    ("note", "JUL 57 or AUG 58 printed on the edge", "- -"),
    ("note", "at the edge of the lake", "- -"),
    ("note", "edge torn, 1919 written on the mount", "- -"),
    ("note", "a stamp from 1935 on the edge of the letter", "- -"),
    ("note", "nothing is printed on the border", "- -"),
    ("inscription", "Bought for Ivy in August 1961 at the fair", "- -"),
    ("inscription", "sometime", "- -"),
    ("inscription", "Tel. 1938", "- -"),
    ("inscription", "Neg. 1922", "- -"),
    ("inscription", "In memory of 1918", "- -"),
    ("inscription", "Christmas 1936", "1934-12-25 1936-12-25"),
    # beside other words, by itself between commas
    ("inscription", "Mrs. Margaret Hall, 1866", "1864-01-01 1866-12-31"),
    ("inscription", "St. Petersburg, 1911", "1909-01-01 1911-12-31"),
    ("inscription", "Rosa and me, Sept 1926", "1924-09-01 1926-09-30"),
    ("inscription", "1926, Dover.", "1924-01-01 1926-12-31"),
    ("inscription", "Ivy 1935", "1933-01-01 1935-12-31"),
    ("inscription", "Ivy and Ivy, Aug. 1935", "1933-08-01 1935-08-31"),
    ("inscription", "Rex 1935", "- -"),
    ("inscription", "3.8.1935", "1933-01-01 1935-12-31"),
    ("inscription", "3/VIII/1935", "1933-01-01 1935-12-31"),
    ("inscription", "Rosa, Gold Medal Paris, 1889", "- -"),
    ("inscription", "Rosa, born in Dover, 1912", "- -"),
    ("inscription", "Rosa, 1912, and Otto, 1914", "- -"),
    ("inscription", "Neg. 1922, box 4", "- -"),
)


@every_row(("field", "words", "wanted"), BORDERS)
def test_borders(field: str, words: str, wanted: str) -> None:
    source = BACK if field == "inscription" else KEEPER
    record = item("i", told(field, words, source=source), people=[shown("Ivy")])
    assert days_of(worked_out([record]), "i") == wanted
