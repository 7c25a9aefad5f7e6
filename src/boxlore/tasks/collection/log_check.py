"""Whether the database is sound and the log as it was written: each row whose sum is another is named."""

from contextlib import suppress

from boxlore.core.errors import CouldNot
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.statements import Kind
from boxlore.store.row_sums import AlteredRow
from boxlore.tasks.collection.opening import Collection

SOURCE = "BLAKE2b (RFC 7693) kept beside each row of the log"
MOST = 50
"""Rows that are named one by one; where more are altered, the file as a whole is damaged."""

_WAY_BACK = "Keep the file as it is, and bring back a backup from before (boxlore restore)."

_WHY = "the database is damaged there, or another program wrote to it"


def log_findings(collection: Collection) -> list[tuple[str, Finding]]:
    """(number of the item, finding) for damage to the file, each row of the log that is not as it was written, and
    what does not follow from the log; that is then made again at the next opening. Raises CouldNot.
    """
    store = collection.store
    altered = store.altered_rows()
    findings = [(_number_of(collection, row), _finding(row)) for row in altered[:MOST]]
    if damage := store.damage():
        words = f"{store.path} is damaged: {damage.rstrip('.')}. {_WAY_BACK}"
        findings.append(("", make_finding("log.damaged", Severity.ERROR, words, "SQLite: PRAGMA integrity_check")))
    elif what := _out_of_step(collection, is_whole=not altered):
        words = f"{what} is kept beside the log, and does not follow from it: {_WHY}."
        again = "It is made of the log again when the collection is next opened for writing."
        if not store.writable:
            again = "boxlore verify makes it anew where the collection can be written to."
        elif not store.make_projections_again():
            again = _WAY_BACK
        findings.append(("", make_finding("log.out-of-step", Severity.ERROR, f"{words} {again}", "our own rule")))
    if left := len(altered[MOST:]):
        words = f"{several(left, 'further row')} of the log {'is' if left == 1 else 'are'} not as written. {_WAY_BACK}"
        findings.append(("", make_finding("log.altered", Severity.ERROR, words, SOURCE)))
    return findings


def _out_of_step(collection: Collection, *, is_whole: bool) -> str:
    """What does not follow from the log, '' if all does. Of a log that is altered itself nothing is searched anew."""
    if not collection.store.is_in_step():
        return "Which answers hold"
    return "What a search finds" if is_whole and not collection.store.are_words_in_step() else ""


_WHAT = {
    "statement": "its words, or what is noted of them",
    "reading": "what its words were read as",
    "settlement": "which of its answers holds",
}


def _finding(row: AlteredRow) -> Finding:
    field = FIELDS.get(row.field)
    told = f"What was told as “{field.label if field else row.field}” of the {row.kind or 'subject'} {row.subject}"
    words = f"{told} is not as it was written ({_WHAT[row.table]}): {_WHY}. {_WAY_BACK}"
    return make_finding("log.altered", Severity.ERROR, words, SOURCE)


def _number_of(collection: Collection, row: AlteredRow) -> str:
    """The number of the item that an altered row is about; '' of none, and where it is damaged too."""
    with suppress(CouldNot):
        return collection.store.number_of(row.subject) if row.kind == Kind.ITEM else ""
    return ""


def said_of_older(collection: Collection) -> str:
    """A sentence about the statements that were written before sums were kept; '' where there are none."""
    if not (count := collection.store.rows_without_sum()):
        return ""
    are = "was" if count == 1 else "were"
    return (
        f"{several(count, 'statement')} {are} told before sums of the words were kept: whether a letter has turned "
        "in them cannot be seen."
    )
