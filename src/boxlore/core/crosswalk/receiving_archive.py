"""The archive that receives a transfer: its name, its codes, and the parts of a transfer that it takes.

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
    "dc-csv": "simple Dublin Core as a table, a row an item (metadata/dc.csv)",
    "mets": "METS with PREMIS for the scans (metadata/mets.xml)",
    "oai-static": "an OAI-PMH static repository of the open part (metadata/oai-static.xml)",
    "iiif": "IIIF manifests with annotations for the scans of the open part (iiif/)",
}
"""The parts of a transfer that an archive may ask for -> what each is."""

USUALLY = ("dublin-core", "ead3", "rdf", "inventory", "forms", "recordings", "scans")
"""The parts that an archive gets if it has not said what it takes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Archive:
    """What is known of one archive; '' where it has not said. `takes` are keys of TAKES. `terms`, `access` and `use`
    are its own words, in its `language`."""

    repository: str = ""
    agency: str = ""
    repository_code: str = ""
    country: str = ""
    prefix: str = ""
    contact: str = ""
    base_url: str = ""
    gateway: str = ""
    email: str = ""
    language: str = ""
    terms: str = ""
    access: str = ""
    use: str = ""
    takes: tuple[str, ...] = USUALLY

    def wants(self, part: str) -> bool:
        """Whether the archive takes this part, a key of TAKES."""
        return part in self.takes

    def taking(self, also: Iterable[str]) -> "Archive":
        """The same archive, taking these parts too."""
        return replace(self, takes=tuple(dict.fromkeys((*self.takes, *also))))


NOT_SAID = Archive()
"""No archive has said anything yet."""
