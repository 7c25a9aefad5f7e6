"""Names in words about a picture that are the names of people by their shape alone: nobody was told of them anywhere.

The problem. `Michael Rourke (left), Helmi` stands in the name of a file, and so in a title. Nobody knows of either, so
that no name is sought for them; and where the picture is not old, both may live. Whoever asks about every word that is
written large asks about every place, ship and street.

The rule.

- A known given name is one, with the words behind it that are written large: `Helmi`, `Helen Brannock`. So is whoever
  stands behind a title or a word of kin (`Mrs Brannock`, `Tante Ida`) or an initial (`J. Carmody`), and words written
  large before which or behind which it says that somebody stands there (`Xanthe Brannock (left)`), or that a name is
  joined to by `and`.
- None is what is called after somebody: a street, a church, a ship, a play (`named_after_table`), a firm, a king or a
  saint; nor what a preposition says to be a place (`in Adelaide`).
- A given name that is a word too is one where a search would find somebody who is called so (`search`); in other
  languages than English not behind an article, and at the beginning of a sentence only with another name, or as an
  owner. An English one, `Rose`, is none where all words of the text are written large.
- Where letters tell nothing, in a text all in small letters or in capitals, it is one with a word behind it that is in
  no dictionary, or if it is itself in none.

All of this is of our own; the words are from memory.
"""

import re
from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from functools import cache, lru_cache
from hashlib import sha256

from boxlore.core.people.firms import is_firm
from boxlore.core.people.names.given_names_table import GIVEN_OR_FAMILY
from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import PARTICLES, TITLES
from boxlore.core.people.names_in_text import words_beside_names_table as beside
from boxlore.core.people.names_in_text.agreeing_words_table import SMALL
from boxlore.core.people.names_in_text.borne_names import families, given_of, places
from boxlore.core.people.names_in_text.candidate import Candidate
from boxlore.core.people.names_in_text.dictionary_words import is_told_as_a_thing
from boxlore.core.people.names_in_text.finder import NameFinder
from boxlore.core.people.names_in_text.known_names import is_of_a_known_name
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, is_noun_in
from boxlore.core.people.names_in_text.languages_told import forget_languages, is_any_told, languages_told
from boxlore.core.people.names_in_text.named_after_table import (
    ANIMALS,
    ARTICLES,
    BEFORE,
    BEHIND,
    BUSINESSES,
    HEIRS,
    KNOWN_TO_ALL,
    LEADS_TO_A_PLACE,
    MAY_LEAD_TO_A_PLACE,
    OF,
    SHIPS,
    SURNAMES_TOO,
    TITLES_AND_WORDS,
    WRITTEN_SMALL,
)
from boxlore.core.people.names_in_text.names_in_handles import ENDINGS_OF_FILES, names_in_handles
from boxlore.core.people.names_in_text.names_of_the_living import is_addressed, is_called, is_of_ours, sentence_of
from boxlore.core.people.names_in_text.ordinary_words import TWO_LETTERS, behind_of, is_english, is_thing
from boxlore.core.people.names_in_text.place_names import is_of_a_place, is_of_a_street
from boxlore.core.people.names_in_text.speaks_for_people import (
    ENOUGH,
    is_anothers_name,
    is_called_somehow,
    weight,
    weight_in_one_case,
)
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, Text, Word, read_text
from boxlore.core.people.names_in_text.told_as_people import (
    is_beside_what_somebody_does,
    is_joined_to_another,
    is_of_a_family,
    is_of_english,
    is_told_as_a_person,
    is_told_by_its_thing,
    is_word_of_a_dictionary,
)
from boxlore.core.people.names_in_text.unbroken_names import names_unbroken
from boxlore.core.people.names_in_text.word_classes_table import PEOPLE, THINGS, THINGS_DONE
from boxlore.core.people.names_in_text.words_in_sentences import is_title_case
from boxlore.core.people.person import build_person
from boxlore.core.people.who_is_where.small_words_table import NAMES_OF_ANIMALS, TIMES_OF_THE_YEAR
from boxlore.core.people.who_is_where.tokens import PLACES, elements_of
from boxlore.core.statements import Kind, Statement, Subject

