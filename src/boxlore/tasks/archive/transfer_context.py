"""What a transfer says beyond the records: facts, the order of containers, closures, moves, people and sittings."""

from collections.abc import Container, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from boxlore.core.crosswalk.dublin_core import ACCESSIONS_JOINED, CollectionFacts
from boxlore.core.crosswalk.receiving_archive import NOT_SAID, Archive
from boxlore.core.fields.originals import Kept
from boxlore.core.fields.sittings import RecordingFacts, ShownAt, recording_in, shown_in
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.person import Person
from boxlore.core.records.closing_dates import Closing
from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import REFERENCE, Record, StatementView
from boxlore.core.records.marks import ContainerPath, Mark, label_key
from boxlore.core.statements import Kind, Said, Statement, Subject, fold
from boxlore.exports.rdf import annotation, container_node, person_triples, subject_triples
from boxlore.tasks.archive.originals_of_others import lent_items
from boxlore.tasks.archive.restrictions import restrictions_on
from boxlore.tasks.collection.container_references import container_references
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView, keepers_alone, kept_whole


def facts_of(
    collection: Collection, seen: AudienceView | None = None, *, archive: Archive = NOT_SAID, originals: bool = True
) -> CollectionFacts:
    """What every record of an export shares. `seen` gives for whom it is made: what is withheld stays out."""
    settings = collection.settings
    views_by_id = things_told(collection, seen, Kind.COLLECTION) if seen else {}
    about = views_by_id.get(collection.id, [])
    custody = [view.words for view in about if view.field == "custody"]
    facts = CollectionFacts(
        id=collection.id,
        title=settings.title,
        holder=seen.holder if seen else settings.holder,
        language=settings.language,
        on_day=collection.clock.today(),
        brackets=settings.bracketed_titles,
        archive=archive,
        originals=originals,
        custody=tuple(words for words in (seen.setting("custody") if seen else "", *custody) if words),
        code=settings.prefix,
        family=seen.setting("family") if seen else "",
        history=seen.setting("history") if seen else "",
        contact=seen.setting("contact") if seen else "",
        accession=ACCESSIONS_JOINED.join(dict.fromkeys(view.words for view in about if view.field == "accession")),
        reference=_last(about, REFERENCE),
        of_containers=_of_containers(collection, seen) if seen else {},
    )
    not_given, closed_whole = kept_whole(collection)
    lent = lent_items(collection) if originals else frozenset()
    facts = replace(facts, not_given=not_given, closed_whole=closed_whole, lent=lent)
    rights = _last(about, "rights")
    return replace(facts, rights=rights) if rights else facts


def _of_containers(collection: Collection, seen: AudienceView) -> dict[ContainerPath, str]:
    """What an archive calls each container."""
    told = container_references(collection, seen)
    return {path: "; ".join(view.words for view in views) for path, views in told.items()}


def with_contact(name: str, contact: str) -> str:
    """A name and how to reach whose it is; the contact alone where that has the name already."""
    return contact if name and fold(name) in fold(contact) else ", ".join(filter(None, (name, contact)))


def _last(about: Iterable[StatementView], field: str) -> str:
    """What was told last in a field; '' for nothing."""
    told = [view.words for view in about if view.field == field]
    return told[-1] if told else ""


def closing_of(collection: Collection, outside: AudienceView) -> Closing:
    """Works out closures from what is known of the living."""
    return Closing(
        outside=outside.recipient,
        people=collection.people(),
        lives=outside.lives,
        latest=outside.latest,
        years=collection.settings.living_years,
    )


def order_of_containers(collection: Collection) -> list[str]:
    """Ids of all items, box by box and folder by folder, in their places there; what lies nowhere comes last."""
    paths = dict(collection.store.containers())
    places = dict(collection.store.kept_in())
    keys: list[tuple[tuple[object, ...], str]] = []
    for at, (_, item) in enumerate(collection.store.items()):
        kept = places.get(item, Kept(""))
        path = paths.get(kept.container, ())
        steps = tuple((kind, *label_key(label)) for kind, label in path)
        keys.append(((not path, steps, kept.position, at), item))
    return [item for _, item in sorted(keys)]


@dataclass(frozen=True, slots=True)
class Moves:
    """Where items were kept before, as sentences."""

    before: dict[str, tuple[str, ...]]

    def of(self, record: Record) -> tuple[str, ...]:
        return self.before.get(record.id, ())


def moves_of(collection: Collection, seen: AudienceView) -> Moves:
    """Read the places that items have left; a place whose name may not go to that audience is left out."""
    paths = dict(collection.store.containers())
    before: dict[str, tuple[str, ...]] = {}
    for item, kept, when in collection.store.kept_before():
        path = paths.get(kept.container, ())
        if path and seen.recipient.may_read(Mark(path).long):
            line = f"Kept earlier (from {when[:10]}) at: {Mark(path, kept.position).long}."
            before[item] = (*before.get(item, ()), line)
    return Moves(before)


