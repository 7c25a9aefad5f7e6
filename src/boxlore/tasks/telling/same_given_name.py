"""Whether a given name told alone is the one told before: `Jack` may be another Jack, `their Pauline` another Pauline.

Two rules of our own. A name alone that was told in one other item so far asks once, unless it was in this sitting and
by the same voice. A name with whose it is (`our Pauline`, `their Pauline`, `Pauline (their, as a baby)`) is whoever the
same voice called by these words before; where nobody was called so, it asks, whoever else has the name. Once the keeper
has said who it is, these words of this voice are that person, and nobody is asked again.
"""

from collections.abc import Iterable
from dataclasses import replace

from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.reference import PersonRef, id_meant
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.people.who_is_where.tokens import elements_of
from boxlore.core.records.people_asked import before_brackets
from boxlore.core.statements import Kind, Reading, Statement
from boxlore.tasks.collection.opening import Act, Collection

_OURS = "our"
"""What stands for every word by which the one who tells says that somebody is of her own family."""


def is_given_alone(told: str) -> bool:
    """Whether one word is a given name, and so may be anybody's of that name: `Jack`, but not `Mum`."""
    name = before_brackets(told)
    if " " in name:
        return False
    parts = read_name(name)
    return parts == NameParts(given=name, tradition=parts.tradition) and not own_relation(name)


def whose(told: str) -> str:
    """Whose somebody is said to be: `their` of `their Pauline` and of `Pauline (their, as a baby)`, `bert's` of
    `Pauline (Bert's)`; empty where that is not told."""
    before, _, note = told.partition(" (")
    if " " in before:
        return _owner(before.split(" ")[0])
    return _owner(note.rstrip(")").partition(",")[0])


def without_whose(told: str) -> str:
    """`Pauline` of `their Pauline` and of `Pauline (their, as a baby)`; other words as they are, without brackets."""
    before = before_brackets(told)
    first, _, name = before.partition(" ")
    return name if name and _owner(first) else before


def _owner(words: str) -> str:
    elements = elements_of(words)
    if len(elements) != 1:
        return ""
    plain = elements[0].plain
    if elements[0].kind == "my":
        return _OURS if plain in table.MY_OWN else plain
    return plain if plain.endswith(("'s", "’s")) else ""


class SameGivenName:
    """Answers for one collection, of the act in hand."""

    def __init__(self, collection: Collection) -> None:
        self._collection = collection
        self._met: tuple[str, dict[str, Statement | None]] = "", {}
        """The act in hand, and by the id of somebody where she was told alone before."""

    def read_as(
        self, act: Act, statement: Statement, words: str, namesakes: Iterable[str], reading: Reading
    ) -> Reading:
        """What the name is read as, of the people (ids) who have it: as it was, as one who was called so before, or as
        what asks who it is."""
        meant = id_meant(reading)
        if not (
            meant and statement.subject.kind is Kind.ITEM and statement.field == "person" and is_given_alone(words)
        ):
            return reading
        if owner := whose(statement.words):
            called_so = self._called(owner, statement, tuple(namesakes))
            if len(called_so) == 1:
                return replace(reading, value=PersonRef(called_so.pop()), asks=False)
            return replace(reading, asks=True)
        return replace(reading, asks=reading.asks or self._may_be_another(act, statement, meant))

    def _called(self, owner: str, statement: Statement, namesakes: tuple[str, ...]) -> set[str]:
        """Whoever of these the same voice called so before, in an item."""
        return {
            id_meant(reading)
            for told, reading in self._collection.store.meaning(namesakes)
            if told.field == "person" and told.source == statement.source and whose(told.words) == owner
            if reading is not None and reading.usable and id_meant(reading) in namesakes
        }

    def _may_be_another(self, act: Act, statement: Statement, ident: str) -> bool:
        """Whether it was told in one other item so far, and not in this sitting by the same voice."""
        if self._met[0] != act.id:
            self._met = act.id, {}
        met = self._met[1]
        if ident not in met:
            met[ident] = self._told_alone(ident)
        told = met[ident]
        if told is None or told.subject == statement.subject or told.subject.kind is not Kind.ITEM:
            return False
        return not (told.sitting == statement.sitting != "" and told.source == statement.source)

    def _told_alone(self, ident: str) -> Statement | None:
        """The statement that somebody is in a picture, where there is one alone."""
        shown = [
            told
            for told, reading in self._collection.store.meaning((ident,))
            if told.field == "person" and reading is not None and reading.usable and id_meant(reading) == ident
        ]
        return shown[0] if len({told.subject for told in shown}) == 1 else None
