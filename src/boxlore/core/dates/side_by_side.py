"""What dates come to that are told side by side: one of them, all of them, one cut by another, a date beside a war.

Each of the `items` is the expression of one that is told, `joins` are the kinds of the words between them.
"""

import itertools

from boxlore.core.dates.assembly import only_year
from boxlore.core.dates.expressions import Expression
from boxlore.core.dates.operands import NoForm
from boxlore.core.dates.partial import MOST_YEARS_BETWEEN, Partial
from boxlore.core.dates.short_years import LAST_DAY

BEFORE, AFTER = ("before", "until", "at_latest"), ("after", "since", "at_earliest")
LIMITS = ("before", "at_latest", "after", "at_earliest")
JOINS = {"or": "any", "slash": "any", "and": "all"}


def joined(
    items: list[Expression], joins: list[str], marks: list[int], first_mark: int, *, doubted: bool
) -> Expression:
    """All of them as one expression. `marks` are the qualifiers behind each, `first_mark` is before the first, which
    is of all; `doubted` says whether the last is told with doubt. Raises NoForm where nobody says them so."""
    if len(items) == 1:
        return items[0]
    kinds = {JOINS[join] for join in joins if join != "comma"}
    if joins == ["comma"] and doubted:
        kinds = {"any"}  # “1938, maybe 1939”
    elif joins in (["comma"], ["and"]) and _is_cut(*items) and (joins == ["comma"] or items[0].kind in LIMITS):
        kinds = {"within"}
    elif joins == ["comma"] and [item.leaves()[0].part for item in items] == ["late", "early"]:
        kinds = {"any"}  # “end of 1929, beginning of 1930”
    elif not kinds and (_are_days_in_a_row(items) or _are_two_days(items)):
        kinds = {"all"}  # “July 4, 5, 6 1936”
    elif joins == ["comma"] and _are_two_of_a_year(items):
        kinds = {"any"}
    elif joins[-1] == "comma" and doubted and kinds == {"any"}:
        pass  # “1936 or 37, maybe 38”
    elif len(kinds) != 1 or joins[-1] == "comma":
        raise NoForm
    if any(item.kind not in ("one", "span", *LIMITS) for item in items) or _are_days_of_others(items, joins):
        raise NoForm
    (kind,) = kinds
    if kind == "within":
        return Expression("within", [*items])
    guessed = joins == ["comma"] and doubted  # “not later than 1912, probably 1910”
    if items[0].kind in LIMITS and joins[0] == "comma" and kind == "any" and len(items) > 2:
        later = joined(items[1:], joins[1:], marks[1:], 0, doubted=doubted)  # “before 1950, probably 1948 or 1949”
        return Expression("any", [items[0], later], beside="doubt")
    if items[0].kind in LIMITS and all(item.kind == "one" for item in items[1:]) and not guessed:
        return _shared(items, kind)
    parts = [item.parts[0] if item.kind == "one" else item for item in items]
    if joins == ["comma"] and not doubted and _are_two_of_a_year(items):
        return Expression("any", parts, beside="pair")
    beside = "row" if joins == ["comma"] and kind == "all" and items[0].leaves()[0].bare else _beside(joins)
    whole = Expression(kind, parts, beside=beside)
    first, *others = whole.leaves()
    if first.year_mark and all(date.whole_year or date.bare for date in others):
        first_mark, first.year_mark = first_mark | first.year_mark, 0  # “Easter, probably 1938 or 39”
    if first_mark and not (joins == ["comma"] and doubted and any(date.mark for date in others)):
        whole.mark(first_mark)
    elif first_mark:
        first.mark |= first_mark  # “circa 1890, forse 1891”
    if marks[-1] and not any(marks[:-1]):
        whole.mark(marks[-1])
    return whole


def _is_cut(first: Expression, last: Expression) -> bool:
    """Whether a limit follows a date or a limit on the other side: “the twenties, 1926 at the latest”, “1933 at the
    earliest, 1936 at the latest”."""
    if last.kind not in LIMITS:
        return False
    return first.kind == "one" or (first.kind in LIMITS and (first.kind in BEFORE) != (last.kind in BEFORE))


def _are_days_in_a_row(items: list[Expression]) -> bool:
    """Whether three dates or more are told by their days, each the next one, or are years, each later: `1938, 39,
    40`."""
    dates = [item.leaves()[0] for item in items if item.kind == "one"]
    if 2 < len(dates) == len(items) and dates[0].whole_year and dates[0].year.isdigit():
        years = [date.year if date.whole_year else f"{date.bare[0]:02d}" if date.bare else "" for date in dates]
        return all(
            year.isdigit() and last[-2:] > first[-2:]
            for year, first, last in zip(years, years, years[1:], strict=False)
        )
    days = [date.bare[0] if date.bare else date.day for date in dates]
    in_a_row = all(last == first + 1 for first, last in itertools.pairwise(days))
    return 2 < len(dates) == len(items) and days[0] > 0 and in_a_row


