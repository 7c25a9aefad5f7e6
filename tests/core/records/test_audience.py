"""Who may see what (a rule of our own; 100 years: common practice, no source)."""

from dataclasses import replace
from datetime import date

import pytest
from tests.every_row import every_row

from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.audiences import read_audience
from boxlore.core.people.consent import Consent, make_consent
from boxlore.core.people.latest_birth import BornBy, Sign
from boxlore.core.people.names_in_text.search import Doubt
from boxlore.core.people.person import Person
from boxlore.core.people.reference import PersonRef
from boxlore.core.records.audience import Naming, Recipient, To, is_keepers_alone
from boxlore.core.records.audience_levels import may_see, stricter
from boxlore.core.records.item_record import Conflict, PersonShown, Record, ScanFile, StatementView
from boxlore.core.records.living import BornFrom, life_of
from boxlore.core.records.marks import Mark
from boxlore.core.records.withheld import NOBODY, Withheld, withhold
from boxlore.core.statements import KEEPER, Said, Source, Sure

TODAY = date(2026, 11, 25)


def visible(record: Record, to: To, on_day: date, withheld: Withheld = NOBODY) -> Record:
    return Recipient(to=to, on_day=on_day, withheld=withheld).seen(record)


TABLE = {
    "keeper": {To.KEEPER},
    "family": {To.KEEPER, To.FAMILY},
    "archive:2060-01-01": {To.KEEPER, To.ARCHIVE},
    "archive:2026-11-25": set(To),
    "family+archive": {To.KEEPER, To.FAMILY, To.ARCHIVE},
    "family+archive:2060-01-01": {To.KEEPER, To.FAMILY, To.ARCHIVE},
    "family+archive:2026-11-25": set(To),
    "anyone": set(To),
}


@every_row("text", TABLE)
@every_row("to", To)
def test_the_table_of_audiences(text: str, to: To) -> None:
    assert may_see(text, to, TODAY) is (to in TABLE[text])
    assert str(read_audience(text)) == text


def person(ident: str = "mia", **more: object) -> Person:
    values = {
        "name": "Mia Rourke",
        "sort_name": "Rourke, Mia",
        "forms": ("Mia Rourke", "M. Rourke"),
        "calls": ("Mia",),
    }
    return Person(id=ident, **{**values, **more})  # type: ignore[arg-type]


BORN = DateReading.from_edtf("2016"), DateReading.from_edtf("1899")
LIVES = [
    ({}, True, "no birth or death told, so taken as living"),
    ({"died": DateReading.from_edtf("1944")}, False, "a death is told"),
    ({"died": DateReading.from_edtf("1944"), "living": "no"}, False, "a death is told"),
    ({"dead": True}, False, "a death is told"),
    ({"living": "yes", "born": DateReading.from_edtf("1890-01-01")}, True, "said to be living"),
    ({"living": "no"}, False, "said to have died"),
    ({"born": DateReading.from_edtf("1926-11-25")}, False, "born 1926 November 25 at the latest, over 100 years ago"),
    ({"born": DateReading.from_edtf("1926-11-26")}, True, "born 1926 November 26, no death told"),
    ({"born": BORN[1], "births": BORN}, True, "born 2016, no death told"),
    ({"born": BORN[1], "births": (*BORN, DateReading.from_edtf("1880/.."))}, True,
     "no birth or death told, so taken as living"),
    ({"born": BORN[1], "births": BORN[1:]}, False, "born 1899 at the latest, over 100 years ago"),
]  # fmt: skip


@every_row(("told", "living", "because"), LIVES)
def test_dead_known_dead_presumed_else_living(told: dict[str, object], living: bool, because: str) -> None:
    life = life_of(person(**told), TODAY)
    assert life.living is living
    assert life.because == because


