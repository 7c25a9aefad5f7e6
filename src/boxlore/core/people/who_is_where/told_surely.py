"""Whether each person told with confidence is one, looked at when all of the answer is read: a last check.

What the grammars before it let through, and what nobody is called:

- a word that joins, at an end of a name or within it: `Rosa y`, `mormor Stina m. Greta`; two family names may be joined
  (`Ramón y Cajal`);
- several given names of which each is called by, where rows are told and no comma parts them: `Ethel Ada Winnie`;
- a sentence instead of a description: a word of knowing, `your`, a name within, very many words.

Each asks, and offers the names that the words hold; nobody is made of them until it is answered.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.people.names.lists_table import FAMILY_TOO, MEN_ALONE, WOMEN_ALONE
from boxlore.core.people.names.short_forms_table import SHORT_FORMS
from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_ALONE, KIN_WORDS, RELIGIOUS_TITLES, TITLES
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.denied_elsewhere import ask_of_denied
from boxlore.core.people.who_is_where.frames import says_before
from boxlore.core.people.who_is_where.held_words import BETWEEN_WHOM, is_religious_name, question_of_name
from boxlore.core.people.who_is_where.item_words import is_my, is_of_somebody
from boxlore.core.people.who_is_where.kin_words import own_relation, relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.people.who_is_where.remarks import is_absent
from boxlore.core.people.who_is_where.surely_a_name import is_given_somewhere
from boxlore.core.people.who_is_where.tokens import Element, elements_of
from boxlore.core.people.who_is_where.what_is_not_known import KNOWING
from boxlore.core.people.who_is_where.written_out import ROWS
from boxlore.core.statements import fold

_ANYWHERE = frozenset(
    "and et en och og ja ir un und a oraz agus m. med mit with con com avec kanssa koos и с "
    "or oder või eller или albo lub arba nebo vagy".split()
)
_LEADS = frozenset("and et och og ja ir und oraz agus y e i и m. with avec".split())
_ENDS = _ANYWHERE | frozenset("y e i o ou or oder su ar z s se by von".split())
"""Words that join people, in the languages of the tables: between two large words, before them, behind them. Those of
one letter join family names too, and `a` and `un` are articles before a word."""

_BARS = ("Bar", "Bars")
"""`D.S.O. and Bar`: an honour given twice."""

_PET_FORMS = frozenset(form for _, *forms in SHORT_FORMS for form in forms)
_ASIDE = re.compile(r"""\([^()]*\)|["“„«'‘][^"”“»']*["”“»'’](?!\w)""")
_MOST_WORDS = 9
"""Of somebody described without a name (`the boy on the pony behind the fence`): more are a sentence."""


def ask_of_what_is_no_person(items: Sequence[Item], known: KnownNames) -> None:
    """Let whoever is told with confidence ask, of whom the words as a whole are no name and no description."""
    ask_of_denied(items)
    rows = {item.row for item in items if item.row in ROWS}
    words = [len(tokens_of(item.person.words)) for item in items if item.is_name and item.person.is_person]
    told_whole = words.count(1) * 2 < len(words) > 2  # most are told by given and family name
    for item in items:
        person = item.person
        if not person.is_person or not person.words:
            continue
        question = (
            _of_a_name(item, known, rows=len(rows), told_whole=told_whole)
            if item.is_name
            else _of_a_description(person.words)
        )
        question = question or _of_a_note(item)
        if question:
            item.person, item.is_name = replace(person, asks=question, is_person=False), False


def _of_a_name(item: Item, known: KnownNames, *, rows: int, told_whole: bool) -> str:
    words = item.person.words
    told = _ASIDE.sub(" ", words).split()
    joins = [at for at, word in enumerate(told) if _joins_people(told, at)]
    if joins and not is_religious_name(tokens_of(words)):
        names = [" ".join(name) for name in _parted(told, joins)]
        return _several(words, names) if len(names) > 1 else f"Is “{words}” {''.join(names)}?"
    rows_tell = (rows > 1 and not (told_whole and len(told) == _GIVEN_OF_ONE)) or (
        rows == 1 and len(told) > _GIVEN_OF_ONE
    )
    alone = rows_tell and not (item.joined or "," in words) and _are_called_by_each(words, known, len(told))
    alone = alone or _is_a_couple(words, known)
    return _several(words, words.split()) if alone else question_of_name(words)


_GIVEN_OF_ONE = 2
"""Given names that are often one person's (`Anna Maria`)."""


