"""How the turns of a life are spoken of: “when Anna was born”, “Annas Geburt”, “suri Jaan”. `{}` is who it is about.

The words are ours, from what is said in each language (common practice, no source); a further way is one more phrase.
"""

import re
from collections.abc import Iterator, Mapping, Set

KINDS: Mapping[str, tuple[str, ...]] = {
    "birth": ("birth", "born"),
    "death": ("death", "died", "funeral"),
    "marriage": ("wedding", "marriage", "married"),
    "move": ("move", "moved", "moving", "house"),
    "voyage": ("voyage", "sailed", "sailing", "crossing", "emigration", "emigrated", "passage"),
    "school": ("school", "graduation", "confirmation"),
    "war service": ("war", "army", "navy", "service", "regiment"),
    "other": (),
}
"""The kinds of events, and the words of a name that tell the kind where nobody says it."""

JOINING = "and & und et y e en og och ja и i un ir a".split()
"""Words between the names of a couple."""

_BIRTH = (
    "{} geboren wurden|{} zur welt kam|{} zur welt kamen|nacer {}|{} nascere|nascere {}|{} was born|{} were born|"
    "{} being born|{} wurde geboren|{} wurden geboren|{} werd geboren|{} werden geboren|"
    "{} kam zur welt|{} sont nés|{} sont nées|naquit {}|{} naquit|{} nacieron|nacieron {}|{} nacque|{} nacquero|"
    "{} sono nati|{} nasceram|{} fødtes|{} er født|{} syntyivät|{} sündisid|{} родились|{} urodziła się|"
    "{} urodził się|{} się urodzili|{} dzimusi|{} dzimis|{} piedzimusi|{} gimusi|{} gimęs|i whānau a {}|"
    "whānautanga o {}|{}s geboorte|{}'s geboorte|"
    "{} was thought of|{} was even thought of|{} came along|{} came into the world|{} auf die welt kam|"
    "birth of {}|{}'s birth|{} geboren wurde|{}s geburt|geburt von {}|naissance de {}|naissance d'{}|"
    "{} est né|{} est née|nacimiento de {}|{} nació|nascita di {}|{} è nato|{} è nata|nascimento de {}|"
    "nascimento da {}|{} nasceu|geboorte van {}|{} geboren werd|{}s fødsel|{} blev født|{} ble født|{}s födelse|"
    "{} föddes|{} syntyi|{} sündis|{} sünd|{} sündi|{} sünni|{} sündimist|{} родился|{} родилась|{} się urodził|"
    "{} się urodziła|{} piedzima|{} gimė|{} se narodil|{} se narodila|"
    "nacer {}|naciera {}|naciese {}|{} naciera|o {} nascer|a {} nascer|{} nascer|{} nascesse|"
    "nació {}|è nato {}|è nata {}|nacque {}|nascesse {}|nasceu {}|nasceu o {}|nasceu a {}|nascer o {}|nascer a {}|"
    "sündis {}|родился {}|родилась {}|urodził się {}|urodziła się {}|piedzima {}|gimė {}|se narodil {}|"
    "se narodila {}|"
    "narodil se {}|narodila se {}|{} született|{} megszületett|{} születése"
)
_DEATH = (
    "morir {}|morire {}|{} morire|morrer {}|{} morrer|mourir {}|{} sterven|{} ist gestorben|{} ist tot|"
    "{} stierf|{} is overleden|{} mourut|{} falleció|falleció {}|{} faleceu|"
    "{} morì|{} mori|{} døde|{} avled|{} menehtyi|{} ir miris|{} mirusi|i mate a {}|matenga o {}|"
    "{}s dood|{}'s dood|{}s overlijden|overlijden van {}|{} dying|"
    "{} was killed|{} drowned|"
    "{} died|{} passed away|death of {}|{}'s death|{} starb|{}s tod|tod von {}|mort de {}|{} est mort|"
    "{} est morte|muerte de {}|{} murió|morte di {}|{} è morto|{} è morta|morte de {}|{} morreu|dood van {}|"
    "{} overleed|{}s død|{} døde|{}s död|{} dog|{} kuoli|{} suri|{} surm|{} surma|{} surmas|{} kuolema|"
    "{} kuolemaa|{} умер|{} умерла|{} umarł|{} umarła|{} nomira|{} mirė|{} zemřel|{} zemřela|"
    "{} gestorben war|{} gestorben ist|murió {}|morì {}|è morto {}|è morta {}|morreu {}|morreu o {}|morreu a {}|"
    "suri {}|"
    "умер {}|умерла {}|zmarł {}|zmarła {}|{} zmarł|{} zmarła|umarł {}|umarła {}|nomira {}|mirė {}|zemřel {}|"
    "zemřela {}|"
    "{} meghalt|meghalt {}|{} halála"
)
_MARRIAGE = (
    "{} married|{} got married|{} were married|{} was married|{} wed|wedding of {}|marriage of {}|{}'s wedding|"
    "{} heiratete|{} heirateten|{}s hochzeit|hochzeit von {}|mariage de {}|mariage d'{}|"
    "{} s'est marié|{} s'est mariée|{} se sont mariés|boda de {}|{} se casó|{} se casaron|matrimonio di {}|"
    "nozze di {}|"
    "{} si è sposata|{} si sono sposati|casamento de {}|{} casou|{} casaram|huwelijk van {}|bruiloft van {}|"
    "{} trouwde|{} trouwden|{}s bryllup|{} blev gift|{} giftet seg|{}s bröllop|{} gifte sig|{} menivät naimisiin|"
    "{} abiellus|{} abiellusid|свадьба {}|{} женился|{} вышла замуж|{} поженились|ślub {}|{} apprecējās|{} susituokė|"
    "{} se oženil|{} se vdala|{} se vzali"
)
_UNBORN = (
    "{} wasn't thought of|{} wasn't born|{} wasn't born yet|{} was not born yet|{} was not yet born|"
    "{} wasn't yet born|"
    "{} hadn't been born|{} hadn't been born yet|{} had not been born|{} war noch nicht geboren|"
    "{} noch nicht geboren war|{} n'était pas née|{} n'était pas né|{} n'était pas encore née|"
    "{} n'était pas encore né|{} no había nacido|{} todavía no había nacido|{} non era ancora nata|"
    "{} non era ancora nato|{} ainda não tinha nascido|{} was nog niet geboren|{} nog niet geboren was|"
    "{} var ikke født|{} var ikke født ennå|{} var inte född|{} var inte född än|{} ei ollut vielä syntynyt|"
    "{} polnud veel sündinud|{} ei olnud veel sündinud|{} ещё не родилась|{} ещё не родился|"
    "{} jeszcze się nie urodziła|{} jeszcze się nie urodził"
)
_GENITIVE: Mapping[str, str] = {
    "birth": "{} narození|{} narozením|narození {}|narozením {}|рождения {}|рождение {}|рождением {}|"
    "urodzenia {}|urodzeniu {}|urodzeniem {}|"
    "narodziny {}|narodzinach {}|narodzin {}|narodzinami {}|{} dzimšanas|{} dzimšana|{} gimimo|"
    "{} gimimas|{} gimimą|{} gimimu|{} dzimšanu|{} dzimšanai|{} sünd|{} sünni|{} sündi|{} syntymän|{} syntymää",
    "death": "{} smrti|{} smrtí|{} smrt|гибели {}|гибель {}|гибелью {}|smrti {}|smrt {}|smrtí {}|смерти {}|"
    "смерть {}|смертью {}|śmierci {}|śmierć {}|śmiercią {}|"
    "{} nāves|{} nāve|{} nāvi|{} mirtį|{} mirties|{} mirtis|{} surm|{} surma|{} kuoleman|{} kuolemaa",
    "marriage": "svatba {}|svatby {}|svatbě {}|svatbu {}|svatbou {}|свадьба {}|свадьбы {}|свадьбе {}|свадьбу {}|"
    "свадьбой {}|ślub {}|ślubu {}|ślubie {}|ślubem {}|wesele {}|wesela {}|weselu {}|weselem {}|{} kāzas|{} kāzām|"
    "{} kāzās|{} kāzu|{} vestuvės|{} vestuvių|{} vestuves|{} vestuvėse|{} pulm|{} pulmad|{} pulma|{} pulmi|"
    "{} pulmade|"
    "{} pulmas|{} häät|{} häiden|{} häitä|{} häissä",
}
"""Kind -> phrases of languages that inflect names: `{}` stands for a name with one of the endings `OF_NAMES`."""

