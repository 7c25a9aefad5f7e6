"""A tree file taken in: nothing doubled, nothing lost, the keeper's word kept (rules of our own)."""

import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import ansel
import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.people.kin import By, Kin
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people import tree_file_opening
from boxlore.tasks.people.tree_import import import_tree

FILE = """0 HEAD
1 GEDC
2 VERS 5.5.1
1 CHAR {char}
0 @I1@ INDI
1 NAME Liisi /Mägi/
2 NICK Liisu
1 SEX F
1 BIRT
2 DATE BEF 1919
1 OCCU teacher
0 @I2@ INDI
1 NAME Arvo /Tamm/
1 SEX M
1 DEAT
2 DATE 1944
0 @I3@ INDI
1 NAME Leida /Tamm/
1 BIRT
2 DATE 17 MAY 1941
2 PLAC Tallinn
1 RESN confidential
0 @F1@ FAM
1 HUSB @I2@
1 WIFE @I1@
1 CHIL @I3@
1 MARR
2 DATE INT 1939 (the year before the war)
2 PLAC Tallinn
0 TRLR
"""


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "c", Settings())
    with open_collection(tmp_path / "c") as opened:
        yield opened


def written(folder: Path, text: str, encoding: str = "utf-8") -> Path:
    path = folder / "tamm.ged"
    path.write_bytes(text.encode(encoding))
    return path


def names(collection: Collection) -> dict[str, str]:
    return {one.name: one.id for one in collection.people().values()}


@pytest.mark.parametrize(("char", "encoding"), [("UTF-8", "utf-8"), ("ANSEL", "gedcom"), ("ANSI", "cp1252"),
                                                ("UNICODE", "utf-16"), ("UTF-8", "utf-8-sig")])  # fmt: skip
def test_people_links_marriages_and_the_source(
    collection: Collection, tmp_path: Path, char: str, encoding: str
) -> None:
    ansel.register()
    taken = import_tree(collection, written(tmp_path, FILE.format(char=char), encoding))
    assert (taken.new, taken.changed, taken.same, taken.marriages) == (3, 0, 0, 1)
    by_name = names(collection)
    assert set(by_name) == {"Liisi Mägi", "Arvo Tamm", "Leida Tamm"}
    leida = collection.people()[by_name["Leida Tamm"]]
    assert set(leida.parents) == {by_name["Liisi Mägi"], by_name["Arvo Tamm"]}
    assert leida.mothers == (by_name["Liisi Mägi"],)
    assert (leida.born.edtf.text, leida.audience) == ("1941-05-17", "keeper")
    arvo = collection.people()[by_name["Arvo Tamm"]]
    assert arvo.spouses == (by_name["Liisi Mägi"],) and arvo.dead
    assert [(one.path, one.line) for one in taken.left] == [("INDI.OCCU", 11)]
    assert any("leaves open" in one for one in taken.said)
    for statement, _ in collection.store.statements(Subject(Kind.PERSON, leida.id)):
        assert str(statement.source) == "file:tree tamm"
        assert statement.audience == "keeper" or statement.field in ("father", "mother")
    ((_, told),) = list(collection.store.subjects("event"))
    words = {statement.field: statement.words for statement, _ in told}
    assert words["date"] == "INT 1939 (the year before the war)"
    assert next(reading for statement, reading in told if statement.field == "date").usable  # type: ignore[union-attr]


