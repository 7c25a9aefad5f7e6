"""The words by which the keeper decides whether a place in words names somebody: `other PERSON story 4f0c…`."""

import re
from dataclasses import dataclass
from enum import StrEnum

from boxlore.core.fields.codec import Codec, one_word


class NamingAnswer(StrEnum):
    """What the keeper decides of one place where somebody living is named, or may be."""

    HIDE = "hide"
    """It stays out of what leaves the family."""
    OTHER = "other"
    """It is not that person."""
    MAY = "may"
    """It is that person, who may be named here: consent was given."""


OF_SETTING = "setting "
"""How the place of a setting of the collection begins (`setting holder`): what is answered of it holds there alone."""


@dataclass(frozen=True, slots=True)
class NamingDecision:
    """One answer: of which person (id), in which field or place of the item, and the digest of the words around.

    A blank in the name of a place is written `+`, which no field has.

    The words themselves are not repeated, so that a strike has one place less to reach.
    """

    answer: NamingAnswer
    person: str
    where: str
    digest: str


_DIGEST = re.compile(r"[0-9a-f]{16}:\d+:\d+")


def _write(decision: NamingDecision) -> str:
    return f"{decision.answer} {decision.person} {decision.where.replace(' ', '+')} {decision.digest}"


def _parse(words: str) -> NamingDecision:
    answer, person, where, digest = words.split(" ")
    if not _DIGEST.fullmatch(digest):
        raise ValueError(words)
    return NamingDecision(NamingAnswer(answer), one_word(person), one_word(where).replace("+", " "), digest)


NAMING_WORDS: Codec[NamingDecision] = Codec(
    "decision on a name", "It is written by the transfer's table of names.", _write, _parse
)
