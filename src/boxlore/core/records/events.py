"""The family's own time line: what happened to it, told by hand or following from lives, and what phrases mean by it.

A phrase that means one event alone is read by its date (“when Anna was born”). What may mean several events, or a word
that says less than the event's name (“the move”), is never read alone: it is asked about, with the events.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from itertools import product
from types import MappingProxyType
from typing import NamedTuple

from boxlore.core.dates.edtf_values import Day
from boxlore.core.dates.lexicon import PIECE
from boxlore.core.dates.phrases import Meanings
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.event_clauses import clauses
from boxlore.core.people.life_event_words import (
    ALONE,
    INFLECTED,
    JOINING,
    OF_NAMES,
    OWN,
    PERHAPS,
    THEIR_WEDDING,
    WAYS,
    WHITHER,
    as_clause,
    bare,
    burned,
    called_otherwise,
    kind_of,
    shorter,
    whither,
)
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.anniversaries import FORMS_OF_OURS, OURS
from boxlore.core.records.followed_events import Happened, followed
from boxlore.core.records.told_kin import kin_told


@dataclass(frozen=True, slots=True, kw_only=True)
class FamilyEvent:
    """Something that happened to the family. `names` as told, the one it goes by last; `people` are ids; `when` is
    the date that may be used, and `words` how it was told; `said` who says so. `own` events have an entry of their own
    (`id` is its id); the others follow from somebody's life (`id` is the person's)."""

    id: str
    kind: str
    names: tuple[str, ...]
    people: tuple[str, ...] = ()
    when: DateReading | None = None
    words: str = ""
    said: str = ""
    own: bool = True

    @property
    def name(self) -> str:
        """What it is called."""
        return self.names[-1]

    @property
    def told_kind(self) -> str:
        """Its kind, by the words of its name where nobody told one."""
        return kind_of(self.name) if self.kind == "other" else self.kind

    @property
    def edtf(self) -> str:
        """The date, as EDTF; empty where none may be used."""
        return self.when.edtf.text if self.when and self.when.edtf else ""


def in_order(events: Iterable[FamilyEvent]) -> list[FamilyEvent]:
    """By their dates, the undated last."""
    far = Day(99_999, 12, 31)

    def key(event: FamilyEvent) -> tuple[bool, Day, Day, str]:
        when = event.when
        earliest = when.earliest or Day(-99_999, 1, 1) if when else far
        return not event.edtf, earliest, when.latest or far if when else far, event.name

    return sorted(events, key=key)


def of_lives(people: Registry) -> Iterator[FamilyEvent]:
    """Births, deaths and marriages that are told of people; a marriage of two with one date is one."""
    seen: set[tuple[frozenset[str], str]] = set()
    for person in people.values():
        yield from _turn(person, "birth", person.born)
        yield from _turn(person, "death", person.died)
        for when in person.married:
            spouses = [people[ident] for ident in person.spouses if ident in people]
            pair = [person, *spouses] if len(spouses) == 1 else [person]
            ids = tuple(partner.id for partner in pair)
            if when.edtf and (key := (frozenset(ids), when.edtf.text)) not in seen:
                seen.add(key)
                name = f"the wedding of {' and '.join(partner.name for partner in pair)}"
                yield FamilyEvent(
                    id=person.id, kind="marriage", names=(name,), people=ids, when=when, words=when.text, own=False
                )


def _turn(person: Person, kind: str, when: DateReading | None) -> Iterator[FamilyEvent]:
    if when is not None and when.edtf:
        name = f"the {kind} of {person.name}"
        yield FamilyEvent(
            id=person.id, kind=kind, names=(name,), people=(person.id,), when=when, words=when.text, own=False
        )


NO_KIN: Mapping[str, Sequence[str]] = MappingProxyType({})


def meant_by(
    words: str, events: Iterable[FamilyEvent], people: Mapping[str, Person], narrator: str,
    kin_here: Mapping[str, Sequence[str]] | None = None, kin_likely: Mapping[str, Sequence[str]] = NO_KIN,
) -> tuple[MappingProxyType[str, str], MappingProxyType[str, Meanings]]:  # fmt: skip
    """What of a phrase's words means an event: (words -> EDTF) of what means one alone, and (words -> events) of what
    has to be asked about. `narrator` is the id of who tells; `kin_here` are the words of kin, where `kin_told` was
    asked for them before; `kin_likely` those of whom it has to be asked who is meant."""
    pieces = frozenset(_pieces(words))
    kin: dict[str, set[str]] = {}
    perhaps_kin: dict[str, set[str]] = {}
    for phrase, ids in (kin_told(words, people, narrator) if kin_here is None else kin_here).items():
        for ident in ids:
            (kin if len(ids) == 1 else perhaps_kin).setdefault(ident, set()).add(phrase)
    for phrase, ids in kin_likely.items():
        for ident in ids:
            perhaps_kin.setdefault(ident, set()).add(phrase)
    told, loosely = _Told(pieces, kin, pieces), _Told(frozenset(), perhaps_kin, pieces)
    sure: dict[str, dict[str, str]] = {}
    loose: dict[str, dict[str, str]] = {}
    events = [event for event in events if event.edtf]
    for event in events:
        event = _with_owner(event, people)
        own = _ways(event, people, narrator, told)
        _add(sure, own, pieces, event.edtf, event.name)
        if not (event.told_kind == "marriage" and _is_of_another(event, people, words)):
            _add(loose, _hints(event, people, pieces), pieces, event.edtf, event.name)
        _add(loose, _in_genitive(event, people, told, alike=True), pieces, event.edtf, event.name)
        _add(loose, _perhaps(event, people, told), pieces, event.edtf, event.name)
        if perhaps_kin:
            _add(loose, _ways(event, people, "", loosely), pieces, event.edtf, event.name)
            _add(loose, _perhaps(event, people, loosely), pieces, event.edtf, event.name)
            for after in followed(_happened(event, people, "", loosely), words):
                _add(loose, (*after.sure, *after.perhaps), pieces, after.edtf, after.name)
        for after in followed(_happened(event, people, narrator, told), words):
            _add(sure, after.sure, pieces, after.edtf, after.name)
            _add(loose, after.perhaps, pieces, after.edtf, after.name)
    alone = {way: next(iter(dates)) for way, dates in sure.items() if len(dates) == 1}
    alone |= {way: edtf for way, edtf in _by_its_name(loose, events, pieces).items() if way not in sure}
    several = {**loose, **sure}
    perhaps = {
        way: tuple((name, edtf) for edtf, name in dates.items()) for way, dates in several.items() if way not in alone
    }
    return MappingProxyType(alone), MappingProxyType(perhaps)


def _is_of_another(event: FamilyEvent, people: Mapping[str, Person], words: str) -> bool:
    """“Kaljus Hochzeit”, “the wedding of Kalju”: whether a wedding is told that is somebody's who is none of an
    event's."""
    told = f" {words.casefold().replace('’', chr(39))} "
    nouns = [noun for noun in ALONE["marriage"] if noun in told]
    if not event.people or not nouns:
        return False  # most
    own = {_first(name) for ident in event.people if ident in people for name in _names(people[ident])}
    others = {_first(name) for person in people.values() for name in _names(person)} - own
    ways = [
        way
        for name in others
        if name in told
        for way in (*(f"{name}{ending} {{}}" for ending in ("s", "'s", "'")), *(f"{{}} {of} {name}" for of in _OF))
    ]
    return any(f" {way.format(noun)} " in told for way in ways for noun in nouns)


