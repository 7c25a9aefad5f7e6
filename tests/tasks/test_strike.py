"""What may be struck. Rules of our own, no outside source; that no byte stays is tested with the store."""

import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.fields.pictures import FILE_WORDS, FileFacts
from boxlore.core.people.consent import Matter, allowed, make_consent
from boxlore.core.statements import Kind, Reading, Said, Source, Subject, Unreadable
from boxlore.exports.inventory import as_csv
from boxlore.store.values import Draft
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import STRIKE_WAITS, Collection, open_collection
from boxlore.tasks.people.registry import consent, find_person
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.strike import (
    NAMED,
    carriers,
    left_words,
    meant,
    still_standing,
    strike_out,
    target_line,
    targets,
    targets_everywhere,
    words_about,
)
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.undoing import Steps


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


def test_rows_of_our_own_tables_go_with_what_they_tell(bare: Callable[[int], Path]) -> None:
    """The tables for the keeper's answers, cut to the words around a name as they are written."""
    words = "Rose Marsh stood by the far gate at Tobin's mill & barn on the day when the river rose."
    rows = [
        ["TRA-0001", "story", "…by the far gate at Tobin's mill & ba…", ""],
        ["TRA-0001", "story", "[Rose] Marsh stood by the far gate", "hide"],
        ["TRA-0002", "title", "[Rose] at the mill", "hide"],
    ]
    with open_collection(bare(2)) as collection:
        tables = [collection.folder / name for name in ("names-found.csv", "names-left.csv")]
        for path in tables:
            path.write_bytes(b"".join(as_csv([["Number", "Where", "Words", "Answer"], *rows])))
        Teller(collection).tell(find_item(collection, "TRA-0001"), "story", words, Telling())
        about = targets(collection, meant(collection, "TRA-0001", "story"), "story")
        report = strike_out(collection, [target.statement for target in about])
        assert report.left_in == ()
        for path in tables:
            lines = path.read_text("utf-8-sig").splitlines()
            assert lines == ["Number,Where,Words,Answer", "TRA-0002,title,[Rose] at the mill,hide"]
        tables[0].write_bytes(b"\xff\xfe no table")
        Teller(collection).tell(find_item(collection, "TRA-0001"), "story", words, Telling())
        about = targets(collection, meant(collection, "TRA-0001", "story"), "story")
        strike_out(collection, [target.statement for target in about])
        assert not tables[0].exists() and tables[1].exists()


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


def test_looking_says_that_a_strike_waits(bare: Callable[[int], Path], caplog: pytest.LogCaptureFixture) -> None:
    """As one that was killed between its two steps leaves it: the tombstone is there, and not finished."""
    folder = bare(1)
    with open_collection(folder) as collection:
        told = Teller(collection).tell(find_item(collection, "TRA-0001"), "story", "It rained", Telling())
        strike_out(collection, [told.id])
        collection.store.writer.do(lambda db: db.execute("UPDATE tombstone SET finished = 0"))
    for said in ([STRIKE_WAITS], []):
        caplog.clear()
        with open_collection(folder, write=False):
            pass
        assert [record.getMessage() for record in caplog.records] == said
        with open_for_writing(folder):
            pass


def test_digits_in_ids_and_times_are_not_taken_for_the_words(bare: Callable[[int], Path]) -> None:
    """An id of version 7 begins with its time (RFC 9562, 5.7), so its first digits stand all over the database."""
    folder = bare(1)
    with open_collection(folder) as collection:
        item = find_item(collection, "TRA-0001")
        told = Teller(collection).tell(item, "story", item.id[:4], Telling())
        report = strike_out(collection, [told.id])
        assert report.finished and not carriers(collection, report)