def test_places_of_births_deaths_and_marriages_are_read_as_they_were_then(
    collection: Collection, tmp_path: Path
) -> None:
    """Tallinn is 588409 in GeoNames, and was Reval until 1918 (Encyclopaedia Britannica, “Tallinn”; from memory)."""
    text = FILE.format(char="UTF-8").replace("2 DATE BEF 1919", "2 DATE 1905\n2 PLAC Reval")
    text = text.replace("2 DATE 1944", "2 DATE 1944\n2 PLAC the far shore of nowhere")
    import_tree(collection, written(tmp_path, text))
    by_name = names(collection)

    def read(subject: Subject, field: str) -> dict[str, Any]:
        rows = collection.store.statements(subject)
        reading = next(reading for statement, reading in rows if statement.field == field)
        assert reading is not None and reading.kind == "place" and not reading.confirmed
        value = reading.value.to_json()
        assert reading.usable == (value["kind"] == "match")
        return {"kind": value["kind"], **(value["choices"] or [{}])[0]}

    liisi = read(Subject(Kind.PERSON, by_name["Liisi Mägi"]), "born_at")
    assert (liisi["kind"], liisi["geonames"], liisi["called_then"]) == ("match", 588409, "Reval")
    leida = read(Subject(Kind.PERSON, by_name["Leida Tamm"]), "born_at")
    assert (leida["kind"], leida["geonames"]) == ("match", 588409)
    ((event, _),) = list(collection.store.subjects("event"))
    assert read(Subject(Kind.EVENT, event), "place")["geonames"] == 588409
    assert read(Subject(Kind.PERSON, by_name["Arvo Tamm"]), "died_at")["kind"] != "match", "kept as told, or asked"
    assert import_tree(collection, written(tmp_path, text)).statements == 0


def test_a_second_import_updates_without_doubling(collection: Collection, tmp_path: Path) -> None:
    import_tree(collection, written(tmp_path, FILE.format(char="UTF-8")))
    again = import_tree(collection, written(tmp_path, FILE.format(char="UTF-8")))
    assert (again.new, again.changed, again.same, again.statements) == (0, 0, 3, 0)
    newer = FILE.format(char="UTF-8").replace("17 MAY 1941", "18 MAY 1941").replace("2 NICK Liisu\n", "")
    newer = newer.replace("0 @F1@ FAM", "0 @I4@ INDI\n1 NAME Tom /Rourke/\n0 @F1@ FAM")
    update = import_tree(collection, written(tmp_path, newer))
    assert (update.new, update.changed, update.same) == (1, 1, 2)
    assert any("1 statement that an earlier import" in one for one in update.said)
    leida = collection.people()[names(collection)["Leida Tamm"]]
    assert leida.born.edtf.text == "1941-05-18"
    assert len(collection.people()) == 4
    assert len(list(collection.store.subjects("event"))) == 1


def test_what_the_keeper_corrected_stays_corrected(collection: Collection, tmp_path: Path) -> None:
    path = written(tmp_path, FILE.format(char="UTF-8"))
    import_tree(collection, path)
    leida = Subject(Kind.PERSON, names(collection)["Leida Tamm"])
    old = next(s for s, _ in collection.store.statements(leida) if s.field == "given")
    act = collection.act("corrected")
    act.state(leida, "given", "Leida Johanna", replaces=old.id)
    act.done()
    assert import_tree(collection, path).statements == 0
    assert "Leida Johanna Tamm" in names(collection)


def test_numbers_given_to_someone_else_are_noticed(collection: Collection, tmp_path: Path) -> None:
    import_tree(collection, written(tmp_path, FILE.format(char="UTF-8")))
    other = "0 HEAD\n1 GEDC\n2 VERS 7.0\n0 @I1@ INDI\n1 NAME Hana /Parata/\n0 TRLR\n"
    taken = import_tree(collection, written(tmp_path, other))
    assert taken.new == 1 and "someone else now" in taken.said[0]
    assert {"Hana Parata", "Liisi Mägi"} <= set(names(collection))


def test_an_identifier_for_life_goes_before_the_files_own_number(collection: Collection, tmp_path: Path) -> None:
    uid = "0191f1a0-0000-7000-8000-000000000001"
    text = f"0 HEAD\n1 GEDC\n2 VERS 7.0\n0 @{{}}@ INDI\n1 NAME Hana /Parata/\n1 UID {uid}\n0 TRLR"
    import_tree(collection, written(tmp_path, text.format("I1")), name="one")
    assert import_tree(collection, written(tmp_path, text.format("X9")), name="two").new == 0
    assert len(collection.people()) == 1


def test_a_file_that_is_cut_off_or_none_at_all(collection: Collection, tmp_path: Path) -> None:
    cut = import_tree(collection, written(tmp_path, FILE.format(char="UTF-8")[:300]))
    assert any("breaks off" in one for one in cut.said)
    with pytest.raises(WrongUse, match="is no GEDCOM file"):
        import_tree(collection, written(tmp_path, "Dear Ruth,\nhere they are."))
    with pytest.raises(WrongUse, match="There is no file"):
        import_tree(collection, tmp_path / "none.ged")