def _first(name: str) -> str:
    return name.split(" ", 1)[0]


_OF = ("of", "von", "de", "di", "van", "af", "av")


def _by_its_name(
    loose: Mapping[str, Mapping[str, str]], events: Sequence[FamilyEvent], pieces: frozenset[str]
) -> Mapping[str, str]:
    """The phrases for the only wedding that is known, where the words tell all of its name in whatever form: `pärast
    meie pulmi` of `meie pulmad`. “The wedding” may be somebody else's, and so may `häät`."""
    weddings = [event for event in events if event.told_kind == "marriage"]
    if len({event.edtf for event in weddings}) != 1 or not weddings[0].own:
        return {}
    *owners, noun = sorted(_pieces(bare(weddings[0].name)), key=lambda piece: piece in ALONE["marriage"])
    of_ours = [owner for owner in owners if owner not in _ARTICLES]
    told = bool(of_ours) and all(any(owner in row and row & pieces for row in FORMS_OF_OURS) for owner in of_ours)
    if noun not in ALONE["marriage"] or not told:
        return {}
    return {
        way: weddings[0].edtf
        for way, dates in loose.items()
        if [*dates] == [weddings[0].edtf] and _tells_a_wedding(frozenset(_pieces(way)), noun)
    }


def _tells_a_wedding(pieces: frozenset[str], noun: str) -> bool:
    """Whether a word for a wedding is told, or the noun of one's name in another form."""
    return not pieces.isdisjoint(ALONE["marriage"]) or any(_in_another_form(noun, pieces))


