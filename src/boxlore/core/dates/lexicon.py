"""All words of dates in every language, in one trie: a row of words leads to every sense that it has.

A sense is a kind, a value and the languages in which the word has it, as bits. The trie is made when the first words
are read. Words are found with and without their accents (`fevrier`), unless the plain form is a word of its own;
German and Nordic letters also as `ae`, `oe`, `ue`, `aa`, `ss`.
"""

import re
import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache

from boxlore.core.dates.calendars import HEBREW_MONTHS
from boxlore.core.dates.cldr_table import MONTHS, WEEKDAYS
from boxlore.core.dates.holidays import HOLIDAY_NAMES
from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.dates.languages.language import Language
from boxlore.core.dates.school_table import SCHOOL
from boxlore.core.dates.wars_table import BESIDE_WAR, LANGUAGES_OF_WAR, NAMED_YEARS, SPAN_NAMES

ANY_LANGUAGE = -1
"""The languages of what is the same in all of them: digits and punctuation."""


LANGUAGE_BITS = {language.code: 1 << place for place, language in enumerate(LANGUAGES)}
"""The bit of each language by its code."""


def _bits(*codes: str) -> int:
    return sum(LANGUAGE_BITS[code] for code in codes)


ONLY_MAORI = _bits("mi")
ENGLISH = _bits("en")
ITALIAN, RUSSIAN = _bits("it"), _bits("ru")
WITH_ORDINAL_O = sum(1 << place for place, language in enumerate(LANGUAGES) if "º" in language.ordinal_endings)
"""The languages as bits in which a small o behind a number makes an ordinal (`1o de mayo`)."""

DATIVE = _bits("ru", "lv", "lt")
"""The languages as bits in which “to me six years” is an age."""

ROMANCE = _bits("fr", "es", "it", "pt")
"""The languages as bits in which “my twenty years” is an age."""

PART_BEHIND = _bits("et", "fi", "lv", "lt", "hu")
"""The languages as bits in which “early” stands behind its decade (`1930ndate algus`)."""

DAY_AS_AN_ORDER = _bits("en", "hu")
"""Languages that may name a day by its month and an ordinal word behind it: “June second”, “június ötödikén”."""

MONTH_WITHIN_A_COUNT = _bits("lv", "lt")
"""Languages in which a month may stand between a count and what it counts: “pirmąjį birželio sekmadienį”."""

YEAR_NAMED_BEHIND = _bits("et", "fi", "lv", "lt", "hu", "ru", "pl")
"""The languages as bits in which “year” stands behind its number (`1949. aasta`)."""

YEAR_BY_ORDINAL = _bits("et", "lv", "lt", "ru", "pl", "cs")
"""The languages as bits in which a year is told by an ordinal (`в тридцать восьмом`)."""

_OLD_STYLE = ("ru", "et", "lv", "lt")
OLD_STYLE_LANGUAGES = _bits(*_OLD_STYLE)
"""The languages as bits of countries that told their days by the Julian calendar until 1918: a feast by one of their
names is of that language, also where it stands among the names of `holidays_table`."""

_BY_NEIGHBOURS_KINDS = ("number", "ordinal_word", "beside_war")


@dataclass(slots=True)
class Sense:  # not frozen, as `lexer.Token` is not
    """What a token can mean. `kind` is one of KINDS, or `day`, `ordinal`, `year`, `dates` and `name`, which the lexer
    makes; `value` belongs to the kind."""

    kind: str
    value: object = None
    languages: int = ANY_LANGUAGE


def languages_of(senses: Iterable[Sense]) -> int:
    """The languages of senses as bits, without what is the same in all of them."""
    languages = 0
    for sense in senses:
        languages |= sense.languages if sense.languages != ANY_LANGUAGE else 0
    return languages


DAYS_OF_A_WEEK = 7
"""So much is added to the value of a day of the week in a form that is counted."""

SEVERAL = 2 * DAYS_OF_A_WEEK
"""So much is added to it in a form of more than one, which is no day by itself."""

