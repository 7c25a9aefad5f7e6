"""A phrase in any of the languages reads as its translation does; each in the order that a native would use.

Phrases are everyday usage (common practice, no source). `{0}` is the English phrase's EDTF.
"""

from tests.every_row import every_row

from boxlore.core.dates.cldr_table import MONTHS, WEEKDAYS
from boxlore.core.dates.holidays import HOLIDAY_NAMES
from boxlore.core.dates.languages.all import LANGUAGES
from boxlore.core.dates.lexicon import (
    FINER,
    PARTS,
    SEASONS,
    SOUGHT_APART,
    UNITS,
)
from boxlore.core.dates.lexicon import KINDS as WORDS
from boxlore.core.dates.phrases import AS_TOLD, PhraseSettings, read
from boxlore.core.dates.school_table import SCHOOL
from boxlore.core.dates.wars_table import SPANS

SAID = (
    "12 June 1938",
    "June 1938",
    "summer 1938",
    "about 1938",
    "perhaps 1938",
    "1936 or 1938",
    "between 1936 and 1938",
    "before 1938",
    "after 1938",
    "since 1938",
    "Christmas 1938",
    "beginning of June 1938",
    "12 June 1938 or 13 June 1938",
)
TOLD: dict[str, tuple[str, ...]] = {
    "et": (
        "12. juuni 1938",
        "juunis 1938",
        "1938. aasta suvel",
        "umbes 1938",
        "võib-olla 1938",
        "1936 või 1938",
        "1936 ja 1938 vahel",
        "enne 1938",
        "pärast 1938",
        "alates 1938",
        "jõulud 1938",
        "juuni algus 1938",
        "12. juunil 1938 või 13. juunil 1938",
    ),
    "de": (
        "12. Juni 1938",
        "im Juni 1938",
        "Sommer 1938",
        "um 1938",
        "vielleicht 1938",
        "1936 oder 1938",
        "zwischen 1936 und 1938",
        "vor 1938",
        "nach 1938",
        "seit 1938",
        "Weihnachten 1938",
        "Anfang Juni 1938",
        "am 12. Juni 1938 oder am 13. Juni 1938",
    ),
    "fr": (
        "le 12 juin 1938",
        "en juin 1938",
        "été 1938",
        "vers 1938",
        "peut-être 1938",
        "1936 ou 1938",
        "entre 1936 et 1938",
        "avant 1938",
        "après 1938",
        "depuis 1938",
        "Noël 1938",
        "début juin 1938",
        "le 12 juin 1938 ou le 13 juin 1938",
    ),
    "es": (
        "12 de junio de 1938",
        "junio de 1938",
        "verano de 1938",
        "hacia 1938",
        "quizás 1938",
        "1936 o 1938",
        "entre 1936 y 1938",
        "antes de 1938",
        "después de 1938",
        "desde 1938",
        "Navidad de 1938",
        "principios de junio de 1938",
        "12 de junio de 1938 o 13 de junio de 1938",
    ),
    "it": (
        "12 giugno 1938",
        "giugno 1938",
        "estate 1938",
        "verso il 1938",
        "forse 1938",
        "1936 o 1938",
        "tra il 1936 e il 1938",
        "prima del 1938",
        "dopo il 1938",
        "a partire dal 1938",
        "Natale 1938",
        "inizio giugno 1938",
        "il 12 giugno 1938 o il 13 giugno 1938",
    ),
    "pt": (
        "12 de junho de 1938",
        "junho de 1938",
        "verão de 1938",
        "cerca de 1938",
        "talvez 1938",
        "1936 ou 1938",
        "entre 1936 e 1938",
        "antes de 1938",
        "depois de 1938",
        "desde 1938",
        "Natal de 1938",
        "início de junho de 1938",
        "12 de junho de 1938 ou 13 de junho de 1938",
    ),
    "nl": (
        "12 juni 1938",
        "juni 1938",
        "zomer 1938",
        "omstreeks 1938",
        "misschien 1938",
        "1936 of 1938",
        "tussen 1936 en 1938",
        "voor 1938",
        "ná 1938",
        "sinds 1938",
        "Kerstmis 1938",
        "begin juni 1938",
        "12 juni 1938 of 13 juni 1938",
    ),
    "da": (
        "12. juni 1938",
        "juni 1938",
        "sommeren 1938",
        "omkring 1938",
        "måske 1938",
        "1936 eller 1938",
        "mellem 1936 og 1938",
        "før 1938",
        "efter 1938",
        "siden 1938",
        "julen 1938",
        "begyndelsen af juni 1938",
        "12. juni 1938 eller 13. juni 1938",
    ),
    "sv": (
        "den 12 juni 1938",
        "juni 1938",
        "sommaren 1938",
        "omkring 1938",
        "kanske 1938",
        "1936 eller 1938",
        "mellan 1936 och 1938",
        "före 1938",
        "efter 1938",
        "sedan 1938",
        "julen 1938",
        "början av juni 1938",
        "den 12 juni 1938 eller den 13 juni 1938",
    ),
    "nb": (
        "12. juni 1938",
        "juni 1938",
        "sommeren 1938",
        "omkring 1938",
        "kanskje 1938",
        "1936 eller 1938",
        "mellom 1936 og 1938",
        "før 1938",
        "etter 1938",
        "siden 1938",
        "julen 1938",
        "begynnelsen av juni 1938",
        "12. juni 1938 eller 13. juni 1938",
    ),
    "fi": (
        "12. kesäkuuta 1938",
        "kesäkuussa 1938",
        "kesällä 1938",
        "noin 1938",
        "ehkä 1938",
        "1936 tai 1938",
        "välillä 1936 ja 1938",
        "ennen vuotta 1938",
        "vuoden 1938 jälkeen",
        "vuodesta 1938 alkaen",
        "jouluna 1938",
        "kesäkuun alussa 1938",
        "12. kesäkuuta 1938 tai 13. kesäkuuta 1938",
    ),
    "ru": (
        "12 июня 1938 г.",
        "июнь 1938 года",
        "летом 1938 года",
        "около 1938",
        "возможно 1938",
        "1936 или 1938",
        "между 1936 и 1938",
        "раньше 1938",
        "после 1938",
        "начиная с 1938",
        "",
        "начало июня 1938",
        "12 июня 1938 или 13 июня 1938",
    ),
    "pl": (
        "12 czerwca 1938",
        "czerwiec 1938",
        "latem 1938 roku",
        "około 1938",
        "może 1938",
        "1936 lub 1938",
        "między 1936 a 1938",
        "przed 1938",
        "po 1938",
        "począwszy od 1938",
        "Boże Narodzenie 1938",
        "początek czerwca 1938",
        "12 czerwca 1938 lub 13 czerwca 1938",
    ),
    "lv": (
        "1938. gada 12. jūnijs",
        "1938. gada jūnijs",
        "1938. gada vasara",
        "ap 1938",
        "varbūt 1938",
        "1936 vai 1938",
        "starp 1936 un 1938",
        "pirms 1938",
        "pēc 1938",
        "kopš 1938",
        "Ziemassvētki 1938",
        "1938. gada jūnija sākums",
        "12. jūnijs 1938 vai 13. jūnijs 1938",
    ),
    "lt": (
        "1938 m. birželio 12 d.",
        "1938 m. birželis",
        "1938 metų vasara",
        "apie 1938",
        "galbūt 1938",
        "1936 arba 1938",
        "tarp 1936 ir 1938",
        "prieš 1938 metus",
        "po 1938",
        "",
        "Kalėdos 1938",
        "1938 m. birželio pradžia",
        "1938 m. birželio 12 d. arba 1938 m. birželio 13 d.",
    ),
    "cs": (
        "12. června 1938",
        "červen 1938",
        "léto 1938",
        "kolem roku 1938",
        "možná 1938",
        "1936 nebo 1938",
        "mezi 1936 a 1938",
        "před rokem 1938",
        "po roce 1938",
        "počínaje 1938",
        "Vánoce 1938",
        "začátek června 1938",
        "12. června 1938 nebo 13. června 1938",
    ),
    "hu": (
        "1938. június 12-én",
        "1938 júniusában",
        "1938 nyara",
        "1938 körül",
        "talán 1938",
        "1936 vagy 1938",
        "1936 és 1938 között",
        "1938 előtt",
        "1938 után",
        "1938 óta",
        "1938 karácsonyán",
        "1938. június elején",
        "1938. június 12. vagy 1938. június 13.",
    ),
    "mi": (
        "12 Hune 1938",
        "Hune 1938",
        "raumati 1938",
        "tata ki te tau 1938",
        "1938 pea",
        "1936 rānei 1938",
        "i waenganui i 1936 me te 1938",
        "i mua i te tau 1938",
        "i muri i te tau 1938",
        "mai i te tau 1938",
        "Kirihimete 1938",
        "te tīmatanga o Hune 1938",
        "12 Hune 1938 rānei 13 Hune 1938",
    ),
}
"""In the order of SAID; empty where the language says it as no other thing (пасха, nuo), which is asked."""

