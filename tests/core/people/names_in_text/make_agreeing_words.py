"""Makes `core/people/names_in_text/agreeing_words_table.py`: adjectives and things of many languages, as they stand
side by side, and by what small words a language is known.

Which words of a language are adjectives in a form that agrees with a thing in the nominative, and which are nouns in
that case and nothing else, dictionaries say: HEAD names them, with their licences. Of Czech, Finnish, German and
Swedish it is told by the endings of all forms of a word. Which words are common is told by `wordfreq`, of Estonian by
how short they are.

No form of a verb of a language by these dictionaries, and no stop word of it (`stopwordsiso` 0.7.1, MIT licence), is
among its things. What is a common verb or a stop word in another one of the eighteen languages of VERBS is told besides
(`DONE`), of English things too: in that language it would be what somebody does. Which language a sentence is of, its
small words say (`SMALL`): the commonest of each by `wordfreq`, without those that are ten times as common elsewhere, of
Estonian its adpositions, conjunctions, adverbs and pronouns by Vabamorf. Hungarian has no things: `Fekete tanár`, `Kis
szomszéd` are people there. Run in an environment that has these packages:
python tests/core/people/names_in_text/make_agreeing_words.py
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
from boxlore.core.people.names_in_text import word_classes_table as classes
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.statements import fold

PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names_in_text" / "agreeing_words_table.py"
HEAD = """\
Adjectives and things of many languages, folded; made by make_agreeing_words.py beside the tests.

Some 3,300 words a language (5,500 of Estonian) were taken, from dictionaries that have many times as many, and nothing
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
    small words `wordfreq` and Vabamorf too; `stopwordsiso` 0.7.1: MIT licence
