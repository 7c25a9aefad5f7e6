"""Whether a word of every day that is a name too is plainly read as the word, by its sentence.

The problem. Where a living May, Mark, Rose, Box and Church are in one collection, each sentence with such a word would
be a question, and stay out until it is answered.

The idea. A capital says that a name is meant only where nothing else makes the word large: at the beginning of a
sentence, in a title in which every word is large, and in a text all in small letters or all in capitals it tells
nothing. There what follows tells, for a name is followed by what somebody does or has, and no name by

    a thing             `Church picnic`, `Stone walls`, `Rose petals`: a noun alone is no verb in the form that stands
                        behind a name. Of a given name only plants and stuff, and plurals that are no verbs: `Rose
                        school photo` is written of her in haste
    a quality's owner   `Young women`, `White and blue dress`
    `of`                `Box of plates`; of a given name only before things in the plural: `Miles of fences`
    its object          `Mark the back`, `Pat him`, `Hope you are well`: what somebody is told, or wishes, to do
    a verb's base       `Will yield`, `Hope to win`: of somebody it is told in another form, `Will yields`
    `was` and what is   done to things alone: `Grace was said`
    `unknown`, `torn`   what is said of things
    itself              `Bill after bill`

Anywhere in a sentence a word is one at the end of a thing of two words (`Union Jack`), behind `the` (`the Church was
full`; not `the Hill girl`, `the Mark I knew`), a month between words of time (`one May evening`), and the last word of
a place or a day (`Signal Hill`, `at Knox Church`, `Anzac Day`). Behind a title or a given name it is never one.

What each word can be is counted in WordNet 3.0 (`word_classes_table`); the rest is of our own. All else is a question.
"""

from collections.abc import Iterable, Sequence
from functools import cache

from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.dates.languages.english import ENGLISH
from boxlore.core.dates.languages.language import Language
from boxlore.core.people.names.short_forms_table import EVERYDAY, TIMES
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import FAMILY_WORDS, KIN_WORDS, PARTICLES, TITLES
from boxlore.core.people.names_in_text.known_words import languages_with
from boxlore.core.people.names_in_text.ordinary_words import (
    DOES,
    MAKES_A_VERB,
    behind_of,
    ends_a_thing,
    english_words,
    is_an_english_doer,
    is_english,
)
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, Word
from boxlore.core.people.names_in_text.word_classes_table import (
    ABSTRACT,
    COMMANDS,
    GROWN,
    PEOPLE,
    QUALITIES,
    THINGS,
    THINGS_DONE,
    VERBS,
)
from boxlore.core.statements import fold

