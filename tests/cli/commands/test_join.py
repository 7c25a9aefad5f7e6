"""`boxlore join`, `boxlore new --join` and `boxlore parcel` as a person meets them (our own contract)."""

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import open_collection

Runs = Callable[..., tuple[int, str, str]]


def correct_dates(folder: Path, words: str) -> None:
    """Put other words in the place of each item's first date."""
    with open_collection(folder) as collection:
        act = collection.act("corrections")
        for _, item in collection.store.items():
            subject = Subject(Kind.ITEM, item)
            dates = [told for told, _ in collection.store.statements(subject) if told.field == "date"]
            act.state(subject, "date", words, replaces=dates[0].id)
        act.done()


def test_two_desks_are_joined_and_say_what_came(bare: Callable[[int], Path], run: Runs, tmp_path: Path) -> None:
    first, second = bare(1), tmp_path / "aksel"
    assert run("-c", first, "tell", "TRA-0001", "date", "about 1935")[0] == 0
    code, _, err = run("new", second, "--join", first)
    assert code == 0 and "It numbers in series B." in err and f"boxlore -c {first} join {second}" in err
    for folder, day in ((first, "1934"), (second, "1936")):
        correct_dates(folder, day)
    assert run("-c", second, "tell", "TRA-0001", "story", "It rained [/b]")[0] == 0
    code, out, err = run("-c", first, "join", second, "--json")
    told = json.loads(out)
    assert code == 0 and told["statements"] == 2 and not told["faults"]
    assert sorted((row["number"], row["words"]) for row in told["corrected_twice"]) == [
        ("TRA-0001", "1934"), ("TRA-0001", "1936")
    ]  # fmt: skip
    assert "both corrections stand until you settle it:" in err and "TRA-0001 date: “1936”" in err
    code, _, err = run("-c", first, "join", second)
    assert code == 0 and f"There is nothing in {second} that is not here." in err
    assert "It rained [/b]" in run("-c", first, "find", "rained")[1]


def test_a_working_copy_with_the_letter_of_the_first_is_told_of(
    bare: Callable[[int], Path], run: Runs, tmp_path: Path
) -> None:
    first = bare(1)
    code, _, err = run("new", tmp_path / "aksel", "--join", first, "--series", "A")
    assert code == 0 and "It numbers in series A." in err and "Both copies number in series A." in " ".join(err.split())


def test_many_corrections_are_counted_and_strikes_and_faults_are_told(
    bare: Callable[[int], Path], run: Runs, tmp_path: Path
) -> None:
    first, second = bare(12), tmp_path / "aksel"
    numbers = [f"TRA-{count:04d}" for count in range(1, 13)]
    for number in numbers:
        run("-c", first, "tell", number, "date", "1930")
    run("-c", first, "tell", "TRA-0001", "story", "Ants, who owed us money")
    (first / "papers" / "agreement.txt").write_text("here", "utf-8")
    assert run("new", second, "--join", first)[0] == 0
    (second / "papers" / "agreement.txt").write_text("there", "utf-8")
    for folder, day in ((first, "1934"), (second, "1936")):
        correct_dates(folder, day)
    assert run("-c", second, "strike", "TRA-0001", "story", "--yes")[0] == 0
    code, _, err = run("-c", first, "join", second)
    assert code == 1
    assert "and 14 more corrections." in err and "agreement.txt differ" in err
    assert "1 statement struck there was struck here too." in err
    assert "owed" not in run("-c", first, "find", "owed")[1]


def test_a_parcel_goes_there_and_back(bare: Callable[[int], Path], run: Runs, tmp_path: Path) -> None:
    first, second = bare(1), tmp_path / "aksel"
    code, out, err = run("-c", first, "parcel", tmp_path / "new.zip", "--new-copy", "--json")
    told = json.loads(out)
    assert code == 0 and told["series"] == "B" and told["kept_back"] == 0 and told["sha256"][:8] in err
    code, _, err = run("new", second, "--join", tmp_path / "new.zip")
    assert code == 0 and "It numbers in series B." in err and f"boxlore -c {second} parcel FILE" in err
    assert run("-c", second, "tell", "TRA-0001", "story", "It rained [/b]")[0] == 0
    code, _, err = run("-c", second, "parcel", tmp_path / "back.zip", "--for", "family", "--without-scans")
    assert code == 0 and "for the family alone" in err
    code, out, err = run("-c", first, "join", tmp_path / "back.zip", "--json")
    assert code == 0 and json.loads(out)["statements"] == 1 and "The SHA-256 of back.zip begins with" in err
    code, _, err = run("-c", second, "parcel", tmp_path / "back.zip")
    assert code == 2 and "is there already" in err


def test_a_locked_parcel_asks_for_its_passphrase(
    bare: Callable[[int], Path], run: Runs, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The format's computation, which takes a second on purpose, is left out: `test_parcel_files.py` does it."""
    pyrage = pytest.importorskip("pyrage")
    monkeypatch.setattr(pyrage.passphrase, "encrypt", lambda data, words: data)
    monkeypatch.setattr(pyrage.passphrase, "decrypt", lambda data, words: data)
    said = iter(["four words of Reval", "four words of Reval"])
    monkeypatch.setattr("click.prompt", lambda *_, **__: next(said))
    first = bare(1)
    assert run("-c", first, "parcel", tmp_path / "a.zip", "--lock")[0] == 0
    code, _, err = run("-c", first, "join", tmp_path / "a.zip")
    assert code == 0 and "There is nothing in" in err and next(said, None) is None
