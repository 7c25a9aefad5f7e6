"""Who is meant by a name or a part of one. Rules of our own, no outside source; the people are invented."""

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.people.person import Person, build_person, known_names
from boxlore.core.people.who_is_meant import by_name, known_by, named, named_in, the_one
from boxlore.core.statements import Kind, Statement, Subject


def person(ident: str, **told: str) -> Person:
    subject = Subject(Kind.PERSON, ident)
    rows = [
        Statement(id=f"{ident}-{name}", act="a", subject=subject, field=name, words=words, recorded_at="2026-11-27")
        for name, words in told.items()
    ]
    return build_person(ident, [(statement, None) for statement in rows])


PEOPLE = [
    person("0000-leidaleida01", name="Leida Maria Rourke", born_as="Tamm"),
    person("0000-annikaannika", name="Annika Saar"),
    person("0000-ruthruthru01", name="Ruth Rourke", nickname="Poppet"),
    person("0000-ruthruthru02", name="Ruth Marlowe"),
    person("0000-mavismavis01", name="Mavis Hill"),
    person("0000-ruth00000003", name="Ruth"),
    person("0000-91f802147041", name="Frank Hill"),
]

MEANT = [
    ("Leida Maria Rourke", ["leidaleida01"]),
    ("leida rourke", ["leidaleida01"]),
    ("Tamm", ["leidaleida01"]),
    ("Saar", ["annikaannika"]),
    ("Poppet", ["ruthruthru01"]),
    ("Aunt Mavis", ["mavismavis01"]),
    ("Aunt Mavis Hill", ["mavismavis01"]),
    ("Ruth Marlowe", ["ruthruthru02"]),
    ("Marlowe Ruth", ["ruthruthru02"]),
    ("Marlowe Ann", []),
    ("Ann", []),
    ("Annika Tamm", []),
    ("Rourke", ["leidaleida01", "ruthruthru01"]),
    ("Ruth", ["ruthruthru01", "ruthruthru02", "ruth00000003"]),
    ("ruthru02", ["ruthruthru02"]),
    ("hru02", []),
    ("91f802147041", ["91f802147041"]),
    ("91f802147042", []),
    ("F", ["91f802147041"]),
    ("urn:uuid:0000-mavismavis01", ["mavismavis01"]),
    ("", []),
    ("?", []),
]


@every_row(("words", "idents"), MEANT)
def test_who_is_known_by_a_name_or_a_part_of_one(words: str, idents: list[str]) -> None:
    assert [match.id[5:] for match in known_by(PEOPLE, words, known_names(PEOPLE))] == idents


def test_a_name_is_had_whole_or_not_at_all() -> None:
    assert named(PEOPLE, "Tamm") == [] and named(PEOPLE, "Aunt Mavis") == []
    assert [match.name for match in named(PEOPLE, "Aunt Mavis", known_names(PEOPLE))] == ["Mavis Hill"]


@every_row("words", [words for words, _ in MEANT])
def test_a_name_looked_up_is_whose_it_is(words: str) -> None:
    known = known_names(PEOPLE)
    assert named_in(by_name(PEOPLE), words, known) == named(PEOPLE, words, known)


def test_several_are_listed_so_that_each_can_be_named() -> None:
    with pytest.raises(WrongUse) as refused:
        the_one(known_by(PEOPLE, "Rourke"), "Rourke")
    assert str(refused.value) == (
        "“Rourke” may be 2 people: Leida Maria Rourke (leidaleida01); Ruth Rourke (ruthruthru01). "
        "Give the whole name, or what stands in brackets in its place."
    )
    assert the_one(known_by(PEOPLE, "ruthruthru01"), "ruthruthru01") == PEOPLE[2]
    assert the_one([], "Nobody") is None
    with pytest.raises(WrongUse, match=r"may be 8 people: .* and 2 more"):
        the_one([*PEOPLE, PEOPLE[0]], "a")
