"""Care notes: what is shown stands before the picture, how it is handled does not (common practice, no source)."""

from tests.every_row import every_row

from boxlore.core.sitting.care_notes import stands_before

NOTES = [
    ("A funeral. Ask first.", True),
    ("The print is cracked across the lower left corner; support it from beneath.", False),
    ("Brittle: hold it with both hands.", False),
    ("Torn at the edge; it shows a coffin.", True),
    ("Tapu.", True),
    ("Ring Aunt Joan before you show it.", True),
    ("", False),
    ("  ", False),
]


@every_row(("note", "stands"), NOTES)
def test_which_notes_stand_before_the_picture(note: str, stands: bool) -> None:
    assert stands_before(note) is stands
