"""Everybody's names by their words: whom one word of a text may be part of the name of.

Rule kept: a word of a text is looked up, never a person gone through. The words of all names are few beside the people
who bear them, so the forms of each are made once and stand in tables; what a text's word was found to be is kept too.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from enum import IntEnum
from functools import lru_cache, partial
from itertools import pairwise, product

from boxlore.core.people.names.forms import (
    close,
    full_names_of,
    gendered_forms,
    pet_forms,
    pet_forms_in_another_script,
    short_rows,
)
from boxlore.core.people.names.han_characters import Syllables, parted, plainest, spelled, wade_giles
from boxlore.core.people.names.lists_table import CHINESE_FAMILY, GIVEN
from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import PARTICLES, PATRONYMIC_ENDINGS, TITLES
from boxlore.core.people.names_in_text.fond_names import FondNames
from boxlore.core.people.names_in_text.inflections import (
    consonants_of,
    cyrillic_forms,
    cyrillic_keys_of,
    greek_forms,
    key_of,
    latin_forms,
    latin_plurals,
    latin_readings,
    loose_key,
    loose_keys_of,
    single_consonants,
    skeleton,
    without_endings,
    without_prefixes,
)
from boxlore.core.people.names_in_text.initials import initials_of, letter_key
from boxlore.core.people.names_in_text.kin_beside_names import KinOfHidden
from boxlore.core.people.names_in_text.ordinary_words import TOO_COMMON, english_words, is_english
from boxlore.core.people.names_in_text.run_together import NameRuns
from boxlore.core.people.names_in_text.said_otherwise import SaidOtherwise
from boxlore.core.people.names_in_text.short_names import ShortNames
from boxlore.core.people.names_in_text.small_words_table import CYRILLIC_STOPS
from boxlore.core.people.names_in_text.text_normalising import (
    APOSTROPHES,
    ARABIC,
    ARMENIAN,
    CYRILLIC,
    GEORGIAN,
    GREEK,
    HEBREW,
    LATIN,
    OTHER,
    UNBROKEN,
    Word,
    plain,
    read_text,
    script_of,
)
from boxlore.core.people.person import Person

SHORTEST_TO_MISSPELL, SHORTEST_TO_INFLECT, SHORTEST_KEY = 6, 4, 3
"""Letters that a word must have to be sought so; a shorter one is too often part of another word."""

LONGEST_PIECE = 2
"""Letters of a word of a longer family name that is none alone: the `St` of St John-Clare."""
LONGEST_ENDING_APART = 4
LONG_ENDING = 3
"""Letters of an ending behind a short form that nobody told, which make it another given name if there is one."""
ENDINGS_OF_WORDS = "ldry"
"""Letters that make another English word of one, such as an adjective."""
VIETNAMESE_MIDDLES = frozenset(("thi", "van"))
"""Middle names of Vietnam that tell women and men (common practice, no source)."""
FOND = "阿小"
"""What stands before the last character of a Chinese given name that is said fondly (common practice, no source)."""
NOT = ("n't", "n’t")
"""The end of `don't`, which is no form of Don."""
MOST_KNOWN = 1 << 17
KEYS, CONSONANTS, ROMANISED, BY_SOUND, BONES = "keys", "consonants", "romanised", "by sound", "bones"
MISSPELT, SINGLE = "misspelt", "single letters"
SILENT, FEWEST_BONES = tuple("rdtsxpz"), 2
"""Last letters of French names that nobody says; consonants (with the sign before them) by which a word is sought."""
SHORTEST_SKELETON = 5
"""Consonants of a name by which alone it is known in another script."""
CONSONANTS_BEHIND = ("", "s", "l", "lt", "st", "k", "n", "t", "m", "v", "h", "vm")
ENDINGS_BEHIND = ("s", "l", "le", "lt", "st", "ga", "ta", "lla", "lle", "n", "ssa")
CYRILLIC_BEHIND = ("", "m", "v", "h", "g", "vm")
"""The consonants of endings behind a name, and whole endings, in Latin letters and in Cyrillic ones."""
SHORTEST_LOOSE = 5
"""Letters of a loose key: shorter ones have too many words."""
SLAVIC_FAMILIES = ("ov", "ova", "ev", "eva", "off", "eff", "ow", "owa", "sky", "skaya", "skij", "skaja")
"""Endings of family names in Latin letters that stand for Cyrillic ones, which other languages write otherwise."""
_FIRST_SYLLABLE = re.compile(r"[^aeiouy]*[aeiouy]")
_UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "å": "aa", "ø": "oe"})


class As(IntEnum):
    """How a word of a text stands for a word of a name, the surest first."""

    TOLD = 0
    INFLECTED = 1
    OTHER_SCRIPT = 2
    SHORT = 3
    """A short form that nobody told."""
    FOND = 4
    """What may be a fond form, by the rules of `fond_names`."""
    MISSPELT = 5
    PART_OF_FULL = 6
    """What names nobody alone, and somebody beside the rest of the name: the full form of a short one that was told
    (`Mary` for May), and few consonants of Hebrew or Arabic."""
    READ_SO = 7
    """The same by few consonants of what another script has by its sound, or of a short name by its key (`Marsch`):
    beside the rest of the name a question."""


Ids = frozenset[str]


@dataclass(frozen=True, slots=True)
class Meant:
    """Whom one word of a text may be part of the name of: as what they are called, as their family's name, besides."""

    calls: Mapping[str, As] = field(default_factory=dict)
    families: Mapping[str, As] = field(default_factory=dict)
    besides: Mapping[str, As] = field(default_factory=dict)
    is_everyday: bool = False
    is_word: bool = False
    """Whether it is a common English word where it is written small: `mere`, `tan`."""
    is_other_name: bool = False
    """Whether the form is a given name of its own: `Marta` is not only a case of `Mart`."""
    is_by_a_letter: bool = False
    """Whether it is a name with one letter behind it: `Perpetual`."""
    is_short: bool = False
    """Whether it is an ending behind a name of two or three letters."""

    def __bool__(self) -> bool:
        return bool(self.calls or self.families or self.besides)


