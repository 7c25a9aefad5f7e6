"""Who may be told what: the one answer that every output, list and page asks for.

Theory of operation
===================

The problem. One collection is told to four: its keeper, the family, an archive that keeps a part closed, and anyone
(`To`). A statement may be kept to some of them by whoever told it, an item or one field of it by the keeper, a person
by the keeper; and the living may not be named outside without their consent. A name hides anywhere: in what a reading
means, in a story about somebody else, in the label of a box, in the name of a file, in who said it, on the back of
the picture. Whoever decides by a part of this gives the rest away.

The idea. All that a decision needs is gathered once, in a `Recipient`: for whom, on which day, who is withheld from
them (`Withheld`), and what the keeper has kept to whom. It has one question for each kind of thing that can be told:

    may_be_told     one statement, of an item, person, event, place, sitting or collection
    without_names   the same statement, without the name of who says it if that may not be told
    may_name        a person of the registry, by a name
    may_read        plain words: a mark, a label, the name of a file, a page
    surely_named    which words of a finished text name someone
    seen            a whole record, as the recipient may have it
    namings         where a record names or shows someone withheld

`seen` asks the other questions of each part of a record, and an output takes no other record. What is not in a record
(the log of a sitting, facts about people and events, lines of moves) asks them one by one.

What always holds:

1. A statement goes only if all say yes: its own audience, those of its item, field and person, and every name in it.
   Its own is never wider than what was agreed in its sitting (`core.records.terms`).
2. It goes whole or not at all, and what is left out of a record is counted, never rewritten. That somebody said it
   may be told without a name: then it is “a narrator” or “a document”.
3. Withheld is who is kept from the recipient by the keeper; from outside also who counts as living and has not
   consented to be named. One form of one name is enough, anywhere in the words.
4. The scans of an item are closed if the item is kept from the recipient; if what is written on it is, since a scan
   of the back shows it; if the picture, the writing, what is embedded or the name of the file shows or names someone
   withheld; and from outside if the picture shows someone living who has not consented to be shown, or if its title,
   occasion, a keyword, the name that its file had, or words that say who is seen (a story, what is written on it) name
   such a one, surely or perhaps: these say what is on it, also where nobody told who is.
5. An item that is kept from the recipient leaves its number, its mark and what an archive calls it, so that it is
   counted and can be asked for.
   Of one that is the keeper's alone nothing goes to an archive, for nobody there could ask for it (`is_keepers_alone`).
6. In doubt the answer is no: an audience that cannot be read is the keeper's alone.
7. Whatever `seen` takes out for a name's sake, `namings` names: the keeper's list and the closing dates rest on it.

An audience of `archive:D` is closed until the day D, and on D itself it is for anyone.

An example. TRA-0018 is Leida and Tom before the church at Easter 1964. Tom Rourke died in 2011. Leida (born in 1941)
and Con, Tom's brother, live, and have consented to nothing. Leida told it all.

    statement                              its audience   the family has   outside has
    person “Tom”, on the picture           anyone         it               it, said by a narrator
    person “Leida”, on the picture         anyone         it               nothing: the reading means her
    story “Con had lent them the car.”     anyone         it               nothing: the words name Con
    story “The priest was late.”           family         it               nothing: it is for the family
    back “Leida and Tom, Easter ’64”       anyone         it               nothing: the words name Leida
    the scans                                             they             nothing: they show and name Leida

Outside the record has Tom, and says that four statements are withheld. The closed part has all but the priest. It is
closed for 100 years from Leida's birth, and, since nobody told when Con was born, from the day on which he was first
noted: the later holds.
"""

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from dataclasses import field as starts
from datetime import date

