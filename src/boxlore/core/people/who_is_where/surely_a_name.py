"""Whether what was read as a name is surely one: each word of it is known as a part of names, or looks like one.

What holds for every person told by a name: no sign in it that no name has, no letter alone, no word of every day before
a given name (`Pushing Olwen`), no form of a given name that a sentence gives it (`Kaarlon sylissä`). Anything else is
kept as told, asks, and is nobody until that is answered: a question is better than somebody invented.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache

from boxlore.core.people.names import lists_table as lists
from boxlore.core.people.names.tokens import CALLED, Token, token_of, tokens_of, written
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_WORDS, RELIGIOUS_TITLES, TITLES
from boxlore.core.people.names_in_text.inflections import cyrillic_forms, key_of
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.names_in_text.text_normalising import CYRILLIC
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.companions import kin_in
from boxlore.core.people.who_is_where.dictionary_forms import family_behind_with, given_of, likely_given_of
from boxlore.core.people.who_is_where.frames_table import SAID
from boxlore.core.people.who_is_where.kin_words import is_form_of_kin, own_relation
from boxlore.core.people.who_is_where.order import Item
from boxlore.core.people.who_is_where.what_is_not_known import KNOWING
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold

GIVEN_SOMEWHERE = lists.GIVEN_ELSEWHERE.union(
    lists.JAPANESE_GIVEN,
    lists.GIVEN_IN_PICTURES,
    lists.FAMILY_TOO,
    ("les", "singh", "kaur", "begum", "bibi", "devi", "kumar"),
)
"""Given names of some lands, and those that are family names too."""

_NO_SIGN_OF_NAMES = re.compile(r"[~:=<>*_@{}\\^|%$€£\[\]]")
_ASIDE = re.compile(r"""\([^()]*\)|["“„«'‘][^"”“»']*["”“»'’](?!\w)""")
"""A nickname in quotes, and what stands in brackets: `William (Bill) Henry Cole` is one."""

_SHORTEST_FORM = 5
"""Letters of a word before it is taken for a form of a name: shorter ones are names of their own."""


def ask_of_doubtful(items: Sequence[Item], known: KnownNames) -> None:
    """Let each name that is not surely one ask, so that nobody is made of it."""
    shouted = all(item.person.words.isupper() for item in items)
    for item in items:
        if item.is_name and item.person.is_person and (question := _question(item, known, shouted)):
            item.person, item.is_name = replace(item.person, asks=question, is_person=False), False
            item.width = 0 if _is_a_house(tokens_of(item.person.words), known) else item.width


def _is_a_house(tokens: Sequence[Token], known: KnownNames) -> bool:
    """`Rose Cottage`, `Villa Rosa`, and no `Mr. House`: what a house is called may be told as if it were somebody."""
    if len(tokens) < 2 or known.is_family(tokens[-1].plain) or tokens[0].plain in KIN_WORDS.keys() | TITLES:
        return False
    return (tokens[-1].plain in _HOUSES and not tokens[-1].is_given) or tokens[0].plain in _HOUSES_BEFORE


_HOUSES = frozenset(
    "cottage house farm farmhouse homestead lodge villa manor grange chalet haus huis hoeve hus gard stuga talo talu "
    "maja mois muiza dwor dvor".split()
)
"""Words behind which a house stands by its name; some are family names too, so that it is asked."""

_HOUSES_BEFORE = frozenset("villa chalet chateau haus huize casa dom".split())
"""Those that stand before it."""


def is_a_people(words: str) -> bool:
    """Whether a people of Aotearoa is told: `Ngāi Te Rangi`, `Te Arawa`."""
    tokens = tokens_of(words)
    return fold(words) in _PEOPLES or (tokens[0].plain in ("ngai", "ngati") and len(tokens) < _LONGEST_PEOPLE)


def told_in_remarks(items: Sequence[Item], known: KnownNames) -> list[Placed]:
    """Whoever is named only in what is noted of somebody: each asks, and nobody is made of them."""
    too: list[Placed] = []
    told_too = {token.plain for item in items if item.is_name for token in tokens_of(item.person.words)}
    told_too |= {fold(item.person.words) for item in items}
    for at, item in enumerate(items):
        told, note = item.person.words, _without_places(item)
        if held := _who_holds(item, known):
            too.append(Placed(held, 0, asks=f"Is “{held}” in the picture too, where “{told}” is told of it?"))
        if not ((item.person.is_person or item.is_several) and told):
            continue
        of_whom = f"where “{note}” is told of {told}?"
        where = f"in the picture too, {of_whom}"
        names = [
            _as_in_a_dictionary(name, known, in_case=_is_in_case(name, note))
            for name in _names_in(note, known)
            if fold(name) not in told_too and name not in item.person.family
        ]
        names += [kin for kin in kin_in(note) if fold(kin) not in told_too and kin not in names]
        too += [Placed(name, 0, asks=f"Is “{name}” {where}", is_person=False) for name in names]
        too += [
            Placed(group, 0, asks=f"Who are “{group}”, {of_whom}", is_person=False)
            for group in _groups_in(note)
            if not _are_named_behind(items, at)
        ]
        tells_me = any(token.text in _ME for token in tokens_of(note)) and not _says_not_known(note)
        if tells_me and not any(own_relation(other.person.words) == "self" for other in items):
            too.append(Placed("me", 0, asks=f"Is the teller {where}", is_person=False))
    return too


def _are_named_behind(items: Sequence[Item], at: int) -> bool:
    """Whether those who are told beside somebody are named at once: `with their twins, Joan and Jean`."""
    behind = [other for other in items[at + 1 :] if other.person.note != items[at].person.note][:2]
    joined = [other.joined for other in behind if other.part == items[at].part and other.is_name]
    return joined in (["", "and"], ["", "too"], ["", ""])


def _says_not_known(note: str) -> bool:
    """`não me lembro do nome`, of the teller's memory."""
    return any(token.plain in KNOWING for token in tokens_of(note))


