"""What is said of somebody behind the name (`Bert at the wheel`), and words of somebody who is not in the picture.

    item = head remark                            ; head: `me`, `my mother`, `Mum`, or a name that is surely one
    remark = a small word, and all that follows

A name is surely one if a word of it is a given name, or a title or a word of kin leads it; so `picnic at the lake` and
`Easter in Leith` name nobody. Whoever took the picture, or is told to be missing, is not in it: they ask.
"""

from collections.abc import Sequence

from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_ALONE, KIN_WORDS, TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.kin_words import FOREBEARS, ME, is_me
from boxlore.core.people.who_is_where.position_words_table import HOLDING, NOUNS
from boxlore.core.people.who_is_where.tokens import Element


def is_absent(words: Sequence[Element]) -> bool:
    """Whether the words tell of somebody who is not in the picture: `Tom isn't in it`, `taken by Dad`, `except Tom`."""
    opens = [word.plain for word in words[:2]]
    if len(words) > 2 and opens[0] in _ALL_OF_THEM and opens[1] in small_words.BUT:
        return True  # `Everyone but Dad`
    plains = [word.plain for word in words]
    if any(plains[at : at + 2] == ["out", "of"] and plains[at + 2] in _SHOTS for at in range(len(plains) - 2)):
        return True  # `Sue just out of shot`
    if not {word.plain for word in words[1:] if word.text.islower()}.isdisjoint(small_words.DEAD) and any(
        word.plain in small_words.BY_THEN for word in words[1:]
    ):
        return True  # `Vi had died by then`
    for at, word in enumerate(words):
        if word.plain not in small_words.NOT_IN_IT or word.text == "néni" or word.kind == "my":
            continue  # a Hungarian aunt, where `není` is Czech
        if _is_large_name(word, at):
            continue
        names_another = any(behind.is_large or behind.kind in ("me", "my") for behind in words[at + 1 :])
        if word.plain not in _OF_THINGS_TOO or names_another or at == 0:
            return True  # `without Tom`, but not `without a hat`
    return False


def _is_large_name(word: Element, at: int) -> bool:
    """Whether a word is written large where no sentence begins, or is a given name: `Ole`, of Finnish a `not`."""
    return word.is_large and (at > 0 or token_of(word.text).is_given)


_SHOTS = ("shot", "frame", "picture", "view", "sight")

_ALL_OF_THEM = small_words.EVERYONE | {"everyone", "everybody", "all of us", "all of them"}

_OF_THINGS_TOO = frozenset("without ohne ilma sans sin senza sem zonder uden uten utan ilman без bez".split())
"""Words that leave out things as well as people."""


def head_and_remark(words: Sequence[Element], text: str, known: KnownNames, *, surely: bool = False) -> int:
    """How many words are somebody's name, if a remark follows it; 0 where the words are not so.

    `surely`: whether a person must be told here, whatever the name: behind `with`.
    """
    at = _head(words)
    if (
        not 0 < at < len(words)
        or any(word.kind == "or" for word in words)
        or not (words[at].text[0].islower() or is_somewhere(words))
        or words[at].kind == "and"
    ):
        return 0
    if is_absent(words) and words[at].plain not in small_words.LEAVES_OUT_OTHERS:
        return 0
    if words[at].plain in small_words.THE and any(NOUNS.get(word.plain) == "thing" for word in words[at:]):
        return 0
    told = text[words[0].start : words[at - 1].end]
    is_like_one = at == 1 and words[at].plain.endswith("ing") and words[0].plain not in _NO_NAMES | english_words()
    return (
        at if is_like_one or surely_named(words[:at], told, known) or (surely and bool(read_name(told, known))) else 0
    )


_NO_NAMES = frozenset(NOUNS) | small_words.NOT_IN_IT | KIN_WORDS.keys()


