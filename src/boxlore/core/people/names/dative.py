"""The form that a given name has in an age, in languages that tell it so: `Вере 5 лет`, `Marii bylo 5`.

Each row: what the name ends in (`*` is any consonant), and what stands in its place. The first row that fits holds.
Declensions of the school grammars, from memory.
"""

from collections.abc import Mapping

_POLISH = (
    "sia si|cia ci|zia zi|nia ni|lia lii|ia ii|ja i|cha sze|ga dze|ka ce|ra rze|ta cie|da dzie|na nie|ła le|la li"
    "|wa wie|ba bie|pa pie|ma mie|sa sie|za zie|* *owi"
)
_CZECH = (
    "ie ii|ka ce|ra ře|ha ze|ga ze|ta tě|da dě|na ně|la le|va vě|ba bě|pa pě|ma mě|sa se|za ze|ja je|ek kovi|* *ovi"
)

ENDINGS: Mapping[str, str] = {
    "ru": "ия ии|я е|а е|ий ию|й ю|вь ви|ь ю|* *у",
    "pl": _POLISH,
    "cs": _CZECH,
    "lv": "a ai|e ei|is im|us um|s am",
    "lt": "a ai|ė ei|as ui|is iui|us ui|ys iui",
}
"""By language, in this order."""


def told_in_dative(form: str, language: str) -> set[str]:
    """The names in small letters of which a word may be the dative: `zosi` is of `zosia`, `верочке` of `верочка`."""
    names = set()
    for row in ENDINGS.get(language, "").split("|"):
        ending, _, instead = row.partition(" ")
        instead = instead.removeprefix("*")
        if instead and form.endswith(instead) and len(form) > len(instead) + 1:
            names.add(form.removesuffix(instead) + ending.removeprefix("*"))
    return names


_VOWELS = frozenset("aeiouyáéěíóúůýąęāēīūėįųõäöüаеёиоуыэюяьй")


def dative(name: str, language: str) -> str:
    """A given name in small letters in the dative; empty for a name of several words, and in other languages."""
    if " " in name or not name:
        return ""
    for row in ENDINGS.get(language, "").split("|"):
        ending, _, instead = row.partition(" ")
        if ending == "*" and name[-1] not in _VOWELS:
            return name + instead[1:]
        if ending and name.endswith(ending) and len(name) > len(ending):
            return name.removesuffix(ending) + instead
    return ""
