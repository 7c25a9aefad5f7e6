"""Somebody named twice in one answer is one person, or is asked about: nobody stands twice in a picture.

Peg; in front of Peg, Dougal      ; the second Peg only says where Dougal stands: a note of his
Peg, Dougal, Peg                  ; may be two of one name: a question, and nobody is made of the second
Peg. No, Dot. Peg was away        ; the second Peg is taken back too
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from boxlore.core.people.names.tokens import Token, tokens_of, written
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.statements import fold


def _ask_of_first_name(item: Item, wholes: Mapping[str, tuple[Token, ...]]) -> None:
    """`Freda... what was her name... Freda Gant`: one name told short and whole may be one person."""
    tokens = tokens_of(item.person.words)
    if len(tokens) != 1 or not (item.is_name and item.person.is_person and tokens[0].is_given):
        return
    if whole := wholes.get(tokens[0].plain):
        asks = f"Is “{item.person.words}” {written(whole)}, or somebody else?"
        item.person, item.is_name = replace(item.person, asks=asks, is_person=False), False


def _teller_of(items: Sequence[Item]) -> Item | None:
    return next((item for item in items if own_relation(item.person.words) == "self"), None)


def _also_told(teller: Item, item: Item) -> None:
    """`Me with my brothers - I'm the one in the middle`: the teller is one, and stands where either tells."""
    for place in ("number", "position", "from_right", "right_words", "side", "side_words", "row"):
        setattr(teller, place, getattr(teller, place) or getattr(item, place))
    note = ", ".join(filter(None, (teller.person.note, item.person.note)))
    teller.person = replace(teller.person, note=note)


def _own_told_before(kept: Sequence[Item], item: Item) -> Item | None:
    """`Clockwise from Dad: Dad, Ken`: a parent of the teller is one."""
    own = own_relation(item.person.words) if not (item.is_name or item.beside_whom) else ""
    told = (other for other in kept if other.person.words == item.person.words)
    return next(told, None) if own in ("mother", "father") else None


def told_once(items: Sequence[Item]) -> list[Item]:
    """The items, with nobody made of a name that was told before."""
    kept: list[Item] = []
    told: set[str] = set()
    taken_back = {fold(item.person.words) for item in items if item.is_taken_back}
    note = ""
    names = (tokens_of(item.person.words) for item in reversed(items) if item.is_name)
    wholes = {name[0].plain: name for name in names if len(name) > 1}
    for item in items:
        if (teller := _teller_of(kept)) and _teller_of([item]):
            if item.beside_whom:
                note = f"{item.beside_whom} {item.person.words}"  # `bredvid mig står Majken`
            else:
                _also_told(teller, item)
            continue
        _ask_of_first_name(item, wholes)
        person = item.person
        if note:
            person = replace(person, note=", ".join(filter(None, (note, person.note))))
            item.person, item.joined, item.is_beside, note = person, "", True, ""
        if own := _own_told_before(kept, item):
            _also_told(own, item)
            continue
        name = fold(person.words) if (item.is_name or item.beside_whom) and person.is_person else ""
        if name in told and item.beside_whom:
            note = f"{item.beside_whom} {person.words}"
            continue
        if name in taken_back:
            item.take_back()
        if name in told:
            asks = f"Is “{person.words}” who was named before, or somebody else?"
            item.person, item.is_name = replace(person, asks=asks, is_person=False), False
        told |= ({fold(person.words)} if person.is_person else set()) - {""}
        kept.append(item)
    return kept
