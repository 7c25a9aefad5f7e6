"""The sitting without a screen: the table of moves, drafts, undo over items, same as before, strike.

Rules of our own (no outside source), as the guide and DEVELOPERS.md tell them.
"""

import json
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.dates.lexicon import trie
from boxlore.core.errors import WrongUse
from boxlore.core.fields.areas import AREA_WORDS, Area
from boxlore.core.statements import Kind, Said, Subject, Sure
from boxlore.store.values import Draft
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.prompts import PROMPTS, Prompt
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting import correcting
from boxlore.tasks.sitting.item_list import BARE, BEGUN, TOLD, Listing, filtered
from boxlore.tasks.sitting.linking import RELATIONS, had, relate, related_lines, same_as, story_about
from boxlore.tasks.sitting.recovering import recover_drafts
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.markers import move_marker, remove_marker
from boxlore.tasks.telling.statements import Teller, Telling

STORY, WHO, WHEN, WHERE, OCCASION, WRITTEN, TOOK = PROMPTS


@pytest.fixture
def folder(bare: Callable[[int], Path]) -> Path:
    """Four items without scans."""
    return bare(4)


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


@pytest.fixture
def sitting(collection: Collection) -> Sitting:
    made = Sitting(collection, narrator="Ellen Rourke", interviewer="Ruth Rourke")
    assert made.begin() == []
    return made


def item(sitting: Sitting, count: int) -> str:
    return sitting.collection.store.item_by_number(f"TRA-{count:04d}") or ""


def say(sitting: Sitting, count: int, prompt: Prompt, words: str) -> bool:
    return sitting.keep(sitting.record(item(sitting, count)), prompt, words)


def test_the_open_question_comes_first() -> None:
    """Interviewing with photographs: first "tell me", then who, when, where (trade practice)."""
    assert [prompt.field for prompt in PROMPTS[:4]] == ["story", "person", "date", "place"]
    assert not any("is this" in prompt.question.lower() for prompt in PROMPTS)


def test_what_is_told_is_the_narrators_words(sitting: Sitting) -> None:
    assert say(sitting, 1, STORY, "We left on the Monday boat.")
    assert say(sitting, 1, WRITTEN, "Reval 1912")
    record = sitting.record(item(sitting, 1))
    story = record.first("story")
    assert story is not None
    assert (story.words, story.said_by, story.source.said) == (
        "We left on the Monday boat.",
        "Ellen Rourke",
        Said.NARRATOR,
    )
    assert record.all("inscription")[0].source.said is Said.INSCRIPTION
    assert not say(sitting, 1, STORY, "We left on the Monday boat. ")
    assert say(sitting, 1, STORY, "We left on the Tuesday boat.")
    assert [told.words for told in sitting.record(item(sitting, 1)).all("story")] == ["We left on the Tuesday boat."]
    assert [past.state for past in sitting.history(item(sitting, 1), "story")] == ["replaced", "in force"]


def test_another_narrators_words_stay(collection: Collection, sitting: Sitting) -> None:
    say(sitting, 1, WHEN, "1912")
    other = Sitting(collection, narrator="Joan Tamm")
    other.begin()
    record = other.record(item(sitting, 1))
    assert other.own(record, WHEN) is None
    assert [told.words for told in other.others(record, WHEN)] == ["1912"]
    other.keep(record, WHEN, "summer 1914")
    assert len(other.record(record.id).conflicts) == 1


def test_names_gather_one_statement_each(sitting: Sitting) -> None:
    say(sitting, 1, WHO, "Anna Berg; Carl Dahl;")
    say(sitting, 1, WHO, "Helmi Tamm")
    assert [one.name for one in sitting.record(item(sitting, 1)).shown()] == ["Anna Berg", "Carl Dahl", "Helmi Tamm"]


