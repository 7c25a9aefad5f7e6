"""What leads from a caption back to the thing: its number, where it is kept now, and what an archive calls it."""

from collections.abc import Iterable

from boxlore.core.crosswalk.captions import PLAIN, Style
from boxlore.core.records.item_record import Record
from boxlore.core.wording.catalogue import ENGLISH, Say, to_say


def reference(record: Record, style: Style = PLAIN) -> str:
    """`TRA-0042 · Box 3 · Folder 12 · Item 4 · archive P-991`: the number, where the item is kept now, and what an
    archive that has it calls it."""
    where = place_kept(record, style.say)
    return " · ".join(part for part in (record.number, *where, archives_own(record, style)) if part)


def place_kept(record: Record, say: Say = ENGLISH) -> list[str]:
    """`Box 3`, `Folder 12`, `Item 4`: where the item is kept now, from the outermost container inward."""
    if record.mark is None:
        return []
    item = [say("Item {label}", label=record.mark.item)] if record.mark.item else []
    return [*containers(record.mark.path, say), *item]


_CONTAINERS = {
    "box": to_say("Box {label}"), "folder": to_say("Folder {label}"), "album": to_say("Album {label}"),
    "sleeve": to_say("Sleeve {label}"), "page": to_say("Page {label}"),
}  # fmt: skip


def container(kind: str, label: str, say: Say = ENGLISH) -> str:
    """`Box 3`: a container by its kind (a member of `marks.KINDS`) and label."""
    return say(_CONTAINERS[kind], label=label) if kind in _CONTAINERS else f"{kind.capitalize()} {label}"


def containers(path: Iterable[tuple[str, str]], say: Say = ENGLISH) -> list[str]:
    """`Box 3`, `Folder 12`: the containers of a mark's path."""
    return [container(kind, label, say) for kind, label in path]


def archives_own(record: Record, style: Style = PLAIN) -> str:
    """`archive P-991`; nothing where no archive has given a reference."""
    references = [view.words.strip() for view in record.all("archive_reference") if view.words.strip()]
    return style.say("archive {reference}", reference=style.say.listed(references)) if references else ""
