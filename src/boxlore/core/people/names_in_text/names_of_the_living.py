"""Names in words of which nobody told who bears them, where the words say that the bearer may well live.

A name in a caption may be anybody's, long dead most often, and is no question. It is one where something beside it
says otherwise: a birth in brackets (`Rasmus Saarepuu (b. 1983)`), an age (`Kaisa Vesterinen, 14, on the bus`), a late
year in the sentence, that the bearer lives somewhere, that the name is of who gave, lent or copied something, that it
stands as a keyword of its own, that what is told of the bearer is so now (`is 45 now`, `my doctor these days`, `учится
в школе`), or how to reach him (`Ring … on 021 555 0199`).

So is a name told with a title or a word of kin, `Dr Raghunathan`, `Auntie Bev`, `our neighbour Lettice Quennell`, where
its sentence has a word of now (`still`, `last spring`, `żyje`); of kin and neighbours it is enough that they have or
keep something. A sentence of a death, and one whose years are long ago, tells of nobody living.

A name is else a known given name with a word behind it that is no English word, both written large. Where a birth or
that somebody lives is told of it, or a word of kin stands before it (`lapselaps Kärt Vahersalu`), the given name need
not be known: nothing but a person is born, lives in Vaasa or is a grandchild.
In a text all in small letters or all in capitals, and between a call and a telephone number, capitals tell nothing:
there a known given name and one word behind it are a name. A rule of our own; the words are from memory.
"""

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from functools import cache, lru_cache
from itertools import pairwise

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names_in_text.inflections import cyrillic_forms, key_of
from boxlore.core.people.names_in_text.kin_beside_names import relations_of
from boxlore.core.people.names_in_text.ordinary_words import is_english, is_thing
from boxlore.core.people.names_in_text.text_normalising import CYRILLIC, Text, Word, read_text, script_of

LATELY = 30
"""Who did something in a year of so many years is taken as living."""

GIVERS = ("donor", "lender", "owner", "keyword", "custody", "series")
"""Fields in which a name is told of somebody who had to do with the pictures, or is what they are about."""