def test_a_chosen_person_is_the_one_chosen(collection: Collection, sitting: Sitting) -> None:
    """Two people of one name: the words alone ask which; the choice says."""
    act = collection.act("two of a name")
    two = [act.new(Kind.PERSON) for _ in range(2)]
    for one in two:
        act.state(one, "name", "Ruth Rourke Jr")
    act.done()
    record = sitting.record(item(sitting, 1))
    sitting.keep(record, WHO, "Ruth Rourke Jr")
    sitting.keep(record, WHO, "Ruth Rourke Jr", person=two[1].id)
    shown = sitting.record(record.id).shown()
    assert [one.person for one in shown] == ["", two[1].id]


def test_drafts_become_statements_after_an_interruption(folder: Path) -> None:
    with open_collection(folder) as collection:
        sitting = Sitting(collection, narrator="Ellen Rourke")
        sitting.begin()
        sitting.draft(item(sitting, 2), STORY, "half a sen")
        assert collection.store.search("half")[0].draft
        sitting.draft(item(sitting, 3), WHO, "An")
        sitting.draft(item(sitting, 3), WHO, " ")
        source = sitting.source
    with open_collection(folder) as collection:
        found = recover_drafts(collection)
        assert [(one.words, one.source) for one in found] == [("half a sen", source)]
        assert collection.store.drafts() == []
        assert collection.store.last_acts(1)[0].what == "recovered after an interruption: story"


def test_a_draft_in_which_nothing_can_be_seen_does_not_stop_the_next_opening(sitting: Sitting) -> None:
    draft = Draft(
        subject=Subject(Kind.ITEM, item(sitting, 1)),
        field="story",
        words="\u200b\x00",
        updated_at="2026-11-25T00:00:00.000Z",
    )
    sitting.collection.store.save_draft(draft)
    assert recover_drafts(sitting.collection) == []
    sitting.collection.store.save_draft(replace(draft, words="half a sen\x1b"))
    assert [statement.words for statement in recover_drafts(sitting.collection)] == ["half a sen"]
    assert sitting.collection.store.drafts() == []
    sitting.draft(item(sitting, 1), STORY, "\u200b")
    assert sitting.collection.store.drafts() == []
    assert not say(sitting, 1, STORY, "\u200b")


def test_keeping_clears_the_draft(sitting: Sitting) -> None:
    sitting.draft(item(sitting, 1), WHEN, "about 19")
    say(sitting, 1, WHEN, "about 1938")
    assert sitting.collection.store.drafts() == []
    sitting.draft(item(sitting, 1), WHEN, "about 1939")
    say(sitting, 1, WHEN, "about 1938")
    assert sitting.collection.store.drafts() == []


def test_undo_and_redo_over_the_whole_sitting(sitting: Sitting) -> None:
    for count, words in enumerate(("One", "Two", "Three"), 1):
        say(sitting, count, STORY, words)
    taken = [sitting.undo(), sitting.undo()]
    assert [done.item for done in taken if done] == [item(sitting, 3), item(sitting, 2)]
    assert sitting.record(item(sitting, 2)).words("story") == ""
    assert (again := sitting.redo()) is not None
    assert again.item == item(sitting, 2)
    assert sitting.record(item(sitting, 2)).words("story") == "Two"
    say(sitting, 4, STORY, "Four")
    assert sitting.redo() is None
    for _ in range(3):
        sitting.undo()
    assert sitting.undo() is None


def test_undo_of_a_correction_brings_the_old_words_back(sitting: Sitting) -> None:
    say(sitting, 1, OCCASION, "A wedding")
    say(sitting, 1, OCCASION, "A christening")
    sitting.undo()
    assert sitting.record(item(sitting, 1)).words("occasion") == "A wedding"


def test_emptied_words_of_this_sitting_are_withdrawn(sitting: Sitting) -> None:
    say(sitting, 1, OCCASION, "A wedding")
    assert say(sitting, 1, OCCASION, "")
    assert sitting.record(item(sitting, 1)).words("occasion") == ""
    sitting.undo()
    assert sitting.record(item(sitting, 1)).words("occasion") == "A wedding"


