"""What the keeper decides of a place that names somebody: asked once, kept for these words (a rule of our own)."""

from dataclasses import replace
from datetime import date

import pytest
from tests.core.records.cast import LIVES, MIA, PEOPLE, SEEN_ONLY, TODAY, record, said, scan, shown, stories

from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer, NamingDecision
from boxlore.core.people.consent import make_consent
from boxlore.core.people.names_in_text.finder import name_finder
from boxlore.core.people.names_in_text.search import Doubt, Hit
from boxlore.core.people.person import Registry
from boxlore.core.records.audience import EMBEDDED, Recipient, To
from boxlore.core.records.closing_dates import Closes, Closing, Closure, Reason
from boxlore.core.records.name_answers import FINISHED, MADE_BY, decided, decision_digest
from boxlore.core.records.withheld import NOBODY, withhold

WORDS = "The boat came in, and the Rourke girl rowed it to the pier."
PLAIN_OUTSIDE = Recipient(to=To.OUTSIDE, on_day=TODAY, withheld=withhold(PEOPLE, LIVES, To.OUTSIDE, TODAY))


def decision(answer: NamingAnswer, words: str = WORDS, where: str = "story") -> NamingDecision:
    (hit,) = PLAIN_OUTSIDE.withheld.hits(words)
    (person,) = hit.people
    return NamingDecision(answer, person, where, decision_digest(hit, words))


def outside(*decisions: tuple[str, NamingDecision]) -> Recipient:
    return Recipient(
        to=To.OUTSIDE, on_day=TODAY, withheld=withhold(PEOPLE, LIVES, To.OUTSIDE, TODAY, decided(decisions))
    )


ANSWERS = [(NamingAnswer.HIDE, False), (NamingAnswer.OTHER, True), (NamingAnswer.MAY, True)]


@pytest.mark.parametrize(("answer", "may"), ANSWERS)
def test_an_answer_holds_for_its_words_in_its_item_and_field(answer: NamingAnswer, may: bool) -> None:
    seen_by = outside(("item", decision(answer)))
    whole = record(told=stories(said(WORDS)))
    assert bool(seen_by.seen(whole).told) is may
    assert bool(list(seen_by.namings(whole))) is not may
    elsewhere = record(told={"title": (said(WORDS, "title"),)})
    assert not seen_by.seen(elsewhere).told, "another field is asked about by itself"
    changed = record(told=stories(said(WORDS.replace("boat", "girl").replace("in, and", "in; and so"))))
    assert not seen_by.seen(changed).told, "other words beside the name are asked about again"


def test_a_name_that_is_allowed_somewhere_is_not_looked_for_in_bytes() -> None:
    assert "Mia Rourke" in outside(("item", decision(NamingAnswer.HIDE))).withheld.whole_names
    assert "Mia Rourke" not in outside(("item", decision(NamingAnswer.MAY))).withheld.whole_names


def test_what_is_decided_is_no_doubt_any_more() -> None:
    (naming,) = outside(("item", decision(NamingAnswer.HIDE))).namings(record(told=stories(said(WORDS))))
    assert not naming.doubtful and [hit.doubt for hit in naming.hits] == [Doubt.NONE]
    (naming,) = PLAIN_OUTSIDE.namings(record(told=stories(said(WORDS))))
    assert naming.doubtful == {"mia"} and [hit.doubt for hit in naming.hits] == [Doubt.FAMILY]


