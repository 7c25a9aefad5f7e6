"""The words of who stands where as elements: a row, a side, a number, “and”, a note in brackets, or a plain word.

`second row` is one element, and so is `third from the left`.

One table holds the phrases of every language (`position_words_table`). At each word the longest phrase is taken. A
phrase whose words begin with a capital in the middle of a list is a name (`Con`, `May`), not a small word.
"""

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise

from boxlore.core.people.names.another_family_name import SHORTENED_EARLIER
from boxlore.core.people.names.lists_table import SHORTENED_GIVEN
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.words_table import (
    FILIATION,
    KIN_WORDS,
    MARKERS,
    RELIGIOUS_TITLES,
    SHORTENED_SON,
    SUFFIXES,
    TITLES,
)
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.labels import ROMANS, labels_of
from boxlore.core.people.who_is_where.written_out import MIDDLE
from boxlore.core.statements import fold

_ENDING = r"(?:st|nd|rd|th|er|re|e|º|ª|\.[ºª]|:[ae]|-[^\W\d_]{1,2})"
_TOKEN = re.compile(
    r"~~[^~\n]+~~|\?+|[—–_]{2,}|-{3,}|(?<=[,:;] )[–—](?= ?[,;.])|(?<=[,:;] )(?:…|\.(?: ?\.)+)(?= ?[,;])|"
    rf"\d+{_ENDING}?(?![^\W\d_])"
    r"|[^\W\d_](?:[\w'’.-]*\w)?\.?|[^\w\s]|\n|\w+"
)
_DASHED = re.compile(r"(?<=\b[^\W\d_])[–—](?=[^\W\d_]\b)")
_POINT_AND_BRACKET = re.compile(r"(?<=\d)\.\)")
_ELIDED = re.compile(r"([lL]['’])(.+)")
_IS = re.compile(r"([^\W\d_]+)['’]s")
_AT_WORK = re.compile(
    r"\s+(?:standing|sitting|wearing|holding|carrying|smiling|looking|leaning|pointing|waving|laughing)\b"
    r"|\s+got\b|\s+\w+ing\s+(?:the|an?|his|her|their|my|our)\b|\s+asleep\b"
    r"|\s+(?:\w{3,}ed|hidden|sat|stood)\s+(?:in|on|at|as|by|up|behind|beside|between|under|with|next|against|among)\b"
)
_DESCRIBED = re.compile(r"\s+(?:the|in the|at the|on the)\b|" + _AT_WORK.pattern)
_IS_WHOSE = re.compile(r"\s+(?:my|your|our|his|her|their)\b", re.IGNORECASE)
"""`Bob's your uncle`: behind whose name nothing can be that is somebody's own already."""

_LARGE_FOLLOWS = re.compile(r" +[^\W\d_a-zа-я][^\W\d_]")
_JAG = re.compile(r" jag\b")
_SLASHED = re.compile(r"([^\W\d_]+)\.?/([^\W\d_]+)\.?")
_ARROW = re.compile(r"(l(?:eft)?|r(?:ight)?)\.?\s*(?:/|→|->|=>|>)\s*(?!\1)(l(?:eft)?|r(?:ight)?)\b\.?", re.IGNORECASE)
"""`L/R`, `left → right`: a direction."""

_CONTRACTED = re.compile(r"I['’]m")
_COMPOUND = re.compile(r"(links|rechts)(boven|onder|voor|achter|oben|unten|vorn|hinten)", re.IGNORECASE)
_ABBREVIATED = re.compile(r"(?:[^\W\d_]{1,2}\.){2,}(?:[^\W\d_]{1,2})?|[^\W\d_]\.-[^\W\d_]\.")
_TITLED = re.compile(
    r"(?:frhr|frfr|pt|mt|ft|rt|gt|grt|edw|cllr|hy|vda|vdo|ozv|ifj|wwe|vve|frl|yr|"
    r"mrs?|messrs|ms|drs?|st|sr|jr|revd?|revs|prof|capt|cpt|lt|lieut|col|maj|sgts?|cpls?|ptes?|gen|adm|cmdr|cdr|brig|flt|sqn|hon|hr|fr|frk|no|nos|nr|mme|"
    r"mlle|sra|srta|dna|sig|dott|dhr|mevr|mw|jhr|jkvr|ds|hra|rva|nti|prl|inz|mgr|mons|msgr|med|ing|dipl|gebr|ks|gnr|tpr|bdr|spr)\."
)


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
        return plain_of(self.text)

    @property
    def is_genitive(self) -> bool:
        """Whether it says whose: `Ruth's`, `the Martins'`."""
        return self.plain.endswith(("'s", "s'"))


