"""Recordings and papers in Dublin Core, as they lie beside the items: a record of their own for each file.

Dublin Core Metadata Element Set 1.1 (ISO 15836), DCMI Metadata Terms and DCMI Type Vocabulary (2020). That whoever
speaks is the creator of a recording is common practice, no source.
"""

import uuid
from collections.abc import Iterator, Sequence

from boxlore.core.crosswalk.dublin_core import CollectionFacts, DcValue, typed_rights
from boxlore.core.crosswalk.rights_statements import rights_address
from boxlore.core.crosswalk.sound import CLIMATE, PAPER, SOUND, Beside

TYPES = {SOUND: "Sound", PAPER: "Text", CLIMATE: "Dataset"}


def beside_identifier(held: Beside, facts: CollectionFacts) -> str:
    """The URN of its sitting, which all files of that sitting have; of what belongs to none, one made of its path."""
    return f"urn:uuid:{held.sitting or id_of_file(held, facts)}"


def id_of_file(held: Beside, facts: CollectionFacts) -> str:
    """The UUID of the file alone, made of the collection's and its path (RFC 9562, version 5)."""
    return str(uuid.uuid5(uuid.UUID(facts.id), held.path))


def simple_beside(held: Beside, facts: CollectionFacts) -> Iterator[tuple[str, DcValue]]:
    """(element, value) of a simple record, in the order of the records of items; nothing without words."""
    yield from _said(held, facts, "date", "format")
    yield "relation", DcValue(facts.title, facts.language)
    yield "rights", DcValue(held.access, "en")
    yield "rights", DcValue(rights_address(facts.rights))


def full_beside(held: Beside, facts: CollectionFacts) -> Iterator[tuple[str, DcValue]]:
    """(term, value) of the full record in DCMI Metadata Terms."""
    for name, value in _said(held, facts, "created", "extent"):
        yield name, value._replace(scheme="dcterms:DCMIType") if name == "type" else value
    yield "isPartOf", DcValue(facts.title, facts.language)
    yield "isPartOf", DcValue(f"urn:uuid:{facts.id}", scheme="dcterms:URI")
    yield "accessRights", DcValue(held.access, "en")
    yield "rights", typed_rights(rights_address(facts.rights))


def _said(held: Beside, facts: CollectionFacts, day: str, extent: str) -> Iterator[tuple[str, DcValue]]:
    cells: tuple[tuple[str, Sequence[str]], ...] = (
        ("title", [held.title]),
        ("creator", held.speakers if held.kind == SOUND else ()),
        (day, [held.day]),
        ("type", [TYPES[held.kind]]),
        (extent, [held.length_words]),
        ("identifier", [held.path, beside_identifier(held, facts), held.reference]),
        ("source", [f"{facts.title}, {held.path}"]),
    )
    yield from ((name, DcValue(words)) for name, values in cells for words in values if words)
