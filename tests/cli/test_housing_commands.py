"""housing, climate and survey as a person or a script meets them (our own contract)."""

import json
from datetime import datetime, timedelta
from pathlib import Path

import pikepdf
import pytest

from boxlore.cli.main import main


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str], mine: Path):  # type: ignore[no-untyped-def]
    def ran(*arguments: object) -> tuple[int, str, str]:
        with pytest.raises(SystemExit) as left:
            main(["-c", str(mine), *[str(one) for one in arguments]])
        out, err = capsys.readouterr()
        return int(left.value.code or 0), out, err

    return ran


def rows(out: str) -> list[dict[str, object]]:
    return [json.loads(line) for line in out.splitlines()]


def test_moving_is_shown_done_found_and_taken_back(run) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("housing", "move", "TRA-0001", "--to", "2/1", "--plan")
    assert code == 0 and "TRA-0001: 1/1/1 → 2/1/" in err and "Nothing was changed" in err
    assert rows(run("show", "TRA-0001", "--json")[1])[0]["mark"] == "1/1/1"
    assert run("housing", "move", "TRA-0001", "--to", "2/1")[0] == 0
    history = rows(run("housing", "where", "1/1/1", "--json")[1])
    assert [(one["number"], one["until"] is None) for one in history] == [("TRA-0001", False), ("TRA-0001", True)]
    assert run("housing", "undo")[0] == 0
    assert rows(run("show", "TRA-0001", "--json")[1])[0]["mark"] == "1/1/1"


def test_renumbering_and_merging(run) -> None:  # type: ignore[no-untyped-def]
    assert run("housing", "renumber", "1=2")[0] == 2
    assert run("housing", "renumber", "1=2", "2=1")[0] == 0
    assert rows(run("show", "TRA-0001", "--json")[1])[0]["mark"] == "2/1/1"
    both = [one["number"] for one in rows(run("show", "1/1/1", "--json")[1])]
    assert len(both) == 2 and both[1] == "TRA-0001"
    code, _, err = run("housing", "merge", "1", "2")
    assert code == 2 and "in both" in err
    what = rows(run("housing", "what", "--json")[1])
    assert {str(one["mark"]) for one in what} >= {"1", "2", "2/1"}


def test_a_mark_that_held_two_is_refused_for_writing_and_shown_for_reading(run) -> None:  # type: ignore[no-untyped-def]
    assert run("housing", "move", "TRA-0001", "--to", "2/1")[0] == 0
    assert run("housing", "close", "1/1")[0] == 0
    code, _, err = run("tell", "1/1/1", "story", "The harbour.")
    assert code == 2 and "TRA-0001" in err and "Use the number" in err
    history = rows(run("housing", "where", "1/1/1", "--json")[1])
    assert len({one["number"] for one in history}) == 2


def test_a_place_a_box_its_findings(run) -> None:  # type: ignore[no-untyped-def]
    assert run("housing", "place", "Hall", "--surroundings", "by the radiator")[0] == 0
    code, _, err = run("housing", "box", "1", "--at", "Hall", "--materials", "kraft board", "--capacity", "400")
    assert code == 0 and "Box 1, Hall" in err
    code, out, _ = run("housing", "--json")
    found = {one["rule"]: one for one in rows(out) if one["mark"] == "1"}
    assert code == 1 and {"housing.kraft", "housing.radiator", "housing.untested"} <= set(found)
    assert all(one["source"] and one["message"] for one in found.values())
    assert "Hall" in run("housing", "where", "TRA-0001")[1]
    code, out, _ = run("housing")
    assert code == 1 and "it is acid" in out


