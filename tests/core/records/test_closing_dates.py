"""Closing dates: whatever outside may not have and the closed part holds has a day, and a reason without a name.

100 years from birth: The National Archives (UK), closure periods, from memory. The rest is a rule of our own.
"""

from dataclasses import replace
from datetime import date, datetime
from typing import Any

import pytest
from tests.core.records.cast import (
    ARCHIVE,
    FAMILY,
    NAMED,
    OUTSIDE,
    PEOPLE,
    TODAY,
    TOM,
    person,
    record,
    said,
    scan,
    shown,
    stories,
)  # fmt: skip
from tests.every_row import every_row

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.consent import make_consent
from boxlore.core.people.latest_birth import BornBy, Sign
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.audience import Recipient, To
from boxlore.core.records.closing_dates import Closes, Closing, Reason
from boxlore.core.records.item_record import PersonShown, Record, is_number_alone
from boxlore.core.records.living import life_of
from boxlore.core.records.withheld import withhold
from boxlore.core.statements import Said, Source, uuid7

CLOSES = date(2126, 11, 25)
"""100 years from the day of the transfer."""


def closing(*people: Person, **more: Any) -> Closing:
    """The closing dates of a transfer made on TODAY, where these people are the registry."""
    lives = {one.id: life_of(one, TODAY) for one in people}
    outside = Recipient(to=To.OUTSIDE, on_day=TODAY, withheld=withhold(people, lives, To.OUTSIDE, TODAY))
    return Closing(**{"outside": outside, "people": Registry(people), "lives": lives, "latest": {}, **more})


@every_row("where", NAMED)
def test_what_the_open_part_leaves_out_has_a_day_in_the_closed_part(where: str) -> None:
    whole = NAMED[where][0]
    assert OUTSIDE.seen(whole) != ARCHIVE.seen(whole)
    closure = closing(*PEOPLE).of(ARCHIVE.seen(whole))
    assert closure is not None and closure.until == CLOSES
    assert "Mia" not in str(closure) and "Con" not in str(closure)


def test_what_anyone_may_have_is_open() -> None:
    assert closing(*PEOPLE).of(record(told=stories(said()), people=(shown("tom", "Tom Rourke"),))) is None


def until(made: Closing, whole: Record) -> date:
    closure = made.of(whole)
    assert closure is not None
    return closure.until


NAMES_MIA = record(told=stories(said("Mia fell in.")))

BIRTHS: list[tuple[dict[str, Any], date]] = [
    ({"born": DateReading.from_edtf("1966-03-03")}, date(2066, 3, 3)),
    ({"born": DateReading.from_edtf("1968-02-29")}, date(2068, 2, 29)),
    ({"born": DateReading.from_edtf("1922~")}, date(2027, 12, 31)),
    ({"living": "yes", "born": DateReading.from_edtf("1890-01-01")}, CLOSES),
    ({"living": "yes", "born": DateReading.from_edtf("1926-11-25")}, CLOSES),
    ({}, CLOSES),
]


@pytest.mark.parametrize(("told", "day"), BIRTHS)
def test_the_years_count_from_birth_and_never_end_before_they_are_over(told: dict[str, Any], day: date) -> None:
    """An approximate birth counts with five years more, as for who counts as living (Yale, Rhode Island Furniture
    Archive: “ca.” is five years either side); whoever is said to live beyond 100 is closed from the transfer on."""
    assert until(closing(person("mia", "Mia", **told)), NAMES_MIA) == day


def test_a_birth_that_is_worked_out_counts_for_every_entry_of_a_person() -> None:
    mia = person("mia", "Mia", also=("mia-too",))
    made = closing(mia, latest={"mia": BornBy(date(1975, 8, 1), Sign.PICTURE, "TRA-0023")})
    assert until(made, record(people=(shown("mia-too", "Mia Rourke"),))) == date(2075, 8, 1)
    namings = made.outside.namings(record(people=(shown("mia-too", "Mia Rourke"),)))
    assert [one.id for one in made.named_in(namings)] == ["mia"]


def test_a_wife_by_her_husbands_name_is_named() -> None:
    tom = person("tom", "Tom", dead=True)
    mia = person("mia", "Mia", "Parata", spouses=("tom",))
    assert until(closing(tom, mia), record(told=stories(said("Mrs Tom Rourke baked.")))) == CLOSES


