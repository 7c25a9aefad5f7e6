"""What something is called by which a person knows it: an item's number, somebody's name."""

from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.what_scans_show import shown_by


def called(collection: Collection, subject: str) -> str:
    """The number of an item, also of one whose scan this is; the name of a person; '' for whatever has neither."""
    if number := collection.store.number_of(subject):
        return number
    if (person := collection.people().get(subject)) is not None:
        return person.name
    return next((collection.store.number_of(shows.item) for _, shows in shown_by(collection, subject)), "")
