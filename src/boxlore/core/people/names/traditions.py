"""The core of a name, given names and family names alone, taken apart by the tradition that knows its names.

Each tradition is one function: it gets the tokens and says the parts, or None if the name is not its own. They are
asked in the order of `TRADITIONS`; `european` comes last and takes every name. What is evidence for a tradition stands
in `lists_table` and in the endings of `words_table`.
"""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.given_names_table import GIVEN_OR_FAMILY
from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import Token, written

Tokens = Sequence[Token]


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
    of_a_man = tokens[0].plain in lists.MEN - lists.WOMEN and last not in ("maria", "marie")  # `Tom Rae`
    if last in lists.WOMEN - lists.MEN and not (either or of_a_man):
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

_GIVEN_OR_FAMILY = frozenset(GIVEN_OR_FAMILY.split()) | frozenset(
    "kay marion shirley leslie lesley tracy kerry hilary".split()
)


def _told_apart(tokens: Tokens, at: int) -> NameParts:
    """A name whose family name is known to begin at a token; what tradition it is of, the names still say."""
    parts = with_particle(tokens[:at], tokens[at:])
    if at > 1 and _is_patronymic(tokens[at - 1]):
        return replace(
            parts, given=written(tokens[: at - 1]), patronymic=tokens[at - 1].text, tradition=Tradition.SLAVIC
        )
    if at > 2 and marks_child(tokens[at - 1]):
        return replace(parts, given=written(tokens[: at - 2]), patronymic=written(tokens[at - 2 : at]))
    for tradition in (iberian, italian):
        if read := tradition(tokens):
            return replace(parts, tradition=read.tradition, particle=_particle(tokens[at:], read.tradition))
    return parts


def _alone(tokens: Tokens, known: KnownNames) -> NameParts:
    """One word: a given name, unless it is written in one of the scripts without blanks, or known as a family's."""
    if parts := _without_blanks(tokens[0]):
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


def with_particle(given: Tokens, family: Tokens, tradition: Tradition = Tradition.EUROPEAN) -> NameParts:
    """Given names and a family name, with the particles that go behind in a list."""
    return NameParts(
        given=written(given), family=written(family), particle=_particle(family, tradition), tradition=tradition
    )


def _particle(family: Tokens, tradition: Tradition) -> str:
    """The particles at the beginning of a family name under which it is not listed."""
    at = 0
    while (
        at < len(family) - 1
        and family[at].is_particle
        and (not _leads(family[at], tradition) or (at and tradition is Tradition.SPANISH))
    ):
        at += 1
    if at == 0 and family and (match := re.match(r"[dl]['’](?=[^\W\d_])", family[0].text)):
        return match[0]
    return written(family[:at])


def _leads(particle: Token, tradition: Tradition) -> bool:
    """Whether a name is listed under this particle."""
    if tradition in (Tradition.ITALIAN, Tradition.SPANISH, Tradition.PORTUGUESE):
        return tradition is Tradition.ITALIAN or particle.plain in ("la", "las", "los", "el")
    return particle.plain in words_of.UNDER_PARTICLE and particle.plain not in words_of.ITALIAN_ONLY - {"la", "le"}


# Names of one family name, given names first


def gaelic_epithet(tokens: Tokens) -> NameParts | None:
    """`Ruaraidh Mòr`: one name, and what he is called by."""
    is_so = len(tokens) == 2 and tokens[1].text in _EPITHETS
    return NameParts(given=tokens[0].text, nickname=tokens[1].text) if is_so else None


_EPITHETS = frozenset("Mòr Mór mòr mór Bàn Bán bàn bán Ruadh ruadh Dubh dubh Óg óg Òg òg Beag beag".split())
"""Big, fair, red, black, young, small, in Gaelic and Irish."""


def dutch_son(tokens: Tokens) -> NameParts | None:
    """`Pieter Jansz. de Wit`: a father's name that is shortened, before the family's or instead of it."""
    at = next((at for at, token in enumerate(tokens) if at and token.text.endswith(_SHORTENED_SON)), 0)
    if not at:
        return None
    parts = with_particle(tokens[:at], tokens[at + 1 :])
    return replace(parts, patronymic=tokens[at].text)


