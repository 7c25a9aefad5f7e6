"""Numbers written as digits, alone or together: `1938`, `'38`, `3rd`, `1950s`, `194-`, `7/4/52`, `1938.6.14`,
`1932-33`.

NUMERAL is what is one piece of text; `compound` gives its senses, `numeral` those of digits with what follows at once.
"""

import re
from collections.abc import Mapping

from boxlore.core.dates.edtf_values import month_length
from boxlore.core.dates.lexicon import ROMAN, Sense, endings, number_endings
from boxlore.core.dates.partial import DOUBT, Partial

_ROMAN_MONTH = r"(?:x|xi|xii|ix|iv|v|vi{1,3}|i{2,3}|i(?! \d\d(?!\d)))"
_MONTH = rf"(?:\d{{1,2}}|{_ROMAN_MONTH})"
NUMERAL = "|".join(
    (
        r"(?:(?<=at )|(?<=kell )|(?<=klo )|(?<=kello )|(?<=kl )|(?<=kl\. )|(?<=um )|(?<=alle )|(?<=ore ))"
        r"(?:[01]?\d|2[0-3])[.:][0-5]\d(?![\d.])(?! ?\d)",
        r"\d{1,2}[:.]\d\d ?(?:am|pm|a\.m\.?|p\.m\.?|uhr|h)\b|\d{1,2}:\d\d(?::\d\d)?(?!\d)",
        r"\d{1,2} ?(?:am|pm|a\.m\.?|p\.m\.?|uhr|o'clock|h(?:\d\d)?|hrs?)(?!\w)",
        # not of “1938/5/6/1943”, a year and a day, but of “1938-05-03-1938-05-06”, where a second date begins
        r"(?<!\d)\d{4} ?[-./] ?\d{1,2} ?[-./] ?\d{1,2}(?!\d|[-./]'?\d{4}(?! ?[-./]? ?\d))"
        r"|(?<!\d)(?<!\d )(?:1[5-9]|20)\d\d \d\d \d\d(?! ?\d)",
        r"(?<!\d)(?<!\d )\d\d? \d\d? (?:(?:1[5-9]|20)\d\d|3[2-9]|[4-9]\d|'\d\d)(?! ?\d|\w)",
        r"(?<![\w'])(?<!\d )(?:'\d\d|3[2-9]|[4-9]\d) \d\d? \d\d?(?! ?[\d'/.-]|\w)",
        r"(?<![\d.])(?:3[2-9]|[4-9]\d)\.\d\d?\.\d(?![\d.]|\w)",
        r"(?<![\w'])'\d\d(?:\.\d\d?\.|/\d\d?/|-\d\d?-)\d\d?(?![\d/.-]|\w)",
        rf"(?<![\d.])\d{{1,2}}\./ ?{_ROMAN_MONTH}(?:\.? ?[-/]? ?)'?(?:\d{{4}}|\d\d)(?!\d)",
        rf"(?<![\d.])\d{{1,2}} ?(?:[/.] ?{_MONTH}(?:\.? ?-| ?[/.] ?|\.? )|-{_MONTH}-)'?(?:\d{{4}}|\d\d)"
        r"(?!\d|:\d|[./]\d)",
        r"(?:(?<![\d.-])|(?<=\d{4}-))\d{1,2}[-./](?:(?:1[5-9]|20)\d\d(?!\d)(?!['-]?s)|'\d\d(?!\d))",
        r"(?<![\d-])\d{4}(?:[-/]'?\d\d?(?![\d.]\d|\d)(?!['-]?(?:s|er|th)\b)| [-/] '?\d\d(?!\d| *[\w.]))",
        r"(?<![\d.])\d{1,2}\. ?\d{1,2}\.(?= ?- ?\d{1,2}\. ?\d{1,2}\.)",
        r"(?<![\d.])(?:[12]\d|3[01]|0?[1-9])\. ?(?:0[1-9]|1[0-2]|[1-9])\.(?=\W*$|,| [(–-])",
        r"(?<!\d)(?<!\d, )(?<!\d )(?:1[5-9]|20) and \d\d(?!\d)(?= *(?:$|[?,)]))",
        r"(?<!\d)(?:1[5-9]|20)\d\d(?:0[1-9]|1[0-2])(?:[0-2]\d|3[01])(?!\d)",
        r"(?<![\d./-])(?:0?[1-9]|1[0-2])[/-](?:3[2-9]|[4-9]\d)(?! ?[\d./-]|\w)",
        r"(?<!\d)\d{1,2}(?:st|nd|rd|th)c(?!\w)",
        r"(?<![\d-])(?:3[2-9]|[4-9]\d)[-/]\d\d(?![\d-])(?!['-]?\w)",
        r"(?<!\d)(?:\d{3}[-_x*?](?!\w)|\d\d(?:--|__|xx|-\?|\?\?)(?!\w)|(?:\d\d[_x]|1[5-9]\?)\d(?!\d))",
        r"(?<![\w'])'\d\d[-/]\d\d?(?![\d/-])(?!['-]?\w)",
        r"(?<![\w'])'\d\d(?!\d)(?!['-]?\w)",
        r"(?<!\w)'[4-9]00(?!\w)",
        r"(?<![\w'])'\d[?_-](?!\w)",
    )
)
"""In this order: times of day (three), year-month-day (two), day-month-year, a short year before a month and a day
(three), day-month-year (two), month-year, two years, a day and a month before another and alone, “nineteen and” a
year's end, eight digits, a month and a short year, `19thC`, two short years, unread digits, a short year, a century as
Italian has it (`primi ’900`)."""

