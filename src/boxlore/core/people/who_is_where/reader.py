"""Who is in a picture, and where: “Back row, left to right: Anna, my sister, and Tom; the girl in front is Ruth”, read.

Theory of operation
===================

The problem. People are told in one breath: several names, rows, sides, numbers, kin words and remarks, in any order
and in many languages. What is read must never make a person of a word that is none, and must lose nothing.

The idea. The text becomes elements (`tokens`): rows, directions, sides, numbers, marks, notes in brackets, the
small words between names, and plain words. A reader with a little state walks over them:

    text   = part {end part}                       ; ends: “;”, “.”, a new line
    part   = {place} [":"] item {("," / "and" / "with") item}
    place  = row / direction / side / number / ordinal ["from the left"]
    item   = [number] words [note] {place}

- A row stands until the next row, a direction until the next direction, a side or number for one item.
- If the first place of a part stands behind words (“Anna on the left, Ruth on the right”), all its places belong to
  the words before them; else to the words behind them.
- Three grammars of their own mark what they know before anything is walked over, each wholly or not at all: somebody
  who cannot be seen (`unseen`), somebody described and named behind a verb (`described`), and somebody told by whom
  they stand beside (`beside`).
- Plain words are gathered until an item ends, and are then a phrase (`phrases`, one production each): a remark on the
  name before it (“Anna, my sister, …”), the rest of a name, a group (`groups`), or somebody (`somebody`): a name;
  kin and a name (“my sister Anna”: Anna, noted as “my sister”); a description of one person; somebody unknown. Words
  of which two readings are as likely, and anything else, ask, and make nobody.

- Somebody described and then named is one person (“the girl in front is Ruth”: Ruth, noted as “the girl”).

- When all is read, whoever is told with confidence is looked at once more as a whole (`told_surely`): words that no one
  person can be called ask.

What always holds: every plain word ends in the words or the note of some person told, except those that only join
(`small_words_table`); a position below 0 counts from the right, and only where nothing tells how many stand there.

An example. “Anna, my sister, is third from the left” is three items, `Anna`, `my sister` and a place: the second is a
remark on the first, and the place belongs to the words before it. One person, at position 3.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise

from boxlore.core.people.names.reader import NOTHING_KNOWN, read_name
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where.all_accounted import ask_of_unaccounted
from boxlore.core.people.who_is_where.apposition import joined_to_names
from boxlore.core.people.who_is_where.beside import BESIDE_SIDES, side_of, with_beside
from boxlore.core.people.who_is_where.blessings import with_blessings
from boxlore.core.people.who_is_where.completed_names import complete_names
from boxlore.core.people.who_is_where.corrections import with_corrections
from boxlore.core.people.who_is_where.counted_unknown import MOST_UNKNOWN
from boxlore.core.people.who_is_where.denied import with_denied
from boxlore.core.people.who_is_where.described import with_described, with_verbs_of_doubt
from boxlore.core.people.who_is_where.frames import with_frames
from boxlore.core.people.who_is_where.groups import family_of_several, titled_family
from boxlore.core.people.who_is_where.item_words import (
    before_place,
    begins_person,
    between,
    is_description,
    is_of_several,
)
from boxlore.core.people.who_is_where.items import noted
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.people.who_is_where.life_years import with_life_years
from boxlore.core.people.who_is_where.list_heads import head_and_list
from boxlore.core.people.who_is_where.listed_places import with_listed_places
from boxlore.core.people.who_is_where.nameless import ask_of_kin_or_names, mark_nameless, mark_parents
from boxlore.core.people.who_is_where.nobody_seen import knows_nobody, tells_of_nobody
from boxlore.core.people.who_is_where.order import Item, in_order
from boxlore.core.people.who_is_where.phrases import ask_of_unseen, end_item
from boxlore.core.people.who_is_where.places_of_things import with_places_of_things
from boxlore.core.people.who_is_where.position_words_table import HOLDING, NOUNS, ROW_CLASSES
from boxlore.core.people.who_is_where.positions import COLON, ask_of_joined, ask_of_own_sides, place_behind, put_place
from boxlore.core.people.who_is_where.pronouns import with_pronoun_remarks
from boxlore.core.people.who_is_where.quotation_marks import with_nicknames_whole, without_marks_around
from boxlore.core.people.who_is_where.reader_state import Ahead, Reader
from boxlore.core.people.who_is_where.remarks import begins_remark, is_absent, surely_named
from boxlore.core.people.who_is_where.shared_family_name import share_family
from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    BESIDE_BEHIND,
    BESIDE_THINGS,
    CARDINALS,
    DEDICATED,
    EVERYONE,
    OF_AGES,
    OF_SEVERAL,
    RELATIVES,
    TAKE_A_CASE,
    THE_OTHER_WAY,
    WITH_LOVE,
)
from boxlore.core.people.who_is_where.somebody import names_somebody
from boxlore.core.people.who_is_where.starting_points import with_starting_points
from boxlore.core.people.who_is_where.surely_a_name import ask_of_doubtful, told_in_remarks
from boxlore.core.people.who_is_where.takers import without_takers
from boxlore.core.people.who_is_where.tokens import PLACES, Element, elements_of, phrases_of, plain_of
from boxlore.core.people.who_is_where.told_last import describes_last, describes_somebody
from boxlore.core.people.who_is_where.told_once import told_once
from boxlore.core.people.who_is_where.told_surely import ask_of_what_is_no_person
from boxlore.core.people.who_is_where.turned_names import without_commas_in_names
from boxlore.core.people.who_is_where.unseen import with_unseen
from boxlore.core.people.who_is_where.what_is_not_known import tells_nothing_known, without_what_is_not_known
from boxlore.core.people.who_is_where.whose_kin import mark_whose_kin, with_large_genitives
from boxlore.core.people.who_is_where.word_senses import kind_here
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold


@dataclass(frozen=True, slots=True)
class WhoTold:
    """Everyone a text names, in the order told, by row and from the left; `placed` says whether it tells any place."""

    people: tuple[Placed, ...] = ()
    placed: bool = False
    takers: tuple[Placed, ...] = ()
    """Those who took the picture, and are not in it."""
    too: tuple[Placed, ...] = ()
    """Those named only in a remark on somebody (“Anna holding Dot”): each asks whether it is in the picture too."""


@lru_cache(maxsize=4096)
def read_who(text: str, known: KnownNames = NOTHING_KNOWN) -> WhoTold:
    """Everyone a text names with their places. Any text gives what can be made of it."""
    reader = Reader(text, known)
    reader.text = text.strip()
    if knows_nobody(elements_of(reader.text)):
        return WhoTold((Placed("", 0),))
    if tells_of_nobody(elements_of(reader.text)):
        asks = f"Is anybody in the picture: “{reader.text}”?"
        return WhoTold((Placed(reader.text, 0, asks=asks, is_person=False),))
    told = with_large_genitives(elements_of(reader.text))
    told = with_corrections(with_life_years(told, reader.text))
    elements = without_commas_in_names(told, known)
    elements = with_blessings(with_nicknames_whole(without_marks_around(elements)), reader.text)
    elements = with_pronoun_remarks(with_frames(elements, reader.text), reader.text)
    takers = without_takers(elements, reader.text, known)
    elements = takers.left
    asked, elements = head_and_list(with_listed_places(elements), known)
    elements = with_denied(with_verbs_of_doubt(elements), reader.text)
    elements = with_described(without_what_is_not_known(with_unseen(elements)), known)
    elements = with_places_of_things(elements, reader.text)
    elements = with_beside(with_starting_points(elements, reader.text), reader.text)
    numbers = [element.inside[0].value for element in elements if _is_number(element)]
    reader.brackets_count = len(numbers) > 1 and sorted(numbers) == list(range(1, len(numbers) + 1))
    reader.brackets_lead = bool(elements) and _is_number(elements[0])
    for at, element in enumerate(elements):
        _take(reader, element, elements[at + 1 :])
    end_item(reader)
    mark_whose_kin(reader.items)
    items = [] if _tells_of_nobody(reader.items) else told_once(joined_to_names(reader.items))
    items += [Item(doubted, "", width=0) for doubted in takers.doubted]
    items = items or ([] if takers.people else _nobody_told(reader.text))
    if asked:
        items.insert(0, _of_a_head(between(asked, reader.text)))
    _ask_of_dedication(items, elements)
    for before, item in pairwise(items):
        if item.person.asks.startswith("Is it “"):  # `Dot, or her sister Ivy`
            before.person = replace(before.person, unsure=True)
    ask_of_doubtful(items, known)
    ask_of_unaccounted(items, known, listed=reader.placed)
    share_family(items, known)
    complete_names(items, known)
    ask_of_what_is_no_person(items, known)
    mark_nameless(items)
    mark_parents(items)
    ask_of_kin_or_names(items, known)
    ask_of_own_sides(items)
    people = tuple(in_order(items, reader.rtl_groups, reader.totals, directed=reader.is_directed))
    if _turns_midway(elements):
        people = tuple(replace(person, position=0) for person in people)
    return WhoTold(people, reader.placed, tuple(takers.people), tuple(told_in_remarks(items, known)))


def _turns_midway(elements: Sequence[Element]) -> bool:
    """Whether it is told that a row goes the other way, or two directions before anybody: nobody's place is sure."""
    if any(element.plain in THE_OTHER_WAY for element in elements):
        return True
    told = [element for element in elements if element.kind in ("ltr", "rtl") or element.is_large]
    pairs = pairwise(element.kind for element in told[bool(told) and told[0].start == 0 and told[0].kind == "word" :])
    return any({first, second} == {"ltr", "rtl"} for first, second in pairs)


