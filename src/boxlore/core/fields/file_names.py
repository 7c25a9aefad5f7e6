"""What the name of a picture's file says: `1932_summer Haapsalu (2).jpg` says “1932 summer Haapsalu”.

A word of a name is a run of letters. What cameras, telephones, scanners and programs write by themselves says nothing:
a word of MACHINES, and a run that letters and digits make together (`P1010023`, `DSC00123`, `3fa9c0`).

What says something is not yet a title: `Cscans`, `CON` and `Odd f` are names that somebody gave to files. A title is a
phrase: two words of a language or more, or one and a year, and nothing between them that no language can be of.
"""

import re
from collections.abc import Sequence

from boxlore.core.statements import fold

MACHINES = frozenset(
    """img image images imag imgp dsc dscn dscf dscim pxl mvi mov sam gopr dji pano hdr burst cimg pict pic pics picture
    pictures photo photos photograph foto fotos bild bilder pilt pildid kuva kuvat scan scans scanned scanning scanner
    skan skannaus epson canon whats app file untitled unnamed noname new copy copie kopie kopia koopia screenshot
    snapshot whatsapp signal telegram front back recto verso page seite side doc document jpeg jpg tif tiff png webp
    heic edit edited crop cropped final version resized small large web print prints album box folder camera digital
    dcim flatbed""".split()
)
"""Words that stand in names of files whoever or whatever is shown. Common practice, no source."""

_BETWEEN = re.compile(r"[_\s+]+|(?<=[a-z])(?=[A-Z])|\.(?=\D)")
_SUFFIX = re.compile(r"\.[A-Za-z0-9]{1,5}\Z")
_COPY = re.compile(r"\s*(?:\(\d{1,3}\)|~\d{1,3})\s*\Z")
_SIDE = re.compile(r"(?<=\w)[_-](?:[frbv]|front|back|recto|verso)\Z", re.IGNORECASE)
"""Which side of a print a file is, as names of scans end (`harbour_b`, `wedding-front`): nothing of what is shown."""
_WORD = re.compile(r"[^\W\d_]+")
_CODE = re.compile(r"[^\W\d_]+\d\w*|\d+[^\W\d_]\w*")
_YEARS = re.compile(r"\d{4}s")


def words_in_name(name: str) -> str:
    """The words of a file's name, with blanks between them, without its suffix and which side it is; '' for a name that
    says nothing."""
    stem = _SIDE.sub("", _COPY.sub("", _SUFFIX.sub("", name)))
    words = " ".join(_BETWEEN.sub(" ", stem).split()).strip(" -–,;.")
    return words if any(map(_says, words.split())) else ""


def words_of_paths(paths: Sequence[str]) -> str:
    """What the first name says that says anything, else the first of their folders, of paths `folder/name`; or ''."""
    parted = [path.rpartition("/") for path in paths]
    names = [name for _, _, name in parted] + [folder for folder, _, _ in parted]
    return next(filter(None, map(words_in_name, names)), "")


def title_of_paths(paths: Sequence[str]) -> str:
    """Like `words_of_paths`, of the names that are phrases: what can stand as a title where nothing else is known."""
    parted = [path.rpartition("/") for path in paths]
    names = [name for _, _, name in parted] + [folder for folder, _, _ in parted]
    return next(filter(_is_phrase, map(words_in_name, names)), "")


_RUN = re.compile(r"[^\W\d_]+")
_A_YEAR = re.compile(r"(?<!\d)(?:1[89]|20)\d\d(?!\d)")
_CONSONANTS = frozenset("bcdfghjkmnpqstvxzбвгджзйклмнпстфхцчшщъьβγδζθκλμνξπρσςτφχψ")
"""Letters of which alone no word is made: l, r and w can carry a syllable (`vlk`, `Brno`, `cwm`, `крст`); alphabets
that write no vowels have none of them."""
_UNPARTED = re.compile("[\u0e00-\u0eff\u1000-\u109f\u1780-\u17ff\u3040-\u30ff\u3400-\u9fff]{3}")
"""Scripts whose words stand without blanks (Thai, Lao, Burmese, Khmer, Kana, Han): three letters are a phrase."""
_REPEATED = re.compile(r"(.)\1{4}")


def _is_phrase(words: str) -> bool:
    """Whether words are a phrase of a language and not what a file is called. A single letter is none of them."""
    runs = [fold(run) for run in _RUN.findall(words)]
    if any(len(run) > 1 and (_CONSONANTS.issuperset(run) or _REPEATED.search(run)) for run in runs):
        return False
    told = [run for run in runs if len(run) > 1 and run not in MACHINES]
    return len(told) + bool(_A_YEAR.search(words)) > 1 or bool(_UNPARTED.search(words))


def _says(word: str) -> bool:
    """Whether a word of a name, or a part of it between hyphens, says something about a picture."""
    parts = re.split(r"[-–.,]", word)
    runs = [run for part in parts if not _CODE.search(part) for run in _WORD.findall(part)]
    return any(map(_YEARS.fullmatch, parts)) or any(len(run) > 2 and run.lower() not in MACHINES for run in runs)


_PARTED = re.compile(r"[_,;&+()\[\]]| [-–—] |\band\b|\bund\b|\bja\b|\bwith\b", re.IGNORECASE)


def parts_of_name(name: str) -> list[str]:
    """The parts between separators and small words that join, each of which may name somebody or a place."""
    stem = _COPY.sub("", _SUFFIX.sub("", name))
    parts = (" ".join(_BETWEEN.sub(" ", part).split()).strip(" -–.") for part in _PARTED.split(stem))
    return [part for part in parts if part]


_YEAR = re.compile(r"(?<!\d)(1[89]\d\d|20\d\d)(?!\d)")
WIDEST = 4
"""So many words of a name are read as one date at most."""


def date_spans(words: str) -> list[str]:
    """The runs of up to WIDEST words around the first year in a name, the longest first: each may be a date."""
    tokens = words.split()
    at = next((place for place, token in enumerate(tokens) if _YEAR.search(token)), None)
    if at is None:
        return []
    spans = [
        (first, last)
        for first in range(max(0, at - WIDEST + 1), at + 1)
        for last in range(at + 1, min(len(tokens), first + WIDEST) + 1)
    ]
    return [" ".join(tokens[first:last]) for first, last in sorted(spans, key=lambda span: span[0] - span[1])]
