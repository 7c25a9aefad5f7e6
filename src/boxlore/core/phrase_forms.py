"""The forms that people say dates in: each is one row of FORMS, a pattern and what it comes to.

A form that holds other dates (between … and …, … or …) reads its parts by the same table. To add a form, add
a row; the first row whose pattern fits the whole of the words, and whose function gives something, is taken.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace

from boxlore.core import edtf as standard
from boxlore.core.calendars import HEBREW_MONTHS, from_hebrew, from_julian, from_number, to_number
from boxlore.core.edtf_values import Day, Edtf, month_length
from boxlore.core.errors import TextFault
from boxlore.core.holidays_of import holiday
from boxlore.core.phrase_words import MONTH_OF, SEASON_OF, WEEKDAY_OF, month_of
from boxlore.core.tables.dates_words import APPROXIMATE, DECADES, MANY_WARS, ROMAN_MONTHS, UNCERTAIN, UNDATED


@dataclass(frozen=True, slots=True)
class Context:
    """What a reading may lean on: the collection's settings, and dates already told (folded name → EDTF)."""

    order: str | None = None
    hemisphere: str = "north"
    countries: tuple[str, ...] = ()
    births: Mapping[str, str] = field(default_factory=dict)
    events: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Proposed:
    """What a form comes to: EDTF text (empty for a date that is known to be none), a question, alternatives."""

    edtf: str
    ask: str | None = None
    alternatives: tuple[str, ...] = ()
    note: str = ""


Made = Proposed | None
Form = Callable[[re.Match[str], Context], Made]


def _any(words: Mapping[str, int]) -> str:
    return "|".join(sorted(map(re.escape, words), key=len, reverse=True))


MONTH = rf"(?P<month>(?:{_any(MONTH_OF)})\.?)"
NAMED = rf"(?P<month>(?:{_any(MONTH_OF)}|{_any(ROMAN_MONTHS)})\.?)"
YEAR = r"(?P<year>\d{4}|'\d\d)"
DAY = r"(?P<day>\d{1,2})"
SEASON = rf"(?P<season>{_any(SEASON_OF)})"
WEEKDAY = rf"(?P<weekday>{_any(WEEKDAY_OF)})"


def read_form(words: str, context: Context) -> Made:
    """The proposal for simplified words, or None if they are no date."""
    words = words.strip(" ,;")
    if not words or words in UNDATED:
        return Proposed("") if words else None
    bare, mark = _unsure(words)
    if not bare:
        return None
    if bare != words:
        inner = read_form(bare, context)
        return replace(inner, edtf=qualified(inner.edtf, mark)) if inner else None
    for pattern, form in FORMS:
        match = pattern.fullmatch(words)
        if match and (made := form(match, context)) is not None:
            return made
    return None


_APPROXIMATE = "|".join(map(re.escape, sorted(APPROXIMATE.split(), key=len, reverse=True)))
_UNCERTAIN = "|".join(map(re.escape, sorted(UNCERTAIN.split(), key=len, reverse=True)))
_STRIP: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(r"\[(?P<rest>[^\[\]]+)\]"), ""),
    (re.compile(r"(?P<rest>.+?)\s?\?"), "?"),
    (re.compile(rf"(?:it (?:was|is|must have been) |this (?:was|is) )?(?:{_UNCERTAIN})\.? (?P<rest>.+)"), "?"),
    (
        re.compile(
            r"(?:i think|i believe|i guess|it must have been|must have been|it may have been|we think)[ ,]+(?P<rest>.+)"
        ),
        "?",
    ),
    (re.compile(r"(?P<rest>.+?),? (?:i think|i believe|i guess|probably|perhaps|maybe|possibly)"), "?"),
    (re.compile(rf"(?:{_APPROXIMATE})(?:\. ?| )(?P<rest>.+)"), "~"),
    (re.compile(r"(?:c|ca)\.?(?P<rest>\d.*)"), "~"),
    (
        re.compile(
            r"(?P<rest>.+?),? (?:or so|or thereabouts|or thereabout|thereabouts|give or take|approximately|approx\.?)"
        ),
        "~",
    ),
    (re.compile(r"(?P<rest>.+?)-?ish"), "~"),
    (re.compile(r"est (?P<rest>.+)"), "~"),
    (re.compile(r"cal (?P<rest>.+)"), ""),
    (re.compile(r"(?:sometime |some time |it was |taken |dated |date: ?|in or )(?P<rest>.+)"), ""),
    (re.compile(r"(?:in|on|during|at|of|from|within) (?:the year )?(?P<rest>(?:the )?[\w'].*)"), ""),
    (re.compile(r"the year (?P<rest>\d.*)"), ""),
    (re.compile(r"(?P<rest>.*\d)\."), ""),
)
"""What stands around a date and says how sure it is (common practice, no source, for the words)."""


