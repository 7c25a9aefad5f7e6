"""The words that stand in names and are no names: titles, kin words, particles, markers of birth, marriage and father.

Each row is one class of words, folded and without points (`core.statements.fold`), from the languages that the
families of a collection may write in. Sources: the particles and their place in lists are those of *Names of Persons*
(IFLA, 4th edition, 1996) and AACR2, 22.5; all from memory, as are the titles and kin words (common practice, no
source).
"""

from boxlore.core.statements import fold


def _words(text: str) -> frozenset[str]:
    return frozenset(map(fold, text.split()))


TITLES = _words(
    """
    cllr mr mrs ms miss mister missus mx master dr doctor prof professor rev reverend revd sir dame lady lord hon honourable
    capt captain cpt col colonel maj major lt lieut lieutenant sgt sergeant cpl corporal pte private gen general adm
    admiral cmdr commander cdr cmdre commodore brig brigadier flt wing sqn squadron leader flying pilot officer gunner spr
    sapper midshipman surgeon quartermaster gnr tpr bdr padre constable inspector ensign matron nurse alderman councillor cr mayor president senator judge
    justice sheriff earl count countess duke duchess baron baroness viscount viscountess marquess marquis prince
    princess king queen emperor empress tsar
    herr frau fraulein hr fr frk frhr frfr freiherr freifrau freiin graf grafin furst ritter edler hauptmann oberst leutnant rittmeister
    pastor pfarrer meester emer sub-lt sub-lieut sub-lieutenant gardejer direktor ing dipl lehrer lehrerin hauptlehrer oberlehrer forster burgermeister kantor kuster ks ksiadz praost kyrkoherde kapteeni everstti tohtori witwe wwe hc cure abbe rovasti батюшка
    m mme mlle monsieur madame mademoiselle maitre
    sr sra srta senor senora senorita don dona d da lic
    sig sra signor signora signorina dott dottssa avv cav
    senhor senhora snr
    dhr mevr mevrouw mej meneer de-heer jhr jkvr jonkheer ds dominee
    fru froken fr
    hra rva nti herra rouva neiti
    harra proua preili hra pr prl kapten leitnant kolonel major lipnik opetaja kirikuopetaja parun krahv
    gospodin gospoza gospozha grazhdanin kniaz knyaz kniaginia knyaginya graf polkovnik
    господин госпожа г-н г-жа проф граф князь княгиня княжна барон капитан полковник генерал доктор гражданин товарищ
    pan pani panna inz mgr dr
    kungs kundze jaunkundze lugsne
    ponas ponia panele
    pan pani slecna
    sheikh shaykh shaikh sheik sayyid syed seyyed hajj hajji haji mulla mullah imam emir amir hafiz ustad sidi lalla
    rabbi reb rebbe
    vice baronesse mw contessa conte marchese marchesa barone principe principessa conde condesa marquesa comte comtesse
    vicomte duc duchesse baronne graaf gravin markies hertog greve grevinde grevinna friherre friherrinna hrabia hrabina
    veuve vve ozv ozvegy ifj
    shri sri smt shrimati kumari pandit swami
    bishop archbishop archdeacon dean lance warrant petty able ordinary stoker trooper rifleman fusilier guardsman bombardier
    aircraftman aircraftwoman f/o p/o s/l f/s leading staff seaman mons monsignor baby little old young wee widow w/o a/b sq ldr ww hab
    med phil jur theol
    weduwe weduwnaar wed vdow lesk leski enke viuda vedova viuva vdova wdowa dna venerable ven prebendary
    messrs cadet chief grof grofno baro herceg enkefru enke jomfru madam
    rev'd vitez begum mudr judr phdr rndr paeddr thdr marquise big canoness protojerej
    протоиерей священник диакон дьякон архимандрит
    hofrat geheimrat kommerzienrat sanitatsrat studienrat kirchenrat landrat amtmann propst probst dekan superintendent
    bischof vikar kaplan diakon diakonisse feldwebel unteroffizier gefreiter wachtmeister oberleutnant generalmajor
    baronin abipraost koolmeister vallavanem nooremleitnant seersant vanemseersant veltveebel kirkkoherra pastori
    luutnantti kersantti vanrikki majuri rehtori lojtnant kapten overste provst prost kantor grosshandlare konsul kaptajn
    laerer klokker pulkownik kapitan porucznik profesor doktor ksieni plk por farar mej juffrouw pastoor kapelaan notaris
    capitaine sergent lieutenant docteur dottor professeur comm geom capitan licenciado doutor macitajs skolotajs kunigas nemes
    ezredes szazados fohadnagy nagysagos pasha sardar comdt supt insp chaplain
    свящ прот иерей полк кап поручик
    pfr bgm sac kooliopetaja frl pralat sp detective ifjabb idosebb ald mayoress governor bosun skipper schoolmaster schoolmistress postmaster postmistress headmaster
    headmistress stationmaster farmer engineer wpc pc hrh emeritus emerita rsm csm sqms cqms uff krahvinna vabaharra ankefru sera ucitel ucitelka rajah maharajah nawab tathair матушка батюшка
    kingi kuini cardinal kardinal pope papst deacon deaconess curate rector
    dokter doktors daktaras fotograf fotograaf fotografin photographe fotografo fotografa fotografs fotografas valokuvaaja фотограф
    """
)
"""Titles, ranks and offices before a name. Many are also abbreviations of given names; see `EITHER`."""

