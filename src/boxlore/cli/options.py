"""Options that several commands share, defined once."""

from collections.abc import Callable, Mapping
from datetime import date
from typing import Any

import click
from click.core import ParameterSource

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import read_audience
from boxlore.core.fields.letters import is_blank
from boxlore.core.statements import KEEPER, Source, typed_source
from boxlore.tasks.collection.records_for_outputs import Selection

Decorator = Callable[[Callable[..., Any]], Callable[..., Any]]

as_json: Decorator = click.option("--json", "as_json", is_flag=True, help="Write JSON, one object a line.")


def day(ctx: click.Context, option: click.Parameter, value: str | None) -> date | None:
    """Callback for an option that holds a day, YYYY-MM-DD. Raises WrongUse."""
    if value is None:
        return None
    try:
        return date.fromisoformat(value)
    except ValueError:
        raise WrongUse(f"“{value[:40]}” is not a date.", "Write it as YYYY-MM-DD.") from None


def filled(ctx: click.Context, option: click.Parameter, value: str | None) -> str | None:
    """Callback for an option that may be left out and not be empty: `--by ""` is a slip, not nobody."""
    given = ctx.get_parameter_source(option.name or "") is ParameterSource.COMMANDLINE
    if given and value is not None and is_blank(value):
        raise WrongUse(
            f"There are no words to keep: {option.opts[0]} is empty.", "Write what is meant after it, or leave it out."
        )
    return value


def refuse_given(ctx: click.Context, way: str, *names: str) -> None:
    """Raises WrongUse for the first of these options and arguments that was given, as it would be dropped.

    `way` says in which way the command is used, such as “with --from”.
    """
    for parameter in ctx.command.params:
        name = parameter.name or ""
        given = ctx.get_parameter_source(name) is ParameterSource.COMMANDLINE and ctx.params.get(name) not in (None, ())
        if given and name in names:
            shown = parameter.opts[0] if isinstance(parameter, click.Option) else parameter.human_readable_name.upper()
            raise WrongUse(
                f"{shown} is not used {way}, so nothing was done.", "Leave it out, or give it in a command of its own."
            )


def refuse_others(ctx: click.Context, way: str, *used: str) -> None:
    """The same for every option and argument that is not `used`."""
    names = [parameter.name or "" for parameter in ctx.command.params]
    refuse_given(ctx, way, *(name for name in names if name not in used))


SELECTION = ("box", "folder", "person", "event", "words", "items")
"""The names of the options of `selection`."""


on_day: Decorator = click.option(
    "--on",
    "on_day",
    callback=day,
    metavar="DATE",
    help="Take this day for today (YYYY-MM-DD): outputs are dated by it.",
)


def _source(ctx: click.Context, option: click.Parameter, value: str | None) -> Source:
    """Who is named; the keeper where the option is left out."""
    return KEEPER if value is None else typed_source(value)


by: Decorator = click.option(
    "--by",
    "source",
    callback=_source,
    metavar="WHO",
    help="Who says so: narrator:NAME, inscription:verso, document:WHAT, keeper.",
)


def _told_to(ctx: click.Context, option: click.Parameter, value: str | None) -> str:
    """The audience in words, empty where it is left out. Given empty it must not mean what anyone may see."""
    return "" if value is None else str(read_audience(value))


told_to: Decorator = click.option("--audience", callback=_told_to, help="keeper, family, archive:YYYY-MM-DD or anyone.")


def _language(ctx: click.Context, option: click.Parameter, value: str | None) -> str:
    """The tag, empty where the option is left out. Raises WrongUse for what is no tag."""
    if value is not None and not value.strip():
        raise WrongUse("--language is empty.", "Write a BCP 47 tag, such as en, et, mi or zh-Hant, or leave it out.")
    return (value or "").strip()


language: Decorator = click.option("--language", callback=_language, help="The language of the words (BCP 47).")


def audience(default: str) -> Decorator:
    """The option `--for family|outside`; each output has its own default."""
    return click.option(
        "--for",
        "to",
        type=click.Choice(["family", "outside"]),
        default=default,
        show_default=True,
        help="Who will see it; outside leaves living people out.",
    )


def selection(command: Callable[..., Any]) -> Callable[..., Any]:
    """Decorator: the options that choose items, `--box --folder --person --event --find --item`. See `selected`."""
    for decorate in (
        click.option("--box", default="", callback=filled, help="Only this box."),
        click.option("--folder", default="", callback=filled, help="Only this folder (of the box)."),
        click.option("--person", default="", callback=filled, help="Only items with this person."),
        click.option("--event", default="", callback=filled, help="Only items of this occasion."),
        click.option(
            "--find", "words", default="", callback=filled, help="Only items whose text contains these words."
        ),
        click.option("--item", "items", multiple=True, help="Only this item (a number or a mark); may be repeated."),
    ):
        command = decorate(command)
    return command


def selected(chosen: Mapping[str, object]) -> Selection:
    """The Selection made from a command's keyword arguments, which hold the options of `selection`."""
    items = chosen["items"]
    return Selection(
        box=str(chosen["box"]),
        folder=str(chosen["folder"]),
        person=str(chosen["person"]),
        event=str(chosen["event"]),
        words=str(chosen["words"]),
        items=tuple(map(str, items)) if isinstance(items, tuple) else (),
        wanted=bool(chosen.get("wanted")),
    )


over: Decorator = click.option(
    "--over", is_flag=True, help="Replace a file in the way, also one that Boxlore did not write."
)
