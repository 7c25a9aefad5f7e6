"""The page's address as a QR code (ISO/IEC 18004) for a tablet's camera, drawn in the terminal with blocks."""

import io

import segno


def in_half_blocks(link: str) -> str:
    """The code as lines of text, two rows of squares to a line, with a margin of two squares."""
    rows = [list(row) for row in segno.make(link, error="l", micro=False).matrix_iter(border=2)]
    if len(rows) % 2:
        rows.append([0] * len(rows[0]))
    out = io.StringIO()
    for upper, lower in zip(rows[::2], rows[1::2], strict=True):
        out.write("".join(_cell(bool(over), bool(under)) for over, under in zip(upper, lower, strict=True)) + "\n")
    return out.getvalue()


def _cell(over: bool, under: bool) -> str:
    """The character for an upper and a lower square, true for dark. The character's ink is the light part, because
    terminals mostly write light on dark.
    """
    return {(False, False): "█", (False, True): "▀", (True, False): "▄", (True, True): " "}[over, under]
