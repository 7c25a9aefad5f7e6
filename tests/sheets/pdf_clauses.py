"""A checker of clauses of PDF/UA-1 and PDF/A-2a for what is printed, by pikepdf (qpdf) alone.

Clauses: ISO 14289-1:2014 (UA) and ISO 19005-2:2011 (A), numbered as the Matterhorn Protocol 1.02 of the PDF Association
groups them; from memory. It is no validator: it looks at the clauses named beside each sentence, and at nothing else.
"""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pikepdf

ROLES = frozenset(
    "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl "
    "LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP "
    "Warichu WT WP Figure Formula Form".split()
)
"""The standard structure types (ISO 32000-1, 14.8.4)."""

PARENTS = {
    "LI": {"L"}, "Lbl": {"LI", "Note", "TOCI", "BibEntry"}, "LBody": {"LI"}, "TR": {"Table", "THead", "TBody", "TFoot"},
    "TH": {"TR"}, "TD": {"TR"}, "TOCI": {"TOC"},
}  # fmt: skip
"""Structure type -> what it may stand in (ISO 32000-1, 14.8.4.3)."""

PAINTS = frozenset("Tj TJ ' \" Do sh S s f F f* B B* b b* BI INLINE IMAGE".split())
"""Operators that put something on the page (ISO 32000-1, Annex A)."""

FONT_FILES = ("/FontFile", "/FontFile2", "/FontFile3")
"""Where the font itself stands, by its kind (ISO 32000-1, 9.9)."""


def faults(path: Path) -> list[str]:
    """Every fault found, each as `clause: what`."""
    with pikepdf.open(path) as pdf:
        return [*_document(pdf), *_tree(pdf), *_pages(pdf), *_fonts(pdf)]


def _document(pdf: pikepdf.Pdf) -> Iterator[str]:
    root = pdf.Root
    with pdf.open_metadata() as meta:
        if meta.get("pdfuaid:part") != "1":
            yield "UA 5: the metadata do not say PDF/UA-1"
        if (meta.get("pdfaid:part"), meta.get("pdfaid:conformance")) != ("2", "A"):
            yield "A 6.6.4: the metadata do not say PDF/A-2a"
        if not meta.get("dc:title"):
            yield "UA 7.1: no title in the metadata"
    if not root.get("/MarkInfo", {}).get("/Marked") or root.get("/MarkInfo", {}).get("/Suspects"):
        yield "UA 7.1: not marked as tagged, or suspect"
    if not root.get("/ViewerPreferences", {}).get("/DisplayDocTitle"):
        yield "UA 7.1: the title is not shown in the window's head"
    if not root.get("/Lang"):
        yield "UA 7.2: no language of the document"
    if "/OutputIntents" not in root:
        yield "A 6.2.3: no output intent"
    if "/Encrypt" in pdf.trailer or "/ID" not in pdf.trailer:
        yield "A 6.1.3: encrypted, or without an ID"
    opening = root.get("/OpenAction")
    if isinstance(opening, pikepdf.Dictionary) and opening.get("/S") == "/JavaScript":
        yield "A 6.5.1: an action that runs a script"
    if "/AA" in root:
        yield "A 6.5.2: an action that something other than the reader sets off"


def _tree(pdf: pikepdf.Pdf) -> Iterator[str]:
    role_map = {str(key)[1:]: str(value)[1:] for key, value in pdf.Root.StructTreeRoot.get("/RoleMap", {}).items()}
    last = 0
    for node, parent in elements(pdf.Root.StructTreeRoot):
        told = str(node.get("/S", ""))[1:]
        kind, inside = role_map.get(told, told), role_map.get(parent, parent)
        if kind not in ROLES:
            yield f"UA 7.1: a structure type that is none: {told}"
        if kind in PARENTS and inside not in PARENTS[kind]:
            yield f"ISO 32000-1 14.8.4.3: {kind} in {inside}"
        if kind == "Figure" and not str(node.get("/Alt", "") or node.get("/ActualText", "")).strip():
            yield "UA 7.3: a figure without an alternative"
        if kind == "Formula" and not str(node.get("/Alt", "")).strip():
            yield "UA 7.7: a formula without an alternative"
        if len(kind) == 2 and kind[0] == "H" and kind[1].isdigit():
            if int(kind[1]) > last + 1:
                yield f"UA 7.4.2: a heading of level {kind[1]} after one of level {last}"
            last = int(kind[1])
        if kind == "H":
            yield "UA 7.4.4: H beside H1 to H6"
        if kind == "L" and not any(each.get("/S") in ("/LI", "/L") for each in kids(node)):
            yield "UA 7.6: a list without items"
        if kind == "Table" and "/TH" not in {str(each.get("/S")) for each, _ in elements(node)}:
            yield "UA 7.5: a table without a heading of a row or column"


def _pages(pdf: pikepdf.Pdf) -> Iterator[str]:
    for number, page in enumerate(pdf.pages, 1):
        links = [each for each in page.get("/Annots", []) if each.get("/Subtype") == "/Link"]
        if links and page.get("/Tabs") != "/S":
            yield f"UA 7.18.3: page {number} has links, and tabs not in the order of the structure"
        for link in links:
            if "/StructParent" not in link:
                yield f"UA 7.18.1: a link on page {number} that is not in the structure"
            if not int(link.get("/F", 0)) & 4:
                yield f"A 6.3.2: a link on page {number} that is not printed"
            if not str(link.get("/Contents", "")):
                yield f"UA 7.18.5: a link on page {number} without a description"
        depth, loose = 0, 0
        for _, operator in pikepdf.parse_content_stream(page):
            match str(operator):
                case "BDC" | "BMC":
                    depth += 1
                case "EMC":
                    depth -= 1
                case name if name in PAINTS and not depth:
                    loose += 1
        if loose or depth:
            yield f"UA 7.1: {loose} parts of page {number} are neither content of the structure nor an artifact"


def _fonts(pdf: pikepdf.Pdf) -> Iterator[str]:
    for page in pdf.pages:
        for font in (page.get("/Resources", {}).get("/Font") or {}).values():
            inner = font.get("/DescendantFonts", [font])[0]
            if not any(name in inner.FontDescriptor for name in FONT_FILES):
                yield "A 6.2.11.4: a font that is not embedded"
            if "/ToUnicode" not in font:
                yield "A 6.2.11.7: a font whose letters have no Unicode"


def kids(node: Any) -> list[Any]:
    """The elements in a structure element, without its content."""
    inside = node.get("/K", [])
    return [
        each
        for each in (inside if isinstance(inside, pikepdf.Array) else [inside])
        if isinstance(each, pikepdf.Dictionary)
    ]


def elements(node: Any) -> Iterator[tuple[Any, str]]:
    """Every structure element below, in reading order, with the type of what it stands in."""
    for each in kids(node):
        if "/S" in each:
            yield each, str(node.get("/S", "/"))[1:]
            yield from elements(each)
