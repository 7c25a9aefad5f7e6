"""`boxlore copies`: captioned copies; the scans are never written to."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.core.audience import To
from boxlore.tasks.copies import copies as make_copies
from boxlore.tasks.opening import open_collection


@click.command()
@click.argument("out", type=click.Path(path_type=Path))
@options.audience("family")
@options.selection
@options.on_day
@options.as_json
@click.pass_context
def copies(ctx: click.Context, /, out: Path, to: str, on_day: date | None, as_json: bool, **chosen: object) -> None:
    """Write captioned copies of the scans to OUT, in folders by box and folder."""
    states: list[str] = []
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        made = make_copies(collection, out, to=To(to), selection=options.selected(chosen), progress=bar)
        for one in made:
            states.append(one.state)
            if as_json:
                row = {name: getattr(one, name) or None for name in ("number", "mark", "scan", "copy", "state", "why")}
                output.row(row)
            elif one.state in ("refused", "sidecar"):
                talk.say(f"{one.number}: {one.state}: {one.why}")
        stopped = bar.stopped()
    counted = ", ".join(f"{states.count(state)} {state}" for state in dict.fromkeys(states))
    talk.say(f"Copies for {to} in {out}: {counted or 'none'}.")
    ctx.exit(1 if stopped or "refused" in states else 0)
