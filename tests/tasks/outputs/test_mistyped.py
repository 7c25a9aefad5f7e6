"""A selection that is mistyped makes nothing, and is named: rules of our own, no outside source."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.originals.moves import move
from boxlore.core.statements import Kind
from boxlore.tasks.archive.names_asked import look_for_names
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import Selection, check_chosen
from boxlore.tasks.originals.housing_changes import About, carry_out, note_container
from boxlore.tasks.originals.housing_now import house_of, items_named
from boxlore.tasks.originals.survey import lists
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder, labels, sheet, slips, worksheet
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.telling.statements import Teller, Telling


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    """Three items: the first in the box “Bx1”, the second in “Attic”, with Aino Tamm in it."""
    with open_collection(bare(3)) as opened:
        for number, box in (("TRA-0001", "Bx1"), ("TRA-0002", "Attic")):
            container = note_container(opened, box, About())
            house = house_of(opened)
            carry_out(opened, move(house.holding, [item.id for item in items_named(opened, [number])], container.id))
        Teller(opened).tell(find_item(opened, "TRA-0002"), "person", "Aino Tamm", Telling())
        yield opened


THERE_IS = "boxlore housing what, boxlore people list and boxlore find show them."
MISTYPED = [
    (Selection(box="Bx2"), f"Nothing here is of box “Bx2”. Is “Bx1” meant? {THERE_IS}"),
    (Selection(person="Aino Tam"), ""),
    (Selection(person="Aino Tomm"), f"Nothing here is of person “Aino Tomm”. Is “Aino Tamm” meant? {THERE_IS}"),
    (Selection(folder="7"), f"Nothing here is of folder “7”. {THERE_IS}"),
    (Selection(box="Attic", words="zeppelin"), f"Nothing here is of words “zeppelin”. {THERE_IS}"),
    (Selection(box="Bx1", person="Aino"), f"Nothing here is of box “Bx1”, person “Aino” together. {THERE_IS}"),
    (Selection(wanted=True), "No archive has said that it wants anything. Read its answer first: boxlore offer"),
]  # fmt: skip


@pytest.mark.parametrize(("selection", "sentence"), MISTYPED)
def test_what_is_not_there_is_named_with_the_nearest(
    collection: Collection, selection: Selection, sentence: str
) -> None:
    if not sentence:
        check_chosen(collection, selection)
        return
    with pytest.raises(WrongUse) as refused:
        check_chosen(collection, selection)
    assert str(refused.value).startswith(sentence)


NO_BOX = Selection(box="Bx2")
MAKES: list[Callable[[Collection, Path], object]] = [
    lambda collection, out: sheet(collection, out.with_suffix(".pdf"), PrintOrder(selection=NO_BOX)),
    lambda collection, out: slips(collection, out.with_suffix(".pdf"), PrintOrder(selection=NO_BOX)),
    lambda collection, out: labels(collection, out.with_suffix(".pdf"), PrintOrder(selection=NO_BOX)),
    lambda collection, out: worksheet(collection, out.with_suffix(".pdf"), PrintOrder(selection=NO_BOX)),
    lambda collection, out: pages(collection, out, PrintOrder(selection=NO_BOX)),
    lambda collection, out: list(copies(collection, out, selection=NO_BOX)),
    lambda collection, out: offer(collection, out, selection=NO_BOX),
    lambda collection, out: transfer(collection, out, selection=NO_BOX),
    lambda collection, out: look_for_names(collection, NO_BOX).namings,
    lambda collection, out: lists(collection, NO_BOX),
]


def test_nothing_is_made_of_a_box_that_is_not_there(collection: Collection, tmp_path: Path) -> None:
    out = tmp_path / "out"
    out.mkdir()
    for make in MAKES:
        with pytest.raises(WrongUse, match="Nothing here is of box “Bx2”"):
            make(collection, out / "made")
    assert list(out.iterdir()) == []


def test_somebody_known_whom_no_item_names_is_no_slip(collection: Collection) -> None:
    act = collection.act("told")
    ruben = act.new(Kind.PERSON)
    act.state(ruben, "name", "Ruben Applecross")
    act.done()
    with pytest.raises(WrongUse) as refused:
        check_chosen(collection, Selection(person="Ruben Applecross"))
    assert str(refused.value).startswith("“Ruben Applecross” is among the people, and no item names or shows anybody")


def test_a_choice_by_what_may_not_be_known_outside_says_so(collection: Collection, tmp_path: Path) -> None:
    act = collection.act("told")
    sten = act.new(Kind.PERSON)
    act.state(sten, "name", "Sten Alveholm")
    act.state(sten, "born", "2010")
    act.done()
    Teller(collection).tell(find_item(collection, "TRA-0001"), "occasion", "Christening of Sten Alveholm", Telling())
    by_occasion = Selection(event="Christening of Sten Alveholm")
    for make in (transfer, offer):
        with pytest.raises(CouldNot, match=r"There is nothing to hand over by occasion .* by box or folder"):
            make(collection, tmp_path / make.__name__, selection=by_occasion)
