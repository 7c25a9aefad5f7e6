"""`boxlore show`: the record of one item, with who says so and what is asked."""

import click

from boxlore.cli import contradictions, options, output
from boxlore.core.crosswalk import captions, references
from boxlore.core.evidence.claims import of_item
from boxlore.core.evidence.disagreements import by_day, disagreements
from boxlore.core.fields.audiences import AUDIENCE_WORDS, audience_shown
from boxlore.core.fields.originals import SIZE_WORDS, SizeMm
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.records.item_record import ALTERED, Conflict, Record
from boxlore.core.rules.one_item import damaged_scans, how_to_settle, unseen_pages
from boxlore.core.statements import Kind, Statement, Subject, Sure
from boxlore.tasks.collection.items_by_mark import find_items
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.what_scans_show import earlier_files
from boxlore.tasks.people.evidence import evidence_at_once
from boxlore.tasks.sitting.recovering import drafts_of
from boxlore.tasks.telling.markers import Markers
from boxlore.tasks.telling.turned_scans import IN_WORDS


@click.command()
@click.argument("item")
@options.as_json
@click.pass_context
def show(ctx: click.Context, item: str, as_json: bool) -> None:
    """Show the record of ITEM (a number or a mark), what is being typed included.

    A mark that has held several items shows them all, the one that is there now first.
    """
    with open_collection(ctx.obj, write=False) as collection:
        for subject in find_items(collection, item):
            record = record_of(collection, subject.id)
            if as_json:
                output.row(_json(collection, record))
            else:
                _lines(collection, record)


def _not_known(collection: Collection, record: Record) -> list[Statement]:
    """Where somebody was asked and did not know: the statements in force, some with what was said instead."""
    rows = collection.store.statements(Subject(Kind.ITEM, record.id))
    return [statement for statement, _ in rows if statement.sure is Sure.NOT_KNOWN and FIELDS[statement.field].told]


def _json(collection: Collection, record: Record) -> dict[str, object]:
    """The record as one object: what an output shows, then every statement, then what is being typed (drafts)."""
    rows = [
        {
            "field": view.field,
            "words": view.words,
            "source": str(view.source),
            "said_by": view.said_by or None,
            "sure": str(view.sure),
            "audience": view.audience,
            "language": view.language or None,
            "in_force": position == 0 or FIELDS[name].many,
            "draft": False,
        }
        for name, views in record.told.items()
        for position, view in enumerate(views)
    ]
    rows += [
        {"field": draft.field, "words": draft.words, "source": str(draft.source), "draft": True}
        for draft in drafts_of(collection, record.id)
    ]
    names = collection.people().names()
    found = evidence_at_once(collection) if record.date is None else None
    return {
        "number": record.number,
        "mark": record.mark.short if record.mark else None,
        "kind": record.kind,
        "title": captions.title(record),
        "edtf": record.edtf or None,
        "people": [
            {
                "name": person.name,
                "role": person.role,
                "number": person.number or None,
                "area": list(person.area) or None,
                "in_question": person.in_question,
            }
            for person in record.people
        ],
        "scans": [
            {
                "id": scan.id,
                "path": scan.path,
                "side": scan.side,
                "role": scan.role,
                "turn": scan.turn,
                "area": list(scan.area) or None,
                "corners": list(scan.corners) or None,
                "sha256": scan.sha256,
                "damaged": scan.damaged,
            }
            for scan in record.scans
        ],
        "earlier_files": earlier_files(collection, record),
        "markers": [
            {"scan": marker.scan, "number": marker.number, "x": marker.x, "y": marker.y, "name": marker.name or None}
            for marker in Markers(collection).of(record)
        ],
        "related": [{"kind": relation.kind, "number": relation.number} for relation in record.related],
        "worked_out": (found.of_item(record.id).edtf or None) if found else None,
        "size_mm": list(record.size_mm) or None,
        "found_in": record.found_in or None,
        "statements": rows,
        "not_known": [
            {
                "field": statement.field,
                "words": statement.words,
                "source": str(statement.source),
                "said_by": names.get(statement.source.ref),
            }
            for statement in _not_known(collection, record)
        ],
        "audiences": list(record.audiences),
        "conflicts": [_conflict(conflict, weighed=False) for conflict in record.conflicts]
        + [_conflict(conflict, weighed=True) for conflict in record.undecided],
    }


