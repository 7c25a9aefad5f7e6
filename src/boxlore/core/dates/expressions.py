"""Partial dates joined by an operator → EDTF: the third of the three steps, once the grammar has found the operator.

Open slots are filled from the neighbours first (`core.dates.partial.fill`), then each date is written, then the whole.
“Between” and “or” are one of a set, since a picture is one moment; “from … to” is an interval. “Before” and “after”
leave their date out, “by”, “since”, “not before” hold it, as BEF and AFT of FamilySearch GEDCOM 7.0.18 do.
"""

import itertools
from dataclasses import dataclass, replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.alternatives import in_two_calendars, of_two_years, turned_about, with_shared_day, with_years
from boxlore.core.dates.before_and_after import beside, not_far
from boxlore.core.dates.context import NOT_THEN, NOT_TOGETHER, ONE_OR_BOTH, DateContext, NoSuchDate, qualified
from boxlore.core.dates.edtf_values import Day, Edtf, month_length
from boxlore.core.dates.holidays import came_once
from boxlore.core.dates.partial import ABOUT, MARKS, MOST_YEARS_BETWEEN, Partial, fill
from boxlore.core.dates.relative import Distance, bounds, near, outermost, outermost_year
from boxlore.core.dates.ruled_out import without
from boxlore.core.dates.short_years import LAST_DAY
from boxlore.core.dates.wars_table import OVER_BY_THEN
from boxlore.core.dates.writing import SEASON_NAMES, choices_of, question, spans_of, written, year_of