Word = tuple[str, int, int]
"""A word or a mark, and where it begins and ends."""


def elements_of(text: str) -> list[Element]:
    """The elements of a text, brackets as one `note` each; an unclosed bracket is a word."""
    text = _POINT_AND_BRACKET.sub(") ", _DASHED.sub("-", text))
    return counted_elements(_bracketed(list(_elements(_words(text))), text), text)


def _words(text: str) -> list[Word]:
    words: list[Word] = []
    labels = labels_of(text)
    at = 0
    while match := _TOKEN.search(text, at):
        word, start, at = match[0], match.start(), match.end()
        end = at
        slashed = _SLASHED.match(text, start)
        if slashed and (_is_slashed_title(slashed) or fold(slashed[0]) in FILIATION):  # `L/Cpl.`, `Ravi s/o Mohan`
            at = slashed.end()
            words.append((slashed[0], start, at))
            continue
        if arrow := _ARROW.match(text, start):
            at = arrow.end()
            words.append((fold(f"{arrow[1][0]}-{arrow[2][0]}"), start, at))
            continue
        if start in labels:
            at, number = labels[start]
            words.append((str(number), start, at))
            continue
        if _ABBREVIATED.fullmatch(word) and _is_phrase(word):
            words += [(piece[0], start + piece.start(), start + piece.end()) for piece in re.finditer(r"[^.-]+", word)]
        elif word == "u." and text[end:].strip():  # `links u. rechts`
            words.append(("und", start, end))
        elif words and (word == "o." or (word == "o" and _is_beside_jag(words, text, end))) and text[end:].strip():
            words.append(("och", start, end))  # `Karin o. jag`
        elif word in ("l.", "r.") and words and fold(words[-1][0]) in _GERMAN_ROWS and text[end:].strip():
            words.append(("links" if word == "l." else "rechts", start, end))  # `hinten l. Opa`
        elif word in _POINTED and _LARGE_FOLLOWS.match(text, end):
            words.append((_POINTED[word], start, end))
        elif _shortens_a_place(word, text[end:]):
            words.append((word, start, end))
        elif word.endswith(".") and len(word) > 2 and not _has_its_point(text, words, match):
            words += [(word[:-1], start, end - 1), (".", end - 1, end)]
        elif (elided := _ELIDED.fullmatch(word)) and _is_elided_from(elided[2]):
            words += [(elided[1], start, start + 2), (elided[2], start + 2, end)]
        elif word == "am" and words and words[-1][0] == "I":
            words.append(("'m", start, end))
        elif word == "I." and not text[end:].strip() and words:  # `Una and I.`
            words += [("I", start, start + 1), (".", start + 1, end)]
        elif word in ("w", "W") and text[end : end + 1] == "/":  # `Maud w/ Stan`
            at = end + 1
            words.append(("with", start, at))
        elif _CONTRACTED.fullmatch(word):
            words += [(word[:1], start, start + 1), (word[1:], start + 1, end)]
        elif (
            (said_of := _IS.fullmatch(word))
            and (_may_be_somebody(said_of[1]) or _is_one_described(words, said_of[1]))
            and (_DESCRIBED.match(text, end) or _IS_WHOSE.match(text, end) or _calls(words, said_of[1], text, end))
        ):  # `Una's the one with …`, `the woman's Kate`
            words.append((said_of[1], start, start + said_of.end(1)))
            if not _AT_WORK.match(text, end):
                words.append(("is", start + said_of.end(1), end))
        elif compound := _COMPOUND.fullmatch(word):
            words += [(compound[1], start, start + compound.end(1)), (compound[2], start + compound.end(1), end)]
        else:
            words.append((word, start, end))
    return words


def _is_one_described(words: Sequence[Word], word: str) -> bool:
    """`the woman` of `the woman's Kate`."""
    return word in ("woman", "man", "girl", "boy", "lady", "lad", "one", "child", "baby") and any(
        told == "the" for told, _, _ in words[-2:]
    )


