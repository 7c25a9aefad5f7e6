"""The menu: what one wants to do, in groups, and below each group its tasks; every F-key is there too."""

from collections.abc import Awaitable, Callable
from dataclasses import replace
from typing import Protocol

from boxlore.core.fields.language_names import language_name
from boxlore.tasks.collection.last_opened import remember_colours
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tui.menu_tasks import keeping_scans
from boxlore.tui.menu_tasks.table import TASKS, of_group
from boxlore.tui.menu_tasks.task import Group, TaskHost
from boxlore.tui.screens.cards import NO_KEY, Choice, Choices
from boxlore.tui.screens.forms import Answers, Back, Form
from boxlore.tui.screens.long_task import WorkingScreen


class MenuHost(TaskHost, Protocol):
    """What the menu needs of the screen below it."""

    showing: Showing


THIS, COLOURS, GUIDE, LEAVE, SURVEY, BACKUPS = "this", "light", "guide", "leave", "survey", "backups"
OTHERS = "others"
NAMES, SHEETS = "names", "sheets"
TASK = "task:"

GROUPS: tuple[Choice, ...] = (
    Choice(Group.TAKE_IN, Group.TAKE_IN, "scans, prints without one, a family tree"),
    Choice(Group.SIT, Group.SIT, "who tells, agreement, what to ask"),
    Choice(Group.PUT_RIGHT, Group.PUT_RIGHT, "check, people, places, who said it"),
    Choice(Group.PRINT, Group.PRINT, "album, slips, labels, worksheets"),
    Choice(Group.HAND_ON, Group.HAND_ON, "copies, pages, an archive"),
    Choice(Group.KEEP_SAFE, Group.KEEP_SAFE, "boxes, climate, scans, backups"),
)
"""The first menu but for its last lines."""

SCREEN: dict[str, tuple[Choice, ...]] = {
    Group.TAKE_IN: (Choice(SHEETS, "Prints on a sheet", "outlines by mouse or keys"),),
    Group.SIT: (
        Choice("course", "This sitting", "agreement, rest, recording, end"),
        Choice("tellers", "Who tells now", "somebody else; earlier answers"),
        Choice("asking", "What to ask", "notes, faces without a name, dates"),
        Choice("next_open", "Next with an answer missing", "Ctrl+N  who, when, where, occasion"),
        Choice("viewing", "Page for the teller", "its address and code"),
        Choice("find", "List and find", "F3  also to say one thing of many"),
        Choice("prompts", "The questions asked", "a file to edit and translate"),
        Choice("language", "Language told in", "Ctrl+L"),
    ),
    Group.PUT_RIGHT: (
        Choice("check", "Check", "what is missing, what cannot be so"),
        Choice("people", "People", "names, kin, consent, their pictures"),
        Choice("told_words('place', 'Places')", "Places", "where each is; a new name for all"),
        Choice("told_words('occasion', 'Occasions')", "Occasions", "in pictures; a new name for all"),
        Choice("events", "What happened when", "in the family: weddings, moves"),
        Choice("duplicates", "Perhaps the same person", "proposed, never merged by itself"),
        Choice("find", "Many photographs at once", "in the list: Space picks, F8 says"),
    ),
    Group.HAND_ON: (Choice(NAMES, "Names in question", "may the living found be named?", key="n"),),
    Group.KEEP_SAFE: (
        Choice(BACKUPS, "Bring back a backup", "as the collection was before"),
        Choice(SURVEY, "Survey a box", "sleeves, tape, damage: one key each"),
        Choice("originals", "Originals", "what they need: sleeves, damp, boxes"),
    ),
    THIS: (
        Choice("picture", "Large picture", "F2  front and back, markers"),
        Choice("said", "Who says so", "F4  history, who may see it, which is used"),
        Choice("not_known", "Asked, not known", "F5"),
        Choice("audience", "Fewer may see it", "F6  the family only, then the keeper only"),
        Choice("sure", "How sure they are", "F7"),
        Choice("same", "Same as before", "F8  people, day, place"),
        Choice("ask_later", "Ask later", "F9  a note for “What to ask”"),
        Choice("set_aside", "Set aside", "not today, not with this teller"),
        Choice("relate", "Related to another", "same picture, negative, attached to"),
        Choice("worth_asking", "What to ask here", "all that is in question; Ctrl+P answers", key="w"),
    ),
}
"""What the screen below does itself, by group: the action of `tui.screens.sitting_keys`, its name and its key."""

LAST_OF: dict[str, tuple[Choice, ...]] = {
    Group.PUT_RIGHT: (Choice("worked_out", "What can be worked out", "dates from all that is told"),),
}
"""What stands behind the tasks of a group: lines that came later, so that no key of another has changed."""
TASKS_FIRST: dict[str, int] = {
    Group.TAKE_IN: 2,
    Group.HAND_ON: len(of_group(Group.HAND_ON)),
    Group.KEEP_SAFE: len(keeping_scans.TASKS),
}
"""Of groups where what is made or kept stands first: how many tasks stand before what the screen does itself."""

