"""A tree file taken into the registry, with the file as the source of every statement.

A person or marriage is known again by an identifier for life (UID, EXID), else by the file's name and its own
cross-reference. A second import adds what is new and replaces what the file now says otherwise; what the keeper
has corrected or struck stays as the keeper left it, and what the file no longer says stays and is counted.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from itertools import permutations
from pathlib import Path

from boxlore.core.dates import phrases
from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.people.names.forms import may_be_called, parts_of
from boxlore.core.people.reference import id_meant
from boxlore.core.statements import Kind, Reading, Said, Source, Statement, Subject
from boxlore.formats.gedcom import Family, Individual, Tree, UnreadStructure, stricter
from boxlore.formats.gedcom_kin import RAISED, links, not_by_blood, raised
from boxlore.formats.gedcom_lines import Fault
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.collection.settings import phrase_settings
from boxlore.tasks.people.tree_file_opening import read_file
from boxlore.tasks.telling.understanding import Around, Understanding, date_reading, person_reading

BATCH = 4000
"""Statements written in one transaction of the act."""

OPEN_ENDED = ("BEF", "AFT")
"""Whether the day itself counts is open in 5.5.1 and settled in 7.0 (inclusive); taken as inclusive, and said."""


@dataclass(slots=True)
class ImportResult:
    """What came of an import. `left` and `faults` are what was not understood; `said` what a person should know."""

    name: str
    version: str
    encoding: str
    new: int = 0
    changed: int = 0
    same: int = 0
    marriages: int = 0
    statements: int = 0
    left: list[UnreadStructure] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    said: list[str] = field(default_factory=list)
    stopped: bool = False


@dataclass(slots=True)
class _Known:
    """What the registry holds already: ids by identifier, and what this source has told of each."""

    by_key: dict[str, str] = field(default_factory=dict)
    told: dict[str, dict[str, list[tuple[Statement, str]]]] = field(default_factory=dict)
    names: dict[str, list[str]] = field(default_factory=dict)


def import_tree(collection: Collection, path: Path, *, name: str = "", progress: Progress = QUIET) -> ImportResult:
    """Take a tree file in, or bring what came from it before up to date. One act: undone as one."""
    opened = read_file(path)
    tree, encoding = opened.tree, opened.encoding
    collection.back_up_before("a tree file")
    taking = _Taking(collection, tree, name or path.stem)
    taking.taken.encoding = encoding.codec
    if encoding.doubt:
        taking.taken.said.append(f"{encoding.doubt}.")
    if opened.beside:
        words = ", ".join(opened.beside[:3])
        taking.taken.said.append(
            f"{several(len(opened.beside), 'file came with it and is', 'files came with it and are')} not taken: "
            f"{words} …"
        )
    taking.run(progress)
    return taking.taken


class _Taking:
    """One run of an import."""

    def __init__(self, collection: Collection, tree: Tree, name: str) -> None:
        self.collection = collection
        self.tree = tree
        self.name = name
        self.source = Source(Said.FILE, f"tree {name}")
        self.act = collection.act(f"tree file {name}")
        self.taken = ImportResult(name, tree.version or "not said", "")
        self.known = _known(collection, self.source)
        self.struck = collection.store.struck()
        self.ids: dict[str, Subject] = {}
        self.fresh: set[str] = set()
        self.touched: set[str] = set()
        self.dates = phrase_settings(collection.settings)
        today = collection.clock.today()
        self.known_dates = phrases.KnownDates(this_year=today.year, first_year=0, today=today.isoformat())
        self.understanding = Understanding(collection)
        self.places: dict[tuple[str, int | None], Reading | None] = {}
        self.kept_words: set[str] = set()
        self.open_ended = 0
        self.linked_now: dict[tuple[str, str], set[str]] = {}
        """(child, field) -> everyone whom the file says to be that: the links that no other of them replaces."""

    def _restricted(self, *xrefs: str, audience: str = "") -> str:
        """The strictest audience of people of the file: a link names both of its ends."""
        for xref in xrefs:
            audience = stricter(audience, self.tree.individuals[xref].audience)
        return audience

    def run(self, progress: Progress) -> None:
        people = list(self.tree.individuals.values())
        for individual in people:
            self.ids[individual.xref] = self._meant(individual)
        progress.begin("Taking people in", len(people))
        for individual in people:
            if progress.stopped():
                self.taken.stopped = True
                break
            self._person(individual)
            progress.step()
        if not self.taken.stopped:
            kin = [*links(self.tree), *raised(self.tree)]
            for child, parent, role in kin:
                self.linked_now.setdefault((self.ids[child].id, role), set()).add(self.ids[parent].id)
            for child, parent, role in kin:
                self._link(self.ids[child], role, self.ids[parent], self._name(parent), self._restricted(child, parent))
            for child, xref, kind in not_by_blood(self.tree):
                if kind.upper() not in RAISED:
                    self._not_by_blood(child, xref, kind)
            for family in self.tree.families.values():
                self._family(family)
        self._flush()
        self._report(people)

    def _report(self, people: list[Individual]) -> None:
        taken = self.taken
        taken.left = sorted(self.tree.unread.values(), key=lambda unread: (-unread.count, unread.path))
        taken.faults = self.tree.faults
        taken.new = len(self.fresh)
        taken.changed = len(self.touched - self.fresh)
        taken.same = len(people) - taken.new - taken.changed
        if not self.tree.ended:
            taken.said.append("The file breaks off before its last line (0 TRLR): part of it may be missing.")
        if self.open_ended:
            taken.said.append(
                f"{several(self.open_ended, 'date says', 'dates say')} before or after, which "
                f"GEDCOM {taken.version} leaves open: does that day "
                "itself count? It is counted."
            )
        gone = self._gone()
        if gone:
            taken.said.append(
                f"{several(gone, 'statement')} that an earlier import took from it "
                f"{'is' if gone == 1 else 'are'} no longer in the file; kept."
            )

    def _gone(self) -> int:
        """Statements of this source, of people still in the file, that it no longer makes."""
        return sum(
            1
            for subject in self.ids.values()
            for rows in self.known.told.get(subject.id, {}).values()
            for statement, _ in rows
            if statement.id not in self.kept_words
        )

    def _meant(self, individual: Individual) -> Subject:
        """The registry's entry for someone in the file, or a new one."""
        for key in (*(ident for ident in individual.ids if not ident.startswith("refn:")), self._key(individual.xref)):
            known_id = self.known.by_key.get(key)
            if known_id is None:
                continue
            if not key.startswith("tree:") or self._same_name(known_id, individual):
                return Subject(Kind.PERSON, known_id)
            self.taken.said.append(
                f"@{individual.xref}@ was {self.known.names[known_id][0]} before and is someone else now: taken as new."
            )
        new_person = self.act.new(Kind.PERSON)
        self.fresh.add(new_person.id)
        return new_person

    def _same_name(self, ident: str, individual: Individual) -> bool:
        """Whether any part of the name is as it was: numbers of a file may be given anew."""
        before = [part for words in self.known.names.get(ident, []) for part in parts_of(words)]
        now = parts_of(
            " ".join(fact.words for fact in individual.facts if fact.field in ("given", "family", "name", "married_as"))
        )
        return not before or not now or any(may_be_called(a, b) for a in before for b in now)

    def _key(self, xref: str) -> str:
        return f"tree:{self.name}#{xref}"

    def _person(self, individual: Individual) -> None:
        subject = self.ids[individual.xref]
        audience = individual.audience
        self._say(subject, "identifier", self._key(individual.xref), audience)
        for ident in individual.ids:
            self._say(subject, "identifier", ident, audience)
        if audience:
            self._say(subject, "audience", audience, audience)
        said: set[str] = set()
        days = {fact.field: fact.words for fact in reversed(individual.facts) if FIELDS[fact.field].reads == "date"}
        for fact in individual.facts:
            if fact.field in said and not FIELDS[fact.field].many:
                label = FIELDS[fact.field].label.lower()
                self._say(subject, "note", f"{self.name} also says {label}: {fact.words}", audience)
                continue
            said.add(fact.field)
            day = days.get(fact.field.removesuffix("_at"), "")
            self._say(subject, fact.field, fact.words, stricter(audience, fact.audience), day)

    def _name(self, xref: str) -> str:
        individual = self.tree.individuals[xref]
        words = (
            f"{individual.words('given')} {individual.words('family')}".strip()
            or individual.words("name")
            or individual.words("married_as")
        )
        return words or "someone"

    def _link(self, subject: Subject, name: str, linked: Subject, words: str, audience: str = "") -> None:
        """A parent, spouse or partner, known by the id meant and not by the words."""
        rows = self.known.told.get(subject.id, {}).get(name, [])
        now = self.linked_now.get((subject.id, name), set())
        for statement, meant in rows:
            if meant == linked.id:
                self.kept_words.add(statement.id)
                return
        replaced = [statement.id for statement, meant in rows if meant not in now]
        replaces = replaced[0] if replaced and not FIELDS[name].many else ""
        if self._left_alone(subject, name, words):
            return
        self._state(subject, name, words, audience, replaces, person_reading(linked))

    def _say(self, subject: Subject, name: str, words: str, audience: str = "", day: str = "") -> None:
        """State what the file says, unless it is known. `day` is when, for a place that was called otherwise then."""
        rows = self.known.told.get(subject.id, {}).get(name, [])
        for statement, _ in rows:
            if statement.words == words.strip():
                self.kept_words.add(statement.id)
                return
        if not words.strip() or self._left_alone(subject, name, words.strip()):
            return
        replaces = rows[0][0].id if rows and not FIELDS[name].many else ""
        self._state(subject, name, words.strip(), audience, replaces, self._read(name, words, day))

    def _state(
        self, subject: Subject, name: str, words: str, audience: str, replaces: str, reading: Reading | None
    ) -> None:
        settings = self.collection.settings
        statement = self.act.state(
            subject, name, words, language=settings.language, source=self.source,
            audience=audience or FIELDS[name].audience, replaces=replaces,
        )  # fmt: skip
        if replaces:
            self.kept_words.add(replaces)
        if reading is not None:
            self.act.readings.append((statement.id, reading))
        self.taken.statements += 1
        if subject.kind is Kind.PERSON:
            self.touched.add(subject.id)
        if len(self.act.statements) >= BATCH:
            self._flush()

    def _left_alone(self, subject: Subject, name: str, words: str) -> bool:
        """Whether the keeper has corrected these very words of this file before, or had the field struck."""
        if (subject.id, name) in self.struck:
            return True
        if subject.id in self.fresh or subject.id not in self.known.told:
            return False
        past = self.collection.store.history(subject.id, name)
        return any(
            earlier.state == "replaced" and earlier.statement.source == self.source and earlier.statement.words == words
            and not self._replaced_by_file(earlier.statement.id, past)
            for earlier in past
        )  # fmt: skip

    def _replaced_by_file(self, ident: str, past: list) -> bool:  # type: ignore[type-arg]  # store.values.Past
        return any(earlier.statement.replaces == ident and earlier.statement.source == self.source for earlier in past)

    def _read(self, name: str, words: str, day: str) -> Reading | None:
        if FIELDS[name].reads == "place":
            return self._place(words, day)
        if FIELDS[name].reads != "date":
            return None
        if not self.tree.seven and words[:3].upper() in OPEN_ENDED:
            self.open_ended += 1
        return date_reading(read_tree_date(words, self.dates, self.known_dates), self.dates)

    def _place(self, words: str, day: str) -> Reading | None:
        """A place as it was then; a tree names the same few places over and over, each is read once a year."""
        year = read_tree_date(day, self.dates, self.known_dates).first_year if day else None
        if (words, year) not in self.places:
            read = self.understanding.read("place", words, Around(year=year))
            self.places[words, year] = read.reading if read else None
        return self.places[words, year]

    def _family(self, family: Family) -> None:
        pair = [xref for xref, _ in dict.fromkeys(family.partners) if xref in self.tree.individuals]
        restricted = self._restricted(*pair, audience=family.audience)
        for first, second in permutations(dict.fromkeys(pair), 2):
            self._link(self.ids[first], "spouse", self.ids[second], self._name(second), restricted)
        for at, (day, place) in enumerate(family.marriages, 1):
            key = self._key(f"{family.xref} {at}" if at > 1 else family.xref)
            known_id = self.known.by_key.get(key)
            event = Subject(Kind.EVENT, known_id) if known_id else self.act.new(Kind.EVENT)
            self._say(event, "identifier", key, restricted)
            self._say(event, "kind", "marriage", restricted)
            name = f"marriage of {' and '.join(map(self._name, pair)) or 'people not named'}"
            self._say(event, "name", name, restricted)
            for xref in pair:
                self._link(event, "partner", self.ids[xref], self._name(xref), restricted)
            self._say(event, "date", day, restricted)
            self._say(event, "place", place, restricted, day)
            self.taken.marriages += 1

    def _not_by_blood(self, child: str, xref: str, kind: str) -> None:
        """A link that is none of the registry's, told in words: `sealing child of …`, `child of …: disproven`."""
        family = self.tree.families.get(xref)
        pair = [partner for partner, _ in family.partners if partner in self.tree.individuals] if family else []
        if not pair:
            return
        parents = " and ".join(map(self._name, pair))
        said = f"child of {parents}: {kind}" if kind in ("disproven", "challenged") else f"{kind} child of {parents}"
        self._say(self.ids[child], "story", said, self._restricted(child, *pair))

    def _flush(self) -> None:
        """Write what is gathered as a further part of the same act."""
        self.act.done()
        self.act = Act(self.collection, self.act.id, self.act.what)