_BIRTH = re.compile(
    r"\s*,?\s*(?:[(\[]\s*)?(?P<born>b\.|born\b|bn\b|s\.|sünd\w*\.?|snd\.?|geb\.?|geboren|род\.?|р\.|ur\.|född|f\.|synt\.?|"
    r"syntynyt|°|\*|[(\[])\s*(?:in\s+)?(?P<year>\d{4})\b(?!\s*[-–—]\s*\d)",
    re.IGNORECASE,
)
_BIRTH_WORD = (
    r"\b(?:born|s[uü]ndi|synty|född|fødd|født|gebor|geb\.|родил|рожд|народ|urodz|ur\.|naro[dz]|nar\.|dzim|gim[eė]|szület|"
    r"née?\b|nació|nacid|nasc|nat[oa]\b|doğum)\w*"
)
"""A verb of birth or its participle; stems from memory."""
_BORN = re.compile(
    rf"\s*,?\s*(?:[^\W\d]{{1,7}}\s+){{0,2}}?{_BIRTH_WORD}[^.!?\n\d]{{0,25}}"
    r"(?:\d{1,2}[. /][^.!?\n\d]{0,12}(?:\d{1,2}[. /])?\s*)?(?P<year>\d{4})\b|"
    rf"\s*,?\s*(?P<first>\d{{4}})\S{{0,4}}\s+(?:\w{{1,6}}\s+)?(?:{_BIRTH_WORD}|г\.\s?р)",
    re.IGNORECASE,
)
"""A birth behind a name, by a word for it and its year in either order."""
_BEARS = re.compile(rf"{_BIRTH_WORD}[^.!?\n\d]{{0,3}}$", re.IGNORECASE)
_YEAR_NEAR = re.compile(r"[^.!?\n\d]{0,15}(?:\d{1,2}\.\s\w+\s)?(?P<year>(?P<first>\d{4}))\b")
"""A birth before a name, the year behind it: `Sündis Mirtel Kaasikoja 2014`."""
_DEAD = re.compile(
    r"\s*[(\[][^)\]]*\d{4}\s*[-–—]\s*\d|\s*[,(\[]?\s*(?:who\s+)?(?:d\.|died\b|late[)\]]|†|surn?(?:\.|ud\b)|suri\b|gest\.|kuol|ум\.|zm\.)",
    re.IGNORECASE,
)
_LIVING = r"\b(?:lives|is\s+living|resides|elab|wohnt|lebt|bor|asuu|mieszka|жив[её]т)\b"
_LIVES = re.compile(rf"\s*,?\s*(?:who\s+|and\s+)?(?:now\s+|still\s+|today\s+|currently\s+)?{_LIVING}", re.IGNORECASE)
_TODAY = (
    r"\b(?:now|these\s+days|nowadays|(?:last|this|next)\s+(?:week|month|year)|is\s+(?:aged\s+)?\d{1,2}|praegu|nüüd|heute|"
    r"jetzt|nyt|сейчас|теперь|учится|работает|õpib|töötab|goes\s+to\s+(?:school|university))\b"
)
_NOW = re.compile(
    rf"[^.!?\n]{{0,60}}?(?:(?P<now>{_TODAY})|\b(?:was|were|had|died|oli|war|был[аи]?)\b)",
    re.IGNORECASE,
)
"""What holds now, of a name before it; not behind a verb of the past."""
_REACHED = re.compile(r"[^.!?\n]{0,25}?(?:\+?\(?\d[\d ()/-]{6,}\d|[\w.+-]+@[\w-]+\.\w{2,})")
"""A telephone number, or an address of mail."""
_CALLS = re.compile(r"\b(?:ring|call|phone|e-?mail|contact|helista|anrufen|звони\w*)\b[^.!?\n]{0,20}$", re.IGNORECASE)
_AGE = re.compile(
    r"\s*(?:[,(\[]\s*(?:aged?\s+|lat\s+|let\s+)?|\s+aged?\s+)(?P<age>\d{1,2})"
    r"(?=\s*[,)\].;]|\s*$|[\s-]*(?:years|yrs|a\.|aastat|v\.|vuot|år|jahre|jaar|лет|год|let\b|lat\b|metų|gad[ui]|éves|ans\b|"
    r"años|anni|months|mos\b|weeks|kuu|mies|měs|мес|monat|måned|mån))",
    re.IGNORECASE,
)
_YEAR = re.compile(r"(?<!\d)(?:1[89]|20)\d\d(?!\d)")
_GIVING = (
    r"\b(?:given|gift|donated|lent|loaned|sent|courtesy|scanned|copied|keeper|kingitud|laenatud|annetanud|geschenkt|от|"
    r"lahjoittanut|dar)\b"
)
_GAVE = re.compile(rf"{_GIVING}[^.!?\n]{{0,25}}$", re.IGNORECASE)
_SENTENCE_ENDS = re.compile(r"(?<=\w{3})[.!?]+(?=\s)|\n")
_LONG_SENTENCE = 400
"""Letters on either side of a name, beyond which nothing is told of it."""
_CHILDREN = tuple(
    "lapselap lapselaste poja tutre tytta poika vauva unoka dedunoka barnebarn barnbarn enkel urenkel wnuc wnuk vnuk "
    "vnuc mazmeit mazdel anuk proanuk nipot niet petit внук внуч правну grandchild toddler baby".split()
)
"""How words for children and grandchildren begin in languages that families of a collection may write in."""
_CASES = tuple("le lt ga st ks ni lla lle lta ssa sta sse ta n i u a e y em owi ovi iem ou nak nek val vel s".split())
"""Endings of given names in sentences (`inflection_table`)."""
_ADDRESSED = frozenset(
    "mr mrs ms miss mx dr doctor prof professor rev reverend herr frau fraulein pan pani panna proua harra preili "
    "rouva herra neiti tohtori доктор господин госпожа mme mlle monsieur madame signor signora senor senora fru froken "
    "ponia kundze kungs pani slecna tante onkel тетя дядя tadi onu".split()
)
"""Titles behind which any word written large is somebody's name (common practice, no source)."""
_NEIGHBOURS = tuple(
    "neighbour neighbor nachbar naaber naabri naapuri sasiad сосед voisin granne nabo kaimyn kaimin soused "
    "friend freund sober sobra ystav przyjaci подруг приятел".split()
)
"""How words for neighbours and friends begin."""
_FEWEST_LETTERS = 3
_STOP = re.compile(r"[.!?\n]")
_OF_NOW = re.compile(
    r"\b(?:still(?!\s+(?:had|has\s+been|was|were|life|born|\w+ed\b))|"
    r"now(?!\s+(?:deceased|dead|lost|gone))|today|nowadays|"
    r"these\s+days|to\s+this\s+day|alive|lives|resides|"
    r"recently|lately|yesterday|tomorrow|the\s+other\s+day|"
    r"(?:last|this|next)\s+(?:spring|summer|autumn|winter|week|month|year|christmas|easter|time)|knows|remembers|"
    r"would\s+(?:love|like|know|remember|tell)|will\s+(?:know|tell|remember|have)|"
    r"praegu|nüüd|tänini|tänaseni|elab|elus|mäletab|teab|hiljuti|mullu|tänavu|endiselt|ikka\s+veel|"
    r"сейчас|теперь|до\s+сих\s+пор|по\s+сей\s+день|жив|жива|живы|жив[её]т|помнит|знает|недавно|учится|работает|"
    r"żyje|mieszka|teraz|dziś|dzisiaj|nadal|obecnie|pamięta|wciąż|niedawno|"
    r"heute|jetzt|noch\s+(?:heute|immer)|immer\s+noch|(?:lebt|wohnt|hat)\s+noch|lebt|wohnt|weiß|erinnert|kürzlich|neulich|"
    r"letzte[ns]?\s+(?:jahr|woche|sommer|winter|frühjahr|herbst)|"
    r"asuu|elää|nykyään|yhä|nyt|vielä|muistaa|tietää|viime\s+(?:vuonna|kesänä|talvena|viikolla)|"
    r"vit|habite|aujourd.hui|encore|vive|abita|dzīvo|gyvena|žije|bydlí|bor|lever|idag)\b",
    re.IGNORECASE,
)
"""What holds now, anywhere in a sentence."""
_HAVING = (
    r"\b(?:has|keeps|holds|owns|wants|says|hat|besitzt|hält|ma|trzyma|chce|hoiab|omab|säilitab|хранит|имеет|"
    r"держит|säilyttää|omistaa|possède|tiene|har)\b"
)
_HAS = re.compile(rf"[^.!?\n]{{0,30}}?{_HAVING}", re.IGNORECASE)
"""What somebody has, behind a name."""
_SIGNS = re.compile(rf"[\d@]|{_GIVING}|{_LIVING}|{_TODAY}|{_HAVING}", re.IGNORECASE)
"""What the words have at least, or `_OF_NOW`, before they are looked at."""
_DIED = re.compile(
    r"\b(?:died|dead|deceased|late|killed|drowned|buried|suri|surnud|hukkus|умер\w*|погиб\w*|покойн\w+|zmarł\w*|zginął|"
    r"zginęła|starb|gestorben|verstorben\w*|gefallen|kuoli|kuollut|mort|morte|décédé\w*)\b",
    re.IGNORECASE,
)
SHORTEST_BEHIND, SHORTEST_INFLECTED = 3, 4
"""Letters that a word behind a given name has more of, to be a family name where letters tell nothing."""
FAR = 80
"""Letters before a name in which a word told of it may begin: the longest word, and what may stand between."""
_JOINS = frozenset((" ", "-", "_", ""))


