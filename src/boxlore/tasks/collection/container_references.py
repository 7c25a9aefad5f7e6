"""What an archive calls boxes, folders and other containers: told of the container itself, and not of its items."""

from collections.abc import Mapping, Sequence

from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import REFERENCE, StatementView
from boxlore.core.records.marks import ContainerPath
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView


def container_references(collection: Collection, seen: AudienceView) -> Mapping[ContainerPath, Sequence[StatementView]]:
    """The references of containers, as far as this audience may know them, by (kind, label) from the outermost inward.
    Boxes of one mark are one."""
    paths, recipient = dict(collection.store.containers()), seen.recipient
    found: dict[ContainerPath, list[StatementView]] = {}
    for ident, rows in collection.store.subjects(Kind.CONTAINER):
        about = Subject(Kind.CONTAINER, ident)
        views = [told_of(row, reading, {}) for row, reading in rows if row.field == REFERENCE]
        going = [recipient.without_names(view, about) for view in views if recipient.may_be_told(view, about)]
        if going:
            found.setdefault(paths[ident], []).extend(going)
    return found