def test_a_full_name_means_nobody_else_and_a_family_name_alone_may_mean_each() -> None:
    tom = person("tom", "Tom", dead=True)
    old, young = (person(i, name, born=DateReading.from_edtf(day)) for i, name, day in (
        ("con", "Con", "1938-05-01"), ("mia", "Mia", "1966-03-03"),
    ))  # fmt: skip
    made = closing(tom, old, young)
    assert until(made, record(told=stories(said("Con Rourke rowed.")))) == date(2038, 5, 1)
    assert until(made, record(told=stories(said("Con rowed.")))) == date(2038, 5, 1)
    assert until(made, record(told=stories(said("A Rourke rowed.")))) == date(2066, 3, 3)
    assert made.of(record(told=stories(said("Tom Rourke rowed.")))) is None


LATER = "archive:2060-01-01"
DEAD_KEPT = person("tom", "Tom", dead=True, audience=LATER)
MERGED_KEPT = person("tom", "Tom", dead=True, also_audiences=("anyone", LATER))
PART_KEPT = person("tom", "Tom", dead=True, told_to=frozenset({"anyone", LATER}))
LIVING_KEPT = person("mia", "Mia", born=DateReading.from_edtf("1966-03-03"), audience=LATER)

KEPT: dict[str, tuple[Record, tuple[Person, ...], date]] = {
    "by whoever told it": (record(told=stories(said(audience=LATER))), (), date(2060, 1, 1)),
    "the item": (record(audiences=(LATER,), told=stories(said())), (), date(2060, 1, 1)),
    "one field": (record(audiences=(f"story={LATER}",), told=stories(said())), (), date(2060, 1, 1)),
    "someone dead": (record(told=stories(said("Tom rowed."))), (DEAD_KEPT,), date(2060, 1, 1)),
    "an entry that is the same": (record(told=stories(said("Tom rowed."))), (MERGED_KEPT,), date(2060, 1, 1)),
    "a part of someone": (record(people=(shown("tom", "Tom Rourke"),)), (PART_KEPT,), date(2060, 1, 1)),
    "someone living": (NAMES_MIA, (LIVING_KEPT,), date(2066, 3, 3)),
}


@pytest.mark.parametrize("what", KEPT)
def test_what_is_kept_until_a_day_is_closed_until_then(what: str) -> None:
    whole, people, day = KEPT[what]
    assert until(closing(*people), whole) == day


def test_on_its_own_day_it_is_open() -> None:
    """`archive:D` opens on D: the open part has it then, so the closed part names no day."""
    day = "archive:2026-11-25"
    for whole in (record(told=stories(said(audience=day))), record(audiences=(day,), told=stories(said()))):
        assert OUTSIDE.seen(whole).told == whole.told
        assert closing().of(whole) is None
    assert until(closing(), record(told=stories(said(audience="archive:2026-11-26")))) == date(2026, 11, 26)


def test_words_that_cannot_be_read_name_no_day() -> None:
    """They keep the item to the keeper, so that the closed part does not have it either."""
    odd = record(audiences=("archive:soon",), told=stories(said()))
    assert ARCHIVE.seen(odd).told == {} and closing().of(odd) is None


def test_the_latest_day_holds_and_every_reason_is_said_once_with_its_own_day() -> None:
    """Until when each holds: DACS 4.1, and termOfRestriction of PREMIS 3.0, both from memory."""
    both = record(told=stories(said("Mia fell in.", statement="1"), said("Mia swam.", audience=LATER, statement="2")))
    closure = closing(person("mia", "Mia", born=DateReading.from_edtf("1966-03-03"))).of(both)
    assert closure is not None and closure.until == date(2066, 3, 3)
    assert str(closure) == (
        "Closed until 2066-03-03: part of what is told of it, because it names someone taken as living, 100 years from "
        "that person's birth (until 2066-03-03); it is in part closed at the wish of whoever told it (until "
        "2060-01-01). The rest, with any scans, is open."
    )


def test_a_reason_that_holds_of_several_has_the_latest_day_of_theirs() -> None:
    two = (person("mia", "Mia", born=DateReading.from_edtf("1966-03-03")),
           person("con", "Con", born=DateReading.from_edtf("1938-05-01")))  # fmt: skip
    closure = closing(*two).of(record(told=stories(said("Mia and Con rowed."))))
    assert closure is not None
    why = "names someone taken as living, 100 years from that person's birth"
    assert closure.reasons == (Reason(date(2066, 3, 3), why, Closes.WORDS),)
    assert "(until" not in str(closure), "one day is said once"


