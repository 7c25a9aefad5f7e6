"""Words that lean on another day: what a careful person would conclude of each, worked out by hand beside it.

The years by which an estimate, a custom or a “just after” may be off are common practice, no source; where a law or a
book of a church names an age, it stands in `core/evidence/customs_table.py`.
"""

from dataclasses import replace
from datetime import date
from types import MappingProxyType

from hypothesis import given
from hypothesis import strategies as st
from tests.core.evidence.family import BACK, LEIDA, days, days_of, item, person, row, shown, told, worked_out
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.dates import phrases
from boxlore.core.evidence.claims import Claim, any_of, of_birth, of_event
from boxlore.core.evidence.even_years import first_day
from boxlore.core.evidence.gathering import Background, all_clues
from boxlore.core.evidence.working_out import WorkedOut
from boxlore.core.people.person import Person, Registry
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import Mark
from boxlore.core.statements import Said, Source, Sure


def somebody(name: str, call: str, **more: object) -> Person:
    return replace(person(name), calls=(call,), **more)  # type: ignore[arg-type]  # fields of a person by name


IVY = somebody(
    "Ivy Lang",
    "Ivy",
    sex="female",
    spouses=("Tom Moss",),
    born=phrases.read("3 May 1900"),
    married=(phrases.read("10 August 1922"),),
)
TOM = replace(
    somebody("Tom Moss", "Tom", surnames=("Moss",), spouses=("Ivy Lang",), born=phrases.read("1898")),
    married=(phrases.read("10 August 1922"),),
)
NED = somebody("Ned Moss", "Ned", parents=("Ivy Lang", "Tom Moss"), born=phrases.read("9 June 1925"))
JOAN = somebody("Joan Moss", "Joan", parents=("Ivy Lang", "Tom Moss"), born=phrases.read("1 March 1928"))
EMMA = somebody("Emma Fry", "Emma", spouses=("Karl Fry",), died=phrases.read("4 January 1930"))
KARL = somebody("Karl Fry", "Karl", spouses=("Emma Fry",))
OTHER_NED = somebody("Ned Fry", "Ned", born=phrases.read("1 January 1850"))
PEOPLE = (IVY, TOM, NED, JOAN, EMMA, KARL)
ROWS = (
    row("Ivy Lang", "born", "3 May 1900"), row("Tom Moss", "born", "1898"), row("Ned Moss", "born", "9 June 1925"),
    row("Joan Moss", "born", "1 March 1928"), row("Emma Fry", "died", "4 January 1930"),
)  # fmt: skip
MOVE = FamilyEvent(
    id="m", kind="move", names=("the move to Elm Row",), when=phrases.read("1938"), words="1938", said="Ned Moss"
)
SAILING = FamilyEvent(
    id="s", kind="voyage", names=("the sailing",), when=phrases.read("1936"), words="1936", said="Ned Moss"
)
NED_TELLS = Source(Said.NARRATOR, "Ned Moss")


def of_words(
    field: str,
    words: str,
    *people: str,
    source: Source = NED_TELLS,
    extra: tuple[Person, ...] = (),
    sure: Sure = Sure.SURE,
) -> str:
    """The days of a picture of these people of which one thing is told."""
    read = told(field, words, source=source, sure=sure, value=NOT_READ if field == "date" else None)
    record = item("i", read, people=[shown(name) for name in people])
    return days_of(worked_out([record], (*PEOPLE, *extra), ROWS, [MOVE, SAILING]), "i")


NOT_READ = phrases.read("words that are no date")

OCCASIONS = (
    # a wedding, a birthday and a jubilee lie a month either side of the day (31 days, and a 29 February among them)
    ("the wedding of Ivy and Tom", (), "1922-07-09 1922-09-11"),
    ("Ivy's 21st birthday", (), "1921-04-01 1921-06-04"),
    ("her 21st birthday", ("Ivy Lang",), "1921-04-01 1921-06-04"),
    ("my seventh birthday", (), "1932-05-08 1932-07-11"),
    ("my seventh birthday, in Port Chalmers", (), "1932-05-08 1932-07-11"),
    ("the silver wedding of Ivy and Tom", (), "1947-07-09 1947-09-11"),
    ("their silver wedding", ("Ivy Lang", "Tom Moss"), "1947-07-09 1947-09-11"),
    # customs: in the first three years; at 5 to 16, 7 to 25, 3 to 10; within ten years; two; three months
    ("Ned's christening", (), "1925-06-09 1928-06-08"),
    ("the christening of Ned Moss, at St Paul's", (), "1925-06-09 1928-06-08"),
    ("Nedi ristsed", (), "1925-06-09 1928-06-08"),
    ("my confirmation", (), "1932-06-09 1951-06-08"),
    ("his first communion", ("Ned Moss",), "1930-06-09 1942-06-08"),
    # who is in the picture may be a guest there
    ("the first communion", ("Ned Moss",), "1925-06-09 -"),
    ("the christening", ("Ivy Lang",), "1900-05-03 -"),
    ("the funeral", ("Ivy Lang",), "1900-05-03 -"),
    ("her christening", ("a stranger",), "- -"),
    ("the wedding", ("Ivy Lang",), "1900-05-03 -"),
    ("the wedding", ("Ivy Lang", "Tom Moss"), "1900-05-03 -"),
    ("the silver wedding", ("Ivy Lang",), "1900-05-03 -"),
    ("a 21st birthday", ("Ivy Lang",), "1900-05-03 -"),
    ("Ned's first day at school", (), "1928-06-09 1936-06-08"),
    ("Ivy and Tom's engagement", (), "1912-08-10 1922-08-10"),
    ("Ivy's honeymoon", (), "1922-08-10 1924-08-10"),
    ("Emma's funeral", (), "1929-11-01 1930-03-08"),  # about the day of the death, and a month more either side
    # nobody is named, or somebody who is not known, or too many
    ("the christening", ("Ned Moss", "Joan Moss"), "1928-03-01 -"),
    ("the christening of Ned's daughter", (), "- -"),
    ("the christening of Quilla", (), "- -"),
    ("Ned and Joan's christening", (), "- -"),
    ("the christening of Ned and Joan", ("Ned Moss",), "1925-06-09 1928-06-08"),
    ("the christening of Ned and Joan", ("Ned Moss", "Joan Moss"), "1928-03-01 -"),
    ("Ned's honeymoon", (), "- -"),
    ("Emma and Ivy's engagement", (), "- -"),
)  # fmt: skip


