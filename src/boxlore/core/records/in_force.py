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
      2. Does a person say it, and not only a scan's file?   what a file says holds until somebody says more
      3. How sure was the source?                            sure > likely > guess
      4. How near to the event is it?                        what is written on the print > a document >
                                                             a narrator > the keeper
      5. Which is the later in the log?

  Then a date or a place that lies within the first and is as sure goes before it: it says the same, and more.

- “Asked, and not known” is remembered (`not_known`), so that nobody is asked twice; it is never a value.
- Statements that cannot all be so (two dates that do not meet, two places of which neither lies in the other, two
  people at one marker) make a `Conflict`. Nothing asserts one of them meanwhile: `Record.first` gives all of them,
  with who said which, as one answer. Where the keeper has yet to answer what words mean, they are in conflict if none
  of what they may mean can be so together. The conflict waits until the keeper has weighed those very statements. If
  the keeper's word is that each may be so, or that nobody can say, it is `undecided`: nobody is asked again, and
  still nothing asserts one of them.
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
1932 and 1931 do not meet, so they are a conflict, while “about 1935” leaves room for both (`lifetime.possible`). An
album says “suvi 1932 (written on the back) or 1931 (Leida)”, and an archive gets [1931,1932-22]. If the keeper settles
it by choosing s3, the order is s3, s2, s1 and the conflict is gone. If Con says “1929” at the next sitting, a conflict
is there again, between s3 and s5.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from boxlore.core.dates import conflicts as dates_meeting
from boxlore.core.dates import edtf as standard
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import TextFault
from boxlore.core.fields.originals import SIZE_WORDS
from boxlore.core.fields.pictures import ROW_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.person import Person
from boxlore.core.places import conflicts as places_meeting
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import Conflict, MarkerRows, Material, PersonShown, Record, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.records.people_asked import before_brackets, may_be_nobody
from boxlore.core.statements import NEARNESS, SURENESS, Reading, Said, Statement, Sure, fold


def build(material: Material, people: Mapping[str, Person], said_by: Mapping[str, str]) -> Record:
    """The record in force. `people` by id; `said_by` names the person behind a narrator's id."""
    rows = material.statements
    by_field, not_known = _gather(rows, material.chosen, said_by)
    plain = {statement.field: statement.words for statement, _ in rows}
    places = _places(rows) if "row" in plain else {}
    acts = {statement.id: statement.act for statement, _ in rows}
    shown = _people(material, by_field, people, said_by, places, acts)
    times = [statement.recorded_at for statement, _ in rows]
    times += [statement.recorded_at for marker in material.markers for statement, _ in marker.statements]
    disputes = [*_of_values(material, by_field), *_of_markers(material, said_by)]
    conflicts = tuple(conflict for conflict in disputes if _any_unweighed(conflict.told, material.settled))
    return Record(
        id=material.id,
        number=material.number,
        kind=plain.get("kind", "print"),
        mark=Mark(tuple(material.path), material.position) if material.path else None,
        found_in=plain.get("found_in", ""),
        size_mm=size.sides if (size := SIZE_WORDS.or_none(plain.get("size", ""))) else (),
        scans=tuple(material.scans),
        told=by_field,
        people=_in_question(rows, _with_doubts(shown, disputes)),
        related=tuple(material.related),
        conflicts=conflicts,
        undecided=tuple(conflict for conflict in disputes if conflict not in conflicts) if disputes else (),
        not_known=frozenset(not_known),
        asked=tuple(
            told_of(statement, None, said_by)
            for statement, _ in rows
            if statement.sure is Sure.NOT_KNOWN and FIELDS[statement.field].told
        ),
        unnamed=_unnamed(material.markers, shown) if material.markers else (),
        nameless=_nameless(rows, places) if places else (),
        audiences=tuple(statement.words for statement, _ in rows if statement.field == "audience")
        if "audience" in plain
        else (),
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
        confirmed=reading is not None and reading.confirmed and value is not None,
    )