INFLECTED: Mapping[str, tuple[str, ...]] = {kind: tuple(ways.split("|")) for kind, ways in _GENITIVE.items()}

OF_NAMES = frozenset("y i ě e u a ы и я а ей ой as es is us os ės io aus ia n en in".split())
"""What a name ends in behind “of”, in these languages, in the place of its last vowel or behind it."""

_CARRIED = (
    "expecting {}|pregnant with {}|carrying {}|{} was on the way|"
    "mit {} schwanger|schwanger mit {}|{} erwartete|enceinte de {}|"
    "attendait {}|embarazada de {}|esperaba a {}|incinta di {}|aspettava {}|grávida de {}|à espera de {}|"
    "in verwachting van {}|zwanger van {}|ventede {}|ventet {}|väntade {}|gravid med {}|odotti {}|ootas {}|ждала {}|"
    "w ciąży z {}|gaidīja {}|laukėsi {}|čekala {}"
)
_FUNERAL = (
    "{}'s funeral|funeral of {}|{}s beerdigung|beerdigung von {}|enterrement de {}|obsèques de {}|entierro de {}|"
    "funerale di {}|enterro de {}|begrafenis van {}|{}s begravelse|{}s begravning|{} matus|{} matused|{} hautajaiset|"
    "похороны {}|pogrzeb {}|pohřeb {}"
)
PERHAPS: Mapping[str, tuple[str, ...]] = {
    "birth": ("we had {}", "mum had {}", "{} arrived", "{} joined us"),
    "death": tuple(
        "{} fell|{} was lost|{} fiel|{} gefallen ist|{} gefallen war|{} langes|{} hukkus|{} kaatui|{} stupade|"
        "{} faldt|"
        "{} falt|{} est tombé|{} cayó|{} cadde|{} sneuvelde|{} погиб|{} poległ|{} padl|{} krito|{} elesett".split("|")
    ),
}
"""Kind -> phrases that may mean such an event of somebody, and something else too: it is asked."""