@every_row(("words", "people", "wanted"), OCCASIONS)
def test_occasions(words: str, people: tuple[str, ...], wanted: str) -> None:
    assert of_words("occasion", words, *people) == wanted


LEANING_DATES = (
    ("before Ned was born", "- 1925-06-09"),
    ("before Ivy and Tom were married", "- 1922-08-10"),
    ("after Emma died", "1930-01-04 -"),
    ("the year Ned was born", "1925-01-01 1925-12-31"),  # a year is told: by what is told of the birth
    ("the summer we sailed", "1936-06-01 1936-08-31"),
    ("just after we moved to Elm Row", "1938-01-01 1939-08-02"),  # the month that the reader has, and half a year
    ("a year or two after Emma died", "1930-01-05 1934-01-03"),  # about two years, a year either side
    ("when Ned was a baby", "1925-06-09 1927-06-08"),
    ("before they married", "- -"),
    ("when Mum was ten", "1910-05-03 1911-05-02"),
    ("the year of the great fire", "- -"),
    ("before " + "the very long story that nobody reads as a date, " * 4, "- -"),
)  # fmt: skip


@every_row(("words", "wanted"), LEANING_DATES)
def test_dates_that_lean(words: str, wanted: str) -> None:
    assert of_words("date", words) == wanted


def test_who_is_in_it_may_be_told_before_a_date_that_leans() -> None:
    assert of_words("date", "Mum, before I was born", "Ivy Lang") == "1900-05-03 1925-06-09"
    assert of_words("date", "Mum, before I was born", "Emma Fry") == of_words("date", "", "Emma Fry")


def test_she_who_said_so_may_be_in_it_herself() -> None:
    told_so = "Mum said she was twelve in that one"
    assert of_words("story", told_so, "Ivy Lang", "Emma Fry") == "1911-05-03 1914-05-02"
    assert of_words("story", "Mum thought Ivy was about twelve in that one", "Ivy Lang") == "1909-05-03 1916-05-02"
    assert of_words("story", told_so.replace(" in that one", ""), "Ivy Lang", "Emma Fry") != "1911-05-03 1914-05-02"


def test_who_is_meant_must_be_clear() -> None:
    assert of_words("date", "before Ned was born", extra=(OTHER_NED,)) == "- -"
    assert of_words("date", "when Ned was ten", "Ned Moss", extra=(OTHER_NED,)) == "1935-06-09 1936-06-08"
    many = tuple(somebody(f"Ned {number}", "Ned") for number in range(20))
    assert of_words("date", "before Ned was born", extra=many) == "- -"


def test_a_wedding_told_of_on_the_time_line_is_the_couples() -> None:
    own = replace(
        MOVE, id="w", kind="marriage", names=("the wedding of Ivy and Tom",), when=phrases.read("1922"), words="1922"
    )
    of_tree = replace(
        MOVE, id="t", kind="marriage", names=("marriage of Karl and Emma",), people=("Karl Fry", "Emma Fry"),
        when=phrases.read("1890"), words="1890", said="the tree",
    )  # fmt: skip
    gone = FamilyEvent(id="g", kind="marriage", names=("marriage of nobody",), people=("who", "else"))
    record = item("i", told("date", "before the wedding of Ivy and Tom", value=NOT_READ))
    early = item("e", told("date", "before the wedding of Karl and Emma", value=NOT_READ))
    worked = worked_out([record, early], PEOPLE, ROWS, [own, of_tree, gone])
    assert days_of(worked, "i") == "- 1922-08-10"
    assert days_of(worked, "e") == "- 1890-12-31" and not worked.circles
    assert {claim.words for claim in worked.because("item e")} >= {"marriage of Karl and Emma was “1890”"}
    assert days(worked, of_event("w")) == "1922-08-10 1922-08-10"
    assert days(worked, of_birth("Karl Fry")) == "- 1878-12-31"  # twelve at least


