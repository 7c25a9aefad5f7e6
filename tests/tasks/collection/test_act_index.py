"""The index of an act says what going through its lists says, however they were cut and replaced."""

from hypothesis import given
from hypothesis import strategies as st

from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.tasks.collection.act_index import ActIndex

ITEMS = [Subject(Kind.ITEM, ident) for ident in "abc"]
STEPS = st.lists(st.tuples(st.sampled_from(["tell", "read", "cut", "leave out"]), st.integers(0, 5)), max_size=30)


def a_statement(number: int, item: Subject) -> Statement:
    return Statement(id=str(number), act="act", subject=item, field="title", words="Harbour", recorded_at="2026")


@given(STEPS)
def test_what_is_looked_up_is_what_the_lists_hold(steps: list[tuple[str, int]]) -> None:
    index = ActIndex([], [])
    statements, readings = index.statements, index.readings
    for number, (step, at) in enumerate(steps):
        if step == "tell":
            statements.append(a_statement(number, ITEMS[at % 3]))
        elif step == "read" and statements:
            index.read(statements[at % len(statements)].id, Reading("name", None, f"reader {number}"))
        elif step == "cut":
            del statements[at:], readings[at:]
        elif step == "leave out":
            del statements[at : at + 1]
        last = dict(readings)
        assert [index.reading_of(statement.id) for statement in statements] == [last.get(row.id) for row in statements]
        for item in ITEMS:
            assert index.of(item) == [statement for statement in statements if statement.subject == item]


def test_a_statement_read_twice_has_the_reading_of_the_second() -> None:
    index = ActIndex([a_statement(1, ITEMS[0])], [])
    first, second = Reading("name", None, "first"), Reading("name", None, "second")
    index.read("1", first)
    index.read("1", second)
    assert index.readings == [("1", second)]
    assert index.of(ITEMS[0]) == [a_statement(1, ITEMS[0])]
