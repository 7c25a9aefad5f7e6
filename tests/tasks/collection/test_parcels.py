"""Parcels: made, taken in, and what they hold for whom. Rules of our own, no outside source."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from PIL import Image

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.phrases import READER_VERSION
from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.pictures import FILE_WORDS
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Reading, Subject
from boxlore.disk.parcel_files import pack, unpack
from boxlore.store.left_out import every_line
from boxlore.store.strike import strike
from boxlore.store.values import Change, Settlement
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.parcel_audience import left_out_for_family, left_out_of_rows
from boxlore.tasks.collection.parcels import (
    Parcel,
    ParcelOrder,
    TakenIn,
    copy_from_parcel,
    make_parcel,
    passphrase_for,
    take_in,
)
from boxlore.tasks.collection.progress import QUIET, Quiet
from boxlore.tasks.collection.said_of_joining import said_of_parcel, said_of_taken_in
from boxlore.tasks.collection.settings import keep_setting, read_settings
from boxlore.tasks.people.registry import find_person, set_audience
from boxlore.tasks.scans.intake import IntakeOptions
from boxlore.tasks.scans.intake import take_in as take_scans_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.telling.statements import Teller, Telling

WORDS = "four words of Reval"


def scan(folder: Path, path: Path, width: int) -> None:
    Image.linear_gradient("L").resize((width, 40)).save(path)
    with open_collection(folder) as collection:
        list(take_scans_in(collection, by_suffix([path]), IntakeOptions(copy=True)))


def tell(folder: Path, count: int, field: str, words: str, **more: str) -> None:
    with open_collection(folder) as collection:
        _, item = collection.store.items()[count]
        act = collection.act(f"told: {words}")
        act.state(Subject(Kind.ITEM, item), field, words, **more)
        act.done()


def made(folder: Path, target: Path, **order: object) -> Parcel:
    with open_collection(folder) as collection:
        return make_parcel(collection, target, ParcelOrder(**order), QUIET)  # type: ignore[arg-type]  # by name


def write(collection: Collection, what: str, **more: Any) -> None:
    """An act of withdrawals or settlements."""
    now = collection.clock.now()
    collection.store.write(Change(act=collection.clock.new_id(), what=what, by="leida", recorded_at=now, **more))


def taken(folder: Path, parcel: Path, passphrase: str = "") -> TakenIn:
    with open_collection(folder) as collection:
        return take_in(collection, parcel, passphrase, QUIET)


def words_of(folder: Path) -> list[str]:
    with open_collection(folder, write=False) as collection:
        return sorted(row[0] for row in collection.store.db.execute("SELECT words FROM in_force"))


def bytes_of(parcel: Path, folder: Path) -> bytes:
    folder.mkdir()
    unpack(parcel, folder)
    return b"".join(path.read_bytes() + path.name.encode() for path in folder.rglob("*") if path.is_file())


@pytest.fixture
def first(bare: Callable[[int], Path], tmp_path: Path) -> Path:
    """A collection of two scans with a recording and a paper."""
    folder = bare(0)
    scan(folder, tmp_path / "quay_f.jpg", 60)
    scan(folder, tmp_path / "farm_f.jpg", 70)
    (folder / "papers" / "agreement.txt").write_text("signed", "utf-8")
    (folder / "prompts.toml").write_text("# none yet\n", "utf-8")
    return folder


@pytest.fixture
def second(first: Path, tmp_path: Path) -> Path:
    """A working copy of it, made of a parcel."""
    made(first, tmp_path / "new.parcel", new_copy=True)
    copy_from_parcel(tmp_path / "aksel", tmp_path / "new.parcel", "", QUIET)
    return tmp_path / "aksel"


def test_a_working_copy_of_a_parcel_has_all_and_a_series_of_its_own(first: Path, second: Path, tmp_path: Path) -> None:
    assert words_of(second) == words_of(first)
    assert [read_settings(folder).series for folder in (first, second)] == ["A", "B"]
    assert (second / "papers" / "agreement.txt").is_file() and (second / "prompts.toml").is_file()
    assert made(first, tmp_path / "eha.parcel", new_copy=True).letter == "C"
    assert [path.name for path in tmp_path.rglob("*boxlore-part")] == []


def test_what_was_told_apart_is_in_both_and_once_more_adds_nothing(first: Path, second: Path, tmp_path: Path) -> None:
    tell(second, 0, "story", "The pier, in fog")
    scan(second, tmp_path / "regatta_f.jpg", 80)
    tell(first, 0, "story", "The pier, before the war")
    there = made(second, tmp_path / "a.parcel")
    assert passphrase_for(there.path, lambda: WORDS) == ""
    assert taken(first, there.path).joined.files == 1
    assert taken(second, made(first, tmp_path / "b.parcel").path).joined.faults == []
    assert words_of(first) == words_of(second)
    again = taken(first, there.path).joined
    assert (again.log.acts, again.log.statements, again.files, again.same_series) == (0, 0, 0, False)


def test_a_parcel_since_a_day_says_what_is_lacking_before_it(first: Path, second: Path, tmp_path: Path) -> None:
    today = date.fromisoformat(words_day(first))
    tell(first, 0, "story", "The pier")
    since_today = made(first, tmp_path / "a.parcel", since=today)
    assert since_today.statements > 0 and taken(second, since_today.path).lacking == 0
    tell(first, 1, "story", "The farm")
    later = made(first, tmp_path / "b.parcel", since=today + timedelta(1))
    assert (later.statements, later.files) == (0, 0)
    result = taken(second, later.path)
    assert result.lacking == 1 and "The farm" not in words_of(second)
    with open_collection(second) as collection:
        assert "1 act from before are not here" in " ".join(said_of_taken_in(collection, later.path, result))


def words_day(folder: Path) -> str:
    with open_collection(folder, write=False) as collection:
        return collection.clock.now()[:10]


def test_a_reading_confirmed_later_comes_without_the_words_that_it_is_of(
    first: Path, second: Path, tmp_path: Path
) -> None:
    """The words were taken in before; a parcel of later days holds the keeper's confirmation alone."""
    tell(first, 0, "date", "about 1910")
    taken(second, made(first, tmp_path / "a.parcel").path)
    with open_collection(first) as collection:
        collection.clock._last += 86_400_000
        _, item = collection.store.items()[0]
        (told,) = (told for told, _ in collection.store.statements(Subject(Kind.ITEM, item)) if told.field == "date")
        act = collection.act("confirmed")
        value = DateReading("about 1910", standard.parsed("1910~"))
        act.readings.append((told.id, Reading("date", value, READER_VERSION, confirmed=True)))
        act.done()
        later = date.fromisoformat(collection.clock.now()[:10])
    taken(second, made(first, tmp_path / "b.parcel", since=later).path)
    for folder in (first, second):
        with open_collection(folder, write=False) as collection:
            assert collection.store.db.execute("SELECT max(confirmed) FROM reading").fetchone() == (1,)


