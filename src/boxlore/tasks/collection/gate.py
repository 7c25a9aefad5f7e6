"""The one gate: what is for outside is opened and read here, whole and finished, before it takes its name.

Rule kept: nothing that anyone may see is put in its place but through `Gate`. It opens every carrier of the file
(`formats.document_texts`, `formats.picture_texts`), looks at values and never at our own wording (`own_wording`), and
asks the one matcher of names about each, of names of files and folders too. A file that cannot be opened wholly does
not leave, and whatever goes wrong here leaves nothing written: the file has no name yet.

Sure hits stop a file. What is in doubt is a question about told words in their own sentence: it is asked, and withheld,
where records are seen (`core.records.audience`); on a page, between other words, it would be a question about nothing.
Each stop is listed for the keeper to answer (`names_left`): what may be named, or is somebody else, stops no more.
"""

import io
import re
from collections.abc import Iterable, Iterator
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path, PurePosixPath
from typing import BinaryIO

from boxlore.core.errors import ByteFault, CouldNot
from boxlore.core.fields.name_answers import OF_SETTING, NamingAnswer
from boxlore.core.findings import Finding, Severity, several
from boxlore.core.people.names_in_text.text_normalising import read_text
from boxlore.core.records.name_answers import FINISHED, Decided, decision_digest, digest_of
from boxlore.formats import document_texts
from boxlore.formats.picture_texts import Inside
from boxlore.tasks.collection.byte_search import byte_search
from boxlore.tasks.collection.names_left import LeftName, answers_given, list_names
from boxlore.tasks.collection.own_wording import (
    BLANK,
    is_shipped,
    narrowed,
    numbers_alike,
    without_codes,
    without_wording,
)
from boxlore.tasks.collection.records_for_outputs import AudienceView

WHAT_TO_DO = (
    "Nothing was written. Change those words or keep them to the family (boxlore people audience --item ITEM family "
    "--field FIELD), or note that the person may be named: boxlore people consent. Where a word was taken for part of "
    "a name and is none, put right how the name is taken apart: boxlore people names."
)
MOST_WORDS = 60
MOST_PLACES = 20
"""Places that are said where no table of them can be written."""
MOST_REMEMBERED = 1 << 15
"""Texts that are remembered as naming nobody."""
NAME_OF_FILE = "name of the file"
SETTINGS = ("title", "holder", "family", "history", "custody")
"""Settings of the collection that outputs say, each judged by itself before anything is made."""
_SAID_OF = {"holder": "holder", "family": "family", "history": "family's history", "custody": "way it came down"}
THE_COLLECTION = "the collection"


@dataclass(frozen=True, slots=True)
class Leak:
    """One place of a finished file that names someone withheld: the file, the item (if it can be told), the field or
    carrier, the word, and the words around it; whom it names (ids), and by what the keeper's answer knows it again."""

    file: str
    item: str
    where: str
    word: str
    around: str
    people: frozenset[str]
    digest: str

    @property
    def marked(self) -> str:
        """The words around, with the word in brackets."""
        return self.around.replace(self.word, f"[{self.word}]", 1)

    def __str__(self) -> str:
        place = ", ".join(part for part in (self.item, self.where) if part)
        return f"{self.file} ({place}): “{self.word}” in “{self.around}”"


