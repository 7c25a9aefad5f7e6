"""The index of the house (`where.py`) leads to the home of a thing, by words that somebody would use for it."""

import importlib.util
from pathlib import Path

_SPEC = importlib.util.spec_from_file_location("where", Path(__file__).with_name("where.py"))
assert _SPEC is not None and _SPEC.loader is not None
where = importlib.util.module_from_spec(_SPEC)
_SPEC.loader.exec_module(where)

HOMES = {
    "birth worked out marriages": "core/people/latest_birth.py",
    "backups stay age": "store/backups_retention.py",
    "history statements screen": "tui/screens/statements.py",
    "caption sentences": "core/crosswalk/captions.py",
    "album chapters": "sheets/album_chapters.py",
    "narrator page fingers": "viewing/page/page.js",
    "labels template": "sheets/templates/labels.typ",
}


def test_the_index_leads_home() -> None:
    for words, home in HOMES.items():
        listed = [path.relative_to(where.SOURCE).as_posix() for path in where.located(words.split())]
        assert home in listed[:5], (words, listed[:12])


def test_without_words_every_module_is_listed() -> None:
    assert set(where.located([])) >= set(where.SOURCE.rglob("*.py"))