_SHORTENED_SON = ("sz.", "sdr.", "zn.", "szoon", "sdochter")
"""`-szoon` and `-sdochter`, in full and shortened."""


def european(tokens: Tokens) -> NameParts:
    """The last word is the family name, with the particles and bound words before it."""
    at = len(tokens) - 1
    while at > 1 and _is_bound(tokens[at - 1]):
        at -= 2 if tokens[at - 1].plain in ("y", "e", "i") and at > 2 else 1
    if at > 2 and tokens[at].plain in _OF_AN_ESTATE and tokens[at - 2].is_particle:
        at -= 2  # `Reinout van Oldeneel tot Zandwijk`
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
        token.plain in family_names or token.plain.endswith(endings) or not token.text.isascii() for token in names
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


# Names of a father


def _is_patronymic(token: Token) -> bool:
    ends_polish = token.text.lower().endswith("ówna")  # `Zającówna`: the daughter of a Zając, in Polish
    return token.plain.endswith(words_of.PATRONYMIC_ENDINGS) and not ends_polish


def slavic(tokens: Tokens) -> NameParts | None:
    """Russian and its neighbours: a father's name tells the order; without one, the endings of the family name do."""
    if len(tokens) == 3 and _is_patronymic(tokens[1]):
        return _slavic(tokens[0], tokens[1], tokens[2])
    if len(tokens) > 3 and _is_patronymic(tokens[1]) and all(token.is_particle for token in tokens[2:-1]):
        family = with_particle(tokens[:1], tokens[2:], Tradition.SLAVIC)  # `Nikolai Ivanovich von Essen`
        return replace(family, patronymic=tokens[1].text)
    if len(tokens) == 3 and _is_patronymic(tokens[2]) and not tokens[0].is_given:
        return _slavic(tokens[1], tokens[2], tokens[0])
    if len(tokens) != 2:
        return None
    first, last = tokens
    russian_given = first.plain in lists.RUSSIAN_GIVEN
    never_a_family = last.plain.endswith(("vna", "chna", "вна", "чна", "ьич", "ильич"))
    if _is_patronymic(last) and (russian_given or never_a_family or "а" <= first.plain[0] <= "я"):
        asks = "" if russian_given or never_a_family else f"Is “{last.text}” a father's name or a family name?"
        return NameParts(given=first.text, patronymic=last.text, tradition=Tradition.SLAVIC, asks=asks)
    if (
        last.plain in lists.RUSSIAN_GIVEN
        and not first.is_given
        and first.plain.endswith(words_of.SLAVIC_FAMILY_ENDINGS)
    ):
        return NameParts(given=last.text, family=first.text, tradition=Tradition.SLAVIC)
    if last.is_given and not first.is_given and first.plain.endswith(_ONLY_FAMILIES):
        return NameParts(given=last.text, family=first.text, tradition=Tradition.SLAVIC)
    return None


_ONLY_FAMILIES = ("ski", "ska", "cki", "cka", "dzki", "dzka", "sky", "skaya", "enko", "wicz", "owicz", "ский", "ская")
"""Endings that no given name has."""


def _slavic(given: Token, patronymic: Token, family: Token) -> NameParts:
    return NameParts(given=given.text, patronymic=patronymic.text, family=family.text, tradition=Tradition.SLAVIC)


def icelandic(tokens: Tokens) -> NameParts | None:
    """A given name, and the father's (or mother's) with -son or -dóttir."""
    last, first = tokens[-1], tokens[0]
    inside = tokens[-2].plain.endswith(("dottir", "sson", "arson")) and len(tokens) > 2
    if inside and first.plain in lists.ICELANDIC_GIVEN and not last.plain.endswith(("dottir", "son")):
        with_family = NameParts(given=written(tokens[:-2]), patronymic=tokens[-2].text, family=last.text)
        return replace(with_family, tradition=Tradition.ICELANDIC)
    daughter = last.plain.endswith("dottir")
    letters = any(letter in "ðþæöáéíóúý" for letter in " ".join(token.text.lower() for token in tokens))
    son = last.plain.endswith("son") and len(last.plain) > 5 and first.plain in lists.ICELANDIC_GIVEN
    only_there = any(letter in "þð" for letter in first.text.lower()) and last.plain.endswith(("sson", "arson", "ason"))
    son = only_there or (
        son and (letters or (last.plain.endswith(("sson", "arson", "ason", "uson")) and first.plain not in lists.GIVEN))
    )
    if not (daughter or son):
        return None
    return NameParts(given=written(tokens[:-1]), patronymic=last.text, tradition=Tradition.ICELANDIC)


