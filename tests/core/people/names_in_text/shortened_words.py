"""How a table writes many words: each without what it has in common with the one before."""

from collections.abc import Iterable
from itertools import takewhile


def shortened(words: Iterable[str]) -> list[str]:
    """Words in the order of their letters, each without what it has in common with the one before: `2se` behind `kask`
    is `kase`. No more than nine letters are left out."""
    rows: list[str] = []
    before = ""
    for word in sorted(words):
        same = min(9, sum(1 for _ in takewhile(lambda pair: pair[0] == pair[1], zip(before, word, strict=False))))
        rows.append(f"{same}{word[same:]}")
        before = word
    return rows