TWELFTH_AND_TWENTY_FIRST = {
    "en": ("the twelfth of June 1938", "the twenty-first of June 1938"),
    "et": ("kaheteistkümnes juuni 1938", "kahekümne esimene juuni 1938"),
    "de": ("am zwölften Juni 1938", "am einundzwanzigsten Juni 1938"),
    "fr": ("le douze juin 1938", "le vingt et un juin 1938"),
    "es": ("doce de junio de 1938", "veintiuno de junio de 1938"),
    "it": ("dodici giugno 1938", "ventuno giugno 1938"),
    "pt": ("doze de junho de 1938", "vinte e um de junho de 1938"),
    "nl": ("twaalfde juni 1938", "eenentwintigste juni 1938"),
    "da": ("den tolvte juni 1938", "enogtyvende juni 1938"),
    "sv": ("den tolfte juni 1938", "tjugoförsta juni 1938"),
    "nb": ("den tolvte juni 1938", "tjueførste juni 1938"),
    "fi": ("kahdestoista kesäkuuta 1938", "kahdeskymmenesensimmäinen kesäkuuta 1938"),
    "ru": ("двенадцатое июня 1938 года", "двадцать первое июня 1938 года"),
    "pl": ("dwunastego czerwca 1938", "dwudziestego pierwszego czerwca 1938"),
    "lv": ("divpadsmitais jūnijs 1938", "divdesmit pirmais jūnijs 1938"),
    "lt": ("birželio dvylikta 1938", "birželio dvidešimt pirma 1938"),
    "cs": ("dvanáctého června 1938", "dvacátého prvního června 1938"),
    "hu": ("1938 június tizenkettedikén", "1938 június huszonegyedikén"),
    "mi": ("tekau mā rua Hune 1938", ""),
}
"""The 12th and the 21st of June in words, as dates are said (everyday usage; Māori has no form of 21 in its row)."""
YEARS = {
    "de": "neunzehnhundertachtunddreißig", "et": "tuhat üheksasada kolmkümmend kaheksa",
    "sv": "nittonhundratrettioåtta",
    "fr": "mil neuf cent trente-huit", "es": "mil novecientos treinta y ocho", "it": "millenovecentotrentotto",
    "pl": "tysiąc dziewięćset trzydzieści osiem", "cs": "devatenáct set třicet osm",
    "da": "nittenhundrede otteogtredive",
    "ru": "тысяча девятьсот тридцать восьмого года", "lv": "tūkstoš deviņi simti trīsdesmit astotais gads",
    "lt": "tūkstantis devyni šimtai trisdešimt aštunti metai", "nl": "negentienhonderdachtendertig",
    "fi": "tuhatyhdeksänsataakolmekymmentäkahdeksan", "pt": "mil novecentos e trinta e oito",
    "nb": "nittenhundreogtrettiåtte", "hu": "ezerkilencszázharmincnyolc",
}  # fmt: skip
"""1938 in words (everyday usage)."""
IN_WORDS = [
    (words, f"1938-06-{day}")
    for row in TWELFTH_AND_TWENTY_FIRST.values()
    for words, day in zip(row, ("12", "21"), strict=True)
    if words
] + [(words, "1938") for words in YEARS.values()]


