"""Terms of kinship: for a woman, a man, or someone of whom it is not told; for a degree of blood.

The terms are those of the HL7 Version 3 RoleCode system, PersonalRelationshipRoleType, where it has one; cousins'
degree and removal: common practice.
"""

from collections.abc import Mapping

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
