"""The command `boxlore`. The table below lists its commands; a command's module is imported when it is called.

So `boxlore --help` loads click and nothing heavier; a test holds it to that.
"""

import io
import os
import sys
from contextlib import nullcontext
from importlib import import_module
from pathlib import Path
from typing import Any, NoReturn

import click

from boxlore import __version__
from boxlore.cli import interrupts, talk
from boxlore.cli.loading import loading
from boxlore.cli.output import take_every_letter
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import BoxloreError, WrongUse, in_words
from boxlore.core.fields.letters import is_blank

COMMANDS: dict[str, str] = {
    "demo": "Make the demo collection and run the whole job on it.",
    "new": "Start a collection.",
    "intake": "Take scans in, fronts paired with backs.",
    "scan": "One scan of an item: added, replaced, turned, noted as altered.",
    "sit": "Sit with a narrator: the terminal interface.",
    "recording": "The sound of a sitting: kept, and laid beside its time log.",
    "tell": "One statement from the shell, or many from a table.",
    "show": "The record of one item.",
    "find": "Search everything told.",
    "people": "People: who is who, kin, a tree file taken in, consent.",
    "events": "The family’s own time line: weddings, births, moves, voyages.",
    "strike": "Take words out for good, at the teller's wish.",
    "housing": "Where the originals are, and what their boxes and sleeves do to them.",
    "survey": "Through a box item by item: what to do, to buy, to have scanned.",
    "climate": "Temperature and humidity, judged with the computation shown.",
    "check": "Every finding, with its reason and source.",
    "evidence": "What can be worked out from everything told, why, and what to ask next.",
    "copies": "Captioned copies; the scans are never written to.",
    "sheet": "The album as a PDF.",
    "slips": "Caption slips to mount under copy prints.",
    "labels": "Labels for boxes and folders, with what is in them.",
    "worksheet": "Large pictures with lines to write on, for a narrator without a computer.",
    "pages": "The family's web pages: a folder of plain HTML.",
    "offer": "The list an archive sees first.",
    "transfer": "The package for an archive.",
    "verify": "Whether scans, copies and packages are as they were (fixity).",
    "join": "What was told in another working copy, taken in.",
    "parcel": "What was told here, in one file for another desk.",
    "meet": "What is told at several desks, exchanged through a PostgreSQL server.",
    "restore": "The backups of the database, and the way back to one.",
    "date": "What is understood of a date.",
    "place": "What is understood of a place.",
    "places": "The family's own places; a bigger gazetteer of your own.",
}

AT_A_TERMINAL = (None, "sit", "survey", "demo")
"""Commands that may open the terminal interface, which hears its signals itself."""


class Commands(click.Group):
    """A click group that lists the commands from the table and imports a command's module when it is called.

    That import is the only one by a composed name: a typed import of each command would be a second table beside
    COMMANDS. A test loads every row.
    """

    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in COMMANDS:
            return None
        name = f"boxlore.cli.commands.{cmd_name}"
        with loading() if name not in sys.modules else nullcontext():
            command: click.Command = getattr(import_module(name), cmd_name)
        return command

    def invoke(self, ctx: click.Context) -> Any:
        try:
            return super().invoke(ctx)
        except BrokenPipeError:
            # The program that reads our output has ended: what is left goes to nobody, without a word. Caught here,
            # as click would make it the exit code 1 (the way is that of Python's documentation, “Note on SIGPIPE”).
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            ctx.exit(3)

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        with formatter.section("Commands"):
            formatter.write_dl(list(COMMANDS.items()))


@click.group(cls=Commands, invoke_without_command=True, context_settings={"help_option_names": ["-h", "--help"]})
@click.option("-c", "--collection", type=GivenPath(), help="The collection's folder (else this one).")
@click.version_option(__version__, message="Boxlore %(version)s")
@click.pass_context
def boxlore(ctx: click.Context, collection: Path | None) -> None:
    """Ask the elders who, when, where and why; tie each answer to its print in its box; hand it on.

    Without a command, at a terminal, Boxlore opens the last collection or asks which.
    """
    ctx.obj = collection or Path()
    talk.say_warnings()
    if ctx.invoked_subcommand not in AT_A_TERMINAL:
        ctx.with_resource(interrupts.watched())
    if ctx.invoked_subcommand is None:
        if not (sys.stdin.isatty() and sys.stdout.isatty()):
            click.echo(ctx.get_help())
            return
        from boxlore.cli.commands.sit import hold

        ctx.exit(hold(collection, door=True))


def _check_arguments(arguments: list[str]) -> None:
    """Raises WrongUse for an argument of invisible letters alone, which no command can mean.

    Of blanks alone each command says itself what they are to it.
    """
    for argument in arguments:
        if argument.strip() and is_blank(argument):
            letters = " ".join(dict.fromkeys(f"U+{ord(letter):04X}" for letter in argument.strip()))
            raise WrongUse(
                f"There are no words to keep: one of the arguments shows nothing ({letters}).",
                "Write it again, or leave it out.",
            )


def _open_what_is_closed() -> None:
    """Where whoever started us has closed a stream (`<&-`), Python has None there: nothing is read or written then."""
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        if getattr(sys, name) is None:
            setattr(sys, name, open(os.devnull, mode))  # noqa: SIM115  # it stays open to the end


def main(arguments: list[str] | None = None) -> NoReturn:
    """Run a command. A BoxloreError becomes one sentence on stderr and its own exit code.

    Other exits: 0 done, 1 findings, 2 wrong use of a command, 3 stopped or a file could not be read or written, 130
    stopped by Ctrl+C.
    """
    _open_what_is_closed()
    take_every_letter()
    interrupts.begin()
    code = _code_of(arguments)
    sys.exit(interrupts.EXIT if interrupts.was_heard() else code)


def _code_of(arguments: list[str] | None) -> int:
    """Run a command; its exit code, after the sentence for what went wrong."""
    try:
        _check_arguments(sys.argv[1:] if arguments is None else arguments)
        code = boxlore.main(arguments, prog_name="boxlore", standalone_mode=False)
    except BoxloreError as error:
        talk.say(str(error))
        return error.exit_code
    except click.exceptions.Abort as stopped:
        talk.say("Stopped. What was finished is kept.")
        return interrupts.EXIT if isinstance(stopped.__cause__, KeyboardInterrupt) else 3
    except click.ClickException as error:
        shown = io.StringIO()
        error.show(shown)
        talk.say(shown.getvalue().rstrip("\n"))
        return 2
    except OSError as error:
        words = in_words(error)
        where = f": {error.filename}" if error.filename else ""
        talk.say(f"{words[:1].upper()}{words[1:]}{where}. What was finished is kept.")
        return 3
    return code if isinstance(code, int) else 0