def test_what_stays_closed_stops_at_the_end_of_the_calendar() -> None:
    assert until(closing(person("mia", "Mia"), years=8000), NAMES_MIA) == date.max


def test_the_example_of_the_theory() -> None:
    """TRA-0018 as the docstring of core/records/audience has it."""
    born = {"born": DateReading.from_edtf("1941-05-17")}
    tom, leida, con = person("tom", "Tom", dead=True), person("leida", "Leida", **born), person("con", "Con")
    by_leida: dict[str, Any] = {"by": Source(Said.NARRATOR, "leida"), "said_by": "Leida Rourke"}
    whole = record(
        told={
            "story": (
                said("Con had lent them the car.", **by_leida),
                said("The priest was late.", audience="family", **by_leida),
            ),
            "inscription": (said("Leida and Tom, Easter ’64", "inscription", Source(Said.INSCRIPTION, "verso")),),
        },
        people=(
            PersonShown(told=said("Tom", "person", **by_leida), name="Tom Rourke", person="tom", number=1),
            PersonShown(told=said("Leida", "person", **by_leida), name="Leida Rourke", person="leida", number=2),
        ),
        scans=(scan("scans/wedding_1964_f.jpg"),),
    )
    made = closing(tom, leida, con)
    outside = made.outside.seen(whole)
    (shown,) = outside.people
    assert (shown.name, shown.told.said_by, shown.told.source.said) == ("Tom Rourke", "", Said.NARRATOR)
    assert (outside.told, outside.withheld, outside.closed_scans) == ({}, 4, True)
    assert FAMILY.seen(whole) == whole
    closed = ARCHIVE.seen(whole)
    assert [view.words for view in closed.all("story")] == ["Con had lent them the car."]
    assert (closed.withheld, closed.closed_scans) == (1, False)
    assert until(made, closed) == CLOSES > date(2041, 5, 17)


VERBS = {
    "may name": (record(told=stories(said("A Rourke rowed."))), "may name"),
    "surely and perhaps": (record(told=stories(said("A Rourke rowed.")), people=(shown("mia", "her"),)), "shows"),
    "as who told it": (NAMED["as who told it"][0], "is told by"),
    "shown": (NAMED["by a picture that may not be shown"][0], "shows"),
}


@pytest.mark.parametrize("how", VERBS)
def test_the_reason_says_of_what_kind_it_is(how: str) -> None:
    whole, verb = VERBS[how]
    closure = closing(*PEOPLE).of(whole)
    assert closure is not None
    why = f"{verb} someone taken as living of whom no birth is told, 100 years from when that person was first noted"
    assert [reason[:2] for reason in closure.reasons] == [(CLOSES, why)]


def _id(day: str) -> str:
    """The id of what was made on a day (RFC 9562, 5.7)."""
    return uuid7(int(datetime.fromisoformat(f"{day}T12:00+00:00").timestamp() * 1000), bytes(10))


DAYS = [
    ("2026-11-10", date(2126, 11, 10)),
    ("2029-01-01", CLOSES),  # later than the transfer: a clock that was wrong; so is one before there was a Boxlore
    ("1970-01-01", CLOSES),
]


@pytest.mark.parametrize(("noted", "day"), DAYS)
def test_a_day_does_not_move_from_one_transfer_to_the_next(noted: str, day: date) -> None:
    """Whoever was noted on a day was born by then, so that the years count from it, whenever it is handed over."""
    mia = person(_id(noted), "Mia", also=("mia-too",))
    assert until(closing(mia), NAMES_MIA) == day
    assert until(closing(replace(mia, also=(_id("2026-11-24"),))), NAMES_MIA) == min(day, date(2126, 11, 24))
    by_a_stranger = said("Tom rowed.", by=Source(Said.NARRATOR, "Ann"), recorded_at=f"{noted}T10:00:00.000Z")
    assert until(closing(TOM), record(told=stories(by_a_stranger))) == day
    assert closing(TOM).of_sound([], since=date.fromisoformat(noted)).until == day


INFERRED = [
    (BornBy(date(1950, 1, 1), Sign.PICTURE, "TRA-0005, 1950"), " (shown in TRA-0005, 1950)"),
    (BornBy(date(1950, 1, 1), Sign.WEDDING, "1950"), " (married 1950)"),
    (BornBy(date(1950, 1, 1), Sign.BIRTH, "1966", ("Mia Rourke",)), " (from a child's birth)"),
    # Names that begin like a sentence of ours: what is told outside does not hang on how it is spelled.
    (BornBy(date(1950, 1, 1), Sign.PICTURE, "TRA-0005", ("shown in", "married Rourke")), " (from a child's birth)"),
]


