"""Each reader of clues: what a careful person would conclude from what is told, worked out by hand beside it (a
judgement of our own, no outside source, where none is named)."""

from dataclasses import replace

from tests.core.evidence.family import BACK, LEIDA, days, days_of, item, person, row, shown, told, worked_out
from tests.every_row import every_row

from boxlore.core.dates import phrases
from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.claims import of_birth, of_death
from boxlore.core.evidence.lives import ToldOfPerson
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import PersonShown, Related
from boxlore.core.statements import Said, Source, Sure

DATES = (
    # the words, read by the reader of dates; the first and the last day by hand
    ("12 May 1912", "1912-05-12 1912-05-12"),
    ("between 1915 and 1918", "1915-01-01 1918-12-31"),
    ("before 1910", "- 1909-12-31"),
    ("after 1950", "1951-01-01 -"),
    ("about 1871", "1866-01-01 1876-12-31"),  # five years either side: Yale, Rhode Island Furniture Archive
    ("1908 or 1910", "1908-01-01 1910-12-31"),
)  # fmt: skip


@every_row(("words", "wanted"), DATES)
def test_told_dates(words: str, wanted: str) -> None:
    assert days_of(worked_out([item("i", told("date", words))]), "i") == wanted


SETS = (
    # EDTF, another date told, and what both come to
    ("[1908,1910]", "1909/1912", "1910-01-01 1910-12-31"),
    ("[1908,1910]", "../1909", "1908-01-01 1908-12-31"),
    ("[..1908,1910]", "1900/1912", "1900-01-01 1910-12-31"),
    ("XXXX-06-24", "1937-02/1938-03", "1937-06-24 1937-06-24"),
    ("192X-22", "1928-09/1930", "1929-06-01 1929-08-31"),
    ("19XX-02-29", "1921/1925", "1924-02-29 1924-02-29"),
    ("XXXX-XX-24", "1921/1925", "1921-01-01 1925-12-31"),
    ("XXXX-06-XX", "1921/1925", "1921-06-01 1925-06-30"),
)


@every_row(("one", "other", "wanted"), SETS)
def test_alternatives(one: str, other: str, wanted: str) -> None:
    views = [told("date", text, value=DateReading.from_edtf(text)) for text in (one, other)]
    worked = worked_out([item("i", *views)])
    assert days_of(worked, "i") == wanted and not worked.circles


SEASONS = (
    # what is asked about, where the picture was taken (latitude), and what both may come to
    ("winter 1946", None, "1945-12-01 1947-02-28"),  # it began or ended in 1946
    ("winter 1946", 48.6, "1945-12-01 1947-02-28"),
    ("summer 1946", -45.8, "1945-12-01 1947-02-28"),
    ("winter 1946", -45.8, "1946-06-01 1946-08-31"),
    ("summer 1946", 48.6, "1946-06-01 1946-08-31"),
)


@every_row(("words", "latitude", "wanted"), SEASONS)
def test_a_season_that_is_asked_about_may_be_of_either_half_of_the_world(
    words: str, latitude: float | None, wanted: str
) -> None:
    """The halves of the world have their seasons six months apart (ISO 8601-2:2019, 4.8: 25 to 28 and 29 to 32, from
    memory)."""
    views = [replace(told("date", words), value=None)]
    if latitude is not None:
        views.append(told("place", "there", value=PlaceReading("there", "match", (Place(name="There", lat=latitude),))))
    assert days_of(worked_out([item("i", *views)]), "i") == wanted


def test_a_files_date_and_what_nobody_knows_say_nothing() -> None:
    views = (
        told("date", "1999", source=Source(Said.FILE, "scan.jpg")),
        told("date", "1998", sure=Sure.NOT_KNOWN),
        told("date", "no idea"),
    )
    assert days_of(worked_out([item("i", *views)]), "i") == "- -"