_SHORTEST_OF_A_TITLE, _FEWEST_OF_A_TITLE = 4, 2
_ENDS = '.!?:;"“„«(\n'
_OBJECTS = frozenset("the a an this these those each every any no all both it them him me us my your our".split())
_WHOLE_OBJECTS = frozenset("it them him me us".split())
"""Behind a verb these need no noun."""
_DOES = DOES | frozenset("someone anybody everybody everyone anything something".split())
_WISHES = {
    "may": _DOES,
    "will": _DOES,
    "hope": _DOES - {"be", "have", "the", "god"} | {"all"},
    "grant": frozenset(("us",)),
}
"""What stands behind these at the beginning of a sentence, where they are no names."""
_DONE_IN_HOPE = frozenset("see hear be come get go send write find have visit bring".split())
_NO_WORD = Word("", "", "", 0, 0, "")
_DONE_TO_THINGS = frozenset("said sung mown sown brewed baked poured printed paved signed glazed".split())
"""What is done to things alone (common practice, no source); somebody is said to be something."""
_WAS = frozenset("was is were are been being".split())
_AGAIN = frozenset("after by upon to for and".split())
_ITS_YEAR = frozenset(("year", "same", "following", "previous", "next"))
_PAST = frozenset(("drew",))
"""Names that are the past of a verb, which takes its object."""
_AUXILIARIES = frozenset(("may", "will"))
_DOERS = frozenset("i you he she it we they that this there who which what one nobody somebody".split())
_OF_SOMEBODY = frozenset("i we who whom whose that you he she they my our".split())
"""Behind `the Mark …` these tell of somebody."""
_KEPT_APART = frozenset(
    "wedding funeral christening baptism confirmation reunion engagement birthday grave birth".split()
)
"""What a family has, written behind its name: `Hill wedding, 1950`."""
_SAID_OF_THINGS = frozenset("unknown uncertain illegible torn blank".split())
_ONE_TIME = frozenset("last next one every each".split())
_WHEN = frozenset("in of by until since from during".split())
_TILL = frozenset("by until till since before after".split())
_GOES_ON = frozenset("the we he she it they i all there everything nobody".split())
_A_TIME = _ONE_TIME | frozenset("a an the".split())
_OF_TIMES = frozenset(
    "morning evening afternoon night day days weekend week weeks holiday holidays weather sun sunshine rain frost wind "
    "dust heat moon sky storm flood floods blossom flowers flower snow light sale fair".split()
)
_HEADS = frozenset(
    "hill church chapel field fields river rivers wood woods park bay lake street place hall house lane cross ford "
    "pool pond marsh bridge mill forest cliff harbour brook spring springs gate day glen dale garden gardens".split()
)
"""The last words of names of places (common practice, no source)."""
_AT_PLACES = frozenset(("the", "at", "in"))
_BEHIND_PLURALS = frozenset(
    "of in on by at were are from for with along around round over under near behind beside above below".split()
)
_BEFORE_NAMES = TITLES | FAMILY_WORDS
_NO_THINGS = CALLED | FAMILY_WORDS | _KEPT_APART
_NO_PLACES = CALLED | EVERYDAY
_COLOURS = frozenset("black white brown green grey gray blue red yellow pink purple orange".split())
_MORE_QUALITIES = QUALITIES - EVERYDAY | _COLOURS
_PARTICLES = frozenset("up out down off away".split())
_FAMILYS_OWN = frozenset("place home side lot clan crowd end".split())
"""What stands behind a family name, besides `THINGS`."""
_MANY_PEOPLE = frozenset("women men children people folk ladies".split())
_SOME_PEOPLE = FAMILY_WORDS | _MANY_PEOPLE
_KIN_TOLD = frozenset((*KIN_WORDS, "boy", "girl", "lad", "lass", "eldest", "youngest", "twin", "twins"))
_ADDRESSES = frozenset("mr mrs miss ms mx dr".split())
_PAST_AS_PRESENT = frozenset(
    "put cut set read let hit hurt cast shut split spread cost beat burst bet quit come run".split()
)
"""Verbs of which a past form is the base."""
_GROWS = {"grew": ("over", "on", "round", "around", "along", "through"), "grows": ("over", "on", "round", "through")}
_COVERS = frozenset("covers covered smothers smothered".split())
_BUILT = frozenset(
    "wall walls porch roof house gate fence chimney veranda verandah tower ruin ruins church chapel arch gable window "
    "windows barn shed hut cottage balcony trellis pergola pillar post trunk stump".split()
)
_GROWN = frozenset("grown crept spread climbed".split())
_IN_LEAF = frozenset("bloom flower blossom leaf bud".split())
_ALSO_QUALITIES = frozenset(("open", "free"))
_BUILDINGS_OWN = frozenset(
    "choir spire steps tower hall bell bells organ porch grounds roof door doors fete bazaar terminus tram".split()
)
"""What a church, a hall or a hill has (common practice, no source)."""
_DIGITS_OF_A_YEAR = 4
_SIDES = frozenset("side corner edge bottom".split())
_OWNERS = frozenset("my our your his her its their".split())
_WHERE = frozenset("on near under over above along".split())
_PARTS_OF_THINGS = frozenset("back front top bottom edge side corner reverse verso".split())
_ARTICLES = frozenset("a an the its no any some each every another".split())
_BEFORE_A_NOUN = _ARTICLES | QUALITIES


def is_title_case(words: Sequence[Word]) -> bool:
    """Whether every word of some length is large, so that a capital tells nothing: `Church Picnic at Long Beach`."""
    long = [word for word in words if len(word.folded) >= _SHORTEST_OF_A_TITLE and word.spelled[0].isalpha()]
    return len(long) > _FEWEST_OF_A_TITLE and all(word.spelled[0].isupper() for word in long)


def may_be_english(words: Sequence[Word], *, is_ascii: bool) -> bool:
    """Whether more than half of the small words are English ones: `Bär war auch da` tells of no war, nor `Stark bar
    säcken` of a bar. A text that `is_ascii` may be English too where none of them is a small word of another language
    (`Stark bar en korg`)."""
    small = [APOSTROPHES.split(word.folded)[0] for word in words if word.spelled[0].islower()]
    if is_ascii and _small_words_elsewhere().isdisjoint(small):
        return True
    return 2 * sum(map(_is_english, small)) > len(small) or not small


