"""Whole names in the bytes of a file, whatever it is: a second net behind the gate's reading of every carrier."""

import re
from dataclasses import dataclass
from functools import lru_cache
from typing import BinaryIO

from boxlore.tasks.collection.records import AudienceView

CHUNK = 1 << 22
LONGEST_NAME = 512


@dataclass(frozen=True, slots=True)
class ByteSearch:
    """Full names in any file's bytes, in any case, in UTF-8 or UTF-16; single given names would hit by chance.

    `words` are the last words of the names: cheap to look for, so that the pattern is tried only where one stands.
    """

    words: tuple[bytes, ...]
    pattern: re.Pattern[bytes]

    def stands_in(self, file: BinaryIO) -> bool:
        """Whether any of the names stands in the file."""
        file.seek(0)
        before = b""
        while data := file.read(CHUNK):
            if self._finds(before + data):
                return True
            before = data[-LONGEST_NAME:]
        return False

    def _finds(self, data: bytes) -> bool:
        low = data.lower()
        return any(
            any(word in text for word in self.words) and self.pattern.search(text)
            for text in (low, low.replace(b"\0", b""))
        )


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
    return ByteSearch(words, re.compile(b"|".join(map(re.escape, sorted(spelled)))))
