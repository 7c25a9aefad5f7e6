"""Several places told before the people who stand there: `First and third from the left are Ed and Al`.

    clause = places is name {("," / "and") name} / places is unknown          ; `2nd and 4th are strangers`
    places = ["the"] place {("," / "and") ["the"] place}
    is     = verb / ":"

The last of the places tells from which side is counted. Each name gets its own place before it; where there are not as
many names as places, the words stay as they are.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.small_words_table import ARTICLES
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.people.who_is_where.what_is_not_known import STRANGERS

_COUNTED = ("ordinal", "position", "from the right")
_JOIN = ("comma", "and")


def with_listed_places(elements: Sequence[Element]) -> list[Element]:
    """The elements, each name of such a clause behind its own place."""
    listed: list[Element] = []
    at = 0
    while at < len(elements):
        end = next((end for end in range(at, len(elements)) if elements[end].kind == "end"), len(elements))
        listed += _each_at_its_place(elements[at:end]) or elements[at:end]
        listed += elements[end : end + 1]
        at = end + 1
    return listed


def _each_at_its_place(part: Sequence[Element]) -> list[Element]:
    """The part with each name at its own place; empty where it is no such clause."""
    begins = next((at for at, piece in enumerate(part) if piece.kind in _COUNTED), len(part))
    verb = next((at for at, piece in enumerate(part) if at > begins and piece.kind in ("verb", "colon")), len(part))
    head = part[begins:verb]
    places = [piece for piece in head if piece.kind in _COUNTED]
    is_list = len(places) > 1 and all(piece.kind in (*_COUNTED, *_JOIN) or piece.plain in ARTICLES for piece in head)
    behind = next((at for at, piece in enumerate(part) if at > verb and piece.kind in _COUNTED), len(part))
    names = _names(part[verb + 1 : behind]) if is_list else []
    if len(names) == 1 and len(names[0]) == 1 and (names[0][0].kind == "unknown" or names[0][0].plain in STRANGERS):
        names = [[replace(names[0][0], kind="unknown", text="?")] for _ in places]
    if not names or len(names) != len(places):
        return []
    counts = "from the right" if places[-1].kind == "from the right" else "position"
    told = [piece for piece in part[:begins] if piece.plain not in ARTICLES]
    for place, name in zip(places, names, strict=True):
        told += [replace(place, kind=counts), *name, replace(place, kind="comma", text=",", phrase="")]
    return [*told, *part[behind:]] if behind < len(part) else told[:-1]


def _names(told: Sequence[Element]) -> list[list[Element]]:
    """The words between the marks that join."""
    names: list[list[Element]] = [[]]
    for piece in told:
        if piece.kind in _JOIN:
            names.append([])
        else:
            names[-1].append(piece)
    return [name for name in names if name]
