"""How names change in sentences: the endings of languages, by the ending of the name as it is told.

Each row: what the name ends in (`*` a consonant, `+` a vowel, letters themselves), what stands in its place, and the
endings that may follow (`=` is none). Letters are folded. Every row holds for every name in Latin letters: the
language of a name and that of the words about it need not be the same. Estonian: Eesti keele käsiraamat, morphology of
names (short names, weakening); Finnish: Iso suomen kielioppi, nominal types; Latvian, Lithuanian, Polish and Czech:
declensions of the school grammars; Hungarian: the cases of the school grammars, and né; German: genitive in s, es, ens. From memory of these.
"""

_ESTONIAN = "= s st sse l le lt ks ni na ta ga d de t te dele dega lik ke kene kest kesele"
_ESTONIAN_WEAKENED = (
    *((f"{strong}", f"{weak}{vowel}")
      for strong, weak in (("pp", "p"), ("tt", "t"), ("kk", "k"), ("nd", "nn"), ("ld", "ll"), ("rd", "rr"), ("mb", "mm"),
                           ("sk", "s"), ("ht", "h"), ("lg", "l"), ("ud", "u"), ("el", "l"), ("er", "r"),
                           ("ppel", "pl"), ("ttel", "tl"), ("kkel", "kl"), ("ntel", "ndl"), ("k", "g"))
      for vowel in "aeiu"),
    *((strong, f"{weak}{vowel}") for strong, weak in (("t", "d"), ("p", "b")) for vowel in "aiu"),
    ("rg", "re"), ("rg", "ru"), ("as", "a"), ("es", "e"), ("ne", "se"), ("vaher", "vahtra"), ("magi", "mae"), ("jogi", "joe"),
)  # fmt: skip
"""Weakening, and stems that lose or change their end: `Lepp` → `Lepa`, `Teder` → `Tedre`, `Pihlakas` → `Pihlaka`."""

_SLAVIC = (
    "a owi ovi em u ie e y i ow ami iem om um ech ach ovou ove owa owej owe owy owna ownej owny owne owie "
    "ova ovej ovy ovu ovo ovic ovych ovym ovymi uv"
)
"""Cases, families and wives in Polish and Czech."""
_SLAVIC_SHORTENED = (
    ("el", "l"), ("iel", "l"), ("ek", "k"), ("ec", "c"), ("iec", "c"), ("ok", "k"), ("er", "r"), ("en", "n"),
    ("ien", "n"), ("ien", "ni"), ("ab", "ebi"), ("th", "t"), ("a", ""), ("o", ""),
)  # fmt: skip
"""A vowel that goes where an ending comes: `Wróbel` → `Wróbl-owa`."""

_FINNISH = "t n na ssa sta lla lta lle ksi tta a en in an on un ja ia ien kin kaan han ko"

_FINNISH_PLURAL = "den lla lta lle ssa sta hin na ksi tta"
"""Behind the vowel i of the plural."""

_FINNISH_WEAKENED = (
    *((f"{strong}{vowel}", f"{weak}{vowel}")
      for strong, weak in (("nk", "ng"), ("nt", "nn"), ("mp", "mm"), ("lt", "ll"), ("rt", "rr"), ("ht", "hd"))
      for vowel in "aeiou"),
    *((f"t{vowel}", f"d{vowel}") for vowel in "aiou"),
    ("lahti", "lahde"), ("susi", "sude"), ("vesi", "vede"), ("uusi", "uude"), ("maki", "mae"), ("joki", "joe"), ("lampi", "lamme"),
    *((f"{nature}i", f"{nature}e") for nature in "niem jarv saar kosk kiv salm suom numm tamm lehd virr".split()),
    ("ngas", "nkaa"), ("mmas", "mpaa"), ("nnas", "ntaa"), ("llas", "ltaa"), ("rras", "rtaa"), ("rvas", "rpaa"),
    ("as", "aa"), ("kas", "kkaa"), ("is", "ii"), ("es", "ee"),
)  # fmt: skip
"""Gradation, and stems of the types lahti, niemi, kangas: `Lehtokangas` → `Lehtokankaan`, `Ranta` → `Rannan`."""

_HUNGARIAN = (
    "nak nek ban ben ba be ra re tol rol hoz hez ert ig ne nal nel nenak nenek nenal nenel nenet neval nevel neek nehez"
)

_GERMAN_ADJECTIVE = "sche scher sches schen schem ische ischer isches ischen ischem"
"""What makes an adjective of a family: `das Zangemeistersche Haus`."""