def test_emptied_words_of_an_earlier_sitting_stay(folder: Path) -> None:
    with open_collection(folder) as collection:
        first = Sitting(collection, narrator="Ellen Rourke")
        first.begin()
        say(first, 1, OCCASION, "A wedding")
    with open_collection(folder) as collection:
        second = Sitting(collection, narrator="Ellen Rourke")
        second.begin()
        with pytest.raises(WrongUse, match="earlier sitting"):
            say(second, 1, OCCASION, " ")
        assert second.record(item(second, 1)).words("occasion") == "A wedding"


def test_not_known_is_remembered_and_is_no_value(sitting: Sitting) -> None:
    record = sitting.record(item(sitting, 1))
    sitting.not_known(record, WHERE)
    assert sitting.record(record.id).not_known == {"place"}
    assert sitting.record(record.id).all("place") == ()
    sitting.undo()
    assert not sitting.record(record.id).not_known


def test_same_as_before_is_one_act(sitting: Sitting) -> None:
    say(sitting, 1, WHO, "Anna Berg; Carl Dahl")
    say(sitting, 1, WHEN, "about 1938")
    before, record = sitting.record(item(sitting, 1)), sitting.record(item(sitting, 2))
    assert same_as(sitting, [record], before, "all of these") == 3
    made = sitting.record(record.id)
    assert [one.person for one in made.shown()] == [one.person for one in before.shown()]
    assert made.edtf == "1938~"
    with pytest.raises(WrongUse, match="no people that"):
        same_as(sitting, [made], before, "people")
    sitting.undo()
    assert not sitting.record(record.id).told


def test_what_was_a_guess_there_is_no_surer_here(sitting: Sitting) -> None:
    say(sitting, 1, WHO, "Anna Berg")
    say(sitting, 1, WHEN, "about 1938")
    before = sitting.record(item(sitting, 1))
    correcting.change(sitting, before, before.shown()[0].told, sure=Sure.GUESS)
    before, record = sitting.record(before.id), sitting.record(item(sitting, 2))
    assert had(before, "all of these") == "Anna Berg (guess); about 1938"
    same_as(sitting, [record], before, "all of these")
    made = sitting.record(record.id)
    assert (made.shown()[0].told.sure, made.first("date").sure) == (Sure.GUESS, Sure.SURE)


def test_audience_and_sureness_replace_the_statement(sitting: Sitting) -> None:
    say(sitting, 1, WHO, "Anna Berg")
    told = sitting.record(item(sitting, 1)).all("person")[0]
    correcting.change(sitting, sitting.record(item(sitting, 1)), told, audience="family")
    told = sitting.record(item(sitting, 1)).all("person")[0]
    correcting.change(sitting, sitting.record(item(sitting, 1)), told, sure=Sure.GUESS)
    record = sitting.record(item(sitting, 1))
    assert len(record.shown()) == 1
    assert (record.shown()[0].told.audience, record.shown()[0].told.sure) == ("family", Sure.GUESS)
    assert record.shown()[0].person
    with pytest.raises(WrongUse, match="no audience"):
        correcting.change(sitting, record, record.shown()[0].told, audience="friends")


def test_a_correction_keeps_audience_and_sureness(sitting: Sitting) -> None:
    say(sitting, 1, STORY, "He drank")
    record = sitting.record(item(sitting, 1))
    correcting.change(sitting, record, record.all("story")[0], audience="keeper", sure="likely")
    say(sitting, 1, STORY, "He drank a little")
    told = sitting.record(item(sitting, 1)).all("story")[0]
    assert (told.audience, told.sure) == ("keeper", Sure.LIKELY)


def test_settled_conflicts_are_weighed_and_undone(collection: Collection, sitting: Sitting) -> None:
    subject = Subject(Kind.ITEM, item(sitting, 1))
    teller = Teller(collection)
    older = teller.tell(subject, "date", "1912", Telling())
    teller.tell(subject, "date", "1914", Telling())
    record = sitting.record(subject.id)
    assert record.all("date")[0].words == "1914"
    assert record.words("date") == "1914 (the keeper) or 1912 (the keeper)"
    assert len(record.conflicts) == 1
    correcting.settle(sitting, record, "date", record.all("date"), older.id)
    settled = sitting.record(subject.id)
    assert settled.words("date") == "1912"
    assert not settled.conflicts
    sitting.undo()
    assert len(sitting.record(subject.id).conflicts) == 1