@dataclass(slots=True)
class Gate:
    """The gate for one audience; whatever is not for outside passes unread. `public` are names that anyone may know
    whatever stands in them, such as that of the archive to which a transfer goes: nobody in a family told them."""

    seen: AudienceView
    public: tuple[str, ...] = ()
    _answers: Decided | None = None
    """What the keeper has answered about finished files; read at the first name that is found."""
    _settings: tuple[re.Pattern[str], ...] | None = None
    """The settings that may go out whole; judged at the first words that are looked at."""
    _passed: set[str] = field(default_factory=set)
    """Texts that surely name nobody, numbers in them all alike: the formats of a transfer say the same of each item."""

    @property
    def is_shut(self) -> bool:
        """Whether anything is looked at: for outside."""
        return self.seen.to.is_public

    def check(self, name: str, file: BinaryIO) -> None:
        """Raises CouldNot for a file that names someone withheld, and ByteFault for one that cannot be opened."""
        self._stop(list(self.leaks(name, file)))

    def check_bytes(self, name: str, data: bytes) -> None:
        """The same of a file in memory; one that cannot be opened is CouldNot too."""
        try:
            self.check(name, io.BytesIO(data))
        except ByteFault as fault:
            raise _closed(name, fault) from fault

    def check_all(self, files: Iterable[tuple[str, Path]]) -> None:
        """The same of files by the names that they will have; what all of them name is told together."""
        leaks: list[Leak] = []
        for name, path in files if self.is_shut else ():
            with open(path, "rb") as file:
                try:
                    leaks += self.leaks(name, file)
                except ByteFault as fault:
                    raise _closed(name, fault) from fault
        self._stop(leaks)

    def check_folder(self, folder: Path) -> None:
        """The same of everything in a folder, by the names that it has there."""
        self.check_all(files_in(folder))

    def leaks(self, name: str, file: BinaryIO) -> Iterator[Leak]:
        """Every place that names someone withheld. Raises ByteFault for a file that cannot be opened wholly."""
        if not self.is_shut or is_shipped(name, file):
            return
        number = re.compile(rf"\b{re.escape(self.seen.collection.settings.prefix)}[A-Z]?-\d+")
        item = ""
        for text in (
            *(Inside(NAME_OF_FILE, part) for part in PurePosixPath(name).parts),
            *document_texts.texts(name, file),
        ):
            if match := number.search(text.words):
                item = match[0]
            yield from self._named(name, item, text)
        if whole_names := byte_search(self.seen):
            for around in whole_names.around(file):
                yield from self._named(name, item, Inside("the bytes of the file", around))

    def names_somebody(self, name: str, path: Path) -> bool:
        """Whether a file that is there already names someone withheld; one that cannot be read does not."""
        with suppress(ByteFault, OSError), open(path, "rb") as file:
            return any(True for _ in self.leaks(name, file))
        return False

    def _named(self, name: str, item: str, text: Inside) -> Iterator[Leak]:
        """Where a text surely names somebody withheld, is not our own wording, and was not answered."""
        words = text.words
        if words in self._passed:  # as most are that have no number
            return
        alike = numbers_alike(without_codes(words))
        if alike in self._passed:
            return
        recipient = self.seen.recipient
        if not recipient.surely_names(alike):
            if len(self._passed) >= MOST_REMEMBERED:
                self._passed.clear()
            self._passed.add(alike)
            return
        hits = recipient.surely_named(words, self._without_ours(words))
        tokens = read_text(words).words if hits else ()
        for hit in self._given().left(hits, words, "", "") if hits else ():
            word = words[hit.start : hit.end]
            yield Leak(name, item, text.where, word, _around(words, word), hit.people, digest_of(hit, tokens))

    def _without_ours(self, words: str) -> str:
        """The words without our own wording and without settings that may go out whole, which were judged alone."""
        if self._settings is None:
            self._settings = (*_open_settings(self.seen), *filter(None, map(_finds, self.public)))
        for setting in self._settings:
            words = setting.sub(lambda match: BLANK * len(match[0]), words)
        return without_wording(words, [self.seen.collection.settings.prefix])

    def _given(self) -> Decided:
        if self._answers is None:
            self._answers = self.seen.recipient.still_allowed(answers_given(self.seen.collection))
        return self._answers

    def _stop(self, leaks: list[Leak]) -> None:
        """Raises CouldNot for the first, and lists all of them for the keeper to answer."""
        if not leaks:
            return
        left = [
            LeftName(person, leak.digest, leak.file, leak.item, leak.where, leak.marked)
            for leak in leaks
            for person in sorted(leak.people)
        ]
        listed = list_names(self.seen.collection, left)
        more = f", and {several(len(leaks) - 1, 'place')} more" if len(leaks) > 1 else ""
        if not listed:  # then this sentence is the only list
            said = leaks[1 : 1 + MOST_PLACES]
            rest = f", and {len(leaks) - 1 - len(said)} more" if len(leaks) - 1 > len(said) else ""
            more = "".join(f"; {leak}" for leak in said) + rest
        answer = f" Or answer in {listed} (not that person, or may be named) and do this again." if listed else ""
        hide = next((leak for leak in leaks if self._is_hidden(leak)), None)
        refused = _cannot_hide(hide) if hide else ""
        raise CouldNot(f"This still names someone living: {leaks[0]}{more}.", WHAT_TO_DO + refused + answer)

    def _is_hidden(self, leak: Leak) -> bool:
        """Whether the keeper answered “hide” of this place."""
        answers = self._given().answers
        return any(answers.get(("", FINISHED, one, leak.digest)) is NamingAnswer.HIDE for one in leak.people)


