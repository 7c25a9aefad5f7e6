"""Names as they stand in lists, the family name first and a comma behind it: `Olsen, Karl; Olsen, Mette`.

A comma parts people, and it parts the two halves of such a name. Which of the two it does is told by the whole answer:
if something else parts the people (a semicolon, a new line, a number, a row, a bracket), and each of the parts that
have a comma has one, with words before it that are no given name (of `Anna, Ruth; Tom, Joe` four people are told) and
names behind it, of which half at least are known given names, then every comma belongs to a name.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from boxlore.core.people.names.lists_table import FAMILY_TOO
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_WORDS, SUFFIXES, TITLES
from boxlore.core.people.who_is_where.position_words_table import SIDES
from boxlore.core.people.who_is_where.surely_a_name import is_given_somewhere
from boxlore.core.people.who_is_where.tokens import PLACES, Element

_PART = (*PLACES, "end", "number", "ordinal", "position", "from the right", "colon", "note", "dash", "hash")
"""What stands between two people of a list besides a comma."""

_LONGEST = 3
"""Words of a family name with its particles, and of given names."""


def without_commas_in_names(elements: Sequence[Element], known: KnownNames) -> Sequence[Element]:
    """The elements, without the commas inside of names that are told the family name first."""
    elements = _with_initials(elements)
    parts = [part for part in _parts(elements) if any(element.kind == "comma" for element in part)]
    halves = [_halves(part) for part in parts]
    turned = [names for names in halves if names and _is_turned(*names, known)]
    sure = sum(_is_given(given[0], known) for _, given in turned)
    if len(parts) == 1 and turned and _is_surely_turned(*turned[0], known):
        return [element for element in elements if element not in parts[0] or element.kind != "comma"]
    if len(turned) < 2 or len(turned) < len(parts) or sure * 2 < len(turned):
        return elements
    commas = {id(element) for part in parts for element in part if element.kind == "comma"}
    return [element for element in elements if id(element) not in commas]


def _with_initials(elements: Sequence[Element]) -> Sequence[Element]:
    """With letters for a side as the initials that they are beside another one, or behind a comma in a list of such
    names: `Jones, K. R.; Brown, L.`."""
    ends = [element.kind == "end" for element in elements[1:]] + [True]
    lists = sum(
        before.kind == "comma" and token_of(element.text).is_initial and end
        for (before, element), end in zip(pairwise(elements), ends[1:], strict=True)
    )
    kept = list(elements)
    for at, element in enumerate(elements):
        if element.kind not in SIDES or not _is_letter(element):
            continue
        before, behind = kept[at - 1 : at], elements[at + 1 : at + 2]
        beside = any(token_of(piece.text).is_initial for piece in (*before, *behind) if piece.end or piece.start)
        listed = lists > 1 and [piece.kind for piece in before] == ["comma"] and ends[at]
        if beside or listed:
            kept[at] = replace(element, kind="word")
    return kept


def _is_letter(element: Element) -> bool:
    return len(element.text) == 2 and element.text[0].isupper() and element.text[1] == "."


def _parts(elements: Sequence[Element]) -> list[list[Element]]:
    """What stands between the marks, numbers and places; a comma at either end of it parts people too."""
    parts: list[list[Element]] = [[]]
    for element in elements:
        if element.kind in _PART:
            parts.append([])
        else:
            parts[-1].append(element)
    return [_without_outer_commas(part) for part in parts]


def _without_outer_commas(part: list[Element]) -> list[Element]:
    while part and part[0].kind in ("comma", "and"):
        part = part[1:]
    while part and part[-1].kind in ("comma", "and"):
        part = part[:-1]
    return part


def _halves(part: Sequence[Element]) -> tuple[Sequence[Element], Sequence[Element]] | None:
    """The words before and behind the one comma of a part; None where there is more, or other than words."""
    at = next(at for at, element in enumerate(part) if element.kind == "comma")
    family, given = part[:at], part[at + 1 :]
    titles = next((end for end, word in enumerate(given) if word.kind == "comma"), len(given))
    if 0 < titles < len(given) - 1 and all(map(_may_end, given[titles + 1 :])):
        behind = (word for word in given[titles + 1 :] if word.plain in TITLES)
        given = (*given[:titles], *behind)  # `Burns, Mary Ellen, Mrs.`, `Burns, Capt. John, M.C.`
    return (family, given) if all(_may_be_named(word) for word in (*family, *given)) else None


def _may_end(word: Element) -> bool:
    """Whether a word is a title or a suffix, or letters of an honour."""
    is_honour = word.text.isupper() and word.text.count(".") > 1
    return word.plain in TITLES or word.plain in SUFFIXES or is_honour


def _may_be_named(word: Element) -> bool:
    return word.kind == "word" or token_of(word.text).is_particle


def _is_turned(family: Sequence[Element], given: Sequence[Element], known: KnownNames) -> bool:
    """Whether a family name and given names may stand there."""
    if not len(family) <= _LONGEST or not len(given) <= _LONGEST:
        return False
    if len(family) > 1 and token_of(family[0].text).is_given:
        return False  # `Greta Ek, Maj Ek`
    if any(token_of(word.text).is_initial or word.plain in TITLES for word in family):
        return False  # `A. Dell, B. Fry`
    last = family[-1].plain
    may_be_family = last in FAMILY_TOO or known.is_family(last) or not _is_given(family[-1], known)
    return family[-1].is_large and given[0].is_large and may_be_family and last not in KIN_WORDS


def _is_surely_turned(family: Sequence[Element], given: Sequence[Element], known: KnownNames) -> bool:
    """Whether one name alone is surely told so: a title, behind which a family name is missing (`Dunstable, Rev.
    Hugh`), initials (`Smith, J.`), capitals of one half (`RUDGE, Thomas`), or a family name of the family's."""
    if token_of(family[0].text).is_particle and len(family) > 1 and all(_is_given(word, known) for word in given):
        return True  # `van der Meer, Pieter`
    names = [word for word in given if not (word.plain in TITLES or token_of(word.text).is_initial)]
    if any(_is_given(word, known) and not known.is_family(word.plain) for word in family):
        return False
    if any(not is_given_somewhere(token_of(word.text), known) for word in names if word.plain not in SUFFIXES):
        return False
    shouted = [token_of(word.text).is_capitals for word in (family[-1], given[-1])] == [True, False]
    is_known = known.is_family(family[-1].plain) and bool(names)
    return is_known or shouted or len(names) < len(given) or any(word.plain in SUFFIXES for word in names)


def _is_given(word: Element, known: KnownNames) -> bool:
    """Whether a given name is told, or a title or initials before or instead of one."""
    token = token_of(word.text)
    return is_given_somewhere(token, known) or token.is_initial or token.plain in TITLES
