"""What an expression comes to: one date, or a question with its choices.

A question shows what the words may mean by each century, each war and each day of what has to be asked; what is to
come, or was before there were photographs, is no choice.
"""

import re

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.asked_words import listed
from boxlore.core.dates.centuries import FIRST_PORTRAITS, settle_century
from boxlore.core.dates.context import DateContext, NoSuchDate, Outcome
from boxlore.core.dates.expressions import Expression
from boxlore.core.dates.guards import guarded, is_before, to_come
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.relative import is_running
from boxlore.core.dates.wars_table import DAYS_OF_A_LAND
from boxlore.core.dates.writing import question, year_of
from boxlore.core.errors import TextFault


def outcome_of(expression: Expression, context: DateContext) -> Outcome:
    """What an expression comes to. Its other choices are worked out where it asks."""
    if context.narrator or context.pictured:
        for date in expression.leaves():
            if date.short or (date.years and date.assumed):
                settle_century(date, context)
    try:
        edtf = standard.parsed(expression.text(context))
        ask = expression.question(context)
    except NoSuchDate as none:
        which_century = _with_years_of_wars(expression, context) if expression.kind == "within" else ""
        choices = _by_other_wars(expression, context) if expression.kind == "within" else ()
        if choices:  # “summer 1939, before the war”: one war fits
            if len(choices) == 1:
                return guarded(Outcome(standard.parsed(choices[0]), which_century or None), context)
            return Outcome(None, which_century or expression.question(context) or none.ask, choices)
        if whole := _of_each_war(expression, context):
            return Outcome(None, expression.question(context) or none.ask, whole)
        if whole := _with_each(expression, none, context):
            return Outcome(None, none.ask, whole)
        return Outcome(None, none.ask, none.choices)
    except TextFault as fault:
        if others := _by_other_wars(expression, context):  # “from 1925 until the war”: the next one
            return Outcome(None, f"“{context.text}”: which of these is meant?", others)
        if expression.kind in ("any", "all") and (each := _of_no_set(expression, context)):
            return Outcome(None, f"“{context.text}”: which of these is meant?", each)
        return Outcome(None, f"There is no such date: {fault.why[0].lower()}{fault.why[1:]}. Which is meant?")
    if not ask:
        outcome = Outcome(edtf)
        return guarded(_running(expression, outcome, context) if expression.kind == "near" else outcome, context)
    first = "" if to_come(edtf, context) else edtf.text
    further = [_choice(expression, context, pick) for pick in range(1, expression.choices(context))]
    if "XXXX" in edtf.text:
        further += _of_its_land(edtf.text, context)
    choices = tuple(dict.fromkeys(filter(None, [first, *further])))
    if expression.kind != "known" and any(len(date.span) > 1 for date in expression.leaves()):
        return Outcome(None, ask, choices)
    return guarded(Outcome(edtf, ask, tuple(choice for choice in choices if choice != edtf.text)), context)


def _of_its_land(text: str, context: DateContext) -> list[str]:
    """What words with a day without a year may mean where a country calls a day of its history by the date."""
    match = _DAY_WITHOUT_YEAR.search(text)
    days = [DAYS_OF_A_LAND.get(country, {}) for country in context.countries] if match else []
    return [text.replace("XXXX", of[match[1]]) for of in days if match and match[1] in of]


_DAY_WITHOUT_YEAR = re.compile(r"XXXX-(\d\d-\d\d)")


def _of_each_war(expression: Expression, context: DateContext) -> tuple[str, ...]:
    """“Two summers before the war”: what may be meant by each of the wars; none where it lies beside no war."""
    dates = expression.leaves()
    of_any_year = expression.kind == "within" and not dates[0].year  # “one August before the war”
    if not (of_any_year or expression.kind in ("near", "nth")) or not any(date.span for date in dates):
        return ()
    texts: dict[str, None] = {}
    for pick in range(expression.choices(context)):
        try:
            texts[expression.text(context, pick)] = None
        except NoSuchDate as none:
            texts.update(dict.fromkeys(none.choices))
    return tuple(texts)


