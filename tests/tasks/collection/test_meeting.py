"""Meeting places on PostgreSQL, with a real server. Rules of our own; what the server enforces is tried with psycopg
alone, as a desk with another program would."""

from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path
from time import monotonic, sleep
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.postgres import Cluster
from tests.store.test_joining import COLLECTION, ITEMS, LOG, Desk, do

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.store import meeting_place
from boxlore.store.meeting_place import NotReached, admit, prepare
from boxlore.store.meeting_tables import LOG_TABLES
from boxlore.tasks.collection import live_meeting, meeting
from boxlore.tasks.collection.live_meeting import NOT_REACHED, LiveMeeting
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.settings import Settings

psycopg = pytest.importorskip("psycopg", reason="psycopg is not installed (the extra meet)")


class MeetingDesk(Desk):
    """A working copy whose keeper works by the desk's name."""

    def __init__(self, folder: Path, name: str, address: str) -> None:
        super().__init__(folder, name)
        self.collection = Collection(folder, Settings(meeting=address), self.store, self.clock, name)

    def meet(self, **more: Any) -> meeting.Met:
        return meeting.meet(self.collection, **more)


@pytest.fixture
def table(cluster: Cluster, tmp_path: Path) -> Iterator[Callable[..., MeetingDesk]]:
    """Desks at a new meeting place, by name and rights."""
    database = cluster.new_database()
    prepare(cluster.address(database), COLLECTION, "first", ("leida",))
    with ExitStack() as stack:

        def sit(name: str, rights: str) -> MeetingDesk:
            role = f"{name}_{database}"
            admit(cluster.address(database), role, rights, (name,))
            desk = MeetingDesk(tmp_path / name, name, cluster.address(database, role))
            stack.enter_context(desk.store)
            return desk

        yield sit


def test_told_at_one_desk_is_told_at_the_other(table: Callable[..., MeetingDesk]) -> None:
    leida, aksel = table("leida", "keeper"), table("aksel", "keeper")
    told = leida.tell(ITEMS[0], "Ants at the harbour")
    leida.name_somebody(ITEMS[1], "Ants Saar")
    do(leida, "undo", (told.id, told.act))
    do(leida, "settle", (told.id, told.act))
    assert leida.meet().brought.statements == 3
    assert aksel.meet().log.statements == 3
    assert aksel.tables() == leida.tables()
    again = aksel.meet()
    assert (again.log.statements, again.brought.rows) == (0, 0)


DEEDS = st.lists(
    st.tuples(
        st.sampled_from(["tell", "correct", "name", "undo", "strike", "meet", "settle"]),
        st.integers(0, 2),
        st.integers(0, 40),
    ),
    max_size=20,
)


def emptied(cluster: Cluster, database: str) -> None:
    """Take all that was told out of a meeting place, which is quicker than a new one."""
    with psycopg.connect(cluster.address(database), autocommit=True) as db:
        db.execute(f"TRUNCATE {', '.join(f'boxlore.{table}' for table in LOG_TABLES)}".encode())


def test_desks_that_meet_in_any_order_end_alike(cluster: Cluster, tmp_path_factory: pytest.TempPathFactory) -> None:
    database = cluster.new_database()
    address = cluster.address(database)
    names = ("leida", "aksel", "eha")
    prepare(address, COLLECTION, "first", names)

    @drawn(4)
    @given(DEEDS)
    def try_it(deeds: list[tuple[str, int, int]]) -> None:
        emptied(cluster, database)
        folder = tmp_path_factory.mktemp("desks")
        with ExitStack() as stack:
            desks = [MeetingDesk(folder / name, name, address) for name in names]
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
                elif deed == "meet":
                    desk.meet()
                elif rows:
                    do(desk, deed, rows[pick % len(rows)])
                told |= {ident for ident, _ in desk.rows()}
            for desk in (*desks, *desks):
                desk.meet()
            tables = [desk.tables() for desk in desks]
            for name in LOG:
                assert tables[0][name] == tables[1][name] == tables[2][name], name
            ids = {ident for ident, _ in desks[0].rows()}
            buried = {ident for (ident,) in desks[0].store.db.execute("SELECT statement FROM tombstone")}
            assert ids | buried == told | buried, "nothing that was told is lost"
            assert not ids & buried, "nothing that was struck is back"
            on_server = {row[0] for row in asked(address, "SELECT id FROM boxlore.statement")}
            assert on_server == ids, "the server holds the rows of the log, and nothing that was struck"

    try_it()


