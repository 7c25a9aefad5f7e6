"""Likely duplicates (weights of our own; common practice, no source)."""

from dataclasses import replace

import pytest
from tests.every_row import every_row

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.duplicates import WEIGHTS, excluded, propose
from boxlore.core.people.person import Person


def person(ident: str, given: str, family: str, born: str = "", **more: object) -> Person:
    year = DateReading.from_edtf(born) if born else None
    name = str(more.pop("name", f"{given} {family}".strip()))
    values: dict[str, object] = {"forms": (name,), "calls": (given,), "surnames": (family,) if family else ()}
    return Person(id=ident, name=name, sort_name=name, born=year, **{**values, **more})  # type: ignore[arg-type]


PROPOSED = [
    ("Ruth", "Tamm", "1912", "Ruth", "Tamm", "1912", True),
    ("Peggy", "Rourke", "1912", "Margaret", "Rourke", "1912", True),
    ("Catherine", "Rourke", "1912-05-03", "Catharine", "Roorke", "1912-05-03", True),
    ("M.", "Rourke", "1912-05-03", "Mia", "Rourke", "1912-05-03", True),
    ("Ruth", "Tamm", "", "Ruth", "Tamm", "", True),
    ("Ruth", "Tamm", "1912", "Ruth", "Tamm", "1950", False),
    ("Ruth", "Tamm", "1912", "Anna", "Tamm", "1912", False),
    ("Ruth", "Tamm", "1912", "Ruth", "Rourke", "1912", False),
    ("Ruth", "Tamm", "1912", "Ruth", "Tamm", "1915~", True),
]  # fmt: skip


@every_row("case", PROPOSED)
def test_proposals(case: tuple[str, str, str, str, str, str, bool]) -> None:
    one, other = person("a", *case[:3]), person("b", *case[3:6])
    assert bool(propose([one, other])) is case[6]
    assert bool(propose([other, one])) is case[6]


EXCLUDED = [
    {"sex": "male"}, {"different": ("a",)}, {"parents": ("a",)}, {"spouses": ("a",)},
    {"died": DateReading.from_edtf("1930")},
]  # fmt: skip


@pytest.mark.parametrize("more", EXCLUDED)
def test_what_ends_it(more: dict[str, object]) -> None:
    died = DateReading.from_edtf("1944")
    one = person("a", "Ruth", "Tamm", "1912", sex="female", died=died)
    assert propose([one, person("b", "Ruth", "Tamm", "1912")])
    other = person("b", "Ruth", "Tamm", "1912", **more)
    assert excluded(one, other) and not propose([one, other])


def test_side_by_side_in_a_picture_they_are_two() -> None:
    pair = [person("a", "Ruth", "Tamm"), person("b", "Ruth", "Tamm")]
    assert propose(pair) and not propose(pair, [("b", "a")])


def test_the_same_kin_speaks_for_it_and_says_so() -> None:
    mother = person("m", "Helmi", "Tamm")
    (found,) = propose(
        [mother, person("a", "Ruth", "Tamm", parents=("m",)), person("b", "Ruthie", "Tamm", parents=("m",))]
    )
    assert "same parent" in found.because and "pet form" in found.because
    assert found.weight == sum(WEIGHTS[one] for one in found.because)


def test_a_large_group_is_still_searched() -> None:
    crowd = [
        person(f"c{at}", f"{chr(65 + at % 26)}x{chr(97 + at // 26)}", "Tamm", str(1800 + at % 150)) for at in range(600)
    ]
    twins = [person("a", "Ruth", "Tamm", "1910"), person("b", "Ruth", "Tamm", "1910")]
    assert ("a", "b") in {(one.one, one.other) for one in propose([*crowd, *twins])}


def test_nobody_with_no_name_is_proposed_for_everybody() -> None:
    assert propose([person("a", "", ""), person("b", "", "")]) == []


@pytest.mark.parametrize(
    ("first", "second", "reason"),
    [
        ({"born": "1912"}, {"born": "1912-05-03"}, "born the same year"),
        ({"born": "1912-05-03"}, {"born": "1912-05-03"}, "born the same day"),
        ({"born": "1912"}, {"born": "1912"}, "born the same year"),
    ],
)
def test_how_near_two_births_are_is_said(first: dict[str, str], second: dict[str, str], reason: str) -> None:
    pair = [person("a", "Ruth", "Tamm", **first), person("b", "Ruth", "Tamm", **second)]  # type: ignore[arg-type]
    (proposal,) = propose(pair)
    assert reason in proposal.because


def test_a_death_in_the_same_year_speaks_for_it() -> None:
    died = DateReading.from_edtf("1980")
    (proposal,) = propose([person(ident, "Ruth", "Tamm", died=died) for ident in ("a", "b")])
    assert "died the same year" in proposal.because


def test_two_without_a_family_name_have_none_in_common() -> None:
    born = "1912-05-03"
    mother = person("m", "Helmi", "Tamm")
    pair = [person(ident, "Ruth", "", born, parents=("m",)) for ident in ("a", "b")]
    (proposal,) = [row for row in propose([mother, *pair]) if {row.one, row.other} == {"a", "b"}]
    assert "same family name" not in proposal.because and "family name sounds alike" not in proposal.because


