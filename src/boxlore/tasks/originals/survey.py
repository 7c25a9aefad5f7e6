"""What a survey notes of each item, and the lists made of it: what to do, what to buy, what to have scanned."""

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.cells import write_row
from boxlore.core.fields.originals import NOTED_WORDS, SIZE_WORDS, Noted, typed_size
from boxlore.core.fields.plain_values import DAY_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import Finding, several
from boxlore.core.originals.kinds import typed_kind
from boxlore.core.originals.survey_lists import ScanningLine, Surveyed, WorkLine, scan_order, shop_list, work_list
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.sheets.work_lists import ListTable, Page, make_list
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.output_paths import write_output
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, Selection, check_chosen, record_of, records
from boxlore.tasks.originals.housing_changes import put
from boxlore.tasks.originals.housing_check import Ground, check_scans, ground_of, item_findings
from boxlore.tasks.originals.housing_now import everything_in, house_of

WRITING = "writing on the back, not yet read"
"""Kept as an inscription of the verso, until somebody reads the writing and tells it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SurveyAnswer:
    """What is noted of one item. None leaves a field as it is; a list says all that is so now, () nothing.

    `size` is width by height in mm, such as `108 x 165`. `writing`: there is writing on the back.
    """

    enclosure: str | None = None
    attached: tuple[str, ...] | None = None
    condition: tuple[str, ...] | None = None
    size: str | None = None
    kind: str | None = None
    writing: bool = False


_SHOWN: Mapping[type, str] = {
    str: 'words in quotation marks, such as "polyester sleeve"',
    list: 'a list of words, such as ["foxing", "curl"]; [] for nothing',
    bool: "true where there is writing on the back; what is written is told with: boxlore tell ITEM inscription",
}
"""What may stand behind a key of an answer."""


def read_answer(text: str) -> SurveyAnswer:
    """An answer from the text of a JSON object with the keys of SurveyAnswer. Raises WrongUse, which names them."""
    names = "enclosure, attached, condition, size, kind, writing"
    try:
        data = json.loads(text)
    except ValueError:
        raise WrongUse(
            f"“{text[:60]}” is no JSON object.", 'Write it like {"enclosure": "polyester sleeve"}.'
        ) from None
    kinds = {"enclosure": str, "size": str, "kind": str, "attached": list, "condition": list, "writing": bool}
    for name, value in data.items() if isinstance(data, dict) else [("", None)]:
        if name not in kinds:
            raise WrongUse(f"“{text[:60]}” is no answer.", f"Known: {names}; attached and condition are lists.")
        of_words = not isinstance(value, list) or all(isinstance(words, str) for words in value)
        if not isinstance(value, kinds[name]) or not of_words:
            shown = json.dumps(value, ensure_ascii=False)[:40]
            raise WrongUse(f"“{name}” cannot be {shown}.", f"Write {_SHOWN[kinds[name]]}.")

    def listed(name: str) -> tuple[str, ...] | None:
        return tuple(map(str, data[name])) if name in data else None

    return SurveyAnswer(
        enclosure=data.get("enclosure"),
        attached=listed("attached"),
        condition=listed("condition"),
        size=data.get("size"),
        kind=data.get("kind"),
        writing=data.get("writing", False),
    )


def note(collection: Collection, item: str, answer: SurveyAnswer) -> str:
    """Keep one item's answer as one act. Returns the act's id, '' if nothing has changed.

    A statement that is no longer so is replaced, and stays in the log. Raises WrongUse for a size that is none.
    """
    subject = Subject(Kind.ITEM, item)
    act = collection.act(f"survey of {collection.store.number_of(item)}")
    if answer.kind is not None:
        put(act, subject, "kind", typed_kind(answer.kind) if answer.kind else "")
    if answer.size is not None:
        put(act, subject, "size", _size(answer.size) if answer.size else "")
    if answer.enclosure is not None:
        put(act, subject, "enclosure", answer.enclosure)
    for name, words in (("attached", answer.attached), ("condition", answer.condition)):
        if words is not None:
            _whole(act, subject, name, words)
    if answer.writing and not _has_writing(record_of(collection, item)):
        source = Source(Said.INSCRIPTION, "verso")
        act.state(subject, "inscription", WRITING, language="en", source=source)
    put(act, subject, "surveyed", DAY_WORDS.write(collection.clock.today()))
    act.done()
    return act.id if act.statements else ""


def _size(text: str) -> str:
    """The words of a size of at least two sides. Raises WrongUse."""
    return SIZE_WORDS.write(typed_size(text))


def _whole(act: Act, subject: Subject, name: str, wanted_words: Sequence[str]) -> None:
    """Make a field of many statements hold exactly these words.

    Each new statement replaces one that is no longer so; for those left over, `no tape` replaces `tape`.
    """
    stood = [statement for statement, _ in act.collection.store.statements(subject) if statement.field == name]
    gone = [statement for statement in stood if statement.words not in wanted_words]
    for words in wanted_words:
        if words not in {statement.words for statement in stood}:
            replaces = gone.pop(0).id if gone else ""
            act.state(subject, name, words, audience=FIELDS[name].audience, replaces=replaces)
    for statement in gone:
        noted = NOTED_WORDS.read(statement.words)
        if noted.so:
            words = NOTED_WORDS.write(Noted(noted.what, so=False))
            act.state(subject, name, words, audience=FIELDS[name].audience, replaces=statement.id)


def _has_writing(record: Record) -> bool:
    return any(
        view.source.said is Said.INSCRIPTION and view.source.ref == "verso" for view in record.all("inscription")
    )


def items_of_box(collection: Collection, mark: str) -> list[str]:
    """The ids of the items in a container, in the order in which they lie; without a mark, of all items.

    Raises WrongUse if there is no such container, or nothing in it.
    """
    if not mark:
        return [ident for _, ident in collection.store.items()]
    house = house_of(collection)
    item_ids = everything_in(house, house.named(mark))
    if not item_ids:
        raise WrongUse(f"Nothing is noted to be in {mark}.", "Things are taken in by boxlore intake --box.")
    return item_ids


def surveyed(collection: Collection, selection: Selection = EVERYTHING) -> list[Surveyed]:
    """Every item with what was noted of it, and the findings about it and its scans."""
    ground = ground_of(collection)
    coarse: dict[str, list[Finding]] = {}
    for located in check_scans(collection, selection):
        coarse.setdefault(located.number, []).append(located.finding)
    return [_surveyed(collection, record, ground, coarse) for record in records(collection, selection)]


def _surveyed(collection: Collection, record: Record, ground: Ground, scans: dict[str, list[Finding]]) -> Surveyed:
    return Surveyed(
        number=record.number,
        mark=record.mark.short if record.mark else "",
        kind=record.kind,
        size_mm=record.size_mm,
        enclosure=record.words("enclosure"),
        sides=frozenset(scan.side for scan in record.scans),
        writing=_has_writing(record),
        findings=(*item_findings(collection, record, ground), *scans.get(record.number, ())),
    )


@dataclass(frozen=True, slots=True)
class Lists:
    """The three lists of a survey: what to do, what to buy, what to have scanned."""

    work: tuple[WorkLine, ...]
    buy: tuple[WorkLine, ...]
    scan: tuple[ScanningLine, ...]


def lists(collection: Collection, selection: Selection = EVERYTHING) -> Lists:
    """Make the three lists from what was noted of the items."""
    check_chosen(collection, selection)
    items = surveyed(collection, selection)
    return Lists(tuple(work_list(items)), tuple(shop_list(items)), tuple(scan_order(items)))


JOB_HEADING = ("what", "count", "items", "why")
ORDER_HEADING = ("number", "mark", "kind", "size mm", "ppi", "sides", "pixels")


def job_rows(jobs: Iterable[WorkLine]) -> list[list[str]]:
    """The rows of a table of what to do or to buy, under JOB_HEADING."""
    return [[job.what, str(job.count), " ".join(job.items), job.why] for job in jobs]


def order_rows(orders: Iterable[ScanningLine]) -> list[list[str]]:
    """The rows of a scanning order as a table, under ORDER_HEADING."""
    return [
        [order.number, order.mark, order.kind, order.size, str(order.ppi), order.sides, order.pixels]
        for order in orders
    ]


def write_work(collection: Collection, survey_lists: Lists, out: Path) -> None:
    """Write what to do and what to buy to `out`, a .csv or a .pdf. Raises WrongUse for another ending."""
    if _is_csv(out):
        rows = [["list", *JOB_HEADING]]
        rows += [["do", *row] for row in job_rows(survey_lists.work)] + [
            ["buy", *row] for row in job_rows(survey_lists.buy)
        ]
        _write_csv(collection, out, rows)
        return
    widths = (2.2, 0.7, 3.2, 4.2)
    heading = ("What", "Count", "Items", "Why")
    parts = [
        ListTable(title="To do", heading=heading, rows=job_rows(survey_lists.work), widths=widths),
        ListTable(title="To buy", heading=heading, rows=job_rows(survey_lists.buy), widths=widths),
    ]
    _write_pdf(collection, Page(title=f"Work list: {collection.settings.title}", parts=parts), out)


def write_order(collection: Collection, survey_lists: Lists, out: Path) -> None:
    """Write the order for a scanning shop to `out`, a .csv or a .pdf. Raises WrongUse for another ending."""
    if _is_csv(out):
        _write_csv(collection, out, [list(ORDER_HEADING), *order_rows(survey_lists.scan)])
        return
    part = ListTable(
        title=several(len(survey_lists.scan), "original"),
        heading=("Number", "Mark", "Kind", "Size, mm", "ppi", "Sides", "Pixels a side"),
        rows=order_rows(survey_lists.scan),
        widths=(1.4, 1, 1, 1.2, 0.7, 1.4, 1.4),
    )
    before = (
        "Scan each original at its own size, in colour, 8 or 16 bits a channel, as TIFF, nothing enlarged, sharpened "
        "or cleaned. Name each file by its number, with _f for the front and _b for the back. Keep their order.",
    )
    page = Page(title=f"Scanning order: {collection.settings.title}", parts=[part], before=before)
    _write_pdf(collection, page, out)


def write_receipt(
    collection: Collection, numbers: Sequence[str], lender: str, days: tuple[date, date | None], out: Path
) -> None:
    """Write the receipt that a lender gets to `out` (a .pdf): what was lent, by whom, to whom, until when, and lines to
    sign. `days` are the day of the receipt, and the day on which the items are due back (None: not agreed).
    """
    settings, (today, due) = collection.settings, days
    loaned = records(collection, Selection(items=tuple(numbers)))
    rows = [
        [record.number, record.kind, _measure(record), "; ".join(view.words for view in record.all("condition"))]
        for record in loaned
    ]
    part = ListTable(
        title=several(len(rows), "original"),
        heading=("Number", "Kind", "Size, mm", "Condition when received"),
        rows=rows,
        widths=(1.2, 1, 1, 3),
    )
    holder = settings.holder or settings.title
    before = (
        f"Received on loan from {lender} by {holder} on {today.isoformat()}.",
        f"Due back: {due.isoformat() if due else 'not agreed'}.",
    )
    after = ("The originals stay the lender’s. They are kept in their order and given back as they were received.",)
    page = Page(title="Receipt of a loan", parts=[part], before=before, after=after, sign=("Lender", f"For {holder}"))
    _write_pdf(collection, page, out, today)


def _measure(record: Record) -> str:
    return " × ".join(f"{value:g}" for value in record.size_mm)


def _is_csv(out: Path) -> bool:
    if out.suffix.casefold() not in (".csv", ".pdf"):
        raise WrongUse(f"{out.name} is neither .csv nor .pdf.", "Name the file with one of these endings.")
    return out.suffix.casefold() == ".csv"


def _write_csv(collection: Collection, out: Path, rows: Sequence[Sequence[str]]) -> None:
    write_output(collection, out, "".join(map(write_row, rows)).encode("utf-8-sig"))


def _write_pdf(collection: Collection, page: Page, out: Path, on: date | None = None) -> None:
    settings = collection.settings
    day = on or collection.clock.today()
    write_output(collection, out, make_list(page, language=settings.language, paper=settings.paper, printed_on=day))
