"""Dublin Core as a table for repositories that take in CSV: a row an item, each column named by a DCMI term.

Rows alone: `exports.inventory.as_table` writes them (RFC 4180). The names are those of the Dublin Core Metadata Element
Set 1.1 and, for files, `hasFormat` of DCMI Metadata Terms. An element that has several values has as many columns of
its name, so no sign parts values in a cell.
"""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from functools import partial
from itertools import chain

from boxlore.core.crosswalk.beside_dublin_core import simple_beside
from boxlore.core.crosswalk.dublin_core import CollectionFacts, oai_dc
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.crosswalk.sound import Beside
from boxlore.core.records.item_record import Record

ELEMENTS = (
    "identifier", "title", "creator", "subject", "description", "date", "type", "format", "source", "relation",
    "coverage", "rights",
)  # fmt: skip
FILES = "hasFormat"


def dc_rows(
    records: Callable[[], Iterable[Record]], facts: CollectionFacts, goes: Callable[[str], bool]
) -> Iterator[list[str]]:
    """The heading and every row. `records` gives the records anew each time: the columns are counted first. `goes` says
    whether a scan is there."""
    most: Counter[str] = Counter()
    for record in records():
        most |= Counter({name: len(values) for name, values in _values(record, facts, goes).items()})
    for held in facts.beside:
        most |= Counter({name: len(values) for name, values in _beside(facts, held).items()})
    columns = [name for name in (*ELEMENTS, FILES) for _ in range(most[name])]
    yield columns
    every = chain((_values(record, facts, goes) for record in records()), map(partial(_beside, facts), facts.beside))
    for values in every:
        yield [cell for name in dict.fromkeys(columns) for cell in _filled(values.get(name, []), most[name])]


def _values(record: Record, facts: CollectionFacts, goes: Callable[[str], bool]) -> dict[str, list[str]]:
    values: dict[str, list[str]] = {}
    for name, value in oai_dc(record, facts):
        values.setdefault(name, []).append(value.words)
    paths = [packed_path(record, scan) for scan in record.open_scans]
    if files := [path for path in paths if goes(path)]:
        values[FILES] = files
    return values


def _beside(facts: CollectionFacts, held: Beside) -> dict[str, list[str]]:
    values: dict[str, list[str]] = {FILES: [held.path]}
    for name, value in simple_beside(held, facts):
        values.setdefault(name, []).append(value.words)
    return values


def _filled(values: list[str], count: int) -> list[str]:
    return [*values, *[""] * (count - len(values))]
