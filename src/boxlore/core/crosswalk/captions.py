"""Captions: sentences made from a record, by the same rules for sheets, slips, pages, copies and exports.

1. The words as told come first, and what they were read as stands behind them: `the summer Joe came home (1946)`.
2. A name that is not sure says so: `perhaps Anna`; among other names behind itself, so that the doubt is nobody
   else's: `Anna (perhaps), Ruth and Joe`.
   Each name and place that is written from right to left stands in an isolate, so that “left to right” holds for its
   neighbours.
3. No preposition or article of ours stands before told words, for they may begin with their own (`in the garden`).
4. Every sentence is right with any field missing.
5. A title made by us follows DACS 2.3.3 (name, nature and topic, no brackets), or stands in brackets if the collection
   asks for it.
6. LENGTHS says what each length of caption holds.
7. Our own words are said in the language of the style (`core/wording/catalogue`); what is told stays as it was told.
"""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from boxlore.core.dates.before_and_after import left_out
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.file_names import title_of_paths, words_of_paths
from boxlore.core.fields.letters import is_blank, isolated
from boxlore.core.fields.table import FIELDS, OWN
from boxlore.core.people.who_is_where.written_out import AROUND, said_place
from boxlore.core.records.item_record import PersonShown, Record, StatementView
from boxlore.core.records.people_key import KeyRow, key_of, unplaced
from boxlore.core.statements import Said, Sure, fold
from boxlore.core.wording.catalogue import ENGLISH, Say, to_say

LENGTHS: dict[str, tuple[str, ...]] = {
    "slip": ("who", "where_when"),
    "sheet": ("occasion", "who", "named", "taker", "where_when"),
    "full": ("occasion", "who", "named", "taker", "where_when", "stories", "own", "source"),
}
"""Length -> its parts in order, by the names of _PARTS."""

NATURE = {
    "print": to_say("photograph"),
    "negative": to_say("negative"),
    "slide": to_say("slide"),
    "postcard": to_say("postcard"),
    "album-page": to_say("album page"),
    "letter": to_say("letter"),
    "note": to_say("note"),
    "card": to_say("mounted photograph"),
}
MOST_NAMED = 3
"""How many people a devised title names (DACS 2.3.7); a family's one more, where that is all of them."""


@dataclass(frozen=True, slots=True)
class Style:
    """How captions are written: devised titles in brackets, the markers' numbers before names, kin behind names."""

    brackets: bool = False
    numbers: bool = False
    kin: Mapping[str, str] = field(default_factory=dict)
    """Person id -> what the person is to the one whose album it is: `Leida’s grandmother`."""
    dates: FamilyWay | None = None
    """How the family writes its dates; None for the form of archives (DACS)."""
    say: Say = ENGLISH
    """In which language our own words are; archives have English."""

    @property
    def is_family(self) -> bool:
        """Whether a family reads it, and no archive."""
        return self.dates is not None


PLAIN = Style()


# titles


def title(record: Record, style: Style = PLAIN) -> str:
    """The title as told; else one devised from people, occasion and place, in brackets if the style has them.

    Where none of them is known, the words of the file's name, if they are a phrase: they are often the only caption
    that there is. Beside what is no phrase (`CON`, `Odd f`) the title is the nature alone (DACS 2.3.3).
    """
    if not is_blank(view := one_line(record.words("title"))):  # an older log took what nobody can see
        return view
    if not (record.shown() or record.words("occasion") or record.words("place")) and (words := title_by_file(record)):
        return capital(words)
    devised = capital(_devised(record, style))
    return f"[{devised}]" if style.brackets else devised


def title_by_file(record: Record) -> str:
    """What the name of the first scan's file says that is a phrase, else that of its folder; or ''."""
    return title_of_paths([view.words for view in record.all("file_name")])


def named_by_file(record: Record) -> str:
    """What the name of the first scan's file says that says anything, else that of its folder; or ''."""
    return words_of_paths([view.words for view in record.all("file_name")])


def _devised(record: Record, style: Style) -> str:
    """`Aino and Jaan, the regatta`; `Wedding, Tartu`; `Photograph of Aino, Tartu`; or only the nature."""
    occasion, place = bare(record.words("occasion")), _place_words(record, style)
    there = [shown for shown in _in_the_picture(record) if shown.in_question]  # somebody, whose name is not settled
    people = [shown for shown in record.named_people if shown.role == "person"]
    one_left = style.is_family and len(people) == MOST_NAMED + 1 and not there
    most = MOST_NAMED + one_left  # to a family, “one other” has a name
    if not occasion:
        return _joined(_shows(record, people, style.say, most, len(there)), place)
    if not people or _names_someone(occasion, people):
        return _joined(occasion, "" if people else place)
    return f"{_who(people, style.say, most, len(there))}, {occasion}"


