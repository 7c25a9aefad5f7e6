"""What stands at a distance from a date or an event: “two years before the fire”, “the second Sunday after Easter”.

outer part   = ( first | last ) [ count ] unit operand
near         = [ count ] ( unit | season | weekday | eve ) ( before | after ) operand
"""

from dataclasses import replace

from boxlore.core.dates.expressions import Expression
from boxlore.core.dates.lexicon import RUSSIAN
from boxlore.core.dates.operands import NoForm, Operands
from boxlore.core.dates.outer_parts import outer_distance, outer_part
from boxlore.core.dates.partial import ABOUT, Partial
from boxlore.core.dates.relative import A_COUPLE, A_FEW, NEXT_TO_IT, Distance

SIDES = {"before": -1, "after": 1}
_SIDE_BEHIND = {"before_behind": -1, "after_behind": 1}
_DAY_BESIDE = {"eve": (-1, "day"), "morrow": (1, "day"), "night_to": (-1, "night")}
_BEGIN_NEAR = ("at_a_distance", "eve", "morrow", "night_to", "day", "ordinal", "few", "unit", "season", "weekday", "or")
_COUNTING = ("day", "unit")
_MORE = {"older": 1, "not_yet": -1}
_OF_TWO_COUNTS = ("or", "dash", "comma", "slash")
_COUNTED = ("day", "week", "month", "year")


