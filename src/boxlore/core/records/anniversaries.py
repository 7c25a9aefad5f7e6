"""What is counted from an event by whole years: “Tom and Mary’s silver wedding”, “their tenth wedding anniversary”.

A day that is named, numbered or told with its year is sought as it is told, with whose it is before or behind it: by
their own names it is surely that event's, by “the” or “their” perhaps. The names of jubilees are common practice, no
source.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from datetime import MAXYEAR
from functools import lru_cache
from typing import NamedTuple

from boxlore.core.dates.edtf_values import month_length
from boxlore.core.dates.event_question import as_named
from boxlore.core.dates.lexer import lex
from boxlore.core.people.life_event_words import JOINING, bare

JUBILEES: Mapping[int, re.Pattern[str]] = {
    months: re.compile(rf"(?<!\w)(?:{words})(?!\w)")
    for months, words in {
        60: r"wooden (?:wedding|anniversary)|holzhochzeit|hölzerne\w* hochzeit|noces de bois|bodas de madera|"
        r"nozze di legno|bodas de madeira|houten bruiloft|træbryllup\w*|trebryllup\w*|träbröllop\w*|"
        r"puuhä\w+|puupulm\w*|"
        r"деревянн\w+ свадьб\w+",
        120: r"tin (?:wedding|anniversary)|rosenhochzeit|blechhochzeit|noces d'étain|nozze di stagno|tinnen bruiloft|"
        r"tinbryllup\w*|tinnbryllup\w*|tennbröllop\w*|tinahä\w+|tinapulm\w*|оловянн\w+ свадьб\w+|розов\w+ свадьб\w+",
        150: r"koperen (?:bruiloft|huwelijk)|kobberbryllup\w*|kopparbröllop\w*",
        180: r"crystal (?:wedding|anniversary)|kristallhochzeit|gläserne\w* hochzeit|noces de cristal|bodas de cristal|"
        r"nozze di cristallo|kristallen bruiloft|krystalbryllup\w*|krystallbryllup\w*|kristallbröllop\w*|"
        r"kristallihä\w+|kristallpulm\w*|хрустальн\w+ свадьб\w+|kryształow\w+ (?:wesel|god)\w+",
        240: r"china (?:wedding|anniversary)|porzellanhochzeit|noces de porcelaine|bodas de porcelana|"
        r"nozze di porcellana|porseleinen bruiloft|porcelænsbryllup\w*|porselensbryllup\w*|porslinsbröllop\w*|"
        r"posliinihä\w+|portselanpulm\w*|фарфоров\w+ свадьб\w+|porcelanow\w+ (?:wesel|god)\w+",
        300: r"silver (?:wedding|anniversary)(?: anniversary)?|silberhochzeit\w*|silbern\w+ hochzeit|noces d'argent|"
        r"bodas de plata|nozze d'argento|bodas de prata|zilveren (?:bruiloft\w*|huwelijk\w*)|sølvbryllup\w*|"
        r"silverbröllop\w*|hopeahä\w+|hõbepulm\w*|серебрян\w+ свадьб\w+|srebrn\w+ (?:wesel|god)\w+|sudraba kāz\w+|"
        r"sidabrin\w+ vestuv\w+|stříbrn\w+ svatb\w+",
        360: r"pearl (?:wedding|anniversary)|perlenhochzeit|noces de perles?|bodas de perlas?|nozze di perle?|"
        r"bodas de pérolas?|parelen bruiloft|parelhuwelijk|perlebryllup\w*|pärlbröllop\w*|helmihä\w+|pärlipulm\w*|"
        r"жемчужн\w+ свадьб\w+|perłow\w+ (?:wesel|god)\w+|perlov\w+ svatb\w+",
        480: r"ruby (?:wedding|anniversary)(?: anniversary)?|rubinhochzeit|bodas de rubí|nozze di rubino|bodas de rubi|"
        r"robijnen bruiloft|rubinbryllup\w*|rubinbröllop\w*|rubiinihä\w+|rubiinpulm\w*|рубинов\w+ свадьб\w+|"
        r"rubinow\w+ (?:wesel|god)\w+|rubínov\w+ svatb\w+",
        600: r"golden (?:wedding|anniversary)(?: anniversary)?|goldhochzeit|golden\w+ hochzeit|noces d'or|bodas de oro|"
        r"nozze d'oro|bodas de ouro|gouden (?:bruiloft\w*|huwelijk\w*)|guldbryllup\w*|gullbryllup\w*|guldbröllop\w*|"
        r"kultahä\w+|kuldpulm\w*|золот\w+ свадьб\w+|złot\w+ (?:wesel|god)\w+|zelta kāz\w+|auksin\w+ vestuv\w+|"
        r"zlat\w+ svatb\w+",
        720: r"diamond (?:wedding|anniversary)(?: anniversary)?|diamanthochzeit|diamanten\w+ hochzeit|noces de diamant|"
        r"bodas de diamantes?|nozze di diamante|diamanten (?:bruiloft\w*|huwelijk\w*)|diamantbryllup\w*|"
        r"diamantbröllop\w*|timanttihä\w+|teemantpulm\w*|бриллиантов\w+ свадьб\w+|diamentow\w+ (?:wesel|god)\w+|"
        r"dimanta kāz\w+|deimantin\w+ vestuv\w+|diamantov\w+ svatb\w+",
    }.items()
}
"""The months after a wedding → what that day is called."""

_OF_A_WEDDING = re.compile(
    r"(?<!\w)(?:wedding anniversar(?:y|ies)|hochzeitstag\w*|hochzeitsjubiläum|anniversaire de (?:mariage|noces)|"
    r"aniversario de (?:bodas?|matrimonio)|anniversario di (?:matrimonio|nozze)|aniversário de casamento|trouwdag\w*|"
    r"huwelijksverjaardag|huwelijksjubileum|bryllupsdag\w*|bröllopsdag\w*|hääpäivä\w*|pulma-?aastapäev\w*|"
    r"годовщин\w+ (?:\w+ )?свадьбы|rocznic\w+ ślubu|kāzu gadadien\w+|kāzu jubilej\w+|vestuvių metin\w+|"
    r"výročí (?:\w+ )?svatby)(?!\w)"
)
_OF_A_DEATH = re.compile(
    r"(?<!\w)(?:todestag\w*|sterbetag\w*|deathday|dødsdag\w*|dödsdag\w*|sterfdag|surma-?aastapäev\w*|kuolinpäivä\w*)"
    r"(?!\w)"
)
_OF_ANYTHING = (
    r"(?<!\w)(?:anniversar(?:y|ies)|jahrestag\w*|aniversario|aastapäev\w*|годовщин\w+|rocznic\w+|gadadien\w+|metin\w+|"
    r"výročí|jubileum|årsdag\w*|vuosipäivä\w*)(?!\w)"
)
_ANY_OF_ANYTHING = re.compile(_OF_ANYTHING)
"""What such a day is called in the languages, of a wedding and of anything else."""

OURS = tuple(
    "our my unsere meine nos nuestras nostre nossas onze vores vår vårt meidän meie наша nasze mūsu mūsų naše".split()
)
FORMS_OF_OURS = tuple(
    frozenset(forms.split())
    for forms in (
        "our ours", "my", "unser unsere unserem unseren unserer unseres unsre unsrem unsren unsrer",
        "mein meine meinem meinen meiner meines", "mon ma mes", "nos notre", "mi mis mía", "mio mia mie miei",
        "meu minha meus minhas", "mijn", "min mit mitt mine mina", "minun", "minu mu",
        "мой моя моё моего моей моем моём моему моим мою", "mój moja moje mojego mojej mojemu moim moją",
        "mana manas manām manās manu", "mano", "můj moje mé mého mém moji mojí mou",
        "nuestra nuestras nuestro nuestros",
        "nostra nostre nostri nostro", "nossa nossas nosso nossos", "onze ons", "vores vort", "vår vårt våra våre",
        "meidän", "meie meil", "наш наша наше нашего нашей нашем нашему наши нашим нашими наших нашу",
        "nasz nasza nasze naszego naszej naszemu naszym naszymi naszych naszą", "mūsu mūsų",
        "naše našeho našem našemu naši našich našim našimi naší",
    )
)  # fmt: skip
"""The forms of each of these words, of which one tells another. “Vår” is the spring too, and tells nothing."""
THEIRS = tuple(
    "their ihre ihr ihrem ihren ihrer leur leurs sus su loro seus suas hun deres deras heidän nende их ich viņu jų "
    "jejich".split()
)

_OF = "(?:of|von|de|di|do|da|van|av|af|der|del|della|du)"
_CALLED_A_WEDDING = "wedding|marriage|hochzeit|mariage|bodas?|matrimonio|nozze|casamento|huwelijk|bruiloft|bryllup\\w*"
_PARENTS = (
    r"(?:grand|gross|groß|grands-)?(?:parents|eltern)|(?:mum|mam|mom|mummy) and dad(?:dy)?|"
    r"(?:granny|grandma|nana?|gran) and (?:grandad|granddad|grandpa|pop|pa)|"
    r"mutti und vati|mama und papa|oma (?:und|en) opa|papa et maman|"
    r"padres|abuelos|genitori|nonni|pais|avós|(?:groot)?ouders|(?:bedste|beste)?for(?:ældre|eldre)ne?s?|"
    r"(?:mor|far)?föräldrar(?:na)?s?|(?:iso)?vanhempien|(?:vana)?vanemate|родителей|дедушки и бабушки|"
    r"бабушки и дедушки|rodziców|dziadków|(?:vec)?vecāku|tėvų|senelių|(?:pra)?rodičů"
)
_OF_PARENTS = re.compile(rf" (?:\w+ ){{0,2}}(?:{_PARENTS})(?!\w)")
_PARENTS_BEFORE = re.compile(
    rf"(?:(?:my|our|meine[rn]?|mans?|mūsu|mūsų|mano|minun|minu|meie) )?(?:{_PARENTS})(?:'s|s'|')? $"
)
_WORD_BEFORE = re.compile(r"[^\W_]+['.]? $")
_YEAR_BEHIND = re.compile(r"(?:,? in|, | im jahre?| en| nel| em| i| v| w| в)? ?(1[89]\d\d|20\d\d)(?!\d)")


class Told(NamedTuple):
    """The words of a phrase in small letters; how they may call those whose event it is, alone and together; what the
    event is called; and whether it is the narrator's own."""

    words: str
    people: Iterable[str]
    name: str
    is_own: bool