def test_an_adult_in_a_picture_of_the_1890s_is_presumed_dead_and_says_why() -> None:
    life = life_of(person(), TODAY, latest_birth=BornBy(date(1899, 12, 31), Sign.PICTURE, "TRA-0003, 1890s"))
    assert not life.living
    assert life.because == "shown in TRA-0003, 1890s, so born by 1899, over 100 years ago"


YOUNGER = BornFrom(date(1951, 1, 1), "“about five” is told of TRA-0005, 1960")


def test_nobody_is_presumed_dead_of_whom_an_age_is_told_by_which_she_was_born_since() -> None:
    """What is worked out makes nobody dead, and may make somebody living (our own rule)."""
    old, dead = person(born=DateReading.from_edtf("1880")), person(died=DateReading.from_edtf("1950"), dead=True)
    doubted = life_of(old, TODAY, earliest_birth=YOUNGER)
    assert doubted.living and doubted.because.startswith("what is told cannot all be true")
    assert doubted.contradiction == (
        "born 1880 at the latest, over 100 years ago, but “about five” is told of TRA-0005, 1960"
    )
    assert not life_of(old, TODAY, earliest_birth=YOUNGER._replace(day=date(1925, 1, 1))).living
    assert not life_of(dead, TODAY, earliest_birth=YOUNGER).living
    assert life_of(person(), TODAY, earliest_birth=YOUNGER) == life_of(person(), TODAY)


def test_the_setting_of_years_counts_from_a_leap_day() -> None:
    born = person(born=DateReading.from_edtf("1928-02-28"))
    assert not life_of(born, date(2028, 2, 29), 100).living
    assert life_of(born, TODAY, 3000).living


def told(words: str, field: str = "story", audience: str = "anyone", meant: str = "") -> StatementView:
    return StatementView(
        statement=words, field=field, words=words, language="en", source=KEEPER, said_by="", sure=Sure.SURE,
        audience=audience, recorded_at="", value=PersonRef(meant) if meant else None,
    )  # fmt: skip


def withheld_mia():  # type: ignore[no-untyped-def]
    mia = person()
    return withhold([mia], {"mia": life_of(mia, TODAY)}, To.OUTSIDE)


@pytest.mark.parametrize("words", ["Mia Rourke came", "with MIA", "m. rourke's bicycle", "Rourke, then Mía", "(Mia)"])
def test_a_statement_with_any_form_of_a_withheld_name_is_left_out_whole_and_counted(words: str) -> None:
    seen = visible(Record(id="i", number="N", told={"story": (told(words), told("Port Chalmers"))}),
                   To.OUTSIDE, TODAY, withheld_mia())  # fmt: skip
    assert [one.words for one in seen.all("story")] == ["Port Chalmers"]
    assert seen.withheld == 1


def test_a_private_tag_of_a_language_that_names_somebody_is_left_away() -> None:
    """Such tags (RFC 5646, 2.2.7) are words of whoever wrote them."""
    views = (replace(told("Port"), language="x-mia"), replace(told("Bay"), language="en-x-mia"),
             replace(told("Ship"), language="en-x-otago"))  # fmt: skip
    seen = visible(Record(id="i", number="N", told={"story": views}), To.OUTSIDE, TODAY, withheld_mia())
    assert [view.language for view in seen.all("story")] == ["", "", "en-x-otago"]


def test_a_name_with_a_case_ending_is_found() -> None:
    leida = person("leida", name="Leida Rourke", forms=("Leida Rourke",), calls=("Leida",))
    found = withhold([leida], {"leida": life_of(leida, TODAY)}, To.OUTSIDE)
    assert found.finds("Küsi Leidalt.") and found.finds("LEIDAGA") and not found.finds("Leningrad")


@pytest.mark.parametrize("words", ["Miami", "Rourke's farm", "Maria"])
def test_other_words_stay(words: str) -> None:
    seen = visible(Record(id="i", number="N", told={"story": (told(words),)}), To.OUTSIDE, TODAY, withheld_mia())
    assert seen.words("story") == words


