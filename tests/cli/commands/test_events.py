"""`boxlore events`: the family's time line from the shell (our own contract)."""

import json

from boxlore.tasks.collection.opening import open_collection


def test_the_time_line_from_the_shell(run, bare) -> None:  # type: ignore[no-untyped-def]
    home = bare(1)
    assert run("-c", home, "events", "list")[0] == 1
    run("-c", home, "tell", "TRA-0001", "date", "the summer after the christening")
    assert run("-c", home, "events", "list")[1] == "When was it: the christening? 1 photograph waits for it.\n"
    code, _, said = run("-c", home, "events", "add", "the christening", "December 1931", "--by", "narrator:Leida")
    assert code == 0 and "“the christening” is on the time line. 1 date of photographs is read again by it." in said
    assert run("-c", home, "events", "list")[1].startswith("December 1931: the christening  (Leida)  [")
    assert "→ 1932~" in run("-c", home, "date", "the year after the christening")[1]
    dated = run("-c", home, "events", "date", "christening", "1930", "--by", "narrator:Leida")[2]
    assert "the christening: 1930." in dated
    renamed = run("-c", home, "events", "rename", "christening", "Anna’s christening")[2]
    assert "is called “Anna’s christening”" in renamed
    rows = map(json.loads, run("-c", home, "events", "list", "--json")[1].splitlines())
    (row,) = [row for row in rows if row["own"]]
    assert (row["name"], row["edtf"], row["said"], row["kind"]) == ("Anna’s christening", "1930", "Leida", "other")
    assert "off the time line" in run("-c", home, "events", "remove", "Anna", "--for-good")[2]
    assert run("-c", home, "events", "list")[1] == "When was it: the christening? 1 photograph waits for it.\n"
    with open_collection(home, write=False) as collection:
        assert list(collection.store.subjects("event")) == []


def test_a_date_that_says_none_is_named(run, bare) -> None:  # type: ignore[no-untyped-def]
    home = bare(1)
    assert "with no date yet." in run("-c", home, "events", "add", "the move", "--kind", "house")[2]
    assert run("-c", home, "events", "list")[1].startswith("no date yet: the move  (the keeper)  [")
    assert "nothing leans on it" in run("-c", home, "events", "date", "move", "one spring")[2]
    assert run("-c", home, "events", "add", "the fire", "--kind", "banana")[0] == 2


def test_an_event_whose_name_stands_on_in_an_item_is_not_said_to_be_gone(run, bare) -> None:  # type: ignore[no-untyped-def]
    home = bare(1)
    run("-c", home, "events", "add", "The bankrupt sale", "1925")
    run("-c", home, "tell", "TRA-0001", "occasion", "The bankrupt sale")
    removed = run("-c", home, "events", "remove", "bankrupt", "--for-good")[2]
    assert "is off the time line, but words of it stand on: the lines above say where" in removed
