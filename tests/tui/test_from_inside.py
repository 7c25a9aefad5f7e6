"""What is said inside never names a command where the menu has its task (our own contract).

Every sentence of the program that names a command or an option is read out of its source, so that a new one is seen
here; the places that are named instead are looked up in the menu itself.
"""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from tests.every_row import every_row

import boxlore
from boxlore.core.rules.one_item import SETTLE, SETTLE_AT_MARKER
from boxlore.tasks.collection.opening import open_collection
from boxlore.tui.from_inside import LINES, PLACES, from_inside
from boxlore.tui.menu_tasks.table import TASKS
from boxlore.tui.screens.menu import SCREEN
from boxlore.tui.screens.person_actions import ABOUT
from boxlore.tui.screens.statements import CORRECT, REST, STRIKE

SAID = [
    ("Run boxlore verify.", "Run “Keep safe”, “Check the scans”."),
    ("`boxlore verify` tells more.", "“Keep safe”, “Check the scans” tells more."),
    ("boxlore verify --mend notes its place; all stays.", "“Keep safe”, “Check the scans”; all stays."),
    ("boxlore housing what MARK lists them.", "“List and find” (F3) lists them."),
    ("boxlore people list shows everyone.", "“Put right”, “People” shows everyone."),
    ("(boxlore people audience --item ITEM family --field FIELD).", "(“Who says so” (F4), “Who may see it”)."),
    ("with: boxlore people audience PERSON AUDIENCE.", "with: “Put right”, “People”, “Who may see them”."),
    (
        "“All”: boxlore strike TRA-0002 story takes it out.",
        "“All”: “Who says so” (F4), “Strike for good” takes it out.",
    ),
    (
        "boxlore strike everywhere label --words, with those words, does.",
        "“Put right”, “Strike words everywhere”, with those words, does.",
    ),
    ("correct it: boxlore tell TRA-0001 story. If not,", "correct it: at the photograph, under that question. If not,"),
    (
        "To bring it back: boxlore scan replace TRA-0001 FILE",
        "To bring it back: “Take in”, “A scan for one photograph”",
    ),
    ("To cut it off: boxlore intake --find-prints hand.", "To cut it off: “Take in”, “Prints on a sheet”."),
    ("boxlore new FOLDER --from TRANSFER.", "“Make one again from a transfer”."),
    ("say so: boxlore people tell “Ann R.” living yes.", "say so: “Put right”, “People”."),
    ("tell it: boxlore tell ITEM FIELD TEXT.", "tell it: at the photograph, under that question."),
    ("boxlore -c ITS-FOLDER tell --from FILE.", "“Take in”, “Answers on paper”."),
    ("or say --backs apart.", "or say “numbers of their own”."),
    ("say --backs apart for an item of its own.", "say “numbers of their own” for an item of its own."),
    ("`--longest 4000` makes one.", "“How large?” makes one."),
    ("or leave --archive out.", "or leave “The archive’s own settings” out."),
    ("such as --box 7 --folder 1.", "such as 7 in “Box”, 1 in “Folder in that box”."),
    ("say --over to replace it.", "say --over (at the shell) to replace it."),
    ("or, at the shell, add --over.", "or, at the shell, add --over."),
    ("The recto scan has changed.", "The front scan has changed."),
    (
        "It goes with the next update: boxlore tell whole archive_answer TEXT.",
        "It goes with the next update: “Hand on”, “An answer to the archive”.",
    ),
    (f"Which is so? {SETTLE}", "Which is so? To settle it: Ctrl+P at that question."),
    (f"Who is it? {SETTLE_AT_MARKER}", "Who is it? To settle it: F4, then Enter on one of the names."),
    ("She said: boxlore is a box -- no more.", "She said: boxlore is a box -- no more."),
]


@every_row(("words", "inside"), SAID)
def test_commands_and_options_are_said_as_they_are_called_inside(words: str, inside: str) -> None:
    assert from_inside(words) == inside


def _sentences() -> Iterator[str]:
    """Every text in the source of what is not a front, but for docstrings; what is filled in is written `X`."""
    root = Path(boxlore.__file__).parent
    for folder in ("core", "disk", "store", "tasks", "viewing"):
        for path in (root / folder).rglob("*.py"):
            inner: set[int] = set()
            for node in ast.walk(ast.parse(path.read_text("utf-8"))):
                if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
                    inner.add(id(node.value))
                elif isinstance(node, ast.JoinedStr):
                    inner |= {id(part) for part in node.values}
                    yield "".join(str(part.value) if isinstance(part, ast.Constant) else "X" for part in node.values)
                elif isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in inner:
                    yield node.value


def test_no_sentence_of_the_program_sends_somebody_inside_to_a_command() -> None:
    told = [words for words in _sentences() if re.search(r"\bboxlore [a-z]", words)]
    assert len(told) > 60  # they are found at all
    left = [said for words in told if re.search(r"\bboxlore [a-z]", said := from_inside(words))]
    assert not [said for said in left if "at the shell" not in said]


def test_the_places_named_stand_in_the_menu_and_the_lines_in_its_forms(folder: Path) -> None:
    names = {task.name for task in TASKS.values()} | {task.group.value for task in TASKS.values()} | {"Sit"}
    names |= {choice.name for choices in SCREEN.values() for choice in choices}
    names |= {choice.name for choice in (*ABOUT, *CORRECT, *REST, STRIKE)}
    names |= {"Make one again from a transfer", "Start a collection", "Who is in it?"}
    assert not {name for place in PLACES.values() for name in re.findall("“(.+?)”", place)} - names
    with open_collection(folder, write=False) as collection:
        blanks = [blank for task in TASKS.values() for blank in task.blanks(collection)]
    labels = {blank.label for blank in blanks} | {label for blank in blanks for _, label in blank.choices}
    assert not {name for line in LINES.values() for name in re.findall("“(.+?)”", line)} - labels
