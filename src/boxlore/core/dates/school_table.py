"""When schools had their year, by country; and school holidays and school days of the year, by what they are and by
language: everyday usage (common practice, no source). The days that they come to stand in `core.dates.holidays_table`;
English names that are a season or a feast and a word for holidays are made there.
"""

from collections.abc import Mapping

SCHOOL_YEARS: tuple[tuple[str, int, int, int, int], ...] = (
    ("GB FR BE LU NL CH AT", 0, 9999, 9, 7),
    ("SE NO DK FI", 0, 9999, 8, 6),
    ("DE", 0, 1966, 4, 3), ("DE", 0, 1966, 9, 7),
    ("DE", 1967, 9999, 8, 7),
)  # fmt: skip
"""Countries, the first and the last year in which a school year of theirs began, its first month and its last one in
the year after. Of several, one that began after Easter and one in autumn, it is asked which. From memory: British
schools broke up late in July; German ones began after Easter until 1966, those of Bavaria in autumn."""

ANYWHERE = (9, 6)
"""The school year of the other countries of the north."""

IN_THE_SOUTH = (2, 12)
"""The school year of the south, within one year."""

SCHOOL: Mapping[str, Mapping[str, str]] = {
    "summer holidays of schools": {
        "et": "suvevaheaeg|suvevaheajal|suvevaheaja|suvine vaheaeg|suvepuhkus|suvepuhkusel",
        "de": "sommerferien|große ferien|großen ferien|grosse ferien|grossen ferien|sommerurlaub|sommerfrische",
        "fr": "grandes vacances|vacances d'été|vacances de l'été",
        "es": "vacaciones de verano|veraneo|vacaciones estivales",
        "it": "vacanze estive|villeggiatura|vacanze d'estate",
        "pt": "férias de verão|férias grandes|férias do verão",
        "nl": "zomervakantie|grote vakantie|zomervacantie|groote vacantie",
        "da": "sommerferie|sommerferien",
        "sv": "sommarlov|sommarlovet|sommarferie|sommarferien|sommarsemester|sommarsemestern",
        "nb": "sommerferie|sommerferien",
        "fi": "kesäloma|kesälomalla|kesälomaa|kesäloman|kesälomat",
        "ru": "летние каникулы|летних каникул|летних каникулах|летними каникулами",
        "pl": "wakacje|wakacji|wakacjach|wakacje letnie|letnie wakacje|ferie letnie|letnich wakacji",
        "lv": "vasaras brīvdienas|vasaras brīvdienās|vasaras brīvlaiks|vasaras brīvlaikā",
        "lt": "vasaros atostogos|vasaros atostogų|vasaros atostogas|vasaros atostogomis",
        "hu": "nyári szünet|nyári szünetben|nyári vakáció|nyári szünidő|nyári szünidőben|vakáció|nyaralás",
        "mi": "hararei raumati",
    },
    "summer holidays from july": {
        "cs": "letní prázdniny|letních prázdnin|letních prázdninách|prázdniny|prázdnin|prázdninách|hlavní prázdniny",
    },
    "christmas holidays": {
        "et": "jõuluvaheaeg|jõuluvaheajal|talvevaheaeg|talvevaheajal|talvine vaheaeg",
        "de": "weihnachtsferien|weihnachtsurlaub",
        "fr": "vacances de noël|congés de noël|fêtes de noël|fêtes de fin d'année",
        "es": "vacaciones de navidad|fiestas de navidad|fiestas navideñas|vacaciones navideñas",
        "it": "vacanze di natale|vacanze natalizie|feste di natale|feste natalizie",
        "pt": "férias de natal|férias do natal",
        "nl": "kerstvakantie|kerstvacantie",
        "da": "juleferie|juleferien",
        "sv": "jullov|jullovet|julferie|julferien",
        "nb": "juleferie|juleferien",
        "fi": "joululoma|joululomalla|joululomaa|joululoman",
        "ru": "зимние каникулы|зимних каникул|зимних каникулах|рождественские каникулы|рождественских каникул"
        "|новогодние каникулы|новогодних каникул|святки|святках",
        "pl": "ferie świąteczne|ferii świątecznych|przerwa świąteczna",
        "lv": "ziemassvētku brīvdienas|ziemassvētku brīvdienās|ziemas brīvdienas|ziemas brīvdienās",
        "lt": "kalėdų atostogos|kalėdų atostogas|kalėdų atostogų|žiemos atostogos|žiemos atostogas|žiemos atostogų",
        "cs": "vánoční prázdniny|vánočních prázdnin|vánočních prázdninách",
        "hu": "karácsonyi szünet|karácsonyi szünetben|téli szünet|téli szünetben|téli szünidő",
    },
    "easter holidays": {
        "de": "osterferien|osterurlaub",
        "fr": "vacances de pâques|congés de pâques",
        "es": "vacaciones de semana santa|vacaciones de pascua",
        "it": "vacanze di pasqua|vacanze pasquali",
        "pt": "férias da páscoa|férias de páscoa",
        "nl": "paasvakantie|paasvacantie",
        "da": "påskeferie|påskeferien",
        "sv": "påsklov|påsklovet",
        "nb": "påskeferie|påskeferien",
        "fi": "pääsiäisloma|pääsiäislomalla",
        "ru": "пасхальные каникулы|пасхальных каникул",
        "pl": "ferie wielkanocne|ferii wielkanocnych",
        "lv": "lieldienu brīvdienas|lieldienu brīvdienās",
        "lt": "velykų atostogos|velykų atostogas|velykų atostogų",
        "cs": "velikonoční prázdniny|velikonočních prázdnin|velikonočních prázdninách",
        "hu": "húsvéti szünet|húsvéti szünetben|tavaszi szünet|tavaszi szünetben",
    },
    "spring holidays": {
        "et": "kevadvaheaeg|kevadvaheajal|kevadine vaheaeg",
        "de": "frühjahrsferien|frühlingsferien",
        "fr": "vacances de printemps",
        "ru": "весенние каникулы|весенних каникул|весенних каникулах",
        "lv": "pavasara brīvdienas|pavasara brīvdienās",
        "lt": "pavasario atostogos|pavasario atostogas",
    },
    "autumn holidays": {
        "et": "sügisvaheaeg|sügisvaheajal|sügisene vaheaeg",
        "de": "herbstferien|kartoffelferien",
        "fr": "vacances de la toussaint|vacances de toussaint",
        "it": "vacanze autunnali",
        "nl": "herfstvakantie|herfstvacantie",
        "da": "efterårsferie|efterårsferien|kartoffelferie|kartoffelferien",
        "sv": "höstlov|höstlovet|potatislov|potatislovet",
        "nb": "høstferie|høstferien|potetferie|potetferien",
        "fi": "syysloma|syyslomalla|perunaloma|perunalomalla",
        "ru": "осенние каникулы|осенних каникул|осенних каникулах",
        "pl": "ferie jesienne",
        "lv": "rudens brīvdienas|rudens brīvdienās",
        "lt": "rudens atostogos|rudens atostogas",
        "cs": "podzimní prázdniny|podzimních prázdnin|podzimních prázdninách",
        "hu": "őszi szünet|őszi szünetben",
    },
    "february holidays": {
        "de": "winterferien|skiferien",
        "fr": "vacances d'hiver|vacances de février|vacances de neige",
        "nl": "krokusvakantie|voorjaarsvakantie",
        "da": "vinterferie|vinterferien",
        "sv": "sportlov|sportlovet|vinterlov|vinterlovet",
        "nb": "vinterferie|vinterferien",
        "fi": "hiihtoloma|hiihtolomalla",
        "pl": "ferie zimowe|ferii zimowych|feriach zimowych",
        "cs": "jarní prázdniny|jarních prázdnin|jarních prázdninách",
    },
    "first day of school in september": {
        "et": "esimene koolipäev|esimesel koolipäeval|esimese koolipäeva|kooliaasta algus|kooliaasta alguses|kooliaasta algusest"
        "|kooli algus|kooli alguses|kooli avaaktus|avaaktus|avaaktusel|tarkusepäev|tarkusepäeval",
        "lv": "pirmā skolas diena|pirmajā skolas dienā|zinību diena|zinību dienā|skolas sākums|mācību gada sākums",
        "lt": "pirmoji mokslo diena|pirmąją mokslo dieną|pirma mokslo diena|mokslo metų pradžia|rugsėjo pirmoji|rugsėjo pirmąją",
        "ru": "день знаний|первый звонок|первый школьный день|первый день в школе|начало учебного года|начале учебного года"
        "|первый раз в первый класс",
        "pl": "pierwszy dzień szkoły|pierwszy dzień w szkole|rozpoczęcie roku szkolnego|początek roku szkolnego",
        "cs": "první školní den|první den ve škole|začátek školního roku",
    },
    "first day of school": {
        "es": "primer día de colegio|primer día de escuela|primer día de clase|vuelta al cole|comienzo del curso|inicio del curso",
        "pt": "primeiro dia de aulas|primeiro dia de escola|primeiro dia da escola|início das aulas",
        "nl": "eerste schooldag|begin van het schooljaar",
        "sv": "första skoldagen|skolstart|skolstarten",
        "nb": "første skoledag|skolestart|skolestarten",
        "fi": "ensimmäinen koulupäivä|ensimmäisenä koulupäivänä|koulun alku",
        "hu": "első tanítási nap|első iskolai nap|első iskolanap|tanévnyitó|tanévnyitón|iskolakezdés|iskolakezdéskor",
        "mi": "rā tuatahi o te kura",
    },
    "rentrée": {
        "fr": "rentrée|rentrée des classes|rentrée scolaire|jour de la rentrée|premier jour d'école|premier jour de classe",
        "it": "primo giorno di scuola|inizio della scuola|inizio dell'anno scolastico|inizio scuola",
    },
    "schulanfang": {
        "de": "schulanfang|einschulung|schulbeginn|erster schultag|ersten schultag|schuleintritt",
        "da": "første skoledag|skolestart|skolestarten",
    },
    "last day of school": {
        "et": "viimane koolipäev|viimasel koolipäeval|koolilõpetamine|kooli lõpetamine|koolilõpp|lõpuaktus|lõpuaktusel"
        "|kevadpidu|kooliaasta lõpp|kooliaasta lõpus",
        "fr": "remise des prix|distribution des prix|dernier jour d'école|dernier jour de classe",
        "de": "letzter schultag|letzten schultag|schulschluss|schulschluß",
        "es": "fin de curso|último día de clase|último día de colegio",
        "it": "ultimo giorno di scuola|fine della scuola",
        "pt": "último dia de aulas|fim das aulas",
        "nl": "laatste schooldag",
        "da": "sidste skoledag|skoleafslutning|skoleafslutningen",
        "sv": "skolavslutning|skolavslutningen|sista skoldagen|examensdagen",
        "nb": "siste skoledag|skoleavslutning|skoleavslutningen",
        "fi": "viimeinen koulupäivä|viimeisenä koulupäivänä|koulun päättäjäiset|kevätjuhla|kevätjuhlassa|päättäjäiset",
        "ru": "выпускной|выпускной вечер|последний день школы|конец учебного года",
        "pl": "zakończenie roku szkolnego|koniec roku szkolnego|ostatni dzień szkoły",
        "lv": "pēdējā skolas diena|izlaidums|izlaidumā|mācību gada beigas",
        "lt": "paskutinė mokslo diena|mokslo metų pabaiga|išleistuvės",
        "cs": "poslední školní den|konec školního roku",
        "hu": "évzáró|évzárón|tanévzáró|tanévzárón|utolsó tanítási nap",
    },
    "paskutinis skambutis": {
        "ru": "последний звонок",
        "lt": "paskutinis skambutis|paskutinį skambutį",
        "lv": "pēdējais zvans",
    },
    "autumn semester": {
        "sv": "höstterminen|hösttermin",
        "fi": "syyslukukausi|syyslukukaudella",
        "nb": "høstsemesteret|høstsemester",
        "da": "efterårssemesteret|efterårssemester",
        "et": "sügissemester|sügissemestril|sügispoolaasta|sügispoolaastal",
    },
    "winter semester": {
        "de": "wintersemester|winterhalbjahr",
    },
    "sommersemester": {
        "de": "sommersemester|sommerhalbjahr",
    },
    "spring semester": {
        "sv": "vårterminen|vårtermin",
        "fi": "kevätlukukausi|kevätlukukaudella",
        "nb": "vårsemesteret|vårsemester",
        "da": "forårssemesteret|forårssemester",
        "et": "kevadsemester|kevadsemestril|kevadpoolaasta|kevadpoolaastal",
    },
}  # fmt: skip
"""By the name in `core.dates.holidays_table` and the language's code: words as in a language's own rows."""
