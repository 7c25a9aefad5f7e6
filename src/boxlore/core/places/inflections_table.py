"""How names of places change in sentences, by language: from the form that is told back to the name itself.

From memory of the school grammars of each language; only what stands with a place: in, at, near, from, of.
"""

from typing import NamedTuple


class Inflections(NamedTuple):
    """The endings that a told form may have (`=` is none), and how its stem ends against the end of the name.

    `lands` are those whose places are often told in the language (ISO 3166-1): of many names there it is meant first.

    A stem is written `told>name`; `=` is a stem that is the name, an empty side nothing. `Tampereella` is the ending
    lla behind the stem `tamperee`, and `ee>e` makes the name of it.
    """

    lands: str
    endings: str
    stems: str


INFLECTIONS: dict[str, Inflections] = {
    "et": Inflections(
        "EE LV RU FI",
        "= s st sse l lt le ni ks ga",
        "= a> i> e> u> li>el ri>er di>t gi>k bi>p se>s se>ne jõe>jõgi mäe>mägi lahe>laht ranna>rand",
    ),
    "fi": Inflections(
        "FI RU SE EE NO",
        "= n ssa ssä sta stä lla llä lta ltä lle ksi seen hin a ä ta tä tta ttä",
        "= e>i ee>e nge>nki ngi>nki ngo>nko nga>nka nna>nta nno>nto mme>mpi rra>rta lla>lta de>ti joe>joki mäe>mäki "
        "pi>ppi ti>tti ki>kki pa>ppa ta>tta ka>kka ku>kku ru>rku i> oi>a aa>a ää>ä ii>i oo>o uu>u",
    ),
    "ru": Inflections(
        "RU UA BY KZ UZ KG TJ TM AM AZ GE MD EE LV LT PL FI",
        "=",
        "е> е>а е>ь е>о е>я и>ь и>а и>ы и>я а> а>о я>ь я>е ы>а у> у>а ом> ом>о ем>ь ем>е ой>а ью>ь ами>ы ах>ы ях>и ым> "
        "ым>о ове>ов ом>ое ом>ый ом>ой ем>ее ем>ий им>ий ой>ая ей>яя ого>ое ого>ый ого>ий ых>ые их>ие ых>ые "
        "нце>нец нца>нец нске>нск ская> ская>ь ская>а ской> ской>ь ской>а ский> ский>ь ский>а ском> ском>ь ском>а",
    ),
    "uk": Inflections(
        "UA PL MD RU RO SK BY", "=", "і> і>а і>ь и>а а> у> ові>ів єві>їв еві>їв зі>га ці>ка ом> ою>а ого>ий ому>ий ах>и"
    ),
    "pl": Inflections(
        "PL UA BY LT DE CZ SK RU LV",
        "=",
        "owie>ów owa>ów owem>ów odzi>ódź ie> ie>a ie>o iu>  niu>ń iu>ie i>  i>ia i>ie u> u>o y>a y> a> a>o ia> em> "
        "em>o em>e iem> iem>ie ą>a ią> ią>ia ego>e ego>y ej>a ym>y ym>e im>i im>ie ach>e ach>y ach>i ach>a ami>e ami>y "
        "ic>ice ec>ce ku>ek ka>ek cu>ec czu>cz rze>r rze>ra dzie>d dzie>da cie>t cie>ta le>ł le>ła le>l ych>e ich>ie",
    ),
    "cs": Inflections(
        "CZ SK AT PL DE UA HU",
        "=",
        "ě> ě>a ě>o e> e>a e>o i>  i>e i>a u> u>o ku>ek ci>ec a> a>o y>a y> ze>ha ce>ka ře>r ře>ra ni>eň ích>e ích>ice "
        "ech>y ech>e ách>y ém>ý ém>é ém>á ím>í ových>ovy é>á ej>á ého>ý ých>é ým>ý om> em> em>o ou>a",
    ),
    "sh": Inflections(
        "HR RS BA ME MK SI XK IT",
        "=",
        "u> u>o u>e i>a i> ci>ka zi>ga ma>mi ima>i om>i om>o a> a>o e>a em> em>o oj>a ke>ka dru>dar ru>ar cu>ac lu>ao",
    ),
    "hu": Inflections(
        "HU RO SK RS UA HR AT SI",
        "ban ben ba be ról ről ból ből nál nél tól től ra re hoz hez höz on en ön ott ett ött ön n t i",
        "= á>a é>e",
    ),
    "lv": Inflections("LV EE LT RU BY", "=", "ī>s ī>is a>s ē>e as>a es>e u>a ā>s os>i ās>as ī>e u>i"),
    "lt": Inflections(
        "LT LV PL BY RU",
        "=",
        "e>as uje>us iuje>ius iuose>iai uose>ai oje>a ėje>ė yje>ys iaus>ius aus>us o>as os>a ės>ė ių>iai ų>ai io>is "
        "yse>ys iai>ius ose>os",
    ),
    "is": Inflections(
        "IS DK",
        "=",
        "i> i>ur firði>fjörður s> ar> ar>i ur> um>ar öðum>aðir öllum>ellir öllum>allar a> u>a u>ur ni>n heiði>heiður "
        "vatni>vatn ey>ey",
    ),
    "tr": Inflections("TR CY BG GR", "da de ta te dan den tan ten nda nde ya ye", "= ğ>k"),
    "el": Inflections("GR CY TR", "=", "α>ας η>ης ο>ος ας>α ης>η ου>ος ου>ο ων>α"),
    "ka": Inflections("GE", "ში დან თან ის", "= >ი"),
    "ro": Inflections("RO MD UA", "=", "ul> ului> ei>a ii>a"),
    "de": Inflections("DE AT CH PL CZ EE LV RU", "s es er", "= >en"),
}
"""Language code -> its inflections. Estonian and Finnish names keep a vowel that the name itself may have lost."""
