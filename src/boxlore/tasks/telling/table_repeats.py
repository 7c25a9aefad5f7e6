"""Which rows of a table the collection holds already, so that a table taken twice adds only what is new.

A row is known by what it says: the item, the field, the words and who says so. It counts as known if that was ever told
and not taken back, also where it was corrected since. Rows that say the same are counted: a table with two takes two,
and none when it is taken again. Words that were struck are gone with all that could know them again; so a row about a
field out of which words were struck is refused.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import read_audience
from boxlore.core.statements import Statement, Sure
from boxlore.store.values import Past
from boxlore.tasks.collection.opening import Collection

Said = tuple[str, str, str]
"""The words, and the kind and the name or id of the source."""

Manner = tuple[str, str, str]
"""How sure, for whom, in which language."""


@dataclass(slots=True)
class _FieldHistory:
    """What was ever told of one field of one thing: how often each was told anew, and in which manners."""

    times: Counter[Said] = field(default_factory=Counter)
    manners: defaultdict[Said, set[Manner]] = field(default_factory=lambda: defaultdict(set))


class HeldOtherwise(WrongUse):
    """The collection holds the words of a row, but not as surely, not for the same, or in another language."""


class KnownRows:
    """Answers for one run over one table, row by row in the order of the table."""

    def __init__(self, collection: Collection) -> None:
        self._collection = collection
        self._struck = collection.store.struck()
        self._histories: dict[tuple[str, str], _FieldHistory] = {}
        self._met: Counter[tuple[str, str, Said]] = Counter()

    def knows(self, statement: Statement) -> bool:
        """Whether the collection holds what the row came to.

        Raises HeldOtherwise for words that are held in another manner, which no table changes, and WrongUse for a
        field out of which words were struck.
        """
        subject, name = statement.subject.id, statement.field
        history = self._history(subject, name)
        said = self._said(statement)
        self._met[subject, name, said] += 1
        if self._met[subject, name, said] > history.times[said]:
            if (subject, name) in self._struck:
                raise WrongUse(
                    f"Words of this {name} were taken out for good, and no table brings them back.",
                    "If these are others, tell them alone: boxlore tell ITEM FIELD TEXT.",
                )
            return False
        if _manner(statement) not in history.manners[said]:
            raise HeldOtherwise(
                f"These words are known already, {_in_words(history.manners[said])}; "
                f"the row says {_in_words([_manner(statement)])}.",
                "Change that in the sitting (.sure, .audience, .language), or say --again to keep both.",
            )
        return True

    def _history(self, subject: str, name: str) -> _FieldHistory:
        if (subject, name) not in self._histories:
            history = self._histories[subject, name] = _FieldHistory()
            pasts = [past for past in self._collection.store.history(subject, name) if past.state != "withdrawn"]
            told_by_id = {past.statement.id: self._said(past.statement) for past in pasts}
            for past in pasts:
                said = told_by_id[past.statement.id]
                history.manners[said].add(_manner(past.statement))
                history.times[said] += _is_new(past, said, told_by_id)
        return self._histories[subject, name]

    def _said(self, statement: Statement) -> Said:
        """Entries that are one person are one source."""
        source, people = statement.source, self._collection.people()
        ref = people[source.ref].id if source.ref in people else source.ref
        return statement.words.strip(), str(source.said), ref


def _is_new(past: Past, said: Said, told_by_id: dict[str, Said]) -> bool:
    """Whether it was told anew, and did not only change how sure or for whom the same words are."""
    return told_by_id.get(past.statement.replaces) != said


def _manner(statement: Statement) -> Manner:
    return str(statement.sure), str(read_audience(statement.audience)), statement.language.lower()


def _in_words(manners: Iterable[Manner]) -> str:
    return " or ".join(
        f"{'not known' if sure == Sure.NOT_KNOWN else sure}, for {audience}{f', in {language}' if language else ''}"
        for sure, audience, language in sorted(manners)
    )
