"""Several people in one answer, the narrator's own kin, and words that are nobody (rules of our own)."""

from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from tests.every_row import every_row

from boxlore.core.people.person import Person
from boxlore.core.records.item_record import Record
from boxlore.core.sitting.worksheet_codes import CodedLine, write_code
from boxlore.core.statements import Kind, Subject, Sure, read_source
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.registry import find_person, tell_placed
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import tell_from


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as opened:
        act = opened.act("one item")
        act.state(act.new(Kind.ITEM), "number", "TRA-0001")
        act.done()
        yield opened


def test_probably_is_likely_and_perhaps_a_guess(collection: Collection) -> None:
    record = tell(collection, "probably Anna Holm, perhaps Karl Holm, Peeter Holm")
    assert [shown.told.sure for shown in record.shown()] == [Sure.LIKELY, Sure.GUESS, Sure.SURE]


def item(collection: Collection) -> Subject:
    return Subject(Kind.ITEM, next(ident for _, ident in collection.store.items()))


def tell(collection: Collection, words: str, by: str = "keeper") -> Record:
    Teller(collection).tell(item(collection), "person", words, Telling(source=read_source(by)))
    return record_of(collection, item(collection).id)


def names(record: Record) -> list[tuple[str, bool]]:
    """Who is shown, and whether each is somebody of the registry."""
    return [(shown.name, bool(shown.person)) for shown in record.shown()]


def to_ask(collection: Collection) -> list[str]:
    return [row.words for row, _ in collection.store.statements(item(collection)) if row.field == "asked"]


THREE = [("Anna", True), ("Ruth", True), ("Joe", True)]


def test_several_people_in_one_answer_are_several(collection: Collection) -> None:
    record = tell(collection, "Anna, Ruth and Joe")
    assert names(record) == THREE and {shown.position for shown in record.shown()} == {0}
    assert {person.name for person in collection.people().values()} == {"Anna", "Ruth", "Joe"}


def test_that_nobody_is_known_is_no_person(collection: Collection) -> None:
    record = tell(collection, "ei tea")
    assert names(record) == [] and collection.people() == {}
    told = [row for row, _ in collection.store.statements(item(collection)) if row.field == "person"]
    assert [(row.words, row.sure) for row in told] == [("", Sure.NOT_KNOWN)]


def test_kin_of_another_is_not_the_narrators(collection: Collection) -> None:
    record = tell(collection, "Tom Pike and wife; Jack and mother; Len and wife", by="narrator:Ivy")
    two = [("Tom Pike", True), ("wife", False), ("Jack", True), ("mother", False)]
    assert names(record) == [*two, ("Len", True), ("wife", False)]
    assert {person.name for person in collection.people().values()} == {"Ivy", "Tom Pike", "Jack", "Len"}
    assert to_ask(collection) == ["Whose “mother” is in the picture?"]


NAMED_KIN = [
    (["My mother Hilda Tamm", "Mum"], {"Ivy", "Hilda Tamm"}, []),
    (["Mum", "Hilda Tamm, my mother", "My mother Hilda Tamm"], {"Ivy", "Hilda Tamm"}, []),
    (["Mum (Hilda Tamm)", "Hilda Tamm", "Dad (Karl)"], {"Ivy", "Hilda Tamm", "Ivy's father"}, []),
    (["Mum", "Mum (in white)", "Mum (Hilda Tamm)"], {"Ivy", "Hilda Tamm"}, []),
    (["My mother Hilda Tamm and Mum"], {"Ivy", "Hilda Tamm"}, []),
    (["My mother Hilda Tamm", "My mother Anna Kask"], {"Ivy", "Hilda Tamm"},
     ["Is “My mother Anna Kask” Hilda Tamm, or somebody else?"]),
    (["My sister Anna Tamm", "moren min Hilda"], {"Ivy", "Anna Tamm", "Hilda"}, []),
    (["Ivy Tamm with her father"], {"Ivy"}, ["Is “Ivy Tamm” Ivy, or somebody else?"]),
]  # fmt: skip


@every_row(("answers", "people", "asked"), NAMED_KIN)
def test_kin_told_with_a_name_is_the_narrators(answers: list[str], people: set[str], asked: list[str]) -> None:
    with TemporaryDirectory() as folder:
        start(Path(folder) / "ours", Settings())
        with open_collection(Path(folder) / "ours") as opened:
            act = opened.act("one item")
            act.state(act.new(Kind.ITEM), "number", "TRA-0001")
            act.done()
            for words in answers:
                tell(opened, words, by="narrator:Ivy")
            assert {person.name for person in opened.people().values()} == people
            assert to_ask(opened) == asked


