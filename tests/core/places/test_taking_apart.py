"""Told places taken apart (common practice, no source: how families and registers write places)."""

import pytest
from tests.every_row import every_row

from boxlore.core.places.taking_apart import (
    Parts,
    at_river,
    fold_place,
    is_district,
    part_of_town,
    parted_at_in,
    spaced,
    take_apart,
    with_directions,
    with_epithets,
    with_qualifier,
    without_district,
    without_way,
    written_out,
)

TOLD = [
    ("Port Chalmers, Otago", Parts(("Port Chalmers", "Otago"))),
    ("Reval, 1912", Parts(("Reval",))),
    ("probably Reval", Parts(("Reval",), unsure=True)),
    ("Reval?", Parts(("Reval",), unsure=True)),
    ("[Reval]", Parts(("Reval",), unsure=True)),
    ("Reval (now Tallinn)", Parts(("Reval",), ("Tallinn",))),
    ("Reval (now Tallinn), Estonia", Parts(("Reval", "Estonia"), ("Tallinn",))),
    ("Reval, now Tallinn", Parts(("Reval",), ("Tallinn",))),
    ("Reval / Tallinn", Parts(("Reval",), ("Tallinn",))),
    ("Reval / Tallinn, Estonia", Parts(("Reval", "Estonia"), ("Tallinn",))),
    ("Nõmme (Reval)", Parts(("Nõmme", "Reval"))),
    ("the farm near Reval", Parts(("Reval",), sublocation="the farm", near_km=15, near_words="near")),
    ("10 km south of Reval", Parts(("Reval",), near_km=10, near_words="10 km south of")),
    ("10 versts from Reval", Parts(("Reval",), near_km=10.67, near_words="10 versts from")),
    ("Re\u0000val", Parts(("Re val",))),
    ("", Parts(())),
    ("x" * 401, Parts(())),
]


@every_row(("text", "parts"), TOLD)
def test_taken_apart(text: str, parts: Parts) -> None:
    assert take_apart(text) == parts


WAYS = [
    ("up at Lake George", "at Lake George"),
    ("way down the Catlins", "the Catlins"),
    ("down Balclutha way", "Balclutha way"),
    ("Up Holland", "Up Holland"),
    ("up the hill", "up the hill"),
    ("Upper Hutt", "Upper Hutt"),
]


@every_row(("words", "rest"), WAYS)
def test_words_of_the_way_say_nothing_of_the_place(words: str, rest: str) -> None:
    assert without_way(words) == rest


SHORTENED = [
    ("Kaka Pt", ("Kaka Point", "Kaka Port")),
    ("Stewart Is., N.Z.", ("Stewart Island, N.Z.", "Stewart Islands, N.Z.")),
    ("Nth Head", ("North Head",)),
    ("Table Mt.", ("Table Mountain",)),
    ("Mt Cook", ()),
    ("Is", ()),
    ("the r. at home", ()),
]


@every_row(("words", "ways"), SHORTENED)
def test_shortened_words_are_written_out(words: str, ways: tuple[str, ...]) -> None:
    assert written_out(words) == ways


JOINED = [
    ("Szczecin-Dąbie", ("Dąbie", "Szczecin")),
    ("Kraków - Podgórze, Polska", ("Podgórze", "Kraków, Polska")),
    ("Narva-Jõesuus suvitamas", None),
    ("Stoke-on-Trent", None),
]


@every_row(("words", "parts"), JOINED)
def test_a_town_and_its_part(words: str, parts: tuple[str, str] | None) -> None:
    assert part_of_town(words) == parts


def test_a_blank_behind_the_dot_of_a_small_letter() -> None:
    assert spaced("Rothenburg o.d.T., N.Z.") == "Rothenburg o. d. T., N.Z."


def test_a_stroke_before_the_letter_of_a_river() -> None:
    rows = {
        "Frankfurt/O.": "Frankfurt a. O.", "Halle/S., Sachsen": "Halle a. S., Sachsen",
        "Neisse O/S": "Neisse O/S", "Bad Ems/Lahn": "Bad Ems/Lahn", "Otago/N.Z.": "Otago/N.Z.",
    }  # fmt: skip
    assert {told: at_river(told) for told in rows} == rows


