"""The one pass over a file finds each name that a pattern of all names (Python's `re`) finds, and no other."""

import io
import re

from hypothesis import given
from hypothesis import strategies as st

from boxlore.tasks.collection.byte_search import AROUND, CHUNK, _search_for

NAMES = ("Mia Rourke", "Mia Rourke-Tamm", "Õie Saar", "Li Ao", "О. Волошина", "O Ng", "ann tamm", "Ann Tammik")
PIECES = (*NAMES, *map(str.upper, NAMES), "s", " ", "\n", "…", "õ", "joann", "mia", "rourke", "-", "Q")


def by_pattern(names: frozenset[str], data: bytes) -> list[str]:
    spelled = {form.encode().lower() for name in names for form in (name, name.lower(), name.upper())}
    alone = re.compile(rb"(?<![a-z])(?:" + b"|".join(map(re.escape, sorted(spelled))) + rb")(?![a-z])")
    texts = {data, data.replace(b"\0", b"")}
    found = [(text, match) for text in texts for match in alone.finditer(text.lower())]
    around = [text[max(0, match.start() - AROUND) : match.end() + AROUND] for text, match in found]
    return sorted({words.decode("utf-8", "replace") for words in around})


MANY = frozenset(f"Nobody Of{letter}here" for letter in "abcdefghijklmnopqrstuvwxyz")
"""So many that the file is gone through once for all."""


@given(
    st.frozensets(st.sampled_from(NAMES), min_size=1),
    st.lists(st.sampled_from(PIECES), max_size=12),
    st.sampled_from(["utf-8", "utf-16-le"]),
    st.sampled_from([frozenset(), MANY]),
)
def test_a_file_is_searched_as_by_a_pattern_of_all_names(
    names: frozenset[str], pieces: list[str], code: str, more: frozenset[str]
) -> None:
    names |= more
    search, data = _search_for(names), "".join(pieces).encode(code)
    assert search is not None
    assert list(search.around(io.BytesIO(data))) == by_pattern(names, data)


def test_a_name_over_the_end_of_a_chunk_is_found() -> None:
    for more in (frozenset[str](), MANY):
        search = _search_for(more | {"Mia Rourke"})
        assert search is not None
        assert list(search.around(io.BytesIO(b"." * (CHUNK - 4) + b"Mia Rourke, 1912")))
        assert not list(search.around(io.BytesIO(b"." * (CHUNK - 4) + b"Mia Rourkes, 1912")))


def test_nobody_is_sought_where_nobody_is_withheld() -> None:
    assert _search_for(frozenset()) is None
