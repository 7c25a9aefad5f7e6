"""One person of who stands where: the words gathered become somebody, or a remark on the one before (`reader`)."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from boxlore.core.people.names.lists_table import MEN, WOMEN
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.words_table import KIN_WORDS, TITLES
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.groups import family_of_several, group_of
from boxlore.core.people.who_is_where.item_words import (
    begins_person,
    between,
    definitely,
    how_many,
    how_many_in_all,
    is_description,
    is_of_several,
    is_remark,
    name_and_remark,
    person_named,
    without_leads,
    without_verbs_behind,
)
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.reader_state import Ahead, Reader
from boxlore.core.people.who_is_where.remarks import begins_remark, head_and_remark, is_absent
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold


def end_item(reader: Reader, before: str = "", following: Sequence[Element] = ()) -> None:
    """The words gathered so far as one person, or as a remark on the one before."""
    ahead = reader.ahead
    whole = between(reader.words, reader.text)
    bare = without_verbs_behind(without_leads(reader.words)) if reader.words else ()
    named, remark = name_and_remark(bare)
    words = list(named)
    inside = [note for note in reader.notes if words and words[0].start < note.start and note.end < words[-1].end]
    notes = [note.text for note in reader.notes if note not in inside]  # `Peggy (Margaret) Loftus` has it in the name
    doubted = any(_doubts(note) for note in reader.notes)
    counted = [word for word in remark if word.plain not in small_words.ARTICLES]
    if len(counted) == 1 and counted[0].kind == "ordinal" and not ahead.position:
        ahead.position, reader.placed = counted[0].value, True  # `ich bin die Zweite`
    if remark:
        notes.insert(0, between(remark, reader.text))
    if reader.aside:
        notes.append(reader.text[reader.aside[0].start : reader.aside[-1].end])
    if before == "and" and words and following and _are_titles_of_two(words, following):
        reader.words = [replace(word, kind="title") for word in words]
        return
    kept = reader.notes
    reader.words, reader.notes, reader.aside = [], [], []
    if not words and not notes:
        return
    if not words and reader.items:
        last = reader.items[-1]
        last.person = noted(last.person, *notes)
        return
    told = reader.text[words[0].start : words[-1].end] if words else ""
    opens_part = len(reader.items) == reader.part_begins
    if (
        opens_part
        and words
        and before in ("comma", "and")
        and all(word.plain in small_words.CORRECTIONS for word in words)
    ):
        reader.notes = kept
        if reader.items:
            _taken_back(reader.items[-1])  # `Betty... no, wait, it's Kathleen`
        return
    if opens_part and before == "comma" and words and all(word.plain in small_words.INTERJECTIONS for word in words):
        return  # `Well, that's Betty`
    is_correction = bool(words) and all(word.plain in small_words.CORRECTIONS for word in words)
    if is_correction and reader.items and not reader.items[-1].person.words:
        return  # `No idea, sorry`
    if reader.items and is_correction:
        last = reader.items[-1]
        asks = f"Is “{last.person.words}” in the picture?"
        last.person = replace(noted(last.person, told, *notes), asks=asks, is_person=False)
        last.is_name = False
        return
    if opens_part and before == "comma" and words and words[0].plain in small_words.SAID_BY:
        return  # `According to Ethel, this is Harold`
    if reader.items and _is_pronoun(words) and reader.joined != "with":
        return  # `it must be her and Edna`
    is_year = all(word.text.isdigit() for word in words) and not ahead.number
    if reader.items and (is_year or _goes_on_of_her(words) or _is_remark(reader, words)):
        last = reader.items[-1]
        last.person = noted(last.person, told, *notes)
        whose = len(reader.items) == 1 and words[0].plain in small_words.OF_ANOTHER
        if (before == "and" or whose) and not last.person.asks:
            last.person = replace(last.person, asks=f"Is “{told}” {last.person.words}, or someone else?")
        return
    if reader.items and _begins_with(words) and not any(word.is_large or word.kind in ("me", "my") for word in words):
        last = reader.items[-1]
        last.person = noted(last.person, told, *notes)  # `Ana y Luis, con los padrinos`
        return
    adds = whole.startswith(("a ", "an ")) or whole.endswith(" was")  # `a` is `and` of Czech too
    for goes_on in (whole, told) if adds else (told,):
        if len(reader.items) > reader.part_begins and words[0].kind not in _NO_NAME and _goes_on(reader, goes_on):
            last = reader.items[-1]
            if _is_quoted(goes_on):
                asks = f"Is {goes_on} {last.person.words}, or somebody else?"
                _add(reader, noted(Placed(goes_on, 0, asks=asks, is_person=False), *notes), words, is_name=False)
                return
            last.person = noted(replace(last.person, words=f"{last.person.words}, {goes_on}"), *notes)
            return
    opens = len(reader.items) == reader.part_begins and before == "comma" and begins_person(following)
    leads = bool(words) and (begins_remark(words) or (len(words) > 1 and words[0].plain in small_words.WITH))
    if leads and opens and not any(word.is_large for word in words[1:]):
        reader.ahead.note, reader.words = told, []  # `On the sofa, Aunt Anna and Tom`
        return
    if unknown := _how_many_unknown(words):
        for _ in range(unknown):
            _add(
                reader, noted(Placed("", 0), between(_without_leads(words)[2:], reader.text), *notes), (), is_name=False
            )
        reader.ahead, reader.joined, reader.place_since = Ahead(), "", False
        return
    if words and (total := how_many_in_all(words)):
        reader.totals[reader.row] = total
        return
    if before == "colon" and (family := family_of_several(words)):
        reader.ahead.note, reader.family_stays = told, family  # `All the Pells: Anna, Ruth`
        return
    group = group_of(words, reader.text) if words else None
    names = words[group.end :] if group else []
    if (
        group
        and not group.some
        and (names or before == "colon" or _heads_a_list(following) or _goes_on_with_names(before, following))
    ):
        reader.family_ahead = between(words[: group.end], reader.text), group.family
        reader.family_stays = "" if names else group.family
        words, told = names, between(names, reader.text)
    for person, is_name in _people(reader, words, told) if words else ():
        person = noted(replace(person, unsure=person.unsure or doubted), reader.ahead.note, *notes)
        _add(reader, person, words, is_name=is_name)
        reader.ahead = Ahead()
    if words:
        reader.ahead = Ahead()
    reader.joined, reader.place_since = "", False


_NO_NAME = ("or", "unknown")
"""Kinds of elements with which no name goes on."""


def ask_of_unseen(reader: Reader, element: Element) -> None:
    """`partly hidden` behind somebody: told of her, or another one of the row."""
    before = reader.items[-1].person.words if reader.items else ""
    of_whom = f"told of “{before}”, or " if before else ""
    asks = f"Is “{element.text}” {of_whom}somebody else of the picture?"
    _add(reader, Placed(element.text, 0, asks=asks, is_person=False), (), is_name=False)
    reader.ahead, reader.joined, reader.place_since = Ahead(), "", False


def _taken_back(item: Item) -> None:
    if item.is_name and item.person.is_person:
        asks = f"Is “{item.person.words}” in the picture?"
        item.person, item.is_name = replace(item.person, asks=asks, is_person=False), False


def _how_many_unknown(words: Sequence[Element]) -> int:
    """The number of `two I can't name` and of `three unknown girls`; 0 for any other words."""
    bare = _without_leads(words)
    if len(bare) < 2 or bare[1].kind != "unknown" or any(word.is_large for word in bare[2:]):
        return 0
    number = how_many(bare) if bare[0].kind == "number" or bare[0].plain in small_words.CARDINALS else 0
    return number if 0 < number <= _MOST_UNKNOWN else 0


def _without_leads(words: Sequence[Element]) -> Sequence[Element]:
    at = next((at for at, word in enumerate(words) if word.plain not in small_words.LEADS), 0)
    return words[at:]


_MOST_UNKNOWN = 40
"""So many people whom nobody knows are places in a row; more is a year, or a crowd."""


def _goes_on_of_her(words: Sequence[Element]) -> bool:
    """`she was in hospital that day`, `so she isn't in it`: a sentence of whoever was named before."""
    at = int(words[0].plain in ("so", "because", "as", "and", "but")) if words else 0
    return len(words) > at + 1 and words[at].text in ("she", "he", "they", "who") and not words[at + 1].is_large


def _is_quoted(told: str) -> bool:
    """Whether it is a nickname alone: behind a comma it may be of whoever was named before, or of another."""
    return len(told) > 2 and told[0] in "“”\"„«»‘'" and told[-1] in "“”\"„«»’'"


def _is_pronoun(words: Sequence[Element]) -> bool:
    """`her`, of whoever was told before."""
    said = [word for word in words if word.kind not in ("unsure", "verb")]
    return len(said) == 1 and said[0].text in ("her", "him", "them", "she", "he", "they")


def _are_titles_of_two(words: Sequence[Element], following: Sequence[Element]) -> bool:
    """`Mr. and Mrs. Pell`, `Ma and Pa Kettleby`: titles, or kin before kin and a family name."""
    if all(word.plain in TITLES for word in words):
        return True
    is_kin = len(words) == 1 and words[0].is_large and words[0].plain in KIN_WORDS and len(following) > 1
    if not is_kin or following[0].plain not in KIN_WORDS or not following[0].is_large:
        return False
    name = following[1]
    return name.kind == "word" and name.is_large and not token_of(name.text).is_given and name.plain not in KIN_WORDS


def _leads_a_name(word: Element) -> bool:
    return word.plain in TITLES or (word.plain in KIN_WORDS and word.is_large)


def _doubts(note: Element) -> bool:
    """`Edna (or is it Vi?)`, `(I think) Muriel`: a note that asks, or that says nothing but how unsure the name is."""
    only_unsure = bool(note.inside) and all(piece.kind == "unsure" for piece in note.inside)
    return only_unsure or (note.text.endswith("?") and len(note.text) > 1)


def _begins_with(words: Sequence[Element]) -> bool:
    return len(words) > 1 and words[0].plain in small_words.WITH and not words[0].is_large


def _goes_on_with_names(before: str, following: Sequence[Element]) -> bool:
    """Whether a comma and a list of names follow: `The Marsh brothers, Harry, Tom and Alf`."""
    if before != "comma" or not following or not (following[0].is_large and token_of(following[0].text).is_given):
        return False
    joins = next((element.kind for element in following if not (element.kind == "word" and element.is_large)), "")
    return joins in ("comma", "and")


def _heads_a_list(following: Sequence[Element]) -> bool:
    """Whether a direction and a colon follow: `the Tamm sisters, l. to r.: …`."""
    return [element.kind for element in following[:2]] in (["ltr", "colon"], ["rtl", "colon"])


def _add(reader: Reader, person: Placed, words: Sequence[Element], *, is_name: bool) -> None:
    """One person at the place told before the words, or who the one described before is."""
    if reader.identifies:
        described = reader.items[-1]
        unsure = person.unsure or described.person.unsure
        described.person = replace(person, note=_all_notes(described.person, person.note), unsure=unsure)
        described.is_name, described.is_described, reader.identifies = is_name, False, False
        described.definite = "" if is_name else described.definite
        reader.identified = not is_name
        return
    if reader.identified and is_name and not reader.joined and not reader.place_since:
        kin = reader.items[-1]
        kin.person = replace(person, note=", ".join(filter(None, (kin.person.note, kin.person.words, person.note))))
        kin.is_name, reader.identified = True, False
        return
    reader.identified = False
    ahead = reader.ahead
    side = ahead.side or reader.side_stays
    item = Item(person, reader.row, ahead.number, ahead.position, side, ahead.side_words, is_name, reader.group)
    item.from_right, item.right_words = ahead.from_right, ahead.right_words
    item.is_held = bool(reader.items) and (ahead.is_held or _is_held(reader, person))
    item.is_beside = bool(reader.items) and ahead.is_beside
    if item.is_held or item.is_beside:
        item.row = reader.items[-1].row
    item.of_group = reader.family_stays
    if is_name and reader.family_ahead[0]:
        note, item.of_group = reader.family_ahead
        item.person, reader.family_ahead = noted(person, note), ("", "")
    item.joined = reader.joined
    item.beside_whom, reader.whom = reader.whom, ""
    item.has_place, item.in_case = bool(item.row), reader.in_case
    item.is_described = bool(words) and person.is_person and not is_name and is_description(words)
    item.part = reader.part_begins
    item.definite = definitely(words) if words and person.is_person and not is_name else ""
    item.is_several = (
        bool(words) and not person.is_person and (is_of_several(words) or group_of(words, reader.text) is not None)
    )
    item.width = how_many(words) if words and not person.is_person else 1
    if reader.last_absent or (words and words[0].kind == "or"):
        item.width = 0
    if reader.last_absent:
        item.row = ""
    reader.items.append(item)


def _is_held(reader: Reader, person: Placed) -> bool:
    """`Tom on her knee`, told behind somebody: whoever is held has no place of her own in the row."""
    words = person.note.split(", ")[-1].split()
    on_whom = len(words) > 1 and fold(words[-1]) in small_words.HELD_ON and fold(words[0]) not in small_words.WITH
    return on_whom and len(reader.items) > reader.part_begins


def _all_notes(described: Placed, note: str) -> str:
    return ", ".join(filter(None, (described.words, described.note, note)))


def noted(person: Placed, *notes: str) -> Placed:
    note = ", ".join(note for note in (person.note, *notes) if note)
    return replace(person, note=note)


def _is_remark(reader: Reader, words: Sequence[Element]) -> bool:
    """Whether the words say something of the name before them: `Anna, my sister, …`, `Tom, aged 5`."""
    last = reader.items[-1]
    goes_on = last.person.is_person and words and begins_remark(words) and not words[0].is_large
    if (
        not (last.is_name or goes_on)
        or (last.person.note and (not goes_on or _tells_of_others(last.person.note)))
        or reader.joined
        or reader.ahead.number
        or reader.place_since
    ):
        return False
    if len(reader.items) <= reader.part_begins:
        return False
    return is_remark(words) and not _is_another_sex(reader.items[-1], words)


def _is_another_sex(item: Item, words: Sequence[Element]) -> bool:
    """Whether the words tell kin of a woman, and the name before them is a man's, or the other way: `Naomi, Ruth's
    husband`."""
    sex = definitely(words)
    given = {token.plain for token in tokens_of(item.person.words)}
    kin_words = [token.plain for token in tokens_of(item.person.words) if not token.is_given]
    kin = {small_words.SEX.get(KIN_WORDS.get(plain, ""), "") for plain in kin_words}
    if kin & {"woman", "man"} - {sex} and sex in ("woman", "man"):
        return True  # `zio Pino, mia madre`
    return bool(given & {"woman": MEN - WOMEN, "man": WOMEN - MEN}.get(sex, frozenset()))


def _tells_of_others(note: str) -> bool:
    """Whether a note names others too, of whom what follows may be said: `with the whole Pell family`."""
    first, *words = note.split()
    return first.lower() in small_words.WITH and any(word[0].isupper() for word in words)


def _goes_on(reader: Reader, told: str) -> bool:
    """Whether the words go on with the name before them: `Rusk, Jr.`, `Joan Rusk, née Pell`."""
    last = reader.items[-1]
    if not last.is_name or reader.joined or told.split()[0].rstrip(".").lower() in TITLES:
        return False
    before, after = read_name(last.person.words, reader.known), read_name(f"{last.person.words}, {told}", reader.known)
    return after != before and replace(
        after, born_as="", married_as="", suffix="", nickname="", religious="", asks=""
    ) == replace(before, born_as="", married_as="", suffix="", nickname="", religious="", asks="")


def _people(reader: Reader, words: Sequence[Element], told: str) -> Iterable[tuple[Placed, bool]]:
    """One person, or the two of `Mr. and Mrs. Pell`."""
    absent = reader.part_absent or (reader.last_absent and reader.joined == "and")
    absent = absent or (is_absent(words) and not head_and_remark(words, reader.text, reader.known))
    reader.last_absent = absent
    if absent:
        yield Placed(told, 0, asks=f"Is “{told}” someone in the picture?", is_person=False), False
        return
    titles = [word for word in words if word.kind == "title"]
    rest = words[len(titles) :]
    names = [word for word in rest if not _leads_a_name(word)]
    if titles and names and len(names) < len(rest):
        ends = next((at for at, word in enumerate(names) if at and word.text.islower()), len(names))
        name, note = between(names[:ends], reader.text), between(names[ends:], reader.text)
        yield Placed(f"{titles[0].text} {name}", 0), True
        yield Placed(f"{rest[0].text} {name}", 0, note=note), True
        return
    yield person_named(words, reader.text, reader.known, surely=reader.joined == "with")