def _is_in_case(name: str, note: str) -> bool:
    """Whether a name stands behind a word that changes its form: `ar mazo Kārli`."""
    part = next((part for part in note.split(", ") if name in part), "")
    return fold(part.split(" ")[0]) in small_words.TAKE_A_CASE


def _as_in_a_dictionary(name: str, known: KnownNames, *, in_case: bool) -> str:
    """A name in the form that it has by itself, where that is one alone: `Tõnu` of `oma poja Tõnuga`."""
    token = token_of(name)
    if known.is_given(token.plain) or (token.is_given and not (in_case and given_of(token, known))):
        return name
    form = _given_by_itself(token, known)
    return name if not form or " or " in form else form


def _given_by_itself(token: Token, known: KnownNames) -> str:
    """The given name of which a word is the form behind `with`, or one or two of which it is another form."""
    return given_of(token, known) or name_of_form(token, known)


def name_behind_with(tokens: Sequence[Token], known: KnownNames) -> str:
    """The name of which the words are the form behind `with`: `Олег Крылов` of `Олегом Крыловым`; empty where no given
    name is found, or the words are that name."""
    led = next((at for at, token in enumerate(tokens) if not _leads_to_a_name(token)), 0)
    first, others = tokens[led], tokens[led + 1 :]
    given = _given_by_itself(first, known)
    if not given or (" or " in given and others):
        return ""
    return " ".join([given, *(family_behind_with(token.text, given) for token in others)])


def _by_its_ending(tokens: Sequence[Token]) -> str:
    """`teta Bronė` of `teta Brone` behind `su`: what a name that nobody knows may be by itself."""
    led = next((at for at, token in enumerate(tokens) if not _leads_to_a_name(token)), len(tokens) - 1)
    forms = likely_given_of(tokens[led].text) if led == len(tokens) - 1 else ()
    return " or ".join(written([*tokens[:led], token_of(form)]) for form in forms)


