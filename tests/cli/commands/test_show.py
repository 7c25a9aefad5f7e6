"""`boxlore show` and `boxlore find` on the demo family, in lines for a reader (our own contract)."""

from pathlib import Path


def test_an_item_is_shown_with_who_says_so(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", demo, "show", "TRA-0001")
    lines = out.splitlines()
    assert (code, err) == (0, "")
    assert lines[:2] == ["TRA-0001 · Box 1 · Folder 1 · Item 1", "Reval harbour with the ships in"]
    assert "  When: 1908 or 09  (inscription:verso, sure)" in lines
    assert "  When: before 1910  (Leida Rourke, likely)" in lines
    assert "  1: perhaps a dock hand" in lines


def test_what_sources_disagree_about_and_what_nobody_knows_is_shown(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", mine, "tell", "TRA-0001", "date", "1950", "--by", "narrator:Con")[0] == 0
    assert run("-c", mine, "tell", "TRA-0001", "occasion", "--sure", "not-known")[0] == 0
    lines = run("-c", mine, "show", "1/1/1")[1].splitlines()
    (disagreeing,) = [line for line in lines if "Sources disagree: these dates cannot both be so: " in line]
    assert "“1908 or 09” (written on the back)" in disagreeing and "“1950” (Con" in disagreeing
    assert any(".settle" in line for line in lines)
    assert "  Occasion: asked, not known" in lines


def test_words_are_found_with_where_they_stand(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("-c", demo, "find", "wharf")
    assert code == 0
    (line,) = [line for line in out.splitlines() if line.startswith("TRA-0001")]
    assert "Juhan worked on the wharf" in line
    assert run("-c", demo, "find", "zeppelin") == (1, "", "Nothing told has all of these words: zeppelin\n")
