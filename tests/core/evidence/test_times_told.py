"""When a picture was taken, told in a story by another day: what a careful person would conclude of each, by hand.

Ivy was born on 3 May 1900 and married Tom on 10 August 1922; Ned was born on 9 June 1925, Joan on 1 March 1928; Emma
died on 4 January 1930; they sailed in 1936 and moved to Elm Row in 1938. What is told in months may be two months off,
in years a year; by memory a month more either side, and never beyond the day that is leant on (common practice, no
source).
"""

from dataclasses import replace

from tests.core.evidence.family import BACK, days_of, item, shown, told, worked_out
from tests.core.evidence.test_leaning import EMMA, MOVE, NED_TELLS, PEOPLE, ROWS, SAILING
from tests.every_row import every_row

from boxlore.core.dates import phrases
from boxlore.core.records.events import FamilyEvent
from boxlore.core.statements import Said, Source

FIRE = replace(MOVE, id="f", kind="other", names=("the fire at the mill",), when=phrases.read("1931"), words="1931")
BRAND = replace(FIRE, id="b", names=("der große Brand",), when=phrases.read("1940"), words="1940")
HOUSE = replace(FIRE, id="h", names=("maja põles maha",))
FLOOD = replace(FIRE, id="w", names=("the great flood",))


def of_story(
    words: str, *people: str, happened: tuple[FamilyEvent, ...] = (MOVE, SAILING, FIRE), field: str = "story"
) -> str:
    record = item("i", told(field, words, source=NED_TELLS), people=[shown(name) for name in people])
    return days_of(worked_out([record], PEOPLE, ROWS, happened), "i")


STORIES = (
    ("Taken before the mill burned down.", (), "- 1931-12-30"),
    ("This was taken after the fire, when we lived in the shed.", (), "1931-01-01 -"),
    ("Ivy and Tom a month after the wedding, on the porch.", ("Ivy Lang", "Tom Moss"), "1922-08-10 1923-01-09"),
    ("A month after the wedding.", ("Ivy Lang", "Tom Moss"), "1922-08-10 1923-01-09"),
    ("A month after the wedding.", ("Ivy Lang", "Ned Moss"), "1925-06-09 -"),  # whose?
    ("Before they were married.", ("Ivy Lang", "Tom Moss"), "1900-05-03 1922-08-09"),
    ("Mum before she married.", ("Ivy Lang",), "1900-05-03 1922-08-09"),
    ("Ivy before her wedding", ("Ivy Lang",), "1900-05-03 1922-08-09"),
    ("Ivy vor ihrer Hochzeit", ("Ivy Lang",), "1900-05-03 1922-08-09"),
    ("Emma a year before she died", ("Emma Fry",), "1926-12-04 1930-01-03"),
    ("Emma, peu avant sa mort", ("Emma Fry",), "1929-05-02 1930-01-03"),
    ("It was before Ned was born, in the yard", ("Ivy Lang",), "1900-05-03 1925-06-08"),
    ("You can see the old sign, so it was before the fire.", (), "- 1931-12-30"),
    ("The first picture at the house, just after we moved to Elm Row.", (), "1938-01-01 1939-09-03"),
    ("We had just moved to Elm Row.", (), "1938-01-01 1939-09-03"),
    ("The first Christmas after we sailed.", (), "1936-12-18 1937-01-01"),
    ("The winter after we sailed.", (), "1936-01-01 1938-04-30"),  # that winter may be the next
    ("At the time of the fire.", (), "1930-11-30 1932-02-01"),
    ("A bright day. Taken before the fire.", (), "- 1931-12-30"),
    ("Oh, that's the day we sailed. We all went.", (), "1935-11-30 1937-02-01"),
    ("Me with the calf, before the fire.", ("Ned Moss",), "1925-06-09 1931-12-30"),
    ("Ivy in black, Emma died three months later.", ("Ivy Lang",), "1929-06-03 1930-01-03"),
    ("About the time of the fire, look at the smoke.", (), "1930-10-29 1932-03-04"),
    # of another time, of somebody else, or left open
    ("A bright day. Before the fire he kept bees.", (), "- -"),
    ("The frame is from the year of the fire, the picture is from her youth.", (), "- -"),
    ("The album was bought after the fire.", (), "- -"),
    ("Some say the year after the fire, some the year before.", (), "- -"),
    ("The picture was taken before the fire.", (), "- 1931-12-30"),
    ("He kept bees. That was before the fire.", (), "- -"),
    ("He kept bees. It was before the fire.", (), "- -"),
    ("You can see the church. It was before the fire.", (), "- 1931-12-30"),
    ("Before the fire, or after.", (), "- -"),
    ("Before the fire he kept bees.", (), "- -"),
    ("Before the fire, he kept bees.", (), "- -"),
    ("Before the fire, Mum kept bees.", (), "- -"),
    ("Before the fire, I think.", (), "- 1931-12-30"),
    ("This was before the fire, we had bees.", (), "- 1931-12-30"),
    ("I was born here.", ("Ned Moss",), "1925-06-09 -"),
    ("We moved to Elm Row. I was thirteen.", ("Ned Moss",), "1925-06-09 -"),
    ("We moved to Elm Row. I was thirteen here.", ("Ned Moss",), "1937-06-09 1940-06-08"),
    ("Before the barn burned down.", (), "- -"),  # the fire was at the mill
    ("Taken before the great storm.", (), "- -"),
    ("1930, before the fire.", (), "- -"),
    ("before she died", ("Ivy Lang", "Emma Fry"), "1900-05-03 1930-01-04"),  # which of the two, nobody says
    ("When Joan was ten.", ("Ivy Lang",), "1900-05-03 -"),  # an age of somebody who is not there
    ("!", (), "- -"),
    ("Ivy", ("Ivy Lang",), "1900-05-03 -"),
)  # fmt: skip


