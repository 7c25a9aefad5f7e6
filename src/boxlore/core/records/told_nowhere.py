"""Names of people that stand in the words of an item and were told nowhere else: whether they are asked about.

A title, a story, the name of a file may name somebody whom the registry has not (`core.people.names_in_text.
names_by_shape`). Who is in a picture that is not old may live, and is asked about; so is everyone where it is not known
how old it is. Nobody is who lived so long ago, or is said to be dead beside the name; nor what is told as a place
somewhere in the collection. Who gave, lent or owned a thing, or holds its rights, did so later than it was made.
"""

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate

from boxlore.core.people.names_in_text.finder import NameFinder
from boxlore.core.people.names_in_text.names_by_shape import names_by_shape
from boxlore.core.people.names_in_text.names_of_the_living import is_told_dead, years_beside
from boxlore.core.statements import fold

ABOUT_THE_PICTURE = (
    "title",
    "occasion",
    "keyword",
    "file_name",
    "story",
    "inscription",
    "note",
    "series",
    "found in",
    "mark",
)
"""Places in a record in which somebody is named who had to do with the picture when it was made."""

LATER = ("donor", "lender", "owner", "custody", "care", "rights", "rights_holder", "attached")
"""Places in which somebody is named who may have had to do with it later."""

OWNED = ("place",)
"""Places in which only whose a house or a garden is may be somebody: all else is called so."""


@dataclass(frozen=True, slots=True)
class NamesToldNowhere:
    """`known` finds everyone of the registry, `places` are told places (folded), `old` the items (ids) whose pictures
    are so old that nobody in them lives: of a year before `since`."""

    known: NameFinder
    places: frozenset[str]
    old: frozenset[str]
    since: int

    def places_in(self, words: str, item: str, where: str) -> Sequence[tuple[int, int]]:
        """(start, end) of each such name in the words of a part of a record."""
        if (
            not item
            or where not in (*ABOUT_THE_PICTURE, *LATER, *OWNED)
            or (where in ABOUT_THE_PICTURE and item in self.old)
        ):
            return ()
        found = names_by_shape(words)
        if not found:
            return ()
        folded = fold(words)
        places = " , ".join(("", *(place for place in self.places if place in folded), ""))
        hits = sorted(self.known.hits(words), key=lambda hit: hit.start)
        starts, furthest = [hit.start for hit in hits], list(accumulate((hit.end for hit in hits), max))
        return [
            (start, end)
            for start, end in found
            if f" {fold(words[start:end])} " not in places
            and (not (before := bisect_right(starts, start)) or furthest[before - 1] < end)
            and self._is_asked(words, start, end, where)
        ]

    def _is_asked(self, words: str, start: int, end: int, where: str) -> bool:
        name = words[start:end]
        if where in OWNED and not name.endswith(("'s", "’s")):
            return False
        if is_told_dead(words, end):
            return False
        return max(years_beside(words, start, end), default=self.since) >= self.since