@lru_cache(1 << 14)
def names_of_the_living(words: str, field: str, year: int, longest_life: int) -> tuple[str, ...]:
    """The names that the words of a field tell of somebody who may well live in the `year`. Nobody does who was born
    more than `longest_life` years before."""
    if field not in GIVERS and not _SIGNS.search(words) and not _OF_NOW.search(words):
        return ()
    ends = [0, *(match.end() for match in _SENTENCE_ENDS.finditer(words)), len(words)]
    text = read_text(words)
    names = ((name, _told_beside(words, ends, name[0].start, name[-1].end)) for name in _names(text))
    found = tuple(
        "".join((word.before or " ") + words[word.start : word.end] for word in name)[len(name[0].before or " ") :]
        for name, beside in names
        if _may_live(*beside, field, year, longest_life, is_known=_is_given(name[0]) or _is_kin(beside[0]))
    )
    more = (*_names_in_one_case(words, text), *_titled(words, text, ends, year))
    return tuple(dict.fromkeys((*found, *more)))


def _titled(words: str, text: Text, ends: Sequence[int], year: int) -> Iterator[str]:
    """Names behind a title or a word of kin, in a sentence that tells of now."""
    for at, first in enumerate(text.words[1:], 1):
        title = text.words[at - 1]
        is_kin = is_of_ours(title)
        is_addressed = title.folded in _ADDRESSED
        joins = (" ", ". ", ", ") if is_kin else (" ", ". ")
        if not (is_kin or is_addressed) or first.before not in joins or not _is_written_large(first):
            continue
        if first.folded in _ADDRESSED or _is_kin_word(first):
            continue
        last = at
        while (
            last + 1 < len(text.words)
            and text.words[last + 1].before in _JOINS
            and _is_written_large(text.words[last + 1])
        ):
            last += 1
        is_kin = is_kin or (at > 1 and is_of_ours(text.words[at - 2]))
        before, after = _told_beside(words, ends, title.start, text.words[last].end)
        if _tells_of_now(before, after, year, is_kin=is_kin):
            begin = first.start if last > at else title.start
            yield words[begin : text.words[last].end]


