"""Our own wording is kept between runs, by what the program's files hold (a rule of our own)."""

from collections.abc import Iterator
from dataclasses import replace
from hashlib import sha256
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.core.records.cast import person
from tests.drawn import drawn

from boxlore.core.records.audience_levels import To
from boxlore.core.records.living import Life
from boxlore.core.records.withheld import withhold
from boxlore.tasks.collection import own_wording
from boxlore.tasks.collection.own_wording import KEPT, numbers_alike, without_codes, wording


@pytest.fixture
def kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    monkeypatch.setenv("BOXLORE_CACHE", str(tmp_path / "cache"))
    monkeypatch.setattr(own_wording, "WRITERS", ("sheets", "tasks/sitting/time_log.py"))  # all take seconds to read
    yield tmp_path / "cache" / KEPT
    wording.cache_clear()


def anew() -> own_wording.Wording:
    wording.cache_clear()
    return wording()


def test_what_was_kept_is_what_the_files_say_and_damage_is_read_again(kept: Path) -> None:
    read = anew()
    assert len(read) > 100
    whole = kept.read_bytes()
    assert anew() == read
    first, _, lines = whole.partition(b"\n")
    more = first + b"\n" + lines + b"\nMaeve"
    damages = (b"", first, first + b"\n" + lines[:-9], more, b"\xff" + whole, b"0" * 64 + whole[64:])
    for damaged in damages:
        kept.write_bytes(damaged)
        assert anew() == read, damaged[:99]
        assert kept.read_bytes() == whole


def test_what_is_kept_is_used_for_the_same_files_alone(kept: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = anew()
    assert "Maeve" not in before and kept.is_file()
    lines = kept.read_text().partition("\n")[2] + "\nMaeve"
    kept.write_text(f"{kept.read_text()[:64]} {sha256(lines.encode()).hexdigest()}\n{lines}")
    assert anew()["maeve"] == (("Maeve",),)
    monkeypatch.setattr(own_wording, "WRITERS", ("sheets/labels.py",))
    assert len(anew()) < len(before)


def test_where_nothing_can_be_kept_it_is_read_each_time(
    kept: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "a file").write_text("")
    monkeypatch.setenv("BOXLORE_CACHE", str(tmp_path / "a file" / "below"))
    assert len(anew()) > 100 and not kept.exists()
    monkeypatch.delenv("BOXLORE_CACHE")
    monkeypatch.delenv("XDG_CACHE_HOME", raising=False)
    monkeypatch.setattr(Path, "home", _no_home)
    assert len(anew()) > 100


def _no_home() -> Path:
    raise RuntimeError("no home")


CODES = (  # RFC 9562, 4 (UUID); RFC 3339, 5.6 (a moment); FIPS 180-4 (a digest)
    ("urn:uuid:01a21e0f-1c44-7e74-9f2b-eb5eb979aaf5", "urn:uuid:¦"),
    ("<urn:uuid:01a21e0f-1c44-7e74-9f2b-eb5eb979aaf5#body>", "<urn:uuid:¦#body>"),
    ("2026-11-27T17:30:48.295Z", "¦"),
    ("told 2026-11-27T17:30:48Z by Mia", "told ¦ by Mia"),
    ("9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08 scans/mia.jpg", "¦ scans/mia.jpg"),
    ("Mia Rourke, 12 May 1938, Reval", "Mia Rourke, 12 May 1938, Reval"),
    ("x2026-11-27T17:30:48Zoe", "x2026-11-27T17:30:48Zoe"),
)


def test_a_code_is_blanked_and_a_word_is_not() -> None:
    assert [without_codes(text) for text, _ in CODES] == [blanked for _, blanked in CODES]


NUMBERS = "1 7 31 004 300 1499 1500 1912 2099 2100 0042 01928 123456789012 1912-05-12".split()
WORDS = "Mia Rourke May June Will Rose Mark May's m1a R0urke &#77;ia %4Dia Box Harbour Ruth in the year M. Rou-".split()
SIGNS = (" ", ", ", "; ", "-", " / ", "\n", "“", "” ", " (", ") ", "_", "#", ".", "")
HIDDEN = [
    replace(person(given, given, family), calls=(given,))
    for given, family in (("Mia", "Rourke"), ("May", "Field"), ("Rose", "Marsh"), ("Will", "Box"), ("Mark", "June"))
]
WITHHELD = withhold(HIDDEN, {one.id: Life(living=True, because="") for one in HIDDEN}, To.OUTSIDE)


@drawn(100)
@given(st.lists(st.tuples(st.sampled_from([*NUMBERS, *WORDS]), st.sampled_from(SIGNS)), min_size=1, max_size=9))
def test_what_finds_names_sees_no_other_in_numbers_that_are_alike(pieces: list[tuple[str, str]]) -> None:
    """Our own rule: what surely names somebody withheld does so whatever numbers stand beside."""
    text = "".join(word + sign for word, sign in pieces)
    alike = numbers_alike(text)
    assert len(alike) == len(text)
    assert WITHHELD.surely_finds(alike) or not WITHHELD.surely_finds(text), text


def test_numbers_that_stand_alone_are_alike_and_codes_are_not() -> None:
    assert numbers_alike("TRA-0042; Box 7 / Folder 12, 1912-05-12") == "TRA-1111; Box 1 / Folder 11, 1928-11-11"
    assert numbers_alike("R0urke &#77;ia %4Dia m1a 12_Mia") == "R0urke &#77;ia %4Dia m1a 12_Mia"
