"""Scans that an earlier program took in: what their files say is read again, once, before anything leaves the family.

What a file says is read at intake and kept as a statement about the scan. A later reader may know more slots: whom a
region of a face or `PersonInImage` names is shown, and a picture of somebody of whom nothing is known is held. So the
collection notes by which reader its files were read; where that was an earlier one, outputs for outside read them all
again first, and what is new is kept in the log. A file that is not there now, or not as it was, is tried the next time.
Where nothing can be written, what was read holds for this run.
"""

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.pictures import EMBEDDED_WORDS, FileFacts
from boxlore.core.findings import several
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.collection.embedded_metadata import embedded_in
from boxlore.tasks.collection.opening import READ_BY, READER, Collection


def read_files_again(collection: Collection) -> None:
    """Read again what an earlier reader has read. What files say now is kept, or holds for this run alone."""
    reader, *left = collection.store.meta(READ_BY).split() or [""]
    if collection.files_say is not None or (reader == READER and not left):
        return
    before = {scan: words for scan, _, words in collection.store.words_of(["embedded"])}
    now: dict[str, str] = {}
    unread: list[str] = []
    for scan, facts in collection.store.scans():
        if reader == READER and scan not in left:
            continue
        words = _read(collection, facts)
        if words is None:
            unread.append(scan)
        elif words and words != before.get(scan, "") and not EMBEDDED_WORDS.read(before.get(scan, "")).are_struck:
            now[scan] = words
    if not collection.store.writable:
        collection.files_say = now
        return
    _keep(collection, now)
    collection.store.set_meta(READ_BY, " ".join((READER, *unread)))


def _read(collection: Collection, facts: FileFacts) -> str | None:
    """What the file says; None where it cannot be read, or is plainly not the one that was taken in."""
    path = collection.folder / facts.path
    try:
        return embedded_in(path) if path.stat().st_size == facts.bytes else None
    except (OSError, BoxloreError):
        return None


def _keep(collection: Collection, now: dict[str, str]) -> None:
    act = collection.act("what the files of scans say, read again")
    for ident, words in now.items():
        scan = Subject(Kind.SCAN, ident)
        earlier = [told.id for told, _ in collection.store.statements(scan) if told.field == "embedded"]
        act.state(scan, "embedded", words, source=Source(Said.FILE), replaces="".join(earlier[-1:]))
    act.done()
    if now:
        collection.unsaid.append(
            f"What the files of {several(len(now), 'scan')} say was read again: this Boxlore reads more of it than the "
            "one that took them in. Whom a file names as shown is asked about by the next transfer; until you have "
            "answered, that picture stays in the family."
        )
