"""What is worked out of the demo family, whose pictures without a usable date were gone through by hand.

The table is a judgement of our own, no outside source: what follows from the people shown, the thing, and what is
written on it, and no more.
"""

from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.people.who_is_meant import known_by
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.people.evidence import evidence, evidence_at_once, to_ask_next

BY_HAND = {
    # a clipped note on paper, which nobody has dated
    "TRA-0004": "",
    # Haapsalu is written on it, a name of after 1918; “14 VII 29” asks whether 1929 is meant, and no other year is left
    "TRA-0008": "1929-07-14",
    # “7/4/75” asks which is the month: it is one of two days
    "TRA-0020": "[1975-04-07..1975-07-04]",
    # Aino alone, 1920 to 1998; “the thirties” asks which century, and she leaves one
    "TRA-0021": "[1930..1939]",
    # “during the Great War”, of which each country has its own years
    "TRA-0022": "[1914..1918]",
    # the same, and “before 1933”
    "TRA-0023": "[1873..1932]",
    # an album page with nothing left on it
    "TRA-0025": "",
}


def test_the_pictures_without_a_date(demo: Path) -> None:
    with open_collection(demo, write=False) as collection:
        found = evidence(collection)
        worked = {number: found.of_item(find_item(collection, number).id).edtf for number in BY_HAND}
    assert worked == BY_HAND


def test_of_many_items_what_follows_is_not_worked_out_for_one(demo: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with open_collection(demo, write=False) as collection:
        found = evidence_at_once(collection)
        monkeypatch.setattr("boxlore.tasks.people.evidence.MOST_AT_ONCE", 3)
        assert found is not None and evidence_at_once(collection) is None


def test_the_wedding_that_two_tell_differently_is_the_one_contradiction(demo: Path) -> None:
    with open_collection(demo, write=False) as collection:
        found = evidence(collection)
    (circle,) = found.worked.circles
    assert {claim.source for claim in circle.claims} == {"written on the back", "Leida Rourke"}
    assert [claim.source for claim in circle.set_aside] == ["Leida Rourke"]  # hers is a guess


def test_what_to_ask_leida_and_that_it_tells_her_nothing(demo: Path) -> None:
    with open_collection(demo, write=False) as collection:
        found = evidence(collection)
        (leida,) = known_by(found.people.values(), "Leida Rourke")
        questions = to_ask_next(collection, found, "Leida Rourke", 600)
        assert "When was this" not in " ".join(question.words for question in questions), "she has dated what is hers"
        asked = {question.number: question.kind for question in to_ask_next(collection, found, "Liisi Kuusk", 600)}
        assert asked == {"TRA-0015": "date", "TRA-0021": "date", "TRA-0023": "age"}
        assert found.of_birth(leida.id).display == "1941 May 17" and found.of_death(leida.id).last is None
        assert len(to_ask_next(collection, found, "Liisi Kuusk", 2)) == 1
        with pytest.raises(WrongUse, match="Nobody among the people"):
            to_ask_next(collection, found, "Nobody Atall", 30)
