"""Whether words written large that no table has are somebody by what stands beside them.

The problem. `Zinnia Rathbone` is in no table of given names, and neither is `Taieri`, which is a plain. Who asks about
every such word asks about each fourth caption.

The idea. A word alone is somebody only where something beside it is of people: what people alone do (`Ottoline
reading`), an initial turned behind (`Pohatu, W.`), a family (`the Pringle twins`, `the Leitches at Moeraki`), a feast
of one person (`Külli leeripäev`), who she is (`Ottoline (bride)`), whom one is with (`with Euphemia`). Two such words
side by side are a name where no article and no word of place leads to them. A word that any dictionary has is none.

The words are from memory of each language (common practice, no source).
"""

import re
from collections.abc import Sequence

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import FAMILY_WORDS
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, languages_with
from boxlore.core.people.names_in_text.languages_told import is_any_told, languages_told
from boxlore.core.people.names_in_text.named_after_table import ARTICLES, BEFORE, BEHIND, LEADS_TO_A_PLACE
from boxlore.core.people.names_in_text.ordinary_words import behind_of, is_english
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, LATIN, Word
from boxlore.core.people.names_in_text.word_classes_table import PEOPLE, THINGS, VERBS
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary

_SHORTEST = 3
DONE_BY_PEOPLE = frozenset(
    "reading writing knitting sewing dancing singing smiling laughing holding wearing feeding riding crying sleeping "
    "asleep cooking baking playing fishing milking shearing painting skating skiing swimming paddling peeling shelling "
    "digging mowing ironing weaving spinning speaking talking waving opening blessing"
    " conducting posing sitting kneeling mending pruning drinking "
    "eating telling teaching preaching learning trying showing driving cycling rowing helping".split()
)
_FAMILYS = FAMILY_WORDS | frozenset("twins children girls boys sisters brothers kids clan lads lasses siblings".split())
FEASTS = frozenset(
    "birthday christening baptism confirmation funeral engagement graduation leeripaev leer sunnipaev ristimine "
    "matused taufe konfirmation geburtstag beerdigung dop begravning fodelsedag dap begravelse fodselsdag ristiaiset "
    "rippijuhla hautajaiset syntymapaivat bapteme communion bautizo cumpleanos battesimo chrzest komunia".split()
)
_OF_PEOPLE = frozenset("photo photograph picture portrait snap print letter card album school class house home".split())
"""What is told of somebody in haste: `Rose school photo`."""
_OF_SOMEBODY = _OF_PEOPLE | FEASTS | _FAMILYS | frozenset(("wedding", "grave"))
_WHERE_PEOPLE_ARE = frozenset("with in at by and beside".split())
_ON, _SOMETHING = frozenset(("on", "up", "with")), frozenset(("the", "a", "my", "our"))
_ITS = frozenset(("his", "her"))
_VISIT = 3
"""Words before a name, `visit to the Drummonds`."""
_INITIAL_BEHIND = re.compile(r",\s*[A-Z]\.(?!\w)")
_IN_BRACKETS = re.compile(r"\s*[(\[](?:the |my |our )?([^\W\d_]+)[)\]]")
_IN_THE_VIEW = re.compile(r"\W+(?:behind|beyond|above|in the (?:background|distance))\b")
_PLACES_BEFORE = LEADS_TO_A_PLACE | ARTICLES | frozenset("the a an this near past opposite via ein eine een".split())
_AT = frozenset("at in on with by from".split())
_PLURALS = ("es", "s")


def is_word_of_a_dictionary(folded: str) -> bool:
    """Whether any dictionary has a folded word."""
    return is_english(folded) or is_ordinary(folded) or is_known_anywhere(folded)


def is_of_english(folded: str) -> bool:
    """Whether the dictionaries of English, large and small, have a folded word."""
    return is_english(folded) or is_ordinary(folded) or bool(languages_with(folded, ("en",)))


