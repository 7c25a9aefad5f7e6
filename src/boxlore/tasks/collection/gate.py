"""The one gate: what is for outside is opened and read here, whole and finished, before it takes its name.

Rule kept: nothing that anyone may see is put in its place but through `Gate`. It opens every carrier of the file
(`formats.documents`, `formats.inside`), looks at values and never at our own wording (`wording`), and asks the one
matcher of names about each, of names of files and folders too. A file that cannot be opened wholly does not leave, and
whatever goes wrong here leaves nothing written: the file has no name yet.

Sure hits stop a file. What is in doubt is a question about told words in their own sentence: it is asked, and withheld,
where records are seen (`core.records.audience`); on a page, between other words, it would be a question about nothing.
"""

import io
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from typing import BinaryIO

from boxlore.core.errors import ByteFault, CouldNot
from boxlore.formats import documents
from boxlore.formats.inside import Inside
from boxlore.tasks.collection.byte_search import byte_search
from boxlore.tasks.collection.records import AudienceView
from boxlore.tasks.collection.wording import is_shipped, narrowed, without_wording

WHAT_TO_DO = (
    "Nothing was written. Change those words or keep them to the family (boxlore people audience --item ITEM family "
    "--field FIELD), or note that the person may be named: boxlore people consent."
)
MOST_WORDS = 60
NAME_OF_FILE = "name of the file"


@dataclass(frozen=True, slots=True)
class Leak:
    """One place of a finished file that names someone withheld: the file, the item (if it can be told), the field or
    carrier, the word, and the words around it."""

    file: str
    item: str
    where: str
    word: str
    around: str

    def __str__(self) -> str:
        place = ", ".join(part for part in (self.item, self.where) if part)
        return f"{self.file} ({place}): “{self.word}” in “{self.around}”"


@dataclass(frozen=True, slots=True)
class Gate:
    """The gate for one audience; whatever is not for outside passes unread."""

    seen: AudienceView

    @property
    def is_shut(self) -> bool:
        """Whether anything is looked at: for outside."""
        return self.seen.to.is_public

    def check(self, name: str, file: BinaryIO) -> None:
        """Raises CouldNot for a file that names someone withheld, and ByteFault for one that cannot be opened."""
        if leak := next(self.leaks(name, file), None):
            raise CouldNot(f"This still names someone living: {leak}.", WHAT_TO_DO)

    def check_bytes(self, name: str, data: bytes) -> None:
        """The same of a file in memory; one that cannot be opened is CouldNot too."""
        try:
            self.check(name, io.BytesIO(data))
        except ByteFault as fault:
            raise _closed(name, fault) from fault

    def check_all(self, files: Iterable[tuple[str, Path]]) -> None:
        """The same of files by the names that they will have."""
        for name, path in files if self.is_shut else ():
            with open(path, "rb") as file:
                try:
                    self.check(name, file)
                except ByteFault as fault:
                    raise _closed(name, fault) from fault

    def check_folder(self, folder: Path) -> None:
        """The same of everything in a folder, by the names that it has there."""
        self.check_all(files_in(folder))

    def leaks(self, name: str, file: BinaryIO) -> Iterator[Leak]:
        """Every place that names someone withheld. Raises ByteFault for a file that cannot be opened wholly."""
        if not self.is_shut or is_shipped(name, file):
            return
        number = re.compile(rf"\b{re.escape(self.seen.collection.settings.prefix)}-\d+")
        item = ""
        for text in (*(Inside(NAME_OF_FILE, part) for part in PurePosixPath(name).parts), *documents.texts(name, file)):
            if match := number.search(text.words):
                item = match[0]
            for word in self._named(text.words):
                yield Leak(name, item, text.where, word, _around(text.words, word))
        if (whole_names := byte_search(self.seen)) and whole_names.stands_in(file):
            yield Leak(name, item, "the bytes of the file", "a whole name", name)

    def _named(self, words: str) -> Iterator[str]:
        """The words of a text that surely name somebody withheld, and are not our own wording."""
        if not self.seen.recipient.may_read(words):
            told = without_wording(words, [self.seen.collection.settings.prefix])
            yield from self.seen.recipient.surely_named(words, told)


def files_in(folder: Path) -> Iterator[tuple[str, Path]]:
    """(name from the folder on, path) of every file below it."""
    for path in sorted(folder.rglob("*")):
        if path.is_file():
            yield path.relative_to(folder).as_posix(), path


def _around(words: str, word: str) -> str:
    """The words around a word, on one line."""
    line = narrowed(words)
    at = max(0, line.find(word) - MOST_WORDS // 2)
    return line[at : at + MOST_WORDS + len(word)]


def _closed(name: str, fault: ByteFault) -> CouldNot:
    return CouldNot(
        f"{name} cannot be opened wholly, and this is for outside: {fault}",
        "Nothing was written. Leave that item out, or make the file anew.",
    )
