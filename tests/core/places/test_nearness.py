"""Places told by how far they lie from another (common practice, no source; lengths of old miles from memory).

A row: the words, what stands before, the place that it is near, kilometres. No words of nearness: a row of NONE.
"""

from boxlore.core.places.nearness import near_of

TOLD = [
    ("3,5 km from Milton, Otago", "", "Milton, Otago", 3.5),
    ("about 3 miles from Milton, Otago", "", "Milton, Otago", 4.83),
    ("Three miles north of Milton", "", "Milton", 4.83),
    ("the farm, 3 miles N.W. of Milton", "the farm", "Milton", 4.83),
    ("2½ miles from Milton", "", "Milton", 4.02),
    ("2 1/2 miles from Milton", "", "Milton", 4.02),
    ("1/2 mile from Milton", "", "Milton", 0.8),
    ("half a mile from Milton", "", "Milton", 0.8),
    ("a mile and a half from Milton", "", "Milton", 2.41),
    ("three and a half miles out of Milton", "", "Milton", 5.63),
    ("three quarters of a mile from Milton", "", "Milton", 1.21),
    ("1,200 yards from Milton", "", "Milton", 1.1),
    ("two hours' walk from Milton", "", "Milton", 10),
    ("half an hour by train from Dunedin", "", "Dunedin", 30),
    ("an hour from Dunedin", "", "Dunedin", 60),
    ("a day's ride from Milton", "", "Milton", 80),
    ("a good hour's ride from Milton", "", "Milton", 10),
    ("twenty-five miles inland from Oamaru", "", "Oamaru", 40.23),
    ("a hundred miles from Sydney", "", "Sydney", 160.9),
    ("20 chains from Milton", "", "Milton", 0.4),
    ("5-6 miles from Milton", "", "Milton", 9.65),
    ("five or six miles from Milton", "", "Milton", 9.65),
    ("a few miles from Milton", "", "Milton", 6.44),
    ("a couple of miles from Milton", "", "Milton", 3.22),
    ("5 miles up the river from Milton", "", "Milton", 8.04),
    ("5 miles from the village of Milton", "", "Milton", 8.04),
    ("Bridge of Allan, 2 miles from Stirling", "Bridge of Allan", "Stirling", 3.22),
    ("Milton, 5 miles north", "", "Milton", 8.04),
    ("Milton (3 miles away), Otago", "", "Milton, Otago", 4.83),
    ("just west of Milton", "", "Milton", 15),
    ("to the north of Milton", "", "Milton", 15),
    ("somewhere near Milton", "", "Milton", 15),
    ("nr. Milton", "", "Milton", 15),
    ("our place (near Milton)", "our place", "Milton", 15),
    ("our place (near Milton), Otago", "our place", "Milton, Otago", 15),
    ("Grange (mill) near Milton (Otago)", "Grange (mill)", "Milton (Otago)", 15),
    ("5 Werst von Dorpat", "", "Dorpat", 5.33),
    ("etwa 5 km nördlich von Dorpat", "", "Dorpat", 5),
    ("zwei Stunden zu Fuß von Dorpat", "", "Dorpat", 10),
    ("der Hof bei Reval", "der Hof", "Reval", 15),
    ("à cinq kilomètres au nord de Rouen", "", "Rouen", 5),
    ("Les Andelys, près d'Évreux", "Les Andelys", "Évreux", 15),
    ("в пяти верстах от Ревеля", "", "Ревеля", 5.33),
    ("5 km na północ od Krakowa", "", "Krakowa", 5),
    ("5 km Tartust põhja pool", "", "Tartu", 5),
    ("viis kilomeetrit Tartust", "", "Tartu", 5),
    ("Tartu lähedal", "", "Tartu", 15),
    ("kaksi kilometriä Turusta", "", "Turu", 2),
    ("tíz kilométerre Szegedtől", "", "Szeged", 10),
    ("Kassa határában", "", "Kassa", 15),
    ("nem messze Kolozsvártól", "", "Kolozsvártól", 15),
    ("tíu kílómetra frá Akureyri", "", "Akureyri", 10),
    ("Haapsalu lähedal talus", "talus", "Haapsalu", 15),
    ("bærinn skammt frá Selfossi", "bærinn", "Selfossi", 15),
]

NONE = ["the North of England", "in the north of Scotland", "Two Mile Creek, Westland", "Five Mile Beach",
        "Isle of Man", "South Milton", "East Ham", "Bridge of Allan", "Frankfurt am Main", "Milton", "near 12",
        "Milton (by the river)", "Milton (the farm near Otago)",
        "outside the Town Hall in Auckland", "bei der Kirche in Lübeck",
        "Dentlein am Forst", "Ixtahuiata (La Legua)", "K. I. Sawyer Base"]  # fmt: skip


def test_how_far_from_where() -> None:
    misses = []
    for words, before, anchor, km in TOLD:
        near = near_of(words)
        told = (near.before, near.anchor, round(near.km, 2)) if near else None
        if told != (before, anchor, km):
            misses.append((words, told))
    assert misses == []


def test_the_words_of_nearness_are_kept() -> None:
    assert [near.words for near in map(near_of, ("the hut, 2 miles from Milton", "near Milton")) if near] == [
        "2 miles from",
        "near",
    ]


def test_what_tells_of_no_nearness() -> None:
    assert [words for words in NONE if near_of(words) is not None] == []
