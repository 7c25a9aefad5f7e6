"""Somebody told without a name: `the minister`, `his wife`, `a neighbour` are people of one picture alone.

In another picture the same words may mean somebody else, so that nobody of the registry is made of them or looked up by
them. What holds in every picture is kept: the teller's own (`my mother`), a family's word that stands for a name
(`Ma`), and kin of somebody named of whom there is one (`Ruth's mother`; but not `Ruth's cousin`).
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.who_is_where.item_words import is_his_kin, is_kin_of, is_noun_of_one, is_of_somebody
from boxlore.core.people.who_is_where.kin_words import may_be_own, own_relation, relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.people.who_is_where.small_words_table import ARTICLES
from boxlore.core.people.who_is_where.tokens import Element, elements_of
from boxlore.core.statements import fold

_ONE_ALONE = ("mother", "father", "wife", "husband")
"""Kin of whom somebody has one."""


def mark_nameless(items: Sequence[Item]) -> None:
    """Mark whoever is told without a name."""
    for item in items:
        person = item.person
        if person.words and person.is_person and not item.is_name and _is_nameless(person.words):
            item.person = replace(person, is_nameless=True)


def mark_parents(items: Sequence[Item]) -> None:
    """Mark `Ma`, which alone is a family name and `I` of Estonian too, and `Pa`, where they stand beside each other."""
    for pair in pairwise(items):
        told = {item.person.words: item for item in pair}
        for words in _OWN.keys() & told.keys() if told.keys() in _PARENTS else ():
            told[words].person = replace(told[words].person, own=_OWN[words])


def ask_of_kin_or_names(items: Sequence[Item], known: KnownNames) -> None:
    """Ask of `Nan`, which alone is a name too, unless the family has that name or a remark tells whose kin she is;
    beside other kin of the teller she is the teller's own (`Nan and Grandad`), and `Pop` beside her a grandfather."""
    doubted = [item for item in items if may_be_own(item.person.words) and not known.is_given(fold(item.person.words))]
    doubted = [item for item in doubted if not any(map(relation, elements_of(item.person.note)))]
    beside_kin = len(doubted) > 1 or any(own_relation(item.person.words) for item in items)
    told = [may_be_own(item.person.words) or own_relation(item.person.words) for item in items]
    for item in doubted:
        words = item.person.words
        if beside_kin:
            own = may_be_own(words)
            item.person = replace(item.person, own="grandfather" if own == "father" and "grandmother" in told else own)
        else:
            item.person = replace(item.person, asks=f"Who is meant by “{words}”?", is_person=False)


_OWN = {"Ma": "mother", "Pa": "father", "Da": "father"}
_PARENTS = ({"Ma", "Pa"}, {"Ma", "Da"}, {"Ma", "Dad"})


def _is_nameless(told: str) -> bool:
    if all(token.plain in ARTICLES or NOUNS.get(token.plain) == "one" for token in tokens_of(told)) and " " in told:
        return True  # `Eine Frau`, where `Frau` is a title too
    if is_noun_of_one(told) and not (token_of(told).is_given or relation(elements_of(told)[0])):
        return True  # `Bride and groom`
    elements = [element for element in elements_of(told) if element.kind != "end"]
    if is_his_kin(elements):
        return True
    if is_kin_of(elements) and not (own_relation(told) or _is_one_alone(elements)):
        return True  # `oncle de Pierre`, `Sohn vom Bäcker`
    parts = read_name(told)
    is_name = any((parts.given, parts.family, parts.nickname, parts.religious, parts.born_as, parts.married_as))
    if own_relation(told) or is_name or (parts and " " not in told):
        return False
    return not _is_one_alone(elements)


def _is_one_alone(words: Sequence[Element]) -> bool:
    """`Ruth's mother`, `la mère de Paul`."""
    kin = next((word for word in words if relation(word)), words[0]) if is_kin_of(words) else words[-1]
    is_somebodys = is_kin_of(words) or (is_of_somebody(words) and words[0].is_large)
    return is_somebodys and relation(kin) in _ONE_ALONE
