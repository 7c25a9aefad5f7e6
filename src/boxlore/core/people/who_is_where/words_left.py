"""Whether all words of an answer are held by the people and places made of it: what is not must be kept beside them.

An element is held if its words stand in the words or the note of somebody told, or if it is structure: a mark, a small
word that only joins or leads, somebody unknown, a doubt, and, where places are told, a row, a side, a direction, a
number or a position, which the places themselves hold. A word that holds (`süles`), a posture where no place is told
(`Standing behind Lottie`), and where an order begins (`clockwise from top left`) say more than that.
"""

from collections.abc import Iterable, Sequence

from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.tokens import PLACES, Element, elements_of
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold

_STRUCTURE = ("comma", "end", "colon", "dash", "hash", "of", "and", "verb", "filler", "unknown", "unsure", "or")
_TELLS_PLACES = (*PLACES, "number", "ordinal", "position", "from the right", "position before", "row", "from_left")
_LEADS = small_words.LEADS.union(small_words.ARTICLES, small_words.EVERYONE, small_words.WITH)


def leaves_words(text: str, people: Sequence[Placed], *, placed: bool) -> bool:
    """Whether the answer has words that neither somebody told of these people nor a place holds."""
    told = " ".join(f"{person.words} {person.note}" for person in people if person.words)
    held = set(words_in(told))
    return any(
        not held.issuperset(words_in(element.text)) for element in _bare(elements_of(text.strip()), placed=placed)
    )


def _bare(elements: Iterable[Element], *, placed: bool) -> Iterable[Element]:
    """The elements that are no structure, those in brackets too."""
    for element in elements:
        if element.inside:
            yield from _bare(element.inside, placed=placed)
        elif not (_is_structure(element) or (placed and _is_place(element))):
            yield element


def _is_structure(element: Element) -> bool:
    joins = element.kind == "with" and element.phrase not in table.HOLDING
    return joins or element.kind in _STRUCTURE or element.plain in _LEADS


def _is_place(element: Element) -> bool:
    return element.kind in _TELLS_PLACES and not (element.kind in table.ORDERS and " " in element.text)


def words_in(text: str) -> list[str]:
    """The words of a text, folded, without marks."""
    apart = "".join(letter if letter.isalnum() else " " for letter in fold(text))
    return apart.split()
