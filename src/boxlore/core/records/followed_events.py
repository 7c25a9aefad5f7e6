"""What follows from an event by its date alone: the time before a birth, a funeral, the first Christmas in a house.

Weddings and what is counted from them are in `anniversaries`.
"""

import re
from collections.abc import Iterable, Iterator
from typing import NamedTuple

from boxlore.core.dates.event_question import as_named
from boxlore.core.dates.lexer import lex
from boxlore.core.people.life_event_words import LIVED, WAYS, WHITHER, whither
from boxlore.core.records.anniversaries import OURS, THEIRS, Told, kept


class Followed(NamedTuple):
    """What follows from an event: its name, its date as EDTF, the phrases that mean it alone, and those that may mean
    another one too."""

    name: str
    edtf: str
    sure: tuple[str, ...]
    perhaps: tuple[str, ...]


HONEYMOON = tuple(
    "honeymoon|wedding trip|hochzeitsreise|flitterwochen|voyage de noces|lune de miel|viaje de novios|luna de miel|"
    "viaggio di nozze|luna di miele|lua de mel|viagem de núpcias|huwelijksreis|wittebroodsweken|bryllupsrejse|"
    "bryllupsrejsen|bryllupsreise|bryllupsreisen|bryllupsreisa|bröllopsresa|bröllopsresan|häämatka|häämatkalla|"
    "häämatkan|pulmareis|pulmareisi|pulmareisil|mesinädalad|mesinädalatel|медовый месяц|свадебное путешествие|"
    "свадебном путешествии|podróż poślubna|podróży poślubnej|miesiąc miodowy|kāzu ceļojums|kāzu ceļojumā|medusmēnesis|"
    "medaus mėnuo|povestuvinė kelionė|svatební cesta|svatební cestě|líbánky|líbánkách|nászút|nászúton|"
    "mézeshetek".split("|")
)
"""The journey after a wedding: it is asked about with the month of the wedding."""

_PLAIN = re.compile(r"(\d{4})((?:-\d\d){0,2})")


class Happened(NamedTuple):
    """An event as its followers see it: kind, name and date as EDTF; how the words call whose it is; `is_own` that it
    is the narrator's."""

    kind: str
    name: str
    edtf: str
    people: frozenset[str]
    is_own: bool


def followed(event: Happened, words: str) -> Iterator[Followed]:
    """The time before a birth, the jubilees and anniversaries of an event that are named in the words, and a move as
    the begin of a time in a place (“our first Christmas in Leeds”)."""
    told = words.casefold().replace("’", "'")
    if event.kind == "birth" and (event.people or event.is_own) and _PLAIN.fullmatch(event.edtf):
        ways = tuple(way.format(name) for way in WAYS["unborn"] for name in event.people)
        yield Followed(event.name, f"[..{event.edtf}]", ways, ())
        if carried := _carried(event, told):
            yield Followed(f"the months before {event.name}", _months_before(event.edtf), (carried,), ())
    if event.kind == "birth" and _PLAIN.fullmatch(event.edtf) and any(word in told for word in _SCHOOL):
        ways = (
            *(_OWN_SCHOOL if event.is_own else ()),
            *(way.format(name) for way in _SCHOOL_OF for name in event.people),
        )
        yield Followed("starting school at about six", f"{int(event.edtf[:4]) + _SCHOOL_AGE:04d}~", (), tuple(ways))
        first = tuple(way.format(name) for way in _FIRST_DAY for name in event.people)
        own = tuple(f"{owner} {noun}" for owner in OURS for noun in _FIRST_DAYS) if event.is_own else ()
        years = (int(event.edtf[:4]) + age for age in (_SCHOOL_AGE - 1, _SCHOOL_AGE))
        yield Followed(FIRST_DAY_AT_SCHOOL, f"[{'..'.join(f'{year:04d}' for year in years)}]", (), (*first, *own))
    if event.kind == "death" and event.people and _PLAIN.fullmatch(event.edtf):
        ways = tuple(way.format(name) for way in WAYS["funeral"] for name in event.people)
        yield Followed(f"the funeral, after {event.name}", f"{event.edtf}~", (), ways)
    if event.kind in WHITHER and _has_ordinal(told) and (place := whither(event.name)):
        yield Followed(event.name, event.edtf, (), tuple(f"{way} {place}" for way in _THERE))
    if event.kind in WHITHER and _has_ordinal(told):
        yield Followed(event.name, event.edtf, (), tuple(way for way in _HERE if way in told))
    if event.kind in WHITHER and _PLAIN.fullmatch(event.edtf):
        forms = _forms_of_a_place(event.name, told)
        lived = tuple(way.format(form) for form in forms for way in LIVED if way.format(form) in told)
        yield Followed(f"the time from {as_named(event.name)} on", f"[{event.edtf}..]", (), lived)
    if event.kind == "move" and any(way in told for way in _IN_THE_NEW_HOUSE) and _has_ordinal(told):
        yield Followed(event.name, event.edtf, (), _IN_THE_NEW_HOUSE)
    if event.kind == "marriage" and (there := tuple(name for name in HONEYMOON if name in told)):
        whose = tuple(f"{owner} {name}" for name in there for owner in (OURS if event.is_own else THEIRS))
        yield Followed(f"the honeymoon, after {event.name}", f"{event.edtf[:7]}~", (), (*there, *whose))
    for day in kept(Told(told, event.people, event.name, event.is_own), event.edtf, event.kind):
        yield Followed(day.name, day.edtf, (day.words,) if day.is_sure else (), () if day.is_sure else (day.words,))


