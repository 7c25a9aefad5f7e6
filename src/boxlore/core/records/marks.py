"""Where an item is kept now: its mark. A mark is a place and may change; the number never does."""

import re
from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import says_nothing
from boxlore.core.fields.originals import NUMBER_WORDS, ItemNumber

ContainerPath = tuple[tuple[str, str], ...]
"""(kind, label) of each container, outermost first (kind: box, folder, album, sleeve, page)."""


@dataclass(frozen=True, slots=True)
class Mark:
    """`Box 3 / Folder 12 / Item 4`, short `3/12/4`: the path from the outermost container inward.

    `item` is the place in the innermost one, from 1, or 0 where none was given.
    """

    path: ContainerPath
    item: int = 0

    @property
    def long(self) -> str:
        steps = [f"{kind.capitalize()} {label}" for kind, label in self.path]
        return " / ".join([*steps, f"Item {self.item}"] if self.item else steps)

    @property
    def short(self) -> str:
        labels = [label for _, label in self.path]
        return "/".join([*labels, str(self.item)] if self.item else labels)

    def __str__(self) -> str:
        return self.long

    def label(self, kind: str) -> str:
        """The label of the container of that kind, or an empty string."""
        return next((label for name, label in self.path if name == kind), "")


def label_key(label: str) -> tuple[int, int, str]:
    """A key that sorts box 2 before box 10, and labels that are no numbers behind those that are."""
    return (0, int(label), "") if label.isdecimal() else (1, 0, label)


KINDS = ("box", "folder", "album", "sleeve", "page")
"""What holds items, by the trade's names."""

LOCATION_KINDS = ("house", "room", "shelf")


@dataclass(frozen=True, slots=True, kw_only=True)
class Container:
    """One container as it is now. `path` is its way inward; `location` the names from house to shelf.

    `size_mm` width, height, depth inside; `capacity` in items, 0 where not noted; `fullness` as seen by a person
    (`overfull`, `half-empty`, empty for not noted); `surroundings` are its own and its locations'.
    """

    id: str
    kind: str
    label: str
    path: ContainerPath = ()
    inside: str = ""
    location: tuple[str, ...] = ()
    materials: str = ""
    tested: str = ""
    size_mm: tuple[float, ...] = ()
    capacity: int = 0
    fullness: str = ""
    surroundings: frozenset[str] = frozenset()
    items: tuple[str, ...] = ()
    """Ids of the items that lie in it directly, in the order of their places."""
    others: tuple[str, ...] = ()
    """Ids of the containers that stand in it directly."""

    @property
    def mark(self) -> Mark:
        return Mark(self.path)


_NUMBER = re.compile(r"[A-Z][A-Z0-9]{1,7}-[0-9]{4,}\Z")
_LONG = re.compile(r"(box|folder|album|sleeve|page|item)\s+([^/]+)\Z", re.IGNORECASE)


def looks_like_number(text: str) -> bool:
    """Whether a text is shaped like an item's number (`TRA-0042`), in any case."""
    return bool(_NUMBER.match(text.strip().upper()))


def short_form(text: str) -> str:
    """`Box 3 / Folder 12 / Item 4` or `3/12/4` → `3/12/4`. Raises WrongUse if it is neither."""
    steps = [step.strip() for step in text.strip().split("/")]
    labels = [match[2].strip() if (match := _LONG.match(step)) else step for step in steps]
    if not all(labels):
        raise WrongUse(f"“{text[:60]}” is no mark.", "Write it like 3/12/4 or Box 3 / Folder 12 / Item 4.")
    return "/".join(labels)


def bare_label(kind: str, text: str) -> str:
    """The label of a container, from what was written for it: `Box 1` of a box is `1`."""
    match = _LONG.match(text.strip())
    return match[2].strip() if match and match[1].lower() == kind else text.strip()


def check_label(label: str) -> None:
    """Raises WrongUse for a label that would make two marks alike, or shows nothing."""
    if "/" in label or says_nothing(label):
        raise WrongUse(
            f"“{label.strip()[:40]}” is no label: it must have letters or figures, and no stroke (/).",
            "Write the box and the folder apart, such as --box 7 --folder 1.",
        )


def number_text(prefix: str, series: str, count: int) -> str:
    """The permanent number: prefix, series letter of this working copy, at least four digits."""
    return NUMBER_WORDS.write(ItemNumber(f"{prefix}{series}", count))
