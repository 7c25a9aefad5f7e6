"""The table of fields: rules of our own, no outside source."""

import pytest

from boxlore.core.errors import BoxloreError, WrongUse
from boxlore.core.fields.plain_values import TEXT
from boxlore.core.fields.table import FIELDS, Field, Fields, UnknownField, codec_fields, field_of
from boxlore.core.statements import Kind


def test_fields_belong_to_kinds() -> None:
    assert field_of("date", Kind.ITEM).reads == "date"
    with pytest.raises(WrongUse, match="no field “date” for a scan"):
        field_of("date", Kind.SCAN)
    assert all(name == field.name for name, field in FIELDS.items())


def test_two_rows_of_one_name_are_refused_when_the_table_is_made() -> None:
    row = Field("asked", (Kind.ITEM,), "To ask")
    with pytest.raises(ValueError, match="two rows of the table of fields are named asked"):
        Fields([row, Field("title", (Kind.ITEM,), "Title"), row])


@pytest.mark.parametrize("kind", [Kind.ITEM, Kind.SITTING])
def test_what_is_to_be_asked_belongs_to_items_and_sittings(kind: Kind) -> None:
    field = field_of("asked", kind)
    assert (field.many, field.told, field.audience) == (True, False, "keeper")


@pytest.mark.parametrize("name", ["own-clothes", "own-what-was-cooked", "own-riided2"])
def test_a_collections_own_fields_are_fields(name: str) -> None:
    assert name in FIELDS
    assert FIELDS.get(name) == FIELDS[name] == field_of(name, Kind.ITEM)
    assert (FIELDS[name].told, FIELDS[name].many, FIELDS[name].reads, FIELDS[name].codec) == (True, False, "", TEXT)
    assert FIELDS[name].label == name.removeprefix("own-").replace("-", " ").capitalize()
    assert name not in list(FIELDS)
    with pytest.raises(WrongUse, match="for a person"):
        field_of(name, Kind.PERSON)


@pytest.mark.parametrize("name", ["storey", "", "own", "own-", "own--", "own-a b", "own-a_b"])
def test_others_are_none(name: str) -> None:
    assert name not in FIELDS
    assert FIELDS.get(name) is None


def test_a_field_of_a_newer_version_is_said_to_be_unknown() -> None:
    with pytest.raises(UnknownField, match="a field “storey” that this Boxlore does not know") as unknown:
        FIELDS["storey"]
    assert isinstance(unknown.value, BoxloreError)
    assert "Get a newer one" in str(unknown.value)


def test_fields_are_put_in_order() -> None:
    asked = ["story", "own-b", "title", "own-a", "story", "storey"]
    assert FIELDS.in_order(asked) == ["title", "story", "own-b", "own-a", "storey"]
    assert FIELDS.in_order([]) == []


def test_fields_whose_words_are_more_than_text() -> None:
    assert {"kept", "file", "shown", "size"} <= set(codec_fields())
    assert not {"story", "label", "own-clothes"} & set(codec_fields())