@dataclass(slots=True)
class Expression:
    """Dates and what joins them. `kind` is one, span, between, before, at_latest, after, at_earliest, from, to, any,
    all, within, near, in_year, nth, outer, known, apart, not or except.

    `within` is the first part, cut by the second, which is before or after a date; `near` stands at a `distance` from
    its part; `in_year` is the first part, in the year that the second tells; `nth` is the how-manieth of its first
    part, a feast or a season, in its second, a war; `apart` is the first part, or the second; `beside` says how two
    alternatives stand beside each other where it matters: on both sides of a stroke, as one day in two calendars does
    (`slash`), or the second only doubted (`doubt`), the later ones behind a comma (`finer`), each with its own day and
    month (`own`), a number before a day (`row`), or two months with no word between them (`pair`); of a limit that it
    is not far away (`just`), or that its word stands behind (`behind`); of what it was not, that this is told first
    (`ahead`).
    """

    kind: str
    parts: "list[Partial | Expression]"
    distance: Distance | None = None
    beside: str = ""

    def leaves(self) -> list[Partial]:
        """The dates, in the order in which they were told."""
        if self.kind == "one":
            return self.parts  # type: ignore[return-value]  # of one date
        dates: list[Partial] = []
        for part in self.parts:
            if isinstance(part, Expression):
                dates.extend(part.leaves())
            else:
                dates.append(part)
        return dates

    def mark(self, mark: int) -> None:
        """Doubt or approximation of the whole belongs to each of its dates."""
        for date in self.leaves():
            date.mark |= mark

    def filled(self) -> bool:
        """Fill open slots; False where one stays open that must not."""
        if self.kind == "known" and isinstance(self.parts[0], Expression) and self.parts[0].kind == "any":
            return self.parts[0].filled()
        if self.kind == "within":
            self._share_century()
        if self.kind in ("within", "near", "in_year", "nth", "known", "apart") or self.beside == "ahead":
            return all(fill([date], span=True) for date in self.leaves())
        if self.kind in ("any", "all") and (self._span_in_each_year() or self._product()):
            return True
        if not fill(self.leaves(), span=self.kind in ("span", "between")):
            return False
        return self.kind != "any" or not self._is_season_or_its_year()

    def _share_century(self) -> None:
        """“1930 or so, no later than 33”, “before 1914, after 08”: two digits are of the century told before them."""
        told, limit = self.leaves()[0], self.leaves()[-1]
        if limit.bare is None or limit.bare[1] != 2 or limit.year or len(told.year) != 4 or told.day:
            return
        if limit.bare[0] > LAST_DAY or not told.within_a_year:
            limit.year, limit.bare = f"{told.year[:2]}{limit.bare[0]:02d}", None
            limit.assumed = told.assumed

    def _is_season_or_its_year(self) -> bool:
        """“Winter of 1938”, though “of” is “or” in Dutch: nobody says a season or its own year, nor a war or a year."""
        first, *others = self.leaves()
        if first.span and any(date.whole_year for date in others):
            return True  # “the Depression of 1938”
        if not (first.season and first.year_from_right) or first.years:
            return False
        return all((date.season, date.year) == (first.season, first.year) for date in others)

    def _span_in_each_year(self) -> bool:
        """“From May to July, 1914 and 1915”: the span in every year."""
        span, *years = self.parts
        if not isinstance(span, Expression) or span.kind != "span":
            return False
        first, last = span.leaves()
        if first.year or not (first.within_a_year or first.bare) or not last.within_a_year or not last.year.isdigit():
            return False
        texts = [_year_behind(year, last) if isinstance(year, Partial) else "" for year in years]
        if not all(texts) or not fill([first, last], span=True):
            return False
        self.parts = [span]
        for text in texts:
            again = [first.copy(), last.copy()]
            for date in again:
                date.year = text
            self.parts.append(Expression("span", [*again]))
        return True

    def _product(self) -> bool:
        """`May or June of 1938 or 1939`: every month in every year."""
        if len(self.parts) < 3:
            return False
        dates = self.leaves()
        for date, following in itertools.pairwise(dates):  # “5 or 6 August 1938 or 1939”
            if date.bare and not date.year and following.day and following.month and following.year:
                date.day, date.bare = date.bare[0], None
        for date, before in itertools.pairwise(dates[::-1]):
            may_be_year = date.bare is not None and date.bare[0] > LAST_DAY and not date.within_a_year
            if may_be_year and len(dates) > 2 and before.day and len(before.year) == 4:  # “5 or 6 May 1938 or 39”
                date.year, date.bare = f"{before.year[:2]}{date.bare[0]:02d}", None  # type: ignore[index]
        months = [date for date in dates if date.within_a_year]
        years = [date for date in dates if date.whole_year]
        if len(months) < 2 or not years or [*months, *years] != dates or any(date.year for date in months[:-1]):
            return False
        are_short = all(len(date.year) == 2 for date in (months[-1], *years))
        if (
            not months[-1].year
            or any(date.bare or (date.short and not are_short) for date in dates)
            or not fill(months, span=False)
        ):
            return False
        products: list[Partial | Expression] = [*months]
        for year in years:
            for month in months:
                product = month.copy()
                product.year = year.year
                products.append(product)
        self.parts = products
        return True

    def text(self, context: DateContext, pick: int = 0) -> str:
        """The EDTF; `pick` is the how-manieth of what its dates may mean. Raises NoSuchDate or a TextFault."""
        return _WRITERS[self.kind](self, context, pick)

    def question(self, context: DateContext) -> str:
        """What must be asked, or nothing."""
        if self.kind == "one":
            date: Partial = self.parts[0]  # type: ignore[assignment]
            odd = date.plain_year and date.is_odd_decade
            return f"“{context.text}”: is the year meant?" if odd else question(date, context)
        if self.kind in SIDE_OF_LIMIT and self._same_edge(context):
            return ""
        if self.kind == "span" and self._decades_or_years():
            return f"“{context.text}”: from the year or from the decade?"
        if self.distance and self.distance.more:
            return f"“{context.text}”: how far away was that?"
        dates = self.leaves()[1:] if self.kind == "in_year" else self.leaves()
        if self.follows_event and not dates[0].year:
            return ""
        if self.is_feast_beside_war or self.kind == "nth":
            return question(dates[-1], context)
        if self.kind == "known" and dates[-1].event:
            dates = [date for date in dates if date.year]  # one without is of the event's year
        for date in dates if self.kind != "known" else dates[:-1]:
            if self.kind == "within" and date.feast and not date.year and len(came_once(date.feast)) > 1:
                continue  # it is read where each of its years leaves the same days
            if asks := question(date, context):
                return asks
        return ""

    @property
    def follows_event(self) -> bool:
        """Whether it is beside an event of the family: “the Christmas after the wedding” is the next one."""
        return self.kind == "within" and bool(self.leaves()[-1].event)

    @property
    def is_feast_beside_war(self) -> bool:
        """Whether it is a feast that comes every year, beside a war: “the last Christmas before the war”."""
        if self.kind != "within":
            return False
        feast, side = self.leaves()[0], self.leaves()[-1]
        return bool(side.span and feast.feast) and not (feast.year or came_once(feast.feast))

    @property
    def may_be_up_to_a_limit(self) -> bool:
        """Whether a limit that cuts nothing off may be another date that is meant: “summer 1955, 56 at the outside”."""
        told, limit = self.leaves()[0], self.leaves()[-1]
        is_behind = getattr(self.parts[1], "beside", "") == "behind"  # and not “taken 1936, printed 1938”
        if self.distance or not is_behind or told.mark or not limit.whole_year:
            return False
        years = [date.year for date in (told, limit)]
        return all(map(str.isdigit, years)) and 0 < abs(int(years[1]) - int(years[0])) <= MOST_YEARS_BETWEEN

    def _decades_or_years(self) -> bool:
        """`1900-1910s`: the first may be a year or a decade."""
        first, last = self.leaves()[0], self.leaves()[-1]
        return first.whole_year and first.year[-1:] == "0" and last.whole_year and last.year[-1:] == "X"

    def _same_edge(self, context: DateContext) -> bool:
        """Whether a war ends (or begins) in the same month in every theatre."""
        date = self.leaves()[0]
        if len(date.span) != 1:
            return False
        return len({span[0 if SIDE_OF_LIMIT[self.kind] < 0 else 1] for span in spans_of(date, context)}) == 1

    def choices(self, context: DateContext) -> int:
        """In how many ways it may be meant."""
        if self.kind == "one":
            (date,) = self.leaves()
            return choices_of(date, context) + (len(date.span) == 1 and not date.part)
        dates = self.leaves() if self.kind != "known" else self.leaves()[:-1]
        if self.is_feast_beside_war or self.kind == "nth":
            return choices_of(dates[-1], context)
        return max(choices_of(date, context) for date in dates)


def _year_behind(date: Partial, told: Partial) -> str:
    """The year of a date that is told as one alone behind a date of its kind, in two digits too (“May to July 1914 or
    15”); else empty."""
    if date.bare is not None and not (date.within_a_year or date.year or told.day) and date.bare[1] == len("15"):
        return f"{told.year[:-2]}{date.bare[0]:02d}"
    return date.year if date.whole_year and len(date.year) == len(told.year) else ""


