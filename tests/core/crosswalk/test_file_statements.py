"""Which line of a scan's file is told of the item, and as what. Our own crosswalk: common practice, no source."""

from tests.every_row import every_row

from boxlore.core.crosswalk.file_statements import FileStatement, regions_of, statements_of
from boxlore.core.fields.areas import Area
from boxlore.core.fields.pictures import EMBEDDED_WORDS, Embedded, words_struck

ROWS = [
    ([("title", "Picnic at the old mill")], [("title", "Picnic at the old mill", "")]),
    ([("title", "DSC_0042")], []),
    ([("title", "Haapsalu")], [("title", "Haapsalu", "")]),
    ([("caption", "野餐")], [("story", "野餐", "")]),
    (
        [("title", "Picnic at the mill"), ("title.et", "Piknik veskil"), ("headline", "A day out")],
        [("title", "A day out", ""), ("title", "Piknik veskil", "et"), ("title", "Picnic at the mill", "")],
    ),
    ([("keywords", "picnic; mill; picnic")], [("keyword", "picnic", ""), ("keyword", "mill", "")]),
    ([("people", "Aino Tamm; Jaan Tamm")], [("person", "Aino Tamm", ""), ("person", "Jaan Tamm", "")]),
    ([("place", "Haapsalu, Estonia")], [("place", "Haapsalu, Estonia", "")]),
    ([("date", "1932-06")], [("date", "1932-06", "")]),
    ([("date", "1932")], [("date", "1932", "")]),
    ([("date", "2019-07-04"), ("scanned", "2019:07:04 12:30:00")], []),
    ([("date", "1956-07-04"), ("scanned", "2019:07:04 12:30:00")], [("date", "1956-07-04", "")]),
    ([("date", "20190704"), ("scanned", "20190704")], []),
    ([("date", "2019-07-04T12:30:00")], []),
    ([("date", "2019-07-04T12:00")], [("date", "2019-07-04T12:00", "")]),
    ([("date", "1949-06-30T08:15:20+12:00")], [("date", "1949-06-30T08:15:20+12:00", "")]),
    ([("date", "1949:06:30 00:00:00"), ("scanned", "2019:07:04 12:30:00")], [("date", "1949:06:30 00:00:00", "")]),
    ([("date", "2019-07-04T00:00:00"), ("scanned", "2019:07:04 12:30:00")], []),
    ([("date", "Tuesday, June")], []),
    ([("by", "Aino"), ("rights", "© Aino"), ("also", "more"), ("scanned", "2019:07:04 12:30:00")], []),
]


@every_row(("lines", "told"), ROWS)
def test_each_line_is_told_in_its_field(lines: list[tuple[str, str]], told: list[tuple[str, str, str]]) -> None:
    """Of several titles the last is in force, as the later of two is."""
    assert statements_of(Embedded(tuple(lines))) == [FileStatement(*row) for row in told]


def test_of_struck_words_nothing_is_told() -> None:
    assert statements_of(EMBEDDED_WORDS.read(words_struck("a" * 64))) == []
    assert regions_of(EMBEDDED_WORDS.read(words_struck("a" * 64))) == []


def test_whoever_is_seen_somewhere_has_a_part_of_the_picture() -> None:
    lines = (
        ("region", "0.25 0.4 0.1 0.2 Anna  Tamm"),
        ("region", "0.25 0.4 9 0.2 Nobody"),
        ("region", "Nobody"),
        ("people", "0.1 0.1 0.1 0.1 Nobody"),
    )
    assert regions_of(Embedded(lines)) == [("Anna  Tamm", Area(0.25, 0.4, 0.1, 0.2))]