def test_in_a_table_and_in_a_worksheet_too(collection: Collection, tmp_path: Path) -> None:
    (tmp_path / "told.csv").write_text('item,field,text\nTRA-0001,person,"Anna, Ruth and Joe"\n', encoding="utf-8")
    assert len(tell_from(collection, tmp_path / "told.csv", Telling()).told) == 3
    code = write_code(CodedLine("TRA-0001", "person"), collection.settings.prefix)
    (tmp_path / "filled.txt").write_text(f"{code}: Con and Mia\n", encoding="utf-8")
    assert len(tell_from(collection, tmp_path / "filled.txt", Telling(), printed_here=True).told) == 2
    assert names(record_of(collection, item(collection).id)) == [*THREE, ("Con", True), ("Mia", True)]
    (tmp_path / "more.csv").write_text('item,field,text\nTRA-0001,person,"Anna, Ruth and Liis"\n', encoding="utf-8")
    assert [row.words for row in tell_from(collection, tmp_path / "more.csv", Telling()).told] == ["Liis"]
    assert tell_from(collection, tmp_path / "more.csv", Telling()).known == 1


def test_in_a_sitting_and_at_markers_one_by_one(collection: Collection) -> None:
    sitting = Sitting(collection)
    sitting.begin()
    prompt = next(prompt for prompt in sitting.prompts if prompt.field == "person")
    sitting.keep(sitting.record(item(collection).id), prompt, "Back row: Anna, Ruth; front: Joe")
    record = sitting.record(item(collection).id)
    assert [(shown.name, shown.row, shown.position) for shown in record.shown()] == [
        ("Anna", "back", 1), ("Ruth", "back", 2), ("Joe", "front", 1),
    ]  # fmt: skip
    act = collection.act("two markers")
    sitting.to_name += [act.new(Kind.MARKER), act.new(Kind.MARKER)]
    markers = list(sitting.to_name)
    act.done()
    sitting.keep(record, prompt, "Con (Tom's brother), Mia and Leida")
    rows = [[row.words for row, _ in collection.store.statements(marker)] for marker in markers]
    assert rows == [["Con (Tom's brother)"], ["Mia"]]
    assert names(sitting.record(item(collection).id))[-1] == ("Leida", True)


def test_mr_and_mrs_with_their_son_and_somebody_not_known(collection: Collection) -> None:
    record = tell(collection, "Mr. and Mrs. Pell with their son Tom, and ?")
    assert names(record) == [("Mr. Pell", True), ("Mrs. Pell", True), ("Tom", True)]
    assert record.all("person")[2].words == "Tom (their son)"
    assert {person.sort_name for person in collection.people().values()} == {"Pell, Mr.", "Pell, Mrs.", "Tom"}


def test_words_that_are_nobody_are_kept_and_asked_about(collection: Collection) -> None:
    record = tell(collection, "Anna with the whole Pell family, haymaking near Kärdla")
    assert names(record)[-1] == ("haymaking near Kärdla", False)
    assert [person.name for person in collection.people().values()] == ["Anna"]
    assert "Is “haymaking near Kärdla” someone in the picture?" in to_ask(collection)
    placed = tell_placed(Teller(collection), collection, item(collection), "1 our dog Rex", Telling())
    assert not placed[0].is_person and len(collection.people()) == 1


def leida(collection: Collection) -> Person:
    return find_person(collection, "Leida Rourke")


BY_LEIDA = "narrator:Leida Rourke"


def test_me_and_mum_are_the_narrators_own_and_hers(collection: Collection) -> None:
    record = tell(collection, "Mum, Dad, my brother and me", BY_LEIDA)
    assert [name for name, _ in names(record)] == [
        "Leida Rourke's mother", "Leida Rourke's father", "Leida Rourke's brother", "Leida Rourke",
    ]  # fmt: skip
    people = collection.people()
    assert [people[ident].name for ident in leida(collection).parents] == [
        "Leida Rourke's father", "Leida Rourke's mother",
    ]  # fmt: skip
    count = len(people)
    assert names(tell(collection, "minu ema, mein Bruder", BY_LEIDA))[:1] == [("Leida Rourke's mother", True)]
    assert len(collection.people()) == count, "nobody is made twice"


def test_her_mother_goes_by_her_own_name_once_it_is_told(collection: Collection) -> None:
    tell(collection, "Mum", BY_LEIDA)
    mother = Subject(Kind.PERSON, find_person(collection, "Leida Rourke's mother").id)
    for field, words in (("given", "Helmi"), ("family", "Tamm")):
        Teller(collection).tell(mother, field, words, Telling())
    assert collection.people()[mother.id].name == "Helmi Tamm"
    assert names(tell(collection, "my mother", BY_LEIDA)) == [("Helmi Tamm", True)]


