"""Words that are part of a date and may be none: “the march in 1916”, “at 1930 on 3 May”. They are asked about.

Common practice, no source: a demonstration is a march, and a time of day is written with four digits.
"""

import re
from collections.abc import Mapping
from dataclasses import replace

from boxlore.core.dates.asked_words import which_is_meant
from boxlore.core.dates.context import DateContext, Outcome
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.lexer import Token, lex
from boxlore.core.dates.lexicon import ANY_LANGUAGE, ENGLISH, LANGUAGE_BITS, Sense
from boxlore.core.dates.wars_table import SPAN_NAMES, UNNAMED

_MARCH = re.compile(
    r"\b(?:the|a|an|our|that|his|her|their)(?: (?!of\b|in\b|on\b|early\b|late\b|mid\b|first\b|last\b|\d)[a-z]+)? "
    r"march (?:in|of|on|through|from|to|past)\b",
    re.IGNORECASE,
)
_NAMED = re.compile(
    r"(?:(?:Ott|Ago|Marta|Augusta|Maja|Helmi|Touko|Liepa)(?: \d\d?)?(?: |, )|Mai \d\d?, |(?i:крещение),? )"
    r"(?P<year>\d{4})\W*"
)
"""`Ott 1931`, `Marta 5, 1938`: months of languages that write them small, as given names are written, and perhaps an
age; and a feast whose name is that of something in a family too: Epiphany, and a baptism."""
_AGED = re.compile(
    r"[^\W\d_]+,? \d\d?,? ?(?:yrs?|y\.?o|years?(?: old)?|v|vuotta|aastane|ans|Jahre|år)\b\.?,? (?P<year>\d{4})\W*"
)
"""`Jan 4 yrs, 1938`: somebody of that name and age."""

_BEGINS_A_NAME = frozenset("OAMHTLКк")
"""The first letters of these: most words begin with another one, and are not looked at further."""

GIVEN_NAMES = frozenset(
    "april may june august auguste mai maja jaan jann nikolaus silvester sylvester mars noël noel julio asunción reyes "
    "candelaria inmaculada anunciación assunta immacolata candelária assunção mei augustus mårten lucia valborg jula "
    "vappu helmi marta август maija jūlija augusta jūlijs augusts liepa máj mikuláš július szilveszter mikulás noe "
    "asuncion anunciacion assuncao marco marten maarten julija julijs jani janos janus mikulas junius julius mae jara "
    "avril juno natal pascua pasqua joulu juul jule".split()
)
"""Spellings of a month, a feast or a season that are given names too: those of the lists of Faker 40.63.0 and names
0.3.0 (tests/core/people/names/make_given_names.py), and behind “jara” some from memory. Told alone beside a year in a
collection of another language, they may be somebody's."""
_NAMES_AND_YEAR = re.compile(
    r"(?P<names>[^\W\d_]+(?:(?: and| und| et| e| y| ja| og| och| en|,| &) [^\W\d_]+)*),? (?P<year>\d{4})\W*"
)
_NO_SPELLING_NOW = "auguste"
"""An English spelling of August of the times before photographs, which counts for none here."""


def _of_names(told: str, context: DateContext) -> str:
    """“Avril 1931”, “Auguste, 1931”, “Avril and Noel 1931”: the year, where all that is told beside it may be names;
    empty for other words, and where the words are of the collection's own language, or of English."""
    first = told.partition(" ")[0].rstrip(",").casefold()
    if first not in GIVEN_NAMES or not (match := _NAMES_AND_YEAR.fullmatch(told)):
        return ""  # most
    own = LANGUAGE_BITS.get(context.language, 0) | ENGLISH
    for token in lex(match["names"]):
        name = match["names"][token.start : token.end].casefold()
        known = any(sense.languages & own for sense in token.senses if sense.languages != ANY_LANGUAGE)
        if name in GIVEN_NAMES and (name == _NO_SPELLING_NOW or not known):
            return match["year"]
    return ""


_TWO_MONTHS = re.compile(r"\{(\d{4})-(\d\d),\1-(\d\d)\}")