NOBODY_MEANT = Meant()
SEXES = {"m": "m", "male": "m", "f": "f", "female": "f"}
"""What may be told of a sex: no other word, of which the first letter may be of either in some language."""


@dataclass(frozen=True, slots=True)
class Bearer:
    """The words of one person's names, folded. `letters` are the first letters of the given names, told in order."""

    calls: frozenset[str]
    pets: frozenset[str]
    fulls: frozenset[str]
    families: frozenset[str]
    besides: frozenset[str]
    letters: tuple[str, ...]
    family_letters: frozenset[str]
    every_family_letter: str
    """The first letters of all words of the family name told first: `tv` of Thornbury-Vale, `od` of O'Donnell."""
    whole: tuple[tuple[str, ...], ...]
    read_as: frozenset[str]
    """How a family name in Han characters is read: a word of every day too often to name anybody alone (`he`)."""
    own_families: frozenset[str]
    """Those of the family names that were told, not as somebody of another sex bears them."""

    @property
    def every_letter(self) -> frozenset[str]:
        """The first letters of everything by which the person may be called."""
        return frozenset(name[0] for name in (*self.letters, *self.calls, *self.pets, *self.fulls))


def bearer_of(person: Person) -> Bearer:
    """The words of a person's names."""
    calls, letters, asides = _call_words(_spellings(person.calls))
    families: set[str] = set()
    own_families: set[str] = set()
    for surname in _spellings(person.surnames):
        every_word = _name_words(surname)
        words = [word for word in every_word if word not in PARTICLES]
        long = [word for word in words if len(word) > LONGEST_PIECE or len(words) == 1]
        own_families.update(("".join(every_word), "".join(words), *long, *_without_their_beginnings(surname)))
        families.update(form for word in own_families if len(word) > 1 for form in gendered_forms(word))
    every_call = calls | asides
    pets = {pet for call in every_call for pet in pet_forms(call) | pet_forms_in_another_script(call)}
    pets = (pets | asides) - calls
    fulls = {full for call in calls for full in full_names_of(call)} - calls - pets
    read_as, spelled_calls = _spelled(person)
    for spelling in spelled_calls:
        (pets if len(spelling) > 1 else fulls).add("".join(spelling))
        fulls.update(syllable for syllable in spelling if len(syllable) > 1)
    pets -= calls
    every = [word for form in (*person.forms, person.name) for word in _name_words(form)]
    besides = {word for word in every if len(word) > 1} - calls - families - PARTICLES - TITLES
    besides |= read_as
    words_told = tuple(_name_words(person.name))
    has_no_parts = bool(words_told) and not calls and not families and script_of(words_told[0][0]) != UNBROKEN
    is_description = person.name[:1].islower() and script_of(person.name[0]) != GEORGIAN  # it has no capitals
    alone = (words_told,) if has_no_parts and not is_description else ()
    first = {letter_key(word[0]) for surname in person.surnames for word in _name_words(surname)[-1:]}
    return Bearer(
        frozenset(calls), frozenset(pets), frozenset(fulls), frozenset(families), frozenset(besides), letters,
        frozenset(first | {letter_key(family[0]) for family in families}),
        "".join(_family_initials(" ".join(person.surnames[:1]))),
        alone, frozenset(read_as), frozenset(own_families),
    )  # fmt: skip