def _unsure(words: str) -> tuple[str, str]:
    """The words without one layer of what says how sure they are, and that as a qualifier."""
    for pattern, mark in _STRIP:
        match = pattern.fullmatch(words)
        if match and not (mark == "" and match["rest"] == words):
            if pattern.pattern.startswith("(?:in|on") and re.match(r"from .+ (to|until|till) ", words):
                continue
            return match["rest"].strip(" ,"), mark
    return words, ""


def qualified(edtf: str, mark: str) -> str:
    """The EDTF with a qualifier: on a date, or on both ends of an interval; a set has no place for one."""
    if not mark or not edtf or edtf[0] in "[{":
        return edtf
    if "/" in edtf:
        return "/".join(qualified(end, mark) if end not in ("", "..") else end for end in edtf.split("/"))
    if edtf[-1] in "?~%":
        return edtf if edtf[-1] in (mark, "%") else f"{edtf[:-1]}%"
    return edtf + mark


def _year(text: str) -> tuple[str, Made]:
    """A year as four digits; one of two digits is of the 1900s, and asks."""
    if text.startswith("'"):
        year = f"19{text[1:]}"
        return year, Proposed(year, f"Is {year} meant?", (f"18{text[1:]}", f"20{text[1:]}"))
    return text, None


def _dated(year: str, rest: str) -> Proposed:
    """Year and the rest of a date, with the question that a two-digit year raises."""
    full, asks = _year(year)
    if asks is None:
        return Proposed(full + rest)
    return Proposed(full + rest, asks.ask, tuple(other + rest for other in asks.alternatives))


def _iso(match: re.Match[str], context: Context) -> Made:
    text = match[0].upper()
    span = re.fullmatch(r"(\d\d)(\d\d)-(\d\d)", text)
    if span and int(span[3]) > 12 and 0 < int(span[3]) - int(span[2]) <= 12:
        return None
    try:
        return Proposed(standard.parse(text).text)
    except TextFault:
        return None


def _year_alone(match: re.Match[str], context: Context) -> Made:
    return _dated(match["year"], "")


def _day_month_year(match: re.Match[str], context: Context) -> Made:
    month, day = month_of(match["month"]), int(match["day"])
    return _real(match["year"], month, day)


def _real(year: str, month: int, day: int) -> Proposed:
    made = _dated(year, f"-{month:02d}-{day:02d}")
    length = month_length(int(_year(year)[0]), month) if 1 <= month <= 12 else 0
    if 1 <= day <= length:
        return made
    return Proposed("", f"There is no day {day} in that month. Which is meant?")


def _month_year(match: re.Match[str], context: Context) -> Made:
    return _dated(match["year"], f"-{month_of(match['month']):02d}")


def _day_month(match: re.Match[str], context: Context) -> Made:
    month, day = month_of(match["month"]), int(match["day"])
    if not 1 <= day <= month_length(2000, month):
        return Proposed("", f"There is no day {day} in that month. Which is meant?")
    return Proposed(f"XXXX-{month:02d}-{day:02d}", "In which year?")


def _month_alone(match: re.Match[str], context: Context) -> Made:
    return Proposed(f"XXXX-{month_of(match['month']):02d}", "In which year?")


