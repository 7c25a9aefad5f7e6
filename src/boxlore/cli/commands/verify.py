"""`boxlore verify`: the fixity of scans, recordings, papers and packages."""

from itertools import chain
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.tasks.opening import open_collection
from boxlore.tasks.recordings import verify_kept
from boxlore.tasks.verify import finding_of, verify_package, verify_scans


@click.command()
@click.argument("package", required=False, type=click.Path(path_type=Path, exists=True, file_okay=False))
@options.as_json
@click.pass_context
def verify(ctx: click.Context, package: Path | None, as_json: bool) -> None:
    """Read every scan, recording and paper again and hold it against its SHA-256.

    Or, with a PACKAGE, every file of it against its manifests.
    """
    if package is not None:
        findings = verify_package(package)
        for finding in findings:
            output.finding(finding, "", "", as_json=as_json)
        talk.say("Every file is as its manifests say." if not findings else f"{len(findings)} findings.")
        ctx.exit(1 if findings else 0)
    count = wrong = 0
    with open_collection(ctx.obj, write=False) as collection, talk.progress() as bar:
        for one in chain(verify_scans(collection, bar), verify_kept(collection)):
            count += 1
            if (found := finding_of(one)) is not None:
                wrong += 1
                output.finding(found, "", "", as_json=as_json)
    talk.say(
        f"{count} files read; {wrong} are not as they were." if wrong else f"{count} files read; all as they were."
    )
    ctx.exit(1 if wrong else 0)
