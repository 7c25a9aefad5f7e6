"""Originals that are not the donor's to give: those that somebody lent, and those of which another owner is told.

A deed gives what the donor owns (common practice, no source). Who lent or owns a thing is told for the family, and is
in no transfer unless it was told for an archive; that a thing is lent must be known there, or the deed would be wrong.
"""

from collections.abc import Iterator

from boxlore.core.fields.originals import NOTED_WORDS
from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.statements import fold
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.tasks.collection.opening import Collection

MOST_NAMED = 10
"""So many items are named by their numbers."""


def lent_items(collection: Collection) -> frozenset[str]:
    """The ids of the items that somebody lent, by themselves or with what they lie in, given back since or not."""
    return frozenset(item for item, _ in _told_of_items(collection, "lender"))


def asked_of_originals(collection: Collection, items: frozenset[str], lent: frozenset[str]) -> Iterator[Finding]:
    """What the keeper must know where the originals of these `items` (ids) are handed over, but for those `lent`."""
    if numbers := _numbers(collection, items & lent):
        words = (
            f"{_listed(numbers)}: lent, so that the scans go and the originals do not. What its lender gives you since "
            "is yours: boxlore tell NUMBER lender “no loan”."
        )
        yield make_finding("original.lent", Severity.NOTE, words, "common practice, no source")
    holder = fold(collection.settings.holder)
    others = {
        item
        for item, owner in _told_of_items(collection, "owner")
        if item in items - lent and not (holder and (fold(owner) in holder or holder in fold(owner)))
    }
    if numbers := _numbers(collection, others):
        words = (
            f"{_listed(numbers)}: another owner is told than who holds the originals, and the deed gives them all the "
            "same. Ask the owner before anybody signs, or note a loan (boxlore housing lend)."
        )
        yield make_finding("original.owner", Severity.ASK, words, "common practice, no source")


def _told_of_items(collection: Collection, field: str) -> Iterator[tuple[str, str]]:
    """(item id, words) of a field that is told of an item, or of a container that it lies in."""
    last = {ident: words for ident, _, words in collection.store.words_of([field])}  # in the order of telling
    told = [(ident, words) for ident, words in last.items() if NOTED_WORDS.read(words).so]
    paths = dict(collection.store.containers())
    of_containers = [(paths[ident], words) for ident, words in told if ident in paths]
    yield from ((ident, words) for ident, words in told if collection.store.number_of(ident))
    for item, kept in collection.store.kept_in() if of_containers else ():
        path = paths.get(kept.container, ())
        yield from ((item, words) for outer, words in of_containers if path[: len(outer)] == outer)


def _numbers(collection: Collection, items: frozenset[str] | set[str]) -> list[str]:
    return sorted(filter(None, map(collection.store.number_of, items)))


def _listed(numbers: list[str]) -> str:
    more = [several(len(numbers) - MOST_NAMED, "more item")] if len(numbers) > MOST_NAMED else []
    return ENGLISH.listed([*numbers[:MOST_NAMED], *more])
