"""Somebody living whom a teller tells by a word of kin alone (a rule of our own; other languages from memory)."""

from dataclasses import replace

from tests.core.records.cast import TODAY, person, record, said, stories
from tests.every_row import every_row

from boxlore.core.fields.name_answers import NamingAnswer, NamingDecision
from boxlore.core.people.names_in_text.hits import Doubt
from boxlore.core.records.audience import Recipient, To
from boxlore.core.records.living import life_of
from boxlore.core.records.name_answers import NOTHING_DECIDED, Decided, decided, decision_digest
from boxlore.core.records.withheld import withhold
from boxlore.core.statements import Said, Source

GRANDMA = person("helmi", "Helmi", "Tamm", sex="female", dead=True)
FATHER = person("mart", "Mart", "Tamm", sex="male", dead=True, parents=("helmi",))
AUNT = person("leida", "Leida", "Muir", sex="female", parents=("helmi",))
TELLER = person("arvo", "Arvo", "Tamm", sex="male", dead=True, parents=("mart",))
BROTHER = person("oskar", "Oskar", "Tamm", sex="male", parents=("mart",))
SISTERS = tuple(person(name.lower(), name, "Tamm", sex="female", parents=("mart",)) for name in ("Ida", "Ruth"))
EVERYONE = (GRANDMA, FATHER, AUNT, TELLER, BROTHER, *SISTERS)
LIVES = {each.id: life_of(each, TODAY) for each in EVERYONE}

POINTED = (
    ("My brother built it.", "oskar"),
    ("We went with my brother’s boat.", "oskar"),
    ("Minu vend ehitas selle.", "oskar"),
    ("Then Grandma's youngest came.", "leida"),
    ("Grandma’s daughter was there.", "leida"),
    ("Aunt was there too, and Grandma.", "leida"),
)
NOBODY = (
    "My sister built it.", "His brother built it.", "Mr Brother built it.", "Aunt Mavis came.", "Grandma was there.",
    "The boat.",
)  # fmt: skip


def outside(answers: Decided = NOTHING_DECIDED) -> Recipient:
    return Recipient(to=To.OUTSIDE, on_day=TODAY, withheld=withhold(EVERYONE, LIVES, To.OUTSIDE, TODAY, answers))


def told_by(words: str, teller: str = "arvo") -> object:
    return said(words, by=Source(Said.NARRATOR, teller), said_by="Arvo Tamm" if teller else "")


@every_row(("words", "who"), POINTED)
def test_kin_of_a_teller_who_is_named_is_a_question(words: str, who: str) -> None:
    whole = record(told=stories(told_by(words)))
    assert not outside().seen(whole).told
    (naming,) = outside().namings(whole)
    assert (naming.where, naming.people, naming.doubtful) == ("story", {who}, {who})
    assert {hit.doubt for hit in naming.hits} == {Doubt.KIN}
    for answer, may in ((NamingAnswer.HIDE, False), (NamingAnswer.OTHER, True)):
        answers = [(whole.id, NamingDecision(answer, who, "story", decision_digest(hit, words))) for hit in naming.hits]
        answered = outside(decided(answers))
        assert bool(answered.seen(whole).told) is may
        assert [each.doubtful for each in answered.namings(whole)] == ([] if may else [frozenset()])


@every_row("words", NOBODY)
def test_where_the_words_point_to_several_or_to_nobody_nothing_is_asked(words: str) -> None:
    assert outside().seen(record(told=stories(told_by(words)))).told


def test_of_a_teller_who_is_not_named_nobody_knows_the_brother() -> None:
    words = "My brother built it."
    by_keeper = record(told=stories(said(words)))
    assert outside().seen(by_keeper).told
    of_oskar = record(told=stories(replace(told_by("My father built it."), source=Source(Said.NARRATOR, "oskar"))))  # type: ignore[type-var]
    (view,) = outside().seen(of_oskar).told["story"]
    assert not view.said_by
    nobody = Recipient(to=To.OUTSIDE, on_day=TODAY, withheld=withhold(EVERYONE[:1], LIVES, To.OUTSIDE, TODAY))
    assert nobody.seen(record(told=stories(told_by(words)))).told
