"""How the collection in this folder was made, and what it came to then: run with the sources of revision 1d8e6e4.

    git worktree add OLD 1d8e6e4
    PYTHONPATH=OLD/src python make.py FOLDER

It uses every field whose words are a language of their own, in every shape that version wrote or let in. FOLDER gets
the collection, and `came_to.json` beside it. The names in this file are those of that revision; nothing imports it.
"""

import csv
import json
import sys
import wave
from dataclasses import asdict
from datetime import date, datetime
from pathlib import Path

from PIL import Image

from boxlore.core.audience import To
from boxlore.core.consent import make_consent
from boxlore.core.housing_moves import close_up, move, relabel
from boxlore.core.sitting import Step
from boxlore.core.statements import Kind, Said, Source, Subject, Sure
from boxlore.exports.rdf import read_triples, record_triples
from boxlore.tasks import climate, course, fixity, housing, linking, marking, recordings, registry, survey, timelog
from boxlore.tasks.describe import Teller, Telling, find_item
from boxlore.tasks.fixity_events import COPIED, events
from boxlore.tasks.fixity_events import note as note_event
from boxlore.tasks.handing_over import facts_of, thing_lines
from boxlore.tasks.intake import Wanted, take_in
from boxlore.tasks.lookalikes import look_closer
from boxlore.tasks.marks import holders, marks_of
from boxlore.tasks.offer import read_answer
from boxlore.tasks.opening import Collection, open_collection, start
from boxlore.tasks.pairing import by_table
from boxlore.tasks.places import NewPlace, add_place, gazetteer_of, own_places
from boxlore.tasks.prompts import PROMPTS
from boxlore.tasks.receipt import COLUMNS, read_receipt
from boxlore.tasks.records import record_of, seen_by
from boxlore.tasks.settings import Settings
from boxlore.tasks.sitting import Sitting
from boxlore.tasks.strike import strike_out

ON = date(2026, 11, 25)

INTAKE = """\
item,file,side,kind,box,folder,position,found_in,process,size,area,attached_to,same_picture,inscription
harbour,harbour_f.jpg,recto,card,1,1,1,"shoebox marked Reval, on top",albumen print,150 x 110,,,,
harbour,harbour_b.jpg,verso,,,,,,,,,,,"Reval, sadam. 1908 või 09"
wedding,wedding_f.jpg,recto,print,1,1,2,,,108x165,,,,
lawn,flatbed.jpg,recto,print,1,2,1,,,90 × 60,0 0 0.5 1,,,
beach,flatbed.jpg,recto,print,1,2,2,,,90 60,0.5 0 0.5 1,,lawn,
pier,pier_f.jpg,recto,print,1,2,3,,,108 x 165 x 2,,,,
letter,,,letter,2,,1,,,about a hand,,harbour,,
"""
SIDES = ("harbour_f", "harbour_b", "wedding_f", "flatbed", "pier_f")


def main(folder: Path) -> None:
    work = folder.parent / "work"
    work.mkdir(parents=True)
    start(folder, Settings(title="Tamm and Rourke family photographs", prefix="TR", holder="Rourke family"), on_day=ON)
    with open_collection(folder, on_day=ON) as collection:
        items = intake(collection, work)
        people = family(collection)
        told(collection, items)
        house(collection, items, work)
        sitting(collection, items, work, people)
        archive(collection, items, work)
        scans(collection, items)
        older(collection, items)
        drafts(collection, items)
    with open_collection(folder, on_day=ON, write=False) as collection:
        came_to = golden(collection)
    text = json.dumps(came_to, ensure_ascii=False, indent=1, sort_keys=True)
    (folder / "came_to.json").write_text(text + "\n", encoding="utf-8")


def intake(collection: Collection, work: Path) -> dict[str, Subject]:
    for at, name in enumerate(SIDES):
        picture = Image.linear_gradient("L").resize((32, 20)).rotate(23 * at)
        exif = Image.Exif()
        exif[0x010E] = "Reval harbour: scanned 2019"  # ImageDescription
        picture.save(work / f"{name}.jpg", dpi=(300, 300), exif=exif if name == "harbour_f" else b"")
    plan = by_table(enumerate(csv.DictReader(INTAKE.splitlines()), 2), work)
    taken = take_in(collection, plan, Wanted(copy=True))
    assert all(one.state == "taken" for one in taken), taken
    look_closer(collection)
    return {one.key: find_item(collection, one.number) for one in taken}


