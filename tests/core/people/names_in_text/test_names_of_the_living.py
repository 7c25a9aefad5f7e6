"""Names of which nobody told who bears them, where the words say that the bearer may well live (a rule of our own)."""

from tests.every_row import every_row

from boxlore.core.people.names_in_text.finder import forget_finders
from boxlore.core.people.names_in_text.names_of_the_living import names_of_the_living

YEAR, LONGEST = 2026, 100

TOLD = (
    ("story", "Rasmus Saarepuu (b. 1983) carried the box down.", "Rasmus Saarepuu"),
    ("story", "With Leida Tohver (*1941) and the dog", "Leida Tohver"),
    ("title", "Kaisa Vesterinen, 14, on the bus, 2009", "Kaisa Vesterinen"),
    ("title", "Kaisa Vesterinen aged 9", "Kaisa Vesterinen"),
    ("story", "Given to us by Oleg Sidorchuk last spring.", "Oleg Sidorchuk"),
    ("story", "The mill burnt. Our keeper Tiiu Saarepera saw it.", "Tiiu Saarepera"),
    ("story", "In 2015 Hilda Quaine sold the mill.", "Hilda Quaine"),
    ("donor", "Halina Dudziak, Gdynia", "Halina Dudziak"),
    ("custody", "from Mrs Elsa Lindqvist-Pohl", "Elsa Lindqvist-Pohl"),
    ("keyword", "#KaisaVesterinen", "Kaisa Vesterinen"),
    ("story", "With Timotheus Brandlacher, born 2001, who lives in Vaasa.", "Timotheus Brandlacher"),
    ("story", "Brandulf Quaffle (b. 1990) held the lamp", "Brandulf Quaffle"),
    ("story", "Brandulf Quaffle still lives in the yellow house.", "Brandulf Quaffle"),
    ("story", "Hilda Quaine lives in Vaasa now", "Hilda Quaine"),
    ("story", "My neighbour Gunnar Väljataga is 45 now and still fishes here", "Gunnar Väljataga"),
    ("story", "Dr. Mehmet Karabulut, my doctor these days, knows it.", "Mehmet Karabulut"),
    ("story", "Внук Тимур Ахметшин учится в школе.", "Тимур Ахметшин"),
    ("story", "The little one is Priya Subramaniam, five last week.", "Priya Subramaniam"),
    ("story", "Ring kelvin trudgeon on 021 555 0199 about it.", "Kelvin Trudgeon"),
    ("story", "Ring Brandulf Quaffle, 021 555 0199", "Brandulf Quaffle"),
    ("story", "Ask or e-mail Kaisa Vesterinen, kaisa@example.org", "Kaisa Vesterinen"),
    ("story", "kaisa vesterinen lives in vaasa", "Kaisa Vesterinen"),
    ("story", "KAISA VESTERINEN (B. 1983) AND THE BUS", "Kaisa Vesterinen"),
    ("story", "Tante Leida Tohver (*1941) and the dog", "Leida Tohver"),
    ("story", "Meie lapselaps Kärt Vahersalu läks 2011 kooli.", "Kärt Vahersalu"),
    ("story", "Внучка Милана Щеглова родилась в 2009 году.", "Милана Щеглова"),
    ("story", "Правнук Демид Ярцев, 2015 г.р., на горке.", "Демид Ярцев"),
    ("story", "Класс Маши Ковригиной, 2 «Б», 2010", "Маши Ковригиной"),
    ("story", "Vnučka Barbora Nejedlíková, 2014, první třída.", "Barbora Nejedlíková"),
    ("story", "Unokánk Zselyke Bartalos 2010-ben született.", "Zselyke Bartalos"),
    ("story", "Wnuczka Zuzanna Krajnik urodziła się 3 maja 2011.", "Zuzanna Krajnik"),
    ("story", "Sündis Mirtel Kaasikoja 2014. aastal.", "Mirtel Kaasikoja"),
    ("story", "Barnebarnet Ylva Storhaug, født i 2013, med ski.", "Ylva Storhaug"),
    ("story", "Kuzey Altındağ 2012 doğumlu", "Kuzey Altındağ"),
    ("story", "My nephew Tane Parekura finished school in 2019.", "Tane Parekura"),
    ("title", "Wee Isla Marrenby, 3 months", "Isla Marrenby"),
    ("title", "Marta Zawistowska, lat 6", "Marta Zawistowska"),
    ("title", "Pelle Sundgren, 8 år", "Pelle Sundgren"),
    ("title", "Jaanile Kaasikojal, 2015", "Jaanile Kaasikojal"),
    ("story", "Dr Raghavendra put the frame right last spring.", "Dr Raghavendra"),
    ("story", "Auntie Bev would love it.", "Auntie Bev"),
    ("story", "Our neighbour Lettice Quarrell has the key.", "Lettice Quarrell"),
    ("story", "Uncle Cuthbert emigrated and is still alive.", "Uncle Cuthbert"),
    ("story", "Mrs Quarrell next door still has the key.", "Mrs Quarrell"),
    ("story", "Young Tobias Marchmont was the paper boy then; he is a dentist now.", "Tobias Marchmont"),
    ("story", "Wnuczka, Zosia Kruk, ma album.", "Zosia Kruk"),
    ("story", "Moja sąsiadka, pani Kruk, ma album.", "pani Kruk"),
    ("story", "Pani Halina Grzmot-Skotnicka z parteru żyje do dziś.", "Halina Grzmot-Skotnicka"),
    ("story", "Die Nachbarin, Frau Ohnesorg, wohnt noch dort.", "Frau Ohnesorg"),
    ("story", "Соседка тётя Глаша до сих пор помнит мельницу.", "тётя Глаша"),
    ("story", "Naabrinaine Helbe Tõnuveer, kes elab nüüd Keilas", "Helbe Tõnuveer"),
)
NOT_TOLD = (
    ("title", "Hilda Quaine, butcher"),
    ("title", "Hilda Quaine, 1938"),
    ("title", "Hilda Quaine, 72, with her catch, 1931"),
    ("title", "Hilda Quaine (1888–1962)"),
    ("title", "Hilda Quaine (1888)"),
    ("title", "Hilda Quaine (1937-2011)"),
    ("keyword", "Hilda Quaine, died 2011"),
    ("title", "Hilda Quaine, 14 May 1938"),
    ("title", "HILDA QUAINE, 14"),
    ("title", "the hilda quaine, 14"),
    ("story", "Hilda Quaine rowed. Given by the school in 2019."),
    ("title", "Victoria Park, 2019"),
    ("title", "Olive oil and Hazel Grove, 2019"),
    ("keyword", "Hilda"),
    ("keyword", "Port Chalmers"),
    ("donor", "the school"),
    ("story", "Brandulf Quaffle (1990)"),
    ("story", "Brandulf Quaffle (b. 1890)"),
    ("story", "Brandulf Quaffle, 14, on the bus"),
    ("title", "Brandulf Quaffle, 2009"),
    ("story", "Brandulf Quaffle was here till now"),
    ("story", "Hilda Quaine had it. It is gone now."),
    ("story", "kaisa lives in vaasa"),
    ("story", "the hilda quaine, 021 555 0199"),
    ("story", "Wake hilda quaine at 9"),
    ("story", "Brandulf Quaffle 021 555 0199"),
    ("inscription", "Hilda Quaine lives here, 1911"),
    ("story", "Born in Riga in 1811, Hilda Quaine sold hats."),
    ("story", "The aunt of Port Chalmers, 2009"),
    ("story", "Внук родился в 1811 году."),
    ("story", "Nobody lives in Quaffle Brandlacher House"),
    ("story", "Mr Hobbs at his forge in 1912"),
    ("story", "Mrs Quarrell still had the key."),
    ("story", "In 1931 Dr Haslam still drove a gig."),
    ("story", "Uncle Fred is holding the horse."),
    ("story", "Our neighbour, the late Lettice Quarrell, has the key in the picture."),
    ("story", "Dr. Mrs still has it"),
    ("story", "Miss Peake taught the infants."),
)


@every_row(("field", "words", "name"), TOLD)
def test_words_that_say_that_somebody_lives(field: str, words: str, name: str) -> None:
    assert names_of_the_living(words, field, YEAR, LONGEST) == (name,)


@every_row(("field", "words"), NOT_TOLD)
def test_words_that_do_not(field: str, words: str) -> None:
    assert names_of_the_living(words, field, YEAR, LONGEST) == ()


def test_a_strike_forgets_the_words() -> None:
    names_of_the_living("Halina Dudziak", "donor", YEAR, LONGEST)
    forget_finders()
    assert names_of_the_living.cache_info().currsize == 0
