"""Nobody but the codecs takes the words of a statement apart, or puts them together (`core/fields/codec.py` says why).

A rule of our own, no outside source. The source is read, not run: what is looked for is said by the rows of CAUGHT.
"""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.architecture.parsed import FILES, SRC, nodes
from tests.every_row import every_row

from boxlore.core.fields.table import FIELDS, codec_fields

OUTSIDE = sorted(path for path in FILES if path.relative_to(SRC).parts[:2] != ("core", "fields"))

CUTS = {"split", "rsplit", "partition", "rpartition", "splitlines", "removeprefix", "removesuffix", "startswith"}
IN_SQL = re.compile(r"(json_extract|substr|instr|rtrim|ltrim|json_each)\s*\(\s*(\w+\.)?words\b")


def faults(code: tuple[ast.AST, ...]) -> Iterator[str]:
    """What the source does to words that only a codec may do."""
    spaces = {id(call.args[0]) for call in code if _is_join(call)}
    for node in code:
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and IN_SQL.search(node.value):
            yield "SQL that looks into words"
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
            name = node.func.attr
            if name in CUTS and _is_words(node.func.value) and id(node) not in spaces:
                yield f"words.{name}"
            elif name == "loads" and node.args and _is_words(node.args[0]):
                yield "json.loads of words"
            elif name == "state" and (field := _field(node)) and _is_made(node.args[2]):
                yield f"words of {field} that are put together"


def _is_join(node: ast.AST) -> bool:
    """`" ".join(…)`: white space made even, for a line on a screen."""
    return (
        isinstance(node, ast.Call)
        and isinstance(node.func, ast.Attribute)
        and node.func.attr == "join"
        and isinstance(node.func.value, ast.Constant)
        and node.func.value.value == " "
    )


def _is_words(node: ast.AST) -> bool:
    return isinstance(node, ast.Attribute) and node.attr == "words"


def _field(call: ast.Call) -> str:
    """The field that `act.state(subject, field, words)` names, if it has a codec."""
    named = call.args[1] if len(call.args) > 2 else None
    name = named.value if isinstance(named, ast.Constant) else ""
    return str(name) if name in codec_fields() else ""


def _is_made(node: ast.AST) -> bool:
    if isinstance(node, ast.Constant):
        return bool(node.value)
    return isinstance(node, ast.JoinedStr | ast.BinOp) or (
        isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr in ("dumps", "join")
    )


@every_row("path", OUTSIDE)
def test_words_are_taken_apart_by_their_codec_alone(path: Path) -> None:
    assert list(faults(nodes(path))) == []


CAUGHT = {
    "container, _, position = statement.words.partition(' ')": "words.partition",
    "parts = view.words.split(' ')": "words.split",
    "if told.words.startswith('no '): pass": "words.startswith",
    "facts = json.loads(row.words)": "json.loads of words",
    "act.state(item, 'kept', f'{box} {position}')": "words of kept that are put together",
    "act.state(scan, 'file', json.dumps(facts))": "words of file that are put together",
    "act.state(item, 'size', ' x '.join(sides))": "words of size that are put together",
    "act.state(item, 'size', '108 x 165')": "words of size that are put together",
    "query = \"SELECT json_extract(i.words, '$.item') FROM in_force i\"": "SQL that looks into words",
    "query = f'SELECT substr( words, 1, 36) FROM {table}'": "SQL that looks into words",
}

LET_PASS = (
    "line = ' '.join(view.words.split())",
    "act.state(item, 'kept', KEPT_WORDS.write(Kept(box, 3)))",
    "act.state(item, 'kept', words)",
    "act.state(marker, 'scan', '')",
    "act.state(item, 'story', f'Told of {name}.')",
    "query = f'SELECT {SHOWS_ITEM_SQL} FROM in_force'",
)


@every_row(("source", "fault"), CAUGHT.items())
def test_what_is_caught(source: str, fault: str) -> None:
    assert list(faults(tuple(ast.walk(ast.parse(source))))) == [fault]


@pytest.mark.parametrize("source", LET_PASS)
def test_what_is_let_pass(source: str) -> None:
    assert list(faults(tuple(ast.walk(ast.parse(source))))) == []


def test_fields_with_a_codec_are_known() -> None:
    assert {"kept", "link", "area", "row", "size", "shown", "audience", "file", "shows"} <= set(codec_fields())
    assert "story" not in codec_fields() and "story" in FIELDS
