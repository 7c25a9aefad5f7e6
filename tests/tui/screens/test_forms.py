"""Forms: words put there for the keeper, choices, paths that are completed and looked for (our own contract)."""

from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from tests.tui.conftest import Hands, hands_on

from boxlore.tui.screens.forms import Answers, Blank, Form
from boxlore.tui.widgets.text_input import Words

Run = Callable[..., None]


@asynccontextmanager
async def form(*blanks: Blank, size: tuple[int, int] = (100, 34)) -> AsyncIterator[tuple[Hands, list[dict[str, str]]]]:
    """A form above the first screen, and what it was answered with."""
    answered: list[dict[str, str]] = []

    def answer(answers: dict[str, str]) -> str:
        answered.append(answers)
        return "Not so." if "wrong" in answers.values() else ""

    async with hands_on(None, size=size) as hands:
        await Form("Try", blanks, answer).open(hands.app)
        await hands.press()
        yield hands, answered


def test_typing_takes_the_place_of_what_was_put_there_and_an_arrow_keeps_it(run: Run) -> None:
    async def fill() -> None:
        async with form(Blank("a", "First", "album.pdf"), Blank("b", "Second", "album")) as (hands, answered):
            await hands.press("«x»", "enter", "right", "«s»", "enter")
            assert answered == [{"a": "x", "b": "albums"}]

    run(fill())


def test_a_fault_keeps_the_words_and_letters_go_on_after_them(run: Run) -> None:
    async def fill() -> None:
        async with form(Blank("a", "First")) as (hands, answered):
            await hands.press("«wrong»", "enter")
            assert "Not so." in hands.text and "wrong" in hands.text
            await hands.press("«ly put»")
            assert "Not so." not in hands.text  # it was about the earlier words
            await hands.press("enter")
            assert answered[-1] == {"a": "wrongly put"}

    run(fill())


COLOURS = (("r", "red"), ("g", "green"), ("b", "bluish"))


@pytest.mark.parametrize(
    ("keys", "value"),
    [
        ((), "g"), (("right",), "b"), (("left",), "r"), (("space", "space"), "r"), (("«b»",), "b"), (("«re»",), "r"),
        (("«x»",), "g"), (("«xb»",), "g"), (("«red book»",), "g"),
    ],
)  # fmt: skip
def test_one_of_a_few_choices(run: Run, keys: tuple[str, ...], value: str) -> None:
    async def fill() -> None:
        async with form(Blank("c", "Colour", "g", choices=COLOURS)) as (hands, answered):
            assert "← → changes: red · green · bluish" in hands.text
            await hands.press(*keys, "enter")
            assert answered == [{"c": value}]

    run(fill())


@pytest.fixture
def tree(tmp_path: Path) -> Path:
    """`scans/from gran`, `scans/from uncle`, `sheet.csv` and a hidden folder."""
    for name in ("scans/from gran", "scans/from uncle", ".hidden"):
        (tmp_path / "home" / name).mkdir(parents=True)
    (tmp_path / "home" / "sheet.csv").touch()
    return tmp_path / "home"


def test_a_path_is_completed_as_far_as_all_agree(run: Run, tree: Path) -> None:
    async def fill() -> None:
        async with form(Blank("p", "Where", path="file", base=tree), Blank("q", "Next")) as (hands, answered):
            await hands.press("«s»")
            assert "Tab scans/ sheet.csv" in hands.text
            await hands.press("«c»", "tab")
            assert "scans/" in hands.text and "from gran/ from uncle/" in hands.text
            await hands.press("tab", "«u»", "tab", "tab", "«!»", "enter")
            assert answered == [{"p": "scans/from uncle/", "q": "!"}]

    run(fill())


def test_a_line_for_a_folder_leaves_files_out(run: Run, tree: Path) -> None:
    async def fill() -> None:
        async with form(Blank("p", "Where", path="folder", base=tree)) as (hands, answered):
            await hands.press("«SH»", "tab", "enter")
            assert answered == [{"p": "SH"}]  # no folder begins so, and Tab finds no further line

    run(fill())


