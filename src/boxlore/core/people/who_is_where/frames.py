"""How sure somebody is of a name, told in a frame of small words before it: `I think that it is Tom`.

    truth   = {small word} word that it is so {small word}    ; Actually it's …   which says nothing more
    doubt   = {small word} word of doubt {small word}        ; кажется, это …    ma arvan, et see on …    I'd say it's …
    further = ["but" / "or"] doubt somebody                   ; , but it could be his brother Alf: or his brother Alf
            / ("or") [word of doubt] "not"                     ; Hilda, or maybe not: Hilda, in doubt
    instead = said ("but" / mark) {small word} somebody        ; we always said it was Vera, but it's actually Hettie
    said    = words with one of saying or thinking, that name somebody

A frame begins where a part does, all its words are small ones of these tables (`frames_table`), and somebody follows
at once. It becomes the doubt of whoever follows. What was said or thought before becomes a note of whoever is told
instead: those named in it ask (`surely_a_name.told_in_remarks`). Where a mark alone parts the two, a word that says
`really`, or that it was thought once, is needed.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.who_is_where.frames_table import (
    BE_AT_THE_END,
    LEAD,
    PERHAPS,
    REALLY,
    SAID,
    THINKING,
    THOUGHT_ONCE,
)
from boxlore.core.people.who_is_where.item_words import begins_person
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.small_words_table import BUT, DENY
from boxlore.core.people.who_is_where.tokens import PLACES, Element, note_over, over
from boxlore.core.people.who_is_where.what_is_not_known import says_not_known

_MARKS = ("comma", "end", "dash", "colon")
_JOINTS = (*_MARKS, "and", "or", *PLACES)
_ENDS = (*_MARKS, "and", "with", "note", *PLACES)
_LONGEST = 10


def with_frames(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, each frame as one element of doubt, and what was thought before as a note."""
    kept: list[Element] = []
    waiting: Element | None = None
    at = 0
    while at < len(elements):
        element = elements[at]
        if waiting is not None and element.kind in _ENDS and kept and kept[-1].kind == "word":
            kept.append(waiting)
            waiting = None
        begins = at == 0 or elements[at - 1].kind in _JOINTS or elements[at - 1].plain in BUT
        if begins and waiting is None and (instead := _instead(elements, at)):
            but, end = instead
            waiting = note_over(elements[at:but], text)
            doubts = [piece for piece in elements[but:end] if piece.kind == "unsure" or _says_doubt(piece)]
            kept += [replace(doubts[0], kind="unsure")] if doubts else []
            at = end
        elif end := _end_of_or_not(elements, at):
            kept.append(replace(over(element, elements[at:end], text), kind="unsure"))
            at = end
        elif end := _end_of_truth(elements, at):
            at = end
        elif begins and (end := _end_of_doubt(elements, at)):
            kept += _doubt(elements[at:end], kept, text)
            at = end
            if _is_closed(elements, at):
                at = _closed(kept, elements, at)
        else:
            kept.append(element)
            at += 1
    return kept if waiting is None else [*kept, waiting]


def _doubt(frame: Sequence[Element], kept: list[Element], text: str) -> list[Element]:
    """The frame as one element: the doubt, or `or` where it stands behind `but` or `or`."""
    told = next(piece for piece in frame if _is_doubt(piece))
    before = [piece for piece in kept[:-1] if piece.kind != "comma"]
    goes_on = bool(before) and (kept[-1].kind == "or" or kept[-1].plain in BUT) and before[-1].kind != "unknown"
    if goes_on:
        join = kept.pop()
        return [replace(over(join, [join, *frame], text), kind="or")]
    return [replace(told, kind="unsure", start=frame[0].start, end=frame[-1].end)]


def _end_of_truth(elements: Sequence[Element], at: int) -> int:
    """Behind `Actually it's` or `In fact, it is` at the beginning of a text, before somebody; 0 for all else."""
    if at:
        return 0
    frames = (_is_of_frame(piece, first=not n) or (n > 0 and piece.kind == "comma") for n, piece in enumerate(elements))
    end = next((n for n, is_frame in enumerate(frames) if not is_frame), len(elements))
    words = {word for piece in elements[:end] for word in piece.plain.split()}
    says = not REALLY.isdisjoint(words) and not any(map(_is_doubt, elements[:end]))
    return end if says and _is_somebody(elements[end:]) else 0


def _end_of_doubt(elements: Sequence[Element], at: int) -> int:
    """Behind the frame of doubt that begins here; 0 where none does, or where one word alone tells the doubt."""
    if at and elements[at].plain in BUT and elements[at - 1].kind in _MARKS:
        return 0  # the frame is behind it
    end, doubts, opens = at, False, at == 0 or elements[at - 1].kind == "end"
    if opens and elements[at].kind == "unknown" and says_not_known(elements[at]):
        end = at + 1  # `не знаю, кажется, …`
    begins = end
    while end < len(elements) and end - at < _LONGEST:
        piece = elements[end]
        if piece.kind == "comma":
            that = elements[end + 1 : end + 2]
            if end == begins and end == at:
                break
            led = opens or (bool(that) and that[0].plain in _THAT)
            if not led:
                break
        elif piece.plain in BUT and end > at and begins > at and not doubts:
            pass  # `not sure, but I think`
        elif not _is_of_frame(piece, first=end == begins):
            break
        doubts = doubts or _is_doubt(piece)
        end += 1
    while end > at and elements[end - 1].text.lower() in _MAY_BE_OF_THE_NAME and elements[end - 1].kind == "word":
        end -= 1
    frame = elements[at:end]
    alone = [piece for piece in frame if piece.kind != "comma"]
    leads = at > 1 and (elements[at - 1].kind == "or" or elements[at - 1].plain in BUT)  # `but it could be Alf`
    is_framed = leads or len(frame) > 1 or (alone[:1] != [] and alone[0].kind != "unsure")
    return end if any(map(_is_doubt, frame)) and is_framed and _is_somebody(elements[end:]) else 0


