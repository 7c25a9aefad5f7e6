"""The family's pages: plain HTML checked by rules of WCAG 2.2 AA, and in headless Chromium where it is installed.

1.1.1 alternatives, 1.3.1 headings, 1.4.3 contrast, 2.1.1 keyboard, 2.4.1 skip link, 2.4.2 titles, 3.1.1 language.
"""

import json
import re
from collections.abc import Iterator
from dataclasses import replace
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path

import pytest

from boxlore.core.crosswalk import captions
from boxlore.core.records.item_record import Record
from boxlore.sheets.picture_on_paper import front_of, picture_key
from boxlore.sheets.print_run import Printing
from boxlore.sheets.theme import THEMES, contrast
from boxlore.sheets.web_pages import ON_A_PAGE, PageSide, Site, make_pages

VOID = {"meta", "link", "img", "input", "circle"}


class Page(HTMLParser):
    """Tags in order with their attributes and words; every tag must be closed in order, every attribute once."""

    def __init__(self, words: str) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: list[tuple[str, dict[str, str]]] = []
        self.open: list[str] = []
        self.words = ""
        self.feed(words)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        names = [name for name, _ in attrs]
        assert len(names) == len(set(names)), (tag, names)
        self.tags.append((tag, {name: value or "" for name, value in attrs}))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        if tag not in VOID:
            assert self.open.pop() == tag

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, {name: value or "" for name, value in attrs}))

    def handle_data(self, data: str) -> None:
        if self.open and self.open[-1] not in ("script", "style"):
            self.words += data

    def all(self, tag: str) -> list[dict[str, str]]:
        return [attributes for name, attributes in self.tags if name == tag]


@pytest.fixture(scope="module")
def folder(hard: list[Record], pictures: dict[str, Path], tmp_path_factory: pytest.TempPathFactory) -> Path:
    from datetime import date  # noqa: PLC0415  # the fixture's only use

    home = tmp_path_factory.mktemp("pages")
    fronts = {}
    for one in hard[:-1]:
        scan = front_of(one)
        assert scan is not None
        name = f"images/large/{one.number}.jpg"
        (home / name).parent.mkdir(parents=True, exist_ok=True)
        (home / name).write_bytes(pictures[picture_key(scan)].read_bytes())
        fronts[one.id] = PageSide(name, (400, 300), name, (400, 300))
    printing = Printing(title="Tamm and Rourke", printed_on=date(2026, 11, 25))
    public = {one.id: one for one in hard if one.number != "TRA-0002"}
    site = Site(records=hard, fronts=fronts, backs={}, printing=printing, outside=False, public=public)
    for name, text in make_pages(site):
        (home / name).parent.mkdir(exist_ok=True)
        (home / name).write_text(text, encoding="utf-8")
    return home


@pytest.fixture(scope="module")
def pages(folder: Path) -> dict[str, Page]:
    return {str(path.relative_to(folder)): Page(path.read_text("utf-8")) for path in sorted(folder.rglob("*.html"))}


def test_every_kind_of_page_is_there(pages: dict[str, Page], hard: list[Record]) -> None:
    kinds = [name.split("/")[0] if "/" in name else name for name in pages]
    assert {"index.html", "people.html", "places.html", "about.html", "photo", "person", "place"} == set(kinds)
    assert kinds.count("photo") == len(hard)


def test_photographs_of_a_person_stand_under_what_the_person_is_in_them(folder: Path) -> None:
    headings = [re.findall("<h2>(.*?)</h2>", path.read_text("utf-8")) for path in folder.glob("person/*.html")]
    assert {words for page in headings for words in page} <= {"Shown", "Named, not shown", "Photographs by them"}
    assert sum("Shown" in page for page in headings) > 1


def test_language_title_and_one_first_heading(pages: dict[str, Page]) -> None:
    for name, page in pages.items():
        assert page.all("html")[0]["lang"] == "en", name
        assert len(page.all("title")) == 1 and len(page.all("main")) == 1, name
        levels = [int(tag[1]) for tag, _ in page.tags if re.fullmatch("h[1-6]", tag)]
        assert levels[0] == 1 and levels.count(1) == 1, name
        assert all(after - before <= 1 for before, after in pairwise(levels)), name