def test_one_of_two_brothers_is_asked_for(collection: Collection) -> None:
    teller = Teller(collection)
    tell(collection, "me", BY_LEIDA)
    for name in ("Arvo", "Con"):
        tell(collection, name)
        brother = Subject(Kind.PERSON, find_person(collection, name).id)
        teller.tell(brother, "mother", "Helmi", Telling())
        teller.tell(brother, "sex", "male", Telling())
    teller.tell(Subject(Kind.PERSON, leida(collection).id), "mother", "Helmi", Telling())
    assert names(tell(collection, "my brother", BY_LEIDA))[-1] == ("my brother", False)
    assert to_ask(collection) == ["Whose “my brother” is in the picture?"]
    tell(collection, "taken by my brother", BY_LEIDA)
    assert to_ask(collection)[1:] == ["Whose “my brother” took the picture?"]


def test_without_a_narrator_me_and_mum_ask_unless_somebody_is_called_so(collection: Collection) -> None:
    assert names(tell(collection, "Mum and me")) == [("Mum", False), ("me", False)]
    assert len(to_ask(collection)) == 2
    act = collection.act("mother")
    act.state(act.new(Kind.PERSON), "name", "Mum")
    act.done()
    assert ("Mum", True) in names(tell(collection, "Mum"))


def test_somebody_without_a_name_is_of_one_picture_alone(collection: Collection) -> None:
    record = tell(collection, "Stan with his wife, the minister, a neighbour")
    assert names(record) == [("Stan", True), ("his wife", False), ("the minister", False), ("a neighbour", False)]
    assert {person.name for person in collection.people().values()} == {"Stan"} and not to_ask(collection)
    act = collection.act("a marker")
    marker = act.new(Kind.MARKER)
    act.done()
    Teller(collection).tell(marker, "person", "the minister", Telling())
    Teller(collection).tell(item(collection), "photographer", "the minister", Telling())
    assert len(collection.people()) == 1


def test_a_mother_told_with_an_article_is_the_narrators_own(collection: Collection) -> None:
    record = tell(collection, "la mamma e sua moglie", BY_LEIDA)
    assert names(record) == [("Leida Rourke's mother", True), ("sua moglie", False)]


def test_aunt_mavis_is_the_mavis_of_the_family(collection: Collection) -> None:
    tell(collection, "Mavis Hill")
    assert names(tell(collection, "Aunt Mavis, Miss Mavis Hill")) == [("Mavis Hill", True)]
    assert len(collection.people()) == 1


def test_a_family_name_told_once_for_two_is_a_proposal_for_the_first(collection: Collection) -> None:
    record = tell(collection, "Tom and Leida Rourke")
    assert names(record) == [("Tom", True), ("Leida Rourke", True)]
    assert record.all("person")[0].words == "Tom"
    tom = find_person(collection, "Tom Rourke")
    assert (tom.name, tom.sort_name) == ("Tom", "Rourke, Tom")
    tell(collection, "Tom and Mia Rourke")
    assert len(collection.people()) == 3, "Tom Rourke is known, and made once"


def test_where_the_registry_has_another_of_that_name_it_asks(collection: Collection) -> None:
    tell(collection, "Tom Pell")
    record = tell(collection, "Tom and Leida Rourke")
    assert "Is “Tom” Tom Rourke, or Tom Pell?" in to_ask(collection)
    assert record.all("person")[-2].asks
    assert {person.name for person in collection.people().values()} == {"Tom Pell", "Leida Rourke"}


UNHELD = [
    "Port Chalmers School, Standard 4: Ann, Bea",
    "Standing behind Lottie is her son Max",
    "Tagareas vasakult: Jaan Kask; ees istub ema, süles väike Tiiu",
]


def test_every_told_word_is_kept(collection: Collection) -> None:
    for words in UNHELD:
        tell(collection, words)
    tell_placed(Teller(collection), collection, item(collection), "Diagonally from top left: Ruby, Pearl", Telling())
    tell(collection, "Left to right: Anna (my sister), Ruth")
    notes = [row.words for row, _ in collection.store.statements(item(collection)) if row.field == "note"]
    assert notes == [*UNHELD, "Diagonally from top left: Ruby, Pearl"]


def test_whoever_took_it_is_no_one_in_it(collection: Collection) -> None:
    record = tell(collection, "Anna and Ruth, photographed by Joe Pell", BY_LEIDA)
    assert (names(record), [shown.name for shown in record.shown("photographer")]) == (
        [("Anna", True), ("Ruth", True)],
        ["Joe Pell"],
    )
    record = tell(collection, "Taken by Mum", BY_LEIDA)
    assert [shown.name for shown in record.shown("photographer")] == ["Joe Pell", "Leida Rourke's mother"]
    placed = tell_placed(Teller(collection), collection, item(collection), "Photo by Con Tull", Telling())
    assert [person.words for person in placed] == ["Con Tull"]