def things_told(collection: Collection, seen: AudienceView, kind: Kind) -> dict[str, list[StatementView]]:
    """What may be told of each thing of a kind, by its id; nothing of people who are withheld."""
    said_by, recipient = collection.people().names(), seen.recipient
    views_by_id: dict[str, list[StatementView]] = {}
    for ident, rows in collection.store.subjects(kind):
        about = Subject(kind, ident)
        views = [told_of(row, reading, said_by) for row, reading in rows if _is_told(row)]
        allowed = [view for view in views if recipient.may_be_told(view, about)]
        going_out = [recipient.without_names(view, about) for view in allowed]
        views_by_id[ident] = going_out + (restrictions_on(seen, about, rows) if going_out else [])
    return views_by_id


def _is_told(statement: Statement) -> bool:
    return FIELDS[statement.field].told


def tellers_of(views: Iterable[StatementView]) -> set[str]:
    """The ids of those who told these statements, also of whom nothing may be told here."""
    return {view.source.ref for view in views if view.source.said is Said.NARRATOR and view.source.ref}


def thing_views(
    collection: Collection, seen: AudienceView, people: Iterable[str] | None, sittings: Container[str] = ()
) -> Iterator[tuple[Kind, str, list[StatementView]]]:
    """What is told of people (all, or those with these ids, under every entry of theirs, and whoever told what goes),
    events, places, the collection, and these `sittings` (ids), as kind, id and views."""
    registry, told = seen.people(), things_told(collection, seen, Kind.PERSON)
    others = [
        (kind, ident, views)
        for kind in (Kind.EVENT, Kind.PLACE, Kind.COLLECTION)
        for ident, views in things_told(collection, seen, kind).items()
        if views
    ]
    told_in = {
        ident: views for ident, views in things_told(collection, seen, Kind.SITTING).items() if ident in sittings
    }
    wanted = set(told)
    if people is not None:
        tellers = tellers_of(view for _, _, views in others for view in views)
        spoke = {view.meant for views in told_in.values() for view in views if view.meant}
        wanted = _with_tellers({*people, *tellers, *spoke}, told, registry)
    for ident, views in told.items():
        if ident in registry and ident in wanted and seen.recipient.may_name(ident, registry[ident].name):
            yield Kind.PERSON, ident, views
    yield from others
    for ident, views in told_in.items():
        yield Kind.SITTING, ident, views


def _with_tellers(
    people: Iterable[str], told: Mapping[str, Sequence[StatementView]], registry: Mapping[str, Person]
) -> set[str]:
    """Every entry of these people and of those who told of them, of those who told of these, and so on."""
    wanted: set[str] = set()
    new = set(people)
    while new:
        entries = {entry for ident in new if ident in registry for entry in registry[ident].ids}
        wanted |= entries | new
        new = tellers_of(view for entry in entries for view in told.get(entry, ())) - wanted
        new = {ident for ident in new if ident in registry}
    return wanted


def thing_lines(
    collection: Collection, seen: AudienceView, people: Iterable[str] | None, sittings: Container[str] = ()
) -> Iterator[str]:
    """The triples of what `thing_views` gives; of a sitting, its recordings and what was shown too."""
    registry, kept = seen.people(), keepers_alone(collection)
    for kind, ident, views in thing_views(collection, seen, people, sittings):
        if kind is Kind.PERSON:
            yield from person_triples(registry[ident], ident)
        recordings, shown = _sitting_facts(collection, seen, ident, kept) if kind is Kind.SITTING else ([], [])
        yield from subject_triples(kind, ident, views, recordings, shown)


def container_lines(collection: Collection, seen: AudienceView, described: Container[ContainerPath]) -> Iterator[str]:
    """The triples of what an archive calls containers and, in the closed part, remarks of them; of those that are
    `described`."""
    paths = dict(collection.store.containers())
    told = {path: list(views) for path, views in container_references(collection, seen).items()}
    for ident, rows in collection.store.subjects(Kind.CONTAINER):
        told.setdefault(paths[ident], []).extend(restrictions_on(seen, Subject(Kind.CONTAINER, ident), rows))
    for path, views in told.items():
        if path in described:
            yield from (annotation(view, container_node(collection.id, path)) for view in views)


def _sitting_facts(
    collection: Collection, seen: AudienceView, sitting: str, kept: Container[str]
) -> tuple[list[RecordingFacts], list[ShownAt]]:
    about = Subject(Kind.SITTING, sitting)
    told = [
        statement
        for statement, _ in collection.store.statements(about)
        if seen.recipient.may_be_told(told_of(statement, None, {}), about)
    ]
    recordings = [recording_in(statement) for statement in told if statement.field == "recording"]
    shown = [shown_in(statement) for statement in told if statement.field == "shown"]
    return recordings, [out for out in shown if out.item not in kept]
