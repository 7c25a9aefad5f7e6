"""Which place is meant, where told words leave it open: the choices in their order, and what a choice is kept as.

A choice is kept as the confirmed reading of the same statement, so the words stay as they were told, and undo brings
the question back. The choices are those of the stored reading: they have the same numbers whenever one comes back.
"""

from dataclasses import dataclass, replace

from boxlore.core.errors import WrongUse
from boxlore.core.places.names_apart import names_apart
from boxlore.core.places.own import OwnPlace
from boxlore.core.places.reading import READER_VERSION, Place, PlaceReading, full_name
from boxlore.core.places.taking_apart import take_apart
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Kind, Reading, Subject
from boxlore.tasks.collection.opening import Act
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.sitting.numbered_choice import numbered
from boxlore.tasks.sitting.session import Sitting

NEAR_RADIUS_KM = 15.0
"""How far a place that is only somewhere near may be off, as `gazetteer.matching` has it for `near Reval`."""


@dataclass(frozen=True, slots=True)
class OpenPlace:
    """A statement about a place whose reading asks, with the places that it may be; none where nothing is known."""

    view: StatementView
    reading: PlaceReading

    @property
    def names(self) -> list[str]:
        """The choices as one reads them, in their order: the first is number 1."""
        return names_apart(self.reading.choices)


def open_place(sitting: Sitting, record: Record, prompt: Prompt) -> OpenPlace | None:
    """The open question about the answer to this prompt: this teller's own, else another's; None if there is none."""
    if prompt.reads != "place":
        return None
    own = sitting.own(record, prompt)
    asking = [view for view in ([own] if own else record.all(prompt.field)) if view.asks]
    return _read_as(sitting, record, asking[0]) if asking else None


def read_place(sitting: Sitting, record: Record, prompt: Prompt) -> OpenPlace | None:
    """What this teller's own answer to this prompt was read as, in question or not, so that it can be put right; None
    where it was read as nothing."""
    own = sitting.own(record, prompt) if prompt.reads == "place" else None
    return _read_as(sitting, record, own) if own else None


def _read_as(sitting: Sitting, record: Record, view: StatementView) -> OpenPlace | None:
    rows = sitting.collection.store.statements(Subject(Kind.ITEM, record.id))
    reading = next((reading for statement, reading in rows if statement.id == view.statement), None)
    value = reading.value if reading is not None else None
    return OpenPlace(view, value) if isinstance(value, PlaceReading) else None


def choose(sitting: Sitting, record: Record, question: OpenPlace, number: int, *, near: bool = False) -> Place:
    """Keep that choice `number` (from 1) is meant, or with `near` a place somewhere near it. Returns the place.

    Raises WrongUse for a number that no choice has, and for `near` where the choice is an area without a point.
    """
    place = numbered(question.reading.choices, number)
    return mean(sitting, record, question, _somewhere_near(place) if near else place)


def mean(sitting: Sitting, record: Record, question: OpenPlace, place: Place) -> Place:
    """Keep that this place is meant, whether it was among the choices or not. Returns it."""
    act = sitting.collection.act(f"place: {full_name(place)[:40]}")
    _keep(sitting, record, question, place, act)
    return place


def _somewhere_near(place: Place) -> Place:
    if place.lat is None or place.lon is None:
        raise WrongUse(f"{full_name(place)} is an area: a place in it is not near it.", "Choose the area itself.")
    radius = max(place.radius_km or 0.0, NEAR_RADIUS_KM)
    return replace(place, near=True, lat=round(place.lat, 1), lon=round(place.lon, 1), radius_km=radius)


def no_place(sitting: Sitting, record: Record, question: OpenPlace) -> None:
    """Keep that the words are none of the choices: they stay as they were told, and stand for no place on a map."""
    act = sitting.collection.act(f"no place on a map: {question.view.words[:40]}")
    value = PlaceReading(question.reading.text, "kept", (), question.reading.findings)
    act.readings.append((question.view.statement, Reading("place", value, READER_VERSION, confirmed=True)))
    sitting.finish(act, record.id)


def own_parts(question: OpenPlace) -> tuple[str, str]:
    """What a place of the family's own would be called by the words told, and what they say it lies in: a name, and no
    words such as “in the market square”."""
    name, *around = take_apart(question.view.words).parts or (question.view.words,)
    return name, ", ".join(part for part in around if not part[:1].islower())


def make_own(
    sitting: Sitting, record: Record, question: OpenPlace, called: str = "", inside: str | None = None
) -> Place:
    """Make a place of the family's own: of the words told, its name first and what it lies in behind, or of what the
    keeper says, `called` and `inside`.

    Whoever tells the same words again means this place. Returns it.
    """
    told_name, told_inside = own_parts(question)
    name, around = called.strip() or told_name, (told_inside if inside is None else inside.strip())
    names = tuple(dict.fromkeys((name, told_name)))
    act = sitting.collection.act(f"place: {name[:40]}")
    subject = act.new(Kind.PLACE)
    for each in names:
        act.state(subject, "name", each)
    best = None
    if around:
        statement = act.state(subject, "inside", around)
        understood = sitting.teller.understanding.read("place", statement.words)
        if understood is not None:
            act.readings.append((statement.id, understood.reading))
            best = understood.reading.value.best if isinstance(understood.reading.value, PlaceReading) else None
    own = OwnPlace(id=subject.id, names=names, inside_words=around, inside=best)
    _keep(sitting, record, question, own.place, act)
    return own.place


def _keep(sitting: Sitting, record: Record, question: OpenPlace, place: Place, act: Act) -> None:
    value = PlaceReading(question.reading.text, "match", (place,), question.reading.findings)
    act.readings.append((question.view.statement, Reading("place", value, READER_VERSION, confirmed=True)))
    sitting.finish(act, record.id)
