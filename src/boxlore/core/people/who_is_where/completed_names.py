"""A name goes on in brackets: `Mrs. Edith Tranmoor (née Halloway)`, `Sister Mary Benedict (Kathleen Foy)`.

What the brackets say of the name itself (born as, married as, in religion, a people) stays with the name, so that it is
taken apart with it, and whoever lives is found by it, also where it is asked which of these it is (`Ruth Hallam
(Wainscott)`); all else in brackets is a note.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.statements import fold


def complete_names(items: Sequence[Item], known: KnownNames) -> None:
    """Give each name what stands in brackets behind it, where that is a part of the name."""
    for item in items:
        words, note = item.person.words, item.person.note
        if not (item.is_name and item.person.is_person and note) or item.is_beside or any(map(str.isdigit, note)):
            continue
        whole = f"{words} ({note})"
        if not _tells_what(note) and _completes(read_name(words, known), read_name(whole, known)):
            item.person = replace(item.person, words=whole, note="")


def _tells_what(note: str) -> bool:
    """Whether the words are no name, but what somebody is: `Mees`, `L'uomo`."""
    if KIN_WORDS.get(fold(note.split()[0])) in _OF_KIN:
        return True  # `Муж Анны`
    return all(fold(word).rpartition("'")[2] in NOUNS for word in note.replace("’", "'").split())


_OF_KIN = ("husband", "wife", "son", "daughter", "father", "brother")


def _completes(before: NameParts, after: NameParts) -> bool:
    """Whether more is known of the name behind the brackets, and surely."""
    more = any(getattr(after, part) and not getattr(before, part) for part in _OF_THE_NAME)
    secular = bool(before.religious and after.family and not before.family)
    return more or secular


_OF_THE_NAME = ("born_as", "married_as", "religious", "belongs")
