"""What is printed for an archive. That no word is parted by the typesetter is our own rule: the gate reads the words of
a PDF, and half a place (`Graham-stown`) would be somebody's name."""

import io
from datetime import date

from pypdf import PdfReader

from boxlore.sheets.transfer_papers import InventoryLine, inventory_pdf


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