AGES = (
    ("story", "Ivy looks about five here", "1903-05-03 1908-05-02"),  # two years either side, by the table
    ("story", "I'd say Ivy is five or so in this one", "1903-05-03 1908-05-02"),
    ("story", "Ivy was five when this was taken", "1904-05-03 1907-05-02"),  # a year either side
    ("story", "Ivy can't be more than seven", "1900-05-03 1911-05-02"),
    ("story", "Ivy was six months old", "1900-05-03 1901-06-03"),  # half a year either side
    ("story", "Ivy is the baby in her arms", "1900-05-03 1903-05-02"),
    ("story", "Ivy in her twenties", "1918-05-04 1932-05-02"),
    ("title", "Ivy at fifteen", "1914-05-03 1917-05-02"),
    ("title", "Ivy 5-aastaselt", "1904-05-03 1907-05-02"),
    ("story", "als Ivy sechs war", "1905-05-03 1908-05-02"),
    ("story", "That's Ivy, not yet walking", "1900-05-03 1902-05-02"),
    ("story", "Ivy in short trousers", "1901-05-03 1918-05-02"),
    ("story", "Ivy was not yet married", "1900-05-03 1922-08-09"),
    ("story", "Ivy and Tom had been married five years", "1925-08-11 1930-02-07"),
    ("story", "The couple were married five years", "1925-08-11 1930-02-07"),
    ("story", "Emma and Tom had been married five years", "1900-05-03 -"),
    ("story", "Ivy, with only the one child", "1900-05-03 -"),
    ("story", "Ivy was expecting Ned", "1924-08-09 1925-07-09"),
    ("story", "Ivy with the dog. The dog was five years old.", "1900-05-03 -"),
    ("story", "Joan was five then", "1900-05-03 -"),  # who is not in the picture may be told of at any time
    ("story", "Ivy was five. She was not pleased.", "1904-05-03 1907-05-02"),
    ("story", "No, Ivy was five", "1904-05-03 1907-05-02"),
    ("story", "She was not. Ivy was five", "1904-05-03 1907-05-02"),
    ("story", "Ivy was five. " + "and then a very long sentence about all the world " * 4, "1904-05-03 1907-05-02"),
    ("story", "Ivy was not a widow", "1900-05-03 -"),
    ("story", "Ivy looks about five and rather cross with the dog", "1903-05-03 1908-05-02"),  # by the rule of ages
    ("story", "Quilla was newly married, and Ivy beside her", "1900-05-03 -"),
    ("story", "Ivy was a widow", "1922-08-10 -"),  # after the death of Tom, who married her before it
    ("story", "I was five then", "1929-06-09 1932-06-08"),
    ("story", "It was Ivy's 21st birthday", "1921-04-01 1921-06-04"),  # as of an occasion, a month either side
    ("story", "It was just before Ned was born", "1924-11-07 1925-06-08"),  # the reader's month, and half a year
)  # fmt: skip


OWN_AGES = (
    # the teller, born on 9 June 1925, and his mother, born on 3 May 1900: a year either side, or two of what is about
    ("That's me at ten with my first rifle. It had been somebody's in 1905.", "1934-06-09 1937-06-08"),
    ("I'm five here", "1929-06-09 1932-06-08"),
    ("Me in Class One, seven years old", "1931-06-09 1934-06-08"),
    ("Me, about four, with the dog", "1927-06-09 1932-06-08"),
    ("I was only two when this was taken", "1926-06-09 1929-06-08"),
    ("I must have been three or four", "1926-06-09 1931-06-08"),
    ("See olen mina, nelja-aastane", "1928-06-09 1931-06-08"),
    ("Da war ich sechs", "1930-06-09 1933-06-08"),
    ("I was sixteen, and hated that frock", "1940-06-09 1943-06-08"),
    ("I'm five here and just got my first shoes", "1929-06-09 1932-06-08"),
    ("Ned at six months, in the big pram", "1925-06-09 1926-07-10"),
    ("Ned at his confirmation, fifteen years old", "1939-06-09 1942-06-08"),
    ("Ned on his first day of school, he was six", "1930-06-09 1933-06-08"),
    ("Ned's confirmation, he was fourteen", "1938-06-09 1941-06-08"),
    ("Mum said he was twelve in that one", "1936-06-09 1939-06-08"),
    ("Mum said he was twelve when they moved", "1925-06-09 -"),
    ("Ned as a baby? No, that's Joan.", "1925-06-09 -"),
    ("They wrote Ned aged six, but it isn't him", "1925-06-09 -"),
    ("Ned with the neighbour's boy, he was six", "1925-06-09 -"),
    ("Ned on Bess, five years old", "1925-06-09 -"),
    ("I was six when this hung in the hall", "1925-06-09 -"),
    ("I'm twelve years younger than Ivy", "1925-06-09 -"),
    ("Me with a baby, six months old", "1925-06-09 -"),
    ("Me and Ivy, ten and twelve", "1925-06-09 -"),
)


@every_row(("words", "wanted"), OWN_AGES)
def test_how_old_the_teller_was(words: str, wanted: str) -> None:
    assert of_words("story", words, "Ned Moss") == wanted


@every_row(
    ("words", "wanted"),
    [
        ("Mum about four, with her doll", "1902-05-03 1907-05-02"),
        ("Mother would be about five here", "1903-05-03 1908-05-02"),
        ("She's six here", "1905-05-03 1908-05-02"),
        ("He was in his eighties", "1900-05-03 -"),  # she is a woman, so it is of somebody else
        ("He was ten", "1900-05-03 -"),
    ],
)
def test_how_old_somebody_was_who_is_not_named(words: str, wanted: str) -> None:
    assert of_words("story", words, "Ivy Lang") == wanted


def test_a_date_by_somebody_of_the_other_sex_says_nothing() -> None:
    assert of_words("date", "he was in his eighties", "Ivy Lang") == "1900-05-03 -"


def test_who_is_in_a_picture_on_the_wall_need_not_have_been_there() -> None:
    framed = shown("Emma Fry", words="Emma Fry, in the framed picture on the wall")
    record = item("i", told("date", "1945"), people=[framed])
    assert days_of(worked_out([record], PEOPLE, ROWS), "i") == "1945-01-01 1945-12-31"
    assert not worked_out([record], PEOPLE, ROWS).circles


