"""What is struck where an older backup was brought back: by bytes, in every backup (our own rules, no outside source).

A branch of history is left when a backup from before it is brought back; its statements stand in other backups alone.
"""

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from tests.drawn import some

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Reading, Unreadable
from boxlore.store.backups import listed
from boxlore.store.values import Draft
from boxlore.tasks.collection import backups
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.outputs.struck_words_found import struck_findings
from boxlore.tasks.people.registry import find_person, merge
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.strike import (
    StrikeReport,
    carriers,
    meant,
    named,
    proved,
    still_standing,
    strike_out,
    targets,
    targets_everywhere,
    words_about,
)
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.undoing import Steps

SECRET = "Ants Saar still owed us money that winter"
CLEAN = "No byte of the collection's database or backups holds the words any more."


@pytest.fixture
def home(bare: Callable[[int], Path]) -> Path:
    """Three items, and one backup of them before anything else was told."""
    return bare(3)


def tell(home: Path, field: str, words: str, item: str = "TRA-0001") -> None:
    with open_for_writing(home) as collection:
        Teller(collection).tell(find_item(collection, item), field, words, Telling())


def bring_back_the_oldest(home: Path) -> None:
    backups.restore(home, listed(home)[-1].path)


def strike(collection: Collection, field: str, words: str = "", item: str = "TRA-0001") -> StrikeReport:
    found = targets(collection, meant(collection, item, field), field, words)
    return strike_out(collection, [target.statement for target in found])


def said(collection: Collection, report: StrikeReport) -> list[str]:
    carrying = carriers(collection, report)
    sentences = [proved(report, carrying), *still_standing(collection, report), *map(words_about, carrying)]
    return [sentence for sentence in sentences if sentence]


def holding(home: Path, words: str = "saar") -> list[str]:
    """The databases of the collection that hold the words in any byte."""
    files = (path for path in home.rglob("*.sqlite*") if path.is_file())
    return sorted(path.name for path in files if words.encode() in path.read_bytes().lower())


def test_the_same_telling_goes_from_every_branch(home: Path) -> None:
    """Two branches were left: in the first it was corrected and brought somebody into the registry, in the second it
    was told in other letters, in another field and half typed."""
    tell(home, "person", "Ants Saar")
    tell(home, "story", SECRET)
    with open_for_writing(home) as collection:
        item = find_item(collection, "TRA-0001")
        (first,) = [row for row, _ in collection.store.statements(item) if row.field == "story"]
        Teller(collection).tell(item, "story", f"In Reval {SECRET}, or so he said", Telling(), replaces=first.id)
    bring_back_the_oldest(home)
    tell(home, "story", SECRET.upper())
    tell(home, "note", f"“{SECRET}”", "TRA-0002")
    with open_for_writing(home) as collection:
        item, now = find_item(collection, "TRA-0003"), collection.clock.now()
        collection.store.save_draft(Draft(subject=item, field="title", words=f"As {SECRET}", updated_at=now))
        collection.back_up_before("a test")
    assert len(holding(home)) > 3
    bring_back_the_oldest(home)
    tell(home, "person", "Ants Saar")
    tell(home, "story", SECRET)
    with open_for_writing(home) as collection:
        assert strike(collection, "story").left_in == ()
        report = strike(collection, "person")
        assert said(collection, report) == [CLEAN] and not report.is_by_chance
    assert holding(home) == []
    bring_back_the_oldest(home)
    with open_for_writing(home):
        pass
    assert holding(home) == []


def test_other_tellings_in_backups_are_named_and_reached_everywhere(home: Path) -> None:
    """Few words may be another telling: of another item they stay in the branch that was left until they are asked."""
    for count in range(2):
        tell(home, "place", "Kalamaja", "TRA-0002")
        tell(home, "story", f"It rained {count}", "TRA-0002")
    bring_back_the_oldest(home)
    tell(home, "place", "Kalamaja")
    with open_for_writing(home) as collection:
        report = strike(collection, "place")
        (sentence,) = said(collection, report)
        assert sentence.startswith("Still in backups/") and "more backup" in sentence
        assert sentence.endswith("“Kalamaja”: boxlore strike everywhere place --words, with those words, does.")
        assert "in “where” of TRA-0002" in sentence
        to_strike, left = targets_everywhere(collection, "kalamaja")
        assert not left and {(row.field, row.is_in_backups) for row in to_strike} == {("place", True)}
        report = strike_out(collection, [row.statement for row in to_strike], asked=["kalamaja"])
        assert said(collection, report) == [CLEAN]
    assert holding(home, "kalamaja") == [] and holding(home, "rained 1")