class Kept(NamedTuple):
    """A day that is counted from an event: the words that mean it, its date as EDTF, what it is called in a question,
    and whether no other event's may be meant."""

    words: str
    edtf: str
    name: str
    is_sure: bool


def kept(told: Told, edtf: str, kind: str) -> Iterator[Kept]:
    """The days that the words count from an event of this date and kind."""
    if not _names_a_day(told.words):
        return  # most
    is_wedding, name = kind == "marriage", told.name
    runs: list[tuple[int, int, int]] = []
    for months, pattern in JUBILEES.items() if is_wedding else ():
        runs += [(match.start(), match.end(), months) for match in pattern.finditer(told.words)]
    called = _CALLED_A_WEDDING if is_wedding else re.escape(bare(name).replace("’", "'"))
    named = re.compile(rf"{_OF_ANYTHING}(?: {_OF} (?:\w+ )?(?:{called})(?!\w)){'?' if is_wedding else ''}")
    own = {"marriage": _OF_A_WEDDING, "death": _OF_A_DEATH}.get(kind)
    for pattern in (own, named) if own else (named,):
        for match in pattern.finditer(told.words):
            if (run := _numbered(told.words, match, edtf)) and not any(run[1] == end for _, end, _ in runs):
                runs.append(run)
    for start, end, months in runs:
        if (day := _on(edtf, months)) and not _is_of_another(told, end):
            years = "a year" if months == _YEAR else f"{months // _YEAR}{' and a half' * (months % _YEAR > 0)} years"
            words, is_sure = _of_whom(told, start, end)
            yield Kept(words, day, f"{years} after {as_named(name)}", is_sure or own is None)


