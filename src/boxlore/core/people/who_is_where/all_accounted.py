"""Whether every word of an answer is accounted for: people are made without a question only where that is so.

A word of a name is accounted for if it is a known part of names, a word of the tables (a title, kin, a particle, a
suffix), or has the shape of a family name behind one that is. What is not:

- a word written large that nobody knows, before a given name: `Batsman Cyril Dawes`, `Bäckermeister Kurt Lohse`;
- a genitive, or a family as a whole, of which it is not told who was there: `Gerald's wedding`, `The Plumbs of
  Kaitangata`, `The Wiśniewski family`;
- one word alone that nobody knows, or that animals are called: `Anna, Zorb`, `Ivy with Tibbles`, `Anna and Rex`;
- two words of which neither is known: `Sexton Stott`.

Where people are listed (left to right, by rows, by numbers), and of several that nobody knows one is surely a name, the
family's names are of a kind that is not known here: they all are names (`Left to right: Ravi, Lakshmi, Meena`). So are
those of a family told as a whole (`All the Pells: …`). Whoever is told by `with` may still be a dog.

Such words ask and make nobody. Doubt goes over `and` and `with` to whoever is joined to them (`Hettie and Gerald's
wedding`), for there the grammar of the answer is in doubt too; a comma stops it.
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import pairwise

from boxlore.core.people.names.fathers_names import marks_child
from boxlore.core.people.names.parts import Tradition
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import CALLED, Token, tokens_of, written
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_WORDS, SUFFIXES, TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.item_words import is_my, is_noun_of_one
from boxlore.core.people.who_is_where.kin_words import own_relation, relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    AT_A_FEAST,
    CARDINALS,
    NAMES_OF_ANIMALS,
)
from boxlore.core.people.who_is_where.surely_a_name import GIVEN_SOMEWHERE, is_part_of_names
from boxlore.core.people.who_is_where.tokens import elements_of
from boxlore.core.statements import fold

_FAMILY_FIRST = frozenset(
    {
        Tradition.HUNGARIAN,
        Tradition.CHINESE,
        Tradition.JAPANESE,
        Tradition.KOREAN,
        Tradition.VIETNAMESE,
        Tradition.MAORI,
        Tradition.ARABIC,
        Tradition.ETHIOPIAN,
    }
)


def ask_of_unaccounted(items: Sequence[Item], known: KnownNames, *, listed: bool) -> None:
    """Let each name of which a word is not accounted for ask, and whoever is joined to it; nobody is made of them.

    `listed`: whether the words tell who stands where.
    """
    names = [item for item in items if item.is_name and item.person.is_person]
    surely = {id(item): _is_surely_known(item, known) for item in names}
    plain = {id(item) for item in names if _is_plainly_a_name(item, names, surely, listed=listed)}
    doubted = {id(item) for item in names if _is_doubtful(item, known)} - plain
    for at, item in enumerate(items):
        letters = item.is_name and all(token.is_initial for token in tokens_of(item.person.words))
        if letters and not any(following.joined == "and" for following in items[at + 1 : at + 2]):
            doubted.add(id(item))  # `P.` of `P., N. and B. Sorrel`
        if item.person.words.count("'s ") > 1 and not item.is_name:
            question = f"Who are “{item.person.words}”?"
            item.person = replace(item.person, asks=question, is_person=False)
        if not item.is_name and item.person.is_person and _says_more(item.person.words):
            asks = f"Who is meant by “{item.person.words}”?"
            item.person = replace(item.person, asks=asks, is_person=False)
    for item in items:
        if item.is_name and fold(item.person.note) in AT_A_FEAST and not read_name(item.person.words, known).kin:
            doubted.add(id(item))  # `Jaani ja Mari pulmas`: at their wedding
    for before, item in pairwise(items):
        if item.joined in ("and", "with") and id(item) in doubted:
            doubted.add(id(before))
    for before, item in pairwise(items):
        if item.joined == "and" and not before.person.is_person and _is_of_a_feast(before):
            doubted.add(id(item))  # `Le mariage de Luc et Anne`
        if item.joined == "and" and not before.person.is_person and _is_of_animals(before.person.words):
            doubted.add(id(item))  # `with the horses Duke and Bonny`
    for head in (item for item in items if not item.width and _is_of_animals(item.person.words)):
        doubted |= {id(item) for item in items if item.part == head.part}  # `Pferde: Max und Moritz`
    if doubted or any(item.person.asks and item.width and not item.is_several for item in items):
        doubted |= {id(item) for item in names if not (item.person.note or _is_surely_known(item, known))}
    doubted |= {id(item) for item in _unknown_alone(items, known)} - plain
    for item, following in pairwise(items):
        described = not item.is_name and (
            is_noun_of_one(item.person.words) or (item.is_described and following.is_unmarked)
        )
        is_called = following.is_name or own_relation(following.person.words) != ""
        if described and is_called and not following.joined and item.part == following.part:
            question = f"Is “{item.person.words}” {following.person.words}?"  # `Boy on the pony - Cyril`
            item.person = replace(item.person, asks=question, is_person=False)
    for item in items:
        if id(item) in doubted and item.is_name:
            proposal = _understood(item, known)
            question = f"“{item.person.words}”: who is that{proposal}?"
            item.person, item.is_name = replace(item.person, asks=question, is_person=False), False


def _says_more(words: str) -> bool:
    """Whether words that describe somebody tell more than one description does: a verb or an `and` among them, or a
    small word of where before them (`barnet er mig`, `Frau und Kindern`, `po pravici babička`)."""
    elements = elements_of(words)
    if len(elements) < 2 or own_relation(words):
        return False
    first, inside = elements[0], elements[1:-1]
    joined = not any(piece.is_genitive for piece in elements)  # `Edna and Percy's boy`
    joins = joined and any(
        piece.kind in ("verb", "and") and not piece.is_large and not is_my(piece) for piece in inside
    )
    tells = any(piece.plain.endswith("'s") and after.plain == "the" for piece, after in pairwise(elements))
    is_small = first.kind == "word" and first.text.islower() and len(first.plain) < _LONG
    leads = is_small and first.plain not in _DESCRIBE
    return joins or tells or (leads and not (relation(first) or is_my(first)))


_LONG = 4
"""Letters of a small word of where that may be none: shorter ones describe nobody."""

_DESCRIBE = ARTICLES.union(table.BEFORE_A_NAME, table.NOUNS, CARDINALS, ("egy",))
"""Small words that do."""

_VERBS = frozenset(phrase for kind, phrase in table.WORDS_BETWEEN if kind == "verb")


def _is_plainly_a_name(item: Item, names: Sequence[Item], surely: Mapping[int, bool], *, listed: bool) -> bool:
    """Whether words that nobody knows stand where only a name can: in a list of people of whom one is `surely` known
    (by the id of its item)."""
    tokens = tokens_of(item.person.words)
    is_like_one = all(token.text[:1].isupper() and token.text[1:].islower() and _may_name(token) for token in tokens)
    if not is_like_one or item.joined == "with" or item.is_beside or item.is_held or len(tokens) > 2:
        return False
    if len(tokens) > 1 and tokens[1].is_given and not tokens[0].is_given:
        return False  # `Bäckermeister Kurt`
    others = [surely[id(other)] for other in names if other is not item and other.joined != "with"]
    return bool(item.of_group) or (listed and any(others) and not all(others))


def _is_of_a_feast(item: Item) -> bool:
    """Whether the words begin with one for a school, a team or a feast."""
    tokens = [token.plain for token in tokens_of(item.person.words) if token.plain not in ARTICLES]
    return bool(tokens) and tokens[0] in table.HEADS


def _is_of_animals(words: str) -> bool:
    """Whether several animals or things are told: `the horses Duke`."""
    plains = [token.plain for token in tokens_of(words)]
    return any(
        table.NOUNS.get(plain[: -len(end)]) == "thing" for plain in plains for end in _PLURALS if plain.endswith(end)
    )


_PLURALS = ("s", "es", "e", "en", "er", "a")


def _may_name(token: Token) -> bool:
    """Whether a word is none of every day, of no thing, of no place in a picture, and not what animals are called."""
    plain = token.plain
    return not (plain in english_words() or plain in table.NOUNS or plain in NAMES_OF_ANIMALS or plain in TITLES)


def _unknown_alone(items: Sequence[Item], known: KnownNames) -> list[Item]:
    """Names of one word that nobody knows, or that animals bear, of whom nothing tells that it is somebody."""
    return [
        item
        for item in items
        if item.is_name
        and item.person.is_person
        and len(tokens_of(item.person.words)) == 1
        and (_is_an_animals(item.person.words, known) or not _is_surely_known(item, known))
        and fold(item.person.words) not in ARTICLES  # an article stands before a word: `Les` alone is somebody
        and not _tells_somebody(item.person.note)
    ]


def _is_an_animals(words: str, known: KnownNames) -> bool:
    """Whether a word is what dogs, cats and horses are called, and nobody of the family (`Rex`)."""
    return fold(words) in NAMES_OF_ANIMALS and not known.is_given(fold(words))


def _tells_somebody(note: str) -> bool:
    """Whether a note tells that it is somebody, by a word of kin or of people: `hans kone`, `the vicar`."""
    return any(_is_of_kin(part.split()) for part in note.split(", "))


def _is_of_kin(words: Sequence[str]) -> bool:
    """Whether a word of kin or of people stands behind words of whose and how alone: not in `on ema`."""
    plain = [fold(word.strip(",.")) for word in words]
    of_kin = [at for at, word in enumerate(plain) if word in KIN_WORDS or table.NOUNS.get(word) == "one"]
    return bool(of_kin) and not (plain[0] in _VERBS and of_kin[0] == 1)


def _is_doubtful(item: Item, known: KnownNames) -> bool:
    """Whether a word of the name is surely no part of one, as far as is known."""
    tokens = tokens_of(item.person.words)
    first = tokens[0]
    if any(token.plain.endswith("'s") for token in tokens):
        return True
    if first.plain in ARTICLES and not first.is_given and len(tokens) > 2 and tokens[2].is_small:
        return True  # `The Plumbs of Kaitangata`
    if len(tokens) > 1 and _is_of_several(first):
        return True  # `Brothers Perce`
    if len(tokens) == 1 and fold(item.person.note) in KIN_WORDS and not _is_known(first, known):
        return first.plain[-1] in "iy" and f"{first.plain[:-1]}a" in CALLED  # `Jan, brat Marii`
    if len(tokens) < 2:
        return first.plain in TITLES and first.plain not in KIN_WORDS and not known.is_given(first.plain)  # `Duke`
    if _is_known(first, known) or not first.text[0].isalpha() or _family_leads(item, known):
        return False
    if any(marks_child(token) for token in tokens[2:]):
        return False  # `Heydər Əli oğlu Məmmədov`: a father is told of nobody but a person
    return tokens[1].is_given or not any(_is_known(token, known) for token in tokens)  # `Sexton Stott`


def _is_surely_known(item: Item, known: KnownNames) -> bool:
    """Whether a word of the name is known, or the whole is of a people that has its own shape of names."""
    is_known = any(_is_known(token, known) for token in tokens_of(item.person.words))
    return is_known or read_name(item.person.words, known).tradition in _FAMILY_FIRST


def _is_known(token: Token, known: KnownNames) -> bool:
    """Whether a word is a part of names by knowledge or by the tables."""
    plain = token.plain
    if is_part_of_names(token, known) or token.is_capitals or plain in GIVEN_SOMEWHERE or plain in _WORDS_OF_NAMES:
        return True
    if "-" in plain and plain.rsplit("-", 1)[1] in CALLED:  # `Klein-Erna`
        return True
    if any(plain.endswith(end) and _is_pet_form(plain, end) for end in _DIMINUTIVES):
        return True
    return all(part in TITLES for part in plain.split("-"))


def _is_pet_form(plain: str, ending: str) -> bool:
    """`Truusje` of Truus, `Rositha` of none."""
    stem = plain.removesuffix(ending)
    names = {stem, f"{stem}a", f"{stem}e", f"{stem}o"}
    return len(stem) > 2 and not (names.isdisjoint(CALLED) and names.isdisjoint(GIVEN_SOMEWHERE))


_DIMINUTIVES = tuple("je tje pje ke chen lein inho inha ito ita ino ina uccia etta ette".split())
"""Endings that make a pet form of a given name: Dutch, German, Portuguese, Spanish, Italian, French."""


def _is_of_several(token: Token) -> bool:
    """`Brothers`, `Vennad`: a word of several people, which stands before names and is none."""
    is_noun = table.NOUNS.get(token.plain) == "many" and not token.is_given
    return is_noun and token.plain not in _WORDS_OF_NAMES


_WORDS_OF_NAMES = frozenset({*TITLES, *KIN_WORDS, *SUFFIXES, *ARTICLES, *table.BEFORE_A_NAME})


def _family_leads(item: Item, known: KnownNames) -> bool:
    """Whether the name is of a people that tells the family name first, or has it before a comma."""
    parts = read_name(item.person.words, known)
    first = tokens_of(item.person.words)[0].text
    turned = parts.patronymic and parts.family == first  # `Белова Анна Львовна`
    return (
        parts.tradition in _FAMILY_FIRST or bool(turned) or "," in item.person.words or bool(parts.kin or parts.title)
    )


def _understood(item: Item, known: KnownNames) -> str:
    """`: Cyril Dawes` of `Batsman Cyril Dawes`, as a proposal; empty where nothing of it is surely a name."""
    tokens = tokens_of(item.person.words)
    suffix = f" {tokens[-1].text}" if len(tokens) > 2 and tokens[-1].plain in SUFFIXES else ""
    names = tokens[:-1] if suffix else tokens
    if len(names) == 2 and not _is_known(names[0], known) and names[1].is_given:
        return f": {names[1].text} {names[0].text}{suffix}, or {names[1].text}{suffix}"  # `Huber Sepp`, `Vlk Jan ml.`
    if len(tokens) > 1 and not _is_known(tokens[0], known) and tokens[1].is_given:
        return f": {written(tokens[1:])}"
    return ""
