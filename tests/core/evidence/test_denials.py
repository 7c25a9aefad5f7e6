"""A date that is denied bounds nothing until somebody has said which is so: by hand, common practice, no source."""

from dataclasses import replace

from tests.core.evidence.family import BACK, LEIDA, days_of, item, told, worked_out
from tests.every_row import every_row

from boxlore.core.evidence.claims import of_item
from boxlore.core.evidence.proposals import proposal
from boxlore.core.statements import Sure

WRITTEN = told("inscription", "1948", source=BACK)

DENIED = (
    "It wasn't 1948, whatever the back says. It was after Gert was born.",
    "The back is wrong, it was years later.",
    "It cannot have been 1948.",
    "The back says 1948, but that is wrong.",
    "1948 can't be right.",
    "Don't believe the back.",
    "Not 1948!",
    "The date on the back is wrong.",
    "Das war nicht 1948.",
    "Hinten steht 1948, aber das stimmt nicht.",
    "Die Jahreszahl ist falsch.",
    "See ei olnud 1948.",
    "Aastaarv on vale.",
    "Ce n'était pas en 1948.",
    "La date est fausse.",
    "No fue en 1948.",
    "La fecha está mal.",
    "Det var inte 1948.",
    "It was later than it says on the back.",
    "Somebody wrote 1948 on it, but it was years earlier.",
    "It says 1948, which can't be.",
    "1948? Never.",
    "1948 is too early.",
    "The date is too late.",
    "I don't think it was 1948.",
    "Auf der Rückseite steht das falsche Jahr.",
    "El año del dorso está equivocado.",
    "Det står 1948 men det är fel.",
    "Non era il 1948.",
)


@every_row(("words",), [(words,) for words in DENIED])
def test_what_is_denied_and_its_denial_are_one_circle(words: str) -> None:
    worked = worked_out([item("i", WRITTEN, told("story", words, source=LEIDA))])
    (circle,) = worked.circles
    assert {claim.statement for claim in circle.claims} == {"inscription 1948", f"story {words}"}
    assert not proposal(worked, of_item("i")).edtf


KEPT = (
    "It was 1948.",
    "I was not born in 1948.",
    "He came home in 1948, I never saw him.",
    "Not 1951.",
    "It may have been 1948.",
    "It was 1948, not 1949.",
    "It was the summer after the year of the flood.",
    "He was not there in 1948.",
)


@every_row(("words",), [(words,) for words in KEPT])
def test_what_is_said_of_something_else_denies_no_date(words: str) -> None:
    worked = worked_out([item("i", WRITTEN, told("story", words, source=LEIDA))])
    assert not worked.circles and days_of(worked, "i") == "1946-01-01 1948-12-31"


def test_a_date_that_is_told_is_denied_too_and_neither_gives_way_in_silence() -> None:
    dated = told("date", "July 1948")
    denial = told("story", "It was not 1948 but 1951.", source=LEIDA)
    assert len(worked_out([item("i", dated, denial)]).circles) == 1
    assert days_of(worked_out([item("i", dated)]), "i") == "1948-07-01 1948-07-31"
    guess = replace(denial, sure=Sure.GUESS)
    assert days_of(worked_out([item("i", dated, guess)]), "i") == "1948-01-01 1948-12-31"


def test_of_two_years_that_are_written_only_the_denied_one_is_held_against() -> None:
    other = told("inscription", "1952", source=BACK)
    worked = worked_out([item("i", WRITTEN, other, told("story", "It was not 1948.", source=LEIDA))])
    assert any("1952" in claim.words for claim in worked.because("item i"))
    two = worked_out([item("i", WRITTEN, told("story", "Not 1947, not 1948.", source=LEIDA))])
    assert len(two.circles) == 1
