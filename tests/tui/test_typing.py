"""Typing at full speed in a real terminal: every word on its own item, whatever way one leaves.

Rules of our own (no outside source): no word lands on another item; what the screen called saved is kept.
"""

import json
import re
import signal
from collections.abc import Callable
from http.client import HTTPConnection
from pathlib import Path
from typing import Any

import pytest
from tests.drawn import IN_CI, some

from boxlore.core.people.consent import make_consent
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.originals.housing_changes import About, note_container
from boxlore.tasks.people.registry import consent as keep_consent
from boxlore.tasks.people.registry import find_person
from boxlore.tasks.telling.statements import Teller, Telling

Opens = Callable[..., Any]
Told = Callable[[], dict[str, Record]]

SIT = ("sit", "--narrator", "Ellen Rourke")


def people(record: Record) -> list[str]:
    return [one.name for one in record.shown()]


@pytest.mark.parametrize("when", ["at once", "when it is shown"])
def test_a_burst_across_five_items(terminal: Opens, folder: Path, told: Told, when: str) -> None:
    """Even keys typed before the program has drawn anything."""
    window = terminal("-c", folder, *SIT, cold=True)
    if when == "when it is shown":
        window.wait_for("Tell me about this photograph")
    told_of = (
        "Story {n}: the bx⟨Back⟩oat{n}⟨Tab⟩Anna Berg {n}⟨Enter⟩Carl Dahk⟨Back⟩l {n}⟨Tab⟩19{n}0⟨Tab⟩⟨Tab⟩Day {n}⟨PgDn⟩"
    )
    window.send("".join(told_of.format(n=n) for n in range(1, 6)) + "The sixth")
    window.wait_for("6 of 8")  # Ctrl+Q itself is eaten by a terminal that no program has taken over yet
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    found = told()
    for n in range(1, 6):
        record = found[f"TRA-000{n}"]
        assert record.words("story") == f"Story {n}: the boat{n}"
        assert people(record) == [f"Anna Berg {n}", f"Carl Dahl {n}"]
        assert record.words("date") == f"19{n}0"
        assert record.words("occasion") == f"Day {n}"
    assert found["TRA-0006"].words("story") == "The sixth"
    assert not found["TRA-0007"].told
    assert found["TRA-0001"].first("story").said_by == "Ellen Rourke"  # type: ignore[union-attr]  # told just above


@pytest.mark.parametrize("way", ["SIGHUP", "SIGTERM", "SIGINT", "SIGKILL", "window", "unheard"])
def test_leaving_in_mid_word_loses_nothing_shown(terminal: Opens, folder: Path, told: Told, way: str) -> None:
    window = terminal("-c", folder, *SIT, deaf=way == "unheard", mute=way in ("SIGTERM", "window"))
    window.wait_for("Tell me about this photograph")
    window.send("The regatta at Port Chal")
    window.wait_for_words("The regatta at Port Chal", "· saved")
    if way in ("window", "unheard"):
        window.hang_up()
    else:
        window.signal(getattr(signal, way))
    window.wait()
    if way in ("SIGKILL", "window", "unheard"):
        again = terminal("-c", folder, *SIT)
        again.wait_for("Tell me about this photograph")
        if way == "SIGKILL":
            again.wait_for("After an interruption: one answer that was being typed is kept")
        again.send("⟨^Q⟩")
        assert again.wait() == 0
    assert told()["TRA-0001"].words("story") == "The regatta at Port Chal"


def test_a_draft_is_found_by_a_search_while_it_is_typed(terminal: Opens, folder: Path) -> None:
    window = terminal("-c", folder, *SIT)
    window.wait_for("Tell me about")
    window.send("The lighthouse keeper")
    window.wait_for("The lighthouse keeper")
    other = terminal("-c", folder, "find", "lighthouse", columns=120)
    assert other.wait() == 0
    assert "TRA-0001" in other.text