EITHER = _words("able earl dean duke don d da m fr pan graf baron")
"""Titles that are also names or other words: with one word behind them they are a given name if that fits."""

NOBLE = _words("frhr frfr graf grafin freiin freiherr freifrau baron baronin baroness furst ritter edler parun krahv")
"""Titles that stand between the given names and a particle."""

WIFE_TITLES = _words(
    "vve veuve vda ozv ozvegy witwe wwe mrs missus mme madame frau sra senora signora fru rouva rva proua pani kundze ponia mevr mevrouw"
)
"""Titles of a wife, behind which the name of her husband may stand (`Mrs. Thomas Pell`)."""

GIVEN_TITLES = _words(
    "sir dame lady don dona d prince princess king queen emperor empress tsar shri sri sidi lalla rabbi reb rebbe miss "
    "baby little old young wee big begum master imam ustad sheikh shaykh mulla mullah hajji haji nurse"
)
"""Titles behind which one word alone is a given name (for `miss`, `lady`, `nurse`: if it is known as one)."""

DOUBTFUL_GIVEN_TITLES = _words("rabbi imam ustad miss lady nurse master baby little old young wee big")

FAMILY_WORDS = _words(
    "family families perekond perekonna pere suguvosa perhe suku suvun gimene gimenes dzimta seima seimos rodzina "
    "rodziny rodina rodiny familie familien famille familles familia семья семьи семьеи семеиныи whanau"
)
"""Words beside which a family name means the family, folded."""
YOUNGER_WORDS = _words(
    "junior juniors jun jnr jr younger jungere jungeren yngre noorem noorema nuorempi jeune cadet mladsi mlodsi mlodszy"
)
"""Words beside which it means those of the family who live, folded."""

RELIGIOUS_TITLES = _words(
    """
    sister sr mother brother br bro father fr dom fra frater pater abbot abbess prioress canon friar
    soeur sœur frere pere abbe schwester bruder mutter suor sor hermana hermano fray madre padre irma irmao frei zuster broeder
    ode sisar vend isa ema siostra brat ojciec сестра брат отец мать
    mere игумения матушка батюшка игумен инокиня инок монахиня монах
    """
)
"""Titles of people in religion. Written small, or in the family's mouth, some of them are kin words."""

KIN_BEFORE_RELIGION = _words("ema isa ode vend mutter bruder сестра брат")
"""Religious titles that are said much more often of kin: in a family's words they are words of kin."""

ALWAYS_RELIGIOUS = _words("suor sor fra fray frei")
"""Religious titles that no relation of a family is called by: the names behind them are names in religion."""

PRIESTS = _words("father fr pater padre pere abbe canon ojciec отец")
"""Religious titles behind which a family name usually stands."""

