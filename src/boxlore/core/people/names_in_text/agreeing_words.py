"""Whether a family name, or a given one, is an adjective or a time where a sentence begins, in many languages.

Rule kept: where nothing but the beginning of a sentence makes a word large, an adjective is none if the thing that it
tells of stands right behind it in the same case (`Must koer`, `Biały dom`, `Petit chien`), or another adjective that
`and` joins to it (`Noir et blanc`). No name stands so beside a noun: behind a name follows what somebody does or has.
Which words are such adjectives and things is told by dictionaries (`agreeing_words_table`). None is a thing that is a
verb in a language that the sentence may be of (`languages_told`: `Svart båt vid bryggan`, but `Stark bar korgen`), nor,
as far as its ending tells, one for people, since what somebody is may stand behind a name. A month or a season before
its year is a time (`Sommer 1932`). All else is a question.
"""

from collections.abc import Sequence
from functools import cache

from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.people.names_in_text.agreeing_words_table import AGREEING
from boxlore.core.people.names_in_text.known_words import is_noun_in
from boxlore.core.people.names_in_text.languages_told import is_done_in, languages_told
from boxlore.core.people.names_in_text.text_normalising import Word
from boxlore.core.statements import fold

_ENDS = '.!?:;"“”„«»(\n'
_SEASONS = ("spring", "summer", "autumn", "winter")
_YEARS = range(1500, 2100)
_CAPITAL_NOUNS = "de"
"""The language that writes its nouns large."""

_WAS = frozenset("war ist waren sind".split())
_THE = frozenset("der die das ein eine".split())
_WHAT_SOMEBODY_IS = frozenset(
    "ruhe seele stimme hoffnung liebe kraft sonne star kopf herz hand nummer chef ausnahme regel gluck grund schatz "
    "engel name erste letzte einzige jugend stolz".split()
)
"""German things that somebody is said to be."""


@cache
def _times() -> frozenset[str]:
    """Every month and season of one word, folded."""
    rows = [row for language in LANGUAGES for row in language.months]
    seasons = [language.words.get(season, "").split("|") for language in LANGUAGES for season in _SEASONS]
    return frozenset(fold(word) for words in (*(row.split() for row in rows), *seasons) for word in words if word)


@cache
def _ands() -> frozenset[str]:
    return frozenset(fold(word) for language in LANGUAGES for word in language.words.get("and", "").split("|"))


@cache
def _agreeing() -> dict[str, tuple[frozenset[str], frozenset[str]]]:
    """By language, its adjectives and its things; taken apart when they are first asked for, since they are many."""
    return {language: (frozenset(told.split()), frozenset(of.split())) for language, (told, of) in AGREEING.items()}


def begins_a_sentence(words: Sequence[Word], at: int) -> bool:
    return not at or any(sign in words[at].before for sign in _ENDS)


def is_told_of_a_thing(words: Sequence[Word], at: int, *, is_named_behind: bool) -> bool:
    """Whether an adjective or a time begins a sentence here; `is_named_behind` says that a name may follow."""
    if not begins_a_sentence(words, at) or not _is_followed(words, at):
        return False
    if _is_turned_about(words, at):
        return True
    folded, behind = words[at].folded, words[at + 1]
    if behind.folded.isdigit() and int(behind.folded) in _YEARS:
        return folded in _times()
    told = [language for language, (qualities, _) in _agreeing().items() if folded in qualities]
    if not told:
        return False
    possible = languages_told(words, at)
    return any(
        _is_thing_behind(words, at + 1, language, is_named=is_named_behind)
        for language in told
        if language in possible and not is_done_in(behind.folded, possible - {language})
    )


def _is_turned_about(words: Sequence[Word], at: int) -> bool:
    """`Klein war die Stube`, `Frisch gestrichen war der Zaun`: what a thing is, before it. A goalkeeper is no thing."""
    behind = [word.folded for word in words[at + 1 : at + 6]]
    if not is_noun_in(words[at].folded, _CAPITAL_NOUNS):
        return False
    for was in (0, 1):
        if behind[was : was + 1] and behind[was] in _WAS and behind[was + 1 : was + 2] and behind[was + 1] in _THE:
            noun = next((word for word in words[at + 3 + was : at + 6] if word.spelled[0].isupper()), None)
            is_told = noun is not None and not noun.folded.endswith("ste") and noun.folded not in _WHAT_SOMEBODY_IS
            return noun is not None and is_told and is_thing_in(noun.folded, _CAPITAL_NOUNS)
    return False


def is_thing_in(folded: str, language: str) -> bool:
    """Whether a word is a thing, and nobody, in one language."""
    return folded in _agreeing()[language][1]


def is_thing_told(words: Sequence[Word], at: int) -> bool:
    """Whether a word is a thing in a language that the sentence may be of, and a verb or a small word in none."""
    folded = words[at].folded
    possible = languages_told(words, at)
    told = [language for language, (_, things) in _agreeing().items() if folded in things and language in possible]
    return any(not is_done_in(folded, possible - {language}) for language in told)


def _is_thing_behind(words: Sequence[Word], at: int, language: str, *, is_named: bool) -> bool:
    """`koer`, `ja valge`; not `ja vana koer`, which may be a dog beside somebody, nor `bar säcken`, where an adjective
    is what somebody did as well."""
    qualities, things = _agreeing()[language]
    word = words[at]
    is_small = word.spelled[0].islower()
    if word.folded in things:
        return is_small if language != _CAPITAL_NOUNS else not (is_small or is_named)
    if word.folded not in _ands() or not _is_followed(words, at) or _is_followed(words, at + 1):
        return False
    return words[at + 1].spelled[0].islower() and words[at + 1].folded in qualities


def _is_followed(words: Sequence[Word], at: int) -> bool:
    return at + 1 < len(words) and words[at + 1].before == " "
