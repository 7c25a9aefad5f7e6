"""Tampered bags: our check against the Library of Congress's bagit (PyPI, 1.9), which knows RFC 8493 by itself.

Whatever bagit finds wrong we find wrong; where we are stricter, the row names the clause of RFC 8493.
"""

import hashlib
import shutil
from collections.abc import Callable
from pathlib import Path

import bagit
import pytest
from tests.every_row import every_row

from boxlore.exports.bag import Payload, write_bag
from boxlore.exports.bag_check import verify_bag

FILES = {"scans/TRA-0001_f.jpg": b"front", "scans/TRA-0001_b.jpg": b"back", "metadata/oai_dc.xml": b"<x/>"}
INFO = {"Source-Organization": "Rourke family, Port Chalmers", "Bag-Count": "1 of 2"}


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small bag as we write it."""
    folder = tmp_path_factory.mktemp("bags") / "whole"
    write_bag(folder, [Payload(path, data) for path, data in FILES.items()], INFO, tags={"README.html": b"<p>"})
    return folder


def edited(name: str, change: Callable[[str], str]) -> Callable[[Path], None]:
    """A tag file changed, its digest in the tag manifests made anew: only what it says is at fault."""

    return sealed(unsealed(name, change))


def unsealed(name: str, change: Callable[[str], str]) -> Callable[[Path], None]:
    def tamper(bag: Path) -> None:
        path = bag / name
        path.write_bytes(change(path.read_bytes().decode()).encode())

    return tamper


def _seal(bag: Path) -> None:
    """Make the tag manifests anew for the tag files that are there."""
    for algorithm in ("sha256", "sha512"):
        tags = sorted(path for path in bag.glob("*") if path.is_file() and not path.name.startswith("tagmanifest"))
        lines = [f"{hashlib.new(algorithm, path.read_bytes()).hexdigest()}  {path.name}\n" for path in tags]
        (bag / f"tagmanifest-{algorithm}.txt").write_text("".join(lines), "utf-8")


def written(name: str, data: bytes) -> Callable[[Path], None]:
    def tamper(bag: Path) -> None:
        (bag / name).parent.mkdir(parents=True, exist_ok=True)
        (bag / name).write_bytes(data)

    return tamper


def removed(*names: str) -> Callable[[Path], None]:
    def tamper(bag: Path) -> None:
        for name in names:
            (bag / name).unlink()

    return tamper


def without(text: str) -> Callable[[str], str]:
    """Without the lines that hold the text."""
    return lambda words: "".join(line for line in words.splitlines(True) if text not in line)


def moved(old: str, new: str) -> Callable[[Path], None]:
    def tamper(bag: Path) -> None:
        (bag / old).rename(bag / new)

    return tamper


def linked(bag: Path) -> None:
    (bag / "data/link").symlink_to(bag / FRONT)


def sealed(*steps: Callable[[Path], None]) -> Callable[[Path], None]:
    def tamper(bag: Path) -> None:
        for step in steps:
            step(bag)
        _seal(bag)

    return tamper


M512, M256 = "manifest-sha512.txt", "manifest-sha256.txt"
FRONT = "data/scans/TRA-0001_f.jpg"
FETCH = f"http://localhost/x 5 {FRONT}\n".encode()
BOTH = (f"tag{M512}", f"tag{M256}")
OXUM = "Payload-Oxum: 13.3"


def in_both(change: Callable[[str], str]) -> Callable[[Path], None]:
    return sealed(edited(M512, change), edited(M256, change))


TAMPERED: list[tuple[str, Callable[[Path], None], str, str]] = [
    ("nothing", lambda bag: None, "", ""),
    ("a payload file changed", written(FRONT, b"fronT"), f"{FRONT} has changed", ""),
    ("a payload file longer", written(FRONT, b"front "), f"{FRONT} has changed", ""),
    ("a payload file emptied", written(FRONT, b""), f"{FRONT} has changed", ""),
    ("a payload file gone", removed(FRONT), f"{FRONT} is listed but not there", ""),
    ("a payload file renamed", moved(FRONT, "data/scans/1.jpg"), "data/scans/1.jpg is in no manifest", ""),
    ("a payload file added", written("data/more.txt", b"x"), "data/more.txt is in no manifest", ""),
    ("a file added in a new folder", written("data/new/more.txt", b"x"), "data/new/more.txt is in no manifest", ""),
    ("the folder data gone", lambda bag: shutil.rmtree(bag / "data"), "no folder data", ""),
    ("bagit.txt gone", removed("bagit.txt"), "it has no bagit.txt", ""),
    ("bagit.txt empty", edited("bagit.txt", lambda words: ""), "bagit.txt does not say", ""),
    ("bagit.txt foreign", edited("bagit.txt", lambda words: "hello\n"), "bagit.txt does not say", ""),
    ("bagit.txt without a version", edited("bagit.txt", without("Version")), "bagit.txt does not say", ""),
    ("bagit.txt without an encoding", edited("bagit.txt", without("Encoding")), "bagit.txt does not say", ""),
    ("another version", edited("bagit.txt", lambda words: words.replace("1.0", "9.9")), "says version 9.9", ""),
    ("an encoding there is none of", edited("bagit.txt", lambda words: words.replace("UTF-8", "x9")),
     "encoding “x9”", ""),
    ("a byte order mark in bagit.txt", edited("bagit.txt", lambda words: f"\ufeff{words}"), "byte order mark", ""),
    ("bagit.txt changed and not sealed", unsealed("bagit.txt", lambda words: words.replace("1.0", "0.97")),
     "bagit.txt has changed", ""),
    ("bag-info.txt changed", written("bag-info.txt", b"Bag-Count: 1 of 1\n"), "bag-info.txt has changed", ""),
    ("bag-info.txt gone", removed("bag-info.txt"), "bag-info.txt is listed but not there", ""),
    ("the page changed", written("README.html", b"<b>"), "README.html has changed", ""),
    ("Payload-Oxum, bytes", edited("bag-info.txt", lambda words: words.replace(OXUM, "Payload-Oxum: 14.3")),
     "says 14 bytes in 3 files; there are 13 bytes in 3", ""),
    ("Payload-Oxum, files", edited("bag-info.txt", lambda words: words.replace(OXUM, "Payload-Oxum: 13.4")),
     "says 13 bytes in 4 files", ""),
    ("Payload-Oxum no number", edited("bag-info.txt", lambda words: words.replace(OXUM, "Payload-Oxum: many")),
     "not bytes and files", ""),
    ("Payload-Oxum twice", edited("bag-info.txt", lambda words: f"{words}{OXUM}\n"), "Payload-Oxum twice", "2.2.2"),
    ("a day of another form", edited("bag-info.txt", lambda words: f"{words}Bagging-Date: 28.11.2026\n"),
     "Bagging-Date is “28.11.2026”", "2.2.2"),
    ("the third bag of two", edited("bag-info.txt", lambda words: words.replace("1 of 2", "3 of 2")),
     "no such bag of so many", "2.2.2"),
    ("a bag of how many nobody knows", edited("bag-info.txt", lambda words: words.replace("1 of 2", "3 of ?")), "", ""),
    ("a count that is none", edited("bag-info.txt", lambda words: words.replace("1 of 2", "the first")),
     "Bag-Count is “the first”", "2.2.2"),
    ("a line of bag-info.txt that is none", edited("bag-info.txt", lambda words: f"{words}no label\n"),
     "is no label with a value", ""),
    ("a file in one manifest only", edited(M512, without(FRONT)), f"{FRONT} is not in {M512}", "3"),
    ("a file in the other only", edited(M256, without(FRONT)), f"{FRONT} is not in {M256}", "3"),
    ("a file in no manifest", in_both(without(FRONT)), f"{FRONT} is in no manifest", ""),
    ("no payload manifest", sealed(removed(M512, M256)), "nothing can be checked", ""),
    ("an empty manifest", edited(M512, lambda words: ""), f"is not in {M512}", "3"),
    ("a digest changed", edited(M512, lambda words: words.replace(words[:4], "0000", 1)), "has changed", ""),
    ("a digest cut short", edited(M512, lambda words: words[9:]), "has changed", ""),
    ("a line that is none", edited(M512, lambda words: f"{words}nothing\n"), "is no digest with a path", "2.1.3"),
    ("bytes that are no UTF-8 in a manifest", sealed(written(M512, b"\xff data/x\n")),
     "bytes that are no UTF-8", ""),
    ("a path out of the bag", edited(M512, lambda words: f"{words}{'0' * 128}  data/../../x\n"), "leads out", ""),
    ("an absolute path", edited(M512, lambda words: f"{words}{'0' * 128}  /etc/x\n"), "leads out", ""),
    ("a file outside data/ in a manifest", edited(M512, lambda words: f"{words}{'0' * 128}  README.html\n"),
     "a file outside data/", ""),
    ("a file listed that is not there", edited(M512, lambda words: f"{words}{'0' * 128}  data/gone.jpg\n"),
     "data/gone.jpg is listed but not there", ""),
    ("a file listed twice, with two digests", edited(M512, lambda words: f"{words}{'0' * 128}  {FRONT}\n"),
     "twice, with two digests", ""),
    ("a file listed twice, with one digest", in_both(lambda words: words + words.splitlines(True)[0]),
     "lists data/metadata/oai_dc.xml twice.", ""),
    ("bytes that are no UTF-8 in bag-info.txt",
     sealed(written("bag-info.txt", "Source-Organization: Gemeinde Köln\n".encode("latin-1"))),
     "bag-info.txt has bytes that are no UTF-8", ""),
    ("an algorithm there is none of", sealed(moved(M256, "manifest-sha1000.txt")),
     "no digest is called sha1000", "2.4"),
    ("two payload files exchanged", sealed(moved(FRONT, "data/x"), moved("data/scans/TRA-0001_b.jpg", FRONT),
                                           moved("data/x", "data/scans/TRA-0001_b.jpg")), "has changed", ""),
    ("a tag manifest that lists what is not there", unsealed(BOTH[0], lambda words: f"{words}{'0' * 128}  gone.txt\n"),
     "gone.txt is listed but not there", ""),
    ("a tag file in one tag manifest only", unsealed(BOTH[0], without("README")),
     f"README.html is not in {BOTH[0]}", "2.2.1"),
    ("files to be fetched, all there", sealed(written("fetch.txt", FETCH)),
     "fetch.txt asks", "2.2.3"),
    ("a file to be fetched that is not there", sealed(removed(FRONT), written("fetch.txt", FETCH)),
     "fetch.txt asks", ""),
    ("a link in the payload", linked, "is a link", ""),
    ("what a system adds", written("data/scans/Thumbs.db", b"x"),
     "data/scans/Thumbs.db is in no manifest. The computer added it", ""),
    ("what a system adds outside the payload", written("Thumbs.db", b"x"), "", ""),
    ("a further tag file, in no tag manifest", written("note.txt", b"x"), "", ""),
    ("no tag manifests", removed(*BOTH), "", ""),
]  # fmt: skip
"""What was done, how, what we say of it ('' for nothing), and where we and bagit differ: the clause."""


def _bagit_refuses(folder: Path) -> bool:
    try:
        bagit.Bag(str(folder)).validate(fast=False)
    except (bagit.BagError, OSError, ValueError, LookupError):
        return True
    return False


def test_there_are_forty_tampered_bags() -> None:
    """Of those in which we and bagit agree; the others are those in which we are stricter."""
    assert sum(not clause for _, _, _, clause in TAMPERED) >= 40


@every_row(("what", "tamper", "said", "clause"), TAMPERED)
def test_a_tampered_bag_is_named_as_bagit_finds_it(
    what: str, tamper: Callable[[Path], None], said: str, clause: str, whole: Path, tmp_path: Path
) -> None:
    bag = tmp_path / what
    shutil.copytree(whole, bag)
    tamper(bag)
    messages = [finding.message for finding in verify_bag(bag)]
    assert bool(messages) is bool(said) and any(said in message for message in messages) is bool(said), messages
    refused = _bagit_refuses(bag)
    if clause:
        assert refused is not bool(said)
    else:
        assert refused is bool(said), "bagit"
