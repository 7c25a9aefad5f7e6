"""Makes `core/people/names_in_text/agreeing_words_table.py`: adjectives and things of many languages, as they stand
side by side.

Which words of a language are adjectives in a form that agrees with a thing in the nominative, and which are nouns in
that case and nothing else, dictionaries say: HEAD names them, with their licences. Of Czech, Finnish, German and
Swedish it is told by the endings of all forms of a word. Which words are common is told by `wordfreq`, of Estonian by
how short they are.

No form of a common verb of the eighteen languages of VERBS by these dictionaries, and no stop word of theirs
(`stopwordsiso` 0.7.1, MIT licence), is among the things: in another language than one thinks it would be what somebody
does. Hungarian is left out: `Fekete tanár`, `Kis szomszéd` are people there. Run in an environment that has these
packages: python tests/core/people/names_in_text/make_agreeing_words.py
"""

import gzip
import json
import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from functools import cache
from importlib.metadata import files
from pathlib import Path
from textwrap import wrap

import morfeusz2
import pymorphy3
import wordfreq
from babel import Locale
from estnltk.vabamorf.morf import Vabamorf
from simplemma.strategies.dictionaries.dictionary_factory import DefaultDictionaryFactory

from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import DESCRIBING, FAMILY_WORDS, KIN_BEHIND, KIN_WORDS, TITLES
from boxlore.core.statements import fold

PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names_in_text" / "agreeing_words_table.py"
HEAD = """\
Adjectives and things of many languages, folded; made by make_agreeing_words.py beside the tests.

Some 1,500 words a language (5,100 of Estonian) were taken, from dictionaries that have many times as many, and nothing
else that these say of a word. They stand here under the licences of their sources, not under the project's own:

    Estonian    Vabamorf's lexicon, by `estnltk` 1.7.5: Apache License 2.0 (or GPL 2.0)
    Polish      SGJP, by `morfeusz2` 1.99: BSD licence of two clauses (from memory)
    Russian     OpenCorpora, by `pymorphy3-dicts-ru` 2.4: CC BY-SA 3.0 (its program: MIT licence)
    Norwegian   Norsk Ordbank of Nasjonalbiblioteket, by `spacy-lookups-data` 1.0.5: CC BY 4.0
    French, Spanish, Dutch
                `spacy-lookups-data` 1.0.5: MIT licence
    Czech, Finnish, German, Swedish
                `simplemma` 2.0.0: MIT licence; its lists are made of Michal Měchura's (Open Database License), of
                Wiktionary's by Kaikki (CC BY-SA), of FreeLing's, spaCy's and UniMorph's, and of Eleni Metheniti's
                Wikinflection corpus (CC BY 4.0)
    which words are common
                Robyn Speer's `wordfreq` 3.1.1: lists under CC BY-SA 4.0 (its program: Apache License 2.0)
"""
"""What the table says of itself; the licence of each source's data is the one that its release names."""
COMMON, MOST_THINGS, MOST_QUALITIES = 15_000, 1000, 500
LONGEST = {"et": 6}
"""Of languages whose words nobody counted, these letters make a word common."""
LENGTHS = range(3, 13)
VERY_COMMON, KNOWN = 9000, 40_000
KEPT = frozenset(("dom",))
"""A house in Polish; in Swedish it is `they`, which stands behind no name."""

