"""A meeting place: the log of this desk and what other desks brought there, exchanged.

Each desk keeps its own collection and works without the server. At a meeting what others brought is taken in as
another working copy is joined (`joining`), and what was told here is brought there. That is done twice: first while
other desks go on, then, for what has come meanwhile, while they wait; so what is brought stands upon all there is, and
a row whose earlier form was struck is struck before it could go.

A meeting that breaks off is as if it had not begun, there, and is taken in whole or not at all, here: the next one goes
on. Scans do not go: they are in a folder or parcel that is joined.
"""

from dataclasses import dataclass, field
from functools import partial

from boxlore.core.errors import WrongUse
from boxlore.store import joining
from boxlore.store.joining import Joined
from boxlore.store.left_out import LeftOut
from boxlore.store.meeting_exchange import (
    Brought,
    Known,
    all_known,
    also_known,
    as_one_desk,
    bring,
    fetched,
    last_place,
    log_state,
    mark,
    refuse,
    wishes,
)
from boxlore.store.meeting_place import DESK, KEEPER, NO_DESK, READER, MeetingPlace, admit, meeting_place, prepare
from boxlore.store.strike import StrikeReport
from boxlore.tasks.collection.joining import check_numbers, number_anew, strike_as_there
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.parcel_audience import left_out_for_family, left_out_of_rows
from boxlore.tasks.collection.settings import keep_setting

ROLES = (KEEPER, DESK, READER, NO_DESK)
"""What whoever logs in to the server may be there."""

NOTHING_CAME = Joined(0, 0, 0, (), (), ())


@dataclass(slots=True)
class Met:
    """What came of a meeting: what came in, what was struck here because it was struck elsewhere, what went there, how
    many statements a keeper's desk opened or closed there, what a teller's desk wishes struck (statement, subject,
    field, by), items numbered anew (old and new number), and how many scans are told of and do not lie here."""

    log: Joined = NOTHING_CAME
    struck: list[StrikeReport] = field(default_factory=list)
    brought: Brought = field(default_factory=Brought)
    opened: int = 0
    closed: int = 0
    wished: list[tuple[str, str, str, str]] = field(default_factory=list)
    numbered_anew: list[tuple[str, str]] = field(default_factory=list)
    scans_elsewhere: int = 0
    rights: str = ""


class Meeting:
    """This desk at a meeting place, for as long as it is connected."""

    def __init__(self, collection: Collection, place: MeetingPlace, *, new_numbers: bool = False) -> None:
        self._collection = collection
        self._place = place
        self._new_numbers = new_numbers
        self._known: Known | None = None
        self._note = f"met {place.id}"
        self._is_backed_up = False

    @property
    def _since(self) -> int:
        """The last place up to which all that is there is here too."""
        return int(self._collection.store.meta(self._note) or 0)

    def exchange(self) -> Met:
        """Take in what is new there, and bring what is new here. Raises NotReached, CouldNot, WrongUse."""
        met = Met(rights=self._place.rights)
        self._take_in(met)
        with as_one_desk(self._place):
            self._take_in(met)
            store = self._collection.store
            known = self._known = self._known or all_known(self._place)
            met.brought = bring(self._place, store.db, known, partial(left_out_of_rows, self._collection))
            if met.brought.tombstones:
                self._take_in(met)  # what the server blanked because of them
            last = last_place(self._place)
        store.set_meta(self._note, str(last))
        return met

    def hear(self) -> Met:
        """Take in what is new there, and bring nothing."""
        met = Met(rights=self._place.rights)
        self._take_in(met)
        return met

    def told_so_far(self) -> str:
        """What is another whenever something was told, read, struck or taken in here."""
        return log_state(self._collection.store.db)

    def put_right(self, met: Met) -> None:
        """At a keeper's desk: let what is open there be what the collection says, and hear what is wished struck."""
        if self._place.rights == KEEPER:
            kept: LeftOut = left_out_for_family(self._collection)
            with as_one_desk(self._place):
                met.opened, met.closed = mark(self._place, kept)
            wished = wishes(self._place)
            here = set(joining.to_strike(self._collection.store.db, [row[0] for row in wished]))
            met.wished = [row for row in wished if row[0] in here]

    def refuse(self, met: Met) -> None:
        """Let stand what a teller's desk wished struck."""
        refuse(self._place, [statement for statement, *_ in met.wished])

    def strike_wished(self, met: Met) -> None:
        """Strike here what a teller's desk wished struck; the next exchange strikes it there."""
        if report := strike_as_there(self._collection, {statement for statement, *_ in met.wished}):
            met.struck.append(report)

    def _take_in(self, met: Met) -> None:
        collection, since, newest = self._collection, self._since, last_place(self._place)
        if newest == since:
            return
        if newest < since:  # the server was brought back to how it was before
            since = 0
        with fetched(self._place, since) as (there, last):
            if last > since:
                if not self._is_backed_up:
                    collection.back_up_before("a meeting")
                    self._is_backed_up = True
                struck = strike_as_there(collection, joining.forms_struck(collection.store.db, there))
                if struck:
                    met.struck.append(struck)
                agree = partial(check_numbers, new_numbers=self._new_numbers, struck=struck)
                log = joining.join(collection.store, there, collection.by, collection.clock.now(), agree)
                number_anew(collection, log.twice, met.numbered_anew)
                met.log = _both(met.log, log)
                if self._known:
                    also_known(self._known, there)
                collection.store.set_meta(self._note, str(last))