_YEAR = 12


@lru_cache(1 << 10)
def _names_a_day(words: str) -> bool:
    """Whether a day that is counted so is named at all; kept, since a phrase is read beside every event."""
    return any(pattern.search(words) for pattern in (*JUBILEES.values(), _OF_A_WEDDING, _OF_A_DEATH, _ANY_OF_ANYTHING))


def _is_of_couple(couple: re.Match[str], name: str) -> bool:
    """Whether two names begin as names within an event's name do: `Ивана и Ольги` of `Иван и Ольга поженились`."""
    words = re.findall(r"\w+", name.casefold())
    return all(any(word.startswith(told[: max(len(told) - 2, 2)]) for word in words) for told in couple.groups())


def _is_of_another(told: Told, end: int) -> bool:
    """Whether another event is told behind the words of a day (“the tenth anniversary of the fire”)."""
    behind = told.words[end:]
    return bool(re.match(rf" {_OF} ", behind)) and _of_whom(told, end, end)[0] == "" and not _OF_PARENTS.match(behind)


def _numbered(words: str, match: re.Match[str], edtf: str) -> tuple[int, int, int] | None:
    """Where the words of “tenth anniversary”, “anniversary 1960” begin and end, and the months; None without a number
    or a year."""
    start = match.start()
    while before := _WORD_BEFORE.search(words[:start]):
        if count := _number(before[0]):
            return before.start(), match.end(), _YEAR * count
        if start < match.start() or any(token.is_any(_MONTH) for token in lex(before[0].strip())):
            break  # one word may stand between, “fifth wedding anniversary”; in “7 February anniversary” nothing counts
        start = before.start()
    year = _YEAR_BEHIND.match(words, match.end())
    if year and (count := int(year[1]) - int(edtf[:4])) > 0:
        return match.start(), year.end(), _YEAR * count
    return None


