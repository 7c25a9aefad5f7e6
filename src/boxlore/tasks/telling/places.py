"""Places: readings for the shell, the family's own places, and a keeper's own bigger gazetteer."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.coordinates import COORDINATES_WORDS, Coordinates
from boxlore.core.fields.letters import check_typed, is_blank
from boxlore.core.findings import Finding, Severity, several
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.own import OwnPlace, read_own
from boxlore.core.places.reading import READER_VERSION, PlaceReading, full_name
from boxlore.core.places.taking_apart import fold_place
from boxlore.core.statements import Kind, Reading, Subject
from boxlore.disk.writing import replacing
from boxlore.gazetteer.bigger_file import kept_lines
from boxlore.gazetteer.index import BuildProgress
from boxlore.gazetteer.lookup import Gazetteer, open_anyway
from boxlore.gazetteer.matching import told_often
from boxlore.tasks.collection.opening import Collection

FILE_NAME = "places.tsv"
"""A keeper's own gazetteer, filtered, inside the collection."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NewPlace:
    """What the keeper says of a place of the family's own."""

    name: str
    inside: str = ""
    at: str = ""
    also: Sequence[str] = ()
    years: str = ""


def read_places(
    asked: Iterable[tuple[str, int | None]],
    built: BuildProgress,
    said: Callable[[str], None],
    collection: Collection | None = None,
) -> Iterator[PlaceReading]:
    """What is understood of each (words, year), with the collection's own places and files if there is one."""
    gazetteer = open_anyway(said, built, extra=own_gazetteer(collection) if collection else None)
    owns = own_places(collection) if collection else []
    used = told_often(collection.store.places_used() if collection else {})
    home = home_countries(collection) if collection else frozenset()
    for words, year in asked:
        yield read_own(words, owns) or gazetteer.read(words, year=year, used=used, home=home)


def home_countries(collection: Collection) -> frozenset[str]:
    """The countries of the collection's settings, whose places come first."""
    return frozenset(collection.settings.countries.split())


def gazetteer_of(collection: Collection, built: BuildProgress | None = None) -> Gazetteer:
    """The gazetteer with this collection's own file, its index built if it must be."""
    return open_anyway(collection.unsaid.append, built, extra=own_gazetteer(collection))


def own_gazetteer(collection: Collection) -> Path | None:
    """The keeper's own gazetteer file, if this collection has one."""
    path = collection.folder / FILE_NAME
    return path if path.is_file() else None


def own_places(collection: Collection) -> list[OwnPlace]:
    """Every place of the family's own, in the order they were made."""
    places: list[OwnPlace] = []
    for ident, rows in collection.store.subjects("place"):
        words: dict[str, list[str]] = {}
        inside = None
        for statement, reading in rows:
            words.setdefault(statement.field, []).append(statement.words)
            value = reading.usable_value if reading is not None else None
            if statement.field == "inside" and isinstance(value, PlaceReading):
                inside = value.best
        if "name" not in words:
            continue
        point = words.get("coordinates", [""])[-1]
        places.append(
            OwnPlace(
                id=ident,
                names=tuple(words["name"] + words.get("called_then", [])),
                inside_words=words.get("inside", [""])[-1],
                inside=inside,
                point=_degrees(COORDINATES_WORDS.read(point)) if point else None,
            )
        )
    return places


def _degrees(point: Coordinates) -> tuple[float, float]:
    return point.latitude, point.longitude


def add_place(collection: Collection, new: NewPlace, gazetteer: Gazetteer) -> list[Finding]:
    """Make a place of the family's own. What was told of it before, and is still asked about, is read as it is now, in
    the same act. Raises WrongUse for a name that is taken or coordinates that are none."""
    taken = {fold_place(name): own for own in own_places(collection) for name in own.names}
    for name in (new.name, *new.also):
        if is_blank(name) or not fold_place(name):
            raise WrongUse("A place needs a name.", 'Say it as the family does: boxlore places add "Grandpa\'s farm".')
        if fold_place(name) in taken and fold_place(new.inside) == fold_place(taken[fold_place(name)].inside_words):
            raise WrongUse(f"There is a place “{name}” already.", "Say what it lies in (--inside) to tell them apart.")
    for words in filter(None, (*(new.name, *new.also), new.inside, new.years)):
        check_typed(words)
    coordinates = COORDINATES_WORDS.typed(new.at) if new.at else None
    inside = _around(collection, new.inside, gazetteer) if new.inside else None
    act = collection.act(f"place: {new.name[:40]}")
    place = act.new(Kind.PLACE)
    act.state(place, "name", new.name.strip())
    for name in new.also:
        act.state(place, "name", name.strip())
    if inside is not None:
        statement = act.state(place, "inside", new.inside.strip())
        act.readings.append((statement.id, place_reading(inside, None)))
    if coordinates:
        act.state(place, "coordinates", COORDINATES_WORDS.write(coordinates))
    if new.years:
        act.state(place, "note", f"years: {new.years}")
    point = _degrees(coordinates) if coordinates else None
    own = OwnPlace(
        id=place.id,
        names=(new.name.strip(), *(name.strip() for name in new.also)),
        inside_words=new.inside.strip(),
        inside=inside.best if inside else None,
        point=point,
    )
    act.readings += (read := list(_told_before(collection, [*own_places(collection), own])))
    act.done()
    if read:
        were = several(len(read), "place that was told before is", "places that were told before are")
        collection.unsaid.append(f"{were} read with it now.")
    return outside_country(gazetteer, new.name, inside, point)