def marks_child(token: Token) -> bool:
    """`p.` and `t.` of Estonian registers, behind the father's name: `Juhan Mardi p.`, Mart's son; so in Finnish and
    Latvian."""
    return token.text in ("p.", "t.", "poeg", "tütar", "poika", "tytär", "dēls", "meita", "sūnus", "dukra")


_NORTHERN_CHILD = ("poika", "tytar", "dotter", "datter")


def tells_father(tokens: Tokens) -> bool:
    """Whether all is a name in its genitive and a word for a child: `Mihkli poeg`, `Juhon poika`, not `Pitkä poika`."""
    if len(tokens) != 2 or not marks_child(tokens[1]) or tokens[0].is_small:
        return False
    return tokens[1].text not in ("poika", "tytär") or tokens[0].plain.endswith("n")


def northern(tokens: Tokens) -> NameParts | None:
    """The father's name inside, in registers and the North: `Mihkel Mardi p. Tamm`, `Matti Juhonpoika Rantala`."""
    marked = next((at for at in range(2, len(tokens)) if marks_child(tokens[at])), 0)
    inside = next((at for at in range(1, len(tokens) - 1) if tokens[at].plain.endswith(_NORTHERN_CHILD)), 0)
    last = tokens[-1].plain
    ends_so = len(tokens) > 1 and last.endswith(("poika", "tytar", "sdotter", "sdatter")) and last != "poika"
    if ends_so and not marked and tokens[0].is_given:  # `Maren Nielsdatter`
        return NameParts(given=written(tokens[:-1]), patronymic=tokens[-1].text)
    if not marked and not inside:
        return None
    begins, ends = (marked - 1, marked + 1) if marked else (inside, inside + 1)
    parts = with_particle(tokens[:begins], tokens[ends:])
    return replace(parts, patronymic=written(tokens[begins:ends]))


def ethiopian(tokens: Tokens) -> NameParts | None:
    """A given name, and the father's given name: nobody is listed by the second (AACR2 22.9B, from memory)."""
    joined = len(tokens) == 3 and tokens[1].plain in _OF_A_SAINT  # `Haile Gebre Mariam`
    if not 2 <= len(tokens) <= 3 or any(token.plain not in lists.ETHIOPIAN_GIVEN for token in tokens[: 3 - joined]):
        return None
    return NameParts(given=tokens[0].text, patronymic=written(tokens[1:]), tradition=Tradition.ETHIOPIAN)


_OF_A_SAINT = ("gebre", "wolde", "tekle", "haile", "welde", "fikre")
"""Ethiopian names that are one with the word behind them: servant of, son of."""


def _tells_father(token: Token) -> bool:
    large_too = len(token.plain) > 2 and token.plain not in _BOUND_IN_HEBREW
    return token.plain in words_of.FILIATION and (token.is_small or not token.text[:1].isupper() or large_too)


_BOUND_IN_HEBREW = ("ben", "bar", "bat")
"""Written large they are a part of a modern family name: `Ben Tovim`."""


_OF_THE_FAITH = ("-din", "-deen", "-dine", "-islam", "-haq", "-dawla", "-dawlah")
"""Ends of given names of two words: `Nur al-Din`."""