def test_strike_leaves_no_byte(folder: Path, sitting: Sitting) -> None:
    say(sitting, 1, STORY, "Zanzibarquarrel")
    told = sitting.record(item(sitting, 1)).all("story")[0]
    report = sitting.strike(told.statement)
    assert report.finished
    assert sitting.record(item(sitting, 1)).words("story") == ""
    for path in folder.rglob("*"):
        assert not path.is_file() or b"zanzibarquarrel" not in path.read_bytes().lower()


def test_the_time_log_goes_forward(sitting: Sitting) -> None:
    for count in (1, 2, 1):
        sitting.show(item(sitting, count))
    rows = sitting.collection.store.statements(Subject(Kind.SITTING, sitting.id))
    shown = [json.loads(statement.words) for statement, _ in rows if statement.field == "shown"]
    assert [one["item"] for one in shown] == [item(sitting, count) for count in (1, 2, 1)]
    assert [one["at"] for one in shown] == sorted(one["at"] for one in shown)
    assert say(sitting, 1, STORY, "timed")
    told = sitting.history(item(sitting, 1), "story")[0].statement
    assert told.sitting == sitting.id
    assert told.moment is not None
    assert told.moment >= shown[-1]["at"]
    sitting.undo()
    assert sitting.undo() is None, "showing an item is no step to undo"


def test_the_list_says_bare_begun_told(sitting: Sitting) -> None:
    say(sitting, 1, STORY, "We left on the Monday boat.")
    for prompt, words in ((WHO, "Anna Berg"), (WHEN, "1938"), (STORY, "A quay")):
        say(sitting, 2, prompt, words)
    sitting.not_known(sitting.record(item(sitting, 2)), WHERE)
    sitting.ask_later(sitting.record(item(sitting, 3)), "ask Joan")
    listing = Listing(sitting.collection)
    rows = listing.rows([listing.id_at(at) for at in range(len(listing))])
    assert [row.state for row in rows] == [BEGUN, TOLD, BARE, BARE]
    assert rows[2].to_ask == "ask Joan"
    assert [at for chunk in filtered(listing, "bare") for at in chunk] == [2, 3]
    assert [at for chunk in filtered(listing, "to ask") for at in chunk] == [2]
    assert [listing.position(row.id) for row in rows] == [0, 1, 2, 3]
    assert listing.position("01900000-0000-7000-8000-000000000000") == -1


def test_the_year_that_a_story_ends_in_stands_once_in_its_line(sitting: Sitting) -> None:
    say(sitting, 1, STORY, "The beach in 1968")
    say(sitting, 1, WHEN, "1968")
    say(sitting, 2, STORY, "The beach")
    say(sitting, 2, WHEN, "1968")
    rows = [Listing(sitting.collection).row_at(at).about for at in range(2)]
    assert rows == ["The beach in 1968", "The beach · 1968"]


def test_what_is_taken_back_of_a_correction_is_named_by_what_was_new(sitting: Sitting) -> None:
    say(sitting, 1, STORY, "Uncle Tom drank")
    say(sitting, 1, STORY, "Uncle Tom drank and sang all the way from the wharf to the chapel door")
    for what in ("story: … and sang all the way from the wharf to…", "story: Uncle Tom drank"):
        done = sitting.undo()
        assert done is not None and done.what == what
    say(sitting, 1, STORY, "Uncle Tom")
    assert (undone := sitting.undo()) is not None and undone.what == "story: Uncle Tom"


def test_before_the_first_date_is_typed_the_words_of_dates_are_gathered(sitting: Sitting) -> None:
    trie.cache_clear()
    sitting.prepare()
    assert trie.cache_info().currsize == 1


