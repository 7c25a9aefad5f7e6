"""Joining working copies: the same in any order and however often. Rules of our own, no outside source."""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import ExitStack, closing
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from time import sleep

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.people.reference import PersonRef
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.store import joining
from boxlore.store.database_file import DATABASE
from boxlore.store.joining import Joined
from boxlore.store.opening import create, open_store
from boxlore.store.rows import SELECT
from boxlore.store.strike import strike
from boxlore.store.values import Change, Settlement
from boxlore.tasks.collection.clock import Clock

COLLECTION = "11111111-1111-7111-8111-111111111111"
ITEMS = [Subject(Kind.ITEM, f"22222222-2222-7222-8222-22222222222{count}") for count in range(3)]
LOG = {
    "statement": f"SELECT {SELECT}, t.sum, s.row IN (SELECT row FROM past) FROM statement s "
    "LEFT JOIN statement_sum t ON t.row = s.row ORDER BY s.row",
    "tombstone": "SELECT statement, subject_kind, subject, field FROM tombstone ORDER BY statement",
} | {
    table: f"SELECT * FROM {table} ORDER BY {order}"
    for table, order in {
        "act": "id", "withdrawal": "act, withdraws", "reading": "statement, act", "settlement": "id",
        "weighed": "settlement, statement", "withdrawn": "act", "name": "kind, folded, subject, words",
        "used": "subject",
    }.items()
}  # fmt: skip
"""A query for every table that a joining brings in, or that follows: in the order of the log, though a strike may have
left gaps in the rows, and without the time and author of tombstones, which a joining makes too."""


@cache
def empty() -> bytes:
    """The database of a collection in which nothing was told. It is made once, and each desk begins with a copy."""
    with TemporaryDirectory() as folder:
        create(Path(folder), clock=Clock(), ident=COLLECTION).close()
        return (Path(folder) / DATABASE).read_bytes()


class Desk:
    """One working copy, and what is done at it."""

    def __init__(self, folder: Path, name: str) -> None:
        self.clock = Clock()
        folder.mkdir()
        (folder / DATABASE).write_bytes(empty())
        self.store = open_store(folder)
        self.name = name

    def tell(
        self, item: Subject, words: str, replaces: str = "", field: str = "story", audience: str = "anyone"
    ) -> Statement:
        act = self.clock.new_id()
        told = Statement(
            id=self.clock.new_id(), act=act, subject=item, field=field, words=words, by=self.name, replaces=replaces,
            audience=audience, recorded_at=self.clock.now(),
        )  # fmt: skip
        self.write(act, statements=(told,))
        return told

    def name_somebody(self, item: Subject, words: str) -> Statement:
        """A name told of an item, which brings a person into the registry."""
        act, person = self.clock.new_id(), Subject(Kind.PERSON, self.clock.new_id())
        made = [
            Statement(id=self.clock.new_id(), act=act, subject=subject, field=field, words=words, by=self.name,
                      recorded_at=self.clock.now())
            for subject, field in ((person, "name"), (item, "person"))
        ]  # fmt: skip
        meant = Reading("person", PersonRef(person.id), "test")
        self.write(act, statements=tuple(made), readings=((made[1].id, meant),))
        return made[1]

    def write(self, act: str, line: str = "", **what: object) -> None:
        self.store.write(
            Change(act=act, what=line or f"told by {self.name}", by=self.name, recorded_at=self.clock.now(), **what)
        )  # type: ignore[arg-type]  # rows by name

    def rows(self) -> list[tuple[str, str]]:
        return self.store.db.execute("SELECT id, act FROM statement ORDER BY id").fetchall()

    def strike(self, ids: list[str]) -> None:
        strike(self.store, ids, by=self.name, now=self.clock.now())

    def join(self, other: "Desk", agree: Callable[[Joined], None] = lambda joined: None) -> Joined:
        """As `tasks.collection.joining` does: what was struck in either goes first."""
        with joining.copy_to_join(other.store.folder, COLLECTION) as there:
            if ids := joining.to_strike(self.store.db, joining.forms_struck(self.store.db, there)):
                self.strike(ids)
            return joining.join(self.store, there, self.name, self.clock.now(), agree)

    def tables(self) -> dict[str, list[tuple[object, ...]]]:
        return {table: self.store.db.execute(query).fetchall() for table, query in LOG.items()}


