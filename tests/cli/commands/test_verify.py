"""`boxlore verify`: scans, packages, receipts and events, in sentences and as JSON (our own contract)."""

import csv
import json
import os
import re
import shutil
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.disk.digests import sha256_of


def rows(out: str) -> list[dict[str, object]]:
    return [json.loads(line) for line in out.splitlines()]


def test_scans_are_read_and_the_day_is_noted(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", mine, "verify", "--when") == (0, "The scans were never read again since their intake.\n", "")
    never = {"last": None, "read": None, "wrong": None, "due": None, "unfinished": None}
    assert rows(run("-c", mine, "verify", "--when", "--json")[1]) == [never]
    shutil.rmtree(mine / "copies")
    code, out, err = run("-c", mine, "verify", "--on", "2026-12-01")
    assert (code, out) == (0, "")
    count = int(err.split()[0])
    assert f"{count} scans read; all as they were." in err
    assert err.splitlines()[-1] == f"Checked: {count} scans, 1 recording or paper; nothing to look into."
    code, out, _ = run("-c", mine, "verify", "--when")
    assert out == f"Last read on 2026-12-01: {count} scans, 0 not as they were. Due again on 2027-12-01.\n"
    (noted,) = rows(run("-c", mine, "verify", "--when", "--json")[1])
    assert (noted["last"], noted["read"], noted["due"]) == ("2026-12-01", count, "2027-12-01")


def test_a_scan_that_moved_is_found_and_its_new_place_noted(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    shutil.rmtree(mine / "copies")
    (mine / "elsewhere").mkdir()
    (mine / "scans" / "TRA-0001_f.jpg").rename(mine / "elsewhere" / "harbour.jpg")
    (mine / "scans" / "TRA-0001_b.jpg").unlink()
    code, out, err = run("-c", mine, "verify", "--look-in", mine / "elsewhere")
    assert code == 1 and "2 are not as they were." in err
    assert err.splitlines()[-1].endswith(" scans, 1 recording or paper; 2 things to look into.")
    assert "TRA-0001_f.jpg" in out and "harbour.jpg" in out and "TRA-0001_b.jpg" in out
    code, out, err = run("-c", mine, "verify", "--look-in", mine / "elsewhere", "--mend", "--json")
    assert code == 1 and "The new place of 1 scan is noted." in err
    assert len(rows(out)) == 2
    code, out, err = run("-c", mine, "verify", "--json")
    assert code == 1 and ["TRA-0001_b.jpg" in str(row["message"]) for row in rows(out)] == [True]


def test_a_package_is_held_against_its_manifests(run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    bag = tmp_path / "open"
    shutil.copytree(demo / "transfer" / "open", bag)
    assert run("verify", bag) == (0, "", "Every file is as its manifests say.\n")
    changed = bag / "data" / "metadata" / "receipt.csv"
    changed.write_bytes(changed.read_bytes() + b" ")
    code, out, err = run("verify", bag, "--json")
    assert code == 1 and f"{len(rows(out))} findings." in err
    assert any(changed.name in str(row["message"]) for row in rows(out))
    with open(bag / "manifest-sha512.txt", "a", encoding="utf-8") as file:
        file.write(f"{'0' * 128}  {changed}\n{'0' * 128}  data/../../{bag.name}/bagit.txt\n")
    outside = [
        row for row in rows(run("verify", bag, "--json")[1]) if "leads out of the package" in str(row["message"])
    ]
    assert len(outside) == 2  # RFC 8493, 5.1: neither is looked at, though both are there


def test_the_events_of_fixity_are_listed(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("-c", demo, "verify", "--events")
    assert code == 0
    assert any("message digest calculation  scans/TRA-0001_f.jpg  made at intake" in line for line in out.splitlines())
    events = rows(run("-c", demo, "verify", "--events", "--json")[1])
    assert len(events) == len(out.splitlines())
    assert {"When", "Event", "File", "Outcome"} <= set(events[0])


def receipt(demo: Path, path: Path, **told: str) -> Path:
    """The receipt of the demo's transfer without its boxes, with the row of its first item filled in as an archive
    would."""
    with open(
        demo / "transfer" / "open" / "data" / "metadata" / "receipt.csv", encoding="utf-8-sig", newline=""
    ) as file:
        filled = list(csv.DictReader(file))
    filled = [row for at, row in enumerate(filled) if at == 0 or row["Number"]]
    filled[1] |= {name.replace("_", " "): words for name, words in told.items()}
    with open(path, "w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, filled[0])
        writer.writeheader()
        writer.writerows(filled)
    return path


def test_a_receipt_gives_items_the_references_of_the_archive(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    path = receipt(
        mine, tmp_path / "receipt.csv", **{"Accession_number": "2026/17", "The_archive's_reference": "F 12/1"}
    )
    code, out, err = run("-c", mine, "verify", "--receipt", path, "--archive", "Port Chalmers Museum")
    assert (code, out) == (0, "")
    assert err.startswith("Accession 2026/17. 1 reference of the archive is taken in")
    again = run("-c", mine, "verify", "--receipt", path)
    assert again[0] == 0 and "0 references" in again[2]


RECEIPTS = [
    ({"Number": "TRA-9999"}, "There is no photograph TRA-9999 here."),
    ({"Number": "9/9/9"}, "There is no photograph 9/9/9 here."),
    ({"Number": "", "Identifier": ""}, "a reference without an item's number or identifier."),
]


@pytest.mark.parametrize(("told", "why"), RECEIPTS)
def test_a_line_of_a_receipt_that_is_refused_is_named(  # type: ignore[no-untyped-def]
    run, mine: Path, tmp_path: Path, told: dict[str, str], why: str
) -> None:
    path = receipt(mine, tmp_path / "receipt.csv", **{"The_archive's_reference": "F 12/1"}, **told)
    code, _, err = run("-c", mine, "verify", "--receipt", path)
    assert code == 1
    assert "Line 3: " in err and why in err and "0 references" in err


def test_a_line_with_the_identifier_of_another_item_is_refused_alone(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    path = receipt(mine, tmp_path / "receipt.csv", Identifier="urn:uuid:0", **{"The_archive's_reference": "F 12/1"})
    code, _, err = run("-c", mine, "verify", "--receipt", path)
    assert code == 1 and "Line 3: " in err and "TRA-0001 has another identifier here." in err


def test_a_receipt_of_another_collection_is_refused_whole(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    path = receipt(mine, tmp_path / "receipt.csv", **{"The_archive's_reference": "F 12/1"})
    path.write_text(re.sub(r"urn:uuid:[^,]*", "urn:uuid:0", path.read_text("utf-8")), "utf-8")
    code, out, err = run("-c", mine, "verify", "--receipt", path)
    assert code == 2 and "taken in; outputs" not in out + err
    assert "receipt.csv is a receipt of another collection; line 3: TRA-0001 has another identifier here." in err


def test_a_line_of_a_receipt_whose_columns_have_slipped(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    path = receipt(mine, tmp_path / "receipt.csv", **{"The_archive's_reference": "F 12/1"})
    lines = path.read_text("utf-8").splitlines()
    path.write_text("\n".join([*lines[:2], f"{lines[2]},shelf 9", *lines[3:]]), "utf-8")
    code, _, err = run("-c", mine, "verify", "--receipt", path)
    assert code == 1 and "Line 3: “shelf 9” stands under no heading" in err and "0 references" in err


FILES = [
    ("none.csv", None, "There is no file {path}."),
    ("bare.csv", b"a,b\n", "bare.csv has no column “"),
    ("latin.csv", b"Numb\x81r\n", "latin.csv is not in UTF-8. Save it as CSV in UTF-8."),
]


@pytest.mark.parametrize(("name", "data", "why"), FILES)
def test_a_file_that_is_no_receipt(run, demo: Path, tmp_path: Path, name: str, data: bytes | None, why: str) -> None:  # type: ignore[no-untyped-def]
    if data is not None:
        (tmp_path / name).write_bytes(data)
    code, _, err = run("-c", demo, "verify", "--receipt", tmp_path / name)
    assert code == 2 and why.format(path=tmp_path / name) in err


def test_a_file_that_cannot_be_read_is_not_said_to_be_half_written(tmp_path: Path) -> None:
    with pytest.raises(CouldNot) as fault:
        sha256_of(tmp_path / "gone.jpg")
    assert str(fault.value) == (
        f"There is no such file: {tmp_path / 'gone.jpg'}. It may have been moved, or its disk is not plugged in."
    )


def test_a_pipe_in_the_place_of_a_scan_is_said(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    scan = sorted((mine / "scans").glob("TRA-0001_*"))[0]
    scan.unlink()
    os.mkfifo(scan)
    code, out, err = run("-c", mine, "verify")
    assert code == 1 and "1 is not as it was" in err and "a pipe, a socket or a device, and no file" in out
    code, out, err = run("-c", mine, "copies", mine / "more", "--item", "TRA-0001")
    assert code == 1 and "a pipe, a socket or a device, and no file" in out + err
    code, out, err = run("-c", mine, "sheet", mine / "album.pdf", "--item", "TRA-0001")
    assert code == 0 and "1 photograph in" in err