_NAME_ALONE = re.compile(r" ([^\W\d_]+)(?=\s*(?:$|[,;.\n]| and\b))")


def _calls(words: Sequence[Word], word: str, text: str, end: int) -> bool:
    """Whether a given name alone follows `the woman's`."""
    name = _NAME_ALONE.match(text, end)
    is_called = name is not None and name[1].istitle() and token_of(name[1]).is_given
    return is_called and _is_one_described(words, word)


def _is_beside_jag(words: Sequence[Word], text: str, end: int) -> bool:
    """`Karin o jag`, `Jag o Karin`: Swedish."""
    return _JAG.match(text, end) is not None or words[-1][0] in ("Jag", "jag")


def _may_be_somebody(word: str) -> bool:
    return word[0].isupper() or fold(word) in KIN_WORDS


def _is_slashed_title(slashed: re.Match[str]) -> bool:
    """Whether a stroke stands in one title: behind a letter of it, or between two."""
    before, behind = fold(slashed[1]), fold(slashed[2])
    return fold(slashed[0]) in TITLES or (behind in TITLES and (len(before) == 1 or before in TITLES))


def _is_elided_from(word: str) -> bool:
    """Whether a French article may stand before the word: somebody, kin, or a place (`l'avant-dernière`)."""
    plain = fold(word)
    counted = any(_same(plain, phrase) for _, phrase in table.COUNTED_FROM_THE_END)
    return plain in table.NOUNS or plain in KIN_WORDS or counted


MARKERS_OF_NAMES = frozenset(marker for marker, _ in MARKERS if " " not in marker)


_PART_BEHIND = re.compile(r"\s*$|\s*\n| [^\n.:]{0,40}:")
"""The end of a text or a line, or a head and its colon: `Ewa Maj. Dolny rząd: …`."""


def _has_its_point(text: str, words: Sequence[Word], match: re.Match[str]) -> bool:
    """Whether a point belongs to its word, and ends nothing."""
    is_last = _PART_BEHIND.match(text, match.end()) is not None
    ends_a_name = is_last and words and words[-1][0].istitle() and token_of(words[-1][0]).is_given
    if ends_a_name and _TITLED.fullmatch(fold(match[0])) and fold(match[0][:-1]) not in SUFFIXES:
        return False  # `Jan Maj.` at the end, where `maj.` is a rank
    return _keeps_its_point(match[0]) or _leads_a_name(text, words, match) or _ends_a_name(text, words, match)


def _ends_a_name(text: str, words: Sequence[Word], match: re.Match[str]) -> bool:
    """Whether a shortened suffix ends a name: `Esq.`, `sen.`, behind a name or a comma, and no name goes on."""
    plain, before = fold(match[0]).rstrip("."), words[-1][0] if words else ""
    behind_a_name = before == "," or before[:1].isupper()
    is_short = plain in SUFFIXES and plain not in english_words() and len(plain) < 5
    return behind_a_name and is_short and not _LARGE_FOLLOWS.match(text, match.end())


def _keeps_its_point(word: str) -> bool:
    """Whether a point behind a word shortens it: `Mrs.`, `J.H.`, `geb.` (but not `born.`, which ends a sentence)."""
    marks_name = (fold(word[:-1]) in MARKERS_OF_NAMES and len(word) < 7) or fold(word[:-1]) in SHORTENED_EARLIER
    pieces = [piece for piece in re.split(r"[.-]+", fold(word)) if piece]
    joined = len(pieces) > 1 and all(piece in TITLES for piece in pieces)  # `Lieut.-Col.`
    shortens = marks_name or joined or fold(word[:-1]) in SHORTENED_GIVEN or fold(word).endswith(SHORTENED_SON)
    return shortens or bool(_TITLED.fullmatch(fold(word)) or _ABBREVIATED.fullmatch(word))


def _is_shortened_title(word: str) -> bool:
    plain = fold(word).rstrip(".")
    is_title = plain in TITLES or plain in RELIGIOUS_TITLES
    return is_title and plain not in english_words() and plain not in table.NOUNS


_GOES_ON = re.compile(r" ?[:;,)]| [^\W\dA-ZА-Я_]")


