"""`boxlore verify`: the fixity of scans and packages."""

from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.tasks.opening import Collection, open_collection
from boxlore.tasks.progress import Progress
from boxlore.tasks.prove_copies import is_copies_folder, prove_copies
from boxlore.tasks.verify import finding_of, verify_package, verify_scans


@click.command()
@click.argument("package", required=False, type=click.Path(path_type=Path, exists=True, file_okay=False))
@options.as_json
@click.pass_context
def verify(ctx: click.Context, package: Path | None, as_json: bool) -> None:
    """Read every scan again and hold it against its SHA-256, and the copies beside it against scan and record.

    With a PACKAGE: every file against its manifests; with a folder of copies, those.
    """
    if package is not None and is_copies_folder(package):
        with open_collection(ctx.obj, write=False) as collection, talk.progress() as bar:
            wrong = _copies(collection, package, bar, as_json=as_json)
        ctx.exit(1 if wrong else 0)
    if package is not None:
        findings = verify_package(package)
        for finding in findings:
            output.finding(finding, "", "", as_json=as_json)
        talk.say("Every file is as its manifests say." if not findings else f"{len(findings)} findings.")
        ctx.exit(1 if findings else 0)
    count = wrong = wrong_copies = 0
    with open_collection(ctx.obj, write=False) as collection, talk.progress() as bar:
        for one in verify_scans(collection, bar):
            count += 1
            if (found := finding_of(one)) is not None:
                wrong += 1
                output.finding(found, "", "", as_json=as_json)
        if is_copies_folder(beside := collection.folder / "copies"):
            wrong_copies = _copies(collection, beside, bar, as_json=as_json)
    talk.say(
        f"{count} scans read; {wrong} are not as they were." if wrong else f"{count} scans read; all as they were."
    )
    ctx.exit(1 if wrong or wrong_copies else 0)


def _copies(collection: Collection, folder: Path, bar: Progress, *, as_json: bool) -> int:
    """Prove every copy of a folder, and say how many are not as they should be."""
    count = wrong = 0
    for one in prove_copies(collection, folder, bar):
        count += 1
        wrong += bool(one.findings)
        for found in one.findings:
            output.finding(found, one.line.number, one.line.mark, as_json=as_json)
    talk.say(f"{count} copies read; " + (f"{wrong} are not as they should be." if wrong else "all as they should be."))
    return wrong