def _family_initials(surname: str) -> Iterator[str]:
    for word in read_text(surname).words:
        parts = [part for part in APOSTROPHES.split(word.folded) if part]
        if plain(word.folded) not in PARTICLES and not word.folded.isdigit():
            yield from (letter_key(part[0]) for part in (parts if len(parts[0]) < SHORTEST_KEY else parts[:1]))


def _without_their_beginnings(surname: str) -> Iterator[str]:
    """`O'Brien` → `brien`: what stands behind an apostrophe is a word of its own to many."""
    for word in surname.split():
        beginning, apostrophe, rest = "".join(
            "'" if APOSTROPHES.match(letter) else letter for letter in word
        ).partition("'")
        if apostrophe and len(beginning) < SHORTEST_KEY < len(rest):
            yield "".join(_name_words(rest))


def _spelled(person: Person) -> tuple[set[str], list[Syllables]]:
    """How the family names and the given names of a Chinese name may be spelled in Latin letters, by syllables."""
    families = [spelling for name in person.surnames for spelling in spelled(name)]
    calls = [spelling for name in person.calls for spelling in spelled(name)]
    told = {"".join(_name_words(name)) for name in person.surnames} & CHINESE_FAMILY
    if told:
        parts = [parted("".join(_name_words(name))) for name in person.calls]
        calls += [spelling for part in parts if part for spelling in (part, tuple(map(wade_giles, part)))]
        families += [tuple(map(wade_giles, parted(name))) for name in sorted(told)]
    return {"".join(spelling) for spelling in families}, calls


def _han_parts(name: str) -> Iterator[str]:
    """The ends of a name in Han characters that may be a given name or a family name alone: where a Japanese name is
    parted its characters do not tell."""
    if all("\u3400" <= letter <= "\u9fff" for letter in name):
        yield from (name[at:] for at in range(1, len(name) - 1))
        yield from (name[:at] for at in range(2, len(name) - 1))


def _call_words(calls: Iterable[str]) -> tuple[set[str], tuple[str, ...], set[str]]:
    """The words of given names, the letters of the first, and those words that hardly anybody is called by alone:
    behind a particle, and in Vietnam all but the last (`Maria da Graça`, `Thị Hồng Nhung`)."""
    words: set[str] = set()
    asides: set[str] = set()
    letters: tuple[str, ...] = ()
    for call in calls:
        every = [(part, len(part) > 1 and part in PARTICLES) for part in _name_words(call)]
        parts = [part for part, is_particle in every if not is_particle]
        behind = {part for (_, is_particle), (part, _) in pairwise(every) if is_particle}
        words.update(part for part in parts if len(part) > 1)
        words.update("".join(_name_words(told)) for told in call.split() if "-" in told)  # `Maarja-Liis`: Maarjaliis
        if len(parts) > 1:  # `Wee Jamie`
            asides.update(part for part in parts if is_english(part) and part not in CALLED)
        before_the_last = set() if VIETNAMESE_MIDDLES.isdisjoint(part for part, _ in every) else set(parts[:-1])
        asides.update(part for part in parts if len(part) > 1 and part in behind | before_the_last)
        asides.update(_by_syllables(parts))
        letters = letters or tuple(part[0] for part in parts)
    return words - asides, letters, asides


