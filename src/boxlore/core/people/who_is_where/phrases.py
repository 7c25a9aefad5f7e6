"""The words between two marks as a phrase: somebody, or what they say of the one told before (`reader`).

    phrase = taking back                 ; no, wait     rather
           / opening                      ; Well, …      On the sofa, …      According to Ethel, …
           / where and who                ; at the window his wife
           / called                       ; whom we called Dolly
           / remark                       ; my sister    aged 5    she was in hospital    her    1923    I think
           / with small words             ; with the godparents    with his hand on Charlie's shoulder
           / rest of a name               ; Jr.    née Pell    "Tiny"
           / unknown several              ; two I can't name
           / total                        ; five people
           / family ":"                   ; All the Pells: …
           / group names                  ; the Kask brothers Juhan and Karl
           / somebody                     ; everything else: a name, kin, a description, words that ask

The productions are asked in this order (`_PRODUCTIONS`), and the first that knows the phrase takes all of it: no word
is left, for what is not structure becomes words or a note of somebody. A remark, the rest of a name and words with
`with` need somebody told before them in the same part; without one the words are somebody's.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from boxlore.core.people.names.lists_table import MEN_ALONE, WOMEN_ALONE
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.words_table import KIN_WORDS, MARKERS, SUFFIXES, TITLES
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.counted_unknown import how_many_unknown, without_more
from boxlore.core.people.who_is_where.groups import family_of_several, group_of, titled_family
from boxlore.core.people.who_is_where.item_words import (
    begins_person,
    between,
    definitely,
    how_many_in_all,
    is_my,
    is_noun_of_one,
    is_of_several,
    is_remark,
    leads_to_a_thing,
    name_and_remark,
    without_leads,
    without_verbs_behind,
)
from boxlore.core.people.who_is_where.items import add, noted, people_named
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.position_words_table import MY_OWN, NOUNS
from boxlore.core.people.who_is_where.reader_state import Ahead, Reader
from boxlore.core.people.who_is_where.remarks import begins_remark
from boxlore.core.people.who_is_where.somebody import are_likely
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold


@dataclass(frozen=True, slots=True)
class _Phrase:
    """The words between two marks, without those that only lead to them; never without words."""

    words: Sequence[Element]
    told: str
    """The same as told."""
    whole: str
    """As told, with the words that lead."""
    notes: Sequence[str]
    brackets: Sequence[Element]
    """The notes as elements, those inside of the name too."""
    inside: Sequence[Element]
    """Those of them that stand within the words: `Mabel Pell (later Oakes) at one end`."""
    before: str
    """The kind of the mark behind the words: they stand before a comma."""
    following: Sequence[Element]
    opens: bool
    """Whether nobody was told in this part before."""
    doubted: bool
    """Whether a note says that the name is a guess."""


def end_item(reader: Reader, before: str = "", following: Sequence[Element] = ()) -> None:
    """The words gathered so far as one person, or as a remark on the one before; `before` the mark behind them."""
    whole = between(reader.words, reader.text)
    bare = without_verbs_behind(without_leads(reader.words)) if reader.words else ()
    words, remark = name_and_remark(bare)
    inside = [note for note in reader.notes if words and words[0].start < note.start and note.end < words[-1].end]
    notes = [note.text for note in reader.notes if note not in inside]  # `Peggy (Margaret) Loftus` has it in the name
    counted = [word for word in remark if word.plain not in small_words.ARTICLES]
    if len(counted) == 1 and counted[0].kind == "ordinal" and not reader.ahead.position:
        reader.ahead.position, reader.placed = counted[0].value, True  # `ich bin die Zweite`
    if remark:
        notes.insert(0, between(remark, reader.text))
    if reader.aside:
        notes.append(reader.text[reader.aside[0].start : reader.aside[-1].end])
    bare = words[1:] if len(words) > 1 and words[0].plain == "the" else words  # `The Reverend and Mrs Snell`
    if before == "and" and bare and following and not reader.notes and _are_titles_of_two(bare, following):
        reader.words = [replace(word, kind="title") for word in bare]
        return
    brackets = reader.notes
    reader.words, reader.notes, reader.aside = [], [], []
    if not words:
        if notes and reader.items:
            reader.items[-1].person = noted(reader.items[-1].person, *notes)
        return
    opens = len(reader.items) == reader.part_begins
    doubted = any(_doubts(note) for note in brackets)
    told = between(words, reader.text)
    phrase = _Phrase(words, told, whole, notes, brackets, inside, before, following, opens, doubted)
    any(production(reader, phrase) for production in _PRODUCTIONS)


def _opening(reader: Reader, phrase: _Phrase) -> bool:
    """opening = interjection "," / "according to" somebody ","        ; they say nothing of anybody in the picture

    `Well, that's Betty`, `According to Ethel, this is Harold`.
    """
    is_interjection = all(word.plain in small_words.INTERJECTIONS for word in phrase.words)
    is_said_by = phrase.words[0].plain in small_words.SAID_BY
    return phrase.opens and phrase.before == "comma" and (is_interjection or is_said_by)


def _taking_back(reader: Reader, phrase: _Phrase) -> bool:
    """taking back = word of correction {word of correction}          ; `no, wait`, `rather`, `sorry`

    Whoever was named before asks; `No idea, sorry` takes nobody back.
    """
    if not all(word.plain in small_words.CORRECTIONS for word in phrase.words):
        return False
    if phrase.opens and phrase.before in ("comma", "and"):
        reader.notes = list(phrase.brackets)
        if reader.items:
            _taken_back(reader.items[-1])  # `Betty... no, wait, it's Kathleen`
        return True
    if not reader.items:
        return False
    last = reader.items[-1]
    if last.person.words:
        last.person = noted(last.person, phrase.told, *phrase.notes)
        last.take_back()
    return True


def _where_and_who(reader: Reader, phrase: _Phrase) -> bool:
    """somebody = "in" "the" thing somebody          ; `at the window his wife`: where is a note of who follows"""
    at = leads_to_a_thing(phrase.words)
    rest = phrase.words[at:]
    if not at or not begins_person(rest):
        return False
    reader.ahead.add_note(between(phrase.words[:at], reader.text))
    return _somebody(reader, replace(phrase, words=rest, told=between(rest, reader.text)))


def _called(reader: Reader, phrase: _Phrase) -> bool:
    """called = {small word} word of calling {small word} name          ; the name of whoever is described before it

    `My great-aunt, known as Dolly`, `the postman, we called him Sparky`.
    """
    last = reader.items[-1] if len(reader.items) > reader.part_begins else None
    if last is None or last.is_name or last.is_several or not last.person.words or reader.joined:
        return False
    words, verbs = phrase.words, [word.plain in small_words.CALLING and not word.is_large for word in phrase.words]
    if not any(verbs):
        return False
    words = words[:-1] if verbs[-1] else words  # `die wir Dolly nannten`
    begins = next((n for n, word in enumerate(words) if word.is_large and (verbs[-1] or any(verbs[:n]))), len(words))
    name, leads = words[begins:], words[:begins]
    if not name or len(leads) > _MOST_LEADS or not all(word.is_large for word in name):
        return False
    if any(word.is_large for word in leads):
        return False
    last.person = replace(last.person, asks="", is_nameless=False)
    reader.identifies = True
    return _somebody(reader, replace(phrase, words=name, told=between(name, reader.text)))


_MOST_LEADS = 5


def _remark(reader: Reader, phrase: _Phrase) -> bool:
    """remark = pronoun / doubt / year / ("she" / "he") … / small words / kin of the one before          ; a note of her

    Where `and` follows, or the kin is of the first one told (`Ruth, her mother`), it may be another: it asks.
    """
    if not reader.items:
        return False
    words, last = phrase.words, reader.items[-1]
    if phrase.before == "place" and (last.side or last.position or last.from_right) and is_my(words[0]):
        return False  # `Else (links), ihre Mutter (Mitte)`
    if _is_pronoun(words) and reader.joined != "with":
        return True  # `it must be her and Edna`
    described = last.person.is_person and not last.is_name and len(reader.items) > reader.part_begins
    if described and not (reader.joined or reader.ahead.number) and _tells_another_name(words):
        last.person = noted(last.person, phrase.told, *phrase.notes)  # `her mother, née Caron`
        return True
    of_them = last.is_several or words[0].phrase.endswith((" which", "who is who"))
    if of_them and all(word.kind == "unknown" for word in words):
        last.person = noted(last.person, phrase.told)  # `one of the Pratt girls, not sure which`
        return True
    if _is_one_of_them(words):
        last.person = noted(last.person, phrase.told, *phrase.notes)  # `Doris? Or Daisy, one of them`
        return True
    said = words[1:] if len(words) == 2 and words[0].plain in small_words.THE else words
    if last.joined == "and" and len(said) == 1 and said[0].plain in small_words.SAID_OF_SEVERAL:
        last.person = noted(last.person, phrase.told, *phrase.notes)  # `Ella and Martha, twins`
        return True
    if _is_participle(words) and len(reader.items) > reader.part_begins and phrase.before != "colon":
        last.person = noted(last.person, phrase.told, *phrase.notes)  # `Dot in front smiling`
        return True
    if all(word.kind == "unsure" for word in words):
        likely = are_likely(words) and (last.person.likely or not last.person.unsure)
        last.person = noted(replace(last.person, unsure=True, likely=likely), *phrase.notes)  # `Aunt Flo, I think`
        return True
    in_a_year = len(words) == 2 and words[0].text.islower() and words[1].text.isdigit() and len(words[1].text) > 3
    bare = words[1:] if in_a_year else words  # `in 1890`
    is_year = all(word.text.isdigit() for word in bare) and not reader.ahead.number
    leads = phrase.whole.split(" ", 1)[0].lower() in small_words.NEXT
    if not (is_year or _goes_on_of_her(words) or (not leads and _is_remark(reader, words))):
        return False
    if _may_be_next_in_the_row(reader, phrase):
        asks = f"Is “{phrase.told}” {last.person.words}, or somebody else?"
        add(reader, noted(Placed(phrase.told, 0, asks=asks, is_person=False), *phrase.notes), words, is_name=False)
        return True
    last.person = noted(last.person, phrase.told, *phrase.notes)
    whose = len(reader.items) == 1 and words[0].plain in small_words.OF_ANOTHER
    if (phrase.before == "and" or whose) and not last.person.asks:
        last.person = replace(last.person, asks=f"Is “{phrase.told}” {last.person.words}, or someone else?")
    return True


def _with_small_words(reader: Reader, phrase: _Phrase) -> bool:
    """with small words = "with" word {word} / "with" "his" part of the body …          ; a note of the one before

    None of the words is large or `my`; `with his hand on Charlie's shoulder` may name others, who are asked about.
    """
    words = phrase.words
    begins = len(words) > 1 and words[0].plain in small_words.WITH and not words[0].is_large
    begins = begins and words[0].kind != "my"  # `con | su marido`
    says_how = len(words) > 3 and words[1].kind == "my" and words[2].plain in small_words.HELD_ON
    small = not any(word.is_large or word.kind == "me" for word in words)
    says_how = says_how or (begins and small and is_of_several(words[1:]))  # `with his mates from the ship`
    if not (reader.items and begins):
        return False
    if any(word.is_large or word.kind in ("me", "my") for word in words) and not says_how:
        return False
    reader.items[-1].person = noted(reader.items[-1].person, phrase.told, *phrase.notes)
    return True


def _rest_of_a_name(reader: Reader, phrase: _Phrase) -> bool:
    """rest = suffix / born as / married as / nickname          ; `Rusk, Jr.`, `Joan Rusk, née Pell`"""
    if phrase.opens or phrase.words[0].kind in ("or", "unknown"):
        return False
    if is_my(phrase.words[0]) and len(phrase.words) > 1 and relation(phrase.words[1]):
        return False  # `son mari Luc « Titi » Kermarec`
    adds = phrase.whole.startswith(("a ", "an ")) or phrase.whole.endswith(" was")  # `a` is `and` of Czech too
    goes_on = next((told for told in ((phrase.whole,) if adds else ()) + (phrase.told,) if _goes_on(reader, told)), "")
    if not goes_on:
        return False
    last = reader.items[-1]
    if any(word.istitle() for word in last.person.note.split()[1:]):  # `…, who is like her aunt Elsa Holm, née Berg`
        asks = last.person.asks or f"Is “{goes_on}” told of “{last.person.words}”?"
        last.person = replace(noted(last.person, goes_on, *phrase.notes), asks=asks)
        return True
    if _is_quoted(goes_on):
        asks = f"Is {goes_on} {last.person.words}, or somebody else?"
        person = noted(Placed(goes_on, 0, asks=asks, is_person=False), *phrase.notes)
        add(reader, person, phrase.words, is_name=False)
        return True
    last.person = noted(replace(last.person, words=f"{last.person.words}, {goes_on}"), *phrase.notes)
    return True


def _leading(reader: Reader, phrase: _Phrase) -> bool:
    """opening = small word {word} "," somebody          ; `On the sofa, Aunt Anna`: a note of who follows"""
    words = phrase.words
    leads = (
        begins_remark(words)
        or leads_to_a_thing(words) == len(words)
        or (len(words) > 1 and words[0].plain in small_words.WITH)
        or _is_participle(words)
    )
    opens = phrase.opens and phrase.before == "comma"
    opens = opens and (begins_person(phrase.following) or _heads_a_list(phrase.following))
    if not (leads and opens) or any(word.is_large for word in words[1:]):
        return False
    reader.ahead.add_note(phrase.told)
    return True


def _is_participle(words: Sequence[Element]) -> bool:
    """`rowing` alone."""
    return len(words) == 1 and words[0].text.islower() and words[0].plain.endswith("ing") and not relation(words[0])


def _unknown_several(reader: Reader, phrase: _Phrase) -> bool:
    """unknown several = ["the"] ["first"] number unknown {small word} / unknown ["the"] ["first"] number

    `two I can't name`, `three unknown girls`; `don't know the first two`.
    """
    number = how_many_unknown(phrase.words)
    said = between(without_more(phrase.words)[2:], reader.text) if phrase.words[0].kind != "unknown" else ""
    for _ in range(number):
        add(reader, noted(Placed("", 0), said, *phrase.notes), (), is_name=False)
    if number:
        reader.ahead, reader.joined, reader.place_since = Ahead(), "", False
    return number > 0


def _total(reader: Reader, phrase: _Phrase) -> bool:
    """total = number "people"          ; `there are six of us`: how many stand in the row"""
    total = how_many_in_all(phrase.words) or _how_many_of_a_group(phrase.words)
    if total:
        reader.totals[reader.row] = total
    return total > 0


def _how_many_of_a_group(words: Sequence[Element]) -> int:
    """`group of seven`."""
    is_group = len(words) == _GROUP_OF and words[0].plain in small_words.GROUP and words[1].plain in small_words.OF
    last = words[-1]
    return (last.value or small_words.CARDINALS.get(last.plain, 0)) if is_group else 0


_GROUP_OF = 3


def _family(reader: Reader, phrase: _Phrase) -> bool:
    """family = ["all"] "the" name "s" ":" / name "family" ":"          ; `All the Pells: Anna`, `Rourke family: …`"""
    family = family_of_several(phrase.words) if phrase.before == "colon" else None
    if family:
        reader.ahead.add_note(phrase.told)
        reader.family_stays = family.family
    return family is not None


def _group(reader: Reader, phrase: _Phrase) -> bool:
    """group names (`groups`)          ; the names stand behind the group, a colon, a direction, or a comma

    Before a comma a given name may be the first of them, and asks.
    """
    names_follow = phrase.before == "and" and phrase.following and token_of(phrase.following[0].text).is_given
    titled = None if names_follow else titled_family(phrase.words)
    group = titled or group_of(phrase.words)
    if not group or group.some:
        return False
    names = phrase.words[group.end :]
    if not (names or titled) and phrase.before == "comma" and token_of(group.family).is_given:
        return False  # `Die drei Schwestern Else, Irma …`: it asks whether that is the family
    before, following = phrase.before, phrase.following
    if not (names or before == "colon" or _heads_a_list(following) or _goes_on_with_names(before, following)):
        return titled is not None and _asks_who_they_are(reader, phrase)
    reader.family_ahead = between(phrase.words[: group.end], reader.text), group.family
    reader.family_stays = "" if names else group.family
    if names:
        _somebody(reader, replace(phrase, words=names, told=between(names, reader.text)))
    reader.joined, reader.place_since = "", False
    return True


def _asks_who_they_are(reader: Reader, phrase: _Phrase) -> bool:
    asks = f"Who are “{phrase.told}”?"
    add(reader, noted(Placed(phrase.told, 0, asks=asks, is_person=False), *phrase.notes), phrase.words, is_name=False)
    reader.joined, reader.place_since = "", False
    return True


def _somebody(reader: Reader, phrase: _Phrase) -> bool:
    """somebody (`somebody`): one person, the two of `Mr. and Mrs. Pell`, or words that ask"""
    for person, is_name in people_named(reader, phrase.words, phrase.told):
        unsure, likely = person.unsure or phrase.doubted, person.likely and not phrase.doubted
        kept = f"{person.words} {person.note}"
        inside = (note.text for note in phrase.inside if note.text not in kept)
        add(
            reader,
            noted(replace(person, unsure=unsure, likely=likely), *inside, reader.ahead.note, *phrase.notes),
            phrase.words,
            is_name=is_name,
        )
        reader.ahead = Ahead()
    reader.joined, reader.place_since = "", False
    return True


_PRODUCTIONS = (
    _taking_back, _opening, _where_and_who, _called, _remark, _with_small_words, _rest_of_a_name, _leading,
    _unknown_several, _total, _family, _group, _somebody,
)  # fmt: skip


def ask_of_unseen(reader: Reader, element: Element) -> None:
    """`partly hidden` behind somebody: told of her, or another one of the row."""
    before = reader.items[-1].person.words if reader.items else ""
    of_whom = f"told of “{before}”, or " if before else ""
    asks = f"Is “{element.text}” {of_whom}somebody else of the picture?"
    add(reader, Placed(element.text, 0, asks=asks, is_person=False), (), is_name=False)
    reader.ahead, reader.joined, reader.place_since = Ahead(), "", False


def _taken_back(item: Item) -> None:
    if item.is_name and item.person.is_person:
        item.take_back()


def _tells_another_name(words: Sequence[Element]) -> bool:
    """`née Caron`: a mark of a name at birth, and that name."""
    marks = words[0].text.islower() and words[0].plain.rstrip(".") in _MARKS_OF_BIRTH
    return marks and len(words) > 1 and words[-1].is_large


_MARKS_OF_BIRTH = frozenset(mark for mark, part in MARKERS if part == "born_as")


def _goes_on_of_her(words: Sequence[Element]) -> bool:
    """`she was in hospital that day`, `so she isn't in it`: a sentence of whoever was named before."""
    at = int(words[0].plain in ("so", "because", "as", "and", "but")) if words else 0
    if len(words) < at + 2 or words[at + 1].is_large:
        return False
    said = words[at].text.replace("’", "'")
    return (said.lower() if "'" in said else said).partition("'")[0] in ("she", "he", "they", "who")  # `she'd be six`


def _is_quoted(told: str) -> bool:
    """Whether it is a nickname alone: behind a comma it may be of whoever was named before, or of another."""
    return len(told) > 2 and told[0] in "“”\"„«»‘'" and told[-1] in "“”\"„«»’'"


def _is_one_of_them(words: Sequence[Element]) -> bool:
    """`one of them`, `einer von ihnen`: of whoever was told before."""
    if len(words) != _ONE_OF_THEM or words[1].plain not in small_words.OF or words[1].is_large:
        return False
    return small_words.CARDINALS.get(words[0].plain, 1) == 1 and words[2].plain in small_words.OF_SEVERAL


_ONE_OF_THEM = 3


def _is_pronoun(words: Sequence[Element]) -> bool:
    """`her`, of whoever was told before."""
    said = [word for word in words if word.kind not in ("unsure", "verb")]
    return len(said) == 1 and said[0].text in ("her", "him", "them", "she", "he", "they")


def _are_titles_of_two(words: Sequence[Element], following: Sequence[Element]) -> bool:
    """`Mr. and Mrs. Pell`, `Ma and Pa Kettleby`: titles, or kin before kin and a family name."""
    if NOUNS.get(following[0].plain) == "many" or following[0].kind in ("my", "me"):
        return False  # `mit Frau und Kindern`, `The Queen and my dad`
    if all(word.plain in TITLES for word in words):
        names = len(words) == 1 and token_of(words[0].text).is_given and not words[0].text.endswith(".")
        return not (names and (following[0].plain not in TITLES or token_of(following[0].text).is_given))  # `Phil`
    is_kin = len(words) == 1 and words[0].is_large and words[0].plain in KIN_WORDS and len(following) > 1
    if not is_kin or following[0].plain not in KIN_WORDS or not following[0].is_large:
        return False
    name = following[1]
    return name.kind == "word" and name.is_large and not token_of(name.text).is_given and name.plain not in KIN_WORDS


def _doubts(note: Element) -> bool:
    """`Edna (or is it Vi?)`, `(I think) Muriel`: a note that asks, or that says nothing but how unsure the name is."""
    only_unsure = bool(note.inside) and all(piece.kind == "unsure" for piece in note.inside)
    return only_unsure or note.text.endswith("?")


def _goes_on_with_names(before: str, following: Sequence[Element]) -> bool:
    """Whether a comma and a list of names follow: `The Marsh brothers, Harry, Tom and Alf`."""
    if before != "comma" or not following or not (following[0].is_large and token_of(following[0].text).is_given):
        return False
    at = next((at for at, element in enumerate(following) if not (element.kind == "word" and element.is_large)), 0)
    goes_on = following[at].kind == "comma" and following[at + 1 : at + 2] and following[at + 1].is_large
    return following[at].kind == "and" or bool(goes_on)


def _heads_a_list(following: Sequence[Element]) -> bool:
    """Whether a colon follows, behind a direction or small words alone: `the Tamm sisters, l. to r.: …`, `the Dunne
    girls, oldest to youngest: …`."""
    at = next((at for at, element in enumerate(following) if element.kind == "colon"), 0)
    is_direction = [element.kind for element in following[:at]] in (["ltr"], ["rtl"])
    small = all(element.kind in ("word", "verb", "of") and not element.is_large for element in following[:at])
    return at > 0 and (is_direction or small)


def _is_remark(reader: Reader, words: Sequence[Element]) -> bool:
    """Whether the words say something of the name before them: `Anna, my sister, …`, `Tom, aged 5`."""
    last = reader.items[-1]
    if words and words[0].is_genitive and fold(words[0].plain[:-2]) == fold(last.person.words):
        return False  # `Mabel, Mabel's sister`
    does = bool(words) and words[0].plain.endswith("ing")  # `or is it Ned, holding the cup`
    goes_on = (last.person.is_person or does) and words and begins_remark(words) and not words[0].is_large
    if (
        not (last.is_name or goes_on)
        or (last.person.note and not last.is_identified and (not goes_on or _tells_of_others(last.person.note)))
        or reader.joined
        or reader.ahead.number
        or reader.place_since
    ):
        return False
    if len(reader.items) <= reader.part_begins:
        return False
    return is_remark(words) and not (_is_another_sex(reader.items[-1], words) or _is_other_kin(reader.items[-1], words))


def _may_be_next_in_the_row(reader: Reader, phrase: _Phrase) -> bool:
    """`l. to r.: Anna Tamm, my mother, Tom`: behind a direction, and where commas alone part the people, kin of the one
    who tells may be she who was named, or the next one."""
    is_last = phrase.before in ("", "end") and len(reader.items) > reader.part_begins + 1
    goes_on = (phrase.before == "comma" and begins_person(phrase.following)) or is_last
    words = phrase.words
    is_whose = len(words) == 2 and words[0].kind == "my"
    return reader.group > 0 and goes_on and is_whose and (bool(relation(words[1])) or is_noun_of_one(words[1].text))


def _is_other_kin(item: Item, words: Sequence[Element]) -> bool:
    """`Tante Grete, meine Mutter`: nobody is an aunt and the mother of the one who tells."""
    told = {KIN_WORDS.get(token.plain, "") for token in tokens_of(item.person.words) if not token.is_given}
    own = relation(words[1]) if len(words) > 1 and words[0].plain in MY_OWN else ""
    return own in ("mother", "father") and bool(told & {"aunt", "uncle", "cousin"})


def _is_another_sex(item: Item, words: Sequence[Element]) -> bool:
    """Whether the words tell kin of a woman, and the name before them is a man's, or the other way: `Naomi, Ruth's
    husband`."""
    sex = definitely(words)
    given = {token.plain for token in tokens_of(item.person.words)}
    kin_words = [token.plain for token in tokens_of(item.person.words) if not token.is_given]
    kin = {small_words.SEX.get(KIN_WORDS.get(plain, ""), "") for plain in kin_words}
    if kin & {"woman", "man"} - {sex} and sex in ("woman", "man"):
        return True  # `zio Pino, mia madre`
    return bool(given & {"woman": MEN_ALONE, "man": WOMEN_ALONE}.get(sex, frozenset()))


def _tells_of_others(note: str) -> bool:
    """Whether a note names others too, of whom what follows may be said: `with the whole Pell family`."""
    first, *words = note.split()
    return first.lower() in small_words.WITH and any(word[0].isupper() for word in words)


_MARKS_TOO = frozenset("gen veuve vve witwe wwe weduwe ved vda gift".split())
"""Titles that, written small, tell of a name before them whose widow she is: `Anne Le Goff, veuve Kermarec`."""


def _goes_on(reader: Reader, told: str) -> bool:
    """Whether the words go on with the name before them: `Rusk, Jr.`, `Joan Rusk, née Pell`."""
    last = reader.items[-1]
    first = told.split()[0].rstrip(".")
    behind = told.split()[1:2] if fold(first) in small_words.ARTICLES else []
    is_title = bool(behind) and fold(behind[0]) in TITLES  # `Sra. Ruiz, la señora Navarro`
    is_title = is_title or (fold(first) in TITLES and (first.lower() not in _MARKS_TOO or not first.islower()))
    if not last.is_name or reader.joined or is_title or _is_a_whole_name(told):
        return False
    before, after = read_name(last.person.words, reader.known), read_name(f"{last.person.words}, {told}", reader.known)
    if after.religious and not before.religious and not before.title:
        before = replace(before, title=after.title)  # `Edith Gaunt, later Sister Mary Clare`
    if after.nickname == before.given:  # `Jim Barnes, christened James`
        before = replace(before, given=after.given)
    return after != before and replace(after, **_TOLD_BEHIND) == replace(before, **_TOLD_BEHIND)


_ASIDE = re.compile(r"""\([^()]*\)|["“„«‘'][^"”“»’']*["”“»’']""")


def _is_a_whole_name(told: str) -> bool:
    """`Bodil (Misse) Thomsen`: a given name first, and a family name."""
    tokens = tokens_of(_ASIDE.sub(" ", told))
    is_family = bool(tokens[1:]) and not (tokens[-1].is_given or tokens[-1].is_small or tokens[-1].plain in SUFFIXES)
    return is_family and tokens[0].is_given


_TOLD_BEHIND: dict[str, Any] = dict.fromkeys(
    ("born_as", "married_as", "patronymic", "suffix", "nickname", "religious", "asks"), ""
)
"""Parts of a name that may stand behind it and a comma."""
