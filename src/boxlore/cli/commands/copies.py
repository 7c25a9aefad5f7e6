"""`boxlore copies`: captioned copies; the scans are never written to."""

from datetime import date
from pathlib import Path
from typing import Any

import click

from boxlore.cli import options, output, talk
from boxlore.cli.outside import say_left_out
from boxlore.cli.paths import GivenPath
from boxlore.cli.print_options import output_language
from boxlore.core.findings import several
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.copies import copies as make_copies


@click.command()
@click.argument("out", type=GivenPath())
@options.audience("family")
@options.selection
@click.option(
    "--longest",
    type=click.IntRange(64, 65500),
    metavar="PIXELS",
    help="Smaller copies, newly encoded as upright JPEGs, at most so many pixels on the long side.",
)
@output_language
@options.over
@options.on_day
@options.as_json
@click.pass_context
def copies(ctx: click.Context, /, out: Path, to: str, on_day: date | None, as_json: bool, **chosen: object) -> None:
    """Write captioned copies of the scans to OUT, in folders by box and folder."""
    longest, over = chosen.pop("longest"), bool(chosen.pop("over"))
    language = chosen.pop("language") or ""
    which_copies: dict[str, Any] = {
        "selection": options.selected(chosen), "longest": longest or 0, "language": language,
    }  # fmt: skip
    states: list[str] = []
    shortened = 0
    said: set[str] = set()
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        collection.over = over
        say_left_out(collection, To(to), options.selected(chosen))
        results = make_copies(collection, out, to=To(to), progress=bar, **which_copies)
        for result in results:
            states.append(result.state)
            shortened += bool(result.shortened)
            if as_json:
                row = {name: getattr(result, name) or None for name in ("number", "mark", "scan", "copy", "state")}
                output.row(row | {"why": " ".join(filter(None, (result.shortened, result.why))) or None})
            elif result.why and result.state != "same":
                line = f"{result.number}: {result.state}: {result.why}"
                if line not in said:  # of a front and its back it is said once
                    talk.say(line)
                said.add(line)
        stopped = bar.stopped()
    counted = ", ".join(f"{states.count(state)} {state}" for state in dict.fromkeys(states))
    talk.say(f"Copies for {to} in {out}: {counted or 'none'}.")
    if shortened and not as_json:
        talk.say(
            f"In {several(shortened, 'copy', 'copies')} the older form of the caption (IIM) is shortened, as it "
            "takes only so many letters; the newer one (XMP) holds all. --json tells which."
        )
    ctx.exit(1 if stopped or "refused" in states else 0)