def _who(people: Sequence[PersonShown], say: Say, most: int | None, also: int = 0) -> str:
    """The first so many of these people, or all, and how many others there are, with `also` so many of no name."""
    count = len(people) + also
    names = [_name_in_a_sentence(person, Style(say=say), among=count > 1) for person in people[:most]]
    further = count - len(names)
    others = [say.counted(further, "{number} other", "{number} others", number=_count(further, say))] if further else []
    return say.listed([*names, *others])


def _shows(record: Record, people: Sequence[PersonShown], say: Say, most: int | None = None, also: int = 0) -> str:
    """`photograph of Anna`; `photograph, perhaps of Anna`; of nobody only the nature."""
    nature = nature_of(record, say)
    if not people:
        return nature
    hedge, name = _doubt_and_name(people[0], say)
    if hedge and len(people) == 1 and not also:
        return say("{nature}, {doubt} of {name}", nature=nature, doubt=hedge.lower(), name=isolated(name))
    return say("{nature} of {names}", nature=nature, names=_who(people, say, most, also))


def _names_someone(words: str, people: Sequence[PersonShown]) -> bool:
    """Whether the words name one of these people already: by the first word of the name."""
    tokens = set(_plain(words))
    return any(first[0] in tokens for person in people if (first := _plain(person.name)))


def _joined(*parts: str) -> str:
    """The parts joined with commas; a part whose words stand in those before it is left out."""
    used: list[str] = []
    for part in filter(None, parts):
        before = _plain(" ".join(used))
        if not before or not _within(_plain(part), before):
            used.append(part)
    return ", ".join(used)


def _within(words: Sequence[str], longer: Sequence[str]) -> bool:
    """Whether `words` stand in `longer` in the same order and next to each other."""
    width = len(words)
    return any(list(longer[at : at + width]) == list(words) for at in range(len(longer) - width + 1))


def _plain(words: str) -> list[str]:
    """The single words, without case, accents and punctuation."""
    return re.findall(r"\w+", fold(words))


_COUNTS = (
    "", to_say("one"), to_say("two"), to_say("three"), to_say("four"), to_say("five"), to_say("six"), to_say("seven"),
    to_say("eight"), to_say("nine"),
)  # fmt: skip


def _count(number: int, say: Say) -> str:
    return say(_COUNTS[number]) if 0 < number < len(_COUNTS) else say.number(number)


def nature_of(record: Record, say: Say = ENGLISH) -> str:
    """What kind of thing the item is, in one or two words (NATURE)."""
    return say(NATURE[record.kind]) if record.kind in NATURE else record.kind


# names

NOT_KNOWN = to_say("someone not known")
NOT_NAMED = to_say("someone not named here")
"""A place between others of which nothing is told, or may not be."""

_HEDGES = {Sure.GUESS: to_say("perhaps"), Sure.LIKELY: to_say("probably")}
_DOUBTS = frozenset("perhaps probably maybe possibly likely".split())
_HEDGED = frozenset("perhaps probably maybe possibly likely unsure not".split())


def name_of(shown: PersonShown, style: Style = PLAIN, *, among: bool = False) -> str:
    """The name with `perhaps` or `probably` if it is not sure; with the marker's number and the kin, by the style.

    `among` others the doubt stands behind the name, in brackets, unless a number stands before it.
    """
    return _with_doubt(shown, _doubt_and_name(shown, style.say), style, among=among)


def _name_in_a_sentence(shown: PersonShown, style: Style, *, among: bool) -> str:
    """The same, with the name itself in an isolate where it is written from right to left; words of which it is not
    settled whom they mean are quoted."""
    hedge, name = _doubt_and_name(shown, style.say)
    if shown.in_question and not shown.number:
        name = quoted(name, style.say) if style.is_family else style.say(NOT_NAMED)
    return _with_doubt(shown, (hedge, isolated(name)), style, among=among)


def _with_doubt(shown: PersonShown, doubt_and_name: tuple[str, str], style: Style, *, among: bool) -> str:
    hedge, name = doubt_and_name
    numbered = style.numbers and shown.number
    behind = [style.kin.get(shown.person, "")]
    if hedge and among and not numbered:
        behind.insert(0, hedge)
    elif hedge:
        name = f"{hedge} {name}"
    if added := ", ".join(filter(None, behind)):
        name = f"{name} ({added})"
    return f"{shown.number}\u00a0{name}" if numbered else name