def _written(part: Partial | Expression, context: DateContext, pick: int) -> str:
    return part.text(context, pick) if isinstance(part, Expression) else written(part, context, pick)


def _one(whole: Expression, context: DateContext, pick: int) -> str:
    date: Partial = whole.parts[0]  # type: ignore[assignment]  # of one date
    if len(date.span) == 1 and not date.part:
        spans = spans_of(date, context)
        if len(spans) > 1 and not pick:
            return f"{min(first for first, _ in spans)[:4]}/{max(last for _, last in spans)[:4]}"
        pick = max(pick - 1, 0)  # the years of all its theatres are the first choice
    return written(date, context, pick)


def _end(text: str, *, last: bool) -> str:
    """One end of a date: of an interval or a set its outer end."""
    if text[0] in "[{":
        text = text[1:-1].split(",")[-1 if last else 0]
        text = text.split("..")[-1 if last else 0]
    elif "/" in text:
        text = text.split("/")[1 if last else 0]
    if text in ("", ".."):
        raise NoSuchDate("One end of this is open. When did it begin and end?")
    return text


def _ends(whole: Expression, context: DateContext, pick: int) -> tuple[str, str]:
    first, last = (_written(part, context, pick) for part in whole.parts)
    begin, end = _end(first, last=False), _end(last, last=True)
    starts, ends = whole.leaves()[0], whole.leaves()[-1]
    if ends.span and not ends.part and not ends.year:
        end = _end(last, last=False)  # “from 1925 until the war” ends where that began
    if ends.span and ends.part == "early":
        edges = [*_edges(ends, context, last=False), end]
        raise NoSuchDate("Until when was that?", tuple(f"{begin}/{edge}" for edge in edges))
    if starts.span and starts.part == "late":
        edges = [*_edges(starts, context, last=True), begin]
        raise NoSuchDate("When did that begin?", tuple(f"{edge}/{end}" for edge in edges))
    year = end.rstrip("?~%")
    if year.isdigit() and begin.startswith(year) and len(begin.rstrip("?~%")) > len(year):
        raise NoSuchDate("Until when was that?", (begin,))  # a word between them that is none of a span
    if begin[:8] == end[:8] and begin[8:10] > end[8:10] > "":
        raise NoSuchDate("This ends before it begins. Which is meant?")
    if ends.year_from_left and ends.year.isdigit() and _is_backwards(begin, end):
        end = _end(_written(ends.shifted(1), context, pick), last=True)  # “from November 1948 to February”
    both = starts.year.isdigit() and ends.year.isdigit()
    told = both and starts.year_from_right and not starts.order
    if told and _is_backwards(begin, end):
        choices = []  # “from Christmas to Easter 1939” began in 1938, or the year was that of Christmas
        for early, late in ((-1, 0), (0, 1)):
            moved = (starts.shifted(early), ends.shifted(late))
            choices.append("/".join(_end(written(date, context, pick), last=at > 0) for at, date in enumerate(moved)))
        raise NoSuchDate("In which year did that begin?", tuple(choices))
    return begin, end


def _edges(war: Partial, context: DateContext, *, last: bool) -> list[str]:
    """The months in which a war began or ended, by theatre: “between 1912 and the start of the First War” ends with the
    first of them, or with its first third, “early in the First War”."""
    return list(dict.fromkeys(span[last] for span in spans_of(war, context)))


def _is_backwards(begin: str, end: str) -> bool:
    """Whether a span begins after it ends."""
    first, last = standard.parsed(begin).earliest, standard.parsed(end).latest
    return first is not None and last is not None and first > last


def _span(whole: Expression, context: DateContext, pick: int) -> str:
    """`winter 1938-1939` is one season of two years; else an interval from end to end."""
    first, last = whole.leaves()[0], whole.leaves()[-1]
    if first.season and not first.calendar and last.whole_year and first.year.isdigit() and last.year.isdigit():
        if len(last.year) == 2 and first.year == last.year:
            raise NoSuchDate("In which year did that begin?")
        return written(with_years(first, last), context, pick)
    begin, end = _ends(whole, context, pick)
    if last.year_from_left and begin.isdigit() and end.startswith(begin) and len(whole.parts) == 2:
        if whole.beside == "dash":
            return end  # “1936 – 14th of March” is one day
        opening = f"{begin}-01-01" if len(end) > len("1938-06") else f"{begin}-01"
        raise NoSuchDate("When did that begin?", (f"{opening}/{end}", end))  # “1938 until Christmas”
    if first.feast and end.isdigit() and begin == f"{int(end) - 1:04d}-12-31":
        end = f"{end}-01-01"  # “New Year’s Eve 1929 into 1930” is one night
    if first.feast and end.isdigit() and begin == f"{int(end) - 1:04d}-01-01":
        begin, end = f"{int(end) - 1:04d}-12-31", f"{end}-01-01"  # “New Year’s, 1929 into 1930”
    if begin.rstrip("?~%") == end.rstrip("?~%"):  # “early 1952 – January, I think”
        return qualified(begin, end[-1]) if end[-1] in "?~%" else begin
    return f"{begin}/{end}"


def _between(whole: Expression, context: DateContext, pick: int) -> str:
    first, last = _ends(whole, context, pick)
    same = first.strip("?~%").count("-") == last.strip("?~%").count("-")
    return f"[{first}..{last}]" if same else f"{first}/{last}"


SIDE_OF_LIMIT = {"before": -1, "at_latest": -1, "after": 1, "at_earliest": 1}


