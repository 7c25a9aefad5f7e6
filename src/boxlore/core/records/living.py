"""Who counts as living, and why: a death known, a death presumed by age, else living.

Rule kept: nobody is taken as dead without a reason that can be said in a sentence. The number of years is a setting
of the collection; its default of 100 is common practice, no source.
"""

from dataclasses import dataclass
from datetime import date
from itertools import combinations
from typing import NamedTuple

from boxlore.core.dates.anniversary import years_on
from boxlore.core.dates.conflicts import can_both_be
from boxlore.core.people.latest_birth import BornBy
from boxlore.core.people.person import Person


@dataclass(frozen=True, slots=True)
class Life:
    """Whether someone counts as living, and why. `contradiction` says what cannot be all true; empty where nothing.

    Who is told in a contradiction counts as living, and is named to nobody outside, whatever was consented to: it may
    be that two people stand in one entry.
    """

    living: bool
    because: str
    contradiction: str = ""


class BornFrom(NamedTuple):
    """The earliest day of a birth as it follows from an age that is told of a dated picture, and what it follows from:
    `“about five” is told of TRA-0005, 1975`."""

    day: date
    because: str


def life_of(
    person: Person,
    on_day: date,
    years: int = 100,
    latest_birth: BornBy | None = None,
    earliest_birth: BornFrom | None = None,
) -> Life:
    """Dead known, dead presumed, else living.

    Presumed dead: surely born more than `years` years ago. `latest_birth` is the latest day the person can have been
    born as inferred from pictures, marriages and children, with its reason; it counts where no birth is told. Nobody is
    presumed dead of whom an age is told by which she was born since (`earliest_birth`): it may be that two people stand
    in one entry.
    """
    if contradiction := contradiction_in(person, latest_birth):
        return Life(True, f"what is told cannot all be true: {contradiction}", contradiction)
    if person.living == "no" or ((person.dead or person.died) and not person.death_doubted):
        return Life(False, "said to have died" if person.living == "no" and not person.died else "a death is told")
    if person.living == "yes":
        return Life(True, "said to be living")
    presumed = _presumed(person, on_day, years, latest_birth)
    if not presumed.living and earliest_birth is not None and earliest_birth.day > _limit(on_day, years):
        contradiction = f"{presumed.because}, but {earliest_birth.because}"
        return Life(True, f"what is told cannot all be true: {contradiction}", contradiction)
    return presumed


def _limit(on_day: date, years: int) -> date:
    """Whoever was born later may live."""
    return years_on(on_day, -years) or date.min


def _presumed(person: Person, on_day: date, years: int, latest_birth: BornBy | None) -> Life:
    limit = _limit(on_day, years)
    latest = person.latest_born
    born = latest.latest_day if latest else None
    shown = latest.display if latest else ""
    if born is not None and limit >= born and person.born_is_sure:
        return Life(False, f"born {shown} at the latest, over {years} years ago")
    told_later = born is not None and born > limit
    if latest_birth is not None and limit >= latest_birth.day and not told_later:
        return Life(False, f"{latest_birth.in_words()}, so born by {latest_birth.day.year}, over {years} years ago")
    if person.death_doubted:
        return Life(True, "what is told of a death is not sure, or says none")
    if born is not None:
        return Life(True, f"born {shown}, no death told")
    return Life(True, "no birth or death told, so taken as living")


def births_apart(person: Person) -> str:
    """Two births told that cannot both be so, as a part of a sentence; empty where there are none."""
    for one, another in combinations(person.births, 2):
        if one.edtf and another.edtf and not can_both_be(one.edtf, another.edtf):
            return f"{one.display} and {another.display}"
    return ""


def contradiction_in(person: Person, latest_birth: BornBy | None = None) -> str:
    """What is told of a life that cannot all be true, as a part of a sentence; empty where nothing is."""
    died = person.died if not person.death_doubted else None
    if person.told_living and (person.dead or died or person.living == "no"):
        return "a death is told, and that the person lives"
    born_first = person.born.earliest_day if person.born else None
    if born_first and died and died.latest_day and died.latest_day < born_first:
        return f"born {person.born.display if person.born else ''}, died {died.display}"
    if born_first and latest_birth and latest_birth.day < born_first:
        return f"born {person.born.display if person.born else ''}, but {latest_birth.in_words()}"
    return ""
