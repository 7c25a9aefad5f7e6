"""No sentence says “1 items”: a count before a plural is written by `core.findings.several` (a rule of our own)."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from tests.architecture.parsed import FILES, SRC, nodes

COUNTED = re.compile(r"^len\(|^sum\(|(^|\.)(count|items|scans|statements|wanted|hidden|pictures|records|withheld)$")
"""What is a count by its name or by how it is worked out."""

NOUNS = (
    "items people scans statements copies findings answers persons photographs places lines records rows originals "
    "sittings pages files boxes containers marriages slips are were"
)
PLURAL = re.compile(rf"^ (?:{NOUNS.replace(' ', '|')})\b")

ALWAYS_SEVERAL = {"tasks/collection/items_by_mark.py", "tasks/originals/housing_now.py", "cli/commands/recording.py",
                  "tasks/collection/backups.py", "tasks/scans/pairing.py", "tasks/sitting/people_corrections.py",
                  "core/people/who_is_meant.py", "tasks/sitting/linking.py"}  # fmt: skip
"""Where the sentence is said of two and more alone: a name that several have, an odd number of files."""


def counts(path: Path) -> Iterator[str]:
    chosen = {id(side) for node in nodes(path) if isinstance(node, ast.IfExp) for side in (node.body, node.orelse)}
    for node in nodes(path):
        if isinstance(node, ast.JoinedStr) and id(node) not in chosen:  # “one item” if it is one, else “3 items”
            for value, words in zip(node.values, node.values[1:], strict=False):
                counted = isinstance(value, ast.FormattedValue) and COUNTED.search(ast.unparse(value.value))
                if counted and isinstance(words, ast.Constant) and PLURAL.match(str(words.value)):
                    yield f"{path.relative_to(SRC).as_posix()}:{node.lineno}"


def by_hand(path: Path) -> Iterator[str]:
    """Where a plural is put together of a word and its ending: `item{'s' if count != 1 else ''}`."""
    for node in nodes(path):
        if isinstance(node, ast.IfExp):
            sides = {side.value for side in (node.body, node.orelse) if isinstance(side, ast.Constant)}
            if sides in ({"", "s"}, {"", "es"}):
                yield f"{path.relative_to(SRC).as_posix()}:{node.lineno}"


def test_no_plural_is_put_together_by_hand() -> None:
    assert [where for path in FILES for where in by_hand(path)] == []


def test_every_count_has_its_noun_from_one_function() -> None:
    found = [where for path in FILES for where in counts(path)]
    assert [where for where in found if where.rpartition(":")[0] not in ALWAYS_SEVERAL] == []