"""
"""What the table says of itself; the licence of each source's data is the one that its release names."""
COMMON, MOST_THINGS, MOST_QUALITIES = 25_000, 2500, 1000
LONGEST = {"et": 6}
"""Of languages whose words nobody counted, these letters make a word common."""
LENGTHS = range(3, 13)
VERY_COMMON, KNOWN = 9000, 40_000
SMALLEST, ELSEWHERE, LIKE_ENGLISH = 200, 0.1, 0.3
"""How many small words a language is known by; how common one is there at least, against where it is commonest; how
common what somebody does is at least, against the same word in English."""
ALSO_THINGS = {
    "fi": "silta",
    "cs": "kůň",
    "fr": "bateau chien maison neige",
    "nb": "hus katt",
    "sv": "katt luft ström vind väg",
}
"""Things that their dictionaries give as something else too, which nobody does (from memory)."""
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
ENDS_SO = {
    "da": "(r|te|de|et|es)$",
    "de": "(t|te)$",
    "nb": "(r|te|de|et|es)$",
    "nl": "(t|de|te)$",
    "sv": "(r|de|te|s)$",
}
"""How a verb ends when somebody does or did it, but for the strong pasts."""
STRONG = {
    "sv": """
        bad band bar bet bjod blev brast brot brann drack drog drev drop fann fick flot flog for foll forstod
        forsvann fros gav gick gled gnall gol grat grep grov hade hann het hogg holl knep knot kom klang klev kved krop
        lat lag lade led log ljod ljog lod let njot neg nop pep rann red rev rok rot sade sag satt sjong sjod sjonk sken
        skot skar skalv skrek skrev skred slapp slet slog slot small smalt smet smog snot sov spann sprack sprang stal
        stack steg stank stod strok stred svalt svek sved svep svor sog teg tog tjot trot tvang vann vart vek vred vov
        at lan
    """,
    "nb": """
        ba bad band bandt bar bet ble blev brakk brant brast brot dro drog drakk drap drev drop falt fant fikk flot floy
        fros ga gav gikk gjol gled gol grat grep hang het hjalp holdt hogg klang klatret klov knakk knep kom kvad krop
        la lagde lod lot lo led loy not rakk rant red rev rok sa sank satt sag sang skalv skar skjot skled sked skrek
        skred skrev slapp sled slet slo slog smatt smalt smell sov spant sprakk sprang stakk stakk steg stjal sto stod
        stred strok sugde svak svam svek svor tagg tok tog traff trakk trat tvang vant vek vokste vred at
    """,
    "da": """
        bad bandt bar bed blev brast brod bod drak dreven drev drog drob drab faldt fandt fik flod flog floj fros gav
        gik gled gol grad greb hang hed hjalp holdt hug klang knak kneb kom krob kvad la lod lo led loj nod nos peb
        rakte rand red rev rog sad sa sank sang sagde skar skal skjod skred skreg skrev skod slap sled slog smed sov
        spandt sprak sprang stak steg stjal stod strog stred sveg sved svor sog tav tog traf trak trad tvang vandt veg
        vred ad
    """,
    "nl": """
        at bad band bedroog beet begon bedierf bleef bleek blies blonk bond bood boog bracht brak dacht deed dook dreef
        droeg drong dronk droop dwong floot gaf genoot ging gleed glom gold goot greep groef had hees hield hielp hief
        hing joeg keek klom klonk kloof kneep kocht kon koos kreeg kromp kroop kwam lag las leed leek liep liet loog
        meed mocht moest molk nam neeg prees reed rees reet riep rook schonk school schold schoof schoot schreed
        schreef schrok sleep sleet sliep sloeg sloot slonk smeet smolt sneed snoof speet spleet spoot sprak sprong
        stak stal steeg stierf stond stonk stoof streed streek trof trok verdween verloor verweet viel ving vlocht
        vloog vocht voer vond vroeg vroor was week wees wierp wist woei wond won woog wou wreef zag zat zeeg zocht
        zond zong zonk zoog zoop zweeg zwoer zwol zwom
    """,
    "de": """
        ass band barg bat begann biss blieb blies bog bot brach briet drang fand fiel fing floh floss fror fuhr gab
        galt gebar ging glich glitt goss grub half hielt hieb hiess hing hob kam klang kroch lag las lief litt lud mass
        mied nahm pfiff rang rann rief riet riss ritt roch sah sang sank sann sass schied schien schlief schloss schlug
        schnitt schob schoss schrie schrieb schritt schwamm schwand schwang schwieg schwor sog spann sprach sprang
        stach stahl stand starb stieg stiess stritt tat traf trat trieb trug wand warf war wich wies wob wog wuchs
        wurde wusch zog zwang
    """,
}
"""Strong pasts, folded (from memory of the school grammars); without `dog`, since nobody living died."""
LONGEST_SMALL = 7
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
IRREGULAR = {
    "es": "bueno buena buen malo mala mal", "fi": "pieni hyvä",
    "fr": "blanche fraîche longue vieille vieux belle bel douce",
    "sv": "lång långt långa ung ungt unga stor stort stora låg lågt låga tung tungt tunga hög högt höga grov grovt "
    "grova gammal gammalt gamla liten litet lilla god gott goda",
    "nb": "lang langt lange ung ungt unge tung tungt tunge gammel gammelt gamle liten lite lille",
}  # fmt: skip
"""Adjectives that are compared, or agree, in another way than endings tell (from memory of the school grammars)."""
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
    pojke flicka barn kusin prast anka elev brud kamrat gutt jente nabo prest bonde meisje kind vriend soldaat kapitein
    bruid arts homme capitaine mujer marido hombre nino soldado capitan dziecko wdowa zena muz kluk dite soused knez
    sedlak vdova vojak kapitan nevesta poiss naaber sober lesk pruut arst lapsi pappi leski sotilas morsian laakari
    femme enfant fille fils mere pere soeur frere veuve roi reine nina madre padre hermana viuda rey reina novia
    vauva poika tytto neito emanta serkku seta kuningas piika renki mees naine laps vanem sulane tudruk neiu drang piga
    gast fru kvinna son dotter kona mann kvinne datter dreng pige kone vrouw jongen zoon dochter broer zus koning
    knecht meid dame heer pan pani panna syn corka brat siostra krol krolowa zolnierz kapral sierzant chlapec divka
    holka sluha kral kralovna bratr sestra gosse tjej kille snubbe tos pike jongetje kerel baas gars garcon fillette
    gamin type mec bruidegom chico chica tipo haige sairas niitti vanha nuori
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
EXACT = ("de", "et", "pl", "ru")
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
def done_in(language: str) -> frozenset[str]:
    """What is a common verb, or a small word, in a language: behind a name it tells of somebody there."""
    stops = data_of("stopwordsiso", "stopwords-iso.json")["no" if language == "nb" else language]  # type: ignore[index]
    common_verbs = said_of_one(language)
    if language != "et":
        common_verbs &= frozenset(map(fold, wordfreq.top_n_list(language, VERY_COMMON)))
    return (frozenset(map(fold, stops)) | common_verbs | strong(language)) - KEPT