@pytest.mark.parametrize(("because", "said_outside"), INFERRED)
def test_a_reason_names_nobody(because: BornBy, said_outside: str) -> None:
    closure = closing(person("mia", "Mia"), latest={"mia": because}).of(NAMES_MIA)
    assert closure is not None
    start = "names someone taken as living, birth not told, born by 1950 at the latest"
    assert [reason.why for reason in closure.reasons] == [start + said_outside]


def test_how_much_of_an_item_is_closed_is_said() -> None:
    """An item whose scans are open must not read as if nobody might see it."""
    mia, tom = person("mia", "Mia"), person("tom", "Tom", dead=True)
    told_of_her = record(told=stories(said("Mia fell in.")), scans=(scan(),))
    shows_her = record(people=(shown("mia", "Mia Rourke"),), scans=(scan(),))
    kept = record(audiences=(LATER,), told=stories(said()))
    made = closing(mia, tom)
    whats = [closure.what for one in (told_of_her, shows_her, kept) if (closure := made.of(one))]
    assert whats == [Closes.WORDS, Closes.SCANS, Closes.ITEM]
    on_a_sheet = closing(mia, tom, kept_back=frozenset({scan().id})).of(told_of_her)
    assert on_a_sheet is not None and on_a_sheet.what is Closes.SCANS


def test_each_reason_says_how_much_it_closes() -> None:
    """After the family's day only who told it is left out (DACS 4.1: what is closed, and how long; from memory)."""
    tom, mia = person("tom", "Tom", dead=True), person("mia", "Mia", born=DateReading.from_edtf("1966-03-03"))
    by_mia = said("Tom rowed.", by=Source(Said.NARRATOR, "mia"), said_by="Mia Rourke")
    whole = record(audiences=("archive:2031-06-30",), told=stories(by_mia), scans=(scan(),))
    closure = closing(tom, mia).of(whole)
    assert closure is not None
    assert str(closure) == (
        "Closed until 2031-06-30: the whole item, because it is kept closed by the keeper. Closed until 2066-03-03: "
        "the name of whoever told it, because it is told by someone taken as living, 100 years from that person's "
        "birth."
    )
    longer = closing(tom, mia).of(replace(whole, audiences=("archive:2070-06-30",)))
    assert longer is not None and len(longer.reasons) == 2 and "who told it" not in str(longer), "it ends before that"
    open_else = closing(tom, mia).of(replace(whole, audiences=()))
    assert open_else is not None and str(open_else).endswith("birth. The rest, with any scans, is open.")
    on_the_back = said("Tom, 1931", "inscription", Source(Said.INSCRIPTION, "verso"), audience=LATER)
    both = {"inscription": (on_the_back,), **stories(said("Tom rowed."))}
    written = closing(tom).of(record(told=both, scans=(scan(),)))
    assert written is not None and (written.what, written.until) == (Closes.SCANS, date(2060, 1, 1))
    nameless = record(told=stories(said("Tom rowed.", by=Source(Said.NARRATOR, "Ann"))))
    of_a_stranger = closing(tom).of(nameless)
    assert of_a_stranger is not None and [reason.what for reason in of_a_stranger.reasons] == [Closes.TELLER]


def test_an_item_that_is_kept_leaves_what_an_archive_calls_it() -> None:
    """DACS 2.1: the reference code is what it is asked for by (from memory)."""
    kept, named = said("P-991", "archive_reference"), said("P-992, Mia's", "archive_reference")
    whole = record(audiences=(LATER,), told={"archive_reference": (kept, named), **stories(said())})
    seen = OUTSIDE.seen(whole)
    assert (seen.told, seen.withheld, is_number_alone(seen)) == ({"archive_reference": (kept,)}, 2, True)
    closure = closing(*PEOPLE).of(whole)
    assert closure is not None and closure.what is Closes.ITEM


def test_what_an_archive_remarks_is_not_withheld_from_it() -> None:
    """A description must not tell an archive that its own remark is kept from it."""
    remark = said("Mould", "archive_remark", audience="keeper")
    told = {"archive_remark": (remark,), **stories(said("Tom rowed."), said("He owed rent.", audience="family"))}
    assert ARCHIVE.seen(record(told=told)).withheld == OUTSIDE.seen(record(told=told)).withheld == 1
    assert OUTSIDE.seen(record(audiences=(LATER,), told=told)).withheld == 2


