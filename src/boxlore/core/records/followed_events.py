"""What follows from an event by its date alone: the time before a birth, a silver wedding, a tenth anniversary.

The names of jubilees are common practice, no source.
"""

import re
from collections.abc import Iterator, Mapping
from datetime import MAXYEAR
from typing import NamedTuple

from boxlore.core.dates.lexer import lex
from boxlore.core.people.life_event_words import WAYS, WHITHER, whither

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

OURS = tuple(
    "our my unsere meine nos nuestras nostre nossas onze vores vår vårt meidän meie наша nasze mūsu mūsų naše".split()
)
FORMS_OF_OURS = tuple(
    frozenset(forms.split())
    for forms in (
        "our ours", "my", "unser unsere unserem unseren unserer unseres unsre unsrem unsren unsrer",
        "mein meine meinem meinen meiner meines", "mon ma mes", "nos notre", "mi mis mía", "mio mia mie miei",
        "meu minha meus minhas", "mijn", "min mit mitt mine mina", "minun", "minu mu",
        "мой моя моё моего моей моем моём моему моим мою", "mój moja moje mojego mojej mojemu moim moją",
        "mana manas manām manās manu", "mano", "můj moje mé mého mém moji mojí mou",
        "nuestra nuestras nuestro nuestros",
        "nostra nostre nostri nostro", "nossa nossas nosso nossos", "onze ons", "vores vort", "vår vårt våra våre",
        "meidän", "meie meil", "наш наша наше нашего нашей нашем нашему наши нашим нашими наших нашу",
        "nasz nasza nasze naszego naszej naszemu naszym naszymi naszych naszą", "mūsu mūsų",
        "naše našeho našem našemu naši našich našim našimi naší",
    )
)  # fmt: skip
"""The forms of each of these words, of which one tells another. “Vår” is the spring too, and tells nothing."""
_THEIRS = ("their", "ihre", "leur", "deres", "deras", "heidän", "nende", "их", "ich")
ANNIVERSARY = frozenset("anniversary jahrestag hochzeitstag aastapäev aastapäeval pulma-aastapäev".split())
_OF = "of von de di van af av".split()
_OF_A_WEDDING = ("wedding anniversary", "hochzeitstag", "anniversary", "pulma-aastapäev")
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
    if event.kind == "death" and event.people and _PLAIN.fullmatch(event.edtf):
        ways = tuple(way.format(name) for way in WAYS["funeral"] for name in event.people)
        yield Followed(f"the funeral, after {event.name}", f"{event.edtf}~", (), ways)
    if event.kind in WHITHER and any(_ordinals(told)) and (place := whither(event.name)):
        yield Followed(event.name, event.edtf, (), tuple(f"{way} {place}" for way in _THERE))
    if event.kind == "move" and any(way in told for way in _IN_THE_NEW_HOUSE) and any(_ordinals(told)):
        yield Followed(event.name, event.edtf, (), _IN_THE_NEW_HOUSE)
    if event.kind == "marriage" and (there := tuple(name for name in HONEYMOON if name in told)):
        whose = tuple(f"{owner} {name}" for name in there for owner in (OURS if event.is_own else _THEIRS))
        yield Followed(f"the honeymoon, after {event.name}", f"{event.edtf[:7]}~", (), (*there, *whose))
    owners = (*(OURS if event.is_own else ()), *(f"{name}'s" for name in event.people))
    is_wedding = event.kind == "marriage"
    for years, called in JUBILEES.items() if is_wedding else ():
        if (here := tuple(name for name in called if name in told)) and (day := _on(event.edtf, years)):
            sure = tuple(f"{owner} {name}" for owner in owners for name in here)
            sure += tuple(f"{name} {of} {owner}" for owner in event.people for name in here for of in _OF)
            theirs = tuple(f"{whose} {name}" for name in here for whose in _THEIRS)
            yield Followed(f"{years} years after {event.name}", day, sure, (*here, *theirs))
    if any(word in told for word in ANNIVERSARY):
        for nth, years in _ordinals(told):
            if day := _on(event.edtf, years):
                whose = tuple(f"{owner} {nth} {of}" for owner in owners for of in _OF_A_WEDDING) if is_wedding else ()
                sure = (f"{nth} anniversary of {event.name.casefold()}", *whose)
                yield Followed(f"{years} years after {event.name}", day, sure, ())


def _carried(event: Happened, told: str) -> str:
    """“Mum was expecting Linda”: all words up to the child's name, from where they begin; empty for other words. Of
    the narrator's own birth it may be “me”."""
    is_narrator = event.is_own and event.name.split(" ", 1)[0].casefold() not in OURS  # not “our Ruth's birth”
    for name in (*sorted(event.people, key=len, reverse=True), *(_ME if is_narrator else ())):
        for phrase in (way.format(name) for way in WAYS["carried"]):
            match = re.search(rf"(?<!\w){re.escape(phrase)}(?!\w)", told) if phrase in told else None
            if match and match.start() < _NEAR_BY:
                led = _LED.sub("", re.split(r"[,;.(]", told[: match.start()])[-1])
                return led[_behind_what_is_dated(led) :].lstrip() + phrase
    return ""


def _behind_what_is_dated(words: str) -> int:
    """Where the words end that say when it was, and are no part of what happened: “the May [I was expecting Helen]”."""
    dated = [token.end for token in lex(words) if token.is_any(_DATED)]
    return dated[-1] if dated else 0


_DATED = frozenset(("month", "season", "season_part", "feast", "weekday", "unit", "part"))


_ME = "me mich mir moi mí mim mij mig meg minua mind меня mani manęs mě".split()
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


def _ordinals(told: str) -> Iterator[tuple[str, int]]:
    for token in lex(told):
        for sense in token.senses:
            if sense.kind == "ordinal" and isinstance(sense.value, int) and sense.value > 0:
                yield told[token.start : token.end], sense.value


def _on(edtf: str, years: int) -> str:
    """The date so many years on; empty for one that is no plain day, month or year."""
    match = _PLAIN.fullmatch(edtf)
    if match is None or int(match[1]) + years > MAXYEAR:
        return ""
    day = "-02-28" if match[2] == "-02-29" and years % 4 else match[2]
    return f"{int(match[1]) + years:04d}{day}"