def asked(address: str, query: str, *values: object) -> list[tuple[Any, ...]]:
    """What the server answers a program that is not ours."""
    with psycopg.connect(address, autocommit=True) as db:
        cursor = db.execute(query.encode(), values or None)
        return cursor.fetchall() if cursor.description else []


def address_of(desk: MeetingDesk) -> str:
    return desk.collection.settings.meeting


ROW = (
    "INSERT INTO boxlore.statement (id, act, subject_kind, subject, field, words, language, said, source, sure, "
    "audience, sitting, recorded_at, by, replaces, open) VALUES "
    "(%s, %s, 'item', 'i', 'story', 'forged', '', '', '', '', 'family', '', '', %s, %s, true)"
)


def test_a_hostile_desk_reads_and_writes_only_what_it_may(table: Callable[..., MeetingDesk]) -> None:
    leida, aksel, eha = table("leida", "keeper"), table("aksel", "desk"), table("eha", "reader")
    told = [leida.tell(ITEMS[0], words) for words in ("for all", "Ants, who owed us money")]
    kept = leida.tell(ITEMS[0], "the keeper's own", audience="keeper")
    leida.meet()
    aksel.tell(ITEMS[1], "by Aksel")
    assert aksel.meet().brought.statements == 1
    assert eha.meet().log.statements == 3
    mine, theirs = address_of(aksel), address_of(eha)
    for where in (mine, theirs):
        seen = asked(where, "SELECT id FROM boxlore.statement") + asked(where, "SELECT statement FROM boxlore.reading")
        assert (kept.id,) not in seen and (told[0].id,) in seen
        lines = dict(asked(where, "SELECT act, what FROM boxlore.line"))
        assert told[0].act in lines and kept.act not in lines, "a line may repeat what the keeper keeps"
        for refused in (
            "UPDATE boxlore.statement SET words = 'forged'",
            "UPDATE boxlore.statement SET open = true",
            "DELETE FROM boxlore.statement",
            "TRUNCATE boxlore.act",
            "INSERT INTO boxlore.desk VALUES (session_user, 'keeper', ARRAY['leida'])",
            "UPDATE boxlore.desk SET rights = 'keeper'",
            "SELECT boxlore.mark(true, ARRAY[''], ARRAY[''], ARRAY[''])",
            "SELECT boxlore.answer(true, ARRAY[''])",
            "SELECT boxlore.take_out('')",
            "SELECT boxlore.forms('')",
            "SET ROLE keeper",
            "ALTER TABLE boxlore.act DISABLE TRIGGER ALL",
            "DROP POLICY seen ON boxlore.statement",
        ):
            refuses(where, refused)
    refuses(mine, "INSERT INTO boxlore.act (id, recorded_at, by) VALUES ('forged', '', 'leida')")
    refuses(mine, "INSERT INTO boxlore.act (id, recorded_at, by, desk) VALUES ('forged', '', 'aksel', 'leida')")
    refuses(mine, "INSERT INTO boxlore.withdrawal (act, withdraws) VALUES (%s, %s)", told[0].act, told[1].act)
    refuses(mine, ROW, "forged", told[0].act, "aksel", "")
    asked(mine, "INSERT INTO boxlore.act (id, recorded_at, by) VALUES ('own', '', 'aksel')")
    refuses(mine, ROW, "forged", "own", "leida", "")
    refuses(theirs, "INSERT INTO boxlore.act (id, recorded_at, by) VALUES ('read', '', 'eha')")
    asked(mine, "SELECT boxlore.quiet(%s)", [told[0].act])
    assert asked(address_of(leida), "SELECT what FROM boxlore.line WHERE act = %s", told[0].act) == [("told by leida",)]
    asked(mine, ROW, "hook", "own", "aksel", told[0].id)
    for statement in (told[0].id, "hook"):
        asked(
            mine,
            "INSERT INTO boxlore.tombstone (statement, subject_kind, subject, field, struck_at, by) "
            "VALUES (%s, 'item', '', '', '', 'aksel')",
            statement,
        )
    done = asked(address_of(leida), "SELECT state FROM boxlore.tombstone")
    assert done == [("asked",), ("asked",)], "nobody strikes another's words by correcting them"
    assert {row.id for row in told} < {ident for ident, _ in leida.rows()}