def test_the_family_sees_the_living() -> None:
    mia = person()
    assert not withhold([mia], {"mia": life_of(mia, TODAY)}, To.FAMILY).finds("Mia Rourke")


CARRIERS = [
    {"people": (PersonShown(told=told("the girl", meant="mia"), name="Mia Rourke", person="mia", number=1),)},
    {"told": {"inscription": (told("Mia, aged 3"),)}},
    {"scans": (ScanFile(id="s", path="p", sha256="", bytes=1, width=1, height=1, media_type="image/png",
                        embedded="dc:title Mia"),)},
]  # fmt: skip


@pytest.mark.parametrize("parts", CARRIERS)
def test_scans_that_carry_someone_withheld_are_closed(parts: dict[str, object]) -> None:
    record = Record(id="i", number="N", **parts)  # type: ignore[arg-type]
    assert visible(record, To.OUTSIDE, TODAY, withheld_mia()).closed_scans
    assert not visible(record, To.FAMILY, TODAY).closed_scans


def test_markers_of_the_withheld_go_and_are_counted() -> None:
    record = Record(id="i", number="N", people=CARRIERS[0]["people"])  # type: ignore[arg-type]
    seen = visible(record, To.OUTSIDE, TODAY, withheld_mia())
    assert (seen.people, seen.withheld) == ((), 1)


def test_found_in_is_searched_too() -> None:
    seen = visible(Record(id="i", number="N", found_in="Mia's shoebox"), To.OUTSIDE, TODAY, withheld_mia())
    assert (seen.found_in, seen.withheld) == ("", 1)


def test_a_living_narrator_is_not_named_as_the_source() -> None:
    by_mia = replace(told("Reval"), source=Source(Said.NARRATOR, "mia"), said_by="Mia Rourke")
    seen = visible(Record(id="i", number="N", told={"story": (by_mia,)}), To.OUTSIDE, TODAY, withheld_mia())
    assert (seen.words("story"), seen.all("story")[0].said_by) == ("Reval", "")


def test_a_narrator_whom_the_registry_has_not_is_not_named_outside() -> None:
    by_somebody = replace(told("Reval"), source=Source(Said.NARRATOR, "somebody"))
    record = Record(id="i", number="N", told={"story": (by_somebody,)})
    assert visible(record, To.OUTSIDE, TODAY).all("story")[0].source == Source(Said.NARRATOR)
    assert visible(record, To.FAMILY, TODAY) == record


def test_a_namesake_of_someone_withheld_is_not_shown_though_another_name_was_told() -> None:
    shown = PersonShown(told=told("the girl", field="person"), name="Mia Rourke", person="other")
    of_the_registry = PersonShown(told=told("the girl", field="person"), name="Mimi", person="mia")
    for people in ((shown,), (of_the_registry,)):
        assert visible(Record(id="i", number="N", people=people), To.OUTSIDE, TODAY, withheld_mia()).people == ()


def test_of_a_kept_item_number_kind_and_last_change_stay() -> None:
    kept = Record(
        id="i",
        number="N",
        kind="negative",
        changed_at="2026-01-01",
        audiences=("family",),
        told={"story": (told("x"),)},
    )
    seen = visible(kept, To.OUTSIDE, TODAY)
    left = Record(id="i", number="N", kind="negative", changed_at="2026-01-01", withheld=1, closed_scans=True)
    assert seen == left


@pytest.mark.parametrize(("path", "closes"), [("scans/box 3/Mia.jpg", True), ("Mia/box 3/a.jpg", False)])
def test_the_name_of_a_scan_closes_it_and_its_folders_are_not_handed_over(path: str, closes: bool) -> None:
    scan = ScanFile(id="s", path=path, sha256="", bytes=1, width=1, height=1, media_type="image/jpeg")
    record = Record(id="i", number="N", scans=(scan,))
    assert visible(record, To.OUTSIDE, TODAY, withheld_mia()).closed_scans is closes