def _by_syllables(parts: Sequence[str]) -> Iterator[str]:
    """`haju` of Hans-Jürgen: the first syllables of two names, as far as their vowels."""
    firsts = [_FIRST_SYLLABLE.match(part) for part in parts]
    if len(firsts) == 2 and all(firsts):
        yield "".join(first[0] for first in firsts if first)


def _name_words(name: str) -> list[str]:
    """The folded words of a name as told, without apostrophes and numbers."""
    return [plain(word.folded) for word in read_text(name).words if not word.folded.isdigit()]


def _spellings(names: Iterable[str]) -> list[str]:
    """Names, and those that may be spelled with more letters: `Jürgen` → `Juergen`."""
    told = list(names)
    return told + [spelled for name in told if (spelled := name.lower().translate(_UMLAUTS)) != name.lower()]


@dataclass(slots=True)
class _Roles:
    """Who bears one word of a name, and how."""

    calls: set[str] = field(default_factory=set)
    pets: set[str] = field(default_factory=set)
    fulls: set[str] = field(default_factory=set)
    families: set[str] = field(default_factory=set)
    besides: set[str] = field(default_factory=set)


Table = dict[str, dict[str, As]]
"""The forms of words, each with the words that it is a form of."""


class NameIndex:
    """Looks words up among the names of `people`. `hidden` are the ids of those who may not be named."""

    def __init__(self, people: Iterable[Person], hidden: Ids) -> None:
        everyone = list(people)
        self.hidden = hidden
        self.bearers = {person.id: bearer_of(person) for person in everyone}
        self.sexes = {person.id: SEXES.get(person.sex.lower(), "") for person in everyone}
        self.runs = NameRuns(self.bearers)
        self.wives = _wives(everyone, hidden)
        self.kin = KinOfHidden(everyone, hidden)
        self.wholes: dict[str, list[tuple[tuple[str, ...], str]]] = {}
        self.unbroken: dict[str, tuple[set[str], bool]] = {}
        self.syllables: dict[tuple[str, ...], set[str]] = {}
        self.initials: dict[str, set[str]] = {}
        self._roles: dict[str, _Roles] = {}
        self._tables: dict[str, Table] = {}
        self._known: dict[tuple[str, str], Meant] = {}
        for ident, bearer in self.bearers.items():
            self._add(ident, bearer)
        for person in everyone:
            self._add_unbroken(person)
            self._add_initials(person)
        called = [
            base
            for base, roles in self._roles.items()
            if not hidden.isdisjoint(roles.calls | roles.pets) and not base.endswith(PATRONYMIC_ENDINGS)
        ]
        told = {base for base in called if not hidden.isdisjoint(self._roles[base].calls)}
        self._fond = FondNames(((base, script_of(base[0])) for base in called), told=told)
        self._short = ShortNames(told)
        named = (person for person in everyone if person.id in hidden)
        self._otherwise = SaidOtherwise({person.id: [_name_words(call) for call in person.calls] for person in named})

    def meant_by(self, word: Word) -> Meant:
        """Whom a word of a text may be part of the name of."""
        asked = (word.folded, word.script)
        known = self._known.get(asked)
        if known is None:
            if len(self._known) >= MOST_KNOWN:
                self._known.clear()
            known = self._known[asked] = self._look_up(word)
        return known

    def borne_by(self, first: str, second: str, *, calls_only: bool) -> Ids:
        """Who bears a long name of which two folded words are the parts, as it is or with an ending: `Sól Rúnar`."""
        people: set[str] = set()
        for base, how in self._table(LATIN).get(f"{first}{second}", {}).items():
            is_parted = how is As.TOLD or (how is As.INFLECTED and len(base) > len(first) + 1)
            if is_parted and len(base) >= SHORTEST_TO_MISSPELL:
                people |= self._roles[base].calls | (self._roles[base].pets if how is As.TOLD else set())
                people |= set() if calls_only else self._roles[base].families
        return frozenset(people)

    def called_in_short(self, folded: str) -> Ids:
        """Those hidden of whom a folded word is the beginning of what they are called."""
        names = (base for base in self._roles if base != folded and base.startswith(folded))
        return frozenset(person for base in names for person in self._roles[base].calls & self.hidden)

    def called_so(self, folded: str) -> Ids:
        """Who is called by a folded given name as it is."""
        return frozenset(self._roles[folded].calls) if folded in self._roles else frozenset()

    def _add(self, ident: str, bearer: Bearer) -> None:
        for word in bearer.calls:
            self._role(word).calls.add(ident)
        for word in bearer.pets:
            self._role(word).pets.add(ident)
        for word in bearer.fulls:
            self._role(word).fulls.add(ident)
        for word in bearer.families:
            self._role(word).families.add(ident)
        for word in bearer.besides:
            self._role(word).besides.add(ident)
        if ident not in self.hidden:
            return
        for whole in bearer.whole:
            self.wholes.setdefault(whole[0], []).append((whole, ident))

    def _role(self, word: str) -> _Roles:
        return self._roles.setdefault(word, _Roles())

    def _add_unbroken(self, person: Person) -> None:
        """Names that are written without spaces: whole they are sure; parts of two letters and more are asked about.

        Of a name in Latin letters that is made of syllables of pinyin these are kept, to be sought in characters.
        """
        for names, is_whole in ((person.forms, True), ((person.name,), True), (person.calls, False),
                                (person.surnames, False), (_han_parts(person.name), False)):  # fmt: skip
            for name in names:
                written = plainest("".join(read_text(name).clean.split()))
                if len(written) > 1 and all(script_of(letter) == UNBROKEN for letter in written):
                    ids, _ = self.unbroken.setdefault(written, (set(), is_whole))
                    ids.add(person.id)
        for call in person.calls if person.id in self.hidden else ():
            written = plainest("".join(read_text(call).clean.split()))
            if len(written) > 1 and all(script_of(letter) == UNBROKEN for letter in written):
                for fond in FOND:
                    self.unbroken.setdefault(f"{fond}{written[-1]}", (set(), False))[0].add(person.id)
        for family, call in product(person.surnames, person.calls):
            parts = [parted("".join(_name_words(name))) for name in (family, call)]
            if person.id in self.hidden and all(parts):
                self.syllables.setdefault((*parts[0], *parts[1]), set()).add(person.id)
                if len(parts[1]) > 1:
                    self.syllables.setdefault(parts[1], set()).add(person.id)

    def _add_initials(self, person: Person) -> None:
        bearer = self.bearers[person.id]
        married = [self.bearers[spouse].family_letters for spouse in person.spouses if spouse in self.bearers]
        families = {*bearer.family_letters, bearer.every_family_letter}.union(*married)
        for letters in initials_of(person, bearer.letters, families) if person.id in self.hidden else ():
            self.initials.setdefault(letters, set()).add(person.id)

    def _look_up(self, word: Word) -> Meant:
        if word.script == UNBROKEN:
            return NOBODY_MEANT  # such names are looked for in the whole text
        if word.folded.endswith(NOT):
            return NOBODY_MEANT
        stems = stems_of(word)
        matches: dict[str, As] = {}
        for stem in stems:
            for table, key in self._keys(stem, word.script):
                for base, how in self._table(table).get(key, {}).items():
                    matches[base] = min(how, matches.get(base, how))
        if not TOO_COMMON.isdisjoint(stems) or word.folded in CYRILLIC_STOPS:
            return self._meant(word.folded, {base: how for base, how in matches.items() if how is As.TOLD})
        own = self._meant(word.folded, matches)
        ways = (*own.calls.values(), *own.families.values(), *own.besides.values())
        if min(ways, default=As.MISSPELT) <= As.OTHER_SCRIPT:
            return own
        fond = self._fond.of(stems[-1], word.script)  # a short form of one may be the fond form of another
        is_unknown = min(matches.values(), default=As.READ_SO) >= As.PART_OF_FULL and not fond
        also = self._fond.ends_with(stems[-1]) | self._fond.like_a_word(stems[-1]) if is_unknown else set()
        if also and word.script == LATIN:
            return replace(self._meant(word.folded, matches, also), is_everyday=True)
        slips = self._slips(word.folded) if word.script == LATIN else {}
        sure = {base: how for base, how in matches.items() if base not in slips or how < slips[base]}
        meant = self._meant(word.folded, slips | sure, fond)
        made = self._otherwise.of(plain(stems[-1])) - meant.calls.keys() if word.script == LATIN else ()
        return replace(meant, calls={**meant.calls, **dict.fromkeys(made, As.FOND)}) if made else meant

    def _slips(self, folded: str) -> dict[str, As]:
        """Words of names that a folded Latin word may be a slip of."""
        slips = self._doubled(folded)
        if len(folded) >= SHORTEST_TO_MISSPELL - 1:
            slips = slips or self._misspelt(plain(folded))
        return dict.fromkeys(self._short.near(plain(folded)), As.MISSPELT) | slips

    def _keys(self, stem: str, script: str) -> Iterator[tuple[str, str]]:
        """The tables, and the keys in them, by which a stem is looked up."""
        yield from ((script, form) for form in _asked(stem, script))
        if script == LATIN:
            yield KEYS, key_of(stem, LATIN)
            yield from ((CONSONANTS, key) for key in _semitic_keys(stem, LATIN))
            if self._table(ROMANISED):
                loose = loose_keys_of(stem)
                yield from ((ROMANISED, key) for key in loose | {skeleton(key) for key in loose})
        if script == CYRILLIC:
            readings = latin_readings(stem)
            yield from ((BY_SOUND, key) for key in readings | {skeleton(loose_key(reading)) for reading in readings})
        if script in (CYRILLIC, GREEK):
            yield BONES, skeleton(loose_key(key_of(stem, script)))

    def _meant(self, folded: str, matches: dict[str, As], fond: Iterable[str] = ()) -> Meant:
        calls: dict[str, As] = {}
        families: dict[str, As] = {}
        besides: dict[str, As] = {}
        for base, how in matches.items():
            roles = self._roles[base]
            _surest(calls, roles.fulls, max(how, As.PART_OF_FULL))
            if folded not in CALLED or len(folded) < len(base) + LONG_ENDING:  # `Jurgita` is no form of `Jürg`
                _surest(calls, roles.pets, max(how, As.SHORT))
            _surest(calls, roles.calls, how)
            _surest(families, roles.families, how)
            _surest(besides, roles.besides, how)
        for base in fond:
            _surest(calls, self._roles[base].calls | self._roles[base].pets, As.FOND)
        if not (calls or families or besides):
            return NOBODY_MEANT
        told = As.TOLD in (*calls.values(), *families.values(), *besides.values())
        return Meant(
            calls, families, besides,
            is_everyday=folded in EVERYDAY or any(base in EVERYDAY for base in matches),
            is_word=folded in english_words(),
            is_other_name=not told and (folded in GIVEN or bool(short_rows(folded))),
            is_by_a_letter=not told and len(folded) - 1 in map(len, matches) and folded[-1] in ENDINGS_OF_WORDS,
            is_short=not told and min(map(len, matches), default=9) < SHORTEST_TO_INFLECT,
        )  # fmt: skip

    def _table(self, script: str) -> Table:
        """The forms of all words in one script, made when a text first has it."""
        table = self._tables.get(script)
        if table is None:
            table = self._tables[script] = {}
            for base in self._roles:
                for form, how in forms_of(base, script):
                    forms = table.setdefault(form, {})
                    forms[base] = min(how, forms.get(base, how))
        return table

    def _doubled(self, folded: str) -> dict[str, As]:
        """Words of names of which a consonant is written double here, or once where it is double: `Nawwal`, `Elen`."""
        single = single_consonants(plain(folded))
        if len(single) < SHORTEST_TO_INFLECT or folded in english_words():
            return {}
        bases = {base for base, how in self._table(LATIN).get(single, {}).items() if how <= As.INFLECTED}
        return dict.fromkeys((bases | set(self._table(SINGLE).get(single, ()))) - EVERYDAY, As.MISSPELT)

    def _misspelt(self, folded: str) -> dict[str, As]:
        """Words of hidden people's names of six letters and more that are one slip from it."""
        table = self._tables.get(MISSPELT)
        if table is None:
            table = self._tables[MISSPELT] = {}
            for base, roles in self._roles.items():
                if len(base) >= SHORTEST_TO_MISSPELL and not self.hidden.isdisjoint(roles.calls | roles.families):
                    for form in _one_less(base):
                        table.setdefault(form, {})[base] = As.MISSPELT
        near = {base for form in _one_less(folded) for base in table.get(form, ())}
        return {base: As.MISSPELT for base in near if close(base, folded)}


