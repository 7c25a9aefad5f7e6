"""What state the whole of a country of today belonged to, by years. From memory; states whose land was divided
among several then are left out, so nothing is said of them.
"""

from typing import NamedTuple

_TSAR, _SOVIET = "Russian Empire", "Soviet Union"
_UK = "United Kingdom of Great Britain and Ireland"

GOVERNED: dict[str, tuple[tuple[int, int, str], ...]] = {
    "EE": ((1721, 1917, _TSAR), (1945, 1991, _SOVIET)),
    "LV": ((1795, 1917, _TSAR), (1945, 1991, _SOVIET)),
    "LT": ((1945, 1991, _SOVIET),),
    "FI": ((1809, 1917, "Grand Duchy of Finland (Russian Empire)"),),
    "RU": ((1721, 1917, _TSAR), (1922, 1991, _SOVIET)),
    "BY": ((1795, 1917, _TSAR), (1945, 1991, _SOVIET)),
    "UA": ((1945, 1991, _SOVIET),),
    "GE": ((1878, 1917, _TSAR), (1922, 1991, _SOVIET)),
    "AM": ((1922, 1991, _SOVIET),),
    "AZ": ((1828, 1917, _TSAR), (1922, 1991, _SOVIET)),
    "KZ": ((1895, 1917, _TSAR), (1922, 1991, _SOVIET)),
    "CZ": ((1867, 1918, "Austria-Hungary"), (1919, 1938, "Czechoslovakia"), (1945, 1992, "Czechoslovakia")),
    "SK": ((1867, 1918, "Austria-Hungary"), (1919, 1938, "Czechoslovakia"), (1945, 1992, "Czechoslovakia")),
    "SI": ((1867, 1918, "Austria-Hungary"), (1945, 1991, "Yugoslavia")),
    "HR": ((1867, 1918, "Austria-Hungary"), (1945, 1991, "Yugoslavia")),
    "BA": ((1918, 1941, "Yugoslavia"), (1945, 1992, "Yugoslavia")),
    "IE": ((1801, 1921, _UK),),
    "NZ": ((1841, 1906, "Colony of New Zealand"), (1907, 1946, "Dominion of New Zealand")),
    "IN": ((1858, 1946, "British India and princely states"),),
    "LK": ((1802, 1971, "Ceylon"),),
    "IS": ((1814, 1917, "Kingdom of Denmark"),),
    "NO": ((1814, 1904, "United Kingdoms of Sweden and Norway"),),
}


class GovernedPart(NamedTuple):
    """A part of a country of today that belonged elsewhere: box is south, west, north, east in degrees."""

    country: str
    box: tuple[float, float, float, float]
    states: tuple[tuple[int, int, str], ...]


_GRAND_DUCHY, _REICH = "Grand Duchy of Finland (Russian Empire)", "German Empire"

GOVERNED_PARTS: tuple[GovernedPart, ...] = (
    GovernedPart(
        "RU", (54.2, 19.5, 55.4, 23.0), ((1871, 1918, _REICH), (1919, 1944, "Germany"), (1946, 1991, _SOVIET))
    ),
    GovernedPart(
        "RU", (60.16, 27.8, 61.9, 30.9), ((1812, 1917, _GRAND_DUCHY), (1918, 1939, "Finland"), (1945, 1991, _SOVIET))
    ),
    GovernedPart("RU", (57.6, 27.3, 58.0, 27.9), ((1721, 1917, _TSAR), (1920, 1939, "Estonia"), (1945, 1991, _SOVIET))),
    GovernedPart("RU", (59.3, 28.1, 59.5, 28.3), ((1721, 1917, _TSAR), (1920, 1939, "Estonia"), (1945, 1991, _SOVIET))),
    GovernedPart("RU", (45.8, 141.8, 50.0, 144.8), ((1906, 1944, "Empire of Japan"), (1946, 1991, _SOVIET))),
    GovernedPart(
        "LT", (55.2, 20.9, 55.95, 21.6), ((1871, 1918, _REICH), (1924, 1938, "Lithuania"), (1945, 1991, _SOVIET))
    ),
)
"""From memory; the boxes are rough. Königsberg, Vyborg and the Isthmus, Petseri, Ivangorod, Karafuto, Memel."""
