"""Several dates of which each is denied: “weder 1935 noch 1936”, “ni en 1935 ni en 1936”, “nem 1935, nem 1936”.

The words for it are no words of dates: “né” is born in French, “noch” still in German, “nei” no in Norwegian. So only
both of one language deny, the one before the first date and the other before each that follows.
"""

import re
from functools import cache

from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.dates.lexer import lex

_DATED = frozenset(("day", "ordinal", "month", "year", "short", "dates", "season", "feast", "decade", "decade_digits"))
_LEADING_ELSEWHERE = ("name", "comma", "doubt", "undated")
_FOR_NO = ("not", "correction")


def denied_together(words: str, language: str) -> str:
    """The same denials in plain words, “not 1935 and not 1936”; empty for words that do not deny several dates.
    `language` is that of the collection, of which a word for “no” is no other's “neither”."""
    told = words.casefold()
    if _nor().isdisjoint(told.replace(",", " ").split()):
        return ""  # most
    for code, neither, nor in _denials():
        begun = neither.search(told)
        if begun is None or _is_plainly_no(begun[0].strip(), code, language) or _tells_a_date(words[: begun.start()]):
            continue
        parts = [part.strip(" ,") for part in nor.split(words[begun.end() :])]
        if len(parts) > 1 and all(map(_begins_with_a_date, parts)):
            return " and ".join(f"not {part}" for part in parts)
    return ""


@cache
def _denials() -> tuple[tuple[str, re.Pattern[str], re.Pattern[str]], ...]:
    return tuple(
        (language.code, _before_a_word(language.neither), _before_a_word(language.nor))
        for language in LANGUAGES
        if language.nor
    )


def _before_a_word(row: str) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w)(?:{row})\s+", re.IGNORECASE)


@cache
def _nor() -> frozenset[str]:
    return frozenset(word for language in LANGUAGES for word in language.nor.split("|") if word)


def _is_plainly_no(word: str, code: str, language: str) -> bool:
    """Whether it denies what is told before it in the language of the collection: “nei 1935, nei 1936”."""
    if code == language:
        return False
    own = [of for of in LANGUAGES if of.code == language]
    return any(word in of.words.get(kind, "").split("|") for of in own for kind in _FOR_NO)


def _tells_a_date(words: str) -> bool:
    return any(token.is_any(_DATED) for token in lex(words))


def _begins_with_a_date(words: str) -> bool:
    """Whether nothing but words of a date lead to one: no “(not) sure, 1935”."""
    for token in lex(words):
        if token.is_any(_DATED):
            return True
        if token.senses[0].kind in _LEADING_ELSEWHERE:
            return False
    return False
