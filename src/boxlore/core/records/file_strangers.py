"""Whom a record or a scan's own file says that it shows, and of whom the registry knows nothing: they count as living.

A file names people as shown (`PersonInImage`, the name of a region of a face) who were never told here. A name in a
caption may be anything; this says who is in the picture. So the scan is held until the keeper has answered. The same
holds for words told of who is there that were made nobody yet, since they may be no name: they wait with the question.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from hashlib import sha256

from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.people.firms import is_firm
from boxlore.core.people.names_in_text.ordinary_words import is_english
from boxlore.core.people.names_in_text.text_normalising import read_text
from boxlore.core.people.names_in_text.unknown_names import UnknownNames
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import Record, ScanFile, StatementView
from boxlore.core.records.name_answers import NOTHING_DECIDED, STRANGER, Decided
from boxlore.core.records.told_nowhere import NamesToldNowhere
from boxlore.core.statements import Said, fold

INSIDE = "inside the file"

_LETS_OUT = (NamingAnswer.OTHER, NamingAnswer.MAY)
_OWNER = re.compile(r"['’‘ʼ´`′＇]s?$")

WHO = ("person", "named", "photographer")
"""Fields whose words are people."""


@dataclass(frozen=True, slots=True)
class Strangers:
    """`known` are the names of everyone in the registry, folded; `decided` is what the keeper has answered; `unknown`
    are the names that were told of who is there and were made nobody yet."""

    known: frozenset[str]
    decided: Decided = NOTHING_DECIDED
    unknown: UnknownNames | None = None
    shapes: NamesToldNowhere | None = None

    def is_told(self, view: StatementView, item: str) -> bool:
        """Whether words of who is there, or took the picture, are read as nobody and may be a name all the same."""
        is_known = view.meant or fold(view.words) in self.known
        if view.field not in WHO or is_known or not _may_be_a_name(view.words):
            return False
        where = INSIDE if view.source.said is Said.FILE else view.field  # asked of the file, and answered there
        return not self._lets_out(item, where, view.words)

    def are_named(self, words: str, item: str, where: str) -> bool:
        """Whether words name, or may name, somebody of whom the registry knows nothing."""
        return bool(self.named_in(words, item, where))

    def named_in(self, words: str, item: str, where: str) -> Sequence[tuple[int, int]]:
        """(start, end) of each such name in words that was not let out."""
        places = list(self.unknown.places_in(words)) if self.unknown is not None else []
        taken = {at for begin, stop in places for at in range(begin, stop)}
        for place in self.shapes.places_in(words, item, where) if self.shapes is not None else ():
            if taken.isdisjoint(range(*place)):
                places.append(place)
        if not places or self.decided.answers.get((item, where, STRANGER, stranger_digest(words))) in _LETS_OUT:
            return ()
        return [place for place in sorted(places) if not self._lets_out(item, where, name_told(words, place))]

    def _lets_out(self, item: str, where: str, name: str) -> bool:
        """Whether the keeper has let a name out: in this place, or, of two words and more, in any."""
        digest = stranger_digest(name)
        answer = self.decided.answers.get((item, where, STRANGER, digest))
        if answer is None and is_told_whole(name):
            answer = self.decided.of_strangers.get(digest)
        return answer in _LETS_OUT

    def shown_in(self, record: Record) -> Iterator[tuple[ScanFile, str]]:
        """(scan, name) for each person whom a file of the record shows, whom nobody knows, and who was not let out."""
        for scan in record.scans:
            for name in _named_as_shown(scan):
                if fold(name) not in self.known and not self._lets_out(record.id, INSIDE, name):
                    yield scan, name


def strangers_to(
    people: Iterable[Person],
    decided: Decided,
    told: Iterable[str] = (),
    *,
    living: Iterable[str] = (),
    shapes: NamesToldNowhere | None = None,
) -> Strangers:
    """For a registry: whoever is called by a whole name of somebody in it is that one, and judged as that one.

    `told` are words of who is somewhere, which were made nobody: those that may be names are sought in all words,
    as are the names of the `living` of whom words tell. `shapes` finds the names that were told nowhere else.
    """
    everyone = tuple(people)
    names = (name for person in everyone for name in (person.name, person.sort_name, *person.forms))
    known = frozenset(map(fold, names))
    sought, living_sought = (
        [words for words in named if fold(words) not in known and not is_firm(words)] for named in (told, living)
    )
    unknown = UnknownNames(everyone, sought, living_sought)
    return Strangers(known, decided, unknown if unknown else None, shapes)


def stranger_digest(name: str) -> str:
    """By what an answer about a stranger is known again."""
    return f"{sha256(fold(name).encode()).hexdigest()[:16]}:0:0"


def name_told(words: str, place: tuple[int, int]) -> str:
    """The name in a place of words, without the ending of whose something is: one person is asked about once."""
    return _OWNER.sub("", words[slice(*place)])


def is_told_whole(name: str) -> bool:
    """Whether a name has two words and more: a given name alone may be another one's in the next item."""
    return len(read_text(name).words) > 1


def _may_be_a_name(words: str) -> bool:
    """Whether a word is written large or in letters that are not, and is no English word that words begin with; a
    studio or a firm is nobody."""
    if is_firm(words):
        return False
    for at, word in enumerate(read_text(words).words):
        is_plain = word.spelled[0].islower() or not word.spelled[0].isalpha()
        if not is_plain and not (at == 0 and is_english(word.folded)):
            return True
    return False


def _named_as_shown(scan: ScanFile) -> Iterator[str]:
    for line, words in EMBEDDED_WORDS.read(scan.embedded).lines if scan.embedded else ():
        if line == "people":
            yield from filter(None, map(str.strip, words.split(";")))
