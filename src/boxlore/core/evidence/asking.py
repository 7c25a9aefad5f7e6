"""What to ask next: of whom a teller can answer, the pictures whose year would settle most of the others.

For each picture that is not dated to a year, the year in the middle of what is worked out is supposed, and how many
days that takes from all other pictures and from its own is reckoned (`WorkedOut.gained`); nothing of it stays. What is
open at one end counts as a hundred years. A teller can answer for pictures of her own years, and of people who are
hers: she is in it, or her kin are. The best for her minutes are chosen by what they settle, and then put in order:
the easy first (she is in it herself, then her nearest kin, then pictures of nobody), the sad last.

She is never told what others have said: a question has the number of its picture and what is asked, and nothing else.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from boxlore.core.evidence.claims import not_after, not_before, of_birth, of_item
from boxlore.core.evidence.even_years import YEAR
from boxlore.core.evidence.working_out import WorkedOut
from boxlore.core.records.item_record import Record

MINUTES_EACH = 4
"""Minutes for one picture (common practice, no source)."""
OPEN = 100 * YEAR
"""Days that count for a picture without an end."""
FROM_AGE = 4
"""Years from which on somebody remembers (common practice, no source)."""
PAPERS = ("album-page", "letter", "note", "document", "clipping", "envelope")
"""Kinds of items that are no picture: nobody is asked when they were taken."""
FAR_FROM_HER = 99
"""How near a picture is that shows nobody who is known."""
SETTLED = YEAR
"""A picture whose days lie within so many is not asked about."""


@dataclass(frozen=True, slots=True)
class Question:
    """One picture to ask about: the item's id and number, the years that an answer would settle in all pictures, how
    near to her the nearest is who is shown, and whether it is a sad one."""

    item: str
    number: str
    settles: float
    nearness: int
    is_sad: bool


def what_to_ask(
    records: Iterable[Record], worked: WorkedOut, teller: str, kin: Mapping[str, int], minutes: int
) -> list[Question]:
    """The questions in the order in which to ask them. `kin` are those whom she can tell of, by id, with how near they
    are (her own id with 0)."""
    born, _ = worked.bounds(of_birth(teller))
    questions = sorted(_questions(records, worked, born, teller, kin), key=lambda asked: (-asked.settles, asked.number))
    chosen = questions[: max(minutes // MINUTES_EACH, 1)]
    return sorted(chosen, key=lambda asked: (asked.is_sad, asked.nearness, -asked.settles, asked.number))


def _questions(
    records: Iterable[Record], worked: WorkedOut, born: int | None, teller: str, kin: Mapping[str, int]
) -> Iterator[Question]:
    for record in records:
        if record.kind in PAPERS:
            continue
        shown = {person.person for person in record.shown()} - {""}
        if shown and not shown & kin.keys():
            continue
        first, last = worked.bounds(of_item(record.id))
        remembers = born + FROM_AGE * YEAR if born is not None else None
        if last is not None and remembers is not None and last < remembers and teller not in shown:
            continue
        if first is not None and last is not None and last - first < SETTLED:
            continue
        settles = _settled(worked, of_item(record.id), first, last)
        nearness = min((kin[ident] for ident in shown & kin.keys()), default=FAR_FROM_HER)
        yield Question(record.id, record.number, settles, nearness, bool(record.words("care")))


def _settled(worked: WorkedOut, day: str, first: int | None, last: int | None) -> float:
    """The years that the year in the middle would take from all pictures together."""
    begins, ends = _closed(first, last)
    middle = (begins + ends) // 2
    gained = worked.gained((not_before(day, middle - SETTLED // 2), not_after(day, middle + SETTLED // 2))) or {}
    return sum(min(days, OPEN) for name, days in gained.items() if name.startswith(of_item(""))) / YEAR


def _closed(first: int | None, last: int | None) -> tuple[int, int]:
    begins = first if first is not None else (last or 0) - OPEN
    return begins, last if last is not None else begins + OPEN