def test_lives() -> None:
    people = (person("Liisi", died="2004"), person("Leida"), person("Arvo", died="1944"), person("Con", died="1941"))
    rows = (
        row("Liisi", "born", "1918"), row("Liisi", "died", "2004"), row("Leida", "born", "17 May 1941"),
        row("Leida", "mother", "Liisi"), row("Leida", "father", "Arvo"), row("Arvo", "buried", "3 March 1944"),
        row("Leida", "father", "nobody here"), row("Leida", "father", "Con"), row("Con", "buried", "1941"),
        row("Leida", "mother", "Leida"), row("Arvo", "born", "no idea"),
    )  # fmt: skip
    both = item("both", people=[shown("Liisi"), shown("Arvo"), shown("Leida"), shown("a stranger")])
    worked = worked_out([both], people, rows)
    assert days_of(worked, "both") == "1941-05-17 1944-03-03"
    # twelve years before the birth, and not yet seventy-one
    assert days(worked, of_birth("Arvo")) == "1870-05-18 1929-05-17"
    # alive in the picture with his child, or ten months before the birth; buried by then
    assert days(worked, of_death("Arvo")) == "1941-05-17 1944-03-03"
    assert days(worked, of_death("Con")) == "1940-07-21 1941-12-31"
    assert {claim.source for claim in worked.because("item both")} == {"Leida Rourke", "the keeper"}


def test_a_birthday_without_its_year_may_be_of_before_the_first_photograph() -> None:
    people = [person("Juhan"), person("Mari"), person("Leida")]
    rows = [
        row("Juhan", "born", "24 June"), row("Mari", "born", "1835"), row("Mari", "father", "Juhan"),
        ToldOfPerson(person="Leida", field="born", words="in June", value=DateReading.from_edtf("181X-06"),
                     source="Con", sure=Sure.SURE),
        row("Leida", "born", "before 1813"),
    ]  # fmt: skip
    worked = worked_out([], people, rows)
    # twelve years before his daughter, and not yet seventy-one
    assert days(worked, of_birth("Juhan")) == "1764-01-02 1823-12-31" and not worked.circles
    assert days(worked, of_birth("Leida")) == "1810-06-01 1812-06-30"


def test_nobody_lives_longer_than_anybody_did() -> None:
    worked = worked_out([], [person("Mari", died="1933")], [row("Mari", "died", "1 February 1933")])
    assert (
        days(worked, of_birth("Mari")).split()[0] == "1810-08-20"
    )  # 122 years and 164 days before, and the one 29 February that may lie in these


AGES = (
    ("Liisi, aged 5", "1922-01-01 1924-12-31"),  # from the fifth birthday to the sixth, and a year either side
    ("Liisi looks about five", "1921-01-01 1925-12-31"),  # two years more, by the table
    ("Liisi, about fifteen years old", "1929-01-01 1937-12-31"),
    ("somebody else, aged 5", "1918-01-01 -"),
)


@every_row(("words", "wanted"), AGES)
def test_ages(words: str, wanted: str) -> None:
    people = (person("Liisi"), person("Aino"))
    record = item("i", told("story", words), people=[shown("Liisi"), shown("Aino")])
    worked = worked_out([record], people, [row("Liisi", "born", "1 January 1918")])
    assert days_of(worked, "i") == wanted


def test_occasions_tie_pictures_to_the_event_and_to_one_another() -> None:
    wedding = FamilyEvent(
        id="w", kind="marriage", names=("the wedding",), when=phrases.read("12 May 1912"), words="1912"
    )
    undated = FamilyEvent(id="u", kind="other", names=("the launch",))
    life = FamilyEvent(id="x", kind="birth", names=("a birth",), when=phrases.read("1900"), own=False)
    of_wedding = told("occasion", "the wedding", value=PersonRef("w"))
    of_launch = told("occasion", "the launch", value=PersonRef("u"))
    records = [
        item("a", of_wedding), item("b", of_launch, told("date", "1 July 1920")), item("c", of_launch),
        item("d", told("occasion", "some occasion")),
    ]  # fmt: skip
    worked = worked_out(records, happened=[wedding, undated, life])
    assert (
        days_of(worked, "a") == "1912-04-10 1912-06-13"
    )  # 31 days either side, and a 29 February that may lie between
    assert days_of(worked, "c") == "1920-04-28 1920-09-03"  # twice that either side of another picture of it
    assert days_of(worked, "d") == "- -"


def test_relations() -> None:
    related = (
        Related(kind="same_day", number="B"), Related(kind="attached_to", number="C"),
        Related(kind="same_picture", number="A"), Related(kind="same_picture", number="GONE"),
    )  # fmt: skip
    records = [
        item("a", related=related),
        item("b", told("date", "1931"), related=(Related(kind="same_day", number="A", reverse=True),)),
        item("c", told("date", "1950")),
    ]
    worked = worked_out(records)
    assert days_of(worked, "a") == "1931-01-01 1931-12-31"
    assert next(claim.words for claim in worked.because("item a")) == "A was taken on the same day as B"


