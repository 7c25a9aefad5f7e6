"""What a fault says of itself (rules of our own)."""

from boxlore.core.errors import ByteFault, TextFault


def test_a_fault_in_a_text_points_at_its_place() -> None:
    assert str(TextFault("1931-13", 5, 7, "There is no month 13")) == "There is no month 13\n  1931-13\n       ^^"


def test_a_long_text_is_not_shown_and_the_column_is_said() -> None:
    assert str(TextFault("9" * 201, 5, 6, "This is no date")) == "This is no date (column 6)"
    assert "999" in str(TextFault("9" * 200, 5, 6, "This is no date"))


def test_a_fault_in_a_file_has_its_offset_and_clause() -> None:
    assert str(ByteFault(20, "This is no marker", "T.81 B.1.1.2")) == "This is no marker (at byte 20; T.81 B.1.1.2)"
