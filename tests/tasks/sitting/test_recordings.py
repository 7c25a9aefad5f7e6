"""The course of a sitting, its recordings and papers, and the log by time code.

Agreement before questions, with terms and who gave it; time codes for what is sensitive: Oral History Association,
Best Practices (2018), and the Oral History Society's advice. Lengths of sound: Python's own wave module.
"""

import csv
import io
import wave
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from click.testing import CliRunner

from boxlore.cli.main import boxlore
from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.core.sitting.stages import OutOfTurn, Step
from boxlore.core.statements import Kind, Subject
from boxlore.disk.digests import sha256_of
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.prompts import PROMPTS
from boxlore.tasks.sitting import correcting, course, time_log
from boxlore.tasks.sitting.recordings import files, keep_paper, keep_recording, of_sitting, sittings, verify_kept
from boxlore.tasks.sitting.session import Sitting

STORY = PROMPTS[0]


class Time:
    """Stands for time.monotonic: a test says how late it is."""

    def __init__(self) -> None:
        self.seconds = 100.0

    def __call__(self) -> float:
        return self.seconds


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> Time:
    made = Time()
    monkeypatch.setattr("boxlore.tasks.sitting.session.time.monotonic", made)
    return made


@pytest.fixture
def collection(bare: Callable[[int], Path], clock: Time) -> Iterator[Collection]:
    with open_collection(bare(3)) as opened:
        yield opened


@pytest.fixture
def sitting(collection: Collection) -> Sitting:
    made = Sitting(collection)
    made.begin()
    return made


AGREED = {
    "narrator": "Leida Rourke",
    "interviewer": "Mia Rourke",
    "place": "the narrator's home",
    "terms": "2",
    "agreed_by": "Leida Rourke",
    "recorder": "yes",
}


def sound(path: Path, seconds: float) -> Path:
    with wave.open(str(path), "wb") as out:
        out.setnchannels(1)
        out.setsampwidth(2)
        out.setframerate(8000)
        out.writeframes(bytes(2) * round(8000 * seconds))
    return path


def told(sitting: Sitting) -> dict[str, str]:
    rows = sitting.collection.store.statements(Subject(Kind.SITTING, sitting.id))
    return {statement.field: statement.words for statement, _ in rows}


def item(sitting: Sitting, count: int) -> str:
    return sitting.collection.store.item_by_number(f"TRA-{count:04d}") or ""


def say(sitting: Sitting, count: int, words: str) -> None:
    sitting.keep(sitting.record(item(sitting, count)), STORY, words)


def test_the_agreement_is_noted_with_its_terms_and_who_gave_it(sitting: Sitting) -> None:
    course.prepare(sitting, AGREED)
    found = told(sitting)
    assert found["narrator"] == "Leida Rourke"
    assert "an archive that keeps it closed" in found["agreement"]
    assert "Read out: We look at photographs" in found["agreement"]
    assert found["consent"].startswith("Given by Leida Rourke: the family, and an archive")
    assert course.steps(sitting.collection, sitting.id) == [(0, "recording started")]


@pytest.mark.parametrize("left_out", ["narrator", "agreed_by"])
def test_an_agreement_wants_somebody(sitting: Sitting, left_out: str) -> None:
    with pytest.raises(WrongUse):
        course.prepare(sitting, AGREED | {left_out: " "})
    assert not sitting.id


def test_steps_are_noted_and_held_to_the_table(sitting: Sitting, clock: Time) -> None:
    course.prepare(sitting, AGREED)
    clock.seconds += 60
    course.step(sitting, Step.REST)
    clock.seconds += 60
    course.step(sitting, Step.GO_ON)
    with pytest.raises(OutOfTurn):
        course.step(sitting, Step.GO_ON)
    assert course.steps(sitting.collection, sitting.id) == [
        (0, "recording started"),
        (60_000, "rest"),
        (120_000, "go on"),
    ]


def test_a_sitting_is_summed_up(sitting: Sitting, clock: Time) -> None:
    course.prepare(sitting, AGREED)
    sitting.show(item(sitting, 1))
    say(sitting, 1, "The regatta.")
    sitting.show(item(sitting, 2))
    sitting.ask_later(sitting.record(item(sitting, 2)), "ask Joan")
    clock.seconds += 3600
    course.ask_next_time(sitting, "the farm; Ellen's wedding")
    found = course.summary(sitting)
    assert (found.items, found.statements, found.minutes) == (2, 1, 60)
    assert found.to_ask == ("ask Joan", "the farm", "Ellen's wedding")


