"""Words that say how far a place lies from another, by language (common practice, no source; lengths from memory).

Words of a row are parted by `|`. A number is spoken as the reader of dates knows it (`core.dates.languages`).
"""

LENGTHS: dict[str, float] = {
    "km|kms|kilometres?|kilometers?|kilomètres?|kilómetros?|chilometr[io]|quilômetros?|quilómetros?|kilometrit?|"
    "kilometriä?|kilometr(?:y|ów|a)?|kilometrů?|kilometrai|kilometrų|kilomeetri[t]?|kilometrin|км|километр(?:а|ов)?|кілометр(?:а|ів)?|kilométer(?:re|nyire)?|kilométernél|kílómetr(?:a|ar|um)": 1.0,
    "mi|miles?|meilen?|milles?|millas?|miglia|miglio|milhas?|mil[ye]?|mijl|miili|mailia|миль|миля|мили|mérföld(?:re|nyire)?|míl(?:a|ur|um)": 1.609,
    "versts?|werst|viorsts?|verstes?|versta|versti|versty|wiorst[ay]?|вёрст(?:ы|а|ах)?|верст(?:ы|а|ах)?|versta[a]?|virsta[a]?": 1.067,
    "chains?": 0.0201,
    "furlongs?": 0.2012,
    "yards?|yds?": 0.000914,
    "feet|foot|ft": 0.000305,
    "m|metres?|meters?|mètres?|metros?|metri|metrów|metrit?|м|метр(?:а|ов)?": 0.001,
    "leagues?|lieues?|leguas?|leghe": 4.8,
    "blocks?|doors?|houses?|stops?|stations?|streets?": 1.0,
}
"""A pattern for each unit, and its length in kilometres."""

TIMES: dict[str, float] = {
    "min|mins|minutes?|minuten|minuti|minutos|minutit|minut[ya]?|мин|минут[ы]?|perc(?:re|nyire)?|mínút(?:a|ur|na)": 1
    / 60,
    "h|hrs?|hours?|stunden?|heures?|horas?|or[ae]|tundi?|tuntia?|godzin[ay]?|timmar|timme|timer?|uren|uur|час(?:а|ов)?|órá(?:ra|nyira)|óra|klukkustund(?:ar|ir)?|klukkutím(?:a|ar)": 1.0,
    "days?|tage?|jours?|días?|giorn[io]|dias?|päev[a]?|päivä[nä]?|dni|dzień|dagar|dage?r?|dagen|день|дня|дней": 8.0,
}
"""A pattern for each unit of time, and the hours that one is on the way."""

PACES: dict[str, float] = {
    "walk(?:ing)?|foot|fuß|pied|hike|tramp|fußweg|fussweg|fußmarsch|marche|jalgsi|pieszo|пешком|ходьбы": 5.0,
    "ride|riding|horse|horseback|wagon|buggy|coach|cart|gig|pferd|cheval|trot": 10.0,
    "row|sail(?:ing)?|boat|steamer|ferry|ship": 20.0,
    "drive|driving|car|motor|bus|train|rail|railway|tram|bahn|zug|voiture|auto|rongiga|autoga": 60.0,
}
"""How one goes there, in kilometres an hour; without a word it may be as far as by train."""

ARTICLES = "a|an|good|full|long|short|easy|one's|ein|eine|einen|einer|eines|un|une|una|uno|um|uma|en|et|een"
SMALL_AMOUNTS: dict[str, float] = {
    "half|halbe?n?|halben|demie?|medio|media|mezz[oa]|meia?|pool|puoli|pół|półtora|halv[at]?|halve|пол|полтора": 0.5,
    "quarters?|viertel|quart": 0.25,
    "few|some|ein paar|paar|paari|pari|kilka|quelques|unas|unos|alguns|par|несколько": 4.0,
    "several|mehrere|einige|plusieurs|varios|mitu|useita": 5.0,
    "couple": 2.0,
    "dozen|dutzend|douzaine": 12.0,
}
"""Words of amount that no table of numbers has."""

NUMBERS_INFLECTED: dict[str, float] = {
    "двух": 2, "трёх": 3, "трех": 3, "четырёх": 4, "четырех": 4, "пяти": 5, "шести": 6, "семи": 7, "восьми": 8,
    "девяти": 9, "десяти": 10, "двенадцати": 12, "пятнадцати": 15, "двадцати": 20, "тридцати": 30, "сорока": 40,
    "пятидесяти": 50, "dwóch": 2, "trzech": 3, "czterech": 4, "pięciu": 5, "sześciu": 6, "dziesięciu": 10,
    "kahe": 2, "kolme": 3, "nelja": 4, "viie": 5, "kuue": 6, "kümne": 10, "kahden": 2, "kolmen": 3, "viiden": 5,
    "kymmenen": 10, "tíu": 10, "tveggja": 2, "þriggja": 3, "fjögurra": 4,
}  # fmt: skip
"""Spoken numbers in the forms that stand with a distance: Russian, Polish, Estonian, Finnish."""

