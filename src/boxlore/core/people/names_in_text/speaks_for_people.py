"""Whether words that may be a name are somebody's: what speaks for a person is weighed against what speaks for a thing.

The problem. `Clyde` is a man and a town, `Morris` a neighbour and a car, `Juliet` a cousin and a play; and no list of
towns, cars and plays ends. Whoever asks about each asks about every fourth caption, and who asks about none gives
somebody's name away.

The idea. Each word beside a name speaks for a person or for a thing, more or less. What is borne as a given name and as
nothing else says enough alone; a given name that a town has too wants a second word for it: a family name behind it,
whose something is, whom one is with, what people alone do. A street behind the name, an article before it, quotation
marks and a play speak against it, each with its weight. What speaks for less than ENOUGH is no question.

    Helmi                                   4      a given name, and nothing else
    Clyde in spring                         3 - 2  a given name and a town; a season behind it
    Clyde and Nola                          3 + 2  with somebody
    School play: Romeo and Juliet           4 - 6  a play before it

The weights were chosen on 800 sentences that were written for them (`cases/weighed.txt` beside the tests), so that none
that names somebody is missed and few others ask. What is borne as a name is open data (`borne_names`); the
words beside names are from memory of each language (common practice, no source).
"""  # fmt: skip

from collections.abc import Callable, Collection
from dataclasses import dataclass

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import KIN_WORDS, TITLES
from boxlore.core.people.names_in_text import words_beside_names_table as beside
from boxlore.core.people.names_in_text.borne_names import families, famous, given_too, makes, places
from boxlore.core.people.names_in_text.candidate import Candidate
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, is_noun_in, languages_with
from boxlore.core.people.names_in_text.languages_told import languages_told
from boxlore.core.people.names_in_text.ordinary_words import is_english
from boxlore.core.people.names_in_text.told_as_people import DONE_BY_PEOPLE, FEASTS, is_beside_what_somebody_does
from boxlore.core.people.names_in_text.word_classes_table import THINGS
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary
from boxlore.core.people.who_is_where.small_words_table import CARDINALS, TIMES_OF_THE_YEAR

ENOUGH = 4
"""What speaks for a person at least, where somebody is asked about."""
_FINNISH_FAMILIES = ("set", "sten")
_LONGEST_PET_NAME = 7
"""Letters of a pet name that no table has: `kev`, `gaz`, `shazza`."""
_MARKS = frozenset((",", "&", "+", ", &", "/"))
"""Between two of a list."""


@dataclass(frozen=True, slots=True)
class Says:
    """How much something speaks for a person; less than nothing, for a thing."""

    weight: int
    what: str
    holds: Callable[[Candidate], bool]


def _is_given_otherwise(span: Candidate) -> bool:
    """A given name that is no sure one: `Bevan`, `Uwes`, `Тамаре`."""
    bare = span.bare[0]
    if not bare.isascii():
        return bool(span.given)
    is_given = bare not in CALLED and (bare in given_too() or span.given not in ("", bare))
    return is_given and not span.is_word


def _is_of_its_sentence(span: Candidate) -> bool:
    """A word that its language has, and no name; not behind what leads to a name: `Uncle Snow`."""
    bare = span.bare[0]
    is_led = span.is_borne or span.led in TITLES or span.led in KIN_WORDS or span.led in beside.OF_MANY_ALIKE
    is_noun = "de" in span.languages and is_noun_in(bare, "de") and not span.is_owner
    return span.is_alone and not is_led and bare not in CALLED and (span.is_word or is_noun)


def _is_whose(span: Candidate) -> bool:
    """`Heikin vene`, `Peetri maja`: behind a name in another form stands what somebody has (Finnish, Estonian)."""
    if not span.is_alone or span.given in ("", span.bare[0]) or not span.behind or not span.behind[0].is_small:
        return False
    return bool(languages_with(span.behind[0].folded, ("fi", "et")))


def _is_at_a_corner(span: Candidate) -> bool:
    """`Corner of Elizabeth and Queen Streets`."""
    then = [word.folded for word in span.behind]
    return len(then) > 2 and then[0] in beside.JOINS and then[2] in beside.STREETS


def _is_joined(span: Candidate) -> bool:
    """`Dean and Craig`: joined by a word to another that may be called so."""
    at = span.first
    return at > 1 and span.words[at - 1].folded in beside.JOINS and _is_somebody(span.words[at - 2].folded)


