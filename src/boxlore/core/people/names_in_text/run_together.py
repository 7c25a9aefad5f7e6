"""Names run together, as in file names, addresses and tags: `#ArohaTeWhakaruru`, `jrwpemberthy`, `chen_xiaomei`.

A run is letters that no blank parts: words with nothing, digits or `_ - . +` between. It names somebody where a piece
of it is made of parts of that person's names alone, each once, in any order. Such a piece counts

    as a full name      with a family name and a name that somebody is called by; one of fewer than seven letters only
                        where it begins and ends with a word; a question where the run is a name or a word besides
    as a full name      with a family name and two initials, or one before a long name or in what is plainly an address
                        or a tag; from the beginning to the end of words
    as a question       with one initial elsewhere, and a name of five letters and more at the edge of a tag, or
                        among English words alone: `lettertomaeve`

Words of other scripts are held against each other by their Latin keys (`inflections.key_of`), the whole run at once.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache, partial
from typing import Protocol, TypeVar

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import PARTICLES
from boxlore.core.people.names_in_text.inflections import key_of
from boxlore.core.people.names_in_text.ordinary_words import english_words, is_english
from boxlore.core.people.names_in_text.text_normalising import CYRILLIC, GREEK, LATIN, UNBROKEN, Word, plain, script_of

SHORTEST_INSIDE = 7
"""Letters of a full name that is found also in the midst of a word."""
SHORTEST_RUN = 4
_GLUE = re.compile(r"[_\-–‐‑.+·%'’]{0,2}")
"""What stands between the words of a run (`run_together`)."""
SHORTEST_PART, SHORTEST_FAMILY, SURE_FAMILY, SHORTEST_IN_TAG = 2, 3, 6, 5
LONGEST_WORD = 7
LONGEST = 200
"""Letters of a run beyond which it is no name: a digest, a picture as text."""
MOST_KNOWN = 1 << 16
CALL, SHORT, FAMILY, PARTICLE, INITIAL, FAMILY_INITIAL = (
    "call", "another form", "family", "particle", "initial", "family initial",
)  # fmt: skip
_PARTICLES = tuple((word, PARTICLE) for word in sorted(PARTICLES) if len(word) >= SHORTEST_PART and word.isalpha())


class Named(Protocol):
    """The words of one person's names, as `name_index.Bearer` has them."""

    @property
    def calls(self) -> frozenset[str]: ...
    @property
    def pets(self) -> frozenset[str]: ...
    @property
    def families(self) -> frozenset[str]: ...
    @property
    def fulls(self) -> frozenset[str]: ...
    @property
    def read_as(self) -> frozenset[str]: ...
    @property
    def letters(self) -> tuple[str, ...]: ...
    @property
    def family_letters(self) -> frozenset[str]: ...


@dataclass(frozen=True, slots=True)
class Letters:
    """The letters of a run, folded, without what stands between its words. `edges` are where words begin and end.

    `is_tag` says that it stands as an address, a tag or the name of a file does, so that one letter may be an initial.
    """

    text: str
    edges: frozenset[int]
    is_tag: bool
    is_small: bool = False
    """Whether the run begins with a small letter."""

    @property
    def is_a_word(self) -> bool:
        """Whether the run is one word that is a given name of its own, or English."""
        return len(self.edges) == 2 and (self.text in CALLED or self.text in english_words())


@dataclass(frozen=True, slots=True)
class Piece:
    """Letters from `start` to `end` of a run that name a person, surely or perhaps."""

    start: int
    end: int
    person: str
    is_sure: bool


T = TypeVar("T")
Part = tuple[str, str]
"""Letters, and what they are: one of CALL … FAMILY_INITIAL; SHORT is a form of a call that nobody told."""


@dataclass(frozen=True, slots=True)
class _Parts:
    """What may follow one another in a run that is the name of one person."""

    words: tuple[Part, ...]
    letters: tuple[str, ...]
    family_letters: frozenset[str]


@dataclass(frozen=True, slots=True)
class _Span:
    """A piece of a run with the parts that it is made of."""

    start: int
    end: int
    parts: tuple[Part, ...]

    def count(self, kind: str) -> int:
        return sum(kind == of for _, of in self.parts)

    @property
    def is_full(self) -> bool:
        return bool(self.count(CALL) + self.count(SHORT) and self.count(FAMILY))


