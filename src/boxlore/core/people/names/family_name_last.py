"""Names with the family name last: one of them, with its particles, or two as in Spanish and Portuguese.

`european` takes every name; the other traditions say None of a name that is not their own.
"""

from dataclasses import replace

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.particles import Tokens, with_particle
from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.tokens import Token, token_of, written


def gaelic_epithet(tokens: Tokens) -> NameParts | None:
    """`Ruaraidh Mòr`: one name, and what he is called by."""
    is_so = len(tokens) == 2 and tokens[1].text in _EPITHETS
    return NameParts(given=tokens[0].text, nickname=tokens[1].text) if is_so else None


_EPITHETS = frozenset("Mòr Mór mòr mór Bàn Bán bàn bán Ruadh ruadh Dubh dubh Óg óg Òg òg Beag beag".split())
"""Big, fair, red, black, young, small, in Gaelic and Irish."""


def dutch_son(tokens: Tokens) -> NameParts | None:
    """`Pieter Jansz. de Wit`: a father's name that is shortened, before the family's or instead of it."""
    at = next((at for at, token in enumerate(tokens) if at and token.text.endswith(_FATHERS_NAME)), 0)
    if not at:
        return None
    parts = with_particle(tokens[:at], tokens[at + 1 :])
    return replace(parts, patronymic=tokens[at].text)


_FATHERS_NAME = (*words_of.SHORTENED_SON, "zn.", "sdr", "szoon", "sdochter")
"""`-szoon` and `-sdochter`, in full and shortened."""


def european(tokens: Tokens) -> NameParts:
    """The last word is the family name, with the particles and bound words before it."""
    at = len(tokens) - 1
    while at > 1 and _is_bound(tokens[at - 1]):
        at -= 2 if tokens[at - 1].plain in ("y", "e", "i") and at > 2 else 1
    goes_on = tokens[at].plain in _OF_AN_ESTATE or tokens[at].plain.startswith("d'")
    if at > 2 and goes_on and tokens[at - 2].is_particle:
        at -= 2  # `Reinout van Oldeneel tot Zandwijk`, `Claire de la Tour d'Auvergne`
        while at > 1 and tokens[at - 1].is_particle:
            at -= 1
    if tokens[at].plain == "af" and tokens[at].is_small and tokens[at - 1].plain.endswith(_NORTHERN_HOUSES):
        at -= 1  # a house and its estate: `Axel Oxenstierna af Södermöre`
    if at == 1 and (tokens[0].is_particle or _begins_a_family(tokens[0])):
        at = 0
    return with_particle(tokens[:at], tokens[at:])


_OF_AN_ESTATE = ("tot", "zu", "zum", "zur", "till")

_NORTHERN_HOUSES = (
    "stierna", "stjerna", "hielm", "hjelm", "crona", "krona", "skold", "skiold", "svard", "hufvud", "haupt", "creutz",
    "felt", "feldt", "borg", "strom", "meister", "streng", "sparre", "fleming", "horn", "posse", "bielke", "wrede",
    "taube", "morner", "cronstedt", "douglas", "hamilton", "gyldenlove", "krone", "trolle",
)  # fmt: skip
"""How names of Swedish and Danish noble houses end, which no given name does."""


def _begins_a_family(token: Token) -> bool:
    """`O Brien`, `St John` after a title; but `O.` is an initial."""
    return token.plain.split(" ")[0] in _FAMILY_ALONE and (not token.is_initial or "." not in token.text)


def _is_bound(token: Token) -> bool:
    """Whether the word belongs to the family name behind it. `O.` is an initial, `Ó` is bound."""
    if token.is_initial and not token.is_particle:
        return token.text == "Ó"
    return token.is_particle or token.plain.split(" ")[0] in words_of.BOUND or token.text.endswith(_JOINED_PARTICLES)


_JOINED_PARTICLES = ("-de", "-van", "-von", "-te", "-ten", "-ter", "-del", "-di")
"""Particles of a second family name behind a hyphen: `van den Berg-de Jong`."""

_FAMILY_ALONE = frozenset(("o", "ni", "nic", "mac", "mc", "fitz", "san", "saint", "st"))
"""Bound words with which a family name alone begins."""


