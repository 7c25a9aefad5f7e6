"""How words of kin are read in a sentence (`my`, endings, cases), and who
somebody told without a name is to the one who tells (`Mum`).

The words themselves, and what relation each tells, are rows of `core.people.names.words_table`.
"""

from collections.abc import Sequence
from dataclasses import replace
from functools import cache, lru_cache
from unicodedata import normalize

from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.words_table import GRANDPARENTS, KIN_ALONE, KIN_OF_LANGUAGES, KIN_OR_NAME, KIN_WORDS
from boxlore.core.people.names_in_text.inflections import cyrillic_forms, key_of
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.names_in_text.text_normalising import CYRILLIC
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.tokens import Element, elements_of
from boxlore.core.statements import fold


def relation(element: Element) -> str:
    """The relation that a word of kin tells, also with an ending (`setäni`, `søsteren`), or an empty string."""
    if element.text.lower() == "på":
        return ""  # a preposition of the North, whose folded form is `pa`
    if (told := normalize("NFC", element.text.lower())) in _BY_THEIR_ACCENT:
        return _BY_THEIR_ACCENT[told]
    return KIN_WORDS.get(element.plain, "") or owned_relation(element) or _relation_of_form(element.plain)


_BY_THEIR_ACCENT = {
    "avô": "grandfather", "avó": "grandmother", "vovô": "grandfather", "vovó": "grandmother",
    "bisavô": "great-grandfather", "bisavó": "great-grandmother",
}  # fmt: skip
"""Words of Portuguese that without their accents are one: as told -> the relation."""


def _relation_of_form(plain: str) -> str:
    """The relation of a word of kin in a form of a sentence: `женой`, `dcerou`."""
    if plain in small_words.KIN_IN_A_CASE:
        return small_words.KIN_IN_A_CASE[plain]
    is_cyrillic = len(plain) > 3 and "а" <= plain[0] <= "я"
    return _russian_forms().get(key_of(plain, CYRILLIC), "") if is_cyrillic else ""


def is_form_of_kin(plain: str) -> bool:
    """`мамой`, `dcerou`: a word of kin in a form of a sentence."""
    return plain not in KIN_WORDS and bool(_relation_of_form(plain))


def is_oblique_kin(element: Element) -> bool:
    """`внуком`: a word of kin in a form of a sentence."""
    return is_form_of_kin(element.plain)


@cache
def _russian_forms() -> dict[str, str]:
    words = {word: kin for word, kin in KIN_WORDS.items() if "а" <= word[0] <= "я"}
    return {form: kin for word, kin in words.items() for form in cyrillic_forms(key_of(word, CYRILLIC))}


_ENDINGS_OF_OWN = ("ni", "mme", "nsa")
_ARTICLE_ENDINGS = ("en", "n", "a")


def owned_relation(element: Element) -> str:
    """The relation of a word of kin with a Finnish ending that says whose, or, written small, an article behind it."""
    plain = element.plain
    if element.kind != "word" or plain in KIN_WORDS:
        return ""
    for ending in _ENDINGS_OF_OWN:
        if plain.endswith(ending) and plain.removesuffix(ending) in small_words.FINNISH_KIN:
            return KIN_WORDS[plain.removesuffix(ending)]
    stems = () if element.is_large else (plain.removesuffix(end) for end in _ARTICLE_ENDINGS if plain.endswith(end))
    return next((KIN_WORDS[stem] for stem in stems if len(stem) > 2 and stem in KIN_WORDS), "")


_SHORTEST_OF_MINE = 4


def says_my(element: Element) -> bool:
    """Whether a word of kin says by its ending that it is the teller's own, in Hungarian: `nagyapám`."""
    plain = element.plain
    return len(plain) >= _SHORTEST_OF_MINE and plain.endswith("m") and {plain, plain[:-1]} <= KIN_WORDS.keys()


def relation_by_its_article(word: Element) -> str:
    """The relation of a word of kin that ends in its article, also at the beginning: `Søsteren`, `moren`."""
    return owned_relation(replace(word, text=word.text.lower()))


ME = frozenset(phrase for kind, phrase in table.WORDS_BETWEEN if kind == "me")
"""`me` of every language, also where the word is another one of another language (`ja`)."""

ME_ALONE = ME - {"as", "eg", "en", "es", "i", "ja", "ko au"}
"""Those of them that are no other word of another language."""

FOREBEARS = ("mother", "father", "grandmother", "grandfather")
"""Kin that everybody has, so that a word for one may mean the teller's own."""


def is_me(element: Element) -> bool:
    """Whether an element is `me` in any language."""
    return element.kind == "me" or element.plain in ME


def is_given_too(text: str) -> bool:
    """Whether a word of kin of one language is written as a given name of another one: `Mere`, but not `mère`."""
    return text.isascii() and text[:1].isupper() and token_of(text).is_given and fold(text) not in GRANDPARENTS