class NameRuns:
    """Finds the pieces of runs that are names of `bearers` (by id)."""

    def __init__(self, bearers: Mapping[str, Named]) -> None:
        self._own: dict[str, list[tuple[Part, str]]] = {}
        self._keyed: dict[str, list[tuple[Part, tuple[str, str]]]] = {}
        self._parts: dict[tuple[str, str], _Parts] = {}
        """By id and script of the keys, which is empty for the words themselves."""
        for ident, named in bearers.items():
            self._add(ident, named)
        self.pieces: Callable[[Letters], tuple[Piece, ...]] = lru_cache(MOST_KNOWN)(self._pieces)

    def _add(self, ident: str, named: Named) -> None:
        own = self._parts[ident, ""] = _parts_of(named, str)
        for word, kind in own.words:
            self._own.setdefault(word[:SHORTEST_PART], []).append(((word, kind), ident))
        for script in {script_of(word[0]) for word in named.families} & {LATIN, CYRILLIC, GREEK}:
            keyed = self._parts[ident, script] = _parts_of(named, partial(_keyed, script=script))
            for word, kind in keyed.words:
                if kind == FAMILY and len(word) >= SHORTEST_FAMILY:
                    self._keyed.setdefault(word[:SHORTEST_PART], []).append(((word, kind), (ident, script)))

    def _pieces(self, letters: Letters) -> tuple[Piece, ...]:
        """Every piece that names or may name somebody: of each person the longest, sure before doubtful."""
        best: dict[str, Piece] = {}
        for piece in (*self._in_own_script(letters), *self._in_another(letters)):
            before = best.get(piece.person)
            if before is None or _worth(before) < _worth(piece):
                best[piece.person] = piece
        return tuple(best.values())

    def _in_own_script(self, letters: Letters) -> Iterator[Piece]:
        for at, part, ident in _anchors(letters.text, self._own):
            for span in _spans(letters.text, at, part, self._parts[ident, ""]):
                is_sure = _is_sure(span, letters)
                if is_sure is not None:
                    yield Piece(span.start, span.end, ident, is_sure)

    def _in_another(self, letters: Letters) -> Iterator[Piece]:
        """A run in another script than that of the name: the whole of it, by its key."""
        script, text = script_of(letters.text[0]), letters.text
        if script not in (LATIN, CYRILLIC, GREEK):
            return
        key = key_of(text, script)
        for at, part, (ident, of_name) in _anchors(key, self._keyed):
            spans = _spans(key, at, part, self._parts[ident, of_name]) if of_name != script else ()
            whole = [span for span in spans if (span.start, span.end) == (0, len(key))]
            if any(span.is_full or (letters.is_tag and span.count(INITIAL)) for span in whole):
                yield Piece(0, len(text), ident, is_sure=True)


def _keyed(word: str, script: str) -> str:
    """The key of a word of a name in that script; nothing of another."""
    return key_of(word, script) if script_of(word[0]) == script else ""


def _worth(piece: Piece) -> tuple[bool, int]:
    return piece.is_sure, piece.end - piece.start


def _parts_of(named: Named, form: Callable[[str], str]) -> _Parts:
    words = {(form(word), CALL) for word in named.calls}
    words |= {(form(word), SHORT) for word in named.pets | named.fulls}
    words |= {(form(word), FAMILY) for word in named.families | named.read_as}
    return _Parts(
        tuple(sorted(part for part in words if len(part[0]) >= SHORTEST_PART)),
        tuple(map(form, named.letters)),
        frozenset(map(form, named.family_letters)),
    )


def _anchors(text: str, starts: Mapping[str, Iterable[tuple[Part, T]]]) -> Iterator[tuple[int, Part, T]]:
    """Where a part of somebody's name stands: from which a piece is sought on either side."""
    for at in range(len(text) - SHORTEST_PART + 1):
        for part, ident in starts.get(text[at : at + SHORTEST_PART], ()):
            if text.startswith(part[0], at):
                yield at, part, ident


def _spans(text: str, at: int, part: Part, parts: _Parts) -> Iterator[_Span]:
    """Every piece that is made of parts of one person's names around this one."""
    for start, before in _grown(text, at, (part,), parts, forward=False):
        for end, after in _grown(text, at + len(part[0]), before, parts, forward=True):
            if len(after) == len(before) or after[-1][1] != PARTICLE:  # no name ends so: `Schäfer-h-und`
                yield _Span(start, end, after)


def _grown(
    text: str, edge: int, used: tuple[Part, ...], parts: _Parts, *, forward: bool
) -> Iterator[tuple[int, tuple[Part, ...]]]:
    """How far parts that were not used yet reach from an edge to one side: each way of it."""
    yield edge, used
    letter = (text[edge : edge + 1] if forward else text[max(0, edge - 1) : edge]) or " "
    nexts: list[Part] = [
        part
        for part in (*parts.words, *_PARTICLES)
        if (text.startswith(part[0], edge) if forward else text.endswith(part[0], 0, edge))
        and not any(part[0] == word for word, _ in used)
    ]
    if used.count((letter, INITIAL)) < parts.letters.count(letter):
        nexts.append((letter, INITIAL))
    if letter in parts.family_letters and (letter, FAMILY_INITIAL) not in used:
        nexts.append((letter, FAMILY_INITIAL))
    for part in nexts:
        further = edge + len(part[0]) if forward else edge - len(part[0])
        yield from _grown(text, further, (*used, part), parts, forward=forward)


