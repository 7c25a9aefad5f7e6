"""Sixels, held to a reader of our own written from the manual of the VT330 and VT340 (EK-VT3XX-GP-002, chapter 14).

ImageMagick reads them to within 1.5 of 255 levels of what was written, on a photograph of the demonstration (looked at
by hand: it is not among the libraries of the tests).
"""

import random
import re

import pytest

from boxlore.formats.sixel import encode

Pixel = tuple[int, int, int]
PALETTE: list[Pixel] = [(0, 0, 0), (255, 255, 255), (255, 0, 0), (51, 102, 204)]

TOKEN = re.compile(rb"#(\d+);2;(\d+);(\d+);(\d+)|#(\d+)|!(\d+)([?-~])|([?-~])|([$-])")


def drawn(sequence: bytes) -> dict[tuple[int, int], Pixel]:
    """The pixels that a sequence draws, by (column, row); colours are in hundredths, as they are told."""
    head = re.fullmatch(rb'\x1bP0;1;0q"1;1;(\d+);(\d+)(.*)\x1b\\', sequence, re.S)
    assert head
    colours: dict[int, Pixel] = {}
    pixels: dict[tuple[int, int], Pixel] = {}
    at, top, colour, done = 0, 0, 0, 0
    for token in TOKEN.finditer(head[3]):
        done += len(token[0])
        new, red, green, blue, chosen, times, repeated, letter, move = token.groups()
        if new:
            colours[int(new)] = (int(red), int(green), int(blue))
        elif chosen:
            colour = int(chosen)
        elif move:
            at, top = 0, top + 6 * (move == b"-")
        else:
            bits, columns = ord(repeated or letter) - 63, range(at, at + int(times or 1))
            rows = [top + row for row in range(6) if bits >> row & 1]
            pixels |= {(column, row): colours[colour] for column in columns for row in rows}
            at = columns.stop
    assert done == len(head[3]), "every letter is one of the manual's"
    assert all(x < int(head[1]) and y < int(head[2]) for x, y in pixels)
    return pixels


def in_hundredths(pixel: Pixel) -> Pixel:
    red, green, blue = (round(part * 100 / 255) for part in pixel)
    return red, green, blue


@pytest.mark.parametrize(("width", "height"), [(1, 1), (1, 6), (3, 7), (40, 13), (5, 12)])
def test_what_is_drawn_is_what_was_given(width: int, height: int) -> None:
    chance = random.Random(width * height)
    indexes = bytes(chance.randrange(len(PALETTE)) for _ in range(width * height))
    wanted = {(at % width, at // width): in_hundredths(PALETTE[index]) for at, index in enumerate(indexes)}
    assert drawn(encode(width, height, indexes, PALETTE)) == wanted


def test_letters_alike_are_counted() -> None:
    assert encode(9, 6, bytes(9 * 6), PALETTE) == b'\x1bP0;1;0q"1;1;9;6#0;2;0;0;0#0!9~-\x1b\\'


@pytest.mark.parametrize(
    ("width", "height", "indexes", "why"),
    [(0, 1, b"", "no picture of 0 by 1"), (2, 2, b"\0\0\0", "3 pixels"), (1, 1, b"\4", "colour 4")],
)
def test_what_does_not_fit_is_refused(width: int, height: int, indexes: bytes, why: str) -> None:
    with pytest.raises(ValueError, match=why):
        encode(width, height, indexes, PALETTE)
