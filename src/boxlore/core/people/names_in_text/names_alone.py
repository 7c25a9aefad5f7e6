"""A given name or a family name that is no part of a full name: whom it may mean, or that it is a word there."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import FAMILY_WORDS, PATRONYMIC_ENDINGS, TITLES, WIFE_TITLES, YOUNGER_WORDS
from boxlore.core.people.names_in_text.agreeing_words import is_told_of_a_thing
from boxlore.core.people.names_in_text.dictionary_words import (
    is_a_word_one_slip_away,
    is_another_form,
    is_told_as_a_thing,
    is_word_written_small,
)
from boxlore.core.people.names_in_text.hits import Doubt, Hit
from boxlore.core.people.names_in_text.inflections import key_of
from boxlore.core.people.names_in_text.initials import is_initial_of, letter_key
from boxlore.core.people.names_in_text.languages_told import is_told_in_english, languages_told
from boxlore.core.people.names_in_text.name_index import LONGEST_PIECE, As, Meant, NameIndex
from boxlore.core.people.names_in_text.ordinary_words import (
    is_behind_an_article,
    is_numbered,
    is_something_else,
    may_be_a_ship,
)
from boxlore.core.people.names_in_text.text_normalising import LATIN, Text
from boxlore.core.people.names_in_text.words_elsewhere import is_of_another_sex, is_told_of_people, is_word_elsewhere
from boxlore.core.people.names_in_text.words_in_sentences import (
    are_things_that_did,
    is_ordinary,
    is_read_as_a_word,
    is_title_case,
    may_be_english,
)


@dataclass(frozen=True, slots=True)
class Full:
    """A full name of one person: the numbers of its first and last word, and how it stands there."""

    first: int
    last: int
    person: str
    how: As


_JOINS = re.compile(r"[ \t\r\u00a0_\-–‐‑/+#@]*\n?[ \t_\-#@]*")
_JOINS_LETTER = re.compile(r"\.?[ \t\r\u00a0_\-]*\n?[ \t]*")
COMMA = re.compile(r"[ \t]*,[ \t\n]*")
ONE_LETTER_WORDS = frozenset("aeiouyàвкиосуаяοηω")
"""Words of one letter: “A Rourke” is nobody's initial."""


def begins(letter: str, letters: Iterable[str]) -> bool:
    return any(is_initial_of(letter, first) for first in letters)


