"""The rules of names in a text: full names first, then initials, and names alone (`search` tells the theory)."""

import re
from collections.abc import Iterable, Iterator, Sequence

from boxlore.core.people.names.words_table import FAMILY_WORDS, PARTICLES, WIFE_TITLES
from boxlore.core.people.names_in_text.dictionary_words import are_words_written_small
from boxlore.core.people.names_in_text.hits import Doubt, Hit
from boxlore.core.people.names_in_text.initials import letter_key
from boxlore.core.people.names_in_text.name_index import LONGEST_PIECE, As, Meant, NameIndex
from boxlore.core.people.names_in_text.names_alone import COMMA, Full, NamesAlone, begins
from boxlore.core.people.names_in_text.ordinary_words import is_english, may_be_initials
from boxlore.core.people.names_in_text.run_together import Run
from boxlore.core.people.names_in_text.text_normalising import Text, plain

_SINGLE = re.compile(r"[^\W\d_](?:['’‘ʼ´`′＇][^\W\d_])?")
"""One letter, or two with an apostrophe: `M. O'D.`"""
_POINT_AND_COMMA = re.compile(r"\.[ \t]*,[ \t\n]*")
LONGEST_NAME = 6


class Phrases(NamesAlone):
    """One text with what its words may mean: finds full names first, then what is left."""

    def __init__(self, index: NameIndex, text: Text, meant: Sequence[Meant], runs: Sequence[Run]) -> None:
        super().__init__(index, text, meant)
        self._runs = runs
        self._phrases = list(self._phrases_of_text())
        self.full = [full for phrase in self._phrases for full in self._full_in(phrase)]
        self.full += self._turned_about()
        self.full += self._run_together()
        for full in self.full:
            for at in range(full.first, full.last + 1):
                self._around.setdefault(at, []).append(full)

    def hits(self) -> Iterator[Hit]:
        """What names somebody hidden, each word once for each person."""
        yield from self._full_hits()
        yield from self._whole_hits()
        yield from self._doubtful_runs()
        for at, meant in enumerate(self._meant):
            if meant:
                yield from self._alone(at, meant)
        yield from self._initials()

    def _phrases_of_text(self) -> Iterator[range]:
        """Runs of words that may be a name: words of names, single letters, particles, one word more between."""
        start = 0
        for at in range(1, len(self._words) + 1):
            if at == len(self._words) or not self._joins(at):
                yield range(start, at)
                start = at

    def _full_in(self, phrase: range) -> Iterator[Full]:
        named = [at for at in phrase if self._meant[at]]  # most words are nobody's
        for last in phrase if named else ():
            begin = max(phrase.start, last - LONGEST_NAME)
            firsts = range(begin, last) if self._meant[last] else [at for at in named if begin <= at < last]
            for first in firsts:
                yield from self._pair(first, last)

    def _pair(self, first: int, last: int) -> Iterator[Full]:
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
            is_word = how is As.INFLECTED and person not in ends.families and self._are_words(first, last)
            if is_word or not self._fewer_unknown(between):
                continue
            if all(self._fits(at, person, by_letter) for at in between):
                yield Full(first, last, person, how)

    def _are_words(self, first: int, last: int) -> bool:
        """`Two stones mark the corner`: words of every day, written small in a text that writes names large."""
        return not self._one_case and are_words_written_small(self._words, first, last)

    def _called(self, at: int, among: Iterable[str], *, is_initial: bool = False) -> dict[str, As]:
        """Those whom a word may call, of `among` where it is the first letter of their given name alone."""
        letter = self._words[at].folded
        if not is_initial and not self._is_initial(at):
            return dict(self._meant[at].calls)
        if at and self._joins(at) and self._is_initial(at - 1):
            return {}  # it is the first letter that says whose they are
        bearers = self._index.bearers
        return {person: As.SHORT for person in among if begins(letter, bearers[person].letters[:1])}

    def _fits(self, at: int, person: str, by_letter: bool) -> bool:
        """Whether a word may stand inside the name of a person: a word of it, a letter, a particle, an unknown one.

        Where letters stand for the given names, each is one of theirs.
        """
        meant, folded = self._meant[at], self._words[at].folded
        if len(folded) == 1 and by_letter:
            return begins(folded, self._index.bearers[person].letters)
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

    def _turned_about(self) -> Iterator[Full]:
        """`Hallam, Ruth`: a family name that stands alone before a comma, or `family` behind it."""
        for at in range(1, len(self._words)):
            if not COMMA.fullmatch(self._words[at].before):
                continue
            family = at - 2 if at > 1 and self._words[at - 1].folded in FAMILY_WORDS and self._joins(at - 1) else at - 1
            families = self._meant[family].families
            for person, how in self._called(at, families, is_initial=self._has_point(at)).items():
                alone = not family or not self._joins(family) or self._fits_family(family - 1, person)
                if person in families and alone:
                    yield Full(family, at, person, max(how, families[person]))

    def _fits_family(self, at: int, person: str) -> bool:
        return person in self._meant[at].families or not self._meant[at].calls

    def _run_together(self) -> list[Full]:
        """Full names in runs that were not found word by word."""
        known = {(at, full.person) for full in self.full for at in range(full.first, full.last + 1)}
        return [
            Full(run.first, run.last, run.person, As.TOLD)
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
            is_word = explained or self._are_words(run.first, run.last)
            if not run.is_sure and run.person in self._index.hidden and not is_word:
                yield self._hit(run.first, run.last, {run.person}, Doubt.RUN_TOGETHER)

    def _full_hits(self) -> Iterator[Hit]:
        hidden = self._index.hidden
        for full in self.full:
            if full.person in hidden and not self._is_within_another(full):
                if self._is_within_one_who_may(full):
                    continue
                shared = any(
                    named.person not in hidden and full.last <= named.last and named.how <= full.how
                    for named in self.full_names_around(full.first)
                )
                doubt = Doubt.READ_SO if full.how is As.READ_SO else Doubt.NONE
                yield self._hit(full.first, full.last, {full.person}, Doubt.SHARED if shared else doubt)
            wives = self._index.wives.get(full.person)
            if wives and full.first and self._words[full.first - 1].folded in WIFE_TITLES:
                yield self._hit(full.first - 1, full.last, wives)

    def _is_within_one_who_may(self, full: Full) -> bool:
        """Whether the words are part of a longer name that one who may be named bears, word for word, and nobody hidden
        does: `José Ortega Lara`."""
        hidden = self._index.hidden
        return any(
            longer.person not in hidden
            and longer.how is As.TOLD
            and longer.first == full.first
            and longer.last > full.last
            and all(self._is_told_of(at, longer.person) for at in range(longer.first, longer.last + 1))
            and not any(same.person in hidden and same.last >= longer.last for same in self._around[full.first])
            for longer in self.full_names_around(full.first)
        )

    def _is_told_of(self, at: int, person: str) -> bool:
        meant = self._meant[at]
        return As.TOLD in (meant.calls.get(person), meant.families.get(person))

    def _is_within_another(self, full: Full) -> bool:
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
        """Whether a word is written in capitals because all others are, and is one that we know, or a particle."""
        folded = self._words[at].folded
        is_known = is_english(folded) or (folded in PARTICLES and len(self._words) > LONGEST_PIECE)
        return self._one_case and len(self._words) > 1 and is_known

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