def family(collection: Collection) -> dict[str, str]:
    teller = Teller(collection)
    act = collection.act("the family")
    made: dict[str, str] = {}
    for name, born in (("Leida Rourke", "1930"), ("Aino Tamm", "about 1905"), ("Aino Tamme", ""), ("Con Rourke", "")):
        person = act.new(Kind.PERSON)
        teller.add(act, person, "name", name, Telling())
        if born:
            teller.add(act, person, "born", born, Telling())
        made[name] = person.id
    act.done()
    people = collection.people()
    registry.merge(collection, people[made["Aino Tamm"]], people[made["Aino Tamme"]])
    people = collection.people()
    registry.apart(collection, people[made["Leida Rourke"]], people[made["Con Rourke"]])
    given = make_consent(
        ["name", "picture"], day="2026-11-01", capacity="guardian", by="Con Rourke", witness="Mia Rourke", given=True
    )
    registry.consent(collection, collection.people()[made["Leida Rourke"]], given)
    registry.set_audience(collection, Subject(Kind.PERSON, made["Con Rourke"]), "family")
    return made


def told(collection: Collection, items: dict[str, Subject]) -> None:
    teller = Teller(collection)
    teller.tell(items["harbour"], "date", "1908 or 09", Telling(source=Source(Said.INSCRIPTION, "verso")))
    teller.tell(items["harbour"], "place", "Reval", Telling(language="et"))
    first = teller.tell(items["harbour"], "story", "Isa laev läks siit.", Telling(language="et"))
    teller.tell(items["harbour"], "story", "Isa laev läks siit 1908.", Telling(language="et"), replaces=first.id)
    teller.tell(items["wedding"], "date", "", Telling(sure=Sure.NOT_KNOWN))
    teller.tell(items["wedding"], "own-clothes", "Her mother's brooch.", Telling())
    teller.tell(items["wedding"], "person", "Con Rourke", Telling(sure=Sure.LIKELY))
    struck = teller.tell(items["pier"], "story", "Not for anyone.", Telling())
    assert strike_out(collection, [struck.id]).finished
    rows = "back row, left to right: Aino Tamm, ?; front row: Leida Rourke"
    registry.tell_placed(teller, collection, items["wedding"], rows, Telling())
    registry.set_audience(collection, items["lawn"], "archive:2060-01-01")
    registry.set_audience(collection, items["harbour"], "family", "story")
    registry.set_audience(collection, items["harbour"], "keeper", "title")
    registry.set_audience(collection, items["harbour"], "anyone", "title")
    gazetteer = gazetteer_of(collection, lambda *_: None)
    add_place(collection, NewPlace(name="Grandpa's farm", inside="Kärdla, Estonia", at="58.99 22.74"), gazetteer)
    add_place(
        collection, NewPlace(name="the slip", also=("the yard",), at="-45.82, 170.62", years="1920-50"), gazetteer
    )


