"""What the file of a scan says of the picture is told of the item at intake, with the file as who says it.

Its title, caption, keywords, names, place and date (`core.crosswalk.file_statements`), and its own name: often the only
caption that there is. A date or somebody the family knows that stands in the name is told as a guess. All of it holds
until somebody says more, and nobody is made of a name in a file: who it is, is asked.
"""

from collections.abc import Iterable, Iterator
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.crosswalk.file_statements import FileStatement, regions_of, statements_of
from boxlore.core.errors import WrongUse
from boxlore.core.fields.areas import AREA_WORDS, Area
from boxlore.core.fields.file_names import date_spans, parts_of_name, words_in_name
from boxlore.core.fields.language import why_no_language
from boxlore.core.fields.letters import is_question, says_nothing
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Source, Subject, Sure
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.scans.given_files import in_utf_8, readable
from boxlore.tasks.scans.pairing import Planned, ScanSide, split_suffix
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import NOTHING_AROUND

NAME = Source(Said.FILE, "file name")
"""Who says what stands in the name of a file."""
PLACES_OF_A_MACHINE = frozenset(
    {"downloads", "desktop", "documents", "pictures", "tmp", "temp", "home", "users", "dcim"}
)
"""Folders whose names say nothing of the pictures in them. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class WhatFilesSay:
    """Tells what the files of one item say, into the act of an intake."""

    collection: Collection
    teller: Teller
    act: Act

    def tell(
        self, item: Subject, planned: Planned, new_scans: Iterable[tuple[ScanSide, str, str]], *, is_new: bool
    ) -> None:
        """The words of each new scan (side, what its file says, and its id where it has no markers yet), then the names
        of all files of the plan. Whom a file says to be seen somewhere on it gets a marker there.

        A part of a sheet says only how the sheet is called: its caption is of all that lies on it.
        """
        said = dict.fromkeys(planned.fields, True)
        for side, embedded, scan in new_scans:
            if side.area or not embedded:
                continue
            marked = self._mark(scan, regions_of(EMBEDDED_WORDS.read(embedded))) if scan else ()
            for statement in statements_of(EMBEDDED_WORDS.read(embedded)):
                said[statement.field] = True
                if statement.field != "person" or statement.words not in marked:
                    self._add(item, statement, Source(Said.FILE), Sure.SURE, is_new=is_new)
        for side in planned.sides:
            sure = Sure.SURE if in_utf_8(str(side.path)) else Sure.GUESS
            self._add(item, FileStatement("file_name", original_name(side.path)), Source(Said.FILE), sure,
                      is_new=is_new)  # fmt: skip
            for guess in [] if side.area else self._guesses(side.path):
                if guess.field not in said:
                    self._add(item, guess, NAME, Sure.GUESS, is_new=is_new)

    def _mark(self, scan: str, regions: Iterable[tuple[str, Area]]) -> set[str]:
        """Set a marker for each of these people on a scan (its id); returns their names."""
        marked = set()
        for name, area in regions:
            marker = self.act.new(Kind.MARKER)
            self.act.state(marker, "scan", scan)
            self.act.state(marker, "area", AREA_WORDS.write(area))
            self._add(marker, FileStatement("person", name), Source(Said.FILE), Sure.SURE, is_new=True)
            marked.add(name)
        return marked

    def _add(self, item: Subject, told: FileStatement, source: Source, sure: Sure, *, is_new: bool) -> None:
        words = "".join(letter if letter.isprintable() else " " for letter in readable(told.words)).strip()
        if not words or is_question(words) or says_nothing(words):
            return
        past = [] if is_new else self.collection.store.history(item.id, told.field)
        if any(earlier.statement.words == words for earlier in past):
            return
        if any((row.field, row.words) == (told.field, words) for row in self.act.index.of(item)):
            return
        language = told.language if told.language and not why_no_language(told.language) else ""
        how = Telling(source=source, sure=sure, language=language)
        with suppress(WrongUse):  # what a file says and nobody could have typed stays with its scan
            statement = self.teller.add_words(self.act, item, told.field, words, how)
            if told.field != "person":
                self.teller.read_into(self.act, statement)
            elif understood := self.teller.understanding.read("person", words):
                self.act.readings.append((statement.id, understood.reading))

    def _guesses(self, path: Path) -> Iterator[FileStatement]:
        """The date and the people of the family that the name of a file names, or that of its folder."""
        names = [*original_name(path.with_name(split_suffix(path.stem)[0])).split("/")][::-1]
        names = [name for name in names if words_in_name(name) and not looks_like_number(name)]
        spans = (span for name in names for span in date_spans(words_in_name(name)))
        if span := next(filter(self._is_a_date, spans), ""):
            yield FileStatement("date", span)
        for part in (part for name in names if self.collection.people() for part in parts_of_name(name)):
            understood = self.teller.understanding.read("person", part)
            if understood is not None and not understood.asks:
                yield FileStatement("person", part)

    def _is_a_date(self, words: str) -> bool:
        read, _ = self.teller.understanding.date(words, NOTHING_AROUND)
        return read.edtf is not None and not read.ask


def original_name(path: Path) -> str:
    """How a file was called, behind its folder where the folder's name says something: `Haapsalu 1932/IMG_0042.jpg`."""
    folder = path.absolute().parent
    words = words_in_name(folder.name)
    is_plain = folder == Path.home() or folder.name.casefold() in PLACES_OF_A_MACHINE or not words
    return path.name if is_plain else f"{folder.name}/{path.name}"