def test_every_place_that_names_someone_withheld_says_where_in_which_words_and_whom() -> None:
    mia, leida = person(), person("leida", name="Leida Tamm", forms=("Leida Tamm",), calls=("Leida",))
    withheld = replace(
        withhold([mia], {"mia": life_of(mia, TODAY)}, To.OUTSIDE), hidden_pictures=frozenset({"mia", "leida"})
    )
    by_mia = replace(told("Reval"), statement="1", source=Source(Said.NARRATOR, "mia"), said_by="Mia Rourke")
    by_somebody = replace(told("Port"), statement="2", source=Source(Said.NARRATOR, "Mia of Reval"))
    scan = ScanFile(
        id="s", path="mia/Mia.jpg", sha256="", bytes=1, width=1, height=1, media_type="image/png", embedded="by Mia"
    )
    girl = PersonShown(
        told=replace(told("the girl", "person"), value=PersonRef("mia")), name="Mia Rourke", person="mia"
    )
    niece = PersonShown(told=told("the niece", "person"), name="Miss M. Rourke", person="mia")
    aunt = PersonShown(told=told("Aunt Leida", "person"), name=leida.name, person="leida")
    record = Record(
        id="i",
        number="N",
        told={"story": (by_mia, by_somebody, told("Mia swam.")), "person": (told("nobody", "person"),)},
        people=(girl, niece, aunt),
        found_in="Mia's tin",
        mark=Mark((("box", "Mia"),)),
        scans=(scan,),
    )
    whom = frozenset({"mia"})
    assert list(Recipient(to=To.OUTSIDE, on_day=TODAY, withheld=withheld).namings(record)) == [
        Naming("who says it", "Mia Rourke", whom),
        Naming("who says it", "Mia of Reval", whom),
        Naming("story", "Mia swam.", whom),
        Naming("person", "the girl", whom),
        Naming("person", "Miss M. Rourke", whom),
        Naming("in the picture", "Aunt Leida", frozenset({"leida"})),
        Naming("found in", "Mia's tin", whom),
        Naming("mark", record.mark.long if record.mark else "", whom),
        Naming("inside the file", "mia/Mia.jpg", whom),
        Naming("name of the file", "mia/Mia.jpg", whom),
    ]


def test_a_name_that_the_recipient_may_use_stands_for_one_that_is_kept() -> None:
    called = {"mia": "Mrs Muir"}
    by_mia = replace(told("Reval"), source=Source(Said.NARRATOR, "mia"), said_by="Mia Rourke")
    shown = PersonShown(told=told("the girl", "person"), name="Mia Rourke", person="mia")
    whole = Record(id="i", number="N", told={"story": (by_mia,)}, people=(shown,))
    seen = Recipient(to=To.FAMILY, on_day=TODAY, names=called).seen(whole)
    assert [seen.all("story")[0].said_by, seen.people[0].name] == ["Mrs Muir", "Mrs Muir"]


@pytest.mark.parametrize("audience", ["family", "keeper", "archive:2060-01-01"])
def test_someone_who_is_kept_from_a_recipient_is_withheld_though_not_living(audience: str) -> None:
    dead = person(dead=True, audience=audience)
    withheld = withhold([dead], {"mia": life_of(dead, TODAY)}, To.OUTSIDE, TODAY)
    assert withheld.people == {"mia"}
    assert withheld.whole_names == {"Mia Rourke", "M. Rourke"}


def test_someone_is_withheld_where_an_entry_that_is_the_same_was() -> None:
    dead = person(dead=True, also_audiences=("anyone", "keeper"))
    assert withhold([dead], {"mia": life_of(dead, TODAY)}, To.FAMILY, TODAY).people == {"mia"}


def consent(*matters: str, given: bool = True) -> Consent:
    return make_consent(matters, "2026-11-25", given=given)


CONSENTS = [
    ((), True, True),
    ((consent("name"),), False, True),
    ((consent("name", "picture"),), False, False),
    ((consent("name", "picture"), consent("name", given=False)), True, False),
]