SEASONS = {"spring": 21, "summer": 22, "autumn": 23, "winter": 24}
UNITS = (
    "day", "week", "fortnight", "month", "year", "weekend", "days", "weeks", "months", "years", "one_week", "one_month",
    "6_months", "18_months", "120_months", "600_months",
    "week_from", "week_to",
)  # fmt: skip
FRACTIONS = {
    "first_half": (0, 2), "second_half": (1, 2), "first_quarter": (0, 4), "second_quarter": (1, 4),
    "third_quarter": (2, 4), "fourth_quarter": (3, 4),
}  # fmt: skip
"""Parts that are exact: the how-manieth (from 0) of how many."""

PARTS = ("early", "mid", "late", *FRACTIONS)
NTH_FRACTIONS = {
    "half": ("first_half", "second_half"),
    "quarter": ("first_quarter", "second_quarter", "third_quarter", "fourth_quarter"),
    "third": ("early", "mid", "late"),
}
"""The parts that are told by which they are: “2. Hälfte”, “II poł.”, “last quarter”."""

KINDS = (
    "noise", "about", "about_behind", "doubt", "or", "and", "either", "between", "between_behind", "before",
    "before_behind", "at_latest", "after", "after_behind", "at_earliest", "since", "since_behind", "until",
    "until_behind", "from", "to", "to_open", "or_later", "or_earlier", "decades", "century", "hundreds", "few",
    "undated", "no_year", "correction", "old_style", "new_style", "hebrew", "republican", "before_christ",
    "calculated", "when", "was", "aged", "at_years", "years_old", "birthday", "possessive", "i", "they", "life",
    "south", "north", "term", "turn", "eve", "last", "not", "other_month", "morrow", "today", "not_yet", "older",
    "to_the_day", "feast_day", "eve_behind", "clock", "clock_part", "clock_behind", "name", "night_to", "at_a_distance",
    "or_year_after", "or_year_before", "numbered", "measured", "street", "street_of", "same", "as",
    "infant", "small", "alive", "because", "occasion", "occasion_ahead", "beyond_earlier", "beyond_later",
)  # fmt: skip
"""Kinds of words that a language may have rows for, besides seasons, units and parts; `name` is of words that are none
of a date, though they are spelled as one without its accents (“tel. 1938”, and Hungarian “tél”)."""

PIECE = re.compile(r"\d+|[^\W\d_]+|[^\w\s]|_")


FINER: dict[str, tuple[str, object]] = {
    "nearly": ("about", "nearly"), "at_most": ("not_yet", "at_most"), "should_be": ("correction", "should_be"),
    "likelier": ("correction", "likelier"), "about_years": ("about", "years"),
    "about_years_old": ("years_old", "about"),
    "just_before": ("before", "just"), "just_after": ("after", "just"),
    "couple": ("few", "couple"), "second_morrow": ("morrow", "second"),
    "following": ("after", "next"), "either_following": ("after", "perhaps"),
    "newborn": ("infant", "newborn"), "teenager": ("small", "teenager"), "at_school": ("small", "at_school"),
    "by_then": ("at_latest", "ahead"),
    "just_turned": ("birthday", "just"), "exchange": ("numbered", "exchange"), "plate": ("numbered", "plate"),
}  # fmt: skip
"""Rows of words that say more than another row of their kind: “nearly ten” is about ten, and before it; “should be”
corrects what stands before it, and alone is doubt; “by” is a limit only of what stands behind it; “more like”
corrects it with doubt; “just before” a date is not long before it, a couple of years are fewer than a few; a
telephone's number may stand behind a name, and a car's behind letters."""

BEYOND = {"or_earlier": "beyond_earlier", "or_later": "beyond_later"}
"""Kinds of words for what is before a date or after it, and of the same without “or” (“earlier”)."""

PREFIXES = {"early_prefix": "early", "mid_prefix": "mid", "late_prefix": "late"}
"""Rows of what is written before a season as one word with it: “Frühsommer”, “loppukesä”."""

