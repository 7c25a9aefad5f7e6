"""The demo's boxes show what the check of originals is for (invented data; the rules have their own tests)."""

from pathlib import Path

from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.originals.housing_check import check_housing


def test_each_part_of_the_check_has_something_to_show(demo: Path) -> None:
    with open_collection(demo, write=False) as collection:
        found = list(check_housing(collection))
    rules = {one.finding.rule for one in found}
    assert {"housing.floor", "housing.black-paper", "climate.mould", "housing.pvc", "housing.fastener"} <= rules
    assert "condition.foxing" in rules
    assert "housing.plastic-damp" not in rules, "measured, and under 65 % on average"
    assert all(one.finding.source for one in found)
