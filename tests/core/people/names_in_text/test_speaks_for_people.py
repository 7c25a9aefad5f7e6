"""What speaks for a person and what for a thing (a rule of our own; the captions are invented, words from memory)."""

from pathlib import Path

from tests.every_row import every_row

from boxlore.core.people.names_in_text.names_by_shape import names_by_shape

CASES = [line for line in (Path(__file__).parent / "cases" / "weighed.txt").read_text("utf-8").splitlines() if line]


def marked(sign: str) -> list[str]:
    return [line.removeprefix(f"{sign} ") for line in CASES if line.startswith(f"{sign} ")]


def asked(words: str) -> list[str]:
    return [words[start:end] for start, end in names_by_shape(words)]


@every_row("words", marked("+"))
def test_who_is_named_is_asked_about(words: str) -> None:
    assert asked(words)


@every_row("words", marked("-"))
def test_what_is_called_after_somebody_is_not(words: str) -> None:
    assert asked(words) == []


def test_few_captions_are_asked_about_that_name_nobody() -> None:
    doubted = marked("?")
    assert len(doubted) <= 0.09 * len(marked("-"))
