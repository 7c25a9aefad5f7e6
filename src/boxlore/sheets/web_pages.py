"""The family's web pages: a folder of plain HTML that opens in any browser from a stick, without a network.

All words are escaped, and a policy in every page forbids loading anything from elsewhere (CSP level 3). The pages aim
at WCAG 2.2 AA. Only the search and the enlarged view need a script.
"""

import hashlib
import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from boxlore.core.crosswalk import captions
from boxlore.core.findings import several
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.statements import fold
from boxlore.sheets.album import left_out_words
from boxlore.sheets.album_indexes import is_name
from boxlore.sheets.handling_advice import advice_for
from boxlore.sheets.picture_on_paper import front_of, has_numbers, heads_of, numbers_of
from boxlore.sheets.print_run import Printing, day_in_words
from boxlore.sheets.printable_words import clean, language_of, plain_paragraphs
from boxlore.sheets.web_pages_linked_data import linked
from boxlore.sheets.web_pages_places import place_of, place_subjects

ON_A_PAGE = 120
"""The most photographs on one page of the gallery."""

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


def environment() -> Environment:
    """The template engine. It escapes everything, and fails on a name that is missing in the data."""
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
    printing = site.printing
    env = environment()
    shared = {
        "title": clean(printing.title),
        "language": language_of(printing.language) or "en",
        "outside": site.outside,
        "audience": "For anyone." if site.outside else "For the family: please do not pass on.",
        "made": day_in_words(printing.printed_on),
    }

    def page(name: str, template: str, *, here: str = "", up: str = "", **data: Any) -> tuple[str, str]:
        return name, env.get_template(template).render(site=shared, here=here, up=up, **data)

    cards = {record.id: _card(record, site) for record in site.records}
    yield "style.css", env.get_template("style.css").render(theme=printing.theme)
    yield "pages.js", env.get_template("pages.js").render()
    yield "search-data.js", _search_data(site.records, cards)
    yield from _gallery(site, cards, page)
    people, places = _people(site, cards), place_subjects(site.records, cards)
    for index, record in enumerate(site.records):
        before = cards[site.records[index - 1].id] if index else None
        after = cards[site.records[index + 1].id] if index + 1 < len(site.records) else None
        photo = _photo(record, site, cards[record.id])
        yield page(f"photo/{record.number}.html", "photo.html", up="../", photo=photo, before=before, after=after)
    for subject in (*people, *places):
        yield page(subject["href"], "subject.html", up="../", subject=subject)
    groups: list[dict[str, Any]] = [
        {"title": "", "rows": [subject for subject in people if is_name(subject["name"])]},
        {"title": "Without a name", "rows": [subject for subject in people if not is_name(subject["name"])]},
    ]
    filled_groups = [group for group in groups if group["rows"]]
    yield page("people.html", "list.html", here="people.html", heading="People", groups=filled_groups)
    place_groups = [{"title": "", "rows": places}] if places else []
    yield page("places.html", "list.html", here="places.html", heading="Places", groups=place_groups)
    count = f"{_photographs(len(cards))} {'are' if len(cards) != 1 else 'is'} shown here."
    left_out = left_out_words(site.records, printing)
    advice = advice_for("pages")
    yield page("about.html", "about.html", here="about.html", count=count, left_out=left_out, advice=advice)


def _gallery(site: Site, cards: Mapping[str, Any], page: Any) -> Iterator[tuple[str, str]]:
    """The pages of the gallery, with the photographs grouped by their containers."""
    chunks = [site.records[at : at + ON_A_PAGE] for at in range(0, len(site.records), ON_A_PAGE)]
    for number, chunk in enumerate(chunks, 1):
        groups: dict[str, list[Any]] = {}
        for record in chunk:
            box = " · ".join(f"{kind.capitalize()} {label}" for kind, label in record.mark.path) if record.mark else ""
            groups.setdefault(box or "Not in a box yet", []).append(cards[record.id])
        name = "index.html" if number == 1 else f"index-{number}.html"
        shown = [{"name": box, "shown": rows} for box, rows in groups.items()]
        yield page(name, "index.html", here="index.html", groups=shown, page=number, pages=len(chunks))


def _card(record: Record, site: Site) -> dict[str, Any]:
    """A photograph as it stands in a list of several."""
    front = site.fronts.get(record.id)
    return {
        "number": record.number,
        "title": clean(captions.title(record, brackets=site.printing.style.brackets)),
        "where_when": clean(captions.where_when(record, site.printing.style)),
        "small": front.small if front else "",
        "small_size": front.small_size if front else (0, 0),
    }


