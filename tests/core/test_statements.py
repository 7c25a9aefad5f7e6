"""The vocabulary of the log. UUIDs against RFC 9562, appendix A.6; folding by our own rule."""

import re
import uuid
from datetime import date

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import read_audience
from boxlore.core.statements import Said, Source, day_in, day_of, fold, read_source, typed_source, uuid7


def test_the_day_of_an_id_is_that_of_the_worked_example_of_the_standard() -> None:
    """RFC 9562, A.6 (version 7) and A.3 (version 4)."""
    assert day_of("017F22E2-79B0-7CC3-98C4-DC0C0C07398F") == date(2022, 2, 22)
    assert day_of("919108f7-52d1-4320-9bac-f847db4148a8") is day_of("mia") is day_in("") is None
    assert day_in("2026-11-25T10:15:30.250Z") == date(2026, 11, 25)


def test_uuid7_is_the_worked_example_of_the_standard() -> None:
    """RFC 9562, A.6: unix_ts_ms 0x017F22E279B0, rand_a 0xCC3, rand_b 0b01, 0x8C4DC0C0C07398F."""
    rand = (0xCC3 << 64) | (0x18C4DC0C0C07398F & (1 << 62) - 1)
    made = uuid7(0x017F22E279B0, rand.to_bytes(10, "big"))
    assert made == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"
    assert uuid.UUID(made).version == 7


@pytest.mark.parametrize(
    ("text", "source"),
    [
        ("narrator:leida", Source(Said.NARRATOR, "leida")),
        ("inscription:verso", Source(Said.INSCRIPTION, "verso")),
        ("keeper", Source(Said.KEEPER)),
        ("", Source(Said.KEEPER)),
        (" Document : parish register ", Source(Said.DOCUMENT, "parish register")),
    ],
)
def test_sources_are_read(text: str, source: Source) -> None:
    assert read_source(text) == source


def test_a_source_reads_back() -> None:
    for source in (Source(Said.NARRATOR, "a"), Source(Said.FILE)):
        assert read_source(str(source)) == source


def test_unknown_sources_are_refused_with_what_to_do() -> None:
    with pytest.raises(WrongUse, match="Use one of: inscription"):
        read_source("gossip:aunt")


@pytest.mark.parametrize(
    ("text", "source"),
    [
        ("narrator: Leida ", Source(Said.NARRATOR, "Leida")),
        ("inscription:verso", Source(Said.INSCRIPTION, "verso")),
        ("Inscription: Front", Source(Said.INSCRIPTION, "recto")),
        ("inscription:back", Source(Said.INSCRIPTION, "verso")),
        ("document:school register: 1912", Source(Said.DOCUMENT, "school register: 1912")),
        ("file:tree.ged", Source(Said.FILE, "tree.ged")),
        ("keeper", Source(Said.KEEPER)),
    ],
)
def test_sources_that_somebody_writes(text: str, source: Source) -> None:
    assert typed_source(text) == source


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("", "Nobody is named as the source."),
        ("  ", "Nobody is named as the source."),
        ("narrator", "“narrator” does not say which narrator."),
        ("narrator:", "“narrator:” does not say which narrator."),
        ("narrator: \u200b", "does not say which narrator."),
        ("document: ", "does not say which document."),
        ("file:-", "does not say which file."),
        ("inscription:", "An inscription stands on the verso (the back) or the recto (the front)."),
        ("inscription:banana", "An inscription stands on the verso (the back) or the recto (the front)."),
        ("keeper:Mia", "“keeper:Mia”: the keeper is named without more."),
    ],
)
def test_a_source_that_names_nobody_is_refused_with_what_to_write(text: str, problem: str) -> None:
    with pytest.raises(WrongUse, match="Write narrator:NAME, inscription:verso") as refused:
        typed_source(text)
    assert problem in str(refused.value)


@pytest.mark.parametrize("text", ["", "everybody", "archive", "archive:soon", "anyone:2060-01-01"])
def test_unknown_audiences_are_refused(text: str) -> None:
    with pytest.raises(WrongUse, match=re.escape("Use keeper, family, archive:YYYY-MM-DD or anyone.")):
        read_audience(text)


@pytest.mark.parametrize(
    ("words", "folded"),
    [
        ("Mägi", "magi"),
        ("Łódź", "lodz"),
        ("Straße", "strasse"),
        ("Ōtākou", "otakou"),
        ("Ærø", "aero"),
        ("Ñ", "n"),
    ],
)
def test_folding(words: str, folded: str) -> None:
    assert fold(words) == folded
    assert fold(fold(words)) == folded