def test_bytes_that_are_not_in_the_encoding_are_kept_and_told(collection: Collection, tmp_path: Path) -> None:
    path = tmp_path / "mixed.ged"
    path.write_bytes(FILE.format(char="UTF-8").encode().replace("Liisi /Mägi/".encode(), b"Liisi /M\xe4gi/"))
    taken = import_tree(collection, path)
    assert "Liisi Mägi" in names(collection)
    assert (taken.faults[-1].number, "no utf-8" in taken.faults[-1].why) == (6, True)


RAISED = FILE.format(char="UTF-8").replace("1 NAME Leida /Tamm/", "1 NAME Leida /Tamm/\n1 FAMC @F2@\n2 PEDI adopted")
RAISED = RAISED.replace(
    "0 TRLR",
    """0 @I4@ INDI
1 NAME Con /Rourke/
1 SEX M
0 @I5@ INDI
1 NAME Tom /Rourke/
1 SEX M
1 FAMC @F3@
2 STAT disproven
0 @F2@ FAM
1 HUSB @I4@
1 WIFE @I1@
1 RESN privacy
0 @F3@ FAM
1 HUSB @I2@
0 TRLR""",
)


def test_adoption_a_second_husband_and_a_link_that_is_disproven(collection: Collection, tmp_path: Path) -> None:
    import_tree(collection, written(tmp_path, RAISED))
    by_name, people = names(collection), collection.people()
    leida, liisi, con = (people[by_name[name]] for name in ("Leida Tamm", "Liisi Mägi", "Con Rourke"))
    assert leida.adoptive_parents == (con.id, liisi.id) and set(leida.parents) == {liisi.id, by_name["Arvo Tamm"]}
    assert liisi.spouses == (by_name["Arvo Tamm"], con.id)
    kinship = Kin(people).between(leida.id, con.id)
    assert kinship is not None and (kinship.words, kinship.by) == ("adoptive father", By.ADOPTION)
    tom = people[by_name["Tom Rourke"]]
    told = [row.words for row, _ in collection.store.statements(Subject(Kind.PERSON, tom.id)) if row.field == "story"]
    assert (tom.parents, told) == ((), ["child of Arvo Tamm: disproven"])
    rows = collection.store.statements(Subject(Kind.PERSON, con.id))
    assert {row.audience for row, _ in rows if row.field == "spouse"} == {"family"}, "the family's RESN"
    rows = collection.store.statements(Subject(Kind.PERSON, leida.id))
    assert {row.audience for row, _ in rows if row.field in ("father", "mother", "adoptive_parent")} == {"keeper"}
    assert import_tree(collection, written(tmp_path, RAISED)).statements == 0


def packed(folder: Path, *names: str) -> Path:
    with zipfile.ZipFile(folder / "tamm.gdz", "w", zipfile.ZIP_DEFLATED) as archive:
        for name in names:
            archive.writestr(name, FILE.format(char="UTF-8"))
    return folder / "tamm.gdz"


def test_the_zipped_form_opens_and_names_what_came_with_it(collection: Collection, tmp_path: Path) -> None:
    """7.0, chapter 4: a GEDZIP is a zip archive with the tree as gedcom.ged."""
    taken = import_tree(collection, packed(tmp_path, "photo.jpg", "gedcom.ged"))
    assert taken.new == 3 and any("1 file came with it" in words and "photo.jpg" in words for words in taken.said)


def test_an_archive_without_a_tree_or_damaged_is_refused(
    collection: Collection, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with pytest.raises(WrongUse, match=r"no gedcom\.ged"):
        import_tree(collection, packed(tmp_path, "other.ged"))
    path = packed(tmp_path, "gedcom.ged")
    path.write_bytes(path.read_bytes()[:-40])
    with pytest.raises(WrongUse, match="damaged or locked"):
        import_tree(collection, path)
    monkeypatch.setattr(tree_file_opening, "LARGEST_TREE", 10)
    with pytest.raises(WrongUse, match="larger than 10"):
        import_tree(collection, packed(tmp_path, "gedcom.ged"))
