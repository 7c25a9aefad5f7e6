"""What a thing says by itself, against dated examples of published guides, and the table against itself."""

from tests.core.evidence.family import BACK, days_of, item, told, worked_out
from tests.every_row import every_row

from boxlore.core.evidence import object_table
from boxlore.core.evidence.object_clues import in_years, kinds_in
from boxlore.core.evidence.object_table import OBJECTS
from boxlore.core.records.item_record import Related

GUIDES = (
    # EdinPhoto, Real Photo Postcards: Stamp Boxes
    ("AZO four triangles up", 1904, 1918),
    ("AZO, two up, two down", 1918, 1930),
    # Historical Clothing, Postcard Types, Table 1
    ("AZO diamonds", 1907, 1909),
    ("Velox squares", 1901, 1914),
    ("AZO stamp box, four triangles all pointing up", 1904, 1918),
    ("stamp box AZO, two triangles up two down", 1918, 1930),
    ("stamp box EKC", 1939, 1950),
    # Santa Cruz MAH, Guide to the Postcard Collection: Private Mailing Cards of 19 May 1898 to 24 December 1901
    ("Private Mailing Card", 1898, 1901),
    # State Archives of North Carolina and Library of Congress, as our source list has them
    ("Daguerreotype", 1839, 1865),
    # Getty AAT: cartes-de-visite from 1854, cabinet photographs made until the First World War
    ("carte-de-visite", 1854, 1910),
    ("a cabinet card", 1863, 1924),
    # Museum of Obsolete Media, Disc film: 1982, officially discontinued in 1999
    ("disc film negative", 1982, 1999),
    # Lost Faces, Using Revenue Stamps to Date Photographs: Act of 30 June 1864, to 1 August 1866
    ("two cent revenue stamp", 1864, 1866),
    # Museum of Fine Arts, Boston, CAMEO: 1935; New York Times, 30 December 2010: the last laboratory
    ("Kodachrome slide", 1935, 2010),
)
BEGAN = (
    # Family Tree Magazine, March 2010: 126 film introduced in 1963, 110 in 1972
    ("126 cartridge", 1963), ("110 cartridge", 1972),
    # Library of Congress, The Stereograph Format: first made in the 1850s, and still made today
    ("stereograph", 1850),
    # P. Messier, 2005: films with a polyester base were first introduced in 1955
    ("polyester negative", 1955),
    # Museum of Obsolete Technology: the SX-70 of 1972 was the first camera to use integral print film
    ("SX-70", 1972),
    # United States Post Office Department: ZIP codes from 1 July 1963
    ("ZIP code on the label", 1963),
)  # fmt: skip


@every_row(("words", "first"), BEGAN)
def test_published_beginnings(words: str, first: int) -> None:
    worked = worked_out([item("i", told("process", words))])
    assert days_of(worked, "i") == f"{first}-01-01 -"


@every_row(("words", "first", "last"), GUIDES)
def test_published_ranges(words: str, first: int, last: int) -> None:
    worked = worked_out([item("i", told("process", words))])
    assert days_of(worked, "i") == f"{first}-01-01 {last}-12-31"


def test_every_row_has_its_source_and_its_years_in_order() -> None:
    told_of = " ".join((object_table.__doc__ or "").split())
    names = [name for made in OBJECTS for name in made.called]
    assert len(names) == len(set(names))
    for made in OBJECTS:
        assert made.source and "memory" not in made.source, made
        publications = [part.partition(":")[0].partition(",")[0].strip() for part in made.source.split("; ")]
        assert any(name.split(" (")[0] in told_of for name in publications), made
        assert made.first <= made.usual_first <= (made.usual_last or 9999) <= (made.last or 9999), made


def test_the_longer_name_counts_and_words_that_only_hold_one_do_not() -> None:
    assert [made.called[0] for made in kinds_in("postcard with an undivided back")] == ["undivided back"]
    assert [made.called[0] for made in kinds_in("Divided back")] == ["divided back"]
    assert [made.called[0] for made in kinds_in("Kodachrome slide")] == ["kodachrome slide"]
    assert kinds_in("a cargo of nothing") == () == kinds_in("azo paper, squares and diamonds")