MEASURES = ("m", "km", "cm", "mm", "kg", "g", "ha")
"""Symbols of measures (the International System of Units; the hectare is accepted with it)."""

THE_ONE_BESIDE = {"one_before": -1, "one_after": 1}
"""Rows of words for the one next to what was told (“or the one before”), and the years to it."""

TOLERANCES = ("give_or_take", "either_way")
"""Rows of words before and behind how far a date may be wrong, which are sought as they stand
(`core.dates.tolerances`)."""
GIVE_OR_TAKE, EITHER_WAY = (
    tuple(dict.fromkeys(form for of in LANGUAGES for form in filter(None, of.words.get(row, "").split("|"))))
    for row in TOLERANCES
)

IN_A_YEAR = "in_a_year"
"""The row of the words behind which two digits may be a year: “back in 62”, “en el 62”."""

OF_THE_DATE = "of_the_date"
"""The row of how words begin that say by whose calendar a date is, that it is not so sure, or of what it is the date
(of our own choosing): “Easter 1951, Orthodox”, “14 March 1931, unlikely”, “May 1938, posted”."""

OF_A_STRETCH = "stretch"
"""The row of the words that add nothing but before a count: “[the] three days before Easter” are all three."""

BEFORE_AN_HOUR = "before_an_hour"
"""The row of the words before an hour, of which a date has no use (common practice, no source): “kell 8 mai 1938”."""

WERE = "were"
"""The row of the words that say that more than one were something: “when the kids were little”."""

SOUGHT_APART = (OF_A_STRETCH, IN_A_YEAR, OF_THE_DATE, BEFORE_AN_HOUR, WERE, *TOLERANCES, *PREFIXES, *THE_ONE_BESIDE)
"""Rows whose words are no words of a date by themselves: each is sought where its constant is used."""

_ROMANS = "i ii iii iv v vi vii viii ix x xi xii xiii xiv xv xvi xvii xviii xix xx xxi".split()
ROMAN = {name: value for value, name in enumerate(_ROMANS, 1)}

POSTMARK_MONTHS = dict(zip("ja fe mr ap my ju jy au sp oc no de".split(), range(1, 13), strict=True)) | {
    "jl": 7,
    "jn": 6,
}
"""Months as British postmarks have them (common practice, no source): JY is July, JU is June."""

ENGLISH_ORDINALS = frozenset(("st", "nd", "rd", "th"))
"""The English endings of numbers, which may stand apart: “12 th June”."""

BY_NEIGHBOURS = frozenset((*ROMAN, *POSTMARK_MONTHS, *ENGLISH_ORDINALS, "s"))
"""Words whose senses hang on what stands beside them, besides numbers and what is two tokens."""


class Node:
    """One place in the trie: the senses of the words so far, whether they have them wherever they stand, and what may
    follow."""

    __slots__ = ("alone", "following", "senses")

    def __init__(self) -> None:
        self.senses: tuple[Sense, ...] = ()
        self.alone = False
        self.following: dict[str, Node] = {}


HEBREW_MONTH_NAMES = {
    name: (12, 13) if name == "adar" else (month,) for name, month in HEBREW_MONTHS.items() if name != "ab"
}
"""The plain Adar of a leap year may be either."""

Entry = tuple[str, str, object]
"""Words, kind, value."""


@cache
def trie() -> Node:
    """The root of the trie of all languages."""
    root = Node()
    gathered: dict[str, dict[tuple[str, object], int]] = {}
    for words, kind, value, languages in _all_entries():
        senses = gathered.setdefault(words, {})
        senses[kind, value] = senses.get((kind, value), 0) | languages
    for words, senses in [*gathered.items(), *_plain_spellings(gathered).items()]:
        node = root
        for piece in PIECE.findall(words):
            node = node.following.setdefault(piece, Node())
        node.senses = tuple(Sense(kind, value, languages) for (kind, value), languages in senses.items())
        node.alone = words not in BY_NEIGHBOURS and not any(kind in _BY_NEIGHBOURS_KINDS for kind, _ in senses)
    return root