ROMAN_YEAR = re.compile(r"(?:MD(?:CC?C?C?|C?D)?|MCM|MD?CM|MCD|MM)(?:XC|XL|L?X{0,3})(?:IX|IV|V?I{0,3})")
"""A year as a cornerstone has it: MCMXXXVIII."""

_ROMAN_DIGITS = {"m": 1000, "d": 500, "c": 100, "l": 50, "x": 10, "v": 5, "i": 1}


def roman_number(letters: str) -> int:
    """The value of small Roman digits: a lesser one before a greater is taken off."""
    values = [_ROMAN_DIGITS[letter] for letter in letters]
    return sum(-value if value < max(values[at:]) else value for at, value in enumerate(values))


_DAY_FIRST = re.compile(r"(?<![\d.])\d{1,2}\. ?(?:\d{1,2}\. ?)?[-–]|(?<![\d.])\d{1,2}\. \d{1,2}\. ?\d")


def is_day_first(words: str) -> bool:
    """Whether full stops behind numbers make them ordinals, which only a day is before a month: `2.-4.6.1935`,
    `3. 4. 1938` (common practice, no source)."""
    return _DAY_FIRST.search(words) is not None


WITH_FULL_STOPS = frozenset(
    "AT AZ BA BE BG BY CH CZ DE DK EE FI GE HR IS KZ LI LU LV MK NO PL RO RS RU SI SK TR UA".split()
)
"""Countries that write a day in digits with full stops, its day first (CLDR, the short dates of their languages)."""

_WITH_FULL_STOPS = re.compile(r"(?<![\d.])\d{1,2}\. ?\d{1,2}\. ?'?(?:\d{4}|\d\d)(?!\d)")


def is_day_first_there(words: str, countries: tuple[str, ...]) -> bool:
    """Whether figures with full stops between them are of countries that write them so, which have the day first:
    `12.05.27` in Estonia."""
    there = bool(countries) and all(country[:2] in WITH_FULL_STOPS for country in countries)
    return there and _WITH_FULL_STOPS.search(words) is not None


_CLOCK = re.compile(r"\d{1,2}(?:[:.]\d\d$|:\d\d|.*(?:m\.?|uhr|h|h\d\d|clock|hrs?)$)")
_DIGITS = re.compile(r"\d+|[ivx]+")
_CLOCK_TIME = (Sense("clock"),)
_NAME = (Sense("name"),)


def compound(piece: str) -> tuple[Sense, ...]:
    """The senses of a whole numeral."""
    if piece[0] == "'" and not piece[-1].isdigit():
        return (Sense("decade", int(piece[1]) * 10),)  # Summer '4?
    if piece[0] == "'" and len(parts := _DIGITS.findall(piece)) == 3:
        return _dates([_of_camera(parts)])
    if piece[0] == "'" and len(parts) == 2:
        return _short_years([parts[0], parts[1] if len(parts[1]) == 2 else parts[0][0] + parts[1]])  # '38/9
    if piece[0] == "'":
        return (Sense("short", piece[1:]),) if len(piece) == 3 else (Sense("year", f"1{piece[1]}XX"),)
    if _CLOCK.match(piece):
        return _CLOCK_TIME
    if piece[-1] == "c":
        return (Sense("year", f"{int(_DIGITS.findall(piece)[0]) - 1:02d}XX"),)
    if piece[-1] in "-_x?*" or "_" in piece or (len(piece) == 4 and "x" in piece):
        return _unread(piece)
    if "?" in piece:
        return (Sense("year", piece.replace("?", "X")),)  # 19?6
    parts = _DIGITS.findall(piece)
    if " and " in piece:
        return (Sense("year", parts[0] + parts[1]),)
    if len(parts) == 1:
        return _dates([_day(parts[0][:4], parts[0][4:6], parts[0][6:])])
    if len(parts) == 3:
        return (*_three(parts), *_three_years(parts, piece))
    if piece[-1] == ".":
        return _three([*parts, ""])
    if len(parts[1]) == 4 or (len(parts[0]) < 3 and ("'" in piece or int(parts[0]) <= 12)):
        return _dates([_month(parts[1], parts[0])])
    if len(parts[0]) == 2:
        return _short_years(parts)
    return _two(parts[0], parts[1], piece)


