"""Put right: what is missing or cannot be so, told over all items, and places of the family's own."""

from datetime import date

from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress, counting
from boxlore.tui.menu_tasks.task import FormAnswers, Group, Task
from boxlore.tui.screens.forms import Blank


def _own_place(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.telling.places import NewPlace, add_place, gazetteer_of

    if not answers["name"]:
        raise WrongUse("A place needs a name.", "Say it as the family does: Grandpa’s farm.")
    also = tuple(part.strip() for part in answers["also"].split(";") if part.strip())
    place = NewPlace(name=answers["name"], inside=answers["inside"], at=answers["at"], also=also)
    findings = add_place(collection, place, gazetteer_of(collection, counting(progress)))
    return [f"“{answers['name']}” is a place of the family’s own now.", *[finding.message for finding in findings]]


def _give(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.sitting.who_said_it import give_all

    if not answers["name"]:
        raise WrongUse("Nobody is named.", "Write who told them.")
    try:
        since = date.fromisoformat(answers["since"]).isoformat() if answers["since"] else ""
    except ValueError:
        raise WrongUse(f"“{answers['since'][:20]}” is not a date.", "Write it as 2026-12-31.") from None
    count = give_all(collection, answers["name"], since, progress)
    return [f"{several(count, 'answer')} of the keeper: told by {answers['name']} now." if count else "None is there."]


TASKS = {
    "give": Task(
        Group.PUT_RIGHT,
        "Give answers to a teller",
        "those that were noted as yours",
        lambda collection: [
            Blank(
                "name",
                "Who told them?",
                "",
                "Story, who, when, where and the like. What is noted of sleeves and damage stays the keeper’s.",
            ),
            Blank("since", "Only what was kept since", collection.clock.today().isoformat(), "Empty for all."),
        ],
        _give,
        writes=True,
    ),
    "own_place": Task(
        Group.PUT_RIGHT,
        "A place of the family’s own",
        "a farm, a holiday house, a grave",
        lambda collection: [
            Blank("name", "What does the family call it?"),
            Blank("inside", "In or near which town?", "", "For instance: Milton, Otago."),
            Blank("at", "Latitude and longitude", "", "-45.82, 170.62 (south and west: minus). May stay empty."),
            Blank("also", "Other names of it", "", "Several with a semicolon between."),
        ],
        _own_place,
        writes=True,
    ),
}
