"""People: a person as the statements in force say, with every form of the name.

Names are kept as told (given and family name in the order told); the sort form is for lists and
for Dublin Core subjects ("Surname, Forename, dates"). Entries that the keeper has called one person are one
`Person` under the id of the first; each keeps its own statements, so that this can be taken back.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace

from boxlore.core.people.consent import Consent, read_consent
from boxlore.core.people.names import full_forms
from boxlore.core.statements import Reading, Statement, Sure


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Someone in the registry; `name` is how captions call them.

    `born` and `died` hold date answers as `core.dates.phrases.read` gives them, empty where nothing usable
    was told; `dead` says that a death was told, with a date or without; `living` is yes, no or empty.
    `forms` are the full forms of the name, `calls` the single words by which the person goes (given
    name, nickname).
    """

    id: str
    name: str
    sort_name: str
    forms: tuple[str, ...]
    calls: tuple[str, ...]
    born: dict[str, object] = field(default_factory=dict)
    died: dict[str, object] = field(default_factory=dict)
    dead: bool = False
    living: str = ""
    sex: str = ""
    parents: tuple[str, ...] = ()
    mothers: tuple[str, ...] = ()
    spouses: tuple[str, ...] = ()
    married: tuple[dict[str, object], ...] = ()
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
ReadValue = Callable[[str], dict[str, object]]


def build_person(ident: str, told: ToldRows, read_value: ReadValue) -> Person:
    """The person that these statements in force describe. `read_value` parses a reading's JSON."""
    by_field: dict[str, list[tuple[Statement, Reading | None]]] = {}
    for statement, reading in told:
        if statement.sure is not Sure.NOT_KNOWN and statement.words.strip():
            by_field.setdefault(statement.field, []).append((statement, reading))
    words = {name: [statement.words.strip() for statement, _ in rows] for name, rows in by_field.items()}
    return Person(
        id=ident,
        name=_display(words),
        sort_name=_sort_form(words),
        forms=full_forms(words),
        calls=tuple(dict.fromkeys([*words.get("given", []), *words.get("nickname", [])])),
        born=_value(by_field.get("born"), read_value),
        died=_value(by_field.get("died") or by_field.get("buried"), read_value),
        dead=any(name in by_field for name in ("died", "died_at", "buried", "buried_at")),
        living=_last(words.get("living")).lower(),
        sex=_last(words.get("sex")),
        parents=_ids([*by_field.get("father", []), *by_field.get("mother", [])], read_value),
        mothers=_ids(by_field.get("mother", []), read_value),
        spouses=_ids(by_field.get("spouse", []), read_value),
        married=tuple(_value([row], read_value) for row in by_field.get("married", []) if _value([row], read_value)),
        surnames=_surnames(words),
        audience=_last(words.get("audience")) or "anyone",
        consents=_consents(by_field.get("consent", []), read_value),
        different=tuple(words.get("different", [])),
        told_to=frozenset(row.audience for name in _NAME_DATES_KIN for row, _ in by_field.get(name, ())),
    )


class Registry(Mapping[str, Person]):
    """Everyone, once; looked up by the id of any entry that is the same person."""

    def __init__(self, people: Iterable[Person] = ()) -> None:
        self._people = {one.id: one for one in people}
        self._first = {ident: one.id for one in self._people.values() for ident in one.ids}

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


def build_registry(
    entries: Iterable[tuple[str, Iterable[tuple[Statement, Reading | None]]]], read: ReadValue
) -> Registry:
    """Everyone in the registry, merged entries as one person, with their links to one another.

    Statements of the entry that stands go last, so that its name stays; an entry said to be the same as one
    that is gone, or in a circle, stands for itself.
    """
    told = {ident: list(rows) for ident, rows in entries}
    into = {
        ident: statement.words.strip()
        for ident, rows in told.items()
        for statement, _ in rows
        if statement.field == "merged_into" and statement.words.strip() in told
    }
    first = {ident: _first(ident, into) for ident in told}
    groups: dict[str, list[str]] = {}
    for ident in told:
        groups.setdefault(first[ident], []).append(ident)
    people = []
    for head, members in groups.items():
        others = [one for one in members if one != head]
        rows = [row for ident in (*others, head) for row in told[ident]]
        person = build_person(head, rows, read)
        if others and (own := build_person(head, told[head], read)).forms:
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
        return tuple(dict.fromkeys(first.get(one, one) for one in idents))

    return replace(
        person, also=also, parents=meant(person.parents), mothers=meant(person.mothers), spouses=meant(person.spouses),
        different=meant(person.different),
    )  # fmt: skip


def _consents(rows: ToldRows, read_value: ReadValue) -> tuple[Consent, ...]:
    read = [read_consent(read_value(reading.value)) for _, reading in rows if reading and reading.kind == "consent"]
    return tuple(one for one in read if one is not None)


def _surnames(words: dict[str, list[str]]) -> tuple[str, ...]:
    told = [*words.get("family", []), *words.get("born_as", []), *words.get("married_as", [])]
    return tuple(dict.fromkeys(told))


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


def _value(rows: list[tuple[Statement, Reading | None]] | None, read_value: ReadValue) -> dict[str, object]:
    for _, reading in reversed(rows or []):
        if reading is not None and reading.usable:
            return dict(read_value(reading.value))
    return {}


def _ids(rows: list[tuple[Statement, Reading | None]], read_value: ReadValue) -> tuple[str, ...]:
    found = [read_value(reading.value).get("id", "") for _, reading in rows if reading and reading.usable]
    return tuple(str(ident) for ident in found if ident)