def test_what_was_struck_after_it_was_made_stays_struck(first: Path, second: Path, tmp_path: Path) -> None:
    tell(first, 0, "story", "Ants, who owed us money")
    parcel = made(first, tmp_path / "a.parcel").path
    with open_collection(first) as collection:
        ids = [row[0] for row in collection.store.every_words() if row[2] == "story"]
        strike(collection.store, ids, by="leida", now=collection.clock.now())
    assert taken(first, parcel).joined.log.statements == 0
    taken(second, made(first, tmp_path / "b.parcel").path)
    assert taken(second, parcel).joined.log.statements == 0
    assert all(b"owed us" not in path.read_bytes() for folder in (first, second) for path in folder.rglob("*.sqlite"))


def test_the_family_gets_no_byte_of_what_is_kept_from_it(first: Path, second: Path, tmp_path: Path) -> None:
    """A statement of the keeper's, one field of an item, a whole item with its scan, a person, earlier words, and the
    lines of the acts that told them; also back home nothing of it is lost."""
    scan(first, tmp_path / "shed_f.jpg", 90)
    tell(first, 0, "story", "ownword Mihkel drank", audience="keeper")
    tell(first, 0, "note", "ownword for later", audience="keeper")
    tell(first, 0, "story", "The pier in fog", audience="family")
    tell(first, 1, "title", "ownword farm")
    with open_collection(first) as collection:
        set_audience(collection, Subject(Kind.ITEM, collection.store.items()[1][1]), "keeper")
    with open_collection(first) as collection:
        (_, item), _, (_, shows_him) = collection.store.items()
        Teller(collection).tell(Subject(Kind.ITEM, shows_him), "person", "Mihkel Saks", Telling())
        person = find_person(collection, "Mihkel Saks")
        set_audience(collection, Subject(Kind.PERSON, person.id), "keeper")
        act = collection.act("earlier ownword words")
        told = act.state(Subject(Kind.ITEM, item), "title", "ownword pier")
        act.done()
        act = collection.act("put right")
        act.state(Subject(Kind.ITEM, item), "title", "The pier", replaces=told.id)
        act.done()
        before = words_of(first)
    parcel = made(first, tmp_path / "a.parcel", to=To.FAMILY)
    assert parcel.kept_back >= 6 and parcel.files == 1
    data = bytes_of(parcel.path, tmp_path / "out").lower()
    assert b"the pier in fog" in data
    assert b"ownword" not in data and b"mihkel" not in data and b"agreement.txt" not in data
    taken(second, parcel.path)
    assert "The pier" in words_of(second)
    assert len(list((second / "scans").rglob("*.jpg"))) == 2  # that he is seen on did not come, nor the keeper's own
    tell(second, 0, "story", "Fog it was")
    taken(first, made(second, tmp_path / "b.parcel").path)
    assert words_of(first) == sorted([*before, "Fog it was"])


