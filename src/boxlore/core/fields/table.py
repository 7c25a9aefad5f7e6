"""Every field that a statement can be about: which kinds of thing have it, and how its words are taken."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.areas import AREA_WORDS
from boxlore.core.fields.audiences import AUDIENCE_WORDS
from boxlore.core.fields.codec import Codec
from boxlore.core.fields.coordinates import COORDINATES_WORDS
from boxlore.core.fields.fixity import FIXITY_WORDS
from boxlore.core.fields.name_answers import NAMING_WORDS
from boxlore.core.fields.originals import (
    CLIMATE_WORDS,
    KEPT_WORDS,
    MEASURED_WORDS,
    NOTED_WORDS,
    NUMBER_WORDS,
    SIZE_WORDS,
)
from boxlore.core.fields.pictures import (
    CAME_FROM_WORDS,
    EMBEDDED_WORDS,
    FILE_WORDS,
    LINK_WORDS,
    LOOKS_WORDS,
    ROW_WORDS,
    SHOWS_WORDS,
)
from boxlore.core.fields.plain_values import COUNT_WORDS, DAY_WORDS, ID_WORDS, OPEN_ID_WORDS, TEXT, YES_NO_WORDS
from boxlore.core.fields.sittings import CLOSED_WORDS, COURSE_WORDS, PAPER_WORDS, RECORDING_WORDS, SHOWN_WORDS
from boxlore.core.statements import Kind


@dataclass(frozen=True, slots=True)
class Field:
    """One field: which kinds of thing have it, whether it gathers many, and how its words are written and read.

    `told` fields are what somebody says; the others are how things are kept, written by the tasks. `reads` names the
    reading that is made of told words (date, place, person, event; name, of a person alone), `codec` how the words
    themselves are taken apart.
    """

    name: str
    kinds: tuple[Kind, ...]
    label: str
    many: bool = False
    reads: str = ""
    told: bool = True
    audience: str = "anyone"
    codec: Codec[Any] = TEXT


def _field(name: str, kinds: str, label: str, **more: object) -> Field:
    return Field(name, tuple(Kind(kind) for kind in kinds.split()), label, **more)  # type: ignore[arg-type]  # one row of FIELDS, spelled short


OWN = "own-"
"""Prefix of field names defined by the keeper in prompts.toml."""


@lru_cache(256)
def _own(name: str) -> Field | None:
    """A collection's own field: told of items, one value each. None for a name that cannot be one."""
    if not name.startswith(OWN) or not all(part.isalnum() for part in name.split("-")):
        return None
    return Field(name, (Kind.ITEM,), name.removeprefix(OWN).replace("-", " ").capitalize())


class UnknownField(CouldNot, KeyError):
    """A field that this version does not have: of a newer one, or of a damaged log."""


class Fields(Mapping[str, Field]):
    """The fields by name.

    The built-in ones are gone through in the order of the table. A collection's own (`own-…`) are here by name too,
    every one that could be, and are not gone through. Raises UnknownField for others.
    """

    def __init__(self, rows: Iterable[Field]) -> None:
        self._rows: dict[str, Field] = {}
        for field in rows:
            if field.name in self._rows:
                raise ValueError(f"two rows of the table of fields are named {field.name}")
            self._rows[field.name] = field

    def __getitem__(self, name: str) -> Field:
        field = self._rows.get(name) or _own(name)
        if field is None:
            raise UnknownField(
                f"The log tells of a field “{name[:40]}” that this Boxlore does not know.",
                "Get a newer one; if this is the newest, the collection is damaged: go back to a backup.",
            )
        return field

    def __iter__(self) -> Iterator[str]:
        return iter(self._rows)

    def __len__(self) -> int:
        return len(self._rows)

    def in_order(self, names: Iterable[str]) -> list[str]:
        """Names of fields in the order of the table; a collection's own ones come last, as they came."""
        asked = dict.fromkeys(names)
        return [name for name in self._rows if name in asked] + [name for name in asked if name not in self._rows]