def _all_entries() -> Iterator[tuple[str, str, object, int]]:
    short: list[tuple[str, str, object, int]] = []
    taken: set[str] = set()
    for place, language in enumerate(LANGUAGES):
        entries = _without_weaker(list(_entries(language)))
        own = {words for words, _, _ in entries}
        for words, kind, value in _cldr(language):
            if words in own:
                continue
            if len(words) > 2:
                entries.append((words, kind, value))
            elif len(words) == 2:
                short.append((words, kind, value, 1 << place))
        taken.update(words for words, _, _ in entries)
        yield from ((words, kind, value, 1 << place) for words, kind, value in entries)
    yield from ((symbol, "measured", None, ANY_LANGUAGE) for symbol in MEASURES)
    own = {form for language in LANGUAGES if language.code in _OLD_STYLE for form in _feasts_of(language)}
    taken.update(HOLIDAY_NAMES, SPAN_NAMES)
    yield from ((words, "feast", words, ANY_LANGUAGE) for words in HOLIDAY_NAMES - own)
    short_days = _short_days()
    for words in HOLIDAY_NAMES - own:  # “Ash Weds”, “St Swithin’s”
        begin, _, day = words.rpartition(" ")
        yield from ((f"{begin} {short}", "feast", words, ENGLISH) for short in short_days.get(day, ()) if begin)
        if words.startswith("st ") and words.endswith("'s day") and words.removesuffix(" day") not in HOLIDAY_NAMES:
            yield words.removesuffix(" day"), "feast", words, ANY_LANGUAGE
    yield from (
        (words, "beside_war", side, ANY_LANGUAGE) for side, names in BESIDE_WAR.items() for words in names.split("|")
    )
    for words, theatres in SPAN_NAMES.items():
        codes = LANGUAGES_OF_WAR.get(words)
        yield words, "span", theatres, _bits(*codes.split()) if codes else ANY_LANGUAGE
    for year, names in NAMED_YEARS.items():
        yield from ((name, "year", year, ANY_LANGUAGE) for name in names.split("|"))
    for name, months in HEBREW_MONTH_NAMES.items():
        yield from ((name, "hebrew_month", month, ANY_LANGUAGE) for month in months)
    yield from (entry for entry in short if entry[0] not in taken)


def _short_days() -> dict[str, tuple[str, ...]]:
    """How else English writes each day of the week, by its name."""
    (english,) = (language for language in LANGUAGES if language.code == "en")
    rows = [row.split() for row in english.weekdays]
    names = [forms.split("|") for forms in WEEKDAYS["en"]]
    return {name: (*short, *more) for (name, *short), *more in zip(names, *rows, strict=True)}


def _feasts_of(language: Language) -> Iterator[str]:
    for words in language.feasts.values():
        yield from words.split("|")


_SAINTS = dict.fromkeys("san santo santa são szent".split(), ("s",)) | dict.fromkeys(
    "saint sainte sankt sint święty święta svatý svatá".split(), ("s", "st", "ste", "sv", "św")
)
"""How “saint” is written short."""

WEAKER = (("since", "from"), ("until", "to"), ("until", "before"))
"""Where a word of one language is both, the grammar knows the first also where the second may stand (`desde`, `до`)."""


def _without_weaker(entries: "list[Entry]") -> "list[Entry]":
    kinds: dict[str, set[str]] = {}
    for words, kind, _ in entries:
        kinds.setdefault(words, set()).add(kind)
    weaker = {(words, second) for words, own in kinds.items() for first, second in WEAKER if {first, second} <= own}
    return [entry for entry in entries if entry[:2] not in weaker]


def _cldr(language: Language) -> Iterator[Entry]:
    """Names of months and days; one of two letters only where no other word is spelled so, none of one letter."""
    for table, kind in ((MONTHS, "month"), (WEEKDAYS, "weekday")):
        for value, forms in enumerate(table[language.code], 1 if kind == "month" else 0):
            for form in forms.split("|"):
                yield form, kind, value


