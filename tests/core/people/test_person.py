"""Names as told, their sort form (DACS 2.5 follows the order of the name; the forms are our own rule)."""

import json
from typing import Any

from boxlore.core.people.person import Person, build_person, build_registry
from boxlore.core.statements import Kind, Reading, Statement, Subject, Sure


def build(*rows: tuple[str, str, Reading | None]) -> Person:
    statements = [
        (
            Statement(
                id=str(at),
                act="a",
                subject=Subject(Kind.PERSON, "p"),
                field=field,
                words=words,
                recorded_at="",
            ),
            reading,
        )
        for at, (field, words, reading) in enumerate(rows)
    ]
    return build_person("p", statements, json.loads)


def reading(kind: str, **value: Any) -> Reading:
    return Reading(kind, json.dumps(value), "test")


def test_a_person_with_all_names() -> None:
    leida = build(
        ("given", "Leida Johanna", None), ("born_as", "Tamm", None), ("married_as", "Rourke", None),
        ("nickname", "Leidi", None), ("born", "1941", reading("date", edtf="1941", latest="1941-12-31")),
        ("mother", "Helmi", reading("person", id="helmi")),
    )  # fmt: skip
    assert (leida.name, leida.sort_name) == ("Leida Johanna Rourke", "Rourke, Leida Johanna")
    assert {"Leida Tamm", "L. J. Rourke", "Tamm, Leida", "Leidi Rourke"} <= set(leida.forms)
    assert leida.calls == ("Leida Johanna", "Leidi")
    assert leida.born["edtf"] == "1941"
    assert leida.parents == ("helmi",)


def test_someone_known_only_by_a_description_is_a_person() -> None:
    tall = build(("name", "the tall man with the accordion", None))
    assert tall.name == tall.sort_name == "the tall man with the accordion"
    assert tall.forms == ("the tall man with the accordion",)


def test_nobody_told_is_someone() -> None:
    assert build().name == "someone"


def test_readings_that_ask_and_words_not_known_are_not_used() -> None:
    asked = Reading("date", json.dumps({"edtf": "1941"}), "test", asks=True)
    assert build(("born", "’41", asked)).born == {}
    unknown = Statement(
        id="1",
        act="a",
        subject=Subject(Kind.PERSON, "p"),
        field="given",
        words="",
        sure=Sure.NOT_KNOWN,
        recorded_at="",
    )
    assert build_person("p", [(unknown, None)], json.loads).calls == ()


def entry(ident: str, *rows: tuple[str, str, Reading | None]) -> tuple[str, list[tuple[Statement, Reading | None]]]:
    return ident, [
        (Statement(id=f"{ident}{at}", act="a", subject=Subject(Kind.PERSON, ident), field=field, words=words,
                   recorded_at=""), read)
        for at, (field, words, read) in enumerate(rows)
    ]  # fmt: skip


def test_merged_entries_are_one_person_under_the_first_ones_name() -> None:
    people = build_registry(
        [
            entry("a", ("name", "Leida", None)),
            entry("b", ("name", "Leidi Tamm", None), ("born", "1941", reading("date", edtf="1941")),
                  ("merged_into", "a", None)),
            entry("c", ("name", "Mia", None), ("mother", "Leidi", reading("person", id="b"))),
        ],
        json.loads,
    )  # fmt: skip
    assert len(people) == 2 and list(people) == ["a", "c"]
    assert people["b"] is people["a"]
    assert (people["a"].name, people["a"].born["edtf"], people["a"].also) == ("Leida", "1941", ("b",))
    assert people["c"].parents == people["c"].mothers == ("a",)
    assert people.names() == {"a": "Leida", "b": "Leida", "c": "Mia"}
    assert people["a"].uri == "urn:uuid:a"


def test_merging_in_a_circle_or_into_someone_gone_is_borne() -> None:
    circle = build_registry(
        [entry("a", ("merged_into", "b", None)), entry("b", ("merged_into", "a", None))], json.loads
    )
    assert len(circle) == 1 and circle["a"] is circle["b"]
    alone = build_registry([entry("a", ("merged_into", "gone", None))], json.loads)
    assert list(alone) == ["a"]


def test_lost_at_sea_is_a_death_without_a_date() -> None:
    assert build(("name", "Ruth's friend", None), ("died", "later lost at sea", None)).dead
