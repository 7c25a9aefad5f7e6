"""The grammar of what is said about dates: a descent over senses, one method a production.

    said         = [ not alternatives ] alternatives [ correction alternatives ] [ not alternatives ]
    alternatives = [ either ] item *( [ "," ] ( or | "/" | and | "," ) item ) [ limit ]
    limit        = [ "," ] ( before | after ) operand
    item         = qualifiers ( between range | from range | to operand | before operand | after operand |
                   outer part | near | range )
    range        = operand [ ( to | "-" ) operand ] [ or later | or earlier | between | after ] qualifiers

How far away something is stands in `distances`, one date with its qualifiers in `operands`, and what dates come to
that are told beside each other in `side_by_side`.

A qualifier belongs to the dates it stands with: before the first of several to all of them, within to its own.
"""

from boxlore.core.dates.assembly import only_year
from boxlore.core.dates.distances import SIDES, Distances
from boxlore.core.dates.expressions import SIDE_OF_LIMIT, Expression
from boxlore.core.dates.holidays import came_once, holiday
from boxlore.core.dates.lexicon import SEASONS
from boxlore.core.dates.operands import DENIED, ENDS, MARKING, NoForm
from boxlore.core.dates.partial import DOUBT, Partial, fill
from boxlore.core.dates.relative import Distance
from boxlore.core.dates.side_by_side import (
    AFTER,
    BEFORE,
    JOINS,
    LIMITS,
    a_year_on,
    beside_a_war,
    is_day_for_a_year,
    is_of_year_before,
    is_told_beside_a_war,
    is_year_alone,
    is_year_of_what_follows,
    joined,
)
from boxlore.core.dates.word_order import LIKELIER

_LIMIT_OF = {
    "before": "before", "until": "at_latest", "at_latest": "at_latest", "or_earlier": "at_latest", "until_behind":
    "at_latest", "after": "after", "since": "at_earliest", "at_earliest": "at_earliest", "or_later": "at_earliest",
    "since_behind": "at_earliest", "after_behind": "after", "before_behind": "before",
}  # fmt: skip
"""The limit that a word says: “before” and “after” leave their own date out, the others hold it."""

STRETCHES = (*LIMITS, "within", "between")
"""Kinds of expressions that may hold what was ruled out before them."""

_LIMITING = BEFORE + AFTER
_BEHIND = ("or_later", "before_behind", "after_behind", "since_behind", "or_earlier", "until_behind")
_OR_BEYOND = ("or_later", "or_earlier")
_AT_LIMITS = ("at_latest", "at_earliest")
_OPEN_BEHIND = (*_OR_BEYOND, *_AT_LIMITS)

_TO = ("dash", "to", "to_open")
"""What stands between the ends of a span; “to” alone is a code of tree files, and English."""
_UNTIL = ("until", *_TO)

_ABOUT_A_CORRECTION = ("comma", "dash", "correction", "or")
_YEARS = ("year", "short")
_YEAR_BESIDE = {"or_year_after": 1, "or_year_before": -1}
_BEGIN_A_DATE = ("day", "ordinal", "month", "year", "short", "dates", "season", "feast", "decade", "decade_digits")


