"""What the keeper has decided of places where somebody living is named, or may be: asked once, and remembered.

A decision holds for the words that were shown: the name with up to three words on either side of it. Of a record it
holds in its own item and field alone. Of a text that is no record, such as a page on which it stands among others,
it holds wherever the same words stand, unless the same words are hidden elsewhere. In a finished file they may stand
also then: it is made of records, in each of which they were judged by its own answer. What the keeper hides in a place
stays hidden there until the keeper answers otherwise, also when the person consents or dies. A setting of the
collection, such as its holder, is a place of its own: no answer about an item opens it, and its own opens nothing else.

That somebody may be named is answered because there is consent. It holds no more where she has taken that back, or the
keeper keeps her from that audience: it then counts as hidden, whichever was told first, until she consents anew.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from dataclasses import field as starts
from hashlib import sha256
from operator import attrgetter

from boxlore.core.fields.name_answers import OF_SETTING, NamingAnswer, NamingDecision
from boxlore.core.people.names_in_text.search import Doubt, Hit
from boxlore.core.people.names_in_text.text_normalising import Word, read_text

FINISHED = "finished"
"""The place of any text of a finished file, wherever the same words stand."""

MADE_BY = "who made the file"
"""The place of what a scan's file says of its maker. Every file of one maker says it, so that it is asked once: an
answer about the same words holds in every item."""

STRANGER = "unknown"
"""Stands for the id of a person whom the registry has not."""

AROUND = 3
"""Words on either side that are shown with a name."""

Key = tuple[str, str, str, str]
"""Item, where, person and digest."""


@dataclass(frozen=True, slots=True)
class Decided:
    """The decisions in force: of each place, and of the same words outside a record."""

    answers: Mapping[Key, NamingAnswer] = starts(default_factory=dict)
    anywhere: frozenset[tuple[str, str]] = frozenset()
    """(person, digest) that may be read in any text."""
    of_makers: Mapping[tuple[str, str], NamingAnswer] = starts(default_factory=dict)
    """By (person, digest), what was answered of the makers of files."""
    let_out: frozenset[tuple[str, str]] = frozenset()
    """(person, digest) that may be read in some record, so that they may stand in what is made of it."""
    of_strangers: Mapping[str, NamingAnswer] = starts(default_factory=dict)
    """By the digest of a name, what was answered of somebody whom the registry has not: `hide` where that was once."""

    def closed_to(self, people: frozenset[str]) -> "Decided":
        """The same, where no answer allows that any of these is named."""
        closed = [key for key, answer in self.answers.items() if answer is NamingAnswer.MAY and key[2] in people]
        return _of_answers({**self.answers, **dict.fromkeys(closed, NamingAnswer.HIDE)}) if closed else self

    @property
    def named_somewhere(self) -> frozenset[str]:
        """Whose name, or a name like it, may be read somewhere."""
        return frozenset(person for person, _ in self.anywhere)

    def left(self, hits: Sequence[Hit], words: str, item: str, where: str) -> Sequence[Hit]:
        """The hits that name somebody still: without those allowed, and without a doubt where one was decided."""
        if not self.answers or not hits:
            return hits
        tokens = read_text(words).words
        return [hit for told in hits for hit in self._weighed(told, tokens, item, where)]

    def hidden(self, hits: Sequence[Hit], words: str, item: str, where: str) -> Iterator[Hit]:
        """The hits that the keeper has answered with `hide` in this place, whoever is named there."""
        tokens = read_text(words).words
        for hit in hits:
            people = {
                person for person in hit.people if self._answer(hit, tokens, person, item, where) is NamingAnswer.HIDE
            }
            if people:
                yield replace(hit, people=frozenset(people), doubt=Doubt.NONE)

    @property
    def hidden_somewhere(self) -> frozenset[str]:
        """Whom the keeper has answered to hide in some place."""
        return frozenset(key[2] for key, answer in self.answers.items() if answer is NamingAnswer.HIDE)

    def _weighed(self, hit: Hit, tokens: Sequence[Word], item: str, where: str) -> Iterator[Hit]:
        kept: dict[Doubt, set[str]] = {}
        for person in hit.people:
            answer = self._answer(hit, tokens, person, item, where)
            if answer in (None, NamingAnswer.HIDE):
                kept.setdefault(hit.doubt if answer is None else Doubt.NONE, set()).add(person)
        for doubt, people in kept.items():
            yield replace(hit, people=frozenset(people), doubt=doubt)

    def _answer(self, hit: Hit, tokens: Sequence[Word], person: str, item: str, where: str) -> NamingAnswer | None:
        if where == MADE_BY:
            return self.of_makers.get((person, digest_of(hit, tokens)))
        if item:
            return self.answers.get((item, where, person, digest_of(hit, tokens)))
        may_stand = self.let_out if where == FINISHED else self.anywhere
        allowed = any((person, digest) in may_stand for digest in _digests(hit, tokens))
        return NamingAnswer.OTHER if allowed else None


NOTHING_DECIDED = Decided()


def decided(decisions: Iterable[tuple[str, NamingDecision]]) -> Decided:
    """The decisions of each item (id), the later of two of one place in force."""
    return _of_answers({(item, told.where, told.person, told.digest): told.answer for item, told in decisions})


def _of_answers(answers: Mapping[Key, NamingAnswer]) -> Decided:
    told_of = {key: answer for key, answer in answers.items() if not key[1].startswith(OF_SETTING)}
    hidden = {(person, digest) for (_, _, person, digest), answer in told_of.items() if answer is NamingAnswer.HIDE}
    allowed = {(person, digest) for _, _, person, digest in told_of}
    let_out = {key[2:] for key, answer in told_of.items() if answer is not NamingAnswer.HIDE}
    of_makers = {key[2:]: answer for key, answer in answers.items() if key[1] == MADE_BY}
    of_strangers: dict[str, NamingAnswer] = {}
    for key, answer in told_of.items():
        if key[2] == STRANGER and of_strangers.get(key[3]) is not NamingAnswer.HIDE:
            of_strangers[key[3]] = answer
    return Decided(answers, frozenset(allowed - hidden), of_makers, frozenset(let_out), of_strangers)


def decision_digest(hit: Hit, words: str) -> str:
    """By what a hit is known again: a digest of the name and the words around it, and how many these are."""
    return digest_of(hit, read_text(words).words)


def digest_of(hit: Hit, tokens: Sequence[Word]) -> str:
    """The digest of a hit among these words, with all that are there of those around it."""
    first, last = _span(hit, tokens)
    return _digest(tokens, first, last, min(AROUND, first), min(AROUND, len(tokens) - 1 - last))


def _digests(hit: Hit, tokens: Sequence[Word]) -> Iterator[str]:
    """Every digest that the hit may have had where fewer words stood around it."""
    first, last = _span(hit, tokens)
    for before in range(min(AROUND, first) + 1):
        for after in range(min(AROUND, len(tokens) - 1 - last) + 1):
            yield _digest(tokens, first, last, before, after)


def _span(hit: Hit, tokens: Sequence[Word]) -> tuple[int, int]:
    """The numbers of the first and the last word of a hit; in words without spaces, of the run that it stands in."""
    first = bisect_right(tokens, hit.start, key=attrgetter("end"))
    return first, bisect_left(tokens, hit.end, key=attrgetter("start")) - 1


def _digest(tokens: Sequence[Word], first: int, last: int, before: int, after: int) -> str:
    words = [word.folded for word in tokens[first - before : last + after + 1]]
    return f"{sha256(' '.join(words).encode()).hexdigest()[:16]}:{before}:{after}"