_OF: Mapping[str, tuple[str, ...]] = {
    of: tuple(ways.split("|"))
    for of, ways in {
        " de {}": " de {}| del {}| de la {}| du {}| do {}| da {}| de l'{}| des {}| dos {}| das {}| de los {}|"
        " de las {}| de mi {}| de ma {}| de mon {}",
        " di {}": " di {}| del {}| della {}| dell'{}| dei {}| delle {}| degli {}| di mia {}| di mio {}",
        " von {}": " von {}| vom {}| von der {}| meiner {}| meines {}| der {}| des {}",
        " van {}": " van {}| van de {}| van mijn {}",
        " of {}": " of {}| of my {}",
    }.items()
}
"""A word for “of” before a name → the same and those that stand before a word of kin, with its article or “my”."""


def _with_of(phrases: str) -> tuple[str, ...]:
    ways: dict[str, None] = {}
    for way in phrases.split("|"):
        of = next((of for of in _OF if way.endswith(of)), "")
        ways |= dict.fromkeys(f"{way.removesuffix(of)}{another}" for another in _OF[of]) if of else {way: None}
    return tuple(ways)


WAYS: Mapping[str, tuple[str, ...]] = {
    "birth": _with_of(_BIRTH),
    "death": _with_of(_DEATH),
    "marriage": _with_of(_MARRIAGE),
    "unborn": tuple(_UNBORN.split("|")),
    "carried": tuple(_CARRIED.split("|")),
    "funeral": _with_of(_FUNERAL),
}
"""Kind -> the phrases that mean such an event of somebody; `unborn` is the time before a birth, `carried` the
months before it; a `funeral` is some days after a death."""

