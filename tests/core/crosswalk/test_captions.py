"""Captions: sentence rules of our own; devised titles as DACS 2.3.3 and 2.3.7 have them (from memory)."""

import itertools
import re
from dataclasses import replace
from typing import Any

import pytest
from tests.every_row import every_row

from boxlore.core.crosswalk import captions, references
from boxlore.core.crosswalk.captions import LENGTHS, Style
from boxlore.core.dates.family_display import FamilyWay
from boxlore.core.dates.reading import DateReading
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import Conflict, PersonShown, Record, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.statements import KEEPER, Said, Source, Sure
from boxlore.core.wording.catalogue import ENGLISH, say_in

LEIDA = Source(Said.NARRATOR, "leida")


def told(field: str, words: str, **more: Any) -> StatementView:
    values = {"statement": field, "language": "en", "source": LEIDA, "said_by": "Leida Rourke", "sure": Sure.SURE}
    return StatementView(field=field, words=words, audience="anyone", recorded_at="", **{**values, **more})


def person(name: str, *area: float, role: str = "person", number: int = 0, **more: Any) -> PersonShown:
    return PersonShown(
        told=told(role, name, **more), name=name, role=role, person=name.lower(), scan="s", area=area, number=number
    )


def told_only(words: str) -> PersonShown:
    """Words of whom nobody of the registry is meant."""
    return replace(person(words), person="")


def record(*people: PersonShown, kind: str = "print", **words: str | StatementView) -> Record:
    rows = {name: (said if isinstance(said, StatementView) else told(name, said),) for name, said in words.items()}
    return Record(id="i", number="TRA-0001", kind=kind, told=rows, people=people)


GUESS, LIKELY = {"sure": Sure.GUESS}, {"sure": Sure.LIKELY}

OWN = {
    "story": told("story", "The band played."),
    "own-clothes": (told("own-clothes", "Sunday\nbest.", said_by="Con Rourke", source=Source(Said.NARRATOR, "con")),
                    told("own-clothes", "aprons")),
    "own-what-was-cooked": (told("own-what-was-cooked", "Eel soup"),),
}  # fmt: skip


def test_answers_to_own_questions_stand_behind_the_stories_with_what_they_are_about() -> None:
    made = replace(record(), told={**OWN, "story": (OWN["story"],)})
    assert captions.own_lines(made) == ["Clothes: Sunday best.", "What was cooked: Eel soup."]
    assert captions.caption(made) == (
        "The band played. Clothes: Sunday best. What was cooked: Eel soup. Told by Leida Rourke and Con Rourke."
    )
    assert "Sunday" not in captions.caption(made, "sheet") + captions.caption(made, "slip")


TITLES = [
    (record(title="Our wedding"), "Our wedding"),
    (record(), "Photograph"),
    (record(kind="letter"), "Letter"),
    (record(place="Haapsalu"), "Photograph, Haapsalu"),
    (record(person("Memm")), "Photograph of Memm"),
    (record(person("Memm"), replace(told_only("the picnic at Haapsalu"), in_question=True)), "Photograph of Memm"),
    (record(told_only("his wife"), told_only("the twins")), "Photograph of his wife and the twins"),
    (record(person("Memm"), place="Kärdla", kind="card"), "Mounted photograph of Memm, Kärdla"),
    (record(person("Anna", **GUESS)), "Photograph, perhaps of Anna"),
    (
        record(person("Anna", **GUESS), person("Ruth"), person("perhaps Joe")),
        "Photograph of Anna (perhaps), Ruth and Joe (perhaps)",
    ),
    (record(person("perhaps one of the boys")), "Photograph, perhaps of one of the boys"),
    (record(place="תל אביב"), "Photograph, \u2068תל אביב\u2069"),
    (
        record(person("לאה", **GUESS), person("משה"), person("Ruth")),
        "Photograph of \u2068לאה\u2069 (perhaps), \u2068משה\u2069 and Ruth",
    ),
    (record(person("Anna?", **GUESS), person("Ruth")), "Photograph of Anna? and Ruth"),
    (record(person("Anna", **LIKELY), person("Ruth")), "Photograph of Anna (probably) and Ruth"),
    (record(person("A"), person("B"), person("C"), person("D")), "Photograph of A, B, C and one other"),
    (record(*map(person, "ABCDE")), "Photograph of A, B, C and two others"),
    (record(*map(person, "ABCDEFGHIJKLMN")), "Photograph of A, B, C and 11 others"),
    (record(person("Leida"), occasion="a picnic."), "Leida, a picnic"),
    (record(occasion="midsummer bonfire", place="Haapsalu"), "Midsummer bonfire, Haapsalu"),
    (record(occasion="midsummer in Haapsalu", place="Haapsalu"), "Midsummer in Haapsalu"),
    (
        record(person("Leida Rourke"), person("Tom Rourke"), occasion="the wedding of Leida Tamm and Tom Rourke"),
        "The wedding of Leida Tamm and Tom Rourke",
    ),
]


