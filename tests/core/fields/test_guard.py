"""What the log takes: rules of our own, no outside source; language tags by RFC 5646."""

from dataclasses import replace

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.fields.guard import checked
from boxlore.core.statements import Kind, Said, Source, Statement, Subject, Sure

ITEM = Subject(Kind.ITEM, "0190a1b2-0000-7000-8000-000000000002")
STORY = Statement(id="s", act="a", subject=ITEM, field="story", words="Isa laev läks siit.", recorded_at="2026")

TAKEN: list[dict[str, object]] = [
    {},
    {"language": "et"},
    {"audience": "archive:2060-01-01"},
    {"sure": Sure.GUESS},
    {"source": Source(Said.NARRATOR, "leida")},
    {"field": "own-clothes"},
    {"field": "size", "words": "108 x 165"},
    {"field": "date", "words": "", "sure": Sure.NOT_KNOWN},
    {"field": "number", "words": "", "sure": Sure.NOT_KNOWN},
    {"subject": Subject(Kind.MARKER, "m"), "field": "scan", "words": ""},
    {"subject": Subject(Kind.SITTING, "s"), "field": "asked", "words": "Who is the sailor?"},
]

REFUSED: list[tuple[dict[str, object], str]] = [
    ({"field": "storey"}, "There is no field “storey” for an item. Fields that can be told: title, person,"),
    ({"field": "file"}, "There is no field “file” for an item."),
    ({"subject": Subject("house", "h")}, "“house” is no kind of thing. Use one of: collection, item,"),  # type: ignore[arg-type]  # what is refused
    ({"audience": "nobody"}, "“nobody” is no audience. Use keeper, family, archive:YYYY-MM-DD or anyone."),
    ({"audience": ""}, "“” is no audience."),
    ({"sure": "quite"}, "“quite” is no way of being sure. Use one of: sure, likely, guess, not-known."),
    ({"source": Source("gossip")}, "“gossip” is no kind of source. Use one of: inscription,"),  # type: ignore[arg-type]  # what is refused
    ({"language": "not a language"}, "“not a language” is no language tag. Write a BCP 47 tag, such as en, et, mi"),
    ({"language": "et_EE"}, "“et_EE” is no language tag."),
    ({"field": "size", "words": "big"}, "Size in mm: “big” is no size. Write millimetres, wide by high:"),
    ({"field": "size", "words": ""}, "Size in mm: Empty words are no size."),
    ({"field": "kept", "words": "in the attic"}, "Kept in: “in the attic” is no place in a container."),
    ({"field": "due_back", "words": "soon"}, "Due back: “soon” is no day. Write it as YYYY-MM-DD"),
    ({"field": "audience", "words": "story=nobody"}, "Who may see it: “story=nobody” is no audience."),
]


@every_row("what", TAKEN)
def test_what_the_log_takes(what: dict[str, object]) -> None:
    statement = replace(STORY, **what)  # type: ignore[arg-type]  # attributes by name
    assert checked(statement) is statement


@every_row(("what", "sentence"), REFUSED)
def test_what_it_refuses_with_a_sentence_that_says_what_may_be_written(what: dict[str, object], sentence: str) -> None:
    with pytest.raises(WrongUse) as refused:
        checked(replace(STORY, **what))  # type: ignore[arg-type]  # attributes by name
    assert str(refused.value).startswith(sentence)
    assert refused.value.what_to_do