@pytest.fixture
def desks(tmp_path: Path) -> Iterator[list[Desk]]:
    made = [Desk(tmp_path / name, name) for name in ("leida", "aksel", "eha")]
    yield made
    for desk in made:
        desk.store.close()


def join_all(desks: list[Desk]) -> None:
    """Twice round, so that what one heard of the last reaches the first."""
    for _ in range(2):
        for desk in desks:
            for other in desks:
                if other is not desk:
                    desk.join(other)


DEEDS = st.lists(
    st.tuples(
        st.sampled_from(["tell", "correct", "name", "undo", "strike", "join", "settle"]),
        st.integers(0, 2),
        st.integers(0, 40),
    ),
    max_size=25,
)


@drawn(40)
@given(DEEDS)
def test_any_order_of_tellings_and_joinings_ends_alike(deeds: list[tuple[str, int, int]]) -> None:
    with TemporaryDirectory() as folder, ExitStack() as stack:
        desks = [Desk(Path(folder) / name, name) for name in ("leida", "aksel", "eha")]
        for desk in desks:
            stack.enter_context(desk.store)
        told: set[str] = set()
        for deed, who, pick in deeds:
            desk = desks[who]
            rows = desk.rows()
            if deed == "tell":
                desk.tell(ITEMS[pick % 3], f"told {pick}")
            elif deed == "name":
                desk.name_somebody(ITEMS[pick % 3], f"Person {pick}")
            elif deed == "join":
                desk.join(desks[(who + 1 + pick % 2) % 3])
            elif rows:
                do(desk, deed, rows[pick % len(rows)])
            told |= {ident for ident, _ in desk.rows()}
        struck = {ident for desk in desks for (ident,) in desk.store.db.execute("SELECT statement FROM tombstone")}
        join_all(desks)
        tables = [desk.tables() for desk in desks]
        for table in LOG:
            assert tables[0][table] == tables[1][table] == tables[2][table], table
        ids = {ident for ident, _ in desks[0].rows()}
        buried = {ident for (ident,) in desks[0].store.db.execute("SELECT statement FROM tombstone")}
        assert not ids & (struck | buried), "nothing that was struck is back"
        assert ids | buried == told | buried, "nothing that was told is lost"
        assert all(desk.store.is_in_step() and desk.store.are_words_in_step() for desk in desks)
        assert all(not desk.store.altered_rows() for desk in desks)


def do(desk: Desk, deed: str, row: tuple[str, str]) -> None:
    """One deed to a statement that is there."""
    ident, act = row
    subject, field = desk.store.db.execute("SELECT subject, field FROM statement WHERE id = ?", (ident,)).fetchone()
    item = next((item for item in ITEMS if item.id == subject), None)
    if deed == "correct" and item:
        desk.tell(item, "corrected", ident, field)
    elif deed == "strike":
        desk.strike([ident])
    elif deed == "undo":
        last = desk.store.db.execute("SELECT act FROM withdrawal WHERE withdraws = ?", (act,)).fetchall()
        desk.write(desk.clock.new_id(), withdraws=(last[-1][0] if last else act,))
    elif deed == "settle" and item:
        settled = Settlement(
            id=desk.clock.new_id(), subject=item, field=field, outcome="use", weighed=(ident,), chosen=ident
        )
        desk.write(desk.clock.new_id(), settlements=(settled,))


