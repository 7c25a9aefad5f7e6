"""Sixel: a picture as letters that a terminal draws, six rows of pixels at a time.

Written from the VT330/VT340 Programmer Reference Manual, volume 2, chapter 14 (Digital, EK-VT3XX-GP-002). A picture is
`DCS 0 ; 1 ; 0 q`, raster attributes, colours, bands, `ST`. In a band every colour has a line of its own: one letter a
column, whose six lowest bits (63 is added to them) say which of the six pixels have this colour, the uppermost first.
`$` goes back to the left for the next colour, `-` to the next band, `! n` says the letter after it n times.

How the letters are made without looking at each pixel in Python: a row of palette indexes becomes, by one
`bytes.translate`, a row of 0 and 2**n for the pixels of one colour; six such rows are joined as large integers by `|`.
"""

import re
from collections.abc import Sequence

BAND = 6
"""Rows of pixels in a band."""
EMPTY = 63
"""What is added to the bits: the letter `?` has none."""
LETTERS = bytes(min(bits + EMPTY, 126) for bits in range(256))
RUN = re.compile(rb"(.)\1{3,}", re.S)
"""Four letters alike or more: as `!4?` they are not longer."""


def encode(width: int, height: int, indexes: bytes, palette: Sequence[tuple[int, int, int]]) -> bytes:
    """The whole sequence that draws a picture at the cursor.

    `indexes` has one byte a pixel, row by row; `palette` is red, green and blue of each index, 0 to 255.
    Raises ValueError where they do not fit together.
    """
    if width < 1 or height < 1 or len(indexes) != width * height:
        raise ValueError(f"{len(indexes)} pixels are no picture of {width} by {height}")
    if len(palette) <= max(indexes):
        raise ValueError(f"colour {max(indexes)} is not among {len(palette)}")
    parts = [b'\x1bP0;1;0q"1;1;%d;%d' % (width, height)]
    for index in sorted(set(indexes)):
        red, green, blue = (round(part * 100 / 255) for part in palette[index])
        parts.append(b"#%d;2;%d;%d;%d" % (index, red, green, blue))
    for top in range(0, height, BAND):
        rows = [indexes[at * width : (at + 1) * width] for at in range(top, min(top + BAND, height))]
        parts.append(b"$".join(_lines(rows, width)) + b"-")
    parts.append(b"\x1b\\")
    return b"".join(parts)


def _lines(rows: Sequence[bytes], width: int) -> list[bytes]:
    """The lines of one band, one a colour."""
    colours: dict[int, list[int]] = {}
    for at, row in enumerate(rows):
        for colour in set(row):
            colours.setdefault(colour, []).append(at)
    lines = []
    for colour, at_rows in colours.items():
        bits = 0
        for at in at_rows:
            bits |= int.from_bytes(rows[at].translate(_BITS[at][colour]), "little")
        letters = bits.to_bytes(width, "little").translate(LETTERS).rstrip(b"?")
        lines.append(b"#%d" % colour + RUN.sub(_shortened, letters))
    return lines


def _shortened(run: re.Match[bytes]) -> bytes:
    return b"!%d%b" % (len(run[0]), run[1])


def _bits() -> list[list[bytes]]:
    """For each row of a band and each colour: a table that maps the colour to the row's bit, all others to 0."""
    tables = []
    for row in range(BAND):
        blank = bytearray(256)
        of_row = []
        for colour in range(256):
            blank[colour] = 1 << row
            of_row.append(bytes(blank))
            blank[colour] = 0
        tables.append(of_row)
    return tables


_BITS = _bits()
