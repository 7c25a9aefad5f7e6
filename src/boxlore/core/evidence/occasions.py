"""Clues of the occasions of a life: what a picture is of, tied to the birth, wedding or death of who keeps it.

What an occasion is by what its words mean (“Ivy's 21st birthday”, “the silver wedding of Ivy and Tom”) is read by
`leaning`, and lies a month either side of the day (`events.BESIDE`); what is kept at an age by custom (`customs_table`)
is likely. Who keeps it must be told: one person or one couple by name or by a word of kin, or the only person in the
picture.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.evidence.claims import Claim, after, dated, of_birth, of_death, weaker
from boxlore.core.evidence.customs_table import CUSTOMS, Custom
from boxlore.core.evidence.events import BESIDE
from boxlore.core.evidence.leaning import Lean, Leaning, pieces, pieces_of_names
from boxlore.core.evidence.weddings import Weddings, day_of
from boxlore.core.people.person import Person
from boxlore.core.statements import Sure

_HERS = re.compile(r"\b(?:her|his|their|seine[rsmn]?|ihre[rsmn]?|tema|nende)\b")
"""Of whom the words tell is somebody of somebody's, who is not named."""
MINE = frozenset(
    "my mine meine mein minu mu minun mon ma mi mia mio minha meu min mitt mijn moja moje mans mana mano můj".split()
)
_OURS = frozenset(
    "our unser unsere unserer meie notre nuestra vårt vores vår ons onze nostra nossa наш nasz mūsu mūsų naše".split()
)
_SMALL = frozenset("noise genitive possessive comma dash and i they was when doubt about day unit".split())
_THEN = re.compile(r"\|| (?:at|in|by|near|held|bei|im|auf|à|en|i|på|v|w|в) ")
"""What is said of an occasion behind one of these is of its place, its year and its weather."""


def clues_of_words(
    claim: Claim, day: str, words: str, leaning: Leaning, *, narrator: str, shown: Sequence[str], but: str = ""
) -> Iterator[Claim]:
    """The claim with the limits between a day and the life of who keeps what the words name."""
    occasion = " ".join(words.split())
    for lean in leaning.of(occasion, narrator=narrator, shown=shown, but=but):
        if lean.is_age and not lean.is_birthday:
            return  # `ages` has it
        if lean.is_birthday and not _says_whose(occasion, lean, leaning, narrator):
            return
        if lean.is_asked and (but or _HERS.search(occasion)):
            break  # whose it is nobody says: “their golden wedding” is of the picture's own couple, or of nobody
        is_the_event = bool(but) and lean.least == lean.most == 0
        yield from of_lean(claim, day, lean, beside=0 if is_the_event else BESIDE)
        return
    yield from customs_told(claim, day, occasion, leaning, narrator, shown)


def customs_told(
    claim: Claim, day: str, words: str, leaning: Leaning, narrator: str, shown: Sequence[str]
) -> Iterator[Claim]:
    """The claim with the limits of an occasion kept by custom, where words are that and whose it is, and nothing else
    (“My first day at school”)."""
    custom = _custom_in(words)
    if custom and (keepers := who_keeps(words, custom, leaning, narrator, shown)):
        yield from _kept(claim, day, custom, keepers, leaning.weddings)


def _says_whose(words: str, lean: Lean, leaning: Leaning, narrator: str) -> bool:
    """Whether the words name whose birthday it is, or say that it is hers, his or mine."""
    told = pieces(words)
    return bool(lean.person in leaning.named(words, told, narrator) or _HERS.search(" ".join(told)) or MINE & set(told))


