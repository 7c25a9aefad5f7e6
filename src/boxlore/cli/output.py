"""What goes to stdout: data, and only data. With `--json` one object a line, in UTF-8."""

import json
from collections.abc import Mapping

import click

from boxlore.core.findings import Finding


def row(data: Mapping[str, object]) -> None:
    """One JSON object on a line of its own."""
    click.echo(json.dumps(data, ensure_ascii=False))


def safe(words: str) -> str:
    """Words for a terminal: control and direction-changing characters shown as spaces or left out."""
    return "".join(_shown(letter) for letter in words)


def _shown(letter: str) -> str:
    if letter in "\n\t":
        return " "
    hidden = not letter.isprintable() and letter != " "
    return "" if hidden else letter


def finding(found: Finding, number: str, mark: str, *, as_json: bool) -> None:
    """One finding, as `check --json` gives it or as a line to read."""
    if as_json:
        row(
            {
                "rule": found.rule,
                "severity": found.severity,
                "number": number or None,
                "mark": mark or None,
                "message": found.message,
                "because": list(found.because),
                "source": found.source,
            }
        )
    else:
        where = " · ".join(part for part in (number, mark) if part)
        click.echo(f"{found.severity:5}  {where:24}  {safe(found.message)}  [{found.rule}; {found.source}]")