def test_titles_tell_pages_apart(folder: Path) -> None:
    titles = [re.search("<title>(.*?)</title>", path.read_text("utf-8"))[1] for path in folder.rglob("*.html")]  # type: ignore[index]
    assert len(set(titles)) >= len(titles) - 1  # two items without a word told may bear the same name


def test_every_picture_has_an_alternative_from_the_record(pages: dict[str, Page], hard: list[Record]) -> None:
    for name, page in pages.items():
        for image in page.all("img"):
            assert "alt" in image and image["width"] and image["height"], name
    for one in hard[:-1]:
        assert pages[f"photo/{one.number}.html"].all("img")[0]["alt"] == clean(captions.alt_text(one))


def clean(words: str) -> str:
    return " ".join("".join(letter for letter in words if letter not in "\u202e\u202c\x07").split())


def test_every_caption_stands_on_its_page(pages: dict[str, Page], hard: list[Record]) -> None:
    for one in hard:
        words = " ".join(pages[f"photo/{one.number}.html"].words.split())
        style = captions.Style(numbers=len(one.shown()) > 1)
        wanted = [captions.title(one), *captions.lines(one, "sheet", style).values(), captions.reference(one)]
        wanted += [line for told in one.all("story") for line in told.words.split("\n\n")]
        for line in wanted:
            assert clean(line) in words


def test_every_link_leads_somewhere_inside(pages: dict[str, Page], folder: Path) -> None:
    for name, page in pages.items():
        links = [one["href"] for one in page.all("a") + page.all("link")]
        links += [one["src"] for one in page.all("img") + page.all("script") if "src" in one]
        for link in links:
            if not link.startswith("#"):
                assert (folder / name).parent.joinpath(link).resolve().is_file(), (name, link)
                assert ":" not in link and not link.startswith("/"), (name, link)


def test_nothing_comes_from_elsewhere(folder: Path) -> None:
    for path in folder.rglob("*.*"):
        if path.suffix in (".html", ".css", ".js"):
            outside = set(
                re.findall(r"(?:https?:)?//[\w.-]+", re.sub(r"^\s*//.*$", "", path.read_text("utf-8"), flags=re.M))
            )
            assert outside <= {"https://schema.org"}, path
    policy = Page((folder / "index.html").read_text("utf-8")).all("meta")[1]["content"]
    assert policy.startswith("default-src 'none'") and "unsafe" not in policy and "http" not in policy


def test_hostile_words_stay_words(folder: Path, pages: dict[str, Page]) -> None:
    page = pages["photo/TRA-0007.html"]
    assert "<script>alert(1)</script>" in page.words and "{{ 7 * 7 }}" in page.words
    assert [set(one) for one in page.all("script")] == [{"type"}, {"src", "defer"}]
    linked = re.search(r'ld\+json">(.*?)</script>', (folder / "photo/TRA-0007.html").read_text("utf-8"), re.S)
    assert linked and json.loads(linked[1])["@type"] == "Photograph"
    assert all(not name.startswith("on") and name != "style" for _, one in page.tags for name in one)


def test_machines_are_told_only_what_anyone_may_know(folder: Path) -> None:
    assert "ld+json" not in (folder / "photo/TRA-0002.html").read_text("utf-8")
    linked = re.search(r'ld\+json">(.*?)</script>', (folder / "photo/TRA-0001.html").read_text("utf-8"))
    assert linked
    said = json.loads(linked[1])
    assert (said["dateCreated"], said["identifier"], said["about"][0]) == (
        "1912", "TRA-0001", {"@type": "Person", "name": "Front 0"},
    )  # fmt: skip


def test_places_are_words_and_coordinates(folder: Path, pages: dict[str, Page]) -> None:
    words = " ".join(pages["place/g588409.html"].words.split())
    assert "Tallinn" in words and "59.44° N, 24.75° E, to within about 5 km" in words and "Told as: Reval" in words


