"""The family's pages: plain HTML checked by rules of WCAG 2.2 AA, and in headless Chromium where it is installed.

1.1.1 alternatives, 1.3.1 headings, 1.4.3 contrast, 2.1.1 keyboard, 2.4.1 skip link, 2.4.2 titles, 3.1.1 language.
"""

import json
import os
import re
from collections.abc import Iterator
from dataclasses import replace
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path

import pytest

from boxlore.core.crosswalk import captions, references
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
    lists = {"index.html", "time.html", "people.html", "places.html", "photographs.html", "about.html", "stories.html"}
    assert lists | {"photo", "person", "place", "time"} == set(kinds)
    assert kinds.count("photo") == len(hard)


def test_photographs_of_a_person_stand_under_what_the_person_is_in_them(folder: Path) -> None:
    headings = [re.findall("<h2>(.*?)</h2>", path.read_text("utf-8")) for path in folder.glob("person/*.html")]
    kinds = {"Shown", "Perhaps shown", "Named, not shown", "Photographs by them"}
    assert {words for page in headings for words in page} <= kinds
    unsure = next(path.read_text("utf-8") for path in folder.glob("person/*.html") if "<h1" in path.read_text("utf-8")
                  and "לאה תמם" in path.read_text("utf-8").split("<h1")[1].split("</h1>")[0])  # fmt: skip
    assert "<h2>Perhaps shown</h2>" in unsure and "<h2>Shown</h2>" not in unsure
    assert "<bdi>לאה תמם (perhaps)</bdi>" in (folder / "photo/TRA-0003.html").read_text("utf-8")
    assert "1 photograph, not sure" in (folder / "people.html").read_text("utf-8")
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
    assert len(set(titles)) == len(titles)


def test_every_story_stands_in_a_list_with_who_told_it(folder: Path, hard: list[Record]) -> None:
    """The first page leads to it; a long one is only begun there."""
    listed = (folder / "stories.html").read_text("utf-8")
    stories = [(record.number, story) for record in hard for story in record.all("story")]
    assert re.findall(r"photo/(TRA-\d+)\.html", listed) == [number for number, _ in stories]
    assert f"All stories ({len(stories)})" in (folder / "index.html").read_text("utf-8")
    assert len(listed) < 6000 + 900 * len(stories)


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
        wanted = [captions.title(one), *captions.lines(one, "sheet", style).values(), references.reference(one)]
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
    assert [set(one) for one in page.all("script")] == [{"type"}, {"src", "defer"}, {"src", "defer"}]
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


def test_everything_is_near_the_first_page(pages: dict[str, Page]) -> None:
    """By links alone: people, places and decades are at most two links away, photographs three (our own rule)."""
    far = {"index.html": 0}
    waiting = ["index.html"]
    for name in waiting:
        for link in pages[name].all("a"):
            target = os.path.normpath(os.path.join(os.path.dirname(name), link["href"].split("#")[0]))
            if target in pages and target not in far:
                far[target] = far[name] + 1
                waiting.append(target)
    assert set(far) == set(pages)
    assert max(away for name, away in far.items() if name.split("/")[0] in ("person", "place", "time")) <= 2
    assert max(far.values()) <= 3


def test_heads_lead_to_people_and_name_them(pages: dict[str, Page]) -> None:
    """Each head that is marked in the picture is a link with the name; the same links stand below it."""
    page = pages["photo/TRA-0001.html"]
    heads = [link for link in page.all("a") if link.get("class") == "head"]
    assert {link["aria-label"] for link in heads} == {f"Front {at}" for at in range(5)} | {
        f"Back {at}" for at in range(4)
    }
    below = [link["href"] for link in page.all("a") if "class" not in link]
    assert {link["href"] for link in heads} <= set(below)


