"""Image resource blocks (Photoshop File Formats, “Image Resource Blocks”; XMP Specification Part 3, 1.3.3)."""

import hashlib

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image
from tests.drawn import drawn

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, image_resources
from boxlore.formats.image_resources import Resource

BOTH_WAYS = [
    (b"", []),
    (b"8BIM\x04\x04\x00\x00\x00\x00\x00\x02ab", [Resource(b"8BIM", 0x0404, b"", b"ab")]),
    (b"8BIM\x04\x0c\x00\x00\x00\x00\x00\x01a\x00", [Resource(b"8BIM", 0x040C, b"", b"a")]),
    (b"MeSa\x04\x0c\x03abc\x00\x00\x00\x00", [Resource(b"MeSa", 0x040C, b"abc", b"")]),
    (b"8BIM\x04\x0c\x02ab\x00\x00\x00\x00\x00", [Resource(b"8BIM", 0x040C, b"ab", b"")]),
]


@pytest.mark.parametrize(("block", "held"), BOTH_WAYS)
def test_both_ways(block: bytes, held: list[Resource]) -> None:
    assert image_resources.split(block) == (held, b"")
    assert image_resources.join(held) == block


@drawn(100)
@given(
    st.lists(
        st.builds(
            Resource,
            st.sampled_from([b"8BIM", b"MeSa", b"PHUT"]),
            st.integers(0, 65535),
            st.binary(max_size=9),
            st.binary(max_size=9),
        )
    )
)
def test_joining_and_splitting_are_inverse(held: list[Resource]) -> None:
    assert image_resources.split(image_resources.join(held)) == (held, b"")


REFUSALS = [
    (b"8BIM\x04\x04\x00\x00\x00\x00\x00\x09ab", 0),
    (b"8BIM\x04\x0c\x00\x00\x00\x00\x00\x008BIM\x04\x04\x00\x00\x00\x00\x00\x09", 12),
    (b"8BIM\x04\x04\x20abcdef", 0),
]


@pytest.mark.parametrize(("block", "offset"), REFUSALS)
def test_a_resource_past_the_end_is_refused(block: bytes, offset: int) -> None:
    with pytest.raises(ByteFault) as caught:
        image_resources.split(block)
    assert (caught.value.offset, caught.value.clause) == (offset, image_resources.CLAUSE)


def test_other_signatures_names_thumbnails_and_the_tail_survive() -> None:
    others = [Resource(b"8BIM", 0x040C, b"", b"thumb"), Resource(b"MeSa", 0x0404, b"name", b"x")]
    block, _, reports = image_resources.captioned(
        image_resources.join(others) + b"\x01tail", Embedding(iim=(((2, 5), ("A",)),))
    )
    held, tail = image_resources.split(block)
    assert held[2:] == others
    assert tail == b"\x01tail"
    assert reports == []


def iim_block(*texts: tuple[int, str]) -> bytes:
    return iim.join([(2, number, words.encode()) for number, words in texts])


def test_the_digest_is_that_of_the_block_to_the_byte() -> None:
    old = iim_block((5, "old"))
    held = [Resource(b"8BIM", 0x0404, b"", old), Resource(b"8BIM", 0x0425, b"", hashlib.md5(old).digest())]
    block, alone, reports = image_resources.captioned(image_resources.join(held), Embedding(iim=(((2, 5), ("new",)),)))
    data = {one.id: one.data for one in image_resources.split(block)[0]}
    assert (data[0x0404], data[0x0425], reports) == (alone, hashlib.md5(alone).digest(), [])


def test_a_wrong_digest_is_said_and_put_right() -> None:
    held = [Resource(b"8BIM", 0x0404, b"", iim_block((90, "Haapsalu"))), Resource(b"8BIM", 0x0425, b"", bytes(16))]
    block, alone, reports = image_resources.captioned(image_resources.join(held), Embedding())
    assert reports == ["The IIM block was changed by a program that left its digest as it was."]
    assert (2, 90, b"Haapsalu") in iim.split(alone)
    assert image_resources.captioned(block, Embedding())[2] == []


def test_several_blocks_are_joined_and_what_differs_is_said() -> None:
    blocks = [iim_block((5, "one"), (90, "Haapsalu")), iim_block((5, "two"), (101, "Estonia"))]
    held = [Resource(b"8BIM", 0x0404, b"", one) for one in blocks]
    _, alone, reports = image_resources.captioned(image_resources.join(held), Embedding())
    assert [one for one in iim.split(alone) if one[0] == 2][1:] == [
        (2, 5, b"one"),
        (2, 90, b"Haapsalu"),
        (2, 101, b"Estonia"),
    ]
    assert reports == [
        "A further IIM block says something else of 2:05; the first was used.",
        "The file holds 2 IIM blocks; they were joined.",
    ]


def test_two_equal_blocks_differ_in_nothing() -> None:
    held = [Resource(b"8BIM", 0x0404, b"", iim_block((5, "one")))] * 2
    assert image_resources.captioned(image_resources.join(held), Embedding())[2] == [
        "The file holds 2 IIM blocks; they were joined."
    ]


def test_a_block_elsewhere_in_the_file_goes_before_and_a_difference_is_said() -> None:
    held = image_resources.join([Resource(b"8BIM", 0x0404, b"", iim_block((5, "inner")))])
    _, alone, reports = image_resources.captioned(held, Embedding(), iim_block((5, "outer")))
    assert (2, 5, b"outer") in iim.split(alone)
    assert reports == ["The file holds two IIM blocks that differ; that of tag 33723 was used."]
    assert image_resources.captioned(held, Embedding(), iim_block((5, "inner")))[2] == []


def test_an_exif_block_inside_loses_the_place_of_capture() -> None:
    made = Image.Exif()
    made.get_ifd(0x8825)[1], made.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    for data in (made.tobytes().removeprefix(b"Exif\x00\x00"), b"no exif"):
        held = image_resources.join([Resource(b"8BIM", 0x0422, b"", data)])
        block, _, _ = image_resources.captioned(held, Embedding())
        kept = next(one.data for one in image_resources.split(block)[0] if one.id == 0x0422)
        assert len(kept) == len(data)
        assert kept == data if data == b"no exif" else not exif.facts(exif.block(kept)).has_gps


def test_for_outside_nothing_of_the_old_is_left() -> None:
    held = image_resources.join(
        [Resource(b"8BIM", 0x040C, b"", b"thumb"), Resource(b"8BIM", 0x0404, b"", iim_block((5, "o")))]
    )
    block, _, _ = image_resources.captioned(held, Embedding(iim=(((2, 5), ("A",)),), drop_text=True))
    assert [one.id for one in image_resources.split(block)[0]] == [0x0404, 0x0425]


def test_faults_of_a_block() -> None:
    ours = Embedding(iim=(((2, 5), ("Nets",)),))
    block, iim_block, _ = image_resources.captioned(b"", ours)
    assert image_resources.faults(block, ours) == []
    assert image_resources.faults(b"", Embedding()) == []
    assert image_resources.faults(b"", ours)  # there is none, and there should be one
    other = image_resources.Resource(b"8BIM", image_resources.IIM, b"", iim_block)
    digest = "The file does not have one IIM block with its digest."
    assert image_resources.faults(image_resources.join([other]), ours) == [digest]
    assert image_resources.faults(block + image_resources.join([other]), ours) == [digest]
    assert image_resources.faults(block[:-9], ours) == ["This image resource runs past the end."]