def _limit(whole: Expression, context: DateContext, pick: int) -> str:
    """`by 1914` is to the end of 1914, `before 1914` to that of 1913. A war began and ended within a month, and an
    event of the family within its day, which stay in."""
    (part,), dates, side = whole.parts, whole.leaves(), SIDE_OF_LIMIT[whole.kind]
    inside = ("late", "mid") if side < 0 else ("early", "mid")  # “before the end of 1911” may be in 1911
    spans = held = named = False
    for date in dates:
        _ask_where_a_feast_is_another_day(date, context)
        spans = spans or (bool(date.span) and not date.part)
        held = held or date.part in inside
        named = named or bool(date.span or date.event)
    text, leaves_out = _written(part, context, pick), whole.kind in ("before", "after")
    if text[0] == "[" and ".." not in text:  # “before 1950, or 1938”: the widest of the limits is certain
        members = sorted(text[1:-1].split(","), key=lambda member: str(standard.parsed(member).earliest))
        text = f"[{','.join(members)}]"
    of_one_stretch = "/" in text or ("[" in text and isinstance(part, Partial) and not part.part_of_decade)
    inner = of_one_stretch and ((leaves_out and not held) or spans)
    end = _end(text, last=(side < 0) != inner)
    if spans and side > 0:
        end = OVER_BY_THEN.get(end, end)
    if leaves_out and not (held or named):
        end = beside(end, side)
    if whole.beside == "just":
        return not_far(end, side, of_years=spans)
    return f"[..{end}]" if side < 0 else f"[{end}..]"


def _ask_where_a_feast_is_another_day(date: Partial, context: DateContext) -> None:
    """“Developed 12.1.39, taken at Xmas” are two dates, and no 12 January that is Christmas. Raises NoSuchDate."""
    if not (date.feast and date.day and date.year):
        return
    told = date.copy()
    told.year, told.assumed = year_of(date, 0), False
    if asks := question(told, context):
        raise NoSuchDate(asks, (written(told, context),))


def _from(whole: Expression, context: DateContext, pick: int) -> str:
    """`from 1900` is open towards us; “from” with a decade or a summer only says when it is from."""
    text = _one(whole, context, pick)
    if whole.leaves()[0].is_part_of_year and text[0] == "[":
        return f"{_end(text, last=False)}/.."  # “from early 1936”
    return (
        f"{text}/.."
        if text[-1].isdigit() and "X" not in text and text[0] not in "[{" and "/" not in text and not _season(text)
        else text
    )


def _season(text: str) -> bool:
    return len(text) == 7 and text[5:] > "12"


def _to(whole: Expression, context: DateContext, pick: int) -> str:
    return f"../{_end(_one(whole, context, pick), last=True)}"


def _set(whole: Expression, context: DateContext, pick: int) -> str:
    if whole.beside == "doubt":
        if same := _refined(whole, context, pick):
            return same
        if [getattr(part, "kind", "") for part in whole.parts[1:]] == ["any"]:
            raise NoSuchDate(NOT_TOGETHER, tuple(_written(part, context, pick) for part in whole.parts))
    if whole.beside == "finer":
        _ask_of_the_finer(whole, context, pick)
    dates = whole.leaves()
    if whole.beside == "row":
        _ask_both_days(dates, context, pick)
    if whole.beside == "pair":
        _ask_one_or_both(dates, context, pick)
    if whole.beside == "slash" and (season := of_two_years(*dates[:2])) is not None and len(dates) == 2:
        return written(season, context, pick)
    if whole.beside == "slash" and (day := in_two_calendars(dates, context, pick)):
        for date in dates:
            date.new_style = True  # told in both
        return day
    if whole.beside != "own" and whole.kind == "any" and (shared := with_shared_day(dates)):
        _ask_whose_day(whole.parts, _spans_of_each(whole) or [*shared], context, pick)
    _ask_whose_month(dates, context, pick)
    _put_in_order(whole, context, pick)
    texts: list[str] = []
    for part in whole.parts:
        text = _written(part, context, pick)
        if text[0] in "[{":
            texts.extend(text[1:-1].split(","))
        elif "/" in text:
            if ".." in text:
                raise NoSuchDate("One end of this is open. When did it begin and end?")
            texts.append(text.replace("/", ".."))
        else:
            texts.append(text)
    texts = [text for text in dict.fromkeys(texts) if text[-1] not in "?~%" or text[:-1] not in texts]
    if len(texts) == 1 and ".." not in texts[0]:
        return texts[0]
    if whole.beside == "slash" and _are_holidays_over_new_year(dates, texts):
        return f"[{texts[0]}..{texts[-1]}]"
    return f"[{','.join(texts)}]" if whole.kind == "any" else f"{{{','.join(texts)}}}"


def _are_holidays_over_new_year(dates: list[Partial], texts: list[str]) -> bool:
    """“Christmas/New Year 1951-52”: the days between the two feasts as well, which are holidays too (common practice,
    no source)."""
    if len(texts) != 2 or not all(date.feast for date in dates):
        return False
    first, last = texts
    over_new_year = first[4:8] == "-12-" and last[4:8] == "-01-" and first[:4].isdigit()
    return over_new_year and last[:4] == f"{int(first[:4]) + 1:04d}"


