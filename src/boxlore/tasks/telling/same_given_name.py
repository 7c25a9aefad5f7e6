"""Whether a given name told alone is the one told before: `Jack` may be another Jack, `their Pauline` another Pauline.

Two rules of our own. A name alone that was told in one other item so far asks once, unless it was in this sitting and
by the same voice. A name with whose it is (`our Pauline`, `their Pauline`, `Pauline (their, as a baby)`) is whoever the
same voice called by these words before; where nobody was called so, it asks, whoever else has the name. Once the keeper
has said who it is, these words of this voice are that person, and nobody is asked again, though several have the name;
where the keeper says nothing, the question is put once, and its answer holds for every picture of which these words of
this voice wait for it.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.reference import PersonRef, id_meant
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.people.who_is_where.tokens import elements_of
from boxlore.core.records.people_asked import before_brackets
from boxlore.core.statements import Kind, Reading, Source, Statement, fold
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


def is_more_of(told: str, name: str) -> bool:
    """Whether a name told whole goes on with a given name alone: `Leida Tamm` with `Leida`."""
    first, _, rest = told.partition(" ")
    return bool(rest) and is_given_alone(name) and fold(first) == fold(name)


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


def alike(told: str) -> str:
    """What is the same of two names that were told in the same words, whatever brackets add."""
    return fold(before_brackets(told))


def waiting_alike(collection: Collection, statement: str, source: Source, words: str, ids: Sequence[str]) -> list[str]:
    """Of which statements (ids, oldest first, this one among them) the same voice waits for the same answer: they name
    one of these people (ids) by the same words, and ask who that is. None for more than a given name alone, in which
    somebody else may be meant each time."""
    if not is_given_alone(words):
        return [statement]
    rows = [
        (told, reading)
        for told, reading in collection.store.meaning(ids)
        if told.field == "person" and told.subject.kind is Kind.ITEM and told.source == source
        if alike(told.words) == alike(words) and whose(told.words) == whose(words) and reading is not None
    ]
    if len({id_meant(reading) for _, reading in rows if reading.usable}) > 1:  # the voice calls two people so
        return [statement]
    return [told.id for told, reading in rows if not reading.usable]


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
        if reading.asks:  # several have the name
            called_so = self._called("", statement, tuple(namesakes), alike(words))
            return replace(reading, value=PersonRef(called_so.pop()), asks=False) if len(called_so) == 1 else reading
        return replace(reading, asks=self._may_be_another(act, statement, meant))

    def _called(self, owner: str, statement: Statement, namesakes: tuple[str, ...], name: str = "") -> set[str]:
        """Whoever of these the same voice called so before, in an item; with `name`, by no more than that."""
        return {
            ident
            for told, ident in self._told_of(namesakes)
            if told.source == statement.source and whose(told.words) == owner
            if not name or alike(told.words) == name
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
        shown = [told for told, _ in self._told_of((ident,))]
        return shown[0] if len({told.subject for told in shown}) == 1 else None

    def _told_of(self, people: tuple[str, ...]) -> Iterator[tuple[Statement, str]]:
        """The statements that one of these people (ids) is in a picture, and who."""
        for told, reading in self._collection.store.meaning(people):
            ident = id_meant(reading) if reading is not None and reading.usable else ""
            if told.field == "person" and ident in people:
                yield told, ident
