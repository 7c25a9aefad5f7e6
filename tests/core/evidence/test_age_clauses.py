"""Whose age it is where a sentence has several clauses or something stands beside it: by hand, common practice, no
source. Ada (born on 5 May 1920) tells; Ben was born on 1 September 1924, Eve on 3 March 1930, the twins Cy and Di on
6 July 1926; a year either side of a plain age, two of about five."""

from tests.core.evidence.family import days_of, item, person, row, shown, told, worked_out
from tests.every_row import every_row

from boxlore.core.statements import Said, Source

ADA_TELLS = Source(Said.NARRATOR, "Ada")
PEOPLE = [person(name) for name in ("Ada", "Ben", "Eve", "Cy", "Di")]
BORN = {"Ada": "5 May 1920", "Ben": "1 September 1924", "Eve": "3 March 1930", "Cy": "6 July 1926", "Di": "6 July 1926"}
ROWS = [row(name, "born", when) for name, when in BORN.items()]


def of(words: str, *people: str) -> str:
    record = item("i", told("story", words, source=ADA_TELLS), people=[shown(name) for name in people])
    worked = worked_out([record], PEOPLE, ROWS)
    assert not worked.circles
    return days_of(worked, "i")


TELLERS = (
    # the teller's own age stays hers, whoever is named before it
    ("Eve was one, I was eleven.", "1930-05-05 1933-03-02"),
    ("Eve is one year old, I was eleven.", "1930-05-05 1933-03-02"),
    ("Eve was a baby, I was eleven.", "1930-05-05 1933-03-02"),
    ("Eve is the little one, I was eleven.", "1931-03-03 1933-05-04"),
    ("That is Eve, I was eleven.", "1930-05-05 1933-05-04"),
    ("Eve war ein Baby, ich war elf.", "1930-05-05 1933-03-02"),
    ("Eve war ein Baby, da war ich elf.", "1930-05-05 1933-03-02"),
    ("Eve oli beebi, mina olin üksteist.", "1930-05-05 1933-03-02"),
    ("Eve était bébé, j'avais onze ans.", "1930-05-05 1933-03-02"),
    ("Eve was asleep and I was eleven.", "1930-05-05 1933-05-04"),
    ("Eve is on my knee; I was eleven.", "1930-05-05 1933-05-04"),
    ("Eve is on my knee – I must have been eleven.", "1930-03-03 1935-05-04"),
    # what she says, thinks or tells of another time is no age of hers here
    ("Eve was four, I think.", "1932-03-03 1937-03-02"),
    ("Eve looks like I did, when I was ten.", "1930-03-03 -"),
    ("Eve was born when I was nine.", "1930-03-03 -"),
    ("I was eleven when we met.", "1930-03-03 -"),
    ("When Eve was four, I was fourteen.", "1933-05-05 1936-03-02"),
)  # fmt: skip


@every_row(("words", "wanted"), TELLERS)
def test_the_tellers_age_is_hers(words: str, wanted: str) -> None:
    assert of(words, "Eve", "Ada") == wanted


def test_an_age_goes_to_whom_its_clause_names() -> None:
    assert of("Ben is the baby on my lap, I was four.", "Ben", "Ada") == "1924-09-01 1926-05-04"
    assert of("Eve is the little one, Ben was seven.", "Eve", "Ben") == "1931-03-03 1933-08-31"


BESIDE = (
    # an age is read whatever stands behind it, or between it and whom the sentence begins with
    ("Eve about eight, on skis", "1935-03-03 1942-03-02"),
    ("Eve about five, first day of school", "1933-03-03 1938-03-02"),
    ("Eve about one, learning to walk", "1930-03-03 1933-03-02"),
    ("Eve on Mother's lap, about one", "1930-03-03 1933-03-02"),
    ("Eve was seven: the day she broke her arm.", "1936-03-03 1939-03-02"),
    ("Eve was a young woman, about 24", "1946-03-03 1963-03-02"),
    ("Little Eve at five", "1934-03-03 1937-03-02"),
    ("Eve, who had just turned four", "1932-03-03 1937-03-02"),
    ("Eve a baby on her mother's lap", "1930-03-03 1933-03-02"),
    ("Eve on her lap, not yet walking", "1930-03-03 1932-03-02"),
    ("Eve was eight, the year the war ended", "1937-03-03 1940-03-02"),
    ("Eve was five, maybe six", "1934-03-03 1939-03-02"),
    ("Eve was five, when we moved there", "1930-03-03 -"),
    ("Eve with her sister's girl, about three", "1930-03-03 -"),
    ("Eve was a worker, not a girl of ten", "1930-03-03 -"),
    # of somebody or something that is not in the picture, and no age at all
    ("The old lady is Mrs Pask, she was ninety.", "1930-03-03 -"),
    ("The pony is called Rex, she was ten.", "1930-03-03 -"),
    ("The day the war ended, she was fifteen.", "1944-03-03 1947-03-02"),
    ("Ten years old, the pony was.", "1930-03-03 -"),
    ("Ten years old, at the fair.", "1939-03-03 1942-03-02"),
    ("He was six, she thirty.", "1930-03-03 -"),
    ("A newborn calf.", "1930-03-03 -"),
    ("A newborn baby on the porch.", "1930-03-03 1932-03-02"),
    ("A toddler holding a ball.", "1930-03-03 1935-03-02"),
    ("She was old by then.", "1930-03-03 -"),
    ("Her first Christmas.", "1930-03-03 -"),
)  # fmt: skip