def _weekday(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    if inner is None or not re.fullmatch(r"\d{4}-\d\d-\d\d", inner.edtf):
        return None
    day = _single(inner.edtf)
    told, real = WEEKDAY_OF[match["weekday"]], (_number(day) - 1) % 7
    if told == real or inner.ask:
        return inner
    names = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
    return replace(inner, ask=f"{inner.edtf} was a {names[real]}, not a {names[told]}. Which is right?")


def _single(text: str) -> Day:
    earliest = standard.parse(text).earliest
    assert earliest is not None  # one date is bounded
    return earliest


def _number(day: Day) -> int:
    return to_number(*day)


def _numbers(match: re.Match[str], context: Context) -> Made:
    """7/4/52: by the collection's day order; without one, both readings and a question."""
    first, second, year = int(match["one"]), int(match["two"]), match["year"]
    year = f"'{year}" if len(year) == 2 else year
    dmy, mdy = _real(year, second, first), _real(year, first, second)
    if context.order == "dmy" or (first > 12 and dmy.edtf):
        return dmy
    if context.order == "mdy" or (second > 12 and mdy.edtf):
        return mdy
    if not (dmy.edtf and mdy.edtf):
        return dmy if dmy.edtf else mdy
    if dmy.edtf == mdy.edtf:
        return dmy
    return Proposed(f"[{','.join(sorted((dmy.edtf, mdy.edtf)))}]", "Day or month first?", (dmy.edtf, mdy.edtf))


def _decade(match: re.Match[str], context: Context) -> Made:
    digits = match["decade"].replace("'", "")
    if len(digits) == 4:
        return Proposed(f"{digits[:3]}X")
    return Proposed(f"19{digits[0]}X", f"The 19{digits[0]}0s?", (f"18{digits[0]}X",))


def _decade_word(match: re.Match[str], context: Context) -> Made:
    tens = DECADES[match["word"]] // 10
    century = match["century"]
    if century and (found := re.fullmatch(r"(nineteen|eighteen|seventeen|18|19|17)", century)):
        first = {"nineteen": "19", "eighteen": "18", "seventeen": "17"}.get(found[0], found[0])
        return Proposed(f"{first}{tens}X")
    return Proposed(f"19{tens}X", f"The 19{tens}0s?", (f"18{tens}X",))


_PARTS = {"early": (0, 3), "mid": (4, 6), "middle": (4, 6), "late": (7, 9), "beginning": (0, 3), "end": (7, 9)}


def _part_of_decade(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    if inner is None or not re.fullmatch(r"\d{3}X", inner.edtf):
        return None
    first, last = _PARTS[match["part"]]
    return replace(inner, edtf=_spread(inner.edtf, first, last), alternatives=())


def _spread(decade: str, first: int, last: int) -> str:
    return f"{decade[:3]}{first}~/{decade[:3]}{last}~"


def _season(match: re.Match[str], context: Context) -> Made:
    code = SEASON_OF[match["season"]]
    full, asks = _year(match["year"])
    if context.hemisphere == "south":
        code += 8
    made = Proposed(f"{full}-{code}", asks.ask if asks else None)
    if match.groupdict().get("next"):
        return Proposed(f"{full}-{code}", None)
    return made


def _southern(match: re.Match[str], context: Context) -> Made:
    return read_form(match["rest"], replace(context, hemisphere=match["side"]))


def _century(match: re.Match[str], context: Context) -> Made:
    number = int(match["century"]) - 1
    part = match["part"]
    if not part:
        return Proposed(f"{number:02d}XX")
    low, high = {"early": (0, 33), "mid": (34, 66), "late": (67, 99)}[part[:5].rstrip("-").replace("middl", "mid")]
    return Proposed(f"{number:02d}{low:02d}~/{number:02d}{high:02d}~")


def _turn(match: re.Match[str], context: Context) -> Made:
    return Proposed("1895~/1905~", "The turn to 1900?", ("1795~/1805~", "1995~/2005~"))


def _span(match: re.Match[str], context: Context) -> Made:
    first, last = match["first"], match["last"]
    if len(last) == 2:
        last = first[:2] + last
    if int(last) < int(first):
        return None
    return Proposed(f"{first}/{last}")


def _two_years(match: re.Match[str], context: Context) -> Made:
    """1648/49: a dual year of the old English calendar, or a span."""
    first, last = int(match["first"]), match["last"]
    following = first + 1
    if str(following)[-len(last) :] != last:
        return _span(match, context) if len(last) == 2 else None
    if first > 1752:
        return Proposed(f"{first}/{following}")
    return Proposed(f"[{first},{following}]", "A dual year: old or new style?", (str(first), str(following)))


def _between(match: re.Match[str], context: Context) -> Made:
    return _joined(match, context, "[{}..{}]")


def _from_to(match: re.Match[str], context: Context) -> Made:
    return _joined(match, context, "{}/{}")


def _joined(match: re.Match[str], context: Context, shape: str) -> Made:
    last = read_form(match["last"], context)
    first = read_form(_completed(match["first"], match["last"]), context)
    if first is None or last is None or not first.edtf or not last.edtf:
        return None
    one, other = _end(first.edtf, last=False), _end(last.edtf, last=True)
    if not one or not other:
        return None
    if shape.startswith("[") and {len(one), len(other)} & {9}:
        shape = "{}/{}"
    return Proposed(shape.format(one, other), first.ask or last.ask)


def _completed(first: str, last: str) -> str:
    """`June` beside `July 1952` is June 1952; `3` beside `5 June 1952` is 3 June 1952."""
    if re.search(r"\d{4}|'\d\d", first):
        return first
    if re.fullmatch(r"\d{1,2}", first) and (rest := re.fullmatch(r"\d{1,2}( .+)", last)):
        return first + rest[1]
    year = re.search(r"(\d{4}|'\d\d)\s*$", last)
    return f"{first} {year[1]}" if year else first


def _end(edtf: str, *, last: bool) -> str:
    """One end of a range as one date: of a range of its own, the outer end."""
    if edtf[0] in "[{":
        return ""
    if "/" in edtf:
        edtf = edtf.split("/")[1 if last else 0]
    return edtf if edtf not in ("", "..") else ""


def _either(match: re.Match[str], context: Context) -> Made:
    first, last = match["first"], match["last"]
    if re.fullmatch(r"\d{4}", first) and re.fullmatch(r"'?\d\d", last):
        last = first[:2] + last.lstrip("'")
    elif re.fullmatch(r"\d{4}", first) and re.fullmatch(r"\d", last):
        last = first[:3] + last
    one, other = read_form(_completed(first, last), context), read_form(last, context)
    if one is None or other is None or not one.edtf or not other.edtf:
        return None
    if any(part[0] in "[{" or "/" in part for part in (one.edtf, other.edtf)):
        return None
    return Proposed(f"[{one.edtf},{other.edtf}]", one.ask or other.ask)


def _before(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    if inner is None or not inner.edtf:
        return None
    edge = _end(inner.edtf, last=False)
    return replace(inner, edtf=f"[..{edge}]", alternatives=()) if edge else None


def _after(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    if inner is None or not inner.edtf:
        return None
    edge = _end(inner.edtf, last=True)
    return replace(inner, edtf=f"[{edge}..]", alternatives=()) if edge else None


def _gedcom_from(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    return Proposed(f"{inner.edtf}/..", inner.ask) if inner and inner.edtf and "/" not in inner.edtf else None


def _gedcom_to(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    return Proposed(f"../{inner.edtf}", inner.ask) if inner and inner.edtf and "/" not in inner.edtf else None


def _limited(match: re.Match[str], context: Context) -> Made:
    """`the thirties, not after 1936`: the part of the first that the limit leaves."""
    inner, limit = read_form(match["rest"], context), read_form(match["limit"], context)
    if inner is None or limit is None or not inner.edtf or not limit.edtf:
        return None
    whole, edge = standard.parse(inner.edtf), standard.parse(limit.edtf)
    first, last = whole.earliest, whole.latest
    if first is None or last is None or edge.earliest is None or edge.latest is None:
        return None
    if match["side"] in ("after", "later than"):
        last = min(last, edge.latest)
    else:
        first = max(first, edge.earliest)
    if first > last:
        return Proposed("", "These two limits leave no day. Which is right?")
    return Proposed(f"[{_short(first, start=True)}..{_short(last, start=False)}]", inner.ask)


def _short(day: Day, *, start: bool) -> str:
    edge = (1, 1) if start else (12, 31)
    return f"{day.year:04d}" if (day.month, day.day) == edge else str(day)


def _holiday(match: re.Match[str], context: Context) -> Made:
    found = holiday(match["name"], match["year"], context.countries)
    return Proposed(found.edtf, found.ask, found.alternatives) if found else None


def _near_holiday(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    if inner is None or not re.fullmatch(r"\d{4}-\d\d-\d\d", inner.edtf):
        return None
    unit, count = match["unit"], match["count"]
    days = {"day": 1, "week": 7, "month": 30}[unit]
    sign = -1 if match["side"] == "before" else 1
    centre = _number(_single(inner.edtf))
    if count in ("the", "a", "one", "") or count is None:
        near, far = 1 * sign, days * sign
    elif count in ("a few", "some", "several"):
        near, far = 2 * sign, days * 6 * sign
    else:
        near = far = days * sign * int(count)
    first, last = sorted((_from(centre + near), _from(centre + far)))
    ask = inner.ask
    if unit == "day" and first == last:
        return Proposed(str(first), ask)
    return Proposed(f"[{first}..{last}]", ask)


def _from(number: int) -> Day:
    return from_number(number)


def _julian(match: re.Match[str], context: Context) -> Made:
    inner = read_form(match["rest"], context)
    if inner is None or not inner.edtf:
        return None
    if not re.fullmatch(r"\d{4}-\d\d-\d\d", inner.edtf):
        return replace(inner, note="old style; only a full day can be reckoned over", ask="On which day, old style?")
    year, month, day = (int(part) for part in inner.edtf.split("-"))
    return Proposed(str(from_julian(year, month, day)), None, (inner.edtf,), "reckoned over from the Julian calendar")


def _julian_29(match: re.Match[str], context: Context) -> Made:
    """29 February of a century year is a day in the Julian calendar only."""
    rest = re.fullmatch(rf"{DAY} {MONTH} {YEAR}", match["rest"])
    if rest is None:
        return None
    try:
        return Proposed(str(from_julian(int(rest["year"]), month_of(rest["month"]), int(rest["day"]))), None)
    except ValueError:
        return None


def _hebrew(match: re.Match[str], context: Context) -> Made:
    try:
        made = from_hebrew(int(match["year"]), HEBREW_MONTHS[match["hebrew"]], int(match["day"]))
    except ValueError:
        return Proposed("", "The Hebrew calendar has no such day. Which is meant?")
    return Proposed(str(made), None, (), "reckoned over from the Hebrew calendar")


def _war(match: re.Match[str], context: Context) -> Made:
    side, which = match["side"], MANY_WARS[match["war"]]
    if len(which) > 1:
        ends = {"before": ("[..1914-07]", "[..1939-09]"), "after": ("[1918-11..]", "[1945-09..]")}
        other = ends.get(side, ("1914-07/1918-11", "1939-09/1945-09"))
        return Proposed("", "Which war?", other)
    first, last = which[0].split("/")
    return Proposed({"before": f"[..{first}]", "after": f"[{last}..]"}.get(side, which[0]))


def _age(match: re.Match[str], context: Context) -> Made:
    born = context.births.get(match["name"].strip())
    if born is None:
        return Proposed("", f"When was {match['name'].strip().title()} born?")
    day = standard.parse(born).earliest
    return Proposed(f"{day.year + int(match['age'])}~") if day else None


_SHIFT = {"before": -1, "after": 1, "of": 0, "": 0}


def _event(match: re.Match[str], context: Context) -> Made:
    told = context.events.get(match["event"].strip())
    if told is None:
        return Proposed("", f"When was {match['event'].strip()}?") if match["unit"] else None
    edtf = standard.parse(told)
    return _around(edtf, match["unit"] or "", _SHIFT[match["side"] or ""])


def _around(edtf: Edtf, unit: str, shift: int) -> Made:
    day = edtf.earliest
    if day is None:
        return None
    if unit in ("year", "") or not re.fullmatch(r"\d{4}-\d\d-\d\d", edtf.text):
        return Proposed(f"{day.year + shift}~" if unit else edtf.text)
    if unit in ("summer", "spring", "autumn", "winter"):
        return Proposed(f"{day.year}-{SEASON_OF[unit]}~")
    if unit == "month":
        month = day.year * 12 + day.month - 1 + shift
        return Proposed(f"{month // 12:04d}-{month % 12 + 1:02d}~")
    return Proposed(f"{_from(_number(day) + 7 * shift)}~")


def _school_year(match: re.Match[str], context: Context) -> Made:
    first, last = match["first"], match["last"] or str(int(match["first"]) + 1)
    if context.hemisphere == "south":
        return Proposed(f"{first}-02/{first}-12")
    return Proposed(f"{first}-09/{first[:2] + last if len(last) == 2 else last}-06")


def _catalogue(match: re.Match[str], context: Context) -> Made:
    """197- is a decade, 19-- a century (cataloguers' brackets)."""
    return Proposed(match[0].replace("-", "X"))


def _bce(match: re.Match[str], context: Context) -> Made:
    return Proposed(f"-{int(match['years']) - 1:04d}" if int(match["years"]) > 1 else "0000")


def _not_read(match: re.Match[str], context: Context) -> Made:
    return Proposed("", "A French Republican date: kept as told, not read.")


def _p(pattern: str) -> re.Pattern[str]:
    return re.compile(pattern)


_HOLIDAY_NAME = r"(?P<name>[^\W\d_](?:[^\W\d]|[ '.-])+?|the 4|4 of july|4 july)"

FORMS: tuple[tuple[re.Pattern[str], Form], ...] = (
    (_p(r"[-y\d\[{/.?~%][-\dxyest:z+?~%\[\]{},./]*"), _iso),
    (_p(r"\d{3}-|\d\d--"), _catalogue),
    (_p(rf"{YEAR}"), _year_alone),
    (_p(rf"{WEEKDAY}\.?,? (?:the )?(?P<rest>.+)"), _weekday),
    (_p(rf"(?:the )?{DAY}\.? ?(?:of |de |di )?{NAMED},? ?(?:of |de |del |di )?{YEAR}\.?"), _day_month_year),
    (_p(rf"{DAY}[./ -]{NAMED}[./ -]{YEAR}"), _day_month_year),
    (_p(rf"{MONTH} (?:the )?{DAY},? ?(?:of )?{YEAR}"), _day_month_year),
    (_p(rf"{YEAR},? {MONTH} {DAY}"), _day_month_year),
    (_p(rf"{MONTH},? ?(?:of |de |del |di |in )?{YEAR}"), _month_year),
    (_p(rf"{YEAR},? {MONTH}"), _month_year),
    (_p(r"(?P<one>\d{1,2})[./-](?P<two>\d{1,2})[./-](?P<year>\d{4}|\d\d)"), _numbers),
    (_p(r"(?:the )?(?P<decade>'?\d\d(?:\d\d)?)(?:'?s)"), _decade),
    (_p(rf"(?:the )?(?:(?P<century>nineteen|eighteen|seventeen|1[789])[ -]?)?(?P<word>{'|'.join(DECADES)})"), _decade_word),
    (_p(r"(?:the )?(?P<part>early|mid|middle|late|beginning|end)[ -](?:of )?(?:the )?(?P<rest>.+)"), _part_of_decade),
    (_p(rf"(?:the )?(?:next )?{SEASON}(?: of| in|,)? {YEAR}"), _season),
    (_p(rf"{YEAR},? {SEASON}"), _season),
    (_p(r"(?:the )?(?P<side>south|north)ern (?P<rest>.+)"), _southern),
    (_p(r"(?:the )?(?:(?P<part>early|mid|middle|late)[ -])?(?P<century>\d\d?)(?:-| )century"), _century),
    (_p(r"(?:the )?turn of the(?: last)? century"), _turn),
    (_p(r"(?P<first>\d{4}) ?/ ?(?P<last>\d{1,2})"), _two_years),
    (_p(r"(?P<first>\d{4}) ?(?:-|to|until|till|through|bis|à) ?(?P<last>\d{4}|\d\d)"), _span),
    (_p(r"(?:bet|between|zwischen|entre) (?P<first>.+?) (?:and|und|et|y|&|-) (?P<last>.+)"), _between),
    (_p(r"(?:from|von|de) (?P<first>.+?) (?:to|until|till|through|bis|à) (?P<last>.+)"), _from_to),
    (_p(r"(?P<first>.+?) ?(?: to | until | till | - |-)(?P<last>.+)"), _from_to),
    (_p(r"(?P<rest>.+?),? (?:but )?not (?P<side>after|later than|before|earlier than) (?P<limit>.+)"), _limited),
    (_p(r"(?P<first>.+?)(?:,| either)? (?:or|oder|või|ou) (?P<last>.+)"), _either),
    (_p(r"(?:the )?french republican .+|.*\bvend[ée]miaire\b.*|.*\bbrumaire\b.*|.*\bthermidor\b.*"), _not_read),
    (_p(rf"(?:(?P<side>before|after|during|in)) (?P<war>{'|'.join(MANY_WARS)})"), _war),
    (
        _p(r"(?:(?P<count>the|a|one|a few|some|several|\d+) )?(?P<unit>day|week|month)s? (?P<side>before|after) (?P<rest>.+)"),
        _near_holiday,
    ),
    (_p(r"(?:before|by|bef|until|not after|no later than|not later than|vor|enne|avant) (?P<rest>.+)"), _before),
    (_p(r"(?:after|since|aft|not before|no earlier than|nach|pärast|après) (?P<rest>.+)"), _after),
    (_p(r"from (?P<rest>.+)"), _gedcom_from),
    (_p(r"to (?P<rest>.+)"), _gedcom_to),
    (_p(r"(?P<rest>.+?),? (?:by the old calendar|old style|o\.? ?s\.?|julian(?: calendar)?|vana kalendri järgi|vkj)"), _julian_29),
    (_p(r"(?P<rest>.+?),? (?:by the old calendar|old style|o\.? ?s\.?|julian(?: calendar)?|vana kalendri järgi|vkj)"), _julian),
    (_p(r"(?:julian|@#djulian@) (?P<rest>.+)"), _julian_29),
    (_p(r"(?:julian|@#djulian@) (?P<rest>.+)"), _julian),
    (_p(r"(?P<rest>.+?),? (?:new style|n\.? ?s\.?)"), lambda match, context: read_form(match["rest"], context)),
    (_p(r"(?:hebrew |@#dhebrew@ )?(?P<day>\d{1,2}) (?P<hebrew>nisan|iyyar|iyar|sivan|tammuz|av|elul|tishrei|tishri|cheshvan|heshvan|kislev|tevet|shevat|adar sheni|adar) (?P<year>[45]\d{3})"), _hebrew),
    (_p(r"(?P<years>\d{1,4}) (?:bce|b\.?c\.?)"), _bce),
    (_p(r"(?:the )?school year (?:of )?(?P<first>\d{4})(?: ?[-/] ?(?P<last>\d{4}|\d\d))?"), _school_year),
    (_p(rf"(?:the )?{_HOLIDAY_NAME},? (?:of |in )?(?P<year>\d{{4}}|'\d\d)"), _holiday),
    (_p(rf"(?:the )?{_HOLIDAY_NAME}(?P<year>)"), _holiday),
    (_p(rf"(?:the )?{DAY}\.? (?:of )?{MONTH}"), _day_month),
    (_p(rf"{MONTH} (?:the )?{DAY}"), _day_month),
    (_p(rf"{MONTH}"), _month_alone),
    (_p(r"when (?P<name>[^\W\d_]+(?: [^\W\d_]+)?) was (?:about )?(?P<age>\d{1,2})(?: years old)?"), _age),
    (
        _p(r"(?:the )?(?:(?P<unit>year|month|week|summer|spring|autumn|winter) )?(?:(?P<side>before|after|of) )?(?P<event>(?:the )?[^\W\d_].*)"),
        _event,
    ),
)  # fmt: skip
"""One row a form; the order matters where two patterns fit the same words."""
