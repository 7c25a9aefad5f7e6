"""A place in words that names somebody, or may, and why it is a question."""

from dataclasses import dataclass
from enum import StrEnum


class Doubt(StrEnum):
    """Why a hit is a question."""

    NONE = ""
    FAMILY = "a family name alone"
    FATHER = "a father's name alone"
    EVERYDAY = "a word of every day too"
    SHARED = "others bear it too"
    ANOTHER = "another name follows"
    SHORT = "a short form or an ending that may be another name"
    MISSPELT = "one letter is other"
    INITIALS = "initials alone"
    RUN_TOGETHER = "a part of a name, run together with other letters"
    PART = "a part of a name, in words without spaces"
    KIN = "a word of kin points to nobody else"
    READ_SO = "characters that are read like the name"


@dataclass(frozen=True, slots=True)
class Hit:
    """Words from `start` to `end` of a text that name `people` (ids), or may. `doubt` is empty where they surely do."""

    start: int
    end: int
    people: frozenset[str]
    doubt: Doubt = Doubt.NONE
