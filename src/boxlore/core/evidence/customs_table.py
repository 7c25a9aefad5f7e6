"""Occasions of a life by the age, or the time before or after a wedding or a death, at which they are kept.

What is kept by custom is likely and never sure: some are christened as grown people. Where a law or a book of a church
names an age, it stands as the source; the years around it are wide, and are common practice, no source. The words are
ours, from what is said in each language (common practice, no source).
"""

from typing import NamedTuple

from boxlore.core.evidence.even_years import YEAR, days


class Custom(NamedTuple):
    """`least` to `most` days after a `life` (birth, wedding or death) of whoever keeps it."""

    called: tuple[str, ...]
    life: str
    least: int
    most: int
    what: str
    source: str


PRACTICE = "common practice, no source"

CUSTOMS: tuple[Custom, ...] = (
    Custom(
        tuple(
            "christening|baptism|christened|baptised|baptized|naming ceremony|taufe|ristsed|ristimine|ristsetel|ristimisel|"
            "ristiäiset|ristiäisissä|kastejuhla|dop|dopet|barndop|dåp|dåpen|barnedåp|dåb|dåben|barnedåb|doop|doopfeest|"
            "baptême|bautizo|bautismo|battesimo|batizado|baptizado|batismo|крестины|крещение|chrzest|chrzciny|kristības|"
            "kristībās|krikštynos|krikštynų|křtiny|křest|iriiringa".split("|")
        ),
        "birth", 0, 3 * YEAR, "christened as a small child", "Codex Iuris Canonici (1983), can. 867: within the first weeks; from memory",
    ),
    Custom(
        tuple(
            "first communion|first holy communion|erstkommunion|première communion|premiere communion|primera comunión|"
            "prima comunione|primeira comunhão|eerste communie|pierwsza komunia|pirmoji komunija|první přijímání".split("|")
        ),
        "birth", 5 * YEAR, 17 * YEAR, "at first communion 5 to 16", "Quam singulari (1910): about the seventh year, and ten to fourteen before it; from memory",
    ),
    Custom(
        tuple(
            "confirmation|confirmed|konfirmation|firmung|einsegnung|leer|leeris|leeripäev|leeripäeval|leeritamine|rippijuhla|"
            "konfirmaatio|rippikoulu|konfirmationen|konfirmasjon|konfirmasjonen|belijdenis|vormsel|confirmación|cresima|"
            "crisma|конфирмация|bierzmowanie|konfirmacja|iesvētes|iesvētības|konfirmacija|biřmování|konfirmace".split("|")
        ),
        "birth", 7 * YEAR, 26 * YEAR, "confirmed at 7 to 25", "Codex Iuris Canonici (1983), can. 891: from the age of discretion on, which can. 97 has at seven; from memory",
    ),
    Custom(
        ("bar mitzvah", "bat mitzvah", "bar mitzwa", "bar-mizwa", "бар-мицва"),
        "birth", 11 * YEAR, 15 * YEAR, "bar or bat mitzvah at 12 to 14", "Mishnah, Avot 5:21: thirteen; from memory",
    ),
    Custom(
        tuple(
            "first day at school|first day of school|first school day|first year at school|first year of school|first term|"
            "starting school|started school|going to school for the first time|einschulung|erster schultag|ersten schultag|"
            "esimene koolipäev|esimesel koolipäeval|kooliminek|esimene kooliaasta|ensimmäinen koulupäivä|ensimmäisenä koulupäivänä|"
            "första skoldagen|skolstarten|første skoledag|skolestart|eerste schooldag|premier jour d'école|première rentrée|"
            "primer día de escuela|primer día de colegio|primo giorno di scuola|primeiro dia de escola|первый раз в первый класс|"
            "первый день в школе|первый школьный день|pierwszy dzień w szkole|pirmā skolas diena|pirmoji mokyklos diena|"
            "první den ve škole|první školní den".split("|")
        ),
        "birth", 3 * YEAR, 11 * YEAR, "began school at 3 to 10", "Education Act 1877 (New Zealand): schools for those of five to fifteen, from seven on they must attend; from memory",
    ),
    Custom(
        tuple(
            "engagement|engaged|betrothal|verlobung|kihlus|kihlusel|kihlumine|kihlajaiset|kihlajaisissa|förlovning|förlovningen|"
            "forlovelse|forlovelsen|verloving|fiançailles|pedida de mano|fidanzamento|noivado|помолвка|zaręczyny|"
            "saderināšanās|sužadėtuvės|zásnuby".split("|")
        ),
        "wedding", -10 * YEAR, 0, "engaged at most ten years before the wedding", PRACTICE,
    ),
    Custom(
        tuple(
            "honeymoon|hochzeitsreise|flitterwochen|pulmareis|pulmareisil|mesinädalad|häämatka|häämatkalla|bröllopsresa|"
            "bröllopsresan|bryllupsreise|bryllupsrejse|huwelijksreis|lune de miel|voyage de noces|luna de miel|luna di miele|"
            "viaggio di nozze|lua de mel|медовый месяц|miesiąc miodowy|podróż poślubna|medusmēnesis|medaus mėnuo|líbánky".split("|")
        ),
        "wedding", 0, 2 * YEAR, "on the honeymoon at most two years after the wedding", PRACTICE,
    ),
    Custom(
        tuple(
            "funeral|burial|interment|laid to rest|laid out|in the coffin|in her coffin|in his coffin|open coffin|on the bier|"
            "beerdigung|begräbnis|trauerfeier|aufgebahrt|im sarg|matus|matused|matustel|peied|kirstus|hautajaiset|hautajaisissa|"
            "begravning|begravningen|begravelse|begravelsen|begrafenis|enterrement|obsèques|entierro|funerale|enterro|похороны|"
            "в гробу|pogrzeb|bēres|bērēs|laidotuvės|laidotuvių|pohřeb|tangihanga".split("|")
        ),
        "death", 0, days(90), "buried within three months", PRACTICE,
    ),
)  # fmt: skip