VERBS = {
    "cs": ("ti?", "l la li te me", 2), "da": ("e", "ede te nde r et", 3), "de": ("n", "st te end t", 3),
    "en": ("", "ing ed s", 3), "es": ("r", "ría ando iendo aré eré iré aste iste", 2),
    "et": ("ma", "takse nud sin ks", 2), "fi": ("[aä]", "isi imme koon köön vat vät", 2),
    "fr": ("r|re", "ais ant era ons", 2), "hu": ("", "and end tunk tünk nék nánk juk sz", 2),
    "it": ("re", "ndo rei rono vano", 2), "lt": ("tis?", "au ome site o", 2), "lv": ("t|ties", "ot am šu ja", 2),
    "nb": ("e", "ede te nde r et", 3), "nl": ("n", "de te end t", 2), "pl": ("ć|c", "łem łam my cie", 2),
    "ru": ("ть|ти|чь|ться|тись|чься", "ла ли те ем им", 2), "sv": ("a|", "nde de dde r it", 3),
    "uk": ("ти|тися", "ла ли те мо", 2),
}  # fmt: skip
"""The ending of a verb in a dictionary; endings that its other forms have, and how many must be there."""
SAID_OF_ONE = {
    "cs": "at:a it:i et:i ovat:uje", "es": "ar:a ar:ó ar:e er:e er:ió ir:e ir:ió", "et": "ma:b ma:s ma:is",
    "fi": "a:a ä:ä aa:i ää:i a:i ä:i ea:i eä:i oa:oo oa:oi ua:uu ua:ui yä:yy yä:yi ia:ii iä:ii lla:li llä:li lla:lee "
    "llä:lee nna:ni nnä:ni nna:nee nnä:nee rra:ri rrä:ri rra:ree rrä:ree sta:si stä:si sta:see stä:see da: dä: ta:a "
    "tä:ä ta:si tä:si",
    "fr": "er:e er:a ir:it re: re:it", "it": "are:a are:ò are:i ere:e ere:é ire:e ire:ì",
    "nl": "en: en:t", "sv": "a:a a:de", "pl": "ać:a ić:i eć:i", "lv": "ēt: āt: īt:", "lt": "ti:a ti:o",
}  # fmt: skip
"""How a verb ends when somebody does or did it, where the dictionary may have given that form to a noun."""
SEASONS = ("spring", "summer", "autumn", "winter")
ENDS_SO = {"de": "(t|te)$", "nb": "(r|te|de|et|s)$", "nl": "(t|de|te)$", "sv": "(r|de|te|s)$"}
"""How a verb ends when somebody does or did it, but for the strong pasts."""
STRONG = """
    liep sliep riep kwam nam gaf zat lag stond ging ving hing droeg sloeg groef joeg schoot bood vloog kroop sloot bleef
    schreef keek greep reed sneed steeg zweeg dreef vond bond dronk sprong zong won begon zwom las brak sprak stak stal
    trof hielp stierf wierp hief
    band bar bet bjod brot drack drog drev fann flot fros foll gav grep gick grat holl kom krop lat log lag lade led
    ljog njot rann red rev satt sjong sjonk skot skar skrev skrek slog slot smog smet sov spann sprack sprang stack
    steg stal stred svalt svek svor sog teg tog vann vek vred at blev fikk gikk sang sank fant lot sto la sa dro
    hing ging fing lief rief schrieb blieb trug schlug fand band sang
""".split()
"""Strong pasts of Dutch, Swedish, Norwegian and German (from memory of the school grammars)."""
TRADES = {
    "cs": "(ař|ář|er|or|ista|tel|ník|ec|áček|ka)$", "de": "(er|in|or|ist|ant|ent|mann|frau|ling)$",
    "es": "(or|ora|ero|era|ista|ante|ente|iz|dia)$", "et": "(ja|nik|lane|ur|ör|or|ist|sepp|mees|lanna|nna|jal|seer)$",
    "fi": "(ja|jä|uri|ari|nikko|kko|seppä|mies|lainen|läinen|sti|tar)$",
    "fr": "(eur|euse|ier|ière|iste|ant|[ctdlrs]ien|aire|rice)$",
    "nb": "(er|or|ist|ør|mann|kvinne|ant|ent|ing)$", "nl": "(er|or|ist|aar|ier|man|vrouw|ent|ant|ling)$",
    "sv": "(are|or|ist|ör|man|kvinna|ant|ent|ing|ska)$",
}  # fmt: skip
"""How words for people end (common practice, no source), since what somebody is may stand behind a name."""
CASES = {
    "cs": "ům ách ech ích ami", "fi": "lle ssa ssä sta stä", "sv": "ens ets arna orna erna ans",
    "de": "",
}  # fmt: skip
"""Endings that only nouns have, or adjectives: one must be there."""
OF_NOUNS = {"es": "s", "fr": "s x", "nl": "je jes"}
"""Endings that no adverb has: of many, and of what is small."""
KINDS = {
    "cs": "ého ých ému", "sv": "are ast aste", "de": "er es em en",
}  # fmt: skip
"""Endings of adjectives: all but two must be there."""
COMPARED = ((0, "mpi"), (1, "empi"), (1, "impi"), (3, "sempi"), (2, "dempi"), (1, "mpi"))
"""How a Finnish adjective is compared: so many letters fall away, and this comes."""
NOT_COMPARED = frozenset("ainoa koko oma".split())
"""Finnish adjectives that nobody compares."""
NO_NOUNS = {
    "cs": "[íý]$", "et": "(us|ik|nd|um|ism|iit|ika|iin)$",
    "fi": "(n[uy]t|tt[uy]|inen|v[aä]|st[aä]|ll[aeä]|ss[aä]|ksi|lt[aä])$", "sv": "(as|[ae]nde|stans|hand|dan|aa)$",
}  # fmt: skip
"""Endings of participles, adjectives and cases, where a dictionary may take them for nouns; of Estonian, of learned
words too."""
_PEOPLE = TITLES | FAMILY_WORDS | KIN_BEHIND | DESCRIBING | frozenset(KIN_WORDS)
ALSO_KINDS = frozenset("must valge suur noor vana".split())
"""Estonian adjectives that are nouns too, and are not told of as things here."""
MORE = """
    thuis achteruit isanta rano vecer poledne dopoledne odpoledne noc den rok tyden matin soir midi minuit journee nuit
    manana noche mediodia tarde ochtend avond middag nacht dag week jaar morgon kvall natt eftermiddag formiddag
    morgen kveld ettermiddag dagen ar uke uka vecka midnatt midsommar julafton dygn halvar aamu ilta yo
    barnbarn chef echtgenote gubbe hustru jongere kaptein kenraali koningin medecin metiss paavst poeet polak prigin
    prins princesse sultan soldat general fee memm
""".split()
"""What somebody is, where, or when, in words that the endings do not tell (from memory)."""