def _entries(language: Language) -> Iterator[Entry]:
    for rows, endings, kind, first in (
        (language.months, language.month_endings, "month", 1),
        (language.weekdays, language.weekday_endings, "weekday", 0),
    ):
        for row in rows:
            for number, stem in enumerate(row.split(), first):
                for ending in ("", *endings.split()):
                    yield stem + ending, kind, number
    for row in language.counted_weekdays:
        yield from ((form, "weekday", DAYS_OF_A_WEEK + day) for day, form in enumerate(row.split()))
    yield from ((form, "weekday", SEVERAL + day) for day, form in enumerate(language.several_weekdays.split()))
    for number, words in language.month_names.items():
        yield from ((form, "month", number) for form in words.split("|"))
    of_seasons = dict(_parts_of_seasons(language))
    yield from ((words, "season_part", value) for words, value in of_seasons.items())
    finer = {form: key for key in FINER for form in language.words.get(key, "").split("|")}
    for key, words in language.words.items():
        if key in SOUGHT_APART:
            continue
        kind, value = _SENSE_OF[key]
        for form in words.split("|"):
            if kind == "season" and form in of_seasons:
                continue
            if key in FINER or form not in finer or FINER[finer[form]][0] != kind:
                yield form, kind, value
    yield from _perhaps_beyond(language)
    yield from _or_the_one_beside(language)
    for side in ("before", "after"):
        yield from ((form, side, "just") for form in _just_beside_a_verb(language, side) if form not in finer)
    for kind, numbered in (("number", language.numbers), ("ordinal_word", language.ordinals)):
        for number, forms in numbered.items():
            for form in forms.split("|"):
                yield form, kind, number
    for century, words in language.centuries.items():
        for form in words.split("|"):
            yield form, "year", f"{century}XX"
    for decade, words in language.decades.items():
        for form in words.split("|"):
            yield form, "decade", decade
    for key, words in language.of_wars.items():
        told, plain = _OF_A_WAR[key]
        for form in words.split("|"):
            yield form, "of_war", told
            yield (form, *plain)
    for decade, words in language.age_decades.items():
        yield from ((form, "tens", decade) for form in words.split("|"))
    ordinals = {form: number for number, forms in language.ordinals.items() for form in forms.split("|")}
    with_number = {form for words in language.feast_days.values() for form in words.split("|")}
    for fraction, words in language.fractions.items():
        yield from ((form, "fraction", fraction) for form in words.split("|"))
    for feast, by_language in SCHOOL.items():
        yield from ((form, "feast", feast) for form in filter(None, by_language.get(language.code, "").split("|")))
    for feast, words in language.feasts.items():
        for form in words.split("|"):
            if form in with_number:
                continue  # “Pfingsttag” is a day of the feast, the first where no number is told
            yield form, "feast", feast
            saint, _, named = form.partition(" ")
            if saint in _SAINTS and named:  # “S. Stefano”, “St. Johann”
                yield from ((f"{short} {named}", "feast", feast) for short in _SAINTS[saint])
            yield from ((form + ending, "feast", feast) for ending in language.feast_endings.split())
            begin, _, rest = form.partition(" ")
            if begin in ordinals and rest:  # “2. pinsedag”
                yield f"{ordinals[begin]} {rest}", "feast", feast
                for ending in filter(None, language.ordinal_endings.split("|")):  # “1e kerstdag”
                    yield f"{ordinals[begin]}{ending} {rest}", "feast", feast
    for feast, words in language.feast_days.items():
        for form in words.split("|"):
            yield form, "feast_day", feast


_OF_A_WAR: Mapping[str, tuple[tuple[str, object], tuple[str, object]]] = {
    "year": (("unit", "year"), ("noise", None)),
    "christmas": (("feast", "christmas"), ("feast", "christmas")),
} | {name: (("season", code), ("season", code)) for name, code in SEASONS.items()}
"""The kind and the value of each of the words `of_wars` behind an ordinal, and of the same alone."""


