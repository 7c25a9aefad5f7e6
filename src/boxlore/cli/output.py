"""Writing to stdout, where only data goes. With `--json` it is one JSON object a line, in UTF-8."""

import json
from collections.abc import Mapping

import click

from boxlore.core.fields.audiences import audience_shown
from boxlore.core.findings import Finding


def row(data: Mapping[str, object]) -> None:
    """One JSON object on a line of its own."""
    click.echo(json.dumps(data, ensure_ascii=False))


def safe(words: str) -> str:
    """Words made safe for a terminal: tabs and line ends become spaces, other control characters are left out.

    So are the characters that change the direction of writing.
    """
    return "".join(_shown(letter) for letter in words)


def _shown(letter: str) -> str:
    if letter in "\n\t":
        return " "
    hidden = not letter.isprintable() and letter != " "
    return "" if hidden else letter


def kept_to(audience: str) -> str:
    """`, for the family only`: who may see a statement, behind who said it; '' for anyone."""
    words = audience_shown(audience)
    return f", {words}" if words else ""


def write_finding(finding: Finding, number: str, mark: str, *, as_json: bool) -> None:
    """Write one finding: as a JSON object, or as a line to read. `number` and `mark` are the item's, '' for none."""
    if as_json:
        row(
            {
                "rule": finding.rule,
                "severity": finding.severity,
                "number": number or None,
                "mark": mark or None,
                "message": finding.message,
                "because": list(finding.because),
                "source": finding.source,
            }
        )
    else:
        where = " · ".join(part for part in (number, mark) if part)
        click.echo(f"{finding.severity:5}  {where:24}  {safe(finding.message)}  [{finding.rule}; {finding.source}]")
