"""The question when an event was, and what it asks about (our own wording)."""

import pytest

from boxlore.core.dates.event_question import asked_birth, asked_event, when_born, when_was
from boxlore.core.dates.phrases import read

ASKED = [  # words, the question, the event that it asks about
    ("the christening", "When was the christening?", "the christening"),
    ("of the flood", "When was the flood?", "the flood"),
    ("Grandma’s wedding.", "When was Grandma’s wedding?", "Grandma’s wedding"),
    ("we came to Dunedin", "“we came to Dunedin”: when was that?", "we came to Dunedin"),
    ("when Joe came home", "“Joe came home”: when was that?", "Joe came home"),
    ("pulmad", "“pulmad”: when was that?", "pulmad"),
]


@pytest.mark.parametrize(("words", "question", "event"), ASKED)
def test_the_question_is_a_sentence_and_names_its_event(words: str, question: str, event: str) -> None:
    assert when_was(words) == question
    assert asked_event(question) == event


@pytest.mark.parametrize("question", ["", "When was Anna born?", "Day or month first?", "When were you born?"])
def test_another_question_asks_about_no_event(question: str) -> None:
    assert asked_event(question) == ""


@pytest.mark.parametrize("name", ["", "Anna", "my mother", "Anna born Tamm"])
def test_whose_birth_is_asked_is_read_back(name: str) -> None:
    assert asked_birth(when_born(name)) == name


@pytest.mark.parametrize("question", ["", "When was the christening?", "“Joe came home”: when was that?"])
def test_another_question_asks_about_no_birth(question: str) -> None:
    assert asked_birth(question) is None


SAID = [
    ("three years after we came to Dunedin", "“we came to Dunedin”: when was that?"),
    ("the year Joe joined the navy", "“Joe joined the navy”: when was that?"),
    ("when Grandpa died", "“when Grandpa died”: when was that?"),
    ("the year of the flood", "When was the flood?"),
]


@pytest.mark.parametrize(("words", "question"), SAID)
def test_a_phrase_that_leans_on_what_is_not_known(words: str, question: str) -> None:
    assert read(words).ask == question