KIN_WORDS: dict[str, str] = {
    word: relation
    for relation, words in (
        ("mother", "mamai mathair anya anyu anyuka anyam edesanya edesanyam modir mum mummy mam mama mamma mom mommy mother ma mutter mutti maman mere mamá madre mae mai moeder mor "
                   "mamma mamka mor aiti ema emme memme мама мать мамочка matka maminka mamusia mate mamina motina maminka matka whaea"),
        ("father", "daidi athair apa apu apuka apam edesapa edesapam pabbi fadir dad daddy papa pa pop pops father vater vati pere padre babbo pai vader far pappa isa isi taat папа "
                   "отец ojciec tata tatus tevs tetis tevas tete otec tatinek matua"),
        ("grandmother", "opoe nanny mamo seanmhathair nagymama nagyanya nagyi nagyanyam nagymamam amma bobute ome grandma grandmother granny gran nan nana nanna nonna oma grossmutter omi mamie meme abuela "
                        "abuelita avo vovo grootmoeder bedstemor bestemor mormor farmor mummo mummi mummu isoaiti grand-mere grandmere vanaema "
                        "baba babushka бабушка баба babcia vecmamina vecamamma vecamate vecmate mociute senele babicka kuia kui"),
        ("grandfather", "daideo seanathair nagypapa nagyapa nagyapam nagypapam afi poppa grampa granpa pappy grandpa grandfather granddad grandad gramps grandpapa opa grossvater opi papi pepe papy abuelo "
                        "abuelito nonno vovo grootvader bedstefar bestefar morfar farfar ukki vaari pappa isoisa grand-pere grandpere vanaisa деда deda дедушка "
                        "дед dziadek vectevs vecaistevs senelis dedecek koro koroua dedushka"),
        ("aunt", "aintin nagyneni nagynenem fraenka aunt aunty auntie tante tantchen tata tatie tia zia tia moster faster tant tati tadi тетя тётя tyotya tyotia ciocia "
                 "ciotka teticka stryjna krustmate teta neni"),
        ("uncle", "strejda strejcek uncail nagybacsi nagybatyam fraendi uncle onkel oncle tonton tio zio tio oom morbror farbror onkel seta eno onu lell дядя dyadya wujek wuj stryj "
                  "onkulis tevocis dede stryc bacsi"),
        ("great-aunt", "vanatadi great-aunt great-auntie great-aunty grand-aunt grandaunt grosstante grand-tante"),
        ("great-uncle", "vanaonu great-uncle grand-uncle granduncle grossonkel grand-oncle"),
        ("cousin", "unokatestver unokatestverem bralens masica cousin cousine vetter base prima primo cugina cugino neef nicht kusine kusin faetter fetter serkku nobu "
                   "кузен кузина kuzyn kuzynka sestrenice bratranec pusbrolis pussesere"),
        ("sister", "lillasyster storasyster lillesoster storesoster pikkusisko isosisko deirfiur dheirfiur nover noverem huga hugom systir sœur tuahine sister sis schwester soeur hermana sorella irma zus søster syster sisko ode сестра siostra masa sesuo sestra"),
        ("brother", "lillebror storebror pikkuveli isoveli dearthair dhearthair batya batyam ocs ocsem brodir tungane brother bro bruder frere hermano fratello irmao broer bror veli velje vend брат brat bralis brolis bratr"),
        ("great-grandmother", "arriere-grand-mere bisabuela bisnonna bisavo overgrootmoeder oldemor gammelmormor prababcia prababicka isoisoaiti dedi dedmama dedanya dedanyam langamma great-great-grandmother great-grandmother great-granny great-grandma great-gran great-nan great-nana urgrossmutter uroma vanavanaema прабабушка"),
        ("great-grandfather", "arriere-grand-pere bisabuelo bisnonno overgrootvader oldefar gammelmorfar pradziadek pradedecek isoisoisa dedpapa dedapa dedapam langafi great-great-grandfather great-grandfather great-grandpa great-grandad great-granddad urgrossvater uropa vanavanaisa прадедушка прадед"),
        ("husband", "marido echtgenoot gatte gemahl puoliso ferj ferjem ferje eiginmadur virs husband hubby mann ehemann mari esposo marito man mann mies miehe abikaasa муж maz vyras manzel"),
        ("wife", "hustru echtgenote gattin gemahlin feleseg felesegem felesege eiginkona wife ehefrau femme epouse esposa moglie mulher vrouw kone kona vaimo naine жена zona sieva zmona manzelka"),
        ("grandson", "tutrepoeg grandson enkel petit-fils nieto kleinzoon sonson dotterson внук wnuk mazdels anukas vnuk pojapoeg"),
        ("granddaughter", "tutretutar neta dukraite granddaughter enkelin petite-fille nieta kleindochter sondotter внучка wnuczka mazmeita anuke "
                          "vnucka tutretutar"),
        ("mother-in-law", "mother-in-law schwiegermutter belle-mere suegra suocera sogra schoonmoeder svigermor svarmor anoppi теща свекровь tesciowa tchyne"),
        ("father-in-law", "father-in-law schwiegervater beau-pere suegro suocero sogro schoonvader svigerfar svarfar appi тесть свекор tesc tchan"),
        ("sister-in-law", "sister-in-law schwagerin belle-soeur belle-sœur cunada cognata cunhada schoonzus svigerinde svigerinne svagerska kaly szwagierka svagrova"),
        ("brother-in-law", "brother-in-law schwager beau-frere cunado cognato cunhado zwager svoger svager lanko szwagier svagr"),
        ("son-in-law", "son-in-law schwiegersohn gendre yerno genero schoonzoon svigersonn svarson vavy vaimees зять ziec"),
        ("daughter-in-law", "daughter-in-law schwiegertochter belle-fille nuera schoondochter svigerdatter svardotter minia невестка synowa"),
        ("stepmother", "stepmother step-mother stepmum step-mum stiefmutter madrastra stiefmoeder stedmor stjufmor voorasema мачеха macocha"),
        ("stepfather", "stepfather step-father stepdad step-dad stiefvater padrastro stiefvader stedfar stjufar voorasisa отчим ojczym"),
        ("stepsister", "stepsister step-sister half-sister stiefschwester halbschwester"), ("stepbrother", "stepbrother step-brother half-brother stiefbruder halbbruder"),
        ("godmother", "gudmor kummitati krustmate krikstamote kmotra godmother patin taufpatin marraine madrina ristiema крестная"), ("godfather", "gudfar kummiseta krikstatevis kmotr godfather pate taufpate krusttevs parrain padrino ristiisa крестный"),
        ("niece", "niece nichte sobrina sobrinha oetutar vennatutar племянница siostrzenica bratanica neter"),
        ("nephew", "nephew neffe neveu sobrino sobrinho oepoeg vennapoeg племянник siostrzeniec bratanek synovec"),
        ("brother or sister", "tuakana teina"), ("fiancee", "fiancee fiance verlobte verlobter kihlattu"),
        ("son", "fia fiam sonur tama son sohn fils hijo figlio filho zoon soen sonn poika poeg сын syn dels sunus"),
        ("daughter", "lanya lanyom dottir dukra tamahine daughter tochter fille hija figlia filha dochter datter dotter tytar tyttare tutar дочь corka meita dukte dcera"),
    )
    for word in map(fold, words.split())
}  # fmt: skip
"""What a family calls its own: the word -> the relation. A word of two relations stands for the last row that has it."""

