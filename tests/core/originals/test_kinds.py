"""Kinds of originals as they are typed (rules of our own)."""

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.originals.kinds import ITEM_KINDS, typed_kind


@every_row("kind", ITEM_KINDS)
def test_a_kind_in_any_case_and_with_a_blank(kind: str) -> None:
    assert typed_kind(f" {kind.upper().replace('-', ' ')} ") == kind


@pytest.mark.parametrize("text", ["spaceship", "", "prints"])
def test_what_is_no_kind(text: str) -> None:
    with pytest.raises(WrongUse, match=r"is no kind of original\. Write one of: print, card"):
        typed_kind(text)
