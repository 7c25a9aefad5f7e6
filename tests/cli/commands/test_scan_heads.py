"""`boxlore scan heads`: proposed as lines, set only where it is said (our own contract)."""

from pathlib import Path

import pytest

from boxlore.disk.outlines import Head

DECK = Path(__file__).parents[3] / "demo_family" / "scans" / "on_deck_1949.png"


def test_heads_are_listed_and_taken(run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    monkeypatch.setattr("boxlore.disk.seeing.heads_in", lambda *_, **__: [Head(0.25, 0.5, 0.1, 0.1)])
    home = tmp_path / "tamm"
    run("new", home, "--prefix", "TR", "--title", "Tamm")
    run("-c", home, "intake", DECK, "--copy", "--yes")
    code, out, said = run("-c", home, "scan", "heads", "TRA-0001")
    assert code == 0 and out == "1 0.2500 0.5000\n" and "nothing is kept" in said
    assert "a marker is set on each" in run("-c", home, "scan", "heads", "TRA-0001", "--take")[2]
    assert "no head without a marker" in run("-c", home, "scan", "heads", "TRA-0001")[2]
    run("-c", home, "tell", "TRA-0001", "care", "A funeral. Ask first.")
    code, _, said = run("-c", home, "scan", "heads", "TRA-0001")
    assert code == 2 and "has a care note" in said and "--despite-care" in said
