"""The demo family's pages: what each audience may see, and what an earlier run left."""

import shutil
from datetime import date
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import Selection, record_of
from boxlore.tasks.outputs.printed_sheets import PrintOrder
from boxlore.tasks.outputs.web_pages import LISTED, pages

FAMILY = PrintOrder(to=To.FAMILY)


@pytest.fixture
def opened(demo: Path):  # type: ignore[no-untyped-def]
    with open_collection(demo, write=False, on_day=date(2026, 11, 25)) as collection:
        yield collection


def contents(folder: Path) -> dict[str, bytes]:
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_outsiders_meet_no_living_name_in_any_byte(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """Names of files, pages, search data, alternatives, JSON-LD: case folded, over every byte of the folder."""
    pages(opened, tmp_path / "out")
    found = contents(tmp_path / "out")
    assert "photo/TRA-0003.html" in found and "photo/TRA-0019.html" not in found
    whole = b"\n".join([*(name.encode() for name in found), *found.values()]).lower()
    for name in (b"mia rourke", b"daniel", b"danny", b"leida", b"con rourke", b"oskar"):
        assert name not in whole


def test_the_family_sees_more_and_machines_do_not(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    pages(opened, tmp_path / "out", FAMILY)
    page = (tmp_path / "out" / "photo" / "TRA-0019.html").read_text("utf-8")
    assert "Mia Rourke" in page and "ld+json" not in page and "noindex" in page
    wedding = (tmp_path / "out" / "photo" / "TRA-0003.html").read_text("utf-8")
    linked = wedding.split("ld+json")[1].split("</script>")[0]
    assert "Helmi Tamm" in linked and "Leida" not in linked
    assert "cracked across the lower left corner" in wedding
    assert wedding.index("<img") < wedding.index("cracked across"), "the care note stands at the end"


def test_two_runs_are_the_same_bytes(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    order = PrintOrder(to=To.FAMILY, selection=Selection(box="1"))
    pages(opened, tmp_path / "one", order)
    pages(opened, tmp_path / "two", order)
    assert contents(tmp_path / "one") == contents(tmp_path / "two")


def test_nothing_of_an_earlier_run_stays_and_nothing_of_others_goes(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    out = tmp_path / "out"
    pages(opened, out, FAMILY)
    (out / "photo" / "mine.txt").write_text("the keeper's own", encoding="utf-8")
    pages(opened, out)
    pages(opened, tmp_path / "fresh")
    assert contents(out).keys() == contents(tmp_path / "fresh").keys() | {"photo/mine.txt"}
    assert (out / "photo" / "mine.txt").read_text("utf-8") == "the keeper's own"
    assert [path.name for path in tmp_path.iterdir() if path.name.startswith(".")] == []


def test_a_folder_of_others_is_refused(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    (tmp_path / "letters.txt").write_text("x", encoding="utf-8")
    with pytest.raises(WrongUse, match="files that Boxlore did not write"):
        pages(opened, tmp_path)
    assert contents(tmp_path) == {"letters.txt": b"x"}


def test_a_list_that_points_outside_takes_nothing_away(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    out = tmp_path / "out"
    out.mkdir()
    (tmp_path / "precious.txt").write_text("x", encoding="utf-8")
    (out / LISTED).write_text("../precious.txt\n/etc/hostname\n", encoding="utf-8")
    pages(opened, out, PrintOrder(to=To.FAMILY, selection=Selection(items=("TRA-0003",))))
    assert (tmp_path / "precious.txt").exists()


def test_a_damaged_scan_is_replaced_and_named(demo: Path, tmp_path: Path) -> None:
    shutil.copytree(demo, tmp_path / "mine")
    with open_collection(tmp_path / "mine", write=False) as collection:
        scan = record_of(collection, find_item(collection, "TRA-0001").id).scans[0]
        (tmp_path / "mine" / scan.path).write_bytes(b"\xff\xd8 no picture")
        made = pages(collection, tmp_path / "out", FAMILY)
    changed, shown = (one.message for one in made.findings)
    assert shown == "A picture of TRA-0001 cannot be shown."
    assert f"{scan.path} of TRA-0001 is not as it was at its intake" in changed
    assert "This picture cannot be shown" in (tmp_path / "out" / "photo" / "TRA-0001.html").read_text("utf-8")


def test_what_the_keeper_changed_is_not_replaced_until_over_is_said(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """Our own rule: pages, styles, pictures; also a page that would go, of which it is said whom it names."""
    out = tmp_path / "out"
    pages(opened, out, FAMILY)
    pages(opened, out, FAMILY)  # as it was written
    picture = next((out / "images" / "small").iterdir())
    changed = [out / "index.html", out / "style.css", out / "photo" / "TRA-0019.html", picture]
    for path in changed:
        path.write_bytes(path.read_bytes() + b"<!-- mine -->")
    before = contents(out)
    with pytest.raises(WrongUse, match="was changed since") as refused:
        pages(opened, out, FAMILY)
    assert all(path.relative_to(out).as_posix() in str(refused.value) for path in changed)
    assert "--over" in str(refused.value) and "withheld" not in str(refused.value)
    with pytest.raises(WrongUse, match=r"withheld now is named in index\.html, photo/TRA-0019\.html\.") as refused:
        pages(opened, out)
    assert "hand the folder to nobody" in str(refused.value)
    assert contents(out) == before
    opened.over = True
    pages(opened, out)
    pages(opened, tmp_path / "fresh")
    assert contents(out) == contents(tmp_path / "fresh")