def _ask_of_dedication(items: Sequence[Item], elements: Sequence[Element]) -> None:
    """To whom a picture is dedicated need not be in it, nor who gave it: `De Carmen para Rosario`."""
    first = fold(elements[0].text) if elements else ""
    to_whom = first in DEDICATED and any(piece.plain in WITH_LOVE for piece in elements)
    led = {before.plain for before, piece in pairwise(elements[1:]) if piece.is_large and not before.is_large}
    by_whom = first in WITH_LOVE and elements[1:2] != [] and elements[1].is_large and not led.isdisjoint(DEDICATED)
    for item in items if by_whom else items[: int(to_whom)]:
        if item.is_name and item.person.is_person:
            question = f"Is “{item.person.words}” in the picture?"
            item.person, item.is_name = replace(item.person, asks=question, is_person=False), False


def _tells_of_nobody(items: Sequence[Item]) -> bool:
    """`I don't remember any of them`: that nobody is known, which makes no person."""
    notes = [item.person.note.split() if not item.person.words else [] for item in items]
    return bool(notes) and all(any(fold(word) in OF_SEVERAL for word in note) for note in notes)


def _nobody_told(text: str) -> list[Item]:
    """All the words as one question, where nobody was made of them: so that they stay, and are no person's name."""
    if tells_nothing_known(elements_of(text)):
        return [Item(Placed("", 0), "")]  # `No idea who these people are`
    asks = f"Who is meant by “{text}”?"
    return [Item(Placed(text, 0, asks=asks, is_person=False), "")] if any(map(str.isalpha, text)) else []


