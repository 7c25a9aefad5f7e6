"""The words about scans, and about what ties pictures and people to each other."""

import re
from dataclasses import dataclass

from boxlore.core.fields.areas import Area, area_of
from boxlore.core.fields.codec import Codec, as_json, facts_of, one_word, whole
from boxlore.core.fields.quads import is_quad

ID_LENGTH = 36
"""Letters of an id (RFC 9562, 4): the SQL below cuts links by it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FileFacts:
    """A scan's file: its path relative to the collection, with slashes, and what it was when it was taken in.

    `width` and `height` in pixels as stored, `ppi` in pixels an inch, or 0 where the file does not say; `orientation`
    by Exif (1: upright, and where it was not noted).
    """

    path: str
    sha256: str
    bytes: int
    width: int
    height: int
    ppi: float = 0
    media_type: str
    orientation: int = 1


def _write_file(file: FileFacts) -> str:
    return as_json(
        {
            "path": file.path,
            "sha256": file.sha256,
            "bytes": file.bytes,
            "width": file.width,
            "height": file.height,
            "ppi": file.ppi,
            "media_type": file.media_type,
            **({"orientation": file.orientation} if file.orientation != 1 else {}),
        }
    )


def _parse_file(words: str) -> FileFacts:
    facts = facts_of(words)
    return FileFacts(
        path=facts.text("path"),
        sha256=facts.text("sha256"),
        bytes=facts.whole("bytes"),
        width=facts.whole("width"),
        height=facts.whole("height"),
        ppi=facts.number("ppi", 0),
        media_type=facts.text("media_type"),
        orientation=facts.whole("orientation", 1),
    )


FILE_WORDS: Codec[FileFacts] = Codec(
    "file of a scan",
    'Write a JSON object with "path", "sha256", "bytes", "width", "height" and "media_type".',
    _write_file,
    _parse_file,
)

FILE_SHA256_SQL = "json_extract(words, '$.sha256')"
"""SQLite: the SHA-256 of a scan's file."""


QUARTERS = (0, 90, 180, 270)
"""By how many degrees a picture may be turned."""

AS_SCANNED, ALTERED = "as-scanned", "altered"
"""The roles of a scan. An altered version is coloured or retouched: no output may pass it off as the original."""
EARLIER = "earlier"
"""The role of a part of a sheet for an item that has a better scan of its own now: it is kept, and shown nowhere."""


@dataclass(frozen=True, slots=True)
class Shows:
    """A scan shows an item: which side of it (`recto`, `verso`), and on which part; None for the whole picture.

    `turn` is by how many degrees to the right the keeper turned it, beyond what its file asks for. `corners` are the
    eight numbers of what lies aslant in that part (see `core.fields.quads`), or none. `role` is that of this part
    alone, where it is another than that of the scan; '' where it is the same.
    """

    item: str
    side: str
    area: Area | None = None
    turn: int = 0
    corners: tuple[float, ...] = ()
    role: str = ""


def _write_shows(shows: Shows) -> str:
    area = list(shows.area.numbers) if shows.area else None
    turned = {"turn": shows.turn} if shows.turn else {}
    aslant = {"corners": list(shows.corners)} if shows.corners else {}
    role = {"role": shows.role} if shows.role else {}
    return as_json({"item": shows.item, "side": shows.side, "area": area, **turned, **aslant, **role})


def _parse_shows(words: str) -> Shows:
    facts = facts_of(words)
    numbers, corners = facts.member("area") or [], facts.member("corners") or []
    if not isinstance(numbers, list) or not isinstance(corners, list):
        raise ValueError(words)
    turn = facts.whole("turn", 0)
    role = facts.text("role") if "role" in facts else ""
    if turn not in QUARTERS or role not in ("", AS_SCANNED, ALTERED, EARLIER):
        raise ValueError(words)
    area = area_of(numbers) if numbers else None
    return Shows(one_word(facts.text("item")), facts.text("side"), area, turn, _aslant(corners, area), role)


def _aslant(numbers: list[object], area: Area | None) -> tuple[float, ...]:
    """The corners of what lies aslant. Raises ValueError for anything else than four in a part of a picture."""
    if not numbers:
        return ()
    points = [area_of(numbers[at : at + 2]) for at in range(0, len(numbers), 2)]
    corners = tuple(part for point in points for part in point.numbers)
    if area is None or len(corners) != 8 or not is_quad(corners):
        raise ValueError(numbers)
    return corners


SHOWS_WORDS: Codec[Shows] = Codec(
    "picture of an item", 'Write a JSON object with "item", "side" and "area".', _write_shows, _parse_shows
)
"""A JSON object; `area` is null, missing or an empty list for the whole picture, `turn` is missing where it is 0,
`corners` where nothing lies aslant, and `role` where it is that of the scan."""

SHOWS_ITEM_SQL = "json_extract(words, '$.item')"
"""SQLite: the item that a scan shows."""


@dataclass(frozen=True, slots=True)
class CameFrom:
    """Where a scan's file lay, and how it was called without the suffix of its side, before it was copied in.

    Both as the first 16 hexadecimal digits of the SHA-256 of the text: two can be compared, and nobody's name is kept.
    """

    folder: str
    name: str


_SHORT_DIGEST = re.compile("[0-9a-f]{16}")


def _write_came_from(came: CameFrom) -> str:
    return f"{came.folder} {came.name}"