@every_row(("words", "edtf"), IN_WORDS)
def test_days_and_years_in_words(words: str, edtf: str) -> None:
    reading = read(words)
    assert (reading.edtf and reading.edtf.text, reading.ask) == (edtf, None)


def test_a_word_that_is_another_number_elsewhere_is_that_of_its_own_language() -> None:
    """`tres` is 3 in Spanish and 60 in Danish."""
    reading = read("tres días antes de Navidad de 1938")
    assert reading.edtf and (reading.edtf.text, reading.ask) == ("1938-12-22", None)


SOUTH = PhraseSettings(hemisphere="south")
PAIRS = [(code, english, told) for code, row in TOLD.items() for english, told in zip(SAID, row, strict=True) if told]


@every_row(("code", "english", "told"), PAIRS)
def test_a_phrase_reads_as_its_translation_does(code: str, english: str, told: str) -> None:
    meant = read(english, SOUTH if code == "mi" else AS_TOLD)  # Māori seasons are southern wherever they are read
    assert meant.edtf is not None
    reading = read(told)
    asked = meant.ask and meant.ask.replace(english, told)
    assert (reading.edtf and reading.edtf.text, reading.ask) == (meant.edtf.text, asked)
    assert asked is None or code == "mi"  # only a summer of the south is asked about


