"""Who counts as living, and why: a death known, a death presumed by age, else living.

Rule kept: nobody is taken as dead without a reason that can be said in a sentence. The number of years is a setting
of the collection; its default of 100 is common practice, no source.
"""

from dataclasses import dataclass
from datetime import date

from boxlore.core.dates.anniversary import years_on
from boxlore.core.people.person import Person


@dataclass(frozen=True, slots=True)
class Life:
    """Whether someone counts as living, and why."""

    living: bool
    because: str


def life_of(person: Person, on_day: date, years: int = 100, latest_birth: tuple[date, str] | None = None) -> Life:
    """Dead known, dead presumed, else living.

    Presumed dead: born more than `years` years ago at the latest. `latest_birth` is the latest day the
    person can have been born as inferred from pictures, marriages and children, with its reason.
    """
    if person.dead or person.died or person.living == "no":
        return Life(False, "said to have died" if person.living == "no" and not person.died else "a death is told")
    if person.living == "yes":
        return Life(True, "said to be living")
    limit = years_on(on_day, -years) or date.min
    born = person.born.latest_day if person.born else None
    shown = person.born.display if person.born else ""
    if born is not None and limit >= born:
        return Life(False, f"born {shown} at the latest, over {years} years ago")
    if latest_birth is not None and limit >= latest_birth[0]:
        return Life(False, f"{latest_birth[1]}, so born by {latest_birth[0].year}, over {years} years ago")
    if born is not None:
        return Life(True, f"born {shown}, no death told")
    return Life(True, "no birth or death told, so taken as living")
