"""What may be struck. Rules of our own, no outside source; that no byte stays is tested with the store."""

import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.marks import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.strike import carriers, meant, strike_out, targets, words_about
from boxlore.tasks.telling.statements import Teller, Telling


def test_an_answer_to_a_question_of_ones_own_can_be_struck(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection:
        item = find_item(collection, "TRA-0001")
        prompts = "[[prompt]]\nfield = 'own-clothes'\nquestion = 'What did she wear?'\n"
        (collection.folder / "prompts.toml").write_text(prompts, "utf-8")
        Teller(collection).tell(item, "own-clothes", "Her mother's brooch.", Telling())
        subjects = meant(collection, "TRA-0001", "own-clothes")
        found = targets(collection, subjects, "own-clothes")
        report = strike_out(collection, [target.statement for target in found])
        assert (report.struck, report.finished, report.left_in) == (1, True, ())
        assert [row.field for row, _ in collection.store.statements(item)] == ["number"]


def test_a_field_that_there_is_none_of_cannot_be_struck(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection, pytest.raises(WrongUse, match="There is no field “storey”"):
        meant(collection, "TRA-0001", "storey")


KILLED = """
import os, signal, sys
from pathlib import Path
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.strike import meant, strike_out, targets
with open_collection(Path(sys.argv[1])) as collection:
    about = targets(collection, meant(collection, "TRA-0001", "story"), "story")
    strike_out(collection, [target.statement for target in about])
    os.kill(os.getpid(), signal.SIGKILL)  # before anybody is told
"""


def test_the_files_that_a_killed_strike_did_not_name_are_named_later(
    bare: Callable[[int], Path], caplog: pytest.LogCaptureFixture
) -> None:
    folder = bare(1)
    with open_collection(folder) as collection:
        Teller(collection).tell(find_item(collection, "TRA-0001"), "story", "Ants Saar owed us money", Telling())
    (folder / "papers" / "letter.txt").write_text("Ants Saar owed us money")
    (folder / "notes.txt").write_text("ANTS SAAR OWED US MONEY")
    ended = subprocess.run([sys.executable, "-c", KILLED, str(folder)], check=False)
    assert ended.returncode == -signal.SIGKILL
    caplog.clear()
    with open_for_writing(folder):
        pass
    said = [record.getMessage() for record in caplog.records]
    assert said[0] == "A strike was broken off; the words are gone from the database."
    assert said[1] == "Still in notes.txt: made before; make it again, or delete it."
    assert said[2].startswith("Perhaps still in papers/letter.txt, which Boxlore never changes")
    caplog.clear()
    with open_for_writing(folder):
        pass
    assert not caplog.records, "it is said once"


def test_digits_in_ids_and_times_are_not_taken_for_the_words(bare: Callable[[int], Path]) -> None:
    """An id of version 7 begins with its time (RFC 9562, 5.7), so its first digits stand all over the database."""
    folder = bare(1)
    with open_collection(folder) as collection:
        item = find_item(collection, "TRA-0001")
        told = Teller(collection).tell(item, "story", item.id[:4], Telling())
        report = strike_out(collection, [told.id])
        assert report.finished and not carriers(collection, report)


WHAT_TO_DO = [
    ("collection.sqlite", "Keep the file"),
    ("collection.sqlite-wal", "Keep the file"),
    ("scans/TRA-0001_f.jpg", "Keep the file"),
    ("recordings/sitting-1.wav", "Keep the file"),
    ("backups/a.sqlite", "it is damaged and cannot be changed; delete it"),
    ("transfer/open/data/metadata/records.nt", "make it again, or delete it"),
]


@pytest.mark.parametrize(("path", "words"), WHAT_TO_DO)
def test_nothing_that_cannot_be_made_again_is_to_be_deleted(path: str, words: str) -> None:
    assert words in words_about(path)
    assert ("delete" in words_about(path)) is ("delete" in words)