def _of_a_head(told: str) -> Item:
    """What heads a list and names somebody, as a question: `Wedding of Ruth Gower and Tom Pell`."""
    return Item(Placed(told, 0, asks=f"Is somebody of “{told}” in the picture?", is_person=False), "", width=0)


def _is_number(element: Element) -> bool:
    return element.kind == "note" and [piece.kind for piece in element.inside] == ["number"]


def forget_names() -> None:
    """Let go of every name that was read: a strike calls it, for they are told words."""
    read_who.cache_clear()
    read_name.cache_clear()
    token_of.cache_clear()
    phrases_of.cache_clear()
    plain_of.cache_clear()
    own_relation.cache_clear()


def one_by_one(text: str, known: KnownNames = NOTHING_KNOWN) -> list[str]:
    """The words of each person a text names, with what is noted of them in brackets; those not known are left out."""
    people = [person for person in read_who(text, known).people if person.words]
    return [f"{person.words} ({person.note})" if person.note else person.words for person in people]


def names_nobody(text: str) -> bool:
    """Whether a text is surely no name and nobody's description: `she was in hospital that day`, `the picnic at
    Brighton`, or of somebody who is not in it. It is asked who is meant; until then no title has it."""
    who = read_who(text)
    people = who.people
    if who.takers and not people:
        return True  # `Ivy Pratt took the picture`
    words = [element for element in elements_of(text) if element.kind != "end"]
    if len(words) == 1 and words[0].kind == "unknown" and words[0].phrase.startswith(("nobody", "no one")):
        return True  # `nobody I know`
    notes = [element.inside for element in words if element.kind == "note"]
    if any(is_absent(inside) and not any(piece.kind in _IN_DOUBT for piece in inside) for inside in notes):
        return True  # `Tom (missing)`
    asks = bool(people) and not any(person.is_person for person in people)
    return asks and not is_of_several(words) and not (len(people) == 1 and _is_one_word(people[0].words))


