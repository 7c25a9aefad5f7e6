"""People on the family's pages: a page for each, with a face, the years of a life, kin, and the photographs.

A doubt stands wherever a name is listed: photographs in which it is not sure that this is who is shown stand apart.
"""

import hashlib
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.people.kin import Kin, called
from boxlore.core.people.kin_terms import said_parts
from boxlore.core.people.names.list_order import list_key
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.statements import fold
from boxlore.core.wording.catalogue import Say, to_say
from boxlore.sheets.album_chapters import in_time
from boxlore.sheets.album_chapters import photographs as count_of
from boxlore.sheets.album_indexes import is_doubted, is_name
from boxlore.sheets.picture_on_paper import Box, front_of, heads_of
from boxlore.sheets.print_run import Printing
from boxlore.sheets.printable_words import clean

_ROLES = {
    ("person", False): to_say("Shown"),
    ("person", True): to_say("Perhaps shown"),
    ("named", False): to_say("Named, not shown"),
    ("named", True): to_say("Perhaps named, not shown"),
    ("photographer", False): to_say("Photographs by them"),
    ("photographer", True): to_say("Photographs perhaps by them"),
}
"""(role in a photograph, whether it is in doubt) -> the heading over these photographs."""

MOST_GENERATIONS = 3
"""How far up a word of kin is listed: to great-grandparents."""


AIR = 1.5
"""The side of the square that a face is shown in, in parts of the head's longer side."""


@dataclass(frozen=True, slots=True)
class Face:
    """Where a person's face is best seen: the record's id, and the head in 0..1 of its front (None: all of it)."""

    record: str
    head: Box | None


def person_href(person: PersonShown) -> str:
    """The path of a person's page. It rests on the id, else the name, so that it is the same at every run."""
    return href_of(person.person or fold(person.name))


def href_of(key: str) -> str:
    """The path of the page of a person's id, or folded name."""
    return f"person/{hashlib.sha256(key.encode()).hexdigest()[:16]}.html"


def once(people: Iterable[PersonShown]) -> list[PersonShown]:
    """The people, each only once; of a sure and an unsure naming the sure one."""
    unsure_first = sorted(people, key=is_doubted, reverse=True)
    kept = {person_href(person): person for person in unsure_first}
    order = list(dict.fromkeys(person_href(person) for person in people))
    return [kept[href] for href in order]


def faces_of(records: Sequence[Record]) -> dict[str, Face]:
    """The best face of everybody, by the path of their page: the largest marked head of those who are surely shown, a
    picture of one person alone before all. Of whoever is marked nowhere there is none.
    """
    best: dict[str, tuple[float, Face]] = {}
    for record in records:
        for href, size, face in _faces_in(record):
            if href not in best or size > best[href][0]:
                best[href] = (size, face)
    return {href: face for href, (_, face) in best.items()}


def around_head(head: Box, size: tuple[int, int]) -> Box:
    """A square around a head, with some air, in 0..1 of a picture of that size, moved to lie inside it."""
    wide, high = size
    side = min(max(head[2] * wide, head[3] * high) * AIR, wide, high)
    left = min(max(0.0, (head[0] + head[2] / 2) * wide - side / 2), wide - side)
    top = min(max(0.0, (head[1] + head[3] / 2) * high - side / 2), high - side)
    return left / wide, top / high, side / wide, side / high


def _faces_in(record: Record) -> Iterable[tuple[str, float, Face]]:
    scan, shown = front_of(record), record.shown()
    if scan is None:
        return
    heads = dict(heads_of(shown, scan))
    for person in shown:
        if is_doubted(person) or not is_name(person.name):
            continue
        if len(shown) == 1 and not record.nameless and not record.unnamed:
            yield person_href(person), 2.0, Face(record.id, heads.get(person.number))
        elif person.number in heads:
            yield person_href(person), heads[person.number][3], Face(record.id, heads[person.number])


