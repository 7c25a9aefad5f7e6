"""What to suggest to a keeper who says in which country the family lives."""

from dataclasses import dataclass

from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.country_defaults_table import BOTH_ORDERS, LANGUAGES, MONTH_FIRST, SOUTH
from boxlore.core.statements import fold


@dataclass(frozen=True, slots=True)
class UsualWays:
    """A suggestion: `day_order` dmy, mdy or '' (ask each time), `hemisphere` north or south, a language tag."""

    day_order: str = ""
    hemisphere: str = "north"
    language: str = "en"


def usual_ways(country: str) -> UsualWays | None:
    """What is usual in the country of this name, code (ISO 3166-1) or beginning of a name; None if that is not one."""
    asked = fold(country).strip()
    if not asked:
        return UsualWays()
    names = {code: fold(name) for code, name in COUNTRY_NAMES.items()}
    exact = [code for code, name in names.items() if asked in (name, code.casefold())]
    begun = exact or [code for code, name in names.items() if name.startswith(asked)]
    if len(begun) != 1:
        return None
    code = begun[0]
    order = "" if code in BOTH_ORDERS else "mdy" if code in MONTH_FIRST else "dmy"
    return UsualWays(order, "south" if code in SOUTH else "north", LANGUAGES.get(code, "en"))
