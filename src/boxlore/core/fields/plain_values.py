"""Words that need no cutting up, or hold one plain value: told text, an id, a day, a count, yes or no."""

from datetime import date

from boxlore.core.fields.codec import Codec, one_word, whole


def _same(words: str) -> str:
    return words


TEXT: Codec[str] = Codec("text", "Write it in words.", _same, _same)
"""Words for people: the value is the words. Any words can be read."""

START = 200
"""Characters at the beginning of text by which names and places complete what is typed."""

START_SQL = f"substr(words, 1, {START})"
"""SQLite: the beginning of text."""

ID_WORDS: Codec[str] = Codec("id", "Write the id of one thing.", one_word, one_word)


def _parse_id_or_none(words: str) -> str:
    return one_word(words) if words else ""


OPEN_ID_WORDS: Codec[str] = Codec("id", "Write the id of one thing, or nothing.", _parse_id_or_none, _parse_id_or_none)
"""The id of a thing, or nothing: a marker that was taken away is on no scan."""


def _parse_day(words: str) -> date:
    if len(words) != 10:  # fromisoformat reads other forms of ISO 8601 too, which are never written
        raise ValueError(words)
    return date.fromisoformat(words)


DAY_WORDS: Codec[date] = Codec("day", "Write it as YYYY-MM-DD, such as 2026-11-25.", date.isoformat, _parse_day)
COUNT_WORDS: Codec[int] = Codec("count", "Write a whole number, such as 40.", str, whole)

_ANSWERS = {"yes": True, "no": False}


def _write_answer(value: bool) -> str:
    return "yes" if value else "no"


def _parse_answer(words: str) -> bool:
    if words not in _ANSWERS:
        raise ValueError(words)
    return _ANSWERS[words]


YES_NO_WORDS: Codec[bool] = Codec("answer", "Write yes or no.", _write_answer, _parse_answer)