_ARTICLES = frozenset("the il o la le det den".split())


def _with_owner(event: FamilyEvent, people: Mapping[str, Person]) -> FamilyEvent:
    """An event of the family's own that is called after one of them alone (“Jaan’s wedding”), as one of that person."""
    owner, mark, _ = bare(event.name).replace("’", "'").partition("'s ")
    if not mark or event.people or not event.own:
        return event
    owners = [ident for ident, person in people.items() if owner in set(map(_first, _names(person)))]
    return replace(event, people=(owners[0],), kind=event.told_kind) if len(owners) == 1 else event


def _add(into: dict[str, dict[str, str]], ways: Iterable[str], pieces: frozenset[str], edtf: str, name: str) -> None:
    """Add the phrases whose words are all told, with the date and the name of what they mean."""
    for way in ways:
        if way and pieces.issuperset(_pieces_of_a_way(way)):
            into.setdefault(way, {})[edtf] = name


@lru_cache(1 << 14)
def _pieces_of_a_way(way: str) -> frozenset[str]:
    """Kept, for an event may be told in a hundred ways, which are the same at every picture."""
    return frozenset(_pieces(way))


def _pieces(words: str) -> list[str]:
    return PIECE.findall(words.casefold().replace("’", "'"))


class _Told(NamedTuple):
    """The pieces of a phrase in which names are looked for, by their ids who is told in it by words of kin, and all of
    its pieces."""

    pieces: frozenset[str]
    kin: Mapping[str, set[str]]
    all: frozenset[str]


def _ways_told(ways: Iterable[str], pieces: frozenset[str]) -> list[str]:
    """Those phrases of our tables of which all words are told but the one with the name."""
    return [way for way in ways if _beside_the_name(way) <= pieces]


@cache
def _beside_the_name(way: str) -> frozenset[str]:
    """The words of a phrase that are no part of the word with the name: all of them must be told."""
    return frozenset(piece for word in way.split() if "{}" not in word for piece in _pieces(word))


def _ways(event: FamilyEvent, people: Mapping[str, Person], narrator: str, told: _Told) -> Iterator[str]:
    """The phrases that mean this event and no other kind of thing."""
    if event.own:
        yield bare(event.name)
    if narrator and narrator in event.people:
        yield from _ways_told(OWN.get(event.kind, ()), told.all)
        if event.kind == "marriage":
            yield from _of_ones_own(told.all)
    ways = _ways_told(WAYS.get(event.kind, ()), told.all)
    called = _called(event, people, told) if ways else []
    for name in _joined(called):
        yield from (way.format(name) for way in ways)
    yield from _in_genitive(event, people, told, alike=False)


def _of_ones_own(pieces: frozenset[str]) -> Iterator[str]:
    """“My wedding”, “nach meiner Hochzeit”, `bryllupet vårt`: a word for a wedding in any form beside one for “my” or
    “our”, of whatever language."""
    whose = sorted(pieces & _OURS)
    for noun in _ways_told(ALONE["marriage"], pieces) if whose else ():
        for owner in whose:
            yield from (f"{owner} {noun}", f"{noun} {owner}")
            yield from (f"{article} {owner} {noun}" for article in pieces & _BEFORE_OURS)


_BEFORE_OURS = frozenset(("il", "le", "la"))
"""The articles that Italian has before such a word."""
_OURS = frozenset[str]().union(*FORMS_OF_OURS)