def test_a_year_a_decade_and_a_date_find_a_photograph(browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "index.html")
    for words in ("1912", "1910s", "1910s family"):
        browser.look("(input => { input.value = ''; input.focus() })(document.getElementById('words'))")
        browser.write(words)
        assert browser.look("document.querySelector('#hits a').getAttribute('href')") == "photo/TRA-0001.html", words
    browser.look("(input => { input.value = ''; input.focus() })(document.getElementById('words'))")
    browser.write("front 3")
    assert browser.look("document.querySelector('#who a').getAttribute('href')").startswith("person/")


CLICKED = """words => {
    const fits = [...document.querySelectorAll('main a, nav a, header a')].filter(a => a.innerText?.includes(words));
    const link = fits.find(a => a.checkVisibility({checkOpacity: true, checkVisibilityCSS: true}));
    if (!link) return null;
    link.scrollIntoView({block: 'center', behavior: 'instant'});
    const box = link.getClientRects()[0], at = [box.x + box.width / 2, box.y + box.height / 2];
    return link.contains(document.elementFromPoint(...at)) ? at : null;
}"""
"""Where on the screen a visible link with these words is hit; null if there is none, or something lies over it."""

FOUND = [
    ("a person", ["People", "Hana Parata"], "Ōtākou"),
    ("a year", ["Time", "1910s"], "1912"),
    ("a place", ["Places", "Tallinn"], "The whole family"),
    ("a story", ["All", "Memm"], "Word180 of the long story"),
]


