"""What follows from an event by its date alone: the time before a birth, a silver wedding, a tenth anniversary.

The names of jubilees are common practice, no source.
"""

import re
from collections.abc import Collection, Iterator, Mapping
from dataclasses import replace
from datetime import MAXYEAR
from typing import TYPE_CHECKING, NamedTuple

from boxlore.core.dates.lexer import lex
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.life_event_words import WAYS

if TYPE_CHECKING:
    from boxlore.core.records.events import FamilyEvent

JUBILEES: Mapping[int, tuple[str, ...]] = {
    25: tuple(
        "silver wedding|silver wedding anniversary|silver anniversary|silberhochzeit|silberne hochzeit|noces d'argent|"
        "bodas de plata|nozze d'argento|bodas de prata|zilveren bruiloft|sølvbryllup|sølvbryllupet|silverbröllop|"
        "silverbröllopet|hopeahäät|hõbepulm|hõbepulmad|серебряная свадьба|srebrne wesele|srebrne gody|sudraba kāzas|"
        "sidabrinės vestuvės|stříbrná svatba".split("|")
    ),
    40: ("ruby wedding", "ruby wedding anniversary", "rubinhochzeit"),
    50: tuple(
        "golden wedding|golden wedding anniversary|golden anniversary|goldene hochzeit|noces d'or|bodas de oro|"
        "nozze d'oro|bodas de ouro|gouden bruiloft|guldbryllup|gullbryllup|guldbröllop|kultahäät|kuldpulm|kuldpulmad|"
        "золотая свадьба|złote gody|zelta kāzas|auksinės vestuvės|zlatá svatba".split("|")
    ),
    60: ("diamond wedding", "diamond wedding anniversary", "diamanthochzeit", "diamantene hochzeit", "teemantpulm"),
}
"""The years after a wedding → what that day is called."""


class Followed(NamedTuple):
    """What follows from an event, the phrases that mean it alone, and those that may mean another one too."""

    event: "FamilyEvent"
    sure: tuple[str, ...]
    perhaps: tuple[str, ...]


OURS = tuple(
    "our my unsere meine nos nuestras nostre nossas onze vores vår vårt meidän meie наша nasze mūsu mūsų naše".split()
)
ANNIVERSARY = frozenset("anniversary jahrestag hochzeitstag aastapäev aastapäeval pulma-aastapäev".split())
_OF_A_WEDDING = ("wedding anniversary", "hochzeitstag", "anniversary", "pulma-aastapäev")
_PLAIN = re.compile(r"(\d{4})((?:-\d\d){0,2})")


def followed(event: "FamilyEvent", words: str, names: Collection[str], *, is_own: bool) -> "Iterator[Followed]":
    """The time before a birth, and the jubilees and anniversaries of an event that are named in the words. `names` are
    those by which the words call whose it is; `is_own` that it is the narrator's."""
    if event.kind == "birth" and names and _PLAIN.fullmatch(event.edtf):
        before = replace(event, when=DateReading.from_edtf(f"[..{event.edtf}]"))
        yield Followed(before, tuple(way.format(name) for way in WAYS["unborn"] for name in names), ())
    owners = (*(OURS if is_own else ()), *(f"{name}'s" for name in names))
    told = words.casefold().replace("’", "'")
    is_wedding = event.kind == "marriage"
    for years, called in JUBILEES.items() if is_wedding else ():
        if (here := tuple(name for name in called if name in told)) and (
            day := _on(event, years, f"{years} years after {event.name}")
        ):
            yield Followed(day, tuple(f"{owner} {name}" for owner in owners for name in here), here)
    if any(word in told for word in ANNIVERSARY):
        for nth, years in _ordinals(told):
            day = _on(event, years, f"{years} years after {event.name}")
            if day is not None:
                whose = tuple(f"{owner} {nth} {of}" for owner in owners for of in _OF_A_WEDDING) if is_wedding else ()
                yield Followed(day, (f"{nth} anniversary of {event.name.casefold()}", *whose), ())


def _ordinals(told: str) -> Iterator[tuple[str, int]]:
    for token in lex(told):
        for sense in token.senses:
            if sense.kind == "ordinal" and isinstance(sense.value, int) and sense.value > 0:
                yield told[token.start : token.end], sense.value


def _on(event: "FamilyEvent", years: int, name: str) -> "FamilyEvent | None":
    """The event's day so many years on; nothing for a date that is no plain day, month or year."""
    match = _PLAIN.fullmatch(event.edtf)
    if match is None or int(match[1]) + years > MAXYEAR:
        return None
    day = "-02-28" if match[2] == "-02-29" and years % 4 else match[2]
    when = DateReading.from_edtf(f"{int(match[1]) + years:04d}{day}")
    return replace(event, names=(name,), when=when)
