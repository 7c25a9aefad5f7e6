"""The family's time line: what follows from lives, and which phrases mean which event (reckoned by hand, own rules)."""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import AS_TOLD, KnownDates, PhraseSettings, read
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.events import FamilyEvent, in_order, meant_by, of_lives


def day(edtf: str) -> DateReading:
    return DateReading.from_edtf(edtf)


def person(ident: str, name: str, born: str = "", **more: object) -> Person:
    return Person(
        id=ident, name=name, sort_name=name, forms=(name,), calls=(name.split()[0],), born=day(born) if born else None,
        **more,  # type: ignore[arg-type]
    )  # fmt: skip


WED = (day("1950-12-14"),)
PEOPLE = Registry(
    [
        person("a", "Anna Tamm", "1928-05-02", spouses=("j",), married=WED),
        person("j", "Joe Rourke", "1925", spouses=("a",), married=WED, died=day("1990-03")),
        person("n", "Anna Rourke", "1951-02-02"),
        person("m", "Mavis Hill", "1930", married=(day("1955"), DateReading("a Sunday"))),
    ]
)
HAPPENED = [
    FamilyEvent(id="e1", kind="move", names=("the move to Dunedin",), when=day("1952-03")),
    FamilyEvent(id="e2", kind="voyage", names=("when we sailed",), when=day("1947-11-02/1947-12-20")),
    FamilyEvent(id="e3", kind="other", names=("the fire", "the fire at the mill"), when=day("1961-01-03")),
    FamilyEvent(id="e4", kind="other", names=("the flood",)),
    FamilyEvent(id="e5", kind="other", names=("the strike",), when=day("../1913")),
]
EVENTS = [*HAPPENED, *of_lives(PEOPLE)]


def test_the_time_line_is_in_order_and_a_marriage_of_two_is_one() -> None:
    assert [(event.edtf, event.name) for event in in_order(EVENTS)] == [
        ("../1913", "the strike"),
        ("1925", "the birth of Joe Rourke"),
        ("1928-05-02", "the birth of Anna Tamm"),
        ("1930", "the birth of Mavis Hill"),
        ("1947-11-02/1947-12-20", "when we sailed"),
        ("1950-12-14", "the wedding of Anna Tamm and Joe Rourke"),
        ("1951-02-02", "the birth of Anna Rourke"),
        ("1952-03", "the move to Dunedin"),
        ("1955", "the wedding of Mavis Hill"),
        ("1961-01-03", "the fire at the mill"),
        ("1990-03", "the death of Joe Rourke"),
        ("", "the flood"),
    ]