def test_the_folders_can_be_looked_through(run: Run, tree: Path) -> None:
    async def look() -> None:
        async with form(Blank("p", "Where", str(tree / "scans" / "gone"), path="file")) as (hands, answered):
            await hands.press("f3")
            assert "from gran/" in hands.text and "gone" not in hands.text
            await hands.press("left")
            assert "sheet.csv" in hands.text and ".hidden" not in hands.text and "▸ scans/" in hands.text
            await hands.press("right", "down", "down", "enter")
            await hands.until("from uncle/")
            await hands.press("f3", "pagedown", "pageup", "enter", "enter")  # the first row is the folder itself
            assert answered == [{"p": f"{tree}/scans/from uncle/"}]

    run(look())


def test_on_a_low_screen_only_the_line_at_hand_has_its_hint(run: Run) -> None:
    async def look() -> None:
        blanks = [Blank(name, name.upper(), hint=f"About {name}.") for name in "abc"]
        async with form(*blanks, size=(80, 24)) as (hands, _):
            assert "About a." in hands.text and "About b." not in hands.text
            await hands.press("down")
            assert "About b." in hands.text and "About a." not in hands.text

    run(look())


FAULTS = [
    ("“12 mm” is not a size.", {"size": "12 mm", "mark": "1"}, "", "size"),
    ("There is no file /nowhere/tree.ged.", {"mark": "3", "size": "/nowhere/tree.ged"}, "", "size"),
    ("There is nothing in box 3.", {"mark": "3", "size": "13 x 18"}, "size", "mark"),
    ("Box 13 is not here.", {"mark": "3", "size": ""}, "size", "size"),
    ("No size is given.", {"mark": "3", "size": ""}, "size", "size"),
    ("Not so.", {"mark": "3", "size": "5"}, "", "mark"),
]
"""A fault, the answers, the one that was looked at last, and the line that the cursor goes to."""


def test_the_cursor_goes_to_the_line_that_a_fault_is_about(run: Run) -> None:
    async def fill() -> None:
        async with hands_on(None) as hands:
            for fault, answers, looked_at, goes_to in FAULTS:

                def answer(given: Answers, looked_at: str = looked_at, fault: str = fault) -> str:
                    return fault if not looked_at or given[looked_at] is not None else ""

                blanks = [Blank(name, name, text) for name, text in answers.items()]
                await Form("Try", blanks, answer).open(hands.app)
                await hands.press("ctrl+s", "«!»")
                (shown,) = [line.text for line in hands.app.screen.query(Words) if line.text.endswith("!")]
                assert shown == f"{answers[goes_to]}!", fault
                await hands.press("escape", "escape")

    run(fill())


def test_what_was_typed_is_put_away_by_the_second_esc_alone(run: Run) -> None:
    async def fill() -> None:
        async with form(Blank("a", "First", "album"), Blank("b", "Second")) as (hands, answered):
            await hands.press("«x»", "escape")
            assert "This is not kept yet. Esc again lets go of it" in hands.text
            await hands.press("tab")  # who goes on does not leave
            assert "not kept yet" not in hands.text
            await hands.press("ctrl+q", "escape")  # another key asks anew
            assert "Esc again" in hands.text
            await hands.press("escape")
            assert "Start a collection" in hands.text and answered == []

    run(fill())


def test_the_second_of_two_forms_goes_back_to_the_first_with_its_words(run: Run) -> None:
    async def fill() -> None:
        async with hands_on(None) as hands:
            await hands.press("s", "«Our boxes»", "enter", "«New Zealand»", "enter", "enter")
            assert "Which language do they mostly tell in?" in hands.text
            await hands.press("escape")
            assert "Our boxes" in hands.text and "New Zealand" in hands.text
            await hands.press("escape", "escape")
            assert "Make one again from a transfer" in hands.text

    run(fill())