def _put_in_order(whole: Expression, context: DateContext, pick: int) -> None:
    """“Christmas 1938 or New Year” is the next New Year; what may be of several years is asked."""
    dates = whole.leaves()
    ways = turned_about(dates, context, 0)  # whichever winter of a year is meant
    choices = []
    for years in ways:
        for date, year in zip(dates, years, strict=True):
            date.year, date.year_from_left, date.year_from_right = year, False, False
        if len(ways) > 1:
            choices.append(whole.text(context, pick))
    if choices:
        raise NoSuchDate(
            "Of which year is the first of these, and of which what follows?", tuple(dict.fromkeys(choices))
        )


def _ask_whose_month(dates: list[Partial], context: DateContext, pick: int) -> None:
    """“Summer ’38 or ’39, August” is asked: the month may be that of each year."""
    *before, last = dates
    if not last.month_behind or not before or not all(date.season and date.year for date in before):
        return
    each = [last.copy() for _ in dates]
    for date, told in zip(each, dates, strict=True):
        date.year, date.assumed, date.month_behind = told.year, told.assumed, False
    last.month_behind = False
    choices = (Expression("any", list(meant), beside="own").text(context, pick) for meant in (each, dates))
    raise NoSuchDate("Is the month meant of each year?", tuple(dict.fromkeys(choices)))


def _ask_both_days(dates: list[Partial], context: DateContext, pick: int) -> None:
    """“25, 26 Dec 1948” is asked: the first number may be none of a date."""
    both = Expression("all", list(dates), beside="own").text(context, pick)
    raise NoSuchDate("Are both days meant, or the last?", (both, written(dates[-1], context, pick)))


def _ask_one_or_both(dates: list[Partial], context: DateContext, pick: int) -> None:
    """“June, July 1938” may be one of them, or from one to the other."""
    first, last = (written(date, context, pick) for date in dates)
    raise NoSuchDate(ONE_OR_BOTH, (f"[{first},{last}]", f"{first}/{last}", first, last))


def _ask_whose_day(
    told: list[Partial | Expression], shared: list[Partial | Expression], context: DateContext, pick: int
) -> None:
    """“3 February or March 1922” is asked: a day of both months, or a day or a whole month. Of “31 January or February”
    nothing is, since only one of them has such a day."""
    try:
        choices = tuple(Expression("any", list(meant), beside="own").text(context, pick) for meant in (shared, told))
    except NoSuchDate:
        return
    raise NoSuchDate("Is the day meant for each of the months?", choices)


def _spans_of_each(whole: Expression) -> list[Partial | Expression]:
    """“The 3rd to the 6th of May or June”: the span, and that of each month behind it; none where no span is told."""
    span, *months = whole.parts
    if not isinstance(span, Expression) or span.kind != "span":
        return []
    spans: list[Partial | Expression] = [span]
    for month in months:
        assert isinstance(month, Partial)  # a month alone behind days
        again = [date.copy() for date in span.leaves()]
        for date in again:
            date.take_month(month)
            date.year = month.year
        spans.append(Expression("span", [*again]))
    return spans


def _refined(whole: Expression, context: DateContext, pick: int) -> str:
    """“The 1930s, probably 1938”: the second lies within the first, and may be all that is meant. Where both are the
    same days, these; else nothing."""
    texts = [_written(part, context, pick) for part in whole.parts]
    wide, narrow = (standard.parsed(text) for text in texts)
    if narrow.earliest is None or narrow.latest is None:
        return ""
    if (wide.earliest, wide.latest) == (narrow.earliest, narrow.latest):
        return texts[0]  # “Christmas Eve, perhaps 24 December 1947” is one day told twice
    begins = wide.earliest is None or wide.earliest <= narrow.earliest
    if begins and (wide.latest is None or narrow.latest <= wide.latest):
        raise NoSuchDate("Is only the second meant, or any of the first?", (texts[1], texts[0]))
    return ""


def _ask_of_the_finer(whole: Expression, context: DateContext, pick: int) -> None:
    """“Late 1950s, 1957 or 58”: the later ones lie within the first, and may be all that is meant."""
    wide, *narrow = (_written(part, context, pick) for part in whole.parts)
    outer = standard.parsed(wide)
    inner = [standard.parsed(text) for text in narrow]
    if (
        all(_holds(outer, edtf) for edtf in inner)
        and wide[0] not in "[{"
        and all(text[0] not in "[{" for text in narrow)
    ):
        raise NoSuchDate("Are only the later ones meant, or any of the first?", (f"[{','.join(narrow)}]", wide))


def _holds(outer: Edtf, inner: Edtf) -> bool:
    """Whether a date lies within another one, and is not the same."""
    if None in (outer.earliest, outer.latest, inner.earliest, inner.latest) or outer.text == inner.text:
        return False
    return outer.earliest <= inner.earliest and inner.latest <= outer.latest  # type: ignore[operator]