PHRASES = [  # what Anna Tamm says, EDTF, the question
    ("when Mavis was born", "1930", None),
    ("als Mavis geboren wurde", "1930", None),
    ("quand Mavis est née", "1930", None),
    ("before Joe’s death", "[..1990-03]", None),
    ("the summer after Anna and Joe's wedding", "1951-22", None),
    ("the summer after Joe and Anna got married", "1951-22", None),
    ("two years after our wedding", "1952~", None),
    ("when I was born", "1928-05-02", None),
    ("the year we sailed", "1947", None),
    ("two years before the move to Dunedin", "1950~", None),
    ("two years before the move", "1950~", "“two years before the move”: is the move to Dunedin meant?"),
    ("two years before we moved", "1950~", "“two years before we moved”: is the move to Dunedin meant?"),
    ("the week after the fire at the mill", "[1961-01-04..1961-01-10]", None),
    ("the week after the fire", "[1961-01-04..1961-01-10]", "is the fire at the mill meant?"),
    ("when Anna was born", None, "is the birth of Anna Tamm or the birth of Anna Rourke meant?"),
    ("the year after the wedding", None, "is the wedding of Anna Tamm and Joe Rourke or the wedding of Mavis"),
    ("the year after the flood", None, "When was the flood?"),
    ("Mavis wasn't born yet", "[..1930]", None),
    ("when Mum was expecting Mavis", "1929/1930", None),
    ("when Mum was expecting me", "1927-08/1928-05", None),
    ("als Mutti mit mir schwanger war", "1927-08/1928-05", None),
    ("Mum was expecting Anna Tamm", "1927-08/1928-05", None),
    ("when Mum was expecting Anna Rourke", "1950-05/1951-02", None),
    ("Joe's funeral", "1990-03~", "is the funeral, after the death of Joe Rourke meant?"),
    ("po svatbě Mavise", "[1955..]", "is the wedding of Mavis Hill meant?"),
    ("po ślubie Anny", "[1950-12-14..]", "is the wedding"),
    ("před svatbou Mavis", "[..1955]", None),
    ("po smrti Joea", "[1990-03..]", "is the death of Joe Rourke meant?"),
    ("nach dem Brand", "[1961-01-03..]", "is the fire at the mill meant?"),
    ("fire brigade, June 1936", None, "June 1936 meant?"),
    ("Silberhochzeit von Anna und Joe", "1975-12-14", None),
    ("our silver wedding", "1975-12-14", None),
    ("on our honeymoon", "1950-12~", "is the honeymoon, after the wedding of Anna Tamm and Joe Rourke meant?"),
    ("the day after our golden wedding", "2000-12-15", None),
    ("unsere Silberhochzeit", "1975-12-14", None),
    ("Anna and Joe's silver wedding", "1975-12-14", None),
    ("Mavis's golden wedding", "2005", None),
    ("the silver wedding", None, "is 25 years after the wedding of Anna Tamm and Joe Rourke or 25 years after"),
    ("our tenth wedding anniversary", "1960-12-14", None),
    ("our 25th wedding anniversary", "1975-12-14", None),
    ("the tenth anniversary of the move to Dunedin", "1962-03", None),
    ("the tenth anniversary of when we sailed", None, None),
    ("our anniversary", None, "When was our anniversary?"),
    ("our 9999th wedding anniversary", None, None),
    ("our first Christmas in Dunedin", "1952-12-25", "is the move to Dunedin meant?"),
    ("our first Christmas over here", None, "is the move to Dunedin or"),
    ("Mavis’s first day at school", "[1935..1936]", "is starting school at five or six meant?"),
    ("my first day at school", "[1933..1934]", "is starting school at five or six meant?"),
    ("the week before sailing", "[1947-10-26..1947-12-19]", "is “when we sailed” meant?"),
    ("our first winter in Dunedin", "1952-24", "is the move to Dunedin meant?"),
    ("summer in Dunedin", None, None),
    ("their golden wedding", None, "is 50 years after the wedding of Anna Tamm"),
    ("before Mavis came along", "[..1930]", None),
    ("als wir heirateten", "1950-12-14", None),
    ("l'année où nous nous sommes mariés", "1950", None),
    ("pärast meie pulmi", "[1950-12-14..]", None),
    ("my wedding", "1950-12-14", None),
    ("nach meiner Hochzeit", "[1950-12-14..]", None),
    ("le jour de mon mariage", "1950-12-14", None),
    ("antes do meu casamento", "[..1950-12-14]", None),
    ("le mie nozze", "1950-12-14", None),
    ("bryllupet mitt", "1950-12-14", None),
    ("az esküvőm után", "[1950-12-14..]", None),
    ("the Christmas I was expecting Anna Rourke", "1950-12-25", None),
    ("the December I was expecting Anna Rourke", "1950-12", None),
    ("the winter Mum was expecting Anna Rourke", "1950-24", None),
    ("cuando nació Mavis", "1930", None),
    ("efter at Mavis blev født", "[1930..]", None),
    ("kui me kolisime Dunedini", "1952-03", "is the move to Dunedin meant?"),
    ("nachdem wir nach Dunedin zogen", "[1952-03..]", "is the move to Dunedin meant?"),
    ("the wedding of hats", None, None),
    ("Mavisa sünd", "1930", "is the birth of Mavis Hill meant?"),
]  # fmt: skip


@every_row(("words", "edtf", "ask"), PHRASES)
def test_what_a_phrase_leans_on(words: str, edtf: str | None, ask: str | None) -> None:
    events, perhaps = meant_by(words, EVENTS, PEOPLE, "a")
    reading = read(words, AS_TOLD, KnownDates(events=events, perhaps=perhaps))
    assert (reading.edtf.text if reading.edtf else None) == edtf
    if ask is not None or edtf is not None:
        assert (reading.ask is None) if ask is None else ask in str(reading.ask)