def _surest(known: dict[str, As], people: Iterable[str], how: As) -> None:
    """Note for each of the people the surest way in which a word stands for them."""
    for person in people:
        known[person] = min(how, known.get(person, how))


def _wives(people: Iterable[Person], hidden: Ids) -> dict[str, set[str]]:
    """By the id of a husband, those hidden who may be called Mrs with his name."""
    wives: dict[str, set[str]] = {}
    for person in people:
        if person.id in hidden and person.sex[:1].lower() != "m":
            for spouse in person.spouses:
                wives.setdefault(spouse, set()).add(person.id)
    return wives


def _one_less(word: str) -> set[str]:
    return {word} | {word[:at] + word[at + 1 :] for at in range(len(word))}


def stems_of(word: Word) -> list[str]:
    """The word, and what an apostrophe parts from it: `ruth's` → `ruth`, `l'anna` → `anna`."""
    parts = APOSTROPHES.split(word.folded)
    if len(parts) == 1:
        return parts
    stems = ["".join(parts)]
    if len(parts[-1]) <= LONGEST_ENDING_APART:
        stems.append("".join(parts[:-1]))
    if len(parts[0]) <= 2:
        stems.append("".join(parts[1:]))
    return stems


def _asked(stem: str, script: str) -> list[str]:
    """By which forms a word is looked up in the table of its script."""
    if script in (LATIN, OTHER):
        return [stem]
    if script in (GEORGIAN, ARMENIAN):
        return [key_of(rest, script) for rest in without_endings(stem, script)]
    if script not in (HEBREW, ARABIC):
        return [key_of(stem, script)]
    rests = [stem, *without_prefixes(stem, script)]
    keys = [key_of(rest, script) for rest in rests]
    return [*rests, *keys, *(f"i{key[1:]}" for key in keys if key[:1] == "a")]  # an alef is any vowel


