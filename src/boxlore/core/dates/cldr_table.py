"""Months and days of the week: Unicode CLDR 49, made by tests/core/dates/make_cldr.py."""

MONTHS: dict[str, tuple[str, ...]] = {
    "en": ("january|jan", "february|feb", "march|mar", "april|apr", "may", "june|jun", "july|jul", "august|aug", "september|sep", "october|oct", "november|nov", "december|dec"),
    "et": ("jaanuar|jaan", "veebruar|veebr", "märts", "aprill|apr", "mai", "juuni", "juuli", "august|aug", "september|sept", "oktoober|okt", "november|nov", "detsember|dets"),
    "de": ("januar|jan", "februar|feb", "märz|mär", "april|apr", "mai", "juni|jun", "juli|jul", "august|aug", "september|sept|sep", "oktober|okt", "november|nov", "dezember|dez"),
    "fr": ("janvier|janv", "février|févr", "mars", "avril|avr", "mai", "juin", "juillet|juil", "août", "septembre|sept", "octobre|oct", "novembre|nov", "décembre|déc"),
    "es": ("enero|ene", "febrero|feb", "marzo|mar", "abril|abr", "mayo|may", "junio|jun", "julio|jul", "agosto|ago", "septiembre|sept", "octubre|oct", "noviembre|nov", "diciembre|dic"),
    "it": ("gennaio|gen", "febbraio|feb", "marzo|mar", "aprile|apr", "maggio|mag", "giugno|giu", "luglio|lug", "agosto|ago", "settembre|set", "ottobre|ott", "novembre|nov", "dicembre|dic"),
    "pt": ("janeiro|jan", "fevereiro|fev", "março|mar", "abril|abr", "maio|mai", "junho|jun", "julho|jul", "agosto|ago", "setembro|set", "outubro|out", "novembro|nov", "dezembro|dez"),
    "nl": ("januari|jan", "februari|feb", "maart|mrt", "april|apr", "mei", "juni|jun", "juli|jul", "augustus|aug", "september|sep", "oktober|okt", "november|nov", "december|dec"),
    "da": ("januar|jan", "februar|feb", "marts|mar", "april|apr", "maj", "juni|jun", "juli|jul", "august|aug", "september|sep", "oktober|okt", "november|nov", "december|dec"),
    "sv": ("januari|jan", "februari|feb", "mars", "april|apr", "maj", "juni", "juli", "augusti|aug", "september|sep", "oktober|okt", "november|nov", "december|dec"),
    "nb": ("januar|jan", "februar|feb", "mars|mar", "april|apr", "mai", "juni|jun", "juli|jul", "august|aug", "september|sep", "oktober|okt", "november|nov", "desember|des"),
    "fi": ("tammikuuta|tammi|tammikuu", "helmikuuta|helmi|helmikuu", "maaliskuuta|maalis|maaliskuu", "huhtikuuta|huhti|huhtikuu", "toukokuuta|touko|toukokuu", "kesäkuuta|kesä|kesäkuu", "heinäkuuta|heinä|heinäkuu", "elokuuta|elo|elokuu", "syyskuuta|syys|syyskuu", "lokakuuta|loka|lokakuu", "marraskuuta|marras|marraskuu", "joulukuuta|joulu|joulukuu"),
    "ru": ("января|янв|январь", "февраля|февр|февраль", "марта|мар|март", "апреля|апр|апрель", "мая|май", "июня|июн|июнь", "июля|июл|июль", "августа|авг|август", "сентября|сент|сентябрь", "октября|окт|октябрь", "ноября|нояб|ноябрь", "декабря|дек|декабрь"),
    "pl": ("stycznia|sty|styczeń", "lutego|lut|luty", "marca|mar|marzec", "kwietnia|kwi|kwiecień", "maja|maj", "czerwca|cze|czerwiec", "lipca|lip|lipiec", "sierpnia|sie|sierpień", "września|wrz|wrzesień", "października|paź|październik", "listopada|lis|listopad", "grudnia|gru|grudzień"),
    "lv": ("janvāris|janv", "februāris|febr", "marts", "aprīlis|apr", "maijs", "jūnijs|jūn", "jūlijs|jūl", "augusts|aug", "septembris|sept", "oktobris|okt", "novembris|nov", "decembris|dec"),
    "lt": ("sausio|saus|sausis", "vasario|vas|vasaris", "kovo|kov|kovas", "balandžio|bal|balandis", "gegužės|geg|gegužė", "birželio|birž|birželis", "liepos|liep|liepa", "rugpjūčio|rugp|rugpjūtis", "rugsėjo|rugs|rugsėjis", "spalio|spal|spalis", "lapkričio|lapkr|lapkritis", "gruodžio|gruod|gruodis"),
    "cs": ("ledna|led|leden", "února|úno|únor", "března|bře|březen", "dubna|dub|duben", "května|kvě|květen", "června|čvn|červen", "července|čvc|červenec", "srpna|srp|srpen", "září|zář", "října|říj|říjen", "listopadu|lis|listopad", "prosince|pro|prosinec"),
    "hu": ("január|jan", "február|febr", "március|márc", "április|ápr", "május|máj", "június|jún", "július|júl", "augusztus|aug", "szeptember|szept", "október|okt", "november|nov", "december|dec"),
    "mi": ("hānuere|hān", "pēpuere|pēp", "māehe|māe", "āperira|āpe", "mei", "hune|hun", "hūrae|hūr", "ākuhata|āku", "hepetema|hep", "oketopa|oke", "noema|noe", "tīhema|tīh"),
}  # fmt: skip
"""January to December, each with its forms."""

