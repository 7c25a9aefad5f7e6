"""Language tags: the shape that BCP 47 (RFC 5646, 2.1) gives them. Of longer names of
languages, four letters are reserved and from five to eight none is registered (2.2.1): `English` is no tag. Whether a
language of two or three letters exists is not asked."""

import re
from functools import lru_cache

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
    """Whether it has the shape of a tag: `en`, `et-EE`, `mi`, `zh-Hant`."""
    return _TAG.fullmatch(tag) is not None


@lru_cache(256)
def language_tag(text: str) -> str:
    """The tag that a text from an older collection means (`en_NZ` is en-NZ), or an empty string where it is none."""
    tag = text.strip().replace("_", "-")
    return tag if is_language(tag) else ""
