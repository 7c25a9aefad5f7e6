"""What an archive is to withdraw or delete of earlier transfers, and why: `metadata/withdraw.csv` of an update.

A row says of a file, an item or a statement of an earlier transfer what to do with it, in one word, and the reason:

    delete   struck      words were taken out for good; every file of the earlier description may hold them
    delete   closed      no longer in the open part: it names or shows somebody, or its teller or the family closed it
    delete   consent taken back    no longer in the open part: somebody in it took back a consent, of name or picture
    delete   kept        no longer in any part: the family or the keeper keeps it
    return   kept        the original: it was handed over, and the family keeps it now
    keep     given again the original: an earlier update asked it back, and it is given again now
    return   lent        the original: it was handed over, and belongs to somebody who lent it
    replace  corrected   said otherwise now, or another file stands under that path
    replace  struck, closed, consent taken back, kept    a copy whose caption had words that are gone for that reason
    delete   withdrawn   no longer in the collection

A file is told by its path below `data/`; one that begins with `../` is of the bag itself: where it named whoever holds
the collection, who may be named there no more. A signed deed stays; its extract in the open part is a description.

It holds no words that were told: only numbers, identifiers, names of fields and paths that the archive has already.
"""

from collections.abc import Collection as Sized
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from functools import cached_property
from pathlib import Path

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.people.consent import Matter, is_taken_back
from boxlore.core.records.audience import WHO_SAYS
from boxlore.core.records.item_record import REFERENCE
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind
from boxlore.store.values import Struck
from boxlore.tasks.archive.name_answers import took_consent_back
from boxlore.tasks.archive.originals_asked_back import given_again, newly_asked_back
from boxlore.tasks.archive.transfer_updates import (
    DESCRIBING,
    FORMS,
    OF_THE_BAG,
    URN,
    WITHDRAW,
    Earlier,
    table_of,
)
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView, keepers_alone, kept_whole, record_of

HEADING = ("What to do", "Reason", "File", "SHA-256", "Transfer", "Number", "Identifier", "Field")


class Reason(StrEnum):
    """Why something of an earlier transfer no longer holds."""

    STRUCK = "struck"
    CLOSED = "closed"
    CONSENT = "consent taken back"
    KEPT = "kept"
    LENT = "lent"
    GIVEN = "given again"
    CORRECTED = "corrected"
    WITHDRAWN = "withdrawn"


_COPIES = "copies/"
_DELETE, _REPLACE, _RETURN, _KEEP = "delete", "replace", "return", "keep"
TELLER = "who told it"
"""Stands for a field where somebody is named no more as the teller of an item."""
_NOT_HERE = "", False
"""The field of a statement that the collection does not have, and that it is not in force."""
_WORST_FIRST = (Reason.STRUCK, Reason.CONSENT, Reason.KEPT, Reason.CLOSED)


