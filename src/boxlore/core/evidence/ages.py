"""Clues of ages that are told of somebody in a picture (“Liisi looks about five”), read as
`core.rules.ages_told` reads them.

An age that is told plainly is taken as right within a year, for the birthday and the memory; one that is estimated is
wrong the more the older somebody is. SLACK is common practice, no source: nobody has measured it for photographs.
"""

from collections.abc import Iterator
from dataclasses import replace

from boxlore.core.evidence.claims import Claim, of_birth, of_item, weaker, years_after
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.people.person import Registry
from boxlore.core.records.item_record import Record
from boxlore.core.rules.ages_told import whose_ages
from boxlore.core.statements import Sure

SLACK = ((2, 1), (6, 2), (12, 3), (19, 4), (39, 8), (200, 12))
"""Up to an age in years, how many years more or fewer an estimate may mean."""


def clues(record: Record, people: Registry) -> Iterator[Claim]:
    for view, age, person in whose_ages(record, people):
        slack = next(years for oldest, years in SLACK if age.years <= oldest) if age.slack else 1
        limits = years_after(of_item(record.id), of_birth(person.id), max(age.years - slack, 0), age.years + 1 + slack)
        words = f"{person.name} in {record.number}: “{one_line(age.words)}”"
        sure = weaker(view.sure, Sure.LIKELY) if age.slack else view.sure
        yield replace(told(view, words), sure=sure, limits=limits)
