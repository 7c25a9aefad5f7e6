"""What is called after somebody: streets, churches, ships, schools, statues; and who is called by a name and is known.

Words by their kinds, folded, from memory of each language (common practice, no source).
"""

BEHIND = frozenset(
    "bank sts rds street st road rd avenue ave terrace crescent quay wharf bay island islands isles land peninsula glacier strait "
    "straits sound sounds railway station hotel hospital college university theatre cathedral museum county shire "
    "harbour harbor basin airport cemetery gardens arcade square place bridge bridges dam pass track falls beach creek "
    "gully reserve library institute infirmary memorial monument statue fountain bandstand bust clock tower cottage "
    "lighthouse ferry cup shield trophy medal prize night society club company factory works mine mines mills brewery "
    "ausammas park inn festival carnival jubilee anthem school schools church chapel parish "
    "convent orphanage barracks fort "
    "pool block court valley forest point lodge castle mill farm "
    "strasse gasse allee platz brucke ufer kirche schule denkmal turm schloss damm ring weg gymnasium "
    "tanav maantee puiestee valjak malestusmark "
    "katu tie tori patsas gatan gata vag vagen bro kyrka kyrkan skola skolan "
    "slott staty gade vej plads kirke skole iela laukums baznica gatve aikste baznycia mokykla "
    "utca ut ter templom iskola hid szobor ulice namesti most kostel straat laan plein kerk brug".split()
)
"""Behind the name, large or small."""

WRITTEN_SMALL = frozenset(
    "hall hill mill mills castle lodge court lane bridge beach creek valley night cup prize gate "
    "rand jaam jarv saar sild kirik kool kindlus loss linnus mois moisa sammas silta kirkko koulu linna torg torget".split()
)
"""Behind a name that owns nothing, written small, what nobody does: `Wesley hall`, `Pirita rand`; written large many of
them are family names: `Juhan Saar`, `Mari Sild`."""

SURNAMES_TOO = frozenset(
    "bridges beach fountain land ring "
    "mills lane hall hill hills house park wood woods field fields green "
    "head heath lake marsh moor rivers brook brooks close banks stone rock sands "
    "ford gate gates well wells warren grove glen mount dale cliff damm weg most bro".split()
)
"""The same, of which many are family names too: behind a name they make a place only where something leads to one."""

COMMON_SHIPS = frozenset(
    "steamer schooner barque bark brig tug ketch yacht ferry launch scow dredge ship boat vessel trawler cutter "
    "laev paat laeva paadi schiff boot пароход лодка".split()
)
"""Before the name of a ship, or of whoever built that boat."""

SHIPS = COMMON_SHIPS | frozenset(
    "liner aurik aurikul laevaga dampfer segler laiva hoyrylaiva skepp fartyg angbat skip "
    "теплоход креисер корабль statek navire paquebot vapeur nave buque vapor frigate brigantine".split()
)
"""Before the name of a ship, and behind it."""

BEFORE = SHIPS | frozenset(
    "rue avenue boulevard quai place pont ecole lycee eglise cathedrale chapelle hopital statue monument chateau "
    "calle avenida plaza plazuela paseo iglesia catedral colegio escuela puente estatua monumento castillo puerto "
    "via viale piazza corso ponte chiesa duomo scuola statua basilica castello rua praca largo igreja "
    "ulica ulicy ulice plac aleja most kosciol pomnik szkola namesti kostel trida "
    "улица улице улицы площадь площади проспект церковь церкви собор памятник имени школа мост храм бюст "
    "kloster stift hotel albergo gasthof gasthaus cafe kohvik kino teatro teater theater cinema "
    "mount mt cape lake port fort loch river ile isla ilha isola sierra cerro monte mont lac lago capo cabo "
    "ss rms hms hmnzs hmas tss mv ms sms uss sss "
    "film movie play opera novel book song hymn poem hurricane cyclone camp battle siege gulf bay bust effigy memorial".split()
)
"""Before the name: a street, a church, a ship, a play of that name."""

OF = frozenset("of to a al de du di del della des da do dos le la von vom zu av af".split())
"""What may stand between such a word and the name."""

CROWNED_OR_HOLY = frozenset("ave salve virgin blessed queen emperor tsar pope".split())
"""Before `Maria`, `Mary` and `Victoria` nobody of the family is meant."""

KNOWN_TO_ALL = CROWNED_OR_HOLY | frozenset(
    "king kings prince princess princes empress czar kaiser konig konigin kuningas kuninganna "
    "kung kungen drottning drottningen konge dronning roi reine rey reina re regina krol krolowa car carica "
    "царь царица император императрица король королева "
    "saint saints st ste sainte sankt sint san santa santo sao puha pyha sv svata svaty swiety swieta sw szent "
    "святои святая святого popes papa papst paavst holy".split()
)
"""Before the name of a sovereign or of somebody holy."""

LEADS_TO_A_PLACE = frozenset("in into at en nach via tot".split())
"""Before a place, and hardly before somebody: not `in Anna's garden`."""

MAY_LEAD_TO_A_PLACE = LEADS_TO_A_PLACE | frozenset("the near past behind opposite outside".split())
"""Before what may be a place by its second word: `at Ruth Hall`."""

ARTICLES = frozenset("der die das den dem des le la les el los il lo gli een het de az".split())
"""Before a word of the language that is no name there."""

BUSINESSES = frozenset(
    "factory bakery brewery store stores shop garage stables dairy warehouse foundry nursery tannery sawmill bookshop "
    "department restaurant tearooms".split()
)
"""Behind whose it is, by a family name alone, the name of a firm: `Hudson's chocolate factory`."""

HEIRS = frozenset("brothers bros sons sisters photographers".split())
"""The last word of a firm, written large: `Burton Brothers`."""

ANIMALS = frozenset(
    "dog cat horse pony mare cow bull ram goat pig budgie parrot canary collie terrier spaniel labrador kitten puppy "
    "koer kass hobune hund katze pferd koira kissa hevonen chien chat cheval perro gato caballo cane gatto cavallo "
    "собака пес кот кошка лошадь pies kot kon hunden katten".split()
)
"""Before the name of an animal."""

TITLES_AND_WORDS = frozenset("general old little young big major private staff chief wing master wee ordinary".split())
"""Titles that are words of every day too: behind them a name must be a known one."""