OWN: Mapping[str, tuple[str, ...]] = {
    "birth": tuple(
        "i was born|my birth|ich geboren wurde|meine geburt|meiner geburt|je suis né|je suis née|ma naissance|nací|"
        "mi nacimiento|sono nata|sono nato|la mia nascita|eu nasci|nasci|ik geboren werd|mijn geboorte|jeg blev født|"
        "jeg ble født|min fødsel|jag föddes|min födelse|synnyin|syntymääni|ma sündisin|mina sündisin|minu sünd|"
        "minu sündi|я родился|я родилась|моего рождения|się urodziłam|się urodziłem|es piedzimu|aš gimiau|"
        "jsem se narodila|jsem se narodil|születtem".split("|")
    ),
    "marriage": tuple(
        "i married|i got married|i was married|we married|we got married|we were married|we were wed|my wedding|"
        "our wedding|our marriage|wir heirateten|wir geheiratet haben|wir geheiratet hatten|ich heiratete|"
        "unsere hochzeit|"
        "unserer hochzeit|nous nous sommes mariés|on s'est mariés|notre mariage|nos casamos|nos casáramos|"
        "nuestra boda|"
        "ci siamo sposati|il nostro matrimonio|nostro matrimonio|nostre nozze|nos casámos|nosso casamento|"
        "we trouwden|"
        "we getrouwd zijn|onze bruiloft|onze trouwdag|vi blev gift|vores bryllup|vi giftet oss|vi ble gift|"
        "bryllupet vårt|"
        "vårt bryllup|vi gifte oss|vårt bröllop|menimme naimisiin|häitämme|häidemme|me abiellusime|abiellusime|"
        "meie pulm|"
        "meie pulmad|meie pulmi|meie pulma|meie pulmade|мы поженились|наша свадьба|нашей свадьбы|нашей свадьбой|"
        "нашу свадьбу|się pobraliśmy|braliśmy ślub|nasz ślub|naszego ślubu|naszym ślubie|naszym ślubem|apprecējāmies|"
        "mūsu kāzas|mūsu kāzām|susituokėme|mūsų vestuvės|mūsų vestuvių|jsme se brali|jsme se vzali|naše svatba|"
        "naší svatby|naší svatbě|naší svatbou|összeházasodtunk|az esküvőnk|esküvőnk|az esküvőm|esküvőm|"
        "häitäni|häideni|häissäni|häissämme|häämme|hääni".split("|")
    ),
}
"""Kind -> the phrases that mean it where it is the narrator's own."""

ALONE: Mapping[str, tuple[str, ...]] = {
    "marriage": tuple(
        "wedding|pulm|pulmad|pulmi|pulma|hochzeit|mariage|noces|boda|matrimonio|nozze|casamento|bruiloft|huwelijk|"
        "bryllup|"
        "bryllupet|bröllop|bröllopet|häät|häitä|häiden|свадьба|свадьбы|ślub|ślubu|wesele|kāzas|kāzām|vestuvės|"
        "vestuvių|"
        "svatba|svatby|svatbě|svatbu|svatbou|свадьбе|свадьбу|свадьбой|ślubie|ślubem|wesela|weselu|weselem|kāzu|kāzās|"
        "vestuves|vestuvėse|pulmade|pulmas|pulmadest|häissä|häistä|esküvő|lakodalom|"
        "trouwdag|trouwerij|hochzeitstag|bryllupsdag|bryllupsdagen|bröllopsdag|bröllopsdagen|pulmapäev|"
        "hääpäivä|marriage|wedding day|svatební den|dzień ślubu|esküvő napja".split("|")
    ),
    "move": tuple(
        "move|we moved|we moved house|we shifted|we shifted house|shift|we flitted|flitting|we relocated|relocation|"
        "change of house|moving house|removal|umzug|wir umzogen|verhuizing|we verhuisden|déménagement|"
        "mudanza|trasloco|mudança|flytningen|flytting|flyttingen|flytten|vi flyttede|vi flyttet|vi flyttade|muutto|"
        "muuton|muuttoa|muutimme|kolimine|kolimise|kolimist|kolisime|переезд|переезда|переездом|мы переехали|"
        "przeprowadzka|przeprowadzki|przeprowadzką|przeprowadzce|pārcelšanās|persikraustymas|persikraustymo|"
        "stěhování|"
        "wir umzogen|wir zogen um|nous avons déménagé|nos mudamos|nos mudámos|ci siamo trasferiti|vi flyttede|"
        "vi flytta|"
        "me kolisime|meie kolisime|мы переезжали|się przeprowadziliśmy|przeprowadziliśmy się|pārcēlāmies|"
        "persikraustėme|"
        "jsme se přestěhovali|jsme se stěhovali|elköltöztünk|költöztünk".split("|")
    ),
    "voyage": tuple(
        "voyage|voyage out|crossing|passage|passage out|we sailed|we emigrated|we came over|we came out|we left|"
        "emigration|emigrating|boat coming out|boat coming over|boat out|boat over|ship coming out|ship coming over|"
        "ship out|ship over|the ship|the boat|board ship|way out|way over|sailing|departure|we departed|"
        "we set sail|setting sail|arriving|arrival|we arrived|we landed|coming out|coming over|leaving|"
        "leaving home|we left home|coming out on the boat|coming over on the boat|way over|überfahrt|auswanderung|"
        "wir auswanderten|traversée|émigration|travesía|emigración|traversata|emigrazione|travessia|emigração|"
        "overtocht|emigratie|overfart|overfarten|udvandringen|utvandringen|överresan|ylitys|maastamuutto|"
        "maastamuuton|muutto|ülesõit|ülesõidu|"
        "väljaränne|väljarände|переезд|переезда|эмиграция|эмиграции|rejs|rejsu|emigracja|emigracji|emigrācija|"
        "emigrācijas|emigracija|emigracijos|plavba|plavby|emigrace".split("|")
    ),
}  # fmt: skip
"""Kind -> words that may mean any event of the kind: it is asked which, and even one is asked about."""