@every_row(("words", "people", "wanted"), STORIES)
def test_a_time_that_is_told_in_a_story(words: str, people: tuple[str, ...], wanted: str) -> None:
    assert of_story(words, *people) == wanted


def test_it_is_likely_at_most_and_also_written_or_noted() -> None:
    assert (
        of_story("before the fire", field="note") == of_story("before the fire", field="inscription") == "- 1931-12-30"
    )
    assert of_story("before the fire", field="condition") == "- -"
    record = item("i", told("story", "before the fire", source=NED_TELLS))
    (reason,) = worked_out([record], PEOPLE, ROWS, [FIRE]).because("item i")[:1]
    assert reason.sure == "likely" and reason.words == "I: “before the fire”"


def test_an_event_in_another_word_or_form() -> None:
    assert of_story("Aufgenommen vor dem großen Brand", happened=(BRAND,)) == "- 1940-12-30"
    assert of_story("vor dem kleinen Brand", happened=(BRAND,)) == "- -"
    assert of_story("See on pärast tulekahju, uue maja ees", happened=(HOUSE,)) == "1931-01-01 -"
    assert of_story("before the house burned down", happened=(HOUSE,)) == "- 1931-12-30"
    assert of_story("before the house burned down", happened=(FLOOD,)) == "- -"


def test_before_and_after_one_day_cannot_both_be() -> None:
    views = [told("story", words, source=NED_TELLS) for words in ("Before the fire.", "After the fire.")]
    (circle,) = worked_out([item("i", *views)], PEOPLE, ROWS, [FIRE]).circles
    assert {claim.words for claim in circle.claims} == {"I: “Before the fire”", "I: “After the fire”"}


def test_that_a_soldier_fell_may_be_his_death() -> None:
    fallen = (*(person for person in PEOPLE if person is not EMMA), replace(EMMA, sex="male"))
    record = item("i", told("story", "a year before Emma fell", source=NED_TELLS), people=[shown("Emma Fry")])
    assert days_of(worked_out([record], fallen, ROWS), "i") == "1926-12-04 1930-01-03"


