"""The family's web pages: a folder of plain HTML that opens in any browser from a stick, without a network.

The first page has a story, faces, the years and places; every photograph leads to those in it, who lead on. All words
are escaped, and a policy in every page forbids loading anything from elsewhere (CSP level 3). The pages aim at
WCAG 2.2 AA. Only the search, the enlarged view and the slides need a script.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from boxlore.core.crosswalk import captions, references
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import PersonShown, Record, ScanFile
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.album import left_out_words
from boxlore.sheets.album_chapters import span_of
from boxlore.sheets.album_indexes import is_name
from boxlore.sheets.handling_advice import advice_for
from boxlore.sheets.picture_on_paper import front_of, has_numbers, heads_of, numbers_of
from boxlore.sheets.print_run import Printing, day_in_words, told_language
from boxlore.sheets.printable_words import clean, language_of, plain_paragraphs
from boxlore.sheets.web_pages_home import MOST_PLACES, decade_subjects, faces_shown, stories_of, story_of
from boxlore.sheets.web_pages_linked_data import linked
from boxlore.sheets.web_pages_map import Town, maps_of
from boxlore.sheets.web_pages_people import once, people_subjects, person_href
from boxlore.sheets.web_pages_places import place_of, place_subjects
from boxlore.sheets.web_pages_search import parts_of, search_files
from boxlore.sheets.web_pages_words import words_file

ON_A_PAGE = 120
"""The most photographs on one page of the gallery."""

IN_A_LIST = 600
"""The most people in one page of a list."""

NAME = 0.034
"""Height of a name on a picture, as a fraction of the picture's height; twice that on a narrow screen."""

SIDE = 0.22
"""How near to a side of a picture a name is set towards its middle, as a fraction of the width."""

NUMBER = 0.045
"""The diameter of a number on a picture, as a fraction of the picture's longer side."""


