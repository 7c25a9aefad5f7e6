"""Whether a family name, or a given one, is a word of every day in a sentence of another language than English.

Rule kept: a word passes only by what no person is told with. Written small where the text writes names large, it is a
thing or a trade (`raudkivi`, `en ström av folk`; not `hõbesaar`, which is nothing but a name); behind `ein` it is one
of many (`Ein Bär`, `ein großer Stein`), as it is behind `im`, `am` and `auf dem`; behind it stands what things alone do
or have (`Pihlakas õitses`, `Kuusemetsa ääres`; behind a given name nothing else, `Роза завяла.`), or, of the German
Ernst, of what (`Der Ernst der Lage`). All else is a question.

The words are from memory of the school dictionaries of each language; no source.
"""

from collections.abc import Sequence

from boxlore.core.people.names.words_table import KIN_WORDS, TITLES
from boxlore.core.people.names_in_text.agreeing_words import is_thing_in, is_thing_told
from boxlore.core.people.names_in_text.known_words import is_noun_in, words_known
from boxlore.core.people.names_in_text.place_names import is_of_a_street
from boxlore.core.people.names_in_text.text_normalising import Word

_NATURE = frozenset(
    "kivi roos mets oja jarv saar org magi puu kask kuusk tamm parn lepp paju haab pihlakas vaher mand pold soo raba "
    "jogi lill muru nurm rand laht neem kari kallas rebane hunt karu ilves kurg kotkas luik varblane "
    "raudkivi poldroos metsroos kibuvits kadakas sarapuu lohmus vahtrik kuusemets kaasik mannik lepik soosaar sormus "
    "koski joki niemi ranta salo virta lehto kangas suo metsa saari jarvi lahti maki kallio "
    "dab debek wrobel mroz wilk zajac zajaczek gaska las lipa sikora golab "
    "роза мороз волк заяц дуб береза соловеи воробеи жаворонок хворостина соколов".split()
)
"""Things that families are called by."""
_TRADES = frozenset(
    "sepp molder kangur puusepp kingsepp seppa mylly raatari suutari kovar kovac mlynar tesar bednar zednik rezac "
    "kolar kowal mlynarz krawiec szewc bednarz ciesla piekarz rzeznik kolodziej "
    "кузнец мельник гончар плотник столяр бондарь "
    "bakker smid mulder slager timmerman visser smed moller kalejs kalvis dzirnavnieks boulanger charpentier meunier "
    "marechal tisserand berger herrero molinero panadero zapatero carpintero pastor".split()
)
"""What somebody does for a living, and families are called by."""
_ONE_OF_MANY = frozenset("ein eine einen einem einer eines kein keine keinen keinem im am".split())
_A = frozenset("ein eine einen einem einer eines".split())
_AGREES = ("er", "es", "en", "em")
_TO_IT = frozenset("vom zum beim ins ans aufs".split())
"""Of somebody with a trade for a name these may be told; of a thing for a name, nobody says them."""
_NO_VERBS = frozenset(
    "oben unten hinten neben daneben nebenan morgen gegen zwischen drinnen innen aussen draussen droben druben "
    "ihren seinen deren eben wegen rechten linken".split()
)
"""German words that end as what several do, and are none."""
_THE = frozenset(("dem", "der"))
_ON = frozenset("auf unter uber in".split())
"""Before `the` these tell where something is: nobody is told of so."""
_OF_WHAT = frozenset(("der", "des", "dieser", "seiner", "ihrer"))
_THINGS_DO = frozenset(
    "oitses oitsesid oitseb oitsevad narbus kohises "
    "цвела цвели цвел цветет цветут завяла завяли завял расцвела расцвели распустилась распустились "
    "kwitla kwitly kwitl zakwitla zakwitly zwiedla przekwitla cwierkaly cwierkal "
    "kohisi kukki kukkii kukkivat jaatyi "
    "bluhte bluhten verbluhte verwelkte heulten "
    "bloomed blooms flowered withered wilted".split()
)
"""What plants, birds and waters do, and nobody does (folded). Of somebody called Rose it may be told in a figure."""
_STOPS = frozenset(".,;:!?\n")
_BESIDE_THINGS = frozenset("aares aarde aarest otsas".split())
"""At the edge of something, to and from it, on top of it (Estonian): nobody has one."""
_BEHIND_A_GENITIVE = frozenset(
    "tipus jalamil kaldal kaldale serval servas all alla sees sisse seest peal aarella aarelle karjessa huipulla "
    "juurella alla alta pohjalla".split()
)
"""On the shore, at the foot, under, in and on something (Estonian, Finnish), behind another form of the name than the
first: there they are of their own (`Kask kaldal`). Behind, beside and before somebody people stand too."""
_PEOPLE_DO = frozenset(
    "tulid tuli kaisid elasid elab elavad kolisid naersid istuvad istusid tulivat kavivat asuivat asuvat muuttivat "
    "istuvat nauroivat приехали пришли живут жили уехали сидят сидели".split()
)
"""What families are told to do (Estonian, Finnish, Russian, folded)."""
_PEOPLE_HAVE = frozenset(
    "maja auto talu aed ratas jalgratas koer kass pulm pulmad sunnipaev suvila garaaz paat kodu hoov nukk poiss tudruk "
    "talo tila polkupyora koira haat mokki vene koti piha nukke".split()
)
"""What families have (Estonian, Finnish, folded)."""
_OF_PEOPLE = ("lt", "le", "ga", "lta", "lle", "am", "ui", "owi", "ovi")
"""From somebody, to somebody, with somebody (Estonian, Finnish, the Baltic and Slavic datives). On somebody (`Mäel`) is
mostly on something."""
_WAS = {"был": "m", "была": "f", "був": "m", "була": "f", "byl": "m", "byla": "f"}
"""`Was`, by the sex of whom it is told of (Russian, Ukrainian, Polish and Czech, folded)."""