from boxlore.core.fields.audiences import AUDIENCE_WORDS
from boxlore.core.fields.pictures import EMBEDDED_WORDS, OF_THE_MAKER, Embedded
from boxlore.core.people.names_in_text.search import Hit
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_where.seen_in_story import names_seen
from boxlore.core.places.reading import full_name
from boxlore.core.records.audience_levels import To, may_see
from boxlore.core.records.file_strangers import INSIDE, Strangers
from boxlore.core.records.item_record import (
    ANSWER,
    REFERENCE,
    REMARK,
    Conflict,
    PersonShown,
    Record,
    ScanFile,
    StatementView,
    every_told,
)
from boxlore.core.records.name_answers import FINISHED, MADE_BY, Decided
from boxlore.core.records.told_nowhere import where_told
from boxlore.core.records.withheld import NOBODY, Withheld
from boxlore.core.statements import Kind, Said, Source, Statement, Subject, day_in, day_of

__all__ = ("OF_SCANS", "Naming", "Recipient", "To")


WHO_SAYS, FOUND_IN, MARK = "who says it", "found in", "mark"
"""Places in a record, apart from the fields of statements, where somebody may be named."""

SHOWN, EMBEDDED, FILE_NAME = "in the picture", INSIDE, "name of the file"
"""Places where a scan itself shows or names somebody."""

AUDIENCE = "audience"
"""The field that says who may see a thing."""

OF_SCANS = (SHOWN, EMBEDDED, MADE_BY, FILE_NAME)

WHAT_IT_SHOWS = ("title", "occasion", "keyword", "file_name")
"""What says what is on the picture: whom it names may be on it, though nobody told who is."""

KNOWN_OF = ("date", "rights", "rights_holder")
"""Fields of which an output says that they are told and kept back: without them it would say that nothing is known."""

TELLS_MORE = ("story", "inscription")
"""These tell of people who are elsewhere too: they show whom they say to be seen, or tell nothing else of."""


@dataclass(frozen=True, slots=True)
class Naming:
    """One place where a record names or shows someone withheld: where, in which words, whom.

    `where` is a field of a statement or one of the places above; of a file `words` is its path. `people` holds ids of
    the registry; it is empty where the words name somebody whom the registry has not.
    """

    where: str
    words: str
    people: frozenset[str]
    doubtful: frozenset[str] = starts(default=frozenset(), compare=False)
    """Those of them whom the words may name: nothing surely does."""
    text: str = starts(default="", compare=False)
    """The words that were searched: of a file what stands in it."""
    hits: Sequence[Hit] = starts(default=(), compare=False)
    """Where in `text` they are named; none where somebody is meant without a name."""
    unknown: Sequence[tuple[int, int]] = starts(default=(), compare=False)
    """(start, end) of the names in `text` of people whom the registry has not; none where the whole text is one."""
    noted_on: date | None = starts(default=None, compare=False)
    """When the words were noted; None where that is not known."""


