"""Whose wedding an event of the time line is, by its name: a rule of our own, no source."""

from dataclasses import replace

from tests.core.evidence.family import BACK, days_of, item, person, shown, told, worked_out
from tests.every_row import every_row

from boxlore.core.dates import phrases
from boxlore.core.evidence.weddings import Weddings
from boxlore.core.people.person import Registry
from boxlore.core.records.events import FamilyEvent

PEOPLE = [
    replace(person(name, surnames=(name.split()[1],)), calls=(name.split()[0],))
    for name in ("Ada Roke", "Ben Roke", "Juhan Kask", "Miina Kask", "Ann Orr", "Ann Pike", "Tom Pike")
]
EVENT = FamilyEvent(id="w", kind="marriage", names=("wedding",), when=phrases.read("1917"), words="1917")

NAMES = (
    ("wedding of Ada and Ben", ("Ada Roke", "Ben Roke")),
    ("Ada and Ben's wedding", ("Ada Roke", "Ben Roke")),
    ("Juhani ja Miina pulmad", ("Juhan Kask", "Miina Kask")),
    ("Hochzeit von Ada Roke und Ben", ("Ada Roke", "Ben Roke")),
    ("wedding of Ann Orr and Tom", ("Ann Orr", "Tom Pike")),
    ("wedding of Ann and Tom", ()),  # which Ann?
    ("wedding of Ada", ()),
    ("wedding of Ada, Ben and Tom", ()),
    ("the wedding", ()),
)  # fmt: skip


@every_row(("name", "couple"), NAMES)
def test_an_event_is_the_wedding_of_whom_its_name_tells(name: str, couple: tuple[str, ...]) -> None:
    weddings = Weddings(Registry(PEOPLE), [replace(EVENT, names=(name,))])
    assert [event.people for event in weddings.events] == ([couple] if couple else [])


def _of(happened: FamilyEvent, *views: tuple[str, str]) -> str:
    record = item("i", *(told(field, words, source=BACK) for field, words in views), people=[shown("Ada Roke")])
    return days_of(worked_out([record], PEOPLE, [], [happened]), "i")


def test_a_married_name_is_of_after_it_and_said_once() -> None:
    wedding = replace(EVENT, names=("wedding of Ada and Ben",))
    assert _of(wedding, ("inscription", "Mrs Ada Roke")) == "1917-01-01 -"
    record = item(
        "i", told("inscription", "Mrs Ada Roke", source=BACK), told("date", "1915"), people=[shown("Ada Roke")]
    )
    (circle,) = worked_out([record], PEOPLE, [], [wedding]).circles
    assert any("is the wedding of Ada Roke and Ben Roke" in claim.words for claim in circle.claims)


def test_before_the_wedding_is_that_of_the_two_in_the_picture() -> None:
    record = item("i", told("story", "Before the wedding."), people=[shown("Ada Roke"), shown("Ben Roke")])
    wedding = replace(EVENT, names=("wedding of Ada and Ben",))
    assert days_of(worked_out([record], PEOPLE, [], [wedding]), "i") == "- 1917-12-30"
