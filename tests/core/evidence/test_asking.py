"""What to ask next: what an answer settles is held against an answer that is given; the order is a rule of our own."""

from collections.abc import Sequence
from dataclasses import replace

from tests.core.evidence.family import LEIDA, item, person, row, shown, told, worked_out

from boxlore.core.dates import phrases
from boxlore.core.evidence.asking import Family, Question, Teller, what_to_ask
from boxlore.core.evidence.claims import Claim, not_after, not_before, of_item
from boxlore.core.evidence.even_years import YEAR
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record, Related
from boxlore.core.statements import Said, Source, Sure
from boxlore.core.wording.catalogue import LANGUAGES, say_in

LEIDA_BORN = [row("Leida", "born", "17 May 1941")]
PEOPLE = [person("Leida"), person("Con"), person("Mari", died="1933")]


def questions(
    records: list[Record], minutes: int = 400, *, people: Sequence[Person] = PEOPLE, rows: Sequence[object] = (),
    happened: Sequence[FamilyEvent] = (), language: str = "en",
) -> list[Question]:  # fmt: skip
    worked = worked_out(records, people, [*LEIDA_BORN, *rows], happened)  # type: ignore[list-item]  # rows of people
    kin = {"Leida": 0, "Con": 2, "Liisi": 1, "Arvo": 1, "Ants": 1}
    teller = Teller(id="Leida", name="Leida Rourke", kin=kin)
    named = {each.id for each in people if each.audience == "anyone"}
    family = Family(people=Registry(people), may_be_named=named, happened=happened, say=say_in(language))
    return what_to_ask(records, worked, teller, family, minutes)


def asked(records: list[Record], minutes: int = 400) -> list[str]:
    return [
        question.number
        for question in questions(records, minutes, rows=[row("Mari", "died", "1933")])
        if question.number
    ]


def test_who_can_answer_for_what() -> None:
    records = [
        item("hers", people=[shown("Leida")]),
        item("kin", people=[shown("Con")]),
        item("nobody"),
        item("strangers", people=[shown("Mari")]),
        item("before", told("date", "before 1930")),
        item("herself", told("date", "before 1943"), people=[shown("Leida")]),
        item("dated", told("date", "1960")),
        item("later", told("date", "after 1950")),
        item("paper", kind="letter"),
    ]
    assert set(asked(records)) == {"HERS", "KIN", "NOBODY", "HERSELF", "LATER"}


def test_what_settles_most_is_chosen_the_easy_first_and_the_sad_last() -> None:
    same_day = tuple(Related(kind="same_day", number=number) for number in ("B", "C"))
    records = [
        item("a", told("date", "between 1950 and 1960"), told("care", "the crash"), related=same_day),
        item("b"), item("c"),
        item("d", told("date", "between 1950 and 1955")),
        item("e", told("date", "between 1950 and 1953"), people=[shown("Con")]),
        item("f", told("date", "between 1950 and 1952"), people=[shown("Con")]),
    ]  # fmt: skip
    assert asked(records, minutes=8) in (["B", "A"], ["C", "A"], ["B", "C"])
    assert asked(records)[:2] == ["E", "F"] and asked(records)[-1] == "A"
    assert len(asked(records, minutes=1)) == 1
    many = [item(f"n{number}", told("date", "between 1950 and 1960")) for number in range(70)]
    assert len(asked(many)) == 70


def test_what_an_answer_settles_is_what_it_takes() -> None:
    records = [
        item("a", told("date", "between 1950 and 1960"), related=(Related(kind="same_day", number="B"),)),
        item("b"),
    ]
    worked = worked_out(records)
    question = what_to_ask(records, worked, Teller(id="Leida", kin={}), Family(people=Registry(())), 60)[0]
    before = sum(_width(worked.bounds(of_item(name))) for name in "ab")
    middle = sum(number or 0 for number in worked.bounds(of_item("a"))) // 2
    limits = (not_before(of_item("a"), middle - 183), not_after(of_item("a"), middle + 183))
    worked.add(Claim(words="that year", source="Leida", limits=limits))
    after = sum(_width(worked.bounds(of_item(name))) for name in "ab")
    assert abs(question.settles - 0.4 * (before - after) / YEAR) < 0.02  # so often is a year known


