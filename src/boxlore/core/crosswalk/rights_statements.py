"""The statements of rightsstatements.org: their addresses, and the labels that people know them by.

Whoever tells the label (`No known copyright`) means the statement, and an output says its address.
"""

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


def rights_label(words: str) -> str:
    """`Copyright Not Evaluated (http://…)` for a statement of rightsstatements.org, else the words."""
    name = words.removeprefix(OF_RIGHTS).partition("/")[0] if words.startswith(OF_RIGHTS) else ""
    return f"{RIGHTS[name]} ({words})" if name in RIGHTS else words


def rights_address(words: str) -> str:
    """The address of the statement whose label the words are, whatever their case and the point behind them; else the
    words."""
    return _BY_LABEL.get(fold(words.strip().rstrip(".")), words)
