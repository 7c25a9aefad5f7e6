"""All clues of a collection, one reader after another. A source of clues more is a module beside this one, and a line
here."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from boxlore.core.dates.phrases import AS_TOLD, PhraseSettings
from boxlore.core.evidence import (
    ages,
    borders,
    denials,
    events,
    lives,
    names_of_cities,
    names_then,
    object_clues,
    occasions,
    relations,
    states,
    studios,
    times_told,
    told_dates,
    wedding_pictures,
)
from boxlore.core.evidence.claims import Claim, of_death, of_event, of_item
from boxlore.core.evidence.leaning import Leaning, pieces
from boxlore.core.evidence.lives import ToldOfPerson
from boxlore.core.evidence.sentences import Sentence, sentences, teller_of, who_is_shown
from boxlore.core.evidence.weddings import Weddings, clues_of_weddings
from boxlore.core.evidence.working_out import days_of
from boxlore.core.people.person import Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record


@dataclass(frozen=True, slots=True, kw_only=True)
class Background:
    """What words may lean on: everybody, of whom a name may be, and the time line; how dates are meant; and whether the
    pictures are all there are, without which nobody knows which is “the one before”."""

    people: Registry
    happened: Sequence[FamilyEvent] = ()
    settings: PhraseSettings = AS_TOLD
    has_all_pictures: bool = True


def all_clues(
    records: Sequence[Record],
    people: Registry,
    rows: Sequence[ToldOfPerson],
    happened: Iterable[FamilyEvent],
    background: Background | None = None,
) -> Iterator[Claim]:
    """Every claim that bears on the days of pictures and lives; `rows` are what is told of people."""
    told = list(happened)
    background = background or Background(people=people, happened=told)
    weddings = Weddings(background.people, background.happened)
    leaning = Leaning(background.people, background.happened, weddings, background.settings)
    yield from lives.clues_of_lives(people, rows)
    yield from clues_of_weddings(weddings, people)
    yield from events.clues_of_events(told)
    deaths = {of_death(person.id) for person in people.values() if person.died}
    for event in told:
        claims = list(_of_event(event, leaning)) if event.own else []
        yield from claims
        if event.told_kind == "death":
            deaths.update(*map(days_of, claims))
    numbered = relations.Numbered(records, are_all=background.has_all_pictures)
    born_as: dict[str, set[str]] = {}
    for row in rows:
        if row.field == "born_as":
            born_as.setdefault(people[row.person].id, set()).add(row.words)
    promotions = names_then.promotions_of(told, background.people)
    years_told = list(studios.years_told(records, background.settings))
    for record in records:
        settings = _of_its_place(background.settings, record)
        said = list(sentences(record))
        yield from _dates(record, leaning, numbered, settings)
        is_of_the_dead = any(
            occasions.is_of_the_dead(view.words) for name in ("occasion", "title", "story") for view in record.all(name)
        )
        yield from lives.clues_of_picture(record, people, () if is_of_the_dead else deaths)
        yield from ages.clues(record, said, people, leaning)
        yield from states.clues(record, said, people, leaning)
        yield from events.clues(record)
        yield from _occasions(record, said, leaning)
        yield from wedding_pictures.clues(record, said, leaning)
        yield from times_told.clues(record, said, leaning)
        yield from relations.clues(record, said, numbered, settings)
        yield from names_then.clues(record, people, born_as, weddings, promotions)
        yield from names_of_cities.clues(record)
        yield from studios.clues(record, years_told, settings)
        yield from object_clues.clues(record, said)
        yield from borders.clues(record, said, settings)


def _of_event(event: FamilyEvent, leaning: Leaning) -> Iterator[Claim]:
    """What an event's own name says (“William died in the mine”), else less of it: whose death it was, and no more."""
    claim = Claim(words=f"the time line has “{event.name}”", source=event.said or "the family's time line")
    ways = [event.name]
    if event.told_kind == "death":
        ways += [event.name[: match.start()] for match in reversed([*_HOW.finditer(event.name)])]
    for words in ways if not any(event.id == wedding.id for wedding in leaning.weddings.events) else ("",):
        claims = list(
            occasions.clues_of_words(claim, of_event(event.id), words, leaning, narrator="", shown=(), but=event.id)
        )
        if claims:
            yield from claims
            return


_HOW = re.compile(
    r",? (?:in|at|on|of|from|near|during|by|im|in|am|an|bei|auf|von|à|au|aux|en|dans|de|sur|a|al|i|på|vid|ved|op|bij)\b"
)
"""Where and of what somebody died begins with one of these; ours, common practice, no source."""


def _of_its_place(settings: PhraseSettings, record: Record) -> PhraseSettings:
    """The half of the world and the country of the picture's place."""
    place = record.place
    if place is None:
        return settings
    if place.lat is not None:
        settings = replace(settings, hemisphere="south" if place.lat < 0 else "north")
    return replace(settings, countries=(place.country_code,)) if place.country_code else settings


def _dates(record: Record, leaning: Leaning, numbered: relations.Numbered, settings: PhraseSettings) -> Iterator[Claim]:
    denied = denials.denials(record)
    for view in told_dates.rows(record):
        claim = told_dates.claim_of(record, view)
        leans = [] if view.confirmed else list(relations.of_words(record, view, view.words, numbered, settings))
        if not leans and not view.confirmed and not told_dates.has_a_year(view.words):
            words = _without_who(view.words, leaning, teller_of(view), who_is_shown(record))
            for lean in leaning.of(words, narrator=teller_of(view), shown=who_is_shown(record), settings=settings):
                if lean.person and not ages.may_be(leaning.person(lean.person), view.words):
                    continue
                leans += occasions.of_lean(claim, of_item(record.id), lean)
        yield from leans
        for by_itself in () if leans else told_dates.by_itself(claim, record, view, settings):
            yield from denials.held_against(record, denied, by_itself, view)


def _without_who(words: str, leaning: Leaning, narrator: str, shown: Sequence[str]) -> str:
    """Words of a date without who is in the picture, where they begin with that: “Mom, before I was born”."""
    head, _, behind = words.partition(", ")
    told = pieces(head)
    if not behind or len(told) > MOST_OF_A_NAME:
        return words
    return words if leaning.named(head, told, narrator).keys().isdisjoint(shown) else behind


MOST_OF_A_NAME = 3
"""Words that somebody in a picture is called with at most (common practice, no source)."""


def _occasions(record: Record, said: Sequence[Sentence], leaning: Leaning) -> Iterator[Claim]:
    shown = who_is_shown(record)
    for sentence in said:
        if sentence.view.field == "story" and sentence.is_first:
            claim = told_dates.told(sentence.view, f"{record.number}: “{sentence.words}”")
            teller = teller_of(sentence.view)
            yield from occasions.customs_told(claim, of_item(record.id), sentence.words, leaning, teller, shown)
    for name in ("occasion", "title"):
        for view in record.all(name):
            claim = told_dates.told(view, f"{record.number} is of “{' '.join(view.words.split())}”")
            yield from occasions.clues_of_words(
                claim, of_item(record.id), view.words, leaning, narrator=teller_of(view), shown=who_is_shown(record)
            )
