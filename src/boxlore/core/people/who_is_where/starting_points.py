"""Where an order around the picture begins: `Clockwise from top left: Anna`, `Im Uhrzeigersinn von oben: Anna`.

    order = [places [","]] direction [","] places [":"]     ; direction: clockwise or anticlockwise
    places = place {place / small word}                       ; from the top, dal centro, von links oben, back row

The places say where whoever is told first stands: they are a note of her (`Anna (from top left)`), and no row or side
that all who follow would have. So do those of somebody told before the order (`Ruth at the front, then going round
anticlockwise Tom, Anna`).
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.item_words import begins_person
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.people.who_is_where.tokens import PLACES, Element

_ORDERS = ("clockwise", "counterclockwise")
_PLACES = PLACES.union(("from_back", "from_front", "from_left", "from_right", "position", "from the right", "row"))
_MARKS = ("end", "comma", "dash")


def with_starting_points(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, the places before and behind an order as one note of whoever is told first."""
    kept: list[Element] = []
    at = 0
    while at < len(elements):
        element = elements[at]
        at += 1
        if element.kind not in _ORDERS:
            kept.append(element)
            continue
        first = _first_told(kept, elements[at:])
        if first is not None:
            kept[first:] = [element, *_with_place_as_note(kept[first:], text)]
            continue
        before = _places_before(kept)
        if begins := _begins_with(elements[at:]):
            kept += [element, *elements[at + 1 : at + begins], Element("comma", ",", 0, 0)]
            at += begins + 1
            continue
        comma = int(at < len(elements) and elements[at].kind == "comma")
        behind = _places_behind(elements[at + comma :])
        del kept[len(kept) - len(before) :]
        kept.append(element)
        at += comma + len(behind) if behind else 0
        if at < len(elements) and elements[at].kind == "colon":
            kept.append(elements[at])
            at += 1
        told = [piece for piece in (before, behind) if piece]
        if told:
            words = ", ".join(_told(piece, text) for piece in told)
            kept.append(replace(told[0][0], kind="note", text=words, end=told[-1][-1].end, inside=()))
    return kept


def _first_told(kept: Sequence[Element], further: Sequence[Element]) -> int | None:
    """Where the one is told with whom an order begins that is told behind her: `Ruth at the front, then anticlockwise
    Tom, Anna`; None where nobody alone is told before it."""
    ends = [at + 1 for at, piece in enumerate(kept) if piece.kind == "end"]
    first = ends[-1] if ends else 0
    commas = [at for at, piece in enumerate(kept) if at >= first and piece.kind == "comma"]
    if len(commas) != 1 or not begins_person(further) or any(piece.kind in ("and", "colon") for piece in kept[first:]):
        return None
    goes_round = all(piece.plain in _GO_ROUND for piece in kept[commas[0] + 1 :])
    told = kept[first : commas[0]]
    placed = bool(told) and told[-1].kind in PLACES and told[-1].kind not in (*_ORDERS, "ltr", "rtl")
    return first if goes_round and placed and begins_person(told) else None


_GO_ROUND = frozenset("then and going round around goes go on from there".split())


def _with_place_as_note(told: Sequence[Element], text: str) -> list[Element]:
    """Whoever is told first, with the places behind her as a note, and the comma behind her."""
    comma = next(at for at, piece in enumerate(told) if piece.kind == "comma")
    at = next(at for at, piece in enumerate(told) if piece.kind in PLACES)
    place = replace(told[at], kind="note", text=_told(told[at:comma], text), end=told[comma - 1].end, inside=())
    return [*told[:at], place, told[comma]]


def _begins_with(further: Sequence[Element]) -> int:
    """Where the colon stands behind whoever an order begins with, who is the first one (`Clockwise from Dad: Mum`); 0
    where it begins with nobody."""
    colon = next((at for at, piece in enumerate(further[:_LONGEST]) if piece.kind == "colon"), 0)
    is_somebody = colon > 1 and further[0].plain in _FROM and begins_person(further[1:])
    return colon if is_somebody and not any(piece.kind in _PLACES for piece in further[1:colon]) else 0


_FROM = ("from", "with", "von", "ab", "mit", "da", "de", "desde", "van", "fra", "fran", "од", "от", "od", "no", "is")
_LONGEST = 6


def _told(pieces: Sequence[Element], text: str) -> str:
    return text[pieces[0].start : pieces[-1].end].rstrip(" ,–-")


def _places_before(kept: Sequence[Element]) -> Sequence[Element]:
    """The places that alone stand before the order in its part: `Back row, clockwise: …`."""
    begins = next((at + 1 for at in range(len(kept) - 1, -1, -1) if kept[at].kind == "end"), 0)
    told = kept[begins:]
    is_place = bool(told) and all(piece.kind in (*_PLACES, "comma", "dash") for piece in told)
    return told if is_place and told[0].kind in _PLACES else ()


def _places_behind(further: Sequence[Element]) -> Sequence[Element]:
    """The places that follow an order: up to a colon with small words among them, else alone."""
    colon = next(
        (at for at, piece in enumerate(further) if piece.kind == "colon" or piece.kind in _MARKS), len(further)
    )
    told = further[:colon]
    heads = colon < len(further) and further[colon].kind == "colon"
    if heads and any(piece.kind in _PLACES for piece in told) and all(_may_lead(piece) for piece in told):
        return told
    return told[: next((at for at, piece in enumerate(told) if piece.kind not in _PLACES), len(told))]


def _may_lead(piece: Element) -> bool:
    is_somebody = relation(piece) or NOUNS.get(piece.plain) in ("one", "many")
    return piece.kind in _PLACES or not (piece.is_large or is_somebody or piece.kind in ("note", "me", "my"))
