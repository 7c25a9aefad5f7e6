"""Fixity events: message digests made, checked and copied, kept in the log and told in every package.

The kinds of event are the terms of the Library of Congress preservation vocabulary (from memory). A check of a whole
collection is one event; a file that was not as it was has one of its own.
"""

import hashlib
import json
from collections.abc import Iterator

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Act, Collection

MADE = "message digest calculation"
CHECKED = "fixity check"
COPIED = "replication"

COLUMNS = ("File", "SHA-256", "Event", "When", "Outcome")


def note(act: Act, subject: Subject, event: str, outcome: str, **facts: object) -> None:
    """Add one event to an act."""
    words = {"event": event, "outcome": outcome, **facts}
    act.state(subject, "fixity", json.dumps(words, ensure_ascii=False), audience="keeper")


def digest(data: bytes) -> str:
    """The SHA-256 of a manifest, by which a bag can be known again."""
    return hashlib.sha256(data).hexdigest()


def collection_of(collection: Collection) -> Subject:
    return Subject(Kind.COLLECTION, collection.id)


def events(collection: Collection) -> Iterator[dict[str, str]]:
    """Every event in the order of the log, with the columns that `COLUMNS` names and the file's scan as `scan`."""
    files: dict[str, dict[str, str]] = {}
    for kind, subject, field, words, when in collection.store.fixity():
        facts = json.loads(words)
        if field == "file":
            files[subject] = facts
            row = {"File": facts["path"], "SHA-256": facts["sha256"], "Event": MADE, "Outcome": "made at intake"}
        elif "ended" in facts:  # a run over all scans, as `tasks.scans.fixity` notes it
            wrong = facts["wrong_count"]
            outcome = f"{wrong} not as they were" if wrong else "all as they were"
            row = {"File": f"{facts['read']} scans", "SHA-256": "", "Event": CHECKED, "Outcome": outcome}
        else:
            known = files.get(subject, {})
            row = {"File": str(known.get("path", facts.get("what", ""))), "SHA-256": str(known.get("sha256", ""))}
            row |= {"Event": facts["event"], "Outcome": facts["outcome"]}
        yield {**row, "When": when, "scan": subject if kind == Kind.SCAN else ""}
