"""Somebody named twice in one answer is one person, or is asked about: nobody stands twice in a picture.

Peg; in front of Peg, Dougal      ; the second Peg only says where Dougal stands: a note of his
Peg, Dougal, Peg                  ; may be two of one name: a question, and nobody is made of the second
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.order import Item
from boxlore.core.statements import fold


def told_once(items: Sequence[Item]) -> list[Item]:
    """The items, with nobody made of a name that was told before."""
    kept: list[Item] = []
    told: set[str] = set()
    note = ""
    for item in items:
        person = item.person
        if note:
            person = replace(person, note=", ".join(filter(None, (note, person.note))))
            item.person, item.joined, item.is_beside, note = person, "", True, ""
        name = fold(person.words) if item.is_name and person.is_person else ""
        if name in told and item.beside_whom:
            note = f"{item.beside_whom} {person.words}"
            continue
        if name in told:
            asks = f"Is “{person.words}” who was named before, or somebody else?"
            item.person, item.is_name = replace(person, asks=asks, is_person=False), False
        told |= {name} - {""}
        kept.append(item)
    return kept
