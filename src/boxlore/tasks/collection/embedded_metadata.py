"""What a scan's file already says: titles, captions, dates and names that another program or person wrote into it.

Whoever reads more of a file here counts `opening.READER` up, so that the files of earlier scans are read again.
"""

from collections.abc import Iterable, Iterator
from contextlib import suppress
from pathlib import Path
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import ExistingMetadata
from boxlore.core.errors import BoxloreError
from boxlore.core.fields.pictures import EMBEDDED_WORDS, Embedded
from boxlore.disk.pictures import read_header
from boxlore.disk.regular_file import open_regular
from boxlore.formats import picture_files, said, tiff
from boxlore.formats.regions import has_regions, people_in_regions
from boxlore.formats.said_in_languages import (
    Descriptions,
    default_text,
    descriptions,
    further_languages,
    joined_place,
    places_shown,
)
from boxlore.formats.said_in_slots import slots

_TOLD_IN_FILES = (
    ("title", ("dc:title",), (2, 5), ""),
    ("headline", ("photoshop:Headline",), (2, 105), ""),
    ("caption", ("dc:description",), (2, 120), "ImageDescription"),
    ("date", ("photoshop:DateCreated", "dcterms:created"), (2, 55), ""),
    ("people", (), (0, 0), ""),
    ("keywords", ("dc:subject",), (2, 25), ""),
    ("by", ("dc:creator",), (2, 80), "Artist"),
    ("rights", ("dc:rights",), (2, 116), "Copyright"),
    ("scanned", ("exif:DateTimeOriginal", "exif:DateTimeDigitized", "xmp:CreateDate"), (2, 62), "DateTimeOriginal"),
    ("place", (), (0, 0), ""),
)
"""What is read out of a file: our name for it, its XMP properties, its IIM dataset, its Exif name."""

_TOLD_TWICE = ("title", "caption", "date", "keywords")
"""What a file may say once more, otherwise, in another slot: all of it is kept."""

_DAYS = ((2, 55), (2, 62))
"""Datasets of IIM that hold a day as CCYYMMDD, with 00 for a month or a day that is not known (IIM 4.2, 2:55, 2:62)."""

_IN_LANGUAGES = {"title": "dc:title", "caption": "dc:description"}
"""What a file may say in several languages; each further one is a line of its own, such as `title.et`."""

_PLACE = (
    ("Iptc4xmpCore:Location", (2, 92)),
    ("photoshop:City", (2, 90)),
    ("photoshop:State", (2, 95)),
    ("photoshop:Country", (2, 101)),
)
"""The parts of a place where the file has no LocationShown, from the smallest: XMP property, IIM dataset."""

MOST_FURTHER, MOST_FURTHER_TEXTS = 2_000, 200
"""Letters of one further text, and further texts, that are kept of one file."""


def embedded_in(path: Path) -> str:
    """What a file already says, as lines `name: words` by the names of _TOLD_IN_FILES, and as `also` all else that
    stands in any slot, as `profile` what the colour profile says; '' if it says nothing.

    These are facts about the scan: a rule may make a question of one, but none is a statement about the picture.
    """
    with open_regular(path) as file:
        every = list(said.texts(file))
        lines = _known_in(file, path, list(said.people_shown(file))) + _pages(file)
        of_profile = set(said.profile_texts(file))
    known = {part for _, words in lines for part in (words, *words.split("; "))}
    unknown = [text for text in every if text not in known][:MOST_FURTHER_TEXTS]
    further = [("profile" if text in of_profile else "also", text[:MOST_FURTHER]) for text in unknown]
    return EMBEDDED_WORDS.write(Embedded((*lines, *further)))


