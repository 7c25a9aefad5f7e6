"""The search that proves a strike: every spelling in every byte (rules of our own, no outside source)."""

import csv
import hashlib
import html
import io
import json
import unicodedata
import urllib.parse
from collections.abc import Iterator
from pathlib import Path

import markupsafe
import pytest
import rdflib
import rdflib.plugins.serializers.nt  # it knows how N-Triples escape in ASCII
from lxml import etree

from boxlore.core.statements import Kind, Statement, Subject
from boxlore.store.opening import Store, create
from boxlore.store.strike_proof import CHUNK, Proof, files_holding, pieces, search_folder
from boxlore.store.values import Change
from boxlore.tasks.collection.clock import Clock

WORDS = "Õie & Ülo at Nõmme"


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    (tmp_path / "backups").mkdir()
    with create(tmp_path, clock=Clock()) as opened:
        yield opened


def tell(store: Store, words: str) -> None:
    clock = Clock()
    act, item = clock.new_id(), Subject(Kind.ITEM, clock.new_id())
    statement = Statement(id=clock.new_id(), act=act, subject=item, field="story", words=words, recorded_at=clock.now())
    store.write(Change(act=act, what="told", by="me", recorded_at=clock.now(), statements=(statement,)))


SPELLINGS = {
    "as it is": WORDS.encode(),
    "upper": WORDS.upper().encode(),
    "lower": WORDS.lower().encode(),
    "decomposed": unicodedata.normalize("NFD", WORDS).encode(),
    "UTF-16": WORDS.encode("utf-16-le"),
    "UTF-16 the other way": WORDS.encode("utf-16-be"),
    "JSON": json.dumps(WORDS).encode(),
    "XML": html.escape(WORDS).encode(),
    "across the pieces that are read": bytes(CHUNK - 5) + WORDS.encode(),
}


@pytest.mark.parametrize("data", SPELLINGS.values(), ids=SPELLINGS)
def test_every_spelling_is_found(tmp_path: Path, data: bytes) -> None:
    (tmp_path / "pages").mkdir()
    (tmp_path / "pages" / "held").write_bytes(b"before " + data + b" after")
    (tmp_path / "pages" / "free").write_bytes(b"before and after")
    assert list(files_holding(tmp_path, [WORDS])) == [tmp_path / "pages" / "held"]


def test_a_piece_of_long_words_is_enough_and_a_short_rest_is_none(tmp_path: Path) -> None:
    long = "The red boat lay at the quay of Port Chalmers all that winter, and nobody came for it."
    assert pieces(long) == ["The red boat lay at the quay of Port Cha", "lmers all that winter, and nobody came f"]
    assert pieces("  short ") == ["short"] and pieces(" ") == []
    (tmp_path / "a").write_text("... lmers all that winter, and nobody came f ...", "utf-8")
    (tmp_path / "b").write_text("or it.", "utf-8")
    assert list(files_holding(tmp_path, [long])) == [tmp_path / "a"]


def test_words_that_others_told_too_are_counted_and_not_called_left(store: Store, tmp_path: Path) -> None:
    for words in (WORDS, f"{WORDS}, in summer", "Nothing of it"):
        tell(store, words)
    assert search_folder(tmp_path, [WORDS]) == Proof(again=2, in_rows=(str(tmp_path / "collection.sqlite"),))
    (tmp_path / "backups" / "old.sqlite").write_bytes(b"no database: " + WORDS.encode())
    (tmp_path / "copy.sqlite.txt").write_text(WORDS, "utf-8")
    assert search_folder(tmp_path, [WORDS]).left_in == (
        str(tmp_path / "backups" / "old.sqlite"),
        str(tmp_path / "copy.sqlite.txt"),
    )


def test_no_words_are_nowhere(store: Store, tmp_path: Path) -> None:
    tell(store, WORDS)
    assert search_folder(tmp_path, [" "]) == Proof()


NOISE = hashlib.shake_256(b"pixels").digest(CHUNK * 3)
"""Bytes as a compressed picture has them."""

