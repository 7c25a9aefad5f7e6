"""A whole day without the shell, in a real terminal of three sizes: start, take in, sit, put right (people, who said
it, which answer is used, consent), print, hand on.

Thirty photographs in the smallest one, where a key too many or a line that has no room shows; six in each other. By
hand it is the smallest one alone, with six.

Our own contract: no command but bare `boxlore`, and the keys of the sitting counted against the fewest possible.
"""

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pikepdf
import pytest
from PIL import Image
from tests.drawn import IN_CI, some

from boxlore.core.people.consent import Matter
from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import records

Opens = Callable[..., Any]


class Day:
    """A window, and the keys that were pressed in it."""

    def __init__(self, window: Any) -> None:
        self.window = window
        self.pressed = 0

    def press(self, keys: str, *then: str) -> str:
        """Press keys, and wait until these words are shown."""
        self.window.send(keys)
        self.pressed += len(re.findall("⟨.+?⟩|.", keys, re.S))
        return str(self.window.wait_for_words(*then)) if then else ""


def scanned(folder: Path, count: int) -> Path:
    """So many small pictures, the first with a back."""
    folder.mkdir(parents=True)
    for at in range(1, count + 1):
        Image.new("RGB", (60, 40), (at * 8, 90, 255 - at * 8)).save(folder / f"p{at:02d}_f.jpg")
    Image.new("RGB", (60, 40), (230, 220, 200)).save(folder / "p01_b.jpg")
    return folder


MANY = 30
PRINTED = ("album", "slips", "labels", "worksheet")


def put_right(day: Day, count: int) -> None:
    """From the last photograph: a date said by somebody else, and settled; a person renamed, made one with another and
    parted, with a birth and a consent; who said that she is in a picture, and that she is not in another."""
    day.press("⟨F4⟩", "who says so", "Where")
    day.press("⟨Down⟩⟨Enter⟩", f"“19{count + 10}”", "Somebody else said it")
    day.press("2", "Name of the teller")
    day.press("Joan Moss⟨Enter⟩", "Said by Joan Moss from now on.")
    day.press("⟨Esc⟩", "Tell me about this photograph.", f"Joan Moss: “19{count + 10}”")
    day.press("⟨Tab⟩⟨Tab⟩1955⟨Tab⟩", "disputed")
    day.press("⟨BackTab⟩⟨^P⟩", "which answer is used?")
    day.press("1", "Settled.")

    day.press("⟨Esc⟩", "Put right")
    day.press("3", "People")
    day.press("2", "4 people")
    day.press("helmi⟨Enter⟩", f"Helmi Pell · {count // 2} pictures")
    day.press("a", "Correct the name")
    day.press("1", "The whole name, as captions give it")
    day.press("Helmi Tamm⟨Enter⟩", "Called Helmi Tamm everywhere.")
    day.press("a3", "Whose other entry is it?")
    day.press("Jaan Tamm⟨Enter⟩", "Helmi Tamm and Jaan Tamm?")
    day.press("1", f"Helmi Tamm · {count} pictures", "are one person now")
    day.press("a5", f"Helmi Tamm · {count // 2} pictures", "They stand apart again.")
    day.press("a2", "what was told?")
    day.press("1about 1912⟨Enter⟩", "Kept: born, “about 1912”.")
    day.press("a6", "What may be shown outside the family?")
    day.press("all⟨Enter⟩yes⟨Enter⟩self⟨^S⟩", "Helmi Tamm: ", "Ctrl+Z takes it back")
    day.press("⟨PgDn⟩⟨PgDn⟩⟨PgDn⟩⟨Enter⟩", f"Helmi Tamm in TRA-{count - 1:04d}", "Not this person here")
    day.press("2", "Who is it?")
    day.press("Ellen Rourke⟨Enter⟩", f"TRA-{count - 1:04d} shows Ellen Rourke.")
    day.press("⟨PgDn⟩⟨Enter⟩", f"Helmi Tamm in TRA-{count - 3:04d}")
    day.press("4", "Name of the teller")
    day.press("Joan Moss⟨Enter⟩", "Said by Joan Moss.")
    day.press("⟨Esc⟩⟨Esc⟩", "Tell me about this photograph.")


def print_and_hand_on(day: Day, count: int, *, every: bool) -> None:
    """A printed sheet and the copies, or `every` sheet and a transfer too, each as its form proposes it."""
    of_items = f"{count} photographs", f"{count} slips", f"labels for {count} photographs", f"{count} photographs"
    for key, said in zip("1234", of_items, strict=True):
        if key != "2" and not IN_CI:
            continue
        day.press("⟨Esc⟩", "Hand on")
        day.press("4", "Caption slips")
        day.press(key, "Name of the PDF")
        if every or key == "2":
            day.press("⟨^S⟩", said, "Enter or Esc goes back")
            day.press("⟨Enter⟩", "Tell me about this photograph.")
        else:
            day.press("⟨Esc⟩", "Lists of the survey")
            day.press("⟨Esc⟩", "Keep safe")
            day.press("⟨Esc⟩", "Tell me about this photograph.")
    day.press("⟨Esc⟩", "Hand on")
    day.press("5", "Captioned copies")
    day.press("1", "Into which folder?")
    day.press("⟨^S⟩", f"{count + 1} written", "Enter or Esc goes back")
    day.press("⟨Enter⟩", "Tell me about this photograph.")
    day.press("⟨Esc⟩5", "Transfer to an archive")  # typed ahead, as by somebody who knows the menu
    day.press("5", "New or empty.")
    if not every:
        day.press("⟨Esc⟩", "Offer to an archive")
        day.press("⟨Esc⟩", "Keep safe")
        day.press("⟨Esc⟩", "Tell me about this photograph.")
        return
    day.press("⟨Enter⟩⟨Right⟩⟨^S⟩", "The name search found", "Have you read who is named (names-found.csv)?")
    day.press("⟨Right⟩⟨^S⟩", f"{count} records", "Enter or Esc goes back")
    day.press("⟨Enter⟩", "Tell me about this photograph.")