class Distances(Operands):
    """The forms that tell how far away something is, and on which side."""

    def _near(self) -> Expression | None:
        """near = [ count ] ( unit | season | weekday | eve ) ( before | after ) operand"""
        begin, count = self.at, 0
        exact = self.kinds[begin] == "to_the_day"  # “exactly a year before the wedding”
        self.at += exact or self.kinds[begin] == "at_a_distance"  # `через год после свадьбы`
        if turned := self._count_behind():
            return turned
        if more := _MORE.get(self.kinds[self.at], 0):
            return self._farther_away(more)
        if self.kinds[self.at] not in _BEGIN_NEAR:
            self.at = begin
            return None
        if some := self._some_away() or self._of_two_weekdays() or self._years_and_months():
            return some
        if beside_day := _DAY_BESIDE.get(self.kinds[self.at]):
            count = 2 if self.senses[self.at].value == "second" else 0  # “le surlendemain de Noël”
            self.at += 1
            return Expression("near", [self._operand()], distance=Distance(*beside_day, count))
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
        if sense.kind == "unit" and not side and (count or sense.value in _COUNTED):  # `vuosi häiden jälkeen`
            return self._counted_behind(begin, beside, str(sense.value), count or 1)
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
            if count % 12 == 0:  # “a decade before 1936”
                count, unit, loose = count // 12, "year", True
        if unit in ("days", "weeks", "months", "years"):  # “the weeks before Christmas” are a few
            unit, count = unit[:-1], count or NEXT_TO_IT
        if unit in ("week_from", "week_to") or (unit == "weekend" and count):
            raise NoForm
        if loose:
            anchor.mark |= ABOUT
        distance = Distance(side, unit, count, value, bool(anchor.event), exact or told_exactly)
        return self._or_so_many(anchor, distance) or Expression("near", [anchor], distance=distance)

    def _or_so_many(self, anchor: Partial, distance: Distance) -> Expression | None:
        """“Three days before the wedding, or four”: one of the days so far away; None where no other count ends it."""
        begin = self.at
        self.at += self.kinds[self.at] == "comma"
        joined = self.kinds[self.at] == "or"
        self.at += joined
        mark = self._marks()
        other, count = self._count_ahead() if joined or mark else 0, distance.count or 1
        is_near = count // 2 <= other <= 2 * count + 1 and other not in (0, count)
        if distance.unit not in _COUNTED or not is_near or anchor.day or self.kinds[self.at]:
            self.at = begin
            return None  # “three days after 4 June 1950 or 5”
        anchor.mark |= mark
        away = [replace(distance, count=one) for one in sorted((count, other))[:: distance.side]]
        return Expression("between", [Expression("near", [anchor.copy()], distance=one) for one in away])

    def _farther_away(self, more: int) -> Expression:
        """“Over ten years after 1950”, “less than a month before the fire”: farther away than that, or not so far."""
        self.at += 1
        found = self._near() if self.kinds[self.at] in _COUNTING else None
        if found is None or found.distance is None or found.distance.count < 0:
            raise NoForm
        return replace(found, distance=replace(found.distance, more=more))

    def _count_behind(self) -> Expression | None:
        """`года через два после свадьбы`, `een jaar of twee na de bruiloft`: about so many years from it, where the
        count stands behind its unit."""
        at, unit = self.at, ""
        if self.kinds[at] == "unit" and self.senses[at].languages == RUSSIAN:
            unit = str(self.senses[at].value).removesuffix("s")
            at += 2 if self.kinds[at + 1] == "at_a_distance" else 1
        elif at and self.senses[at - 1].value == "years":
            unit = "year" if self.senses[at - 1].kind == "about" else ""
        if unit not in _COUNTED or self.kinds[at] != "day" or not (side := self._side(at + 1)):
            return None
        count = self.senses[at].value[0]  # type: ignore[index]  # a number and its count of digits
        self.at = at + 2
        anchor = self._operand()
        anchor.mark |= ABOUT
        return Expression("near", [anchor], distance=Distance(side, unit, count, event=bool(anchor.event)))

    def _some_away(self) -> Expression | None:
        """“Two or three years after the wedding”, “a year or two before it”: one of the days so far away."""
        if (counts := self._two_counts()) is None:
            return None
        least, most, unit, beside = counts
        side, side_behind = self._side(beside), 0
        if beside + 1 < self.count and self.kinds[beside] in ("event", "feast", "span"):
            side_behind = _SIDE_BEHIND.get(self.kinds[beside + 1], 0)
        if unit not in _COUNTED or not least < most or not (side or side_behind):
            return None
        self.at = beside if side_behind else beside + 1
        anchor = self._operand()
        self.at += 1 if side_behind else 0
        side = side or side_behind
        away = [
            Distance(side, unit, count, event=bool(anchor.event))
            for count in ((least, most) if side > 0 else (most, least))
        ]
        return Expression("between", [Expression("near", [anchor.copy()], distance=distance) for distance in away])

    def _years_and_months(self) -> Expression | None:
        """“3 years and 2 months before June 1936”: all the months."""
        at, count = self.at, 0
        for unit, months in (("year", 12), ("month", 1)):
            told = self.senses[at + 1].value if self.kinds[at] == "day" and self.kinds[at + 1] == "unit" else ""
            if told not in (unit, f"{unit}s"):
                return None
            count += self.senses[at].value[0] * months  # type: ignore[index]  # a number and its count of digits
            at += 2
            at += unit == "year" and self.kinds[at] in ("and", "comma")
        if not (side := self._side(at)):
            return None
        self.at = at + 1
        anchor = self._operand()
        return Expression("near", [anchor], distance=Distance(side, "month", count, event=bool(anchor.event)))

    def _of_two_weekdays(self) -> Expression | None:
        """“Monday or Tuesday after Easter 1938”: either of them."""
        at = self.at
        if self.kinds[at] != "weekday" or self.kinds[at + 1] not in ("or", "slash") or self.kinds[at + 2] != "weekday":
            return None
        if not (side := self._side(at + 3)):
            return None
        self.at = at + 4
        anchor = self._operand()
        days = [int(str(self.senses[place].value)) for place in (at, at + 2)]
        away = [Distance(side, "weekday", value=day, event=bool(anchor.event)) for day in days]
        parts = [Expression("near", [anchor.copy()], distance=distance) for distance in away]
        return Expression("any", [*parts], beside="own")

    def _two_counts(self) -> tuple[int, int, str, int] | None:
        """The fewer, the more, their unit, and the place behind them, where a row of words tells two counts; an article
        for “one” adds nothing and is passed over before (`een of twee jaar`), and so may “or” be (`rok dva`)."""
        begin, kinds, senses = self.at, self.kinds, self.senses
        joined = kinds[begin + 1] in _OF_TWO_COUNTS
        if kinds[begin] == "unit":
            most_at = begin + (2 if joined else 1)
            least, unit_at, behind = 1, begin, most_at + 1
        elif kinds[begin] == "between" and kinds[begin + 1] == "day" and kinds[begin + 2] in ("and", *_OF_TWO_COUNTS):
            most_at, unit_at, behind = begin + 3, begin + 4, begin + 5
            least = senses[begin + 1].value[0]  # type: ignore[index]  # as below
        elif kinds[begin] == "or":
            most_at = begin + 1
            least, unit_at, behind = 1, begin + 2, begin + 3
        elif kinds[begin] == "day" and joined:
            most_at = begin + 2
            least, unit_at, behind = senses[begin].value[0], begin + 3, begin + 4  # type: ignore[index]
        else:
            return None
        if behind > self.count or kinds[most_at] != "day" or kinds[unit_at] != "unit":
            return None
        most = senses[most_at].value[0]  # type: ignore[index]  # a number and its count of digits
        unit = str(senses[unit_at].value).removeprefix("one_").removesuffix("s")
        return least, most, unit, behind

    def _counted_behind(self, begin: int, at: int, unit: str, count: int) -> Expression | None:
        """`kaksi vuotta tulipalon jälkeen`, `két évvel a tűz után`: the side stands behind what it is beside."""
        if self.kinds[at] in ("event", "feast", "span"):
            self.at = at
            anchor = self._operand()
            if side := _SIDE_BEHIND.get(self.kinds[self.at], 0):
                self.at += 1
                distance = Distance(side, unit.removesuffix("s"), count, event=bool(anchor.event))
                return Expression("near", [anchor], distance=distance)
        self.at = begin
        return None

    def _feasts_away(self, begin: int, count: int, *, sure: bool) -> Expression | None:
        """“Two Christmases before the wedding”: whether the one next to it counts is asked; “the second Christmas after
        it” says so."""
        side = self.kinds[self.at + 1]
        if side not in SIDES or count < 1:
            self.at = begin
            return None
        feast = Partial(feast=str(self.senses[self.at].value))
        self.at += 2
        anchor = self._operand()
        if not (anchor.event or anchor.span):
            raise NoForm
        parts: list[Partial | Expression] = [Expression("one", [feast]), Expression(side, [anchor])]
        return Expression("within", parts, distance=Distance(SIDES[side], "feast", count, exact=sure))

    def _away_behind(self, kind: str, limit: Expression) -> Expression | None:
        """`po vestuvių kokie dveji metai`, “after the wedding, two years or so”: how far it is from an event or a war,
        told behind it at the end; None where that is not told."""
        begin, anchor = self.at, limit.leaves()[0]
        if kind not in SIDES or not (anchor.event or anchor.span):
            return None
        self.at += self.kinds[self.at] == "comma"
        mark = self._marks()
        self.at += self.kinds[self.at] == "at_a_distance"
        count = self._count_ahead()
        told = str(self.senses[self.at].value) if self.kinds[self.at] == "unit" else ""
        unit = told.removeprefix("one_").removesuffix("s")
        self.at += bool(told)
        if not count and self.kinds[self.at] == "day" and self.senses[self.at - 1].languages == RUSSIAN:
            mark, count = mark | ABOUT, self._count_ahead()  # `года два`
        if self.kinds[self.at] == "about_behind":
            mark |= ABOUT
            self.at += 1
        if unit not in _COUNTED or not (count or mark or told.startswith("one_")) or self.at < self.count:
            self.at = begin
            return None
        anchor.mark |= mark
        return Expression("near", [anchor], distance=Distance(SIDES[kind], unit, count, event=bool(anchor.event)))

    def _count_ahead(self) -> int:
        """Go past a number, or a word for a few. Returns it; 0 for none."""
        kind, count = self.kinds[self.at], 0
        if kind == "day":
            count = self.senses[self.at].value[0]  # type: ignore[index]  # a number and its count of digits
        elif kind == "few":
            count = A_COUPLE if self.senses[self.at].value == "couple" else A_FEW
        self.at += bool(count)
        return count

    def _in_year_beside(self, date: Partial) -> Expression | None:
        """“Whitsun the year before the flood”: of the year beside an event; None where no such year follows."""
        begin = self.at
        self.at += self.kinds[self.at] == "comma"
        at = self.at + (self.kinds[self.at] == "day" and self.senses[self.at].value[0] == 1)  # type: ignore[index]
        is_year = self.kinds[at] == "unit" and self.senses[at].value == "year"
        if is_year and self._side(at + 1) and date.within_a_year and not (date.year or date.event):
            beside = self._near()
            if beside is not None and beside.leaves()[0].event:
                return Expression("in_year", [date, beside])
        self.at = begin
        return None

    def _nth_of_stretch(self) -> Expression | None:
        """`the first Christmas of the war`, `the last winter of the Boer War`; of what began with an event it is the
        how-manieth after it (`our first Christmas [in Leeds]`)."""
        begin = self.at
        if self.kinds[begin] not in ("ordinal", "last") or self.kinds[begin + 1] not in ("feast", "season", "unit"):
            return None
        of, thing = self.kinds[begin + 2], self.senses[begin + 1]
        if thing.kind == "unit" and thing.value != "year":
            return None
        if of not in ("span", "event") or (of == "event" and self.kinds[begin] == "last"):
            return None
        count = -1 if self.kinds[begin] == "last" else self._counted()
        self.at = begin + 2
        stretch = self._operand()
        value = thing.value if isinstance(thing.value, int) else 0
        if thing.kind == "unit" and of == "event":
            years = [Distance(1, "year", years, event=True, exact=True) for years in (count - 1, count) if years]
            ends = [Expression("near", [stretch.copy()], distance=distance) for distance in years]
            return Expression("between", [*([] if count > 1 else [Expression("one", [stretch])]), *ends])
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

    def _outer_part(self) -> Expression | None:
        """`the first ten days of June 1940`, `the last fortnight of July`"""
        length = outer_part(self.senses[self.at :])
        if not length:
            return None
        distance = outer_distance(self.senses[self.at : self.at + length])
        self.at += length
        return Expression("outer", [self._operand()], distance=distance)

    def _side(self, at: int) -> int:
        """On which side a word stands, 0 for none; in Russian “until” is before behind a count (`за год до пожара`)."""
        if self.kinds[at] == "until" and self.senses[at].languages == RUSSIAN:
            return -1
        return SIDES.get(self.kinds[at], 0)

    def _counted(self) -> int:
        """Go past an ordinal or a number. Returns it; less than 1 (“last”) has no form here."""
        value = self.senses[self.at].value
        self.at += 1
        return value[0] if isinstance(value, tuple) else int(str(value))

    @staticmethod
    def _told_apart(date: Partial, told: Partial, side: int = 0) -> Expression:
        """“The summer after, 1934”, where nothing is told after which it was: of that year, or beside it."""
        if not told.whole_year or date.year or date.span or date.event:
            raise NoForm
        date.year, date.assumed, date.mark = told.year, told.assumed, date.mark | told.mark
        unit = "season" if date.season else "year"
        near = [Expression("near", [told], distance=Distance(side, unit, value=date.season))] if side else []
        return Expression("apart", [date, *near])
