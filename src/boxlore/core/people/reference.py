"""Whom words mean: a person of the registry, or an event of the family, by its id."""

from collections.abc import Mapping
from dataclasses import dataclass

from boxlore.core.statements import Reading


@dataclass(frozen=True, slots=True)
class PersonRef:
    """The person or the event that words mean. Which of the two it is, the kind of the reading says."""

    id: str

    def to_json(self) -> dict[str, object]:
        """The reference as a JSON object."""
        return {"id": self.id}

    @classmethod
    def from_json(cls, data: Mapping[str, object]) -> "PersonRef":
        """Inverse of `to_json`. Raises ValueError for an object without an id."""
        ident = data.get("id")
        if not isinstance(ident, str) or not ident:
            raise ValueError("A reading that names somebody has no id.")
        return cls(ident)


def id_meant(reading: Reading | None) -> str:
    """The id of the person or event that a reading names, proposed or confirmed; empty if it names none."""
    return reading.value.id if reading is not None and isinstance(reading.value, PersonRef) else ""
