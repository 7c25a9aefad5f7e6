"""The names that the collection tells of people of whom the registry knows nothing: they count as living."""

from collections.abc import Iterator

from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.people.names_in_text.finder import name_finder
from boxlore.core.people.names_in_text.names_of_the_living import name_alone, names_of_the_living
from boxlore.core.people.reference import id_meant
from boxlore.core.records.file_strangers import STRANGER, WHO, Strangers, stranger_digest, strangers_to
from boxlore.core.records.name_answers import Decided
from boxlore.core.statements import Kind, Reading, Said, Statement, Subject, fold
from boxlore.tasks.collection.opening import Collection

MAY_TELL_OF_THE_LIVING = (
    "title", "occasion", "keyword", "story", "inscription", "note", "care", "place", "rights", "rights_holder",
    *("donor", "lender", "owner", "custody"),
)  # fmt: skip
"""Fields in whose words a name may stand of which nobody told who bears it."""


def strangers_of(collection: Collection, answers: Decided) -> Strangers:
    """Who knows whom the registry has, and the words of who is somewhere that were made nobody and not let out."""
    known = strangers_to(collection.people().values(), answers)
    told = []
    for subject, name, words in collection.store.words_of(WHO):
        answer = answers.answers.get((subject, name, STRANGER, stranger_digest(words)))
        if fold(words) not in known.known and answer in (None, NamingAnswer.HIDE):
            rows = collection.store.statements(Subject(Kind.ITEM, subject))
            if not any(row.words == words and _is_known(row, reading) for row, reading in rows):
                told.append(words)
    living = tuple(_told_as_living(collection, answers))
    return strangers_to(collection.people().values(), answers, told, living=living) if told or living else known


def _told_as_living(collection: Collection, answers: Decided) -> Iterator[str]:
    """The names that words tell of somebody who may well live, of whom the registry knows nothing."""
    everyone = tuple(collection.people().values())
    finder = name_finder(everyone, frozenset(person.id for person in everyone))
    year, longest_life = collection.clock.today().year, collection.settings.living_years
    for subject, name, words in collection.store.words_of(MAY_TELL_OF_THE_LIVING):
        names = names_of_the_living(words, name, year, longest_life)
        answer = answers.answers.get((subject, name, STRANGER, stranger_digest(words))) if names else None
        for told in names if answer in (None, NamingAnswer.HIDE) else ():
            if not any(hit.end - hit.start >= len(name_alone(told)) for hit in finder.hits(told)):
                yield told


def _is_known(row: Statement, reading: Reading | None) -> bool:
    """Whether words are read as somebody, or stand in a scan's file alone, where they are asked about."""
    return row.source.said is Said.FILE or bool(reading and id_meant(reading))