_THAT = frozenset("that dass et que che dat at att etta что ze ka kad hogy".split())
_MAY_BE_OF_THE_NAME = ("a", "o", "la", "le", "les", "der", "die", "the", "il", "lo", "min", "mi", "ma", "na", "se")
"""Words of a frame that are an article, or say whose, where they stand at its end."""


def _is_somebody(further: Sequence[Element]) -> bool:
    return bool(further) and (begins_person(further) or (further[0].is_large and further[0].kind == "word"))


def _is_of_frame(piece: Element, *, first: bool) -> bool:
    """Whether an element is a small word of a frame; at its beginning it may be written large."""
    if piece.kind in ("unsure", "verb"):
        return piece.kind == "unsure" or first or not piece.is_large
    if piece.is_large and not (first and not token_of(piece.text).is_given):
        return piece.text == "I"
    words = piece.plain.split()
    return all(word in LEAD or word in THINKING or word in PERHAPS or word in REALLY for word in words)


def says_before(words: Sequence[Element]) -> bool:
    """Whether words tell what somebody said or thought: `We always said it was Vera`."""
    return any(not SAID.isdisjoint(piece.plain.split()) for piece in words)


def _says_doubt(piece: Element) -> bool:
    return piece.plain in PERHAPS or piece.plain in THINKING


def _is_doubt(piece: Element) -> bool:
    return piece.kind == "unsure" or _says_doubt(piece)


def _end_of_or_not(elements: Sequence[Element], at: int) -> int:
    """Behind `or maybe not`, which ends a part; 0 where it does not stand here."""
    if elements[at].kind != "or" or not at:
        return 0
    end = at + 1
    while end < len(elements) and _is_doubt(elements[end]):
        end += 1
    denies = end < len(elements) and elements[end].plain in DENY
    return end + 1 if denies and (end + 1 == len(elements) or elements[end + 1].kind in _MARKS) else 0


def _is_closed(elements: Sequence[Element], at: int) -> bool:
    """Whether `is` stands at the end of the part that begins here."""
    end = next((end for end in range(at, len(elements)) if elements[end].kind in _MARKS), len(elements))
    return end - at > 1 and elements[end - 1].plain in BE_AT_THE_END and not elements[end - 1].is_large


def _closed(kept: list[Element], elements: Sequence[Element], at: int) -> int:
    """Take the part without the `is` at its end."""
    end = next((end for end in range(at, len(elements)) if elements[end].kind in _MARKS), len(elements))
    kept += elements[at : end - 1]
    return end


def _instead(elements: Sequence[Element], at: int) -> tuple[int, int] | None:
    """Where what was said before ends, and where whoever is told instead begins; None where nobody is told so."""
    if at and elements[at - 1].kind != "end":
        return None
    for but in range(at + 1, len(elements)):
        said = elements[at:but]
        is_but = elements[but].plain in BUT and not elements[but].is_large
        if not (is_but or elements[but].kind in _MARKS) or not _tells_what_was_said(said):
            continue
        end = but
        while end < len(elements) and (
            elements[end].kind in _MARKS
            or (elements[end].plain in BUT and not elements[end].is_large)
            or _is_of_frame(elements[end], first=elements[end - 1].kind in _MARKS)
        ):
            end += 1
        while end > but and elements[end - 1].text.lower() in _MAY_BE_OF_THE_NAME:
            end -= 1
        lead = elements[but:end]
        has_but = any(piece.plain in BUT for piece in lead)
        has_is = any(piece.kind in ("verb", "unsure") or piece.plain in LEAD for piece in lead)
        really = any(not REALLY.isdisjoint(piece.plain.split()) for piece in lead)
        once = any(not THOUGHT_ONCE.isdisjoint(piece.plain.split()) for piece in said)
        if has_is and (has_but or really or once) and _is_somebody(elements[end:]):
            return but, end
    return None


def _tells_what_was_said(said: Sequence[Element]) -> bool:
    """Whether the words tell what somebody said or thought, and name whom; a place told with them is of the paper."""
    says = says_before([piece for piece in said if not piece.is_large or piece is said[0]])
    at = next((at for at, piece in enumerate(said) if not SAID.isdisjoint(piece.plain.split())), 0)
    names = any(
        piece.kind == "word" and piece.is_large and n and (token_of(piece.text).is_given or relation(piece))
        for n, piece in enumerate(said)
    )
    opens = at and said[0].kind == "word" and token_of(said[0].text).is_given
    return says and (names or bool(opens))
