"""An example of the table for intake, with every column, of the invented family."""

from boxlore.core.fields.cells import write_row
from boxlore.tasks.scans.pairing import COLUMNS

_ROWS: tuple[dict[str, str], ...] = (
    {"item": "harbour", "file": "harbour_f.jpg", "side": "front", "kind": "card", "box": "1", "folder": "1",
     "position": "1", "found_in": "shoebox marked Reval, on top", "size": "150 x 110", "process": "albumen print",
     "title": "The harbour with the ships in", "date": "1908 or 09", "place": "Reval"},
    {"item": "harbour", "file": "harbour_b.jpg", "side": "back", "inscription": "Reval, sadam. Isa laev läks siit."},
    {"item": "harbour", "file": "harbour_coloured.jpg", "side": "front", "role": "altered"},
    {"item": "aino", "file": "sheet.png", "side": "front", "area": "0 0 0.5 1", "kind": "print", "box": "1",
     "folder": "2", "photographer": "Atelier Lind", "story": "She had borrowed the hat.", "rights": "Rourke family"},
    {"item": "regatta", "file": "sheet.png", "side": "front", "area": "0.5 0 0.5 1", "kind": "print", "box": "1",
     "folder": "2", "care": "Jaan drowned that summer."},
    {"item": "note", "kind": "note", "box": "1", "folder": "1", "position": "2", "attached_to": "harbour"},
    {"item": "harbour again", "kind": "print", "box": "1", "folder": "2", "same_picture": "harbour"},
)  # fmt: skip


def example_table() -> str:
    """The table as CSV: two sides and an altered version of one card, two prints of one sheet, items without a scan."""
    return "".join(map(write_row, [COLUMNS, *([row.get(name, "") for name in COLUMNS] for row in _ROWS)]))