def test_what_tells_a_town_from_others_behind_a_stroke() -> None:
    assert "Frankfurt (Oder), Mark" in with_epithets("Frankfurt/Oder, Mark")
    assert "Marburg an der Lahn" in with_epithets("Marburg/Lahn")
    assert with_epithets("Danzig / Gdańsk") == with_epithets("s/s Polonia") == with_epithets("Reval") == ()


def test_what_tells_a_german_town_from_others() -> None:
    assert with_qualifier("Schwerin i. M.") == ("Schwerin, Mecklenburg",)
    assert with_qualifier("Schwerin i.M., Schloßstraße") == ("Schwerin, Mecklenburg, Schloßstraße",)
    assert with_qualifier("Schwerin i. Xyz.") == with_qualifier("Schwerin") == with_qualifier("Frankfurt am Main") == ()
    assert "Landsberg an der Warthe" in with_qualifier("Landsberg a. W.")
    assert "Zell (Mosel)" in with_qualifier("Zell a.d. Mosel")
    assert with_qualifier("Rothenburg o. T.") == ("Rothenburg ob der Tauber",)


def test_the_stroke_of_a_ship_parts_no_names() -> None:
    assert take_apart("Hanko, s/s Arcturus").parts == ("Hanko", "s/s Arcturus")


def test_nearness_in_a_name() -> None:
    assert take_apart("Bernau bei Berlin", is_near=False) == Parts(("Bernau bei Berlin",))


FOLDED = [("Saint-Étienne", "st etienne"), ("St. Petersburg", "st petersburg"), ("Mount Cook", "mt cook"),
          ("Fort William", "ft william"), ("Stoke", "stoke"), ("L'Aquila", "laquila")]  # fmt: skip


@pytest.mark.parametrize(("name", "folded"), FOLDED)
def test_a_name_as_the_index_knows_it(name: str, folded: str) -> None:
    assert fold_place(name) == folded


DISTRICTS = [
    ("Kreis Heilsberg", "Heilsberg"),
    ("Kr. Wolmar", "Wolmar"),
    ("powiat Konin", "Konin"),
    ("Uman uyezd", "Uman"),
    ("Ambla kihelkond", "Ambla"),
    ("Kunda mõis", "Kunda"),
    ("Gut Fellin", "Fellin"),
]


@pytest.mark.parametrize(("words", "town"), DISTRICTS)
def test_a_district_is_called_after_its_town(words: str, town: str) -> None:
    """Words for a district or an estate in German, Polish, Russian, Estonian (common practice, no source)."""
    assert (without_district(words), is_district(words)) == (town, True)
    assert (without_district(town), is_district(town)) == (town, False)


INSIDE = [
    ("the wharf at Lyttelton", ("the wharf", "Lyttelton")),
    ("Grandad's house in Timaru", ("Grandad's house", "Timaru")),
    ("in Dunedin", ("Dunedin",)),
    ("the main street of Gore", ("the main street", "Gore")),
    ("auf dem Domberg in Dorpat", ("auf dem Domberg", "Dorpat")),
    ("Isle of Man", None),
    ("in the hills", None),
    ("Milton", None),
    ("Te Kuiti", None),
]


def test_what_stands_in_a_place() -> None:
    """Prepositions of English and German (common practice, no source)."""
    assert [(words, parted_at_in(words)) for words, _ in INSIDE] == INSIDE


DIRECTIONS = [
    ("Hampden, nth Otago", "Hampden, North Otago"), ("Palmerston Sth.", "Palmerston South"),
    ("Nth. Tawa, NZ", "North Tawa, NZ"), ("ſth Otago", "South Otago"), ("4th Street", "4th Street"), ("Goth", "Goth"),
]  # fmt: skip


@pytest.mark.parametrize(("words", "whole"), DIRECTIONS)
def test_nth_and_sth_are_directions(words: str, whole: str) -> None:
    assert with_directions(words) == whole