def _perhaps(event: FamilyEvent, people: Mapping[str, Person], told: _Told) -> Iterator[str]:
    """The phrases that may mean this event, or something else that somebody did (“when Arthur fell”)."""
    ways = _ways_told(PERHAPS.get(event.kind, ()), told.all)
    pronouns, owners = sorted(told.all & _PRONOUNS), sorted(told.all & _HERS)
    names = _joined(_called(event, people, told)) if ways or pronouns or owners else ()
    if not names:
        return  # most
    yield from (way.format(name) for name in names for way in ways)
    yield from (way.format(who) for who in pronouns for way in _ways_told(WAYS.get(event.kind, ()), told.all))
    yield from (f"{owner} {noun}" for owner in owners for noun in _NOUNS.get(event.kind, ()))


_HERS = frozenset("his her their".split())
_NOUNS = {"birth": ("birth",), "death": ("death",), "marriage": ("wedding", "wedding day", "marriage")}
_PRONOUNS = frozenset(
    "he she they er sie il elle ils elles hij zij ze han hun hon de hän he ta tema nad он она они on ona oni viņš viņa "
    "jis ji".split()
)
"""Words by which somebody may be meant who is named before: “Walter, the spring before he was killed”."""


def _in_genitive(event: FamilyEvent, people: Mapping[str, Person], told: _Told, *, alike: bool) -> Iterator[str]:
    """The phrases that mean an event in languages that inflect names: “svatba Margaret”; or those whose name is only
    `alike`, as an inflected one is (“svatba Grety”) and another name may be (“Maria surm”, and Mari's)."""
    ways = _ways_told(INFLECTED.get(event.kind, ()), told.all)
    if not ways:
        return
    if not alike:  # `przed urodzeniem babci`
        by_kin = (phrase for ident in event.people for phrase in sorted(told.kin.get(ident, ())))
        yield from (way.format(phrase) for phrase in by_kin for way in ways)
    persons = (people[ident] for ident in event.people if ident in people)
    names = {_first(name) for person in persons for name in _names(person)}
    for name in (name for name in names if len(name) >= _LONG_ENOUGH):
        stem = name[:-1] if name[-1] in _VOWELS else name
        for piece in told.pieces:
            ends = (piece[len(way) :] for way in (stem, name) if piece.startswith(way))
            if any(end in OF_NAMES for end in ends) if alike else piece == name:
                yield from (way.format(piece) for way in ways)


_VOWELS = "aeiouõäöüаеёиоуыэюя"
_LONG_ENOUGH = 3


def _called(event: FamilyEvent, people: Mapping[str, Person], told: _Told) -> list[set[str]]:
    """Of each person of an event, how the phrase calls them."""
    return [
        _spoken(people[ident], told.pieces) | _without_s(told.kin.get(ident, ()))
        for ident in event.people
        if ident in people
    ]


def _without_s(phrases: Iterable[str]) -> set[str]:
    """Words of kin as told, and without the “s” of a genitive, which the phrases of our tables have (“Omas Geburt”)."""
    return {form for phrase in phrases for form in (phrase, phrase.removesuffix("s"))}


def _joined(called: list[set[str]]) -> set[str]:
    """The names of those of an event, each alone and both together."""
    names = {name for names in called for name in names}
    if len(called) == 2:
        pairs = [(man, wife) for men, wives in (called, called[::-1]) for man in men for wife in wives]
        names |= {f"{man} {joint} {wife}" for man, wife in pairs for joint in JOINING}
    return names


def _happened(event: FamilyEvent, people: Mapping[str, Person], narrator: str, told: _Told) -> Happened:
    called = frozenset(_joined(_called(event, people, told)))
    is_own = bool(narrator and narrator in event.people) or bare(event.name).split(" ", 1)[0] in OURS
    return Happened(event.kind, event.name, event.edtf, called, is_own)


def _spoken(person: Person, pieces: frozenset[str]) -> set[str]:
    """The names by which the phrase may mean somebody: those whose words begin words of it (`Annas Geburt`)."""
    return {
        name
        for name in _names(person)
        if all(any(piece.startswith(part) for piece in pieces) for part in _pieces(name))
    }


def _names(person: Person) -> set[str]:
    return {name.casefold() for name in (person.name, *person.forms, *person.calls)}


def _turned(event: FamilyEvent, pieces: frozenset[str]) -> Iterator[str]:
    """`Tapale kolimist` for `kolimine Tapale`: the noun of a kind of event in another form, and before or behind the
    other words of its name."""
    alone = ALONE.get(event.told_kind, ())
    words = bare(event.name).split()
    nouns = [word for word in words if word in alone]
    rest = " ".join(word for word in words if word not in nouns)
    if len(nouns) == 1 and rest:
        for way in _ways_told(alone, pieces):
            yield from (f"{rest} {way}", f"{way} {rest}")


