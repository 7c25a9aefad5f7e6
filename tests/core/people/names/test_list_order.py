"""How names stand in a list, by the alphabet of its language.

The orders are those of the alphabets as dictionaries and directories of each country print them (CLDR tailors them so,
from memory): Estonian s š z ž t … v w õ ä ö ü x y, Swedish and Finnish … z å ä ö, Danish and Norwegian … z æ ø å.
"""

from tests.every_row import every_row

from boxlore.core.people.names.list_order import list_key

IN_ORDER = [
    ("en", "Abel, maddox, Mägi, Mudge, Nunn, von Rahden, Wong, zum Bruch"),
    ("en-NZ", "Ælfric, Afton, Lodz, Łódź, Lofty, O'Dell, Øberg, Ott"),
    ("et", "Saar, Šmidt, Zeller, Žukov, Tamm, Vaher, Õun, Ärm, Öpik, Ülo, Yrjö"),
    ("sv", "Zetter, Ågren, Ärlig, Öberg"),
    ("fi", "Zetter, Ågren, Ärlig, Öberg"),
    ("da", "Zahle, Ærø, Østergaard, Ågård"),
    ("nn-NO", "Zahl, Ærø, Østby, Ågård"),
    ("de", "Maas, Mägi, Mahler, Ott, Özer, Strasser, Straßer, Strauch"),
    ("pl", "Lis, Luty, Łuk, Zych, Żak"),
    ("es", "Núñez, Nuta, Ñáñez, Oro"),
    ("is", "Davíð, Eva, Zoëga, Þórdís, Ögmundur"),
    ("ru", "Егоров, Ёлкин, Жуков"),
]


@every_row(("language", "names"), IN_ORDER)
def test_names_stand_by_the_alphabet_of_their_language(language: str, names: str) -> None:
    in_order = names.split(", ")
    assert sorted(sorted(in_order), key=lambda name: list_key(name, language)) == in_order
