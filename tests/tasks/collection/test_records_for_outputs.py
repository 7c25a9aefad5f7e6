"""What somebody may know of a person: what is kept of a name, a date or kin is in no output made for them.

The rule is ours (core/records/audience). Helmi died in 1972, so that nobody withholds her.
"""

import json
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.crosswalk.dublin_core import headings
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.archive.transfer_context import closing_of, thing_lines
from boxlore.tasks.check import check
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import AudienceView, Selection, record_of, seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.printed_sheets import PrintOrder, printing_of
from boxlore.tasks.people.kin_captions import kin_to
from boxlore.tasks.people.registry import find_person
from boxlore.tasks.telling.statements import Teller, Telling

NOT_FOR_OUTSIDE = ["keeper", "family", "archive:2060-01-01"]


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    """TRA-0001 shows Helmi, who told its story as well."""
    with open_collection(bare(1)) as opened:
        teller, act = Teller(opened), opened.act("Helmi")
        helmi = act.new(Kind.PERSON)
        for field, words in (("given", "Helmi"), ("family", "Tamm"), ("died", "14 August 1972")):
            teller.add(act, helmi, field, words, Telling())
        act.done()
        item = Subject(Kind.ITEM, opened.store.items()[0][1])
        teller.tell(item, "person", "Helmi Tamm", Telling())
        teller.tell(item, "story", "The boat came in.", Telling(source=Source(Said.NARRATOR, helmi.id)))
        yield opened


def tell(collection: Collection, field: str, words: str, audience: str) -> None:
    helmi = find_person(collection, "Helmi Tamm")
    Teller(collection).tell(Subject(Kind.PERSON, helmi.id), field, words, Telling(audience=audience))


def outputs(seen: AudienceView) -> str:
    """What outputs make of her: in the picture, as a subject, in lists by name, as the teller, in linked data."""
    (record,) = seen.records()
    (shown,) = record.people
    (story,) = record.all("story")
    sort_names = printing_of(seen, PrintOrder(to=seen.to)).sort_names
    lines = list(thing_lines(seen.collection, seen, None))
    again = seen.recipient.seen(record_of(seen.collection, record.id)).people[0].name
    return json.dumps([shown.name, again, headings([shown], seen.people()), story.said_by, sort_names, lines])


@pytest.mark.parametrize("audience", NOT_FOR_OUTSIDE)
@pytest.mark.parametrize(("field", "words"), [("name", "Helmi of the harbour"), ("born", "1890"), ("nickname", "Memm")])
def test_what_is_kept_of_a_person_is_in_no_output(
    collection: Collection, field: str, words: str, audience: str
) -> None:
    before = outputs(seen_by(collection, To.OUTSIDE))
    tell(collection, field, words, audience)
    assert outputs(seen_by(collection, To.OUTSIDE)) == before
    assert words not in before


def test_whoever_may_know_it_is_told(collection: Collection) -> None:
    tell(collection, "name", "Helmi of the harbour", "family")
    assert "Helmi of the harbour" in outputs(seen_by(collection, To.FAMILY))
    assert "Helmi of the harbour" not in outputs(seen_by(collection, To.ARCHIVE))


def test_kin_that_the_keeper_keeps_is_not_told_to_the_family(collection: Collection) -> None:
    Teller(collection).tell(
        Subject(Kind.PERSON, collection.act("").new(Kind.PERSON).id), "name", "Aino Tamm", Telling()
    )
    aino = Subject(Kind.PERSON, find_person(collection, "Aino Tamm").id)
    mother = Teller(collection).tell(aino, "mother", "Helmi Tamm", Telling())
    assert set(kin_to(seen_by(collection, To.FAMILY).people(), "Aino Tamm", To.FAMILY).values()) == {"Aino’s mother"}
    Teller(collection).tell(aino, "mother", "Helmi Tamm", Telling(audience="keeper"), replaces=mother.id)
    assert kin_to(seen_by(collection, To.FAMILY).people(), "Aino Tamm", To.FAMILY) == {}


def test_a_part_that_is_closed_until_a_day_closes_the_item_until_then(collection: Collection) -> None:
    tell(collection, "born", "1890", "archive:2060-01-01")
    (record,) = seen_by(collection, To.ARCHIVE).records()
    closure = closing_of(collection, seen_by(collection, To.OUTSIDE)).of(record)
    assert closure is not None and str(closure.until) == "2060-01-01"


@pytest.mark.parametrize(("words", "told_to"), [
    ("harbour", [To.KEEPER]), ("quarr", [To.KEEPER, To.FAMILY]), ("came BO", list(To)), ("boat harbour", []),
])  # fmt: skip
def test_a_search_chooses_by_what_its_recipient_may_see(collection: Collection, words: str, told_to: list[To]) -> None:
    """An item chosen by a word that is kept from them would tell them that it is there."""
    teller, item = Teller(collection), Subject(Kind.ITEM, collection.store.items()[0][1])
    teller.tell(item, "note", "Behind the harbour wall.", Telling())
    teller.tell(item, "story", "They had quarrelled.", Telling(audience="family"))
    for to in (To.KEEPER, To.FAMILY, To.OUTSIDE):
        chosen = list(seen_by(collection, to).records(Selection(words=words)))
        assert bool(chosen) == (to in told_to), to


def test_what_cannot_be_all_true_of_a_life_is_said_at_check(tmp_path: Path) -> None:
    """Two people may stand in one entry; found before anything leaves, not only at a transfer (a rule of our own)."""
    start(tmp_path / "c", Settings())
    with open_collection(tmp_path / "c") as collection:
        act = collection.act("told")
        helmi = act.new(Kind.PERSON)
        for field, words in (("name", "Helmi Tamm"), ("died", "1944"), ("living", "yes")):
            Teller(collection).add(act, helmi, field, words, Telling())
        act.done()
        said = [located.finding.message for located in check(collection)]
    assert any(words.startswith("Helmi Tamm is named and shown to nobody outside: a death is told") for words in said)
