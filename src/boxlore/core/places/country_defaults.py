"""What to suggest to a keeper who says in which country the family lives."""

from dataclasses import dataclass

from boxlore.core.places.abbreviations_table import COUNTRIES
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.country_defaults_table import BOTH_ORDERS, LANGUAGES, MONTH_FIRST, SOUTH
from boxlore.core.places.country_words_table import COUNTRY_WORDS
from boxlore.core.places.taking_apart import fold_place

_CODES = (
    {word: code for code, words in COUNTRY_WORDS.items() for word in words.split("|")}
    | {code.casefold(): code for code in COUNTRY_NAMES}
    | COUNTRIES
    | {fold_place(name): code for code, name in COUNTRY_NAMES.items()}
)
"""Folded name or code of a country -> its code: in other languages, of every day (`england`, `usa`), in English."""


@dataclass(frozen=True, slots=True)
class UsualWays:
    """A suggestion: `day_order` dmy, mdy or '' (ask each time), `hemisphere` north or south, a language tag; and the
    code of the country, '' where none is said."""

    day_order: str = ""
    hemisphere: str = "north"
    language: str = "en"
    country: str = ""


def usual_ways(country: str) -> UsualWays | None:
    """What is usual in the country of this name, code (ISO 3166-1), everyday name (a part of the United Kingdom too)
    or beginning of an English name; None if that is not one."""
    asked = fold_place(country)
    if not asked:
        return UsualWays()
    begun = [code for code, name in COUNTRY_NAMES.items() if fold_place(name).startswith(asked)]
    code = _CODES.get(asked) or (begun[0] if len(begun) == 1 else "")
    if not code:
        return None
    order = "" if code in BOTH_ORDERS else "mdy" if code in MONTH_FIRST else "dmy"
    return UsualWays(order, "south" if code in SOUTH else "north", LANGUAGES.get(code, "en"), code)