def test_a_date_that_outside_may_not_have_is_not_called_undated() -> None:
    closed = record(told={"date": (said("1931", "date", audience=LATER),), **stories(said("Tom rowed."))})
    assert OUTSIDE.seen(closed).formal_date == "date not given here"
    kept = record(audiences=(LATER,), told={"date": (said("1931", "date"),)})
    assert OUTSIDE.seen(kept).formal_date == "date not given here" and not ARCHIVE.seen(kept).date_withheld
    assert OUTSIDE.seen(record(audiences=(LATER,), told=stories(said()))).formal_date == "undated"
    # made again of a transfer that told nothing of it: nobody knows here whether it is dated
    assert OUTSIDE.seen(record(audiences=(LATER,))).formal_date == "date not given here"


def test_a_rights_holder_whom_outside_may_not_know_is_known_to_be_there() -> None:
    """DACS 4.4: what is known of rights is said (from memory); who holds them may be somebody living."""
    holder = said("Mia Rourke", "rights_holder")
    whole = record(told={"rights_holder": (holder,), **stories(said("Tom rowed."))})
    assert ARCHIVE.seen(whole).hidden == frozenset()
    later = replace(holder, audience=LATER)
    outside = OUTSIDE.seen(replace(whole, told={**whole.told, "rights_holder": (later,)}))
    assert outside.hidden == {"rights_holder"} and outside.told.keys() == {"story"}


def test_who_took_a_consent_back_is_a_reason_that_says_so() -> None:
    back = [make_consent(["picture", "name"], "2026-11-20"), make_consent(["picture"], "2026-11-24", given=False)]
    mia = person("mia", "Mia", born=DateReading.from_edtf("1966-03-03"), consents=tuple(back))
    closure = closing(mia).of(record(people=(shown("mia", "Mia Rourke"),), scans=(scan(),)))
    assert closure is not None
    assert closure.reasons[0].why.startswith("shows someone taken as living, who took the consent back on 2026-11-24,")


def test_a_recording_is_closed_for_the_names_in_it_and_for_the_voice() -> None:
    """A recording is no item, and has a day and reasons of its own (DACS 4.1, from memory)."""
    yes, no = make_consent(["voice"], "2026-11-20"), make_consent(["voice"], "2026-11-24", given=False)
    born = {"born": DateReading.from_edtf("1990-03-03")}
    tom, mia, con = (
        person("tom", "Tom", dead=True), person("mia", "Mia", consents=(yes, no), **born),
        person("con", "Con", consents=(yes,), **born),
    )  # fmt: skip
    made = closing(tom, mia, con)
    assert str(made.of_sound([tom, mia, con])) == (
        "Closed until 2126-11-25: the whole item, because it may name people taken as living (nobody has listened for "
        "names in it), 100 years from when that was noted (until 2126-11-25); it has the voice of someone taken as "
        "living, who took the consent back on 2026-11-24, 100 years from that person's birth (until 2090-03-03)."
    )
    assert (
        "has looked for names" in str(made.of_sound([mia], is_heard=False)) and len(made.of_sound([con]).reasons) == 1
    )


def test_what_is_closed_until_it_is_asked_again_is_closed_for_a_lifetime_at_the_most() -> None:
    """So it was agreed; an archive wants a day all the same."""
    noted = "2026-11-24T10:00:00.000Z"
    kept = record(told=stories(said("Tom rowed.", audience="family+archive")), changed_at=noted)
    closure = closing(TOM).of(kept)
    assert closure is not None and closure.until == date(2126, 11, 24)
    assert "at the wish of whoever told it until it is asked again, 100 years from when that was noted" in str(closure)


AGREED = [("anyone", 1, date(2126, 11, 25)), ("family+archive", 2, date(2126, 11, 25)),
          ("family+archive:2150-01-01", 2, date(2150, 1, 1))]  # fmt: skip


@pytest.mark.parametrize(("agreed", "reasons", "day"), AGREED)
def test_a_recording_is_closed_as_was_agreed(agreed: str, reasons: int, day: date) -> None:
    closure = closing(TOM).of_sound([], since=TODAY, agreed=agreed)
    assert (len(closure.reasons), closure.until) == (reasons, day)