KIN_WITH_AN_ACCENT = _words("mere")
"""Kin words that without their accent, written large, are given names of another people (Māori)."""

ELDERS_BY_FAMILY_NAME = _words(
    "mum mummy mam mama mom mommy mother ma dad daddy papa pa pop father nan oma opa mutter mutti vater vati grossmutter grossvater omi opi mere "
    "pere mor far farmor farfar mormor morfar bedstemor bestemor bedstefar bestefar grootmoeder grootvader"
)
"""Words for parents and grandparents of languages in which a family name may stand behind them (`Mutti Schröder`)."""

GRANDPARENTS = _words(
    "nanny poppa grandma grandmother granny gran nana nanna grandpa grandfather granddad grandad gramps grandpapa"
)
"""English kin words behind which a family name may stand (`Grandma Lomax`)."""

KIN_BEHIND = _words("neni bacsi tadi onu tati seta eno bey hanim efendi effendi agha khan")
"""Kin words and forms of respect that stand behind a given name (Hungarian, Estonian, Finnish, Turkish)."""

KIN_ALONE = frozenset(
    word for word, relation in KIN_WORDS.items() if relation not in ("son", "daughter", "grandson", "granddaughter")
) - _words("ma pa mate nan pop tata bro sis tate mari mann maz naine far mor ferje felesege huga")
"""Kin words that stand for a name by themselves."""

