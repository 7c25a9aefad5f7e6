"""`boxlore recording`: the sound of a sitting is taken in, laid beside its time log, and written out by time code."""

from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.core.sitting.time_log import clock_of, moment_of
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.sitting.recordings import keep_paper, keep_recording, of_sitting, sittings
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.sitting.time_log import write_log


@click.command()
@click.argument("files", nargs=-1, type=GivenPath(exists=True, dir_okay=False))
@click.option(
    "--sitting", "sitting_words", default="", help="Which sitting: its date, its narrator, or part of either."
)
@click.option("--clap", "at", default="", help="Where in the file the clap is heard: 0:12, 1:04:12.5.")
@click.option(
    "--which-clap",
    "clap",
    default=1,
    show_default=True,
    help="With --clap: which of the claps noted in the sitting it is.",
)
@click.option("--paper", is_flag=True, help="The files are signed papers; they go to papers/.")
@click.option("--log", "out", type=GivenPath(), help="Write the chapters and the log of the sitting into this folder.")
@options.over
@click.option(
    "--for",
    "to",
    type=click.Choice(["family", "outside"]),
    default="family",
    show_default=True,
    help="With --log: who will read it.",
)
@click.pass_context
def recording(
    ctx: click.Context,
    files: tuple[Path, ...],
    sitting_words: str,
    at: str,
    clap: int,
    paper: bool,
    out: Path | None,
    over: bool,
    to: str,
) -> None:
    """Take the sound FILES of a sitting in, with one moment heard in each; without FILES, list the sittings."""
    _refuse_dropped(ctx, files, at, paper=paper, log=out is not None)
    if at and len(files) != 1:
        raise WrongUse("A clap is at one place in one file.", "Give one file at a time.")
    clap_at = _moment(at) if at else None
    opened = open_for_writing(ctx.obj) if files else open_collection(ctx.obj, write=False)
    with opened as collection:
        collection.over = over
        if not files and out is None:
            _list(collection)
            return
        sitting = _sitting_id(collection, sitting_words)
        for file in files:
            if paper:
                kept_file = keep_paper(collection, sitting, file)
                talk.say("kept already" if kept_file.known else "a paper of the sitting")
            else:
                kept_file = keep_recording(collection, sitting, file, clap_at=clap_at, clap=clap)
                sign = "-" if kept_file.start < 0 else ""
                again = (
                    "kept already"
                    if kept_file.known
                    else f"begins at {sign}{clock_of(abs(kept_file.start))} of the sitting"
                )
                talk.say(f"{again} ({kept_file.because})")
            output.say(output.safe(kept_file.path))
        if out is not None:
            for path in write_log(collection, sitting, out, To(to)):
                output.say(output.safe(str(path)))


def _refuse_dropped(ctx: click.Context, files: tuple[Path, ...], at: str, *, paper: bool, log: bool) -> None:
    """Raises WrongUse for what the way in which the command is used would drop."""
    if not files:
        options.refuse_given(ctx, "without FILES", "at", "clap", "paper", *(("sitting_words",) if not log else ()))
    if paper:
        options.refuse_given(ctx, "with --paper", "at", "clap")
    if not at:
        options.refuse_given(ctx, "without --clap", "clap")
    if not log:
        options.refuse_given(ctx, "without --log", "over", "to")


def _moment(text: str) -> int:
    """Milliseconds of `m:ss` or `h:mm:ss`. Raises WrongUse."""
    try:
        return moment_of(text)
    except ValueError:
        raise WrongUse(f"“{text[:20]}” is no time.", "Write minutes and seconds: 0:12.") from None


def _list(collection: Collection) -> None:
    if not (known := sittings(collection)):
        talk.say("There was no sitting yet. boxlore sit holds one.")
    for ident, name in known:
        recordings = of_sitting(collection, ident)
        output.say(output.safe(f"{name}   {', '.join(recording.path for recording in recordings) or 'no recording'}"))


def _sitting_id(collection: Collection, sitting_words: str) -> str:
    """The id of the sitting whose name holds these words; without words, of the last one.

    Raises WrongUse where no sitting is meant, or several.
    """
    sitting_ids = [ident for ident, name in sittings(collection) if sitting_words.strip().casefold() in name.casefold()]
    if not sitting_ids:
        raise WrongUse("There is no such sitting.", "boxlore recording lists them.")
    if sitting_words and len(sitting_ids) > 1:
        raise WrongUse(f"{len(sitting_ids)} sittings are called that.", "Write more of its date or its narrator.")
    return sitting_ids[-1]