def ask_of_settings(seen: AudienceView) -> list[Finding]:
    """Ask about a setting that names somebody withheld: a row for the keeper to answer. It is left away, but for the
    title, and the finding says so. Raises CouldNot, once for the whole output, where the title names somebody."""
    findings: list[Finding] = []
    for name in SETTINGS:
        if not (hits := seen.named_in_setting(name)):
            continue
        words = getattr(seen.collection.settings, name)
        around = _around(words, words[hits[0].start : hits[0].end])
        left = [
            LeftName(
                person, decision_digest(hit, words), "boxlore.toml", THE_COLLECTION, f"setting {name}",
                f"{words[: hit.start]}[{words[hit.start : hit.end]}]{words[hit.end :]}", OF_SETTING + name,
            )
            for hit in hits
            for person in sorted(hit.people)
        ]  # fmt: skip
        listed = list_names(seen.collection, left)
        answer = f", or answer in {listed} (not that person, or may be named) and do this again" if listed else ""
        way = f"Change the setting {name} in boxlore.toml{answer}."
        if name == "title":
            raise CouldNot(f"The collection's title names someone living (“{around}”), and this is for outside.", way)
        message = f"The {_SAID_OF[name]} names someone living (“{around}”), and is left away. {way}"
        findings.append(Finding(rule="gate.setting", severity=Severity.NOTE, message=message, source="derived"))
    return findings


def _open_settings(seen: AudienceView) -> Iterator[re.Pattern[str]]:
    """What finds, in finished words, each setting that names nobody who is withheld."""
    for name in SETTINGS:
        if (pattern := _finds(getattr(seen.collection.settings, name))) and not seen.named_in_setting(name):
            yield pattern


def _finds(words: str) -> re.Pattern[str] | None:
    """What finds words in a finished text, however its lines are broken; None for none."""
    own = words.split()
    return re.compile(r"(?<!\w)" + r"\s+".join(map(re.escape, own)) + r"(?!\w)") if own else None


def files_in(folder: Path) -> Iterator[tuple[str, Path]]:
    """(name from the folder on, path) of every file below it."""
    for path in sorted(folder.rglob("*")):
        if path.is_file():
            yield path.relative_to(folder).as_posix(), path


def _cannot_hide(leak: Leak) -> str:
    """What can be done where “hide” was answered of something finished, from which no word is taken out alone."""
    done = (
        f"keep the item back: boxlore people audience --item {leak.item} family" if leak.item else "change them there"
    )
    return f" You answered “hide” of “{leak.word}” in {leak.file}: the words stand there as they were told, so {done}."


def _around(words: str, word: str) -> str:
    """The words around a word, on one line; no word of them is cut."""
    line = narrowed(words)
    found = line.find(word)
    start = max(0, found - MOST_WORDS // 2)
    end = min(len(line), max(found, 0) + len(word) + MOST_WORDS // 2)
    before, after = line[start:found], line[found + len(word) : end]
    before = f"…{before.partition(' ')[2]}" if start else before
    after = f"{after.rpartition(' ')[0]}…" if end < len(line) else after
    return f"{before}{word}{after}" if found >= 0 else line[:MOST_WORDS]


def _closed(name: str, fault: ByteFault) -> CouldNot:
    return CouldNot(
        f"{name} cannot be opened wholly, and this is for outside: {fault}",
        "Nothing was written. Leave that item out, or make the file anew.",
    )
