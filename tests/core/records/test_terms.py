"""What was agreed holds, and in doubt the family's alone: a rule of ours, after the Oral History Association's Best
Practices (2018), by which a narrator may restrict access at any time."""

import pytest

from boxlore.core.fields.sittings import CLOSED_WORDS, Passage
from boxlore.core.records.terms import audience_agreed, consent_words, promise_of, terms_in
from boxlore.core.statements import KEEPER, Kind, Said, Source, Statement, Subject

LEIDA = Source(Said.NARRATOR, "leida")

TERMS = [
    ("anyone", "anyone"),
    ("the family only", "family"),
    ("the family, and an archive that keeps it closed for now", "family+archive"),
    ("the family, and an archive that keeps it closed until 2060-12-31", "family+archive:2060-12-31"),
    ("the family, and an archive that keeps it closed until I have died", "family+archive"),
    ("the family, and an archive that keeps it closed until 2060", "family+archive"),
    ("my cousins and the museum", "family"),
]


@pytest.mark.parametrize(("terms", "audience"), TERMS)
def test_terms_in_words_have_an_audience(terms: str, audience: str) -> None:
    assert audience_agreed(terms) == audience
    assert terms_in(consent_words("Leida Rourke", terms)) == terms


def told(source: Source = LEIDA, field: str = "story", moment: int | None = 500, audience: str = "anyone") -> Statement:
    subject = Subject(Kind.ITEM, "item")
    return Statement(id="1", act="1", subject=subject, field=field, words="Punik", recorded_at="", source=source,
                     moment=moment, audience=audience)  # fmt: skip


FAMILY = ("consent", consent_words("Leida", "the family only"))
ANYONE = ("consent", consent_words("Leida", "anyone"))
PASSAGE = ("closed", CLOSED_WORDS.write(Passage(100, 600)))

HELD = [
    ([], told(), "anyone"),
    ([FAMILY], told(), "family"),
    ([FAMILY, ANYONE], told(), "anyone"),
    ([ANYONE, FAMILY], told(), "family"),
    ([("consent", "as she said to the museum")], told(), "anyone"),
    ([FAMILY], told(KEEPER), "anyone"),
    ([FAMILY], told(audience="keeper"), "keeper"),
    ([FAMILY], told(field="kept"), "anyone"),
    ([PASSAGE], told(), "family"),
    ([PASSAGE], told(KEEPER), "family"),
    ([PASSAGE], told(moment=700), "anyone"),
    ([PASSAGE], told(moment=None), "anyone"),
    ([("closed", "what nobody can read")], told(moment=9_000_000), "family"),
]


@pytest.mark.parametrize(("rows", "statement", "audience"), HELD)
def test_what_was_promised_is_held(rows: list[tuple[str, str]], statement: Statement, audience: str) -> None:
    held = promise_of(rows).held(statement)
    assert held.audience == audience and held.words == statement.words