def _unread(piece: str) -> tuple[Sense, ...]:
    """`194-`, `19--`, `19_2`, `194?`: digits that nobody has read; a question mark may be doubt instead, and asks."""
    digits = re.sub(r"[-_x*]", "X", piece.rstrip("?") if len(piece.rstrip("?")) == 4 else piece.replace("?", "X"))
    if piece.endswith("?") and len(piece) == 4 and piece[2] != "?":
        return (Sense("dates", _decade(digits, f"Is a year of the {piece[:3]}0s meant?")),)
    return (Sense("year", digits.ljust(4, "X")),)


def _decade(digits: str, ask: str) -> Partial:
    date = Partial.of(digits)
    date.mark, date.ask = DOUBT, ask
    return date


def _grouped(year: str, code: int) -> Partial:
    date = Partial.of(year)
    date.grouping = code
    return date


def _dates(partials: "list[Partial | None]") -> tuple[Sense, ...]:
    """The dates that there are; where there is none, the first says so when it is asked for its day."""
    real = [partial for partial in partials if partial is not None]
    return tuple(Sense("dates", partial) for partial in real) or (Sense("no_such"),)


def _day(year: str, month: str, day: str) -> "Partial | None":
    month_number, whole = ROMAN.get(month) or int(month), len(year) == 4
    if not (1 <= month_number <= 12 and 1 <= int(day) <= month_length(int(year) if whole else 2000, month_number)):
        return None
    return Partial.of(year, month_number, int(day))


def _month(year: str, month: str) -> "Partial | None":
    number = ROMAN.get(month) or int(month)
    return Partial.of(year, number) if 1 <= number <= 12 else None


def _three(parts: list[str]) -> tuple[Sense, ...]:
    if len(parts[0]) == 4:
        return _dates([_day(parts[0], parts[1], parts[2]) or _of_no_month(parts[0], parts[1], parts[2])])
    if not parts[1].isdigit():
        return _dates([_day(parts[2], parts[1], parts[0]) or _of_no_month(parts[2], parts[1], parts[0])])
    day_first, month_first = _day(parts[2], parts[1], parts[0]), _day(parts[2], parts[0], parts[1])
    if day_first is None and month_first is None:
        of_camera = _of_camera(parts) if len(parts[0]) == 2 and parts[2] else None  # 48-12-25
        last = _of_no_month(parts[2], parts[1], parts[0]) or _of_no_month(parts[2], parts[0], parts[1])
        return _dates([of_camera or last])
    if day_first is None or month_first is None or parts[0] == parts[1]:
        return _dates([day_first or month_first])
    return (Sense("dates", day_first.ordered("dmy")), Sense("dates", month_first.ordered("mdy")))


def _of_no_month(year: str, month: str, day: str) -> "Partial | None":
    """`29/2/1937`: a day that its month has not, which is asked with the days about it."""
    number, whole = ROMAN.get(month) or int(month), len(year) in (2, 4)
    return Partial.of(year, number, int(day)) if whole and 1 <= number <= _MONTHS and 28 < int(day) <= 31 else None


def _of_camera(parts: list[str]) -> "Partial | None":
    """`'86 8 14`, `98 7 4`: the year first, as the backs of cameras print it, then the month where it can be one."""
    year, month, day = parts
    return _day(year, month, day) or _day(year, day, month)


def _three_years(parts: list[str], piece: str) -> tuple[Sense, ...]:
    """`1936/7/8` may be three years as well."""
    if "/" not in piece or len(parts[0]) != 4 or not "".join(parts[1:]).isdigit() or len(parts[1]) != 1:
        return ()
    first = int(parts[0])
    if [int(part) for part in parts[1:]] != [(first + 1) % 10, (first + 2) % 10]:
        return ()
    return (Sense("years", (first, first + 2)),)


