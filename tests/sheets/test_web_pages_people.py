"""People on the family's pages: faces, kin and doubt (our own rules; terms of kin: `tests/core/people/test_kin.py`)."""

from dataclasses import replace

import pytest
from tests.sheets.conftest import nine, record, shown, told

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.statements import Sure
from boxlore.sheets.web_pages_people import around_head, faces_of, href_of, once, people_subjects, person_href


def person(ident: str, name: str, **more) -> Person:  # type: ignore[no-untyped-def]
    return Person(id=ident, name=name, sort_name=name, forms=(name,), calls=(name.split()[0],), **more)


KNOWN = {
    one.id: one
    for one in (
        replace(person("id-Mari", "Mari Tamm", sex="f"), calls=("Mari", "Mimi")),
        person("id-Juhan", "Juhan Tamm", parents=("id-Mari",), sex="m", spouses=("id-Helmi",)),
        person("id-Helmi", "Helmi Tamm", sex="f"),
        person("id-Leida", "Leida Rourke", parents=("id-Juhan", "id-Helmi"), sex="f"),
        person("id-Aino", "Aino Tamm", parents=("id-Juhan", "id-Helmi"), sex="f"),
    )
}


def cards(records):  # type: ignore[no-untyped-def]
    return {one.id: {"number": one.number} for one in records}


def test_kin_with_a_page_are_links_and_all_kin_are_words_to_search_by(printing) -> None:  # type: ignore[no-untyped-def]
    records = [record(0, shown("Mari"), shown("Leida"), shown("Aino")), record(1, shown("Juhan"))]
    subjects = {each["name"]: each for each in people_subjects(records, cards(records), printing, KNOWN)}
    assert dict(subjects["Leida"]["kin"]) == {
        "Parents": [("Juhan Tamm", href_of("id-Juhan")), ("Helmi Tamm", "")],
        "Brothers and sisters": [("Aino Tamm", href_of("id-Aino"))],
    }
    assert dict(subjects["Juhan"]["kin"])["Married to"] == [("Helmi Tamm", "")]
    assert "grandmother of Leida and Aino" in subjects["Mari"]["kin_words"]
    assert subjects["Mari"]["called"] == ["Mari Tamm", "Mari", "Mimi"]


def test_of_whom_something_is_kept_no_kin_are_told(printing) -> None:  # type: ignore[no-untyped-def]
    records = [record(0, shown("Mari"), shown("Leida"))]
    kept = {ident: known for ident, known in KNOWN.items() if ident != "id-Juhan"}
    subjects = {each["name"]: each for each in people_subjects(records, cards(records), printing, kept)}
    assert subjects["Mari"]["kin"] == [] and subjects["Mari"]["kin_words"] == []
    nobody = people_subjects(records, cards(records), printing, {})
    assert all(each["kin"] == [] for each in nobody)


def test_doubt_parts_the_photographs_and_is_said_where_nothing_is_sure(printing) -> None:  # type: ignore[no-untyped-def]
    records = [
        record(0, shown("Aino")),
        record(1, shown("Aino", sure=Sure.GUESS)),
        record(2, shown("Tom", sure=Sure.LIKELY)),
    ]
    aino, tom = people_subjects(records, cards(records), printing, {})
    assert [(group["name"], len(group["shown"])) for group in aino["groups"]] == [("Shown", 1), ("Perhaps shown", 1)]
    assert (aino["count"], tom["count"]) == ("2 photographs", "1 photograph, not sure")


def test_photographs_of_somebody_stand_by_their_dates(printing) -> None:  # type: ignore[no-untyped-def]
    years = ("1968", "", "1942")
    dates = [(told("date", year, value=DateReading.from_edtf(year)),) if year else () for year in years]
    records = [record(at, shown("Leida"), date=date) for at, date in enumerate(dates)]
    (leida,) = people_subjects(records, cards(records), printing, {})
    (group,) = leida["groups"]
    assert [card["number"] for card in group["shown"]] == ["TRA-0003", "TRA-0001", "TRA-0002"]


def test_people_follow_the_alphabet_of_the_collection(printing) -> None:  # type: ignore[no-untyped-def]
    records = [record(0, shown("Õun"), shown("Tamm"), shown("Žukov"), shown("Zeller"))]
    subjects = people_subjects(records, cards(records), replace(printing, language="et"), {})
    assert [each["name"] for each in subjects] == ["Zeller", "Žukov", "Tamm", "Õun"]


def test_of_two_namings_the_sure_one_stands() -> None:
    twice = [shown("Aino", sure=Sure.GUESS), shown("Tom"), shown("Aino")]
    assert [(each.name, each.sure) for each in once(twice)] == [("Aino", Sure.SURE), ("Tom", Sure.SURE)]


def test_faces_are_those_of_whoever_is_surely_shown() -> None:
    alone = record(1, replace(shown("Front 1"), number=1))
    doubted = record(2, shown("Aino", 0.1, 0.1, 0.3, 0.3, number=1, sure=Sure.GUESS), shown("a dock hand", number=2))
    unmarked = record(3, shown("Tom"), shown("Jane"))
    no_scan = replace(record(4, shown("Ruth")), scans=())
    faces = faces_of([record(0, *nine()), alone, doubted, unmarked, no_scan])
    assert set(faces) == {person_href(each) for each in nine()}
    assert faces[href_of("id-Front 1")].record == alone.id and faces[href_of("id-Front 1")].head is None
    assert faces[href_of("id-Back 0")].head == pytest.approx((0.2, 0.25, 0.05, 0.08))


@pytest.mark.parametrize(
    "head", [(0.4, 0.4, 0.1, 0.1), (0.0, 0.0, 0.1, 0.2), (0.9, 0.95, 0.1, 0.05), (0.0, 0.0, 1.0, 1.0)]
)
def test_a_face_is_a_square_inside_the_picture(head: tuple[float, ...]) -> None:
    x, y, wide, high = around_head(head, (400, 300))  # type: ignore[arg-type]
    assert wide * 400 == pytest.approx(high * 300)
    assert x >= 0 and y >= 0 and x + wide <= 1 + 1e-9 and y + high <= 1 + 1e-9
