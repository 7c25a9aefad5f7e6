"""What an element is where it stands: small words are plain words where nothing needs them (`reader`).

`on`, `son` and `a` are words of several languages, `behind` is a row or a word: what stands before and behind decides.
"""

import re
from collections.abc import Sequence

from boxlore.core.people.names.another_family_name import another_family_name
from boxlore.core.people.names.family_name_last import IBERIAN_GIVEN
from boxlore.core.people.names.reader import is_family_in_polish
from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.words_table import FILIATION, MARKERS, TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.before_things import is_before_a_thing
from boxlore.core.people.who_is_where.beside import BESIDE_SIDES
from boxlore.core.people.who_is_where.groups import family_of_several, is_plural_of_kin
from boxlore.core.people.who_is_where.item_words import (
    before_place,
    begins_person,
    is_description,
    is_my,
    is_of_several,
    share_kin,
    stands_for_me,
    without_leads,
)
from boxlore.core.people.who_is_where.kin_words import ME, is_oblique_kin, relation
from boxlore.core.people.who_is_where.reader_state import Reader
from boxlore.core.people.who_is_where.remarks import is_absent
from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    BEFORE_EXACTLY,
    BEFORE_WHOM,
    BEGIN_A_REMARK,
    BUT,
    CARDINALS,
    EVERYONE,
    HELD_ON,
    LEAD_TO_WHAT_IS_SAID,
    LEADS,
    OF_THINGS,
    POSTPOSITIONS,
    SAID_BY,
    SAYING,
    SIDE_OF,
    THESE,
    WITH,
    WORN_OR_HELD,
)
from boxlore.core.people.who_is_where.tokens import MARKERS_OF_NAMES, PLACES, ROW_KINDS, ROW_NAMES, Element
from boxlore.core.statements import fold


def _beside_somebody(reader: Reader, element: Element, further: Sequence[Element]) -> str:
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