OWNED = [  # told as an event of its own, with whose it is in its name
    FamilyEvent(id="e6", kind="other", names=("Joe’s retirement",), when=day("1985-06")),
    FamilyEvent(id="e7", kind="other", names=("Mavis’s wedding",), when=day("1955-07-02")),
    FamilyEvent(id="e8", kind="marriage", names=("Anna’s wedding",), when=day("1950-12-14")),
    FamilyEvent(id="e9", kind="move", names=("kolimine Tapale",), when=day("1952-04")),
    FamilyEvent(id="e11", kind="other", names=("the shop opening",), when=day("1934")),
    FamilyEvent(id="e14", kind="other", names=("leeripäev",), when=day("1938-06-05")),
    FamilyEvent(id="e10", kind="school", names=("Joes studentexamen",), when=day("1944-06-05")),
]
OWNERS = [
    ("Joe's retirement", "1985-06", None),
    ("Joe's retirement party", None, "is June 1985 meant? Not understood: “party”"),
    ("Joes Ruhestand", None, None),
    ("Mavis' Hochzeit", None, None),
    ("after Mavis got married", "[1955-07-02..]", None),
    ("po svatbě Mavise", "[1955-07-02..]", "is Mavis’s wedding meant?"),
    ("after Anna got married", None, None),
    ("efter studentexamen", "[1944-06-05..]", "is Joes studentexamen meant?"),
    ("the year the shop opened", "1934", "is the shop opening meant?"),
    ("the first Christmas in the new house", "1952-12-25", "is kolimine Tapale meant?"),
    ("aasta pärast leeripäeva", "1939~", "is leeripäev meant?"),
    ("suvi enne Tapale kolimist", "1951-22", "is kolimine Tapale meant?"),
]


@every_row(("words", "edtf", "ask"), OWNERS)
def test_an_event_called_after_one_person_is_of_that_person(words: str, edtf: str | None, ask: str | None) -> None:
    """Two are called Anna, so that none of them is meant."""
    events, perhaps = meant_by(words, OWNED, PEOPLE, "")
    reading = read(words, AS_TOLD, KnownDates(events=events, perhaps=perhaps))
    assert (reading.edtf.text if reading.edtf else None) == edtf
    assert ask is None or ask in str(reading.ask)


def test_the_choices_are_the_date_by_each_event() -> None:
    events, perhaps = meant_by("the year after the wedding", EVENTS, PEOPLE, "")
    assert read("the year after the wedding", known=KnownDates(events=events, perhaps=perhaps)).alternatives == (
        "1951~",
        "1956~",
    )


def test_a_season_within_which_it_was_has_both_as_choices() -> None:
    june = [FamilyEvent(id="e", kind="marriage", names=("the wedding of Mavis",), when=day("1955-06-04"))]
    events, perhaps = meant_by("the summer after the wedding", june, PEOPLE, "")
    reading = read("the summer after the wedding", known=KnownDates(events=events, perhaps=perhaps))
    assert reading.edtf and (reading.edtf.text, reading.alternatives) == ("1955-22", ("1956-22",))


def test_what_may_be_meant_and_gives_no_date_is_kept() -> None:
    known = KnownDates(perhaps=MappingProxyType({"fire": (("the fire", "[..1930]"),)}))
    assert read("the year after the fire", known=known).edtf is None
    assert read("the year after the strike", known=known).edtf is None
    assert read("a fire in the mill yard", known=known).edtf is None


def test_a_time_of_history_that_an_event_of_the_family_is_called_by_is_asked_about() -> None:
    """“Auf der Flucht” is of the flight from the east in 1944 and 1945, and of the family's own."""
    fled = FamilyEvent(id="e15", kind="other", names=("die Flucht",), when=day("1944-09-22"))
    other = FamilyEvent(id="e16", kind="other", names=("the flight",), when=day("1944-09-22"))
    for event, words, choices in (
        (fled, "auf der Flucht", ("1944-09-22", "1944-10/1945-12")),
        (other, "auf der Flucht", ("1944-09-22", "1944-10/1945-12")),
        (fled, "auf der Flucht, Januar 1945", ("1945-01",)),
        (fled, "die Flucht", ("1944-09-22",)),
        (fled, "Whitsun in nineteen thirty-eight", ("1938-06-05",)),
    ):
        alone, perhaps = meant_by(words, [event], {}, "")
        reading = read(words, AS_TOLD, KnownDates(events=alone, perhaps=perhaps))
        assert reading.choices == choices, words
        assert bool(reading.ask) == (len(choices) > 1), words


def test_a_wedding_that_is_told_of_somebody_else_is_not_offered() -> None:
    people = Registry(
        [person("a", "Anna Tamm", spouses=("j",), married=WED), person("j", "Joe Rourke"), person("k", "Kalju Tamm")]
    )
    events = [*of_lives(people), FamilyEvent(id="e", kind="marriage", names=("häät",), when=day("1950-12-14"))]
    for words, is_offered in (
        ("Kaljus Hochzeit", False), ("le mariage de Kalju", False), ("Hochzeit, Kalju im Anzug", True),
        ("Annas Hochzeit", True),
    ):  # fmt: skip
        for event in events:
            alone, perhaps = meant_by(words, [event], people, "")
            assert bool(alone or perhaps) == (is_offered or not event.people), words


