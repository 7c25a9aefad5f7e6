"""What the short names of sources stand for, for a keeper who reads where a rule about the originals comes from.

The tables name their sources in short (`KOD-D31; NEDCC 5.5`); each of them says at its head what was read.
"""

import re

NAMES = {
    "CCI": "Canadian Conservation Institute",
    "IPI": "Image Permanence Institute",
    "KOD-D31": "Kodak, leaflet D-31",
    "LC": "Library of Congress",
    "NARA": "US National Archives",
    "NEDCC": "Northeast Document Conservation Center, leaflet",
    "NIEHS": "US National Institute of Environmental Health Sciences",
    "NPS": "US National Park Service",
    "NPS 14/9": "US National Park Service, Conserve O Gram 14/9",
    "NPS-TREE": "US National Park Service, Film Base Identification",
    "SIA": "Smithsonian Institution Archives",
}
"""A short name of a source, and whose it is, or what it is called. Behind a publisher of leaflets stands the number of
one."""

_SHORT = re.compile(rf"(?<![\w-])(?:{'|'.join(sorted(map(re.escape, NAMES), key=len, reverse=True))})(?![\w-])")


def source_in_full(source: str) -> str:
    """`Kodak, leaflet D-31; Northeast Document Conservation Center, leaflet 5.5`, of `KOD-D31; NEDCC 5.5`."""
    return _SHORT.sub(lambda short: NAMES[short[0]], source)