_MONTH = frozenset(("month",))


def _number(word: str) -> int:
    """What a word or digits count; 0 for none."""
    for token in lex(word.strip()):
        for sense in token.senses:
            value = sense.value[0] if sense.kind == "day" else sense.value if sense.kind == "ordinal" else 0  # type: ignore[index]
            if isinstance(value, int) and value > 0:
                return value
    return 0


def _of_whom(told: Told, start: int, end: int) -> tuple[str, bool]:
    """The words of a day with whose it is told to be, and whether that is surely of those whose event it is."""
    before, behind = told.words[:start], told.words[end:]
    called = "|".join(re.escape(who) for who in sorted(told.people, key=len, reverse=True))
    if called and (own := re.search(rf"(?<!\w)(?:{called})(?:'s|s'|s|')? $", before)):
        return told.words[own.start() : end], True
    if called and (own := re.match(rf" {_OF} (?:{called})(?!\w)", behind)):
        return told.words[start : end + own.end()], True
    if (couple := _COUPLE_BEHIND.match(behind)) and _is_of_couple(couple, told.name):
        return told.words[start : end + couple.end()], False
    if (couple := _COUPLE_BEFORE.search(before)) and _is_of_couple(couple, told.name):
        return told.words[couple.start() : end], False
    if parents := _OF_PARENTS.match(behind):
        return told.words[start : end + parents.end()], False
    if parents := _PARENTS_BEFORE.search(before):
        return told.words[parents.start() : end], False
    word = before.split()[-1] if before.strip() else ""
    is_ours = any(word in forms for forms in FORMS_OF_OURS)
    if is_ours or word in THEIRS:
        return f"{word} {told.words[start:end]}", is_ours and told.is_own
    return told.words[start:end], False


_AND = "|".join(map(re.escape, JOINING))
_COUPLE_BEHIND = re.compile(rf" (\w+) (?:{_AND}) (\w+)")
_COUPLE_BEFORE = re.compile(rf"(\w+) (?:{_AND}) (\w+) $")
_PLAIN = re.compile(r"(\d{4})(?:-(\d\d))?(?:-(\d\d))?")


def _on(edtf: str, months: int) -> str:
    """The date so many months on; empty for one that is no plain day, month or year."""
    match = _PLAIN.fullmatch(edtf)
    if match is None or int(match[1]) + months // 12 >= MAXYEAR:
        return ""
    count = int(match[1]) * 12 + int(match[2] or 1) - 1 + months
    year, month = count // 12, count % 12 + 1
    if match[2] is None:
        return f"{year:04d}"
    day = min(int(match[3] or 1), month_length(year, month))
    return f"{year:04d}-{month:02d}-{day:02d}" if match[3] else f"{year:04d}-{month:02d}"
