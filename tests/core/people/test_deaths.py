"""What ends a life: only a sure statement (a rule of our own). Words of other languages are from memory."""

from tests.every_row import every_row

from boxlore.core.dates import phrases
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.deaths import doubted, ends_life, says_living
from boxlore.core.statements import Kind, Reading, Statement, Subject, Sure

YEAR = Reading("date", DateReading.from_edtf("1944"), "")
ASKED = Reading("date", DateReading("03/04/44", ask="Which century?", alternatives=("1944-04-03",)), "", asks=True)
UNREAD = Reading("date", DateReading("at sea"), "")


def read(words: str) -> Reading:
    return Reading("date", phrases.read(words), "")


def told(words: str, field: str = "died", sure: Sure = Sure.SURE) -> Statement:
    about = Subject(Kind.PERSON, "p")
    return Statement(id="1", act="", subject=about, field=field, words=words, sure=sure, recorded_at="")


ENDS = [
    (told("1944"), YEAR, True),
    (told("about 1990"), read("about 1990"), True),
    (told("before 1990"), read("before 1990"), True),
    (told("in May 1990"), read("in May 1990"), True),
    (told("1944, the grave unknown"), YEAR, True),
    (told("1944?"), Reading("date", DateReading.from_edtf("1944?"), ""), False),
    (told("perhaps 1990"), read("perhaps 1990"), False),
    (told("about 1990?"), read("about 1990?"), False),
    (told("said to be 1990"), read("said to be 1990"), False),
    (told("1990 oder wohl 1991"), YEAR, False),
    (told("troligen 1990"), read("troligen 1990"), False),
    (told("may have died 1990"), read("may have died 1990"), False),
    (told("it may be 1990"), None, False),
    (told("03/04/44"), ASKED, True),
    (told("at sea"), UNREAD, True),
    (told("in the war"), None, True),
    (told("nie żyje"), None, True),
    (told("Port Chalmers", "buried_at"), None, True),
    (told("1944", sure=Sure.GUESS), YEAR, False),
    (told("1944", sure=Sure.LIKELY), YEAR, False),
    (told("not yet, he lives in Perth"), None, False),
    (told("hasn't, as far as we heard in 1990"), YEAR, False),
    (told("perhaps at sea"), UNREAD, False),
    (told("in the war?"), None, False),
    (told("elab Tallinnas"), None, False),
    (told("ещё жив"), None, False),
    (told("lebt noch"), None, False),
    (told("żyje w Gdańsku"), None, False),
    (told("unknown", "buried_at"), None, False),
    (told("missing since 1944"), YEAR, False),
    (told("missing in action"), None, False),
    (told("believed killed 1944"), YEAR, False),
    (told("verschollen 1945"), YEAR, False),
    (told("пропал без вести"), None, False),
]


@every_row(("statement", "reading", "ends"), ENDS)
def test_only_a_sure_statement_ends_a_life(statement: Statement, reading: Reading | None, ends: bool) -> None:
    assert ends_life(statement, reading) is ends
    assert doubted([(statement, reading)]) == ("" if ends else statement.words)


def test_one_sure_statement_is_enough() -> None:
    guess = (told("1950", sure=Sure.GUESS), YEAR)
    assert doubted([(told("1944"), YEAR), guess]) == "" and doubted([]) == ""
    assert doubted([guess]) == "1950" and not says_living("1950")