def test_a_postcards_back_in_words() -> None:
    for words, row in (
        ("The back has a line down the middle, Correspondence on the left and Address on the right", "divided back"),
        ("Rückseite geteilt, Trennlinie", "divided back"), ("tagakülg: jagatud", "divided back"),
        ("dos divisé, Correspondance à gauche", "divided back"),
        ("no line down the middle of the back, only the address allowed there", "undivided back"),
        ("the back is not divided", "undivided back"), ("Rückseite ungeteilt, nur für die Adresse", "undivided back"),
    ):  # fmt: skip
        assert [made.called[0] for made in kinds_in(words)] == [row], words
    both = kinds_in("back: AZO, triangles all pointing up, divided")
    assert [made.called[0] for made in both] == ["azo four triangles up", "divided back"]
    assert kinds_in("a line down the middle of the road") == () == kinds_in("writing on the back")


def test_what_is_denied_or_copied_tells_nothing() -> None:
    for words in ("This is not a carte de visite", "a modern copy of an ambrotype", "isn't a cabinet card"):
        assert kinds_in(words) == (), words


def test_a_copy_may_be_younger_than_its_picture() -> None:
    of = (Related(kind="same_picture", number="X"),)
    copied = told("process", "chromogenic print"), told("note", "sticker: kodachrome")
    assert days_of(worked_out([item("i", copied[0], related=of)]), "i") == "- -"
    assert days_of(worked_out([item("i", copied[0])]), "i") == "1942-01-01 -"
    assert days_of(worked_out([item("i", copied[1], related=of)]), "i") == "1935-01-01 2010-12-31"
    assert days_of(worked_out([item("i", kind="tintype", related=of)]), "i") == "1853-01-01 1940-12-31"


def test_what_is_printed_on_a_back_is_read_where_it_is_copied_or_told() -> None:
    for field, words, wanted in (
        ("inscription", "AZO, four triangles pointing up in the stamp box", "1904-01-01 1918-12-31"),
        ("inscription", "a two cent revenue stamp, cancelled", "1864-01-01 1866-12-31"),
        ("story", "Grandfather in his coat. On the back is a two cent revenue stamp.", "1864-01-01 1866-12-31"),
        ("inscription", "Grandmother had a tintype of him", "- -"),
        ("story", "He came back with a tintype.", "- -"),
    ):
        assert days_of(worked_out([item("i", told(field, words))]), "i") == wanted, words


def test_a_sentence_may_say_in_other_languages_what_the_thing_is() -> None:
    for words in ("This is a tintype.", "C’est un tintype.", "Questo è un tintype."):
        assert days_of(worked_out([item("i", told("story", words))]), "i") == "1853-01-01 1940-12-31", words


def test_a_copy_that_is_told_to_be_one_may_be_younger_than_its_picture() -> None:
    print_of_1958 = told("story", "The border is printed JUN 58")
    for words in ("a reprint from the old negative", "copy print", "Neuabzug", "made from an old negative"):
        assert days_of(worked_out([item("i", told("process", words), print_of_1958)]), "i") == "- 1958-06-30", words
    assert (
        days_of(worked_out([item("i", told("process", "not a copy"), print_of_1958)]), "i") == "1956-06-01 1958-06-30"
    )
    copied = told("note", "a copy of the one in the hall"), told("process", "chromogenic print")
    assert days_of(worked_out([item("i", *copied)]), "i") == "- -"


def test_the_years_in_words() -> None:
    rows = {made.called[0]: in_years(made) for made in OBJECTS}
    assert rows["cabinet card"] == "made 1863 to 1924, mostly 1867 to 1900"
    assert rows["zip code"] == "made in the United States from 1963 on, mostly 1967 on"


def test_a_reason_has_the_words_told_on_one_line_and_the_publication_by_its_name() -> None:
    (reason,) = worked_out([item("i", told("process", "divided back,\na little foxed"))]).because("item i")
    assert reason.words == "I: “divided back, a little foxed” (the keeper), made from 1902 on, mostly 1907 on"
    assert reason.source.startswith("New Zealand Philatelic Federation: Britain 1902")


POSTED = (
    ("undivided back, posted 1909", "1869-01-01 1909-12-31"),
    ("Undivided back. Postmark: 3 Aug 1909.", "1869-01-01 1909-12-31"),
    ("Divided back, posted 1911, or posted 1913", "1902-01-01 -"),
    ("gelaufen am 12. Juni 1911", "- 1911-12-31"),
)


@every_row(("words", "wanted"), POSTED)
def test_a_card_may_be_as_young_as_the_stamp_on_it(words: str, wanted: str) -> None:
    """Old stock was sold on for years (common practice, no source)."""
    record = item("p", told("inscription", words, source=BACK), kind="postcard")
    assert days_of(worked_out([record]), "p") == wanted
