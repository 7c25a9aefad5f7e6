"""Captions: sentences made from a record, the same rules for the sheet, the copies and the exports.

In captions the words as told come first, and what they were read as stands behind: "the summer Joe came home
(1946)". Unsure names say so ("perhaps Anna"). Every sentence is right with any field missing. Titles made by us
follow DACS 2.3.3 (name and nature of the thing, no brackets) or stand in brackets where the collection asks for it.
"""

import re
from collections.abc import Sequence

from boxlore.core.record import Record, Shown, Told
from boxlore.core.statements import Said, Sure

LENGTHS = ("slip", "sheet", "full")

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


def title(record: Record, *, brackets: bool = False) -> str:
    """The title told, else one devised from who, what and where."""
    if told := record.words("title"):
        return told
    devised = _capital(_devised(record))
    return f"[{devised}]" if brackets else devised


def _devised(record: Record) -> str:
    nature = NATURE.get(record.kind, record.kind)
    names = [name_of(one) for one in record.shown()[:MOST_NAMED]]
    more = len(record.shown()) - len(names)
    parts = _listed([*names, f"{more} others" if more > 1 else "one other"] if more else names)
    occasion, place = record.words("occasion"), _place_words(record)
    if names and occasion:
        return f"{parts}, {occasion}"
    if names:
        return f"{parts}, {nature}"
    if occasion:
        return f"{_capital(occasion)}, {place}" if place else _capital(occasion)
    return f"{_capital(nature)}, {place}" if place else _capital(nature)


def name_of(shown: Shown) -> str:
    """The name, with how sure the source is."""
    if shown.told.sure is Sure.GUESS:
        return f"perhaps {shown.name}"
    return f"probably {shown.name}" if shown.told.sure is Sure.LIKELY else shown.name


def _listed(names: Sequence[str]) -> str:
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} and {names[-1]}"


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def people_line(record: Record) -> str:
    """Who is in it, by marker number or left to right, and who took it; empty if nobody is told."""
    shown = record.shown()
    if any(one.number for one in shown):
        people = "; ".join(f"{one.number} {name_of(one)}" if one.number else name_of(one) for one in shown)
    else:
        people = _listed([name_of(one) for one in shown])
    named = _listed([name_of(one) for one in record.shown("named")])
    taker = _listed([name_of(one) for one in record.shown("photographer")])
    parts = [people, f"named, not shown: {named}" if named else "", f"photograph by {taker}" if taker else ""]
    return ". ".join(_capital(part) for part in parts if part)


def date_line(record: Record) -> str:
    """The date as told, with what it was read as behind it where that says more; empty if none is told."""
    told = record.first("date")
    if told is None:
        return ""
    shown = str(told.value.get("display") or "")
    if not shown or _says_the_same(told.words, shown):
        return told.words
    return f"{told.words} ({shown})"


_WORDS = re.compile(r"[^\W_]+")


def _says_the_same(words: str, shown: str) -> bool:
    return sorted(_WORDS.findall(words.casefold())) == sorted(_WORDS.findall(shown.casefold()))


def _place_words(record: Record) -> str:
    told = record.first("place")
    return told.words if told else ""


def place_line(record: Record) -> str:
    """The place as told; where it lies now behind it, if it is called otherwise today."""
    told = record.first("place")
    if told is None:
        return ""
    choices = told.value.get("choices")
    place = choices[0] if isinstance(choices, list) and choices else {}
    now = str(place.get("city") or "") if isinstance(place, dict) else ""
    country = str(place.get("country") or "") if isinstance(place, dict) else ""
    if not now or now.casefold() in told.words.casefold():
        return told.words
    return f"{told.words} (now {', '.join(part for part in (now, country) if part)})"


def source_line(record: Record) -> str:
    """Who says so: the sources of what the caption rests on, each once."""
    rests_on = [told for name in ("date", "place", "occasion", "story") if (told := record.first(name))]
    rests_on += [one.told for one in record.people]
    named = dict.fromkeys(_source_words(told) for told in rests_on)
    return _listed([one for one in named if one])


def _source_words(told: Told) -> str:
    if told.source.said is Said.NARRATOR:
        return told.said_by or "a narrator"
    if told.source.said is Said.INSCRIPTION:
        return "what is written on it"
    return told.source.ref if told.source.said is Said.DOCUMENT else ""


def caption(record: Record, length: str = "full") -> str:
    """The caption at one of LENGTHS: `slip` who, when, where; `sheet` with the occasion; `full` with the stories."""
    when_where = ", ".join(part for part in (place_line(record), date_line(record)) if part)
    sentences = [people_line(record), when_where]
    if length != "slip":
        occasion = record.words("occasion")
        sentences.insert(0, "" if occasion and occasion in title(record) else occasion)
    if length == "full":
        sentences += [told.words for told in record.all("story")]
        source = source_line(record)
        sentences.append(f"Told by {source}" if source else "")
    return " ".join(sentence(one) for one in sentences if one)


def sentence(words: str) -> str:
    """The words as a sentence: a capital first, a full stop last, nothing doubled."""
    line = words.strip()
    if not line:
        return ""
    ended = line[-1] in ".!?…" or (line[-1] in "”\"'’)" and line[-2:-1] in ".!?…")
    return _capital(line) if ended else f"{_capital(line)}."


def inscription_line(record: Record) -> str:
    """What is written on it, quoted, or empty."""
    written = [f"“{told.words}”" for told in record.all("inscription")]
    return f"Written on it: {'; '.join(written)}" if written else ""


def alt_text(record: Record) -> str:
    """What the picture shows, for someone who cannot see it: the kind, who, what, where, when."""
    nature = _capital(NATURE.get(record.kind, record.kind))
    count = len(record.shown())
    who = _listed([name_of(one) for one in record.shown()])
    if not who and count == 0:
        subject = record.words("title") or record.words("occasion")
        what = f"{nature}: {subject}" if subject else f"{nature}, not yet described"
    else:
        what = f"{nature} of {who}"
    where, when = _place_words(record), record.date_display
    parts = [what, where, when if when != "undated" else ""]
    return sentence(", ".join(part for part in parts if part))


def reference(record: Record, separator: str = " · ") -> str:
    """`TRA-0042 · Box 3 · Folder 12 · Item 4`: the number, and where the item is kept now."""
    mark = record.mark.long.replace(" / ", separator) if record.mark else ""
    return separator.join(part for part in (record.number, mark) if part)
