"""Lives told on the time line: whom an event tells, and what leans on it (own rules, reckoned by hand)."""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import AS_TOLD, KnownDates, Whom, read
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.event_slips import mended
from boxlore.core.records.events import FamilyEvent, meant_by
from boxlore.core.records.told_lives import told_in, with_lives


def event(ident: str, kind: str, name: str, edtf: str) -> FamilyEvent:
    return FamilyEvent(id=ident, kind=kind, names=(name,), when=DateReading.from_edtf(edtf) if edtf else None)


def person(ident: str, name: str, **more: object) -> Person:
    return Person(id=ident, name=name, sort_name=name, forms=(name,), calls=(name.split()[0],), **more)  # type: ignore[arg-type]


PEOPLE = Registry([person("t", "Tom Rourke"), person("a", "Anna Tamm"), person("b", "Anna Kask"), person("i", "Ida")])
HAPPENED = [
    event("e1", "birth", "Mary Rourke was born", "1931-05-14"),
    event("e2", "marriage", "Tom and Mary Rourke were married", "1953-02-07"),
    event("e3", "birth", "The twins were born", "1955-11-19"),
    event("e4", "death", "Grandfather James died", "1949-08-02"),
    event("e5", "birth", "Бабушка родилась", "1917-11-07"),
    event("e6", "birth", "Anna was born", "1928"),  # of whom there are two
    event("e7", "birth", "Ida was born", "1899"),
    event("e8", "death", "Ida died", "1980"),
    event("e9", "move", "We moved to Port Chalmers", "1958-03"),
    event("e10", "birth", "the hungry winter", "1917"),
    event("e11", "birth", "Ned was born", ""),
]
WHO = [  # the event's name, its kind, whom it tells
    ("Mary Rourke was born", "birth", ("Mary Rourke",)),
    ("The twins were born", "birth", ("twins",)),
    ("Oma wurde geboren", "birth", ("Oma",)),
    ("Großmutter starb", "death", ("Großmutter",)),
    ("The day Eve Groß was born", "birth", ("Eve Groß",)),
    ("La abuela nació", "birth", ("abuela",)),
    ("Il nonno nacque", "birth", ("nonno",)),
    ("Mummo syntyi", "birth", ("Mummo",)),
    ("Tom and Mary were married", "marriage", ("Tom", "Mary")),
    ("when Grandfather James died", "death", ("Grandfather James",)),
    ("the hungry winter", "birth", ()),
    ("somebody of the other side of the whole family was born", "birth", ()),
]


@every_row(("name", "kind", "names"), WHO)
def test_whom_an_event_tells(name: str, kind: str, names: tuple[str, ...]) -> None:
    assert told_in(event("e", kind, name, "1900")) == names


def test_a_life_is_that_of_the_registry_or_of_the_event_alone() -> None:
    people, happened = with_lives(PEOPLE, HAPPENED)
    by_id = {told.id: told.people for told in happened}
    assert by_id["e2"] == ("t", by_id["e1"][0])
    assert (by_id["e6"], by_id["e9"], by_id["e10"], by_id["e11"]) == ((), (), (), ())
    told = people["i"]
    assert told.born and told.born.edtf and told.born.edtf.text == "1899"
    assert told.died and told.died.edtf and told.died.edtf.text == "1980"
    assert PEOPLE["i"].born is None