def tells_a_name(text: str) -> bool:
    """Whether somebody is told by a name, or by what stands for one, and not only by what they are (`the curate`)."""
    people = read_who(text).people
    return not people or any(person.words and not person.is_nameless for person in people)


def _is_one_word(words: str) -> bool:
    """Whether a word alone may be somebody: `Zorb`, of whom nothing is known."""
    return len(words.split()) == 1 and words[:1].isupper()


_IN_DOUBT = ("unsure", "unknown")


# One element


def _take(reader: Reader, element: Element, further: Sequence[Element]) -> None:
    kind = kind_here(reader, element, further)
    _take_as(reader, element, kind, further)
    reader.mark_since = reader.mark_since or kind in _MARKS
    reader.previous = "equals" if element.text == "=" else kind


_MARKS = (
    "comma",
    "end",
    "and",
    "with",
    "colon",
    "verb",
    "dash",
    "number",
    "note",
    "takes back",
    "beside head",
    "beside is",
)
"""Kinds of elements that part two people, or join them."""


def _take_as(reader: Reader, element: Element, kind: str, further: Sequence[Element]) -> None:
    if reader.aside and kind in ("front", "back") and element.phrase in BESIDE_THINGS and _ends_here(further):
        reader.aside.append(element)  # `Joyce with a poster of Garbo behind`
    elif kind in PLACES or kind in ("position", "from the right"):
        put_place(reader, replace(element, kind=kind), further)
    elif kind == "position before":
        _position_before(reader, element)
    elif kind == "number":
        _number(reader, element, further)
    elif kind in ("comma", "and", "with", "end"):
        _end(reader, element, kind, further)
    elif kind == "note":
        _note(reader, element, further)
    elif kind == "where":
        _where(reader, element, further)
    elif kind == "nextto":
        _next_to(reader, element, further)
    elif kind == "verb":
        _verb(reader, further)
    elif kind == "colon":
        _colon(reader, further)
    elif kind == "takes back":
        end_item(reader)
        _takes_back(reader)
    elif kind == "filler":
        _takes_back(reader)
    elif kind == "holder":
        reader.items[-1].is_held, reader.ahead.is_held = True, False
    elif kind == "unseen":
        ask_of_unseen(reader, element)
    elif kind == "leads in":
        reader.words, reader.notes = [], []  # `Ethel wrote that this is`: the answer stays whole beside whom it names
    elif element.text == "?" and not reader.words and reader.previous == "note" and not further and reader.items:
        reader.items[-1].person = replace(reader.items[-1].person, unsure=True)  # `Tom (left) and Jack (right)?`
    elif kind == "unknown" and not reader.words and reader.previous in (*PLACES, "nextto") and describes_last(reader):
        reader.identifies = True  # `the man on the right unknown`
        reader.words.append(element)
    elif kind == "beside":
        reader.aside.append(element)
    elif kind == "beside head":
        end_item(reader)
        reader.ahead, reader.whom, reader.beside_side = Ahead(), element.text, side_of(element)
        reader.in_case = element.phrase in TAKE_A_CASE
        reader.placed = reader.placed or reader.beside_side != ""
    elif kind == "beside is":
        end_item(reader)
        reader.ahead.side, reader.beside_side, reader.joined, reader.in_case = reader.beside_side, "", "beside", False
    elif reader.aside:
        reader.aside.append(element)
    elif kind not in ("dash", "hash", "of"):
        as_told = {"my": "my", "kin": "word"}.get(kind, element.kind)
        reader.words.append(replace(element, kind=as_told))
        titled = len(reader.words) > 1 and reader.words[-2].plain in TITLES and len(reader.words) == _TITLE_AND_GAP
        goes_on = titled and bool(further) and further[0].kind == "word" and further[0].is_large  # `Miss ? Tamm`
        if element.text == "?" and len(reader.words) > 1 and further and not goes_on:
            end_item(reader)