WEEKDAYS: dict[str, tuple[str, ...]] = {
    "en": ("monday|mon", "tuesday|tue", "wednesday|wed", "thursday|thu", "friday|fri", "saturday|sat", "sunday|sun"),
    "et": ("esmaspäev|e", "teisipäev|t", "kolmapäev|k", "neljapäev|n", "reede|r", "laupäev|l", "pühapäev|p"),
    "de": ("montag|mo", "dienstag|di", "mittwoch|mi", "donnerstag|do", "freitag|fr", "samstag|sa", "sonntag|so"),
    "fr": ("lundi|lun", "mardi|mar", "mercredi|mer", "jeudi|jeu", "vendredi|ven", "samedi|sam", "dimanche|dim"),
    "es": ("lunes|lun", "martes|mar", "miércoles|mié", "jueves|jue", "viernes|vie", "sábado|sáb", "domingo|dom"),
    "it": ("lunedì|lun", "martedì|mar", "mercoledì|mer", "giovedì|gio", "venerdì|ven", "sabato|sab", "domenica|dom"),
    "pt": ("segunda-feira|seg", "terça-feira|ter", "quarta-feira|qua", "quinta-feira|qui", "sexta-feira|sex", "sábado|sáb", "domingo|dom"),
    "nl": ("maandag|ma", "dinsdag|di", "woensdag|wo", "donderdag|do", "vrijdag|vr", "zaterdag|za", "zondag|zo"),
    "da": ("mandag|man", "tirsdag|tirs", "onsdag|ons", "torsdag|tors", "fredag|fre", "lørdag|lør", "søndag|søn"),
    "sv": ("måndag|mån", "tisdag|tis", "onsdag|ons", "torsdag|tors", "fredag|fre", "lördag|lör", "söndag|sön"),
    "nb": ("mandag|man", "tirsdag|tir", "onsdag|ons", "torsdag|tor", "fredag|fre", "lørdag|lør", "søndag|søn"),
    "fi": ("maanantaina|ma|maanantai", "tiistaina|ti|tiistai", "keskiviikkona|ke|keskiviikko", "torstaina|to|torstai", "perjantaina|pe|perjantai", "lauantaina|la|lauantai", "sunnuntaina|su|sunnuntai"),
    "ru": ("понедельник|пн", "вторник|вт", "среда|ср", "четверг|чт", "пятница|пт", "суббота|сб", "воскресенье|вс"),
    "pl": ("poniedziałek|pon", "wtorek|wt", "środa|śr", "czwartek|czw", "piątek|pt", "sobota|sob", "niedziela|niedz"),
    "lv": ("pirmdiena|pirmd", "otrdiena|otrd", "trešdiena|trešd", "ceturtdiena|ceturtd", "piektdiena|piektd", "sestdiena|sestd", "svētdiena|svētd"),
    "lt": ("pirmadienis|pr", "antradienis|an", "trečiadienis|tr", "ketvirtadienis|kt", "penktadienis|pn", "šeštadienis|št", "sekmadienis|sk"),
    "cs": ("pondělí|po", "úterý|út", "středa|st", "čtvrtek|čt", "pátek|pá", "sobota|so", "neděle|ne"),
    "hu": ("hétfő|h", "kedd|k", "szerda|sze", "csütörtök|cs", "péntek|p", "szombat|szo", "vasárnap|v"),
    "mi": ("mane|man", "tūrei|tūr", "wenerei|wen", "tāite|tāi", "paraire|par", "rāhoroi|rāh", "rātapu|rāt"),
}  # fmt: skip
"""Monday to Sunday."""
