"""What an element is where it stands: small words are plain words where nothing needs them (`reader`).

`on`, `son` and `a` are words of several languages, `behind` is a row or a word: what stands before and behind decides.
One table tells the rules in the order in which they are asked; each knows words of one sort, and the first that knows
the element says its kind:

    places         ; `place_senses`: orders, rows, sides, ordinals, and where they are none
    what joins     ; `joining_senses`: `and`, `with`
    who            ; `me`, `my`, kin, where such a word is another one of another language
    what is said   ; `is`, `these are`, “Ethel wrote that …”, `but it's`, a dash
"""

from collections.abc import Callable, Sequence

from boxlore.core.people.names.words_table import FILIATION
from boxlore.core.people.who_is_where import joining_senses as joining
from boxlore.core.people.who_is_where import place_senses as places
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.groups import family_of_several
from boxlore.core.people.who_is_where.item_words import (
    SEVERAL_OF_THE_NORTH,
    begins_person,
    is_description,
    is_my,
    is_of_several,
    stands_for_me,
)
from boxlore.core.people.who_is_where.kin_words import ME, relation
from boxlore.core.people.who_is_where.reader_state import Reader
from boxlore.core.people.who_is_where.remarks import is_absent
from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    BEFORE_EXACTLY,
    BUT,
    HELD_ON,
    LEAD_TO_WHAT_IS_SAID,
    MAORI_MY,
    SAID_BY,
    SAYING,
    THESE,
)
from boxlore.core.people.who_is_where.tokens import PLACES, ROW_KINDS, Element
from boxlore.core.people.who_is_where.told_last import describes_last, describes_somebody
from boxlore.core.statements import fold

Rule = Callable[[Reader, Element, Sequence[Element]], str]


