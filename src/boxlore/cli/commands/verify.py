"""`boxlore verify`: the fixity of scans, copies and packages, and a receipt read back."""

from collections.abc import Sequence
from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.findings import Finding, Severity, several
from boxlore.tasks.archive.receipt import read_receipt
from boxlore.tasks.collection.log_check import log_findings, said_of_older
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.collection.unfinished import left_findings
from boxlore.tasks.outputs.copies_proved import is_copies_folder, prove_copies
from boxlore.tasks.outputs.made_before import made_before, withdrawn
from boxlore.tasks.outputs.struck_words_found import struck_findings
from boxlore.tasks.scans.damage import damage_findings, look_closer
from boxlore.tasks.scans.file_state import Verified
from boxlore.tasks.scans.fixity import due_on, finding_of, last_run, register_again, unfinished, verify_scans
from boxlore.tasks.scans.fixity_events import COLUMNS, events
from boxlore.tasks.scans.package_check import verify_package
from boxlore.tasks.sitting.recordings import verify_kept


@click.command()
@click.argument("package", required=False, type=GivenPath(exists=True, file_okay=False))
@click.option(
    "--look-in", multiple=True, type=GivenPath(exists=True, file_okay=False),
    help="A further folder to look in for scans that are gone; may be repeated.",
)  # fmt: skip
@click.option("--mend", is_flag=True, help="Note the new place of scans found elsewhere by their bytes.")
@click.option("--anew", is_flag=True, help="Begin from the first scan again, where a run was stopped.")
@click.option(
    "--when", "only_when", is_flag=True, help="Only say when the scans were last read, and when they are due."
)
@click.option("--receipt", type=GivenPath(), help="Read what an archive sent back (receipt.csv).")
@click.option("--archive", "name", default="", help="With --receipt: the archive's name.")
@click.option("--events", "only_events", is_flag=True, help="Show the fixity events so far, and check nothing.")
@options.as_json
@options.on_day
@click.pass_context
def verify(
    ctx: click.Context,
    /,
    package: Path | None,
    look_in: tuple[Path, ...],
    mend: bool,
    anew: bool,
    only_when: bool,
    receipt: Path | None,
    name: str,
    only_events: bool,
    as_json: bool,
    on_day: date | None,
) -> None:
    """Read every scan, recording and paper again, and check by its SHA-256 that no byte has changed.

    Copies are checked against their scans and records. With a PACKAGE (a part of a transfer, or a folder of copies)
    the files in it are checked. A run that was stopped goes on where it stopped. A scan that has changed, moved or is
    gone is looked for by its bytes, and listed; no file is ever written to.
    """
    _refuse_others(ctx, package, receipt, only_events=only_events, only_when=only_when)
    if receipt is not None:
        ctx.exit(_receipt(ctx.obj, receipt, name))
    if only_events:
        _events(ctx.obj, as_json=as_json)
        return
    if package is not None:
        ctx.exit(1 if _package(ctx.obj, package, as_json=as_json) else 0)
    with open_collection(ctx.obj, fallback_read_only=not mend, on_day=on_day) as collection:
        if only_when:
            _when(collection, as_json=as_json)
            return
        altered = _log(collection, as_json=as_json)  # first, as what is damaged may stop the rest
        wrong, finished = _verify(collection, look_in, anew=anew, as_json=as_json)
        mended = register_again(collection, wrong) if mend else 0
        kept, wrong_others = _kept(collection, as_json=as_json)
        wrong_others += _left(collection, as_json=as_json) + _made_before(collection, as_json=as_json)
        copies = 0
        if finished and is_copies_folder(beside := collection.folder / "copies"):
            with talk.progress() as bar:
                copies, wrong_copies = _copies(collection, beside, bar, as_json=as_json)
                wrong_others += wrong_copies
        if finished and collection.store.writable:  # such as a HEIC from before its reader was installed
            with talk.progress() as bar:
                look_closer(collection, bar)
        scans = collection.store.count("scan")
        damaged = _damaged(collection, as_json=as_json)
    if mended:
        talk.say(f"The new place of {several(mended, 'scan')} is noted.")
    at_fault = len(wrong) - mended + wrong_others + altered
    if finished:
        checked = [several(scans, "scan")]
        checked += [several(kept, "recording or paper", "recordings and papers")] if kept else []
        checked += [several(copies, "copy", "copies")] if copies else []
        _say_checked(checked, at_fault, damaged)
    ctx.exit(1 if at_fault or not finished else 0)


