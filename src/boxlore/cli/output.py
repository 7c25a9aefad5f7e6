"""Writing to stdout, where only data goes. With `--json` it is one JSON object a line.

A stream that cannot hold every letter (a pipe in the encoding of an old system) gets those that it cannot as escapes:
no letter ends a command, and none is lost.
"""

import io
import json
import sys
from collections.abc import Mapping

import click

from boxlore.core.fields.audiences import audience_shown
from boxlore.core.findings import Finding
from boxlore.core.originals.source_names import source_in_full


def take_every_letter() -> None:
    """From now on, both streams write what their encoding has no letter for as an escape, `\\u0101`."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="backslashreplace")


def row(data: Mapping[str, object]) -> None:
    """One JSON object on a line of its own: in UTF-8, or in ASCII with escapes where stdout is not in UTF-8.

    What could command a terminal stands as an escape in it, too.
    """
    is_utf8 = (getattr(sys.stdout, "encoding", None) or "utf-8").lower().replace("-", "") == "utf8"
    words = json.dumps(data, ensure_ascii=not is_utf8)
    click.echo(words if words.isprintable() else "".join(map(_escaped, words)))


def _escaped(letter: str) -> str:
    """A letter of JSON; one that shows nothing as its escape (RFC 8259, section 7), which means the same."""
    return letter if letter.isprintable() else json.dumps(letter)[1:-1]


def say(words: str) -> None:
    """Write lines of data; what could command a terminal is left out of each."""
    click.echo("\n".join(map(safe, words.split("\n"))))


def safe(words: str) -> str:
    """Words made safe for a terminal: tabs and line ends become spaces, other control characters are left out.

    So are the characters that change the direction of writing.
    """
    return words if words.isprintable() else "".join(_shown(letter) for letter in words)


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
        source = source_in_full(finding.source)
        click.echo(f"{finding.severity:5}  {where:24}  {safe(finding.message)}  [{finding.rule}; {source}]")
