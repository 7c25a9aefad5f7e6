"""Names of nobody known, by their shape (a rule of our own; the sentences are invented, their words from memory)."""

from tests.every_row import every_row

from boxlore.core.people.names_in_text import named_after_table
from boxlore.core.people.names_in_text.names_by_shape import forget_shapes, names_by_shape
from boxlore.core.statements import fold

NAMES = [
    ("1952-08 Port Chalmers regatta - Michael Rourke (left), Helmi.jpg", "Michael Rourke; Helmi"),
    ("Tante Ida im Garten", "Ida"),
    ("Picnic with Helen Brannock", "Helen Brannock"),
    ("Xanthe Brannock (left) and friend", "Xanthe Brannock"),
    ("Xanthe Brannock and Helmi by Xoanna Trewhella and Tiit", "Xanthe Brannock; Helmi; Xoanna Trewhella; Tiit"),
    ("Helmi and Xanthe Brannock in the boat", "Helmi; Xanthe Brannock"),
    ("with Colin Dow, Xanthe Brannock, Shona Kerr", "Colin Dow; Xanthe Brannock; Shona Kerr"),
    ("Mrs Brannock at the fete", "Brannock"),
    ("Mrs. Brannock at the fete", "Brannock"),
    ("Mr. J. Carmody with prize ram", "J. Carmody"),
    ("M.K. Rourke, shearer", "M.K. Rourke"),
    ("J. Brown, shearer, by the gate", "J. Brown"),
    ("Aunt Bev's new hat", "Bev's"),
    ("Ruth Brown, first day at school", "Ruth Brown"),
    ("Ruth Hall by the gate", "Ruth Hall"),
    ("Anna von Lind mit Hund", "Anna von Lind"),
    ("Meneer de Vries op de fiets", "Vries"),
    ("Old Tom Prain telling stories", "Tom Prain"),
    ("Rose Hallam in the garden", "Rose Hallam"),
    ("Will Carmody's horse", "Will Carmody's"),
    ("Grace's new pram", "Grace's"),
    ("We rowed there with Rose and came home late", "Rose"),
    ("Hochzeit von Erika Lindqvist und Jürgen Maas", "Erika Lindqvist; Jürgen Maas"),
    ("Maja ja Endel olid seal pulmas", "Maja; Endel"),
    ("Mit der Helmi am Meer", "Helmi"),
    ("tiiu kitchen", "tiiu"),
    ("Свадьба Ирины и Сергея", "Ирины; Сергея"),
    ("DOROTHY PRAIN, TIMARU", "DOROTHY PRAIN"),
    ("dorothy prain at the bach", "dorothy prain"),
    ("dorothy at the bach", "dorothy"),
    ("Don Anselmo con su mula", "Don Anselmo"),
    ("Church Picnic With Rose Brannock At Waitati", "Rose Brannock"),
    ("A wee Tom", "Tom"),
    ("In Anna's garden", "Anna's"),
    ("Zinnia Rathbone playing the harp", "Zinnia Rathbone"),
    ("Ottoline reading", "Ottoline"),
    ("Ottoline (bride)", "Ottoline"),
    ("Pohatu, W., second row", "Pohatu"),
    ("The Pringle twins in their pram", "Pringle"),
    ("We stayed with the Rathbones", "Rathbones"),
    ("The Leitches at Moeraki", "Leitches"),
    ("Külli leeripäev", "Külli"),
    ("With Euphemia under the plum tree", "Euphemia"),
    ("Seated left Gwenda Haas", "Gwenda Haas"),
    ("Coach Ruatapu and the first fifteen", "Coach Ruatapu"),
    ("Losa and Tavita at White Sunday", "Losa; Tavita"),
    ("Thierry sur la plage", "Thierry"),
    ("Valmai, Una and Thora by the pump", "Valmai; Una; Thora"),
    ("Dean and Craig in the bath", "Dean; Craig"),
    ("KEVIN AND LYNETTE, ROXBURGH", "KEVIN; LYNETTE"),
    ("PATRICIA HAAS, BRIDE", "PATRICIA HAAS"),
    ("L to R Colleen, Raewyn", "Colleen; Raewyn"),
    ("Grant on his motorbike", "Grant"),
    ("Craig family on the porch", "Craig"),
    ("Lily photo album", "Lily"),
    ("Rose by the gate", "Rose"),
    ("Athol on the harrow", "Athol"),
    ("Juhan Saar paadis", "Juhan Saar"),
    ("IMG_1044 roger fishing", "roger"),
    ("Taken by Douglas Marsh with his Leica", "Douglas Marsh"),
    ("Helen's shop", "Helen's"),
    ("Uncle Snow with his accordion", "Snow"),
    ("Visit to the Drummonds, Easter", "Drummonds"),
    ("Canon Thwaites opening the fete", "Canon Thwaites"),
    ("Pania in her school uniform", "Pania"),
    ("Our Debbie at the gate", "Debbie"),
    ("Hope feeding hens", "Hope"),
    ("Grażyna w ogrodzie", "Grażyna"),
    ("Love Moana, Mandy & Bex", "Moana; Mandy; Bex"),
    ("Gail, Maud, Xan at the gate", "Gail; Maud; Xan"),
    ("Gail, Maud, Auckland", "Gail; Maud"),
    ("Gail, Maud, Christmas", "Gail; Maud"),
    ("d. mcrae & p. tulloch", "d. mcrae; p. tulloch"),
    ("Pamela née Thwaite", "Pamela; Thwaite"),
]

