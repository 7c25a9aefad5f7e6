"""Scans that are cut off or broken: each file is decoded whole once after intake, and nothing of a damaged one is lost.

`look_closer` notes of each scan how it looks (64 bits, `disk.pictures.looks_hash`, by which look-alikes are known), or
that its file is damaged (`disk.decoding`, `disk.png_chunks`, `formats.jpeg_end`, `formats.jpeg_hole`). It may be
stopped, and goes on the next time. What is said of damage is a rule about the record
(`core.rules.one_item.damaged_scans`).
"""

from collections.abc import Sequence

from boxlore.core.errors import BoxloreError, CouldNot
from boxlore.core.fields.pictures import LOOKS_WORDS
from boxlore.core.findings import Finding
from boxlore.core.rules.one_item import RecordRule, damaged_scans, unseen_pages
from boxlore.core.statements import Kind, Subject
from boxlore.disk.decoding import Damaged, NoReader, opened
from boxlore.disk.pictures import looks_hash
from boxlore.disk.png_chunks import is_sound
from boxlore.disk.regular_file import open_regular
from boxlore.formats.jpeg_end import has_end
from boxlore.formats.jpeg_hole import has_hole
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, Selection, records
from boxlore.tasks.collection.screen_previews import previews

BATCH = 100


def look_closer(collection: Collection, progress: Progress = QUIET) -> int:
    """Note how each scan looks, for those where it is not noted yet. Returns how many were looked at.

    What the machine cannot read now (a disk that is not there, a HEIC without its library) is tried again next time.
    """
    done = looked_at(collection)
    waiting = [(ident, facts.path) for ident, facts in collection.store.scans() if ident not in done]
    progress.begin("Comparing pictures", len(waiting))
    count = 0
    for start in range(0, len(waiting), BATCH):
        act = collection.act("how the scans look")
        for ident, path in waiting[start : start + BATCH]:
            if progress.stopped():
                break
            if looks := looks_words(collection, path):
                act.state(Subject(Kind.SCAN, ident), "looks", looks)
            progress.step()
            count += 1
        act.done()
        if progress.stopped():
            break
    return count


def looks_words(collection: Collection, name: str) -> str:
    """The words of how a scan looks, '' where the machine cannot read it."""
    path = collection.folder / name
    try:
        bits = looks_hash(path, previews())
        with open_regular(path) as file:
            return LOOKS_WORDS.write(bits if has_end(file) and not has_hole(file) and is_sound(file) else None)
    except Damaged:
        return LOOKS_WORDS.write(None)
    except (BoxloreError, OSError):
        return ""


def unseen_lines(collection: Collection) -> list[str]:
    """A sentence for each kind of picture that is kept here and that this machine cannot show, with what to do."""
    done, kinds = looked_at(collection), dict[str, list[NoReader]]()
    for ident, facts in collection.store.scans():
        if ident in done:
            continue
        try:
            with opened(collection.folder / facts.path):
                pass
        except NoReader as missing:
            kinds.setdefault(missing.what_to_do, []).append(missing)
        except CouldNot:
            pass  # of a disk that is not there: the scan is read again another day
    return [
        f"Kept, and not shown: {missing[0]}{f' So with {len(missing) - 1} more.' if missing[1:] else ''}"
        for missing in kinds.values()
    ]


def looked_at(collection: Collection) -> dict[str, int | None]:
    """How each scan looks that was looked at, by its id; None where its file is damaged."""
    return {
        ident: LOOKS_WORDS.read(statement.words)
        for ident, rows in collection.store.subjects(Kind.SCAN)
        for statement, _ in rows
        if statement.field == "looks"
    }


def damage_findings(collection: Collection, numbers: Sequence[str] | None = None) -> list[tuple[str, Finding]]:
    """(item's number, finding) of each damaged scan in whose place no whole one came; of these items, or of all."""
    return _findings(collection, numbers, [damaged_scans] if _some_are_damaged(collection) else [])


def intake_findings(collection: Collection, numbers: Sequence[str]) -> list[tuple[str, Finding]]:
    """The same of what an intake took, and of each file of several pages, of which only the first is seen."""
    rules: list[RecordRule] = [damaged_scans] if _some_are_damaged(collection) else []
    if any("pages: " in words for _, _, words in collection.store.words_of(("embedded",))):
        rules.append(unseen_pages)
    return _findings(collection, numbers, rules)


def _some_are_damaged(collection: Collection) -> bool:
    return any(LOOKS_WORDS.or_none(words) is None for _, _, words in collection.store.words_of(("looks",)))


def _findings(
    collection: Collection, numbers: Sequence[str] | None, rules: Sequence[RecordRule]
) -> list[tuple[str, Finding]]:
    if not rules or (numbers is not None and not numbers):
        return []
    chosen = EVERYTHING if numbers is None else Selection(items=tuple(numbers))
    return [
        (record.number, finding)
        for record in records(collection, chosen)
        for rule in rules
        for finding in rule(record, {})
    ]