def refuses(address: str, query: str, *values: object) -> None:
    with pytest.raises(psycopg.errors.InsufficientPrivilege):
        asked(address, query, *values)


def test_nobody_who_was_not_admitted_finds_anything(
    table: Callable[..., MeetingDesk], cluster: Cluster, tmp_path: Path
) -> None:
    leida = table("leida", "keeper")
    leida.tell(ITEMS[0], "told")
    leida.meet()
    database = address_of(leida).partition("@/")[2].partition("?")[0]
    asked(cluster.address(database), f"CREATE ROLE stranger_{database} LOGIN")
    refuses(cluster.address(database, f"stranger_{database}"), "SELECT * FROM boxlore.statement")
    stranger = MeetingDesk(tmp_path / "stranger", "stranger", cluster.address(database, f"stranger_{database}"))
    with stranger.store, pytest.raises(CouldNot, match=r"Nothing is prepared|refuses"):
        stranger.meet()
    admit(cluster.address(database), f"leida_{database}", "nobody", ())
    with pytest.raises(CouldNot):
        leida.meet()


def test_what_a_desk_wishes_struck_that_another_told_is_hidden_until_a_keeper_answers(
    table: Callable[..., MeetingDesk],
) -> None:
    leida, aksel, eha = table("leida", "keeper"), table("aksel", "desk"), table("eha", "reader")
    told = [leida.tell(ITEMS[count], f"told {count}") for count in (0, 1)]
    leida.meet()
    aksel.meet()
    aksel.strike([row.id for row in told])
    aksel.meet()
    assert eha.meet().log.statements == 0, "hidden meanwhile"
    met = leida.meet()
    assert {row[0] for row in met.wished} == {row.id for row in told}
    refused = asked(address_of(leida), "SELECT boxlore.answer(false, %s)", [told[1].id])
    assert refused
    assert eha.meet().log.statements == 1
    leida.meet(wished="strike")
    eha.meet()
    assert [desk.rows() for desk in (leida, eha)] == [[(told[1].id, told[1].act)]] * 2
    assert aksel.meet().log.statements == 0, "what was struck here does not come back here"


def test_nobody_strikes_what_another_has_not_brought_yet(table: Callable[..., MeetingDesk]) -> None:
    """Aksel has it by a stick, and strikes it before Leida ever met."""
    leida, aksel, eha = table("leida", "keeper"), table("aksel", "desk"), table("eha", "reader")
    told = leida.tell(ITEMS[0], "Ants at the harbour")
    aksel.join(leida)
    aksel.strike([told.id])
    aksel.meet()
    assert [row[0] for row in leida.meet().wished] == [told.id]
    assert eha.meet().log.statements == 0, "hidden meanwhile"
    leida.meet(wished="refuse")
    assert eha.meet().log.statements == 1
    assert [ident for ident, _ in leida.rows()] == [told.id]


def test_what_undid_a_struck_act_is_blank_at_every_desk(table: Callable[..., MeetingDesk]) -> None:
    """The undo came to Leida without the row that she had struck, for that had come before."""
    leida, aksel = table("leida", "keeper"), table("aksel", "desk")
    told = leida.tell(ITEMS[0], "Ants, who owed us money")
    leida.meet()
    aksel.meet()
    do(aksel, "undo", (told.id, told.act))
    aksel.meet()
    leida.strike([told.id])
    leida.meet()
    aksel.meet()
    assert leida.tables()["act"] == aksel.tables()["act"]
    assert {what for (what,) in leida.store.db.execute("SELECT what FROM act")} == {"struck"}