def test_what_is_hidden_in_a_place_stays_hidden_when_the_person_may_be_named() -> None:
    """Con has consented to be named, Tom is dead; the keeper's word on one place stands until it is changed."""
    words = "Con Rourke fell in, and Tom Rourke laughed."
    whole = record(told=stories(said(words)))
    assert outside().seen(whole).told
    everyone = frozenset(person.id for person in PEOPLE)
    hits = [hit for hit in name_finder(PEOPLE, everyone).hits(words) if not hit.doubt]
    assert {ident for hit in hits for ident in hit.people} == {"con", "tom"}
    for hit in hits:
        for ident in hit.people:
            keys = decision_digest(hit, words)
            held = outside(("item", NamingDecision(NamingAnswer.HIDE, ident, "story", keys)))
            assert not held.seen(whole).told
            (naming,) = held.namings(whole)
            assert (naming.people, naming.doubtful) == ({ident}, frozenset())
            assert held.seen(replace(whole, id="another")).told and held.may_read(words)
            people = Registry(PEOPLE)
            closing = Closing(outside=held, people=people, lives=LIVES, latest={})
            why = "names someone whom the keeper has answered to hide there, 100 years from when that person was first "
            why += "noted"
            assert closing.of(whole) == Closure((Reason(date(2126, 11, 25), why, Closes.WORDS),))
            for birth, until in (("1966-03-03", "2066-03-03"), ("1890-01-01", "2126-11-25")):
                born = [replace(one, born=DateReading.from_edtf(birth)) if one.id == ident else one for one in PEOPLE]
                closure = replace(closing, people=Registry(born)).of(whole)
                assert closure and str(closure.until) == until, "no longer than if no consent were given"
            changed = outside(("item", NamingDecision(NamingAnswer.MAY, ident, "story", keys)))
            assert changed.seen(whole).told
    withheld = withhold([PEOPLE[1]], LIVES, To.OUTSIDE, TODAY, decided([("item", decision(NamingAnswer.HIDE))]))
    assert withheld is NOBODY, "an answer about somebody whom the registry has no more"


def test_no_answer_names_whoever_took_consent_back_or_is_kept_from_the_audience() -> None:
    """Also an answer that was given later; that somebody else is meant holds as before."""
    taken_back = (*SEEN_ONLY.consents, make_consent(["name"], "2026-11-26", given=False))
    kept = replace(MIA, audience="keeper")
    for person, words in ((replace(SEEN_ONLY, consents=taken_back), "Con fell in."), (kept, "Mia fell in.")):
        for answer, may in ((NamingAnswer.MAY, False), (NamingAnswer.OTHER, True)):
            keys = decision_digest(Hit(0, 3, frozenset((person.id,)), Doubt.NONE), words)
            answers = decided([("item", NamingDecision(answer, person.id, "story", keys))])
            withheld = withhold([person], LIVES, To.OUTSIDE, TODAY, answers)
            assert withheld.finds(words, "item", "story") is not may
            still = Recipient(to=To.OUTSIDE, on_day=TODAY, withheld=withheld).still_allowed(answers)
            assert still.left(withheld.hits(words), words, "", "") == ([] if may else withheld.hits(words))
            assert withheld.decided.left(withheld.hits(words), words, "", "") == ([] if may else withheld.hits(words))


def test_in_a_text_that_is_no_record_the_same_words_may_stand_among_others() -> None:
    allowed = outside(("item", decision(NamingAnswer.OTHER)))
    assert allowed.may_read(f"<p>A boat. {WORDS} And more.</p>")
    assert not allowed.may_read("The Rourke boy rowed it") and not allowed.may_read(f"{WORDS} Mia Rourke.")
    both = outside(("item", decision(NamingAnswer.OTHER)), ("item-2", decision(NamingAnswer.HIDE)))
    assert not both.may_read(WORDS), "what is hidden of one item is in no text"


def test_the_same_words_answered_differently_in_two_items_stop_no_finished_file() -> None:
    """Each record was judged by its own answer before the file was made of it."""
    words = "Then Mia fell in and laughed."
    other, hide = (decision(answer, words) for answer in (NamingAnswer.OTHER, NamingAnswer.HIDE))
    both = outside(("item", other), ("item-2", hide))
    assert both.seen(record(told=stories(said(words)))).told and not both.may_read(words)
    assert not both.withheld.hits(f"<p>{words}</p>", where=FINISHED)
    for asked, text in ((outside(("item-2", hide)), words), (both, "So Mia fell in.")):
        assert asked.withheld.hits(text, where=FINISHED)


def test_the_later_of_two_answers_holds_and_other_people_are_asked_by_themselves() -> None:
    twice = outside(("item", decision(NamingAnswer.OTHER)), ("item", decision(NamingAnswer.HIDE)))
    assert not twice.seen(record(told=stories(said(WORDS)))).told
    other = NamingDecision(NamingAnswer.OTHER, "nobody", "story", "0" * 16 + ":0:0")
    assert not outside(("item", other)).seen(record(told=stories(said(WORDS)))).told