def test_editing_keys_keep_their_place_in_a_burst(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT)
    window.wait_for("Tell me about")
    window.send("Helmo⟨Back⟩i on the quat⟨Back⟩y⟨Enter⟩with⟨Back⟩⟨Back⟩⟨Left⟩⟨Left⟩x⟨PgDn⟩⟨PgUp⟩⟨PgDn⟩Two⟨^Q⟩")
    assert window.wait() == 0
    assert told()["TRA-0001"].words("story") == "Helmi on the quay\nxwi"
    assert told()["TRA-0002"].words("story") == "Two"


def test_a_known_name_is_taken_with_tab(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT)
    window.wait_for("Tell me about")
    window.send("⟨Tab⟩Kristjan Tamm⟨Enter⟩⟨PgDn⟩⟨Tab⟩kri⟨Tab⟩⟨Tab⟩1912⟨^Q⟩")
    assert window.wait() == 0
    first, second = told()["TRA-0001"], told()["TRA-0002"]
    assert people(second) == ["Kristjan Tamm"]
    assert first.shown()[0].person == second.shown()[0].person != ""
    assert second.words("date") == "1912"


def test_undo_and_redo_over_items(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT)
    window.wait_for("Tell me about")
    window.send("One⟨PgDn⟩Two⟨PgDn⟩Three⟨PgDn⟩")
    window.wait_for("4 of 8")
    window.send("⟨^Z⟩⟨^Z⟩")
    window.wait_for("Taken back at TRA-0002, which is on the screen again: Story: Two")
    window.send("⟨^Y⟩")
    window.wait_for("Done again: Story: Two")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    assert [told()[f"TRA-000{n}"].words("story") for n in (1, 2, 3)] == ["One", "Two", ""]


def test_not_known_ask_later_and_same_as_before(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT)
    window.wait_for("Tell me about")
    window.send(
        "⟨Tab⟩Jaan Tamm⟨Enter⟩⟨Enter⟩about 1938⟨PgDn⟩⟨Tab⟩⟨Tab⟩⟨Tab⟩⟨F5⟩⟨F8⟩1A quay⟨F9⟩⟨Back⟩, ask Joan⟨Enter⟩⟨PgDn⟩"
    )
    window.wait_for("3 of 8")
    window.send("⟨F3⟩⟨Tab⟩⟨Tab⟩⟨Tab⟩⟨Tab⟩")
    window.wait_for(lambda text: "1 photograph to ask" in text and "TRA-0002" in text)
    window.send("⟨Enter⟩")
    window.wait_for("2 of 8")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    record = told()["TRA-0002"]
    assert people(record) == ["Jaan Tamm"]
    assert "place" in record.not_known
    assert record.words("occasion") == "A quay"


def test_find_in_a_burst_opens_what_it_says(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT)
    window.wait_for("Tell me about")
    window.send("⟨PgDn⟩⟨PgDn⟩A wedding in Reval⟨PgDn⟩⟨F3⟩wedding⟨Enter⟩⟨Tab⟩Helmi⟨F3⟩TRA-0007⟨Enter⟩Seven⟨^Q⟩")
    assert window.wait() == 0
    assert people(told()["TRA-0003"]) == ["Helmi"]
    assert told()["TRA-0007"].words("story") == "Seven"


def test_many_pasted_lines_and_control_letters(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT)
    window.wait_for("Tell me about")
    window.send(
        "\x1b[200~first\r\nsecond\tline\x00\r\nthird\x1b[201~⟨Tab⟩\x1b[200~Anna Berg\nCarl Dahl\x1b[201~⟨PgDn⟩Next⟨^Q⟩"
    )
    assert window.wait() == 0
    record = told()["TRA-0001"]
    assert record.words("story").split("\n")[0] == "first"
    assert record.words("story").split("\n")[2] == "third"
    assert people(record) == ["Anna Berg", "Carl Dahl"]
    assert told()["TRA-0002"].words("story") == "Next"


HOSTILE = ["[/b]Anna", "[bold red]x", "a [link=file:///etc] b", "$primary %s {0}", "名前", "e\u0301\u200dx"]