WEDDINGS = (
    # a month either side of 10 August 1922, on which Ned's parents married
    ("My parents' wedding", True),
    ("Das Hochzeitsbild meiner Eltern", True),
    ("Le mariage de mes parents", True),
    ("Vanemate pulmad", True),
    ("Ema ja isa pulmapilt", True),
    ("Ivy and Tom, wedding day", True),
    ("Ivy and the Reverend Tom, wedding day", True),
    ("Mum on her wedding day", True),
    ("at my parents' wedding", True),
    ("Ivy as a bride", True),
    ("Mum and Dad just married, it is stamped on the mount", True),
    ("Nonie and Grandfer on their wedding day", True),  # the two in the picture, whatever they are called
    ("Nonie and Grandfer's wedding", False),
    ("Emma at their wedding", False),
    ("Their wedding day", True),
    ("Ivy at a wedding", False),
    ("Tom and Ivy at a wedding", False),
    ("Tom and Ivy at their wedding", True),
    ("Ivy in her wedding dress", True),
    ("Ivy's wedding dress", False),
    ("Ivy at Joan's wedding", False),
    ("Ivy's cousin's wedding", False),
    ("Ivy and Tom's wedding anniversary", False),
    ("Ivy and Karl, wedding day", False),
    ("my grandparents' wedding", False),
    ("Wedding day", False),
    ("her wedding", False),
)


@every_row(("words", "is_of_it"), WEDDINGS)
def test_whose_wedding_it_is(words: str, is_of_it: bool) -> None:
    wanted = "1922-07-09 1922-09-11" if is_of_it else "1900-05-03 -"
    assert of_words("story", f"{words}.", "Ivy Lang", "Tom Moss") == wanted


GRANDPARENTS = (
    # there are two couples of them: who is in the picture tells which
    ("my grandparents' wedding", ("Ada",), "1890-04-29 1890-07-02"),
    ("Granny and Grandad's wedding", ("Ada",), "1890-04-29 1890-07-02"),
    ("my grandparents' wedding", (), "- -"),
    ("Great-aunt Fay's wedding", ("Ada",), "- -"),
)


@every_row(("words", "people", "wanted"), GRANDPARENTS)
def test_which_grandparents_wedding_it_is(words: str, people: tuple[str, ...], wanted: str) -> None:
    everybody = [
        somebody("Ada", "Ada", sex="female", spouses=("Abe",), married=(phrases.read("31 May 1890"),)),
        somebody("Abe", "Abe", sex="male", spouses=("Ada",), married=(phrases.read("31 May 1890"),)),
        somebody("Bea", "Bea", sex="female", spouses=("Bob",)), somebody("Bob", "Bob", sex="male", spouses=("Bea",)),
        somebody("Cy", "Cy", sex="male", parents=("Ada", "Abe")),
        somebody("Di", "Di", parents=("Bea", "Bob"), sex="female"),
        somebody("Ed", "Ed", parents=("Cy", "Di")),
    ]  # fmt: skip
    record = item(
        "i", told("story", words, source=Source(Said.NARRATOR, "Ed")), people=[shown(name) for name in people]
    )
    assert days_of(worked_out([record], everybody), "i") == wanted
    by_nobody = item("k", told("story", words), people=[shown(name) for name in people])
    assert days_of(worked_out([by_nobody], everybody), "k") == "- -"


@every_row(("field", "words", "wanted"), AGES)
def test_ages_and_states(field: str, words: str, wanted: str) -> None:
    people = ("Ivy Lang", "Tom Moss") if "couple" in words else ("Ivy Lang",)
    source = LEIDA if "couple" in words else NED_TELLS
    assert of_words(field, words, *people, source=source) == wanted


