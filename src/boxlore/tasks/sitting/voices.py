"""Where a photograph is told of aloud: the stretches of recordings for the family's own pages.

A stretch goes onto the pages only if everybody who told in that sitting has agreed to recordings or is dead, if it
touches no closed passage, and if nothing was told in it that the family may not know: it cannot be cut more finely.
"""

from collections.abc import Iterator, Mapping

from boxlore.core.errors import WrongUse
from boxlore.core.fields.sittings import recording_in
from boxlore.core.people.consent import Matter, allowed
from boxlore.core.people.person import Person
from boxlore.core.records.audience import Recipient, To
from boxlore.core.sitting.time_log import Out, is_closed, within
from boxlore.core.statements import Kind, Said, Subject
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.outputs.web_pages import Stretch
from boxlore.tasks.sitting.recordings import sittings
from boxlore.tasks.sitting.time_log import SittingLog, read_log

LEAST = 2_000
"""Milliseconds: in a shorter stretch nobody has said anything."""


def heard(collection: Collection, to: To) -> dict[str, list[Stretch]]:
    """The stretches for each item, by its id. Raises WrongUse for any audience but the family."""
    if not to.is_family:
        raise WrongUse("Voices go only onto the family's own pages.", "Leave out --voice, or add --for family.")
    recipient, people = seen_by(collection, to).recipient, collection.people()
    stretches: dict[str, list[Stretch]] = {}
    for sitting, _ in sittings(collection):
        log = read_log(collection, sitting)
        if log.recordings and _all_agreed(log, people):
            for item, stretch in _of_sitting(collection, log, recipient):
                stretches.setdefault(item, []).append(stretch)
    return stretches


def _all_agreed(log: SittingLog, people: Mapping[str, Person]) -> bool:
    """Whether everybody who told is known, and has agreed to recordings or is dead; no if nobody told."""
    tellers = {view.source.ref for _, view in log.told if view.source.said is Said.NARRATOR}
    known = [people[teller] for teller in tellers if teller in people]
    return 0 < len(tellers) == len(known) and all(each.dead or Matter.VOICE in allowed(each.consents) for each in known)


def _of_sitting(collection: Collection, log: SittingLog, recipient: Recipient) -> Iterator[tuple[str, Stretch]]:
    rows = collection.store.statements(Subject(Kind.SITTING, log.sitting))
    sums = {kept.path: kept.sha256 for row, _ in rows if row.field == "recording" for kept in [recording_in(row)]}
    for recording in log.recordings:
        start, last = within(recording, log.recordings, log.end)
        for out in log.outs:
            said = Out(out.item, max(out.start, start), min(out.end, last))
            if said.end - said.start >= LEAST and _may_be_heard(log, said, recipient):
                sha256 = sums[recording.path]
                yield out.item, Stretch(recording.path, sha256, said.start - start, said.end - start)


def _may_be_heard(log: SittingLog, out: Out, recipient: Recipient) -> bool:
    if is_closed(log.closed, out.start, out.end):
        return False
    told = [row for row in log.told if out.start <= (row[1].moment or 0) <= out.end]
    return all(recipient.may_be_told(view, subject) for subject, view in told)