_TITLE_AND_GAP = 2


def _ends_here(further: Sequence[Element]) -> bool:
    return not further or further[0].kind in ("comma", "end", "and")


_SENTENCE_ENDS = (".", "!", ";")


def _position_before(reader: Reader, element: Element) -> None:
    """The first of two places told behind two people: `Edna and Percy, third and fourth from the left`."""
    end_item(reader)
    if len(reader.items) > reader.part_begins + 1:
        reader.items[-2].position, reader.behind, reader.placed = element.value, True, True
    else:
        reader.words.append(replace(element, kind="word"))


def _end(reader: Reader, element: Element, kind: str, further: Sequence[Element]) -> None:
    """A mark or a small word that ends an item; a point, a semicolon and a new line end the part too."""
    end_item(reader, before=kind, following=further)
    if element.kind in BESIDE_SIDES:  # `Dot is to the left of Nora`
        reader.items[-1].side, reader.placed = element.kind, True
    reader.in_case = element.phrase in TAKE_A_CASE or (reader.in_case and element.kind == "and")
    after_comma = kind == "and" and reader.previous == "comma"
    reader.after_posture = False
    if element.phrase in HOLDING:
        reader.ahead.is_held = True
    goes_on = reader.joined if kind == "comma" and reader.previous == "and" else ""  # `and, kneeling, his son`
    reader.joined = "too" if after_comma else kind if kind in ("and", "with") else goes_on
    if element.kind == "end":
        reader.behind, reader.ahead, reader.side_stays, reader.family_stays = None, Ahead(), "", ""
        reader.part_begins, reader.part_absent = len(reader.items), False
        if element.text in _SENTENCE_ENDS and not reader.row_heads:
            reader.row = ""


def _colon(reader: Reader, further: Sequence[Element]) -> None:
    """A colon behind words that head a list, or describe whoever is named behind it."""
    heads = further and (begins_person(further) or further[0].kind in (*PLACES, "number"))
    if reader.words and heads and _is_header(reader):
        _end_header(reader)
    elif reader.words and reader.joined == "and" and is_description(reader.words) and describes_last(reader):
        end_item(reader)  # `the bride and groom: Anna and Joe`
    elif reader.words and further and begins_person(further) and is_description(reader.words):
        reader.ahead.note = between(reader.words, reader.text)  # `Flower girl: little Anna`
        reader.words = []


def _takes_back(reader: Reader) -> None:
    """`Hector, I mean Horace`: whoever was named before asks."""
    last = reader.items[-1] if len(reader.items) > reader.part_begins else None
    if last is not None and last.is_name and last.person.is_person:
        last.take_back()


def _is_header(reader: Reader) -> bool:
    """Whether the words before a colon only open a list: they name nobody, or are words of which no name is known."""
    if not names_somebody(reader.words, reader.text) or titled_family(reader.words):
        return True
    opens = len(reader.items) == reader.part_begins and len(reader.words) == 1
    if opens and NOUNS.get(reader.words[0].plain) and not token_of(reader.words[0].text).is_given:
        return True  # `Bride: Anna`
    told = between(reader.words, reader.text)
    return not is_description(reader.words) and not surely_named(reader.words, told, reader.known)


def _names_nobody(reader: Reader) -> bool:
    """Whether no word of a head is a name or is somebody: `Three of us on the pier: …`, `Pushing: …`."""
    words = reader.words
    if len(words) == 1 and NOUNS.get(words[0].plain) == "one":
        return True
    counted = CARDINALS.keys() - EVERYONE - {"to"}  # two of Danish: `oldest to youngest`
    counts = any(word.plain in counted for word in words[1:])
    if counts or is_absent(words) or is_description(words) or is_of_several(words):
        return False
    is_called = token_of(words[0].text).is_given or reader.known.is_family(words[0].plain)
    is_doing = words[0].plain.endswith("ing") and words[0].plain in english_words()  # `Pushing: Nell`
    return not any(word.is_large and word.kind == "word" for word in words[1:]) and not (
        is_called or (len(words) == 1 and not is_doing)
    )


