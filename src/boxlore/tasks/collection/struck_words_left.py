"""Files of the collection's folder that held struck words when these were struck: the note of them.

A strike names the files that carry its words on, and then nobody knows the words any more. So the files are noted with
their SHA-256 and no word (`meta` of the database), until they are clean (`tasks.outputs.struck_words_found`). A name
may hold the words too, and the note stands in every backup: so of the path there is the SHA-256 alone.
"""

import hashlib
import json
from collections.abc import Iterable
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.disk.digests import sha256_of
from boxlore.tasks.collection.opening import Collection

_META = "struck_words_in"
"""The name in `meta`: a JSON object of SHA-256 of the path (relative to the folder, POSIX) -> SHA-256 of the file."""


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
    """The SHA-256 that each noted file had which is there yet, by its path relative to the collection's folder."""
    noted = _kept(collection)
    there = collection.folder.rglob("*") if noted else ()
    paths = (path.relative_to(collection.folder).as_posix() for path in there if path.is_file())
    return {path: noted[key] for path in paths if (key := _key(path)) in noted}


def _kept(collection: Collection) -> dict[str, str]:
    words = collection.store.meta(_META)
    return dict(json.loads(words)) if words else {}


def _key(path: str) -> str:
    return hashlib.sha256(path.encode("utf-8", "surrogateescape")).hexdigest()


def keep_noted(collection: Collection, noted: dict[str, str]) -> None:
    """Keep these files noted, and no others. Raises CouldNot."""
    kept = {_key(path): digest for path, digest in noted.items()}
    if kept != _kept(collection):
        collection.store.set_meta(_META, json.dumps(kept) if kept else "")


def digest_of(path: Path) -> str:
    """The SHA-256 of a file; '' where it is gone or cannot be read."""
    try:
        return sha256_of(path)
    except CouldNot:
        return ""
