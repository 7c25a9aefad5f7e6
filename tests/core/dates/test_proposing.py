"""What is asked of words that are not wholly understood: sentences of our own, in several languages (no source)."""

from tests.every_row import every_row

from boxlore.core.dates.phrases import KnownDates, PhraseSettings, read

PROPOSED = [  # words, what the question holds, the choices in their order
    ("the year the ferry sank, 1931 I believe, or so Dad told us", "is probably 1931 meant? Not understood: “year the "
     "ferry sank”, “or so Dad told us”.", ("1931?",)),
    ("not before the railway came in 1874", "not earlier than 1874", ("[1874..]", "1874")),
    ("after 1920 but before they pulled the mill down in 1934", "between 1921 and 1933", ("[1921..1933]", "[1921..]",
     "1934")),
    ("from when the ferry sank in 1931 to when Dad died in 1934", "is 1931–1934, 1931 or 1934 meant", ("1931/1934",
     "1931", "1934",
     "[1931,1934]")),
    ("Dad says 1931, Mum 1934", "“Dad says”, “Mum”", ("1931", "1934", "[1931,1934]", "1931/1934")),
    ("Dad 1934, Mum says 1931", "is 1934 or 1931 meant", ("1934", "1931", "[1934,1931]")),
    ("Dad 1934, Mum 1934-06", "1934", ("1934", "1934-06")),
    ("the Winter Gardens, Blackpool, 1929", "“Winter Gardens”, “Blackpool”", ("1929", "1929-24")),
    ("Auntie June with the dog in 1919", "1919 or June 1919", ("1919", "1919-06")),
    ("Christmas with the Rourkes", "of which year?", ("XXXX-12-25",)),
    ("avant-guerre (vers 1912)", "which of these", ("1912~", "[..1914-07]")),
    ("Jim in the war, and Con, 1941", "1941", ("1941", "1939-09/1945-09", "1941-12/1945-09")),
    ("Jim in the war, and Con, 1960", "which of these", ("1960", "1914-07/1918-11")),
    ("Jim on leave, during the war", "which of these", ("1914-07/1918-11",)),
    ("(1938", "1938", ("1938",)),
    ("am Hafen mit Onkel Juhan, Sommer 1931", "“Hafen mit Onkel Juhan”", ("1931-22",)),
    ("avec Tante Aino au port, été 1931", "“avec Tante Aino au port”", ("1931-22",)),
    ("isa ja Juhan sadamas, 1931. a suvi", "1931", ("1931-22",)),
    (" ".join(f"word{'s' * at}" for at in range(16)) + " 4 May 1917", "4 May 1917", ("1917-05-04",)),
    ("a " * 45 + "stone of 1931", "1931", ("1931",)),
    ("and summer to '51", "until 1951", ("../1951",)),
    ("born 1912, about six here", "1918", ("1918~",)),
    ("Aino, geboren 1912, hier 6", "1918", ("1918~",)),
    ("born 1912, 3 June 1918", "1918", ("1918-06-03",)),
    ("she was born in 1908 and this is her at about forty", "about 1948", ("1948~", "1940~")),
    ("she was born in 1908 and this is her in '48", "1948", ("1948",)),
    ("he died in 1971, taken about forty-eight", "1948", ("1948~",)),
    ("born in 194?, about six here", "not earlier than the 1940s", ("[194X?..]", "194X?")),
    ("born in 194?, and this is her at about forty", "about 1940", ("1940~",)),
    ("born 1912, in the garden", "1912", ("[1912..]", "1912")),
    ("born 1912, three weeks old", "1912", ("[1912..]", "1912")),
    ("born in 1912, this was ten years before that", "1902", ("1902~", "[..1902]")),
    ("born in 1912, this was ten years after that", "1922", ("1922~", "[1922..]")),
    ("he died in 1971, this was ten years before that at least", "about 1961 or not later than 1961", ("1961~",
     "[..1961]")),
    ("he died in 1971, ten years ago", "not later than 1971", ("[..1971]",)),
    ("he died in 1971, three of us left", "not later than 1971", ("[..1971]",)),
    ("he died 1971, taken in 1958", "is 1958 meant", ("1958",)),
    ("taken 1958, he died 1971", "is 1958 meant", ("1958",)),
    ("Jaan suri 1971, pilt 1958", "1958", ("1958",)),
    ("er ist 1971 gestorben, das war zehn Jahre davor", "1961", ("1961~", "[..1961]")),
    ("she died in June 1950", "not later than June 1950", ("[..1950-06]",)),
    ("before my father died in 1932", "not later than 1932", ("[..1932]",)),
    ("taken ten years before he died in 1971", "about 1961", ("1961~", "[..1961]")),
    ("taken the year he died, 1971", "1971", ("1971",)),
    ("the summer he died in 1971", "1971", ()),
    ("he died in the summer", "when was that", ()),
    ("he died 31 June 1971", "not later than 30 June 1971", ("[..1971-06-30]",)),
    ("he died 1971 1975", "1971", ("1971",)),
    ("Mort 1938", "is 1938 meant", ("1938",)),
    ("mort en 1938", "not later than 1938", ("[..1938]",)),
    ("Died 1938", "not later than 1938", ("[..1938]",)),
    ("he died, 1971", "1971", ("1971",)),
    ("copied in 1958 from a picture taken 1899", "1899", ("1958", "1899", "1899/..")),
    ("the Rotorua in the 9th", None, ()),
    ("Smith and his dog", None, ()),
    ("Christmas Eve, the first one of the war", "is", ("1914-12-24",)),
    ("17. mai, den første etter krigen", "17 May 1919 or 17 May 1945 meant?", ("1919-05-17", "1945-05-17")),
    ("Weihnachten, das erste nach dem Krieg", "25 December 1918", ("1918-12-25",)),
    ("Christmas Eve, the dog in the war", "“dog in the”", ("1914-07/1918-11",)),
    ("Christmas Eve, the first", "of which year", ("XXXX-12-24",)),
    ("vor Ostern 27, am Gründonnerstag", "14 April 1927 or not later", ("1927-04-14", "[..1927-04-16]")),
    ("jaanipäev or thereabouts, vers 1937", "about 24 June 1937 or about 1937 meant?", ("1937-06-24~", "1937~")),
    ("por San Juan, allá por el año 30", "about 24 June 1930", ("1930-06-24~", "1930~")),
    ("every Christmas from 1950 to 1985", "or 25 December meant", ("1950/1985", "XXXX-12-25")),
    ("erster Schultag, Ostern 1931", "5 April 1931", ("1931-04-05", "1931-04")),
    ("the other Easter, the Greek one, 1954", "is 25 April 1954 meant?", ("1954-04-25",)),
    ("the other Easter, the cold Monday, 1954", "Not understood: “other”", ("1954-04-18",)),
    ("the other Easter, the cold Ruth, 1954", "18 April 1954", ("1954-04-18", "1954")),
    ("the other Easter, the Greek one, of old", None, ()),
    ("Not 1944 - '45, after Hal came back", "is 1945 meant? Not understood: “after Hal came back”", ("1945",)),
    ("not 1931, not 1933, the mill, 1930 to 1934", "1930, 1932 or 1934", ("1930", "1932", "1934")),
    ("not 1931, the mill, 1931 or 1934", "is 1934 meant", ("1934",)),
    ("not 1931, the mill in June 1931", None, ()),
    ("Not 1945, that was the other one; this is the year after", "when it was not", ("1946",)),
    ("não foi em 1950, foi no ano seguinte", "when it was not", ("1951",)),
    ("nicht 1945, sondern im Jahr danach", "when it was not", ("1946",)),
    ("nicht 1945, sondern das Jahr davor", "when it was not", ("1944",)),
    ("not 1945, the year of the flood", "when it was not", ()),
    ("not 9999, the mill, after 9990", "between 9991 and 9998", ("[9991..9998]",)),
    ("31 December 9999 nor Easter", "outside the years 1 to 9999", ()),
    ("kolhoosi algus, 1949 või 50", "1949", ("[1949-01~..1949-04~,1950]", "[1949,1950]")),
]  # fmt: skip


@every_row(("words", "ask", "choices"), PROPOSED)
def test_what_is_datable_is_asked_about_and_never_asserted(words: str, ask: str | None, choices: tuple[str]) -> None:
    reading = read(words)
    assert reading.edtf is None
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)
    assert reading.alternatives[: len(choices)] == choices


@every_row(
    ("words", "choices"),
    [
        ("summer 9998 in Dunedin", ("9998-22", "9998-12/9999-02", "9997-12/9998-02")),
        ("summer 9999 in Dunedin", ("9999-22", "9998-12/9999-02")),
        ("Linda, 0001-21", ("0001-21", "0001-09/0001-11")),
        ("he was born in 9990 and looks about five here", ("9995~",)),
        ("he was born in 9999 and looks about five here", ("9999",)),
        ("she was born in 9999 and this is her at about forty", ("1940~", "1840~", "2040~")),
    ],
)
def test_no_choice_is_of_a_year_that_edtf_does_not_have(words: str, choices: tuple[str, ...]) -> None:
    reading = read(words, PhraseSettings(), KnownDates(this_year=9999, first_year=0))
    assert (reading.edtf, reading.alternatives) == (None, choices)