def _both(first: Joined, then: Joined) -> Joined:
    """What came in of two joinings."""
    return Joined(
        first.acts + then.acts,
        first.statements + then.statements,
        first.tombstones + then.tombstones,
        tuple(dict.fromkeys((*first.by, *then.by))),
        then.twice,
        (*first.corrected_twice, *then.corrected_twice),
    )


def meet(collection: Collection, address: str = "", *, new_numbers: bool = False, wished: str = "") -> Met:
    """One meeting, at the address or where this desk met last. `wished` is what a keeper says to what tellers' desks
    wish struck: `strike`, `refuse`, or nothing yet. The address is kept in the settings once it has been reached."""
    where = address or collection.settings.meeting
    if not where:
        raise WrongUse("No meeting place is known here.", "Name it: boxlore meet postgresql://NAME@HOST/DATABASE.")
    with meeting_place(where, collection.id) as place:
        check_name(collection, place)
        meeting = Meeting(collection, place, new_numbers=new_numbers)
        met = meeting.exchange()
        meeting.put_right(met)
        if met.wished and wished:
            (meeting.strike_wished if wished == "strike" else meeting.refuse)(met)
            again = meeting.exchange()
            met.log, met.wished = _both(met.log, again.log), []
    met.scans_elsewhere = _scans_elsewhere(collection)
    if where != collection.settings.meeting:
        collection.settings = keep_setting(collection.folder, "meeting", where)
    return met


def check_name(collection: Collection, place: MeetingPlace) -> None:
    """Raises WrongUse where this desk would tell by a name that it was not admitted by."""
    if place.rights == DESK and collection.by not in place.names:
        raise WrongUse(
            f"What is told here is by “{collection.by}”, and this desk was admitted by the name of "
            f"{' or '.join(place.names)}.",
            f"Whoever prepared the meeting place adds it: boxlore meet --admit NAME --as desk --by {collection.by}.",
        )


def _scans_elsewhere(collection: Collection) -> int:
    return sum(not (collection.folder / facts.path).exists() for _, facts in collection.store.scans())


def prepare_place(collection: Collection, address: str) -> int:
    """Make a meeting place of a database, or bring it up to date, with whoever logs in so as a keeper."""
    migrated = prepare(address, collection.id, collection.clock.new_id(), (collection.by,))
    if address != collection.settings.meeting:
        collection.settings = keep_setting(collection.folder, "meeting", address)
    return migrated


def admit_desk(collection: Collection, address: str, role: str, rights: str, names: tuple[str, ...]) -> bool:
    """Let a login of the server be a desk. Returns whether the login was made, which has no password yet."""
    return admit(address or collection.settings.meeting, role, rights, names or (role,))
