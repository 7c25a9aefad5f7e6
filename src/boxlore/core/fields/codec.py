"""How the words of a field are written and read: one codec a field, and nobody else takes words apart.

Theory of operation
===================

The problem. The log keeps everything as words: what a grandmother told, and also where an item lies, which file a
scan is, when a picture was shown. Told words are for people and stay as they were said. The others are small
languages: `0190…e1 3` says "in that container, at position 3", and `{"path": …, "sha256": …}` describes a file. If
every module cuts such words up by itself, two of them differ sooner or later, a blank in the wrong place ends as a
bare ValueError far away, and nobody can say what may stand in a field.

The idea. Each row of `core.fields.table.FIELDS` names the codec of its words. A codec is a pair: `write` makes words
of a value, `read` makes the value of words. Values are frozen dataclasses (`Kept`, `Link`, `FileFacts`, …), or plain
ones where that says it all (a day, a count). Text that people told has the codec TEXT, whose value is the text itself.
The codecs stand in this wing, by what they are about: `originals`, `pictures`, `sittings`, `points`, `plain`.

There are three ways to read, by where the words come from and what the caller can do:

    read     from the log; words that cannot be read mean damage, and raise CouldNot
    typed    from somebody's hand, or on the way into the log; raises WrongUse, saying what may be written
    or_none  from the log, where older versions let anything in; the caller goes on without, `boxlore check` names it

What always holds.

* `read(write(value)) == value` for every value, and `write` gives one line of words for each value.
* Words that an earlier version wrote are read for ever (each such shape is named at its codec). Only one shape is
  written.
* A statement comes into the log only if its codec can read its words (`core.fields.guard`).
* Where SQLite has to look inside words, for an index or a join, the expression is a named constant beside the codec
  that it belongs to, and a test holds the two together. No other SQL cuts words up.

A worked example. An item is put in the third position of a folder whose id is `0190a1b2-…`:

    words = KEPT_WORDS.write(Kept("0190a1b2-…", 3))        # "0190a1b2-… 3"
    act.state(item, "kept", words)                         # the guard reads the words again before they are taken
    KEPT_WORDS.read(words).position                        # 3
    KEPT_WORDS.typed("in the attic")                       # WrongUse: “in the attic” is no place in a container. …
    KEPT_WORDS.or_none("in the attic")                     # None: the record has no mark, and check says why
"""

import json
from collections.abc import Callable
from dataclasses import dataclass
from typing import Generic, TypeVar

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.findings import one_line

Value = TypeVar("Value")

UNREADABLE = (ValueError, TypeError, OverflowError, RecursionError)
"""What taking words apart may end in: the last two for numbers and for JSON that no writer of ours makes."""

DAMAGED = "The collection is damaged, or another program wrote to it. Go back to a backup."


@dataclass(frozen=True, slots=True)
class Codec(Generic[Value]):
    """The words of one field, written and read.

    `what` is what they say, in a noun (“… is no size”); `hint` is what may be written instead. `parse` is the inverse
    of `write` and may raise one of UNREADABLE; callers use `read`, `typed` or `or_none`, which never do.
    """

    what: str
    hint: str
    write: Callable[[Value], str]
    parse: Callable[[str], Value]

    def read(self, words: str) -> Value:
        """The value of words from the log. Raises CouldNot where they cannot be read."""
        try:
            return self.parse(words)
        except UNREADABLE:
            raise CouldNot(self._fault(words), DAMAGED) from None

    def typed(self, words: str) -> Value:
        """The value of words that somebody wrote. Raises WrongUse, saying what may be written."""
        try:
            return self.parse(words)
        except UNREADABLE:
            raise WrongUse(self._fault(words), self.hint) from None

    def or_none(self, words: str) -> Value | None:
        """The value of words from the log, or None where they cannot be read."""
        try:
            return self.parse(words)
        except UNREADABLE:
            return None

    def _fault(self, words: str) -> str:
        shown = one_line(words)
        return f"“{shown}” is no {self.what}." if shown else f"Empty words are no {self.what}."


def one_word(text: str) -> str:
    """The text, if it is one word: not empty, no blank in it. Raises ValueError."""
    if not text or text.split() != [text]:
        raise ValueError(text)
    return text


def whole(text: str) -> int:
    """Digits as a number, no sign and no blank. Raises ValueError."""
    if not (text.isascii() and text.isdigit()):
        raise ValueError(text)
    return int(text)


def as_json(facts: object) -> str:
    """The words of facts that are written as a JSON object (RFC 8259), letters as they are."""
    return json.dumps(facts, ensure_ascii=False)


class Facts:
    """A JSON object whose members are asked for by name and type. Raises ValueError for what is none.

    `default` stands for a member that is missing or null; without one it must be there.
    """

    __slots__ = ("_members",)

    def __init__(self, value: object) -> None:
        if not isinstance(value, dict):
            raise ValueError(value)
        self._members: dict[str, object] = value

    def __contains__(self, name: str) -> bool:
        return name in self._members

    def member(self, name: str) -> object:
        """A member as it stands, None where it is missing."""
        return self._members.get(name)

    def text(self, name: str, default: str | None = None) -> str:
        value = self._members.get(name)
        value = default if value is None else value
        if type(value) is not str:
            raise ValueError(name)
        return value

    def whole(self, name: str, default: int | None = None) -> int:
        value = self._members.get(name)
        value = default if value is None else value
        if type(value) is not int:  # true and false are ints to isinstance
            raise ValueError(name)
        return value

    def number(self, name: str, default: float | None = None) -> float:
        value = self._members.get(name)
        value = default if value is None else value
        if type(value) is not int and type(value) is not float:
            raise ValueError(name)
        return value

    def objects(self, name: str) -> list["Facts"]:
        """The objects of a list; none where it is missing."""
        values = self._members.get(name) or []
        if not isinstance(values, list):
            raise ValueError(name)
        return [Facts(value) for value in values]


def facts_of(words: str) -> Facts:
    """The members of words that are a JSON object. Raises ValueError."""
    return Facts(json.loads(words))
