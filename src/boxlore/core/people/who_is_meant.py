"""Who is meant by a name, or by a part of one. One rule, for narrators, for the registry and for whose album it is.

Whoever has the name goes first: the name itself, a full form of it, or a single name that the person goes by (a word
of kin or a title before it is passed over: “Aunt Mavis” is Mavis). Only where nobody has it does a part count: words of
a name, whole, in their order (“Tamm” of “Leida Tamm”). So “Ann” is never Annika.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence

from boxlore.core.errors import WrongUse
from boxlore.core.people.names.forms import parts_of
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.person import Person
from boxlore.core.statements import fold

MOST_LISTED = 6
"""So many of those who may be meant are listed in a sentence."""

ID_LETTERS = 12
"""So many letters of the end of an id are shown; eight and more are read."""


def named(people: Iterable[Person], words: str, known: KnownNames | None = None) -> list[Person]:
    """Everyone who has this name. `known` are the names of the family, by which kin and titles are told from it."""
    everyone = list(people)
    return _named(lambda asked: [person for person in everyone if asked in _names_of(person)], words, known)


ByName = Mapping[str, Sequence[Person]]
"""People by every name that they have, folded."""


def by_name(people: Iterable[Person]) -> ByName:
    """The people in a table of their names, for whoever asks of many names."""
    table: dict[str, list[Person]] = {}
    for person in people:
        for name in _names_of(person):
            table.setdefault(name, []).append(person)
    return table


def named_in(people: ByName, words: str, known: KnownNames | None = None) -> list[Person]:
    """The same as `named`, looked up."""
    return _named(lambda asked: list(people.get(asked, ())), words, known)


def known_by(people: Iterable[Person], words: str, known: KnownNames | None = None) -> list[Person]:
    """Everyone who has this name; else whoever has an id that ends so; else everyone of whose name it is a part."""
    everyone = list(people)
    return named(everyone, words, known) or _of_that_id(everyone, words) or _of_that_part(everyone, words)


def the_one(matches: Sequence[Person], words: str) -> Person | None:
    """The one who is meant; None for nobody. Raises WrongUse for several, and lists them."""
    if len(matches) < 2:
        return matches[0] if matches else None
    choices = "; ".join(told_apart(person) for person in matches[:MOST_LISTED])
    more = f" and {len(matches) - MOST_LISTED} more" if len(matches) > MOST_LISTED else ""
    raise WrongUse(
        f"“{words.strip()[:60]}” may be {len(matches)} people: {choices}{more}.",
        "Give the whole name, or what stands in brackets in its place.",
    )


def told_apart(person: Person) -> str:
    """`Leida Rourke, born 1931 (5be0f3a1c2d4)`: enough to tell two of one name apart, and to name one of them."""
    return f"{with_birth(person)} ({person.id[-ID_LETTERS:]})"


def with_birth(person: Person) -> str:
    """`Leida Rourke, born 1931`; the name alone where no birth is told."""
    return f"{person.name}, born {person.born.display}" if person.born else person.name


def _named(bearers: Callable[[str], list[Person]], words: str, known: KnownNames | None) -> list[Person]:
    """Everyone who has this name; `bearers` gives those of a folded name."""
    namesakes = bearers(fold(words).strip())
    if namesakes or known is None:
        return namesakes
    parts = read_name(words.strip(), known)
    if parts.given and (parts.kin or parts.title or parts.born_as or parts.suffix):
        return bearers(fold(f"{parts.given} {parts.family}").strip())
    return []


def _names_of(person: Person) -> set[str]:
    """What somebody is called, folded."""
    return set(map(fold, (person.name, *person.forms, *person.calls)))


def _of_that_part(people: Iterable[Person], words: str) -> list[Person]:
    asked = parts_of(words)
    if not asked or any(letter.isdigit() for letter in words):  # “91f802147041” is an id, and no F. of a name
        return []
    return [person for person in people if any(_in_order(asked, form) for form in (person.name, *person.forms))]


def _in_order(asked: Iterable[str], name: str) -> bool:
    """Whether a name holds all these words, in this order."""
    words = iter(parts_of(name))
    return all(word in words for word in asked)


def _of_that_id(people: Iterable[Person], words: str) -> list[Person]:
    asked = fold(words).strip().removeprefix("urn:uuid:")
    return [person for person in people if len(asked) >= 8 and any(ident.endswith(asked) for ident in person.ids)]