ONE_BY_ONE = (
    # a year either side of three, and of seven; whatever is told of two at once is of neither
    ("Ned was three and Ivy twenty-eight", "1927-06-09 1930-05-02"),
    ("Ned was three, Ivy was twenty-eight", "1927-06-09 1930-05-02"),
    ("Ned was three and the dog seven", "1925-06-09 -"),
    ("I was three and Ivy twenty-eight", "1927-06-09 1930-05-02"),
    ("I remember that dress, so I'm three or four", "1927-06-09 1931-06-08"),
    ("I'm the baby", "1925-06-09 1928-06-08"),
    ("I was three and a fright", "1927-06-09 1930-06-08"),
    ("He was three here, and would not keep still", "1925-06-09 -"),  # of whom of the two?
)


@every_row(("words", "wanted"), ONE_BY_ONE)
def test_ages_that_are_told_one_by_one(words: str, wanted: str) -> None:
    assert of_story(words, "Ned Moss", "Ivy Lang") == wanted


REVERSED = (
    # told the other way round: so long after the picture something happened, or had happened before it
    ("Emma died two years later.", "Emma Fry", "1925-12-04 1930-01-03"),
    ("She died two years later.", "Emma Fry", "1925-12-04 1930-01-03"),
    ("A few months later she died.", "Emma Fry", "1929-06-02 1929-12-07"),
    ("She died the year after.", "Emma Fry", "1926-12-04 1930-01-03"),
    ("She died soon afterwards.", "Emma Fry", "1929-05-02 1930-01-03"),
    ("The mill burned down the next year.", "Emma Fry", "1927-12-01 1930-01-04"),
    ("We moved to Elm Row the following summer.", "Ivy Lang", "1934-12-01 1938-12-30"),
    ("Dad had died the year before.", "Ivy Lang", "1922-08-10 -"),  # nobody knows when, but after their wedding
    ("Emma had died two years before this.", "Ivy Lang", "1930-01-04 1934-02-04"),
    ("The fire had been a year earlier.", "Ivy Lang", "1931-01-01 1935-01-31"),
    ("Emma starb zwei Jahre später.", "Emma Fry", "1925-12-04 1930-01-03"),
    ("Im Jahr darauf starb Emma.", "Emma Fry", "1926-12-04 1930-01-03"),
    ("Emma suri kaks aastat hiljem.", "Emma Fry", "1925-12-04 1930-01-03"),
    *(
        (words, "Emma Fry", "1925-12-04 1930-01-03")
        for words in (
            "Emma est morte deux ans plus tard.", "Elle est morte deux ans après", "Murió dos años después.",
            "Dos años después murió Emma", "Emma è morta due anni dopo.", "Emma morreu dois anos depois.",
            "Emma overleed twee jaar later.", "Emma dog två år senare.", "Två år senare dog Emma",
            "Emma døde to år senere.",
            "Emma kuoli kaksi vuotta myöhemmin.", "Emma zmarła dwa lata później.", "Emma zemřela dva roky později.",
            "Emma nomira divus gadus vēlāk.", "Emma mirė dveji metai vėliau.", "Emma meghalt két évvel később.",
            "Emma умерла через два года.",
        )
    ),
    ("They met in Leeds. Two years later she died.", "Emma Fry", "1807-07-23 1930-01-04"),  # after they met
    ("She sang two years later.", "Emma Fry", "1807-07-23 1930-01-04"),
    # two days
    ("Between the fire and the sailing.", "Ivy Lang", "1931-01-01 1936-12-30"),
    ("between the fire and the great storm", "Ivy Lang", "1900-05-03 -"),
    ("After the fire but before we moved to Elm Row.", "Ivy Lang", "1931-01-01 1938-12-30"),
    ("After the fire but before the great storm.", "Ivy Lang", "1900-05-03 -"),
    ("That's the year of the fire.", "Ivy Lang", "1930-12-25 1932-01-07"),
    ("Before my time.", "Ivy Lang", "1900-05-03 1925-06-08"),
    ("On the porch, a few months before Emma died, with the dog.", "Emma Fry", "1929-06-02 1929-12-07"),
    ("We moved to Elm Row.", "Ivy Lang", "1900-05-03 -"),
    ("Taken the day Ned was born.", "Ivy Lang", "1925-05-08 1925-07-11"),
    ("The year Ned was born.", "Ivy Lang", "1924-12-25 1926-01-07"),
    ("Ned war noch kein Jahr alt.", "Ned Moss", "1925-06-09 1927-06-08"),
    ("Before she married Tom.", "Ivy Lang", "1900-05-03 1922-08-09"),
    ("The winter Emma died.", "Ivy Lang", "1928-11-24 1930-03-06"),
    ("Ivy looks about five, but she was really nine.", "Ivy Lang", "1900-05-03 -"),
    ("The album says Ivy is 45; in truth she was 55.", "Ivy Lang", "1900-05-03 -"),
    ("It is wrongly labelled: “Ivy aged fifteen”.", "Ivy Lang", "1900-05-03 -"),
    ("Wrongly noted: before the fire.", "Ivy Lang", "1900-05-03 -"),
    ("Before the fire. Really.", "Ivy Lang", "1900-05-03 -"),
    ("Ivy was fifteen. That is what Tom says. I say twenty-five.", "Ivy Lang", "1914-05-03 1917-05-02"),
    ("Ned tiene cinco años.", "Ned Moss", "1929-06-09 1932-06-08"),
    ("During the fire.", "Ivy Lang", "1930-11-30 1932-02-01"),
    # kept by custom, told in a story
    ("My first day at school.", "Ned Moss", "1928-06-09 1936-06-08"),
    ("My first day at school was a fright.", "Ned Moss", "1925-06-09 -"),
)  # fmt: skip