TRAPS = (
    # what is told is of another time, person or thing: nothing follows but that Ivy was born
    ("story", "Ivy was five when her father left."),
    ("story", "When Ivy was five they moved to town; this is long after."),
    ("story", "Ivy had been five years in service by then."),
    ("story", "Ivy worked there for twenty years."),
    ("story", "Ivy always said she was twenty-one at heart."),
    ("story", "Ivy, who married at twenty, kept this picture."),
    ("story", "Ivy told me she was ten when the war began."),
    ("story", "Ivy's coat was five years old."),
    ("story", "Ivy with a baby, six months old."),
    ("story", "Ivy with her baby."),
    ("story", "Ivy holding the neighbour's baby."),
    ("story", "Ivy's dog, aged five."),
    ("story", "Ivy with her sister's little girl, about three."),
    ("story", "Ivy was the baby of the family."),
    ("story", "Ivy as the eldest of five."),
    ("story", "Ivy was one of seven."),
    ("story", "Ivy lived to seventy."),
    ("story", "Ivy was no longer a girl of fifteen."),
    ("story", "Ivy is not five, whatever the back says."),
    ("story", "Ivy looks about five years older than Tom."),
    ("story", "Ivy could walk at ten months."),
    ("story", "Ivy had three children and twelve grandchildren."),
    ("story", "Ivy, 12 Mill Lane."),
    ("story", "Ivy at no. 18."),
    ("story", "Ivy at seven in the evening."),
    ("story", "Ivy at 3 o'clock."),
    ("story", "Ivy was 5 foot 2."),
    ("story", "Ivy was six feet tall."),
    ("story", "Ivy's first picture in ten years."),
    ("story", "Ivy's grandmother was a widow at thirty."),
    ("story", "She remembered being five in this house."),
    ("story", "When I was five Ivy gave me this picture."),
    ("story", "I was five when Ivy gave me the picture."),
    ("story", "Ned was five when I found this picture."),
    ("story", "Ivy kept the picture until Ned was born."),
    ("story", "This hung in the hall until we moved to Elm Row."),
    ("story", "Ivy died before Joan was twelve."),
    ("story", "The frame was bought the year we sailed."),
    ("story", "Ivy before she lost her teeth."),
    ("story", "Ivy was expecting visitors."),
    ("story", "Ivy was expecting rain and carrying an umbrella."),
    ("story", "Ivy was carrying water."),
    ("story", "Ivy in the second row."),
    ("story", "Ivy in her Sunday best."),
    ("story", "Ivy turned the corner as it was taken."),
    ("story", "Ivy turned to the left."),
    ("story", "Not a widow yet, whatever Joan says."),
    ("story", "The widow next door took it."),
    ("story", "Ivy with the widow Brown."),
    ("story", "Ivy with her only child's friend."),
    ("story", "Ivy with a toddler from next door."),
    ("story", "Ivy with two teenagers."),
    ("story", "The little boy in short trousers is a cousin; Ivy stands behind."),
    ("story", "Ivy stands behind a girl in a pinafore."),
    ("story", "Ivy with the newly married couple next door."),
    ("story", "Ivy with Mrs Brown, who had been married fifty years."),
    ("story", "The old lady had been married fifty years; Ivy nursed her."),
    ("story", "Ivy looked after a newborn."),
    ("story", "Ivy knew a man who died within the year."),
    ("story", "The man beside Ivy died soon after."),
    ("story", "Ivy's friend was not yet married."),
    ("story", "Ivy is twice as old as Joan."),
    ("story", "I was twelve years younger than Ivy."),
    ("story", "I'm twelve years younger than Ivy."),
    ("story", "Ivy won it at twenty to one."),
    ("story", "Ivy in the twenties style."),
    ("story", "Ivy in her thirties bungalow."),
    ("story", "the same hat as in BATA-0099"),
    ("story", "a better print than BATA-0099"),
    ("story", "see BATA-0099"),
    ("story", "not taken before BATA-0099 was"),
    ("story", "the dress from BATA-0099, years later"),
    ("story", "compare the same day BATA-0099 was found"),
    ("story", "I found it the same day as I lost BATA-0099"),
    ("occasion", "the funeral of Brown"),
    ("occasion", "the christening of a doll"),
    ("occasion", "the wedding cake shop"),
    ("occasion", "Ivy's cousin's wedding"),
    ("occasion", "the wedding of Ivy's friend"),
    ("occasion", "after the funeral tea for the Browns"),
    ("occasion", "Joan's wedding"),
    ("occasion", "Ned's friend's christening"),
    ("occasion", "the silver wedding of the Browns"),
    ("occasion", "birthday of the King"),
    ("occasion", "Ivy at the christening of her grandson"),
    ("occasion", "Ned's godson's christening"),
    ("occasion", "Ivy's sister's engagement"),
    ("occasion", "a confirmation class"),
    ("occasion", "school sports"),
    ("title", "Ivy's 21st floor flat"),
    ("title", "Ned's 5th Avenue"),
    ("title", "Ivy and Ned, 7 and 4"),
    ("title", "Joan's baby"),
    ("title", "Ivy with a baby"),
    ("title", "Ivy and a baby"),
    ("title", "Ivy holding a baby"),
    ("title", "Ivy and her baby"),
    ("story", "Ivy and a baby."),
    ("story", "They say Ivy was six; she was not."),
    ("story", "Ivy, aged six; she was not."),
    ("story", "Ivy was six. No, that is wrong."),
    ("story", "Ivy was six, so they say. She wasn't!"),
    ("story", "Ivy was six, or maybe not."),
    ("story", "They say it was taken before BATA-0099; it was not."),
    ("story", "Maybe the same film as BATA-0099, maybe not."),
    ("story", "Am selben Tag wie BATA-0099. Das stimmt nicht."),
    ("story", "Ivy and a boy of about ten."),
    ("story", "Ivy with a boy of about ten."),
    ("story", "Ivy und ein Säugling."),
    ("story", "Ivy ja beebi."),
    ("title", "Ned's baby"),
    ("title", "Ivy's old school"),
    ("title", "Ned as best man"),
    ("title", "Tom's war"),
    ("title", "Ned at Seven Oaks"),
    ("title", "Ivy at 18 Mill Lane"),
    ("title", "Ivy, age of steam exhibition"),
    ("inscription", "Ivy's Mum"),
    ("inscription", "Miss Ivy Moss"),
    ("inscription", "to Miss Ivy Lang's pupils"),
    ("inscription", "Ivy aged beautifully"),
    ("inscription", "copy for Mrs Tom Moss"),
    ("photographer", "Larkin Bros won a medal in 1889"),
    ("photographer", "Larkin Bros, where my father worked from 1899 to 1911"),
    ("photographer", "Larkin Bros took it before 1960"),
    ("photographer", "Larkin Bros had the royal warrant from 1899 to 1911 I think"),
    ("photographer", "Larkin Bros charged 1899 marks"),
)


@every_row(("field", "words"), TRAPS)
def test_what_is_of_another_time_or_of_somebody_else(field: str, words: str) -> None:
    other = replace(item("other", told("date", "5 June 1911")), number="BATA-0099")
    source = BACK if field == "inscription" else NED_TELLS
    record = item("i", told(field, words, source=source), people=[shown("Ivy Lang")])
    assert days_of(worked_out([other, record], PEOPLE, ROWS, [MOVE, SAILING]), "i") == "1900-05-03 -"


