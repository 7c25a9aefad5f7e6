"""The papers that go with a transfer: the inventory by box and folder, the deed of gift, and consent forms.

The deed of gift has the parts that the brochure of the Society of American Archivists names: donor, recipient,
description, transfer of ownership, access, copyright, unwanted materials, signatures. The consent form covers how an
interview may be used and kept. Both are filled in as far as things are known, and are no legal advice.
"""

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from boxlore.sheets.print_run import PAPERS
from boxlore.sheets.printable_words import isolated
from boxlore.sheets.theme import THEMES
from boxlore.sheets.typesetting import make_pdf

CAUTION = (
    "This form states what the family knows and wishes. It is no legal advice; local law and the archive's own "
    "forms go before it. Let the archive, or someone licensed to advise, look at it before anyone signs."
)
TWICE = "Print this twice and sign both: one for the donor, one for the archive."
EXTRACT = (
    "This is an extract for whoever may see the open part: it leaves out how to reach the donor, and what is closed. "
    "The deed to sign is in the closed part."
)
OWNED = (
    "The donor gives what is named above to the recipient, whose it is from the day on which both have signed. What "
    "else is agreed about it:"
)
NOTHING_AGREED = "Nothing is noted of an agreement before or during this interview. What is agreed now:"
BLANK = ""
"""A part that is always filled in by hand."""


@dataclass(frozen=True, slots=True)
class InventoryLine:
    """One item of the printed inventory; `place` is its place in the box."""

    number: str
    place: str
    title: str
    date: str
    access: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Deed:
    """What is known for a deed of gift. Empty parts are printed as lines to write on."""

    donor: str
    recipient: str
    title: str
    description: str
    originals: bool
    but_for: str = ""
    """Which of the originals are not given: `, but for …`; '' for none."""
    access: str
    copyright: str
    use: str = ""
    """What the archive says of copying and publishing; without it there is no such part."""
    terms: str = ""
    """What the archive wants the donor to know; without it there is no such part."""
    amends: str = ""
    """Of an update: to which deed this one is an addendum, as a sentence."""
    is_extract: bool = False
    """Whether it is for the open part, and not to be signed."""
    on_day: date


def inventory_pdf(
    title: str, summary: str, groups: Sequence[tuple[str, Sequence[InventoryLine]]], *, paper: str, printed_on: date
) -> bytes:
    """The inventory as a PDF, with a table for each group of (heading, lines)."""
    shown = [{"title": isolated(heading), "rows": [_cells(line) for line in lines]} for heading, lines in groups]
    data = {"title": isolated(title), "summary": isolated(summary), "groups": shown}
    return _set("inventory.typ", data, paper, printed_on)


def _cells(line: InventoryLine) -> list[str]:
    return [isolated(cell) for cell in (line.number, line.place, line.title, line.date, line.access)]


def gift_pdf(deed: Deed, *, paper: str) -> bytes:
    """The deed of gift as a PDF."""
    given = (
        f"The originals and their scans are given{deed.but_for}."
        if deed.originals
        else "Scans are given. The originals stay with the donor; this deed does not touch who owns them."
    )
    parts = (
        ("Donor", deed.donor, 2),
        ("Recipient", deed.recipient, 2),
        *([("What this goes with", deed.amends, 0)] if deed.amends else []),
        ("What is given", f"{deed.title}. {deed.description} {given}", 1),
        ("Transfer of ownership", OWNED, 2) if deed.originals else ("What may be done with the scans", BLANK, 4),
        ("Access", deed.access, 2),
        ("Copyright", deed.copyright, 3),
        *([("Copying and publishing, as the archive has it", deed.use, 1)] if deed.use else []),
        *([("The archive's terms", deed.terms, 1)] if deed.terms else []),
        *(
            [("What the archive does not want", "Return to the donor ☐   Pass on ☐   Destroy ☐", 1)]
            if deed.originals and not deed.terms  # which say it, where the archive has any
            else []
        ),
    )
    parts = (*parts, ("Copies of this deed", EXTRACT if deed.is_extract else TWICE, 0))
    signed_by = () if deed.is_extract else ("For the donor", "For the archive")
    name = "Deed of gift: addendum" if deed.amends else "Deed of gift"
    return _form(name, parts, signed_by, deed.on_day, paper)


def consent_pdf(facts: Mapping[str, str], *, on_day: date, paper: str) -> bytes:
    """The consent form for one interview as a PDF.

    `facts` may have the keys narrator, interviewer, place, agreement, recording, kept, since (each later word on
    consent) and taken_back (what was withdrawn). A consent of which anything was taken back is no form to sign: it says
    so first, and has no lines to write on.
    """
    taken_back = facts.get("taken_back", "")
    withdrawn = f"The narrator has taken back: {taken_back}. Nothing may be done that needs it, until it is given anew."
    parts = (
        *([("Taken back", withdrawn, 0)] if taken_back else []),
        ("Narrator", facts.get("narrator", ""), 1),
        ("Interviewer", facts.get("interviewer", ""), 1),
        ("Day and place", facts.get("place", ""), 1),
        ("How it was recorded", facts.get("recording", ""), 1),
        ("What was agreed aloud", facts.get("agreement", ""), 2),
        *([("Said since", facts["since"], 0)] if facts.get("since") else []),
        *([] if taken_back else [("How it may be used", BLANK, 3)]),
        ("Where it is kept", facts.get("kept", ""), 1),
        *([] if taken_back else [("Who may hear it, and from when", BLANK, 3)]),
        ("The narrator's rights", "The narrator may ask that words be struck, or closed until a day.", 2),
    )
    signed_by = () if taken_back else ("The narrator", "The interviewer")
    return _form("Consent to an interview", parts, signed_by, on_day, paper)


def withdrawal_pdf(
    asked: Sequence[tuple[str, str]], *, donor: str, recipient: str, of: str, on_day: date, paper: str
) -> bytes:
    """A request to an archive to delete, replace or return what it was handed over, as a PDF: (heading, words) of each
    thing that is `asked`; `of` says what of."""
    parts = (
        ("Donor", donor, 0 if donor else 1),
        ("Archive", recipient, 0 if recipient else 1),
        ("What this goes with", of, 0),
        *((heading, words, 0) for heading, words in asked),
        ("Done by the archive", "What could not be done, and why:", 3),
    )
    return _form("Request to withdraw", parts, ("For the donor", "For the archive, when it is done"), on_day, paper)


def _form(title: str, parts: Sequence[tuple[str, str, int]], signed_by: Sequence[str], day: date, paper: str) -> bytes:
    """A form of parts, each (heading, words, lines to write on if the words are empty)."""
    shown = [{"name": name, "words": isolated(words), "lines": lines} for name, words, lines in parts]
    data = {"title": title, "caution": CAUTION, "parts": shown, "signatures": list(signed_by)}
    return _set("form.typ", data, paper, day)


def _set(template: str, data: dict[str, Any], paper: str, day: date) -> bytes:
    complete = data | {"paper": PAPERS[paper][0], "printed": f"Printed {day.isoformat()}"}
    with tempfile.TemporaryDirectory() as folder:
        pdf, _ = make_pdf(template, complete, THEMES["plain"], Path(folder), day)
    return pdf
