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
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.item_words import between, is_family, is_plural_of_kin
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.tokens import Element


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


def family_of_several(words: Sequence[Element]) -> str:
    """`Pell` of `the Pells`, `all the Pells`; an empty text for any other words."""
    bare = words[1:] if len(words) == 3 and words[0].plain in small_words.EVERYONE else words
    if len(bare) != 2 or bare[0].plain != "the" or not (bare[1].is_large and bare[1].plain.endswith("s")):
        return ""
    hisses = bare[1].plain.endswith(("shes", "ches", "xes", "sses", "zes"))
    return bare[1].text[: -2 if hisses else -1] if table.NOUNS.get(bare[1].plain) is None else ""


def group_and_name(words: Sequence[Element], text: str) -> tuple[str, str, str]:
    """`the Tamm brothers`, `Tamm` and `Juhan` of `the Tamm brothers Juhan`; empty texts for any other words."""
    at = 1 if words[0].plain in small_words.ARTICLES | small_words.EVERYONE and len(words) > 2 else 0
    at += len(words) > at + 2 and words[at].plain in small_words.CARDINALS
    heads = table.NOUNS.get(words[at].plain) == "many" or is_plural_of_kin(words[at])
    if heads and len(words) == at + 2 and words[-1].is_large and not token_of(words[-1].text).is_given:
        return between(words, text), words[-1].text, ""  # `Die Geschwister Brandt`
    small = [n for n, word in enumerate(words) if n > at and not word.is_large]
    ends = [n for n in small if table.NOUNS.get(words[n].plain) == "many" and words[n].text not in small_words.NO_NOUNS]
    if len(ends) != 1 or is_family(words[ends[0]]) or not all(word.is_large for word in words[at : ends[0]]):
        return "", "", ""
    if words[at].plain in small_words.EVERYONE or words[at].plain in small_words.CARDINALS:
        return "", "", ""  # `Both boys`, `Four girls`
    behind = words[ends[0] + 1 :]
    if behind and not all(word.is_large for word in behind):
        return "", "", ""
    family = between(words[at : ends[0]], text)
    return between(words[: ends[0] + 1], text), family, between(behind, text)