def _kept(words: str) -> str:
    """What the keeper has kept of the item, and to whom."""
    kept = AUDIENCE_WORDS.or_none(words)
    if kept is None:
        return f"{output.safe(words)} cannot be read, and counts as the keeper's alone"
    what = FIELDS[kept.field].label if kept.field else "all of it"
    return f"{what}, {audience_shown(str(kept.audience)) or 'for anyone'}"


def _conflict(conflict: Conflict, *, weighed: bool) -> dict[str, object]:
    """A conflict with its sides; `weighed` says that the keeper has left it open."""
    sides = [
        {"words": view.words, "source": str(view.source), "said_by": view.said_by or None} for view in conflict.told
    ]
    return {"field": conflict.field, "why": conflict.why, "sides": sides, "weighed": weighed}


def _scan_lines(collection: Collection, record: Record) -> None:
    """The files of the scans, what of each is seen and how, its markers, and which files were there before."""
    marked = Markers(collection).of(record)
    for scan in record.scans:
        of_it = [marker for marker in marked if marker.scan == scan.id]
        unnamed = ", ".join(str(marker.number) for marker in of_it if not marker.name)
        words = [
            f"of it the part {' '.join(f'{part:g}' for part in scan.area)}" if scan.area else "",
            "straightened between its corners" if scan.corners else "",
            f"turned by {scan.turn}° to the right" if scan.turn else "",
            "an altered version" if scan.role == ALTERED else "",
            several(len(of_it), "marker") if of_it else "",
            f"not named: {unnamed}" if unnamed else "",
        ]
        about = ", ".join(filter(None, words))
        output.say(f"  Scan of the {IN_WORDS[scan.side]}: {output.safe(scan.path)}{f'  ({about})' if about else ''}")
    for path in earlier_files(collection, record):
        output.say(f"  Scanned before: {output.safe(path)}")


def _worked_out(collection: Collection, record: Record) -> None:
    """What follows of its date from everything, as `boxlore evidence` has it, with what cannot all be so."""
    why = f"boxlore evidence {record.number} --why"
    found = evidence_at_once(collection)
    if found is None:
        output.say(f"  Worked out: see {why}")
        return
    worked = found.of_item(record.id)
    of_it = by_day(disagreements(found.worked.circles)).get(of_item(record.id), [])
    if worked.edtf or of_it:
        output.say(f"  Worked out: {contradictions.shown(worked, of_it)}  (why: {why})")
    for each in of_it:
        contradictions.write(each, "    ")
    contradictions.write_left_out(found.left_out(record), "    ")


def _lines(collection: Collection, record: Record) -> None:
    output.say(references.reference(record))
    output.say(output.safe(captions.title(record)))
    for name, views in record.told.items():
        for view in views:
            by = view.said_by or str(view.source)
            kept = output.kept_to(view.audience)
            output.say(f"  {FIELDS[name].label}: {output.safe(view.words)}  ({output.safe(by)}, {view.sure}{kept})")
    if record.date is None:
        _worked_out(collection, record)
    for person in record.people:
        if person.number:
            kept = output.kept_to(person.told.audience)
            output.say(f"  {person.number}: {output.safe(captions.name_of(person))}{kept}")
    _scan_lines(collection, record)
    for words in record.audiences:
        output.say(f"  {FIELDS['audience'].label}: {_kept(words)}")
    for conflict in record.conflicts:
        output.say(f"  Sources disagree: {output.safe(conflict.words)}")
        output.say(f"    {how_to_settle(conflict)}")
    for conflict in record.undecided:
        output.say(f"  Weighed and left open: {output.safe(conflict.words)}")
    for finding in (*damaged_scans(record, {}), *unseen_pages(record, {})):
        output.say(f"  {output.safe(finding.message)}")
    for name in sorted(record.not_known):
        output.say(f"  {FIELDS[name].label}: asked, not known")
    for statement in _not_known(collection, record):
        if statement.words:
            output.say(f"  {FIELDS[statement.field].label}: {output.safe(statement.words)}  (not known)")
    if record.size_mm:
        output.say(f"  {FIELDS['size'].label}: {SIZE_WORDS.write(SizeMm(record.size_mm))}")
    for draft in drafts_of(collection, record.id):
        output.say(f"  {FIELDS[draft.field].label}: {output.safe(draft.words)}  (being typed)")