def _is_english(folded: str) -> bool:
    return is_english(folded) or is_ordinary(folded) or folded in QUALITIES or folded in VERBS


_SMALL = "noise and or not from to between before after since until".split()
"""Kinds of words of dates: what says nothing, and what joins or leads (`en`, `och`, `im`, `sobre`)."""


@cache
def _small_words_elsewhere() -> frozenset[str]:
    """Small words in which dates of other languages are told, and which no English text has; without particles, which
    stand in names of every text."""
    elsewhere = set().union(*(_told(language, _SMALL) for language in LANGUAGES if language is not ENGLISH))
    elsewhere -= _told(ENGLISH, ENGLISH.words) | _DOERS | _OBJECTS | PARTICLES
    return frozenset(word for word in elsewhere if len(word) > 1 and not _is_english(word))


def _told(language: Language, kinds: Iterable[str]) -> set[str]:
    return {fold(word) for kind in kinds for word in language.words.get(kind, "").replace("|", " ").split()}


_FINITE = frozenset("were are had have grew ran came went fell hung lay stood".split())
"""What is told of things or people, and is no quality: `fried` may be of the fish that somebody eats."""


_OF_THE_COLLECTION = frozenset("photos pictures prints snaps slides letters albums negatives cards portraits".split())


def is_read_as_a_word(words: Sequence[Word], at: int, *, is_called: bool, is_told: bool, capitals_tell: bool) -> bool:
    """Whether an English word that is a name too is the word here.

    `is_called` says that somebody is called so by a given name, `is_told` that the name was told in this
    form; `capitals_tell` that it is not the whole text that makes words large or small.
    """
    folded = words[at].folded
    if not is_called and (_is_of_an_office(words, at) or _is_an_office(words, at)):
        return True
    if _is_behind_a_name(words, at):
        return False
    if ends_a_thing(words, at):
        return True
    begins = not at or any(sign in words[at].before for sign in _ENDS)
    behind = behind_of(words, at, 4)
    if not is_called and _ends_a_place(words, at, begins=begins):
        return True
    if behind and behind[0].before == "-" and behind[0].spelled[0].islower() and behind[0].folded not in CALLED:
        return begins  # `Ivy-covered`
    if not is_told:
        return (begins or not capitals_tell) and _is_another_form(folded, behind)
    if not is_ordinary(folded) or (behind and behind[0].folded in DOES and not is_an_english_doer(words, at)):
        return False
    if _is_behind_the(words, at, behind, is_called=is_called) or _is_a_time(words, at, behind):
        return True
    if capitals_tell and not begins:
        return False
    if _is_of_a_list(words, at):
        return True
    if not capitals_tell and words[at].spelled[0].islower() and _is_small_word(words, at, behind):
        return True
    return bool(behind) and _goes_on_as_a_word(folded, behind, is_called=is_called, capitals_tell=capitals_tell)


def are_things_that_did(words: Sequence[Word], at: int) -> bool:
    """`Teddy bears were dear`, `Rosemary hedges ran down to the gate`: behind things stands what they did, which
    leaves no verb for somebody. Not `Teddy always had one`, nor `Teddy girls were`; pictures may be of somebody."""
    behind = [word for word in behind_of(words, at, 2) if word.before == " " and word.is_small]
    if len(behind) < 2 or behind[1].folded not in _FINITE:
        return False
    things = behind[0].folded
    is_many = things.endswith("s") and not things.endswith(("ss", "ys", "wards", "times", "is", "us"))
    return is_many and things not in _NO_THINGS | _OF_THE_COLLECTION and not _is_person(things)


def _is_of_an_office(words: Sequence[Word], at: int) -> bool:
    """`the King's visit`: no family has an article and an owner's ending."""
    stem, *ending = APOSTROPHES.split(words[at].folded)
    is_behind = at > 0 and words[at].before == " " and words[at - 1].folded == "the"
    behind = behind_of(words, at)
    is_somebodys = bool(behind) and (_is_person(behind[0].folded) or behind[0].folded in _KIN_TOLD)
    return is_behind and ending == ["s"] and is_ordinary(stem) and stem in TITLES and not is_somebodys


