"""People: a person as the statements in force say, with every form of the name.

Names are kept as told (given and family name in the order told); the sort form is for lists and
for Dublin Core subjects ("Surname, Forename, dates"). Entries that the keeper has called one person are one
`Person` under the id of the first; each keeps its own statements, so that this can be taken back.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.consent import Consent, Matter
from boxlore.core.people.names import full_forms
from boxlore.core.people.reference import id_meant
from boxlore.core.statements import Reading, Statement, Sure


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Someone in the registry; `name` is how captions call them.

    `born` and `died` are dates that may be used, None where none was told, and `married` all of them; `dead` says
    that a death was told, with a date or without; `living` is yes, no or empty. `forms` are the full forms of the
    name, `calls` the single words by which the person goes (given name, nickname).
    """

    id: str
    name: str
    sort_name: str
    forms: tuple[str, ...]
    calls: tuple[str, ...]
    born: DateReading | None = None
    died: DateReading | None = None
    dead: bool = False
    living: str = ""
    sex: str = ""
    parents: tuple[str, ...] = ()
    mothers: tuple[str, ...] = ()
    spouses: tuple[str, ...] = ()
    married: tuple[DateReading, ...] = ()
    surnames: tuple[str, ...] = ()
    audience: str = "anyone"
    consents: tuple[Consent, ...] = ()
    different: tuple[str, ...] = ()
    told_to: frozenset[str] = frozenset()
    """The audiences of all that is told of the name, the dates and the kin."""
    also: tuple[str, ...] = ()
    """Ids of entries that the keeper has called the same person."""

    @property
    def uri(self) -> str:
        """Our own identifier (RFC 9562)."""
        return f"urn:uuid:{self.id}"

    @property
    def ids(self) -> tuple[str, ...]:
        return (self.id, *self.also)


_NAME_DATES_KIN = (
    "name", "given", "family", "born_as", "married_as", "nickname", "patronymic", "honorific", "identifier", "sex",
    "born", "died", "buried", "living", "married", "father", "mother", "spouse",
)  # fmt: skip

ToldRows = Iterable[tuple[Statement, Reading | None]]


def build_person(ident: str, rows_told: ToldRows) -> Person:
    """The person that these statements in force describe."""
    by_field: dict[str, list[tuple[Statement, Reading | None]]] = {}
    for statement, reading in rows_told:
        if statement.sure is not Sure.NOT_KNOWN and statement.words.strip():
            by_field.setdefault(statement.field, []).append((statement, reading))
    words = {name: [statement.words.strip() for statement, _ in rows] for name, rows in by_field.items()}
    return Person(
        id=ident,
        name=_display(words),
        sort_name=_sort_form(words),
        forms=full_forms(words),
        calls=tuple(dict.fromkeys([*words.get("given", []), *words.get("nickname", [])])),
        born=_last_date(by_field.get("born", [])),
        died=_last_date(by_field.get("died") or by_field.get("buried", [])),
        dead=any(name in by_field for name in ("died", "died_at", "buried", "buried_at")),
        living=_last(words.get("living")).lower(),
        sex=_last(words.get("sex")),
        parents=_ids([*by_field.get("father", []), *by_field.get("mother", [])]),
        mothers=_ids(by_field.get("mother", [])),
        spouses=_ids(by_field.get("spouse", [])),
        married=tuple(_dates(by_field.get("married", []))),
        surnames=_surnames(words),
        audience=_last(words.get("audience")) or "anyone",
        consents=_consents(by_field.get("consent", [])),
        different=tuple(words.get("different", [])),
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

    Statements of the entry that stands go last, so that its name stays; an entry said to be the same as one
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
        different=meant(person.different),
    )  # fmt: skip


_WITHDRAWN = Consent(given=False, matters=frozenset(Matter), day="")


def _consents(rows: ToldRows) -> tuple[Consent, ...]:
    """Every word on it. One that cannot be read counts as a withdrawal of everything, for it may be one."""
    read = [reading.value for _, reading in rows if reading and reading.kind == "consent"]
    return tuple(value if isinstance(value, Consent) else _WITHDRAWN for value in read)


def _surnames(words: dict[str, list[str]]) -> tuple[str, ...]:
    surnames = [*words.get("family", []), *words.get("born_as", []), *words.get("married_as", [])]
    return tuple(dict.fromkeys(surnames))


def _last(values: list[str] | None) -> str:
    return values[-1] if values else ""


def _display(words: dict[str, list[str]]) -> str:
    if named := _last(words.get("name")):
        return named
    family = _last(words.get("married_as")) or _last(words.get("family")) or _last(words.get("born_as"))
    return f"{_last(words.get('given'))} {family}".strip() or _last(words.get("nickname")) or "someone"


def _surname(words: dict[str, list[str]]) -> str:
    return _last(words.get("family")) or _last(words.get("married_as")) or _last(words.get("born_as"))


def _sort_form(words: dict[str, list[str]]) -> str:
    given, family = _last(words.get("given")), _surname(words)
    return f"{family}, {given}" if given and family else _display(words)


def _dates(rows: ToldRows) -> Iterator[DateReading]:
    for _, reading in rows:
        value = reading.usable_value if reading is not None else None
        if isinstance(value, DateReading) and value.edtf is not None:
            yield value


def _last_date(rows: ToldRows) -> DateReading | None:
    return next(_dates(reversed(list(rows))), None)


def _ids(rows: ToldRows) -> tuple[str, ...]:
    return tuple(ident for _, reading in rows if reading and reading.usable and (ident := id_meant(reading)))