def test_a_dead_namesake_in_the_picture_may_be_named_when_the_keeper_says_so() -> None:
    whole = record(people=(shown("old-mia", "Mia Rourke"),))
    assert not PLAIN_OUTSIDE.seen(whole).people
    allowed = outside(("item", decision(NamingAnswer.OTHER, "Mia Rourke", "person")))
    assert [shown.name for shown in allowed.seen(whole).people] == ["Mia Rourke"]


DIGEST = "0123456789abcdef:0:3"
REFUSED = [
    "",
    "hide",
    f"perhaps p story {DIGEST}",
    "hide p story 012:0:0",
    f"hide p  {DIGEST}",
    f"hide p  story {DIGEST}",
]


@pytest.mark.parametrize("words", REFUSED)
def test_words_that_are_no_decision(words: str) -> None:
    assert NAMING_WORDS.or_none(words) is None


def test_a_decision_is_written_and_read() -> None:
    told = NamingDecision(NamingAnswer.MAY, "p", "who says it", DIGEST)
    assert NAMING_WORDS.write(told) == f"may p who+says+it {DIGEST}"
    assert NAMING_WORDS.or_none(NAMING_WORDS.write(told)) == told


def test_an_answer_about_a_setting_opens_the_setting_alone() -> None:
    of_setting = outside(("collection", decision(NamingAnswer.MAY, where="setting holder")))
    assert of_setting.may_read(WORDS, "collection", "setting holder")
    assert not of_setting.may_read(WORDS) and not of_setting.may_read(WORDS, "item", "story")
    of_item = outside(("item", decision(NamingAnswer.MAY)))
    assert not of_item.may_read(WORDS, "collection", "setting holder")


@pytest.mark.parametrize("field", ["title", "occasion", "keyword"])
def test_what_says_what_a_picture_shows_holds_the_scan_until_it_is_answered(field: str) -> None:
    """Also a name of somebody who may be named but not shown (Con); a story tells of people who are elsewhere."""
    for words in ("Mia on the quay", "Con on the quay", "the Rourke girl on the quay"):
        (naming,) = PLAIN_OUTSIDE.namings(record(told={field: (said(words, field),)}))
        assert PLAIN_OUTSIDE.seen(record(told={field: (said(words, field),)}, scans=())).closed_scans, words
        answers = [
            ("item", NamingDecision(NamingAnswer.OTHER, person, field, decision_digest(hit, words)))
            for hit in PLAIN_OUTSIDE.withheld.hits_of_shown(words)
            for person in hit.people
        ]
        answered = outside(*answers)
        whole = record(told={field: (said(words, field),)})
        assert not answered.seen(whole).closed_scans and not list(answered.namings(whole)), naming
    assert not PLAIN_OUTSIDE.seen(record(told=stories(said("Mia fell in.")))).closed_scans
    told = record(told=stories(said("The girl on the left is Mia, and Con stands at the back door.")))
    assert PLAIN_OUTSIDE.seen(told).closed_scans, "a story that says who is seen"
    for innocent in ("The quay at noon", "Tom Rourke on the quay"):
        assert not PLAIN_OUTSIDE.seen(record(told={field: (said(innocent, field),)})).closed_scans


def test_what_files_say_of_their_maker_is_answered_once_for_all_of_them() -> None:
    """Every scan of one machine says whose it is; what a file says of the picture is asked of each."""
    made_by = ("by: Mia Rourke", "rights: (c) Mia Rourke 2019", "profile: the scanner of Mia")
    for line in made_by:
        words = line.partition(": ")[2]
        whole = record(scans=(scan(embedded=f"title: The quay\n{line}\nscanned: 2019"),))
        (naming,) = PLAIN_OUTSIDE.namings(whole)
        assert (naming.where, naming.text) == (MADE_BY, words) and PLAIN_OUTSIDE.seen(whole).closed_scans
        for answer, may in ANSWERS:
            answered = outside(("another", decision(answer, words, MADE_BY)))
            assert answered.seen(whole).closed_scans is not may
            assert answered.seen(record(scans=(scan(embedded=f"title: {words}"),))).closed_scans, "no maker"
    both = record(scans=(scan(embedded="by: Mia Rourke\ncaption: Mia fell in"),))
    assert [naming.where for naming in PLAIN_OUTSIDE.namings(both)] == [MADE_BY, EMBEDDED]
