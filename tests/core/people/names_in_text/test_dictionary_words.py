"""Names that are words of a dictionary: where the spelling, the form or what is told says that nobody is meant.

For every way in which a sentence passes there is one in which the same name may be somebody's. The sentences are
invented, the words from memory of each language; the rules are our own.
"""

from importlib.util import find_spec
from pathlib import Path

import pytest
from tests.core.people.names_in_text.test_search import finder, person
from tests.every_row import every_row
from tests.made_tables import check_table

from boxlore.core.people.names_in_text.known_words import is_noun_in, words_known

FAMILIES = (
    "Falk Vinter Ström Bianchi Summers Fairweather Montenegro Berg König Klein Sommer Richter Brunnen Zając Baran Kask "
    "Mäki Oja Rivers Campos Lang Blanc Fiore Kivi Rivière Hiver Chevalier Marchand Lund Hirsch Kovář Holub Õunapuu "
    "Brandt Petit Lahti Kuusik Upe Зима Wrona Zimmermann Kuusk Tamm Lepp Susi Spring Bosco Bakke Smed Monti"
).split()
PEOPLE = [
    *(person(family, given="Xerxes", family=family) for family in FAMILIES),
    person("mark", given="Mark", family="Stone"),
    person("bjorn", given="Björn", family="Xylander"),
    person("chiara", given="Chiara", family="Xylander"),
    person("heide", given="Heide", family="Xylander"),
    person("mari", given="Mari", family="Xylander"),
    person("may", given="May", family="Xylander"),
]
FINDER = finder(PEOPLE, [])