@every_row(("made", "title"), TITLES)
def test_titles(made: Record, title: str) -> None:
    assert captions.title(made) == title
    assert captions.title(made, Style(brackets=True)) == (title if made.words("title") else f"[{title}]")


def test_to_a_family_one_other_has_a_name() -> None:
    family = Style(dates=FamilyWay())
    assert captions.title(record(*map(person, "ABCD")), family) == "Photograph of A, B, C and D"
    assert captions.title(record(*map(person, "ABCD"), occasion="regatta"), family) == "A, B, C and D, regatta"
    assert captions.title(record(*map(person, "ABCDE")), family) == "Photograph of A, B, C and two others"


NAMES = [
    ("Anna", Sure.SURE, "Anna"),
    ("Anna", Sure.LIKELY, "probably Anna"),
    ("Anna", Sure.GUESS, "perhaps Anna"),
    ("perhaps Anna", Sure.GUESS, "perhaps Anna"),
    ("Maybe Anna", Sure.LIKELY, "Maybe Anna"),
    ("me again? no, another girl", Sure.GUESS, "me again? no, another girl"),
    ("Anna\n  Tamm", Sure.SURE, "Anna Tamm"),
]


@pytest.mark.parametrize(("name", "sure", "wanted"), NAMES)
def test_unsure_names_say_so_once(name: str, sure: Sure, wanted: str) -> None:
    assert captions.name_of(person(name, sure=sure)) == wanted


def test_numbers_and_kin_where_the_style_asks() -> None:
    memm = person("Memm", 0.5, 0.5, number=3)
    style = Style(numbers=True, kin={"memm": "Leida’s grandmother"})
    assert captions.name_of(memm, style) == "3\u00a0Memm (Leida’s grandmother)"
    assert captions.name_of(memm) == "Memm"


LISTS = [
    ([], ""),
    (["A"], "A"),
    (["A", "B"], "A and B"),
    (["A", "B", "C"], "A, B and C"),
    (["A, lost", "B"], "A, lost; and B"),
]


@pytest.mark.parametrize(("names", "wanted"), LISTS)
def test_lists(names: list[str], wanted: str) -> None:
    assert ENGLISH.listed(names) == wanted


def back_and_front(*others: PersonShown) -> Record:
    back = [person(name, x, 0.2, 0.08, 0.08) for name, x in (("Ruth", 0.5), ("Anna", 0.3))]
    front = [person(name, x, 0.4, 0.08, 0.08) for name, x in (("Tui", 0.45), ("Jane", 0.25))]
    return record(*front, *back, *others)


