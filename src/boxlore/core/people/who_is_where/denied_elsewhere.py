"""Somebody named surely of whom words that ask tell that she is not in the picture.

Ethel, geborene Lohse ist nicht dabei      ; said behind a comma or an `and`, by small words: of the name before it
It's not Ethel, Ethel died in 1920         ; the same name stands behind a `not`
Dot, not to be confused with Ethel         ; joined by `with` to words that begin with `not`

Each such name asks; nobody is made of it until it is answered.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.who_is_where.item_words import is_my
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.small_words_table import DENY, NOT_IN_IT
from boxlore.core.people.who_is_where.takers_table import TOOK
from boxlore.core.people.who_is_where.tokens import Element, elements_of
from boxlore.core.statements import fold


def ask_of_denied(items: Sequence[Item]) -> None:
    """Let each name ask that is denied elsewhere in the answer."""
    told = {id(item): _asking(item) for item in items}
    denied = {id(before) for before, item in pairwise(items) if _is_told_of(before, item, told[id(item)])}
    behind = [(told[id(before)], item) for before, item in pairwise(items) if item.joined == "with"]
    denied |= {id(item) for said, item in behind if said and said[0].plain in DENY}
    names = {name for said in told.values() for name in _names_behind_not(said)}
    for item in items:
        is_denied = id(item) in denied or fold(item.person.words) in names
        if is_denied and item.is_name and item.person.is_person:
            question = f"Is “{item.person.words}” in the picture?"
            item.person, item.is_name = replace(item.person, asks=question, is_person=False), False


def _asking(item: Item) -> Sequence[Element]:
    """The words of an item that asks and makes nobody; none for all others."""
    return elements_of(item.person.words) if item.person.words and not item.person.is_person else []


def _names_behind_not(told: Sequence[Element]) -> Iterator[str]:
    at = next((at for at, word in enumerate(told) if word.plain in DENY and not word.is_large), len(told))
    return (fold(word.text) for word in told[at + 1 :] if word.is_large)


def _is_told_of(before: Item, item: Item, told: Sequence[Element]) -> bool:
    """Whether the words of an item, which tell that somebody is not seen, or took it, go on with the name before."""
    if not told or before.part != item.part or item.joined not in ("", "and") or told[0].plain in DENY | NOT_IN_IT:
        return False  # `Anna, not Ruth`
    of_another = is_my(told[0]) or told[0].plain in KIN_WORDS or (told[0].is_large and item.joined == "")
    return not of_another and any(word.plain in NOT_IN_IT or word.plain in TOOK for word in told)
