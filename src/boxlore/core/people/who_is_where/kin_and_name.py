"""Kin, or a kind of people, before the name of whoever it is: `my sister Anna` as `my sister` and `Anna`.

kin = ("my" / "Ruth's") word of kin / a kind of person            ; “my sister Anna”, “baby Tom”, “the vicar Oakes”
"""

from collections.abc import Sequence

from boxlore.core.people.names.fathers_names import marks_child
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.words_table import GIVEN_TITLES, KIN_WORDS, PARTICLES, SUFFIXES, TITLES, WIFE_TITLES
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.groups import is_plural_of_kin
from boxlore.core.people.who_is_where.item_words import between, is_family, is_my, is_of_somebody
from boxlore.core.people.who_is_where.kin_words import is_given_too, owned_relation, relation, relation_by_its_article
from boxlore.core.people.who_is_where.tokens import Element

_NOUNS = table.NOUNS


def kin_and_name(words: Sequence[Element], text: str) -> tuple[str, str]:
    """`my sister Anna` as `my sister` and `Anna`; two empty texts where the words are not so."""
    if titled := _titles_and_family_name(words):
        return "", between(titled, text)
    has_fathers_name = len(words) > 3 and marks_child(token_of(words[2].text)) and words[1].is_large
    if _has_particles(words) or has_fathers_name:
        return "", ""  # `Kees van der Meulen`, `Leena Jaani tütar Saar`
    opens = is_my(words[0]) or bool(owned_relation(words[0])) or not words[0].is_large or is_of_somebody(words)
    opens = opens or (relation(words[0]) in _CHILDREN_AND_SPOUSES and not token_of(words[0].text).is_given)
    opens = opens or ((not words[1:2] or not words[1].is_large) and not token_of(words[0].text).is_given)
    opens = opens or (len(words) > 1 and bool(relation_by_its_article(words[0])) and is_my(words[1]))  # `Moren min`
    opens = opens or _are_named_behind(words) or words[0].plain in table.OF_THE_DEAD
    if led := _kin_and_how(words):
        return between(words[:led], text), between(words[led:], text)
    names_follow = len(words) > 1 and words[1].is_large and token_of(words[1].text).is_given
    opens = opens or (
        _NOUNS.get(words[0].plain) in ("one", "many")
        and names_follow
        and not (_is_kin_of_one(words[0]) or token_of(words[0].text).is_given or words[0].plain in TITLES)
    )  # `Aunties Una and Enid`
    whose = _whose_kin(words)
    at = whose
    while not whose and opens and at < len(words) and not (words[at].is_large and at and not _is_kin(words[at])):
        at += 1
    if at > 1 and _NOUNS.get(words[at - 2].plain) == "one" and _is_called_so(words[at - 1]):
        at -= 1  # `su señora doña Ana`, `lo sposo zio Totò`, `ihr Mann Onkel Otto`
    before, name = words[:at], _without_remark(words[at:])
    if len(before) > 1 and before[-1].plain in small_words.ARTICLES and not before[-1].is_large:
        before = before[:-1]  # `o noivo o Zé Faria`
    if not before or not name or (before[0].text == "Ma" and not _is_surely_called(name)):
        return "", ""  # `Ma Tull`, where `ma` is `my` in French
    is_titled = before[-1].is_large and before[-1].plain in WIFE_TITLES and len(before) > 1
    is_titled = is_titled and (len(before) > 2 or not is_my(before[0]))  # `Unsere Nachbarin Frau Krüger`
    if is_titled and len(name) == 1 and not token_of(name[0].text).is_given:
        return between(before[:-1], text), between([before[-1], *name], text)  # `die alte Frau Kruse`
    note = ", ".join(filter(None, (between(before, text), between(words[at + len(name) :], text))))
    plains = {word.plain for word in before} - small_words.ARTICLES
    small = bool(plains) and plains <= table.BEFORE_A_NAME
    near = len(before) == 1 and (relation(before[0]) in _NEAR or bool(owned_relation(before[0])))
    has_article = len(before) == 2 and bool(relation(before[0]) or relation_by_its_article(before[0]))
    if has_article and is_my(before[1]):  # Norwegian: `broren sin Nils`
        return note, between(name, text)
    if len(before) == 1 and before[0].kind == "my" and token_of(name[0].text).is_given:  # `our Edna`
        return note, between(name, text)
    if len(before) == 2 and before[0].plain in small_words.ARTICLES and before[1].plain in small_words.LADIES:
        return note.partition(", ")[2], between(words[1 : at + len(name)], text)  # `La signora Bianchi`
    if _says_what_kin(before) and _is_surely_called(name):
        return note, between(name, text)
    own = (
        is_my(before[0])
        or whose > 0
        or is_of_somebody(before)
        or is_plural_of_kin(before[-1])
        or before[-1].plain in _NOUNS
    )
    return (note, between(name, text)) if small or near or (own and _is_kin(before[-1])) else ("", "")


