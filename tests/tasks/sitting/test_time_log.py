"""What the log of a sitting tells to whom. The rule is ours (core/records/audience).

Everything is told in one sitting, while TRA-0001 is out. Tom died in 2011; Mia lives and has consented to nothing.
"""

import csv
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.fields.sittings import SHOWN_WORDS, ShownAt
from boxlore.core.records.audience import To
from boxlore.core.statements import KEEPER, Kind, Said, Source, Statement, Subject
from boxlore.tasks.collection.opening import Act, Collection, open_collection
from boxlore.tasks.people.registry import set_audience
from boxlore.tasks.sitting.time_log import write_log
from boxlore.tasks.telling.understanding import person_reading


class Told:
    """A sitting with one item out. `tell` adds what is told in it; `log` is what the log then holds, by its words."""

    def __init__(self, collection: Collection, out: Path) -> None:
        self.collection, self.out = collection, out
        self.items = [Subject(Kind.ITEM, ident) for _, ident in collection.store.items()]
        act = collection.act("a sitting")
        self.sitting = act.new(Kind.SITTING)
        act.state(self.sitting, "date", "2026-11-25")
        shown = SHOWN_WORDS.write(ShownAt(self.items[0].id, 0))
        act.state(self.sitting, "shown", shown, sitting=self.sitting.id, moment=0)
        self.tom, self.mia = self.person(act, "Tom", "died"), self.person(act, "Mia", "")
        act.done()
        self.by_tom = Source(Said.NARRATOR, self.tom.id)

    def person(self, act: Act, given: str, died: str) -> Subject:
        person = act.new(Kind.PERSON)
        act.state(person, "given", given)
        act.state(person, "family", "Rourke")
        if died:
            act.state(person, "died", "2011")
        return person

    def tell(
        self, subject: Subject, field: str, words: str, *, means: Subject | None = None, **more: object
    ) -> Statement:
        act = self.collection.act("told")
        how = {"source": self.by_tom, "sitting": self.sitting.id, "moment": 1000, **more}
        statement = act.state(subject, field, words, **how)
        if means is not None:
            act.readings.append((statement.id, person_reading(means)))
        act.done()
        return statement

    def new(self, kind: Kind) -> Subject:
        return self.collection.act("").new(kind)

    def rows(self, to: To) -> list[dict[str, str]]:
        path = write_log(self.collection, self.sitting.id, self.out / to, to)[-1]
        with open(path, encoding="utf-8", newline="") as file:
            return list(csv.DictReader(file))

    def log(self, to: To) -> list[str]:
        return [row["words"] for row in self.rows(to)]


@pytest.fixture
def told(bare: Callable[[int], Path], tmp_path: Path) -> Iterator[Told]:
    with open_collection(bare(2)) as collection:
        yield Told(collection, tmp_path / "logs")


def only_family_has(told: Told, words: str) -> None:
    assert told.log(To.FAMILY) == [words]
    assert told.log(To.OUTSIDE) == []


def test_what_anyone_may_have_is_in_both_logs(told: Told) -> None:
    told.tell(told.items[0], "story", "The boat came in.")
    assert told.log(To.FAMILY) == told.log(To.OUTSIDE) == ["The boat came in."]


@pytest.mark.parametrize("kind", [Kind.ITEM, Kind.MARKER])
def test_words_that_mean_someone_withheld_without_her_name(told: Told, kind: Kind) -> None:
    about = told.items[0] if kind is Kind.ITEM else told.new(kind)
    told.tell(about, "person", "my little niece", means=told.mia)
    only_family_has(told, "my little niece")


def test_kin_of_someone_dead_who_is_withheld(told: Told) -> None:
    told.tell(told.tom, "spouse", "the one he married", means=told.mia)
    only_family_has(told, "the one he married")


def test_a_fact_about_someone_withheld_without_her_name(told: Told) -> None:
    told.tell(told.mia, "born", "3 March 1966")
    only_family_has(told, "3 March 1966")


@pytest.mark.parametrize("audience", ["family", "person=family"])
def test_a_name_at_a_marker_of_an_item_or_a_field_that_is_kept(told: Told, audience: str) -> None:
    told.tell(told.new(Kind.MARKER), "person", "Uncle Tom", means=told.tom)
    assert told.log(To.OUTSIDE) == ["Uncle Tom"]
    field, _, level = audience.rpartition("=")
    set_audience(told.collection, told.items[0], level, field)
    only_family_has(told, "Uncle Tom")


def test_the_same_words_kept_in_one_field_and_open_in_another(told: Told) -> None:
    told.tell(told.items[0], "story", "Port Chalmers")
    told.tell(told.items[0], "title", "Port Chalmers")
    set_audience(told.collection, told.items[0], "family", "story")
    assert [row["field"] for row in told.rows(To.FAMILY)] == ["story", "title"]
    assert [row["field"] for row in told.rows(To.OUTSIDE)] == ["title"]


def test_a_document_is_not_named_by_the_name_of_someone_withheld(told: Told) -> None:
    told.tell(told.items[0], "story", "They sailed.", source=Source(Said.DOCUMENT, "letter of Mia Rourke"))
    assert [row["said by"] for row in told.rows(To.FAMILY)] == ["document:letter of Mia Rourke"]
    assert [row["said by"] for row in told.rows(To.OUTSIDE)] == ["document"]


@pytest.mark.parametrize("name", ["a neighbour nobody knows", "the keeper"])
def test_a_teller_whom_nobody_knows_tells_nothing_outside(told: Told, name: str) -> None:
    source = KEEPER if name == "the keeper" else Source(Said.NARRATOR, name)
    told.tell(told.items[0], "story", "They sailed.", source=source)
    assert told.log(To.FAMILY) == ["They sailed."]
    assert told.log(To.OUTSIDE) == (["They sailed."] if source is KEEPER else [])


def test_a_teller_who_bears_the_name_of_someone_withheld(told: Told) -> None:
    act = told.collection.act("a namesake")
    old = told.person(act, "Mia", "died")
    act.done()
    told.tell(told.items[0], "story", "They sailed.", source=Source(Said.NARRATOR, old.id))
    only_family_has(told, "They sailed.")