def test_the_lines_that_say_what_was_done_go_with_the_words(home: Path) -> None:
    """Words of several, or that were asked for by themselves, in the log and in a branch that was left."""
    for _ in range(2):
        tell(home, "person", "Ants Saar")
        tell(home, "person", "Liisi Kask")
        with open_for_writing(home) as collection:
            merge(collection, find_person(collection, "Ants Saar"), find_person(collection, "Liisi Kask"))
            act = collection.act("Marigold was here")
            act.state(find_item(collection, "TRA-0002"), "keyword", "flowers")
            act.done()
        bring_back_the_oldest(home)
    backups.restore(home, listed(home)[0].path)
    with open_for_writing(home) as collection:
        to_strike, _ = targets_everywhere(collection, "Ants Saar")
        report = strike_out(collection, [row.statement for row in to_strike], asked=["Ants Saar"])
        assert said(collection, report) == [CLEAN]
        told = Teller(collection).tell(find_item(collection, "TRA-0003"), "note", "Marigold", Telling())
        report = strike_out(collection, [told.id], asked=["Marigold"])
        assert said(collection, report) == [CLEAN]
    assert holding(home) == holding(home, "marigold") == []


def test_names_of_files_that_hold_the_words_are_said_and_kept_nowhere(home: Path) -> None:
    """A file that holds the words is noted, and so would its name be, in the database and in each backup."""
    (home / "copies").mkdir()
    (home / "copies" / "Ants Saar.txt").write_text("Ants Saar, who owed us money", "utf-8")
    (home / "papers" / "Ants_SAAR").mkdir(parents=True)
    (home / "papers" / "Saar.txt").write_text("The river", "utf-8")
    tell(home, "note", "Ants Saar")
    with open_for_writing(home) as collection:
        assert said(collection, strike(collection, "note")) == [
            "Still in the name of papers/Ants_SAAR: give it another one.",
            "Still in copies/Ants Saar.txt: made before; make it again, or delete it.",
        ]
        named(collection)
    with open_for_writing(home) as collection:
        assert [finding.message[:43] for finding in struck_findings(collection)] == [
            "copies/Ants Saar.txt holds words that were "
        ]
    assert holding(home) == []


def test_what_was_taken_back_is_struck_with_what_was_told_again(home: Path) -> None:
    with open_for_writing(home) as collection:
        item = find_item(collection, "TRA-0001")
        steps = Steps(collection)
        act = collection.act("told")
        act.state(item, "story", "A gull")
        steps.finish(act, item.id)
        steps.undo()
        Teller(collection).tell(item, "story", "A gull", Telling())
        report = strike(collection, "story")
        assert report.struck == 2 and said(collection, report) == [CLEAN]
        with pytest.raises(WrongUse, match="no such story"):
            strike(collection, "story")
    assert holding(home, "a gull") == []


def test_a_backup_that_cannot_be_changed_is_named(home: Path) -> None:
    """One lacks a table; and a keeper's copy beside the database is none of the backups."""
    tell(home, "story", SECRET)
    newest = listed(home)[0].path
    with closing(sqlite3.connect(newest)) as db:
        db.execute("DROP TABLE tombstone")
    (home / "collection copy.sqlite").write_bytes((home / "collection.sqlite").read_bytes())
    with open_for_writing(home) as collection:
        assert said(collection, strike(collection, "story")) == [
            "No byte of the collection's database holds the words any more.",
            f"Still in backups/{newest.name}: it is damaged and cannot be changed; delete it.",
            "Still in collection copy.sqlite: made before; make it again, or delete it.",
        ]
    assert holding(home) == [newest.name, "collection copy.sqlite"]


