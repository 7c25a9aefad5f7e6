"""Consent (rules of our own; that it is ongoing: Oral History Association, Best Practices, 2018)."""

import re

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.people.consent import Consent, Matter, allowed, allows, answered, due, make_consent, to_ask_again


def test_both_ways() -> None:
    one = make_consent(["name", "picture"], "2026-11-25", capacity="guardian", by="Daniel Rourke", witness="Con Rourke")
    assert Consent.from_json(one.to_json()) == one
    assert one.words == "given by Daniel Rourke, guardian, witness Con Rourke, 2026-11-25: name, picture"
    told = make_consent(["name"], "2026-11-25", by="Daniel Rourke")
    assert told.words == "given in person, as Daniel Rourke tells, 2026-11-25: name"


def test_as_a_json_object() -> None:
    consent = make_consent(["voice", "name"], "2026-11-25", capacity="attorney", by="A", witness="B", sitting="first")
    assert consent.to_json() == {
        "given": True,
        "matters": ["name", "voice"],
        "day": "2026-11-25",
        "capacity": "attorney",
        "by": "A",
        "witness": "B",
        "sitting": "first",
    }
    assert Consent.from_json(consent.to_json()) == consent
    assert Consent.from_json({"matters": ["name"]}) == Consent(given=False, matters=frozenset({Matter.NAME}), day="")
    assert make_consent(["name"], "2026-11-25") == Consent(
        given=True, matters=frozenset({Matter.NAME}), day="2026-11-25"
    )


CHOICES = "For: name, picture, voice. As: self, attorney, guardian. The day as YYYY-MM-DD."
WHO_AND_BEFORE = "Say who gives it and before whom."

REFUSALS = [
    ({"matters": []}, "Consent to what?", "Say one or more of: name, picture, voice."),
    ({"matters": ["everything"]}, "That is no consent", CHOICES),
    ({"capacity": "neighbour"}, "That is no consent", CHOICES),
    ({"day": "soon"}, "That is no consent", CHOICES),
    ({"capacity": "guardian", "by": "Daniel"}, "Consent by a guardian needs their name and a witness.", WHO_AND_BEFORE),
    (
        {"capacity": "attorney", "witness": "Con"},
        "Consent by an attorney needs their name and a witness.",
        WHO_AND_BEFORE,
    ),
]


@pytest.mark.parametrize(("wrong", "problem", "what_to_do"), REFUSALS)
def test_what_must_be_told(wrong: dict[str, object], problem: str, what_to_do: str) -> None:
    with pytest.raises(WrongUse, match=f"^{re.escape(problem)}") as refused:
        make_consent(**{"matters": ["name"], "day": "2026-11-25", **wrong})  # type: ignore[arg-type]
    assert refused.value.what_to_do == what_to_do


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
    with pytest.raises(WrongUse, match="Daniel Rourke, guardian, says so before a witness") as refused:
        answered([given, no_voice], given=True, day="2026-11-25", sitting="two")
    assert refused.value.what_to_do == "Say before whom."
    again = answered([given, no_voice], given=True, day="2026-11-25", sitting="two", witness="Joan Tamm")
    assert again.words == "given by Daniel Rourke, guardian, witness Joan Tamm, 2026-11-25: name"
    assert again.sitting == "two"
    taken_back = answered([given, no_voice], given=False, day="2026-11-25", sitting="two")
    assert not allowed([given, no_voice, taken_back])
    assert not due([given, no_voice, taken_back], "three"), "a no is not asked again"
