"""The rules of names in a text: full names first, then initials, and names alone (`search` tells the theory)."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import FAMILY_WORDS, PARTICLES, PATRONYMIC_ENDINGS, TITLES, WIFE_TITLES
from boxlore.core.people.names_in_text.agreeing_words import is_told_of_a_thing
from boxlore.core.people.names_in_text.hits import Doubt, Hit
from boxlore.core.people.names_in_text.languages_told import is_told_in_english
from boxlore.core.people.names_in_text.name_index import LONGEST_PIECE, As, Meant, NameIndex, is_initial_of, letter_key
from boxlore.core.people.names_in_text.ordinary_words import (
    is_behind_an_article,
    is_english,
    is_numbered,
    is_something_else,
    may_be_a_ship,
    may_be_initials,
)
from boxlore.core.people.names_in_text.run_together import Run
from boxlore.core.people.names_in_text.text_normalising import LATIN, Text, plain
from boxlore.core.people.names_in_text.words_elsewhere import is_of_another_sex, is_word_elsewhere
from boxlore.core.people.names_in_text.words_in_sentences import is_read_as_a_word, is_title_case, may_be_english


@dataclass(frozen=True, slots=True)
class _Full:
    """A full name of one person: the numbers of its first and last word, and how it stands there."""

    first: int
    last: int
    person: str
    how: As


_JOINS = re.compile(r"[ \t\r\u00a0_\-–‐‑/+#@]*\n?[ \t_\-#@]*")
_JOINS_LETTER = re.compile(r"\.?[ \t\r\u00a0_\-]*\n?[ \t]*")
_SINGLE = re.compile(r"[^\W\d_](?:['’‘ʼ´`′＇][^\W\d_])?")
"""One letter, or two with an apostrophe: `M. O'D.`"""
_POINT_AND_COMMA = re.compile(r"\.[ \t]*,[ \t\n]*")
_COMMA = re.compile(r"[ \t]*,[ \t\n]*")
LONGEST_NAME = 6
ONE_LETTER_WORDS = frozenset("aeiouyàвкиосуаяοηω")
"""Words of one letter: “A Rourke” is nobody's initial."""


def _begins(letter: str, letters: Iterable[str]) -> bool:
    return any(is_initial_of(letter, first) for first in letters)