@dataclass(frozen=True, slots=True)
class PageSide:
    """The prepared pictures of one side: the paths of a large and a small file, with their sizes in pixels."""

    large: str
    size: tuple[int, int]
    small: str = ""
    small_size: tuple[int, int] = (0, 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """What the pages are made from. `fronts`, `backs` and `public` are by item id; `public` has the records as anyone
    may see them.
    """

    records: Sequence[Record]
    fronts: Mapping[str, PageSide]
    backs: Mapping[str, PageSide]
    printing: Printing
    outside: bool
    public: Mapping[str, Record] = field(default_factory=dict)
    faces: Mapping[str, PageSide] = field(default_factory=dict)
    """By the path of a person's page: a small picture of the face."""
    known: Mapping[str, Person] = field(default_factory=dict)
    """Those of whose name, dates and kin the audience may know all, by id."""
    voices: Mapping[str, Sequence[str]] = field(default_factory=dict)
    """By item id: the paths of sound files in which it is told of."""
    towns: Callable[[], Sequence[Town]] = tuple
    """Reads the towns of the gazetteer for the ground of the maps; asked only where there is a map."""


@cache
def environment() -> Environment:
    """The template engine, with what it has compiled. It escapes everything, and fails on a name that is missing."""
    return Environment(
        loader=PackageLoader("boxlore.sheets", "templates/pages"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )


def make_pages(site: Site) -> Iterator[tuple[str, str]]:
    """(path below the folder, text) of every text file."""
    printing, say = site.printing, site.printing.say
    env = environment()
    shared = {
        "title": clean(printing.title),
        "language": language_of(printing.language) or "en",
        "outside": site.outside,
        "audience": say("For anyone.") if site.outside else say("For the family: please do not pass on."),
        "made": say("Made {day}.", day=day_in_words(printing)),
    }

    def page(path: str, template: str, /, *, here: str = "", up: str = "", **data: Any) -> tuple[str, str]:
        return path, env.get_template(template).render(site=shared, say=say, here=here, up=up, **data)

    cards = {record.id: _card(record, site) for record in site.records}
    people = people_subjects(site.records, cards, printing, site.known)
    places, decades = place_subjects(site.records, cards, printing), decade_subjects(site.records, cards, say)
    yield "style.css", env.get_template("style.css").render(theme=printing.theme)
    yield "pages.js", env.get_template("pages.js").render()
    yield "words.js", words_file(say)
    yield from search_files(site.records, cards, people, site.faces, printing.style)
    yield page("index.html", "index.html", here="index.html", **_home(site, cards, people, places, decades))
    yield page("time.html", "time.html", here="time.html", decades=decades)
    yield from _gallery(site, cards, page)
    yield from _stories(site, cards, page)
    when = {
        card["number"]: (each["name"], each["href"])
        for each in decades
        for group in each["groups"]
        for card in group["shown"]
    }
    for index, record in enumerate(site.records):
        before = cards[site.records[index - 1].id] if index else None
        after = cards[site.records[index + 1].id] if index + 1 < len(site.records) else None
        photo = {**_photo(record, site, cards[record.id]), "decade": when[record.number] if record.edtf else None}
        yield page(f"photo/{record.number}.html", "photo.html", up="../", photo=photo, before=before, after=after)
    for subject in (*people, *places, *decades):
        face = site.faces.get(subject["href"])
        for href, part in in_parts(subject):
            yield page(href, "subject.html", up="../", subject=part, face=face)
    yield from _lists(site, people, places, page)
    count = say.counted(len(cards), "{count} photograph is shown here.", "{count} photographs are shown here.")
    left_out = left_out_words(site.records, printing)
    advice = advice_for("pages", say)
    yield page("about.html", "about.html", here="about.html", count=count, left_out=left_out, advice=advice)


def _home(
    site: Site,
    cards: Mapping[str, Any],
    people: Sequence[Mapping[str, Any]],
    places: Sequence[Mapping[str, Any]],
    decades: Sequence[Mapping[str, Any]],
) -> dict[str, Any]:
    """What the first page shows."""
    by_photographs = sorted(places, key=lambda place: -place["photographs"])
    return {
        "under_title": span_of(site.records, site.printing.say),
        "story": story_of(site.records, cards, site.printing),
        "faces": [(subject, site.faces[subject["href"]]) for subject in faces_shown(people, site.faces)],
        "decades": decades,
        "stories": sum(len(record.all("story")) for record in site.records),
        "places": by_photographs[:MOST_PLACES],
        "everybody": len(people),
        "parts_of_photographs": parts_of(len(site.records)),
        "parts_of_people": parts_of(len(people)),
    }


def _lists(
    site: Site, people: Sequence[Mapping[str, Any]], places: Sequence[Mapping[str, Any]], page: Any
) -> Iterator[tuple[str, str]]:
    """The lists of everybody and of all places; a long one goes on on further pages."""
    say = site.printing.say
    named = [("", subject) for subject in people if is_name(subject["name"])]
    described = [(say("Without a name"), subject) for subject in people if not is_name(subject["name"])]
    rows = [(title, subject, site.faces.get(subject["href"])) for title, subject in (*named, *described)]
    chunks = _chunked(rows, IN_A_LIST) or [[]]
    for number, chunk in enumerate(chunks, 1):
        groups: dict[str, list[Any]] = {}
        for title, subject, face in chunk:
            groups.setdefault(title, []).append((subject, face))
        name = _part_name("people.html", number)
        data = {"heading": say("People"), "groups": groups, "page": number, "pages": len(chunks), "name": "people.html"}
        yield page(name, "list.html", here="people.html", **data)
    maps = maps_of(places, site.towns, say)
    yield page("places.html", "places.html", here="places.html", places=places, maps=maps)


def in_parts(subject: Mapping[str, Any]) -> Iterator[tuple[str, Mapping[str, Any]]]:
    """(path, subject) of each page of a subject: as many photographs on each as ON_A_PAGE allows."""
    rows = [(group["name"], card) for group in subject["groups"] for card in group["shown"]]
    chunks = _chunked(rows, ON_A_PAGE) or [[]]
    for number, chunk in enumerate(chunks, 1):
        groups: dict[str, list[Any]] = {}
        for name, card in chunk:
            groups.setdefault(name, []).append(card)
        shown = [{"name": name, "shown": cards} for name, cards in groups.items()]
        yield (
            _part_name(subject["href"], number),
            {**subject, "groups": shown, "page": number, "pages": len(chunks), "file": subject["href"].split("/")[-1]},
        )


def _chunked(rows: Sequence[Any], most: int) -> list[Sequence[Any]]:
    return [rows[at : at + most] for at in range(0, len(rows), most)]


def _part_name(name: str, number: int) -> str:
    """`people.html`, `people-2.html`."""
    return name if number == 1 else f"{name.removesuffix('.html')}-{number}.html"


def _gallery(site: Site, cards: Mapping[str, Any], page: Any) -> Iterator[tuple[str, str]]:
    """All photographs as they are kept, grouped by their containers."""
    say = site.printing.say
    chunks = _chunked(site.records, ON_A_PAGE)
    for number, chunk in enumerate(chunks, 1):
        groups: dict[str, list[Any]] = {}
        for record in chunk:
            box = " · ".join(references.containers(record.mark.path, say)) if record.mark else ""
            groups.setdefault(box or say("Not in a box yet"), []).append(cards[record.id])
        shown = [{"name": box, "shown": rows} for box, rows in groups.items()]
        data = {"groups": shown, "page": number, "pages": len(chunks), "name": "photographs.html"}
        yield page(_part_name("photographs.html", number), "photographs.html", here="photographs.html", **data)


def _stories(site: Site, cards: Mapping[str, Any], page: Any) -> Iterator[tuple[str, str]]:
    """How every story begins, with who told it, in the order of the photographs' dates."""
    chunks = _chunked(stories_of(site.records, cards, site.printing), ON_A_PAGE)
    for number, chunk in enumerate(chunks, 1):
        data = {"stories": chunk, "page": number, "pages": len(chunks), "name": "stories.html"}
        yield page(_part_name("stories.html", number), "stories.html", **data)


def _card(record: Record, site: Site) -> dict[str, Any]:
    """A photograph as it stands in a list of several."""
    front = site.fronts.get(record.id)
    return {
        "number": record.number,
        "title": clean(captions.title(record, site.printing.style)),
        "where_when": clean(captions.where_when(record, site.printing.style)),
        "small": front.small if front else "",
        "small_size": front.small_size if front else (0, 0),
        "large": front.large if front else "",
        "large_size": front.size if front else (0, 0),
        "people": [person_href(person) for person in once(record.people)],
    }


def _photo(record: Record, site: Site, card: Mapping[str, Any]) -> dict[str, Any]:
    """A photograph as its own page shows it."""
    style = site.printing.style
    lines = captions.lines(record, "sheet", _numbered(record, style))
    place = place_of(record, style.say)
    public, titled = site.public.get(record.id), record.first("title")
    worked_out = [captions.sentence(captions.worked_out_line(record, style))]
    return {
        **card,
        "lines": [clean(line) for line in (*lines.values(), *captions.own_lines(record), *worked_out) if line],
        "title_language": told_language(titled.language if titled else site.printing.language, site.printing),
        "care": clean(record.words("care")),
        "front": _front(record, site),
        "back": _back(record, site),
        "stories": [
            {
                "paragraphs": plain_paragraphs(statement.words),
                "language": told_language(statement.language, site.printing),
                "by": clean(statement.said_by),
            }
            for statement in record.all("story")
        ],
        "voices": site.voices.get(record.id, ()),
        "written": [clean(captions.quoted(statement.words, style.say)) for statement in record.all("inscription")],
        "people": [_named(person, style.say) for person in once(record.people)],
        "places": [(clean(place.name), place.href)] if place else [],
        "source": clean(captions.sentence(captions.source_line(record, style))),
        "reference": clean(references.reference(record, style)),
        "linked": Markup(linked(public, site.printing)) if public else "",  # json with < escaped
    }


def _named(person: PersonShown, say: Say) -> tuple[str, str]:
    """The name with its doubt, and the path of the person's page."""
    return clean(captions.name_of(person, captions.Style(say=say), among=True)), person_href(person)


def _numbered(record: Record, style: captions.Style) -> captions.Style:
    return replace(style, numbers=has_numbers(record))


def _front(record: Record, site: Site) -> dict[str, Any]:
    """The picture of the front with the numbers of its people, in pixels of the large picture."""
    side, scan = site.fronts.get(record.id), front_of(record)
    if side is None or scan is None:
        return {"large": ""}
    wide, high = side.size
    diameter = NUMBER * max(wide, high)
    discs = numbers_of(heads_of(record.shown(), scan), diameter / wide, diameter / high) if has_numbers(record) else []
    numbers = [
        {
            "number": disc["number"],
            "x": round(disc["x"] * wide, 1),
            "y": round(disc["y"] * high, 1),
            "r": round(diameter / 2, 1),
            "size": round(diameter * (0.55 if disc["number"] > 9 else 0.7), 1),
        }
        for disc in discs
    ]
    return {
        "large": side.large,
        "size": side.size,
        "alt": clean(captions.alt_text(record, site.printing.style)),
        "numbers": numbers,
        "heads": _heads(record, scan, side, site.printing.say),
        "enlarge": site.printing.say("Enlarge the picture"),
    }


def _heads(record: Record, scan: ScanFile, side: PageSide, say: Say) -> list[dict[str, Any]]:
    """The heads of those who are marked, in pixels of the large picture, each with a name and the path of a page."""
    wide, high = side.size
    by_number = {person.number: person for person in record.shown()}
    heads = []
    for number, (x, y, w, h) in heads_of(record.shown(), scan):
        name, href = _named(by_number[number], say)
        middle = x + w / 2
        anchor = "start" if middle < SIDE else "end" if middle > 1 - SIDE else "middle"
        at = {"start": x, "middle": middle, "end": x + w}[anchor] * wide
        above = y > NAME * 2
        heads.append(
            {
                "name": name,
                "href": href,
                "box": [round(part, 1) for part in (x * wide, y * high, w * wide, h * high)],
                "anchor": anchor,
                "x": round(at, 1),
                "y": round((y - 0.015 if above else y + h + NAME * 1.2) * high, 1),
            }
        )
    return heads


def _back(record: Record, site: Site) -> dict[str, Any]:
    say, side = site.printing.say, site.backs.get(record.id)
    if side is None:
        return {"large": ""}
    written = captions.sentence(captions.inscription_line(record, site.printing.style))
    return {
        "large": side.large,
        "size": side.size,
        "alt": clean(" ".join(part for part in (say("The back."), written) if part)),
        "numbers": [],
        "heads": [],
        "enlarge": say("Enlarge the back"),
    }