def test_an_open_end_counts_for_a_hundred_years_and_a_beginning_alone_is_asked_from() -> None:
    records = [item("a"), item("b", told("date", "after 1950")), item("c", told("date", "before 1990"))]
    assert all(0 < question.settles <= 200 for question in questions(records))


NO_DATE = phrases.read("no date")
LIISI = replace(person("Liisi", married=("1939",)), spouses=("Arvo",), parents=("Mari",), born=phrases.read("1918"))
ARVO = replace(person("Arvo", died="1944", married=("1939",)), spouses=("Liisi",))
ANTS = replace(person("Ants"), parents=("Liisi", "Arvo"), born=phrases.read("1950"))
LIVES = [row("Liisi", "born", "1918"), row("Arvo", "died", "1944"), row("Ants", "born", "1950")]
SINCE_41 = told("date", "between 1942 and 1960")


def about(
    *records: Record, people: Sequence[Person] = (LIISI, ARVO, ANTS), happened: Sequence[FamilyEvent] = ()
) -> dict[str, str]:
    """Of each picture what is asked, and of what is no picture by its kind."""
    told_of = {somebody.id for somebody in people if somebody.born or somebody.died}
    rows = [row for row in LIVES if row.person in told_of]
    found = questions(list(records), people=[person("Leida"), *people], rows=rows, happened=happened)
    return {question.number or question.kind: question.words for question in found}


def test_a_specific_question_goes_before_the_question_when() -> None:
    wide = told("date", "between 1930 and 1948")
    married = item("m", wide, people=[shown("Liisi")])
    living = replace(ARVO, died=None)
    assert about(married, people=[LIISI, living, ANTS])["M"] == "Was Liisi married when this was taken?"
    after = item("w", told("date", "three years after Liisi married", value=NO_DATE), wide, people=[shown("Liisi")])
    wed = [replace(LIISI, married=(phrases.read("between 1930 and 1945"),)), replace(living, married=())]
    assert "married" not in about(after, people=wed)["W"]
    nobody = item("u", SINCE_41, people=[shown("Liisi"), shown("Ants"), shown("Arvo")])
    assert about(nobody, people=[replace(LIISI, born=None), living, ANTS])["U"].startswith("How old does Ants")
    beside = item("b", SINCE_41, people=[shown("Liisi")])
    assert about(beside)["B"] in ("Was Ants born yet when this was taken?", "How old does Liisi look here, about?")
    alone = [replace(LIISI, married=(), spouses=()), ANTS]
    assert about(beside, people=alone)["B"] == "Was Ants born yet when this was taken?"
    assert "Ants" not in about(beside, people=[LIISI, ARVO, replace(ANTS, audience="family")])["B"]
    late = item("l", SINCE_41, people=[shown("Ants"), shown("Leida")])
    assert about(late, people=[replace(ANTS, parents=("Arvo",)), ARVO])["L"] != ""
    both = item("t", SINCE_41, people=[shown("Ants"), shown("Liisi")])
    assert "Ants born" not in about(both)["T"]


def test_a_question_of_a_death_is_a_sad_one_and_the_last() -> None:
    found = questions(
        [item("a", told("date", "between 1942 and 1947"), people=[shown("Liisi")]), item("b", SINCE_41)],
        people=[person("Leida"), replace(LIISI, born=None, married=()), replace(ARVO, married=())], rows=LIVES[1:2],
    )  # fmt: skip
    assert found[-1].words == "Was Arvo still alive when this was taken?" and found[-1].is_sad
    three = [item(ident, told("date", "between 1942 and 1947"), people=[shown("Liisi")]) for ident in "abc"]
    people = [person("Leida"), replace(LIISI, born=None, married=()), replace(ARVO, married=())]
    asked = [each.words for each in questions(three, people=people, rows=LIVES[1:2])]
    assert asked.count("Was Arvo still alive when this was taken?") == 1 and len(asked) > 2


