"""What somebody may write into a field by hand: told text in any words, the few words that a closed list has, nothing
that another command knows better, and the collection's own questions only where there are any.

The log takes more than this (`core.fields.guard`): an older collection, a tree file and a transfer keep what they hold.
"""

import re
from collections.abc import Callable, Iterator, Mapping

from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import check_typed, is_question
from boxlore.core.fields.originals import SIZE_WORDS, typed_size
from boxlore.core.fields.table import OWN, field_of
from boxlore.core.originals.kinds import typed_kind
from boxlore.core.people.person import Registry
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.prompts import own_fields

CHOICES: Mapping[str, Mapping[str, str]] = {
    "living": {"yes": "yes", "no": "no"},
    "sex": {
        **dict.fromkeys(("female", "f", "woman", "girl"), "female"),
        **dict.fromkeys(("male", "m", "man", "boy"), "male"),
        **dict.fromkeys(("other", "x"), "other"),
    },
}
"""Field -> the words that may be typed, in any case -> the word that is kept. What GEDCOM (7.0, enumset-SEX) calls M, F
and X is kept as a tree file's is."""

_LINK = re.compile(r"(https?://|urn:)[^\s<>\"]+", re.IGNORECASE)
_SCHEME = re.compile(r"[a-z][a-z0-9+.-]*:\S*", re.IGNORECASE)


def _link(words: str) -> str:
    if not _LINK.fullmatch(words):
        raise WrongUse(
            f"identifier: “{words[:40]}” is no link.",
            "Write the whole address, beginning with https://, http:// or urn:.",
        )
    return words


def _rights(words: str) -> str:
    if _SCHEME.fullmatch(words) and not _LINK.fullmatch(words):
        raise WrongUse(
            f"rights: “{words[:40]}” is no address of rights.",
            "Write one that begins with https://, or say it in words.",
        )
    return words


SHAPES: Mapping[str, Callable[[str], str]] = {
    "kind": typed_kind,
    "size": lambda words: SIZE_WORDS.write(typed_size(words)),
    "identifier": _link,
    "rights": _rights,
}
"""Field -> what makes the words that are kept of those typed, or raises WrongUse."""

KEPT_FACTS = "kind, found_in, size"
"""Fields of an item that are not told by anybody and can be written by hand."""

ELSEWHERE: Mapping[tuple[Kind, str], str] = {
    (Kind.ITEM, "number"): "An item keeps its number for life.",
    (Kind.ITEM, "file_name"): "The name of a scan's file is noted when it is taken in: boxlore intake.",
    (Kind.ITEM, "kept"): "Say where it lies with: boxlore housing move.",
    (Kind.ITEM, "row"): "Say who stands where with: boxlore people shown ITEM “left to right: …”.",
    (Kind.ITEM, "audience"): "Say who may see it with: boxlore people audience --item ITEM AUDIENCE.",
    (Kind.ITEM, "wanted"): "Read the archive's answer with: boxlore offer --answer FILE.csv.",
    (Kind.PERSON, "audience"): "Say who may see a person with: boxlore people audience PERSON AUDIENCE.",
    (Kind.PERSON, "consent"): "Note a consent with: boxlore people consent PERSON --for name.",
    (Kind.PERSON, "merged_into"): "Say that two are one with: boxlore people merge KEEP OTHER.",
    (Kind.PERSON, "different"): "Say that two are two with: boxlore people apart ONE OTHER.",
}
"""Fields whose words are more than a person should have to write -> what to use instead."""


def typed_words(collection: Collection, kind: Kind, name: str, words: str) -> str:
    """The words as they are kept, `''` for what is not known. Raises WrongUse, saying what may be written."""
    check_field(collection, kind, name)
    if (kind, name) in ELSEWHERE:
        raise WrongUse(f"“{name}” is not told in words.", ELSEWHERE[kind, name])
    if not words or is_question(words):
        return words
    if name in SHAPES:
        return SHAPES[name](words)
    if name not in CHOICES:
        return words
    check_typed(words)
    kept = CHOICES[name].get(words.strip().casefold())
    if kept is None:
        choices = ", ".join(dict.fromkeys(CHOICES[name].values()))
        raise WrongUse(f"{name}: “{words.strip()[:40]}” cannot be meant.", f"Write one of: {choices}.")
    return kept


def check_field(collection: Collection, kind: Kind, name: str) -> None:
    """Raises WrongUse for a field that there is not for that kind of thing; it lists the collection's own fields too.

    A field of a question that is asked no more can still be told while words in it are kept.
    """
    try:
        field_of(name, kind)
        if not name.startswith(OWN):
            return
        own = own_fields(collection.folder)
    except WrongUse as error:
        own = own_fields(collection.folder) if kind is Kind.ITEM else ()
        more = f" Of this collection's own: {', '.join(own)}." if own else ""
        facts = f" Of how it is: {KEPT_FACTS}." if kind is Kind.ITEM else ""
        raise WrongUse(error.problem, f"{error.what_to_do}{more}{facts}") from None
    if name not in own and name not in collection.store.own_fields():
        asked = f"Its own questions are: {', '.join(own)}." if own else "It has no questions of its own."
        raise WrongUse(
            f"This collection asks no question “{name[:40]}”.", f"{asked} prompts.toml in its folder holds them."
        )


def check_kin(people: Registry, person_id: str, name: str, relative_id: str) -> None:
    """Raises WrongUse for somebody told as her own father, mother or spouse, or as a parent of her own ancestor."""
    person, relative = people.get(person_id), people.get(relative_id)
    if person is None or relative is None:
        return
    if person.id == relative.id:
        raise WrongUse(
            f"{person.name} cannot be the {name} of {person.name}.",
            f"If somebody else of that name is meant, tell them apart: “{person.name} the elder”.",
        )
    if name != "spouse" and person.id in set(ancestors(people, relative.id)):
        raise WrongUse(
            f"{relative.name} cannot be the {name} of {person.name}, who is told to be an ancestor of {relative.name}.",
            "Name somebody else, or mend that link first; boxlore people show lists who said it.",
        )


def ancestors(people: Registry, ident: str) -> Iterator[str]:
    """The ids of parents, grandparents and so on, each once; a circle ends."""
    waiting, seen = [ident], {ident}
    while waiting:
        person = people.get(waiting.pop())
        for parent in person.parents if person else ():
            if parent not in seen:
                seen.add(parent)
                waiting.append(parent)
                yield parent
