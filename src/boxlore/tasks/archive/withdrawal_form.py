"""The request to withdraw: what `metadata/withdraw.csv` of an update asks of an archive, on paper, to be signed back.

It holds no words that were told and names nobody of whom anything is told, as that table does.
"""

from collections.abc import Iterable, Iterator, Sequence

from boxlore.core.findings import several
from boxlore.sheets.transfer_papers import withdrawal_pdf
from boxlore.tasks.archive.making import Making
from boxlore.tasks.archive.transfer_context import with_contact
from boxlore.tasks.archive.transfer_updates import WITHDRAW, Earlier

REQUEST = "forms/request-to-withdraw.pdf"
MOST_NAMED = 60
"""Items that are named one by one; the table names all."""
_TO_DO = {
    "delete": "To delete",
    "replace": "To replace by what this update brings",
    "return": "To return",
    "keep": "To keep",
}
_SINCE = {
    "struck": "words in it were struck for good",
    "consent taken back": "a consent was taken back",
    "kept": "the family keeps it now",
    "given again": "it was asked back, and is given again",
    "lent": "it belongs to somebody who lent it",
    "closed": "it is closed now",
    "corrected": "it was corrected",
    "withdrawn": "it is no longer in the collection",
}


def put_request(making: Making, earlier: Earlier, rows: Sequence[Sequence[str]]) -> None:
    """Put the request into the part, if there is anything to ask for and the archive takes forms."""
    if not rows or not making.archive.wants("forms"):
        return
    facts, archive = making.facts, making.archive
    named = "; ".join(f"the bag “{bag.name}”, {bag.identifier}, made {bag.made[:10]}" for bag in earlier.revised)
    pdf = withdrawal_pdf(
        list(_asked(rows)),
        donor=with_contact(facts.holder, facts.contact),
        recipient=with_contact(archive.repository, archive.contact),
        of=f"{facts.title}: the update {making.ident} of {facts.on_day}, which revises {named}. {WITHDRAW} tells each.",
        on_day=facts.on_day,
        paper=making.collection.settings.paper,
    )
    making.put(REQUEST, "what is to be deleted, replaced or returned, to sign and send back", [pdf])


def _asked(rows: Iterable[Sequence[str]]) -> Iterator[tuple[str, str]]:
    """(heading, words) of everything that is asked for one reason."""
    grouped: dict[tuple[str, str], list[Sequence[str]]] = {}
    for row in rows:
        grouped.setdefault((row[0], str(row[1])), []).append(row)
    for (what, why), asked in grouped.items():
        yield f"{_TO_DO[what]}, since {_SINCE[why]}", " ".join(_words(asked))


def _words(rows: Sequence[Sequence[str]]) -> Iterator[str]:
    folders = dict.fromkeys((path, transfer) for _, _, path, sha256, transfer, *_ in rows if path and not sha256)
    if folders:
        yield "Descriptions: " + "; ".join(f"{path} of {transfer}" for path, transfer in folders) + "."
    if paths := [path for _, _, path, sha256, *_ in rows if sha256]:
        yield f"{several(len(paths), 'file')}: {_listed(paths)}."
    told = [row for row in rows if not row[2]]
    if whole := [number for *_, number, _, name in told if number and not name]:
        yield f"{several(len(whole), 'item as a whole', 'items as a whole')}: {_listed(whole)}."
    if parts := sorted({number for *_, number, _, name in told if number and name}):
        yield f"Part of what is told of {several(len(parts), 'item')}: {_listed(parts)}."
    if others := sum(not row[5] for row in told):
        yield f"{several(others, 'statement')} about people, occasions, places and the whole."


def _listed(names: Sequence[str]) -> str:
    shown = ", ".join(names[:MOST_NAMED])
    return f"{shown} and {len(names) - MOST_NAMED} more" if len(names) > MOST_NAMED else shown
