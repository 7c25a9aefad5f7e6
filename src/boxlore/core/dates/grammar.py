"""The grammar of what is said about dates: a descent over senses, one method a production.

    said         = [ not alternatives ] alternatives [ correction alternatives ] [ not alternatives ]
    alternatives = [ either ] item *( [ "," ] ( or | "/" | and | "," ) item ) [ limit ]
    limit        = [ "," ] ( before | after ) operand
    item         = qualifiers ( between range | from range | to operand | before operand | after operand |
                   outer part | near | range )
    range        = operand [ ( to | "-" ) operand ] [ or later | or earlier | between | after ] qualifiers
    outer part   = ( first | last ) [ count ] unit operand
    near         = [ count ] ( unit | season | weekday ) ( before | after ) operand
    operand      = qualifiers partial qualifiers

A qualifier belongs to the dates it stands with: before the first of several to all of them, within to its own.
"""

import itertools

from boxlore.core.dates.assembly import Assembly
from boxlore.core.dates.expressions import SIDE_OF_LIMIT, Expression
from boxlore.core.dates.holidays import came_once
from boxlore.core.dates.lexicon import RUSSIAN, Sense
from boxlore.core.dates.outer_parts import outer_distance, outer_part
from boxlore.core.dates.partial import ABOUT, DOUBT, MOST_YEARS_BETWEEN, Partial, fill
from boxlore.core.dates.relative import A_COUPLE, A_FEW, NEXT_TO_IT, Distance
from boxlore.core.dates.short_years import LAST_DAY
from boxlore.core.dates.word_order import LIKELIER

_MARKING = ("about", "doubt", "query")
_QUALIFIERS = {"about": ABOUT, "doubt": DOUBT, "query": DOUBT, "about_behind": ABOUT}
_LIMIT_OF = {
    "before": "before", "until": "at_latest", "at_latest": "at_latest", "or_earlier": "at_latest", "until_behind":
    "at_latest", "after": "after", "since": "at_earliest", "at_earliest": "at_earliest", "or_later": "at_earliest",
    "since_behind": "at_earliest", "after_behind": "after", "before_behind": "before",
}  # fmt: skip
"""The limit that a word says: “before” and “after” leave their own date out, the others hold it."""

_BEFORE, _AFTER = ("before", "until", "at_latest"), ("after", "since", "at_earliest")
_LIMITING = _BEFORE + _AFTER
_BEHIND = ("or_later", "before_behind", "after_behind", "since_behind", "or_earlier", "until_behind")
_ENDS = ("", "comma", "or", "and", "dash", "to", "to_open", "slash", "query", "about", "doubt")
"""What may follow a qualifier that stands behind its date."""

_TO = ("dash", "to", "to_open")
"""What stands between the ends of a span; “to” alone is a code of tree files, and English."""
_UNTIL = ("until", *_TO)

_LIMITS = ("before", "at_latest", "after", "at_earliest")
_SIDES = {"before": -1, "after": 1}
_ABOUT_A_CORRECTION = ("comma", "dash", "correction", "or")

_SIDE_BEHIND = {"before_behind": -1, "after_behind": 1}
_DAY_BESIDE = {"eve": (-1, "day"), "morrow": (1, "day"), "night_to": (-1, "night")}
_BEGIN_NEAR = ("at_a_distance", "eve", "morrow", "night_to", "day", "ordinal", "few", "unit", "season", "weekday")
_YEARS = ("year", "short")
_OF_TWO_COUNTS = ("or", "dash", "comma", "slash")
_COUNTED = ("day", "week", "month", "year")
_YEAR_BESIDE = {"or_year_after": 1, "or_year_before": -1}
_BEGIN_A_DATE = ("day", "ordinal", "month", "year", "short", "dates", "season", "feast", "decade", "decade_digits")
_JOINS = {"or": "any", "slash": "any", "and": "all"}


def _normal(senses: list[Sense]) -> list[Sense]:
    """“Can't have been later than 1931” is by 1931, “it wasn't before 1931” from then on; “the first Easter after” and
    “the last Christmas before” are those next to it."""
    said: list[Sense] = []
    for sense in _with_half_years(senses):
        if len(said) > 1 and said[-1].kind in _MAY_BE_NEXT and _is_next(said[-2], sense.kind):
            del said[-2]
        denied = bool(said) and said[-1].kind == "not" and sense.kind in _DENIED
        if denied:
            said.pop()
        said.append(Sense(_DENIED[sense.kind]) if denied else sense)
    return said


_AND_A_HALF = ["day", "and", "fraction", "unit"]


def _with_half_years(senses: list[Sense]) -> list[Sense]:
    """“Two and a half years before the fire” is thirty months before it."""
    for at in range(len(senses) - 3):
        count, _, half, unit = run = senses[at : at + 4]
        if [sense.kind for sense in run] == _AND_A_HALF and half.value == "half" and unit.value == "years":
            months = 12 * count.value[0] + 6  # type: ignore[index]  # a number and its count of digits
            return [*senses[:at], Sense("day", (months, 2)), Sense("unit", "months", unit.languages), *senses[at + 4 :]]
    return senses


_MAY_BE_NEXT = ("feast", "season", "weekday")


def _is_next(sense: Sense, side: str) -> bool:
    return (sense.kind, sense.value, side) == ("ordinal", 1, "after") or (sense.kind, side) == ("last", "before")