def _of_two_with_names_of_months(told: str, text: str) -> str:
    """“June and May, 1931”: the year, where two months that do not follow each other are told together, so that they
    may as well be two people; empty for other words."""
    months, match = _TWO_MONTHS.fullmatch(text), _NAMES_AND_YEAR.fullmatch(told)
    if months is None or match is None or int(months[3]) == int(months[2]) + 1:
        return ""
    named = [word.casefold() in GIVEN_NAMES for word in match["names"].split() if word[0].isupper()]
    return match["year"] if len(named) == 2 and all(named) else ""


_FROM = re.compile(r"from\b(?!.*\b(?:on|onwards?)\b)", re.IGNORECASE)


def from_then_or_of_then(outcome: Outcome, tokens: list[Token], context: DateContext) -> Outcome:
    """The outcome, a time that begins with “from” with the question whether it is of then: “from May 1931” on a print,
    and “from the album of 1931”, of which the other is the likelier. Codes of tree files (`FROM 1900`) ask nothing."""
    edtf, told = outcome.edtf, context.text
    if edtf is None or outcome.ask or not edtf.text.endswith("/..") or not _FROM.match(told) or told[:4].isupper():
        return outcome
    then = edtf.text.removesuffix("/..")
    if tokens[1].is_any(_THING) and told[tokens[1].start : tokens[1].end].casefold() not in ("the", "a", "an"):
        return _asked((then, edtf.text), context)
    return replace(outcome, ask=which_is_meant((edtf.text, then), context), alternatives=(then,))


_THING = frozenset(("noise",))

_OF_A_LIFE = re.compile(r"(?:b|d|m|bapt|bur|fl)\.? ?\d{4}\W*", re.IGNORECASE)
"""`d. 1926`: a birth, a death, a marriage as genealogists write them."""
_BEGINS_A_LIFE = frozenset("bdmfBDMF")
_NUMBERED_THING = re.compile(
    r"(?:the )?(?:negatives?|slides?|frames?|films?|prints?|plates?|sheets?|cards?|sleeves?|envelopes?|exposures?) "
    r"\d{4}\W*",
    re.IGNORECASE,
)
"""`negative 1931`: what photographs lie in and are made of has numbers of its own."""
_FOUNDED = re.compile(r"(?:Est|Estd|Estab|Established)\.? \d{4}\W*")
"""`Est. 1887`: of a firm; what is estimated is written small, or all in capitals in tree files."""
_TEAM = re.compile(r"\b\d+(?:st|nd|rd|th) XI\b")
"""`1st XI 1938`: a team of eleven, and hardly November, since nobody writes an ordinal before a Roman month."""
_SEA_OR_SEVEN = re.compile(r"\b(?:(?:el|al|del|no|ao) mar|(?:les|aux|à|nous) sept)\b(?!\.)", re.IGNORECASE)
"""`en el mar, 1938`, `à sept ans 1938`: a month in a language that gives months no article; with a stop it is short."""
_CLOCK = re.compile(
    r"\b(?:at|kell|klo|kello|kl\.?|alle|ore|a las|às|o godz\.?|plkst\.?) (?P<time>(?:[01]\d|2[0-3])[0-5]\d)(?!\d)",
    re.IGNORECASE,
)
_EVERYDAY: Mapping[str, frozenset[str]] = {
    language: frozenset(words.split())
    for language, words in {
        "en": "out set ago led lip mag lug gen dub sty pro maj hun hep mae bal",
        "de": "sie mag lug des set gen out",
        "fr": "des bal set out",
        "nl": "hun des bal set lip out",
        "da": "hun led bal sty",
        "nb": "hun led bal sty",
        "sv": "led bal ag",
    }.items()
}
"""Words of every day that are a month written short in another language, by the languages of a collection: “1948 (out)”
is October in Portuguese, and was crossed out in English. With a full stop it is short for something, and no such word.
Common practice, no source."""
_WORDS = re.compile(r"[^\W\d_]+\b(?!\.)")