def test_a_loan_with_its_receipt(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    slip = tmp_path / "slip.pdf"
    arguments = ("TRA-0001", "TRA-0002", "--by", "Aino Tamm", "--due", "2020-01-01", "--receipt", slip)
    assert run("housing", "lend", *arguments, "--on", "2019-12-01")[0] == 0
    with pikepdf.open(slip) as pdf:
        assert len(pdf.pages) == 1
    late = [one["number"] for one in rows(run("check", "--json")[1]) if one["rule"] == "loan.overdue"]
    assert late == ["TRA-0001", "TRA-0002"]
    in_time = rows(run("check", "--json", "--on", "2019-12-31")[1])
    assert "loan.overdue" not in {one["rule"] for one in in_time}
    assert run("housing", "back", "TRA-0001", "--on", "2026-11-25")[0] == 0
    late = [one["number"] for one in rows(run("check", "--json")[1]) if one["rule"] == "loan.overdue"]
    assert late == ["TRA-0002"]


def test_a_note_taken_off(run) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("housing", "off", "TRA-0001", "--text", "For Leida")
    (record,) = rows(run("show", out.strip(), "--json")[1])
    assert code == 0 and record["related"] == [{"kind": "attached_to", "number": "TRA-0001"}]


def test_a_survey_without_a_screen(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    answer = '{"enclosure": "PVC pocket", "attached": ["paper clip"]}'
    assert run("survey", "--note", f"TRA-0001={answer}")[0] == 0
    code, out, _ = run("survey", "1", "--json", "--work", tmp_path / "work.pdf", "--scan", tmp_path / "scan.csv")
    found = rows(out)
    assert code == 0 and {one["list"] for one in found} >= {"do", "buy"}
    assert any(
        one["what"] == "Take fasteners off" and "TRA-0001" in one["items"] for one in found if one["list"] == "do"
    )
    assert (tmp_path / "work.pdf").read_bytes().startswith(b"%PDF-1.7")
    code, _, err = run("survey", "1")
    assert code == 2 and "needs a terminal" in err


def test_the_climate_of_a_file_and_of_a_location(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    log = tmp_path / "logger.csv"
    start = datetime(2026, 3, 1)
    lines = ["Time;Temperature [°C];Humidity [%]"]
    lines += [f"{start + timedelta(hours=at):%d.%m.%Y %H:%M};20,0;66,0" for at in range(72)]
    log.write_text("\n".join(lines), encoding="utf-8")
    code, out, _ = run("climate", log, "--json", "--order", "dmy")
    (found,) = rows(out)
    assert code == 1 and found["figures"]["mean_dew_point"] == 13.46  # type: ignore[index]
    assert "climate.mould" in [one["rule"] for one in found["findings"]]  # type: ignore[attr-defined]
    run("housing", "place", "Cellar")
    code, out, _ = run("climate", log, "--order", "dmy", "--at", "Cellar", "--png", tmp_path / "chart.png")
    assert code == 1 and "Mould watch" in out and "█" in out and (tmp_path / "chart.png").stat().st_size > 1000
    assert run("climate", "--reading", "68F", "50%", "--at", "Cellar", "--when", "2026-04-01T10:00")[0] == 0
    code, out, _ = run("climate", "--json")
    counts = {one["where"]: one["figures"]["count"] for one in rows(out)}  # type: ignore[index]
    assert counts == {"Cellar": 73, "House above the harbour / Wash-house": 168}


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["housing", "renumber", "1"], "is no pair"),
        (["housing", "move", "TRA-0001", "--to", "77"], "no box or folder 77"),
        (["housing", "move", "TRA-9999", "--to", "1"], "no photograph TRA-9999"),
        (["housing", "lend", "TRA-0001", "--by", "A", "--due", "soon"], "is not a date"),
        (["climate", "--reading", "20C", "50%"], "Where was that read"),
        (["survey", "--note", "TRA-0001=x"], "no JSON object"),
        (["survey", "--work", "list.txt"], "neither .csv nor .pdf"),
    ],
)
def test_what_cannot_be_meant_is_said(run, arguments: list[str], words: str) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run(*arguments)
    assert code == 2 and words in err


def test_containers_are_listed_with_what_is_in_them(run) -> None:  # type: ignore[no-untyped-def]
    lines = run("housing", "what", "1/1")[1].splitlines()
    assert lines[0] == "Box 1 / Folder 1: 4 items, 0 containers, House above the harbour / Wash-house"
    assert lines[1].split() == ["1", "TRA-0001"]
    assert rows(run("housing", "what", "1/1", "--json")[1])[1] == {"number": "TRA-0001", "mark": "1/1/1"}
    inside = run("housing", "what", "1")[1].splitlines()
    folders = [f"Box 1 / Folder {number}" for number in (1, 2, 3)]
    assert [line.split(":")[0] for line in inside] == ["Box 1", *folders]
    assert run("housing", "what")[1].splitlines()[:4] == inside


def test_places_counted_anew_and_nothing_to_change(run) -> None:  # type: ignore[no-untyped-def]
    assert run("housing", "close", "1/1")[2] == "Nothing would change.\n"
    assert run("housing", "move", "TRA-0001", "--to", "2/1")[0] == 0
    code, _, err = run("housing", "close", "1/1")
    assert code == 0 and "TRA-0002: 1/1/2 → 1/1/1" in err
    assert "Done: count the places anew. boxlore housing undo takes it back" in err
    code, _, err = run("housing", "merge", "1", "2")
    assert code == 2


def test_there_is_nothing_of_housing_to_take_back(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    run("new", tmp_path / "empty")
    code, _, err = run("-c", tmp_path / "empty", "housing", "undo")
    assert code == 2 and "There is nothing of housing to take back." in err


def test_the_scans_are_looked_over(run) -> None:  # type: ignore[no-untyped-def]
    """150 mm are 5.9 inches: 1320 pixels are 224 an inch, against 600 (common practice by size, a university guide)."""
    code, out, err = run("housing", "scans", "TRA-0001")
    assert (code, err) == (1, "6 findings.\n")
    assert "The recto scan has 224 pixels an inch; 600 at least are the guidance for this size." in out
    assert "         1320 × 1002 pixels for 150 × 110 mm (size and pixels)" in out.splitlines()
    found = rows(run("housing", "scans", "TRA-0001", "--json")[1])
    assert [str(row["rule"]) for row in found] == ["scan.coarse", "scan.resized", "scan.profile"] * 2


def test_print_sizes(run) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("housing", "scans", "TRA-0001", "--prints", "--json")
    found = rows(out)
    assert code == 0 and [one["side"] for one in found] == ["recto", "verso"]
    recto, _ = run("housing", "scans", "TRA-0001", "--prints")[1].splitlines()
    # 1320 × 1002 pixels at 300 an inch are 111.8 × 84.8 mm, at 200 an inch 167.6 × 127.3 mm
    assert recto == "TRA-0001  recto: sharp up to 112 × 85 mm (300 ppi), usable up to 168 × 127 mm (200 ppi)"