STANDS_BEHIND_A_NAME = frozenset(
    """
    vino traje rumbo leek wees streek stod drap brann bak voren doprava zprava
""".split()
)
"""What somebody did, and where, in words that are nouns too: `Blanco vino a casa`, `Svart stod` (from memory)."""
EXACT = ("de", "et", "ru")
"""Languages that write things large, or of which a dictionary says what each word is."""


def data_of(package: str, name: str) -> object:
    """What stands in a file of a package."""
    path = next(file.locate() for file in files(package) or () if file.name == name)
    raw = Path(str(path)).read_bytes()
    return json.loads(gzip.decompress(raw) if name.endswith(".gz") else raw)


@cache
def forms_of(language: str) -> dict[str, set[str]]:
    """Lemma: all its forms, of simplemma."""
    forms: dict[str, set[str]] = defaultdict(set)
    for form, lemma in DefaultDictionaryFactory().get_dictionary(language).items():
        forms[str(lemma)].add(str(form))
    return forms


def has(endings: str, forms: Iterable[str], lemma: str) -> int:
    """How many of the endings stand at the end of some form that begins as the lemma does."""
    return sum(any(form.endswith(end) and form[:1] == lemma[:1] for form in forms) for end in endings.split())


@cache
def verbs() -> dict[str, frozenset[str]]:
    """By language, what a common verb is found as, folded."""
    done: dict[str, frozenset[str]] = {}
    for language, (ending, others, least) in VERBS.items():
        made = [pair.split(":") for pair in SAID_OF_ONE.get(language, "").split()]
        is_verb = re.compile(f"({ending})$").search
        known = frozenset(wordfreq.top_n_list(language, KNOWN)) if language != "et" else frozenset(forms_of("et"))
        found: set[str] = set()
        for lemma, forms in forms_of(language).items():
            if lemma in known and is_verb(lemma) and has(others, forms, lemma) >= least:
                found.update(known & forms)
                found.update(lemma[: -len(end)] + instead for end, instead in made if lemma.endswith(end))
                found.update(re.sub("(mme|n)$", "", form) for form in forms if language == "fi")
        if language in ("fr", "nl", "nb"):
            lists = data_of("spacy-lookups-data", f"{language}_lemma_exc.json.gz")
            found.update(known & set(lists["verb"]))  # type: ignore[index]
        done[language] = frozenset(fold(form) for form in found)
    return done


@cache
def done_elsewhere(language: str) -> frozenset[str]:
    """What is a common verb, or a small word, in another language, and a verb in this, unless it is told exactly."""
    stops = data_of("stopwordsiso", "stopwords-iso.json")
    others = {word for other in VERBS if other != language for word in stops["no" if other == "nb" else other]}  # type: ignore[index]
    for other in set(verbs()) - {language, "et"}:
        others |= said_of_one(other) & frozenset(map(fold, wordfreq.top_n_list(other, VERY_COMMON)))
    own = frozenset[str]() if language in ("et", "pl", "ru") else said_of_one(language)
    return frozenset(map(fold, others)) - KEPT | own | frozenset(STRONG)


