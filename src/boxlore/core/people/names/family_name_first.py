"""Names with the family name first: Hungarian, Chinese, Korean, Japanese, Vietnamese, and lists in that order.

Each tradition gets the tokens and says the parts, or None if the name is not its own.
"""

import re
from dataclasses import replace

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names.particles import Tokens, with_particle
from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import Token, written
from boxlore.core.people.names.words_table import TITLES


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
    is_family = any(part in lists.HUNGARIAN_FAMILY for part in first.plain.split("-"))  # `Szabó-Kiss`
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


def without_blanks(token: Token) -> NameParts | None:
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
    """`Kase Leena`, as country people and lists say it: a word that is no given name before one that is; it asks."""
    first, last = tokens[0], tokens[-1]
    if len(tokens) != 2 or first.is_given or first.is_initial or last.plain not in _SURELY_GIVEN:
        return None
    if first.is_small or first.plain in lists.GIVEN_ELSEWHERE or first.plain in TITLES:
        return None
    return replace(with_particle(tokens[1:], tokens[:1]), asks=f"Is “{first.text}” the family name?")


_BORNE_BY_FAMILIES = frozenset(
    "albert alexander allan allen ambrose andrew andrews anthony arnold arthur augustin austin baldwin barry "
    "benjamin bernard bruce byron charles christian clark clive craig daniel david dean dennis donald douglas "
    "duncan dylan edgar edmond edward elliott ellis ernest ernst evan evans francis frank franklin fraser "
    "frederick friedrich gabriel george gerald gilbert giles gordon graham grant gregory guy hans harold harris "
    "harry harvey henry herbert howard hugh humphrey isaac jack jacob jacobs james jan jansen jarvis jeremy "
    "jerome john jordan joseph keith kenneth konrad lambert lawrence lee leon leonard leslie lewis lloyd lorenz "
    "louis lucas ludwig luke malcolm mark martin matthew maurice max michael miles mitchell morgan morris murray "
    "neil nelson nicholas norman oliver oscar otto owen patrick paul paulus percy perry peter philip ralph "
    "randolph raymond reid rex reynold richard robert robin rodney roger roland ronald ross rowland roy russell "
    "ryan samuel scott sidney simon simonis spencer stanley stephen stewart stuart terry thomas tony trevor tyler "
    "urban vernon victor vincent walter warren wayne wesley william".split()
)
"""Given names of men that are family names as well, where only two names are told. From memory; no source."""

_SURELY_GIVEN = (lists.WOMEN_ALONE - EVERYDAY) | (lists.MEN_ALONE - lists.FAMILY_TOO - _BORNE_BY_FAMILIES)
"""`Huber Sepp`; no `Zilpah Thomas`."""
