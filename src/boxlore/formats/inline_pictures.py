"""Pictures sent to a terminal as files: the graphics protocol of kitty, and the inline images of iTerm2.

Written from “Terminal graphics protocol” (sw.kovidgoyal.net/kitty/graphics-protocol) and “Images” of iTerm2's
documentation (iterm2.com/documentation-images). Both carry the file in base64. In kitty's a picture has a number, is
sent once, and is put and taken away by that number; iTerm2 draws it into cells, and what is written there later covers
it.
"""

from base64 import b64encode

CHUNK = 4096
"""Letters of base64 in one piece at most (the protocol's own limit)."""


def kitty_sent(number: int, png: bytes) -> str:
    """Send a PNG and keep it under a number, without showing it. `q=2`: the terminal answers nothing."""
    data = b64encode(png).decode()
    pieces = [data[at : at + CHUNK] for at in range(0, len(data), CHUNK)] or [""]
    head = f"a=t,f=100,i={number},q=2,"
    parts = []
    for at, piece in enumerate(pieces):
        more = int(at < len(pieces) - 1)
        parts.append(f"\x1b_G{head if at == 0 else 'q=2,'}m={more};{piece}\x1b\\")
    return "".join(parts)


def kitty_put(number: int, *, above: int = 0) -> str:
    """Show a picture that was sent, at the cursor, which stays; the one `above` the most covers the others."""
    return f"\x1b_Ga=p,i={number},p=1,z={above},C=1,q=2\x1b\\"


def kitty_taken_away(*, forget: bool = False) -> str:
    """Show no picture any more. `forget`: the terminal need not keep them either."""
    return f"\x1b_Ga=d,d={'A' if forget else 'a'},q=2\x1b\\"


def kitty_forgotten(number: int) -> str:
    """Take one picture away, and let the terminal forget it."""
    return f"\x1b_Ga=d,d=I,i={number},q=2\x1b\\"


def iterm(picture: bytes, columns: int, rows: int) -> str:
    """Draw a picture (any usual format) over so many cells, from the cursor on."""
    options = f"inline=1;size={len(picture)};width={columns};height={rows};preserveAspectRatio=0"
    return f"\x1b]1337;File={options}:{b64encode(picture).decode()}\x07"
