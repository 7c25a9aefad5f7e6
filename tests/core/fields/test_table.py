"""The table of fields: rules of our own, no outside source."""

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS, field_of
from boxlore.core.statements import Kind


def test_fields_belong_to_kinds() -> None:
    assert field_of("date", Kind.ITEM).reads == "date"
    with pytest.raises(WrongUse, match="no field “date” for a scan"):
        field_of("date", Kind.SCAN)
    assert all(name == field.name for name, field in FIELDS.items())