def italian(tokens: Tokens) -> NameParts | None:
    """Particles lead in Italian; an Italian given name tells it. A father's name may stand behind (`di Antonio`)."""
    fathers = len(tokens) > 3 and tokens[-2].text == "di" and tokens[-1].plain in lists.ITALIAN_GIVEN
    if fathers and tokens[0].plain in lists.ITALIAN_GIVEN and not tokens[-3].is_given:
        asks = f"Is “{tokens[-1].text}” the father's name?"
        own = with_particle(tokens[:-3], tokens[-3:-2], Tradition.ITALIAN)
        return replace(own, patronymic=written(tokens[-2:]), asks=asks)
    if (
        len(tokens) > 2
        and (tokens[0].plain in lists.ITALIAN_GIVEN or tokens[-2].plain in words_of.ITALIAN_FOR_CERTAIN)
        and tokens[-2].plain in words_of.ITALIAN_ONLY | {"de"}
    ):
        at = len(tokens) - 1
        while at > 1 and tokens[at - 1].plain in words_of.ITALIAN_ONLY | {"de"}:
            at -= 1
        return with_particle(tokens[:at], tokens[at:], Tradition.ITALIAN)
    return None


# Names of two family names


def iberian(tokens: Tokens) -> NameParts | None:
    """Spanish and Portuguese: as many given names as are known ones; all the rest is the family's."""
    if any(token.plain in words_of.ITALIAN_FOR_CERTAIN for token in tokens[1:]):
        return None  # `Maria Teresa dalla Costa`
    if len(tokens) > 2 and words_of.is_one_family_name(tokens[-2].text, tokens[-1].text):
        tokens = (*tokens[:-2], token_of(f"{tokens[-2].text} {tokens[-1].text}"))
    spanish = _iberian(tokens, lists.SPANISH_GIVEN, lists.SPANISH_FAMILY, ("ez", "es", "iz"))
    portuguese = _iberian(tokens, lists.PORTUGUESE_GIVEN, lists.PORTUGUESE_FAMILY, ("es", "ao", "eira", "eiro"))
    if portuguese and (not spanish or _is_portuguese(tokens)):
        given, family = portuguese
        return with_particle(tokens[:given], family, Tradition.PORTUGUESE)
    if spanish:
        given, family = spanish
        return with_particle(tokens[:given], family, Tradition.SPANISH)
    return _two_family_names(tokens) or _family_name_of_two(tokens) or _of_the_place(tokens)


def _of_the_place(tokens: Tokens) -> NameParts | None:
    """`Pedro de la Fuente`: a Spanish given name, and an article behind `de`, which both go behind in a list."""
    given = tokens[0].plain
    if [token.plain for token in tokens[1:-1]] not in (["de", "la"], ["de", "las"], ["de", "los"], ["del"]):
        return None
    is_spanish = given in lists.SPANISH_GIVEN and (given.endswith("o") or given not in lists.GIVEN)
    return with_particle(tokens[:1], tokens[1:], Tradition.SPANISH) if is_spanish else None


def _two_family_names(tokens: Tokens) -> NameParts | None:
    """Given names of the peninsula before two words that are none: both are the family's.

    Where the given names are those of other lands too (`Carmen`), the sound of both words must say so, and it asks.
    """
    at = 0
    while at < len(tokens) and tokens[at].plain in IBERIAN_GIVEN:
        at += 1
    if not at and len(tokens) == 3 and any(token.plain in lists.SPANISH_FAMILY for token in tokens[1:]):
        at = 0 if tokens[0].is_given else 1
    at += _devotion(tokens[at:]) if at else 0
    names = [token for token in tokens[at:] if not token.is_particle]
    if (
        not at
        or len(names) != 2
        or names[0].plain in words_of.PARTICLES
        or any(token.is_given or token.is_initial or token.is_small for token in names)
    ):
        return None
    told = [token for token in tokens[:at] if token.plain in IBERIAN_GIVEN]
    certain = any(token.plain not in lists.GIVEN or not token.text.isascii() for token in told)
    told_by_name = tokens[0].plain not in IBERIAN_GIVEN
    if not (certain or told_by_name or all(token.plain.endswith(_IBERIAN_SOUNDS) for token in names)):
        return None
    spanish = not any(token.plain in lists.PORTUGUESE_GIVEN - lists.SPANISH_GIVEN for token in tokens[:at])
    parts = with_particle(tokens[:at], tokens[at:], Tradition.SPANISH if spanish else Tradition.PORTUGUESE)
    return parts if certain else replace(parts, asks=f"Are “{written(names)}” two family names?")