def test_an_occasion_is_completed_by_those_told_before(sitting: Sitting) -> None:
    say(sitting, 1, OCCASION, "the regatta")
    say(sitting, 2, OCCASION, "The day of the Regatta")
    again = Sitting(sitting.collection)
    again.prepare()
    for known in (sitting, again):
        assert known.complete(OCCASION, "reg") == [("", "The day of the Regatta"), ("", "the regatta")]
        assert known.complete(OCCASION, "the day of the regatta") == [] == known.complete(OCCASION, " ")
        assert known.complete(STORY, "reg") == []


def test_a_place_that_was_told_in_these_words_is_no_longer_one(sitting: Sitting) -> None:
    say(sitting, 1, WHERE, "Ottermere pier")
    assert sitting.complete(WHERE, "otter") == [("", "Ottermere pier")] == sitting.complete(WHERE, "Ottermere")
    say(sitting, 2, WHERE, "Ottermere")
    assert sitting.complete(WHERE, "ottermere") == []
    assert sitting.complete(WHERE, "Ottermere p") == [("", "Ottermere pier")]


def test_completion_and_understanding(sitting: Sitting) -> None:
    say(sitting, 1, WHO, "Kristjan Tamm")
    assert [words for _, words in sitting.complete(WHO, "Anna; kri")] == ["Kristjan Tamm"]
    assert sitting.complete(STORY, "kri") == []
    understood = sitting.understand(WHEN, "about 1938", sitting.record(item(sitting, 1)))
    assert understood is not None
    assert understood.reading.value.to_json()["edtf"] == "1938~"


def test_reading_only_keeps_nothing(folder: Path) -> None:
    with open_collection(folder), open_collection(folder, fallback_read_only=True) as collection:
        sitting = Sitting(collection, narrator="Ellen Rourke")
        assert sitting.begin() == []
        assert not sitting.writable
        sitting.show(item(sitting, 1))
        assert collection.store.count("sitting") == 0


def test_the_same_for_several_is_one_act(sitting: Sitting) -> None:
    say(sitting, 1, WHO, "Jaan Tamm; Helmi Tamm")
    say(sitting, 2, WHO, "Jaan Tamm")
    others = [sitting.record(item(sitting, count)) for count in (2, 3, 1)]
    assert same_as(sitting, others, sitting.record(item(sitting, 1)), "people") == 3
    found = [[one.name for one in sitting.record(item(sitting, count)).shown()] for count in (2, 3)]
    assert [sorted(one) for one in found] == [["Helmi Tamm", "Jaan Tamm"]] * 2
    assert len({one.person for count in (1, 2, 3) for one in sitting.record(item(sitting, count)).shown()}) == 2
    sitting.undo()
    assert [len(sitting.record(item(sitting, count)).shown()) for count in (2, 3)] == [1, 0]


@pytest.mark.parametrize("kind", RELATIONS)
def test_items_are_related_and_said_so_from_both_ends(sitting: Sitting, kind: str) -> None:
    record = sitting.record(item(sitting, 1))
    assert relate(sitting, record, "tra-0002", kind) == "TRA-0002"
    assert related_lines(sitting.record(record.id)) == [f"{RELATIONS[kind]} TRA-0002"]
    assert related_lines(sitting.record(item(sitting, 2)))[0].endswith(" TRA-0001")
    with pytest.raises(WrongUse, match="already"):
        relate(sitting, sitting.record(record.id), "TRA-0002", kind)
    with pytest.raises(WrongUse, match="itself"):
        relate(sitting, record, "TRA-0001", kind)
    sitting.undo()
    assert not sitting.record(record.id).related


def test_a_story_of_no_picture(collection: Collection, sitting: Sitting) -> None:
    say(sitting, 1, WHO, "Jaan Tamm")
    person = sitting.record(item(sitting, 1)).shown()[0].person
    assert story_about(sitting, "person", "jaan tamm", "He kept bees.", "").subject.id == person
    made = story_about(sitting, "place", "Haapsalu", "The mud baths.", "").subject
    assert story_about(sitting, "place", "Haapsalu", "The promenade.", "").subject == made
    assert story_about(sitting, "event", "The crossing", "Six weeks.", "").subject.kind is Kind.EVENT
    assert story_about(sitting, "sitting", "", "She was tired today.", "").subject.id == sitting.id
    stories = [told.words for told, _ in collection.store.statements(made) if told.field == "story"]
    assert stories == ["The mud baths.", "The promenade."]
    sitting.undo()
    for bad in (("person", "", "x"), ("person", "Jaan Tamm", " ")):
        with pytest.raises(WrongUse):
            story_about(sitting, *bad, "")