def _is_a_firm_of_two(span: Candidate) -> bool:
    """`Marks & Spencer`, `Ross & Glendining`: two family names with the sign between; not `Ross & Deb`."""
    at = span.last + 1
    if span.first == 1 and span.words[1].before.strip() == "&" and span.is_alone:
        return not (_is_somebody(span.bare[0]) or _is_somebody(span.words[0].folded))
    then = span.words[at] if at < len(span.words) else None
    if then is None or then.before.strip() != "&" or then.is_small or not (span.is_alone and span.begins):
        return False
    bare = span.bare[0]
    is_family = bare in families() or bare in given_too() or (bare in CALLED and at + 1 == len(span.words))
    is_given = then.folded in CALLED or (then.folded in given_too() and bare not in families())
    return is_family and not is_given


def _is_of_a_family(span: Candidate) -> bool:
    """`Perekond Kuusik`, `Familie van Dijk`."""
    is_large = span.words[span.first].spelled.istitle()
    return span.is_borne and (is_large or bool(span.family) or not span.is_word)


def _is_seen_as_a_place(span: Candidate) -> bool:
    """`Clyde in spring`, `Florence from the hill`, `Beverley, Yorkshire`, `Florence, the Duomo`, `Kent hop fields`."""
    if not (span.place and span.is_alone) or span.is_owner:
        return False
    if (
        span.behind
        and span.begins
        and span.behind[0].folded in THINGS
        and not is_beside_what_somebody_does(span.words, span.first)
    ):
        return True
    if span.behind:
        then = span.behind[1].folded if len(span.behind) > 1 else ""
        return span.behind[0].folded in beside.SEEN and (
            then in beside.SEASONS or span.behind[0].folded in beside.SEEN_FROM
        )
    rest = span.words[span.last + 1 : span.last + 3]
    if not rest or rest[0].before.strip() != ",":
        return False
    is_place = rest[0].folded in places() or "_".join(word.folded for word in rest) in places()
    is_seen = not beside.SEEN_AT.isdisjoint(word.folded for word in rest)
    return is_place or is_seen or rest[0].folded in beside.ARTICLES_BEHIND


def _is_of_goods(span: Candidate) -> bool:
    """`David Brown tractor`, `Jack Russell terrier`, `Morris Eight`; not `Ruth's tractor`."""
    if span.is_owner:
        return False
    if not span.is_alone and span.bare[-1] in CARDINALS:
        return True
    at = span.last + 1
    is_numbered = at < len(span.words) and span.words[at].folded.isdigit() and span.words[at].before == ""
    return is_numbered or (bool(span.behind) and span.behind[0].folded in beside.GOODS)


def _is_with_a_place(span: Candidate) -> bool:
    """`Morris Oxford`: a place behind what may be a family name, and no family's; not `Deborah Finchley`."""
    last = span.bare[-1]
    is_family = span.bare[0] in given_too() and span.bare[0] not in CALLED
    return is_family and not span.is_alone and last in places() and last not in families() and span.led not in TITLES


def _is_in_a_place_before(span: Candidate) -> bool:
    """`Elizabeth Bay, Sydney`: a place behind a comma, with which the text ends."""
    if not (span.is_alone and span.place and span.first and span.words[span.first].before.strip() == ","):
        return False
    is_listed = _is_somebody(span.words[span.first - 1].folded)
    return not is_listed and span.last + 1 == len(span.words) and not span.is_owner


def _is_behind_a_family(span: Candidate) -> bool:
    """`Bing Harris`: behind a family name that the text begins with, a name is more likely a firm's."""
    before = span.words[span.first - 1] if span.first and span.words[span.first].before == " " else None
    if before is None or before.is_small or span.led in TITLES or span.led in KIN_WORDS or not span.is_alone:
        return False
    return span.led in families() and span.first == 1


def _is_of_no_dictionary_given(span: Candidate) -> bool:
    return _is_given_otherwise(span) and not span.place and not span.is_ambiguous


def _is_of_many(span: Candidate) -> bool:
    """`The Petersens`, `bei Hofmanns`, `у Ивановых`."""
    is_led = span.led in beside.OF_MANY or span.led in beside.AT_A_FAMILYS
    return span.many and (is_led or not span.bare[0].isascii() or span.bare[0].endswith(_FINNISH_FAMILIES))


def _is_at_a_familys(span: Candidate) -> bool:
    """`bei Hofmanns`, `chez les Morvan`."""
    before = span.words[span.first - 2].folded if span.led in beside.OF_MANY_ALIKE and span.first > 1 else ""
    return span.led in beside.AT_A_FAMILYS or before in beside.AT_A_FAMILYS


def _is_behind_an_article(span: Candidate) -> bool:
    is_article = span.led in ("the", "an") or (span.led == "a" and "en" in languages_told(span.words, span.first))
    return is_article and not span.many


