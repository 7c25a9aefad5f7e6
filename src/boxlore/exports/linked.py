"""Linked data read back before it is trusted: does the file hold the Turtle or N-Triples that its name says?

W3C, RDF 1.1 Turtle and RDF 1.1 N-Triples (Recommendations of 25 February 2014), as rdflib reads them.
"""

import logging
from pathlib import Path

from rdflib import Graph
from rdflib.exceptions import ParserError
from rdflib.plugins.parsers.notation3 import BadSyntax

from boxlore.core.findings import Finding, Severity

FORMATS = {".ttl": "turtle", ".nt": "nt"}
MOST_BYTES = 50_000_000
"""A larger file is left to its manifest: reading it into a graph would take more memory than a laptop has."""


def faults_of(path: Path) -> list[Finding]:
    """What is wrong with a file of linked data; nothing if it reads, or is too large to be read whole."""
    if path.suffix not in FORMATS or path.stat().st_size > MOST_BYTES:
        return []
    logging.getLogger("rdflib.term").setLevel(logging.ERROR)  # it warns of dates that are EDTF and no xsd:date
    try:
        graph = Graph().parse(path, format=FORMATS[path.suffix])
    except (BadSyntax, ParserError, UnicodeDecodeError) as error:
        why = " ".join(str(error).split())[:120]
        return [_finding(path, f"it does not read ({why})")]
    return [] if len(graph) else [_finding(path, "it says nothing")]


def _finding(path: Path, why: str) -> Finding:
    return Finding(
        rule="package.linked-data",
        severity=Severity.ERROR,
        message=f"{path.name} is no linked data: {why}. Ask for the package again.",
        source="W3C, RDF 1.1 Turtle and N-Triples, 2014",
    )