def _leads_to_a_name(token: Token) -> bool:
    return token.plain in KIN_WORDS or token.plain in TITLES or is_form_of_kin(token.plain)


def _without_places(item: Item) -> str:
    """What is noted of somebody, without the words of a place: `Far right`, of Danish a father."""
    parts = item.person.note.split(", ")
    return ", ".join(part for part in parts if part not in (item.side_words, item.right_words))


_WITH_ENDING = "ga"
"""The ending that is `with` in Estonian: `tädi Salmega`."""


def _who_holds(item: Item, known: KnownNames) -> str:
    """`Granny` of `the cat Biscuit on Granny's lap`, which is nobody itself; empty for any other words."""
    tokens = tokens_of(item.person.words) if not (item.person.is_person or item.is_several) else ()
    if len(tokens) < _SHORTEST_HELD or tokens[-1].plain not in small_words.HELD_ON:
        return ""
    holder = token_of(tokens[-2].text.removesuffix("'s").removesuffix("’s"))
    is_somebody = holder.text != tokens[-2].text and _may_be_told(holder, known)
    return holder.text if is_somebody and tokens[-3].text.islower() else ""


_SHORTEST_HELD = 4
"""Words of `Rex on Granny's lap`."""

_LEAD_TO_A_PLACE = frozenset("im am auf in on at by near under outside inside dans sur nel nella op на за przy".split())

_ME = tuple(
    "mina me me! myself mich mir moi mij mig meg mną mnie mnou мной мною меня мне comigo conmigo minuga".split()
)


def _groups_in(note: str) -> Iterator[str]:
    """Several people who are told beside somebody, by no name: `her parents` of `between her parents`."""
    for part in note.split(", "):
        beside, *group = part.split(" ")
        kinds = [table.NOUNS.get(token_of(word).plain) for word in group]
        is_small = all(word.islower() for word in group)
        if token_of(beside).plain in small_words.BESIDE_SEVERAL and is_small and kinds[-1:] == ["many"]:
            yield " ".join(group)


