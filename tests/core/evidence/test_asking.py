"""What to ask next: what an answer settles is held against an answer that is given; the order is a rule of our own."""

from tests.core.evidence.family import item, person, row, shown, told, worked_out

from boxlore.core.evidence.asking import what_to_ask
from boxlore.core.evidence.claims import Claim, not_after, not_before, of_item
from boxlore.core.records.item_record import Record, Related

LEIDA_BORN = [row("Leida", "born", "17 May 1941")]
PEOPLE = [person("Leida"), person("Con"), person("Mari", died="1933")]


def asked(records: list[Record], minutes: int = 400) -> list[str]:
    worked = worked_out(records, PEOPLE, [*LEIDA_BORN, row("Mari", "died", "1933")])
    return [question.number for question in what_to_ask(records, worked, "Leida", {"Leida": 0, "Con": 2}, minutes)]


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
        item("e", told("date", "between 1950 and 1953"), people=[shown("Leida")]),
        item("f", told("date", "between 1950 and 1952"), people=[shown("Con")]),
    ]  # fmt: skip
    assert asked(records, minutes=8) in (["B", "A"], ["C", "A"], ["B", "C"])
    assert asked(records)[:2] == ["E", "F"] and asked(records)[-1] == "A"
    assert len(asked(records, minutes=1)) == 1


def test_what_an_answer_settles_is_what_it_takes() -> None:
    records = [
        item("a", told("date", "between 1950 and 1960"), related=(Related(kind="same_day", number="B"),)),
        item("b"),
    ]
    worked = worked_out(records)
    question = what_to_ask(records, worked, "Leida", {}, 60)[0]
    before = sum(_width(worked.bounds(of_item(name))) for name in "ab")
    middle = sum(number or 0 for number in worked.bounds(of_item("a"))) // 2
    limits = (not_before(of_item("a"), middle - 183), not_after(of_item("a"), middle + 183))
    worked.add(Claim(words="that year", source="Leida", limits=limits))
    after = sum(_width(worked.bounds(of_item(name))) for name in "ab")
    assert abs(question.settles - (before - after) / 366) < 0.02


def test_an_open_end_counts_for_a_hundred_years_and_a_beginning_alone_is_asked_from() -> None:
    records = [item("a"), item("b", told("date", "after 1950")), item("c", told("date", "before 1990"))]
    worked = worked_out(records)
    assert all(0 < question.settles <= 200 for question in what_to_ask(records, worked, "Leida", {}, 60))


def _width(bounds: tuple[int | None, int | None]) -> int:
    first, last = bounds
    assert first is not None and last is not None
    return last - first
