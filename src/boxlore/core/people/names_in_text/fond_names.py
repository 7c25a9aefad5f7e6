"""Whether a word is a fond form of a given name that nobody told: `Glebushka` of Gleb, `Grażka` of Grażyna, `Des`.

The problem. Families call their own by forms that no table holds whole: each language makes them anew of any name.

The idea. A fond form keeps the beginning of the name, up to a consonant, and takes an ending that only such forms have:

    stem and ending      Gleb-ushka, Graż-ka, Jan-cis, Tim-osha: a stem of three letters and more (`An`, `El` are stems
                         too, a vowel and a consonant), then one of ENDINGS, also as it is inflected
    open stem            Lu-sha of Lukerya, Zo-sia, La-ci: the first syllable, then one of OPEN_ENDINGS
    stem alone           Bron, Des, Gwyn; and any beginning of three or four, Imo of Imogen, that is no word we know
    short stem           Imm-y of Imogen, Eev-u of Eevi: a vowel and a consonant, of which one is written double
    end alone            Tina of Christina, Xander: the last four letters and more, where that is a known name; so the
                         beginning, Hanne of Hannelore; where it is none, from the beginning of a syllable: Lore, Bine
    end and ending       Trud-i of Gertrud, Res-i of Therese, Traud-l: the end from a syllable on, without its last
                         vowels, then one of ENDINGS_OF_ENDS
    syllable twice       Didi of Dieter, Lulu; before the end, Gui-guite, Mo-mone: the end alone is looked up

`Hazy` and `Haze` of Hazel are English words too: an ending of SAID_OF_WORDS behind a stem makes them a fond form all
the same (`like_a_word`), which only a capital within a sentence tells from the word.

What always holds: it is a question, never surely the name. Words are compared by their key (`inflections.key_of`), so
that letters with and without accents, double ones and those of Cyrillic are the same. An English word, and a small word
of another language (`Der`, `Kas`, `Там`: `small_words_table`), is none; but an end that is one too, `Lore`, may be a
name where a sentence writes it like one.

The endings are from memory of the grammars of each language; no source.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Set
from functools import cache

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.names_in_text.inflection_table import (
    CYRILLIC_INFLECTED,
    IN_BALTIC,
    IN_ESTONIAN,
    IN_FINNISH,
    IN_HUNGARIAN,
    IN_S,
    IN_SLAVIC,
    Rows,
)
from boxlore.core.people.names_in_text.inflections import inflected, key_of
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, words_known
from boxlore.core.people.names_in_text.known_words_table import KNOWN
from boxlore.core.people.names_in_text.small_words_table import SMALL_WORDS
from boxlore.core.people.names_in_text.text_normalising import CYRILLIC, GREEK, LATIN, script_of
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary

RUSSIAN = (
    "ka ik ok enka ochka echka ushka yushka ulya unya usya usha yusha osha asha yasha isha esha yosha chik yok uta "
    "etska otska ek yuta ukha yukha akha okha yokha yonya asya osya isya ulka unka yunya yulya anya oshka ashka ishka "
    "eshka"
)
ENDINGS: dict[str, tuple[tuple[str, Rows], ...]] = {
    LATIN: (
        ("ie y ey kin kins za o", IN_S),  # English, Scots
        ("chen lein li erl l ing ke tje je etje pje ientje ien pie kie tie", IN_S),  # German, Dutch
        ("sia siu us usia unia cia dzia zia nia eczka enka eczek uch chna cio sio zio ula ulek unio", IN_SLAVIC),
        ("uska usek icka inka enda usa ica icek inek anek ko ka ek ik ice", IN_SLAVIC),
        ("i ika ike uka us cus csi ci ca csa oka eke cska ka ko", IN_HUNGARIAN),
        ("ke kene kas uke ike ku ks ps", IN_ESTONIAN),
        ("kka kko kku ikki ski sku ska uska su sa tsu", IN_FINNISH),
        (
            "ins itis citis ite ina ens cis sis uks uka iukas ulis ele elite elis yte ukas uke ute utis uze uzis ule",
            IN_BALTIC,
        ),
        (
            "ino ello ella ito ita cito cita quito quita quinha quinho ico ica illo illa "
            "inho inha zinho zinha uca uco uccia uccio",
            IN_S,
        ),
        ("as etto ou ot on otte ette inette ag ock aki akis oula itsa le inke", IN_S),  # French, Irish, Greek, Yiddish
    ),
    CYRILLIC: (("ya", ()),),
    GREEK: (),
}
"""Endings with the way in which they are inflected; those of RUSSIAN are inflected in its way in both scripts."""
OPEN_ENDINGS = {
    LATIN: (("sia cia csi cio zia zio sio", IN_SLAVIC), ("tsu", IN_FINNISH), ("z za zie", IN_S)),
    CYRILLIC: (),
}
OPEN_RUSSIAN = "sha sya shka shenka syenka shik"
"""What stands behind the first syllable."""
GREEK_ENDINGS = "oula oulas itsa itsas oudi oudaki aki akis akos ako ouli oulis"
"""Greek ones in Latin letters, each in its cases; Greek names have no other forms here: their beginnings are words."""
_ALSO_OF_OTHER_NAMES = frozenset(
    "ing ika ike ita ite ica ice ico illa ito elis ulis ulya ele le us uta ute o i ie y ey li ko usa ula "
    "ello ella l ot on ette tie anya nia zia ok ik ek za su sa asya as ens ina ya".split()
)
"""Endings that other given names have too: a known one that ends so is that name."""

ENDINGS_OF_ENDS = frozenset("a i ie y l el erl chen lein ke ou on ot ette".split())
SAID_OF_WORDS = frozenset("y ie ey e".split())
_STAY_FOND = frozenset(("i", "ie", "y"))
"""Endings of known names that are fond forms of others all the same: `Elfi` is a name, and said for Elfriede."""

SHORTEST, SHORTEST_STEM, SHORTEST_END, SHORTEST_LONG, TWICE = 3, 3, 4, 3, 2
_VOWELS = "aeiou"
_ENGLISH = ("", "ed", "d", "ing", "er", "en", "ly", "less", "ness", "ish", "like")
"""Endings of English words."""
_SOFTENED = {"g": "z", "k": "C", "h": "s"}
_SOFT = re.compile("c(?!h)")
"""A c may be the s that it is before e and i: `Graça`, `Gracinha`."""
_SHORT = frozenset(("i", "ie", "ei", "o"))
_DOUBLED = re.compile(r"([aeiou])([^aeiou])\2(?:y|ie|i|ey)|([aeiou])\3([^aeiou])u")
"""`Immy`, `Eevu`: a vowel and a consonant, one of them double, and an ending."""
LONGEST_BEGINNING = 4
_ONE_SYLLABLE = re.compile(r"[^aeiou]*[aeiou]+[^aeiou]+")
_SYLLABLE = re.compile(r"[^aeiouy](?=[hlr]?[aeiouy])")
"""Where the end of a name may begin."""
_FIRST_SYLLABLE = re.compile(r"[^aeiou]+(?:i(?=[aeou]))?[aeiou]")
_ONE_VOWEL = re.compile(r"(?<=i)[aeou]$")
"""`Di` of Dieter: a long i may be written with an e."""


class FondNames:
    """Looks words up as fond forms of `names`: the folded words by which people are called, each with its script.

    `told` are those that somebody bears as they stand; without it, all are.
    """

    def __init__(
        self,
        names: Iterable[tuple[str, str]],
        small_words: frozenset[str] = SMALL_WORDS,
        told: Set[str] | None = None,
    ) -> None:
        self._small_words, self._told = small_words, told
        self._stems: dict[str, set[str]] = {}
        self._clipped: dict[str, set[str]] = {}
        self._opens: dict[str, set[str]] = {}
        self._beginnings: dict[str, set[str]] = {}
        self._parts: dict[str, set[str]] = {}
        self._ends: dict[str, set[str]] = {}
        for name, script in names:
            for key in {key_of(name, script), key_of(_SOFT.sub("s", name), script)} if script in ENDINGS else ():
                for stem in _stems_of(key):
                    self._stems.setdefault(stem, set()).add(name)
                    if SHORTEST_STEM <= len(stem) < len(key) - 1 and script != GREEK:
                        self._clipped.setdefault(stem, set()).add(name)
                if script == GREEK:
                    continue
                last = min(len(key) - 2, LONGEST_BEGINNING) if told is None or name in told else 0
                for at in range(SHORTEST_STEM, last + 1):
                    self._beginnings.setdefault(key[:at], set()).add(name)
                if first := _FIRST_SYLLABLE.match(key):
                    self._opens.setdefault(first[0], set()).add(name)
                    self._opens.setdefault(_ONE_VOWEL.sub("", first[0]), set()).add(name)
            for part in (*(name[at:] for at in range(1, len(name))), *(name[:at] for at in range(len(name) - 1))):
                if len(part) >= SHORTEST_END and part in CALLED:
                    self._parts.setdefault(part, set()).add(name)
            for end in _ends_of(name) if script == LATIN else ():
                self._ends.setdefault(end, set()).add(name)

    def of(self, folded: str, script: str) -> set[str]:
        """The names that a folded word may be said for."""
        is_known = folded in CALLED
        if script not in ENDINGS or len(folded) < SHORTEST:
            return set()
        if self._is_also_a_word(folded):
            return set()
        key = key_of(folded, script)
        names = self._with_ending(key, script, is_known=is_known)
        if script != GREEK:
            names |= self._shortened(folded, key, is_known=is_known)
        return {name for name in names if name != folded and key_of(name, script_of(name[0])) != key}

    def _shortened(self, folded: str, key: str, *, is_known: bool) -> set[str]:
        """The names that a word is a part of, or a syllable said twice."""
        names = self._parts.get(folded, set()) | self.ends_with(folded)
        if len(key) == 2 * TWICE and key[:TWICE] == key[TWICE:] and folded not in KIN_WORDS:
            names |= self._opens.get(key[:TWICE], set())
        for size in (TWICE, TWICE + 1):
            if folded[:size] == folded[size : 2 * size] and len(folded) > 2 * size:
                names |= self.ends_with(folded[size:])
        if (begun := self._beginnings.get(key)) and not (is_known or is_known_anywhere(folded)):
            names |= begun
        if _DOUBLED.fullmatch(folded):
            names |= self._stems.get(key[:2], set())
        return names

    def _with_ending(self, key: str, script: str, *, is_known: bool) -> set[str]:
        """The names of which a word is the beginning with an ending, or in the letters of all but Greek alone."""
        names: set[str] = set()
        endings, opens = _endings(script, is_open=False), _endings(script, is_open=True)
        for at in range(2, len(key) + 1):
            stem, ending = key[:at], key[at:]
            is_ending = ending in endings and (endings[ending] or not is_known or ending in _STAY_FOND)
            if is_ending and _goes_with(stem, ending):
                names |= self._stems.get(stem, set())
            if not ending and script != GREEK:
                names |= self._clipped.get(stem, set())
            if ending in opens:
                names |= self._opens.get(stem, set())
        return names

    def like_a_word(self, folded: str) -> set[str]:
        """The names that an English word may be said for besides: the beginning of a name and a fond ending."""
        if folded in self._small_words or folded in CALLED or folded in KIN_WORDS or len(folded) <= SHORTEST_STEM:
            return set()
        stems = {folded.removesuffix(ending) for ending in SAID_OF_WORDS if folded.endswith(ending)}
        long = [stem for stem in stems if len(stem) >= SHORTEST_STEM]
        names = {name for stem in long for name in self._stems.get(key_of(stem, LATIN), ()) if len(name) > len(stem)}
        names = names if self._told is None else names & self._told
        is_another = bool(names) and any(folded in words_known(language) for language in KNOWN if language != "en")
        return set() if is_another else names

    def ends_with(self, folded: str) -> set[str]:
        """The names that a folded Latin word is the end of, as it is or with an `s`: `Lore`, `Lores`, `Trudi`."""
        return {name for form in (folded, folded.removesuffix("s")) for name in self._ends.get(form, ())} - {folded}

    def _is_also_a_word(self, folded: str) -> bool:
        """Whether a folded word is one of every day, or a small one, in a language whose words we have."""
        stems = (folded.removesuffix(ending) for ending in _ENGLISH)
        return folded in self._small_words or folded in EVERYDAY or any(map(is_ordinary, stems))


def _stems_of(key: str) -> Iterator[str]:
    """The beginnings of a key up to a consonant, of three letters and more, or a vowel and a consonant; also with the
    consonant that it becomes in Slavic languages: `Oleg`, `Olezh-ka`."""
    for at in range(2, len(key) + 1):
        is_closed = key[at - 1] not in _VOWELS or (key[at - 1] == "i" and key[at - 2] in _VOWELS)
        if is_closed and (at >= SHORTEST_STEM or key[0] in _VOWELS):
            yield key[:at]
            if key[at - 1] in _SOFTENED:
                yield key[: at - 1] + _SOFTENED[key[at - 1]]


def _ends_of(name: str) -> Iterator[str]:
    """What a folded Latin name ends in from the beginning of a syllable on, as a fond form."""
    bare = name.rstrip("aeiouy")
    for syllable in _SYLLABLE.finditer(name, 2):
        end, stem = (part[syllable.start() :].replace("th", "t") for part in (name, bare))
        if len(end) >= SHORTEST_END and end[-1] in _VOWELS:
            yield end
        if len(stem) >= SHORTEST_STEM:
            yield from (f"{stem}{ending}" for ending in ENDINGS_OF_ENDS)


def _goes_with(stem: str, ending: str) -> bool:
    """Whether a stem is long enough for its ending: of two letters it takes a long one, and `-y` and `-o` only one
    syllable."""
    if len(stem) < SHORTEST_STEM:
        return len(ending) >= SHORTEST_LONG
    return ending not in _SHORT or bool(_ONE_SYLLABLE.fullmatch(stem))


@cache
def _endings(script: str, *, is_open: bool) -> Mapping[str, bool]:
    """Each ending as a key, in every form; whether it is told in this form, and no other names have it."""
    if script == GREEK:
        return {} if is_open else {key_of(f"b{form}", LATIN)[1:]: True for form in GREEK_ENDINGS.split()}
    told = (
        (OPEN_RUSSIAN, CYRILLIC_INFLECTED if script == CYRILLIC else IN_S) if is_open else (RUSSIAN, CYRILLIC_INFLECTED)
    )
    forms: dict[str, bool] = {}
    for row, inflections in (told, *(OPEN_ENDINGS if is_open else ENDINGS)[script]):
        for ending in row.split():
            key = key_of(f"b{ending}", LATIN)[1:]  # the beginning of a word is levelled otherwise
            for form in inflected(f"mart{key}", inflections) if len(key) > 1 else (f"mart{key}s",):
                changed = key_of(form, LATIN)[4:]
                if len(changed) >= max(SHORTEST_LONG if is_open and script == LATIN else 2, len(key) - 1):
                    forms.setdefault(changed, False)
            forms[key] = ending not in _ALSO_OF_OTHER_NAMES
    return forms