@pytest.mark.parametrize(("size", "count"), some([((80, 24), MANY if IN_CI else 6), ((120, 38), 6), ((200, 60), 6)]))
def test_a_whole_day_without_the_shell(terminal: Opens, tmp_path: Path, size: tuple[int, int], count: int) -> None:
    home = tmp_path / "home"
    scans = scanned(home / "scans", count)
    day = Day(terminal(HOME=str(home), columns=size[0], rows=size[1], cold=IN_CI))
    day.window.wait_for("Start a collection")

    # start: the title, the country, and the folder as it is proposed; then what is usual there
    day.press("s", "What is it called?")
    day.press("Tamm and Rourke⟨Enter⟩New Z⟨Enter⟩⟨Enter⟩", "Language, dates and seasons", "December to February")
    day.press("⟨^S⟩", "Nothing is in it yet")

    # take in
    day.press("t", "Folder or file with the scans")
    day.press(f"{scans}⟨Enter⟩1⟨Enter⟩⟨^S⟩", f"{count} photographs taken in, 1 of them with a back.")
    day.press("⟨Enter⟩", "Who tells today?")

    # sit: who tells, the agreement, the first photograph, all of them
    day.press("s", "Who tells?")
    day.press("Leida Rourke⟨Enter⟩", "Is there an agreement with Leida Rourke?")
    day.press("r", "Who may read and hear it?")
    day.press("⟨Right⟩⟨^S⟩", "Where do we begin?")
    day.press("1", f"Leida Rourke tells · 1 of {count}")
    before = day.pressed
    names = ("Jaan Tamm", "Helmi Pell")
    told = [f"Story {n}⟨Tab⟩{names[n % 2]}⟨Enter⟩⟨Tab⟩19{n + 10}⟨Tab⟩Port Chalmers⟨PgDn⟩" for n in range(1, count + 1)]
    day.press("".join(told[:-1]), f"{count} of {count}")
    day.press(told[-1], "That was the last photograph.")
    words = sum(len(f"Story {n}{names[n % 2]}19{n + 10}Port Chalmers") for n in range(1, count + 1))
    least = words + 5 * count  # of each: to the names, to the date, to the place, the name kept, the next photograph
    assert day.pressed - before <= 1.3 * least

    put_right(day, count)
    print_and_hand_on(day, count, every=count == MANY)
    day.press("⟨^Q⟩")
    assert day.window.wait() == 0

    collection = home / "photographs"
    with open_collection(collection, write=False) as opened:
        found: list[Record] = list(records(opened))
        helmi = next(person for person in opened.people().values() if person.name == "Helmi Tamm")
    assert len(found) == count and found[0].number == "TRA-0001" and found[0].mark is not None
    names_shown = [[shown.name for shown in record.shown()] for record in found]
    assert names_shown[-4:] == [["Helmi Tamm"], ["Jaan Tamm"], ["Ellen Rourke"], ["Jaan Tamm"]]
    assert [view.said_by for view in found[-4].all("person")] == ["Joan Moss"]
    assert [consent.matters for consent in helmi.consents] == [set(Matter)]
    assert [view.said_by for view in found[4].all("story")] == ["Leida Rourke"]
    assert [(view.words, view.said_by) for view in found[-1].rests_on("date")] == [("1955", "Leida Rourke")]
    assert len(found[-1].all("date")) == 2 and not found[-1].conflicts
    printed = PRINTED if count == MANY else ("slips",)
    assert {pdf.name for pdf in (collection / "print").glob("*.pdf")} == {f"{name}.pdf" for name in printed}
    with pikepdf.open(collection / "print" / f"{printed[0]}.pdf") as pdf:
        assert len(pdf.pages) >= count // 6
    assert len(list((collection / "copies").rglob("*.jpg"))) == count + 1
    assert (collection / "transfer" / "open" / "bagit.txt").is_file() == (count == MANY)

    # the next day: three keys to where it stopped
    again = Day(terminal("-c", str(collection), HOME=str(home), columns=size[0], rows=size[1]))
    again.window.wait_for_words("Who tells today?", "Leida Rourke")
    again.press("⟨Enter⟩", "Still as agreed")
    again.press("a", f"Where you stopped: TRA-{count:04d}")
    again.press("⟨Enter⟩", f"Leida Rourke tells · {count} of {count}")
    assert again.pressed == 3
    again.press("⟨^Q⟩")
    assert again.window.wait() == 0