_ALIKE = tuple(
    frozenset(words.split("|"))
    for words in (
        "fire|blaze|burned|burnt|põles|abbrannte|niederbrannte|brûla|brûlé|ardió|bruciò|brand|feuer|incendie|"
        "incendio|incêndio|branden|brannen|tulipalo|tulipalon|tulipaloa|tulekahju|"
        "põleng|"
        "põlengu|пожар|пожара|пожаром|pożar|pożaru|pożarem|pożarze|пожаре|пожару|požáře|tulipalossa|tulekahjus|"
        "tulekahjuks|ugunsgrēkam|gaisrą|gaisre|tűz|tűzvész|ugunsgrēks|ugunsgrēka|ugunsgrēku|gaisras|gaisro|"
        "požár|"
        "požáru|"
        "požárem|ahi",
        "fled|flight|escape|escaped|we fled|we escaped|we had fled|we had to flee|"
        "flucht|flohen|geflohen|fuite|huida|fuga|vlucht|gevlucht|flugt|flukt|flykt|flykten|"
        "pako|pakoa|paon|pakenimme|põgenemine|põgenemise|põgenemist|põgenesime|me põgenesime|meie põgenesime|"
        "wir flohen|wir geflohen sind|wir flüchteten|"
        "nous avons fui|huimos|siamo fuggiti|fugimos|we vluchtten|vi flygtede|vi flyktet|vi flydde|мы бежали|"
        "uciekliśmy|"
        "utekli jsme|jsme utekli|elmenekültünk|бегство|бегства|ucieczka|ucieczki|bēgšana|"
        "pabėgimas|útěk|útěku|menekülés",
        "flood|floods|hochwasser|überschwemmung|inondation|inundación|alluvione|inundação|overstroming|watersnood|"
        "oversvømmelsen|flommen|översvämningen|tulva|tulvan|tulvaa|üleujutus|üleujutuse|üleujutust|наводнение|"
        "наводнения|"
        "powódź|powodzi|plūdi|plūdiem|potvynis|potvynio|povodeň|povodně|povodní|povodni|árvíz|waipuke",
    )
)
"""Nouns of what happens to families, in the languages: whoever tells an event in one may call it by another."""

_FIRE = _ALIKE[0]


def called_otherwise(name: str) -> frozenset[str]:
    """The words that may mean what an event's name tells in another word or language."""
    words = set(re.findall(r"\w+", name.casefold()))
    return frozenset().union(*(alike for alike in _ALIKE if alike & words))


_BURNED = tuple(
    "{} burned|{} burned down|{} burnt|{} burnt down|{} burned to the ground|{} caught fire|{} maha põles|"
    "{} põles maha|{} põles|{} abbrannte|{} brannte|{} niederbrannte|{} abgebrannt ist|{} abgebrannt war|{} brûla|"
    "{} a brûlé|{} se quemó|{} ardió|{} bruciò|{} queimou|{} ardeu|{} afbrandde|{} brændte|{} brant|{} brann|"
    "{} brann ner|{} paloi|{} сгорел|{} сгорела|сгорел {}|сгорела {}|{} spłonął|{} spłonęła|{} nodega|{} sudegė|"
    "{} shořel|{} leégett".split("|")
)


