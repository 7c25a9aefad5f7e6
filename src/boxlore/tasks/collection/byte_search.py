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

    `words` are the last words of the names: cheap to look for, so that the pattern is tried only where one stands.
    """

    words: tuple[bytes, ...]
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
        for text in (data, data.replace(b"\0", b"")):
            low = text.lower()
            if any(word in low for word in self.words):
                for match in self.pattern.finditer(low):
                    start, end = max(0, match.start() - AROUND), match.end() + AROUND
                    yield text[start:end].decode("utf-8", "replace")


def byte_search(seen: AudienceView) -> ByteSearch | None:
    """The search for everyone withheld, or None if nobody is."""
    return _search_for(seen.withheld.whole_names)


@lru_cache(4)
def _search_for(names: frozenset[str]) -> ByteSearch | None:
    """Made once for all files of an output."""
    spelled = {spelling.encode().lower() for name in names for spelling in (name, name.lower(), name.upper())}
    if not spelled:
        return None
    words = tuple(sorted({spelling.rpartition(b" ")[2] for spelling in spelled}))
    return ByteSearch(
        words, re.compile(rb"(?<![a-z])(?:" + b"|".join(map(re.escape, sorted(spelled))) + rb")(?![a-z])")
    )
