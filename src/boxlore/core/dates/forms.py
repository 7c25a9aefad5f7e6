"""The forms that people say dates in: each is one row of FORMS, a pattern and what it comes to.

A form that holds other dates (between … and …, … or …) reads its parts by the same table. To add a form, add
a row; the first row whose pattern fits the whole of the words, and whose function gives something, is taken.
"""

import re
from collections.abc import Iterable
from dataclasses import replace

from boxlore.core.dates import joined, single
from boxlore.core.dates.calendars import HEBREW_MONTHS
from boxlore.core.dates.context import DateContext, FormReader, MaybeProposed, Proposed, qualified
from boxlore.core.dates.words import MONTH_OF, SEASON_OF, WEEKDAY_OF
from boxlore.core.dates.words_table import APPROXIMATE, DECADES, ROMAN_MONTHS, UNCERTAIN, UNDATED, WARS


def _any(words: Iterable[str]) -> str:
    return "|".join(sorted(map(re.escape, words), key=len, reverse=True))


MONTH = rf"(?P<month>(?:{_any(MONTH_OF)})\.?)"
NAMED = rf"(?P<month>(?:{_any(MONTH_OF)}|{_any(ROMAN_MONTHS)})\.?)"
YEAR = r"(?P<year>\d{4}|'\d\d)"
DAY = r"(?P<day>\d{1,2})"
SEASON = rf"(?P<season>{_any(SEASON_OF)})"
WEEKDAY = rf"(?P<weekday>{_any(WEEKDAY_OF)})"


def read_form(words: str, context: DateContext) -> MaybeProposed:
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
        if match and (made := form(match, context, read_form)) is not None:
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
    (re.compile(r"(?:in|on|during|at|of|within) (?:the year )?(?P<rest>(?:the )?[\w'].*)"), ""),
    (re.compile(r"the year (?P<rest>\d.*)"), ""),
    (re.compile(r"(?P<rest>.*\d)\."), ""),
)
"""What stands around a date and says how sure it is (common practice, no source, for the words)."""


def _unsure(words: str) -> tuple[str, str]:
    """The words without one layer of what says how sure they are, and that as a qualifier."""
    for pattern, mark in _STRIP:
        match = pattern.fullmatch(words)
        if match and not (mark == "" and match["rest"] == words):
            return match["rest"].strip(" ,"), mark
    return words, ""


def _p(pattern: str) -> re.Pattern[str]:
    return re.compile(pattern)


_HOLIDAY_NAME = r"(?P<name>[^\W\d_](?:[^\W\d]|[ '.-])+?|the 4|4 of july|4 july)"


