"""How names change in sentences: the endings of languages, by the ending of the name as it is told.

Each row: what the name ends in (`*` a consonant, `+` a vowel, letters themselves), what stands in its place, and the
endings that may follow (`=` is none). Letters are folded. Every row holds for every name in Latin letters: the
language of a name and that of the words about it need not be the same. Estonian: Eesti keele käsiraamat, morphology of
names (short names, weakening); Finnish: Iso suomen kielioppi, nominal types; Latvian, Lithuanian, Polish and Czech:
declensions of the school grammars; Hungarian: the cases of the school grammars, and né; German: genitive in s, es, ens. From memory of these.
"""

_ESTONIAN = "= s st sse l le lt ks ni na ta ga d de t te dele dega lik ke kene kest kesele"
_FINNISH = "n na ssa sta lla lta lle ksi tta a en in an on un ja ia ien kin kaan han ko"

_FINNISH_PLURAL = "den lla lta lle ssa sta hin na ksi tta"
"""Behind the vowel i of the plural."""

_FINNISH_WEAKENED = (
    *((f"{strong}{vowel}", f"{weak}{vowel}")
      for strong, weak in (("nk", "ng"), ("nt", "nn"), ("mp", "mm"), ("lt", "ll"), ("rt", "rr"), ("ht", "hd"))
      for vowel in "aeiou"),
    ("lahti", "lahde"), ("maki", "mae"), ("joki", "joe"), ("lampi", "lamme"),
    *((f"{nature}i", f"{nature}e") for nature in "niem jarv saar kosk kiv salm suom numm tamm lehd virr".split()),
    ("ngas", "nkaa"), ("mmas", "mpaa"), ("nnas", "ntaa"), ("llas", "ltaa"), ("rras", "rtaa"), ("rvas", "rpaa"),
    ("as", "aa"), ("kas", "kkaa"), ("is", "ii"), ("es", "ee"),
)  # fmt: skip
"""Gradation, and stems of the types lahti, niemi, kangas: `Lehtokangas` → `Lehtokankaan`, `Ranta` → `Rannan`."""

_HUNGARIAN = "nak nek ban ben ba be ra re tol rol hoz hez ert ig ne nal nel"

