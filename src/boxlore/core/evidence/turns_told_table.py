"""How the turns of a life are told of somebody who is in a picture without the name being said again: “before he died”,
“after her wedding”, “we had just moved”. The words are ours, from what is said in each language (common practice, no
source)."""

import re
from collections.abc import Iterator

_FLAGS = re.IGNORECASE

PRONOUNS = {
    "male": re.compile(r"\b(?:he|er|il|él|lui|hij|han|он|ele)\b", _FLAGS),
    "female": re.compile(r"\b(?:she|sie|elle|ella|lei|zij|hon|hun|она|ela)\b", _FLAGS),
    "": re.compile(r"\b(?:ta|tema|hän)\b", _FLAGS),
}
"""Words for one man, one woman, or either, who was named before."""

OF_HERS: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(r"\b(?:her|his) (?=(?:death|wedding|marriage|funeral|birth)\b)", _FLAGS), "{who}'s "),
    (re.compile(r"\b(?:dying|her dying|his dying)$", _FLAGS), "{who} died"),
    (re.compile(r"\b(?:marrying|getting married)$", _FLAGS), "{who} married"),
    (re.compile(r"\b(?:seinem|ihrem) tod\w?\b", _FLAGS), "dem Tod von {who}"),
    (re.compile(r"\b(?:seiner|ihrer) hochzeit\b", _FLAGS), "der Hochzeit von {who}"),
    (re.compile(r"\b(?:sa mort|son décès)\b|(?<=avant )de mourir\b", _FLAGS), "la mort de {who}"),
    (re.compile(r"\bson mariage\b|(?<=avant )de se marier\b", _FLAGS), "le mariage de {who}"),
    (re.compile(r"(?<=antes de )morir(?:se)?\b|(?<=de )su muerte\b", _FLAGS), "la muerte de {who}"),
    (re.compile(r"(?<=antes de )casarse\b|(?<=de )su boda\b", _FLAGS), "la boda de {who}"),
    (re.compile(r"(?<=prima )di morire\b|\bdella sua morte\b", _FLAGS), "della morte di {who}"),
    (re.compile(r"(?<=antes de )morrer\b", _FLAGS), "a morte de {who}"),
    (re.compile(r"(?:\b(?:tema|oma) )(?=(?:surma|sündi|pulmi)\b)", _FLAGS), "{who} "),
    (re.compile(r"(?<=\benne )(?=surma\b)", _FLAGS), "{who} "),
    (re.compile(r"\b(?:hans|hennes|hendes) (?=(?:död|død)\b)", _FLAGS), "{who}s "),
    (re.compile(r"\b(?:zijn|haar) dood\b", _FLAGS), "de dood van {who}"),
    (
        re.compile(r"\b(?:murió|morì|è mort[oa]|morreu|умерл?а?|zmarła?|zemřela?|nomira|mirė|meghalt)$", _FLAGS),
        r"\g<0> {who}",
    ),
)
"""A turn of the life of whoever is meant by “her”, and the same with the name for `{who}`."""

JUST: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(r"^(.+ married) (?:[A-ZÄÖÜÕŠŽ]\w+)(?: [A-ZÄÖÜÕŠŽ]\w+)?$"), r"\1"),
    (re.compile(r"^(?:then )?(.+?) (?:had|have|has|['’]d|['’]ve) (?:only )?just (?=\w)", _FLAGS), r"just after \1 "),
    (re.compile(r"^(?:damals |da )?(?:waren|hatten|war|hatte) (wir|ich|er|sie) (?:gerade|eben) (.+)$", _FLAGS), r"kurz nachdem \1 \2 waren"),
    (re.compile(r"^(wir) (?:waren|hatten) (?:damals )?(?:gerade|eben) (.+)$", _FLAGS), r"kurz nachdem \1 \2 waren"),
    (re.compile(r"^(?:siis )?(?:(?:me|nad|ta) )?(?:olime|olid|oli) (?:just|äsja) (.+)nud$", _FLAGS), r"varsti pärast \1mist"),
    (re.compile(r"^(?:acabábamos|acababan|acababa) de (?=\w)", _FLAGS), "poco después de "),
)  # fmt: skip
"""How it is told that something has just happened, and the same as a time after it."""

