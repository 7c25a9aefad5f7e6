"""Letters of other scripts by the Latin ones that name them, and letters that look like Latin ones.

Two spellings of one name in two scripts are compared by a key: the Latin letters of a plain romanisation, with what
differs between the usual systems levelled. Cyrillic: BGN/PCGN 1947 and ISO 9:1995; Greek: ISO 843 (ELOT 743);
Hebrew and Arabic: the consonants alone, by ISO 259 and ISO 233 (short vowels are not written). All from memory of these
standards. Lookalikes: those of Unicode Technical Standard #39, confusables, that are letters of names, from memory.
"""

CYRILLIC_KEYS = str.maketrans(
    {
        "а": "a", "б": "b", "в": "v", "г": "g", "д": "d", "е": "e", "ж": "z", "з": "z", "и": "i", "і": "i", "к": "k",
        "л": "l", "м": "m", "н": "n", "о": "o", "п": "p", "р": "r", "с": "s", "т": "t", "у": "u", "ф": "f", "х": "h",
        "ц": "ts", "ч": "C", "ш": "s", "щ": "sC", "ъ": "", "ы": "i", "ь": "", "э": "e", "ю": "iu", "я": "ia",
        "є": "ie", "ґ": "g", "ј": "i", "љ": "li", "њ": "ni", "ђ": "d", "ћ": "C", "џ": "dz", "ѣ": "e", "ѳ": "f",
    }
)  # fmt: skip
"""Folded letters: й and ё come as и and е."""

GREEK_PAIRS = (
    ("ου", "u"), ("ει", "i"), ("οι", "i"), ("υι", "i"), ("αι", "e"), ("ευ", "ev"), ("αυ", "av"), ("ηυ", "iv"),
    ("μπ", "b"), ("ντ", "d"), ("γκ", "g"), ("γγ", "ng"), ("γχ", "nh"), ("τζ", "dz"),
)  # fmt: skip
GREEK_KEYS = str.maketrans(
    {
        "α": "a", "β": "v", "γ": "g", "δ": "d", "ε": "e", "ζ": "z", "η": "i", "θ": "t", "ι": "i", "κ": "k", "λ": "l",
        "μ": "m", "ν": "n", "ξ": "ks", "ο": "o", "π": "p", "ρ": "r", "σ": "s", "ς": "s", "τ": "t", "υ": "i", "φ": "f",
        "χ": "h", "ψ": "ps", "ω": "o",
    }
)  # fmt: skip

HEBREW_KEYS = str.maketrans(
    {
        "א": "", "ב": "b", "ג": "g", "ד": "d", "ה": "h", "ו": "", "ז": "z", "ח": "h", "ט": "t", "י": "", "כ": "k",
        "ך": "k", "ל": "l", "מ": "m", "ם": "m", "נ": "n", "ן": "n", "ס": "s", "ע": "", "פ": "f", "ף": "f", "צ": "ts",
        "ץ": "ts", "ק": "k", "ר": "r", "ש": "s", "ת": "t",
    }
)  # fmt: skip
ARABIC_KEYS = str.maketrans(
    {
        "ا": "", "ب": "b", "ت": "t", "ث": "t", "ج": "z", "ح": "h", "خ": "h", "د": "d", "ذ": "d", "ر": "r", "ز": "z",
        "س": "s", "ش": "s", "ص": "s", "ض": "d", "ط": "t", "ظ": "z", "ع": "", "غ": "g", "ف": "f", "ق": "k", "ك": "k",
        "ل": "l", "م": "m", "ن": "n", "ه": "h", "و": "", "ي": "", "ى": "", "ة": "", "ء": "", "ی": "", "ک": "k",
        "پ": "f", "چ": "s", "گ": "g",
    }
)  # fmt: skip
HEBREW_BEFORE, ARABIC_BEFORE = ("", "ו", "ה", "ב", "ל", "מ", "כ", "ש"), ("", "و", "ال", "ب", "ل", "ف", "ك", "وال")
"""What is written together with the word that follows: and, the, in, to, from, as, that."""