NAMES_INFLECTED: tuple[tuple[str, str, str], ...] = (
    # Estonian
    ("+", "+", _ESTONIAN),
    ("*", "*i", _ESTONIAN),
    ("*", "*a", _ESTONIAN),
    ("*", "*e", _ESTONIAN),
    ("*", "*u", _ESTONIAN),
    ("s", "se", _ESTONIAN),
    ("s", "kse", _ESTONIAN),
    ("s", "kse", _FINNISH),
    ("magi", "mage", "de dele dega del desse dest deni"),
    ("jogi", "joge", "de dele dega del desse dest deni"),
    ("ne", "s", "te tele tega test"),
    *((strong, weak, _ESTONIAN) for strong, weak in _ESTONIAN_WEAKENED),
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
    ("cis", "c", "a am u i iem"),
    ("dis", "z", "a am u i iem"),
    ("tis", "s", "a am u i iem"),
    # Lithuanian
    ("as", "", "o ui a e ai uje u us ams"),
    ("tis", "c", "io iui iai iu iams"),
    ("dis", "dz", "io iui iai iu iams"),
    ("is", "", "io iui i y e ie iu"),
    ("ys", "", "io iui i y iu"),
    ("us", "", "aus ui u umi au"),
    ("a", "", "os ai a oje"),
    ("e", "", "es ei e eje"),
    # Polish and Czech
    ("*", "*", _SLAVIC),
    *((whole, shortened, _SLAVIC) for whole, shortened in _SLAVIC_SHORTENED),
    ("ova", "", "a y u o ou um uv ovi ovic ovych ovym ovymi"),
    ("a", "", "ina ino inu iny ine inou inych ej ianka ianki"),
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
    ("*", "*", _GERMAN_ADJECTIVE),
    ("+", "+", _GERMAN_ADJECTIVE),
    ("+", "+", "s ns"),
    ("y", "i", "es"),
    # Icelandic
    ("ur", "", "= i ar s um"),
    ("bjorn", "b", "jarnar irni"),
    ("son", "s", "yni ynir onum"),
    ("i", "", "a as"),
)

Rows = tuple[tuple[str, str, str], ...]
IN_S: Rows = (("*", "*", "s"), ("+", "+", "s"))
IN_ESTONIAN: Rows = (("+", "+", _ESTONIAN), ("*", "*i", _ESTONIAN), ("ke", "kese", _ESTONIAN), ("ne", "se", _ESTONIAN))
IN_FINNISH: Rows = (("+", "+", _FINNISH), *((f"kk{vowel}", f"k{vowel}", _FINNISH) for vowel in "aou"))
IN_SLAVIC: Rows = (
    ("*", "*", "a owi ovi em u ie i y om uv ovo ova ovy"),
    ("ek", "k", "a owi ovi iem em u om uv ovo ova ovy"),
    ("a", "", "y i e ie ou u o om ach ami ej ina ino iny inu"),
    ("o", "", "a owi ovi em u uv ovo ova"),
)
IN_BALTIC: Rows = (
    ("s", "", "a am u i o ui ai"),
    ("is", "", "im iem io iui iai"),
    ("a", "", "as ai u os"),
    ("e", "", "es ei i"),
)
IN_HUNGARIAN: Rows = (("+", "+", f"{_HUNGARIAN} val vel t"), ("*", "*", f"{_HUNGARIAN} at et ot on"))
"""How fond forms change, by the language of their endings (`fond_names`)."""

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

_FINNISH_LONG = "lla lle lta ssa sta ksi"
_HUNGARIAN_LONG = "nak nek ban ben tol rol hoz hez ert nal nel"
NAMES_OF_THREE = (
    ("*", "*", "a u em owi ovi ie ovo ova ovou ove ovic ovych ovym owie owa owej ow"),
    ("a", "", "u ou o e ie as ai am os"),
    ("s", "", "a am u io iui iu"),
    ("*", "*i", f"n {_FINNISH_LONG}"),
    ("+", "+", f"n {_FINNISH_LONG} {_HUNGARIAN_LONG} val vel"),
    ("*", "*", _HUNGARIAN_LONG),
    *((letter, letter, f"{letter}al {letter}el") for letter in "bcdfgklmnprstz"),
)
"""The plain cases, and families, of names of three letters (Polish, Czech, Baltic, Finnish, Hungarian): `Jana`,
`Janowi`, `Ágival`, `Dubovi`. Only written large are they asked about."""

CYRILLIC_INFLECTED: tuple[tuple[str, str, str], ...] = (
    ("*", "*", "a u om em e i oi oiu im ih imi am ami ah ov ia iu ova ovo ovu ovoi"),
    ("ia", "", "i iu ei ii ia e in ina ino ini inu inoi inogo inih"),
    *(
        (whole, short, "a u om em e i ov ev am ami ah")
        for whole, short in (
            ("el", "l"),
            ("ol", "l"),
            ("ok", "k"),
            ("ek", "k"),
            ("ets", "ts"),
            ("iats", "its"),
            ("en", "n"),
            ("ei", "i"),
        )
    ),
    ("oi", "", "ogo omu im om ie ih imi aia uiu"),
    ("a", "", "i e u oi oiu ei eiu ami am ih imi ini in ina ino inu inoi inogo"),
    ("ii", "", "ogo omu im om aia oi uiu ih imi ia iu em i ei"),
    ("i", "", "ia iu em e ogo omu im"),
    ("ski", "sk", "oi oiu uiu aia ih imi"),
    ("e", "", "= a u om e i"),
    ("o", "", "a u om i ova"),
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