def _is_sure(span: _Span, letters: Letters) -> bool | None:
    """Whether a piece surely names its person; None where it does not at all."""
    size = span.end - span.start
    is_apart = span.start in letters.edges and span.end in letters.edges
    initials = span.count(INITIAL) + span.count(FAMILY_INITIAL)
    if span.is_full and letters.is_a_word and (span.start, span.end) == (0, len(letters.text)):
        return None if span.count(SHORT) else False  # `Rosemary`, `Annabell`
    if span.is_full and (is_apart or (size >= SHORTEST_INSIDE and not initials)):
        return True
    family = max((len(word) for word, kind in span.parts if kind == FAMILY), default=0)
    if family and span.count(INITIAL):
        return _initials_are_sure(span, family, is_tag=letters.is_tag) if is_apart else None
    calls = span.count(CALL)
    if not initials and _is_among_words(span, letters):
        return False
    if calls > 1 and not initials and is_apart and size >= SHORTEST_INSIDE:
        return True
    if not letters.is_tag or not calls or (is_apart and not initials):
        return None  # a name that stands as a word is found as one
    if span.count(FAMILY_INITIAL) == initials == 1:
        return False if is_apart else None
    at_an_edge = span.start in letters.edges or span.end in letters.edges
    return False if at_an_edge and not initials and size >= SHORTEST_IN_TAG else None


def _is_among_words(span: _Span, letters: Letters) -> bool:
    """Whether all of a run but a long name in it is English words, and an `s` behind the name.

    What begins with the name and is written large may be a place, `Georgetown`.
    """
    before, after = letters.text[: span.start], letters.text[span.end :]
    is_long = all(
        kind in (CALL, FAMILY) and len(name) >= SHORTEST_IN_TAG and name not in EVERYDAY | english_words()
        for name, kind in span.parts
    )
    if not is_long or not (before or (after and letters.is_small)):
        return False
    return _is_words(before) and (_is_words(after) or _is_words(after.removeprefix("s")))


def _is_words(letters: str) -> bool:
    """Whether letters can be read as English words, one behind the other, or are none."""
    ends = {0}
    for end in range(1, len(letters) + 1):
        if any(start in ends and is_english(letters[start:end]) for start in range(max(0, end - LONGEST_WORD), end)):
            ends.add(end)
    return len(letters) in ends


def _initials_are_sure(span: _Span, family: int, *, is_tag: bool) -> bool | None:
    """Of a family name with initials for given names, which one letter may make another word (`smart`, `brown`)."""
    if family < SHORTEST_FAMILY:
        return None
    if span.count(INITIAL) > 1 or is_tag or family >= SURE_FAMILY:
        return True
    return None if family == SHORTEST_FAMILY or any(word in EVERYDAY for word, _ in span.parts) else False


@dataclass(frozen=True, slots=True)
class Run:
    """The numbers of the first and the last word of a name that is run together, whose, and whether that is sure."""

    first: int
    last: int
    person: str
    is_sure: bool


def runs_in(runs: NameRuns, words: Sequence[Word]) -> Iterator[Run]:
    """Names that are run together, in each run of words without a blank between."""
    start = 0
    for at in range(1, len(words) + 1):
        if at == len(words) or not _GLUE.fullmatch(words[at].before):
            yield from _runs_of(runs, words, start, at)
            start = at


def _runs_of(runs: NameRuns, words: Sequence[Word], start: int, stop: int) -> Iterator[Run]:
    """The names in one run, the words from `start` to before `stop`."""
    if stop - start == 1 and len(words[start].folded) < SHORTEST_RUN:
        return
    places: list[int] = []
    edges: set[int] = set()
    parts: list[str] = []
    for at in range(start, stop):
        edges.add(len(places))
        if not words[at].folded[0].isdigit() and words[at].script != UNBROKEN:
            parts.append(plain(words[at].folded))
            places += [at] * len(parts[-1])
            edges.add(len(places))
    if not SHORTEST_RUN <= len(places) <= LONGEST:
        return
    is_tag = stop - start > 1 or words[start].before[-1:] in ("#", "@", "/", "=")
    is_tag = is_tag or (stop < len(words) and words[stop].before[:1] == "@")
    for piece in runs.pieces(Letters("".join(parts), frozenset(edges), is_tag, words[start].spelled[0].islower())):
        yield Run(places[piece.start], places[piece.end - 1], piece.person, piece.is_sure)
