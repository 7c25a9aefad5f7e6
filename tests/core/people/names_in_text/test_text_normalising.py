"""A text as a reader sees it; what looks alike is from memory (the module names the Unicode Standard)."""

from tests.every_row import every_row

from boxlore.core.people.names_in_text.text_normalising import as_seen

SEEN = [
    ("Ruth's hat", "Ruth's hat"),
    ("Černý dům", "Cerny dum"),
    ("Ｒｕｔｈ", "Ruth"),
    ("Ru\u00adth and R\u200buth", "Ruth and Ruth"),
    ("Rυth, Rυthie", "Ruth, Ruthie"),
    ("Аnna am See", "Anna am See"),
    ("Bладимир у реки", "Владимир у реки"),
    ("Анна", "Анна"),
]


@every_row(("words", "seen"), SEEN)
def test_a_text_is_seen_without_what_nobody_sees(words: str, seen: str) -> None:
    assert as_seen(words) == seen