NAMES_INFLECTED: tuple[tuple[str, str, str], ...] = (
    # Estonian
    ("+", "+", _ESTONIAN),
    ("*", "*i", _ESTONIAN),
    ("*", "*a", _ESTONIAN),
    ("*", "*e", _ESTONIAN),
    ("*", "*u", _ESTONIAN),
    ("s", "se", _ESTONIAN),
    ("s", "kse", _ESTONIAN),
    ("ne", "se", _ESTONIAN),
    ("magi", "mae", _ESTONIAN),
    ("magi", "mage", "de dele dega del desse dest deni"),
    ("jogi", "joe", _ESTONIAN),
    ("jogi", "joge", "de dele dega del desse dest deni"),
    ("el", "li", _ESTONIAN),
    ("el", "la", _ESTONIAN),
    ("er", "ri", _ESTONIAN),
    ("er", "ra", _ESTONIAN),
    ("sk", "se", _ESTONIAN),
    ("k", "gi", _ESTONIAN),
    ("k", "gu", _ESTONIAN),
    ("k", "ga", _ESTONIAN),
    ("t", "di", _ESTONIAN),
    ("t", "du", _ESTONIAN),
    ("t", "da", _ESTONIAN),
    ("p", "bi", _ESTONIAN),
    ("p", "bu", _ESTONIAN),
    # Finnish
    ("+", "+", _FINNISH),
    ("*", "*i", _FINNISH),
    ("nen", "se", _FINNISH),
    ("nen", "s", "ten ta et ia iin"),
    ("nen", "si", f"{_FINNISH_PLURAL} a"),
    ("a", "oi", _FINNISH_PLURAL),
    ("a", "oj", "a en"),
    ("a", "i", _FINNISH_PLURAL),
    ("i", "ei", _FINNISH_PLURAL),
    ("i", "ej", "a en"),
    ("e", "ei", _FINNISH_PLURAL),
    ("o", "oi", _FINNISH_PLURAL),
    ("o", "oj", "a en"),
    *((f"{vowel}{vowel}", f"{vowel}i", f"{_FINNISH_PLURAL} ta") for vowel in "aeou"),
    *((f"{stop}{stop}{vowel}", f"{stop}{vowel}", _FINNISH) for stop in "kpt" for vowel in "aeiou"),
    *((strong, weak, _FINNISH) for strong, weak in _FINNISH_WEAKENED),
    # Latvian
    ("s", "", "a am u i ais o iem us os"),
    ("is", "", "a im i iem"),
    ("us", "", "us um u"),
    ("a", "", "as ai u am o"),
    ("e", "", "es ei i em"),
    # Lithuanian
    ("as", "", "o ui a e ai uje u us"),
    ("is", "", "io iui i y e ie iu"),
    ("ys", "", "io iui i y iu"),
    ("us", "", "aus ui u umi au"),
    ("a", "", "os ai a oje"),
    ("e", "", "es ei e eje"),
    # Polish and Czech
    ("*", "*", "a owi ovi em u ie e y i ow ami iem ovou ove"),
    ("*", "*", "owa owej owna ownej ova ovej uv ovo ovu ovym ovych"),
    ("el", "l", "a u em ovi uv ova ovo ovy ovu ove ovou"),
    ("a", "", "ina ino inu iny ine inou inych"),
    ("th", "t", "y u i a em owi"),
    ("ek", "k", "a owi ovi iem em u ow uv ova ovo ovy ovu ove ovou"),
    ("ec", "c", "a owi ovi em u e i uv ova ovo ovy ovu ove ovou"),
    ("a", "", "y i e ie om ach ou u o ami ej"),
    ("ka", "c", "e"),
    ("ga", "dz", "e"),
    ("ga", "z", "e"),
    ("ra", "rz", "e"),
    ("ska", "sk", "iej ou e"),
    ("cka", "ck", "iej ou e"),
    ("ski", "sk", "iego iemu im ich imi"),
    ("cki", "ck", "iego iemu im ich imi"),
    ("sky", "sk", "eho emu ym ych"),
    ("y", "", "eho emu ym ho"),
    ("ova", "ov", "e ou u"),
    # Hungarian
    ("+", "+", f"{_HUNGARIAN} val vel t n k"),
    ("*", "*", f"{_HUNGARIAN} at et ot on en"),
    *((letter, letter, f"{letter}al {letter}el") for letter in "bcdfgklmnprstz"),
    # German, English (a family), Dutch, the North
    ("*", "*", "s es ens er ar"),
    ("+", "+", "s ns"),
    # Icelandic
    ("ur", "", "i ar s um"),
    ("i", "", "a as"),
)

NAMES_IN_THE_PLURAL = (("*", "*", "ek ok ak ekkel ekkal okkal okat eket eknel eknal"), ("+", "+", "ek eket ekkel"))
"""Several who bear a name (Hungarian): a family, or another word altogether, as `Ragnarok` is."""

SHORT_NAMES_INFLECTED = (
    ("+", "+", _ESTONIAN),
    ("*", "*i", _ESTONIAN),
    ("*", "*", "s"),
    ("+", "+", "s"),
    ("a", "", "i y ie"),
)
"""Rows for names of two and three letters, of which the other forms are too often words."""

CYRILLIC_INFLECTED: tuple[tuple[str, str, str], ...] = (
    ("*", "*", "a u om em e i oi oiu im ih imi am ami ah ov ia iu"),
    ("ia", "", "i iu ei ii ia e"),
    ("a", "", "i e u oi oiu ei eiu ami am ih imi ini in ina ino inu inoi inogo"),
    ("ii", "", "ogo omu im om aia oi uiu ih imi ia iu em i ei"),
    ("i", "", "ia iu em e ogo omu im"),
    ("ski", "sk", "oi oiu uiu aia ih imi"),
    ("e", "", "= a u om e i"),
    ("o", "", "a u om"),
    ("+", "+", "ia iu"),
)
"""Russian, in the Latin letters of `scripts_table`: the declensions of names, adjectives and short names."""

GREEK_INFLECTED: tuple[tuple[str, str, str], ...] = (
    ("os", "", "u o e i us on"),
    ("as", "", "a"),
    ("is", "", "i"),
    ("us", "", "u"),
    ("i", "", "is"),
    ("a", "", "as"),
    ("u", "", "us"),
)
