"""What names of files say. Names that cameras give follow DCF 2.0 (CIPA DC-009, 4.3: four letters, four digits; from
memory); the others are common practice, no source."""

from tests.every_row import every_row

from boxlore.core.fields.file_names import date_spans, parts_of_name, title_of_paths, words_in_name, words_of_paths

NAMES = [
    ("IMG_0042.JPG", ""),
    ("DSC00123.jpg", ""),
    ("DSCF0001.jpg", ""),
    ("P1010023.JPG", ""),
    ("PXL_20230704_123456789.jpg", ""),
    ("WhatsApp Image 2019-07-04 at 12.30.45.jpeg", ""),
    ("scan (3).tif", ""),
    ("3fa9c04b-11.png", ""),
    ("0042.jpg", ""),
    ("1932.jpg", ""),
    ("", ""),
    ("1932_summer Haapsalu (2).jpg", "1932 summer Haapsalu"),
    ("PicnicAtTheOldMill.png", "Picnic At The Old Mill"),
    ("Leida and Con, Port Chalmers 1956.jpg", "Leida and Con, Port Chalmers 1956"),
    ("scan of the regatta.tiff", "scan of the regatta"),
    ("Сааремаа_1938.jpg", "Сааремаа 1938"),
    ("1930s-farm.jpg", "1930s-farm"),
    ("1930s.jpg", "1930s"),
    ("farm~2.jpg", "farm"),
    ("soldier_michael_f.jpg", "soldier michael"),
    ("wedding_1912-front.tif", "wedding 1912"),
    ("postcard haapsalu_V (2).png", "postcard haapsalu"),
    ("Anna B.jpg", "Anna B"),
    ("_f.jpg", ""),
]


@every_row(("name", "words"), NAMES)
def test_a_name_says_its_words_or_nothing(name: str, words: str) -> None:
    assert words_in_name(name) == words


TITLES = [
    (("at noon.jpg",), "at noon"),
    (("Haapsalu 1932.jpg",), "Haapsalu 1932"),
    (("1930s-farm.jpg",), "1930s-farm"),
    (("The regatta/IMG_1.jpg",), "The regatta"),
    (("Сааремаа, лето.jpg",), "Сааремаа, лето"),
    (("Brno, vlk a krk.jpg",), "Brno, vlk a krk"),
    (("משה בחיפה.jpg",), "משה בחיפה"),
    (("家族写真.jpg",), "家族写真"),
    (("Anna G 1956.jpg",), "Anna G 1956"),
    (("Cscans/CON.jpg", "Cscans/a.jpg"), ""),
    (("Odd f.jpg",), ""),
    (("Flatbed three.jpg",), ""),
    (("Evil gpj exe.jpg",), ""),
    (("Xxxxxxxx of xxxxxxxx.jpg",), ""),
    (("Aaaaaaa of Eeeeee.jpg",), ""),
    (("meta.jpg",), ""),
    (("写真.jpg",), ""),
    (("1932.jpg",), ""),
    ((), ""),
]


@every_row(("paths", "title"), TITLES)
def test_only_a_phrase_of_a_language_is_a_title(paths: tuple[str, ...], title: str) -> None:
    """A file's name is none of the thing itself (DACS 2.3: a title is on the material, or devised; from memory)."""
    assert title_of_paths(paths) == title


def test_a_list_has_the_words_of_names_that_are_no_titles() -> None:
    assert words_of_paths(("Cscans/IMG_1.jpg", "Cscans/Odd f.jpg")) == "Odd f"
    assert words_of_paths(("Cscans/IMG_1.jpg",)) == "Cscans" and words_of_paths(("IMG_1.jpg",)) == ""


def test_a_name_falls_into_its_parts() -> None:
    assert parts_of_name("Leida and Con_Port Chalmers, 1956 (1).jpg") == ["Leida", "Con", "Port Chalmers", "1956"]


SPANS = [
    ("summer 1932 Haapsalu", ["summer 1932 Haapsalu", "summer 1932", "1932 Haapsalu", "1932"]),
    ("Aino at the farm", []),
    ("1932-05-01", ["1932-05-01"]),
]


@every_row(("words", "spans"), SPANS)
def test_the_words_around_a_year_may_be_a_date(words: str, spans: list[str]) -> None:
    assert date_spans(words) == spans
