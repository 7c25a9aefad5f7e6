"""People: a person as the statements in force say, with every form of the name.

Names are kept as told (given and family name in the order told); the sort form is for lists and for Dublin Core
subjects ("Surname, Forename, dates"). A name told whole is taken apart (`names/reader`): what searches for names uses
its parts as it uses told ones, and outputs use them where they ask nothing. Entries that the keeper has called one
person are one `Person` under the id of the first; each keeps its own statements, so that this can be taken back.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.consent import Consent, Matter
from boxlore.core.people.deaths import DEATH_FIELDS, doubted, says_living
from boxlore.core.people.names.forms import WordForms, full_forms, gendered_forms
from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.sort_form import sort_form
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.reference import id_meant
from boxlore.core.statements import Reading, Said, Source, Statement, Sure, fold


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Someone in the registry; `name` is how captions call them.

    `born` and `died` are dates that may be used, None where none was told, and `married` all of them; `dead` says
    that a death was surely told, with a date or without; `living` is yes, no or empty. `forms` are the full forms of
    the name, `calls` the single words by which the person goes (given name, nickname).
    """

    id: str
    name: str
    sort_name: str
    forms: tuple[str, ...]
    calls: tuple[str, ...]
    born: DateReading | None = None
    died: DateReading | None = None
    dead: bool = False
    births: tuple[DateReading, ...] = ()
    """Every birth told; `born` is the last of them. The latest counts for who may be living."""
    death_doubted: str = ""
    """The words told of a death where none of them surely ends the life (`deaths`)."""
    told_living: bool = False
    """Whether anything says that the person lives: `living` yes, or “not yet” told of a death."""
    born_is_sure: bool = True
    """Whether a birth, if one is told, is told without a doubt of the teller."""
    living: str = ""
    sex: str = ""
    parents: tuple[str, ...] = ()
    mothers: tuple[str, ...] = ()
    adoptive_parents: tuple[str, ...] = ()
    foster_parents: tuple[str, ...] = ()
    spouses: tuple[str, ...] = ()
    married: tuple[DateReading, ...] = ()
    surnames: tuple[str, ...] = ()
    audience: str = "anyone"
    also_audiences: tuple[str, ...] = ()
    """Those of the entries that were called the same person: only who passes all of them may know of her."""
    consents: tuple[Consent, ...] = ()
    different: tuple[str, ...] = ()
    told_to: frozenset[str] = frozenset()
    """The audiences of all that is told of the name, the dates and the kin."""
    name_asks: str = ""
    """What is in doubt of how the name is taken apart, for the keeper; empty where nothing is."""
    also: tuple[str, ...] = ()
    """Ids of entries that the keeper has called the same person."""

    @property
    def latest_born(self) -> DateReading | None:
        """The birth that is told; of several the latest, and one that says no last day before all others."""
        births = self.births or ((self.born,) if self.born else ())
        return max(births, key=lambda birth: birth.latest_day or date.max, default=None)

    @property
    def is_named(self) -> bool:
        """Whether any part of a name is known: `the doctor` and `one of the Lepik aunts` have none."""
        return bool(self.calls or self.surnames)

    @property
    def uri(self) -> str:
        """Our own identifier (RFC 9562)."""
        return f"urn:uuid:{self.id}"

    @property
    def ids(self) -> tuple[str, ...]:
        return (self.id, *self.also)


_NAME_DATES_KIN = (
    "name", "given", "family", "born_as", "married_as", "nickname", "patronymic", "honorific", "suffix",
    "religious_name", "identifier", "sex",
    "born", "died", "buried", "living", "married", "father", "mother", "adoptive_parent", "foster_parent", "spouse",
)  # fmt: skip


def known_names(people: Iterable[Person]) -> KnownNames:
    """The names that people have already: what decides how a further name is taken apart."""
    given: set[str] = set()
    family: set[str] = set()
    for person in people:
        given.update(fold(word) for call in person.calls for word in call.split())
        family.update(form for surname in person.surnames for form in gendered_forms(fold(surname)))
    return KnownNames(frozenset(given), frozenset(family))


ToldRows = Iterable[tuple[Statement, Reading | None]]


