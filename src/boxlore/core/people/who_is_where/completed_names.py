"""A name goes on in brackets: `Mrs. Edith Tranmoor (née Halloway)`, `Sister Mary Benedict (Kathleen Foy)`.

What the brackets say of the name itself (born as, married as, in religion, a people) stays with the name, so that it is
taken apart with it, and whoever lives is found by it, also where it is asked which of these it is (`Ruth Hallam
(Wainscott)`); all else in brackets is a note.
"""

import re
from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.lists_table import MEN_ALONE, WOMEN_ALONE
from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import tokens_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_WORDS, MARKERS, TITLES
from boxlore.core.people.who_is_where.item_words import is_my
from boxlore.core.people.who_is_where.kin_words import owned_relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.people.who_is_where.remarks import is_absent
from boxlore.core.people.who_is_where.small_words_table import ARTICLES, BEFORE_OR_AFTER, DENY, MARRYING, SUBJECTS
from boxlore.core.people.who_is_where.surely_a_name import is_a_people
from boxlore.core.people.who_is_where.tokens import PLACES, Element, elements_of
from boxlore.core.statements import fold


def complete_names(items: Sequence[Item], known: KnownNames) -> None:
    """Give each name what stands in brackets behind it, where that is a part of the name."""
    for item in items:
        words, note = item.person.words, item.person.note
        if not (item.is_name and item.person.is_person and note) or item.is_beside or item.person.asks:
            continue
        absent = is_absent(elements_of(note))  # `Otto (es fehlt: Lina Vogel, geborene Kessler)`
        pieces = (note, *note.split(", ")) if ", " in note and not absent else (note,)
        told = next((piece for piece in pieces if _goes_with(words, piece, known)), "")
        if told:  # `Ines Corti (mia madre, nata Galli)`
            left = [] if told == note else [piece for piece in note.split(", ") if piece != told]
            item.person = replace(item.person, words=f"{words} ({told})", note=", ".join(left))


def _goes_with(words: str, told: str, known: KnownNames) -> bool:
    """Whether brackets behind a name, with these words, tell more of it."""
    marks = fold(told.split(" ")[0]).rstrip(".") in _MARKS_OF_BIRTH and words.islower()  # `mrs anna pell (nee rourke)`
    if not (marks or any(word[0].isupper() for word in told.split())):
        return False  # `os três filhos`
    if (any(map(str.isdigit, told)) and not _UNTIL.fullmatch(told)) or _tells_what(told):
        return False
    return not _is_another_sex(words, told) and _completes(
        read_name(words, known), read_name(f"{words} ({told})", known)
    )


def _is_another_sex(words: str, told: str) -> bool:
    """Whether a man's name and a woman's stand beside each other: `Tom (Anna Tamm)` are two people."""
    name, beside = ({token.plain for token in tokens_of(each)} for each in (words, told))
    is_other = bool(name & MEN_ALONE and beside & WOMEN_ALONE) or bool(name & WOMEN_ALONE and beside & MEN_ALONE)
    return is_other and not any(token.plain in TITLES for token in tokens_of(words))  # `Mrs. John Beck (Florence)`


_MARKS_OF_BIRTH = frozenset(mark for mark, part in MARKERS if part == "born_as")

_UNTIL = re.compile(r"[^\W\d]+ \d{4} [^\W\d]+")
"""`kuni 1937 Berg`: a family name that was given up in a year."""


def _tells_what(note: str) -> bool:
    """Whether the words are no name, but what somebody is: `Mees`, `L'uomo`."""
    if KIN_WORDS.get(fold(note.split()[0])) in _OF_KIN:
        return True  # `Муж Анны`
    told = elements_of(note)
    if is_a_people(note) or is_absent(told) or _is_of_a_wedding(told):
        return True  # `Hone (Ngāti Porou)`, `zia Lucia (manca Teresa Conti)`
    first, *others = note.split()
    if fold(first) in SUBJECTS and not any(word[0].isupper() for word in others):
        return True  # `They were married`
    begins = elements_of(note)[0]
    tells_where = begins.kind in ("nextto", "with", "beside head", *PLACES)
    if tells_where or is_my(begins) or fold(first) in DENY or owned_relation(begins):
        return True  # `Meine Schwester`, `Siskoni`, `Não Luísa`
    words = [fold(word).rpartition("'")[2] for word in note.replace("’", "'").split()]
    return all(word in NOUNS or word in ARTICLES or _is_no_name(word) for word in words)


def _is_of_a_wedding(told: Sequence[Element]) -> bool:
    """Whether words tell before or after which wedding, and to whom: `before her marriage to Stan`."""
    when = any(element.plain in BEFORE_OR_AFTER for element in told)
    wed = next((at for at, element in enumerate(told) if element.plain.startswith(MARRYING)), len(told))
    return when and any(element.text.islower() for element in told[wed + 1 :])


def _is_no_name(word: str) -> bool:
    """Whether a word is a title or kin, and no given name: `Pani` of `Pani w środku to Zofia`."""
    return (word in TITLES or word in KIN_WORDS) and not tokens_of(word)[0].is_given


_OF_KIN = ("husband", "wife", "son", "daughter", "father", "brother")


def _completes(before: NameParts, after: NameParts) -> bool:
    """Whether more is known of the name behind the brackets, and surely."""
    more = any(getattr(after, part) and not getattr(before, part) for part in _OF_THE_NAME)
    renamed = after.nickname == before.given != after.given and after.family == before.family != ""
    called = after.nickname and not before.nickname and before.given and before.family
    secular = bool(after.family and not before.family)  # `Aunt Lou (Louisa Beck)`, `Sister Mary Clare (Edith Gaunt)`
    wife = bool(before.married_as and after.given and not before.given)  # `Mrs. John Beck (Florence)`
    return more or secular or renamed or wife or bool(called)  # `Jim Barnes (real name James)`


_OF_THE_NAME = ("patronymic", "born_as", "married_as", "religious", "belongs")
