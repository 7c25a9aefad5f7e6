"""Sound of the sittings and signed papers: kept by copying, with their fixity, and laid beside the time log.

A recording lies on the sitting's time by one moment heard in it. Fixity: SHA-256 (FIPS 180-4), as for scans.
"""

import re
import wave
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.sittings import PAPER_WORDS, RECORDING_WORDS, PaperFacts, RecordingFacts, recording_in
from boxlore.core.sitting.time_log import Recording
from boxlore.core.statements import Kind, Subject
from boxlore.disk.digests import copy_proved, sha256_of
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.scans.file_state import Verified
from boxlore.tasks.sitting.course import claps, steps

SOUND = (".wav", ".mp3", ".m4a", ".aac", ".flac", ".ogg", ".opus", ".oga", ".aif", ".aiff", ".wma", ".amr", ".mp4")
PAPERS = (".pdf", ".jpg", ".jpeg", ".png", ".tif", ".tiff", ".webp")


@dataclass(frozen=True, slots=True)
class KeptFile:
    """A file taken in: where it is now, and (for sound) where it lies in the sitting, with how that is known."""

    path: str
    start: int = 0
    because: str = ""
    known: bool = False
    """Whether the very same bytes were kept already."""


def sittings(collection: Collection) -> list[tuple[str, str]]:
    """(id, name) of every sitting in the order they were held: `2026-11-25 Leida Rourke`."""
    named = []
    for ident, rows in collection.store.subjects(Kind.SITTING):
        first = {statement.field: statement.words for statement, _ in reversed(rows)}
        named.append((ident, " ".join(part for part in (first.get("date", ""), first.get("narrator", "")) if part)))
    return sorted(named)


def of_sitting(collection: Collection, sitting: str) -> list[Recording]:
    """The recordings of a sitting, in its time."""
    recordings = []
    for statement, _ in collection.store.statements(Subject(Kind.SITTING, sitting)):
        if statement.field == "recording":
            kept = recording_in(statement)
            recordings.append(Recording(kept.path, kept.start or 0, kept.length))
    return sorted(recordings, key=lambda recording: recording.start)


def keep_recording(
    collection: Collection, sitting: str, file: Path, *, clap_at: int | None = None, clap: int = 1
) -> KeptFile:
    """Take a sound file in. `clap_at` is where in it (milliseconds) the clap of that number is heard.

    Without one, it begins where “recording started” was noted, else with the sitting. Raises WrongUse.
    """
    if file.suffix.lower() not in SOUND:
        raise WrongUse(f"{file.name} is no sound file.", f"Taken in are {', '.join(SOUND)}.")
    start, because = _start(collection, sitting, clap_at, clap)
    copied = _copied(collection, sitting, file, "recordings")
    if copied.known and any(recording.path == copied.path for recording in of_sitting(collection, sitting)):
        return KeptFile(copied.path, start, because, known=True)
    act = collection.act(f"recording {file.name}")
    facts = RecordingFacts(
        path=copied.path,
        sha256=copied.sha256,
        bytes=copied.bytes,
        name=copied.name,
        start=start,
        length=_length(collection.folder / copied.path),
        because=because,
    )
    words = RECORDING_WORDS.write(facts)
    act.state(Subject(Kind.SITTING, sitting), "recording", words, sitting=sitting, moment=start)
    act.done()
    return KeptFile(copied.path, start, because)


def keep_paper(collection: Collection, sitting: str, file: Path, what: str = "") -> KeptFile:
    """Take a signed paper in: an agreement, a release, a gift form."""
    if file.suffix.lower() not in PAPERS:
        raise WrongUse(f"{file.name} is no scanned paper.", f"Taken in are {', '.join(PAPERS)}.")
    copied = _copied(collection, sitting, file, "papers")
    if not copied.known:
        act = collection.act(f"paper {file.name}")
        facts = PaperFacts(
            path=copied.path, sha256=copied.sha256, bytes=copied.bytes, name=copied.name, what=what.strip()
        )
        words = PAPER_WORDS.write(facts)
        act.state(Subject(Kind.SITTING, sitting), "paper", words, audience="keeper", sitting=sitting)
        act.done()
    return KeptFile(copied.path, known=copied.known)


def _start(collection: Collection, sitting: str, clap_at: int | None, clap: int) -> tuple[int, str]:
    if clap_at is not None:
        moments = claps(collection, sitting)
        if not 1 <= clap <= len(moments):
            have = f"{len(moments)} claps were noted" if moments else "no clap was noted"
            raise WrongUse(f"There is no clap {clap}: {have}.", "Leave the clap away, or give another number.")
        return moments[clap - 1] - clap_at, f"clap {clap}"
    begun = [at for at, what in steps(collection, sitting) if what == "recording started"]
    return (begun[0], "noted when it was started") if begun else (0, "taken as begun with the sitting")


@dataclass(frozen=True, slots=True)
class _CopiedFile:
    """A file in the collection's folder, under the `name` that it came by; `known` if the bytes were there already."""

    path: str
    sha256: str
    bytes: int
    name: str
    known: bool = False


def _copied(collection: Collection, sitting: str, file: Path, folder: str) -> _CopiedFile:
    digest = sha256_of(file)
    for kept in files(collection):
        if kept.sha256 == digest and kept.path.startswith(f"{folder}/"):
            return _CopiedFile(kept.path, digest, kept.bytes, kept.name, known=True)
    name = dict(sittings(collection)).get(sitting, "")
    if not name:
        raise WrongUse("There is no such sitting.", "boxlore recording lists them.")
    day = name[:10] if re.fullmatch(r"\d{4}-\d\d-\d\d", name[:10]) else ""
    stem = f"sitting-{day}" if day else "sitting"  # no name of a narrator: file names travel further than records
    number = 1
    while (target := collection.folder / folder / f"{stem}-{number}{file.suffix.lower()}").exists():
        number += 1
    copy_proved(file, target, digest)
    path = target.relative_to(collection.folder).as_posix()
    return _CopiedFile(path, digest, target.stat().st_size, file.name)


def _length(path: Path) -> int:
    """Milliseconds of a WAV file; 0 for the others, whose length is not needed."""
    if path.suffix != ".wav":
        return 0
    try:
        with wave.open(str(path)) as sound:
            return int(sound.getnframes() * 1000 // (sound.getframerate() or 1))
    except (wave.Error, EOFError, OSError):
        return 0


def files(collection: Collection) -> Iterator[RecordingFacts | PaperFacts]:
    """The facts of every recording and paper."""
    for _, rows in collection.store.subjects(Kind.SITTING):
        for statement, _ in rows:
            if statement.field == "recording":
                yield RECORDING_WORDS.read(statement.words)
            elif statement.field == "paper":
                yield PAPER_WORDS.read(statement.words)


def verify_kept(collection: Collection) -> Iterator[Verified]:
    """Read every recording and paper again and hold it against the SHA-256 of the day it was kept."""
    for facts in files(collection):
        try:
            state = "same" if sha256_of(collection.folder / facts.path) == facts.sha256 else "changed"
        except CouldNot:
            state = "gone"
        yield Verified(facts.path, state)