@pytest.mark.parametrize(("consents", "name_withheld", "picture_closed"), CONSENTS)
def test_consent_decides_for_names_and_pictures(
    consents: tuple[Consent, ...], name_withheld: bool, picture_closed: bool
) -> None:
    mia = person(consents=consents)
    hidden = withhold([mia], {"mia": life_of(mia, TODAY)}, To.OUTSIDE, TODAY)
    shown = PersonShown(told=told("the girl", meant="mia"), name="Mia Rourke", person="mia", number=1)
    seen = visible(Record(id="i", number="N", people=(shown,)), To.OUTSIDE, TODAY, hidden)
    assert (not seen.people) is name_withheld
    assert hidden.finds("Mia Rourke") is name_withheld
    assert seen.closed_scans is (picture_closed or name_withheld)


SHOWS_MIA = (
    (True, "story", "Mia pulls a face."),
    (True, "story", "The Rourke girl with the dog"),
    (True, "inscription", "Mia, 4 years"),
    (True, "file_name", "mia_birthday.jpg"),
    (False, "story", "Mia gave it to the chapel."),
    (False, "note", "Mia with the dog"),
)


@every_row(("closed", "field", "words"), SHOWS_MIA)
@every_row("consents", ((), (consent("name"),)))
def test_what_says_that_somebody_is_seen_closes_the_scan_though_it_is_kept_back_or_may_be_told(
    closed: bool, field: str, words: str, consents: tuple[Consent, ...]
) -> None:
    mia = person(consents=consents, surnames=("Rourke",))
    hidden = withhold([mia], {"mia": life_of(mia, TODAY)}, To.OUTSIDE)
    seen = visible(Record(id="i", number="N", told={field: (told(words, field),)}), To.OUTSIDE, TODAY, hidden)
    assert seen.closed_scans is closed


@every_row("text", TABLE)
@every_row("to", To)
def test_a_person_may_be_kept_from_an_audience(text: str, to: To) -> None:
    dead = person(dead=True, audience=text)
    hidden = withhold([dead], {"mia": life_of(dead, TODAY)}, to, TODAY)
    assert hidden.finds("Mia Rourke") is (to not in TABLE[text])


@every_row("text", TABLE)
@every_row("to", To)
def test_an_item_or_a_field_may_be_kept_from_an_audience(text: str, to: To) -> None:
    rows = {"story": (told("Port Chalmers"),), "title": (told("A boat", "title"),)}
    whole = visible(Record(id="i", number="N", told=rows, audiences=(text,)), to, TODAY)
    field = visible(Record(id="i", number="N", told=rows, audiences=(f"story={text}",)), to, TODAY)
    if to in TABLE[text]:
        assert whole.words("story") == field.words("story") == "Port Chalmers"
    else:
        assert (whole.told, whole.closed_scans, whole.withheld) == ({}, True, 2)
        assert (field.words("story"), field.words("title"), field.withheld) == ("", "A boat", 1)


FORMS = ["Mia", "M. Rourke", "M Rourke", "Rourke, M.", "M.R.", "mia_rourke", "Mrs Tom Rourke", "Meemi"]


@every_row("words", FORMS)
def test_every_form_of_the_name_is_sought(words: str) -> None:
    tom = Person(id="tom", name="Tom Rourke", sort_name="Rourke, Tom", forms=("Tom Rourke",), calls=("Tom",), dead=True)
    mia = person("mia2", calls=("Mia", "Meemi"), surnames=("Rourke",), spouses=("tom",), also=("mia",), sex="female")
    lives = {one.id: life_of(one, TODAY) for one in (tom, mia)}
    hidden = withhold([tom, mia], lives, To.OUTSIDE, TODAY)
    assert hidden.finds(f"There came {words} with a cake.")
    assert not hidden.finds("Tom Rourke")
    assert hidden.people == {"mia", "mia2"}


