"""Dates told by a stage of a life without its years: “when Ana was a baby”, “Grandfather was still alive”.

They are only ever asked about, with what the birth or the death of that person leaves: a baby is less than two years
old, one newborn less than two months, a small child from two to seven, a child at school from six to fifteen, somebody
in the teens from thirteen to nineteen (common practice, no source).
"""

from boxlore.core.dates.ages import STAGES
from boxlore.core.dates.asked_words import asked
from boxlore.core.dates.context import DateContext, Life, NoSuchDate, Outcome
from boxlore.core.dates.event_question import when_born
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import PIECE, words_of_several
from boxlore.core.dates.relative import Distance, at_age, at_age_in, bounds, days_of, near

_ADDED = frozenset(("when", "was", "noise", "comma", "dash", "doubt", "about"))
_AGES = {"infant": (0, 1), "small": (2, 7), "teenager": (13, 19), "at_school": (6, 15)}


def ask_of_stage(tokens: list[Token], text: str, context: DateContext) -> None:
    """Raises NoSuchDate with the question, where words tell a stage of a life and nothing else."""
    stages: list[str] = []
    lives: list[Life] = []
    unknown: list[Token] = []
    is_somebody = False
    season, is_last = 0, False
    for token in tokens:
        kinds = token.kinds
        if told := kinds & STAGES:
            stages += {str(sense.value or sense.kind) for sense in token.senses if sense.kind in told}
        elif token.senses[0].kind == "person":
            lives.append(token.senses[0].value)  # type: ignore[arg-type]  # a life, by its kind
        elif "i" in kinds:
            lives.append(Life(context.narrator))
        elif "they" in kinds:
            is_somebody = True
        elif kinds == {"name"}:
            unknown.append(token)
        elif named := [sense.value for sense in token.senses if sense.kind == "season"]:
            season = int(str(named[0]))
        elif "last" in kinds:
            is_last = True
        elif not kinds & _ADDED:
            return
    if len(stages) != 1 or len(lives) > 1 or (lives and unknown) or is_last != bool(season):
        return
    if is_somebody and not (lives or unknown):
        raise NoSuchDate("Who was that, and when were they born?")
    if lives and not lives[0].born and stages[0] != "alive":
        raise NoSuchDate(when_born())
    if not lives:
        if unknown and stages[0] != "alive" and not words_of_several().isdisjoint(PIECE.findall(text.casefold())):
            raise NoSuchDate(f"“{text}”: when was that?")  # “when the kids were little”
        if unknown and stages[0] != "alive":
            raise NoSuchDate(when_born(text[unknown[0].start : unknown[-1].end]))
        return
    if is_last and not (lives[0].died and stages[0] == "alive"):
        return
    last = Distance(-1, "season", value=season)
    date = near(lives[0].died, last, context) if is_last else _of_life(lives[0], stages[0])
    shown = f": is {asked(date, context)} meant?" if date else ": when was that?"
    raise NoSuchDate(f"“{text}”{shown}", (date,) if date else ())


def of_a_few(tokens: list[Token], text: str, context: DateContext) -> Outcome | None:
    """“Ruth a few weeks old”, `Ruth einige Wochen alt`: the question whether the days are meant on which somebody was
    two to six of them old, of a couple two, of “a week” one; None for other words."""
    lives = [token.senses[0].value for token in tokens if token.senses[0].kind == "person"]
    if not lives and context.narrator and any("i" in token.kinds for token in tokens):
        lives = [Life(context.narrator)]
    at, unit, least, most = next((told for at in range(1, len(tokens)) if (told := _a_few(tokens, at))), (0, "", 0, 0))
    counting = tokens[at - 1 : at + 1] if most > 1 else tokens[at : at + 1]
    others = [token for token in tokens if token not in counting and not token.is_any(_BESIDE_A_FEW)]
    is_last_unknown = others == tokens[at + 1 :] and len(others) == 1 and others[0].kinds == {"name"}  # “alt”
    is_old = is_last_unknown or tokens[-1].is_any(_OLD)
    if len(lives) != 1 or not most or not is_old or (others and not is_last_unknown):
        return None
    born = lives[0].born  # type: ignore[attr-defined]  # a life, by its kind
    if not born:
        return Outcome(None, when_born())
    if unit == "year":
        date = at_age(born, least, most)
    else:
        date = days_of(bounds(at_age_in(born, unit, least))[0], bounds(at_age_in(born, unit, most))[1])
    return Outcome(None, f"“{text}”: is {asked(date, context)} meant?", (date,))


def _a_few(tokens: list[Token], at: int) -> tuple[int, str, int, int] | None:
    """The place of a unit that a word for a few, or “some”, counts, the unit, and how many it is at least and at
    most; None where none does."""
    unit = next((str(sense.value) for sense in tokens[at].senses if sense.kind == "unit"), "")
    if unit.removeprefix("one_") in _UNITS and unit.startswith("one_"):
        return at, unit.removeprefix("one_"), 1, 1
    if not unit and tokens[at].is_any(_OLD):
        unit = "years"  # “years old”
    bare, before = unit.removesuffix("s"), tokens[at - 1]
    if bare not in _UNITS or not (before.is_any(_FEW_OF) or (before.kinds == {"noise"} and bare != unit)):
        return None
    is_couple = any(sense.value == "couple" for sense in before.senses)
    return at, bare, _COUPLE, _COUPLE if is_couple else _FEW


_FEW_OF, _OLD, _UNITS = frozenset(("few",)), frozenset(("years_old",)), ("day", "week", "month", "year")
_BESIDE_A_FEW = frozenset("person i was when about noise years_old comma possessive doubt".split())
_COUPLE, _FEW = 2, 6


def _of_life(life: Life, stage: str) -> str:
    if stage == "alive":
        return f"[..{life.died}]" if life.died[:4].isdigit() and "/" not in life.died else ""
    if stage == "newborn":
        return days_of(bounds(at_age_in(life.born, "month", 0))[0], bounds(at_age_in(life.born, "month", 1))[1])
    return at_age(life.born, *_AGES[stage])
