"""Makes `core/wording/translations.py` and `countries_table.py` of the .po files and of babel's CLDR.

Run after a message was written, changed or translated, or after a new release of babel:
python tests/core/wording/make_translations.py
Messages that are new come into each .po without words; put them in, and run it again. Those that nothing says any more
stay at the end of the file as obsolete.
"""

import ast
import json
import re
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import IO, Any

from babel import Locale
from babel.core import get_cldr_version
from babel.messages import Catalog
from babel.messages.extract import extract
from babel.messages.pofile import read_po, write_po

HOME = Path(__file__).parents[3]
SOURCE = HOME / "src" / "boxlore"
FOLDER = HOME / "src" / "boxlore" / "core" / "wording" / "po"
LANGUAGES = {"et": "n != 1", "de": "n != 1", "es": "n != 1", "fr": "n > 1"}
"""Language -> how its two plurals are chosen (CLDR; the forms of whole millions are left out)."""
TABLE = SOURCE / "core" / "wording" / "translations.py"
COUNTRIES = SOURCE / "core" / "wording" / "countries_table.py"
KEYWORDS = {"say": None, "to_say": None, "counted": (2, 3)}
"""Calls that hold messages, with the places of the message where it is not the first one."""
ROOMS = ("core", "sheets", "tasks/collection", "tasks/outputs", "tasks/people", "tasks/sitting", "viewing")
"""Where messages are said; `say` of the other folders talks to the keeper."""
IN_BRACES = re.compile(r"\{\{say: (.*?)\}\}")
"""A message in a page of the teller, which is no template of an engine."""


def by_syntax(file: IO[bytes], keywords: Any, comment_tags: Any, options: Any) -> Iterator[tuple[Any, ...]]:
    """A method of babel's for Python: every call by one of these names whose messages are written there, also one
    within an f-string, which babel's own reader of tokens passes over.
    """
    calls = (node for node in ast.walk(ast.parse(file.read())) if isinstance(node, ast.Call))
    for node in sorted(calls, key=lambda node: (node.lineno, node.col_offset)):
        if isinstance(node.func, ast.Name | ast.Attribute):
            name = node.func.id if isinstance(node.func, ast.Name) else node.func.attr
            texts = [arg.value if isinstance(arg, ast.Constant) else None for arg in node.args]
            if name in keywords and any(isinstance(text, str) for text in texts):
                yield node.lineno, name, tuple(texts), []


METHODS = {".py": by_syntax, ".js": "javascript", ".html": "jinja2.ext:babel_extract"}


def messages() -> Iterator[tuple[str, str | tuple[str, str]]]:
    """(path, message) of every message in the source; with plural forms a pair."""
    for path in sorted(path for room in ROOMS for path in (SOURCE / room).rglob("*")):
        where = path.relative_to(SOURCE).as_posix()
        if where.startswith("viewing/page/"):
            yield from ((where, message) for message in IN_BRACES.findall(path.read_text(encoding="utf-8")))
        elif path.suffix in METHODS:
            with path.open("rb") as file:
                yield from ((where, found[1]) for found in extract(METHODS[path.suffix], file, KEYWORDS))


def collected() -> Catalog:
    """The messages in the order of their files, as a template."""
    catalog = Catalog(project="Boxlore", charset="utf-8")
    for where, message in messages():
        catalog.add(message, locations=[(where, None)])
    return catalog


def read(language: str) -> Catalog:
    path = FOLDER / f"{language}.po"
    if path.exists():
        return read_po(path.read_text(encoding="utf-8").splitlines(keepends=True), locale=language)
    catalog = Catalog(locale=language, project="Boxlore", charset="utf-8", fuzzy=False)
    catalog.mime_headers = [("Plural-Forms", f"nplurals=2; plural=({LANGUAGES[language]});")]
    return catalog


def write(language: str, template: Catalog) -> None:
    """Bring a .po to the messages that there are now; what is translated stays."""
    kept = read(language)
    kept.update(template, no_fuzzy_matching=True, update_creation_date=False)
    with (FOLDER / f"{language}.po").open("wb") as file:
        write_po(file, kept, width=100, sort_by_file=False, omit_header=False, include_lineno=False)


def ways(language: str) -> tuple[str, str, int, str, str]:
    """Plural rule, the mark between groups of three figures and from how many figures before it, and, or."""
    locale = Locale.parse("en_GB" if language == "en" else language)
    pair = locale.list_patterns["standard"]["2"], locale.list_patterns["or"]["2"]
    conjunction, alternative = (pattern.replace("{0}", "").replace("{1}", "").strip() for pattern in pair)
    group = locale.number_symbols["latn"]["group"].replace("\u202f", "\u00a0")  # in more fonts than the narrow one
    least = LEAST.get(language, 1)
    return LANGUAGES.get(language, "n != 1"), group, least, conjunction, alternative


LEAST = {"et": 2, "es": 2}
"""Least number of figures before the first group (CLDR, minimumGroupingDigits): 1234, but 12.345."""


def quoted(words: str | Sequence[str | int]) -> str:
    """A text, or several, as the formatter of the source writes them."""
    if isinstance(words, list | tuple):
        return f"({', '.join(map(quoted, words))})"
    return json.dumps(words, ensure_ascii=False).replace("\u00a0", "\\xa0") if isinstance(words, str) else str(words)


def table() -> str:
    """The text of the module."""
    lines = [
        f'"""Our words in other languages: Unicode CLDR {get_cldr_version()} and po/*.po, made by',
        "tests/core/wording/make_translations.py.",
        '"""',
        "",
        "# fmt: off",
        "LANGUAGE_WAYS: dict[str, tuple[str, str, int, str, str]] = {",
        *(f'    "{language}": {quoted(ways(language))},' for language in ("en", *LANGUAGES)),
        "}",
        '"""Plural rule, mark between groups of figures, least figures before it, and, or."""',
        "",
        "TRANSLATIONS: dict[str, dict[str, str | tuple[str, str]]] = {",
    ]
    for language in LANGUAGES:
        lines.append(f'    "{language}": {{')
        for message in read(language):
            if message.id and (message.string if isinstance(message.string, str) else all(message.string)):
                key = message.id if isinstance(message.id, str) else message.id[0]
                words = message.string
                lines.append(f"        {quoted(key)}: {quoted(words)},")
        lines.append("    },")
    return "\n".join([*lines, "}"]) + "\n"


def countries() -> str:
    """The text of the table of countries."""
    lines = [
        f'"""Countries in the languages of our words: Unicode CLDR {get_cldr_version()}, made by',
        "tests/core/wording/make_translations.py.",
        '"""',
        "",
        "COUNTRIES: dict[str, dict[str, str]] = {",
    ]
    for language in LANGUAGES:
        names = Locale.parse(language).territories
        lines.append(f'    "{language}": {{')
        lines += [
            f"        {quoted(code)}: {quoted(names[code])},"
            for code in sorted(names)
            if len(code) == 2 and code.isalpha()
        ]
        lines.append("    },")
    return "\n".join([*lines, "}"]) + "\n"


if __name__ == "__main__":
    FOLDER.mkdir(exist_ok=True)
    for each in LANGUAGES:
        write(each, collected())
    TABLE.write_text(table(), encoding="utf-8")
    COUNTRIES.write_text(countries(), encoding="utf-8")
