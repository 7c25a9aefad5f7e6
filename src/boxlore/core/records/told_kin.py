"""Who is meant by a word of kin in a phrase: “the winter Mum died”, “my brother’s 21st”, by the tree of who tells."""

import itertools
import re
from collections.abc import Container, Mapping

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.dates.lexicon import ANY_LANGUAGE
from boxlore.core.people.kin import Kin
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_where.kin_cases import plain_forms
from boxlore.core.people.who_is_where.kin_words import may_be_own, own_relation
from boxlore.core.statements import fold

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
            relation = _relation(phrase)
            if relation and relation != "self" and phrase.casefold() not in joining:
                if ids := _related(people, narrator, relation):
                    told[phrase.casefold()] = ids
                at += count - 1
                if named := _of_that_name(people, ids, parted[at + 1 : at + 2]):  # “Granddad Juhan”
                    told[f"{phrase} {parted[at + 1]}".casefold()] = named
                break
        at += 1
    return told


def kin_likely(
    words: str, people: Mapping[str, Person], narrator: str, told: Container[str]
) -> dict[str, tuple[str, ...]]:
    """Words of kin in a phrase, of which the tree of who tells has nobody (they are not `told`) → the ids of whoever
    may be meant: who is called by such a word (`Grandfather James`, `Oma`), who is so told of somebody (`Ruth’s
    grandmother`), and where nobody is known to tell, whose child has one."""
    likely: dict[str, tuple[str, ...]] = {}
    joining = _joining(words)
    parted = _WORD.findall(words)
    for phrase in (*parted, *(" ".join(pair) for pair in itertools.pairwise(parted))):
        folded = phrase.casefold()
        name = may_be_own(phrase)  # `Nan`
        relation = "" if folded in joining or folded in told else name or _relation(phrase)
        if relation in _OF_ALL:
            ids = [ident for ident, person in people.items() if _is_called_by(person.name, relation)]
            if narrator not in people:
                ids += _elders(people, relation)
            elif name:
                ids += _related(people, narrator, relation)
            if ids := list(dict.fromkeys(ids)):
                likely[folded] = tuple(ids)
    return {phrase: ids for phrase, ids in likely.items() if len(ids) <= _MOST_LIKELY}


_OF_ALL = ("mother", "father", "grandmother", "grandfather", "great-grandmother", "great-grandfather", "aunt", "uncle")
"""Kin that families call by a word for it."""
_MOST_LIKELY = 4


def _is_called_by(name: str, relation: str) -> bool:
    """`Grandfather James`, `Oma`, `Ruth’s grandmother`."""
    parted = name.split()
    return _described(name)[1] == relation or (len(parted) <= _KIN_AND_NAME and _relation(parted[0]) == relation)


_KIN_AND_NAME = 2
_DESCRIBED = re.compile(r"(.+)['’]s ([\w-]+)")


def _described(name: str) -> tuple[str, str]:
    """Whose kin a person is by the name of it, and which: `Ruth’s grandmother`; empty for another name."""
    match = _DESCRIBED.fullmatch(name)
    return (match[1], own_relation(match[2])) if match else ("", "")


def _elders(people: Mapping[str, Person], relation: str) -> list[str]:
    """The mothers, the grandfathers … of all who have one; nobody for other kin."""
    if not relation.endswith(("mother", "father")):
        return []
    parents = {ident: [parent for parent in person.parents if parent in people] for ident, person in people.items()}
    above = relation.count("grand") + relation.count("great")
    ids = [parent for ident in people for parent in parents[ident]]
    for _ in range(above):
        ids = [parent for ident in ids for parent in parents[ident]]
    women = {mother for person in people.values() for mother in person.mothers}
    women |= {ident for ident, person in people.items() if person.sex.startswith(_FEMALE)}
    is_mother = relation.endswith("mother")
    return [ident for ident in dict.fromkeys(ids) if (ident in women) == is_mother]


_FEMALE = ("f", "w")


def _relation(phrase: str) -> str:
    """The relation that words tell, also in another case (`babičce`, `meie emal`)."""
    *before, word = phrase.split()
    if relation := own_relation(phrase):
        return relation
    plain = plain_forms().get(fold(word), "")
    return own_relation(" ".join((*before, plain))) if plain else ""


def names_behind_kin(words: str, names: Container[str]) -> dict[str, str]:
    """Known names behind a word of kin (`Aunt Mabel`, `Oma Trui`) → the name, where nobody knows whose kin it is."""
    beside = [pair for pair in itertools.pairwise(_WORD.findall(words)) if pair[1].casefold() in names]
    joining = _joining(words) if beside else set()
    return {
        f"{kin} {name}".casefold(): name.casefold()
        for kin, name in beside
        if kin.casefold() not in joining and _relation(kin) not in ("", "self")
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
    by_tree = [ident for ident, kinship in between if kinship and _term(kinship.term) == relation]
    teller = _names(people[narrator])
    told = (ident for ident, person in people.items() if _is_of_teller(person, teller, relation))
    return tuple(dict.fromkeys((*by_tree, *told)))


def _is_of_teller(person: Person, teller: Container[str], relation: str) -> bool:
    """`Ruth’s grandmother`, where Ruth tells."""
    whose, told = _described(person.name)
    return told == relation and whose.casefold() in teller


def _term(term: str) -> str:
    return "cousin" if term == "first cousin" else term.removeprefix("half-")