def strong(language: str) -> frozenset[str]:
    return frozenset(STRONG.get(language, "").split())


def is_as_common(word: str, language: str) -> bool:
    """Whether an English word is one of the language too, and not only told there now and then."""
    least = LIKE_ENGLISH * wordfreq.word_frequency(word, "en")
    return language == "et" or wordfreq.word_frequency(word, language) >= least


def english_words_done_in(language: str) -> frozenset[str]:
    """English words that are a verb of a language."""
    words = english_words() | classes.VERBS | classes.QUALITIES | classes.GROWN | classes.COMMANDS
    words |= classes.THINGS | classes.THINGS_DONE
    words |= {f"{word}s" for word in words}
    done = frozenset(word for word in words & said_of_one(language) if is_as_common(word, language))
    return done | (words & strong(language))


def _often(language: str) -> dict[str, float]:
    """How often each of the commonest words is told, folded."""
    often: dict[str, float] = defaultdict(float)
    for word in filter(str.isalpha, wordfreq.top_n_list(language, 20 * SMALLEST)):
        often[fold(word)] += wordfreq.word_frequency(word, language)
    return often


def _is_small(ways: list[Mapping[str, str]]) -> bool:
    """Whether an Estonian word joins words or stands beside things, and is no verb too."""
    parts = {way["partofspeech"] for way in ways}
    return not parts.isdisjoint("KJDP") and "V" not in parts


def small_words_of_all() -> dict[str, list[str]]:
    """By language, the small words that it is known by, folded."""
    often = {language: _often(language) for language in VERBS if language != "et"}
    commonest = {word for words in often.values() for word in sorted(words, key=lambda told: -words[told])[:SMALLEST]}
    most = {word: max(words.get(word, 0) for words in often.values()) for word in commonest}
    told = {
        language: sorted(word for word in commonest if words.get(word, 0) >= ELSEWHERE * most[word])
        for language, words in often.items()
    }
    short = [
        word for word in sorted(forms_of("et")) if word.islower() and word.isalpha() and len(word) <= LONGEST_SMALL
    ]
    stops = data_of("stopwordsiso", "stopwords-iso.json")["et"]  # type: ignore[index]
    read_words = Vabamorf().analyze(short, disambiguate=False, guess=False, propername=False)
    joining = (read["text"] for read in read_words if _is_small(read["analysis"]))
    told["et"] = sorted(set(map(fold, {*stops, *joining})))
    return dict(sorted(told.items()))


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


@cache
def _done_there(language: str) -> frozenset[str]:
    """The verbs of a language itself, unless its dictionary tells what each word is."""
    own = frozenset[str]() if language in EXACT else said_of_one(language)
    return own | strong(language)


