"""Whole names in the bytes of a file, whatever it is: a second net behind the gate's reading of every carrier."""

import re
from collections.abc import Iterator, Mapping
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

    A file is gone through once for many names: each spelling is known by its longest run of Latin letters,
    which stands in a text between bytes that are no Latin letters, as it does in the name. So the runs of the text are
    looked up, and only where one is known is the spelling held against what stands around it. Spellings with no such
    run, in other scripts, are sought one by one; so are all where they are few, which is quicker then.
    """

    by_run: Mapping[bytes, tuple[tuple[bytes, int], ...]]
    """The spellings that are known by a run, each with how far from its beginning the run stands."""
    runs: re.Pattern[bytes]
    """A run of Latin letters as long as the shortest of those, or longer."""
    one_by_one: tuple[bytes, ...]

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
            end = 0
            for start, stop in sorted(self._places(text.lower())):
                if start >= end:
                    end = stop
                    yield text[max(0, start - AROUND) : end + AROUND].decode("utf-8", "replace")

    def _places(self, low: bytes) -> Iterator[tuple[int, int]]:
        """(start, end) of each place where a spelling stands between bytes that are no Latin letters."""
        for match in self.runs.finditer(low) if self.by_run else ():
            for spelling, before in self.by_run.get(match[0], ()):
                start = match.start() - before
                if start >= 0 and low.startswith(spelling, start) and _is_apart(low, start, start + len(spelling)):
                    yield start, start + len(spelling)
        for spelling in self.one_by_one:
            at = low.find(spelling)
            while at >= 0:
                if _is_apart(low, at, at + len(spelling)):
                    yield at, at + len(spelling)
                at = low.find(spelling, at + 1)


_RUN = re.compile(rb"[a-z]+")
MOST_ONE_BY_ONE = 20
"""So many spellings are found in 20 MB as fast as all runs are (0.35 s)."""
SHORTEST_RUN = 3
"""Letters of a run that a spelling is known by: shorter ones stand by chance in bytes that are no text."""


def _is_apart(low: bytes, start: int, end: int) -> bool:
    """Whether no Latin letter stands right before or behind."""
    return not (_RUN.match(low, start - 1, start) if start else None) and not _RUN.match(low, end, end + 1)


def byte_search(seen: AudienceView) -> ByteSearch | None:
    """The search for everyone withheld, or None if nobody is."""
    return _search_for(seen.withheld.whole_names)


@lru_cache(4)
def _search_for(names: frozenset[str]) -> ByteSearch | None:
    """Made once for all files of an output."""
    spelled = {spelling.encode().lower() for name in names for spelling in (name, name.lower(), name.upper())}
    if not spelled:
        return None
    by_run: dict[bytes, list[tuple[bytes, int]]] = {}
    one_by_one: list[bytes] = []
    for spelling in sorted(spelled):
        run = max(_RUN.finditer(spelling), key=lambda match: len(match[0]), default=None)
        if run is None or len(run[0]) < SHORTEST_RUN or len(spelled) <= MOST_ONE_BY_ONE:
            one_by_one.append(spelling)
        else:
            by_run.setdefault(run[0], []).append((spelling, run.start()))
    runs = re.compile(rb"[a-z]{%d,}" % min(map(len, by_run), default=SHORTEST_RUN))
    return ByteSearch({run: tuple(these) for run, these in by_run.items()}, runs, tuple(one_by_one))
