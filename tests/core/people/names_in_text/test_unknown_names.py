"""Names that were made nobody, sought in other words: held or not (a rule of our own; the names are invented)."""

from tests.every_row import every_row

from boxlore.core.people.names_in_text.unknown_names import UnknownNames
from boxlore.core.people.person import Person

HELD = (
    ("Tamsin Quill", "Tamsin Quill took this of the shed"),
    ("Tamsin Quill", "tamsin_quill.jpg"),
    ("Tamsin Quill", "#TamsinQuill"),
    ("Tamsin Quill", "QUILL, TAMSIN"),
    ("Tamsin Quill", "T. Quill at the shed"),
    ("Tamsin Quill", "Then Tamsin came."),
    ("Tamsin Quill", "then tamsin came"),
    ("Tamsin Quill", "We rowed with Quill that day."),
    ("Tamsin Quill", "Mrs Quill at the gate"),
    ("Tamsin van der Quill", "tamsin quill"),
    ("Tamsin King", "Tamsin at the shed"),
    ("Captain Tamsin Quill", "Then Tamsin came."),
    ("Batsman Brown", "Batsman Brown hit a six"),
    ("Batsman Brown", "the team with batsman brown"),
    ("Batsman Brown", "BATSMAN BROWN"),
    ("Rose Hope", "rose hope at the gate"),
    ("Rose Hope", "Then Hope Rose came."),
    ("Rose Hope", "Then we saw Rose."),
    ("Earl Brown", "Then Earl came."),
    ("Dean King", "This is Dean King."),
    ("Mrs Tohver", "tea with mrs tohver"),
    ("Port Chalmers School", "before the port chalmers school"),
    ("Young Swimmers", "The Young Swimmers of 1990"),
    ("Xanthe Pell", "Then pell came."),
)

FREE = (
    ("Tamsin Quill", "Quill pens were still used."),
    ("Tamsin Quill", "a quill pen"),
    ("Tamsin Quill", "#quillpen"),
    ("Tamsin Quill", "Elsie Quill"),
    ("Tamsin Quill", "QUILL PENS"),
    ("Batsman Brown", "The batsman was brown."),
    ("Batsman Brown", "Brown horses in the field"),
    ("Batsman Brown", "The old brown mill. Brown bread"),
    ("Batsman Brown", "In the mill: Brown bread"),
    ("Rose Hope", "They hope the roses rose"),
    ("Rose Hope", "Rose water in a jar"),
    ("Port Chalmers School", "The quay at Port Chalmers"),
    ("Young Boys", "young boys came"),
    ("two boys", "two boys came"),
    ("Tohver", "Tohver"),
    ("Mrs Tohver", "Tohver rows"),
)


@every_row(("told", "words"), HELD)
def test_a_name_of_nobody_known_is_found_in_the_shapes_names_have(told: str, words: str) -> None:
    assert UnknownNames((), (told,)).places_in(words)


@every_row(("told", "words"), FREE)
def test_english_words_are_no_names_where_they_are_not_written_as_such(told: str, words: str) -> None:
    assert not UnknownNames((), (told,)).places_in(words)


LIVING = (
    ("Dr Raghavendra", "Ask Raghavendra about it", True),
    ("Dr Raghavendra", "then dr raghavendra came", True),
    ("Auntie Bev", "That is Bev's cat", True),
    ("pani Kruk", "Moja sąsiadka, pani Kruk, ma album", True),
    ("тётя Глаша", "у тёти Глаши", True),
    ("Lettice Quarrell", "our neighbour Lettice Quarrell", True),
    ("Mrs Green", "Mrs Green next door", True),
    ("Mrs Green", "Green paint on the door", False),
)


@every_row(("told", "words", "is_held"), LIVING)
def test_somebody_living_is_sought_without_the_title(told: str, words: str, is_held: bool) -> None:
    assert bool(UnknownNames((), (), (told,)).places_in(words)) is is_held


def test_the_full_name_of_somebody_known_is_nobody_else() -> None:
    known = Person(
        id="1", name="Jan Pell", sort_name="Pell, Jan", forms=("Jan Pell",), calls=("Jan",), surnames=("Pell",)
    )
    assert not UnknownNames((known,), ("Xanthe Pell",)).places_in("Jan Pell rows")
    assert not UnknownNames((), ("", "two boys"))
