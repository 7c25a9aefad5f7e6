"""The house as DEVELOPERS.md draws it: imports point down only, and starting is light.

Rules of our own (no outside source): a folder imports only the folders named for it below.
"""

import ast
import graphlib
import os
import subprocess
import sys
from collections.abc import Iterable
from pathlib import Path

import pytest
from tests.architecture.parsed import FILES, SRC, nodes
from tests.every_row import every_row

MAY_IMPORT = {
    "core": set(),
    "disk": {"core"},
    "formats": {"core"},
    "gazetteer": {"core", "disk"},
    "store": {"core", "disk"},
    "exports": {"core", "disk"},
    "sheets": {"core"},
    "tasks": {"core", "formats", "gazetteer", "store", "exports", "sheets", "disk"},
    "viewing": {"core", "tasks"},
    "tui": {"core", "tasks"},
    "cli": {"core", "tasks", "viewing", "tui"},
}

THIRD_PARTY = {
    "core": set(),
    "formats": {"lxml", "pypdf", "pypdfium2"},
    "gazetteer": {"rapidfuzz"},
    "store": {"psycopg"},
    "exports": {"lxml", "rdflib"},
    "sheets": {"typst", "jinja2", "markupsafe"},
    "disk": {"PIL", "pillow_heif", "cv2", "numpy", "pyrage"},
    "tasks": {"ansel"},
    "viewing": {"segno"},
    "tui": {"textual", "rich"},
    "cli": {"click", "rich"},
}

WINGS = {
    "core": (
        ("errors", "findings", "wording"),
        ("dates", "statements"),
        ("fields", "people", "places"),
        ("records", "sitting"),
        ("originals", "rules"),
        ("crosswalk", "evidence"),
    ),
    "tasks": (
        ("collection",),
        ("originals", "telling"),
        ("people", "scans"),
        ("check", "outputs", "strike"),
        ("sitting",),
        ("archive",),
        ("demo",),
    ),
}
"""The rooms of the two large folders, floor by floor: a room imports only rooms of the floors before its own."""

HEAVY = ("textual", "rdflib", "lxml", "PIL", "typst", "jinja2", "sqlite3")

IMPURE = {"os", "io", "pathlib", "time", "sqlite3", "subprocess", "socket", "threading", "random", "tempfile"}


def imports(path: Path) -> set[str]:
    """Every module a file imports, at its top or inside a function."""
    found: set[str] = set()
    for node in nodes(path):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: relative import"
            assert all(alias.name != "*" for alias in node.names), f"{path}: import *"
            module = node.module or ""
            whole = {f"{module}.{alias.name}" for alias in node.names} if module.count(".") < 2 else set()
            found |= {module} | (whole if module.startswith("boxlore") else set())
    return found


@every_row("path", FILES)
def test_imports_point_down(path: Path) -> None:
    folder = path.relative_to(SRC).parts[0]
    if folder == "__init__.py":
        assert not imports(path)
        return
    for module in imports(path):
        parts = module.split(".")
        if parts[0] == "boxlore" and len(parts) > 1 and (SRC / parts[1]).is_dir():
            assert parts[1] in MAY_IMPORT[folder] | {folder}, f"{folder} may not import {module}"
        elif parts[0] not in sys.stdlib_module_names and parts[0] != "boxlore":
            assert parts[0] in THIRD_PARTY[folder], f"{folder} may not import {module}"
        if folder == "core":
            assert parts[0] not in IMPURE, f"core is pure, and {path.name} imports {module}"


@pytest.mark.parametrize("folder", WINGS)
def test_wings_stand_on_their_floors(folder: str) -> None:
    floors = {room: floor for floor, rooms in enumerate(WINGS[folder]) for room in rooms}
    top = SRC / folder
    assert {path.stem for path in top.iterdir() if path.stem not in ("__init__", "__pycache__")} == set(floors)
    for path in top.rglob("*.py"):
        room = path.relative_to(top).parts[0].removesuffix(".py")
        for module in imports(path):
            name, parts = module, module.split(".")
            if parts[:2] != ["boxlore", folder] or len(parts) < 3 or parts[2] == room:
                continue
            assert floors[parts[2]] < floors[room], f"{path.relative_to(SRC)} imports {name}, which is not below it"


@every_row("path", FILES)
def test_a_name_never_repeats_its_wing(path: Path) -> None:
    folder, *wings, name = path.relative_to(SRC).with_suffix("").parts if path.parent != SRC else ("", "")
    assert not (folder in WINGS and wings and name in (wings[0], wings[0].removesuffix("s"))), name