@dataclass
class Withdrawing:
    """Gathers, while an update is counted, what of the earlier part no longer holds."""

    collection: Collection
    earlier: Earlier
    seen: AudienceView
    facts: CollectionFacts
    lacking: dict[str, list[str]] = field(default_factory=dict)
    """Number of an item, '' for all else -> ids of the statements that were told of it and are not in this part now."""
    tellers_gone: dict[str, str] = field(default_factory=dict)
    """Number -> id of the items whose teller took back the consent to be named since, and is named no more."""
    _why: dict[str | None, Reason] = field(default_factory=dict)
    """What `_hidden` has said of an item: it is asked of each of its statements and files."""

    def compare(self, number: str, ident: str, told: Iterable[str]) -> None:
        """Hold what is told of a thing now against what was handed over of it."""
        before = self.earlier.items.get(ident)
        now = set(told)
        if before and (lacking := [name for name in before.told if name not in now]):
            self.lacking[number] = lacking

    def note_teller(self, number: str, ident: str) -> bool:
        """Note that it is told otherwise who told of an item, if somebody who did took the consent to be named back
        since; and whether that is so."""
        if not self._took_back_since:
            return False
        namings = self.seen.recipient.namings(record_of(self.collection, ident))
        if is_gone := any(self._took_back_since & naming.people for naming in namings if naming.where == WHO_SAYS):
            self.tellers_gone[number] = ident
        return is_gone

    @cached_property
    def _took_back_since(self) -> frozenset[str]:
        """Whom the open part may name no more, by their ids, since they took that back after the earlier one."""
        if not self.seen.to.is_public:
            return frozenset()
        noted = {
            ident: max((row.recorded_at for row, _ in told if row.field == "consent"), default="")
            for ident, told in self.collection.store.subjects(Kind.PERSON)
        }
        people = [one for one in self.collection.people().values() if is_taken_back(one.consents, Matter.NAME)]
        since = [one for one in people if max(noted.get(ident, "") for ident in one.ids) > self.earlier.time]
        return frozenset(ident for person in since for ident in person.ids)

    def rows(self, seen: Sized[str], files: Mapping[str, str]) -> list[Sequence[str]]:
        """Every row below the heading. `seen` are the items of this part now, `files` the SHA-256 of every file that
        it comes to with the earlier ones, by path."""
        tombs, struck_of = self._tombs, {struck.subject for struck in self._tombs.values()}
        hidden = keepers_alone(self.collection)
        rows: list[Sequence[str]] = []
        for ident, item in self.earlier.items.items():
            if ident not in seen and item.number:
                reason = self._of_item(ident, struck_of)
                rows.append((_DELETE, reason, "", "", "", item.number, f"{URN}{ident}", ""))
        lacking = [name for names in self.lacking.values() for name in names]
        told = self._told(lacking)
        for number, names in self.lacking.items():
            for name in names:
                struck, (field_name, in_force) = tombs.get(name), told.get(name, _NOT_HERE)
                reason = self._of_statement(name, number, in_force=in_force)
                if reason is Reason.CLOSED and not number and self._is_of_one_who_took_back(name):
                    reason = Reason.CONSENT
                what = _REPLACE if reason is Reason.CORRECTED else _DELETE
                shown = struck.field if struck and struck.subject not in hidden else field_name
                rows.append((what, reason, "", "", "", number, f"{URN}{name}", shown))
        for number, ident in self.tellers_gone.items():
            rows.append((_DELETE, Reason.CONSENT, "", "", "", number, f"{URN}{ident}", TELLER))
        rows += self._originals()
        rows += self._files(files)
        own = (_REPLACE, REFERENCE)  # what the archive calls a thing now: it has said so itself
        return [*self._descriptions(rows), *(row for row in rows if (row[0], row[-1]) != own)]

    def _told(self, statements: Sequence[str]) -> Mapping[str, tuple[str, bool]]:
        """Statement -> its field and whether it is in force, of those that the collection has."""
        return self.collection.store.fields_of(statements) if statements else {}

    def _originals(self) -> Iterator[Sequence[str]]:
        """What is to be given back: what the family keeps since its original was handed over, or what was lent; and
        what is not to be given back any more."""
        for ident, item in newly_asked_back(self.earlier, self.facts):
            reason = Reason.KEPT if ident in self.facts.not_given else Reason.LENT
            yield _RETURN, reason, "", "", "", item.number, f"{URN}{ident}", ""
        for ident, item in given_again(self.earlier, self.facts):
            yield _KEEP, Reason.GIVEN, "", "", "", item.number, f"{URN}{ident}", ""

    def reasons(self, number: str) -> list[str]:
        """Why words of an item are no longer in this part, each reason once, corrections left out."""
        names = self.lacking.get(number, [])
        told = self._told(names)
        reasons = dict.fromkeys(
            self._of_statement(name, number, in_force=told.get(name, _NOT_HERE)[1]) for name in names
        )
        return [reason for reason in reasons if reason is not Reason.CORRECTED]

    def _of_statement(self, name: str, number: str, *, in_force: bool) -> Reason:
        """Why a statement of an item ('' for one of no item) is no longer in this part."""
        if name in self._tombs:
            return Reason.STRUCK
        return self._hidden(self.collection.store.item_by_number(number)) if in_force else Reason.CORRECTED

    def _is_of_one_who_took_back(self, statement: str) -> bool:
        """Whether a statement is about somebody who took back the consent to be named, or may name such a one."""
        about, words = self._of_no_item.get(statement, ("", ""))
        return any(took_consent_back(self.collection, ident) for ident in (about, *self.seen.recipient.may_mean(words)))

    @cached_property
    def _of_no_item(self) -> Mapping[str, tuple[str, str]]:
        """Statement of a person, an occasion or a place -> the id of what it is about, and its words."""
        kinds = (Kind.PERSON, Kind.EVENT, Kind.PLACE)
        rows = (row for kind in kinds for _, told in self.collection.store.subjects(kind) for row, _ in told)
        return {row.id: (row.subject.id, row.words) for row in rows}

    @cached_property
    def _kept(self) -> Sized[str]:
        """The items that no archive is given."""
        return kept_whole(self.collection)[0]

    @cached_property
    def _tombs(self) -> Mapping[str, Struck]:
        return {struck.statement: struck for struck in self.collection.store.tombstones()}

    @property
    def _names_the_holder(self) -> bool:
        """Whether a bag that the archive has still names whose collection it is."""
        return any(path in OF_THE_BAG for described in self.earlier.described.values() for path in described)

    def _of_item(self, ident: str, struck: Sized[str]) -> Reason:
        """Why an item is no longer in this part."""
        if self.collection.store.number_of(ident):
            return self._hidden(ident)
        return Reason.STRUCK if ident in struck else Reason.WITHDRAWN

    def _hidden(self, ident: str | None) -> Reason:
        """Why what the collection still has, of this item or of none, is no longer in this part."""
        if not self.seen.to.is_public:
            return Reason.KEPT
        if ident not in self._why:
            self._why[ident] = self._closed(ident)
        return self._why[ident]

    def _closed(self, ident: str | None) -> Reason:
        """Why the open part no longer has it. What the family keeps is kept from both parts."""
        if ident in self._kept:
            return Reason.KEPT
        namings = self.seen.recipient.namings(record_of(self.collection, ident)) if ident else ()
        in_it = {person for naming in namings if naming.where != WHO_SAYS for person in naming.people}
        took_back = any(took_consent_back(self.collection, person, Matter.NAME, Matter.PICTURE) for person in in_it)
        return Reason.CONSENT if took_back else Reason.CLOSED

    def _files(self, files: Mapping[str, str]) -> Iterator[Sequence[str]]:
        for path, held in self.earlier.files.items():
            if (now := files.get(path)) == held.sha256:
                continue
            is_replaced, number = now is not None, _number_in(path)
            reason = self._of_caption(path, number) if is_replaced else self._of_file(path, held.sha256)
            what = _REPLACE if is_replaced else _DELETE
            yield what, reason, path, held.sha256, held.transfer, number, "", ""

    def _of_caption(self, path: str, number: str) -> Reason:
        """Why another file stands under a path now: of a copy, why the words go that its caption may have had."""
        if not (number and path.startswith(_COPIES)):
            return Reason.CORRECTED
        return _worst({*self.reasons(number), *([Reason.CONSENT] if number in self.tellers_gone else ())})

    def _of_file(self, path: str, sha256: str) -> Reason:
        """Why a file is no longer in this part: of an item, or a scan, that the collection still has it is closed."""
        store = self.collection.store
        number = _number_in(path)
        item = store.item_by_number(number) if number else None
        if path.startswith(("recordings/", "papers/")) and (self.collection.folder / path).is_file():
            return Reason.KEPT  # the voice of somebody who is kept from archives, or what the archive has declined
        if path.startswith(_COPIES) and any(name in self._tombs for name in self.lacking.get(number, ())):
            return Reason.STRUCK  # its caption held them
        if path.startswith(_COPIES) and item and not self.seen.to.is_public:  # made for anyone: the item is not open
            return Reason.KEPT if item in self._kept else Reason.CLOSED
        is_here = self.seen.to.is_public and (item is not None or not number)
        return self._hidden(item) if is_here or store.scan_by_sha256(sha256) else Reason.WITHDRAWN

    def _descriptions(self, rows: Sequence[Sequence[str]]) -> Iterator[Sequence[str]]:
        """The description of every earlier transfer that no update has withdrawn yet: to be deleted if words of it may
        no longer be shown. Deeds and consents stay, unless words of a sitting were struck, which may stand in them, or
        somebody who speaks in one is kept from archives now; the extract of a deed goes as the rest does."""
        reasons = {row[1] for row in rows if not row[2] and row[0] not in (_RETURN, _KEEP)}
        is_public, holder = self.seen.to.is_public, self.collection.settings.holder
        is_holder_hidden = bool(is_public and holder and not self.seen.holder) and self._names_the_holder
        if is_holder_hidden:
            reasons.add(Reason.CLOSED)
        elif not rows:
            return
        worst = _worst(reasons)
        what = _REPLACE if worst is Reason.CORRECTED else _DELETE
        gone = [name for names in self.lacking.values() for name in names]
        in_forms = any(self._tombs[name].kind == Kind.SITTING for name in gone if name in self._tombs)
        in_forms |= any(told in (("narrator", True), ("interviewer", True)) for told in self._told(gone).values())
        stays = {FORMS: not in_forms and not (is_public and what is _DELETE)}
        stays |= dict.fromkeys(OF_THE_BAG, not is_holder_hidden)
        for transfer in dict.fromkeys(bag.transfer for bag in self.earlier.bags):
            for path in self.earlier.described.get(transfer, DESCRIBING):
                if not stays.get(path):
                    yield what, worst, path, "", transfer, "", "", ""


def _worst(reasons: Sized[str]) -> Reason:
    """Of several reasons the one that an archive must know; without one it is a correction."""
    return next((reason for reason in _WORST_FIRST if reason in reasons), Reason.CORRECTED)


def _number_in(path: str) -> str:
    """The number of the item that a file is named by; '' for none."""
    number = path.rpartition("/")[2].partition("_")[0]
    return number if looks_like_number(number) else ""


def read_withdrawn(bag: Path) -> Iterator[tuple[str, str]]:
    """(path, SHA-256) of each file that a bag of an update withdraws or replaces."""
    for row in table_of(bag / "data" / WITHDRAW, *HEADING):
        if row["File"] and row["SHA-256"]:
            yield row["File"], row["SHA-256"]
