"""The table of subtags is what its script makes of the registry's copy in language-tags, and of pycountry."""

from pathlib import Path

import pytest
from tests.made_tables import check_table

pytest.importorskip("language_tags", reason="language-tags is needed for making the table only (extra `dev`)")


def test_the_table_is_what_the_script_makes() -> None:
    check_table(Path(__file__).parent / "make_languages.py", "there are other releases")