def _just_beside_a_verb(language: Language, side: str) -> Iterator[str]:
    """“Kurz bevor”, by “kurz vor”, “vor” and “bevor”."""
    words = language.words.get(side, "").split("|")
    for form in language.words.get(f"just_{side}", "").split("|"):
        ending = max((word for word in words if form.endswith(f" {word}")), key=len, default="")
        if ending:
            yield from (f"{form.removesuffix(ending)}{word}" for word in words if word != ending)


def _parts_of_seasons(language: Language) -> Iterator[tuple[str, tuple[str, int]]]:
    """The words for a part of a season, with the part and the code of the season."""
    for key, part in PREFIXES.items():
        for prefix in filter(None, language.words.get(key, "").split("|")):
            for season, code in SEASONS.items():
                yield from ((prefix + form, (part, code)) for form in language.words.get(season, "").split("|"))


def _perhaps_beyond(language: Language) -> Iterator[Entry]:
    """“Maybe earlier”, as “or earlier” is said: each short word of doubt before what stands there behind “or”; and that
    alone, which other words may stand before (“möglicherweise auch früher”)."""
    joins = {form for form in language.words.get("or", "").split("|") if " " not in form}
    limits = {
        form for row in ("before", "after", "at_latest", "until") for form in language.words.get(row, "").split("|")
    }
    doubts = [form for form in language.words.get("doubt", "").split("|") if " " not in form]
    for kind in ("or_earlier", "or_later", "about_behind"):
        rows = (form.partition(" ") for form in language.words.get(kind, "").split("|"))
        sides = [side for join, _, side in rows if join in joins and side and side not in limits]
        alone = [side for side in sides if not any(limit.startswith(f"{side} ") for limit in limits)]
        yield from ((f"{doubt} {side}", kind, None) for doubt in doubts for side in alone)  # not “quizás antes [de]”
        if kind in BEYOND:
            yield from ((side, BEYOND[kind], None) for side in sides)


def _or_the_one_beside(language: Language) -> Iterator[Entry]:
    """“Or the one before”, “or perhaps the one after”: of two words or more, since one alone may stand before a noun
    (“or the following summer”)."""
    doubts = [form for form in language.words.get("doubt", "").split("|") if " " not in form]
    for row, kind in (("one_before", "or_year_before"), ("one_after", "or_year_after")):
        forms = [form for form in language.words.get(row, "").split("|") if " " in form]
        for join in language.words.get("or", "").split("|"):
            yield from ((f"{join} {form}", kind, "one") for form in forms)
            if " " not in join:
                yield from ((f"{join} {doubt} {form}", kind, "doubted one") for form in forms[:2] for doubt in doubts)


@cache
def the_one_beside() -> Mapping[str, int]:
    """The words for the one next to what was told, with the years to it, the longest first."""
    rows = (
        (form, years)
        for language in LANGUAGES
        for row, years in THE_ONE_BESIDE.items()
        for form in language.words.get(row, "").split("|")
        if form
    )
    return dict(sorted(rows, key=lambda row: -len(row[0])))


_SENSE_OF: Mapping[str, tuple[str, object]] = (
    {kind: (kind, None) for kind in KINDS}
    | {name: ("season", code) for name, code in SEASONS.items()}
    | {name: ("unit", name) for name in UNITS}
    | {name: ("part", name) for name in PARTS}
    | FINER
)
"""The kind and the value that a language's row of words stands for."""


_GERMANIC = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "å": "aa", "ß": "ss", "ø": "oe", "æ": "ae"})


def plain(words: str) -> str:
    """Words without accents."""
    return "".join(letter for letter in unicodedata.normalize("NFD", words) if not unicodedata.combining(letter))