def _rank(view: StatementView, chosen: str) -> tuple[bool, bool, int, int, str, str]:
    return (
        view.statement == chosen,
        view.source.said is not Said.FILE,
        SURENESS[view.sure],
        NEARNESS[view.source.said],
        view.recorded_at,
        view.statement,
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
    for name, views in by_field.items():
        if len(views) > 1 and not FIELDS[name].many:
            views.sort(key=lambda view: _rank(view, chosen.get(view.field, "")), reverse=True)
            if views[0].statement != chosen.get(name):
                _narrowest_first(views)
    return {name: tuple(views) for name, views in by_field.items()}, asked - set(by_field)


def _people(
    material: Material,
    by_field: Mapping[str, tuple[StatementView, ...]],
    people: Mapping[str, Person],
    said_by: Mapping[str, str],
    places: Mapping[str, tuple[str, int]],
    acts: Mapping[str, str],
) -> tuple[PersonShown, ...]:
    """Markers first, in the order of their numbers; then those told without one. Nobody twice in a role, but of those
    told without a name in one answer each (`Tom and wife; Jack and wife`)."""
    people_shown: list[PersonShown] = []
    roles = [role for role in ("person", "named", "photographer") if role in by_field]
    if not roles and not material.markers:
        return ()
    for marker in sorted(material.markers, key=lambda marker: marker.number):
        names, _ = _gather(marker.statements, {}, said_by)
        ranked = sorted(names.get("person", ()), key=lambda view: _rank(view, ""), reverse=True)
        for view in ranked[:1]:
            people_shown.append(_shown(view, "person", people, marker))
    seen = {(shown.role, shown.person or shown.name) for shown in people_shown}
    for role in roles:
        named_by_people = _of_people(by_field[role])
        at_markers = role == "person" and bool(people_shown)
        for view in named_by_people if named_by_people or at_markers else by_field[role]:
            row, position = places.get(view.statement, ("", 0))
            shown = replace(_shown(view, role, people, None), row=row, position=position)
            is_another = not shown.person and _is_told_twice(view, by_field[role], acts)
            if (role, shown.person or shown.name) not in seen or is_another:
                seen.add((role, shown.person or shown.name))
                people_shown.append(shown)
    return tuple(people_shown)


def _is_told_twice(view: StatementView, views: Iterable[StatementView], acts: Mapping[str, str]) -> bool:
    """Whether the same voice told the same word of kin in the same answer: of two people."""
    told = (view.words, view.source, acts[view.statement])
    same = [other for other in views if (other.words, other.source, acts[other.statement]) == told]
    return len(same) > 1 and fold(view.words) in KIN_WORDS


def _places(rows: Iterable[tuple[Statement, Reading | None]]) -> dict[str, tuple[str, int]]:
    """The row and position of each statement about a person; one that corrects another takes its place."""
    place_of: dict[str, tuple[str, int]] = {}
    for statement, _ in rows:
        if statement.field == "row":
            place = ROW_WORDS.or_none(statement.words)
            if place is not None:
                place_of[place.statement] = (place.row, place.position)
    for statement, _ in rows:
        if statement.replaces in place_of and statement.id not in place_of:
            place_of[statement.id] = place_of[statement.replaces]
    return place_of


def _unnamed(
    markers: Iterable[MarkerRows], shown: Iterable[PersonShown]
) -> tuple[tuple[str, int, tuple[float, ...]], ...]:
    named = {(person.scan, person.number) for person in shown}
    return tuple(
        (marker.scan, marker.number, marker.area) for marker in markers if (marker.scan, marker.number) not in named
    )


def _nameless(
    rows: Iterable[tuple[Statement, Reading | None]], places: Mapping[str, tuple[str, int]]
) -> tuple[tuple[str, int], ...]:
    unknown = [
        statement.id for statement, _ in rows if statement.field == "person" and statement.sure is Sure.NOT_KNOWN
    ]
    return tuple(places[ident] for ident in unknown if ident in places)


def _shown(view: StatementView, role: str, people: Mapping[str, Person], marker: MarkerRows | None) -> PersonShown:
    person = people.get(view.meant)
    return PersonShown(
        told=view,
        role=role,
        name=person.name if person else before_brackets(view.words) if view.asks else view.words,
        person=person.id if person else "",
        scan=marker.scan if marker else "",
        area=marker.area if marker else (),
        number=marker.number if marker else 0,
    )


def _of_values(material: Material, by_field: Mapping[str, tuple[StatementView, ...]]) -> Iterator[Conflict]:
    """For the date and the place: all statements of which each cannot be so together with another of them."""
    for name, why in _WHY.items():
        views = by_field.get(name, ())
        if len(views) < 2:
            continue
        readings = {statement.id: reading for statement, reading in material.statements if statement.field == name}
        meant = [(view, _may_mean(readings[view.statement])) for view in _still_open(views, material)]
        if sides := tuple(view for view, values in meant if any(_are_apart(values, others) for _, others in meant)):
            yield Conflict(name, sides, why)


_WHY = {"date": "these dates cannot both be so", "place": "neither of these places lies in the other"}


def _of_markers(material: Material, said_by: Mapping[str, str]) -> Iterator[Conflict]:
    for marker in material.markers:
        names = _gather(marker.statements, {}, said_by)[0].get("person", ())
        open_names = _still_open(names, material)
        if len({view.meant or view.words for view in open_names}) > 1:
            yield Conflict("person", tuple(open_names), f"marker {marker.number} is said to be different people")


def _with_doubts(people: tuple[PersonShown, ...], disputes: Sequence[Conflict]) -> tuple[PersonShown, ...]:
    """The people, with a mark on whoever stands at a marker of which others say that it is somebody else."""
    doubted = {view.statement for conflict in disputes if conflict.field == "person" for view in conflict.told}
    if not doubted:
        return people
    return tuple(
        replace(shown, disputed=True) if shown.number and shown.told.statement in doubted else shown for shown in people
    )


def _in_question(
    rows: Iterable[tuple[Statement, Reading | None]], people: tuple[PersonShown, ...]
) -> tuple[PersonShown, ...]:
    """The people, with a mark on whoever may be nobody. What only a file says is asked about by other rules."""
    unread = [shown for shown in people if _is_unread(shown)]
    if not unread:
        return people
    questions = [statement.words for statement, _ in rows if statement.field == "asked" and statement.words]
    nobody = {shown.told.statement for shown in unread if may_be_nobody(shown.told.words, questions)}
    return tuple(replace(shown, in_question=shown.told.statement in nobody) for shown in people)


def _is_unread(shown: PersonShown) -> bool:
    told = shown.told
    return not (shown.person or told.asks or shown.role != "person" or told.source.said is Said.FILE)


Values = Sequence[Edtf | Place]
"""The dates or the places that words may mean."""


def _may_mean(reading: Reading | None) -> Values:
    """What an output may take the words for; where the keeper is asked, all that may be meant; nothing if unknown."""
    value = reading.value if reading is not None else None
    asks = reading is not None and not reading.usable
    if isinstance(value, PlaceReading):
        return value.choices if asks else value.choices[:1]
    if not isinstance(value, DateReading) or value.edtf is None:
        return ()
    return [value.edtf, *filter(None, map(_edtf, value.alternatives))] if asks else [value.edtf]


def _edtf(text: str) -> Edtf | None:
    try:
        return standard.parse(text)
    except TextFault:
        return None


def _are_apart(values: Values, other_values: Values) -> bool:
    """Whether no value of the one can be so together with one of the other. What is not known is apart from nothing."""
    pairs = [(value, opposite) for value in values for opposite in other_values]
    return bool(pairs) and not any(_can_both_be(value, opposite) for value, opposite in pairs)


def _can_both_be(value: Edtf | Place, opposite: Edtf | Place) -> bool:
    if isinstance(value, Edtf) and isinstance(opposite, Edtf):
        return dates_meeting.can_both_be(value, opposite)
    return not (isinstance(value, Place) and isinstance(opposite, Place)) or places_meeting.can_both_be(value, opposite)


def _narrowest_first(views: list[StatementView]) -> None:
    """Bring a date or a place that lies within the first, and is as sure, before it."""
    for view in views[1:]:
        if view.sure is views[0].sure and _is_narrower(view, views[0]):
            views.remove(view)
            views.insert(0, view)
            return _narrowest_first(views)
    return None


def _is_narrower(inner: StatementView, outer: StatementView) -> bool:
    if inner.date and inner.date.edtf and outer.date and outer.date.edtf:
        return dates_meeting.is_narrower(inner.date.edtf, outer.date.edtf)
    place, wider = inner.place and inner.place.best, outer.place and outer.place.best
    if not place or not wider:
        return False
    return places_meeting.can_both_be(place, wider) and places_meeting.is_narrower(place, wider)


def _still_open(views: Sequence[StatementView], material: Material) -> list[StatementView]:
    """Without the statements that the keeper has weighed and passed over for one of the others.

    Where the keeper's word was “both” or “doubtful”, nothing is passed over. What only a file says stands against
    nobody's word.
    """
    chosen = {view.statement for view in views} & set(material.chosen.values())
    views = [view for view in views if view.source.said is not Said.FILE or view.statement in chosen] or views
    passed_over = material.settled - chosen if chosen else frozenset()
    return [view for view in views if view.statement not in passed_over]


def _of_people(views: Sequence[StatementView]) -> list[StatementView]:
    """Those that a person says, and not only a scan's file."""
    return [view for view in views if view.source.said is not Said.FILE]


def _any_unweighed(views: Iterable[StatementView], settled: frozenset[str]) -> bool:
    return any(view.statement not in settled for view in views)
