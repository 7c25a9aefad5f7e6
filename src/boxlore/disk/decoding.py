"""The one place where the bytes of a picture are opened and decoded: what it may cost is bounded, what fails is said.

A picture is refused by its header where it claims more than MOST_PIXELS, where it claims far more than its bytes can
hold, or where its pixels would fill the machine's memory. Whatever Pillow and its plugins raise becomes CouldNot, and
Damaged where the bytes of the file are at fault.
"""

import logging
import os
import threading
import warnings
from collections.abc import Iterator
from contextlib import contextmanager, nullcontext
from pathlib import Path

from PIL import Image, UnidentifiedImageError

from boxlore.core.errors import BoxloreError, CouldNot
from boxlore.disk.picture_kinds import why_unread
from boxlore.disk.png_chunks import picture_alone
from boxlore.disk.regular_file import open_regular

MOST_PIXELS = 1 << 30
"""A gigapixel (32,768 by 32,768): an A3 sheet at 1,900 pixels an inch. A larger picture is refused by its header."""

SURELY_FITS = 64_000_000
"""So many pixels (256 MB decoded) are decoded whatever the file's length, and beside other pictures."""

PIXELS_A_BYTE = 10_000
"""A picture of more than SURELY_FITS pixels has at least a byte for so many of them. Common practice, no source: the
densest real scans, line art in CCITT Group 4, have some 1,600 pixels a byte; a bomb has millions."""

ROWS_A_BYTE = 8
"""A blank sheet in one bit a pixel may be smaller still: Group 4 writes a row that is like the one above it as one bit
(ITU-T T.6, 2.2.3.2). Only what the machine's memory can hold is decoded, here as everywhere."""

FORMATS = ("JPEG", "MPO", "TIFF", "PNG", "WEBP", "JPEG2000", "GIF", "BMP", "AVIF", "PSD", "PPM", "PCX", "PCD", "HEIF")
"""What is decoded, by Pillow's names. EPS and WMF are not: they are programs, and run as such."""

HEIF_BRANDS = (b"heic", b"heix", b"hevc", b"mif1", b"msf1", b"heim", b"heis")
"""Brands of a `ftyp` box (ISO/IEC 23008-12)."""

AVIF_BRANDS = (b"avif", b"avis")
"""The same of AVIF (AV1 Image File Format 1.1, 6)."""

Image.MAX_IMAGE_PIXELS = MOST_PIXELS
warnings.filterwarnings("ignore", module=r"PIL(\.|\Z)")  # a decoder's remarks on a file are no talk for the keeper
logging.getLogger("PIL").addHandler(logging.NullHandler())

_large_pictures = threading.Lock()
"""Held while a picture of more than SURELY_FITS pixels is decoded, so that two do not fill the memory together."""


class Damaged(CouldNot):
    """A picture's bytes are cut off or broken, whatever the machine it is read on."""


class NoReader(CouldNot):
    """A picture of a kind for which this machine has no reader; it is kept, and not shown."""


def is_heif(path: Path) -> bool:
    """Whether the file begins with a `ftyp` box of a HEIF brand. Raises OSError."""
    return _brand(path) in HEIF_BRANDS


def _brand(path: Path) -> bytes:
    """The brand of a file that begins with a `ftyp` box (ISO/IEC 14496-12, 4.3); empty for another. Raises OSError."""
    with open_regular(path) as file:
        head = file.read(12)
    return head[8:12] if head[4:8] == b"ftyp" else b""


@contextmanager
def opened(path: Path, failure: str = "cannot be opened as a picture") -> Iterator[Image.Image]:
    """The picture with its header read; what the block does with it is guarded too.

    Raises CouldNot with the file's name and `failure`, whatever is wrong; Damaged where it is the file itself.
    """
    try:
        with _open(path) as image:
            _refuse_bomb(path, image)
            with _large_pictures if image.width * image.height > SURELY_FITS else nullcontext():
                yield image
    except BoxloreError:
        raise
    except MemoryError as error:
        raise CouldNot(
            f"{path.name} {failure}: there is not memory enough.", "Close other programs, or use a larger machine."
        ) from error
    except (Image.DecompressionBombError, Image.DecompressionBombWarning) as error:
        raise _too_large(path) from error
    except Exception as error:  # a decoder raises anything for a damaged file: even TypeError, KeyError, struct.error
        if isinstance(error, OSError) and error.errno:  # a file that is gone, or a disk that cannot be read
            raise _gone(path, failure) from error
        raise _damaged(path, failure) from error