def house(collection: Collection, items: dict[str, Subject], work: Path) -> None:
    housing.new_location(collection, "House above the harbour", kind="house")
    housing.new_location(collection, "Wash-house", inside="House above the harbour", surroundings=["damp"])
    about = housing.About(
        materials="card",
        size="380 x 260 x 130 mm",
        capacity="40",
        tested="PAT",
        fullness="half-empty",
        at="Wash-house",
        surroundings=("sunlight",),
    )
    housing.note_container(collection, "1", about)
    housing.note_container(collection, "2", housing.About(size="300 × 200"))
    housing.note_container(collection, "3", housing.About(size="120"))
    now = housing.house_of(collection)
    ids = {one.mark.short: one.id for one in now.containers.values()}
    housing.carry_out(collection, move(now.holding, [items["pier"].id], ids["2"], 5))
    taken_back = housing.carry_out(collection, move(now.holding, [items["wedding"].id], ids["3"]))
    housing.undo(collection, taken_back)
    now = housing.house_of(collection)
    housing.carry_out(collection, close_up(now.holding, ids["2"]))
    housing.carry_out(collection, relabel(now.labels, now.inside, {ids["3"]: "9", ids["1"]: "3"}))
    housing.lend(collection, [items["letter"]], "Mia Rourke", date(2026, 6, 1))
    housing.lend(collection, [items["pier"]], "Mia Rourke", date(2026, 12, 1))
    housing.give_back(collection, [items["pier"]], date(2026, 11, 20))
    housing.take_off(collection, items["wedding"], "For Aino")
    log = work / "wash_house.csv"
    rows = [f"2026-06-0{1 + at // 24} {at % 24:02d}:00,{7 + at % 5}.5,{60 + at % 7}.0" for at in range(72)]
    log.write_text("\n".join(["Time,Temperature (°C),Relative humidity (%)", *rows, ""]), encoding="utf-8")
    climate.keep_log(collection, log, "Wash-house")
    climate.note_reading(collection, "Wash-house", datetime(2026, 7, 1, 9, 30), "68F", "55%")
    noted = survey.Answer(
        enclosure="polyester sleeve", attached=("tape",), condition=("foxing", "torn"), size="150x110 mm", writing=True
    )
    survey.note(collection, items["harbour"].id, noted)
    survey.note(collection, items["harbour"].id, survey.Answer(condition=("foxing",), attached=()))