PEOPLE = [
    (record(), ""),
    (record(person("Memm")), "Memm."),
    (record(person("Memm", 0.5, 0.5)), "Memm."),
    (record(person("B", 0.8, 0.5), person("A", 0.2, 0.5)), "Left to right: A and B."),
    (record(person("B", 0.8, 0.5), person("A", 0.2, 0.5), person("C")), "Left to right: A and B. With C."),
    (back_and_front(), "Back row, left to right: Anna and Ruth. Front row, left to right: Jane and Tui."),
    (record(person("Aino", role="named")), "Names Aino."),
    (record(person("A"), person("Aino", role="named", **GUESS)), "A. Named, not shown: perhaps Aino."),
    (record(person("A. Saar", role="photographer")), "Photograph by A. Saar."),
    (record(person("a dock hand", 0.1, 0.1, **GUESS)), "Perhaps a dock hand."),
]


def people_in(made: Record, style: Style = captions.PLAIN) -> str:
    """What a caption says of the people: who is shown, who is named, who took it."""
    lines = (captions.who_line(made, style), captions.named_line(made, style), captions.taker_line(made, style))
    return " ".join(captions.sentence(line) for line in lines if line)


@every_row(("made", "wanted"), PEOPLE)
def test_people_as_people_say_them(made: Record, wanted: str) -> None:
    assert people_in(made) == wanted


def test_places_told_keep_their_gaps() -> None:
    ruth, anna = replace(person("Ruth"), position=1), replace(person("Anna"), position=3)
    made = replace(record(anna, ruth), nameless=(("", 2),))
    assert people_in(made) == "Left to right: Ruth, someone not known and Anna."
    gap = "Left to right: Ruth, someone not named here and Anna."
    assert people_in(record(anna, ruth)) == gap
    assert people_in(record(anna)) == "Anna (third from the left)."
    assert people_in(record(replace(anna, position=14))) == "Anna (number 14 from the left)."
    right = [replace(anna, position=-2), replace(ruth, position=-1)]
    wanted = "Ruth. Anna (second from the right) and Ida (first from the right)."
    assert people_in(record(ruth, right[0], replace(person("Ida"), position=-1))) == wanted
    assert people_in(record(right[1])) == "Ruth (first from the right)."
    around = [replace(anna, row="clockwise", position=1), replace(ruth, row="clockwise", position=2)]
    assert people_in(record(*around)) == "Clockwise: Anna and Ruth."
    in_question = replace(told_only("the rest"), in_question=True)
    asked = "Left to right: Ruth, “the rest” and Anna. Also told, and still to be asked about: “the rest”."
    made = record(ruth, anna, in_question, in_question, replace(in_question, position=2))
    assert people_in(made, Style(dates=FamilyWay())) == asked
    assert people_in(made) == gap
    rows = [replace(person("Ann"), row="back", position=1), replace(person("Tui"), row="front", position=1)]
    assert people_in(record(*rows)) == "Back row: Ann. Front row: Tui."
    goes_on = [rows[0], replace(rows[1], position=2), replace(person("Ida"), row="front", position=4)]
    wanted = "Back row: Ann. Front row, left to right: Tui, someone not named here and Ida."
    assert people_in(record(*goes_on)) == wanted


def test_words_that_are_asked_about_keep_their_place_and_are_not_lost() -> None:
    """Where somebody is told at a place in a row, a row of three reads as a row of three."""
    family = Style(dates=FamilyWay())
    david, ali = (replace(told_only(name), in_question=True) for name in ("דוד כהן", "محمد علي"))
    row = [replace(shown, row="back", position=at) for at, shown in enumerate((person("Anna"), david, ali), 1)]
    made = record(*row, replace(person("Karl"), row="front", position=1))
    wanted = "Back row, left to right: Anna, \u2068“דוד כהן”\u2069 and \u2068“محمد علي”\u2069. Front row: Karl."
    assert people_in(made, family) == wanted
    gaps = "Back row, left to right: Anna, someone not named here and someone not named here. Front row: Karl."
    assert people_in(made) == gaps
    assert captions.title(made, family) == "Photograph of Anna, Karl and two others"
    alone = record(replace(person("Anna", **GUESS), position=1), replace(david, position=2))
    assert captions.title(alone) == "Photograph of Anna (perhaps) and one other"
    assert people_in(record(david), family) == "Also told, and still to be asked about: \u2068“דוד כהן”\u2069."
    assert captions.title(record(david)) == "Photograph"
    marked = replace(person("Rex", 0.5, 0.5, number=1), in_question=True)
    assert people_in(record(marked)) == "Rex."