REASONS = [
    ({"given": "Ruth"}, {"given": "Ruth"}, ["same name", "same family name"]),
    ({"given": "Peggy"}, {"given": "Margaret", "born": "1912"}, []),
    ({"given": "Peggy", "born": "1912"}, {"given": "Margaret", "born": "1912"},
     ["pet form", "same family name", "born the same year"]),
    ({"given": "Catherine", "born": "1912-05-03"}, {"given": "Catharine", "born": "1912-05-03"},
     ["slip in the given name", "same family name", "born the same day"]),
    ({"given": "M.", "born": "1912-05-03"}, {"given": "Mia", "born": "1912-05-03"},
     ["initial", "same family name", "born the same day"]),
    ({"given": "Ruth", "family": "Tam", "born": "1912"}, {"given": "Ruth", "family": "Tamm", "born": "1912"},
     ["same given name", "family name sounds alike", "born the same year"]),
    ({"given": "Ruth", "born": "1912"}, {"given": "Ruth", "born": "1913~"}, ["same name", "same family name"]),
    ({"given": "Ruth", "spouses": ("con",)}, {"given": "Ruth", "spouses": ("con",)},
     ["same name", "same family name", "same spouse"]),
    ({"given": "Ruth", "spouses": ("con",)}, {"given": "Ruth", "spouses": ("con2",)},
     ["same name", "same family name", "same spouse"]),
    ({"given": "Ruth", "spouses": ("con",)}, {"given": "Ruth", "spouses": ("nobody",)},
     ["same name", "same family name"]),
    ({"given": "Ruth", "spouses": ("nobody",)}, {"given": "Ruth", "spouses": ("nobody2",)},
     ["same name", "same family name"]),
]  # fmt: skip


@every_row(("first", "second", "because"), REASONS)
def test_what_speaks_for_it(first: dict[str, object], second: dict[str, object], because: list[str]) -> None:
    others = [
        person("con", "Con", "Rourke"),
        person("con2", "Con", "Rourke", different=("con",)),
        person("nobody", "", "", name="someone", calls=()),
        person("nobody2", "", "", name="someone", calls=()),
    ]
    pair = [person(ident, **{"family": "Tamm", **parts}) for ident, parts in (("a", first), ("b", second))]  # type: ignore[arg-type]
    reasons = [list(proposal.because) for proposal in propose([*others, *pair])]
    assert reasons == ([because] if because else [])


def test_the_same_child_speaks_for_it() -> None:
    child = person("c", "Mia", "Muir", parents=("a", "b"))
    pair = [person("a", "Ruth", "Tamm"), person("b", "Ruthie", "Tamm")]
    (proposal,) = propose([child, *pair])
    assert "same child" in proposal.because


YEARS = [
    ("1912", "1914", False), ("1912-05-03", "1912-05-04", True), ("1912~", "1918~", False), ("1912~", "1917~", True),
    ("1917~", "1912~", True), ("1918~", "1912~", False), ("1910/1914", "1914/1920", True), ("191X", "1912", True),
]  # fmt: skip


@every_row(("born", "candidate_born", "may_be"), YEARS)
def test_births_that_can_be_one_and_those_that_cannot(born: str, candidate_born: str, may_be: bool) -> None:
    """An approximate year may be five years out (our own rule, as in core/people/latest_birth.py)."""
    assert excluded(person("a", "Ruth", "Tamm", born), person("b", "Ruth", "Tamm", candidate_born)) is not may_be


def test_those_of_whom_only_a_whole_name_is_told_are_compared_by_its_last_word() -> None:
    pair = [person(ident, "", "", name=name, calls=()) for ident, name in (("a", "Ruth Tamm"), ("b", "Ruth Anna Tamm"))]
    mother = person("m", "Helmi", "Tamm")
    pair = [replace(member, parents=("m",)) for member in pair]
    (proposal,) = propose([*pair, mother])
    assert proposal.because == ("same given name", "same family name", "same parent")


@pytest.mark.parametrize(("born", "other_born"), [("1909~", "1910~"), ("1910~", "1909~"), ("", "")])
def test_in_a_large_group_births_at_the_turn_of_a_decade_are_compared(born: str, other_born: str) -> None:
    crowd = [
        person(f"c{at}", f"{chr(65 + at % 26)}x{chr(97 + at // 26)}", "Tamm", str(1800 + at % 90)) for at in range(600)
    ]
    peggy, margaret = person("a", "Peggy", "Tamm", born), person("b", "Margaret", "Tamm", other_born)
    mother = person("m", "Helmi", "Tamm", "1880")
    family = [replace(member, parents=("m",)) for member in (peggy, margaret)]
    reasons = {(row.one, row.other): row.because for row in propose([*crowd, mother, *family])}
    assert reasons["a", "b"][0] == "pet form"
