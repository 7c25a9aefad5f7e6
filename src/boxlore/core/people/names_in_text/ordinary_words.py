"""Whether a word that is a name too is plainly something else where it stands.

Rule kept: a word passes only by what stands right beside it, and only where no person could be meant: a thing or a
day that begins with it (`Graham flour`, `May Day`: WordNet), a place (`Graham Land`, `Mount Ruth`), a month behind a
word of time (`in May`), `may` and `will` before who does it. All else is a question for the keeper.
"""

import re
from collections.abc import Sequence
from functools import cache

from boxlore.core.people.names.short_forms_table import EVERYDAY, NUMBERED, TIMES
from boxlore.core.people.names.words_table import FAMILY_WORDS
from boxlore.core.people.names_in_text.compounds_table import ENDS, THINGS, WORDS
from boxlore.core.people.names_in_text.known_names import is_of_a_known_name
from boxlore.core.people.names_in_text.languages_told import joins_words_elsewhere, languages_told
from boxlore.core.people.names_in_text.named_after_table import COMMON_SHIPS
from boxlore.core.people.names_in_text.place_names import is_of_a_place
from boxlore.core.people.names_in_text.text_normalising import Word, plain
from boxlore.core.people.names_in_text.word_classes_table import PEOPLE, VERBS

_BEFORE_TIMES = frozenset("in during early mid im ende anfang mitte en em".split())
_PARTS_OF_TIMES = frozenset(
    "end beginning start middle month first second third fourth fifth sixth seventh eighth ninth st nd rd th".split()
)
DOES = frozenset(
    "i you he she it we they the this that these those god there somebody anyone nobody never not be have".split()
)
"""What stands behind `may` and `will` at the beginning of a sentence, where they are no names."""
MAKES_A_VERB = frozenset("the a an her his its their my our your it them us me him this that".split())
"""Behind `Rose water …`, `Rose petals …` these make the second word what somebody does."""
_ARTICLES = {
    "en": "a an the this that each every no some any two three", "fr": "le la les un une des chaque deux ce cette",
    "de": "der die das den dem des ein eine einen einem eines kein keine", "nl": "de het een elke twee",
    "es": "el la los las un una cada dos este esta", "it": "il lo la i gli le un una uno ogni due questo questa",
    "pt": "o os as um uma cada dois duas", "sv": "en ett den det de varje ingen tva", "nb": "en ei et den det de to",
    "da": "en et den det de to", "et": "iga uks kaks see need too mitu", "fi": "yksi kaksi joka se jokainen",
    "hu": "a az egy ket",
}  # fmt: skip
"""By language, folded: before a word written small these make it no name, where the text writes names large. A language
that the sentence may not be of has no say: `chiedi a chiara`."""

_ROMAN = re.compile(r"[IVX]{2,}|[VX]")
_FIRMS = frozenset("co sons bros brothers".split())
_NEAR = re.compile(r"[\s./–\-]*")


@cache
def _things() -> dict[str, frozenset[tuple[str, ...]]]:
    rows = (line.partition(": ") for line in THINGS.split("\n")[1:-1])
    return {first: frozenset(tuple(rest.split()) for rest in rests.split(", ")) for first, _, rests in rows}


@cache
def _articles() -> dict[str, frozenset[str]]:
    return {language: frozenset(row.split()) for language, row in _ARTICLES.items()}


@cache
def english_words() -> frozenset[str]:
    """The commonest English words of three to seven letters, which are no names where they are written small."""
    return frozenset(WORDS.split())


TOO_COMMON = frozenset(
    "a an the at by in is my of on to me we us for with from and our his her your their this that when where who was "
    "are mum dad birthday photo portrait comes they them these those there then than".split()
)
"""English words that are not among the others, and never a form of a name."""


@cache
def _ends() -> frozenset[tuple[str, ...]]:
    return frozenset(tuple(end.split()) for end in " ".join(ENDS.split()).split(", "))


def ends_a_thing(words: Sequence[Word], at: int) -> bool:
    """Whether a word is the last of a thing of two: `the Union Jack`."""
    return at > 0 and words[at].before == " " and (words[at - 1].folded, words[at].folded) in _ends()


def is_english(folded: str) -> bool:
    """Whether a folded word is English, also one too common to stand among the others."""
    return folded in english_words() or folded in TOO_COMMON


TWO_LETTERS = frozenset(
    "am pm ad bc bce ce tv ok uk us nz eu un hq po ps id nr st dr mr ms jr sr ii iv vi ix xi xv xx ss ms mv hm rn rm "
    "ra cm mm km kg lb oz ft bw rh lh cd tb mp gp qc bt co kc ww".split()
)
"""What two capitals stand for besides somebody's initials (common practice, no source)."""


def may_be_initials(folded: str) -> bool:
    """Whether a word of capitals may be somebody's initials, `ML`, `LJR`: two to five letters, and no `TV`."""
    return 1 < len(folded) < 6 and folded not in TWO_LETTERS


def may_be_a_ship(words: Sequence[Word], at: int) -> bool:
    """`the steamer Hinemoa`, which may be the boat that Hinemoa built: a question."""
    return at > 0 and words[at].before == " " and words[at - 1].folded in COMMON_SHIPS