class Phrases:
    """One text with what its words may mean: finds full names first, then what is left."""

    def __init__(self, index: NameIndex, text: Text, meant: Sequence[Meant], runs: Sequence[Run]) -> None:
        self._index, self._text, self._words, self._meant = index, text, text.words, meant
        self._runs = runs
        self._one_case = text.is_one_case
        self._titled: bool | None = None
        self._english: bool | None = None
        self._phrases = list(self._phrases_of_text())
        self.full = [full for phrase in self._phrases for full in self._full_in(phrase)]
        self.full += self._turned_about()
        self.full += self._run_together()
        self._around: dict[int, list[_Full]] = {}
        for full in self.full:
            for at in range(full.first, full.last + 1):
                self._around.setdefault(at, []).append(full)

    def full_names_around(self, at: int) -> Sequence[_Full]:
        """The full names that a word is part of."""
        return self._around.get(at, ())

    def hits(self) -> Iterator[Hit]:
        """What names somebody hidden, each word once for each person."""
        yield from self._full_hits()
        yield from self._whole_hits()
        yield from self._doubtful_runs()
        for at, meant in enumerate(self._meant):
            if meant:
                yield from self._alone(at, meant)
        yield from self._initials()

    def _hit(self, first: int, last: int, people: Iterable[str], doubt: Doubt = Doubt.NONE) -> Hit:
        return Hit(self._words[first].start, self._words[last].end, frozenset(people), doubt)

    def _joins(self, at: int) -> bool:
        """Whether a word belongs to the phrase of the word before it."""
        before = self._words[at].before
        if _JOINS.fullmatch(before):
            return True
        return len(self._words[at - 1].folded) == 1 and bool(_JOINS_LETTER.fullmatch(before))

    def _phrases_of_text(self) -> Iterator[range]:
        """Runs of words that may be a name: words of names, single letters, particles, one word more between."""
        start = 0
        for at in range(1, len(self._words) + 1):
            if at == len(self._words) or not self._joins(at):
                yield range(start, at)
                start = at

    def _full_in(self, phrase: range) -> Iterator[_Full]:
        named = [at for at in phrase if self._meant[at]]  # most words are nobody's
        for last in phrase if named else ():
            begin = max(phrase.start, last - LONGEST_NAME)
            firsts = range(begin, last) if self._meant[last] else [at for at in named if begin <= at < last]
            for first in firsts:
                yield from self._pair(first, last)

    def _pair(self, first: int, last: int) -> Iterator[_Full]:
        """Everybody whose full name begins and ends with these words."""
        begins, ends = self._meant[first], self._meant[last]
        pairs = (
            (self._called(first, ends.families), ends.families),
            (self._called(last, begins.families), begins.families),
            (self._called(first, ends.besides), ends.besides),
            (self._called(last, begins.besides), begins.besides),
        )
        people: dict[str, As] = {}
        for called, named in pairs:
            small, large = sorted((called, named), key=len)
            for person in small:
                if person in large:
                    how = max(called[person], named[person])
                    people[person] = min(how, people.get(person, how))
        for person, how in people.items():
            by_letter = min(len(self._words[first].folded), len(self._words[last].folded)) == 1
            between = range(first + 1, last)
            if all(self._fits(at, person, by_letter) for at in between) and self._fewer_unknown(between):
                yield _Full(first, last, person, how)

    def _called(self, at: int, among: Iterable[str], *, is_initial: bool = False) -> dict[str, As]:
        """Those whom a word may call, of `among` where it is the first letter of their given name alone."""
        letter = self._words[at].folded
        if not is_initial and not self._is_initial(at):
            return dict(self._meant[at].calls)
        if at and self._joins(at) and self._is_initial(at - 1):
            return {}  # it is the first letter that says whose they are
        bearers = self._index.bearers
        return {person: As.SHORT for person in among if _begins(letter, bearers[person].letters[:1])}

    def _is_initial(self, at: int) -> bool:
        """Whether a letter stands for a name: with a point, or as a capital that is no word of one letter."""
        word = self._words[at]
        if len(word.folded) > 1:
            return False
        if at + 1 < len(self._words) and self._words[at + 1].before.startswith("."):
            return True
        return word.folded not in ONE_LETTER_WORDS and (word.spelled.isupper() or self._one_case)

    def _fits(self, at: int, person: str, by_letter: bool) -> bool:
        """Whether a word may stand inside the name of a person: a word of it, a letter, a particle, an unknown one.

        Where letters stand for the given names, each is one of theirs.
        """
        meant, folded = self._meant[at], self._words[at].folded
        if len(folded) == 1 and by_letter:
            return _begins(folded, self._index.bearers[person].letters)
        if len(folded) == 1 or folded in PARTICLES or not meant:
            return True
        return person in meant.calls or person in meant.families or person in meant.besides

    def _fewer_unknown(self, between: range) -> bool:
        """Whether at most one word between is unknown, and that is written like a name."""
        unknown = [
            at
            for at in between
            if not self._meant[at] and len(self._words[at].folded) > 1 and self._words[at].folded not in PARTICLES
        ]
        return not unknown or (len(unknown) == 1 and self._words[unknown[0]].spelled[0].isupper())

    def _turned_about(self) -> Iterator[_Full]:
        """`Hallam, Ruth`: a family name that stands alone before a comma, or `family` behind it."""
        for at in range(1, len(self._words)):
            if not _COMMA.fullmatch(self._words[at].before):
                continue
            family = at - 2 if at > 1 and self._words[at - 1].folded in FAMILY_WORDS and self._joins(at - 1) else at - 1
            families = self._meant[family].families
            for person, how in self._called(at, families, is_initial=self._has_point(at)).items():
                alone = not family or not self._joins(family) or self._fits_family(family - 1, person)
                if person in families and alone:
                    yield _Full(family, at, person, max(how, families[person]))

    def _fits_family(self, at: int, person: str) -> bool:
        return person in self._meant[at].families or not self._meant[at].calls

    def _run_together(self) -> list[_Full]:
        """Full names in runs that were not found word by word."""
        known = {(at, full.person) for full in self.full for at in range(full.first, full.last + 1)}
        return [
            _Full(run.first, run.last, run.person, As.TOLD)
            for run in self._runs
            if run.is_sure and (run.first, run.person) not in known and not self._is_a_form(run)
        ]

    def _is_a_form(self, run: Run) -> bool:
        """Whether the run is one word, which may name somebody hidden as it stands, and is read with an initial as one
        who may be named: `Voloshins` is the plural before it is S. Voloshin."""
        hidden = self._index.hidden
        if run.first != run.last or run.person in hidden:
            return False
        meant = self._meant[run.first]
        return not hidden.isdisjoint({*meant.calls, *meant.families})

    def _doubtful_runs(self) -> Iterator[Hit]:
        for run in self._runs:
            explained = any(self.full_names_around(at) for at in range(run.first, run.last + 1))
            if not run.is_sure and run.person in self._index.hidden and not explained:
                yield self._hit(run.first, run.last, {run.person}, Doubt.RUN_TOGETHER)

    def _full_hits(self) -> Iterator[Hit]:
        hidden = self._index.hidden
        for full in self.full:
            if full.person in hidden and not self._is_within_another(full):
                shared = any(
                    named.person not in hidden and full.last <= named.last and named.how <= full.how
                    for named in self.full_names_around(full.first)
                )
                yield self._hit(full.first, full.last, {full.person}, Doubt.SHARED if shared else Doubt.NONE)
            wives = self._index.wives.get(full.person)
            if wives and full.first and self._words[full.first - 1].folded in WIFE_TITLES:
                yield self._hit(full.first - 1, full.last, wives)

    def _is_within_another(self, full: _Full) -> bool:
        """Whether a longer form of the same person's name stands there, as sure: one place is one hit."""
        size = full.last - full.first
        return any(
            longer.person == full.person
            and longer.how <= full.how
            and full.last <= longer.last
            and longer.last - longer.first > size
            for longer in self.full_names_around(full.first)
        )

    def _whole_hits(self) -> Iterator[Hit]:
        """Names that are no given or family name: as they were told, whole."""
        folded = [word.folded for word in self._words]
        for at, word in enumerate(folded):
            for whole, person in self._index.wholes.get(word, ()):
                if tuple(folded[at : at + len(whole)]) == whole:
                    yield self._hit(at, at + len(whole) - 1, {person})

    # Parts of a name alone

    def _alone(self, at: int, meant: Meant) -> Iterator[Hit]:
        """A given name or a family name that is no part of a full name."""
        hidden = self._index.hidden
        around = self.full_names_around(at)
        if any(full.how < As.MISSPELT for full in around):
            return
        is_capital = self._words[at].spelled[0].isupper()
        if (not self._one_case or not is_capital) and is_something_else(self._words, at):
            return
        is_small = not is_capital and not self._one_case
        if (is_small and is_behind_an_article(self._words, at)) or self._is_read_as_a_word(at, meant):
            return
        is_called = not hidden.isdisjoint(meant.calls)
        if not self._one_case and (
            is_word_elsewhere(self._words, at, is_called=is_called)
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

    def _is_read_as_a_word(self, at: int, meant: Meant) -> bool:
        """Whether the sentence tells that it is a word of every day, not a name."""
        is_known_word = meant.is_everyday or meant.is_word
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
        if how is As.PART_OF_FULL or inflected_small or is_anothers or is_a_month:
            return True
        if how in (As.FOND, As.MISSPELT) or (meant.is_everyday and how is not As.TOLD):
            return self._is_small(at)
        if (how is As.SHORT or meant.is_word) and self._is_small(at, if_one_case=False):
            return True
        return meant.is_everyday and (self._is_small(at, if_one_case=False) or is_numbered(self._words, at))

    def _may_be_family(self, at: int, meant: Meant, how: As, person: str) -> bool:
        if how is As.PART_OF_FULL or (how is not As.TOLD and self._is_small(at)):
            return False
        is_told_by_its_capital = not (self._one_case or self._is_title_case() or self._begins_at(at))
        if how is As.INFLECTED and meant.is_everyday and not (self._another_follows(at) or is_told_by_its_capital):
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
        return not FAMILY_WORDS.isdisjoint(around)

    def _has_other_initial(self, at: int, person: str) -> bool:
        """Whether letters beside a family name, `A. Tamm` or `Tamm, A.`, begin no given name of this person: they are
        somebody else's."""
        first = at
        while first and self._joins(first) and self._is_initial(first - 1):
            first -= 1
        if first == at and at + 1 < len(self._words) and _COMMA.fullmatch(self._words[at + 1].before):
            first = at + 1 if self._has_point(at + 1) else at
        letters = self._index.bearers[person].every_letter
        if at + 1 < len(self._words) and self._joins(at + 1) and self._has_point(at + 1):
            first = at + 1 if _begins(self._words[at + 1].folded, letters) else first  # `M. Tamm J.`
        if first == at or not letters or (first and self._words[first - 1].folded in WIFE_TITLES):
            return False
        letter = self._words[first].folded
        return not (_begins(letter_key(letter), map(letter_key, letters)) or (letter == "e" and letters & {"y", "j"}))

    def _has_point(self, at: int) -> bool:
        """Whether a word is one letter with a point behind it."""
        is_last = at + 1 == len(self._words)
        behind = self._text.clean.rstrip()[-1:] if is_last else self._words[at + 1].before
        return len(self._words[at].folded) == 1 and behind.startswith(".")

    def _is_small(self, at: int, *, if_one_case: bool = True) -> bool:
        """Whether a word is written small; `if_one_case` is the answer where the whole text is."""
        small = self._words[at].spelled[0].islower()
        return small and (if_one_case or not self._one_case)

    def _initials(self) -> Iterator[Hit]:
        """`J. T.`, `L.J.R.`, `LJR`, `R., L. J.`: initials that are nobody's surely."""
        before: tuple[int, int] | None = None
        for phrase in self._phrases:
            for at in phrase:
                word = self._words[at]
                letters = "".join(map(letter_key, plain(word.folded))) if may_be_initials(word.folded) else ""
                if letters in self._index.initials and word.spelled.isupper() and not self._is_shouted(at):
                    yield self._hit(at, at, self._index.initials[letters], Doubt.INITIALS)
            for first, last in self._letters(phrase):
                if people := self._index.initials.get(self._letters_of(first, last)):
                    yield self._hit(first, last, people, Doubt.INITIALS)
                elif before and before[1] == first - 1 and _POINT_AND_COMMA.fullmatch(self._words[first].before):
                    turned = self._letters_of(first, last) + self._letters_of(*before)
                    if people := self._index.initials.get(turned):
                        yield self._hit(before[0], last, people, Doubt.INITIALS)
                before = first, last

    def _letters_of(self, first: int, last: int) -> str:
        """The letters of a run of single ones, by which initials are known: `mod` of `M. O'D.`"""
        words = (plain(self._words[at].folded) for at in range(first, last + 1) if self._is_single(at))
        return "".join(letter_key(letter) for word in words for letter in word)

    def _is_shouted(self, at: int) -> bool:
        """Whether a word is written in capitals because all others are, and is one that we know."""
        return self._one_case and len(self._words) > 1 and is_english(self._words[at].folded)

    def _letters(self, phrase: range) -> Iterator[tuple[int, int]]:
        """Runs of single capitals, particles among them, that no other word of a name stands beside."""
        first = None
        for at in (*phrase, phrase.stop):
            single = at < phrase.stop and self._is_single(at)
            if first is not None and not single and self._is_particle_inside(at, phrase):
                continue
            if single and first is None:
                first = at
            if not single and first is not None:
                if not any(full.first <= first <= full.last for full in self.full):
                    yield first, at - 1
                first = None

    def _is_particle_inside(self, at: int, phrase: range) -> bool:
        """Whether a word is a particle with a single capital behind it: `N. Ní C.`"""
        return at + 1 < phrase.stop and self._words[at].folded in PARTICLES and self._is_single(at + 1)

    def _is_single(self, at: int) -> bool:
        return self._words[at].spelled.isupper() and bool(_SINGLE.fullmatch(self._words[at].spelled))
