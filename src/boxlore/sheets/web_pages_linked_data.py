"""The machine-readable part of a page: schema.org `Photograph` as JSON-LD 1.1.

It is made from the record as anyone may see it, so that even the pages for the family name no living people in it.
"""

import json
import re
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Sure
from boxlore.sheets.print_run import Printing

_ISO = re.compile(r"\d{4}(-\d{2}(-\d{2})?)?\Z")


def linked(record: Record, printing: Printing) -> str:
    """The JSON-LD of one photograph, with `<` escaped, so that it is safe inside a script element.

    Only people whose statement is sure are in it.
    """
    json_ld: dict[str, Any] = {
        "@context": "https://schema.org",
        "@type": "Photograph" if record.kind in ("print", "negative", "slide", "postcard", "card") else "CreativeWork",
        "identifier": record.number,
        "name": captions.title(record, printing.style),
        "inLanguage": printing.language,
    }
    if _ISO.match(record.edtf):
        json_ld["dateCreated"] = record.edtf
    elif record.edtf:
        json_ld["temporalCoverage"] = record.date_display
    if place := captions.place_line(record):
        json_ld["contentLocation"] = {"@type": "Place", "name": place}
    people = [person for person in record.shown() if person.person and person.sure is Sure.SURE]
    if people:
        json_ld["about"] = [{"@type": "Person", "name": person.name} for person in people]
    takers = [taker for taker in record.shown("photographer") if taker.sure is Sure.SURE]
    if takers:
        json_ld["creator"] = [{"@type": "Person", "name": taker.name} for taker in takers]
    return json.dumps(json_ld, ensure_ascii=False).replace("<", "\\u003c")
