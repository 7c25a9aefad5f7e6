"""The core of a name, given names and family names alone, taken apart by the tradition that knows its names.

Each tradition is one function: it gets the tokens and says the parts, or None if the name is not its own. They are
asked in the order of `TRADITIONS`; `european` comes last and takes every name. What is evidence for a tradition stands
in `lists_table` and in the endings of `words_table`. They stand by where the family name is told: `family_name_last`,
`family_name_first`, `fathers_names`.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names.family_name_first import (
    chinese_or_korean,
    family_first,
    hungarian,
    in_characters,
    japanese,
    vietnamese,
    without_blanks,
)
from boxlore.core.people.names.family_name_last import dutch_son, european, gaelic_epithet, iberian, italian
from boxlore.core.people.names.fathers_names import (
    arabic,
    balinese,
    ethiopian,
    icelandic,
    is_patronymic,
    marks_child,
    northern,
    slavic,
)
from boxlore.core.people.names.particles import Tokens, particle_of, with_particle
from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import written


@dataclass(frozen=True, slots=True)
class KnownNames:
    """The given and family names, folded, that people of the registry have for certain."""

    given: frozenset[str] = frozenset()
    family: frozenset[str] = frozenset()

    def is_given(self, plain: str) -> bool:
        return plain in self.given

    def is_family(self, plain: str) -> bool:
        return plain in self.family


def read_core(tokens: Tokens, known: KnownNames, family_from: int = 0) -> NameParts:
    """The parts of a core. `family_from`: where a comma told the family name to begin (0 where none did)."""
    if family_from:
        return _told_apart(tokens, family_from)
    if len(tokens) == 1:
        return _alone(tokens, known)
    if (by_capitals := _by_capitals(tokens)) or (by_capitals := _by_known(tokens, known)):
        return by_capitals
    for tradition in TRADITIONS:
        if parts := tradition(tokens):
            return parts
    return _given_alone(tokens, known) or european(tokens)


def _given_alone(tokens: Tokens, known: KnownNames) -> NameParts | None:
    """`Mary Ann`, `Anna Liisa`: given names of women alone. Those of men are family names too (`Elsie James`): of them
    it is asked, behind a name that others are joined to (`Hans Peter`)."""
    last = tokens[-1].plain
    if not all(token.is_given for token in tokens) or known.is_family(last):
        return None
    if last in lists.SHORTENED_GIVEN and tokens[-1].text.endswith("."):
        return NameParts(given=written(tokens))  # `John Wm.`
    either = last in EVERYDAY or last in _GIVEN_OR_FAMILY
    of_a_man = tokens[0].plain in lists.MEN_ALONE and last not in ("maria", "marie")  # `Tom Rae`
    if last in lists.WOMEN_ALONE and not (either or of_a_man):
        return NameParts(given=written(tokens))
    if either or tokens[0].plain not in _JOINED_TO or not all(token.plain in lists.MEN for token in tokens):
        return None
    asks = f"Is “{tokens[-1].text}” a given name or a family name?"
    return replace(with_particle(tokens[:-1], tokens[-1:]), asks=asks)


_JOINED_TO = frozenset(
    "hans karl carl jean johann jan per lars sven nils claus ernst franz friedrich georg gian pier juan jose luis "
    "miguel joao jon".split()
)
"""Given names of men that another one is often joined to."""

_GIVEN_OR_FAMILY = lists.FAMILY_TOO | frozenset("kay marion shirley leslie lesley tracy kerry hilary".split())


def _told_apart(tokens: Tokens, at: int) -> NameParts:
    """A name whose family name is known to begin at a token; what tradition it is of, the names still say."""
    parts = with_particle(tokens[:at], tokens[at:])
    if at > 1 and is_patronymic(tokens[at - 1]):
        return replace(
            parts, given=written(tokens[: at - 1]), patronymic=tokens[at - 1].text, tradition=Tradition.SLAVIC
        )
    if at > 2 and marks_child(tokens[at - 1]):
        return replace(parts, given=written(tokens[: at - 2]), patronymic=written(tokens[at - 2 : at]))
    for tradition in (iberian, italian):
        if read := tradition(tokens):
            return replace(parts, tradition=read.tradition, particle=particle_of(tokens[at:], read.tradition))
    return parts


def _alone(tokens: Tokens, known: KnownNames) -> NameParts:
    """One word: a given name, unless it is written in one of the scripts without blanks, or known as a family's."""
    if parts := without_blanks(tokens[0]):
        return parts
    plain = tokens[0].plain
    if known.is_family(plain) and not known.is_given(plain) and not tokens[0].is_given:
        return with_particle((), tokens)
    if plain.endswith("dottir"):
        return NameParts(patronymic=tokens[0].text, tradition=Tradition.ICELANDIC)
    return NameParts(given=written(tokens))


