"""The words of who stands where as elements: a row, a side, a number, “and”, a note in brackets, or a plain word.

`second row` is one element, and so is `third from the left`.

One table holds the phrases of every language (`position_words_table`). At each word the longest phrase is taken. A
phrase whose words begin with a capital in the middle of a list is a name (`Con`, `May`), not a small word.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from boxlore.core.people import position_words_table as table
from boxlore.core.statements import fold

_TOKEN = re.compile(r"\d+(?:st|nd|rd|th|er|re|e|º|ª)?(?![^\W\d_])|[^\W\d_](?:[\w'’.-]*\w)?\.?|[^\w\s]|\n|\w+")
_ABBREVIATED = re.compile(r"(?:[^\W\d_]{1,2}\.){2,}(?:[^\W\d_]{1,2})?|[^\W\d_]\.-[^\W\d_]\.")
_TITLED = re.compile(r"(?:mrs?|ms|dr|st|sr|jr|rev|prof|capt|lt|sgt|hr|fr|no|nr|mme|mlle|sra|dna)\.", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Element:
    """One element, from `start` to `end` of the text.

    `kind` is a class of the table, `number`, `ordinal`, a mark, `note` (in brackets) or `word`.

    `value` is the number of a number or an ordinal, `phrase` the words of the table.
    """

    kind: str
    text: str
    start: int
    end: int
    value: int = 0
    phrase: str = ""
    inside: tuple["Element", ...] = ()
    """Of a note, what stands in it."""

    @property
    def is_large(self) -> bool:
        return self.text[:1].isupper()

    @property
    def plain(self) -> str:
        return _plain(self.text)


Word = tuple[str, int, int]
"""A word or a mark, and where it begins and ends."""


def elements_of(text: str) -> list[Element]:
    """The elements of a text, brackets as one `note` each; an unclosed bracket is a word."""
    return counted_elements(_bracketed(list(_elements(_words(text))), text), text)


def _words(text: str) -> list[Word]:
    words: list[Word] = []
    for match in _TOKEN.finditer(text):
        word, start, end = match[0], match.start(), match.end()
        if _ABBREVIATED.fullmatch(word) and _is_phrase(word):
            words += [(piece[0], start + piece.start(), start + piece.end()) for piece in re.finditer(r"[^.-]+", word)]
        elif word.endswith(".") and len(word) > 2 and not _TITLED.fullmatch(word) and not _ABBREVIATED.fullmatch(word):
            words += [(word[:-1], start, end - 1), (".", end - 1, end)]
        else:
            words.append((word, start, end))
    return words


def _is_phrase(word: str) -> bool:
    plain = " ".join(piece for piece in re.split(r"[.-]+", fold(word)) if piece)
    return plain in _WHOLE


def _plain(word: str) -> str:
    return fold(word).replace("’", "'").rstrip(".")


_MARKS_OF = {
    "comma": ",/",
    "end": ";.\n•|",
    "colon": ":",
    "dash": "–—-=*",
    "open": "([",
    "close": ")]",
    "and": "&+",
    "hash": "#",
}
_MARKS = {mark: kind for kind, marks in _MARKS_OF.items() for mark in marks}


def _elements(words: Sequence[Word]) -> Iterator[Element]:
    plain = [_plain(word) or word for word, _, _ in words]
    at = 0
    while at < len(words):
        word, start, end = words[at]
        kind, length, phrase = _longest(plain, words, at)
        if kind:
            end = words[at + length - 1][2]
            kind, _, value = kind.partition(" ")
            told = " ".join(piece for piece, _, _ in words[at : at + length])
            yield Element(kind, told, start, end, int(value or 0), phrase)
        elif digits := re.match(r"\d+", word):
            ordinal = re.fullmatch(r"\d+(?:st|nd|rd|th|er|re|e|º|ª)", word) is not None
            yield Element("ordinal" if ordinal else "number", word, start, end, int(digits[0][:6]))
        else:
            yield Element(_MARKS.get(word, "word"), word, start, end)
        at += length


def _phrases() -> dict[str, list[tuple[tuple[str, ...], str]]]:
    """Every phrase by the first two letters of its first word, the longest first."""
    rows = [(phrase, kind) for kind, phrase in (*table.WORDS_BETWEEN, *table.PLACE_PHRASES)]
    rows += [(word, f"ordinal {number}") for number, word in table.ORDINALS]
    by_start: dict[str, list[tuple[tuple[str, ...], str]]] = {}
    for phrase, kind in rows:
        words = tuple(fold(phrase).split())
        by_start.setdefault(words[0][:2].rstrip("*"), []).append((words, kind))
    for found in by_start.values():
        found.sort(key=lambda row: -len(row[0]))
    return by_start


_BY_START = _phrases()
_WHOLE = frozenset(" ".join(words) for rows in _BY_START.values() for words, _ in rows)
ROW_NAMES = {1: "front", 2: "second", 3: "third", 4: "fourth", 5: "fifth"}
"""Rows that are counted, from the front; any further one is the back row."""

ROW_KINDS = frozenset((*table.ROW_CLASSES, *ROW_NAMES.values()))
PLACES = frozenset((*ROW_KINDS, *table.SIDES, *table.DIRECTIONS))
"""Kinds of elements that tell a place in the picture."""

_SMALL_KINDS = ("and", "with", "my", "verb")


def _longest(plain: Sequence[str], words: Sequence[Word], at: int) -> tuple[str, int, str]:
    """The kind and the length of the longest phrase that begins here, and the phrase; '' and 1 for none."""
    first = plain[at]
    for start in (first[:2], first[:1]):
        for phrase, kind in _BY_START.get(start, ()):
            end = at + len(phrase)
            near = zip(plain[at:end], phrase, strict=False)
            if end > len(plain) or not all(_same(word, wanted) for word, wanted in near):
                continue
            if kind in _SMALL_KINDS and words[at][0][:1].isupper() and at:
                continue
            return kind, len(phrase), " ".join(phrase)
    return "", 1, ""


def _same(word: str, wanted: str) -> bool:
    return word.startswith(wanted[:-1]) if wanted.endswith("*") else word == wanted


def _bracketed(elements: list[Element], text: str) -> list[Element]:
    """With each bracket, and brackets inside it, as one note."""
    gathered: list[Element] = []
    at = 0
    while at < len(elements):
        element = elements[at]
        end = _closing(elements, at) if element.kind == "open" else 0
        if element.kind == "close" and gathered and gathered[-1].kind in ("number", "ordinal"):
            gathered[-1] = replace(gathered[-1], kind="number")
            at += 1
            continue
        if end:
            inside = tuple(elements[at + 1 : end])
            told = text[element.end : elements[end].start].strip()
            gathered.append(replace(element, kind="note", text=told, end=elements[end].end, inside=inside))
            at = end
        else:
            gathered.append(replace(element, kind="word") if element.kind in ("open", "close") else element)
        at += 1
    return gathered


def _closing(elements: Sequence[Element], start: int) -> int:
    """The index of the bracket that closes the one at `start`; 0 if none does."""
    depth = 0
    for at in range(start, len(elements)):
        depth += {"open": 1, "close": -1}.get(elements[at].kind, 0)
        if not depth:
            return at
    return 0


def counted_elements(elements: Sequence[Element], text: str) -> list[Element]:
    """`second row` as one row, `third from the left` as one position."""
    joined: list[Element] = []
    at = 0
    elements = _numbers_alone(elements)
    while at < len(elements):
        kinds = [element.kind for element in elements[at : at + 2]]
        place, length = _counted(elements[at : at + 2], kinds)
        if length:
            last = elements[at + length - 1]
            joined.append(
                replace(place, start=elements[at].start, end=last.end, text=text[elements[at].start : last.end])
            )
        else:
            joined.append(elements[at])
        at += max(length, 1)
    return joined


def _numbers_alone(elements: Sequence[Element]) -> list[Element]:
    """Without the point behind a number that counts, and without `No.` before one."""
    kept: list[Element] = []
    listed = bool(elements) and elements[0].kind == "number"
    for at, element in enumerate(elements):
        following = elements[at + 1].kind if at + 1 < len(elements) else ""
        before = kept[-1] if kept else None
        touches = before is not None and before.kind == "number" and before.end == element.start
        if element.text == "." and touches and (listed or following in ("row", *PLACES)):
            continue
        if (element.plain in table.NUMBER_WORDS or element.kind == "hash") and following == "number":
            continue
        kept.append(element)
    return kept


def _counted(elements: Sequence[Element], kinds: Sequence[str]) -> tuple[Element, int]:
    """A row or a position that is counted, and how many elements it takes (0 for none)."""
    first = elements[0]
    counts = ("ordinal", "number")
    if kinds[:2] in (["ordinal", "row"], ["number", "row"], ["row", "number"], ["row", "ordinal"]):
        number = next(element.value for element in elements[:2] if element.kind in counts)
        return replace(first, kind=ROW_NAMES.get(number, "back")), 2
    for count, side in ((0, 1), (1, 0)):
        if len(kinds) > 1 and (kinds[count] == "ordinal" or (kinds[count] == "number" and side)):
            phrase = elements[side].phrase
            if phrase in _FROM["from_left"] or phrase in _FROM["from_right"]:
                kind = "position" if phrase in _FROM["from_left"] else "from the right"
                return replace(first, kind=kind, value=elements[count].value), 2
    return first, 0


_FROM = {
    kind: frozenset(fold(phrase) for row, phrase in table.PLACE_PHRASES if row == kind)
    for kind in ("from_left", "from_right")
}
