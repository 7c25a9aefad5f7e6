"""One answer for every part of a record: what is withheld in one place is withheld in each.

The rule is ours (core/records/audience); the names are the invented family's.
"""

from dataclasses import replace
from datetime import date

import pytest
from tests.core.records.cast import (
    ARCHIVE,
    BOX,
    FAMILY,
    MIA,
    NAMED,
    OUTSIDE,
    PLAIN,
    TODAY,
    person,
    recipient,
    record,
    said,
    scan,
    shown,
    stories,
)  # fmt: skip
from tests.every_row import every_row

from boxlore.core.records.audience import OF_SCANS, Recipient, To
from boxlore.core.records.audience_levels import closed_until
from boxlore.core.records.item_record import Record, is_untold
from boxlore.core.records.living import life_of
from boxlore.core.records.marks import Mark
from boxlore.core.records.withheld import withhold
from boxlore.core.statements import Kind, Said, Source, Statement, Subject


@every_row("where", NAMED)
def test_what_outside_may_not_have_is_named_to_the_keeper(where: str) -> None:
    whole, place = NAMED[where]
    seen = OUTSIDE.seen(whole)
    assert seen != whole
    assert [naming.where for naming in OUTSIDE.namings(whole)] == [place]
    assert (place in OF_SCANS) <= seen.closed_scans
    assert "Mia" not in repr(replace(seen, scans=()))


@every_row("where", NAMED)
@every_row("other", [FAMILY, ARCHIVE])
def test_the_family_and_the_closed_part_have_it(where: str, other: Recipient) -> None:
    assert other.seen(NAMED[where][0]) == NAMED[where][0]


def test_where_nobody_is_named_nothing_is_left_out() -> None:
    plain = record(
        told=stories(said("Tom rowed.", by=Source(Said.NARRATOR, "tom"), said_by="Tom Rourke")),
        people=(shown("tom", "Tom Rourke", number=1),),
        mark=Mark((("box", "1"),), 1),
        found_in="a biscuit tin",
        scans=(scan(),),
    )
    assert OUTSIDE.seen(plain) == plain
    assert list(OUTSIDE.namings(plain)) == []


KEPT: dict[str, Record] = {
    "story": record(told=stories(said())),
    "person": record(people=(shown("tom", "Tom Rourke", number=1),)),
    "found_in": record(found_in="a biscuit tin"),
    "size": record(size_mm=(90.0, 120.0)),
    "kept": record(mark=Mark((("box", "1"),), 1)),
}


@pytest.mark.parametrize("field", KEPT)
def test_a_field_that_the_keeper_keeps_is_kept_wherever_it_stands(field: str) -> None:
    kept = replace(KEPT[field], audiences=(f"{field}=family",))
    assert FAMILY.seen(kept) == kept
    assert replace(OUTSIDE.seen(kept), audiences=()) == record(withheld=1)


@pytest.mark.parametrize("how", [{"audience": "family"}, {}])
def test_writing_that_is_kept_is_not_shown_on_the_scan_of_the_back(how: dict[str, str]) -> None:
    audiences = () if how else ("inscription=family",)
    back = record(told={"inscription": (said(PLAIN, "inscription", **how),)}, scans=(scan(),), audiences=audiences)
    assert FAMILY.seen(back) == back
    assert OUTSIDE.seen(back).closed_scans


def test_that_a_kept_field_was_asked_is_kept_as_well() -> None:
    asked = record(not_known=frozenset({"story", "place"}), audiences=("story=family",), told=stories(said()))
    assert OUTSIDE.seen(asked).not_known == {"place"}


def test_an_item_that_is_kept_leaves_its_mark_only_where_that_names_nobody() -> None:
    kept = record(audiences=("family",), told=stories(said()), scans=(scan(),))
    assert OUTSIDE.seen(replace(kept, mark=BOX)) == record(withheld=1, scans=(scan(),), closed_scans=True)
    named = Mark((("box", "1"),), 2)
    assert OUTSIDE.seen(replace(kept, mark=named)).mark == named


@pytest.mark.parametrize("words", ["nobody", "story=nobody", "archive:soon"])
def test_an_audience_that_cannot_be_read_is_the_keepers(words: str) -> None:
    kept = record(told=stories(said()), audiences=(words,))
    assert FAMILY.seen(kept).told == {}
    assert recipient(To.KEEPER).seen(kept).told == kept.told
    odd = said(audience="nobody")
    assert FAMILY.seen(record(told=stories(odd))).told == {}


ITEM = Subject(Kind.ITEM, "item")


def test_a_statement_alone_is_asked_like_one_in_its_record() -> None:
    own = {ITEM: ("story=family",)}
    outside = recipient(To.OUTSIDE, own_audiences=lambda about: own.get(about, ()))
    assert not outside.may_be_told(said(), ITEM)
    assert outside.may_be_told(said(PLAIN, "title"), ITEM)
    assert outside.may_be_told(said(), Subject(Kind.ITEM, "another"))
    assert not outside.may_be_told(said("Mia fell in."), Subject(Kind.EVENT, "wedding"))
    assert not outside.may_be_told(said(audience="family"), Subject(Kind.PLACE, "creek"))


@pytest.mark.parametrize("ident", MIA.ids)
def test_nothing_is_told_about_someone_withheld_even_without_a_name(ident: str) -> None:
    about = Subject(Kind.PERSON, ident)
    assert not OUTSIDE.may_be_told(said("3 March 1966", "born"), about)
    assert FAMILY.may_be_told(said("3 March 1966", "born"), about)