def _package(folder: Path, package: Path, *, as_json: bool) -> int:
    """How many faults a folder of copies has, or a part of a transfer; each is said."""
    if is_copies_folder(package):
        with open_collection(folder, write=False) as collection, talk.progress() as bar:
            return _copies(collection, package, bar, as_json=as_json)[1]
    findings = [*verify_package(package), *left_findings(folder, package.resolve().parent)]
    for finding in findings:
        output.write_finding(finding, "", "", as_json=as_json)
    talk.say("Every file is as its manifests say." if not findings else several(len(findings), "finding") + ".")
    return len(findings)


def _say_checked(checked: Sequence[str], at_fault: int, damaged: int) -> None:
    """What was checked, and what it came to."""
    state = f"{several(at_fault, 'thing', 'things')} to look into" if at_fault else "nothing to look into"
    if damaged:
        scans = several(damaged, "scan was", "scans were")
        state = f"{state if at_fault else 'nothing changed since'}; {scans} damaged before being taken in"
    talk.say(f"Checked: {', '.join(checked)}; {state}.")


def _refuse_others(
    ctx: click.Context, package: Path | None, receipt: Path | None, *, only_events: bool, only_when: bool
) -> None:
    """Raises WrongUse for an option that the way in which the command is used would drop."""
    if receipt is not None:
        options.refuse_others(ctx, "with --receipt", "receipt", "name")
    elif only_events:
        options.refuse_others(ctx, "with --events", "only_events", "as_json")
    elif package is not None:
        options.refuse_others(ctx, "with a PACKAGE", "package", "as_json")
    elif only_when:
        options.refuse_others(ctx, "with --when", "only_when", "as_json", "on_day")
    else:
        options.refuse_others(ctx, "without --receipt", "look_in", "mend", "anew", "as_json", "on_day")


def _log(collection: Collection, *, as_json: bool) -> int:
    """Hold what was told against its sums; how many rows are not as they were written."""
    findings = log_findings(collection)
    for number, finding in findings:
        output.write_finding(finding, number, "", as_json=as_json)
    if words := said_of_older(collection):
        talk.say(words)
    return len(findings)


def _verify(
    collection: Collection, look_in: tuple[Path, ...], *, anew: bool, as_json: bool
) -> tuple[list[Verified], bool]:
    """Read the scans again. Returns those not as they were, and whether the run came to its end."""
    before = 0 if anew else unfinished(collection)
    if before:
        talk.say(f"Going on after {several(before, 'scan')} that were read before.")
    count = before
    wrong: list[Verified] = []
    with talk.progress() as bar:
        for verified in verify_scans(collection, bar, look_in=look_in, anew=anew):
            count += 1
            if (finding := finding_of(verified)) is not None:
                wrong.append(verified)
                output.write_finding(finding, "", "", as_json=as_json)
    total = collection.store.count("scan")
    if count < total:
        talk.say("Stopped; boxlore verify goes on from here.")
        return wrong, False
    words = f"{several(len(wrong), 'is not as it was', 'are not as they were')}." if wrong else "all as they were."
    talk.say(f"{several(total, 'scan')} read; {words}")
    if not collection.store.writable:
        talk.say(f"That they were read is not noted: {collection.store.why_read_only}")
    return wrong, True