def test_no_line_of_an_act_tells_the_family_what_no_row_does(first: Path, tmp_path: Path) -> None:
    """The lines of what was undone, read or settled later repeat words of rows that stay; so do the names of files
    and settings. A scan of no item is decided for nobody."""
    tell(first, 0, "story", "ownword Mihkel drank", audience="keeper")
    tell(first, 0, "date", "about 1910", audience="keeper")
    with open_collection(first) as collection:
        (_, item), *_ = collection.store.items()
        rows = {told.field: told.id for told, _ in collection.store.statements(Subject(Kind.ITEM, item))}
        act = collection.act("date: ownword about 1910")
        value = DateReading("about 1910", standard.parsed("1910~"))
        act.readings.append((rows["date"], Reading("date", value, READER_VERSION, confirmed=True)))
        act.done()
        undone = collection.act("story: ownword again")
        undone.state(Subject(Kind.ITEM, item), "story", "ownword again", audience="keeper")
        undone.done()
        write(collection, "taken back: story: ownword again", withdraws=(undone.id,))
        about = Subject(Kind.ITEM, item)
        weighed = Settlement(id=collection.clock.new_id(), subject=about, field="ownword", outcome="doubtful",
                             weighed=tuple(rows.values()))  # fmt: skip
        write(collection, "ownword: settled", settlements=(weighed,))
        Teller(collection).tell(Subject(Kind.ITEM, item), "person", "Mihkel Saks", Telling())
        set_audience(collection, Subject(Kind.PERSON, find_person(collection, "Mihkel Saks").id), "keeper")
        act = collection.act("told from Mihkel Saks.csv")
        act.state(about, "title", "The pier")
        act.done()
        act = collection.act("scans")
        _, facts = next(iter(collection.store.scans()))
        lone = FILE_WORDS.write(replace(facts, path="scans/Mihkel Saks.jpg", sha256="0" * 64))
        act.state(Subject(Kind.SCAN, collection.clock.new_id()), "file", lone)
        act.done()
        keep_setting(first, "family", "Mihkel Saks family")
    made(first, tmp_path / "a.parcel", to=To.FAMILY)
    data = bytes_of(tmp_path / "a.parcel", tmp_path / "out").lower()
    assert b"the pier" in data
    assert b"ownword" not in data and b"mihkel saks" not in data and b"mihkel+saks" not in data


def test_what_the_family_had_first_is_whole_once_the_keepers_parcel_comes(
    first: Path, second: Path, tmp_path: Path
) -> None:
    """Earlier words, what is undone and what was settled come in any order, also behind what they led to."""
    with open_collection(first) as collection:
        (_, item), *_ = collection.store.items()
        about = Subject(Kind.ITEM, item)
        act = collection.act("title")
        told = act.state(about, "title", "The jetty")
        act.done()
        act = collection.act("title: corrected")
        act.state(about, "title", "The pier", replaces=told.id)
        act.done()
        undone = collection.act("story: It rained")
        undone.state(about, "story", "It rained")
        undone.done()
        write(collection, "taken back", withdraws=(undone.id,))
    tell(first, 0, "note", "for later", audience="keeper")
    new = made(first, tmp_path / "eha.parcel", to=To.FAMILY, new_copy=True)
    copy_from_parcel(tmp_path / "eha", new.path, "", QUIET)
    assert "The pier" in words_of(tmp_path / "eha") and "The jetty" not in every_words(tmp_path / "eha")
    taken(tmp_path / "eha", made(first, tmp_path / "all.parcel").path)
    assert words_of(tmp_path / "eha") == words_of(first)
    assert every_words(tmp_path / "eha") == every_words(first)