KIN_OF_LANGUAGES: dict[str, tuple[tuple[str, frozenset[str]], ...]] = {
    "tata": (("father", _words("pl cs sk ro hr sr")), ("aunt", _words("fr de"))),
    "isa": (("father", _words("et")),),
    "ma": (("mother", _words("en nl")),),
    "pa": (("father", _words("en nl")),),
    "mor": (("mother", _words("da nb no sv")),),
    "far": (("father", _words("da nb no sv")),),
    "mate": (("mother", _words("lv")),),
}
"""Kin words that alone are another word or a name in another language -> what they are, and in which languages."""

KIN_OR_NAME = _words("nan pop")
"""Kin words of English that alone are a name of somebody too (`Nan` of Ann)."""

TURKISH_RESPECT = _words("bey hanim efendi effendi")
"""Those of them that are written large too."""

MYSTERIES = _words(
    "of the immaculata perpetua assunta dolorosa incarnation nativity visitation rosary trinity passion sacred heart coeur jesus holy spirit "
    "redempta gonzaga alacoque clare bernard aquinas alphonsus assisi siena berchmans regis brigid vianney liguori chantal carmel croix joseph mary benedict ignatius aloysius xavier columba ange annunciata assumpta bonaventure philomena scholastica bosco cross"
)
"""What may stand in a name in religion besides given names."""

SUFFIXES = _words(
    """
    jr jnr junior junr senr sr snr senior ii iii iv 2nd 3rd esq esquire phd md dds ba ma bsc msc llb qc kc kcmg cmg mbe obe cbe kbe dbe
    bt bart kcb cb gcb gcmg kcvo cvo mvo cie csi kcie vd td frcs frgs yr dy yngri eldri ifj ifjabb id sm osa osf cssr ocd rscj ibvm omi retd rtd ret qsm qso onz mnzm dso dsc pc mc mm dcm dfc vc gc bem mp jp rn frs osb sj op ofm csc rsm fils pere aine cadet
    vanem noorem nuorempi vanhempi jun sen hijo padre filho neto sobrinho junior
    мл ст младший старший starszy mlodszy mladsi starsi ml
    """
)
"""What stands behind a name: younger and elder, degrees, honours, orders."""

SOVEREIGNS = _words("king queen emperor empress tsar prince princess pope rex regina")
"""Titles behind whose names a number stands."""

JOINED_SUFFIXES = ("den yngre", "den aldre", "the elder", "the younger", "der altere", "der jungere", "d a", "d y", "d j", "le jeune", "the first",
                   "the second", "the third")  # fmt: skip
"""Suffixes of two words, folded, without points."""

PARTICLES = _words(
    """
    von vom zu zum zur am nic ni mhic van der den des ten ter te 't tot op aan bij de del della dello dei degli delle di da do dos das du
    i la las le les los l' lo y e und av af til de' dal dalla dallo dalle dai dagli uit fon фон ван де дер дю ла ле цу
    """
)
"""Small words inside a family name. Written small they are particles; written large, a part of the name."""

FAMILY_BEGINNINGS = PARTICLES | _words("mc mac mag mhac o fitz saint sainte st san ap ab ibn ben bin")
"""What may be written together with the rest of a family name, or apart: `McNeil`, `Mac Neil`."""

UNDER_PARTICLE = _words(
    "dal dalla dallo dalle dai dagli du des le la les l' am zum zur vom della dello del dei degli delle di da do lo ver"
)
"""Particles under which a name is listed, in the languages that list it so: French articles and contractions, German
contractions, Italian ones (*Names of Persons*; AACR2, 22.5D1, from memory). `ITALIAN_ONLY` are so only in Italian."""

ITALIAN_ONLY = _words("del della dello dei degli delle dal dalla dallo dalle di da do lo la le")

ITALIAN_FOR_CERTAIN = _words("della dello dei degli delle dalla dallo dalle")
"""Particles of no other language."""

BOUND = _words(
    "zum zur vom o ó ni nic mac mc ui mhic nighean st ste saint san santa fitz mag mhac te nga ngai ngati le la du de del della di da van von der den ter ten dos das los las el al ben bar"
)
"""Words that, written large before a family name, belong to it: `Kiri Te Kanawa`, `Martin Van Buren`."""