def test_every_language_is_told() -> None:
    assert {language.code for language in LANGUAGES} == {"en", *TOLD} == set(MONTHS) == set(WEEKDAYS)


@every_row("language", LANGUAGES)
def test_rows_are_of_kinds_and_feasts_that_there_are(language: object) -> None:
    kinds = {*WORDS, *SEASONS, *UNITS, *PARTS, *FINER, *SOUGHT_APART}
    assert set(language.words) <= kinds  # type: ignore[attr-defined]
    assert {*language.feasts, *language.feast_days} <= HOLIDAY_NAMES  # type: ignore[attr-defined]


ROWS = [
    (f"{language.code} {name} {key}", words)
    for language in LANGUAGES
    for name in (
        *("words", "month_names", "numbers", "ordinals", "number_endings", "feasts", "feast_days"),
        *("decades", "centuries", "fractions", "case_endings"),
    )
    for key, words in getattr(language, name).items()
]
ROWS += [(f"war {names[:20]}", names) for names, _ in SPANS]
ROWS += [(f"{code} {feast}", words) for feast, by_language in SCHOOL.items() for code, words in by_language.items()]


@every_row(("row", "words"), ROWS)
def test_a_row_holds_no_word_twice_and_none_that_is_empty(row: str, words: str) -> None:
    """A war that stands twice in its row would be two wars, and be asked about (our own contract)."""
    forms = words.split("|")
    assert len(set(forms)) == len(forms) and "" not in forms, row


@every_row("language", LANGUAGES)
def test_every_month_and_day_of_the_week_in_every_form_of_cldr(language: object) -> None:
    """A month of three letters or more is that month, or asked about (Unicode CLDR)."""
    code = language.code  # type: ignore[attr-defined]
    for number, forms in enumerate(MONTHS[code], 1):
        form = forms.split("|")[0]
        reading = read(f"{form} 1938")
        assert f"1938-{number:02d}" in {reading.edtf and reading.edtf.text, *reading.alternatives}, form
    for number, forms in enumerate(WEEKDAYS[code]):
        reading = read(f"{forms.split('|')[0]} {13 + number}.06.1938")  # 13 June 1938 was a Monday
        assert reading.edtf and (reading.edtf.text, reading.ask) == (f"1938-06-{13 + number}", None), forms


MIXED = [
    ("Juni oder July 1938", "[1938-06,1938-07]"),
    ("suvel 1938 or 1939", "[1938-22,1939-22]"),
    ("about Juni 1938", "1938-06~"),
    ("maybe suvi 1938", "1938-22?"),
    ("zwischen June and August 1938", "[1938-06..1938-08]"),
    ("fevrier 1938", "1938-02"),
    ("Maerz 1938", "1938-03"),
    ("Fruehling 1938", "1938-21"),
    ("juulil 1938", "1938-07"),
    ("VÕIB-OLLA 1938", "1938?"),
]


@every_row(("words", "edtf"), MIXED)
def test_languages_may_mix_and_accents_may_lack(words: str, edtf: str) -> None:
    reading = read(words)
    assert (reading.edtf and reading.edtf.text, reading.ask) == (edtf, None)


def test_words_that_are_passed_over_belong_to_a_language_that_is_spoken() -> None:
    """“as” is passed over in Portuguese, and no word of “as 1938 early” is Portuguese."""
    assert read("as early June 1938").edtf is None
