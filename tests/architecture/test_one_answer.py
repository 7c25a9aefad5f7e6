"""Who may be told what is decided in one place (a rule of our own): everybody else asks a `Recipient`.

Read from the source: nobody outside the home of the rule asks `may_see`, works out who is withheld, looks for a
withheld name by himself, or compares an audience or a recipient by hand.
"""

import ast
from collections.abc import Iterable, Iterator

from tests.architecture.parsed import FILES, SRC, nodes
from tests.every_row import every_row

HOME = {f"core/records/{name}.py" for name in ("audience", "audience_levels", "terms", "withheld", "closing_dates")}

MAKES_RECIPIENTS = {"tasks/collection/records_for_outputs.py"}
"""The only task that works out who is withheld, and from whom."""

SHOWS_OR_CHOOSES = {
    "core/fields/audiences.py",  # the grammar of the words
    "tasks/sitting/recovering.py",  # a draft for anyone takes the audience of its field
}
"""Files that compare the words of an audience and decide nothing by it."""

PARTS = {"may_see", "closed_until", "NOBODY", "Withheld"}
"""The smaller questions that an answer is made of. (The record's own count is called `withheld` too.)"""

LEVELS = {"keeper", "family", "archive", "anyone", "outside"}

TELLS_ONLY_ABOUT = {"whole_names", "count"}
"""What others may take from a `Withheld`: what a search of bytes looks for, and how many people it is."""


def decisions(code: Iterable[ast.AST]) -> Iterator[str]:
    """Every place that would answer the question by itself."""
    for node in code:
        if isinstance(node, ast.Name | ast.Attribute) and _name(node) in PARTS:
            yield _name(node)
        if isinstance(node, ast.ImportFrom):
            yield from (alias.name for alias in node.names if alias.name in PARTS)
        if isinstance(node, ast.Attribute) and _name(node.value) == "withheld" and node.attr not in TELLS_ONLY_ABOUT:
            yield ast.unparse(node)
        if isinstance(node, ast.Call) and _name(node.func) in ("Recipient", "withhold"):
            yield ast.unparse(node)
        if isinstance(node, ast.Compare) and any(map(_is_recipient, ast.walk(node))):
            yield ast.unparse(node)
        if isinstance(node, ast.Compare) and _compares_audience(node):
            yield ast.unparse(node)
        if isinstance(node, ast.MatchValue) and _is_recipient(node.value):
            yield ast.unparse(node)
        if isinstance(node, ast.Dict) and any(key is not None and _is_recipient(key) for key in node.keys):
            yield ast.unparse(node)


def _name(node: ast.AST) -> str:
    return node.id if isinstance(node, ast.Name) else node.attr if isinstance(node, ast.Attribute) else ""


def _is_recipient(node: ast.AST) -> bool:
    """`To.OUTSIDE`"""
    return isinstance(node, ast.Attribute) and _name(node.value) == "To"


def _compares_audience(node: ast.Compare) -> bool:
    """`told.audience == "family"`, `to == "outside"`, `"keeper" in record.audiences`"""
    sides = [node.left, *node.comparators]
    named = {_name(part) for side in sides for part in ast.walk(side)}
    words = {part.value for side in sides for part in ast.walk(side) if isinstance(part, ast.Constant)}
    return bool(named & {"audience", "audiences"}) or bool(named & {"to", "level"} and words & LEVELS)


OFFENCES = [
    "from boxlore.core.records.audience_levels import may_see",
    "levels.may_see(told.audience, to, today)",
    "seen.withheld.finds(words)",
    "ident in recipient.withheld.people",
    "withhold(people, lives, to)",
    "Recipient(to=to, on_day=today)",
    "told.audience == 'family'",
    "'keeper' in record.audiences",
    "seen.to is To.OUTSIDE",
    "to in (To.FAMILY, To.KEEPER)",
    "to == 'outside'",
    "match to:\n    case To.OUTSIDE: pass",
    "{To.OUTSIDE: 1}[to]",
]


@every_row("code", OFFENCES)
def test_the_search_sees_every_way_of_deciding_alone(code: str) -> None:
    assert list(decisions(ast.walk(ast.parse(code))))


def test_asking_is_allowed() -> None:
    code = "seen_by(collection, To.OUTSIDE).recipient.may_read(words) and record.withheld and seen.withheld.count"
    assert list(decisions(ast.walk(ast.parse(code)))) == []


def test_nobody_else_decides() -> None:
    found = {}
    for path in FILES:
        name = path.relative_to(SRC).as_posix()
        if name not in HOME and (made := list(decisions(nodes(path)))):
            found[name] = made
    assert set(found) == MAKES_RECIPIENTS | SHOWS_OR_CHOOSES, found
