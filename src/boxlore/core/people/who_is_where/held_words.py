"""Whether all the words of somebody told surely are held by one name: the last check of words, which asks of all else.

A name holds: words written large; small words that names have (particles, titles, kin, suffixes, markers as `née`);
what stands in quotes or in brackets. What it does not hold, so that the words are more than one person's name:

- any other small word behind its beginning: `Lina Lohse, die so ähnlich sieht`, `Anna oder Hedwig`, `Mary is sitting`;
- a word of kin, or a title of a wife or a man, behind a name: `Nora Fred Sister Winnie`, `Mum Dot Hargreaves`;
- a given name of a woman alone, and one of a man alone, both before a family name: `Nora Fred Oakes`;
- half of a quotation: `Titi » Dubois`.

Each asks, with the name that the words begin with as its proposal, or the names that they come to.
"""

import re
from collections.abc import Container, Iterator, Sequence
from itertools import chain

from boxlore.core.people.names.another_family_name import another_family_name
from boxlore.core.people.names.fathers_names import marks_child
from boxlore.core.people.names.lists_table import FAMILY_TOO, MEN_ALONE, WOMEN_ALONE
from boxlore.core.people.names.tokens import Token, first_word, starts_with, tokens_of, written
from boxlore.core.people.names.words_table import (
    FAMILY_WORDS,
    JOINED_SUFFIXES,
    KIN_ALONE,
    KIN_BEHIND,
    KIN_WORDS,
    MARKERS_BY_FIRST_WORD,
    RELIGIOUS_TITLES,
    SUFFIXES,
    TITLES,
    WIFE_TITLES,
)
from boxlore.core.people.who_is_where.small_words_table import ARTICLES, BESIDE_SEVERAL, DENY, SAID_BY, WITH

_OF_NAMES = frozenset().union(
    TITLES, KIN_WORDS, KIN_BEHIND, SUFFIXES, RELIGIOUS_TITLES, FAMILY_WORDS, ARTICLES,
    *(suffix.split() for suffix in JOINED_SUFFIXES),
    "of that ilk z ze fra i pa a tou y e and & t".split(),
)  # fmt: skip
"""Small words that stand in names: those that join two names are looked at before (`told_surely`)."""

BETWEEN_WHOM = (BESIDE_SEVERAL - WITH) | SAID_BY
"""Words that lead to whom somebody is beside of, or who says so."""

_ASIDE = re.compile(r"""\([^()]*\)|["“„”«»‘‚'’](?=\S)[^"“”»«]{1,40}?["”“»«’‘'](?![^\s,.;)])|« [^«»]* »""")
_QUOTES = re.compile(r"[“”„\"«»]")


def question_of_name(words: str) -> str:
    """What to ask of the words of a name that no one name holds; an empty string where one does."""
    bare = _ASIDE.sub(" ", words)
    if _QUOTES.search(bare):
        return f"Who is meant by “{words}”?"
    tokens = tokens_of(bare)
    if all(token.is_small for token in tokens):
        return ""  # `anna tamm`
    if tokens[0].plain in BETWEEN_WHOM | DENY and not tokens[0].is_given:
        return f"Who is meant by “{words}”: {written(tokens[1:])}?"  # `Tra il nonno e …`
    if is_religious_name(tokens):
        return ""
    held = _held_by_markers(tokens)
    at = next((at for at, token in enumerate(tokens) if at and not (at in held or _is_held(token))), 0)
    at = at or next((at for at in range(1, len(tokens) - 1) if _is_between_names(tokens, at)), 0)
    if at:
        return f"Who is meant by “{words}”: {written(tokens[:at])}?"
    people = [*_counted_by_letters(tokens)] or (_people(tokens, held) if "," not in words else _listed(words))
    names = [written(name) for name in people]
    return f"Are “{words}” several people: {'; '.join(names)}?" if len(names) > 1 else ""


def is_religious_name(tokens: Sequence[Token]) -> bool:
    """`Sister Teresa a Jesu`, whose `a` is `of` in Latin and joins nobody."""
    is_titled = tokens[0].plain in RELIGIOUS_TITLES or tokens[0].plain in TITLES
    return is_titled and any(token.text in ("a", "ab") for token in tokens[2:-1])


def _is_held(token: Token) -> bool:
    """Whether a word is one that names have."""
    is_of_names = token.is_particle or token.is_filiation or token.is_given or token.plain in _OF_NAMES
    is_shortened = not token.text.isalpha()  # `m.n.`, `ne'e`
    return not token.is_small or is_of_names or is_shortened or marks_child(token)


