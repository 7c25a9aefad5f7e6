"""Where something lives: `python tests/architecture/where.py baptism birth` lists the modules that tell of these words.

It looks at what the modules say of themselves: their paths, their docstrings, the names and docstrings of all that is
in them, the words of tables, and the texts of templates, pages and styles. Below each module stand the two of its
functions that tell most of the words. Without words it lists every module.
"""

import ast
import math
import re
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass
from functools import cache
from pathlib import Path

SOURCE = Path(__file__).parents[2] / "src" / "boxlore"
MOST = 12
"""How many modules are listed."""
LONGEST = 4000
"""Letters: a longer text is a table of data, in which any word may stand."""
_ENDINGS = re.compile(r"(?:ings?|ed|es|s)$")
_COMMENT = re.compile(r"(?:/\*|<!--|\{#|//)\s*(.+?)\s*(?:\*/|-->|#\}|\n)")


@dataclass(frozen=True, slots=True)
class Module:
    """What a file says of itself: its description in one line, (weight, text) of all, and its functions."""

    description: str
    texts: tuple[tuple[int, str], ...]
    functions: Mapping[str, str]
    """Name → its name in words and its docstring."""


def _of_source(tree: ast.Module) -> Iterator[tuple[int, str]]:
    for node in ast.walk(tree):
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef)):
            yield 2, node.name.replace("_", " ")
            yield 1, ast.get_docstring(node, clean=False) or ""
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and len(node.value) < LONGEST:
            yield 1, node.value


def read(path: Path) -> Module:
    """What a file says of itself."""
    text = path.read_text(encoding="utf-8")
    name = (4, path.relative_to(SOURCE).as_posix().replace("_", " "))
    if path.suffix != ".py":
        comment = _COMMENT.search(text)
        first = comment[1] if comment else ""
        return Module(first, (name, (4, first), (2, text)), {})
    tree = ast.parse(text)
    first, _, rest = (ast.get_docstring(tree) or "").partition("\n")
    functions = {
        node.name: f"{node.name.replace('_', ' ')} {ast.get_docstring(node, clean=False) or ''}"
        for node in ast.walk(tree)
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef))
    }
    return Module(first, (name, (4, first), (2, rest), *_of_source(tree)), functions)


@cache
def house() -> dict[Path, Module]:
    """Every file of the source."""
    files = sorted(path for path in SOURCE.rglob("*") if path.suffix in (".py", ".typ", ".html", ".css", ".js"))
    return {path: read(path) for path in files}


def _beginning(word: str) -> re.Pattern[str]:
    """A word, however it ends."""
    stem = _ENDINGS.sub("", word) if len(word) > 4 else word
    return re.compile(rf"\b{re.escape(stem)}", re.I)


def located(words: Sequence[str]) -> list[Path]:
    """The files that tell of any of the words, those that tell most of them first; all files for no words."""
    scores = dict.fromkeys(house(), 0.0)
    for begins in map(_beginning, words):
        weights = {
            path: sorted((weight for weight, text in module.texts if begins.search(text)), reverse=True)[:5]
            for path, module in house().items()
        }
        rarity = math.log(len(weights) / max(sum(map(bool, weights.values())), 1))
        for path, of_path in weights.items():
            scores[path] += rarity * (10 * bool(of_path) + sum(of_path))
    return sorted((path for path in scores if scores[path] or not words), key=lambda path: (-scores[path], path))


def telling(module: Module, words: Sequence[str]) -> list[str]:
    """The two functions of a module that tell most of the words, each with its docstring's first line."""
    beginnings = [_beginning(word) for word in words]
    counts = {name: sum(bool(begins.search(text)) for begins in beginnings) for name, text in module.functions.items()}
    names = sorted((name for name, count in counts.items() if count), key=lambda name: -counts[name])[:2]
    return [f"{name}: {module.functions[name][len(name) + 1 :].partition(chr(10))[0]}" for name in names]


def main() -> None:
    """Print them."""
    words = sys.argv[1:]
    for path in located(words)[: MOST if words else None]:
        print(f"{path.relative_to(SOURCE.parent)}  {house()[path].description}")
        for line in telling(house()[path], words):
            print(f"    {line}")


if __name__ == "__main__":
    with suppress(BrokenPipeError):
        main()