def _several(words: str, names: Sequence[str]) -> str:
    return f"Are “{words}” several people: {'; '.join(names)}?"


def _joins_people(told: Sequence[str], at: int) -> bool:
    if len(told) == 1 or at in (0, len(told) - 1):
        return len(told) > 1 and told[at] in (_ENDS if at else _LEADS)
    before, behind = told[at - 1], told[at + 1]
    are_large = before[:1].isupper() and behind[:1].isupper() and not before.endswith(",")
    return told[at] in _ANYWHERE and are_large and behind not in _BARS


def _parted(told: Sequence[str], joins: Sequence[int]) -> Iterator[Sequence[str]]:
    begins = 0
    for at in (*joins, len(told)):
        if at > begins:
            yield told[begins:at]
        begins = at + 1


def _is_a_couple(words: str, known: KnownNames) -> bool:
    """`Ethel Fred`: a given name of a woman and what a man is called by, or the other way, and no family name."""
    tokens = tokens_of(words)
    if len(tokens) != _GIVEN_OF_ONE or tokens[1].plain in FAMILY_TOO or tokens[1].plain not in _PET_FORMS:
        return False
    first, last = tokens[0].plain, tokens[1].plain
    are_two = (first in WOMEN_ALONE and last in MEN_ALONE) or (first in MEN_ALONE and last in WOMEN_ALONE)
    return are_two and not known.is_family(last)


def _are_called_by_each(words: str, known: KnownNames, several: int) -> bool:
    """`Ethel Ada Winnie`, `Bert Ern`: given names, of which the last is no family name."""
    tokens = tokens_of(words)
    are_given = len(tokens) > 1 and all(is_given_somewhere(token, known) and token.text.isalpha() for token in tokens)
    last = tokens[-1].plain
    leads = any(token.plain in KIN_WORDS or token.plain in TITLES for token in tokens)
    is_family = known.is_family(last) or (last in FAMILY_TOO and not (several > _GIVEN_OF_ONE and last in _PET_FORMS))
    return are_given and not (leads or is_family)


def _of_a_description(words: str) -> str:
    """What to ask of words that describe somebody, where they are a sentence."""
    if own_relation(words):
        return ""
    told = words.split()
    if fold(told[0]) in BETWEEN_WHOM | small_words.DENY and len(told) > 1:
        return f"Who is meant by “{words}”?"  # `Tra il nonno e …`
    if any(_is_called_by(word) for word in told[:2]) and any(fold(word) in _ARTICLES_OF_ENGLISH for word in told[1:]):
        return f"Who is meant by “{words}”?"  # `nan pop an unknown bloke`
    if _begins_with_a_name(told) or _is_titled_and_more(told):
        return f"Who is meant by “{words}”?"  # `K. Novák s mým otcem`
    knows = any(token.plain in KNOWING and token.plain not in NOUNS for token in tokens_of(words))
    names_another = any(_is_name_within(word) for word in told[1:])
    leads = fold(told[0]) in small_words.ARTICLES or is_my(elements_of(words)[0])
    if any(_is_kin_within(word) for word in told[1:]) and not leads:
        return f"Who is meant by “{words}”?"
    if knows or len(told) > _MOST_WORDS or (names_another and len(told) > _MOST_BEFORE_A_NAME):
        return f"Who is meant by “{words}”?"
    return ""


