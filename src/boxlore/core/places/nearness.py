"""A place told by how far it lies from another: “3,5 km north of Milton”, “two hours' walk from Reval”, “near Dorpat”.

The grammar, of the words of `nearness_table`:

    near      [before] distance way? FROM anchor      the farm, about 3 miles north of Milton
              [before] direction FROM anchor          just west of Milton
              [before] NEAR anchor                    the farm near Milton
              [before] distance anchor+ENDING         5 km Tartust
              anchor "," distance way?                Milton, 3 miles out
              anchor NEAR_BEHIND                      Tartu lähedal
              [WAY] Anchor NEAR_BEHIND_NAMES          down Dargaville way
    distance  ABOUT* amount [or amount] unit ["and a half"]
    amount    3  3,5  2½  1 1/2  1,200  three  twenty-five  half a  a few

The anchor is what the gazetteer is asked for. How far off it the place may be is the distance told, in kilometres.
"""

import re
from dataclasses import dataclass
from functools import cache

from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.places import nearness_table as table

NEAR_KM = 15.0
"""How far off a place may be that is told as near another, where no distance is told (ours)."""
FASTEST = 60.0
"""Kilometres in an hour on the way, where the words do not say how one goes."""


@dataclass(frozen=True, slots=True)
class Near:
    """What stood before, the words of nearness, the place that it is near, and how many kilometres it may be off."""

    before: str
    words: str
    anchor: str
    km: float


def _numbers() -> dict[str, float]:
    values: dict[str, float] = {}
    for language in LANGUAGES:
        for value, words in language.numbers.items():
            values.update((word, float(value)) for word in words.split("|") if len(word) > 1)
    return values | table.NUMBERS_INFLECTED


_NUMBERS = _numbers()
_AMOUNTS = [(re.compile(words, re.IGNORECASE), value) for words, value in table.SMALL_AMOUNTS.items()]
_FRACTIONS = {"½": 0.5, "¼": 0.25, "¾": 0.75, "1/2": 0.5, "1/4": 0.25, "3/4": 0.75}
_LAST_FRACTION = re.compile(r"(?:^|\s|(?<=\d)(?=[½¼¾]))([½¼¾]|[13]/[24])$")
_MULTIPLYING = {0.25, 12.0, 100.0, 1000.0}
"""A quarter, a dozen, a hundred, a thousand: so many of them as the words before say."""
_WORD = "|".join(
    [*sorted(map(re.escape, _NUMBERS), key=len, reverse=True), *table.SMALL_AMOUNTS, table.ARTICLES, "and", "of"]
)
_FRACTION = r"[½¼¾]|[13]/[24]"
_AMOUNT = rf"(?:\d[\d.,]*(?:\s*(?:{_FRACTION}))?|{_FRACTION}|(?:{_WORD})(?:[-\s]+(?:{_WORD}))*)"
_UNIT = "|".join((*table.LENGTHS, *table.TIMES))
_PACE = "|".join(table.PACES)
_DISTANCE = (
    rf"(?:(?:{table.ABOUT})\.?\s+)*(?:(?:[\d.,]+\s*[-–]|{_AMOUNT}\s+(?:or|to|oder|bis|ou|või|lub|do|или))\s*)?(?P<amount>{_AMOUNT})"
    rf"(?:[-\s]+|(?<=[\d½¼¾]))(?P<unit>{_UNIT})\.?(?P<half>\s+and a half|\s+et demie?)?"
    rf"(?:['’]?s?['’]?(?:\s+(?:by|on|zu|à|en|per|mit dem|mit der|easy))?\s+(?P<pace>{_PACE}))?(?!\w)"
)
_FROM = rf"(?:(?:{table.FROM})\s+|d['’])"
_BEFORE = r"^(?P<before>(?:.*?[\s,;:(])??)\(?"
_FORMS = (
    rf"{_BEFORE}{_DISTANCE}\s+(?:[^\s,]+\s+){{0,5}}?{_FROM}(?P<anchor>\S.*)$",
    rf"{_BEFORE}(?<!\bthe )(?:(?:just|due|a little|some way|slightly|to the|im|au|à l['’]|al)\s*)*"
    rf"(?:{table.DIRECTIONS})\s+{_FROM}(?P<anchor>\S.*)$",
    rf"{_BEFORE}(?:somewhere\s+|irgendwo\s+|kuskil\s+|gdzieś\s+|где-то\s+)?(?:(?:{table.NEAR})(?:\.?\s+|(?<=['’])))(?P<anchor>\S.*)$",
    rf"{_BEFORE}{_DISTANCE}\s+(?!(?:{table.DIRECTIONS})\b)(?P<anchor>\w\w+?)(?:{table.FROM_ENDINGS})\b.*$",
    rf"^(?P<before>)(?P<anchor>[^,(]+)(?:,\s*|\s*\(){_DISTANCE}(?:\s+(?:away|out|off|{table.DIRECTIONS}))*\)?(?P<after>(?:,.*)?)$",
    rf"^(?P<before>)(?P<anchor>\S.*?)\s+(?:{table.NEAR_BEHIND})(?-i:(?P<what>(?:\s+[^\W\dA-ZÀ-Þ_]+)*))(?P<after>(?:,.*)?)$",
    rf"^(?P<before>)(?:(?:{table.WAY})\s+)?(?-i:(?P<anchor>{table.CAPITAL}[^,]*?)\s+(?:{table.NEAR_BEHIND_NAMES}))"
    r"(?P<after>(?:,.*)?)$",
)
_HAS_UNIT = re.compile(rf"(?:[-\s]|(?<=[\d½¼¾]))(?:{_UNIT})s?(?!\w)", re.IGNORECASE)
"""Without this no distance is told."""