def _is_an_office(words: Sequence[Word], at: int) -> bool:
    """`King George`, `Old King Cole`."""
    behind = behind_of(words, at)
    is_titled = at > 0 and words[at - 1].folded in _ADDRESSES
    return (
        words[at].folded in TITLES
        and not is_titled
        and bool(behind)
        and behind[0].spelled.istitle()
        and behind[0].before == " "
    )


def is_ordinary(folded: str) -> bool:
    """Whether a folded word is English, a plural too."""
    if folded in english_words() or folded in _PAST or folded in TIMES or folded in COMMANDS or folded in PEOPLE:
        return True
    return _is_noun(folded) or any(map(_is_noun, _singulars(folded)))


def _is_noun(folded: str) -> bool:
    return folded in THINGS or folded in THINGS_DONE


def _is_behind_a_name(words: Sequence[Word], at: int) -> bool:
    """Whether a title, a given name or a word of kin stands right before."""
    if not at or words[at].before not in (" ", ". ", "-"):
        return False
    before = words[at - 1].folded
    return before in _BEFORE_NAMES or (before in CALLED and not is_english(before) and before not in THINGS)


def _goes_on_as_a_word(folded: str, behind: Sequence[Word], *, is_called: bool, capitals_tell: bool) -> bool:
    """By what stands behind a word that is large, or small, for no reason of its own."""
    after = behind[0]
    then, further = (word.folded for word in (*behind[1:3], _NO_WORD, _NO_WORD)[:2])
    if after.spelled[0].islower() and _is_so_told_of_no_name(folded, after.folded, then, further):
        return True
    if after.folded in _WISHES.get(folded, ()) or (folded == "hope" and after.folded == "to" and then in _DONE_IN_HOPE):
        return True
    if folded in COMMANDS and folded not in TIMES and _is_object(behind):
        return True
    if not is_called and (after.folded in _SAID_OF_THINGS or _lies_somewhere(folded, behind)):
        return True
    if after.folded == "of":
        is_of_a_name = capitals_tell and any(word.spelled[0].isupper() for word in behind)
        is_of_things = _is_plural_thing(then) or (then not in MAKES_A_VERB and _is_plural_thing(further))
        return bool(then) and not is_of_a_name and (not is_called or is_of_things)
    if capitals_tell and after.spelled[0].isupper() and is_called:
        return False
    if folded in GROWN and _grows_there(behind):
        return True
    is_base = after.folded in VERBS - _PAST_AS_PRESENT
    if not is_called and is_base and after.spelled[0].islower():
        return True  # `Green paint`: of somebody it would be `paints`
    if not is_called and not after.spelled[0].isupper() and _is_of_things(after.folded, then):
        return True
    if folded in QUALITIES and after.folded in QUALITIES and (_is_plural_thing(then) or then in _MANY_PEOPLE):
        return True
    if folded in QUALITIES and then == "of" and any(map(is_english, _singulars(after.folded))):
        return True  # `Young fields of rye`: nobody does something of something
    if folded in QUALITIES and (_is_owner(after.folded, is_called=is_called) or _is_and_another(behind)):
        return not _is_person(then)
    is_done_up = then in _PARTICLES and len(behind) > 2 and behind[2].folded in MAKES_A_VERB
    if then in MAKES_A_VERB or (is_done_up and after.folded.endswith("s")):
        return False
    if is_called and after.folded in GROWN and (then in english_words() or _is_noun(then)):
        return False
    return _is_thing(folded, after.folded, is_called=is_called)


def _is_of_things(after: str, then: str) -> bool:
    """Whether what stands behind a word that is no given name makes it a thing: `Place your bets`, `Port side of the
    launch`, `Field mushrooms in a hat`; a number counts it: `Hill 60`."""
    if after == "your" or after in _SIDES or (after.isdigit() and len(after) < _DIGITS_OF_A_YEAR):
        return True
    is_noun = is_english(after[:-1]) or bool(languages_with(after[:-1], ("en",)))
    is_many = after.endswith("s") and is_noun and after[:-1] not in VERBS | COMMANDS
    return is_many and then in _BEHIND_PLURALS and not _is_person(after) and after not in _OF_THE_COLLECTION


def _is_of_a_list(words: Sequence[Word], at: int) -> bool:
    """`Faith, hope and charity`: what nobody sees, without an article."""
    if len(words) < at + 4 or words[at + 1].before.strip() != "," or words[at + 2].folded != "and":
        return False
    others = (words[at + 1], words[at + 3])
    return all(word.spelled[0].islower() and word.folded in ABSTRACT | EVERYDAY for word in others)