def _is_between_names(tokens: Sequence[Token], at: int) -> bool:
    """Whether `of`, which is `or` in Dutch, or `o` stands before a given name: `Anna Visser of Truus`."""
    is_titled = at == 1 and (tokens[0].plain in TITLES or tokens[0].plain in RELIGIOUS_TITLES)
    joins = tokens[at].text in ("e", "y", "i") and tokens[-1].is_given and tokens[-1].plain not in FAMILY_TOO
    if joins and at < len(tokens) - 2 and not tokens[at + 1].is_particle:
        return True  # `Dona Maria e Seu João`
    is_called = tokens[at + 1].is_given or tokens[at + 1].plain in KIN_WORDS or tokens[at + 1].plain in TITLES
    return tokens[at].text in ("of", "o") and is_called and not is_titled


def _held_by_markers(tokens: Sequence[Token]) -> Container[int]:
    """Where the words of a marker stand, and those of a sentence that tells another family name."""
    held: set[int] = set()
    for at in range(1, len(tokens)):
        if another_family_name(tokens[at:])[0]:
            return {*held, *range(at, len(tokens))}
        first_words = {first_word(tokens[at]), tokens[at].plain}
        for marker, _ in chain.from_iterable(MARKERS_BY_FIRST_WORD.get(word, ()) for word in first_words):
            held.update(range(at, at + starts_with(tokens[at:], marker)))
    return held


def _people(tokens: Sequence[Token], held: Container[int]) -> Iterator[Sequence[Token]]:
    """The names that the words come to, each but the first begun by kin, a title or another sex."""
    begins = 0
    for at in range(1, len(tokens)):
        if begins < at and at not in held and _begins_another(tokens, begins, at):
            yield tokens[begins:at]
            begins = at
    yield tokens[begins:]


def _listed(words: str) -> Iterator[Sequence[Token]]:
    """The names between commas, where the first two end in one family name: `Ona Butkienė, Stasė Butkienė`."""
    pieces = [tokens for piece in _ASIDE.sub(" ", words).split(",") if (tokens := tokens_of(piece))]
    ends = [piece[-1].plain for piece in pieces[:2] if len(piece) > 1 and not piece[0].is_small]
    whole = [piece for piece in pieces[1:] if len(piece) > 1 and piece[0].is_given and _is_of_a_family(piece[-1])]
    is_list = whole and (len(whole) > 1 or pieces[0][0].is_given) and not any(token.is_small for token in whole[0])
    if (len(ends) > 1 and ends[0] == ends[1]) or is_list:
        yield from pieces


def _counted_by_letters(tokens: Sequence[Token]) -> Iterator[Sequence[Token]]:
    """`Ethel`, `Dot` and `Stan` of `Ethel B Dot C Stan`: letters without a point that count between given names."""
    letters = tokens[1::2]
    counts = all(len(token.text) == 1 and token.text.isupper() for token in letters)
    follow = "".join(token.text for token in letters) in "BCDEFGHIJ"
    if len(tokens) > 2 and len(tokens) % 2 and counts and follow and all(token.is_given for token in tokens[::2]):
        yield from ([token] for token in tokens[::2])


def _begins_another(tokens: Sequence[Token], begins: int, at: int) -> bool:
    before, token, behind = tokens[at - 1], tokens[at], tokens[at + 1 : at + 2]
    is_named = any(name.is_given for name in tokens[begins:at])  # of `Great Aunt Sophie` none is
    is_title = token.plain in WIFE_TITLES or token.plain in _TITLES_OF_MEN
    leads = is_named and not marks_child(token) and (token.plain in KIN_WORDS or is_title)
    if is_named and not behind and token.plain in KIN_ALONE and not (token.is_given or token.is_small):
        return True  # `Auntie Nora Mum`
    if leads and behind and not (behind[0].is_small or token.is_given or token.is_particle or token.is_initial):
        return not (before.is_small or before.plain in _OF_NAMES)
    sexes = (WOMEN_ALONE, MEN_ALONE)
    names = {name.plain for name in tokens[begins:at]}
    is_other = any(names & one and token.plain in other for one, other in (sexes, sexes[::-1]))
    has_particle = any(name.is_particle for name in tokens[begins:at]) or len(tokens) > _MOST_OF_ONE
    has_particle = has_particle and tokens[begins].is_given
    ends = next((name for name in tokens[at + 1 :] if not name.is_particle), token)
    goes_on = has_particle and _is_of_a_family(before) and token.is_given and token.plain not in FAMILY_TOO
    return bool(behind) and (is_other or (goes_on and _is_of_a_family(ends)))


_MOST_OF_ONE = 4
_TITLES_OF_MEN = ("mr", "herr", "hr", "monsieur", "signor", "senor", "meneer", "harra", "herra")


def _is_of_a_family(token: Token) -> bool:
    return not (token.is_given or token.is_small or token.is_initial or token.plain in _OF_NAMES)
