"""Ages as captions have them: “Greta and Peter, aged 7 and 4”, “Susan about two”, “Greta 7, Peter 4”.

Each number is the age of the person told before it, in order, and the picture was taken while all of them were so old.
Without a word of age it is asked: a number beside a name may be anything.
"""

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.asked_words import asked
from boxlore.core.dates.context import DateContext, NoSuchDate
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.relative import about_age, at_age, at_age_in, year_of_age
from boxlore.core.dates.tails import WITH

_AS = frozenset("as als comme como come som kuin jako kā kaip kui mint".split())
"""Words before what somebody is at an age (“Karen som konfirmand, 14 år”), in the languages."""

ME = frozenset("i me ich moi yo io eu ik jeg jag minä mina ma я ja es aš já én myself".split())
"""How the teller stands in a caption: “me, 17”."""

_ADDED = frozenset(("comma", "and", "dash", "noise", "was", "i", "infant", "small", "genitive"))
_OF_AGE = frozenset(("aged", "years_old"))
_ABOUT = frozenset(("about", "doubt", "about_behind"))
_WITH = WITH | frozenset("here hier ici aquí aqui här siin".split())
_CHILD_UNITS = frozenset(("day", "week", "month"))
_DATED = frozenset("day ordinal year dates short years month season feast decade decade_digits unit".split())
"""What no words behind the ages may be."""


def ages_told(tokens: list[Token], text: str, context: DateContext) -> str | None:
    """The EDTF of the days on which all of them were so old; None where words tell no ages. Raises NoSuchDate where it
    must be asked."""
    lives: list[str] = []
    ages: list[tuple[int, str]] = []
    order = ""
    of_age = nearly = about = tail = False
    between = False  # words between one person and the age
    before = tokens[0]
    for token in tokens:
        kinds, led, before = token.kinds, before, token
        sense = next((sense for sense in token.senses if sense.kind == "day"), None)
        told = text[token.start : token.end].casefold()
        if tail:
            if kinds & _DATED:
                return None
            continue
        if token.senses[0].kind == "person" and ages and len(ages) == len(lives) and _is_with(led, text):
            tail = True  # “Jaan, 7 yrs, with Helmi”
        elif token.senses[0].kind == "person":
            lives.append(token.senses[0].value.born)  # type: ignore[attr-defined]  # a life, by its kind
            order += "p"
        elif told in ME and context.narrator:
            lives.append(context.narrator)
            order += "p"
        elif sense is not None:
            ages.append((sense.value[0], "nearly" if nearly else "about" if about else ""))  # type: ignore[index]
            nearly = about = False
            order += "n"
        elif unit := _unit(token):
            if not ages or ages[-1][1] or unit not in (*_CHILD_UNITS, "year"):
                return None
            of_age = of_age or unit == "year"
            ages[-1] = (ages[-1][0], unit if unit in _CHILD_UNITS else "")
        elif kinds & _ABOUT:
            nearly = nearly or token.senses[0].value == "nearly"
            about = True
        elif kinds & _OF_AGE:
            of_age = True
            if between and not ages and led.senses[0].kind != "comma":
                return None  # “Peter with Jane aged 3”
        elif kinds & _ADDED or told in _WITH:
            continue
        elif kinds == {"name"} and ages and len(ages) == len(lives) and _leads(led, text):
            tail = True  # “Linda, 4, with doll”
        elif (kinds == {"name"} or told in _AS) and order in ("", "p"):
            between = True  # “our Peter on the donkey, aged 3”
        else:
            return None
    count = len(lives)
    if between and not (of_age and count == 1):
        return None
    if not count or not all(lives) or len(ages) != count or order not in ("pn" * count, "p" * count + "n" * count):
        return None
    whole = together([_at(born, *age) for born, age in zip(lives, ages, strict=True)], text)
    if not of_age or tail or between:
        raise NoSuchDate(f"“{text}”: is {asked(whole, context)} meant?", (whole,))
    return whole


def _leads(token: Token, text: str) -> bool:
    """Whether what stands behind a token is no more of the ages: a comma, or a word for “with”."""
    return token.senses[0].kind == "comma" or _is_with(token, text)


def _is_with(token: Token, text: str) -> bool:
    return text[token.start : token.end].casefold() in _WITH


def _unit(token: Token) -> str:
    """The unit of a child's age: day, week or month; “year” for any other; empty for what is none."""
    sense = token.senses[0]
    return str(sense.value).removesuffix("s") if sense.kind == "unit" else ""


def _at(born: str, number: int, how: str) -> str:
    if how in _CHILD_UNITS:
        return at_age_in(born, how, number)
    return {"nearly": year_of_age, "about": about_age}.get(how, at_age)(born, number)


def together(dates: list[str], text: str) -> str:
    """The days that all have; the date itself where there is one. Raises NoSuchDate where they have none."""
    if len(dates) == 1:
        return dates[0]
    read = [standard.parsed(text) for text in dates]
    firsts = [edtf.earliest for edtf in read if edtf.earliest is not None]
    lasts = [edtf.latest for edtf in read if edtf.latest is not None]
    first, last = max(firsts), min(lasts)
    if first > last:
        raise NoSuchDate(f"“{text}”: these ages do not go together. Which is right?", tuple(dates))
    return f"[{first}..{last}]" if first < last else str(first)
