"""Every rule of housing has a case file with its source, one that fires and one that must not.

To add a case: a file in `cases/housing/` with rule, about (item, container, condition), source, [fires] and [quiet].
"""

import tomllib
from pathlib import Path
from typing import Any

from tests.every_row import every_row

from boxlore.core.findings import Finding
from boxlore.core.originals.condition import ConditionNoted, condition_findings, hazards, terms_in
from boxlore.core.originals.condition_table import TERMS
from boxlore.core.originals.housing_rules import Housed, container_findings, holds, housing_findings, materials_in
from boxlore.core.originals.housing_rules_table import ATTACHED, MATERIALS, SURROUNDINGS, Good
from boxlore.core.records.marks import Container

CASES = sorted((Path(__file__).parent / "cases").glob("*.toml"))
COUNT = 47


def container(facts: dict[str, Any]) -> Container:
    facts = {name: tuple(value) if isinstance(value, list) else value for name, value in facts.items()}
    items = tuple(map(str, range(facts.pop("count", 0))))
    around = frozenset(facts.pop("surroundings", ()))
    return Container(id="x", kind="box", label="3", path=(("box", "3"),), items=items, surroundings=around, **facts)


def findings(about: str, facts: dict[str, Any]) -> list[Finding]:
    facts = {name: tuple(value) if isinstance(value, list) else value for name, value in facts.items()}
    if about == "container":
        return container_findings(container(facts))
    if about == "condition":
        return condition_findings(ConditionNoted(**facts))
    around = {name: facts.pop(name) for name in ("surroundings", "materials") if name in facts}
    return housing_findings(Housed(containers=(container(around),), **facts))


def test_every_case_runs() -> None:
    assert len(CASES) == COUNT


@every_row("path", CASES)
def test_a_rule_fires_on_its_case_and_not_on_the_other(path: Path) -> None:
    case = tomllib.loads(path.read_text(encoding="utf-8"))
    assert case["source"]
    found = findings(case["about"], case["fires"])
    assert case["rule"] in [one.rule for one in found], found
    assert all(one.source and one.message for one in found)
    assert case["rule"] not in [one.rule for one in findings(case["about"], case["quiet"])]


def test_every_row_of_the_tables_has_a_case() -> None:
    rules = {tomllib.loads(path.read_text(encoding="utf-8"))["rule"] for path in CASES}
    wanted = {f"housing.{one.name}" for one in (*ATTACHED, *SURROUNDINGS)}
    wanted |= {f"housing.{one.name.replace(' ', '-')}" for one in MATERIALS if one.good is not Good.GOOD}
    wanted |= {f"{'hazard' if one.caution else 'condition'}.{one.name.replace(' ', '-')}" for one in TERMS}
    assert wanted <= rules


def test_a_box_of_good_and_bad_material_is_told_of_the_bad_one_alone() -> None:
    """NEDCC 5.5: polyester is stable, PVC is not."""
    assert [finding.rule for finding in findings("container", {"materials": "polyester", "tested": True})] == []
    (found,) = findings("container", {"materials": "polyester, PVC", "tested": True})
    assert found.rule == "housing.pvc"


def test_where_the_sources_disagree_the_finding_says_so() -> None:
    (cyanotype,) = findings("item", {"process": "cyanotype", "enclosure": "buffered paper"})
    assert cyanotype.because[0].startswith("Cautious") and cyanotype.because[1].startswith("Otherwise")
    (bag,) = findings("item", {"enclosure": "polyethylene bag"})
    assert "Sources disagree" in bag.because[1]


def test_hazards_lead_with_the_caution_and_never_name_a_test() -> None:
    found = findings("condition", {"kind": "negative", "condition": ["curled", "mould", "smells of vinegar"]})
    assert [one.rule.split(".")[0] for one in found] == ["hazard", "hazard", "hazard", "condition"]
    for one in hazards(found):
        assert "Call " in one.message and "Local codes" in one.message
        assert not any(words in one.message for words in ("burn test", "float", "sniff", "drop of"))


def test_every_hazard_says_who_to_call() -> None:
    assert all(bool(one.caution) == bool(one.call) for one in TERMS)


@every_row(
    ("words", "wanted", "there"),
    [
        ("old tape", ("tape",), True),
        ("no tape", ("tape",), False),
        ("no clip, but tape", ("tape",), True),
        ("unbuffered", ("buffered",), False),
        ("pink", ("pin ",), False),
        ("a pin", ("pin ",), True),
        ("floor", ("=floor",), True),
        ("first floor", ("=floor",), False),
        ("no paper clip", ("clip",), False),
        ("mounted on card (no tape), glue", ("tape",), False),
        ("mounted on card (no tape), glue", ("glue",), True),
        ("no tape; tape at the back", ("tape",), True),
    ],
)
def test_words_are_found_at_the_beginning_of_words(words: str, wanted: tuple[str, ...], there: bool) -> None:
    assert holds(words, wanted) is there


def test_materials_are_known_by_their_words() -> None:
    assert [one.name for one in materials_in("polyester sleeve in a kraft envelope")] == ["kraft", "polyester"]
    assert [one.name for one in terms_in("foxed, torn")] == ["foxing", "torn"]