def _kin_and_how(words: Sequence[Element]) -> int:
    """How many words `son frère jumeau` of `son frère jumeau Paul` takes: whose, kin, and one small word of which."""
    if len(words) < _KIN_AND_HOW or not (is_my(words[0]) and relation(words[1])):
        return 0
    how, name = words[2], words[3:]
    is_how = how.kind == "word" and how.text.islower() and how.plain not in _BEGIN_WHAT_FOLLOWS | small_words.OF
    is_how = is_how and not (relation(how) or how.plain in TITLES or token_of(how.text).is_particle)
    return 3 if is_how and all(word.is_large for word in name) and token_of(name[0].text).is_given else 0


_KIN_AND_HOW = 4


def _says_what_kin(before: Sequence[Element]) -> bool:
    """`proud dad`, `vanem vend`, `lo sposo`: small words before kin or a kind of people, none of which tells where."""
    last, leads = before[-1], before[:-1]
    is_somebody = bool(relation(last)) or _NOUNS.get(last.plain) == "one"
    role = next((at + 1 for at, word in enumerate(leads) if _NOUNS.get(word.plain) == "one"), 0)
    if role == len(leads) - 1 and relation(last) and is_my(leads[-1]):
        leads = leads[:-1]  # `best man his brother Colin`
    tell_how = all(word.kind == "word" and word.text.islower() and word.text.isalpha() for word in leads)
    are_others = _BEGIN_WHAT_FOLLOWS | small_words.WITH | small_words.SAYING | small_words.NOT_IN_IT | small_words.BUT
    return (
        is_somebody
        and last.text.islower()
        and 0 < len(leads) < _MOST_SMALL
        and tell_how
        and not any(word.plain in are_others or word.plain.endswith("ing") for word in leads[_articles(leads) :])
    )


def _articles(words: Sequence[Element]) -> int:
    """1 where an article leads the words, and more words follow it: `le pauvre`."""
    return int(len(words) > 1 and words[0].plain in small_words.ARTICLES)


_MOST_SMALL = 3


def _is_surely_called(name: Sequence[Element]) -> bool:
    """Whether words are a name by a given name, or by a title or kin that leads it."""
    first = name[0]
    is_led = len(name) > 1 and (first.plain in TITLES or first.plain in KIN_WORDS)
    has_initials = len(name) > 1 and token_of(first.text).is_initial and name[-1].is_large
    return token_of(first.text).is_given or is_led or has_initials


def _has_particles(words: Sequence[Element]) -> bool:
    """Whether a name is told with particles between its large words, and nothing else small."""
    inside = words[1:-1]
    is_name = len(inside) > 0 and words[0].is_large and words[-1].is_large and not words[1].is_large
    is_name = is_name and not (words[0].plain in _NOUNS or relation(words[0]) or words[0].kind != "word")
    return is_name and all(word.is_large or token_of(word.text).is_particle for word in inside)


def _titles_and_family_name(words: Sequence[Element]) -> Sequence[Element]:
    """`docteur Cottard` of `le docteur Cottard`, `härra õpetaja Kuusk`: titles, of which a noun may be one too, stay
    with a family name; none for all else."""
    first = (at for at, word in enumerate(words) if word.plain not in small_words.ARTICLES or word.text.endswith("."))
    at = next(first, len(words))  # `A. M. Figueira`
    between_titles = _TITLES_ALONE | {"le", "la"}
    ends = next((end for end in range(at, len(words)) if words[end].plain not in between_titles), len(words))
    name = words[ends:]
    is_led = ends > at and words[ends - 1].plain in _TITLES_ALONE and (at > 0 or not words[ends - 1].is_large)
    is_family = bool(name) and name[-1].is_large and not token_of(name[-1].text).is_given
    is_family = is_family and all(token_of(word.text).plain in PARTICLES for word in name[:-1])
    return words[at:] if is_led and is_family else ()


