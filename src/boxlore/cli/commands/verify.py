"""`boxlore verify`: the fixity of scans and packages, and a receipt read back."""

from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.tasks.fixity import COLUMNS, events
from boxlore.tasks.opening import open_collection
from boxlore.tasks.receipt import read_receipt
from boxlore.tasks.verify import Verified, finding_of, note_check, verify_package, verify_scans


@click.command()
@click.argument("package", required=False, type=click.Path(path_type=Path, exists=True, file_okay=False))
@click.option("--receipt", type=click.Path(path_type=Path), help="Read what an archive sent back (receipt.csv).")
@click.option("--archive", "name", default="", help="With --receipt: the archive's name.")
@click.option("--events", "only_events", is_flag=True, help="Show the fixity events so far, and check nothing.")
@options.as_json
@click.pass_context
def verify(
    ctx: click.Context, package: Path | None, receipt: Path | None, name: str, only_events: bool, as_json: bool
) -> None:
    """Read every scan again and hold it against its SHA-256; or every file of a PACKAGE against its manifests."""
    if receipt is not None:
        ctx.exit(_receipt(ctx.obj, receipt, name))
    if package is not None:
        findings = verify_package(package)
        for finding in findings:
            output.finding(finding, "", "", as_json=as_json)
        talk.say("Every file is as its manifests say." if not findings else f"{len(findings)} findings.")
        ctx.exit(1 if findings else 0)
    if only_events:
        _events(ctx.obj, as_json=as_json)
        return
    ctx.exit(_scans(ctx.obj, as_json=as_json))


def _scans(folder: Path, *, as_json: bool) -> int:
    read: list[Verified] = []
    wrong = 0
    with open_collection(folder, fallback_read_only=True) as collection, talk.progress() as bar:
        for one in verify_scans(collection, bar):
            read.append(one)
            if (found := finding_of(one)) is not None:
                wrong += 1
                output.finding(found, "", "", as_json=as_json)
        if not bar.stopped():
            note_check(collection, read)
        if not collection.store.writable:
            talk.say(f"This check is not noted in the collection: {collection.store.why_read_only}.")
    count = len(read)
    talk.say(
        f"{count} scans read; {wrong} are not as they were." if wrong else f"{count} scans read; all as they were."
    )
    return 1 if wrong else 0


def _events(folder: Path, *, as_json: bool) -> None:
    with open_collection(folder, write=False) as collection:
        for event in events(collection):
            if as_json:
                output.row({column: event[column] for column in COLUMNS})
            else:
                words = f"{event['When'][:19]}  {event['Event']}  {event['File']}  {event['Outcome']}"
                click.echo(output.safe(words))


def _receipt(folder: Path, path: Path, name: str) -> int:
    with open_collection(folder) as collection:
        received = read_receipt(collection, path, archive=name)
    for words in received.refused:
        talk.say(words)
    accession = f"Accession {', '.join(received.accessions)}. " if received.accessions else ""
    talk.say(
        f"{accession}{received.references} references of the archive are taken in; outputs carry them from now on."
    )
    return 1 if received.refused else 0