_HOMES = frozenset(
    "house home homestead cottage farm farmhouse place maja kodu talu haus hof heim maison ferme casa granja fattoria "
    "huis boerderij hus gård gården hjem hem talo koti дом dom gospodarstwo māja namas dům ház".split()
)
"""What a fire in a family is of as a rule; each may be told for another."""


def burned(name: str, pieces: Set[str]) -> Iterator[str]:
    """The clauses by which somebody may tell of a fire, with what burned: as its name has it, or their home."""
    words = set(re.findall(r"\w+", name.casefold()))
    if _FIRE & words:
        is_home = bool(_HOMES & words) or not words - _FIRE - _OF_A_FIRE
        things = words | (_HOMES if is_home else frozenset())
        yield from (way.format(piece) for way in _BURNED for piece in sorted(things & pieces))


_OF_A_FIRE = frozenset("the great big our der die das große grosse suur suure le la les l el grand grande".split())
"""Words beside a fire that do not tell what burned."""

_LINKS = frozenset("of to from in on at with von nach zu in de du di da van naar til till fra från do z w".split())


WHITHER: Mapping[str, tuple[str, ...]] = {
    "move": tuple(
        "we moved to {}|we shifted to {}|we came to {}|we arrived in {}|we arrived at {}|arriving in {}|coming to {}|"
        "we went to {}|we settled in {}|we relocated to {}|"
        "we came to live in {}|moving to {}|the shift to {}|"
        "the move to {}|wir nach {} zogen|wir nach {} umzogen|umzug nach {}|"
        "wir nach {} gezogen sind|wir nach {} gezogen waren|wir nach {} umgezogen sind|"
        "nous avons déménagé à {}|déménager à {}|déménagement à {}|mudanza a {}|trasferirci a {}|trasferimento a {}|"
        "trasloco a {}|"
        "mudança para {}|verhuizing naar {}|flytningen til {}|flyttingen til {}|flytten till {}|"
        "nos mudamos a {}|mudarnos a {}|mudarse a {}|"
        "ci siamo trasferiti a {}|nos mudámos para {}|we naar {} verhuisden|"
        "vi flyttede til {}|vi flyttet til {}|vi flyttade till {}|muutimme {}|me kolisime {}|kolisime {}|"
        "me {} kolisime|{} kolisime|kolimine {}|"
        "мы переехали в {}|"
        "przeprowadziliśmy się do {}|pārcēlāmies uz {}|persikraustėme į {}|jsme se přestěhovali do {}|"
        "költöztünk {}".split("|")
    ),
    "voyage": tuple(
        "we sailed to {}|we came to {}|coming to {}|coming out to {}|going to {}|sailing to {}|arriving in {}|"
        "arrival in {}|we came out to {}|we emigrated to {}|we arrived in {}|wir nach {} kamen|"
        "wir nach {} gingen|wir nach {} auswanderten|nous sommes arrivés en {}|nous sommes venus en {}|llegamos a {}|"
        "siamo arrivati in {}|chegámos a {}|we naar {} kwamen|vi kom til {}|vi kom till {}|tulimme {}|me tulime {}|"
        "tulime {}|мы приехали в {}|przyjechaliśmy do {}|ieradāmies {}|atvykome į {}|jsme přijeli do {}|"
        "érkeztünk {}".split("|")
    ),
}  # fmt: skip
"""Kind -> the phrases that may mean such an event of which it is told whither, with that place."""

_TO_A_PLACE = re.compile(r"(?:^|.* )(?:to|nach|naar|til|till|do|à|en|a) (\w[\w ]*)$")


THEIR_WEDDING = tuple(
    "they married|they got married|they were married|they wed|they were wed|sie heirateten|sie geheiratet haben|"
    "ils se sont mariés|se casaron|si sposarono|si sono sposati|se casaram|casaram|ze trouwden|de blev gift|"
    "de giftet seg|de gifte sig|he menivät naimisiin|nad abiellusid|они поженились|pobrali się|wzięli ślub|"
    "apprecējās|susituokė|se vzali".split("|")
)
"""The phrases that mean the wedding of whoever was named before."""

