"""Voices on the family's pages: only of whoever agreed, and only what the family may know (our own rules)."""

import shutil
import wave
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from tests.disk.test_sound import recording

from boxlore.core.errors import WrongUse
from boxlore.core.fields.sittings import CLOSED_WORDS, SHOWN_WORDS, Passage, ShownAt
from boxlore.core.people.consent import make_consent
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.outputs.printed_sheets import PrintOrder
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.people import registry
from boxlore.tasks.sitting.recordings import keep_recording
from boxlore.tasks.sitting.voices import heard

FAMILY = PrintOrder(to=To.FAMILY)


class Sitting:
    """Mia tells of the harbour from 1 to 4 seconds, and of Kristjan until the end of a recording of 8 seconds."""

    def __init__(self, collection: Collection, folder: Path) -> None:
        self.collection = collection
        self.items = [find_item(collection, number) for number in ("TRA-0001", "TRA-0002")]
        self.mia = next(person for person in collection.people().values() if person.name == "Mia Rourke")
        act = collection.act("a sitting")
        self.sitting = act.new(Kind.SITTING)
        act.state(self.sitting, "date", "2026-11-25")
        for item, at in zip(self.items, (1000, 4000), strict=True):
            words = SHOWN_WORDS.write(ShownAt(item.id, at))
            act.state(self.sitting, "shown", words, sitting=self.sitting.id, moment=at)
        act.done()
        self.tell(self.items[0], "The boat came in.", 2000)
        keep_recording(collection, self.sitting.id, recording(folder / "told.wav", seconds=8))

    def tell(self, item: Subject, words: str, moment: int, audience: str = "anyone") -> None:
        act = self.collection.act("told")
        source = Source(Said.NARRATOR, self.mia.id)
        act.state(item, "story", words, source=source, sitting=self.sitting.id, moment=moment, audience=audience)
        act.done()

    def agree(self, *, given: bool = True) -> None:
        consent = make_consent(["voice"], "2026-11-25", given=given)
        registry.consent(self.collection, self.collection.people()[self.mia.id], consent)

    def heard(self) -> list[list[tuple[int, int]]]:
        """For both items the stretches that may be heard."""
        stretches = heard(self.collection, To.FAMILY)
        return [[(each.start, each.end) for each in stretches.get(item.id, [])] for item in self.items]


@pytest.fixture
def held(small_family: Path, tmp_path: Path) -> Iterator[Sitting]:
    shutil.copytree(small_family, tmp_path / "mine")
    with open_collection(tmp_path / "mine", on_day=date(2026, 11, 25)) as collection:
        yield Sitting(collection, tmp_path)


def test_a_photograph_is_heard_while_it_is_out_if_she_agreed(held: Sitting) -> None:
    assert held.heard() == [[], []]
    held.agree()
    assert held.heard() == [[(1000, 4000)], [(4000, 8000)]]
    held.agree(given=False)
    assert held.heard() == [[], []]


def test_nothing_is_heard_of_a_closed_passage_nor_of_what_is_kept(held: Sitting) -> None:
    held.agree()
    held.tell(held.items[1], "Not for the children.", 5000, "keeper")
    assert held.heard() == [[(1000, 4000)], []]
    act = held.collection.act("closed")
    act.state(held.sitting, "closed", CLOSED_WORDS.write(Passage(2000, 2500)), sitting=held.sitting.id, moment=2500)
    act.done()
    assert held.heard() == [[], []]


def test_a_teller_whom_nobody_knows_has_not_agreed(held: Sitting) -> None:
    held.agree()
    act = held.collection.act("told")
    someone = Source(Said.NARRATOR, "a neighbour")
    act.state(held.items[0], "story", "I saw it.", source=someone, sitting=held.sitting.id, moment=3000)
    act.done()
    assert held.heard() == [[], []]


def test_voices_are_for_the_family_alone(held: Sitting) -> None:
    with pytest.raises(WrongUse, match="only onto the family's own pages"):
        heard(held.collection, To.OUTSIDE)


def test_it_is_heard_on_the_page_of_the_photograph(held: Sitting, tmp_path: Path) -> None:
    held.agree()
    out = tmp_path / "pages"
    pages(held.collection, out, FAMILY, voices=heard(held.collection, To.FAMILY))
    page = (out / "photo" / "TRA-0001.html").read_text("utf-8")
    assert '<audio controls preload="none" src="../voices/TRA-0001-1.wav"' in page
    assert "<audio" not in (out / "photo" / "TRA-0003.html").read_text("utf-8")
    with wave.open(str(out / "voices" / "TRA-0001-1.wav")) as sound:
        assert sound.getnframes() == 3 * sound.getframerate()
        assert int.from_bytes(sound.readframes(1), "little") == 1
    pages(held.collection, out, FAMILY)
    assert not (out / "voices").exists()


def test_a_recording_that_was_changed_is_not_heard_and_named(held: Sitting, tmp_path: Path) -> None:
    held.agree()
    voices = heard(held.collection, To.FAMILY)
    path = next(each.path for each in next(iter(voices.values())))
    (held.collection.folder / path).write_bytes(b"RIFF")
    made = pages(held.collection, tmp_path / "pages", FAMILY, voices=voices)
    assert [finding.message for finding in made.findings if "WAV" in finding.message] == [
        f"{path} is not as it was taken in, or no plain WAV: what is told in it cannot be heard on the pages."
    ]
    assert not (tmp_path / "pages" / "voices").exists()