def test_recordings_are_kept_with_their_fixity_and_place_in_time(sitting: Sitting, clock: Time, tmp_path: Path) -> None:
    """A telephone call splits the recording: two files, each laid by its own clap."""
    course.prepare(sitting, AGREED)
    clock.seconds += 10
    assert course.clap(sitting) == 1
    sitting.show(item(sitting, 1))
    clock.seconds += 20
    say(sitting, 1, "The regatta.")
    clock.seconds += 70
    assert course.clap(sitting) == 2
    clock.seconds += 5
    sitting.show(item(sitting, 2))
    clock.seconds += 1
    say(sitting, 2, "Helmi's wedding.")
    one, two = sound(tmp_path / "a.wav", 60), sound(tmp_path / "b.wav", 30)
    first = keep_recording(sitting.collection, sitting.id, one, clap_at=4000, clap=1)
    second = keep_recording(sitting.collection, sitting.id, two, clap_at=2000, clap=2)
    assert (first.start, second.start) == (6000, 98_000)
    assert one.read_bytes() == (sitting.collection.folder / first.path).read_bytes()
    assert {facts.path: facts.sha256 for facts in files(sitting.collection)} == {
        first.path: sha256_of(one),
        second.path: sha256_of(two),
    }
    assert [one.length for one in of_sitting(sitting.collection, sitting.id)] == [60_000, 30_000]
    stories = [sitting.record(item(sitting, n)).first("story") for n in (1, 2)]
    assert [time_log.cite(sitting.collection, story) for story in stories if story] == [
        f"{first.path} 0:00:24",
        f"{second.path} 0:00:08",
    ]
    assert keep_recording(sitting.collection, sitting.id, one, clap_at=4000).known
    assert "Leida" not in first.path


def test_without_a_clap_it_begins_where_that_was_noted(sitting: Sitting, clock: Time, tmp_path: Path) -> None:
    course.prepare(sitting, AGREED | {"recorder": ""})
    kept = keep_recording(sitting.collection, sitting.id, sound(tmp_path / "a.wav", 1))
    assert (kept.start, kept.because) == (0, "taken as begun with the sitting")
    clock.seconds += 9
    course.note(sitting, "recording started")
    kept = keep_recording(sitting.collection, sitting.id, sound(tmp_path / "b.wav", 2))
    assert (kept.start, kept.because) == (9000, "noted when it was started")


def test_what_is_no_sound_or_no_clap_is_refused(sitting: Sitting, tmp_path: Path) -> None:
    course.prepare(sitting, AGREED)
    (tmp_path / "a.txt").write_text("x")
    with pytest.raises(WrongUse, match="no sound file"):
        keep_recording(sitting.collection, sitting.id, tmp_path / "a.txt")
    with pytest.raises(WrongUse, match="no clap was noted"):
        keep_recording(sitting.collection, sitting.id, sound(tmp_path / "a.wav", 1), clap_at=0)
    assert list((sitting.collection.folder / "recordings").iterdir()) == []


def test_papers_are_kept(sitting: Sitting, tmp_path: Path) -> None:
    course.prepare(sitting, AGREED)
    paper = tmp_path / "signed.pdf"
    paper.write_bytes(b"%PDF-1.7 signed")
    kept = keep_paper(sitting.collection, sitting.id, paper, "agreement")
    assert (sitting.collection.folder / kept.path).read_bytes() == paper.read_bytes()
    assert kept.path.startswith("papers/sitting-")
    assert keep_paper(sitting.collection, sitting.id, paper).known


def rows(path: Path) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(path.read_bytes().decode())))


