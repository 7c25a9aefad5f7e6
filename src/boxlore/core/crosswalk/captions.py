"""Captions: sentences made from a record, the same rules for sheets, slips, pages, copies and exports.

In captions the words as told come first, and what they were read as stands behind: "the summer Joe came home
(1946)". Unsure names say so ("perhaps Anna"). No word of ours is set before told words that may begin with one of
their own (so there is no "on in" and no "the the"), and every sentence is right with any field missing.
Titles made by us follow DACS 2.3.3 (name, nature and topic, no brackets) or stand in brackets where the collection
asks for it. Lengths are rows of LENGTHS: a slip says who, where and when; a sheet adds the occasion and who took it;
the full caption adds the stories, what is written on it and who says so.
"""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from boxlore.core.records.in_force import PersonShown, Record, StatementView
from boxlore.core.records.people_key import key_of, unplaced
from boxlore.core.statements import Said, Sure, fold

LENGTHS: dict[str, tuple[str, ...]] = {
    "slip": ("who", "where_when"),
    "sheet": ("occasion", "who", "named", "taker", "where_when"),
    "full": ("occasion", "who", "named", "taker", "where_when", "stories", "source"),
}

NATURE = {
    "print": "photograph",
    "negative": "negative",
    "slide": "slide",
    "postcard": "postcard",
    "album-page": "album page",
    "letter": "letter",
    "note": "note",
    "card": "mounted photograph",
}
MOST_NAMED = 3
"""Persons named in a devised title (DACS 2.3.7)."""

_COUNTS = "no one two three four five six seven eight nine".split()


@dataclass(frozen=True, slots=True)
class Style:
    """How captions are to read: bracketed titles, marker numbers before names, kin by person id."""

    brackets: bool = False
    numbers: bool = False
    kin: Mapping[str, str] = field(default_factory=dict)
    """What someone is to the family the output is for: person id → “Leida’s grandmother”."""


PLAIN = Style()


# titles


def title(record: Record, *, brackets: bool = False) -> str:
    """The title told, else one devised from who, what and where."""
    if told := one_line(record.words("title")):
        return told
    devised = capital(_devised(record))
    return f"[{devised}]" if brackets else devised


def _devised(record: Record) -> str:
    nature, occasion, place = nature_of(record), bare(record.words("occasion")), _place_words(record)
    people = record.shown()
    names = [name_of(one) for one in people[:MOST_NAMED]]
    more = len(people) - len(names)
    who = listed([*names, f"{_count(more)} other{'s' if more > 1 else ''}"] if more else names)
    if not occasion:
        subject = f"{nature} of {who}" if names else nature
        return _joined(subject, place)
    if not names or _names_someone(occasion, people):
        return _joined(occasion, "" if names else place)
    return f"{who}, {occasion}"


def _names_someone(words: str, people: Sequence[PersonShown]) -> bool:
    """Whether the words name one of these people already (by the first word of the name)."""
    said = set(_plain(words))
    return any(first[0] in said for one in people if (first := _plain(one.name)))


def _joined(*parts: str) -> str:
    """Parts with commas between; one that says only what stands before is left out."""
    kept: list[str] = []
    for part in filter(None, parts):
        before = _plain(" ".join(kept))
        if not before or not _within(_plain(part), before):
            kept.append(part)
    return ", ".join(kept)


def _within(words: Sequence[str], longer: Sequence[str]) -> bool:
    """Whether the words stand in the longer ones, in a row."""
    width = len(words)
    return any(list(longer[at : at + width]) == list(words) for at in range(len(longer) - width + 1))


def _plain(words: str) -> list[str]:
    return re.findall(r"\w+", fold(words))


def _count(number: int) -> str:
    return _COUNTS[number] if number < len(_COUNTS) else str(number)


def nature_of(record: Record) -> str:
    """What kind of thing it is, in one or two words."""
    return NATURE.get(record.kind, record.kind)


# names

NOT_KNOWN = "someone not known"

_HEDGES = {Sure.GUESS: "perhaps", Sure.LIKELY: "probably"}
_HEDGED = frozenset("perhaps probably maybe possibly likely unsure not".split())