LIVED = tuple(
    "we lived in {}|we were living in {}|we were in {}|wir in {} wohnten|wir in {} lebten|nous habitions {}|"
    "nous habitions à {}|nous vivions à {}|vivíamos en {}|abitavamo a {}|vivevamo a {}|morávamos em {}|"
    "vivíamos em {}|"
    "we in {} woonden|vi boede i {}|vi bodde i {}|asuimme {}|me elasime {}|elasime {}|мы жили в {}|"
    "mieszkaliśmy w {}|dzīvojām {}|gyvenome {}|bydleli jsme v {}|jsme bydleli v {}|žili jsme v {}|"
    "jsme žili v {}|me {} elasime|{} elasime".split("|")
)
"""The phrases that tell the time in a place, which began with the move there."""


def is_inflected(word: str, name: str) -> bool:
    """Whether a word may be a name in another case: `ruthi` of `ruth`."""
    stem = name[:-1] if name[-1:] in "aeio" else name
    begun = [word[len(way) :] for way in (name, stem) if len(way) >= _SHORTEST_NAME and word.startswith(way)]
    return word != name and any(end in OF_NAMES for end in begun)


_SHORTEST_NAME = 3


def whither(name: str) -> str:
    """The place that an event's name ends with (`we moved to Leeds`); empty for another name."""
    match = _TO_A_PLACE.match(bare(name))
    return match[1] if match else ""


def kind_of(name: str) -> str:
    """The kind that the words of a name tell; `other` where they tell none."""
    words = set(name.casefold().replace("’", " ").replace("'", " ").split())
    if words & _FIRE:
        return "other"  # “the house burned down” is no move
    return next((kind for kind, telling in KINDS.items() if words & {*telling, *ALONE.get(kind, ())}), "other")


def unled(name: str) -> str:
    """`The wedding` and `When we sailed` without what stands before and around, in the letters as told."""
    return _LED.sub("", " ".join(name.split()).strip(" .,?!"), count=1)


_LED = re.compile(r"(?:when )?(?:the day )?(?:that )?(?:the )?", re.IGNORECASE)


def bare(name: str) -> str:
    """The words that mean an event of this name anywhere, in small letters."""
    return unled(name).casefold()


def as_pattern(way: str) -> re.Pattern[str]:
    """A phrase of these tables as a pattern, in letters of any size; its group is the name that stands for `{}`."""
    return re.compile(re.escape(way).replace(r"\{\}", "(.+)"), re.IGNORECASE)


def shorter(name: str) -> tuple[str, ...]:
    """The words that say less than a name: `move` of `the move to Dunedin`, `christening` of `Anna’s christening`."""
    words = bare(name)
    parted = words.split()
    end = next((at for at, word in enumerate(parted) if word in _LINKS and at), 0)
    owned = re.split(r"['’]s? ", words)
    return tuple(filter(None, (" ".join(parted[:end]), owned[-1] if len(owned) > 1 else "")))


PAST = dict(
    row.split("-")
    for row in "sink-sank fall-fell break-broke begin-began win-won sell-sold buy-bought build-built leave-left "
    "come-came go-went fly-flew get-got run-ran "
    "find-found lose-lost burn-burnt meet-met freeze-froze give-gave take-took".split()
)
"""Verbs of what happens in a family whose past is not in -ed, by their plain form."""


def as_clause(name: str) -> Iterator[str]:
    """`shop opened` of `the shop opening`, `the opening of the shop` and `the shop’s opening`: what English says with
    the verb instead of its noun in -ing."""
    words = bare(name).replace("’", "'").split()
    if "of" in words[1:-1]:
        at = words.index("of", 1)
        words = [*words[at + 1 :], *words[:at]]
        words = words[1:] if words[0] in ("the", "our", "a") else words
    (*of, noun) = words or [""]
    stem = noun.removesuffix("ing")
    if not of or stem == noun or len(stem) < _SHORTEST_VERB:
        return
    whose = " ".join(of).removesuffix("'s")
    plain = [stem, f"{stem}e", stem[:-1] if stem[-1] == stem[-2] else stem]
    past = {PAST[verb] for verb in plain if verb in PAST} | {f"{stem}ed"}
    yield from (f"{whose} {joined}{verb}" for verb in sorted(past) for joined in ("", "was ", "were "))


_SHORTEST_VERB = 2
