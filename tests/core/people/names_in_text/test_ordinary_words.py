"""Words that are names too, where they are plainly something else, and where they are not (rules of our own).

Things that begin with a name are those of WordNet 3.0; the sentences are invented.
"""

from pathlib import Path

import pytest
from tests.core.people.names_in_text.test_search import answer, finder, person
from tests.made_tables import check_table

PEOPLE = [
    person("may", name="May Rourke"),
    person("june", name="June Brown"),
    person("poppy", name="Poppy Marsden"),
    person("graham", name="Graham Pettigrew"),
    person("grace", name="Grace Ngata"),
    person("ruth", name="Ruth Hallam"),
    person("aroha", name="Aroha Parata"),
    person("will", name="Will Tamm"),
    person("summer", name="Summer Lowe"),
    person("mere", name="Mere Tan"),
    person("jose", name="José Vega"),
]
FINDER = finder(PEOPLE, [])
SOMETHING_ELSE = [
    "The boat was sold in May.",
    "In May the tide is low.",
    "it was early May",
    "at the end of May",
    "during May and June",
    "12 May 1911",
    "May–June 1930",
    "2 June",
    "May Day on the green",
    "a May beetle and May apples",
    "May I come in?",
    "Will you come? May the road rise.",
    "Poppy seed cake",
    "Poppy Day, 1922",
    "Graham flour, Graham crackers",
    "the coast of Graham Land",
    "Graham Street in the rain",
    "Mount Ruth from the hut",
    "SS Ruth at the wharf",
    "Grace note of the organ",
    "aroha nui from us All",
    "Summer 1911, in Summer",
    "Mid-May frost",
    "A picture of mere beauty",
    "Her tan shoes",
    "San José, Costa Rica",
    "the first of May",
    "the S.S. Ruth at sea",
    "rose window, and the poppy seed",
    "Graham River, the River Ruth, St Ruth",
    "the will of God",
]
SOMEBODY = [
    "the boat Ruth built",
    "mere and the dog",
    "Mere and the dog",
    "Mr Tan",
    "with May",
    "May and June",
    "in May’s garden",
    "in May and Tom we trust",
    "from May to June",
    "our late May",
    "May Brown came",
    "in May Brown’s house",
    "May, 1971",
    "Grace 1971",
    "Poppy seeds the lawn",
    "We let Poppy seed the lawn",
    "Poppy sat there",
    "Graham lands the boat",
    "Graham, Land and sea",
    "Miss Graham Street",
    "Grace noted it",
    "Mount, Ruth and Tom",
    "Aroha at the gate",
    "Will stood there",
    "so Will you say",
    "Summer sang",
    "see #graham Land",
]


def test_what_is_something_else_is_not_asked_about() -> None:
    assert {words: answer(words, FINDER) for words in SOMETHING_ELSE if answer(words, FINDER)[0] != "none"} == {}


def test_what_may_be_somebody_is_never_passed_over() -> None:
    assert [words for words in SOMEBODY if answer(words, FINDER)[0] == "none"] == []


def test_the_name_of_a_ship_is_a_question() -> None:
    assert answer("the steamer Ruth brought mail", FINDER) == ("asked", "ruth")


def test_the_table_is_what_the_script_makes() -> None:
    if not Path("/usr/share/wordnet/data.noun").is_file():
        pytest.skip("WordNet 3.0 is needed for making the table only (Debian's wordnet-base)")
    check_table(Path(__file__).parent / "make_compounds.py", "another release of WordNet")