def test_hostile_words_are_words(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT, columns=120, rows=40)
    window.wait_for("Tell me about")
    names = "".join(f"{name}⟨Enter⟩" for name in HOSTILE)
    window.send(f"[/b] story [a]⟨Tab⟩{names}⟨F4⟩")
    window.wait_for("who says so")
    window.send("⟨Esc⟩")
    window.wait_for("Who is in it?")
    window.send("⟨F3⟩[/b]")
    window.wait_for("1 found")
    window.send("⟨Enter⟩⟨^Q⟩")
    assert window.wait() == 0
    assert [shown.told.words for shown in told()["TRA-0001"].shown()] == HOSTILE


def test_one_cell_and_back(terminal: Opens, folder: Path, told: Told) -> None:
    with open_collection(folder) as collection:
        act = collection.act("housed")
        box = note_container(collection, "7", About()).id
        act.state(Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or ""), "kept", f"{box} 1")
        act.done()
    window = terminal("-c", folder, *SIT, columns=120, rows=40)
    window.wait_for("Tell me about this photograph")
    window.wait_for("TRA-0001 · Box 7 / Item 1")
    window.send("Kept while ")
    window.resize(1, 1)
    window.send("small")
    window.resize(200, 60)
    window.wait_for("Kept while small")
    window.resize(80, 24)
    window.wait_for("TRA-0001 · 7/1 ")  # where it is kept, in short
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    assert told()["TRA-0001"].words("story") == "Kept while small"


def test_a_second_terminal_reads_and_says_why(terminal: Opens, folder: Path) -> None:
    first = terminal("-c", folder, *SIT)
    first.wait_for("Tell me about this photograph")
    second = terminal("-c", folder, "sit")
    second.wait_for("For reading only: Another Boxlore is writing")
    second.send("lost⟨Tab⟩⟨PgDn⟩")
    assert "lost" not in second.wait_for("2 of 8")
    second.send("⟨^Q⟩")
    assert second.wait() == 0
    first.send("⟨^Q⟩")
    assert first.wait() == 0


@pytest.mark.parametrize(
    "variables", some([{"NO_COLOR": "1"}, {"TERM": "xterm-16color", "COLORTERM": ""}, {"COLORFGBG": "0;15"}])
)
def test_other_colours(terminal: Opens, folder: Path, variables: dict[str, str]) -> None:
    window = terminal("-c", folder, *SIT, columns=120, rows=40, cold=True, **variables)
    window.send("⟨Tab⟩Anna⟨F2⟩")
    window.wait_for("F2 next side")
    window.send("⟨Esc⟩")
    window.wait_for("▸ Who is in it?")
    window.send("⟨^Q⟩")
    assert window.wait() == 0


def test_bare_start_offers_three_ways_and_starts_one(terminal: Opens, tmp_path: Path) -> None:
    window = terminal("-c", tmp_path / "none", "sit")
    assert window.wait() == 3
    assert "There is no collection in" in window.text
    (tmp_path / "empty").mkdir()
    window = terminal(PATH=str(tmp_path), HOME=str(tmp_path / "empty"))
    window.wait_for("Start a collection")
    window.send("s⟨Enter⟩⟨Enter⟩⟨Enter⟩")
    window.wait_for("When is summer?")
    window.send("⟨^S⟩")
    window.wait_for("Nothing is in it yet")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    assert (tmp_path / "empty" / "photographs" / "collection.sqlite").is_file()


def test_the_guide_teaches_from_inside(terminal: Opens, folder: Path) -> None:
    window = terminal("-c", folder, "sit")
    window.send("⟨F1⟩")
    window.wait_for("You cannot break anything")
    window.send("⟨Esc⟩")
    window.wait_for("Tell me about this photograph")
    window.send("⟨Esc⟩")
    window.wait_for("Hand on")
    window.send("⟨Esc⟩⟨^Q⟩")
    assert window.wait() == 0


@pytest.mark.skipif(not IN_CI, reason="makes the whole demo once more, as README's first line does: in CI")
def test_the_demonstration_from_inside(terminal: Opens, tmp_path: Path) -> None:
    (tmp_path / "empty").mkdir()
    window = terminal(HOME=str(tmp_path / "empty"), columns=120, rows=40)
    window.wait_for("Start a collection")
    window.send("d⟨Enter⟩")
    window.wait_for("Enter or Esc goes back")
    window.send("⟨Enter⟩")
    window.wait_for("Who tells today?")
    window.send("i1")
    window.wait_for("Tell me about this photograph")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    assert (tmp_path / "empty" / "tamm_family" / "collection.sqlite").is_file()


