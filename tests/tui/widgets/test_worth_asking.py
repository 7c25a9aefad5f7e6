"""How much of what is worth asking is shown in the room that there is (our own contract)."""

from tests.every_row import every_row

from boxlore.tui.widgets.plain_text import content
from boxlore.tui.widgets.worth_asking import Question, fitted, height

LONG = "x" * 8 + " y" * 36
QUESTIONS: tuple[Question, ...] = (
    ("? Who is Dot? ", ("Ctrl+P", "bold")),
    ("? Was it a Sunday?",),
    ("→ ask Joan",),
)

SHOWN = [  # questions, columns, rows, what is shown
    (QUESTIONS, 60, 4, "What to ask ? Who is Dot? Ctrl+P\n? Was it a Sunday?\n→ ask Joan"),
    (QUESTIONS, 60, 2, "What to ask ? Who is Dot? Ctrl+P\n… and 2 more: Esc, “This photograph”, “What to ask here”"),
    (QUESTIONS[:1], 60, 1, "What to ask ? Who is Dot? Ctrl+P"),
    (((LONG,),), 40, 1, "What to ask xxxxxxxx y y y y y …"),
    (((LONG,), ("→ ask Joan",)), 60, 2, "What to ask xxxxxxxx y y y y y y y y y y y y …\n… and 1 more: Esc, "
     "“This photograph”, “What to ask here”"),
]  # fmt: skip


@every_row(("questions", "columns", "rows", "shown"), SHOWN)
def test_as_many_as_there_is_room_for(questions: list[Question], columns: int, rows: int, shown: str) -> None:
    parts = fitted(questions, columns, rows)
    assert content(*parts).plain == shown
    assert height(parts, columns) <= rows
