"""What a page says to machines: schema.org `Photograph` as JSON-LD 1.1, from what anyone may know and nothing else.

So living people are left out of it also on the pages for the family.
"""

import json
import re
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.records.in_force import Record
from boxlore.core.statements import Sure
from boxlore.sheets.print_run import Printing

_ISO = re.compile(r"\d{4}(-\d{2}(-\d{2})?)?\Z")


def linked(record: Record, printing: Printing) -> str:
    """The JSON-LD of one photograph, safe inside a script element."""
    said: dict[str, Any] = {
        "@context": "https://schema.org",
        "@type": "Photograph" if record.kind in ("print", "negative", "slide", "postcard", "card") else "CreativeWork",
        "identifier": record.number,
        "name": captions.title(record, brackets=printing.style.brackets),
        "inLanguage": printing.language,
    }
    if _ISO.match(record.edtf):
        said["dateCreated"] = record.edtf
    elif record.edtf:
        said["temporalCoverage"] = record.date_display
    if place := captions.place_line(record):
        said["contentLocation"] = {"@type": "Place", "name": place}
    people = [one for one in record.shown() if one.person and one.told.sure is Sure.SURE]
    if people:
        said["about"] = [{"@type": "Person", "name": one.name} for one in people]
    takers = [one for one in record.shown("photographer") if one.told.sure is Sure.SURE]
    if takers:
        said["creator"] = [{"@type": "Person", "name": one.name} for one in takers]
    return json.dumps(said, ensure_ascii=False).replace("<", "\\u003c")
