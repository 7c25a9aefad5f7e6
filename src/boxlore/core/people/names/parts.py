"""A name taken apart: a proposal beside the words of a name, until the keeper confirms or corrects it."""

from collections.abc import Mapping
from dataclasses import dataclass, fields
from enum import StrEnum


class Tradition(StrEnum):
    """How a name is built and listed. ONE_WORD names have no family name."""

    EUROPEAN = "european"
    SPANISH = "spanish"
    PORTUGUESE = "portuguese"
    ITALIAN = "italian"
    ICELANDIC = "icelandic"
    ETHIOPIAN = "ethiopian"
    HUNGARIAN = "hungarian"
    SLAVIC = "slavic"
    ARABIC = "arabic"
    MAORI = "maori"
    CHINESE = "chinese"
    JAPANESE = "japanese"
    KOREAN = "korean"
    VIETNAMESE = "vietnamese"


@dataclass(frozen=True, slots=True, kw_only=True)
class NameParts:
    """The parts of one name, each as told; empty where it has none.

    `family` is with its particles (`von der Pahlen`), and `particle` repeats those under which it is not listed (`von
    der`). `title` stands before the name and holds a husband's given names (`Mrs. Thomas`); `kin` is a family's word
    (`Aunt`); `religious` a name in religion; `belongs` a people (`Ngāi Tahu`). `asks` is the question where the words
    can be taken apart in two ways: the likelier one is given.
    """

    given: str = ""
    family: str = ""
    particle: str = ""
    born_as: str = ""
    married_as: str = ""
    patronymic: str = ""
    title: str = ""
    suffix: str = ""
    nickname: str = ""
    religious: str = ""
    kin: str = ""
    belongs: str = ""
    tradition: Tradition = Tradition.EUROPEAN
    asks: str = ""

    def __bool__(self) -> bool:
        """Whether anything of a name was found in the words."""
        return any(getattr(self, name) for name in PARTS)

    def to_json(self) -> dict[str, object]:
        """The parts that are not empty, as a JSON object."""
        return {field.name: str(value) for field in fields(self) if (value := getattr(self, field.name))}

    @classmethod
    def from_json(cls, data: Mapping[str, object]) -> "NameParts":
        """Inverse of `to_json`; a part that is not known is passed over. Raises KeyError and ValueError for
        another shape."""
        texts = {name: value for name in (*PARTS, "asks") if (value := data.get(name, "")) != ""}
        if not all(isinstance(value, str) for value in texts.values()):
            raise ValueError("A part of a name is text.")
        return cls(tradition=Tradition(str(data["tradition"])), **{k: str(v) for k, v in texts.items()})


PARTS = tuple(field.name for field in fields(NameParts) if field.name not in ("tradition", "asks"))
"""The parts in the order in which they are shown."""

PART_LABELS = {
    "given": "given", "family": "family", "particle": "particle", "born_as": "born", "married_as": "married",
    "patronymic": "patronymic", "title": "title", "suffix": "suffix", "nickname": "called", "religious": "in religion",
    "kin": "kin word", "belongs": "people",
}  # fmt: skip
"""How each part is called before a keeper."""
