"""What goes out of an original as a thing (DACS 3.2 and 5.1; EAD phystech and custodhist)."""

from boxlore.core.originals.physical_description import custody_lines, physical_lines
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import KEEPER, Sure


def told(field: str, words: str) -> StatementView:
    return StatementView(
        statement=words, field=field, words=words, language="en", source=KEEPER, said_by="", sure=Sure.SURE,
        audience="anyone", recorded_at="",
    )  # fmt: skip


def test_lines_are_told_and_what_is_denied_is_left_out() -> None:
    record = Record(
        id="i",
        number="TRA-0001",
        told={
            "condition": (told("condition", "foxing"), told("condition", "torn")),
            "attached": (told("attached", "no tape"),),
            "enclosure": (told("enclosure", "polyester sleeve"), told("enclosure", "PVC")),
            "donor": (told("donor", "Aino Tamm"),),
        },
    )
    assert physical_lines(record) == ["Condition: foxing; torn", "Enclosure: polyester sleeve"]
    assert custody_lines(record) == ["Given by: Aino Tamm"]
    assert physical_lines(Record(id="i", number="TRA-0001")) == []