def _is_so_told_of_no_name(folded: str, after: str, then: str, further: str) -> bool:
    """`Will yield`, `Hope to win`, `Grace was said`, `Bill after bill`, `June that year`, `Drew a line`."""
    if folded in _AUXILIARIES and after in VERBS:
        return True
    if after == "to":
        return folded in ("hope", "will") and then in VERBS
    if after in _WAS:
        return then in _DONE_TO_THINGS and further != "to"
    if after in _AGAIN:
        return then == folded
    if folded in TIMES and after in ("that", "this", "the", "of"):
        return then in _ITS_YEAR
    return folded in _PAST and after in ("a", "an") and not _is_person(then)


def _is_thing(folded: str, after: str, *, is_called: bool) -> bool:
    """Whether the word behind is a thing that the word tells more of."""
    if after in _NO_THINGS or after.removesuffix("s") in _KEPT_APART:
        return False
    if folded in TIMES and is_called:
        return after in _OF_TIMES or _is_plural_thing(after)
    return _is_plural_thing(after) or (after in GROWN if is_called else _is_noun(after))


def _singulars(folded: str) -> tuple[str, ...]:
    """What a plural may be the plural of."""
    ends = [
        folded[: -len(end)] + instead for end, instead in (("ies", "y"), ("es", ""), ("s", "")) if folded.endswith(end)
    ]
    return tuple(stem for stem in ends if len(stem) > 2 and not folded.endswith("ss"))


def _is_plural_thing(folded: str) -> bool:
    return any(stem in THINGS for stem in _singulars(folded)) and folded not in FAMILY_WORDS


def _is_person(folded: str) -> bool:
    stem = APOSTROPHES.split(folded)[0]
    return stem in _SOME_PEOPLE or any(word in PEOPLE for word in (stem, *_singulars(stem)))


def _is_owner(folded: str, *, is_called: bool) -> bool:
    """Whether a quality may be of it: of a given name, `Sandy`, only a thing or many people."""
    return _is_noun(folded) or _is_plural_thing(folded) or (_is_person(folded) and not (is_called and folded in PEOPLE))


def _is_and_another(behind: Sequence[Word]) -> bool:
    return behind[0].folded == "and" and len(behind) > 1 and behind[1].folded in _MORE_QUALITIES | _ALSO_QUALITIES


def _grows_there(behind: Sequence[Word]) -> bool:
    """`Ivy grew over the porch`, `Ivy has grown over it`, `Ivy covers the whole wall`, `Heather in bloom`; not `Ivy
    grew up`, `Ivy covers the cake`, `Ivy has grown since`."""
    folded = [word.folded for word in behind]
    if folded[0] == "in":
        return not _IN_LEAF.isdisjoint(folded[1:3])
    if folded[0] in ("has", "had") and len(folded) > 2:
        return folded[1] in _GROWN and folded[2] in _GROWS["grew"]
    if folded[0] in _COVERS:
        return not _BUILT.isdisjoint(folded)
    return len(folded) > 1 and folded[1] in _GROWS.get(folded[0], ())


def _lies_somewhere(folded: str, behind: Sequence[Word]) -> bool:
    """`Label on the tin`, `Rivers and lakes`; not `Hill on the left`."""
    is_many = any(stem in THINGS for stem in _singulars(folded))
    if behind[0].folded == "and" and len(behind) > 1:
        return is_many and behind[1].spelled[0].islower() and _is_plural_thing(behind[1].folded)
    if behind[0].folded not in _WHERE or folded in PEOPLE:
        return False
    noun = next((word.folded for word in behind[1:] if word.folded not in _BEFORE_A_NOUN), "")
    return noun in _PARTS_OF_THINGS or _is_told_thing(noun)


def _is_told_thing(noun: str) -> bool:
    is_known = _is_noun(noun) or is_english(noun) or _is_plural_thing(noun)
    return is_known and not _is_person(noun) and noun not in CALLED


def _is_object(behind: Sequence[Word]) -> bool:
    """Whether a thing that something is done to follows; not somebody: `Mark the baker`."""
    first = behind[0].folded
    if first not in _OBJECTS:
        return False
    noun = next((word.folded for word in behind[1:] if word.folded not in QUALITIES), "")
    return first in _WHOLE_OBJECTS or _is_told_thing(noun)


