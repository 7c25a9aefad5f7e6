"""How a name told in a sitting is taken apart, where its words leave that open: the proposal first, then the others.

What is chosen is kept as the confirmed reading of the name, so the words stay as they were told, and undo brings the
question back.
"""

from dataclasses import dataclass, replace

from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import READER_VERSION
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Reading
from boxlore.tasks.people.names_taken_apart import NameTold, names_told
from boxlore.tasks.sitting.numbered_choice import numbered
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.understanding import parts_words


@dataclass(frozen=True, slots=True)
class OpenName:
    """A name of somebody in the picture that can be taken apart in two ways, and the ways: the first is proposed."""

    told: NameTold
    ways: tuple[NameParts, ...]

    @property
    def question(self) -> str:
        """The question in words."""
        return f"“{self.told.statement.words}”: {self.told.parts.asks}"

    @property
    def choices(self) -> list[str]:
        """The ways as one reads them, in their order: the first is number 1."""
        return [parts_words(parts) for parts in self.ways]


def open_name(sitting: Sitting, record: Record) -> OpenName | None:
    """The first name that asks of somebody in the picture; None if there is none."""
    people = sitting.collection.people()
    shown = [people[person.person] for person in record.people if person.person in people]
    doubtful = (person for person in shown if person.name_asks)
    asking = (name for person in doubtful for name in names_told(sitting.collection, person) if name.parts.asks)
    first = next(asking, None)
    return OpenName(first, _ways(first.parts)) if first is not None else None


def take_name(sitting: Sitting, record: Record, question: OpenName, number: int) -> str:
    """Keep that way `number` (from 1) is meant. Returns it in words. Raises WrongUse for a number that no way has."""
    parts = numbered(question.ways, number)
    act = sitting.collection.act(f"the parts of {question.told.statement.words[:40]}")
    act.readings.append((question.told.statement.id, Reading("name", parts, READER_VERSION, confirmed=True)))
    sitting.finish(act, record.id)
    return parts_words(parts)


def _ways(parts: NameParts) -> tuple[NameParts, ...]:
    """The proposal; the given and the family name turned about; no family name at all. Of another family name: the
    one at birth, the one by marriage, what she is called, or no name."""
    proposed = replace(parts, asks="")
    whole = f"{parts.given} {parts.family}".strip()
    another, bare = parts.born_as or parts.married_as, replace(proposed, born_as="", married_as="")
    if another and not parts.nickname:
        born, married = replace(bare, born_as=another), replace(bare, married_as=another)
        others = [way for way in (born, married, replace(bare, nickname=another), bare) if way != proposed]
    else:
        turned = replace(proposed, given=parts.family, family=parts.given, particle="")
        others = [turned, replace(proposed, given=whole, family="", particle="")]
    return (proposed, *others)