NOBODY = [
    # written small
    "En falk satt på stolpen.", "Det var en sträng vinter.", "I muri bianchi della masseria.",
    "L’hiver fut très long.", "We spent our summers here.", "Washing day in fair weather",
    "El monte negro que se ve al fondo ardió.", "La luce era chiara quella mattina.", "En björn hade rivit kupan.",
    "Les marchands installaient leurs tables.", "Vana õunapuu andis veel õunu.",
    "Two stones mark the corner of the field.",
    # done by whom a pronoun tells
    "Vi ska mark där i år.", "He marked the page.", "She can mark the place.",
    # another form than names have
    "Vintern var lång och kall.", "Falken satt kvar.", "Två björnar vid ån.", "Zwei Könige aus Holz",
    "Kleine Kinder vor der Schule", "Die Kleinen sitzen vorne.", "Zające biegały po polu.",
    "Petits et grands dans la cour", "Bakken bak huset var bratt.",
    # one slip away
    "Hinter dem Haus steht ein Baum.", "Nach dem Brand stand nur noch der Schornstein.",
    # by what is told
    "Mäki oli jyrkkä ja reki kaatui.", "Oja voolas läbi karjamaa.", "Rivers were in flood.", "Campos eran grandes.",
    "Der Berg war sehr steil.", "Upe bija aizsalusi.", "Зима была очень снежная.",
    "Lahti oli kevättalvella hiekkainen.",
    # German articles
    "Am Fuß des Bergs stand die Mühle.", "Das Bild des Königs hing dort.", "Die Sommer waren heiß.",
    "Die Richter trugen Perücken.", "Blick vom Berg ins Tal", "Ein Zimmermann zog durchs Dorf.",
    "Klein war die Kirche, aber warm.", "Frisch gestrichen war der Zaun.", "Lang war der Weg zur Schule.",
    # at the edge of it, and places
    "Kivi otsas istub kass.", "Vue du Mont Blanc depuis la terrasse", "L’insegna dice Albergo Fiore.",
    "El puerto de Campos",
    # English
    "Spring wheat behind the barn.", "Lepa kaldal", "Tamme tänaval", "Sur la place, le port de Fiore",
]  # fmt: skip
ASKED = [
    "Pildi tegi herr falk.", "falk satt på stolpen i Lund", "Pildil on perekond falk.", "Bianchi rideva.",
    "L’Hiver était là.", "Xerxes fair weather", "fair weather day in May", "La maestra chiara rideva.",
    "Björn hade rivit kupan.", "Marchand nous a prêté le cadre.", "mark stone by the gate",
    "Vinter var lång och kall.", "Vinters cykel", "Falks båt", "Königs Hund", "Kleins Garten", "Bei Bergs zum Kaffee",
    "Berge tuli külla.", "Zająca nie było.", "Wrony nie było w domu.", "U Baranów na imieninach", "Kovářova dílna",
    "Petit riait.", "Lunds båt", "Then Winter laughed.", "Vinter kysste henne.", "Mäki nauroi.", "Mäki oli iloinen.",
    "Mäki oli, jyrkkä", "Mäki oli Jyrkkä", "Oja naeris.", "Oja", "Rivers was on the steep path.", "Campos era joven.",
    "Der Berg lacht.", "Зима была весёлая.", "Rivers was so.", "Kivi", "Rivers was very steep-minded.",
    "Der König lacht.", "Mit dem König", "Die Richter lacht.", "Die Richters waren da.", "Vom Zimmermann geliehen",
    "Mit der Heide", "Heide blüht.", "Klein war der Beste.", "Klein war die Ruhe.", "Klein war", "Klein war die",
    "Klein lacht die Stube", "Fuß des Zzz und Berg lacht.", "Kivi Otsa oma", "Kivi talu", "Herr Blanc Rue",
    "Chiedere a Fiore.", "Campos de la casa", "Kased tulid külla.", "Lepa tütar on arst.", "Suden veli",
    "Kase auto läks katki.",
    "Kasele viidud kiri", "M. Chevalier au volant", "M. Hiver", "Rivers told us.", "Spring kissed her.",
    "Ein Bild von Lang", "Des Bergmanns Berg lacht.", "Winter came early and the pipes froze.", "Kivi tänaval",
    "Mari tänaval", "Dans la rue Petit jouait aux billes.", "Les Marchands sont venus.", "Kask kaldal ja Oja paadis",
    "Kask all keldris", "Oja rannal", "Kovářovi dal chleba.", "Falk och hans båt", "Berg steht auf dem Stein.",
    "Campos en la plaza, 1971", "Lund på bryggan", "Klein war der Clown der Familie.", "Die Richter oben links",
    "Die Richter drüben", "Die Richter daneben",
    "Auf dem Berg sitzt Richter.", "Hirsch war auf dem steilen Weg.", "Zimmermann zog durchs Dorf.",
    "Bianchi e fiori", "Der alte König lacht.", "Monti era giovane.", "Via Mark, 1975", "Holubovi přišli.",
    "Then Rivers was asleep.", "Königin Klein", "Sommer lachte.", "Hiver arriva en retard.", "Kuusik mängis.",
    "Wrona śmiała się.", "Зима приехала.", "Kivi sees maja", "Lahti rannalla", "Chiara era felice.",
    "Nu ska björn komma.", "Där, björn stod.",
    "Am Tisch Klein und Berg", "Oja lahkus.", "the Brand girl",
]  # fmt: skip


@every_row(("words",), [(words,) for words in NOBODY])
def test_nobody_is_meant(words: str) -> None:
    assert not FINDER.hits(words)


@every_row(("words",), [(words,) for words in ASKED])
def test_somebody_may_be(words: str) -> None:
    assert FINDER.hits(words)


def test_words_are_known_by_language() -> None:
    """Ten words of each of three languages (from memory of the school dictionaries), and names that are none."""
    for language, words in (
        ("sv", "falk berg vinter katt hus skog bord vatten sommar gammal"),
        ("et", "kask sepp kivi mari tamm laud maja kass vesi vana"),
        ("it", "bianchi fiore rossi casa gatto lupo neve mare pane vecchio"),
    ):
        assert words_known(language).issuperset(words.split())
        assert words_known(language).isdisjoint("lindqvist penhaligon tagliaferri wojciech".split())
    assert is_noun_in("berg", "de") and not is_noun_in("penhaligon", "de") and not is_noun_in("falk", "pt")


def test_the_table_is_what_the_script_makes() -> None:
    if not all(map(find_spec, ("estnltk", "simplemma", "wordfreq"))):
        pytest.skip("the dictionaries are needed for making the table only (make_known_words.py names them)")
    check_table(Path(__file__).parent / "make_known_words.py", "another release of a dictionary")
