"""`boxlore demo`: makes the demo collection and runs every task on it, from intake to transfer."""

import sys
from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.tasks.demo.every_task import run

LOOK_AT = (
    "Look at print/album.pdf and pages-family/index.html first; then open a copy in any picture program and read its",
    "caption; then transfer/open/data/metadata, where the living are withheld, and transfer/closed, where they are.",
)


@click.command()
@click.argument("folder", required=False, default="tamm_family", type=GivenPath())
@options.on_day
def demo(folder: Path, on_day: date | None) -> None:
    """Make the demo collection in FOLDER (tamm_family) and run the whole job on it."""
    with talk.progress() as bar:
        for label, path in run(folder, talk.say, bar, on_day):
            output.say(output.safe(f"{label}: {path}"))
    for line in LOOK_AT:
        talk.say(line)
    talk.say(f"Sit with it: boxlore -c {folder} sit --narrator Leida")
    if sys.stdin.isatty() and sys.stdout.isatty() and click.confirm("Open the sitting now?", default=True, err=True):
        from boxlore.tui import app

        app.run(folder, narrator="Leida")
