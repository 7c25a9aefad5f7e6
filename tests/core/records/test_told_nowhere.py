"""Names in words about a picture that were told nowhere else, of whoever may live (a rule of our own)."""

from dataclasses import replace

from tests.core.records.cast import PEOPLE, TODAY, recipient, record, said, scan
from tests.every_row import every_row

from boxlore.core.fields.name_answers import NamingAnswer, NamingDecision
from boxlore.core.people.names_in_text.finder import name_finder
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.audience import Recipient, To
from boxlore.core.records.file_strangers import Strangers, stranger_digest, strangers_to
from boxlore.core.records.name_answers import NOTHING_DECIDED, STRANGER, decided
from boxlore.core.records.told_nowhere import NamesToldNowhere, where_told
from boxlore.core.statements import Kind, Subject

SHAPES = NamesToldNowhere(
    known=name_finder(PEOPLE, frozenset(person.id for person in PEOPLE)),
    places=frozenset(("pirita rand", "helen brannock's hut")),
    old=frozenset(("old",)),
    since=TODAY.year - 100,
    long_ago=frozenset(("when helmi was christened",)),
)

ASKED = [
    ("title", "1952-08 regatta - Oswin Quillfeather (left), Helmi", "Oswin Quillfeather; Helmi"),
    ("story", "Helmi’s hat blew off.", "Helmi’s"),
    ("found in", "Helmi's sideboard", "Helmi's"),
    ("place", "Helen Brannock's house, Dunedin", "Helen Brannock's"),
    ("title", "Helmi and Tom, 1931", "Helmi"),
    ("title", "Tom Brannock on the quay", "Tom Brannock"),
    ("title", "Lunch at Helen Brannock's hut", "Helen Brannock's"),
    ("place", "Helen Brannock's hut", "Helen Brannock's"),
    ("place", "at the Wolstencrofts'", "Wolstencrofts"),
    ("place", "Dr Xanthe Brannock, High Street, Alexandra", "Xanthe Brannock"),
    ("place", "Tante Helmi, Tartu", "Helmi"),
    ("process", "tinted by Helmi", "Helmi"),
    ("place", "at 12 Hill St, Barry Ackroyd", "Barry Ackroyd"),
    ("place", "bei Holzapfels in der Küche", "Holzapfels"),
    ("place", "鈴木さんの家", "鈴木"),
    ("place", "Dunedin (b.hargreaves@example.net)", "b.hargreaves@example.net"),
    ("condition", "torn by Oswin Quillfeather", "Oswin Quillfeather"),
    ("enclosure", "sleeve from Oswin Quillfeather", "Oswin Quillfeather"),
    ("date", "the year Oswin Quillfeather was born", "Oswin Quillfeather"),
    ("own-hobby", "Boats, as Oswin Quillfeather had", "Oswin Quillfeather"),
]
NOT_ASKED = [
    ("title", "Tom Rourke on the quay"), ("title", "Pirita rand"), ("title", "Helmi, 1899"),
    ("title", "Helmi (1860–1931)"), ("place", "Alexandra"), ("place", "Clyde Hill"), ("title", "The pier"),
    ("date", "June or July 1938"), ("date", "New Year's Eve 1938"), ("date", "Silvester 1938"),
    ("person", "Helmi"), ("name of the file", "Helmi"), ("who says it", "Helmi"), ("", "Helmi"),
]  # fmt: skip


@every_row(("where", "words", "names"), ASKED)
def test_a_name_of_which_nobody_was_told_is_a_question(where: str, words: str, names: str) -> None:
    assert "; ".join(words[start:end] for start, end in SHAPES.places_in(words, "item", where)) == names


@every_row(("where", "words"), NOT_ASKED)
def test_who_is_known_is_dead_or_is_a_place_is_none(where: str, words: str) -> None:
    assert list(SHAPES.places_in(words, "item", where)) == []


def test_in_an_old_picture_nobody_lives_but_who_gave_it_may() -> None:
    assert not SHAPES.places_in("Helmi", "old", "title") and SHAPES.places_in("Helmi", "old", "donor")