def test_both_may_be_so(collection: Collection, sitting: Sitting) -> None:
    say(sitting, 1, WHEN, "1912")
    other = Sitting(collection, narrator="Joan Tamm")
    other.begin()
    other.keep(other.record(item(sitting, 1)), WHEN, "1914")
    record = other.record(item(sitting, 1))
    correcting.settle(other, record, "date", record.all("date"), outcome="both")
    assert not other.record(record.id).conflicts
    assert len(other.record(record.id).all("date")) == 2


def test_a_marker_is_named_by_the_next_name_told(tmp_path: Path, collection: Collection, sitting: Sitting) -> None:
    """Named markers keep their names apart; a word half typed when the picture is touched goes with it."""
    picture = tmp_path / "harbour_f.jpg"
    Image.new("RGB", (60, 40), "grey").save(picture)
    list(take_in(collection, by_suffix([picture]), IntakeOptions(copy=True)))
    record = sitting.record(item(sitting, 5))
    sitting.draft(record.id, WHO, "Jaa")
    sitting.mark(record, record.scans[0], 0.25, 0.5)
    sitting.mark(record, record.scans[0], 2.0, 0.5)
    sitting.draft(record.id, WHO, "Jaan Tamm")
    assert [draft.subject.kind for draft in collection.store.drafts()] == [Kind.MARKER]
    assert sitting.keep(record, WHO, "Jaan Tamm; Helmi Tamm; Liisi")
    assert collection.store.drafts() == []
    found = sitting.record(record.id)
    assert [(one.name, one.number) for one in found.shown()] == [("Jaan Tamm", 1), ("Helmi Tamm", 2), ("Liisi", 0)]
    assert [(one.number, one.x, one.y, one.name) for one in sitting.markers.of(found)] == [
        (1, 0.25, 0.5, "Jaan Tamm"),
        (2, 1.0, 0.5, "Helmi Tamm"),
    ]
    sitting.mark(record, record.scans[0], 0.9, 0.9)
    sitting.undo()
    assert not sitting.to_name
    assert len(sitting.markers.of(sitting.record(record.id))) == 2


def test_a_marker_is_moved_and_taken_away(tmp_path: Path, collection: Collection, sitting: Sitting) -> None:
    """Each one step to take back. No name goes with a marker: it stays told, by whoever said it and as it was read."""
    picture = tmp_path / "harbour_f.jpg"
    Image.new("RGB", (60, 40), "grey").save(picture)
    list(take_in(collection, by_suffix([picture]), IntakeOptions(copy=True)))
    record = sitting.record(item(sitting, 5))
    for at in (0.25, 0.5):
        sitting.mark(record, record.scans[0], at, 0.5)
    sitting.keep(record, WHO, "Jaan Tamm; Helmi Tamm")

    def seen() -> list[tuple[int, float, float, str]]:
        return [(one.number, one.x, one.y, one.name) for one in sitting.markers.of(sitting.record(record.id))]

    before, told = seen(), sitting.record(record.id).shown()[0]
    first = sitting.markers.of(sitting.record(record.id))[0]
    move_marker(sitting, record, first, 0.75, 2.0)
    assert seen() == [(1, 0.75, 1.0, "Jaan Tamm"), (2, 0.5, 0.5, "Helmi Tamm")]
    remove_marker(sitting, sitting.record(record.id), first)
    assert seen() == [(1, 0.5, 0.5, "Helmi Tamm")]
    found = sitting.record(record.id)
    assert [(one.name, one.number) for one in found.shown()] == [("Helmi Tamm", 1), ("Jaan Tamm", 0)]
    moved = found.shown()[1]
    assert (moved.person, moved.told.source, moved.told.words) == (told.person, told.told.source, told.told.words)
    assert collection.store.count(Kind.MARKER) == 1
    assert sitting.undo() is not None and sitting.undo() is not None
    assert seen() == before
    assert [(one.name, one.number) for one in sitting.record(record.id).shown()] == [
        ("Jaan Tamm", 1),
        ("Helmi Tamm", 2),
    ]
    sitting.redo()
    sitting.redo()
    assert seen() == [(1, 0.5, 0.5, "Helmi Tamm")]


