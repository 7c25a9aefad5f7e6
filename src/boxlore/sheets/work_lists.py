"""Lists of work or shopping, and receipts, as PDF/A-2a and PDF/UA-1: a heading, tables, and lines to sign on."""

import tempfile
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from boxlore.sheets.print_run import PAPERS
from boxlore.sheets.printable_words import isolated
from boxlore.sheets.theme import THEMES
from boxlore.sheets.typesetting import make_pdf


@dataclass(frozen=True, slots=True, kw_only=True)
class ListTable:
    """One table: its title, the heading of its columns, and its rows; `widths` are relative widths of the columns."""

    title: str
    heading: tuple[str, ...]
    rows: Sequence[Sequence[str]]
    widths: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """A list or a receipt. `before` and `after` are paragraphs around the tables; `sign` has the words below each line
    to sign on.
    """

    title: str
    parts: Sequence[ListTable]
    before: Sequence[str] = ()
    after: Sequence[str] = ()
    sign: Sequence[str] = ()


def make_list(page: Page, *, language: str, paper: str, printed_on: date) -> bytes:
    """The list as a PDF. Letters that no font has are printed as □."""
    data = {
        "title": isolated(page.title),
        "language": language.split("-")[0],
        "paper": PAPERS[paper][0],
        "printed": f"Printed {printed_on.isoformat()}",
        "before": [isolated(words) for words in page.before],
        "after": [isolated(words) for words in page.after],
        "sign": [isolated(words) for words in page.sign],
        "parts": [
            {
                "title": isolated(part.title),
                "heading": [isolated(words) for words in part.heading],
                "rows": [[isolated(words) for words in row] for row in part.rows],
                "widths": list(part.widths),
            }
            for part in page.parts
            if part.rows
        ],
    }
    with tempfile.TemporaryDirectory() as folder:
        pdf, _ = make_pdf("lists.typ", data, THEMES["plain"], Path(folder), printed_on)
    return pdf
