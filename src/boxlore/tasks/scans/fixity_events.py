"""Fixity events: message digests that were made, checked or copied. They are kept in the log, and listed in packages.

The kinds of event are terms of the Library of Congress preservation vocabulary (from memory). A check of all scans is
one event; a file that was not as it was has one of its own.
"""

import hashlib
from collections.abc import Iterator

from boxlore.core.fields.fixity import FIXITY_WORDS, FixityEvent, FixityRun
from boxlore.core.fields.pictures import FileFacts
from boxlore.core.fields.sittings import PaperFacts, RecordingFacts
from boxlore.core.findings import several
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Act, Collection

MADE = "message digest calculation"
CHECKED = "fixity check"
COPIED = "replication"

COLUMNS = ("File", "SHA-256", "Event", "When", "Outcome")


def note(act: Act, subject: Subject, event: FixityEvent) -> None:
    """Add one event to an act. Its term is one of MADE, CHECKED, COPIED."""
    act.state(subject, "fixity", FIXITY_WORDS.write(event), audience="keeper")


def digest(data: bytes) -> str:
    """The SHA-256 of a manifest in hexadecimal, by which a bag can be recognized."""
    return hashlib.sha256(data).hexdigest()


def collection_of(collection: Collection) -> Subject:
    """The collection itself as a subject of statements."""
    return Subject(Kind.COLLECTION, collection.id)


def events(collection: Collection, *, by_manifest: bool = False) -> Iterator[dict[str, str]]:
    """Every event in the order of the log, by the names in COLUMNS; `scan` is the scan's id, '' for other events, and
    `sound` says whether it is of a recording or paper. Of a bag that was packed, `by_manifest` gives its manifest with
    the digest, for whoever has to know which bag it was."""
    files: dict[str, FileFacts] = {}
    for kind, subject, facts, when in collection.store.fixity():
        if isinstance(facts, RecordingFacts | PaperFacts):
            row = {"File": facts.path, "SHA-256": facts.sha256, "Event": MADE, "Outcome": "made when it was kept"}
        elif isinstance(facts, FileFacts):
            files[subject] = facts
            row = {"File": facts.path, "SHA-256": facts.sha256, "Event": MADE, "Outcome": "made at intake"}
        elif isinstance(facts, FixityRun):
            outcome = f"{facts.wrong_count} not as they were" if facts.wrong_count else "all as they were"
            row = {"File": several(facts.read, "scan"), "SHA-256": "", "Event": CHECKED, "Outcome": outcome}
        else:
            file = files.get(subject)
            row = {"File": file.path if file else facts.what, "SHA-256": file.sha256 if file else ""}
            if facts.manifest and by_manifest:
                row = {"File": f"{facts.what}/manifest-sha512.txt", "SHA-256": facts.manifest}
            row |= {"Event": facts.event, "Outcome": facts.outcome}
        sound = "yes" if kind == Kind.SITTING else ""
        yield {**row, "When": when, "scan": subject if kind == Kind.SCAN else "", "sound": sound}
