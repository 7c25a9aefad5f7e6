"""The page's address as a square code (ISO/IEC 18004) for a tablet's camera, drawn in half blocks."""

import io

import segno


def in_half_blocks(link: str) -> str:
    """Lines of text, two rows of the code to a line, with the quiet zone; dark on light as cameras expect."""
    rows = [list(row) for row in segno.make(link, error="l", micro=False).matrix_iter(border=2)]
    if len(rows) % 2:
        rows.append([0] * len(rows[0]))
    out = io.StringIO()
    for upper, lower in zip(rows[::2], rows[1::2], strict=True):
        out.write("".join(_cell(bool(over), bool(under)) for over, under in zip(upper, lower, strict=True)) + "\n")
    return out.getvalue()


def _cell(over: bool, under: bool) -> str:
    """A cell whose ink is the light part, so that it reads right on a dark screen when drawn light."""
    return {(False, False): "█", (False, True): "▀", (True, False): "▄", (True, True): " "}[over, under]
