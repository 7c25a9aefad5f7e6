"""What heads a list of people and is nobody: `Port Chalmers School, Standard 4, 1931: …`, `Wedding of Ruth and Tom: …`.

    text = head (":" / "." / "," / "-") list     ; "," and "-" only before a row, a direction or a side

A head has a word of a school, a team or a feast (`position_words_table.HEADS`), or a year, and tells no place. One that
names nobody is left out of the list: the answer is kept whole as a note (`words_left`). One that names somebody
is asked about as a whole, for it is not told whether they are in the picture.
"""

from collections.abc import Sequence

from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_ALONE, TITLES
from boxlore.core.people.who_is_where.position_words_table import HEADS
from boxlore.core.people.who_is_where.tokens import PLACES, Element

_FIRST_YEAR = 1000


def head_and_list(elements: Sequence[Element], known: KnownNames) -> tuple[Sequence[Element], Sequence[Element]]:
    """The head, if it names somebody and so is asked about; and the list without a head."""
    if begins := _of_the_back(elements):
        return (), elements[begins:]
    end, begins = _end(elements)
    head, told = elements[:end], elements[begins:]
    if not head or not told:
        return (), elements
    if not any(_names_somebody(element, known) for element in head):
        return ((), told) if _is_head(head) else ((), elements)
    return (head, told) if _is_of_somebody(head) else ((), elements)


def _of_the_back(elements: Sequence[Element]) -> int:
    """Where the list begins of `names on the back: …`, of the paper and of no row; 0 where no such words head it."""
    colon = next((at for at, element in enumerate(elements) if element.kind == "colon"), 0)
    head = " ".join(element.plain for element in elements[:colon])
    is_told = head.endswith(_ON_THE_BACK) and not any(
        element.is_large for element in elements[1:colon] if _is_name(element)
    )
    return colon + 1 if is_told and len(elements) > colon + 1 else 0


def _is_name(element: Element) -> bool:
    return element.kind == "word" and token_of(element.text).is_given


_ON_THE_BACK = (
    "on the back", "on back", "on the reverse", "on reverse", "on verso", "on the verso", "auf der ruckseite",
    "au dos", "au verso", "al dorso", "al reverso", "en el reverso", "sul retro", "no verso", "op de achterkant",
    "op de achterzijde", "pa bagsiden", "pa baksiden", "pa baksidan", "kaantopuolella", "takana lukee", "tagakuljel",
    "на обороте", "na odwrocie", "na rubu", "hatoldalon", "hatlapon",
)  # fmt: skip
"""Where on the paper names stand: at the end of what heads them. Common practice, from memory; no source."""


def _end(elements: Sequence[Element]) -> tuple[int, int]:
    """Where the head would end, and the list begin: at the first colon or point, or before a place."""
    for at, element in enumerate(elements):
        if element.kind in PLACES or element.kind in ("position", "from the right", "note"):
            before = elements[at - 1].kind if at else ""
            ends = {"comma": at - 1, "dash": at - 1, "number": at}
            return ends.get(before, 0), at
        if element.kind == "dash" and at > 1 and elements[at - 1].plain in HEADS:
            return at, at + 1  # `Peter's christening - Peter, me`
        if element.kind in ("colon", "end"):
            return at, at + 1
    return 0, 0


def _is_head(head: Sequence[Element]) -> bool:
    """Whether a word of a feast or a school stands in it, or a year."""
    has_year = any(element.kind == "number" and element.value >= _FIRST_YEAR for element in head)
    return has_year or any(element.plain in HEADS or _is_of_a_picture(element.plain) for element in head)


def _is_of_a_picture(plain: str) -> bool:
    """`Klassenfoto`, but not `Foto` alone."""
    return plain.endswith(_PICTURES) and plain not in _PICTURES


_PICTURES = ("foto", "photo", "bild", "pilt", "photograph")
"""Ends of words for a picture of some kind: `Klassenfoto`."""


def _is_of_somebody(head: Sequence[Element]) -> bool:
    """`Wedding of Ruth and Tom`, `Ruth and Tom's wedding`: but not `Tom, captain of the team`."""
    at = next((at for at, element in enumerate(head) if element.plain in HEADS), len(head))
    before = "".join(element.plain for element in head[max(at - 2, 0) : at])
    return at < len(head) and (at < 2 or before.endswith(("'s", "s'", "s’")))


def _names_somebody(element: Element, known: KnownNames) -> bool:
    plain = element.plain.removesuffix("'s")
    is_name = token_of(element.text.removesuffix("'s")).is_given or known.is_given(plain) or known.is_family(plain)
    is_name = is_name or plain in TITLES or plain in KIN_ALONE
    return element.kind in ("my", "me") or (element.is_large and is_name and element.plain not in HEADS)