def kind_here(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of an element where it stands: what the first rule says that knows it, else its own kind."""
    for rule in _RULES:
        if kind := rule(reader, element, further):
            return kind
    alone = ("ordinal", "row", "from_left", "from_right", "from_back", "from_front", "and", "with", "verb")
    return "word" if element.kind in alone else element.kind


def _shows(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`These are Mum and Dad`: what stands before the verb shows only that somebody follows."""
    shows = len(reader.words) == 1 and reader.words[0].plain in THESE and element.plain in _ARE
    opens = reader.words[:1] != [] and (reader.words[0].start == 0 or reader.words[0].is_large)
    return "leads in" if shows and opens and begins_person(further) else ""


_ARE = frozenset(phrase for kind, phrase in table.WORDS_BETWEEN if kind == "verb" and " " not in phrase) | {
    "zijn",
    "ben",
}


def _holder(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`Luc dans les bras de maman`: behind the words for holding it is said who holds."""
    begins = reader.previous == "with" and not reader.words and element.plain in _OF_WHOM
    held_on = fold(reader.text[: element.start].split()[-1]) if begins and reader.items else ""
    return "holder" if held_on in HELD_ON and further else ""


_OF_WHOM = frozenset("de du des d von vom di da do del della bij hos u af av".split())


def _of_kin(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """Small words that are `my` of one language, and words of kin that are `are` of another (`son`)."""
    if not further:
        return ""
    is_somebody = bool(relation(further[0])) or table.NOUNS.get(further[0].plain) == "one"
    is_whose = is_my(element) and element.text not in BEFORE_EXACTLY
    if element.kind in ("and", "with", "verb") and not reader.words and is_whose and is_somebody:
        return "my"
    is_kin = element.kind == "verb" and relation(element) and further[0].is_large
    return "kin" if is_kin and not describes_somebody(reader) else ""


def _me(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    opens = reader.previous in ("", "comma", "end", "colon", *PLACES) and not reader.words
    opens = opens and element.text not in BEFORE_EXACTLY
    if opens and element.kind != "me" and element.plain in ME and further and _joins(further[0]):
        return "me"  # `ja i nieznana pani`
    if element.kind != "me":
        return "me" if reader.joined and not reader.words and stands_for_me(element, further) else ""
    is_maori = element.plain == "me" and len(further) > 1 and further[0].text == "a" and further[1].is_large
    is_maori = is_maori or (element.text == "me" and bool(further) and further[0].plain in (*MAORI_MY, "aku", "oku"))
    if reader.words and is_maori:
        return "and"  # `a Nanny me a Koro`
    if reader.words and element.plain == "me" and further:
        return "and" if further[0].is_large or relation(further[0]) else "me"  # Māori: `Hēmi me Mere`
    return ""


def _joins(element: Element) -> bool:
    return element.kind in ("and", "with") and not element.is_large


def _says(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`Ethel wrote on the back that this is`: whoever says so is told before the one who is in the picture."""
    if element.plain in SAYING and not element.is_large and reader.words:
        led = next((at for at, piece in enumerate(further) if not _leads_to_what_is_said(piece)), len(further))
        told = further[led:]
        by_somebody = all(word.is_large or word.kind == "my" or relation(word) for word in reader.words)
        describes = begins_person(told) and (led or not told[0].is_large)
        return "leads in" if by_somebody and describes else ""
    says = any(word.plain in SAYING for word in reader.words[1:]) or (
        len(reader.words) > 1 and reader.words[0].plain in SAID_BY
    )
    return "leads in" if says and element.kind in ("verb", "colon") and begins_person(further) else ""


def _leads_to_what_is_said(element: Element) -> bool:
    """`that`, `, dass`, `it is`: what stands between who says so and what is said."""
    return element.kind in ("comma", "verb", "colon") or element.plain in LEAD_TO_WHAT_IS_SAID


def _takes_back(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`Looks like Ruth but it's her cousin Edna`: whoever was named before may not be in it."""
    if element.plain not in BUT or element.is_large or not reader.words or not further:
        return ""
    if reader.words[-1].plain in ARTICLES:
        return ""  # `The men are …`, where `men` is `but` in another language
    says = next((at for at, piece in enumerate(further) if piece.kind not in ("verb", "unsure")), 0)
    return "takes back" if (says or is_absent(reader.words)) and begins_person(further[says:]) else ""


def _verb(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    if element.plain == "to" and further and further[0].plain in SEVERAL_OF_THE_NORTH:
        return "word"
    if element.plain == "son" and reader.words[-1:] and reader.words[-1].kind == "my":
        return "kin"  # `Tom, their son, and …`, where `son` is `are` in Spanish
    if element.plain == "zijn" and reader.words and is_of_several(reader.words):
        return "verb"  # `De twee jongens zijn Klaas en Wim`, where `zijn` is `his` too
    is_to = element.plain == "to" and reader.words[-1:] and reader.words[-1].plain in table.ROW_CLASSES
    if is_to and further and further[0].kind in ROW_KINDS:
        return "word"  # `back to front`
    if element.plain in _CALLED and reader.words and is_description(reader.words) and begins_person(further):
        return "verb"  # `a man called Trench`
    if element.kind != "verb" or not further:
        return ""
    if element.plain == "on" and reader.words and reader.words[0].plain in _ENGLISH:
        return "word"  # `the boy on Dobbin`, where `on` is no verb
    if element.plain in FILIATION and reader.words and reader.words[-1].kind != "me" and further[0].is_large:
        return "word"  # `Osman bin Idris`
    if reader.joined == "with" and reader.words and describes_last(reader) and begins_person(further):
        return "verb"  # `Der Herr mit Bart ist Opa Wilhelm`
    several = bool(reader.words) and is_of_several(reader.words) and further[1:2] and further[1].kind in PLACES
    if several and further[0].kind == "comma":
        return "verb"  # `The children are, from left, …`
    touches = further[0].kind in (*PLACES, "position", "from the right", "colon", "verb")
    tells = begins_person(further) and (not reader.words or describes_somebody(reader))
    if len(further) > 1 and further[0].plain.endswith("'s") and further[1].plain in HELD_ON:
        return "word"  # `on Nana's knee`
    return "verb" if touches or tells else ""


_ENGLISH = ("the", "a", "an", "my", "our", "his", "her", "their")

_CALLED = frozenset("called named genannt namens nimega nomme nommee llamado llamada chiamato chiamata".split())


def _dash(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    if element.kind != "dash":
        return ""
    tells = bool(further) and begins_person(further) and describes_somebody(reader)
    if reader.words and begins_person(further) and family_of_several(reader.words):
        return "colon"  # `the Olsens - Per, Kari`
    return "comma" if reader.words else "verb" if tells else ""


_RULES: tuple[Rule, ...] = (
    places.order, places.side_or_direction, _shows, places.own_side, _holder, joining.of_a_marker, places.no_place,
    places.everyone, places.beside_somebody, _of_kin, _me, places.weak, joining.joined, joining.accompanied,
    places.ordinal, _says, _verb, _dash, _takes_back,
)  # fmt: skip
"""In the order in which they are asked."""