def small_words(language: str) -> frozenset[str]:
    """The language's own stop words, folded, some of which a list of nouns may hold (`sobre`, `tras`, `genom`, `itse`):
    behind a name they say where somebody is, or that it is they."""
    stops = data_of("stopwordsiso", "stopwords-iso.json")
    own = stops["no" if language == "nb" else language] if language not in EXACT else ()  # type: ignore[index]
    return frozenset(map(fold, own)) - KEPT


@cache
def said_of_one(language: str) -> frozenset[str]:
    """Those forms of verbs that may stand behind a name."""
    return frozenset(form for form in verbs()[language] if re.search(ENDS_SO.get(language, ""), form))


def is_thing_of_nobody(word: str, language: str) -> bool:
    """Whether a noun is no verb anywhere, and nobody."""
    folded = fold(word)
    is_plain = (
        len(folded) in LENGTHS
        and folded.isalpha()
        and folded not in no_things()
        and folded not in done_elsewhere(language)
    )
    others = (TRADES.get(language, "$^"), NO_NOUNS.get(language, "$^"))
    return is_plain and not any(re.search(endings, word.lower()) for endings in others)


@cache
def no_things() -> frozenset[str]:
    """Names, people and words of time: a day or a season may tell when somebody did something."""
    times = {fold(word) for language in LANGUAGES for word in " ".join(language.months + language.weekdays).split()}
    seasons = [language.words.get(time, "").replace("|", " ") for language in LANGUAGES for time in SEASONS]
    times |= {fold(word) for words in seasons for word in words.split()}
    for language in READERS:
        calendar = Locale(language)
        times |= {
            fold(name) for names in (calendar.days, calendar.months) for name in names["stand-alone"]["wide"].values()
        }
    return _PEOPLE | times | set(MORE)


def common(language: str) -> list[str]:
    return wordfreq.top_n_list(language, COMMON) if language != "et" else sorted(forms_of("et"))


def estonian() -> Iterator[tuple[str, str]]:
    """An adjective is told only where its genitive is another word: `Valge hobune` may be the horse of Valge."""
    words = [word for word in common("et") if word.islower() and len(word) <= LONGEST["et"]]
    for read in Vabamorf().analyze(words, disambiguate=False, guess=False, propername=False):
        said = {(way["partofspeech"], way["form"]) for way in read["analysis"]}
        parts = {part for part, _ in said}
        if any("=" in way["root"] for way in read["analysis"]):
            continue
        if ("A", "sg n") in said and ("A", "sg g") not in said and parts <= {"A", "S", "P"}:
            yield "quality", read["text"]
        if (
            ("S", "sg n") in said
            and parts <= {"S", "A"}
            and read["text"] not in ALSO_KINDS
            and not any("_" in way["root"] for way in read["analysis"])
        ):
            yield "thing", read["text"]


def polish() -> Iterator[tuple[str, str]]:
    reader = morfeusz2.Morfeusz()
    for word in common("pl"):
        tags = [tag for _, _, (_, _, tag, _, _) in reader.analyse(word)]
        nouns = [tag for tag in tags if tag.startswith("subst")]
        if any(tag.startswith("adj:sg:nom") for tag in tags):
            yield "quality", word
        elif nouns == tags and any("sg:nom" in tag for tag in tags) and not any(tag.endswith(":m1") for tag in tags):
            yield "thing", word


def russian() -> Iterator[tuple[str, str]]:
    reader = pymorphy3.MorphAnalyzer(lang="ru")
    for word in common("ru"):
        if not reader.word_is_known(word):
            continue
        tags = [way.tag for way in reader.parse(word)]
        if any("ADJF" in tag and "nomn" in tag and "sing" in tag for tag in tags):
            for form in reader.parse(word)[0].lexeme:
                if {"nomn", "sing"} <= form.tag.grammemes and "ADJF" in form.tag and "Supr" not in form.tag:
                    yield "quality", form.word
        elif all("NOUN" in tag and "anim" not in tag.grammemes and "Name" not in tag for tag in tags) and any(
            {"nomn", "sing"} <= tag.grammemes for tag in tags
        ):
            yield "thing", word