NONE = [
    "Regatta day, Port Chalmers", "The house in Harbour Terrace", "St Mary's Church, Timaru", "Mother Brown loaf",
    "Queen Elizabeth's coronation, the town decorated", "HMS Hood at Wellington, 1924", "T.S.S. Maori berthing",
    "S.S. Maori berthing", "A. & P. Show", "J. Brown & Sons, saddlers", "A. b. Quill", "a. Quill",
    "Our first car, a Morris Minor", "the Helmi at anchor", "Empire Day parade, George Street",
    "Victoria Park bandstand", "Robert Burns statue in the Octagon", "The crowd at Ruth Hall",
    "Carey's Bay from the hill road", "Margaret's Mill", "Rue Victor Hugo", "Plaza de San Martín",
    "Das Schiff Wilhelm Gustloff im Hafen", "The dog Rex asleep", "Rex asleep", "Holidays in Victoria, Australia",
    "Atelier Anna, Dunedin", "Ida Bros, grocers", "Father Christmas arrives", "Mother-in-law on the porch",
    "Großmutters Spinnrad", "Mother's Quilting bee", "Herr Doktor", "General Motors works", "Die Linde vor dem Haus",
    "Meri oli sel päeval vaikne", "Ernst war die Lage", "Rose bushes along the fence", "May 1952, low tide",
    "Church Picnic With Rose Bushes", "rose garden", "meri", "adelaide street", "Waitati Blossom (coloured)",
    "Waitati Blossom and Kaitangata Coal", "The Waitati, 1952", "mr of the sea Kaitangata",
    "Aino Street and Lothlorien Road", "Anna Bay and Waitati Street",
    "A film with Charlie Chaplin", "Peter Pan at the town hall", "Wilhelm II. auf einer Tasse",
    "Guy Fawkes on the cart",
    "A plaster Napoleon on the shelf", "Bess the dog asleep in the sun", "Paddy, our old sheepdog", "Cat Tibby, a tom",
    "Wesley hall before the fire", "Parvlaev Georg Ots sadamas", "Slottet i Kalmar", "Noël à la campagne",
    "Lily pond in the public gardens", "Iris beds in flower", "Miles of sand", "The Remarkables under cloud",
    "The Octagon under snow", "With Rangitoto in the background", "Gutshaus Sagadi im Winter", "Dredge Tewera at noon",
    "Moeraki and Kurow", "Moeraki and Kurow, seen by air", "Seen near Moeraki, noon", "Monumento a Garibaldi",
    "Mosgiel woollen mill", "Puhoi (pub)", "Te Anau", "Bonnie, our Shetland pony", "Pirita rand",
    "Lambing on the Taieri plain", "Auf der Heide im Herbst",
    "Photographed by Burton Brothers",
    "Hudson's chocolate factory",
    "A bust of Robert Burns on the bookcase", "Lõke paistis üle lahe", "Uncle Street",
    "Святой Николай на иконе", "Крейсер Юрий у причала",
    "Our Hillman Minx outside the church", "Turi, a brigantine", "Moana Pool",
    "A game of euchre at the Oddfellows hall",  "Ivy on the wall", "Rose", "Mark & sons of the road",
]  # fmt: skip


@every_row(("words", "names"), NAMES)
def test_what_is_written_as_the_names_of_people_is_found(words: str, names: str) -> None:
    assert "; ".join(words[start:end] for start, end in names_by_shape(words)) == names


@every_row("words", NONE)
def test_what_is_called_after_somebody_is_nobodys_name(words: str) -> None:
    assert [words[start:end] for start, end in names_by_shape(words)] == []


def test_the_words_of_the_table_are_folded_as_those_that_are_sought() -> None:
    tables = [words for words in vars(named_after_table).values() if isinstance(words, frozenset)]
    assert len(tables) > 10
    assert not [word for words in tables for word in words if word != fold(word)]


def test_a_strike_forgets_what_was_looked_through() -> None:
    names_by_shape("Helmi at the gate")
    forget_shapes()
    assert names_by_shape.cache_info().currsize == 0
