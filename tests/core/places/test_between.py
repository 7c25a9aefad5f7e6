"""Places told by two others (common practice, no source). A row: the words, what stands before, the two."""

from boxlore.core.places.between import between_of

TOLD = [
    ("between Oamaru and Timaru", "", "Oamaru", "Timaru"),
    ("the camp between Oamaru and Timaru, Otago", "the camp", "Oamaru, Otago", "Timaru, Otago"),
    ("on the train from Dunedin to Christchurch", "on the train", "Dunedin", "Christchurch"),
    ("zwischen Riga und Mitau", "", "Riga", "Mitau"),
    ("auf der Fahrt von Reval nach Dorpat", "auf der Fahrt", "Reval", "Dorpat"),
    ("entre Rouen et Dieppe", "", "Rouen", "Dieppe"),
    ("między Krakowem a Tarnowem", "", "Krakowem", "Tarnowem"),
    ("Tartu ja Võru vahel", "", "Tartu", "Võru"),
    ("Turun ja Porin välillä", "", "Turun", "Porin"),
    ("между Ригой и Псковом", "", "Ригой", "Псковом"),
    ("mellan Malmö och Lund", "", "Malmö", "Lund"),
]

NONE = ["Tallinn", "from the house to the barn", "between the wars", "Tartu ja Võru", "Rio de Janeiro", ""]


def test_between_which_two() -> None:
    misses = []
    for words, before, first, second in TOLD:
        pair = between_of(words)
        if pair is None or (pair.before, *pair.places) != (before, first, second):
            misses.append((words, pair))
    assert misses == []


def test_what_tells_of_no_two_places() -> None:
    assert [words for words in NONE if between_of(words) is not None] == []