_ONLY_HEADS = ("everyone", "everybody", "numbers")
"""Words before a colon that say nothing of anybody."""


_PLURAL = re.compile(r"^[^\W\d_]+[^\W\d_aeiousäöü]s$")
"""One word that may be a family as a whole, in English, German and Dutch."""


def _end_header(reader: Reader) -> None:
    """The words that only open a list: they name nobody, and take no place in it."""
    if family_of_several(reader.words):
        end_item(reader, before="colon")
        return
    if len(reader.words) == 1 and reader.words[0].plain in _ONLY_HEADS:
        reader.words = []
        return
    if len(reader.words) == 1 and NOUNS.get(reader.words[0].plain) == "many":
        reader.ahead.note, reader.words = reader.words[0].text, []  # `Bridesmaids: Dot, Dolly`
        return
    if reader.words[0].kind in ROW_CLASSES[3:]:  # `Standing at her side: Ruth`
        reader.row, reader.placed, reader.behind = reader.words[0].kind, True, False
    if reader.last_absent and reader.words[0].plain in RELATIVES and len(reader.items) > reader.part_begins:
        end_item(reader)  # `All but Dad, who took it: Anna`
        return
    says_where = begins_remark(reader.words) and not is_absent(reader.words)
    if says_where or _names_nobody(reader):  # `In the boat: Anna and Tom`
        if says_where and not reader.place_since and reader.words[0].kind not in ROW_CLASSES:
            reader.row = ""  # `seated: …; on the ground: …`
        last = (*reader.words, *reader.aside)[-1]  # `Boy with the hoop: Tom`
        reader.ahead.add_note(reader.text[reader.words[0].start : last.end])
        reader.words, reader.aside = [], []
        return
    if is_absent(reader.words) and not any(word.is_large for word in reader.words[1:]):  # `Missing from it: Tom`
        reader.ahead.note = between(reader.words, reader.text)
        reader.words, reader.part_absent = [], True
        return
    already, opens = len(reader.items), not reader.place_since
    end_item(reader, before="colon")
    if opens:
        reader.row, reader.row_heads = "", False  # `front: …. Inset: …`
    for item in reader.items[already:]:
        item.width, item.is_name, item.row = 0, False, reader.row
        asks = item.person.asks or f"Is “{item.person.words}” someone in the picture?"
        if _PLURAL.search(item.person.words) and item.person.is_person:  # `Kesslers: Emil, Rosa`
            asks = f"Who are “{item.person.words}”: {item.person.words[:-1]}; {item.person.words}?"
        item.person = replace(item.person, is_person=False, asks=asks)


def _verb(reader: Reader, further: Sequence[Element]) -> None:
    """`is` between somebody described and a name: `the girl in front is Ruth`."""
    behind = next((at for at, piece in enumerate(further) if piece.kind not in (*PLACES, "comma")), len(further))
    if reader.words and is_of_several(reader.words) and begins_person(further[behind:]):
        reader.ahead.note = between([*reader.words, *reader.aside], reader.text)  # `the others are Ruth and Anna`
        reader.words, reader.aside = [], []
        return
    is_last_several = len(reader.items) > reader.part_begins and reader.items[-1].is_several
    if not reader.words and is_last_several and not reader.ahead.number:
        several = reader.items.pop()  # `Two girls at the front are Anna and Ruth`
        reader.row, reader.side_stays, reader.behind = several.row or reader.row, several.side, False
        reader.ahead.note, reader.ahead.side = several.person.words, several.side
        return
    if reader.aside and not reader.words and further and begins_person(further):
        reader.ahead.note = between(reader.aside, reader.text)  # `Second from the left with the hat is Walter`
        reader.aside = []
    with_whom = reader.joined == "with" and describes_last(reader)
    if further and begins_person(further) and (describes_somebody(reader) or (with_whom and reader.words)):
        told_with = reader.text[: reader.words[0].start].split()[-1] if with_whom and reader.words else ""
        end_item(reader)
        if with_whom and len(reader.items) > 1:  # `the lady with the baby is Ruth`
            whom = reader.items.pop().person.words
            reader.items[-1].person = noted(reader.items[-1].person, f"{told_with} {whom}")
        reader.identifies = bool(reader.items)


