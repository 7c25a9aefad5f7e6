"""Which names a told one may be guessed to be, before the much longer search for them (our rule)."""

import pytest
from tests.every_row import every_row

from boxlore.gazetteer.guessing import guessed, large_names, may_be_guessed
from boxlore.gazetteer.lookup import Gazetteer, open_gazetteer
from boxlore.gazetteer.matching import NO_FAMILY

SPELLINGS = [
    ("Kimberly", "kimberley", True),
    ("Kimberly", "gimberley", False),  # the first letter is right
    ("Kimberly", "kimbolton", False),
    ("Palmerstom Nort", "palmerston north", True),  # two slips of a long name
    ("Narwas", "narvva", False),  # and one of a short one
    ("Tartusse", "tartu", True),  # a form
    ("Bielsko", "bielsko biala", True),
    ("Burton on T.", "burton upon trent", True),
    ("Burton", "burtonport", False),
]


@every_row(("told", "spelling", "may_be"), SPELLINGS)
def test_which_names_may_be_guessed(told: str, spelling: str, may_be: bool) -> None:
    assert may_be_guessed(told, ["aaa", spelling, "zzz"]) is may_be


@pytest.fixture(scope="module")
def gazetteer() -> Gazetteer:
    return open_gazetteer()


def test_whatever_is_guessed_may_be(gazetteer: Gazetteer) -> None:
    db = gazetteer._db
    for told in ("Kimberly", "Dunedn", "Tartus", "Bielsko", "Palmerstom Nort", "Burton on T.", "Viljandis"):
        places = guessed(db, [told], (), None, NO_FAMILY)
        assert places, told
        for place in places[:5]:
            rows = db.execute("SELECT folded FROM name WHERE place = ? ORDER BY folded", (place.id,))
            assert may_be_guessed(told, [folded for (folded,) in rows]), (told, place.name)


def test_large_names_are_those_of_large_towns_at_home(gazetteer: Gazetteer) -> None:
    names = large_names(gazetteer._db, frozenset({"EE", "LV"}))
    assert names == sorted(names) and {"tartu", "dorpat", "riga"} <= set(names)
    assert not {"haapsalu", "helsinki"} & set(names)  # a small one, one abroad


def test_a_direction_is_no_slip_of_another(gazetteer: Gazetteer) -> None:
    """Palmerston South and Palmerston North are two (GeoNames has the second)."""
    assert gazetteer.read("Palmerston Nrth").kind == "perhaps"
    read = gazetteer.read("Palmerston South", home=frozenset({"NZ"}))
    assert read.kind == "check" and [place.geonames for place in read.choices][:1] == [6215161]