@cache
def _compiled(form: str) -> re.Pattern[str]:
    """A form with a distance has thousands of words of numbers in it: it is compiled when words first need it."""
    return re.compile(form, re.IGNORECASE)


def near_of(words: str) -> Near | None:
    """The words taken apart, or None if they tell of no nearness."""
    has_unit = _HAS_UNIT.search(words) is not None
    for form in _FORMS:
        if (_DISTANCE in form and not has_unit) or (told := _compiled(form).match(words)) is None:
            continue
        groups = told.groupdict()
        anchor = told["anchor"].strip() + (groups.get("after") or "")
        if told["before"].count("(") > told["before"].count(")") or not any(map(str.isalpha, anchor)):
            continue  # what is near stands in a note beside the place: `Milton (the farm near Otago)`
        if _IN_A_PLACE.match(anchor) and not groups.get("unit"):
            continue  # `outside the Town Hall in Auckland`: near a thing, and in the place
        km = _km(told) if groups.get("unit") else NEAR_KM
        nearness = words[told.end("before") : told.start("anchor")].strip(" (")
        before = told["before"].strip(" ,;:") or (groups.get("what") or "").strip()
        return Near(before, nearness, _bare(anchor), km)
    return None


_IN_A_PLACE = re.compile(rf"(?:{table.THING})\s+[^,]+?\s+(?:{table.IN})\s+{table.CAPITAL}")
"""A thing behind its article, and the place that it is in."""
_KIND = re.compile(r"^(?:the\s+)?(?:town|village|city|township|settlement|hamlet)\s+of\s+", re.IGNORECASE)


def _bare(anchor: str) -> str:
    if anchor.count(")") > anchor.count("("):
        anchor = anchor.replace(")", "", 1)
    return _KIND.sub("", anchor.strip(" ,"))


def _km(told: re.Match[str]) -> float:
    """The distance told, in kilometres; a time is as far as one goes in it."""
    amount = _value(told["amount"]) + (0.5 if told["half"] else 0)
    for units, length in table.LENGTHS.items():
        if re.fullmatch(units, told["unit"], re.IGNORECASE):
            return amount * length
    hours = next(hours for units, hours in table.TIMES.items() if re.fullmatch(units, told["unit"], re.IGNORECASE))
    pace = told["pace"] or ""
    return (
        amount
        * hours
        * next((km for way, km in table.PACES.items() if re.fullmatch(way, pace, re.IGNORECASE)), FASTEST)
    )


def _value(amount: str) -> float:
    """The number that words or digits of an amount mean: `3,5`, `1,200`, `2 ½`, `twenty-five`, `half a`, `an`."""
    plain, fraction = amount.lower(), 0.0
    if (part := _LAST_FRACTION.search(plain)) is not None:
        plain, fraction = plain[: part.start()].strip(), _FRACTIONS[part[1]]
    if plain[:1].isdecimal():
        return _digits(plain) + fraction
    total = fraction
    for word in re.split(r"[-\s]+", plain):
        value = _NUMBERS.get(word) or next((value for words, value in _AMOUNTS if words.fullmatch(word)), 0.0)
        total = total * value if total and value in _MULTIPLYING else total + value
    return total or 1.0


def _digits(text: str) -> float:
    """A comma or point before three digits parts thousands, another one decimals."""
    plain = re.sub(r"[.,](?=\d{3}(?!\d))", "", text.rstrip(".,")).replace(",", ".")
    whole, point, part = plain.partition(".")
    return float(whole + point + part.replace(".", ""))