def _told_before(collection: Collection, owns: Sequence[OwnPlace]) -> Iterator[tuple[str, Reading]]:
    """The statements (ids) of places that are still asked about and name one of the family's own, each with its
    reading; what the keeper has confirmed, or was read for sure, stays."""
    named = {item for item, _, words in collection.store.words_of(["place"]) if read_own(words, owns)}
    told = [collection.store.statements(Subject(Kind.ITEM, item)) for item in named if collection.store.number_of(item)]
    for kind in (Kind.EVENT, Kind.SITTING):
        told += [rows for ident, rows in collection.store.subjects(kind) if ident in named]
    for statement, reading in (row for rows in told for row in rows):
        again = read_own(statement.words, owns) if statement.field == "place" else None
        if again is not None and not (reading is not None and reading.usable):
            settings = reading.settings if reading is not None else "year=None"
            yield statement.id, replace(place_reading(again, None), settings=settings)


def _around(collection: Collection, words: str, gazetteer: Gazetteer) -> PlaceReading:
    """What a place lies in: another of the family's own, or one of the gazetteer. Raises WrongUse for an unknown one,
    with the names that are nearest."""
    reading = read_own(words, own_places(collection)) or gazetteer.read(words)
    if reading.kind in ("kept", "perhaps"):
        nearest = " or ".join(f"“{full_name(place)}”" for place in reading.choices[:3])
        raise WrongUse(
            f"No place “{words.strip()[:60]}” is known, so nothing can lie in it.",
            f"Is it {nearest}? Then write it so." if nearest else "Write a town, an area or a country.",
        )
    return reading


def outside_country(
    gazetteer: Gazetteer, name: str, inside: PlaceReading | None, point: tuple[float, float] | None
) -> list[Finding]:
    """A point whose nearest town lies in another country than the one named."""
    country_told = inside.best.country_code if inside and inside.best else ""
    there = gazetteer.country_at(*point) if point else ""
    if not country_told or not there or country_told == there:
        return []
    message = (
        f"{name} is said to be in {COUNTRY_NAMES[country_told]}, but the town nearest to its coordinates is in "
        f"{COUNTRY_NAMES.get(there, there)}: a minus left out, or the two numbers exchanged?"
    )
    because = (full_name(inside.best) if inside and inside.best else "", f"{point}")
    return [
        Finding(
            rule="place.outside",
            severity=Severity.ASK,
            message=message,
            because=because,
            source="nearest town of GeoNames cities500",
        )
    ]


def take_gazetteer(
    collection: Collection, path: Path, *, names: Path | None, countries: Sequence[str], heard: BuildProgress
) -> int:
    """Take a GeoNames table of the keeper's own into the collection; how many places and areas were kept.

    `path` has GeoNames' 19 columns, `names` the columns of alternateNamesV2; only classes P and A are kept, and
    only the countries asked for, if any are. Raises CouldNot when a file cannot be read or holds none of it.
    """
    target = collection.folder / FILE_NAME
    count = 0
    try:
        with replacing(target) as file:
            for line in kept_lines(path, names=names, countries=frozenset(countries), progress=heard):
                file.write(f"{line}\n".encode())
                count += 1
            if not count:
                what_to_do = "It must be a GeoNames table of 19 columns."
                raise CouldNot(f"{path.name} holds no place of that kind.", what_to_do)
    except UnicodeDecodeError as error:
        raise CouldNot(f"{path} could not be taken in ({error}).", "Nothing was changed.") from error
    return count


def place_reading(read: PlaceReading, year: int | None) -> Reading:
    """The reading of a place as it is stored; one that is no match asks."""
    return Reading("place", read, READER_VERSION, settings=f"year={year}", asks=read.kind != "match")