def test_tests_stand_where_their_sources_stand() -> None:
    """`tests/core/dates/test_edtf.py` tests `core/dates/edtf.py`; a test of several sources stands in their folder."""
    tests = SRC.parents[1] / "tests"
    for path in tests.rglob("test_*.py"):
        folder = path.parent.relative_to(tests)
        assert folder.parts[0] == "architecture" or (SRC / folder).is_dir(), path


def test_imports_inside_functions_and_for_types_are_seen(tmp_path: Path) -> None:
    source = tmp_path / "late.py"
    source.write_text(
        "if TYPE_CHECKING:\n    from boxlore.store.rows import Row\n"
        "def late():\n    import boxlore.tui.app\n    from boxlore.tasks import check\n"
        "class Screen:\n    async def job(self):\n        from boxlore.disk.pictures import look\n"
    )
    assert imports(source) == {
        "boxlore.store.rows", "boxlore.tui.app", "boxlore.tasks", "boxlore.tasks.check", "boxlore.disk.pictures"
    }  # fmt: skip


BY_NAME = {"cli/main.py"}
"""The only file that imports by a composed name: the table of commands, of which tests load every row."""


def test_no_module_is_imported_by_a_string() -> None:
    """What is imported by a string is seen by no tool: not by the tests above, not by the checker of types."""

    def by_string(node: ast.AST) -> bool:
        if isinstance(node, ast.Import):
            return any(alias.name == "importlib" for alias in node.names)
        if isinstance(node, ast.ImportFrom):
            return node.module == "importlib" and any(alias.name != "resources" for alias in node.names)
        return isinstance(node, ast.Name) and node.id == "__import__"

    assert {str(path.relative_to(SRC)) for path in FILES if any(map(by_string, nodes(path)))} == BY_NAME


DECODES = {"disk/decoding.py"}
"""The only file that opens a picture to decode it: memory and pixels are bounded there, and every fault is said."""


def opens_pictures(code: Iterable[ast.AST]) -> bool:
    """Whether code opens a picture with Pillow, or makes one of bytes: `Image.open`, a plugin's class, a parser."""

    def opens(node: ast.AST) -> bool:
        if isinstance(node, ast.Attribute):
            return node.attr in ("open", "open_heif", "read_heif", "Parser") and any(
                isinstance(inner, ast.Name) and inner.id in ("Image", "PIL", "pillow_heif", "ImageFile")
                for inner in ast.walk(node.value)
            )
        return isinstance(node, ast.ImportFrom) and (
            (node.module == "PIL.Image" and any(alias.name == "open" for alias in node.names))
            or node.module == "pillow_heif"
        )

    return any(map(opens, code))


OPENS = (
    "from PIL import Image\nImage.open(path)",
    "import PIL.Image\nPIL.Image.open(path)",
    "from PIL.Image import open",
    "from pillow_heif import open_heif",
    "from PIL import ImageFile\nImageFile.Parser()",
)


@pytest.mark.parametrize("code", OPENS)
def test_the_search_sees_every_way_of_opening_a_picture(code: str) -> None:
    assert opens_pictures(ast.walk(ast.parse(code)))


def test_pictures_are_opened_in_one_guarded_place() -> None:
    assert {str(path.relative_to(SRC)) for path in FILES if opens_pictures(nodes(path))} == DECODES


def test_no_circle_of_files() -> None:
    """Not through imports inside functions either; a circle raises CycleError, which names its files."""
    files = {".".join(("boxlore", *path.relative_to(SRC).with_suffix("").parts)): path for path in FILES}
    needs: dict[str, set[str]] = {}
    for name, path in files.items():
        needs[name] = set()
        for node in nodes(path):
            if isinstance(node, ast.Import):
                needs[name] |= {alias.name for alias in node.names}
            elif isinstance(node, ast.ImportFrom):
                needs[name] |= {str(node.module)} | {f"{node.module}.{alias.name}" for alias in node.names}
        needs[name] &= set(files)
    order = list(graphlib.TopologicalSorter(needs).static_order())
    assert set(order) == set(files)


def test_every_folder_is_named() -> None:
    folders = {path.name for path in SRC.iterdir() if path.is_dir() and path.name not in ("__pycache__", "shipped")}
    assert folders == set(MAY_IMPORT)


def test_starting_loads_nothing_heavy() -> None:
    code = f"import boxlore.cli.main, sys; print([name for name in {HEAVY!r} if name in sys.modules])"
    # A measuring of coverage loads sqlite3 itself.
    environment = {name: value for name, value in os.environ.items() if not name.startswith("COVERAGE_")}
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, env=environment)
    assert ran.stdout.strip() == "[]"