_TITLES_ALONE = TITLES - KIN_WORDS.keys() - GIVEN_TITLES - WIFE_TITLES


def _whose_kin(words: Sequence[Element]) -> int:
    """How many words `Mihkel Tamme naine` of `Mihkel Tamme naine Leena` takes: in Estonian a whole name stands before a
    word of kin, in a form that says whose."""
    whose, behind = words[:3], words[3:]
    is_kin = len(whose) == 3 and whose[2].plain in small_words.KIN_BEHIND_WHOSE and not whose[2].is_large
    are_names = is_kin and all(word.is_large for word in (*whose[:2], *behind)) and bool(behind)
    return 3 if are_names and token_of(whose[0].text).is_given else 0


def _is_kin_of_one(word: Element) -> bool:
    is_many = _NOUNS.get(word.plain) == "many" and word.text.lower() not in small_words.NO_NOUNS
    return bool(relation(word)) and not is_many  # `Сёстры` are several


def _are_named_behind(words: Sequence[Element]) -> bool:
    """`The Misses Ada …`: an article, a word of several, and a given name."""
    if len(words) < 3 or words[0].plain not in small_words.THE or _NOUNS.get(words[1].plain) != "many":
        return False
    return words[2].is_large and token_of(words[2].text).is_given


_BEGIN_WHAT_FOLLOWS = table.BEFORE_A_PLACE | small_words.BEGIN_A_REMARK


def _without_remark(name: Sequence[Element]) -> Sequence[Element]:
    """`Reg on her knee` without what stands behind the name."""
    small = next((at for at, word in enumerate(name) if at and word.text.islower() and word.plain not in SUFFIXES), 0)
    behind = name[small:] if small and token_of(name[0].text).is_given else ()
    if behind and all(word.text.islower() and not token_of(word.text).is_particle for word in behind):
        return name[:small]  # `Olli mökin portailla`
    if len(name) > 1 and name[-1].plain in SUFFIXES:
        return name  # `his father Harry Voss sen.`
    follow = (word.plain in _BEGIN_WHAT_FOLLOWS or word.kind == "verb" for word in name)
    at = next((at for at, follows in enumerate(follow) if at and follows and not name[at].is_large), 0)
    is_remark = at and not any(word.is_large for word in name[at:])
    return name[:at] if is_remark else name


_NEAR = ("son", "daughter", "wife", "husband", "brother", "sister", "grandson", "granddaughter")
"""Kin whom nobody calls by that word: before a name it tells how they are kin."""


def _is_called_so(word: Element) -> bool:
    """Whether somebody is called by a word that stands before her name."""
    return relation(word) in _CALLED_SO or (word.plain in TITLES and word.text.islower())


_CALLED_SO = ("uncle", "aunt", "grandmother", "grandfather")
"""Kin by whose word somebody is called, so that it stays with the name."""

_CHILDREN_AND_SPOUSES = frozenset(_NEAR) - {"brother", "sister"}
"""Those of them whose words are no titles, and so tell it written large too (`Tochter Hilde`; but `Schwester Anna`)."""


_WIVES = ("fru", "frue", "rouva", "proua", "pani")
"""Titles that are `wife` behind `his`."""


def _is_kin(word: Element) -> bool:
    """A word of kin or of kinds of people; a genitive counts as one, for more must follow it."""
    if word.text.lower() in small_words.NO_NOUNS:
        return bool(relation(word))
    if token_of(word.text.lower()).is_particle and word.text.lower() == word.plain:
        return False  # `meester Van Dijk`, where `vän` is a friend in Swedish
    people = word.plain in _WIVES or (_NOUNS.get(word.plain) in ("one", "many") and not is_family(word))
    if word.is_large and token_of(word.text).is_given and (not relation(word) or is_given_too(word.text)):
        return word.is_genitive  # `jeho žena Marie`, where `marie` is a bride in French
    return bool(relation(word)) or people or word.is_genitive or is_plural_of_kin(word)
