"""Triples as Turtle (W3C, RDF 1.1 Turtle), for people to read: prefixed names, and one paragraph a subject."""

import re
from collections.abc import Iterable, Iterator
from functools import lru_cache

from boxlore.exports.rdf_terms import PREFIXES, RDF_TYPE


def as_turtle(lines: Iterable[str]) -> Iterator[str]:
    """The Turtle text of N-Triples lines: the prefixes, then a paragraph for each run of triples with one subject."""
    for prefix, namespace in PREFIXES.items():
        yield f"@prefix {prefix}: <{namespace}> .\n"
    before = ""
    for line in lines:
        subject, predicate, value = line.rstrip(" .\n").split(" ", 2)
        if subject != before:
            yield (" .\n" if before else "") + f"\n{subject}\n"
        yield f"{' ;' + chr(10) if subject == before else ''}  {_short(predicate)} {_short_value(value)}"
        before = subject
    yield " .\n" if before else ""


_LOCAL = re.compile(r"[A-Za-z][A-Za-z0-9_-]*\Z")
_NAMESPACES = {namespace: prefix for prefix, namespace in PREFIXES.items()}


@lru_cache(4096)
def _short(node: str) -> str:
    """An IRI in angle brackets as a prefixed name if its namespace is one of ours, and `a` for rdf:type."""
    if node == RDF_TYPE:
        return "a"
    cut = max(node.rfind("#"), node.rfind("/"), node.rfind(":")) + 1
    prefix, local = _NAMESPACES.get(node[1:cut]), node[cut:-1]
    return f"{prefix}:{local}" if prefix and _LOCAL.match(local) else node


def _short_value(value: str) -> str:
    """An object with its IRI, or the IRI of its datatype, as a prefixed name."""
    if value.startswith("<"):
        return _short(value)
    words, mark, datatype = value.rpartition('"^^')
    return f'{words}"^^{_short(datatype)}' if mark else value