def by_index(language: str) -> Iterator[tuple[str, str]]:
    """Of a list of lemmas by part of speech."""
    name = "exc" if language == "nb" else "index"
    lists = data_of("spacy-lookups-data", f"{language}_lemma_{name}.json.gz")
    adjectives, nouns = set(lists["adj"]), set(lists["noun"])  # type: ignore[index]
    others = set(lists.get("verb", ())) | set(lists.get("adv", ()))  # type: ignore[attr-defined]
    adjectives -= set(lists.get("verb", ()))  # type: ignore[attr-defined]
    things = nouns - adjectives - others
    turned = {"fr": "e", "es": "", "nl": "e", "nb": "e"}[language]
    known = frozenset(common(language))
    for word in common(language):
        if word in adjectives:
            yield "quality", word
            turned_word = re.sub("o$", "a", word) if language == "es" else word + turned
            if turned_word in known:
                yield "quality", turned_word
        elif word in things and (language == "nb" or has(OF_NOUNS[language], forms_of(language).get(word, ()), word)):
            yield "thing", word


def by_endings(language: str) -> Iterator[tuple[str, str]]:
    """Of the endings of all forms of a word."""
    dictionary = DefaultDictionaryFactory().get_dictionary(language)
    for word in common(language):
        if language == "de" and (forms := forms_of("de").get(word.capitalize())) and word not in dictionary:
            yield "thing", word
            continue
        forms = forms_of(language).get(word, set())
        if word not in dictionary or not forms or fold(word) in said_of_one(language):
            continue
        if language == "fi":
            is_quality = word in NOT_COMPARED or any(
                f"{word[:-cut] if cut else word}{end}" in dictionary for cut, end in COMPARED
            )
        else:
            is_quality = has(KINDS[language], forms, word) >= len(KINDS[language].split()) - 2 + (language == "de")
        if is_quality:
            yield from (("quality", form) for form in agreeing(word, language))
        elif CASES[language] and has(CASES[language], forms, word) and dictionary[word] == word:
            yield "thing", word


def agreeing(word: str, language: str) -> tuple[str, ...]:
    if language == "de":
        return (f"{word}e", f"{word}er", f"{word}es")
    if language == "cs":
        return (word, f"{word[:-1]}á", f"{word[:-1]}é") if word.endswith("ý") else (word,)
    return (word, f"{word}t", f"{word}a") if language == "sv" else (word,)


READERS = {
    "cs": by_endings, "de": by_endings, "es": by_index, "et": lambda _: estonian(), "fi": by_endings, "fr": by_index,
    "nb": by_index, "nl": by_index, "pl": lambda _: polish(), "ru": lambda _: russian(), "sv": by_endings,
}  # fmt: skip


def words_of(language: str) -> tuple[list[str], list[str]]:
    qualities: dict[str, None] = {}
    things: dict[str, None] = {}
    for kind, word in READERS[language](language):
        folded = fold(word)
        if kind == "quality" and len(folded) in LENGTHS:
            qualities[folded] = None
        elif kind == "thing" and is_thing_of_nobody(word, language):
            things[folded] = None
    kept = [word for word in things if word not in qualities or language == "et"]
    if language == "de":  # a name is written large there too
        kept = [word for word in kept if word not in CALLED]
    most = kept[: MOST_THINGS if language != "et" else None]
    return sorted(list(qualities)[:MOST_QUALITIES]), sorted({*most} - small_words(language) - STANDS_BEHIND_A_NAME)


def table() -> str:
    """The text of the module."""
    return text_of({language: words_of(language) for language in sorted(READERS)})


def text_of(words: Mapping[str, tuple[list[str], list[str]]]) -> str:
    """The text of the module for these adjectives and things of each language."""
    lines = [
        f'"""{HEAD}"""',
        "",
        "AGREEING: dict[str, tuple[str, str]] = {",
    ]
    for language, rows in words.items():
        lines.append(f'    "{language}": (')
        for row in rows:
            lines += ['        """', *(f"        {line}" for line in wrap(" ".join(row), 110)), '        """,']
        lines.append("    ),")
    lines += ["}", '"""By language: adjectives as they stand before a thing in the nominative, and such things."""', ""]
    return "\n".join(lines)


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
