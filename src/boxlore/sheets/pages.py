"""The family's web pages: one folder of plain HTML that opens from a stick in any browser, without script or network.

Words enter only as text (autoescape); a policy in every page forbids anything from elsewhere (CSP level 3). Written
for WCAG 2.2 AA. Search and the enlarged view need a little script; everything else does without.
"""

import hashlib
import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from boxlore.core.crosswalk import captions
from boxlore.core.records.in_force import PersonShown, Record
from boxlore.core.statements import fold
from boxlore.sheets.album import is_name, left_out_words
from boxlore.sheets.figure import front_of, heads_of, needs, numbers_of
from boxlore.sheets.handling_advice import advice_for
from boxlore.sheets.pages_linked import linked
from boxlore.sheets.places_pages import place_of, place_subjects
from boxlore.sheets.print_run import Printing, day_in_words
from boxlore.sheets.safe_words import clean, language_of, plain_paragraphs

ON_A_PAGE = 120
"""Photographs on one page of the gallery."""

NUMBER = 0.045
"""Across a number on a picture, in parts of the picture's long side."""


@dataclass(frozen=True, slots=True)
class PageSide:
    """A prepared picture of one side: its large and small file below the folder, and the size of both in pixels."""

    large: str
    size: tuple[int, int]
    small: str = ""
    small_size: tuple[int, int] = (0, 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """What the pages are made from. `fronts` and `backs` are by item id; `public` holds what anyone may know."""

    records: Sequence[Record]
    fronts: Mapping[str, PageSide]
    backs: Mapping[str, PageSide]
    printing: Printing
    outside: bool
    public: Mapping[str, Record] = field(default_factory=dict)


def environment() -> Environment:
    """Templates that escape everything and fail on a missing name."""
    return Environment(
        loader=PackageLoader("boxlore.sheets", "templates/pages"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )


def make_pages(site: Site) -> Iterator[tuple[str, str]]:
    """Every text file of the folder: its path below it, and what is in it."""
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
    for at, record in enumerate(site.records):
        before = cards[site.records[at - 1].id] if at else None
        after = cards[site.records[at + 1].id] if at + 1 < len(site.records) else None
        one = _photo(record, site, cards[record.id])
        yield page(f"photo/{record.number}.html", "photo.html", up="../", one=one, before=before, after=after)
    for subject in (*people, *places):
        yield page(subject["href"], "subject.html", up="../", subject=subject)
    groups: list[dict[str, Any]] = [
        {"title": "", "rows": [one for one in people if is_name(one["name"])]},
        {"title": "Without a name", "rows": [one for one in people if not is_name(one["name"])]},
    ]
    shown = [group for group in groups if group["rows"]]
    yield page("people.html", "list.html", here="people.html", heading="People", groups=shown)
    listed = [{"title": "", "rows": places}] if places else []
    yield page("places.html", "list.html", here="places.html", heading="Places", groups=listed)
    count = f"{_photographs(len(cards))} {'are' if len(cards) != 1 else 'is'} shown here."
    left = left_out_words(site.records, printing)
    yield page("about.html", "about.html", here="about.html", count=count, left_out=left, advice=advice_for("pages"))


def _gallery(site: Site, cards: Mapping[str, Any], page: Any) -> Iterator[tuple[str, str]]:
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
    front = site.fronts.get(record.id)
    return {
        "number": record.number,
        "title": clean(captions.title(record, brackets=site.printing.style.brackets)),
        "where_when": clean(captions.where_when(record)),
        "small": front.small if front else "",
        "small_size": front.small_size if front else (0, 0),
    }


def _search_data(records: Iterable[Record], cards: Mapping[str, Any]) -> str:
    """The words to search, folded as the whole program folds them, as a script that any page may load from a disk."""
    rows = []
    for record in records:
        card = cards[record.id]
        words = [captions.title(record), captions.caption(record, "full"), captions.reference(record)]
        words += [told.words for told in (*record.all("inscription"), *record.all("keyword"))]
        row = {"n": record.number, "t": card["title"], "w": card["where_when"], "p": card["small"]}
        rows.append(row | {"f": fold(" ".join(words))})
    lines = ",\n".join(json.dumps(row, ensure_ascii=False).replace("<", "\\u003c") for row in rows)
    return f"window.boxlorePages = [\n{lines}\n];\n"


def _photo(record: Record, site: Site, card: Mapping[str, Any]) -> dict[str, Any]:
    style = site.printing.style
    said = captions.lines(record, "sheet", _numbered(record, style))
    place = place_of(record)
    public = site.public.get(record.id)
    return {
        **card,
        "lines": [clean(line) for line in said.values()],
        "care": clean(record.words("care")),
        "front": _front(record, site),
        "back": _back(record, site),
        "stories": [
            {
                "paragraphs": plain_paragraphs(told.words),
                "language": language_of(told.language) or language_of(site.printing.language) or "en",
                "by": clean(told.said_by),
            }
            for told in record.all("story")
        ],
        "written": [clean(f"“{captions.one_line(told.words)}”") for told in record.all("inscription")],
        "people": [(clean(one.name), person_href(one)) for one in _once(record.people)],
        "places": [(clean(place.name), place.href)] if place else [],
        "source": clean(captions.sentence(captions.source_line(record))),
        "reference": clean(captions.reference(record)),
        "linked": Markup(linked(public, site.printing)) if public else "",  # json with < escaped
    }


def _numbered(record: Record, style: captions.Style) -> captions.Style:
    return captions.Style(brackets=style.brackets, numbers=needs(record), kin=style.kin)


def _front(record: Record, site: Site) -> dict[str, Any]:
    side, scan = site.fronts.get(record.id), front_of(record)
    if side is None or scan is None:
        return {"large": ""}
    wide, high = side.size
    disc = NUMBER * max(wide, high)
    found = numbers_of(heads_of(record.shown(), scan), disc / wide, disc / high) if needs(record) else []
    numbers = [
        {
            "number": one["number"],
            "x": round(one["x"] * wide, 1),
            "y": round(one["y"] * high, 1),
            "r": round(disc / 2, 1),
            "size": round(disc * (0.55 if one["number"] > 9 else 0.7), 1),
        }
        for one in found
    ]
    return {
        "large": side.large,
        "size": side.size,
        "alt": clean(captions.alt_text(record)),
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
    return list({person_href(one): one for one in people}.values())


def person_href(one: PersonShown) -> str:
    """The page of a person, the same at every run: by its id, else by the name."""
    key = one.person or fold(one.name)
    return f"person/{hashlib.sha256(key.encode()).hexdigest()[:16]}.html"


_ROLES = {"person": "PersonShown", "named": "Named, not shown", "photographer": "Photographs by them"}


def _people(site: Site, cards: Mapping[str, Any]) -> list[dict[str, Any]]:
    found: dict[str, dict[str, Any]] = {}
    for record in site.records:
        for one in record.people:
            name = site.printing.sort_names.get(one.person, one.name)
            subject = found.setdefault(person_href(one), {"name": clean(one.name), "sort": name, "by_role": {}})
            rows = subject["by_role"].setdefault(one.role, {})
            rows[record.id] = cards[record.id]
    subjects = [
        {
            "href": href,
            "name": one["name"],
            "lines": [],
            "count": _photographs(len({ident for rows in one["by_role"].values() for ident in rows})),
            "groups": [
                {"name": words, "shown": list(one["by_role"][role].values())}
                for role, words in _ROLES.items()
                if role in one["by_role"]
            ],
            "sort": one["sort"],
        }
        for href, one in found.items()
    ]
    return sorted(subjects, key=lambda one: (fold(one["sort"]), one["href"]))


def _photographs(count: int) -> str:
    return f"{count} photograph{'s' if count != 1 else ''}"
