"""Clues of a studio: when it worked, told in words, or learnt from its dated pictures.

Told are the years that stand behind its name in a sentence (“Saar Bros were in Pikk Street from 1899 to 1911”) or in
the name itself (“Saar Bros, 1899-1911”). Where the sentence names a street, only pictures with that street on them are
meant. Without them, the pictures of one photographer lie within a working life: fifty years (`WORKING`) from the first
picture of a studio to its last, father and son together, common practice, no source. Only a picture far from all others
is bounded by it; it is a guess.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from boxlore.core.dates import phrases
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.phrases import PhraseSettings
from boxlore.core.evidence.claims import Claim, dated, of_item, weaker, years_after
from boxlore.core.evidence.sentences import sentences
from boxlore.core.evidence.told_dates import has_a_year, told
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.statements import Sure, fold

WORKING = 50
"""Years."""


@dataclass(frozen=True, slots=True)
class YearsTold:
    """The years of a studio: its name folded, the words with a capital that stand before them (a street), and who says
    so."""

    name: str
    where: frozenset[str]
    years: Edtf
    claim: Claim


def years_told(records: Iterable[Record], settings: PhraseSettings) -> Iterator[YearsTold]:
    """What sentences say of the years of the studios that pictures are of."""
    everything = list(records)
    for record in everything:
        for shown in record.shown("photographer"):
            yield from _in_a_name(shown, settings)
    names = {_name(shown): None for record in everything for shown in record.shown("photographer")}
    names.pop("", None)
    if not names:
        return
    anybody = re.compile("|".join(rf"(?<!\w){re.escape(name)}(?!\w)" for name in names))
    for record in everything:
        for sentence in sentences(record):
            if not has_a_year(sentence.words) or not (match := anybody.search(fold(sentence.words))):
                continue
            behind = sentence.words[match.end() :]
            if read := _years_in(behind, settings):
                before, years = read
                claim = told(sentence.view, f"“{one_line(sentence.words)}”")
                yield YearsTold(match[0], _where(before), years, claim)


def _in_a_name(shown: PersonShown, settings: PhraseSettings) -> Iterator[YearsTold]:
    """“Saar Bros, Pikk 12, there 1899 to 1911” holds for each of its pictures with that street on them."""
    words = one_line(shown.told.words)
    if has_a_year(words) and (read := _years_in(words.partition(",")[2], settings)):
        before, years = read
        yield YearsTold(_name(shown), _where(before), years, told(shown.told, f"“{words}”"))


def _where(before: str) -> frozenset[str]:
    return frozenset(fold(word) for word in re.findall(r"\b(?:[A-ZÄÖÜÕŠŽ]\w+|\d{1,4}\b)", before))


def _years_in(words: str, settings: PhraseSettings) -> tuple[str, Edtf] | None:
    """The years from which and to which, that end words, and what stands before them: that a studio was there, and
    nothing else. One year alone is that of something that happened."""
    for start in (match.start() for match in re.finditer(r"(?<!\w)\w", words)):
        read = phrases.read(words[start:].strip(" .,;()"), settings)
        if read.edtf is not None and not read.ask:
            is_span = bool(read.earliest and read.latest and read.latest.year > read.earliest.year)
            says = {word for word in re.findall(r"\w+", words[:start]) if word[0].islower()}
            return (words[:start], read.edtf) if is_span and says <= _THERE else None
    return None


_THERE = frozenset(
    "was were is are had has been only always in at on the a its their his studio studios shop rooms premises open "
    "working worked active there and then business photographers photographer war waren nur der die das im am hatte "
    "hatten ihr "
    "atelier tätig geöffnet oli olid ainult tegutses tegutsesid töötas töötasid ateljee stuudio avatud".split()
)
"""Words that say no more than that a studio was somewhere."""


def _name(shown: PersonShown) -> str:
    return fold(shown.told.words).partition(",")[0].strip()


def clues(record: Record, told_years: Sequence[YearsTold], settings: PhraseSettings) -> Iterator[Claim]:
    for shown in record.shown("photographer"):
        words = fold(shown.told.words)
        for years in told_years:
            if years.name == _name(shown) and all(word in words for word in years.where):
                claim = replace(years.claim, words=f"{record.number} is of {one_line(shown.name)}: {years.claim.words}",
                                sure=weaker(years.claim.sure, Sure.LIKELY))  # fmt: skip
                yield dated(claim, of_item(record.id), years.years)
        studio = f"studio {shown.person or _name(shown)}"
        yield replace(
            told(
                shown.told, f"{record.number} is of {one_line(shown.name)}, and a studio worked {WORKING} years at most"
            ),
            sure=weaker(shown.sure, Sure.GUESS),
            limits=years_after(of_item(record.id), studio, 0, WORKING),
        )
