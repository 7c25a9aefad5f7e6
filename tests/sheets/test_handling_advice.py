"""Advice beside the print: every piece names its source, and none promises what no standard does."""

from boxlore.core.wording.catalogue import ENGLISH
from boxlore.sheets.handling_advice import ADVICE, advice_for


def test_every_output_gives_advice_with_its_source() -> None:
    assert set(ADVICE) == {"slips", "labels", "worksheet", "pages"}
    for output in ADVICE:
        for one in advice_for(output, ENGLISH):
            assert one["words"].endswith(".") and one["source"].strip()


def test_never_on_originals_stands_on_every_output() -> None:
    for output in ADVICE:
        assert any("not on the photograph" in one["words"] for one in advice_for(output, ENGLISH))