FORMS: tuple[tuple[re.Pattern[str], FormReader], ...] = (
    (_p(r"[-y\d\[{/.?~%][-\dxyest:z+?~%\[\]{},./]*"), single.iso),
    (_p(r"\d{3}-|\d\d--"), single.catalogue),
    (_p(rf"{YEAR}"), single.year_alone),
    (_p(rf"{WEEKDAY}\.?,? (?:the )?(?P<rest>.+)"), single.weekday),
    (_p(rf"(?:the )?{DAY}\.? ?(?:of |de |di )?{NAMED},? ?(?:of |de |del |di )?{YEAR}\.?"), single.day_month_year),
    (_p(rf"{DAY}[./ -]{NAMED}[./ -]{YEAR}"), single.day_month_year),
    (_p(rf"{MONTH} (?:the )?{DAY},? ?(?:of )?{YEAR}"), single.day_month_year),
    (_p(rf"{YEAR},? {MONTH} {DAY}"), single.day_month_year),
    (_p(rf"{MONTH},? ?(?:of |de |del |di |in )?{YEAR}"), single.month_year),
    (_p(rf"{YEAR},? {MONTH}"), single.month_year),
    (_p(r"(?P<one>\d{1,2})[./-](?P<two>\d{1,2})[./-](?P<year>\d{4}|\d\d)"), single.numbers),
    (_p(r"(?:the )?(?P<decade>'?\d\d(?:\d\d)?)(?:'?s)"), single.decade),
    (_p(rf"(?:the )?(?:(?P<century>nineteen|eighteen|seventeen|1[789])[ -]?)?(?P<word>{'|'.join(DECADES)})"), single.decade_word),
    (_p(r"(?:the )?(?P<part>early|mid|middle|late|beginning|end)[ -](?:of )?(?:the )?(?P<rest>.+)"), single.part_of_decade),
    (_p(rf"(?:the )?(?:next )?{SEASON}(?: of| in|,)? {YEAR}"), single.season),
    (_p(rf"{YEAR},? {SEASON}"), single.season),
    (_p(r"(?:the )?(?P<side>south|north)ern (?P<rest>.+)"), single.southern),
    (_p(r"(?:the )?(?:(?P<part>early|mid|middle|late)[ -])?(?P<century>\d\d?)(?:-| )century"), single.century),
    (_p(r"(?:the )?turn of the(?: last)? century"), single.turn),
    (_p(rf"(?:(?P<side>before|after|since) )?(?:the )?(?P<war>{_any(WARS)})"), joined.war),
    (_p(r"(?P<first>\d{4}) ?/ ?(?P<last>\d{1,2})"), joined.two_years),
    (_p(r"(?P<first>\d{4}) ?(?:-|to|until|till|through|bis|à) ?(?P<last>\d{4}|\d\d)"), joined.span),
    (_p(r"(?:bet|between|zwischen|entre) (?P<first>.+?) (?:and|und|et|y|&|-) (?P<last>.+)"), joined.between),
    (_p(r"(?:from|von|de) (?P<first>.+?) (?:to|until|till|through|bis|à) (?P<last>.+)"), joined.from_to),
    (_p(r"(?P<first>.+?) ?(?: to | until | till | - |-)(?P<last>.+)"), joined.from_to),
    (_p(r"(?P<rest>.+?),? (?:but )?not (?P<side>after|later than|before|earlier than) (?P<limit>.+)"), joined.limited),
    (_p(r"(?P<first>.+?)(?:,| either)? (?:or|oder|või|ou) (?P<last>.+)"), joined.either),
    (_p(r"(?:the )?french republican .+|.*\bvend[ée]miaire\b.*|.*\bbrumaire\b.*|.*\bthermidor\b.*"), single.not_read),
    (
        _p(r"(?:(?P<count>the|a|one|a few|some|several|\d+) )?(?P<unit>day|week|month)s? (?P<side>before|after) (?P<rest>.+)"),
        joined.near_holiday,
    ),
    (_p(r"(?:before|by|bef|until|not after|no later than|not later than|vor|enne|avant) (?P<rest>.+)"), joined.before),
    (_p(r"(?:after|since|aft|not before|no earlier than|nach|pärast|après) (?P<rest>.+)"), joined.after),
    (_p(r"from (?P<rest>.+)"), joined.gedcom_from),
    (_p(r"to (?P<rest>.+)"), joined.gedcom_to),
    (_p(r"(?P<rest>.+?),? (?:by the old calendar|old style|o\.? ?s\.?|julian(?: calendar)?|vana kalendri järgi|vkj)"), single.julian_29),
    (_p(r"(?P<rest>.+?),? (?:by the old calendar|old style|o\.? ?s\.?|julian(?: calendar)?|vana kalendri järgi|vkj)"), single.julian),
    (_p(r"(?:julian|@#djulian@) (?P<rest>.+)"), single.julian_29),
    (_p(r"(?:julian|@#djulian@) (?P<rest>.+)"), single.julian),
    (_p(r"(?P<rest>.+?),? (?:new style|n\.? ?s\.?)"), lambda match, context, read: read(match["rest"], context)),
    (_p(rf"(?:hebrew |@#dhebrew@ )?(?P<day>\d{{1,2}}) (?P<hebrew>{_any(HEBREW_MONTHS)}) (?P<year>[45]\d{{3}})"), single.hebrew),
    (_p(r"(?P<years>\d{1,4}) (?:bce|b\.?c\.?)"), single.bce),
    (_p(r"(?:the )?school year (?:of )?(?P<first>\d{4})(?: ?[-/] ?(?P<last>\d{4}|\d\d))?"), single.school_year),
    (_p(rf"(?:the )?{_HOLIDAY_NAME},? (?:of |in )?(?P<year>\d{{4}}|'\d\d)"), single.holiday),
    (_p(rf"(?:the )?{_HOLIDAY_NAME}(?P<year>)"), single.holiday),
    (_p(rf"(?:the )?{DAY}\.? (?:of )?{MONTH}"), single.day_month),
    (_p(rf"{MONTH} (?:the )?{DAY}"), single.day_month),
    (_p(rf"{MONTH}"), single.month_alone),
    (_p(r"when (?P<name>[^\W\d_]+(?: [^\W\d_]+)?) was (?:about )?(?P<age>\d{1,2}|[a-z-]+)(?: years old)?"), joined.age),
    (
        _p(r"(?:the )?(?:(?P<unit>year|month|week|summer|spring|autumn|winter) )?(?:(?P<side>before|after|of) )?(?P<event>(?:the )?[^\W\d_].*)"),
        joined.event,
    ),
)  # fmt: skip
"""One row a form; the order matters where two patterns fit the same words."""
