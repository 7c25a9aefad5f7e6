"""What `and` and `with` are where they stand (`word_senses`): they join two people, or are plain words of one.

`a`, `e`, `i`, `y` and `z` are words of many languages, and `with` may tell what somebody wears (`Fritz mit Hut`). Each
of the two has a table of its readings, asked in order.
"""

from collections.abc import Callable, Sequence

from boxlore.core.people.names.another_family_name import another_family_name
from boxlore.core.people.names.family_name_last import IBERIAN_GIVEN
from boxlore.core.people.names.reader import is_family_in_polish
from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.words_table import MARKERS, RELIGIOUS_TITLES, SUFFIXES, TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.groups import is_plural_of_kin
from boxlore.core.people.who_is_where.item_words import begins_person, is_my, is_of_several, share_kin
from boxlore.core.people.who_is_where.kin_words import is_oblique_kin, relation
from boxlore.core.people.who_is_where.reader_state import Reader
from boxlore.core.people.who_is_where.small_words_table import (
    ARTICLES,
    BEFORE_OR_AFTER,
    BEGIN_A_REMARK,
    CARDINALS,
    MAORI_MY,
    MARRYING,
    OF_THINGS,
    WITH,
    WORN_OR_HELD,
)
from boxlore.core.people.who_is_where.tokens import MARKERS_OF_NAMES, PLACES, Element
from boxlore.core.people.who_is_where.told_last import describes_somebody
from boxlore.core.statements import fold

Reading = tuple[str, Callable[[Reader, Element, Sequence[Element]], bool]]
"""A kind, and whether the word is of it."""