def test_a_state_of_others() -> None:
    only = item("o", told("story", "Ivy with only the one child"), people=[shown("Ivy Lang"), shown("Ned Moss")])
    widowed = item("w", told("story", "Karl was a widower"), people=[shown("Karl Fry")])
    died = item("d", told("story", "Emma died within the year"), people=[shown("Emma Fry")])
    worked = worked_out([only, widowed, died], PEOPLE, ROWS)
    assert days_of(worked, "o") == "1925-06-09 1928-03-01"
    assert days_of(worked, "w") == "1930-01-04 -"
    assert days_of(worked, "d") == "1928-01-04 1930-01-04"
    alone = somebody("Mari Saar", "Mari", married=(phrases.read("1890"),))
    records = [
        item("w", told("story", "Mari was a widow"), people=[shown("Mari Saar")]),
        item("n", told("story", "Joan was newly married"), people=[shown("Joan Moss")]),
        item(
            "o",
            told("story", "Ivy with only the one child"),
            people=[shown(name) for name in ("Ivy Lang", "Ned Moss", "Joan Moss")],
        ),
    ]
    worked = worked_out(records, (*PEOPLE, alone), ROWS)
    assert days_of(worked, "w") == "- -" and {days_of(worked, name) for name in "no"} == {"1928-03-01 -"}


def test_their_wedding_is_that_of_nobody_where_the_couple_is_not_there() -> None:
    own = replace(
        MOVE,
        id="w",
        kind="marriage",
        names=("the wedding of Karl and Quilla",),
        when=phrases.read("1890"),
        words="1890",
    )
    theirs = FamilyEvent(id="o", kind="marriage", names=("their golden wedding",))
    record = item("i", told("occasion", "their golden wedding"), people=[shown("Ivy Lang")])
    worked = worked_out([record], PEOPLE, ROWS, [own, theirs])
    assert days_of(worked, "i") == "1900-05-03 -" and days(worked, of_event("o")) == "- -" and not worked.circles


def test_a_funeral_of_the_time_line_is_within_three_months_of_the_death() -> None:
    funeral = FamilyEvent(id="f", kind="other", names=("Emma's funeral",))
    worked = worked_out([], PEOPLE, ROWS, [funeral])
    assert days(worked, of_event("f")) == "1930-01-04 1930-04-04"  # by custom, and not a month before the death too


def test_an_age_that_is_told_as_a_name_beside_one() -> None:
    people = [shown("Ivy Lang"), replace(shown("about five"), person=""), shown("Tom Moss", words="Tom Moss aged 7")]
    worked = worked_out([item("i", people=people)], PEOPLE, ROWS)
    assert days_of(worked, "i") == "1904-01-01 1907-12-30"  # Tom, born in 1898, at 6 to 8, and Ivy at 3 to 7
    first = [replace(shown("about five"), person="")]
    assert days_of(worked_out([item("i", people=first)], PEOPLE, ROWS), "i") == "- -"


BESIDE_HER = (
    # a row without a name: whether it is how old Ivy is, or somebody else who is with her (common practice, no source)
    ("a baby", False), ("her baby", False), ("bébé", False), ("un bébé", False), ("beebi", False),
    ("ein Säugling", False), ("her toddler", False), ("toddler", False), ("a child (4)", False),
    ("a girl of six", False), ("a boy of about ten", False), ("boy, 12", False), ("a six-year-old", False),
    ("une petite fille de six ans", False), ("...", False), ("about five", True), ("aged 7", True),
    ("six years old", True), ("four or so", True), ("in her thirties", True), ("sechs Jahre alt", True),
    ("ein Jahr alt", True), ("nelja-aastane", True),
)  # fmt: skip


@every_row(("words", "is_hers"), BESIDE_HER)
def test_whether_a_row_without_a_name_is_of_the_one_before_it(words: str, is_hers: bool) -> None:
    people = [shown("Ivy Lang"), replace(shown(words), person="")]
    worked = worked_out([item("i", people=people)], PEOPLE, ROWS)
    assert (days_of(worked, "i") != "1900-05-03 -") is is_hers


def test_at_a_funeral_the_dead_are_in_the_picture() -> None:
    coffin = item(
        "c", told("story", "laid out in the parlour"), told("date", "6 January 1930"), people=[shown("Emma Fry")]
    )
    assert not worked_out([coffin], PEOPLE, ROWS).circles
    alive = item("c", told("date", "6 January 1930"), people=[shown("Emma Fry")])
    assert worked_out([alive], PEOPLE, ROWS).circles