def _doubt_and_name(shown: PersonShown, say: Say) -> tuple[str, str]:
    """The word of doubt, as told in the name or by how sure it is, and the name without it."""
    name = one_line(shown.name)
    first, _, rest = name.partition(" ")
    if rest and fold(first) in _DOUBTS:
        return first, rest
    words = _plain(name)
    if "?" in name or not words or words[0] in _HEDGED or shown.sure not in _HEDGES:
        return "", name
    return say(_HEDGES[shown.sure]), name


def names_of(people: Sequence[PersonShown], style: Style = PLAIN) -> list[str]:
    """The names of these people for a sentence, each doubt bound to its own name."""
    return [_name_in_a_sentence(person, style, among=len(people) > 1) for person in people]


# the parts of a caption: each a sentence without its stop, or empty


def who_line(record: Record, style: Style = PLAIN) -> str:
    """Who is in it, row by row, from left to right; '' if nobody is told."""
    line = ""
    for clause in who_lines(record, style):
        line += f"{'' if line[-1] in '.!?…' else '.'} {capital(clause)}" if line else clause
    return line


def who_lines(record: Record, style: Style = PLAIN) -> list[str]:
    """The same, each row by itself, and last who else is in it.

    Words that may be nobody's stand where they were told, in quotation marks: in the row, else behind everybody. An
    archive has them in a note of their own, and only in its closed part.
    """
    people, say = _in_the_picture(record), style.say
    rows = key_of(people, record.nameless)
    clauses = []
    for row in rows:
        among = len(people) > 1
        names = say.listed([_placed_name(row, at, style, among=among) for at in range(len(row.people))])
        is_order = len(row.people) > 1 and not row.places and row.name not in AROUND
        if row.name:
            pattern = to_say("{row}, left to right: {names}") if is_order else to_say("{row}: {names}")
            clauses.append(say(pattern, row=capital(say(row.name)), names=names))
        else:
            clauses.append(say("left to right: {names}", names=names) if is_order else names)
    others = say.listed([_name_in_a_sentence(person, style, among=len(people) > 1) for person in unplaced(people)])
    if others:
        clauses.append(say("with {names}", names=others) if clauses else others)
    if style.is_family and (to_ask := _still_to_ask(record, say)):
        clauses.append(say("also told, and still to be asked about: {words}", words=to_ask))
    return clauses


def _in_the_picture(record: Record) -> list[PersonShown]:
    return [person for person in record.shown() if person.is_there]


def _still_to_ask(record: Record, say: Say) -> str:
    """The words told of who is in it that may be nobody's, and have no place in it; each once."""
    asked = [shown for shown in record.shown() if not shown.is_there]
    return say.listed(list(dict.fromkeys(isolated(quoted(shown.name, say)) for shown in asked)))


def _placed_name(row: KeyRow, at: int, style: Style, *, among: bool) -> str:
    person = row.people[at]
    if person is None and at in row.gaps:
        return style.say(NOT_NAMED)
    name = _name_in_a_sentence(person, style, among=among) if person else style.say(NOT_KNOWN)
    return f"{name} ({said_place(row.places[at], style.say)})" if row.places else name


def named_line(record: Record, style: Style = PLAIN) -> str:
    """Who is named and not shown."""
    names = style.say.listed(names_of(record.shown("named"), style))
    if not names:
        return ""
    pattern = to_say("named, not shown: {names}") if record.shown() else to_say("names {names}")
    return style.say(pattern, names=names)


def taker_line(record: Record, style: Style = PLAIN) -> str:
    """Who took the picture."""
    names = style.say.listed(names_of(record.shown("photographer"), style))
    return style.say("photograph by {names}", names=names) if names else ""


def date_line(record: Record, style: Style = PLAIN) -> str:
    """The date as told, and behind it what it was read as, if that says something else; '' if none is told.

    Of dates that cannot all be so, each, with who says it.
    """
    return _each(record, "date", lambda view: _date_told(view, style), style.say)


def _each(record: Record, name: str, line: Callable[[StatementView], str], say: Say) -> str:
    """The line of the statement in force; of those that cannot all be so each line, with who says it."""
    conflict = record.disputed(name)
    if conflict is None:
        view = record.first(name)
        return line(view) if view else ""
    speakers: dict[str, list[str]] = {}
    for view in conflict.told:
        speakers.setdefault(line(view), []).append(isolated(view.speaker_in(say)))
    doubt = [say("disputed")] * bool(conflict.hidden)
    return say.either(
        [
            _with_note(words, say.apart([", ".join(dict.fromkeys(names)), *doubt]), say)
            for words, names in speakers.items()
        ]
    )


