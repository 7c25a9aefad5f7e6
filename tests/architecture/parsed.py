"""The source, parsed once for all tests that read it."""

import ast
from pathlib import Path

SRC = Path(__file__).parents[2] / "src" / "boxlore"
TREES = {path: ast.parse(path.read_text(encoding="utf-8")) for path in sorted(SRC.rglob("*.py"))}
"""Every file of the source, in the order of their paths."""