def _where(reader: Reader, element: Element, further: Sequence[Element]) -> None:
    """`in the back seat`, said of the words before it or of whoever is told behind it; it is no row."""
    told, reader.words = reader.words, before_place(reader.words)
    if led := told[len(reader.words) :]:  # `on the` of `on the back step`
        element = replace(element, text=reader.text[led[0].start : element.end], start=led[0].start)
    if reader.words or reader.aside:
        reader.aside.append(element)
    elif len(reader.items) > reader.part_begins and (not further or further[0].kind in ("end", "comma", "and")):
        reader.items[-1].person = noted(reader.items[-1].person, element.text)  # `Ida, left of the door; …`
    else:
        reader.ahead.add_note(element.text)
        reader.row, reader.place_since = "", True


def _next_to(reader: Reader, element: Element, further: Sequence[Element]) -> None:
    """`next to her`, said of the words before it or behind it: on which side is not told, so that it is a note."""
    reader.words = before_place(reader.words)
    follows = any(following.kind == "word" for following in further[:3])
    if reader.words and element.phrase in BESIDE_BEHIND and follows and not reader.joined:
        _beside_whom(reader, element)
        return
    describes = is_description(reader.words) and bool(further) and further[0].is_large and begins_person(further)
    is_behind = bool(reader.words)
    if is_behind:
        end_item(reader)
    ends = not further or (further[0].kind == "end" and reader.previous == "comma")
    if ends and not is_behind and len(reader.items) > reader.part_begins:
        reader.items[-1].person, reader.items[-1].is_beside = noted(reader.items[-1].person, element.text), True
        return  # `Hetty, beside her; and Father`
    if is_behind and reader.items:  # none where the words only lead to it: `and beside her Greta`
        reader.items[-1].person = noted(reader.items[-1].person, element.text)
        reader.items[-1].is_beside, reader.identifies = True, describes  # `best man on his right Jim`
    else:
        reader.ahead.note, reader.ahead.is_beside, reader.place_since = element.text, True, True


def _beside_whom(reader: Reader, element: Element) -> None:
    """`Juhani kõrval seisab Aino`: a name in a form that hides it, which asks, and has no place."""
    told = reader.text[reader.words[0].start : element.end]
    person = Placed(told, 0, asks=f"Is “{told}” someone in the picture?", is_person=False)
    reader.items.append(Item(person, "", position=-1, part=reader.part_begins))
    reader.words, reader.joined, reader.behind = [], "", False


def _is_of_many(further: Sequence[Element]) -> bool:
    """Whether a word for several people follows, and no name: `girls`, `lads`."""
    plain = further[0].plain if further and not further[0].is_large else ""
    return NOUNS.get(plain) == "many" or (plain.endswith("s") and NOUNS.get(plain[:-1]) == "one")


def _number(reader: Reader, element: Element, further: Sequence[Element]) -> None:
    """A number before a name begins an item; behind one it is a remark (`Anna, 5`)."""
    following = further[0].kind if further else ""
    numbered = any(item.number for item in reader.items)
    goes_on = any(piece.kind == "number" and piece.value == element.value + 1 for piece in further)
    counts = not (numbered or element.phrase) and (reader.items or (element.value > 1 and not goes_on))
    if not (reader.words or numbered) and element.value > 1 and _is_of_many(further):
        reader.words.append(replace(element, kind="word"))  # `3 girls: Ida, Dot, Una`
        return
    if following == "unknown" and counts:
        reader.words.append(element)  # `Ida, Sven, 2 unknown girls`
        return
    if reader.items and not reader.words and further and further[0].plain in OF_AGES:
        reader.words.append(replace(element, kind="word"))  # `Doreen, 18 months`
        return
    if reader.words and not (numbered or reader.ahead.number):
        reader.words.append(replace(element, kind="word"))
        return
    if reader.previous == "equals" and not reader.words and reader.items and not reader.items[-1].number:
        reader.items[-1].number, reader.placed = element.value, True
        return
    if not reader.words and not numbered and reader.items and following in ("", "comma", "end", "and"):
        reader.words.append(replace(element, kind="word"))
        return
    end_item(reader)
    last = reader.items[-1] if reader.items and element.phrase else None
    if last is not None and last.from_right:  # `nr. 2 fra højre …, nr. 4 …`
        reader.ahead = Ahead(from_right=element.value, right_words=element.text)
    else:
        reader.ahead = Ahead(number=element.value)
    reader.placed = True