_JOINS = frozenset((" ", "-", "_", "", "\u00a0", ".", ". "))
_NEAR = frozenset((" ", "-", "\u00a0"))
_AND = frozenset("and & + und ja et y e og och i и un ir a".split())
_TO_SOMETHING = LEADS_TO_A_PLACE | frozenset("am zu zum zur i aan bij op uit цу".split())
"""Particles that stand before what is no family name too."""
_PARTICLES = PARTICLES - _AND - _TO_SOMETHING
_TITLES = TITLES - CALLED
_BEHIND_SURELY = BEHIND - SURNAMES_TOO
_LETTERS = TWO_LETTERS | BEFORE
_LISTS = re.compile(r"\s*[,;/]\s*|\s*[&+]\s*")
_SIGNS = frozenset("&+")
"""Between two names."""
_SENTENCE_BEGINS = frozenset('.!?:;\n"“„«(')
_OWNER = re.compile(rf"{APOSTROPHES.pattern}s?$")
_NUMERAL = re.compile(r"[IVX]{2,}")
"""Behind the name of a sovereign, and of a ship."""
_APPOSITION = re.compile(r",? (?:the|our|my|his|her|their|a) ((?:[A-Za-z]+ )?[a-z]+)\b(?!['’])")
_SHIPS_END = ("laev", "laeval", "laevaga", "schiff", "dampfer", "baten", "bat", "laiva")
"""How words of ships end: `Parvlaev Georg Ots`."""
_KIN_CALLED = (
    "uncle",
    "aunt",
    "cousin",
    "nana",
    "granny",
    "onkel",
    "tante",
    "tadi",
    "onu",
    "oncle",
    "tia",
    "zia",
    "zio",
)
"""How words of kin begin behind which any word is a name: `Uncle Snow`; not `Mother Brown loaf`."""
_PICTURES = ("photo", "foto", "portra", "pictur")
_ANIMALS_END = ("dog", "dogs", "horse", "hound")
_IN_SCANDINAVIA = frozenset(("sv", "nb", "da"))
"""Where `i` leads to a place; in Polish it joins two names."""
_IN_BRACKETS = re.compile(r"\s*[(\[]([^)\]]{1,40})[)\]]")
_SURELY = 6
"""How much a title says."""
_LONG = 3
"""Letters that a word has more of, to be the second of a name where letters tell nothing."""
_LONG_GIVEN = 6
"""Letters of a given name that is a family name too, from which on it is one where a dictionary has it as well:
`Thierry`, not `Lõke`."""
_LONG_NAME = 3
"""Letters that a family name behind initials has at least."""

_ARTICLES = (ARTICLES | {"the", "a"}) - {"de"}
"""Before a word of the language; `de` is French and Spanish too, of somebody."""

Span = tuple[int, int]
"""The numbers of the first and the last word of a name."""


@lru_cache(1 << 14)
def names_by_shape(words: str) -> tuple[tuple[int, int], ...]:
    """(start, end) of each, in order."""
    text = read_text(words)
    found = [(text.words[first].start, text.words[last].end) for first, last in _Shapes(words, text).names()]
    others = [*names_in_handles(words), *(() if text.is_ascii else names_unbroken(words))]
    found = [span for span in found if not any(span[0] < end and start < span[1] for start, end in others)]
    return tuple(sorted((*found, *others)))


def forget_shapes() -> None:
    """Forget all words that were looked through: a strike calls it."""
    names_by_shape.cache_clear()
    _finder_of.cache_clear()
    forget_languages()