def _is_told_by_things(span: Candidate) -> bool:
    """`Johnny cakes`, `Peggy squares`, with which the text ends; not `The Pringle twins`."""
    if not span.is_alone or span.is_owner or not span.begins or len(span.words) != span.last + 2 or not span.behind:
        return False
    many = span.behind[0].folded
    is_thing = many[:-1] in THINGS or (span.bare[0] in TIMES_OF_THE_YEAR and is_ordinary(many))
    return many.endswith("s") and is_thing and not is_beside_what_somebody_does(span.words, span.first)


def _is_famous(span: Candidate) -> bool:
    """`Schillers Geburtshaus`; not `Dr Haworth`, `i Bellini`."""
    if span.is_borne or span.led in TITLES or span.led in beside.OF_MANY or span.led in beside.OF_MANY_ALIKE:
        return False
    owner = span.bare[0].removesuffix("s")
    if span.is_alone:
        return not famous().isdisjoint((span.bare[0], owner))
    return owner in famous() and owner != span.bare[0] and not span.family


def _is_a_place(span: Candidate) -> bool:
    return (
        span.place and not (span.is_alone and span.given) and span.led not in beside.OF_MANY_ALIKE and not span.is_borne
    )


def _is_theirs_alone(span: Candidate) -> bool:
    """`Jasvinder's shed`: whose something is, in words that no table has."""
    bare = span.bare[0]
    is_somewhere = is_known_anywhere(bare) or is_ordinary(bare) or span.place or bool(span.family)
    is_theirs = span.is_owner and bool(span.behind) and span.is_alone and bare.isascii()
    return is_theirs and not (is_somewhere or bare in CALLED)


OTHERWISE = (
    Says(3, "a given name that may be a family's, or in another form", _is_given_otherwise),
    Says(1, "of no dictionary", _is_of_no_dictionary_given),
)
"""Of who is not told by a sure given name."""
SAYINGS = (
    Says(4, "a greeting before it", lambda span: span.led in beside.GREETINGS and not (span.is_word or span.place)),
    Says(3, "a family by its article", lambda span: span.led in beside.OF_MANY_ALIKE and bool(span.family)),
    Says(2, "a family name, or a form of one", lambda span: bool(span.family) and not is_english(span.bare[-1])),
    Says(4, "a word for families before it", _is_of_a_family),
    Says(2, "a family in the plural", _is_of_many),
    Says(2, "at a family's", _is_at_a_familys),
    Says(1, "theirs", lambda span: span.is_owner or _is_whose(span)),
    Says(3, "theirs, and of no table", _is_theirs_alone),
    Says(1, "with them", lambda span: span.led in beside.WITH or _is_joined(span)),
    Says(6, "born so", lambda span: span.led in beside.BORN),
    Says(-3, "a word of its sentence", _is_of_its_sentence),
    Says(-5, "an article before it", _is_behind_an_article),
    Says(-3, "all of it is a place", _is_a_place),
    Says(-3, "a place behind a given name", _is_with_a_place),
    Says(-2, "in a place", _is_in_a_place_before),
    Says(-2, "behind a family name", _is_behind_a_family),
    Says(-3, "things, behind what is no owner", _is_told_by_things),
    Says(-9, "a month", lambda span: span.is_alone and span.bare[0] in beside.MONTHS),
    Says(-2, "a season, a view or another place behind a place", _is_seen_as_a_place),
    Says(-9, "a work", lambda span: span.work),
    Says(-6, "goods of that make behind it", _is_of_goods),
    Says(-6, "a make of cars", lambda span: span.bare[0] in makes() and not span.is_owner),
    Says(-6, "a make before it", lambda span: span.led in makes()),
    Says(-9, "somebody holy", lambda span: span.led.startswith(beside.HOLY) or span.bare[0].startswith(beside.HOLY)),
    Says(-6, "a street corner", _is_at_a_corner),
    Says(-4, "a firm of two", _is_a_firm_of_two),
    Says(-6, "somebody whom all know", _is_famous),
    Says(-9, "a time of the year, and no more", lambda span: span.bare[0] in TIMES_OF_THE_YEAR and _is_all(span)),
)


_FOR, _AGAINST = (tuple(says for says in SAYINGS if (says.weight > 0) is is_for) for is_for in (True, False))


def weight(span: Candidate, said: int = 0) -> int:
    """How much speaks for a person, beside what was `said` already; what speaks for a thing is asked only of what would
    be ENOUGH without."""
    rows = _FOR if said else (*OTHERWISE, *_FOR)
    said += sum(says.weight for says in rows if says.holds(span))
    return said if said < ENOUGH else said + sum(says.weight for says in _AGAINST if says.holds(span))