def is_something_else(words: Sequence[Word], at: int) -> bool:
    """Whether a word written large is a part of a thing, a place or a time here, or no name at all.

    Written small it is a thing too, and so is a word of every day behind `the`.
    """
    if words[at].spelled[0].islower():
        return is_thing(words, at) or (
            at > 0 and words[at - 1].folded == "the" and plain(words[at].folded) in EVERYDAY | english_words()
        )
    if is_thing(words, at) or is_of_a_place(words, at) or _is_time(words, at) or _is_verb(words, at):
        return True
    return is_of_a_known_name(words, at) or _is_of_a_firm(words, at)


def _is_of_a_firm(words: Sequence[Word], at: int) -> bool:
    """`Frank Duncan & Co.`, where another name stands between: of somebody called so the firm would be named."""
    behind = words[at + 1 : at + 4]
    return any(
        second.folded in _FIRMS and second.spelled[0].isupper() and second.before.strip() == "&"
        for second in behind[1:2]
        if behind[0].before == " " and behind[0].spelled[0].isupper()
    )


def behind_of(words: Sequence[Word], at: int, count: int = 1) -> list[Word]:
    """The words right behind, as far as nothing but blanks and hyphens parts them."""
    behind: list[Word] = []
    for word in words[at + 1 : at + 1 + count]:
        if word.before not in (" ", "-", "\u00a0", "‐", "‑"):
            break
        behind.append(word)
    return behind


def is_behind_an_article(words: Sequence[Word], at: int) -> bool:
    """`a pat of butter`, `le petit chat`: asked of a word written small in a text that writes names large; not of `the
    hallam girl`."""
    before = words[at - 1].folded if at and words[at].before == " " else ""
    behind = behind_of(words, at)
    possible = languages_told(words, at) if any(before in row for row in _articles().values()) else ()
    is_article = any(before in _articles().get(language, ()) for language in possible)
    return is_article and not (behind and (behind[0].folded in PEOPLE or behind[0].folded in FAMILY_WORDS))


def is_thing(words: Sequence[Word], at: int) -> bool:
    things = _things().get(plain(words[at].folded), frozenset())
    behind = behind_of(words, at, 4)
    rest = [plain(word.folded) for word in behind]
    long = max((len(thing) for thing in things if tuple(rest[: len(thing)]) == thing), default=0)
    return bool(long) and not (len(rest) > long and rest[long] in MAKES_A_VERB)


def _is_time(words: Sequence[Word], at: int) -> bool:
    """`in May`, `end of May`, `May–June 1930`; not `in May and Leida’s room`, nor `from May to June`."""
    behind = behind_of(words, at, 2)
    if words[at].folded not in TIMES or _is_large(behind):
        return False
    if behind and behind[0].folded in ("and", "or") and _is_large(behind[1:]) and behind[1].folded not in TIMES:
        return False
    before = [word.folded for word in words[max(0, at - 2) : at]]
    if len(before) > 1 and before[-1] in ("and", "or") and before[0] in TIMES:
        return _is_time(words, at - 2)
    if before and words[at].before in (" ", "-"):
        return before[-1] in _BEFORE_TIMES or (before[-1] == "of" and before[0] in _PARTS_OF_TIMES)
    return False


def _is_large(words: Sequence[Word]) -> bool:
    return bool(words) and words[0].spelled[0].isupper()


def _is_verb(words: Sequence[Word], at: int) -> bool:
    """`May I …`, `Will you …` at the beginning of a sentence."""
    begins = not at or any(sign in words[at].before for sign in '.!?:;"“„«\n')
    behind = behind_of(words, at)
    is_asked = begins and words[at].folded in ("may", "will") and bool(behind) and behind[0].folded in DOES
    return is_asked and is_an_english_doer(words, at)


def is_an_english_doer(words: Sequence[Word], at: int) -> bool:
    """Whether the word behind `may` and `will` is an English one: not in `Will i hagen`, `Will we Wrocławiu`."""
    behind = behind_of(words, at, 2)
    if behind[0].spelled == "i":
        return False
    return not joins_words_elsewhere(words, at) or is_english(behind[-1].folded) or behind[-1].folded in VERBS


def is_numbered(words: Sequence[Word], at: int) -> bool:
    """Whether a month or a label stands with its number: `May 1964`, `12 May`, `May–June 1930`, `Box 3`."""
    if words[at].folded not in NUMBERED and words[at].folded != "mark":
        return False
    behind = words[at + 1] if at + 1 < len(words) else None
    is_near = behind is not None and _NEAR.fullmatch(behind.before) is not None
    if words[at].folded == "mark" and behind is not None and behind.before == " ":
        return behind.folded.isdigit() or _ROMAN.fullmatch(behind.spelled) is not None
    if behind is not None and is_near and (behind.folded.isdigit() or _is_numbered_time(words, at + 1)):
        return True
    return bool(at) and words[at - 1].folded.isdigit() and _NEAR.fullmatch(words[at].before) is not None


def _is_numbered_time(words: Sequence[Word], at: int) -> bool:
    return words[at].folded in TIMES and is_numbered(words, at)