Forms = Iterable[tuple[str, As]]


def _told(base: str, own: str) -> Forms:
    yield base, As.TOLD


def _latin(base: str, own: str) -> Forms:
    if own == LATIN:
        yield base, As.TOLD
        is_short = len(base) < SHORTEST_TO_INFLECT  # `Age` is a word beside `Aga`
        forms = (form for form in latin_forms(base) if not (is_short and form[-1] == "e" and is_english(form)))
        yield from ((form, As.INFLECTED) for form in forms)
        yield from ((form, As.SHORT) for form in latin_plurals(base))


def _keys(base: str, own: str) -> Forms:
    if own == LATIN and len(base) >= SHORTEST_TO_MISSPELL:
        yield key_of(base, own), As.MISSPELT  # Voloshina, Woloschina
    elif own == LATIN and len(base) >= SHORTEST_TO_INFLECT:
        yield key_of(base, own), As.READ_SO  # `Theodor Marsch`
    if own in (CYRILLIC, GREEK, ARMENIAN, GEORGIAN):
        key = key_of(base, own)
        for spelling in {key, key.replace("ts", "s"), key.replace("ts", "k")}:  # Kuznetsova is Kuznecova too
            yield from ((key_of(form, LATIN), As.OTHER_SCRIPT) for form in {spelling} | latin_forms(spelling))