def _shortens_a_place(word: str, behind: str) -> bool:
    """Whether a point shortens a word of a place, and the sentence goes on: `esq. para a dir.: …`."""
    return word.endswith(".") and fold(word[:-1]) in _SHORT_WORDS and _GOES_ON.match(behind) is not None


def _leads_a_name(text: str, words: Sequence[Word], match: re.Match[str]) -> bool:
    """Whether a word with a point opens what is told of one person, and a large one follows: a small word (`kun.
    Juozas`), or a shortened title, also behind another one (`Smt. Kamala`, `Prof. Comm. Ettore Valli`)."""
    word, opens = match[0], not words or words[-1][0] in ",;:&" or fold(words[-1][0]).rstrip(".") in (*TITLES, "and")
    is_short = (word.islower() or _is_shortened_title(word)) and len(word) < 7 and not token_of(word).is_given
    is_first = len(words) == 1 or (len(words) > 1 and words[-2][0] in _ENDS)
    behind_small = bool(words) and (words[-1][0].islower() or (is_first and not token_of(words[-1][0]).is_given))
    opens = opens or (behind_small and _is_shortened_title(word))  # `según Cav. Conti`, `Ne MUDr. Svoboda`
    return opens and is_short and bool(_LARGE_FOLLOWS.match(text, match.end())) and not _is_phrase(word)


def _is_phrase(word: str) -> bool:
    plain = " ".join(piece for piece in re.split(r"[.-]+", fold(word)) if piece)
    return plain in _WHOLE


@lru_cache(maxsize=16384)
def plain_of(word: str) -> str:
    return fold(word.replace("ª", "")).replace("’", "'").rstrip(".")


_MARKS_OF = {
    "comma": ",/",
    "end": ";.!\n•|",
    "colon": ":",
    "dash": "–—-=*¿¡>→",
    "open": "([",
    "close": ")]",
    "and": "&+",
    "hash": "#",
}
_MARKS = {mark: kind for kind, marks in _MARKS_OF.items() for mark in marks}


def _elements(words: Sequence[Word]) -> Iterator[Element]:
    plain = [plain_of(word) or word for word, _, _ in words]
    is_shouted = _is_shouted(words)
    at = 0
    while at < len(words):
        word, start, end = words[at]
        kind, length, phrase = _longest(plain, words, at, is_shouted=is_shouted)
        if word in _ROW_LETTERS and at + 1 < len(words) and words[at + 1][0] in (":", "("):
            yield Element(_ROW_LETTERS[word], word, start, end)  # `BR (l-r): …`
        elif length == 1 and (exactly := small_words.BEFORE_EXACTLY.get(word)):
            yield Element(exactly, word, start, end)
        elif kind:
            end = words[at + length - 1][2]
            counts, _, value = kind.rpartition(" ") if kind.startswith(("ordinal ", "last ")) else ("", "", "")
            kind = {"ordinal": "ordinal", "last": "from the right"}.get(counts, kind)
            told = " ".join(piece for piece, _, _ in words[at : at + length])
            yield Element(kind, told, start, end, int(value or 0), phrase)
        elif word[0] in "—–_-.…" and (len(word) > 1 or _is_a_gap(words, at)):
            yield Element("unknown", "?", start, end)  # `Green, ———, White`
        elif word.startswith("~~"):  # struck out: kept beside who stands in its place
            yield Element("note", word, start, end)
        elif digits := re.match(r"\d+", word):
            ordinal = re.fullmatch(rf"\d+{_ENDING}", word) is not None
            yield Element("ordinal" if ordinal else "number", word, start, end, int(digits[0][:6]))
        else:
            yield Element(_MARKS.get(word, "word"), word, start, end)
        at += length


_ROW_LETTERS = {"BR": "back", "FR": "front", "MR": "middle"}
"""Rows by their letters, before a colon or a bracket."""


def _is_a_gap(words: Sequence[Word], at: int) -> bool:
    """Whether a dash stands between two commas, for somebody not known."""
    return at > 0 and words[at - 1][0] in ",:;" and at + 1 < len(words) and words[at + 1][0] in ",;."


