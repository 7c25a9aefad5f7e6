"""Dates that are worked out for an output rest on what its recipient may see alone: a birth that is closed shows
through no date, and a date of one item through none of another. The rule is ours (`tasks/people/evidence_for_outputs`).
"""

import re
import subprocess
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Subject, Sure, read_source
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import contradictions, lives_of, record_of, seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.printed_sheets import PrintOrder, sheet
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.people.evidence_for_outputs import worked_out_for
from boxlore.tasks.people.registry import set_audience
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.telling.events import add_event
from boxlore.tasks.telling.statements import Teller, Telling

Rows = tuple[tuple[str, ...], ...]
ON = date(2026, 11, 28)
FIVE = ("TRA-0001", "story", "Liisi looks about five here.", "anyone")
SHOWN = ("TRA-0001", "person", "Liisi Tamm", "anyone")
LIVES = (("Liisi Tamm", "born", "1918", "anyone"), ("Liisi Tamm", "died", "1990", "anyone"))
CLOSED = (("Liisi Tamm", "born", "1918", "keeper"), LIVES[1])
LIVING = (("Liisi Tamm", "born", "1950", "anyone"),)
SAME_DAY = ("TRA-0001", "story", "Taken on the same day as TRA-0002.", "anyone")
TO = (To.FAMILY, To.OUTSIDE, To.ARCHIVE)

ROWS: list[tuple[str, Rows, Rows, str]] = [
    ("all may be told to anyone", LIVES, (SHOWN, FIVE), "[1921..1926] [1921..1926] [1921..1926]"),
    ("the birth is the keeper's alone", CLOSED, (SHOWN, FIVE), "- - -"),
    (
        "the birth is for the family",
        (("Liisi Tamm", "born", "1918", "family"), LIVES[1]), (SHOWN, FIVE), "[1921..1926] - -",
    ),
    ("the birth is closed until a day", (("Liisi Tamm", "born", "1918", "archive:2050-01-01"), LIVES[1]),
     (SHOWN, FIVE), "- - [1921..1926]"),
    ("the age is for the family", LIVES, (SHOWN, (*FIVE[:3], "family")), "[1921..1926] - -"),
    ("who is in it is the keeper's alone", LIVES, ((*SHOWN[:3], "keeper"), FIVE), "- - -"),
    ("she lives", LIVING, (SHOWN, FIVE), "[1953..1958] - [1953..1958]"),
    ("a date is the keeper's alone", LIVES, (SHOWN, FIVE, ("TRA-0001", "date", "1923", "keeper")), "- - -"),
    ("a date is told", LIVES, (SHOWN, FIVE, ("TRA-0001", "date", "1923", "anyone")), "- - -"),
    ("not all can be so", LIVES, (SHOWN, FIVE, ("TRA-0001", "process", "daguerreotype", "anyone")), "- - -"),
    (
        "the picture that it leans on is dated for the family", (),
        (("TRA-0002", "date", "May 1931", "family"), SAME_DAY),
        "1931-05 - -",
    ),
    (
        "the other picture is the keeper's own", (),
        (
            ("TRA-0002", "date", "May 1931", "anyone"), ("TRA-0002", "audience", "keeper", "keeper"),
            SAME_DAY,
        ),
        "- - -",
    ),
    ("it leaves too much open", LIVES, (SHOWN,), "- - -"),
    ("a thing alone", (), (("TRA-0001", "process", "postcard, divided back", "anyone"),), "[1902..] [1902..] [1902..]"),
]  # fmt: skip


@contextmanager
def family(home: Path, lives: Rows, told: Rows) -> Iterator[Collection]:
    with open_collection(home, on_day=ON) as collection:
        teller = Teller(collection)
        act = collection.act("people")
        people: dict[str, Subject] = {}
        for name, field, words, audience in lives:
            if name not in people:
                people[name] = act.new(Kind.PERSON)
                teller.add(act, people[name], "name", name, Telling(audience="anyone"))
            teller.add(act, people[name], field, words, Telling(audience=audience))
        act.done()
        for item, field, words, audience in told:
            if field == "audience":
                set_audience(collection, find_item(collection, item), words)
                continue
            teller.tell(find_item(collection, item), field, words, Telling(audience=audience))
        yield collection


LEANING = [
    # born, what is told as a date, for whom which date stands in the record
    ("anyone", "when Liisi was five", "1923~ 1923~ 1923~"),
    ("family", "when Liisi was five", "1923~ - -"),
    ("keeper", "when Liisi was five", "- - -"),
    ("keeper", "the year after Liisi was born", "- - -"),
    ("keeper", "summer 1923", "1923-22 1923-22 1923-22"),
    ("archive:2050-01-01", "when Liisi was five", "- - 1923~"),
]


