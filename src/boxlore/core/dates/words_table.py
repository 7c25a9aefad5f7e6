"""The words of dates, by what they mean. A language is added by adding its words to a row.

Common words of eight languages; spellings are everyday usage (common practice, no source).
"""

MONTHS: dict[int, str] = {
    1: "january jan januar jänner janvier enero ene styczeń stycznia gennaio januari jaanuar hānuere kohitātea",
    2: "february feb februar février fevrier febrero luty lutego febbraio februari veebruar pēpuere huitanguru",
    3: "march mar märz maerz mars marzo marzec marca maart märts maehe poutūterangi",
    4: "april apr avril abril abr kwiecień kwietnia aprile aprill āperira paengawhāwhā",
    5: "may mai mayo maj maja maggio mei haratua",
    6: "june jun juni juin junio czerwiec czerwca giugno juuni hune pipiri",
    7: "july jul juli juillet julio lipiec lipca luglio juuli hūrae hōngongoi",
    8: "august aug août aout agosto ago sierpień sierpnia augustus augusti ākuhata hereturikōkā",
    9: "september sept sep septembre septiembre set wrzesień września settembre hepetema mahuru",
    10: "october oct oktober okt octobre octubre październik października ottobre oktoober oketopa",
    11: "november nov novembre noviembre listopad listopada noema whiringa-ā-rangi",
    12: "december dec dezember dez décembre diciembre dic grudzień grudnia dicembre detsember tīhema hakihea",
}

ROMAN_MONTHS = {name: at for at, name in enumerate("i ii iii iv v vi vii viii ix x xi xii".split(), 1)}

WEEKDAYS: dict[int, str] = {
    0: "monday mon montag lundi lunes esmaspäev",
    1: "tuesday tue tues dienstag mardi martes teisipäev",
    2: "wednesday wed mittwoch mercredi miércoles kolmapäev",
    3: "thursday thu thurs donnerstag jeudi jueves neljapäev",
    4: "friday fri freitag vendredi viernes reede",
    5: "saturday sat samstag samedi sábado laupäev",
    6: "sunday sun sonntag dimanche domingo pühapäev",
}

SEASONS: dict[int, str] = {
    21: "spring frühling printemps primavera kevad kevadel wiosna lente vår kōanga",
    22: "summer sommer été verano suvi suvel lato zomer raumati",
    23: "autumn fall herbst automne otoño sügis sügisel jesień herfst höst ngahuru",
    24: "winter hiver invierno talv talvel zima hōtoke",
}

APPROXIMATE = (
    "about around round circa circ ca c abt approximately approx roughly near nearly some say um etwa gegen vers "
    "environ hacia umbes paiku omtrent ungefär około"
)

UNCERTAIN = (
    "probably prob perhaps maybe possibly poss likely presumably vielleicht wohl peut-être quizás vist arvatavasti"
)

ORDINALS = {
    name: at
    for at, name in enumerate(
        "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth "
        "fifteenth sixteenth seventeenth eighteenth nineteenth twentieth twenty-first twenty-second twenty-third "
        "twenty-fourth twenty-fifth twenty-sixth twenty-seventh twenty-eighth twenty-ninth thirtieth thirty-first".split(),
        1,
    )
}

UNITS = {
    name: at
    for at, name in enumerate(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
        "seventeen eighteen nineteen".split()
    )
}

TENS = {name: at * 10 for at, name in enumerate("twenty thirty forty fifty sixty seventy eighty ninety".split(), 2)}

DECADES = {
    "tens": 10, "teens": 10, "twenties": 20, "thirties": 30, "forties": 40, "fifties": 50, "sixties": 60,
    "seventies": 70, "eighties": 80, "nineties": 90,
}  # fmt: skip

UNDATED = frozenset(
    "undated|n.d.|n. d.|nd|s.d.|no date|without date|not dated|unknown|don't know|do not know|ei tea|?".split("|")
)

_FIRST_WAR, _SECOND_WAR = "1914-07/1918-11", "1939-09/1945-09"

WARS: dict[str, tuple[str, ...]] = {
    "war": (_FIRST_WAR, _SECOND_WAR),
    "great war": (_FIRST_WAR,),
    "1 world war": (_FIRST_WAR,),
    "world war 1": (_FIRST_WAR,),
    "world war one": (_FIRST_WAR,),
    "world war i": (_FIRST_WAR,),
    "1914-18 war": (_FIRST_WAR,),
    "2 world war": (_SECOND_WAR,),
    "world war 2": (_SECOND_WAR,),
    "world war two": (_SECOND_WAR,),
    "world war ii": (_SECOND_WAR,),
    "1939-45 war": (_SECOND_WAR,),
    "boer war": ("1899-10/1902-05", "1880-12/1881-03"),
    "south african war": ("1899-10/1902-05",),
    "russo-japanese war": ("1904-02/1905-09",),
    "korean war": ("1950-06/1953-07",),
    "war of independence": ("1918-11/1920-02", "1919-01/1921-07"),
}
"""Wars that families date by, first to last month; where there are several, it is asked which. The war of
independence: Estonian, then Irish. Outbreak and armistice, peace or surrender, from memory. `1 world war` is
“the First World War” after numbers are made digits."""


def by_word(table: dict[int, str]) -> dict[str, int]:
    """The table turned round: word to meaning."""
    return {word: meaning for meaning, words in table.items() for word in words.split()}