FIELDS: Fields = Fields(
    (
        # what is told of an item
        _field("title", "item collection", "Title"),
        _field("person", "item marker", "Who", many=True, reads="person"),
        _field("named", "item", "Named, not shown", many=True, reads="person"),
        _field("photographer", "item", "Photographer", many=True, reads="person"),
        _field("date", "item event sitting", "When", reads="date"),
        _field("place", "item event sitting", "Where", reads="place"),
        _field("occasion", "item", "Occasion", reads="event"),
        _field("story", "item person event place sitting", "Story", many=True),
        _field("inscription", "item", "Written on it", many=True),
        _field("process", "item", "Process"),
        _field("rights", "item collection", "Rights"),
        _field("rights_holder", "item collection", "Rights holder"),
        _field("archive_reference", "item container collection sitting", "The archive's reference", many=True),
        _field("accession", "collection", "Accession number", many=True),
        _field(
            "archive_remark", "item container collection sitting", "The archive remarks", many=True, audience="keeper"
        ),
        _field("archive_answer", "item collection sitting", "Answer to the archive", many=True, audience="keeper"),
        _field("custody", "collection", "How it came down", many=True),
        _field("care", "item", "Care note"),
        _field("condition", "item container", "Condition", many=True, codec=NOTED_WORDS),
        _field("enclosure", "item", "Enclosure"),
        _field("attached", "item", "Still attached", many=True, codec=NOTED_WORDS),
        _field("owner", "item container", "Owner", audience="family"),
        _field("lender", "item container", "Lent by", audience="family"),
        _field("donor", "item container", "Given by", audience="family"),
        _field("note", "item person event place sitting container", "Keeper's note", many=True, audience="keeper"),
        _field("keyword", "item", "Keyword", many=True),
        _field("series", "item", "Series"),
        _field("file_name", "item", "File name", many=True),
        # what is told of people, events, places and sittings
        _field("name", "person event place location", "Name", many=True, reads="name"),
        _field("given", "person", "Given name"),
        _field("family", "person", "Family name"),
        _field("born_as", "person", "Born as"),
        _field("married_as", "person", "Married as", many=True),
        _field("nickname", "person", "Called", many=True),
        _field("patronymic", "person", "Patronymic"),
        _field("honorific", "person", "Title before the name", many=True),
        _field("suffix", "person", "Behind the name", many=True),
        _field("religious_name", "person", "Name in religion", many=True),
        _field("to_keeper", "person", "To the keeper"),
        _field("identifier", "person event", "Identifier elsewhere", many=True),
        _field("sex", "person", "Sex"),
        _field("born", "person", "Born", reads="date"),
        _field("born_at", "person", "Born at", reads="place"),
        _field("died", "person", "Died", reads="date"),
        _field("died_at", "person", "Died at", reads="place"),
        _field("buried", "person", "Buried", reads="date"),
        _field("buried_at", "person", "Buried at", reads="place"),
        _field("living", "person", "Living"),
        _field("father", "person", "Father", reads="person"),
        _field("mother", "person", "Mother", reads="person"),
        _field("adoptive_parent", "person", "Adoptive parent", many=True, reads="person"),
        _field("foster_parent", "person", "Foster parent", many=True, reads="person"),
        _field("spouse", "person", "Married to", many=True, reads="person"),
        _field("married", "person", "Married on", many=True, reads="date"),
        _field("partner", "event", "Married", many=True, reads="person"),
        _field("called_then", "place", "Called then", many=True),
        _field("coordinates", "place", "Coordinates", codec=COORDINATES_WORDS),
        _field("narrator", "sitting", "Narrator", many=True, reads="person"),
        _field("interviewer", "sitting", "Interviewer"),
        _field("agreement", "sitting", "Agreement"),
        _field("consent", "person sitting", "Consent", many=True),
        # how things are kept
        _field("number", "item", "Number", told=False, codec=NUMBER_WORDS),
        _field("kind", "item container location event", "Kind", told=False),
        _field("kept", "item", "Kept in", told=False, codec=KEPT_WORDS),
        _field("found_in", "item", "Found in", told=False),
        _field("row", "item", "Row and place", many=True, told=False, codec=ROW_WORDS),
        _field("audience", "item person", "Who may see it", many=True, told=False, codec=AUDIENCE_WORDS),
        _field("merged_into", "person", "Same person as", told=False, audience="keeper", codec=ID_WORDS),
        _field("different", "person", "Not the same as", many=True, told=False, audience="keeper", codec=ID_WORDS),
        _field("asked", "item sitting", "To ask", many=True, told=False, audience="keeper"),
        _field("size", "item container", "Size in mm", told=False, codec=SIZE_WORDS),
        _field("due_back", "item container", "Due back", told=False, codec=DAY_WORDS),
        _field("returned", "item container", "Given back", told=False, codec=DAY_WORDS),
        _field("materials", "container", "Materials", told=False),
        _field("capacity", "container", "Holds up to", told=False, codec=COUNT_WORDS),
        _field("tested", "container", "Test mark", told=False),
        _field("fullness", "container", "How full", told=False),
        _field("surroundings", "container location", "Surroundings", many=True, told=False),
        _field("climate", "location", "Climate log", many=True, told=False, codec=CLIMATE_WORDS),
        _field("measured", "location", "Measured", many=True, told=False, codec=MEASURED_WORDS),
        _field("surveyed", "item", "Surveyed", told=False, codec=DAY_WORDS),
        _field("set_aside", "item", "Set aside", told=False, audience="keeper"),
        _field("file", "scan", "File", told=False, codec=FILE_WORDS),
        _field("came_from", "scan item", "Came from", told=False, audience="keeper", codec=CAME_FROM_WORDS),
        _field("shows", "scan", "Shows", many=True, told=False, codec=SHOWS_WORDS),
        _field("role", "scan", "Role", told=False),
        _field("looks", "scan", "How it looks", told=False, audience="keeper", codec=LOOKS_WORDS),
        _field("embedded", "scan", "Found in the file", told=False, audience="keeper", codec=EMBEDDED_WORDS),
        _field(
            "naming",
            "item collection",
            "Whether it names somebody",
            many=True,
            told=False,
            audience="keeper",
            codec=NAMING_WORDS,
        ),
        _field("wanted", "item sitting", "Wanted by the archive", told=False, audience="keeper", codec=YES_NO_WORDS),
        _field("fixity", "collection scan", "Fixity", many=True, told=False, audience="keeper", codec=FIXITY_WORDS),
        _field("scan", "marker", "Scan", told=False, codec=OPEN_ID_WORDS),
        _field("area", "marker", "Where on the picture", told=False, codec=AREA_WORDS),
        _field("label", "container", "Label", told=False),
        _field("inside", "container location place", "Inside", told=False),
        _field("link", "relation", "Relation", told=False, codec=LINK_WORDS),
        _field("shown", "sitting", "Shown", many=True, told=False, codec=SHOWN_WORDS),
        _field("recording", "sitting", "Recording", many=True, told=False, codec=RECORDING_WORDS),
        _field("course", "sitting", "Course", many=True, told=False, codec=COURSE_WORDS),
        _field("closed", "sitting", "Closed passage", many=True, told=False, audience="keeper", codec=CLOSED_WORDS),
        _field("paper", "sitting", "Paper", many=True, told=False, audience="keeper", codec=PAPER_WORDS),
    )
)
"""Every field that is built in. A new field is one row here (and in `crosswalk.dublin_core` if outputs carry it)."""


BY_FILES = ("file_name",)
"""Fields that only a scan's file tells, and nobody by hand."""


def codec_fields() -> list[str]:
    """Names of the fields whose words are more than text."""
    return [name for name, field in FIELDS.items() if field.codec is not TEXT]


def field_of(name: str, kind: Kind) -> Field:
    """The field's row. Raises WrongUse if there is no such field for that kind of thing."""
    field = FIELDS.get(name)
    if field is None or kind not in field.kinds:
        fields = (row for row in FIELDS.values() if row.told and kind in row.kinds and row.name not in BY_FILES)
        tellable = ", ".join(row.name for row in fields)
        article = "an" if kind[0] in "aeiou" else "a"
        raise WrongUse(
            f"There is no field “{name[:40]}” for {article} {kind}.", f"Fields that can be told: {tellable}."
        )
    return field