def _question(item: Item, known: KnownNames, shouted: bool) -> str:
    """What to ask of words that may be no name; an empty string where they surely are one."""
    words = item.person.words
    tokens = tokens_of(words)
    first = tokens[0] if tokens else None
    if first is None or _NO_SIGN_OF_NAMES.search(words) or (len(tokens) == 1 and words in _LETTERS):
        return f"Is “{words}” someone in the picture?"
    if _is_a_house(tokens, known) or (len(tokens) > 1 and first.plain in table.HEADS and not first.is_given):
        return f"Is “{words}” someone in the picture?"  # `Hochzeit von Anna`
    if is_a_people(words):
        return f"Is “{words}” someone in the picture?"  # a people: `Ngāi Te Rangi`, `Te Arawa`
    in_case = item.in_case or (not tokens[-1].is_given and tokens[-1].text.endswith(_WITH_ENDING))
    if in_case and (name := name_behind_with(tokens, known)):
        return f"Is “{words}” {name}?"
    if len(tokens) == 1 and (name := name_of_form(first, known)):
        return f"Is “{words}” {name}?"
    if not shouted and 1 < len(words) < 5 and words.isalpha() and words.isupper():  # `RAF`
        return f"Is “{words}” someone in the picture?"
    if item.in_case and not any(known.is_given(token.plain) for token in tokens):
        if forms := _by_its_ending(tokens):
            return f"Is “{words}” {forms}?"
        return f"What is “{words}” called, told by itself?"
    is_known = any(token.is_given or known.is_given(token.plain) or known.is_family(token.plain) for token in tokens)
    if not is_known and _names_nothing(tokens):
        return f"Is “{words}” someone in the picture?"
    is_led = first.plain in TITLES or first.plain in KIN_WORDS
    if len(tokens) > 1 and first.plain in _EITHER:
        return f"Who is meant by “{words}”: {written(tokens[1:])}?"  # `Soit Madame Girard, soit …`
    if len(tokens) > 1 and first.plain in _LEAD_TO_A_PLACE:
        return f"Is “{words}” someone in the picture?"  # `Im Wagen Erna`
    if len(tokens) > 2 and tokens[1].plain == "of" and not is_part_of_names(first, known):
        return f"Is “{words}” someone in the picture?"  # `Launch of Ruth`
    if (
        len(tokens) > 1
        and tokens[-1].plain in SIDES_BY_THEMSELVES
        and not (is_led or known.is_family(tokens[-1].plain))
    ):
        return f"Is “{words}” one name, or does “{tokens[-1].text}” tell where {tokens[0].text} is?"
    if tokens[-1].plain in _WHO_REIGNS or {fold(words), " ".join(token.plain for token in tokens[:2])} & _FIGURES:
        return f"Is “{words}” someone in the picture?"  # `the May Queen, Mary`, `Father Christmas`
    if several := _names_in_a_row(tokens_of(_ASIDE.sub(" ", words))) or _given_in_a_row(tokens, known):
        return f"Are “{words}” several people: {'; '.join(several)}?"
    before_name = len(tokens) > 1 and "," not in words and (tokens[1].is_given or tokens[1].plain in TITLES)
    before_title = len(tokens) > 1 and tokens[1].plain in TITLES and first.plain in ("very", "most", "right")
    is_marked = first.is_capitals and not words.isupper()  # `GAUNT Alan Edward`
    if before_name and not (before_title or is_marked) and _is_no_part(first, known):
        rest = words.split(" ", 1)[1]
        return f"Who is meant by “{words}”: {rest}?"
    return ""


_EITHER = ("soit", "either", "entweder", "joko", "albo", "bud", "либо", "arba", "antingen", "enten", "ofwel")
"""Words before the first of two of whom one is meant."""

SIDES_BY_THEMSELVES = frozenset(
    phrase for side, phrase in table.PLACE_PHRASES if side in table.SIDES and phrase.isalpha() and len(phrase) > 3
)
"""Words for a side, which are family names too: `Tom Left`."""

_WHO_REIGNS = ("queen", "princess")
_FIGURES = frozenset(
    (
        "may queen",
        "father christmas",
        "santa claus",
        "father time",
        "jack frost",
        "knecht ruprecht",
        "pere noel",
        "papa noel",
        "babbo natale",
        "pai natal",
        "дед мороз",
        "swiety mikolaj",
    )
)
"""Whom somebody plays: it is asked who it was."""

_LONGEST_PEOPLE = 4
_PEOPLES = frozenset(
    (
        "te arawa",
        "te aupouri",
        "te rarawa",
        "te ati awa",
        "te atiawa",
        "te whakatohea",
        "te whanau-a-apanui",
        "tainui",
        "ngapuhi",
    )
)
"""Peoples of Aotearoa whose names are like those of one."""


def _names_in_a_row(tokens: Sequence[Token]) -> list[str]:
    """The names of `Fred Moss Nell Moss`, given names and others by turns, which nothing parts; none for all else."""
    pairs = list(zip(tokens[::2], tokens[1::2], strict=False))
    by_turns = not any(token.plain in TITLES for token in tokens) and all(
        given.is_given and not (family.is_given or family.is_initial or family.is_small) for given, family in pairs
    )
    is_row = len(pairs) > 1 and len(tokens) % 2 == 0 and by_turns
    is_row = is_row and not any(token.plain in ("al", "el") for token in tokens)  # `Ahmed Abdullah Al Mansour`
    return [f"{given.text} {family.text}" for given, family in pairs] if is_row else []