def arabic(tokens: Tokens) -> NameParts | None:
    """`Abu Ali Hasan ibn Khalid al-Masri`: a name of honour, given names, fathers' names, a family name."""
    plain = [token.plain for token in tokens]
    fathers = [at for at in range(1, len(tokens) - 1) if _tells_father(tokens[at])]
    article = [at for at in range(1, len(tokens)) if tokens[at].has_article and not plain[at].endswith(_OF_THE_FAITH)]
    article += [
        at for at in range(1, len(tokens) - 1) if plain[at] in ("al", "el") and plain[at - 1] not in words_of.FILIATION
    ]
    honour = 2 if plain[0] in words_of.KUNYA and len(tokens) > 2 else 0
    if honour and len(tokens) == 3 and not (tokens[2].is_given or tokens[2].has_article):
        asks = f"Is “{tokens[2].text}” the family name?"  # `Abu Bakr Haddad`
        return NameParts(given=written(tokens[:2]), family=tokens[2].text, tradition=Tradition.ARABIC, asks=asks)
    if plain[0] in words_of.KUNYA and len(tokens) == 2:
        return NameParts(nickname=written(tokens), tradition=Tradition.ARABIC)
    servant_at = next((at for at in range(1, len(tokens) - 1) if plain[at] in words_of.SERVANT), 0)
    if not (fathers or article or honour or plain[0] in words_of.SERVANT):
        if not servant_at:
            return None
        family_from = servant_at + 2 if len(tokens) > servant_at + 2 else servant_at  # `Omar Abdel Aziz`, `… Khan`
        return NameParts(
            given=written(tokens[:family_from]), family=written(tokens[family_from:]), tradition=Tradition.ARABIC
        )
    starts = min(fathers, default=len(tokens))
    family = [
        at for at in sorted(article) if at - 1 not in fathers and plain[at - 1] not in words_of.SERVANT and at >= honour
    ]
    family_at = family[-1] if family and family[-1] >= max(fathers, default=0) + (2 if fathers else 0) else len(tokens)
    given_end = min(starts, family_at)
    asks = ""
    if fathers and "/" in plain[fathers[0]]:  # `Ravi Iyer s/o K. Subramaniam`: all behind it is the father's
        own = european(tokens[:starts]) if starts > 1 else NameParts(given=written(tokens[:starts]))
        return replace(own, patronymic=written(tokens[starts:]))
    if fathers and family_at == len(tokens):
        begins = fathers[-1] + 1
        ends = begins + (2 if plain[begins] in (*words_of.SERVANT, *words_of.KUNYA) else 1)
        if ends < len(tokens) and not any(tokens[at].has_article for at in range(ends, len(tokens))):
            family_at, asks = ends, f"Is “{written(tokens[ends:])}” the family name?"
    if family_at == len(tokens) and not fathers and given_end - honour > 1:
        servant = plain[honour] in words_of.SERVANT
        given_end = honour + 2 if servant and len(tokens) > honour + 2 else given_end - (0 if servant else 1)
        family_at = given_end
    return NameParts(
        given=written(tokens[honour:given_end]),
        patronymic=written(tokens[starts:family_at]) if fathers else "",
        family=written(tokens[family_at:]),
        nickname=written(tokens[:honour]),
        tradition=Tradition.ARABIC,
        asks=asks,
    )


# Names of the Pacific


def maori(tokens: Tokens) -> NameParts | None:
    """`Te` belongs to the word behind it: `Kiri Te Kanawa`, `Te Puea Hērangi`."""
    plain = [token.plain for token in tokens]
    if len(tokens) > 3 and plain[-2] in ("ngai", "ngati") and not tokens[-2].is_small:
        people = written(tokens[-2:])
        asks = f"Is “{people}” the people, or a family name?"
        return replace(with_particle(tokens[:-3], tokens[-3:-2], Tradition.MAORI), belongs=people, asks=asks)
    if plain[0] in ("te", "nga") and not tokens[0].is_small:
        if len(tokens) == 2:
            return NameParts(given=written(tokens), tradition=Tradition.MAORI)
        asks = f"Is “{tokens[-1].text}” a family name?" if len(tokens) == 3 else ""
        return replace(with_particle(tokens[:-1], tokens[-1:], Tradition.MAORI), asks=asks)
    for at in range(1, len(tokens) - 1):
        if plain[at].rpartition("-")[2] == "te" and not tokens[at].is_small:
            return with_particle(tokens[:at], tokens[at:], Tradition.MAORI)
    return None


# Names with the family name first


