"""Clues of the dates that are told of a picture, all of them: those in force, and those that somebody else told.

What a scan's file says is about the scan, and is left out. So is what cannot be beside the date in force, where the
keeper has settled for that; and what the keeper has weighed and left open is one claim, that it is one of them: nobody
is asked twice. A date that leans on another day (“the year of the sailing”) is tied to that day, as long as the keeper
has not confirmed what it was read as. Of words that leave a choice open (“the sixties”, “7/4/25”) each that may be
meant is kept: the day is in one of them.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.dates import phrases
from boxlore.core.dates.asked_words import NOT_UNDERSTOOD
from boxlore.core.dates.conflicts import can_both_be
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.dates.phrases import KnownDates, PhraseSettings
from boxlore.core.evidence.claims import Claim, any_of, dated, of_item, weaker
from boxlore.core.evidence.leaning import may_be_meant
from boxlore.core.evidence.sentences import teller_of
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Sure


def rows(record: Record) -> Sequence[StatementView]:
    """The statements of a date that count."""
    settled = None if any(conflict.field == "date" for conflict in record.conflicts) else record.date
    left_open = any(conflict.field == "date" for conflict in record.undecided)
    first = record.first("date")
    return [
        view
        for view in ((first,) if left_open and first else record.all("date"))
        if view.source.said is not Said.FILE
        and view.sure is not Sure.NOT_KNOWN
        and (settled is None or view.date is None or view.date.edtf is None or can_both_be(view.date.edtf, settled))
    ]


def claim_of(record: Record, view: StatementView) -> Claim:
    return told(view, f"{record.number} is dated “{one_line(view.words)}”")


def by_itself(claim: Claim, record: Record, view: StatementView, settings: PhraseSettings) -> Iterator[Claim]:
    """The claim with what a date says alone, leaning on nothing."""
    day = of_item(record.id)
    edtf = view.date.edtf if view.date else None
    if edtf is not None:
        yield dated(claim, day, edtf)
    elif view.words.strip():
        meant = dict.fromkeys(
            edtf
            for half in _halves(record, settings)
            for edtf in _meant(view.words, replace(settings, hemisphere=half))
        )
        if meant:
            yield any_of(replace(claim, sure=weaker(claim.sure, Sure.LIKELY)), day, list(meant))
        elif (edtf := _beside_words(view.words, settings)) is not None:
            yield dated(replace(claim, sure=Sure.GUESS), day, edtf)


def _beside_words(words: str, settings: PhraseSettings) -> Edtf | None:
    """The one date that stands between commas beside words that are not understood (“1919, when the boys came home”),
    where those tell no other number, and no time before or after. It is asked about, and a guess until then."""
    parts = words.split(", ")
    if len(parts) == 1:
        return None
    known = KnownDates(this_year=LAST_YEAR)
    read = [(part, phrases.read(part, settings, known)) for part in parts]
    dates = [each for _, each in read if each.edtf is not None]
    if len(dates) != 1 or dates[0].ask:
        return None
    tokens = (token for part, each in read if each.edtf is None for token in lex(nfc(part)))
    return None if any(token.is_any(_OTHER_TIMES) for token in tokens) else dates[0].edtf


_OTHER_TIMES = frozenset(("before", "after", "not", "or", "day", "number", "ordinal", "year", "doubt"))


def _meant(words: str, settings: PhraseSettings) -> Sequence[Edtf]:
    """Each day or span that the words may mean."""
    read = phrases.read(words, settings, KnownDates(this_year=LAST_YEAR))
    return may_be_meant(read) if NOT_UNDERSTOOD not in (read.ask or "") else ()


def _halves(record: Record, settings: PhraseSettings) -> tuple[str, ...]:
    """The half of the world whose seasons are meant; both where it is not told where a picture was taken."""
    is_told = record.place is not None and record.place.lat is not None
    return (settings.hemisphere,) if is_told else ("north", "south")


_YEAR = re.compile(r"(?<!\d)1[5-9]\d\d(?!\d)|(?<!\d)20\d\d(?!\d)")


def has_a_year(words: str) -> bool:
    """Whether a year is told in digits: such words have a date of their own."""
    return bool(_YEAR.search(words))


LAST_YEAR = 2026
"""The year in which this was made; a later one is no more than another choice."""


def told(view: StatementView, words: str) -> Claim:
    """A claim of a statement, with who says it."""
    return Claim(words=words, source=view.who, sure=view.sure, teller=teller_of(view), statement=view.statement)