def _within(whole: Expression, context: DateContext, pick: int) -> str:
    """`the thirties, not after 1936`: the part of the first that the second leaves."""
    feast, side = whole.leaves()[0], whole.leaves()[-1]
    if side.feast and not (side.year or feast.feast) and len(years := came_once(side.feast)) > 1:
        return _within_one(whole, side, sorted(years), context, pick)
    if _lacks_a_year(whole):
        raise NoSuchDate("In which year?", _with_years_behind(whole, context))
    limit = _written(whole.parts[1], context, pick)
    beside_event = whole.follows_event and feast.feast and not (feast.year or came_once(feast.feast))
    if beside_event or whole.is_feast_beside_war:
        if beside_event:
            _ask_of_a_coarse_event(whole, standard.parsed(limit), context)
        return _feast_beside(feast, standard.parsed(limit), whole.distance, context)
    if feast.season and not (feast.year or feast.years or feast.feast or "XXXX" in limit):
        there = _seasons_beside(context.season_code(feast.season), standard.parsed(limit))
        raise NoSuchDate(f"In which year was that {SEASON_NAMES[feast.season]}?", there)
    text = _written(whole.parts[0], context, pick)
    if "XXXX" in limit:
        raise NoSuchDate("In which year?")
    base, edge = standard.parsed(text), standard.parsed(limit)
    firsts = [day for day in (base.earliest, edge.earliest) if day is not None]
    lasts = [day for day in (base.latest, edge.latest) if day is not None]
    first, last = max(firsts, default=None), min(lasts, default=None)
    if first and last and first > last:
        raise NoSuchDate("These two limits leave no day. Which is right?", (limit, text))
    if text.startswith("XXXX"):  # “the Christmas after we moved”
        farther = _beyond_a_coarse_event(whole, edge)
        raise NoSuchDate("In which year?", tuple(dict.fromkeys((*_nearest(text, farther), *_nearest(text, edge)))))
    if (first, last) == (base.earliest, base.latest):
        if not whole.may_be_up_to_a_limit:
            return text
        latest, earliest = _short(edge.latest, start=False), _short(edge.earliest, start=True)
        span = f"[{text}..{latest}]" if edge.latest else f"[{earliest}..{text}]"
        if feast.within_a_year and not feast.feast:
            of_each = sorted((text, f"{side.year}{text[len(side.year) :]}"))
            span = f"[{','.join(of_each)}]"
        raise NoSuchDate("Which of these is meant?", (span, text))
    begin, end = _short(first, start=True), _short(last, start=False)
    if feast.whole_year and feast.mark & ABOUT:  # “about 1940, before 20 January 1940” may be of the year before
        both = f"[{begin}~..{end}]" if last == edge.latest else f"[{begin}..{end}~]"
        raise NoSuchDate("Which of these is meant?", (both, limit, text))
    whole_months = first and last and first.day == 1 and last.day == month_length(last.year, last.month)
    if whole_months and len(begin) == len(end) == 10:
        begin, end = begin[:7], end[:7]
    mark = 0
    for date in whole.leaves():
        mark |= date.mark
    return qualified(begin if begin == end else f"[{begin}..{end}]", MARKS[mark])


def _lacks_a_year(whole: Expression) -> bool:
    """“After Christmas 1948 but before Easter”: whether the second of two limits is told without its year, and the
    first with one."""
    first, last = whole.leaves()[0], whole.leaves()[-1]
    both = all(isinstance(part, Expression) and part.kind in SIDE_OF_LIMIT for part in whole.parts)
    other = last.year or last.years or last.span or last.event or not last.within_a_year
    return both and not other and len(first.year) == len("1948") and first.year.isdigit()


def _with_years_behind(whole: Expression, context: DateContext) -> tuple[str, ...]:
    """What it is with the year of the first limit for the second, or the next one."""
    first, last = whole.leaves()[0], whole.leaves()[-1]
    texts: list[str] = []
    for later in (0, 1, -1):
        last.year = f"{int(first.year) + later:04d}"
        try:
            texts.append(_within(whole, context, 0))
        except NoSuchDate:
            continue  # these two leave no day
        finally:
            last.year = ""
    return tuple(dict.fromkeys(texts))[:2]


def _within_one(whole: Expression, side: Partial, years: list[str], context: DateContext, pick: int) -> str:
    """“Spring 1941, before the deportation”, which came twice: it is read where each leaves the same days."""
    texts: dict[str, None] = {}
    asked: dict[str, None] = {}  # “the August before war was declared” is told without its year
    for year in years:
        side.year = year
        try:
            texts[_within(whole, context, pick)] = None
        except NoSuchDate as none:
            asked |= dict.fromkeys(none.choices)
        finally:
            side.year = ""
    if len(texts) != 1:
        raise NoSuchDate("Which of these is meant?", tuple(texts | asked))
    return next(iter(texts))


def _ask_of_a_coarse_event(whole: Expression, limit: Edtf, context: DateContext) -> None:
    """“The Christmas before the fire”, which was in 1936: raises NoSuchDate with that before the year and that within
    it, where the feast may lie on either side of the event."""
    feast, farther = whole.leaves()[0], _beyond_a_coarse_event(whole, limit)
    is_before = limit.latest is not None
    texts = (_feast_beside(feast, edge, whole.distance, context) for edge in (farther, limit))
    there = tuple(dict.fromkeys(texts))
    is_late = feast.feast in _AT_THE_END_OF_A_YEAR  # hardly anything happened behind it in its year
    if len(there) > 1 and not (is_late and not is_before):
        raise NoSuchDate("Which year’s is meant?", there if is_before else there[::-1])


def _beyond_a_coarse_event(whole: Expression, limit: Edtf) -> Edtf:
    """The limit before or after all the days on which an event may have been; the same one where nothing else is."""
    text = whole.leaves()[-1].event
    event = standard.parsed(text) if text else limit
    if event.earliest is None or event.latest is None:
        return limit
    return standard.parsed(f"[..{event.earliest}]" if limit.latest is not None else f"[{event.latest}..]")


_AT_THE_END_OF_A_YEAR = frozenset(("christmas", "christmas eve", "boxing day", "new year's eve"))


