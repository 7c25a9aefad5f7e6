"""Lines and encodings of tree files.

FamilySearch GEDCOM Specification 7.0, 1.2 (character encoding) and 1.3 (lines); The GEDCOM Standard Release 5.5.1,
chapter 1 (grammar) and chapter 3 (character sets).
"""

import unicodedata

import ansel
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.formats.gedcom_lines import Fault, Node, encoding_of, pointed, records, unescaped

ansel.register()

HEAD = "0 HEAD\n1 GEDC\n2 VERS 5.5.1\n1 CHAR {}\n0 @I1@ INDI\n1 NAME Õie /Mägi/\n0 TRLR\n"

ENCODINGS = [
    ("UTF-8", "utf-8", "utf-8"), ("UTF-8", "utf-8-sig", "utf-8-sig"), ("UNICODE", "utf-16", "utf-16"),
    ("UNICODE", "utf-16-le", "utf-16-le"), ("UNICODE", "utf-16-be", "utf-16-be"), ("ANSI", "cp1252", "cp1252"),
    ("ANSEL", "gedcom", "gedcom"), ("IBMPC", "cp437", "cp437"), ("MACINTOSH", "mac_roman", "mac_roman"),
    ("ISO-8859-1", "iso-8859-1", "iso-8859-1"),
]  # fmt: skip


@pytest.mark.parametrize(("declared", "written", "codec"), ENCODINGS, ids=[row[1] for row in ENCODINGS])
def test_encodings(declared: str, written: str, codec: str) -> None:
    text = HEAD.format(declared)
    if codec in ("cp437", "mac_roman"):
        text = text.replace("Õie", "Älie")
    found = encoding_of(text.encode(written))
    assert (found.codec, found.doubt) == (codec, "")
    assert unicodedata.normalize("NFC", text.encode(written).decode(found.codec)).lstrip("\ufeff") == text


def test_ansel_puts_the_accent_before_its_letter() -> None:
    """5.5.1, chapter 3: ANSEL non-spacing characters precede the letter (E8 is the umlaut)."""
    assert b"M\xe8agi".decode("gedcom") in ("Mägi", "Ma\u0308gi")


def test_what_says_nothing_or_something_strange() -> None:
    assert encoding_of(b"0 HEAD\n1 GEDC\n2 VERS 7.0\n").codec == "utf-8"
    odd = encoding_of(b"0 HEAD\n1 CHAR KLINGON\n")
    assert odd.codec == "utf-8" and "KLINGON" in odd.doubt
    guessed = encoding_of(b"0 HEAD\n1 NAME M\xe4gi\n")
    assert guessed.codec == "cp1252" and guessed.doubt


def read(*lines: str) -> tuple[list[Node], list[Fault]]:
    faults: list[Fault] = []
    return list(records(lines, faults)), faults


def test_levels_pointers_and_joined_text() -> None:
    (head, note), faults = read(
        "0 HEAD", "1 GEDC", "2 VERS 5.5.1", "0 @N1@ NOTE one ", "1 CONC two", "1 CONT", "1 CONT  three"
    )
    assert head.children[0].text("VERS") == "5.5.1" and head.lines == 3
    assert (note.xref, note.value, note.number) == ("N1", "one two\n\n three", 4)
    assert faults == []


REFUSALS = [
    (("no level",), 1, "nothing is above it"),
    (("0 HEAD", "and on"), 2, "kept as a further line"),
    (("0 HEAD", "3 GEDC x"), 2, "jumps to level 3; taken as level 1"),
    (("0 HEAD", "1"), 2, "has no level and tag"),
    (("0 HEAD", "1 @I1@"), 2, "has no level and tag"),
]


@pytest.mark.parametrize(("lines", "number", "why"), REFUSALS)
def test_lines_that_break_the_grammar_are_told(lines: tuple[str, ...], number: int, why: str) -> None:
    _, faults = read(*lines)
    assert [one.number for one in faults] == [number] and why in faults[0].why


def test_nothing_of_a_broken_line_is_dropped() -> None:
    (record,), _ = read("0 @I1@ INDI", "1 NOTE first", "second without a level")
    assert record.children[0].value == "first\nsecond without a level"


def test_at_signs() -> None:
    """7.0, 1.3.4: only a leading at sign is doubled; 5.5.1: every one."""
    assert unescaped("@@a@@b", seven=True) == "@a@@b"
    assert unescaped("a@@b", seven=False) == "a@b"
    assert pointed("@I1@") == "I1"
    assert pointed("@VOID@") == pointed("@#DJULIAN@") == pointed("a@b") == pointed("@@") == ""


@drawn(150)
@given(st.binary(max_size=200) | st.text(alphabet="019 @ABNIDI/\r\n", max_size=120).map(str.encode))
def test_any_bytes_have_an_encoding_and_any_lines_records(data: bytes) -> None:
    text = data.decode(encoding_of(data).codec, "replace")
    faults: list[Fault] = []
    assert all(one.tag for one in records(text.split("\n"), faults))