def name_of(shown: PersonShown, style: Style = PLAIN) -> str:
    """The name, with how sure the source is, the marker's number and the kin where the style asks for them."""
    name = one_line(shown.name)
    hedge = _HEDGES.get(shown.told.sure, "")
    if hedge and "?" not in name and _plain(name)[:1] and _plain(name)[0] not in _HEDGED:
        name = f"{hedge} {name}"
    if kin := style.kin.get(shown.person, ""):
        name = f"{name} ({kin})"
    return f"{shown.number}\u00a0{name}" if style.numbers and shown.number else name


def listed(names: Sequence[str]) -> str:
    """`A, B and C`; with semicolons where a name itself holds a comma."""
    if len(names) < 2:
        return "".join(names)
    mark = ";" if any("," in one for one in names) else ","
    last = f"{mark} and" if mark == ";" else " and"
    return f"{f'{mark} '.join(names[:-1])}{last} {names[-1]}"


# the parts of a caption: each a sentence without its stop, or empty


def who_line(record: Record, style: Style = PLAIN) -> str:
    """Who is in it, by rows, left to right; empty if nobody is told."""
    people = record.shown()
    rows = key_of(people, record.nameless)
    clauses = []
    for row in rows:
        names = listed([name_of(one, style) if one else NOT_KNOWN for one in row.people])
        if len(row.people) == 1:
            clauses.append(f"{capital(row.name)}: {names}" if row.name else names)
        else:
            clauses.append(f"{capital(row.name)}, left to right: {names}" if row.name else f"left to right: {names}")
    rest = listed([name_of(one, style) for one in unplaced(people)])
    if rest:
        clauses.append(f"with {rest}" if clauses else rest)
    line = clauses[0] if clauses else ""
    for clause in clauses[1:]:
        line += f"{'' if line[-1] in '.!?…' else '.'} {capital(clause)}"
    return line


def named_line(record: Record, style: Style = PLAIN) -> str:
    """Who is spoken of and not shown."""
    names = listed([name_of(one, style) for one in record.shown("named")])
    if not names:
        return ""
    return f"named, not shown: {names}" if record.shown() else f"names {names}"


def taker_line(record: Record, style: Style = PLAIN) -> str:
    """Who took it."""
    names = listed([name_of(one, style) for one in record.shown("photographer")])
    return f"photograph by {names}" if names else ""


def date_line(record: Record) -> str:
    """The date as told, with what it was read as behind it where that says more; empty if none is told."""
    told = record.first("date")
    if told is None:
        return ""
    words, shown = bare(told.words), str(told.value.get("display") or "")
    if not shown or _dated(words) == _dated(shown):
        return words
    return f"{words} ({shown})"


_ABOUT = frozenset("about approximately around circa roughly abt ca c".split())


def _dated(words: str) -> list[str]:
    """What a date says, whatever the order of its words and the word for “about”."""
    return sorted("about" if word in _ABOUT else word for word in _plain(words))


def _place_words(record: Record) -> str:
    told = record.first("place")
    return bare(told.words) if told else ""


def place_line(record: Record) -> str:
    """The place as told; where it lies now behind it, if it is called otherwise today."""
    told = record.first("place")
    if told is None:
        return ""
    words = bare(told.words)
    choices = told.value.get("choices")
    place = choices[0] if isinstance(choices, list) and choices else {}
    now = str(place.get("city") or "") if isinstance(place, dict) else ""
    country = str(place.get("country") or "") if isinstance(place, dict) else ""
    if not now or _within(_plain(now), _plain(words)):
        return words
    return f"{words} (now {', '.join(part for part in (now, country) if part)})"


def where_when(record: Record) -> str:
    """Place and date in one line."""
    return ", ".join(part for part in (place_line(record), date_line(record)) if part)


def occasion_line(record: Record) -> str:
    """The occasion, unless the title says it already."""
    occasion = bare(record.words("occasion"))
    said = occasion and _within(_plain(occasion), _plain(title(record)))
    return "" if said else occasion