LEANING = [  # words, the date, what is asked
    ("before Mary was born", "[..1931-05-14]", None),
    ("after the twins were born", "[1955-11-19..]", None),
    ("Tom and Mary's silver wedding", "1978-02-07", None),
    ("their tenth wedding anniversary", "1963-02-07", "is 10 years after “Tom and Mary Rourke were married” meant?"),
    ("their first anniversary", "1954-02-07", "is a year after “Tom and Mary Rourke were married” meant?"),
    ("the golden wedding of Tom and Mary Rourke", "2003-02-07", None),
    ("the tenth anniversary of the wedding", "1963-02-07", "is 10 years after"),
    ("Mum and Dad's pearl wedding", "1983-02-07", "is 30 years after"),
    ("die Perlenhochzeit meiner Eltern", "1983-02-07", "is 30 years after"),
    ("kobberbryllup", "1965-08-07", "is 12 and a half years after"),
    ("the wedding anniversary 1960", "1960-02-07", "is 7 years after"),
    ("while we lived in Port Chalmers", "[1958-03..]", "is the time from “We moved to Port Chalmers” on meant?"),
    ("yr or 2 after we shifted to Port Chalmers", "[1959~..1960~]", "is “We moved to Port Chalmers” meant?"),
    ("James, the spring before he died", "1949-21", "is “Grandfather James died” meant?"),
    ("Tomin ja Maryn hopeahäät", "1978-02-07", "is 25 years after"),
    ("srebrne wesele Toma i Mary", "1978-02-07", "is 25 years after"),
    ("srebrne wesele Zofii i Jana", None, "when was that?"),
    ("zehnter Todestag von Grandfather James", "1959-08-02", None),
    ("not long after they were married", "[1953-02-07~..1953-03-09~]", "“Tom and Mary Rourke were married” meant?"),
    ("the following Christmas after we moved", "1958-12-25", "“We moved to Port Chalmers” meant?"),
    ("i a Ida e rima ngā tau", "1904~", None),
    ("in the years between the wedding and the move", "1953-02-07/1958-03", "“We moved to Port Chalmers” meant?"),
    ("the year between the wedding and the move", "1953-02-07/1958-03", "“We moved to Port Chalmers” meant?"),
    ("the year between 1950 and 1952", None, "is between 1950 and 1952 meant?"),
    ("when Mary was expecting the twins", "1955-02/1955-11", None),
    ("James, shortly before his death", "[1949-07-03~..1949-08-02~]", "is “Grandfather James died” meant?"),
    ("the Monday before we moved", "[1958-02-24,1958-03-03,1958-03-10,1958-03-17,1958-03-24]", "“We moved to Port"),
    ("the weekend after we moved", None, "we moved”: when was that?"),
    ("the weekend after the wedding", "1953-02-07/1953-02-08", "“Tom and Mary Rourke were married” meant?"),
    ("the tenth anniversary of the move", "[1968-03-01..1968-03-31]", "“We moved to Port Chalmers” meant?"),
    ("the Sunday after Ida was born", None, "hich day exactly"),
    ("at least five years after the wedding", "[1958~..]", "“Tom and Mary Rourke were married” meant?"),
    ("Tom and Mary's 7 February wedding anniversary", "XXXX-02-07", "were married” meant?"),
    ("the wedding anniversary 1940", None, "is 1940 meant?"),
    ("the big happy wedding anniversary, 1960", None, "is 1960 meant?"),
    ("between the wedding and the move", "1953-02-07/1958-03", "“We moved to Port Chalmers” meant?"),
    ("after the wedding and before we moved", "[1953-02-07..1958-03-31]", "and “We moved to Port Chalmers” meant?"),
]


@every_row(("words", "edtf", "ask"), LEANING)
def test_what_leans_on_lives_that_events_tell(words: str, edtf: str | None, ask: str | None) -> None:
    people, happened = with_lives(PEOPLE, HAPPENED)
    events, perhaps = meant_by(words, happened, people, "")
    births = MappingProxyType({"james": "1870", "ida": "1899"})
    reading = read(words, AS_TOLD, KnownDates(births=births, events=events, perhaps=perhaps))
    assert (reading.edtf.text if reading.edtf else None) == edtf
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)


