"""Clues of what is told of somebody in a picture that is no number: “not yet walking”, “a widow already”.

Also how long a couple had been married. Whose it is must be clear as for an age (`core.rules.ages_told`); all of it is
likely."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from functools import cache

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.evidence.age_clauses import LAP
from boxlore.core.evidence.claims import Claim, after, of_birth, of_death, of_item, weaker
from boxlore.core.evidence.leaning import Leaning, pieces, pieces_of_names
from boxlore.core.evidence.network import Limit
from boxlore.core.evidence.occasions import MINE
from boxlore.core.evidence.sentences import Sentence, teller_of, who_is_shown
from boxlore.core.evidence.states_table import MARRIED_FOR, STATES, State
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person, Registry
from boxlore.core.people.who_is_where.item_words import is_noun_of_one
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.rules.ages_told import whose
from boxlore.core.statements import Sure, fold

_NOT = re.compile(r"\b(?:not|no|never|isn't|wasn't|nicht|nie|pas|mitte)\s+(?:\w+\s+)?$")


def clues(record: Record, sentences: Iterable[Sentence], people: Registry, leaning: Leaning) -> Iterator[Claim]:
    registered = [person for shown in record.shown() if (person := people.get(shown.person)) is not None]
    for sentence in sentences:
        words = fold(sentence.words)
        if not _any().search(words):
            continue
        for pattern, state in _patterns():
            match = pattern.search(words)
            if match is None or _NOT.search(words[: match.start()]) or _is_of_what_follows(words, match, state):
                continue
            person = whose(sentence.words, match.start(), registered) or _named_before(
                sentence, match.start(), leaning, registered
            )
            if person is None and state.of == "wedding":
                person = _of_a_couple(sentence.words[: match.start()], leaning, registered)
            if state.of == "others":
                parents = {parent for person in registered for parent in person.parents}
                person = next((person for person in registered if person.id in parents), None)
            if person is not None:
                claim = told(sentence.view, f"{person.name} in {record.number}: “{one_line(sentence.words)}”")
                claim = replace(claim, sure=weaker(claim.sure, Sure.LIKELY))
                limits = tuple(_limits(record, person, state, people, leaning))
                if limits:
                    yield replace(claim, limits=limits)
                break
        for pattern, instead in _married():
            if match := pattern.search(words):
                yield from _married_for(record, sentence.view, sentence.words[: match.start()], instead.format(
                    count=match["count"], name="{name}"), people, leaning)  # fmt: skip
                break


def _is_of_what_follows(words: str, match: re.Match[str], state: State) -> bool:
    """Whether a stage of a life is that of a noun right behind it, which is no child: “a newborn calf”."""
    noun = _NOUN_BEHIND.match(words[match.end() :])
    return state.of == "birth" and noun is not None and not is_noun_of_one(noun[1]) and noun[1] not in _SMALL_BEHIND


_NOUN_BEHIND = re.compile(r" ([^\W\d_]+)(?<!ing)\b")
_SMALL_BEHIND = frozenset(
    "a and at behind beside by here in of on or so still that the then there this was when who with yet und im in am "
    "auf mit an bei ja koos siin et sur avec dans y con en e och i på med og her hier is".split()
)
"""Words behind a stage of a life that begin something else."""


def _named_before(sentence: Sentence, at: int, leaning: Leaning, registered: Iterable[Person]) -> Person | None:
    """Whoever is in the picture whose name or word of kin is all that stands before (“Dad's last Christmas”)."""
    before = LAP.sub("", sentence.words[:at])
    teller = teller_of(sentence.view)
    tokens = lex(nfc(before))
    if any("i" in token.kinds for token in tokens) and all(token.is_any(_OF_ME) for token in tokens):
        return next((person for person in registered if person.id == teller), None)
    named = leaning.named(before, pieces(before), teller)
    meant = [person for person in registered if person.id in named]
    known = {piece for phrase in leaning.kin_told(before, teller) for piece in pieces(phrase)} | pieces_of_names(meant)
    told_before = set(re.findall(r"[^\W\d_]{2,}", before.casefold()))
    return meant[0] if len(meant) == 1 and told_before <= known | MINE | _SMALL else None


_OF_ME = frozenset(("i", "was", "comma"))
_SMALL = frozenset("was is already then still by now war schon oli juba était déjà".split())


def _of_a_couple(before: str, leaning: Leaning, registered: Sequence[Person]) -> Person | None:
    """One of the couple that is the whole picture, where nobody else is named before (“Ivy and Tom, newly married”)."""
    if len(registered) != 2 or registered[1].id not in registered[0].spouses:
        return None
    known = pieces_of_names(registered) | _OF_A_COUPLE
    return registered[0] if set(pieces(before)) <= known else None


def _married_for(
    record: Record, view: StatementView, told_before: str, instead: str, people: Registry, leaning: Leaning
) -> Iterator[Claim]:
    shown = who_is_shown(record)
    named = leaning.named(told_before, pieces(told_before), teller_of(view))
    if set(pieces(told_before)) - pieces_of_names(named.values()) - _OF_A_COUPLE:
        return
    named = named or {ident: people[ident] for ident in shown if ident in people}
    couples = {couple for ident in named for couple in leaning.weddings.couples_of(ident)}
    couples = {couple for couple in couples if len(named) == 1 or set(named) >= set(couple)}
    if len(couples) != 1:
        return
    (couple,) = couples
    name = next((people[ident].name for ident in couple if ident in people), "")
    for lean in leaning.of(instead.format(name=name), shown=couple):
        claim = told(view, f"{record.number}: “{one_line(view.words)}”")
        limits = after(of_item(record.id), lean.on, lean.least, lean.most)
        yield replace(claim, sure=weaker(claim.sure, Sure.LIKELY), limits=limits)


def _limits(record: Record, person: Person, state: State, people: Registry, leaning: Leaning) -> Iterator[Limit]:
    day = of_item(record.id)
    if state.of == "others":
        shown = set(who_is_shown(record))
        children = [child for child in people.values() if person.id in child.parents]
        if len([child for child in children if child.id in shown]) == 1:
            for child in children:
                if child.id not in shown:
                    yield Limit(day, of_birth(child.id), 0)
        return
    if state.of == "widowed":
        couples = leaning.weddings.couples_of(person.id)
        other_parents = {parent for child in people.values() if person.id in child.parents for parent in child.parents}
        couple = couples[0] if len(couples) == 1 else () if couples else tuple(sorted(other_parents))
        others = [of_death(other) for other in couple if other != person.id]
        others = others if len(others) == 1 else []
        on = others[0] if others else ""
    else:
        on = leaning.weddings.of(person.id) if state.of == "wedding" else (
            of_birth if state.of == "birth" else of_death)(person.id)  # fmt: skip
    if on:
        yield from after(day, on, state.least, state.most - 1 if state.of == "birth" and state.most else state.most)


_OF_A_COUPLE = frozenset(
    "and und ja y et e the they both couple my parents had have by then here were are we we'd they'd sie wir waren nad "
    "me olid olime hatten d".split()
)


@cache
def _patterns() -> tuple[tuple[re.Pattern[str], State], ...]:
    return tuple((re.compile(rf"(?<!\w)(?:{fold(state.ways)})(?!\w)"), state) for state in STATES)


@cache
def _married() -> tuple[tuple[re.Pattern[str], str], ...]:
    return tuple((re.compile(rf"(?<!\w){way}(?!\w)"), instead) for way, instead in MARRIED_FOR)


@cache
def _any() -> re.Pattern[str]:
    return re.compile("|".join((*(fold(state.ways) for state in STATES), "married", "verheiratet", "abielus")))
