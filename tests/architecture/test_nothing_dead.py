"""Nothing in the source is there for its tests alone (a rule of our own): every name has a user in the source.

A name of a module is used where another module imports it, where it is read as `module.name`, or where its own module
reads it. A method or property is used where anything reads an attribute of that name, so that one user of several
methods of one name is enough for all. What other libraries call (commands, screens, the server) is found by what it
overrides. Fields are not looked at: tables and JSON read them by lists of names.
"""

import ast
import importlib
import re
from collections import Counter
from collections.abc import Iterator, Mapping
from functools import cache

from tests.architecture import parsed
from tests.architecture.parsed import FILES, SRC, nodes

ALLOWED = {
    "cli.entry.run": "the program's entry in pyproject.toml",
}
"""Names without a user in the source, each with the reason why it stays."""


@cache
def modules() -> dict[str, ast.Module]:
    """Every module of the source, parsed."""
    return {".".join(("boxlore", *path.relative_to(SRC).with_suffix("").parts)): parsed.tree(path) for path in FILES}


Definition = ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef


def reads(tree: ast.AST) -> set[str]:
    """Names that are read, in annotations written as text too."""
    inside = list(ast.walk(tree))
    names = {node.id for node in inside if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load)}
    texts = [node.value for node in inside if isinstance(node, ast.Constant) and isinstance(node.value, str)]
    return names | {text for text in texts if text.isidentifier()}


def attributes(tree: ast.AST) -> list[str]:
    """Attributes that are read, those of patterns too."""
    inside = list(ast.walk(tree))
    read = [node.attr for node in inside if isinstance(node, ast.Attribute) and isinstance(node.ctx, ast.Load)]
    return read + [name for node in inside if isinstance(node, ast.MatchClass) for name in node.kwd_attrs]


def defined(tree: ast.Module | ast.ClassDef) -> Iterator[tuple[str, ast.stmt]]:
    """The names that a module or a class defines, each with the statement that does."""
    for node in tree.body:
        if isinstance(node, Definition):
            yield node.name, node
        elif isinstance(node, ast.Assign | ast.AnnAssign):
            for target in node.targets if isinstance(node, ast.Assign) else [node.target]:
                yield from ((part.id, node) for part in ast.walk(target) if isinstance(part, ast.Name))


def used_of_modules(trees: Mapping[str, ast.Module]) -> set[str]:
    """`module.name` for everything that some module uses."""
    used: set[str] = set()
    for module, tree in trees.items():
        imported: dict[str, str] = {}
        inside = list(ast.walk(tree))
        for node in inside:
            if isinstance(node, ast.ImportFrom):
                used |= {f"{node.module}.{alias.name}" for alias in node.names}
                imported |= {alias.asname or alias.name: f"{node.module}.{alias.name}" for alias in node.names}
        bases = {id(node.value) for node in inside if isinstance(node, ast.Attribute)}
        handed_on = {node.id for node in inside if isinstance(node, ast.Name) and id(node) not in bases}
        for node in inside:
            if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
                used.add(f"{imported.get(node.value.id)}.{node.attr}")
            elif isinstance(node, ast.Attribute):  # of a module out of a table of modules
                used |= {f"{imported[name]}.{node.attr}" for name in handed_on & imported.keys()}
        own: dict[ast.stmt, set[str]] = {statement: set() for statement in tree.body}
        for name, statement in defined(tree):
            own[statement].add(name)
        used |= {f"{module}.{name}" for statement in tree.body for name in reads(statement) - own[statement]}
    return used


def is_command(node: ast.stmt) -> bool:
    """Whether click calls it: a function under `@click.command()`, `@people.command("list")` or a group's."""
    decorators = node.decorator_list if isinstance(node, Definition) else []
    return any(re.search(r"\.(command|group)\(", ast.unparse(decorator)) for decorator in decorators)


def overrides(module: str, name: str, member: str) -> bool:
    """Whether a class of another package has that method too, or Textual or `http.server` finds it by its name."""
    made = getattr(importlib.import_module(module), name)
    theirs = [base for base in made.__mro__[1:] if not base.__module__.startswith("boxlore")]
    if any(hasattr(base, member) for base in theirs if base is not object):
        return True
    way, _, rest = member.partition("_")
    packages = {base.__module__.partition(".")[0] for base in theirs}
    return ("textual" in packages and (way == "on" or (way == "action" and rest in actions()))) or (
        "http" in packages and way == "do"
    )


@cache
def actions() -> frozenset[str]:
    """Words in texts of the terminal interface: bindings name their actions so."""
    return frozenset(
        name
        for path in FILES
        if path.is_relative_to(SRC / "tui")
        for node in nodes(path)
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
        for name in re.findall(r"[a-z_]+", node.value)
    )


def unused(trees: Mapping[str, ast.Module]) -> Iterator[str]:
    """Every name without a user, but for those with two underscores before them."""
    used, read = used_of_modules(trees), Counter(name for tree in trees.values() for name in attributes(tree))
    for module, tree in trees.items():
        for name, node in defined(tree):
            if f"{module}.{name}" not in used and not name.startswith("__") and not is_command(node):
                yield f"{module}.{name}"
            for method in node.body if isinstance(node, ast.ClassDef) else ():
                if not isinstance(method, ast.FunctionDef | ast.AsyncFunctionDef) or method.name.startswith("__"):
                    continue
                in_itself = Counter(attributes(method))[method.name]
                if read[method.name] == in_itself and not overrides(module, name, method.name):
                    yield f"{module}.{name}.{method.name}"


def test_every_name_has_a_user_in_the_source() -> None:
    left = {name.removeprefix("boxlore.") for name in unused(modules())}
    assert left - set(ALLOWED) == set()


def test_what_has_no_user_is_found() -> None:
    texts = {
        "boxlore.core.dates.edtf": "A = 1\n_B = 2\ndef used(): return A\ndef left(): return left()\n",
        "boxlore.formats.tiff_directories": "def runs(): ...\ndef lost(): ...\n"
        "class Tiff:\n    def half(self): return self.half()\n",
        "boxlore.tasks.check": "from boxlore.core.dates import edtf\nfrom boxlore.formats import tiff_directories\n"
        "edtf.used({1: tiff_directories}[1].runs)\nprint(tiff_directories.Tiff)\n",
    }
    trees = {name: ast.parse(text) for name, text in texts.items()}
    assert set(unused(trees)) == {
        "boxlore.core.dates.edtf._B", "boxlore.core.dates.edtf.left", "boxlore.formats.tiff_directories.lost",
        "boxlore.formats.tiff_directories.Tiff.half",
    }  # fmt: skip