def _with_note(words: str, note: str, say: Say) -> str:
    """`1932 (Leida)`; `the summer Joe came home (1946; Leida)`: a note in brackets, in those that are there."""
    return f"{say.apart([words[:-1], note])})" if words.endswith(")") else f"{words} ({note})"


def _date_told(view: StatementView, style: Style) -> str:
    words, shown = bare(view.words), date_words(view.date, style)
    if style.is_family and _is_in_another_language(view, style.say) and not set(_plain(shown)) <= set(_plain(words)):
        return f"{words} ({shown})"
    limit = left_out(view.date.edtf.text) if view.date and view.date.edtf else ""
    ways = (shown, date_words(DateReading.from_edtf(limit), style)) if limit else (shown,)
    return words if any(_says(words, way) for way in ways) else f"{words} ({shown})"


def worked_out_line(record: Record, style: Style = PLAIN) -> str:
    """The date that follows where none is told that is one; '' for none. Its reasons are for archives."""
    dated = record.worked_out
    if dated is None:
        return ""
    return style.say("date as worked out from what is told: [{date}]", date=date_words(dated.reading, style))


def date_words(date: DateReading | None, style: Style = PLAIN) -> str:
    """A date as the family writes it, or by DACS where the style is of no family; '' for none."""
    if date is None or date.edtf is None:
        return ""
    return family_display(date.edtf, style.dates) if style.dates else date.display


def _is_in_another_language(view: StatementView, say: Say) -> bool:
    """Whether words are told in another language than that of our own words; figures alone are in none."""
    told, ours = (tag.partition("-")[0].lower() for tag in (view.language, say.language))
    return bool(told) and told != ours and any(map(str.isalpha, view.words))


_NUMBER = re.compile(r"\d+")


def _says(words: str, shown: str) -> bool:
    """Whether told words say a date already, in whatever language: its day and its year stand in them. In numbers
    alone, day and month may be meant the other way round: then what they were read as says which."""
    numbers_told, numbers_meant = _NUMBER.findall(words), set(_NUMBER.findall(shown))
    if not numbers_meant <= set(numbers_told):
        return False
    numeric = not any(map(str.isalpha, words)) and len(numbers_told) == 3 and len(numbers_meant) == 2
    return not (numeric and sum(len(number) < 3 and 1 <= int(number) <= 12 for number in numbers_told) == 2)


def _place_words(record: Record, style: Style) -> str:
    """The place in few words; of places that cannot all be so each, without who says it."""
    places = style.say.either(list(dict.fromkeys(isolated(bare(view.words)) for view in record.rests_on("place"))))
    conflict = record.disputed("place")
    return f"{places} ({style.say('disputed')})" if conflict and conflict.hidden else places


def place_line(record: Record, style: Style = PLAIN) -> str:
    """The place as told, and behind it the place of today, if that has another name; '' if none is told.

    Of places that cannot all be so, each, with who says it.
    """
    return _each(record, "place", lambda view: _place_told(view, style.say), style.say)


def _place_told(view: StatementView, say: Say) -> str:
    words = bare(view.words)
    place = view.place.best if view.place else None
    if place is None or not place.city or _within(_plain(place.city), _plain(words)):
        return words
    now = ", ".join(part for part in (place.city, say.country(place.country_code, place.country)) if part)
    return f"{words} ({say('now {place}', place=now)})"


def where_when(record: Record, style: Style = PLAIN) -> str:
    """Place and date, with a comma between."""
    return ", ".join(part for part in (isolated(place_line(record, style)), date_line(record, style)) if part)


def occasion_line(record: Record) -> str:
    """The occasion; '' if the title says it already."""
    occasion = bare(record.words("occasion"))
    in_title = occasion and _within(_plain(occasion), _plain(title(record)))
    return "" if in_title else occasion


_SIDES = {"recto": to_say("as written on the front"), "verso": to_say("as written on the back")}
_BOTH_SIDES = to_say("as written on the front and the back")


def source_line(record: Record, style: Style = PLAIN) -> str:
    """Who says so: the sources of the date, place, occasion, people, stories and own questions, each once."""
    rests_on = [view for name in ("date", "place", "occasion") for view in record.rests_on(name)]
    rests_on += [*record.all("story"), *own_views(record), *(person.told for person in record.people)]
    say = style.say
    told = [view for view in rests_on if view.source.said is Said.NARRATOR]
    tellers = dict.fromkeys(isolated(view.said_by) or say("a narrator") for view in told)
    clauses = [say("told by {names}", names=say.listed(list(tellers)))] if tellers else []
    written = dict.fromkeys(filter(None, (_written(view, say) for view in rests_on)))
    sides = [say(side) for side in _SIDES.values()]
    if all(side in written for side in sides):
        written = {say(_BOTH_SIDES): None} | {words: None for words in written if words not in sides}
    return say.apart([*clauses, *written])


