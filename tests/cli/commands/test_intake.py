"""`boxlore intake` and `boxlore new`: plans shown first, by turns, by a table, without a scan (our own contract)."""

import json
import shutil
from pathlib import Path

import pytest
from PIL import Image
from PIL.PngImagePlugin import PngInfo


@pytest.fixture
def home(run, tmp_path: Path) -> Path:  # type: ignore[no-untyped-def]
    assert run("new", tmp_path / "tamm", "--prefix", "tr", "--series", "b", "--title", "Tamm and Rourke")[0] == 0
    return tmp_path / "tamm"


@pytest.fixture
def scans(tmp_path: Path) -> Path:
    folder = tmp_path / "in"
    folder.mkdir()
    for at, name in enumerate("abcd"):
        Image.linear_gradient("L").rotate(at * 90).save(folder / f"{name}.png")
    return folder


def states(out: str) -> list[tuple[str, str]]:
    return [(row["number"], row["state"]) for row in map(json.loads, out.splitlines())]


def test_a_collection_says_where_it_is_and_its_first_number(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("new", tmp_path / "our_photos", "--prefix", "our")
    assert (code, out) == (0, "")
    assert "Its first number will be OURA-0001." in err
    assert 'title = "Our Photos"' in (tmp_path / "our_photos" / "boxlore.toml").read_text("utf-8")
    code, _, err = run("new", tmp_path / "our_photos")
    assert code == 2 and "our_photos" in err


def test_fronts_and_backs_by_turns(run, home: Path, scans: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", home, "intake", scans, "--pairs", "alternating", "--json")
    assert (code, states(out)) == (0, [("TRB-0001", "taken"), ("TRB-0002", "taken")])
    assert "2 items: 2 with a scan, 2 with a back.\n  a: recto a.png, verso b.png\n  c: recto c.png, verso d.png" in err
    assert "2 taken in, 0 known already, 0 refused." in err
    (scans / "e.png").write_bytes(b"")
    code, out, err = run("-c", home, "intake", scans, "--pairs", "alternating")
    assert (code, out) == (2, "")
    assert "5 files cannot be fronts and backs by turns. Pair them by --pairs suffix, or by a table." in err
    (scans / "f_back.png").write_bytes(b"")
    (scans / "e.png").rename(scans / "g_front.png")
    code, out, err = run("-c", home, "intake", scans, "--pairs", "alternating")
    assert (code, out) == (2, "")
    assert "By turns f_back.png would be a front, and its name says that it is a back. Pair them by" in err


def test_items_without_a_scan(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", home, "intake", "--without-scan", "7", "--box", "1", "--json")
    assert code == 0 and [number for number, _ in states(out)] == [f"TRB-000{at}" for at in range(1, 8)]
    assert "7 items: 0 with a scan, 0 with a back." in err
    assert "  without scan 1: without a scan" in err and "  … and 2 more." in err


def test_by_a_table_with_two_items_of_one_scan(run, home: Path, scans: Path) -> None:  # type: ignore[no-untyped-def]
    table = scans / "items.csv"
    table.write_text(
        "\ufeffitem,file,side,area,story,attached_to\n1,a.png,,0 0 0.5 1,Left,\n2,a.png,recto,0.5 0 0.5 1,Right,1\n"
        "2,b.png,verso,,,\n3,,,,A note,1\n",
        "utf-8",
    )
    code, out, err = run("-c", home, "intake", "--table", table, "--json")
    assert (code, states(out)) == (0, [("TRB-0001", "taken"), ("TRB-0002", "taken"), ("TRB-0003", "taken")])
    assert "3 items: 2 with a scan, 1 with a back." in err
    (shown,) = map(json.loads, run("-c", home, "show", "TRB-0002", "--json")[1].splitlines())
    assert shown["related"] == [{"kind": "attached_to", "number": "TRB-0001"}]
    assert [scan["side"] for scan in shown["scans"]] == ["recto", "verso"]


def test_a_picture_that_cannot_be_read_is_refused_and_named(run, home: Path, scans: Path) -> None:  # type: ignore[no-untyped-def]
    (scans / "e.jpg").write_bytes(b"no picture")
    code, out, err = run("-c", home, "intake", scans)
    assert (code, out) == (1, "")
    assert f"{scans / 'e'}: " in err
    assert "4 taken in, 0 known already, 1 refused." in err


TABLES = [
    ("item,file\n,a.png\n", "Line 2 has no item. Give each item a key of its own in that column."),
    ("item,file,side\n1,a.png,left\n", "Line 2: side is “left”. It may be front or back."),
    ("item,attached_to\n1,2\n", "Item 1 is linked (attached_to) to 2, which the table lacks."),
    ("item,file,role\n1,a.png,altered\n", "Item 1 has an altered recto, a.png, and no scan of it as it is."),
    ("item,file,role\n1,a.png,nice\n", "Line 2: role is “nice”."),
    ("item,file,area\n1,a.png,0 0 2\n", "Line 2:"),
    ("item,position\n1,first\n", "Line 2:"),
    ("item,size\n1,large\n", "Line 2:"),
    ("item,title\n1,Reval, 1908\n", "items.csv, line 2: “1908” stands under no heading"),
    ('item,title\n1,"Reval\n2,Hull\n', "items.csv cannot be read as a table: line 2 (unexpected end of data)"),
    ("item,titel\n1,Reval\n", "items.csv has a column “titel”. Columns are: item, file, side,"),
    ("item;titel\n1;Reval\n", "items.csv has a column “titel”. Columns are: item, file, side,"),
    ("item;a,title\n1,Reval\n", "items.csv has no column item. Its columns must be parted by commas."),
]


@pytest.mark.parametrize(("table", "sentence"), TABLES)
def test_a_table_that_cannot_be_meant_is_said_by_its_line(  # type: ignore[no-untyped-def]
    run, home: Path, scans: Path, table: str, sentence: str
) -> None:
    (scans / "items.csv").write_text(table, "utf-8")
    code, out, err = run("-c", home, "intake", "--table", scans / "items.csv")
    assert (code, out) == (2, "")
    assert sentence in err
    assert run("-c", home, "check", "--json")[1] == ""


def test_words_that_nobody_can_have_meant_are_refused_with_their_item(run, home: Path, scans: Path) -> None:  # type: ignore[no-untyped-def]
    table = scans / "items.csv"
    table.write_text("item,title,box\n1,a\x00b,1\n2,Reval,\u200b\n3,Hull,1\n", "utf-8")
    code, out, _ = run("-c", home, "intake", "--table", table, "--json")
    refused, blank, taken = map(json.loads, out.splitlines())
    assert (code, refused["state"], taken["state"]) == (1, "refused", "taken")
    assert "Character 2 of these words is no letter (U+0000)." in refused["why"]
    assert blank["why"] == "There are no words to keep. Say something, or that it is not known."
    assert taken["number"].endswith("-0001")


WRONG = [
    ([], "Which pictures? Name files or folders, --table FILE.csv, or --without-scan N."),
    (["--pairs", "table"], "--pairs table needs --table FILE.csv."),
    (["--table", "none.csv"], "There is no file none.csv"),
    (["{empty}"], "There are no pictures there. JPEG, TIFF, PNG and WebP are taken in."),
]


@pytest.mark.parametrize(("arguments", "sentence"), WRONG)
def test_nothing_to_take_in_is_said(run, home: Path, tmp_path: Path, arguments: list[str], sentence: str) -> None:  # type: ignore[no-untyped-def]
    (tmp_path / "empty").mkdir()
    code, out, err = run("-c", home, "intake", *[argument.format(empty=tmp_path / "empty") for argument in arguments])
    assert (code, out) == (2, "")
    assert sentence in err


def test_a_collection_is_made_again_from_a_transfer(run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("new", tmp_path / "again", "--from", demo / "transfer" / "closed")
    assert (code, out) == (0, "")
    assert f"{tmp_path / 'again'}: " in err and f" statements from {demo / 'transfer' / 'closed'}." in err
    assert "What boxes are made of and where they stand is not in a transfer: see boxlore housing." in err
    assert run("-c", tmp_path / "again", "show", "TRA-0001")[1].startswith("TRA-0001 · Box 1")


def test_a_scan_that_is_cut_off_is_taken_in_and_named(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    path = tmp_path / "nets.jpg"
    Image.effect_noise((240, 180), 60).save(path)
    path.write_bytes(path.read_bytes()[: path.stat().st_size * 6 // 10])
    code, _, err = run("-c", home, "intake", path, "--copy")
    assert code == 0
    assert "TRB-0001: The scan of the front is cut off or broken: scans/TRB-0001_f.jpg." in err
    assert err.rstrip().endswith("1 taken in, 0 known already, 0 refused; of those taken in, 1 scan is damaged.")
    code, out, err = run("-c", home, "verify")
    assert (code, "[scan.damaged" in out) == (0, True)
    assert "nothing changed since; 1 scan was damaged before being taken in." in err
    _, out, _ = run("-c", home, "copies", tmp_path / "out", "--json")
    assert "The scan is cut off or broken, and so is the copy." in out


def made_of(out: str) -> dict[str, list[str]]:
    keys: dict[str, list[str]] = {}
    for row in map(json.loads, out.splitlines()):
        keys.setdefault(row["state"], []).append(Path(row["key"]).name)
    return keys


def test_what_boxlore_made_itself_is_no_new_scan(run, home: Path, scans: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """The whole folder of a collection with all that was ever made in it, and what was carried away from it."""
    Image.linear_gradient("L").rotate(45).save(scans / "quay.gif")
    with Image.open(scans / "b.png") as picture:
        exif = Image.Exif()
        exif.get_ifd(0x8825)[1], exif.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
        picture.save(scans / "b.jpg", exif=exif)
    assert run("-c", home, "intake", scans, "--copy", "--yes")[0] == 0
    for made in (
        ("copies", home / "copies"),
        ("copies", home / "small", "--longest", "100"),
        ("copies", home / "outside", "--for", "outside", "--longest", "90"),
        ("pages", home / "pages"),
        ("offer", home / "offer"),
        ("transfer", home / "transfer", "--yes"),
    ):
        assert run("-c", home, *made)[0] in (0, 1), made
    for folder in ("papers", "recordings"):
        (home / folder).mkdir(exist_ok=True)
        Image.new("L", (9, 9), len(folder)).save(home / folder / "agreement.png")
    carried = tmp_path / "carried"
    carried.mkdir()
    for at, path in enumerate(sorted((home / "copies").rglob("*.*g*"))):
        shutil.copyfile(path, carried / f"{at}{path.suffix}")
    stripped = next((home / "copies").rglob("*_f.jpg"))
    with Image.open(stripped) as picture:
        picture.save(stripped)
    code, out, err = run("-c", home, "intake", home, carried, "--json")
    keys = made_of(out)
    assert code == 0 and set(keys) == {"known", "own"}, keys
    assert "inventory.pdf" in keys["own"]
    assert f"{len(keys['own'])} made by Boxlore itself" in err
    _, _, err = run("-c", home, "intake", home)
    assert "pictures are no scans, for Boxlore made them itself: " in err and "--own takes them nevertheless" in err
    code, out, _ = run("-c", home, "intake", min(carried.iterdir()), "--own", "--json")
    assert (code, set(made_of(out))) == (0, {"taken"})


def test_copies_of_another_collection_are_scans_here_and_a_back_beside_a_copy_joins(  # type: ignore[no-untyped-def]
    run, home: Path, scans: Path, tmp_path: Path
) -> None:
    assert run("-c", home, "intake", scans / "a.png", "--yes")[0] == 0
    assert run("-c", home, "copies", tmp_path / "copies")[0] == 0
    shutil.copyfile(scans / "b.png", tmp_path / "copies" / "TRB-0001_b.png")
    _, out, _ = run("-c", home, "intake", tmp_path / "copies", "--json")
    assert states(out) == [("TRB-0001", "joined")]
    assert run("new", tmp_path / "rourke", "--prefix", "ro")[0] == 0
    _, out, _ = run("-c", tmp_path / "rourke", "intake", tmp_path / "copies", "--json")
    assert made_of(out) == {"taken": ["TRB-0001"]}


@pytest.mark.parametrize("wrong", [b"IDAT", b"tEXt"])
def test_a_png_with_a_wrong_checksum_is_taken_and_named_at_intake_and_in_verify(  # type: ignore[no-untyped-def]
    wrong: bytes, run, home: Path, scans: Path
) -> None:
    """The checksum of a chunk is CRC-32 over its type and data (PNG Third Edition, 5.3 and 5.5)."""
    path = scans / "quay.png"
    about = PngInfo()
    about.add_text("Comment", "from the scanner")
    Image.linear_gradient("L").save(path, pnginfo=about)
    data = bytearray(path.read_bytes())
    at = data.index(wrong)
    data[at + 4 + int.from_bytes(data[at - 4 : at], "big")] ^= 1
    path.write_bytes(data)
    code, _, err = run("-c", home, "intake", path, "--copy", "--yes")
    assert code == 0 and "TRB-0001: The scan of the front is cut off or broken: scans/TRB-0001_f.png." in err
    code, out, err = run("-c", home, "verify")
    assert "scans/TRB-0001_f.png" in out + err
    assert run("-c", home, "copies", home / "copies", "--longest", "64")[0] == 0
