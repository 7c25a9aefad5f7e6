"""What an agreement promises holds in all that leaves: pages, copies, a transfer, and a collection made of it.

Rules of our own; that a narrator may restrict access at any time: Oral History Association, Best Practices (2018).
"""

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from tests.disk.test_sound import recording

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.recordings import keep_recording
from boxlore.tasks.sitting.session import Sitting

ON = date(2026, 11, 25)
STORY = "The cow was called Punik"
AGREED = {"narrator": "Mari Puusepp", "agreed_by": "Mari Puusepp"}


@pytest.fixture
def collection(small_family: Path, tmp_path: Path) -> Iterator[Collection]:
    shutil.copytree(small_family, tmp_path / "mine")
    with open_collection(tmp_path / "mine", on_day=ON) as opened:
        yield opened


def sit(collection: Collection, terms: str, until: str = "") -> Sitting:
    """Mari tells the story first, and then it is agreed: that holds of what was said before, too."""
    sitting = Sitting(collection, narrator=AGREED["narrator"])
    sitting.begin()
    item = find_item(collection, "TRA-0001").id
    sitting.show(item)
    sitting.keep(sitting.record(item), next(one for one in sitting.prompts if one.field == "story"), f"{STORY}.")
    if terms:
        course.prepare(sitting, AGREED | {"terms": terms, "until": until})
    return sitting


def holding(folder: Path) -> bool:
    return any(STORY.encode() in path.read_bytes() for path in folder.rglob("*") if path.is_file())


def goes(collection: Collection, out: Path) -> set[str]:
    """Which outputs hold the story."""
    pages(collection, out / "pages", PrintOrder(to=To.OUTSIDE))
    pages(collection, out / "family", PrintOrder(to=To.FAMILY))
    list(copies(collection, out / "copies", to=To.OUTSIDE))
    transfer(collection, out / "transfer")
    return {name for name in ("pages", "family", "copies", "transfer/open", "transfer/closed") if holding(out / name)}


EVERYWHERE = {"pages", "family", "copies", "transfer/open", "transfer/closed"}
TERMS = [
    ("3", "", EVERYWHERE),
    ("1", "", {"family"}),
    ("2", "2060", {"family", "transfer/closed"}),
    ("my cousins", "", {"family"}),
]


@pytest.mark.parametrize(("terms", "until", "wanted"), TERMS)
def test_what_was_agreed_holds_in_all_that_leaves(
    collection: Collection, tmp_path: Path, terms: str, until: str, wanted: set[str]
) -> None:
    sit(collection, terms, until)
    assert goes(collection, tmp_path) == wanted
    if until:
        records = (tmp_path / "transfer/closed/data/metadata/records.nt").read_text("utf-8")
        assert "family+archive:2060-12-31" in records
        rebuild(tmp_path / "again", tmp_path / "transfer", on_day=ON)
        with open_collection(tmp_path / "again", on_day=ON) as again:
            assert not [found for found in goes_outside(again) if STORY in found]


def goes_outside(collection: Collection) -> list[str]:
    seen = seen_by(collection, To.OUTSIDE)
    return [view.words for record in seen.records() for view in record.all("story")]


def test_the_last_minutes_are_kept_from_outside_with_the_recording(collection: Collection, tmp_path: Path) -> None:
    sitting = sit(collection, "3")
    keep_recording(collection, sitting.id, recording(tmp_path / "told.wav", seconds=8))
    assert course.close_passage(sitting, 5, "the neighbours") == 1
    assert goes(collection, tmp_path) == {"family"}
    assert not list((tmp_path / "transfer").rglob("*.wav"))


def test_a_recording_stays_or_is_closed_as_was_agreed(collection: Collection, tmp_path: Path) -> None:
    for terms, until, goes_along in (("1", "", False), ("2", "", True)):
        sitting = sit(collection, terms, until)
        keep_recording(collection, sitting.id, recording(tmp_path / "told.wav", seconds=8))
        transfer(collection, tmp_path / f"t{terms}{until}")
        assert bool(list((tmp_path / f"t{terms}{until}").rglob("*.wav"))) is goes_along


@pytest.mark.parametrize("until", ["whenever I die", "2020", "12/11/2060"])
def test_an_end_that_is_no_day_to_come_asks(collection: Collection, until: str) -> None:
    sitting = Sitting(collection)
    sitting.begin()
    with pytest.raises(WrongUse, match=r"is no day|is past|may be several"):
        course.prepare(sitting, AGREED | {"terms": "2", "until": until})


@pytest.mark.parametrize(("until", "told_for"), [
    ("I have died", "for the family, closed in an archive until it is asked again"),
    ("until May 2060", "for the family, closed in an archive until 2060-05-31"),
])  # fmt: skip
def test_an_end_is_read_as_a_day(collection: Collection, until: str, told_for: str) -> None:
    sitting = Sitting(collection)
    sitting.begin()
    course.prepare(sitting, AGREED | {"terms": "2", "until": until})
    assert course.told_for(sitting) == told_for


def test_somebody_first_told_of_there_is_known_to_the_family_alone(collection: Collection) -> None:
    sitting = sit(collection, "1")
    item = find_item(collection, "TRA-0002").id
    sitting.show(item)
    who = next(one for one in sitting.prompts if one.field == "person")
    sitting.keep(sitting.record(item), who, "Villem Karukäpp")
    villem = next(one for one in collection.people().values() if one.name == "Villem Karukäpp")
    assert villem.told_to == {"family"}
