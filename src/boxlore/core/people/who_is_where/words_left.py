"""Whether all words of an answer are held by the people and places made of it: what is not must be kept beside them.

An element is held if its words stand in the words or the note of somebody told, or if it is structure: a mark, a small
word that only joins or leads, somebody unknown, a doubt, and a row, a side, a direction, a number or a position that
the places of the people themselves hold: a row that nobody has a place in is not held (`kneeling in front`, read as the
front row). A word that holds (`süles`), a posture where no place is told
(`Standing behind Lottie`), and where an order begins (`clockwise from top left`) say more than that.
"""

from collections.abc import Collection, Iterable, Sequence

from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.tokens import PLACES, ROW_KINDS, Element, elements_of
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold

_STRUCTURE = ("comma", "end", "colon", "dash", "hash", "of", "and", "verb", "filler", "unknown", "unsure", "or")
_TELLS_PLACES = (*PLACES, "number", "ordinal", "position", "from the right", "position before", "row", "from_left")
_LEADS = small_words.LEADS.union(small_words.ARTICLES, small_words.EVERYONE, small_words.WITH)


def leaves_words(text: str, people: Sequence[Placed], *, placed: bool) -> bool:
    """Whether the answer has words that neither somebody told of these people nor a place holds."""
    told = " ".join(f"{person.words} {person.note}" for person in people if person.words)
    held = set(words_in(told))
    rows = {person.row for person in people if person.position} if placed else set()
    return any(not held.issuperset(words_in(element.text)) for element in _bare(elements_of(text.strip()), rows=rows))


def _bare(elements: Iterable[Element], *, rows: Collection[str]) -> Iterable[Element]:
    """The elements that are no structure and are held by no place, those in brackets too. `rows` are those in which
    somebody has a place."""
    for element in elements:
        if element.inside:
            yield from _bare(element.inside, rows=rows)
        elif not (_is_structure(element) or _is_held_by_a_place(element, rows)):
            yield element


def _is_structure(element: Element) -> bool:
    joins = element.kind == "with" and element.phrase not in table.HOLDING
    return joins or element.kind in _STRUCTURE or element.plain in _LEADS


def _is_held_by_a_place(element: Element, rows: Collection[str]) -> bool:
    if element.kind in ROW_KINDS:
        return element.kind in rows
    tells = element.kind in _TELLS_PLACES and not (element.kind in table.ORDERS and " " in element.text)
    return tells and bool(rows)


def words_in(text: str) -> list[str]:
    """The words of a text, folded, without marks."""
    apart = "".join(letter if letter.isalnum() else " " for letter in fold(text))
    return apart.split()