def _are_two_days(items: list[Expression]) -> bool:
    """“June 3, 4, 1950” and “25, 26 Dec 1948”: the second is of the month, and later in it."""
    dates = [item.leaves()[0] for item in items if item.kind == "one"]
    if len(dates) != 2 or len(items) != 2:
        return False
    first, last = dates
    behind = first.month and first.day and not first.year and last.day and last.year and not last.month
    before = first.bare and not first.within_a_year and last.day and last.month and last.year
    return bool(behind or before) and 0 < (first.bare[0] if first.bare else first.day) < last.day


def _are_days_of_others(items: list[Expression], joins: list[str]) -> bool:
    """“May 1938 or 1939, the 5th or the 6th”: days without a month behind a comma, which may be of each date before
    it."""
    comma = joins.index("comma") if "comma" in joins[:-1] else 0
    later = [date for item in items[comma + 1 :] for date in item.leaves()]
    days = all(date.day and not date.month and not date.feast for date in later)
    return comma > 0 and days and all(item.leaves()[0].year for item in items[: comma + 1])


def _are_two_of_a_year(items: list[Expression]) -> bool:
    """“June, July 1938”, “spring, summer ’38”: two months or two seasons, the later one with the year of both."""
    dates = [item.leaves()[0] for item in items if item.kind == "one"]
    if len(dates) != 2 or len(items) != 2:
        return False
    first, last = dates
    finer = any(date.day or date.feast or date.part or date.nth or date.weekday >= 0 or date.bare for date in dates)
    if finer or first.year or not last.year or last.calendar:
        return False
    return 0 < first.month < last.month or 0 < first.season < last.season


def _beside(joins: list[str]) -> str:
    if joins == ["slash"]:
        return "slash"
    if len(joins) > 1 and joins[0] == "comma":
        return "finer"
    return "doubt" if joins == ["comma"] else ""


def _shared(items: list[Expression], kind: str) -> Expression:
    """`before 1938 or 1939`: the limit holds for each, and the widest of them is certain."""
    if kind == "all":
        raise NoForm
    within = Expression("any", [part for item in items for part in item.parts])
    return Expression(items[0].kind, [within])


def beside_a_war(items: list[Expression]) -> Expression | None:
    """`1943, during the war`, `after the war, 1946`: a date, and a war that says no more, or a family's event."""
    wars = [bool(item.leaves()[0].span or item.leaves()[0].event) for item in items]
    if sum(wars) != 1 or items[wars.index(False)].kind != "one":
        return None
    told, of = items[wars.index(False)].leaves()[0], items[wars.index(True)]
    if of.kind == "one" and of.leaves()[0].unit == "year" and told.within_a_year and not told.year:
        told.year = only_year(of.leaves()[0].event) if of.leaves()[0].event else ""
        if not told.year:
            raise NoForm
        return Expression("one", [told])  # “Christmas, the year we got married”
    return Expression("known", [items[wars.index(False)], items[wars.index(True)]])


def is_told_beside_a_war(items: list[Expression], joins: list[str]) -> bool:
    """“1943 or 44, in the war”: a war behind a comma, and before it one of several dates."""
    war = items[-1].leaves()[0]
    others = [date for item in items[:-1] for date in item.leaves()]
    is_war = bool(war.span) and not war.part and items[-1].kind in ("one", *LIMITS)
    return is_war and "comma" not in joins[:-1] and not any(date.span or date.event for date in others)


def is_of_year_before(items: list[Expression]) -> bool:
    """“The year before the flood, Whitsun”: a year beside an event, and behind it what is told without a year."""
    told, date = items
    beside = told.distance if told.kind == "near" and told.leaves()[0].event else None
    if beside is None or beside.unit != "year" or beside.count > 1 or date.kind != "one":
        return False
    return date.leaves()[0].within_a_year and not date.leaves()[0].year


def is_year_of_what_follows(items: list[Expression], joins: list[str]) -> bool:
    """“1948, 25/26 December”: a year alone, and days and months behind a comma that have none."""
    if len(items) < 3 or joins[0] != "comma" or items[0].kind != "one":
        return False
    later = [date for item in items[1:] for date in item.leaves()]
    return (
        items[0].leaves()[0].whole_year
        and later[-1].within_a_year
        and not any(date.year or date.years for date in later)
    )


def is_day_for_a_year(items: list[Expression], last: Partial) -> bool:
    """Whether a number before a month, behind the year alone, is the next year or one soon after it: nobody says
    a year or a day of it."""
    first = items[0].leaves()[0]
    if len(items) != 2 or not first.whole_year or not first.year.isdigit() or last.year or not last.month:
        return False
    return 0 < last.day - int(first.year[-2:]) <= MOST_YEARS_BETWEEN


def is_year_alone(date: Partial) -> bool:
    """Whether a date is a year and no more, also by two digits that can be no day."""
    bare = date.bare is not None and date.bare[0] > LAST_DAY and not (date.within_a_year or date.part)
    return date.whole_year or bare


def a_year_on(item: Expression, years: int, *, next_to_it: bool = False) -> Partial:
    """“Guy Fawkes, 1938 or the year after”: the same a year on. The one that is `next_to_it` is so only of what comes
    once a year: the one before a Sunday in June is a week away."""
    date = item.leaves()[-1]
    if not date.year.isdigit() or item.kind != "one":
        raise NoForm
    if next_to_it and not (date.feast or date.season or date.whole_year):
        raise NoForm
    return date.shifted(years)
