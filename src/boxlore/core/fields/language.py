"""Language tags as BCP 47 has them (RFC 5646): their shape (2.1), and subtags that are registered (2.2.9).

Of longer names of languages, four letters are reserved and from five to eight none is registered (2.2.1): `English` is
no tag. A language that has a code of two letters has no other (2.2.1): `est` is none, `et` is. Extensions and private
use may hold anything.
"""

import re
from functools import lru_cache

from boxlore.core.fields.languages_table import SHORTER, SUBTAGS

_TAG = re.compile(
    r"""
    (?:
        [a-z]{2,3}(?:-[a-z]{3}){0,3}                                # language with up to three extended ones
        (?:-[a-z]{4})?                                              # script
        (?:-(?:[a-z]{2}|[0-9]{3}))?                                 # region
        (?:-(?:[a-z0-9]{5,8}|[0-9][a-z0-9]{3}))*                    # variants
        (?:-[a-wy-z0-9](?:-[a-z0-9]{2,8})+)*                        # extensions
        (?:-x(?:-[a-z0-9]{1,8})+)?                                  # private use
        | x(?:-[a-z0-9]{1,8})+
        | en-gb-oed | i-(?:ami|bnn|default|enochian|hak|klingon|lux|mingo|navajo|pwn|tao|tay|tsu)
        | sgn-(?:be-fr|be-nl|ch-de)                                 # irregular, registered before the grammar
    )""",
    re.VERBOSE | re.IGNORECASE | re.ASCII,
)


@lru_cache(256)
def is_language(tag: str) -> bool:
    """Whether it has the shape of a tag, and is put together of what is registered: `en`, `et-EE`, `mi`, `zh-Hant`."""
    return _TAG.fullmatch(tag) is not None and not _unknown(tag)


@lru_cache(256)
def why_no_language(tag: str) -> str:
    """Why it is no language tag, in a sentence; an empty string where it is one."""
    if is_language(tag):
        return ""
    if _TAG.fullmatch(tag) is None:
        return f"“{tag[:40]}” is no language tag."
    unknown = _unknown(tag)
    if shorter := _shorter().get(unknown):
        return f"“{tag[:40]}” is no language tag: “{shorter}” is written for “{unknown}”."
    return f"“{tag[:40]}” is no language tag: nothing has the code “{unknown}”."


@lru_cache(256)
def language_tag(text: str) -> str:
    """The tag that a text from an older collection means, or an empty string where it is none.

    `en_NZ` is en-NZ and `est` is et; of a tag whose end is not registered the rest stands (RFC 4647, 3.4).
    """
    tag = text.strip().replace("_", "-")
    first, dash, rest = tag.partition("-")
    tag = f"{_shorter().get(first.lower(), first)}{dash}{rest}"
    while tag and not is_language(tag):
        tag = tag.rpartition("-")[0] if _TAG.fullmatch(tag) else ""
    return tag


def _unknown(tag: str) -> str:
    """The first subtag of a well-formed tag that is not registered; an empty string if all are."""
    if tag.lower() in _GRANDFATHERED or tag.lower().startswith(("x-", "i-")):
        return ""
    subtags = _before_extensions(tag.lower().split("-"))
    for at, subtag in enumerate(subtags):
        if not any(subtag in _subtags(kind) for kind in (("language",) if at == 0 else _AFTER)):
            return subtag
    return ""


def _before_extensions(subtags: list[str]) -> list[str]:
    """The subtags up to the first of one letter, with which extensions and private use begin."""
    return subtags[: next((at for at, subtag in enumerate(subtags) if len(subtag) == 1), len(subtags))]


_AFTER = ("extlang", "script", "region", "variant")
_GRANDFATHERED = ("en-gb-oed", "sgn-be-fr", "sgn-be-nl", "sgn-ch-de")


@lru_cache
def _subtags(kind: str) -> frozenset[str]:
    return frozenset(SUBTAGS[kind].split())


@lru_cache
def _shorter() -> dict[str, str]:
    return {long: short for long, _, short in (pair.partition(":") for pair in SHORTER.split())}
