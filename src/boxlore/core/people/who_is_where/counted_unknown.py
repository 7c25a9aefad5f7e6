"""How many people are told of whom nothing is known: `two I can't name`, `don't know the first two`, `unknown x 3`.

counted = ["the"] ["first"] number ["more"] unknown {small word} / unknown ["the"] ["first"] number / unknown "x" number
"""

from collections.abc import Sequence

from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.item_words import how_many
from boxlore.core.people.who_is_where.position_words_table import COUNTED_FROM_THE_END
from boxlore.core.people.who_is_where.tokens import Element


def how_many_unknown(words: Sequence[Element]) -> int:
    """The number of `two I can't name`, of `three unknown girls` and of `don't know the first two`; 0 for any other
    words."""
    turned = words[0].kind == "unknown" and len(words) > 1 and words[-1].plain in small_words.CARDINALS
    if turned and all(_tells_which(word) for word in words[1:-1]):
        return small_words.CARDINALS[words[-1].plain]
    times = words[2].value if len(words) == _TIMES and words[1].plain == "x" else 0
    if words[0].kind == "unknown" and 0 < times <= MOST_UNKNOWN:
        return times  # `unknown x 3`
    bare = without_more(words)
    if len(bare) < 2 or bare[1].kind != "unknown" or any(word.is_large for word in bare[2:]):
        return 0
    number = how_many(bare) if bare[0].kind == "number" or bare[0].plain in small_words.CARDINALS else 0
    return number if 0 < number <= MOST_UNKNOWN else 0


_TIMES = 3


def _tells_which(word: Element) -> bool:
    """`the first` of `the first two`."""
    return word.plain in small_words.ARTICLES or word.kind == "ordinal" or word.phrase in _AT_THE_END


_AT_THE_END = frozenset(phrase for kind, phrase in COUNTED_FROM_THE_END if kind in ("from_end", "1"))


def without_more(words: Sequence[Element]) -> Sequence[Element]:
    """Without the words that lead, without `the first` before a number, and without `more` of `two more unknown`."""
    bare = words[next((at for at, word in enumerate(words) if word.plain not in small_words.LEADS), 0) :]
    which = next((at for at, word in enumerate(bare) if not _tells_which(word)), 0)
    bare = bare[which:] if bare[which].plain in small_words.CARDINALS else bare
    return [bare[0], *bare[2:]] if len(bare) > 2 and bare[1].plain in small_words.MORE else bare


MOST_UNKNOWN = 40
"""So many people whom nobody knows are places in a row; more is a year, or a crowd."""
