"""Files of the collection's folder that held struck words when these were struck: the note of them.

A strike names the files that carry its words on, and then nobody knows the words any more. So the files are noted with
their SHA-256 and no word (`meta` of the database), until they are clean (`tasks.outputs.struck_words_found`).
"""

import json
from collections.abc import Iterable
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.disk.digests import sha256_of
from boxlore.tasks.collection.opening import Collection

_META = "struck_words_in"
"""The name in `meta`: a JSON object of path (relative to the folder) -> SHA-256."""


def note_files(collection: Collection, paths: Iterable[str]) -> None:
    """Note files (relative to the collection's folder) that hold words which were struck just now."""
    noted = files_noted(collection)
    for path in paths:
        if digest := digest_of(collection.folder / path):
            noted[path] = digest
    keep_noted(collection, noted)


def may_hold_struck(collection: Collection) -> frozenset[Path]:
    """The noted files, links resolved."""
    return frozenset((collection.folder / path).resolve() for path in files_noted(collection))


def files_noted(collection: Collection) -> dict[str, str]:
    """The SHA-256 that each noted file had, by its path relative to the collection's folder."""
    words = collection.store.meta(_META)
    return dict(json.loads(words)) if words else {}


def keep_noted(collection: Collection, noted: dict[str, str]) -> None:
    """Keep these files noted, and no others. Raises CouldNot."""
    if noted != files_noted(collection):
        collection.store.set_meta(_META, json.dumps(noted) if noted else "")


def digest_of(path: Path) -> str:
    """The SHA-256 of a file; '' where it is gone or cannot be read."""
    try:
        return sha256_of(path)
    except CouldNot:
        return ""
