"""Whether a word of a place tells one where it stands: a row, a side, an order or an ordinal (`word_senses`).

`behind`, `back`, `right` and `L.` are words of a place and other words too. One that is weak counts only where it is
told as one (`_TOLD_AS_A_PLACE`): before a colon, another place, somebody; behind a name alone.
"""

import re
from collections.abc import Callable, Sequence

from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.words_table import TITLES
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.before_things import is_before_a_thing
from boxlore.core.people.who_is_where.beside import BESIDE_SIDES
from boxlore.core.people.who_is_where.item_words import before_place, begins_person, is_description, is_my
from boxlore.core.people.who_is_where.kin_words import is_oblique_kin, relation
from boxlore.core.people.who_is_where.reader_state import Reader
from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    BEFORE_WHOM,
    EVERYONE,
    LEADS,
    POSTPOSITIONS,
    SIDE_OF,
)
from boxlore.core.people.who_is_where.surely_a_name import SIDES_BY_THEMSELVES
from boxlore.core.people.who_is_where.tokens import PLACES, ROW_KINDS, ROW_NAMES, Element
from boxlore.core.people.who_is_where.told_last import describes_last
from boxlore.core.statements import fold


def order(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`From the top: …` is an order."""
    if element.kind != "from_back" or element.phrase not in ("from the top", "from top", "down"):
        return ""
    return "top to bottom" if further and further[0].kind == "colon" and not reader.words else ""


def side_or_direction(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`слева`, which is both a side and “from the left”: behind somebody with a side it is a side."""
    if element.kind not in _FROM_A_SIDE or not any(item.side for item in reader.items[reader.part_begins :]):
        return ""
    side = _FROM_A_SIDE[element.kind]
    return side if (side, element.phrase) in table.PLACE_PHRASES else ""


_FROM_A_SIDE = {"ltr": "left", "rtl": "right"}


def own_side(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`Her left: Idris`: a side of somebody told before, which heads whoever stands there; `at his left` is none."""
    if element.kind != "nextto" or element.phrase not in _SIDES_OF_ONES_OWN:
        return ""
    heads = not reader.words and bool(further) and further[0].kind in ("colon", "dash", "verb")
    return "" if heads else "word"


_SIDES_OF_ONES_OWN = tuple(f"{whose} {side}" for whose in ("her", "his", "my") for side in ("left", "right"))


def no_place(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """Words of a place that are none here: the initial of `L. Brockway`, `Una's left hand`, `in front of the house`."""
    if element.phrase in POSTPOSITIONS and _is_a_thing_told_last(reader):
        return "word"  # `Mari maja ees`
    if element.kind in table.SIDES and " " not in element.text and _is_the_side_of_another(reader):
        return "word"  # `Sykes at her left`, `Ann at Mary Cole's left`
    if element.kind in table.SIDES and _is_family_name_of_a_side(reader, element, further):
        return "word"  # `Mr Left`, `Tom Left is on the right`
    if not further:
        return "word" if element.kind in ROW_KINDS and _is_family_name(reader, element) else ""
    if element.kind not in (*ROW_KINDS, *table.SIDES):
        return ""
    first = further[0]
    if element.kind == "middle" and first.plain == "of" and any(piece.kind in ROW_KINDS for piece in further[1:3]):
        return "centre"  # `Middle of the back row`
    if element.kind == "middle" and reader.place_since and not reader.words and " " not in element.text:
        return "centre"  # `Third row, middle`
    is_thing = first.kind == "word" and first.text.islower() and not (relation(first) or first.plain in table.NOUNS)
    ends = further[1:2] and further[1].kind in ("colon", "comma")
    if element.phrase in BEFORE_WHOM and " " not in element.text and is_thing and ends:
        return "word"  # `Framför huset: …`
    if element.phrase in BEFORE_WHOM and is_before_a_thing(further):
        return "word"  # `in front of the Martins' house`, `devant la maison des Martin`
    to_another = first.plain == "to" and further[1:2] and further[1].kind in ROW_KINDS
    if to_another or (reader.words and reader.words[-1].plain == "to" and element.kind in ROW_KINDS):
        return "word"  # `back to front`
    if element.plain == "right" and first.kind in ROW_KINDS and first.phrase.split()[0] in ("at", "in", "behind"):
        return "of"  # `right at the front`
    if element.kind in ROW_KINDS and _is_family_name(reader, element) and first.kind != "colon":
        return "word"
    if element.kind in table.SIDES and len(element.plain) == 1 and element.text.endswith("."):
        return "word" if first.kind == "word" and first.is_large and not token_of(first.text).is_given else ""
    if element.plain == element.phrase and " " not in element.text:
        of_somebody = bool(reader.words) and (reader.words[-1].plain.endswith("'s") or reader.words[-1].kind == "my")
        if of_somebody and first.kind == "word" and not first.is_large:
            return "word"  # `at his left shoulder`
    if element.kind in table.SIDES and element.plain == element.phrase and " " not in element.text:
        return ""
    behind = further[1:] if first.plain == "of" else further
    if not element.plain.endswith(("front", "behind", "back")) or len(behind) < 2:
        return ""
    noun = behind[1]
    is_person = bool(relation(noun)) or table.NOUNS.get(noun.plain) in ("one", "many") or noun.kind != "word"
    return "word" if behind[0].plain in ("the", "a", "an") and not (is_person or noun.is_large) else ""


def _is_the_side_of_another(reader: Reader) -> bool:
    """Whether `at` and whose side it is stand before a side, behind whoever stands there."""
    words = reader.words
    at = next((at for at in range(len(words) - 1, 0, -1) if words[at].plain in _AT), 0)
    if not at or len(words) == at + 1:
        return False
    whose = words[at + 1 :]
    is_whose = len(whose) == 1 and is_my(whose[0])
    return is_whose or (whose[-1].is_genitive and all(word.is_large for word in whose))


_AT = ("at", "on", "to", "by")


def _is_a_thing_told_last(reader: Reader) -> bool:
    """Whether the word before one that stands behind what it is told of is a thing: `maja` of `maja ees`."""
    if not reader.words or not reader.words[-1].text.islower():
        return False
    last = reader.words[-1]
    is_somebody = bool(relation(last)) or is_oblique_kin(last) or table.NOUNS.get(last.plain, "thing") != "thing"
    return last.kind == "word" and not is_somebody and not reader.after_posture


def _is_family_name(reader: Reader, element: Element) -> bool:
    """Whether a word for a row, written large behind a title or a given name, is a family name: `Maud Gale`."""
    if " " in element.text or not element.text[:1].isupper():
        return False
    if not reader.words:
        return reader.previous == "and" and reader.text[element.start - 1 :].strip() == element.text  # `Pym and Gale`
    last = reader.words[-1]
    name = token_of(last.text)
    return last.end + 1 == element.start and (last.plain in TITLES or name.is_given or name.is_initial)


def _is_family_name_of_a_side(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """Whether a word for a side, written large behind a title or a given name, is a family name: a title has no side,
    another place follows, or it is the only side that is written so (`surely_a_name` asks of it then)."""
    if len(element.text) < _SHORTEST_SIDE or not reader.words or not _is_family_name(reader, element):
        return False
    told = [word.strip(".,;:()") for word in reader.text.split()]
    alone = sum(word.istitle() and fold(word) in SIDES_BY_THEMSELVES for word in told) == 1
    goes_on = bool(further) and further[0].kind in ("verb", "note", *table.SIDES, *ROW_KINDS)
    return reader.words[-1].plain in TITLES or goes_on or alone


_SHORTEST_SIDE = 4


def everyone(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`All of us`, which is a row in Estonian (`all`)."""
    if element.kind not in ROW_KINDS or element.phrase not in EVERYONE or not further:
        return ""
    behind = further[0].kind in ("my", *ROW_KINDS) or further[0].plain in ("the", "of", "but", "except", "in")
    return "word" if behind or " " in element.text else ""


def beside_somebody(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of an element of `Dot is to the left of Nora`, `the boy behind Anna is Tom`, where one is told beside
    another behind who is told; an empty string for any other."""
    kinds = [following.kind for following in further[:2]]
    if element.plain in SIDE_OF and reader.previous in (*PLACES, "with") and further[:1]:
        if describes_last(reader) and any(following.kind == "verb" for following in further[1:4]):
            return "beside"  # `the boy in front of Anna is Tom`
        return "of" if _may_be_beside(further[0]) and not reader.words else ""
    describes = element.kind in ("front", "back") and bool(reader.words) and is_description(reader.words)
    if describes and kinds[:1] == ["word"] and further[0].is_large and "verb" in [piece.kind for piece in further[1:4]]:
        return "beside"  # `the boy behind Anna is Tom`
    is_of = len(further) > 1 and further[0].plain in SIDE_OF and _may_be_beside(further[1])
    told = bool(reader.words or reader.items)
    return "with" if told and is_of and element.kind in ("nextto", *BESIDE_SIDES) else ""  # `either side of Nora`


def _may_be_beside(element: Element) -> bool:
    return element.is_large or is_my(element) or is_oblique_kin(element)


def weak(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """A row or a side that is a plain word too; but `behind her` is a row."""
    is_weak = element.kind in PLACES and element.phrase in table.WEAK and " " not in element.text
    return "word" if is_weak and not any(told(reader, element, further) for told in _TOLD_AS_A_PLACE) else ""


def ordinal(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    if element.kind != "ordinal" or not further:
        return ""
    if further[0].kind in ROW_KINDS and further[0].phrase.partition(" ")[0] in table.BEFORE_A_PLACE:
        return "position"  # `fifth in the front row`
    many = len(reader.items) - reader.part_begins + bool(reader.words) > 1
    if many and [piece.kind for piece in further[:2]] == ["and", "position"]:
        return "position before"
    if before_place([word for word in reader.words if word.plain not in LEADS]):
        return ""
    leads = all(word.plain in ARTICLES | LEADS for word in reader.words)
    last = reader.items[-1:]  # `2nd is Cec; third Dad`
    goes_on = (
        leads
        and begins_person(further)
        and any(
            item.position > 0 or item.from_right or item.side for item in reader.items[reader.part_begins :] or last
        )
    )
    if further[0].kind in ("colon", "dash") and reader.row in ROW_NAMES.values() and element.value in ROW_NAMES:
        return ROW_NAMES[element.value]  # `first row: …; second: …`
    if goes_on and reader.items[-1].from_right:
        return "from the right"  # `first from the right Anna, second Tom`
    return "position" if further[0].kind in ("verb", "colon", "dash") or goes_on else ""


_BOTH_SIDES = re.compile(r"\bL\b.*\bR\b|\bR\b.*\bL\b", re.DOTALL)
"""`Dot L, Peg R`: letters for the sides, where both are told."""


_POSTURES = ("verb", "standing", "seated", "kneeling", "lying")


def _may_open_a_name(element: Element) -> bool:
    token = token_of(element.text)
    return token.is_given or token.is_initial or token.plain in TITLES


def _is_of_a_name(further: Sequence[Element]) -> bool:
    """Whether a given name alone follows, as it does a place told before it."""
    ends = [piece.kind for piece in further[1:2]] in ([], ["comma"], ["end"], ["and"], ["with"])
    return bool(further) and further[0].is_large and token_of(further[0].text).is_given and ends


def _stands_there_to_somebody(words: Sequence[Element], further: Sequence[Element]) -> bool:
    """Whether a row is told of one to another: `Nell behind Fred`, `Nell is hiding behind Fred`."""
    is_name = bool(words) and words[0].is_large and token_of(words[0].text).is_given
    follows = bool(further) and further[0].kind == "word" and further[0].is_large
    return is_name and follows and (token_of(further[0].text).is_given or bool(relation(further[0])))


# Where a weak word is told as a place


def _kind(further: Sequence[Element], at: int = 0) -> str:
    return further[at].kind if len(further) > at else ""


def _before_its_list(_: Reader, element: Element, further: Sequence[Element]) -> bool:
    """Before a colon, a direction or another place: `Back: …`, `front, left to right`, `seated centre`."""
    heads = ("colon", "dash", "described", "nextto", "position", "from the right", *table.DIRECTIONS, *table.SIDES)
    if _kind(further) in (*heads, *ROW_KINDS):
        return True
    in_a_note = _kind(further) == "note" and any(piece.kind in table.DIRECTIONS for piece in further[0].inside)
    return in_a_note or (_kind(further) == "comma" and _kind(further, 1) in table.DIRECTIONS)


def _behind_a_place(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    """`Seated centre, Mrs. Vane`."""
    return reader.previous in PLACES and not reader.words and _kind(further) == "comma"


def _before_somebody(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    somebody = _kind(further) in ("my", "me", "word", "unknown") and not further[0].is_large
    return not reader.words and somebody and begins_person(further)


def _before_is(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    if _kind(further) != "verb":
        return False
    return not reader.words or reader.words[-1].plain in table.BEFORE_A_PLACE or is_description(reader.words)


def _opens_before_a_name(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`back Edwin and Wes; front Maud`, `L Anna, R Ruth`."""
    opens = len(reader.items) == reader.part_begins and reader.previous in ("", "end")
    opens = (opens or reader.previous == "colon") and element.kind in (*ROW_KINDS, *table.SIDES)
    is_letter_of_two = element.text in ("L", "R") and _BOTH_SIDES.search(reader.text) is not None
    return (opens or is_letter_of_two) and not reader.words and _is_of_a_name(further)


def _of_one_to_another(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    return element.kind in ("front", "back") and _stands_there_to_somebody(reader.words, further)


def _behind_another_side(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`left Anna right Ruth`."""
    is_side = element.kind in table.SIDES and reader.ahead.side != "" and bool(reader.words)
    return is_side and _kind(further) == "word" and further[0].is_large


def _behind_a_posture(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    """`Fred stands behind Nell`: his row."""
    return reader.previous in _POSTURES and bool(reader.words or reader.items) and begins_person(further)


def _goes_on_before_a_name(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    """Before a name where places stand before the words, and `standing Edwin, Wes; sitting Maud`."""
    if reader.words or not further or not further[0].is_large:
        return False
    begins = len(reader.items) == reader.part_begins and reader.row != ""
    return (reader.behind is False and further[0].kind == "word") or (begins and _may_open_a_name(further[0]))


def _behind_a_name_alone(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    ends = _kind(further) in ("", "comma", "end", "and") and bool(reader.words or reader.items)
    return ends and not (len(element.text) == 1 and not _BOTH_SIDES.search(reader.text))


_TOLD_AS_A_PLACE: tuple[Callable[[Reader, Element, Sequence[Element]], bool], ...] = (
    _before_its_list, _behind_a_place, _before_somebody, _before_is, _opens_before_a_name, _of_one_to_another,
    _behind_another_side, _behind_a_posture, _goes_on_before_a_name, _behind_a_name_alone,
)  # fmt: skip
