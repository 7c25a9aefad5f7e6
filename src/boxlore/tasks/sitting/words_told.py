"""Places and occasions as they were told: which words stand on which items, and the same words corrected everywhere."""

from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.fields.language import language_tag
from boxlore.core.statements import Kind, Subject, fold
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Telling


@dataclass(frozen=True, slots=True)
class WordsTold:
    """The same words in one field: as they were told first, and the items with them, (id, number) by number."""

    field: str
    words: str
    items: tuple[tuple[str, str], ...]


def words_told(collection: Collection, field: str) -> list[WordsTold]:
    """Everything told of items in this field, the same words together, by their letters."""
    spelled: dict[str, str] = {}
    items: dict[str, dict[str, str]] = {}
    for ident, _, words in collection.store.words_of((field,)):
        if words.strip() and (number := collection.store.number_of(ident)):
            key = " ".join(fold(words).split())
            spelled.setdefault(key, words.strip())
            items.setdefault(key, {})[ident] = number
    return [
        WordsTold(field, spelled[key], tuple(sorted(items[key].items(), key=lambda item: (len(item[1]), item[1]))))
        for key in sorted(items)
    ]


def rewrite(sitting: Sitting, group: WordsTold, words: str) -> int:
    """Other words in place of these on every item, by the same sources; one act. Returns how many statements."""
    if not words.strip():
        raise WrongUse("There are no words.", "Write what it should be called.")
    act = sitting.collection.act(f"{group.field}: {group.words[:30]} is called {words.strip()[:30]}")
    wanted = " ".join(fold(group.words).split())
    for item, _ in group.items:
        subject = Subject(Kind.ITEM, item)
        for statement, _ in sitting.collection.store.statements(subject):
            if statement.field == group.field and " ".join(fold(statement.words).split()) == wanted:
                how = Telling(
                    source=statement.source, sure=statement.sure, audience=statement.audience,
                    language=language_tag(statement.language), sitting=sitting.id,
                )  # fmt: skip
                sitting.teller.add(act, subject, group.field, words, how, replaces=statement.id)
    count = sum(1 for statement in act.statements if statement.field == group.field)
    if count:
        sitting.finish(act, group.items[0][0])
    return count