class _Shapes:
    def __init__(self, told: str, text: Text) -> None:
        self._told, self._words = told, text.words
        self._one_case = text.is_one_case or _is_small_behind_a_number(text.words)
        self._titled = is_title_case(text.words)

    def names(self) -> list[Span]:
        """Each name, and what stands between or beside names in a list of them."""
        found: list[Span] = []
        others: list[Span] = []
        at = 0
        while at < len(self._words):
            last, is_name = self._read(at)
            if is_name:
                found.append((at, last))
            elif last > at or self._may_be_listed(at):
                others.append((at, last))
            at = last + 1
        others = [span for span in others if self._may_be_a_name(span)]
        begins, ends = {first for first, _ in found}, {last for _, last in found}
        for span in (*others, *reversed(others)):  # a list goes on to both sides
            if span[0] not in begins and self._is_listed(span, begins, ends):
                found.append(span)
                begins.add(span[0])
                ends.add(span[1])
        return sorted(found)

    def _read(self, at: int) -> tuple[int, bool]:
        """The last word of what begins here, and whether it is a name."""
        word = self._words[at]
        if self._one_case:
            return self._in_one_case(at)
        if not _is_large(word):
            return at, False
        if len(word.folded) == 1:
            return self._behind_initials(at)
        if self._leads(at) or (self._begins(at) and word.folded in _small_words()) or word.folded in beside.OF_FAMILIES:
            return at, False
        last = self._end_of(at)
        return last, self._weighs(at, last) >= ENOUGH

    def _weighs(self, first: int, last: int) -> int:
        """How much speaks for a person of words written large."""
        said = 0
        if is_of_a_family(self._words, first):
            return _SURELY
        if self._is_titled(first):
            said += _SURELY
        elif _is_called(self._words[first]):
            said += ENOUGH if self._is_given(first, last) else self._is_within(first)
        elif self._is_told_as_a_person(first, last):
            said += ENOUGH
        said = weight(Candidate(self._told, self._words, first, last), said)
        if (
            said >= ENOUGH
            and (self._is_thing(first, last) or self._is_firm(first, last))
            and not self._is_placed(first, last)
        ):
            return 0
        return said

    def _is_within(self, at: int) -> int:
        """What a given name that is a word too says by its capital alone, behind other words of its sentence."""
        possible = languages_told(self._words, at)
        is_large_so = self._begins(at) or "de" in possible or self._titled or self._before(at) in _ARTICLES
        return 0 if is_large_so or is_of_english(_bare(self._words[at])) else ENOUGH - 1

    def _may_be_listed(self, at: int) -> bool:
        """Whether a word alone is a name beside another: a given one, or one that no dictionary has."""
        word = self._words[at]
        if not (_is_large(word) or self._one_case) or len(word.folded) < _LONG:
            return False
        if word.folded in CALLED or word.folded in _given_too():
            return True
        return not (self._leads(at) or is_word_of_a_dictionary(word.folded))

    def _joins(self, at: int) -> bool:
        """Whether a word stands with the one before it; a point between is of a letter or a title."""
        if at == len(self._words) or self._words[at].before not in _JOINS:
            return False
        before = self._words[at - 1].folded
        return "." not in self._words[at].before or len(before) == 1 or before in _TITLES

    def _end_of(self, first: int) -> int:
        """The last of the words written large that stand together, with particles between them; before a given name
        another word ends, if no title stands before it."""
        last, is_name = first, _is_called(self._words[first]) or self._is_titled(first)
        while self._joins(last + 1) and not _OWNER.search(self._words[last].folded):
            word = self._words[last + 1]
            if is_name and self._is_particle(last + 1):
                last += 2
            elif (
                (not is_name and (_is_called(word) or _is_a_form(word) or self._leads(last + 1)))
                or not _is_large(word)
                or word.folded in _TITLES
                or (is_english(_bare(word)) and self._titled)
            ):
                break
            else:
                last += 1
        return last

    def _leads(self, at: int) -> bool:
        """Whether a word leads to a name: a title, a word of kin."""
        word = self._words[at]
        return is_addressed(word) or is_of_ours(word) or word.folded in _TITLES

    def _is_particle(self, at: int) -> bool:
        """`von` of `Anna von Lind`; a word that joins names is none."""
        word = self._words[at]
        is_one = word.is_small and word.folded in _PARTICLES
        return is_one and self._joins(at + 1) and _is_large(self._words[at + 1])

    def _before(self, at: int) -> str:
        return self._words[at - 1].folded if at and self._words[at].before in (*_NEAR, ". ") else ""

    def _is_titled(self, at: int) -> bool:
        """Whether a title or a word of kin stands before the word, with a particle between or none."""
        begin = at - 1 if at > 1 and self._words[at - 1].folded in PARTICLES and self._words[at - 1].is_small else at
        title, word = self._before(begin), _bare(self._words[at])
        if not title or title in KNOWN_TO_ALL or word in BEHIND or word in TIMES_OF_THE_YEAR:
            return False
        stands = self._words[begin - 1]
        if is_addressed(stands) or title in _TITLES:
            is_sure = title not in TITLES_AND_WORDS and not (len(title) < 3 and stands.is_small)
            return is_sure or (is_called(word) and not is_english(word))
        if not is_of_ours(stands) or _OWNER.search(stands.folded):
            return False
        if title.startswith(_KIN_CALLED) and not self._titled:
            return word not in BEHIND
        return is_called(word) or not (is_known_anywhere(word) or is_english(word) or title.endswith("s"))

    def _behind_initials(self, at: int) -> tuple[int, bool]:
        """`J. Carmody`, `M.K. Rourke`; not `S.S. Maori`, `A. & P. Show`."""
        last = at
        while len(self._words[last].folded) == 1 and self._joins(last + 1) and _is_large(self._words[last + 1]):
            last += 1
        letters = "".join(word.folded for word in self._words[at:last])
        word = self._words[last]
        has_point = last > at and self._words[at + 1].before.startswith(".")
        if not has_point:
            return at, False
        if len(word.folded) < _LONG_NAME or letters in _LETTERS:
            return last, False
        is_word = word.folded in BEHIND or (
            is_english(_bare(word)) and (self._titled or letters in "nsew" or "&" in self._words[at].before)
        )
        return last, not (is_word or self._is_firm(at, last))

    def _in_one_case(self, at: int) -> tuple[int, bool]:
        """What begins here where capitals tell nothing."""
        word = self._words[at]
        if len(word.folded) == 1 and self._joins(at + 1) and self._is_behind_a_letter(at):
            return at + 1, True
        if self._leads(at) or word.folded.isdigit() or len(word.folded) < _LONG - 1:
            return at, False
        behind = self._words[at + 1] if self._joins(at + 1) and not _OWNER.search(word.folded) else None
        last = at
        span = Candidate(self._told, self._words, at, at)
        if (
            behind is not None
            and is_called_somehow(span)
            and len(behind.folded) >= _LONG
            and behind.folded not in BEHIND
            and not self._leads(at + 1)
        ):
            last = at + 1 if is_anothers_name(_bare(behind), languages_told(self._words, at)) else at
        said = weight_in_one_case(Candidate(self._told, self._words, at, last))
        return last, said >= ENOUGH and not self._is_thing(at, last)

    def _is_behind_a_letter(self, at: int) -> bool:
        """`t. pascoe`, `mr t pascoe`: a family name behind an initial, which has a point or a title before it.

        The `f.jpg` of `reval_f.jpg` is none.
        """
        family = _bare(self._words[at + 1])
        if family in ENDINGS_OF_FILES:
            return False
        is_initial = self._words[at].folded.isalpha() and self._words[at + 1].before.startswith(".")
        is_initial = is_initial or self._before(at) in beside.TITLES_ALONE
        return (
            is_initial and len(family) >= _LONG_NAME and (family in families() or not is_word_of_a_dictionary(family))
        )

    def _is_given(self, at: int, last: int) -> bool:
        """Whether words that begin with a given name are a name."""
        word, others = self._words[at], self._words[at + 1 : last + 1]
        if is_english(_bare(word)) and self._titled:
            return any(not (is_english(_bare(other)) or is_noun_in(_bare(other), "en")) for other in others)
        if not others and self._is_thing_that_begins(at):
            return False
        if is_english(_bare(word)):
            is_told = bool(others) or _OWNER.search(word.folded) or not self._begins(at)
            return bool(is_told or is_beside_what_somebody_does(self._words, at)) and self._is_found(at)
        return bool(others) or (self._is_found(at) and not self._is_word_there(at))

    def _is_thing_that_begins(self, at: int) -> bool:
        """`Lily pond`, `Iris beds in flower`, `Miles of sand`: of a word of every day that begins a sentence."""
        behind = [word for word in behind_of(self._words, at, 2) if word.is_small]
        if self._words[at].folded not in EVERYDAY or not self._begins(at) or not behind:
            return False
        return behind[0].folded == "of" or is_told_by_its_thing(behind)

    def _is_found(self, at: int) -> bool:
        """Whether a search would find somebody called so here."""
        word = self._words[at]
        begin, end = sentence_of(self._told, word.start, word.end)
        hits = _finder_of(_bare(word)).hits(self._told[begin:end])
        return any(begin + hit.start < word.end and word.start < begin + hit.end for hit in hits)

    def _is_word_there(self, at: int) -> bool:
        """Whether a given name alone is rather a word of another language than English."""
        folded, possible = self._words[at].folded, languages_told(self._words, at)
        if self._before(at) in ARTICLES and any(is_noun_in(folded, language) for language in possible):
            return True
        if self._words[at].folded in TIMES_OF_THE_YEAR and is_any_told(possible) and "en" not in possible:
            return True
        if not is_any_told(possible) or "en" in possible or "de" in possible or self._is_beside_another(at):
            return False
        return is_told_as_a_thing(self._words, at)

    def _is_beside_another(self, at: int) -> bool:
        """`Meri ja Endel`."""
        is_joined = at + 2 < len(self._words) and self._words[at + 1].folded in _AND
        return is_joined and _is_large(self._words[at + 2])

    def _begins(self, at: int) -> bool:
        return not at or any(sign in self._words[at].before for sign in _SENTENCE_BEGINS)

    def _is_thing(self, first: int, last: int) -> bool:
        """Whether words are what is called after somebody, or somebody whom all know."""
        words, led = self._words, self._before(first)
        span = range(first, last + 1)
        if any(is_thing(words, at) or is_of_a_place(words, at) or is_of_a_street(words, at) for at in span):
            return True
        if any(is_of_a_known_name(words, at) for at in span) or _NUMERAL.fullmatch(words[last].spelled):
            return True
        is_of_stuff = first > 1 and words[first - 2].folded in ("a", "an") and led in THINGS | THINGS_DONE
        is_of_ours = first < last and led in ("our", "my")
        if is_of_stuff or is_of_ours or self._is_an_animal(last):
            return True
        is_alone = first == last and not _OWNER.search(words[first].folded)
        if led in KNOWN_TO_ALL or led in ANIMALS or (is_alone and words[first].folded in NAMES_OF_ANIMALS):
            return True
        before = self._before(first - 1) if first else ""
        if first > 1 and [word.spelled for word in words[first - 2 : first]] == ["M", "S"]:
            return True
        if led in BEFORE or led.endswith(_SHIPS_END) or (led in OF and before in BEFORE | KNOWN_TO_ALL):
            return True
        if self._is_called_after(first, last, led):
            return True
        if led == "i" and not _IN_SCANDINAVIA.isdisjoint(languages_told(words, first)):
            return is_alone
        return is_alone and led in LEADS_TO_A_PLACE

    def _is_an_animal(self, last: int) -> bool:
        """`Bess the dog`, `Paddy, our old sheepdog`, `Turi, a brigantine`."""
        behind = _APPOSITION.match(self._told, self._words[last].end)
        words = behind[1].split() if behind is not None else []
        return any(word in ANIMALS | SHIPS or word.endswith(_ANIMALS_END) for word in words)

    def _is_called_after(self, first: int, last: int, led: str) -> bool:
        """`Victoria Park`, `Robert Burns statue`, `at Ruth Hall`; not `Ruth Hall`."""
        for at in range(first + 1, min(last + 2, len(self._words))):
            kind = self._words[at]
            if kind.before not in _NEAR:
                break
            then = self._words[at + 1].folded if at + 1 < len(self._words) else ""
            if kind.is_small and then.startswith(_PICTURES):  # `Elaine school photo`
                break
            is_owned = bool(_OWNER.search(self._words[at - 1].folded))
            if kind.folded in _BEHIND_SURELY and (_is_large(kind) or not is_owned):
                return True
            if kind.folded in WRITTEN_SMALL and kind.is_small and not is_owned:
                return True
            if kind.folded in SURNAMES_TOO and (led in MAY_LEAD_TO_A_PLACE or (is_owned and _is_large(kind))):
                return True
        return False

    def _is_firm(self, first: int, last: int) -> bool:
        """Whether a firm is named; `photo` is its business only written large: not `Lily photo album`."""
        if self._is_firm_by_its_words(first, last):
            return True
        if first and is_firm(self._told[self._words[first - 1].start : self._words[first].end]):
            return True
        start = self._words[first].start
        for word in self._words[first : last + 4]:
            if word.is_small and word.folded.startswith(_PICTURES):
                return False
            if is_firm(self._told[start : word.end]):
                return True
        return False

    def _is_firm_by_its_words(self, first: int, last: int) -> bool:
        """`Burton Brothers`, `Hudson's chocolate factory`."""
        words = self._words
        if last > first and words[last].folded in HEIRS and self._before(first) != "the":
            return True
        last_word = words[last]
        if last > first + 1 and last_word.folded.endswith("s") and last_word.folded[:-1] in PEOPLE:
            return True  # `Guy Morris Drapers`
        if last > first and any(word.folded in BUSINESSES and word.is_small for word in behind_of(words, last)):
            return not _OWNER.search(last_word.folded)  # `Arthur Barnett department store`
        is_owned = first == last and _OWNER.search(words[last].folded) and _bare(words[last]) not in CALLED
        return bool(is_owned) and any(word.folded in BUSINESSES for word in behind_of(words, last, 2))

    def _is_told_as_a_person(self, first: int, last: int) -> bool:
        if is_told_as_a_person(self._told, self._words, first, last) or self._is_placed(first, last):
            return True
        return first == last and is_joined_to_another(self._words, first, begins=self._begins(first))

    def _is_placed(self, first: int, last: int) -> bool:
        """Whether brackets behind words say where somebody stands."""
        behind = _IN_BRACKETS.match(self._told, self._words[last].end)
        is_name = all(not is_english(_bare(word)) for word in self._words[first : last + 1])
        return behind is not None and is_name and any(_says_where(element.kind) for element in elements_of(behind[1]))

    def _may_be_a_name(self, span: Span) -> bool:
        """Whether words written large may be one beside a name: none of them is English, nor a thing."""
        words = self._words[span[0] : span[1] + 1]
        is_given = words[0].folded in CALLED or words[0].folded in _given_too()
        is_word = is_english(_bare(words[0])) and not is_given
        if is_word or any(word.folded in BEHIND | BEFORE for word in words):
            return False
        return not self._is_thing(*span)

    def _is_listed(self, span: Span, begins: AbstractSet[int], ends: AbstractSet[int]) -> bool:
        """Whether it stands by `and` beside a name, or between two in a list; names by their first and last words."""
        if (self._is_and(span[0] - 1) and span[0] - 2 in ends) or (self._is_and(span[1] + 1) and span[1] + 2 in begins):
            return True
        is_behind = span[0] - 1 in ends and bool(_LISTS.fullmatch(self._words[span[0]].before))
        is_before = span[1] + 1 in begins and bool(_LISTS.fullmatch(self._words[span[1] + 1].before))
        if is_behind and (self._words[span[0]].before.strip() in _SIGNS or self._is_a_list(span[0] - 1, begins)):
            told = [word.folded for word in self._words[span[0] : span[1] + 1]]
            return told[0] not in TIMES_OF_THE_YEAR and "_".join(told) not in places()
        return is_before and (is_behind or self._begins(span[0]))

    def _is_a_list(self, last: int, begins: AbstractSet[int]) -> bool:
        """Whether the name that ends with a word stands behind a comma, as another does: `Tess, Maud, Zed`."""
        first = max(begin for begin in begins if begin <= last)
        return any(begin < first and self._words[first].before.strip() == "," for begin in begins)

    def _is_and(self, at: int) -> bool:
        return (
            0 <= at < len(self._words)
            and self._words[at].folded in _AND
            and (self._words[at].is_small or self._one_case)
        )