ANSWERS: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(r"^(.+?) (?:was|were|is) still (?:alive|living|with us)(?: then)?$", _FLAGS), r"before \1 died"),
    (re.compile(r"^(.+?) (?:had (?:already )?(?:died|passed away|gone)|was (?:already )?(?:dead|gone))(?: by then| already)?$", _FLAGS), r"after \1 died"),
    (re.compile(r"^(.+?) (?:was|were) (?:not|never) (?:yet )?married(?: yet| then)?$", _FLAGS), r"before \1 married"),
    (re.compile(r"^(.+?) (?:was|were)n['’]t (?:yet )?married(?: yet| then)?$", _FLAGS), r"before \1 married"),
    (re.compile(r"^(.+?) (?:was|were) (?:already )?married(?: by then| already)?$", _FLAGS), r"after \1 married"),
    (re.compile(r"^(.+?) (?:was|had been) (?:already )?born(?: by then| already)?$", _FLAGS), r"after \1 was born"),
    (re.compile(r"^(.+?) (?:was|were|had)(?:n['’]t| not) (?:yet )?(?:been )?born(?: yet| then)?$", _FLAGS), r"before \1 was born"),
    (re.compile(r"^(.+?) had(?:n['’]t| not) (?:yet )?(.+?)(?: yet| by then)$", _FLAGS), r"before \1 \2"),
    (re.compile(r"^(.+?)(?: had|['’]d) (?:already )?(.+?) by then$", _FLAGS), r"after \1 \2"),
    (re.compile(r"^(.+?)(?: had|['’]d) already (.+)$", _FLAGS), r"after \1 \2"),
    (re.compile(r"^(.+?) (?:wasn['’]t|was not) born (?:till|until) (?:the )?(?:next|following) year$", _FLAGS), r"a year before \1 was born"),
    (re.compile(r"^(?:it (?:is|was) |that(?:['’]s| is| was) )?before my time$", _FLAGS), "before I was born"),
    (re.compile(r"^(?:das war )?vor meiner zeit$", _FLAGS), "vor meiner Geburt"),
    (re.compile(r"^enne minu aega$", _FLAGS), "enne minu sündi"),
    (re.compile(r"^(.+?) (?:lebte|lebten) (?:da )?noch$", _FLAGS), r"vor dem Tod von \1"),
    (re.compile(r"^(.+?) war (?:da )?schon (?:tot|gestorben)$", _FLAGS), r"nach dem Tod von \1"),
    (re.compile(r"^(.+?) war (?:da )?noch nicht geboren$", _FLAGS), r"bevor \1 geboren wurde"),
    (re.compile(r"^(.+?) war (?:da )?schon geboren$", _FLAGS), r"nachdem \1 geboren wurde"),
    (re.compile(r"^(.+?) elas veel$", _FLAGS), r"enne kui \1 suri"),
    (re.compile(r"^(.+?) oli (?:siis )?juba surnud$", _FLAGS), r"pärast seda kui \1 suri"),
    (re.compile(r"^(.+?) (?:polnud|ei olnud) (?:siis )?veel sündinud$", _FLAGS), r"enne kui \1 sündis"),
    (re.compile(r"^(.+?) (?:vivait|était) encore(?: en vie| vivante?)?$", _FLAGS), r"avant la mort de \1"),
    (re.compile(r"^(.+?) n['’]était pas encore née?$", _FLAGS), r"avant la naissance de \1"),
    (re.compile(r"^(.+?) todavía vivía$", _FLAGS), r"antes de la muerte de \1"),
    (re.compile(r"^(.+?) todavía no había nacido$", _FLAGS), r"antes del nacimiento de \1"),
)  # fmt: skip
"""What answers whether somebody was alive, married or born, as a whole sentence, and the same as a time."""