def hungarian(tokens: Tokens) -> NameParts | None:
    """The family name first; a wife by her husband's name with -né."""
    first, last = tokens[0], tokens[-1]
    stem = last.plain.removesuffix("ne")
    if last.text.endswith("né") and stem in lists.HUNGARIAN_GIVEN:
        return NameParts(married_as=first.text, title=written(tokens[1:]), tradition=Tradition.HUNGARIAN)
    if first.text.endswith("né") and len(tokens) > 2 and last.plain in lists.HUNGARIAN_GIVEN:
        return NameParts(
            given=written(tokens[2:]), family=tokens[1].text, married_as=first.text, tradition=Tradition.HUNGARIAN
        )
    if len(tokens) == 4 and tokens[1].text.endswith("né") and last.plain in lists.HUNGARIAN_GIVEN:
        own = with_particle(tokens[3:], tokens[2:3], Tradition.HUNGARIAN)  # her own name stands behind her husband's
        return replace(own, married_as=first.text, title=tokens[1].text)
    behind = [token.plain in lists.HUNGARIAN_GIVEN for token in tokens[1:]]
    is_family = first.plain in lists.HUNGARIAN_FAMILY
    only_hungarian = last.plain in lists.HUNGARIAN_GIVEN and not last.is_given
    has_accent = not (first.text.isascii() and last.text.isascii())
    is_from_a_place = first.plain.endswith("i") and not first.is_given and has_accent
    if not all(behind) and is_family and behind[0] and last.is_given and not last.text.isascii():
        return with_particle(tokens[1:], tokens[:1], Tradition.HUNGARIAN)  # `Horváth Mária Terézia`
    if not all(behind) or not (is_family or only_hungarian or is_from_a_place):
        return None
    if is_from_a_place and not (is_family or only_hungarian):  # Szentirmai Zsófia: both are names elsewhere too
        order = with_particle(tokens[1:], tokens[:1], Tradition.HUNGARIAN)
        return replace(order, asks=f"Is “{first.text}” the family name?")
    if first.plain in lists.HUNGARIAN_GIVEN or first.is_given:
        if not (is_family or last.plain in lists.HUNGARIAN_FAMILY):
            return None
        at = len(tokens) - 1 if last.plain in lists.HUNGARIAN_FAMILY else 0
        given, family = (tokens[:at], tokens[at:]) if at else (tokens[1:], tokens[:1])
        return replace(with_particle(given, family, Tradition.HUNGARIAN), asks=f"Is “{first.text}” the family name?")
    return with_particle(tokens[1:], tokens[:1], Tradition.HUNGARIAN)


_HAN = re.compile(r"[\u3400-\u9fff々]+")
_KANA = re.compile(r"[\u3040-\u30ff]")
_HANGUL = re.compile(r"[\uac00-\ud7a3]+")


def _without_blanks(token: Token) -> NameParts | None:
    """A name in characters: the first is the family name, two in some Chinese names and in most Japanese ones."""
    text = token.text
    if _HANGUL.fullmatch(text) and 2 <= len(text) <= 4:
        return NameParts(family=text[:1], given=text[1:], tradition=Tradition.KOREAN)
    if _KANA.search(text) or not _HAN.fullmatch(text) or not 2 <= len(text) <= 5:
        return None
    at = 2 if text.startswith(lists.CHINESE_COMPOUND) else 1
    chinese = at == 2 or text[0] in lists.CHINESE_CHARACTERS
    if len(text) > at + 2 or not chinese:
        return NameParts(family=text[:2], given=text[2:], tradition=Tradition.JAPANESE) if len(text) > 2 else None
    return NameParts(family=text[:at], given=text[at:], tradition=Tradition.CHINESE)


def in_characters(tokens: Tokens) -> NameParts | None:
    """Han, kana or Hangul with a blank between: the family name first."""
    text = "".join(token.text for token in tokens)
    if not (_HAN.search(text) or _KANA.search(text) or _HANGUL.search(text)) or text[0].isascii():
        return None
    korean = bool(_HANGUL.search(text))
    japanese = bool(_KANA.search(text)) or len(tokens[0].text) > 1
    tradition = Tradition.KOREAN if korean else Tradition.JAPANESE if japanese else Tradition.CHINESE
    return with_particle(tokens[1:], tokens[:1], tradition)


