"""`boxlore restore`: the backups of the database, and the way back to one."""

import sys
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.tasks.collection import backups
from boxlore.tasks.collection.backups import ListedBackup

NOTHING = "Nothing was changed."


@click.command(epilog="Only the database goes back: scans, copies, recordings and papers stay as they are.")
@click.argument("backup", required=False)
@click.option("--yes", is_flag=True, help="Do it without asking.")
@options.as_json
@click.pass_context
def restore(ctx: click.Context, backup: str | None, yes: bool, as_json: bool) -> None:
    """List the backups of the collection, or bring BACKUP back: the beginning of its name, or `newest`.

    Backups are made when the collection is closed and before anything risky, and lie in its folder backups/. It also
    works where collection.sqlite is damaged or missing. What is there becomes a backup itself first, so that this can
    be taken back too; words that were struck since do not come back. Any other program must have closed the
    collection.
    """
    if backup is None:
        options.refuse_others(ctx, "without a BACKUP", "as_json")
        _list(ctx.obj, as_json=as_json)
        return
    chosen = backups.find_backup(ctx.obj, backup)
    if backup.strip() == "newest" and (damaged := backups.passed_over(ctx.obj, chosen)):
        talk.say(output.safe(f"Passed over, for they are damaged: {', '.join(damaged)}."))
    talk.say(output.safe(f"To be brought back: {_line(chosen)}."))
    if not yes and not sys.stdin.isatty():
        talk.say("Nothing was changed. Add --yes where nobody can be asked.")
        ctx.exit(1)
    if not yes and not talk.agreed("Bring it back?", NOTHING):
        talk.say(NOTHING)
        ctx.exit(1)
    brought = backups.restore(ctx.obj, chosen.backup.path)
    if as_json:
        output.row({"backup": chosen.name, "kept": brought.kept.stem if brought.kept else None,
                    "items": brought.holds.items, "statements": brought.holds.statements,
                    "struck_again": brought.struck, "only_before": list(brought.only_before)})  # fmt: skip
    for words in backups.said(brought, chosen):
        talk.say(output.safe(words))


def _list(folder: Path, *, as_json: bool) -> None:
    listed = backups.list_backups(folder)
    for entry in listed:
        if as_json:
            holds = entry.holds
            output.row({"backup": entry.name, "at": entry.backup.at.isoformat(), "why": entry.backup.why,
                        "items": holds.items if holds else None, "statements": holds.statements if holds else None,
                        "bytes": entry.backup.size})  # fmt: skip
        else:
            output.say(output.safe(f"{entry.name:45}  {_line(entry)}"))
    if not listed:
        talk.say(f"There are no backups in {folder / 'backups'}. One is made when a collection is closed.")
    elif not as_json:
        talk.say("boxlore restore NAME brings one back; the beginning of its name is enough.")


def _line(listed: ListedBackup) -> str:
    return f"{listed.backup.day}, {listed.backup.why}: {listed.contents}"