def is_told_as_a_person(told: str, words: Sequence[Word], first: int, last: int) -> bool:
    """Whether words written large, of which none is a known given name, are somebody by what stands beside them."""
    run = words[first : last + 1]
    led = words[first - 1].folded if first and words[first].before == " " else ""
    if words[first].script != LATIN or any(len(word.folded) < _SHORTEST or word.folded in BEHIND for word in run):
        return False
    bare = [APOSTROPHES.split(word.folded)[0] for word in run]
    if led in BEFORE or bare[0] in BEFORE or any(map(is_of_english, bare[1:])):
        return False
    is_beside_people = _is_beside_what_is_of_people(told, words, last)
    if last > first and (is_beside_people or bare[0] in PEOPLE) and not is_word_of_a_dictionary(bare[-1]):
        return True
    if is_of_english(bare[0]) or (is_word_of_a_dictionary(bare[0]) and not is_beside_people):
        return False
    if is_beside_people:
        return led not in _PLACES_BEFORE or led == "the"
    if led in _PLACES_BEFORE:
        return False
    if first == last and _is_on_something(words, first):
        return True
    if first == last:
        return led == "with" and not _IN_THE_VIEW.match(told, words[last].end)
    languages = languages_told(words, first)
    return "de" not in languages or not is_any_told(languages)


def is_told_by_its_thing(behind: Sequence[Word]) -> bool:
    """Whether a thing behind a word is told by it, and not somebody's: `Lily pond`, `Iris beds in flower`."""
    noun = behind[0].folded
    if any(word.folded in _OF_SOMEBODY or word.folded.endswith("ing") for word in behind):
        return False
    is_many = noun.endswith("s") and noun[:-1] not in VERBS and is_english(noun[:-1])
    return noun in THINGS or (is_many and len(behind) > 1 and behind[1].folded in _AT | {"of", "by"})


def is_beside_what_somebody_does(words: Sequence[Word], at: int) -> bool:
    """Whether a word of every day that begins a sentence is rather somebody: `Rose by the gate`, `Joy feeding hens`,
    `Grant on his motorbike`; not `Ivy on the wall`, `Dawn over the harbour`."""
    behind = behind_of(words, at)
    if not behind:
        return False
    is_of_somebody = behind[0].folded in _OF_SOMEBODY | _WHERE_PEOPLE_ARE
    return is_of_somebody or behind[0].folded.endswith("ing") or _is_at_its(words, at)


def _is_on_something(words: Sequence[Word], at: int) -> bool:
    """`Athol on the harrow`, at the beginning; not `Lambing on the plain`, `Passengers on the deck`."""
    behind = [word.folded for word in behind_of(words, at, 2)]
    return (
        at == 0
        and not words[at].folded.endswith(("s", "ing"))
        and len(behind) > 1
        and behind[0] in _ON
        and behind[1] in _SOMETHING
    )


def _is_at_its(words: Sequence[Word], at: int) -> bool:
    """`Grant on his motorbike`, `Pania in her uniform`."""
    return not _ITS.isdisjoint(word.folded for word in behind_of(words, at, 3)[1:])


def is_joined_to_another(words: Sequence[Word], at: int, *, begins: bool) -> bool:
    """`Losa and Tavita at …`, where a text begins with them: of two that no dictionary has."""
    if not begins or at + 3 >= len(words) or not words[at + 3].is_small or words[at + 3].before != " ":
        return False
    pair = (words[at], words[at + 2])
    return words[at + 1].folded == "and" and not any(
        word.is_small or is_of_english(word.folded) or word.folded in CALLED for word in pair
    )


def is_of_a_family(words: Sequence[Word], at: int) -> bool:
    """`the Pringle twins`, `Truscott family`, `the Leitches at Moeraki`; not `the Remarkables under cloud`."""
    behind = words[at + 1] if at + 1 < len(words) and words[at + 1].before == " " else None
    folded = words[at].folded
    led = words[at - 1].folded if at and words[at].before == " " else ""
    if behind is not None and behind.is_small and behind.folded in _FAMILYS:
        return not is_english(folded)
    stems = [folded.removesuffix(end) for end in _PLURALS if folded.endswith(end)]
    goes_on = behind is None or not behind.is_small or behind.folded in _AT
    if led != "the" or not goes_on or not stems or any(map(is_of_english, (folded, *stems))):
        return False
    is_with = at > 1 and words[at - 2].folded in ("with", "neighbours", "friends", "at")
    is_with = is_with or (at >= _VISIT and words[at - _VISIT].folded == "visit")
    return is_with or (at == 1 and behind is not None and behind.folded in _AT)


def _is_beside_what_is_of_people(told: str, words: Sequence[Word], last: int) -> bool:
    behind = words[last + 1] if last + 1 < len(words) and words[last + 1].before == " " else None
    if behind is not None and (behind.folded in DONE_BY_PEOPLE | FEASTS or _is_at_its(words, last)):
        return True
    bracket = _IN_BRACKETS.match(told, words[last].end)
    is_someone = bracket is not None and bracket[1].casefold() in PEOPLE
    return is_someone or _INITIAL_BEHIND.match(told, words[last].end) is not None
