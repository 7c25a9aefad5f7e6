"""What people say of a date → EDTF. A phrase proposes; it never decides silently, and its words are kept.

Each reading carries the EDTF, the words it rests on, a question where the keeper must choose (century, day
order, which war, whose holiday) and the alternatives. Words that mean no date give none.
Conventions (ours unless a source is named): about → `~`; probably → `?`; early, mid and late in a decade are
its years 0-3, 4-6 and 7-9; a picture is one moment, so "between" is one of a set and "from … to" an interval.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from itertools import islice, product
from types import MappingProxyType
from typing import NamedTuple

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.ages import NUMBERS
from boxlore.core.dates.ambiguity import understood
from boxlore.core.dates.asked_words import NOT_UNDERSTOOD, asked, which_is_meant
from boxlore.core.dates.by_halves import by_halves, is_age
from boxlore.core.dates.context import NOT_THEN, DateContext, Life, Outcome
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.event_question import as_named, asked_event
from boxlore.core.dates.lexer import Token, lex, nfc
from boxlore.core.dates.lexicon import PIECE, Node, Sense, trie
from boxlore.core.dates.neither import denied_together
from boxlore.core.dates.proposing import MOST_CHOICES
from boxlore.core.dates.reading import NO_DATE, DateReading
from boxlore.core.dates.told_whole import in_full, with_all_told
from boxlore.core.dates.unread_words import is_said_without_a_side

READER_VERSION = "dates 2"

MOST_LETTERS = 300
"""A longer text is a story, not a date: it is kept, and not read."""

FIRST_PHOTOGRAPH = 1826
"""No photograph is older (N. Niépce, the view from a window at Le Gras; the year from memory)."""

THIS_YEAR = 2026
"""The year in which this reader was made: a later one is asked about, where nobody says what year it is now."""


@dataclass(frozen=True, slots=True)
class PhraseSettings:
    """How this collection means its dates: day order (dmy, mdy or None to ask), hemisphere, countries, language."""

    order: str | None = None
    hemisphere: str = "north"
    countries: tuple[str, ...] = ()
    language: str = ""


AS_TOLD = PhraseSettings()


Meanings = tuple[tuple[str, str], ...]
"""Events that the same words may mean: what each is called, and its date as EDTF."""

MOST_MEANINGS = 8
"""So many ways in which words may be meant together are read."""


class Whom(NamedTuple):
    """Somebody who may be meant: the name, the birth and the death as EDTF, empty where one is not known."""

    name: str
    born: str
    died: str = ""


@dataclass(frozen=True, slots=True)
class KnownDates:
    """Dates already told, as EDTF: births of people and dates of events by folded name; the narrator's birth; the
    people in the picture by name, with their births (empty where one is not known); the year in which it is
    told; by folded words the events that they may mean, which is asked about; the year before which there is no
    date of a picture, 0 for dates of lives; the deaths of those of `births`, where they are known; by a pet form or a
    word of kin who may be meant by it, which is asked about; the year in which the first of the family was born, 0
    where that is not known; and the day on which it is told, as EDTF, empty where only the year counts. A birth is
    empty where only the death is known."""

    births: MappingProxyType[str, str] = field(default_factory=lambda: MappingProxyType({}))
    events: MappingProxyType[str, str] = field(default_factory=lambda: MappingProxyType({}))
    narrator: str = ""
    pictured: MappingProxyType[str, str] = field(default_factory=lambda: MappingProxyType({}))
    this_year: int = THIS_YEAR
    perhaps: MappingProxyType[str, Meanings] = field(default_factory=lambda: MappingProxyType({}))
    first_year: int = FIRST_PHOTOGRAPH
    deaths: MappingProxyType[str, str] = field(default_factory=lambda: MappingProxyType({}))
    likely: MappingProxyType[str, tuple[Whom, ...]] = field(default_factory=lambda: MappingProxyType({}))
    eldest: int = 0
    today: str = ""


NOTHING_KNOWN = KnownDates()


def read(
    text: str, settings: PhraseSettings = AS_TOLD, known: KnownDates = NOTHING_KNOWN, *, parted: bool = True
) -> DateReading:
    """Read one date as people say it. Never raises for any text. `parted`: two parts of what is no whole are read each
    by itself."""
    if len(text) > MOST_LETTERS:
        return _no_date(text, "Too long for a date; kept as told.")
    context = DateContext(
        nfc(text).strip(), settings.order, settings.hemisphere, settings.countries, known.births, known.events,
        known.narrator, known.pictured, known.this_year, known.first_year, known.deaths, settings.language,
        eldest=known.eldest, today=known.today,
    )  # fmt: skip
    if denials := denied_together(context.text, settings.language):
        return _of_denied(read(denials, settings, known), text, denials)
    own = _own(known, context.text) if known.births or known.events else None
    lexed: dict[str, list[Token]] = {}
    outcome = understood(context.text, context, own, lexed)
    if outcome is not None and outcome.edtf is not None and not outcome.ask:
        if (known.events or known.perhaps) and (asks := _or_an_event(outcome.edtf, context, known, own)):
            return DateReading(text, *asks)
        return DateReading(text, outcome.edtf, outcome.ask, outcome.alternatives)  # most
    outcome = _as_whole(outcome, context, own, lexed)
    if outcome is None or outcome.edtf is None or (known.perhaps and outcome.edtf.text.startswith("XXXX")):
        outcome = _of_what_may_be_meant(context, known, outcome.alternatives if outcome else ()) or outcome
    if known.likely and (outcome is None or outcome.edtf is None):
        outcome = _of_whom_may_be_meant(context, known, outcome.alternatives if outcome else ()) or outcome
    if (outcome is None or not outcome.choices) and (counted := _in_years(context.text)):
        return replace(read(counted, settings, known), text=text)
    if parted and (outcome is None or outcome.edtf is None or known.perhaps):
        outcome = _of_its_halves(outcome, context, settings, known) or outcome
    if outcome is None:
        return _no_date(text)
    if outcome.edtf is None:
        return _no_date(text, outcome.ask, outcome.alternatives)
    return DateReading(text, outcome.edtf, outcome.ask, outcome.alternatives)


def _of_denied(reading: DateReading, text: str, denials: str) -> DateReading:
    """“Ni 1935 ni 1936”: what is read of the same in plain words; what is only guessed of it denies no less."""
    if (reading.edtf is None and not reading.ask) or denials in (reading.ask or ""):
        return _no_date(text, NOT_THEN)
    return replace(reading, text=text)


def _of_its_halves(
    outcome: Outcome | None, context: DateContext, settings: PhraseSettings, known: KnownDates
) -> Outcome | None:
    """The question which of what two parts of the words come to is meant; None where that says no more than what was
    asked."""
    ask, offered = (outcome.ask or "", outcome.choices) if outcome else ("", ())
    dated = [text for text in offered if "XXXX" not in text]
    asked_of, told = asked_event(ask), PIECE.findall(_plain(context.text))
    events = [way for way in map(_plain, (*known.events, *known.perhaps)) if _holds(told, PIECE.findall(way))]
    leans = bool(events) and (not ask or ask.endswith("meant?") or NOT_UNDERSTOOD in ask)
    whom = _whose_age(context.text, known)
    if not (asked_of or leans or whom or (not dated and ask.endswith(_WHICH_YEAR))):
        return None
    events.sort(key=len, reverse=True)
    halves = by_halves(
        context.text,
        lambda part: read(part, settings, known, parted=False).choices,
        events,
        whom,
        is_event=bool(asked_of),
    )
    if halves is None:
        return None
    if halves.unread:
        choices = halves.choices if not dated else ()
    else:
        choices = tuple(dict.fromkeys((*halves.choices, *dated))) if not set(halves.choices) <= set(dated) else ()
    if not choices:
        return None
    unread = (halves.unread,) if halves.unread else ()
    return Outcome(None, which_is_meant(choices[:MOST_CHOICES], context, unread), choices[:MOST_CHOICES], unread)


def _whose_age(words: str, known: KnownDates) -> str:
    """Whose age a number at the end of words is, behind a comma: “when Ruth was at school, about eight”; empty where
    nobody is told, or several."""
    head, _, tail = words.rpartition(",")
    if not (head and known.births and is_age(tail)):
        return ""  # most
    told = PIECE.findall(_plain(head))
    named = {known.births[name]: name for name in known.births if _holds(told, PIECE.findall(_plain(name)))}
    tokens = lex(head)
    if any(token.is_any(NUMBERS) for token in tokens):
        return ""  # “Eve was five, maybe six”
    is_me = known.narrator and any(token.kinds & _I for token in tokens)
    return next(iter(named.values())) if len(named) == 1 else "me" if is_me and not named else ""


_I = frozenset(("i",))
_WHICH_YEAR = ("n which year?", "of which year?")


def _in_years(words: str) -> str:
    """“The tenth anniversary of the fire” as so many years to the day after it; empty for other words."""
    match = _ANNIVERSARY_OF.fullmatch(words)
    counts = (
        [sense.value for token in lex(match[2]) for sense in token.senses if sense.kind == "ordinal"] if match else []
    )
    return f"{match[1]}{counts[0]} years to the day after {match[3]}" if match and counts else ""


_ANNIVERSARY_OF = re.compile(r"(.*?)(?:the )?(\w+) anniversary of (.+)", re.IGNORECASE)


def _as_whole(
    outcome: Outcome | None, context: DateContext, own: Node | None, lexed: dict[str, list[Token]]
) -> Outcome | None:
    """A question with all that was told in it; a reading that asks nothing as it is."""
    if outcome is None or outcome.edtf is None:
        return with_all_told(outcome, context, own, lexed)
    return in_full(outcome, context, own) if outcome.ask else outcome


def make_ready() -> None:
    """Gather the words of all languages, which the first date of words is else read a quarter of a second later for."""
    trie()


def _or_an_event(
    edtf: Edtf, context: DateContext, known: KnownDates, own: Node | None
) -> tuple[Edtf, str, tuple[str, ...]] | None:
    """“Auf der Flucht”: the question whether an event of the family is meant that the words name, or what they were
    read as without it (a time of history, which is told by its name alone); None where nothing is to be asked."""
    if not says_no_number(context.text):
        return None
    told = PIECE.findall(_plain(context.text))
    if any(token.senses[0].kind == "event" for token in lex(context.text, own)):
        return _or_a_longer_one(edtf, told, context, known) if known.perhaps else None
    meanings = [*((words, words, date) for words, date in known.events.items())]
    meanings += [(words, name, date) for words, several in known.perhaps.items() for name, date in several]
    named = {date: name for words, name, date in meanings if _holds(told, PIECE.findall(_plain(words)))}
    if not named or edtf.text in named:
        return None
    each = {words: ((words, date),) for words, date in known.events.items()}
    perhaps = MappingProxyType({**known.perhaps, **each})
    outcome = _of_what_may_be_meant(context, replace(known, perhaps=perhaps, events=MappingProxyType({})), ())
    dates = [date for date in (outcome.choices if outcome else ()) if date != edtf.text]
    first, *others = [*(dates or [*named]), edtf.text]
    listed = " or ".join([*dict.fromkeys(named.values()), asked(edtf.text, context)])
    return standard.parsed(first), f"“{context.text}”: is {listed} meant?", tuple(others)


def _or_a_longer_one(
    edtf: Edtf, told: list[str], context: DateContext, known: KnownDates
) -> tuple[Edtf, str, tuple[str, ...]] | None:
    """“Our golden wedding”: the question whether what more of the words means is meant, and not the event of which they
    hold the name; None where no more means anything."""
    longer = [pieces for words in known.perhaps if _holds(told, pieces := PIECE.findall(_plain(words)))]
    shorter = {
        words
        for words in known.events
        for event in (set(PIECE.findall(_plain(words))) - {"the"},)
        if any(event < set(way) for way in longer)
    }
    if not shorter:
        return None  # most
    others = MappingProxyType({words: date for words, date in known.events.items() if words not in shorter})
    outcome = _of_what_may_be_meant(context, replace(known, events=others), ())
    if outcome is None or edtf.text in outcome.choices:
        return None
    first, *more = outcome.choices
    return standard.parsed(first), outcome.ask or "", (*more, edtf.text)


def says_no_number(words: str) -> bool:
    """Whether words hold no digit, so that a date in them has a name."""
    return not any(map(str.isdigit, words))


def _of_what_may_be_meant(context: DateContext, known: KnownDates, offered: tuple[str, ...]) -> Outcome | None:
    """The date by each event that the words may mean, and the question which of them is; None where they mean none.
    Where dates are `offered` without an event (“fire brigade, 1936”), one counts only if all words are read by it, and
    they are choices too."""
    if not known.perhaps:
        return None  # most
    known = _with_who_is_likely(known)
    told = PIECE.findall(_plain(context.text))
    offered = tuple(text for text in offered if not text.startswith("XXXX"))  # an open year says less than an event
    sure = [PIECE.findall(_plain(words)) for words in known.events]
    within = [
        words
        for words in known.perhaps
        if _holds(told, pieces := PIECE.findall(_plain(words)))
        and not any(_holds(told, event) and _holds(event, pieces) for event in sure)
    ]
    if not within:
        return None
    together = _beside_each_other(told, within)
    names: dict[str, str] = {}
    named_alone = False
    words = max(together, key=len)
    for ways in (together, [words]) if len(together) > 1 else (together,):
        names = names or _read_by_each(ways, context, known, offered)
    if (
        not names
        and not offered
        and is_said_without_a_side(context.text, context.language, " ".join(name for name, _ in known.perhaps[words]))
    ):
        names = {edtf: as_named(name) for name, edtf in known.perhaps[words]}  # “on the voyage out, on the Rangiora”
        named_alone = True
    if not names:
        return None
    *before, last = dict.fromkeys(names.values())
    which = f"{', '.join(before)} or {last}" if before else last
    ask = f"“{context.text}”: is {which} meant?"
    first, *others = [*names, *(text for text in offered if text not in names)]
    if before or named_alone:
        return Outcome(None, ask, (first, *others))
    return Outcome(standard.parsed(first), ask, tuple(others))


def _with_who_is_likely(known: KnownDates) -> KnownDates:
    """The same, with those who are alone likely to be meant, since it is asked what is meant anyway."""
    alone = {form: several[0] for form, several in known.likely.items() if len(set(several)) == 1}
    births = MappingProxyType({**{form: life.born for form, life in alone.items()}, **known.births})
    deaths = MappingProxyType({**{form: life.died for form, life in alone.items()}, **known.deaths})
    return replace(known, births=births, deaths=deaths) if alone else known


def _beside_each_other(told: list[str], within: list[str]) -> list[str]:
    """Those of the phrases that mean an event which stand beside each other (“between the wedding and the move”), as
    they are told; of two that share a word the longer one."""
    chosen: dict[int, str] = {}
    taken: set[int] = set()
    for words in sorted(within, key=len, reverse=True):
        pieces = PIECE.findall(_plain(words))
        for at in range(len(told) - len(pieces) + 1):
            places = range(at, at + len(pieces))
            if told[at : at + len(pieces)] == pieces and taken.isdisjoint(places):
                taken.update(places)
                chosen[at] = words
                break
    return [chosen[at] for at in sorted(chosen)]


def _read_by_each(
    ways: Sequence[str], context: DateContext, known: KnownDates, offered: tuple[str, ...]
) -> dict[str, str]:
    """What the words come to by each of the events that are perhaps meant by `ways`, with their names."""
    names: dict[str, str] = {}
    for meanings in islice(product(*(known.perhaps[words] for words in ways)), MOST_MEANINGS):
        dates = {words: edtf for words, (_, edtf) in zip(ways, meanings, strict=True)}
        events = MappingProxyType({**known.events, **dates})
        leaning = replace(context, events=events, perhaps=True)
        own = _own(replace(known, events=events), context.text)
        outcome = understood(context.text, leaning, own)
        outcome = _as_whole(outcome, leaning, own, {}) if outcome else None
        if outcome is not None and (outcome.edtf or not offered):
            for text in outcome.choices:
                names.setdefault(text, " and ".join(dict.fromkeys(as_named(name) for name, _ in meanings)))
    return names


def _of_whom_may_be_meant(context: DateContext, known: KnownDates, offered: tuple[str, ...]) -> Outcome | None:
    """`Zosia, 3 latka`: the date by each who may be called so, and the question whether that is who is meant; None
    where dates are `offered` without it and none is read by it."""
    offered = tuple(text for text in offered if not text.startswith("XXXX"))
    first: Outcome | None = None
    names: dict[str, None] = {}
    choices: dict[str, None] = {}
    groups: dict[tuple[Whom, ...], list[str]] = {}  # “Grandfather” and “my grandfather” are one
    for form, several in known.likely.items():
        groups.setdefault(several, []).append(form)
    for whom in islice(product(*groups), MOST_MEANINGS):
        meant = {form: life for forms, life in zip(groups.values(), whom, strict=True) for form in forms}
        births = {**known.births, **{form: life.born for form, life in meant.items()}}
        deaths = {**known.deaths, **{form: life.died for form, life in meant.items()}}
        lives = replace(known, births=MappingProxyType(births), deaths=MappingProxyType(deaths))
        leaning = replace(context, births=lives.births, deaths=lives.deaths)
        own = _own(lives, context.text)
        outcome = _as_whole(understood(context.text, leaning, own), leaning, own, {})
        if outcome is not None and (outcome.edtf or (outcome.alternatives and not offered)):
            first = first or outcome
            names[" and ".join(dict.fromkeys(life.name for life in whom))] = None
            choices |= dict.fromkeys(outcome.choices)
    if first is None:
        return None
    *before, last = names
    if before:
        return Outcome(None, f"“{context.text}”: is {', '.join(before)} or {last} meant?", tuple(choices))
    return replace(first, ask=f"“{context.text}”: is {last} meant?")


def _plain(words: str) -> str:
    """The words as the lexer sees them: small letters, and one form of the apostrophe."""
    return words.casefold().replace("’", "'")


def _holds(told: list[str], words: list[str]) -> bool:
    return any(told[at : at + len(words)] == words for at in range(len(told) - len(words) + 1))


def _own(known: KnownDates, text: str) -> Node:
    """The trie of the family's names: people with their births, events with their dates; a word that folds to more
    letters stands as the text has it (“großen”, which the lexer leaves as it is)."""
    root = Node()
    spelled = {piece.casefold(): piece.lower() for piece in PIECE.findall(text)} if "ß" in text else {}
    for kind, dates in (("person", known.births), ("event", known.events)):
        for name, edtf in dates.items():
            bare = _plain(name).removeprefix("the ")
            for form in _event_forms(bare) if kind == "event" else (bare, f"{bare}s"):  # “Katis Geburtstag”
                node = root
                for piece in PIECE.findall(form):
                    node = node.following.setdefault(spelled.get(piece, piece), Node())
                died = known.deaths.get(name, "")
                node.senses = (Sense(kind, Life(edtf, died) if kind == "person" else edtf),)
    return root


def _event_forms(bare: str) -> tuple[str, ...]:
    """The forms of an event's name, with the English article, and without that of another language, which may stand
    within a word for “after” (“dopo il trasloco”)."""
    article, _, noun = bare.partition(" ")
    return (bare, f"the {bare}", noun) if article in _ARTICLES and noun else (bare, f"the {bare}")


_ARTICLES = frozenset("der die das den dem des le la les il lo i gli el los las o a os as de het den det".split())


def _no_date(text: str, ask: str | None = None, alternatives: tuple[str, ...] = ()) -> DateReading:
    fault = NO_DATE if text.strip() else replace(NO_DATE, state=standard.State.INCOMPLETE)
    return DateReading(text, None, ask, alternatives, fault)


def read_strict(text: str) -> DateReading:
    """Read one date that must be EDTF as it stands; no phrases. Never raises for any text."""
    checked = standard.check(text)
    if checked.state is standard.State.VALID:
        return DateReading.from_edtf(text)
    column, message = checked.column or len(text) + 1, checked.message or "More must follow."
    return DateReading(text, fault=standard.Checked(checked.state, column, message))
