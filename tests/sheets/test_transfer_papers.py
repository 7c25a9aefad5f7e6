"""What is printed for an archive. That no word is parted by the typesetter is our own rule: the gate reads the words of
a PDF, and half a place (`Graham-stown`) would be somebody's name."""

import io
from dataclasses import replace
from datetime import date

from pypdf import PdfReader

from boxlore.sheets.transfer_papers import Deed, InventoryLine, consent_pdf, gift_pdf, inventory_pdf

DEED = Deed(
    donor="Rourke family", recipient="", title="Photographs (TR)", description="One photograph.", originals=True,
    access="Open.", copyright="Not evaluated.", use="Private study only.", on_day=date(2026, 11, 27),
)  # fmt: skip


def test_no_word_of_the_inventory_is_parted_at_the_end_of_a_line() -> None:
    title = "Grahamstown Coromandel Kuressaare Whakarewarewa Otepää Constantinople Helmersenstraße " * 3
    line = InventoryLine(
        "TRA-0001", "Box 1 / Folder 2", title, "between 1911 and about 1914", "Open to everybody. " * 9
    )
    data = inventory_pdf(
        "Photographs", "One photograph.", [("Box 1", [line])], paper="a4", printed_on=date(2026, 11, 27)
    )
    words = PdfReader(io.BytesIO(data)).pages[0].extract_text().split()
    assert {"Grahamstown", "Coromandel", "Kuressaare", "Whakarewarewa", "Constantinople"} <= set(words)
    assert not [word for word in words if word.endswith("-")]


def test_no_item_of_the_inventory_is_torn_from_its_number() -> None:
    """Common practice, no source: a row of a finding list stands whole on its page, unless it would fill most of it."""
    for count, times in ((14, 20), (1, 400)):
        access = "Begun, " + "closed for a hundred years, " * times + "ended."
        lines = [InventoryLine(f"TRA-{at:04d}", "1/1", "The boat", "1911", access) for at in range(1, count + 1)]
        data = inventory_pdf("Photographs", "", [("Box 1", lines)], paper="a4", printed_on=date(2026, 11, 28))
        pages = [page.extract_text() for page in PdfReader(io.BytesIO(data)).pages]
        ends = [(text.count("TRA-"), text.count("Begun,"), text.count("ended.")) for text in pages]
        assert len(pages) > 2 and [sum(column) for column in zip(*ends, strict=True)] == [count] * 3
        assert all(len(set(page)) == 1 for page in ends) is (times == 20), ends


def test_a_deed_for_files_alone_gives_no_original_away() -> None:
    """A Guide to Deeds of Gift (Society of American Archivists, from memory): it says what passes and what not."""
    said = {}
    for originals in (True, False):
        data = gift_pdf(replace(DEED, originals=originals), paper="a4")
        said[originals] = " ".join(" ".join(page.extract_text() for page in PdfReader(io.BytesIO(data)).pages).split())
    assert "Transfer of ownership" in said[True] and "Return to the donor" in said[True]
    assert "The originals stay with the donor" in said[False]
    assert "Transfer of ownership" not in said[False] and "Return to the donor" not in said[False]
    assert all("Copying and publishing, as the archive has it Private study only." in words for words in said.values())


def test_an_identifier_is_copied_out_of_a_paper_as_it_is() -> None:
    """pypdf reads the text: nothing unseen stands in it, also where it may be broken at the end of a line."""
    urn = "urn:uuid:02a0e31f-a965-5abe-9612-bedb04f164e5"
    line = InventoryLine("TRA-0001", "1/1/1", urn, "1912")
    papers = [
        gift_pdf(replace(DEED, description=f"It is {urn}."), paper="a4"),
        inventory_pdf("T", urn, [("Box 1", [line])], paper="a4", printed_on=date(2026, 11, 25)),
    ]
    for paper in papers:
        text = "".join(page.extract_text() for page in PdfReader(io.BytesIO(paper)).pages)
        assert "\u200b" not in text and urn in text.replace("\n", "")


def test_the_deed_of_an_update_is_an_addendum_and_a_consent_taken_back_is_no_form_to_sign() -> None:
    """A deed that was signed stays in force (common practice, no source)."""

    def said(paper: bytes) -> str:
        return " ".join(" ".join(page.extract_text() for page in PdfReader(io.BytesIO(paper)).pages).split())

    amended = said(gift_pdf(replace(DEED, amends="It goes with the deed of May.", terms="Ours."), paper="a4"))
    assert "Deed of gift: addendum" in amended and "What this goes with It goes with the deed of May." in amended
    assert "Return to the donor" not in amended, "the archive's own terms say what becomes of it"
    facts = {"narrator": "Mia Rourke", "since": "given, 2026-11-20: voice"}
    given = said(consent_pdf(facts, on_day=date(2026, 11, 27), paper="a4"))
    back = said(consent_pdf(facts | {"taken_back": "voice"}, on_day=date(2026, 11, 27), paper="a4"))
    assert "Said since given, 2026-11-20: voice" in given and "How it may be used" in given
    assert "The narrator has taken back: voice." in back and "How it may be used" not in back
    assert "signature" in given and "signature" not in back
