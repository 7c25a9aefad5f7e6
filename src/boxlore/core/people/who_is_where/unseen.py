"""Somebody who stands in a row and of whom nothing can be seen: `T. Cole, (obscured), N. Cole`, `two hidden`.

    unseen = mark ( "(" told ")" / told ) mark      ; a mark: ",", ";", ".", ":", the beginning, a place, the end
    told   = {article / number / "face" / "partly"} word of hiding {word of these}

Whoever is hidden is somebody not known, who keeps her place in the row; the words are her note. Brackets behind a name
say something of it (`T. Cole (obscured)`): that is no such part. Where the words may as well be of whoever was told
before (`Mick, partly hidden, Joe`; `Jules, visage caché`) both can be meant, and it is asked.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    CARDINALS,
    FACES,
    GONE,
    HIDDEN,
    NEGATIONS,
    PARTLY,
)
from boxlore.core.people.who_is_where.tokens import PLACES, ROW_KINDS, Element

_MARKS = ("comma", "end", "colon", "dash")
_BEFORE = (*_MARKS, "and", *PLACES)


def with_unseen(elements: Sequence[Element]) -> list[Element]:
    """The elements, those who cannot be seen as `unknown` with a note; as `unseen` where it may be said of another."""
    marked: list[Element] = []
    at = 0
    while at < len(elements):
        opens = at == 0 or elements[at - 1].kind in _BEFORE
        end = _end(elements, at) if opens else at
        if gone := _end_of_row_that_is_gone(elements, at, end):
            marked.pop()  # `Front row torn off.`
            at = gone
            continue
        marked += _unseen(elements[at:end], behind=at > 0) if end > at else elements[at : at + 1]
        at = max(end, at + 1)
    return marked


def _end_of_row_that_is_gone(elements: Sequence[Element], at: int, end: int) -> int:
    """Behind the words that tell that a whole row is not there, which alone stand behind it; 0 where they do not."""
    is_row = at > 0 and elements[at - 1].kind in ROW_KINDS and (at == 1 or elements[at - 2].kind == "end")
    end = at + 1 if elements[at].plain in GONE else end
    ends = end == len(elements) or elements[end].kind == "end"
    return end if is_row and end > at and ends else 0


def _end(elements: Sequence[Element], at: int) -> int:
    """Behind the words of hiding that begin here and end at a mark; `at` itself where there are none."""
    if elements[at].kind == "note":
        end, told = at + 1, elements[at].inside
    else:
        end = next((end for end in range(at, len(elements)) if elements[end].kind in _MARKS), len(elements))
        told = tuple(elements[at:end])
    at_mark = end == len(elements) or elements[end].kind in (*_MARKS, "and")
    in_brackets = elements[at].kind == "note"
    return end if at_mark and told and _tells_of_hiding(told, in_brackets=in_brackets) else at


def _tells_of_hiding(told: Sequence[Element], *, in_brackets: bool) -> bool:
    of_hiding = told[0].plain.startswith(HIDDEN) or any(piece.plain in FACES for piece in told)
    if of_hiding and in_brackets and not any(piece.is_large for piece in told):
        return True  # `(hat over face)`, `[hidden by hat]`
    hides = any(piece.plain.startswith(HIDDEN) for piece in told if piece.kind == "word")
    return hides and all(_may_tell(piece) for piece in told)


def _may_tell(piece: Element) -> bool:
    plain = piece.plain
    tells_more = plain in FACES or plain in PARTLY or plain in ARTICLES or plain in CARDINALS or plain in NEGATIONS
    return (plain.startswith(HIDDEN) and piece.kind == "word") or tells_more or piece.kind == "verb"


def _unseen(told: Sequence[Element], *, behind: bool) -> Iterator[Element]:
    """`unknown` and a note for each who is told, or one `unseen`. `behind`: whether more stands before."""
    first, last = told[0], told[-1]
    pieces = first.inside or told
    words = first.text if first.kind == "note" else " ".join(piece.text for piece in told)
    is_doubtful = behind and first.kind != "note" and any(piece.plain in FACES | PARTLY for piece in pieces)
    whole = replace(first, text=words, end=last.end, inside=())
    if is_doubtful:
        yield replace(whole, kind="unseen")
        return
    number = next((CARDINALS[piece.plain] for piece in pieces if piece.plain in CARDINALS), 1)
    for at in range(number):
        if at:
            yield Element("comma", ",", last.end, last.end)
        yield Element("unknown", "?", first.start, first.start)
        yield replace(whole, kind="note")