def _gone(path: Path, failure: str) -> CouldNot:
    return CouldNot(f"{path.name} {failure}.", "Look whether it is there, and whether its disk can be read.")


def _damaged(path: Path, failure: str) -> CouldNot:
    try:
        why, what_to_do = why_unread(path)
    except OSError:
        return _gone(path, failure)
    return Damaged(f"{path.name} {failure}: {why}.", what_to_do)


def _open(path: Path) -> Image.Image:
    """Raises NoReader for a HEIC or an AVIF without the library for it, and whatever Pillow raises."""
    brand = _brand(path)
    if brand in HEIF_BRANDS:
        try:
            from pillow_heif import register_heif_opener
        except ImportError as error:
            raise NoReader(
                f"{path.name} is a HEIC picture, and the part that reads them is not installed.",
                "Install it (`pip install boxlore[heif]`), or let the telephone hand the picture on as JPEG.",
            ) from error
        register_heif_opener()
    Image.init()
    if brand in AVIF_BRANDS and "AVIF" not in Image.OPEN:
        raise NoReader(
            f"{path.name} is an AVIF picture, and the Pillow that is installed reads none.",
            "Install a newer one (`pip install --upgrade pillow`), or have the picture written as JPEG or PNG.",
        )
    try:
        return Image.open(path, formats=[name for name in FORMATS if name in Image.OPEN])
    except (SyntaxError, UnidentifiedImageError):
        with open_regular(path) as file:
            picture = picture_alone(file)
        if picture is None:
            raise
        return Image.open(picture, formats=["PNG"])


def _too_large(path: Path) -> CouldNot:
    return CouldNot(
        f"{path.name} has more than {MOST_PIXELS:,} pixels, too many to be read.", "Cut it into parts, or scale it."
    )


def refuse_too_many_pixels(path: Path, width: int, height: int) -> None:
    """Raises CouldNot for a header that claims more than MOST_PIXELS."""
    if width * height > MOST_PIXELS:
        raise _too_large(path)


def _refuse_bomb(path: Path, image: Image.Image) -> None:
    """Raises CouldNot where the header claims more pixels than may be, or than the file's bytes can hold."""
    refuse_too_many_pixels(path, image.width, image.height)
    pixels = image.width * image.height
    length = path.stat().st_size
    most = length * (max(PIXELS_A_BYTE, ROWS_A_BYTE * image.width) if image.mode == "1" else PIXELS_A_BYTE)
    if pixels > SURELY_FITS and pixels > most:
        raise CouldNot(
            f"{path.name} claims to be {image.width} by {image.height} pixels, and has only {length} bytes.",
            "It is damaged or made to do harm: scan the picture again. If another program shows it, scale it there.",
        )


def load(path: Path, image: Image.Image) -> None:
    """Decode the pixels. Raises CouldNot, before anything is decoded, where the machine has not memory enough."""
    memory = _memory()
    if memory and 2 * decoded_size(image) > memory:  # twice, as a picture is turned or converted into a second one
        raise CouldNot(
            f"{path.name} ({image.width} by {image.height} pixels) is too large for the memory of this machine.",
            "Use a larger machine, or scale the picture.",
        )
    image.load()


def decoded_size(image: Image.Image) -> int:
    """The bytes of the picture in memory: Pillow keeps several channels in four bytes a pixel."""
    per_pixel = 4 if len(image.getbands()) > 1 or image.mode in ("I", "F") else 2 if "16" in image.mode else 1
    return image.width * image.height * per_pixel


def _memory() -> int:
    """The machine's memory in bytes; 0 where the system does not tell, as on Windows."""
    try:
        return os.sysconf("SC_PHYS_PAGES") * os.sysconf("SC_PAGE_SIZE")
    except (AttributeError, ValueError, OSError):
        return 0