def _of_a_note(item: Item) -> str:
    """What to ask of somebody of whom it is noted that another one is seen: `Nainen (on sisar Lempi)`, `Mari (arvates
    on see Leida)`."""
    person = item.person
    for piece in filter(None, person.note.split(", ")):
        told = elements_of(piece)
        if item.is_name and len(told) == 2 and _is_an_animal(told):
            return f"Is “{person.words}” someone in the picture?"  # `Nell (the mare)`
        verbs = [at for at, word in enumerate(told) if word.kind == "verb" and word.plain != "to" and not word.is_large]
        last = verbs[-1] if verbs else 0
        behind = told[last + 1 :] if last or (verbs and not item.is_name) else []
        named = behind[int(bool(behind) and behind[0].plain in small_words.THESE) :]
        if verbs and told[last].plain == "on" and named[:1] == behind[:1] and not _is_led(named):
            continue  # `leaning on Bob`, where `on` is no verb
        if item.is_name and told[:1] and told[0].plain in small_words.RELATIVES and is_absent(told):
            return f"Is “{person.words}” in the picture?"  # `Uncle Joe, who took it`
        if says_before(told):
            continue  # `We always said it was Vera`, which asks of her (`surely_a_name`)
        if told[:1] and told[0].plain not in small_words.SAID_BY and _is_called(named):
            return f"Is “{person.words}” {piece[named[0].start :]}, or somebody else?"
    return ""


def _is_an_animal(told: Sequence[Element]) -> bool:
    """`the mare`, `unser Hund`."""
    leads = told[0].plain in small_words.ARTICLES or is_my(told[0])
    return leads and NOUNS.get(told[1].plain) == "thing"


def _is_called(words: Sequence[Element]) -> bool:
    """Whether words are a name: a given name, or kin or a title and a name, of which none says whose."""
    if not words or not words[-1].is_large or any(word.is_genitive for word in words):
        return False
    return (words[0].is_large and token_of(words[0].text).is_given) or _is_led(words)


def _is_led(words: Sequence[Element]) -> bool:
    """`sisar Lempi`: a small word of kin or a title, and a name."""
    leads = len(words) > 1 and not words[0].is_large and words[1].is_large
    return leads and words[0].plain in _LEAD_NAMES


_LEAD_NAMES = KIN_WORDS.keys() | TITLES | RELIGIOUS_TITLES


def _is_titled_and_more(told: Sequence[str]) -> bool:
    """`la señora Molina tiene`: a title and a large word, and a small one behind them that no name has."""
    tokens = [token_of(word) for word in told[fold(told[0]) in small_words.ARTICLES :]]
    if len(tokens) < _TITLED or tokens[0].plain not in TITLES or tokens[1].is_small or tokens[1].plain.endswith("'s"):
        return False
    return tokens[-1].is_small and not (relation(elements_of(told[-1])[0]) or tokens[-1].plain in NOUNS)


_TITLED = 3


def _begins_with_a_name(told: Sequence[str]) -> bool:
    """Whether a name stands before the words, and not in the form that says whose."""
    elements = elements_of(" ".join(told))
    first = token_of(told[0])
    named = told[0][:1].isupper() and (first.is_initial or first.is_given)
    is_kin = relation(elements[-1]) != "" and all(element.is_large for element in elements[:-1])  # `Jaan Tamme naine`
    return named and len(told) > _GIVEN_OF_ONE and not (is_of_somebody(elements) or is_kin)


_ARTICLES_OF_ENGLISH = ("a", "an")


def _is_called_by(word: str) -> bool:
    """Whether a word of its own is what somebody is called by: `nan`, `joyce`."""
    return fold(word) in KIN_ALONE or token_of(word).is_given


_MOST_BEFORE_A_NAME = 4


def _is_kin_within(word: str) -> bool:
    """`Mum` of `Front passenger seat Mum`."""
    return word[:1].isupper() and token_of(word).plain in KIN_ALONE


def _is_name_within(word: str) -> bool:
    bare = word.strip(",.;")
    return bare[:1].isupper() and not bare.endswith(("'s", "’s")) and token_of(bare).is_given