def joined(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of `and`; an empty string for any other element."""
    if element.kind != "and":
        return ""
    return next((kind for kind, holds in _AND if holds(reader, element, further)), "word")


def accompanied(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """The kind of `with`; an empty string for any other element."""
    if element.kind != "with":
        return ""
    return next((kind for kind, holds in _WITH if holds(reader, element, further)), "word")


# The readings of `and`


def _between_places(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    """`links u. rechts`."""
    between = reader.previous in PLACES and not reader.words and bool(further) and further[0].kind in PLACES
    return reader.previous == "position before" or (between and not reader.items)


def _is_of_another_language(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    return not reader.words and element.plain in _ALSO_IS and begins_person(further) and describes_somebody(reader)


def _within_a_name(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`DFC and bar`, `Ruibarbo y Cifuentes`, `Betty and Reg's mother`."""
    if not reader.words:
        return False
    is_bar = bool(further) and further[0].plain in ("bar", "bars") and reader.words[-1].text.isupper()
    whose = further[0].plain[:-2] if further else ""
    told = any(fold(item.person.words) == whose for item in reader.items)  # `Frank and June and Frank's mother`
    shares = element.text not in _SIGNS and not told and share_kin(reader.words, further)
    return is_bar or _joins_family_names(reader, element, further) or shares


_SIGNS = ("+", "&")


def _an_article_or_as(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`Elsie Crane who married a Kettering`, `me as a baby`."""
    if not (_is_doubtful(element) and reader.words):
        return False
    return _tells_another_name(reader.words, further) or reader.words[-1].plain in BEGIN_A_REMARK


def _joins(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """Between two people: surely, where the word is none of another language; else where somebody, several or an animal
    follow."""
    if not further or not (reader.words or reader.items):
        return False
    apart = further[0].kind == "comma" and further[1:2] and further[1].kind in PLACES
    if (further[1] if apart else further[0]).kind in ("comma", "end"):
        return False
    is_me = len(reader.words) == 1 and reader.words[0].kind == "me" and not reader.notes
    return (
        not _is_doubtful(element) or is_me or _several_follow(reader, further) or _one_follows(reader, element, further)
    )


def _is_doubtful(element: Element) -> bool:
    return len(element.text) == 1 and element.text not in "&+"


def _several_follow(reader: Reader, further: Sequence[Element]) -> bool:
    leads = (at for at, piece in enumerate(further[:3]) if not (is_my(piece) or piece.plain in _BEFORE_SEVERAL))
    led = next(leads, 0)
    alone = bool(reader.words) and not further[0].is_large and _is_of_many(further[0])
    return alone or (led > 0 and _is_of_many(further[led]))


def _one_follows(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    slavic = element.text in ("i", "и", "y") and reader.previous == "comma"  # `ojciec, pierwszy z prawej, i brat`
    small = [word for word in (*reader.words[-1:], further[0]) if word.kind == "word" and token_of(word.text).is_given]
    if element.text == "n" and len(small) > 1:
        return True  # `dot n sid`
    may_join = bool(reader.words) or reader.previous in (*PLACES, "note") or slavic
    return may_join and (begins_person(further) or _begins_thing(further) or _somewhere_somebody(further))


def _somewhere_somebody(further: Sequence[Element]) -> bool:
    """`Rosa y a mi izquierda su prima`, `Nino e in piedi papà`: a place, and somebody who is there."""
    behind = next((at for at, piece in enumerate(further) if piece.kind not in _TELLS_WHERE), len(further))
    return behind > 0 and begins_person(further[behind:])


_TELLS_WHERE = (*PLACES, "nextto", "position", "from the right")


def _of_maori_names(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`Taku tuahine a Mere`: the article before names."""
    told = reader.words[-2:]
    is_kin = len(told) == 2 and told[0].kind == "my" and told[0].plain in (*MAORI_MY, "to", "te")
    is_kin = is_kin and len(reader.items) == reader.part_begins
    return element.text == "a" and is_kin and bool(further) and further[0].is_large


def _of_a_religious_name(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`Rev. Fr. Ignatius a Cruce`, `Sister Teresa a Jesu`: `of` of Latin, behind a title."""
    if element.text not in ("a", "ab") or len(reader.words) < 2 or not further:
        return False
    first, behind = reader.words[0].plain, further[0]
    is_titled = first in RELIGIOUS_TITLES or first in TITLES or reader.words[0].text.endswith(".")
    is_of_latin = behind.is_large and not token_of(behind.text).is_given and behind.plain not in TITLES
    return is_titled and is_of_latin


_AND: tuple[Reading, ...] = (
    ("of", _between_places), ("of", _of_maori_names), ("word", _of_a_religious_name),
    ("verb", _is_of_another_language), ("word", _within_a_name), ("word", _an_article_or_as),
    ("and", _joins),
)  # fmt: skip


# The readings of `with`


def _before_holding(_: Reader, __: Element, further: Sequence[Element]) -> bool:
    """`con in braccio il piccolo Dino`."""
    return bool(further) and further[0].kind == "with" and further[0].phrase in table.HOLDING


def _with_nobody(_: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`Torsten är inte med`."""
    return (not further or further[0].kind in ("comma", "end")) and element.phrase in WITH


def _of_a_name_at_birth(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`Helena Mazur, z d. Lis`, `Anna z Nowaków Zielińska`."""
    if not further:
        return False
    if element.text == "z" and reader.previous == "comma" and further[0].text in ("d.", "domu"):
        return True
    if element.text in ("z", "ze") and reader.words and is_family_in_polish(token_of(further[0].text)):
        return True
    return bool(reader.words) and f"{element.plain} {further[0].plain}" in _MARKERS


def _of_who_is_told_behind_it(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    """`Second from the left with the hat is Walter`, `Trzecia z lewej, z warkoczem, to moja mama`."""
    if reader.words:
        return False
    if reader.previous in _LEADS_TO_SOMEBODY and _says_what_of_whom(further):
        return True
    return reader.previous == "comma" and reader.behind is False and _is_held_by_who_follows(further)


def _kin_in_a_case(_: Reader, __: Element, further: Sequence[Element]) -> bool:
    """`с внуком`, without a name."""
    return bool(further) and is_oblique_kin(further[0]) and not (len(further) > 1 and further[1].is_large)


def _of_a_wedding(reader: Reader, _: Element, __: Sequence[Element]) -> bool:
    """`Martha vor ihrer Hochzeit mit Otto`: with whom somebody was wed, and not with whom she is seen."""
    when = any(word.plain in BEFORE_OR_AFTER and not word.is_large for word in reader.words[:-1])
    return when and reader.words[-1].plain.startswith(MARRYING)


def _before_several(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    """`with her three boys Stan and Les`."""
    return bool(reader.words or reader.items) and _heads_names(further)


def _what_is_worn(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    """`Fritz mit Hut`, `Anna mit dem Hut`."""
    if not (reader.words and further):
        return False
    alone = further[0].plain in WORN_OR_HELD and [piece.kind for piece in further[1:2]] in _ITEM_ENDS
    return alone or (len(further) > 1 and further[0].plain in OF_THINGS and _is_thing(further[1]))


def _before_another(reader: Reader, _: Element, further: Sequence[Element]) -> bool:
    opens = bool(further) and further[0].kind == "verb" and not reader.words  # `op schoot zit kleine Jaap`
    return bool(further) and bool(reader.words or reader.items) and begins_person(further[1:] if opens else further)


def _of_who_was_told(reader: Reader, element: Element, _: Sequence[Element]) -> bool:
    """`Anna with her new camera`."""
    behind_place = reader.previous in (*PLACES, "note") and len(reader.items) > reader.part_begins
    told = any(word.is_large for word in reader.words) or (behind_place and bool(reader.behind))
    return told and len(element.text) > 2


def _before_a_place_of_another(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """`met in het midden Truus`: a place, and somebody who is there."""
    told = bool(reader.words or reader.items) and element.phrase not in table.HOLDING
    return told and bool(further) and further[0].kind in PLACES and begins_person(further[1:])


_WITH: tuple[Reading, ...] = (
    ("of", _before_holding), ("word", _with_nobody), ("word", _of_a_name_at_birth),
    ("word", _of_a_wedding), ("beside", _of_who_is_told_behind_it), ("beside", _kin_in_a_case),
    ("with", _before_several), ("beside", _what_is_worn), ("with", _before_another),
    ("with", _before_a_place_of_another), ("beside", _of_who_was_told),
)  # fmt: skip


# What the readings ask


def of_a_marker(reader: Reader, element: Element, further: Sequence[Element]) -> str:
    """A colon behind a marker within a name: `Elsie Crane nee: Tuttle`."""
    marks = element.kind == "colon" and len(reader.words) > 1 and reader.words[-1].plain in MARKERS_OF_NAMES
    return "of" if marks and further and further[0].is_large else ""


def _joins_family_names(reader: Reader, element: Element, further: Sequence[Element]) -> bool:
    """Whether `y` stands between two family names: `José Ruibarbo y Cifuentes`."""
    names = [token_of(word.text) for word in reader.words]
    particles = [*names[-1:], token_of(element.text), *(token_of(piece.text) for piece in further[:1])]
    if len(particles) > 2 and all(token.is_particle for token in particles):
        return True  # `Otto von und zu Waldeneck`
    if element.text not in ("y", "i", "e") or len(names) < 2 or names[-1].is_given:
        return False
    if element.text == "i" and names[-1].plain.endswith(_OF_THE_NORTH) and names[0].is_given:
        ends = [piece.kind for piece in further[1:2]] in _ITEM_ENDS
        return ends and further[0].is_large and not token_of(further[0].text).is_given  # `Persson i Västergård`
    if not any(name.is_given or name.plain in IBERIAN_GIVEN for name in names[:2]):
        return False
    following = further[1:2]
    has_particle = bool(following) and token_of(following[0].text).is_particle  # `Ruiz y Pérez de Castro`
    if element.text == "i" and names[0].plain not in IBERIAN_GIVEN:
        return False  # `Bronisława Mazur i Tata`
    if has_particle and any(name.is_particle for name in names):
        return False  # `Manuel da Figueira e Graça dos Santos`
    if following and following[0].kind == "note" and further[2:3] and further[2].is_large:
        return False  # `Zeca Pereira e Graça (Lili) Silva`
    small = following[0].plain if following else ""
    ends = not following or following[0].kind not in ("word", "my") or small in SUFFIXES | BEFORE_OR_AFTER | {"o", "u"}
    is_last = ends or has_particle
    last = further[0] if further and is_last else None
    return last is not None and last.is_large and last.kind == "word" and not token_of(last.text).is_given


_OF_THE_NORTH = ("sson", "sen", "dotter", "datter")
"""Ends of family names of Sweden, Norway and Denmark, behind which `i` tells of which farm somebody is."""


_ALSO_IS = ("ir",)
"""`is` of one language that is `and` of another one (Latvian, Lithuanian)."""


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
