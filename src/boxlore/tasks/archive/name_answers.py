"""What the keeper decides of each place where somebody living is named, or may be.

Asked once: an answer is a statement of the log about the item, and holds for these words from then on. What is not
decided stays out of the open part, so that a transfer can always be made. The answers are given one by one in the
terminal, or all together in the table that the name search writes.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer, NamingDecision
from boxlore.core.findings import several
from boxlore.core.people.consent import Matter, is_taken_back
from boxlore.core.people.names_in_text.search import Hit
from boxlore.core.people.names_in_text.text_normalising import read_text
from boxlore.core.records.audience import EMBEDDED, WHO_SAYS, Naming
from boxlore.core.records.file_strangers import WHO, is_told_whole, name_told, stranger_digest
from boxlore.core.records.item_record import Record
from boxlore.core.records.name_answers import STRANGER, digest_of
from boxlore.core.statements import Kind, Subject, fold
from boxlore.disk.tables import TableRow
from boxlore.tasks.collection.names_found import KEY, NUMBER, answer_of, item_numbered, rows_of
from boxlore.tasks.collection.names_left import ANSWERS, WRITTEN
from boxlore.tasks.collection.opening import Act, Collection

CONTEXT = 60
"""Letters of the sentence that are shown on either side of a name."""


@dataclass(frozen=True, slots=True)
class NamePlace:
    """One place where one person is named, or may be. `why` is empty where the words surely name them.

    `words` is the name as it stands there, `sentence` the words around it; `answer` what was decided before.
    """

    number: str
    item: str
    where: str
    person: str
    name: str
    words: str
    sentence: str
    why: str
    digest: str
    answer: str = ""
    alike: tuple["NamePlace", ...] = ()
    """Further places of one question: an answer holds for them too."""

    @property
    def every(self) -> tuple["NamePlace", ...]:
        """The place and those that are decided with it."""
        return (self, *self.alike)

    @property
    def key(self) -> str:
        """What names the place in the table."""
        return f"{self.person} {self.where.replace(' ', '+')} {self.digest}"


Given = Mapping[tuple[str, str], NamingAnswer]
"""What was decided before, by the item and the key of the place; of a name of nobody known by that name too."""

ANYWHERE = ""
"""Stands for the item, where an answer about a name of nobody known holds in all."""


def answers_before(collection: Collection) -> Given:
    """Every decision in force about items, read once for all places of an output."""
    given: dict[tuple[str, str], NamingAnswer] = {}
    for item, key, answer, _ in _told(collection):
        given[item, key] = answer
        person, _, digest = key.split()
        if person == STRANGER and given.get((ANYWHERE, digest)) is not NamingAnswer.HIDE:
            given[ANYWHERE, digest] = answer
    return given


def took_consent_back(collection: Collection, ident: str, *matters: Matter) -> bool:
    """Whether a person (by id) allows one of these matters no more, so that only a new consent opens it anywhere; to be
    named, if none is asked about."""
    person = collection.people().get(ident)
    return person is not None and any(is_taken_back(person.consents, matter) for matter in matters or (Matter.NAME,))


def with_answers(decided: Given, places: Iterable[NamePlace]) -> Iterator[NamePlace]:
    """The places with what was decided of each."""
    for place in places:
        answer = decided.get((place.item, place.key))
        if answer is None and place.person == STRANGER and is_told_whole(place.name):
            answer = decided.get((ANYWHERE, place.digest))
        yield place if answer is None else replace(place, answer=WRITTEN[answer])


def places_of(collection: Collection, whole: Record, naming: Naming) -> Iterator[NamePlace]:
    """The places of one naming, each person's own."""
    if naming.where != WHO_SAYS and not naming.people:
        is_shown = naming.where in (EMBEDDED, *WHO)
        why = "nobody here is called so" if is_shown else "a name of nobody known yet"
        by_name: dict[str, list[tuple[int, int]]] = {}
        for place in naming.unknown or ((0, len(naming.text)),):
            by_name.setdefault(fold(name_told(naming.text, place)), []).append(place)
        for spans in by_name.values():
            name = name_told(naming.text, spans[0]) if naming.unknown else naming.text
            near = [span for span in spans if span[0] - spans[0][1] <= CONTEXT]
            sentence, digest = _bracketed(naming.text, near), stranger_digest(name)
            yield NamePlace(whole.number, whole.id, naming.where, STRANGER, name, name, sentence, why, digest)
    people = collection.people()
    tokens = read_text(naming.text).words
    for hit in naming.hits:
        for ident in sorted(hit.people):
            yield NamePlace(
                number=whole.number,
                item=whole.id,
                where=naming.where,
                person=ident,
                name=people[ident].name,
                words=naming.text[hit.start : hit.end],
                sentence=sentence_of(naming.text, hit),
                why=str(hit.doubt),
                digest=digest_of(hit, tokens),
            )