def test_a_marker_box_keeps_its_size_when_it_is_moved(tmp_path: Path, collection: Collection, sitting: Sitting) -> None:
    picture = tmp_path / "harbour_f.jpg"
    Image.new("RGB", (60, 40), "grey").save(picture)
    list(take_in(collection, by_suffix([picture]), IntakeOptions(copy=True)))
    record = sitting.record(item(sitting, 5))
    act = collection.act("a box")
    marker = act.new(Kind.MARKER)
    act.state(marker, "scan", record.scans[0].id)
    act.state(marker, "area", "0.1 0.1 0.2 0.4")
    act.done()
    [box] = sitting.markers.of(record)
    move_marker(sitting, record, box, 0.5, 0.9)
    [row] = [one for one, _ in collection.store.statements(marker) if one.field == "area"]
    assert AREA_WORDS.read(row.words) == Area(0.4, 0.6, 0.2, 0.4)


def test_an_unnamed_marker_taken_away_waits_for_no_name(
    tmp_path: Path, collection: Collection, sitting: Sitting
) -> None:
    picture = tmp_path / "harbour_f.jpg"
    Image.new("RGB", (60, 40), "grey").save(picture)
    list(take_in(collection, by_suffix([picture]), IntakeOptions(copy=True)))
    record = sitting.record(item(sitting, 5))
    sitting.mark(record, record.scans[0], 0.25, 0.5)
    sitting.draft(record.id, WHO, "Jaa")
    remove_marker(sitting, record, sitting.markers.of(record)[0])
    assert sitting.keep(record, WHO, "Jaan Tamm")
    assert [(one.name, one.number) for one in sitting.record(record.id).shown()] == [("Jaan Tamm", 0)]
    assert collection.store.drafts() == []


def test_an_item_set_aside_is_listed_and_comes_back(collection: Collection, sitting: Sitting) -> None:
    record = sitting.record(item(sitting, 2))
    sitting.set_aside(record, "too sad today")
    assert sitting.to_ask(record.id) == ["set aside: too sad today"]
    assert [at for chunk in filtered(Listing(collection), "to ask") for at in chunk] == [1]
    sitting.undo()
    assert sitting.to_ask(record.id) == []


@pytest.mark.parametrize("prompt", PROMPTS, ids=str)
def test_a_question_mark_alone_means_asked_not_known(collection: Collection, sitting: Sitting, prompt: Prompt) -> None:
    """The help says so; a draft that an interruption left is no different."""
    for at, keep in ((2, True), (3, False)):
        record = sitting.record(item(sitting, at))
        sitting.draft(record.id, prompt, "?")
        if keep:
            sitting.keep(record, prompt, "?")
        else:
            recover_drafts(collection)
        record = sitting.record(record.id)
        assert record.not_known == {prompt.field} and not record.all(prompt.field) and not record.people
        assert collection.store.drafts() == []


def test_marks_alone_are_no_answer(collection: Collection, sitting: Sitting) -> None:
    """In the sitting the draft stays until something is said; after an interruption it is forgotten."""
    record = sitting.record(item(sitting, 2))
    for words in (",", ";", " ; "):
        sitting.draft(record.id, WHO, words)
        with pytest.raises(WrongUse, match=r"Write it in words, or \? alone for asked, not known"):
            sitting.keep(record, WHO, words)
    assert len(collection.store.drafts()) == 1
    assert recover_drafts(collection) == [] == collection.store.drafts()