def is_thing_of_nobody(word: str, language: str) -> bool:
    """Whether a noun is no verb in its language, and nobody."""
    folded = fold(word)
    is_plain = (
        len(folded) in LENGTHS
        and folded.isalpha()
        and folded not in no_things()
        and folded not in _done_there(language)
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
        if language == "de" and forms_of("de").get(word.capitalize()):
            yield "thing", word  # what is written small there is another word
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


DONE_IN = tuple(language for language in VERBS if language != "en")
READERS = {
    "cs": by_endings, "de": by_endings, "es": by_index, "et": lambda _: estonian(), "fi": by_endings, "fr": by_index,
    "nb": by_index, "nl": by_index, "pl": lambda _: polish(), "ru": lambda _: russian(), "sv": by_endings,
}  # fmt: skip


def words_of(language: str) -> tuple[list[str], list[str]]:
    """Its adjectives and its things, folded. A word that is another one without its accents is no thing (`õli`, which
    is `oli` too)."""
    told = [("quality", word) for word in IRREGULAR.get(language, "").split()]
    told += [("thing", word) for word in ALSO_THINGS.get(language, "").split()]
    also = frozenset(map(fold, ALSO_THINGS.get(language, "").split()))
    told += READERS[language](language)
    qualities = [folded for kind, word in told if kind == "quality" and len(folded := fold(word)) in LENGTHS]
    written = {word.lower() for kind, word in told if kind == "thing"}
    often = {fold(word): word for word in written}
    others = {
        fold(word)
        for word in known_words(language)
        if word not in written and fold(word) in often and is_as_often(word, often[fold(word)], language)
    }
    things = [
        folded
        for kind, word in told
        if kind == "thing"
        and ((folded := fold(word)) in also or (folded not in others and is_thing_of_nobody(word, language)))
    ]
    kept = [word for word in dict.fromkeys(things) if word not in qualities or word in also or language == "et"]
    if language == "de":  # a name is written large there too
        kept = [word for word in kept if word not in CALLED]
    most = kept[: MOST_THINGS if language != "et" else None]
    best = list(dict.fromkeys(qualities))[:MOST_QUALITIES]
    return sorted(best), sorted({*most} - (small_words(language) - also) - STANDS_BEHIND_A_NAME)


@cache
def lemmas_of(language: str) -> Mapping[object, object]:
    return DefaultDictionaryFactory().get_dictionary(language)


def is_as_often(word: str, thing: str, language: str) -> bool:
    """Whether a word is no slip of the thing's, written without its accents."""
    if language == "et":
        return True
    if language == "de" or lemmas_of(language).get(word) == thing:  # a case of it
        return False
    return wordfreq.word_frequency(word, language) >= ELSEWHERE * wordfreq.word_frequency(thing, language)


def known_words(language: str) -> frozenset[str]:
    """Words that are often told, as they are written, small."""
    if language == "et":
        return frozenset(word for word in forms_of("et") if word.islower()) | {
            form for forms in forms_of("et").values() for form in forms if form.islower()
        }
    return frozenset(wordfreq.top_n_list(language, KNOWN))


def table() -> str:
    """The text of the module."""
    agreeing_words = {language: words_of(language) for language in sorted(READERS)}
    things = frozenset(thing for _, rows in agreeing_words.values() for thing in rows)
    done = {language: sorted((done_in(language) & things) | english_words_done_in(language)) for language in DONE_IN}
    return text_of(agreeing_words, done, small_words_of_all())


def text_of(
    words: Mapping[str, tuple[list[str], list[str]]],
    done: Mapping[str, Iterable[str]],
    small: Mapping[str, Iterable[str]],
) -> str:
    """The text of the module for these adjectives and things of each language, verbs and small words."""
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
    for name, of_each, says in (
        (
            "DONE",
            done,
            "By language: things of another one, or of English, that somebody does there, or that join words.",
        ),
        ("SMALL", small, "By language: small words that it is known by."),
    ):
        lines += [f"{name}: dict[str, str] = {{"]
        for language, row in of_each.items():
            lines += [f'    "{language}": """', *(f"        {line}" for line in wrap(" ".join(row), 110)), '    """,']
        lines += ["}", f'"""{says}"""', ""]
    return "\n".join(lines)


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
