"""No word of ours is left in English in what a family reads in another language: album, slips, labels, worksheet and
pages of the demo, read back by pdftotext (poppler-utils) and lxml.

What our English words are is seen from the outputs themselves: all words of the English ones that nobody told.
"""

import re
import shutil
import subprocess
from collections.abc import Iterator
from datetime import date
from functools import cache
from pathlib import Path

import pytest
from lxml import html
from tests.drawn import IN_CI

from boxlore.core.dates.display_patterns import PATTERNS
from boxlore.core.dates.display_words import WORDS
from boxlore.core.records.audience import To
from boxlore.core.sitting.worksheet_origin import write_origin
from boxlore.core.wording.translations import TRANSLATIONS
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import records, seen_by
from boxlore.tasks.outputs.printed_sheets import PrintOrder, labels, sheet, slips, worksheet
from boxlore.tasks.outputs.web_pages import pages

ON = date(2026, 11, 25)
SAID_TO_ALL = {"collection", "txt", "boxlore", "tell", "narrator", "name"}
"""What a program reads: the line that says of which collection a file of answers is, and the command that takes it."""


def words_of(text: str) -> set[str]:
    return set(re.findall(r"[^\W\d_]{2,}", text.lower()))


def read(folder: Path) -> Iterator[str]:
    """Every text that somebody reads or hears in the outputs."""
    for path in sorted(folder.rglob("*")):
        if path.suffix == ".pdf":
            yield subprocess.run(["pdftotext", "-raw", str(path), "-"], capture_output=True, check=True).stdout.decode()
        elif path.suffix == ".html":
            page = html.parse(path).getroot()
            yield from page.xpath("//*[not(self::script)]/text() | //@alt | //@aria-label")
        elif path.name in ("words.js", "answers-answers.txt"):
            text = path.read_text(encoding="utf-8")
            yield " ".join(re.findall(r'": "(.*)"', text)) if path.suffix == ".js" else text


@pytest.fixture(scope="module")
def made(demo: Path, tmp_path_factory):  # type: ignore[no-untyped-def]
    if not shutil.which("pdftotext"):
        pytest.skip("pdftotext (Debian: poppler-utils) is missing")

    @cache
    def in_language(language: str) -> set[str]:
        folder = tmp_path_factory.mktemp(language)
        with open_collection(demo, write=False, on_day=ON) as collection:
            order = PrintOrder(language=language)
            sheet(collection, folder / "album.pdf", order)
            slips(collection, folder / "slips.pdf", order, length="full")
            labels(collection, folder / "labels.pdf", order)
            worksheet(collection, folder / "answers.pdf", order)
            pages(collection, folder / "pages", PrintOrder(to=To.FAMILY, language=language))
        return words_of(" ".join(read(folder)))

    return in_language


@pytest.fixture(scope="module")
def told(demo: Path) -> set[str]:
    with open_collection(demo, write=False, on_day=ON) as collection:
        views = [view for record in records(collection) for told in record.told.values() for view in told]
        known = [str(view.value) for view in views if view.value is not None and view.field == "place"]
        shown = [person.name for record in records(collection) for person in record.people]
        names = [*shown, *(str(person) for person in seen_by(collection, To.FAMILY).people().values())]
        codes = [collection.settings.prefix, write_origin(collection.id)]
        codes += [record.number for record in records(collection)]
        sayings = [f"{view.words} {view.said_by} {view.source.ref}" for view in views]
        return words_of(" ".join([*sayings, *known, *names, *codes, collection.settings.title]))


@pytest.mark.skipif(not IN_CI, reason="makes every output of the demo in five languages: in CI")
@pytest.mark.parametrize("language", TRANSLATIONS)
def test_no_english_word_of_ours_is_left(language: str, made, told: set[str]) -> None:  # type: ignore[no-untyped-def]
    ours = made("en") - told - SAID_TO_ALL
    assert {"contents", "written", "printed", "remember"} <= ours
    dates = [*PATTERNS[language], *WORDS[language].values()]
    translated = words_of(" ".join(str(words) for words in (*TRANSLATIONS[language].values(), *dates)))
    left = (ours & made(language)) - translated
    assert not left, sorted(left)
