"""Where something lives: `python tests/architecture/where.py baptism birth` lists the modules that tell of these words.

It looks at what the modules say of themselves: their paths, their docstrings, the names and docstrings of all that is
in them, the words of tables, and the first comment of templates, pages and styles. Without words it lists every module.
"""

import ast
import math
import re
import sys
from collections.abc import Iterator, Sequence
from functools import cache
from pathlib import Path

SOURCE = Path(__file__).parents[2] / "src" / "boxlore"
MOST = 12
"""How many modules are listed."""
LONGEST = 4000
"""Letters: a longer text is a table of data, in which any word may stand."""
_ENDINGS = re.compile(r"(?:ings?|ed|es|s)$")


def described(path: Path) -> Iterator[tuple[int, str]]:
    """(weight, text) of all that a file says of itself; the first text is its own description in one line."""
    text = path.read_text(encoding="utf-8")
    if path.suffix != ".py":
        comment = re.search(r"(?:/\*|<!--|\{#|//)\s*(.+?)\s*(?:\*/|-->|#\}|\n)", text)
        yield 4, comment[1] if comment else ""
        yield 2, text
        return
    tree = ast.parse(text)
    first, _, rest = (ast.get_docstring(tree) or "").partition("\n")
    yield 4, first
    yield 2, rest
    for node in ast.walk(tree):
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef)):
            yield 2, node.name.replace("_", " ")
            yield 1, ast.get_docstring(node) or ""
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and len(node.value) < LONGEST:
            yield 1, node.value


def _stem(word: str) -> str:
    return _ENDINGS.sub("", word.lower()) if len(word) > 4 else word.lower()


@cache
def house() -> dict[Path, list[tuple[int, str]]]:
    """Of every file what it says of itself, its path first, then its description."""
    files = sorted(path for path in SOURCE.rglob("*") if path.suffix in (".py", ".typ", ".html", ".css", ".js"))
    return {path: [(4, path.relative_to(SOURCE).as_posix().replace("_", " ")), *described(path)] for path in files}


def located(words: Sequence[str]) -> list[tuple[Path, str]]:
    """(path, description) of the files that tell of any of the words, those that tell most of them first."""
    scores = dict.fromkeys(house(), 0.0)
    for word in words:
        begins = re.compile(rf"\b{re.escape(_stem(word))}", re.I)
        weights = {
            path: sorted((weight for weight, text in texts if begins.search(text)), reverse=True)[:5]
            for path, texts in house().items()
        }
        rarity = math.log(len(weights) / max(sum(map(bool, weights.values())), 1))
        for path, of_path in weights.items():
            scores[path] += rarity * (10 * bool(of_path) + sum(of_path))
    paths = sorted((path for path in scores if scores[path] or not words), key=lambda path: (-scores[path], path))
    return [(path, house()[path][1][1]) for path in paths]


def main() -> None:
    """Print them."""
    words = sys.argv[1:]
    for path, description in located(words)[: MOST if words else None]:
        print(f"{path.relative_to(SOURCE.parent)}  {description}")


if __name__ == "__main__":
    main()
