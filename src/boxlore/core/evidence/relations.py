"""Clues of relations between pictures: told as a relation, or in words that name another picture.

A date is that of the taking, not of the print: a copy or another print of a picture has the picture's own day. Another
picture is named by its number, its mark in the box, or its title in quotation marks; “the one before” is the one with
the number before. People call TRA-0006 “number 6” and “picture 6” too, where one picture alone ends so; “6” by itself
is one only in words like “the same day as 6”, for it may be an hour, an age or a day. What was taken on one film or
kept in one envelope need not be of one year: that is a guess, and how far apart it may be is common practice, no
source. The words here are ours too, from what is said in each language.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import NamedTuple

from boxlore.core.dates import phrases
from boxlore.core.dates.phrases import KnownDates, PhraseSettings
from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.claims import Claim, after, of_item, weaker
from boxlore.core.evidence.leaning import leaning_on
from boxlore.core.evidence.relation_words_table import APART, ONE_BEFORE, PICTURE
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
_SERIAL = re.compile(r"\d+\Z")
_STOP = re.compile(r"[.;:!?()]\s|[;()]|[.!?]\Z|\s[–—-]\s")
"""Where one thing that is told ends and the next begins."""
_STEM = re.compile(
    r"^(?:(?:it|this|that|it['’]s|that['’]s|is|was|must|have|been|i think|probably|taken|photographed|tehtud|"
    r"aufgenommen|see|das|on|oli|ist|war|c['’]est|c['’]était)\s+)+",
    re.IGNORECASE,
)
_TAKEN = re.compile(
    r"^(?:was |is |were )?(?:taken|made|aufgenommen|entstanden|gemacht|tehtud|prise?|tomada|scattata|tagen|taget|tatt|"
    r"genomen|otettu|сделан\w?|снят\w?|zrobione)\b",
    re.IGNORECASE,
)
"""What may stand behind the other picture without telling more: “aufgenommen”."""
_JOINING = re.compile(r"^(?:and|but|und|aber|ja|aga|et|mais|y|e|en|och|og|i|и|ir|un|a)\s+", re.IGNORECASE)
_JOINED = re.compile(r"and|und|ja|et|y|e|en|och|og|i|и|ir|un|a", re.IGNORECASE)
_BETWEEN_TWO = re.compile(
    r"(?:(?:it|this|was|is|taken|somewhere|sometime|must be|tehtud|aufgenommen)\s+)*(?:between|zwischen|entre|tra|fra|"
    r"mellan|mellem|mellom|tussen|между|między|mezi|starp|tarp)(?:\s+(?:the|den|les|le|la|el|o|a|de))?",
    re.IGNORECASE,
)
_ARTICLE = re.compile(r"\s+(?:the|das|dem|der|den|la|le|les|el|il|lo|o|os|de|het)$", re.IGNORECASE)
_SMALL = re.compile(r"\b(?:the|with|mit|koos|avec|con|com|med|met|as|it|this|was|is|taken|to)\b", re.IGNORECASE)
_OTHERWISE = (
    (re.compile(r"\bearlier than\b|\bolder than\b", re.IGNORECASE), "before"),
    (re.compile(r"\blater than\b|\bnewer than\b", re.IGNORECASE), "after"),
    (re.compile(r"\bfrüher als\b|\bälter als\b", re.IGNORECASE), "vor"),
    (re.compile(r"\bspäter als\b|\bjünger als\b", re.IGNORECASE), "nach"),
    (re.compile(r"\bvarem kui\b|\bvanem kui\b", re.IGNORECASE), "enne"),
    (re.compile(r"\bhiljem kui\b", re.IGNORECASE), "pärast"),
    (re.compile(r"\bplus tôt que\b|\bplus ancienne? que\b", re.IGNORECASE), "avant"),
    (re.compile(r"\bplus tard que\b", re.IGNORECASE), "après"),
)
"""The same in words that the reader of dates has."""


class _Named(NamedTuple):
    """Another picture that words name, and where; `is_bare`: by a number that may be that of anything."""

    other: str
    begins: int
    ends: int
    is_bare: bool = False


class Numbered:
    """Pictures by what they may be called: number, mark, title; and who comes before whom, where they `are_all`."""

    def __init__(self, records: Sequence[Record], *, are_all: bool = True) -> None:
        self.ids: dict[str, str] = {}
        self._numbers: dict[str, str] = {}
        self._before: dict[str, str] = {}
        titles: dict[str, list[str]] = {}
        serials: dict[int, list[str]] = {}
        last = ""
        for record in records:
            self._numbers[record.id] = record.number
            self.ids[record.number] = record.id
            self.ids.setdefault(fold(record.number), record.id)
            if serial := _SERIAL.search(record.number):
                serials.setdefault(int(serial[0]), []).append(record.id)
            if record.mark:
                self.ids.setdefault(fold(record.mark.short), record.id)
            for view in record.all("title"):
                titles.setdefault(fold(" ".join(view.words.split())), []).append(record.id)
            self._before[record.id], last = last, record.id if are_all else ""
        self._serials = {serial: ids[0] for serial, ids in serials.items() if len(ids) == 1} if are_all else {}
        self._titles = {title: ids[0] for title, ids in titles.items() if len(set(ids)) == 1}

    def number(self, ident: str) -> str:
        return self._numbers[ident]

    def named_in(self, words: str, ident: str) -> list[_Named]:
        """Each other picture that words name, in the order in which they stand there."""
        found: list[_Named] = []
        for match in _NUMBER.finditer(words):
            if other := self.ids.get(fold(match[0].rstrip("/-"))):
                found.append(_Named(other, match.start(), match.start() + len(match[0].rstrip("/-"))))
        for match in _QUOTED.finditer(words):
            if other := self._titles.get(fold(match[1].strip(" .,"))):
                found.append(_Named(other, match.start(), match.end()))
        for match in ONE_BEFORE.finditer(words):
            if other := self._before.get(ident, ""):
                found.append(_Named(other, match.start(), match.end()))
        for match in PICTURE.finditer(words):
            other = self._serials.get(int(match["number"]), "")
            is_within = any(named.begins < match.end() and match.start() < named.ends for named in found)
            if other and not is_within:
                is_padded = match[0].startswith("0") and self._numbers[other].endswith(f"-{match[0]}")
                is_bare = match.start() == match.start("number") and not is_padded
                found.append(_Named(other, match.start(), match.end(), is_bare))
        return sorted(found, key=lambda named: named.begins)


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
    """The clues of a sentence or a date that names other pictures."""
    names = [named for named in numbered.named_in(words, record.id) if named.other != record.id]
    if len(names) == 2 and _BETWEEN_TWO.fullmatch(words[: names[0].begins].strip()) and not names[0].is_bare:
        if _JOINED.fullmatch(words[names[0].ends : names[1].begins].strip()):
            claim = _claim(record, view, words, numbered, names[0])
            for later, earlier in ((record.id, names[0].other), (names[1].other, record.id)):
                yield replace(claim, limits=after(of_item(later), of_item(earlier), 1, None))
        return
    for place, named in enumerate(names):
        begins = names[place - 1].ends if place else 0
        ends = names[place + 1].begins if place + 1 < len(names) else len(words)
        if not _NOT.search(words[: named.begins]):
            led, behind = _STOP.split(words[begins : named.begins])[-1], words[named.ends : ends]
            claim = _claim(record, view, words, numbered, named)
            yield from _related(record, claim, (led, behind), named, settings, is_date=view.field == "date")


def _claim(record: Record, view: StatementView, words: str, numbered: Numbered, named: _Named) -> Claim:
    return told(view, f"{record.number}: “{one_line(words)}”, which is {numbered.number(named.other)}")


def _related(
    record: Record, claim: Claim, around: tuple[str, str], named: _Named, settings: PhraseSettings, *, is_date: bool
) -> Iterator[Claim]:
    """What the words before and behind the name of another picture say of how far apart the two are."""
    led, behind = around
    rest = _TAKEN.sub("", behind.lstrip())
    is_whole = not rest.strip() or rest.lstrip()[:1] in ",;.:)(–—" or (is_date and not named.is_bare)
    apart = _apart(led) if is_whole else None
    apart = apart or (_apart(_STOP.split(rest)[0]) if not _SMALL.sub("", led).strip() else None)
    if apart is not None:
        limits = after(of_item(record.id), of_item(named.other), -apart[0], apart[0])
        yield replace(claim, sure=weaker(claim.sure, apart[1]), limits=limits)
        return
    if named.is_bare:
        return
    for phrase in _phrases(led if is_whole else "", _STOP.split(behind)[0]):

        def read(day: str, phrase: str = phrase) -> DateReading:
            return phrases.read(phrase, settings, KnownDates(events=MappingProxyType({_OTHER: day}), first_year=0))

        lean = leaning_on(of_item(named.other), read)
        if lean is not None and not lean.is_asked and (lean.least, lean.most) != (0, 0):
            sure = claim.sure if is_date else weaker(claim.sure, Sure.LIKELY)
            least = 1 if lean.least == 0 else lean.least  # of pictures of one day nobody says “after”
            most = -1 if lean.most == 0 else lean.most
            yield replace(claim, sure=sure, limits=after(of_item(record.id), lean.on, least, most))
            return


def _phrases(led: str, behind: str) -> Iterator[str]:
    """The words with a stand-in for the other picture; what stands before the last comma may be of something else."""
    ways = dict.fromkeys(_said_plainly(way) for way in (led, led.rpartition(",")[2]))
    for way in ways:
        if len(way) + len(behind) < phrases.MOST_LETTERS // 4:
            if led and way:
                yield f"{way} {_OTHER}"
            if behind.strip():
                yield f"{way} {_OTHER} {behind.strip()}".strip()


def _said_plainly(led: str) -> str:
    led = _STEM.sub("", _JOINING.sub("", led.strip()))
    for pattern, instead in _OTHERWISE:
        led = pattern.sub(instead, led)
    return _ARTICLE.sub("", led.strip()).strip()


def _apart(led: str) -> tuple[int, Sure] | None:
    """How far apart two pictures are that stand on either side of words like “the same day as”."""
    folded = f" {fold(led)}"
    for most, sure, way in _WAYS_APART:
        at = folded.rfind(way)
        if at >= 0 and _LED.fullmatch(folded[:at].strip()) and _BETWEEN.fullmatch(folded[at + len(way) :]):
            return most, sure
    return None


_WAYS_APART = tuple((most, sure, fold(way)) for most, sure, ways in APART for way in ways.split("|"))


_LED = re.compile(
    r"(?:.*[,;(])?\s*(?:(?:it|this|was|is|were|must|have|been|taken|photographed|made|probably|from|on|at|the|in|i|think|see|oli|a|also|'s|das|ist|war|c'est|est|é|es|è|det|är|er|on|se|это|"
    r"tehtud|aufgenommen|am|im|an|le|el|lo|de|den|w|в)\s*)*"
)
"""What may stand before: that it was taken, and nothing else that happened on that day."""
_BETWEEN = re.compile(
    r"[\s,]*(?:(?:as|with|like|is|that|of|in|from|the|number|no|nr|picture|photo|photograph|one|kui|wie|som|que|como|di|del|co|jako|"
    r"как|и|что|на|с|kuin|als|kā|kaip|das|dem|der|den|le|la|les|el|il|lo|o|a|de|da|do|della|het|van)(?:[.,\s]+|\Z))*[“\"„«‘]?"
)
"""What may stand between: “the same day as”, “the same film as number”."""