OTHER_PICTURES = (
    ("story", "Taken the same day as A-0001.", "1911-06-05 1911-06-05"),
    ("story", "The same afternoon as A-0001, you can see the same hat", "1911-06-05 1911-06-05"),
    ("story", "not the same day as A-0001", "- -"),
    ("story", "the same page as 1/1/1", "1901-06-05 1921-06-05"),
    ("date", "before A-0001", "- 1911-06-04"),
    ("date", "the year after A-0001", "1911-06-06 1914-06-04"),
    ("story", "About three years after A-0001, the boy has grown so", "1912-06-06 1916-06-04"),
    ("story", "the same day as “The launch”", "1911-06-05 1911-06-05"),
    ("story", "the same week as the one before", "1911-05-28 1911-06-13"),
    ("story", "the same day as B-0009", "- -"),
    ("story", "the same day as I", "- -"),
    ("story", "A-0001 is a nicer one", "- -"),
    ("story", "there was some talk of A-0001", "- -"),
    ("title", "the same day as it was in A-0001", "- -"),
    ("story", "the same day that we all of us went to see A-0001", "- -"),
    ("date", "the same day as A-0001", "1911-06-05 1911-06-05"),
    # by its number alone, as people call it, and in their languages
    ("story", "Same day as no. 1, she has the same frock on.", "1911-06-05 1911-06-05"),
    ("story", "Everybody is there. It's a year after number 1, he has the same flag", "1911-06-06 1914-06-04"),
    ("date", "the same day as 1", "1911-06-05 1911-06-05"),
    ("date", "taken with 0001", "1911-05-04 1911-07-07"),  # a month either side
    ("story", "Taken the same day as number 1 was taken", "1911-06-05 1911-06-05"),
    ("story", "Am selben Tag wie Bild 1 aufgenommen.", "1911-06-05 1911-06-05"),
    ("date", "nach Bild 1", "1911-06-06 -"),
    ("date", "früher als Bild 1", "- 1911-06-04"),
    ("date", "avant la photo 1", "- 1911-06-04"),
    ("date", "le même jour que la photo 1", "1911-06-05 1911-06-05"),
    ("date", "kolm aastat enne pilti 1", "1906-06-06 1910-06-04"),
    ("story", "Pildiga 1 samal päeval.", "1911-06-05 1911-06-05"),
    ("date", "kuvan 1 jälkeen", "1911-06-06 -"),
    ("date", "в тот же день, что и фото 1", "1911-06-05 1911-06-05"),
    ("date", "a copy of number 1", "1911-06-05 1911-06-05"),
    ("story", "A year after number 1 the house burnt down.", "- -"),
    ("story", "We lived at number 1 then.", "- -"),
    ("story", "the same dress as in number 1", "- -"),
    ("story", "number 1 is the nicer one", "- -"),
    ("story", "Number 1. The launch.", "- -"),
    ("story", "after " + "the very long story that somebody told " * 3 + "of number 1", "- -"),
    ("story", "before 1", "- -"),
    ("date", "not the same day as number 1", "- -"),
    ("story", "between number 1 and the other", "- -"),
)  # fmt: skip


@every_row(("field", "words", "wanted"), OTHER_PICTURES)
def test_another_picture_is_named(field: str, words: str, wanted: str) -> None:
    other = item("other", told("title", "The launch"), told("date", "5 June 1911"))
    other = replace(other, number="A-0001", mark=Mark((("box", "1"), ("folder", "1")), 1))
    record = item("i", told(field, words, value=NOT_READ if field == "date" else None))
    worked = worked_out([other, record])
    assert days_of(worked, "i") == wanted
    if wanted != "- -":
        assert any("5 June 1911" in claim.words for claim in worked.because("item i")), "the day that it leans on"
    assert days_of(worked_out([record]), "i") == "- -"


TWO_PICTURES = (
    ("nach Bild 1 und vor Bild 2", "1911-06-06 1912-07-07"),
    ("before number 2 and after number 1", "1911-06-06 1912-07-07"),
    ("between picture 1 and picture 2", "1911-06-06 1912-07-07"),
    ("zwischen Bild 1 und Bild 2", "1911-06-06 1912-07-07"),
    ("between number 1 or so, or number 2", "- -"),
    ("the same day as number 3", "- -"),  # two pictures end so
)


@every_row(("words", "wanted"), TWO_PICTURES)
def test_two_pictures_are_named(words: str, wanted: str) -> None:
    others = [
        replace(item(f"o{at}", told("date", day)), number=number)
        for at, (number, day) in enumerate(
            (("A-0001", "5 June 1911"), ("A-0002", "8 July 1912"), ("A-0003", "1913"), ("B-0003", "1914"))
        )
    ]
    record = item("i", told("date", words, value=NOT_READ))
    assert days_of(worked_out([*others, record]), "i") == wanted


def test_which_is_the_one_before_is_known_among_all_pictures_alone() -> None:
    """`boxlore show` looks at a picture and those that it is related to, which need not stand beside each other."""
    first, third = item("i"), item("k", told("date", "1911"), told("story", "Taken the same day as the one before."))
    for has_all, wanted in ((True, "1911-01-01 1911-12-31"), (False, "- -")):
        background = Background(people=Registry([]), has_all_pictures=has_all)
        assert days_of(WorkedOut(all_clues([first, third], Registry([]), [], [], background)), "i") == wanted


def test_a_ring_of_before_cannot_be() -> None:
    ring = [
        replace(item(name, told("date", f"before {other}", value=NOT_READ)), number=name)
        for name, other in (("A-1", "A-2"), ("A-2", "A-3"), ("A-3", "A-1"))
    ]
    (circle,) = worked_out(ring).circles
    assert len(circle.claims) == 3


STUDIO = (
    ("Saar Bros were in Pikk Street from 1899 to 1911", "1899-01-01 1911-12-31"),
    ("Saar Bros worked 1899-1911", "1899-01-01 1911-12-31"),
    ("Saar Bros were in Lai Street from 1899 to 1911", "- -"),
    ("Saar Bros, where my father worked from 1899 to 1911", "- -"),
    ("Saar Bros won a medal in 1889", "- -"),
    ("Saar Bros had 1899 glass plates or so", "- -"),
    ("A. Kask worked from 1899 to 1911", "- -"),
)  # fmt: skip


@every_row(("words", "wanted"), STUDIO)
def test_the_years_of_a_studio_that_are_told(words: str, wanted: str) -> None:
    by = [shown("Saar Bros, Pikk Street", role="photographer", source=BACK)]
    record, other = item("i", people=by), item("n", told("story", words))
    assert days_of(worked_out([record, other]), "i") == wanted
    own, beside, elsewhere = (
        item(ident, people=[shown(words, role="photographer", source=BACK)])
        for ident, words in (("o", "Kask, Lai 12, there 1901-1907"), ("b", "Kask, Lai 12"), ("e", "Kask, Lai 7"))
    )
    worked = worked_out([own, beside, elsewhere])
    assert days_of(worked, "o") == days_of(worked, "b") == "1901-01-01 1907-12-31" != days_of(worked, "e")


