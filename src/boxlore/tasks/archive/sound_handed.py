"""The recordings and papers of the closed part: what each is, who speaks, until when it is closed and why."""

from collections.abc import Iterable, Iterator
from datetime import date
from pathlib import Path

from boxlore.core.crosswalk.sound import CLIMATE, PAPER, SOUND, Beside
from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.people.consent import Matter, allows, is_taken_back
from boxlore.core.people.person import Person
from boxlore.core.records.closing_dates import Closing
from boxlore.core.records.item_record import StatementView
from boxlore.core.statements import Kind, day_in, day_of
from boxlore.tasks.archive.making import Making
from boxlore.tasks.archive.sittings_held import not_to_be_heard, sittings_held
from boxlore.tasks.archive.transfer_context import things_told
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.originals.climate import FOLDER as CLIMATE_LOGS


def sound_going(making: Making) -> Iterator[tuple[str, Path]]:
    """Recordings and papers that go, by their paths in the part: those of sittings that go, and with everything those
    of none."""
    if not making.has_sittings or not making.archive.wants("recordings"):
        return
    going = making.sittings
    goes = {path: held.id in going for held in sittings_held(making.collection) for path in held.paths}
    for path in _kept(making.collection):
        inside = path.relative_to(making.collection.folder).as_posix()
        if goes.get(inside, making.is_whole):
            yield f"metadata/{path.name}" if path.suffix == ".vtt" else inside, path


def sound_staying(making: Making) -> Iterator[Finding]:
    """Sentences for the keeper, where recordings stay since items were chosen, since the archive has not said yes, or
    since somebody who speaks in them is kept from archives."""
    if making.seen.to.is_public or not making.archive.wants("recordings"):
        return
    unheard = not_to_be_heard(making.collection, making.seen.recipient)
    held_here = list(sittings_held(making.collection))
    silent = [held for held in held_here if held.is_wanted is None and held.id not in unheard]
    if not making.has_sittings and any(_kept(making.collection)):
        yield _stays(_CHOSEN)
    elif making.has_sittings and silent and not making.is_whole:
        yield _stays(f"The recordings and papers of {several(len(silent), 'sitting')} stay here: {_UNASKED}")
    kept = [held for held in held_here if held.id in unheard]
    if making.has_sittings and kept:
        yield _stays(f"The recordings and papers of {several(len(kept), 'sitting')} stay here: {_UNHEARD}")


def _stays(words: str) -> Finding:
    return make_finding("sound.stays", Severity.NOTE, words, "our own rule")


_UNHEARD = (
    "somebody who speaks in them is kept from archives (boxlore people audience), or what was agreed keeps them in the "
    "family, or minutes of them are kept from outside."
)
_CHOSEN = (
    "Recordings and papers of sittings stay here, for items were chosen: they go with a transfer of everything, or, "
    "where the archive wants them, with all that it wants (--wanted and no other choice)."
)
_UNASKED = (
    "the archive has not said whether it wants them. They stand at the end of offer.csv: ask it, and read its answer."
)


def _kept(collection: Collection) -> Iterator[Path]:
    for name in ("recordings", "papers"):
        for path in sorted((collection.folder / name).rglob("*")):
            if path.is_file() and not path.name.startswith("."):
                yield path


def sound_of(making: Making, closing: Closing) -> tuple[Beside, ...]:
    """Those that go with this part, and those of earlier transfers that the archive keeps, by their paths."""
    paths = sorted(path for path in {*making.beside, *making.kept} if path.startswith(("recordings/", "papers/")))
    told = dict(_told(making)) if paths else {}
    return tuple(_beside(making, closing, path, told.get(path, _OF_NONE)) for path in paths)


_Told = tuple[str, list[StatementView], int, bool, str]
"""The id of a sitting, what is told of it, how long a recording of it is (milliseconds), whether it has a paper, the
audience that was agreed."""
_OF_NONE: _Told = "", [], 0, False, ""


def _noted_on(making: Making, path: str, sitting: str) -> date | None:
    """When a recording or paper was noted at the latest: with its sitting, what else lies there, which may be younger,
    with the transfer that first had it; None if that is this one."""
    if sitting and path.startswith("recordings/"):
        return day_of(sitting)
    held = making.earlier.files.get(path) if making.earlier else None
    made = {bag.transfer: bag.made for bag in making.earlier.bags} if making.earlier else {}
    return day_in(made.get(held.transfer, "")) if held else None


def _told(making: Making) -> Iterator[tuple[str, _Told]]:
    """Path of a recording or paper -> its sitting."""
    told = things_told(making.collection, making.seen, Kind.SITTING)
    for held in sittings_held(making.collection):
        for path in held.paths:
            yield path, (held.id, told.get(held.id, []), held.recordings.get(path, 0), bool(held.papers), held.agreed)


def _beside(making: Making, closing: Closing, path: str, told: _Told) -> Beside:
    if path.startswith(f"{CLIMATE_LOGS}/"):
        return Beside(path=path, kind=CLIMATE, title=f"Climate log: {path.rpartition('/')[2]}", day="")
    sitting, views, length, has_papers, agreed = told
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
        closure=closing.of_sound(people, is_heard=is_heard, since=_noted_on(making, path, sitting), agreed=agreed),
        sitting=sitting,
        reference="; ".join(view.words for view in views if view.field == "archive_reference"),
        without_consent=is_heard and not (has_papers or _is_agreed(people, views)),
    )


def _is_agreed(people: Iterable[Person], views: Iterable[StatementView]) -> bool:
    """Whether anything is noted as agreed in a sitting, or later with each who speaks in it."""
    voices = [allows(person.consents, Matter.VOICE) for person in people]
    return any(view.field == "agreement" for view in views) or (bool(voices) and all(voices))


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