def test_the_log_by_time_code_and_what_outside_never_sees(sitting: Sitting, clock: Time, tmp_path: Path) -> None:
    course.prepare(sitting, AGREED | {"narrator": "Mart Tamm", "terms": "3"})
    act = sitting.collection.act("dead long ago")
    act.state(Subject(Kind.PERSON, sitting.source.ref), "died", "1990")
    act.state(Subject(Kind.PERSON, sitting.source.ref), "living", "no")
    act.done()
    keep_recording(sitting.collection, sitting.id, sound(tmp_path / "a.wav", 600))
    sitting.show(item(sitting, 1))
    clock.seconds += 30
    say(sitting, 1, "=The regatta.")
    clock.seconds += 30
    sitting.show(item(sitting, 2))
    clock.seconds += 30
    say(sitting, 2, "What happened in the war.")
    course.close_passage(sitting, 0.5, "the war")
    clock.seconds += 30
    sitting.show(item(sitting, 3))
    clock.seconds += 30
    say(sitting, 3, "For us alone.")
    record = sitting.record(item(sitting, 3))
    correcting.change(sitting, record, record.all("story")[0], audience="family")
    chapters, log = time_log.write_log(sitting.collection, sitting.id, tmp_path / "out")
    assert [row["words"] for row in rows(log)] == ["'=The regatta.", "What happened in the war.", "For us alone."]
    assert [(row["time"], row["number"], row["closed"]) for row in rows(log)] == [
        ("0:00:30", "TRA-0001", ""),
        ("0:01:30", "TRA-0002", "closed"),
        ("0:02:30", "TRA-0003", ""),
    ]
    assert "00:01:00.000 --> 00:02:00.000\nTRA-0002 " in chapters.read_text()
    chapters, log = time_log.write_log(sitting.collection, sitting.id, tmp_path / "open", To.OUTSIDE)
    assert [row["words"] for row in rows(log)] == ["'=The regatta."]
    assert "00:01:00.000 --> 00:02:00.000\nTRA-0002\n" in chapters.read_text()


def test_a_living_narrator_is_not_in_the_open_log(sitting: Sitting, tmp_path: Path) -> None:
    course.prepare(sitting, AGREED)
    sitting.show(item(sitting, 1))
    say(sitting, 1, "My own words.")
    keep_recording(sitting.collection, sitting.id, sound(tmp_path / "a.wav", 5))
    for path in time_log.write_log(sitting.collection, sitting.id, tmp_path / "open", To.OUTSIDE):
        assert "Leida" not in path.read_text() + path.name
        assert "My own words" not in path.read_text()


def test_sittings_are_listed(sitting: Sitting) -> None:
    course.prepare(sitting, AGREED)
    [(ident, name)] = sittings(sitting.collection)
    assert ident == sitting.id
    assert name.endswith(" Leida Rourke")


def test_a_recording_that_has_changed_is_noticed(sitting: Sitting, tmp_path: Path) -> None:
    course.prepare(sitting, AGREED)
    kept = [keep_recording(sitting.collection, sitting.id, sound(tmp_path / f"{n}.wav", n)) for n in (1, 2, 3)]
    (sitting.collection.folder / kept[1].path).write_bytes(b"x")
    (sitting.collection.folder / kept[2].path).unlink()
    found = {one.path: one.state for one in verify_kept(sitting.collection)}
    assert [found[one.path] for one in kept] == ["same", "changed", "gone"]


def test_the_command_takes_sound_in_and_writes_the_log(sitting: Sitting, tmp_path: Path) -> None:
    course.prepare(sitting, AGREED)
    course.clap(sitting)
    sitting.show(item(sitting, 1))
    say(sitting, 1, "The regatta.")
    folder = sitting.collection.folder
    sitting.collection.store.close()
    file = sound(tmp_path / "a.wav", 3)
    run = CliRunner()

    def call(*arguments: str) -> str:
        done = run.invoke(boxlore, ["-c", str(folder), "recording", *arguments], catch_exceptions=False)
        assert done.exit_code == 0, done.output
        return done.stdout

    path = call(str(file), "--clap", "0:01").strip()
    assert path.startswith("recordings/sitting-")
    assert path in call()
    written = call("--log", str(tmp_path / "out"), "--sitting", "leida").split()
    assert [Path(one).name.partition(".")[2] for one in written] == ["chapters.vtt", "log.csv"]
    assert "The regatta." in Path(written[1]).read_text()
    with pytest.raises(WrongUse, match="is no time"):
        run.invoke(boxlore, ["-c", str(folder), "recording", str(file), "--clap", "x"], catch_exceptions=False)
    with pytest.raises(WrongUse, match="no such sitting"):
        call("--log", str(tmp_path / "out"), "--sitting", "nobody")
