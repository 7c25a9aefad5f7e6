"""What a file is by how it begins, and which kinds of pictures are not read: each is named with what to do about it."""

from pathlib import Path

from boxlore.disk.regular_file import open_regular

_BEGINNINGS = (
    (0, b"\xff\xd8\xff"),  # JPEG
    (0, b"II*\x00"),  # TIFF
    (0, b"MM\x00*"),
    (0, b"\x89PNG\r\n\x1a\n"),
    (8, b"WEBPVP8"),
    (0, b"\x00\x00\x00\x0cjP  "),  # JPEG 2000
    (4, b"ftyphei"),  # HEIC
    (4, b"ftyphev"),
    (4, b"ftypmif1"),
    (4, b"ftypavi"),
    (0, b"GIF8"),
    (0, b"8BPS"),  # PSD
)
"""How pictures begin: (offset, bytes), from the specifications of the formats."""

_OF_CAMERAS = ".3fr .arw .cr2 .cr3 .crw .dcr .dng .erf .fff .iiq .kdc .mef .mos .mrw .nef .nrw .orf .pef .raf .raw .rw2"
_OF_CAMERAS += " .rwl .sr2 .srf .srw .x3f"
_OF_PROGRAMS = ".ai .cdr .eps .indd .jxl .jxr .svg .wmf .emf .xcf .kra .afphoto"
_FILMS = ".3gp .avi .m2ts .m4v .mkv .mov .mp4 .mpeg .mpg .mts .webm .wmv"

NOT_READ: dict[str, str] = {
    **dict.fromkeys(
        _OF_CAMERAS.split(),
        "a camera's raw file: let a program of its maker write a TIFF or JPEG of it, take that in, and keep this one",
    ),
    **dict.fromkeys(
        _OF_PROGRAMS.split(), "a picture of a kind that is not read: let the program that makes it write a TIFF or PNG"
    ),
    **dict.fromkeys(_FILMS.split(), "a film; a recording of a sitting is kept by `boxlore recording`"),
}
"""Suffix -> what such a file is, and what to do about it. Common practice, no source."""

RAW = frozenset(_OF_CAMERAS.split())
"""Suffixes of raw files of cameras. They begin as TIFF, and what a reader of TIFF finds is a thumbnail."""

_WINDOW = 1 << 20


def is_a_picture(head: bytes) -> bool:
    """Whether a file of which these are the first 16 bytes begins as pictures do."""
    return any(head[at:].startswith(beginning) for at, beginning in _BEGINNINGS)


def head_of(path: Path) -> bytes:
    """The first 16 bytes of a file. Raises OSError."""
    with open_regular(path) as file:
        return file.read(16)


def why_unread(path: Path) -> tuple[str, str]:
    """Why a file is not read as a picture, and what to do. Raises OSError."""
    again = "Copy it again from where it comes, or scan the original again if you can."
    if path.suffix.lower() in RAW:
        return "it is a camera's raw file", "Let a program of its maker write a TIFF or JPEG of it, and take that in."
    if is_a_picture(head_of(path)):
        return "it begins as one, and is cut off or broken", again
    with open_regular(path) as file:
        while block := file.read(_WINDOW):
            if block.strip(b"\x00"):
                return (
                    "by how it begins it is none, whatever its name says, or it is broken",
                    f"Look at it: a web page may have been saved in its place. {again}",
                )
    return "it holds nothing but zeros, as where a copy was broken off", again