def is_told_dead(words: str, end: int) -> bool:
    """Whether a death is told right behind a name that ends there."""
    return _DEAD.match(words, end) is not None


def years_beside(words: str, start: int, end: int) -> list[int]:
    """The years told in the sentence of a name."""
    first, last = sentence_of(words, start, end)
    return [int(told) for told in _YEAR.findall(words[first:start]) + _YEAR.findall(words[end:last])]


def sentence_of(words: str, start: int, end: int) -> tuple[int, int]:
    """Where the sentence of a name begins and ends; of a long one, what is near."""
    near = max(0, start - _LONG_SENTENCE)
    ends = [match.end() for match in _SENTENCE_ENDS.finditer(words, near, start)]
    behind = _SENTENCE_ENDS.search(words, end, end + _LONG_SENTENCE)
    return (ends[-1] if ends else near), (behind.end() if behind else min(len(words), end + _LONG_SENTENCE))


def is_addressed(word: Word) -> bool:
    """Whether a word is a title behind which any word written large is a name."""
    return word.folded in _ADDRESSED


def name_alone(told: str) -> str:
    """A name of `names_of_the_living` without a title or a word of kin before it."""
    words = read_text(told).words
    first = next((word for word in words if word.folded not in _ADDRESSED and not is_of_ours(word)), words[-1])
    return told[first.start :]


def is_of_ours(word: Word) -> bool:
    """Whether a word is of kin, a neighbour or a friend."""
    return _is_kin_word(word) or word.folded.startswith(_NEIGHBOURS)


def _is_written_large(word: Word) -> bool:
    return word.spelled[0].isupper() and len(word.folded) >= _FEWEST_LETTERS and word.spelled[1:].islower()


def _tells_of_now(before: str, after: str, year: int, *, is_kin: bool) -> bool:
    sentence = f"{before} {after}"
    told = [int(found) for found in _YEAR.findall(sentence)]
    if _DIED.search(sentence) or (told and year - max(told) > LATELY):
        return False
    return bool(_OF_NOW.search(sentence)) or (is_kin and bool(_HAS.match(after)))


def _names(text: Text) -> Iterator[Sequence[Word]]:
    """Each name: a given name, and all words written large that follow it; or several such words before the next."""
    at = 0
    while at < len(text.words):
        last, is_known = at, _is_given(text.words[at])
        if not is_known and (is_of_ours(text.words[at]) or _BEARS.match(text.words[at].folded)):
            at += 1
            continue
        if is_known or _is_large(text.words[at]):
            while last + 1 < len(text.words) and _goes_on(text.words, last + 1, is_known):
                last += 1
        if last > at and not is_thing(text.words, at):
            yield text.words[at : last + 1]
        at = last + 1