_PLACES_OF_PORTUGAL = _words(
    "castelo corte vila vilas monte casa casas torre rio pedra mata espirito campo paco serra porto boa"
)
_SAID_OF_THEM = _words(
    "branco branca real boas nova novas novo alegre negro santo seco grande velho velha morte bello belo"
)


def is_one_family_name(first: str, second: str) -> bool:
    """Whether two words are one family name of Portugal: a place and what is said of it (`Castelo Branco`)."""
    return fold(first) in _PLACES_OF_PORTUGAL and fold(second) in _SAID_OF_THEM


SHORTENED_SON = ("sz.", "sdr.", "szn.")
"""Ends of Dutch names of a father that are shortened: `Pietersz.`"""

FILIATION = _words(
    "ibn bin b ben bint binti binte bnt bat bar ap ab ferch verch ach oglu ogly kyzy qizi uulu ould walad putra putri a/l a/p s/o d/o "
    "بن ابن بنت בן בת"
)
"""Son of, daughter of: the name behind it is the father's."""

KUNYA = _words("abu abou abo umm um oum bou ابو أبو أم ام")
"""Father of, mother of: a name of honour that an eldest child gives."""

SERVANT = _words("abd abdul abdel abd-al abu'l عبد")
"""Servant of: with the word behind it one given name."""

ARTICLES = ("al-", "el-", "ad-", "ar-", "as-", "an-", "at-", "az-", "ash-", "ul-", "ud-", "ur-", "ed-", "es-", "en-")
"""The Arabic article before a word, by the letter that follows it. It does not count in lists."""

MARKERS: tuple[tuple[str, str], ...] = tuple(
    (words.strip(), part)
    for part, row in (
        (
            "born_as",
            "m n|m s|snd|дев|nascuta|endine|end|varem|kuni|until|bis|that was|that was a|who was a|nee|née|ne|b|born|born as|maiden name|formerly|geb|geborene|geborener|geboren|fodd|född|fodt|født|f|s|o s|"
            "omaa sukua|oma sukua|os|urozhdennaya|urozhd|v devichestve|syntyjaan|sund|sundinud|neiuna|neiupolves|neiupolvenimega|dz|урожд|урожденная|урожденный|в девичестве|z d|zd|"
            "z domu|de domo|roz|rozena|rozeny|dzim|dzimusi|gim|gimusi|mergautine|nacida|de soltera|nascida|nata|"
            "szul|szuletett|sz|ent|e|z rodu|gebore|kizlik soyadi",
        ),
        (
            "married_as",
            "married name|married as|formerly mrs|previously mrs|once mrs|fruher frau|mrs|later mrs|now mrs|later|m|primo voto|secundo voto|verw|verwitwete|verh|verheiratete|verehelichte|gift|abielus|"
            "mehe jargi|epouse|ep|femme|mme|veuve|vve|witwe|wwe|widow of|wife of|vda de|viuda de|esposa de|"
            "po muzu|po meze|gesch|geschiedene|ovd|ovdovela|g|gm|echtgenote|echtgenote van|huisvrouw van|weduwe van|weduwe|enke efter|anka efter|leski|ferjezett|ferj|zamezna|замужем|в замужестве|по мужу|po muzhu|v zamuzhestve|prec|vedova|in|casada|gehuwd|gehuwde|provdana|ved|wdowa po|vdova po",
        ),
        (
            "nickname",
            "known as|called|also known as|aka|a k a|alias|genannt|gen|dit|dite|detto|detta|conhecido como|"
            "conocida como|conocido como|nicknamed|kutsutud|huudnimega|hüüdnimega|kutsuttu|kallad|kaldet|kalt|"
            "bijgenaamd|zwany|zwana|zvany|zvana|по прозвищу|apodo|better known as|everyone called|we called|"
            "ps|pseud|or|usually|zis|zisa|vulgo|vlg|por apodo|alias dictus",
        ),
        (
            "full",
            "real name|proper name|full name|properly|christened|baptised|baptized|registered as|eigentlich|getauft|"
            "de son vrai nom|prénom|oikea nimi|parisnimi|ristitud|egentligen|dopt|døpt",
        ),
        ("religious", "in religion|religious name|monastic name|im orden|en religion|en religión|in religione|mnisi"),
        (
            "belongs",
            "of ngapuhi|o ngapuhi|no ngapuhi|of kai|of tainui|of tuhoe|of waikato|of taranaki|herbu|h|of ngai|of ngati|of nga|no ngai|no ngati|nō ngai|of te|no te",
        ),
    )
    for words in row.split("|")
)
"""Words inside a name that say what the next words are: the words, folded and without points -> the part."""

