"""Ages told by tens: “Karen i tyverne”, “Emma, Mitte dreißig”, “la trentaine”, “thirty-something”.

Beside a name it is asked whether the age is meant, since a word for ten years of a life is mostly one for ten years of
the twentieth century too. “In her thirties” says whose they are, and is an age (`core.dates.ages`).
"""

from boxlore.core.dates.asked_words import listed
from boxlore.core.dates.context import DateContext, Life, NoSuchDate
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import ENGLISH
from boxlore.core.dates.parts_within import DECADE_PARTS
from boxlore.core.dates.relative import about_age, about_ages, in_years

_ADDED = frozenset(
    "noise about about_behind doubt at_years was when comma dash possessive from genitive unit years_old i to".split()
)
_ABOUT = frozenset(("about", "about_behind"))
_YEARS_OLD = frozenset(("years_old", "decades"))
_TENS = range(20, 100, 10)


def ask_of_tens(tokens: list[Token], text: str, context: DateContext) -> None:
    """Raises NoSuchDate with the question, where words tell a person and an age by tens and nothing else."""
    lives: list[Life] = []
    parts: list[str] = []
    tens: list[tuple[int, str, int]] = []
    for token in tokens:
        senses = {sense.kind: sense for sense in token.senses}
        part = senses["part"].value if "part" in senses else ""
        number = senses["day"].value if "day" in senses else None
        if token.senses[0].kind == "person":
            lives.append(token.senses[0].value)  # type: ignore[arg-type]  # a life, by its kind
        elif told := senses.get("tens") or senses.get("decade"):
            tens.append((int(str(told.value)), told.kind, told.languages))
        elif isinstance(number, tuple) and number[0] in _TENS:
            tens.append((number[0], "digits" if number[1] else "day", 0))
        elif isinstance(part, str) and part in DECADE_PARTS:
            parts.append(part)
        elif not senses.keys() & (_ADDED | _YEARS_OLD):
            return
    if len(lives) != 1 or len(tens) != 1 or len(parts) > 1 or not lives[0].born:
        return
    (decade, kind, languages), born = tens[0], lives[0].born
    is_about = any(token.is_any(_ABOUT) for token in tokens)
    if kind in ("day", "digits") and not (parts or is_about):
        return
    if kind != "tens" and any(token.senses[0].kind == "decades" for token in tokens):
        return  # “les années trente”
    if parts:
        begin, end = DECADE_PARTS[parts[0]]
        age, years = about_ages(born, decade + begin, decade + end), f"{1900 + decade + begin}~/{1900 + decade + end}~"
    elif is_about or any(token.is_any(_YEARS_OLD) for token in tokens):
        age, years = about_age(born, decade), f"19{decade // 10}X"
    else:
        age, years = in_years(born, decade), f"19{decade // 10}X"
    years = "" if kind in ("day", "tens") else f"19{decade}" if kind == "digits" else years
    in_order = (years, age) if languages == ENGLISH else (age, years)
    choices = tuple(filter(None, in_order))
    raise NoSuchDate(f"“{text}”: is {listed(choices, context)} meant?", choices)