def build_person(ident: str, rows_told: ToldRows) -> Person:
    """The person that these statements in force describe."""
    by_field: dict[str, list[tuple[Statement, Reading | None]]] = {}
    for statement, reading in rows_told:
        if statement.sure is not Sure.NOT_KNOWN and statement.words.strip():
            by_field.setdefault(statement.field, []).append((statement, reading))
    words = {name: [statement.words.strip() for statement, _ in rows] for name, rows in by_field.items()}
    names = [
        (statement.words.strip(), parts_of_name(statement, reading)) for statement, reading in by_field.get("name", ())
    ]
    searched = _with_parts(words, names)
    by_preference = {**words, "name": [row.words.strip() for row in _preferred(by_field)]}
    deaths = [row for name in DEATH_FIELDS for row in by_field.get(name, ())]
    return Person(
        id=ident,
        name=_display(by_preference),
        sort_name=_sort_form(by_preference, names),
        forms=full_forms(searched),
        calls=tuple(dict.fromkeys(name for field in _CALLED_BY for name in searched.get(field, ()))),
        born=_last_date(by_field.get("born", [])),
        births=tuple(_dates(by_field.get("born", []))),
        died=_last_date(by_field.get("died") or by_field.get("buried", [])),
        dead=bool(deaths) and not doubted(deaths),
        death_doubted=doubted(deaths),
        told_living=_living(by_field.get("living", [])) == "yes" or any(says_living(row.words) for row, _ in deaths),
        born_is_sure=any(row.sure is Sure.SURE for row, _ in by_field.get("born", ())) or "born" not in by_field,
        living=_living(by_field.get("living", [])),
        sex=_last(words.get("sex")),
        parents=_ids([*by_field.get("father", []), *by_field.get("mother", [])]),
        mothers=_ids(by_field.get("mother", [])),
        adoptive_parents=_ids(by_field.get("adoptive_parent", [])),
        foster_parents=_ids(by_field.get("foster_parent", [])),
        spouses=_ids(by_field.get("spouse", [])),
        married=tuple(_dates(by_field.get("married", []))),
        surnames=_surnames(searched),
        audience=_last(words.get("audience")) or "anyone",
        consents=_consents(by_field.get("consent", [])),
        different=tuple(words.get("different", [])),
        name_asks="" if "given" in words else next((parts.asks for _, parts in names if parts.asks), ""),
        told_to=frozenset(row.audience for name in _NAME_DATES_KIN for row, _ in by_field.get(name, ())),
    )


class Registry(Mapping[str, Person]):
    """Everyone, once; looked up by the id of any entry that is the same person."""

    def __init__(self, people: Iterable[Person] = ()) -> None:
        self._people = {person.id: person for person in people}
        self._first = {ident: person.id for person in self._people.values() for ident in person.ids}

    def __getitem__(self, ident: str) -> Person:
        return self._people[self._first[ident]]

    def __contains__(self, ident: object) -> bool:
        return ident in self._first

    def __iter__(self) -> Iterator[str]:
        return iter(self._people)

    def __len__(self) -> int:
        return len(self._people)

    def names(self) -> dict[str, str]:
        """The name behind every id, those of merged entries too."""
        return {ident: self._people[first].name for ident, first in self._first.items()}


def build_registry(entries: Iterable[tuple[str, ToldRows]]) -> Registry:
    """Everyone in the registry, merged entries as one person, with their links to one another.

    Statements of the entry that stands go last, so that its name stays; what any of them had closed stays closed,
    and the last word on a consent is the one told last. An entry said to be the same as one
    that is gone, or in a circle, stands for itself.
    """
    rows_of = {ident: list(rows) for ident, rows in entries}
    into = {
        ident: statement.words.strip()
        for ident, rows in rows_of.items()
        for statement, _ in rows
        if statement.field == "merged_into" and statement.words.strip() in rows_of
    }
    first = {ident: _first(ident, into) for ident in rows_of}
    groups: dict[str, list[str]] = {}
    for ident in rows_of:
        groups.setdefault(first[ident], []).append(ident)
    people = []
    for head, members in groups.items():
        others = [member for member in members if member != head]
        rows = [row for ident in (*others, head) for row in rows_of[ident]]
        person = build_person(head, rows)
        if others and (own := build_person(head, rows_of[head])).forms:
            person = replace(person, name=own.name, sort_name=own.sort_name)
        if others:
            by_day = build_person(head, sorted(rows, key=lambda row: row[0].recorded_at))
            also_audiences = tuple(build_person(each, rows_of[each]).audience for each in others)
            person = replace(person, consents=by_day.consents, also_audiences=also_audiences)
        people.append(_linked(person, tuple(others), first))
    return Registry(people)


def _first(ident: str, into: Mapping[str, str]) -> str:
    seen = [ident]
    while (further := into.get(seen[-1])) is not None:
        if further in seen:
            return min(seen[seen.index(further) :])
        seen.append(further)
    return seen[-1]


def _linked(person: Person, also: tuple[str, ...], first: Mapping[str, str]) -> Person:
    def meant(idents: tuple[str, ...]) -> tuple[str, ...]:
        return tuple(dict.fromkeys(first.get(ident, ident) for ident in idents))

    return replace(
        person, also=also, parents=meant(person.parents), mothers=meant(person.mothers), spouses=meant(person.spouses),
        different=meant(person.different), adoptive_parents=meant(person.adoptive_parents),
        foster_parents=meant(person.foster_parents),
    )  # fmt: skip


_WITHDRAWN = Consent(given=False, matters=frozenset(Matter), day="")


def _consents(rows: ToldRows) -> tuple[Consent, ...]:
    """Every word on it. One that cannot be read counts as a withdrawal of everything, for it may be one."""
    read = [reading.value for _, reading in rows if reading and reading.kind == "consent"]
    return tuple(value if isinstance(value, Consent) else _WITHDRAWN for value in read)