def _nothing_of_its_own(about: Subject) -> Sequence[str]:
    """The keeper has kept nothing of the thing."""
    return ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipient:
    """For whom something is made, and all that decides what they may be told.

    `own_audiences` gives what the keeper has kept of a thing as a whole, as the words of its field `audience`:
    `family` for all of it, `story=family` for one field. A record brings its own.
    """

    to: To
    on_day: date
    withheld: Withheld = NOBODY
    own_audiences: Callable[[Subject], Sequence[str]] = _nothing_of_its_own
    strangers: Strangers | None = None
    """Who knows whom the registry has, for outside: a scan whose file shows somebody else is held."""
    leans: Callable[[str], bool] | None = None
    """Where a date of a life or an event is kept from the recipient: whether the words of a date say none by
    themselves. What such words were read as may rest on what is kept."""
    names: Mapping[str, str] = starts(default_factory=dict)
    """By id, what the recipient may call those of whose name a part is kept from them; all others go by their own."""

    def may_be_told(self, statement: StatementView, about: Subject) -> bool:
        """Whether one statement about a thing may go to the recipient. One about a marker is asked of its item."""
        item, where = where_told(about, statement.field)
        passes = self._passes(statement, self.own_audiences(about), item, where)
        return about.id not in self.withheld.people and passes

    def may_have_row(
        self, about: Subject, field: str, words: str, audience: str, beside: Collection[str], kept: Sequence[str]
    ) -> bool:
        """Whether a row of the log may go into a working copy of the recipient's as it stands.

        `beside` are the ids of who says it and of all that it was ever read as, `kept` the audiences of its item.
        What the keeper has said of who may see a thing goes with it, though that is said to the keeper alone: without
        it, it would be for anyone there.
        """
        return (
            self.withheld.people.isdisjoint((about.id, *beside))
            and (field == AUDIENCE or self.may_see_audience(audience))
            and self.may_see_kept(kept, field)
            and self.may_read(words, about.id if about.kind is Kind.ITEM else "", field)
        )

    def may_name_source(self, statement: StatementView) -> bool:
        """Whether who or what says a statement may be named.

        A narrator whom the registry has not may be living, and is not named outside.
        """
        source = statement.source
        if source.said is Said.NARRATOR and statement.said_by:
            return self.may_name(source.ref, self._name_of(source.ref, statement.said_by))
        if source.said is Said.NARRATOR and self.to.is_public:
            return not source.ref
        return self.may_read(source.ref)

    def without_names(self, statement: StatementView, about: Subject) -> StatementView:
        """The statement about a thing without the name of who says it, if that may not be told.

        That a narrator does, say, stays. A language whose private tag names somebody is left out. Words of a place stay
        without what they were read as, if that has a name which may not be told: a family's own place has several
        names. So do words of a date that lean on a life or an event (“when Liisi was five”), where such a date is kept.
        """
        if self._leans_on_what_is_kept(statement):
            return self.without_names(replace(statement, value=None, asks=True), about)
        if "x-" in statement.language and not self.may_read(statement.language):  # RFC 5646, 2.2.7: private words
            return self.without_names(replace(statement, language=""), about)
        if not self._may_have_place(statement, about):
            return self.without_names(replace(statement, value=None), about)
        if not self.may_name_source(statement):
            known = statement.source.said is Said.NARRATOR and statement.said_by
            return replace(statement, **({"said_by": ""} if known else {"source": Source(statement.source.said)}))
        said_by = self._name_of(statement.source.ref, statement.said_by)
        return statement if said_by == statement.said_by else replace(statement, said_by=said_by)

    def _may_have_place(self, statement: StatementView, about: Subject) -> bool:
        """Whether the place that words were read as may be told by its names."""
        called, (item, where) = _called(statement), where_told(about, statement.field)
        is_strange = self.strangers is not None and self.strangers.are_named(called, item, where)
        return not is_strange and self.may_read(called)

    def _leans_on_what_is_kept(self, statement: StatementView) -> bool:
        is_read = statement.date is not None and not statement.confirmed  # else the keeper has said that it is so
        return self.leans is not None and is_read and self.leans(statement.words)

    def _name_of(self, person: str, name: str) -> str:
        return self.names.get(person, name)

    def may_read(self, words: str, item: str = "", where: str = "") -> bool:
        """Whether plain words may go to the recipient: a name, a mark, the name of a file, a page.

        `item` (id) and `where` say of which part of a record they are, for what the keeper has decided there.
        """
        if self.strangers is not None and self.strangers.are_named(words, item, where):
            return False
        return not self.withheld.finds(words, item, where)

    def surely_names(self, words: str) -> bool:
        """Whether a text surely names someone withheld, whatever the keeper has decided of such a place."""
        return self.withheld.surely_finds(words)

    def surely_named(self, words: str, told: str = "") -> list[Hit]:
        """Where a finished text surely names someone withheld; doubt was asked about where it was told.

        `told` is the same text with our own wording blanked, letter for letter: a hit counts only if it stands there
        too. The keeper's decisions are known again by the words around a name, so that these are looked at as well.
        """
        left = [hit for hit in self.withheld.hits(told or words, where=FINISHED) if not hit.doubt]
        return [
            hit
            for hit in self.withheld.hits(words, where=FINISHED)
            if not hit.doubt and any(hit.start < kept.end and kept.start < hit.end for kept in left)
        ]

    def may_mean(self, words: str) -> frozenset[str]:
        """Those withheld whom plain words name, or may name, by their ids."""
        return frozenset(ident for hit in self.withheld.hits(words) for ident in hit.people)

    def still_allowed(self, answers: Decided) -> Decided:
        """The keeper's answers as they hold here: none names whoever took consent back, or is kept from here."""
        return answers.closed_to(self.withheld.never_named)

    def may_name(self, person: str, name: str, item: str = "", where: str = "") -> bool:
        """Whether a person (by id, empty if not known) may be named so; a namesake of someone withheld may not."""
        return person not in self.withheld.people and self.may_read(name, item, where)

    def may_know(self, statement: Statement) -> bool:
        """Whether a statement about someone may be known by its own audience, whoever is withheld."""
        return self.may_see_audience(statement.audience)

    def may_know_all_of(self, person: Person) -> bool:
        """Whether nothing that is told of someone's name, dates and kin is kept from the recipient."""
        return all(map(self.may_see_audience, person.told_to))

    @property
    def may_hear_closed_passages(self) -> bool:
        """Whether what was said in a closed passage of a sitting may go to the recipient."""
        return self.may_see_audience("family")

    def seen(self, record: Record) -> Record:
        """The record as the recipient may have it; what is left out is counted in `withheld`."""
        is_all_told = self.withheld is NOBODY and not self.names and self.leans is None
        if is_all_told and _is_for_anyone(record) and not self._has_strangers(record):
            return without_worked_out(record)  # nobody is withheld, and nobody unknown is told of anywhere
        if not self.may_see_kept(record.audiences):
            return self._closed(record)
        about = Subject(Kind.ITEM, record.id)
        views_by_field = {
            name: tuple(
                self.without_names(view, about) for view in views if self._passes(view, record.audiences, record.id)
            )
            for name, views in record.told.items()
        }
        people = tuple(
            replace(shown, name=self._name_of(shown.person, shown.name), told=self.without_names(shown.told, about))
            for shown in record.people
            if self._may_show(shown, record)
        )
        seen = replace(
            record,
            told={name: views for name, views in views_by_field.items() if views},
            people=people,
            conflicts=tuple(self._conflicts(record, record.conflicts)),
            undecided=tuple(self._conflicts(record, record.undecided)),
            not_known=frozenset(name for name in record.not_known if self.may_see_kept(record.audiences, name)),
            asked=tuple(
                self.without_names(view, about)
                for view in record.asked
                if self._passes(view, record.audiences, record.id)
            ),
            found_in=record.found_in if self._may_have(record, "found_in", record.found_in, FOUND_IN) else "",
            size_mm=record.size_mm if self._may_have(record, "size", "") else (),
            mark=record.mark if self._may_have(record, "kept", _labels(record), MARK) else None,
            closed_scans=record.closed_scans or self._closes_scans(record),
            worked_out=None,
            hidden=record.hidden.union(name for name in KNOWN_OF if record.all(name) and not views_by_field[name]),
        )
        return replace(seen, withheld=record.withheld + _count(record) - _count(seen))

    def namings(self, record: Record) -> Iterator[Naming]:
        """Every place of a record, each once, that names someone withheld or shows someone who may not be shown."""
        yield from dict.fromkeys(self._namings(record))

    def names_unknown(self, about: Subject, views: Iterable[StatementView]) -> Iterator[Naming]:
        """Where what is told of a thing that is no item names somebody of whom nothing is known: what `may_be_told`
        leaves out for that, and can be answered."""
        strangers = self.strangers
        if strangers is None or about.id in self.withheld.people:
            return
        for view in views:
            item, where = where_told(about, view.field)
            for text in (view.words, _called(view)) if self.may_see_audience(view.audience) else ():
                if unknown := strangers.named_in(text, item, where):
                    yield Naming(where, view.words, frozenset(), text=text, unknown=unknown)

    def may_read_of(self, naming: Naming) -> bool:
        """Whether the words of a naming may go: all whom they name may be named, and only what shows them may not."""
        return bool(naming.people) and not naming.people & self.withheld.people

    def _namings(self, record: Record) -> Iterator[Naming]:
        for view in every_told(record):
            for naming in self._named_by(record, view):
                yield replace(naming, noted_on=day_in(view.recorded_at))
        for shown in record.people:
            if self._is_stranger(shown.told, record.id) and shown.told.source.said is not Said.FILE:
                noted_on = day_in(shown.told.recorded_at)
                yield Naming(shown.told.field, shown.told.words, frozenset(), text=shown.told.words, noted_on=noted_on)
            if not self._meant_or_named(record, shown.told.field, shown.told.meant, shown.told.words).people:
                yield from self._naming(record, shown.told.field, shown.name, shown.person)
            if shown.role == "person" and shown.person in self.withheld.hidden_pictures - self.withheld.people:
                yield Naming(SHOWN, shown.told.words, frozenset({shown.person}))
        for naming in self._says_it_shows(record):
            if self.may_read_of(naming):  # else it is listed where it is told
                yield naming
        yield from self._naming(record, FOUND_IN, record.found_in)
        for naming in self._naming(record, MARK, _labels(record)):
            yield replace(naming, words=_long(record))
        for scan in record.scans:
            for where, text in _texts_of(scan):
                for naming in self._naming(record, where, text):
                    words = f"{scan.path}: {text}" if where == MADE_BY else scan.path
                    yield replace(naming, words=words, noted_on=day_of(scan.id))
        for scan, name in self._strangers(record):
            yield Naming(EMBEDDED, f"{scan.path}: {name}", frozenset(), text=name, noted_on=day_of(scan.id))

    def _named_by(self, record: Record, view: StatementView) -> Iterator[Naming]:
        """Where one statement names somebody withheld: in its words, as its teller, by kin alone."""
        if self._is_stranger(view, record.id) and view.source.said is not Said.FILE:  # listed by its scan below
            yield Naming(view.field, view.words, frozenset(), text=view.words)
        yield from self._naming(record, view.field, view.words, view.meant)
        for naming in self._naming(record, view.field, _called(view)):
            yield replace(naming, words=view.words)
        if hits := self._kin_told(view, record.id):
            kin = frozenset(ident for hit in hits for ident in hit.people)
            doubtful = frozenset(ident for hit in hits if hit.doubt for ident in hit.people)
            yield Naming(view.field, view.words, kin, doubtful, view.words, hits)
        if not self.may_name_source(view):
            name, known = view.said_by or view.source.ref, view.source.ref in self.withheld.people
            naming = self._meant_or_named(record, WHO_SAYS, view.source.ref, "" if known else name)
            yield replace(naming, words=name)

    def _strangers(self, record: Record) -> Sequence[tuple[ScanFile, str]]:
        return tuple(self.strangers.shown_in(record)) if self.strangers else ()

    def _is_stranger(self, view: StatementView, item: str) -> bool:
        """Whether words of who is there may be the name of somebody of whom nothing is known."""
        return self.strangers is not None and self.strangers.is_told(view, item)

    def _has_strangers(self, record: Record) -> bool:
        strangers = self.strangers
        if strangers is None or strangers.unknown is not None:
            return strangers is not None  # told of another item, they may stand in any words
        told = (*every_told(record), *(shown.told for shown in record.people))
        words = [(text, view.field) for view in told for text in (view.words, _called(view))]
        words += [(record.found_in, FOUND_IN), (_labels(record), MARK)]
        if any(strangers.are_named(text, record.id, where) for text, where in words):
            return True
        return bool(self._strangers(record)) or any(self._is_stranger(view, record.id) for view in told)

    def _naming(self, record: Record, where: str, text: str, person: str = "") -> Iterator[Naming]:
        naming = self._meant_or_named(record, where, person, text)
        if naming.people:
            yield naming
        if self.strangers is not None and (unknown := self.strangers.named_in(text, record.id, where)):
            yield Naming(where, text, frozenset(), text=text, unknown=unknown)

    def _meant_or_named(self, record: Record, where: str, person: str, text: str) -> Naming:
        """Whom words mean, name or may name.

        Words that are read as somebody withheld mean that one: what else they might mean is no question then.
        """
        hits = self.withheld.hits(text, record.id, where)
        sure = frozenset(ident for hit in hits if not hit.doubt for ident in hit.people)
        if person in self.withheld.people:
            return Naming(where, text, sure | {person}, text=text, hits=[hit for hit in hits if not hit.doubt])
        named = frozenset(ident for hit in hits for ident in hit.people)
        return Naming(where, text, named, named - sure, text, hits)

    def may_see_kept(self, audiences: Sequence[str], field: str = "") -> bool:
        """Whether the recipient may see a thing, or one field of it, as far as the keeper has kept any of it."""
        return all(map(self.may_see_audience, _kept_to(audiences, field)))

    def may_see_audience(self, audience: str) -> bool:
        """Whether words of that audience may go to the recipient, as far as that alone decides."""
        return may_see(audience, self.to, self.on_day)

    def _passes(self, view: StatementView, audiences: Sequence[str], item: str, where: str = "") -> bool:
        return (
            self.may_see_audience(view.audience)
            and self.may_see_kept(audiences, view.field)
            and view.meant not in self.withheld.people
            and not self._is_stranger(view, item)
            and self.may_read(view.words, item, where or view.field)
            and not self._kin_told(view, item)
        )

    def _kin_told(self, view: StatementView, item: str) -> Sequence[Hit]:
        """Where a teller who is named tells somebody withheld by kin alone."""
        is_named = view.source.said is Said.NARRATOR and view.said_by and self.may_name_source(view)
        return self.withheld.hits_of_kin(view.words, view.source.ref, item, view.field) if is_named else ()

    def _may_show(self, shown: PersonShown, record: Record) -> bool:
        name, where = self._name_of(shown.person, shown.name), shown.told.field
        return self._passes(shown.told, record.audiences, record.id) and self.may_name(
            shown.person, name, record.id, where
        )

    def _may_have(self, record: Record, field: str, words: str, where: str = "") -> bool:
        """Whether a part of the record that is no statement, as words, may go to the recipient."""
        return self.may_see_kept(record.audiences, field) and self.may_read(words, record.id, where)

    def _conflicts(self, record: Record, conflicts: Sequence[Conflict]) -> Iterator[Conflict]:
        """Those of which any side may be told; sides that may not are counted, so that none stands as settled."""
        for conflict in conflicts:
            seen = [view for view in conflict.told if self._passes(view, record.audiences, record.id)]
            if seen:
                hidden = conflict.hidden + len(conflict.told) - len(seen)
                about = Subject(Kind.ITEM, record.id)
                told = tuple(self.without_names(view, about) for view in seen)
                yield replace(conflict, told=told, hidden=hidden)

    def _closes_scans(self, record: Record) -> bool:
        """Whether the picture shows who may not be shown, or what stands on or in it tells what may not be told."""
        not_shown = self.withheld.people | self.withheld.hidden_pictures
        for shown in record.shown():
            if shown.person in not_shown or not self.may_read(shown.told.words, record.id, shown.told.field):
                return True
            if self._is_stranger(shown.told, record.id):
                return True
        if self._strangers(record) or any(self._says_it_shows(record)):
            return True
        titles = (view for field in WHAT_IT_SHOWS for view in record.all(field))
        if self.strangers and any(self.strangers.are_named(view.words, record.id, view.field) for view in titles):
            return True
        if not all(self._passes(view, record.audiences, record.id) for view in record.all("inscription")):
            return True
        texts = [text for scan in record.scans for text in _texts_of(scan)]
        return not all(self.may_read(words, record.id, where) for where, words in texts)

    def _says_it_shows(self, record: Record) -> Iterator[Naming]:
        """Where words about what the picture shows name somebody who may not be shown, or may name them."""
        for view in (view for field in (*WHAT_IT_SHOWS, *TELLS_MORE) for view in record.all(field)):
            hits = self.withheld.hits_of_shown(view.words, record.id, view.field)
            if view.field in TELLS_MORE:
                hits = list(names_seen(view.words, hits))
            named = frozenset(ident for hit in hits for ident in hit.people)
            if named:
                sure = frozenset(ident for hit in hits if not hit.doubt for ident in hit.people)
                yield Naming(view.field, view.words, named, named - sure, view.words, hits)

    def _closed(self, record: Record) -> Record:
        """An item that is kept from the recipient: its number and mark stay, and what an archive calls it."""
        references = tuple(
            self.without_names(view, Subject(Kind.ITEM, record.id))
            for view in record.all(REFERENCE)
            if self.may_see_audience(view.audience) and self.may_read(view.words, record.id, REFERENCE)
        )
        is_told = bool(record.people or set(record.told) - {REFERENCE})
        return Record(
            id=record.id,
            number=record.number,
            kind=record.kind,
            mark=record.mark if self.may_read(_labels(record), record.id, MARK) else None,
            scans=record.scans,
            changed_at=record.changed_at,
            told={REFERENCE: references} if references else {},
            withheld=record.withheld + _told(record) + len(record.people) - len(references),
            closed_scans=True,
            hidden=record.hidden.union(
                # made again of a transfer that told nothing of it: whether it is dated is not known here
                name
                for name in KNOWN_OF
                if record.all(name) or (name == "date" and not is_told)
            ),
        )


