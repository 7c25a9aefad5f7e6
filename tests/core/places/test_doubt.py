"""Which words of a told place are of no place (common practice, no source)."""

from tests.every_row import every_row

from boxlore.core.places.doubt import without_doubt

TOLD = [
    ("Dunedin I think", "Dunedin", True), ("Dunedin, vist", "Dunedin", True), ("ehk Tartus", "Tartus", True),
    ("Maybe Riga (I think)", "Riga", True), ("peut-être Lyon", "Lyon", True), ("Ehkland", "Ehkland", False),
    ("I don't know", "", True), ("Je ne sais pas", "", True), ("ei tea", "", True), ("не знаю", "", True),
    ("Weiß ich nicht", "", True), ("no idea, maybe Riga", "Riga", True), ("not sure where it was", "", True),
    ("Dunedin", "Dunedin", False), ("Unknownville", "Unknownville", False), ("Asi", "Asi", False), ("", "", False),
]  # fmt: skip


@every_row(("words", "place", "in_doubt"), TOLD)
def test_doubts_are_no_part_of_a_place(words: str, place: str, in_doubt: bool) -> None:
    assert without_doubt(words) == (place, in_doubt)