def test_a_correction_of_what_was_struck_is_struck(desks: list[Desk]) -> None:
    """And so is a person whom only it brought, wherever it was made."""
    leida, aksel, _ = desks
    first = leida.tell(ITEMS[0], "a dock hand")
    aksel.join(leida)
    aksel.tell(ITEMS[0], "Ants, who owed us money", first.id)
    leida.strike([first.id])
    leida.join(aksel)
    aksel.join(leida)
    for desk in (leida, aksel):
        assert desk.rows() == []
        assert b"owed us" not in desk.store.path.read_bytes()
    assert leida.tables() == aksel.tables()


def test_no_line_of_an_act_brings_struck_words_back(desks: list[Desk]) -> None:
    """Neither that of the telling, nor that of its undoing, nor another that repeats them."""
    leida, aksel, _ = desks
    first = leida.tell(ITEMS[0], "a dock hand")
    aksel.join(leida)
    second = aksel.tell(ITEMS[0], "Ants, who owed us money", first.id)
    undoing = aksel.clock.new_id()
    aksel.write(undoing, "taken back: Ants", withdraws=(second.act,))
    aksel.write(aksel.clock.new_id(), "again: Ants", withdraws=(undoing,))
    settled = Settlement(
        id=aksel.clock.new_id(), subject=ITEMS[0], field="story", outcome="use", weighed=(second.id,), chosen=second.id
    )
    aksel.write(aksel.clock.new_id(), "settled: Ants, who owed us money", settlements=(settled,))
    leida.strike([first.id])
    leida.join(aksel)
    lines = [what for (what,) in leida.store.db.execute("SELECT what FROM act")]
    assert lines == ["struck"] * 5


def test_what_is_struck_there_meanwhile_waits_for_the_next_joining(desks: list[Desk]) -> None:
    """The other copy is read as it was when it was opened."""
    leida, aksel, _ = desks
    kept, struck = (aksel.tell(ITEMS[0], words) for words in ("a dock hand", "Ants, who owed us money"))
    leida.join(aksel)
    with joining.copy_to_join(aksel.store.folder, COLLECTION) as there:
        assert joining.to_strike(leida.store.db, joining.forms_struck(leida.store.db, there)) == []
        aksel.store.writer.do(
            lambda db: db.execute("INSERT INTO tombstone VALUES (?, 'item', '', 'story', '', '', 1)", (struck.id,))
        )
        assert joining.join(leida.store, there, "leida", leida.clock.now(), lambda joined: None).tombstones == 0
    leida.join(aksel)
    assert [ident for ident, _ in leida.rows()] == [kept.id]


def test_a_person_whom_only_struck_words_brought_does_not_come(desks: list[Desk]) -> None:
    leida, aksel, eha = desks
    told = aksel.name_somebody(ITEMS[0], "Ants Saar")
    eha.join(aksel)
    aksel.strike([told.id])
    leida.join(aksel)
    leida.join(eha)
    assert leida.rows() == []
    assert list(leida.store.people()) == []


def test_the_later_answer_counts_whoever_joined_whom(desks: list[Desk]) -> None:
    leida, aksel, eha = desks
    told = [desk.tell(ITEMS[0], f"by {desk.name}") for desk in (eha, leida, aksel)]
    leida.join(aksel)
    eha.join(leida)
    leida.join(eha)
    in_order = [row.words for row in sorted(told, key=lambda row: (row.recorded_at, row.id))]
    assert [[row.words for row, _ in desk.store.statements(ITEMS[0])] for desk in (leida, eha)] == [in_order, in_order]


def test_both_corrections_stand_and_are_told(desks: list[Desk]) -> None:
    leida, aksel, _ = desks
    first = leida.tell(ITEMS[0], "1935", field="date")
    aksel.join(leida)
    for desk, words in ((leida, "1934"), (aksel, "1936")):
        desk.tell(ITEMS[0], words, first.id, "date")
    joined = leida.join(aksel)
    both = {(told.words, told.by) for told in joined.corrected_twice}
    assert both == {("1934", "leida"), ("1936", "aksel")}
    assert {row.words for row, _ in leida.store.statements(ITEMS[0])} == {"1934", "1936"}
    assert leida.join(aksel).corrected_twice == (), "told once"


