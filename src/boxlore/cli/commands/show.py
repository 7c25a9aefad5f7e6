"""`boxlore show`: the record of one item, with who says so and what is asked."""

import click

from boxlore.cli import options, output
from boxlore.core.crosswalk import captions
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.in_force import Record
from boxlore.tasks.collection.marks import find_items
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records import record_of


@click.command()
@click.argument("item")
@options.as_json
@click.pass_context
def show(ctx: click.Context, item: str, as_json: bool) -> None:
    """Show the record of ITEM (a number or a mark), what is being typed included.

    A mark that has held several items shows them all, the one that is there now first.
    """
    with open_collection(ctx.obj, write=False) as collection:
        for found in find_items(collection, item):
            record = record_of(collection, found.id)
            if as_json:
                output.row(_json(collection, record))
            else:
                _lines(record)


def _json(collection: Collection, record: Record) -> dict[str, object]:
    rows = [
        {
            "field": told.field,
            "words": told.words,
            "source": str(told.source),
            "said_by": told.said_by or None,
            "sure": str(told.sure),
            "audience": told.audience,
            "language": told.language or None,
            "in_force": position == 0 or FIELDS[name].many,
            "draft": False,
        }
        for name, told_rows in record.told.items()
        for position, told in enumerate(told_rows)
    ]
    rows += [
        {"field": one.field, "words": one.words, "source": str(one.source), "draft": True}
        for one in collection.store.drafts()
        if one.subject.id == record.id
    ]
    return {
        "number": record.number,
        "mark": record.mark.short if record.mark else None,
        "kind": record.kind,
        "title": captions.title(record),
        "edtf": record.edtf or None,
        "people": [
            {"name": one.name, "role": one.role, "number": one.number or None, "area": list(one.area) or None}
            for one in record.people
        ],
        "scans": [{"path": scan.path, "side": scan.side, "sha256": scan.sha256} for scan in record.scans],
        "related": [{"kind": one.kind, "number": one.number} for one in record.related],
        "statements": rows,
        "conflicts": [{"field": one.field, "why": one.why} for one in record.conflicts],
    }


def _lines(record: Record) -> None:
    click.echo(captions.reference(record))
    click.echo(output.safe(captions.title(record)))
    for name, told_rows in record.told.items():
        for told in told_rows:
            by = told.said_by or str(told.source)
            click.echo(f"  {FIELDS[name].label}: {output.safe(told.words)}  ({output.safe(by)}, {told.sure})")
    for one in record.people:
        if one.number:
            click.echo(f"  {one.number}: {output.safe(captions.name_of(one))}")
    for conflict in record.conflicts:
        click.echo(f"  Sources disagree: {conflict.why}")
    for name in sorted(record.not_known):
        click.echo(f"  {FIELDS[name].label}: asked, not known")