def _forms_of_a_place(name: str, told: str) -> list[str]:
    """The words of a phrase that begin as the last word of a move's name does: `turussa` of `Muutimme Turkuun`, and the
    whole place where it is named."""
    last = name.casefold().split()[-1]
    stem = last[: max(len(last) // 2, _SHORTEST_STEM)]
    return [place for place in (whither(name),) if place] + [
        word for word in _WORD.findall(told) if word.startswith(stem)
    ]


_SHORTEST_STEM = 3
_WORD = re.compile(r"[^\W\d_]+")


def _carried(event: Happened, told: str) -> str:
    """“Mum was expecting Linda”: all words up to the child's name, from where they begin; empty for other words. Of
    the narrator's own birth it may be “me”."""
    is_narrator = event.is_own and event.name.split(" ", 1)[0].casefold() not in OURS  # not “our Ruth's birth”
    for name in (*sorted(_with_article(event.people), key=len, reverse=True), *(_ME if is_narrator else ())):
        for phrase in (way.format(name) for way in WAYS["carried"]):
            match = re.search(rf"(?<!\w){re.escape(phrase)}(?!\w)", told) if phrase in told else None
            if match and match.start() < _NEAR_BY:
                led = _LED.sub("", re.split(r"[,;.(]", told[: match.start()])[-1])
                return led[_behind_what_is_dated(led) :].lstrip() + phrase
    return ""


def _with_article(people: Iterable[str]) -> set[str]:
    """`the twins` too."""
    return {form for name in people for form in (name, f"the {name}")}


def _behind_what_is_dated(words: str) -> int:
    """Where the words end that say when it was, and are no part of what happened: “the May [I was expecting Helen]”."""
    dated = [token.end for token in lex(words) if token.is_any(_DATED)]
    return dated[-1] if dated else 0


_DATED = frozenset(("month", "season", "season_part", "feast", "weekday", "unit", "part"))


_ME = "me mich mir moi mí mim mij mig meg minua mind меня mani manęs mě".split()
_HERE = tuple(
    "out here|over here|down here|up here|here|in the new country|in this country|"
    "in the colony|in the colonies|hier|hier draußen|hier drüben|im neuen land|ici|là-bas|aquí|acá|"
    "qui|quaggiù|aqui|cá|daarginds|her|herover|här|härborta|täällä|siin|siinmaal|здесь|тут|tutaj|šeit|čia|tady|zde|itt".split(
        "|"
    )
)
"""“Our first Christmas out here” is the first after a move or a voyage."""
_THERE = ("in", "here in", "over in", "en", "à", "a", "i", "w", "v")
"""“Our first Christmas in Leeds” is the first after the move there."""
_SCHOOL = "school schul école escuela colegio scuola escola skol koul kool школ szkoł mokykl škol".split()
_SCHOOL_AGE = 6
_OWN_SCHOOL = tuple(
    "i started school|i began school|i went to school|ich in die schule kam|ich eingeschult wurde|ma kooli läksin|"
    "ik naar school ging|jeg begyndte i skole|jeg begynte på skolen|jag började skolan|menin kouluun|"
    "я пошла в школу|я пошёл в школу|poszłam do szkoły|poszedłem do szkoły|empecé la escuela".split("|")
)
_SCHOOL_OF = tuple(
    "{} started school|{} began school|{} in die schule kam|{} eingeschult wurde|{} läks kooli|{} kooliminek|"
    "{} naar school ging|{} begyndte i skole|{} begynte på skolen|{} började skolan|{} meni kouluun|"
    "{} пошла в школу|{} пошёл в школу|{} poszła do szkoły|{} poszedł do szkoły".split("|")
)
"""Where nobody says when school began for somebody, it is asked about with the year in which they were about six
(common practice, no source)."""
FIRST_DAY_AT_SCHOOL = "starting school at five or six"
_FIRST_DAYS = tuple(
    "first day at school|first day of school|1st day at school|1st day of school|first school day|first week at school|"
    "first term at school|first year at school|first day at the school|first day in school|erster schultag|"
    "ersten schultag|einschulung|"
    "premier jour d'école|esimene koolipäev|esimesel koolipäeval|ensimmäinen koulupäivä|första skoldag|første skoledag|"
    "eerste schooldag|primer día de escuela|primo giorno di scuola".split("|")
)
_FIRST_DAY = tuple(f"{whose} {noun}" for noun in _FIRST_DAYS for whose in ("{}", "{}'s", "{}s")) + tuple(
    "{} starting school|{} starts school|{} started at school|{} beginning school|{} off to school".split("|")
)
"""The begin of school by the age at which it begins in English and other schools (common practice, no source)."""
_IN_THE_NEW_HOUSE = tuple(
    "in the new house|in our new house|in the new flat|in the new place|im neuen haus|in der neuen wohnung|"
    "dans la nouvelle maison|en la casa nueva|en la nueva casa|nella casa nuova|nella nuova casa|na casa nova|"
    "in het nieuwe huis|i det nye hus|i det nye huset|i nya huset|uudessa talossa|uudessa kodissa|"
    "uues majas|uues kodus|"
    "в новом доме|на новой квартире|w nowym domu|jaunajā mājā|naujuose namuose|v novém domě".split("|")
)
"""“Our first Christmas in the new house” is the first after a move."""
_NEAR_BY = 60
_LED = re.compile(
    r"^\W*(?:(?:when|while|als|cuando|quand|quando|da|toen|kun|kui|когда|kiedy|kad|kai|když|before|after) )?"
)
"""What leads such words and is none of them."""


def _months_before(edtf: str) -> str:
    """The nine months before a birth, by the precision that it has."""
    year, *finer = (int(part) for part in edtf.split("-"))
    if not finer:
        return f"{year - 1:04d}/{year:04d}"
    count = year * 12 + finer[0] - 1 - _MONTHS_OF_CARRYING
    return f"{count // 12:04d}-{count % 12 + 1:02d}/{edtf[:7]}"


_MONTHS_OF_CARRYING = 9


def _has_ordinal(told: str) -> bool:
    """Whether the how-manieth is told of anything (“our first Christmas”)."""
    ordinals = (sense.value for token in lex(told) for sense in token.senses if sense.kind == "ordinal")
    return any(isinstance(value, int) and value > 0 for value in ordinals)