def test_a_date_that_leans_on_a_closed_birth_is_not_read_by_it(bare: Callable[[int], Path], tmp_path: Path) -> None:
    wrong = []
    for at, (audience, words, wanted) in enumerate(LEANING):
        (tmp_path / str(at)).mkdir()
        home = bare(2).rename(tmp_path / str(at) / "home")
        lives = (("Liisi Tamm", "born", "1918", audience), LIVES[1])
        with family(home, lives, (SHOWN, ("TRA-0001", "date", words, "anyone"))) as collection:
            seen = [next(iter(seen_by(collection, to).records())) for to in TO]
            found = " ".join(record.edtf or "-" for record in seen)
            told = {view.words for record in seen for view in record.all("date")}
            whole = record_of(collection, seen[0].id).edtf
        if (found, told, bool(whole)) != (wanted, {words}, True):
            wrong.append((audience, words, found, wanted, whole))
    assert wrong == []


def test_who_looks_younger_than_she_can_be_counts_as_living(bare: Callable[[int], Path]) -> None:
    lives = (("Liisi Tamm", "born", "1880", "anyone"),)
    told = (("TRA-0002", "date", "1975", "anyone"), ("TRA-0002", "person", "Liisi Tamm", "anyone"))
    with family(bare(2), lives, told) as collection:
        assert [life.living for life in lives_of(collection).values()] == [False]
        teller, item = Teller(collection), find_item(collection, "TRA-0002")
        teller.tell(item, "story", "Liisi looks about five here.", Telling(audience="anyone"))
        assert [life.living for life in lives_of(collection).values()] == [True]
        seen = {record.number: record for record in seen_by(collection, To.OUTSIDE).records()}
        assert not seen["TRA-0002"].people and not seen["TRA-0002"].all("story")
        (finding,) = contradictions(collection)
        assert "“looks about five” is told of TRA-0002, 1975" in finding.message


def worked(collection: Collection, to: To) -> str:
    seen = seen_by(collection, to)
    records = list(seen.records())
    found = worked_out_for(seen, records, is_whole=True)
    record = found.beside(records[0])
    assert seen.recipient.seen(record).worked_out is None, "what was worked out for one is not for another"
    return record.worked_out.edtf if record.worked_out else "-"


def test_each_recipient_has_what_follows_from_what_they_may_see(bare: Callable[[int], Path], tmp_path: Path) -> None:
    wrong = []
    for at, (name, lives, told, wanted) in enumerate(ROWS):
        (tmp_path / str(at)).mkdir()
        home = bare(2).rename(tmp_path / str(at) / "home")
        with family(home, lives, told) as collection:
            if (found := " ".join(worked(collection, to) for to in TO)) != wanted:
                wrong.append((name, found, wanted))
    assert wrong == []


def test_what_is_not_known_of_a_life_is_no_clue(bare: Callable[[int], Path]) -> None:
    """Some words may stand beside it (“1918?”, and that it is not known)."""
    with family(bare(2), LIVES[1:], (SHOWN, FIVE)) as collection:
        (person,) = collection.people()
        unknown = Telling(sure=Sure.NOT_KNOWN, audience="anyone")
        Teller(collection).tell(Subject(Kind.PERSON, person), "born", "1918", unknown)
        assert [worked(collection, to) for to in TO] == ["-", "-", "-"]


BESIDE_1931 = "[1930..1932]"


@pytest.mark.parametrize(
    ("audience", "wanted"), [("anyone", " ".join([BESIDE_1931] * 3)), ("family", f"{BESIDE_1931} - -")]
)
def test_an_event_is_leant_on_where_all_of_it_may_be_told(
    bare: Callable[[int], Path], audience: str, wanted: str
) -> None:
    with family(bare(2), (), ()) as collection:
        teller = Teller(collection)
        how = Telling(source=read_source("narrator:Aunt Ida"), audience=audience)
        add_event(teller, "the move to Mill Lane", "1931", how)
        of_it = find_item(collection, "TRA-0001")
        teller.tell(of_it, "occasion", "the move to Mill Lane", Telling(audience="anyone"))
        assert " ".join(worked(collection, to) for to in TO) == wanted