def without_everyday_words(tokens: list[Token], words: str, language: str) -> list[Token]:
    """The tokens without the month that a word of every day is in another language: “our first Christmas out here”."""
    everyday = _EVERYDAY.get(language, frozenset())
    return [
        replace(token, senses=_UNKNOWN)
        if "month" in token.kinds and words[token.start : token.end] in everyday and words[token.end :][:1] != "."
        else token
        for token in tokens
    ]


_UNKNOWN = (Sense("name"),)


def with_more_than(tokens: list[Token]) -> list[Token]:
    """The tokens, a word for “over” that stands before a count no longer one that adds nothing (“over two or three
    years after 1950”), and one that does not (“over the three days before Christmas”) no longer “more than”."""
    return [_over(tokens, at) if token.is_any(_OLDER) else token for at, token in enumerate(tokens)]


def _over(tokens: list[Token], at: int) -> Token:
    following = tokens[at + 1 : at + 5]
    if not following:
        return tokens[at]  # “after we came over”
    is_counted = following[0].is_any(_COUNT_OR_UNIT)
    if is_counted and not any(token.is_any(_UNIT) for token in following):
        return tokens[at]  # “over six” is an age
    senses = [sense for sense in tokens[at].senses if sense.kind != ("noise" if is_counted else "older")]
    return replace(tokens[at], senses=tuple(senses) or tokens[at].senses)


_OLDER, _UNIT, _SEASON = frozenset(("older",)), frozenset(("unit",)), frozenset(("season",))
_COUNT = frozenset(("day", "few"))
_COUNT_OR_UNIT = _COUNT | _UNIT


def doubted(outcome: Outcome, context: DateContext) -> Outcome:
    """The outcome with a question, where one of its words may be no part of the date."""
    edtf = outcome.edtf
    if edtf is None or outcome.ask:
        return outcome
    told, text = context.text, edtf.text
    if told[0].isupper() and context.language and (year := _of_names(told, context)):
        return _asked((text, year), context)
    if text[0] == "{" and (year := _of_two_with_names_of_months(told, text)):
        return _asked((year, text), context)
    if len(text) <= 4:
        if told[0] in _BEGINS_A_LIFE and _OF_A_LIFE.fullmatch(told):
            return replace(outcome, ask=f"“{told}”: is that when the picture was taken?")
        if told[0].isalpha() and _NUMBERED_THING.fullmatch(told):
            return replace(outcome, ask=f"“{told}”: is a year meant, or a number?")
        return outcome
    if told[0] == "E" and _FOUNDED.fullmatch(told):
        return replace(outcome, ask=f"“{told}”: is that when the picture was taken, or when something was founded?")
    if text[4] == "-":
        month = text[5:7]
        if month == "03" and edtf.kind == "date" and _MARCH.search(told):
            return _asked((text[:4], text), context)
        if month in _OF_SEA_OR_SEVEN and _SEA_OR_SEVEN.search(told):
            return _asked((text[:4], text), context)
        if month == "11" and _TEAM.search(told):
            return _asked((text[:4], text), context)
        if len(text) == _A_DAY and told[0].isalpha() and told[-1].isdigit() and _YEAR_BEFORE_A_NUMBER.fullmatch(told):
            return _asked((text[:7], text), context)
        if told[0] in _BEGINS_A_NAME and (named := _NAMED.fullmatch(told)):
            return _asked((text, named["year"]), context)
        if told[-1].isdigit() and len(text) == _A_DAY and (aged := _AGED.fullmatch(told)):
            return _asked((aged["year"], text), context)
    everyday = _EVERYDAY.get(context.language) if "-" in text else None
    if (
        everyday
        and not everyday.isdisjoint(_WORDS.findall(told.casefold()))
        and (len(text) == _A_MONTH or (not _A_DATE_ALONE.fullmatch(told) and _is_month_of(everyday, told)))
    ):
        year = _A_YEAR.findall(text)[0]
        return _asked((year, text), context) if year in told or year[2:] in told else outcome
    year = text[:4]
    clock = _CLOCK.search(told) if not told.endswith(year) and year in told else None
    if clock and clock["time"] == year:
        return replace(outcome, ask=f"“{told}”: is the year {year} meant, or a time of day?")
    return outcome