def _kept_to(audiences: Sequence[str], field: str) -> Iterator[str]:
    """The audiences that hold for one field: those of the whole (`family`), and its own (`story=family`).

    Words that cannot be read keep the whole to the keeper.
    """
    for words in audiences:
        kept = AUDIENCE_WORDS.or_none(words)
        if kept is None:
            yield "keeper"
        elif kept.field in ("", field):
            yield str(kept.audience)


def without_worked_out(record: Record) -> Record:
    """The record without a date that was worked out for whoever it was for: it may rest on what others may not see."""
    return replace(record, worked_out=None) if record.worked_out else record


def is_keepers_alone(audiences: Sequence[str]) -> bool:
    """Whether a thing as a whole is the keeper's alone, by the words of its field `audience`."""
    return any(audience == "keeper" for audience in _kept_to(audiences, ""))


def _called(view: StatementView) -> str:
    """What the place is called that the words were read as; empty for another statement."""
    place = view.place.best if view.place else None
    return "; ".join((full_name(place), place.name, place.called_then)) if place else ""


def _long(record: Record) -> str:
    return record.mark.long if record.mark else ""


def _labels(record: Record) -> str:
    """The words of a mark that somebody chose: what the containers are called, without `Box` and `Folder`."""
    return "; ".join(label for _, label in record.mark.path) if record.mark else ""


