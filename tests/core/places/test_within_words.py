"""Names within words about a place (our rule; examples invented)."""

from tests.every_row import every_row

from boxlore.core.places.within_words import Within, is_joined, names_within, pieces_of

RUNS = [
    ("behind the pub at Waihola", [("behind the pub at", "Waihola", "")]),
    ("Pärnu rannas", [("", "Pärnu", "rannas")]),
    ("the Stratford on Avon boats", [("the", "Stratford on Avon", "boats")]),
    ("we Lwowie przy ulicy Długiej", [("we Lwowie przy ulicy", "Długiej", ""), ("we", "Lwowie", "przy ulicy Długiej")]),
    ("camp at “Étaples”", [("camp at", "Étaples", "")]),
    ("haymaking at Aunt Edie's", []),
    ("haymaking at Aunt Edieʼs", []),
    ("haymaking at AUNT EDIE'S", []),
    ("Aunt Edie's of Milton barn", [("Aunt Edie's of", "Milton", "barn")]),
    ("Port Chalmers", []),
    ("Halle a. S.", []),
    ("the old homestead", []),
    ("上海", []),
]


@every_row(("words", "runs"), RUNS)
def test_names_within_words(words: str, runs: list[tuple[str, str, str]]) -> None:
    assert names_within(words) == tuple(Within(*run) for run in runs)


PIECES = [
    (("am", "Strand von Hapsal", ""), [("am Strand von", "Hapsal", ""), ("am", "Strand", "von Hapsal")]),
    (("", "Tallinnas Raekoja", "platsil"), [("", "Tallinnas", "Raekoja platsil")]),
    (("in", "Reval", ""), []),
]


@every_row(("run", "pieces"), PIECES)
def test_pieces_of_a_name(run: tuple[str, str, str], pieces: list[tuple[str, str, str]]) -> None:
    assert pieces_of(Within(*run)) == tuple(Within(*piece) for piece in pieces)


def test_words_beside_a_name() -> None:
    assert Within("picnic at the", "Milton", "races").words == "picnic races"
    assert Within("in", "Wien", "").words == ""
    assert is_joined("Frankfurt am Main") and not is_joined("Port Chalmers")
