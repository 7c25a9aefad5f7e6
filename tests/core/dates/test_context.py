"""Qualifiers on EDTF text (Library of Congress, EDTF 2019, Level 1: `?` uncertain, `~` approximate, `%` both)."""

from tests.every_row import every_row

from boxlore.core.dates.context import qualified

QUALIFIED = [  # EDTF, qualifier, EDTF with it
    ("1920", "~", "1920~"),
    ("1920", "", "1920"),
    ("", "~", ""),
    ("XXXX-07", "~", "XXXX-07~"),
    ("1920~", "~", "1920~"),
    ("1920?", "~", "1920%"),
    ("1920~", "%", "1920%"),
    ("1920%", "?", "1920%"),
    ("1915/1918", "~", "1915~/1918~"),
    ("1915~/1918", "?", "1915%/1918?"),
    ("../1918", "?", "../1918?"),
    ("1918/..", "?", "1918?/.."),
    ("/1918", "?", "/1918?"),
    ("1918/", "?", "1918?/"),
    ("[1920,1930]", "~", "[1920~,1930~]"),
    ("{1920,1930?}", "~", "{1920~,1930%}"),
    ("[..1920]", "?", "[..1920?]"),
    ("[1920..1930]", "?", "[1920?..1930?]"),
    ("[1920..]", "~", "[1920~..]"),
]


@every_row(("edtf", "mark", "made"), QUALIFIED)
def test_a_qualifier_is_set_where_it_may_stand(edtf: str, mark: str, made: str) -> None:
    assert qualified(edtf, mark) == made