def _family_name_of_two(tokens: Tokens) -> NameParts | None:
    """`Vidal de Romero`: a wife's own family name and her husband's, if the first is no given name that is known."""
    names = [token.plain for token in tokens if not token.is_particle]
    own, husbands = lists.SPANISH_FAMILY - IBERIAN_GIVEN - lists.GIVEN, lists.SPANISH_FAMILY
    is_both = len(names) == 2 and len(tokens) > 2 and tokens[1].plain == "de" and names[0] in own
    if not is_both or names[1] not in husbands:
        return None
    asks = f"Is “{tokens[0].text}” a given name or a family name?"
    return replace(with_particle((), tokens, Tradition.SPANISH), asks=asks)


IBERIAN_GIVEN = lists.SPANISH_GIVEN | lists.PORTUGUESE_GIVEN
_IBERIAN_SOUNDS = ("a", "o", "i", "z")


def _iberian(tokens: Tokens, given_names: frozenset[str], family_names: frozenset[str], endings: tuple[str, ...]) -> (
    tuple[int, Tokens] | None
):  # fmt: skip
    """How many tokens are given names, and the rest, if enough of the rest looks like family names of the table."""
    at = 0
    while at < len(tokens) - 1 and (tokens[at].plain in given_names or tokens[at].is_initial):
        at += 1
        at += _devotion(tokens[at:])
    joined = tokens[at].plain in ("y", "e", "i") and tokens[at].is_small
    if at > 1 and (joined or (len(tokens) - at == 1 and tokens[at - 1].plain in family_names & _ALSO_FAMILY)):
        at -= 1
    while at > 1 and tokens[at - 1].is_particle:
        at -= 1  # `José Luis de la Cruz y Peña`
    family = tokens[max(at, 1) :]
    names = [token for token in family if not token.is_particle]
    looks = [
        token.plain in family_names or token.plain.endswith(endings) or not token.text.isascii() or " " in token.text
        for token in names
    ]
    joined = any(token.text in ("y", "e") for token in family[1:-1])  # `Ruiz de la Fuente y Olmedo`
    enough = joined or sum(looks) * 2 >= len(looks) if at else sum(looks) > 1 and all(looks)
    return (max(at, 1), family) if any(looks) and enough else None


_ALSO_FAMILY = frozenset("martin vicente alonso lorenzo pascual simon duarte lourenco cruz reis".split())
_DEVOTIONS = frozenset(
    "conceicao carmo dores fatima lourdes ceu rosario graca luz carmen pilar angeles mercedes dolores rosario nieves "
    "socorro paz consuelo cruz lurdes assuncao piedade amparo jesus".split()
)


def _devotion(tokens: Tokens) -> int:
    """How many tokens `da Conceição`, `de los Ángeles` take behind a given name, if a family name is still to come."""
    at = 0
    while at < len(tokens) and tokens[at].is_particle:
        at += 1
    return at + 1 if 0 < at < len(tokens) - 1 and tokens[at].plain in _DEVOTIONS else 0


def _is_portuguese(tokens: Tokens) -> bool:
    told = " ".join(token.text for token in tokens).lower()
    particles = {token.plain for token in tokens if token.is_particle}
    names = [token.plain for token in tokens]
    only = sum(name in lists.PORTUGUESE_FAMILY | lists.PORTUGUESE_GIVEN for name in names)
    also = sum(name in lists.SPANISH_FAMILY | lists.SPANISH_GIVEN for name in names)
    return (
        bool({"da", "do", "dos", "das", "e"} & particles)
        or any(mark in told for mark in ("ã", "õ", "ç", "lh", "nh"))
        or only > also
    )
