"""A place told by two others: “between Oamaru and Timaru”, “on the train from Dunedin to Christchurch”.

The grammar, by language (`_PAIRS`): the word before the first place, the word between the two, a word behind them.
Common practice, no source. The places are any words; whether both are places is for the gazetteer to say.
"""

import re
from dataclasses import dataclass

_PAIRS = (
    ("between", "and|&", ""), ("zwischen", "und", ""), ("entre", "et|y|e", ""), ("między|pomiędzy", "a|i", ""),
    ("между", "и", ""), ("mellan|mellem|mellom", "och|og", ""), ("tussen", "en", ""), ("fra|tra", "e", ""),
    ("mezi", "a", ""), ("starp", "un", ""), ("tarp", "ir", ""), ("", "ja", "vahel|välillä"),
    ("from", "to", ""), ("von", "nach|bis", ""), ("de", "à", ""), ("od|z", "do", ""), ("из|от", "в|до", ""),
    ("från|fra", "till|til", ""), ("van", "naar", ""), ("da", "a", ""), ("desde|de", "a", ""),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Between:
    """What stood before, and the two places; what follows the second, behind a comma, is told of both."""

    before: str
    places: tuple[str, str]


def _form(first: str, joining: str, behind: str) -> re.Pattern[str]:
    opening = rf"(?P<before>(?:.*?[\s,;:(])??)(?:{first})\s+" if first else "(?P<before>)"
    closing = rf"\s+(?:{behind})" if behind else ""
    places = rf"(?P<one>[^,]+?)\s+(?:{joining})\s+(?P<two>[^,]+?)"
    return re.compile(rf"^{opening}{places}{closing}(?P<rest>,.*)?$", re.IGNORECASE)


_FORMS = [_form(*pair) for pair in _PAIRS]


def between_of(words: str) -> Between | None:
    """The two places, or None if the words tell of no pair. Both begin with a large letter."""
    for form in _FORMS:
        told = form.match(words)
        if told is None or not (told["one"][0].isupper() and told["two"][0].isupper()):
            continue
        rest = told["rest"] or ""
        return Between(told["before"].strip(" ,;:("), (told["one"] + rest, told["two"] + rest))
    return None
