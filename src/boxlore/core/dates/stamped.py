"""Dates in the forms of machines, messages and old stones, in plain words: `121630Z JUN 44`, `KODAK 2 64`,
`xiv.viii.32`, `a.d. VII Kal. Mai. 1902`, `D-Day plus 2`.

The date-time group of a military message is a day, hours and minutes, the letter of a time zone, a month and a year.
Roman days are counted back from the Kalends, Nones or Ides with both ends included; Nones and Ides are two days later
in March, May, July and October. Makers of films print a month and two digits of a year beside their names. All of it
from memory.
"""

import re

from boxlore.core.dates.edtf_values import month_length
from boxlore.core.dates.languages.english import ENGLISH
from boxlore.core.dates.numbers_in_digits import roman_number
from boxlore.core.dates.short_years import LAST_DAY, LAST_MONTH

_ROMAN_DAY = re.compile(
    r"(?P<day>[ivx]{1,6})(?P<sign>[./ -]) ?(?P<month>[ivx]{1,4})(?P=sign) ?(?P<year>'?\d\d|\d{4})", re.IGNORECASE
)
_MESSAGE = re.compile(
    r"(?<!\w)(?P<day>0[1-9]|[12]\d|3[01])(?:[01]\d|2[0-3])[0-5]\d ?[A-Z] ?(?P<rest>[A-Z]{3,4} ?(?:19)?\d\d(?!\w))"
)
_MAKERS = (
    r"(?:koda(?:k|chrome|color)|ektachrome|agfa(?:color|chrome)?|ilford|fuji(?:film|color)?|ferrania|geva(?:ert|color)"
    r"|ansco|orwo|polaroid|konica|perutz)(?:[ -](?:safety|film|print|paper))*"
)
_MAKER = re.compile(_MAKERS)
"""Sought in folded words first: a whole form is, beside no maker, sought in time that grows with its square."""
_BESIDE_MAKER = re.compile(
    rf"{_MAKERS}[ .,·•*-]+(?:\d [A-Z] )?(?P<behind>.*\d.*)|(?P<before>.*\d.*?)[ .,·•*-]+{_MAKERS}", re.IGNORECASE
)
_MONTH_AND_YEAR = re.compile(r"(0?[1-9]|1[0-2])[ .-](3[2-9]|[4-9]\d)")
_YEAR_AND_MONTH = re.compile(r"(3[2-9]|[4-9]\d)[ .-]+([^\W\d_]{3,4})")
_DAY_PLUS = re.compile(
    r"(?P<day>[^\d+]*\bday|d)(?: plus |-?plus-| ?\+ ?)"
    rf"(?P<count>\d{{1,3}}|{'|'.join(ENGLISH.numbers[number] for number in range(1, 11))})(?: days?)?",
    re.IGNORECASE,
)
_LATIN_ENDS = {"kal": 1, "cal": 1, "non": 5, "id": 13}
"""The days from which is counted back, where Nones and Ides are early."""
_LATIN_MONTHS = {
    "ian": 1, "jan": 1, "feb": 2, "mar": 3, "apr": 4, "mai": 5, "iun": 6, "jun": 6, "iul": 7, "jul": 7, "aug": 8,
    "sep": 9, "oct": 10, "nov": 11, "dec": 12,
}  # fmt: skip
_LATIN = re.compile(
    r"(?:(?:a\. ?d\.|ante diem) (?P<count>[ivx]{1,5}|1?\d)\.? |(?P<eve>pridie|prid?\.) )?"
    rf"(?P<day>{'|'.join(_LATIN_ENDS)})[a-z]*\.? (?P<month>{'|'.join(_LATIN_MONTHS)})[a-z]*\.?"
    r"(?:,? (?:anno |a\. ?d\. )?(?P<year>\d{4}))?",
    re.IGNORECASE,
)
_LATE_NONES = (3, 5, 7, 10)
_ROMANS = " I II III IV V VI VII VIII IX X XI XII".split(" ")


def in_plain_words(words: str) -> str:
    """The words with their date in a plain form; empty where there is none of these forms in them."""
    if match := _ROMAN_DAY.fullmatch(words):
        day, month = (roman_number(match[part].lower()) for part in ("day", "month"))
        return f"{day}.{_ROMANS[month]}.{match['year']}" if day <= LAST_DAY and month <= LAST_MONTH else ""
    if match := _MESSAGE.search(words):
        return f"{words[: match.start()]}{int(match['day'])} {match['rest']}{words[match.end() :]}"
    if match := _DAY_PLUS.fullmatch(words):
        named, count = match["day"] if len(match["day"]) > 1 else "D-Day", match["count"].lower()
        return f"{'a day' if count in ('1', 'one') else f'{count} days'} after {named}"
    match = _LATIN.fullmatch(words)
    return _latin_day(match) if match else ""


_PRINTED_CENTURY = re.compile(r"(?P<month>(?<![^\W\d_])[^\W\d_]{3,4}\.? ?[•·] ?)'?(?P<year>[4-9]\d)(?![\d'])")


def with_its_century(words: str) -> str:
    """`MAR • 64` with the year in full: a month and a year with such a dot between them are printed on the border of a
    picture by the laboratories of the twentieth century (from memory)."""
    if "•" not in words and "·" not in words:
        return words  # most
    return _PRINTED_CENTURY.sub(r"\g<month>19\g<year>", words)


_YEAR_APART = re.compile(r"1 ?[89] ?\d ?\d")


def as_printed(words: str) -> str:
    """What stands beside the name of a maker of films, a month and a short year of digits as such, and a year whose
    digits stand apart (`1 9 3 6`); empty for other words. A number alone beside a maker is that of the film."""
    if _YEAR_APART.fullmatch(words):
        return words.replace(" ", "")
    match = _BESIDE_MAKER.fullmatch(words) if _MAKER.search(words.casefold()) else None
    date: str = (match["behind"] or match["before"]) if match else ""
    if not date or date.isdigit():
        return ""
    if digits := _MONTH_AND_YEAR.fullmatch(date):
        return f"{digits[1]}/{digits[2]}"
    turned = _YEAR_AND_MONTH.fullmatch(date)
    return f"{turned[2]} {turned[1]}" if turned else date


def _latin_day(match: re.Match[str]) -> str:
    """The day that a Roman one is; empty for one further from its end than the days between."""
    month, year, told = _LATIN_MONTHS[match["month"].lower()], match["year"], match["count"]
    end: int = _LATIN_ENDS[match["day"].lower()]
    if end > 1 and month in _LATE_NONES:
        end += 2
    count: int = 2 if match["eve"] else 1
    if told:
        count = int(told) if told.isdigit() else roman_number(told.lower())
    if not 0 < count <= (19 if end == 1 else end - 1):
        return ""
    day = end + 1 - count
    if day < 1:
        month = (month - 2) % 12 + 1
        day += month_length(int(year or 2001), month)
    date = f"{day}.{_ROMANS[month]}."
    if day > end and month == LAST_MONTH and year:  # the year may be of that day, or of the Kalends
        return f"{date}{int(year) - 1} or {date}{year}"
    return f"{date}{year or ''}"