def date(words: str, edtf: str) -> StatementView:
    return told("date", words, value=DateReading.from_edtf(edtf) if edtf else None)


DATES = [
    ("the summer Joe came home", "1946", "the summer Joe came home (1946)"),
    ("about 1920", "1920~", "about 1920"),
    ("1920, about.", "1920~", "1920, about"),
    ("circa 1920", "1920~", "circa 1920"),
    ("June 1951.", "1951-06", "June 1951"),
    ("the summer of 1960", "1960-22", "the summer of 1960"),
    ("Easter ’64", "1964-03-29", "Easter ’64 (1964 March 29)"),
    ("then", "", "then"),
]


@every_row(("words", "edtf", "wanted"), DATES)
def test_the_words_as_told_come_first(words: str, edtf: str, wanted: str) -> None:
    assert captions.date_line(record(date=date(words, edtf))) == wanted


def test_a_date_told_in_another_language_is_said_in_that_of_the_caption_too() -> None:
    """In an album in German, say; figures, and what is the same in both, stand once."""
    german = Style(dates=FamilyWay("de"), say=say_in("de"))
    for words, edtf, wanted in (
        ("about 1871", "1871~", "about 1871 (etwa 1871)"), ("1920", "1920", "1920"),
        ("April 1912", "1912-04", "April 1912"), ("long ago", "", "long ago"),
    ):  # fmt: skip
        made = record(date=date(words, edtf))
        assert captions.date_line(made, german) == wanted
        assert captions.date_line(made, Style(dates=FamilyWay())) == words


def place(words: str, city: str, country: str = "Estonia") -> StatementView:
    return told("place", words, value=PlaceReading(words, "match", (Place(name=city, city=city, country=country),)))


PLACES = [
    (place("Reval", "Tallinn"), "Reval (now Tallinn, Estonia)"),
    (place("near Kärdla, Hiiumaa", "Kärdla"), "near Kärdla, Hiiumaa"),
    (place("Haapsalu.", "Haapsalu"), "Haapsalu"),
    (place("Port Chalmers, Otago, N.Z.", "Port Chalmers"), "Port Chalmers, Otago, N.Z."),
    (told("place", "the bach"), "the bach"),
]


@pytest.mark.parametrize(("said", "wanted"), PLACES)
def test_places(said: StatementView, wanted: str) -> None:
    assert captions.place_line(record(place=said)) == wanted


def test_the_sources_each_once() -> None:
    verso = Source(Said.INSCRIPTION, "verso")
    made = record(
        person("Memm", said_by="Con Rourke"),
        date=told("date", "1912", source=verso),
        place=told("place", "Reval", source=verso),
        story="Long ago.",
        occasion=told("occasion", "school", source=Source(Said.DOCUMENT, "school register.")),
    )
    wanted = "told by Leida Rourke and Con Rourke; as written on the back; after school register"
    assert captions.source_line(made) == wanted
    assert captions.source_line(record(date=told("date", "1912", said_by=""))) == "told by a narrator"
    assert captions.source_line(record(date=told("date", "1912", source=KEEPER, said_by=""))) == ""


FULL = record(
    person("Leida", 0.2, 0.5, number=1),
    person("Tom", 0.6, 0.5, number=2, **GUESS),
    person("A. Saar", role="photographer"),
    person("Aino", role="named"),
    title="Our wedding",
    occasion="the wedding",
    date=date("Easter ’64", "1964-03-29"),
    place="Iona Church.",
    story="It rained. Then it did not",
)