_CALLED_BY = ("given", "nickname", "religious_name")
"""The fields whose words somebody is called by."""

Names = Sequence[tuple[str, NameParts]]
"""Names told whole, each with its parts."""


def parts_of_name(statement: Statement, reading: Reading | None) -> NameParts:
    """The parts of a name told whole: as read when it was told or corrected, else as it is read now."""
    value = reading.value if reading is not None else None
    if isinstance(value, NameParts):
        return replace(value, asks="") if reading is not None and reading.confirmed else value
    return read_name(statement.words.strip())


def _with_parts(words: Mapping[str, Sequence[str]], names: Names) -> WordForms:
    """The told words by field, with the parts of names told whole: all that someone may be found by.

    Where the parts are in doubt, every word may be a given name and the last and the first a family name.
    """
    searched = {field: list(told_words) for field, told_words in words.items()}
    for name, parts in names:
        proposed = [
            ("given", parts.given), ("nickname", parts.nickname), ("religious_name", parts.religious),
            ("family", parts.family), ("born_as", parts.born_as), ("married_as", parts.married_as),
            ("honorific", parts.title),
        ]  # fmt: skip
        if parts.particle:
            proposed.append(("family", parts.family[len(parts.particle) :].strip()))
        if parts.patronymic:
            proposed.append(("patronymic" if parts.family else "family", parts.patronymic))
        if parts.asks:
            proposed += [("given", word) for word in name.split()] + [("family", word) for word in name.split()]
        for field, part in proposed:
            if part and part not in searched.setdefault(field, []):
                searched[field].append(part)
    return searched


def _surnames(words: WordForms) -> tuple[str, ...]:
    surnames = [*words.get("family", []), *words.get("born_as", []), *words.get("married_as", [])]
    return tuple(dict.fromkeys(surnames))


def _preferred(by_field: Mapping[str, Sequence[tuple[Statement, Reading | None]]]) -> Iterator[Statement]:
    """The names told whole, without the further ones of a tree file that gives the parts of another first.

    Of several names the first is the preferred one (GEDCOM 7.0 and 5.5.1, NAME of an INDIVIDUAL_RECORD). One that
    begins with its parts is that name itself, with what stands behind it: `Jan /Tamm/ the Elder`.
    """
    given = {row.source: row.words.strip() for row, _ in by_field.get("given", ()) if row.source.said is Said.FILE}
    firsts: dict[Source, list[str]] = {}
    for field in ("family", "married_as", "born_as"):
        for row, _ in by_field.get(field, ()):
            if row.source in given:
                firsts.setdefault(row.source, []).append(f"{given[row.source]} {row.words.strip()}")
    for row, _ in by_field.get("name", ()):
        names = firsts.get(row.source)
        if names is None or row.words.strip().startswith(tuple(names)):
            yield row


def _last(values: list[str] | None) -> str:
    return values[-1] if values else ""


def _display(words: dict[str, list[str]]) -> str:
    named = _last(words.get("name"))
    if named and not (words.get("given") and _surname(words) and not read_name(named)):
        return named  # a description gives way to a name told since
    family = _last(words.get("married_as")) or _last(words.get("family")) or _last(words.get("born_as"))
    return f"{_last(words.get('given'))} {family}".strip() or _last(words.get("nickname")) or "someone"


def _surname(words: dict[str, list[str]]) -> str:
    return _last(words.get("family")) or _last(words.get("married_as")) or _last(words.get("born_as"))


def _sort_form(words: dict[str, list[str]], names: Names) -> str:
    """By the parts that were told; else by those of the name told last, where they ask nothing."""
    given, family = _last(words.get("given")), _surname(words)
    if given and family:
        parts = read_name(f"{given} {family}")
        particle = parts.particle if parts.family == family else ""
        patronymic = "" if parts.patronymic in given else parts.patronymic
        family = "" if patronymic == family else family
        return sort_form(
            replace(parts, given=given, patronymic=patronymic, family=family, particle=particle, title="", kin=""),
            family,
        )
    display = _display(words)
    parts = next((parts for name, parts in names if name == display and not parts.asks), NameParts())
    return sort_form(parts, display)


def _living(rows: ToldRows) -> str:
    """The last answer to whether somebody lives; a no that is not sure is none."""
    answers = [(row.words.strip().lower(), row.sure) for row, _ in rows]
    return next((words for words, sure in reversed(answers) if words != "no" or sure is Sure.SURE), "")


def _dates(rows: ToldRows) -> Iterator[DateReading]:
    for _, reading in rows:
        value = reading.usable_value if reading is not None else None
        if isinstance(value, DateReading) and value.edtf is not None:
            yield value


def _last_date(rows: ToldRows) -> DateReading | None:
    return next(_dates(reversed(list(rows))), None)


def _ids(rows: ToldRows) -> tuple[str, ...]:
    return tuple(ident for _, reading in rows if reading and reading.usable and (ident := id_meant(reading)))
