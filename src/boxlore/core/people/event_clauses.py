"""Other ways to tell an event than by its name: “they sold the farm” for “the farm was sold”, “leaving Leeds” for “the
family left Leeds”, “Val’s engagement” for “Val got engaged”.

English clauses are turned by their verb; what has a noun of its own in the languages is one row of `_SAME`. All are
only ever asked about.
"""

import re
from collections.abc import Iterator
from functools import cache, lru_cache

from boxlore.core.people.life_event_words import PAST, as_pattern, bare

_SAME: tuple[tuple[str, ...], ...] = tuple(
    tuple(row.split("|"))
    for row in (
        "{} got engaged|{} were engaged|{} was engaged|{} became engaged|{}'s engagement|engagement of {}|"
        "{} verlobten sich|{} sich verlobten|{} verlobte sich|{}s verlobung|verlobung von {}|{} se sont fiancés|"
        "fiançailles de {}|noviazgo de {}|fidanzamento di {}|noivado de {}|verloving van {}|{}s forlovelse|"
        "{}s förlovning|{} kihlajaiset|{} kihlus|помолвка {}|zaręczyny {}|zásnuby {}|{} saderināšanās|{} sužadėtuvės",
        "{} was christened|{} were christened|{}'s christening|christening of {}|{} was baptised|{} were baptised|"
        "{}'s baptism|baptism of {}|{} getauft wurde|{}s taufe|taufe von {}|baptême de {}|bautizo de {}|"
        "battesimo di {}|batizado de {}|doop van {}|{}s dåb|{}s dåp|{}s dop|{} ristiäiset|{} ristimine|{} ristsed|"
        "крестины {}|крещение {}|"
        "chrzest {}|chrzciny {}|křtiny {}|{} kristības|{} krikštynos",
        "{} was confirmed|{}'s confirmation|{}s konfirmation|{}s konfirmasjon|{} leer|{} leeripäev|{} rippijuhlat",
        "{} retired|{}'s retirement|retirement of {}|{} in rente ging|{}s pensionierung",
        "{} graduated|{}'s graduation|graduation of {}|{} passed out",
        "{} came home from the war|{} came back from the war|{} got back from the war|{} got home from the war|"
        "{} returned from the war|{} was back from the war|{}'s homecoming|{}'s return from the war|{} was demobbed|"
        "{} heimkehrte|{} aus dem krieg kam|{} aus dem krieg heimkehrte",
        "{} enlisted|{} joined up|{} was called up|{} went to war|{} went off to war|"
        "{} went to the war|{} joined the army",
    )
)
"""Ways to tell one event of `{}`."""

_WHO = ("we", "they", "he", "she", "i", "the family", "our family", "my parents", "mum and dad")
_NOUNS = {"selling": "sale", "marrying": "marriage", "arriving": "arrival", "dying": "death", "departing": "departure"}
_DOUBLED = ("begin", "win", "get", "run")


@lru_cache(1 << 12)
def clauses(name: str) -> tuple[str, ...]:
    """The other ways to tell an event of this name; kept, since a phrase is read beside every event."""
    words = bare(name).replace("’", "'")
    ways = [other.format(match[1]) for row, way in _patterns() if (match := way.fullmatch(words)) for other in row]
    parted = words.split()
    at = next((at for at, word in enumerate(parted) if at and _is_verb(word)), 0)
    if at:
        ways += _turned(" ".join(parted[:at]), parted[at], " ".join(parted[at + 1 :]))
    return tuple(dict.fromkeys(ways))


def forget_clauses() -> None:
    """Forget every name of an event that was turned: a strike calls it, for they are told words."""
    clauses.cache_clear()


@cache
def _patterns() -> tuple[tuple[tuple[str, ...], re.Pattern[str]], ...]:
    return tuple((row, as_pattern(way)) for row in _SAME for way in row)


def _turned(subject: str, verb: str, rest: str) -> Iterator[str]:
    """`they left leeds`, `leaving leeds` of what the family did; `the sale of the farm` of what was done."""
    if verb in ("was", "were"):
        yield from _done(subject, rest) if _is_verb(rest) else ()
        return
    yield from (f"{who} {verb}{told}" for who in _WHO for told in dict.fromkeys((f" {rest}" * bool(rest), "")))
    doing = _ing(verb)
    yield from (f"{doing} {rest}",) if rest else (f"{subject} {doing}", doing)
    yield from (f"{subject} {doing} {rest}".strip(), f"{subject}'s {doing}", f"{doing} of the {subject}")


def _done(what: str, verb: str) -> Iterator[str]:
    doing = _ing(verb)
    yield from (f"{who} {verb} the {what}" for who in _WHO)
    for noun in filter(None, (doing, _NOUNS.get(doing))):
        yield from (f"{noun} the {what}", f"{noun} of the {what}", f"{what} {noun}", f"{what} being {verb}")


def _is_verb(word: str) -> bool:
    return word in _PLAIN or word in ("was", "were") or (word.endswith("ed") and len(word) > len("need"))


_PLAIN = {past: plain for plain, past in PAST.items()}


def _ing(verb: str) -> str:
    """`selling` of `sold`, `opening` of `opened`."""
    plain = _PLAIN.get(verb)
    if plain is None:
        return f"{verb.removesuffix('ed')}ing"
    return f"{plain}{plain[-1]}ing" if plain in _DOUBLED else f"{plain.removesuffix('e')}ing"
