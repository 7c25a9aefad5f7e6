"""Names of people that stand in told words and were told nowhere else: whether they are asked about.

A title, a story, the name of a file, of an event or of a place may name somebody whom the registry has not
(`core.people.names_in_text.names_by_shape`). Which fields are looked through the table of fields says: whatever is told
in words, and is not read as a person, who is asked about as one. Who is in a picture that is not old may live, and is
asked about; so is everyone where it is not known how old it is. Nobody is who lived so long ago, or is said to be dead
beside the name; nor what is told as a place somewhere in the collection. Who gave, lent or mended a thing, or holds its
rights, did so later than it was made.
"""

import re
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import accumulate

from boxlore.core.dates.lexer import lex
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.names_in_text.borne_names import is_borne_whole
from boxlore.core.people.names_in_text.finder import NameFinder
from boxlore.core.people.names_in_text.names_by_shape import names_by_shape
from boxlore.core.people.names_in_text.names_of_the_living import (
    is_addressed,
    is_of_ours,
    is_told_dead,
    years_beside,
)
from boxlore.core.people.names_in_text.text_normalising import read_text
from boxlore.core.people.names_in_text.words_beside_names_table import AT_PEOPLES
from boxlore.core.statements import Kind, Subject, fold

ABOUT_THE_PICTURE = (
    "title",
    "occasion",
    "keyword",
    "file_name",
    "date",
    "story",
    "inscription",
    "note",
    "series",
    "found in",
    "mark",
)
"""Places in a record in which somebody is named who had to do with the picture when it was made: whoever is named in
another may have had to do with it later."""

NO_FIELDS = ("found in", "mark")
"""Places in a record that are no fields, and are looked through as well."""

NAMES_OF_PLACES = ("place name", "place called_then")
"""What places are called: only whose a house or a garden is, at whose family's it is, and who has a title or a whole
name, may be somebody there, as in words that are read as a place; all else is called so."""

EVENT_NAME = "event name"

_OWNER = re.compile(r"['’‘ʼ´`′＇]s?$")


def where_told(about: Subject, field: str) -> tuple[str, str]:
    """(item, where) of words about a thing, by which they are judged and answered: of what is no item `event name`."""
    return (about.id, field) if about.kind is Kind.ITEM else ("", f"{about.kind} {field}")


@cache
def may_name(where: str) -> bool:
    """Whether words told there may name somebody of whom nobody was told. Who is in a picture or took it is asked about
    as such; of a person, what he or she is called names that one."""
    kind, _, name = where.rpartition(" ")
    field = FIELDS.get(name)
    if field is None or not field.told:
        return where in NO_FIELDS
    if kind == Kind.PERSON:
        return field.reads in ("date", "place", "person") or (len(field.kinds) > 1 and field.reads != "name")
    return bool(kind) or field.reads != "person"


def _reads(where: str) -> str:
    """What words told there are read as."""
    field = FIELDS.get(where.rpartition(" ")[2])
    return "place" if where in NAMES_OF_PLACES else field.reads if field is not None else ""


@dataclass(frozen=True, slots=True)
class NamesToldNowhere:
    """`known` finds everyone of the registry, `places` are told places (folded), `old` the items (ids) whose pictures
    are so old that nobody in them lives: of a year before `since`; `long_ago` is what events of such years are called
    (folded)."""

    known: NameFinder
    places: frozenset[str]
    old: frozenset[str]
    since: int
    long_ago: frozenset[str] = frozenset()

    def places_in(self, words: str, item: str, where: str) -> Sequence[tuple[int, int]]:
        """(start, end) of each such name in words about an item (id, empty of what is none), told there."""
        if not may_name(where) or (where in ABOUT_THE_PICTURE and item in self.old):
            return ()
        if where == EVENT_NAME and fold(words) in self.long_ago:
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
            if (not (before := bisect_right(starts, start)) or furthest[before - 1] < end)
            and self._is_asked(words, start, end, where, places)
        ]

    def _is_asked(self, words: str, start: int, end: int, where: str, places: str) -> bool:
        reads = _reads(where)
        is_place = reads == "place" or f" {fold(words[start:end])} " in places
        if is_place and not (_is_owner(words, start, end) or _is_led(words, start) or is_borne_whole(words[start:end])):
            return False
        if is_told_dead(words, end) or (reads == "date" and _is_of_a_date(words, start, end)):
            return False
        return max(years_beside(words, start, end), default=self.since) >= self.since


def _is_of_a_date(words: str, start: int, end: int) -> bool:
    """Whether all that is taken for a name is words of a date: `June`, `Silvester`."""
    return not any("name" in token.kinds for token in lex(words) if token.start < end and start < token.end)


def _is_led(words: str, start: int) -> bool:
    """Whether a title, a word of kin, or one of people stands before what is no place then: `Dr Brannock, High Street`,
    `bei Brannocks`."""
    before = [word for word in read_text(words).words if word.start < start][-1:]
    return any(is_addressed(word) or is_of_ours(word) or word.folded in AT_PEOPLES for word in before)


def _is_owner(words: str, start: int, end: int) -> bool:
    """Whether something is said to be a person's, who is no place then: `Helmi's garden`, `at the Brannocks'`."""
    name, behind = words[start:end], words[end : end + 1]
    return bool(_OWNER.search(name)) or (name.endswith("s") and bool(_OWNER.match(behind)))