def test_names_written_on_the_thing_itself() -> None:
    helmi = person("Helmi", married=("12 May 1912",), surnames=("Tamm", "Lepik"))
    twice = person("Liisi", married=("1939", "1950"), surnames=("Tamm", "Mägi"))
    rows = [row("Helmi", "born_as", "Lepik"), row("Liisi", "born_as", "Mägi")]
    records = [
        item("wed", people=[shown("Helmi", source=BACK, words="Helmi Tamm")]),
        item("maiden", people=[shown("Helmi", source=BACK, words="Helmi Lepik")]),
        item("told", people=[shown("Helmi", source=LEIDA, words="Helmi Tamm")]),
        item("twice", people=[shown("Liisi", source=BACK, words="Liisi Tamm")]),
        item("by her name", told("inscription", "Helmi Tamm, in the yard", source=BACK), people=[shown("Helmi")]),
        item("by another", told("inscription", "Helmi Lepik", source=BACK), people=[shown("Helmi")]),
    ]
    worked = worked_out(records, [helmi, twice], rows)
    assert days_of(worked, "wed") == days_of(worked, "by her name") == "1912-05-12 -"
    assert {days_of(worked, name) for name in ("maiden", "told", "twice", "by another")} == {"- -"}


BESIDE_WORDS = (
    # a date beside words that are not understood is a guess until it is answered
    ("1919, when the boys came home", "1919-01-01 1919-12-31"),
    ("while we had the Holden, between 1952 and 1956", "1952-01-01 1956-12-31"),
    ("1919, before the boys came home", "- -"),
    ("1919, when the boys came home, or 1920", "- -"),
    ("1919, when the boys came home, 1923", "- -"),
    ("when the boys came home", "- -"),
)


@every_row(("words", "wanted"), BESIDE_WORDS)
def test_a_date_beside_words_that_are_not_understood(words: str, wanted: str) -> None:
    worked = worked_out([item("i", told("date", words))])
    assert days_of(worked, "i") == wanted
    assert all(claim.sure is Sure.GUESS for claim in worked.because("item i"))


def test_somebody_denied_to_be_there_bounds_nothing() -> None:
    people = [person("Salim", died="1919"), person("Jorge"), person("Nadia")]
    rows = [row("Salim", "died", "1919"), row("Nadia", "born", "30 January 1915")]
    ten = told("date", "1926")

    def circles(guess: Sure, words: str, denied: Sure) -> int:
        salim = PersonShown(told=told("person", "Salim", sure=guess), name="Salim", person="Salim")
        jorge = PersonShown(told=told("person", words, sure=denied), name="Jorge", person="Jorge")
        return len(worked_out([item("i", ten, people=[salim, jorge])], people, rows).circles)

    assert circles(Sure.GUESS, "It is not Salim, it is Jorge", Sure.SURE) == 0
    assert circles(Sure.SURE, "Das ist nicht Salim, das ist Jorge", Sure.SURE) == 0
    assert circles(Sure.SURE, "It isn’t Salim, it’s Jorge", Sure.SURE) == 0
    assert circles(Sure.SURE, "It is not Salim, it is Jorge", Sure.GUESS) == 1
    assert circles(Sure.GUESS, "Jorge", Sure.SURE) == 1


DEATHS = (
    ("William died in the mine", "- 1913-04-08"),
    ("the death of William", "- 1913-04-08"),
    ("William's funeral at Moonta", "- 1913-04-08"),
    ("William died", "- 1913-04-08"),
    ("the dog of William died", "- -"),
    ("Quilla died in the mine", "- -"),
    ("the move after William died", "- -"),
)  # fmt: skip


@every_row(("name", "wanted"), DEATHS)
def test_an_event_that_names_a_death_is_that_death(name: str, wanted: str) -> None:
    kind = "move" if "move" in name else "death"
    event = FamilyEvent(id="e", kind=kind, names=(name,), when=phrases.read("8 April 1913"), words="8 April 1913")
    worked = worked_out([item("i", people=[shown("William")])], [person("William")], [], [event])
    assert days_of(worked, "i") == wanted
    dated = item("d", told("date", "1923"), people=[shown("William")])
    circles = worked_out([dated], [person("William")], [], [event]).circles
    assert bool(circles) is (wanted != "- -")


