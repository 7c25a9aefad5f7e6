"""Several pictures in one JPEG (CIPA DC-007, 5.2.3), read back by Pillow."""

import pytest

from boxlore.core.errors import ByteFault
from boxlore.formats import mpf


def index(*pictures: tuple[int, int], order: str = "little", length: int | None = None) -> bytes:
    """An MPF segment's payload: version, count and the entries (size, offset) of DC-007, 5.2.3."""
    table = b"".join(
        (0x030000).to_bytes(4, order) + size.to_bytes(4, order) + at.to_bytes(4, order) + bytes(4)  # type: ignore[arg-type]
        for size, at in pictures
    )
    table = table[: len(table) if length is None else length]

    def entry(tag: int, kind: int, count: int, value: bytes) -> bytes:
        return tag.to_bytes(2, order) + kind.to_bytes(2, order) + count.to_bytes(4, order) + value  # type: ignore[arg-type]

    entries = [
        entry(0xB000, 7, 4, b"0100"),
        entry(0xB001, 4, 1, len(pictures).to_bytes(4, order)),  # type: ignore[arg-type]
        entry(0xB002, 7, len(table), (50).to_bytes(4, order)),  # type: ignore[arg-type]
    ]
    head = (b"II*\x00" if order == "little" else b"MM\x00*") + (8).to_bytes(4, order)  # type: ignore[arg-type]
    return b"MPF\x00" + head + (3).to_bytes(2, order) + b"".join(entries) + bytes(4) + table  # type: ignore[arg-type]


MOVES = [
    ("grown before the index", 100, 0, [(600, 0), (50, 480)]),
    ("grown behind the index", 100, 100, [(600, 0), (50, 580)]),
    ("shorter", -30, -10, [(470, 0), (50, 470)]),
]


@pytest.mark.parametrize("order", ["little", "big"])
@pytest.mark.parametrize(("why", "grown", "behind", "after"), MOVES, ids=[row[0] for row in MOVES])
def test_places_move_with_what_changed(
    order: str, why: str, grown: int, behind: int, after: list[tuple[int, int]]
) -> None:
    before = index((500, 0), (50, 480), order=order)
    assert mpf.moved(before, grown=grown, behind=behind) == index(*after, order=order)
    assert mpf.moved(before, grown=0, behind=0) == before


def test_an_index_without_entries_names_no_places() -> None:
    payload = b"MPF\x00II*\x00\x08\x00\x00\x00\x01\x00\x00\xb0\x07\x00\x04\x00\x00\x000100" + bytes(4)
    assert mpf.moved(payload, grown=5, behind=5) == payload


REFUSALS = [
    ("no index", b"MPF\x00", 0, 0),
    ("cut off", index((500, 0), length=9), 0, 0),
    ("no room for the size", index(((1 << 32) - 1, 0)), 1, 0),
    ("no room before the file", index((500, 0), (50, 8)), 0, -9),
]


@pytest.mark.parametrize(("why", "payload", "grown", "behind"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_refusals(why: str, payload: bytes, grown: int, behind: int) -> None:
    with pytest.raises(ByteFault) as caught:
        mpf.moved(payload, grown=grown, behind=behind)
    assert caught.value.clause == "CIPA DC-007, 5.2.3"