def test_a_move_of_which_no_place_is_told_may_be_that_to_any_place() -> None:
    moved = FamilyEvent(id="e12", kind="move", names=("kolimine",), when=day("1957-08"))
    alone, perhaps = meant_by("kui me Tartusse kolisime", [moved], {}, "")
    assert not alone and ("kolimine", "1957-08") in {event for events in perhaps.values() for event in events}


def test_an_event_that_is_perhaps_meant_behind_a_name() -> None:
    wed = FamilyEvent(id="e13", kind="marriage", names=("ślub",), when=day("1933-11-25"))
    births = MappingProxyType({"zofia": "1911-05-15"})
    for words, edtf, others in (
        ("Zofia po ślubie", "[1933-11-25..]", ()), ("Zofia, ślub, Kraków", None, ("1933-11-25",)),
        ("Zofia Kraków po ślubie", None, ()), ("the year we were married", "1933", ()),
    ):  # fmt: skip
        alone, perhaps = meant_by(words, [wed], {}, "")
        reading = read(words, AS_TOLD, KnownDates(births=births, events=alone, perhaps=perhaps))
        assert (reading.edtf and reading.edtf.text, reading.alternatives) == (edtf, others), words
        assert reading.ask is not None, words


WEDDINGS = [  # names of the weddings that are known, the words told, the reading, whether it is asked about
    (("meie pulmad",), "kolm aastat pärast meie pulmi", "1958~", False),
    (("nasz ślub",), "rok po naszym ślubie", "1956~", False),
    (("mūsu kāzas",), "gadu pēc mūsu kāzām", "1956~", False),
    (("o nosso casamento",), "um mês depois do nosso casamento", "1955-10~", False),
    (("häät",), "vuosi häiden jälkeen", "1956~", True),
    (("häät", "Matin häät"), "vuosi häiden jälkeen", None, True),
    (("our wedding",), "till the wedding", "[..1955-09-17]", True),
    (("unser Tag",), "ein Jahr nach unserer Hochzeit", "1956~", True),
    (("unsere Hochzeit",), "nach unserer Hochzeit", "[1955-09-17..]", False),
    (("unsere Hochzeit",), "unsicher, vor der Hochzeit", "[..1955-09-17?]", True),
    (("o nosso casamento",), "nos meses antes do casamento", "[1955-03-17..1955-07-17]", True),
    (("vårt bryllup",), "våren før bryllupet", "1955-21", True),
    (("ons huwelijk",), "een jaar na onze bruiloft", "1956~", False),
    (("vår bryllupsdag",), "et år etter vårt bryllup", "1956~", False),
    (("meie pulmad",), "pärast meistri pulmi", None, True),
    (("our wedding",), "the summer after our weddings", "1956-22", False),
    (("our wedding",), "our yard, the year we were married", None, True),
    (("Jaani pulmad",), "aasta pärast meie pulmi", "1956~", True),
]


@every_row(("names", "words", "edtf", "asks"), WEDDINGS)
def test_the_only_wedding_is_meant_by_any_form_of_its_name(
    names: tuple[str, ...], words: str, edtf: str | None, asks: bool
) -> None:
    events = [
        FamilyEvent(id=f"w{at}", kind="marriage", names=(name,), when=day(f"195{5 + at}-09-17"))
        for at, name in enumerate(names)
    ]
    alone, perhaps = meant_by(words, events, {}, "")
    reading = read(words, AS_TOLD, KnownDates(events=alone, perhaps=perhaps))
    assert (reading.edtf and reading.edtf.text, bool(reading.ask)) == (edtf, asks)


def test_an_event_told_with_other_words_beside_it_is_offered() -> None:
    events = [
        FamilyEvent(id="v1", kind="voyage", names=("the voyage on the Rangiora",), when=day("1926-02/1926-03")),
        FamilyEvent(id="v2", kind="move", names=("we moved to Kurow",), when=day("1938-08")),
        FamilyEvent(id="v3", kind="marriage", names=("our wedding",), when=day("1952-04-19")),
    ]
    for words, edtf, others in (
        ("on the voyage out, on the Rangiora", None, ("1926-02/1926-03",)),
        ("before the voyage out, on the Rangiora", None, ("[..1926-02]",)),
        ("Ivy's voyage out, on the Rangiora", None, ()),
        ("from when we moved to Kurow till the wedding", "1938-08/1952-04-19", ("1938-08/..",)),
    ):
        alone, perhaps = meant_by(words, events, {}, "")
        reading = read(words, PhraseSettings(language="en"), KnownDates(events=alone, perhaps=perhaps))
        assert (reading.edtf and reading.edtf.text, reading.alternatives) == (edtf, others), words
        assert reading.ask