def begins_remark(words: Sequence[Element]) -> bool:
    """Whether the words of an item are no name but go on with what is said of the one before: `in his best suit`."""
    first = words[0].plain.split(" ")[0]  # empty for a word of points alone
    if words[0].is_large and words[0].text in _SHORT_PARENTS:
        return False  # `Pa driving`
    is_participle = first.endswith(("ing", "ed", "held")) and first not in NOUNS and not words[0].is_large
    is_participle = is_participle and words[0].kind != "unknown"  # `Mr Moss, unidentified man`
    return len(words) > 1 and (first in small_words.BEGIN_A_REMARK or first in small_words.SAID_BY or is_participle)


_SHORT_PARENTS = ("Pa", "Ma", "Far", "Mor")
"""Parents by a word that folded is a small word of another language."""


def _head(words: Sequence[Element]) -> int:
    if is_me(words[0]):
        says_how = small_words.BEGIN_A_REMARK | small_words.WITH | HOLDING | small_words.BEHIND_ME
        is_held = len(words) > 2 and words[-1].plain in small_words.HELD_ON and not words[-1].is_large
        return int(bool(words[1:]) and (words[1].plain in says_how or is_held or is_somewhere(words)))
    if is_somewhere(words):
        return 1
    if words[0].kind == "my" and len(words) > 2 and words[1].plain in KIN_WORDS:
        return 2
    if words[0].kind == "my" or _says_whose(words):
        return 0  # `son associé`
    if len(words) > 1 and words[0].text in ("A", "The", "An") and not words[1].is_large:
        return 0  # `A wedding group`
    at = 0
    leads = KIN_WORDS.keys() | TITLES
    while at < len(words) and not words[at].is_large and words[at].plain in leads and words[at].kind != "with":
        at += 1
    while at < len(words) and words[at].kind != "number":
        ahead = at
        while ahead < len(words) - 1 and token_of(words[ahead].text).is_particle and words[ahead].plain != "am":
            ahead += 1
        knows = ahead + 1 < len(words) and words[ahead].text == "I" and words[ahead + 1].text.islower()
        if not words[ahead].is_large or knows:
            break  # `Joyce I recognise`
        at = ahead + 1
    return at


def _says_whose(words: Sequence[Element]) -> bool:
    """`son associé`: a word that says whose, which is kin in another language, and a small one."""
    behind = words[1:2]
    return words[0].text in ("son", "sa") and bool(behind) and behind[0].kind == "word" and behind[0].text.islower()


def is_somewhere(words: Sequence[Element]) -> bool:
    """`ema Haapsalu rannas`, `äiti Turun satamassa`: in Estonian and Finnish a place stands before its small word,
    which has an ending, and no such word of kin stands before a family name."""
    if words[0].kind == "my":
        return False  # `ma grand-mère`, where `ma` is a mother of another language
    is_kin = words[0].plain in small_words.KIN_BEFORE_A_PLACE or words[0].plain in ME
    if KIN_WORDS.get(words[0].plain) in FOREBEARS and not any(_is_name_like(word) for word in words[1:]):
        return len(words) > 1  # `isä häissään`
    if not is_kin or len(words) < 3 or words[-1].is_large or not words[-1].plain.endswith(_WHERE):
        return False
    return words[1].is_large and not any(token_of(word.text).is_given for word in words[1:])


def _is_name_like(word: Element) -> bool:
    """Whether a word may be a part of a name: written large, or a given name."""
    return word.kind != "word" or word.is_large or token_of(word.text).is_given


_WHERE = ("s", "l", "ssa", "lla")
"""Endings of Estonian and Finnish that tell where, folded."""


def surely_named(head: Sequence[Element], told: str, known: KnownNames) -> bool:
    """Whether the words, which are `told`, surely name somebody."""
    if head[0].kind == "my" or is_me(head[0]):
        return True
    if len(head) == 1 and (head[0].plain in KIN_ALONE or head[0].text in _SHORT_PARENTS):
        return True
    parts = read_name(told, known)
    if not parts or (len(head) == 1 and head[0].plain in small_words.TIMES_OF_THE_YEAR):
        return False
    given = any(token_of(word.text).is_given or known.is_given(word.plain) for word in head)
    return given or bool(parts.kin or parts.title) or any(known.is_family(word.plain) for word in head)