def test_a_namesake_may_not_be_named() -> None:
    assert OUTSIDE.may_name("tom", "Tom Rourke")
    assert not OUTSIDE.may_name("old-mia", "Mia Rourke")
    assert not OUTSIDE.may_name("mia-too", "someone")


def test_people_are_counted_once_however_many_entries_they_have() -> None:
    assert OUTSIDE.withheld.count == 1
    assert OUTSIDE.withheld.whole_names == {"Mia Rourke", "M. Rourke"}


def test_a_name_of_which_a_part_is_kept_is_told_without_it() -> None:
    """`names` says what the recipient may call somebody: in the picture, and as who told it."""
    known = recipient(To.FAMILY, names={"tom": "Tom Rourke"})
    by_tom = Source(Said.NARRATOR, "tom")
    whole = record(
        told=stories(said(by=by_tom, said_by="Tom of the Wharf")), people=(shown("tom", "Tom of the Wharf"),)
    )
    seen = known.seen(whole)
    assert (seen.people[0].name, seen.all("story")[0].said_by) == ("Tom Rourke", "Tom Rourke")
    assert list(known.namings(whole)) == []
    assert known.may_name_source(said(by=by_tom, said_by="Tom of the Wharf"))


TOLD_TO = [({"anyone"}, True), ({"anyone", "keeper"}, False), (set(), True)]


@pytest.mark.parametrize(("told_to", "all_known"), TOLD_TO)
def test_whether_all_of_somebody_may_be_known(told_to: set[str], all_known: bool) -> None:
    assert FAMILY.may_know_all_of(person("tom", "Tom", told_to=frozenset(told_to))) is all_known


def test_what_is_known_of_someone_goes_by_its_audience_whoever_is_withheld() -> None:
    born = Statement(id="1", act="1", subject=Subject(Kind.PERSON, "mia"), field="given", words="Mia", recorded_at="")
    assert OUTSIDE.may_know(born)
    assert not OUTSIDE.may_know(replace(born, audience="family"))


FORMS = [
    (To.KEEPER, False, False, False, True),
    (To.FAMILY, False, True, False, True),
    (To.ARCHIVE, False, False, True, False),
    (To.OUTSIDE, True, False, False, False),
]


@pytest.mark.parametrize(("to", "public", "family", "closed_part", "closed_passages"), FORMS)
def test_for_whom_something_is_made_says_its_form(
    to: To, public: bool, family: bool, closed_part: bool, closed_passages: bool
) -> None:
    assert (to.is_public, to.is_family, to.is_closed_part) == (public, family, closed_part)
    assert recipient(to).may_hear_closed_passages is closed_passages


DAYS = [
    ("archive:2026-11-26", date(2026, 11, 26)),
    ("archive:2026-11-25", None),
    ("family", None),
    ("archive:soon", None),
]


@pytest.mark.parametrize(("text", "day"), DAYS)
def test_until_when_an_audience_is_closed(text: str, day: date | None) -> None:
    assert closed_until(text, TODAY) == day


def test_a_husband_is_not_sought_as_a_wife() -> None:
    """“Mrs Tom Rourke” is Tom's wife; “Mrs Mia Rourke” is nobody's husband."""
    mia = person("mia", "Mia", "Parata", dead=True)
    tom = person("tom", "Tom", "Rourke", sex="male", spouses=("mia",))
    lives = {one.id: life_of(one, TODAY) for one in (mia, tom)}
    assert not withhold([mia, tom], lives, To.OUTSIDE, TODAY).finds("Mrs Mia Parata")


def test_whoever_may_not_be_shown_may_have_taken_the_picture() -> None:
    behind = record(people=(shown("con", "Con Rourke", role="photographer"),), scans=(scan(),))
    assert OUTSIDE.seen(behind) == behind
    assert list(OUTSIDE.namings(behind)) == []


def test_without_a_day_nothing_closed_has_opened() -> None:
    tom = person("tom", "Tom", dead=True, audience="archive:2026-01-01")
    lives = {"tom": life_of(tom, TODAY)}
    assert withhold([tom], lives, To.OUTSIDE).people == {"tom"}
    assert withhold([tom], lives, To.OUTSIDE, TODAY).people == set()


def test_a_middle_name_of_somebody_is_no_family_name_that_others_share() -> None:
    jane = person("jane", "Jane Heriot", "Tamm", dead=True)
    edmund = person("edmund", "Edmund", "Heriot")
    lives = {one.id: life_of(one, TODAY) for one in (jane, edmund)}
    assert withhold([jane, edmund], lives, To.OUTSIDE, TODAY).finds("the Heriot farm")


def test_a_record_that_one_has_seen_may_be_seen_by_another() -> None:
    """As the pages do, for the family and then for anyone: what is left out adds up, closed scans stay closed."""
    first = record(told=stories(said("Mia fell in.")), withheld=2, closed_scans=True, scans=(scan(),))
    assert OUTSIDE.seen(first) == record(withheld=3, closed_scans=True, scans=(scan(),))
    kept = replace(first, audiences=("family",), people=(shown("tom", "Tom Rourke"),))
    assert OUTSIDE.seen(kept) == record(withheld=4, closed_scans=True, scans=(scan(),))


def test_what_a_file_says_alone_is_told_by_nobody() -> None:
    file = said("Harbour", by=Source(Said.FILE, ""), said_by="file")
    assert is_untold(record(told={"title": (file,)}, scans=(scan(),)))
    assert not is_untold(record(told=stories(said("Tom rowed.", by=Source(Said.NARRATOR, "tom"), said_by="Tom"))))
    assert not is_untold(record(people=(shown("tom", "Tom Rourke", number=1),)))
    assert not is_untold(record(asked=(file,))) and not is_untold(record(withheld=1))
