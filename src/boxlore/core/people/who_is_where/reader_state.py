"""What is remembered while a text of who stands where is read (`reader`)."""

from dataclasses import dataclass
from dataclasses import field as starts

from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.tokens import Element


@dataclass(slots=True)
class Ahead:
    """A place told before the words that it belongs to."""

    number: int = 0
    position: int = 0
    from_right: int = 0
    right_words: str = ""
    side: str = ""
    side_words: str = ""
    note: str = ""
    is_beside: bool = False
    is_held: bool = False

    def add_note(self, told: str) -> None:
        """Words of whoever follows, behind those that are told of her already."""
        self.note = ", ".join(filter(None, (self.note, told)))


@dataclass(slots=True)
class Reader:
    """The state while one text is read."""

    text: str
    known: KnownNames
    items: list[Item] = starts(default_factory=list)
    words: list[Element] = starts(default_factory=list)
    notes: list[Element] = starts(default_factory=list)
    aside: list[Element] = starts(default_factory=list)
    """What somebody has with them: “with her dog”."""
    ahead: Ahead = starts(default_factory=Ahead)
    row: str = ""
    row_heads: bool = False
    """Whether the row heads a list (“Back row: …”), and stands on; one told within a sentence ends with it."""
    backwards: bool = False
    turned_row: str = ""
    """The row of which alone it is told that it is told from the right."""
    family_stays: str = ""
    """“Tamm” of “the Tamm brothers:”, for every name of this part."""
    group: int = 0
    rtl_groups: set[int] = starts(default_factory=set)
    totals: dict[str, int] = starts(default_factory=dict)
    """How many people a row has, where that is told: “five people”."""
    side_stays: str = ""
    behind: bool | None = None
    """Whether places of this part stand behind the words; None until the first one."""
    part_begins: int = 0
    joined: str = ""
    """`and` or `with` where that stood before the item that is gathered; `too` for an `and` behind a comma; `beside`
    behind whom it stands beside (`beside`)."""
    family_ahead: tuple[str, str] = ("", "")
    """“the Tamm brothers” and “Tamm”, where their names follow."""
    place_since: bool = False
    """Whether a place was told since the last item, so that what follows is no remark on it."""
    identifies: bool = False
    """Whether the next name says who the one described last is: “the girl in front is Ruth”."""
    identified: bool = False
    """Whether the item before is somebody described, told to be kin: “the girl is my sister, Ruth”."""
    placed: bool = False
    is_directed: bool = False
    """Whether it is told in which direction people are told."""
    part_absent: bool = False
    """Whether the head of this part says that whoever it names is not in the picture: “Absent: Tom”."""
    whom: str = ""
    """The words before her: “to the left of”."""
    beside_side: str = ""
    """On which side of her, if that is told: “to the left of Nora is Dot”."""
    last_absent: bool = False
    """Whether the item before is of somebody who is not in it: “except Tom and Joe”."""
    brackets_lead: bool = False
    """Whether such a number stands before its name: “[1] Anna [2] Ruth”."""
    in_case: bool = False
    """Whether `with` was told by a word behind which names change their forms."""
    mark_since: bool = True
    """Whether a mark, or a word that joins, was told since the last item."""
    previous: str = ""
    """The kind of the element before."""
    after_posture: bool = False
    """Whether it was just told that somebody stands or sits: a name that follows at once is whom she stands behind."""
    brackets_count: bool = False
    """Whether numbers in brackets are those of the people: 1 and on, each once."""