def _written(view: StatementView, say: Say) -> str:
    if view.source.said is Said.INSCRIPTION:
        return say(_SIDES.get(view.source.ref, to_say("as written on it")))
    is_named = view.source.said is Said.DOCUMENT and view.source.ref
    return say("after {document}", document=isolated(bare(view.source.ref))) if is_named else ""


def inscription_line(record: Record, style: Style = PLAIN) -> str:
    """What is written on the item, in quotation marks; '' if nothing is."""
    written = [quoted(view.words, style.say) for view in record.all("inscription")]
    return style.say("Written on it: {words}", words=style.say.apart(written)) if written else ""


def quoted(words: str, say: Say) -> str:
    """The words on one line, in the quotation marks of the language."""
    return say("“{words}”", words=one_line(words))


def stories_line(record: Record) -> str:
    """The stories, one after the other, each ending as a sentence does."""
    return " ".join(sentence(view.words) for view in record.all("story"))


def own_views(record: Record) -> list[StatementView]:
    """The answers in force to the collection's own questions, in the order in which these were first answered."""
    return [views[0] for name, views in record.told.items() if name.startswith(OWN)]


def own_words(view: StatementView) -> str:
    """`Clothes: her Sunday best`: an answer to one of the collection's own questions, with what it is about."""
    return f"{FIELDS[view.field].label}: {bare(view.words)}"


def own_lines(record: Record) -> list[str]:
    """The answers in force to the collection's own questions, each as a sentence."""
    return [sentence(own_words(view)) for view in own_views(record)]


_PARTS: dict[str, Callable[[Record, Style], str]] = {
    "occasion": lambda record, style: occasion_line(record),
    "who": who_line,
    "named": named_line,
    "taker": taker_line,
    "where_when": where_when,
    "stories": lambda record, style: stories_line(record),
    "own": lambda record, style: " ".join(own_lines(record)),
    "source": source_line,
}


def lines(record: Record, length: str, style: Style = PLAIN) -> dict[str, str]:
    """Part -> its sentence, for the parts of this length in order; a part with nothing to say is left out."""
    sentences = ((name, sentence(_PARTS[name](record, style))) for name in LENGTHS[length])
    return {name: words for name, words in sentences if words}


def caption(record: Record, length: str = "full", style: Style = PLAIN) -> str:
    """The caption of this length (a key of LENGTHS) as running text."""
    return " ".join(lines(record, length, style).values())


# sentences


def one_line(words: str) -> str:
    """The words on one line, with single blanks."""
    return " ".join(words.split())


def bare(words: str) -> str:
    """The words on one line without the full stop at their end, so that they can stand inside a sentence.

    A stop that belongs to a short form (`N.Z.`, `Ltd.`) or to `...` stays.
    """
    line = one_line(words).rstrip(",;: ")
    last = line.rsplit(" ", 1)[-1]
    ends = line.endswith(".") and not line.endswith("..") and "." not in last[:-1] and len(last) > 4
    return line[:-1] if ends else line


def capital(words: str) -> str:
    """The words with a capital as first letter."""
    return words[:1].upper() + words[1:]


def sentence(words: str) -> str:
    """The words as a sentence: a capital first, and a full stop unless they end with a mark of their own."""
    line = words.strip()
    if not line:
        return ""
    ended = line[-1] in ".!?…" or (line[-1] in "”\"'’)" and line[-2:-1] in ".!?…")
    return capital(line) if ended else f"{capital(line)}."


def alt_text(record: Record, style: Style = PLAIN) -> str:
    """What the picture shows, for someone who cannot see it: nature, people, occasion, place and date."""
    say, people = style.say, _in_the_picture(record)
    occasion = bare(record.words("occasion"))
    if people:
        shows = capital(_shows(record, people, say))
    elif subject := bare(record.words("title")) or occasion:
        shows = say("{nature}: {subject}", nature=capital(nature_of(record, say)), subject=subject)
    else:
        shows = say("{nature}, not yet described", nature=capital(nature_of(record, say)))
    also = occasion if people and not _names_someone(occasion, record.shown()) else ""
    view = record.first("date")
    when = (date_words(view.date, style) or view.words) if view else ""
    return sentence(_joined(shows, also, _place_words(record, style), when))
