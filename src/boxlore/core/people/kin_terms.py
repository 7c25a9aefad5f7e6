"""Terms of kinship: for a woman, a man, or someone of whom it is not told; for a degree of blood.

The terms are those of the HL7 Version 3 RoleCode system, PersonalRelationshipRoleType, where it has one; cousins'
degree and removal: common practice.
"""

from collections.abc import Mapping, Sequence

from boxlore.core.wording.catalogue import ENGLISH, Say, to_say

_GENDERED: Mapping[str, tuple[str, str, str]] = {
    "parent": ("mother", "father", "parent"),
    "child": ("daughter", "son", "child"),
    "sibling": ("sister", "brother", "brother or sister"),
    "aunt": ("aunt", "uncle", "aunt or uncle"),
    "niece": ("niece", "nephew", "niece or nephew"),
    "spouse": ("wife", "husband", "spouse"),
}


ORDINALS = ("", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_TIMES = ("", "once", "twice", "three times", "four times", "five times", "six times", "seven times", "eight times")


def gendered(word: str, sex: str) -> str:
    """The word for a woman, a man, or someone of whom it is not told."""
    woman, man, either = _GENDERED[word]
    return {"f": woman, "m": man}.get(sex[:1].lower(), either)


def is_told(sex: str) -> bool:
    return sex[:1].lower() in ("f", "m") and bool(sex)


def blood_term(up: int, down: int, sex: str, *, half: bool = False) -> str:
    """The term for someone `up` generations to the common ancestor and `down` from there."""
    if down == 0:
        return _lineal("parent", up, sex)
    if up == 0:
        return _lineal("child", down, sex)
    before = "half-" if half else ""
    if up == down == 1:
        return f"{before}{gendered('sibling', sex)}" if is_told(sex) or not half else "half-brother or half-sister"
    if down == 1:
        return f"{before}{_greats(up - 2)}{gendered('aunt', sex)}"
    if up == 1:
        return f"{before}{_greats(down - 2)}{gendered('niece', sex)}"
    degree, removed = min(up, down) - 1, abs(up - down)
    name = ORDINALS[degree] if degree < len(ORDINALS) else f"{degree}th"
    times = f" {_TIMES[removed] if removed < len(_TIMES) else f'{removed} times'} removed" if removed else ""
    return f"{'half ' if half else ''}{name} cousin{times}"


def _greats(count: int) -> str:
    return "great-" * count


def _lineal(word: str, generations: int, sex: str) -> str:
    plain = gendered(word, sex)
    return plain if generations == 1 else f"{_greats(generations - 2)}grand{plain}"


SAID_IN_LANGUAGES = (
    to_say("mother"), to_say("father"), to_say("parent"), to_say("daughter"), to_say("son"), to_say("child"),
    to_say("sister"), to_say("brother"), to_say("brother or sister"), to_say("aunt"), to_say("uncle"),
    to_say("aunt or uncle"), to_say("niece"), to_say("nephew"), to_say("niece or nephew"), to_say("wife"),
    to_say("husband"), to_say("spouse"), to_say("grandmother"), to_say("grandfather"), to_say("grandparent"),
    to_say("granddaughter"), to_say("grandson"), to_say("grandchild"), to_say("great-grandmother"),
    to_say("great-grandfather"), to_say("great-grandparent"), to_say("great-granddaughter"),
    to_say("great-grandson"), to_say("great-grandchild"), to_say("great-great-grandmother"),
    to_say("great-great-grandfather"), to_say("great-great-grandparent"), to_say("great-aunt"),
    to_say("great-uncle"), to_say("great-aunt or uncle"), to_say("great-niece"), to_say("great-nephew"),
    to_say("great-niece or nephew"), to_say("half-sister"), to_say("half-brother"),
    to_say("half-brother or half-sister"), to_say("cousin"), to_say("second cousin"), to_say("mother-in-law"),
    to_say("father-in-law"), to_say("daughter-in-law"), to_say("son-in-law"), to_say("sister-in-law"),
    to_say("brother-in-law"), to_say("stepmother"), to_say("stepfather"), to_say("stepdaughter"), to_say("stepson"),
    to_say("stepsister"), to_say("stepbrother"), to_say("adoptive mother"), to_say("adoptive father"),
    to_say("adoptive parent"), to_say("adopted daughter"), to_say("adopted son"), to_say("adopted child"),
    to_say("foster mother"), to_say("foster father"), to_say("foster parent"), to_say("foster daughter"),
    to_say("foster son"), to_say("foster child"), to_say("aunt by marriage"), to_say("uncle by marriage"),
)  # fmt: skip
"""Terms that other languages have words for."""

WHOSE = {
    "mother": to_say("mother's"),
    "father": to_say("father's"),
    "parent": to_say("parent's"),
    "daughter": to_say("daughter's"),
    "son": to_say("son's"),
    "child": to_say("child's"),
    "sister": to_say("sister's"),
    "brother": to_say("brother's"),
    "brother or sister": to_say("brother or sister's"),
    "aunt": to_say("aunt's"),
    "uncle": to_say("uncle's"),
    "aunt or uncle": to_say("aunt or uncle's"),
    "niece": to_say("niece's"),
    "nephew": to_say("nephew's"),
    "niece or nephew": to_say("niece or nephew's"),
    "wife": to_say("wife's"),
    "husband": to_say("husband's"),
    "spouse": to_say("spouse's"),
    "grandmother": to_say("grandmother's"),
    "grandfather": to_say("grandfather's"),
    "grandparent": to_say("grandparent's"),
    "granddaughter": to_say("granddaughter's"),
    "grandson": to_say("grandson's"),
    "grandchild": to_say("grandchild's"),
    "great-grandmother": to_say("great-grandmother's"),
    "great-grandfather": to_say("great-grandfather's"),
    "great-grandparent": to_say("great-grandparent's"),
    "great-granddaughter": to_say("great-granddaughter's"),
    "great-grandson": to_say("great-grandson's"),
    "great-grandchild": to_say("great-grandchild's"),
    "great-great-grandmother": to_say("great-great-grandmother's"),
    "great-great-grandfather": to_say("great-great-grandfather's"),
    "great-great-grandparent": to_say("great-great-grandparent's"),
    "great-aunt": to_say("great-aunt's"),
    "great-uncle": to_say("great-uncle's"),
    "great-aunt or uncle": to_say("great-aunt or uncle's"),
    "great-niece": to_say("great-niece's"),
    "great-nephew": to_say("great-nephew's"),
    "great-niece or nephew": to_say("great-niece or nephew's"),
    "half-sister": to_say("half-sister's"),
    "half-brother": to_say("half-brother's"),
    "half-brother or half-sister": to_say("half-brother or half-sister's"),
    "cousin": to_say("cousin's"),
    "second cousin": to_say("second cousin's"),
    "stepmother": to_say("stepmother's"),
    "stepfather": to_say("stepfather's"),
    "stepdaughter": to_say("stepdaughter's"),
    "stepson": to_say("stepson's"),
    "stepsister": to_say("stepsister's"),
    "stepbrother": to_say("stepbrother's"),
}
"""Terms that stand in the middle of a chain (“mother's cousin”) -> how other languages say whose: `de la madre`."""


def said_parts(parts: Sequence[str], say: Say) -> str:
    """`grandmother`, `grandmother's sister`, `hermana de la abuela`, in the language; empty where it has no word for a
    part of it."""
    if say == ENGLISH:
        return "'s ".join(parts)
    *owners, own = parts
    if own not in SAID_IN_LANGUAGES or not all(owner in WHOSE for owner in owners):
        return ""
    said = say(own)
    for owner in reversed(owners):
        said = say("{whose} {kin}", whose=say(WHOSE[owner]), kin=said)
    return said
