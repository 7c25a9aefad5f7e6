"""Finding what was told: by its words, and by the days that they were understood as.

Words that are a date themselves (“1952”, “the fifties”) find what was told in other words of days within it: “the
summer of 1952”, “12/5/52”, “the year of the regatta”. A date that is wider than what was asked, or has no end, is not
found by it; one that still asks is, for a search makes nothing of it. What is found by its words comes first.
"""

from itertools import islice, product

from boxlore.core.dates import phrases
from boxlore.core.people.names.forms import close
from boxlore.core.statements import fold
from boxlore.store.values import Hit
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.settings import phrase_settings

SHORTEST_YEAR = 3
"""Bare digits that are fewer are the number of an item, and no year."""

ALIKE = 2
"""So many first letters are taken to be as they were meant."""

MOST_NEAR = 3
MOST_TRIED = 12


def found(collection: Collection, words: str, limit: int = 50) -> list[Hit]:
    """At most `limit` hits of a search for words, or for the date that they are."""
    hits = collection.store.search(words, limit)
    here = {(hit.item, hit.field, hit.words) for hit in hits}
    dated = [hit for days in _days(collection, words) for hit in collection.store.dated(*days, limit)]
    more = dict.fromkeys(hit for hit in dated if (hit.item, hit.field, hit.words) not in here)
    return [*hits, *more][:limit]


def near(collection: Collection, words: str) -> list[str]:
    """What may have been meant by words that find nothing: the same, with another spelling, one slip away and begun
    alike, for each word that nobody told; at most a few, and only such as find something."""
    asked: list[list[str]] = []
    for word in fold(words).split():
        if collection.store.search(word, 1):
            asked.append([word])
        else:
            told = collection.store.words_beginning(word[:ALIKE])
            asked.append(sorted(known for known in told if close(word, known))[:MOST_NEAR])
    meant = islice(map(" ".join, product(*asked)), MOST_TRIED)
    as_asked = " ".join(fold(words).split())
    return [other for other in meant if other != as_asked and found(collection, other, 1)][:MOST_NEAR]


def _days(collection: Collection, words: str) -> list[tuple[str, str]]:
    """The first and the last day that the words say, as ISO days, of each date that they may be (12.5.52); none where
    they say no date with both ends."""
    asked = words.strip()
    if not asked or (asked.isdecimal() and len(asked) < SHORTEST_YEAR):
        return []
    edtf = phrases.read(asked, phrase_settings(collection.settings)).edtf
    ends = [(first.bounds[0], last.bounds[1]) for first, last in edtf.parts if first and last] if edtf else []
    return [(str(first), str(last)) for first, last in ends]