def _kept(collection: Collection, *, as_json: bool) -> tuple[int, int]:
    """Read recordings and papers again; how many there are, and how many are not as they were."""
    kept = list(verify_kept(collection))
    findings = [finding for verified in kept if (finding := finding_of(verified)) is not None]
    for finding in findings:
        output.write_finding(finding, "", "", as_json=as_json)
    return len(kept), len(findings)


def _left(collection: Collection, *, as_json: bool) -> int:
    """Name what killed runs left, and what holds struck words; how many of them there are."""
    findings = [*left_findings(collection.folder), *struck_findings(collection)]
    for finding in findings:
        output.write_finding(finding, "", "", as_json=as_json)
    return len(findings)


def _made_before(collection: Collection, *, as_json: bool) -> int:
    """Name the outputs that name or show somebody whose consent was withdrawn; in how many places they are."""
    places = 0
    for person in withdrawn(collection):
        made = made_before(collection, [person])
        places += len(made)
        for place in made:
            words = f"{place} names or shows {person.name}, whose consent was withdrawn. Make it again, or delete it."
            finding = Finding(rule="consent.withdrawn", severity=Severity.ERROR, message=words, source="derived")
            output.write_finding(finding, "", "", as_json=as_json)
    return places


def _damaged(collection: Collection, *, as_json: bool) -> int:
    """Name the scans that were taken in damaged, which is no fault of their fixity; how many there are."""
    findings = damage_findings(collection)
    for number, finding in findings:
        output.write_finding(finding, number, "", as_json=as_json)
    return len(findings)


def _when(collection: Collection, *, as_json: bool) -> None:
    last, due = last_run(collection), due_on(collection)
    if as_json:
        output.row(
            {
                "last": last.on.isoformat() if last else None,
                "read": last.read if last else None,
                "wrong": last.wrong if last else None,
                "due": due.isoformat() if due else None,
                "unfinished": unfinished(collection) or None,
            }
        )
    elif last is None:
        output.say("The scans were never read again since their intake.")
    else:
        output.say(
            f"Last read on {last.on}: {several(last.read, 'scan')}, {last.wrong} not as they were. Due again on {due}."
        )


def _copies(collection: Collection, folder: Path, bar: Progress, *, as_json: bool) -> tuple[int, int]:
    """Prove every copy of a folder, and say how many are not as they should be. Returns all and those."""
    count = wrong = 0
    for proved in prove_copies(collection, folder, bar):
        count += 1
        wrong += bool(proved.findings)
        for finding in proved.findings:
            output.write_finding(finding, proved.line.number, proved.line.mark, as_json=as_json)
    talk.say(
        f"{several(count, 'copy', 'copies')} read; "
        + (
            f"{several(wrong, 'is not as it should be', 'are not as they should be')}."
            if wrong
            else "all as they should be."
        )
    )
    return count, wrong


def _events(folder: Path, *, as_json: bool) -> None:
    with open_collection(folder, write=False) as collection:
        seen = list(events(collection))
        if not seen:
            talk.say("No scan was taken in or read again yet.")
        for event in seen:
            if as_json:
                output.row({column: event[column] for column in COLUMNS})
            else:
                words = f"{event['When'][:19]}  {event['Event']}  {event['File']}  {event['Outcome']}"
                output.say(output.safe(words))


def _receipt(folder: Path, path: Path, name: str) -> int:
    """Take in what an archive sent back; the exit code, 1 where a row was refused."""
    with open_collection(folder) as collection:
        received = read_receipt(collection, path, archive=name)
    for words in received.refused:
        talk.say(words)
    accession = f"Accession {', '.join(received.accessions)}. " if received.accessions else ""
    taken = several(received.references, "reference of the archive is", "references of the archive are")
    talk.say(f"{accession}{taken} taken in; outputs carry {'it' if received.references == 1 else 'them'} from now on.")
    for words in received.said_of_references:
        talk.say(words)
    if received.remarks:
        talk.say(f"{several(received.remarks, 'remark')} of the archive noted: boxlore check lists each.")
    if received.note:
        talk.say(received.note)
    return 1 if received.refused else 0