def _names_in_one_case(words: str, text: Text) -> Iterator[str]:
    """Names where letters tell nothing, as names are written: a known given name with a word behind it that is not
    English, where a birth or that somebody lives is told of it, or how it is reached."""
    is_one_case = text.is_one_case
    for word, behind in pairwise(text.words):
        is_given = word.folded in CALLED and not is_english(word.folded)
        is_two = behind.before == " " and len(behind.folded) > SHORTEST_BEHIND and not is_english(behind.folded)
        if not (is_given and is_two):
            continue
        end = behind.end
        is_reached = _REACHED.match(words, end) and _CALLS.search(words[max(0, word.start - FAR) : word.start])
        if is_reached or (is_one_case and (_LIVES.match(words, end) or _BIRTH.match(words, end))):
            yield f"{words[word.start : word.end]} {words[behind.start : behind.end]}".title()


def _is_given(word: Word) -> bool:
    return word.spelled[0].isupper() and not is_english(word.folded) and is_called(word.folded)


@lru_cache(1 << 14)
def is_called(folded: str) -> bool:
    """Whether a folded word is a known given name, also with the ending of a case."""
    if folded in CALLED or len(folded) < SHORTEST_INFLECTED:
        return folded in CALLED
    if script_of(folded[0]) == CYRILLIC:
        return key_of(folded, CYRILLIC) in _cyrillic_calls()
    stems = [folded.removesuffix(case) for case in _CASES if folded.endswith(case)]
    long = [stem for stem in stems if len(stem) >= SHORTEST_INFLECTED]
    return any({stem, f"{stem}a", stem.removesuffix("i")} & CALLED for stem in long)


@cache
def _cyrillic_calls() -> frozenset[str]:
    names = (name for name in CALLED if script_of(name[0]) == CYRILLIC)
    return frozenset(form for name in names for form in cyrillic_forms(key_of(name, CYRILLIC)))


def _is_large(word: Word) -> bool:
    is_name = word.spelled[0].isupper() and len(word.folded) > 2 and not word.spelled.isupper()
    return is_name and not is_english(word.folded)


def _is_kin(before: str) -> bool:
    """Whether the last word before a name is one of kin, or of a child."""
    words = read_text(before[-FAR:]).words
    return bool(words) and _is_kin_word(words[-1])


def _is_kin_word(word: Word) -> bool:
    return bool(relations_of(word)) or word.folded.startswith(_CHILDREN)


def _goes_on(words: Sequence[Word], at: int, is_known: bool) -> bool:
    """Whether a word is of the name before it, which begins with a known given name or not."""
    return words[at].before in _JOINS and _is_large(words[at]) and (is_known or not _is_given(words[at]))


def _told_beside(words: str, ends: Sequence[int], start: int, end: int) -> tuple[str, str]:
    """What stands before and behind a name in its sentence; `ends` of sentences are in order."""
    return words[ends[bisect_right(ends, start) - 1] : start], words[end : ends[bisect_left(ends, end)]]


def _may_live(before: str, after: str, field: str, year: int, longest_life: int, *, is_known: bool) -> bool:
    """By what stands beside a name; of one that `is_known` to be a name, less is enough."""
    years = [int(told) for told in _YEAR.findall(before + after)]
    if _DEAD.match(after):
        return False
    near = max(0, len(before) - FAR)
    told = _BORN.match(after) or (_YEAR_NEAR.match(after) if _BEARS.search(before, near) else None)
    if told:
        return year - longest_life <= int(told["year"] or told["first"]) <= year
    if birth := _BIRTH.match(after):
        is_told = is_known or birth["born"] not in ("(", "[")
        return is_told and year - longest_life <= int(birth["year"]) <= year
    if _LIVES.match(after):
        return year - max(years, default=year) <= longest_life
    if (now := _NOW.match(after)) and now["now"]:
        return year - max(years, default=year) <= longest_life
    if is_known and _tells_of_now("", _STOP.split(after)[0], year, is_kin=False):
        return True
    if _REACHED.match(after) and _CALLS.search(before, near):
        return True
    if not is_known:
        return False
    if age := _AGE.match(after):
        return year - max(years, default=year) + int(age["age"]) <= longest_life
    return field in GIVERS or bool(_GAVE.search(before, near)) or any(year - LATELY <= told <= year for told in years)