OF_NO_ITEM = [
    (Kind.EVENT, "name", "when Oswin Quillfeather sailed", "Oswin Quillfeather"),
    (Kind.EVENT, "partner", "Oswin Quillfeather", "Oswin Quillfeather"),
    (Kind.EVENT, "place", "Helmi’s hut", "Helmi’s"),
    (Kind.PLACE, "name", "Helmi’s hut", "Helmi’s"),
    (Kind.PLACE, "name", "Alexandra", ""),
    (Kind.PLACE, "called_then", "Helmi", ""),
    (Kind.PLACE, "story", "Helmi lived there.", "Helmi"),
    (Kind.SITTING, "interviewer", "Oswin Quillfeather", "Oswin Quillfeather"),
    (Kind.COLLECTION, "custody", "From Oswin Quillfeather", "Oswin Quillfeather"),
    (Kind.PERSON, "story", "Helmi was her friend.", "Helmi"),
    (Kind.PERSON, "born_at", "Helmi’s hut", "Helmi’s"),
    (Kind.PERSON, "given", "Helmi", ""),
    (Kind.PERSON, "name", "Helmi", ""),
    (Kind.EVENT, "kind", "Helmi", ""),
    (Kind.EVENT, "name", "When Helmi was christened", ""),
    (Kind.EVENT, "story", "When Helmi was christened", "Helmi"),
]


@every_row(("kind", "field", "words", "names"), OF_NO_ITEM)
def test_what_is_no_item_is_looked_through_by_the_same_rule(kind: Kind, field: str, words: str, names: str) -> None:
    item, where = where_told(Subject(kind, "thing"), field)
    assert not item
    assert "; ".join(words[start:end] for start, end in SHAPES.places_in(words, item, where)) == names


def test_what_is_no_item_is_told_when_the_keeper_has_let_the_name_out_there() -> None:
    """A given name alone is answered where it stands: an answer in an item opens no event."""
    about, view = Subject(Kind.EVENT, "moving"), said("when Helmi moved", "name")
    (naming,) = recipient(To.OUTSIDE, strangers=strangers()).names_unknown(about, [view])
    assert (naming.where, list(naming.unknown)) == ("event name", [(5, 10)])
    assert not list(recipient(To.FAMILY).names_unknown(about, [view]))
    assert not list(recipient(To.OUTSIDE, strangers=strangers()).names_unknown(Subject(Kind.PERSON, "mia"), [view]))
    assert not list(
        recipient(To.OUTSIDE, strangers=strangers()).names_unknown(about, [replace(view, audience="keeper")])
    )
    for answer, item, is_told in (
        (NamingAnswer.HIDE, "", False),
        (NamingAnswer.MAY, "", True),
        (NamingAnswer.OTHER, "", True),
        (NamingAnswer.MAY, "item", False),
    ):
        decision = NamingDecision(answer, STRANGER, "event name", stranger_digest("Helmi"))
        strange = strangers_to(PEOPLE, decided([(item, decision)]), shapes=SHAPES)
        assert recipient(To.OUTSIDE, strangers=strange).may_be_told(view, about) is is_told


def test_a_place_that_words_were_read_as_is_not_named_by_whose_it_is() -> None:
    place = PlaceReading("the hut", "match", (Place(name="Helmi’s hut"),))
    whole = record(told={"place": (said("the hut", "place", value=place),)})
    held = Recipient(to=To.OUTSIDE, on_day=TODAY, strangers=strangers_to((), NOTHING_DECIDED, shapes=SHAPES))
    (seen,) = held.seen(whole).told["place"]
    assert (seen.words, seen.value) == ("the hut", None)
    (naming,) = held.namings(whole)
    answer = NamingDecision(NamingAnswer.MAY, STRANGER, naming.where, stranger_digest("Helmi"))
    strange = strangers_to((), decided([("item", answer)]), shapes=SHAPES)
    assert replace(held, strangers=strange).seen(whole).told == whole.told


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
