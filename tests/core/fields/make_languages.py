"""Makes `core/fields/languages_table.py`: the subtags that language tags may be put together of.

They are those of the IANA Language Subtag Registry, as the package language-tags has it, and the languages, scripts and
countries of ISO 639-3, 639-5, 15924 and 3166-1 that pycountry has since. Run after a new release of either:
python tests/core/fields/make_languages.py
"""

import json
from collections.abc import Iterator
from importlib.metadata import version
from pathlib import Path
from string import ascii_lowercase

import language_tags
import pycountry

TABLE = Path(__file__).parents[3] / "src" / "boxlore" / "core" / "fields" / "languages_table.py"
DATA = Path(language_tags.__file__).parent / "data" / "json"


def registered() -> tuple[str, dict[str, set[str]]]:
    """The date of the registry, and its subtags by kind; its ranges for private use written out (`qaa..qtz`)."""
    kinds: dict[str, set[str]] = {kind: set() for kind in ("language", "extlang", "script", "region", "variant")}
    for subtag, rows in json.loads((DATA / "index.json").read_text("utf-8")).items():
        for kind in kinds.keys() & rows.keys():
            first, _, last = subtag.partition("..")
            kinds[kind].update(_between(first, last) if last else [first])
    return json.loads((DATA / "meta.json").read_text("utf-8"))["File-Date"], kinds


def _between(first: str, last: str) -> Iterator[str]:
    letters = ascii_lowercase
    kept = next(at for at in range(len(first)) if first[at] != last[at])
    tails = [""]
    for _ in range(len(first) - kept):
        tails = [tail + letter for tail in tails for letter in letters]
    yield from (first[:kept] + tail for tail in tails if first <= first[:kept] + tail <= last)


def table() -> str:
    """The text of the module."""
    date, kinds = registered()
    longer = {row.alpha_3: row.alpha_2 for row in pycountry.languages if hasattr(row, "alpha_2")}
    longer |= {row.bibliographic: row.alpha_2 for row in pycountry.languages if hasattr(row, "bibliographic")}
    kinds["language"] |= {getattr(row, "alpha_2", row.alpha_3) for row in pycountry.languages}
    kinds["language"] |= {row.alpha_3 for row in pycountry.language_families}
    kinds["script"] |= {row.alpha_4.lower() for row in pycountry.scripts}
    kinds["region"] |= {row.alpha_2.lower() for row in pycountry.countries}
    head = f"IANA Language Subtag Registry of {date}, ISO 639, 15924 and 3166 of pycountry {version('pycountry')}"
    lines = [f'"""What language tags are put together of: {head}; made by tests/core/fields/make_languages.py."""', ""]
    lines += ["SUBTAGS = {"]
    for kind, subtags in kinds.items():
        lines += [f'    "{kind}": "{" ".join(sorted(subtags))}",']
    lines += ["}", '"""Kind of subtag -> all of that kind, in small letters, with blanks between."""', ""]
    pairs = " ".join(f"{long}:{short}" for long, short in sorted(longer.items()))
    lines += [f'SHORTER = "{pairs}"']
    lines += ['"""Codes of three letters in place of which tags have two (RFC 5646, 2.2.1): `est:et`."""', ""]
    return "\n".join(lines)


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