def is_word_elsewhere(words: Sequence[Word], at: int, *, is_called: bool, is_told: bool) -> bool:
    """Whether a word that is a name is none where it stands; the text writes names large. `is_called` says that
    somebody is called so by a given name, `is_told` that a name was told in this form."""
    word = words[at]
    before = words[at - 1].folded if at and words[at].before.isspace() else ""
    behind = words[at + 1].folded if at + 1 < len(words) and words[at + 1].before == " " else ""
    if word.spelled[0].islower():
        is_known = word.folded in _NATURE or word.folded in _TRADES or is_thing_told(words, at)
        return not is_called and before not in TITLES and is_known
    if before in ("der", "den", "dem") and word.folded == "ernst":
        return behind in _OF_WHAT
    if not is_called and _is_german_noun(words, at, before, behind):
        return True
    if word.folded.endswith(("ов", "ев")) and behind == "было":
        return True  # many of them: of a man it is `был`
    if behind in _BESIDE_THINGS and words[at + 1].is_small:
        return True
    is_form = not (is_called or is_told)
    if is_form and (is_of_a_street(words, at) or (behind in _BEHIND_A_GENITIVE and words[at + 1].is_small)):
        return True
    is_all = at + 2 >= len(words) or words[at + 2].before[:1] in _STOPS
    return behind in _THINGS_DO and (is_all or not is_called)


def _is_german_noun(words: Sequence[Word], at: int, before: str, behind: str) -> bool:
    """`ein Stein`, `des Königs`, `vom Berg`, `Die Sommer waren`."""
    folded = words[at].folded
    if before == "des":
        return any(is_noun_in(folded.removesuffix(end), "de") for end in ("es", "s", "en", "n"))
    if not is_noun_in(folded, "de"):
        return False
    is_many = before == "die" and not folded.endswith("s") and _is_done_by_several(behind)
    return is_many or (before in _TO_IT and is_thing_in(folded, "de")) or _is_one_of_many(words, at, before)


def _is_done_by_several(behind: str) -> bool:
    """`waren`, `trugen`: of one woman it would be `war`, `trug`."""
    return behind.endswith("en") and behind not in _NO_VERBS and behind in words_known("de")


def _is_one_of_many(words: Sequence[Word], at: int, before: str) -> bool:
    """`ein Stein`, `ein großer Stein`, `auf dem Berg`; not `der Berg`, `mit dem Berg`, as somebody may be called."""
    is_small_between = at > 1 and words[at - 1].spelled[0].islower() and before.endswith(_AGREES)
    before_that = words[at - 2].folded if at > 1 and words[at - 1].before.isspace() else ""
    on_it = before in _THE and before_that in _ON
    return before in _ONE_OF_MANY or on_it or (is_small_between and before_that in _A)


def is_told_of_people(words: Sequence[Word], at: int) -> bool:
    """`Kased tulid külla`, `Lepa tütar`, `Kase auto`, `Sepalt saadud`: what families do, whom and what they have, and
    the cases in which people give and are given."""
    behind = words[at + 1].folded if at + 1 < len(words) and words[at + 1].before == " " else ""
    is_of_theirs = behind in _PEOPLE_DO or behind in KIN_WORDS or behind in _PEOPLE_HAVE
    return is_of_theirs or words[at].folded.endswith(_OF_PEOPLE)


def is_of_another_sex(words: Sequence[Word], at: int, sex: str) -> bool:
    """Whether what stands behind a family name says that somebody of the other sex was, or nobody: `Mróz był` is not
    told of a woman. `sex` is `m`, `f` or nothing."""
    behind = words[at + 1].folded if at + 1 < len(words) and words[at + 1].before == " " else ""
    return bool(sex) and _WAS.get(behind, sex) != sex
