"""The composer of the album's pages: its promises, on pages of every shape (common practice, no source)."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.sheets.album_layout import COLUMNS, MOST_TOGETHER, Area, Piece, Slot, compose

A4 = Area(wide=182.0, high=262.0, paper=210.0 * 297.0, narrowest=46.0)
A5 = Area(wide=120.0, high=175.0, paper=148.0 * 210.0, narrowest=46.0)


def heights(letters: int, area: Area = A4) -> dict[int, float]:
    """Of words that take 4.6 mm a line of 2 mm letters."""
    return {count: 4.6 * (1 + -(-letters * 2 // area.width(count))) for count in range(1, COLUMNS + 1)}


def piece(shape: float, letters: int, head: float = 0.0, stacked: float = 0.0, spared: int = 0) -> Piece:
    """A photograph, with so many letters of its words that may be spared, in each of two steps."""
    briefer = [heights(max(letters - spared * step, 0)) for step in (1, 2)] if spared else []
    return Piece(shape, heights(letters), head, stacked, briefer)


shapes = st.floats(0.3, 4.0)
pieces = st.lists(
    st.builds(
        piece,
        shapes,
        st.integers(0, 1500),
        st.sampled_from([0.0, 0.0, 0.0, 15.0]),
        st.sampled_from([0.0, 0.5, 1.0]),
        st.sampled_from([0, 100, 700]),
    ),
    min_size=1,
    max_size=14,
)


def high_of(slot: Slot, of: Piece, area: Area) -> float:
    words = (of.heights, *of.briefer)[min(slot.brief, len(of.briefer))][
        max(count for count in area.columns if area.width(count) <= slot.words + 1e-6)
    ]
    return max(slot.high, words) if slot.beside else slot.high + area.gap + words


@drawn(40)
@given(pieces, st.sampled_from([A4, A5]))
def test_order_stays_and_nothing_overlaps_or_leaves_the_page(photographs: list[Piece], area: Area) -> None:
    pages = compose(photographs, area)
    assert [slot.at for page in pages for slot in page] == list(range(len(photographs)))
    for page in pages:
        assert len(page) <= MOST_TOGETHER
        boxes = []
        for slot in page:
            shape = photographs[slot.at].stacked if slot.stacked else photographs[slot.at].shape
            assert slot.wide / slot.high == pytest.approx(shape)
            assert slot.x + slot.wide <= area.wide + 1e-6
            if slot.flows:
                assert len(page) == 1
                continue
            bottom = slot.y + high_of(slot, photographs[slot.at], area)
            assert bottom <= area.high + 0.1
            right = slot.x + (slot.wide + area.gutter + slot.words if slot.beside else max(slot.wide, slot.words))
            boxes.append((slot.x, slot.y - photographs[slot.at].head, right, bottom))
        for at, box in enumerate(boxes):
            for after in boxes[at + 1 :]:
                apart = after[0] >= box[2] - 1e-6 or after[1] >= box[3] - 1e-6
                assert apart, (box, after)


@drawn(40)
@given(pieces)
def test_a_chapter_begins_at_the_left_of_a_row(photographs: list[Piece]) -> None:
    for page in compose(photographs, A4):
        for slot in page:
            if photographs[slot.at].head:
                assert slot.x == 0
                assert all(before.y + before.high <= slot.y for before in page if before.at < slot.at)


@pytest.mark.parametrize("shape", [0.7, 1.0, 1.4])
def test_pages_of_usual_photographs_are_mostly_picture(shape: float) -> None:
    """Twelve of one shape with a caption of 160 letters: every page but the last fills what is wanted."""
    pages = compose([piece(shape, 160) for _ in range(12)], A4)
    for page in pages[:-1]:
        assert sum(slot.wide * slot.high for slot in page) / A4.paper >= 0.45


def test_more_words_make_fewer_photographs_a_page() -> None:
    counts = [len(compose([piece(1.4, letters)] * 24, A4)) for letters in (60, 400, 1200)]
    assert all(fewer <= more for fewer, more in pairwise(counts)) and counts[0] < counts[-1]


def test_a_photograph_with_too_many_words_gets_pages_of_its_own() -> None:
    pages = compose([piece(1.4, 100), piece(1.4, 30_000), piece(1.4, 100)], A4)
    assert [[slot.flows for slot in page] for page in pages] == [[False], [True], [False]]


def test_a_panorama_goes_across() -> None:
    pages = compose([piece(1.4, 100), piece(4.0, 100), piece(1.4, 100)], A4)
    panorama = next(slot for page in pages for slot in page if slot.at == 1)
    assert panorama.wide >= A4.wide * 0.7


def filled(page: list[Slot]) -> float:
    return sum(slot.wide * slot.high for slot in page) / A4.paper


def test_words_are_briefer_where_they_would_leave_little_picture_and_only_there() -> None:
    """Common practice, no source: what is long stands at the end of a book, with its page beside the picture."""
    whole, briefer = (compose([piece(1.4, 900, spared=spared)] * 2, A4)[0] for spared in (0, 400))
    assert filled(briefer) > filled(whole) and briefer[0].brief
    assert not any(slot.brief for page in compose([piece(1.4, 100, spared=50)] * 12, A4)[:-1] for slot in page)


def test_a_back_stands_under_its_front_where_more_is_picture_so() -> None:
    ((slot,),) = compose([piece(2.8, 200, stacked=0.7)], A4)
    assert slot.stacked and filled([slot]) > 0.45
    ((slot,),) = compose([piece(1.3, 200, stacked=0.3)], A4)
    assert not slot.stacked


def test_a_picture_of_few_pixels_is_no_larger_than_they_bear() -> None:
    """Beside others, alone, and where its words run on."""
    small = Piece(1.0, heights(100), most=30.0)
    for photographs in ([piece(1.3, 100), small, piece(0.8, 100)], [small], [Piece(1.0, heights(9000), most=30.0)]):
        slots = [slot for page in compose(photographs, A4) for slot in page]
        assert all(slot.high <= photographs[slot.at].most + 1e-6 for slot in slots)
    both = Piece(2.0, heights(2500), stacked=0.5, most=30.0)
    assert all(slot.wide <= 60.0 + 1e-6 for page in compose([both], A4) for slot in page)
