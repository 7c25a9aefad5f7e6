"""A place told of somebody: a row, a direction, a side or a position, of the words before it or of those behind it.

A row stands until the next row, a direction until the next direction, a side or a number for one item (`reader`
tells the theory).
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.item_words import before_place, begins_person, is_of_several
from boxlore.core.people.who_is_where.items import noted
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.phrases import end_item
from boxlore.core.people.who_is_where.reader_state import Reader
from boxlore.core.people.who_is_where.small_words_table import (
    EVERYONE,
    LEADS,
    OF_ANOTHER,
    OF_ONE,
    POSTPOSITIONS,
    PRONOUNS,
    SIDE_OF,
)
from boxlore.core.people.who_is_where.tokens import PLACES, ROW_KINDS, ROW_NAMES, Element
from boxlore.core.people.who_is_where.written_out import AROUND, MIDDLE, Placed
from boxlore.core.statements import fold

COLON = Element("colon", ":", 0, 0)


def put_place(reader: Reader, element: Element, further: Sequence[Element]) -> None:
    """A row, a direction, a side or a position: of the words before it, or of those behind it."""
    element = _as_counted(reader, element)
    following = further[0].kind if further else ""
    before = reader.text[: element.start].rstrip()[-1:]
    if following == "dash" and before in ("-", "–", "—") and element.kind in ROW_KINDS:
        following = "colon"  # `Bess - bottom row - Jim`
    if following == "note" and further[1:2] and further[1].kind == "colon":
        following = "colon"  # `Tagarida (vasakult): …`
    reader.placed = True
    reader.is_directed = reader.is_directed or element.kind in (*table.DIRECTIONS, *table.ORDERS)
    if element.kind in table.SIDES and _is_whose_alone(reader):
        _whose_alone(reader)
    only_leads = bool(reader.words)
    everyone = any(word.plain in EVERYONE for word in reader.words)
    reader.words = before_place(reader.words)
    if all(word.plain in LEADS for word in reader.words):
        reader.words = []  # `but the` | fourth
    opens = not reader.items and element.kind in (*table.DIRECTIONS, *table.ORDERS)
    if opens and reader.words and not any(word.is_large for word in reader.words[1:]) and not _is_name(reader):
        reader.ahead.note = reader.text[reader.words[0].start : reader.words[-1].end]  # `Round the table clockwise: …`
        reader.words = []
    heads = len(reader.items) == reader.part_begins + 1 and not reader.words and element.kind in table.DIRECTIONS
    if heads and reader.items[-1].is_several and not reader.items[-1].person.is_person:
        reader.ahead.add_note(reader.items.pop().person.words)  # `Children, from the right: Dot, Ern`
    if following == "colon" and reader.words and is_of_several(reader.words):
        reader.ahead.add_note(
            reader.text[reader.words[0].start : reader.words[-1].end]
        )  # `Kids at front: Shane, Kylie`
        reader.words = []
    if reader.words and reader.after_posture and element.phrase in POSTPOSITIONS:
        _behind_whom(reader, element)
        return
    only_leads = only_leads and not reader.words
    told_before = bool(reader.words) or len(reader.items) > reader.part_begins
    told_before = told_before and (bool(reader.words) or reader.previous != "colon")  # `Group of three: back Anna`
    apart = not reader.words and (only_leads or reader.previous in ("comma", "and"))
    opens_anew = apart and begins_person(_behind_verbs(further, comma_too=reader.joined != ""))
    opens_anew = opens_anew or (apart and reader.behind is None and _is_named_by_kin(further))
    if told_before and _stands_behind_her(reader, further):
        end_item(reader)
        place_behind(reader, element, of_all=False)
        return
    if reader.behind is None:
        reader.behind = told_before and following != "colon" and not opens_anew
    elif following == "colon":
        reader.behind = False
    if reader.words:
        end_item(reader)
    if reader.behind and len(reader.items) > reader.part_begins and not (reader.place_since or opens_anew):
        of_one = fold(reader.text[: element.start].rsplit(maxsplit=1)[-1]) in _IS_OF_ONE if element.start else False
        of_all = element.plain == element.phrase and element.phrase not in OF_ONE and not of_one
        place_behind(reader, element, of_all=of_all, everyone=everyone)
        reader.after_posture = element.kind in table.ROW_CLASSES[3:]
    else:
        _place_ahead(reader, element, following)


_IS_OF_ONE = frozenset("is was ist war est era es esta e er var ar zit staat jest je yra ir".split())
"""`is` before a posture, which is told of one: `Joe … and Ruth is kneeling`."""


def _as_counted(reader: Reader, element: Element) -> Element:
    """`in front of her`, told of somebody in a row that is counted (`third row`): the row before that one."""
    row = reader.items[-1].row if reader.items else ""
    is_whose = element.kind in _STEPS and " " in element.text and element.plain.endswith(PRONOUNS)
    if not is_whose or row not in _COUNTED[1:]:
        return element
    return replace(element, kind=(*_COUNTED, "back")[_COUNTED.index(row) + _STEPS[element.kind]])


_COUNTED = tuple(ROW_NAMES.values())
_STEPS = {"front": -1, "back": 1}


def _is_named_by_kin(further: Sequence[Element]) -> bool:
    """Whether words follow up to the next mark, the last of which is a name and the one before it kin: `pruudi ema
    Liine`."""
    end = next((at for at, piece in enumerate(further) if piece.kind not in ("word", "my")), len(further))
    told = further[:end]
    is_named = len(told) > 2 and told[-1].is_large and bool(relation(told[-2]))
    return is_named and not told[0].plain.endswith("ing")


def _behind_verbs(further: Sequence[Element], *, comma_too: bool) -> Sequence[Element]:
    """What stands behind `is` or a posture, of whom the place is told (`in front sits Lotte`); behind a comma too where
    the place itself stands between two (`and, kneeling, his son`)."""
    leads = (*_LEAD, "comma") if comma_too else _LEAD
    return further[next((at for at, piece in enumerate(further) if piece.kind not in leads), len(further)) :]


_LEAD = ("verb", *table.ROW_CLASSES[3:])


def _stands_behind_her(reader: Reader, further: Sequence[Element]) -> bool:
    """Whether a place is of the words before it, though those of its part stand before the words: nothing is told
    behind it that it could be of (`Standing are Juhan and Karl, with Mari seated between them`)."""
    ends = next((element.kind for element in further if element.kind not in PLACES), "")
    touches = bool(reader.words) or (reader.previous in PLACES and not reader.place_since)
    return reader.behind is False and touches and ends in ("", "comma", "end", "and")


_ROW_NOUNS = frozenset(phrase for kind, phrase in table.PLACE_PHRASES if kind == "row")


def _is_whose_alone(reader: Reader) -> bool:
    if len(reader.words) != 1 or reader.words[0].kind != "my" or len(reader.items) <= reader.part_begins:
        return False
    told = tokens_of(reader.items[-1].person.words)
    return bool(told) and told[0].text in _WHOSE


_WHOSE = frozenset("his her their my our seine ihre ses leurs sus sua suas suoi loro zijn haar hans hennes".split())


def _whose_alone(reader: Reader) -> None:
    """`his on the right` behind `her parents on the left`: somebody, of whom it is asked who."""
    whose = reader.words[0].text
    asks = f"Who is “{whose}”, where “{reader.items[-1].person.words}” is told?"
    reader.items.append(Item(Placed(whose, 0, asks=asks, is_person=False), reader.row, part=reader.part_begins))
    reader.words, reader.joined, reader.place_since = [], "", False


def _is_name(reader: Reader) -> bool:
    first = reader.words[0]
    alone = len(reader.words) == 1 and not first.plain.endswith("ing")  # `Reading from the left`
    return first.kind != "word" or alone or token_of(first.text).is_given


def _behind_whom(reader: Reader, element: Element) -> None:
    """`Ülo seisab Meeta taga`: the row is Ülo's, and of those joined to him; the other name, told in a form that hides
    it, is noted."""
    item = reader.items[-1]
    begins = len(reader.items) - 1
    while reader.items[begins].joined == "and":
        begins -= 1
    for joined in reader.items[begins:]:
        joined.row, joined.has_place = element.kind, True
    item.person = noted(item.person, reader.text[reader.words[0].start : element.end])
    reader.words, reader.after_posture = [], False


def place_behind(reader: Reader, element: Element, *, of_all: bool = True, everyone: bool = False) -> None:
    """A place of the last item; a row also of those before it that have none, if it is said `of_all`: where `and` joins
    them (`Anna, Ruth and Tom standing`), or the words say `everyone` (`Anna, Ruth, all standing`)."""
    item = reader.items[-1]
    if element.kind in ROW_KINDS:
        joined, following = True, item
        for earlier in reversed(reader.items[reader.part_begins :]):
            inherited = (
                earlier is item and reader.row_heads and earlier.row == reader.row
            )  # `Front row: Amy; Joe behind`
            if (earlier.has_place and not inherited) or (
                earlier is not item and (earlier.side or earlier.position or earlier.from_right)
            ):
                break
            told_apart = earlier is not item and (earlier.person.note or earlier.is_beside) and not following.joined
            if told_apart and not everyone:
                break  # `Mum beside him, me and Stan at the back`
            if not (earlier is item or item.joined in ("and", "too") or everyone):
                _ask_whether_too(earlier, item, element)
                break
            earlier.row, earlier.has_place = element.kind, True
            if not of_all or (joined and earlier.joined == "with"):  # `Anna and Tom, with Pa behind`
                break
            joined, following = joined and earlier.joined == "and", earlier
    elif element.kind in (*table.DIRECTIONS, *table.ORDERS):
        for earlier in reader.items:
            _direct(reader, earlier, element.kind)
    elif element.kind == "position":
        item.position = element.value
    elif element.kind == "from the right":
        item.from_right, item.right_words = element.value, element.text
    elif element.kind == "centre" and item.row in AROUND:
        item.row = MIDDLE
    else:
        item.side, item.side_words = element.kind, element.text
        before = reader.items[-2:-1] if item.joined == "and" else []
        if before and not (before[0].side or before[0].has_place or before[0].position):
            before[0].side, before[0].side_words = element.kind, element.text  # `Bride and groom in the middle`


def _ask_whether_too(earlier: Item, item: Item, element: Element, *, notes: bool = False) -> None:
    """`Dot, Flo in front`: it may be told of both; but not, without `notes`, in `me on Nan's knee, Pop behind`."""
    person = earlier.person
    if earlier.is_held:
        return
    if (notes or not person.note) and not person.asks and person.words:
        asks = f"Does “{element.text}” tell where “{person.words}” is too, or “{item.person.words}” alone?"
        earlier.person = replace(person, asks=asks)


def ask_of_own_sides(items: Sequence[Item]) -> None:
    """`on his left`: the left hand of whoever is meant is on the right of the picture."""
    for item in items:
        told = next((words for words in (item.side_words, *item.person.note.split(", ")) if _is_own_side(words)), "")
        if told and item.person.is_person and not item.person.asks:
            asks = f"Is “{told}” the own side, or that of the picture?"
            item.person = replace(item.person, asks=asks)


def _is_own_side(words: str) -> bool:
    told = fold(words).split()
    if 1 < len(told) < _LONGEST_OWN_SIDE and not _OF_WHOM.isdisjoint(told) and SIDE_OF.isdisjoint(told):
        return any(word.startswith(_SIDES_OF_ONE) for word in told)  # `zu ihrer Rechten`, `tema paremal käel`
    if len(told) == 2 and told[0] in ("po", "her", "his", "my"):
        return told[1].startswith(_OWN_SIDES)  # `po levici`
    return len(told) == 3 and told[1] in OF_ANOTHER | _MY and told[0] in _AT and told[2].startswith(_OWN_SIDES)


_MY = frozenset("my ma mi mia minha mein meiner moej min".split())
_LONGEST_OWN_SIDE = 6
_OF_WHOM = frozenset(
    "ihrer seiner meiner haar zijn mijn tema minu nende hanen minun heidan него нее меня них его ее jej jego mojej "
    "vinas vina manis jos jo mano jeji jeho moji hennes hans hendes min mina tona taku".split()
)
_SIDES_OF_ONE = tuple(
    "recht link parem vasak oikea vasem прав лев praw lew lab kreis desin kair hojre hoyre hoger venstre "
    "vanster matau maui".split()
)
_AT = frozenset("alla a on to at a an zu till til pa op aan po z".split())
_OWN_SIDES = tuple(
    "left right gauche droite izquierda derecha sinistra destra esquerda direita link recht venstre hojre hoyre "
    "vanster hoger lew praw levic pravic".split()
)


def ask_of_joined(reader: Reader, element: Element) -> None:
    """`Sid and Roy (behind)`: a row in brackets may be told of both who are joined."""
    pair = reader.items[-2:]
    if len(pair) == 2 and pair[1].joined == "and" and element.kind in ROW_KINDS and not pair[0].has_place:
        _ask_whether_too(pair[0], pair[1], element, notes=True)


def _direct(reader: Reader, item: Item, direction: str) -> None:
    if direction == "rtl":
        reader.rtl_groups.add(item.group)
    elif direction != "ltr":
        item.row = direction


def _place_ahead(reader: Reader, element: Element, following: str) -> None:
    if element.kind in (*table.DIRECTIONS, *table.ORDERS):
        reader.side_stays = ""  # `Far right: Nora, then going left: Kit`
        reader.backwards = element.kind == "rtl"
        reader.turned_row = reader.row if reader.backwards and reader.row in ROW_KINDS else ""
        if element.kind in table.ORDERS:
            reader.row = element.kind
    elif element.kind == "position":
        reader.ahead.position = element.value
    elif element.kind == "from the right":
        reader.ahead.from_right, reader.ahead.right_words = element.value, element.text
    elif element.kind in table.SIDES:
        reader.ahead.side, reader.ahead.side_words = element.kind, element.text
        if element.kind == "centre" and reader.row in AROUND:
            reader.row, reader.ahead.side, reader.ahead.side_words = MIDDLE, "", ""  # `clockwise: …, in the centre Ida`
        reader.side_stays = element.kind if following == "colon" else ""
        is_row = following == "colon" and not reader.place_since  # but not in `Back row, middle: …`
        if element.kind == "centre" and is_row and reader.row in ("front", "back"):
            reader.row, reader.ahead.side, reader.side_stays = "middle", "", ""  # `Rear: …; centre: …; front: …`
    else:
        goes_on = reader.row_heads and reader.place_since and len(reader.items) == reader.part_begins
        if reader.turned_row and reader.turned_row != element.kind and not goes_on:
            reader.backwards, reader.turned_row = False, ""  # `Back row, right to left: …. Front row: …`
        reader.row, reader.side_stays = element.kind, ""  # `Back row, standing, l to r – Ida; Stan`
        reader.row_heads = (
            goes_on
            or following in ("colon", "dash", *table.DIRECTIONS)
            or not _ROW_NOUNS.isdisjoint(element.plain.split())
        )
    reader.place_since = True
    reader.group += 1
    if reader.backwards:
        reader.rtl_groups.add(reader.group)