CHOICES = (
    ("the sixties", "1860-01-01 1969-12-31"),
    ("the sixties", "1960-01-01 1969-12-31"),  # beside Ned, born 1925
    ("7/4/25", "1925-04-07 2025-07-04"),
    ("in the Boer War", "1880-12-01 1902-05-31"),
    ("no idea", "- -"),
    ("", "- -"),
    ("in the war, the second one", "- -"),
)  # fmt: skip


@every_row(("words", "wanted"), CHOICES)
def test_each_date_that_may_be_meant_is_kept(words: str, wanted: str) -> None:
    people = [shown("Ned Moss")] if wanted.startswith("1960") else []
    record = item("i", told("date", words, value=phrases.read("no date")), people=people)
    assert days_of(worked_out([record], PEOPLE, ROWS), "i") == wanted


def test_the_half_of_the_world_is_that_of_the_place() -> None:
    place = Place(name="Port Chalmers", country="New Zealand", country_code="NZ", lat=-45.8, lon=170.6)
    there = told("place", "Port Chalmers", value=PlaceReading("Port Chalmers", "match", (place,)))
    unknown = replace(place, lat=None, lon=None, country_code="")
    nowhere = told("place", "somewhere", value=PlaceReading("somewhere", "kept", (unknown,)))
    summer = told("date", "the summer we sailed", value=NOT_READ)
    records = [item("s", summer, there), item("n", summer, nowhere)]
    worked = worked_out(records, PEOPLE, ROWS, [SAILING])
    assert days_of(worked, "n") == "1936-06-01 1936-08-31" and days_of(worked, "s") != days_of(worked, "n")


def test_titles_before_a_name() -> None:
    records = [
        item(name, told("inscription", words, source=source), people=[shown("Ivy Lang")])
        for name, words, source in (
            ("miss", "Miss Ivy Lang", BACK), ("mrs", "Mrs. Ivy Moss", BACK), ("fräulein", "Fräulein Ivy Lang", BACK),
            ("señora", "Señora Ivy Moss", BACK), ("told", "Miss Ivy Lang", LEIDA),
            ("another", "Miss Quilla Lang", BACK), ("slip", "Miss Ivy Moss", BACK),
            ("addressed", "to Miss Ivy Lang's class", BACK), ("his", "Mrs. Tom Moss, Elm Row", BACK),
            ("his name", "Mrs Moss with the dog", BACK), ("by marriage", "Ivy Moss", BACK),
        )
    ]  # fmt: skip
    worked = worked_out(records, PEOPLE, ROWS)
    assert days_of(worked, "miss") == days_of(worked, "fräulein") == "1900-05-03 1922-08-10"
    assert days_of(worked, "mrs") == days_of(worked, "señora") == "1922-08-10 -"
    assert {days_of(worked, name) for name in ("his", "his name", "by marriage")} == {"1922-08-10 -"}
    assert {days_of(worked, name) for name in ("told", "another", "slip", "addressed")} == {"1900-05-03 -"}


def test_one_of_several_without_an_end_limits_nothing() -> None:
    claim = Claim(words="one of them", source="test")
    meant = [phrases.read("before 1900").edtf, phrases.read("1910").edtf]
    assert any_of(claim, "a", [edtf for edtf in meant if edtf]) == claim


def test_a_doubted_date_gives_way() -> None:
    rows = [row("Ivy Lang", "born", "1900"), row("Ivy Lang", "born", "1908?")]
    worked = worked_out([], [IVY], rows)
    assert days(worked, of_birth("Ivy Lang")) == "1900-01-01 1900-12-31"
    assert [claim.words for claim in worked.circles[0].set_aside] == ["Ivy Lang was born “1908?”"]


def test_what_the_keeper_has_confirmed_leans_on_nothing_any_more() -> None:
    view = replace(told("date", "the year of the sailing", value=phrases.read("1937")), confirmed=True)
    assert days_of(worked_out([item("i", view)], PEOPLE, ROWS, [SAILING]), "i") == "1937-01-01 1937-12-31"


def test_whom_a_name_means_is_sought_among_all() -> None:
    record = item("i", told("date", "before Ned was born", value=NOT_READ))
    everybody = Background(people=Registry((*PEOPLE, OTHER_NED)))
    worked = WorkedOut(all_clues([record], Registry([NED]), [ROWS[2]], [], everybody))
    assert days_of(worked, "i") == "- -"


@given(st.dates(min_value=date(1860, 1, 1), max_value=date(1960, 12, 31)), st.integers(1, 60))
@drawn(60)
def test_an_age_read_by_supposing_a_birth_is_the_age_by_the_birth(born, years: int) -> None:  # type: ignore[no-untyped-def]
    """Held against the reader of dates itself, which has the birth: a year either side."""
    known = phrases.KnownDates(births=MappingProxyType({"ivy": born.isoformat()}))
    read = phrases.read(f"Ivy, aged {years}", known=known)
    ivy = somebody("Ivy Lang", "Ivy")
    record: Record = item("i", told("title", f"Ivy, aged {years}"), people=[shown("Ivy Lang")])
    worked = worked_out([record], [ivy], [row("Ivy Lang", "born", born.isoformat())])
    first, last = worked.bounds("item i")
    assert first is not None and last is not None and read.earliest is not None and read.latest is not None
    assert first_day(first).year in (read.earliest.year - 1, read.earliest.year) and first_day(last).year in (
        read.latest.year, read.latest.year + 1,
    )  # fmt: skip