def test_a_picture_is_marked_by_keys_and_named(terminal: Opens, pictured: Path, told: Told) -> None:
    """In one burst: the cross, Enter, the name; the words land at the marker, the next name does not."""
    window = terminal("-c", pictured, *SIT, columns=120, rows=40)
    window.wait_for("Tell me about this photograph")
    window.send("⟨F2⟩")
    window.wait_for("Arrows and Enter set one")
    window.send("⟨Left⟩⟨Left⟩⟨Left⟩⟨Enter⟩Jaan Tamm⟨Enter⟩Helmi Tamm⟨Enter⟩⟨F2⟩")
    window.wait_for("1 Jaan Tamm")
    window.send("1+-0⟨Esc⟩⟨PgDn⟩Next⟨^Q⟩")
    assert window.wait() == 0
    record = told()["TRA-0001"]
    assert [(one.name, one.number) for one in record.shown()] == [("Jaan Tamm", 1), ("Helmi Tamm", 0)]
    assert record.shown()[0].area == pytest.approx((0.42, 0.5), abs=0.001)


def test_a_marker_is_moved_and_taken_away_by_keys(terminal: Opens, pictured: Path, told: Told) -> None:
    window = terminal("-c", pictured, *SIT, columns=120, rows=40)
    window.wait_for("Tell me about this photograph")
    window.send("⟨F2⟩⟨Left⟩⟨Left⟩⟨Enter⟩Jaan Tamm⟨Enter⟩⟨F2⟩")
    window.wait_for("1 Jaan Tamm")
    window.send("⟨Del⟩")
    window.wait_for("Take a marker in hand first")
    window.send("1")
    window.wait_for("1 in hand")
    window.send("0⟨Del⟩")
    window.wait_for("Take a marker in hand first")
    window.send("1⟨Right⟩⟨Right⟩⟨Right⟩⟨Enter⟩")
    window.wait_for("Marker 1 is moved.")
    area = told()["TRA-0001"].shown()[0].area
    assert area[0] > 0.47 and area[1] == pytest.approx(0.5, abs=0.001)
    window.send("1⟨Del⟩")
    window.wait_for_words("Marker 1 is taken away. Jaan Tamm is still told of this photograph.")
    assert [(one.name, one.number) for one in told()["TRA-0001"].shown()] == [("Jaan Tamm", 0)]
    window.send("⟨^Z⟩")
    window.wait_for("Taken back: marker 1 taken away")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    record = told()["TRA-0001"]
    assert [(one.name, one.number, one.area) for one in record.shown()] == [("Jaan Tamm", 1, area)]


def test_a_click_on_the_picture_is_a_marker(terminal: Opens, pictured: Path, told: Told) -> None:
    """SGR mouse reports (xterm control sequences, 1006): button, column, row, M for down and m for up."""
    window = terminal("-c", pictured, *SIT, columns=120, rows=40)
    window.wait_for("▀▀▀▀▀▀▀▀")
    window.send("Said first.\x1b[<0;37;18M\x1b[<0;37;18m")
    window.wait_for("Who is at 1?")
    window.send("Jaan Tamm⟨Enter⟩")
    window.wait_for("Jaan Tamm")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    record = told()["TRA-0001"]
    assert record.words("story") == "Said first."
    assert [(one.name, one.number) for one in record.shown()] == [("Jaan Tamm", 1)]
    assert record.shown()[0].area == pytest.approx((0.5, 0.5), abs=0.06)


def test_a_care_note_comes_before_the_picture(terminal: Opens, pictured: Path) -> None:
    with open_collection(pictured) as collection:
        item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
        Teller(collection).tell(item, "care", "A funeral. Ask first.", Telling())
    window = terminal("-c", pictured, *SIT, columns=120, rows=40)
    window.wait_for("Care: read the note below first")
    assert "▀▀▀▀" not in window.text
    window.send("⟨F2⟩")
    window.wait_for("▀▀▀▀▀▀▀▀")
    window.wait_for_words("Care: A funeral. Ask first.")
    window.send("⟨^Q⟩")
    assert window.wait() == 0


