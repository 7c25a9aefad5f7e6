"""The source, parsed when a test first reads it, and once for all tests that do."""

import ast
from functools import cache
from pathlib import Path

SRC = Path(__file__).parents[2] / "src" / "boxlore"
FILES = sorted(SRC.rglob("*.py"))


@cache
def tree(path: Path) -> ast.Module:
    """A file of the source, parsed."""
    return ast.parse(path.read_text(encoding="utf-8"))


@cache
def nodes(path: Path) -> tuple[ast.AST, ...]:
    """All that is in its tree, in the order of `ast.walk`."""
    return tuple(ast.walk(tree(path)))


def forget() -> None:
    """The trees are millions of objects, which every later search for garbage would walk."""
    tree.cache_clear()
    nodes.cache_clear()
