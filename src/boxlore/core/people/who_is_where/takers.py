"""Whoever took the picture, told among those who are in it: `Anna and Ruth, photographed by Ernest Vale`.

    taker = taken by somebody            ; photographed by …   taken by …   photo by …
          / picture ":" somebody            ; Photo: …   Photographer: …   Foto: …
          / somebody took [picture]         ; Joe took it   Jaan pildistas
          / took somebody                   ; pildistas Jaan   снимал Иван   zdjęcie zrobił Jan

It stands between two marks or in brackets, or behind those who are in it. Somebody is a name, or kin of the teller's.
Where the word for `by` is one for `of` too (`Foto von Karl`, `photo de Jean`), and nothing else says who did it, it is
asked. Common practice, from memory; no source.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field

from boxlore.core.people.firms import is_firm
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_WORDS, TITLES
from boxlore.core.people.who_is_where import takers_table as table
from boxlore.core.people.who_is_where.item_words import begins_person
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.people.who_is_where.small_words_table import ARTICLES, DENY, NOT_IN_IT, OF
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.people.who_is_where.written_out import Placed

_IT = frozenset("it this one es dies das la le lo l' det den seda sen ego его это to".split())
_BY = frozenset("by durch par por pelo pela da dal dalla door przez".split())
_BY_OR_OF = frozenset("von vom de du del di do av af od van".split())
_MARKS = ("comma", "end", "dash", "colon")
_MOST_SMALL_WORDS = 4


@dataclass(slots=True)
class Takers:
    """What is left of the words, who surely took the picture, and who may be in it or have taken it."""

    left: list[Element] = field(default_factory=list)
    people: list[Placed] = field(default_factory=list)
    doubted: list[Placed] = field(default_factory=list)


def without_takers(elements: Sequence[Element], text: str, known: KnownNames) -> Takers:
    """The elements without those that tell who took the picture."""
    found = Takers()
    at = 0
    while at < len(elements):
        end = next((n for n in range(at, len(elements)) if _parts(elements, n, at)), len(elements))
        if found.people and _says_not_in_it(elements[at:end]):
            at = end + 1
            continue  # `Una took it, so she is not in it`
        part = [piece for piece in elements[at:end] if not _is_note_of_a_taker(piece, text, known, found)]
        heads = part and end < len(elements) and elements[end].kind == "colon" and _is_picture(part)
        if heads:
            end = next((n for n in range(end + 1, len(elements)) if elements[n].kind in _MARKS), len(elements))
            behind = elements[at + len(part) + 1 : end]
            if [piece.kind for piece in behind] == ["unknown"]:
                at = end + 1
                continue  # `Foto: unbekannt`
            taker = _whole_name(behind, text, known)
        else:
            behind, taker = _left_and_taker(part, text, known, found)
        if taker:
            found.people.append(Placed(taker, 0))
        if heads and not taker:
            found.left += elements[at:end]
        elif not heads:
            found.left += behind
        if end < len(elements) and (not taker or (behind and not heads)):
            found.left.append(elements[end])
        at = end + 1
    while found.people and found.left and found.left[-1].kind in _MARKS:
        found.left.pop()
    return found


def _parts(elements: Sequence[Element], at: int, begins: int) -> bool:
    """Whether a mark stands here, or `so` before a verb: `Dad took it so it's just Mum`."""
    goes_on = at > begins and elements[at].plain == "so" and at + 1 < len(elements) and elements[at + 1].kind == "verb"
    return elements[at].kind in _MARKS or goes_on


def _says_not_in_it(part: Sequence[Element]) -> bool:
    told = {word for piece in part for word in piece.plain.split()}
    is_short = 0 < len(part) < 8 and not any(piece.is_large or piece.kind == "note" for piece in part)
    return is_short and not told.isdisjoint(DENY | NOT_IN_IT)


def _is_note_of_a_taker(piece: Element, text: str, known: KnownNames, found: Takers) -> bool:
    if piece.kind != "note" or not piece.inside:
        return False
    inside = without_takers(piece.inside, text, known)
    if inside.people and not inside.left:
        found.people += inside.people
        return True
    return False


def _is_picture(part: Sequence[Element]) -> bool:
    """`Photo`, `The photographer`, `Photo by`, before a colon."""
    told = [piece for piece in part if piece.plain not in ARTICLES]
    by = len(told) > 1 and told[-1].plain in _BY | _BY_OR_OF and told[0].plain in table.TAKEN | table.PICTURE
    return (len(told) == 1 and told[0].plain in table.PICTURE | table.TAKER) or (by and len(told) == 2)


def _left_and_taker(
    part: Sequence[Element], text: str, known: KnownNames, found: Takers
) -> tuple[Sequence[Element], str]:
    """What of a part is no word of a taker, and the taker; all of it, and nobody, where none is told."""
    if any(piece.plain in DENY for piece in part):
        return part, ""
    led = int(bool(part) and part[0].plain in ARTICLES)
    if part[led : led + 1] and part[led].plain in table.TAKER:
        if [piece.kind for piece in part[led + 1 :]] == ["unknown"]:
            return (), ""  # `Photographer unknown`
        if not led and (name := _whole_name(part[1:], text, known)):
            asks = f"Is “{name}” in the picture, or was it taken by them?"
            found.doubted.append(Placed(name, 0, note=part[0].text, asks=asks, is_person=False))
            return (), ""  # `Photographer Ernest Vale`
    shows = [piece.plain for piece in part if piece.plain not in ARTICLES][:2]
    if any(piece.plain in table.HANGS_ON for piece in part) and any(piece.plain in table.PICTURE for piece in part[:2]):
        return part, ""  # `a photo of Len on the wall`, which is in the picture
    if shows[1:] == ["of"] and shows[0] in table.PICTURE:  # `A photo of Anna and Ruth`
        part = part[next(at for at, piece in enumerate(part) if piece.plain == "of") + 1 :]
        by = next((at for at, piece in enumerate(part) if at and piece.plain == "by"), len(part))
        if name := _whole_name(part[by + 1 :], text, known):
            return part[:by], name
    if len(part) > led + 2 and part[led].plain in table.TAKER and part[led + 1].kind == "verb":
        name = _whole_name(part[led + 2 :], text, known)  # `The photographer was Ernest Vale`
        return ((), name) if name else (part, "")
    for at, piece in enumerate(part[:-1]):
        taken, near = piece.plain in table.TAKEN, part[at + 1]
        behind = _behind_by(part[at + 1 :], taken=taken)
        if (taken or piece.plain in table.PICTURE) and (name := _name(behind, text, known)):
            return _before(part[:at]), name
        if piece.plain in table.PICTURE and near.plain in _BY_OR_OF and not at:
            name = _whole_name(part[2:], text, known)
            if name:
                asks = f"Is “{name}” in the picture, or was it taken by them?"
                found.doubted.append(Placed(name, 0, note=f"{piece.text} {near.text}", asks=asks, is_person=False))
                return (), ""
    name, took = _has_the_picture(part, text, known)
    if name and took:
        return (), name
    if name:
        asks = f"Is “{name}” in the picture, or was it taken by them?"
        said = text[part[0].start : part[-1].end].removeprefix(name).strip()
        found.doubted.append(Placed(name, 0, note=said, asks=asks, is_person=False))
        return (), ""
    return _took(part, text, known)


def _behind_by(part: Sequence[Element], *, taken: bool) -> Sequence[Element]:
    """What stands behind `by`: it follows at once, or behind where and when, written with a small word (`taken at Piha
    by Joe`)."""
    by = _BY | _BY_OR_OF if taken else _BY
    at = next((at for at, piece in enumerate(part[: _MOST_SMALL_WORDS + 1]) if piece.plain in by), len(part))
    is_near = at == 0 or (taken and at < len(part) and part[0].text.islower() and part[0].plain not in OF)
    return part[at + 1 :] if is_near else ()


def _took(part: Sequence[Element], text: str, known: KnownNames) -> tuple[Sequence[Element], str]:
    """`Joe took it`, `Jaan pildistas`, `pildistas Jaan`, `zdjęcie zrobił Jan`."""
    at = next((at for at, piece in enumerate(part) if piece.plain in table.TOOK and not (piece.is_large and at)), -1)
    if at < 0:
        return part, ""
    before, behind = part[:at], part[at + 1 :]
    tells_picture = part[at].plain in table.TOOK_ALONE or any(
        piece.plain in table.PICTURE | _IT for piece in (*before, *behind)
    )
    says_more = [piece for piece in behind if piece.plain not in table.PICTURE]
    small = len(behind) <= _MOST_SMALL_WORDS and not any(piece.is_large for piece in says_more)
    if tells_picture and small and (name := _whole_name(before, text, known)):
        return (), name
    if tells_picture and all(piece.plain in table.PICTURE | ARTICLES for piece in before):
        return ((), name) if (name := _name(behind, text, known)) else (part, "")
    return part, ""


def _has_the_picture(part: Sequence[Element], text: str, known: KnownNames) -> tuple[str, bool]:
    """Who is told, at the beginning, to do something with the picture, and whether surely to have taken it: `Karl hat
    das Foto gemacht`; but not `Karl mit dem Foto`, `Karl auf dem Foto`."""
    part = [piece for at, piece in enumerate(part) if not (at and piece.kind == "note")]  # `Mari (Mimmi) Tamm`
    first = next((at for at, piece in enumerate(part) if at and not piece.is_large), len(part))
    while first + 1 < len(part) and token_of(part[first].text).is_particle:
        first = next((at for at in range(first + 1, len(part)) if not part[at].is_large), len(part))
    said = part[first:]
    at = next((at for at, piece in enumerate(said) if piece.plain in table.PICTURE), 0)
    before = [piece for piece in said[:at] if piece.plain not in ARTICLES or piece.plain in _PLACES]
    if not before or len(said) > _MOST_SMALL_WORDS + 1:
        return "", False
    is_clause = all(piece.text.islower() or piece is said[at] for piece in said)
    is_clause = is_clause and not any(piece.kind in ("unsure", "unknown") for piece in said)
    is_object = is_clause and not any(piece.kind == "with" or piece.plain in _PLACES for piece in before)
    name = _whole_name(part[:first], text, known) if is_object else ""
    return name, any(piece.plain in _TOOK for piece in said)


_TOOK = table.TAKEN | table.TOOK


_PLACES = frozenset("on in at auf im sur dans en na no em nel nella sul sulla pa op i w we на в во of von from".split())
"""Small words before a picture in which somebody is, or of which something is said."""


def _before(part: Sequence[Element]) -> Sequence[Element]:
    """Those in the picture, told before who took it; nobody where only the picture is told (`The photo was`)."""
    small = all(
        piece.kind == "verb"
        or piece.plain in table.PICTURE | _IT | ARTICLES
        or piece.plain in ("was", "wurde", "on", "oli")
        for piece in part
    )
    return () if small else part


def _whole_name(told: Sequence[Element], text: str, known: KnownNames) -> str:
    """The name that all the words are."""
    name = _name(told, text, known)
    return name if name and text[told[0].start : told[-1].end].endswith(name) else ""


def _name(told: Sequence[Element], text: str, known: KnownNames) -> str:
    """The name, or the teller's own kin, that the words begin with; empty where more who are large follow."""
    end = 0
    while end < len(told) and _may_be_named(told[end], led=end > 0):
        end += 1
    behind = told[end:]
    joins = (at for at, piece in enumerate(behind, 1) if piece.kind in ("with", "and"))
    if not end or any(begins_person(behind[at:]) and _names(behind[at : at + 3]) for at in joins):
        return ""
    own = int(told[0].kind == "my" and told[end - 1].is_large)  # `my uncle Joe` is Uncle Joe
    name = text[told[min(own, end - 1)].start : told[end - 1].end]
    parts = read_name(name, known)
    is_name = bool(parts.given or parts.family or parts.nickname) and told[end - 1].is_large
    return name if own_relation(name) or is_name or is_firm(name) else ""


def _names(told: Sequence[Element]) -> bool:
    """Whether a given name, a title or kin is told: not in `with his Box Brownie`."""
    return any(token_of(piece.text).is_given or piece.plain in KIN_WORDS or piece.plain in TITLES for piece in told)


def _may_be_named(piece: Element, *, led: bool) -> bool:
    if piece.kind in ("my", "me"):
        return True
    is_kin = piece.plain in KIN_WORDS or piece.plain in TITLES
    return piece.kind in ("word", "left", "right") and (
        piece.is_large or is_kin or (led and token_of(piece.text).is_particle)
    )
