"""Another family name of somebody, told by a sentence: `Miss Tuttle that was`, `she married a Kettering`, `a Tuttle
before she married`.

    told   = {said} name {said}         ; said: small words of one table; name: words written large
    name   = {title} [given] family

It is the name by marriage where a word of marriage stands before it, and none of a time before; else the name at birth.
No sentence is sure, so that it asks; the words that are (`née`, `that was a`, `m.`) are markers of `words_table`.

The words are of every language together, folded. Common practice, from memory; no source.
"""

from collections.abc import Sequence

from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.tokens import Token, token_of

_GO_WITH = frozenset(
    "a an the one of as she who she's he's that which whose then her his name family by girl girls side "
    "der die das eine einer sie "
    "welche ihr familie von des ta kes uks tema nime nimega perekonnast perest suguvosast elle qui une la de "
    "du famille nom son ella que una familia su apellido lei che cognome famiglia di ela uma da sobrenome nome "
    "zij ze een van hun haar naam hon som en av fra navn namn slekten slaekten slakten han joka nimi suvusta "
    "она кто из семьи фамилия ona ktora z rodziny nazwisko kura kas no dzimtas jos gimines jmeno egy lany aki".split()
)
"""Small words that say nothing of when somebody bore the name."""

NOUNS_OF_BIRTH = ("madchenname", "geburtsname", "meisjesnaam", "pigenavn", "pikenavn", "flicknamn", "tyttonimi")
"""Nouns for a name at birth, written large or small."""

SHORTENED_EARLIER = ("prev", "tidl", "vorm", "ehem", "dawn", "drv")
"""Words of a name had earlier, shortened with a point."""

_AT_BIRTH = frozenset(
    "was were maiden born birth formerly once miss unmarried single war geborene geborener geb geboren fruher "
    "ehemals fraulein ledig oli neiuna neiupolves neiupolvenimi neiu preili sundis sundinud etait "
    "fut nee jeune fille mademoiselle mlle autrefois era soltera nacida senorita nubile nata signorina nascida "
    "solteira vroeger juffrouw var fodd fodt froken omaa "
    "sukua entinen neiti была девичья девичестве урожденная byla panna panienskie panienskim domu dzimusi "
    "mergautine divci rozena slecna leanykori szuletett "
    "previously earlier vormals vorher zuvor einst ehedem vanasti varem endine anciennement jadis precedemment "
    "anteriormente gia outrora voorheen eertijds tidligere forhen tidigare forr forut fordom aiemmin aikaisemmin "
    "раньше прежде ранее бывшая бывшии dawniej przedtem wczesniej uprzednio agrak bijusi bijusais ieprieks anksciau "
    "buvusi buves pirmiau drive predtim byvala byvaly driv i mua korabban regebben".split()
).union(NOUNS_OF_BIRTH, SHORTENED_EARLIER)
"""Words of a name that somebody had first."""

_BEFORE = frozenset(
    "before vor avant enne antes prima voor for fore innan ennen до przed pred pirms pries elott".split()
)
"""`before`, of a name at birth where a word of marrying stands beside it."""

_EARLIER = ("antes", "prima", "enne", "før")
"""Those of `_BEFORE`, as told, that alone tell of a name had earlier: `Carmen Ruiz, antes Ortega`."""

_BY_MARRIAGE = frozenset(
    "married marries wed later now afterwards became mrs heiratete verheiratete verheiratet spater jetzt frau "
    "abiellus abielus hiljem nuud proua epousa epousee mariee maintenant madame mme caso casada ahora senora "
    "sposo sposata signora casou agora senhora trouwde getrouwd gehuwd nu mevrouw gift gifte giftet senere "
    "senare fru naimisissa naimisiin meni myohemmin rouva вышла замуж за замужем wyszla za maz zamezna pozniej "
    "pani vdala provdana pozdeji apprecejas veliau istekejo ferjhez ment kesobb giftist".split()
)
"""Words of a name that somebody took."""

_OF_MARRYING = _BY_MARRIAGE | frozenset(
    "marriage marrying wedding heirat ehe hochzeit abiellumist mariage casarse matrimonio casar casamento "
    "huwelijk bruiloft giftermalet giftede brylluppet avioliittoa замужества slubem svatbou".split()
)


def another_family_name(tokens: Sequence[Token]) -> tuple[str, Sequence[Token]]:
    """`born_as` or `married_as`, and the name; an empty string where the words do not tell another family name."""
    large = [at for at, token in enumerate(tokens) if _is_name(token)]
    if not large or large[-1] - large[0] > 2:
        return "", ()
    before, name, behind = tokens[: large[0]], tokens[large[0] : large[-1] + 1], tokens[large[-1] + 1 :]
    first, said = {token.plain for token in before}, {token.plain for token in (*before, *behind)}
    is_family = not (name[-1].is_given and len(name) == 1) and not words_of.KIN_WORDS.keys() & {it.plain for it in name}
    if not (said and said <= _GO_WITH | _AT_BIRTH | _BEFORE | _OF_MARRYING and is_family):
        return "", ()
    if len(before) > 1 and before[-1].plain in ("z", "ze") and before[-2].plain in _OF_MARRYING:
        return "", ()  # `przed ślubem z Janem`: with whom
    at_birth = bool(said & _AT_BIRTH or (said & _BEFORE and said & _OF_MARRYING))
    at_birth = at_birth or (not behind and len(before) == 1 and before[0].text in _EARLIER)
    is_now = "now" in said and not at_birth and bool(before)  # `she's Burns now`
    if (first & _BY_MARRIAGE or is_now) and not said & _BEFORE:
        return "married_as", name
    return ("born_as", _of_one(name, first)) if at_birth or first & _ARTICLES else ("", ())


_ARTICLES = frozenset("a an une una uma een en egy one".split())
"""`a Tuttle` alone tells that she is one of that family; in German it may be any noun."""


def _is_name(token: Token) -> bool:
    """Whether a word is a name: written large, and none that goes with one."""
    is_word = token.plain in _AT_BIRTH or token.plain in _BY_MARRIAGE or token.plain in words_of.TITLES
    return not token.is_small and not token.is_initial and not is_word


def _of_one(name: Sequence[Token], before: set[str]) -> Sequence[Token]:
    """`Tuttle` of `one of the Tuttles`."""
    last = name[-1]
    if not ({"one", "of"} <= before and last.plain.endswith("s") and not last.is_given):
        return name
    return (*name[:-1], token_of(last.text[:-1]))
