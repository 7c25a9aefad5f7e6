"""Somebody living who is told by kin alone, beside the name of somebody dead (a rule of our own).

The words of other languages are from memory.
"""

from tests.every_row import every_row

from boxlore.core.people.names_in_text.finder import name_finder
from boxlore.core.people.names_in_text.hits import Doubt
from boxlore.core.people.person import Person


def person(ident: str, given: str, family: str, sex: str, *parents: str, spouses: tuple[str, ...] = ()) -> Person:
    return Person(
        id=ident, name=f"{given} {family}", sort_name=f"{family}, {given}", forms=(f"{given} {family}",),
        calls=(given,), surnames=(family,), sex=sex, parents=parents, spouses=spouses,
    )  # fmt: skip


OLD = (
    person("arvo", "Arvo", "Tamm", "male"),
    person("helmi", "Helmi", "Tamm", "female", spouses=("arvo",)),
    person("mart", "Mart", "Tamm", "male", "arvo", "helmi", spouses=("pille",)),
    person("kolya", "Николай", "Морозов", "male"),
    person("jadwiga", "Jadwiga", "Brzozowska", "female"),
    person("both", "Bertha", "Muir", "female"),
)
LIVING = (
    person("leida", "Leida", "Rourke", "female", "arvo", "helmi"),
    person("pille", "Pille", "Kask", "female"),
    person("oskar", "Oskar", "Lind", "male", "mart"),
    person("zhenya", "Евгения", "Лебедева", "female", "kolya"),
    person("wojtek", "Wojciech", "Nowak", "", "jadwiga"),
    person("ewan", "Ewan", "Muir", "male", "both"),
    person("ian", "Ian", "Muir", "male", "both"),
)
FINDER = name_finder((*OLD, *LIVING), frozenset(one.id for one in LIVING))

POINTED = (
    ("leida", "The daughter of Arvo Tamm broke her arm."),
    ("leida", "Arvo Tamm's only daughter holds the rope"),
    ("leida", "Helmi’s girl, born 1941"),
    ("leida", "Helmi Tamm with her youngest"),
    ("leida", "Arvo Tamme tütar paadis"),
    ("leida", "Mart Tamm and his sister at the fair"),
    ("leida", "Oskari tädi; Mart Tamm with his sisters."),
    ("pille", "Mart Tamm with his wife"),
    ("pille", "Mart Tamm’s widow lives there still."),
    ("oskar", "Mart’s boy in the water"),
    ("oskar", "the grandson of Helmi Tamm"),
    ("zhenya", "Дочь Николая Морозова держит флаг."),
    ("wojtek", "Syn Jadwigi Brzozowskiej trzyma wiosło."),
    ("wojtek", "Jadwiga Brzozowska's child"),
)
NOBODY = (
    "Arvo Tamm with oxen",
    "Arvo Tamm and a boy",
    "Arvo Tamm. The daughter came later.",
    "The daughter: Arvo Tamm",
    "A girl before Helmi Tamm",
    "The son of Bertha Muir",
    "The brother of Bertha Muir",
    "Arvo Tamm and Bertha's daughter",
    "the daughter of the miller, of the town, of Arvo",
    "Arvo Tamm the grandfather of many",
    "her uncle",
)


@every_row(("who", "words"), POINTED)
def test_a_word_of_kin_that_points_to_one_living_person_is_a_question(who: str, words: str) -> None:
    hits = [hit for hit in FINDER.hits(words) if hit.doubt is Doubt.KIN]
    assert {ident for hit in hits for ident in hit.people} == {who}
    assert all(words[hit.start : hit.end].strip() == words[hit.start : hit.end] for hit in hits)


@every_row("words", NOBODY)
def test_where_nobody_or_several_are_meant_nothing_is_asked(words: str) -> None:
    assert not FINDER.hits(words)


def test_somebody_who_is_named_besides_is_not_asked_about_twice() -> None:
    assert [hit.doubt for hit in FINDER.hits("Arvo Tamm’s daughter Leida Rourke")] == [Doubt.NONE]


TWO_CAPITALS = (
    (True, "ML at the window, 1959"),
    (True, "MLP at the window"),
    (True, "ML"),
    (False, "TV at the window"),
    (False, "ML".lower()),
    (False, "AT THE WINDOW"),
)


@every_row(("is_asked", "words"), TWO_CAPITALS)
def test_two_capitals_that_are_somebodys_initials_are_a_question(is_asked: bool, words: str) -> None:
    people = (person("ml", "Maarja-Liis", "Pihlak", "female"), person("tv", "Tom", "Vale", "male"))
    hits = name_finder(people, frozenset(("ml", "tv"))).hits(words)
    assert [hit.doubt for hit in hits] == [Doubt.INITIALS] * is_asked
