"""Names in words about a picture that were told nowhere else, of whoever may live (a rule of our own)."""

from dataclasses import replace

from tests.core.records.cast import PEOPLE, TODAY, recipient, record, said, scan
from tests.every_row import every_row

from boxlore.core.fields.name_answers import NamingAnswer, NamingDecision
from boxlore.core.people.names_in_text.finder import name_finder
from boxlore.core.records.audience import Recipient, To
from boxlore.core.records.file_strangers import Strangers, stranger_digest, strangers_to
from boxlore.core.records.name_answers import NOTHING_DECIDED, STRANGER, decided
from boxlore.core.records.told_nowhere import NamesToldNowhere

SHAPES = NamesToldNowhere(
    known=name_finder(PEOPLE, frozenset(person.id for person in PEOPLE)),
    places=frozenset(("pirita rand",)),
    old=frozenset(("old",)),
    since=TODAY.year - 100,
)

ASKED = [
    ("title", "1952-08 regatta - Oswin Quillfeather (left), Helmi", "Oswin Quillfeather; Helmi"),
    ("story", "Helmi’s hat blew off.", "Helmi’s"),
    ("found in", "Helmi's sideboard", "Helmi's"),
    ("place", "Helen Brannock's house, Dunedin", "Helen Brannock's"),
    ("title", "Helmi and Tom, 1931", "Helmi"),
    ("title", "Tom Brannock on the quay", "Tom Brannock"),
]
NOT_ASKED = [
    ("title", "Tom Rourke on the quay"), ("title", "Pirita rand"), ("title", "Helmi, 1899"),
    ("title", "Helmi (1860–1931)"), ("place", "Alexandra"), ("process", "Helmi"), ("title", "The pier"),
]  # fmt: skip


@every_row(("where", "words", "names"), ASKED)
def test_a_name_of_which_nobody_was_told_is_a_question(where: str, words: str, names: str) -> None:
    assert "; ".join(words[start:end] for start, end in SHAPES.places_in(words, "item", where)) == names


@every_row(("where", "words"), NOT_ASKED)
def test_who_is_known_is_dead_or_is_a_place_is_none(where: str, words: str) -> None:
    assert list(SHAPES.places_in(words, "item", where)) == []


def test_in_an_old_picture_nobody_lives_but_who_gave_it_may() -> None:
    assert not SHAPES.places_in("Helmi", "old", "title") and SHAPES.places_in("Helmi", "old", "donor")
    assert not SHAPES.places_in("Helmi", "", "title"), "words of no item were judged where they are told"


def strangers(*decisions: NamingDecision) -> Strangers:
    told = decided([("item", decision) for decision in decisions])
    return strangers_to(PEOPLE, told, ["Oswin Tohver"], shapes=SHAPES)


def test_the_words_stay_and_the_scan_until_each_name_is_answered() -> None:
    whole = record(told={"title": (said("Helmi and Oswin Tohver’s dog", "title"),)}, scans=(scan(),))
    assert recipient(To.OUTSIDE).seen(whole) == whole
    for strange in (strangers(), strangers_to((), NOTHING_DECIDED, shapes=SHAPES)):
        held = Recipient(to=To.OUTSIDE, on_day=TODAY, strangers=strange)
        seen = held.seen(whole)
        assert (seen.told, seen.closed_scans) == ({}, True)
        assert [list(naming.unknown) for naming in held.namings(whole)] == [[(0, 5), (10, 24)]]
    of_helmi, of_oswin = (
        NamingDecision(NamingAnswer.MAY, STRANGER, "title", stranger_digest(name)) for name in ("Helmi", "Oswin Tohver")
    )
    (naming,) = recipient(To.OUTSIDE, strangers=strangers(of_helmi)).namings(whole)
    assert list(naming.unknown) == [(10, 24)]
    let_out = recipient(To.OUTSIDE, strangers=strangers(of_helmi, of_oswin))
    assert let_out.seen(whole) == whole
    assert let_out.strangers and let_out.strangers.named_in(whole.words("title"), "another", "story") == [(0, 5)]
    hidden = replace(of_oswin, answer=NamingAnswer.HIDE, where="story")
    assert not recipient(To.OUTSIDE, strangers=strangers(hidden, of_helmi)).seen(replace(whole, id="another")).told


@every_row("part", [{"found_in": "Helmi’s sideboard"}, {"told": {"story": (said("Helmi came.", "story"),)}}])
def test_they_are_held_where_nobody_is_withheld(part: dict[str, object]) -> None:
    held = Recipient(to=To.OUTSIDE, on_day=TODAY, strangers=strangers_to((), NOTHING_DECIDED, shapes=SHAPES))
    assert held.seen(record(**part)).withheld == 1
