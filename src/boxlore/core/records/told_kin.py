"""Who is meant by a word of kin in a phrase: “the winter Mum died”, “my brother’s 21st”, by the tree of who tells."""

import itertools
import re
from collections.abc import Container, Mapping

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.dates.lexicon import ANY_LANGUAGE
from boxlore.core.people.kin import Kin
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_where.kin_words import own_relation

_WORD = re.compile(r"[^\W\d_]+(?:-[^\W\d_]+)*")
_NEAR = 3
"""So many links away are those of whom a family has a word."""

_WHEN = frozenset(("when",))
_JOINING = frozenset(("when", "was", "i", "possessive"))
"""Kinds of words that hold a phrase together: one of them is kin in another language (`kui`, Estonian and Māori)."""


def kin_told(words: str, people: Mapping[str, Person], narrator: str) -> dict[str, tuple[str, ...]]:
    """The words of kin in a phrase (`mum`, `my brother`) → the ids of whoever they may mean, alone or with their name
    behind; without the narrator, or where the tree has nobody, there are none."""
    if narrator not in people:
        return {}
    told: dict[str, tuple[str, ...]] = {}
    parted = _WORD.findall(words)
    joining = _joining(words)
    at = 0
    while at < len(parted):
        for count in (2, 1):
            phrase = " ".join(parted[at : at + count])
            relation = own_relation(phrase)
            if relation and relation != "self" and phrase.casefold() not in joining:
                if ids := _related(people, narrator, relation):
                    told[phrase.casefold()] = ids
                at += count - 1
                if named := _of_that_name(people, ids, parted[at + 1 : at + 2]):  # “Granddad Juhan”
                    told[f"{phrase} {parted[at + 1]}".casefold()] = named
                break
        at += 1
    return told


def names_behind_kin(words: str, names: Container[str]) -> dict[str, str]:
    """Known names behind a word of kin (`Aunt Mabel`, `Oma Trui`) → the name, where nobody knows whose kin it is."""
    beside = [pair for pair in itertools.pairwise(_WORD.findall(words)) if pair[1].casefold() in names]
    joining = _joining(words) if beside else set()
    return {
        f"{kin} {name}".casefold(): name.casefold()
        for kin, name in beside
        if kin.casefold() not in joining and own_relation(kin) not in ("", "self")
    }


def _of_that_name(people: Mapping[str, Person], ids: tuple[str, ...], behind: list[str]) -> tuple[str, ...]:
    """Who of these kin has the name that stands behind the word; another uncle Peter may be in no tree."""
    return tuple(ident for ident in ids if behind and behind[0].casefold() in _names(people[ident]))


def _names(person: Person) -> set[str]:
    """The names of somebody, and the first word of each."""
    names = {name.casefold() for name in (person.name, *person.forms, *person.calls)}
    return names | {name.split()[0] for name in names if name}


def _joining(words: str) -> set[str]:
    """The words that hold the phrase together in a language of which it has another word too, and those of “when” that
    are not written as a name within it."""
    text = nfc(words)
    tokens = lex(text)
    joining = set()
    for token in tokens:
        told = text[token.start : token.end]
        if token.is_any(_WHEN) and (token is tokens[0] or told[0].islower()):  # “kui Juhan suri”
            joining.add(told.casefold())
        ways = [sense.languages for sense in token.senses if sense.kind in _JOINING]
        beside = [sense.languages for near in tokens if near is not token for sense in near.senses]
        if any(way & languages for way in ways for languages in beside if languages != ANY_LANGUAGE):
            joining.add(told.casefold())
    return joining


def _related(people: Mapping[str, Person], narrator: str, relation: str) -> tuple[str, ...]:
    kin = Kin(people)
    reached, edge = {narrator}, {narrator}
    for _ in range(_NEAR):
        edge = {relative for ident in edge for relative in kin.near(ident)} - reached
        reached |= edge
    between = ((ident, kin.between(narrator, ident)) for ident in sorted(reached - {narrator}))
    return tuple(ident for ident, kinship in between if kinship and _term(kinship.term) == relation)


def _term(term: str) -> str:
    return "cousin" if term == "first cousin" else term.removeprefix("half-")