def test_three_lengths() -> None:
    assert (
        captions.caption(FULL, "slip")
        == "Left to right: Leida and Tom (perhaps). Iona Church, Easter ’64 (1964 March 29)."
    )
    sheet = (
        "The wedding. Left to right: Leida and Tom (perhaps). Named, not shown: Aino. Photograph by A. Saar. "
        "Iona Church, Easter ’64 (1964 March 29)."
    )
    assert captions.caption(FULL, "sheet") == sheet
    assert captions.caption(FULL, "full") == f"{sheet} It rained. Then it did not. Told by Leida Rourke."


def test_an_occasion_that_is_the_title_is_not_said_twice() -> None:
    made = record(occasion="Midsummer bonfire")
    assert captions.title(made) == "Midsummer bonfire"
    assert captions.caption(made, "sheet") == ""


FAULTS = re.compile(
    r"\b(\w+)\W+\1\b|\.\.|,,|;;|\s[,.;]|\(\)|\b(?:on|in|at) (?:on|in|at)\b|,\.|:\.|^\W|\band\.|  |\[\]",
    re.IGNORECASE,
)
FIELDS = {
    "title": "At the farm.",
    "occasion": "in the school holidays,",
    "date": date("in summer 1931.", "1931-22"),
    "place": "on the shore near Kärdla;",
    "story": "She sang.\nNobody listened",
}
PEOPLE_SETS: list[tuple[PersonShown, ...]] = [
    (),
    (person("Memm"),),
    (person("Anna", 0.2, 0.2, 0.1, 0.1, **GUESS), person("perhaps Ruth", 0.6, 0.2, 0.1, 0.1, **LIKELY)),
    (
        *back_and_front().people,
        person("Oskar"),
        person("Atelier Lind", role="photographer"),
        person("Mia", role="named"),
    ),
]
EVERY = [
    (names, people)
    for size in range(len(FIELDS) + 1)
    for names in itertools.combinations(FIELDS, size)
    for people in PEOPLE_SETS
]


def test_every_sentence_is_right_with_any_field_missing() -> None:
    """All 128 ways of telling some of the fields: no doubled word or stop, no “on in”, no empty bracket."""
    assert len(EVERY) == 128
    for names, people in EVERY:
        made = record(*people, **{name: FIELDS[name] for name in names})
        for length in LENGTHS:
            said = captions.caption(made, length)
            assert not said or (said[-1] in ".!?…" and said[0].isupper()), said
            assert not FAULTS.search(said.replace("\n", " ")), said
        assert not FAULTS.search(captions.title(made)), captions.title(made)
        assert not FAULTS.search(captions.alt_text(made)), captions.alt_text(made)


ALTS = [
    (record(), "Photograph, not yet described."),
    (record(kind="letter", title="Letter from Helmi"), "Letter: Letter from Helmi."),
    (record(person("Memm"), place="Kärdla", date=date("1932", "1932")), "Photograph of Memm, Kärdla, 1932."),
    (record(occasion="a picnic", place="Ōtākou"), "Photograph: a picnic, Ōtākou."),
    (record(person("Tom"), occasion="a picnic"), "Photograph of Tom, a picnic."),
]  # fmt: skip


@pytest.mark.parametrize(("made", "wanted"), ALTS)
def test_alt_text(made: Record, wanted: str) -> None:
    assert captions.alt_text(made) == wanted


def test_reference() -> None:
    made = Record(id="i", number="TRA-0042", mark=Mark((("box", "3"), ("folder", "12")), 4))
    assert references.reference(made) == "TRA-0042 · Box 3 · Folder 12 · Item 4"
    assert references.reference(record()) == "TRA-0001"
    given = tuple(told("archive_reference", words) for words in (" P-991 ", "2"))
    held = replace(made, told={"archive_reference": given})
    assert references.reference(held) == "TRA-0042 · Box 3 · Folder 12 · Item 4 · archive P-991 and 2"


SENTENCES = [
    ("", ""),
    ("a word", "A word."),
    ("Done!", "Done!"),
    ("he said “no.”", "He said “no.”"),
    ("so (1946)", "So (1946)."),
]


@pytest.mark.parametrize(("words", "wanted"), SENTENCES)
def test_sentences(words: str, wanted: str) -> None:
    assert captions.sentence(words) == wanted


