"""Which questions about people are open still (our own contract). The names are invented."""

from dataclasses import replace

from tests.core.rules.test_one_item import WHOLE, view
from tests.every_row import every_row

from boxlore.core.rules.people_in_question import people_in_question

OPEN = [
    ("Rex", "Is “Rex” someone in the picture?", True),
    ("Ted Gower (missing)", "Is “Ted Gower” someone in the picture?", True),
    ("Anna", "Is “Rex” someone in the picture?", False),
    ("Tom (on her right)", "Is “on her right” the own side, or that of the picture?", True),
    ("Peg", "Is “Peg” of the family Wilson too?", True),
    ("Dot", "Is “Peg” of the family Wilson too?", False),
    ("Anna leaning on Dot", "Is “Dot” in the picture too, where “leaning on Dot” is told of Anna?", True),
    ("Anna", "Is “Dot” in the picture too, where “leaning on Dot” is told of Anna?", False),
]


@every_row(("told", "question", "is_open"), OPEN)
def test_a_question_is_open_while_whom_it_is_about_is_told(told: str, question: str, is_open: bool) -> None:
    record = replace(WHOLE, told={"person": (view("person", told),)})
    assert [found.message for found in people_in_question(record, [question])] == [question] * is_open
