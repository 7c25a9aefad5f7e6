"""Names with the father's name among them: Russian and its neighbours, the North, Ethiopia, Arabic.

Each tradition gets the tokens and says the parts, or None if the name is not its own.
"""

from dataclasses import replace

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.family_name_last import european
from boxlore.core.people.names.particles import Tokens, with_particle
from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.tokens import Token, written


def is_patronymic(token: Token) -> bool:
    ends_polish = token.text.lower().endswith("ówna")  # `Zającówna`: the daughter of a Zając, in Polish
    return token.plain.endswith(words_of.PATRONYMIC_ENDINGS) and not ends_polish


def slavic(tokens: Tokens) -> NameParts | None:
    """Russian and its neighbours: a father's name tells the order; without one, the endings of the family name do."""
    if len(tokens) == 3 and is_patronymic(tokens[1]):
        return _slavic(tokens[0], tokens[1], tokens[2])
    if len(tokens) > 3 and is_patronymic(tokens[1]) and all(token.is_particle for token in tokens[2:-1]):
        family = with_particle(tokens[:1], tokens[2:], Tradition.SLAVIC)  # `Nikolai Ivanovich von Essen`
        return replace(family, patronymic=tokens[1].text)
    if len(tokens) == 3 and is_patronymic(tokens[2]) and not tokens[0].is_given:
        return _slavic(tokens[1], tokens[2], tokens[0])
    if len(tokens) != 2:
        return None
    first, last = tokens
    russian_given = first.plain in lists.RUSSIAN_GIVEN
    never_a_family = last.plain.endswith(("vna", "wna", "chna", "owitsch", "ewitsch", "вна", "чна", "ьич", "ильич"))
    if is_patronymic(last) and (russian_given or never_a_family or "а" <= first.plain[0] <= "я"):
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
    """`p.` and `t.` of Estonian registers, behind the father's name: `Juhan Mardi p.`, Mart's son; so in Finnish,
    Latvian, Lithuanian and Azerbaijani (`Heydər Əli oğlu Məmmədov`)."""
    return token.text in ("p.", "t.", "poeg", "tütar", "poika", "tytär", "dēls", "meita", "sūnus", "dukra",
                          "oğlu", "qızı", "kızı", "oglu", "ogly", "qizi", "kyzy", "оглы", "кызы")  # fmt: skip


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
        return _with_a_farm(tokens)
    begins, ends = (marked - 1, marked + 1) if marked else (inside, inside + 1)
    names_family = ends == len(tokens) and begins > 1 and not tokens[begins - 1].is_given  # `Heydər Əliyev Əlirza oğlu`
    parts = european(tokens[:begins]) if names_family else with_particle(tokens[:begins], tokens[ends:])
    return replace(parts, patronymic=written(tokens[begins:ends]))


def _with_a_farm(tokens: Tokens) -> NameParts | None:
    """`Ole Olsen Nordgård`: a father's name between one of the North and the family's, which often was a farm's."""
    if len(tokens) < _FARM or tokens[0].plain not in lists.NORTHERN_GIVEN or tokens[-1].plain.endswith(_SONS):
        return None
    father = tokens[-2]
    if not father.plain.endswith(_SONS) or father.is_small or tokens[-1].is_small:
        return None
    return replace(with_particle(tokens[:-2], tokens[-1:]), patronymic=father.text)


_SONS = ("sen", "son")
_FARM = 3


def balinese(tokens: Tokens) -> NameParts | None:
    """`Ni Wayan Sukerti`: whether a man or a woman, the how-manieth child, and a name of one's own; no family name."""
    if len(tokens) < 2 or tokens[0].text not in ("Ni", "I") or tokens[1].plain not in lists.BALINESE_ORDER:
        return None
    return NameParts(given=written(tokens))


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
