"""Names as told, their sort form (DACS 2.5 follows the order of the name; the forms are our own rule)."""

import pytest
from tests.every_row import every_row

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.consent import Consent, Matter, allows, make_consent
from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.person import Person, build_person, build_registry, known_names
from boxlore.core.people.reference import PersonRef
from boxlore.core.statements import KEEPER, Kind, Reading, Said, Source, Statement, Subject, Sure, Unreadable


def build(*rows: tuple[str, str, Reading | None], source: Source = KEEPER) -> Person:
    statements = [
        (
            Statement(
                id=str(at),
                act="a",
                subject=Subject(Kind.PERSON, "p"),
                field=field,
                words=words,
                recorded_at="",
                source=source,
            ),
            reading,
        )
        for at, (field, words, reading) in enumerate(rows)
    ]
    return build_person("p", statements)


def dated(edtf: str) -> Reading:
    return Reading("date", DateReading.from_edtf(edtf), "test")


def means(ident: str) -> Reading:
    return Reading("person", PersonRef(ident), "test")


def edtf_of(date: DateReading | None) -> str:
    return date.edtf.text if date and date.edtf else ""


def test_a_person_with_all_names() -> None:
    leida = build(
        ("given", "Leida Johanna", None), ("born_as", "Tamm", None), ("married_as", "Rourke", None),
        ("nickname", "Leidi", None), ("born", "1941", dated("1941")),
        ("mother", "Helmi", means("helmi")),
    )  # fmt: skip
    assert (leida.name, leida.sort_name) == ("Leida Johanna Rourke", "Rourke, Leida Johanna")
    assert {"Leida Tamm", "L. J. Rourke", "Tamm, Leida", "Leidi Rourke"} <= set(leida.forms)
    assert leida.calls == ("Leida Johanna", "Leidi")
    assert edtf_of(leida.born) == "1941"
    assert leida.parents == ("helmi",)


def test_everything_that_is_told_of_a_person() -> None:
    yes = make_consent(["name"], "2026-11-25")
    leida = build(
        ("given", "Leida", None), ("family", "Rourke", None), ("born_as", "Tamm", None), ("married_as", "Muir", None),
        ("born", "1941", dated("1941")), ("died", "2019", dated("2019")),
        ("living", "No", None), ("sex", "female", None),
        ("father", "Arvo", means("arvo")), ("mother", "Helmi", means("helmi")), ("spouse", "Con", means("con")),
        ("married", "1962", dated("1962")), ("audience", "family", None), ("different", "l2", None),
        ("consent", yes.words, Reading("consent", yes, "test")),
    )  # fmt: skip
    assert (leida.name, leida.sort_name, leida.surnames) == ("Leida Muir", "Rourke, Leida", ("Rourke", "Tamm", "Muir"))
    assert (edtf_of(leida.born), edtf_of(leida.died), leida.dead) == ("1941", "2019", True)
    assert (leida.living, leida.sex, leida.audience, leida.different) == ("no", "female", "family", ("l2",))
    assert (leida.parents, leida.mothers, leida.spouses) == (("arvo", "helmi"), ("helmi",), ("con",))
    assert [edtf_of(date) for date in leida.married] == ["1962"]
    assert (leida.consents, leida.told_to) == ((yes,), {"anyone"})


def test_a_person_of_whom_nothing_is_told() -> None:
    nobody = build(("given", " ", None))
    assert (nobody.name, nobody.sort_name, nobody.audience) == ("someone", "someone", "anyone")
    assert (nobody.living, nobody.sex, nobody.dead, nobody.told_to) == ("", "", False, frozenset())


def test_asked_and_not_known_tells_nothing() -> None:
    asked = Statement(
        id="1", act="a", subject=Subject(Kind.PERSON, "p"), field="name", words="?", recorded_at="", sure=Sure.NOT_KNOWN
    )
    assert build_person("p", [(asked, None)]).name == "someone"


@pytest.mark.parametrize("field", ["died", "died_at", "buried", "buried_at"])
def test_a_death_is_told_with_a_date_or_without(field: str) -> None:
    assert build((field, "Port Chalmers", None)).dead