def _is_behind_the(words: Sequence[Word], at: int, behind: Sequence[Word], *, is_called: bool) -> bool:
    """`the Church was full`, and `our Church`, where nobody is called so; not `the Hill girl`, `the Hill farm`, `the
    Rose I knew`, `the Will Tamm of …`."""
    before = words[at - 1].folded if at and words[at].before == " " else ""
    if before != "the" and (is_called or before not in _OWNERS):
        return False
    if not behind:
        return True
    after = behind[0]
    if after.spelled[0].isupper() and after.spelled[1:].islower():
        return False
    is_somebodys = after.folded in _OF_SOMEBODY or after.folded in _FAMILYS_OWN
    is_of_it = _is_noun(after.folded) and after.folded not in _AUXILIARIES
    return not (is_somebodys or _is_person(after.folded) or is_of_it)


def _is_a_time(words: Sequence[Word], at: int, behind: Sequence[Word]) -> bool:
    """`last May`, `a May morning`, `a hot August day`, `in late June`, `from April to August`, `By May the …`."""
    if words[at].folded not in TIMES or not at or words[at].before not in (" ", "-"):
        return False
    before = [words[number].folded if number >= 0 else "" for number in range(at - 3, at)]
    after = [*(word.folded for word in behind), "", "", ""]
    if before[2] == "from" and after[0] == "to":
        return after[1] in TIMES and after[2] in _GOES_ON
    if before[2] == "to":
        return before[0] == "from" and before[1] in TIMES and after[0] in _GOES_ON
    if behind and behind[0].spelled[0].isupper():
        return False
    if before[2] in _ONE_TIME or (before[2] == "late" and before[1] in _WHEN):
        return True
    is_first = at == 1 or any(sign in words[at - 1].before for sign in _ENDS)
    if before[2] in _TILL and is_first and after[0] in _GOES_ON:
        return True
    return after[0] in _OF_TIMES and not _A_TIME.isdisjoint(before[1:])


def _ends_a_place(words: Sequence[Word], at: int, *, begins: bool) -> bool:
    """`Signal Hill`, `at Knox Church`, `the Ohio River`, `St Paul’s Church`, `Anzac Day`, `a Catholic Church`; not
    `Bunny Hill`, which may be somebody's pet name, nor `Poor Hill`."""
    if begins or words[at].before != " " or words[at].folded not in _HEADS:
        return False
    before = words[at - 1]
    if not before.spelled[0].isupper() or before.folded in _NO_PLACES:
        return False
    if words[at].folded == "day":
        return True
    behind = behind_of(words, at)
    if before.folded not in CALLED and behind and behind[0].is_small and _is_of_a_building(behind[0].folded):
        return True
    before_that = words[at - 2].folded if at > 1 and before.before == " " else ""
    if _is_noun(before.folded) or APOSTROPHES.search(before.folded):
        return before.folded not in GROWN
    return before_that in _AT_PLACES or bool(before_that and before.folded in QUALITIES)


def _is_of_a_building(folded: str) -> bool:
    """`Knox Church choir`; not `Knox Church wedding`, nor `Xanthe Hill photo`."""
    return folded in _BUILDINGS_OWN


def _is_another_form(folded: str, behind: Sequence[Word]) -> bool:
    """Whether a form that nobody told of a name is an English word: `Marked`, `Market`, `Roses by the gate`."""
    if folded in CALLED or (behind and behind[0].spelled[0].isupper()):
        return False
    if any(is_ordinary(stem) for stem in _singulars(folded)):
        is_two = len(behind) > 1 and behind[0].folded == "and" and _is_plural_thing(behind[1].folded)
        return is_two or (bool(behind) and (behind[0].folded in _BEHIND_PLURALS or behind[0].spelled[0].isdigit()))
    is_done = folded.endswith("ed") and any(
        stem in COMMANDS or is_english(stem) for stem in (folded[:-2], folded[:-1], folded[:-3])
    )
    return is_done or (folded in english_words() and (_is_noun(folded) or folded in QUALITIES))


def _is_small_word(words: Sequence[Word], at: int, behind: Sequence[Word]) -> bool:
    """In a text all in small letters: `the sun rose`, `we may go`, `a mark on the wall`."""
    folded, before = words[at].folded, words[at - 1].folded if at and words[at].before == " " else ""
    after = behind[0].folded if behind else ""
    if before in _ARTICLES:
        return not (_is_person(after) or after in CALLED)
    if folded in _AUXILIARIES:
        return before in _DOERS or after in ("be", "not", "never", "have")
    return folded == "rose" and (before in THINGS or before in _DOERS)