def people_subjects(
    records: Sequence[Record], cards: Mapping[str, Any], printing: Printing, known: Mapping[str, Person]
) -> list[dict[str, Any]]:
    """A page for each person, with the photographs in groups by what the person is in them, by their dates; sorted by
    name.

    `known` are those of whom the audience may know all that is told, by id.
    """
    by_href: dict[str, dict[str, Any]] = {}
    for record in in_time(records):
        for person in record.people:
            start = {"name": clean(captions.one_line(person.name)), "person": person.person, "by_role": {}}
            subject = by_href.setdefault(person_href(person), start)
            rows = subject["by_role"].setdefault((person.role, is_doubted(person)), {})
            rows[record.id] = cards[record.id]
    kin = _KinLines(known, {entry["person"]: href for href, entry in by_href.items() if entry["person"]}, printing.say)
    subjects = [_subject(href, entry, printing, kin) for href, entry in by_href.items()]
    return sorted(subjects, key=lambda subject: (list_key(subject["sort"], printing.language), subject["href"]))


def _subject(href: str, entry: Mapping[str, Any], printing: Printing, kin: "_KinLines") -> dict[str, Any]:
    say = printing.say
    by_role: Mapping[tuple[str, bool], dict[str, Any]] = entry["by_role"]
    photographs = {ident for rows in by_role.values() for ident in rows}
    doubt = "" if any(not unsure for _, unsure in by_role) else f", {say('not sure')}"
    return {
        "href": href,
        "name": entry["name"],
        "life": printing.lives.get(entry["person"], ""),
        "lines": [clean(line) for line in printing.lives_worked_out.get(entry["person"], ())],
        "kin": kin.rows(entry["person"]),
        "kin_words": kin.words(entry["person"]),
        "called": kin.called(entry["person"]),
        "other_names": [clean(name) for name in printing.other_names.get(entry["person"], ())],
        "count": f"{count_of(len(photographs), say)}{doubt}",
        "photographs": len(photographs),
        "groups": [
            {"name": say(words), "shown": list(by_role[key].values())}
            for key, words in _ROLES.items()
            if key in by_role
        ],
        "sort": printing.sort_names.get(entry["person"], entry["name"]),
    }


class _KinLines:
    """The kin of everybody, as rows with links to those who have a page, and as words to search by."""

    def __init__(self, known: Mapping[str, Person], hrefs: Mapping[str, str], say: Say) -> None:
        self._known, self._hrefs, self._say = known, hrefs, say
        self._kin = Kin(known)
        self._words: dict[str, dict[str, list[str]]] = {}
        for ego in hrefs:
            for relative in self._near(ego):
                kinship = self._kin.between(ego, relative)
                if kinship is not None and (term := said_parts(kinship.parts, say)):
                    egos = self._words.setdefault(relative, {}).setdefault(term, [])
                    egos.append(called(known[ego]))

    def _near(self, ego: str) -> list[str]:
        if ego not in self._known:
            return []
        above = [ident for ident, far in self._kin.ancestors(ego).items() if 0 < far <= MOST_GENERATIONS]
        beside = [sibling for parent in (ego, *self._kin.parents(ego)) for sibling in self._kin.siblings(parent)]
        return list(dict.fromkeys([*above, *beside, *self._kin.spouses(ego), *self._kin.children(ego)]))

    def rows(self, ident: str) -> list[tuple[str, list[tuple[str, str]]]]:
        """(what they are, [(name, path of the page, or empty)])."""
        if ident not in self._known:
            return []
        kinds = (
            (to_say("Parents"), self._kin.parents(ident)),
            (to_say("Brothers and sisters"), self._kin.siblings(ident)),
            (to_say("Married to"), self._kin.spouses(ident)),
            (to_say("Children"), self._kin.children(ident)),
        )
        return [(self._say(words), [self._named(each) for each in idents]) for words, idents in kinds if idents]

    def _named(self, ident: str) -> tuple[str, str]:
        return clean(self._known[ident].name), self._hrefs.get(ident, "")

    def called(self, ident: str) -> list[str]:
        """Every name by which somebody is told, to search by: `Leidi` too."""
        person = self._known.get(ident)
        return [clean(name) for name in dict.fromkeys((*person.forms, *person.calls))] if person else []

    def words(self, ident: str) -> list[str]:
        """`grandmother of Mia and Daniel`: what somebody is to others who have a page."""
        said = self._words.get(ident, {})
        return [
            clean(self._say("{kin} of {names}", kin=term, names=self._say.listed(egos))) for term, egos in said.items()
        ]