BARE = [
    ("Haapsalu.", "Haapsalu"),
    ("N.Z.", "N.Z."),
    ("St.", "St."),
    ("then …", "then …"),
    ("so...", "so..."),
    ("a,; ", "a"),
    ("", ""),
]


@pytest.mark.parametrize(("words", "wanted"), BARE)
def test_stops_that_would_be_doubled(words: str, wanted: str) -> None:
    assert captions.bare(words) == wanted


def test_a_letter_titled_as_one() -> None:
    assert captions.inscription_line(record(inscription="Reval,\n sadam")) == "Written on it: “Reval, sadam”"


FAMILY_DATES = [  # words told, EDTF, language, order, the line (our own rules)
    ("the summer of 1960", "1960-22", "en", "", "the summer of 1960"),
    ("12 June 1938", "1938-06-12", "en", "", "12 June 1938"),
    ("June the 12th, 1938", "1938-06-12", "en", "mdy", "June the 12th, 1938"),
    ("suvel 1960", "1960-22", "et", "", "suvel 1960"),
    ("Easter 1938", "1938-04-17", "en", "", "Easter 1938 (17 April 1938)"),
    ("Easter 1938", "1938-04-17", "en", "mdy", "Easter 1938 (April 17, 1938)"),
    ("lihavõtted 1938", "1938-04-17", "et", "", "lihavõtted 1938 (17. aprill 1938)"),
    ("the summer Joe came home", "1946-22~", "en", "", "the summer Joe came home (about summer 1946)"),
    ("when Joe was six", "1931~", "de", "", "when Joe was six (etwa 1931)"),
    ("7/4/1952", "1952-07-04", "en", "", "7/4/1952 (4 July 1952)"),
    ("13/4/1952", "1952-04-13", "en", "", "13/4/1952"),
    ("1952-04-13", "1952-04-13", "en", "", "1952-04-13"),
    ("4/4/1952", "1952-04-04", "en", "", "4/4/1952 (4 April 1952)"),
    ("about 1935", "1935~", "en", "", "about 1935"),
    ("1938?", "1938?", "en", "", "1938?"),
    ("the 'thirties", "193X", "en", "", "the 'thirties (the 1930s)"),
    ("1946 or 1948", "[1946,1948]", "fr", "", "1946 or 1948"),
    ("after we moved", "[1952..]", "ru", "", "after we moved (не ранее 1952)"),
    ("before 1910", "[..1909]", "en", "", "before 1910"),
    ("pärast 1945", "[1946..]", "et", "", "pärast 1945"),
    ("before the move", "[..1909]", "en", "", "before the move (not later than 1909)"),
]


@every_row(("words", "edtf", "language", "order", "line"), FAMILY_DATES)
def test_a_family_s_date_is_not_said_twice(words: str, edtf: str, language: str, order: str, line: str) -> None:
    made = record(date=date(words, edtf))
    assert captions.date_line(made, Style(dates=FamilyWay(language, order))) == line


def test_alt_texts_have_the_date_as_the_family_writes_it() -> None:
    made = record(date=date("Easter 1938", "1938-04-17"))
    assert captions.alt_text(made, Style(dates=FamilyWay("et"))) == "Photograph, not yet described, 17. aprill 1938."
    assert captions.alt_text(made) == "Photograph, not yet described, 1938 April 17."
    assert captions.alt_text(record(date="one spring")) == "Photograph, not yet described, one spring."


def test_a_title_of_which_nothing_can_be_seen_is_none() -> None:
    assert captions.title(record(person("Aino"), title="\ufffe\uffff")) == "Photograph of Aino"


