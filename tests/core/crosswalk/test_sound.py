"""Recordings and papers that lie beside the items (DACS 2.5 and 4.1, from memory)."""

from dataclasses import replace
from datetime import date

from boxlore.core.crosswalk.sound import CLIMATE, NOTHING_AGREED, PAPER, SOUND, Beside, counted
from boxlore.core.records.closing_dates import Closure, Reason


def test_what_lies_beside_the_items_is_counted_measured_and_closed() -> None:
    closed = Closure((Reason(date(2126, 11, 25), "is something"),))
    sound = Beside(path="recordings/a.wav", kind=SOUND, title="A", day="2026-11-25", length=750_400, closure=closed)
    paper = Beside(path="papers/a.pdf", kind=PAPER, title="B", day="", closure=closed)
    log = Beside(path="papers/climate/a.csv", kind=CLIMATE, title="C", day="")
    assert (sound.length_words, paper.length_words) == ("12 min 30 s", "")
    assert counted([sound, paper, paper, log]) == "1 sound recording, 2 papers of sittings, 1 climate log"
    assert counted([]) == ""
    assert sound.access.startswith("Closed until 2126-11-25: the whole item, because it is something.")
    assert log.access.startswith("Nothing in it is closed")
    assert replace(sound, without_consent=True).access == f"{sound.access} {NOTHING_AGREED}"
