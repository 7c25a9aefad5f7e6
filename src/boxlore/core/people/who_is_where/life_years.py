"""Years of a life behind a name: a note on whoever was named, and nobody's place in the row.

    years = [","] year "-" [year]            ; Jaan Tamm, 1890-1944
          / [","] mark year                  ; Helmi Tamm, b. 1895    Karl Kask, geb. 1890    *1890 †1944

Common practice, from memory; no source.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.tokens import Element, each_as_one

_MARKS = frozenset(
    "* † + b born d died geb geboren gest gestorben sund surn nee ne nato nata morto morta nacido nacida "
    "fallecido fallecida nascido nascida f fodt fod fodd fodda synt dod syn s k р род ум ur zm dzim mir g gim miro "
    "nar zem zemr".split()
)
"""Words before the year of a birth or a death, without their point."""

_FIRST, _LAST = 1500, 2100


def with_life_years(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, the years of a life as a note on whoever stands before them."""

    def note(told: Sequence[Element]) -> Element:
        said = told[1:] if told[0].kind == "comma" else told
        return replace(said[0], kind="note", text=text[said[0].start : said[-1].end], end=said[-1].end, inside=())

    return each_as_one(elements, _end_of_years, note)


def _end_of_years(elements: Sequence[Element], at: int) -> int:
    """Behind which element the years of a life end that begin at this one; 0 where none do."""
    begins = at + (elements[at].kind == "comma")
    end = begins
    while length := _years(elements[end : end + 3]):
        end += length
        further = elements[end + 1 : end + 4]
        if elements[end : end + 1] and elements[end].kind == "comma" and _years(further):
            end += 1  # `born 1890, died 1944`
    before = elements[at - 1] if at else None
    is_behind = before is not None and before.kind in ("word", "note", "left", "right")
    return end if end > begins and is_behind else 0


def _years(told: Sequence[Element]) -> int:
    """How many elements one mark and its year take, or two years."""
    kinds = [element.kind for element in told]
    if kinds[:3] == ["number", "dash", "number"] and _is_year(told[0]) and _is_year(told[2]):
        return 3
    if len(told) < 2 or told[0].plain.rstrip(".") not in _MARKS:
        return 0
    marks = told[0].text.islower() or len(told[0].text) == 1
    return 2 if marks and told[1].kind == "number" and _is_year(told[1]) else 0


def _is_year(element: Element) -> bool:
    return _FIRST < element.value < _LAST