def read_tree_date(
    words: str, settings: phrases.PhraseSettings, known: phrases.KnownDates = phrases.NOTHING_KNOWN
) -> DateReading:
    """A tree file's date: its words are English codes that the reader of phrases knows.

    INT (5.5.1, an interpreted date) is the date with its phrase kept in the words; a phrase alone is no date.
    """
    plain = words.split("(", 1)[0].strip()
    if plain.upper().startswith("INT "):
        plain = plain[4:].strip()
    return replace(phrases.read(plain, settings, known), text=words)


def _known(collection: Collection, source: Source) -> _Known:
    known = _Known()
    for ident, rows in _entries(collection):
        fields: dict[str, list[tuple[Statement, str]]] = {}
        for statement, reading in rows:
            if statement.field == "identifier":
                known.by_key.setdefault(statement.words, ident)
            if statement.source != source:
                continue
            meant = id_meant(reading) if reading and reading.kind == "person" else ""
            fields.setdefault(statement.field, []).append((statement, meant))
            if statement.field in ("given", "family", "name", "married_as"):
                known.names.setdefault(ident, []).append(statement.words)
        if fields:
            known.told[ident] = fields
    return known


def _entries(collection: Collection) -> Iterator[tuple[str, list[tuple[Statement, Reading | None]]]]:
    yield from collection.store.subjects("person")
    yield from collection.store.subjects("event")
