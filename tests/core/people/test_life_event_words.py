"""Kinds and shorter names of events (our own rules)."""

from tests.every_row import every_row

from boxlore.core.people.life_event_words import as_clause, bare, is_inflected, kind_of, shorter

NAMES = [  # name, kind, the words that mean it, what says less
    ("the wedding of Anna and Joe", "marriage", "wedding of anna and joe", ("wedding",)),
    ("when we moved to Dunedin", "move", "we moved to dunedin", ("we moved",)),
    ("Anna’s christening", "other", "anna’s christening", ("christening",)),
    ("pulmad", "marriage", "pulmad", ()),
    ("Umzug nach Reval", "move", "umzug nach reval", ("umzug",)),
    ("The Crossing", "voyage", "crossing", ()),
    ("to Dunedin", "other", "to dunedin", ()),
    ("Joe's war", "war service", "joe's war", ("war",)),
]


@every_row(("name", "kind", "words", "less"), NAMES)
def test_what_a_name_says(name: str, kind: str, words: str, less: tuple[str, ...]) -> None:
    assert (kind_of(name), bare(name), shorter(name)) == (kind, words, less)


CLAUSES = [  # name, what English says with the verb
    ("the shop opening", ("shop opened", "shop was opened", "shop were opened")),
    ("the opening of the shop", ("shop opened", "shop was opened", "shop were opened")),
    ("the shop’s closing", ("shop closed", "shop was closed", "shop were closed")),
    ("the sinking of our Rotorua", ("rotorua sank", "rotorua sinked")),
    ("the mill burning", ("mill burned", "mill burnt")),
    ("the opening", ()),
    ("the bell ring", ()),
    ("the bell king", ()),
    ("the wedding of Anna", ("anna wedded",)),
    ("", ()),
]


@every_row(("name", "clauses"), CLAUSES)
def test_a_noun_in_ing_as_a_clause(name: str, clauses: tuple[str, ...]) -> None:
    told = set(as_clause(name))
    assert told >= set(clauses) and bool(told) == bool(clauses)


CASES = [  # a word, a name, whether the word may be the name in another case (Estonian genitive)
    ("ruthi", "ruth", True),
    ("ruth", "ruth", False),
    ("stone", "ruth", False),
]


@every_row(("word", "name", "wanted"), CASES)
def test_a_name_in_another_case(word: str, name: str, wanted: bool) -> None:
    assert is_inflected(word, name) is wanted