LAST = (
    Choice(THIS, "This photograph", "what the F-keys do"),
    Choice(GUIDE, "Guide", "F1"),
    Choice(COLOURS, "Light or dark colours"),
    Choice(OTHERS, "Another collection", "open or start one", "c"),
    Choice(LEAVE, "Leave", "Ctrl+Q", NO_KEY),
)


async def open_menu(screen: MenuHost) -> None:
    """Show the menu over the sitting's screen, and do what is chosen."""

    async def answer(value: str) -> None:
        if value in tuple(Group) or value == THIS:
            await open_group(screen, value)
        elif value == COLOURS:
            screen.app.theme = "paper" if screen.app.theme == "lamp" else "lamp"
            remember_colours(screen.app.theme)
        elif value == OTHERS:
            await screen.app.run_action(OTHERS, default_namespace=screen.app)
        else:
            await screen.app.run_action(value, default_namespace=screen.app.screen)

    now = "now dark" if screen.app.theme == "lamp" else "now light"
    last = [replace(choice, about=now) if choice.value == COLOURS else choice for choice in LAST]
    await screen.app.push_screen(Choices("Menu", [*GROUPS, *last], answer))


async def open_group(screen: MenuHost, group: str) -> None:
    """Show the tasks of one group; Esc goes back to the groups."""
    own = [_now(screen, choice) for choice in SCREEN.get(group, ())]
    tasks = of_group(Group(group)) if group != THIS else {}
    choices = [Choice(f"{TASK}{key}", task.name, task.about) for key, task in tasks.items()]
    before = TASKS_FIRST.get(group, 0)
    choices = [*choices[:before], *own, *choices[before:], *LAST_OF.get(group, ())]
    title = "This photograph" if group == THIS else group
    await screen.app.push_screen(Choices(title, choices, _doing(screen, group), back=lambda: open_menu(screen)))


def _now(screen: MenuHost, choice: Choice) -> Choice:
    if choice.value == "language":
        return Choice(choice.value, choice.name, f"{choice.about}  now {language_name(screen.sitting.language)}")
    return choice


def _doing(screen: MenuHost, group: str) -> Callable[[str], Awaitable[None]]:
    async def answer(value: str) -> None:
        if value.startswith(TASK):
            await start(screen, value.removeprefix(TASK), back=lambda: open_group(screen, group))
        elif value == SURVEY:
            from boxlore.tui.screens.survey import ask_box

            await ask_box(screen)
        elif value == SHEETS:
            from boxlore.tui.screens.prints_on_a_sheet import ask_sheets

            await ask_sheets(screen, screen.showing)
        elif value == NAMES:
            from boxlore.tui.screens.names_in_question import ask_names

            if screen.sitting.writable:
                await ask_names(screen)
            else:
                screen.say("Open for reading only; nothing can be changed.", bad=True)
        elif value == BACKUPS:
            await screen.app.run_action(BACKUPS, default_namespace=screen.app)
        else:
            await screen.app.run_action(value, default_namespace=screen.app.screen)

    return answer


async def start(screen: TaskHost, name: str, back: Back | None = None) -> None:
    """Ask for what a task needs with a form, then run it on a card of its own. What was wrong with the answers is said
    on the form, which keeps them. `back` is where Esc goes from the form."""
    task = TASKS[name]
    collection = screen.sitting.collection
    if task.writes and not screen.sitting.writable:
        screen.say("Open for reading only; nothing can be changed.", bad=True)
        return
    blanks = task.blanks(collection)

    async def run(answers: Answers) -> str:
        def job(progress: Progress) -> list[str]:
            if not task.is_step:
                return task.job(collection, answers, progress)
            what = [task.name]
            with screen.sitting.steps.one_step(what):
                lines = task.job(collection, answers, progress)
                if lines:
                    what[0] = lines[0].removesuffix(".")
            return [*lines, "Ctrl+Z, back at the photograph, takes it back; your own files stay where they are."]

        async def again(fault: str) -> None:
            await form.anew(answers, fault).open(screen.app)

        async def do_it() -> None:
            await run(Answers(answers, do="yes"))

        def after() -> None:
            screen.task_done(wrote=task.writes)

        does = do_it if answers.get("do") == "no" else None
        await screen.app.push_screen(WorkingScreen(task.name, job, after, again=again if blanks else None, does=does))
        return ""

    form = Form(task.name, blanks, run, back=back)
    if blanks:
        await form.open(screen.app)
    else:
        await run(Answers())