def _is_month_of(everyday: frozenset[str], told: str) -> bool:
    """Whether each word for a month is one of every day: no “14. Mai des Jahres 1931”."""
    months = [told[token.start : token.end].casefold() for token in lex(told) if token.is_any(_MONTH)]
    return everyday.issuperset(months)


_MONTH = frozenset(("month",))
_A_MONTH = len("1948-10")
_OF_SEA_OR_SEVEN = frozenset(("03", "09"))
_A_DATE_ALONE = re.compile(r"\d\d? [^\W\d_]+ \d{4}")
"""`5 out 1948`: a day, a month and a year, and nothing else."""
_A_YEAR = re.compile(r"\d{4}")


def _asked(choices: tuple[str, ...], context: DateContext) -> Outcome:
    return Outcome(None, which_is_meant(choices, context), choices)


_YEAR_BEFORE_A_NUMBER = re.compile(r"[^\W\d_]{3,9}\.?[ .·•*-]+'?(?:19)?(?:3[2-9]|[4-9]\d)[ .·•*-]+\d{1,2}")
"""`JUL • 58 • 4`: nobody tells the day behind the year, so that it may be a number of the print."""
_A_DAY = len("1958-07-04")

_LETTER_OF_LAB = re.compile(r"(?P<date>.*\d)[ .·•*-]+[A-Z]", re.ASCII)
_MONTH_OR_DAY = re.compile(r"\d{4}-(?:0\d|1[0-2])(?:-\d\d)?")


def before_on(words: str) -> str:
    """“1949 on”: what stands before “on” behind a number, which may mean “from then on”; empty for other words."""
    date = words.removesuffix(" on")
    return date if date != words and date[-1:].isdigit() else ""


_ON_AND_MORE = re.compile(r"(?P<date>.*\d) on,? (?P<rest>[^\d]+)", re.ASCII | re.IGNORECASE)


def on_with_doubt(words: str) -> str:
    """“From about 1960 on I should think”: with “onwards” for “on”, where only words of doubt stand behind it; empty
    for other words."""
    match = _ON_AND_MORE.fullmatch(words) if " on" in words else None
    if match is None or not all(token.is_any(_OF_DOUBT) for token in lex(match["rest"])):
        return ""
    return f"{match['date']} onwards {match['rest']}"


_OF_DOUBT = frozenset(("doubt",))


def without_letter_of_lab(words: str) -> str:
    """“SEP 62 M”: what stands before a capital letter at the end, as processing laboratories print it; empty for other
    words."""
    match = _LETTER_OF_LAB.fullmatch(words) if words[-1].isupper() else None
    return match["date"] if match else ""


def is_month_or_day(edtf: Edtf | None) -> bool:
    """Whether a date is one month or one day."""
    return edtf is not None and _MONTH_OR_DAY.fullmatch(edtf.text) is not None


def without_unknown_wars(tokens: list[Token], words: str) -> list[Token]:
    """“The Zulu War”: the tokens with a name for “war” right behind a word that nobody knows, which says which war."""
    told: list[Token] = []
    for token in tokens:
        named = bool(told) and told[-1].senses == _A_NAME and not words[told[-1].end : token.start].strip()
        told.append(replace(token, senses=_A_NAME) if named and _is_plain_war(token) else token)
    return told


def _is_plain_war(token: Token) -> bool:
    return any(sense.kind == "span" and sense.value in (SPAN_NAMES["war"], UNNAMED) for sense in token.senses)


_A_NAME = (Sense("name"),)


def without_counted_summers(tokens: list[Token]) -> list[Token]:
    """`Dwa lata po wojnie`: the tokens with years alone for a word for years and for summer that stands behind a
    count."""
    return [
        replace(token, senses=tuple(sense for sense in token.senses if sense.kind != "season"))
        if at and tokens[at - 1].is_any(_COUNT) and token.is_any(_UNIT) and token.is_any(_SEASON)
        else token
        for at, token in enumerate(tokens)
    ]
