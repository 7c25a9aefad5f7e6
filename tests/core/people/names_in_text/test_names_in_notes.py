"""Names that may stand in what is told beside a name (a rule of our own; the names are invented)."""

from tests.every_row import every_row

from boxlore.core.people.names_in_text.names_in_notes import in_brackets, names_in_note

PLACES = frozenset(("reval", "port chalmers"))
NAMES = (
    ("Louisa Garrod", "Louisa Garrod"),
    ("who is Louisa Garrod", "Louisa Garrod"),
    ("i.e. Louisa Garrod", "Louisa Garrod"),
    ("Garrod", "Garrod"),
    ("née Voss", "Voss"),
    ("Ted Cray?", "Ted Cray"),
    ("our Louisa, Bill Garrod's wife", "Louisa; Bill Garrod, another’s"),
    ("with Nora Voss", "Nora Voss, another’s"),
    ("Mama of Peter Cole", "Peter Cole, another’s"),
    ("son of Tohver", "Tohver, another’s"),
    ("Pieter de Wit", "Pieter de Wit"),
    ("Anna von", "Anna"),
    ("Anna de, Tom", "Anna; Tom, another’s"),
    ("Captain Brown", "Captain Brown"),
    ("Batsman Brown", "Batsman Brown"),
    ("Our Louisa", "Louisa"),
    ("Aunt Lou", "Lou"),
    ("from Florence", "Florence"),
    ("May", "May"),
    ("Анна Тамм", "Анна Тамм"),
    ("林美華", "林美華"),
    ("from Tartu", ""),
    ("of Tartu", ""),
    ("in Florence", ""),
    ("Reval 1926", ""),
    ("Port Chalmers", ""),
    ("May 1926", ""),
    ("the baker", ""),
    ("The baker", ""),
    ("She was the vicar's daughter", ""),
    ("Aunt", ""),
    ("Jo O", "Jo O"),
    ("Jo", ""),
    ("", ""),
)


@every_row(("note", "names"), NAMES)
def test_names_in_a_note(note: str, names: str) -> None:
    found = names_in_note(note, PLACES)
    assert "; ".join(f"{name.words}{', another’s' if name.is_anothers else ''}" for name in found) == names


def test_what_stands_in_brackets() -> None:
    assert in_brackets("Lou (Louisa Garrod) [the baker]") == ["Louisa Garrod", "the baker"]
