"""Whom a file shows and nobody knows: held until it is answered (a rule of our own)."""

from dataclasses import replace

from tests.core.records.cast import OUTSIDE, PEOPLE, TODAY, recipient, record, scan

from boxlore.core.fields.name_answers import NamingAnswer, NamingDecision
from boxlore.core.records.audience import EMBEDDED, Recipient, To
from boxlore.core.records.file_strangers import STRANGER, stranger_digest, strangers_to
from boxlore.core.records.name_answers import NOTHING_DECIDED, decided


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
    assert let_out.seen(replace(whole, id="another")).closed_scans, "it is asked of each item"
    nobody_hidden = Recipient(to=To.OUTSIDE, on_day=TODAY, strangers=strangers_to((), NOTHING_DECIDED))
    assert nobody_hidden.seen(whole).closed_scans
