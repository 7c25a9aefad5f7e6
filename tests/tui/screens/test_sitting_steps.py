"""The steps of a sitting by their cards: each form refuses what cannot be meant and opens again with it.

Agreement before questions; a passage closed on request: Oral History Association, Best Practices (2018).
"""

import re
import wave
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.tui.conftest import Hands, hands_on, tell_births

from boxlore.core.people.consent import make_consent
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.people.registry import consent as keep_consent
from boxlore.tasks.people.registry import find_person

Run = Callable[..., None]


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


async def step(hands: Hands, name: str) -> None:
    """A step by its name under “This sitting”."""
    await hands.press("escape")
    await hands.choose("Sit", "This sitting", name)


def fields(collection: Collection, kind: Kind) -> list[tuple[str, str]]:
    """(field, words) of everything told of the sitting, or of people, events and places."""
    return [(row.field, row.words) for _, rows in collection.store.subjects(kind) for row, _ in rows]


def test_the_agreement_is_asked_for_whole(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 60)) as hands:
            await step(hands, "Agreement")
            await hands.fill("", "Mia", "", "", "", "")
            assert "Nobody tells yet. Write who tells." in hands.text
            await hands.fill("Leida Rourke", "Mia", "her home", "2", "", "")
            assert "Terms were agreed to by somebody. Write who gave the agreement." in hands.text
            await hands.fill("Leida Rourke", "Mia", "her home", "2", "Leida Rourke", "yes")
            assert "Leida Rourke tells. The agreement is noted; the time log runs." in hands.text
        told = dict(fields(collection, Kind.SITTING))
        assert told["consent"] == "Given by Leida Rourke: the family, and an archive that keeps it closed for now."
        assert told["place"] == "her home"
        assert "recording started" in told["course"]

    run(sit())


def test_a_rest_and_going_on(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 60), narrator="Leida Rourke") as hands:
            await step(hands, "Rest")
            assert "A rest. The time log waits. Enter goes on." in hands.text
            await hands.press("enter")
            assert "Going on." in hands.text
            await step(hands, "End the sitting")
            await hands.fill("the farm; the crossing")
            assert "Leida Rourke: summary" in hands.text and "Next time: the crossing" in hands.text
            assert "The sitting has ended. Ctrl+Q leaves; “Go on” opens it again." in hands.text
            await hands.press("enter")
            assert "This sitting: Leida Rourke told; it has ended" in hands.text and "Clap" not in hands.text
            await hands.choose("Go on")
            assert "Going on." in hands.text
            await step(hands, "Summary")
            assert "photograph shown, " in hands.text and "Ctrl+Q leaves." not in hands.text

    run(sit())


def test_after_the_end_it_is_still_seen_on_a_narrow_screen_whether_all_is_saved(
    run: Run, collection: Collection
) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(80, 24), narrator="Leida Rourke") as hands:
            await step(hands, "End the sitting")
            await hands.fill("")
            await hands.press("escape", "escape")
            assert "TRA-0001 · no box yet Leida Rourke · ended · 1 of 8 · all saved" in hands.text

    run(sit())


def test_esc_at_the_question_of_closing_lets_the_sitting_go_on(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 60), narrator="Leida Rourke") as hands:
            await step(hands, "End the sitting")
            assert "Then write: What to ask next time?" in hands.text
            await hands.press("escape", "escape", "escape")
            await hands.choose("Sit", "This sitting")
            assert " Rest " in hands.text and " Go on " not in hands.text

    run(sit())


def test_the_recorder_the_clap_and_minutes_that_are_closed(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 60), narrator="Leida Rourke") as hands:
            await step(hands, "Note that a recorder runs")
            assert "of the sitting. “Clap” and one clap lay the recording beside it to the second." in hands.text
            await step(hands, "Clap")
            assert "Clap 1 noted. Find it in the recording afterwards, and give where it is heard." in hands.text
            await step(hands, "Keep the last minutes from outside")
            for wrong in ("soon", "0", "600"):
                await hands.fill(wrong, "")
                assert "Write how many minutes, such as 5." in hands.text
            await hands.fill("2,5", "the war")
            assert "The last 2,5 minutes are kept from outside: 0 answers, and the sound." in hands.text
            await step(hands, "Summary")
            assert re.search(r"Claps at 0:\d\d:\d\d", hands.text)
        assert "the war" in dict(fields(collection, Kind.SITTING))["closed"]

    run(sit())


