"""The home of the family's pages: one story, faces, the years, places. And the photographs in the order of time."""

from collections.abc import Mapping, Sequence
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.album_chapters import Chapter, decade_in_short, decades, in_time, photographs, years_known
from boxlore.sheets.album_indexes import is_name
from boxlore.sheets.print_run import Printing, told_language
from boxlore.sheets.printable_words import clean, plain_paragraphs

MOST_FACES, MOST_PLACES = 12, 12

LONGEST_TELLING = 420
"""How many letters of the story on the first page are shown at most."""
BEGINNING = 160
"""How many letters of each story stand in the list of all."""


def story_of(records: Sequence[Record], cards: Mapping[str, Any], printing: Printing) -> dict[str, Any] | None:
    """The story of the first page: of those with a picture the one that tells most, cut if it is long; None if there
    is none. Of those that are as long, the first in the order of the boxes.
    """
    told = [
        (min(len(story.words), LONGEST_TELLING), -at, record, story)
        for at, record in enumerate(records)
        if cards[record.id]["large"] and not record.words("care")
        for story in record.all("story")
    ]
    if not told:
        return None
    *_, record, story = max(told, key=lambda row: row[:2])
    return {
        "card": cards[record.id],
        "alt": clean(captions.alt_text(record, printing.style)),
        "paragraphs": _beginning(story),
        "language": told_language(story.language, printing),
        "by": clean(story.said_by),
    }


def stories_of(records: Sequence[Record], cards: Mapping[str, Any], printing: Printing) -> list[dict[str, Any]]:
    """How every story begins, by the dates of the photographs."""
    return [
        {
            "card": cards[record.id],
            "begins": " ".join(_beginning(story, BEGINNING)),
            "language": told_language(story.language, printing),
            "by": clean(story.said_by),
        }
        for record in in_time(records)
        for story in record.all("story")
    ]


def _beginning(story: StatementView, longest: int = LONGEST_TELLING) -> list[str]:
    paragraphs = plain_paragraphs(story.words)
    whole = " ".join(paragraphs)
    return paragraphs if len(whole) <= longest else [f"{whole[:longest].rsplit(' ', 1)[0]} …"]


def faces_shown(people: Sequence[Mapping[str, Any]], faces: Mapping[str, Any]) -> list[Mapping[str, Any]]:
    """Those of the first page: of all with a face, whoever is in the most photographs."""
    with_face = [subject for subject in people if subject["href"] in faces and is_name(subject["name"])]
    return sorted(with_face, key=lambda subject: -subject["photographs"])[:MOST_FACES]


def decade_subjects(records: Sequence[Record], cards: Mapping[str, Any], say: Say) -> list[dict[str, Any]]:
    """A page for each decade, its photographs by year; those without a date last."""
    return [_decade(chapter, cards, say) for chapter in decades(records, say)]


def _decade(chapter: Chapter, cards: Mapping[str, Any], say: Say) -> dict[str, Any]:
    groups: dict[str, list[Any]] = {}
    for record in chapter.records:
        groups.setdefault(_year(record, say), []).append(cards[record.id])
    unsure = groups.pop("", [])
    rows = [{"name": year, "shown": shown} for year, shown in groups.items()]
    if unsure:
        rows.append({"name": say("The year is not sure") if chapter.decade else say("Photographs"), "shown": unsure})
    with_picture = [cards[record.id] for record in chapter.records if cards[record.id]["small"]]
    return {
        "href": f"time/{f'{chapter.decade}s' if chapter.decade else 'undated'}.html",
        "name": chapter.title,
        "short": decade_in_short(chapter.decade, say) if chapter.decade else chapter.title,
        "lines": [],
        "count": photographs(len(chapter.records), say),
        "photographs": len(chapter.records),
        "numbers": [record.number for record in chapter.records],
        "life": "",
        "kin": [],
        "picture": with_picture[0] if with_picture else None,
        "groups": rows,
    }


def _year(record: Record, say: Say) -> str:
    """The year, where the date says one alone; `About 1910` where it is not sure, or worked out."""
    years = years_known(record)
    if not years or years[0] != years[1]:
        return ""
    return say("About {year}", year=years[0]) if record.edtf[-1:] in ("", "~", "?", "%") else str(years[0])