def test_a_death_told_without_a_date_is_a_death() -> None:
    assert not life_of(person(dead=True), TODAY).living


def test_an_approximate_birth_counts_with_five_years_more() -> None:
    """Yale, Rhode Island Furniture Archive: “ca.” is five years either side."""
    assert life_of(person(born=DateReading.from_edtf("1922~")), TODAY).living
    assert not life_of(person(born=DateReading.from_edtf("1921-06~")), TODAY).living


def test_a_family_name_alone_is_asked_about_but_where_it_names_the_family() -> None:
    dead = person("tom", dead=True, surnames=("Rourke",))
    mia = person("mia", surnames=("Rourke", "Parata-Rourke"))
    hidden = withhold([dead, mia], {one.id: life_of(one, TODAY) for one in (dead, mia)}, To.OUTSIDE, TODAY)
    assert hidden.finds("Mrs Parata-Rourke") and not hidden.finds("the Rourke family")
    assert [hit.doubt for hit in hidden.hits("the Rourke girl")] == [Doubt.FAMILY]


def test_a_finished_text_is_stopped_by_what_is_sure_alone() -> None:
    mia = person("mia", forms=("Mia Rourke",), calls=("Mia",), surnames=("Rourke",))
    hidden = withhold([mia], {"mia": life_of(mia, TODAY)}, To.OUTSIDE, TODAY)
    outside = Recipient(to=To.OUTSIDE, on_day=TODAY, withheld=hidden)
    words = "The bay, with Mia Rourke"
    assert [words[hit.start : hit.end] for hit in outside.surely_named(words)] == ["Mia Rourke"]
    assert [hit.start for hit in outside.surely_named("Mia and Mia", "¦¦¦ and Mia")] == [8]
    assert outside.surely_named("The Rourke girl") == [] and not outside.may_read("The Rourke girl")


LIVES_IN_DOUBT = [
    ({"born": DateReading.from_edtf("2016")}, "born 2016, but shown in TRA-0002, 1899"),
    ({"born": DateReading.from_edtf("1899~")}, ""),
    ({"died": DateReading.from_edtf("1944"), "told_living": True}, "a death is told, and that the person lives"),
    ({"dead": True, "told_living": True}, "a death is told, and that the person lives"),
    ({"living": "no", "told_living": True}, "a death is told, and that the person lives"),
    ({"born": DateReading.from_edtf("1900"), "died": DateReading.from_edtf("1890")}, "born 1900, died 1890"),
    ({"born": DateReading.from_edtf("1880"), "died": DateReading.from_edtf("1890/..")}, ""),
    ({"born": DateReading.from_edtf("../1880"), "died": DateReading.from_edtf("1890")}, ""),
]


@every_row(("told", "contradiction"), LIVES_IN_DOUBT)
def test_contradictions_keep_somebody_living_and_named_to_nobody_outside(
    told: dict[str, object], contradiction: str
) -> None:
    """A child told to be born in 2016 is not dead because somebody takes her for the one in a picture of 1899."""
    mia = person(consents=(consent("name", "picture"),), **told)
    life = life_of(mia, TODAY, 100, BornBy(date(1899, 12, 31), Sign.PICTURE, "TRA-0002, 1899"))
    assert life.contradiction == contradiction
    assert life.living is bool(contradiction)
    hidden = withhold([mia], {"mia": life}, To.OUTSIDE, TODAY)
    assert hidden.finds("Mia Rourke") is bool(contradiction)
    assert bool(hidden.hidden_pictures) is bool(contradiction)


