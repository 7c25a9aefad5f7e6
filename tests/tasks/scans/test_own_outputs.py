"""What Boxlore made itself is known where nothing else but one sign tells it; what only looks so is a scan.

Where a copy or a package stands and what lists it are rules of our own, no outside source. The description of a
package: RFC 8493, 2.2.2. Pictures are made by Pillow, tables by the csv module.
"""

import csv
import os
from collections.abc import Callable, Iterator
from hashlib import sha256
from pathlib import Path

import pytest
from PIL import Image

from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.output_paths import COPIES_LIST, OFFER_LIST, PAGES_LIST, write_output
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.own_outputs import MOST_LIST, OwnOutputs
from boxlore.tasks.scans.pairing import by_suffix


def picture(path: Path, shade: int = 120) -> Path:
    path.parent.mkdir(parents=True, exist_ok=True)
    Image.new("L", (20, 10), shade).save(path)
    return path


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    """The open collection of one scan, T2A-0001."""
    start(tmp_path / "tamm", Settings(title="Tamm and Rourke", prefix="T2"))
    with open_collection(tmp_path / "tamm") as opened:
        take_in(opened, by_suffix([picture(tmp_path / "first.png", 7)]), IntakeOptions())
        yield opened


def table(path: Path, *rows: dict[str, str]) -> Path:
    with open(path, "w", encoding="utf-8", newline="") as page:
        writer = csv.DictWriter(page, list(rows[0]))
        writer.writeheader()
        writer.writerows(rows)
    return path


def copied(collection: Collection, **changed: str) -> dict[str, str]:
    _, facts = next(iter(collection.store.scans()))
    return {"copy": "1/x.png", "sha256_of_scan": facts.sha256, "made_for": "family"} | changed


def written(collection: Collection, out: Path) -> None:
    collection.over = True
    write_output(collection, out / "x.png", (out / "1" / "x.png").read_bytes())


def oversized(path: Path) -> None:
    with open(path, "wb") as file:
        file.truncate(MOST_LIST + 1)


SIGNS: list[tuple[str, str, Callable[[Collection, Path], object]]] = [
    ("an output", "1/x.png", written),
    ("a copy", "1/x.png", lambda own, out: (out / "1" / "x.png.xmp").write_text(f"<i>urn:uuid:{own.id.upper()}</i>")),
    ("a copy", "1/x.png", lambda own, out: table(out / COPIES_LIST, copied(own))),
    ("a picture of an offer", "pictures/T2A-0001.jpg",
     lambda _, out: table(out / OFFER_LIST, {"Number": "T2A-0001", "Wanted": ""})),
    ("a picture of pages", "T2A-0001_a.png", lambda _, out: (out / PAGES_LIST).write_text("T2A-0001_a.png\nx.png\n")),
    ("a part of a package", "data/x.png",
     lambda own, out: (out / "bag-info.txt").write_text(f"External-Identifier: urn:uuid:{own.id}\n")),
    ("", "1/x.png", lambda own, out: (out / "1" / "x.png.xmp").write_text("<i>urn:uuid:another</i>")),
    ("", "1/x.png", lambda own, out: oversized(out / "1" / "x.png.xmp")),
    ("", "1/x.png", lambda own, out: (out / "1" / "x.png").write_bytes(b"\x89PNG\r\n\x1a\n\x00")),
    ("", "1/x.png", lambda own, out: table(out / COPIES_LIST, copied(own, sha256_of_scan="0" * 64))),
    ("", "1/x.png", lambda own, out: table(out / COPIES_LIST, {"copy": "1/x.png"})),
    ("", "1/x.png", lambda own, out: (out / COPIES_LIST).write_text("copy,sha256_of_scan,made_for\n" + "x" * 200_000)),
    ("", "1/x.png", lambda own, out: oversized(out / COPIES_LIST)),
    ("", "1/x.png", lambda own, out: (out / COPIES_LIST).mkdir()),
    ("", "pictures/T2A-0009.jpg", lambda _, out: table(out / OFFER_LIST, {"Number": "T2A-0009", "Wanted": ""})),
    ("", "data/x.png", lambda _, out: (out / "bag-info.txt").write_text("External-Identifier: urn:uuid:another\n")),
    ("", "x.png", lambda own, out: (out / "bag-info.txt").write_text(f"External-Identifier: urn:uuid:{own.id}\n")),
]  # fmt: skip


@pytest.mark.parametrize(("what", "name", "sign"), SIGNS)
def test_one_sign_is_enough_and_what_only_looks_like_one_is_none(
    what: str, name: str, sign: Callable[[Collection, Path], object], collection: Collection, tmp_path: Path
) -> None:
    out = tmp_path / "out"
    path = picture(out / name)
    picture(out / "1" / "x.png")
    assert OwnOutputs(collection).what_is_no_scan(path) == ""
    sign(collection, out)
    own = OwnOutputs(collection)
    assert [own.what_is_no_scan(path), own.what(path, sha256(path.read_bytes()).hexdigest())] == [what, what]


def test_what_the_collection_keeps_and_what_is_no_file(collection: Collection, tmp_path: Path) -> None:
    own = OwnOutputs(collection)
    assert own.what_is_no_scan(picture(collection.folder / "papers" / "will.png")) == "what the collection keeps"
    assert own.what_is_no_scan(picture(collection.folder / "scans" / "loose.png", 9)) == ""
    os.mkfifo(tmp_path / "pipe")
    assert [own.what_is_no_scan(tmp_path / name) for name in ("pipe", "none", "tamm")] == ["", "", ""]


UNREADABLE = Path("/proc/self/mem")
"""A regular file of which no byte can be read at its begin, by whomever (proc(5))."""


@pytest.mark.skipif(not UNREADABLE.is_file(), reason="only Linux has such a file")
@pytest.mark.parametrize("name", ["x.png", COPIES_LIST, OFFER_LIST, PAGES_LIST, "bag-info.txt", "x.png.xmp"])
def test_what_cannot_be_read_tells_nothing(name: str, collection: Collection, tmp_path: Path) -> None:
    if name != "x.png":
        picture(tmp_path / "out" / "x.png")
    (tmp_path / "out").mkdir(exist_ok=True)
    (tmp_path / "out" / name).symlink_to(UNREADABLE)
    assert OwnOutputs(collection).what_is_no_scan(tmp_path / "out" / "x.png") == ""