def is_anothers_name(bare: str, possible: Collection[str]) -> bool:
    """Whether a word behind a given name is a family name, where capitals tell nothing."""
    if is_english(bare) or is_ordinary(bare):
        return False
    return bare in families() or not languages_with(bare, {"en"} & set(possible) or possible)


def weight_in_one_case(span: Candidate) -> int:
    """How much speaks for a person where capitals tell nothing: a text all in small letters, or all in capitals."""
    return sum(says.weight for says in IN_ONE_CASE if says.holds(span))


def is_called_somehow(span: Candidate) -> bool:
    """Whether the first word is a given name, in any form."""
    return span.bare[0] in CALLED or bool(span.given) or span.bare[0] in given_too()


def _is_everyday(span: Candidate) -> bool:
    bare = span.bare[0]
    return is_english(bare) or is_ordinary(bare) or bare in EVERYDAY or bare in TIMES_OF_THE_YEAR


def _is_beside_another(span: Candidate) -> bool:
    """`pete, jan, stu`, `mum, bevan & tina`: joined to another name, or to one of kin."""
    found = []
    if span.first:
        before = span.words[span.first - 1]
        is_joined = before.folded in beside.JOINS and span.first > 1
        if is_joined or span.words[span.first].before.strip() in _MARKS:
            found.append(span.words[span.first - 2 if is_joined else span.first - 1])
    if span.last + 1 < len(span.words):
        behind = span.words[span.last + 1]
        is_joined = behind.folded in beside.JOINS and span.last + 2 < len(span.words)
        if is_joined or behind.before.strip() in _MARKS:
            found.append(span.words[span.last + 2 if is_joined else span.last + 1])
    return any(_is_somebody(word.folded) for word in found)


def _is_somebody(folded: str) -> bool:
    return folded in CALLED or folded in given_too() or folded in KIN_WORDS or folded == "me"


def _is_all(span: Candidate) -> bool:
    """Whether nothing else is told: but for numbers, and how a file is called."""
    others = (*span.words[: span.first], *span.words[span.last + 1 :])
    return all(word.folded.isdigit() or word.folded in beside.OF_FILES for word in others)


def _is_of_no_dictionary(span: Candidate) -> bool:
    bare = span.bare[0]
    is_word = is_known_anywhere(bare) or is_english(bare) or is_ordinary(bare) or span.place
    is_listed = span.first > 0 and span.words[span.first].before.strip() == ","
    is_long = len(bare) > _LONGEST_PET_NAME
    return not (is_word or is_listed or is_long or is_called_somehow(span) or bare in beside.OF_FILES)


def _is_no_word(span: Candidate) -> bool:
    return is_called_somehow(span) and not _is_everyday(span)


def _is_done(span: Candidate) -> bool:
    does = span.behind[0].folded if span.behind else ""
    return is_called_somehow(span) and (does in DONE_BY_PEOPLE or does in FEASTS)


def _is_titled(span: Candidate) -> bool:
    return span.led in beside.TITLES_ALONE and not (span.is_word or span.is_ambiguous)


def _is_with_them(span: Candidate) -> bool:
    return span.led in beside.WITH or span.led in beside.LITTLE or span.led in KIN_WORDS


def _has_given_it(span: Candidate) -> bool:
    """`from ross`, and no more."""
    return (
        is_called_somehow(span) and span.led in beside.GIVING and span.first == 1 and span.last + 1 == len(span.words)
    )


def _is_in_a_place(span: Candidate) -> bool:
    return span.is_alone and span.place and span.led in beside.AT and not (span.is_owner or _has_given_it(span))


IN_ONE_CASE = (
    Says(1, "a given name", is_called_somehow),
    Says(1, "and no word of every day", _is_no_word),
    Says(1, "nor of its sentence", lambda span: _is_no_word(span) and not (span.is_word or span.is_ambiguous)),
    Says(1, "nor of any language", lambda span: _is_no_word(span) and not is_known_anywhere(span.bare[0])),
    Says(2, "a family name behind it", lambda span: not span.is_alone),
    Says(2, "theirs", lambda span: span.is_owner),
    Says(2, "with them", _is_with_them),
    Says(2, "beside another", _is_beside_another),
    Says(2, "of no dictionary", _is_of_no_dictionary),
    Says(2, "who gave it", _has_given_it),
    Says(1, "it begins the text", lambda span: span.first == 0 and _is_no_word(span)),
    Says(2, "nothing else is told", lambda span: is_called_somehow(span) and _is_all(span)),
    Says(3, "what people do, or their feast", _is_done),
    Says(4, "a title before it", _is_titled),
    Says(6, "a word for families before it", _is_of_a_family),
    Says(-3, "an article before it", lambda span: span.led in beside.ARTICLES and not span.is_owner),
    Says(-3, "a place in which something is", _is_in_a_place),
)