def _texts_of(scan: ScanFile) -> Iterator[tuple[str, str]]:
    """The texts of a scan's file, with their places: who made it line by line, all else that it says, its name."""
    lines = EMBEDDED_WORDS.read(scan.embedded).lines if scan.embedded else ()
    made_by = [words for name, words in lines if name in OF_THE_MAKER]
    yield from ((MADE_BY, words) for words in made_by)
    others = tuple(line for line in lines if line[0] not in OF_THE_MAKER)
    yield EMBEDDED, EMBEDDED_WORDS.write(Embedded(others)) if made_by else scan.embedded
    yield FILE_NAME, _file_name(scan)


def _file_name(scan: ScanFile) -> str:
    return scan.path.rpartition("/")[2]


def _is_for_anyone(record: Record) -> bool:
    """Whether all that is told may go to everybody: most records, seen at a glance."""
    if record.audiences or record.conflicts or record.undecided:
        return False
    if not all(_is_plain(view) for views in record.told.values() for view in views):
        return False
    return all(_is_plain(view) for view in (*record.asked, *(shown.told for shown in record.people)))


def _is_plain(view: StatementView) -> bool:
    """For anyone, and not by a narrator whom nobody knows (who may be living)."""
    return view.audience == "anyone" and bool(view.said_by or view.source.said is not Said.NARRATOR)


def _told(record: Record) -> int:
    """How many statements are told of an item, besides what an archive remarks and is answered."""
    return sum(len(views) for name, views in record.told.items() if name not in (REMARK, ANSWER))


def _count(record: Record) -> int:
    """How much a record tells: its statements, the names at markers (others stand among the fields), its parts."""
    statements = _told(record) + sum(1 for shown in record.people if shown.number)
    return statements + bool(record.found_in) + bool(record.size_mm) + (record.mark is not None)
