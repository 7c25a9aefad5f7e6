"""Cities that were renamed, with the years of each name (0 for no bound). From memory; check before relying on a year."""

from typing import NamedTuple


class Renamed(NamedTuple):
    """One city: today's name, ISO country, and (name, first year, last year) of every name."""

    now: str
    country: str
    names: tuple[tuple[str, int, int], ...]


RENAMED: tuple[Renamed, ...] = (
    Renamed(
        "Saint Petersburg",
        "RU",
        (
            ("St. Petersburg", 1703, 1914),
            ("Petrograd", 1914, 1924),
            ("Leningrad", 1924, 1991),
            ("St. Petersburg", 1991, 0),
        ),
    ),
    Renamed("Volgograd", "RU", (("Tsaritsyn", 1589, 1925), ("Stalingrad", 1925, 1961), ("Volgograd", 1961, 0))),
    Renamed(
        "Yekaterinburg", "RU", (("Yekaterinburg", 1723, 1924), ("Sverdlovsk", 1924, 1991), ("Yekaterinburg", 1991, 0))
    ),
    Renamed(
        "Nizhniy Novgorod", "RU", (("Nizhny Novgorod", 1221, 1932), ("Gorky", 1932, 1990), ("Nizhny Novgorod", 1990, 0))
    ),
    Renamed("Samara", "RU", (("Samara", 1586, 1935), ("Kuybyshev", 1935, 1991), ("Samara", 1991, 0))),
    Renamed("Kaliningrad", "RU", (("Königsberg", 1255, 1946), ("Kaliningrad", 1946, 0))),
    Renamed("Tver", "RU", (("Tver", 1135, 1931), ("Kalinin", 1931, 1990), ("Tver", 1990, 0))),
    Renamed("Istanbul", "TR", (("Constantinople", 330, 1930), ("Istanbul", 1930, 0))),
    Renamed("Ankara", "TR", (("Angora", 0, 1930), ("Ankara", 1930, 0))),
    Renamed("İzmir", "TR", (("Smyrna", 0, 1930), ("İzmir", 1930, 0))),
    Renamed("Gdańsk", "PL", (("Danzig", 1793, 1945), ("Gdańsk", 1945, 0))),
    Renamed("Wrocław", "PL", (("Breslau", 1741, 1945), ("Wrocław", 1945, 0))),
    Renamed("Szczecin", "PL", (("Stettin", 1720, 1945), ("Szczecin", 1945, 0))),
    Renamed("Poznań", "PL", (("Posen", 1793, 1919), ("Poznań", 1919, 0))),
    Renamed("Łódź", "PL", (("Łódź", 1423, 1940), ("Litzmannstadt", 1940, 1945), ("Łódź", 1945, 0))),
    Renamed(
        "Katowice",
        "PL",
        (("Kattowitz", 0, 1922), ("Katowice", 1922, 1953), ("Stalinogród", 1953, 1956), ("Katowice", 1956, 0)),
    ),
    Renamed(
        "Lviv",
        "UA",
        (("Lemberg", 1772, 1918), ("Lwów", 1918, 1939), ("Lvov", 1939, 1991), ("Lviv", 1939, 1991), ("Lviv", 1991, 0)),
    ),
    Renamed(
        "Chernivtsi",
        "UA",
        (("Czernowitz", 1775, 1918), ("Cernăuţi", 1918, 1940), ("Chernovtsy", 1940, 1991), ("Chernivtsi", 1991, 0)),
    ),
    Renamed(
        "Ivano-Frankivsk",
        "UA",
        (
            ("Stanislau", 1772, 1918),
            ("Stanisławów", 1918, 1939),
            ("Stanislav", 1939, 1962),
            ("Ivano-Frankivsk", 1962, 0),
        ),
    ),
    Renamed("Dnipro", "UA", (("Yekaterinoslav", 1776, 1926), ("Dnepropetrovsk", 1926, 2016), ("Dnipro", 2016, 0))),
    Renamed("Donetsk", "UA", (("Yuzovka", 1869, 1924), ("Stalino", 1924, 1961), ("Donetsk", 1961, 0))),
    Renamed("Vilnius", "LT", (("Vilna", 1795, 1918), ("Wilno", 1920, 1939), ("Vilnius", 1939, 0))),
    Renamed("Kaunas", "LT", (("Kovno", 1795, 1918), ("Kaunas", 1918, 0))),
    Renamed("Klaipėda", "LT", (("Memel", 1252, 1923), ("Klaipėda", 1923, 0))),
    Renamed("Tallinn", "EE", (("Reval", 1219, 1918), ("Tallinn", 1918, 0))),
    Renamed("Tartu", "EE", (("Dorpat", 1224, 1893), ("Yuryev", 1893, 1918), ("Tartu", 1918, 0))),
    Renamed("Daugavpils", "LV", (("Dünaburg", 1275, 1893), ("Dvinsk", 1893, 1920), ("Daugavpils", 1920, 0))),
    Renamed("Oslo", "NO", (("Christiania", 1624, 1877), ("Kristiania", 1877, 1924), ("Oslo", 1925, 0))),
    Renamed("Trondheim", "NO", (("Trondhjem", 0, 1930), ("Trondheim", 1931, 0))),
    Renamed("Bratislava", "SK", (("Pressburg", 0, 1919), ("Pozsony", 0, 1919), ("Bratislava", 1919, 0))),
    Renamed(
        "Cluj-Napoca",
        "RO",
        (
            ("Kolozsvár", 0, 1918),
            ("Klausenburg", 0, 1918),
            ("Kolozsvár", 1940, 1944),
            ("Cluj", 1918, 1974),
            ("Cluj-Napoca", 1974, 0),
        ),
    ),
    Renamed("Rijeka", "HR", (("Fiume", 0, 1947), ("Rijeka", 1947, 0))),
    Renamed("Chemnitz", "DE", (("Chemnitz", 1143, 1953), ("Karl-Marx-Stadt", 1953, 1990), ("Chemnitz", 1990, 0))),
    Renamed("Thessaloníki", "GR", (("Salonica", 0, 1912), ("Thessaloniki", 1912, 0))),
    Renamed("Tbilisi", "GE", (("Tiflis", 0, 1936), ("Tbilisi", 1936, 0))),
    Renamed("Dún Laoghaire", "IE", (("Kingstown", 1821, 1920), ("Dún Laoghaire", 1920, 0))),
    Renamed("Cobh", "IE", (("Queenstown", 1849, 1920), ("Cobh", 1920, 0))),
    Renamed("Kitchener", "CA", (("Berlin", 1833, 1916), ("Kitchener", 1916, 0))),
    Renamed("Thunder Bay", "CA", (("Port Arthur", 1907, 1970), ("Fort William", 1907, 1970), ("Thunder Bay", 1970, 0))),
    Renamed("Ottawa", "CA", (("Bytown", 1826, 1855), ("Ottawa", 1855, 0))),
    Renamed("Toronto", "CA", (("York", 1793, 1834), ("Toronto", 1834, 0))),
    Renamed("Regina", "CA", (("Pile o' Bones", 0, 1882), ("Regina", 1882, 0))),
    Renamed("Iqaluit", "CA", (("Frobisher Bay", 1942, 1987), ("Iqaluit", 1987, 0))),
    Renamed("Ho Chi Minh City", "VN", (("Saigon", 1698, 1976), ("Ho Chi Minh City", 1976, 0))),
    Renamed("Mumbai", "IN", (("Bombay", 1668, 1995), ("Mumbai", 1995, 0))),
    Renamed("Kolkata", "IN", (("Calcutta", 1690, 2001), ("Kolkata", 2001, 0))),
    Renamed("Chennai", "IN", (("Madras", 1639, 1996), ("Chennai", 1996, 0))),
    Renamed("Kinshasa", "CD", (("Léopoldville", 1881, 1966), ("Kinshasa", 1966, 0))),
    Renamed("Harare", "ZW", (("Salisbury", 1890, 1982), ("Harare", 1982, 0))),
    Renamed("Jakarta", "ID", (("Batavia", 1619, 1942), ("Jakarta", 1942, 0))),
    Renamed("Almaty", "KZ", (("Verny", 1867, 1921), ("Alma-Ata", 1921, 1993), ("Almaty", 1993, 0))),
)