def _phrases() -> dict[str, list[tuple[tuple[str, ...], str]]]:
    """Every phrase by the first two letters of its first word, the longest first."""
    rows = [(phrase, kind) for kind, phrase in (*table.WORDS_BETWEEN, *table.PLACE_PHRASES)]
    rows += [(word, f"ordinal {number}") for number, word in table.ORDINALS]
    rows += [(phrase, f"last {kind}" if kind.isdigit() else kind) for kind, phrase in table.COUNTED_FROM_THE_END]
    by_start: dict[str, list[tuple[tuple[str, ...], str]]] = {}
    for phrase, kind in rows:
        words = tuple(fold(phrase).split())
        by_start.setdefault(words[0][:2].rstrip("*"), []).append((words, kind))
    for found in by_start.values():
        found.sort(key=lambda row: -len(row[0]))
    return by_start


_BY_START = _phrases()
_WHOLE = frozenset(" ".join(words) for rows in _BY_START.values() for words, _ in rows)
_SHORT_WORDS = frozenset("v h esq dir izq izda der dcha dr fr vas oik sin sx dx".split())
"""Words of places that are shortened with a point."""

_GERMAN_ROWS = ("hinten", "vorn", "vorne", "oben", "unten", "ganz", "dahinter", "davor")
"""Words of German before a side that is shortened to a letter."""

_POINTED = {"li.": "links", "re.": "rechts"}
"""Sides shortened with a point, which without it are names or other words."""

ROW_NAMES = {1: "front", 2: "second", 3: "third", 4: "fourth", 5: "fifth"}
"""Rows that are counted, from the front; any further one is the back row."""

FROM_THE_BACK = {1: "back"} | {number: f"{ROW_NAMES[number]} from the back" for number in (2, 3, 4)}
"""Rows that are counted from the back."""

ROW_KINDS = frozenset((*table.ROW_CLASSES, *ROW_NAMES.values(), *FROM_THE_BACK.values(), MIDDLE))
PLACES = frozenset((*ROW_KINDS, *table.SIDES, *table.DIRECTIONS, *table.ORDERS))
"""Kinds of elements that tell a place in the picture."""

_SMALL_KINDS = ("and", "with", "my", "verb")


def _longest(plain: Sequence[str], words: Sequence[Word], at: int, *, is_shouted: bool) -> tuple[str, int, str]:
    """The kind and the length of the longest phrase that begins here, and the phrase; '' and 1 for none."""
    for phrase, kind in phrases_of(plain[at]):
        end = at + len(phrase)
        near = zip(plain[at:end], phrase, strict=False)
        if end > len(plain) or not all(_same(word, wanted) for word, wanted in near):
            continue
        if _is_inside_a_name(words, at, kind, phrase):
            continue
        if kind == "and" and words[at][0].endswith(".") and len(words[at][0]) == 2 and at:
            continue  # `A. E. GAUNT`
        initials = "".join(word for word, _, _ in words[at : at + 2])
        if kind in _SMALL_KINDS and initials.isupper() and len(initials.replace(".", "")) == 2 and len(words) > at + 2:
            continue  # `E M Wills`
        large = words[at][0][:1].isupper() and at and not (is_shouted or _begins_sentence(words, at, kind))
        if kind == "right" and words[end - 1][0] == "D.":
            continue  # `a D. Emília`
        if large and kind == "or" and words[at - 1][0][:1].isalpha():
            continue  # `Meri Te Tai`, where `tai` is `or` in Finnish
        if kind == "and" and words[at][0] in ("à", "À"):
            continue  # French, where `a` joins in Czech and Polish
        if kind == "my" and _is_a_name_before_another(words, at):
            continue
        if kind == "my" and words[at][0] == "Seu" and words[end : end + 1] and words[end][0][:1].isupper():
            continue  # `Dona Maria e Seu João`
        if kind == "with" and len(phrase) == 1 and words[at][0].endswith("."):
            continue  # `Dr. med.`
        counts = kind.startswith("ordinal") and _is_before_a_side(plain, at)  # `Prima da sinistra`, also a cousin
        if kind.startswith("ordinal") and not (counts or at) and _is_a_name_that_counts(words[0][0], phrase):
            continue  # `Toivo on …`, where `toi*` counts
        if kind.startswith("ordinal") and not counts and plain[at] in KIN_WORDS and len(phrase) == 1:
            continue  # `tia Rita`, where `tia` counts in another language
        if large and (kind in _SMALL_KINDS or (kind.startswith("ordinal") and token_of(words[at][0]).is_given)):
            continue
        return kind, len(phrase), " ".join(phrase)
    return "", 1, ""


