"""Other ways to tell an event than by its name (English grammar, and our own words)."""

from tests.every_row import every_row

from boxlore.core.people.event_clauses import clauses

WAYS = [  # the event's name, a way that means it; empty for none
    ("The farm was sold", "they sold the farm"),
    ("The farm was sold", "sale of the farm"),
    ("The farm was sold", "farm sale"),
    ("The shop was opened", "opening the shop"),
    ("The family left Leeds", "we left leeds"),
    ("The family left Leeds", "leaving leeds"),
    ("The family left Leeds", "they left"),
    ("The shop opened", "shop opening"),
    ("The school began", "beginning of the school"),
    ("Bruce and Val got engaged", "bruce and val's engagement"),
    ("Ned was christened", "neds taufe"),
    ("The baby was ill", ""),
    ("The great flood", ""),
]


@every_row(("name", "way"), WAYS)
def test_an_event_is_told_in_other_ways(name: str, way: str) -> None:
    assert way in clauses(name) if way else not clauses(name)