def every_words(folder: Path) -> list[str]:
    with open_collection(folder, write=False) as collection:
        return sorted(row[3] for row in collection.store.every_words())


def test_what_cannot_be_meant_is_refused(
    first: Path, second: Path, bare: Callable[[int], Path], tmp_path: Path
) -> None:
    taken_already = tmp_path / "new.parcel"
    for target, order, why in (
        (taken_already, {}, "is there already"),
        (tmp_path / "x", {"new_copy": True, "since": date(2026, 1, 1)}, "needs all"),
        (tmp_path / "x", {"to": To.OUTSIDE}, "another keeper or for the family"),
    ):
        with pytest.raises(WrongUse, match=why):
            made(first, target, **order)
    plain = made(first, tmp_path / "plain.parcel").path
    with pytest.raises(WrongUse, match="has a working copy already"):
        copy_from_parcel(tmp_path / "eha", plain, "", QUIET)
    copy_from_parcel(tmp_path / "eha", plain, "", QUIET, series="Q")
    part = made(first, tmp_path / "part.parcel", since=date(2026, 1, 1)).path
    with pytest.raises(WrongUse, match="only what was told since 2026-01-01"):
        copy_from_parcel(tmp_path / "mia", part, "", QUIET)
    with open_collection(bare(1)) as other, pytest.raises(WrongUse, match="is of another collection"):
        take_in(other, plain, "", QUIET)


@pytest.mark.parametrize("about", [b"[1]", b'{"parcel": 2}', b"{", None])
def test_what_is_no_parcel_of_ours_is_refused(about: bytes | None, first: Path, tmp_path: Path) -> None:
    pack(tmp_path / "a.parcel", [("parcel.json", about)] if about else [("letter.txt", b"Dear Mia")])
    with pytest.raises(CouldNot, match="no parcel of this program"):
        taken(first, tmp_path / "a.parcel")


class Stopped(Quiet):
    def stopped(self) -> bool:
        return True


def test_a_parcel_that_was_stopped_leaves_nothing(first: Path, tmp_path: Path) -> None:
    with open_collection(first) as collection, pytest.raises(CouldNot, match="Stopped"):
        make_parcel(collection, tmp_path / "a.parcel", ParcelOrder(), Stopped())
    assert not (tmp_path / "a.parcel").exists()
    assert [path.name for path in tmp_path.rglob("*boxlore-part")] == []


def test_scans_that_do_not_go_are_told(first: Path, second: Path, tmp_path: Path) -> None:
    scan(first, tmp_path / "shed_f.jpg", 90)
    next((first / "scans").rglob("*0003*")).unlink()
    order = ParcelOrder(new_copy=True)
    with open_collection(first) as collection:
        parcel = make_parcel(collection, tmp_path / "a.parcel", order, QUIET)
    said = " ".join(said_of_parcel(parcel, order))
    assert "is not in the parcel" in said and "Series C is set aside" in said and "It is not locked" in said
    family = ParcelOrder(to=To.FAMILY, passphrase=WORDS)
    assert "the family alone" in " ".join(said_of_parcel(parcel, family))
    bare_words = made(first, tmp_path / "b.parcel", with_files=False).path
    result = taken(second, bare_words)
    assert result.joined.faults == [] and len(result.joined.not_sent) == 1
    with open_collection(second) as collection:
        said = " ".join(said_of_taken_in(collection, bare_words, result))
        assert "1 scan told of in it is not in the parcel" in said


def test_some_acts_alone_are_decided_as_all_are(small_family: Path) -> None:
    """What a meeting place is told of the newest acts is what a parcel would be."""
    with open_collection(small_family, write=False) as collection:
        whole = left_out_for_family(collection)
        acts = [act for act, _ in every_line(collection.store.db)]
        for act in acts[:: max(len(acts) // 12, 1)]:
            rows = {ident for (ident,) in collection.store.db.execute("SELECT id FROM statement WHERE act = ?", (act,))}
            part = left_out_of_rows(collection, rows, {act})
            assert part.rows & rows == whole.rows & rows
            assert (act in part.lines) == (act in whole.lines)