def _feast_beside(feast: Partial, limit: Edtf, distance: Distance | None, context: DateContext) -> str:
    """“The Easter before the wedding”: the last one before it, or the first one after it; at a distance so many of them
    before it."""
    count = distance.count if distance else 1
    there: list[Partial] = []
    for year in _years_beside(limit, count + 2):
        date = feast.copy()
        date.year = f"{year:04d}"
        if _meet(standard.parsed(written(date, context)), limit):
            there.append(date)
    nearest = there[count - 1]
    if distance and count > 1 and not distance.exact:  # whether the one next to it is among those counted
        raise NoSuchDate(
            "Which year’s is meant?", tuple(written(date, context) for date in there[count - 1 : count + 1])
        )
    if asks := question(nearest, context):
        raise NoSuchDate(asks, (written(nearest, context),))
    return written(nearest, context)


def _years_beside(limit: Edtf, count: int) -> range:
    """The year in which a limit stands, and the next ones on its open side."""
    if limit.earliest is not None:
        return range(limit.earliest.year, limit.earliest.year + count)
    assert limit.latest is not None  # a limit has one end
    return range(limit.latest.year, limit.latest.year - count, -1)


def _nearest(text: str, limit: Edtf) -> tuple[str, ...]:
    """The first date after a limit that a day or month without its year may be, or the last before it."""
    dates = [f"{year:04d}{text[4:]}" for year in _years_beside(limit, 2)]
    return tuple(date for date in dates if _meet(standard.parsed(date), limit))[:1]


def _seasons_beside(code: int, limit: Edtf) -> tuple[str, ...]:
    """The two seasons next to a limit on one side: “autumn, after the fire”."""
    texts = [f"{year:04d}-{code}" for year in _years_beside(limit, 3)]
    return tuple(text for text in texts if _meet(standard.parsed(text), limit))[:2]


def _short(day: Day | None, *, start: bool) -> str:
    if day is None:
        return ""
    edge = (1, 1) if start else (12, 31)
    return f"{day.year:04d}" if (day.month, day.day) == edge else str(day)


def _near(whole: Expression, context: DateContext, pick: int) -> str:
    assert whole.distance is not None  # it has one by its kind
    text = _written(whole.parts[0], context, pick)
    if whole.leaves()[0].span or (whole.leaves()[0].feast and "/" in text):  # “the Sunday before Lent”
        text = _end(text, last=whole.distance.side > 0)
    mark = MARKS[whole.leaves()[0].mark]
    there = qualified(near(text, whole.distance, context), mark)
    return _farther(there, text, whole.distance) if whole.distance.more else there


def _farther(there: str, text: str, distance: Distance) -> str:
    """What is farther away than a date, or lies between it and what it is counted from."""
    after = distance.side > 0
    far = _end(there, last=not after if distance.more > 0 else after)
    if distance.more > 0:
        return f"[{far}..]" if after else f"[..{far}]"
    by_it = _end(text, last=after)
    return f"[{by_it}..{far}]" if after else f"[{far}..{by_it}]"


def _in_year(whole: Expression, context: DateContext, pick: int) -> str:
    """“Whitsun the year before the flood”: of the calendar year before; where the twelve months before the event hold
    another one, or it is not known in which year the event was, it is asked."""
    date, beside = whole.parts
    assert isinstance(date, Partial) and isinstance(beside, Expression) and beside.distance  # the grammar makes it so
    (anchor,), side = beside.leaves(), beside.distance.side
    event = written(anchor, context)
    first, last = bounds(event)
    a_year = Distance(side, "year", 1, event=True)
    months = standard.parsed(near(event, a_year, replace(context, whole=True)))
    texts: dict[str, None] = {}
    of_calendar = {first.year + side, last.year + side}
    for year in sorted(of_calendar | {first.year, last.year}):
        of_year = date.copy()
        of_year.year, of_year.mark = f"{year:04d}", of_year.mark | anchor.mark
        text = written(of_year, context, pick)
        if year in of_calendar or _holds(months, standard.parsed(text)):
            texts[text] = None
    if len(texts) > 1:
        raise NoSuchDate("Which year’s is meant?", tuple(texts))
    return next(iter(texts))


def _nth(whole: Expression, context: DateContext, pick: int) -> str:
    """“The first Christmas of the war”: the how-manieth that lies in it, from its begin or its end."""
    assert whole.distance is not None  # it has one by its kind
    date, war = whole.leaves()
    if date.unit == "year":
        return outermost_year(written(war, context, pick), whole.distance.count)
    span = standard.parsed(written(war, context, pick))
    assert span.earliest and span.latest  # a war has both ends
    there: list[str] = []
    for year in range(span.earliest.year, span.latest.year + 1):
        date.year = f"{year:04d}"
        text = written(date, context)
        edtf = standard.parsed(text)
        if edtf.earliest and span.earliest <= edtf.earliest <= span.latest:
            there.append(text)
    date.year = ""
    count = whole.distance.count
    if not 0 < count <= len(there) and not (count < 0 and there):
        raise NoSuchDate("It had not so many. When was it?")
    return there[count - 1 if count > 0 else count]


def _apart(whole: Expression, context: DateContext, pick: int) -> str:
    """“The year after, 1934” is asked: that year, or the one after it."""
    texts: list[str] = []
    for part in whole.parts:
        try:
            texts.append(_written(part, context, pick))
        except NoSuchDate as none:
            texts += none.choices
    of_a_day = "Is the day meant too, or only the month?"  # “14 March 1931, no, April”
    ask = of_a_day if whole.beside == "corrected" else "Is that the year, or is it beside it?"
    raise NoSuchDate(ask, tuple(dict.fromkeys(texts)))


