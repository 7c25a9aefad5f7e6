"""A date told of a birth or a death among other words: “He died in 1971, this was ten years before that at least”.

It is not the picture's, so it is no choice. What may be meant is another date in the words; else the year that lies so
many years before or after it, or a time up to a death, or from a birth on. Where a word leads it that says when (“the
year before she died in 1971”), the grammar has it.
"""

import re
from typing import NamedTuple

from boxlore.core.dates.lexer import Token

_BORN = (
    r"(?i:born|geboren|nacid[oa]|nació|nascid[oa]|nasceu|nacque|född|født|föddes|sündinud|sündis|sündi|syntynyt|syntyi"
    r"|urodzon[ya]|urodziła? się|narozena?|narodila? se|родил(?:ся|ась)|dzim(?:is|usi)|gim(?:ęs|usi|ė)|született)"
    r"|née?|nat[oa]"
)
_DIED = (
    r"(?i:killed|drowned|gefallen|gesneuveld|hukkus|langes|kaatui|погиб(?:ла)?|poległ|zginął|padl|"
    r"died|passed away|gestorben|verstorben|starb|décédée?|mourut|murió|falleció|fallecid[oa]|morì|morreu|faleceu"
    r"|falecid[oa]|overleden|overleed|stierf|døde|død|död|avled|avliden|kuoli|kuollut|suri|surnud|умер(?:ла)?"
    r"|скончал(?:ся|ась)|zmarła?|umarła?|nomira|mir(?:is|usi)|mirė|miręs|mirusi|zemřela?|meghalt)|morte?|mort[oa]"
)
_TURN = re.compile(rf"\b(?:(?P<born>{_BORN})|(?P<died>{_DIED}))\b")
"""Words for a birth and a death; those that are a name too are written small (“Mort”, “Nata”)."""

_DATE = frozenset(("year", "month", "day", "ordinal", "dates", "short", "feast", "season"))
_BETWEEN = frozenset(("noise", "about", "from"))
_YEAR = frozenset(("year", "dates", "short"))
_LEADING = frozenset("when since until at_latest at_earliest unit season feast".split())
_AGO = frozenset(("today",))
_UNIT = frozenset(("unit",))
_COUNT = frozenset(("day",))
_BEFORE, _AFTER = frozenset(("before", "before_behind")), frozenset(("after", "after_behind"))
_COMMA, _YEARS = frozenset(("comma",)), frozenset(("year", "years"))


class OfALife(NamedTuple):
    """The tokens that tell the date of a birth or a death, `first` to before `last`, and its `side`: what a picture of
    the person may be is before a death (-1) or after a birth (1)."""

    first: int
    last: int
    side: int


def of_a_life(tokens: list[Token], words: str) -> OfALife | None:
    """The date that stands beside a word for a birth or a death, with its year; None where none does."""
    turn = _TURN.search(words)
    if turn is None:
        return None
    side = 1 if turn["born"] else -1
    behind = next((at for at, token in enumerate(tokens) if token.start >= turn.end()), len(tokens))
    before = next((at for at, token in enumerate(tokens) if token.end > turn.start()), len(tokens))
    led = before
    while led and not tokens[led - 1].is_any(_COMMA):
        led -= 1
    lead = tokens[led:before]
    counted = any(lead[at - 1].is_any(_COUNT) and lead[at].is_any(_UNIT) for at in range(1, len(lead)))
    if any(token.is_any(_LEADING) for token in lead) and not counted:
        return None
    side = _side(lead) or side
    first = last = behind
    while last < len(tokens) and tokens[last].is_any(_DATE | _BETWEEN) and not tokens[last].is_any(_COMMA):
        last += 1
    if not any(token.is_any(_YEAR) for token in tokens[first:last]):
        last = first = before  # `1971 gestorben`
        while first and tokens[first - 1].is_any(_DATE | _BETWEEN) and not tokens[first - 1].is_any(_COMMA):
            first -= 1
    return OfALife(first, last, side) if any(token.is_any(_YEAR) for token in tokens[first:last]) else None


def choices_beside(life: OfALife, date: str, tokens: list[Token]) -> list[str]:
    """What may be meant where the words tell no other date than that of the birth or the death: so many years from it,
    to the year or at least; else a time up to it or from it on, and for a birth, of which there are pictures too, the
    date itself."""
    rest = [*tokens[: life.first], *tokens[life.last :]]
    counts = [at for at, token in enumerate(rest) if token.is_any(_COUNT)]
    if len(counts) == 1 and date[:4].isdigit():  # nothing is counted from “born in 194?”
        (at,) = counts
        units = [sense.value for token in rest[at + 1 : at + 2] for sense in token.senses if sense.kind == "unit"]
        beside = _side(rest)
        side = beside or life.side
        year = f"{int(date[:4]) + side * _number(rest[at]):04d}"
        if life.side > 0 and not beside and (not units or units[0] in _YEARS):
            return [f"{year}~"]  # “born 1912, about six here”
        if units and units[0] in _YEARS and not any(token.is_any(_AGO) for token in rest):
            return [f"{year}~", f"[..{year}]" if side < 0 else f"[{year}..]"]
    return [f"[..{date}]"] if life.side < 0 else [f"[{date}..]", date]


def age_in_words(life: OfALife, others: list[Token], words: str, born: tuple[str, ...]) -> str:
    """About the year in which somebody is as old as a number says that could be a short year too: “born in 1908, and
    this is her at about forty”; empty where it is in figures, or for a death."""
    if life.side < 0 or len(others) != 1 or not born or not born[0][:4].isdigit():
        return ""
    (other,) = others
    years = next((sense.value for sense in other.senses if sense.kind == "short"), None)
    told_in_words = not any(letter.isdigit() for letter in words[other.start : other.end])
    return f"{int(born[0][:4]) + int(str(years)):04d}~" if years is not None and told_in_words else ""


def _number(token: Token) -> int:
    return next(int(sense.value[0]) for sense in token.senses if sense.kind == "day")  # type: ignore[index]


def _side(tokens: list[Token]) -> int:
    for token in tokens:
        if token.is_any(_BEFORE):
            return -1
        if token.is_any(_AFTER):
            return 1
    return 0