def _is_before_a_side(plain: Sequence[str], at: int) -> bool:
    """Whether it is told behind a word from which side is counted."""
    behind = phrases_of(plain[at + 1]) if at + 1 < len(plain) else ()
    sides = (phrase for phrase, kind in behind if kind in ("from_left", "from_right"))
    return any(tuple(plain[at + 1 : at + 1 + len(phrase)]) == phrase for phrase in sides)


def _is_a_name_that_counts(word: str, phrase: Sequence[str]) -> bool:
    """Whether a given name begins as a word that counts does."""
    return phrase[0].endswith("*") and word.istitle() and token_of(word).is_given


def _is_a_name_before_another(words: Sequence[Word], at: int) -> bool:
    """Whether a word of whose (`hans` is `his` in Danish) is a given name where it stands: `Hans Jørgen Toft`."""
    behind = words[at + 1][0] if at + 1 < len(words) else ""
    is_large = words[at][0][:1].isupper() and behind[:1].isupper()
    return is_large and token_of(words[at][0]).is_given and fold(behind) not in KIN_WORDS


_ENDS = ".!?;…"


def _begins_sentence(words: Sequence[Word], at: int, kind: str) -> bool:
    """Whether a small word of three letters and more is large because a sentence begins: `That's`, `And`."""
    return words[at - 1][0] in _ENDS and len(words[at][0]) > 2 and kind in ("and", "verb")


def _is_inside_a_name(words: Sequence[Word], at: int, kind: str, phrase: Sequence[str]) -> bool:
    """Whether a word that counts, or a short one for a place, is a name where it stands: `Osman bin …`, `felesége Vas
    Ilona`."""
    word = words[at][0]
    behind = fold(words[at + 1][0]) if at + 1 < len(words) else ""
    is_religious = len(phrase) == 1 and fold(word) in RELIGIOUS_TITLES and token_of(behind).is_given
    if kind.startswith(("row", "ordinal")) and is_religious and words[at + 1][0][:1].isupper():
        return True  # `Sor Juana`, where `sor` is a row in Hungarian
    if len(phrase) > 1 or not word[:1].isupper():
        return False
    fathers = kind.startswith("ordinal") and behind in FILIATION and len(behind) > 2
    is_short = kind in PLACES and 1 < len(word) < 4 and at > 0 and words[at - 1][0][0].isalpha()
    return fathers or (is_short and not word.isupper())


def _is_shouted(words: Sequence[Word]) -> bool:
    """Whether all is written in capitals, so that these tell no names: `STAN, BETTY AND VI`."""
    told = "".join(word for word, _, _ in words)
    return told.isupper() and len(words) > 2


@lru_cache(1 << 12)
def phrases_of(first: str) -> tuple[tuple[tuple[str, ...], str], ...]:
    """The phrases that begin with this word, the longest first; those known by one letter of it last."""
    rows = (*_BY_START.get(first[:2], ()), *_BY_START.get(first[:1], ()))
    return tuple((phrase, kind) for phrase, kind in rows if _same(first, phrase[0]))


def _same(word: str, wanted: str) -> bool:
    if wanted.endswith("*"):
        return word.startswith(wanted[:-1]) and not word.endswith("'s")  # `Pat's`, no fifth of Czech
    return word == wanted


_SIDES_ALONE = {"rt": "right", "lt": "left"}
"""Sides as they are shortened in brackets; before a name they are titles."""


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
            inside = tuple(counted_elements(elements[at + 1 : end], text))
            if len(inside) == 1 and inside[0].plain in _SIDES_ALONE:
                inside = (replace(inside[0], kind=_SIDES_ALONE[inside[0].plain]),)
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
        kinds = [element.kind for element in elements[at : at + 3]]
        place, length = _counted(elements[at : at + 3], kinds)
        if length:
            joined.append(over(place, elements[at : at + length], text))
        else:
            length = 1 + _whose(elements, at)
            joined.append(over(elements[at], elements[at : at + length], text) if length > 1 else elements[at])
        at += length
    return joined


def over(place: Element, elements: Sequence[Element], text: str) -> Element:
    """A place that takes all these elements."""
    start, end = elements[0].start, elements[-1].end
    return replace(place, start=start, end=end, text=text[start:end])


