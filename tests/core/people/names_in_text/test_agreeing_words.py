"""Adjectives and times that are names of living people too, in many languages (rules of our own).

The sentences are invented. In the first table nobody is meant; in the second somebody may be, so that each is asked.
"""

from importlib.util import find_spec
from pathlib import Path

import pytest
from tests.core.people.names_in_text.test_search import finder, person
from tests.every_row import every_row
from tests.made_tables import check_table

NAMES = (
    "Must Suur Valge Noor Ilus Kask Biały Mały Stary Zima Novák Černý Schwarz Lang Alt Sommer Wolf Petit Noir Blanco "
    "Lång Svart Stark Groot Musta Новый Весна Stor"
).split()
FINDER = finder([person(name, given="Xerxes", family=name) for name in NAMES], [])

NOBODY = [
    "Must koer lamab lävel.", "Suur tamm seisis värava ees.", "Noor vaher istutati kevadel.", "Ilus ilm oli.",
    "Suur ja kole.", "Biały dom pod lasem.", "Stary młyn nad rzeką.", "Černý pes u vrat", "Schwarze Katze",
    "Alte Brücke", "Petit jardin clos.", "Noir et blanc, tirage ancien.", "Blanco y negro",
    "Stark kyrka i byn.",
    "Svart hund på trappan.", "Groot huis aan de gracht", "Musta hevonen", "Новый дом построили в 1934 году.",
    "Stor hund", "Sommer 1932 am See.", "Zima 1940", "Весна 1951 года",
    "Hiljem. Must koer lamas.", "Musta hevonen ja reki",
    "Lång väg till skolan.", "Svart katt på trappan.", "Svart båt vid bryggan.", "Stark bar in the window.",
    "Petit chien sur le banc.", "Stor båt ved brygga.", "Malý dům u lesa.",
]  # fmt: skip
ASKED = [
    "Musta koer lamab lävel.", "Suur tõi selle pildi.", "Valge hobune", "Must ja Kask paadis.", "Must, koer", "Must",
    "Must isa", "Must Koer", "Siis Must koer", "Suur ja kask", "Suur ja", "Suur ja kole tamm.", "Suur vana",
    "Suur ja Noor tamm",
    "Biały mieszka w Gdyni.", "Mały i jego brat.", "Schwarz hat den Schlüssel.", "Schwarze katze", "Schwarzer Wolf",
    "Lang wohnt in Bremen.", "Petit habite encore là.", "Petit porte le sac.", "Noir et son frère", "Lång bor kvar.",
    "Svart band båten.", "Svart har nyckeln.", "Musta tuli kotiin.", "Mustan hevonen", "Новый живёт в Нарве.",
    "Sommer 12", "Petit malade", "Stark bar säcken.", "Černý ráno v Praze.", "Must ja vana koer",
    "Sommer erzählte das.", "Must 1932", "Lang kom hem.",
    "Stark fann den.", "Stark bar en korg.", "Stark bar hem en sten.",
    "Svart stod vid grinden.", "Svart genom skogen.", "Lång själv bakom ratten.", "Stor drap ulven.",
    "Blanco sobre el caballo.", "Blanco tras la puerta.", "Blanco vino a casa.", "Blanco ayer en la playa.",
    "Groot leek moe.", "Groot overal bij.", "Musta itse teki sen.", "Musta aina kotona.", "Mały już śpi.",
    "Černý jeho bratr", "Petit car il pleut.",
    "Stark bar korgen.", "Stark bar.", "Stark bar korgen hem.", "Stark band hunden.", "Svart såg hunden.",
    "Must oli kodus.", "Suur tuli koju.", "Mały dał jej kwiaty.", "Svart präst i Lund", "Petit femme", "Svart bar till",
]  # fmt: skip


@every_row(("words",), [(words,) for words in NOBODY])
def test_nobody_is_meant(words: str) -> None:
    assert not FINDER.hits(words)


@every_row(("words",), [(words,) for words in ASKED])
def test_somebody_may_be(words: str) -> None:
    assert FINDER.hits(words)


def test_the_table_is_what_the_script_makes() -> None:
    if not all(map(find_spec, ("estnltk", "morfeusz2", "pymorphy3", "simplemma", "spacy_lookups_data", "wordfreq"))):
        pytest.skip("the dictionaries are needed for making the table only (make_agreeing_words.py names them)")
    check_table(Path(__file__).parent / "make_agreeing_words.py", "another release of a dictionary")
