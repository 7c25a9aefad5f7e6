"""The table of subtags is what its script makes of the registry's copy in language-tags, and of pycountry."""

import importlib.util
from pathlib import Path

import pytest

pytest.importorskip("language_tags", reason="language-tags is needed for making the table only (extra `dev`)")


def test_the_table_is_what_the_script_makes() -> None:
    path = Path(__file__).parent / "make_languages.py"
    spec = importlib.util.spec_from_file_location("make_languages", path)
    assert spec and spec.loader
    make_languages = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(make_languages)
    made = make_languages.table()
    kept = make_languages.TABLE.read_text(encoding="utf-8")
    version = made.splitlines()[0]
    if kept.splitlines()[0] != version:
        pytest.skip(f"there are other releases: {version}")
    assert kept == made
