"""Where the words of a text name somebody who may not be named: surely, or perhaps.

Theory of operation
===================

The problem. A name stands in words in many shapes: `Hallam, Ruth`, `R. Hallam`, `Ruthile`, `#ruthhallam`. A family
name alone may be anybody's of that family, `May` may be a month, and the Ruth of this sentence another Ruth. Who lets
all of that pass names the living; who withholds all of it withholds everything.

The idea. Three steps.

1. Each word of the text is looked up once (`name_index`): whose given name, whose family name it
   may be, and how.
2. Words that stand together make a phrase. A given name (or its initial) and a family name of one person make a *full*
   name. So do a given name and a patronymic.
3. What is left, a given or a family name alone, may be anybody's who bears it. Each hit is sure, or has a `Doubt`,
   which is put to the keeper as a question.

What always holds:

- A full name explains its words: they are no other person's given or family name alone.
- A full name of somebody hidden is never passed over. Where one who may be named bears the same, it is doubtful.
- A given name alone is sure where nothing speaks against it. A family name alone is always doubtful.
- Every hit has its place in the text as told, so that the keeper is shown the word in its sentence.

An example. Mia Rourke lives, Tom Rourke is dead. In “Tom Rourke and Mia”, `Tom Rourke` is full and Tom may be named, so
`Rourke` points to nobody else; `Mia` alone is sure. In “the Rourke girl”, `Rourke` is a doubtful hit for Mia.
"""

import re
from bisect import bisect_left
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise, product

from boxlore.core.people.names.han_characters import plainest, read_as
from boxlore.core.people.names.words_table import FAMILY_BEGINNINGS
from boxlore.core.people.names_in_text.dictionary_words import are_words_written_small
from boxlore.core.people.names_in_text.hits import Doubt, Hit
from boxlore.core.people.names_in_text.kin_beside_names import kin_beside
from boxlore.core.people.names_in_text.letters_otherwise import as_read, figures_in, marks_in, turned_in
from boxlore.core.people.names_in_text.name_index import As, Meant, NameIndex, stems_of
from boxlore.core.people.names_in_text.ordinary_words import may_be_initials
from boxlore.core.people.names_in_text.rules import Phrases
from boxlore.core.people.names_in_text.run_together import runs_in
from boxlore.core.people.names_in_text.text_normalising import (
    APOSTROPHES,
    UNBROKEN,
    Change,
    Text,
    Word,
    breaks_in,
    read_changed,
    read_text,
    script_of,
)

__all__ = ("Doubt", "Hit", "hits_in")


_SONS = ("mc", "mac")
"""Two ways to write one beginning."""


def hits_in(index: NameIndex, words: str) -> list[Hit]:
    """Every place where somebody hidden is named or may be, in the order of the text; one for each doubt and place."""
    found = list(_found_in(index, read_text(words)))
    if breaks := breaks_in(words):
        found = [*_halves_asked(found, words, breaks), *_across(index, words, breaks)]
    for changes in (as_read(words), turned_in(words)):
        found += _across(index, words, changes) if changes else ()
    for doubt, doubtful in ((Doubt.RUN_TOGETHER, [marks_in(words)]), (Doubt.MISSPELT, figures_in(words))):
        for changes in filter(None, doubtful):
            found += (replace(hit, doubt=hit.doubt or doubt) for hit in _across(index, words, changes))
    people: dict[tuple[int, int, Doubt], set[str]] = {}
    for person, places in _places_of_each(found).items():
        for start, end, doubt in _each_once(places, words):
            people.setdefault((start, end, doubt), set()).add(person)
    return [Hit(start, end, frozenset(ids), doubt) for (start, end, doubt), ids in sorted(people.items())]


_Place = tuple[int, int, Doubt]
_CALLED_OUT = re.compile(r"['’](?=\s*[,!?])")
_TOUCH = re.compile(r"[ ,\-]{0,2}")


def _places_of_each(hits: Iterable[Hit]) -> dict[str, set[_Place]]:
    places: dict[str, set[_Place]] = {}
    for hit in hits:
        for person in hit.people:
            places.setdefault(person, set()).add((hit.start, hit.end, hit.doubt))
    return places


def _each_once(places: set[_Place], words: str) -> Iterator[_Place]:
    """One person's places, those that overlap or touch as one: `Aino` and `Maijalle` in `Aino-Maijalle`. It is sure
    where a part of it is; else its doubt is that of the first."""
    first, *rest = sorted(places)
    start, end, doubt = first
    for place in rest:
        if place[0] < end or _TOUCH.fullmatch(words, end, place[0]):
            end = max(end, place[1])
            doubt = doubt and place[2] and doubt
        else:
            yield start, end, doubt
            start, end, doubt = place
    yield start, end, doubt


def _found_in(index: NameIndex, text: Text) -> Iterator[Hit]:
    meant = [index.meant_by(word) for word in text.words]
    yield from _unbroken(index, text)
    parted = list(_parted(index, text))
    yield from _called_out(index, text)
    runs = list(runs_in(index.runs, text.words))
    if runs or any(meant) or any(len(word.folded) == 1 or _may_begin(index, word) for word in text.words):
        phrases = Phrases(index, text, meant, runs)
        hits = list(phrases.hits())
        yield from hits
        explained = [range(text.words[full.first].start, text.words[full.last].end) for full in phrases.full]
        parted = [hit for hit in parted if not any(hit.start in place and hit.end - 1 in place for place in explained)]
        if index.kin:
            named = set[str]().union(*(hit.people for hit in hits))
            for hit in kin_beside(index.kin, text.words, _names_alone(index, text, meant, phrases)):
                if named.isdisjoint(hit.people):
                    yield hit
    yield from parted