def sentence_of(text: str, hit: Hit) -> str:
    """The words around a hit on one line, with the name in brackets: `… with [Mia] on the pier …`."""
    return _bracketed(text, ((hit.start, hit.end),))


def _bracketed(text: str, spans: Sequence[tuple[int, int]]) -> str:
    """The words around names on one line, each name in brackets; `spans` are in order."""
    begin, stop = max(0, spans[0][0] - CONTEXT), spans[-1][1] + CONTEXT
    line, at = "…" if begin else "", begin
    for start, end in spans:
        line += f"{text[at:start]}[{text[start:end]}]"
        at = end
    return " ".join((line + text[at:stop] + ("…" if stop < len(text) else "")).split())


def undecided(places: Iterable[NamePlace]) -> list[NamePlace]:
    """What the keeper has not been asked yet."""
    return [place for place in places if not place.answer]


def decide(
    collection: Collection,
    answers: Sequence[tuple[NamePlace, NamingAnswer]],
    *,
    write: Callable[[Act], None] = Act.done,
) -> int:
    """Keep the keeper's answers in the log, as one act that `write` writes. Returns how many are new."""
    earlier = {(item, key): ident for item, key, _, ident in _told(collection)}
    new = [(place, answer) for place, answer in answers if ANSWERS.get(place.answer) is not answer]
    if not new:
        return 0
    each = {(place.item, place.key): (place, answer) for asked, answer in new for place in asked.every}
    act = collection.act(f"whether {several(len(each), 'mention names', 'mentions name')} somebody living")
    for place, answer in each.values():
        words = NAMING_WORDS.write(NamingDecision(answer, place.person, place.where, place.digest))
        replaces = earlier.get((place.item, place.key), "")
        about = Subject(Kind.ITEM, place.item) if place.item else Subject(Kind.COLLECTION, collection.id)
        act.state(about, "naming", words, audience="keeper", replaces=replaces)
    write(act)
    return len(new)


def read_answers(collection: Collection, path: Path, places: Iterable[NamePlace]) -> int:
    """Take the answers of the table that was filled in. Nothing is taken if one cannot be read.

    Returns how many are new. Raises WrongUse, naming the line. A row whose words have changed since is passed over:
    they are asked about again. “Hide” is kept of a place at which nobody is looked for any more: whoever is named there
    may have allowed it since, and what is hidden stays hidden.
    """
    rows = rows_of(path)
    by_key = {(place.number, place.key): place for asked in places for place in (*asked.alike, asked)}
    return decide(collection, [answer for row in rows for answer in _answers_in(collection, path, row, by_key)])


def _answers_in(
    collection: Collection, path: Path, row: TableRow, places: dict[tuple[str, str], NamePlace]
) -> Iterator[tuple[NamePlace, NamingAnswer]]:
    written = answer_of(path, row)
    place = places.get((row.cells[NUMBER].strip(), row.cells[KEY].strip()))
    if place is None and written and ANSWERS[written] is NamingAnswer.HIDE:
        place = _told_by_key(collection, row)
    if written and not row.cells[KEY].strip() and ANSWERS[written] is not NamingAnswer.HIDE:
        raise WrongUse(
            f"{path.name}, line {row.line}: this row takes no answer.",
            "Take it out there. Answer the other rows of the item, or tell the person's consent.",
        )
    if not written or place is None:
        return
    is_new = written != place.answer
    if is_new and ANSWERS[written] is NamingAnswer.MAY and took_consent_back(collection, place.person):
        raise WrongUse(
            f"{path.name}, line {row.line}: {place.name} took back the consent to be named.",
            "Answer hide or not that person; or note the new consent first: boxlore people consent.",
        )
    yield place, ANSWERS[written]


def _told_by_key(collection: Collection, row: TableRow) -> NamePlace | None:
    """The place that a row names by its item and key alone, with what was decided of it; None where they name none."""
    number, key = row.cells[NUMBER].strip(), row.cells[KEY].strip()
    item = item_numbered(collection, number)
    decision = NAMING_WORDS.or_none(f"{NamingAnswer.HIDE} {key}") if key else None
    if item is None or decision is None:
        return None
    place = NamePlace(number, item, decision.where, decision.person, "", "", "", "", decision.digest)
    return next(with_answers(answers_before(collection), [place]))


def _told(collection: Collection) -> Iterator[tuple[str, str, NamingAnswer, str]]:
    """(item, key, answer, statement) of every decision in force; the item is empty of what is none."""
    items = {item for item, _, _ in collection.store.words_of(["naming"])}
    for item in sorted(items):
        for statement, _ in collection.store.statements(Subject(Kind.ITEM, item)):
            decision = NAMING_WORDS.or_none(statement.words) if statement.field == "naming" else None
            if decision is not None:
                key = f"{decision.person} {decision.where.replace(' ', '+')} {decision.digest}"
                yield "" if item == collection.id else item, key, decision.answer, statement.id
