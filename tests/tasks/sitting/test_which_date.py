"""Which date is meant: the question, its choices in their order, and what a choice is kept as (rules of our own)."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.prompts import PROMPTS
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.which_date import birth_asked, choose_date, open_date, read_date, say_date
from boxlore.tasks.sitting.which_meant import choose_meant, open_question

WHEN = next(prompt for prompt in PROMPTS if prompt.field == "date")
WHERE = next(prompt for prompt in PROMPTS if prompt.field == "place")


@pytest.fixture
def sitting(bare) -> Iterator[Sitting]:  # type: ignore[no-untyped-def]
    home: Path = bare(2)
    with open_collection(home) as opened:
        yield Sitting(opened)


def item(collection: Collection) -> str:
    return collection.store.item_by_number("TRA-0001") or ""


ASKED = [  # what is told, the question, the choices as EDTF
    ("Easter ’64", "“Easter ’64”: is 1964 meant?", ("1964-03-29", "1864-03-27")),
    ("the '50s", "“the '50s”: are the 1950s meant?", ("195X", "185X")),
    ("7/4/52", "“7/4/52”: day or month first?", ("1952-04-07", "1952-07-04", "[1952-04-07,1952-07-04]")),
    ("1904-05", "“1904-05”: is May 1904 or 1904–1905 meant?", ("1904/1905", "1904-05")),
    (
        "turn of the century",
        "“turn of the century”: is the turn to 1900 meant?",
        ("1895~/1905~", "1995~/2005~"),
    ),
    ("2091", "“2091”: that is a year to come. Is it meant?", ("2091",)),
    ("Christmas", "“Christmas”: in which year?", ("XXXX-12-25",)),
    ("the christening", "“the christening”: when was the christening?", ()),
    ("three years after we came over", "“we came over”: when was that?", ()),
    ("when I was six", "“when I was six”: when were you born?", ()),
    ("1938", None, ()),
    ("hats and coats", None, ()),
]  # fmt: skip


@pytest.mark.parametrize(("told", "asks", "choices"), ASKED)
def test_the_question_and_its_choices(sitting: Sitting, told: str, asks: str | None, choices: tuple[str, ...]) -> None:
    ident = item(sitting.collection)
    sitting.keep(sitting.record(ident), WHEN, told)
    question = open_date(sitting, sitting.record(ident), WHEN)
    assert (question.asks if question else None) == asks
    assert (question.choices if question else ()) == choices
    assert open_question(sitting, sitting.record(ident), WHERE) is None


def test_whose_birth_an_age_asks_for(sitting: Sitting) -> None:
    ident = item(sitting.collection)
    sitting.start_with("Leida Rourke")
    sitting.keep(sitting.record(ident), next(prompt for prompt in PROMPTS if prompt.field == "person"), "Joan Tamm")
    for told, name in (
        ("when I was six", "Leida Rourke"), ("when Joan Tamm was six", "Joan Tamm"), ("when Ruth Pell was six", ""),
        ("the christening", ""),
    ):  # fmt: skip
        sitting.keep(sitting.record(ident), WHEN, told)
        question = open_date(sitting, sitting.record(ident), WHEN)
        person = birth_asked(sitting, question) if question else None
        assert (told, person.name if person else "") == (told, name)


def test_a_choice_is_kept_and_the_words_stay(sitting: Sitting) -> None:
    ident = item(sitting.collection)
    sitting.keep(sitting.record(ident), WHEN, "7/4/52")
    question = open_question(sitting, sitting.record(ident), WHEN)
    assert question is not None
    with pytest.raises(WrongUse, match="There is no choice of that number"):
        choose_date(sitting, sitting.record(ident), question, 4)  # type: ignore[arg-type]
    assert choose_meant(sitting, sitting.record(ident), question, 2) == "4 July 1952"
    record = sitting.record(ident)
    assert (record.edtf, record.words("date"), open_question(sitting, record, WHEN)) == ("1952-07-04", "7/4/52", None)
    sitting.undo()
    again = open_question(sitting, sitting.record(ident), WHEN)
    assert again is not None and again.names == question.names


SAID = [  # what is told, the other words of the keeper, the date kept, or what is wrong with the words
    ("hats and coats", "about 1957", "1957~", ""),
    ("7/4/52", "summer of 1953", "1953-22", ""),
    ("1938", "7 April 1952", "1952-04-07", ""),
    ("1938", "hats", "", "“hats” is not read as a date. Write 1952, about 1950, or summer of 1953."),
    ("1938", " ", "", "is not read as a date"),
    ("1938", "7/4/52", "", "“7/4/52”: day or month first? Write it so that it can be one date only."),
]  # fmt: skip


@pytest.mark.parametrize(("told", "other", "edtf", "wrong"), SAID)
def test_what_was_told_is_said_in_other_words(sitting: Sitting, told: str, other: str, edtf: str, wrong: str) -> None:
    ident = item(sitting.collection)
    assert read_date(sitting, sitting.record(ident), WHEN) is None
    sitting.keep(sitting.record(ident), WHEN, told)
    before = sitting.record(ident).edtf
    question = read_date(sitting, sitting.record(ident), WHEN)
    assert question is not None and read_date(sitting, sitting.record(ident), WHERE) is None
    if wrong:
        with pytest.raises(WrongUse) as raised:
            say_date(sitting, sitting.record(ident), WHEN, question, other)
        assert wrong in str(raised.value) and sitting.record(ident).edtf == before
        return
    say_date(sitting, sitting.record(ident), WHEN, question, other)
    record = sitting.record(ident)
    assert (record.edtf, record.words("date"), open_question(sitting, record, WHEN)) == (edtf, told, None)
    sitting.undo()
    assert sitting.record(ident).edtf == before
