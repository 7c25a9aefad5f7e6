"""IPTC-NAA Information Interchange Model 4.2 (chapters 1.5, 3.2, 5, 6); read back by others in test_carrier."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.errors import ByteFault
from boxlore.formats import iim

BOTH_WAYS = [
    (b"", []),
    (b"\x1c\x02\x05\x00\x01A", [(2, 5, b"A")]),
    (b"\x1c\x01\x5a\x00\x03\x1b%G\x1c\x02\x00\x00\x02\x00\x04", [(1, 90, b"\x1b%G"), (2, 0, b"\x00\x04")]),
    (b"\x1c\x02\x05\x00\x00", [(2, 5, b"")]),
    (b"\x1c\x02\xca\x80\x04\x00\x00\x80\x00" + bytes(0x8000), [(2, 202, bytes(0x8000))]),
]


@pytest.mark.parametrize(("data", "datasets"), BOTH_WAYS)
def test_both_ways(data: bytes, datasets: list[iim.Dataset]) -> None:
    assert iim.split(data) == datasets
    assert iim.join(datasets) == data


@drawn(100)
@given(st.lists(st.tuples(st.integers(0, 255), st.integers(0, 255), st.binary(max_size=40))))
def test_joining_and_splitting_are_inverse(datasets: list[iim.Dataset]) -> None:
    assert iim.split(iim.join(datasets)) == datasets


@drawn(200)
@given(st.binary(max_size=60))
def test_any_bytes_are_read_or_refused(data: bytes) -> None:
    try:
        iim.texts(iim.split(b"\x1c\x02" + data))
    except ByteFault as fault:
        assert fault.clause.startswith("IIM 4.2, 3.2")


REFUSALS = [
    (b"\x1d\x02\x05\x00\x00", 0, "IIM 4.2, 3.2.1"),
    (b"\x1c\x02\x05\x00", 0, "IIM 4.2, 3.2.1"),
    (b"\x1c\x02\x05\x00\x01A\x1c\x02\x05\x00\x09A", 6, "IIM 4.2, 3.2.1"),
    (b"\x1c\x02\x05\x80\x09" + bytes(12), 0, "IIM 4.2, 3.2.2"),
    (b"\x1c\x02\x05\x80\x04\x00", 0, "IIM 4.2, 3.2.2"),
]


@pytest.mark.parametrize(("data", "offset", "clause"), REFUSALS)
def test_what_is_no_dataset_is_refused(data: bytes, offset: int, clause: str) -> None:
    with pytest.raises(ByteFault) as caught:
        iim.split(data)
    assert (caught.value.offset, caught.value.clause) == (offset, clause)


def test_padding_that_writers_leave_behind_is_no_fault() -> None:
    assert iim.split(b"\x1c\x02\x05\x00\x01A\x00\x00\x00") == [(2, 5, b"A")]


ALPHABETS = [
    ("declared UTF-8", b"\x1b%G", "Võrgud".encode(), "Võrgud", False),
    ("declared Latin-1", b"\x1b.A", "Võrgud".encode("latin-1"), "Võrgud", False),
    ("declared Latin-2", b"\x1b.B", "Łódź".encode("iso8859-2"), "Łódź", False),
    ("declared Cyrillic", b"\x1b-L", "Таллин".encode("iso8859-5"), "Таллин", False),
    ("not declared, UTF-8", b"", "Võrgud".encode(), "Võrgud", False),
    ("not declared, ASCII", b"", b"Vorgud", "Vorgud", False),
    ("not declared, Windows", b"", "“Võrgud”".encode("cp1252"), "“Võrgud”", True),
    ("not declared, in no alphabet", b"", b"\x81", "\x81", True),
    ("declared something unknown", b"\x1b(Z", "Võrgud".encode("latin-1"), "Võrgud", True),
    ("declared UTF-8, and is not", b"\x1b%G", "Võrgud".encode("latin-1"), "Võrgud", True),
]


@pytest.mark.parametrize(("why", "escape", "value", "words", "guessed"), ALPHABETS, ids=[row[0] for row in ALPHABETS])
def test_texts_are_transcoded_with_care(why: str, escape: bytes, value: bytes, words: str, guessed: bool) -> None:
    declared = [(1, 90, escape)] if escape else []
    existing: list[iim.Dataset] = [*declared, (2, 90, value), (2, 202, b"\xff\xfe")]
    texts, problems = iim.texts(existing)
    assert texts == {(2, 90): (words,)}
    assert bool(problems) is guessed
    merged, reports = iim.merge(existing, [((2, 5), ("Nets",))])
    assert merged == [
        (1, 90, b"\x1b%G"),
        (2, 0, b"\x00\x04"),
        (2, 5, b"Nets"),
        (2, 90, words.encode()),
        (2, 202, b"\xff\xfe"),
    ]
    assert bool(reports) is guessed
    again, none = iim.merge(merged, [((2, 5), ("Nets",))])
    assert (again, none) == (merged, [])


def test_ours_take_the_place_of_the_same_number_and_no_texts_take_it_out() -> None:
    existing: list[iim.Dataset] = [
        (1, 0, b"\x00\x04"),
        (2, 25, b"a"),
        (2, 25, b"b"),
        (2, 55, b"20260301"),
        (3, 1, b"x"),
    ]
    merged, _ = iim.merge(existing, [((2, 25), ("nets", "boats")), ((2, 55), ())])
    assert merged == [
        (1, 0, b"\x00\x04"),
        (1, 90, b"\x1b%G"),
        (2, 0, b"\x00\x04"),
        (2, 25, b"nets"),
        (2, 25, b"boats"),
        (3, 1, b"x"),
    ]


MAXIMA = {
    (2, 5): 64, (2, 25): 64, (2, 40): 256, (2, 55): 8, (2, 80): 32, (2, 90): 32, (2, 92): 32, (2, 95): 32,
    (2, 100): 3, (2, 101): 64, (2, 110): 32, (2, 115): 32, (2, 116): 128, (2, 120): 2000, (2, 122): 32,
}  # fmt: skip
"""Maximum octets (IIM 4.2, chapter 6), typed from the table of the IPTC Photo Metadata Standard 2025.1."""


@pytest.mark.parametrize(("key", "most"), MAXIMA.items())
def test_words_are_cut_between_characters_and_it_is_said(key: tuple[int, int], most: int) -> None:
    merged, reports = iim.merge([], [(key, ("õ" * 1500,))])
    value = next(value for *number, value in merged if tuple(number) == key)
    assert len(value) in (most, most - 1)
    assert value.decode() == "õ" * (most // 2)
    assert reports == [f"IIM {key[0]}:{key[1]:02d} holds {len(value)} of 3000 bytes; XMP holds all."]


TITLE, CITY = ((2, 5), ("Võrgud",)), ((2, 90), ())
WRONG_BLOCKS = [
    (b"no dataset", "This is no IIM dataset."),
    (iim.join([(1, 90, b"\x1b.A"), (2, 5, "Võrgud".encode())]), "The IIM block does not say that it is in UTF-8."),
    (iim.join([(2, 5, "Võrgud".encode()), (1, 90, iim.UTF_8)]), "The records of the IIM block are out of order."),
    (iim.join([(1, 90, iim.UTF_8)]), "IIM 2:05 does not read back."),
    (iim.join([(1, 90, iim.UTF_8), (2, 5, b"Vorgud")]), "IIM 2:05 does not read back."),
    (iim.join([(1, 90, iim.UTF_8), (2, 5, "Võrgud".encode()), (2, 90, b"Port")]), "IIM 2:90 does not read back."),
]


@pytest.mark.parametrize(("block", "said"), WRONG_BLOCKS)
def test_a_block_that_strict_readers_would_misread_is_said(block: bytes, said: str) -> None:
    """IIM 4.2, 1.6 (record 1 first) and 1:90."""
    assert iim.faults(block, (TITLE, CITY)) == [said]


def test_a_block_of_ours_has_no_fault_even_where_a_text_is_cut() -> None:
    ours = (((2, 5), ("Võrgud kuivavad " * 9,)), ((2, 25), ("nets", "boats")), CITY)
    assert iim.faults(iim.join(iim.merge([(2, 90, b"Port")], ours)[0]), ours) == []