def _given_in_a_row(tokens: Sequence[Token], known: KnownNames) -> list[str]:
    """The given names of `Ron Les Vic`, of which each is called by; none where one may be a family name."""
    are_given = len(tokens) > 2 and all(
        is_given_somewhere(token, known) and token.plain not in lists.FAMILY_TOO for token in tokens
    )
    is_row = are_given and not any(known.is_family(token.plain) or token.plain in TITLES for token in tokens)
    return [token.text for token in tokens] if is_row and all(len(token.text) < _LONG for token in tokens) else []


_LONG = 4
"""Letters of a given name that is called by none shorter: `Anna Maria Luise` is one person's."""


def _names_nothing(tokens: Sequence[Token]) -> bool:
    """Whether words without a given name are of every day, a word of kin or a noun alone, or letters: `Royal Navy`."""
    first = tokens[0]
    if len(tokens) > 1:
        is_somebody = first.plain in TITLES or first.plain in KIN_WORDS or first.plain in RELIGIOUS_TITLES
        return not is_somebody and all(token.plain in english_words() for token in tokens)
    stems = {first.plain, *(first.plain.removesuffix(end) for end in ("n", "en", "s"))}
    is_place = len(first.plain) > 3 and first.plain in _PLACE_WORDS
    is_small_word = is_place or (len(first.plain) > 2 and first.plain in _SMALL_WORDS)
    if first.text.lower() in small_words.NO_NOUNS:
        return False  # `Pål`
    return is_small_word or any(stem in table.NOUNS and stem not in KIN_WORDS for stem in stems)


def _is_no_part(token: Token, known: KnownNames) -> bool:
    """Whether a word that stands before a given name is no part of a name, as far as is known."""
    plain = token.plain
    if is_part_of_names(token, known) or plain in small_words.THE:
        return False
    return len(plain) > 2 and (plain in english_words() or plain in _PLACE_WORDS)


def is_given_somewhere(token: Token, known: KnownNames) -> bool:
    """Whether a word is a given name of the family's, or of any people whose names stand in the tables."""
    return token.is_given or known.is_given(token.plain) or token.plain in GIVEN_SOMEWHERE


def is_part_of_names(token: Token, known: KnownNames) -> bool:
    """Whether a word is a part of names by knowledge, or stands before or in one: a title, kin, a particle."""
    plain = token.plain
    is_known = token.is_given or token.is_initial or known.is_given(plain) or known.is_family(plain)
    stands_before = plain in TITLES or plain in RELIGIOUS_TITLES or plain in KIN_WORDS or plain in table.BEFORE_A_NAME
    return is_known or stands_before or token.is_particle


_PLACE_WORDS = frozenset(word for _, phrase in table.PLACE_PHRASES for word in phrase.split())


_SMALL_WORDS = frozenset().union(
    small_words.ARTICLES,
    small_words.PRONOUNS,
    small_words.SURE_SUBJECTS,
    small_words.LEADS,
    small_words.CORRECTIONS,
    small_words.NOT_IN_IT,
    "who whose wer was qui quoi quien quienes chi quem wie vem hvem kuka kes кто kto kdo kas".split(),
) - {"les"}
"""Words that are no names, whatever the letter that they begin with. `Les` alone is a man, and no French article."""


def _names_in(note: str, known: KnownNames) -> Sequence[str]:
    """The names in what is noted of somebody who may be in the picture too: `flanked by Hector`, `hides behind Dot`.

    None where the note is a name (`Vi (Violet May)`), and none of those of whom the words say only whose kin somebody
    is, where, or what for: `Ruth's cousin`, `brother of Tom`, `in Florence`, `the Victoria`, `with her pony Daisy`.
    """
    if all(word[:1].isupper() or not word[:1].isalpha() for word in note.split()):
        return ()
    parts = (part for part in note.split(", ") if fold(part) not in KIN_WORDS)  # `Enkelin, auf dem Schoß`
    return [name for part in parts for name in _told_whole(list(_names_in_part(part, known)), part)]


