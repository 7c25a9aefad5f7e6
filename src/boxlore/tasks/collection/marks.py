"""Which item a mark means, now and in earlier times: a slip printed years ago still finds its photograph."""

from collections import defaultdict
from collections.abc import Sequence

from boxlore.core.originals.history import PastMark, Places, Stated, Withdrawn, held
from boxlore.core.records.containers import short_form
from boxlore.tasks.collection.opening import Collection


def marks_of(collection: Collection, item: str) -> list[PastMark]:
    """Every mark an item had and has, oldest first."""
    return _histories(collection, [item])[item]


def holders(collection: Collection, mark: str) -> list[PastMark]:
    """Every item that a mark ever meant, with the time it did: now first, then the latest."""
    short = short_form(mark)
    container, _, position = short.rpartition("/")
    label = container.rpartition("/")[2]
    store = collection.store
    asked = [f"{ident} {position}" for ident in _places(collection).ever_labelled(label)]
    items = [item for item in store.ever_kept(asked) if store.number_of(item)]
    return held(short, (one for rows in _histories(collection, items).values() for one in rows))


def dated(one: PastMark) -> str:
    """When an item had a mark, in words."""
    return f"since {one.since[:10]}" if one.now else f"{one.since[:10]} to {one.until[:10]}"


def _histories(collection: Collection, items: Sequence[str]) -> dict[str, list[PastMark]]:
    places = _places(collection)
    rows: defaultdict[str, list[Stated]] = defaultdict(list)
    for one in collection.store.kept_facts(items):
        rows[one.subject].append(one)
    return {item: places.kept(item, rows[item]) for item in items}


def _places(collection: Collection) -> Places:
    return Places(collection.store.container_facts(), Withdrawn(collection.store.withdrawals()))