class NamesAlone:
    """One text with what its words may mean, and the names of it that stand alone."""

    def __init__(self, index: NameIndex, text: Text, meant: Sequence[Meant]) -> None:
        self._index, self._text, self._words, self._meant = index, text, text.words, meant
        self._one_case = text.is_one_case
        self._titled: bool | None = None
        self._english: bool | None = None
        self._around: dict[int, list[Full]] = {}

    def full_names_around(self, at: int) -> Sequence[Full]:
        """The full names that a word is part of."""
        return self._around.get(at, ())

    def _hit(self, first: int, last: int, people: Iterable[str], doubt: Doubt = Doubt.NONE) -> Hit:
        return Hit(self._words[first].start, self._words[last].end, frozenset(people), doubt)

    def _joins(self, at: int) -> bool:
        """Whether a word belongs to the phrase of the word before it."""
        before = self._words[at].before
        if _JOINS.fullmatch(before):
            return True
        return len(self._words[at - 1].folded) == 1 and bool(_JOINS_LETTER.fullmatch(before))

    def _is_initial(self, at: int) -> bool:
        """Whether a letter stands for a name: with a point, or as a capital that is no word of one letter."""
        word = self._words[at]
        if len(word.folded) > 1:
            return False
        if at + 1 < len(self._words) and self._words[at + 1].before.startswith("."):
            return True
        return word.folded not in ONE_LETTER_WORDS and (word.spelled.isupper() or self._one_case)

    def _has_point(self, at: int) -> bool:
        """Whether a word is one letter with a point behind it."""
        is_last = at + 1 == len(self._words)
        behind = self._text.clean.rstrip()[-1:] if is_last else self._words[at + 1].before
        return len(self._words[at].folded) == 1 and behind.startswith(".")

    def _alone(self, at: int, meant: Meant) -> Iterator[Hit]:
        """A given name or a family name that is no part of a full name."""
        hidden = self._index.hidden
        around = self.full_names_around(at)
        if any(full.how < As.MISSPELT for full in around):
            return
        is_capital = not self._words[at].is_small
        if (not self._one_case or not is_capital) and is_something_else(self._words, at):
            return
        is_small = not is_capital and not self._one_case
        if (is_small and is_behind_an_article(self._words, at)) or self._is_read_as_a_word(at, meant):
            return
        is_called = not hidden.isdisjoint(meant.calls)
        if not self._one_case and (
            self._is_word_of_a_dictionary(at, meant)
            or is_word_elsewhere(self._words, at, is_called=is_called, is_told=self._is_told(meant))
            or is_told_of_a_thing(
                self._words, at, is_named_behind=at + 1 < len(self._meant) and bool(self._meant[at + 1])
            )
        ):
            return
        own = {full.person for full in around}
        by_doubt: dict[Doubt, set[str]] = {}
        for person, how in meant.calls.items():
            if person in hidden and person not in own and not self._is_plain_word(at, meant, how):
                by_doubt.setdefault(self._doubt(at, meant, how), set()).add(person)
        named = set().union(*by_doubt.values())
        for person, how in meant.families.items():
            if person in hidden and person not in own | named and self._may_be_family(at, meant, how, person):
                by_doubt.setdefault(Doubt.FAMILY, set()).add(person)
        if is_capital and self._words[at].folded.endswith(PATRONYMIC_ENDINGS):
            fathers = set(meant.besides) & hidden - own - named
            by_doubt |= {Doubt.FATHER: fathers} if fathers else {}
        if read_so := (self._read_so(at, meant) | self._titled_half(at, meant)) - own - named:
            by_doubt.setdefault(Doubt.FAMILY, set()).update(read_so)
        for doubt, people in by_doubt.items():
            yield self._hit(at, at, people, doubt)

    def _is_word_of_a_dictionary(self, at: int, meant: Meant) -> bool:
        """Whether it is a word of the language of its sentence, by how it is written and what is told of it."""
        folded, bearers, hidden = self._words[at].folded, self._index.bearers, self._index.hidden
        calls = {person: how for person, how in meant.calls.items() if person in hidden}
        families = {person: how for person, how in meant.families.items() if person in hidden}
        surest = min((*calls.values(), *families.values()), default=As.TOLD)
        names = {name for person in calls for name in bearers[person].calls}
        names |= {name for person in families for name in bearers[person].own_families}
        bases = {name for name in names if folded.startswith(name[:-1]) or name.startswith(folded[:-1])}
        is_called = any(how <= As.INFLECTED or folded in CALLED for how in calls.values())
        if self._words[at].is_small:
            return is_word_written_small(self._words, at, bases, is_called=is_called)
        if surest > As.TOLD and not is_called and is_another_form(self._words, at, bases):
            return True
        is_slip = surest >= As.FOND and folded not in CALLED and As.MISSPELT not in calls.values()
        is_slip = is_slip and key_of(folded, LATIN) not in {key_of(name, LATIN) for name in names}  # `Winter`, Vinter
        if is_slip and is_a_word_one_slip_away(self._words, at):
            return True
        return not is_called and is_told_as_a_thing(self._words, at)

    def _is_told(self, meant: Meant) -> bool:
        """Whether somebody hidden bears the word as it stands."""
        ways = (*meant.calls.items(), *meant.families.items())
        return any(how is As.TOLD for person, how in ways if person in self._index.hidden)

    def _is_read_as_a_word(self, at: int, meant: Meant) -> bool:
        """Whether the sentence tells that it is a word of every day, not a name."""
        if meant.calls and not meant.families and self._may_be_english() and are_things_that_did(self._words, at):
            return is_told_in_english(self._words, at)
        is_known_word = meant.is_everyday or meant.is_word or is_ordinary(self._words[at].folded)
        if not is_known_word or self._words[at].script != LATIN:
            return False
        if not self._may_be_english() or not is_told_in_english(self._words, at):
            return False
        folded = self._words[at].folded
        ways = [how for person, how in (*meant.calls.items(), *meant.families.items()) if person in self._index.hidden]
        return is_read_as_a_word(
            self._words,
            at,
            is_called=not self._index.hidden.isdisjoint(meant.calls),
            is_told=As.TOLD in ways or folded in CALLED or folded in EVERYDAY,
            capitals_tell=not (self._one_case or self._is_title_case()),
        )

    def _is_title_case(self) -> bool:
        if self._titled is None:
            self._titled = is_title_case(self._words)
        return self._titled

    def _may_be_english(self) -> bool:
        if self._english is None:
            self._english = may_be_english(self._words, is_ascii=self._text.is_ascii)
        return self._english

    def _read_so(self, at: int, meant: Meant) -> set[str]:
        """Those hidden whose family name in Han characters is read like this word, `Wang`, where it is no other."""
        word, bearers = self._words[at], self._index.bearers
        is_other_word = meant.is_word or meant.is_everyday or word.spelled[0].islower()
        is_titled = at > 0 and self._words[at - 1].folded in TITLES
        if is_other_word or (len(word.folded) == 2 and not is_titled):
            return set()
        among = set(meant.besides) & self._index.hidden
        read_so = {person for person in among if word.folded in bearers[person].read_as}
        return {person for person in read_so if not self._has_other_initial(at, person)}

    def _titled_half(self, at: int, meant: Meant) -> set[str]:
        """Those hidden of whose family name a piece of two letters stands behind a title: `Fru Ek` of Berglund-Ek."""
        word = self._words[at]
        is_titled = at > 0 and self._words[at - 1].folded in TITLES and self._joins(at)
        if not is_titled or len(word.folded) != LONGEST_PIECE or word.spelled[0].islower():
            return set()
        return {person for person, how in meant.besides.items() if how is As.TOLD} & self._index.hidden

    def _doubt(self, at: int, meant: Meant, how: As) -> Doubt:
        is_small = self._is_small(at, if_one_case=False)
        if meant.is_everyday or is_small or (meant.is_word and self._is_small(at)) or may_be_a_ship(self._words, at):
            return Doubt.EVERYDAY
        if how is As.MISSPELT:
            return Doubt.MISSPELT
        if how in (As.SHORT, As.FOND) or meant.is_other_name or meant.is_short:
            return Doubt.SHORT
        if how is As.INFLECTED and (
            self._is_small(at) or meant.is_word or (meant.is_by_a_letter and self._begins_at(at))
        ):
            return Doubt.SHORT
        bearers = [*meant.calls, *(person for person, stands in meant.families.items() if stands is As.TOLD)]
        if any(person not in self._index.hidden for person in bearers):
            return Doubt.SHARED
        return Doubt.ANOTHER if self._another_follows(at) else Doubt.NONE

    def _begins_at(self, at: int) -> bool:
        """Whether a word is written large because a sentence begins with it."""
        return not at or any(sign in self._words[at].before for sign in ".!?\n")

    def _another_follows(self, at: int) -> bool:
        """Whether a word written like a name stands right behind, so that the two may be somebody else's."""
        if at + 1 == len(self._words) or self._one_case:
            return False
        after = self._words[at + 1]
        return after.before.isspace() and len(after.folded) > 1 and after.spelled[0].isupper()

    def _is_plain_word(self, at: int, meant: Meant, how: As) -> bool:
        """Whether a form is read as a word, not as a name: written small, in a date, or before another name."""
        is_form = how is As.INFLECTED or (how is As.SHORT and self._words[at].folded not in CALLED)
        inflected_small = meant.is_short and is_form and self._is_small(at)
        is_anothers = meant.is_other_name and how is not As.OTHER_SCRIPT and self._another_follows(at)
        is_a_month = how is not As.TOLD and is_numbered(self._words, at)
        if how >= As.PART_OF_FULL or inflected_small or is_anothers or is_a_month:
            return True
        if how in (As.FOND, As.MISSPELT) or (meant.is_everyday and how is not As.TOLD):
            return self._is_small(at)
        if (how is As.SHORT or meant.is_word) and self._is_small(at, if_one_case=False):
            return True
        return meant.is_everyday and (self._is_small(at, if_one_case=False) or is_numbered(self._words, at))

    def _may_be_family(self, at: int, meant: Meant, how: As, person: str) -> bool:
        if how >= As.PART_OF_FULL or (how is not As.TOLD and self._is_small(at)):
            return False
        is_told_by_its_capital = not (self._one_case or self._is_title_case() or self._begins_at(at))
        is_told_by_what_follows = self._another_follows(at) or is_told_of_people(self._words, at)
        if how is As.INFLECTED and meant.is_everyday and not (is_told_by_what_follows or is_told_by_its_capital):
            return False
        if meant.is_word and self._is_small(at, if_one_case=False):
            return False
        if meant.is_everyday and (self._is_small(at) or is_numbered(self._words, at)):
            return False
        if how is As.TOLD and is_of_another_sex(self._words, at, self._index.sexes[person]):
            return False
        return not (self._has_other_initial(at, person) or self._is_of_family(at, meant))

    def _is_of_family(self, at: int, meant: Meant) -> bool:
        """Whether a family is named that has members who may be: `the Tamm and Rourke families`, `perekond Tamm`."""
        folded = self._words[at].folded
        bear_it = [person for person in meant.families if folded in self._index.bearers[person].own_families]
        if all(person in self._index.hidden for person in bear_it or meant.families):
            return False
        if not bear_it and As.TOLD in meant.families.values():
            return False
        around = [word.folded for word in self._words[max(0, at - 1) : at + 4]]
        if not YOUNGER_WORDS.isdisjoint(around):
            return False
        return not FAMILY_WORDS.isdisjoint(around)

    def _has_other_initial(self, at: int, person: str) -> bool:
        """Whether letters beside a family name, `A. Tamm` or `Tamm, A.`, begin no given name of this person: they are
        somebody else's."""
        first = at
        while first and self._joins(first) and self._is_initial(first - 1):
            first -= 1
        if first == at and at + 1 < len(self._words) and COMMA.fullmatch(self._words[at + 1].before):
            first = at + 1 if self._has_point(at + 1) else at
        letters = self._index.bearers[person].every_letter
        if at + 1 < len(self._words) and self._joins(at + 1) and self._has_point(at + 1):
            first = at + 1 if begins(self._words[at + 1].folded, letters) else first  # `M. Tamm J.`
        if first == at or not letters or (first and self._words[first - 1].folded in WIFE_TITLES):
            return False
        letter = self._words[first].folded
        is_last = at + 1 == len(self._words) or not self._has_point(at + 1)
        if letter == "m" and first + 1 == at and is_last and "fr" in languages_told(self._words, at):
            return False  # `M. Chevalier`
        return not (begins(letter_key(letter), map(letter_key, letters)) or (letter == "e" and letters & {"y", "j"}))

    def _is_small(self, at: int, *, if_one_case: bool = True) -> bool:
        """Whether a word is written small; `if_one_case` is the answer where the whole text is."""
        small = self._words[at].spelled[0].islower()
        return small and (if_one_case or not self._one_case)
