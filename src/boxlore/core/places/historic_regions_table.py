"""Historic regions: names folded, countries now, a rough box (S, W, N, E degrees), for ranking only.

All from memory; the boxes are approximate.
"""

from typing import NamedTuple


class Region(NamedTuple):
    """One region: `box` is south, west, north, east; `parts` are ISO 3166-2 codes that lie in it.

    `now` are the ISO 3166-1 codes of the countries that it lies in today, the first the one of most of it.
    """

    name: str
    aliases: tuple[str, ...]
    now: tuple[str, ...]
    box: tuple[float, float, float, float]
    parts: tuple[str, ...] = ()
    source: str = "from memory"


REGIONS: tuple[Region, ...] = (
    Region(
        "Volhynia",
        ("volhynia", "wolhynien", "wolyn", "volyn", "volhynia gubernia", "wolynien", "volynia", "волынь", "волинь"),
        ("UA", "PL", "BY"),
        (49.7, 23.5, 52.0, 29.0),
        ("UA-07", "UA-56", "UA-18", "UA-68"),
    ),
    Region(
        "Galicia",
        ("galicia", "galizien", "galicja", "halychyna", "austrian poland", "галиция", "галичина"),
        ("PL", "UA"),
        (47.7, 18.9, 50.8, 26.5),
        ("PL-12", "PL-18", "UA-46", "UA-26", "UA-61"),
    ),
    Region(
        "East Prussia",
        ("east prussia", "e prussia", "ostpreussen", "ost preussen", "east pr", "ostpr", "ostpreuss", "opr"),
        ("RU", "PL", "LT"),
        (53.0, 19.2, 55.9, 22.9),
        ("RU-KGD", "PL-28"),
    ),
    Region(
        "West Prussia",
        ("west prussia", "w prussia", "westpreussen", "westpr", "westpreuss", "wpr"),
        ("PL",),
        (52.9, 16.0, 54.9, 19.9),
        ("PL-22", "PL-04"),
    ),
    Region(
        "Posen (Province)",
        ("posen province", "provinz posen", "prov posen", "posen", "grand duchy of posen"),
        ("PL",),
        (51.0, 15.7, 53.4, 18.6),
        ("PL-30",),
    ),
    Region(
        "Silesia",
        (
            "silesia",
            "schlesien",
            "slask",
            "upper silesia",
            "lower silesia",
            "oberschlesien",
            "niederschlesien",
            "prussian silesia",
        ),
        ("PL", "CZ", "DE"),
        (49.3, 14.7, 51.9, 19.4),
        ("PL-02", "PL-16", "PL-24", "CZ-80"),
    ),
    Region(
        "Pomerania",
        ("pomerania", "pommern", "pomorze"),
        ("DE", "PL"),
        (52.9, 12.2, 54.9, 18.4),
        ("PL-32", "DE-MV", "PL-22"),
    ),
    Region("Bessarabia", ("bessarabia", "bessarabien"), ("MD", "UA"), (45.2, 26.6, 48.5, 30.7), ()),
    Region(
        "Bukovina", ("bukovina", "bukowina", "bucovina"), ("UA", "RO"), (47.2, 24.8, 48.8, 26.7), ("UA-77", "RO-SV")
    ),
    Region("Transylvania", ("transylvania", "siebenburgen", "erdely", "ardeal"), ("RO",), (45.3, 21.9, 47.9, 26.8), ()),
    Region("Bohemia", ("bohemia", "bohmen", "boehmen", "cechy"), ("CZ",), (48.5, 12.0, 51.1, 16.9), ()),
    Region(
        "Moravia",
        ("moravia", "mahren", "maehren", "morava"),
        ("CZ",),
        (48.6, 15.1, 50.3, 18.9),
        ("CZ-64", "CZ-71", "CZ-72"),
    ),
    Region("Sudetenland", ("sudetenland", "sudeten"), ("CZ",), (48.5, 12.0, 51.1, 18.9), ()),
    Region("Banat", ("banat",), ("RO", "RS", "HU"), (44.5, 19.9, 46.3, 23.0), ("RO-TM", "RO-CS")),
    Region("Batschka", ("batschka", "bacska", "backa"), ("RS", "HU"), (45.0, 18.7, 46.4, 20.4), ("RS-VO",)),
    Region(
        "Courland", ("courland", "kurland", "kurzeme", "курляндия", "kuramaa"), ("LV",), (55.9, 20.9, 57.8, 26.0), ()
    ),
    Region(
        "Livonia",
        ("livonia", "livland", "лифляндия", "liivimaa", "inflanty"),
        ("LV", "EE"),
        (56.4, 23.8, 59.0, 28.0),
        (),
    ),
    Region(
        "Ruthenia",
        ("ruthenia", "carpathian ruthenia", "subcarpathia"),
        ("UA", "SK"),
        (47.9, 22.0, 49.1, 24.7),
        ("UA-21",),
    ),
    Region(
        "Podolia", ("podolia", "podolien", "подолия", "podole"), ("UA",), (47.9, 25.9, 50.0, 31.0), ("UA-68", "UA-05")
    ),
    Region(
        "Cherson Government",
        ("cherson", "kherson government", "cherson government"),
        ("UA", "MD"),
        (45.9, 29.0, 49.0, 34.3),
        (),
    ),
    Region("Taurida", ("taurida", "taurien", "tauria"), ("UA",), (44.3, 32.4, 47.9, 36.8), ()),
    Region(
        "Alsace-Lorraine",
        ("alsace lorraine", "elsass lothringen", "alsace", "elsass", "lorraine", "lothringen"),
        ("FR",),
        (47.4, 4.9, 49.6, 8.3),
        ("FR-GES",),
    ),
    Region("Macedonia (Ottoman)", ("macedonia",), ("MK", "GR", "BG"), (39.9, 20.4, 42.4, 25.0), ()),
    Region(
        "Dakota Territory",
        ("dakota territory", "dakota ter", "d t", "dak terr", "dak ter"),
        ("US",),
        (42.4, -104.1, 49.0, -96.4),
        ("US-ND", "US-SD"),
    ),
    Region(
        "Indian Territory",
        ("indian territory", "ind ter", "i t", "ind terr"),
        ("US",),
        (33.6, -100.0, 37.1, -94.4),
        ("US-OK",),
    ),
    Region("Oklahoma Territory", ("oklahoma territory", "o t"), ("US",), (33.6, -103.0, 37.1, -94.4), ("US-OK",)),
    Region(
        "Washington Territory",
        ("washington territory", "wash ter", "w t"),
        ("US",),
        (45.5, -124.9, 49.1, -116.9),
        ("US-WA",),
    ),
    Region(
        "Northwest Territories (to 1905)",
        ("n w t", "nwt", "northwest territories", "assiniboia", "district of assiniboia"),
        ("CA",),
        (49.0, -120.0, 84.0, -60.0),
        ("CA-SK", "CA-AB", "CA-NT"),
    ),
    Region(
        "Canada West / Upper Canada",
        ("canada west", "upper canada", "c w", "u c"),
        ("CA",),
        (41.6, -95.2, 56.9, -74.3),
        ("CA-ON",),
    ),
    Region(
        "Canada East / Lower Canada",
        ("canada east", "lower canada", "c e", "l c"),
        ("CA",),
        (44.9, -79.8, 62.6, -57.1),
        ("CA-QC",),
    ),
    Region("Ulster", ("ulster",), ("GB", "IE"), (53.8, -8.9, 55.5, -5.4), ("GB-NIR",)),
    Region("Munster", ("munster",), ("IE",), (51.4, -10.7, 53.2, -6.9), ("IE-M",)),
    Region("Connacht", ("connacht", "connaught"), ("IE",), (52.9, -10.3, 54.5, -7.6), ("IE-C",)),
    Region("Leinster", ("leinster",), ("IE",), (52.1, -8.2, 54.2, -5.9), ("IE-L",)),
    Region("Van Diemen's Land", ("van diemens land",), ("AU",), (-43.7, 144.5, -39.5, 148.5), ("AU-TAS",)),
    Region("Queen's County", ("queens county", "queens co"), ("IE",), (52.78, -7.75, 53.22, -6.93), ("IE-LS",)),
    Region("King's County", ("kings county", "kings co"), ("IE",), (52.84, -8.09, 53.44, -6.97), ("IE-OY",)),
    Region(
        "Pale of Settlement",
        ("pale of settlement", "the pale"),
        ("UA", "BY", "LT", "PL", "MD"),
        (45.0, 19.0, 57.0, 37.0),
        (),
    ),
    Region(
        "Estland",
        ("estland", "estljandija", "governorate of estonia", "эстляндия", "eestimaa"),
        ("EE",),
        (58.3, 22.0, 59.9, 28.3),
        (),
    ),
    Region("Saaremaa", ("osel", "oesel", "saaremaa"), ("EE",), (57.8, 21.7, 58.7, 23.5), ()),
    Region("Saxony", ("sachsen", "kingdom of saxony", "konigreich sachsen"), ("DE",), (50.1, 11.8, 51.8, 15.1), ()),
    Region("Bavaria", ("bayern",), ("DE",), (47.2, 8.9, 50.6, 13.9), ()),
    Region("Hesse", ("hessen",), ("DE",), (49.3, 7.7, 51.7, 10.3), ()),
    Region("Thuringia", ("thuringen",), ("DE",), (50.2, 9.8, 51.7, 12.7), ()),
    Region("Holstein", ("holstein",), ("DE",), (53.3, 8.8, 54.5, 11.2), ()),
    Region(
        "Mecklenburg",
        ("mecklenburg", "meckl", "meckl schwerin", "mecklenburg schwerin"),
        ("DE",),
        (53.0, 10.6, 54.6, 13.6),
        (),
    ),
)