def _outer(whole: Expression, context: DateContext, pick: int) -> str:
    assert whole.distance is not None  # it has one by its kind
    return outermost(_written(whole.parts[0], context, pick), whole.distance)


def _known(whole: Expression, context: DateContext, pick: int) -> str:
    """“1943, during the war”: the date, if one of the wars fits it."""
    date, war = whole.parts
    assert isinstance(war, Expression)  # the grammar makes it so
    if event := war.leaves()[0].event:
        of_event = war.text(context)
        text = _of_its_years(whole.leaves()[0], event, of_event, context) or _written(date, context, pick)
        return _of_event_and_date(text, of_event, war.leaves()[0].unit)
    text = _written(date, context, pick)
    told = standard.parsed(text)
    spans = [standard.parsed(war.text(context, way)) for way in range(war.choices(context))]
    fitting = [span for span in spans if _meet(told, span)]
    if not fitting:
        raise NoSuchDate(NOT_TOGETHER, (text,))
    if whole.leaves()[0].year[3:] == "X":
        cut = tuple(dict.fromkeys(_shared_years(told, span) for span in fitting))
        if cut != (text,):
            raise NoSuchDate("Which years of these are meant?", (*cut, text))
    return text


def _shared_years(decade: Edtf, war: Edtf) -> str:
    """“1940s, wartime anyway”: the years of a decade that lie in a war; the decade itself where all of them do."""
    assert decade.earliest and decade.latest  # of a decade
    first = max(decade.earliest.year, war.earliest.year if war.earliest else 0)
    last = min(decade.latest.year, war.latest.year if war.latest else decade.latest.year)
    whole = (first, last) == (decade.earliest.year, decade.latest.year)
    return decade.text if whole else f"{first}" if first == last else f"[{first}..{last}]"


def _of_event_and_date(text: str, event: str, unit: str) -> str:
    """“Mum's 21st birthday, 1926”, “1954, the week of the wedding”: the event's day or days, where they are in what is
    told beside it."""
    if text.startswith("XXXX"):
        raise NoSuchDate("In which year?", (event,))
    told, known = standard.parsed(text), standard.parsed(event)
    if not _meet(told, known):
        raise NoSuchDate(NOT_TOGETHER, (text, event))
    return event if _holds(told, known) else text


def _of_its_years(date: Partial, event: str, of_event: str, context: DateContext) -> str:
    """“The May I was expecting Helen”: what is told without its year, in the one year of an event in which it fits;
    of several it is asked, and where none fits, it is that of the first year, which then does not go together with the
    event; empty where the year is told. Raises NoSuchDate."""
    if date.year or date.years or date.span or not date.within_a_year or of_event != event:
        return ""
    known = standard.parsed(event)
    if known.earliest is None or known.latest is None or known.latest.year - known.earliest.year > _MOST_YEARS:
        return ""
    texts: list[str] = []
    for year in range(known.earliest.year, known.latest.year + 1):
        of_year = date.copy()
        of_year.year = f"{year:04d}"
        texts.append(written(of_year, context))
    there = [text for text in texts if _meet(standard.parsed(text), known)]
    if len(there) > 1:
        raise NoSuchDate("In which year?", (*there, event))
    return there[0] if there else texts[0]


_MOST_YEARS = 20


def _meet(one: Edtf, two: Edtf) -> bool:
    """Whether some day may be meant by both."""
    starts = one.latest is None or two.earliest is None or two.earliest <= one.latest
    return starts and (one.earliest is None or two.latest is None or one.earliest <= two.latest)


def _not(whole: Expression, context: DateContext, pick: int) -> str:
    first = whole.parts[0]
    if isinstance(first, Expression) and first.kind == "span":  # “not 1944 - ’45” may put the year right
        raise NoSuchDate(NOT_THEN, (written(first.leaves()[-1], context, pick),))
    if isinstance(first, Expression) and (years := first.leaves()[0].years):
        raise NoSuchDate(NOT_THEN, (f"{years[1]}",))
    raise NoSuchDate(NOT_THEN)


def _except(whole: Expression, context: DateContext, pick: int) -> str:
    """“1931, not 1932” is 1931; of “the thirties, but not 1931” it is asked which of them."""
    for date in whole.leaves()[len(whole.parts[0].leaves()) :] if isinstance(whole.parts[0], Expression) else ():
        date.instead = None  # “12 June 1926, not 27”: whether of that month or that year
    text, *denied = (_written(part, context, pick) for part in whole.parts)
    left = without(text, denied)
    if left == (text,) or (whole.beside == "ahead" and len(left) == 1):
        return left[0]
    of_event = any(date.event for date in whole.leaves()[1:])  # “Bonfire Night, not the fire” rules no day out
    raise NoSuchDate("When was it, without that?", (text,) if of_event else left)


_WRITERS = {
    "one": _one, "span": _span, "between": _between, "before": _limit, "at_latest": _limit, "after": _limit,
    "at_earliest": _limit, "from": _from, "to": _to, "any": _set, "all": _set, "within": _within, "near": _near,
    "in_year": _in_year, "nth": _nth, "apart": _apart, "outer": _outer, "not": _not, "except": _except, "known": _known,
}  # fmt: skip
