"""Whose kin a bare word of kin tells, behind somebody who was named: `Tom Pike and wife`, `Karl Schmidt mit Gattin`.

A bare word alone is the teller's own (`Mum`, `Grandpa`). Behind another's name it is

- that one's, where nobody calls her own kin so: a wife, a brother, a son. She is of this picture alone, as `his wife`;
- asked about, where both are usual: a parent by the plain word (`Tom and mother`), kin beside the teller's own (`Mum
  and brother`), a list without an `and` (`Tom, sister, Jack`);
- the teller's own, where it is what families call their own (`Tom and Mum`), and behind `my wife and`.

Common practice, from memory; no source.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.item_words import is_kin_of
from boxlore.core.people.who_is_where.kin_words import FOREBEARS, own_kin_in, own_relation, relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.tokens import Element, elements_of
from boxlore.core.statements import fold


def with_large_genitives(elements: Sequence[Element]) -> list[Element]:
    """The elements, a family name typed small between a given name and kin as a large one: `Ron pettit's wife`."""
    told = list(elements)
    for at in range(1, len(told) - 1):
        before, word, behind = told[at - 1 : at + 2]
        is_called = before.kind == "word" and before.is_large and token_of(before.text).is_given
        is_typed_small = word.kind == "word" and word.text.islower() and word.is_genitive and not relation(word)
        is_kin = bool(relation(behind)) or table.NOUNS.get(behind.plain) == "one"
        if is_called and is_typed_small and is_kin and not before.is_genitive:
            told[at] = replace(word, text=word.text.capitalize())
    return told


_CALLED_SO = (*FOREBEARS, "aunt", "uncle", "great-aunt", "great-uncle", "great-grandmother", "great-grandfather",
              "godmother", "godfather", "cousin")  # fmt: skip
"""Kin whom families call by the word."""

_PLAIN_PARENTS = frozenset(
    "mother father grandmother grandfather aunt uncle mutter vater mere pere madre padre moeder vader mor far мать "
    "отец матерью отцом matka otec ojciec motina tevas matkou otcem ojcem".split()
)
"""Words for parents that are said of anybody's; English ones where they are written small."""

_FOND = ("sis", "bro")
"""What families call their own, where the plain word is said of anybody's."""

_SPOUSES = ("wife", "husband", "fiancee")
_JOINS = ("and", "with", "too")


def mark_whose_kin(items: Sequence[Item]) -> None:
    """Mark whoever is told by a bare word of kin behind another: as nobody of the registry, or as asked about."""
    for at, item in enumerate(items):
        kin = _bare_kin(item)
        before = items[at - 1] if at and items[at - 1].part == item.part else None
        following = items[at + 1] if at + 1 < len(items) and items[at + 1].part == item.part else None
        if not kin:
            continue
        if before is None:
            _first(item, following)
        elif item.joined in _JOINS or item.is_beside or _heads_more_kin(item, following):
            _joined(item, kin, before, items)
        elif before.is_name and not (item.number or _own_beside(items, item)) and kin not in _CALLED_SO:
            _ask(item)


def _first(item: Item, following: Item | None) -> None:
    """`Wife and daughter of Tom Pike`."""
    if following is not None and following.joined and is_kin_of(elements_of(following.person.words)):
        item.person = replace(item.person, is_nameless=True)


def _joined(item: Item, kin: str, before: Item, items: Sequence[Item]) -> None:
    """Whose kin she is who is joined to another."""
    own = own_kin_in(before.person.note) or before.person.own or own_relation(before.person.words)
    is_mine = own == "self" or (own in _SPOUSES and not before.person.is_nameless) or _says_mine(before)
    if before.person.is_nameless and not own_kin_in(before.person.note):
        own = ""
    whose, *kin_of_whom = tokens_of(before.person.words) or (token_of(""),)
    if kin_of_whom and whose.plain in small_words.OF_ANOTHER and not own and not before.is_name:
        _of_this_picture(item, kin)  # `Tom and his mum and dad`
    elif own and own != "self" and kin in _SPOUSES:
        _of_this_picture(item, kin)  # `my sister and husband`
    elif own and is_mine and (own in _MINE_TOO or (kin not in _CHILDREN and item.joined != "with")):
        item.person = replace(item.person, own=kin)  # `my wife and son`
    elif own:
        if kin not in _CALLED_SO:
            _ask(item)  # `Mum and brother`, `my sister and son`, `moja mama z siostrą`
    elif kin not in _CALLED_SO:
        if _own_beside(items, item) and kin not in _SPOUSES:
            _ask(item)
        else:
            _of_this_picture(item, kin)
    elif _is_anybodys(item.person.words):
        _ask(item)
    elif not own_relation(item.person.words):
        _of_this_picture(item, kin)  # `Tom and mate`, of Latvian a mother


_CHILDREN = ("son", "daughter", "grandson", "granddaughter")
_MINE_TOO = ("self", "wife", "husband", "fiancee", *_CHILDREN)
"""Those of the teller's own whose children are the teller's too."""


def _says_mine(item: Item) -> bool:
    """`my wife`, `my wife Anna`."""
    words = [token.plain for token in tokens_of(item.person.words)]
    return bool(own_kin_in(item.person.note)) or not table.MY_OWN.isdisjoint((*words[:1], *words[-1:]))


def _of_this_picture(item: Item, kin: str) -> None:
    item.person = replace(item.person, is_nameless=True)
    item.definite = item.definite or small_words.SEX.get(kin, "person")


def _heads_more_kin(item: Item, following: Item | None) -> bool:
    """`Tom Pike, wife and son`, `Tom Pike, wife and children`."""
    goes_on = following is not None and following.joined == "and" and not item.number
    return following is not None and goes_on and (following.is_several or bool(_bare_kin(following)))


def _own_beside(items: Sequence[Item], item: Item) -> bool:
    """Whether the teller, or kin of the teller's who is surely so, is told beside her."""
    others = (other for other in items if other is not item and not (_bare_kin(other) and not _is_called(other)))
    return any(own_relation(other.person.words) for other in others)


def _is_called(item: Item) -> bool:
    return _bare_kin(item) in _CALLED_SO and not _is_anybodys(item.person.words)


def _is_anybodys(words: str) -> bool:
    is_small = words.islower() or fold(words) in ("mutter", "vater")
    return is_small and fold(words) in _PLAIN_PARENTS


def _bare_kin(item: Item) -> str:
    """The relation that one word alone tells; empty for any other words."""
    elements = [element for element in elements_of(item.person.words) if element.kind != "end"]
    is_one = len(elements) == 1 and item.person.is_person and elements[0].kind not in ("me", "my")
    is_one = is_one and elements[0].plain not in _FOND
    is_called = is_one and elements[0].is_large and token_of(elements[0].text).is_given
    return relation(elements[0]) if is_one and not is_called else ""


def _ask(item: Item) -> None:
    asks = f"Whose “{item.person.words}” is in the picture?"
    item.person = replace(item.person, asks=asks, is_person=False)