_SO_LONG = r"(?P<far>(?:about |some |just |only |almost |nearly )?(?:an?|one|\w+|a few|a couple of|\d+) (?:years?|months?|weeks?|days?))"
_SO_LANG = r"(?P<far>(?:etwa |rund |knapp )?\w+ (?:jahre?|monate?|wochen?|tage?))"
_NII_KAUA = r"(?P<far>(?:umbes |ligi )?(?:\w+ )?(?:aastat?|kuud?|nädalat?|päeva?))"
_LATER_IN: tuple[tuple[str, str, str, bool], ...] = (
    ("avant que", "ans?|mois|semaines?|jours?", "plus tard|après", False),
    ("antes de que", "años?|mes(?:es)?|semanas?|días?", "después|más tarde", False),
    ("prima che", "ann[oi]|mes[ei]|settiman[ae]|giorn[oi]", "dopo|più tardi", False),
    ("antes que", "anos?|m[eê]s(?:es)?|semanas?|dias?", "depois|mais tarde", False),
    ("voordat", "jaar|maand(?:en)?|we(?:ek|ken)|dag(?:en)?", "later|daarna|erna", True),
    ("innan", "år|månad(?:er)?|veck(?:a|or)|dag(?:ar)?", "senare|efteråt", True),
    ("før", "år|måned(?:er)?|u[kg]e[r]?|dag(?:er|e)?", "senere|etterpå|efter", True),
    ("ennen kuin", "vuo(?:tta|si)|kuukau(?:tta|si)|viikko[a]?|päivää?", "myöhemmin", True),
    ("zanim", "lata?|rok|miesią\\w+|tygod\\w+|dni", "później", True),
    ("než", "rok[y]?|let|měsíc\\w*|týdn\\w*|dn[yí]", "později|poté", True),
    ("pirms", "gad\\w{1,2}|mēne\\w+|nedēļ\\w+|dien\\w+", "vēlāk", True),
    ("prieš", "met\\w{1,3}|mėnes\\w+|savait\\w+|dien\\w+", "vėliau", True),
    ("mielőtt", "évvel|hónappal|héttel|nappal", "később", True),
)  # fmt: skip
"""For a language how “before” leads a sentence, units of time, “later”, and whether a verb stands before who did it where
“later” leads the sentence."""


def _later_in(before: str, units: str, later: str, *, is_turned: bool) -> Iterator[tuple[re.Pattern[str], str]]:
    far = rf"(?P<far>\w+ (?:{units}))"
    yield re.compile(rf"^(.+?) {far} (?:{later})$", _FLAGS), rf"\g<far> {before} \1"
    if is_turned:
        yield re.compile(rf"^{far} (?:{later}) (\w+) (.+)$", _FLAGS), rf"\g<far> {before} \3 \2"
    yield re.compile(rf"^{far} (?:{later}),? (.+)$", _FLAGS), rf"\g<far> {before} \2"