def _romanised(base: str, own: str) -> Forms:
    is_slavic = own == CYRILLIC or (own == LATIN and base.endswith(SLAVIC_FAMILIES))
    key = loose_key(key_of(base, own)) if is_slavic else ""
    if len(key) >= SHORTEST_LOOSE:
        yield key, As.MISSPELT
        yield from _skeletons(key, CONSONANTS_BEHIND)
        yield from ((loose_key(form), As.MISSPELT) for form in cyrillic_forms(key_of(base, own)))
        yield from ((f"{key}{ending}", As.MISSPELT) for ending in ENDINGS_BEHIND)


def _by_sound(base: str, own: str) -> Forms:
    if own == LATIN and len(base) >= SHORTEST_KEY:
        for key in cyrillic_keys_of(base):
            is_long = len(base) >= SHORTEST_TO_INFLECT
            yield from ((form, As.MISSPELT) for form in (cyrillic_forms(key) if is_long else (key,)))
            yield from _skeletons(loose_key(key), CYRILLIC_BEHIND)


def _bones(base: str, own: str) -> Forms:
    """The consonants by which another script writes a Latin name as it is said, in each of the ways of languages: too
    few to name anybody alone, and enough for a given name beside its family name (`Хейзел Прайс`, `Πιέρ Σεβαλιέ`)."""
    if own == LATIN:
        for bones in {skeleton(loose_key(key)) for key in cyrillic_keys_of(base)}:
            spelled = {bones, bones[:-1]} if base.rstrip("e").endswith(SILENT) else {bones}
            for form in spelled:
                if len(form) > FEWEST_BONES:
                    yield from ((f"{form}{ending}", As.READ_SO) for ending in ("", *CYRILLIC_BEHIND[1:]))