def test_an_event_is_named_only_where_she_or_the_keeper_told_of_it() -> None:
    move = FamilyEvent(
        id="m",
        kind="move",
        names=("the move to Elm Row",),
        when=phrases.read("1950"),
        words="1950",
        said="Leida Rourke",
    )
    record = item("a", SINCE_41)
    assert about(record, happened=[move])["A"] == "Is this before or after the move to Elm Row?"
    assert about(record, happened=[replace(move, said="Con Rourke")])["A"].startswith("When was this taken")
    answered = item("a", SINCE_41, told("story", "It was before the move to Elm Row", source=LEIDA))
    assert about(answered, happened=[move])["A"].startswith("When was this taken")
    by_another = item("a", SINCE_41, told("story", "It was at the time of the move to Elm Row"))
    assert about(by_another, happened=[move])["A"] == "Is this before or after the move to Elm Row?"
    undated = replace(move, when=None, words="")
    leaning = item("b", told("date", "before the move to Elm Row", value=phrases.read("no date")))
    after = told("date", "after the move to Elm Row", value=phrases.read("no date"))
    early = item("c", after, told("date", "between 1955 and 1960"))
    assert about(leaning, early, happened=[undated])["event"] == "When was the move to Elm Row?"
    assert "event" not in about(leaning, early, happened=[replace(undated, said="Con Rourke")])
    far = replace(move, when=phrases.read("1990"), words="1990")
    assert about(record, happened=[far])["A"].startswith("When was this taken")


def test_a_birth_that_nobody_told_is_asked_of_her_kin() -> None:
    records = [item("a", SINCE_41, told("story", "Ants, aged five"), people=[shown("Ants")])]
    assert about(*records, people=[replace(ANTS, born=None)])["birth"] == "When was Ants born?"


def test_what_she_did_not_know_is_not_asked_again_nor_when_it_was_that_she_has_dated() -> None:
    hers = Source(Said.NARRATOR, "Leida")
    not_known = replace(item("n"), asked=(told("date", "", source=hers, sure=Sure.NOT_KNOWN),))
    others = replace(
        item("o"), asked=(told("date", "", source=LEIDA, sure=Sure.NOT_KNOWN), told("place", "", source=hers))
    )
    dated = item("d", told("date", "between 1942 and 1960", source=hers), people=[shown("Liisi")])
    plain = item("p", told("date", "between 1942 and 1960", source=hers))
    found = about(not_known, others, dated, plain)
    assert set(found) == {"O", "D"} and not found["D"].startswith("When was this taken")


HERS = Source(Said.NARRATOR, "Leida")


def test_whoever_has_told_of_a_picture_is_asked_of_it_although_no_kin_of_hers_is_in_it() -> None:
    stranger = item("s", SINCE_41, people=[shown("Mari")])
    told_of = item("t", SINCE_41, told("story", "On the quay.", source=HERS), people=[shown("Mari")])
    named = item("n", SINCE_41, people=[shown("Mari", source=HERS)])
    found = {question.number: question.nearness for question in questions([stranger, told_of, named])}
    assert set(found) == {"T", "N"} and found["T"] < 99


def test_of_herself_she_is_asked_as_you_and_never_whether_she_was_born() -> None:
    leida = replace(person("Leida", married=("1963",)), spouses=("Con",), parents=("Liisi",))
    con = replace(person("Con", married=("1963",)), spouses=("Leida",))
    wide = told("date", "between 1955 and 1970")
    found = questions([item("a", wide, people=[shown("Leida")])], people=[leida, con])
    assert found[0].words in ("Were you married when this was taken?", "How old do you look here, about?")
    early = item("b", told("date", "between 1930 and 1960"), people=[shown("Liisi")])
    assert "Leida" not in about(early, people=[replace(LIISI, married=(), spouses=()), ARVO, leida])["B"]


def test_how_old_somebody_looks_is_not_asked_again_of_who_has_told_it() -> None:
    wide = told("date", "between 1955 and 1980")
    age = told("story", "Ants looks about ten", source=HERS)
    assert about(item("a", wide, people=[shown("Ants")]))["A"].startswith("How old does Ants")
    assert not about(item("a", wide, age, people=[shown("Ants")])).get("A", "").startswith("How old does Ants")


def test_of_what_cannot_all_be_so_she_is_asked_how_she_knows_what_she_told() -> None:
    hers, others = told("date", "1960", source=HERS), told("date", "1970", source=LEIDA)
    assert about(item("a", hers, others, disputed=True)) == {"A": "How do you know when this was taken?"}


