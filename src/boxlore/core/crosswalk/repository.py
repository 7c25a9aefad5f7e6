"""The archive that receives a transfer: what it is called, how it is coded, what it takes.

Describing Archives: A Content Standard (DACS) 2.1 (reference code: country, repository) and 2.2 (repository);
ISO 3166-1 for the country, the agency's own code (such as one of ISO 15511) as it gives it.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace

TAKES: dict[str, str] = {
    "dublin-core": "simple and full Dublin Core (metadata/oai_dc.xml, metadata/dcterms.xml)",
    "ead3": "the finding aid as EAD3 (metadata/finding-aid.ead3.xml)",
    "ead2002": "the finding aid as EAD 2002 (metadata/finding-aid.ead2002.xml)",
    "rdf": "linked data (metadata/records.nt, and records.ttl where it fits)",
    "inventory": "the inventory as a table and as a PDF",
    "forms": "gift and consent forms, filled as far as known",
    "recordings": "sound of the sittings, with its papers",
    "scans": "the scans",
    "copies": "captioned copies beside the scans",
}
"""What an archive may ask for, and what it is."""

USUALLY = ("dublin-core", "ead3", "rdf", "inventory", "forms", "recordings", "scans")


@dataclass(frozen=True, slots=True, kw_only=True)
class Archive:
    """One archive's wishes. Empty where nobody has said yet; `takes` are keys of TAKES."""

    repository: str = ""
    agency: str = ""
    country: str = ""
    contact: str = ""
    terms: str = ""
    takes: tuple[str, ...] = USUALLY

    def wants(self, what: str) -> bool:
        return what in self.takes

    def taking(self, also: Iterable[str]) -> "Archive":
        """The same archive, taking something further."""
        return replace(self, takes=tuple(dict.fromkeys((*self.takes, *also))))


NOT_SAID = Archive()
"""No archive has said anything yet."""