LATER: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(rf"^(.+?) {_SO_LONG} (?:later|afterwards?|after(?: this| that| it)?)(?: was taken)?$", _FLAGS), r"\g<far> before \1"),
    (re.compile(rf"^{_SO_LONG} (?:later|afterwards?|after(?: this| that| it)),? (.+)$", _FLAGS), r"\g<far> before \2"),
    (re.compile(r"^(.+?) (?:the|that) (?:very )?(?:next|following) (year|month|week)$", _FLAGS), r"a \2 before \1"),
    (re.compile(r"^(.+?) the (year|month|week) after(?: this| that)?$", _FLAGS), r"a \2 before \1"),
    (re.compile(r"^(.+?) (?:the|that) (?:very )?(?:next|following) (?:spring|summer|autumn|fall|winter|christmas|easter)$", _FLAGS), r"a year before \1"),
    (re.compile(r"^(.+?) (?:very )?(?:soon|shortly|not long) (?:after(?:wards?)?|later)(?: this| that)?$", _FLAGS), r"shortly before \1"),
    (re.compile(rf"^(.+?) had been {_SO_LONG} (?:before|earlier)(?: this| that)?$", _FLAGS), r"\g<far> after \1"),
    (re.compile(rf"^(.+?) had (.+?) {_SO_LONG} (?:before|earlier)(?: this| that)?$", _FLAGS), r"\g<far> after \1 \2"),
    (re.compile(r"^(.+?) had been the (year|month|week) before$", _FLAGS), r"a \2 after \1"),
    (re.compile(r"^(.+?) had (.+?) the (year|month|week) before$", _FLAGS), r"a \3 after \1 \2"),
    (re.compile(rf"^(.+?) (\w+) {_SO_LANG} (?:später|danach|darauf)$", _FLAGS), r"\g<far> bevor \1 \2"),
    (re.compile(rf"^{_SO_LANG} (?:später|danach|darauf) war (.+)$", _FLAGS), r"\g<far> vor \2"),
    (re.compile(rf"^{_SO_LANG} (?:später|danach|darauf) (\w+) (.+)$", _FLAGS), r"\g<far> bevor \3 \2"),
    (re.compile(r"^im (?:nächsten jahr|jahr darauf|jahr danach) (\w+) (.+)$", _FLAGS), r"ein Jahr bevor \2 \1"),
    (re.compile(rf"^{_NII_KAUA} hiljem oli (.+)$", _FLAGS), r"\g<far> enne \2"),
    (re.compile(rf"^{_NII_KAUA} hiljem (.+)$", _FLAGS), r"\g<far> enne kui \2"),
    (re.compile(rf"^(.+?) {_NII_KAUA} hiljem$", _FLAGS), r"\g<far> enne kui \1"),
    (re.compile(r"^(.+?) через (.+)$", _FLAGS), r"за \2 до того как \1"),
    (re.compile(r"^через (\w+ \w+) (.+)$", _FLAGS), r"за \1 до того как \2"),
    *(row for before, units, later, is_turned in _LATER_IN for row in _later_in(before, units, later, is_turned=is_turned)),
)  # fmt: skip
"""How it is told that something happened so long after the picture, or had happened before it, and the same as a time by
that."""

LATER_AT_ITS_END = re.compile(
    r"\b(?:later|afterwards?|after this|next year|following year|später|darauf|hiljem|plus tard|después|senare|senere|myöhemmin|dopo|depois)$",
    _FLAGS,
)

BETWEEN: tuple[tuple[re.Pattern[str], str, str], ...] = (
    (re.compile(r"\bbetween (.+?) and (.+)$", _FLAGS), r"after \1", r"before \2"),
    (re.compile(r"\bzwischen (?:dem |der )?(.+?) und (?:dem |der )?(.+)$", _FLAGS), r"nach dem \1", r"vor dem \2"),
    (re.compile(r"\bentre (.+?) et (.+)$", _FLAGS), r"après \1", r"avant \2"),
    (re.compile(r"\bentre (.+?) y (.+)$", _FLAGS), r"después de \1", r"antes de \2"),
)
"""How it is told that a picture lies between two days, and the same as two times."""

BUT = re.compile(
    r",? (?:but|and|aber|und|aga|ja|kuid|mais|et|pero|y) (?=(?:before|after|vor|nach|bevor|nachdem|enne|pärast|avant|après|antes|después)\b)",
    _FLAGS,
)

DURING = re.compile(
    r"^(?:(?:this|that|it) (?:is|was) )?(?:taken |made )?(?:during|about|around|at|in|on|from|bei|beim|während|aus|zur|pendant|lors|durante|en)\b",
    _FLAGS,
)
"""How a time begins that is an event and no more."""

YES_OR_NO = re.compile(
    r"^(?:(?:oh|ah|well|now|why|yes|no|ja|nein|ach|also|jah|ei|noh|oui|non|eh bien|sí|pues|nej|nei|nee|sì|não|sim)[,.]? +)+",
    _FLAGS,
)

UNDECIDED = re.compile(
    r"^(?:or|oder|või|ou|o|of|eller|tai|или|albo|lub|some|others?|another|the others?|(?:die )?andere\w?|manche|"
    r"teised|mõned|d['’]autres|les autres|otr[oa]s|altri|andra|andre|muut|другие|inni)\b",
    _FLAGS,
)
"""How a tail begins that leaves open which it was."""

SO = re.compile(
    r"^(?:so|and so|thus|therefore|hence|that makes it|also|folglich|seega|järelikult|donc|alors|así que|quindi|"
    r"portanto|dus|så|joten|значит|więc)\s+",
    _FLAGS,
)
"""How a part of a sentence begins that says what follows from the rest."""