def _told_whole(names: Sequence[str], part: str) -> Iterator[str]:
    """The names, those that stand side by side as one: `Carol Dunn`."""
    whole = ""
    for name in (*names, ""):
        if whole and name and f"{whole} {name}" in part:
            whole = f"{whole} {name}"
            continue
        if whole:
            yield whole
        whole = name


def _names_in_part(part: str, known: KnownNames) -> Iterator[str]:
    before, role, kin_told = "", "", False
    tokens = tokens_of(part)
    is_held = any(token.plain in small_words.HELD_ON for token in tokens)
    if tokens and tokens[0].plain in small_words.SAID_BY:
        return
    says = next((at for at, token in enumerate(tokens) if token.is_small and token.plain in _SAY), 0)
    for at, token in enumerate(tokens):
        if at < says and says < _SAID_SOON:
            continue  # `Mum always thought it was Ron`
        if token.plain in _JOIN or (not at and token.plain in small_words.DENY):
            before = token.plain
            continue
        role = role if before in _JOIN or before == _KIN else before
        is_kin = token.plain in KIN_WORDS
        behind = tokens[at + 1].text if at + 1 < len(tokens) else ""
        held_by = fold(behind) in small_words.HELD_ON and token.plain.endswith("'s")
        of_kin = not held_by and (
            (role in _NO_COMPANY and not (role == "of" and at == 1))
            or (kin_told and role in small_words.OF and not is_held)
            or table.NOUNS.get(role) == "thing"
        )
        leads = (token.plain in small_words.ARTICLES | table.MY_OWN and at == 0 and len(tokens) > 1) or (
            is_kin and behind[:1].isupper()
        )  # `Vi` of `Aunt Vi`
        behind_kin = before == _KIN and token.text[:1].isupper()
        bare = token_of(token.text[:-2]) if held_by else token  # `Dad` of `Dad's shoulders`
        whose = token.plain.endswith("'s") or behind.endswith(("'s", "’s"))
        near = tokens[at + 1 : at + 3]
        whose = whose or any(word.plain in small_words.KIN_BEHIND_WHOSE and word.text.islower() for word in near)
        is_whose = whose and not held_by  # `Mrs Orr's maid`, `Jim Burns's wife`, `Mihkel Tamme naine`
        if (behind_kin or _may_be_told(bare, known)) and not (of_kin or leads or is_whose):
            yield bare.text.rstrip(".,;")
        elif held_by and bare.plain in KIN_WORDS and at:
            yield f"{tokens[at - 1].text} {bare.text}"  # `in her mother's arms`
        elif at and tokens[0].plain in small_words.TAKE_A_CASE and is_form_of_kin(token.plain):
            yield token.text  # `папа с мамой`
        elif is_held and token.text.islower() and token.text != "på" and (is_kin or is_form_of_kin(token.plain)):
            yield token.text  # `на руках у мамы`, `ao colo da mãe`
        elif at and _is_called_behind_with(tokens, at):
            yield token.text  # `s malým Toníkem`
        kin_told = kin_told or is_kin
        before = _KIN if is_kin or token.plain in TITLES else token.plain


_SAY = small_words.SAYING | SAID
_SAID_SOON = 4
"""Words before one of saying that tell who says so, and perhaps how often."""

_WITH_ONE = 3


def _is_called_behind_with(tokens: Sequence[Token], at: int) -> bool:
    """Whether a word is the last of three of which the first is `with`, in a language that has names in another form
    there, and the one between says which: it can only be somebody, or an animal."""
    leads, which = tokens[0], tokens[1]
    is_last = len(tokens) == _WITH_ONE == at + 1 and tokens[at].text[:1].isupper()
    is_with = leads.plain in small_words.TAKE_A_CASE and leads.plain in small_words.WITH
    is_with = is_with or (leads.plain == "koos" and tokens[at].plain.endswith(_WITH_ENDING))
    says_which = which.text.islower() and not (which.plain in KIN_WORDS or which.plain in table.NOUNS)
    return is_last and is_with and says_which and tokens[at].plain not in small_words.NAMES_OF_ANIMALS


