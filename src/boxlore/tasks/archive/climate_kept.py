"""The climate where a collection is kept: a table in the closed part, beside the logs themselves, so that a collection
made of the transfer judges them again.

Of where boxes stand it tells no more than where something was measured; a place whose name may not go to archives
stands there without it.
"""

from collections.abc import Container, Iterator, Mapping
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.cells import read_rows
from boxlore.core.fields.originals import CLIMATE_WORDS, MEASURED_WORDS, ClimateFile
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView
from boxlore.tasks.originals.housing_now import house_of

TABLE = "metadata/climate.csv"
HEADING = ("Where", "Log", "SHA-256", "Bytes", "Degrees in", "Dates in the order of", "Read by hand (°C and % RH)")
PARTS = " / "
"""Between the names of a place, from the house inwards."""
UNNAMED = "a place that is not named here"


def climate_rows(collection: Collection, seen: AudienceView, going: Container[str]) -> Iterator[list[str]]:
    """The rows, with their heading: of each place its logs that are `going` (paths), and the readings typed by hand."""
    yield list(HEADING)
    places = house_of(collection).locations
    for at, (ident, told) in enumerate(collection.store.subjects(Kind.LOCATION), 1):
        named = PARTS.join(places[ident].path)
        where = named if seen.recipient.may_read(named) else f"{UNNAMED} ({at})"
        for statement, _ in told:
            if cells := _cells(statement, going):
                yield [where, *cells]


def _cells(statement: Statement, going: Container[str]) -> list[str]:
    """What a row has of one statement beside its place; nothing for another field, and for a log that stays."""
    if statement.field == "measured":
        return ["", "", "", "", "", statement.words]
    log = CLIMATE_WORDS.read(statement.words) if statement.field == "climate" else None
    if log is None or log.path not in going:
        return []
    return [log.path, log.sha256, str(log.bytes), log.unit, log.order, ""]


def state_climate(act: Act, metadata: Path, files: Container[str]) -> None:
    """State what the table of a part says, of the logs that are among its `files` (paths). Raises CouldNot for a table
    that says what no collection may hold."""
    table = metadata / Path(TABLE).name
    if not table.is_file():
        return
    places: dict[tuple[str, ...], Subject] = {}
    with open(table, encoding="utf-8-sig", newline="") as file:
        for row in read_rows(file):
            where, path, hand = (row.get(name) or "" for name in (HEADING[0], HEADING[1], HEADING[-1]))
            if not where or not (hand or path in files):
                continue
            try:
                words = MEASURED_WORDS.write(MEASURED_WORDS.typed(hand)) if hand else _log(path, row)
            except WrongUse as error:
                why = f"The package tells of a climate what no collection may hold. {error}"
                raise CouldNot(why, "Ask for it again.") from error
            act.state(_place(act, places, tuple(where.split(PARTS))), "measured" if hand else "climate", words)


def _log(path: str, row: Mapping[str, str]) -> str:
    """The words of a log of the table."""
    sha256, size, unit, order = (row.get(name) or "" for name in HEADING[2:6])
    whole = int(size) if size.isdecimal() else 0
    return CLIMATE_WORDS.write(ClimateFile(path=path, sha256=sha256, bytes=whole, unit=unit, order=order))


def _place(act: Act, places: dict[tuple[str, ...], Subject], path: tuple[str, ...]) -> Subject:
    """The location of these names, made with those around it where there is none yet."""
    if path not in places:
        around = _place(act, places, path[:-1]) if len(path) > 1 else None
        places[path] = act.new(Kind.LOCATION)
        act.state(places[path], "name", path[-1])
        act.state(places[path], "kind", "room" if around else "house")
        if around:
            act.state(places[path], "inside", around.id)
    return places[path]