UNSURE = [
    ({"death_doubted": "perhaps"}, None, True, "what is told of a death is not sure, or says none"),
    ({"died": DateReading.from_edtf("1944"), "death_doubted": "1944"}, None, True,
     "what is told of a death is not sure, or says none"),
    ({"born": DateReading.from_edtf("1880"), "born_is_sure": False}, None, True, "born 1880, no death told"),
    ({"born": DateReading.from_edtf("1880"), "born_is_sure": False},
     BornBy(date(1899, 12, 31), Sign.PICTURE, "TRA-0002"),
     False, "shown in TRA-0002, so born by 1899, over 100 years ago"),
    ({"born": DateReading.from_edtf("1960"), "born_is_sure": False}, BornBy(date(1970, 1, 1), Sign.PICTURE, "x"), True,
     "born 1960, no death told"),
]  # fmt: skip


@pytest.mark.parametrize(("told", "latest", "living", "because"), UNSURE)
def test_a_guess_ends_no_life(told: dict[str, object], latest: BornBy | None, living: bool, because: str) -> None:
    life = life_of(person(**told), TODAY, 100, latest)
    assert (life.living, life.because, life.contradiction) == (living, because, "")


def side(words: str, edtf: str, audience: str = "anyone") -> StatementView:
    return StatementView(
        statement=words, field="date", words=words, language="en", source=Source(Said.INSCRIPTION, "verso"), said_by="",
        sure=Sure.SURE, audience=audience, recorded_at="", value=DateReading.from_edtf(edtf) if edtf else None,
    )  # fmt: skip


HIDDEN_SIDES = [
    ("1931", "1931?", "probably 1931"),
    ("1931/1932", "", "1931 (written on the back; disputed)"),
    ("", "", "1931 (written on the back; disputed)"),
]


@pytest.mark.parametrize(("edtf", "wanted", "shown"), HIDDEN_SIDES)
@pytest.mark.parametrize("settled", [False, True])
def test_where_one_side_may_not_be_told_the_other_is_doubtful(
    edtf: str, wanted: str, shown: str, settled: bool
) -> None:
    sides = (side("1931", edtf), side("1940", "1940", "keeper"))
    conflict = Conflict("date", sides, "these dates cannot both be so")
    conflicts = {"undecided" if settled else "conflicts": (conflict,)}
    whole = Record(id="i", number="TRA-0001", told={"date": sides}, **conflicts)  # type: ignore[arg-type]
    seen = visible(whole, To.FAMILY, TODAY)
    assert seen.words("date") == "1931 (written on the back; disputed)"
    assert (seen.edtf, seen.date_display) == (wanted, shown)
    (left,) = seen.conflicts + seen.undecided
    assert left.words.endswith("“1931” (written on the back) or another answer, which is withheld")
    assert visible(replace(whole, audiences=("date=keeper",)), To.FAMILY, TODAY).conflicts == ()


STRICTER = [
    ("family", "keeper", "keeper"),
    ("keeper", "family", "keeper"),
    ("family", "archive:2060-01-01", "keeper"),
    ("archive:2040-01-01", "archive:2060-01-01", "archive:2060-01-01"),
    ("archive:2070-01-01", "archive:2060-01-01", "archive:2070-01-01"),
    ("family", "archive:2020-01-01", "family"),
    ("family+archive", "archive:2060-01-01", "archive:2060-01-01"),
    ("family+archive", "family+archive:2060-01-01", "family+archive"),
    ("family+archive:2060-01-01", "family+archive", "family+archive"),
    ("anyone", "anyone", "anyone"),
    ("anyone", "what is no audience", "what is no audience"),
]


@every_row(("first", "second", "wanted"), STRICTER)
def test_of_two_audiences_the_stricter(first: str, second: str, wanted: str) -> None:
    assert stricter(first, second, TODAY) == wanted


KEPT = [
    ([], False), (["family"], False), (["keeper"], True), (["anyone", "keeper"], True), (["story=keeper"], False),
    (["nobody at all"], True),
]  # fmt: skip


@every_row(("words", "alone"), KEPT)
def test_what_is_the_keepers_alone_is_so_as_a_whole(words: list[str], alone: bool) -> None:
    """Words that cannot be read keep it to the keeper: the more careful reading."""
    assert is_keepers_alone(words) is alone
