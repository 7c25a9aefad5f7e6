"""People: a person as the statements in force say, with every form of the name.

Names are kept as told (given and family name in the order told); the sort form is for lists and
for Dublin Core subjects ("Surname, Forename, dates").
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field

from boxlore.core.statements import Reading, Statement, Sure

NAME_FIELDS = ("name", "given", "family", "born_as", "married_as", "nickname")


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Someone in the registry; `name` is how captions call them.

    `born` and `died` hold date answers as `core.phrases.answer` gives them, empty where nothing usable
    was told; `living` is what was said of it: yes, no or empty. `forms` are the full forms of the name,
    `calls` the single words by which the person goes (given name, nickname).
    """

    id: str
    name: str
    sort_name: str
    forms: tuple[str, ...]
    calls: tuple[str, ...]
    born: dict[str, object] = field(default_factory=dict)
    died: dict[str, object] = field(default_factory=dict)
    living: str = ""
    sex: str = ""
    parents: tuple[str, ...] = ()
    spouses: tuple[str, ...] = ()


Told = Iterable[tuple[Statement, Reading | None]]
ReadValue = Callable[[str], dict[str, object]]


def build_person(ident: str, told: Told, read_value: ReadValue) -> Person:
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
        forms=_full_forms(words),
        calls=tuple(dict.fromkeys([*words.get("given", []), *words.get("nickname", [])])),
        born=_value(by_field.get("born"), read_value),
        died=_value(by_field.get("died"), read_value),
        living=_last(words.get("living")).lower(),
        sex=_last(words.get("sex")),
        parents=_ids([*by_field.get("father", []), *by_field.get("mother", [])], read_value),
        spouses=_ids(by_field.get("spouse", []), read_value),
    )


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


def _full_forms(words: dict[str, list[str]]) -> tuple[str, ...]:
    """Every full form of the name: as told, and each call name or initial with each family name."""
    surnames = [*words.get("family", []), *words.get("born_as", []), *words.get("married_as", [])]
    calls = [*words.get("given", []), *words.get("nickname", [])]
    calls += [part for call in words.get("given", []) for part in call.split() if len(part) > 1]
    forms = list(words.get("name", []))
    for surname in dict.fromkeys(surnames):
        for call in dict.fromkeys(calls):
            initials = " ".join(f"{part[0]}." for part in call.split())
            forms += [f"{call} {surname}", f"{surname}, {call}", f"{initials} {surname}"]
    return tuple(dict.fromkeys(forms))


def _value(rows: list[tuple[Statement, Reading | None]] | None, read_value: ReadValue) -> dict[str, object]:
    for _, reading in reversed(rows or []):
        if reading is not None and reading.usable:
            return dict(read_value(reading.value))
    return {}


def _ids(rows: list[tuple[Statement, Reading | None]], read_value: ReadValue) -> tuple[str, ...]:
    found = [read_value(reading.value).get("id", "") for _, reading in rows if reading and reading.usable]
    return tuple(str(ident) for ident in found if ident)