NAMES = [
    ({"name": "the tall man", "given": "Arvo"}, "the tall man", "the tall man"),
    ({"given": "Leida", "family": "Rourke"}, "Leida Rourke", "Rourke, Leida"),
    ({"given": "Leida", "born_as": "Tamm"}, "Leida Tamm", "Tamm, Leida"),
    ({"given": "Leida", "married_as": "Muir"}, "Leida Muir", "Muir, Leida"),
    ({"given": "Leida"}, "Leida", "Leida"),
    ({"family": "Rourke"}, "Rourke", "Rourke"),
    ({"born_as": "Tamm"}, "Tamm", "Tamm"),
    ({"nickname": "Leidi"}, "Leidi", "Leidi"),
    # a father's name is said once, and where it is in the place of a family name, it is none (AACR2, 22.9, from memory)
    ({"given": "Евгения Николаевна", "family": "Морозова"}, "Евгения Николаевна Морозова",
     "Морозова, Евгения Николаевна"),
    ({"given": "Guðrún", "family": "Jónsdóttir"}, "Guðrún Jónsdóttir", "Guðrún Jónsdóttir"),
    ({"given": "Leida", "family": "Tamm", "name": "Leida Kask"}, "Leida Kask", "Tamm, Leida"),
]  # fmt: skip


@every_row(("parts", "name", "sort_name"), NAMES)
def test_the_name_and_its_sort_form_come_of_what_parts_are_told(
    parts: dict[str, str], name: str, sort_name: str
) -> None:
    made = build(*((field, words, None) for field, words in parts.items()))
    assert (made.name, made.sort_name) == (name, sort_name)


OF_A_TREE = [
    # facts in the order of the file; of several names the first is preferred (GEDCOM 7.0 and 5.5.1, NAME)
    ((("given", "Leida"), ("family", "Tamm"), ("name", "Leida Kask-Vanem")), "Leida Tamm"),
    ((("given", "Leida"), ("married_as", "Tamm"), ("name", "Leida Kask"), ("name", "Evgenia")), "Leida Tamm"),
    ((("given", "Jan"), ("family", "Tamm"), ("name", "Jan Tamm the Elder"), ("name", "Juhan")), "Jan Tamm the Elder"),
    ((("family", "Nguyễn"), ("name", "Nguyễn Thị Mai")), "Nguyễn Thị Mai"),
    ((("name", "Nguyễn Thị Mai"), ("given", "Mai")), "Nguyễn Thị Mai"),
]


@every_row(("facts", "name"), OF_A_TREE)
def test_the_first_name_of_a_tree_file_is_the_preferred_one(facts: tuple[tuple[str, str], ...], name: str) -> None:
    rows = [(field, words, None) for field, words in facts]
    made = build(*rows, source=Source(Said.FILE, "tree"))
    assert made.name == name
    assert {words for field, words in facts if field == "name"} <= set(made.forms)


def test_someone_known_only_by_a_description_is_a_person() -> None:
    tall = build(("name", "the tall man with the accordion", None))
    assert tall.name == tall.sort_name == "the tall man with the accordion"
    assert tall.forms == ("the tall man with the accordion",)


def test_a_person_is_named_by_any_part_of_a_name() -> None:
    assert build(("name", "Ruth Tamm", None)).is_named
    assert build(("name", "Miss Pell", None)).is_named
    assert not build(("name", "the doctor", None)).is_named


def test_nobody_told_is_someone() -> None:
    assert build().name == "someone"


def test_readings_that_ask_and_words_not_known_are_not_used() -> None:
    asked = Reading("date", DateReading.from_edtf("1941"), "test", asks=True)
    assert build(("born", "’41", asked)).born is None
    unknown = Statement(
        id="1",
        act="a",
        subject=Subject(Kind.PERSON, "p"),
        field="given",
        words="",
        sure=Sure.NOT_KNOWN,
        recorded_at="",
    )
    assert build_person("p", [(unknown, None)]).calls == ()


def entry(ident: str, *rows: tuple[str, str, Reading | None]) -> tuple[str, list[tuple[Statement, Reading | None]]]:
    return ident, [
        (Statement(id=f"{ident}{at}", act="a", subject=Subject(Kind.PERSON, ident), field=field, words=words,
                   recorded_at=""), read)
        for at, (field, words, read) in enumerate(rows)
    ]  # fmt: skip


