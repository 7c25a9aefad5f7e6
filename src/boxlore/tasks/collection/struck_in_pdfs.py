"""Struck words in files that hold theirs compressed, where a search of bytes sees none: PDFs are read."""

from collections.abc import Iterable
from contextlib import suppress

from boxlore.core.errors import ByteFault
from boxlore.formats import document_texts
from boxlore.store.strike_words import holds, tokens
from boxlore.tasks.collection.opening import Collection

COMPRESSED = (".pdf", ".zip", ".gz", ".xz", ".7z", ".docx", ".xlsx", ".odt", ".ods", ".epub")


def not_searched(collection: Collection) -> list[str]:
    """Files of the folder that hold their words compressed, where a search of bytes does not see them."""
    paths = sorted(path for path in collection.folder.rglob("*") if path.suffix.lower() in COMPRESSED)
    return [path.relative_to(collection.folder).as_posix() for path in paths if path.is_file()]


WORDS_KNOWN = 6
"""By so many words from its beginning a statement is known again on a page, where lines and pages part it."""


def pdfs_read(collection: Collection, struck: Iterable[str]) -> dict[str, bool]:
    """The PDFs of the folder that can be read to their end, and whether any of the struck words stand in them."""
    asked = [words[:WORDS_KNOWN] for words in map(tokens, struck) if words]
    read: dict[str, bool] = {}
    for name in (name for name in not_searched(collection) if name.lower().endswith(".pdf")):
        with open(collection.folder / name, "rb") as file, suppress(ByteFault):
            told = [token for text in document_texts.texts(name, file) for token in tokens(text.words)]
            read[name] = any(holds(told, words) for words in asked)
    return read
