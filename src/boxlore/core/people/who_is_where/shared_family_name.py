"""A family name told once for several people: `Tom and Leida Rourke`, `the Tamm brothers Juhan and Karl`.

The one without a family name gets it as a proposal beside the words. Where a comma parts the names it may be the last
one's alone (`Anna, Ruth and Joe Rusk`: it is asked of Anna and Ruth), and kin told by a word (`her sisters Liis and
Mari`, `with their son Tom`) may have another one: nobody gets it there.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import tokens_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.who_is_where.dictionary_forms import UNKNOWN, family_of_one
from boxlore.core.people.who_is_where.order import Item


def share_family(items: Sequence[Item], known: KnownNames) -> None:
    """Give each person told without a family name the one that is told for them, as a proposal."""
    parts = [read_name(item.person.words, known) if item.is_name else NameParts() for item in items]
    family = ""
    for item, read in zip(items, parts, strict=True):
        family = item.of_group or (family if item.joined == "and" else "")
        tokens = tokens_of(item.person.words)
        if family and item.of_group and len(tokens) == 2 and KIN_WORDS.get(tokens[0].plain) in _OF_ONE_FAMILY:
            note = ", ".join(filter(None, (tokens[0].text, item.person.note)))
            read = read_name(tokens[1].text, known)
            item.person = replace(item.person, words=tokens[1].text, note=note)  # `Familie Kessler: Vater Emil`
        if family and _is_given_alone(read):
            _propose(item, family, read.given)
    for at, ((first, read), (second, whole)) in enumerate(pairwise(zip(items, parts, strict=True))):
        has_own = whole.given and whole.family and not whole.kin and bool(whole.title) == bool(read.title)
        if (
            second.joined == "and"
            and has_own
            and not _is_kin_of_another(first)
            and _is_given_alone(replace(read, title=""))
            and not first.person.family
        ):
            if not _ask_of_others(items[: at + 1], parts[: at + 1], whole.family):
                _propose(first, whole.family, read.given)
            _as_of_one(second, whole)


_OF_ONE_FAMILY = ("father", "mother", "son", "daughter", "brother", "sister")


def _is_kin_of_another(item: Item) -> bool:
    """Whether it is told whose kin she is: `Jaan Oja, tema õde Anu ja Rein Saks`."""
    told = tokens_of(item.person.note)
    return any(KIN_WORDS.get(token.plain) in _OF_SOMEBODY for token in told) and len(told) > 1


_OF_SOMEBODY = ("brother", "sister", "cousin", "mother", "father", "son", "daughter")


def _propose(item: Item, family: str, given: str) -> None:
    """A family name beside a given name; where it is told as that of all, in the form of one: `Зуев` of `Зуевы`."""
    of_one = family_of_one(family, given)
    if of_one == UNKNOWN:
        asks = f"What is “{item.person.words}” of the family {family} called?"
        item.person = replace(item.person, asks=item.person.asks or asks)
    else:
        item.person = replace(item.person, family=of_one or family)


def _as_of_one(item: Item, read: NameParts) -> None:
    """`Павел Зуевы`: the given name alone, and what was told for the family a note."""
    if family_of_one(read.family, read.given) and item.person.words == f"{read.given} {read.family}":
        note = ", ".join(filter(None, (item.person.note, read.family)))
        item.person = replace(item.person, words=read.given, note=note)
        _propose(item, read.family, read.given)


def _ask_of_others(before: Sequence[Item], parts: Sequence[NameParts], family: str) -> bool:
    """`Alice, Beatrice, Cecil and Doris Snoad`: whether those before the last are of that family too is a question,
    where a comma parts them."""
    others: list[Item] = []
    for item, read in zip(reversed(before), reversed(parts), strict=True):
        if item.joined or item.person.family or item.person.asks or not _is_given_alone(read):
            break
        others.insert(0, item)
    if len(others) > 1:
        who = " and ".join(f"“{item.person.words}”" for item in others)
        asks = f"Are {who} of the family {family} too?"
        others[0].person = replace(others[0].person, asks=asks)
    return len(others) > 1


def _is_given_alone(read: NameParts) -> bool:
    return bool(read.given) and " " not in read.given and not (read.family or read.kin or read.title or read.patronymic)
