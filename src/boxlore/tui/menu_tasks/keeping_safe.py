"""Keep safe: where the originals lie and stand, and their climate."""

from datetime import date, datetime

from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.core.originals.moves import Plan
from boxlore.core.records.marks import KINDS, LOCATION_KINDS
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.originals.housing_now import House
from boxlore.tui.menu_tasks.task import NOT_YET, FormAnswers, Group, Task, file_blank, given_file, parted
from boxlore.tui.screens.forms import Blank

SHOWN_STEPS = 40

DO = Blank("do", "Change it now?", "no", choices=(("no", "show what would change"), ("yes", "yes")))
"""Whether a plan of moves is carried out: Enter alone only shows it, and the report has a key that does it then."""


def _container(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.housing_changes import About, note_container

    if not answers["mark"]:
        raise WrongUse("No box is named.", "Write its mark: 3, or 3/12 for a folder in it.")
    about = About(
        at=answers["at"],
        materials=answers["materials"],
        size=answers["size"],
        capacity=answers["capacity"],
        tested=answers["tested"],
    )
    container = note_container(collection, answers["mark"], about, kind=answers["kind"])
    stands = f", {' / '.join(container.location)}" if container.location else ""
    return [f"Kept: {container.mark.long}{stands}."]


def _location(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.housing_changes import new_location

    if not answers["name"]:
        raise WrongUse("It has no name yet.", "Write one: the hall cupboard, the attic.")
    around = [part.strip() for part in answers["around"].split(",") if part.strip()]
    new_location(collection, answers["name"], kind=answers["kind"], inside=answers["inside"], surroundings=around)
    return [f"Kept: {answers['kind']} {answers['name']}."]


def _move(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.core.originals.moves import move
    from boxlore.tasks.originals.housing_now import check_not_into_itself, house_of, items_named

    what = parted(answers["what"])
    if not what or not answers["into"]:
        raise WrongUse("It is not said what goes where.", "Write numbers or marks, and the mark of a box or folder.")
    house = house_of(collection)
    target = house.named(answers["into"])
    check_not_into_itself(house, what, target)
    ids = [subject.id for subject in items_named(collection, what)]
    return _planned(collection, house, move(house.holding, ids, target.id, 0), answers)


def _merge(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.core.originals.moves import merge
    from boxlore.tasks.originals.housing_now import house_of

    if not answers["what"] or not answers["into"]:
        raise WrongUse("It is not said which is put into which.", "Write two marks, such as 3 and 4.")
    house = house_of(collection)
    source, into = house.named(answers["what"]).id, house.named(answers["into"]).id
    return _planned(collection, house, merge(house.holding, source, into, house.inside, house.labels), answers)


def _renumber(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.core.originals.moves import relabel
    from boxlore.tasks.originals.housing_now import house_of

    house = house_of(collection)
    labels: dict[str, str] = {}
    for pair in parted(answers["pairs"]):
        old, equals, new = pair.partition("=")
        if not equals or not new.strip():
            raise WrongUse(f"“{pair[:40]}” is no pair.", "Write OLD=NEW, such as 3=4.")
        labels[house.named(old.strip()).id] = new.strip()
    if not labels:
        raise WrongUse("It is not said which get new labels.", "Write OLD=NEW, such as 3=4; 4=3.")
    return _planned(collection, house, relabel(house.labels, house.inside, labels), answers)


def _close_up(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.core.originals.moves import close_up
    from boxlore.tasks.originals.housing_now import house_of

    if not answers["mark"]:
        raise WrongUse("No box is named.", "Write its mark: 3, or 3/12 for a folder in it.")
    house = house_of(collection)
    return _planned(collection, house, close_up(house.holding, house.named(answers["mark"]).id), answers)


def _planned(collection: Collection, house: House, plan: Plan, answers: FormAnswers) -> list[str]:
    """Carry a plan out, or only show it, as the line `DO` answers. Raises WrongUse for one with problems."""
    from boxlore.tasks.originals.housing_changes import carry_out
    from boxlore.tasks.originals.housing_now import shown

    if not plan.steps and not plan.problems:
        return ["Nothing would change."]
    steps = [f"  {shown(house, step)}" for step in plan.steps[:SHOWN_STEPS]]
    if len(plan.steps) > SHOWN_STEPS:
        steps.append(f"  … and {len(plan.steps) - SHOWN_STEPS} more.")
    if answers["do"] != "yes" and not plan.problems:
        return [f"This is what would change; {NOT_YET}.", *steps]
    if not carry_out(collection, plan):
        return ["Nothing would change."]
    return [f"Done: {plan.title}. Earlier marks still find them; “Take back a box change” undoes it.", *steps]


def _take_back(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.housing_changes import last_of_housing, undo

    last = last_of_housing(collection)
    told = f"{last.what}, {last.recorded_at[:16].replace('T', ' ')}"
    if answers["do"] != "yes":
        return [f"This is what would be taken back: {told}; {NOT_YET}."]
    undo(collection, last.id)
    return [f"Taken back: {told}."]


def _lend(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.housing_changes import give_back, lend
    from boxlore.tasks.originals.housing_now import items_named

    what = parted(answers["what"])
    if not what:
        raise WrongUse("It is not said which ones.", "Write numbers or marks.")
    subjects = items_named(collection, what)
    if answers["how"] == "back":
        give_back(collection, subjects, collection.clock.today())
        return [f"{several(len(subjects), 'thing')} given back."]
    if not answers["lender"]:
        raise WrongUse("It is not said who lends them.", "Write a name.")
    try:
        due = date.fromisoformat(answers["due"]) if answers["due"] else None
    except ValueError:
        raise WrongUse(f"“{answers['due'][:20]}” is not a date.", "Write it as 2026-12-31.") from None
    lend(collection, subjects, answers["lender"], due)
    return [f"{several(len(subjects), 'thing')} on loan from {answers['lender']}{f', due {due}' if due else ''}."]


def _climate(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.climate import chart_lines, judge_locations, keep_log, note_reading

    where = answers["at"]
    if answers["reading"]:
        if not where:
            raise WrongUse("It is not said where that was read.", "Write the name of the room or shelf.")
        temperature, _, humidity = answers["reading"].strip().partition(" ")
        note_reading(collection, where, datetime.now().replace(microsecond=0), temperature, humidity.strip())
    if answers["log"]:
        if not where:
            raise WrongUse("It is not said where the log was kept.", "Write the name of the room or shelf.")
        log, unit, order = given_file(collection, answers["log"]), answers["unit"], answers["order"]
        judged = [keep_log(collection, log, where, unit=unit, order=order)]
    else:
        judged = judge_locations(collection)
    lines: list[str] = []
    for judgement in judged:
        lines.append(judgement.where)
        lines += chart_lines(judgement, 66) if judgement.readings else []
        lines += [f"  {note}" for note in judgement.notes]
        lines += [f"  {finding.message}" for finding in judgement.findings]
    return lines or ["No log is kept yet. Name a logger’s CSV file, and where it lay."]


def _taken_off(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.items_by_mark import find_item
    from boxlore.tasks.originals.housing_changes import take_off

    if not answers["item"]:
        raise WrongUse("It is not said off which print.", "Write its number (TRA-0042) or where it is kept (3/12/4).")
    number = take_off(collection, find_item(collection, answers["item"]), answers["text"], kind=answers["kind"])
    return [f"{number}: a {answers['kind']} that was attached to {answers['item']}. “Move things” says where it lies."]


TASKS = {
    "container": Task(
        Group.KEEP_SAFE,
        "A box or folder",
        "what it is made of, where it stands",
        lambda collection: [
            Blank("mark", "Its mark", "", "3, or 3/12 for folder 12 in box 3. One that is not there yet is made; "
                  "before 3/12 make box 3."),
            Blank("kind", "What is it?", "box", choices=tuple((kind, kind) for kind in KINDS)),
            Blank("at", "Where does it stand?", "", "The name of a room or shelf noted before. May stay empty."),
            Blank("materials", "What is it made of?", "", "For instance: buffered board; PVC; unknown card."),
            Blank("size", "Inside, in mm", "", "380 x 260 x 130"),
            Blank("capacity", "How many does it hold?"),
            Blank("tested", "Test mark", "", "For instance: PAT passed (ISO 18916)."),
        ],
        _container,
        writes=True,
    ),
    "taken_off": Task(
        Group.KEEP_SAFE,
        "A note taken off a print",
        "a number of its own; what it was on",
        lambda collection: [
            Blank("item", "Off which print?", "", "Its number (TRA-0042) or where it is kept (3/12/4)."),
            Blank("kind", "What is it?", "note",
                  choices=tuple((kind, kind) for kind in ("note", "letter", "clipping", "envelope"))),
            Blank("text", "What is written on it?", "", "Exactly as it stands. May stay empty."),
        ],
        _taken_off,
        writes=True,
    ),
    "location": Task(
        Group.KEEP_SAFE,
        "A room or shelf",
        "where boxes stand, what is around",
        lambda collection: [
            Blank("name", "What is it called?"),
            Blank("kind", "What is it?", "room", choices=tuple((kind, kind) for kind in LOCATION_KINDS)),
            Blank("inside", "In which house or room?", "", "Noted before. May stay empty."),
            Blank("around", "What is around it?", "", "attic, basement, garage, on the floor, under pipes, damp"),
        ],
        _location,
        writes=True,
    ),
    "move": Task(
        Group.KEEP_SAFE,
        "Move things",
        "into another box or folder",
        lambda collection: [
            Blank("what", "What is moved?", "", "Numbers or marks with ; between; the mark of a box for all in it."),
            Blank("into", "Into which box or folder?", "", "Its mark, such as 3/12."),
            DO,
        ],
        _move,
        writes=True,
    ),
    "merge": Task(
        Group.KEEP_SAFE,
        "Put one box into another",
        "all that is in it, after what is there",
        lambda collection: [
            Blank("what", "Which box or folder?", "", "Its mark: 3, or 3/12 for a folder."),
            Blank("into", "Into which?", "", "Its mark."),
            DO,
        ],
        _merge,
        writes=True,
    ),
    "renumber": Task(
        Group.KEEP_SAFE,
        "New numbers for boxes",
        "all at once; old marks still find them",
        lambda collection: [Blank("pairs", "Which become which?", "", "OLD=NEW with ; between: 3=4; 4=3."), DO],
        _renumber,
        writes=True,
    ),
    "close_up": Task(
        Group.KEEP_SAFE,
        "Close the gaps in a box",
        "its positions anew from 1",
        lambda collection: [Blank("mark", "Its mark", "", "3, or 3/12 for folder 12 in box 3."), DO],
        _close_up,
        writes=True,
    ),
    "take_back": Task(
        Group.KEEP_SAFE,
        "Take back a box change",
        "the last move, note or survey",
        lambda collection: [DO],
        _take_back,
        writes=True,
    ),
    "lend": Task(
        Group.KEEP_SAFE,
        "On loan to you",
        "who lent them, due when; given back",
        lambda collection: [
            Blank("what", "Which ones?", "", "Numbers or marks with ; between."),
            Blank("how", "What has happened?", "lent", choices=(("lent", "lent to us"), ("back", "given back"))),
            Blank("lender", "Who lends them?"),
            Blank("due", "Due back on", "", "2026-12-31. May stay empty."),
        ],
        _lend,
        writes=True,
    ),
    "climate": Task(
        Group.KEEP_SAFE,
        "Temperature and humidity",
        "a log or a reading, judged",
        lambda collection: [
            file_blank(collection, "log", "A logger’s file", "", "A CSV. Empty: judge what is kept."),
            Blank("at", "Where?", "", "The room or shelf, noted before."),
            Blank("reading", "A reading by hand", "", "Temperature and humidity: 18C 45%. May stay empty."),
            Blank("order", "How is 7/4 read in it?", "",
                  choices=(("", "as in this collection"), ("dmy", "7 April"), ("mdy", "July 4"))),
            Blank("unit", "Celsius or Fahrenheit?", "",
                  choices=(("", "as the file says"), ("C", "Celsius"), ("F", "Fahrenheit"))),
        ],
        _climate,
        writes=True,
    ),
}  # fmt: skip