@every_row(("words", "who", "wanted"), REVERSED)
def test_what_came_after_the_picture_or_before_it(words: str, who: str, wanted: str) -> None:
    assert of_story(words, who) == wanted


ANSWERS = (
    # to whether somebody was born, alive or married when it was taken
    ("Joan wasn't born yet", "1900-05-03 1928-02-29"), ("No, Joan was not born yet.", "1900-05-03 1928-02-29"),
    ("Joan was born already", "1928-03-01 -"), ("Emma was still alive", "1900-05-03 1930-01-03"),
    ("Emma had died by then", "1930-01-04 -"), ("Mum was married by then", "1922-08-10 -"),
    ("Mum wasn't married yet", "1900-05-03 1922-08-09"), ("Emma lebte noch", "1900-05-03 1930-01-03"),
    ("Joan war noch nicht geboren", "1900-05-03 1928-02-29"), ("Emma oli juba surnud", "1930-01-04 -"),
    ("Joan polnud veel sündinud", "1900-05-03 1928-02-29"), ("Emma vivait encore", "1900-05-03 1930-01-03"),
    ("Joan n'était pas encore née", "1900-05-03 1928-02-29"), ("Emma todavía vivía", "1900-05-03 1930-01-03"),
    # to how old she looks: eight years either side of what is about thirty
    ("thirty or so", "1922-05-03 1939-05-02"), ("Maybe thirty", "1922-05-03 1939-05-02"),
    ("etwa dreißig", "1922-05-03 1939-05-02"), ("thirty", "1900-05-03 -"), ("maybe the garden", "1900-05-03 -"),
)  # fmt: skip


@every_row(("words", "wanted"), ANSWERS)
def test_short_answers(words: str, wanted: str) -> None:
    assert of_story(words, "Ivy Lang") == wanted


OF_ONE = (
    ("He was three here, and would not keep still", "Ned Moss", "1927-06-09 1930-06-08"),
    ("Emma's last Christmas", "Emma Fry", "1929-01-04 1930-01-04"),
    ("Her last summer", "Emma Fry", "1929-01-04 1930-01-04"),
    ("Her last summer in Reval", "Emma Fry", "1807-07-23 1930-01-04"),  # 122 years and 164 days
)


@every_row(("words", "who", "wanted"), OF_ONE)
def test_of_the_one_who_is_there(words: str, who: str, wanted: str) -> None:
    assert of_story(words, who) == wanted


