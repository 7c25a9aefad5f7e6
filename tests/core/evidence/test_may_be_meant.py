"""Who is taken to be meant by a name that still asks: a rule of our own, no source."""

from dataclasses import replace

from tests.core.evidence.family import item, person, shown, told

from boxlore.core.evidence.may_be_meant import with_who_may_be_meant
from boxlore.core.people.who_is_meant import by_name
from boxlore.core.records.item_record import PersonShown
from boxlore.core.statements import Sure

EDITH = replace(person("Edith Wall"), calls=("Edith",))
TWO = [replace(person(name), calls=("John",)) for name in ("John Kell", "John Orr")]
NAMES = by_name([EDITH, *TWO])


def _asking(name: str, words: str = "") -> PersonShown:
    view = replace(told("person", words or name), asks=True)
    return PersonShown(told=view, name=name)


def _meant(*people: PersonShown) -> list[str]:
    return [each.person for each in with_who_may_be_meant(item("i", people=people), NAMES).people]


def test_the_only_one_of_the_name_is_likely_to_be_meant() -> None:
    record = with_who_may_be_meant(item("i", people=[_asking("Edith", "Edith (in white)")]), NAMES)
    (edith,) = record.people
    assert (edith.person, edith.name, edith.sure) == ("Edith Wall", "Edith Wall", Sure.LIKELY)


def test_nobody_is_where_it_is_not_clear() -> None:
    assert _meant(_asking("John")) == [""]
    assert _meant(_asking("Rex")) == [""]
    assert _meant(_asking("Edith", "Edith (their, as a baby)")) == [""]
    assert _meant(_asking("Edith", "Edith (Bert's)")) == [""]
    assert _meant(shown("Edith Wall"), _asking("Edith")) == ["Edith Wall", ""]
    assert _meant(replace(_asking("Edith"), in_question=True)) == [""]
    assert _meant(replace(_asking("Edith"), role="photographer")) == [""]


def test_a_record_in_which_nobody_asks_is_as_it_was() -> None:
    record = item("i", people=[shown("Edith Wall")])
    assert with_who_may_be_meant(record, NAMES) is record