def _with_each(expression: Expression, none: NoSuchDate, context: DateContext) -> tuple[str, ...]:
    """What the whole comes to by each of the days of which one of its dates has to be asked (“before war broke out”);
    none where it is that date, or where something else is asked."""
    for date in expression.leaves() if expression.kind != "one" and none.choices else ():
        try:
            Expression("one", [date]).text(context)
        except (NoSuchDate, TextFault) as asked_of_it:
            if getattr(asked_of_it, "choices", ()) != none.choices:
                continue
            told = date.copy()
            whole: dict[str, None] = {}
            for choice in none.choices:
                date.become(Partial(event=choice, mark=told.mark))
                whole[_choice(expression, context, 0)] = None
            date.become(told)
            return tuple(filter(None, whole))
    return ()


def _with_years_of_wars(expression: Expression, context: DateContext) -> str:
    """“Summer ’41, before the war”: the question which century is meant, where one is not told beside a war; the years
    are then those of the world wars' century."""
    dates = expression.leaves()
    short = [date for date in dates if date.short] if any(len(date.span) > 1 for date in dates) else []
    ask = question(short[0], context) if short else ""
    for date in short:
        date.year, date.assumed = year_of(date, 0), False
    return ask


def _by_other_wars(expression: Expression, context: DateContext) -> tuple[str, ...]:
    """What it comes to by other wars than the first that may be meant; none where something else is not known (“Easter
    after the war”)."""
    if not any(date.span for date in expression.leaves()):
        return ()
    picks = range(1, expression.choices(context))
    return tuple(dict.fromkeys(filter(None, (_choice(expression, context, pick) for pick in picks))))


def _of_no_set(expression: Expression, context: DateContext) -> tuple[str, ...]:
    """“’61, could be ’62, not later”: the dates without their limits, and each part by itself; none where a part is no
    date."""
    dates: list[Partial | Expression] = [*expression.leaves()]
    parts = [part if isinstance(part, Expression) else Expression("one", [part]) for part in expression.parts]
    each = [_choice(part, context, 0) for part in parts]
    if not all(each):
        return ()
    whole = _choice(Expression(expression.kind, dates), context, 0)
    return tuple(dict.fromkeys(filter(None, (whole, *each))))


def _choice(expression: Expression, context: DateContext, pick: int) -> str:
    """What it is by another choice; empty if it is no date then, or one to come."""
    try:
        text = expression.text(context, pick)
        edtf = standard.parsed(text)
        early = pick > 0 and context.first_year > 0 and is_before(edtf, FIRST_PORTRAITS)
        too_early = early and any(date.short or date.calendar == "turn" for date in expression.leaves())
        return "" if too_early or to_come(edtf, context) else text
    except (NoSuchDate, TextFault):
        return ""


def _running(expression: Expression, outcome: Outcome, context: DateContext) -> Outcome:
    """“The summer before” a day in summer may be that summer or the one before it."""
    distance, (anchor,), edtf = expression.distance, expression.leaves(), outcome.edtf
    if distance is None or distance.unit != "season" or edtf is None:
        return outcome
    if not is_running(edtf.text, Expression("one", [anchor]).text(context)):
        return outcome
    year, code = edtf.text.split("-")
    beside = f"{int(year) + distance.side}-{code}"
    which = "before" if distance.side < 0 else "after"
    return Outcome(edtf, f"“{context.text}”: the season of that day, or the one {which} it?", (beside,))


def one_of_several(texts: list[str], order: bool, context: DateContext) -> Outcome:
    """Different dates from the same words: the choices, and all of them as one of a set where they are plain dates."""
    dates = [standard.parsed(text) for text in sorted(texts)]
    edtf = standard.parsed(texts[0])
    if all(date.kind == "date" and not date.qualified for date in dates):
        edtf = standard.parsed(f"[{','.join(date.text for date in dates)}]")
    if order:
        ask = "Day or month first?"
    else:
        ask = f"“{context.text}”: is {listed([date.text for date in dates], context)} meant?"
    return Outcome(edtf, ask, tuple(date.text for date in dates))