def _parse_came_from(words: str) -> CameFrom:
    folder, name = words.split(" ")
    if not (_SHORT_DIGEST.fullmatch(folder) and _SHORT_DIGEST.fullmatch(name)):
        raise ValueError(words)
    return CameFrom(folder, name)


CAME_FROM_WORDS: Codec[CameFrom] = Codec(
    "place that a file came from",
    "Write 16 hexadecimal digits of its folder, a blank and 16 of its name.",
    _write_came_from,
    _parse_came_from,
)
"""`folder name`, each in 16 hexadecimal digits."""


@dataclass(frozen=True, slots=True)
class Embedded:
    """The text found in a scan's file: (name, words) of each line, such as (`caption`, `Reval, 1908`)."""

    lines: tuple[tuple[str, str], ...]

    @property
    def are_struck(self) -> bool:
        """Whether the words of this file were struck: nothing that the file says may be taken from it again."""
        return bool(self.struck_file)

    @property
    def struck_file(self) -> str:
        """The SHA-256 of the file whose words were struck, or an empty string."""
        return next((words for name, words in self.lines[:1] if name == STRUCK), "")

    @property
    def texts(self) -> tuple[str, ...]:
        """The words that a person wrote into the file, each line by itself."""
        return tuple(words for name, words in self.lines if name.partition(".")[0] in WRITTEN_BY_PEOPLE)


STRUCK = "struck"
"""The name of the line that stands in place of struck words, with the SHA-256 of the file that says them."""

WRITTEN_BY_PEOPLE = ("title", "headline", "caption", "people", "keywords", "place", "by", "rights", "profile", "also")
"""Names of lines that hold a person's own words; the others are dates and what our reader says. Behind the name may
stand a language: `title.et`."""


OF_THE_MAKER = ("by", "rights", "profile")
"""Names of lines that tell who made a file, and by which machine: the same in each of a maker's files."""


def _write_embedded(embedded: Embedded) -> str:
    return "\n".join(f"{name}: {' '.join(words.splitlines())}" for name, words in embedded.lines)


def _parse_embedded(words: str) -> Embedded:
    parted = [line.partition(": ") for line in words.splitlines()]
    return Embedded(tuple((name, rest) if colon else ("", name) for name, colon, rest in parted))


EMBEDDED_WORDS: Codec[Embedded] = Codec(
    "text of a file", "Write lines of a name, a colon and words.", _write_embedded, _parse_embedded
)
"""`name: words`, line by line. Any words can be read; a line without a name has an empty one."""

STRUCK_SQL = f"substr(words, 1, {len(STRUCK) + 2}) = '{STRUCK}: '"
"""Whether the words of a row say that those of the file were struck."""


def words_struck(sha256: str) -> str:
    """What stands in place of the words of a file, which were struck."""
    return EMBEDDED_WORDS.write(Embedded(((STRUCK, sha256),)))


_LOOKS = re.compile("[0-9a-f]{16}")


def _write_looks(bits: int | None) -> str:
    return "-" if bits is None else f"{bits:016x}"


def _parse_looks(words: str) -> int | None:
    if words == "-":
        return None
    if not _LOOKS.fullmatch(words):
        raise ValueError(words)
    return int(words, 16)


LOOKS_WORDS: Codec[int | None] = Codec(
    "look of a scan", "Write 16 hexadecimal digits, or - for a damaged file.", _write_looks, _parse_looks
)
"""64 bits of how a picture looks, in 16 hexadecimal digits; `-` where the file is damaged."""


@dataclass(frozen=True, slots=True)
class Link:
    """A relation between two items (ids): the first is `kind` of the second, such as `attached_to`."""

    first: str
    second: str
    kind: str


def _write_link(link: Link) -> str:
    return f"{link.first} {link.second} {link.kind}"


def _parse_link(words: str) -> Link:
    first, second, kind = words.split(" ")
    if not len(first) == len(second) == ID_LENGTH:
        raise ValueError(words)
    return Link(first, second, one_word(kind))


LINK_WORDS: Codec[Link] = Codec(
    "relation of two items", "Write the ids of both and the kind of relation.", _write_link, _parse_link
)
"""`first second kind`, one blank between."""

LINK_FIRST_SQL = f"substr(words, 1, {ID_LENGTH})"
"""SQLite: the item that a link is said of."""

LINK_SECOND_SQL = f"substr(words, {ID_LENGTH + 2}, {ID_LENGTH})"
"""SQLite: the item that it is related to."""


@dataclass(frozen=True, slots=True)
class RowPosition:
    """Where somebody stands in a picture: the statement that names them, the row (empty for the only one), and the
    position from the left, from 1, or from the right, from -1."""

    statement: str
    row: str
    position: int


def _write_row(place: RowPosition) -> str:
    return f"{place.statement} {place.row} {place.position}"


def _parse_row(words: str) -> RowPosition:
    statement, _, rest = words.partition(" ")
    row, _, position = rest.rpartition(" ")
    place = whole(position.removeprefix("-"))
    return RowPosition(one_word(statement), row, -place if position.startswith("-") else place)


ROW_WORDS: Codec[RowPosition] = Codec(
    "position in a row", "Write the statement's id, the row and the position in it.", _write_row, _parse_row
)
"""`statement row position`; the row may be empty or of several words."""
