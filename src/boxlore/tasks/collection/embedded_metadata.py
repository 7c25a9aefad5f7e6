"""What a scan's file already says: titles, captions, dates and names that another program or person wrote into it.

Whoever reads more of a file here counts `opening.READER` up, so that the files of earlier scans are read again.
"""

from pathlib import Path
from typing import BinaryIO

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.pictures import EMBEDDED_WORDS, Embedded
from boxlore.disk.regular_file import open_regular
from boxlore.formats import picture_files, said

_TOLD_IN_FILES = (
    ("title", ("dc:title",), (2, 5), ""),
    ("caption", ("dc:description",), (2, 120), "ImageDescription"),
    ("date", ("photoshop:DateCreated", "dcterms:created"), (2, 55), ""),
    ("people", (), (0, 0), ""),
    ("keywords", ("dc:subject",), (2, 25), ""),
    ("by", ("dc:creator",), (2, 80), "Artist"),
    ("rights", ("dc:rights",), (2, 116), "Copyright"),
    ("scanned", (), (0, 0), "DateTimeOriginal"),
)
"""What is read out of a file: our name for it, its XMP properties, its IIM dataset, its Exif name."""

MOST_FURTHER, MOST_FURTHER_TEXTS = 2_000, 200
"""Letters of one further text, and further texts, that are kept of one file."""


def embedded_in(path: Path) -> str:
    """What a file already says, as lines `name: words` by the names of _TOLD_IN_FILES, and as `also` all else that
    stands in any slot, as `profile` what the colour profile says; '' if it says nothing.

    These are facts about the scan: a rule may make a question of one, but none is a statement about the picture.
    """
    with open_regular(path) as file:
        every = list(said.texts(file))
        lines = _known_in(file, list(said.people_shown(file)))
        of_profile = set(said.profile_texts(file))
    known = {part for _, words in lines for part in (words, *words.split("; "))}
    unknown = [text for text in every if text not in known][:MOST_FURTHER_TEXTS]
    further = [("profile" if text in of_profile else "also", text[:MOST_FURTHER]) for text in unknown]
    return EMBEDDED_WORDS.write(Embedded((*lines, *further)))


def _known_in(file: BinaryIO, shown: list[str]) -> list[tuple[str, str]]:
    """The lines of _TOLD_IN_FILES, and what is wrong with the file."""
    try:
        metadata = picture_files.read(file)
    except BoxloreError as fault:
        return [("unreadable", str(fault))]
    lines: list[tuple[str, str]] = []
    for name, properties, dataset, exif in _TOLD_IN_FILES:
        texts = [metadata.xmp.get(name, "") for name in properties] + ["; ".join(metadata.iim.get(dataset, ()))]
        texts.append(metadata.exif.get(exif, ""))
        texts = ["; ".join(shown)] if name == "people" else texts
        words = next((" ".join(text.split()) for text in texts if text.strip()), "")
        lines += [(name, words)] if words else []
    return [*lines, *(("problem", problem) for problem in metadata.problems)]