AS_TEXT = {
    "in a sentence": b"<dc:title>The boat of Ida Tamm</dc:title>",
    "at the end of one": b"The last of them was Ida",
    "in UTF-16": "The boat of Ida Tamm".encode("utf-16-le"),
    "a field of Exif": b"\xff\x01\0Ida\0\xfe",
    "a field of IIM": b"\x1c\x02\x50\x00\x03Ida\x1c\x02",
}
BY_CHANCE = {
    "in pixels": b"\x91\xe4Ida\x07\xb1\x99",
    "in another word": b"Photographed in Florida, by idaho Smith and Idas",
    "half of a wide one": b"\x07\xb1I\0d\0a\0\x99\x91",
}


@pytest.mark.parametrize("data", AS_TEXT.values(), ids=AS_TEXT)
def test_a_short_word_is_found_where_it_is_text(tmp_path: Path, data: bytes) -> None:
    at = CHUNK - 3  # across the pieces that are read
    (tmp_path / "held.jpg").write_bytes(NOISE[:at] + data + NOISE[at:])
    assert list(files_holding(tmp_path, ["Ida"])) == [tmp_path / "held.jpg"]


@pytest.mark.parametrize("data", BY_CHANCE.values(), ids=BY_CHANCE)
def test_bytes_that_spell_a_short_word_by_chance_are_none(tmp_path: Path, data: bytes) -> None:
    (tmp_path / "scan.jpg").write_bytes(NOISE[: CHUNK - 3] + data + NOISE[CHUNK:])
    assert list(files_holding(tmp_path, ["Ida"])) == []


def test_a_file_that_is_the_word_holds_it(tmp_path: Path) -> None:
    (tmp_path / "note").write_bytes(b"Ida")
    assert list(files_holding(tmp_path, ["Ida"])) == [tmp_path / "note"]


def test_a_word_behind_the_mark_of_a_wide_file_is_found(tmp_path: Path) -> None:
    """The byte order mark: Unicode 15, 23.8."""
    (tmp_path / "note").write_bytes("Ida sat in the boat all day".encode("utf-16"))
    assert list(files_holding(tmp_path, ["Ida"])) == [tmp_path / "note"]


QUOTED = """Tobin's "old" mill & barn at Kärdla <1931>, 林"""


def element(text: str, encoding: str) -> bytes:
    node = etree.Element("a", title=text)
    node.text = text
    return bytes(etree.tostring(node, encoding=encoding))


def table(text: str) -> bytes:
    out = io.StringIO()
    csv.writer(out).writerow(["x", text])
    return out.getvalue().encode()


WRITTEN = {
    "XML": element(QUOTED, "utf-8"),
    "XML in ASCII": element(QUOTED, "ascii"),
    "a template": f"<p>{markupsafe.escape(QUOTED)}</p>".encode(),
    "html.escape": html.escape(QUOTED).encode(),
    "HTML in ASCII": html.escape(QUOTED).encode("ascii", "xmlcharrefreplace"),
    "JSON": json.dumps(QUOTED).encode(),
    "JSON in UTF-8": json.dumps(QUOTED, ensure_ascii=False).encode(),
    "N-Triples": rdflib.Literal(QUOTED).n3().encode(),
    "N-Triples in ASCII": rdflib.Literal(QUOTED).n3().encode("ascii", "_rdflib_nt_escape"),
    "CSV": table(QUOTED),
    "an address": urllib.parse.quote(QUOTED).encode(),
    "a form": urllib.parse.urlencode({"q": QUOTED}).encode(),
    "a page in two lines": b"<p>Tobin&#39;s</p>",
}


@pytest.mark.parametrize("name", WRITTEN)
def test_escaped_words_are_found(tmp_path: Path, name: str) -> None:
    """Written by lxml, markupsafe, rdflib and the standard library."""
    (tmp_path / "held").write_bytes(WRITTEN[name])
    struck = "Tobin's\nold mill" if name == "a page in two lines" else QUOTED
    assert list(files_holding(tmp_path, [struck])) == [tmp_path / "held"]