def _plain_spellings(
    gathered: dict[str, dict[tuple[str, object], int]],
) -> dict[str, dict[tuple[str, object], int]]:
    """The spellings without accents that are no words of their own, with the senses of all that they may stand for."""
    spellings: dict[str, dict[tuple[str, object], int]] = {}
    for words, senses in gathered.items():
        if words.isascii():
            continue  # it has no accents, and is its own spelling
        for spelling in (plain(words), plain(words.translate(_GERMANIC))):
            if spelling not in gathered:
                for sense, languages in senses.items():
                    known = spellings.setdefault(spelling, {})
                    known[sense] = known.get(sense, 0) | languages
    return spellings


@cache
def endings(which: str) -> re.Pattern[str]:
    """A pattern for what may follow a number at once: `decade_endings` (1950s) or `ordinal_endings` (3rd)."""
    words = {form for language in LANGUAGES for form in getattr(language, which).split("|") if form}
    return re.compile(f"(?:{'|'.join(map(re.escape, sorted(words, key=len, reverse=True)))})(?!\\w)")


@cache
def number_endings() -> tuple[re.Pattern[str], Mapping[str, tuple[str, int]]]:
    """A pattern for the `number_endings` of all languages, and of each the kind of its word and its languages."""
    rows: dict[str, tuple[str, int]] = {}
    for place, language in enumerate(LANGUAGES):
        for kind, forms in language.number_endings.items():
            for form in forms.split("|"):
                rows[form] = (kind, rows.get(form, (kind, 0))[1] | 1 << place)
    longest_first = sorted(rows, key=len, reverse=True)
    return re.compile(f"(?:{'|'.join(map(re.escape, longest_first))})(?!\\w)"), rows


@cache
def case_endings() -> tuple[int, Mapping[str, list[Sense]]]:
    """The `case_endings` of all languages: the letters of the longest, and by the ending the senses that it adds."""
    rows: dict[str, list[Sense]] = {}
    for place, language in enumerate(LANGUAGES):
        for key, forms in language.case_endings.items():
            kind, value = ("fraction", key) if key in NTH_FRACTIONS else _SENSE_OF[key]
            for form in forms.split("|"):
                rows.setdefault(form, []).append(Sense(kind, value, 1 << place))
    return max(map(len, rows)), rows


@cache
def stretch_words() -> frozenset[str]:
    """The words of `OF_A_STRETCH` of every language."""
    return _forms(OF_A_STRETCH)


@cache
def words_before_a_year() -> frozenset[str]:
    """The words of `IN_A_YEAR` of every language."""
    return _forms(IN_A_YEAR)


@cache
def beginnings_of_the_date() -> frozenset[str]:
    """How the words of `OF_THE_DATE` of every language begin."""
    return _forms(OF_THE_DATE)


@cache
def words_before_an_hour() -> frozenset[str]:
    """The words of `BEFORE_AN_HOUR` of every language."""
    return _forms(BEFORE_AN_HOUR)


@cache
def words_of_several() -> frozenset[str]:
    """The words of `WERE` of every language."""
    return _forms(WERE)


def _forms(row: str) -> frozenset[str]:
    return frozenset(form for language in LANGUAGES for form in language.words.get(row, "").split("|") if form)


@cache
def word_endings(which: str) -> list[tuple[str, int]]:
    """Words that are written behind their number (`age_endings`: aastane, `decade_word_endings`: luvulla), with their
    language, as in a sense."""
    rows = [
        (form, 1 << place)
        for place, language in enumerate(LANGUAGES)
        for form in getattr(language, which).split("|")
        if form
    ]
    return sorted(rows, key=lambda row: -len(row[0]))


@cache
def number_words() -> dict[str, list[tuple[int, bool, int]]]:
    """Numbers and ordinals as one word, for taking compounds apart (`neunzehnhundertfünf`): the value, whether it is
    an ordinal, and its language, as in a sense."""
    words: dict[str, list[tuple[int, bool, int]]] = {}
    for place, language in enumerate(LANGUAGES):
        for ordinal, table in ((False, language.numbers), (True, language.ordinals)):
            for value, forms in table.items():
                for form in forms.split("|"):
                    if form.isalpha() and len(form) > 1:
                        words.setdefault(form, []).append((value, ordinal, 1 << place))
    return words
