"""Lives told in ways that cannot all be so are asked about while somebody tells (rules of our own)."""

from typing import Any

from tests.core.records.cast import person, record, shown
from tests.every_row import every_row

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Registry
from boxlore.core.rules.lives_in_question import lives_in_question


def born(*years: str) -> dict[str, Any]:
    births = tuple(map(DateReading.from_edtf, years))
    return {"births": births, "born": births[-1]}


DIED = DateReading.from_edtf("1890")
ASKED = [
    (born("2016", "1899"), "Of Mia Rourke two births are told, 2016 and 1899. Which is so?"),
    (born("1899", "1899-05", "1900"), "Of Mia Rourke two births are told, 1899 and 1900. Which is so?"),
    (born("1899~", "1900"), None),
    (born("1899"), None),
    (born("1900") | {"died": DIED}, "Of Mia Rourke it is told: born 1900, died 1890. What is so?"),
    ({"dead": True, "told_living": True},
     "Of Mia Rourke it is told: a death is told, and that the person lives. What is so?"),
    ({"death_doubted": "perhaps in the war"},
     "Of Mia Rourke it is told: “perhaps in the war”. Is it known whether and when?"),
    ({"death_doubted": "not yet", "told_living": True}, None),
    ({}, None),
]  # fmt: skip


@every_row(("told", "question"), ASKED)
def test_what_is_asked_of_a_life(told: dict[str, Any], question: str | None) -> None:
    mia = person("mia", "Mia", also=("mia-too",), **told)
    people = (shown("mia", "Mia"), shown("mia-too", "Mia"), shown("", "a boy"))
    found = list(lives_in_question(record(people=people), Registry([mia])))
    assert [finding.message for finding in found] == ([question] if question else [])