def _search_data(records: Iterable[Record], cards: Mapping[str, Any]) -> str:
    """The data of the search, as a script, because a page opened from a disk may not load JSON.

    `n` is the number, `t` the title, `w` where and when, `p` the small picture, `f` the words to search. These are as
    they were told, and the page folds them: folded words are other words to whoever looks for names in them.
    """
    rows = []
    for record in records:
        card = cards[record.id]
        words = [captions.title(record), captions.caption(record, "full"), captions.reference(record)]
        words += [statement.words for statement in (*record.all("inscription"), *record.all("keyword"))]
        row = {"n": record.number, "t": card["title"], "w": card["where_when"], "p": card["small"]}
        rows.append(row | {"f": [line for line in words if line]})
    lines = ",\n".join(json.dumps(row, ensure_ascii=False).replace("<", "\\u003c") for row in rows)
    return f"window.boxlorePages = [\n{lines}\n];\n"


def _photo(record: Record, site: Site, card: Mapping[str, Any]) -> dict[str, Any]:
    """A photograph as its own page shows it."""
    style = site.printing.style
    lines = captions.lines(record, "sheet", _numbered(record, style))
    place = place_of(record)
    public = site.public.get(record.id)
    return {
        **card,
        "lines": [clean(line) for line in (*lines.values(), *captions.own_lines(record))],
        "care": clean(record.words("care")),
        "front": _front(record, site),
        "back": _back(record, site),
        "stories": [
            {
                "paragraphs": plain_paragraphs(statement.words),
                "language": language_of(statement.language) or language_of(site.printing.language) or "en",
                "by": clean(statement.said_by),
            }
            for statement in record.all("story")
        ],
        "written": [clean(f"“{captions.one_line(statement.words)}”") for statement in record.all("inscription")],
        "people": [(clean(person.name), person_href(person)) for person in _once(record.people)],
        "places": [(clean(place.name), place.href)] if place else [],
        "source": clean(captions.sentence(captions.source_line(record))),
        "reference": clean(captions.reference(record)),
        "linked": Markup(linked(public, site.printing)) if public else "",  # json with < escaped
    }


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
        "enlarge": "Enlarge the picture",
    }


def _back(record: Record, site: Site) -> dict[str, Any]:
    side = site.backs.get(record.id)
    if side is None:
        return {"large": ""}
    written = captions.sentence(captions.inscription_line(record))
    return {
        "large": side.large,
        "size": side.size,
        "alt": clean(" ".join(part for part in ("The back.", written) if part)),
        "numbers": [],
        "enlarge": "Enlarge the back",
    }


def _once(people: Iterable[PersonShown]) -> list[PersonShown]:
    """The people, each only once."""
    return list({person_href(person): person for person in people}.values())


def person_href(person: PersonShown) -> str:
    """The path of a person's page. It rests on the id, else the name, so that it is the same at every run."""
    key = person.person or fold(person.name)
    return f"person/{hashlib.sha256(key.encode()).hexdigest()[:16]}.html"


_ROLES = {"person": "Shown", "named": "Named, not shown", "photographer": "Photographs by them"}


def _people(site: Site, cards: Mapping[str, Any]) -> list[dict[str, Any]]:
    """A page for each person, with the photographs in groups by the person's role; sorted by name."""
    by_href: dict[str, dict[str, Any]] = {}
    for record in site.records:
        for person in record.people:
            name = site.printing.sort_names.get(person.person, person.name)
            subject = by_href.setdefault(person_href(person), {"name": clean(person.name), "sort": name, "by_role": {}})
            rows = subject["by_role"].setdefault(person.role, {})
            rows[record.id] = cards[record.id]
    subjects = [
        {
            "href": href,
            "name": entry["name"],
            "lines": [],
            "count": _photographs(len({ident for rows in entry["by_role"].values() for ident in rows})),
            "groups": [
                {"name": words, "shown": list(entry["by_role"][role].values())}
                for role, words in _ROLES.items()
                if role in entry["by_role"]
            ],
            "sort": entry["sort"],
        }
        for href, entry in by_href.items()
    ]
    return sorted(subjects, key=lambda entry: (fold(entry["sort"]), entry["href"]))


def _photographs(count: int) -> str:
    return several(count, "photograph")