_DENIED = {"after": "at_latest", "before": "at_earliest"}
_CHANGING = frozenset(("not", "ordinal", "last", "fraction"))
"""Kinds of words that change what stands behind them: without one of them all is as it is told."""


def _is_year_alone(date: Partial) -> bool:
    """Whether a date is a year and no more, also by two digits that can be no day."""
    bare = date.bare is not None and date.bare[0] > LAST_DAY and not (date.within_a_year or date.part)
    return date.whole_year or bare


class NoForm(Exception):
    """These senses in this order are no date."""


class Grammar:
    """Reads one list of senses from left to right."""

    def __init__(self, senses: list[Sense]) -> None:
        kinds = [sense.kind for sense in senses]
        if not _CHANGING.isdisjoint(kinds):
            senses = _normal(senses)
            kinds = [sense.kind for sense in senses]
        self.senses = senses
        self.count = len(senses)
        self.kinds = [*kinds, "", "", ""]
        self.at = 0
        self._first_mark = self._last_mark = 0
        self._doubted = False

    def said(self) -> Expression:
        """said = alternatives [ correction alternatives ]; after a correction only what follows holds."""
        if self.kinds[self.at] == "not":  # “not 1931 but 1932”
            self.at += 1
            item = self._item()
            said = denied = Expression("not", [item])
            while self.kinds[self.at] in ("or", "and"):  # “neither 1930 nor 1931”
                self.at += 1
                item = self._item()
                denied.parts.append(item)
            if self.kinds[self.at] in ("comma", "dash", "correction"):
                self._corrects()
                self.at += self.kinds[self.at] in ("comma", "dash")
            if self.at == self.count:
                return said
            begin, mark = self.at, self._marks()  # “not 1935, must be the year after”
            if years := self._year_beside_it():
                beside = Expression("one", [self._a_year_on(item, years)])
                beside.mark(mark)
                return beside
            self.at = begin
            said = self._alternatives()
            fill([*denied.leaves(), *said.leaves()], span=True)  # “not at Easter 1947, at Whitsun”
        else:
            said = self._alternatives()
            if self.at == self.count:
                return said  # most
            if self.kinds[self.at] == "not" and self.kinds[self.at + 1] in ("comma", "dash", "correction"):
                self.at += 1
                said = Expression("not", [said])  # “1932 war das nicht, eher 1933”
        while corrects := self._corrects():
            if said.kind == "not" and self.at == self.count:
                return said
            corrected = self._alternatives()
            if corrects == LIKELIER:
                corrected.mark(DOUBT)
            if {SIDE_OF_LIMIT.get(limit.kind) for limit in (said, corrected)} == {-1, 1}:
                said = Expression("within", [said, corrected])  # “dopo il 1938, ma prima del 1940” corrects nothing
                continue
            Expression("any", [said, corrected]).filled()
            first, last = said.leaves()[-1], corrected.leaves()[0]
            if first.bare is not None:
                raise NoForm  # “3 men, 1938”, though “men” is “but” in the north
            if first.day and last.month and not last.day:  # “12 June, I mean July”
                last.day = first.day
            said = corrected
        denial = self.at + (self.kinds[self.at] == "comma")
        if self.kinds[denial] == "not" and denial + 1 == self.count:  # “vor 1938 nicht”
            self.at = self.count
            flipped = _DENIED.get(said.kind)
            return Expression(flipped, said.parts) if flipped else Expression("not", [said])
        if self.kinds[denial] == "not":  # “1931, not 1932”
            self.at = denial + 1
            said = self._of_another_year(said) or Expression("except", [said, self._alternatives()])
        if self.at < self.count:
            raise NoForm
        return said

    def _of_another_year(self, said: Expression) -> Expression | None:
        """“Christmas, not 1938 but 1939”: of the year that is affirmed behind the one denied, which is not that of the
        date; without one it is asked. None where more is denied than the year of a date without one."""
        begin, date = self.at, said.leaves()[-1]
        denied = self._item()
        if said.kind == "one" and not date.year and denied.kind == "one" and denied.leaves()[0].whole_year:
            if self.at == self.count:
                return Expression("not", [denied])
            if not self._corrects() and self.kinds[self.at] == "comma":
                self.at += 1
            if self.kinds[self.at] in ("doubt", "year", "short"):
                affirmed = self._item().leaves()[0]
                if self.at == self.count and affirmed.whole_year:
                    date.take_year(affirmed)
                    date.mark |= affirmed.mark
                    return said
        self.at = begin
        return None

    def _corrects(self) -> str:
        """Go past the words of a correction and the signs about them (`- no, wait -`, `or more likely`). Returns the
        value of the last of the words, or that it is a correction; empty where there is none."""
        begin, corrects = self.at, ""
        while (kind := self.kinds[self.at]) in _ABOUT_A_CORRECTION:
            if kind == "or" and self.kinds[self.at + 1] != "correction":
                break
            if kind == "correction":
                corrects = str(self.senses[self.at].value or kind)
            self.at += 1
        if not corrects:
            self.at = begin
        return corrects

    def _alternatives(self) -> Expression:
        if self.kinds[self.at] == "either":
            self.at += 1
        item = self._item()
        if self.at == self.count:
            return item  # most
        items, joins, marks = [item], [], [self._last_mark]
        first_mark = self._first_mark
        while self.at < self.count:
            kind = self.kinds[self.at]
            following = self.kinds[self.at + 1]
            if (kind == "comma" and following in ("or", "and")) or (kind == "dash" and following == "or"):
                self.at += 1
                continue
            if kind in ("or_later", "or_earlier"):  # “before 1938 or after 1940”
                self.at += 1
                joins.append("or")
                items.append(Expression("after" if kind == "or_later" else "before", [self._operand()]))
                marks.append(self._last_mark)
                continue
            if years := _YEAR_BESIDE.get(kind) or self._year_beside():
                self.at += 1 if kind in _YEAR_BESIDE else 3
                joins.append("or")
                items.append(Expression("one", [self._a_year_on(items[-1], years)]))
                marks.append(0)
                continue
            if kind in _SIDES and following == "comma" and len(items) == 1 and items[0].kind == "one":
                self.at += 2  # “the Christmas after, 1936”
                return self._told_apart(items[0].leaves()[0], self._operand())
            limit = kind if kind not in ("comma", "and") else following
            if limit in _LIMITING and len(items) == 1 and (kind != "and" or items[0].kind in _LIMITS):
                self.at += 1 if kind in ("comma", "and") else 0
                return self._limited(items[0])
            told_twice = kind == "event" or (kind in _BEGIN_A_DATE and bool(items[0].leaves()[0].event))
            if told_twice and len(items) == 1:  # “the wedding 1954”, “April 1954 (the wedding)”
                items.append(self._item())
                if (known := self._beside_a_war(items)) is None:
                    raise NoForm
                items, marks = [known], marks[:1]
                continue
            if kind == "part" and self._begins_after(items[-1]):  # “late forties early fifties”
                joins.append("comma")
                items.append(self._item())
                marks.append(self._last_mark)
                continue
            if kind == "doubt" and following in _BEGIN_A_DATE:  # “1938? maybe 37”
                joins.append("comma")
                self._doubted = True
                items.append(self._item())
                marks.append(self._last_mark)
                continue
            if (kind not in _JOINS and kind != "comma") or following in ("correction", "not"):
                break
            self.at += 1
            if kind == "comma" and self.kinds[self.at] == "same":
                return self._of_same_year(items)
            if kind == "comma" and (known := self._alternatives_in_a_war(items)):
                return known
            joins.append(kind)
            self._doubted = self.kinds[self.at] == "doubt"
            begin, is_apart = self.at, self.kinds[self.at - 2] == "comma"
            items.append(self._item())
            if not is_apart and kind in ("or", "and", "slash"):
                self._share_what_is_behind(items, begin)
            marks.append(self._last_mark)
            if joins == ["comma"] and self._is_of_year_before(items):
                items, joins, marks = [Expression("in_year", [items[1].leaves()[0], items[0]])], [], marks[:1]
            elif joins == ["comma"] and (known := self._beside_a_war(items)):
                items, joins, marks = [known], [], marks[:1]
            elif joins[-1] == "comma" and self._is_told_beside_a_war(items, joins):
                told = self._joined(items[:-1], joins[:-1], marks[:-1], first_mark)
                items, joins, marks = [Expression("known", [told, items[-1]])], [], [0]
        if self._is_year_of_what_follows(items, joins):
            items[-1].leaves()[-1].take_year(items[0].leaves()[0])
            items, joins, marks = items[1:], joins[1:], marks[1:]
        return self._joined(items, joins, marks, first_mark)

    def _share_what_is_behind(self, items: list[Expression], begin: int) -> None:
        """`1936 või 37 suvel`, “1936 or 1937 in summer”: what stands behind the last of several years is of each."""
        last = items[-1].leaves()[-1]
        if not last.within_a_year or items[-1].kind != "one":
            return
        if self._is_day_for_a_year(items, last) and self.kinds[begin] == "day":
            last.year, last.day = f"{last.day:02d}", 0  # “1912 or 13 June”
        if not self._is_year(begin, last):
            return
        years = [date for item in items[:-1] for date in item.leaves()]
        if all(item.kind == "one" for item in items) and all(map(_is_year_alone, years)):
            for date in years:
                if date.bare is not None:
                    date.year, date.bare = f"{date.bare[0]:02d}", None
                date.take_finer(last)

    @staticmethod
    def _is_day_for_a_year(items: list[Expression], last: Partial) -> bool:
        """Whether a number before a month, behind the year alone, is the next year or one soon after it: nobody says
        a year or a day of it."""
        first = items[0].leaves()[0]
        if len(items) != 2 or not first.whole_year or not first.year.isdigit() or last.year or not last.month:
            return False
        return 0 < last.day - int(first.year[-2:]) <= MOST_YEARS_BETWEEN

    def _is_year(self, at: int, date: Partial) -> bool:
        """Whether a date that begins here begins with its year."""
        kind = self.kinds[at]
        return kind in _YEARS or (kind == "day" and not date.day and bool(date.year))

    def _begins_after(self, item: Expression) -> bool:
        """Whether “early” stands here behind a date that is late in something."""
        return item.kind == "one" and item.leaves()[0].part == "late" and self.senses[self.at].value == "early"

    @staticmethod
    def _is_year_of_what_follows(items: list[Expression], joins: list[str]) -> bool:
        """“1948, 25/26 December”: a year alone, and days and months behind a comma that have none."""
        if len(items) < 3 or joins[0] != "comma" or items[0].kind != "one":
            return False
        later = [date for item in items[1:] for date in item.leaves()]
        return (
            items[0].leaves()[0].whole_year
            and later[-1].within_a_year
            and not any(date.year or date.years for date in later)
        )

    def _year_beside(self) -> int:
        """“1938 or the year after”, where nothing is told after which it was: 1, or -1 for the year before; else 0."""
        begins = self.kinds[self.at : self.at + 2] == ["or", "unit"] and self.senses[self.at + 1].value == "year"
        ends = begins and self.kinds[self.at + 3] in ("", "query")
        return _SIDES.get(self.kinds[self.at + 2], 0) if ends else 0

    def _year_beside_it(self) -> int:
        """“Not 1945, the year before”: -1, or 1 for the year after; 0 where something else ends the words."""
        if self.kinds[self.at] != "unit" or self.senses[self.at].value != "year" or self.at + 2 != self.count:
            return 0
        years = _SIDES.get(self.kinds[self.at + 1], 0)
        self.at += 2 if years else 0
        return years

    @staticmethod
    def _a_year_on(item: Expression, years: int) -> Partial:
        """“Guy Fawkes, 1938 or the year after”: the same a year on."""
        date = item.leaves()[-1]
        if not date.year.isdigit() or item.kind != "one":
            raise NoForm
        return date.shifted(years)

    def _alternatives_in_a_war(self, items: list[Expression]) -> Expression | None:
        """“The middle of the war, ’42 or ’43”: one of several dates behind a war; None where no such follow."""
        begin, marks = self.at, (self._first_mark, self._last_mark, self._doubted)
        if len(items) == 1 and items[0].kind in ("one", *_LIMITS) and items[0].leaves()[0].span:
            try:
                told = self._alternatives()
            except NoForm:
                told = items[0]
            if told.kind == "any" and not any(date.span for date in told.leaves()):
                return Expression("known", [told, items[0]])
        self.at = begin
        self._first_mark, self._last_mark, self._doubted = marks
        return None

    def _of_same_year(self, items: list[Expression]) -> Expression:
        """“After VE Day, [the same] summer”: of the year told before, cut by a limit that was told there."""
        self.at += 1
        told, date = items[-1].leaves()[-1], self._operand()
        once = came_once(told.feast) if told.feast else frozenset()
        if len(items) > 1 or date.year or items[0].kind not in ("one", *_LIMITS):
            raise NoForm
        date.year = told.year or (next(iter(once)) if len(once) == 1 else "")
        date.assumed = told.assumed
        if not date.within_a_year or not date.year:
            raise NoForm
        return (
            Expression("within", [Expression("one", [date]), items[0]])
            if items[0].kind in _LIMITS
            else Expression("one", [date])
        )

    @staticmethod
    def _is_told_beside_a_war(items: list[Expression], joins: list[str]) -> bool:
        """“1943 or 44, in the war”: a war behind a comma, and before it one of several dates."""
        war = items[-1].leaves()[0]
        others = [date for item in items[:-1] for date in item.leaves()]
        is_war = bool(war.span) and not war.part and items[-1].kind in ("one", *_LIMITS)
        return is_war and "comma" not in joins[:-1] and not any(date.span or date.event for date in others)

    @staticmethod
    def _is_of_year_before(items: list[Expression]) -> bool:
        """“The year before the flood, Whitsun”: a year beside an event, and behind it what is told without a year."""
        told, date = items
        beside = told.distance if told.kind == "near" and told.leaves()[0].event else None
        if beside is None or beside.unit != "year" or beside.count > 1 or date.kind != "one":
            return False
        return date.leaves()[0].within_a_year and not date.leaves()[0].year

    @staticmethod
    def _beside_a_war(items: list[Expression]) -> Expression | None:
        """`1943, during the war`, `after the war, 1946`: a date, and a war that says no more, or a family's event."""
        wars = [bool(item.leaves()[0].span or item.leaves()[0].event) for item in items]
        if sum(wars) != 1 or items[wars.index(False)].kind != "one":
            return None
        return Expression("known", [items[wars.index(False)], items[wars.index(True)]])

    def _joined(self, items: list[Expression], joins: list[str], marks: list[int], first_mark: int) -> Expression:
        if len(items) == 1:
            return items[0]
        kinds = {_JOINS[join] for join in joins if join != "comma"}
        if joins == ["comma"] and self._doubted:
            kinds = {"any"}  # “1938, maybe 1939”
        elif joins == ["comma"] and self._is_cut(*items):
            kinds = {"within"}
        elif joins == ["comma"] and [item.leaves()[0].part for item in items] == ["late", "early"]:
            kinds = {"any"}  # “end of 1929, beginning of 1930”
        elif not kinds and (self._are_days_in_a_row(items) or self._are_two_days(items)):
            kinds = {"all"}  # “July 4, 5, 6 1936”
        elif joins[-1] == "comma" and self._doubted and kinds == {"any"}:
            pass  # “1936 or 37, maybe 38”
        elif len(kinds) != 1 or joins[-1] == "comma":
            raise NoForm
        if any(item.kind not in ("one", "span", *_LIMITS) for item in items):
            raise NoForm
        (kind,) = kinds
        if kind == "within":
            return Expression("within", [*items])
        guessed = joins == ["comma"] and self._doubted  # “not later than 1912, probably 1910”
        if items[0].kind in _LIMITS and all(item.kind == "one" for item in items[1:]) and not guessed:
            return self._shared(items, kind)
        parts = [item.parts[0] if item.kind == "one" else item for item in items]
        beside = "row" if joins == ["comma"] and kind == "all" and items[0].leaves()[0].bare else self._beside(joins)
        whole = Expression(kind, parts, beside=beside)
        first, *others = whole.leaves()
        if first.year_mark and all(date.whole_year or date.bare for date in others):
            first_mark, first.year_mark = first_mark | first.year_mark, 0  # “Easter, probably 1938 or 39”
        if first_mark:
            whole.mark(first_mark)
        if marks[-1] and not any(marks[:-1]):
            whole.mark(marks[-1])
        return whole

    @staticmethod
    def _is_cut(first: Expression, last: Expression) -> bool:
        """Whether a limit follows a date or a limit on the other side: “the twenties, 1926 at the latest”, “1933 at the
        earliest, 1936 at the latest”."""
        if last.kind not in _LIMITS:
            return False
        return first.kind == "one" or (first.kind in _LIMITS and (first.kind in _BEFORE) != (last.kind in _BEFORE))

    @staticmethod
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

    @staticmethod
    def _are_two_days(items: list[Expression]) -> bool:
        """“June 3, 4, 1950” and “25, 26 Dec 1948”: the second is of the month, and later in it."""
        dates = [item.leaves()[0] for item in items if item.kind == "one"]
        if len(dates) != 2 or len(items) != 2:
            return False
        first, last = dates
        behind = first.month and first.day and not first.year and last.day and last.year and not last.month
        before = first.bare and not first.within_a_year and last.day and last.month and last.year
        return bool(behind or before) and 0 < (first.bare[0] if first.bare else first.day) < last.day

    @staticmethod
    def _beside(joins: list[str]) -> str:
        if joins == ["slash"]:
            return "slash"
        if len(joins) > 1 and joins[0] == "comma":
            return "finer"
        return "doubt" if joins == ["comma"] else ""

    @staticmethod
    def _shared(items: list[Expression], kind: str) -> Expression:
        """`before 1938 or 1939`: the limit holds for each, and the widest of them is certain."""
        if kind == "all":
            raise NoForm
        within = Expression("any", [part for item in items for part in item.parts])
        return Expression(items[0].kind, [within])

    def _limited(self, item: Expression) -> Expression:
        """limit = [ "," ] ( before | after ) operand: what the first date says, cut by the second."""
        kind = _LIMIT_OF[self.kinds[self.at]]
        self.at += 2 if self.kinds[self.at + 1] == "dash" else 1
        limit = Expression(kind, [self._operand()])
        both_sides = item.kind in _LIMITS and (item.kind in _BEFORE) != (kind in _BEFORE) and len(item.parts) == 1
        if not both_sides and item.kind not in ("one", "span", "between"):
            raise NoForm
        return Expression("within", [item, limit])

    def _item(self) -> Expression:
        kind = self.kinds[self.at]
        mark = 0
        if kind in _MARKING:
            mark = self._marks()
            kind = self.kinds[self.at]
        self._first_mark, self._last_mark = mark, 0
        if kind == "between":
            self.at += 1
            item = self._range("between", ("and", "or", "until", *_TO))
        elif kind in ("from", "since") and (spanned := self._from()) is not None:
            item = spanned
        elif kind == "after" and self.senses[self.at].value == "next":
            item = self._next_in_its_year()
        elif kind in _BEFORE or kind in _AFTER:
            if kind == "at_latest" and self.kinds[self.at + 1] in _BEFORE:  # “printed before 1914”
                self.at += 1
                kind = self.kinds[self.at]
            just = "just" if self.senses[self.at].value == "just" else ""
            may_be_next = self.senses[self.at].value == "perhaps"
            self.at += 2 if self.kinds[self.at + 1] == "dash" else 1
            item = Expression(_LIMIT_OF[kind], [self._operand()], beside=just)
            item = self._away_behind(kind, item) or item
            if may_be_next and item.leaves()[0].within_a_year and not item.leaves()[0].day:
                raise NoForm  # “following summer 1933” may be that summer
            if self.kinds[self.at] in _BEHIND and _LIMIT_OF[self.kinds[self.at]] == _LIMIT_OF[kind]:
                self.at += 1  # “by 1919 at the latest”
        elif kind == "to_open":
            self.at += 1
            item = Expression("to", [self._operand()])
        else:
            item = self._outer_part() or self._nth_of_stretch() or self._near() or self._open_range()
        if mark:
            item.mark(mark)
        return item

    def _next_in_its_year(self) -> Expression:
        """“The following summer, 1933” is that summer; without its year it is told nowhere which it follows."""
        self.at += 1
        date = self._operand()
        if not date.within_a_year or not (date.year or self.kinds[self.at] == "comma"):
            raise NoForm
        return Expression("one", [date])

    def _range(self, kind: str, joins: tuple[str, ...]) -> Expression:
        """`between … and …`, `from … to …`."""
        first = self._operand_or_span()
        if self.kinds[self.at] not in joins:
            raise NoForm
        self.at += 1
        whole = Expression(kind, [first, self._following(first) or self._operand_or_span()])
        if self.senses[self.at - 1].kind == "query":
            whole.mark(DOUBT)
        return whole

    def _following(self, first: Partial | Expression) -> Partial | None:
        """“June 1940 to the following March”: the next one after a month or a season, where its year is no other; None
        where no such word stands here."""
        if self.kinds[self.at] != "after" or self.senses[self.at].value == "just" or not isinstance(first, Partial):
            return None
        self.at += 1
        last = self._operand()
        kin = (first.month and last.month) or (first.season and last.season)
        later = (last.month, last.season) > (first.month, first.season)
        if not kin or later or last.year or not first.year.isdigit():
            raise NoForm  # “June 1940 to the following September” may be of either year
        last.year, last.assumed = first.year, first.assumed
        return last.shifted(1)

    def _operand_or_span(self) -> Partial | Expression:
        """`1914-18` within a range: a span whose outer end counts."""
        first = self._operand()
        begin = self.at
        if self.kinds[self.at] == "dash":
            self.at += 1
            last = self._operand()
            if self.kinds[self.at] == "and":
                return Expression("span", [first, last])
            self.at = begin
        return first

    def _from(self) -> Expression | None:
        """from range, or `from 1900` alone; “since” with an end is the same, and alone is “after”."""
        begin = self.at
        kind = self.kinds[self.at]
        self.at += 1
        try:
            return self._range("span", _UNTIL)
        except NoForm:
            self.at = begin
        if kind == "since":
            return None
        self.at += 1
        whole = Expression("from", [self._operand()])
        if self.kinds[self.at] in ("since_behind", "or_later"):
            return self._behind(Expression("one", whole.parts))
        return whole

    def _open_range(self) -> Expression:
        first = self._operand()
        if self.at == self.count:
            return Expression("one", [first])
        if beside := self._in_year_beside(first):
            return beside
        if self.kinds[self.at] == "dash" and self.kinds[self.at + 1] == "to_open":
            self.at += 1  # mid-to-late
        if self.kinds[self.at] in _UNTIL and self.kinds[self.at + 1] not in ("", "correction", "or"):
            self.at += 2 if self.kinds[self.at + 1] == "dash" else 1
            begin = self.at
            last = self._following(first) or self._operand()
            first.mark |= self._last_mark  # “1915-1918?”
            if first.whole_year and last.season and self.kinds[begin - 1] == "dash" and self._is_year(begin, last):
                first.season, last.season = last.season, 0  # `1936-1937 m. žiemą`
            return self._behind(Expression("span", [first, last]))
        if self.kinds[self.at] == "and":
            begin = self.at
            try:
                self.at += 1
                last = self._operand()
                if self.kinds[self.at] == "between_behind":
                    self.at += 1
                    return Expression("between", [first, last])
            except NoForm:
                pass
            self.at = begin
        return self._behind(Expression("one", [first]))

    def _behind(self, item: Expression) -> Expression:
        """What stands behind a date: `or later`, `1950 alates`, `vuoden 1950 jälkeen`."""
        if self.at == self.count:
            return item
        if self.kinds[self.at] == "comma" and self.kinds[self.at + 1] in _BEHIND and self.kinds[self.at + 2] == "":
            self.at += 1  # “1911, or later”
        kind = self.kinds[self.at]
        if kind == "eve_behind" and item.kind == "one":  # “nelipühade eelõhtul”
            self.at += 1
            return Expression("near", item.parts, distance=Distance(-1, "day"))
        if kind == "between_behind" and item.kind == "span":
            self.at += 1
            return Expression("between", item.parts)
        if item.kind != "one" or self.kinds[self.at + 1] not in _ENDS:
            return item
        if kind in _BEHIND or (kind == "at_latest" and self.kinds[self.at + 1] == ""):  # “1938, postmark”
            self.at += 1
            return Expression(_LIMIT_OF[kind], item.parts)
        return item

    def _in_year_beside(self, date: Partial) -> Expression | None:
        """“Whitsun the year before the flood”: of the year beside an event; None where no such year follows."""
        begin = self.at
        self.at += self.kinds[self.at] == "comma"
        is_year = self.kinds[self.at] == "unit" and self.senses[self.at].value == "year"
        if is_year and self._side(self.at + 1) and date.within_a_year and not (date.year or date.event):
            beside = self._near()
            if beside is not None and beside.leaves()[0].event:
                return Expression("in_year", [date, beside])
        self.at = begin
        return None

    def _outer_part(self) -> Expression | None:
        """`the first ten days of June 1940`, `the last fortnight of July`"""
        length = outer_part(self.senses[self.at :])
        if not length:
            return None
        distance = outer_distance(self.senses[self.at : self.at + length])
        self.at += length
        return Expression("outer", [self._operand()], distance=distance)

    def _nth_of_stretch(self) -> Expression | None:
        """`the first Christmas of the war`, `the last winter of the Boer War`; of what began with an event it is the
        how-manieth after it (`our first Christmas [in Leeds]`)."""
        begin = self.at
        if self.kinds[begin] not in ("ordinal", "last") or self.kinds[begin + 1] not in ("feast", "season", "unit"):
            return None
        of, thing = self.kinds[begin + 2], self.senses[begin + 1]
        if thing.kind == "unit" and (thing.value != "year" or of != "span"):
            return None
        if of not in ("span", "event") or (of == "event" and self.kinds[begin] == "last"):
            return None
        count = -1 if self.kinds[begin] == "last" else self._counted()
        self.at = begin + 2
        stretch = self._operand()
        value = thing.value if isinstance(thing.value, int) else 0
        if thing.kind == "unit":
            date = Partial(unit="year")
        else:
            date = Partial(season=value) if value else Partial(feast=str(thing.value))
        if of == "span":
            return Expression("nth", [date, stretch], distance=Distance(1, thing.kind, count))
        if value:
            return Expression("near", [stretch], distance=Distance(1, "season", count, value, event=True))
        after: list[Partial | Expression] = [Expression("one", [date]), Expression("after", [stretch])]
        return Expression("within", after, distance=Distance(1, "feast", count, exact=True))

    def _near(self) -> Expression | None:
        """near = [ count ] ( unit | season | weekday | eve ) ( before | after ) operand"""
        begin, count = self.at, 0
        exact = self.kinds[begin] == "to_the_day"  # “exactly a year before the wedding”
        self.at += exact or self.kinds[begin] == "at_a_distance"  # `через год после свадьбы`
        if self.kinds[self.at] not in _BEGIN_NEAR:
            self.at = begin
            return None
        if some := self._some_away():
            return some
        if beside_day := _DAY_BESIDE.get(self.kinds[self.at]):
            self.at += 1
            return Expression("near", [self._operand()], distance=Distance(*beside_day))
        if self.kinds[self.at] == "day" and self.kinds[self.at + 1] == "unit":
            count = self.senses[self.at].value[0]  # type: ignore[index]
            self.at += 1
        elif self.kinds[self.at] == "few" and self.kinds[self.at + 1] in ("unit", "season"):
            count = A_COUPLE if self.senses[self.at].value == "couple" else A_FEW
            self.at += 1
        elif self.kinds[self.at] in ("ordinal", "day") and self.kinds[self.at + 1] in ("weekday", "season", "feast"):
            sure = self.kinds[self.at] == "ordinal"
            count = self._counted()  # the second Sunday after Easter, two summers before the fire
            if self.kinds[self.at] == "feast":
                return self._feasts_away(begin, count, sure=sure)
        told_exactly = self.kinds[self.at + 1] == "to_the_day"
        loose = self.kinds[self.at + 1] == "about_behind"  # “a year or so after we moved”
        beside = self.at + (2 if told_exactly or loose else 1)
        sense, side = self.senses[self.at], self._side(beside)
        if sense.kind == "unit" and count and not side:
            return self._counted_behind(begin, beside, str(sense.value), count)
        if not side or sense.kind not in ("unit", "season", "weekday"):
            self.at = begin
            return None
        self.at = beside + 1
        value = sense.value if isinstance(sense.value, int) else 0
        if self.kinds[self.at] == "comma":
            self.at += 1
            if count or (sense.kind != "season" and sense.value != "year"):
                raise NoForm
            return self._told_apart(Partial(season=value), self._operand(), side)
        anchor = self._operand()
        unit = str(sense.value) if sense.kind == "unit" else sense.kind
        if unit.startswith("one_"):
            unit, count = unit.removeprefix("one_"), count or 1
        if unit[0].isdigit():  # “a year and a half before the fire”
            count, unit = int(unit.partition("_")[0]), "month"
        if unit in ("days", "weeks", "months", "years"):  # “the weeks before Christmas” are a few
            unit, count = unit[:-1], count or NEXT_TO_IT
        if unit in ("week_from", "week_to") or (unit == "weekend" and count):
            raise NoForm
        if loose:
            anchor.mark |= ABOUT
        distance = Distance(side, unit, count, value, bool(anchor.event), exact or told_exactly)
        return Expression("near", [anchor], distance=distance)

    def _away_behind(self, kind: str, limit: Expression) -> Expression | None:
        """`po vestuvių kokie dveji metai`, “after the wedding, two years or so”: how far it is from an event or a war,
        told behind it at the end; None where that is not told."""
        begin, anchor = self.at, limit.leaves()[0]
        if kind not in _SIDES or not (anchor.event or anchor.span):
            return None
        self.at += self.kinds[self.at] == "comma"
        mark = self._marks()
        count = 0
        if self.kinds[self.at] == "day":
            count = self.senses[self.at].value[0]  # type: ignore[index]  # a number and its count of digits
            self.at += 1
        told = str(self.senses[self.at].value) if self.kinds[self.at] == "unit" else ""
        unit = told.removeprefix("one_").removesuffix("s")
        self.at += bool(told)
        if self.kinds[self.at] == "about_behind":
            mark |= ABOUT
            self.at += 1
        if unit not in _COUNTED or not (count or mark or told.startswith("one_")) or self.at < self.count:
            self.at = begin
            return None
        anchor.mark |= mark
        return Expression("near", [anchor], distance=Distance(_SIDES[kind], unit, count, event=bool(anchor.event)))

    def _some_away(self) -> Expression | None:
        """“Two or three years after the wedding”, “a year or two before it”: one of the days so far away."""
        begin, kinds = self.at, self.kinds
        if begin + 4 > self.count or kinds[begin + 2] != "day" or kinds[begin + 1] not in _OF_TWO_COUNTS:
            return None
        most = self.senses[begin + 2].value[0]  # type: ignore[index]  # a number and its count of digits
        if kinds[begin] == "unit":
            least, unit, beside = 1, self.senses[begin], begin + 3
        elif kinds[begin] == "day" and kinds[begin + 3] == "unit":
            least, unit, beside = self.senses[begin].value[0], self.senses[begin + 3], begin + 4  # type: ignore[index]
        else:
            return None
        told = str(unit.value).removeprefix("one_").removesuffix("s")
        side, side_behind = self._side(beside), 0
        if beside + 1 < self.count and kinds[beside] in ("event", "feast", "span"):
            side_behind = _SIDE_BEHIND.get(kinds[beside + 1], 0)
        if told not in _COUNTED or not least < most or not (side or side_behind):
            return None
        self.at = beside if side_behind else beside + 1
        anchor = self._operand()
        self.at += 1 if side_behind else 0
        side = side or side_behind
        counts = (least, most) if side > 0 else (most, least)
        away = [Distance(side, told, count, event=bool(anchor.event)) for count in counts]
        return Expression("between", [Expression("near", [anchor.copy()], distance=distance) for distance in away])

    def _feasts_away(self, begin: int, count: int, *, sure: bool) -> Expression | None:
        """“Two Christmases before the wedding”: whether the one next to it counts is asked; “the second Christmas after
        it” says so."""
        side = self.kinds[self.at + 1]
        if side not in _SIDES or count < 1:
            self.at = begin
            return None
        feast = Partial(feast=str(self.senses[self.at].value))
        self.at += 2
        anchor = self._operand()
        if not (anchor.event or anchor.span):
            raise NoForm
        parts: list[Partial | Expression] = [Expression("one", [feast]), Expression(side, [anchor])]
        return Expression("within", parts, distance=Distance(_SIDES[side], "feast", count, exact=sure))

    def _counted_behind(self, begin: int, at: int, unit: str, count: int) -> Expression | None:
        """`kaksi vuotta tulipalon jälkeen`, `két évvel a tűz után`: the side stands behind what it is beside."""
        if self.kinds[at] in ("event", "feast", "span") and self.kinds[at + 1] in _SIDE_BEHIND:
            self.at = at
            anchor = self._operand()
            side = _SIDE_BEHIND[self.kinds[self.at]]
            self.at += 1
            distance = Distance(side, unit.removesuffix("s"), count, event=bool(anchor.event))
            return Expression("near", [anchor], distance=distance)
        self.at = begin
        return None

    def _side(self, at: int) -> int:
        """On which side a word stands, 0 for none; in Russian “until” is before behind a count (`за год до пожара`)."""
        if self.kinds[at] == "until" and self.senses[at].languages == RUSSIAN:
            return -1
        return _SIDES.get(self.kinds[at], 0)

    @staticmethod
    def _told_apart(date: Partial, told: Partial, side: int = 0) -> Expression:
        """“The summer after, 1934”, where nothing is told after which it was: of that year, or beside it."""
        if not told.whole_year or date.year or date.span or date.event:
            raise NoForm
        date.year, date.assumed, date.mark = told.year, told.assumed, date.mark | told.mark
        unit = "season" if date.season else "year"
        near = [Expression("near", [told], distance=Distance(side, unit, value=date.season))] if side else []
        return Expression("apart", [date, *near])

    def _counted(self) -> int:
        """Go past an ordinal or a number. Returns it; less than 1 (“last”) has no form here."""
        value = self.senses[self.at].value
        self.at += 1
        return value[0] if isinstance(value, tuple) else int(str(value))

    def _operand(self) -> Partial:
        """operand = qualifiers partial qualifiers [ calendar ]"""
        kind = self.kinds[self.at]
        mark = self._marks() if kind in ("about", "doubt") else 0
        style = self._style()
        date, at = Assembly(self.senses).run(self.at)
        if date is None:
            raise NoForm
        self.at = at
        if at == self.count:  # most dates end here
            date.mark |= mark
            date.old_style = date.old_style or style == "old_style"
            date.new_style = style == "new_style"
            self._last_mark = 0
            return date
        behind = 0
        while self._is_behind():
            behind |= _QUALIFIERS.get(self.kinds[self.at], 0)
            self.at += 1
        self._last_mark = behind
        if self.kinds[self.at] == "comma" and self.kinds[self.at + 1] in ("old_style", "new_style"):
            self.at += 1
        style = self._style() or style
        date.old_style, date.new_style = style == "old_style", style == "new_style"
        date.mark |= mark | behind
        return date

    def _is_behind(self) -> bool:
        """Whether a qualifier, or the comma before one, stands behind the date and not before the next one."""
        kind, following = self.kinds[self.at], self.kinds[self.at + 1]
        if kind == "comma":
            return following in ("doubt", "about_behind") and self.kinds[self.at + 2] in _ENDS
        return kind in ("query", "about_behind") or (kind in ("about", "doubt") and following in _ENDS)

    def _style(self) -> str:
        """The words that say whether the day is Julian (old_style) or Gregorian (new_style); empty for none."""
        kind = self.kinds[self.at]
        if kind not in ("old_style", "new_style"):
            return ""
        self.at += 1
        return kind

    def _marks(self) -> int:
        mark = 0
        while self.kinds[self.at] in _MARKING:
            mark |= _QUALIFIERS[self.kinds[self.at]]
            self.at += 1
            if self.kinds[self.at] in ("comma", "dash"):
                self.at += 1
        return mark