GENITIVES = [  # whose birth by the words for kin, the date
    ("vor Omas Geburt", "omas", "[..1917-11-07]"),
    ("vor der Geburt meiner Oma", "oma", "[..1917-11-07]"),
    ("före farmors födelse", "farmors", "[..1917-11-07]"),
    ("voor opa's geboorte", "opa", "[..1917-11-07]"),
    ("prima della nascita del nonno", "nonno", "[..1917-11-07]"),
    ("antes do nascimento da avó", "avó", "[..1917-11-07]"),
]


@every_row(("words", "kin", "edtf"), GENITIVES)
def test_a_birth_is_told_by_a_genitive_of_kin(words: str, kin: str, edtf: str) -> None:
    people, happened = with_lives(PEOPLE, HAPPENED[4:5])
    events, _ = meant_by(words, happened, people, "", {kin: happened[0].people})
    reading = read(words, AS_TOLD, KnownDates(events=events))
    assert reading.edtf is not None and reading.edtf.text == edtf


SLIPS = [  # words, what they may be
    ("wk before the weding", []),  # no word of these events
    ("after the twnis were born", ["after the twins were born"]),
    ("before we movd", ["before we moved"]),
    ("when Maary was born", ["when mary was born"]),
    ("the winter of 1936", []),
    ("with Idaa and Tomm", []),
    ("with Annna", []),
]


def test_a_slip_of_how_a_wedding_is_told_and_one_of_a_word_of_dates() -> None:
    assert "summer after we got married" in mended("summer after we got marrd", HAPPENED[1:2], {})
    assert [*mended("summer aftr we moved", HAPPENED[8:9], {})] == ["summer after we moved"]


@every_row(("words", "meant"), SLIPS)
def test_a_slip_of_a_told_event(words: str, meant: list[str]) -> None:
    assert [*mended(words, [*HAPPENED[:1], *HAPPENED[2:]], {"annna"})] == meant


BY_CASE = [  # words of kin in a case, the date
    ("до рождения бабушки", "[..1917-11-07]"),
    ("przed urodzeniem babci", "[..1917-11-07]"),
    ("prieš močiutės gimimą", "[..1917-11-07]"),
]


@every_row(("words", "edtf"), BY_CASE)
def test_kin_in_a_case_have_births_too(words: str, edtf: str) -> None:
    people, happened = with_lives(PEOPLE, HAPPENED[4:5])
    ident = happened[0].people[0]
    kin = {word.casefold(): (ident,) for word in words.split()[1:]}
    events, _ = meant_by(words, happened, people, "", kin)
    reading = read(words, AS_TOLD, KnownDates(events=events))
    assert reading.edtf is not None and reading.edtf.text == edtf


def test_kin_that_are_only_likely_are_asked_about() -> None:
    people, happened = with_lives(PEOPLE, HAPPENED[3:4])
    likely = {"grandad": happened[0].people}
    events, perhaps = meant_by("before Grandad died", happened, people, "", {}, likely)
    reading = read("before Grandad died", AS_TOLD, KnownDates(events=events, perhaps=perhaps))
    assert reading.edtf is not None and reading.edtf.text == "[..1949-08-02]"
    assert reading.ask == "“before Grandad died”: is “Grandfather James died” meant?"
    events, perhaps = meant_by("Grandad's funeral", happened, people, "", {}, likely)
    assert perhaps["grandad's funeral"] == (("the funeral, after Grandfather James died", "1949-08-02~"),)


GRANNIES = (Whom("Anna Kask", "1881-03-02", "1931-05"), Whom("Mari Tamm", "", "1940-01-09"))
OF_GRANNY = [  # words, the date, the choices, the question
    ("when Granny was six", "[1887-03-02..1888-03-01]", ("[1887-03-02..1888-03-01]",), "is Anna Kask meant?"),
    ("when my Granny was six", "[1887-03-02..1888-03-01]", ("[1887-03-02..1888-03-01]",), "is Anna Kask meant?"),
    ("when Granny was still alive", None, ("[..1931-05]", "[..1940-01-09]"), "is Anna Kask or Mari Tamm meant?"),
    ("Granny's last Christmas", None, ("1930-12-25", "1939-12-25"), "is Anna Kask or Mari Tamm meant?"),
    ("Granny's first Christmas", "1881-12-25", ("1881-12-25",), "is Anna Kask meant?"),
]