def test_what_is_disputed_is_given_with_who_says_which_and_asserted_nowhere() -> None:
    summer = replace(date("the summer Joe came home", "1946"), source=LEIDA, said_by="Leida", statement="s1")
    back = replace(date("1932", "1932"), source=Source(Said.INSCRIPTION, "verso"), statement="s2")
    places = (
        replace(place("Reval", "Tallinn"), said_by="Leida"),
        replace(place("Narva", "Narva"), said_by="Con", sure=Sure.GUESS),
    )
    made = replace(
        record(person("Anna", sure=Sure.SURE)),
        told={"date": (summer, back), "place": places},
        conflicts=(Conflict("date", (summer, back), "they differ"), Conflict("place", places, "they differ")),
    )
    assert captions.date_line(made) == "the summer Joe came home (1946; Leida) or 1932 (written on the back)"
    assert captions.place_line(made) == "Reval (now Tallinn, Estonia; Leida) or Narva (Con, a guess)"
    assert captions.title(made) == "Photograph of Anna, Reval or Narva"
    assert captions.alt_text(made) == "Photograph of Anna, Reval or Narva, 1932 or 1946."
    assert captions.source_line(made) == "told by Leida, Con and Leida Rourke; as written on the back"
    assert captions.name_of(replace(person("Anna"), disputed=True)) == "perhaps Anna"
    hidden = replace(made, conflicts=tuple(replace(told, told=told.told[:1], hidden=1) for told in made.conflicts))
    assert captions.where_when(hidden) == (
        "Reval (now Tallinn, Estonia; Leida; disputed), the summer Joe came home (1946; Leida; disputed)"
    )
    assert captions.title(hidden) == "Photograph of Anna, Reval (disputed)"


FILE = {"source": Source(Said.FILE)}
NAMED = [
    ({}, ("IMG_1.jpg", "1932_summer Haapsalu.jpg"), "1932 summer Haapsalu"),
    ({}, ("The regatta/IMG_1.jpg",), "The regatta"),
    ({}, ("the farm/at noon.jpg",), "At noon"),
    ({}, ("IMG_1.jpg",), "Photograph"),
    ({}, ("Cscans/CON.jpg",), "Photograph"),
    ({"place": "Reval"}, ("at noon.jpg",), "Photograph, Reval"),
    ({"occasion": "Wedding"}, ("at noon.jpg",), "Wedding"),
    ({"title": "Nets"}, ("at noon.jpg",), "Nets"),
]


@every_row(("words", "names", "title"), NAMED)
def test_a_files_name_is_the_title_where_nothing_else_is_known(
    words: dict[str, str], names: tuple[str, ...], title: str
) -> None:
    views = tuple(told("file_name", name, **FILE) for name in names)
    made = record(**words)
    made = replace(made, told={**made.told, "file_name": views})
    assert captions.title(made) == title
    assert captions.named_by_file(made) or names == ("IMG_1.jpg",)


def test_a_place_from_right_to_left_leaves_the_date_behind_it() -> None:
    """Unicode Standard Annex 9, 3.3.2 (P2): what stands in an isolate does not decide the direction of the line."""
    made = record(place="תל אביב", date=told("date", "1936", value=DateReading.from_edtf("1936")))
    assert captions.where_when(made) == "\u2068תל אביב\u2069, 1936"
    assert captions.alt_text(made) == "Photograph, not yet described, \u2068תל אביב\u2069, 1936."


def test_tellers_from_right_to_left_are_no_run_of_their_neighbours() -> None:
    """Unicode Standard Annex 9, 3.3.3 (N1)."""
    rows = {
        name: told(name, "words", said_by=by) for name, by in (("date", "לאה"), ("place", "משה"), ("story", "Ruth"))
    }
    assert captions.source_line(record(**rows)) == "told by \u2068לאה\u2069, \u2068משה\u2069 and Ruth"


def test_writing_on_both_sides_is_said_once() -> None:
    front, back = (Source(Said.INSCRIPTION, side) for side in ("recto", "verso"))
    rows = {"date": told("date", "1912", source=back), "place": told("place", "Reval", source=front)}
    assert captions.source_line(record(**rows)) == "as written on the front and the back"
    with_story = record(**rows, story="The band played.")
    assert captions.source_line(with_story) == "told by Leida Rourke; as written on the front and the back"
