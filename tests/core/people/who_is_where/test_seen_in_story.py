"""Whether a story says of somebody that they are on the picture (a rule of our own; other languages from memory)."""

from tests.every_row import every_row

from boxlore.core.people.names_in_text.hits import Hit
from boxlore.core.people.who_is_where.seen_in_story import _saying, forget_sentences, names_seen

STORIES = (
    (True, "The boy on the left is [Jaan] Tamm."),
    (True, "Here [Jaan] stands behind the horse."),
    (True, "This is our [Jaan], on the wall."),
    (True, "Second from left [Jaan]"),
    (True, "[Jaan] is the one in front. The boat was new."),
    (True, "The boat was new.\nVasakult teine on [Jaan]."),
    (True, "Слева [Jaan]"),
    (True, "In this photo [Jaan] is six."),
    (True, "[Jaan] is the one pulling a face."),
    (True, "[Jaan] is laughing, because the sun was in her eyes."),
    (True, "In the tin bath [Jaan]"),
    (True, "Miina with her grandson ([Jaan], aged two) on the step."),
    (True, "[Jaan] dressed as a shepherd"),
    (True, "Der Berg [Hans] hat den Ball unter dem Arm."),
    (True, "Onu [Jaan] mängib lõõtsa."),
    (True, "Oncle [Jean] fait la grimace"),
    (True, "[Вера] с куклой"),
    (True, "[Jaan] holding the eel he caught"),
    (True, "[Didi] mit der Zuckertüte."),
    (True, "[Ulla] lacht am lautesten."),
    (True, "Ma cousine [Jeanne] porte le panier."),
    (True, "[Jan] met zijn konijn"),
    (True, "[Luca] alla fontana"),
    (True, "[Imo] and the dog outside the caravan"),
    (False, "[Con] had promised to come."),
    (False, "[Mia] and Con rowed."),
    (False, "[Mia] remembers the dog."),
    (False, "A letter from [Mia]"),
    (False, "The print was lent by uncle [Con]"),
    (False, "[Mia’s] first pram, behind the shop"),
    (False, "[Mia]'s first pram, behind the shop"),
    (False, "Onkel [Ernst] hat das Boot selbst gebaut."),
    (False, "[Ernst] spielte damals Geige."),
    (False, "Oncle [Jean] a mangé toutes les cerises."),
    (False, "[Вера] играла на пианино."),
    (False, "[Jaan] oli siis juba Rootsis."),
    (False, "[Jaan] left in 1960."),
    (False, "[Jaan] was right about it."),
    (False, "[Jaan] fell in."),
    (False, "[Toivo] was a standing joke"),
    (False, "The girl on the left is a stranger. [Jaan] was away."),
    (False, "[Jaan] was away. On the left lies the boat."),
)


@every_row(("is_seen", "story"), STORIES)
def test_what_a_story_says_of_who_is_seen(is_seen: bool, story: str) -> None:
    start, end = story.index("["), story.index("]") - 1
    hit = Hit(start, end, frozenset({"jaan"}))
    assert list(names_seen(story.replace("[", "").replace("]", ""), [hit])) == [hit] * is_seen


def test_what_was_read_is_forgotten_when_words_are_struck() -> None:
    assert list(names_seen("Here Jaan stands.", [Hit(5, 9, frozenset({"jaan"}))]))
    assert _saying.cache_info().currsize
    forget_sentences()
    assert not _saying.cache_info().currsize