@pytest.mark.parametrize(("lives", "shows"), [(LIVES, True), (CLOSED, False)])
def test_no_output_has_what_a_closed_birth_comes_to(tmp_path: Path, lives: Rows, shows: bool) -> None:
    picture = tmp_path / "beach.jpg"
    Image.new("RGB", (60, 40), "grey").save(picture)
    start(tmp_path / "home", Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(tmp_path / "home", on_day=ON) as collection:
        list(take_in(collection, by_suffix([picture]), IntakeOptions(copy=True)))
    out = tmp_path / "out"
    out.mkdir()
    with family(tmp_path / "home", lives, (SHOWN, FIVE)) as collection:
        transfer(collection, out / "transfer", order=TransferOrder())
        sheet(collection, out / "album.pdf", PrintOrder())
        pages(collection, out / "pages", PrintOrder(to=To.OUTSIDE))
    texts = {path.relative_to(out).as_posix(): _words(path) for path in out.rglob("*") if path.is_file()}
    years = re.compile(r"(?<![0-9a-f])(?:1918|1921|1926)(?![0-9a-f])")
    telling = sorted(name for name, words in texts.items() if years.search(words))
    assert (telling == []) is not shows, telling
    if shows:
        nt = texts["transfer/open/data/metadata/records.nt"]
        assert "[1921..1926]" in nt and "prov#wasDerivedFrom" in nt
        for name in ("oai_dc.xml", "dcterms.xml", "finding-aid.ead3.xml", "inventory.csv"):
            assert "[between 1921 and 1926]" in texts[f"transfer/open/data/metadata/{name}"], name
        for name in ("album.pdf", "pages/photo/TRA-0001.html"):
            assert "[between 1921 and 1926]" in " ".join(texts[name].split()), name


def _words(path: Path) -> str:
    if path.suffix == ".pdf":
        return subprocess.run(["pdftotext", str(path), "-"], capture_output=True, text=True, check=True).stdout
    return path.read_bytes().decode("utf-8", "replace")


WHOLE_LIVES: Rows = (
    *LIVES, ("Mari Tamm", "born", "1890", "anyone"), ("Mari Tamm", "died", "1960", "anyone"),
    ("Mari Tamm", "married", "1915", "anyone"), ("Liisi Tamm", "mother", "Mari Tamm", "anyone"),
)  # fmt: skip
WHOLE_STORY: Rows = (
    SHOWN, FIVE, ("TRA-0001", "person", "Mari Tamm", "anyone"), ("TRA-0001", "date", "when Liisi was five", "anyone"),
    ("TRA-0001", "process", "postcard, divided back", "anyone"), ("TRA-0002", "date", "May 1923", "anyone"),
    ("TRA-0002", "story", "Taken on the same day as TRA-0001.", "anyone"),
    ("TRA-0002", "person", "Liisi Tamm", "anyone"),
)  # fmt: skip


def test_what_is_kept_is_as_if_it_had_not_been_told(bare: Callable[[int], Path], tmp_path: Path) -> None:
    """Non-interference (Goguen and Meseguer, *Security Policies and Security Models*, 1982): what a recipient gets is
    the same whether something that is kept from them was told or not."""
    homes = iter(range(1000))

    def all_seen(lives: Rows, told: Rows) -> list[object]:
        (tmp_path / str(number := next(homes))).mkdir()
        with family(bare(2).rename(tmp_path / str(number) / "home"), lives, told) as collection:
            found: list[object] = []
            for to in (To.FAMILY, To.OUTSIDE, To.ARCHIVE):
                seen = seen_by(collection, to)
                records = list(seen.records())
                follows = worked_out_for(seen, records, is_whole=True)
                names = {person.id: person.name for person in collection.people().values()}
                found.append([(record.edtf, follows.beside(record).formal_date) for record in records])
                found.append({names[ident]: dated.display for ident, dated in follows.births.items()})
            return found

    wrong = []
    for at, (item, field, words, _) in enumerate(WHOLE_STORY):
        if field != "date":  # that a date is told and withheld may be known
            before, behind = WHOLE_STORY[:at], WHOLE_STORY[at + 1 :]
            kept = all_seen(WHOLE_LIVES, (*before, (item, field, words, "keeper"), *behind))
            absent = all_seen(WHOLE_LIVES, (*before, *behind))
            wrong += [(words, kept, absent)] if kept != absent else []
    assert wrong == []
    for at, (name, field, words, _) in enumerate(WHOLE_LIVES):
        if field == "born":
            lives = (*WHOLE_LIVES[:at], (name, field, words, "keeper"), *WHOLE_LIVES[at + 1 :])
            assert words not in str(all_seen(lives, WHOLE_STORY)), (name, field)
