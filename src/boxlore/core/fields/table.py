"""Every field that a statement can be about: which kinds of thing have it, and how its words are taken."""

from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind


@dataclass(frozen=True, slots=True)
class Field:
    """One field: which kinds of thing have it, whether it gathers many, and how its words are read.

    `told` fields are what somebody says; the others are how things are kept, written by the tasks.
    """

    name: str
    kinds: tuple[Kind, ...]
    label: str
    many: bool = False
    reads: str = ""
    told: bool = True
    audience: str = "anyone"


def _field(name: str, kinds: str, label: str, **more: object) -> Field:
    return Field(name, tuple(Kind(kind) for kind in kinds.split()), label, **more)  # type: ignore[arg-type]  # one row of FIELDS, spelled short


OWN = "own-"
"""How the names of a collection's own fields begin: what a keeper asks besides, in prompts of their own."""


class Fields(dict[str, Field]):
    """The fields by name. A collection's own ones are told of items, and gather nothing."""

    def __missing__(self, name: str) -> Field:
        if not name.startswith(OWN) or not all(part.isalnum() for part in name.split("-")):
            raise KeyError(name)
        return Field(name, (Kind.ITEM,), name.removeprefix(OWN).replace("-", " ").capitalize())


FIELDS: Fields = Fields(
    (field.name, field)
    for field in (
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
        _field("archive_reference", "item", "The archive's reference", many=True),
        _field("accession", "collection", "Accession number", many=True),
        _field("custody", "collection", "How it came down", many=True),
        _field("care", "item", "Care note"),
        _field("condition", "item container", "Condition", many=True),
        _field("enclosure", "item", "Enclosure"),
        _field("attached", "item", "Still attached", many=True),
        _field("owner", "item container", "Owner", audience="family"),
        _field("lender", "item container", "Lent by", audience="family"),
        _field("donor", "item container", "Given by", audience="family"),
        _field("note", "item person event place sitting container", "Keeper's note", many=True, audience="keeper"),
        _field("keyword", "item", "Keyword", many=True),
        # what is told of people, events, places and sittings
        _field("name", "person event place location", "Name", many=True),
        _field("given", "person", "Given name"),
        _field("family", "person", "Family name"),
        _field("born_as", "person", "Born as"),
        _field("married_as", "person", "Married as", many=True),
        _field("nickname", "person", "Called", many=True),
        _field("patronymic", "person", "Patronymic"),
        _field("honorific", "person", "Title before the name", many=True),
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
        _field("spouse", "person", "Married to", many=True, reads="person"),
        _field("married", "person", "Married on", many=True, reads="date"),
        _field("partner", "event", "Married", many=True, reads="person"),
        _field("called_then", "place", "Called then", many=True),
        _field("coordinates", "place", "Coordinates"),
        _field("narrator", "sitting", "Narrator", many=True, reads="person"),
        _field("interviewer", "sitting", "Interviewer"),
        _field("agreement", "sitting", "Agreement"),
        _field("consent", "person sitting", "Consent", many=True),
        # how things are kept
        _field("number", "item", "Number", told=False),
        _field("kind", "item container location event", "Kind", told=False),
        _field("kept", "item", "Kept in", told=False),
        _field("found_in", "item", "Found in", told=False),
        _field("row", "item", "Row and place", many=True, told=False),
        _field("audience", "item person", "Who may see it", many=True, told=False),
        _field("merged_into", "person", "Same person as", told=False, audience="keeper"),
        _field("different", "person", "Not the same as", many=True, told=False, audience="keeper"),
        _field("asked", "item sitting", "To ask", many=True, told=False, audience="keeper"),
        _field("size", "item container", "Size in mm", told=False),
        _field("due_back", "item container", "Due back", told=False),
        _field("returned", "item container", "Given back", told=False),
        _field("materials", "container", "Materials", told=False),
        _field("capacity", "container", "Holds up to", told=False),
        _field("tested", "container", "Test mark", told=False),
        _field("fullness", "container", "How full", told=False),
        _field("surroundings", "container location", "Surroundings", many=True, told=False),
        _field("climate", "location", "Climate log", many=True, told=False),
        _field("measured", "location", "Measured", many=True, told=False),
        _field("surveyed", "item", "Surveyed", told=False),
        _field("asked", "item", "To ask", many=True, told=False, audience="keeper"),
        _field("set_aside", "item", "Set aside", told=False, audience="keeper"),
        _field("file", "scan", "File", told=False),
        _field("shows", "scan", "Shows", many=True, told=False),
        _field("role", "scan", "Role", told=False),
        _field("looks", "scan", "How it looks", told=False, audience="keeper"),
        _field("embedded", "scan", "Found in the file", told=False, audience="keeper"),
        _field("wanted", "item", "Wanted by the archive", told=False, audience="keeper"),
        _field("fixity", "collection scan", "Fixity event", many=True, told=False, audience="keeper"),
        _field("scan", "marker", "Scan", told=False),
        _field("area", "marker", "Where on the picture", told=False),
        _field("label", "container", "Label", told=False),
        _field("inside", "container location place", "Inside", told=False),
        _field("link", "relation", "Relation", told=False),
        _field("shown", "sitting", "Shown", many=True, told=False),
        _field("recording", "sitting", "Recording", many=True, told=False),
        _field("course", "sitting", "Course", many=True, told=False),
        _field("closed", "sitting", "Closed passage", many=True, told=False, audience="keeper"),
        _field("paper", "sitting", "Paper", many=True, told=False, audience="keeper"),
    )
)
"""Every field that is built in. A new field is one row here (in `core.crosswalk.archives` too if outputs carry it)."""


def field_of(name: str, kind: Kind) -> Field:
    """The field's row. Raises WrongUse if there is no such field for that kind of thing."""
    try:
        field = FIELDS[name]
    except KeyError:
        field = None
    if field is None or kind not in field.kinds:
        told = ", ".join(row.name for row in FIELDS.values() if row.told and kind in row.kinds)
        raise WrongUse(f"There is no field “{name[:40]}” for a {kind}.", f"Fields that can be told: {told}.")
    return field