def _is_own_behind_article(article: Element, kin: Element) -> bool:
    """`la mamma`, `der Opa`, `a avó`: a family's own word behind an article, in languages that tell it so (English says
    `the mother` of anybody's)."""
    own = relation(kin) in FOREBEARS and kin.plain not in _ANYBODYS
    is_article = article.plain in small_words.OF_ONES_OWN or (article.plain == "a" and kin.plain not in english_words())
    return own and is_article and kin.plain in KIN_ALONE and not is_given_too(kin.text)


_ANYBODYS = frozenset("mutter vater mere pere madre padre moeder vader mor far".split())
"""Words for parents that are said of anybody's, of a priest or of a nun."""


_MINE_OF_MEN = frozenset("moj muj muoj moi mon mio meu mans mano мои".split())
"""`my`, as it is said of a man alone: the word of kin behind it is no woman."""

_PARENTS_OF_THE_NORTH = ("mor", "far", "māte")
"""Words for a parent that are short ones of other languages, but are the whole of who is told here."""


def may_be_own(words: str) -> str:
    """What somebody called `Nan` is to the one who tells, if it is no name; empty for other words."""
    return KIN_WORDS[fold(words)] if fold(words) in KIN_OR_NAME else ""


def _own_in(plain: str, language: str) -> str:
    """What a word of kin that is another word elsewhere is in one language."""
    of_languages = KIN_OF_LANGUAGES.get(plain, ())
    return next((own for own, languages in of_languages if language.partition("-")[0] in languages), "")


@lru_cache(maxsize=4096)
def own_relation(words: str, language: str = "") -> str:
    """What somebody told without a name is to the one who tells: `mother` for `Mum` and `my mother`, `self` for `me`.

    Empty for everybody else, also for somebody else's kin (`her mother`) and for kin with a name (`Aunt Mavis`).
    `language` is the one in which it was told, if that is known: `Isa` is a father in Estonian.
    """
    if own := _own_in(fold(words), language):
        return own
    elements = [element for element in elements_of(words) if element.kind != "end"]
    if len(elements) == 1 and is_me(elements[0]):
        return "self"
    if len(elements) > 2 and elements[0].plain in small_words.ARTICLES and elements[1].plain in table.MY_OWN:
        elements = elements[1:]  # `O meu avô`
    if len(elements) == 2 and elements[1].plain in table.MY_OWN and (own := relation_by_its_article(elements[0])):
        return own  # `moren min`
    mine = elements[0].plain if elements else ""
    is_mine = mine in table.MY_OWN
    if is_mine:
        elements = elements[1:]
    elif len(elements) == 2 and _is_own_behind_article(elements[0], elements[1]):
        return relation(elements[1])
    if len(elements) == 2 and (grandparent := _parent_of_a_parent(elements, is_mine=is_mine)):
        return grandparent
    if len(elements) != 1 or (elements[0].kind not in ("word", "me")):
        return ""
    if is_given_too(elements[0].text) and not is_mine:
        return ""
    own = relation(elements[0])
    if is_mine and mine in _MINE_OF_MEN and small_words.SEX.get(own) == "woman":
        others = (other for other, _ in KIN_OF_LANGUAGES.get(elements[0].plain, ()))
        own = next((other for other in others if small_words.SEX.get(other) == "man"), own)  # `mój tata`
    is_told_so = elements[0].plain in KIN_ALONE or words.lower() in _PARENTS_OF_THE_NORTH or len(words.split()) > 1
    in_a_sentence = is_form_of_kin(elements[0].plain) and own in FOREBEARS  # `мамы`
    return own if is_told_so or in_a_sentence else ""


def _parent_of_a_parent(words: Sequence[Element], *, is_mine: bool) -> str:
    """`grandmother` for `mum's mum` and `my father's mother`, with or without the sign; empty for all else."""
    whose = words[0].plain.replace("’", "'").removesuffix("s").removesuffix("'")
    is_own = whose != words[0].plain and (is_mine or whose in KIN_ALONE)
    of_parent = is_own and KIN_WORDS.get(whose) in ("mother", "father") and not words[1].is_large
    parent = relation(words[1]) if of_parent else ""
    return f"grand{parent}" if parent in ("mother", "father") else ""


def own_kin_in(note: str) -> str:
    """What somebody is to the one who tells, where the note on a name says so: `mother` for `my mother`, `mor min`; not
    for a word of kin alone, which may be anybody's."""
    first = note.partition(", ")[0]
    words = [fold(word) for word in first.split()]
    if len(words) > len(("my", "mother")) and words[0] in table.MY_OWN and table.OF_THE_DEAD.issuperset(words[1:-1]):
        first = " ".join((first.split()[0], first.split()[-1]))  # `my late husband`
    is_mine = len(words) > 1 and not table.MY_OWN.isdisjoint((words[0], words[-1]))
    return own_relation(first) if is_mine else ""


def name_in(note: str) -> str:
    """The whole name that a note behind a word of kin is: `Hilda Tamm` of `Mum (Hilda Tamm)`; empty for other notes."""
    first = note.partition(", ")[0]
    tokens = tokens_of(first)
    is_whole = len(tokens) > 1 and tokens[0].is_given and not any(token.is_small for token in tokens)
    parts = read_name(first) if is_whole else None
    return first if parts is not None and parts.given and parts.family and not parts.asks else ""