_SYLLABLE = r"(?:(?:zh|ch|sh|ts|tz|hs|kw|gw|ng|[bpmfdtnlgkhjqxrzcsyw])?'?(?:[aeiou]{1,3})(?:ng|n|k|p|t|h|m)?|er|ng)"
_SYLLABLES = re.compile(rf"{_SYLLABLE}(?:[-']?{_SYLLABLE})?", re.ASCII)


_CANTONESE = re.compile(r"[kmshlw]ar|[skl]iew", re.ASCII)
"""Syllables of Cantonese with an `r` that is not spoken, and of Hokkien: evidence between two others only (`Wong Kar
Leung`)."""


_GIVEN_OF_TWO = re.compile(r"[A-Z][a-z]{1,5}-[a-z]{2,6}")
"""A given name of two syllables, of which the second is written small: `Yuet-ngor`."""


def _is_syllable(word: str, words: int) -> bool:
    return bool(_SYLLABLES.fullmatch(word) or (words > 2 and _CANTONESE.fullmatch(word)))


def chinese_or_korean(tokens: Tokens) -> NameParts | None:
    """Syllables alone, and a family name of the table at one end: first as told, or last as abroad."""
    plain = [token.plain for token in tokens]
    families = lists.CHINESE_FAMILY | lists.KOREAN_FAMILY
    if plain[-2:-1] == ["ah"] and len(tokens) < 4 and not tokens[-1].is_given:  # Cantonese: `Ah Moy`, `Chan Ah Moy`
        at = len(tokens) - 2
        if at == 0 or plain[0] in families:
            return with_particle(tokens[at:], tokens[:at], Tradition.CHINESE)
        if tokens[0].is_given:  # `Jenny Ah Chee`, of the families of settlers
            return with_particle(tokens[:at], tokens[at:], Tradition.CHINESE)
    if len(tokens) == 2 and plain[0] in families and _GIVEN_OF_TWO.fullmatch(tokens[1].text) and not tokens[0].is_given:
        korean = plain[0] in lists.KOREAN_FAMILY and _looks_korean(plain[1:])
        return with_particle(tokens[1:], tokens[:1], Tradition.KOREAN if korean else Tradition.CHINESE)
    if len(tokens) == 2 and plain[0] in lists.KOREAN_FAMILY and "-" in plain[1] and _looks_korean(plain[1:]):
        return with_particle(tokens[1:], tokens[:1], Tradition.KOREAN)  # `Lee Kyung-ja`
    abroad = len(tokens) == 3 and tokens[0].is_given and plain[1] in families and "-" in plain[2]
    if abroad and _is_syllable(plain[2], 3):  # `Mabel Wong Siu-ling`
        given = written((tokens[0], tokens[2]))
        return NameParts(given=given, family=tokens[1].text, tradition=Tradition.CHINESE)
    apart = len(tokens) == 4 and tokens[0].is_given and plain[1] in families
    if apart and all(_is_syllable(token.plain, 3) for token in tokens[2:]):
        given, family = written((tokens[0], *tokens[2:])), tokens[1].text  # `Peter Lee Kah Seng`
        return NameParts(
            given=given, family=family, tradition=Tradition.CHINESE, asks=f"Is “{family}” the family name?"
        )
    if not 2 <= len(tokens) <= 3 or any(not (word in families or _is_syllable(word, len(tokens))) for word in plain):
        return None
    if any(word in lists.GIVEN and word not in families for word in plain):
        if len(tokens) == 3 and plain[0] in families and not tokens[0].is_given and "-" not in plain[1]:
            asks = f"Is “{tokens[0].text}” the family name?"  # `Chan Mei Ling`
            return replace(with_particle(tokens[1:], tokens[:1], Tradition.CHINESE), asks=asks)
        return None
    first, last = plain[0] in families, plain[-1] in families
    korean = plain[0 if first else -1] in lists.KOREAN_FAMILY and _looks_korean(plain[1:] if first else plain[:-1])
    tradition = Tradition.KOREAN if korean else Tradition.CHINESE
    if first and not (last and len(tokens) == 2 and "-" not in plain[1] and len(plain[1]) > 2):
        return with_particle(tokens[1:], tokens[:1], tradition)
    if first:
        return replace(with_particle(tokens[1:], tokens[:1], tradition), asks=f"Is “{tokens[0].text}” the family name?")
    return with_particle(tokens[:-1], tokens[-1:], tradition) if last else None