def _names_alone(
    index: NameIndex, text: Text, meant: Sequence[Meant], phrases: Phrases
) -> Iterator[tuple[int, int, str]]:
    """(number of the first word, of the last, whose) of each name of somebody who may be named."""
    free = (name for name in phrases.full if name.how < As.MISSPELT and name.person not in index.hidden)
    yield from ((name.first, name.last, name.person) for name in free)
    for at, means in enumerate(meant):
        callers = [person for person, how in means.calls.items() if how <= As.INFLECTED]
        is_owner = APOSTROPHES.search(text.words[at].spelled)
        is_name = text.words[at].spelled[0].isupper() and (is_owner or not means.is_everyday)
        is_within_full = any(name.how < As.MISSPELT for name in phrases.full_names_around(at))
        if len(callers) == 1 and is_name and not is_within_full:
            yield at, at, callers[0]


def _parted(index: NameIndex, text: Text) -> Iterator[Hit]:
    """Names of six letters and more that a blank or a hyphen parts: `Pen hallow`; given names also `Sól Run`, and said
    by syllables, `Ha-zel`; and families that begin with a word of their own, `Mc Garrigan`."""
    is_one_case = text.is_one_case
    for at, (first, second) in enumerate(pairwise(text.words)):
        if not (second.before.isspace() or second.before == "-"):
            continue
        is_beginning = first.folded in FAMILY_BEGINNINGS
        people: set[str] = set()
        calls_only = not (is_beginning or second.spelled[0].islower() or is_one_case)
        for before, rest in product(_SONS if first.folded in _SONS else (first.folded,), stems_of(second)):
            people |= index.borne_by(before, rest, calls_only=calls_only) & index.hidden
        if second.before == "-" and second.is_small and not first.is_small:
            people |= index.called_so(f"{first.folded}{second.folded}") & index.hidden
        if people and (is_one_case or not are_words_written_small(text.words, at, at + 1)):
            yield Hit(first.start, second.end, frozenset(people), Doubt.RUN_TOGETHER)


def _called_out(index: NameIndex, text: Text) -> Iterator[Hit]:
    """`«Fiore', vieni!»`, `Lu’!`: what is left of a given name where somebody is called, and an apostrophe."""
    for word in text.words:
        is_long = len(word.folded) > 1 and word.spelled[0].isupper()
        is_called = is_long and _CALLED_OUT.match(text.clean, _end_in(text, word))
        if is_called and (people := index.called_in_short(word.folded)):
            yield Hit(word.start, word.end, people, Doubt.SHORT)


def _end_in(text: Text, word: Word) -> int:
    """Where a word ends in the text without what nobody sees."""
    return bisect_left(text.places, word.end - 1) + 1


def _across(index: NameIndex, words: str, changes: Sequence[Change]) -> Iterator[Hit]:
    """Names that stand only where a text is read with changes: parted at the end of a line, `Gra-⏎ham`."""
    for hit in _found_in(index, read_changed(words, changes)):
        if any(start < hit.end and hit.start < end for start, end, _ in changes):
            yield hit


def _halves_asked(hits: Iterable[Hit], words: str, breaks: Sequence[Change]) -> Iterator[Hit]:
    """The hits, those in doubt that may be half of a longer word: `Graham-⏎stown`."""
    starts = {start for start, end, _ in breaks if end - start > 1 and words[end].islower()}
    for hit in hits:
        yield replace(hit, doubt=hit.doubt or Doubt.RUN_TOGETHER) if hit.end in starts else hit


def _may_begin(index: NameIndex, word: Word) -> bool:
    return word.folded in index.wholes or (may_be_initials(word.folded) and word.spelled.isupper())


def _unbroken(index: NameIndex, text: Text) -> Iterator[Hit]:
    """Names in words without spaces. A part of a whole name that stands there is not asked about again."""
    sought = index.unbroken or index.syllables
    if text.clean.isascii() or not sought or not any(script_of(letter) == UNBROKEN for letter in text.clean):
        return
    letters = [at for at, letter in enumerate(text.clean) if not letter.isspace() and letter not in "・·"]
    packed = plainest("".join(text.clean[at] for at in letters))
    explained: set[int] = set()
    for name, (people, is_whole) in sorted(index.unbroken.items(), key=lambda row: -len(row[0])):
        for match in re.finditer(re.escape(name), packed):
            places = range(match.start(), match.end())
            if explained.isdisjoint(places) and (hidden := people & index.hidden):
                doubt = Doubt.NONE if is_whole and len(name) > 2 else Doubt.PART
                start, end = text.places[letters[places[0]]], text.places[letters[places[-1]]] + 1
                yield Hit(start, end, frozenset(hidden), Doubt.SHARED if people - hidden else doubt)
            if is_whole:
                explained.update(places)
    for syllables, ids in index.syllables.items():
        for at in read_as(packed, syllables):
            if explained.isdisjoint(range(at, at + len(syllables))):
                start, end = text.places[letters[at]], text.places[letters[at + len(syllables) - 1]] + 1
                yield Hit(start, end, frozenset(ids), Doubt.READ_SO)
