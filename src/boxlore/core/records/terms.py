"""What was agreed with a teller: who may see what is told in a sitting, and which minutes are kept from outside.

The agreement is the sitting's: it holds for everything that a teller says in it, said before or after it was noted, and
the last agreement holds. Whoever told a thing may keep it to fewer than was agreed; to more only by agreeing anew. A
passage that is kept from outside keeps all that was noted in it with the family. In doubt the family has it and nobody
else: terms in words of one's own let nothing out.
"""

import sys
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from boxlore.core.fields.audiences import SHARED
from boxlore.core.fields.plain_values import DAY_WORDS
from boxlore.core.fields.sittings import CLOSED_WORDS, Passage
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.audience_levels import stricter
from boxlore.core.statements import Said, Statement

FAMILY_ONLY = "the family only"
WITH_ARCHIVE = "the family, and an archive that keeps it closed"
FOR_NOW = "for now"
ANYONE = "anyone"

AGREED, KEPT_FROM_OUTSIDE = "consent", "closed"
"""Fields of a sitting that say what was agreed, and which minutes are kept from outside."""

_GIVEN = "Given by "


def consent_words(by: str, terms: str) -> str:
    """`Given by Leida: the family only.`"""
    return f"{_GIVEN}{by}: {terms}."


def terms_in(consent: str) -> str:
    """“the family only”, of `Given by Leida: the family only.`; '' of other words."""
    return consent.partition(": ")[2].rstrip(".") if consent.startswith(_GIVEN) else ""


def audience_agreed(terms: str) -> str:
    """The audience of what is told on these terms."""
    if terms == ANYONE:
        return "anyone"
    if not terms.startswith(WITH_ARCHIVE):
        return "family"
    day = DAY_WORDS.or_none(terms.removeprefix(f"{WITH_ARCHIVE} until "))
    return f"{SHARED}:{day}" if day else SHARED  # “I have died” is no day: then the archive asks again


@dataclass(frozen=True, slots=True)
class Promise:
    """What holds of a sitting: for whom what its teller says is, and the passages kept from outside."""

    audience: str = "anyone"
    passages: tuple[Passage, ...] = ()

    def has(self, moment: int | None) -> bool:
        """Whether a moment of the sitting is kept from outside."""
        return moment is not None and any(passage.start <= moment <= passage.end for passage in self.passages)

    def held(self, statement: Statement) -> Statement:
        """The statement for those alone who may see it as was promised."""
        if not FIELDS[statement.field].told:
            return statement
        audience = statement.audience
        if statement.source.said is Said.NARRATOR:
            audience = stricter(audience, self.audience, date.min)
        if self.has(statement.moment):
            audience = stricter(audience, "family", date.min)
        return statement if audience == statement.audience else replace(statement, audience=audience)


def promise_of(rows: Iterable[tuple[str, str]]) -> Promise:
    """What holds of a sitting by its (field, words) in the order of the log. A passage that cannot be read is all."""
    promise = Promise()
    for field, words in rows:
        if field == KEPT_FROM_OUTSIDE:
            passage = CLOSED_WORDS.or_none(words) or Passage(0, sys.maxsize)
            promise = replace(promise, passages=(*promise.passages, passage))
        elif field == AGREED and (terms := terms_in(words)):
            promise = replace(promise, audience=audience_agreed(terms))
    return promise