def _in_another_form(name: str, pieces: frozenset[str]) -> Iterator[str]:
    """`brylluppet` for `bryllup`, `kolimisest` for `kolimine`: words that begin as an event's name of one word does,
    and end otherwise."""
    if not name.isalpha() or len(name) < _LONG_NAME:
        return
    stem = name[: max(len(name) - _ENDING, _LONG_NAME - 1)]
    yield from (piece for piece in pieces if piece.startswith(stem) and abs(len(piece) - len(name)) <= _ENDING + 1)


def _inflected(name: str, pieces: frozenset[str]) -> Iterator[str]:
    """`großen brand` for `der große Brand`: each word of a name in the form that is told."""
    words = _large_words(name)
    forms: list[list[str]] = []
    for word in words if len(words) > 1 else ():
        if not (told := [piece for piece in pieces if _is_a_form(word, piece)]):
            return
        forms.append(sorted(told)[:2])
    yield from map(" ".join, product(*forms)) if forms else ()


@lru_cache(1 << 12)
def _large_words(name: str) -> tuple[str, ...]:
    return tuple(word for word in _pieces(bare(name)) if word not in _SMALL_WORDS)


def _is_a_form(word: str, piece: str) -> bool:
    stem = word[: max(len(word) - 1, _LONG_ENOUGH)]
    return piece.startswith(stem) and len(piece) - len(word) <= _ENDING


_SMALL_WORDS = frozenset(
    "the a an der die das den dem des ein eine le la les l un une il lo gli i el los las o os as det den en et".split()
)


_LONG_NAME, _ENDING = 5, 2
"""An event's name of so many letters has other forms; so many letters at its end may be another ending."""


def _without_owner(name: str, people: Mapping[str, Person], pieces: frozenset[str]) -> str:
    """`studentexamen` of `Gunnars studentexamen`: what is left behind a first name with its “s”; empty for another, and
    where not all that is left is told."""
    owner, _, rest = bare(name).partition(" ")
    if not rest or not owner.endswith("s") or not pieces.issuperset(_pieces_of_a_way(rest)):
        return ""  # most
    first = owner.removesuffix("s")
    is_known = any(_first(known) == first for person in people.values() for known in _names(person))
    return rest if is_known else ""


def _hints(event: FamilyEvent, people: Mapping[str, Person], pieces: frozenset[str]) -> Iterator[str]:
    """The words that may mean this event: an earlier name of it, less than its name, its kind alone, or with the place
    that it went to, which other languages inflect (`kolisime Leedsi`)."""
    if event.own and event.kind in WHITHER and (place := whither(event.name)):
        stem = place[: max(len(place) - 1, _LONG_ENOUGH)]
        ways = _ways_told(WHITHER[event.kind], pieces)
        for told in {piece for piece in pieces if piece.startswith(stem)} | {place}:
            yield from (way.format(told) for way in ways)
    elif (
        event.own and event.kind in WHITHER and bare(event.name) in ALONE[event.kind]
    ):  # “kui me Tartusse kolisime” of `kolimine`
        ways = _ways_told(WHITHER[event.kind], pieces)
        yield from (way.format(piece) for way in ways for piece in pieces)
    if event.own:
        yield from _turned(event, pieces)
        yield from map(bare, event.names[:-1])
        for name in event.names:
            yield from shorter(name)
            yield from as_clause(name)
            yield from clauses(name)
            yield _without_owner(name, people, pieces)
            yield from called_otherwise(name)
            yield from _ways_told(burned(name, pieces), pieces)
            yield from _in_another_form(bare(name), pieces)
            yield from _inflected(name, pieces)
    if event.told_kind == "marriage":
        yield from _ways_told(THEIR_WEDDING, pieces)
        yield from _ways_told(OWN["marriage"], pieces)  # “the year we were married”, by whoever tells it
    alone = ALONE.get(event.told_kind, ())
    yield from _ways_told(alone, pieces)
    for word in alone:
        yield from _in_another_form(word, pieces)  # “brylluppet”
