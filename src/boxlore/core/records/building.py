"""The record in force: what all statements about one item come to, with every disagreement left visible.

Theory of operation
===================

The problem. One photograph is told about by several people over years. The aunt says 1931, the back of the print says
“suvi 1932”, the keeper notes 1930 from a document. An output needs one date; yet nobody's words may be lost, and
nobody may be overruled without a trace.

The idea. The log (`boxlore.store.log`) gives every statement that is in force; `build` sorts them, field by field,
into a `Record`:

- A field that gathers (people, stories, keywords) keeps all its statements, in the order of the log.
- A field that holds one value has all its statements too, but in an order: the first is *the* value, the others stand
  behind it and are shown as what was also said. `_rank` is that order. It asks, one after the other:

      1. Has the keeper settled the question by choosing this statement?
      2. How sure was the source?                            sure > likely > guess
      3. How near to the event is it?                        what is written on the print > a document >
                                                             a narrator > the keeper > a file
      4. Which is the later in the log?

- “Asked, and not known” is remembered (`not_known`), so that nobody is asked twice; it is never a value.
- Statements that cannot all be so (two dates that do not meet, two people at one marker) make a `Conflict`. The order
  above decides what outputs say meanwhile; the conflict stays until the keeper has weighed those very statements.
- A reading goes with its statement only if an output may rest on it: it asks nothing, or the keeper has confirmed it.

What always holds:

1. A record is computed and never stored: from the same log comes the same record.
2. No statement in force is missing from its record, however the order turns out.
3. The order is total: two statements never tie, as no two have the same id.
4. A settlement silences only the conflict of statements it has weighed. A statement told later opens it again.
5. A record says everything to its keeper. An output takes only what `records.audience.Recipient.seen` has given.

An example. TRA-0014, haymaking near Kärdla:

    s1   date   “about 1935”   Leida, likely          sure 2, nearness 2
    s2   date   “suvi 1932”    on the back, sure      sure 3, nearness 4
    s3   date   “1931”         Leida, sure            sure 3, nearness 2
    s4   story  “Father had borrowed the horse.”      gathers

The date's order is s2, s3, s1: s2 and s3 are equally sure, and what is written on the print is nearer to the day.
1932 and 1931 do not meet, so they are a conflict. If the keeper settles it by choosing s3, the order is s3, s2, s1 and
the conflict is gone. If Con says “1929” at the next sitting, a conflict is there again, between s5 and the others.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from boxlore.core.fields.originals import SIZE_WORDS
from boxlore.core.fields.pictures import ROW_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.person import Person
from boxlore.core.records.containers import Mark
from boxlore.core.records.in_force import Conflict, MarkerRows, Material, PersonShown, Record, StatementView
from boxlore.core.statements import NEARNESS, SURENESS, Reading, Statement, Sure


def build(material: Material, people: Mapping[str, Person], said_by: Mapping[str, str]) -> Record:
    """The record in force. `people` by id; `said_by` names the person behind a narrator's id."""
    rows = material.statements
    told, not_known = _gather(rows, material.chosen, said_by)
    plain = {statement.field: statement.words for statement, _ in rows}
    places = _places(rows) if "row" in plain else {}
    shown = _people(material, told, people, said_by, places)
    times = [statement.recorded_at for statement, _ in rows]
    times += [statement.recorded_at for marker in material.markers for statement, _ in marker.statements]
    return Record(
        id=material.id,
        number=material.number,
        kind=plain.get("kind", "print"),
        mark=Mark(tuple(material.path), material.position) if material.path else None,
        found_in=plain.get("found_in", ""),
        size_mm=size.sides if (size := SIZE_WORDS.or_none(plain.get("size", ""))) else (),
        scans=tuple(material.scans),
        told=told,
        people=shown,
        related=tuple(material.related),
        conflicts=tuple(_conflicts(material, told, said_by)),
        not_known=frozenset(not_known),
        unnamed=_unnamed(material.markers, shown) if material.markers else (),
        nameless=_nameless(rows, places) if places else (),
        audiences=tuple(one.words for one, _ in rows if one.field == "audience") if "audience" in plain else (),
        changed_at=max(times, default=""),
    )


def told_of(statement: Statement, reading: Reading | None, said_by: Mapping[str, str]) -> StatementView:
    """One statement as outputs see it."""
    value = reading.usable_value if reading is not None else None
    return StatementView(
        statement=statement.id,
        field=statement.field,
        words=statement.words,
        language=statement.language,
        source=statement.source,
        said_by=said_by.get(statement.source.ref, ""),
        sure=statement.sure,
        audience=statement.audience,
        recorded_at=statement.recorded_at,
        sitting=statement.sitting,
        moment=statement.moment,
        value=value,
        asks=reading is not None and value is None,
    )


def _rank(told: StatementView, chosen: str) -> tuple[bool, int, int, str, str]:
    return (
        told.statement == chosen,
        SURENESS[told.sure],
        NEARNESS[told.source.said],
        told.recorded_at,
        told.statement,
    )


