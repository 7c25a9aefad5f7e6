"""Checks files of linked data in a package: does a file hold the Turtle or N-Triples that its suffix promises?

W3C, RDF 1.1 Turtle and RDF 1.1 N-Triples (Recommendations of 25 February 2014), as rdflib reads them.
"""

import logging
from pathlib import Path

from rdflib import Graph
from rdflib.exceptions import ParserError
from rdflib.plugins.parsers.notation3 import BadSyntax
from rdflib.plugins.stores.memory import SimpleMemory

from boxlore.core.findings import Finding, Severity, make_finding

FORMATS = {".ttl": "turtle", ".nt": "nt"}
UNREADABLE = (
    BadSyntax,
    ParserError,
    ValueError,
    LookupError,
    TypeError,
    AttributeError,
    AssertionError,
    RecursionError,
)
"""What rdflib raises for files that were damaged or made to harm; found by damaging ours at random."""
MOST_BYTES = 50_000_000
"""A larger file is not checked here, because its graph would need more memory than a laptop has. Its digest in the
manifest still shows whether it has changed."""


class _Counted(SimpleMemory):
    """Counts the statements that are read, and keeps none: whether a file reads is all that is asked."""

    def __init__(self) -> None:
        super().__init__()
        self.count = 0

    def add(self, triple: object, context: object, quoted: bool = False) -> None:
        self.count += 1


def faults_of(path: Path) -> list[Finding]:
    """A finding if a file of linked data cannot be parsed or is empty; none for other files and too large ones."""
    if path.suffix not in FORMATS or path.stat().st_size > MOST_BYTES:
        return []
    logging.getLogger("rdflib.term").setLevel(logging.ERROR)  # it warns of every EDTF date that is no xsd:date
    counted = _Counted()
    try:
        Graph(counted, bind_namespaces="none").parse(path, format=FORMATS[path.suffix])
    except UNREADABLE as error:
        why = " ".join(str(error).split())[:120]
        return [_fault(path, f"it does not read ({why})")]
    return [] if counted.count else [_fault(path, "it says nothing")]


def _fault(path: Path, why: str) -> Finding:
    message = f"{path.name} is no linked data: {why}. Ask for the package again."
    return make_finding("package.linked-data", Severity.ERROR, message, "W3C, RDF 1.1 Turtle and N-Triples, 2014")