ABOUT = (
    "about|abt|some|approx(?:imately)?|roughly|around|perhaps|maybe|circa|ca|c|nearly|almost|over|within|only|just|under|"
    "more than|less than|at least|up to|barely|a good|good|etwa|ungefähr|rund|knapp|gut|fast|environ|à peu près|près de|"
    "presque|à|a unos|unos|unas|a|circa|umbes|noin|około|ok|jakieś|cirka|omkring|ongeveer|op|приблизительно|примерно|"
    "около|в|apie|apmēram|asi"
)
"""What may stand before an amount."""

FROM = "from|of|off|outside|beyond|past|above|below|von|vom|de|du|des|d['’]|da|do|od|van|från|fra|av|af|от|nuo|no|frá|fyrir (?:norðan|sunnan|austan|vestan|utan|ofan)"
"""The word between the distance and the place that it is reckoned from."""

DIRECTIONS = (
    "(?:north|south|east|west|nor|sou)(?:[-\\s]?(?:north|south|east|west|by))*(?:ern|wards?|erly)?|"
    "[NSEW]\\.?\\s?(?:[NSEW]\\.?){0,2}|(?:nord|süd|sued|ost|west|nordost|nordwest|südost|südwest)(?:lich|östlich|westlich|en)?|"
    "östlich|westlich|nord|sud|est|ouest|norte|sur|este|oeste|ovest|sul|na (?:północ|południe|wschód|zachód)|"
    "к (?:северу|югу|востоку|западу)|севернее|южнее|восточнее|западнее|norr|söder|öster|väster|inland|upriver|downriver|"
    "upstream|downstream|uphill|downhill"
)
"""A point of the compass, or a way along a river."""

WAY = "out|over|up|down|along|round|back"
"""The way one went to it."""

NEAR = (
    "near to|near|nr|nearby|close to|close by|not far from|not far out of|not far off|just out of|just outside of|"
    "just outside|outside of|outside|next to|adjacent to|in the (?:neighbourhood|neighborhood|vicinity|region|area) of|"
    "in the hills (?:above|behind)|in the country round|on the (?:outskirts|edge|road|way|track) (?:of|to|from)|"
    "somewhere around|somewhere about|(?:up|down|along|over|across|round) the \\w+ from|a stone['’]s throw from|a (?:short|little|long) (?:way|walk|drive|ride|distance) (?:from|out of|off)|"
    "some (?:way|distance) (?:from|out of)|"
    f"(?:{WAY}) (?:by|near|past|towards?)|"
    "bei|(?-i:b)(?=\\.)|nahe|unweit von|unweit|außerhalb von|ausserhalb von|in der nähe von|in der nähe|nähe|umgebung von|"
    "près de|près d['’]|près du|proche de|non loin de|pas loin de|aux environs de|aux alentours de|à côté de|à proximité de|"
    "cerca de|no lejos de|en las afueras de|vicino a|nei pressi di|presso|non lontano da|perto de|nos arredores de|"
    "naby|kod|pokraj|blizu|pored|nedaleko od|u blizini|pie|prie|lähellä|"
    "koło|obok|w pobliżu|niedaleko od|niedaleko|nieopodal|blisko|pod|w okolicach|w okolicy|"
    "около|возле|близ|вблизи|недалеко от|неподалёку от|неподалеку от|рядом с|под|"
    "nära|i närheten av|utanför|i nærheden af|nær|i nærheten av|utenfor|udenfor|ved|nabij|dicht bij|in de buurt van|"
    "vlak bij|buiten|blízko|nedaleko|poblíž|netoli|šalia|netālu no|nem messze|közel|nálægt|skammt frá|rétt hjá|hjá|við|í grennd við|nærri"
)
"""What stands before a place that is near."""

NEAR_BEHIND = "lähedal|lähistel|ligidal|kandis|lähellä|lähistöllä|liepillä|közelében|közelébe|mellett|szélén|határában|környékén|tuvumā|apylinkėse"
"""What stands behind it: Estonian, Finnish, Hungarian, Latvian, Lithuanian."""

NEAR_BEHIND_NAMES = "way|ways|direction|ääres|kaldal|rannal|rannalla|varrella|krastā|krante"
"""The same, in small letters behind a name only (`Dargaville way`): elsewhere these words mean other things."""

CAPITAL = "[A-ZÀ-ÖØ-ÞĀĒĪŌŪĶĻŅĢŠŽČŁŚŻŹĆŃ]"
"""The first letter of a name."""

THING = "the|a|an|our|my|their|der|dem|den|die|das|einem|einer|la|le|les|el|los|il|lo|o|os|het|de|den|det"
"""Articles before a thing that somebody is near."""

IN = "in|at|im|à|en|em|no|na|w|we|v|ve|в|i|på|te"
"""`in`, before the place of such a thing."""

FROM_ENDINGS = "st|sta|stä|lta|ltä|tól|től"
"""The ending of a place that a distance is reckoned from: Estonian, Finnish, Hungarian."""