@every_row(("words", "wanted"), BESIDE)
def test_an_age_beside_other_words(words: str, wanted: str) -> None:
    assert of(words, "Eve") == wanted


MINE = (
    ("I was eight, it was the day I broke my arm.", "1927-05-05 1930-05-04"),
    ("I was nineteen, my last summer at school.", "1938-05-05 1941-05-04"),
    ("Me on Mother's lap, a few months old", "1920-05-05 1921-06-05"),
    ("I am about twelve here.", "1929-05-05 1936-05-04"),
)  # fmt: skip


@every_row(("words", "wanted"), MINE)
def test_the_tellers_age_beside_other_words(words: str, wanted: str) -> None:
    assert of(words, "Ada") == wanted


TWINS = (
    ("The twins, about three, on the beach", "1927-07-06 1932-07-05"),
    ("Die Zwillinge, da waren sie vierzehn.", "1939-07-06 1942-07-05"),
    ("Konfirmation der Zwillinge, sie waren vierzehn.", "1939-07-06 1942-07-05"),
    ("Die Zwillinge, da waren sie noch keine zwei Jahre alt.", "1926-07-06 1929-07-05"),
    ("The twins at three", "1928-07-06 1931-07-05"),
    ("The neighbours' twins, about three", "1926-07-06 -"),
)  # fmt: skip


@every_row(("words", "wanted"), TWINS)
def test_an_age_of_twins_is_each_ones(words: str, wanted: str) -> None:
    assert of(words, "Cy", "Di") == wanted


def test_twins_are_the_two_in_the_picture() -> None:
    assert of("The twins, about three", "Cy") == "1926-07-06 -"
    assert of("The twins, about three", "Cy", "a stranger") == "1926-07-06 -"


def test_who_is_the_one_named_right_before() -> None:
    assert of("Ben with Eve, who had just turned four", "Ben", "Eve") == "1932-03-03 1937-03-02"
    assert of("Ben with a cousin, who had just turned four", "Ben", "Eve") == "1930-03-03 -"


def test_what_the_teller_says_of_herself_is_nobody_elses() -> None:
    assert of("I was a few months old", "Ada") == "1920-05-05 1921-06-05"
    assert of("I was five years old", "Ben") == "1924-09-01 1927-05-04"


def test_the_words_of_a_claim_are_those_told() -> None:
    record = item("i", told("story", "I am about twelve here.", source=ADA_TELLS), people=[shown("Ada")])
    because = worked_out([record], PEOPLE, ROWS).because("item i")
    assert "Ada in I: “I am about twelve here”" in [claim.words for claim in because]


NEXT = (
    # in the sentence behind one that tells of nobody else
    ("Eve in her Sunday cap. She was fifteen.", "1944-03-03 1947-03-02"),
    ("The day she graduated from the college. She was twenty-two.", "1951-03-03 1954-03-02"),
    ("In her nurse's cape, at the fair. She was thirty-one.", "1930-03-03 -"),
    ("At the fair. She was thirty-one.", "1960-03-03 1963-03-02"),
    ("Her first day at the grammar school. She had just turned eleven.", "1938-03-03 1945-03-02"),
    ("That is Spot in front. She was ten.", "1930-03-03 -"),
    ("In the garden of Anna Hay. She was ninety.", "1930-03-03 -"),
    ("In the front Miss Gray. She was sixty.", "1930-03-03 -"),
    ("Eve's hat. It was bought after the war.", "1930-03-03 -"),
    ("The old pony. She was ten.", "1930-03-03 -"),
    ("At the fair with her aunt. She was ten.", "1930-03-03 -"),
    ("At the fair, the lady had a stall. She was ninety.", "1930-03-03 -"),
    ("In the yard, where we all used to play in the long summers of those years. She was ten.", "1930-03-03 -"),
)


@every_row(("words", "wanted"), NEXT)
def test_an_age_in_the_next_sentence(words: str, wanted: str) -> None:
    assert of(words, "Eve") == wanted


TWO = (
    ("Ada a environ trente ans et Eve vingt ans.", "1949-03-03 1952-03-02"),
    ("Ada tenía treinta años y Eve veinte años.", "1949-05-05 1952-03-02"),
    ("Ada aveva trent'anni e Eve vent'anni.", "1949-05-05 1952-03-02"),
    ("Ada was thirty and Eve twenty.", "1949-05-05 1952-03-02"),
)


@every_row(("words", "wanted"), TWO)
def test_the_ages_of_two_in_one_sentence(words: str, wanted: str) -> None:
    assert of(words, "Ada", "Eve") == wanted
