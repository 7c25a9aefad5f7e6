"""A family name told once for several people: `Tom and Leida Rourke`, `the Tamm brothers Juhan and Karl`.

The one without a family name gets it as a proposal beside the words. Where a comma parts the names it may be the last
one's alone (`Anna, Ruth and Joe Rusk`: Ruth and Joe share it), and kin told by a word (`her sisters Liis and Mari`,
`with their son Tom`) may have another one: nobody gets it there.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.who_is_where.order import Item


def share_family(items: Sequence[Item], known: KnownNames) -> None:
    """Give each person told without a family name the one that is told for them, as a proposal."""
    parts = [read_name(item.person.words, known) if item.is_name else NameParts() for item in items]
    family = ""
    for item, read in zip(items, parts, strict=True):
        family = item.of_group or (family if item.joined == "and" else "")
        if family and _is_given_alone(read):
            item.person = replace(item.person, family=family)
    for at, ((first, read), (second, whole)) in enumerate(pairwise(zip(items, parts, strict=True))):
        has_own = whole.given and whole.family and not whole.kin and bool(whole.title) == bool(read.title)
        if second.joined == "and" and has_own and _is_given_alone(replace(read, title="")) and not first.person.family:
            first.person = replace(first.person, family=whole.family)
            _ask_of_others(items[:at], parts[:at], whole.family)


def _ask_of_others(before: Sequence[Item], parts: Sequence[NameParts], family: str) -> None:
    """`Alice, Beatrice, Cecil and Doris Snoad`: whether those before the two are of that family too is a question."""
    others: list[Item] = []
    for item, read in zip(reversed(before), reversed(parts), strict=True):
        if item.joined or item.person.family or item.person.asks or not _is_given_alone(read):
            break
        others.insert(0, item)
    if others:
        who = " and ".join(f"“{item.person.words}”" for item in others)
        asks = f"{'Is' if len(others) == 1 else 'Are'} {who} of the family {family} too?"
        others[0].person = replace(others[0].person, asks=asks)


def _is_given_alone(read: NameParts) -> bool:
    return bool(read.given) and " " not in read.given and not (read.family or read.kin or read.title or read.patronymic)
