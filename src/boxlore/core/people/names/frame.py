"""What all traditions share while a name is read: its parts so far, and the names that the family has already."""

from dataclasses import dataclass

from boxlore.core.people.names.traditions import KnownNames


@dataclass(slots=True)
class Frame:
    """What is gathered while a name is read: its parts so far, as field names and words."""

    parts: dict[str, str]
    known: KnownNames

    def put(self, part: str, words: str) -> None:
        """Set a part, or add to it."""
        if words:
            self.parts[part] = f"{self.parts[part]} {words}" if self.parts.get(part) else words
