"""Names taken apart and listed, by the rows of `cases/names.txt`, which names its sources."""

from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.people.names.parts import PART_LABELS, PARTS, NameParts, Tradition
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.sort_form import sort_form
from boxlore.core.people.names.traditions import TRADITIONS, KnownNames

CASES = [
    tuple(piece.strip() for piece in line.split("|"))
    for line in (Path(__file__).parent / "cases" / "names.txt").read_text(encoding="utf-8").splitlines()
    if line and not line.startswith("#")
]


def parts_of(name: str, known: KnownNames | None = None) -> dict[str, str]:
    read = read_name(name, known) if known else read_name(name)
    return {part: getattr(read, part) for part in PARTS if part != "particle" and getattr(read, part)}


def wanted(text: str) -> dict[str, str]:
    return dict(piece.strip().split("=", 1) for piece in text.split(";") if piece.strip())


def test_the_cases_are_all_there() -> None:
    assert len(CASES) > 690


@every_row("case", CASES)
def test_a_name_is_taken_apart_and_listed(case: tuple[str, ...]) -> None:
    name, parts, listed, *asks = case
    assert parts_of(name) == wanted(parts)
    assert sort_form(read_name(name), name) == listed
    assert bool(read_name(name).asks) is bool(asks)


FAMILY = KnownNames(
    frozenset({"aino", "zelophehad", "marlowe", "major"}), frozenset({"rusk", "tamm", "pippa", "thomas"})
)
BY_THE_FAMILY = [
    ("Rusk Aino", {"given": "Aino", "family": "Rusk"}),
    ("Tamm", {"family": "Tamm"}),
    ("Thomas", {"given": "Thomas"}),
    ("aino tamm", {"given": "aino", "family": "tamm"}),
    ("Major Rusk", {"given": "Major", "family": "Rusk"}),
    ("Uncle Rusk", {"kin": "Uncle", "family": "Rusk"}),
    ("Sister Mary Thomas", {"title": "Sister", "given": "Mary", "family": "Thomas"}),
    ("Sister Zelophehad", {"title": "Sister", "religious": "Zelophehad"}),
    ("Miss Aino", {"title": "Miss", "given": "Aino"}),
    ("zelophehad rusk", {"given": "zelophehad", "family": "rusk"}),
    ("Granny Zelophehad", {"kin": "Granny", "given": "Zelophehad"}),
]


def test_a_name_that_is_both_is_a_family_name_behind_a_title() -> None:
    known = KnownNames(frozenset({"zelophehad"}), frozenset({"zelophehad"}))
    assert parts_of("Mr. Zelophehad", known) == {"title": "Mr.", "family": "Zelophehad"}


@every_row(("name", "parts"), BY_THE_FAMILY)
def test_the_names_of_the_family_decide(name: str, parts: dict[str, str]) -> None:
    assert parts_of(name, FAMILY) == parts


BOTH_WAYS = [
    NameParts(given="Pippa", family="Marlowe"),
    NameParts(given="Te Rangi", family="Hīroa", tradition=Tradition.MAORI, asks="Is “Hīroa” a family name?"),
    NameParts(),
]


@pytest.mark.parametrize("parts", BOTH_WAYS, ids=str)
def test_parts_go_both_ways(parts: NameParts) -> None:
    assert NameParts.from_json(parts.to_json()) == parts
    assert bool(parts) is bool(parts.given)


REFUSED = [{"tradition": "european", "given": 7}, {"tradition": "martian"}, {"given": "Pippa"}]


@pytest.mark.parametrize("data", REFUSED, ids=str)
def test_what_is_no_taken_apart_name_is_refused(data: dict[str, object]) -> None:
    with pytest.raises((KeyError, ValueError)):
        NameParts.from_json(data)


def test_every_part_has_a_label_and_every_tradition_a_row() -> None:
    assert set(PART_LABELS) == set(PARTS)
    reached = {read_name(name).tradition for name, *_ in CASES}
    assert reached == set(Tradition)
    assert len(TRADITIONS) == len(set(TRADITIONS))


@drawn(200)
@given(st.text(max_size=40) | st.lists(st.sampled_from([case[0] for case in CASES]), max_size=3).map(" ".join))
def test_any_words_are_read_and_nothing_is_made_up(words: str) -> None:
    read = read_name(words)
    for part in PARTS:
        for piece in getattr(read, part).split():
            assert piece in words
    assert sort_form(replace(read, asks=""), words) is not None