def test_a_number_given_in_two_copies_is_named_and_nothing_joined_unless_agreed(desks: list[Desk]) -> None:
    leida, aksel, _ = desks
    leida.tell(ITEMS[0], "TRA-0001", field="number")
    sleep(0.002)  # of two told in one millisecond, either may be the first
    aksel.tell(ITEMS[1], "TRA-0001", field="number")
    with pytest.raises(WrongUse, match="no"):
        leida.join(aksel, refuse)
    assert len(leida.rows()) == 1
    assert leida.join(aksel).twice == (("TRA-0001", ITEMS[0].id, ITEMS[1].id),)
    with pytest.raises(CouldNot, match="given already"):
        leida.tell(ITEMS[2], "TRA-0001", field="number")


def refuse(joined: Joined) -> None:
    raise WrongUse("no")


@pytest.mark.parametrize("table", ["statement", "reading", "settlement"])
def test_a_row_that_was_altered_there_is_not_taken(desks: list[Desk], table: str) -> None:
    leida, aksel, _ = desks
    told = aksel.name_somebody(ITEMS[0], "Ants Saar")
    do(aksel, "settle", (told.id, told.act))
    column = {"statement": "words", "reading": "reader", "settlement": "outcome"}[table]
    with closing(sqlite3.connect(aksel.store.path)) as db:
        db.execute(f"UPDATE {table} SET {column} = 'altered'")
        db.commit()
    with pytest.raises(CouldNot, match="not as it was written"):
        leida.join(aksel)
    assert leida.rows() == []


def test_a_reading_made_again_in_one_act_is_the_later_one(desks: list[Desk]) -> None:
    leida, aksel, _ = desks
    told = aksel.tell(ITEMS[0], "Ants")
    for person in ("1", "2"):
        meant = Reading("person", PersonRef(f"33333333-3333-7333-8333-33333333333{person}"), "test")
        aksel.write(told.act, readings=((told.id, meant),))
        leida.join(aksel)
    assert leida.tables() == aksel.tables()


def test_the_highest_number_ever_given_is_remembered(desks: list[Desk]) -> None:
    leida, aksel, _ = desks
    aksel.store.give_series("TRB")
    leida.store.set_meta("given TRA", "7")
    aksel.store.set_meta("given TRA", "9")
    aksel.join(leida)
    leida.join(aksel)
    assert [desk.store.next_number_count("TR", "A") for desk in (leida, aksel)] == [10, 10]
    assert leida.store.series_given() == {"TRA", "TRB"}


def test_another_collection_and_an_older_one_are_refused(tmp_path: Path, desks: list[Desk]) -> None:
    (tmp_path / "other").mkdir()
    create(tmp_path / "other", clock=Clock()).close()
    with pytest.raises(WrongUse, match="another collection"), joining.copy_to_join(tmp_path / "other", COLLECTION):
        pass
    with closing(sqlite3.connect(desks[0].store.path)) as db:
        db.execute("PRAGMA user_version = 3")
    with pytest.raises(CouldNot, match="older Boxlore"), joining.copy_to_join(desks[0].store.folder, COLLECTION):
        pass


def test_rows_from_before_the_sums_have_sums_once_they_stand_among_others(desks: list[Desk]) -> None:
    leida, aksel, _ = desks
    leida.tell(ITEMS[0], "old")
    with closing(sqlite3.connect(leida.store.path)) as db:
        db.execute("DELETE FROM statement_sum")
        db.execute("UPDATE meta SET value = '1' WHERE name = 'sums_from'")
        db.commit()
    aksel.tell(ITEMS[0], "new")
    leida.join(aksel)
    assert leida.store.rows_without_sum() == 0
    assert leida.store.altered_rows() == []