def test_merged_entries_are_one_person_under_the_first_ones_name() -> None:
    people = build_registry(
        [
            entry("a", ("name", "Leida", None)),
            entry("b", ("name", "Leidi Tamm", None), ("born", "1941", dated("1941")),
                  ("merged_into", "a", None)),
            entry("c", ("name", "Mia", None), ("mother", "Leidi", means("b"))),
        ],
    )  # fmt: skip
    assert len(people) == 2 and list(people) == ["a", "c"]
    assert people["b"] is people["a"]
    assert (people["a"].name, edtf_of(people["a"].born), people["a"].also) == ("Leida", "1941", ("b",))
    assert people["c"].parents == people["c"].mothers == ("a",)
    assert people.names() == {"a": "Leida", "b": "Leida", "c": "Mia"}
    assert people["a"].uri == "urn:uuid:a"


def test_merging_opens_nothing_that_either_entry_had_closed() -> None:
    people = build_registry(
        [
            entry("a", ("name", "Leida", None), ("audience", "family", None)),
            entry("b", ("name", "Leidi", None), ("audience", "anyone", None), ("audience", "keeper", None),
                  ("merged_into", "a", None)),
        ],
    )  # fmt: skip
    assert (people["a"].audience, people["a"].also_audiences) == ("family", ("keeper",))


def test_of_the_consents_of_merged_entries_the_last_told_is_the_last() -> None:
    def consent(ident: str, day: str, *, given: bool) -> tuple[Statement, Reading]:
        value = Consent(given=given, matters=frozenset({Matter.NAME}), day=day)
        subject = Subject(Kind.PERSON, ident)
        said = Statement(id=f"{ident}{day}", act="a", subject=subject, field="consent", words="told", recorded_at=day)
        return said, Reading("consent", value, "test")

    told = [("a", [*entry("a", ("name", "Hanne", None))[1], consent("a", "2026-01-02", given=True)])]
    withdrawn = consent("b", "2026-01-03", given=False)
    told += [("b", [*entry("b", ("name", "Johanna", None), ("merged_into", "a", None))[1], withdrawn])]
    assert [each.given for each in build_registry(told)["a"].consents] == [True, False]


def test_links_to_a_merged_entry_mean_the_one_that_stands() -> None:
    people = build_registry(
        [
            entry("a", ("given", "Leida", None), ("family", "Rourke", None)),
            entry("b", ("given", "Leidi", None), ("family", "Tamm", None), ("merged_into", "a", None)),
            entry("c", ("name", "Con", None), ("spouse", "Leidi", means("b")), ("spouse", "Liisi", means("gone")),
                  ("different", "b", None)),
        ],
    )  # fmt: skip
    assert (people["c"].spouses, people["c"].different) == (("a", "gone"), ("a",))
    assert (people["a"].name, people["a"].sort_name) == ("Leida Rourke", "Rourke, Leida")


def test_merging_in_a_circle_or_into_someone_gone_is_borne() -> None:
    circle = build_registry([entry("a", ("merged_into", "b", None)), entry("b", ("merged_into", "a", None))])
    assert len(circle) == 1 and circle["a"] is circle["b"]
    alone = build_registry([entry("a", ("merged_into", "gone", None))])
    assert list(alone) == ["a"]


def test_lost_at_sea_is_a_death_without_a_date() -> None:
    assert build(("name", "Ruth's friend", None), ("died", "later lost at sea", None)).dead


UNUSED = [Reading("date", Unreadable("{"), "test", confirmed=True), Reading("date", DateReading("then"), "test"), None]


@pytest.mark.parametrize("reading", UNUSED, ids=str)
def test_a_date_that_is_none_leaves_the_one_before(reading: Reading | None) -> None:
    person = build(("born", "1941", dated("1941")), ("born", "then", reading), ("married", "then", reading))
    assert (edtf_of(person.born), person.married) == ("1941", ())


def test_of_two_dates_the_later_told_counts_and_a_burial_stands_for_a_death() -> None:
    person = build(("born", "1941", dated("1941")), ("born", "1942", dated("1942")), ("buried", "1990", dated("1990")))
    assert (edtf_of(person.born), edtf_of(person.died)) == ("1942", "1990")