def _two(year: str, last: str, piece: str) -> tuple[Sense, ...]:
    """`1932-33`, `1904-05`, `1648/49`, `1938-22`: a span of years, a month, a season of EDTF, or several of them.

    The last dual year is 1751/52: 1752 began on 1 January (Calendar (New Style) Act 1750, 24 Geo. 2 c. 23, s. 1), and
    what is of January to March was still told by both.
    """
    first, number, digits = int(year), int(last), len(last)
    ending = first - first % 10**digits + number
    over_the_century = ending <= first and first % 100 >= 95 and number <= 5 and digits == 2
    ending += 100 if over_the_century else 0
    senses: list[Sense] = []
    slash = "/" in piece
    if slash and digits == 1 and ending != first + 1:
        return _NAME
    if first < ending <= first + 99:
        dual = slash and first <= 1751 and ending == first + 1
        senses.append(Sense("dual" if dual else "years", (first, ending)))
    if 1 <= number <= 12 and (not slash or first > 1750 or not senses):
        senses.append(Sense("dates", Partial.of(year, number)))
    elif digits == 2 and (21 <= number <= 24 or (25 <= number <= 41 and not senses)) and piece[4] == "-":
        senses.append(Sense("dates", _grouped(year, number)))
    return tuple(reversed(senses) if over_the_century else senses) or _NAME


def _short_years(parts: list[str]) -> tuple[Sense, ...]:
    first, last = int(parts[0]), int(parts[1])
    return (Sense("years", (1900 + first, 1900 + last, "short")),) if first < last else _NAME


_OPEN = r"(?:\?{1,2}|x{1,2}|0{1,2}|-{1,2}|_{1,2})"
_OPEN_PARTS = re.compile(
    rf"(?P<first>\d{{1,2}}|{_OPEN})(?P<sign>[./-])(?P<second>\d{{1,2}}|{_OPEN})(?P=sign)'?(?P<year>\d{{4}}|\d\d)"
    rf"|(?P<year_first>\d{{4}})(?P<dash>[./-])(?P<month>\d{{1,2}}|{_OPEN})(?P=dash)(?P<day>{_OPEN})",
    re.IGNORECASE,
)


def without_open_parts(words: str, order: str | None) -> str:
    """`??.06.1938`, `00/00/1938`, `1938-06-00`: the month and the year, or the year, where the rest was left open;
    empty for other words, and where it is not known which of the two the number is."""
    match = _OPEN_PARTS.fullmatch(words)
    if match is None or match["year"] == "0000":
        return ""
    if year := match["year_first"]:
        month = match["month"]
    else:
        first, month, year = match["first"], match["second"], match["year"]
        if _is_told(first) and _is_told(month):
            return ""
        if _is_told(first):
            if order is None and int(first) <= _MONTHS:
                return ""
            month = first if order == "mdy" else ""
    return f"{month}/{year}" if _is_told(month) and int(month) <= _MONTHS else year


_MONTHS = 12


def _is_told(part: str) -> bool:
    return part.isdigit() and int(part) > 0


_NEVER_OF_A_YEAR = ("st", "nd", "rd", "th")
"""Endings of English: the 51st Highlanders are of no year."""


def year_ending(words: str, piece: str, end: int) -> tuple[tuple[Sense, ...], int] | None:
    """What an ending that follows a year's digits at once says (`1938:ssa`, `1914-től`), and where it ends; None where
    none does, or it makes a decade of the year."""
    if piece[-1] == "0" and endings("decade_endings").match(words, end):
        return None
    pattern, meant = number_endings()
    if not (match := pattern.match(words, end)):
        return None
    kind, languages = meant[match[0]]
    return (Sense(kind, None, languages),), match.end()


PLAIN_NUMBERS: Mapping[str, tuple[Sense, ...]] = {
    digits: (Sense("day", (int(digits), len(digits))),)
    for digits in (*map(str, range(100)), *(f"0{digit}" for digit in range(10)))
    if digits not in ("18", "19")
} | {year: (Sense("year", year),) for year in map(str, range(1000, 2100))}
"""The senses of digits with nothing at once behind them, where these are always the same: of years, and of numbers of
one or two digits, but those that may begin a year that is written apart (“8 Dec 19 38”)."""


def numeral(words: str, piece: str, start: int, end: int) -> tuple[tuple[Sense, ...], int]:
    """The senses of digits with an ending that follows at once (`3rd`, `1950s`), and where they end in the text."""
    length = len(piece)
    if length in (2, 4) and piece[-1] == "0" and (match := endings("decade_endings").match(words, end)):
        return (Sense("decade_digits", piece),), match.end()
    if length == 4:
        return (Sense("year", piece),), end
    if length > 2:
        return _NAME, end
    if words[end : end + 1].isalpha() or words[end : end + 1] in ("º", "ª", "°", "-", ":"):
        match = endings("ordinal_endings").match(words, end)
        if match:
            is_year = int(piece) > 31 and match[0] not in _NEVER_OF_A_YEAR
            short = (Sense("short", piece),) if is_year else ()  # 9 мая 45-го
            return (Sense("ordinal", int(piece)), *short), match.end()
    return (Sense("day", (int(piece), length)),), end
