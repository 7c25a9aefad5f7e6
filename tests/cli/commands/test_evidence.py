"""`boxlore evidence` as a keeper and a script meet it (our own contract)."""

import json
from pathlib import Path


def rows(out: str) -> list[dict[str, object]]:
    return [json.loads(line) for line in out.splitlines()]


def test_what_is_worked_out_and_why(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", demo, "evidence")
    assert code == 1 and "TRA-0020" in out and "between 1975 April 7 and 1975 July 4" in out and "TRA-0002" not in out
    assert "worked out" in err
    code, out, _ = run("-c", demo, "evidence", "TRA-0020", "--why")
    assert code == 0 and out.splitlines()[1:4] == [
        "    because TRA-0020 is dated “7/4/75”  [Leida Rourke; likely]",
        "    its date “7/4/75” waits for an answer: boxlore check",
    ]


def test_what_cannot_all_be_so_is_shown_with_who_says_it(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("-c", demo, "evidence", "TRA-0003")
    assert code == 1 and "1 contradiction:" in out
    assert "“the spring of 1913”  [Leida Rourke; guess]" in out and "[written on the back; sure]" in out
    code, out, _ = run("-c", demo, "evidence", "--all")
    assert code == 1 and "1 contradiction:" in out and "TRA-0002" in out


def test_as_json(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("-c", demo, "evidence", "--json")
    by_number = {row["number"]: row for row in rows(out)}
    assert code == 1 and len(by_number) == 37
    row = by_number["TRA-0020"]
    wanted = {"number", "mark", "earliest", "latest", "edtf", "because", "contradiction", "contradictions", "told_also"}
    assert wanted == set(row)
    assert (row["earliest"], row["latest"], row["edtf"]) == ("1975-04-07", "1975-07-04", "[1975-04-07..1975-07-04]")
    assert row["because"][0] == {  # type: ignore[index]  # a list of objects
        "words": "TRA-0020 is dated “7/4/75”", "source": "Leida Rourke", "strength": "likely"
    }  # fmt: skip
    assert row["contradiction"] == [] and len(by_number["TRA-0003"]["contradiction"]) == 2  # type: ignore[arg-type]
    lives = [row for row in rows(run("-c", demo, "evidence", "--all", "--json")[1]) if "person" in row]
    assert any(row["person"] == "Kristjan Tamm" and row["fact"] == "died" for row in lives)


def test_a_contradiction_of_a_life_alone_has_a_row_of_its_own(run, bare) -> None:  # type: ignore[no-untyped-def]
    folder = bare(1)
    assert run("-c", folder, "tell", "TRA-0001", "person", "Ants Saar")[0] == 0
    for field, words in (("born", "1910"), ("died", "1905")):
        assert run("-c", folder, "people", "tell", "Ants Saar", field, words)[0] == 0
    code, out, _ = run("-c", folder, "evidence", "--all", "--json")
    disputed = {row["fact"]: row for row in rows(out) if row.get("person") == "Ants Saar"}
    assert code == 1 and set(disputed) == {"born", "died"}
    assert disputed["born"]["contradictions"] == disputed["died"]["contradictions"] != []
    assert any("1905" in str(claim) for claim in disputed["born"]["contradiction"])  # type: ignore[attr-defined]  # a list
    assert "but see the contradiction below" in run("-c", folder, "evidence", "TRA-0001")[1]


def test_one_wrong_date_is_one_contradiction_with_what_else_tells_of_it(run, bare) -> None:  # type: ignore[no-untyped-def]
    folder = bare(1)
    assert run("-c", folder, "tell", "TRA-0001", "date", "1890")[0] == 0
    for name, born in (("Ants Saar", "1910"), ("Elts Saar", "1912"), ("Mall Saar", "1914")):
        assert run("-c", folder, "tell", "TRA-0001", "person", name)[0] == 0
        assert run("-c", folder, "people", "tell", name, "born", born)[0] == 0
    out = run("-c", folder, "evidence", "TRA-0001")[1]
    assert "1 contradiction:" in out and "(it shows in 2 more ways, also by:" in out
    (row,) = rows(run("-c", folder, "evidence", "--json", "TRA-0001")[1])
    assert len(row["contradictions"]) == 1 and row["told_also"] == [2]  # type: ignore[arg-type]  # a list
    assert run("-c", folder, "tell", "TRA-0001", "person", "Juta Saar")[0] == 0
    assert run("-c", folder, "people", "tell", "Juta Saar", "born", "1916")[0] == 0
    assert "    and more)" in run("-c", folder, "evidence", "TRA-0001")[1]


def test_beside_the_record_of_an_item_without_a_date(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    out = run("-c", demo, "show", "TRA-0020")[1]
    assert "  Worked out: between 1975 April 7 and 1975 July 4  (why: boxlore evidence TRA-0020 --why)" in out
    assert rows(run("-c", demo, "show", "TRA-0020", "--json")[1])[0]["worked_out"] == "[1975-04-07..1975-07-04]"
    assert "Worked out" not in run("-c", demo, "show", "TRA-0002")[1]


def test_the_record_of_an_item_says_what_evidence_says(run, tmp_path: Path, monkeypatch) -> None:  # type: ignore[no-untyped-def]
    folder = tmp_path / "c"
    run("new", folder, "--prefix", "TR")
    run("-c", folder, "intake", "--without-scan", "2", "--yes")
    for number, who in (("TRA-0001", "Ants Saar"), ("TRA-0002", "Mall Saar")):
        run("-c", folder, "tell", number, "person", who)
    for who, field, words in (
        ("Ants Saar", "born", "1915"), ("Ants Saar", "died", "January 1943"), ("Mall Saar", "born", "4 April 1944"),
        ("Mall Saar", "father", "Ants Saar"),
    ):  # fmt: skip
        assert run("-c", folder, "people", "tell", who, field, words)[0] == 0
    run("-c", folder, "tell", "TRA-0002", "story", "Mall was ten", "--by", "narrator:Ants Saar")
    run("-c", folder, "tell", "TRA-0002", "story", "Mall was six", "--by", "narrator:Ants Saar")
    left_out = "    left out, for not all can be so that is told of that life: Ants Saar died “January 1943”"
    for number in ("TRA-0001", "TRA-0002"):
        record, whole = run("-c", folder, "show", number)[1], run("-c", folder, "evidence", number)[1]
        date = whole.splitlines()[0].partition("worked out: ")[2]
        assert date and f"  Worked out: {date}  (why: boxlore evidence {number} --why)" in record.splitlines()
        assert (left_out in record) is (left_out in whole) is (number == "TRA-0001")
        assert ("These cannot all be so" in record) is ("These cannot all be so" in whole) is (number == "TRA-0002")
    monkeypatch.setattr("boxlore.tasks.people.evidence.MOST_AT_ONCE", 1)
    assert "  Worked out: see boxlore evidence TRA-0001 --why" in run("-c", folder, "show", "TRA-0001")[1]
    assert rows(run("-c", folder, "show", "TRA-0001", "--json")[1])[0]["worked_out"] is None


def test_what_to_ask_a_teller_says_nothing_of_what_is_told(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("-c", demo, "evidence", "--ask", "Liisi Kuusk")
    assert code == 0 and "TRA-0021: When was this taken" in out and "TRA-0023: How old does Mari Tamm look" in out
    assert "19" not in out
    asked = rows(run("-c", demo, "evidence", "--ask", "Liisi Kuusk", "--json", "--minutes", "2")[1])
    assert len(asked) == 1 and set(asked[0]) == {"number", "ask", "question", "settles_years", "sad"}
    assert run("-c", demo, "evidence", "--ask", "Leida Rourke", "--why")[0] == 2
    assert run("-c", demo, "evidence", "TRA-0999")[0] == 2


def test_an_empty_collection_has_nothing(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    run("new", tmp_path / "c")
    code, out, err = run("-c", tmp_path / "c", "evidence")
    assert (code, out) == (0, "") and "Nothing more can be worked out." in err
