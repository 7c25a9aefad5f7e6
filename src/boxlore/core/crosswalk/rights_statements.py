"""The statements of rightsstatements.org and the licences of Creative Commons: their addresses, and the labels that
people know them by.

Whoever tells the label (`No known copyright`) means the statement, and an output says its address.
"""

import re
from collections.abc import Mapping

from boxlore.core.statements import fold

RIGHTS: Mapping[str, str] = {
    "InC": "In Copyright", "InC-OW-EU": "In Copyright - EU Orphan Work",
    "InC-EDU": "In Copyright - Educational Use Permitted", "InC-NC": "In Copyright - Non-Commercial Use Permitted",
    "InC-RUU": "In Copyright - Rights-holder(s) Unlocatable or Unidentifiable",
    "NoC-CR": "No Copyright - Contractual Restrictions", "NoC-NC": "No Copyright - Non-Commercial Use Only",
    "NoC-OKLR": "No Copyright - Other Known Legal Restrictions", "NoC-US": "No Copyright - United States",
    "CNE": "Copyright Not Evaluated", "UND": "Copyright Undetermined", "NKC": "No Known Copyright",
}  # fmt: skip
"""The twelve statements of rightsstatements.org: the name in the address -> the label."""
OF_RIGHTS = "http://rightsstatements.org/vocab/"
_BY_LABEL = {fold(label): f"{OF_RIGHTS}{name}/1.0/" for name, label in RIGHTS.items()}


_STATEMENT = re.compile(r"https?://rightsstatements\.org/(?:vocab|page)/(?P<name>[A-Za-z-]+)(?:/1\.0)?/?(?:\?.*)?")
_LICENCE = re.compile(
    r"https?://creativecommons\.org/(?:licenses/(?P<terms>by(?:-nc)?(?:-nd|-sa)?)|(?P<public>publicdomain/(?:zero|mark)))"
    r"/(?P<version>\d\.\d)(?:/(?P<ported>[a-z-]{2,8}))?/?(?:deed\.\w+|legalcode)?"
)
_TERMS = {"by": "Attribution", "nc": "NonCommercial", "nd": "NoDerivatives", "sa": "ShareAlike"}
_PUBLIC = {"publicdomain/zero": "CC0 {} Universal (public domain)", "publicdomain/mark": "Public Domain Mark {}"}


def rights_name(words: str) -> str:
    """What the statement or licence of this address is called (rightsstatements.org; the names of Creative Commons'
    licences from memory); the words where they are no such address."""
    statement = _STATEMENT.fullmatch(words)
    if statement is not None and statement["name"] in RIGHTS:
        return RIGHTS[statement["name"]]
    licence = _LICENCE.fullmatch(words)
    if licence is None:
        return words
    if licence["public"]:
        return _PUBLIC[licence["public"]].format(licence["version"])
    terms = "-".join(_TERMS[term] for term in licence["terms"].split("-"))
    ported = f" ({licence['ported'].upper()})" if licence["ported"] else ""
    return f"Creative Commons {terms} {licence['version']}{ported}"


def rights_label(words: str) -> str:
    """`Copyright Not Evaluated (http://…)` for a statement or a licence that is known, else the words."""
    return f"{name} ({words})" if (name := rights_name(words)) != words else words


def rights_address(words: str) -> str:
    """The address of the statement whose label the words are, whatever their case and the point behind them; else the
    words."""
    return _BY_LABEL.get(fold(words.strip().rstrip(".")), words)
