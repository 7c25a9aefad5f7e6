"""Other ways to tell an event than by its name (English grammar, and our own words)."""

from tests.every_row import every_row

from boxlore.core.people.event_clauses import clauses

WAYS = [  # the event's name, what is told, a way that means it; empty for none
    ("The farm was sold", "after they sold the farm", "they sold the farm"),
    ("The farm was sold", "the sale of the farm", "sale of the farm"),
    ("The farm was sold", "the farm sale", "farm sale"),
    ("The shop was opened", "opening the shop", "opening the shop"),
    ("The family left Leeds", "before we left Leeds", "we left leeds"),
    ("The family left Leeds", "before leaving Leeds", "leaving leeds"),
    ("The family left Leeds", "after they left", "they left"),
    ("The shop opened", "the shop opening", "shop opening"),
    ("The school began", "the beginning of the school", "beginning of the school"),
    ("Bruce and Val got engaged", "Bruce and Val's engagement", "bruce and val's engagement"),
    ("Ned was christened", "Neds Taufe", "neds taufe"),
    ("The baby was ill", "when we were ill", ""),
    ("The great flood", "the flood", ""),
]


@every_row(("name", "told", "way"), WAYS)
def test_an_event_is_told_in_other_ways(name: str, told: str, way: str) -> None:
    pieces = frozenset(told.casefold().replace("'", " ").split())
    ways = [*clauses(name, pieces)]
    assert way in ways if way else not ways
