"""`boxlore show` and `boxlore find` on the demo family, in lines for a reader (our own contract)."""

import json
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


def test_who_may_see_what_is_shown(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", mine, "tell", "TRA-0001", "story", "A secret.", "--audience", "family")[0] == 0
    assert run("-c", mine, "people", "audience", "--item", "TRA-0001", "keeper", "--field", "story")[0] == 0
    assert run("-c", mine, "people", "audience", "--item", "TRA-0001", "archive:2060-01-01")[0] == 0
    lines = run("-c", mine, "show", "TRA-0001")[1].splitlines()
    assert "  Story: A secret.  (keeper, sure, for the family only)" in lines
    assert "  Who may see it: Story, for the keeper only" in lines
    assert "  Who may see it: all of it, closed in an archive until 2060-01-01" in lines
    assert json.loads(run("-c", mine, "show", "TRA-0001", "--json")[1])["audiences"] == [
        "story=keeper",
        "archive:2060-01-01",
    ]
    assert run("-c", mine, "people", "tell", "Leida", "note", "Told in private.")[0] == 0
    assert "Told in private.  (keeper, for the keeper only)" in run("-c", mine, "people", "show", "Leida")[1]


def test_words_are_found_with_where_they_stand(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("-c", demo, "find", "wharf")
    assert code == 0
    (line,) = [line for line in out.splitlines() if line.startswith("TRA-0001")]
    assert "Juhan worked on the wharf" in line
    assert run("-c", demo, "find", "zeppelin") == (1, "", "Nothing told has all of these words: zeppelin\n")