def note_over(elements: Sequence[Element], text: str) -> Element:
    """One note of all these elements, as it was told."""
    return replace(over(elements[0], elements, text), kind="note", inside=())


def each_as_one(
    elements: Sequence[Element],
    end_of: Callable[[Sequence[Element], int], int],
    as_one: Callable[[Sequence[Element]], Element],
) -> list[Element]:
    """The elements, each run as one of them. `end_of` tells behind which element the run ends that begins at one; 0
    where none begins there."""
    kept: list[Element] = []
    at = 0
    while at < len(elements):
        end = end_of(elements, at)
        kept.append(as_one(elements[at:end]) if end else elements[at])
        at = end or at + 1
    return kept


def _whose(elements: Sequence[Element], at: int) -> int:
    """How many elements behind a row or a side say whose it is (`in front of him`); `behind her mother` says not."""
    if elements[at].kind not in PLACES:
        return 0
    for length in (3, 2, 1):
        behind = elements[at + 1 : at + 1 + length]
        following = elements[at + 1 + length : at + 2 + length]
        is_kin = bool(following) and (following[0].plain in KIN_WORDS or following[0].plain in table.NOUNS)
        says_whose = behind[-1:] != [] and (behind[-1].kind == "my" or behind[-1].plain in small_words.ARTICLES)
        is_kin = is_kin and says_whose  # but not of `behind us Uncle Fritz`
        is_kin = is_kin and not (following[0].is_large and following[0].plain in TITLES)  # `behind her Nurse Payne`
        told = " ".join(element.plain for element in behind)
        stands_there = length == 1 and elements[at].phrase not in small_words.BEFORE_WHOM  # `top right me`
        if told in small_words.PRONOUNS and not (is_kin or stands_there) and behind[0].text.islower():
            return len(behind)
    return 0


def _numbers_alone(elements: Sequence[Element]) -> list[Element]:
    """Without the point behind a number that counts, and without `No.` before one, which is its `phrase`."""
    kept: list[Element] = []
    listed, label = _counts_on(elements), ""
    for at, element in enumerate(elements):
        following = elements[at + 1].kind if at + 1 < len(elements) else ""
        before = kept[-1] if kept else None
        is_row = following == "row" or (before is not None and before.kind == "row")
        if is_row and element.text in ROMANS:
            kept.append(replace(element, kind="number", value=ROMANS[element.text]))
            continue
        if element.plain in small_words.CARDINALS and before is not None and before.kind == "row":
            kept.append(replace(element, kind="number", value=small_words.CARDINALS[element.plain]))
            continue
        if kept and kept[-1].plain in table.NUMBER_WORDS and element.plain in small_words.CARDINALS:
            kept[-1] = replace(element, kind="number", value=small_words.CARDINALS[element.plain])
            continue
        if (
            element.plain in ("one", "person", "duine")
            and before is not None
            and before.kind == "ordinal"
            and following in PLACES
        ):
            continue
        touches = before is not None and before.kind == "number" and before.end == element.start
        if element.text == "." and touches and (listed or following in ("row", *PLACES)):
            continue
        led = kept[-2].plain if len(kept) > 1 else ""
        if element.text == "." and touches and led in small_words.GERMAN_ARTICLES and following == "word":
            kept[-1] = replace(kept[-1], kind="word", text=f"{kept[-1].text}.", end=element.end)
            continue  # `mit der 3. Klasse`
        if (element.plain in table.NUMBER_WORDS or element.kind == "hash") and following == "number":
            label = element.text
            continue
        kept.append(replace(element, phrase=label) if label else element)
        label = ""
    return kept


def _counts_on(elements: Sequence[Element]) -> bool:
    """Whether the numbers with a point behind them count people: the first element is one, or they count from 1."""
    dotted = [element.value for element, point in pairwise(elements) if element.kind == "number" and point.text == "."]
    return elements[:1] != [] and (
        elements[0].kind == "number" or (len(dotted) > 1 and dotted == [*range(1, len(dotted) + 1)])
    )