def _by_capitals(tokens: Tokens) -> NameParts | None:
    """`Pippa MARLOWE`, `MARLOWE Pippa`: the part in capitals is the family name."""
    large = [at for at, token in enumerate(tokens) if token.is_capitals]
    if not large or len(large) == len(tokens):
        return None
    start, end = large[0], large[-1] + 1
    while start and tokens[start - 1].is_particle:
        start -= 1
    if end == len(tokens):
        return with_particle(tokens[:start], tokens[start:])
    return with_particle(tokens[end:], tokens[:end]) if start == 0 else None


def _by_known(tokens: Tokens, known: KnownNames) -> NameParts | None:
    """The family's own names decide the order, where they say it of exactly one end of the name."""
    first, last = tokens[0].plain, tokens[-1].plain
    if known.is_family(first) and not known.is_given(first) and known.is_given(last) and not known.is_family(last):
        return with_particle(tokens[1:], tokens[:1])
    return None


_TE_AND_NAME = 2
_LONGEST_PEOPLE = 4


def maori(tokens: Tokens) -> NameParts | None:
    """`Te` belongs to the word behind it: `Kiri Te Kanawa`, `Te Puea Hērangi`."""
    plain = [token.plain for token in tokens]
    if len(tokens) > 3 and plain[-2] in ("ngai", "ngati") and not tokens[-2].is_small:
        people = written(tokens[-2:])
        asks = f"Is “{people}” the people, or a family name?"
        return replace(with_particle(tokens[:-3], tokens[-3:-2], Tradition.MAORI), belongs=people, asks=asks)
    if plain[0] in ("ngai", "ngati") and not tokens[0].is_small and len(tokens) < _LONGEST_PEOPLE:
        return NameParts(belongs=written(tokens), tradition=Tradition.MAORI)
    if plain[0] in ("te", "nga") and not tokens[0].is_small:
        if len(tokens) == 2:
            return NameParts(given=written(tokens), tradition=Tradition.MAORI)
        last = 2 if len(tokens) > _TE_AND_NAME + 1 and plain[-2] == "te" else 1  # `Te Ruki Te Hau`
        asks = f"Is “{written(tokens[-last:])}” a family name?" if len(tokens) == 3 or last > 1 else ""
        return replace(with_particle(tokens[:-last], tokens[-last:], Tradition.MAORI), asks=asks)
    for at in range(1, len(tokens) - 1):
        if plain[at].rpartition("-")[2] == "te" and not tokens[at].is_small:
            return with_particle(tokens[:at], tokens[at:], Tradition.MAORI)
    return None


TRADITIONS: tuple[Callable[[Tokens], NameParts | None], ...] = (
    in_characters,
    dutch_son,
    gaelic_epithet,
    vietnamese,
    maori,
    slavic,
    icelandic,
    northern,
    balinese,
    ethiopian,
    arabic,
    hungarian,
    japanese,
    chinese_or_korean,
    iberian,
    italian,
    family_first,
)