def _is_small_behind_a_number(words: Sequence[Word]) -> bool:
    """`IMG_1044 roger fishing`: what a camera calls a picture, and words written small."""
    is_camera = len(words[2:]) > 0 and words[0].spelled.isupper() and words[1].folded.isdigit()
    return is_camera and all(word.is_small or word.folded.isdigit() for word in words[1:])


def _says_where(kind: str) -> bool:
    return kind in PLACES or kind in ("position", "side", "row")


def _bare(word: Word) -> str:
    """A folded word without the ending of whose something is."""
    return _OWNER.sub("", word.folded)


def _is_called(word: Word) -> bool:
    """Whether it is a known given name, also as it ends in a sentence, if it is then no word of any language."""
    bare = _bare(word)
    if bare in _families_too():
        return not is_of_english(bare) and (len(bare) >= _LONG_GIVEN or not is_known_anywhere(bare))
    return bare in CALLED or (is_called(bare) and not is_known_anywhere(bare) and not is_english(bare))


def _is_a_form(word: Word) -> bool:
    """Whether a word that no dictionary has is a form of a given name: `Imieniny Basi`."""
    bare = _bare(word)
    return not is_known_anywhere(bare) and given_of(bare) not in ("", bare)


@cache
def _small_words() -> frozenset[str]:
    """Words that join and lead, which a sentence may begin with, and nobody is called."""
    return frozenset(word for row in SMALL.values() for word in row.split()) - EVERYDAY - CALLED | beside.SMALL_IN_GREEK


@cache
def _given_too() -> frozenset[str]:
    """Given names that are family names too."""
    return frozenset(GIVEN_OR_FAMILY.split()) | EVERYDAY


@cache
def _families_too() -> frozenset[str]:
    return _given_too() - EVERYDAY - CALLED


def _is_large(word: Word) -> bool:
    return word.spelled[0].isupper()


@lru_cache(1 << 12)
def _finder_of(given: str) -> NameFinder:
    """Finds somebody called so, whom nobody knows: what the search knows of names is asked of this one."""
    about = Subject(Kind.PERSON, f"unknown {sha256(given.encode()).hexdigest()}")
    named = Statement(id="", act="", subject=about, field="given", words=given.capitalize(), recorded_at="")
    return NameFinder((build_person(about.id, [(named, None)]),), frozenset((about.id,)))
