"""The options of what is printed and of the web pages, and the order that they make."""

from collections.abc import Callable, Iterable, Mapping
from typing import Any

import click

from boxlore.cli.options import Decorator, audience, on_day, over, selected, selection
from boxlore.core.records.audience import To
from boxlore.core.wording.catalogue import LANGUAGES
from boxlore.tasks.outputs.printed_sheets import PrintOrder

kin_of: Decorator = click.option(
    "--kin-of", default="", metavar="NAME", help="Whose album it is: people are named as kin of this one."
)

output_language: Decorator = click.option(
    "--language",
    type=click.Choice(LANGUAGES),
    help="The language of our own words; else the collection's setting.",
)


def printing_on(papers: Iterable[str]) -> Decorator:
    """The decorator with the options of a printed output: for whom, which items, which of these papers, theme, kin,
    language, over and day.
    """

    def decorator(command: Callable[..., Any]) -> Callable[..., Any]:
        for decorate in (
            audience("family"),
            selection,
            click.option("--paper", type=click.Choice(list(papers)), help="The paper; else the collection's setting."),
            click.option(
                "--theme",
                default="",
                metavar="THEME",
                help="plain, large-print, linen, slate, or a file of your own (.toml).",
            ),
            kin_of,
            output_language,
            over,
            on_day,
        ):
            command = decorate(command)
        return command

    return decorator


printing: Decorator = printing_on(("a4", "letter"))


def order_of(chosen: Mapping[str, object]) -> PrintOrder:
    """The PrintOrder made from a command's keyword arguments, which hold these options; pages have no paper."""
    return PrintOrder(
        to=To(str(chosen["to"])),
        selection=selected(chosen),
        paper=str(chosen.get("paper") or ""),
        theme=str(chosen["theme"]),
        kin_of=str(chosen["kin_of"]),
        language=str(chosen["language"] or ""),
    )
