"""Clues of relations between pictures: told as a relation, or in words that name another picture.

A date is that of the taking, not of the print: a copy or another print of a picture has the picture's own day. Another
picture is named by its number, its mark in the box, or its title in quotation marks; “the one before” is the one with
the number before. What was taken on one film or kept in one envelope need not be of one year: that is a guess, and how
far apart it may be is common practice, no source.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from boxlore.core.dates import phrases
from boxlore.core.dates.phrases import KnownDates, PhraseSettings
from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.claims import Claim, after, of_item, weaker
from boxlore.core.evidence.leaning import leaning_on
from boxlore.core.evidence.relation_words_table import APART, ONE_BEFORE
from boxlore.core.evidence.sentences import Sentence
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Sure, fold

SAME_TAKING: Mapping[str, str] = {
    "same_day": "was taken on the same day as",
    "same_picture": "is the same picture as",
    "print_from": "is a print from the negative",
    "negative_of": "is the negative of",
    "detail_of": "is a detail of",
}
"""Kinds of relation by which two items have one day. What was attached to a picture may be of any day."""

_NOT = re.compile(r"\b(?:not|never|isn['’]t|wasn['’]t|nicht|mitte|pas|no|inte|ikke)\b", re.IGNORECASE)
_OTHER = "qzotherpicture"
"""Stands for the other picture where words are read as a date; no language has it."""
_QUOTED = re.compile(r"[“\"„«‘]([^”\"“»’]{3,80})[”\"“»’]")
_NUMBER = re.compile(r"(?:[^\W\d_]*-)?\w*[-/]?\d[\w/-]*")
_STEM = re.compile(r"^(?:taken|it was taken|this was taken|this is|photographed|tehtud|aufgenommen)\s+", re.IGNORECASE)


class Numbered:
    """Pictures by what they may be called: number, mark, title; and who comes before whom, where they `are_all`."""

    def __init__(self, records: Sequence[Record], *, are_all: bool = True) -> None:
        self.ids: dict[str, str] = {}
        self._numbers: dict[str, str] = {}
        self._before: dict[str, str] = {}
        titles: dict[str, list[str]] = {}
        last = ""
        for record in records:
            self._numbers[record.id] = record.number
            self.ids[record.number] = record.id
            self.ids.setdefault(fold(record.number), record.id)
            if record.mark:
                self.ids.setdefault(fold(record.mark.short), record.id)
            for view in record.all("title"):
                titles.setdefault(fold(" ".join(view.words.split())), []).append(record.id)
            self._before[record.id], last = last, record.id if are_all else ""
        self._titles = {title: ids[0] for title, ids in titles.items() if len(set(ids)) == 1}

    def number(self, ident: str) -> str:
        return self._numbers[ident]

    def named_in(self, words: str, ident: str) -> Iterator[tuple[str, int, int]]:
        """Each other picture that words name: its id, and where its name stands."""
        for match in _NUMBER.finditer(words):
            if other := self.ids.get(fold(match[0].rstrip("/-"))):
                yield other, match.start(), match.start() + len(match[0].rstrip("/-"))
        for match in _QUOTED.finditer(words):
            if other := self._titles.get(fold(match[1].strip(" .,"))):
                yield other, match.start(), match.end()
        for match in ONE_BEFORE.finditer(words):
            if other := self._before.get(ident, ""):
                yield other, match.start(), match.end()


def clues(
    record: Record, sentences: Iterable[Sentence], numbered: Numbered, settings: PhraseSettings
) -> Iterator[Claim]:
    """Told relations, from one end so that each is one claim; then what the words say."""
    for relation in record.related:
        other = numbered.ids.get(relation.number)
        if relation.kind in SAME_TAKING and not relation.reverse and other is not None and other != record.id:
            yield Claim(
                words=f"{record.number} {SAME_TAKING[relation.kind]} {relation.number}",
                source="a relation told of them",
                sure=Sure.LIKELY,
                limits=after(of_item(record.id), of_item(other), 0, 0),
            )
    for sentence in sentences:
        yield from of_words(record, sentence.view, sentence.words, numbered, settings)


def of_words(
    record: Record, view: StatementView, words: str, numbered: Numbered, settings: PhraseSettings
) -> Iterator[Claim]:
    """The clues of a sentence or a date that names another picture."""
    for other, begins, ends in numbered.named_in(words, record.id):
        if other == record.id or _NOT.search(words[:ends]):
            continue
        claim = told(view, f"{record.number}: “{one_line(words)}”, which is {numbered.number(other)}")
        is_whole = view.field == "date" or not words[ends:].strip() or words[ends:].lstrip()[:1] in ",;.)("
        if is_whole and (apart := _apart(words[:begins])) is not None:
            limits = after(of_item(record.id), of_item(other), -apart[0], apart[0])
            yield replace(claim, sure=weaker(claim.sure, apart[1]), limits=limits)
            return
        led = _STEM.sub("", words[:begins])

        def read(day: str, phrase: str = f"{led}{_OTHER}") -> DateReading:
            return phrases.read(phrase, settings, KnownDates(events=MappingProxyType({_OTHER: day}), first_year=0))

        lean = leaning_on(of_item(other), read) if led.strip() and len(led) < phrases.MOST_LETTERS // 4 else None
        if lean is not None and not lean.is_asked:
            sure = claim.sure if view.field == "date" else weaker(claim.sure, Sure.LIKELY)
            least = 1 if lean.least == 0 else lean.least  # of pictures of one day nobody says “after”
            most = -1 if lean.most == 0 else lean.most
            yield replace(claim, sure=sure, limits=after(of_item(record.id), lean.on, least, most))
            return


def _apart(led: str) -> tuple[int, Sure] | None:
    """How far apart two pictures are that stand on either side of words like “the same day as”."""
    folded = f" {fold(led)}"
    for most, sure, ways in APART:
        for way in ways.split("|"):
            at = folded.rfind(fold(way))
            if at >= 0 and _LED.fullmatch(folded[:at].strip()) and _BETWEEN.fullmatch(folded[at + len(fold(way)) :]):
                return most, sure
    return None


_LED = re.compile(
    r"(?:.*[,;(])?\s*(?:(?:it|this|was|is|were|must|have|been|taken|photographed|made|probably|from|on|at|the|in|i|think|see|oli|"
    r"tehtud|aufgenommen|am|im|an|le|el|lo|de|den|w|в)\s*)*"
)
"""What may stand before: that it was taken, and nothing else that happened on that day."""
_BETWEEN = re.compile(
    r"\s*(?:(?:as|with|like|is|that|of|in|from|the|number|no|nr|picture|photo|photograph|one|kui|wie|som|que|como|di|co|jako|как|"
    r"что|kuin|als|kā|kaip)[.\s]+)*[“\"„«‘]?"
)
"""What may stand between: “the same day as”, “the same film as number”."""