def _counted(elements: Sequence[Element], kinds: Sequence[str]) -> tuple[Element, int]:
    """A row or a position that is counted, and how many elements it takes (0 for none)."""
    first = elements[0]
    counts = ("ordinal", "number")
    number = next((element.value for element in elements[:2] if element.kind in counts), 0)
    if from_end := _row_from_end(kinds, number):
        return replace(first, kind=from_end[0]), from_end[1]
    if kinds[:2] in (["ordinal", "row"], ["number", "row"], ["row", "number"], ["row", "ordinal"]):
        return replace(first, kind=ROW_NAMES.get(number, "back")), 2
    if kinds[:1] == ["row"] and kinds[1:2] != [] and kinds[1] in ROW_KINDS and not elements[1].is_large:
        return replace(first, kind=kinds[1]), 2  # `Reihe hinten`
    if kinds[:2] == ["word", "row"] and first.plain in small_words.SAME:
        return replace(first, kind="of"), 2  # `same row`: the one told before stands on
    for adjective, noun in ((0, 1), (1, 0)):  # `top row`, `rząd górny`
        is_row = sorted(kinds[:2]) == ["row", "word"] and kinds[noun] == "row"
        if is_row and elements[adjective].plain not in _ARTICLES_OF_MAORI:
            for row, stems in table.ROW_ADJECTIVES:
                named = elements[adjective].plain.startswith(stems) or _shortens(elements[adjective], stems)
                if named and not (adjective and elements[1].is_large):
                    return replace(first, kind=row), 2
    for count, side in ((0, 1), (1, 0)):
        if len(kinds) > 1 and (kinds[count] == "ordinal" or (kinds[count] == "number" and side)):
            phrase = elements[side].phrase
            if phrase in _FROM["from_left"] or phrase in _FROM["from_right"]:
                kind = "position" if phrase in _FROM["from_left"] else "from the right"
                return replace(first, kind=kind, value=elements[count].value), 2
    leads = kinds[2:] == ["word"] and elements[1].plain != "in" and elements[2].plain in ("in", "on", "of")
    goes_on = kinds[2:] in (["word"], ["my"]) and not leads  # but `third along | in the second row`
    if kinds[:2] == ["ordinal", "word"] and elements[1].plain in _ALONG and not goes_on:
        return replace(first, kind="position"), 2  # `fourth along - Kathleen`
    if kinds[:2] == ["ordinal", "from_end"]:  # `second to last`
        return replace(first, kind="from the right"), 2
    if kinds[:1] == ["from_end"] and kinds[1:2] in (["left"], ["right"]):  # `ultima a destra`
        return replace(first, kind=kinds[1]), 2
    if kinds[:1] == ["from_end"]:
        return replace(first, kind="word"), 1
    if kinds[:1] == ["ordinal"] and kinds[1:2] in (["left"], ["right"]):  # `2nd left`
        return replace(first, kind="position" if kinds[1] == "left" else "from the right"), 2
    return first, 0


_ARTICLES_OF_MAORI = ("te", "nga")

_ALONG = ("along", "over", "across", "in")
"""Words behind an ordinal that say no more than that a row is counted, where no word goes on with them."""

_LONGEST_SHORTENED = 4


def _shortens(word: Element, stems: Sequence[str]) -> bool:
    """Whether a short word has the first letter of one of the words, and others of it in their order: `bk row`,
    `vord. Reihe`."""
    plain = word.plain
    if not 1 < len(plain) <= _LONGEST_SHORTENED or token_of(word.text).is_given:
        return False
    return any(stem[0] == plain[0] and _has_in_order(stem, plain) for stem in stems)


def _has_in_order(word: str, letters: str) -> bool:
    rest = iter(word)
    return all(letter in rest for letter in letters)


def _row_from_end(kinds: Sequence[str], number: int) -> tuple[str, int] | None:
    """The row of `second row from the back`, `row 2 from the back`, `second from the back`; its length in elements."""
    counted = [("number" if kind == "ordinal" else kind) for kind in kinds]
    whole = sorted(counted[:2]) == ["number", "row"]
    end = counted[2:3] if whole else counted[1:2]
    if end not in (["from_back"], ["from_front"]) or not (whole or counted[0] == "number"):
        return None
    name = (FROM_THE_BACK if end == ["from_back"] else ROW_NAMES).get(number, "")
    return (name, 3 if whole else 2) if name else None


_FROM = {
    kind: frozenset(fold(phrase) for row, phrase in table.PLACE_PHRASES if row == kind)
    for kind in ("from_left", "from_right")
}