@pytest.mark.parametrize(("what", "links", "wanted"), FOUND)
@pytest.mark.parametrize("script", [True, False])
def test_visible_links_alone_lead_to(what: str, links: list[str], wanted: str, script, browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    """By the mouse, from the first page, two clicks each, at the width of a telephone, with and without script."""
    browser.open(folder / "index.html", script=script, width=360)
    for words in links:
        at = browser.look(f"({CLICKED})({json.dumps(words)})")
        assert at, f"{what}: no link “{words}” can be seen and hit"
        browser.follow(*at)
    assert browser.look(f"document.body.innerText.includes({json.dumps(wanted)})"), what


def test_slides_go_on_and_back_by_keys(browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "photographs.html")
    browser.look("document.querySelector('.slides').click()")
    said = "document.querySelector('dialog .said').textContent"
    first = browser.look(said)
    browser.key("ArrowRight")
    assert first.startswith("1 of ") and browser.look(said).startswith("2 of ")
    browser.key("ArrowLeft")
    assert browser.look(said) == first
    browser.until("document.querySelector('dialog img').complete")
    browser.look("document.querySelector('dialog img').style.height = '5000px'")  # a picture higher than any window
    foot = browser.look("[document.querySelector('dialog img').getBoundingClientRect().bottom, innerHeight]")
    assert foot[0] <= foot[1]
    browser.key("Escape")
    browser.until("!document.querySelector('dialog')")
    assert list(errors(browser)) == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing(browser, folder: Path, scheme: str) -> None:  # type: ignore[no-untyped-def]
    """axe-core's rules for WCAG 2.2 A and AA and its best practices, at three widths."""
    if not (where := os.environ.get("BOXLORE_AXE")):
        pytest.skip("BOXLORE_AXE does not name axe-core's axe.min.js")
    axe = Path(where).read_text("utf-8")
    browser.send("Emulation.setEmulatedMedia", features=[{"name": "prefers-color-scheme", "value": scheme}])
    person = min(path.relative_to(folder) for path in folder.glob("person/*.html"))
    names = ("index.html", "time.html", "people.html", "places.html", "photographs.html", "about.html", str(person),
             "photo/TRA-0001.html", "photo/TRA-0003.html", "time/1910s.html", "place/g588409.html")  # fmt: skip
    wrong = []
    for width in (320, 768, 1200):
        for name in names:
            browser.open(folder / name, width=width)
            browser.look(axe)
            found = browser.look("axe.run().then(done => done.violations.map(rule => rule.id + rule.nodes[0].html))")
            wrong += [f"{width} {name}: {each}" for each in found]
    browser.send("Emulation.setEmulatedMedia", features=[])
    assert wrong == []


def test_places_are_words_and_coordinates(folder: Path, pages: dict[str, Page]) -> None:
    words = " ".join(pages["place/g588409.html"].words.split())
    assert "Tallinn" in words and "59.44° N, 24.75° E, to within about 5 km" in words and "Told as: Reval" in words


def test_colours_can_be_read(folder: Path) -> None:
    """WCAG 2.2, 1.4.6: 7 to 1, in light and in dark, on the page and on a tinted ground."""
    style = (folder / "style.css").read_text("utf-8")
    light, dark = (
        dict(re.findall(r"--(\w+): (#\w{6});", part)) for part in style.split("prefers-color-scheme: dark")[:2]
    )
    for colours in (
        light,
        dark,
        *({**light, "ink": one.ink, "soft": one.soft, "paper": one.paper} for one in THEMES.values()),
    ):
        for words in ("ink", "soft"):
            assert min(contrast(colours[words], colours[ground]) for ground in ("ground", "paper")) >= 7.0
    assert dark["ground"] != light["ground"] and contrast("#ffffff", "#111111") >= 7.0


def test_many_photographs_are_several_pages(hard: list[Record], printing: Printing) -> None:
    many = [replace(hard[5], id=str(at), number=f"TRA-{at:04d}") for at in range(ON_A_PAGE * 2 + 1)]
    made = dict(make_pages(Site(records=many, fronts={}, backs={}, printing=printing, outside=True)))
    pages = ["photographs.html", "photographs-2.html", "photographs-3.html"]
    assert set(pages) <= set(made) and "time/undated-3.html" in made
    assert 'href="photographs-3.html"' in made[pages[0]] and 'aria-current="page">Page 2' in made[pages[1]]
    assert 'href="undated-2.html"' in made["time/undated.html"]
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
    assert browser.look("document.getElementById('found').textContent") == "1 photograph found"
    assert browser.look("document.querySelector('#hits a').getAttribute('href')") == "photo/TRA-0005.html"
    assert browser.look("document.querySelector('.group').hidden")
    assert list(errors(browser)) == []


def test_words_beside_a_title_stand_apart_from_it(browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "photo/TRA-0002.html")
    before, after = browser.look("[...document.querySelectorAll('.steps a')].map(link => link.innerText)")
    assert before == "Previous: The whole family" and after.startswith("Next: ")


def test_the_enlarged_view_opens_and_closes_by_keyboard(browser, folder: Path) -> None:  # type: ignore[no-untyped-def]
    browser.open(folder / "photo/TRA-0001.html")
    browser.look("document.querySelector('.enlarge').focus()")
    browser.key("Enter")
    assert browser.look("document.querySelector('dialog').open && document.querySelector('dialog img').alt.length > 9")
    assert browser.look("document.activeElement.textContent") == "Close"
    browser.key("Escape")
    browser.until("!document.querySelector('dialog')")
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
    browser.open(folder / "photographs.html", script=False)
    assert browser.look("document.querySelectorAll('.gallery a').length") == len(hard)
    browser.open(folder / "photo/TRA-0001.html", script=False)
    assert browser.look("document.querySelector('.picture img').naturalWidth") == 400


@pytest.mark.parametrize("width", [320, 1200])
def test_targets_are_large_and_nothing_is_cut_off(browser, folder: Path, width: int) -> None:  # type: ignore[no-untyped-def]
    """WCAG 2.2: 1.4.10 reflow at 320 pixels; 2.5.5 targets of 44 pixels (the stricter one), but for heads in a picture
    and marks on the map, which have a link of that size below them (its exception “Equivalent”).
    """
    names = ("index.html", "photo/TRA-0001.html", "photo/TRA-0008.html", "people.html", "about.html")
    for name in (*names, "time.html", "time/1910s.html", "places.html", "photographs.html"):
        browser.open(folder / name, width=width)
        assert browser.look("document.documentElement.scrollWidth") <= width, name
        low = browser.look(
            "[...document.querySelectorAll('a:not(.skip, svg a)')].map(a => a.getBoundingClientRect())"
            ".filter(r => r.height < 44 || r.width < 44).length"
        )
        assert low == 0, name