def _looks_korean(words: list[str]) -> bool:
    syllables = [piece for word in words for piece in word.split("-")]
    return len(syllables) == 2 and all(piece in lists.KOREAN_SYLLABLES for piece in syllables)


def vietnamese(tokens: Tokens) -> NameParts | None:
    """The family name first, the middle name, and last the name by which one is called."""
    plain = [token.plain for token in tokens]
    if plain[0] not in lists.VIETNAMESE_FAMILY or any(len(word) > 7 or "-" in word for word in plain):
        return None
    marks = any(letter in _VIETNAMESE for letter in " ".join(token.text.lower() for token in tokens))
    marks = marks or (len(tokens) > 2 and sum(not token.text.isascii() for token in tokens) > 1)
    middle = len(tokens) > 2 and plain[1] in lists.VIETNAMESE_MIDDLE
    surely = middle and plain[0] == "nguyen"
    if not (marks or surely or (middle and not any(token.is_given for token in tokens[2:]))):
        return None
    return with_particle(tokens[1:], tokens[:1], Tradition.VIETNAMESE)


_VIETNAMESE = frozenset("ăđơưạảấầẩẫậắằẳẵặẹẻẽếềểễệỉĩịọỏốồổỗộớờởỡợụủũứừửữựỳỵỷỹ")

_MORAE = re.compile(
    r"(?:(?:ch|sh|ts|ky|gy|ny|hy|by|py|my|ry|tch|[kgsztdnhbpmyrwjf])?[aeiou]|n(?![aeiou])|[kstp](?=[kstpc]))+", re.ASCII
)


def japanese(tokens: Tokens) -> NameParts | None:
    """Two words of Japanese sounds, one of them in the tables: they say which is the family name."""
    if len(tokens) != 2 or any(_MORAE.fullmatch(token.plain.replace("-", "")) is None for token in tokens):
        return None
    first, last = tokens[0].plain, tokens[1].plain
    family_first = (first in lists.JAPANESE_FAMILY) + (last in lists.JAPANESE_GIVEN)
    given_first = (last in lists.JAPANESE_FAMILY) + (first in lists.JAPANESE_GIVEN)
    if family_first == given_first:
        return None
    single = family_first + given_first == 1
    if single and (tokens[0].is_given or tokens[1].is_given):
        return None
    if family_first > given_first:
        return with_particle(tokens[1:], tokens[:1], Tradition.JAPANESE)
    return with_particle(tokens[:1], tokens[1:], Tradition.JAPANESE)


def family_first(tokens: Tokens) -> NameParts | None:
    """`Kase Leena`, as country people and lists say it: a word that is no given name before a woman's; it asks."""
    first, last = tokens[0], tokens[-1]
    if len(tokens) != 2 or first.is_given or first.is_initial or last.plain not in lists.WOMEN - EVERYDAY:
        return None
    if last.plain in lists.MEN or first.is_small or any(first.plain in names for names in GIVEN_ELSEWHERE):
        return None
    return replace(with_particle(tokens[1:], tokens[:1]), asks=f"Is “{first.text}” the family name?")


GIVEN_ELSEWHERE = (lists.SPANISH_GIVEN, lists.PORTUGUESE_GIVEN, lists.ITALIAN_GIVEN, lists.ICELANDIC_GIVEN,
                    lists.HUNGARIAN_GIVEN, lists.RUSSIAN_GIVEN)  # fmt: skip


TRADITIONS: tuple[Callable[[Tokens], NameParts | None], ...] = (
    in_characters,
    dutch_son,
    gaelic_epithet,
    vietnamese,
    maori,
    slavic,
    icelandic,
    northern,
    ethiopian,
    arabic,
    hungarian,
    japanese,
    chinese_or_korean,
    iberian,
    italian,
    family_first,
)