def test_a_parent_whose_reading_cannot_be_read_is_no_link() -> None:
    unread = Reading("person", Unreadable('{"id": 7}'), "test", confirmed=True)
    assert build(("mother", "Helmi", unread), ("father", "Juhan", means("juhan"))).parents == ("juhan",)


def test_a_consent_that_cannot_be_read_counts_as_a_withdrawal() -> None:
    given = Reading("consent", make_consent(["name", "picture"], "2026-01-01"), "test", confirmed=True)
    unread = Reading("consent", Unreadable("{}"), "test", confirmed=True)
    assert allows(build(("consent", "yes", given)).consents, Matter.NAME)
    assert not allows(build(("consent", "yes", given), ("consent", "?", unread)).consents, Matter.NAME)


def parted(parts: NameParts, *, confirmed: bool = False) -> Reading:
    return Reading("name", parts, "test", asks=bool(parts.asks), confirmed=confirmed)


def test_a_name_told_whole_is_found_by_its_parts_and_listed_by_them() -> None:
    pippa = build(("name", "Pippa Marlowe", None))
    assert (pippa.name, pippa.sort_name) == ("Pippa Marlowe", "Marlowe, Pippa")
    assert (pippa.calls, pippa.surnames) == (("Pippa",), ("Marlowe",))
    peter = build(("name", "Dr. Peter von der Pahlen", None))
    assert peter.surnames == ("von der Pahlen", "Pahlen") and "Dr. Pahlen" in peter.forms


def test_fathers_names_are_found_as_family_names_are() -> None:
    assert build(("name", "Halldór Guðmundsson", None)).surnames == ("Guðmundsson",)
    assert "Anna Sergeyevna Petrova" in build(("name", "Petrova Anna Sergeyevna", None)).forms


IN_DOUBT = NameParts(given="Wei", family="Zhang", tradition=Tradition.CHINESE, asks="Is “Zhang” the family name?")


def test_parts_in_doubt_are_listed_as_told_and_found_by_every_word_until_they_are_confirmed() -> None:
    doubtful = build(("name", "Zhang Wei", parted(IN_DOUBT)))
    assert (doubtful.sort_name, doubtful.name_asks) == ("Zhang Wei", "Is “Zhang” the family name?")
    assert build(("name", "Zhang Wei", parted(IN_DOUBT)), ("given", "Wei", None)).name_asks == ""
    assert set(doubtful.calls) == set(doubtful.surnames) == {"Zhang", "Wei"}
    confirmed = build(("name", "Zhang Wei", parted(IN_DOUBT, confirmed=True)))
    assert (confirmed.sort_name, confirmed.calls, confirmed.surnames) == ("Zhang, Wei", ("Wei",), ("Zhang",))


def test_a_correction_and_told_parts_go_before_what_is_read() -> None:
    corrected = NameParts(given="Marlowe", family="Pippa")
    assert build(("name", "Pippa Marlowe", parted(corrected, confirmed=True))).sort_name == "Pippa, Marlowe"
    told = build(("name", "Pippa Marlowe", None), ("given", "Philippa", None), ("family", "von Rosen", None))
    assert told.sort_name == "Rosen, Philippa von" and told.calls == ("Philippa", "Pippa")
    two = build(("given", "Gabriel", None), ("family", "García Márquez", None))
    assert two.sort_name == "García Márquez, Gabriel"
    odd = build(("given", "Karl August von", None), ("family", "Rosen", None))
    assert odd.sort_name == "Rosen, Karl August von"


def test_a_reading_that_is_damaged_is_read_again_from_the_words() -> None:
    unread = Reading("name", Unreadable("{"), "test")
    assert build(("name", "Pippa Marlowe", unread)).calls == ("Pippa",)


def test_what_the_family_is_called_decides_how_the_next_name_is_read() -> None:
    people = [
        build(("name", "Kask Aino", parted(NameParts(given="Aino", family="Kask")))),
        build(("name", "Anna Ivanov", None)),
    ]
    known = known_names(people)
    assert known.is_given("aino") and known.is_family("kask") and known.is_family("ivanova")
    assert read_name("Kask Anna", known).family == "Kask"