class Grammar(Distances):
    """Reads one list of senses from left to right."""

    def said(self) -> Expression:
        """said = alternatives [ correction alternatives ]; after a correction only what follows holds."""
        if self.kinds[self.at] == "not":  # “not 1931 but 1932”
            self.at += 1
            item = self._item()
            said = denied = Expression("not", [item])
            while self.kinds[self.at] in ("or", "and"):  # “neither 1930 nor 1931”
                self.at += 2 if self.kinds[self.at + 1] == "not" else 1  # “not 1940 and not 1941 either”
                item = self._item()
                denied.parts.append(item)
            self.at += self.kinds[self.at] == "either"
            if self.kinds[self.at] in ("comma", "dash", "correction"):
                self._corrects()
                self.at += self.kinds[self.at] in ("comma", "dash")
            if self.at == self.count:
                return said
            if item.kind == "span" and all(map(is_year_alone, item.leaves())):
                raise NoForm  # “not 1944 - ’45, after the wedding”: whether a span is denied, or one year put right
            begin, mark = self.at, self._marks()  # “not 1935, must be the year after”
            if years := self._year_beside_it():
                beside = Expression("one", [a_year_on(item, years)])
                beside.mark(mark)
                return beside
            self.at = begin
            said = self._alternatives()
            fill([*denied.leaves(), *said.leaves()], span=True)  # “not at Easter 1947, at Whitsun”
            if said.kind in STRETCHES and all(date.whole_year for date in denied.leaves()):
                said = Expression("except", [said, *denied.parts], beside="ahead")
        else:
            said = self._alternatives()
            if self.at == self.count:
                return said  # most
            if self.kinds[self.at] == "not" and self.kinds[self.at + 1] in ("comma", "dash", "correction"):
                self.at += 1
                said = Expression("not", [said])  # “1932 war das nicht, eher 1933”
        begin = self.at
        while corrects := self._corrects():
            keeps = corrects == LIKELIER and ("or" in self.kinds[begin : self.at] or self.kinds[0] == "either")
            if said.kind == "not" and self.at == self.count:
                return said
            corrected = self._alternatives()
            if corrects == LIKELIER and _is_one_of(corrected, said):
                continue  # “1936 or 1937, more likely 1937” is still one of the two
            if corrects == LIKELIER:
                corrected.mark(DOUBT)
            if corrects == LIKELIER and said.kind in ("between", "span"):
                said = Expression("any", [said, corrected], beside="doubt")  # asks of the two
                continue
            if keeps and said.kind == "one" == corrected.kind:  # “1951 or more likely 1952” may be either
                said = Expression("any", [*said.parts, *corrected.parts])
                continue
            if {SIDE_OF_LIMIT.get(limit.kind) for limit in (said, corrected)} == {-1, 1}:
                _take_year_behind(said, corrected)
                said = Expression("within", [said, corrected])  # “dopo il 1938, ma prima del 1940” corrects nothing
                continue
            whole_day = bool(said.leaves()[-1].day and said.leaves()[-1].year)
            Expression("any", [said, corrected]).filled()
            first, last = said.leaves()[-1], corrected.leaves()[0]
            if first.bare is not None:
                raise NoForm  # “3 men, 1938”, though “men” is “but” in the north
            said = corrected
            if first.day and last.month and not last.day:  # “12 June, I mean July”
                month = last.copy()
                last.day = first.day
                if whole_day and corrected.kind == "one":
                    said = Expression("apart", [last, month], beside="corrected")
        denial = self.at + (self.kinds[self.at] == "comma")
        if self.kinds[denial] == "not" and denial + 1 == self.count:  # “vor 1938 nicht”
            self.at = self.count
            flipped = DENIED.get(said.kind)
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
        items, marks = [item], [self._last_mark]
        joins: list[str] = []
        first_mark = self._first_mark
        while self.at < self.count:
            kind = self.kinds[self.at]
            following = self.kinds[self.at + 1]
            if (kind == "comma" and following in ("or", "and")) or (kind == "dash" and following == "or"):
                self.at += 1
                continue
            if self._is_told_without_a_join(items, joins, marks):
                continue
            if kind in SIDES and following == "comma" and len(items) == 1 and items[0].kind == "one":
                self.at += 2  # “the Christmas after, 1936”
                return self._told_apart(items[0].leaves()[0], self._operand())
            limit = kind if kind not in ("comma", "and") else following
            if limit in _LIMITING and len(items) == 1 and (kind != "and" or items[0].kind in LIMITS):
                self.at += 1 if kind in ("comma", "and") else 0
                return self._limited(items[0])
            told_twice = kind == "event" or (kind in _BEGIN_A_DATE and bool(items[0].leaves()[0].event))
            if told_twice and len(items) == 1:  # “the wedding 1954”, “April 1954 (the wedding)”
                items.append(self._item())
                if (known := beside_a_war(items)) is None:
                    raise NoForm
                items, marks = [known], marks[:1]
                continue
            if kind == "same":
                return self._of_same_year(items)
            if (kind not in JOINS and kind != "comma") or following in ("correction", "not"):
                break
            self.at += 1
            if kind == "comma" and self.kinds[self.at] == "same":
                return self._of_same_year(items)
            if kind == "comma" and (known := self._alternatives_in_a_war(items)):
                return known
            if items[0].beside == "just" and kind == "or" and len(items) == 1:
                raise NoForm  # “just before Easter or Whitsun” is not any time before the later one
            joins.append(kind)
            self._doubted = self.kinds[self.at] == "doubt"
            begin, is_apart = self.at, self.kinds[self.at - 2] == "comma"
            items.append(self._item())
            if not is_apart and kind in ("or", "and", "slash"):
                self._share_what_is_behind(items, begin)
            marks.append(self._last_mark)
            if joins == ["comma"] and is_of_year_before(items):
                items, joins, marks = [Expression("in_year", [items[1].leaves()[0], items[0]])], [], marks[:1]
            elif joins == ["comma"] and (known := beside_a_war(items)):
                items, joins, marks = [known], [], marks[:1]
            elif joins[-1] == "comma" and is_told_beside_a_war(items, joins):
                told = joined(items[:-1], joins[:-1], marks[:-1], first_mark, doubted=self._doubted)
                items, joins, marks = [Expression("known", [told, items[-1]])], [], [0]
        if is_year_of_what_follows(items, joins):
            items[-1].leaves()[-1].take_year(items[0].leaves()[0])
            items, joins, marks = items[1:], joins[1:], marks[1:]
        return joined(items, joins, marks, first_mark, doubted=self._doubted)

    def _is_told_without_a_join(self, items: list[Expression], joins: list[str], marks: list[int]) -> bool:
        """Whether another one stands here with no comma and no word of its own before it; it is taken up then."""
        kind = self.kinds[self.at]
        if kind in ("or_later", "or_earlier"):  # “before 1938 or after 1940”
            self.at += 1
            joins.append("or")
            items.append(Expression("after" if kind == "or_later" else "before", [self._operand()]))
            marks.append(self._last_mark)
            return True
        if years := _YEAR_BESIDE.get(kind) or self._year_beside():
            told = self.senses[self.at].value if kind in _YEAR_BESIDE else None
            is_doubted = told == "doubted one" if told else self.kinds[self.at + 1] == "doubt"
            self.at += 1 if kind in _YEAR_BESIDE else 3 + is_doubted
            joins.append("or")
            items.append(Expression("one", [a_year_on(items[-1], years, next_to_it=bool(told))]))
            items[-1].mark(DOUBT if is_doubted else 0)
            marks.append(0)
            return True
        is_doubted = kind == "doubt" and self.kinds[self.at + 1] in _BEGIN_A_DATE  # “1938? maybe 37”
        if is_doubted or (kind == "part" and self._begins_after(items[-1])):  # “late forties early fifties”
            joins.append("comma")
            self._doubted = self._doubted or is_doubted
            items.append(self._item())
            marks.append(self._last_mark)
            return True
        return False

    def _share_what_is_behind(self, items: list[Expression], begin: int) -> None:
        """`1936 või 37 suvel`, “1936 or 1937 in summer”: what stands behind the last of several years is of each."""
        last = items[-1].leaves()[-1]
        if not last.within_a_year or items[-1].kind != "one":
            return
        if is_day_for_a_year(items, last) and self.kinds[begin] == "day":
            last.year, last.day = f"{last.day:02d}", 0  # “1912 or 13 June”
        if not self._is_year(begin, last):
            return
        years = [date for item in items[:-1] for date in item.leaves()]
        if all(item.kind == "one" for item in items) and all(map(is_year_alone, years)):
            for date in years:
                if date.bare is not None:
                    date.year, date.bare = f"{date.bare[0]:02d}", None
                date.take_finer(last)

    def _is_year(self, at: int, date: Partial) -> bool:
        """Whether a date that begins here begins with its year."""
        kind = self.kinds[at]
        return kind in _YEARS or (kind == "day" and not date.day and bool(date.year))

    def _begins_after(self, item: Expression) -> bool:
        """Whether “early” stands here behind a date that is late in something."""
        return item.kind == "one" and item.leaves()[0].part == "late" and self.senses[self.at].value == "early"

    def _year_beside(self) -> int:
        """“1938 or the year after”, where nothing is told after which it was: 1, or -1 for the year before; else 0."""
        at = self.at + (self.kinds[self.at + 1] == "doubt")  # “or it might have been the year before”
        begins = self.kinds[self.at] == "or" and self.kinds[at + 1] == "unit" and self.senses[at + 1].value == "year"
        ends = begins and self.kinds[at + 3] in ("", "query")
        return SIDES.get(self.kinds[at + 2], 0) if ends else 0

    def _year_beside_it(self) -> int:
        """“Not 1945, the year before”: -1, or 1 for the year after; 0 where something else ends the words."""
        if self.kinds[self.at] != "unit" or self.senses[self.at].value != "year" or self.at + 2 != self.count:
            return 0
        years = SIDES.get(self.kinds[self.at + 1], 0)
        self.at += 2 if years else 0
        return years

    def _alternatives_in_a_war(self, items: list[Expression]) -> Expression | None:
        """“The middle of the war, ’42 or ’43”: one of several dates behind a war; None where no such follow."""
        begin, marks = self.at, (self._first_mark, self._last_mark, self._doubted)
        if len(items) == 1 and items[0].kind in ("one", *LIMITS) and items[0].leaves()[0].span:
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
        if len(items) > 1 or date.year or items[0].kind not in ("one", *LIMITS):
            raise NoForm
        date.year = (
            told.year or (next(iter(once)) if len(once) == 1 else "") or (only_year(told.event) if told.event else "")
        )
        date.assumed = told.assumed
        if not date.within_a_year or not date.year:
            raise NoForm
        return (
            Expression("within", [Expression("one", [date]), items[0]])
            if items[0].kind in LIMITS
            else Expression("one", [date])
        )

    def _limited(self, item: Expression) -> Expression:
        """limit = [ "," ] ( before | after ) operand: what the first date says, cut by the second."""
        kind = _LIMIT_OF[self.kinds[self.at]]
        self.at += 2 if self.kinds[self.at + 1] == "dash" else 1
        limit = Expression(kind, [self._operand()])
        both_sides = item.kind in LIMITS and (item.kind in BEFORE) != (kind in BEFORE) and len(item.parts) == 1
        if not both_sides and item.kind not in ("one", "span", "between"):
            raise NoForm
        if both_sides:
            _take_year_behind(item, limit)
        return Expression("within", [item, limit])

    def _item(self) -> Expression:
        kind = self.kinds[self.at]
        mark = 0
        if kind in MARKING:
            mark = self._marks()
            kind = self.kinds[self.at]
        self._first_mark, self._last_mark = mark, 0
        if kind == "unit" and self.kinds[self.at + 1] == "between" and self._is_of_several_or_an_event():
            self.at += 1  # “the years between the wedding and the move”
            kind = "between"
        if kind == "between":
            item = self._some_away() or self._between()  # “between ten and fifteen years before the war”
        elif kind in ("from", "since") and (spanned := self._from()) is not None:
            item = spanned
        elif kind == "after" and self.senses[self.at].value == "next":
            item = self._next_in_its_year()
        elif kind in BEFORE or kind in AFTER:
            if kind == "at_latest" and self.kinds[self.at + 1] in BEFORE:  # “printed before 1914”
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

    def _is_of_several_or_an_event(self) -> bool:
        """Whether a unit here is of more than one, or an event of the family stands behind the word that follows."""
        return str(self.senses[self.at].value).endswith("s") or self.kinds[self.at + 2] == "event"

    def _next_in_its_year(self) -> Expression:
        """“The following summer, 1933” is that summer; without its year it is told nowhere which it follows."""
        self.at += 1
        date = self._operand()
        if not date.within_a_year or not (date.year or self.kinds[self.at] == "comma"):
            raise NoForm
        return Expression("one", [date])

    def _between(self) -> Expression:
        self.at += 1
        return self._range("between", ("and", "or", "until", *_TO))

    def _range(self, kind: str, joins: tuple[str, ...]) -> Expression:
        """`between … and …`, `from … to …`."""
        first = self._operand_or_span()
        if self.kinds[self.at] not in joins:
            raise NoForm
        self.at += 1
        whole = Expression(kind, [first, self._following(first) or self._operand_or_span()])
        if self.kinds[self.at - 1] == "query" or (self.at == self.count and self.kinds[self.at - 1] == "doubt"):
            whole.mark(DOUBT)  # “between 1934 and 1936, I think”
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
            told = "dash" if self.kinds[self.at] == "dash" else ""
            self.at += 2 if self.kinds[self.at + 1] == "dash" else 1
            begin = self.at
            last = self._following(first) or self._operand()
            first.mark |= self._last_mark  # “1915-1918?”
            if first.whole_year and last.season and self.kinds[begin - 1] == "dash" and self._is_year(begin, last):
                first.season, last.season = last.season, 0  # `1936-1937 m. žiemą`
            return self._behind(Expression("span", [first, last], beside=told))
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
        if item.kind != "one" or self.kinds[self.at + 1] not in ENDS:
            return item
        if kind in _BEHIND or (
            kind in _AT_LIMITS and self.kinds[self.at + 1] == "" and self.senses[self.at].value != "ahead"
        ):  # “1938, postmark”
            self.at += 1
            limit = Expression(_LIMIT_OF[kind], item.parts, beside="behind" if kind in _OPEN_BEHIND else "")
            if self.kinds[self.at] == "doubt" and self.at + 1 == self.count:  # “from 1960 onwards, I should think”
                limit.mark(self._marks())
            return limit
        return item


