"""Consent (rules of our own; that it is ongoing: Oral History Association, Best Practices, 2018)."""

import re

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.people.consent import Consent, Matter, allowed, allows, answered, due, make_consent, to_ask_again


def test_both_ways() -> None:
    one = make_consent(["name", "picture"], "2026-11-25", capacity="guardian", by="Daniel Rourke", witness="Con Rourke")
    assert Consent.from_json(one.to_json()) == one
    assert one.words == "given by Daniel Rourke, guardian, witness Con Rourke, 2026-11-25: name, picture"


REFUSALS = [
    ({"matters": []}, "Consent to what?"),
    ({"matters": ["everything"]}, "That is no consent"),
    ({"capacity": "neighbour"}, "That is no consent"),
    ({"day": "soon"}, "That is no consent"),
    ({"capacity": "guardian", "by": "Daniel"}, "needs their name and a witness"),
    ({"capacity": "attorney", "witness": "Con"}, "Consent by an attorney needs their name and a witness"),
]


@pytest.mark.parametrize(("wrong", "said"), REFUSALS)
def test_what_must_be_told(wrong: dict[str, object], said: str) -> None:
    with pytest.raises(WrongUse, match=re.escape(said)):
        make_consent(**{"matters": ["name"], "day": "2026-11-25", **wrong})  # type: ignore[arg-type]


def test_anyone_may_withdraw_without_a_witness() -> None:
    assert not make_consent(["name"], "2026-11-25", given=False, capacity="guardian").given


def test_the_last_word_stands() -> None:
    yes, no = make_consent(["name"], "2026-01-01"), make_consent(["name"], "2026-02-01", given=False)
    assert not allows([], Matter.NAME)
    assert allows([yes], Matter.NAME) and not allows([yes], Matter.PICTURE)
    assert not allows([yes, no], Matter.NAME) and allows([no, yes], Matter.NAME)


def test_it_is_asked_again_at_each_sitting() -> None:
    one = make_consent(["name"], "2026-01-01", sitting="first")
    assert not to_ask_again([one], "first") and to_ask_again([one], "second") and to_ask_again([], "first")


@pytest.mark.parametrize("value", [{}, {"matters": "name"}, {"matters": ["all"]}, {"matters": [], "capacity": "x"}])
def test_other_values_are_no_consent(value: dict[str, object]) -> None:
    with pytest.raises(ValueError, match=r"."):
        Consent.from_json(value)


def test_only_what_is_allowed_is_asked_about_again_and_once_a_sitting() -> None:
    by_guardian = {"capacity": "guardian", "by": "Daniel Rourke", "witness": "Con Rourke"}
    given = make_consent(["name", "voice"], "2026-01-05", sitting="one", **by_guardian)  # type: ignore[arg-type]
    no_voice = make_consent(["voice"], "2026-02-05", given=False)
    assert not due([], "two"), "nothing was ever allowed"
    assert due([given, no_voice], "two")
    assert not due([given, no_voice], "one"), "asked in this very sitting"
    assert not due([given, no_voice], ""), "no sitting, nobody to ask"
    with pytest.raises(WrongUse, match="before a witness"):
        answered([given, no_voice], given=True, day="2026-11-25", sitting="two")
    again = answered([given, no_voice], given=True, day="2026-11-25", sitting="two", witness="Joan Tamm")
    assert again.words == "given by Daniel Rourke, guardian, witness Joan Tamm, 2026-11-25: name"
    taken_back = answered([given, no_voice], given=False, day="2026-11-25", sitting="two")
    assert not allowed([given, no_voice, taken_back])
    assert not due([given, no_voice, taken_back], "three"), "a no is not asked again"