def _put_ahead(reader: Reader, places: Sequence[Element]) -> None:
    """Places in brackets with nobody before them, of whoever is told behind them."""
    for place in places:
        put_place(reader, place, (COLON,))


def _is_within_a_name(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """Whether one large word in brackets stands between two of a name, whatever it is elsewhere: `Dot (Tup) Oakes`."""
    is_word = element.text.isalpha() and element.text.istitle() and len(element.text) > 1
    before, behind = reader.words[-1:], further[:1]
    return is_word and all(near and near[0].kind == "word" and near[0].is_large for near in (before, behind))


def _note(reader: Reader, element: Element, further: Sequence[Element]) -> None:
    """A note in brackets is a place, a number, or a remark on the words before it."""
    if _is_within_a_name(reader, element, further):
        reader.notes.append(element)
        return
    counts = _is_number(element) and not reader.brackets_count
    if counts and [word.kind for word in reader.words] == ["unknown"]:
        unknown, reader.words = reader.words, []
        for _ in range(min(element.inside[0].value, MOST_UNKNOWN)):  # `unknown (2)`
            reader.words = list(unknown)
            end_item(reader)
        return
    if _is_number(element) and reader.brackets_count:
        reader.placed = True
        if reader.words and reader.brackets_lead:
            end_item(reader)
        if reader.words:
            end_item(reader)
            reader.items[-1].number = element.inside[0].value
        else:
            reader.ahead = Ahead(number=element.inside[0].value)
        return
    inside = [piece for piece in element.inside if piece.plain not in EVERYONE]
    if len(inside) > 1 and inside[0].plain in ARTICLES and inside[1].kind in ("position", "from the right"):
        inside = inside[1:]  # `Vittorio (il secondo da destra)`
    if [piece.kind for piece in inside] == ["unknown"] and not reader.words:
        reader.words = inside
        return
    places = [piece for piece in inside if piece.kind in (*PLACES, "position", "from the right")]
    in_a_line = reader.group > 0 and not reader.behind
    if in_a_line and reader.words and all(piece.kind in ROW_CLASSES[3:] for piece in inside):
        reader.notes.append(element)  # `Left to right: Ann, Bea (standing), Cora`: she keeps her place in the line
        return
    if places and len(places) == len([piece for piece in inside if piece.kind not in ("comma", "end")]):
        is_ahead = not reader.words and (not reader.items or reader.previous == "and")
        if not is_ahead:
            end_item(reader, before="place")
        if is_ahead or not reader.items:  # `and (behind) Jack`: the words before it only lead to him
            _put_ahead(reader, places)
            return
        reader.behind = True if reader.behind is None else reader.behind
        reader.placed = True
        for place in places:
            says_all = len(inside) < len(element.inside)
            place_behind(reader, place, of_all=says_all, everyone=says_all)
            ask_of_joined(reader, place)
        return
    if [piece.kind for piece in inside] == ["ordinal"] and any(item.position > 0 for item in reader.items):
        end_item(reader)  # `Anna (second from left) and Ruth (fourth)`
        reader.items[-1].position = inside[0].value
        return
    at = next((at for at, piece in enumerate(inside) if piece.kind == "comma"), 0)
    if at and reader.words and all(piece.kind in (*PLACES, "position", "from the right") for piece in inside[:at]):
        behind = element.text[inside[at].end - inside[0].start :].strip()  # `(second from left, in white)`
        reader.notes.append(replace(element, text=behind))
        end_item(reader)
        if not reader.items:  # `and (behind, in white) Jack`
            reader.ahead.add_note(behind)
            _put_ahead(reader, inside[:at])
            return
        reader.behind, reader.placed = True if reader.behind is None else reader.behind, True
        for place in inside[:at]:
            place_behind(reader, place, of_all=False)
        return
    reader.notes.append(element)