def test_the_couple_that_is_there_is_newly_married() -> None:
    assert of_story("Nygifta, midsommar", "Ivy Lang", "Tom Moss") == "1922-08-10 1925-08-10"
    assert of_story("Ivy and Tom, newly married", "Ivy Lang", "Tom Moss") == "1922-08-10 1925-08-10"
    assert of_story("Nygifta, midsommar", "Ivy Lang", "Ned Moss") == "1925-06-09 -"
    assert of_story("Karl, newly married", "Ivy Lang", "Tom Moss") == "1900-05-03 -"
    assert of_story("Mum was a widow already", "Ivy Lang", "Ned Moss") == "1925-06-09 -"


def test_our_wedding_is_that_of_whoever_tells() -> None:
    for words in ("Our wedding. Mum made the cake.", "Unsere Hochzeit"):
        record = item("i", told("story", words, source=Source(Said.NARRATOR, "Ivy Lang")), people=[shown("Ivy Lang")])
        assert days_of(worked_out([record], PEOPLE, ROWS), "i") == "1922-07-09 1922-09-11", words
    trip = item("i", told("story", "On our honeymoon", source=Source(Said.NARRATOR, "Ivy Lang")))
    assert days_of(worked_out([trip], PEOPLE, ROWS), "i") == "1922-08-10 1924-08-10"
    assert of_story("Our wedding", "Ivy Lang") == "1900-05-03 -"  # Ned tells it, who has had none
    another = item("i", told("story", "Ma's wedding", source=Source(Said.NARRATOR, "Ivy Lang")))
    assert days_of(worked_out([another], PEOPLE, ROWS), "i") == "- -"  # “ma” is French for “my”, and a mother


def test_an_age_beside_a_name_without_a_verb() -> None:
    record = item("i", people=[shown("Ned Moss", words="Ned, 6 yrs")])
    assert days_of(worked_out([record], PEOPLE, ROWS), "i") == "1930-06-09 1933-06-08"
    ned = shown("Ned Moss")
    for words, wanted in (("N. Moss aged 14", "1938-06-09 1941-06-08"), ("I. Moss aged 14", "1925-06-09 -")):
        written = told("inscription", words, source=BACK)
        assert days_of(worked_out([item("i", written, people=[ned])], PEOPLE, ROWS), "i") == wanted, words
    for words, wanted in (
        ("Ned (6)", "1930-06-09 1933-06-08"), ("Ned - 6", "1930-06-09 1933-06-08"),
        ("little Ned, c. 6", "1929-06-09 1934-06-08"), ("Ned, who was six", "1930-06-09 1933-06-08"),
        ("Ned 9 mths", "1925-09-07 1926-10-10"), ("Ned of Elm Row", "1925-06-09 -"), ("Ned 6 Elm Row", "1925-06-09 -"),
        ("Ned's doll 6", "1925-06-09 -"), ("Ned as a baby", "1925-06-09 1928-06-08"),
    ):  # fmt: skip
        beside = shown("Ned Moss", words=words)
        assert days_of(worked_out([item("i", people=[beside])], PEOPLE, ROWS), "i") == wanted, words
    for words, wanted in (("Ned 6", "1930-06-09 1933-06-08"), ("Quilla 6", "- -"), ("Ned or Ivy 6", "- -")):
        unknown = replace(shown(words), person="")
        assert days_of(worked_out([item("i", people=[unknown])], PEOPLE, ROWS), "i") == wanted, words
    counted = [shown(name, words=words) for name, words in (("Ned Moss", "Ned 1"), ("Joan Moss", "Joan 2"))]
    assert days_of(worked_out([item("i", people=counted)], PEOPLE, ROWS), "i") == "1928-03-01 -"
    for words, wanted in (("nine months", "1925-09-07 1926-10-10"), ("a boy of six", "1925-06-09 -")):
        second = replace(shown(words), person="")
        assert days_of(worked_out([item("i", people=[ned, second])], PEOPLE, ROWS), "i") == wanted, words
    for words, number, wanted in (("aastane", 6, "1930-06-09 1933-06-08"), ("Quilla", 6, "1925-06-09 -")):
        numbered = replace(shown(words), person="", number=number)
        assert days_of(worked_out([item("i", people=[ned, numbered])], PEOPLE, ROWS), "i") == wanted, words