_SIDES = {"recto": "as written on the front", "verso": "as written on the back"}


def source_line(record: Record) -> str:
    """Who says so: the sources of what the caption rests on, each once."""
    rests_on = [told for name in ("date", "place", "occasion") if (told := record.first(name))]
    rests_on += [*record.all("story"), *(one.told for one in record.people)]
    tellers = dict.fromkeys(_teller(told) for told in rests_on if told.source.said is Said.NARRATOR)
    clauses = [f"told by {listed(list(tellers))}"] if tellers else []
    clauses += dict.fromkeys(filter(None, map(_written, rests_on)))
    return "; ".join(clauses)


def _teller(told: StatementView) -> str:
    return told.said_by or "a narrator"


def _written(told: StatementView) -> str:
    if told.source.said is Said.INSCRIPTION:
        return _SIDES.get(told.source.ref, "as written on it")
    return f"after {bare(told.source.ref)}" if told.source.said is Said.DOCUMENT and told.source.ref else ""


def inscription_line(record: Record) -> str:
    """What is written on it, quoted, or empty."""
    written = [f"“{one_line(told.words)}”" for told in record.all("inscription")]
    return f"Written on it: {'; '.join(written)}" if written else ""


def stories_line(record: Record) -> str:
    """The stories, each as sentences, one after the other."""
    return " ".join(sentence(told.words) for told in record.all("story"))


_PARTS: dict[str, Callable[[Record, Style], str]] = {
    "occasion": lambda record, style: occasion_line(record),
    "who": who_line,
    "named": named_line,
    "taker": taker_line,
    "where_when": lambda record, style: where_when(record),
    "stories": lambda record, style: stories_line(record),
    "source": lambda record, style: source_line(record),
}


def lines(record: Record, length: str, style: Style = PLAIN) -> dict[str, str]:
    """The sentences of a caption by part, in order; a part with nothing to say is absent."""
    said = ((name, sentence(_PARTS[name](record, style))) for name in LENGTHS[length])
    return {name: words for name, words in said if words}


def caption(record: Record, length: str = "full", style: Style = PLAIN) -> str:
    """The caption at one of LENGTHS, as running text."""
    return " ".join(lines(record, length, style).values())


# sentences


def one_line(words: str) -> str:
    """The words on one line, blanks single."""
    return " ".join(words.split())


def bare(words: str) -> str:
    """The words on one line without a stop at the end that a sentence would double; “N.Z.” keeps its own."""
    line = one_line(words).rstrip(",;: ")
    last = line.rsplit(" ", 1)[-1]
    ends = line.endswith(".") and not line.endswith("..") and "." not in last[:-1] and len(last) > 4
    return line[:-1] if ends else line


def capital(words: str) -> str:
    """The words with a capital first."""
    return words[:1].upper() + words[1:]


def sentence(words: str) -> str:
    """The words as a sentence: a capital first, a full stop last, nothing doubled."""
    line = words.strip()
    if not line:
        return ""
    ended = line[-1] in ".!?…" or (line[-1] in "”\"'’)" and line[-2:-1] in ".!?…")
    return capital(line) if ended else f"{capital(line)}."


def alt_text(record: Record) -> str:
    """What the picture shows, for someone who cannot see it: the kind, who, what, where, when."""
    nature = capital(nature_of(record))
    who = listed([name_of(one) for one in record.shown()])
    subject = bare(record.words("title")) or bare(record.words("occasion"))
    what = f"{nature} of {who}" if who else f"{nature}: {subject}" if subject else f"{nature}, not yet described"
    also = (
        bare(record.words("occasion")) if who and not _names_someone(record.words("occasion"), record.shown()) else ""
    )
    when = record.date_display
    return sentence(_joined(what, also, _place_words(record), "" if when == "undated" else when))


def reference(record: Record, separator: str = " · ") -> str:
    """`TRA-0042 · Box 3 · Folder 12 · Item 4`: the number, and where the item is kept now."""
    mark = record.mark.long.replace(" / ", separator) if record.mark else ""
    return separator.join(part for part in (record.number, mark) if part)
