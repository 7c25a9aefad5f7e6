"""Whole names in the bytes of a file, whatever it is: a second net behind the gate's reading of every carrier."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import BinaryIO

from boxlore.tasks.collection.records_for_outputs import AudienceView

CHUNK = 1 << 22
LONGEST_NAME = 512
AROUND = 24
"""Bytes on either side of a name that are looked at with it."""


@dataclass(frozen=True, slots=True)
class ByteSearch:
    """Full names in any file's bytes, in any case, in UTF-8 or UTF-16; single given names would hit by chance.

    `spellings` stand by the last word of each: that is cheap to look for, and seldom there. Only where a spelling
    stands is the pattern tried, which is slow on bytes that are no text.
    """

    spellings: tuple[tuple[bytes, tuple[bytes, ...]], ...]
    pattern: re.Pattern[bytes]

    def around(self, file: BinaryIO) -> Iterator[str]:
        """The text around each place where any of the names stands as words of its own, each text once.

        The bytes between are letters by chance: whoever looks there decides what the words mean.
        """
        file.seek(0)
        before = b""
        texts: set[str] = set()
        while data := file.read(CHUNK):
            texts |= set(self._texts(before + data))
            before = data[-LONGEST_NAME:]
        yield from sorted(texts)

    def _texts(self, data: bytes) -> Iterator[str]:
        for text in {data, data.replace(b"\0", b"")}:
            low = text.lower()
            end = 0
            for start in sorted(self._starts(low)):
                if start >= end and (match := self.pattern.match(low, start)):
                    end = match.end()
                    yield text[max(0, start - AROUND) : end + AROUND].decode("utf-8", "replace")

    def _starts(self, low: bytes) -> set[int]:
        """Where any spelling stands, also inside other words."""
        near = [spelling for word, spellings in self.spellings if word in low for spelling in spellings]
        return {start for spelling in near for start in _places(low, spelling)}


def _places(low: bytes, spelling: bytes) -> Iterator[int]:
    at = low.find(spelling)
    while at >= 0:
        yield at
        at = low.find(spelling, at + 1)


def byte_search(seen: AudienceView) -> ByteSearch | None:
    """The search for everyone withheld, or None if nobody is."""
    return _search_for(seen.withheld.whole_names)


@lru_cache(4)
def _search_for(names: frozenset[str]) -> ByteSearch | None:
    """Made once for all files of an output."""
    spelled = {spelling.encode().lower() for name in names for spelling in (name, name.lower(), name.upper())}
    if not spelled:
        return None
    by_word: dict[bytes, list[bytes]] = {}
    for spelling in sorted(spelled):
        by_word.setdefault(spelling.rpartition(b" ")[2], []).append(spelling)
    names_alone = rb"(?<![a-z])(?:" + b"|".join(map(re.escape, sorted(spelled))) + rb")(?![a-z])"
    return ByteSearch(tuple((word, tuple(these)) for word, these in by_word.items()), re.compile(names_alone))