def _known_in(file: BinaryIO, path: Path, shown: list[str]) -> list[tuple[str, str]]:
    """The lines of _TOLD_IN_FILES, what is wrong with the file, and who is seen where."""
    try:
        metadata = picture_files.read(file)
        described = descriptions(file)
    except BoxloreError as fault:
        return [("unreadable", str(fault))]
    place = "; ".join(places_shown(described)) or _place(metadata)
    further = {name: further_languages(described, of_file) for name, of_file in _IN_LANGUAGES.items()}
    defaults = {name: default_text(described, of_file) for name, of_file in _IN_LANGUAGES.items()}
    instead = {"people": "; ".join(shown), "place": place, **{name: text for name, text in defaults.items() if text}}
    in_slots = list(slots(file))
    lines: list[tuple[str, str]] = []
    for name, properties, dataset, exif in _TOLD_IN_FILES:
        of_iim = "; ".join(metadata.iim.get(dataset, ()))
        texts = [*(metadata.xmp.get(name, "") for name in properties), _day(of_iim) if dataset in _DAYS else of_iim]
        of_a_machine = _is_of_a_machine(metadata, exif)
        lines += [("machine", " ".join(metadata.exif[exif].split()))] if of_a_machine else []
        texts.append("" if of_a_machine else metadata.exif.get(exif, ""))
        texts += [text for slot, text in in_slots if slot == name]
        if name in instead:
            texts = [instead[name], *(texts[len(properties) :] if name in defaults else ())]
        words = next((" ".join(text.split()) for text in texts if text.strip()), "")
        lines += [(name, words)] if words else []
        lines += [(name, other) for other in _told_otherwise(words, texts) if name in _TOLD_TWICE]
        lines += [(f"{name}.{language}", text) for language, text in further.get(name, ()) if text != words]
    return [*lines, *(("problem", problem) for problem in metadata.problems), *_in_regions(described, path)]


def _day(words: str) -> str:
    """A day of IIM as ISO 8601 writes it, as far as it is known; other words as they are."""
    if len(words) != 8 or not (words.isascii() and words.isdigit()):
        return words
    parts = [words[:4], *(part for part in (words[4:6], words[6:]) if part != "00")]
    return "-".join(parts)


def _told_otherwise(words: str, texts: Iterable[str]) -> Iterator[str]:
    """Each text that says another thing than the one that is read first, and than those before it: not the same in
    other letters or signs (`19380624`, `1938-06-24`), and not its beginning, as a slot of few letters cuts it off."""
    known = [_bare(words)]
    for text in texts:
        bare = _bare(text)
        if bare and not any(bare.startswith(one) or one.startswith(bare) for one in known):
            known.append(bare)
            yield " ".join(text.split())


def _bare(text: str) -> str:
    return "".join(letter for letter in text.casefold() if letter.isalnum())


def _in_regions(described: Descriptions, path: Path) -> list[tuple[str, str]]:
    """Who is seen where, as `region` lines: x, y, width and height in 0..1 of the stored picture, and the name."""
    with suppress(BoxloreError):
        if has_regions(described):
            facts = read_header(path)
            found = people_in_regions(described, (facts.width, facts.height), facts.orientation)
            return [("region", f"{' '.join(f'{part:g}' for part in box)} {name}") for name, box in found]
    return []


def _pages(file: BinaryIO) -> list[tuple[str, str]]:
    """How many pages a TIFF has, where it has more than one: only the first is the scan."""
    with suppress(BoxloreError):
        if (count := tiff.pages_in(file)) > 1:
            return [("pages", str(count))]
    return []


def _place(metadata: ExistingMetadata) -> str:
    """The place that a file tells part by part, or ''."""
    parts = (metadata.xmp.get(name, "") or "; ".join(metadata.iim.get(dataset, ())) for name, dataset in _PLACE)
    return joined_place(" ".join(part.split()) for part in parts)


def _is_of_a_machine(metadata: ExistingMetadata, exif: str) -> bool:
    """Whether an Exif caption is what the camera or the program writes into every picture: it names itself there."""
    if exif != "ImageDescription":
        return False
    names = " ".join(metadata.exif.get(name, "") for name in ("Make", "Model", "Software"))
    own = {word for word in names.casefold().split() if len(word) > 2}
    return not own.isdisjoint(metadata.exif.get(exif, "").casefold().split())