def test_a_recording_and_a_paper_are_kept(run: Run, collection: Collection, tmp_path: Path) -> None:
    sound, paper, text = tmp_path / "call.wav", tmp_path / "agreement.pdf", tmp_path / "notes.txt"
    with wave.open(str(sound), "wb") as file:
        file.setparams((1, 2, 8000, 0, "NONE", ""))
        file.writeframes(bytes(16000))
    paper.write_bytes(b"%PDF-1.7\n")
    text.write_text("notes", "utf-8")

    async def sit() -> None:
        async with hands_on(collection, size=(120, 60), narrator="Leida Rourke") as hands:
            await step(hands, "Keep a recording")
            await hands.fill("", "")
            assert "No file is named. Write its path, or look for it with F3." in hands.text
            await hands.refill(str(sound), "twelve")
            assert "Write minutes and seconds, such as 0:12; and the clap’s number, such as 1." in hands.text
            await hands.refill(str(tmp_path / "none.wav"), "")
            assert "There is no file " in hands.text
            await hands.refill(str(text), "")
            assert "notes.txt is no sound file." in hands.text
            await hands.refill(str(sound), "0:01")
            assert "There is no clap 1: " in hands.text
            await hands.refill(str(sound), "")
            assert re.search(r"recordings/sitting-\d{4}-\d\d-\d\d-1\.wav is kept \(", hands.text)
            await step(hands, "Keep a signed paper")
            await hands.fill(str(tmp_path / "none.pdf"), "agreement")
            assert "There is no file " in hands.text
            await hands.refill(str(text), "agreement")
            assert "notes.txt is no scanned paper." in hands.text
            await hands.refill(str(paper), "agreement")
            assert "is kept." in hands.text
        assert len(list((collection.folder / "recordings").iterdir())) == 1
        assert len(list((collection.folder / "papers").iterdir())) == 1

    run(sit())


def test_a_story_of_no_picture(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 60)) as hands:
            await step(hands, "A story of no picture")
            await hands.choose("Of this sitting")
            await hands.fill("She sang.")
            assert "No sitting with a teller has begun." in hands.text
            await hands.press("escape", "escape")  # back at what it is about
            await hands.choose("Of a person")
            await hands.fill("", "He kept bees.")
            assert "It is not said about whom or what. Write a name." in hands.text
            await hands.refill("Jaan Tamm", "")
            assert "There is no story yet. Write what was told." in hands.text
            await hands.refill("Nobody", "He kept bees.")
            assert "Nobody here is called “Nobody”. Who is meant?" in hands.text
            await hands.press("enter", "escape")
            assert fields(collection, Kind.PERSON) == []
            await hands.refill("Jaan Tamm", "He kept bees.")
            await hands.press("n")
            assert "The story is kept. Ctrl+Z takes it back." in hands.text
        assert fields(collection, Kind.PERSON) == [("name", "Jaan Tamm"), ("story", "He kept bees.")]

    run(sit())


def test_consent_is_asked_again_and_for_a_ward_before_a_witness(run: Run, collection: Collection) -> None:
    tell_births(collection, {"Joan Tamm": "1961", "Ruth Rourke": "2015", "Mia Tamm": "1990"})
    guarded = {"capacity": "guardian", "by": "Joan Tamm", "witness": "Con Rourke"}
    for name, more in (("Joan Tamm", {}), ("Ruth Rourke", guarded), ("Mia Tamm", {})):
        keep_consent(collection, find_person(collection, name), make_consent(["name"], "2026-01-05", **more))

    async def sit() -> None:
        async with hands_on(collection, size=(120, 60)) as hands:
            await step(hands, "Agreement")
            await hands.fill("Joan Tamm", "", "", "1", "Joan Tamm", "")
            assert "May it stay so? Joan Tamm: name" in hands.text
            await hands.choose("Yes")
            assert "May it stay so? Ruth Rourke: name" in hands.text
            await hands.choose("Yes")
            await hands.fill("")
            assert "says so before a witness" in hands.text
            await hands.fill("Con Rourke")
            assert "May it stay so? Mia Tamm: name" in hands.text
            await hands.choose("Not here to be asked")
            await step(hands, "Consent, asked again")
            await hands.choose("No")
            assert "Mia Tamm: withdrawn" in hands.text
            await hands.press("escape")
            await hands.choose("Sit", "This sitting")
            assert "Consent, asked again" not in hands.text and "Clap" in hands.text
        assert not find_person(collection, "Mia Tamm").consents[-1].given
        ruth = find_person(collection, "Ruth Rourke").consents[-1]
        assert ruth.words.startswith("given by Joan Tamm, guardian, witness Con Rourke")

    run(sit())


def test_before_anybody_tells_only_an_agreement_and_a_story_can_be_chosen(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 60)) as hands:
            await hands.press("escape")
            await hands.choose("Sit", "This sitting")
            assert "This sitting: no teller yet" in hands.text
            assert "Agreement" in hands.text and "A story of no picture" in hands.text and "Clap" not in hands.text

    run(sit())
