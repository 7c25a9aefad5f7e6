"""Places for the shell: the gazetteer opened once, then one reading for each text."""

from collections.abc import Callable, Iterable, Iterator

from boxlore.core.places_text import PlaceReading
from boxlore.gazetteer.opening import open_gazetteer


def read_places(
    asked: Iterable[tuple[str, int | None]], built: Callable[[str, int, int], None]
) -> Iterator[PlaceReading]:
    """What is understood of each (words, year). `built` hears how far a first build of the index is."""
    gazetteer = open_gazetteer(progress=built)
    for words, year in asked:
        yield gazetteer.read(words, year=year)