def test_the_course_of_a_sitting(terminal: Opens, folder: Path) -> None:
    """Agreement, rest, clap, close and summary, by the keys a person would press."""
    window = terminal("-c", folder, "sit", columns=100, rows=34)
    window.wait_for("Tell me about this photograph")

    def step(wanted: str) -> None:
        window.send("⟨Esc⟩")
        window.send(menu_key(window.wait_for("Keep safe"), "Sit"))
        window.send(menu_key(window.wait_for("This sitting  "), "This sitting"))
        text = window.wait_for(lambda shown: "This sitting: " in shown and f"  {wanted}" in shown)
        window.send(menu_key(text, wanted))

    step("Agreement")
    window.wait_for("You may leave out anything")
    window.send("Leida Rourke⟨Enter⟩Mia⟨Enter⟩her home⟨Enter⟩2⟨Enter⟩Leida Rourke⟨Enter⟩yes⟨Enter⟩")
    window.wait_for("Leida Rourke tells. The agreement is noted")
    window.send("The regatta.⟨PgDn⟩")
    window.wait_for("2 of 8")
    step("Clap")
    window.wait_for("Clap 1 noted")
    step("Rest")
    window.wait_for("A rest.")
    window.send("⟨Enter⟩")
    window.wait_for("Going on.")
    step("End the sitting")
    window.wait_for("What to ask next time?")
    window.send("the farm; the crossing⟨Enter⟩")
    window.wait_for("Next time: the crossing")
    window.send("⟨Enter⟩⟨^Q⟩")
    assert window.wait() == 0
    with open_collection(folder, write=False) as collection:
        [(_, rows)] = list(collection.store.subjects(Kind.SITTING))
    found = {statement.field: statement.words for statement, _ in rows}
    assert "Given by Leida Rourke" in found["consent"]
    assert [json.loads(one.words)["step"] for one, _ in rows if one.field == "course"] == [
        "recording started",
        "clap",
        "rest",
        "go on",
        "close",
    ]


def test_consent_is_asked_again_by_one_key(terminal: Opens, folder: Path) -> None:
    """With a teller nothing takes keys first: it is named above the keys, and asked under “This sitting”."""
    with open_collection(folder) as collection:
        teller = Teller(collection)
        act = collection.act("people")
        for name in ("Leida Rourke", "Joan Tamm"):
            teller.add(act, act.new(Kind.PERSON), "name", name, Telling())
        act.done()
        for name in ("Leida Rourke", "Joan Tamm"):
            keep_consent(collection, find_person(collection, name), make_consent(["name"], "2026-01-05"))
    window = terminal("-c", folder, "sit", "--narrator", "Leida Rourke", "--no-viewing", columns=120, rows=34)
    window.wait_for("Consent to ask for again: Leida Rourke: name; Joan Tamm: name")
    window.send("⟨Esc⟩")
    window.send(menu_key(window.wait_for("Keep safe"), "Sit"))
    window.send(menu_key(window.wait_for("This sitting  "), "This sitting"))
    text = window.wait_for(lambda shown: "This sitting: " in shown and "2 to ask" in shown)
    window.send(menu_key(text, "Consent, asked again"))
    window.wait_for("May it stay so? Leida Rourke: name")
    window.send("1")
    window.wait_for("May it stay so? Joan Tamm: name")
    window.send("2")
    window.wait_for("Joan Tamm: withdrawn")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    with open_collection(folder, write=False) as collection:
        known = {one.name: one.consents for one in collection.people().values()}
    assert [(one.given, bool(one.sitting)) for one in known["Leida Rourke"]] == [(True, False), (True, True)]
    assert [(one.given, bool(one.sitting)) for one in known["Joan Tamm"]] == [(True, False), (False, True)]


def menu_key(text: str, name: str) -> str:
    """The letter or digit before a line of a menu."""
    found = re.search(rf"([0-9a-z])  {re.escape(name)}", text)
    assert found, text
    return found[1]


