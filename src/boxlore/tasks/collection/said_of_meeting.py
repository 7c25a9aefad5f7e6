"""What came of a meeting, in sentences; both fronts say the same."""

from boxlore.core.findings import several
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.store.meeting_place import DESK, KEEPER, NO_DESK, READER
from boxlore.tasks.collection.meeting import Met
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.said_of_joining import SHOWN, said_of_both, said_of_struck

_SEES = {
    KEEPER: "has all, and says what the others see",
    DESK: "sees what the family may, and adds what is told there",
    READER: "sees what the family may",
}


def said_of_meeting(collection: Collection, met: Met) -> list[str]:
    """What came of it, in sentences."""
    log, brought = met.log, met.brought
    by = f" by {ENGLISH.listed([name or 'somebody' for name in log.by])}" if log.by else ""
    came = f"{several(log.statements, 'statement')}{by} came from other desks" if log.acts else "Nothing new came"
    went = f"{several(brought.statements, 'statement')} went there" if brought.rows else "nothing new went there"
    lines = [f"{came}; {went}."]
    for report in met.struck:
        lines += said_of_struck(report)
    lines += [
        f"{old} was given at two desks: the photograph that came in later is {new} now. Pencil that on its enclosure."
        for old, new in met.numbered_anew
    ]
    lines += said_of_both(collection, log.corrected_twice)
    if met.rights == READER and brought.of_others:
        lines.append(f"This desk only reads there: {several(brought.of_others, 'statement')} told here did not go.")
    elif brought.of_others:
        lines.append(
            f"{several(brought.of_others, 'statement')} by others did not go: a desk tells by its own names alone. A "
            "keeper's desk can bring them."
        )
    if met.opened or met.closed:
        lines.append(
            f"Opened to the others: {several(met.opened, 'statement')}; closed: {met.closed}, which a desk that has "
            "them already keeps."
        )
    if met.wished:
        lines.append("Other desks wish struck what was told elsewhere. It is hidden there until you answer:")
        for _, subject, field, who in met.wished[:SHOWN]:
            lines.append(f"  {collection.store.number_of(subject)} {field} ({who})".replace("   ", "  "))
        lines.append("boxlore meet --wished strike strikes all of it for good, --wished refuse lets it stand.")
    if met.scans_elsewhere:
        lines.append(
            f"{several(met.scans_elsewhere, 'scan')} told of do not lie here: boxlore join takes them from a folder "
            "or a parcel."
        )
    return lines


def said_of_preparing(migrated: int) -> list[str]:
    """What is said of a meeting place that was made or brought up to date."""
    return [
        "The meeting place is prepared, and you are a keeper there. boxlore meet brings what is told here."
        if migrated
        else "The meeting place is as this Boxlore wants it. Every desk reads it anew once.",
        "Let others in with boxlore meet --admit NAME --as desk. What the server keeps, its own backups keep "
        "(pg_dump): each desk has all that it may see as well, and whatever is lost there comes back from the desks.",
    ]


def said_of_admitting(role: str, rights: str, names: tuple[str, ...], *, is_new: bool) -> list[str]:
    """What is said of a login that is a desk now, or none any more."""
    if rights == NO_DESK:
        return [f"{role} is no desk any more. What it has already it keeps."]
    lines = [f"{role} {_SEES[rights]}."]
    if rights == DESK:
        lines.append(f"What it tells is by the name of {' or '.join(names or (role,))}, and no other.")
    if is_new:
        lines.append(f"Its login was made and has no password: give it one in psql, with \\password {role}.")
    return lines
