"""Stages of a life told without years: what the birth or the death leaves is asked about (common practice)."""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import KnownDates, PhraseSettings, read

KNOWN = KnownDates(
    births=MappingProxyType({"ruth": "1932-03-04", "grandfather": "1868", "joe": "1900"}),
    deaths=MappingProxyType({"grandfather": "1944-08-17"}),
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
]


@every_row(("words", "ask", "choices"), STAGES)
def test_a_stage_of_a_life_is_asked_about(words: str, ask: str | None, choices: tuple[str, ...]) -> None:
    reading = read(words, PhraseSettings(), KNOWN)
    assert reading.edtf is None
    assert reading.ask is None if ask is None else ask in str(reading.ask)
    assert reading.alternatives == choices


def test_a_narrator_whose_birth_nobody_knows_is_asked_for_it() -> None:
    assert read("when I was little").ask == "When were you born?"