MARKERS_BY_FIRST_WORD: dict[str, list[tuple[str, str]]] = {}
for _words_of_marker, _part in MARKERS:
    MARKERS_BY_FIRST_WORD.setdefault(_words_of_marker.split()[0], []).append((_words_of_marker, _part))

NOT_IN_OPEN = frozenset(
    {
        "mrs",
        "m",
        "s",
        "f",
        "in",
        "or",
        "ep",
        "gen",
        "sz",
        "later",
        "usually",
        "ne",
        "mme",
        "b",
        "femme",
        "z d",
        "e",
        "ent",
        "ved",
        "os",
        "h",
        "g",
        "gm",
        "dz",
        "leski",
        "weduwe",
        "end",
        "varem",
        "kuni",
        "until",
        "bis",
    }
)
"""Markers that count only where they cannot be a name: written small, behind a name and before one; or in brackets."""

PATRONYMIC_ENDINGS = (
    "ovich", "evich", "yevich", "ovna", "evna", "yevna", "ichna", "inichna", "ovych", "evych", "ivna", "yivna", "avich",
    "owna", "ovitch", "evitch", "owitsch", "ewitsch", "jewitsch", "jewna", "ovic", "evic", "ilyich", "ilich", "kuzmich", "lukich", "fomich", "nikitich", "savvich",
    "ович", "евич", "ьич", "ьмич", "лукич", "фомич", "никитич", "саввич", "ыч", "еич", "овна", "евна", "ична", "инична", "івна", "ївна", "йович", "йовна",
)  # fmt: skip
"""Endings of a Russian, Ukrainian or Belarusian name after the father, folded."""

SLAVIC_FAMILY_ENDINGS = (
    "ov", "ev", "ova", "eva", "in", "ina", "sky", "skaya", "ski", "ska", "skiy", "skii", "skoy", "enko", "uk", "yuk", "chuk",
    "off", "eff", "ов", "ев", "ова", "ева", "ин", "ина", "ын", "ына", "ский", "ская", "цкий", "цкая", "ко", "ук", "юк",
)  # fmt: skip

GENDERED_ENDINGS: tuple[tuple[str, ...], ...] = (
    ("ov", "ova"), ("ev", "eva"), ("in", "ina"), ("sky", "skaya"), ("skiy", "skaya"), ("ski", "ska"), ("cki", "cka"),
    ("dzki", "dzka"), ("ов", "ова"), ("ев", "ева"), ("ин", "ина"), ("ын", "ына"), ("скии", "ская"), ("цкии", "цкая"),
    ("as", "iene", "aite"), ("is", "iene", "yte"), ("ius", "iene", "iute"), ("us", "iene", "ute"), ("ins", "ina"),
    ("is", "e"), ("ak", "akova"), ("ik", "ikova"), ("y", "a"),
)  # fmt: skip
"""One family name, as men and women bear it (Russian, Polish, Czech, Lithuanian, Latvian), folded: by its ending."""

DESCRIBING = _words(
    """
    the a an my our his her their your this that these those some two three four five six several another
    unknown unidentified somebody someone nobody man woman boy girl child children baby people family friend friends
    neighbour neighbor teacher photographer dog cat horse bride groom bridegroom
    der die das ein eine mein meine unser unsere unbekannt
    le la les un une mon ma mes notre inconnu inconnue
    el la los las un una mi nuestra nuestro
    het een mijn ons onze den det en ett min mitt var vores mees naine laps minu meie tundmatu tuntematon
    человек мужчина женщина мальчик девочка ребенок неизвестный неизвестная мой моя наш наша
    """
)
"""Words with which a description begins, or of which it is made, but no name."""