def test_the_same_people_for_several_picked_in_the_list(terminal: Opens, folder: Path, told: Told) -> None:
    window = terminal("-c", folder, *SIT, columns=100, rows=34)
    window.wait_for("Tell me about")
    window.send("⟨Tab⟩Jaan Tamm⟨Enter⟩⟨F3⟩")
    window.wait_for("All photographs")
    window.send("⟨Down⟩⟨Ins⟩⟨Ins⟩⟨F8⟩")
    window.wait_for("2 picked: as in TRA-0001")
    window.send("1")
    window.wait_for("2 taken over from TRA-0001")
    window.send("⟨Esc⟩⟨^Q⟩")
    assert window.wait() == 0
    found = told()
    assert [people(found[f"TRA-000{n}"]) for n in (1, 2, 3, 4)] == [["Jaan Tamm"]] * 3 + [[]]


def test_a_newcomer_with_only_the_guide_captions_three(terminal: Opens, folder: Path, told: Told) -> None:
    """Every key pressed here is one that the guide's “Your first three photographs” names."""
    window = terminal("-c", folder, "sit")
    window.wait_for("F1 Guide")
    window.send("⟨F1⟩")
    window.wait_for("Your first three photographs")
    window.send("⟨Down⟩" * 12)
    window.wait_for_words("Stop whenever you like", "Tab", "Enter", "F5", "PgDn", "Ctrl+Q")
    window.send("⟨Esc⟩")
    for n in range(1, 4):
        window.wait_for(f"{n} of 8")
        window.send(f"Story {n}⟨Tab⟩Jaan Tamm⟨Enter⟩⟨Tab⟩⟨F5⟩⟨PgDn⟩")
    window.wait_for("4 of 8")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    for n in range(1, 4):
        record = told()[f"TRA-000{n}"]
        assert (record.words("story"), people(record)) == (f"Story {n}", ["Jaan Tamm"])
        assert "date" in record.not_known


@pytest.mark.parametrize("size", [(80, 24), (120, 40), (200, 60)])
def test_the_screen_at_three_sizes(terminal: Opens, pictured: Path, size: tuple[int, int]) -> None:
    window = terminal("-c", pictured, *SIT, columns=size[0], rows=size[1])
    wide = size[0] >= 100
    whole = ("Page for the teller: http://127.0.0.1:", "Tell me about this photograph", "Ctrl+Q Leave", "TRA-0001")
    window.wait_for(lambda shown: all(one in shown for one in whole) and ("▀▀▀▀▀" in shown) == wide)
    window.send("⟨F3⟩")
    window.wait_for("All photographs")
    window.send("⟨Esc⟩⟨^Q⟩")
    assert window.wait() == 0


def test_a_touch_on_the_page_arrives_in_the_terminal(terminal: Opens, pictured: Path, told: Told) -> None:
    """The touch moves no cursor: what is being typed goes on where it was; the next name is at the marker."""
    window = terminal("-c", pictured, *SIT, columns=120, rows=40)
    text = window.wait_for(lambda shown: re.search(r"http://127\.0\.0\.1:\d+/\?key=\S{16}", shown))
    port, key = re.search(r"http://127\.0\.0\.1:(\d+)/\?key=(\S+)", text).groups()  # type: ignore[union-attr]  # just found
    window.send("The regatta")
    window.wait_for("The regatta")
    sent = {"Cookie": f"boxlore_{port}={key}", "Origin": f"http://127.0.0.1:{port}"}
    line = HTTPConnection("127.0.0.1", int(port), timeout=20)
    line.request("POST", "/tap", json.dumps({"side": 1, "x": 0.25, "y": 0.5}), sent)
    answer = line.getresponse()
    assert (answer.status, answer.read()) == (200, b"{}")
    line.close()
    window.wait_for("Marker 1 was touched")
    window.send(" at Port Chalmers⟨Tab⟩Jaan Tamm⟨PgDn⟩")
    window.wait_for("2 of 2")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    record = told()["TRA-0001"]
    assert record.words("story") == "The regatta at Port Chalmers"
    assert [(one.name, one.number, one.area) for one in record.shown()] == [("Jaan Tamm", 1, (0.25, 0.5))]