def test_colours_can_be_read(folder: Path) -> None:
    style = (folder / "style.css").read_text("utf-8")
    colours = dict(re.findall(r"--(\w+): (#\w{6});", style))
    for theme in THEMES.values():
        for words in (theme.ink, theme.soft):
            assert min(contrast(words, "#ffffff"), contrast(words, theme.paper)) >= 4.5
    assert contrast(colours["soft"], "#ffffff") >= 4.5 and contrast("#ffffff", "#111111") >= 4.5


def test_many_photographs_are_several_pages(hard: list[Record], printing: Printing) -> None:
    many = [replace(hard[5], id=str(at), number=f"TRA-{at:04d}") for at in range(ON_A_PAGE * 2 + 1)]
    made = dict(make_pages(Site(records=many, fronts={}, backs={}, printing=printing, outside=True)))
    assert {"index.html", "index-2.html", "index-3.html"} <= set(made)
    assert 'href="index-3.html"' in made["index.html"] and 'aria-current="page">Page 2' in made["index-2.html"]
    assert made == dict(make_pages(Site(records=many, fronts={}, backs={}, printing=printing, outside=True)))
    assert "noindex" not in made["index.html"]


def errors(browser) -> Iterator[str]:  # type: ignore[no-untyped-def]
    for one in browser.events:
        if one.get("method") == "Log.entryAdded" and one["params"]["entry"]["level"] == "error":
            yield one["params"]["entry"]["text"]
        if one.get("method") == "Runtime.exceptionThrown":
            yield str(one["params"])


def test_search_from_a_disk(browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "index.html")
    assert browser.look("!document.getElementById('search').hidden")
    browser.look("document.getElementById('words').focus()")
    browser.write("otakou PARATA")
    assert browser.look("document.getElementById('found').textContent") == "1 found"
    assert browser.look("document.querySelector('#hits a').getAttribute('href')") == "photo/TRA-0005.html"
    assert browser.look("document.querySelector('.group').hidden")
    assert list(errors(browser)) == []


def test_the_enlarged_view_opens_and_closes_by_keyboard(browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "photo/TRA-0001.html")
    browser.look("document.querySelector('.enlarge').focus()")
    browser.key("Enter")
    assert browser.look("document.querySelector('dialog').open && document.querySelector('dialog img').alt.length > 9")
    assert browser.look("document.activeElement.textContent") == "Close"
    browser.key("Escape")
    gone = "ok => { const wait = () => document.querySelector('dialog') ? setTimeout(wait, 10) : ok(true); wait() }"
    assert browser.look(f"new Promise({gone})")
    assert browser.look("document.activeElement.className") == "enlarge"
    assert list(errors(browser)) == []


def test_the_keyboard_goes_in_the_order_of_reading(browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "photo/TRA-0001.html")
    wanted = browser.look("[...document.querySelectorAll('a')].map(a => a.getAttribute('href'))")
    got = []
    for _ in wanted:
        browser.key("Tab")
        got.append(browser.look("document.activeElement.getAttribute('href')"))
    assert got == wanted and got[0] == "#main"


def test_without_script_everything_but_the_search_is_there(browser, folder: Path, hard: list[Record]) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "index.html", script=False)
    assert browser.look("document.getElementById('search').hidden")
    assert browser.look("document.querySelectorAll('.gallery a').length") == len(hard)
    browser.open(folder / "photo/TRA-0001.html", script=False)
    assert browser.look("document.querySelector('.picture img').naturalWidth") == 400


@pytest.mark.parametrize("width", [320, 1200])
def test_targets_are_large_and_nothing_is_cut_off(browser, folder: Path, width: int) -> None:  # type: ignore[no-untyped-def]
    """WCAG 2.2: 1.4.10 reflow at 320 pixels; 2.5.5 targets of 44 pixels (the stricter one)."""
    for name in ("index.html", "photo/TRA-0001.html", "photo/TRA-0008.html", "people.html", "about.html"):
        browser.open(folder / name, width=width)
        assert browser.look("document.documentElement.scrollWidth") <= width, name
        low = browser.look(
            "[...document.querySelectorAll('a:not(.skip)')].map(a => a.getBoundingClientRect())"
            ".filter(r => r.height < 44 || r.width < 44).length"
        )
        assert low == 0, name