def test_an_older_meeting_place_is_brought_up_to_date(
    cluster: Cluster, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    address = cluster.address(cluster.new_database())
    with monkeypatch.context() as older:
        older.setattr(meeting_place, "MIGRATIONS", meeting_place.MIGRATIONS[:1])
        older.setattr(meeting_place, "VERSION", 1)
        assert prepare(address, COLLECTION, "first", ("leida",)) == 1
        desk = MeetingDesk(tmp_path / "leida", "leida", address)
        with desk.store:
            desk.tell(ITEMS[0], "told")
            desk.meet()
            older.undo()
            with pytest.raises(CouldNot, match="older"):
                desk.meet()
            assert prepare(address, COLLECTION, "second", ("leida",)) == len(meeting_place.MIGRATIONS) - 1
            assert prepare(address, COLLECTION, "third", ("leida",)) == 0
            assert desk.meet().brought.rows == 0, "what was there is there yet"
            with pytest.raises(WrongUse, match="Another collection"):
                prepare(address, "another", "fourth", ("leida",))
            older.setattr(meeting_place, "VERSION", 1)
            with pytest.raises(CouldNot, match="newer"):
                desk.meet()


def test_a_server_that_is_not_this_machine_must_prove_itself(cluster: Cluster, monkeypatch: pytest.MonkeyPatch) -> None:
    """libpq, 34.19: verify-full proves the server by its certificate and its name."""
    monkeypatch.delenv("PGSSLMODE", raising=False)
    told = meeting_place.settings_of("postgresql://anna@archive.example/family")
    assert told["sslmode"] == "verify-full" and told["sslrootcert"]
    assert meeting_place.settings_of("postgresql://anna@192.0.2.1/family?sslmode=require")["sslmode"] == "require"
    assert "sslmode" not in meeting_place.settings_of("postgresql://anna@127.0.0.1/family")
    assert meeting_place.settings_of("postgresql://anna@/family?service=far")["sslmode"] == "verify-full"
    monkeypatch.setattr(meeting_place, "is_on_this_machine", lambda told: False)
    with pytest.raises(WrongUse, match="unencrypted"):
        prepare(cluster.address("postgres"), COLLECTION, "first", ("leida",))


def test_a_strike_takes_the_row_out_of_the_server_and_of_every_desk(table: Callable[..., MeetingDesk]) -> None:
    leida, aksel = table("leida", "keeper"), table("aksel", "desk")
    told = aksel.name_somebody(ITEMS[0], "Ants, who owed us money")
    aksel.meet()
    leida.meet()
    aksel.strike([told.id])
    aksel.meet()
    where = address_of(leida)
    assert asked(where, "SELECT 1 FROM boxlore.statement") == asked(where, "SELECT 1 FROM boxlore.reading") == []
    assert asked(where, "SELECT what FROM boxlore.line") == [("struck",)]
    asked(where, ROW, told.id, told.act, "aksel", "")
    assert asked(where, "SELECT 1 FROM boxlore.statement") == [], "it stays out"
    leida.meet()
    assert leida.rows() == []
    assert b"owed us" not in leida.store.path.read_bytes()


def test_a_keeper_opens_and_closes_what_is_there(table: Callable[..., MeetingDesk]) -> None:
    leida, aksel = table("leida", "keeper"), table("aksel", "desk")
    leida.tell(ITEMS[0], "FAM-0001", field="number")
    told = leida.tell(ITEMS[0], "at the harbour")
    leida.tell(ITEMS[0], "keeper", field="audience")
    leida.meet()
    assert aksel.meet().log.statements == 0
    leida.tell(ITEMS[1], "of another item")
    leida.meet()
    assert aksel.meet().log.statements == 1
    act = leida.store.db.execute("SELECT act FROM statement WHERE field = 'audience'").fetchall()
    leida.write(leida.clock.new_id(), withdraws=(act[0][0],))
    assert leida.meet().opened == 2
    assert aksel.meet().log.statements == 2
    assert told.id in {ident for ident, _ in aksel.rows()}


def test_a_meeting_that_breaks_off_is_as_if_it_had_not_begun(
    table: Callable[..., MeetingDesk], cluster: Cluster, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The connection is cut by the server, and the server killed, each in the midst of bringing."""
    leida, aksel = table("leida", "keeper"), table("aksel", "keeper")
    told = [leida.tell(ITEMS[0], f"told {count}") for count in range(5)]
    execute = psycopg.Connection.execute

    def cut(how: Callable[[Any], None]) -> Callable[..., Any]:
        def run(db: Any, query: Any, *rest: Any, **more: Any) -> Any:
            if b"INSERT INTO boxlore.reading" in bytes(query if isinstance(query, bytes) else b""):
                monkeypatch.undo()
                how(db)
            return execute(db, query, *rest, **more)

        return run

    def end_session(db: Any) -> None:
        asked(cluster.address("postgres"), "SELECT pg_terminate_backend(%s)", db.info.backend_pid)

    def kill(db: Any) -> None:
        cluster.stop()

    for how in (end_session, kill):
        leida.name_somebody(ITEMS[1], "Ants Saar")
        monkeypatch.setattr(psycopg.Connection, "execute", cut(how))
        with pytest.raises(NotReached):
            leida.meet()
        if how is kill:
            with pytest.raises(NotReached, match="cannot be reached"):
                aksel.meet()
            cluster.start()
        assert asked(address_of(leida), "SELECT count(*) FROM boxlore.act") == [(0,)]
    assert leida.meet().brought.statements == len(told) + 4
    aksel.meet()
    assert aksel.tables() == leida.tables()


def until(true: Callable[[], object], seconds: float = 20) -> None:
    """Wait for what comes by itself."""
    end = monotonic() + seconds
    while not true():
        assert monotonic() < end, "it did not come"
        sleep(0.02)


def test_open_desks_hear_each_other_and_a_lost_server_is_a_line(
    table: Callable[..., MeetingDesk], cluster: Cluster, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is told is at the other desk by itself, who has what out is shown, and nothing is lost of what is told while
    the server is away. (Times are bounds for a machine at work, no measure.)"""
    monkeypatch.setattr(live_meeting, "AGAIN", 0.2)
    desks = [table("leida", "keeper"), table("aksel", "desk")]
    leida, aksel = desks
    leida.tell(ITEMS[0], "TRA-0007", field="number")
    live = [LiveMeeting(desk.collection) for desk in desks]
    for one in live:
        one.begin()
    try:
        until(lambda: aksel.rows() == leida.rows() != [])
        live[1].out = ITEMS[0].id
        until(lambda: live[0].line.startswith("aksel") and live[0].line.endswith(" has TRA-0007 out"))
        aksel.tell(ITEMS[0], "Ants at the harbour")
        until(lambda: aksel.rows() == leida.rows())
        until(lambda: all(one.came for one in live))
        cluster.stop()
        until(lambda: live[0].line == live[1].line == NOT_REACHED)
        aksel.tell(ITEMS[0], "told meanwhile")
        cluster.start()
        until(lambda: aksel.rows() == leida.rows())
        aksel.tell(ITEMS[0], "told last")
    finally:
        live[1].end()
        until(lambda: aksel.rows() == leida.rows())
        until(lambda: live[0].line == "")
        live[0].end()


@pytest.mark.parametrize(
    ("address", "why"),
    [
        ("postgresql://anna:secret@/family", "password"),
        ("postgresql://anna@archive.example/family?sslmode=prefer", "unencrypted"),
        ("postgresql://anna@192.0.2.1/family?sslmode=disable", "unencrypted"),
        ("mysql://anna@/family", "address"),
        ("postgresql://anna@/family?nothing=such", "cannot be read"),
        ("", "known"),
    ],
)
def test_what_is_no_address_is_said(tmp_path: Path, address: str, why: str) -> None:
    with MeetingDesk(tmp_path / "leida", "leida", address).store as store:
        collection = Collection(tmp_path / "leida", Settings(meeting=address), store, Desk.__new__(Desk), "leida")  # type: ignore[arg-type]
        with pytest.raises(WrongUse, match=why) as raised:
            meeting.meet(collection)
        assert "secret" not in str(raised.value)