def _joins_family_names(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """Whether `y` stands between two family names: `José Ruibarbo y Cifuentes`."""
    names = [token_of(word.text) for word in reader.words]
    particles = [*names[-1:], token_of(element.text), *(token_of(piece.text) for piece in further[:1])]
    if len(particles) > 2 and all(token.is_particle for token in particles):
        return True  # `Otto von und zu Waldeneck`
    if element.text not in ("y", "i", "e") or len(names) < 2 or names[-1].is_given:
        return False
    if not (names[0].is_given or names[0].plain in IBERIAN_GIVEN):
        return False
    following = further[1:2]
    has_particle = bool(following) and token_of(following[0].text).is_particle  # `Ruiz y Pérez de Castro`
    is_last = not following or following[0].kind not in ("word", "my") or has_particle
    last = further[0] if further and is_last else None
    return last is not None and last.is_large and last.kind == "word" and not token_of(last.text).is_given


_ALSO_IS = ("ir",)
"""`is` of one language that is `and` of another one (Latvian, Lithuanian)."""


def kind_here(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of an element where it stands: what the first rule says that knows it, else its own kind."""
    for rule in _RULES:
        if kind := rule(reader, element, further):
            return kind
    alone = ("ordinal", "row", "from_left", "from_right", "from_back", "from_front", "and", "with", "verb")
    return "word" if element.kind in alone else element.kind


def _order(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`From the top: …` is an order."""
    if element.kind != "from_back" or element.phrase not in ("from the top", "from top", "down"):
        return ""
    return "top to bottom" if further and further[0].kind == "colon" and not reader.words else ""


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


def _no_place(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """Words of a place that are none here: the initial of `L. Brockway`, `Una's left hand`, `in front of the house`."""
    if element.phrase in POSTPOSITIONS and _is_a_thing_told_last(reader):
        return "word"  # `Mari maja ees`
    if element.kind in table.SIDES and " " not in element.text and _is_the_side_of_another(reader):
        return "word"  # `Sykes at her left`, `Ann at Mary Cole's left`
    if not further:
        return "word" if element.kind in ROW_KINDS and _is_family_name(reader, element) else ""
    if element.kind not in (*ROW_KINDS, *table.SIDES):
        return ""
    first = further[0]
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
    if not reader.words or " " in element.text or not element.text[:1].isupper():
        return False
    last = reader.words[-1]
    name = token_of(last.text)
    return last.end + 1 == element.start and (last.plain in TITLES or name.is_given or name.is_initial)


def _own_side(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`Her left: Idris`: a side of somebody told before, which heads whoever stands there; `at his left` is none."""
    if element.kind != "nextto" or element.phrase not in _SIDES_OF_ONES_OWN:
        return ""
    heads = not reader.words and bool(further) and further[0].kind in ("colon", "dash", "verb")
    return "" if heads else "word"


_SIDES_OF_ONES_OWN = tuple(f"{whose} {side}" for whose in ("her", "his", "my") for side in ("left", "right"))


def _of_a_marker(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """A colon behind a marker within a name: `Elsie Crane nee: Tuttle`."""
    marks = element.kind == "colon" and len(reader.words) > 1 and reader.words[-1].plain in MARKERS_OF_NAMES
    return "of" if marks and further and further[0].is_large else ""


def _everyone(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """`All of us`, which is a row in Estonian (`all`)."""
    if element.kind not in ROW_KINDS or element.phrase not in EVERYONE or not further:
        return ""
    behind = further[0].kind in ("my", *ROW_KINDS) or further[0].plain in ("the", "of", "but", "except", "in")
    return "word" if behind or " " in element.text else ""


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
    if reader.words and is_maori:
        return "and"  # `a Nanny me a Koro`
    if reader.words and element.plain == "me" and further:
        return "and" if further[0].is_large or relation(further[0]) else "me"  # Māori: `Hēmi me Mere`
    return ""


def _joins(element: Element) -> bool:
    return element.kind in ("and", "with") and not element.is_large


def _weak(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """A row or a side that is a plain word too; but `behind her` is a row."""
    is_weak = element.kind in PLACES and element.phrase in table.WEAK and " " not in element.text
    return "word" if is_weak and not _is_head(element, further, reader) else ""


def _and(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    if element.kind != "and":
        return ""
    between_places = reader.previous in PLACES and not reader.words and further[:1] and further[0].kind in PLACES
    if reader.previous == "position before" or (between_places and not reader.items):
        return "of"  # `links u. rechts`
    if not reader.words and element.plain in _ALSO_IS and begins_person(further) and describes_somebody(reader):
        return "verb"
    if further and further[0].plain in ("bar", "bars") and reader.words and reader.words[-1].text.isupper():
        return "word"  # `DFC and bar`
    if reader.words and (_joins_family_names(reader, element, further) or share_kin(reader.words, further)):
        return "word"
    behind = (
        further[1:]
        if further and further[0].kind == "comma" and further[1:2] and further[1].kind in PLACES
        else further
    )
    joins = bool(further) and (reader.words or reader.items) and behind[0].kind not in ("comma", "end")
    doubtful = len(element.text) == 1 and element.text not in "&+"
    if doubtful and reader.words and _tells_another_name(reader.words, further):
        return "word"  # `Elsie Crane who married a Kettering`
    if doubtful and reader.words and reader.words[-1].plain in BEGIN_A_REMARK:
        return "word"  # `me as a baby`
    doubtful = doubtful and not (len(reader.words) == 1 and reader.words[0].kind == "me" and not reader.notes)
    leads = (at for at, piece in enumerate(further[:3]) if not (is_my(piece) or piece.plain in _BEFORE_SEVERAL))
    led = next(leads, 0)
    several = (bool(further and reader.words) and not further[0].is_large and _is_of_many(further[0])) or (
        led > 0 and _is_of_many(further[led])
    )
    slavic = (
        element.text in ("i", "и", "y") and reader.previous == "comma"
    )  # `Mój ojciec, pierwszy z prawej, i jego brat`
    may_join = bool(reader.words) or reader.previous in (*PLACES, "note") or slavic
    sure = not doubtful or several or (may_join and (begins_person(further) or _begins_thing(further)))
    return "and" if joins and sure else "word"


_BEFORE_SEVERAL = ARTICLES | CARDINALS.keys()


def _begins_thing(further: Sequence[Element]) -> bool:
    """Whether an article and an animal or a thing follow: `el gato`, `il cane Fido`."""
    led = int(bool(further) and (further[0].plain in ARTICLES or is_my(further[0])))
    thing = further[led] if further[led:] and further[led].text.islower() else None
    return (
        thing is not None
        and table.NOUNS.get(thing.plain) == "thing"
        and (led > 0 or thing.plain not in english_words())  # `holding a doll`
    )


def _tells_another_name(words: Sequence[Element], further: Sequence[Element]) -> bool:
    """Whether an article stands within words that tell another family name of the one before."""
    ends = (at for at, piece in enumerate(further) if piece.kind in ("comma", "end", "and", "with", "note"))
    behind = further[: next(ends, len(further))]
    verb = words[-1].text if not words[-1].is_large else ""
    return bool(verb and another_family_name(tokens_of(" ".join([verb, "a", *(piece.text for piece in behind)])))[0])


def _is_of_many(word: Element) -> bool:
    return table.NOUNS.get(word.plain) == "many" or is_plural_of_kin(word)


def _with(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    if element.kind != "with":
        return ""
    if further and further[0].kind == "with" and further[0].phrase in table.HOLDING:
        return "of"  # `con in braccio il piccolo Dino`
    if (not further or further[0].kind in ("comma", "end")) and element.phrase in WITH:
        return "word"  # `Torsten är inte med`
    if element.text == "z" and reader.previous == "comma" and further and further[0].text in ("d.", "domu"):
        return "word"  # `Helena Mazur, z d. Lis`
    if element.text in ("z", "ze") and reader.words and further and is_family_in_polish(token_of(further[0].text)):
        return "word"  # `Anna z Nowaków Zielińska`
    if further and reader.words and f"{element.plain} {further[0].plain}" in _MARKERS:
        return "word"  # `Zofia Wrona z d. Maj`
    if reader.previous in _LEADS_TO_SOMEBODY and not reader.words and _says_what_of_whom(further):
        return "beside"  # `Second from the left with the hat is Walter`
    if reader.previous == "comma" and not reader.words and reader.behind is False and _is_held_by_who_follows(further):
        return "beside"  # `Trzecia z lewej, z warkoczem, to moja mama`
    if further and is_oblique_kin(further[0]) and not (len(further) > 1 and further[1].is_large):
        return "beside"  # `с внуком`
    if (reader.words or reader.items) and _heads_names(further):
        return "with"  # `with her three boys Stan and Les`
    opens = bool(further) and further[0].kind == "verb" and not reader.words  # `op schoot zit kleine Jaap`
    if (
        reader.words
        and further
        and further[0].plain in WORN_OR_HELD
        and [piece.kind for piece in further[1:2]] in _ITEM_ENDS
    ):
        return "beside"  # `Fritz mit Hut`
    if reader.words and len(further) > 1 and further[0].plain in OF_THINGS and _is_thing(further[1]):
        return "beside"  # `Anna mit dem Hut`
    if further and (reader.words or reader.items) and begins_person(further[1:] if opens else further):
        return "with"
    behind_place = reader.previous in (*PLACES, "note") and len(reader.items) > reader.part_begins
    behind_place = behind_place and bool(reader.behind)
    told = any(word.is_large for word in reader.words) or behind_place
    return "beside" if told and len(element.text) > 2 else "word"


_MARKERS = frozenset(marker for marker, _ in MARKERS)

_ITEM_ENDS: tuple[list[str], ...] = ([], ["comma"], ["end"], ["and"])

_LEADS_TO_SOMEBODY = (*PLACES, "position", "from the right")


def _says_what_of_whom(further: Sequence[Element]) -> bool:
    """Whether an article, words of a thing, `is`, and somebody follow."""
    verb = next((at for at, piece in enumerate(further[:5]) if piece.kind == "verb"), 0)
    small = all(piece.kind in ("word", "my") for piece in further[:verb])
    return verb > 0 and small and further[0].plain in ARTICLES and begins_person(further[verb + 1 :])


def _is_held_by_who_follows(further: Sequence[Element]) -> bool:
    """Whether small words, a comma, `is` and somebody follow."""
    comma = next((at for at, piece in enumerate(further[:4]) if piece.kind == "comma"), 0)
    small = all(piece.kind == "word" and piece.text.islower() for piece in further[:comma])
    verb = further[comma + 1 : comma + 2]
    return comma > 0 and small and [piece.kind for piece in verb] == ["verb"] and begins_person(further[comma + 2 :])


def _heads_names(further: Sequence[Element]) -> bool:
    """Whether words for several people stand before a name: `her three boys Stan`, `two sons Stan`."""
    counted = [at for at, piece in enumerate(further[:3]) if piece.plain in CARDINALS]
    behind = further[counted[0] + 1 : counted[0] + 3] if counted else ()
    return len(behind) == 2 and is_of_several(behind[:1]) and behind[1].is_large and token_of(behind[1].text).is_given


def _is_thing(element: Element) -> bool:
    """A German noun that is neither a name nor somebody."""
    is_one = table.NOUNS.get(element.plain) == "one" or relation(element)
    return element.is_large and not (is_one or token_of(element.text).is_given)


def _ordinal(reader: Reader, element: Element, further: Sequence[Element]) -> str:
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
    says = next((at for at, piece in enumerate(further) if piece.kind not in ("verb", "unsure")), 0)
    return "takes back" if (says or is_absent(reader.words)) and begins_person(further[says:]) else ""


def _verb(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    if element.plain == "zijn" and reader.words and is_of_several(reader.words):
        return "verb"  # `De twee jongens zijn Klaas en Wim`, where `zijn` is `his` too
    is_to = element.plain == "to" and reader.words[-1:] and reader.words[-1].plain in table.ROW_CLASSES
    if is_to and further and further[0].kind in ROW_KINDS:
        return "word"  # `back to front`
    if element.plain in _CALLED and reader.words and is_description(reader.words) and begins_person(further):
        return "verb"  # `a man called Trench`
    if element.kind != "verb" or not further:
        return ""
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


_CALLED = frozenset("called named genannt namens nimega nomme nommee llamado llamada chiamato chiamata".split())


def _dash(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    if element.kind != "dash":
        return ""
    tells = bool(further) and begins_person(further) and describes_somebody(reader)
    if reader.words and begins_person(further) and family_of_several(reader.words):
        return "colon"  # `the Olsens - Per, Kari`
    return "comma" if reader.words else "verb" if tells else ""


def describes_somebody(reader: Reader) -> bool:
    """Whether what was told last describes somebody whom a name may follow: `the girl in front`."""
    words = without_leads(reader.words) if reader.words else reader.words
    words = words[1:] if words[1:] and words[0].kind == "unsure" else words
    if [word.plain for word in words[:2]] == ["the", "only"]:
        return True  # `The only one I know is Fay`
    if words:
        return is_description(words) or is_of_several(words)
    return describes_last(reader)


def describes_last(reader: Reader) -> bool:
    return len(reader.items) > reader.part_begins and reader.items[-1].is_described


_BOTH_SIDES = re.compile(r"\bL\b.*\bR\b|\bR\b.*\bL\b", re.DOTALL)
"""`Dot L, Peg R`: letters for the sides, where both are told."""

_POSTURES = ("verb", "standing", "seated", "kneeling", "lying")


def _is_head(element: Element, further: Sequence[Element], reader: Reader) -> bool:
    """Whether a row that is also a plain word is told as one: before a colon or a direction, or behind a name alone."""
    kinds = [following.kind for following in further[:2]]
    following = kinds[0] if kinds else ""
    if following in ("colon", "dash", *table.DIRECTIONS) or (
        kinds[1:] and following == "comma" and kinds[1] in table.DIRECTIONS
    ):
        return True
    if following == "note" and any(piece.kind in table.DIRECTIONS for piece in further[0].inside):
        return True
    if following in (*ROW_KINDS, *table.SIDES, "position", "from the right", "nextto"):
        return True
    if reader.previous in PLACES and not reader.words and following in ("comma", "colon"):
        return True  # `Seated centre, Mrs. Vane`
    if following == "described":
        return True  # `Sitting in the boat is Cyril`
    somebody = following in ("my", "word", "unknown") and not further[0].is_large and begins_person(further)
    if not reader.words and somebody:
        return True
    if following == "verb":
        return not reader.words or reader.words[-1].plain in table.BEFORE_A_PLACE or is_description(reader.words)
    opens = len(reader.items) == reader.part_begins and reader.previous in ("", "end")
    opens = (opens or reader.previous == "colon") and element.kind in (*ROW_KINDS, *table.SIDES)
    if opens and not reader.words and _is_of_a_name(further):
        return True  # `back Edwin and Wes; front Maud`
    is_letter_of_two = element.text in ("L", "R") and _BOTH_SIDES.search(reader.text) is not None
    if is_letter_of_two and not reader.words and _is_of_a_name(further):
        return True  # `L Anna, R Ruth`
    if element.kind in ("front", "back") and _stands_there_to_somebody(reader.words, further):
        return True
    if (
        element.kind in table.SIDES
        and reader.ahead.side
        and reader.words
        and following == "word"
        and further[0].is_large
    ):
        return True  # `left Anna right Ruth`
    if reader.previous in _POSTURES and (reader.words or reader.items) and further and begins_person(further):
        return True  # `Fred stands behind Nell`: his row
    if reader.behind is False and not reader.words and following == "word" and further[0].is_large:
        return True
    begins = not reader.words and len(reader.items) == reader.part_begins and reader.row != ""
    if begins and further and further[0].is_large and _may_open_a_name(further[0]):
        return True  # `standing Edwin, Wes; sitting Maud`
    ends = following in ("", "comma", "end", "and")
    is_letter = len(element.text) == 1 and not _BOTH_SIDES.search(reader.text)
    return ends and bool(reader.words or reader.items) and not is_letter


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


_RULES = (
    _order, _shows, _own_side, _holder, _of_a_marker, _no_place, _everyone, _beside_somebody, _of_kin, _me, _weak, _and,
    _with, _ordinal, _says, _verb, _dash, _takes_back,
)  # fmt: skip
"""In the order in which they are asked."""