def test_how_she_knows_a_date_is_asked_of_no_one_who_gave_none() -> None:
    disputed = item("a", told("date", "1960", source=LEIDA), told("date", "1970", source=LEIDA), disputed=True)
    age = told("story", "Ants was ten", source=HERS)
    assert not about(disputed).get("A", "").startswith("How do you know")
    found = about(item("b", told("date", "1990", source=LEIDA), age, people=[shown("Ants")]))
    assert not found.get("B", "").startswith("How do you know")


def test_a_death_is_asked_about_only_where_it_may_well_decide() -> None:
    """Within forty years, and nothing in doubt (common practice, no source)."""
    people = [person("Leida"), replace(LIISI, born=None, married=()), replace(ARVO, married=())]
    words = "Was Arvo still alive when this was taken?"
    for date, is_asked in (("between 1942 and 1947", True), ("between 1905 and 1970", False), ("after 1930", False)):
        record = item("a", told("date", date), people=[shown("Liisi")])
        asked = [each.words for each in questions([record], people=people, rows=LIVES[1:2])]
        assert (words in asked) is is_asked, date
    both = (told("date", "1941", source=LEIDA), told("date", "1949", source=LEIDA))
    disputed = item("a", *both, disputed=True, people=[shown("Liisi")])
    assert words not in [each.words for each in questions([disputed], people=people, rows=LIVES[1:2])]


def test_nobody_is_asked_whether_a_child_was_there_before_the_parents_wedding() -> None:
    wedding = FamilyEvent(
        id="w", kind="marriage", names=("wedding of Liisi and Arvo",), when=phrases.read("1955"), words="1955",
        said="Leida Rourke",
    )  # fmt: skip
    living = [replace(LIISI, married=()), replace(ARVO, died=None, married=())]
    child = item("a", SINCE_41, people=[shown("Ants")])
    alone = [replace(ANTS, parents=()), *living]
    asked = "Is this before or after the wedding of Liisi and Arvo?"
    unborn = [replace(each, born=None) for each in (ANTS, *living)]
    assert about(child, people=unborn, happened=[wedding])["A"] != asked
    assert about(child, people=[replace(each, born=None) for each in alone], happened=[wedding])["A"] == asked
    capital = replace(wedding, names=("Wedding of Liisi and Arvo",))
    assert about(child, people=[replace(each, born=None) for each in alone], happened=[capital])["A"] == asked
    of_tree = replace(wedding, people=("Liisi", "Arvo"), names=("Liisi was wed",))
    single = [replace(each, spouses=()) for each in unborn]
    assert not about(child, people=single, happened=[of_tree])["A"].startswith("Is this before")


def test_where_nothing_is_left_to_date_she_is_asked_who_is_there() -> None:
    settled = told("date", "1960")
    records = [
        item("a", settled), item("b", settled, people=[shown("Con")]), item("c", told("date", "1920")),
        item("d", settled, kind="letter"),
    ]  # fmt: skip
    born = [replace(each, born=phrases.read("1900")) for each in PEOPLE]
    assert [(asked.number, asked.words) for asked in questions(records, people=born)] == [
        ("A", "Who is in this picture?")
    ]


def test_of_a_picture_before_her_years_only_how_old_somebody_looks() -> None:
    early = item("e", told("date", "between 1918 and 1938"), people=[shown("Liisi")])
    assert about(early) == {"E": "How old does Liisi look here, about?"}
    no_birth = item("u", told("date", "between 1880 and 1890"), people=[shown("Liisi")])
    assert "U" not in about(no_birth, people=[replace(LIISI, born=None, married=(), spouses=())])


def _width(bounds: tuple[int | None, int | None]) -> int:
    first, last = bounds
    assert first is not None and last is not None
    return last - first


def test_they_are_asked_in_the_language_of_the_collection() -> None:
    """The words are ours; `tests/core/wording` holds that each has a translation."""
    records = [item("a"), item("h", people=[shown("Leida")]), item("l", people=[shown("Liisi")])]
    born = [row("Liisi", "born", "1918")]
    by_language = {
        language: {
            question.words for question in questions(records, people=[*PEOPLE, LIISI], rows=born, language=language)
        }
        for language in LANGUAGES
    }
    assert "When was this taken, and what was going on?" in by_language["en"]
    assert "Wann wurde das aufgenommen, und was geschah da gerade?" in by_language["de"]
    assert any("Liisi" in words for words in by_language["et"])
    for language in LANGUAGES[1:]:
        assert not by_language[language] & by_language["en"], language
