"""Whether an earlier transfer is the last one: two updates of one transfer stand side by side, and an archive that puts
one in the place of the other loses what the first had brought."""

from collections.abc import Iterable, Iterator

from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.tasks.archive.transfer_updates import Earlier
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.scans import fixity_events

_MANIFEST = "/manifest-sha512.txt"
_FIRST_BAGS = ("open/", "open-1/")
"""What the first bag of a transfer is called: each has one of these."""


def packed_since(collection: Collection, parts: Iterable[Earlier]) -> Iterator[Finding]:
    """What is asked of the keeper where transfers were packed after the one whose `parts` are updated. Of one that this
    collection has not packed itself, for it was made again since, nothing is known."""
    updated = {bag.digest for part in parts for bag in part.revised}
    packed = [
        row
        for row in fixity_events.events(collection, by_manifest=True)
        if row["Event"] == fixity_events.COPIED and row["File"].endswith(_MANIFEST)
    ]
    last = max((at for at, row in enumerate(packed) if row["SHA-256"] in updated), default=len(packed))
    if times := [row["When"] for row in packed[last + 1 :] if row["File"].startswith(_FIRST_BAGS)]:
        days = ENGLISH.listed(list(dict.fromkeys(when[:10] for when in times)))
        words = (
            f"Since the transfer that this updates {several(len(times), 'other was', 'others were')} packed ({days}). "
            "If this archive has got a later one, make the update of that (--update): else two updates of one transfer "
            "stand side by side, and neither knows what the other brought."
        )
        yield make_finding("transfer.older", Severity.ASK, words, "RFC 8493 leaves it to whoever sends")