def sitting(collection: Collection, items: dict[str, Subject], work: Path, people: dict[str, str]) -> None:
    at = Sitting(collection)
    at.begin()
    course.prepare(at, {"narrator": "Leida Rourke", "interviewer": "Mia", "terms": "1", "agreed_by": "Leida Rourke",
                        "place": "Port Chalmers", "recorder": "yes"})  # fmt: skip
    course.clap(at)
    prompts = {prompt.field: prompt for prompt in PROMPTS}
    for key in ("harbour", "wedding", "lawn"):
        at.show(items[key].id)
        at.keep(at.record(items[key].id), prompts["story"], f"Told of the {key}.")
    wedding = at.record(items["wedding"].id)
    at.mark(wedding, wedding.scans[0], 0.25, 0.5)
    at.keep(wedding, prompts["person"], "Aino Tamm")
    at.mark(wedding, wedding.scans[0], 0.75, 0.5)
    at.keep(wedding, prompts["person"], "Leida Rourke")
    at.mark(wedding, wedding.scans[0], 0.5, 0.9)
    wedding = at.record(items["wedding"].id)
    first, _, last = at.markers.of(wedding)
    marking.move_marker(at, wedding, first, 0.3, 0.4)
    marking.remove_marker(at, at.record(wedding.id), last)
    act = collection.act("a box")
    box = act.new(Kind.MARKER)
    act.state(box, "scan", wedding.scans[0].id)
    act.state(box, "area", "0.1 0.2 0.3 0.4")
    act.state(box, "person", "Con Rourke")
    act.done()
    boxed = next(one for one in at.markers.of(at.record(wedding.id)) if one.id == box.id)
    marking.move_marker(at, at.record(wedding.id), boxed, 0.9, 0.9)
    at.ask_later(at.record(items["beach"].id), "Ask Joan who bathes.")
    at.set_aside(at.record(items["beach"].id), "too near")
    linking.relate(at, at.record(items["harbour"].id), "TRA-0006", "detail_of")
    course.step(at, Step.REST)
    course.step(at, Step.GO_ON)
    course.close_passage(at, 0.0005, "tütre soov")
    course.ask_next_time(at, "Who is the sailor?; And the boat?")
    with wave.open(str(work / "sound.wav"), "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(1)
        sound.setframerate(8000)
        sound.writeframes(bytes(800))
    (work / "agreement.pdf").write_bytes(b"%PDF-1.4\n")
    recordings.keep_recording(collection, at.id, work / "sound.wav", clap_at=20, clap=1)
    recordings.keep_paper(collection, at.id, work / "agreement.pdf", "the agreement")
    # as the demo and a rebuilt collection of that version have it
    act = collection.act("an older sitting")
    old = act.new(Kind.SITTING)
    how = Telling(sitting=old.id)
    Teller(collection).add(act, old, "narrator", "Leida Rourke", how)
    Teller(collection).add(act, old, "date", "2025-05-04", how)
    facts = {"path": "recordings/older.wav", "sha256": "ab" * 32, "bytes": 9}
    act.state(old, "recording", json.dumps(facts), sitting=old.id, moment=250)
    act.state(old, "shown", items["harbour"].id, sitting=old.id, moment=4200)
    act.state(old, "shown", items["lawn"].id, sitting=old.id, moment=9400)
    act.done()


def archive(collection: Collection, items: dict[str, Subject], work: Path) -> None:
    answer = work / "offer.csv"
    answer.write_text("Number,Wanted\nTRA-0001,yes\nTRA-0002,no\n", encoding="utf-8")
    read_answer(collection, answer)
    receipt = work / "receipt.csv"
    lines = [",".join(COLUMNS), ",,the whole,2026/17,,", "TRA-0001,,,,MS-0042,"]
    receipt.write_text("\n".join([*lines, ""]), encoding="utf-8")
    read_receipt(collection, receipt, archive="Hocken")


def scans(collection: Collection, items: dict[str, Subject]) -> None:
    """A run over all scans in which one is changed and one has moved; the moved one is registered again."""
    folder = collection.folder / "scans"
    pier, harbour = record_of(collection, items["pier"].id), record_of(collection, items["harbour"].id)
    (folder / "sorted").mkdir()
    (collection.folder / pier.scans[0].path).rename(folder / "sorted" / "pier.jpg")
    back = collection.folder / harbour.scans[1].path
    kept = back.read_bytes()
    back.write_bytes(kept + b"x")
    found = list(fixity.verify_scans(collection))
    back.write_bytes(kept)
    assert fixity.register_again(collection, found) == 1
    act = collection.act("a transfer was packed")
    whole = Subject(Kind.COLLECTION, collection.id)
    note_event(act, whole, COPIED, "copied and hashed", what="closed", records=7, bytes=9, manifest="cd" * 32)
    act.done()


def older(collection: Collection, items: dict[str, Subject]) -> None:
    """What that version let in without a word: shapes of the wrong kind, and tags that are none."""
    teller = Teller(collection)
    teller.tell(items["lawn"], "due_back", "next week", Telling())
    teller.tell(items["beach"], "kept", "in the attic", Telling())
    teller.tell(items["lawn"], "row", "somewhere", Telling())
    teller.tell(items["pier"], "title", "The pier", Telling(language="en_NZ"))
    teller.tell(items["pier"], "keyword", "pier", Telling(language="no tag at all"))
    act = collection.act("a container alone")
    box = next(one for one in housing.house_of(collection).containers.values() if one.mark.short == "9")
    act.state(items["letter"], "kept", box.id)
    act.done()


def drafts(collection: Collection, items: dict[str, Subject]) -> None:
    at = Sitting(collection)
    at.begin()
    at.draft(items["beach"].id, PROMPTS[0], "A warm da")


# what it came to


def golden(collection: Collection) -> dict[str, object]:
    store = collection.store
    numbers = [(number, ident) for number, ident in store.items()]
    place = housing.house_of(collection)
    return {
        "records": {number: record(record_of(collection, ident)) for number, ident in numbers},
        "marks": {
            number: [(one.mark.short, one.mark.long, one.since, one.until) for one in marks_of(collection, ident)]
            for number, ident in numbers
        },
        "holders": {mark: [one.item for one in holders(collection, mark)] for mark in ("1/1/1", "3/1/1", "2/1", "9")},
        "history": {
            f"{number} {name}": [(past.statement.words, past.state) for past in store.history(ident, name)]
            for number, ident in numbers
            for name in ("kept", "size", "story", "condition", "attached", "audience", "due_back", "row")
        },
        "containers": {ident: listed(asdict(one)) for ident, one in place.containers.items()},
        "locations": {ident: listed(asdict(one)) for ident, one in place.locations.items()},
        "holding": {item: (one.container, one.position) for item, one in place.holding.items()},
        "plans": [housing.shown(place, step) for step in close_up(place.holding, box(place, "3/2")).steps],
        "surveyed": [
            listed([one.number, one.mark, one.kind, one.size_mm, one.enclosure, sorted(one.sides), one.writing])
            for one in survey.surveyed(collection)
        ],
        "climate": [
            (one.where, len(one.readings), [(str(when), t, rh) for when, t, rh in one.readings[-2:]], list(one.notes))
            for one in climate.judged(collection)
        ],
        "time log": {ident: log(timelog.read_log(collection, ident)) for ident, _ in recordings.sittings(collection)},
        "course": {ident: course.steps(collection, ident) for ident, _ in recordings.sittings(collection)},
        "kept files": [(one["path"], one["sha256"], one["bytes"]) for one in recordings.files(collection)],
        "to ask": {number: Sitting(collection).to_ask(ident) for number, ident in numbers},
        "scans": dict(store.scans()),
        "looks": {
            ident: [one.words for one, _ in rows if one.field == "looks"] for ident, rows in store.subjects(Kind.SCAN)
        },
        "fixity": list(events(collection)),
        "last run": [str(value) for value in asdict(fixity.last_run(collection)).values()],
        "wanted": store.wanted(),
        "next": [
            store.next_number_count("TR", "A"),
            store.next_number_count("TR", "B"),
            store.last_position(box(place, "2")),
        ],
        "found": [(hit.number, hit.mark, hit.field, hit.words) for hit in store.search("told")],
        "people": {
            ident: listed([one.name, one.also, one.different, one.audience, [c.words for c in one.consents]])
            for ident, one in collection.people().items()
        },
        "places": [listed([one.names, one.inside_words, one.point]) for one in own_places(collection)],
        "drafts": [(one.subject.id, one.field, one.words) for one in store.drafts()],
        "linked data": linked(collection),
    }


def box(place: housing.House, mark: str) -> str:
    return place.named(mark).id


def log(made: timelog.Log) -> dict[str, object]:
    return {
        "recordings": [(one.path, one.start, one.length) for one in made.recordings],
        "outs": [(one.item, one.start, one.end) for one in made.outs],
        "closed": [(one.start, one.end, one.why) for one in made.closed],
        "end": made.end,
    }


def record(one: object) -> dict[str, object]:
    """A record as plain values; the readings by what they come to."""
    return {
        "kind": one.kind,
        "mark": one.mark.long if one.mark else "",
        "found_in": one.found_in,
        "size": one.size_mm,
        "scans": [
            (
                s.id,
                s.path,
                s.sha256,
                s.bytes,
                s.width,
                s.height,
                s.media_type,
                s.side,
                s.role,
                s.ppi,
                s.area,
                s.embedded,
            )
            for s in one.scans
        ],
        "told": {
            name: [(t.words, t.language, str(t.source), t.said_by, t.sure, t.audience) for t in rows]
            for name, rows in one.told.items()
        },
        "edtf": one.edtf,
        "people": [(p.name, p.role, p.person, p.scan, p.area, p.number, p.row, p.position) for p in one.people],
        "related": [(r.kind, r.number, r.reverse) for r in one.related],
        "conflicts": [(c.field, [t.words for t in c.told]) for c in one.conflicts],
        "not known": sorted(one.not_known),
        "unnamed": one.unnamed,
        "nameless": one.nameless,
        "audiences": one.audiences,
        "changed": one.changed_at,
    }


WORDS_OF_OURS = ("file", "shows", "size", "area", "position", "related", "number", "shown", "recording")


def linked(collection: Collection) -> dict[str, list[str]]:
    """Of the linked data of the closed part: the literals that are words of the log. Subject and term → values."""
    seen = seen_by(collection, To.ARCHIVE)
    facts = facts_of(collection, seen)
    lines: list[str] = []
    containers: set[str] = set()
    for one in seen.records():
        lines += record_triples(one, facts, [], containers)
    lines += list(thing_lines(collection, seen, None))
    found: dict[str, list[str]] = {}
    for subject, predicate, value in read_triples("\n".join(lines).split("\n")):
        name = predicate.removeprefix("urn:boxlore:terms:")
        if name in WORDS_OF_OURS:
            found.setdefault(f"{subject} {name}", []).append(value)
    return found


def listed(value: object) -> object:
    """Sets as sorted lists, so that they can be written as JSON."""
    if isinstance(value, set | frozenset):
        return sorted(value)
    if isinstance(value, dict):
        return {key: listed(one) for key, one in value.items()}
    return [listed(one) for one in value] if isinstance(value, list | tuple) else value


if __name__ == "__main__":
    main(Path(sys.argv[1]))