_KIN = "and kin"
"""Stands for a word of kin or a title before a name."""


def _may_be_told(token: Token, known: KnownNames) -> bool:
    """Whether a word in a note is somebody's name, also in a form of a sentence, or kin told by one word (`Mum`)."""
    if not token.text[:1].isupper() or token.plain.endswith("'s"):
        return False
    if token.plain in small_words.TIMES_OF_THE_YEAR or token.plain in small_words.NAMES_OF_ANIMALS:
        return False
    return is_given_somewhere(token, known) or token.plain in KIN_WORDS or bool(_given_by_itself(token, known))


_LETTERS = tuple("abcdefghijklmnopqrstuvwxyz")

_JOIN = frozenset("and & + und ja et y e og och i и un ir".split())
_NO_COMPANY = (
    small_words.THE
    | table.MY_OWN
    | small_words.DENY
    | small_words.LEAVES_OUT_OTHERS
    | frozenset(
        "of des du della dei degli delle dos das av af van in at from near im aus en dans nel na no i as like als "
        "comme for named called nee ne born geb sund "
        "meinem meinen meiner unserem unseren unserer "
        "deren dessen her his their ihr ihre ihrem ihren ihrer sein seine seinem seinen seiner son sa ses".split()
    )
)
"""Words before a name that tell whose kin somebody is, where, or what for; nobody is in the picture by them."""


def name_of_form(token: Token, known: KnownNames, *, shortest: int = _SHORTEST_FORM) -> str:
    """The given name of which a word is a form, where it is one of one name alone, or of the family's: `Kaarlon`."""
    plain = token.plain
    if token.text.endswith(("ą", "ę")):  # Polish and Lithuanian forms, which folded are the name
        stem = plain[:-1]
        return token.text[:-1] + ("e" if f"{stem}e" in CALLED and f"{stem}a" not in CALLED else "a")
    if token.is_given or known.is_given(plain) or known.is_family(plain) or len(plain) < shortest:
        return ""
    if "а" <= plain[0] <= "я" and plain.endswith(("ов", "ев", "ова", "ева")) and token.text[0].isupper():
        return ""  # `Иванов` is a family name, and `Иван` of many Ivans
    if "а" <= plain[0] <= "я":
        names = _cyrillic_forms().get(key_of(plain, CYRILLIC), ())
    else:
        stems = {plain.removesuffix(ending) for ending in _ENDINGS if plain.endswith(ending)} - {plain}
        names = tuple(stem for stem in sorted(stems) if stem in CALLED or known.is_given(stem))
    own = [name for name in names if known.is_given(name)] or list(names)
    return " or ".join(_as_written(name, token.text) for name in own[:2])


def _as_written(name: str, told: str) -> str:
    """A name as it is written in the form that was told, with its accents: `Tõnu` of `Tõnuga`."""
    begins = told[: len(name)]
    return begins if fold(begins) == name else name.capitalize()


_ENDINGS = tuple("n lla lle lta ssa sta ksi ga le lt sse st nek nak val vel hoz hez ovi owi em iem".split())
"""Endings of Estonian, Finnish, Hungarian, Polish and Czech that a name has in a sentence only."""


@cache
def _cyrillic_forms() -> dict[str, tuple[str, ...]]:
    """Each form of a given name in Russian sentences, as a key -> the names."""
    forms: dict[str, tuple[str, ...]] = {}
    for name in sorted(name for name in CALLED if "а" <= name[0] <= "я"):
        for form in cyrillic_forms(key_of(name, CYRILLIC)):
            forms[form] = (*forms.get(form, ()), name)
    return forms
