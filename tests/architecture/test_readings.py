"""A reading's text becomes a value where it comes in, and text where it goes out, and nowhere else (a rule of ours)."""

import ast
from collections.abc import Iterable, Iterator
from pathlib import Path

from tests.architecture.parsed import FILES, SRC, nodes
from tests.every_row import every_row

CODEC = "boxlore.core.records.readings"

DOORS = {"store/rows.py", "store/strike.py", "exports/rdf.py", "tasks/archive/rebuild.py"}
"""The store (a strike forgets what was read), and a transfer on its way out and in."""

TYPES = {"core/dates/reading.py", "core/places/reading.py", "core/people/reference.py"}
"""Where the types stand that know their own JSON."""

MEMBERS = {"edtf", "display", "choices", "earliest", "latest", "alternatives", "geonames", "id"}


def mappings_asked(code: Iterable[ast.AST]) -> Iterator[str]:
    """The members of JSON objects that are asked for: `value.get("edtf")`, `value["edtf"]` (not `row["id"] = …`)."""
    for node in code:
        match node:
            case ast.Call(func=ast.Attribute(attr="get"), args=[ast.Constant(value=str(name)), *_]):
                yield name
            case ast.Subscript(slice=ast.Constant(value=str(name)), ctx=ast.Load()):
                yield name


@every_row("path", FILES)
def test_nobody_else_unpacks_a_reading(path: Path) -> None:
    name = str(path.relative_to(SRC))
    imported = {node.module for node in nodes(path) if isinstance(node, ast.ImportFrom)}
    assert CODEC not in imported or name in DOORS
    if name not in TYPES:
        assert not MEMBERS & set(mappings_asked(nodes(path)))


def test_every_door_is_one() -> None:
    for door in DOORS:
        assert CODEC in (SRC / door).read_text(encoding="utf-8"), door
