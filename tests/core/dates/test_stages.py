"""Stages of a life told without years: what the birth or the death leaves is asked about (common practice)."""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import KnownDates, PhraseSettings, read

KNOWN = KnownDates(
    births=MappingProxyType(
        {"ruth": "1932-03-04", "grandfather": "1868", "joe": "1900", "olev": "1890-11-02", "bo": ""}
    ),
    deaths=MappingProxyType({"grandfather": "1944-08-17", "olev": "1952-02-11", "bo": "1960"}),
    events=MappingProxyType({"the wedding": "1950-06-17", "the fire": "1936"}),
    narrator="1930-05-10",
)
STAGES = [  # words, what the question holds, the choices
    ("when Ruth was a baby", "4 March 1932", ("[1932-03-04..1934-03-03]",)),
    ("Ruth as a newborn", "between 4 March 1932 and 3 May", ("[1932-03-04..1932-05-03]",)),
    ("Ruth as a teenager", "4 March 1945", ("[1945-03-04..1952-03-03]",)),
    ("Ruth i tonåren", "4 March 1945", ("[1945-03-04..1952-03-03]",)),
    ("Ruth, schoolgirl", "4 March 1938", ("[1938-03-04..1948-03-03]",)),
    ("als Ruth klein war", "4 March 1934", ("[1934-03-04..1940-03-03]",)),
    ("when I was little", "10 May 1932", ("[1932-05-10..1938-05-09]",)),
    ("when Grandfather was still alive", "17 August 1944", ("[..1944-08-17]",)),
    ("Joe still alive", "when was that", ()),
    ("the last summer Grandfather was alive", "summer 1944", ("1944-22",)),
    ("the last winter Grandfather was alive", "winter 1943", ("1943-24",)),
    ("the summer Grandfather was alive", None, ()),
    ("the last summer Joe was alive", "which year", ()),
    ("the last summer Ruth was a baby", "which year", ()),
    ("when Zoe was a baby", "When was Zoe born", ()),
    ("when Zoe was still alive", "when was that", ()),
    ("when she was little", "Who was that", ()),
    ("Ruth and Joe when they were little", None, ()),
    ("little Ruth as a baby", None, ()),
    ("Ruth as a baby, 1932", "is 1932 meant", ("1932",)),
    ("Ruth a few weeks old", "18 March 1932", ("[1932-03-18..1932-04-21]",)),
    ("Ruth some weeks old", "18 March 1932", ("[1932-03-18..1932-04-21]",)),
    ("Ruth einige Monate alt", "4 May 1932", ("[1932-05-04..1932-10-03]",)),
    ("Ruth a couple of years old", "4 March 1934", ("[1934-03-04..1935-03-03]",)),
    ("Ruth a week old", "11 March 1932", ("[1932-03-11..1932-03-17]",)),
    ("me a few months old", "10 July 1930", ("[1930-07-10..1930-12-09]",)),
    ("Bo a few months old", "When were", ()),
    ("Ruth and Joe a few weeks old", None, ()),
    ("Ruth a few weeks old in Reval", "when was that", ()),
    ("Ruth a few miles in Reval", None, ()),
    ("Ruth some sailors", None, ()),
    ("Ruth's birthday before the wedding", "is 4 March 1950 meant", ("1950-03-04",)),
    ("my last birthday before the wedding", "is 10 May 1950 meant", ("1950-05-10",)),
    ("Ruth's first birthday after the wedding", "is 4 March 1951 meant", ("1951-03-04",)),
    ("my birthday before the fire", "is 10 May 1935 or 10 May 1936 meant", ("1935-05-10", "1936-05-10")),
    ("Olev's last birthday", "is 2 November 1951 meant", ("1951-11-02",)),
    ("Grandfather's last birthday", None, ()),
    ("Olev's last birthday cake", None, ()),
    ("Ruth's last birthday", None, ()),
    ("my last birthday", None, ()),
]


@every_row(("words", "ask", "choices"), STAGES)
def test_a_stage_of_a_life_is_asked_about(words: str, ask: str | None, choices: tuple[str, ...]) -> None:
    reading = read(words, PhraseSettings(), KNOWN)
    assert reading.edtf is None
    assert reading.ask is None if ask is None else ask in str(reading.ask)
    assert reading.alternatives == choices


def test_a_narrator_whose_birth_nobody_knows_is_asked_for_it() -> None:
    assert read("when I was little").ask == "When were you born?"