def test_what_other_words_are_read_as_is_named(home: Path) -> None:
    """A reading holds words that nobody told there: the town's present name beside an earlier one."""
    tell(home, "note", "Port Chalmers Ltd")
    tell(home, "place", "the port", "TRA-0002")
    with open_for_writing(home) as collection:
        item = find_item(collection, "TRA-0002")
        (told,) = [row for row, _ in collection.store.statements(item) if row.field == "place"]
        for value in ('{"x": ["Port Chalmers Ltd", 1, null]}', "Port Chalmers Ltd", '{"id": "port"}'):
            act = collection.act("read")
            act.readings.append((told.id, Reading("later", Unreadable(value), "reader 1")))
            act.done()
        sentences = said(collection, strike(collection, "note"))
    assert sentences == [
        "Still in what “where” of TRA-0002 is read as, “Port Chalmers Ltd”; it goes when that statement is struck."
    ]


def test_letters_that_stand_in_ids_are_not_called_words(home: Path) -> None:
    """An id of version 7 begins with its time (RFC 9562, 5.7)."""
    with open_for_writing(home) as collection:
        item = find_item(collection, "TRA-0001")
        Teller(collection).tell(item, "note", item.id[:4], Telling())
        (sentence,) = said(collection, strike(collection, "note"))
    assert sentence.startswith("Nothing in the collection's database or backups tells the words any more; their")


UNSEEN = {
    "soft hyphens": "Zin\u00adnia Crab\u00adtree",
    "zero width": "Zin\u200bnia\u200d Crab\u2060tree",
    "a zero-width space between": "Zinnia\u200bCrabtree",
    "marks of direction": "\u200eZinnia\u202c \u2067Crabtree\u2069",
    "variation selectors": "Zin\ufe0fnia Crab\U000e0100tree",
    "tags": "Zin<b>nia</b> Crab<i>tree</i>",
    "references": "Zin&shy;nia Crab&#8203;tree",
    "marks": "Zin**nia** Crab_tree",
    "a joiner of graphemes": "Zin\u034fnia Crabtree",
    "accents of their own": "Zi\u0301nnia Crabtree",
    "full width": "Ｚｉｎｎｉａ Crabtree",
    "Cyrillic letters that look alike": "Zinni\u0430 Cr\u0430btr\u0435\u0435",
    "parted at the end of a line": "Zin-\nnia Crab\u2010\r\n tree",
    "letters apart": "Z i n n i a Crabtree",
}
"""Signs that nobody sees, of the Unicode Standard (UAX #44, Default_Ignorable_Code_Point), and letters that look
alike (UTS #39)."""


@pytest.mark.parametrize("words", some(UNSEEN.values()), ids=some(UNSEEN))
def test_words_are_struck_through_what_nobody_sees(home: Path, words: str) -> None:
    tell(home, "note", f"Here is {words} by the gate")
    tell(home, "story", "Here is Zinnia Crabbe")
    with open_for_writing(home) as collection:
        to_strike, _ = targets_everywhere(collection, "zinnia crabtree")
        assert [target.field for target in to_strike] == ["note"]
        report = strike_out(collection, [to_strike[0].statement], asked=["zinnia crabtree"])
        assert proved(report, carriers(collection, report)) == CLEAN
        assert [row.field for row, _ in collection.store.statements(find_item(collection, "TRA-0001"))] == [
            "number",
            "story",
        ]


def test_words_among_unseen_signs_that_stand_on_are_named(home: Path) -> None:
    tell(home, "note", "Zinnia Crabtree")
    tell(home, "note", "Zin\u00adnia Crab\u00adtree too", "TRA-0002")
    with open_for_writing(home) as collection:
        report = strike(collection, "note", "Zinnia")
        assert [line[:37] for line in still_standing(collection, report)] == ["Still in “keeper's note” of TRA-0002,"]
        assert not proved(report, carriers(collection, report))
    bring_back_the_oldest(home)
    tell(home, "note", "Zinnia Crabtree", "TRA-0003")
    with open_for_writing(home) as collection:
        (home / "backups" / "2026-01-01.sqlite").write_bytes(b"no database")
        report = strike(collection, "note", item="TRA-0003")
        said = still_standing(collection, report)
        assert len(said) == 1 and said[0].startswith("Still in backups/") and "of TRA-0002, “Zin" in said[0]
