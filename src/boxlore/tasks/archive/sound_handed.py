"""The recordings and papers of the closed part: what each is, who speaks, until when it is closed and why."""

from collections.abc import Iterable, Iterator

from boxlore.core.crosswalk.sound import CLIMATE, PAPER, SOUND, Beside
from boxlore.core.people.consent import Matter, is_taken_back
from boxlore.core.people.person import Person
from boxlore.core.records.closing_dates import Closing
from boxlore.core.records.item_record import StatementView
from boxlore.core.statements import Kind
from boxlore.tasks.archive.making import Making
from boxlore.tasks.archive.transfer_context import things_told
from boxlore.tasks.originals.climate import FOLDER as CLIMATE_LOGS
from boxlore.tasks.sitting.recordings import of_sitting


def sound_of(making: Making, closing: Closing) -> tuple[Beside, ...]:
    """Those that go with this part, and those of earlier transfers that the archive keeps, by their paths."""
    paths = sorted(path for path in {*making.beside, *making.kept} if path.startswith(("recordings/", "papers/")))
    told = dict(_told(making)) if paths else {}
    return tuple(_beside(making, closing, path, told.get(path)) for path in paths)


def _told(making: Making) -> Iterator[tuple[str, tuple[list[StatementView], int]]]:
    """Path of a recording -> what is told of its sitting, and how long it is (milliseconds)."""
    for sitting, views in things_told(making.collection, making.seen, Kind.SITTING).items():
        for recording in of_sitting(making.collection, sitting):
            yield recording.path, (views, recording.length)


def _beside(making: Making, closing: Closing, path: str, told: tuple[list[StatementView], int] | None) -> Beside:
    if path.startswith(f"{CLIMATE_LOGS}/"):
        return Beside(path=path, kind=CLIMATE, title=f"Climate log: {path.rpartition('/')[2]}", day="")
    views, length = told or ([], 0)
    narrators = [view for view in views if view.field == "narrator"]
    people = speakers(making, views)
    day = next((view.words for view in views if view.field == "date"), "")
    is_heard = path.startswith("recordings/")
    names = tuple(person.name for person in people)
    withs = f" with {' and '.join(view.words for view in narrators)}" if narrators else ""
    what = f"Recording of a sitting{withs}" if is_heard else "Paper of a sitting"
    return Beside(
        path=path,
        kind=SOUND if is_heard else PAPER,
        title=what if is_heard else f"{what}: {path.rpartition('/')[2]}",
        day=day or min((view.recorded_at[:10] for view in views), default=""),
        speakers=names,
        length=length,
        closure=closing.of_sound(people, is_heard=is_heard),
    )


def speakers(making: Making, views: Iterable[StatementView]) -> list[Person]:
    """Who told in a sitting, of those whom the registry has."""
    told = (_person(making, view) for view in views if view.field == "narrator")
    return [person for person in told if person is not None]


def consents_since(making: Making, people: Iterable[Person]) -> dict[str, str]:
    """What those who told in a sitting have said of their consent, and what of it is taken back, as a form has it; not
    the words that name whoever is withheld from this part."""
    may_read = making.seen.recipient.may_read
    told = [consent for person in people for consent in person.consents if may_read(consent.words)]
    back = {matter for person in people for matter in Matter if is_taken_back(person.consents, matter)}
    since = "; ".join(consent.words for consent in sorted(told, key=lambda consent: consent.day))
    return {"since": since, "taken_back": ", ".join(sorted(back))}


def _person(making: Making, view: StatementView) -> Person | None:
    """The narrator in the registry: as the words were read, else whoever has that name."""
    people = making.collection.people()
    if view.meant:
        return people.get(view.meant)
    return next((person for person in people.values() if person.name == view.words), None)
