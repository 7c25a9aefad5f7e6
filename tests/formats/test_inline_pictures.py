"""Pictures sent to a terminal as files (kitty: “Terminal graphics protocol”; iTerm2: “Images” of its documentation)."""

import re
from base64 import b64decode

import pytest

from boxlore.formats.inline_pictures import iterm, kitty_sent


@pytest.mark.parametrize("size", [0, 1, 3071, 3072, 3073, 10_000])
def test_kitty_is_sent_the_file_in_pieces_that_it_takes(size: int) -> None:
    data = bytes(at * 7 % 256 for at in range(size))
    pieces = re.findall("\x1b_G(.*?);(.*?)\x1b\\\\", kitty_sent(12, data))
    # “no more than 4096 bytes”, all but the last a multiple of 4; m=1 for all but the last (protocol, “Remote client”)
    assert all(len(piece) <= 4096 for _, piece in pieces) and all(len(piece) % 4 == 0 for _, piece in pieces[:-1])
    assert [head.rpartition("m=")[2] for head, _ in pieces] == ["1"] * (len(pieces) - 1) + ["0"]
    assert pieces[0][0].startswith("a=t,f=100,i=12,q=2,")
    assert b64decode("".join(piece for _, piece in pieces)) == data


def test_iterm_is_told_the_size_of_the_file_and_its_cells() -> None:
    sequence = re.fullmatch("\x1b]1337;File=(.*):(.*)\x07", iterm(b"a picture", 40, 20))
    assert sequence and b64decode(sequence[2]) == b"a picture"
    assert set(sequence[1].split(";")) == {"inline=1", "size=9", "width=40", "height=20", "preserveAspectRatio=0"}
