"""What the teller's page shows: what the family may see, as the family's copies do (a rule of our own)."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import NOT_FOR_THEM, copies
from boxlore.tasks.people.registry import set_audience
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.tellers_page import KEPT_BACK, Showing
from boxlore.tasks.telling.statements import Teller, Telling


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    """TRA-0001 with a picture."""
    Image.new("RGB", (60, 40), "#8a7a60").save(tmp_path / "harbour.jpg")
    start(tmp_path / "tamm_family", Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(tmp_path / "tamm_family") as opened:
        list(take_in(opened, by_suffix([tmp_path / "harbour.jpg"]), IntakeOptions(copy=True)))
        yield opened


def keep_the_item(collection: Collection, item: Subject) -> None:
    set_audience(collection, item, "keeper")


def keep_whom_it_shows(collection: Collection, item: Subject) -> None:
    Teller(collection).tell(item, "person", "Michael Rourke", Telling())
    (michael,) = collection.people()
    set_audience(collection, Subject(Kind.PERSON, michael), "keeper")


def out(showing: Showing) -> Record:
    assert showing.collection is not None
    (item,) = (ident for _, ident in showing.collection.store.items())
    record = record_of(showing.collection, item)
    showing.show(record, (), "1 of 1")
    return record


@pytest.mark.parametrize("keep", [keep_the_item, keep_whom_it_shows])
def test_a_picture_that_is_not_for_the_family_is_kept_back(collection: Collection, keep: object) -> None:
    showing = Showing(collection=collection, lookers=1)
    item = Subject(Kind.ITEM, out(showing).id)
    (side,) = showing.view.sides
    assert showing.picture(side.id, "screen")
    keep(collection, item)  # type: ignore[operator]  # two functions in one table
    out(showing)
    assert (showing.view.sides, showing.view.message, showing.view.number) == ((), KEPT_BACK, "TRA-0001")
    assert showing.picture(side.id, "screen") is None
    assert not showing.tap(side.id, 0.5, 0.5)
    (copied,) = copies(collection, collection.folder / "copies")
    assert (copied.state, copied.why) == ("refused", NOT_FOR_THEM)


def test_a_picture_that_is_kept_back_is_not_made_ready(collection: Collection) -> None:
    showing = Showing(collection=collection, lookers=1)
    (item,) = (ident for _, ident in collection.store.items())
    keep_the_item(collection, Subject(Kind.ITEM, item))
    showing.expect(record_of(collection, item))
    assert showing.picture(1, "screen") is None


def test_when_it_is_opened_again_it_is_shown_again(collection: Collection) -> None:
    showing = Showing(collection=collection)
    item = Subject(Kind.ITEM, out(showing).id)
    keep_the_item(collection, item)
    out(showing)
    set_audience(collection, item, "family")
    out(showing)
    (side,) = showing.view.sides
    assert showing.picture(side.id, "screen") and not showing.view.message


def test_only_the_picture_that_is_out_is_served(collection: Collection) -> None:
    """One that is covered is not served by its number when the keeper has turned on."""
    showing = Showing(collection=collection, lookers=1)
    record = out(showing)
    (side,) = showing.view.sides
    assert showing.picture(side.id, "screen")
    Teller(collection).tell(Subject(Kind.ITEM, record.id), "care", "A funeral.", Telling())
    out(showing)
    assert showing.view.covered and showing.picture(side.id, "screen") is None
    act = collection.act("another item")
    other = act.new(Kind.ITEM)
    act.state(other, "number", "TRA-0002")
    act.done()
    showing.show(record_of(collection, other.id), (), "2 of 2")
    assert showing.picture(side.id, "screen") is None, "it was covered when the keeper turned on"
    showing.expect(record_of(collection, record.id))
    assert showing.picture(side.id, "screen") is None, "it is made ready, and not out yet"
