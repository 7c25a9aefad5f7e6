"""What the words of one item name: somebody by a name, kin and a name, a description, somebody unknown, or nobody.

    item = ["probably"] ([kin] name / description / unknown) ["?"]
    kin  = ("my" / "Ruth's") word of kin / a kind of person            ; “my sister Anna”, “baby Tom”, “the vicar Oakes”

A description is of one person if a word of it is (“the tall man”). Words of several people, of animals and things, and
words of which nothing is known ask, and name nobody.
"""

from collections.abc import Sequence

from boxlore.core.people import position_words_table as table
from boxlore.core.people.name_reader import read_name
from boxlore.core.people.name_traditions import KnownNames
from boxlore.core.people.name_words_table import KIN_ALONE, KIN_WORDS
from boxlore.core.people.position_tokens import Element, elements_of
from boxlore.core.people.positions import Placed
from boxlore.core.statements import fold

_NOUNS = {fold(word): kind for kind, word in reversed(table.PEOPLE_NOUNS)}


def person_named(words: Sequence[Element], text: str, known: KnownNames) -> tuple[Placed, bool]:
    """Whom the words of one item name, without a place, and whether by a name. `text` is what they are words of."""
    unsure = words[-1].kind == "unknown" and words[-1].text.startswith("?") and len(words) > 1
    if unsure:
        words = words[:-1]
    if words[0].kind == "unsure" and len(words) > 1:
        words, unsure = words[1:], True
    if words[0].kind == "unknown":
        return Placed("", 0, note=between(words[1:], text)), False
    told = between(words, text)
    small = [word.plain for word in words if not word.is_large]
    nouns = {_NOUNS[plain] for plain in small if plain in _NOUNS} | {"many" for word in words if is_family(word)}
    kin, name = _kin_and_name(words, text)
    if name and "thing" not in nouns and read_name(name, known):
        return Placed(name, 0, note=kin, unsure=unsure), True
    if not nouns & {"many", "thing"} and not any(word.kind == "or" for word in words):
        if words[0].kind == "me":
            return Placed(told, 0, unsure=unsure), False
        if parts := read_name(told, known):
            return Placed(told, 0, unsure=unsure), not own_relation(told) and parts.kin != told
        if "one" in nouns or relation(words[-1]):
            return Placed(told, 0, unsure=unsure), False
    question = f"Who are “{told}”?" if "many" in nouns else f"Is “{told}” someone in the picture?"
    return Placed(told, 0, unsure=unsure, asks=question, is_person=False), False


def between(words: Sequence[Element], text: str) -> str:
    """The text from the first of the words to the last."""
    return text[words[0].start : words[-1].end] if words else ""


def begins_person(further: Sequence[Element]) -> bool:
    """Whether a person is told next: a name, kin, or somebody unknown."""
    first = further[0]
    if first.kind == "my":
        near = further[1:3]
        is_thing = any(_NOUNS.get(element.plain) == "thing" for element in near)
        return not is_thing and any(element.is_large or relation(element) for element in near)
    if first.kind == "word":
        return first.is_large or _NOUNS.get(first.plain) == "one" or bool(relation(first))
    return first.kind in ("unknown", "me")


def is_remark(words: Sequence[Element]) -> bool:
    """Whether the words may be a remark on somebody named before them: `my sister`, `Ruth's cousin`, `aged 5`."""
    first, last = words[0], words[-1]
    if first.plain in ("aged", "age") or (last.text.isdigit() and not any(word.is_large for word in words)):
        return True
    return (first.kind == "my" or _is_genitive(first)) and bool(relation(last) or _NOUNS.get(last.plain) == "one")


def relation(element: Element) -> str:
    """The relation that a word of kin tells, or an empty string."""
    return KIN_WORDS.get(element.plain, "")


def is_family(word: Element) -> bool:
    """`family`, in any language: a name behind it is not one person's."""
    return word.plain in table.FAMILY


def _is_genitive(word: Element) -> bool:
    return word.plain.endswith(("'s", "s'"))


def _kin_and_name(words: Sequence[Element], text: str) -> tuple[str, str]:
    """`my sister Anna` as `my sister` and `Anna`; two empty texts where the words are not so."""
    opens = words[0].kind == "my" or not words[0].is_large or _is_genitive(words[0])
    at = 0
    while opens and at < len(words) and not (words[at].is_large and at and not _is_kin(words[at])):
        at += 1
    before, name = words[:at], words[at:]
    if not before or not name:
        return "", ""
    small = all(word.plain in table.BEFORE_A_NAME for word in before)
    own = before[0].kind == "my" or _is_genitive(before[0]) or before[-1].plain in _NOUNS
    return (between(before, text), between(name, text)) if small or (own and _is_kin(before[-1])) else ("", "")


def _is_kin(word: Element) -> bool:
    """A word of kin or of kinds of people; a genitive counts as one, for more must follow it."""
    people = _NOUNS.get(word.plain) in ("one", "many") and not is_family(word)
    return bool(relation(word)) or people or _is_genitive(word)


def own_relation(words: str) -> str:
    """What somebody told without a name is to the one who tells: `mother` for `Mum` and `my mother`, `self` for `me`.

    Empty for everybody else, also for somebody else's kin (`her mother`) and for kin with a name (`Aunt Mavis`).
    """
    elements = [element for element in elements_of(words) if element.kind != "end"]
    if len(elements) == 1 and elements[0].kind == "me":
        return "self"
    if elements and elements[0].plain in table.MY_OWN:
        elements = elements[1:]
    if len(elements) != 1 or (elements[0].kind not in ("word", "me")):
        return ""
    return relation(elements[0]) if elements[0].plain in KIN_ALONE or len(words.split()) > 1 else ""
