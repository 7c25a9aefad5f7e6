"""Parting opens nothing that was closed while entries were one (a rule of our own)."""

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from boxlore.core.people.consent import make_consent
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Reading, Subject, Unreadable
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.people import registry

TODAY = date(2026, 11, 25)


@pytest.fixture
def collection(demo: Path, tmp_path: Path) -> Iterator[Collection]:
    shutil.copytree(demo, tmp_path / "c", ignore=shutil.ignore_patterns("copies", "print", "transfer", "backups"))
    with open_collection(tmp_path / "c", on_day=TODAY) as opened:
        yield opened


def entries(collection: Collection, *names: str) -> list[str]:
    act = collection.act("people")
    subjects = [act.new(Kind.PERSON) for _ in names]
    for subject, name in zip(subjects, names, strict=True):
        act.state(subject, "name", name)
        act.state(subject, "died", "1950")
    act.done()
    return [subject.id for subject in subjects]


def merge(collection: Collection, keep: str, duplicate: str) -> None:
    people = collection.people()
    registry.merge(collection, people[keep], people[duplicate])


def keep_to(collection: Collection, ident: str, audience: str) -> None:
    registry.set_audience(collection, Subject(Kind.PERSON, ident), audience)


def test_an_audience_told_of_two_as_one_holds_for_both(collection: Collection) -> None:
    elder, younger = entries(collection, "Aino Vaher", "Aino Pihl")
    merge(collection, elder, younger)
    keep_to(collection, collection.people()[younger].id, "keeper")
    assert len(registry.unmerge(collection, collection.people()[elder])) == 1
    people = collection.people()
    assert [people[ident].audience for ident in (elder, younger)] == ["keeper", "keeper"]
    assert {elder, younger} <= seen_by(collection, To.FAMILY).withheld.people


STRICTER = [
    ("family", "keeper", "keeper"),
    ("keeper", "family", "keeper"),
    ("family", "archive:2060-01-01", "keeper"),
    ("archive:2040-01-01", "archive:2060-01-01", "archive:2060-01-01"),
    ("archive:2070-01-01", "archive:2060-01-01", "archive:2070-01-01"),
    ("family", "anyone", "family"),
]


@pytest.mark.parametrize(("own", "told", "wanted"), STRICTER)
def test_of_two_audiences_the_stricter_holds(collection: Collection, own: str, told: str, wanted: str) -> None:
    elder, younger = entries(collection, "Aino Vaher", "Aino Pihl")
    keep_to(collection, younger, own)
    merge(collection, elder, younger)
    keep_to(collection, elder, told)
    registry.unmerge(collection, collection.people()[elder])
    people = collection.people()
    assert (people[elder].audience, people[younger].audience) == (told, wanted)


def test_what_was_closed_before_they_were_one_stays_with_its_own(collection: Collection) -> None:
    elder, younger, third = entries(collection, "Aino Vaher", "Aino Pihl", "Aino Lepp")
    keep_to(collection, elder, "family")
    merge(collection, younger, third)
    keep_to(collection, younger, "archive:2060-01-01")
    merge(collection, elder, younger)
    registry.unmerge(collection, collection.people()[elder])
    people = collection.people()
    audiences = [people[ident].audience for ident in (elder, younger, third)]
    assert audiences == ["family", "archive:2060-01-01", "archive:2060-01-01"]


def test_a_consent_withdrawn_of_two_as_one_is_withdrawn_for_both(collection: Collection) -> None:
    mia, double = registry.find_person(collection, "Mia").id, entries(collection, "Mia Rourkeson")[0]
    people = collection.people()
    registry.consent(collection, people[mia], make_consent(["name", "picture"], "2026-11-20"))
    act = collection.act("an old consent")
    damaged = act.state(Subject(Kind.PERSON, double), "consent", "given", audience="keeper")
    act.readings.append((damaged.id, Reading("consent", Unreadable("{"), "test")))
    act.done()
    merge(collection, double, mia)
    assert "name" in str(collection.people()[mia].consents[0])
    registry.consent(collection, collection.people()[double], make_consent(["name"], "2026-11-24", given=False))
    act = collection.act("a word on it that nothing was made of")
    act.state(Subject(Kind.PERSON, double), "consent", "she said no", audience="keeper")
    act.done()
    registry.unmerge(collection, collection.people()[double])
    assert [consent.given for consent in collection.people()[mia].consents] == [True, False]
    assert mia in seen_by(collection, To.OUTSIDE).withheld.people


def test_whoever_is_made_of_somebody_closed_is_closed(collection: Collection) -> None:
    (aino,) = entries(collection, "Aino Vaher")
    keep_to(collection, aino, "family")
    told = [row for row, _ in collection.store.statements(Subject(Kind.PERSON, aino)) if row.field != "name"]
    new = registry.split(collection, collection.people()[aino], "Aino Pihl", statements=[row.id for row in told])
    people = collection.people()
    assert (people[new.id].audience, people[aino].audience) == ("family", "family")
    assert {row.field for row, _ in collection.store.statements(new)} == {"name", "died", "different", "audience"}
