"""What holds struck words still, or may: files that were noted when the words were struck, until they are clean.

One that has the bytes of then holds the words. A copy that is none of ours alone, as another program put something
into it, may hold them whatever has become of it since: the next run of copies does not carry that on. Any other file
that was changed or is gone is forgotten.
"""

from pathlib import Path

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.struck_words_left import digest_of, files_noted, keep_noted
from boxlore.tasks.outputs.copies_contents import FILE_NAME as CONTENTS
from boxlore.tasks.outputs.copies_contents import CopyLine, read_contents

SOURCE = "our own rule: what was struck leaves nowhere"


def struck_findings(collection: Collection) -> list[Finding]:
    """A finding for each file that holds struck words still, or may. What is clean by now is forgotten."""
    noted = files_noted(collection)
    now = {path: digest_of(collection.folder / path) for path in noted}
    left = {path: digest for path, digest in noted.items() if _may_hold(collection.folder / path, digest, now[path])}
    if collection.store.writable:
        keep_noted(collection, left)
    return [_finding(path, now[path] == digest) for path, digest in left.items()]


def _finding(path: str, is_same: bool) -> Finding:
    holds = "holds words that were struck" if is_same else "held words that were struck, and may hold them still"
    what_to_do = "Delete it, or make it again; a copy with copies --over."
    return make_finding("strike.left", Severity.ERROR, f"{path} {holds}. {what_to_do}", SOURCE)


def _may_hold(path: Path, noted: str, digest: str) -> bool:
    if not digest or digest == noted:
        return bool(digest)
    line = _line_of(path)
    return line is not None and (bool(line.additions) or line.sha256_of_copy != digest)


def _line_of(path: Path) -> CopyLine | None:
    """The line of a copy on the contents page of its folder or of one above; None of what is no copy."""
    folder = next((folder for folder in path.parents if (folder / CONTENTS).is_file()), None)
    lines = read_contents(folder) if folder else []
    return next((line for line in lines if folder and folder / line.copy == path), None)
