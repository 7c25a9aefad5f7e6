"""Somebody told by what they are, and then by name, is one person: `Reg's mother, Olive`.

Told once everything is read, for only then is it seen that no list goes on. The words that say who it is are a note of
the name if all of this holds:

- They say it of one person, and surely: `the`, `my` or somebody's, before a word of kin or of a kind of people.
- They open their part, or stand behind `and` or `with`; the name stands behind a comma and ends the part. (In `my
  mother, Olive and Sid` the comma may part three people. Where an `and` behind a comma follows, it is asked.)
- Or the name has a side of its own, and they stand before it without one: then it is asked (`My father, Al Orr, far
  left, …`).
- The given name is not one of the other sex, and not both have a place.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import groupby

from boxlore.core.people.names.fathers_names import is_patronymic
from boxlore.core.people.names.lists_table import MEN_ALONE, WOMEN_ALONE
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import tokens_of
from boxlore.core.people.names.words_table import KIN_WORDS, TITLES
from boxlore.core.people.who_is_where.item_words import is_noun_of_one
from boxlore.core.people.who_is_where.kin_words import FOREBEARS, own_relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.people.who_is_where.small_words_table import OF, SEX, THE
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold


def joined_to_names(items: Sequence[Item]) -> list[Item]:
    """The items, those that are one person as one."""
    for item in items:
        _name_in_brackets(item)
    items = [one for item in items for one in _named_in_brackets(item)]
    parts = [list(part) for _, part in groupby(items, lambda item: item.part)]
    return [item for part in parts for item in _of_part(part, alone=len(parts) == 1)]


def _name_in_brackets(item: Item) -> None:
    """`the baby (Jean)`: somebody described, and the name in brackets behind that."""
    described, name = item.person.words, item.person.note
    is_bare = not item.is_name and item.person.is_person and (item.is_described or item.definite != "")
    in_doubt = name.endswith("?") and len(name) > 1  # `mężem (Tadek?)`
    name = name.removesuffix("?")
    tokens = tokens_of(name) if is_bare and own_relation(described) not in FOREBEARS else ()
    if not tokens or any(token.is_small for token in tokens) or name.endswith(("'s", "s'")):
        return
    parts = read_name(name)
    called = bool(parts.title and parts.family) or (tokens[0].is_given and not parts.kin)
    if called and not parts.asks and _fit(item, replace(item, person=Placed(name, 0))):
        unsure = item.person.unsure or in_doubt
        item.person, item.is_name = replace(item.person, words=name, note=described, unsure=unsure), True
        item.person, item.in_case = replace(item.person, is_nameless=False), False
        item.is_described, item.definite = False, ""


def _named_in_brackets(item: Item) -> Iterator[Item]:
    """The two or more of `the twins (Pat & Pam)`, each at the place of the group; the item for any other words."""
    names = _APART.split(item.person.note)
    given = all(len(tokens := tokens_of(name)) == 1 and tokens[0].is_given for name in names)
    if not item.is_several or len(names) < _TWO or not given:
        yield item
        return
    for at, name in enumerate(names):
        person = Placed(name, 0, note=item.person.words)
        joined = item.joined if at == 0 else "and" if at == len(names) - 1 else ""
        yield replace(item, person=person, is_name=True, is_several=False, joined=joined, width=1, is_described=False)


_TWO = 2
_APART = re.compile(r" & |, | (?:and|und|et|y|e|ja|en|og|och|и|i|un|ir|a) ")


def _of_part(part: list[Item], *, alone: bool) -> Iterator[Item]:
    for size in (4, 3):
        if (pair := _pair(part[:size])) and (len(part) <= size or part[size].joined in ("with", "too")):
            yield from (*pair, *part[size:])
            return
    if len(part) == 2 and _says_who_is_unknown(part):
        yield replace(part[0], person=replace(part[1].person, note=_all(part[1].person.note, part[0].person.note)))
        return
    if names := _members(part):
        yield from names
        return
    if _may_be_own_and_name(part):
        own, named = part
        asks = f"Is “{named.person.words}” {own.person.words}, or somebody else?"
        named.person, named.is_name = replace(named.person, asks=asks, is_person=False), False
    if len(part) > 3 and all(_is_apposition_of_two(part, at) for at in (0, 2)):
        yield from (_one(part[0], part[1]), _one(part[2], part[3]), *part[4:])
        return
    if turned := _turned(part, alone=alone):
        yield turned
        return
    at = 0
    while at < len(part):
        if len(part) > at + 1 and _is_apposition(part, at):
            more = len(part) > at + 2 and part[at + 2].joined != "with" and not part[at + 2].number
            goes_on = more or (at > 0 and part[at].side != "")
            yield _one(part[at], part[at + 1], asks=goes_on)
            at += 2
        elif len(part) > at + 1 and _says_what(part, at):
            named, said = part[at : at + 2]
            yield replace(_one(said, named), joined=named.joined)
            at += 2
        else:
            if at and _may_say_what(part[at - 1], part[at]):
                asks = f"Is “{part[at].person.words}” {part[at - 1].person.words}, or somebody else?"
                part[at].person = replace(part[at].person, asks=asks, is_person=False)
            yield part[at]
            at += 1


def _may_be_own_and_name(part: Sequence[Item]) -> bool:
    """`Mum, Hilda Tamm`, `Oma - Helene Kask`, told alone: a word that families call their own by, and a whole name."""
    if len(part) != _TWO or part[1].joined or not part[1].is_name:
        return False
    own = own_relation(part[0].person.words)
    name = read_name(part[1].person.words)
    is_whole = bool(name.given and name.family) and not (name.kin or name.title)
    placed = any(item.row or item.side or item.number or item.position or item.person.note for item in part)
    called = replace(part[0], definite=SEX.get(own, ""))
    return own in FOREBEARS and " " not in part[0].person.words and is_whole and not placed and _fit(called, part[1])


def _says_who_is_unknown(part: Sequence[Item]) -> bool:
    """`Right: don't know, a friend of Olive's`: of one of whom no name is known it is told what she is."""
    unknown, said = part
    first = next((token.plain for token in tokens_of(said.person.words)), "")
    is_unknown = not unknown.person.words and not unknown.person.note and unknown.person.is_person
    return is_unknown and first in _ONE and said.person.is_person and not (said.is_name or said.joined or said.side)


_ONE = frozenset("a an ein eine un une una um uma een en et uks".split())


def _all(*notes: str) -> str:
    return ", ".join(filter(None, notes))


def _pair(part: Sequence[Item]) -> Sequence[Item]:
    """The two of `the bride and groom, Anna and Joe` and of `bride and groom Anna and Joe`; nobody for other words."""
    describe = [not item.is_name and (item.is_described or item.definite != "") for item in part]
    if part and fold(part[0].person.words) in KIN_WORDS and not part[0].is_name:
        describe[0] = True  # `Father and son Joe and Tom Pell`
    joined = [item.joined for item in part]
    names = [item for item in part if item.is_name]
    if describe == [True, True, False, False] and len(names) == 2 and joined[1:] == ["and", "", "and"]:
        return [_one(part[0], names[0]), _one(part[1], names[1])] if _fit(part[0], names[0]) else ()
    if describe == [True, False, False] and len(names) == 2 and joined[1:] == ["and", "and"]:
        first, second = names
        if first.person.note and (is_noun_of_one(first.person.note) or fold(first.person.note) in KIN_WORDS):
            role = first.person.note
            first.person = replace(first.person, note="")
            second.person = replace(second.person, note=", ".join(filter(None, (role, second.person.note))))
            return [_one(part[0], first), second]
    return ()


def _is_apposition(part: Sequence[Item], at: int) -> bool:
    described, named = part[at], part[at + 1]
    has_side = described.side != "" and named.side == ""  # `between them the vicar, Mr Hume`
    counted = described.number > 0 and not named.number and all(item.number for item in part[at + 2 : at + 3])
    opens = at == 0 or described.joined != "" or described.is_beside or has_side or counted  # `4) the vicar, Mr Hume`
    ends = counted or len(part) == at + 2 or (len(part) == at + 3 and part[at + 2].joined == "too")
    ends = ends or (len(part) > at + 2 and part[at + 2].joined == "with")
    ends = ends or (len(part) == at + 3 and named.row not in ("", part[at + 2].row))  # `…, stands behind Anna`
    placed = at == 0 and named.side != "" and not (described.side or described.row)  # `My father, Al Orr, far left, …`
    ends = ends or placed
    is_one = bool(described.definite) or (described.is_described and named.person.unsure)  # `a baby, probably Colin`
    elsewhere = described.from_right > 0 and named.row not in ("", described.row)  # `second from the right, behind him`
    is_one = is_one and not (named.is_beside or elsewhere)  # `My father is second, next to him his brother Karl`
    return opens and ends and is_one and named.is_name and not named.joined and _fit(described, named)


def _is_apposition_of_two(part: Sequence[Item], at: int) -> bool:
    """One of the two of `the bride, Anna Tamm, and groom, Joe Rusk`: each of them is told and then named."""
    described, named = part[at], part[at + 1]
    told = not described.is_name and (described.is_described or bool(described.definite))
    goes_on = len(part) == at + 2 or part[at + 2].joined != ""
    return told and named.is_name and not named.joined and goes_on and _fit(described, named)


def _members(part: list[Item]) -> list[Item]:
    """Those of `his brothers, Len, Ron and Syd`, where they end the part; nobody for all else."""
    at = next((at for at, item in enumerate(part) if item.is_several), len(part))
    names = part[at + 1 :]
    if not names:
        return []
    fits = len(names) > 1 and not names[0].joined and all(item.is_name and not item.person.note for item in names)
    first_only = at == 0 or part[at].joined != ""
    if not (fits and first_only) or any(item.joined for item in names[1:-1]) or names[-1].joined != "and":
        return []
    first = replace(names[0], person=replace(names[0].person, note=part[at].person.words), joined=part[at].joined)
    return [*part[:at], first, *names[1:], *part[at + 1 + len(names) :]]


def _says_what(part: Sequence[Item], at: int) -> bool:
    """`Stan, the postman`: a name, and behind a comma what he is, which ends the part."""
    named, said = part[at : at + 2]
    ends = len(part) == at + 2 or (len(part) == at + 3 and part[at + 2].joined == "too")
    counted = named.number > 0 and not said.number  # `3 Mr. Innes, the manager 4 …`
    first = next((token.plain for token in tokens_of(said.person.words)), "")
    is_bare = is_noun_of_one(said.person.words) and said.person.words.islower()  # `Miss Tuttle, teacher`
    is_office = _is_office(said)
    is_remark = not said.joined and ((said.definite and first in THE) or is_bare or is_office)
    may_say = counted or (ends and at == 0) or is_office
    return bool(may_say and is_remark and named.is_name and not said.is_beside and _fit(said, named))


def _is_office(said: Item) -> bool:
    """`captain of the Reval`: a small word of a kind of people or a title, and of what."""
    tokens = tokens_of(said.person.words)
    if len(tokens) <= _TWO or said.is_name or not said.person.is_person:
        return False
    is_of = tokens[1].plain in OF and tokens[1].is_small
    is_one = tokens[0].is_small and (NOUNS.get(tokens[0].plain) == "one" or tokens[0].plain in TITLES)
    return is_of and is_one


def _may_say_what(named: Item, said: Item) -> bool:
    """`Mlle Picard, l'institutrice` within a list: what she is, or another one."""
    first = next((token.plain for token in tokens_of(said.person.words)), "")
    is_role = said.definite != "" and first.split("'")[0] in ("l", *THE) and not said.joined and said.person.is_person
    titled = named.is_name and tokens_of(named.person.words)[0].plain in TITLES
    return is_role and titled and not said.is_beside and _fit(said, named)


_LONGEST_FAMILY = 2
"""Words of a family name that stands before a comma."""


def _turned(part: Sequence[Item], *, alone: bool) -> Item | None:
    """`Skerrit, Edna May`, `Crosbie, Jane, née Watt`, `tamm, anna` told alone: one person as in a list, or two; it
    asks. None for all else."""
    if len(part) != 2 or part[1].joined or not part[1].is_name or part[0].person.note:
        return None
    in_small_letters = part[0].person.words.isalpha() and (part[0].person.words + part[1].person.words).islower()
    if not (part[0].is_name or in_small_letters):
        return None
    family = tokens_of(part[0].person.words)
    name, _, _ = part[1].person.words.replace("(", ",").partition(",")
    given = tokens_of(name)
    if any(token.is_given or token.plain in KIN_WORDS for token in family) or len(family) > _LONGEST_FAMILY:
        return None
    is_fathers = len(given) > 1 and is_patronymic(given[-1])  # `Sokolova, Anna Petrovna`
    tells_more = len(given) > 1 or name != part[1].person.words  # else `Álvaro, Fernanda` of a row
    if not (tells_more or (alone and _is_plain_list(part))):
        return None
    if not given or not all(token.is_given for token in given[: len(given) - is_fathers]):
        return None
    words = f"{part[0].person.words}, {part[1].person.words}"
    asks = f"Is “{words}” one person, {name.strip()} {part[0].person.words}?"
    person = replace(part[0].person, words=words, note=part[1].person.note, asks=asks, is_person=False)
    return replace(part[0], person=person, is_name=False)


def _is_plain_list(part: Sequence[Item]) -> bool:
    """Whether two words alone are told, and of neither where: `Petrova, Maria`."""
    told = [item.person.words for item in part]
    is_somewhere = any(item.row or item.side or item.number or item.position or item.person.note for item in part)
    return not is_somewhere and all(words.replace("'", "").replace("’", "").isalpha() for words in told)


def _fit(described: Item, named: Item) -> bool:
    """Whether the name may be of the one described: no other sex, no other place."""
    given = {token.plain for token in tokens_of(named.person.words)}
    told = own_relation(described.person.words)
    called = {KIN_WORDS.get(token.plain, told) for token in tokens_of(named.person.words)[:1] if not token.is_given}
    if told and called - {told}:
        return False  # `il nonno, lo zio Mario`
    other_sex = {"woman": MEN_ALONE, "man": WOMEN_ALONE}.get(described.definite, frozenset())
    places = [(item.number, item.position, item.from_right, item.side) for item in (described, named)]
    fits = (0, 0, 0, "") in places or (places[0] == places[1] and described.side != "")  # `Centre: the bride, Joan`
    return not given & other_sex and fits and described.row in ("", named.row)


def _one(described: Item, named: Item, *, asks: bool = False) -> Item:
    """The name, noted as who it is, at the place that was told of either."""
    words = described.person.words
    note = ", ".join(filter(None, (words, described.person.note, named.person.note)))
    question = f"Is “{named.person.words}” {words}, or someone else?" if asks else named.person.asks
    has_place = described.number or described.position or described.from_right or described.side
    placed = described if has_place else named
    person = replace(named.person, note=note, asks=question)
    return replace(placed, person=person, row=named.row or described.row, joined=described.joined, is_name=True)