def of_lean(claim: Claim, day: str, lean: Lean, *, beside: int = 0) -> Iterator[Claim]:
    """A claim with the limits of a lean, and one with the date that it comes to where a year is told."""
    least = lean.least - beside if lean.least is not None else None
    most = lean.most + beside if lean.most is not None else None
    sure = weaker(claim.sure, Sure.LIKELY) if lean.is_asked or beside else claim.sure
    yield replace(claim, sure=sure, limits=after(day, lean.on, least, most))
    if lean.known is not None:
        known = replace(claim, sure=weaker(sure, Sure.LIKELY), words=f"{claim.words} ({lean.on_words})")
        yield dated(known, day, lean.known, beside=beside)


def _custom_in(words: str) -> Custom | None:
    told = " ".join(pieces(words))
    if not _any_custom().search(told):
        return None
    return next(custom for pattern, custom in _patterns() if pattern.search(told))


@cache
def _any_custom() -> re.Pattern[str]:
    """What is searched first, once for all customs."""
    return re.compile("|".join(pattern.pattern for pattern, _ in _patterns()))


@cache
def _patterns() -> tuple[tuple[re.Pattern[str], Custom], ...]:
    return tuple(
        (re.compile(rf"\b(?:{'|'.join(' '.join(map(re.escape, pieces(name))) for name in custom.called)})\b"), custom)
        for custom in CUSTOMS
    )


def who_keeps(words: str, custom: Custom, leaning: Leaning, narrator: str, shown: Sequence[str]) -> list[Person]:
    """Whose the occasion is; nobody where the words name somebody who is not known, or it is not clear."""
    pattern = next(pattern for pattern, row in _patterns() if row is custom)
    parts = [" ".join(pieces(part)) for part in re.split(r"[,;()]", words)]
    before, _, behind = pattern.sub(" § ", " | ".join(parts), count=1).partition("§")
    told = f"{before.split('|')[-1]} {_THEN.split(behind)[0]}"
    named = list(leaning.named(told, pieces(told), narrator).values())
    known = pieces_of_names(named)
    left = " ".join(
        piece for piece in pieces(told) if len(piece) > 1 and not any(piece.startswith(part) for part in known)
    )
    kinds = [token.kinds for token in lex(nfc(left))]
    if any("name" in kind or not kind & _SMALL for kind in kinds) or (named and _HERS.search(told)):
        return []
    whose = MINE | _OURS if custom.life == "wedding" else MINE
    if not named and whose & set(pieces(left)) and (teller := leaning.person(narrator)):
        return [teller]
    if not named and len(shown) == 1 and custom.life != "death" and _HERS.search(told):
        only = leaning.person(shown[0])  # “her christening”; at “the christening” she may be a guest
        return [only] if only else []
    pictured = [person for person in named if person.id in shown]
    return pictured if len(named) > 1 and custom.life != "wedding" else named


def _kept(claim: Claim, day: str, custom: Custom, keepers: Sequence[Person], weddings: Weddings) -> Iterator[Claim]:
    names = " and ".join(person.name for person in keepers)
    if custom.life == "wedding":
        couples = {couple for person in keepers for couple in weddings.couples_of(person.id)}
        couples = {couple for couple in couples if {person.id for person in keepers} <= set(couple)}
        on = day_of(couples.pop()) if len(couples) == 1 else ""
    elif len(keepers) == 1:
        on = (of_birth if custom.life == "birth" else of_death)(keepers[0].id)
    else:
        on = ""
    if on:
        most = custom.most - 1 if custom.life == "birth" else custom.most
        words = f"{claim.words}: {names} was {custom.what} ({custom.source})"
        sure = weaker(claim.sure, Sure.LIKELY)
        yield replace(claim, words=words, sure=sure, limits=after(day, on, custom.least, most))


def is_an_occasion(words: str) -> bool:
    """Whether words name an occasion that is kept at an age, by custom."""
    custom = _custom_in(words)
    return custom is not None and custom.life == "birth"


def is_of_the_dead(words: str) -> bool:
    """Whether a picture is of a funeral or of the dead: whoever is in it need not have been alive."""
    custom = _custom_in(words)
    return custom is not None and custom.life == "death"