GEORGIAN_SPELLED = str.maketrans(
    dict(zip("აბგდევზთიკლმნოპჟრსტუფქღყშჩცძწჭხჯჰ", (
        "a b g d e v z t i k l m n o p zh r s t u p k gh q sh ch ts dz ts ch kh j h").split(), strict=True))
)  # fmt: skip
GEORGIAN_BEHIND = ("", "ი", "მა", "მ", "ს", "ის", "ით", "ად", "ო", "სთან", "სთვის", "ისთვის", "ისგან")
ARMENIAN_SPELLED = str.maketrans(
    dict(zip("աբգդեզէըթժիլխծկհձղճմյնշոչպջռսվտրցւփքօֆև", (
        "a b g d e z e y t zh i l kh ts k h dz gh ch m y n sh o ch p j r s v t r ts v p k o f ev"
    ).split(), strict=True))
)  # fmt: skip
ARMENIAN_BEHIND = ("", "ը", "ն", "ի", "ին", "ից", "ով", "իս", "ս")
"""Georgian: the national system of 2002; Armenian: BGN/PCGN 1981; what names end in besides, from memory of both."""

LATIN_LEVELLED = (
    ("eye", "ee"), ("aye", "ae"), ("iye", "ie"),     ("shch", "sC"), ("tsch", "C"), ("sch", "s"), ("tch", "C"), ("sz", "s"), ("cz", "C"), ("zh", "z"), ("kh", "h"), ("sh", "s"), ("th", "t"),
    ("ph", "f"), ("gh", "g"), ("ck", "k"), ("ch", "C"), ("qu", "kv"), ("x", "ks"), ("q", "k"), ("w", "v"), ("y", "i"),
    ("j", "i"), ("eau", "o"), ("ou", "u"), ("oo", "u"), ("oe", "e"), ("ae", "e"), ("ce", "se"), ("ci", "si"), ("c", "k"),
)  # fmt: skip
"""What is written differently by the usual systems, levelled one after another."""

LATIN_WAYS: tuple[tuple[tuple[str, str], ...], ...] = (
    (("sch", "sh"), ("ch", "kh"), ("z", "ts"), ("ei", "ai"), ("eu", "oi"), ("ie", "i")),
    (("sch", "sh"), ("ch", "kh"), ("z", "ts"), ("eu", "ei"), ("aeu", "ei"), ("ie", "i")),
    (("szcz", "shch"), ("sz", "sh"), ("cz", "tj"), ("rz", "zh"), ("ch", "kh"), ("ci", "ts"), ("c", "ts"), ("tj", "cz"), ("ie", "e")),
    (("ch", "kh"), ("c", "ts")),
    (("c", "ch"),),
    (("y", "u"),),
    (("ge", "dzhe"), ("gi", "dzhi"), ("j", "dzh"), ("ee", "i"), ("ea", "i"), ("igh", "ai"), ("w", "u")),
    (("ch", "sh"), ("gu", "g"), ("oi", "ua"), ("eau", "o"), ("au", "o")),
)  # fmt: skip
"""How languages say their letters, so that Cyrillic writes a name of theirs by its sound: German (`ei` by either
custom), Polish, Czech and the Baltic ones without their signs, Finnish, English, French. From memory of the practical
transcriptions into Russian."""
CYRILLIC_OF_LATIN = str.maketrans("юыяэ", "уоае")
CYRILLIC_OF_LATIN_Y = str.maketrans("юыяэ", "иоае")
"""What Cyrillic writes for ü and y, õ, ä."""

_CYRILLIC, _AS_LATIN = "аеорсухіјѕкмтвнАВЕКМНОРСТУХІЈЅ", "aeopcyxijskmtbhABEKMHOPCTYXIJS"
_OTHERS, _OTHERS_AS_LATIN = "ԁһαεορυνικτχΑΒΕΖΗΙΚΜΝΟΡΤΥΧϲ", "dhaeopuviktxABEZHIKMNOPTYXc"
LOOKALIKES = str.maketrans(_CYRILLIC + _OTHERS, _AS_LATIN + _OTHERS_AS_LATIN)
CYRILLIC_LOOKALIKES = str.maketrans(_AS_LATIN, _CYRILLIC)
