"""What pages are searched by, and that a large collection comes in parts (our own rules)."""

import json
from dataclasses import replace

from tests.sheets.conftest import record, shown, told

from boxlore.core.crosswalk.captions import PLAIN
from boxlore.core.dates.reading import DateReading
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.sheets.album_chapters import span_of
from boxlore.sheets.web_pages import ON_A_PAGE, Site, in_parts, make_pages
from boxlore.sheets.web_pages_home import LONGEST_TELLING, story_of
from boxlore.sheets.web_pages_search import IN_A_PART, parts_of, search_files


def dated(at: int, edtf: str):  # type: ignore[no-untyped-def]
    return record(at, shown("Leida"), date=(told("date", edtf, value=DateReading.from_edtf(edtf)),))


def card(**more):  # type: ignore[no-untyped-def]
    return {"title": "", "where_when": "", "small": "", "large": "x", "people": ["person/1.html"], **more}


def rows_of(text: str):  # type: ignore[no-untyped-def]
    return json.loads(text.split(" = ", 1)[1].rstrip(";\n"))


def test_photographs_are_found_by_year_decade_and_kin() -> None:
    records = [dated(0, "1938-06"), dated(1, "1938/1941"), dated(2, "1900/1950"), record(3)]
    person = {"href": "person/1.html", "name": "Leida", "life": "", "count": "", "other_names": ["Tamm, Leida"],
              "called": ["Leida Rourke", "Leidi"], "kin_words": ["grandmother of Mia"]}  # fmt: skip
    files = dict(search_files(records, {each.id: card() for each in records}, [person], {}, PLAIN))
    words = [row["f"] for row in rows_of(files["search-data.js"])]
    assert "1938 1930s" in words[0] and "1938 1939 1940 1941 1930s 1940s" in words[1]
    assert not any("1925" in line for line in words[2])
    assert all({"grandmother of Mia", "Leidi"} <= set(row) for row in words)
    assert rows_of(files["search-people.js"])[0]["f"] == [
        "Leida", "Leida Rourke", "Leidi", "Tamm, Leida", "grandmother of Mia"
    ]  # fmt: skip


def test_a_place_is_found_by_every_name_that_was_told_of_it() -> None:
    def at(number: int, words: str):  # type: ignore[no-untyped-def]
        town = Place(name="Tallinn", city="Tallinn", country="Estonia", geonames=588409)
        return record(number, place=(told("place", words, value=PlaceReading(words, "match", (town,))),))

    records = [at(0, "Reval"), at(1, "Tallinn"), record(2, place="the bach")]
    files = dict(search_files(records, {each.id: card() for each in records}, [], {}, PLAIN))
    found = [{"Reval", "Tallinn"} <= set(row["f"]) for row in rows_of(files["search-data.js"])]
    assert found == [True, True, False]


def test_a_large_collection_comes_in_parts(printing) -> None:  # type: ignore[no-untyped-def]
    """No page and no part of the search is larger than 300 kB, for whoever opens it on a slow machine."""
    one = dated(0, "1938-06")
    many = [replace(one, id=str(at), number=f"TRA-{at:05d}") for at in range(IN_A_PART * 2 + 1)]
    made = dict(make_pages(Site(records=many, fronts={}, backs={}, printing=printing, outside=False)))
    assert f'data-photographs="{parts_of(len(many))}" data-people="1"' in made["index.html"]
    assert [name for name in made if name.startswith("search-data")] == [
        "search-data.js", "search-data-2.js", "search-data-3.js"
    ]  # fmt: skip
    assert sum(len(rows_of(made[name])) for name in made if name.startswith("search-data")) == len(many)
    assert max(len(text.encode()) for text in made.values()) < 300_000


def test_the_parts_are_loaded_when_somebody_searches(browser, printing, tmp_path) -> None:  # type: ignore[no-untyped-def]
    one = dated(0, "1938-06")
    many = [replace(one, id=str(at), number=f"TRA-{at:05d}") for at in range(IN_A_PART + 1)]
    site = Site(records=many, fronts={}, backs={}, printing=printing, outside=False)
    for name, text in make_pages(site):
        if "/" not in name:
            (tmp_path / name).write_text(text, encoding="utf-8")
    browser.open(tmp_path / "index.html")
    browser.look("document.getElementById('words').focus()")
    browser.write(f"tra-{IN_A_PART:05d}")
    browser.until("document.querySelector('#hits a')")
    assert browser.look("document.querySelector('#hits a').getAttribute('href')") == f"photo/TRA-{IN_A_PART:05d}.html"


def test_a_subject_of_many_photographs_is_several_pages_and_loses_none() -> None:
    cards = [{"number": str(at)} for at in range(ON_A_PAGE + 5)]
    subject = {
        "href": "time/1930s.html",
        "groups": [{"name": "1930", "shown": cards[:3]}, {"name": "1931", "shown": cards[3:]}],
    }
    parts = list(in_parts(subject))
    assert [href for href, _ in parts] == ["time/1930s.html", "time/1930s-2.html"]
    assert [row for _, part in parts for group in part["groups"] for row in group["shown"]] == cards


def test_the_story_of_the_first_page(printing) -> None:  # type: ignore[no-untyped-def]
    short, long = record(0, story="It was cold."), record(1, story="It was very cold. " * 60)
    careful = record(2, story="x" * 2000, care="A funeral.")
    cards = {each.id: card(large="x") for each in (short, long, careful)}
    story = story_of([short, long, careful], cards, printing)
    assert story is not None and story["by"] == "Leida Rourke"
    assert len(story["paragraphs"][0]) <= LONGEST_TELLING + 2 and story["paragraphs"][0].endswith(" …")
    assert story_of([short], {short.id: card(large="")}, printing) is None


def test_what_stands_under_the_title() -> None:
    assert span_of([dated(0, "1938-06"), dated(1, "1871")], ENGLISH) == "2 photographs, 1871 to 1938"
    assert span_of([dated(0, "1938-06")], ENGLISH) == "1 photograph, 1938"
    assert span_of([record(0)], ENGLISH) == "1 photograph"