def _gather(
    rows: Iterable[tuple[Statement, Reading | None]], chosen: Mapping[str, str], said_by: Mapping[str, str]
) -> tuple[dict[str, tuple[StatementView, ...]], set[str]]:
    by_field: dict[str, list[StatementView]] = {}
    asked: set[str] = set()
    for statement, reading in rows:
        if not FIELDS[statement.field].told:
            continue
        if statement.sure is Sure.NOT_KNOWN:
            asked.add(statement.field)
        else:
            by_field.setdefault(statement.field, []).append(told_of(statement, reading, said_by))
    for name, told in by_field.items():
        if len(told) > 1 and not FIELDS[name].many:
            told.sort(key=lambda one: _rank(one, chosen.get(one.field, "")), reverse=True)
    return {name: tuple(told) for name, told in by_field.items()}, asked - set(by_field)


def _people(
    material: Material,
    told: Mapping[str, tuple[StatementView, ...]],
    people: Mapping[str, Person],
    said_by: Mapping[str, str],
    places: Mapping[str, tuple[str, int]],
) -> tuple[PersonShown, ...]:
    """Markers first, in the order of their numbers; then those told without one. Nobody twice in a role."""
    found: list[PersonShown] = []
    roles = [role for role in ("person", "named", "photographer") if role in told]
    if not roles and not material.markers:
        return ()
    for marker in sorted(material.markers, key=lambda one: one.number):
        names, _ = _gather(marker.statements, {}, said_by)
        ranked = sorted(names.get("person", ()), key=lambda one: _rank(one, ""), reverse=True)
        for one in ranked[:1]:
            found.append(_shown(one, "person", people, marker))
    seen = {(one.role, one.person or one.name) for one in found}
    for role in roles:
        for one in told[role]:
            row, position = places.get(one.statement, ("", 0))
            shown = replace(_shown(one, role, people, None), row=row, position=position)
            if (role, shown.person or shown.name) not in seen:
                seen.add((role, shown.person or shown.name))
                found.append(shown)
    return tuple(found)


def _places(rows: Iterable[tuple[Statement, Reading | None]]) -> dict[str, tuple[str, int]]:
    """The row and position of each statement about a person; one that corrects another takes its place."""
    found: dict[str, tuple[str, int]] = {}
    for statement, _ in rows:
        if statement.field == "row":
            place = ROW_WORDS.or_none(statement.words)
            if place is not None:
                found[place.statement] = (place.row, place.position)
    for statement, _ in rows:
        if statement.replaces in found and statement.id not in found:
            found[statement.id] = found[statement.replaces]
    return found


def _unnamed(
    markers: Iterable[MarkerRows], shown: Iterable[PersonShown]
) -> tuple[tuple[str, int, tuple[float, ...]], ...]:
    named = {(one.scan, one.number) for one in shown}
    return tuple((one.scan, one.number, one.area) for one in markers if (one.scan, one.number) not in named)


def _nameless(
    rows: Iterable[tuple[Statement, Reading | None]], places: Mapping[str, tuple[str, int]]
) -> tuple[tuple[str, int], ...]:
    unknown = [one.id for one, _ in rows if one.field == "person" and one.sure is Sure.NOT_KNOWN]
    return tuple(places[ident] for ident in unknown if ident in places)


def _shown(told: StatementView, role: str, people: Mapping[str, Person], marker: MarkerRows | None) -> PersonShown:
    person = people.get(told.meant)
    return PersonShown(
        told=told,
        role=role,
        name=person.name if person else told.words,
        person=person.id if person else "",
        scan=marker.scan if marker else "",
        area=marker.area if marker else (),
        number=marker.number if marker else 0,
    )


def _conflicts(
    material: Material, told: Mapping[str, tuple[StatementView, ...]], said_by: Mapping[str, str]
) -> Iterable[Conflict]:
    dates = told.get("date", ())
    if len(dates) > 1:
        dates = tuple(one for one in dates if one.date and one.date.edtf and one.statement not in material.settled)
    if apart := _disjoint(dates):
        yield Conflict("date", apart, "these dates cannot both be so")
    for marker in material.markers:
        names = _gather(marker.statements, {}, said_by)[0].get("person", ())
        open_ones = tuple(one for one in names if one.statement not in material.settled)
        if len({one.meant or one.words for one in open_ones}) > 1:
            yield Conflict("person", open_ones, f"marker {marker.number} is said to be different people")


def _disjoint(dates: Sequence[StatementView]) -> tuple[StatementView, ...]:
    """The first two dates whose ranges do not meet, or nothing."""
    for index, one in enumerate(dates):
        for other in dates[index + 1 :]:
            if _before(one, other) or _before(other, one):
                return (one, other)
    return ()


def _before(one: StatementView, other: StatementView) -> bool:
    latest = one.date.latest if one.date else None
    earliest = other.date.earliest if other.date else None
    return latest is not None and earliest is not None and latest < earliest
