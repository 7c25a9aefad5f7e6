"""Places told as one of two, “Oamaru or Timaru”, and places that are said not to be meant, “Christchurch, not Dunedin”.

The words for it by language are common practice, no source. Both places begin with a large letter; whether they are
places is for the gazetteer to say. “Not far from Milton” denies no place.
"""

import re

from boxlore.core.places.between import Between

_OR = re.compile(
    r"^(?P<before>(?:[^,]*,\s*)*)(?P<one>[^,]+?),?\s+"
    r"(?:or|oder|ou|o|või|vai|lub|albo|или|або|eller|tai|nebo|alebo|arba|vagy|eða)\s+"
    r"(?:(?:else|maybe|perhaps|possibly|in|at|vielleicht|peut-être|võib-olla|może|может быть)\s+)*"
    r"(?P<two>[^,]+?)(?P<rest>,.*)?$",
    re.IGNORECASE,
)
_EITHER = re.compile(r"\s*\b(?:either|entweder|soit|kas|albo|либо)$", re.IGNORECASE)
_DENIED = re.compile(
    r"(?:^|[\s,]*(?P<open>\()|[\s,]+)(?:(?:and|but)\s+)?(?:not|nicht|pas|mitte|nie|не|inte|ikke|niet|nem|ekki)\s+"
    r"(?:(?:in|at|the|near|to|à|w|в|i)\s+)*(?P<denied>[^,)]+?)(?=\s+(?:but|sondern|mais|vaid|lecz|tylko|а|utan|men|maar)\s|[,)]|$)(?(open)\))",
    re.IGNORECASE,
)
_BUT = re.compile(r"^[\s,)]*(?:but|sondern|mais|vaid|lecz|tylko|а|utan|men|maar)\s+(?:(?:in|at)\s+)?", re.IGNORECASE)


def either_of(words: str) -> Between | None:
    """The two places, or None if the words tell of no two; what follows the second, behind a comma, is told of both."""
    told = _OR.match(words)
    if told is None or not told["two"][0].isupper():
        return None
    tokens = told["one"].split()
    name = next((at for at, token in enumerate(tokens) if token[0].isupper()), len(tokens))
    one, before = " ".join(tokens[name:]), _EITHER.sub("", told["before"] + " ".join(tokens[:name]))
    rest = told["rest"] or ""
    return Between(before.strip(" ,;:("), (one + rest, told["two"] + rest)) if one else None


def without_denied(words: str) -> str:
    """The words without the places that are said not to be meant; nothing where no other is told
    (`not Dunedin`)."""
    left = _DENIED.sub(lambda told: "" if told["denied"][0].isupper() else told[0], words)
    return words if left == words else _BUT.sub("", left).strip(" ,)")
