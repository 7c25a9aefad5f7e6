"""Which item a mark means, now and in earlier times: a slip printed years ago still finds its photograph."""

from collections import defaultdict
from collections.abc import Sequence

from boxlore.core.errors import WrongUse
from boxlore.core.fields.originals import Kept
from boxlore.core.fields.plain_values import COUNT_WORDS
from boxlore.core.originals.location_history import PastMark, Places, Stated, Withdrawn, rows_with_mark
from boxlore.core.records.marks import looks_like_number, short_form
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection

WHOLE = "whole"
"""What stands for the collection itself in the place of an item's number."""
TOLD_OF_THE_WHOLE = ("archive_answer", "custody", "rights", "accession")


def marks_of(collection: Collection, item: str) -> list[PastMark]:
    """Every mark an item had and has, oldest first."""
    return _histories(collection, [item])[item]


def holders(collection: Collection, mark: str) -> list[PastMark]:
    """Every item that a mark ever meant, with the time it did: now first, then the latest."""
    short = short_form(mark)
    container, _, position = short.rpartition("/")
    label = container.rpartition("/")[2]
    store = collection.store
    place = COUNT_WORDS.or_none(position)
    asked = [] if place is None else [Kept(ident, place) for ident in _places(collection).ever_labelled(label)]
    items = [item for item in store.ever_kept(asked) if store.number_of(item)]
    return rows_with_mark(short, (past_mark for rows in _histories(collection, items).values() for past_mark in rows))


def dated(past_mark: PastMark) -> str:
    """When an item had a mark, in words."""
    return f"since {past_mark.since[:10]}" if past_mark.now else f"{past_mark.since[:10]} to {past_mark.until[:10]}"


def _histories(collection: Collection, items: Sequence[str]) -> dict[str, list[PastMark]]:
    places = _places(collection)
    rows: defaultdict[str, list[Stated]] = defaultdict(list)
    for fact in collection.store.kept_facts(items):
        rows[fact.subject].append(fact)
    return {item: places.past_marks(item, rows[item]) for item in items}


def _places(collection: Collection) -> Places:
    return Places(collection.store.container_facts(), Withdrawn(collection.store.withdrawals()))


def find_items(collection: Collection, text: str) -> list[Subject]:
    """The items meant by a number, or that a mark means or ever meant: now first. Raises WrongUse if there is none."""
    store = collection.store
    if looks_like_number(text):
        ident = store.item_by_number(text.strip().upper())
        if ident is None:
            raise WrongUse(f"There is no photograph {text.strip().upper()} here.", "boxlore find shows what there is.")
        return [Subject(Kind.ITEM, ident)]
    items = [past_mark.item for past_mark in holders(collection, text)]
    if not items:
        raise WrongUse(f"Nothing is, or was, kept at {text}.", "Use a number (TRA-0042) or a mark (3/12/4).")
    return [Subject(Kind.ITEM, item) for item in dict.fromkeys(items)]


def find_item(collection: Collection, text: str) -> Subject:
    """The one item meant by a number or a mark. Raises WrongUse if there is none, or a mark has meant more than one."""
    items = find_items(collection, text)
    if len(items) > 1:
        held = holders(collection, text)
        said = "; ".join(f"{collection.store.number_of(past_mark.item)} ({dated(past_mark)})" for past_mark in held[:6])
        raise WrongUse(f"{text} is the mark of {len(items)} items: {said}.", "Use the number instead.")
    return items[0]


def find_told(collection: Collection, text: str, field: str) -> Subject:
    """What a field is told of: the one item meant by a number or a mark, or the collection, for `whole`. Raises
    WrongUse for none, and for a field that is not told of the whole."""
    if text.strip().lower() != WHOLE:
        return find_item(collection, text)
    if field not in TOLD_OF_THE_WHOLE:
        words = f"“{field[:30]}” is not told of the whole collection."
        told = ", ".join(TOLD_OF_THE_WHOLE)
        raise WrongUse(words, f"Of the whole are told: {told}. Its title and other settings stand in boxlore.toml.")
    return Subject(Kind.COLLECTION, collection.id)
