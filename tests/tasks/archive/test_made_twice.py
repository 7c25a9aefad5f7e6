"""The same collection handed over twice is described in the same words: nothing hangs on how a run orders its sets.

A description changes with what it describes alone: a rule of our own. `PYTHONHASHSEED` is what Python orders sets of
words by (the Python documentation, command line and environment).
"""

import codecs
import csv
import os
import shutil
import subprocess
import sys
from datetime import date
from pathlib import Path

from boxlore.core.crosswalk.receiving_archive import TAKES, Archive
from boxlore.core.statements import Kind
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)
NOT_HERE = ("scans", "copies", "recordings", "forms")
TAKEN = tuple(part for part in TAKES if part not in NOT_HERE)
SEEN_ONCE = "Mari Jaan Helmi Anton Juhan Liisi Peeter Alma".split()
"""Each is on one picture: which of them a title names must follow a rule."""


def make_transfer(home: Path, out: Path) -> None:
    archive = Archive(
        base_url="https://archive.example/", gateway="https://gate.example", email="box@archive.example", takes=TAKEN
    )
    with open_collection(home, on_day=ON) as collection:
        transfer(collection, out, order=TransferOrder(archive=archive, go_on=True))


def tell_of_many(home: Path) -> None:
    with open_collection(home, on_day=ON) as collection:
        act, teller = collection.act("people"), Teller(collection)
        for given in SEEN_ONCE:
            person = act.new(Kind.PERSON)
            for field, words in (("given", given), ("family", "Tamm"), ("born", "1838"), ("died", "1909")):
                teller.add(act, person, field, words, Telling())
        act.done()
        for given in SEEN_ONCE:
            teller.tell(find_item(collection, "TRA-0002"), "person", f"{given} Tamm", Telling(audience="anyone"))
            teller.tell(find_item(collection, "TRA-0002"), "occasion", f"for {given}", Telling(audience="anyone"))


def descriptions(package: Path) -> dict[str, bytes]:
    """The files of both parts by their paths, without the identifier and the time of the transfer; and no PDF, which
    carries a mark of its own making."""
    with open(package / "closed" / "data" / "metadata" / "transfers.csv", encoding="utf-8-sig", newline="") as file:
        row = list(csv.DictReader(file))[-1]
    files = {}
    for path in sorted(package.glob("*/data/**/*.*")):
        if path.is_file() and path.suffix != ".pdf":
            data = path.read_bytes()
            for name in ("Transfer", "Made"):
                data = data.replace(row[name].encode(), b"")
            files[path.relative_to(package).as_posix()] = data
    return files


def test_the_same_collection_is_described_in_the_same_words_in_every_run(small_family: Path, tmp_path: Path) -> None:
    first, second = tmp_path / "first", tmp_path / "second"
    shutil.copytree(small_family, first)
    tell_of_many(first)
    shutil.copytree(first, second)
    other = {**os.environ, "PYTHONHASHSEED": "1" if os.environ.get("PYTHONHASHSEED") != "1" else "2"}
    script = "import sys; from pathlib import Path; from tests.tasks.archive import test_made_twice as made\n"
    script += "made.make_transfer(*map(Path, sys.argv[1:]))"
    arguments = [sys.executable, "-c", script, str(second), str(second / "transfer")]
    process = subprocess.run(arguments, env=other, cwd=Path(__file__).parents[3], capture_output=True, check=False)
    assert process.returncode == 0, process.stderr
    make_transfer(first, first / "transfer")
    once, twice = descriptions(first / "transfer"), descriptions(second / "transfer")
    tables = [path for path in once if path.endswith(".csv")]
    assert [path for path in tables if not once[path].startswith(codecs.BOM_UTF8)] == []  # RFC 3629, 6
    assert list(once) == list(twice) and len(once) > 15
    assert [path for path in once if once[path] != twice[path]] == []
    assert "of Kristjan Tamm and Mari Tamm and others" in once["open/data/metadata/finding-aid.ead3.xml"].decode()