def _take_year_behind(first: Expression, last: Expression) -> None:
    """“After Easter but before Whitsun 1949”: the year that the last of two limits has is of the first too, or the one
    beside it where the months say so (“after November but before March 1949”)."""
    one, other = first.leaves()[0], last.leaves()[0]
    if one.year or not one.within_a_year or not other.within_a_year or not _FIRST <= other.year <= _LAST or other.short:
        return
    one.take_year(other)
    after, before = (one, other) if SIDE_OF_LIMIT[first.kind] > 0 else (other, one)
    if one.year and _month_of(after, other.year) > _month_of(before, other.year) > 0:
        one.year = f"{int(one.year) + (-1 if one is after else 1):04d}"


_FIRST, _LAST = "1583", "2100"
"""The years between which feasts are reckoned by the Gregorian calendar for this."""


def _month_of(date: Partial, year: str) -> int:
    """The month in which a date begins, by its season or its feast too; 0 where nothing tells it."""
    day = holiday(date.feast, year).edtf if date.feast else ""
    return date.month or (int(day[5:7]) if day else 3 * (date.season - SEASONS["spring"] + 1) if date.season else 0)


def _is_one_of(date: Expression, said: Expression) -> bool:
    """Whether a date is one of several that were told before it as far as it goes."""
    if date.kind != "one" or said.kind not in ("any", "all"):
        return False
    one = date.leaves()[0]
    told = [(slot, getattr(one, slot)) for slot in _SLOTS if getattr(one, slot) != getattr(_EMPTY, slot)]
    return any(all(getattr(leaf, slot) == value for slot, value in told) for leaf in said.leaves())


_SLOTS, _EMPTY = ("year", "month", "day", "season", "feast", "weekday", "nth", "part"), Partial()
