"""An answer that nobody is in the picture: `Nobody, just the house`, `It's only the shop`, `Ei kedagi, ainult maja`.

    answer = ["there is"] nobody {small word} {mark only thing} / ["it is"] only thing {"and" thing}

None of its words is a name, kin, or of people; a noun behind an article may be large (`nur das Haus`). It is one
question, of which `nobody` is the likely answer: nobody is made of it, and the words stay.
"""

from collections.abc import Sequence

from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.people.who_is_where.small_words_table import ARTICLES
from boxlore.core.people.who_is_where.tokens import PLACES, Element
from boxlore.core.people.who_is_where.what_is_not_known import KNOWING

_NOBODY = frozenset(
    "nobody noone niemand keiner niemanden kedagi mitte-keegi personne nadie nessuno ninguem ingen ingenting ketaan "
    "никого никто nikogo nikdo nikoho neviena neviens nieko nera-nieko senki enginn".split()
)
_NOT = frozenset("no not keine kein pas ningun ninguna nessuna nenhuma geen ingen inga".split())
_PEOPLE = frozenset(
    "people person persons leute menschen inimesi gens gente persone pessoas mensen mennesker manniskor".split()
)
_ONLY = frozenset(
    "just only merely nur bloss ainult vaid juste seulement solo solamente soltanto so apenas somente alleen slechts "
    "bara bare kun blot vain ainoastaan только лишь просто tylko jedynie jen pouze tikai vien tik tiktai csak".split()
)
_BEFORE = frozenset(
    "ei there it no ole pole es da hier ist il n'y y a non c'e nao ha er det der finns siella tam nav cia nera".split()
)
"""Small words before one for nobody."""

_LONGEST = 12


def tells_of_nobody(elements: Sequence[Element]) -> bool:
    """Whether the words tell that nobody is in the picture, or only what else is."""
    if not 0 < len(elements) < _LONGEST:
        return False
    told = [at for at, piece in enumerate(elements) if piece.plain in _NOBODY or _is_no_people(elements, at)]
    only = [at for at, piece in enumerate(elements) if piece.plain in _ONLY]
    first = (told or only or [len(elements)])[0]
    led = all(piece.kind == "verb" or piece.plain in _BEFORE for piece in elements[:first])
    of_things = bool(told) or len(elements) > only[0] + 1 if only else bool(told)
    return led and of_things and not any(_is_somebody(elements, at) for at in range(len(elements)))


def knows_nobody(elements: Sequence[Element]) -> bool:
    """Whether the words say that the teller knows nobody in it: `Ich kenne niemanden`, `No conozco a nadie`."""
    plains = {word for piece in elements for word in piece.plain.split()}
    knows = not (KNOWING.isdisjoint(plains) or (_NOBODY | _WHOEVER).isdisjoint(plains)) and len(elements) < _LONGEST
    told = any(piece.kind in (*PLACES, "unsure") or piece.is_large or piece.kind == "my" for piece in elements[1:])
    kin = any(bool(relation(piece)) or NOUNS.get(piece.plain) in ("one", "many") for piece in elements[1:])
    return knows and not (told or kin)


_WHOEVER = frozenset("anyone anybody keinen ketaan mind".split())
"""Words for anybody behind a verb with a `not`."""


def _is_no_people(elements: Sequence[Element], at: int) -> bool:
    """`no people`, `no one`, which is a number elsewhere."""
    if elements[at].kind == "number":
        return elements[at].plain == "one"
    behind = elements[at + 1 : at + 2]
    return elements[at].plain in _NOT and bool(behind) and (behind[0].plain in _PEOPLE or behind[0].plain == "one")


def _is_somebody(elements: Sequence[Element], at: int) -> bool:
    """Whether a word may be of somebody, or tells where one is."""
    piece, before = elements[at], elements[max(at - 1, 0)]
    if piece.plain in _PEOPLE or piece.plain in _NOBODY or _is_no_people(elements, at):
        return False
    if piece.kind in ("me", "my", "unknown", "unsure", "number", "note", *PLACES):
        return True
    is_noun = before.plain in ARTICLES
    if piece.is_large and at and not is_noun and piece.kind == "word":
        return True
    return bool(relation(piece)) or piece.plain in KIN_WORDS or NOUNS.get(piece.plain) in ("one", "many")