@every_row(("words", "edtf", "choices", "ask"), OF_GRANNY)
def test_of_several_who_may_be_meant_each_is_offered(
    words: str, edtf: str | None, choices: tuple[str, ...], ask: str
) -> None:
    reading = read(words, AS_TOLD, KnownDates(likely=MappingProxyType({"granny": GRANNIES, "my granny": GRANNIES})))
    assert (reading.edtf.text if reading.edtf else None, reading.choices) == (edtf, choices)
    assert ask in str(reading.ask)


ONE_DEAD = [  # where only the death is known
    ("when Granny was six", "When was Granny born?"),
    ("Granny's birthday 1930", None),
    ("the Christmas Granny was sixteen", "When was Granny born?"),
    ("the Christmas Granny was here", None),
    ("Granny in her twenties", "When was Granny born?"),
]


@every_row(("words", "ask"), ONE_DEAD)
def test_without_a_birth_it_is_asked(words: str, ask: str | None) -> None:
    lives = KnownDates(births=MappingProxyType({"granny": ""}), deaths=MappingProxyType({"granny": "1931-05"}))
    reading = read(words, AS_TOLD, lives)
    assert reading.edtf is None
    assert ask is None or ask in str(reading.ask)


ITALIAN = [  # words, the date, whether it is asked
    ("dopo il trasloco", "[1951-03..]", False),
    ("prima del trasloco", "[..1951-03]", True),
    ("un anno dopo trasloco", "1952~", True),
]


@every_row(("words", "edtf", "asked"), ITALIAN)
def test_an_event_with_an_article_of_another_language(words: str, edtf: str, asked: bool) -> None:
    events, perhaps = meant_by(words, [event("e", "move", "Il trasloco", "1951-03")], Registry(), "")
    reading = read(words, AS_TOLD, KnownDates(events=events, perhaps=perhaps))
    assert reading.edtf is not None and (reading.edtf.text, reading.ask is not None) == (edtf, asked)


def test_who_is_likely_is_beside_an_event_that_is_likely() -> None:
    likely = MappingProxyType({"granny": (Whom("Anna Kask", "1881-03-02"),), "oma": GRANNIES})
    perhaps = MappingProxyType({"we moved": (("the move to Leeds", "1930-05"),)})
    reading = read("Granny's birthday, the year we moved", AS_TOLD, KnownDates(likely=likely, perhaps=perhaps))
    assert reading.edtf is not None and reading.edtf.text == "1930-03-02"
    assert reading.ask is not None and "is the move to Leeds meant?" in reading.ask


def test_the_time_in_a_place_by_any_form_of_its_name() -> None:
    events, perhaps = meant_by(
        "kun asuimme Turussa", [event("e", "move", "Muutimme Turkuun", "1951-06")], Registry(), ""
    )
    reading = read("kun asuimme Turussa", AS_TOLD, KnownDates(events=events, perhaps=perhaps))
    assert reading.edtf is not None and reading.edtf.text == "[1951-06..]"


def test_a_season_beside_an_event_that_is_told_before_it() -> None:
    events = MappingProxyType({"häitä": "1947-09-06", "muuttoa": "1952-03"})
    for words, edtf in (("häitä edeltävänä kesänä", "1947-22"), ("muuttoa seuraavana kesänä", "1952-22")):
        reading = read(words, AS_TOLD, KnownDates(events=events))
        assert reading.edtf is not None and reading.edtf.text == edtf


def test_a_house_that_burned_is_no_move() -> None:
    assert event("e", "other", "The house burned down", "1938").told_kind == "other"
    assert event("e", "other", "The new house", "1938").told_kind == "move"
