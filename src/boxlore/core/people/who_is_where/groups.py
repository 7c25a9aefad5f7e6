"""Several people told by what they are and whose: `the three Kask boys`, `les sœurs Morel`, `de zusjes de Boer`.

    group  = ["the" / "all" / "both"] [number] (family several / several family) [names]
           / ("my" / "the") [number] several                ; my grandparents, the twins, my three uncles
           / number "of" ["the"] group                 ; three of the Kask boys: which of them is not told
    several = a word of several people                    ; brothers, girls, Misses, sœurs, zusjes
    family  = word {word}                                  ; large, with particles; no given name, nobody's `my` or `'s`

The names of a group follow it (`the Kask brothers Juhan and Karl`, `… : Juhan, Karl`), and each of them has its family
name as a proposal. In languages where the family name stands in another form here (`Virtasen veljekset`, `сёстры
Петровы`) no name is proposed. Without names it is asked who they are, and nobody is made of the words.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.dictionary_forms import both_of_a_family
from boxlore.core.people.who_is_where.tokens import Element


@dataclass(frozen=True, slots=True)
class Group:
    """A group: where its own words end and its names begin, and the family name that is proposed for each of these."""

    end: int
    family: str = ""
    led: bool = False
    """Whether an article, a number or `my` says that several are told: `lapsed Piret` may be one of them by name."""
    some: bool = False
    """Whether only some of it are told: `three of the Kask boys`."""


def titled_family(words: Sequence[Element]) -> Group | None:
    """`The Misses Trent`: a title of several and one name, which is the family's, also where it is a given name; None
    for any other words. Behind an `and` the name may be given: `The Misses Ada and Olive Trent`."""
    at = 1 if len(words) == _TITLED and words[0].plain in small_words.THE else 0
    is_title = len(words) == at + 2 and words[at].plain in _TITLES_OF_SEVERAL
    is_title = is_title and not (at == 0 and words[0].plain in _OF_ONE_TOO)  # `Fräulein Lohse`
    return Group(len(words), words[-1].text, led=True) if is_title and words[-1].is_large else None


_TITLED = 3
_TITLES_OF_SEVERAL = frozenset(
    "misses mesdemoiselles demoiselles fraulein senoritas signorine meninas froknarna frokenerne froknene preilid "
    "neiud neidit барышни panienki".split()
)
"""Of unmarried women alone: behind `Messrs` stand the family names of each."""

_OF_ONE_TOO = ("fraulein",)
"""Those of them that are said of one as well."""


def group_of(words: Sequence[Element]) -> Group | None:
    """The group that the words begin with, behind which only names stand; None for any other words."""
    if some := _some_of(words):
        group = group_of(words[some:])
        return Group(group.end + some, group.family, led=True, some=True) if group else None
    at = _leads(words)
    several = next((n for n in range(at, len(words)) if _is_several(words[n])), len(words))
    if several == len(words):
        return None
    before, behind = words[at:several], words[several + 1 :]
    is_whose = bool(before) and _says_whose(before[0])
    is_whose = is_whose and all(word.plain in small_words.CARDINALS for word in before[1:])
    if is_whose and behind and all(word.is_large and token_of(word.text).is_given for word in behind):
        return Group(several + 1, led=True)  # `Mina föräldrar Erik`
    if not behind and (is_whose or (at and not before)):
        return Group(len(words), led=True)
    counted = any(word.plain in small_words.CARDINALS for word in words[:at])  # `Los tres hermanos Gil`
    if not before and _is_family(behind, of_given_too=counted):
        return Group(len(words), _proposed(behind, words[several]), led=at > 0)
    fits = not words[several].is_large and all(word.is_large for word in behind)
    if before and fits and _is_family(before, of_given_too=bool(at or behind)):
        return Group(several + 1, _proposed(before, words[several]), led=at > 0)
    return None


def _some_of(words: Sequence[Element]) -> int:
    """How many words `three of` takes; 0 where the words do not begin so."""
    counts = len(words) > 2 and words[0].plain in small_words.CARDINALS
    return 2 if counts and words[1].plain in small_words.OF and words[1].text.islower() else 0


def _leads(words: Sequence[Element]) -> int:
    """How many of the words lead to a group: an article, `all`, a number."""
    at = 0
    if words[0].plain in small_words.ARTICLES | small_words.EVERYONE and len(words) > 1:
        at = 1
        at += words[0].plain in small_words.EVERYONE and words[1].plain in small_words.ARTICLES and len(words) > 2
    if len(words) > at + 2 and (words[at].plain in small_words.CARDINALS or words[at].kind == "number"):
        at += 1
    return at


def _says_whose(word: Element) -> bool:
    """`my`, also where it is `me` of another language (`Moi rodzice`), and `Mum's`."""
    return word.kind in ("my", "me") or word.plain in table.MY_OWN or word.is_genitive


def _is_several(word: Element) -> bool:
    is_noun = table.NOUNS.get(word.plain) == "many" and word.text.lower() not in small_words.NO_NOUNS
    return (is_noun and word.plain not in table.FAMILY) or is_plural_of_kin(word)


def is_plural_of_kin(word: Element) -> bool:
    """`nietos`, `Enkeln`: several of a word of kin, written small."""
    stems = (word.plain.removesuffix(end) for end in ("s", "es", "n", "en", "er", "d") if word.plain.endswith(end))
    of_kin = [stem for stem in stems if len(stem) > 2 and stem in KIN_WORDS]
    if word.plain.endswith("d"):  # Estonian: `onud`, but not `grand`
        of_kin = [stem for stem in of_kin if stem[-1] in "aeiou"]
    return not word.is_large and bool(of_kin)


_GIVEN_ALONE = lists.SPANISH_GIVEN | lists.PORTUGUESE_GIVEN | lists.ITALIAN_GIVEN

_LEADS = small_words.EVERYONE | small_words.CARDINALS.keys() | small_words.ARTICLES


def _is_family(words: Sequence[Element], *, of_given_too: bool = False) -> bool:
    """Whether the words are a family name: large ones, and particles before them."""
    if not words or not words[-1].is_large:
        return False
    are_names = all(word.is_large or token_of(word.text).is_particle for word in words)
    is_whose = any(_says_whose(word) for word in words)
    is_particle = len(words) > 1 and token_of(words[0].text.lower()).is_particle  # `De Boer`
    leads = words[0].plain in _LEADS and words[0].is_large and not is_particle  # `Both boys`, `Les mariés`
    last = token_of(words[-1].text)
    given = not of_given_too and (last.is_given or last.plain in _GIVEN_ALONE)
    return are_names and not (is_whose or leads or given)


def _proposed(family: Sequence[Element], several: Element) -> str:
    """The family name as the members have it; empty where it stands in a form of its own."""
    if both_of_a_family(family[-1].text):
        return family[-1].text  # `Петровы`, of whom each has another form (`shared_family_name`)
    inflects = several.plain in small_words.SEVERAL_BEHIND_A_FORM or "а" <= family[-1].plain[0] <= "я"
    inflects = inflects or family[-1].plain.endswith(("owie", "scy", "dzcy", "ovi"))
    return "" if inflects else " ".join(word.text for word in family)


OF_A_FAMILY = ("ów", "ich", "ých", "ых", "их")
"""Endings that a family has only behind a word for it: `Rodzina Nowaków`."""

_BEFORE_THE_NAME = ("perekond", "pere", "perhe", "suku")
"""Estonian and Finnish words for a family behind which its name stands by itself."""


def family_of_several(words: Sequence[Element]) -> Group | None:
    """A family as a whole before a colon: `the Pells`, `all the Pells`, `Rourke family`, `familie Bos`; None for any
    other words."""
    ends = (n for n, word in enumerate(words) if n and not word.is_large and word.plain in small_words.BEGIN_A_REMARK)
    words = words[: next(ends, len(words))]  # `The Munro family outside the shed`
    at = 1 if words[0].plain in small_words.ARTICLES and len(words) > 2 else 0
    nouns = [n for n in (at, len(words) - 1) if words[n].plain in table.FAMILY]
    if len(words) > at + 1 and len(nouns) == 1:
        names = [word for n, word in enumerate(words) if n >= at and n != nouns[0]]
        if _is_family(names, of_given_too=True):
            leads = nouns[0] == at and words[at].plain in _BEFORE_THE_NAME
            family = " ".join(word.text for word in names) if leads else _proposed(names, words[nouns[0]])
            return Group(len(words), family)
    small = all(word.text.islower() for word in words[1:])
    if small and words[0].is_large and not words[0].text.endswith(OF_A_FAMILY) and both_of_a_family(words[0].text):
        return Group(len(words), words[0].text)  # `Novákovi před chalupou: Karel, Jana`
    bare = words[1:] if len(words) == 3 and words[0].plain in small_words.EVERYONE else words
    if len(bare) != 2 or bare[0].plain != "the" or not (bare[1].is_large and bare[1].plain.endswith("s")):
        return None
    hisses = bare[1].plain.endswith(("shes", "ches", "xes", "sses", "zes"))
    family = bare[1].text[: -2 if hisses else -1]
    return Group(len(words), family) if table.NOUNS.get(bare[1].plain) is None else None
