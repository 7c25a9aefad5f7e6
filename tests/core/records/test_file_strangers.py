"""Whom a file shows and nobody knows: held until it is answered (a rule of our own)."""

from dataclasses import replace

from tests.core.records.cast import OUTSIDE, PEOPLE, TODAY, recipient, record, said, scan

from boxlore.core.fields.name_answers import NamingAnswer, NamingDecision
from boxlore.core.records.audience import EMBEDDED, Recipient, To
from boxlore.core.records.file_strangers import stranger_digest, strangers_to
from boxlore.core.records.item_record import PersonShown
from boxlore.core.records.name_answers import NOTHING_DECIDED, STRANGER, decided


def test_whom_a_file_shows_and_the_registry_has_not_closes_the_scans_until_it_is_answered() -> None:
    """Someone of whom nothing is known counts as living (a rule of our own)."""
    whole = record(scans=(scan(embedded="people: Tom Rourke; Oswin Quill\ncaption: Ada Quill"),))
    assert not OUTSIDE.seen(whole).closed_scans, "nobody said who is known"
    held = recipient(To.OUTSIDE, strangers=strangers_to(PEOPLE, NOTHING_DECIDED))
    assert held.seen(whole).closed_scans
    assert [(naming.where, naming.text, naming.people) for naming in held.namings(whole)] == [
        (EMBEDDED, "Oswin Quill", frozenset())
    ]
    answered = NamingDecision(NamingAnswer.MAY, STRANGER, EMBEDDED, stranger_digest("OSWIN Quill"))
    let_out = recipient(To.OUTSIDE, strangers=strangers_to(PEOPLE, decided([(whole.id, answered)])))
    assert not let_out.seen(whole).closed_scans and not list(let_out.namings(whole))
    assert not let_out.seen(replace(whole, id="another")).closed_scans, "of a whole name it is asked once"
    one = record(scans=(scan(embedded="people: Oswin"),))
    by_one_name = NamingDecision(NamingAnswer.MAY, STRANGER, EMBEDDED, stranger_digest("Oswin"))
    let_out = recipient(To.OUTSIDE, strangers=strangers_to(PEOPLE, decided([(one.id, by_one_name)])))
    assert not let_out.seen(one).closed_scans and let_out.seen(replace(one, id="another")).closed_scans
    nobody_hidden = Recipient(to=To.OUTSIDE, on_day=TODAY, strangers=strangers_to((), NOTHING_DECIDED))
    assert nobody_hidden.seen(whole).closed_scans


def test_who_is_there_by_words_that_are_nobody_yet_is_held_until_it_is_answered() -> None:
    """Words that were made nobody may be a name all the same, and of somebody living (a rule of our own)."""
    held = recipient(To.OUTSIDE, strangers=strangers_to(PEOPLE, NOTHING_DECIDED))
    for words in ("Oswin Quill", "two boys and Quill", "王小明", "Batsman Oswin"):
        for field, shows in (("person", True), ("named", False), ("photographer", False)):
            told = said(words, field)
            people = (PersonShown(told=told, name=words, role=field),)
            whole = record(told={field: (told,)}, people=people, scans=(scan(),))
            seen = held.seen(whole)
            assert (seen.told, seen.people, seen.closed_scans) == ({}, (), shows), words
            assert [(naming.where, naming.text) for naming in held.namings(whole)] == [(field, words)]
            assert OUTSIDE.seen(whole).people, "nobody said who is known"
            answered = NamingDecision(NamingAnswer.OTHER, STRANGER, field, stranger_digest(words))
            let_out = recipient(To.OUTSIDE, strangers=strangers_to(PEOPLE, decided([(whole.id, answered)])))
            assert let_out.seen(whole) == whole and not list(let_out.namings(whole))
    for words in ("a boy with a kite", "Two boys", "Tom Rourke", "?", "Atelier Lind", "12"):
        people = (PersonShown(told=said(words, "person"), name=words),)
        assert held.seen(record(people=people, scans=(scan(),))).people, words


def test_a_name_that_was_made_nobody_is_held_in_all_words_until_it_is_answered() -> None:
    """Told of who is there, read as nobody: a rule of our own; what may be no name is sought nowhere."""
    told = ("Oswin Tohver", "Batsman Brown", "two boys", "Tom Rourke", "Tohver", "Oswin van Tohver")
    strangers = strangers_to(PEOPLE, NOTHING_DECIDED, told)
    held = recipient(To.OUTSIDE, strangers=strangers)
    for field, words in (("story", "Then Oswin came."), ("care", "Oswin Tohver’s"), ("title", "Tohver, O., a print")):
        whole = record(told={field: (said(words, field),)})
        assert not held.seen(whole).told and not held.may_read(words)
        assert [(naming.where, naming.text) for naming in held.namings(whole)] == [(field, words)]
        for answer, may in ((NamingAnswer.HIDE, False), (NamingAnswer.OTHER, True), (NamingAnswer.MAY, True)):
            decision = NamingDecision(answer, STRANGER, field, stranger_digest(words))
            let_out = recipient(To.OUTSIDE, strangers=replace(strangers, decided=decided([(whole.id, decision)])))
            assert bool(let_out.seen(whole).told) is may
    for words in ("The batsman was brown.", "Tom Rourke rowed.", "Two boys came.", "The quay"):
        assert held.may_read(words), words
    assert strangers_to(PEOPLE, NOTHING_DECIDED, told[2:5]).unknown is None


def test_it_is_held_too_where_nobody_is_withheld() -> None:
    """A registry of nobody living once let every record pass at a glance (a rule of our own)."""
    strangers = strangers_to((), NOTHING_DECIDED, ("Xanthe Brannock",))
    held = Recipient(to=To.OUTSIDE, on_day=TODAY, strangers=strangers)
    assert not held.seen(record(told={"story": (said("Xanthe Brannock took this.", "story"),)})).told
    assert held.seen(record(told={"story": (said("The shed at the quay.", "story"),)})).told
