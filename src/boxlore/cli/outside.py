"""What the keeper is told before something goes outside: what stays out of it, and in which table she may answer."""

from boxlore.cli import talk
from boxlore.core.records.audience import To
from boxlore.tasks.archive.names_asked import left_out
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import Selection


def say_left_out(collection: Collection, to: To, selection: Selection) -> None:
    """Say what an output leaves out for a name's sake; nothing of one for the family."""
    for line in left_out(collection, to, selection):
        talk.say(line)
