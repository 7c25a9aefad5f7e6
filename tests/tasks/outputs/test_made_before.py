"""What was made before a consent was withdrawn is named, to be made again (a rule of our own)."""

import os
import time
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest
from tests.formats.conftest import picture

from boxlore.core.people.consent import make_consent
from boxlore.core.people.person import Person
from boxlore.core.records.audience import To
from boxlore.core.statements import KEEPER
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import Selection
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.made_before import HANDED_ON, made_before, to_make_again, withdrawn
from boxlore.tasks.outputs.printed_sheets import PrintOrder, sheet
from boxlore.tasks.outputs.web_pages import OUTSIDE, pages
from boxlore.tasks.people import registry
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 27)


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    """Three pictures: one of Mia, one of Ada, who both live, one with a story that names Mia. Mia has consented."""
    start(tmp_path / "c", Settings(prefix="MB", title="Bay"), on_day=ON)
    plan = []
    for at in range(3):
        (scan := tmp_path / f"{at}.jpg").write_bytes(picture("JPEG", comment=str(at).encode()))
        plan.append(Planned(key=str(at), sides=(ScanSide(scan),)))
    with open_collection(tmp_path / "c", on_day=ON) as opened:
        first, second, third = (one.number for one in take_in(opened, plan, IntakeOptions(copy=False)))
        for number, field, words in (
            (first, "person", "Mia Rourke"), (second, "person", "Ada Quill"), (third, "story", "Mia fell in."),
        ):  # fmt: skip
            Teller(opened).tell(find_item(opened, number), field, words, Telling(source=KEEPER, audience="anyone"))
        consent(opened, given=True)
        yield opened


def mia(collection: Collection) -> Person:
    return registry.find_person(collection, "Mia Rourke")


def consent(collection: Collection, *, given: bool, matters: tuple[str, ...] = ("name", "picture")) -> None:
    registry.consent(collection, mia(collection), make_consent(matters, ON.isoformat(), given=given))


def make_all(collection: Collection) -> None:
    home = collection.folder
    pages(collection, home / "pages", OUTSIDE)
    sheet(collection, home / "print" / "album.pdf", PrintOrder(to=To.OUTSIDE))
    sheet(collection, home / "print" / "family.pdf", PrintOrder(to=To.FAMILY))
    ada = Selection(person="Ada Quill")
    sheet(collection, home / "print" / "ada.pdf", PrintOrder(to=To.FAMILY, selection=ada))
    list(copies(collection, home / "copies", to=To.OUTSIDE))
    list(copies(collection, home / "family copies"))
    (home / "notes.txt").write_text("Mia Rourke, says the keeper's own file.")


def paths(collection: Collection) -> list[str]:
    return [made.path for made in made_before(collection, withdrawn(collection))]


def test_what_names_or_shows_somebody_who_withdrew_is_named_until_it_is_made_again(collection: Collection) -> None:
    make_all(collection)
    assert withdrawn(collection) == [] and to_make_again(collection, []) == [] and paths(collection) == []
    consent(collection, given=False)
    assert [person.name for person in withdrawn(collection)] == ["Mia Rourke"]
    assert paths(collection) == ["copies", "pages", "print/album.pdf"]
    (sentence,) = to_make_again(collection, withdrawn(collection))
    assert sentence.startswith("Made before, and names or shows Mia Rourke still: copies (") and HANDED_ON in sentence
    pages(collection, collection.folder / "pages", OUTSIDE)
    sheet(collection, collection.folder / "print" / "album.pdf", PrintOrder(to=To.OUTSIDE))
    later(collection.folder)
    assert paths(collection) == ["copies"], "an earlier copy is taken away by hand"
    consent(collection, given=True)
    assert withdrawn(collection) == []


def later(folder: Path) -> None:
    """A file that was made anew is younger than the withdrawal, also where a disk keeps time in whole seconds."""
    for path in (*(folder / "pages").rglob("*"), folder / "print" / "album.pdf"):
        os.utime(path, (time.time() + 9, time.time() + 9))


def test_a_picture_that_may_not_be_shown_any_more_is_known_by_its_number(collection: Collection) -> None:
    make_all(collection)
    consent(collection, given=False, matters=("picture",))
    assert paths(collection) == ["copies", "pages", "print/album.pdf"]


def test_where_nothing_is_to_be_made_again_it_is_said(collection: Collection) -> None:
    consent(collection, given=False)
    assert to_make_again(collection, withdrawn(collection)) == [
        f"No output in this folder names or shows Mia Rourke. {HANDED_ON}"
    ]


def spoilt(path: Path) -> None:
    path.write_bytes(b"%PDF-1.4 cut")


def hidden(path: Path) -> None:
    path.rename(path.with_name(".album.pdf"))


def a_link(path: Path) -> None:
    path.unlink()
    path.symlink_to("family.pdf")


@pytest.mark.parametrize("change", [spoilt, hidden, a_link])
def test_a_file_that_is_not_as_boxlore_made_it_is_not_its_output(
    collection: Collection, change: Callable[[Path], None]
) -> None:
    sheet(collection, collection.folder / "print" / "album.pdf", PrintOrder(to=To.OUTSIDE))
    consent(collection, given=False)
    assert paths(collection) == ["print/album.pdf"]
    change(collection.folder / "print" / "album.pdf")
    assert paths(collection) == []