MARRIED = (
    # on the back of a picture of Rosa, born Koch, who married Emil Ott in 1902 and Karl Lind in 1919
    ("Rosa Lind at Moonta", "1919-01-01 -"),
    ("Rosa Ott with the children", "1902-01-01 -"),
    ("Lind Károlyné", "1919-01-01 -"),  # so in Hungary
    ("Miss Rosa Lind", "- -"),  # a slip
    ("Rosa Koch", "- -"),  # whoever knows her by her name at birth may write it at any time
    ("Rosa", "- -"),
)  # fmt: skip


@every_row(("words", "wanted"), MARRIED)
def test_a_name_by_marriage_is_of_after_that_wedding(words: str, wanted: str) -> None:
    rosa = replace(person("Rosa", surnames=("Ott", "Koch")), spouses=("Emil", "Karl"))
    others = [person("Emil", surnames=("Ott",)), replace(person("Karl", surnames=("Lind",)), calls=("Karl", "Károly"))]
    weddings = [
        FamilyEvent(id=who, kind="marriage", names=("wedding",), people=("Rosa", who), when=phrases.read(when))
        for who, when in (("Emil", "1902"), ("Karl", "1919"))
    ]  # fmt: skip
    record = item("i", told("inscription", words, source=BACK), people=[shown("Rosa")])
    worked = worked_out([record], [rosa, *others], [row("Rosa", "born_as", "Koch")], weddings)
    assert days_of(worked, "i") == wanted


def test_a_name_that_may_be_hers_by_birth_says_nothing() -> None:
    """Nobody tells what she was called before; of another, her parents' name does."""
    wedding = FamilyEvent(
        id="w", kind="marriage", names=("wedding",), people=("Ada", "Hugh"), when=phrases.read("1944")
    )
    hugh = person("Hugh", surnames=("Pike",))
    record = item("i", told("inscription", "Ada Pike at Dover", source=BACK), people=[shown("Ada")])
    ada = replace(person("Ada", surnames=("Pike",)), spouses=("Hugh",))
    assert days_of(worked_out([record], [ada, hugh], [], [wedding]), "i") == "- -"
    of_dan = replace(ada, parents=("Dan", "nobody known"))
    everybody = [of_dan, hugh, person("Dan", surnames=("Holt",))]
    assert days_of(worked_out([record], everybody, [], [wedding]), "i") == "1944-01-01 -"
    of_pikes = [of_dan, hugh, person("Dan", surnames=("Pike",))]
    assert days_of(worked_out([record], of_pikes, [], [wedding]), "i") == "- -"


def test_a_rank_is_written_after_it_was_given() -> None:
    made = FamilyEvent(id="s", kind="other", names=("Ants was made sergeant",), when=phrases.read("1917"), words="1917")
    party = FamilyEvent(id="p", kind="other", names=("the party for Ants and Mari",), when=phrases.read("1916"))
    whose = FamilyEvent(id="w", kind="other", names=("the sergeant at Ants and Mari's",), when=phrases.read("1919"))
    records = [
        item(ident, told("inscription", words, source=source), people=[shown(who)])
        for ident, words, source, who in (
            ("with", "Sgt. Tamm, in the yard", BACK, "Ants"), ("without", "Ants Tamm, in the yard", BACK, "Ants"),
            ("told", "Sgt. Tamm, in the yard", LEIDA, "Ants"), ("other", "Sgt. Tamm, in the yard", BACK, "Mari"),
            ("nobody", "Sgt. Tamm, in the yard", BACK, "Quilla"),
        )
    ]  # fmt: skip
    worked = worked_out(records, [person("Ants", surnames=("Tamm",)), person("Mari")], [], [made, party, whose])
    assert days_of(worked, "with") == "1917-01-01 -"
    assert {days_of(worked, each) for each in ("without", "told", "other", "nobody")} == {"- -"}


def test_the_name_of_a_renamed_city_cuts_nothing() -> None:
    """Both names were used for decades after a decree (common practice, no source)."""
    for words in ("Dorpat", "Tervitus! Tallinn", "Petrograd", "Breslau 1950"):
        back = item("p", told("inscription", words, source=BACK), told("place", words.split()[0], source=BACK))
        assert days_of(worked_out([back]), "p") == "- -"


def test_the_pictures_of_a_studio_lie_within_a_working_life() -> None:
    by = [shown("A. Saar", role="photographer")]
    worked = worked_out([item("a", told("date", "1899"), people=by), item("b", people=by)])
    first, last = days_of(worked, "b").split()
    assert (first, last) == ("1849-01-02", "1949-12-30")  # not yet fifty years either side
