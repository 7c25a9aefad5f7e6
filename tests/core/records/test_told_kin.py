"""Who is meant by a word of kin: by the tree of who tells (the tree and what is said are ours)."""

from types import MappingProxyType

from tests.every_row import every_row

from boxlore.core.dates.phrases import AS_TOLD, KnownDates, read
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.events import meant_by, of_lives
from boxlore.core.records.told_kin import kin_likely, kin_told, names_behind_kin


def person(ident: str, name: str, sex: str, parents: str = "", died: str = "") -> Person:
    return Person(
        id=ident, name=name, sort_name=name, forms=(name,), calls=(name.split()[0],), sex=sex,
        parents=tuple(parents.split()), died=DateReading.from_edtf(died) if died else None,
    )  # fmt: skip


PEOPLE = Registry(
    [
        person("l", "Leida Tamm", "f", "m f"), person("m", "Marta Tamm", "f", "g h", "1958-02-04"),
        person("f", "Jaan Tamm", "m", "k"), person("g", "Anna Kask", "f", died="1931-05"),
        person("h", "Peet Kask", "m"), person("k", "Mari Tamm", "f", died="1940-01-09"),
        person("b", "Juhan Tamm", "m", "m f"), person("c", "Aino Tamm", "f", "l"), person("x", "Con Rourke", "m"),
    ]
)  # fmt: skip
TOLD = [  # what Leida says, and whom it may mean
    ("the winter Mum died", {"mum": ("m",)}),
    ("my brother’s wedding", {"my brother": ("b",)}),
    ("als Vater starb", {"vater": ("f",)}),
    ("ema surm", {"ema": ("m",)}),
    ("when my daughter was born", {"my daughter": ("c",)}),
    ("Grandma died", {"grandma": ("g", "k")}),
    ("my wife died", {}),
    ("Grandma Anna died", {"grandma": ("g", "k"), "grandma anna": ("g",)}),
    ("Grandma Con died", {"grandma": ("g", "k")}),
    ("when Con died", {}),
    ("me", {}),
    ("kui ma olin viis", {}),  # Estonian “when”, and a grandmother in Māori
    ("kui Con suri", {}),
    ("kui ema oli kümnene", {"ema": ("m",)}),
    ("when Kui died", {"kui": ("g", "k")}),
    ("quando o avô morreu", {"o avô": ("h",)}),
    ("quando avô morreu", {"avô": ("h",)}),
]


@every_row(("words", "told"), TOLD)
def test_a_word_of_kin_means_those_of_the_tree(words: str, told: dict[str, tuple[str, ...]]) -> None:
    assert kin_told(words, PEOPLE, "l") == told


BEHIND = [  # words, and the name that is told with a word of kin
    ("Aunt Mabel's sixtieth", {"aunt mabel": "mabel"}),
    ("Opoe Trui was toen vijfenzeventig", {"opoe trui": "trui"}),
    ("kui Mabel oli viis", {}),
    ("když bylo babičce Mabel deset", {"babičce mabel": "mabel"}),
    ("me, Mabel and Aunt Con", {}),
    ("my aunt", {}),
]


@every_row(("words", "told"), BEHIND)
def test_a_known_name_behind_a_word_of_kin_is_told_with_it(words: str, told: dict[str, str]) -> None:
    assert names_behind_kin(words, frozenset(("mabel", "trui"))) == told


def test_without_who_tells_it_means_nobody() -> None:
    assert kin_told("Mum died", PEOPLE, "") == {}


DATED = [  # what Leida says, the date, the question
    ("the year after Mum died", "1959~", None),
    ("before my mother's death", "[..1958-02-04]", None),
    ("when Grandma died", None, "is the death of Anna Kask or the death of Mari Tamm meant?"),
]


@every_row(("words", "edtf", "ask"), DATED)
def test_a_life_is_leaned_on_by_words_of_kin(words: str, edtf: str | None, ask: str | None) -> None:
    events, perhaps = meant_by(words, of_lives(PEOPLE), PEOPLE, "l")
    reading = read(words, AS_TOLD, KnownDates(events=events, perhaps=MappingProxyType(perhaps)))
    assert (reading.edtf.text if reading.edtf else None) == edtf
    assert (reading.ask is None) if ask is None else ask in str(reading.ask)


CASES = [  # what Leida says, with kin in the cases of a language, and whom it may mean
    ("když bylo mamince deset let", {"mamince": ("m",)}),
    ("kai mamai buvo penkeri", {"mamai": ("m",)}),
    ("Vaters Tod", {"vaters": ("f",)}),
    ("äidin syntymäpäivä", {"äidin": ("m",)}),
    ("emal oli kuues eluaasta", {"emal": ("m",)}),
    ("babci było pięć lat", {"babci": ("g", "k")}),
    ("mammas bryllup", {"mammas": ("m",)}),
    ("meie emal", {"meie emal": ("m",)}),
    ("mamince Martě", {"mamince": ("m",)}),
]


@every_row(("words", "told"), CASES)
def test_a_word_of_kin_in_a_case_means_those_of_the_tree(words: str, told: dict[str, tuple[str, ...]]) -> None:
    assert {phrase: ids for phrase, ids in kin_told(words, PEOPLE, "l").items() if told.get(phrase) == ids} == told


CALLED = Registry(
    [
        person("j", "Grandfather James", "m"), person("r", "Ruth", "f"), person("o", "Ruth's grandmother", "f"),
        person("w", "Wim Bakker", "m", "p q"), person("p", "Piet Bakker", "m", "k"), person("k", "Klaas Bakker", "m"),
        person("q", "Truus Bakker", "f", "s"), person("s", "Saar Vis", "f"),
    ]
)  # fmt: skip
LIKELY = [  # words, who tells, whom they are likely to mean
    ("before Grandad died", "", {"grandad": ("j", "k")}),
    ("before Grandad died", "r", {"grandad": ("j",)}),
    ("when Granny was six", "", {"granny": ("o", "s")}),
    ("toen vader zes was", "", {"vader": ("p", "k")}),
    ("my cousin's wedding", "", {}),
    ("before my grandfather died", "r", {"grandfather": ("j",), "my grandfather": ("j",)}),
    ("before Nan died", "w", {"nan": ("o", "s")}),
    ("when Aunt Ida died", "", {}),
    ("kui Juhan suri", "", {}),
]


@every_row(("words", "teller", "likely"), LIKELY)
def test_who_may_be_meant_where_no_tree_says_it(words: str, teller: str, likely: dict[str, tuple[str, ...]]) -> None:
    assert kin_likely(words, CALLED, teller, frozenset()) == likely


def test_kin_of_the_teller_by_name_is_surely_meant() -> None:
    assert kin_told("when Granny was six", CALLED, "r") == {"granny": ("o",)}
    assert kin_likely("when Granny was six", CALLED, "r", {"granny"}) == {}