def _skeletons(loose: str, behind: Iterable[str]) -> Forms:
    bones = skeleton(loose)
    if len(bones) > SHORTEST_SKELETON:
        doubled = bones[-1] * 2
        forms = (f"{bones}{ending}".replace(doubled, bones[-1]) for ending in behind)
        yield from ((form, As.MISSPELT) for form in forms)


def _single(base: str, own: str) -> Forms:
    if own == LATIN:
        yield single_consonants(base), As.MISSPELT


def _consonants(base: str, own: str) -> Forms:
    if own in (HEBREW, ARABIC):
        yield from _long_enough(key_of(base, own))


def _long_enough(key: str) -> Forms:
    if len(key) > 1:
        yield key, As.OTHER_SCRIPT if len(key) >= SHORTEST_KEY else As.PART_OF_FULL


def _cyrillic(base: str, own: str) -> Forms:
    if own in (LATIN, GREEK, CYRILLIC):
        key = key_of(base, own)
        for form in cyrillic_forms(key) if len(key) >= SHORTEST_KEY else {key}:
            yield form, As.OTHER_SCRIPT if own != CYRILLIC else As.TOLD if form == key else As.INFLECTED


def _greek(base: str, own: str) -> Forms:
    if own in (LATIN, GREEK, CYRILLIC):
        key = key_of(base, own)
        for form in greek_forms(key) if len(key) >= SHORTEST_KEY else {key}:
            yield form, As.OTHER_SCRIPT if own != GREEK else As.TOLD if form == key else As.INFLECTED


def _spelled_out(base: str, own: str, script: str) -> Forms:
    """A name in letters of which each has its Latin one, Georgian or Armenian, with the ending of many names there."""
    key = key_of(base, own) if own not in (UNBROKEN, OTHER, HEBREW, ARABIC) else ""
    if own == script or len(key) >= SHORTEST_KEY:
        how = As.TOLD if own == script else As.OTHER_SCRIPT
        yield key, how
        yield key.removesuffix("i"), max(how, As.INFLECTED)


def _semitic(base: str, own: str, script: str) -> Forms:
    if own == script:
        yield base, As.TOLD
        yield key_of(base, own), As.PART_OF_FULL
    elif own not in (UNBROKEN, OTHER):
        for key in _semitic_keys(base, own):
            yield from _long_enough(key)


def _semitic_keys(word: str, script: str) -> set[str]:
    """The consonants of a word of another script; a Latin j may stand for i, and for the Arabic jim."""
    return {
        consonants_of(key_of(spelling, script))
        for spelling in {word, word.replace("j", "zh"), word.replace("ch", "kh")}
    }


@lru_cache(1 << 14)
def forms_of(base: str, script: str) -> tuple[tuple[str, As], ...]:
    """Each form of a word of a name that is looked up in one table, and how: the same for every registry."""
    return tuple(_MAKERS.get(script, _told)(base, script_of(base[0])))


_MAKERS: dict[str, Callable[[str, str], Forms]] = {
    LATIN: _latin, KEYS: _keys, CONSONANTS: _consonants, ROMANISED: _romanised, BY_SOUND: _by_sound, BONES: _bones,
    CYRILLIC: _cyrillic, GREEK: _greek, SINGLE: _single, HEBREW: partial(_semitic, script=HEBREW),
    ARABIC: partial(_semitic, script=ARABIC), GEORGIAN: partial(_spelled_out, script=GEORGIAN),
    ARMENIAN: partial(_spelled_out, script=ARMENIAN),
}  # fmt: skip