WHAT_TO_DO = [
    ("print/worksheet-answers-2.txt", "which you may edit"),
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


def _told_of_everything(collection: Collection) -> None:
    """Ida stands in something of each kind; in `idaho` and in the path of a scan she is not to be struck."""
    act = collection.act("told")
    item, event, place, box = (act.new(kind) for kind in (Kind.ITEM, Kind.EVENT, Kind.PLACE, Kind.CONTAINER))
    sitting, scan = act.new(Kind.SITTING), act.new(Kind.SCAN)
    act.state(item, "story", "The boat of IDA Tamm")
    act.state(item, "title", "Idaho")
    act.state(event, "name", "Ida’s wedding")
    act.state(place, "name", "Ida's hill")
    act.state(place, "called_then", "Tamme")
    act.state(box, "kind", "box")
    act.state(box, "label", "for Ída")
    act.state(sitting, "note", "Ask Ida.")
    act.state(Subject(Kind.COLLECTION, collection.id), "custody", "From Ida to Leida")
    facts = FileFacts(path="scans/ida.jpg", sha256="0" * 64, bytes=1, width=1, height=1, media_type="image/jpeg")
    act.state(scan, "file", FILE_WORDS.write(facts))
    act.done()
    withdrawn = collection.act("a slip")
    withdrawn.state(item, "note", "Ida again")
    steps = Steps(collection)
    steps.finish(withdrawn, item.id)
    steps.undo()


def test_words_are_struck_from_whatever_they_are_told_of(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection:
        _told_of_everything(collection)
        to_strike, left = targets_everywhere(collection, "Ida")
        told = ["story", "name", "name", "label", "note", "custody", "note"]
        assert [target.field for target in to_strike] == told
        assert [target.field for target in left] == ["file"]
        assert left_words(left[0]) == (
            "Not struck: the words stand in “file”, which the program needs; change it where it is made."
        )
        assert [target.words for target in targets_everywhere(collection, "ida tamm", "story")[0]] == [
            "The boat of IDA Tamm"
        ]
        report = strike_out(collection, [target.statement for target in to_strike])
        assert (report.struck, report.finished) == (7, True)
        with pytest.raises(WrongUse, match="nowhere"):
            targets_everywhere(collection, "Ida", "story")


def test_words_of_a_field_are_found_however_their_accents_are_made(bare: Callable[[int], Path]) -> None:
    """A letter with its accent, or a letter and the accent behind it (Unicode Standard Annex 15)."""
    words = "Sigri\u0301\u00f0ur was there"
    with open_collection(bare(1)) as collection:
        item = find_item(collection, "TRA-0001")
        Teller(collection).tell(item, "note", words, Telling())
        assert [target.words for target in targets(collection, [item], "note", "sigr\u00ed\u00f0ur")] == [words]


def test_what_somebody_chose_and_where_it_is_from_are_reached(bare: Callable[[int], Path]) -> None:
    """And where the words stand on, in a longer word or in what the program needs, it is said with what to do."""
    with open_collection(bare(2)) as collection:
        act = collection.act("told")
        box, scan = act.new(Kind.CONTAINER), act.new(Kind.SCAN)
        first, second = (find_item(collection, f"TRA-000{n}") for n in (1, 2))
        act.state(box, "kind", "box")
        act.state(box, "materials", "card, from Marigold")
        act.state(first, "found_in", "shoebox of Marigold")
        act.state(first, "title", "The quay", source=Source(Said.DOCUMENT, "letter of Marigold"))
        act.state(second, "title", "The net", source=Source(Said.FILE, "tree marigold.ged"))
        act.state(second, "story", "All the Marigolds")
        facts = FileFacts(path="in/Marigold.jpg", sha256="0" * 64, bytes=1, width=1, height=1, media_type="image/jpeg")
        act.state(scan, "file", FILE_WORDS.write(facts))
        act.done()
        to_strike, left = targets_everywhere(collection, "Marigold")
        assert [(target.field, target.source) for target in to_strike] == [
            ("materials", ""), ("found_in", ""), ("title", "letter of Marigold")
        ]  # fmt: skip
        assert target_line(collection, to_strike[1]) == "  TRA-0001  Found in: shoebox of Marigold"
        assert [left_words(target)[:62] for target in left] == [
            "Not struck: the words stand in the name of a file that stateme",
            "Not struck: the words stand in “file”, which the program needs",
        ]
        report = strike_out(collection, [target.statement for target in to_strike], asked=["Marigold"])
        assert still_standing(collection, report) == [
            "Still in “story” of TRA-0002, “All the Marigolds”: boxlore strike TRA-0002 story takes it out.",
            "Still in “file” of one scan, “in/Marigold.jpg”: the program needs it, and it stays for whoever gets the "
            "collection's folder.",
            "Still in what “title” of TRA-0002 is from, “tree marigold.ged”; it goes when that statement is struck.",
        ]
        told = Teller(collection).tell(first, "note", "f", Telling())
        assert strike_out(collection, [told.id]).standing == (), "one letter stands in words by chance"
        for count in range(NAMED + 1):
            Teller(collection).tell(first, "story", f"Marigold {count}", Telling())
        told = Teller(collection).tell(first, "note", "Marigold", Telling())
        last = still_standing(collection, strike_out(collection, [told.id]))[-1]
        assert last == "And in 4 more places: strike these, and the others are named."


def test_words_that_stand_in_no_told_text_are_named_too(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection:
        item = find_item(collection, "TRA-0001")
        filed = collection.act("filed by Marigold")
        box = filed.new(Kind.CONTAINER)
        filed.state(box, "kind", "box")
        filed.done()
        act = collection.act("a label: Marigolds")
        act.state(box, "label", "Marigolds")
        act.done()
        draft = Draft(subject=item, field="title", words="Marigold half", updated_at=collection.clock.now())
        collection.store.save_draft(draft)
        told = Teller(collection).tell(item, "note", "Marigold", Telling())
        collection.by = "Marigold Tamm"
        sentences = still_standing(collection, strike_out(collection, [told.id]))
        assert [sentence.partition("“")[0] + sentence.rpartition("”")[2] for sentence in sentences] == [
            "Still in : boxlore strike everywhere label --words, with those words, does.",
            "Still in what is being typed in : finish it there, then strike again.",
            "Still in the keeper's name, , which stands beside all that was written down; it stays.",
            "Still in the line that says what was done, ; it stays.",
        ]


def test_who_gave_a_consent_is_reached(bare: Callable[[int], Path]) -> None:
    """As it is kept now, and as it was kept when the sentence did not say who."""
    with open_collection(bare(1)) as collection:
        act = collection.act("told")
        quentin, mia = act.new(Kind.PERSON), act.new(Kind.PERSON)
        act.state(quentin, "name", "Quentin Tamm")
        act.state(mia, "name", "Mia Tamm")
        act.done()
        given = make_consent(["name"], "2026-11-25", by="Uncle Waldo Pinchbeck", witness="Notary Gribble")
        of_quentin = consent(collection, find_person(collection, "Quentin"), given)
        act = collection.act("told")
        before = act.state(mia, "consent", "given by herself or himself, 2026-11-25: name", audience="keeper")
        act.readings.append((before.id, Reading("consent", given, "consent 1", confirmed=True)))
        damaged = act.state(mia, "consent", "given by herself or himself, 2026-11-26: name", audience="keeper")
        act.readings.append((damaged.id, Reading("consent", Unreadable('{"by": "Pinch'), "consent 1")))
        act.done()
        for words in ("waldo pinchbeck", "Notary Gribble"):
            found, left = targets_everywhere(collection, words)
            expected = [of_quentin.id, before.id] if words == "waldo pinchbeck" else [of_quentin.id]
            assert [target.statement for target in found] == expected and not left
        found, _ = targets_everywhere(collection, "Pinchbeck")
        assert [target.source for target in found] == ["", "Uncle Waldo Pinchbeck"]
        report = strike_out(collection, [target.statement for target in found], asked=["Pinchbeck"])
        assert (report.struck, carriers(collection, report), report.standing) == (2, [], ())
        assert not find_person(collection, "Quentin").consents


def test_a_struck_withdrawal_opens_nothing(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection:
        act = collection.act("told")
        act.state(act.new(Kind.PERSON), "name", "Quentin Tamm")
        act.done()
        for given, matters in ((True, ["name", "picture"]), (False, ["name", "picture"]), (True, ["picture"])):
            answer = make_consent(matters, "2026-11-25", given=given, witness="" if given else "Notary Gribble")
            consent(collection, find_person(collection, "Quentin"), answer)
        found, _ = targets_everywhere(collection, "Gribble")
        report = strike_out(collection, [target.statement for target in found], asked=["Gribble"])
        assert (report.struck, report.standing) == (1, ())
        assert allowed(find_person(collection, "Quentin").consents) == {Matter.PICTURE}
        strike_out(collection, [targets_everywhere(collection, "given in person")[0][0].statement])
        assert allowed(find_person(collection, "Quentin").consents) == {Matter.PICTURE}


def test_a_name_is_reached_by_its_parts(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection:
        act = collection.act("told")
        zinnia, sister, third = (act.new(Kind.PERSON) for _ in range(3))
        act.state(zinnia, "given", "Zin\u00adnia")
        act.state(zinnia, "family", "Crabtree")
        act.state(zinnia, "born", "1990")
        act.state(sister, "given", "Zinnia")
        act.state(sister, "family", "Crabbe")
        act.state(sister, "nickname", "Crab Tree")
        act.state(third, "given", "Ivo")
        act.state(third, "patronymic", "Karlovich")
        act.state(third, "family", "Crabtree")
        act.done()
        by_words = {
            words: [target.words for target in targets_everywhere(collection, words)[0]]
            for words in ("zinnia crabtree", "Crabtree, Zinnia", "Ivo Karlovich Crabtree", "Crabtree")
        }
        assert by_words == {
            "zinnia crabtree": ["Zin\u00adnia", "Crabtree"],
            "Crabtree, Zinnia": ["Zin\u00adnia", "Crabtree"],
            "Ivo Karlovich Crabtree": ["Ivo", "Karlovich", "Crabtree"],
            "Crabtree": ["Crabtree", "Crabtree"],
        }
        with pytest.raises(WrongUse, match="nowhere"):
            targets_everywhere(collection, "zinnia crabtree", "given")
        found, _ = targets_everywhere(collection, "zinnia crabtree")
        strike_out(collection, [target.statement for target in found], asked=["zinnia crabtree"])
        assert [row.field for row, _ in collection.store.statements(zinnia)] == ["born"]
        assert "Zinnia Crabtree" not in [person.name for person in collection.people().values()]


REFUSED = [("Ida", "storey", "no field “storey”"), (" ", "any", "No words"), ("Ida", "any", "stand nowhere")]


@pytest.mark.parametrize(("words", "field", "sentence"), REFUSED)
def test_words_that_cannot_be_struck_everywhere(
    bare: Callable[[int], Path], words: str, field: str, sentence: str
) -> None:
    with open_collection(bare(1)) as collection, pytest.raises(WrongUse, match=sentence):
        targets_everywhere(collection, words, field)


def test_settings_are_to_be_edited() -> None:
    assert words_about("boxlore.toml") == "Still in boxlore.toml, which you may edit: take the words out of it there."
