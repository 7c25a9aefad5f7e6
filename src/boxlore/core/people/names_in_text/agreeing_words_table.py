"""Adjectives and things of many languages, folded; made by make_agreeing_words.py beside the tests.

Some 3,300 words a language (5,500 of Estonian) were taken, from dictionaries that have many times as many, and nothing
else that these say of a word. They stand here under the licences of their sources, not under the project's own:

    Estonian    Vabamorf's lexicon, by `estnltk` 1.7.5: Apache License 2.0 (or GPL 2.0)
    Polish      SGJP, by `morfeusz2` 1.99: BSD licence of two clauses (from memory)
    Russian     OpenCorpora, by `pymorphy3-dicts-ru` 2.4: CC BY-SA 3.0 (its program: MIT licence)
    Norwegian   Norsk Ordbank of Nasjonalbiblioteket, by `spacy-lookups-data` 1.0.5: CC BY 4.0
    French, Spanish, Dutch
                `spacy-lookups-data` 1.0.5: MIT licence
    Czech, Finnish, German, Swedish
                `simplemma` 2.0.0: MIT licence; its lists are made of Michal Měchura's (Open Database License), of
                Wiktionary's by Kaikki (CC BY-SA), of FreeLing's, spaCy's and UniMorph's, and of Eleni Metheniti's
                Wikinflection corpus (CC BY 4.0)
    which words are common
                Robyn Speer's `wordfreq` 3.1.1: lists under CC BY-SA 4.0 (its program: Apache License 2.0)
    small words `wordfreq` and Vabamorf too; `stopwordsiso` 0.7.1: MIT licence
"""

AGREEING: dict[str, tuple[str, str]] = {
    "cs": (
        """
        americka americke americky anglicka anglicke anglicky australska australske australsky automobilova
        automobilove automobilovy barevna barevne barevny bezna bezne bezny bezpecna bezpecne bezpecny bila bile bily
        blba blbe blby blizka blizke blizky bohata bohate bohaty britska britske britsky brnenska brnenske brnensky
        byvala byvale byvaly casova casove casovy cela cele celkova celkove celkovy cely cerna cerne cerny cerstva
        cerstve cerstvy cervena cervene cerveny ceska ceske cesky cestna cestne cestny chemicka chemicke chemicky
        chuda chude chudy chytra chytre chytry cinska cinske cinsky cista ciste cisty citliva citlive citlivy ctvrta
        ctvrte ctvrty damska damske damsky dana dane danova danove danovy dany detska detske detsky devata devate
        devaty divna divne divny divoka divoke divoky dlouha dlouhe dlouhodoba dlouhodobe dlouhodoby dlouholeta
        dlouholete dlouholety dlouhy dobra dobre dobry dokonala dokonale dokonaly doprovodna doprovodne doprovodny
        dospela dospele dospely dostatecna dostatecne dostatecny dostupna dostupne dostupny dovolena draha drahe drahy
        dramaticka dramaticke dramaticky drevena drevene dreveny drobna drobne drobny drsna drsne drsny druha druhe
        druhy dulezita dulezite dulezity ekonomicka ekonomicke ekonomicky elektricka elektricke elektricky energeticka
        energeticke energeticky evropska evropske evropsky falesna falesne falesny filmova filmove filmovy fotbalova
        fotbalove fotbalovy francouzska francouzske francouzsky graficka graficke graficky hezka hezke hezky
        historicka historicke historicky hloupa hloupe hloupy hluboka hluboke hluboky hneda hnede hnedy hnusna hnusne
        hnusny hodna hodne hodny hokejova hokejove hokejovy hola hole holy horka horke horky hospodarska hospodarske
        hospodarsky hotova hotove hotovy hrda hrde hrdy hrozna hrozne hrozny hruba hrube hruby husta huste husty
        internetova internetove internetovy islamska islamske islamsky italska italske italsky izraelska izraelske
        izraelsky jaka jake jaky japonska japonske japonsky jasna jasne jasny jedina jedine jedinecna jedinecne
        jedinecny jediny jednoducha jednoduche jednoduchy jednotna jednotne jednotny jihoceska jihoceske jihocesky
        jihomoravska jihomoravske jihomoravsky jina jine jiny jista jiste jisty kanadska kanadske kanadsky karlovarska
        karlovarske karlovarsky kazda kazde kazdy klasicka klasicke klasicky klidna klidne klidny komunisticka
        komunisticke komunisticky konecna konecne konecny kopecka kopecke kopecky kralovska kralovske kralovsky krasna
        krasne krasny kratka kratke kratky kruta krute kruty ktera ktere ktery lehka lehke lehky lekarska lekarske
        lekarsky letecka letecke letecky leva leve levna levne levny levy liberecka liberecke liberecky lidska lidske
        lidsky lonska lonske lonsky mala male maly mestska mestske mestsky mila mile mily mimoradna mimoradne
        mimoradny minula minule minuly mlada mlade mlady modra modre modry mozna mozne mozny mrtva mrtve mrtvy muj
        muzska muzske muzsky nadherna nadherne nadherny nadsena nadsene nadseny naprosta naproste naprosty narocna
        narocne narocny nebezpecna nebezpecne nebezpecny necela necele necely nechutna nechutne nechutny nejaka nejake
        nejaky nektera nektere nektery nemecka nemecke nemecky nemocna nemocne nemocny neprijemna neprijemne
        neprijemny neuveritelna neuveritelne neuveritelny neviditelna neviditelne neviditelny nezavisla nezavisle
        nezavisly nizka nizke nizky nova nove novy nutna nutne nutny obcanska obcanske obcansky obecna obecne obecny
        oblibena oblibene oblibeny obrovska obrovske obrovsky obycejna obycejne obycejny ocekavana ocekavane ocekavany
        ochotna ochotne ochotny odborna odborne odborny odlisna odlisne odlisny odpovedna odpovedne odpovedny
        olomoucka olomoucke olomoucky olympijska olympijske olympijsky omezena omezene omezeny opacna opacne opacny
        opila opile opily opravdova opravdove opravdovy osma osme osmy ostra ostre ostry otevrena otevrene otevreny
        pardubicka pardubicke pardubicky pata pate paty pekna pekne pekny pevna pevne pevny plastova plastove plastovy
        platna platne platny plna plne plny plzenska plzenske plzensky podezrela podezrele podezrely podobna podobne
        podobny podrobna podrobne podrobny politicka politicke politicky polska polske polsky pomala pomale pomaly
        poradna poradne poradny poskozena poskozene poskozeny postovne potrebna potrebne potrebny pouha pouhe pouhy
        prakticka prakticke prakticky pratelska pratelske pratelsky prava prave pravidelna pravidelne pravidelny pravy
        prazdna prazdne prazdny prazska prazske prazsky presna presne presny pribuzna pribuzne pribuzny prijemna
        prijemne prijemny prima prime primy pripadna pripadne pripadny pripravena pripravene pripraveny prirozena
        prirozene prirozeny pristupna pristupne pristupny problem prosta proste prosty prumerna prumerne prumerny
        rakouska rakouske rakousky realna realne realny rodinna rodinne rodinny romanticka romanticke romanticky
        rozsahla rozsahle rozsahly roztomila roztomile roztomily rozumna rozumne rozumny ruska ruske rusky ruzova
        ruzove ruzovy rychla rychle rychly sama same samostatna samostatne samostatny samotna samotne samotny samy
        schopna schopne schopny seda sede sedma sedme sedmy sedy sesta seste sesty sikovna sikovne sikovny silena
        silene sileny silna silne silny siroka siroke siroky skutecna skutecne skutecny skvela skvele skvely slaba
        slabe slaby sladka sladke sladky slavna slavne slavny slovenska slovenske slovensky slozita slozite slozity
        slusna slusne slusny smutna smutne smutny snadna snadne snadny soucasna soucasne soucasny soukroma soukrome
        soukromy sovetska sovetske sovetsky spanelska spanelske spanelsky spatna spatne spatny specificka specificke
        specificky spojena spojene spojeny spokojena spokojene spokojeny spolecenska spolecenske spolecensky spolecna
        spolecne spolecny spravedliva spravedlive spravedlivy spravna spravne spravny stara stare stary stastna
        stastne stastny stedra stedre stedry stejna stejne stejny strasna strasne strasny stredoceska stredoceske
        stredocesky stribrna stribrne stribrny studena studene studeny stylova stylove stylovy sucha suche suchy svata
        svate svaty svedska svedske svedsky svetova svetove svetovy svobodna svobodne svobodny svuj svycarska
        svycarske svycarsky system tajna tajne tajny takova takove takovy technicka technicke technicky temna temne
        temny tepla teple teply tezka tezke tezky ticha tiche tichy tlusta tluste tlusty trestna trestne trestny tvrda
        tvrde tvrdy tvuj typicka typicke typicky ucinna ucinne ucinny ukrajinska ukrajinske ukrajinsky umela umele
        umelecka umelecke umelecky umely unavena unavene unaveny uplna uplne uplny uprimna uprimne uprimny urcena
        urcene urceny urcita urcite urcity uspesna uspesne uspesny utera utere utery uvedena uvedene uvedeny uzasna
        uzasne uzasny uzavrena uzavrene uzavreny uzitecna uzitecne uzitecny valecna valecne valecny vazena vazene
        vazeny vazna vazne vazny vdecna vdecne vdecny vecna vecne vecny vedecka vedecke vedecky velika velike veliky
        velka velke velky veprove verejna verejne verejny verna verne verny vesela vesele vesely veskera veskere
        veskery vhodna vhodne vhodny vitezna vitezne vitezny vojenska vojenske vojensky volna volne volny vstupne
        vtipna vtipne vtipny vyborna vyborne vyborny vyjimecna vyjimecne vyjimecny vykonna vykonne vykonny vyrazna
        vyrazne vyrazny vyrovnany vysoka vysoke vysoky vyznamna vyznamne vyznamny vzacna vzacne vzacny zabavna zabavne
        zabavny zadna zadne zadny zajimava zajimave zajimavy zalozena zalozene zalozeny zamilovana zamilovane
        zamilovany zaverecna zaverecne zaverecny zavisla zavisle zavisly zbytecna zbytecne zbytecny zdrava zdrave
        zdravy zelena zelene zeleny zelezna zelezne zelezny zenata zenate zenaty zenska zenske zensky zidovska
        zidovske zidovsky ziva zive zivy zkusena zkusene zkuseny zla zlata zlate zlaty zle zlinska zlinske zlinsky
        zluta zlute zluty zly zminena zminene zmineny znacna znacne znacny znama zname znamy zodpovedna zodpovedne
        zodpovedny zranena zranene zraneny zvana zvane zvany zvedava zvedave zvedavy zvykla zvykle zvykly
        """,
        """
        absence absolvent adaptace adela adopce adrenalin adresa advokat agent agentura agrese akademie akce akcie
        aktivita album alergie alexandr alfa algoritmus alkohol alternativa amater ambice ambulance analytik analyza
        andel anglictina anketa aparat aplikace arch archa architekt architektura archiv arcibiskup areal argument
        armada asistent asociace aspekt atentat atlet atmosfera atrakce audio aukce auto autobus automat automobil
        autorita bahno bakterie balicek balik balkon banda bar barak barva basen basketbal basta baterie batoh bazar
        baze bazen beh beran beranek beseda bestie bezpecnost bible bida bilek bio biologie biskup bitcoin bitva blaho
        blazen blbost blesk blizkost blok bob bod bohyne boj bojiste bok bolest bomba bonus bordel borovice bota bouda
        boure box bracha bratrstvo breh bremeno bricho brigada brod bronz brouk broz bryle budik budoucnost buh bulvar
        bunda burza business bydliste byk caj carodejnice cas casopis cast castice cedule celek celo cena centrala
        centrum cenzura cepice cerno cert certifikat cesnek cesta cestina chalupa chaos charita chata chemie
        chemikalie chirurg chlad chladno chlap chlapecek chlapek chlapik chobotnice chod chodba choroba chov chram
        chudak chudoba chut chvile chyba cibule cil cin cinnost cirkev cirkus cislo cit citlivost clen clun cokolada
        ctvrtina cukr curak cyklus dalekohled dalnice dama dar darce darek datum dav debata dech decko dedek definice
        dejepis dejiny dekret delegace delta demokracie demokrat demon demonstrace deprese dest detail detektiv devce
        dialog dieta dik dil dilema dilna dira disciplina disk diskuse diskuze dispozice divadlo divak divize dluh
        dnesek dno doba dobro dobytek dodatek dohled dohoda dojem doklad dokument dolar domacnost domek domov dopad
        dopis dort dostatek dostupnost dotace dotek dovednost dovoz drama drat drazba dres drevo droga dron druh
        druzice druzstvo drzost dub duch duchodce duha dukaz dul dulezitost dum dusledek duvera duvod dvere dvojice
        dvur dynastie dziny dzungle edice efekt ego ekonom elektrarna elektrina emise emoce encyklopedie energie
        epidemie epizoda eso etapa euro evoluce existence exkurze expanze expedice experiment expert exploze fakt
        fakulta fanousek fantazie farma fasada faul faze fazole federace fenomen festival film filosofie filozofie
        filtr finance firma flek florbal fond forma formace fotbal fotoaparat fotografie frakce frank fraze frekvence
        fronta funkce fuze galaxie galerie garaz gauc generace geometrie gesto gigant gol granat grant green gulas
        guverner gymnazium had hajzl hala hanba havarie hazard helma heslo historie hit hlad hladina hlas hlava hlidac
        hloupost hluk hlupak hmota hmotnost hnev hnizdo hoch hodina hodinky hodnost hodnota hokej honda hora horko
        hospoda hotovost houba house housle hovado hovno hrac hrad hradek hradiste hranice hrbet hrbitov hrdina hrdlo
        hrdost hreben hrich hriste hrnek hrob hromada hrozba hruza hudba hul husa hustota hvezda idea ideal identita
        idiot ikona ilustrace iluze imperium implementace imunita infarkt infekce informace inspekce inspirace
        instituce inteligence intenzita interakce interier internet interval invaze investice inzenyr inzerat irena
        ironie islam izolace jablko jadro jas jatra jazyk jazz jednoduchost jednota jelen jerab jeskyne jev jeviste
        jezek jezero jezirko jidelna jidlo jih jiskra jistota jizda jmeno jogurt jojo kabat kabel kachna kafe kakao
        kalhotky kalhoty kalich kamarad kamen kamenice kamera kampan kanal kanalizace kancler kandidat kapacita kapela
        kapitola kaple kapr kariera karta kase kasel kat katastrofa katedra kategorie kauce kauza kava kavarna ker
        kilo kilometr kino kladivo klasifikace klavesnice klavir klic klid klient klimatizace klip klobouk kloub klub
        kmen kniha knihovna koalice kobra kocour kod koeficient kohout kolac kolecko kolega kolegyne kolej kolekce
        kolektiv koleno kolo kolona kolotoc kombinace komedie kometa komiks komin komise komora kompetence kompozice
        kompromis komunikace komunismus komunita koncert kondom konfederace konference konflikt konicek konstrukce
        kontakt kontext kontinent konto kontrakt kontrola konverzace kop koren koruna korupce kos kosile kost kostra
        kote koule koupel koupelna kousek koutek kouzlo kov kovarik koza kozel krabice kradez kraj krajina kralik
        krasa kratasy krava kravina krb kresba kreslo krest krestan kreten krev kridlo kritik krizek krk krok krouzek
        kruh krystal kseft ksicht kucera kuchyne kufr kukurice kultura kun kura kuraz kure kurs kurt kurva kus kuze
        kvalita kvet kyselina kyslik kytara laborator lavice lec lecba led lednice legie leginy legrace lek lekce len
        letadlo letiste letoun lev levice lez lhuta licence lidstvo liga likvidace limit linie list listek listina
        literatura litr lod logo lokalita loket lokomotiva lom loterie loupez lov loznice lucerna luna luzko lyze
        lzice mafie magie majetek malba malir mandat mandle manevr mapa maraton masaz maslo maso matej material matice
        matrace maximum medaile medicina meditace medved melodie mena mensina mesic mestecko mesto metoda metr
        metropole mez mezera mic mikina mikrofon milice milion milost miminko mimino mince minimum ministerstvo
        ministr ministryne minulost minuta mir mira mise mistnost misto mistr mladik mleko mlha mliko mlyn mnich mobil
        moda model modlitba moment monarchie most motocykl motto moudrost mozek moznost mrakodrap mraz mrcha mrkev
        mrtvola mse munice mura muslim mustek mutace muzeum muzikal muzstvo mydlo mysl mytus mzda naboj nabytek nadace
        nadech nadeje nadrz nahoda nahrada naklad nakup nalada nalez naloz namestek namet namornictvo napad napoj
        naprava naramek narod narok narozeniny narust nasledek nastroj nastup nastupce nastupiste nater nausnice navod
        navrh navsteva nazev naznak nebe nedostatek nehoda nemcina nemoc nemocnice nemovitost nenavist nesmysl
        neuspech nevolnost nezavislost nit noha nora norma nos nosic notebook novela noviny nuda nudle nuz nuzky obal
        obcan obchod obchvat obdiv obed obet obhajoba objekt objem objev oblast oblek oblicej obloha oblouk obnova
        obojek obrad obrana obrance obraz obrazek obsah obsluha obtiznost obuv obvod obyvatelstvo ocas ocel ocet
        ochota ochrana ochrance odchod oddil odev odhad odjezd odkaz odlet odmena odpad odpocinek odpoved odpovednost
        odruda odvaha odvoz ohen ohlas ohled ohnostroj okamzik okno oko okraj okres okruh okupace olej olympiada omega
        omluva opak opera operace opice opozice oprava optimismus orchestr ordinace organ organismus organizace
        orientace orisek osa osada oslava osoba osobnost ostrov ostuda osud otrava otres otrok ovce ovladac ovoce
        pacient palac palivo pamet panda pandemie panel panev panorama papez papir par parada parek park parkoviste
        parlament parodie parta partie pas pasaz pasmo past pasta pat patro pavouk paze pecet pecivo pejsek peklo
        penis penize penze pepr perla personal pes pest pevnost pila pilir pirat pisek pisen pismeno pismo pistole
        pitomost pivko pivo pivovar pizza plac plamen plan planeta plat platba platno plavba plavidlo plavky plaz
        plemeno plice plod plot plyn pobyt pocatek pocest pocet pochod pochop pocin pocit pocitac pocta podil podium
        podlaha podnet podnik podpis podpora podvod pohar pohled pohlednice pohoda pohreb pohyb pojem pojistovna
        poklad pokladna pokles pokoj pokrm pokrok pokus pokuta pokyn pole polibek police policie politik politolog
        polocas poloha poloostrov polovina pomer pomoc pomsta popel popelnice popis poplatek poprava populace poradek
        porce porno porod porota portret porucha porucik poslankyne poslech post posta postava postoj postreh postup
        posudek posun pot potencial potiz potok potomek potrat potreba poust pouto pouzdro povaha povel povest
        povinnost povrch pozadavek pozar pozemek pozice pozornost prace prach pracoviste pracovnice pradlo pramen
        prasatko prase prasek pravda pravice pravidlo pravo pravomoc praxe prazdniny prd prdel prechod predchudce
        predmet predpis predpoklad predseda predsedkyne predstava preference prehrada prehravac preklad prelom premie
        prepis prestavba prestupek presun prevod prevoz prevrat prezentace prezident pribeh prichod pricina prihoda
        prijem prijemce prijezd prikaz priklad prikop prilezitost priliv priloha princ princezna princip priorita
        pripad priplatek priprava priroda prirustek pristav pristroj pristup prisun pritelkyne pritomnost privoz prize
        procento proces prodavac prodej prodejce prodejna produkt program prohlizec prohra projekt projev promena
        propast prostredek protest protokol proud provaz provize provoz prsa prst prsten pruchod pruh prukaz prumysl
        pruvod pruvodce pruzkum prvek psenice psycholog psychologie ptak publikace publikum puda pulnoc pult pusa
        puvab puvod puzzle pyzamo radar radio radnice radost raj rak raketa raketoplan rakev rakovina rameno rasa
        rasismus raze reakce rec recenze recepce redukce referendum reforma region rehabilitace rejstrik reklama
        rekonstrukce rekord remeslo remiza reportaz reporter reprezentace restaurace revoluce rez rezervace rezim
        reziser ridic rise rizek riziko robot rod rodic roh role ropa rosa rosol rostlina rovnice rovnost rozchod
        rozdil rozhlas rozhled rozhledna rozkaz rozmanitost rozmer rozpocet rozsudek roztok rozum rozvod rozvoj rozvrh
        rukavice ruze ryba rychlik rychlost rys rytir rytmus sad sada sako sal salat salek samice samostatnost
        sampionat sance sankce satek satelit sauna sazba scena schema schodiste schopnost schuze sebevrazda sedadlo
        sef segra sekce semeno sen senat serial serie servis sesit severozapad seznam shoda sidliste signal sila
        silnice sip sit situace sjezd sklad skladba skladiste sklenice sklep sklizen sklo skoda skok skokan skola
        skrin skupina skutecnost skutek slabost slava slavik slavnost slepice sleva slib slon sloup sloupek slovicko
        slovo sluch slunce slunicko sluzba smartphone smer smernice smetana smich smlouva smrad smrk smrt smula smutek
        smutno smysl snaha snatek snemovna snih snimek socha soft software sok sokol souboj soucasnost soucast soucek
        soucet soucit soud soudce soudkyne soudruh souhlas souper soustava soustrast soutez souvislost spanek
        spekulace sperk spolecnost spolek spoluprace sporitelna sport spoust spousta sprava spravce spravedlnost
        sprcha sranda srdce srst stabilita stabilizace stadion stado stafeta stan stanice stanoviste starosta start
        statecnost statek status stav stavba steak stena stin stipendium stit stiznost stopa strach strategie straz
        strazce strecha stred stredisko stredovek strela strelnice stres stret stribro strih stroj strom strop
        struktura student stul stupen styk styl subjekt sucho sud sukne sul svacina svah sval svatba svatek svaz
        svazek svedek sverak svet svetlo svetr svoboda sykora symbol sympatie syr tabak tabule tah talir tank tatra
        technik technologie telefon teleso televize telo tendence tenis teorie teplaky teplo teplota terapie terasa
        teren termin tesla test testo text tezba teziste ticho tis tiskarna titan titul titulek tkan tlacitko tlak tma
        totoznost touha tovarna tramvaj transformace trasa trat trauma trava trend trener trest tretina trh tricko
        trida triko trilogie triumf trocha trouba trpaslik trubice trun trup trziste tsunami tunel turek turnaj tvar
        tvorba tvrz tvurce tyc tygr tym tyn typ typek ucast ucebnice ucel ucet ucho uciliste ucinek ucta udaj udalost
        uhel ujezd ukol ulice uloha umelkyne umysl unava unie union univerzita unos upadek uprava uprimnost urad uraz
        urok uroven usek usmev uspech usta ustav ustava ustup usudek utek utociste utok utvar uvaha uver uzel uzitek
        uzkost vaha vajicko val vanoce varhany variace varianta vasen vazba vchod vec vecere vecnost veda vedro vejce
        vek veletrh velikost venuse verejnost vernost verze ves vesmir vesnice vesta veta veteran vetev vetsina
        vevodkyne vez vezen veznice video vikend vila vira vitr vize vizum vjezd vklad vlada vladce vlak vlakno vlast
        vlastnost vlhkost vliv vlk vlna vnitrek voda voditko vodopad vojsko volant volba volejbal volic vosk vozidlo
        vozik vrah vrana vrata vrazda vrba vrchol vrstva vstup vtip vudce vul vule vune vuz vybava vybuch vycet vychod
        vycvik vydelek vydra vyhoda vyhra vyklad vykon vylet vymluva vynalez vynalezce vynos vypinac vypis vyplata
        vypocet vypoved vyprava vyraz vyroba vyrobce vyrobek vyrok vysavac vysledek vysocina vystava vystavba vystup
        vytah vytrvalost vyvar vyvoj vyvoz vyzkum vyznam vzdalenost vzduch vzhled vznik vzorek vztah vztek zabava
        zaber zabijak zacatek zachod zachrana zachvat zadek zadost zahada zahrada zajem zajemce zajezd zajic
        zajimavost zak zakaz zaklad zakladna zakon zalezitost zaloba zalobce zaloha zaludek zamek zamer zamestnanost
        zanet zanik zanr zapach zapad zapalovac zapas zapis zarlivost zasada zastupce zastupkyne zatez zatykac zavada
        zavazek zaver zaves zavislost zavist zavod zazitek zaznam zazrak zbran zbytek zdroj zebrik zed zelenina
        zeleznice zelezo zelva zeme zid zidle zisk zitrek zivnost zivot zivotnost zivotopis zizen zkusenost zlato zlo
        zlocin zlodej zlom zlomek zlost zmatek zmena zmrzlina znak znalost znamost zobak zodpovednost zombie zpev
        zpevak zpravodaj zpusob zradce zrak zralok zrcadlo ztrata zub zvire zvon zvonek zvuk zvyk
        """,
    ),
    "de": (
        """
        abgesehene abgesehener abgesehenes abhangige abhangiger abhangiges absolute absoluter absolutes ahnliche
        ahnlicher ahnliches aktive aktiver aktives aktuelle aktueller aktuelles allee alleer allees allgemeine
        allgemeiner allgemeines alte alter altes anderere andererer andereres angebliche angeblicher angebliches
        angebotene angebotener angebotenes angefangene angefangener angefangenes angegebene angegebener angegebenes
        angekommene angekommener angekommenes angenommene angenommener angenommenes angesehene angesehener angesehenes
        anscheinende arme armer armes aufgenommene aufmerksame aufmerksamer aufmerksames ausreichende automatische
        bare barer bares begeisterte begeisterter begeistertes begonnene begonnener begonnenes behaltene behaltener
        behaltenes beidee beideer beidees bekannte bekannter bekanntes bekommene bekommener bekommenes belegte
        belegter belegtes bereite bereiter bereites beschlossene beschriebene betriebene betriebener betriebenes
        betroffene betroffener betroffenes bewegte bewegter bewegtes bewusste bewusster bewusstes bezogene bezogener
        bezogenes blaue blauer blaues blode bloder blodes blosse blosser blosses bosee boseer bosees braune brauner
        braunes breite breiter breites coole cooler cooles dankbare dankbarer dankbares definitive definitiver
        definitives deine deiner deines dere derer deres deutliche deutlicher deutliches deutsche deutscher deutsches
        dichte dichter dichtes dicke dicker dickes diesere dieserer dieseres direkte direkter direktes doppelte
        doppelter doppeltes dringende dringender dringendes dumme dummer dummes dunkele dunkeler dunkeles ebene ebener
        ebenes echte echter echtes ehrliche ehrlicher ehrliches eigentliche eigentlicher eigentliches eindeutige
        eindeutiger eindeutiges eine einer eines einfache einfacher einfaches eingeladene eingeladener eingeladenes
        einigee einigeer einigees einzige einziger einziges endgultige endgultiger endgultiges endliche endlicher
        endliches enge enger enges englische englischer englisches entfernte entfernter entferntes enthaltene
        enthaltener enthaltenes entlassene entlassener entlassenes entschiedene entstandene entstandener entstandenes
        enttauschte enttauschter enttauschtes erfahrene erfahrener erfahrenes erfolgreiche ergebene ergebener
        ergebenes erhaltene erhaltener erhaltenes erhebliche erheblicher erhebliches erhobene erhobener erhobenes
        erneute erneuter erneutes ernste ernster ernstes ernsthafte ernsthafter ernsthaftes erschienene erschienener
        erschienenes erste erster erstes euere euerer eueres eventuelle eventueller eventuelles ewige ewiger ewiges
        extreme extremer extremes faire fairer faires falsche falscher falsches fertige fertiger fertiges feste fester
        festes fette fetter fettes franzosische freie freier freies freiwillige freiwilliger freiwilliges freundliche
        freundlicher freundliches frische frischer frisches frohe froher frohes fruhe fruher fruhes ganze ganzer
        ganzes gebetene gebetener gebetenes gebliebene gebliebener gebliebenes geborene geborener geborenes gebrauchte
        gebrauchter gebrauchtes geeignete geeigneter geeignetes gefahrene gefahrener gefahrenes gefahrliche
        gefahrlicher gefahrliches gefallene gefallener gefallenes gefallte gefallter gefalltes gefundene gefundener
        gefundenes gegangene gegangener gegangenes gegebene gegebener gegebenes gegenseitige gegessene gegessener
        gegessenes gehaltene gehaltener gehaltenes geholfene geholfener geholfenes gekommene gekommener gekommenes
        gelassene gelassener gelassenes gelaufene gelaufener gelaufenes gelbe gelber gelbes gelegene gelegener
        gelegenes gelesene gelesener gelesenes gelungene gelungener gelungenes gemeinsame gemeinsamer gemeinsames
        genaue genauer genaues generelle genereller generelles genommene genommener genommenes genugende genugender
        genugendes geradee geradeer geradees geratene geratener geratenes gerechte gerechter gerechtes geringe
        geringer geringes geschaffene geschaffener geschaffenes geschehene geschehener geschehenes geschlagene
        geschlagener geschlagenes geschlossene geschriebene gesehene gesehener gesehenes gesprochene gesprochener
        gesprochenes gestorbene gestorbener gestorbenes gesunde gesunder gesundes getane getaner getanes getragene
        getragener getragenes getroffene getroffener getroffenes gewonnene gewonnener gewonnenes gewordene gewordener
        gewordenes gezogene gezogener gezogenes gezwungene gezwungener gezwungenes gleiche gleicher gleiches
        gluckliche glucklicher gluckliches grune gruner grunes gunstige gunstiger gunstiges gute guter gutes halbe
        halber halbes harte harter hartes haufige haufiger haufiges heisse heisser heisses herzliche herzlicher
        herzliches hintere hinterer hinteres hoche hocher hoches ihre ihrer ihres interessante jahrliche jahrlicher
        jahrliches jedere jederer jederes jemande jemander jemandes jenere jenerer jeneres junge junger junges kalte
        kalter kaltes kaputte kaputter kaputtes keine keiner keines klare klarer klares kleine kleiner kleines knappe
        knapper knappes komische komischer komisches kommene kommener kommenes komplette kompletter komplettes
        kostenlose kostenloser kostenloses kranke kranker krankes kritische kritischer kritisches kunftige kunftiger
        kunftiges kurze kurzer kurzes lacherliche lacherlicher lacherliches lange langer langes langsame langsamer
        langsames langweilige langweiliger langweiliges laute lauter lautes leere leerer leeres leichte leichter
        leichtes leisee leiseer leisees letztere letzterer letzteres letztliche letztlicher letztliches liebe lieber
        liebes linke linker linkes lockere lockerer lockeres lustige lustiger lustiges maximale maximaler maximales
        mehrfache mehrfacher mehrfaches meine meiner meines meiste meister meistes mittele mitteler mitteles mogliche
        moglicher mogliches momentane momentaner momentanes mudee mudeer mudees nahe naher nahes naturliche
        naturlicher naturliches negative negativer negatives nette netter nettes neue neuer neues niedere niederer
        niederes niemande niemander niemandes normale normaler normales notige notiger notiges notwendige notwendiger
        notwendiges offene offener offenes offentliche offentlicher offentliches offizielle offizieller offizielles
        ordentliche ordentlicher ordentliches originale originaler originales perfekte perfekter perfektes personale
        personaler personales personliche personlicher personliches plotzliche plotzlicher plotzliches politische
        politischer politisches positive positiver positives praktische praktischer praktisches private privater
        privates reale realer reales rechte rechter rechtes rechtzeitige reiche reicher reiches reine reiner reines
        relative relativer relatives richtige richtiger richtiges rote roter rotes ruhige ruhiger ruhiges runde runder
        rundes saubere sauberer sauberes scharfe scharfer scharfes scheinbare scheinbarer scheinbares schlechte
        schlechter schlechtes schlimme schlimmer schlimmes schnelle schneller schnelles schone schoner schones
        schwache schwacher schwaches schwarze schwarzer schwarzes schwere schwerer schweres schwierige schwieriger
        schwieriges seine seiner seines seltene seltener seltenes sichere sicherer sicheres sichtbare sichtbarer
        sichtbares sinnvolle sinnvoller sinnvolles solchere solcherer solcheres spannende spannender spannendes spate
        spater spates spezielle spezieller spezielles standige standiger standiges starke starker starkes stille
        stiller stilles stolze stolzer stolzes susse susser susses tagliche taglicher tagliches tatige tatiger tatiges
        tatsachliche teuere teuerer teueres tiefe tiefer tiefes tolle toller tolles totale totaler totales tote toter
        totes traurige trauriger trauriges ubele ubeler ubeles ubergebene ubergebener ubergebenes uberlassene
        uberlassener uberlassenes uberlegene uberlegener uberlegenes ubernommene ubernommener ubernommenes ubertragene
        ubertragener ubertragenes uberwiegende uberzeugte uberzeugter uberzeugtes ubliche ublicher ubliches ubrige
        ubriger ubriges unabhangige unabhangiger unabhangiges unbedingte unbedingter unbedingtes ungefahre ungefahrer
        ungefahres unglaubliche unmittelbare unmogliche unmoglicher unmogliches unsere unserer unseres untere unterer
        unteres unterhaltene verbesserne verbesserner verbessernes verbotene verbotener verbotenes verbundene
        verbundener verbundenes verdachte verfahrene verfahrener verfahrenes verfugbare verfugbarer verfugbares
        vergebene vergebener vergebenes vergessene vergessener vergessenes verhaltene verhaltener verhaltenes
        verheiratete verlassene verlassener verlassenes verlorene verlorener verlorenes vermisste vermisster
        vermisstes vermutliche vermutlicher vermutliches versehene versehener versehenes verstandene verstandener
        verstandenes verstarkte verstarkter verstarktes vertretene vertretener vertretenes viele vieler vieles volle
        voller volles vollige volliger volliges vollkommene vollkommener vollkommenes vollstandige vorgesehene
        vorgesehener vorgesehenes vorhandene vorhandener vorhandenes vorsichtige vorsichtiger vorsichtiges wahre
        wahrende wahrender wahrendes wahrer wahres warme warmer warmes weisee weiseer weisees weisse weisser weisses
        weite weiter weites weitgehende weitgehender weitgehendes welchere welcherer welcheres weltweite weltweiter
        weltweites wenige weniger weniges were werer weres wesentliche wesentlicher wesentliches wichtige wichtiger
        wichtiges wiederholte wiederholter wiederholtes wilde wilder wildes wirkliche wirklicher wirkliches witzige
        witziger witziges wohle wohler wohles wunderbare wunderbarer wunderbares ziemliche ziemlicher ziemliches
        zufallige zufalliger zufalliges zufriedene zufriedener zufriedenes zunehmende zunehmender zunehmendes
        zusatzliche zusatzlicher zusatzliches zustandige zustandiger zustandiges
        """,
        """
        aachen abbau abend abendessen abfahrt abgeben abholen abitur abkommen ablauf ablehnung abnehmen absatz
        abschied abschluss abschnitt abseits absicht abstand abstimmung abteilung abwarten abwehr account ach acht
        achten achtung action adresse affare afghanistan afrika agenda agentur agypten ahnung air akademie akku akt
        aktie aktion aktiv akzeptieren alarm albrecht album ali alkohol all allianz alltag alt altere alteste altstadt
        amazon american amerika amsterdam amt amtszeit analyse anbieten anblick andern anderung android anerkennung
        anfang anfangen anfrage anfragen angabe angeben angebot angehorige angriff angst anhalt anhoren anklage
        ankommen ankunft anlage anlass anlegen anleitung anliegen anmelden anmeldung annahme annehmen anordnung
        anpassen anpassung anruf anrufen ansatz anschauen anschlag anschluss ansehen ansicht anspruch anstieg anteil
        antike antrag antreten antwort antworten anwalt anwendung anwesenheit anzahl anzeichen anzeige anzeigen
        anziehen apotheke app apple arbeit arbeiten arbeitsmarkt arbeitsplatz architektur archiv ard arena argentinien
        arm armee armut arsch arschloch arten artikel arzt asien aspekt asyl atem athen atmosphare audi aufbau
        aufbauen aufenthalt auffassung aufgabe aufgeben aufhalten aufhoren aufklarung auflage auflosung aufnahme
        aufnehmen aufpassen aufregung aufruf aufstehen aufstellen aufstellung aufstieg auftrag auftreten auftritt
        aufwand aufweisen auge augenblick augsburg ausbau ausbildung ausdruck ausdrucken ausflug ausfuhrung ausgabe
        ausgang ausgeben ausgehen ausgleich auskunft ausland auslandische ausmachen ausnahme ausprobieren ausrichtung
        ausrustung aussage aussagen ausschuss aussehen aussicht ausstattung ausstellung austausch australien auswahl
        auswertung auszeichnung auto autobahn bach back backen bad baden bahn bahnen bahnhof balkon ball bamberg bande
        bank bar barcelona bargeld bart basel basis basketball bass bau bauch bauen baum baumen bayern beach beachten
        beamte beantworten bearbeitung beck becken bedanken bedarf bedenken bedeuten bedeutung bedienen bedrohung
        beeinflussen beenden befehl befinden befreien befreiung begegnen begegnung begeisterung beginn beginnen
        begleiten begleitung begraben begreifen begriff begrundung behalten behandeln behandlung behaupten behauptung
        behinderung behorde bei beispiel beitrag beitragen bekampfen bekommen belastung belegen belgien belohnung
        bemuhen benotigen benutzen beobachten beobachtung beraten beratung berechnung bereich bereiten berg bergen
        bericht berichten berichtete bern beruf berufen berufung beschaftigen beschaftigte bescheid beschluss
        beschreiben beschreibung besetzung besitz besitzen besondere besonderes besorgen besserung best bestand
        bestandteil bestatigen bestatigte bestatigung beste bestehen bestellen bestellung bestimmen bestimmte
        bestimmung besuch besuchen besuchte beteiligung betrachten betrag betreiben betreten betreuung betrieb betrug
        bett beurteilen beute bevolkerung bewahren bewegen bewegung beweis beweisen bewerben bewerbung bewerten
        bewertung bezahlen bezahlung bezeichnen bezeichnete bezeichnung beziehen beziehung bezirk bezug bibel
        bibliothek bielefeld bieten bilanz bild bilden bildschirm bildung bio bisherige bisschen bitte black blasen
        blatt blau bleibe bleiben blick blicken block blodsinn blog blue blut bmw bochum bock boden bogen bombe bonn
        bonus boot bord borse borussia bose boss botschaft box boxen branche brand brandenburg brasilien brauch
        brauchen braun braunschweig braut brd brechen breiten bremen brennen brief brille bringen bronze brot brown
        bruch brucke brunnen brussel brust buch buchen budget buhne bund bundesland bundesliga bundestag bundeswehr
        bundnis burg burgerkrieg burgern buro bus business cafe camp carlos cdu champions chance chaos chat check
        chemie chemnitz chicago china christentum christus city cloud club coach code cola college comic community
        costa crew csu cup dach daheim damalige danemark dank danken darmstadt darstellen darstellung data date datei
        datenbank datenschutz datum dauern daumen dax ddr deal debatte decke decken definition demo demokratie denke
        denken denkmal design detail deutsch deutschen deutschland deutschlands dfb diagnose dialog dich diebstahl
        dienen dienst diesel dietrich digital diktatur ding dingen diskussion diskutieren distanz diverse dollar donau
        doppel dorf dortmund download drama dreck drehen dresden dritte drittel drohen druck drucken drum duell
        duisburg dunkel dunkelheit dunkle duo durchfuhren durchfuhrung durchschnitt durchsetzen dusche dusseldorf
        dutzend echo ecke edition effekt effektiv ehe ehemalige ehre ehren eigentum einblick eindruck einen einfallen
        einfluss einfuhrung eingang eingehen einheit einige einigen einkaufen einkommen einladung einleitung
        einrichtung eins einsatz einschatzung einsetzen einstellen einstellung einstieg eintracht eintrag eintritt
        einzelfall einzug eis eisen eishockey elbe elf elite eltern empfang empfangen empfehlen empfehlung empfinden
        end ende enden energie energiewende engel engen england englisch ensemble entdecken entdeckte entdeckung
        entfernen entfernung enthalten entlassen entscheiden entscheidung entspannen entsprechen entstehen entstehung
        entwickeln entwickelte entwicklung entwurf episode erbe erben erde ereignis erfahren erfahrung erfindung
        erfolg erfolgen erfolgte erfullen erfullung erfurt erganzung ergeben ergebnis erhalt erhalten erheben erhebung
        erhohen erhohte erhohung erinnern erinnerung erkannte erkennen erkenntnis erklaren erklarte erklarung
        erkrankung erlangen erlauben erlaubnis erleben erlebnis erledigen ermitteln ermoglichen ernahrung eroffnen
        eroffnung erreichen erreichte errichten errichtung ersatz erscheinen erscheinung ersetzen erstellen ertragen
        erwahnen erwarten erweitern erweiterung erwerben erzahlen erzahlte erzahlung erzeugen erziehung erzielen
        erzielte esse essen ethik etwas euro europa europas europe ewigkeit existenz existieren experte explosion
        express extra extrem fabrik facebook fach fahigkeit fahren fahrrad fahrt fahrzeug fake fakt falle fallen
        falsch fan fangen fantasie farbe fassen fassung fast faust fazit fdp feedback fehlen fehlende feiern feind
        feld felsen ferien fernsehen fest festhalten festival feststellen fett feuerwehr fick ficken figur film filme
        filmen finanzieren finanzierung finden finnland firma firmen first fisch fitness flach flagge flammen flasche
        flecken fleisch fliegen fliehen flucht flug flugel flughafen flugzeug fluss fokus folge folgen fonds football
        ford fordern forderung form format formel formen forschung fort fortschritt fortsetzung foto fotografie fpo
        frage fragen fraktion franken frankfurt frankreich frankreichs franzosisch free freiburg freiheit freizeit
        fresse fressen freude freuen freund freunden freundschaft frieden friedhof frisch frischen from front fruh
        fruhere fruhstuck fuchs fuhlen fuhren fuhrung fullen funfte funk funktion furchten fussen galerie game games
        gaming gang garage garten gas gattung gebaude geben gebiet gebieten gebrauch gebrauchen gebuhren geburt
        geburtstag gedachtnis gedanke gedanken gedenken gedicht geduld gefahr gefallen gefangnis gefuhl gegend
        gegensatz gegenstand gegenteil gegenwart gehalt geheimnis gehen gehirn gehoren gehorte geile gelande gelb geld
        gelegenheit gelingen gelten gemalde gemeinde gemeinden gemeinderat gemeinschaft gemuse genannte genehmigung
        generation genf genuss gepack geplante gerade gerat geraten gericht germany geruch gesamte gesang geschaft
        geschehen geschenk geschichte geschlecht geschmack gesellschaft gesetz gesicht gesprach gestalt gestalten
        gestaltung gesunden gesundheit gewalt gewann gewerbe gewicht gewinn gewinnen gewissen giessen gipfel gitarre
        glas glaube glauben gleichen global gluck gluckwunsch gnade goethe gold golf google gott gottingen grab graben
        grad grafik gramm grand gras grau grauen graz green greifen grenze grenzen griechenland griff gross grosse
        group grun grund grunden grundlage grundschule grundstuck grundung gruppe gucken gut gutachten gymnasium haar
        haaren habe haben hafen haft hagen hahn halbfinale halbzeit halfte hall halle hallo hals halt halten haltung
        hamburg hand handball handbuch handel handeln handlung handwerk handy hangen happy hart hass hassen hast hat
        haufen haupt hauptbahnhof hauptsache hauptstadt haus haushalt haut heben heft heidelberg heil heim heimat
        heiraten hektar held helfen helm herkunft herrschaft herstellen herstellung herz herzen herzog hessen heutige
        hilfe himmel hinblick hinsicht hintergrund hinterlassen hintern hinweg hinweis hinweisen hirn hit hitze hobby
        hoch hochschule hochst hochzeit hof hoffen hoffnung hohe hohepunkt hol holen holland holle hollywood holz
        homepage honig horen horn hose hot hotel house hugel hund hundert hurensohn hut hutte ice ich ideal idee
        identitat ignorieren ikea image index indien industrie info informatik information informieren ingenieur
        inhalt initiative innenstadt innsbruck insel instagram institut integration intelligenz interesse interessiert
        internet interview investieren irak iran irland ironie irre islam island istanbul italien jacke jackson jagd
        jahr jahrgang jahrhundert jahrige japan jazz jeans jenseits jerusalem jobs jones journal jubilaum jugend jung
        jungere jungste jury just justiz kabel kaffee kalifornien kamen kamera kampagne kampf kampfen kanada kanal
        kandidat kapelle kapital kapitalismus kapitel karlsruhe karriere karte karten kase kasse kassel kasten katalog
        katastrophe kategorie katze kauf kaufen kennen kennenlernen kenntnis kennzeichen kerl kern kette kfz kids kiel
        kilo kim kindergarten kindheit kino kirche kita klage klagen klar klaren klasse kleid kleidung kleinere klick
        klicken klima klingen klinik klo klub knapp knast knie knochen koalition koblenz koch kochen kohle kollege
        koln kombination kommando kommen kommende kommentar kommission kompetenz komplex konferenz konflikt kongress
        konig konigreich konkurrenz konnen konsequenz konstanz konstruktion kontakt kontext konto kontrolle konzept
        konzern konzert kooperation kopf kopie korrektur kosten kraft kranken krankenhaus krankheit krebs kredit kreis
        kreisen kreuz krieg kriegen krise kritik krone kuche kuchen kugel kuhlschrank kultur kummern kumpel kunde
        kundigung kunst kurs kurve kuss kussen kuste lacheln lachen laden lage land landen landgericht landkreis
        landschaft landtag lang langen langere laptop larm lassen last lauf laufen laune laut league leben
        lebensmittel leeren legen lehre lehren leib leiche leid leiden leidenschaft leinwand leipzig leise leisten
        leistung leiten leitung lernen lese lesen letzte leute level leverkusen licht lieb lieben lied liefern
        lieferung liege liegen like linie link linux linz liste listen literatur lizenz lkw lob loch logik logo lohn
        lokal london look loschen losen losung lowen lubeck lucke luft luge lugen lust luxemburg luxus mac mach mache
        machen macht madchen madrid magdeburg magen mail mainz malerei mangel mannheim mannschaft marathon marchen
        marco marine marke marken marketing markt marktplatz marx maschine maske masse massiv match material mathe
        mathematik mauern maul maus mecklenburg media medium mehr mehrheit meinen meinung melde melden meldung menge
        mengen mensch menschheit merkel merken messe messen metal metall methode mexiko microsoft miete mieten
        migration milch militar million minderheit mindestlohn mini ministerium minus minute mir mischung missbrauch
        mission mitbekommen mitglied mithilfe mitleid mitmachen mitnehmen mittag mittagessen mitte mitteilen
        mitteilung mittel mitteln mittelpunkt mitternacht mittlere mix mobel mobil mode model modell modern modus
        moglichkeit monat moral mord more moskau motiv motivation motorrad motto muhe mull munchen mund munzen muschi
        museum music musik muslime mut nachbar nachdenken nachfrage nachmittag nachricht nachste nachteil nachweis
        nachweisen nachwuchs nahrung name nase nass nation national nato natur nazi nebel negativ nehm nehmen nennen
        nerven net netz netzwerk neubau neustadt new news niederlage niederlande niemand niveau nix non nord norden
        normal norwegen not note notfall notigen npd nrw null nurnberg nutzen nutzung oberflache oberste objekt obst
        ofen off offnen ohr okay oldenburg one online opel open operation opfern opposition option orange ordnung
        organisation organisieren orientierung original ort orten osnabruck ost ostern osterreich ostsee out paar pack
        packen paderborn paket panik paradies parallel paris park parkplatz part partei partie party pass passen
        passieren pause pech penis perfekt performance person personal perspektive pfalz pferd pflanze pflanzen pflege
        pflegen pflicht pflichten pfund phanomen phase philosophie physik pizza pkw plan planen planung plastik
        platten plattform platz pleite plus podcast pokal pol polen politik polizei pool porno porsche portal portugal
        position positiv post posten potsdam prag prasentation prasentieren praxis preis preisen premiere premium
        presse preussen prinz prinzip probe proben probieren problem produkt produktion produzieren profi profil
        profitieren programm projekt propaganda protest protokoll provinz prufen prufung psychologie publikum punkt
        punkten qualitat quatsch quelle quellen quote rabatt rache rad radio rahmen rand rande rasen rasse rassismus
        rat rate raten rathaus ratsel rauch rauchen raum raumen reagieren reaktion real realitat rechnen rechnung
        recht rechtsanwalt red redaktion rede reden reduzieren reform regel regeln regelung regen regensburg regie
        regierung regime region regional regisseur reich reichen reichweite reifen reihe reihen reihenfolge reis reise
        reisen reiten rekord relativ religion rennen rente republik reserve respekt rest resultat retten rettung
        revolution rezept rheinland richten richtung ring rio risiko rock rolle rollen rom rostock rot roth route
        royal rucken ruckkehr rucksicht rucktritt ruckzug ruf rufen ruhe ruhestand rum rumanien rund runden russisch
        russland russlands saal saarland sache sachsen sack sage sagen saison salat salz salzburg samen sammeln
        sammlung samsung samt samtliche san sand sanierung satz sau saudi schaden schaffen schalke schande schatten
        schatz schatzen schau schauen scheibe scheinen scheitern schenken scherz schicht schichten schick schicken
        schicksal schieben schiff schild schlacht schlaf schlafen schlag schlagen schlampe schlange schleswig
        schlimmste schluss schlussel schmecken schmerz schmerzen schmidt schmuck schnee schneiden schnellen schock
        schokolade schon schonheit schonste school schrank schreibe schreiben schreibtisch schreien schrift schuh
        schuld schulden schule schulen schultern schulz schuss schutz schutzen schwachen schwanz schwarz schweden
        schweigen schweiz schwerpunkt schwert schwimmen science security sed see seele segen sehen sehnsucht seite
        sekunde seminar senat senden sendung senken serie service set setzen sex shirt shop show sicherheit sichern
        sicherung sicht sie sieben sieg siegen siemens signal singen single sinken sinn situation sitz sitzen sitzung
        skandal ski sky smart smartphone smith socken sofa software solche solidaritat soll solo somit sondern song
        sonne sonstige sorge sorgen sorte sound sowieso sowjetunion sozialismus spanien spanisch spannung sparen
        sparkasse spass spatere spd special spektrum spende spenden spiegel spiel spielen spieltag spielzeit spielzeug
        spo sport sprache spreche sprechen springen spruch sprung spur spuren staat staatsanwalt stadion stadt
        stadtrat stadtteil staffel stamm stammen standard standort star stark starken start starten station statistik
        stattfinden status staub stecken stehen steigen steigern steigerung stelle stellen stellung sterben stern
        steuern stift stiftung stil still stimme stimmen stimmung stirn stock stoff stolz stop stoppen storen storung
        story strafe strand strategie strauss stream strecke strecken street streichen streifen streit streiten stress
        strich strom struktur stuck studie studieren studierte studio studium stufe stufen stuhl stunde stunden sturm
        sturzen stuttgart such suche suchen sucht sud sudafrika suden summe supermarkt support symbol syrien system
        szene tabelle tablet tafel tag tagebuch tagen tal tanz tanzen tasche tasse tatigkeit tatort tatsache tauschen
        tausend taxi team technik technologie tee teil teilen teilnahme teilnehmen teilweise telefon telekom tempel
        temperatur tempo tendenz tennis teppich test testen teufel texas text texten thailand thema theologie theorie
        therapie thuringen ticket tief times tipp tirol tisch titel toilette toleranz tollen ton top topf total toten
        tour tourismus tradition trage tragen trainieren training tranen transparenz transport trauen traum traumen
        treffen treiben trend trennen trennung treppe treten trick trinken tritt tropfen trotz truppe tubingen tun
        tunnel tur turkei turken turm typ ubel uben uberblick ubergang ubergeben uberlassen uberleben uberlegen
        ubernahme ubernehmen uberprufen uberraschen uberraschung ubersehen ubersetzung ubersicht ubertragen
        ubertragung uberwachung uberwinden uberzeugen uberzeugung ubung uhr ukraine ulm umbau umfang umfeld umfrage
        umgang umgeben umgebung umgehen umsatz umsetzen umsetzung umwelt umzug unfall ungarn ungluck union universitat
        university universum unrecht unsinn untergang unterhalten unterhaltung unterkunft unternehmen unterricht
        unterschied unterstutzen untersuchen untersuchung update urkunde urlaub ursache ursprung urteil van variante
        venedig verandern veranderung verband verbessern verbesserung verbieten verbinden verbindung verbot verbrechen
        verbreiten verbreitung verbringen verdacht verdanken verdienen verdienst vereinbarung vereinen vereinigung
        verfahren verfassung verfolgen verfolgung verfugen verfugung vergeben vergessen vergleich vergleichen
        vergnugen verhalten verhaltnis verhindern verkauf verkaufen verkehr verlag verlangen verlangerung verlassen
        verlauf verlaufen verlegen verletzte verletzung verlieren verlust vermeiden vermissen vermitteln vermittlung
        vermogen vermuten vermutung vernunft verordnung verpassen verraten versagen versammlung verschaffen
        verschieben verschwinden versehen versichert versicherung version versorgen versorgung versprechen verstand
        verstandnis verstarkung verstecken verstehen versuch versuchen versuchte verteidigen verteidigung verteilen
        verteilung vertrag vertrauen vertreten vertrieb verursachen verwaltung verwandte verwenden verwendung
        verzichten via video viel vielfalt vielzahl vierte viertel villa virus vision vogel volk volumen voraus
        vorbereiten vorbereitung vorbild vordergrund vorfall vorfeld vorgehen vorhaben vorjahr vorkommen vorlage
        vorliegen vorschlag vorsicht vorsitzende vorsprung vorstand vorstellen vorstellung vorteil vortrag vorwarts
        vorwurf wachsen wachstum waffe wagen wahl wahlen wahlkampf wahnsinn wahren wahrheit wahrnehmung wald wall
        wandel wandern ware warnen warnung warte warten waschen washington web webseite website wechsel wechseln weg
        weh wehren weichen weihnachten weile weimar weinen weise weisen weiss weiten welle wellen welt weltkrieg wende
        wenden werbung werden werfen werk werken werkstatt werkzeug wert werten wesen west westen westfalen wettbewerb
        wette wetten whatsapp white who wichtigste widerspruch widerstand wie wiederholen wiedersehen wien wiesbaden
        wiese wikipedia wild willen willkommen wind windows winkel wirken wirklichkeit wirkung wirtschaft wissen
        wissenschaft witz woche wochenende wohl wohnen wohnung wolfsburg wolle wollen world wort wundern wunsch
        wunschen wuppertal wurst wurttemberg wurzburg wurzeln wuste wut york zahl zahlen zahlung zaun zdf zeichen
        zeichnen zeigen zeit zeitpunkt zeitraum zeitschrift zeitung zelle zentrum zerstoren zerstorung zettel zeug
        zeuge zeugen ziehe ziehen ziel zielen zitat zoll zone zoo zufall zug zugang zugeben zugriff zuhause zukommen
        zukunft zulassen zunge zurich zuruck zuruckkehren zusammenhang zustand zustimmen zustimmung zwanzig zweck
        zwecke zweifel zwingen zwolf
        """,
    ),
    "es": (
        """
        abandonada abandonado abierta abierto absoluta absoluto absurda absurdo aburrida aburrido acabada acabado
        academica academico aceptada aceptado acido acompanada acompanado activa activo actual acusada acusado
        adecuada adecuado adicional adolescente adulta adulto agradable agricola alcanzada alcanzado alegre aleman
        alguna alguno alta alto amable amante amarilla amarillo ambiental americana americano amiga amigo amplia
        amplio ancha ancho animal anterior anti antigua antiguo anual apartado aprendido aprobada aprobado arabe
        argentina argentino armada armado artista asesina asesinada asesinado asesino asesor asistente asociada
        asociado atractiva atractivo azul baja bajo barata barato basada basado basica basico bella bello bienvenida
        bienvenido blanca blanco bonita bonito brasilena brasileno breve brillante britanica britanico brutal buen
        buena bueno caballero cadena caida caido caliente cansada cansado capaz capital cara caro casada casado
        castellana castellano catalan celebrada celebrado celular central cercana cercano cerrada cerrado chilena
        chileno china chino ciega ciego cientifica cientifico cierta cierto citada citado ciudadana ciudadano civil
        clara claro clasica clasico colectiva colectivo colombiana colombiano colonial comercial cometido comoda
        comodo compleja complejo completa completo complicada complicado comprada comprado compuesta compuesto comun
        comunicado comunista concreta concreto condenada condenado conductor confirmada confirmado conforme conjunta
        conjunto conocida conocido consciente conseguido conservador considerable considerada considerado constante
        construida construido contada contado contenida contenido contenta contento continental contraria contrario
        convencida convencido conveniente convertida convertido correcta correcto corriente corta corto creada creado
        creador creciente criminal cristiana cristiano critica critico cruel cuarta cuarto cubana cubano cubierta
        cubierto cuidado culpable culta culto cultural cumplida cumplido curiosa curioso dada dado debida debido debil
        decidida decidido declarada declarado dedicada dedicado defensor dejado demas democratica democratico
        deportiva deportivo derecha derecho desaparecida desaparecido desarrollada desarrollado desconocida
        desconocido descubierta descubierto desierta desierto destacada destacado destinada destinado detenida
        detenido determinada determinado diagnostico diaria diario dicha dicho diferente dificil digital digna digno
        directa directo director dirigida dirigido disenada disenado disponible dispuesta dispuesto distinta distinto
        divertida divertido doble docente documental domicilio dormida dormido dulce dura duro economica economico
        editorial educativa educativo efectiva efectivo eficaz eficiente ejecutiva ejecutivo electoral electrica
        electrico electronica electronico elegida elegido elevada elevado empleada empleado empresarial enamorada
        enamorado encargada encargado encontrada encontrado enemiga enemigo enorme entendida entendido entera entero
        enviada enviado equivalente equivocada equivocado escolar escrita escrito esencial espacial espanol especial
        especifica especifico espectacular esperada esperado espiritual estable establecida establecido estandar
        estatal este estimada estimado estupida estupido europea europeo evidente exacta exacto excelente existente
        experta experto exterior extra extrana extranjera extranjero extrano extrema extremo facil falsa falso
        familiar famosa famoso favorita favorito fea federal feliz femenina femenino feo fiel fija fijo final
        financiera financiero firmada firmado firme fiscal fisica fisico formada formado formal franca frances franco
        frecuente fresca fresco fria frio fuerte funciones fundamental futura futuro ganada ganado ganador gay general
        genial gigante global golfo gorda gordo graciosa gracioso grafica grafico gran grande grave graves griega
        griego gris habitual hablada hablado hecha hecho helada helado herida herido hermosa hermoso historica
        historico horaria horario horrible humana humano humilde ideal igual ilegal importante imposible impuesta
        impuesto incluida incluido increible india indigena indio individual industrial inevitable infantil inferior
        informada informado ingles inicial inmediata inmediato inocente integral intelectual inteligente intensa
        intenso interesada interesado interesante interior interna interno inutil investigador invitada invitado
        italiana italiano izquierda izquierdo japones joven judia judicial judio jugada jugado jugador junta junto
        jurada jurado juridica juridico justa justo juvenil juzgado laboral lanzada lanzado larga largo latina latino
        lector legal legislativa legislativo leida leido lenta lento liberal libre limitada limitado limite limpia
        limpio linda lindo liquida liquido lista listo llamada llamado llegada llegado llena lleno llevada llevado
        loca local loco logica logico logrado macho madura maduro maestra maestro mal mala maldita maldito malo
        manifiesta manifiesto mantenida mantenido manual maravillosa maravilloso marcada marcado material maxima
        maximo mayor media medica medico medio mejor mencionada mencionado menor mensual mental menuda menudo metida
        metido mexicana mexicano mil minima minimo minuto misma mismo moda moderna moderno moral mortal movil mucha
        muchisima muchisimo mucho muerta muerto mundial municipal musical nacida nacido nacional natural necesaria
        necesario negativa negativo negra negro nerviosa nervioso noble nombrada nombrado normal norte notable nuclear
        nueva nuevo objetiva objetivo obligada obligado obtenida obtenido obvia obvio occidental ocupada ocupado
        ocurrida ocurrido oeste oficial olvidada olvidado operativa operativo oral organizada organizado orgullosa
        orgulloso oriental original oscura oscuro otra otro paciente pacifica pacifico pagada pagado parada parado
        parcial parecida parecido particular pasada pasado pedido peligrosa peligroso penal pendiente pensada pensado
        peor pequena pequeno perdida perdido perfecta perfecto periodica periodico permanente permitida permitido
        personal peruana peruano pesada pesado plana plano plastica plastico plaza plazo plena pleno pobre poca poco
        poderosa poderoso policial politica politico pop popular poquito portugues posible positiva positivo post
        posterior potencial preciosa precioso precisa preciso preocupada preocupado preparada preparado presa
        presentada presentado presente presidencial preso previa previo prevista previsto prima primera primero primo
        principal privada privado probable probada probado producida producido productor profesional profunda profundo
        prohibida prohibido pronta pronto propia propietaria propietario propio propuesta propuesto protagonista
        provincial proxima proximo publica publicada publicado publico puesta puesto pura puro querida querido quinta
        quinto radical rapida rapido rara raro razonable real realizada realizado recibida recibido reciente
        reconocida reconocido record reducida reducido referente regional relacionada relacionado relevante religiosa
        religioso responsable restaurante rica rico ridicula ridiculo rival robada robado rock roja rojo romana romano
        rota roto rural rusa ruso sabido sagrada sagrado salida salido saludable salva salvador salvaje salvo sana
        sano santa santo seca seco secreta secreto seguida seguido segunda segundo segura seguro semejante sencilla
        sencillo sensible sentada sentado separada separado seria serio sexual sexy siguiente similar simple situada
        situado social socialista sola solar solo sorprendente suave sucedido suficiente sufrida sufrido sujeta sujeto
        superior suprema supremo supuesta supuesto sur tecnica tecnico temporal temprana temprano tercer tercera
        tercero terminada terminado terminal terreno terrible territorial terrorista tipica tipico titulada titulado
        tocado tomada tomado tonta tonto total trabajado trabajador tradicional tranquila tranquilo tratada tratado
        tremenda tremendo triste ubicada ubicado ultima ultimo unica unico unida unido uniforme universal urbana
        urbano urgente usada usado usuario util utilizada utilizado vacia vacio valiente vasca vasco vecina vecino
        vendida vendido venezolana venezolano venida venido verdadera verdadero verde vestida vestido vieja viejo
        vigente virtual visible vista visto visual vital viva vivida vivido vivo vuelta vuelto web
        """,
        """
        abanico abdomen abismo abogado abolicion abrigo abstencion abundancia aburrimiento academia acaso acceso
        accion aceite acento aceptacion acercamiento acierto acogida acta actitud activacion actividad actuacion
        actualidad acumulacion acusacion adaptacion adhesion adicto adjetivo adjudicacion admiracion admision
        adolescencia adopcion adquisicion aduana advertencia aerolinea aeropuerto afiliado afinidad afirmacion
        afluencia afueras agencia agenda agonia agotamiento agregado agresion agresividad agricultura agrupacion aguja
        aire aislamiento ajedrez ajo alambre alarma alba albergue alcalde alcaldesa alcaldia alcohol aldea alegria
        alergia alfa alfabeto alfombra algoritmo alianza alias aliento alimentacion alineacion alma almohada almuerzo
        alquiler altar alteracion altitud altura alumbrado aluminio alumno alusion amabilidad amargura amateur ambito
        ambulancia amistad amparo ampliacion amplitud analisis analogia anarquia anecdota anfitrion angustia anhelo
        anillo animacion aniversario ano anonimato anotacion ansiedad antemano antena anterioridad anticipacion
        antiguedad antojo antorcha antropologia anulacion aparato aparcamiento aparicion apariencia apartamento apego
        apelacion apellido apertura apetito apice aplauso aplicacion apodo apogeo aportacion apostol apreciacion
        aprendizaje aprobacion apropiacion aproximacion aptitud arbitraje arbol arca archipielago area arena armamento
        armario armonia aro aroma arqueologia arquitecto arquitectura arranque arrogancia arroz arsenal arte artefacto
        arteria articulacion arzobispo asamblea ascendencia ascension ascenso asco asedio asentamiento asesinato
        asesoria asfalto asiento asignacion asignatura asilo asistencia asma asociacion asombro aspecto aspiracion
        asunto ataque ataud atencion atentado aterrizaje atlas atleta atletismo atraccion atraso atribucion audiencia
        auditorio auge aula ausencia austeridad autenticidad auto autobus autoestima automovil autonomia autoria
        autoridad autorizacion aval avance avatar ave avena avenida aventura aviacion avion ayuntamiento azotea azucar
        azufre bachillerato bala balance balanza ballena balon baloncesto banda bando banquete banquillo bar barba
        barbarie barco barra barranco barril barro basilica basket baston basura bata batallon bateria beca belen
        belleza bendicion beneficencia bestia beta bibliografia biblioteca bicicleta bienestar bigote billete
        biografia biologia bis bloque blues boca boda bodega boicot bola boleta boleto bolsa bolsillo bolso bomba
        bondad bono boom borde bordo bosque botella botin boton boveda box boxeo brazo break brecha brigada brisa
        broma bronca bronce brote brutalidad buque burgues burguesia burocracia burro bus busqueda caballeria caballo
        cabana cabello cabeza cabida cabildo cabina cable cabo cacao cachorro cadaver cafeteria caja cajon cala
        calabaza calado caldo calendario calibre calidad calificacion callejon calzada calzado cama camara camarada
        caminata camion camioneta camisa camiseta campamento campana campeon campeonato campo campus cana canal
        canasta cancelacion cancha canciller cancion candidato candidatura cansancio cantidad caos capa capacidad
        capacitacion capilla capitalismo capitolio capricho capsula captacion car caracter caramelo caravana carbono
        carcel cardenal carencia caricatura caridad carino carisma carnaval carne carnet carpa carpeta carril carrillo
        carro carta cartel cascara casco casilla casino casita casta castillo casting casualidad catastrofe catedral
        catedratico categoria catolicismo cauce caucho caudal cautiverio cavidad cebolla celda celebracion celebridad
        celo celula cementerio ceniza censo centavo centenar cepillo ceramica cercania cerco cerda cerdo cereal
        cerebro ceremonia cerradura certamen certeza certificado cerveza cesion cesped chantaje chapa chaqueta
        chatarra chaval cheque chimenea chip chispa chiste chocolate choque chulo ciclismo ciclo ciclon ciencia cierre
        cifra cigarrillo cigarro cilindro cima cincuenta cine cineasta cinismo cinta cintura cinturon circo circuito
        circulacion cirugia ciudad ciudadania civilizacion clan claridad clase claustro clausula clausura clerigo
        clientela clima club coalicion cobardia cobertura coca cocaina coche cocodrilo codicia codificacion codigo
        codo cofradia coherencia cohete coincidencia colaboracion colchon colega colegio colmo colocacion colonia
        colonizacion columna coma comando comarca combinacion combustible combustion comentario comida comienzo
        comisaria comisario comision comisionado comite comodidad compadre compania comparacion compasion compatriota
        compensacion competencia competicion complejidad complicidad complot composicion comprension comprobacion
        compromiso computacion computo comuna comunicacion comunidad comunion comunismo concejal concejo concepcion
        concepto concesion concha concierto conciliacion conclusion concurrencia concurso condado condicion conduccion
        conducta conducto conejo conexion conferencia confesion confianza confirmacion conflicto confluencia
        conformidad confort confusion conglomerado congregacion congreso conocimiento consecucion consecuencia
        consejeria consejo consenso conservacion consigna consistencia consorcio conspiracion constancia constitucion
        construccion consuelo consultorio consumo contabilidad contencion conteo contexto contienda continuacion
        continuidad contrabando contratacion contribucion control controversia convencion conveniencia convento
        convergencia conversacion conversion conviccion convivencia convocatoria convoy conyuge cooperacion
        coordinacion copa coraje corazon corbata cordon cordura coro coronel corporacion corpus corral correa
        correccion correo corresponsal corrida corrupcion cortesia cortina cosa costumbre cota cotizacion country
        coyuntura crack craneo creacion creatividad crecimiento credibilidad credito creencia crema cresta criatura
        crimen criminalidad crisis cristal cristianismo cristo criterio cronologia cross crueldad cuaderno cuadra
        cuadro cualidad cuantia cuarenta cuarentena cuarteto cubo cuchillo cuello cuenca cuento cuerda cuerno cuerpo
        cuervo cuestion cuestionario cueva culo culpabilidad cultura cumbre cumpleanos cumplimiento cuna cuota cupo
        cupula curacion curiosidad curva dama danza dato debilidad debut decada decadencia decano decencia decision
        declaracion declive dedicacion dedo defecto defensa deficiencia deficit definicion degradacion delegacion
        delfin delicadeza delincuencia delirio delito delta demarcacion demencia democracia demolicion demonio
        demostracion denominacion densidad departamento dependencia depresion derrumbe desacuerdo desague desaparicion
        desastre descendencia descenso desconfianza descontento descripcion descuento desempleo desenlace desgaste
        desgracia designacion desigualdad desnutricion desorden despacho despegue despido despliegue destitucion
        destreza destruccion desventaja deteccion detencion deterioro detrimento deuda devaluacion devocion devolucion
        diabetes diablo diagonal diametro diana diccionario dictadura dictamen dieta dificultad difusion dignidad
        dilema diligencia dimension dinosaurio diocesis dios diploma diplomacia diputacion diputado direccion
        directorio discapacidad disciplina discipulo disco discoteca discrecion discurso discusion disgusto
        disminucion disolucion dispersion disposicion dispositivo distancia distincion distintivo distraccion
        distribucion distrito diversidad diversion divisa divorcio divulgacion doce docena doctrina dominacion dominio
        donacion doncella dormitorio dorsal dosis dotacion drama dramaturgo droga ducha duelo duende dueno dulzura
        duque duracion dureza eco ecologia economia ecosistema edad edicion edificacion edificio educacion efe
        efectividad efecto eficacia eficiencia ego eje ejecucion ejercicio elaboracion eleccion electorado
        electricidad elegancia elemento elenco elevacion eliminacion elite emancipacion embajada embarazo embarcacion
        embarque emblema emboscada emergencia emigracion emision emocion empeno empresa empresario encarnacion
        encierro encuentro encuesta ene energia enfado enfasis enfermedad enfoque enhorabuena enigma enlace enmienda
        ensalada ensenanza entidad entierro entorno entrada entusiasmo envase envergadura epicentro epidemia episodio
        epoca equidad equilibrio equipaje equipamiento equivocacion ereccion erupcion escalada escandalo escano
        escasez escena escenario escepticismo esclavitud escoces escolta escopeta escoria escritura escrutinio
        escuadra escudo escuela escultura esencia esfuerzo espacio espada espalda especialidad especie espectaculo
        espectro especulacion espejo esperanza espiral espiritu esponja espuma esqueleto esquema esqui esquina
        estabilidad estacion estadio estallido estancia estanque estatua estatura estatus estatuto estela estereotipo
        estilo estimacion estrategia estrella estupidez etapa eternidad etnia euro evaluacion evasion evento exactitud
        exageracion examen excelencia excepcion exceso exclusion excursion excusa exhibicion exigencia exilio
        existencia exito expectativa expedicion expensas experiencia explicacion exploracion explosion explotacion
        exportacion exposicion expresion expropiacion expulsion extasis extension exterminio extincion extraccion
        extradicion fabricacion faccion faceta fachada facilidad facto factura facultad falsedad fama fan fantasia
        farmacia farsa fascismo fase fatiga fauna fax fecha federacion felicidad fenomeno feria ferrocarril ferry
        fertilidad festival festividad feto fianza fibra fichaje fidelidad fiebre fiesta fijacion fila filial film
        filmacion filo filosofia filosofo filtracion finalidad finalizacion financiacion finanzas finca firmeza
        fiscalia flecha flexibilidad fluidez flujo foco folleto fondo formacion formato formulacion foro forro
        fortaleza fortuna fosa foto fractura fragmento franja franquicia franquismo frasco frase fraternidad fraude
        frecuencia fresa frustracion fruto fuego fuerza fuga funcion funcionario fundacion funeral furia futbol
        gabinete gala galan galaxia galeria gallina gallo gama ganaderia ganancia gancho garaje garantia garganta
        garra gas gasolina generacion generosidad genio genocidio geografia gerencia gestacion gestion gesto gimnasia
        ginebra gitano globo gloria gobernacion gobierno gol goleada golf golpe goma gorra gorro gota grabacion gracia
        grado graduacion granada grandeza granja grano grasa grata gravedad gremio grieta gripe grupo guarderia guerra
        guerrilla guitarra habilidad habitacion hacha hacienda halcon hallazgo hambre hamburguesa harina hazana
        hegemonia hemisferio hemorragia hepatitis herencia hermandad heroe heroina herramienta hibrido hidalgo
        hidrogeno hielo hierba hierro higado higiene hilo himno hincapie hincha hinchada hipocresia hipoteca hipotesis
        historia historial hit hito hogar hoja holocausto hombro homenaje homicidio honestidad hongo horizonte horno
        hospital hospitalidad hostia hostilidad hotel hoyo hueco huelga huella huerta huerto hueso huevo humanidad
        humedad humildad humillacion humo huracan ida identidad ideologia idioma iglesia ignorancia igualdad ilusion
        ilustracion imagen imaginacion imitacion impedimento imperativo imperio implantacion implicacion importacion
        importancia imposicion impotencia imprenta impunidad inauguracion incapacidad incidencia inclinacion inclusion
        indicacion indicio indiferencia indignacion individuo indulto industria inercia infancia infarto infeccion
        infierno infinidad inflamacion informacion infraccion ingenieria ingenio iniciacion iniciativa injusticia
        inmigracion inmueble inmunidad innovacion inocencia inquietud inscripcion insecto inseguridad insercion
        insistencia inspiracion instalacion instancia institucion instituto instruccion instrumento integracion
        integridad inteligencia intencion intensidad interes interrupcion intervencion intimidad intolerancia
        intoxicacion intriga introduccion intuicion inundacion invasion invencion inventario inversa inversion
        investidura invitacion inyeccion ironia isla jamon jaque jaula jazz jefatura jefe jerarquia jersey jet jinete
        jornada joya joyeria jubilacion juego juez juguete juramento jurisdiccion justicia juventud kilo kilometro
        laberinto labio laboratorio lactancia ladrillo lago lagrima laguna lamina lampara lana land lanzamiento lapso
        latitud laurel lazo lealtad leccion leche lecho lechuga lectura legado legalidad legalizacion legislacion
        legislatura legitimidad lema lengua lenguaje lentitud lesion letra leucemia ley leyenda liberacion liberalismo
        libertad licencia licenciatura liceo licitacion lider liderazgo lienzo lima limitacion limon limpieza lino
        liquidacion liquidez listado literatura litoral litro llamamiento llanto llanura llave llenado lluvia lobo
        localidad localizacion locura logotipo loma lona longitud loro lote lucro lujo luna luto luz madrugada madurez
        maestria mafia magazine magia magistrado magnitud mago majestad maldicion malestar maleta malla manada
        mandatario mandato manga mango manipulacion mano manta mantequilla manto manufactura manuscrito manzana mapa
        maquinaria maraton maravilla marea margen mariscal marketing martillo masacre masaje mascota matanza materia
        maternidad matrimonio mayoria mazo mecanismo medalla mediacion medianoche medicacion medicamento medicina
        medicion medula mejilla mejoria melancolia melodia membrana memoria memorial mensaje mentalidad mentira
        mercaderia mercado mercancia merced mercurio merito mermelada mesa meta metabolismo metal metodo metro
        mezquita microfono miedo miel miembro mierda milagro milenio milicia militancia milla millon mineria
        ministerio ministro minoria mirada misa miseria misil mision misterio mitad mitin mito mitologia mobiliario
        modales modalidad moderacion modernidad modificacion molestia molino monarca monarquia monasterio moneda monje
        monopolio monstruo montaje montana monumento morada mostaza motin motivacion moto motocicleta movilidad
        movilizacion movimiento mozo muchacho muchedumbre mudanza mueble muerte muestra multitud mundo muneca muneco
        municipio muralla muro musa museo musica musico nacimiento nacion nacionalidad nacionalismo naranja narco
        narcotrafico narracion natacion naturaleza naturalidad naufragio nave navegacion navio nazismo necesidad
        negacion negligencia negociacion nervio neutralidad nevada nicho nido niebla nieve nivel nobleza nocion
        nombramiento nominacion non noreste norma normalidad nostalgia notario noticia notificacion novedad novela
        noventa novio nube nuca nudo nueve nulidad oasis obediencia obispo objecion obligacion observacion
        observatorio obstaculo obtencion ocasion oceano ochenta ocio ocupacion odisea ofensa oferta oficialismo
        oficina oficio ojo ola oleada ombligo omision onda opcion operacion opinion oportunidad oposicion opresion
        optimismo oracion ordenacion ordenamiento ordenanza oreja organismo organizacion organo orgullo orientacion
        origen originalidad orilla orquesta ortografia oscuridad oso oveja pabellon paciencia padron paisaje pajaro
        palabra palacio paladar palanca paleta paliza palo paloma panaderia panel panico pano panorama pantalla
        pantano panuelo panza papel paquete par paradigma paradoja paraje paralisis parametro paranoia parcela parche
        pared parentesco parentesis paridad parlamento parque parrilla parroquia partida partido parto pasaje
        pasaporte pasarela pasillo pasion pasta pastel pastilla pasto pata patada patata paternidad patio pato
        patologia patriarca patrimonio patriotismo patrocinio patron patronato patrono pausa pauta payaso peaje pecado
        pecho pedagogia pedazo pelicula pelota peloton pena pene penetracion peninsula pensamiento pension peon
        percepcion pereza perfil perfume periferia perimetro periodismo periodo perjuicio perla permanencia permiso
        perro persecucion persona personaje personalidad perspectiva pertenencia pesadilla pescado pesimismo peste
        peticion petroleo pez piano picada picado pie piedad piedra piel pierna pieza piloto pino pintura pipa
        pirateria piscina pistola pizarra pizca placa plaga plagio plan planeta plantacion plantel plantilla plata
        plataforma platano plato playa pleito plenitud plomo pluma pluralidad plus poblacion pobreza poema poesia
        poeta polarizacion policia pollo polo polvo ponencia popa popularidad populismo porcentaje porcion pornografia
        porro portada portal portavoz posesion posgrado posibilidad posicion poste postre postura potestad precariedad
        precio precision prediccion predio prefecto preferencia prejuicio premisa prenda prensa preocupacion
        preparacion prescripcion presentacion preservacion presidencia presion prestacion prestamo prestigio
        presupuesto pretension pretexto prevencion prevision princesa principio prioridad prisa prision privacidad
        privacion privilegio proa probabilidad problema procedencia proclamacion produccion producto profecia
        profesion profesorado profundidad programacion progresion prohibicion projimo prologo promedio promesa
        promocion propagacion propaganda propiedad proporcion proposicion proposito prorroga prosperidad prostitucion
        prostituta protagonismo proteccion proteina protocolo prototipo provecho providencia provincia provocacion
        proximidad proyeccion prudencia prueba psicologia psicologo psiquiatra psiquiatria pub publicacion publicidad
        pueblo puerta puerto pulmon punado punta punto puntuacion puta querella queso quiebra quincena rabo racha
        racismo radar radiacion radicalismo radio raiz rally rama ramo rana rancho rango ranking rap rapidez ras rasgo
        rastro rata ratificacion rato raza razonamiento reaccion realeza realidad realismo realizacion rebano rebeldia
        rebelion rebote recaudacion recesion receso receta recibo reciclaje recinto recital reclamacion recoleccion
        recorrido recreacion recuento recuerdo recuperacion recurso red redaccion reduccion reeleccion referencia
        refineria refuerzo refugio regeneracion reggae regimen region regla reglamento regulacion regularidad reinado
        relacion relampago relevancia relevo relieve reloj remodelacion remuneracion rendicion rendimiento renovacion
        rentabilidad reparto repercusion repertorio repeticion reportaje represion reproduccion republica reputacion
        requisito res resaca residencia resistencia resolucion resonancia respiracion respuesta restauracion
        restriccion resultado resumen retablo retencion retorica retroceso reunion revancha revelacion reverendo reves
        revolucion revuelta riego riesgo rifle rima rincon rinon riqueza risa ritmo rito rivalidad robot roca rodaje
        rodilla rollo romance romanticismo ron ronda ropa rosa rosario rostro rotacion rotura rueda ruego ruido ruina
        ruptura ruta rutina sabana sabiduria sable sabotaje sacerdote sacramento sacrificio salario salon salsa
        salvacion sancion saneamiento sanidad sarcasmo sargento sarten sastre satelite satira satisfaccion seccion
        secretario secta secuela secuencia sede segmento segregacion seguimiento seguridad seleccion selva semaforo
        semana semanario semejanza semestre semifinal semilla seminario senal sencillez seno senoria sensacion
        sensibilidad sentencia sentido sentimiento separacion sequia serenidad serie seriedad servicio sesenta sesion
        set setenta seudonimo sexo sexualidad shock show sida siembra sierra siesta siglo significado signo silla
        silva simbolo similitud simpatia simulacion sinceridad sindicato sindrome single sintesis sintoma sintonia
        sirena sistema sitio situacion soberania sobredosis sociedad socio sociologo socorro soda sofa sol soledad
        solicitud solidaridad solucion sombra sonido sonrisa sorpresa sotano status stock subasta subsidio
        subsistencia subsuelo subvencion sucesion suceso suciedad sucre sucursal sueldo suelo suerte sufragio
        sufrimiento sugerencia suicidio suite superacion superficie superioridad supermercado supervision suplemento
        suposicion supresion surgimiento suroeste suscripcion suspension suspenso suspiro sustancia sustitucion
        sustituto susto tabaco tabla tabu taco tajo talento taller tamano tango tanque tarea tarifa tarjeta tarta tasa
        taxi taza teatro techo tecla teclado tecnologia tejado telefonia telefono telegrama telenovela telescopio
        television telon tema temperamento temperatura temple templo temporada tendencia tenis tension tentacion
        tentativa teoria terapia tercio terminologia ternura terremoto territorio terrorismo tesis tesoro test
        testamento testigo testimonio texto tiburon tic ticket tienda tierra tigre tinte tiron tiroteo titere tito
        titularidad toalla tobillo tolerancia tonelada tono top tormenta torneo tornillo torno toro torre tortilla
        tortuga totalidad tour tradicion traduccion tramitacion tramo trampa trance tranquilidad transaccion
        transcurso transicion transmision tranvia trasfondo trastorno tratamiento travesia trayecto trayectoria tregua
        tren tribu tribuna tribunal tributo trigo trilogia triple tripulacion tristeza trofeo tronco trono tropa trozo
        truco tuberculosis tuberia tubo tunel turismo turno ubicacion umbral unanimidad unidad unificacion union
        universidad universo uranio urbanismo urbanizacion urgencia urna utilizacion utopia uva vaca vacaciones vagon
        vaina vainilla valencia valentia valia validez valle valoracion valvula variacion variedad vaso vecindario
        vegetacion vegetal vejez velocidad vena veneno venganza venta ventaja ventana ventanilla veracidad verbo
        verdugo vereda veredicto verificacion version verso vertigo vestibulo vestimenta vestuario viabilidad vicio
        victima victoria vida video videojuego vidrio viento vientre vigencia vigilancia vigilia villa villano vina
        vinculacion violacion violencia virtud virus visibilidad vistazo vitalidad vitamina vivienda vocacion voltaje
        volumen voluntad votacion voz xenofobia yacimiento yeso zanahoria zapato zar zoom zorro zumo
        """,
    ),
    "et": (
        """
        aarne abar abarik ablas aegne agar age ahas aher ahmane ahtake ainuke ainus ajalik akane alaage aldis algne
        alp alune ammune are arev arg argas argine arglik argne armas arukas asine asjane auklik aulik auline aupull
        aurune aus aval avalik avar beez blond eakas ealine eavahe ebaaus edev edukas ehe ehtne eilne ekslik elev elus
        emalik emane endine epakas ere erk esmane eurone folk habras hadine hagus hahk halb hale halgas haljas hall
        hamar hamune harras harv harvik hatune hele hell hellik hepik higine hiir himur holbus holpus homne hoogne
        hoogus hoolas hore hork hubane hull hupik huplik huvak igav igerik ihar ihmjas ihnus ihulik ihusoe iidne ilane
        ilmlik ilus imal imar imelik irdne irvik isane isekas isukas jaane jabur jahe jahune jaik jaine jalane jale
        jalk jame jamps jarsk johker jonk joodik joonik joudik joukas juhm julm kabe kade kaesoe kahar kahe kahune
        kalane kaldne kale kalk kallak kallis kare karine karm karmas karsik karune kauane kaudne kaval keerd kehv
        keks kelm kelp kenake kesine keskne kibe kidur kihuke kihvt kile kilone kimar kime kindel kitine kitsas kitsik
        kiudne klaar klatt kloss kobe kobus koer kohe kohev kohn koikne kole korb kordne kore kork kosser kotjas kover
        krabe krants kreem krell kribal kriim krobe kuiv kuldne kulm kume kumer kups kurb kuri kurt kusene kuudik
        kuuene kuum kuune laadne labane ladvik lagane lage lahe lahine lai laisk laiuke laiune lame lamp lapane lapik
        lapsik laudne lausik lausk lehine lehtne lepane leplik lepne libe ligane lige lihane lihav lihtne liiane
        liigne liitne limane linane linlik lobus lodev lodine logane lohine loid loll lombak loomne loplik lopp lorts
        lotv luhike luider luine lumine lurr luune madal mage magine magus mahe maias maine maokas marg marune matlik
        mats matt meelas meelne meene mehine merine mesine metsik mihkel modern moeehe moekas monus moodne morn motlik
        mudane mugav muhe mukk muldne munane mure murune must muuk nagus nahkne nailik naokas naone napp narb narr
        narts narune nidus nigel nips nobe noder nogine nogus nohik nohune nokjas nome noobel noor nork noukas nukker
        nurkne nutune nuudne obluke odajas odav odus oel oevane ogajas ogar ohe ohkorn ohter ohtlik ohtune ohuke
        ohusoe oiekas oilis oine oksene oksine okslik olakas olgne olijas oline ollene omane onnis ontlik oolamp
        oomine oones oopime oosine opakas oplik orajas oranz orn ornuke osav otsene oudne paat paene pahh pahur pahv
        paike paine paks paljas parane paras pasane paslik patune peaehe pealne peatne peen pekine pelk peps petis
        petlik pidev pidune pigine pikk piklik pikuke pilges pime pinev pingne pire pirts pisike pisuke plank plass
        plink podur pogus pohune poline ponev ponks ponts poolik poorne popp porine pouane prink proff pruun pude
        pudel pudev pudine pugal puhas puhev puhune puine pull punane punjas pustne puune rabal rabane rabe rabune
        ragane rahene rajune ramb rame rammus ramps ranine rank rapane raps rase rasune raudne reibas rekk renjas
        rikas risune rogane rohtne rohune roid rokane roobik roogne roomus roopne roosk ropane ropp rove ruljas rumal
        ruve sabar sabrik sage saiane sajane sajune saksik sale samane sant sapine sare sarts sasine sataan sauene
        savine sealne segane senine siga sihker siidne siinne siiras siivas sikk sile sinine sire sitane sitt soakas
        sodine soene sogane soge soine somer soodne soodus soorik sopane sorav sore sugune suine suline sulnis sume
        sumune sunk sunnis supine suudiv suur suvine tabar tagune tahe tahine tahnik taimne taine takune taline tanane
        tapne tark tatine tegus teokas terane terav tige tihe tiidus tikjas tinane tine toasoe tobe tobine tobuke
        toekas toene tohe tohm tohus toimne toine tolmne tolp tomp tonts tookas toores toosoe tootus tore torges torm
        toss totlik totter traks tubane tuhane tuhi tuhine tuhkur tuhm tuhnus tuim tulgas tuline tulus tume tumm
        tunane tunjas turb turd tuse tuttav tuun tuupne tuur udejas uhene uhiuus uhtlik uhtne uimane uje uksik ulakas
        uldine ulev uljas ullas umar umarik umbne unesoe unine urbne urgne usin usjas usklik uudne uurike uus vaanik
        vaar vaarne vaene vagane vagev vagune vagur vahane vahe vahune vaike vaikne vaimne vakane vale valev valine
        valsk vanune vapper varane vargne varmas vasak vaskne vastak vastik vastne vatine vatjas vedel veesoe veider
        verene verev verine vesine vidune vigane vihane viiene viimne viks vildak vile vilets vilgas viril virk viss
        voigas voik voine volts voodik vooras voorik vordne vosane
        """,
        """
        aabe aabits aade aadel aaker aaloe aam aar aara aas aasta aatom aazio abi abort absats absint absurd abt
        abtiss adal ader adru advent adverb adzaar aed aeg aer aeroob afaar afekt afgaan afiks afiss agaav agar agenda
        agens agent agin agoraa agu agul aguuti ahe ahel ahhaat ahing ahk ahm ahter ahv ahven aiakas aiatar aids aike
        aikene aim aimakk aine aines ainu airaan ais ait ajam ajastu aje ake aken akne akonn akord akt aktiiv aktiva
        aktsia aku akuut ala alaldi alang alarm alasi ale aleuut alev alfa alfons alg alge alibi alk alkeen alkoov
        alkuun allee alleel alluur alotsa alpaka alraun altar altonn alune alvar alves amb amber ambra amet amfiib
        amfora amm amoob amort ampel amper ampiir amps ampull andam andunu ang angaar aniis ankeet ann annak anood
        anorak anskop antenn aort apard apats apeks apell aplomb apogee aprett aps apsat apteek arapp ardenn areaal
        areen areng arest aretis arganu argoo argoon arhiiv arhont ariett arikas arkaad arkaan arkel arm armee armuke
        armunu arn arokk aroom arp arrak arriti arseen arssin arstim artell arter artu aru arv arve arvuti asalea
        asbest ase aser asfalt asiaat asjake askees askeet aspekt astaat astang aste asteek astel aster astma asukas
        asula asuu atakk ataman atasee atlant atlas atlass atleet atoll atskoo aua audit auk aul aula aun auster auto
        auul avaar avang avanss avardi avarii avenuu avers aviett aviis avraal baaba baar bager bagi bai bait bajaan
        baksis bakter ball balokk balsa banaan bandzo bantu baobab barakk barbar bard barett barokk barrel barter
        basaar basalt bask bass bataat batoon batuut beebi beeta beetel beez bei beibe bekaar bekarr bell bemoll
        bengal benss bentos berber berull besee bestia betoon bidee bill bingo binoom bisnis bitkii bitt bitter bivakk
        blokk bluff boa bobi bodi boheem boi boiler bojaar boks bokser boliid bonne bonsai bool boon bordoo bors boson
        boss boston botas brass bridz briis brioss britt bronh bronsa broom brulee bruto bubert buboon bukett buklee
        buklet buldog bulla bulvar buraan burger burka buroo burs burzui busman buss bust butaan daalia daam daativ
        daina daktul damast dandi darg dattel debatt debiil debuut deebet deebit deemon deemos defekt dekaad dekaan
        dekk delikt delta demars demo denaar denim depess depoo derbi dervis detail deviis devon diees dieet diiler
        diisel diiva diivan dinaar dinee dingo diood diplom dipood dipool dipp dirhem disain disko diviis djakk dofaan
        dogi dogma doina dokk dollar dolman dolmen domeen doodz doos doping draama drahm draiv drapp drazee dredz
        dreen drell dress drill drink droog druaad druiid duaal dublee duell duett dunamo duo duool duss duubel duuma
        duun duus dzass dzaul dzemm dziig dziip dzinn dzoki dzonki dzott dzuudo dzuut eakas ebard ebe edel edikt edu
        eefeu eelis eepos eesel eeta eeter efekt egiid ego ehe ehis ehitis ehmes eideke einela eit ekker eklaar ekraan
        eksam ekseem eksiil eksinu ekuu elajas elamu elatis elling ellips elu elukas email emakas emane embruo emfaas
        emiir emis emm emu enelas ennak ensuum eos eosla epee epohh epopoa eputis erak erakas erakla eramu erg erguti
        erim eritis erk erker ersats eru ese eselon esi esitis eskarp eskiis eskimo eskort esprii ess essee essiiv
        estamp esteet ester etaan etalon etapp eteen etnos etrusk etui etuud eunuhh euro eurone eveen evenk faag faas
        faasan fagott fail fakiir fakkel faks fakt fallos fanatt fann farad farm farss faun fauna fellah felukk fenkol
        fenool ferm fess feta fetis fiasko fiiber fiider filee filler film filter finaal finess finis finn firma
        fistul fiting fjord flaam flaier flegma fliis flirt floks floora floot flopi flopp fokk foks folk fonduu
        foneem font foobia foogt foolio foon footon fopaa forell forint fort fortis foto foul fraas frakk frank frees
        frents fresko friis frits front frotee frukt fuajee fugass fuksia fulaar fulbe funk fuuga fuurer fuuria fuusal
        fuusis gaas gael gaid galeer gall gallon gallup galopp gameet gamma garaaz garant gaseel gasell gauss gautso
        gavott geel geen gei geim geisa geiser gemm genees genoom geoid gepard geront geto gibon gigant giid gild gini
        ginko gipuur gliia glogi gloss gneiss gnoom gnuu golf gondel gong goot gorl gospel graan gramm grant greif
        greip grill grimm gringo gripp grisli grivna grogi grokk groot gross grott grunge grupp grups guaano guass
        gupi gursa guru haab haage haagis haak haal haamer haan haar haare haarem haav haavel habe habi hada hadron
        hagu hahk hai haigla haiku haip haire hakass hakk hakker halatt halg hali halin haljak hall halo halss halvaa
        halve hamar hame hammas hamsa hamu hang hani hansa hant hantel hape harf harg hark harm harta haru hasart
        hasis haspel hatt haue haug haugas hausa hautis having hea hedebo heeder heeros heide heie hein hekk hektar
        heli helin helk hellen heller helmes helves helvet henri herero heres hernes herpes herts hetaar hetero hetk
        hetman hevea hevi hibisk higi hiid hiile hiir hiis hilp himu hindu hing hinge hink hinne hipi hirm hirss hirv
        hitt hobe hobi hobu hobune hoiak hoid hoidla hoie hoige hoim hoise hoisk hoive hoki holjuk holopp holp holst
        homaar homo hoob hoog hool hoole hoone hoop hoov hopakk hord hornas hosta hostel hostia hotell huaan hubin
        hudi hudra hui huige huile hukatu hukk huljes hulk hull hulss humal humin humn hunt hunta hupak hupe hupits
        huraal hurm hurmaa huroon hurt husaar hutike hutt huud huue huul huumen huup huuve huuvis huvang ibeer ida
        ideaal idee idioom idioot idu idull ige iglu igrek iguaan iha ihk iibis iidol iil iileks iiling iiris iisop
        iive ike ikoon iks ila ilm ilme ilming ilu ilves imaam imago imar imidz immuti import imu indeks indigo inerts
        infant infiks info ingel inguss ingver inin insekt insult inter intern inuit invar ioon ioota irin irv irve
        isake isane ishias islam issi iste istung itk iva ivake jaager jaak jaam jaanu jaanuk jaarak jaatis jada jahe
        jahm jaht jaide jakk jaks jakuut jalam jalats jalg jaluts jalutu jamb jamps jamss janes janki janku jant
        jaotis jaotla jard jarg jari jark jarl jarsak jarv jase jaspis jate jatis jatk jauram jeekim jeen jenka jeti
        jett jidis jobi jobin jobu jogi jogurt johv joig jojo jokker joll jomin jomm jonks jonn joobnu joode joodu
        jooga jook joom joomar joot jootel joove jope jopp jorin jorjen joru jospel jota jott joud jouk juaan judin
        juha juhe juhis juhkam juhm juht jukola julk julla jumal jumbu jume junga junger junn junts juntsu jupats jupp
        jurta juss juts jutt juubel juudas juura juust juut juveel kaabas kaabe kaabel kaabu kaader kaadi kaak kaal
        kaamel kaamos kaanak kaanon kaap kaar kaard kaaren kaart kaas kaater kaatet kaav kabala kabard kabel kabi kabu
        kabun kada kadett kadin kadri kadu kadunu kaenal kaer kaetis kaeve kaevis kaftan kagar kagin kagu kaha kahhel
        kahing kahju kahk kahl kahm kahv kahvel kaif kaigas kail kaim kaiman kaimla kainer kainu kaiss kait kaitis
        kaive kajak kajakk kajut kakao kakar kakk kakuam kala kalasi kaless kalev kali kaliif kaljas kalju kalka
        kalkar kallak kalle kaller kalm kalme kalomm kaloss kalts kama kamal kamar kamass kambas kamber kamee kamin
        kamm kammal kamp kamper kampol kamps kana kanal kanala kandam kaneel kanep kang kangas kanjon kankar kann
        kanne kant kanton kantri kants kantu kanuu kanvaa kapak kapard kapell kapo kapott kapp kappar kapron kapsel
        karaat karask karbe karbon kard kardin karg kari karibu kariib karin karjak kark karm karman karn karner karp
        karree karss karst kart karter kartul karu karv kasahh kasarm kask kasn kass kassa kassia kast kaste kasuub
        kasv katarr katgut katis katk katood kauboi kaugas kaula kaun kaup kauri kauss kaust kava kaver kavern kebab
        keder keedis keefir keegel keel keeld keem keemia keep keerd keere keeris keerub keet keetel kefaal kefiir
        keha keigar keiser kekats keks kelder kelk kell kellu kelm kelme kelner kelp kelts kemps kenaff kepike kepp
        keps kera kere kerge kerss kese kess kest kesv keta ketas ketser ketsua ketsup kett khaan khaki khmeer kibe
        kiber kibu kibuts kida kidin kigin kihar kihin kihk kihn kiht kihu kihv kihvt kii kiide kiige kiiker kiiks
        kiil kiim kiip kiir kiird kiisel kiisk kiisu kiiver kiivi kikas kiki kiku kilbis kild kile kilg kilge kili
        kilin kilk kilo kilp kilpla kilt kilter kilts kilu kimaar kimar kimber kimm kimmel kimono kimp kinge kink
        kinnas kinner kinnis kino kints kiosk kipp kipper kips kirg kiri kirin kirjak kirje kirka kirmas kirme kirn
        kirp kirre kirs kirsa kirss kirst kirts kirurg kirves kisk kisma kitarr kitoon kits kitt kittel kiud kiun
        kiust kivi kivike kivim klaas klade klahv klann klants klapp klass klats klaver kleep kleeps kleit klemm klibu
        klient kliima klikk klimp klint klints klipp klips klirin klisee kloaak klomp klonks kloon klopp klots kloun
        klubi klugin klump klutt knihv kniks knopka koaala kobar kobjas koblas kobra kobras koda kodar koder kodutu
        koelmu koer koeras koetis koger kogin kohort kohr koht kohuke kohv kohver koi koib koidis koiku koiott koiv
        koka kokard kokats kokett kokill kokk kokni kokott kokpit kolar kolask kolb kolgas koljat koljee kolju kolk
        kolle kolli kolonn koloss kolp kolt kolu kolumn komeet komet komii komin komp kompra komps komu konar kong
        koni konjak konka konks konku konn konnak kont konto kontra konts konvoi koobas kooda koodon kook kookon kool
        koola koold koolnu koolon koom koomen koomes koonal kooner koopia koorem koosa kooste koot kopeer kopp koppel
        kopra kopt kopter koputi koraal koraan korall korb kordne kordon korgas kori korin korint korje korne korp
        kors korter korts korup korv kosk koskel kosmos kosser kost koster kosunu kotedz kotkas kotlet koturn kou
        kouss kouts kovasi kover kraabe kraad kraade kraal kraam kraan kraana kraap kraaps kraas kraat kraav krabi
        krabin krae kragin krahh krai kramm kramp krants krapp krasu kratt kreedo kreek kreem kreen kreeps kreis kreml
        kreool krepp kresla kress kribal kribu kribul krigin krihv kriim kriips kriis kriise kriket krill krimka
        krimps kriska kroaat krobi krobin krogin krohv krohva kroket krokii kroll kromps kronks kronu krooge krool
        kroom kroon kroonu kroot kross krudin krunn krunt krupp krupt krusa kruss kruup ksero kubar kube kubel kubjas
        kubu kude kudi kudu kufoos kugin kuhi kuhil kuhje kuhm kuhvel kuiv kuju kukal kukits kukk kukkel kula kulak
        kulbas kuld kulden kulg kulgla kuliss kulits kuller kulles kulm kulon kulp kult kulv kulvis kumin kumm kummel
        kummut kumnis kumokk kumoss kumu kungas kunst kunts kupaaz kupar kupee kupits kuplee kupong kupp kuppel kupsis
        kupuur kuraas kurass kurd kuree kurg kuri kurii kurin kurk kurn kurss kurt kuru kurv kusett kute kuts kutsa
        kutsar kutse kutt kutter kuub kuular kuuld kuulnu kuulo kuun kuunal kuunar kuunis kuur kuuria kuusk kuvaar
        kuvar kuvoos kvadro kvant kvark kvart kvarts kvasar kvint kvoot laad laadne laag laager laam laama laan laap
        laar laas laast laat laats laava laba labak labu lade ladem ladin ladu laegas laeng laev lafett laga lagi
        lagin lagle laguun lahang lahas lahi lahin lahing lahits lahk lahker laht lahter laid laige laim laine lainer
        lainu laip lakard lake lakei lakuun lalin lamam lamang lamb lambda lamee lamell lament lamm lammas lamp landoo
        lang lank lanne lant lants laos lapats lapike lapp lapsaa laptuu larhv larin larm larv laser lasila lask lass
        lasso last late lateks latern latgal latt latter latu latv laube laud laudi laudis laug laugas lauk laul lause
        laut lauter lauto lava lavass lavats leede leeder leedi leelis leelo leem leen leenis leepra leer leev legaat
        leheke lehis lehk lehm leht lehter lehtla lehv leib leid leier leigar leil lein leitse leitu lekaal leke lekk
        lelu lemb lemm lemma lemme lendla lendva leng lennuk leotis lepe leping lepp lesbi lesila lest leste lett leu
        levila levinu levkoi liaan libe libell lible libu lidin lift liga ligu liha lihas lihe lihter lihv liide
        liider liides liig liige liiges liikva liilia liim liimes liiper liir liisk liiter liiv liivak lill lilla lima
        limaan limb limbo limps limune limusk lina linask lindla ling link linn linnak lint lipats lipiid lipits
        lipoom lipp lips liru lirva lita lito lits litt litter liud liug liusk livree ljaano ljoo lobe lobu lodi lodin
        lodu lodza loeng loetu loga logar logard logask logo logu logusk lohang lohe lohi lohin lohis lohk lohn loht
        lohuke lohv loib loide loige loikam loits loiv lokaal lokats lokaut loke lokk loks lokuti loll lombak lomp
        long lonks lont lontu looder loodu loog loojak look loom loomar loop loor loosk lootos loots loove looz lopnu
        lopp lops lorts loru loss lotk loto lott loug louna loust lovi lubi luga lugem lugu luht luhter luide luisk
        luke lukk lukra lumf lumi lumm lumpen luna lunk lunoid lupard lups lurin lurr lusi lust luts luu luud luuk
        luul luule luumen luup luure luus luuser maadam maag maage maagia maak maakas maaler maania maare maatu mada
        madar made madin madis madjar madu maffia magala mager magi magma magnet magu magun mahk mahl maht mahv maia
        maidel mailer maim maine mais mait majake makaak makett makk makro maks makse maksi male malev malk mall malm
        malts mambo mamm mammon mammut mamsel manala mandel mander maneer maneez mang mango manisk manner mansak mansi
        mantel mantoo mapp mara marabu maran marasm marge mark markel marker markii marli marsa mart marter maser
        masin mask mass mast mastif masu masuut matas matk mats matsa matt mauk mauser medal meede meedia meel meem
        meene meer meeter meetod megaar mehike mehu meier meigas meiler meioos meisel mekk melanz melass meliss melon
        melu memo menaaz menhir menisk ment menu menuk menuu mergel meri mesi mesila meski meson mess mest metaan
        metall metroo mets metsis mett mihkel miider miil miim miisu miiu mikron mikser miljoo mimoos minek mini mink
        mintai minut miraaz mirt misjon missa missis mistra mitra mobiil modell modem modu mogin mogul mohaar mohk
        mohn moigas moira moire mois moiste moiva mokk moks moku mold molder molin molk moll moment momin momm monaad
        monarh mongol monu moobel mood mook mool moolok moon moone moos moot mopeed mopp mops mora moraal mord moreen
        morg morin morse morsk morss mort morv morvar mosee moslem mote motell motett motiiv moto muaree muda mudel
        mudil muffin muflon mufti mugar mugri mugul muhin muhk muhkam muhv muie mukoos muks mulaaz mulatt muld mulder
        mulgas mulin mulje mulk mull mults mumm mumps munder munk munn munt muoom murd murel murgel murjan murk murkel
        murr murrak mursaa mursk murt muru musett musi muskel musket musli muslim muster musu mutant muti mutike
        mutoon mutsak muuk muumia muuon muur muusa muuser muut naabob naagel naal naaps naar naare naasnu naast naat
        naba nadal nadi nadiir nadu nael naer nafta naga nagaan nahaal nahe nahin nahk naht nahv nahvak naide naidis
        nailon nainu nait najaad nake nakk nalg nali namaas namm nanai nandu nann napalm napits napp naps narkar
        narmas narr narta narts naru narv nasa nasaal nass nats neeger neel neem neer neet nefron neidis neitsi neiuke
        nekrut nektar nelk nelson neoon nepman nepp neste neuron nibu nigin nihe niide niiduk niis niisk nikk nikkel
        niknak niks nilgau nimi ninats niplis nipp nippel nips nire nirin nirk nisa niss nisu nitrit niue nivh nivoo
        nodi noel noges nogi nogu nohin nohu nokats nokis nokk noks noksak noku nolk nolv nolvak nomaad nomm nooge
        nook noomen noon nooruk noot noova nops nord nore norg norm norse nospel nosu notar notk notke notsu nott nou
        noue nova novell nuanss nublu nubuk nubul nuga nuhk nui nuke nukits nukk nulg number numf nunn nupp nuppel
        nurg nurk nurm nuss nutria nuts nutsak nutt nuukse nuut nuuter oaas objekt oblaat oblast oboe obrok oda oder
        oeldis oeldu ofort ofset oga ogard ohakas ohatis oherdi ohk ohmu oht ohutis ohver oim oinas okaapi okas okis
        oks okse okseti oksiid oksjon oksool oktaan oktaav oktav oktett olak olek olem oleng olg oliiv olme olmeek
        olnu olu omlett onar ong onku onn onnal onnar oober oodatu ook ookean ooker ooline oomen oonuks ooper oos oots
        ootse oov opaal opakas ope opiaat oping opitu opman opp optant ora oraal oranz oras orav orb orden order ordu
        orel oreool org organ orgasm orgia ori orient orikas orin ork orkaan ornaat ornung ors orsted orv osa osak osi
        osis osm osman osmoos osoon oss osseet ost ostjak otoman ots otsak otsing oud ouhka oun ovaal ovraag paabel
        paabu paak paal paan paapua paaria paas paasla paasu paat paater paatos paaz paber pabin pabul pada padi padin
        padrun padu pael paella paev paevak pagar pagas pagi pagin pagood pagu pagun paha pahin pahk pahkel pahmak
        pahn pahtel pahv pahvak paigas paike paits pajats paju pajuk pakane pake pakett pakitu pakk paks pakt pakutu
        palang palat pale palee palett pali palitu paljak palk palkon pallon palm palsam paluke palve pamp pampa
        pampel paneel panek pang pangas pank pann pannal pannoo pant panter papaia papp pappel paps papu para paraad
        parak parask pard parees parg parh paring paritu park parka parkal parkla parl parm parmas parn parool parras
        pars parsek part partei parter partii partla parts parv parvis pask paskal pasmas pasmer pass pasta pastel
        pasun patent patt pau pauk paun pauper paut pealis pealne peane peats pedaal pedant pede pedell pee peegel
        peeker peekon peel peenar peenis peer peerg peeso peet peiar peide peig peil peit peitel peits peiu pekk peks
        peled pelg peli pell pendel pengo peni penn penss peo peoleo peoon pepita pepu perkal perlon perm perse peru
        perv pesa pesu pesula pete petis petkel pett piaal pidal pide pidu pidzin pigi pihk pihl piht pihu pihv pii
        piibel piiber piiga piilar piim piinia piipar piir piird piire piisam piisk piison piits pikap pikee pikett
        pikk pikker pikne pikolo piksel pikuke pilaff pilak pilbas pilet pilgar pilge pilk pill piloot pilsen pilss
        pilt pilu pilv pime pimss pinal ping pinge pinin pink pinn pinnas pinser pinsol pint pinu pipar pipett piraat
        pird pirin pirn piroog pirts pisar pisku piss pissu piste pita pits pitsa pitsat pitser piug plaan plaat plaaz
        pladin plagin plagu plakat plank plarin plaru plasku plasma plast platoo platt platu plebei pleebs pleed
        pleier pleiss plekk plett pleura plevna plii plink ploga plogin plokk plomm ploom plumps pluss plutt pluus
        pobin pobul poder podest podin poeem pogri pohi pohk pohl poi poial poieke poige poim poime point poisu pojeng
        poju pojuke pokaal pokats pokker pold polder poleer polem poleng polenu polg poli poliis polis polk polka poll
        pollar polmas polo polt poluup polv pomin pomo pondak poni ponks ponn pont ponts pontso poobel poodu poogen
        pook poom poorak poort poosas popp porge porgu pori porin pork porm porn porno poro porru porss porte porter
        ports posk possa post poster posu potas poti potk potsku pott pou poud praad praak praam pragin pragu praht
        pralle prass prees press priim priis prikk prill print prints prisma prits pritse proff progin promm pronks
        proosa proov props pross prugi prunn prunt pruss pruuk pruul pruun psalm ptii puant pubi pude puder pudi pudin
        puding pudu pueblo pugmee pugu puhak puhamu puhang puhe puhk puhm puhmas puhv puhver puhvet puiste puit pujaan
        pujeng puju pukk puks pukser pula pulber puldan pulk pull pulm puloon pulp pulsar pulss pulst pult pumat pump
        pumpla punane pundar pune pung punk punkar punker punkt punn punnu puns punt pupe pupill pupp pura purask purd
        puree purgaa purk purre purse purst pursui pusa puskar pusle puss pussak pustol pustul putk putkes puts putt
        puu puud puuder puue puuk puuma puunis puur puutia puuton raa raabis raad raadio raag raak raal raam raamat
        raas raats rabak rabatt rabi rabin rada radar radoon radza raev raga ragbi ragin raguu rahe rahk rahm rahn
        rahu rahula rahvas rai raibe raie raig raim raitse rajoon raju rakats rake rakett raki rakis rakk ramm ramp
        ramps randal randla rani ranits ranne rant rantso rapiir raport rapp rappar rappen raps rapsak rase rask
        raspel rass rastas raster rasu rasv ratas rats ratsep ratt raud rauk raun rautis ravila ravim reaal rebane
        rebu redel redis redu reeder reegel reeper reform regaal regatt regent regi reha rehala rehi rehv reid reig
        reis reiv reket rekord relaps relee relikt relss relv remark remont rendzu renn rent rentei reo repro reserv
        rest retk retort retro rets retuss reuma revaar revans revers revolt revuu rezii reziim riaal riba ribi rida
        riff rigin rihm rihv rihvel riid riider riie riim riis riisk riiul riiv riive rike riksa ring ringe rinnak
        rinne ripats ripe rips ripse risk risoto risu ritv riugas rivaal rivi rober robin robot rodeo rodo rodu roe
        roga rogin rogusk rohk rohtla rohutu roid roie roigas roim roimar roisk roivas roju roke rokk rokkar roks roll
        roller romaan romb romu romula rondo rondoo rong ronk ront roobas roobe rood roog rook rool room roone roop
        roos roots roov rops rosett rosin rost roster rotang rott rouk rubaii rubla ruhk ruhm ruhv ruie ruigam ruiu
        rukis rulaad rulett rull ruloo ruloon rumb rumin rumm rump runk runnak runne runo runt rupp rups rusa ruse
        rutm rutt ruu ruube ruun ruupia ruus ruuste ruut ruutel ruutu ruuz saabas saabel saade saadu saag saaga saago
        saak saakal saalep saam saanu saar saaros saask saast saatan saatur saba sabane sabat sabin sabru sadam sade
        sadin sadul safari safian safiir safott safran saga sagar sagu sahh sahib sahin sahk sahmak saht sahvak sahver
        sahvt saiake saida saiga saile sainas saira sait sajane sake sakk sako saks sakumm salat saldo salg salk sall
        salm salong salsa salto saluut salv salvei samba sambo samet samm sammal sammas samott samp samss sandhi sang
        sangar sanker sanss sant sapp saraad sari sarin sark sarn sarp sarts sarv sarz sassii sataan sate satiir sats
        satter sau saud sauk saun savann savi seade seanss sebra sedel seebu seeder seek seekel seeme seemla seen
        seepia seerav seeria seesam seff sefiir segu sehvt seib seier seif seim sein seiner seire seisak seitel sekk
        sekser sekst sekt seleen self selg seljak sell sellak seller selts selva selve semlak semu senat senill sent
        seong seos seotis sepis seppel sepsis septim serail serif seriif serpa serri serv server sesoon sess sete
        setter setuke seviot sevroo sfaar sfinks sibi sibul sibull side sidrun siesta siffer sifoon siga sigala sigar
        sigma siht sihvka siiber siid siider siig siil siire siirup sikh sikk siksak sikuti sild silk sille silm silo
        silp silt simbel simman simmel simss sindel sinder sine sinel sinep singal singel sinine sink sinod sips
        sireen sirel sirge sirin sirkel sirm siroko sirp sisal sisin siss sisu sits sitt siug siuu skaala skaar skald
        skalp skatt skaut skeem skets skiff skisma skits skunk skvaar slahta slaid slakk slamm slang slepp slumm snitt
        snoob soba sobing soda soeng soerd sohk sohva sohver soiduk soim soit sojard sokal sokk sokkel solg solin solk
        solks solkup solm solve somer somp sonaat sonake sonant sone sonett song soodom soodu soojak sook sookla sool
        soolak soolo soom soomuk soonu soor soos soot sopis sopka sopp sops sorb sorg sorgo sork sorm sormis sort
        sorts soru sosar sosku soss sostar sotkas sots sott soud soue souke soul soust sovrin spaa spamm spasm sperm
        sperma spets spinat spinn spioon spits splint spoon sport sprint sprott spurt srift staap staar staaz stagna
        staier stamp stants start stepp stereo stigma stiil stipp stoll stoola strekk stress strets string stroof
        stseen stukk stuupa suaree suda sudoku sudu sufiks suflee suguti suhe suhin suhkar suhvel suige suir suit
        suits sukaad sukk suksu sulam suld sulem suletu sulf sulfit sulg suller sulp sumahh sumbol sumer sumin summa
        sumo sump sumu sunaps sunt supee supler suport supp surm surnu surve sushi susla suss sustal suste sustol
        sutaan suts suu suubla suue suula suulu suunis suura suusk suutel suvila suvis suzee svaab svamm svert sving
        taak taaler taane taapir taar taaste taav taavet tabatu tabel tabloo tabu tael taevas taft tagala taglas
        tagune tahitu tahk tahm tahn taht tahvel taig taigen taim taimer taimla tainas taip take takjas takk tako taks
        taksis takso takson takt tala talaar talb tald talent tali talje talk tall talmud talong taloss talrep tamber
        tamiil tamil tamka tamm tamp tandem tander tang tango tank tanker tankla tanner tanta tants tape tapeet tapetu
        tapiir tapp tapper tara taraan tare targe tariif taring tark tarm tarmin tarn taro tarokk tarre taru tarvas
        tarve tase tasku tass taster tatami tatar tatt taud taust tava tavaar tavern tavott teade teater teatis teave
        teder teek teema teenar teene teener tees teesis teflon tegu tehas tehe tehing tehtu teib teinu teip teivas
        teke tekk tekkel tekno tekst telder teleks teler telg telk teller temp tempel tempo tender tennis teos teping
        tera teras terjer term termin termos terts terve tervis test tester tiaara tibla tibu tibula tigu tihane tihvt
        tiib tiigel tiiger tiim tiir tiisel tiitel tiiter tiivas tike tikk tikker tila tilde tilder tilin tilk timpan
        timut tina ting tinin tint tipp tips tiraad tiraaz tire tiree tirel tirk tirts tisler tiss tita titaan tits
        titt tivoli tobi tobias tobila tobras tobu tobuke toeng tofu togu tohk tohl tohman toht tohter toide toim toit
        tokat toke tokk tola told tolge toll tolm tolner tolv tolvan tomat tombak tomme tommis tong tonks tonn tont
        toober toodu took toom tooner toop toora toore toori tootem tootu topaas topis topka topp tops topsel topski
        torge tori torin torje torm torn torp torpar torr tors torso toru torv tosi toslem toss toste tostuk toto tots
        tott tou toug touge touk traal traan traat traav trafo tragi tragun trahv traks trakt trall tramm trani transa
        transs trapp trass trauma treema treial trekk trell treng trenn trepp tress trett triaad triger triias triip
        triiv trikk trikoo trio triool tripp trits triumf trofee troll tromb troon troop troost tropp trops troska
        tross trots truba trukk trull trulla trumm trumoo trump trupp trust truup tsaar tsatsa tsehh tsekk tsello
        tsilli tsink tsoon tsuaan tsumm tsunft tsust tsuud tsuuga tuba tuber tudeng tuder tudike tuff tugi tuhar tuhe
        tuhin tuhk tuhv tuhvel tui tuiam tuige tuisk tuju tukat tukike tukk tukse tulek tulem tull tulnu tulnuk tulp
        tulu tuluke tulup tulv tumba tumin tumm tumps tundel tunder tundra tung tunn tuntu tupp tups tura turann turb
        turban turg turi turm turnee turp turse tursk turv turve turvis tusk tuss tust tutkas tutt tuttav tuub tuuba
        tuugas tuukan tuuker tuuner tuup tuur tuvi tuvike tuvila tviid uba ubin udar ude udehe udell udmurt udu udusti
        ufo uhhaa uhikas uhing uhistu uhmer uid uim uinak uisk uit ujuk ujula ukaas ulaan ulang ulg ullike ulm ulme
        ultra uluk uluss umbris umin umlaut umme undruk unelm ungas uni unioon unts uppunu uraan urask urb urg urgas
        urge urin urjukk urm urn urp urt urve usbekk usk uss utiil utmine utt uudis uuk uulits uur uuratu uuring
        uurits vaade vaag vaagen vaal vaap vaar vaarak vaarao vaas vaavel vabarn vabe vabin vadak vaene vaeras vaetis
        vaev vagant vagel vagi vaha vaheke vaher vahk vaht vahvel vai vaie vaier vail vaim vaip vaits vaiv vajak vakk
        vaks vaksal vakstu valamu valang vald valem valgla valgma valim valing valitu valjak valk vall valm valss
        valts valve vamm vamp vanake vandel vander vang vangla vanill vanka vanker vann vannas vanne vant vants vapiti
        vapp vaps varaan varamu varas varat varb vard vare vares vari varin varing varje varjuk vark varn varr varske
        varss vart varten varv varvas varvel vasall vasar vask vastar vaste vastne vatine vatman vats vatt veda vedel
        vedru vedu veduk veeb veebel veen veene veer veerem veerg veetse vein veis vekker veksel velaar velg velvet
        vemmal vemp vender vennas veok veos verb veri verme vermut verst vesi vesiir veski vesper vest veste vestu
        veto vets vibra vibu video vidin vidu viga vigane vigel vigin vigvam viha vihin vihje vihk vihm viht viibe
        viidas viig viiger viil viilak viiner viir viires viirg viiruk viisa viisk viiul viivis vikaar vikat vikk
        vikkel vikont viks vile vilets vilge vili vilin vilk vilks vill villa villak vilt vimb vimka vimm vimpel vine
        vineer ving vinin vinkel vinn vinnak vinnal vint vints vinu vinuul vioola vipp viraaz vird virg virin virn
        viroos virre virtin virts virve visang vise visiir visin viski vismut vispel viss vits vitt vobin vobla vodin
        vodka vogul vohang vohk vohm vohmas vohr voie voim voimla voit vokaal vokk volang volask volber voldas volg
        voli volks voll vollas volt voluum volv vombat vomm vonge vonks vooder voog voon voop vooras vope vops vore
        voreng vorge vorin vork vorp vorr vorre vorse vorst voru vosa vote voti votjak vott vrakk vuaal vuhva vulin
        vull vunk vunts vups vurfel vurhv vurin vurle vurr vurst vurts vusser vutlar vutt vuuk zaboo zanr zelee zest
        zetoon zgutt ziiro zilett zirant zlott zombi zooid zurii
        """,
    ),
    "fi": (
        """
        aamuisin aarimmainen aasialainen absurdi ahkera aikainen aikaisin aikuinen ainoa akateeminen akillinen aktiivi
        aktiivinen ala alainen ale alhainen ali alkuperainen allerginen alueellinen alustava ammatillinen ankara ara
        arkisin arkisto aro arsyttava arvoinen arvoisa arvoitus asiallinen aukea aurinkoinen autio biologinen
        brittilainen digitaalinen dramaattinen edes edullinen edullisin edustava eettinen ego ehja eka ekologinen
        ekonomisti elastinen ele elo ely emo enaa energinen eno ensisijainen entinen epamaarainen epaselva
        epatoivoinen epavarma era eri erikoinen erilainen erillinen erinomainen ero esiintyva esittava etela etninen
        etu eve fantastinen fiksu fyysinen geneettinen globaali globaalisti haastava hallitseva hallitus hamara
        hammentava hankala harmaa harmaat harva harvinainen hassu hauska hella helle henkinen herkullinen hetero hieno
        hiljainen hirvea hirvittava holmo hopeinen houkutteleva huikea huima hullu huomattava huono hurja hurmaava
        hyodyllinen hyva hyvaksyttava idea ideologinen ihana ihastuttava ihmeellinen iho ika ikainen ikava ikuinen
        ilkea ilmeinen ilo iloinen inhimillinen intialainen isa isi islamilainen iso isoisa istuva ita itainen
        italialainen itsenainen jaatava jalo janna jannittava japanilainen jarkeva jarkyttava jatkuva jattimainen
        johtava joo jos joustava julkinen julkiset julma juutalainen jylha kai kaija kaiku kaisa kaksikko kalju kallio
        kallis kaltainen kamala kannattava kansallinen kantava kapea karkea karmea karu karvainen kas kateellinen
        kateva katkera katolinen katsottava kattava kauhea kaunis kaupallinen kayra kayva kehno keltainen kemiallinen
        ken kesaisin keskeinen keskimmainen keskinainen keskinen kestava kevyt kiehtova kielteinen kiihkea kiinalainen
        kiinnostava kiintea kiireinen kiitollinen kipea kirea kirjallinen kirkkaan kiusallinen kiva kivi kivinen
        klassikko klassinen kohtuullinen koko kokonainen komea kompelo koomikko korea korkea koskettava kostea
        kotimainen kotoisin kova koyha kriittinen kristillinen krooninen kultainen kumma kummallinen kummoinen kun
        kunnallinen kunnollinen kurja kusipaa kuu kuukautiset kuuluisa kuuma kuume kuvaava kylma kypara kypsa laaja
        laheinen lahes laiha lailla laillinen laina laine laiska laite laiton laitos laiva lansimainen lantinen
        lapsellinen lauantaisin lee leino lempea levea liberaali lieva lihava liiallinen liikkuva likainen loistava
        looginen lopullinen loysa luominen luonnollinen luontainen luotettava luova lupaava luterilainen lyhyt
        maaginen maara mahdollinen mahtava mainio mainos makea maki makinen maltillinen marka massiivinen matala
        menestyva meneva merkittava miehisto miellyttava mieluiten mittava mobiili moderni monipuolinen moraalinen
        muinainen muistettava mukainen mukava muotoiltu muotoinen musta myonteinen myrkyllinen mystinen nakoinen
        nakyva nappara naurettava nayttava negatiivinen neutraali nokkela nolo nopea nopein nopeus norja norjalainen
        normaali nouseva noyra nuori nurminen nykyaikainen nykyinen nykyisin ohi ohut oikea oiva oleellinen olennainen
        oma omituinen onnellinen osaava osuva paha paikallinen painava paivittainen pakollinen paksu pari paska
        passiivinen pateva pehmea pelottava pera perinteinen perjantaisin pian pieni piha pika pikainen pikkuinen
        pimea pipo pirtea piru pito pohjoinen poikkeava poliittinen pop positiivinen psykologinen puhuva puinen puisto
        punainen puolikas puoliso pyha pyorea pysyva radikaali rajallinen raju rakastava ranskalainen ranskalaiset
        rasistinen ratkaiseva rauhallinen realistinen rehellinen reilu riippuvainen riisi riittava rikas rikki
        rikollinen rikos rinne rinta riski risti ritva river rohkea romanttinen ruma ruotsalainen ruskea saalittava
        saannollinen saarinen saaristo sahkoinen saksalainen salainen salaperainen samanlainen satunnainen sekaisin
        sekava seksuaalinen selkea selva semi sielu sieni siipi siivu siksi silma silta silti simppeli sinikka sininen
        sisa sisainen sisar sisko sisu siten sitkea sitova soitin soitto sokea some sopiva sopo sosiaalinen
        suhteellinen suloinen sunnuntaisin suomalainen suora suositus surkea surullinen suuri syva syyllinen taas tae
        tai taitava taiteellinen talvisin tanskalainen tappava tarkea tarpeellinen tasainen tavallinen tavanomainen
        taydellinen taysi tayttava teknillinen tekninen teollinen teoreettinen terava terveellinen tieteellinen
        tietoinen tiistaisin tiivis tilapainen todellinen toisenlainen toistuva toki topi tori torkea tosi tovi
        traaginen tuhma tukeva tumma tuominen tuomittu tuottava turha turvallinen tyhja tyhma tylsa tyly tyo typera
        tyydyttava tyylikas tyylinen tyyni tyyny tyypillinen tyytyvainen uhkaava ujo ulkomainen ulkopuolinen unioni
        upea uskollinen uskottava uudenlainen uuni uuno vaaka vaalea vaara vaarallinen vaate vaativa vaha vahainen
        vahti vahva vaihe vaikea vaikuttava vaimo vaiva vajaa vakaa vakava vakio vakituinen vakuuttava valhe
        valiaikainen valio valkea valkoihoinen valkoinen vallitseva valmis valtava valtiollinen vamma vammainen vanha
        vanki vapaa vappu varas varat varis varjo varma varovainen varsi vasen vasta vastaava vastainen vastuullinen
        vatsa vaunu vauva velvollinen venalainen verinen viehattava vihainen vihrea viihdyttava viilea villa villi
        vino virallinen virheellinen virolainen voiton voitto vuotuinen yhteensopiva yhteinen yhteiso yhtenainen
        yksinainen yksityinen yleinen yleisin yleiso yli ylimaarainen ylimielinen ylipainoinen ylitse ylivoimainen
        yllattava ylpea ymmarrettava ystavallinen
        """,
        """
        aalto aaltonen aamulehti aamupala aanekas aanestys aani aanioikeus aareton aari aarioikeisto aarnio aarre aasi
        aate abortti agenda agentti ahdistus ahneus aho ahti aiempi aihe aiheuttama aikaisempi aikakausi aikalisa
        aikataulu aine aineisto aino aita aitiys aito aivot ajankohta ajattelu ajattelutapa ajatus ajo ajoitus
        ajokortti ajoneuvo akatemia akka akku akseli aktiivisuus akuutti alamaki alanko alaston albumi alempi alennus
        alfa algoritmi alias alin alko alkoholi alku alkupera allas allergia aloite aloitus altis alue alus alykas
        alykkyys alypuhelin alyton ambulanssi amerikka amiraali ammatti ammattitaito ampari ampumahiihto analyysi
        ananas animaatio anime ankka anne annos anonyymi ansa apina apteekki apulanta arabia areena argumentti arki
        arkkipiispa arkkitehti armoton artikkeli artikla arvaamaton arvaus arvio arviointi arvo arvokas arvonta
        arvostelu arvostus arvoton ase asema asenne asennus asento asetelma asetus asiakas askel aste asuinpaikka
        asukas asumistuki asunto asuntolaina ateria audio auer aura aurinko aurinkolasit aurora auto autoilu
        automaatio automaatti autovero avain avajaiset avaruus avaus avi avioero avioliitto avoimuus avoin bakteeri
        banaani bandi baseball basso beibi bensa betoni biisi bileet bingo bisnes bitcoin blogi blondi blues bluetooth
        body bonus brandi britti budjetti bulgaria bussi byrokratia chili cis college country cup data debyytti dee
        deitti demo demokratia design diabetes diagnoosi dialogi diesel diili diktaattori diplomi direktiivi
        dokumentti donna dosentti draama duo duuni edellytys edullisempi eduskunta edustus eemeli egypti ehdokas
        ehdoton ehdotus ehkaisy ehto elain elainlaakari elake elama elamakerta elamantapa elamys elementti eliitti
        elimisto elin elinika elinkeino elintarvike elintaso elli elvytys enemmisto enempi energia englanti enkeli
        ennatys enne ennuste ennustus entuudestaan epailty epaily epailys epavarmuus epidemia episodi eppu erikoisuus
        esimerkki esine esitelty esittely esitys essi este etaisyys eteeni etiikka etsin etsinta etunimi etuoikeus
        etusivu euro evoluutio fakta fani fantasia farkut feminismi festivaali fiilis fiksumpi filmi filosofi
        filosofia finaali fingerpori firma fitness fokus folk foorumi formaatti formula funktio futsal fysiikka
        galleria gallup gay georgia gloria golf gradu graham grilli haamu haastattelu haaste haat haave haavisto hahmo
        hai hairinta hairio haitta haju haka hakemus haku halli hallinta hallinto halloween halme halo haloo haltuun
        halu halukas halytys hamina hammas hanke hankinta hanko hapea happi harjoittelu harjoitus harju harka harmi
        harrastus harri hata hauki hauras hauskin hauta hautajaiset hautausmaa havainto hedelma heikkous heikompi
        heimo heina heitin heitto helikopteri helmet helmi helpotus helppo helppous helvetti hengitys henki henkilo
        henkiloauto henkilokunta henkilosto henna henry heppu heratys herkka herkku hetki hevonen hidas hiekka hienoin
        hiihto hiili hiiri hiki hiljaisuus hilkka himo hinnoittelu hinta hintalappu hintataso hirvi hirvio hissi
        historia hitsi hitti hitto hockey hoikka hoito hollanti home homma homo honka hopea hopo horoskooppi hotelli
        house housut hovi hovioikeus huhu huijaus huippu huivi huolto huomautus huomio huone huora hurrikaani huume
        huumori huumorintaju huuto huutokauppa huvila hybridi hymy hyodyton hyokkays hyoty hyppy hyvaksynta
        hyvinvointi identiteetti ideologia idiootti ihme ihmiskunta ihmisoikeus iiris ikkuna ikoni illuusio ilma
        ilmaisu ilmapiiri ilmasto ilmastointi ilmaus ilmavoimat ilme ilmio ilmoitus iltalehti ilves inflaatio info
        informaatio infra inka innokas innostus innovaatio insinoori instituutti integraatio internet into intohimo
        intro intti investointi irlanti isanmaa iska iskelma isku islam islanti istuin italia itku itsekas itsemurha
        itsenaisyys itsetunto jaahalli jaahyvaiset jaakaappi jaatelo jaba jakelu jako jakso jalka jalkapallo jalkeiset
        jalki jaloin jannite jannitys japani jarjestelma jarjestely jarjesto jarjestys jarjeton jarki jarkytys jarvi
        jasen jasenyys jatke jatko jaykka jazz jengi jenni jenny jersey joensuu johto johtokunta johtopaatos jokeri
        joki jokunen jono jorma joukkue joulu joulupukki joutsen juhla juju jukka julkaisu julkisuus julkkis jumala
        juna juniori juntti juoksu juoma juoni jussi jutta juusto jymy jyrkka kaanne kaannos kaaos kaapeli kaapio
        kaappi kaarme kaasu kaavailtu kaavoitus kahdeksas kahvi kahvila kaivos kakara kakkonen kakku kala kalastus
        kalenteri kallein kallo kalpa kalusto kama kamera kamppa kamppailu kamppi kamu kana kananmuna kandidaatti
        kangas kanna kannabis kannanotto kannattavuus kannatus kannykka kansa kansakunta kansalaisuus kansi
        kapasiteetti kapina kapitalismi kappale karajaoikeus karhu karjala karki karkki karma karri karsimys karsinta
        kartano kartta kasa kasi kasino kasite kasittely kasitys kasky kastike kasvain kasvatus kasvot kasvu
        katastrofi kate kati kato katos katsaus katse katselu katsomo katto katu kauhu kaula kaunein kauneus
        kaupankaynti kauppa kauppakeskus kauppi kauppias kaupunginosa kaupunki kausi kavely kaveri kaynti kaypa
        kaytanto kaytos kaytto kayttoonotto keha kehitys keho keikka keino keittio keitto keksinto kela keli kello
        kelpo kemia kenka kentta keppi kepu kerays kerho kerma kerros kerrostalo kertomus keskiarvo keskus
        keskusliitto keskuspankki keskustelu kestavyys kesto ketju keula kevyempi kielitaito kielto kierratys kierre
        kierros kiertue kiina kiinnostus kiinteisto kiire kikka kilo kilometri kilpa kilpailu kilpailukyky kilpi
        kiltti kinkku kino kioski kipina kipu kiri kirjain kirjakauppa kirjallisuus kirjasto kirje kirjo kirjoitin
        kirjoitus kirkas kirkonkyla kirous kirsi kirurgi kirves kisa kitara kiuru kivempi klubi kohde kohokohta kohta
        kohtalo kohtaus kohtelias kohtelu kohtuu kohtuuton kohu koira koivisto koivu kokeiltu kokeilu kokemus kokki
        kokkonen kokoelma kokonaisuus kokoomus kokoonpano kokous kollega kolmannes kolmasosa kolmio kolmonen kolumni
        komedia komisario komissio komitea kommentointi kommentti kommunismi kompromissi konferenssi konflikti
        kongressi konkurssi konsepti konserni konsertti konstaapeli konsultti kontakti kontio koodi kookoo koostumus
        kopio kori koripallo korjaus korkeakoulu korkeus korkki korotus korpi korruptio kortti koru korvaamaton
        korvaus kosketus kosteus kosto koti kotijoukkue kotimaa kotipaikka kotka koukku koulu koulutus kovempi koyhyys
        krapula kreikka kreivi kriisi kristinusko kritiikki kroatia kroppa kruunu kuha kuisma kuitti kuivuus kukkonen
        kuljetus kulli kulma kulmat kulutus kumi kummitus kumppani kundi kunnas kunnia kunnioitus kunta kunto
        kuntosali kuntoutus kuolema kuolleisuus kuoppa kuorma kuoro kupla kurikka kurkku kurssi kuski kustannus kutina
        kuudes kuukausi kuula kuultu kuumin kuumuus kuuntelu kuusisto kuvalehti kuvaus kuvernoori kuvio kyky kyla
        kyltti kymmenes kymmenkunta kymppi kyna kynnys kysely kysymys kysynta kytkin kyyti laadukas laajempi laajennus
        laajuus laake laaketiede laakitys laakso laatu laboratorio laheisyys lahetin lahettilas lahetys lahin lahjakas
        lahto lahtokohta lainaus lainsaadanto laivasto laji laki lama lammas lammin lammitys lampi lampo lampotila
        lamppu lanka lansi lansimaat lapimurto lappa lappari lappi lappu lapsuus lasi lasit laskin lasku lasnaolo
        lassi lataus lattia latvia laukaus laukku laulu lauma lause lausunto lautakunta lautta leffa legenda lego
        lehdisto lehma lehti lehto lehtori leijona leikkaus leikki leima leipa leiri lelu lemmikki lempi lempinimi
        lenkki lento lentoasema lentokentta lentokone lentopallo lentoyhtio lepo lesbo leuka leveys levoton levy
        liekki liettua liha liiga liika liike liikenne liikevaihto liikevoitto liikkuvuus liikunta liite liito liitto
        liittyma linjaus linkki linna lintu lippu lisa lisays lisenssi listaus litra liukas liuta live logiikka
        logistiikka logo lohi lohikaarme lohko loka loma lopetus loppu lopputulos loppuunmyyty loputon lordi lotta
        lotto loukkaus lounas loyto luento luettelo lukema lukio luku lukumaara lumen lumi luokiteltu luokitus luokka
        luola luoma luomu luonne luonto luotain luotettavuus luoti luottamus luotto luovuus lupa lupaus luu luukku
        lyhenne lyhyempi maa maahanmuutto maailma maailmancup maailmansota maajoukkue maakunta maalaus maali
        maalivahti maanjaristys maapallo maapera maarays maaritelma maarittely maaseutu maasto maatalous made mafia
        maha mahdollisuus mahdoton maila maine maininta mainonta maisema maisteri maito majakka majoitus makihyppy
        makkara maksimi maksu maksuton maku malli mallisto malmi manageri manga manner mansikka manu mara maraton
        marina market markka markkina markkinointi marras martta masennus matalampi matematiikka materiaali matkailu
        mato matsi matto maukas media mega mehu meikki meininki mekanismi melu menestys menetelma menettely menetys
        menneisyys meno menu meri merkinta merkitys merkki merta messi messut mestaruus meta metalli meteli metro
        metsa metsastys metso miekka mielenkiinto mieleton mieli mielikuvitus mielipide mieto miikka miina miinus
        mikkeli mikki mikro miljardi miljonaari miljoona mimmi minimi ministeri ministerio minuutti mitali mitaton
        mitta mobile mode moka mokki mokoma moottori mopo moraali morko moro motiivi motivaatio move muisto
        muistomerkki muistutus mulkku muna munkki muoti muoto muotoilu muovi murha murre murto muru musa museo
        museovirasto musiikki musikaali muslimi mutsi muumi muutos muutto mylly myrkky myrsky mysteeri myymala myynti
        myytti naama naamio naaras nahka nahtavyys nakemys nakki nako nakokulma naky nakyma nakymaton nakyvyys nalka
        napa nappi nato natsi natti nauha nauru nautinto nayte naytelma naytos nayttely naytto neekeri neitsyt
        neljannes neljas neljasosa nelonen nelson nena nero nerokas neste netti neuvosto newton niemi nilkka nimeton
        nimi nimimerkki nimitys nippu niska nokka nopeampi normi nortti nosto nousu novelli nukke numero nuoriso
        nuoruus nurmi nyrkkeily nyrkki odotus ohjaamo ohjaus ohje ohjeistus ohjelma ohjelmisto ohjelmointi ohjus
        oikeisto oikeus oire olemassaolo olematon olemus olento oletus olio oljy olo olosuhteet olot olut omaisuus
        omakotitalo omatunto omega omena ominaisuus omistus ongelma onnekas onnellisuus onneton onnettomuus onni
        ooppera opas operaatio operaattori opetus opinnot opintotuki opiskellut opiskelu opisto oppi oppilas oppositio
        optio oranssi organisaatio ori orkesteri orpo osa osakas osake osakeyhtio osakilpailu osapuoli osasto
        osavaltio osio osoite osoitus ossi osto ostos ostovoima osuma osuus osuuskauppa osuuskunta ote otos ottelu
        otto otus outo ovi paaasia paahenkilo paakaupunki paakirjoitus paallikko paamaara paaministeri paansarky
        paaoma paaosa paasihteeri paasy paatos paaty paavi pahempi pahis pahoinpitely paikka paikkakunta paine paino
        painopiste painos paivahoito paivakoti paivamaara paivays paivitys pakastin paketti pakkanen pakkaus
        pakkoruotsi pako paksuus palaute palautus paljain palkinto palkka palkkio pallo palloseura palokunta paluu
        palvelin palvelu palvelus paniikki panimo pankki panos paperi parannus paras paratiisi parhain parisataa
        pariskunta parisuhde parlamentti parodia parta partio parveke passi patka patsas paukku paula peili pekka
        pekoni pelastus peli pelkka pelko pelleily penis penkki pentu perhonen periaate perinne perinto perkele perse
        persoona persu peruna perus peruskoulu peruste perusteltu perustelu perustulo perustuslaki pervo pesapallo
        pesu peto petos petra pettymys peura piano pidempi pihvi piikki piiri piirre piispa pikkutytto pilke pilotti
        pilvi pimeys pinkki pirkka pisara pisin piste pistin pitka pituus pizza planeetta pohdin pohjola poikanen
        poikkeus pointti poistin poisto pokeri poliisi politiikka polku polkupyora polttoaine polvi pommi pomo
        porkkana porno poro porssi portaat portti portugali porukka postaus potentiaali potilas potkut potti poyta
        presidentti prinssi prisma profeetta professori profiili projekti pronssi propaganda prosentti prosessi
        proteiini psykiatri psykologi psykologia pudotus puhdas puhdistus puhe puheenvuoro puhelin puhelu pukki puku
        pula pullo pulma puna puola puoli puolue puolueeton puolustus pupu purjehdus purkki puro pussi putki putous
        puu puutarha puute pyhimys pykala pyora pyoraily pyrinto pyrkimys pysakointi pyyhin pyynto raaka radio raha
        rahasto rahoitus raikas raiskaus raita rajahdys rajaton rajoitus rakas rakenne rakennus raketti rakkaus ralli
        rami rangaistus rankka ranska ranta rap raportti rappari rasismi raskas raskaus rata ratkaisu ratsastus rauha
        rauma rauta rautio ravinto ravintola reaktio reaktori rehellisyys reika reipas reissu reitti rekisteroity
        rekka rekrytointi remontti rengas rento repo reppu resepti resurssit retki retoriikka reuna riippumaton
        riippuvuus rikkain rikollisuus ripaus ristiriita rita rivi robotti rock rohkeus rokote romaani romahdus
        romania romanssi rooli roosa roska rotta rotu rukous rumpali runko runo runsas ruoho ruoka ruokavalio ruotsi
        ruuhka ruumis ruusu ruutu ryhma ryosto rytmi saalis saama saantely saanti saanto saasto saastopankki saatana
        saatavuus saatio saavutus saga saha sahko sahkoauto sairaala sairaus saksa sakset saku salaatti salaisuus
        salaliitto salama salasana saldo sali salibandy salkku salmi salo sampo sana sananvapaus sanky sanoma
        sanomalehti sanonta santa sara sarki satakunta satama satanen sateily satelliitti sato sattuma satu saudi
        sauma sauna savel savo savu savy scifi see seikka seikkailu seina seiska seitsemas sekoitus seksikas
        seksikkain sektori sekunti selain selfie selitys selka selvin selvitys senaatti senaattori seos sepa seppo
        serbia sergei setti seura seurakunta seuranta seuraus seutu shakki side siemen siemens signaali sihteeri
        siirto siivous sijainti sijoitus sika sillanpaa silmalasit silta single sini sinkku sipuli sirkka sirkus
        sisaankaynti sisallissota sisalto sisustus siunaus siviili sivistys sivu sivusto skandaali skenaario slovakia
        slovenia soini sokeri soolo sopimus soppa sormi sormus sorsa sosialismi sota sotku soul sovellus spin stadion
        standardi startti status stora strategia stressi studio suhde suihku sukellusvene sukkahousut suklaa sukunimi
        sukupolvi sukupuoli summa sumu suo suojelu suola suomennos suomi suoritin suoritus suorituskyky suosikki
        suosio suru susanna susi suu suunnitellut suunnitelma suunnittelu suunta suuntaus suuruus sydan syke symboli
        synkka synnytys synti synttarit synty syntyma syntyvyys syopa syotto syrjinta systeemi syvyys syy syypaa syyte
        syyton taakka taantuma tabletti tabu tahka tahko taho tahti tahto taide taidemuseo taideteos taika taikina
        taipumus taistelu taisto taito taival taivas takaisku takki taksia taktiikka takuu talli talo talous
        talouselama talouskasvu taloustiede taloyhtio talteen talvisota tamma tammi tango tankki tanner tanska tanssit
        tapahtuma tapani tapaus tappara tappelu tappio tappo tarina tarjonta tarjous tarkastelu tarkastus tarkempi
        tarkistin tarkka tarkkuus tarkoitus tarmo tarpeeton tartunta taru tarve tarvis tasapaino taso tatuointi tauko
        taulu tauno tauti tavara tavoite tavoittelu teatteri teema tehdas teho tehokas tehokkaampi tehokkain tehokkuus
        teini tekniikka teknologia teko tekoaly tekosyy tekstitys televisio teltta tempaus temppeli temppu tennis
        teollisuus teoria teos tera terapeutti terapia teras terhi terho termi terminaali terrori terrorismi terve
        tervehdys terveiset tervetullut terveys tesla testamentti testaus thai tie tiede tiedekunta tiedosto tiedote
        tiedotus tiedustelu tietamaton tieto tietoisuus tietokone tiikeri tiimi tiivistelma tikka tila tilaisuus
        tilasto tilaus tilavuus tili timantti tina tippa tipu titteli tiukka todellisuus todiste todistus toimeentulo
        toimenpide toimiala toiminta toimintatapa toimisto toimitus toimivuus toive tollanen tom tomaatti tonni tontti
        torjunta torni tosiasia toteutus totuus touhu touko toveri tragedia traileri treeni treffit trendi trio trolli
        tuho tuisku tukikohta tukka tulehdus tulevaisuus tulipalo tulkinta tulkki tulo tulokas tulos tunneli tunnelma
        tunnistin tunnus tunnustus tuntu tuoli tuomaristo tuomas tuomio tuomioistuin tuonti tuore tuotanto tuote
        tuotos tuottama tuottavuus tuotto tupa tupakka tupakointi tupla turbo turkki turku turnaus turvallisuus
        turvapaikka turve tuska tutka tutkimus tutkinta tutkinto tuuli tuulivoima twiitti tykki tyoaika tyoelama
        tyokalu tyokaveri tyollisyys tyomaa tyomarkkinat tyonteko tyopaikka tyoryhma tyoskentely tyosuhde tyoton
        tyottomyys tyovoima tytaryhtio tyyli tyyppi tyytymaton uhka uhkaus uhri uima uimahalli uinti ukkonen ukraina
        ulkoasu ulkonako ulosajo ultra unelma uni uniikki upseeri ura urakka urheilu urho uros urpo uskomaton uskonto
        uskottavuus utelias uudistus uutisointi uutuus vaadin vaalipiiri vaanto vaatimaton vaatimus vaesto vahemmisto
        vahennys vahinko vahvempi vahvistus vahvuus vaihtelu vaihto vaihtoehto vaikeampi vaikein vaikeus vaikutelma
        vaikutus vainio vaite vaittely vaki vakiluku vakuutus valaistus vale valehtelu valikoima valine valinta
        valiokunta valioliiga valit valiton valitus vallankumous valmennus valmistelu valmistus valmius valo
        valokuvaus valtakunta valtamedia valtaosa valtatie valtio valttamaton valtuusto valuutta valvonta van
        vanhemmat vanhus vankila vankka vapaus vara varakas varallisuus varasto varaus vari varikas varit varkaus
        varoitus vartalo vartti vasemmisto vastaanotto vastakohta vastaus vastine vastus vastustus vastuu vasymys
        vauhdikas vauhti vayla vedin vegaani vehje veikkaus veitsi velho veljekset velka velvollisuus vene verenpaine
        veri verkkokauppa verkosto vero verotulot verotus versio vertailu vertaus vesa vesi veteraani veto vetovoima
        viaton video vienti vierailu vieras viestinta vietnam viety viha vihapuhe vihje viides viihde viikonloppu
        viikset viimeisin viimeistely viina viini viisas viisaus viittaus vika viljely vilkas vilpiton vinkki virasto
        vire virhe virka viro virpi virta virus visa visio viski vitsi voima voimakas voimala voimistelu vuokra vuori
        vuoro vuorokausi vuosikymmen vuoto vyo wiki ydin ydinvoima ydinvoimala yhdeksas yhdistelma yhdistys yhtalo
        yhteenveto yhteiskunta yhteistyo yhteys yhtio ykkonen yksikko yksilo yksinaisyys ylaaste yleisradio
        yleisurheilu ylempi ylilaakari ylin yliopisto ylioppilas ylipaino ylivoima yllapito yllari yllatys ylpeys
        ymmarrys ymparisto ympyra yrittajyys yritys yrjo ystavyys zen
        """,
    ),
    "fr": (
        """
        abandonne abandonnee absolu absolue accessible accompagne accompagnee acheter acide acquis acquise acteur
        actif actuel adapte adaptee adjoint adjointe adulte africain africaine age agee agreable agricole aime aimee
        aise alerte algerien alimentaire allant allemand allemande amateur amene amener americain americaine ami amie
        amoureux ancien anglais anglaise animal animale anime animee anniversaire annoncer annuel anonyme appartenant
        appele appelee apprecier arabe arme armee arrive arrivee artiste artistique assistant assistante assiste
        assistee atlantique attaquant atteint atteinte aucun aucune automatique automobile autonome autorise autorisee
        autre avance avancee avant aveugle baby bancaire barbe bateau battu battue beau bebe bel belge belle benoit
        bete biais bien big bio biologique bizarre black blanc blanche blesse blessee bleu bleue bon bouffe bouger
        boulot bourgeois bourgeoise bref breton brillant brillante britannique brun brune brut brute cafe calme
        canadien candidat candidate canon cap capable cape capital capitale cardiaque cardinal carre carree casse
        cassee catholique cave celebre celibataire cense censee central centrale certain certaine chair chaire
        champion changer chanteur chat chaud chaude chauffeur cher chere chiant chiante chien chimique chinois
        chinoise choc chocolat chose chretien chronique cinquieme citoyen civil civile clair claire classique cle
        client cliente climatique clinique collectif commandant commencer commercial commerciale commun commune
        communiste complet complete complexe complique compliquee compose composee con conducteur connard connu connue
        consequent consequente conservateur conserve conservee considerer constitue constituee constructeur
        contemporain content contente contenu contenue continent continu continue contraire cool corse cote cotee
        coupable coupe coupee courant courante court courte couvert couverte crane createur cree creee crier criminel
        critique cru crue cul culte culturel curieux dangereux debarrasser debout decide decidee declare declaree decu
        decue delegue deleguee demi demie democrate democratique denoncer depasse depassee depose deposee der dernier
        derniere desert deserte design desole desolee deuxieme developpe developpee diable different differente
        difficile digne dingue direct directe directeur dirige dirigeant dirigeante dirigee disparu disparue
        disponible dispositif divers diverse dix documentaire donnant donne donnee double doublee douce doux
        dramatique droit droite drole dur durable dure dynamique echec ecologique economique editeur effectif efficace
        egal egale electrique electronique eleve elevee elu elue employeur encourager endroit energetique enfant
        engage engagee enleve enlevee ennemi ennemie enorme entier entoure entouree envisager envoye envoyee
        equivalent equivalente espagnol espagnole esperer essayer essentiel est esthetique etabli etablie ethique
        etonnant etonnante etrange etudiant etudiante etudier europeen evident evidente exact exacte excellent
        excellente exceptionnel executif exemplaire expert experte expose exposee exterieur exterieure externe extreme
        facile faible failli fait faite fameux familial familiale fantastique fatigue fatiguee favorable federal
        federale feminin feminine ferme fermee festival feu fidele fier fille fin final finale financer financier fine
        fini finie fiscal fiscale fixe fixee flash fleur fleuve fondateur fonde fondee forcer forfait forme formee
        formidable fort forte fou fourni fournie foutu foutue foyer fragile fraiche franc francais francaise france
        franco francophone frappe frappee frere froid froide futur future gagnant gagnante gamin gamine garcon garde
        gardee gardien gateau gauche gay geant geante general generale genial geniale gentil geographique gerer
        germain germaine global globale gosse grand grande graphique gratuit gratuite grave grec gris grise haut haute
        heureux historique honnete horrible humain humaine ideal ideale identique illustre imaginaire immense immeuble
        immobilier impact important importante impossible incapable incident inconnu inconnue incroyable independant
        independante indien indique indiquee industriel inferieur inferieure informatique inscrit inscrite inspire
        inspiree installe installee instant integre integree intelligent intelligente intense interessant interessante
        interieur interieure interne inutile inverse islamique issu issue italien japonais japonaise jaune jeter jeune
        joli jolie joseph joueur joyeux judiciaire juger juif julien junior juridique juste justifier lache lancer
        large latin latine legal legale leger legitime lever liberal liberale liberer libre limite limitee liquide
        litteraire local locale logiciel logique long longe longue lourd lourde machine magique magnifique maison
        maitre majeur majeure major mal malade male malheureux malin manager manger manifeste manuel marchand
        marchande marier marin marine maritime marque marquee marrant marrante masculin masculine massif materiel
        mauvais mauvaise maximum mecanique mechant mechante mediatique medical medicale meilleur meilleure membre meme
        mener menu merveilleux meteo mien mignon militaire mince mineur mineure mini minimum miracle mobile moche
        modele moderne modeste modifier moindre mondial mondiale monstre montant montante moral morale mort morte
        moteur moyen municipal municipale musulman musulmane national nationale naturel necessaire negatif negocier
        nerveux net neuf neutre noble noir noire nombreux nord normal normale nouveau nucleaire nue nul numerique
        objectif obligatoire occupe occupee off officiel olympique open operateur optique orange ordinaire originaire
        original originale oublier ouest ouvert ouverte pacifique panique parallele pareil parfait parfaite parisien
        parlant partager partant particulier pascal pascale passer patient patiente patron pauvre payer pendant
        permanent permanente perso personnel petit petite philosophe photo physique pire placer plan plane plastique
        plat plate plein pleine poete polemique policier politique pop pope populaire porno portable portant porte
        portugais portugaise positif possible potentiel pratique prealable precedent precedente precieux precis
        precise premier premiere prenant present presente pret prete pretexte primaire prime principal principale pris
        prise prisonnier pro probable prochain prochaine proche producteur profond profonde prononcer propre
        proprietaire proteger provisoire public publier puissant puissante pur pure putain pute qualifie qualifiee
        quasi quatrieme quebecois quebecoise quelconque quelque quitte quotidien raciste radio raisonnable ramener
        rapide rappeler rare realisateur recent recente record recuperer reduit reduite reel reference regardant
        regional regionale regler relatif relever religieux remarquable remercier remplacer renforcer republicain
        republicaine responsable restant retard riche ridicule romain romaine roman romane romantique rond ronde rose
        rouge roux royal royale russe sage saint sainte sale satisfait satisfaite sauf sauvage scientifique scolaire
        sec second secondaire seconde secret sensible septieme serieux serveur seul seule severe sexuel sexy similaire
        simple sincere situe situee sixieme social sociale socialiste solaire solide solo sombre sortant soudain
        soudaine special speciale specialise specialisee specialiste specifique spectacle sport sportif stable
        standard statistique strategique stupide sud suffisant suffisante suisse suivant suivante sujet superbe
        superieur superieure supreme sur sure suspect suspecte symbolique sympa tabac technique tel tele temoin
        temporaire tenant tendre terrible terroriste the titulaire total totale touristique tournant tournante tout
        toute traditionnel tranquille triple triste troisieme trop trouble ultime ultra uni unie uniforme unique
        universel urbain urbaine utile utilisateur vache vague vainqueur valable variable vaste verifier veritable
        vert verte victime vide video vieille vierge vieux vif violent violente visible vivant vivante voisin voisine
        volontaire voyant vrai vraie
        """,
        """
        abandon abbaye abeille abolition abondance abonnement about abri absence absorption abstention abstraction
        academie acceleration accent acceptation accession accident accord accouchement accueil accumulation
        accusation acharnement achat acquisition acte action activite actualite adaptation addition adhesion adieu
        admiration admission adolescence adoption aeroport affectation affection affichage affirmation affrontement
        agenda agent agitation agneau agrement agression agressivite agriculture aigle aiguille ail aile air ajout
        ajustement album alcool algorithme alignement aliment alimentation alinea alliance allocation allure allusion
        alphabet alternance alternative altitude aluminium ambassade ambiance ambiguite ambition ambulance ame
        amelioration amenagement amendement amitie amont amour ampoule ana analogie analyste anatomie ancetre
        anciennete ane anecdote ange angle angoisse animation anneau annee annulation anomalie anonymat antenne
        anticipation antiquite anxiete apero apocalypse apologie appareil apparence apparition appart appartement
        appartenance appel appellation appetit application apport appreciation apprenti approbation appui aptitude
        araignee arbre arc arcade arche archeologie archeveque archipel architecte architecture are argent argile
        argument armement armoire armure arrangement arrestation arret arrogance arsenal art artere article artifice
        artillerie artisan artisanat ascension asile aspect aspiration assassinat assaut assemblage assemblee assiette
        assimilation assistance association assurance astronomie astuce athlete athletisme atmosphere atout
        attachement attentat attente attention atterrissage attitude attraction attrait attribution aube audace
        audition augmentation augustin aurore austerite autel authenticite auto autonomie autorisation autorite
        autoroute avancement avatar avenement avenir avenue aveu aviation avion avocat avortement axel azur bac
        baccalaureat bagage bagarre bagnole bague baguette baie baignoire bain bal balcon baleine ballade balle ballet
        ballon ban banane banc bang banlieue banque bapteme bar barbarie barbecue barometre barrage barreau baseball
        basket basse bassin bastille bataille bataillon bateau batiment baton batterie beaute bec benediction benefice
        benjamin berceau berger besoin betail betise beton beurre bible bibliotheque bijou bilan bill billet
        biodiversite biologie bisou bite blague blair ble bled blessure bloc blocage bob bobo boisson bol bombardement
        bond bonjour bonnet bonsoir bonte book boom bord bordel bordure boston bouc boucherie bouchon bouddha boue
        bouillon boulangerie boule boulet boulevard bouquet bouquin bourbon bourg bourgeoisie bourgogne bourreau
        bourse bouteille boutique bouton boycott bracelet brandon braquage brasserie break breche bresil breve brevet
        brigade brin brique brouillard budget buffet bug buisson bull bulle bulletin bureau burger buste butin cabane
        cabaret cabine cabinet caca cacao cachet cadavre cadeau cage caisse calcium calcul calibre camarade camera
        camion camp campagne camping canadienne canal canape canard cancer candidature canne cantine canton caoutchouc
        capacite capitalisme capsule captivite caractere caravane carbone caricature carnaval carnet carotte carrefour
        carte carter carton cascade caserne casino casque casquette cassation casting catalogue categorie cathedrale
        catholicisme cauchemar caution cavalerie ceinture celebration celebrite cellule centaine cercueil ceremonie
        cerf cerise certificat certitude cerveau cesar cession chaise chalet chambre champ champagne championnat
        chance changement chanoine chanson chantage chapeau char charbon chargement chariot charisme charite charlotte
        charte chateau chauffage chaussure cheikh chemin cheminee chemise chene cheque cheval chevet cheville chevre
        chien chienne chili chimie chirurgie chirurgien chomage christ chrome chrono chronologie ciel cigarette ciment
        cine cineaste cinema circonstance circuit circulation cirque citadelle citation citoyennete civilisation clan
        clarte classement clause clef clemence clerge cliche clientele climat clin clip clope clou clown club coach
        coalition coca cocaine cocktail coefficient coffre coffret cognac coherence cohesion coiffure coin coke cola
        colin collection collectivite collegue colline collision colloque colonie colonisation colonne coloration coma
        combinaison combustion comedie comete comite commandement commencement commissariat commission communaute
        communion communisme compagne compagnie compagnon comparaison compassion compatriote compensation competence
        competition compilation complement complexite complicite compliment complot comportement composition
        compression comptabilite comptoir concept conception concert concertation concession concile conclusion
        concorde condamnation condition conference confession confiance confirmation conflit conformite confort
        confrerie confusion conge congregation conjoncture connaissance connerie connexion conquete conscience
        consecration conseil consentement consequence conservation consommation conspiration constance constat
        constitution construction consul consulat consultation contact contestation contexte continuation continuite
        contraction contraste contrat contrepartie contribution convention convergence conversation conversion
        conviction convocation convoi cookie cooperation cooperative coordination copain coq coque coquille cor corde
        cordon corporation correction correlation corruption costume cotisation cou coucou coude couille couloir coup
        couple coupure courage course courtoisie cout couteau coutume couture couvent couverture cran crash cravate
        crayon creation creativite creature credibilite credit creneau cri crime criminalite criminelle crise cristal
        critere crochet croisade croisement croissance croute croyance cruaute cuillere cuir cuisse cuisson cuivre
        culotte culpabilite culture cumul curiosite cuve cycle cyclisme dalle danger dauphin deal debarquement debit
        decalage decennie deception decision declaration declin decollage decompte decor decoration decret deesse
        defaillance defaut defense defensive defi deficit definition degout degradation degre degustation delai
        delegation deliberation delinquance delit delivrance delta demarrage demenagement demission democratie
        demographie demoiselle demolition deni denomination denonciation densite dent departement depassement
        dependance depistage depit deplacement deploiement depot depression depute derby deroulement desaccord
        desastre descente description desespoir designation desir desordre dessin destin destination destruction
        detachement detail detection detente detention detour detournement detresse detriment dette deuil devise
        diabete diagnostic diametre diane dictature dieu diffamation difference difficulte diffusion dignite dilemme
        dimension diminution diocese diplomatie direction directive directoire disciple discipline discretion
        discussion disparition dispersion disposition disque dissolution distinction distribution district diversite
        divinite division dizaine doctorat doctrine document doigt dollar domaine domicile domination dommage donation
        donjon dot dotation douane douzaine doyen dragon drame drapeau drone dune duo duree dynamisme dynastie eau
        ecart echantillon echarpe echeance echelon eclairage eclat ecole ecosysteme ecran ecriture ecrivain ecurie
        edifice edition efficacite effondrement effort egalite egard egide elaboration elan election electorat
        electricite elegance element elevage elevation elimination eloge emancipation emballage emergence emeute
        emission emotion empathie emplacement emploi emprise emprunt encadrement encre encyclopedie endettement
        endurance energie enfance enfer engagement engin engouement enigme enjeu enlevement ennui enseignement entente
        enterrement entite entourage entrain entree entrepot envergure envoi epave epee epicerie epidemie episode
        epopee epoque epreuve epuisement equation equipage equipement equitation equite erable ere erection erosion
        eruption escale escroc escroquerie espece esperance espionnage espoir esprit essence essor estimation estomac
        etang etape eternite etude euro evacuation evaluation evasion evenement eventail eveque evidence evolution
        examen excedent excellence exception excitation exclusion exclusivite execution exemple exercice exigence exil
        existence exode expansion expedition experience expertise expiration explication exploit exploitation
        exploration explosion expo export exportation exposition expression expulsion extension extinction extraction
        extremite fabrication fac facade faculte faiblesse faillite faim faisceau falaise famine fan fantaisie
        fantasme farce fardeau farine fascisme faubourg faune faute fauteuil favorite federation feeling feminisme
        fenetre fer ferment fermete fermeture ferry feuilleton fiabilite fibre fiction fidelite fief fierte fievre
        figaro filet filiale filiation film finalite financement finesse finition firme fisc fiscalite fixation flamme
        flanc fleau flemme flexibilite flic flore flot flute foie foin folie fonction fondation fondement fontaine
        fonte foot football foret format formation formulation forteresse fortune forum fosse foudre fouet foulard
        foulee fourchette fourniture fourrure fraction fragilite franchise francophonie fraternite frein freinage
        frequence fret fric front fruit frustration fuite full fusee fusil fusillade fusion gaffe gain gala galaxie
        galerie gamme gang garage garnison gaspillage gastronomie gaule gazette gazon gel gendarmerie generation
        generosite genese genie genocide genou genre gentillesse geometrie geste gestion ghetto gilet glissement globe
        gloire gloria golf golfe gouffre gout goutte gouvernement grace grain graine graisse grange gravite gravure
        gray gre green grenade grippe grossesse grotte group groupe groupement guerison guerre guichet guilde
        guillaume guinee guise guitare gymnase habit habitat habitation habitude haine haleine hall halle halte hameau
        handball handicap harcelement hasard havre hebdo hebergement helicoptere herbe hercule heritage heroine
        hesitation heure hidalgo hierarchie histoire hockey hommage honnetete honte hopital horizon horloge hostilite
        hote hotel huile humanite humidite humiliation humilite humour hygiene hymne hypocrisie hypothese icone idee
        identite ideologie idole ignorance illusion illustration imagerie imagination imitation immersion immigration
        immunite impasse impatience implantation implication importance importation imposition impot impression
        imprimerie impuissance impulsion impunite inauguration incapacite incarnation incertitude incidence incitation
        incompetence inconvenient inde indemnite independance indication indienne indifference indignation individu
        industrie inegalite inertie infanterie infection inflation info information infraction ingenierie initiation
        initiative injection injustice innocence innovation inquietude inscription insecte insecurite insertion
        inspection inspiration instabilite installation instance instauration instinct institut institution
        instruction instrument insuffisance insurrection integralite integration integrite intelligence intensite
        intention inter interaction interdiction interet internat interruption intersection intervalle intervention
        interview intimite intitule introduction intrusion intuition invasion invention inversion investiture
        invitation ion ironie islam isolation isolement ivoire ivresse jack jade jalousie jambe jambon japon jardin
        java jean jersey jet jeu jeunesse job joie joker jonction jouet jour journal journalisme judaisme judo
        jugement jungle jupe juridiction jury justesse kid kilo kit label labo laboratoire labyrinthe lac laicite
        laine laique lait lama lame lancement land langage langue lapin larme laser latitude laureat lavage leadership
        lecon lecture legalite legende legerete legion legislation legitimite lendemain lettre levre liaison
        liberalisme liberation liberte librairie licence licenciement lieu lignee ligue limitation limousin lin
        lingerie lion liquidation litige litre litterature livraison livree livret lobby localisation localite
        location logement logo loi loisir look lot loto loup loyaute loyer lune lunette luxe lycee mac machin machoire
        maconnerie madeleine mafia magasin magazine magie magistrat mail maillot main maintenance mairie maison
        majeste majorite maladie malaise malediction management manche mandat manif manipulation mannequin manoir
        manteau maquillage marathon marbre marc marchandise mare marechal maree marguerite mariage mark marketing
        marne martin martyr massage match materiau maternelle maternite matinee maturite maxime mecanisme medaille
        medecine media mediation medicament meditation meeting mefiance melee melodie memoire mensonge mentalite
        menthe mention menton mentor mer mercure merde merlin merveille message messager messagerie messe metaphore
        methode methodologie metrage metropole meuf meurtre meute micro miel migration milan milice milieu milliard
        million ministere ministre minorite miroir misere misericorde missile mission mobilisation mobilite mode modem
        moderation modernite modification moelle moine moise moitie molecule moment monarchie monastere monde monopole
        mont montage montagne montee monument moralite morceau mortalite mosquee motif motion motivation moto mouche
        moulin moustache moutarde mouvement moyenne multitude municipalite muse musee musique mutation mutuelle
        mystere mythe mythologie naissance naivete napoleon narration natation nation nationalisme nationalite navette
        navigation navire nazisme nef negative negligence negociation neige nerf nettoyage neutralite niche nid niveau
        noblesse nom nomination normand norme nostalgie notation notice notification notion notoriete nourriture
        nouveaute noyau numero nuque nutrition obesite objection objet obligation obscurite observation observatoire
        obsession obstacle obtention occasion occident occupation occurrence octroi offensive office oignon oiseau
        ombre once onde operation opinion opportunite opposition oppression optimisation optimisme option orage orbite
        orchestre ordre oreille oreiller organe organisation organisme orgasme orge orgue orgueil orient orientation
        originalite origine orthographe oscar otage oubli ouragan outil ouverture oxford pack pacte paiement paille
        pain pair palace palme panama panne panneau panorama pantalon pantheon pape paquet parade paradoxe paragraphe
        parc parcelle parent parfum pari parite parking parlement paroi paroisse parquet partenariat partition
        parution passeport passerelle passion patate paternite pathologie patience patisserie patriarche patrie
        patrimoine patriotisme patronat patronne patrouille patte pauvrete pavillon peage peau pedagogie peintre
        peinture pekin pelerinage pelle peloton pelouse penalite penetration peninsule pension pente penurie
        perception perfection performance peril perimetre periode peripherie periple perle permanence permission
        perpetuite perquisition perse personnage personnalite perspective perte pertinence peste pet petition petrole
        peuple phare pharmacie phase phenomene philo philosophie phrase pic pied pierre pigeon pilotage pilule pin
        pipi piratage piscine pistolet pitie pivot pizza placard placement plafond plage plaie plaine plaisir planete
        planning plantation plasma plateau plateforme platine platre plomb pluie plume pneu poche podium poele poeme
        poesie poignee poignet poil poing poison poisson poitrine poivre poker politesse pollution polo pomme pont
        popularite population porc porcelaine port portail portee portefeuille portion porto portrait position
        possession possibilite posterite posture pot pote poteau pou poubelle pouce poudre poule poulet poumon poupee
        pourcentage poursuite poussee prairie precarite precaution precision predilection prefecture preference prefet
        prejudice prelevement prenom preparation prescription presence presentation preservation presidence
        presomption pression prestation prestige pretention pretre preuve prevention prevision principaute priorite
        prison privilege probabilite probleme procedure production productivite profession profil profit progression
        proie projection projet prolongation prolongement promenade promesse promo promotion pronostic propagande
        propagation prophete proportion proposition proprete propriete prose prosperite prostitution protection
        protestation protocole prototype provenance proverbe providence province provocation proximite prudence psy
        psychanalyse psychiatre psychiatrie psychologie pub publication publicite puce puissance pull punition puree
        purete puzzle pyjama pyramide quai qualite quantite quarantaine quart quatuor querelle question quete queue
        quinzaine race rachat racisme radar rafale raid rail raisin raison raisonnement rallye ramadan rang rapidite
        rappel rapport ratio rayon rayonnement reaction realisation realisme realite recensement reception recette
        recidive recit reclamation recouvrement recrutement recueil recul recuperation recyclage redaction
        redressement reduction referendum reflet reflexion refonte refrain refuge regard regime regiment region
        registre reglement regret regroupement regulation rein rejet relation relief religion remede remontee
        remplacement remuneration renaissance renard rendement renforcement renfort renommee renouveau renovation
        rentabilite rentree renvoi reparation repartition repertoire repetition repli reponse report reportage
        repression reproduction republique reputation requete requin reseau reservation reservoir residence resistance
        resolution respect respiration ressemblance restauration restitution restriction resurrection retention
        reunion reussite revanche reveil revelation revision revolution rhum rhume richard richelieu richesse rideau
        rime ring rite rivalite rob robe robert robin robinet robinson robot roc roche rock role rom rotation rouleau
        round rousseau routine royaume ruban rubrique rugby ruisseau rupture rush rythme sacrifice saga sagesse saison
        salade salle salon salope salut sanction sandwich sang sante sapin satisfaction saut sauvetage saxe scandale
        sceau scenario scene schema science scolarite scooter score scorpion script scrutin sculpture seance
        secheresse secretariat secte section securite seduction segment seigneurie seisme sejour sel selection self
        semaine semestre senat sensation sensibilite sentence sentiment separation serenite serge serment serpent
        serrure service serviette session set seuil sexe sexualite shopping short show sida siecle sierra sieste
        signal signature silhouette simplicite simulation sincerite single sire sirop site situation sketch ski slip
        slogan socialisme societe sociologie sociologue socle sodium soie soif soin soiree soja sol soleil solidarite
        solidite solitude solution sommeil sommet sondage sorcellerie souche souci souffrance souhait soulagement
        soulevement soumission soupcon soupir souplesse souscription souverainete specialite specificite spectre
        speculation spencer sperme sphere spider spirale spiritualite sprint square squelette stabilite stade stage
        stand star station statut steak stock stockage store strategie studio style stylo substance substitution
        subvention succession suffrage suggestion suite superficie superiorite superman supermarche supervision
        supplement support suppression surete surf surnom surveillance survie suspense suspension sylvain symbole
        sympathie symptome syndic syndicat syndrome synthese systeme table tableau tablette talent talon tambour
        tampon tank tarif tatouage taureau taxi team technologie tee telephonie television temoignage temperament
        temperature temple tendance tendresse tension tentation tentative terme terrain territoire terroir terrorisme
        test testament texte texture theatre theme theologie theoreme theorie therapie thon thriller ticket tige tigre
        timing tir tirage tiree tiroir tissu titan titre toile toilette toit toiture tolerance tomate tombeau tome
        tommy tonne tonnerre top torrent torse tort tortue totalite tour tourisme tournage tournee tournure traction
        tradition traduction trafic tragedie trahison train traitement trajectoire trajet tram tramway tranchee
        tranquillite transaction transfert transition transmission transparence transport traumatisme travail
        traversee tremblement trentaine tresor tresorerie treve tri triangle tribu tribunal tribune trilogie trimestre
        trinite trio trip tristesse troll tronc tronche trophee trottoir trou troupe troupeau truc tuberculose tuerie
        tunnel turbo tutelle tuyau unanimite union unite universite uranium urbanisme urgence usage usine usure
        utilisation utilite utopie vacance vaccin vaccination vagin vaisseau vaisselle val valence valet validation
        validite valise vallee valorisation van vanille variante variation variete vase veau vedette vegetation velo
        vengeance vent vente ventilation ventre verbe verdict verification verite veronique verre versement verset
        version vertu veste vetement viande vichy victoire victoria vie vieillesse vigilance vigne vignoble villa
        village ville vin vinaigre vingtaine viol violation violence violon virage virginie visage visee visibilite
        vision vitesse vitrine vocation vodka voisinage voiture vol volcan volee volet volonte volume wagon western
        whisky yen yoga zinc zombie zone zoo zoom
        """,
    ),
    "nb": (
        """
        absolutt absolutte absurd absurde aerlig aerlige afrikanske akademisk akademiske aktiv aktive aktivt aktuelle
        aktuelt akutt akutte alternativ alternative alvorlig alvorlige amerikansk amerikanske andre angaende
        annerledes anonym anonyme ansvarlig ansvarlige antagelig antakelig anti apen apent arabisk arabiske aret arlig
        arlige artig artige asiatiske automatisk automatiske avdode avgjorende avhengig avhengige baerekraftig
        behagelig behagelige beskjeden besokende best bestaende beste betraktelig betydelig betydelige bevisst
        bevisste billigere biologisk biologiske bla blankt blatt blodet bokstavelig borgerlig borgerlige bra bratt
        bred brede bredere britisk britiske daglig daglige darlig darlige darligere definitivt deilig deilige
        demokratisk demokratiske desperat desperate digital digitale digitalt direkte diverse dobbel dobbelt dobbelte
        dodelig dodelige dominerende dramatisk dramatiske droyt dumt dyktig dyktige dyp dype dypere dypt dyre dyrere
        dyrt edru effektiv effektive effektivt egen egentlig egentlige ekkelt eksisterende eksterne ekstra ekstrem
        ekstreme ekstremt eldre eldste elektrisk elektriske elektronisk elektroniske elendig elendige endelig endelige
        engelsk engelske enig enige enkel enkelt enkelte enkle enklere enkleste enorm enorme enormt ensom etisk etiske
        etnisk etniske europeisk europeiske eventuell eventuelle eventuelt evig evige faerre faglig faglige fair
        faktisk faktiske falsk falske fans fantastisk fantastiske faren farene farlig farlige fascinerende fattig
        fattige feilaktig feilaktige femte ferdig ferdige fett fin finale fine fineste fjerde flaut fler flere flest
        fleste flink flinke flinkere flytende folgende forelopig forelopige forferdelig forferdelige formelt fornuftig
        fornuftige fornybar fornybare forsiktig forsiktige forskjellig forskjellige forstaelig forste forstnevnte
        forsvarlig frank fransk franske fredelig fredelige fremmed fremmede fremst fremste fremtidig fremtidige frie
        frivillig frivillige froken from fryktelig fryktelige full fulle fullstendig fullstendige fullt fungerende
        fysisk fysiske gaende game gamle gammel gammelt generell generelle generelt geografisk geografiske gjeldende
        gjentatte glad glade glimrende global globale globalt god gode gra gram grand grande gratis gravid gravide
        greit gresk greske gronn gronne gront grove grovt grundig grundige grusomt gult gunstig gunstige gyldig
        gyldige hage halvt haplost happy hard harde hardere hardt haret harete harry heftig heftige heldig heldige
        hemmelig hemmelige herlig herlige hest historisk historiske hjemmelaget homo homofil homofile hovedsakelig
        hoyere hoyest hoyeste hoyre hoyt human humane hvit hvite hyggelig hyggelige idiotisk idiotiske ille
        imponerende indirekte individuelle individuelt indre ine innendors innerst innerste interessant interessante
        interne internt ironisk irriterende islamske israelske italiensk italienske ivrig ivrige jaevla jaevlig
        japansk japanske jevnt jodiske junior juridisk juridiske kald kalde kaldt kapital kilden kildene kinesisk
        kinesiske kjaereste kjapt kjedelig kjedelige kjekt kjemisk kjemiske kjipt klassisk klassiske knapt kollektivt
        kommende kommersielle kommunal kommunale komplekse komplett komplette kongelige konkret konkrete konkurs
        konservativ konservative konstant konstante kontinuerlig korrekt korrekte kortere koselig koselige kraftig
        kraftige kreativ kreative krevende kriminelle kristen kritisk kritiske kronisk kroniske kulturelle kunstig
        kunstige kvinnelig kvinnelige lang lange langsiktig langsiktige langt langvarig langvarige latterlig
        latterlige lavere laveste lavt ledende ledig ledige lengre lengst lengste lettere levende liberal liberale
        liggende lignende liknende lille lite liten logisk logiske lokal lokale lokalt lopende lovende lovlig lovlige
        lukkede lykkelig lykkelige magisk magiske maks mange manglende mannlig mannlige marine masse massiv massive
        materiale max medisinsk medisinske meksikanske mektig mektige meningslost menneskelig menneskelige mentalt mer
        mere merkelig merkelige mest meste middels midlertidig midlertidige mildt militaer militaere miljovennlig
        mindre mini minst minste mobil mobile moderat moderate moderne modig modige moe moralsk moralske more morkt
        moro morsom morsomme morsomt mulig mulige muntlig muntlige muslimske mye naerliggende naermere naermest
        naermeste naken nasjonal nasjonale nasjonalt naturlig naturlige navaerende nederst nederste nedre negativ
        negative negativt nervos nervose netto nodt nodvendig nodvendige nordisk nordiske nordre normal normale
        normalt noyaktig noyaktige noytral noytrale nydelig nydelige nyere nyeste nylig nylige nynorsk nysgjerrig
        nysgjerrige nyttig nyttige obligatorisk obs offentlig offentlige offisiell offisielle offisielt okende
        okologisk okologiske okonomisk okonomiske omfattende ond onde online oppmerksom oppriktig opprinnelig
        opprinnelige oppvokst oransje ordentlig ordentlige ordinaer ordinaere originale overlevende overraskende
        overst overste ovre ovrig ovrige pafolgende pagaende passende patetisk patetiske pen pene pent perfekt
        perfekte permanent permanente personell personlig personlige pinlig plutselig plutselige politisk politiske
        pop pope populaer populaere populaert positiv positive positivt potensiale potensielle praktisk praktiske
        primaert privat private problematisk profesjonell psykisk psykiske psykologisk psykologiske radikale rar rare
        rart rasende raskere raskeste raskt real realistisk realistiske reell reelle regelmessig regelmessige
        regionale reisende relativt relevant relevante religios religiose ren rene resterende rettferdig rettferdige
        rikeste riktig riktige rimelig rimelige rodt rolig rolige romantisk romantiske rosa rundt russisk russiske
        saerlig saerlige saerskilt saerskilte sakalt sakalte saklig samisk samiske samlede samtidig samtidige
        sannsynlig sannsynlige sant sarbare seinere seksuell seksuelle seksuelt selvfolgelig selvsagt selvstendig
        selvstendige sen sene senere senior sent sentral sentrale sentralt serios seriose seriost sexy side sikker
        sikkert singel sint sinte sist siste sistnevnte sittende sivil sivile sjalu sjarmerende sjelden sjeldent
        sjeldne sjette skadelig skadelige skarp skarpe skeptisk skeptiske skikkelig skikkelige skremmende skriftlig
        skriftlige skummelt skyldig skyldige slags sliten slitsomt sma smart smarte smartere smatt snarere snart snill
        snille solid solide sondre sort sorte sosial sosiale sosialt sott spennende spesiell spesielle spesielt
        spesifikk spesifikke spesifikt sprott stabil stabile stabilt stadig stadige staende stakkars standard
        statistisk statistiske statlig statlige sterk sterke sterkere sterkeste sterkt stilig stilige stor store
        storre storst storste stort stralende strategisk strategiske strengere strengt stygg stygge stygt sulten sunn
        sunne sunt sur sure svaert svak svake svakere svakt svensk svenske syk syke sykt synlig synlige syriske
        systematisk systematiske syvende takknemlig takknemlige tapelig tapelige teknisk tekniske teoretisk teoretiske
        tidlig tidlige tidligere tilfeldig tilfeldige tilgjengelig tilhorende tilsvarende toft tom tomme tomt total
        totale totalt tradisjonell tradisjonelt tragisk tragiske trang trange tredje treet trinn trist triste trivelig
        trivelige trolig tryggere trygt tung tunge tungt tvert tydelig tydelige tyngre typisk typiske tysk tyske
        uavgjort uavhengig uavhengige ubehagelig ubehagelige ubrukelig ubrukelige uendelig uendelige uenig uenige
        ufattelig uheldig uheldige ukjent ukjente uklart ulik ulike ulikt ulovlig ulovlige umiddelbart umulig umulige
        underlig underlige ung unge ungt unik unike unikt unodvendig unodvendige uonsket urettferdig urettferdige
        urimelig urimelige usannsynlig usikker uskyldig uskyldige utallige utelukkende utendors utenlandsk utenlandske
        utro utrolig utrolige utseende utvilsomt uvanlig uvanlige uventet vaerende vaken vakker vakkert vakre vakreste
        vanlig vanlige vanligste vanskelig vanskelige vanskeligere vanvittig vanvittige varierende varmt vedkommende
        veldig veldige velkommen vellykket vennlig vennlige vennligst venstre verd verde verdt verre verst verste
        vesentlig vesentlige vestlig vestlige videre videregaende vidt viktig viktige viktigere viktigst viktigste
        vill ville villig villige vilt virkelig virkelige viss visse voksen voksende voksne voldelig voldelige
        voldsomt vondt yngre yngste ytterligere ytterst ytterste
        """,
        """
        abc abort action adam adferd adgang adresse adressen advarsel advokat advokaten aeren aerlighet affaere aften
        agenda aggresjon aids air akademia aksel aksept aksjene aksjeselskap aksjon aksjonen aktivitet aktiviteten
        aktorene ala alarm alarmen album albumet alderen alfa alkohol alliansen alta alternativet aluminium ambassaden
        ambulanse amerikanere amerikanerne ammunisjon analyse analysen anbud andel andelen andreplass anelse angel
        angrepene angst anklagene ankomst anledningen anlegget anmeldelse annonse annonsen ansettelse ansikt ansiktet
        ansvar ansvaret antall antallet antibiotika apenhet apningen app appen applaus ara arabere arbeidere
        arbeiderne arbeidskraft arbeidsliv arbeidslivet arbeidsplass arbeidstid areal arealet arena arene argentina
        argumentet arhundre arild aringen ark arkitekt arkitektur arkiv arkivet armen armene arne arr arsaken arsakene
        arsenal arten artikkel artikkelen artiklene arven asen asfalt ask ass astedet astma asyl asylmottak asylsokere
        atferd atmosfaere atmosfaeren atomvapen audi auksjon aurora auto autoritet avdelingen avfall avgang avgjorelse
        avgjorelsen avhengighet avisa avisen avisene avskjed avslag avslutningen avsnitt avstand avstanden avtalen
        babyen back backup bacon bag bagasje bagasjen bakgrunn bakgrunnen bakhodet bakken baksiden bal balanse
        balansen ballen banen bang banken bankene baren barna barndom barndommen barnebarn barnehage barnehagen
        barneskole barneskolen barnet barnevern barnevernet baseball basen basis basketball bass basseng bassenget bat
        baten batene batteri batteriet beboere bedrift bedriften bedriftene befolkningen begravelse begravelsen
        begrepene begrunnelse begrunnelsen begynnelse begynnelsen behandlingen behov behovet bekreftelse beliggenhet
        benjamin benken bensin beredskap besittelse beskjed beskrivelse beskrivelsen beskyttelse beslag beslutningen
        besoket betegnelsen betong betydningen bevegelse bevegelsen bevisene bevissthet bibelen bibliotek biblioteket
        bidrag bikkja bilde bildene bildet bilen bilene bille billett billettene bingo biologi biskop bistand bjorn
        bjornen blad bladene bladet blaffen blod bloggen blomstene bob bobby body bok boka boken bokene bokmal boksen
        bokstav bokstavene bolgen bolig boligen bomull bonden bondene bonn bonus borettslag borettslaget borgen
        borgere borgerkrig borgerkrigen borgerlonn borsen bosted boston brannen brannvesenet bransje bransjen bravo
        bredden brev brevet bridge britene brodre brodrene broen broren bru brua brudd bruddet bruken brukere brukeren
        brukernavn brukerne bryllup bryllupet bud budsjett budsjettet budskap budskapet buksa buksene bunnen bursdag
        bursdagen bush business bussen bussene butikk butikken butikkene bydel bydelen byen byene bygda byggingen
        bygningen bygningene byrad byradet bystyret campus cannabis case cellene champagne chili chips city cola
        college comeback country cross cup cupen dagbladet dagbok dagene dagsavisen dalen dama damen damene dammen
        dannelse danskene dap dass data database databasen dataene datamaskin datamaskinen dataspill datatilsynet dato
        datoen datteren debatt debatten debut definisjon definisjonen delen delene delstaten deltagelse deltagere
        deltagerne deltakelse deltakere deltakerne deltid demokrati demokratiet depresjon derby dessert detalj
        detaljene diabetes diagnose diagnosen dialekt dialekten dialog diesel direktoren disiplin diskusjon
        diskusjonen disposisjon distanse distribusjon distrikt distriktene distriktet divisjon djevelen doden dodsfall
        dodsstraff dogn dognet doktorgrad dokumentar dokumentaren dokumentene dokumentet dollar dom dommekraft dommen
        dommere dommeren dommerne domstol domstolen domstolene dora doren dorene dose dotre drakt drama drammen
        drapene drapet driften dritten drittsekk drivstoff drommen drommene dronningen dugnad duoen dusjen dvd dybde
        dyra dyrene dyret effekt effekten effektene effektivitet egenhand egenkapital egenskap egenskapene eggen
        eggene eiendom eiendommen eiere eieren eierne eierskap eik eksamen eksempel eksistens ekspert ekspertene
        eksplosjon eksport ekstremisme ektefelle ektemannen ekteparet ekteskap ekteskapet elbil elektrisitet
        elektronikk elementene eleven elevene elite eliten eliteserien elv elva elven empati enden endringen
        endringene energi energien engel enhet enheten enighet ensomhet entusiasme episode episoden episodene
        erfaringen ess etableringen etappe etappen etasje etikk etnisitet etterkommere etternavn ettersporsel ettertid
        euro eventyr eventyret evnen evolusjon fabrikk fabrikken faen fag fagene faget fagfolk fakta faktum fakultet
        fallet familiene fanden fansen fantasi fargen fargene farten fartoy fartoyet farvann farvel fasen fattigdom
        favoritt fedre feilen fellesskap fellesskapet feltet feminisme fengsel fengselet fenomen fenomenet ferie
        ferien festen festival festivalen fiasko fiende fienden figur figuren filmen filmene filosofi finalen finans
        finanskrisen fingeren fingrene firma firmaet fisken fitte fjell fjellene fjellet fjorden flash flaten flertall
        flertallet flokken flyene flyet flyktningene flyplass flyplassen fodsel fodselen fokus fokuset folelse
        folelsen folelsene folkemord folkene folkens folkeparti folkeslag fond fondet forbilde forbindelse
        forbindelsen forbrukere forbrukeren forbrukerne forbruket forbrukslan forbud forbudet forbund force ford
        fordelen fordelene fordelingen foredrag foreldre foreldrene foreningen foreren forerkort forerkortet
        foresporsel foretak forfattere forfatteren forfatterne forfedre forfolgelse forhand forholdene forholdet
        forklaringen forlag formal formalet format formue fornavn fornuft forsiden forskere forskerne forskjell
        forskjellen forskjellene forskningen forskrift forslag forslagene forslaget forsoket forstaelse forstaelsen
        forstand forsvaret fortellingen fortid fortiden fortjeneste forum forumet forveien fossen fotball fotballen
        foten fotgjengere foto fottene framtid framtida framtiden fravaer freden frekvens fremgang fremskritt fremtid
        fremtiden frihet friheten friidrett fristen fritid fritiden frokost frokosten fronten frost frustrasjon
        frykten fugl fuglene fuktighet funksjon funksjonen funn fylkene fylkesmannen fyren fyrverkeri fysikk galleri
        galleriet galskap gamlebyen gangen gangene garanti garasjen gard garden garderoben gassen gata gate gaten
        gatene gave gavekort gaven gebyr generasjon generasjonen geografi gevinst gitar gjedde gjelden gjengen
        gjennombrudd gjennomgang gjennomslag gjennomsnitt gjenstand gjestene gjodsel gleden gods godset godteri golf
        grace graden grafikk grammatikk graven gray green greia greiene grensen grensene grunnen grunnene grunnlag
        grunnlaget grunnloven grunnskole grunnskolen gruppa gruppe gruppen gruppene gud gudene gull gullet gulrot
        gulvet gutten guttene haer haeren hagen halen hallen hallo halsen halvdel halvparten halvtime ham hand handa
        handball handel handelen handen handfull handlingen handlingene handverk hastighet hastigheten hatten haugen
        hav havet havnen helen helene helgen helgene helhet helse helsen helsevesen helsevesenet helten hemmelighet
        hendelse hendelsen hendelsene hendene henry hensikt hensikten hensyn heroin herren hesten hestene hijab hilsen
        himmel himmelen hiphop historie historien historiene historikk hjel hjelm hjelpen hjemland hjemlandet
        hjemmebane hjemmeside hjemmet hjerne hjernen hjerte hjertet hjorne hjornet hjort hobby hockey hode hodene
        hodepine hodet hoff hogskolen holdningen holocaust horn hospital hotell hotellet house hovedsak hovedstad
        hovedstaden hoyde hoyden hoydepunkt hoyesterett hoyresiden hoyskole hud huden huff hukommelse humoret hund
        hunden hundene hundre hus husdyr husene hverdag hverdagen hydrogen hyllest ida ideen ideene identitet
        identiteten ideologi idiot idioten idiotene idrett idretten idrettslag ilden illusjon illustrasjon image
        import indikasjon individ industri industrien inflasjon info informasjon initiativ initiativet innblikk
        innbrudd innbyggere innbyggerne innflytelse innforingen inngang inngangen inngrep innhold innholdet innlandet
        innlegget innovasjon innsats innsatsen innsiden innsjoen innskudd innslag innsyn inntak inntekt inntektene
        inntrykk inntrykket innvandrere inspirasjon installasjon institusjon institutt instituttet integritet
        intelligens intensjonen interesse interessen internett intet invasjon invasjonen invitasjon irene ironi
        irritasjon isen islam isolasjon jaevel jakke jakten jarl jegere jens jensen jenta jentene jern jernbane
        jernbanen jersey jobben jobbene joda jode jodene jordbaer jordbruk jorden jordskjelv journal journalisten
        juice jula julaften julen jury juryen juss justis kabel kafe kaffe kaffen kalenderen kallenavn kamera kameraet
        kamerat kamp kampanje kampanjen kampen kampene kanal kanalen kanalene kandidat kane kanten kaos kapasitet
        kapasiteten kapittel kapteinen karakteren karakterene karen karma karriere karrieren kassa kasse kassen
        katalog katastrofe kategori kategorien katt katten kebab keiseren kick kid kilde kilo kineserne kino kirka
        kirke kirkegard kirken kirurgi kiwi kjaeledyr kjaeresten kjaerlighet kjeden kjeften kjelleren kjemi kjendis
        kjennskap kjernen kjokken kjokkenet kjolen kjoleskap kjoleskapet kjolvannet kjonn kjonnene kjopet kjoretoy
        kjoretoyet klaer klaerne klanen klassekampen klassen klasserommet klima klimaet klinikken kloden klokken
        klubben klubbene knaerne knappen kniven koden koen kokain kokk kollega kombinasjon komite komiteen kommando
        kommandoen kommentar kommentaren kommentarene kommisjonen kommune kommunen kommunene kompensasjon kompetanse
        kompetansen kompis kompisen konferanse konferansen konflikt konflikten kong konge kongen kongeriket kongressen
        konklusjon konklusjonen konkurranse konkurransen konsekvens konsekvensen konsept konseptet konsernet konsert
        konserten konstruksjon kontakten kontekst kontinentet konto kontoen kontoret kontrakt kontrakten kontrast
        kontroll kontrollen kopi koranen korrupsjon kortene kosthold kostnad kostnadene kraft kraften kraftverk
        krangel kravene kreditt kredittkort kreft kreftene krigen krigere krim kriminalitet krise krisen kristendom
        kriteriene kritikk kritikken kroken kronen kronikk kronikken kroppen kuk kulde kultur kulturen kulturhus kunde
        kunden kundene kundeservice kunnskap kunnskapen kunst kunsten kunstnere kunstneren kursen kurven kvalitet
        kvaliteten kvartal kvelden kvinnen kvinnene kysten laerdom laerere laereren laererne lagene laks landbruk
        landbruket landene landsby landsbyen landskap landskapet landslag landslaget lanet langrenn lappen larene
        lastebil latene latin lauren ledelse ledelsen ledere lederen lederne lederskap legen legenden legene leilighet
        leiligheten leiren leketoy leksikon lena lengde lengden lenken leppene lesere leserne leveren levetid lidelse
        lidenskap lien liga ligaen likhet line linja linje linjen linjene linken lisa lise lisens listen litteratur
        livene livskvalitet livsstil livssyn logikk logistikk logn logo logoen lojalitet lok lokalene lokalet lomma
        lommeboka lonnen lopere losningen losningene lotto lovbrudd loven lovene lovverk lovverket loypa luften
        lufthavn luksus lukten lund lunde lungene lyden lykke lykken lyset magasin magasinet magen magi majestet
        majoriteten makten malene maleri maleriet malet maltid mandat maned maneden manedene manen mangel mangelen
        mangfold mangfoldet mannen mannfolk mannskap mannskapet manus maraton mareritt margin marihuana marinen mark
        marked markedet maskin maskinen maskinene mastergrad matematikk maten materialet medalje medarbeidere
        medfolelse media mediene medisin medisinen medlem medlemmene medlemskap meldingen meldingene mellomrom
        mellomtiden melodi mengde mengden menighet menigheten meningen menn mennene menneske menneskene mennesket meny
        menyen mercedes mesteparten mesterskap mesterskapet metall metode metoden metodene middagen middel midlene
        midten mil miles militaeret miljo miljoet milliard million mindretall minimum minnene minutt minuttene misnoye
        mistanke mix mobilen mobilitet mobiltelefon modell modellen modellene modre moen moms monsen monsteret moral
        mord mordet moren morgenbladet morgenen morges moroa morten motene motiv motivasjon motivasjonen motivet
        motoren motorsykkel motorvei motstand motstanden motstandere motstanderen mottak mulighet muligheten
        mulighetene munnen muren murene museum musikere musikk musikken muslim myndighet myndighetene naboen naboene
        nabolag nabolaget naerhet naerheten naeringen naeringsliv naervaer nakken narkotika nasjon nasjonalisme
        nasjonalpark nasjonen natten natur naturen naturfag nav navnene nazi nazistene nederlag nedgang nedrykk nes
        nesa nese nesen nettavisen nettside nettsiden nettsted nettstedet nettverk nettverket nevo nissen niva nivaet
        nokkel nokkelen noklene non nora nordland nordmannen nordmenn nordmennene note nummeret nyhet nyheten nyhetene
        nyhetsbrev nyttar objekt observasjon odd odds odeleggelse offentlighet offeret ofrene okkupasjon okkupasjonen
        okningen okonom okonomi okonomien oksygen ola ole oljen oljeprisen omdomme omegn omfang omfanget omgang
        omgivelsene omrade omradene omradet omsetningen omsorg ondskap opera operaen operasjon operasjonen oppdrag
        oppdraget oppfatningen oppforsel oppforselen oppgave oppgaven oppgavene oppgjoret opphav oppholdet
        opplaeringen oppland opplegg opplegget opplevelse opplevelsen opposisjon opposisjonen opprinnelse opprykk
        oppskrift oppskriften oppslag opptak opptaket opptreden oppvekst oppveksten ordbok orden ordene ordforere
        ordforeren ordningen orene organ organisasjon originalen orkenen orn ostlandet ovelse ovelsen ovelsene
        overflate overflaten overgang overgangen overgrep overhode overlevelse overraskelse overs oversettelse
        oversikt oversikten overskrift overskriften overskudd overskuddet overtid overvekt ovnen oya oyeblikk
        oyeblikket oyene oynene pafyll pakken paminnelse panikk pannen papir papiret paradis paragraf park parken
        parlamentet parorende partene parti partiene partiet partnere partneren partnerskap party pasienten pasientene
        paske pasken passasjerene passord passordet pastand pastanden pastandene pause pausen pave paven pedagogikk
        pengene penis pensjon pensum periode perioden permisjon person personen personene personlighet personvern
        perspektiv pils pistol pizza planen planene planeten planten plantene plass plassen plassene plast platen
        plattform plattformen poeng poengene poenget poesi polen policy politi politiet politifolk politikere
        politikerne politikk politikken politimannen politimenn polse popularitet porno port porten porto posisjon
        posisjonen posten potensialet praksis praksisen pre premie presentasjon presidenten presisjon pressen
        prestasjon presten prevensjon prinsen prinsesse prinsessen prinsipp prinsippene prinsippet prioritet prisen
        prisene privatliv problem problemene problemet produksjon produksjonen produkt produktene produktet
        produsenten produsentene profeten profil profilen program programmene programmet programvare promille
        propaganda prosess prosessen prosjekt prosjektene prosjektet prostitusjon protein protest proven provene
        provinsen psykiatri psykolog psykologen psykologi pub publikum pulsen pund punktene punktet punktum puppene
        purken pusten quiz rabatt race radgivere radhuset radio radioen raeva raja rammene rapport rapporten
        rapportene rasen rasisme rasmus reaksjon reaksjonen reaksjonene realfag realiteten redaksjonen redegjorelse
        redskap reduksjon referanse refleksjon reform reformen regel regelen regelverk regelverket regi regime regimet
        region regionen regjeringa regjeringen reglene regningen regnskap reisen rekkefolge rekkefolgen rekken
        rekkevidde reklame reklamen rekord rekorden relasjon religion religionen renten reparasjon resept resolusjon
        respekt respons ressurs ressursene rest restauranten resten restene resultat resultatene resultatet retningen
        retorikk retorikken retten rettighetene rettssak rettssaken retur revisjon revolusjon revolusjonen rex rikdom
        ringen risiko risikoen rittet robot rollen rollene roman romanen rommene roten rovdyr royken rullestol rumpa
        rumpe runden rundene russ russere russerne ruten rutine ryggen ryktene ryttere sagene saken sakene salat salen
        salg salget samboeren same samferdsel samfunn samfunnet samfunnsfag samhold samleie samlingen sammenbrudd
        sammendrag sammenheng sammenhengen samtalen samtalene samvittighet sand sanden sangen sangene sannhet
        sannheten satan satire scene scenen science seere seieren sekk sekken sekretaer seksjon seksjonen seksualitet
        sekund selgere selskap selskapene selskapet selvfolge selvmord selvtillit semifinale semifinalen seminar
        senatet sendingen seng senga sengen sensur senteret sentrum serie serien seriene serierunde service sesong
        sesongen sesongene setningen sex shit sida sidene signal sikkerhet sikkerheten sinn sinne sinnet sirkel sirkus
        sitat situasjon situasjonen sjaforen sjakk sjansen sjansene sjefen sjel sjelen sjo sjoen sjokolade skaden
        skadene skala skandale skandalen skapet skatten skattene skepsis ski skien skilsmisse skipene skjebne skjegg
        skjema skjermen skjonnhet skjonnheten skjorte skoen skoene skog skogen skolearet skolegang skolen skolene
        skrivefeil skudd skuddet skuespill skuespillere skuffelse skulderen skuldrene skyene skyggen skylda skylden
        skytevapen slaveri slengen slips slott slottet slutten sluttspill sluttspillet smaken smerten snoen snuten
        sofa sofaen software sokere soket soknad soknaden soldatene solen solidaritet solv sonen sonnen sonnene soppel
        sorgen sosialisme sosken sosteren sostre sostrene soul soverom soverommet sovjet sovn spade sparebank sparken
        spedbarn spenningen spillene spillere spilleren spillerne spillet spilletid spissen sporene sporsmal
        sporsmalene sporsmalet sporten sprak spraket stabilitet stad stadiet stadion stadium stafett stal stallen
        stammen stand standarden standpunkt starten stasjon stasjonen stasted stat staten statene statistikk
        statistikken statsrad statsraden status stedene stedet steinen stemmen stemmene stemmerett stemningen sten
        stien stiftelsen stilen stillhet stillingen stillingene stipend stjerne stjernen stjernene stoffene stolen
        stolthet stormen storrelse storrelsen stortinget story stotten straffen stranden strategi strategien streken
        strekningen strommen struktur studentene studie studien studiene studiet studio styremedlem styrken styrkene
        suksess suksessen summen suppe support supportere svakhet svarene svaret svein svenskene sverd svindel sykdom
        sykdommen sykehjem sykehus sykehusene sykehuset sykepleiere sykkel sykkelen symbol symbolet sympati symptomene
        syndrom synet synspunkt system systemene systemet tabell tabellen taco tak taket takt taktikk talen talk
        tallene talmodighet tangen tankegang tanken tankene tannlege tannlegen tapere taxi team teamet teateret teddy
        teigen teknikk teknikken teknologi teknologien teksten tekstene telefon telefonen telemark tema temaet
        temperatur temperaturen tempo tempoet tenarene tendens tennene tennis teori teorien terapi terningkast terreng
        terrenget territorium terrorangrep terrorisme terskel tesla testamentet testen tiar tiarene tiaret tida tiden
        tidende tidene tidspunkt tidspunktet tidsrommet tidsskrift tilbud tilbudet tilfeldighet tilfelle tilfellene
        tilfellet tilgang tilgangen tilgivelse tilhengere tilhorighet tillatelse tillit tilliten tilskudd tilskuere
        tilstanden tilsyn tiltak tiltakene timen timene tingen tingene tingrett tippeligaen tittel tittelen tja
        tjeneste tjenesten tjenestene toalett tobakk togene toleranse tonen tonn toppen toppserien torget torp tortur
        toyen toyota trade traden tradisjon tradisjonen traerne trafikk trafikken tragedie transport trappen trend
        trenden treneren treningen trikken trobbel troen tronen troppen troverdighet trump trussel trusselen trygghet
        tunnel tunnelen turen turneringen tusen typen typene tyskere tyskerne tyveri uavhengighet uenighet uflaks
        uhell uken ukene ulikhet ull ulv ulven ulykke ulykken undergang undersokelse undertoy ungdom ungdommen
        ungdommene ungdomsskole ungen ungene union unionen universet universitet unntak unntaket usikkerhet utbrudd
        utbyggingen utdannelse utdannelsen utdanningen utdrag utfall utfallet utfordringen utgangen utgangspunkt
        utgave utgaven utgiftene utholdenhet utkikk utlandet utnyttelse utovere utoverne utoya utroskap utsagn
        utseendet utsiden utsikt utsikten utslag utslipp utslippene utstillingen utstyret uttalelse uttalelsen
        uttrykket utvalg utvalget utvidelse utviklingen vaksine vaktene val valg valgene valget valgkamp valgkampen
        valle valuta van vane vannkraft vapen vapenet vapenhvile vapnene vara varene varianten variasjon varmen varsel
        vedtak vedtaket vegen vegg veggen veggene vegne vegvesen veien veiene vekst veksten vekten velferd velgere
        velgerne vennen vennene venninne vennskap vennskapet venstreside venstresiden verden verdenscupen verdenskrig
        verdien verdiene verdighet verken verksted verktoy versjon versjonen vert vesen vesten vett vettet video
        videoen viken viktigheten vilje viljen vilkar vilkarene villa vin vinden vindkraft vindu vinduene vinduet
        vingene vinkel vinnere vinneren vinnerne virkelighet virkemiddel virksomhet virksomheten virus viruset visa
        visjon vitamin viten vitenskap vitenskapen vitsen vogn volden voldtekt volum volvo vurderingen web yoga
        yrkesfag ytelse
        """,
    ),
    "nl": (
        """
        aangenomen aangepast aangepaste aangevallen aangewezen aanvankelijk aanwezig aanwezige aanzienlijk
        aanzienlijke aardig aardige absoluut acht actief afgeleid afgeleide afgelopen afgerond afgeronde afgesloten
        afgesproken afhankelijk afkomstig afkomstige akkoord algemeen all alle alleen allen allerlei alternatief
        altijd alvast amerikaans amerikaanse ander andere anoniem anonieme anti apart aparte arabisch arabische
        archief arm arme automatisch automatische bang bange bar bedacht bedekt bedekte bedoeld bedoelde begon
        begonnen begraven behoorlijk behoorlijke bekend bekende belachelijk belachelijke belangrijk belangrijke
        belgisch belgische beneden benieuwd bepaald bepaalde beperkt beperkte bereid bereikbaar beschadigd beschadigde
        beschermd beschermde bescherming beschikbaar beschreven beslist besliste besloten bestand bestond betaald
        betaalde betrokken beurs bewust bewuste bezet bezig bezocht bezochte bezorgd bezorgde bij bijzonder bijzondere
        blauw blauwe bleek blij blije blijkbaar blind blinde bloed blog blok bol boos bosch bot brak breed bruin
        bruine centraal chinees chocolade christus commercieel compleet complex complexe constant constante content
        cool coole correct correcte creatief crimineel cultureel dagelijks dagelijkse dankbaar deels definitief
        degelijk degelijke degene der dertig des destijds dezelfde dicht dichtbij dichte dichterbij die diens diep
        diepe dier diezelfde digitaal dik direct directe dodelijk dodelijke dol dom dome donker donkere dood douche
        down drie dringend dringende dronken droog druk dubbel dubbele duidelijk duidelijke duits duitse duizend duur
        duurzaam dwars echt echte economisch economische een eene eenmaal eenvoudig eenvoudige eerder eerdere eerlijk
        eerlijke effectief eigen eigenlijk eigenlijke eindelijk elf emotioneel end ende eng enge engels engelse enig
        enige enkel enkele enorm enorme enthousiast enthousiaste erg erge erkend erkende ernstig ernstige europees
        even exact exacte extra extreem fantastisch fantastische favoriet favoriete fijn fijne financieel flink flinke
        fout foute frank frans franse fysiek fysieke gaaf gaande gauw gay geboren gebouwd gebouwde gebroken gebruikt
        gebruikte gedaan gedeeld gedeelde gedeeltelijk gedragen gedwongen gee geel geen gegeven geheim geheime
        gehouden geil geile geinspireerd gek gekend gekende gekozen gelaten geldig geldige geleerd geleerde gelegen
        geleid geleide gelezen gelijk gelijke gelukkig gelukkige gelukt gemaakt gemaakte gemakkelijk gemakkelijke
        gemeen gemeld gemelde gemiddeld gemiddelde genaamd generaal genoeg genoemd genoemde genomen geopend geopende
        gepakt geplaatst geplaatste geraakt geraakte gerecht geregeld gericht gerichte gerust gescheiden geschikt
        geschikte geschreven geslaagd geslaagde geslagen gesloten gesproken gesteld gestelde gestemd gestopt getekend
        getekende getroffen getrokken getrouwd getrouwde gevaarlijk gevaarlijke gevallen gevangen gevangene gevangenen
        gevestigd gevestigde gevierd gevoelig gevoelige gevoerd gevonden gevormd gevormde gevraagd gevraagde gevuld
        gevulde geweldig geweldige gewend gewenst gewenste gewijzigd gewijzigde gewond gewonde gewonnen gewoon
        gewoonlijk gezamenlijk gezamenlijke gezegd gezegde gezellig gezellige gezet gezeten gezien gezocht gezochte
        gezond gezonde gezorgd glazen goedkoop goud gouden graag grand grande grappig grappige gratis grijs groen
        groene groot groote grotendeels groter grotere half handig handige happy hard harde hartelijk hartelijke heden
        heeft heel heerlijk heerlijke heet hel helder heldere hele heleboel helemaal hetzelfde high historisch
        historische hoeveel hoeveelheid homo honderd hoog hooge hopelijk hot houten huwelijk idioot ieder iedere
        iemands illegaal incident inclusief ingeschreven ingesteld ingestelde ingezet initiatief interessant
        interessante italiaans italiaanse jaloers jaloerse jammer japans japanse jarenlang jarenlange jarig jarige jee
        jong jonge juist juiste junior juridisch juridische kamp kant kapot kennelijk kies klaar klein kleine klote
        knap koninklijk koninklijke koos kort korte koud koude krachtig krachtige kritiek kritieke kritisch kritische
        kut kwaad kwetsbaar kwijt laag laat lagen landelijk landelijke lang lange langzaam lastig lastige leeg lef
        lekker lekkere letterlijk letterlijke leuk leuke licht lichte lief lijk link links linkse live logisch
        logische lokaal los lucht lui luie luxe maakte makkelijk makkelijke marine massaal maximaal medisch medische
        meerdere menselijk menselijke metalen militair militaire miljard miljoen miljoenen min mine mini minimaal mis
        mobiel mobiele model modern moderne moeilijk moeilijke mogelijk mogelijke momenteel mooi mooie moslim moslims
        naakt naakte naar naast naaste nabij nabije nader nadere namelijk namens nat nate nationaal natuurlijk
        natuurlijke nauwelijks nederlands nederlandse negatief negen nep net niets nieuw nieuwe nieuws nieuwsgierig
        nodig nodige nogmaals noodzakelijk noord normaal nut nuttig nuttige officieel oke onbekend onbekende
        onduidelijk onduidelijke ongeacht ongelofelijk ongelooflijk ongetwijfeld online onmiddellijk onmogelijk
        onmogelijke onschuldig onschuldige ontwikkeld ontwikkelde ontworpen ontzettend onvoldoende onzeker onzekere
        ook oost open openbaar opgeheven opgenomen opgepakt opgesloten opgezet opnieuw opvallend opvallende oranje
        origineel oud oude out over overdag overdreven overleden overledene overtuigd overtuigde paar parijs parijse
        pas perfect perfecte personeel persoonlijk persoonlijke perspectief pijnlijk pijnlijke plastic plat plotseling
        plotselinge politiek politieke populair populaire positief power prachtig prachtige praktijk precies premier
        premiere prettig prettige prima prive pro publiek publieke puur raak raar ras recent recente recht rechte
        rechter rechts rechtse rechtstreeks redelijk redelijke regelmatig regelmatige relatief rijk rijke rond ronde
        rood roos rot roze ruim ruime russen russisch russische rust rustig rustige saai saaie samengesteld schattig
        schattige scherp scherpe schitterend schitterende schoon schreef schuldig schuldige senior serieus sexy simpel
        simpele single slecht slechte slim snel sociaal soep sommigen sowieso spaans spaanse spannend spannende
        speciaal specifiek specifieke speelde stabiel stabiele standaard star steeds sterk sterke stevig stevige stijl
        stil stom stop straf stuk succesvol super technisch technische tegelijk tegenwoordig tekort terecht terechte
        terug tevreden tien tijdelijk tijdelijke tips toegankelijk toegepast toegepaste toegevoegd toegevoegde
        toevallig toevallige traditioneel triest trieste trots trotse trouw trouwe tuurlijk twaalf twee twintig
        typisch typische uit uiteindelijk uiterlijk uiterlijke uiterst uiterste uitgebreid uitgebreide uitgelegd
        uitgesproken uitsluitend uitstekend uitstekende uniek unieke vaak vanuit vast vaste veel veertig veilig
        veilige ver verbaasd verbaasde verboden verbonden verborgen verdacht verdachte verdeeld verdeelde verderop
        verdiend verdiende verdrietig verdwenen vergeten verkeerd verkeerde verklaard verklaarde verkregen
        verkrijgbaar verlaat verlaten verleden verliefd verliefde verloren vermist vermiste vermoedelijk verplicht
        verplichte verrassend verrassende verrast verraste vers verse verslagen verspreid verspreide verstandig
        verstandige vervelend vervelende verwijderd verwijderde verwoest verwoeste vet vier vijf vijftien vijftig
        vlaams vlaamse vlak vlakbij vol voldoende volgend volgende volkomen volledig volledige volop volwassen
        volwassene voor voorafgaand voorafgaande voorbereid voorbij voorbije voorlopig voorlopige voormalig voormalige
        voornaamste voornamelijk voortdurend voortdurende voortgezet voorzichtig vorig vorige vreemd vreemde vreselijk
        vreselijke vriendelijk vriendelijke vrij vrije vroeg vroege vroeger vroegere vrolijk vrolijke vuil vuile waard
        waarde wakker warm warme website week wel welkom welkome wereldwijd wereldwijde werkelijk werkelijke werkte
        werkzaam west wettelijk wettelijke wild wilde wit wonder wow zacht zachte zakelijk zakelijke zat zeer zeker
        zekere zeldzaam zelf zelfde zelfstandig zelfstandige zes zestig zichtbaar ziek zieke zilver zilveren zodanig
        zoek zoet zoete zonde zorgde zout zoute zoveel zuid zuidoost zwaar zwak zwanger zwangere zwart zwarte
        """,
        """
        aanbesteding aanbieding aanbod aanbouw aandacht aandeel aandoening aanduiding aanklacht aankomst aankondiging
        aankoop aanleiding aanloop aanmerking aanname aanpak aanpassing aanrijding aanslag aansluiting aanspraak
        aantal aantocht aanval aanvang aanvaring aanvraag aanwezigheid aanwijzing aanwinst aap aard aardappel
        aardbeving aas abc abdij abortus academie account accu achtbaan achterdeur achtergrond achterhoofd achternaam
        achterom achterstand achtertuin acteur actie activiteit actrice admiraal adoptie adres advertentie advies
        adviseur advocaat afbeelding afdruk affaire afgrond afkomst afkorting afleiding aflevering afmeting afrit
        afschaffing afscheid afscheiding afslag afsluiting afspraak afstand afwezigheid afwijking afzetting agenda
        agentschap agressie air akte alarm album alcohol alfabet algoritme alinea allergie alliantie alt alto amateur
        ambacht ambassade ambassadeur ambitie ambt amen analyse ananas angel angst animatie antenne antwoord anus
        apartheid apotheek apparaat appel applaus applicatie aquarium archeoloog archipel architect arena arend ark
        armband arrest arrestatie artiest artikel aspect assistente associatie astrid astronaut atlas atleet attractie
        auditie auteur autisme auto automaat autopsie autoriteit avondklok avondmaal avontuur baai baal baan baard
        bacterie badplaats bakje bakkerij baksteen balans balie balk balkon ballet ballon banaan bank bankrekening
        barbecue barriere bas basis basisschool basketbal bataljon batterij beat beauty bed bediening bedrag
        bedreiging bedrijf bedrog beek beeld beeldscherm been begin begrafenis begrip begroting behoefte bek
        bekentenis bel belang belasting belediging beleid beleving belofte beloning bemanning benaming bende beperking
        bereik berekening berg berging beroemdheid beroep beroerte bes beschaving beschikking beschouwing beschrijving
        besef beslag beslissing besmetting besparing bespreking best bestaan bestel bestelwagen bestemming bestrijding
        bestuur betekenis betoog betrekking beugel beveiliging bevel bevestiging beving bevolking bevordering
        bevrijding beweging bewering bewerking bewijs bezetting bezoek bezorgdheid bibliotheek bijbel bijdrage
        bijeenkomst bijl bijlage bijnaam bikini binnenplaats binnenstad biografie biologie bioscoop bisschop bitch
        bitcoin blaas blad bladzijde blessure blijk blik bliksem bloem blokkade blom blouse boa bob bocht bod bodem
        body boef boeg boek boekhandel boekhouding boel boerderij bok bolwerk bom bon bondgenoot bonus boodschap boom
        boon boord bord borgtocht borrel bos boterham botsing boulevard bouwplaats bouwwerk box brand branding
        brandstof brasserie breedte breek brein breuk brief brievenbus bril brink brochure broederschap broek bron
        brood brouwerij brug bruiloft brunette budget buffet bui buik buikpijn buis buitenwereld bundel burcht bureau
        burg burgeroorlog bus bushalte busstation cabaret cabine cadeau cake camera campagne camping campus canon cao
        capaciteit cape capsule caravan carbon carnaval carriere casino catalogus categorie cel celstraf centrum
        ceremonie certificaat champagne chauffeur cheque chip chirurg chirurgie chocola circuit circus cirkel citaat
        citadel clan cliche clip clown club clubhuis coach coalitie cobra cocktail code cognac cola collectie collega
        college coma combinatie comeback comfort comite commissaris commissie communisme compagnie compensatie
        competitie complot compositie compromis concentratie concept concern concert conclusie condoom conferentie
        conflict confrontatie congres console constructie consulaat consumptie contact contract contrast controverse
        conventie conversatie corps correctie coup coureur cowboy crash creatie crisis criterium criticus cruise
        cultuur curry cursus cyclus daad daan dagblad dagboek dak dal dam dank dankbaarheid dans danseres dar darm
        databank database datum deadline deal debat debuut decaan decennium decoratie deel deelname deelstaat
        definitie dek deken dekking dekmantel deksel del delict delta demo democratie demonstratie deo depot depressie
        dessert detail deur dia dialect dialoog dictatuur dieet dief diefstal dienst dieptepunt dierenarts dierentuin
        dijk dilemma dimensie ding dino diplomaat directeur directie discipline disco discussie distributie district
        documentaire doek doel doelgroep doelwit dolfijn dollar domein domino donatie doop doorbraak doorgang doorn
        doos dop dorp dos dosis dozijn draad draagvlak draai draak dragon drama drank dreiging drempel driehoek
        drietal drone droom drop drug drum druppel duel duet duif duik duim duin duivel duo dutje duw dvd dwerg
        dynastie echo echtgenoot economie econoom ecosysteem editie eed eekhoorn eenheid eenhoorn eeuw eeuwigheid
        effect ego eigendom eigenschap eik eikel eiland einde eindexamen eis eiwit elftal elleboog ellende els emotie
        engel enquete ensemble entree envelop epidemie episode era erf erfenis erfgenaam erfgoed ergernis erkenning
        ervaring espresso essay etage etalage etappe etentje etiket euro eva evaluatie evenwicht evolutie examen
        excursie excuus expeditie expert exploitatie explosie ezel fabriek faciliteit factuur faculteit familielid
        familienaam fan fanfare fantasie fascisme fase fat fatsoen fax federatie feestdag feit fenomeen festival fiets
        fietspad fietstocht figuur film filmfestival filosofie filosoof finale financien firma flat fles flits fonds
        fontein formaat formule fort fortuin forum foto fotoalbum fotografie fractie frame fraude frequentie frisdrank
        front frustratie functie functionaris fundering fusie gala galerie galerij game gang gap garage garantie gas
        gate gave gebak gebed gebeurtenis gebied gebouw gebrek gebruik gedeelte gedenkteken geding gedoe gehalte
        geheugen gel geld gelegenheid gelijkenis gelijkspel geloof geluid geluk gemak gemeenschap gemeente
        gemeentehuis gemeenteraad genade geneesmiddel generatie genezing genie genocide genootschap genre gerechtshof
        gereedschap gerucht geschenk geschiedenis geschil gesprek getal getuige getuigenis geur geval gevangenis
        gevecht gevel gevolg gewest geweten gewicht gewoonte gezelligheid gezelschap gezin gezondheid gids gif gift
        gil giro glans glas glasvezel glimlach glorie goal god godin godsdienst goedkeuring gok golf gordel gordijn
        gorilla gouverneur graad graafschap graan gracht grafiek grammatica granaat grap gras green grens griep griet
        grietje grill grip groente groep grond grondgebied grondstof grondwet grootheid gsm gunst gym gymnasium haag
        haai haak haal haan haard haas hack hak hal halfuur hals halte ham hand handboek handdoek handel handicap
        handleiding handschrift handtekening hang hap hapje haring harmonie harnas hartaanval harten hartslag haven
        havenstad hectare heelal heerlijkheid heerschappij heffing heil heimwee hek hekel heks held helft helm hemd
        hemel herberg herdenking herinnering hersenen hert hervorming heup heuvel heuvelrug hierarchie historie hit
        hobby hoed hoef hoek hoera hoes hoeve hof hogeschool hok hond hongersnood honing honkbal hoofd hoofddoek
        hoofddorp hoofdpersoon hoofdpijn hoofdrol hoofdstad hoofdstraat hoofdstuk hoofdweg hoogte hoogtepunt hoop
        hoorn hoorzitting hop horloge hospitaal hotel houding huid huis huisarrest huisarts huiswerk hulp hulpmiddel
        humeur hut huur hypocrisie hypotheek hypothese icoon idee ideologie illusie illustratie imago imperium import
        impressie impuls inbraak index indicatie individu indruk industrie infectie inflatie info ingang ingenieur
        ingreep inhoud injectie inkoop inleiding innovatie inrichting inschrijving insect inslag inspanning inspecteur
        inspectie inspiratie installatie instantie insteek instituut instructeur instructie interieur interventie
        interview intimidatie intro introductie inval invasie investering invloed inzending inzicht iris ironie
        irritatie item jaap jaarboek jack jaguar jaloezie jam janet jas jeans jihad joint jood journaal jubileum juf
        jumbo jungle jurk jury juweel kaak kaap kaars kaas kabel kabinet kalf kam kameraad kamerlid kampioen kanaal
        kandidaat kandidatuur kano kanon kans kantine kap kapel kapsalon kapsel kar kartel karton kas kassa kasteel
        kauwgom kazerne keel keep keerpunt kenmerk kennis kennismaking kenteken kerk kerkhof kermis kern kerncentrale
        kerstavond kerstboom ketel ketting keuken keur keuring keurmerk keus keuze kijk kijkje kilo kilogram kim kin
        kindertijd kip klacht klank klap klas klasse kledingstuk kleed kleintje klep kleur klik klim klimaat kliniek
        klootzak klop kluis klus knie knipoog knoflook knoop knooppunt knop knuffel koek koelkast koepel koers koets
        koffie kogel kok kolom kolonie kom komedie komeet kompas konijn koningshuis koninkrijk kontje konvooi kooi
        kookboek kool koop koorts kop kopie koppel koptelefoon korporaal korps korting kostuum kraan kracht krediet
        kreeft krijg krijgsmacht kring kroeg krokodil kroon kroonprins kruis kruising kruispunt kudde kuil kuip kunst
        kunstenares kunstwerk kus kustlijn kwaliteit kwart kwartaal kwestie laan laars lab label laboratorium lach
        lading lafaard lamp lancering land landgoed landhuis landing landschap lap laptop leeftijd leegte leen
        leerkracht leeuw legioen lei leiding lengte lening lepel lerares letsel leugen levensduur levering lezing
        lichaam lid lidmaatschap lied liefde liefje lieverd lijf lijn lik limiet linde lingerie linkerhand lint
        locatie loep logo loket lol long lood loods look loon loop loopbaan loterij loting lotus luchthaven luchtmacht
        luchtruim luik luis lul luna lunch lus maag maagd maal maaltijd maan maand maat maatregel maatschappij
        maatwerk machine macht made madonna maffia magazijn magnetron mail mand mandaat mango manifestatie manilla
        mantel manuscript map marathon marge margriet marina marktplaats mascotte massa massage materiaal matras
        matrix matroos maximum mazzel mechanisme medaille medicatie medicijn meditatie meerderheid meesterwerk melding
        melk melodie mengsel mening mens mentaliteit menu merendeel merk messias metaal methode meting metro
        metrostation microfoon middel middelpunt middenklasse middernacht mijl mijlpaal milieu miljonair millennium
        minderheid minimumloon ministerie minuut misbruik misdaad misdrijf mislukking missie misverstand mix mode
        modem moedertaal moeras moestuin mogelijkheid mol molen monarchie monnik monopolie montage monteur moord mop
        moraal mortuarium mos moskee mosterd motie motief motivatie motorfiets motto mouw muis museum musicus muts
        muur muziek mysterie mythe naald naam nachtdienst nachtmerrie nadeel nagel nagellak nalatenschap namiddag nap
        nasleep natie natuurgebied navigatie navolging nederlaag nederzetting neerslag neiging nek nerd nest netwerk
        neus nevel nieuwsbrief niveau nominatie non nood noodtoestand noodzaak noordpool noot norm nota nul object
        observatie obsessie obstakel oceaan octopus oefening oeuvre offerte ogenblik olie olijfolie omgang omgeving
        omloop omroep omschrijving omslag omtrek onderbreking onderbroek onderdak onderdeel ondergoed ondergrond
        onderneming ondervraging onderwereld onderwerp onderzoek onenigheid ongelijkheid ongeluk ongemak ongeval
        onkruid ontdekking ontkenning ontmoeting ontploffing ontruiming ontslag ontsnapping ontspanning ontsteking
        ontvangst ontvoering ontwerp onwetendheid onzekerheid oog oord oordeel oorlog oostkust opbrengst opdracht
        openbaring opening opera operatie opgave ophef opheldering opinie opkomst oplage opleiding oplossing
        opluchting opmerking opnamen oppas oppervlak oppositie oprichting oprit oproep opslag opsomming opstand optie
        optocht opvatting opvolging opwinding opzicht orde orgaan organisatie organisme orgasme orgel orkaan orkest
        oudheid oven overdosis overdracht overeenkomst overgang overgewicht overheid overhemd overleg overname
        overschot overstap oversteek overstroming overtreding overtuiging overval overvloed overweg overweging
        overwinning overzicht paal paard pact pad page pagina pak pakhuis pakket paleis palm panama pand panda
        pandemie paneel paniek panorama panty pap parade paradijs paragraaf paraplu pardon parel parfum park parochie
        parodie partij party paspoort pass passage passie pasta patroon paus pauw pauze paviljoen peil peloton pen
        penalty penis penning pensioen pension perceel periode perron pers persbericht persoon petitie piano picknick
        piek piet pijl pijn pijp pik pil piloot pin pink pion piraat piramide pistool pizza plaag plaat plaats plafond
        plak plan planeet plank planning plantage plas plateau platform plattegrond platteland pleidooi plein plek
        plicht ploeg plug plus pocket podium poel poep poes poezie poging pol politica politicus politie polo pols
        pomp pompoen pond pont pony pool poort popmuziek populatie portaal portefeuille portemonnee portie portret
        positie postbode postzegel potlood praatje prefectuur premie presentatie prestatie pret pretpark prijs prik
        primeur prinses prioriteit probleem procedure proces product productie proef proefschrift profeet profiel
        program programma programmeur project promotie prooi propaganda prostituee protest protocol provincie pruik
        prullenbak psalm psychologie psycholoog publicatie puin puinhoop puppy puzzel pyjama quarantaine quiz raad
        raadsel raam race radar radio radiostation rage rail ram ramp rand rang ranglijst rapport reactie realiteit
        rebel recensie recept receptie rechercheur rechtbank rechterhand rechtsstaat rechtszaak rechtszaal reclame
        record recreatie redacteur redactie redding rede reden redenering reeks referendum referentie reflectie
        refrein regel regelgeving regelmaat regenboog regenbui regenval regenwoud regering regie regime regio
        regisseur registratie reis rek rekening rel relatie religie rem ren renovatie rente reparatie repetitie
        republiek reputatie research reservaat reserve reservoir residentie resolutie restauratie resultaat retour
        reunie reus revolutie richting richtlijn riem riet rif rij rijbewijs rijkdom rijschool ring ringweg riool
        risico ritme rits rivaal rob robot roep roeping rol rolstoel rommel romp rondleiding roof rotonde rots rotzooi
        route routine rubriek rug ruggengraat rugzak ruil ruimte ruimteschip ruk rundvlees rups rus ruzie safari
        salade salaris saldo salon samenhang samenleving samenvatting samenwerking samenzwering sap sas satelliet
        sauna saus scenario schaal schaamte schaap schacht schaduw schakel schandaal schatting schedel scheen
        scheiding schema schending schenking schepping scherm schets scheur schiereiland schietpartij schijf schijn
        schikking schil schild schilderij schildpad schimmel schip schoen schok schoonheid schoorsteen schop schorsing
        schot schotel schouwburg schreeuw schrift schrik schroef schuif schuilplaats schuim schuld schuldgevoel schuur
        score script seconde secretaresse secretariaat secretaris sectie sein seizoen sekte selectie selfie senaat
        sensatie serie sessie set shampoo shop show shuttle sigaret signaal sim singel sint site situatie sjaal skelet
        ski sla slaaf slaap slag slagveld slang slavin slet sleutel slip sloop sluiting smaak sms snack snap snelheid
        snelweg snoep soap sol sollicitatie som songfestival sorry sos spaargeld span spandoek spanning specialiteit
        spectrum speech speelfilm speelgoed speeltje speeltuin spek spektakel spel spiegel spijkerbroek spin spiraal
        splitsing spoel spons spoorlijn sportschool spray spreuk sprookje spul staal staatsgreep staatshoofd stad
        stadhuis stadion stadium stadsbestuur stadscentrum stadsdeel staf stage stagiair staking stam stamboom stand
        standbeeld standplaats standpunt stank stap station status steek steel steen stel stelsel stem stembus
        stemming stempel step sterrenbeeld steun stichting stijging stilte stimulans stip stock stoel stoep stoet stof
        stoornis storing storm straal strafblad strafschop strand strategie streep stress strijd strik string strip
        stroming stront strook stroom stropdas structuur struik studie studiebeurs studio stuur sub subsidie succes
        sukkel supermarkt symbool symposium synagoge systeem taak taal taart tabak tabel tablet tactiek tafel tak tand
        tandarts tang tank tankstation tape tapijt target tarief tas tatoeage taxi team techniek technologie teef teen
        tegenaanval tegenslag tegenstand tehuis teken tekening tekst telefoon telegraaf telescoop televisie tempel
        temperatuur tempo term termijn terminal terras terrein terreur terugblik terugreis thee thema theorie
        therapeut therapie thuisbasis thuisland ticket tiental tijd tijdlijn tijdperk tijdrit tijdschrift tijdstip tik
        til tip titel toegang toepassing toernooi toespraak toestand toestel toetje toets toetsenbord toeval
        toevoeging toezicht toilet tol tolerantie tolk tomaat ton toneel toneelstuk tong tonijn tool toon topje toren
        tour tournee touw traditie tragedie traject tram transitie transport trap trauma tree trein treinstation trek
        trend tribunaal tribune trilogie trio trip troef troep trofee troon trouwdag truc truck trui tsunami tube tuig
        tuin tunnel tussenkomst tussentijd tweetal twijfel uil uitbarsting uitbraak uitbreiding uitdaging uitdrukking
        uiteinde uitgang uitgangspunt uitgave uitgeverij uiting uitje uitkering uitleg uitnodiging uitrusting uitslag
        uitsluiting uitspraak uitstapje uitstel uitval uitverkoop uitvinding uitvoering uitweg uitzending uitzicht
        uitzondering universiteit universum uur vaardigheid vaas vacature vaccin vaccinatie vacht vaderland vagina vak
        vakantie vakantiehuis vakbond vakgebied vakmanschap val valk vallei variatie varken vastgoed veen veerboot
        vegetarier veiligheid vel veld vennootschap ventilatie veranda verandering verband verbetering verbinding
        verbintenis verblijf verbod verbond verbranding verdediging verdenking verdieping verdrag vereniging verf
        vergadering vergelding vergelijking vergeving vergissing vergoeding vergunning verhaal verhoging verhouding
        verhuizing verjaardag verkenning verkiezing verklaring verkoudheid verkrachting verlaging verlegenheid
        verleiding verlenging verlies verlof verloving vermaak vermelding vermindering vermoeidheid vernedering
        vernieuwing verordening verpakking verpleeghuis verplichting verrassing verschijning verschijnsel verschil
        verschuiving versie verslag verslaving verspreiding verstand versterking vertoning vertraging vertrek verval
        vervolg vervolging verwachting verwarming verwarring verwerking verwijzing verwoesting verzekering verzoek
        verzoening vestiging vesting veteraan viaduct video videoclip viering vijand villa vin vink viool virus vis
        visie visserij visum vitamine vlag vlam vlees vlek vleugel vleugje vlieg vliegramp vliegtuig vliegveld
        vloeistof vloek voeding voeg voertuig voet voetbal voetbalclub vogel voldoening volk volkslied volkswagen
        volume vondst vonk vonnis voogd vooravond voorbeeld voordeel voordeur voordracht voorhoofd voorkeur
        voorlichting voorraad voorronde voorschot voorspel voorstel voortgang voortzetting vooruitgang vooruitzicht
        voorval voorwaarde voorwerp voorwoord voorziening vork vorm vormgeving vorming vraag vraagprijs vraagstuk
        vracht vrachtwagen vrees vreugde vriendin vriendschap vrijdagavond vrijheid vuilnisbak vulkaan vuur vuurtoren
        vuurwapen vuurwerk waag waardering waarheid waarschuwing wachtlijst wachttijd wachtwoord wade wagon wal walvis
        wand wang wapen war warenhuis wasmachine waterland waterschap waterstof waterval watt web webcam webpagina
        webwinkel weddenschap wedstrijd weefsel weegschaal weekblad weekeinde weekend weerstand weeshuis weetje wegdek
        wei weigering weiland wen wending wens wereld wereldbeeld wereldoorlog wereldtitel werf werk werkdag werkgroep
        werking werkplaats werkplek werkwoord westkust wetboek wetenschap wetgeving wetsvoorstel whisky wieg wiel wifi
        wijf wijk wijn wijsheid wijze wijziging wiki wildernis wind winkel winnares winning winst wintersport wissel
        woestijn wolf wolk woning woonhuis woonplaats woord woordenboek workshop worm worp worst wortel woud wrong
        yoghurt zaag zaak zaal zadel zak zalm zand zang zangeres zebra zee zeeland zeeniveau zeep zege zegel zegen
        zeil zekerheid zending zenuwstelsel zero zetel ziekenhuis ziel zitting zoekmachine zoektocht zoen zombie zon
        zone zonnebril zonneschijn zonnestelsel zonsopgang zooi zoom zorg zuivering zwaan zwaard zwembad
        """,
    ),
    "pl": (
        """
        aktualna aktualne aktualny aktywne aktywny amerykanska amerykanski amerykanskie angielski aresztowany
        artystyczne atrakcyjna audio autorskie bezpieczna bezpieczne bezpieczny bezposredni bezposrednie biala biale
        bialy biedna biedne biedny bledne bliska bliski bliskie bogata bogate bogaty bolesne boska boze brazowe
        brazowy brudne brutto brytyjski brzydkie budowlane byla byly cala cale calkowita calkowite calkowity caly
        cenne centralne centralny chemiczne chinska chinski chinskie chlopie chora chore chory chujowe ciagle ciekawa
        ciekawe ciekawy ciemne ciemny ciepla cieple ciezka ciezki ciezkie codzienne cool cudowna cudowne cudowny
        czarna czarne czarny czerwona czerwone czerwony czeste czula czwarta czwarte czwarty czysta czyste czysty
        daleka dalsze dalszy dana dane daniela dany darmowe darmowy dawna dawne dluga dlugi dlugie dluzsze dluzszy
        dobra dobre dobry dodatkowe dodatkowy dokladne domowa domowe dorosly doskonale doskonaly dostala dostepna
        dostepne dostepny drewna drewniane drobne droga drogi drogie druga drugi drugie dumna dumny duza duze duzy
        dzienne dziewczynie dziki dzikie dzisiejsza dzisiejsze dzisiejszy dziwna dziwne dziwny edukacyjne ekologiczne
        ekonomiczna ekonomiczne ekonomiczny ekstra elektryczne elektryczny europejska europejski europejskie fair
        fajna fajne fajny falszywe fantastyczne filmowe filmowy finansowa finansowe finansowy fizyczne francuska
        francuski francuskie gdanska generalny genialne genialny gleboki glebokie globalne glodna glodny glowna glowne
        glowny glupi glupia glupie godne goraca gorace goracy gorsza gorsze gorszy gospodarcza gospodarcze gospodarczy
        gotowa gotowe gotowy grecki gruba grube gruby handlowe historyczna historyczne historyczny hiszpanski idealna
        idealne idealny identyczne indywidualne informacyjne informacyjny inna inne inny inteligentny interesujace
        interesujacy internetowa internetowe internetowy istotna istotne istotny jaka jakakolwiek jakas jaki jakie
        jakiekolwiek jakies jakikolwiek jakis japonska japonski japonskie jasna jasne jasny jeden jedna jedno jedyna
        jedyne jedyny jezykowe kara karny kary katolicki katolickie kazda kazde kazdy kiepski klasyczne klasyczny
        kluczowe kochana kochany kolejna kolejne kolejny kolorowe kompletny komputerowe konieczna konieczne konkretne
        konkretny korzystne kowalski krajowa krajowe krajowy krolewska krolowa krotka krotki krotkie ksieza ksiezy
        ktora ktore ktory ktorys kulturalne kulturowe kwietnia ladna ladne ladny laska laski latwa latwe latwiejsze
        latwy legalne lekka lekki lekkie lepsza lepsze lepszy letni letnia letnie lewa lewy liczne literackie logiczne
        lokalna lokalne lokalny lotnicze ludzka ludzki ludzkie luty madra madre madry magiczne magiczny maksymalna
        mala male maly marne martwe martwy masowe mazowieckie medyczne medyczny mega meska meski meskie miejska
        miejski miejskie mieszane mila mile mily mini minimalna mloda mlode mlodsza mlodszy mlody mniejsza mniejsze
        mniejszy mocna mocne mocny moj moja moje moralne morskie mozliwa mozliwe mozliwy mozna musza musze muzyczne
        muzyczny naczelny najblizsze najblizszy najgorsza najgorsze najgorszy najlepsza najlepsze najlepszy najnowsze
        najnowszy najwieksza najwieksze najwiekszy najwyzsza najwyzsze najwyzszy nalezace narodowa narodowe narodowy
        nastepna nastepne nastepny nastepujace nasz nasza nasze naturalne naturalny naukowe naukowy negatywne
        negatywny netto niebieski niebieskie niecale niedawna niektore nielegalne niemiecka niemiecki niemieckie
        niemozliwe niepotrzebne niesamowita niesamowite niesamowity niewazne niewielka niewielki niewielkie niewoli
        niezalezna niezalezne niezalezny niezbedne niezgodne niezla niezle niezly nieznane nieznany niezwykle niska
        niski niskie nizsza nizsze nizszy nocne normalna normalne normalny nowa nowe nowoczesna nowoczesne nowy nozna
        nudne obce obcy obecna obecne obecny oboje obowiazkowe obrzydliwe obywatelska oczywiste oczywisty odeszla
        odmienne odpowiedni odpowiednia odpowiednie oficjalna oficjalne oficjalny ogolna ogolne ogolny ograniczona
        ograniczone ograniczony ogromna ogromne ogromny okay okazala okazaly okej okreslone okreslony okropne
        olimpijski olimpijskie ona online ono open oryginalne oryginalny osi oskarzony osobista osobiste osobisty
        osobowe ostateczny ostatni ostatnia ostatnie ostre ostry otwarta otwarte otwarty panstwowa panstwowe panstwowy
        pelen pelna pelne pelny pewien pewna pewne pewny piaty piekna piekne piekny pierwsza pierwsze pierwszy pijany
        pilne pisane podatkowe podobna podobne podobny podstawowa podstawowe podstawowy podwojne pojedyncze pojedynczy
        pokojowe polityczna polityczne polityczny polnocna polozona polozone polozony polska polski polskie poludnia
        poludnie poludniowa poludniowy pomorskie ponowne pop poprzedni poprzednie popularna popularne popularny porno
        poswiecone poswiecony poszczegolne potezne potrzebna potrzebne potrzebny powazna powazne powazny powierzchni
        powierzchnia powinna powinny powstala powstaly powszechna powszechne powszechny powyzsze pozostala pozostale
        pozostaly pozytywne pozytywny pracujacy prawa prawdziwa prawdziwe prawdziwy prawna prawne prawny prawy prosta
        proste prosty prowadzacy prowadzona prowadzone prowadzony prywatna prywatne prywatny przecietny przeciwny
        przekonana przekonany przemyslowe przerazajace przestala przeszla przeszly przydatne przyjemne przyjeta
        przyjete przyjety przykre przystojny przyszla przyszly psie psychiczne publiczna publiczne publiczny puste
        pusty pyszne rad rada rana ranny rany realne regionalne religijne religijny robione rodzinne rodzinny rosyjska
        rosyjski rosyjskie rowna rowne rozne roznorodne rozowy rudy rzadkie rzadowe sam sama samo samotna seksualne
        serio silna silne silny skazany skuteczne slaba slabe slaby slaska slaskie slawny sliczna slodka slodki
        slodkie sluszne sluzace slynny smieszne smieszny smutna smutne smutny solo spadla specjalna specjalne
        specjalny spodni spodnie spoko spokojna spokojny spoleczna spoleczne spoleczny spora spore sportowe sportowy
        spory sprzeczne srebrny sredni srednia srednie stala stale staly stara starczy stare starsza starsze starszy
        stary stosowana stosowane stosowany straszna straszne straszny suche super swe swiadomy swiatla swiatowa
        swiatowe swiatowy swieta swiete swietna swietne swietny swiety swieze swinie swoj swoja swoje szary szczegolne
        szczegolny szczegolowe szczera szczery szczesliwa szczesliwe szczesliwy szeroki szerokie szkodliwe szkolne
        szkolny sztuczne szybka szybki szybkie tajemniczy tajne taka taki takie tamten tamto tani tanie tansze
        techniczne techniczny telewizyjne telewizyjny ten toz tradycyjne tradycyjny trendy trudna trudne trudniejsze
        trudny trwala trwaly trzeci trzecia trzecie turystyczne turze twarde twardy twoj twoja twoje tyle tymczasowe
        typowa typowe typowy ubrana ubrany udany ukrainska ukrainski ulubiona ulubione ulubiony umarla umowa umowy
        urocza urocze uroczy urodzony uzasadnione uznane uznany uzyte video warszawski warszawskie wart warta warte
        warty wasz wasza wasze wazna wazne wazniejsze wazny wczesniejsze wdzieczna wdzieczny wewnetrzne wewnetrzny
        wideo widoczna widoczne widoczny wieczne wieksza wieksze wiekszy wielka wielki wielkie wielkopolski winna
        winny wlasciwe wlasciwy wlasna wlasne wlasny wloski wodne wojenne wojenny wojskowa wojskowe wojskowy wola woli
        wolna wolne wolny wpadla wroga wschodni wschodnia wsciekly wspaniala wspaniale wspanialy wspolczesne wspolna
        wspolne wspolny wstepne wszelki wszelkie wszystkie wszystko wybitny wyborcza wyborcze wyborczy wybrana wybrane
        wybrany wybuchla wygodne wygrana wyjatkowa wyjatkowe wyjatkowy wyniosla wysoka wysoki wysokie wyzsza wyzsze
        wyzszy wzrosla zabawna zabawne zabawny zabity zachodni zachodnia zachodnie zaden zadna zadne zadowolona
        zadowolony zagraniczne zajebiste zajebisty zajeta zajety zakazane zakonczona zalezne zalosne zamknieta
        zamkniete zamkniety zapisane zapomniala zarty zatrzymany zawodowe zawodowy zbrojne zdolny zdrowa zdrowe
        zdrowotne zdrowy zewnetrzne zgodne zielona zielone zielony zimna zimne zimowe zla zle zlota zlote zloty
        zlozona zlozone zlozony zly zmarla zmeczona zmeczony znaczace znaczacy znaczna znaczne znajomy znana znane
        znany zniszczona zniszczone zniszczony zolte zolty zonaty zrozumiale zwiazana zwiazane zwiazany zwykla zwykle
        zwykly zyciowe zywa zywe zywy
        """,
        """
        aborcja abs absolwentka absurd adaptacja adres afera afganistan afryka agencja agnieszka agora agresja aids
        airbus akademia akcent akceptacja akcja akt aktorka aktualizacja aktywnosc akwarium alarm albert album aleja
        alfa alfabet algorytm alicja alkohol allegro allen alt alternatywa aluminium ambasada ameryka amsterdam
        analiza aneta anglia ania animacja anita ankieta anna apartament apel apetyt aplikacja arab arabia
        architektura archiwum arcydzielo arena areszt argentyna argument arizona arka armia artykul artystka asia
        aspekt atak atlantic atlas atmosfera atom aurora auschwitz australia austria auto autobus autograf automat
        autorytet autostrada awans awantura awaria azja azs azyl babka bad bagaz bagno bajka balagan balkon balon band
        banda baner bank banner bar barcelona basen basic bastion batalion bateria baza beata belchatow belgia
        benedykta berlina bernard bestia beta bezrobocie bialek bialka bialko bialorus bialystok biblia biblioteka
        bieda biedronka bieg bielizna bilans bilet bill biografia biologia birmingham bis bit bitcoin bitwa biuletyn
        biurko biuro biznes blad blask bliskosc blog blok blokada bloto blues bluza bluzka bogactwo bogini bohaterka
        boisko bok boks bomba bon bonus boom bor boston bozena bractwo bram brama bramka brand branza braz broda
        browar bruk bruksela brygada brytania brzeg brzuch budapeszt budka budowa budowie budownictwo budynek budzet
        bug bukiet bulgaria bulka bunt burdel burger burza bus business but buta butelka bydgoszcz bydlo byk byt
        bzdura caloksztalt calosc caritas carmen cebula cech cecha cel cena centrala centrum cenzura ceremonia
        certyfikat chamstwo chaos charakter chat chata chciwosc chemia china chleb chmura chodnik choinka chor choroba
        chorwacja chorzow chrzest chwila chwyt ciag cialo ciastko ciasto ciaza ciekawosc ciekawostka ciemnosc
        cierpliwosc ciezar ciezarowka cios cis cisnienie cisza cleveland club cmentarz cnn coca codziennosc cola
        college columbia copyright cover coz cross cud cudo cukier cykl cynk cyrk cytat cywilizacja czapka czar
        czarownica czasopismo czekolada czelnosc czestochowa czlonkini czlonkostwo czolg czolo czosnek czworka czyn
        czynnik czynnosc czynsz czystosc dabrowa dach dama daniel danuta dar daria data dawka debata debiut decyzja
        deficyt definicja deklaracja dekret delegacja delta demo demokracja demon demonstracja denver departament
        depresja deser design deska deszcz diagnoza dialog diana dieta dlon dlug dlugopis dlugosc dna dno dobor dobro
        dobrobyt dochod dodatek dojazd doktorat dokument dokumentacja dolar dolina dom domek domena dong dorobek dos
        dostep dostepnosc dotyk douglas dowcip dowod dowodztwo dozywocie drama dramat drewno drive druk druzyna drzewo
        dubbing duch duet dupa dusz dusza dwojka dwor dworzec dyktatura dylemat dyplom dyrekcja dyrektywa dyscyplina
        dysk dyskusja dystans dystrybucja dywan dyzur dzem dzialaczka dzialalnosc dzialka dziecinstwo dziedzictwo
        dziedzina dzielnica dzielo dziennik dziennikarka dziewczyna dziewczynka dziewica dziewictwo dziura dziwka
        dziwo dzwiek dzwonek echo edukacja edycja edyta efekt efektywnosc egipt egzamin egzekucja egzemplarz einstein
        ekipa ekologia ekonomia ekosystem ekran eksperyment eksplozja eksport ekspozycja elblag elektorat elektrownia
        element elena elita eliza elzbieta emerytura emigracja emilia emisja emma empire end energia entuzjazm
        epidemia epizod epoka era esej etap etat european event ewa ewangelia ewolucja express fabryka fabula facebook
        fakt fala fantazja farba faszyzm faza federacja fejk feminizm festiwal fiat field fifa figura fikcja filip
        film filmik filozofia filtr finlandia firma fit fitness flaga flota focus football for ford forma formacja
        format formula formularz fortuna forum fot fotel fotografia fragment frank franklin frekwencja front fryzura
        full fundacja fundusz funkcja futbol gabinet gabriela gala galaz galeria galezie gamma gang gardlo garnitur
        garsc garstka gatunek gaz gazeta gdansk gender generacja generator geografia georgia gest gestosc gielda gil
        gilbert gimnazjum gitara gks glebokosc glod gloria glos glowa glupota gmin gmina gniazdo gniew godnosc godzina
        golab golf google gora goraczka gordon gornictwo gorzow gospodarka gospodarstwo gospodyni gotowosc gowno gps
        grad graham granat granica grant grazyna grecja green grob grono grosz grozba grubosc grunt grupa grupka grypa
        grzech guma gust guzik gwalt gwarancja gwiazda gwiazdka hajs halas halina hall hanba handel hanna hardcore
        harmonogram haslo hate hazard hel helena helikopter herb herbata hipokryzja hipoteza historia hiszpania hit
        hiv hodowla hokej holandia hollywood homofobia honda honor horror hotel house houston html humor hunter
        huragan hymn idea ideologia ignorancja ikea ikona ilosc image imie immunitet imperium import impreza impuls
        incydent indeks indiana inflacja informacja inicjatywa inspiracja instagram instalacja instrukcja instrument
        instynkt instytucja instytut integracja intel inteligencja interes interfejs internet interwencja inwazja
        inwestycja inzynieria iphone ipn irak iran irena irlandia iron ironia isbn iskra islam islandia istota izabela
        izba jablko jacht jad jadwiga jajko jajo jakosc jarek jasnosc java jazda jazz jednosc jednostka jedynka jersey
        jessica jezioro jezyk joanna jogurt jojo jolanta jordan jork juan julia kabaret kaczka kaczor kadencja kadr
        kadra kakao kalendarz kalifornia kamera kamien kamienica kampania kanada kanal kanapka kancelaria kant
        kapelusz kapiel kapital kar karabin kard karetka kariera kark karma kart karta kartka kasia kask kasyno kaszel
        katalog katarzyna katastrofa katedra kategoria katolicyzm katyn kawa kawal kawalek kawiarnia kazachstan ken
        kent kibla kielbasa kieliszek kierownictwo kierunek kij kilogram kilometr kino kit klamstwo klan klasa
        klasyfikacja klasztor klatka klatwa klauzula klimat klinika klip klopot klotnia klub koalicja kobieta koc
        kociol kod kodeks koktajl kolacja kolano kolegium kolej kolejka kolejnosc kolekcja kolezanka kolko kolonia
        kolor kolumbia kolumna kombinacja kombinezon komedia komenda komentarz komfort komiks komin komisariat komisja
        komitet komora komorka kompania kompleks komplement komplet kompozycja kompromis komputer komuna komunikacja
        komunikat komunizm koncepcja koncept koncern koncert koncowka konfederacja konferencja konflikt kongo kongres
        koniec koniecznosc konkurencja konkurs konsorcjum konstrukcja konstytucja kontakt kontekst konto kontrakt
        kontrast kontrola kontynent kontynuacja konwencja konwoj kopa kopalnia kopia kora koran korea korek korekta
        korona korporacja korpus korupcja korytarz korzysc kosc kosciol kosmos kostium kostka kosz koszalin koszmar
        koszt koszula koszulka kotka kpina kradziez krag kraina krajobraz kreatywnosc kredyt kregoslup krem kreml kres
        krok krolestwo krolewna kropka kropla krowa krs kruk kryterium kryzys krzeslo krzyk krzywda krzyz ksiazka
        ksiega ksiegarnia ksiezna ksiezniczka ksiezyc ksztalt kubek kult kultura kupa kur kurczak kurs kurtka kwadrat
        kwas kwestia kwiat kwota laboratorium lacznosc ladunek lakier lalka lampa lan lancuch land laptop lasek laser
        latwosc laura lazienka leb lecha lechia legenda legia legion legnica lek lekarka lekarstwo lekcja lektura
        lenistwo lew lewactwo lewica licencja liceum liczba licznik likwidacja lima limit lin lina lincoln linia link
        linka linux lipa lisc liscie list lista lit litera literatura litosc litra litwa liverpool lod lodowka lodz
        logo lojalnosc lokal lokalizacja londyn lot lotnictwo lotnisko lozko lubin lublin lud ludnosc ludobojstwo
        ludwik ludzkosc luka luksus luna lunch lustro lux luz lynch madagaskar madison madrosc madryt mafia magazyn
        magdalena magia mail majatek majdan mak makaron makijaz maks malarstwo malgorzata malpa malta malzenstwo
        management manchester mandat manewr manga manifest manipulacja mapa maraton marchew marihuana marina market
        marketing maroko marsz maryja marynarka masakra masaz maska maslo maszyna material matrix matura mazur mazurek
        mechanizm meczet medal medium medycyna meksyk melodia mem memorial men mentalnosc mercedes meta metafora
        metoda metro miasteczko microsoft miecz miedz miejsce miejscowosc mielec miesiac mieso mieszanka mikolaj
        mikrofon milosc milosierdzie mina ministerstwo minuta miod mir miranda misja mistrzostwo mistrzyni mit mix mks
        mleko mlodosc mlodziez mlyn mniejszosc mnostwo mod moda modelka modern modernizacja modlitwa modul moment mona
        monachium monitor monitoring monopol montana montaz moralnosc morda morderstwo morze most motocykl motor motto
        motyw motywacja mowa mozg mozliwosc mroz msz msza mucha mundur mur musical muzeum mydlo mysz myszka nacisk
        nacjonalizm nadia nadmiar nadzieja nadzor naglowek nagroda nakaz naklad nalot namiot napad naped napis naplyw
        napoleon naprawa narod narodowosc narracja narzedzie nasa naszyjnik natalia natura nauczycielka nauka nazwa
        nazwisko nelson net news nic nick niebo niedobor niedzwiedz niemowle nienawisc nieobecnosc niepewnosc
        nieprawda nieruchomosc nieszczescie niewinnosc niewolnictwo niewydolnosc niezaleznosc nocleg noga nokia nom
        nominacja norma norwegia nos nota notes nowelizacja nowosc nowotwor noz nsz numer nurt obawa obecnosc obiad
        obieg obiekt obietnica objetosc oblicze obowiazek oboz obraz obrazek obrona obrot obsada obserwacja obsesja
        obsluga obszar obwod obywatelstwo ocean ocena ochota ochrona oczko odbior odbudowa odcinek oddech oddzial
        odleglosc odmiana odpoczynek odpornosc odrobina odruch odsetek odwaga odwrot odziez oferta off ofiara ogien
        ogladalnosc ognisko ogol ogon ogorek ogrod ogrodek ojczyzna okaz okazja okienko okladka okno oko okolica okreg
        okres okret okupacja ola olga olimpiada olowek omar omega onr onz opcja opera operacja opinia opis oplata
        opole opor opowiesc opozycja oprawa optymizm order organ organizacja organizm orgazm orientacja orkiestra
        orlen osada oscar osiedle osoba osobowosc osrodek ostroznosc ostrze oswiecim oszustwo otwor owca owoc oxford
        oznaka pad pajak pakiet pakistan pakt palac palec paliwo palm pamiec pamietnik panel panika panorama panstwo
        papier parada paradoks parafia paragraf paranoja parasol park parking parlament parodia part partia
        partnerstwo pas pascal pasek pasja pasmo pasta paszport pat patent patologia patriotyzm patrol patrycja pawel
        pech pekin penis pensja performance perla personel perspektywa pesel petycja pewnosc piasek piatka pieczec
        piekno pielegniarka pieniadz piers pierscionek piesc piesek piesn pietro piknik pilka ping pioro piorun
        piosenka piosenkarka piotrus pismo pisownia pistolet piwko piwo pizza pks placa placowka plaga plakat plan
        planet planeta plastik platforma plec plecak plik plock plotka pluton plyn plyt plyta pobor pobyt pocalunek
        pociag pocisk poczatek poczet poczta podatek podium podklad podloga podloza podloze podmiot podobienstwo
        podpis podrecznik podstawa podworko poezja poglad pogoda pogotowie pojazd pojedynek pojemnosc poklad pokoj
        pokolenie pole polfinal policja policzek politechnika polnoc polonia polsat pomiar pomidor pomnik pomorze
        pomylka pomysl popcorn popoludnie poprawa poprawka poprawnosc populacja popularnosc popyt poradnik poranek
        porazka porod port portal porter portfel portfolio portland porto portoryko portret portugalia porzadek poscig
        posiadlosc posilek post posta postawa postep posterunek pot potega potencjal potok potomstwo potraw potrzeb
        power powiat powietrze powrot powtorka pozar pozew poziom pozycja pps praca pracownia prad pragnienie prasa
        prawdziwosc prawica precedens predkosc premium presja pretekst prezent prezentacja priorytet proba problem
        procedura procent proces procesor produkcja produkt profil profit prog prognoza program projekt prokuratura
        prom promocja propaganda propozycja prosba proszek protest protokol prototyp prowincja prowokacja prysznic
        prywatnosc pryzmat przebieg przebudowa przeddzien przedmiot przedszkole przeglad przejazd przeklenstwo
        przekret przelew przelom przemiana przemoc przepis przeplyw przerwa przesada przestepstwo przesylka przeszlosc
        przetarg przewaga przewod przod przychod przycisk przyczyna przydomek przydzial przygoda przyjaciolka przyjazd
        przyjemnosc przyklad przymierze przypadek przyroda przyrost przyslowie przystanek przyszlosc przytomnosc
        przywilej pseudo pseudonim psl psychologia ptak pttk publicznosc publikacja puchar pudelko pudlo pulapka puls
        punkt pustka puszek puszka pwn pycha pyl pysk pzpn pzpr rabat rachunek racja radar radio radomia radosc rajd
        rakieta rama randka ranka ranking rap raport rasizm ratunek ratusz raz rdzen reakcja real realizacja recenzja
        recznik redakcja redukcja referendum reforma region regula regulacja regulamin rejestr rejestracja rejon rejs
        reklama rekord relacja relaks religia remis remont renault report reportaz republika resort restauracja reszta
        rewanz rewolucja rex rezerwat rezim rezultat rezydencja rezygnacja rezyseria rfn ring rita rmf robota rock
        rocznica rocznik rod rodzaj rodzenstwo rog rola roll rolnictwo romans rondo ropa rosa roslina rower rownosc
        rownowaga roza rozaniec rozbudowa rozejm rozglos rozgrywka rozkaz rozklad rozmiar rozmowa roznica roznorodnosc
        rozpacz rozprawa rozrywka rozsadek rozum rozwod rozwoj ruch rumunia run runda ryba rybnik rynek rysunek rytm
        rytual rywalizacja ryz ryzyka ryzyko rzad rzesza rzeszow rzez rzezba rzut sad saga sala salatka salon
        samobojstwo samochod samolot samopoczucie samorzad samotnosc san sandra sanktuarium sarkazm scena scenariusz
        schemat schronisko sciana sciema sciezek sciezka sedno sejm sekcja sekret sekretarka seks seksizm sektor
        semestr seminarium sen senat sens sentyment ser serbia serce serduszko seria serial serwer serwis sesja set
        sex sezon siatka siec siedziba sierra silnik singapur skandal skarga sklad skladnik sklonnosc skok skora skrot
        skrzydlo skrzynia skrzynka skutecznosc skutek slabosc slad slask slawa sledztwo slonce sloneczko slonko
        slowacja slownictwo slownik slowo sluch slupsk sluzba smak smartfon smierc smietnik smiglowiec smog smok
        smolensk sms smutek snieg socjalizm sofia software sok solidarnosc sonda sondaz song sonia sort sos sosnowiec
        soul soundtrack sowa spacer spadek spam specjalnosc spektakl spektrum spencer spiew spin spis spisek spoiler
        spolecznosc spolka spor sport spot spowiedz sprawa sprawdzian sprawnosc sprzedaz sprzet srebro srednica srodek
        srodmiescie srodowisko stabilnosc stacja stadion stadium stado stan stand standard stanik stanowisko star
        starosc start statek status statut stawek stawka staz stek step stol stolica stolik stopa stos stosunek strajk
        strata strategia straz strefa stres strona struktura strzal studentka studio studium stulecie stycznosc styl
        stypendium substancja sufit suka sukces sukienka suma sumienie support suwerennosc sweet sweter swiadectwo
        swiadomosc swiatopoglad swiatynia swift swit swoboda sygnal sylwester sylwetka sylwia symbol syndrom syria
        system sytuacja szacun szacunek szafa szajs szal szalenstwo szambo szansa szantaz szczecina szczegol
        szczepionka szczerosc szczescie szczur szczyt szefowa szerokosc szkic szkielet szklanka szklo szkola
        szkolnictwo szlachta szlag szlak szmata szok szpital sztab sztandar sztorm sztuk sztuka szwajcaria szyb
        szybkosc szydlo tabela tablet tablica tag tajemnica tajlandia talent talerz talk tango taniec tara taras
        tarcza targ tarnow tasma tatuaz team teatr technikum technologia tecza tekst teledysk telefon telewizja
        telewizor tell temat tematyka temp temperatura tempo tendencja tenis teoria ter terapia teren teresa termin
        terminal terror terroryzm terytorium test testament teza tik tlen tlo tluszcz tok tolerancja ton tor torba
        torebka tort toto tour towar towarzystwo toyota tozsamosc tradycja tradzik tragedia trailer traktat tramwaj
        trans transakcja transfer transmisja transport tras trasa trawa trawnik trend trening tresc trio trofeum
        trojka trojkat tron trud trupa trust trybunal tunel tura turniej turystyka twarz tweet twitter tworczosc
        tydzien tygodnik tygrys tylek tytul ubior ucha ucho uchwala ucieczka uczciwosc uczelnia uczennica uczestnictwo
        udar uefa uklad ukraina ulamek ulga ulica umiejetnosc umysl unia universal uniwersum uniwersytet upadek upal
        uprawa ups uraz url urlop uroczystosc uroda urok urszula urzad uscisk usluga usmiech ustawa utrata utwor uwaga
        uzytek vat victoria virginia volvo wad wada waga walka waluta wan wanna war wariant wars warstwa warszawa
        warsztat wartosc warunek wat watek watpliwosc watykan waznosc wdech wdziecznosc weekend wegiel wenezuela
        werdykt weronika wersja weryfikacja wesele western wezel wglad wiadomosc wiadro wiara wiarygodnosc wiatr widmo
        widok widowisko wieczor wiedza wiek wiekszosc wielkanoc wielkosc wiernosc wiersz wiersza wierzch wies wietnam
        wieza wigilia wikipedia wiktoria wilgotnosc wilk willa wina winda windows wino wioska wir wirus witryna
        wizerunek wizja wizyta wjazd wklad wladza wlascicielka wlasnosc wloclawek wlos wniosek woda wodka wodospad
        wojewodztwo wojna wojska wojsko wojtek wokal wolnosc wolontariat word worek wosp woz wozek wpadka wpis wplyw
        wrazliwosc wrobel wroclaw wrzesnia wschod wskaznik wspolczynnik wspolnota wspolpraca wstep wszechswiat wulkan
        wybor wybrzeze wybuch wycieczka wyciek wyczyn wydajnosc wydawnictwo wydzial wydzwiek wyglad wyjatek wyjazd
        wykaz wyklad wykres wylacznosc wylot wymiana wymiar wymog wymowa wymowka wynajem wynalazek wynik wyobraznia
        wypad wypadek wypowiedz wyprawa wyprzedaz wyraz wyrok wyscig wysilek wysokosc wyspa wystawa wystep
        wyszukiwarka wywiad wyzszosc wzgorze wzmianka wzor wzorzec wzrok wzrost york youtube zab zaba zabawa zabawka
        zabieg zabojstwo zabrze zabudowa zachod zagadka zagadnienie zaglebie zakaz zaklad zakon zakres zaleta
        zaleznosc zaloga zamach zamek zamiar zapach zapal zapas zapis zaplecze zapowiedz zaraza zart zarys zarzad
        zarzut zasada zasieg zasilek zasluga zaszczyt zawal zawartosc zawod zbior zbiorka zbiornik zdolnosc zdrada
        zdrowie zegar zegarek zelazo zemsta zen zenada zespol zeszyt zgoda zgodnosc zgon ziarno ziemia ziobro zjawisko
        zjazd zlo zlot zmiana zmysl znaczek znajomosc znak zofia zoladek zrodlo zupa zwiazek zwlok zwrot zwyciestwo
        zwyczaj zyciorys zysk zywnosc zywot
        """,
    ),
    "ru": (
        """
        активная активное активныи американская американскии американское англ англииская англиискии англииское бедная
        бедное бедныи белая белое белорусская белорусскии белорусское белыи бесплатная бесплатное бесплатныи близкая
        близкии близкое богатая богатое богатыи боевая боевое боевои божие божии божия божье божья больная больное
        больнои большая большее большии большое большои британская британскии британское будущая будущее будущии
        бывшая бывшее бывшии быстрая быстрое быстрыи бытовая бытовое бытовои важная важное важныи валовая валовое
        валовыи ваш ваша ваше ведущая ведущее ведущии великая великии великое великолепная великолепное великолепныи
        верная верное верныи верхнее верхнии верхняя верховная верховное верховныи веселая веселое веселыи весь
        вечернее вечернии вечерняя вечная вечное вечныи внешнее внешнии внешняя внутреннее внутреннии внутренняя
        военная военное военныи воздушная воздушное воздушныи возможная возможное возможныи восточная восточное
        восточныи восьмая восьмое восьмои временная временное временнои временныи все всемирная всемирное всемирныи
        вся всякая всякии всякое вторая второе второи высокая высокии высокое выходная выходное выходнои генеральная
        генеральное генеральныи главная главное главныи глубокая глубокии глубокое годовая годовое годовои головная
        головное головнои голубая голубое голубои горная горное горныи городская городское городскои горячая горячее
        горячии гражданская гражданскии гражданское групповая групповое групповои дальнее дальнеишая дальнеишее
        дальнеишии дальнии дальняя данная данное данныи двоиная двоиное двоинои деловая деловое деловои деревянная
        деревянное деревянныи детская детскии детское дикая дикии дикое длинная длинное длинныи длительная длительное
        длительныи добрая доброе добрыи долгая долгии долгое домашнее домашнии домашняя дорогая дорогое дорогои
        достоиная достоиное достоиныи древнее древнии древняя другая другое другои духовная духовное духовныи
        европеиская европеискии европеиское единая единое единственная единственное единственныи единыи ета ето етот
        железная железное железныи желтая желтое желтыи женская женскии женское жесткая жесткии жесткое живая живое
        живои жилая жилое жилои заднее заднии задняя западная западное западныи здоровая здоровое здоровыи зеленая
        зеленое зеленыи земная земное земнои зимнее зимнии зимняя злая злое злои знакомая знакомое знакомыи знаменитая
        знаменитое знаменитыи значительная значительное значительныи золотая золотое золотои игровая игровое игровои
        идеальная идеальное идеальныи известная известное известныи иная иное инои иностранная иностранное иностранныи
        интересная интересное интересныи испанская испанскии испанское истинная истинное истинныи историческая
        историческии историческое итальянская итальянскии итальянское каждая каждое каждыи какая какое какои киевская
        киевскии киевское китаиская китаискии китаиское классическая классическии классическое классная классное
        классныи кое кои короткая короткии короткое космическая космическии космическое которая которое которыи коя
        красивая красивое красивыи красная красное красныи краткая краткии краткое крепкая крепкии крепкое круглая
        круглое круглыи крупная крупное крупныи крутая крутое крутои культурная культурное культурныи левая левое
        левыи легендарныи легкая легкии легкое ледяная ледяное ледянои лесная лесное леснои летнее летнии летняя
        литературная литературное литературныи личная личное личныи лишнее лишнии лишняя любая любимая любимое любимыи
        любое любои максимальная максимальное максимальныи малая маленькая маленькии маленькое малое малыи массовая
        массовое массовыи медицинская медицинскии медицинское мелкая мелкии мелкое местная местное местныи милая милое
        милыи мирная мирное мирныи мировая мировое мировои младшая младшее младшии мобильная мобильное мобильныи мое
        мои молодая молодое молодои морская морское морскои московская московскии московское мощная мощное мощныи моя
        мужская мужское мужскои музыкальная музыкальное музыкальныи мягкая мягкии мягкое навальная навальное навальныи
        народная народное народныи настоящая настоящее настоящии научная научное научныи национальная национальное
        национальныи начальная начальное начальныи наш наша наше небольшая небольшое небольшои неизвестная неизвестное
        неизвестныи некая некии некое некоторая некоторое некоторыи немая немецкая немецкии немецкое немое немои
        необходимая необходимое необходимыи неплохая неплохое неплохои нефтяная нефтяное нефтянои нижнее нижнии нижняя
        низкая низкии низкое никакая никакое никакои новая новое новыи нормальная нормальное нормальныи ночная ночное
        ночнои нужная нужное нужныи областная областное областнои общая общее общественная общественное общественныи
        общии обычная обычное обычныи огромная огромное огромныи один одна одно окружная окружное окружныи олимпииская
        олимпиискии олимпииское опасная опасное опасныи определенная определенное определенныи опытная опытное опытныи
        оригинальная оригинальное оригинальныи основная основное основнои основныи особая особое особыи остальная
        остальное остальнои острая острое острыи отдельная отдельное отдельныи открытая открытое открытыи отличная
        отличное отличныи официальная официальное официальныи очередная очередное очереднои пассажирская пассажирскии
        пассажирское первая первое первыи пищевая пищевое пищевои плохая плохое плохои подобная подобное подобныи
        позднее позднии поздняя полевая полевое полевои политическая политическии политическое полная полное полныи
        польская польскии польское популярная популярное популярныи последнее последнии последняя постоянная
        постоянное постоянныи похожая похожее похожии почетная почетное почетныи правая правильная правильное
        правильныи правовая правовое правовои правое правыи прекрасная прекрасное прекрасныи приятная приятное
        приятныи простая простое простои прошлая прошлое прошлыи прямая прямое прямои пустая пустое пустои пятая пятое
        пятыи рабочая рабочее рабочии разная разное разныи раионная раионное раионныи реальная реальное реальныи
        региональная региональное региональныи резкая резкии резкое римская римскии римское родная родное родныи
        россииская россиискии россииское русая русое русская русскии русское русыи ручная ручное ручнои сам сама самая
        само самое самыи свежая свежее свежии свободная свободное свободныи свое свои своя связанная связанное
        связанныи святая святое святои северная северное северныи сегодняшнее сегодняшнии сегодняшняя седьмая седьмое
        седьмои сеи сельская сельскии сельское семеиная семеиное семеиныи серая серебряная серебряное серебряныи
        серииная серииное серииныи серое серыи серьезная серьезное серьезныи сие сильная сильное сильныи синее синии
        синяя сия слабая слабое слабыи сладкая сладкии сладкое следующая следующее следующии слепая слепое слепои
        сложная сложное сложныи собственная собственное собственныи советская советскии советское совместная
        совместное совместныи современная современное современныи солнечная солнечное солнечныи социальная социальное
        социальныи специальная специальное специальныи спортивная спортивное спортивныи среднее среднии средняя старая
        старое старшая старшее старшии старыи странная странное странныи страшная страшное страшныи судебная судебное
        судебныи супер сухая сухое сухои счастливая счастливое счастливыи таиная таиное таиныи такая такое такои
        тверская тверское тверскои твое твои творческая творческии творческое твоя текущая текущее текущии телефонная
        телефонное телефонныи теплая теплое теплыи техническая техническии техническое тихая тихии тихое толстая
        толстое толстыи тонкая тонкии тонкое торговая торговое торговыи тот точная точное точныи традиционная
        традиционное традиционныи третии третье третья трудная трудное трудныи трудовая трудовое трудовои тупая тупое
        тупои турецкая турецкии турецкое тяжелая тяжелое тяжелыи уважаемая уважаемое уважаемыи уголовная уголовное
        уголовныи ужасная ужасное ужасныи украинская украинскии украинское умная умное умныи уникальная уникальное
        уникальныи учебная учебное учебныи федеральная федеральное федеральныи финальная финальное финальныи
        финансовая финансовое финансовыи французская французскии французское футбольная футбольное футбольныи холодная
        холодное холодныи хорошая хорошее хорошии цветная цветное цветнои целая целое целыи центральная центральное
        центральныи цифровая цифровое цифровои частная частное частныи чеи человеческая человеческии человеческое
        черная черное черныи честная честное честныи четвертая четвертое четвертыи чистая чистое чистыи чудесная
        чудесное чудесныи чужая чужое чужои чье чья шестая шестое шестои широкая широкии широкое школьная школьное
        школьныи электронная электронное электронныи эта это этот южная южное южныи юная юное юныи японская японскии
        японское яркая яркии яркое
        """,
        """
        авангард авария авеню авиакомпания авиация австралия австрия авто автобус автоваз автограф автомат автомобиль
        авторитет агентство адлер адрес азербаиджан азия азов академия аккаунт акт актив активность актуальность
        акцент акция алгоритм алкоголь аллергия алмаз алтаи альбом альтернатива альянс америка ана анализ аналог
        англия анджелес анекдот аниме ансамбль апк аппарат аппетит аравия аргентина аргумент аренда арест армения
        армия аромат арсенал артиллерия архангельск архив архитектура аспект ассортимент ассоциация астрахань асфальт
        атака атлас атмосфера аудио аудитория аукцион аут афганистан африка аэродром аэропорт аэрофлот аэс бавария
        багаж баз база базар баикал бак баку бал баланс балет балкон балл банда банк банка бардак барнаул барселона
        барьер баскетбол бассеин батальон батарея башня бег бегство бедность безопасность безработица безумие беларусь
        белгород белоруссия бельгия белье бензин беременность берлин берлина беседа беспокоиство бета биатлон
        библиография библиотека библия биг бизнес билет биография биология биржа битва блеск близость блог блюдо
        богатство боинг бок бокал бокс болгария болезнь болото боль больница большинство бомба бонус борода борт
        борьба бостон бразилия браслет братство бред бремя бренд брест бригада британия бронза бруклин брюссель бтр
        буква букет бульвар бумага бунт бутылка быт бюджет бюро бюст вагон важность ваз вал вальс валюта вариант
        варианта вашингтон введение ввод ввоз ввп вднх вдохновение веб ведение ведомство ведро вектор величество
        величие величина велосипед венгрия вердикт верность вероятность версия вертолет верх вершина вес веселье ветвь
        ветер ветка вече вечер вечеринка вечность вещание вещество вещь взвод взгляд вид видение видео видимость визит
        вильнюс вина вино виноград вирус виски вич вклад включение вконтакте вкус владение владивосток влажность
        власть влияние влксм вмф внедорожник внедрение внесение внешность внимание вод вода водка вождение воз
        возбуждение возведение возврат возвращение воздеиствие воздух возмещение возможность возмущение возраст
        возрождение воина воиско вокзал волга волгоград волеибол волна волнение вологда волос воля воображение
        вооружение воплощение вопрос воронеж ворот воспитание воспоминание восприятие восстание восток восторг
        впечатление вред вспышка встреча вступление втб вто вторжение вуз вулкан вход въезд выбор вывод вывоз выдача
        выделение выезд выживание вызов выигрыш выкуп вылет вып выполнение выпуск выражение выращивание выручка
        высказывание высота выставка выстрел выступление выход выявление вьетнам гавань гадость газ газа газета газон
        газпром галерея галстук гамма гараж гарантия гармония гвардия гвоздь гдр генератор география геология
        геометрия герб германия героизм гетто гибдд гибель гимн гипотеза гитара глаз глобус глоток глубина глупость
        гнев гнездо говно год голландия голливуд голод голос голосование гольф гонка гордость горизонт горло город
        городок госдума госпиталь гост гостиница государство готовность гпу град гражданство грамм гран гранат граната
        граница грант грань граффити греция гриб грибов гроб гродно гроза гром грудь груз грузия грузовик грунт группа
        группировка грусть грязь гэс давление дагестан даллас даль дар дата датчик дача дверь двигатель движение двор
        дворец дебют девиз деиствие декларация делегация деление дельта демократия демонстрация департамент депо
        депрессия дерби деревня дерево дерьмо десант десерт десятилетие десятка десяток деталь детроит детство дефицит
        деятельность джаз джерси дзюдо диагноз диалог диаметр диапазон диван дивизия дизаин дизель динамика динамо
        диплом диск дискуссия дисциплина длина длительность дневник днепр днк дно днр добыча доверие договор дождь
        доза доклад документ долг должность долина долл доллар доля дом домик домодедово донбасс донецк допинг
        дополнение допрос доска доставка достижение достоинство доступ досье доход драка драма дрожь дружба дтп дубль
        дума душ дуэт дым дыра дыхание евангелие евро евровидение европа евросоюз египет егэ еда единица единство
        екатеринбург ереван ерунда жажда жанр жар жара желание железа железо желудок жест жестокость живопись жидкость
        жизнь жилище жир жительство жкх журнал жюри забаикалье забастовка заблуждение заболевание забор забота
        заведение завершение завещание зависимость зависть завод завтрак загадка заговор зад задание задача задержка
        заказ закат заключение закон законность законопроект закрытие зал зала залог замена замечание замысел занавес
        занятие зао запад записка запись заповедник запорожье запрос запуск заработок зарплата заря заряд заседание
        заслуга захват защита заявка заявление звание звено звон звук звучание здание здоровье зелень земля зенит
        зеркало зерно злость знак знакомство знамя знание значение значимость значок зов золото зона зоопарк зрелище
        зрение зуб игра игрушка идеал идеология идея иерусалим ижевск избежание известие известность изготовление изд
        издание издательство излучение измена изменение измерение изображение изобретение изучение икона икс иллюзия
        имидж иммунитет империя импорт импульс имущество имя индекс индия индустрия инициатива институт инструкция
        инструмент интеграция интеллект интер интервью интерес интернет интерьер интуиция инфляция информация инцидент
        иорк ирак иран иркутск ирония иск иска исключение искра искусство испания исполнение испытание исследование
        истина история источник исход исчезновение италия итог кабель кабинет кавказ кадр казань казахстан казино
        казнь какао календарь калининград калифорния камаз камень камера кампания канада канал канун капитал капля
        кара карандаш карелия карман кармана карри карта картина картинка картофель карточка карьера каталог катание
        катастрофа категория катер кафе кафедра качество квадрат квалификация квартал квартира квн квт кгб кемерово
        киев килограмм километр кино кинотеатр кипр кирпич кислород кислота китаи клад кладбище клан класс клетка
        кливленд климат клин клиника клип клуб ключ кндр книга книжка кнопка кнр коалиция ковер код кода кодекс кожа
        коктеиль колено колесо количество коллегия колледж коллектив коллекция колодец колокол колонна колорадо
        колумбия колхоз кольцо команда командование комбинат комбинация комедия комиссия комитет комментарии коммунизм
        комната компания комплекс комплект комплимент композиция компонент компромисс компьютер комфорт кон конверт
        конвои конго конгресс конец конкуренция конкурс конституция конструкция контакт контеинер контекст контент
        контора контракт контроль конференция конфликт концентрация концепт концепция концерн концерт копия кора
        корабль корень корея коридор корм коробка королевство корона корпорация корпус космос косово костер костюм
        кофе кошелек кошмар коэффициент кпк кпп кпрф кпсс кража краи кран краска краснодар красноярск красота крах
        кредит кредитование креисер крем кремль крепость кресло крест крещение кризис крик кристалл критерии кровать
        кровь крон кросс кроссовер круг кружка кружок крушение крым крыша куба кубань кубок кузов культ культура кун
        купе купол курган курение курорт курс курск куртка кусок кусочек кухня куча лабиринт лаборатория лавка лагерь
        лаинер лампа латвия лдпр легенда лед лекарство лекция ленинград лента лес леса лестница лет летие летопись
        лечение ливерпуль лига лидерство ликвидация лимит линия литва литература литр лифт лицензия личность лишение
        лоб логотип лодка ложка ложь лозунг локомотив локоть лондон луга луганск лук луна луч любопытство люкс магазин
        магия магнит мадрид маиами маидан мак мандат манера манифест манчестер марафон марго маркетинг марокко маршрут
        маска масло масса массаж массив мастерство масштаб мат материал матрица матч мая маяк мвд мвт мвф мгновение
        мгу мебель мегафон медаль медицина мексика мелодия мелочь мемориал менеджмент меню мера мероприятие мерседес
        мес местечко местность место месть месяц металл метод метода методика метро метрополитен механизм меч мечеть
        мечта миг мид микрофон милан милиция миллиард миллион милость мин мина минздрав министерство минобороны минск
        минута минутка минфин мир миссия митинг миф мкад мкм мкс млн млрд мнение множество могила мода модернизация
        модуль мозг молдова молитва молния молодость молока молоко молчание момент монако монастырь мониторинг монтаж
        мораль морковь москва мост мотив мотивация мотор мотоцикл мощность мощь мтс мудрость мужество музеи музыка
        мука мультфильм мурманск мусор мчс мысль мышление мэрия мюзикл мясо мяч наблюдение набор награда нагрузка
        надежность надзор надпись название назначение наименование наказание наличие налог намерение нападение
        написание напиток направление напряжение наркотик народ нарушение наряд наса население насилие наслаждение
        наследие наследство настроение наступление нато наука находка нахождение национализм нация нач начальство ндс
        небо нева недвижимость неделя недоверие недовольство недостаток ненависть неправда несчастье неудача нефть
        нехватка нии нить нквд новгород новинка новосибирск новость нога нож ноль номер норвегия норма нос ноутбук
        ночь нпо нтв нхл оао обвинение обед обеспечение обещание обзор обитель обл облако область облегчение облик
        обман обмен обморок обновление обозначение обозрение оборона оборот оборудование обоснование обострение
        обработка образ образец образование обращение обряд обсе обследование обслуживание обстановка обстрел
        обсуждение обувь обучение обход общежитие общение общество община объединение объект объявление объяснение
        обыск обычаи обязанность огаио огонек огонь огород ограбление ограничение одежда одесса одеяло одиночество
        одобрение ожидание озеро ока оказание океан окно окончание окраска округа окружение омск оон ооо опасность
        опера операция описание оплата ополчение опора оппозиция оправдание определение опрос оптимизация оптимизм
        опухоль опыт орган организация организм орден оренбург ориентация оркестр орудие оружие освещение освобождение
        освоение оскорбление ослабление осмотр основа основание особенность особняк осознание ост остановка остаток
        осторожность остров отбор отверстие ответ отвращение отдел отделение отдых отель отечество отзыв отказ
        отключение открытие отличие отмена отношение отопление отпечаток отпор отпуск отравление отражение отрасль
        отрезок отрицание отрывок отряд отставание отступление отсутствие оттенок отчаяние отчет офис оформление
        охрана оценка очаг очередь очерк очко ошибка ощущение павильон падение пак пакет палата палец пальто памятник
        память панель паника пар пара парад парадокс париж парк парламент пароль паром пароход парочка партия паспорт
        патриотизм пауза пво пеизаж пекин пенальти пенза пение пенис пенсия пентагон пепел первенство перевод
        переворот передача переезд перелом перемещение перемирие перенос переписка перестроика переулок переход перец
        перечень период пермь перо перри персонал перспектива перу песнь песня песок петербург печать печень печенье
        пианино пиар пиво пиджак пиздец пика пир пирог пирога пирс пистолет письмо питание пицца плавание плакат пламя
        план планет планета планирование плата плато платок платформа платье плач плащ племя плен плена плечо плод
        плотность плоть площадка площадь пляж побег победа побережье поведение поверхность повесть повод поворот
        повреждение повышение погода подарок подача подбор подбора подвал подготовка поддержание поддержка подключение
        подмосковье подобие подозрение подписание подпись подход подчинение подъезд поединок поезд поездка пожар
        позиция позор поиск показ показатель покер поклон поколение покров покрытие покупка покушение полгода полдень
        полигон политбюро полиция полка полмиллиона полночь положение полоса полотенце полотно полугодие полуостров
        полуфинал получение полчаса польза пользование польша полюс поляна поместье помещение помощь понижение
        понимание понятие попадание пополнение поправка популярность попытка поражение порно порог порода порошок
        портал портрет порту португалия портфель поручение порядок пос посадка поселение поселок посещение послание
        пособие посольство пост постановка постель построение поступление поступок посуда пот потенциал потеря поток
        потребление потребность похищение поход почерк почта поэзия поэма появление пояс правление православие
        праздник празднование праис прах пребывание превращение превышение преданность предел предложение предмет
        предпочтение предприятие презентация президиум преимущество прекращение прелесть премия препарат препятствие
        пресс пресса престол преступление прибор прибыль прибытие привлечение привод привычка приглашение приговор
        приезд прием приз призвание признак признание призыв приказ приключение приложение применение примечание
        приморье принцип принятие приобретение приоритет природа прирост приступ присутствие приток приход причина
        приют проблема провал проведение проверка прогноз программа прогресс прогулка продажа продвижение продолжение
        продукт продукция проезд проект проживание проза прозвище произведение производство происшествие прокат
        проклятие прокуратура промежуток промысел пропаганда пропуск просвещение просмотр проспект пространство
        просьба протест протокол профессия профилактика профиль проход прохождение проц процедура процент процесс
        процессор прочность прошение прощание прощение проявление пруд прыжок психология псков публика публикация
        пульс пульт пуля пункт пуск пустота путеводитель путешествие путь пушка пыль пьеса пюре пятно работа рабство
        равенство равновесие радио радиус радость радуга разбор разведка развитие развод разгар разговор разгром
        разделение раздражение различие размах размер размещение разница разнообразие разработка разрешение разрушение
        разряд разум раион ракета ралли ран рана ранение рао рапорт раса раскол распад расписание расположение
        распоряжение рассвет рассказ рассказов рассмотрение расстояние расстрел расстроиство раствор растение расход
        расчет расширение раунд рацион рбк реактор реакция реал реализация реальность ревность революция регион
        регистрация регламент редакция редкость реестр режим резерв резолюция резонанс результат резюме реид реис
        реитинг река реклама рекорд религия релиз рельеф ремень ремонт рен рено репертуар репортаж репутация
        республика ресторан ресурс референдум реформа рецензия рецепт речь решение ржд риа рига ринг рис риск риска
        рисунок ритм ритуал рог родина рождение рождество розыгрыш розыск рок ролик роль роскомнадзор роскошь роспись
        россия рост ростелеком рота рпц рсфср руб рубашка рубеж рубль ружье рука руководство рукопись руль румыния
        русло русь ручка рфс рынок рычаг рэп рюкзак ряд рязань сад саит салат салон салют самара саммит самолет
        самоубииство самочувствие сан санатории сараи саратов саундтрек сахалин сахар сахара сбербанк сближение сбои
        сбор сборка сборник свадьба свидание свитер свобода свод своиство связь сделка севастополь север седан сезон
        секрет секс сектор секция семеиство семинар сена сенат сербия сервер сервис сердце серебро середина сериал
        серия сертификат сессия сет сеть сеул сибирь сигнал сиденье сила символ симферополь сингл синдром синтез сирия
        система сити ситуация сияние ска сказка скала скандал сквер скелет склад склонность скорость скульптура
        слабость следствие слияние словарь слово сложность слои служба служение слух случаиность смартфон смелость
        смена смертность смерть смесь смех смоленск смс смысл снаряд снаряжение снг снег снижение снимок снятие
        соблюдение собор собрание событие совершение совершенство совесть совет совещание совокупность совпадение
        согласие соглашение содеиствие содержание соединение создание сознание сок сокращение сокровище солидарность
        солнце солнышко соль сомнение сон сообщение сообщество сооружение соответствие соотношение соревнование сорт
        состав составление состояние сотня соус софия сохранение социализм социология сочетание сочинение союз спад
        спасение спб спектакль спектр спецназ спин спина список спокоиствие спорт способ способность справка
        справочник спрос спуск сравнение сражение средство срок ссора сср ссср ссылка стабильность ставка ставок
        ставрополь стадион стадия стадо стаж стакан сталинград сталь стамбул стан стандарт становление станок станция
        старость старт статус статуя статья ствол стен стена степень стиль стимул стоимость сток стол столб столетие
        столица столкновение сторона стоун стр страна страница стратегия страхование стрела стрельба стремление стресс
        стрит строение структура стс студия стул ступень стыд суверенитет суд судьба сумка сумма суп суперкубок
        сущность сфера схема сходство сцена сценарии счастье счет съезд сырье сюжет сюрприз табак таблица таиланд таим
        таимс такси талант танго танец танк тариф тасс татарстан ташкент тбилиси тверь твиттер творчество театр тезис
        текст тел телевидение телевизор телеканал телефон телешоу тело темп температура тенденция теннис тень теорема
        теория теракт терапия терек термин терминал терпение территория террор тест тестирование тесто тетрадь техас
        технология течение типография тираж титул тишина ткань товар ток токио толпа толчок толщина тольятти томск тон
        тоннель топливо топор тор торговля торжество торнадо торонто торпедо торт тоска точка точность трава травма
        трагедия традиция трактор трамваи транс трансляция транспорт трасса требование тревога треилер трек тренд
        тренировка треста треть треугольник трибунал триллер триумф трлн троика трон трофеи труба труд труп туалет
        тула туман туризм турне турнир турция тыл тыс тысяча тьма тэц тюмень тюрьма тяга убежище убииство уборка
        убыток уважение уведомление увеличение уверенность увлечение увольнение угол уголок уголь угроза удаление удар
        удача удивление удовольствие уефа ужас ужин узбекистан узел узи указ указание указатель украина укрепление
        улица улучшение улыбка ультиматум умение уменьшение университет уничтожение упа упадок упоминание упор
        употребление управление упражнение уравнение ураган урал уровень урожаи урон усадьба усиление ускорение
        условие услуга успех усталость установка установление устоичивость устранение устроиство устье утверждение
        утечка утро уфа уха ухо уход ухудшение участие участок участь учебник учение учет училище учреждение ущелье
        ущерб фабрика фаза фаил факел факт фактор факультет фамилия фантазия фантастика фас фасад фашизм фбр федерация
        феномен феррари фестиваль фигня фигура филиал философия фильм фильтр финал финляндия фирма фитнес флаг флот
        фокус фонарь фонд фонтан форд форма формат формирование формула формулировка форт фортепиано форум фото
        фотоаппарат фотография фрагмент фраза фракция франция фрг фронт фсб фундамент функция футбол фэнтези хабаровск
        халат хаос характер харт харьков хаус хвост хельсинки хер херня химия хит хлам хлеб хобби ход ходатаиство
        хозяиство хоккеи холдинг холл холм холод холодильник хор храбрость храм хранение хранилище хребет хрень
        христианство хьюстон царство цветок целостность цена ценность центр цепь церемония церковь цех цивилизация цик
        цикл цирк цитата цифра цру цска чаиник чан час частота часть чек человечество челси челюсть челябинск чемодан
        чемпионат чен череп честность четверть чехия чикаго чили чип численность число членство чон чтение чувство
        чудо чушь шаг шанс шар шара шарик шарф шасси шахта швеицария швеция шедевр шерсть шествие шея ширина шкаф
        школа шок шоколад шоссе шоу штаб штат шторм штраф штука штурм шум шутка щит эвакуация эволюция эго экз экзамен
        экземпляр экипаж экология экономика экономия экран экс экспедиция эксперимент экспертиза эксплуатация
        экспозиция экспорт экспресс электроника элемент элита энергия энциклопедия эпидемия эпизод эпоха эра эссе
        эстафета эстония этаж этап эфир эффект эхо юар юбилеи ювентус юмор юнеско юность яблоко явка явление ядро яицо
        якорь якутия яндекс япония ярмарка ярославль ярость ящик
        """,
    ),
    "sv": (
        """
        absolut absoluta absolutt agare agarea agaret aktiv aktiva aktivt aktuell aktuella aktuellt akut akuta akutt
        allman allmana allmant allvarlig allvarliga allvarligt alternativ alternativa alternativt amerikansk
        amerikanska amerikanskt anhangare anhangarea anhangaret ansvarig ansvariga ansvarigt anvandare anvandarea
        anvandaret arbetare arbetarea arbetaret arbetsgivare arg arga argt arig ariga arigt arlig arliga arligt arm
        arma armt bekant bekanta bekantt beredd beredda bereddt besokare besokarea besokaret besviken besvikena
        besvikent bevara bevaraa bevarat billig billiga billigt biten bitena bitent bitter bittera bittert bla blaa
        black blacka blackt blat blind blinda blindt boken bokena bokent bred breda bredt brun bruna brunt central
        centrala centralt cool coola coolt dalig daliga daligt dansk danska danskt deltagare deltagarea deltagaret
        delvis delvisa delvist desperat desperata desperatt digital digitala digitalt direkt direkta direktt djup
        djupa djupt dod doda dodt dokumentar dokumentara dokumentart domare domarea domaret dubbel dubbela dubbelt
        duktig duktiga duktigt dum duma dumt dyr dyra dyrt effektiv effektiva effektivt egen egena egent ekonomisk
        ekonomiska ekonomiskt elak elaka elakt endast endasta endastt enkel enkela enkelt enorm enorma enormt ensam
        ensama ensamt enskild enskilda enskildt exakt exakta exaktt extrem extrema extremt falsk falska falskt
        fantastisk fantastiska fantastiskt fara faraa farat fardig fardiga fardigt farlig farliga farligt fast fasta
        fastaa fastat fastt fattig fattiga fattigt felaktig felaktiga felaktigt fet feta fett fin fina final finala
        finalt finsk finska finskt fint fodd fodda foddt forare forarea foraret foretagare foretagarea foretagaret
        foretradare foretradarea foretradaret forfattare forfattarea forfattaret forklara forklaraa forklarat
        forsiktig forsiktiga forsiktigt forskare forskarea forskaret forsvara forsvaraa forsvarat fort forta fortt
        frank franka frankt fransk franska franskt fri fria frisk friska friskt frit from froma fromt ful fula full
        fulla fullt fult fylld fyllda fylldt fysisk fysiska fysiskt galen galena galent gamla gammal gammalt gay gaya
        gayt gemensam gemensama gemensamt genast genasta genastt gift gifta giftt glad glada gladt global globala
        globalt goa god goda godkand godkanda godkandt godt got gott gra graa grad grada gradt grat gratis gratisa
        gratist gravid gravida gravidt gripen gripena gripent gron grona gront grov grova grovt grund grunda grundt
        grym gryma grymt gul gula gult halv halva halvt hamburgare hamburgarea hamburgaret hard harda hardt harlig
        harliga harligt hel hela helt hemsk hemska hemskt het heta hett historisk historiska historiskt hog hoga hogt
        hungrig hungriga hungrigt intressant intressanta intressantt invanare invanarea invanaret invandrare
        invandrarea invandraret jobbig jobbiga jobbigt junior juniora juniort just justa justt kall kalla kallt kand
        kanda kandt kanslig kansliga kansligt kapital kapitala kapitalt kass kassa kasst kasta kastaa kastat klassisk
        klassiska klassiskt klok kloka klokt knapp knappa knappast knappasta knappastt knappt kommunal kommunala
        kommunalt komplett kompletta komplettt konkret konkreta konkrett konstant konstanta konstantt konstig konstiga
        konstigt korrekt korrekta korrektt kort korta kortt kraftig kraftiga kraftigt kram krama kramt kristen
        kristena kristent kritisk kritiska kritiskt kvinnlig kvinnliga kvinnligt lag laga lagom lagoma lagomt lagt
        lakare lakarea lakaret lang langa langt larare lararea lararet lasare lasarea lasaret lat lata latt latta
        lattt lea led leda ledare ledarea ledaret ledig lediga ledigt ledsen ledsena ledsent ledt let liberal liberala
        liberalt lik lika likadan likadana likadant likt lilla liten litet ljus ljusa ljust lokal lokala lokalt lugn
        lugna lugnt lycklig lyckliga lyckligt man mana manlig manliga manligt mansklig manskliga manskligt mant
        marklig markliga markligt mastare mastarea mastaret matt matta mattt medarbetare medarbetarea medarbetaret
        medborgare medborgarea medborgaret medicinsk medicinska medicinskt medveten medvetena medvetent militar
        militara militart minst minsta minstt misstankt misstankta misstanktt mobil mobila mobilt modern moderna
        modernt mojlig mojliga mojligt mordare mordarea mordaret mork morka morkt motstandare motstandarea
        motstandaret mysig mysiga mysigt naken nakena nakent nara naraa narat nationell nationella nationellt naturlig
        naturliga naturligt negativ negativa negativt nervos nervosa nervost nojd nojda nojdt nordisk nordiska
        nordiskt normal normala normalt norsk norska norskt nya nyfiken nyfikena nyfikent nyt offentlig offentliga
        offentligt ofta oftaa oftat okand okanda okandt ond onda ondt oppen oppena oppent orange orangea oranget
        orolig oroliga oroligt osaker osakera osakert oskyldig oskyldiga oskyldigt otrolig otroliga otroligt ovan
        ovana ovant partiledare partiledarea partiledaret pasta pastaa pastat perfekt perfekta perfektt permanent
        permanenta permanentt personlig personliga personligt pigg pigga piggt plan plana plant platt platta plattt
        politisk politiska politiskt popular populara populart positiv positiva positivt precis precisa precist
        present presenta presentt privat privata privatt psykisk psykiska psykiskt publik publika publikt radd radda
        raddt rak raka rakt ratt ratta rattt real reala realt rejal rejala rejalt relevant relevanta relevantt ren
        rena rent rik rika rikt riktig riktiga riktigt rimlig rimliga rimligt rod roda rodt rolig roliga roligt rum
        ruma rumt rysk ryska ryskt saker sakera sakert sakta saktaa saktat salt salta saltt sann sanna sannt sarskild
        sarskilda sarskildt satt satta sattt schysst schyssta schysstt sekreterare sekreterarea sekreteraret sen sena
        sent separat separata separatt serios seriosa seriost sexig sexiga sexigt sid sida sidt sjuk sjuka sjukt
        skadespelare skara skaraa skarat skon skona skont skyldig skyldiga skyldigt slapp slappa slappt smart smarta
        smartt snabb snabba snabbt snall snalla snallt snygg snygga snyggt social sociala socialt sokt sokta soktt sot
        sota sott spara sparaa sparat speciell speciella speciellt spelare spelarea spelaret stabil stabila stabilt
        stark starka starkt statlig statliga statligt stolt stolta stoltt stor stora stort strid strida stridt strom
        stroma stromt sugen sugena sugent svag svaga svagt svara svaraa svarat svart svarta svartt svensk svenska
        svenskt tacksam tacksama tacksamt tagen tagena tagent teknisk tekniska tekniskt tidig tidiga tidigt tiggare
        tiggarea tiggaret tillganglig tillgangliga tillgangligt tjock tjocka tjockt tom toma tomt toppen toppena
        toppent total totala totalt trakig trakiga trakigt tranare tranarea tranaret trevlig trevliga trevligt trist
        trista tristt trott trotta trottt trygg trygga tryggt tuff tuffa tufft tung tunga tungt tvungen tvungena
        tvungent tydlig tydliga tydligt tysk tyska tyskt tyst tysta tystt underbar underbara underbart ung unga ungt
        unik unika unikt upprord upprorda upprordt usel usela uselt utlandsk utlandska utlandskt utmarkt utmarkta
        utmarktt utsatt utsatta utsattt vaken vakena vakent valjare valjarea valjaret valkommen valkommena valkomment
        van vana vanlig vanliga vanligt vant vard varda vardelos vardelosa vardelost vardt vare varea varet varm varma
        varmt verklig verkliga verkligt vid vida vidt viktig viktiga viktigt villig villiga villigt vind vinda vindt
        vinnare vinnarea vinnaret vis visa viss vissa visst vist vit vita vitt vuxen vuxena vuxent ytterligare
        ytterligarea ytterligaret
        """,
        """
        abc abo abonnemang abort acceptans access ack adress advokat affar affarside affisch afton aga aganderatt
        agenda agg air akademi akademiker aktenskap aktie aktiebolag aktion aktivism aktivitet alan alarm album alder
        aldersgrans aldreomsorg ale alf alfa alfons alkohol allergi allians allmanhet allsang allvar alm aloe alt
        aluminium amazon ambassad ambition ambulans amerikan amfetamin amiral ammunition amne analys analytiker
        andamal andel andetag android anfalla angelagenhet angest angrepp angripa anime ankomst anmalan annons
        anonymitet ansikte anslag ansluta ansokan ansprak ansvar anta antal antisemitism anus anvandarnamn apartheid
        apelsin apotek app apparat apropa aptit ara arab arbete arbetsdag arbetskraft arbetsliv arbetsloshet
        arbetsmiljo arbetsplats arbetstid arena ark arkitekt arkitektur arkiv arlighet armband arr arrangemang arsdag
        arsenal arsjubileum arskurs arsle arsmote art artal artikel artilleri arvode asfalt asikt asna aspekt ass
        association astadkomma astma asyl asylskal ata atanke aterga aterkomma aterkomst aterta ateruppta atkomst
        atmosfar attack attentat attityd attraktion attribut auktion auktoritet aura autism autograf automatik avbrott
        avbryta avdrag avga avgang avkomma avlopp avokado avsaknad avsikt avsked avskum avsnitt avstand avtal avtryck
        axel backa bacon bade badhus badkar badrum bagage bage bageri bakgrund baksida bakslag bakverk balans balett
        balkong bamse bana barack bard barndom barnprogram barnvakt baseball baseboll basis basket bastis bat batteri
        bea beach bebis bebyggelse bedrageri bedrift bedriva befal befogenhet befrielse bega begaran begrava begrepp
        begripa behalla behorighet behov bekostnad bekraftelse bekvamlighet bekymmer belopp bemarkelse ben bensin
        berattelse beredskap berg besatthet besked beskriva beslag besok best besvikelse beta betong betydelse betyg
        beundran bevis bibel bibliotek bidrag biff bikini bil bild biljett bilolycka binda biograf biografi biologi
        biskop bistand bit bitterhet bjork bjuda blabar bladdra blasa blick blixt blodprov blodtryck blogginlagg
        blomma blondin blues blus bob bok bokstav bolag bolan bomull bonus boom bord borda borjan bortaplan bortgang
        boskap boss bostad bostadshus bostadsratt boter botten bourbon braka brakdel branna bransch bransle brasa
        break bredband brev brevlada bricka bridge brinna bris britt brod broder brollop brorsa brorson brott
        brottslighet brottsoffer bruk brunch brunn bry brygga bryggeri bryta bubbla budget budskap buffe bukt bullshit
        bur burka bush business buske butik butler bygge bygglov byggnad byra byrakrati byte cafe campus cancer
        cannabis cape case cash censur center centimeter centrum ceremoni champagne chans chatt chi chip choklad chuck
        cigarett cigg cirkel cirkus citat citron civilisation clown coach coca cola college comeback cookie copyright
        cover cox cross cup cykel dack dagbok daggdjur dagis dagsljus dagtid dal dam damm dansa data date datorspel
        datum deadline debatt debut decennium definition deg deklaration delaktighet delta deltid demo demokrat
        demokrati depression designer desperation dessert destination detalj diabetes diagnos diagram dialekt dialog
        diameter diarre diesel diet diktatur dildo dilemma dimension dimma diplomat direktiv disciplin disk diskussion
        distribution distrikt division djur dna docka dodlighet dodsfall dodsstraff doktorand dollar dominans domslut
        domstol donation donken donna dorr dotterbolag dragon drake drakt drama dramatik dricka drift drink driva
        drivkraft drivmedel droppe dryck dubbelmoral duell dumhet duo dur dussin dvarg dvd dynga dyslexi edition
        effekt effektivitet efterfragan efternamn efterratt eftertanke egendom egenskap ekonom ekonomi ekvation elande
        elegans elektricitet elektriker elektronik elit eloge email emma empati empire energi engagemang enhet
        enhetschef enighet enkat ensamhet ensemble entusiasm epa episod erbjuda erfarenhet eskort ess est etapp etik
        etikett etnicitet etta eurovision eva evenemang evidens evighet evolution examen exempel exemplar exil
        existens expansion expedition expert expertis explosion expo export express extremism fabrik facit fack
        fackforbund fagel faktum faktura falk fallskarm falt familj familjeliv fanatiker fange fangelse fangenskap
        fanrik fantasi fard fardighet farg farja farm farsa fart fartyg farval fasa fascism fastighet fat fatal
        fattigdom favorit feedback feel fegis fel feminism femma fenomen fest festival fetma fiber ficka ficklampa
        fight figur fika filosofi filter finger finna fiol firma fisk fitta fjader fjardedel fjaril flagga flak flask
        flen flertal flickvan flight flit flock flod flode flora fluga fly flyga flygblad flygbolag flygplan flygplats
        flyktingbarn flyta fobi foda fodelse fodelsedag fokus folk folkgrupp folkhogskola folkmangd folkmord folkmusik
        fond fonster foralder forband forbannelse forberedelse forbindelse forbli forbud fordel fordon forebild
        foredome forekomma forekomst foremal foresla foretag foreteelse foretrade forfoljelse forfragan forkarlek
        forlata forlatelse form formaga forman format formel formogenhet formular fornamn fornekelse fornuft forort
        forraderi forran forsiktighet forskola forskott forstaelse forstand forstorelse forsvar forsvinna fortjanst
        fortvivlan forum forvantan forvarv forward fotboll fotbollslag fotografi fotspar fraga fragetecken framfart
        framgang framsida framsteg framtid frekvens frihet friidrott fristad frisyr fritid front frost frukost fruktan
        frustration fukt fullmane funktion fusion fylla fyr fysik fysiker gadda gaffel gala galenskap galleri galopp
        game garage garanti gard garderob gata gava gemenskap generation geni genombrott genomga genomgang genomslag
        genomsnitt genre geografi gest get gevar giftermal girighet gisslan gitarr gladje glasogon glass glida gloria
        gnutta godhet godis golf gomma grace gradde grafik gram grand granit gras grasmatta graviditet gray green gren
        grepp grilla gris groda grop grot grotta grundskola grupp gruva gryta gud gudinna gudstjanst guide guld
        guldgruva guldkorn gurka gym gymnasium gymnastik hacka hage haka halft halka hallbarhet hallon hallplats halsa
        halsband halsduk halvlek halvtid halvtimme hamnd handbok handboll handduk handelse handfull handtag hansyn
        hantverk harddisk hardrock hardvara harfarg harkomst harmoni hasch hast hastighet hatbrott hav heat hektar
        heldag helgon helhet helikopter heltid helvete hem hembesok hemland hemlighet hemmafru hemmaplan hemsida
        hemstad hemtjanst hen heroin herre herrgard hertig hetta hinder hink hinna hipster historia historik hjalm
        hjalp hjalpmedel hjalte hjarna hjarta hjartattack hjartinfarkt hjort hjul hobby hogkvarter hogskola hogtid
        hojd hojdpunkt hona honung horna hosta hotell hotellrum house hovratt hud hudfarg hugga hull hund hundratal
        hurra hus husdjur hushall husrannsakan husvagn huvud huvudsak huvudstad huvudvark hyckleri hygien hylla hyra
        hyresvard ide identitet ideologi idiot idioti idol idrott illusion illustration image immunforsvar import
        inblick inbordeskrig inbrott incest index indian indikation individ industri infektion inflation influensa
        information ingang inge ingrepp initiativ inkompetens inkomst inkomstskatt inland innebord innehalla innehav
        innerstad innovation input insats insikt inspiration installation institut institution insyn integration
        integritet intellekt intelligens interaktion internet intet intrade intrang intresse introduktion intryck
        invasion inverkan iris ironi islamism israel jacka jackpot jaga jakt jamforelse jamlikhet jamstalldhet jamte
        japan jarl jarn jarnvag jatte javel jeans jet jihad jobb joint jojo jon jord jordbruk jour journal
        journalistik jude juice julbord julklapp juridik jury kafe kaffe kaft kalender kaliber kallelse kallkritik
        kalsonger kam kamera kamp kampanj kampe kanal kandidat kandis kanel kanin kannedom kannetecken kanon kansla
        kaos kapacitet kapitalism kapitel kappa karaktar karl karlek karna karnkraft karnvapen karriar karta kartong
        kastrull katalog katastrof kategori katolik katt kattunge kavaj kaviar kebab kedja kemi keps ketchup kex kid
        kilometer kina kines kiosk kirurg kirurgi kissa kista kit kjol kladdkaka klader kladesplagg kladsel klagomal
        klamma klan klappa klarhet klarna klarsprak klass klassrum klimat klinik klippa klocka kloster klubba klump
        kna knackebrod knipa kniv knop kod koffein koka kokain kol kola koldioxid kollega kollision koloni koma
        kombination komedi komiker kommentar kommissarie kommitte kommun kommunalrad kommunism kompani kompass
        kompensation kompetens kompis komplimang kompromiss kon koncept kondition kondom konferens konflikt kongress
        konkurrens konkurs konsekvens konsensus konsert konsol konspiration konst konsthall konstnar konstruktion
        konstverk konsult konsum konsumtion kontakt kontanter kontext kontrakt kontroll konung konversation kopcentrum
        kopia korg korkort korn korrelation korruption korstag korthet korv kostnad kostym kott kottfars kottfarssas
        kraft kraftverk krak krav krava kreativitet kredit kreditkort krig kriminalitet kristendom krita kritik krog
        krona kronika kropp krut krydda kuk kula kultur kulturarv kund kundservice kundtjanst kung kunskap kupp kurva
        kust kuvert kvadrat kvadratmeter kval kvalitet kvallsmat kvallstid kvantitet kvarn kvart kvarter kvartsfinal
        kvinnosyn kyla kylskap kyrka kyrkogard laboratorium lada lader lage lagenhet lager lagforslag lagkapten lakan
        lake lakemedel lakrits lamm lampa land landsbygd landskap landslag langd langtan lank lantbruk lappstift
        laptop lara lardom larm laromedel laroplan lasagne lastbil lathet latin lattnad laura ledamot ledarskap
        ledighet ledtrad legend legitimation lejon lek leksak lektion lera leva leve leverans liberalism licens lida
        liga likhet liknelse lim lime lina linda lingon linje lira lisa lista liter litteratur liv livskvalitet
        livslangd livsmedel livsstil livstid livvakt ljud ljuga lofte logga logik logistik logn logotyp lojalitet lon
        lonsamhet look lopa loppis losenord lotta lotteri lotus love lucia lucka luft lunch lund lust luta lycka lyx
        macho macka mad madonna maffia magasin mage magi magkansla mail majestat majonnas majoritet maka makaroner
        makt mal maleri malgrupp mall maltavla maltid malvakt manad manadslon manager mandat mandatperiod mangd
        mangfald mangkultur mango manniskosyn manus mapp maraton mardrom marginal marijuana mark marke marknad marsch
        marten martini maskin massa massage massmord masterskap masterverk mat matcha matematik materia material
        matratt max medalj medans medel medge median medicin medium medlem medlemskap medverkan mejl mekaniker
        mellanmal mellanrum melodi mentalitet meny mercedes merit metall meter metod metro mick migran migration
        mikrofon miljard miljo miljonar mille millimeter mineral minimum minister minne minoritet minut mirakel misar
        missforstand mission missnoje misstanke mjukvara mobilnummer mobiltelefon mod mode modell modersmal mognad
        mojlighet moln moms monopol monster montage monter moped mora moral mord mordbrand mordforsok morfin morker
        morot morsa moske mote motesplats motion motiv motivation motorcykel motorvag motsats motstand motsvarighet
        motta motvind muffins mugg mun munk mus museum musik musiker musikvideo muslim must mustasch muta myndighet
        mynt mysterium nackdel nacke nalle namn namnsdag narhet naringsliv naromrade nathat nation nationalism
        nationalpark nationalsang nattklubb natur natverk nazism nederbord nederlag nedgang neger newton nick nigger
        ninja nisse niva njuta nod nodvandighet noje nolla nolltolerans nonsens nord nordvast norm nostalgi notis
        notkott notskal nova novell nutid nyans nyarsafton nyckel nyfikenhet nyhet nyhetsbrev nypa nytta nyval obalans
        obehag objekt observation ocean ockupation odds odmjukhet offer oformaga oga ogonblick ogonbryn ogonkontakt
        ogras ohalsa okunnighet okunskap olivolja olja olycka olydnad ombud ombyggnad omdome omega omgang omnejd
        omrade omslag omsorg omtanke omval onani onskan onskemal opera operation opinion oppenhet opposition ora ord
        ordbok order ordsprak ordval ore organ organisation orgasm original ork orkester orm ort osakerhet oskuld
        otrohet otrygghet otur overdos overdrift overens overflod overgang overgrepp overleva overlevnad oversikt
        overskott overtid overtygelse overvikt overvinna page pahitt pahopp paket pakistan palats palestinier pall
        pals paminnelse panda pang panik pannkaka papp papper paprika par paradis paradox paragraf paraply parentes
        parfym park parla parodi paron part parti partiprogram partner pase pask passage passion patrull paus paverkan
        pedagog pedagogik pedofili pen pendeltag peng pengar penis penna penny pension pensionar perfektion period
        pers person personal personbil personlighet personnummer perspektiv pest picknick pil pinne pipa pippi pirat
        piss pistol pitt pizza pizzeria pjas plaga plagg planbok plaster plats plattform plikt plus poang pocket podd
        poesi poet pojkvan policy polis polisanmalan polisbil polischef politik politiker pollen ponny pool popcorn
        popularitet population populism porr porslin portal porter portfolj portion portratt position post potatis
        potatismos potential pragel praktik prata praxis precision predikan premiar premium preparat presentation
        presentkort prestanda prestation prestige princip prinsessa prioritet privatliv privatperson privilegium
        problem problematik process produkt produktion profet proffs profil prognos program projekt promenad promille
        propaganda prostitution protein protest protokoll prototyp provins psyke psykiatri psykolog psykologi psykopat
        psykos pub publicitet puls pulver pumpa pund pung punk punkt pussel pyramid rabatt race racka rackvidd rad
        radar radhus radie radio radjur radsla raket rang ranta rap rapport rasism rattegang rattelse rattighet rav
        rea reaktion realtid recension recept reda redaktion redogorelse redskap referens reflektion reform regel
        regelverk regemente regi regim region register rehab reklam reklamfilm rekord relation release relevans
        religion replik reportage reporter repris republik resa research reserv resonemang respekt respons restaurang
        resultat resurs retorik retur revansch revir revolution rida rikedom riksdag riksforbund rim rinna riva rival
        robot rodvin roka roll rollspel rom romantik rond rontgen rora rorelse rorlighet rosengard rost rostratt rouge
        rov rovdjur rovhal rubrik rulla rullstol rumpa rundtur rush russin ruta rutin rutt rygg ryggrad ryggsack ryss
        sabotage safari sajt sak sakerhet sallad sallskap salong samarbete samband sambo same samfund samhalle samlag
        sammanhang samtal samtid samtycke samverkan samvete sandebud sang sanka sannolikhet sans sarklass sasong satan
        satellit satir scen scenario schema schizofreni sed segregation sekel sekretess sekt sektion sekund semester
        semifinal seminarium semla senap serie server service session set sexa sexism sexliv sexualbrott sexualitet
        sharia shop shorts shot show siffra signal signatur sikte sill silver simma sinne sits situation sjal
        sjalvforsvar sjalvinsikt sjalvkansla sjalvklarhet sjalvmord sjo sjukdom sjukhus sjukvard sjunga sjunka skada
        skadegorelse skadespel skadestand skala skalle skam skandal skap skapelse skargard skarm skatt skattemedel
        sked skede skelett skicklighet skillnad skilsmassa skinka skita skitsnack skiva skivbolag skjorta skjuta
        skjutvapen sko skog skogsbruk skoj skola skold skolgang skonhet skrack skrackfilm skrapa skratt skrift skrika
        skriva skrivbord skugga skuld skydd skyldighet skytte sla slag slagsmal slagtra slam slampa slaveri slita
        slogan sloja sloseri slott slutsats slutspel smabarn smalla smalta smartphone smeknamn smita smitta smoothie
        smorgas smorgastarta smorja smyga snabbhet snabbis snurra socialbidrag socialism sociologi socken socker soffa
        soja solglasogon solidaritet solljus solsken somalier sommarjobb sommarlov sommarstuga sommartid somn sopa
        soppa sorg sorja sort sosse soul sound sovjet sovmorgon sovrum spadbarn spade spam sparvagn special
        specialitet speed spegel spektrum speltid sperma spik spin spindel spion spiral spjut split splittra spoke
        spotta sprak spricka springa sprit spruta stab stabilitet stad stadion stadsdel stalar stalle stamma stampel
        standard standpunkt stangsel stat station statistik statsrad status staty sten stewart sticka stiftelse stiga
        stipendium stjala stjarna stjart stold stolpe stolpskott stolthet stop storhet storlek storstad story stra
        stracka straff strategi stridsvagn strike stroke strom stromavbrott struktur stryka studiebesok studio stuga
        stund stycke styre styrelse styrka sub succe suga summa supa support svaghet svamp svard sven svenne svin svit
        sydvast syfte symbol sympati symptom symtom syndrom synpunkt synsatt synvinkel syra syre syrier syrra syskon
        syssla system tabell tacksamhet taco tak takt taktik talamod talan talang talesperson tandkram tandvard
        tangentbord tango tanke tarta tatort team teater tecken tegel teknik teknologi telefon television tema tempel
        temperatur ten tendens tennis tenta teori terapeut terapi term termin terrang territorium terrorbrott
        terrordad terrorism tesla testamente tex tid tidpunkt tidsfraga tidskrift tidsperiod tiggeri tik tillatelse
        tillfalle tillgang tillhorighet tillit tillskott tillstand tillsyn tilltrade timma timme tina tingsratt tiotal
        tippa titel tjanst tjanstefel tjockis toa toalett toapapper tobak tolerans tomat tomte ton torg torka torp
        tortyr tour tra tradgard tradition trafik trafikolycka tragedi trailer trampa traningspass traningsvark
        transparens transport trappa trask trauma trea tredjedel trend trick trilla trio trollkarl trosa trots
        trotthet trovardighet trubbel trupp trust trygghet tuberkulos tugga tumme tunnel tunnelbana tur turism turne
        tusan tusen tuta tvaa tval tvattmaskin tvekan tvivel tweet tycke tyda tydlighet tyg typ tystnad ubat uggla ugn
        ull ultra umgange undantag undergang underhalla underklader underlag underlage underskott underverk undvika
        ungdom union universitet universum uns uppbyggnad uppfinna uppfostran uppgang uppgift uppgorelse upphovsratt
        upplaga uppland upplevelse upplopp uppmuntran uppratthalla upprop uppsat uppsats uppsikt uppstandelse urin
        ursprung urval utanforskap utbrott utbud utbyggnad utbyte utesluta utflykt utga utgang utgangspunkt utgava
        utkik utlopp utmarkelse utrymme utsatthet utsikt utskott utslapp utspel uttag uttryck utvag vaccin vacka vag
        vagg vagina vagn valdsbrott valdta valdtakt valfard valfrihet valgorenhet valresultat valsignelse valstand
        valuta vanda vanilj vaninna vansinne vanskap vantan vapen varannan vardag vardagsrum vardcentral vardegrund
        vardighet vardnad vardpersonal varelse variation varld varldsbild varldsklass varldsrekord varme varnplikt
        varuhus varumarke vatten vattendrag vattenfall vattenkraft ved vegetarian verb verkan verklighet verksamhet
        verkstad verktyg vers version veta veteran veterinar vetskap video videoklipp vidta vika vikarie vikt viktoria
        vila vildsvin vilja villa vin vind vindkraft vinna vinst vintertid vinyl virke virus visdom vision vistelse
        visum vitamin vitlok vittne vittnesmal vodka volym vykort web webb webbplats webbsida weekend western wiki
        workshop yoga yoghurt yrke yta yxa zombie zon zoo
        """,
    ),
}
"""By language: adjectives as they stand before a thing in the nominative, and such things."""

DONE: dict[str, str] = {
    "cs": """
        ale ano bal bala bale bat byt coz dal dam date design email jako jest jet kam klade meri mit musi napis nase
        nese nest nic nimi osm pad pada pak pet projet sedel sel sla stal stat staty tak take tema ten tom top toto
        tri vari varit vase vedel veri vest vis voli
    """,
    "da": """
        alt bad bade bager bande baner bar bed bide blinker bod bokser bomber booker bor brod bunker date designer
        dette drab driver drives end ende ene flod flode flog for gambler giver gives glide god gol grad guide guides
        ham hamlet hang haste hjalp holder hopper hug intet jode kaste keder kilde koder kom kommende koster kun lade
        lader lager laser led legende lever lider liste lod lofte lover luger made malet mand marker melde men mens
        mit mod mode naer nod nos note okay onde over pander pines planter potter rand red render rev rider rives rog
        sad sang seks ser set shopper sine sit slap slaver slides slipper som spade spores sprak stammer store stred
        stride svaret tag tanker til timer times trapper trues ved vender vente ville
    """,
    "de": """
        abschnitt ach acht achten allen andern anhalt antwort arbeit arte ass auftritt band bat bei beispiel bericht
        berichtete beschaftigte bestatigte bestimmte besuchte bett bezeichnete bildet bis bitte blut bog boot braut
        dank dass date dich dienst dort dritte dritten durchschnitt einen einige einigen eins eintritt elf ende
        entdeckte entwickelte erfolgte erhalt erhohte erkannte erklarte erreichte erzahlte erzielte etwas fahrt flirt
        flucht funfte gebiet gehen gehorte gerade gerat gestalt gilt gott gross grosse grub gut habe haben haft half
        halt halte hast hat hatten haut heft hing hoch ich interessiert jahr kam kann karte kette kommen konnen lag
        lang last liste litt lud machen macht mal manche markt mass mehr meinen mensch miete mir mit mittel niemand
        oder ordnung ort planet post punkt quote rang rat rate recht riet route rund sache sang schicht schlacht
        schluss schon sein seiner sicht sie sieben solche soll sondern spurt stand start stift studierte suche sucht
        tag tagen tat teil test text texte ticket trat tritt tun tust uhr uns unterricht update verbot verdienst
        verletzte versichert versuchte verwandte viel vierte wand war ware wart warte weg wen werden wette wie wies
        wir wissen wohl wollen zeit zuruck zwanzig zwolf
    """,
    "es": """
        accede analiza angular anime aun base basta baste breve cargo cena cesar circular cobra coincide cola comer
        concede conserve consume contraste corona costa creed dais dar daria debate decide decides deduce define del
        describe destine dia dice dices dira divide dolar dones dos echo elude era eras ese eso este figura firma
        firme flota forma forman formula fotografia fume giro grave gusto hare hay idea induce inscribe invade iran
        joda jode lava lean leen leer lei liga lucia mal mama marco mascara mate mato media meter militar mina mira
        mire mires more mover mucha muscular nos nota notar note nuclear opera pagan pagar para pare paris pase patina
        pesa pide pila pillar plasma poder preside presto presume procure produce protege pude reforma regale regular
        repose reproduce reside resume retire revise revolver rio robe rodeo sal sala saldo sale salen sali salto
        salve salvo sana sea seas sepa ser seria siga solar soles solo son sonar sos suma sumo surge tal ten tire tome
        total tras triangular tumba unos vale van vender ves veto vez vine vote
    """,
    "et": """
        aga anus ara asetus elama esine halas jatis jood kandis kas katis kola kompas kompis korpus kuts lasi levis
        loits loots lops luksus magasin mats moists moons needs nuts oppas osuma pages panes paris patsas pea peits
        petis pets pila pole poles pures saalis saama sattuma see servis soos sures suru taksis taps toos tramples
        vaits valmistus varas vests virus voids voima
    """,
    "fi": """
        ala alkuun alta anna asia asuu elan esi eteen etta jota keta koen kun loi milla mille mina minne minut missa
        muut ole palo pane saatan sadam sait sen silla sille silta sinne soin tee teen vai valia varaan varten vasen
        veda vie voit
    """,
    "fr": """
        accrue accrues accuse acquit active actives admire admirer adore adores adresse aide aides ait allee amplifier
        amuse amuses analyse analyses anime arrange arranges arrive arrives aspire assemble assure assures attend
        attends attire attires audience audiences aura avance badge badges balance balances bande bas base bases bat
        batons bats bloque bombe bon boucle bout boxer branche brave bravo bronze bruit bus but cache cadence cadences
        cadre camper capture captures car case cause causes censure censures charge charger charges choque chut chute
        cite code coexistent combat combats combine commence commences commerce commerces commissions communique
        compare compile compose comprise comprises compromis concurrence conserve conserves console continue converse
        correspond court creche creches dans data date dates debat debut depose deposes descend descends designer
        dessert dialogue diffuse diffuses dira dispense dispenser disperse dispose dispute dissuade distance distances
        divergent diverse divorce divorces dominant donna dormant dort dos dose double draper dresser dues dupe efface
        effaces elu emis empire encourage engage enquete enrage envisage envisages est etage etat etiquettes excite
        excuse existent expose face fatigue feint fete figure file filme finance finances finis fit fixer flatter fond
        fonds font force forces forge forges formule fraude fume fumes gage gages garanti garantie gorge gorges grave
        grille grimace grimaces guide guides harmonie hate haut hein hem hop hui hurler ignore ignores illumine image
        images imagine imagines impose improvise impute incite incline influence influences insistent inspire
        interesse interface interfaces interpose inverse inverses invite irons joint joints lance lances lecher leve
        lever liege lions lit love luis mais manga mania marge marine massacre massacres masse masses menace menaces
        mens ment mentions mets mille mince minces miner mise missions mit modifier monter mort motive nait neige nes
        non nos note nuance nuances nul oblige obliges observe offerte ole omissions opera oppose orange oranges ore
        organise outrage outrages page pages palette palettes par pare pars part parti partie pas passage passages
        passions permissions permit pete pigeons pipe piper pique pirate place places plains planter plaque plein
        pleura pliant plus point police polices porte porter pose poste poster precises premiere presse prime primer
        prise prises procure propose proposes protege proteges purge purges quelle rage rate ravage ravages rebut
        reclame rectifier redouble refuse regale regie rejoins remis remit rend rends reporter repose repris reserve
        retire retour retrace rive rives romances sache sait sans sauce sauces saute sautes sein sens sent serie
        servant sieges silence silences singe singes soit solder sombre sombres sonne sort sorte source sources
        souvenir souvenirs statue stop structure submerge suicide suicides suit supervise suppose surface surfaces
        surprise surprises suspend tape taper tapes tasse tenant tend tendons tester tic tint tire ton torture
        tortures trace traces trait traits transformer transit transmissions transpose traverse traverses tremble
        trembles triple triples uni uns urgent urine urines variant verge verges vers verse via vignette vignettes
        vire vis visa vise voie voit vomit vote voter votes voyage voyager voyages
    """,
    "hu": """
        add ala all annak bal ban bar ben ego eso fel fer fest fog forro fuss hal hall hallo halo halt hamar hat hiv
        hol hurra ide jar jon jott kap kapott kell kello ken kent ker kin kit kolt koti kozel kuld kulon lat lett lott
        mar mast ment mer minek mit mogul most nokkel not nott oda ora par rad rak ram regen rola sir sok talan tar
        tart ter teren tol tor tort vag valo van varjuk vart vegen vert verve vet vett vitt volt zar zart
    """,
    "it": """
        accede acceso accumulate affare all animate ansa anticipate assume bagno bande basta batter ben bravo campo
        candidato cena cerco chi cima coincide collega comando compare complicate compose concede conclude congo
        considerate consolidate consumo convince coordinate cortesia cosa costa credo dal dalle danza dar dare date
        dato decide decorate dedicate deduce definite del delude dette dia dice dira disciplina dispose divide dove
        elenco elevate elude emanate emerge era esse essi evade evolve far fare fate figura fila filo fine finite
        firma fondo forma formato formula formulate fosse giro gusto hai idea illuminate illustrate incise indicate
        individuo induce integrate introduce invade isolate lei leva liberate lodi loro lotta lotto luna male mandate
        mandato marco marina matura media meno merito mesi mini minimi mira mise more motivate narrate nato non nota
        opera ora ordinate ore osi otto pare pari parla parlamento parti parto passi pesa piazza plasma poi porto pose
        possa posta prenda press presto presume privilegio produce programma propose punta punto quelle resa restate
        saldo sale sali salto salvo sana sara scherzo sede serve sistema solo sorge stabilita staccato stan star stare
        studio sul suo tali telefono tempo tenta terminate testo torni torno tra uni unite vai vale valuta van vari
        veda vene verso veste voli voti
    """,
    "lt": """
        abi ana bande bando bandys bega bei bus dar del dingo eis esi gamins gris jojo kada kas keli kilo kita kol kur
        kure kuri kyla lauk link mane mano mat mato men mena menu mesa meta mini mus muse nebe nes nesa net parodys
        pas pat pata prase puola ras rasa rase rodo sake sako sala sau savo suka supras taip taps tas tegu teko ties
        tik tol turi vai veda vel vird vis visa
    """,
    "lv": """
        ara audi bus but celo deg del dos dot edu esi est gust gut just klus kopa krita lasit laut lava lec lien list
        mac maks man mest mil min mini mira nav nes nesa nest par pat pie prasa prata pret rada raud sak saks saku sap
        sit skita stav tak taps tic tik top tur turi vai vara varat vares vari ved veda vel vero vest vests vilks vis
    """,
    "nb": """
        arsmote arter bad bade ballet band baner banker banner bar bet binder bite biter ble blinker bokser bomber
        booker bor boter brot bunker bunter bur date deg dette dopes dresser driver drives drop eit ende ene falt far
        fete finger flot folk for forsvar forte fyr gambler games glitter god gol guide hacker hamlet hang hate hater
        heller helvete hjalp holder hopper kaller kamper kar kaste kate klar koder kom kommende koster kun kutter
        kvarter lade lage lager lang laser late led leier leste lever lider lik like liste liter lod lofte logger lot
        lover makt marker melde men mens mer mest miner mote mur naer narr neste not opp orde oss over pagar pakket
        par part parter piper planet planter plate pleier porter poste poster potter punkt rakk rant red rede rente
        rev rigger rives roller sag sang sant sees ser server sete setter shopper sikte sine sitt sked slaver slet
        slipper smell som spares spor spores stammer star start starter stilte stred stride strides super tanker taper
        tar teller tester tid til timer times titter tok tor torr trapper trat trener trues tur vant vares vart ved
        vek vekker vender vente vet ville vore
    """,
    "nl": """
        acht alias art bad band bart belt ben bent bericht bolt bond boot cast cement chat dart date deed droop erg
        event fit flirt floot fret fruit gedicht geen gericht gilt glom gold goot grant grot haar haat had halt hart
        heft heide hem hen hing hint hot internet jacht kaart kant kast kat kent kit kon kont kost kun kurt kust laat
        lag last lat legende licht lift loog lot lust maak markt mast mat matt meer men mist molk munt naar naast neem
        net niemand niks nut ook paar pakt parlement part pas past paste pelt permanent pest pit plant plat port post
        pot prees punt putt raket rat recht regent rent rest rond rook rot rust samen scant school shot sleep slot
        smart sport spot sprak sprint staat stal start test tilt tint tja troost uit update van vast vat vent verdacht
        vest vet via viel ving vol vorst want wart wat week wees weg werden wet wie willen wilt wit word
    """,
    "pl": """
        ach ale bac boi budowa cala dal dam gram ich ida ide jada jade jako jest lubi mieli mow musi nadal nazwa nic
        nimi nos nosic one pada pali pic plac pomoc przerwa radza raz rob sie soba stal stan tak ten trafic tym vol
        wie wypowiedz wyspa
    """,
    "ru": """
        вечер взгляд вид вода воина вопрос глаз год голос город дверь дом жизнь земля имя книга комната конец лет
        место минута мир москва народ нога ночь окно плечо путь работа россия рука ряд сила слово стол сторона страна
        улица утро час часть
    """,
    "sv": """
        akte allas anger bad band bar bet binder biter bor brot bus dans dar del delen driver drop elva era fann fars
        fick fiende flog flot for foster frys gas gloms god gol gora gott grips haft heller hiss hit just kakar kar
        klar knot kom kors kudde kunde lade lag lan laser lat latt led leds let lider lilla lod log loss manga mar
        marker mats men mer mest mina oss pagar pass pillar piper press puss ratt red res rev revs rider roar rot sade
        sag saga sagas sanker sas satter sent ser sex side sitt slet slipper slits slot small smog som stack stal
        stank star starks stora stred stress tander tanker tar tas tiger tips tolv trot val vander vann vara varas
        varit varje varken vart vek vilkas vill
    """,
    "uk": """
    """,
}
"""By language: things of another one, or of English, that somebody does there, or that join words."""

SMALL: dict[str, str] = {
    "cs": """
        a aby ale ani ano asi bez bude budou budu by bych byl byla byli bylo byly byt cas cela ceske chce chci ci cm
        co coz dal dala dalsi deti diky dnes dni do dobe dobre doma domu dva eu foto g ho hodne i jak jako jde je
        jeden jedna jeho jej jeji jejich jen jeste jestli ji jim jiz jo jsem jsi jsme jsou jste k kam kazdy kde kdo
        kdy kdyz ke km ktera ktere kteri kterou ktery kvuli let li lide lidi ma maji mam mame me mel mela meli mezi mi
        mista misto mm mne moc moje mozna mu musi muze my na nad nam nas ne nebo neco nej nekdo neni nez ni nic nich
        nikdo nikdy nim niz nove o od ok ona oni opravdu osob osoby p pak po pod podle pokud porad posledni pouze
        prace praha prave pred pres pri primo pro proc proste proti proto protoze prvni r rada rekl roce rok roku s
        sam same se sem show si stale stejne sve svou ta tady tak take taky takze tam ted tedy ten tento teto ti tim
        to tohle toho tom tomu treba tri tu ty u uz v vam vas ve veci velmi vic vice vsak vse vsechno vsechny vsichni
        vubec z za zase zde ze zit zivot
    """,
    "da": """
        af aldrig alle alt altid anden anders andet andre arbejde at bade bar bare barn bede bedre bedste behover big
        blev blevet blive bliver bor born brug bruge burde cm da dag danmark dansk danske de dem den denne der deres
        derfor det dette dig din dine disse dit dog du efter eller en end ende endnu ens er et eu fa faet far fik fin
        find finde fine flere folk for fordi forskellige forst forsta forste fra frem g ga gang gar general gerne gik
        give giver gjorde gjort god gode godt gor gore ham han hans har havde have hele heller helt hendes her hold
        hos hun hvad hvem hver hvis hvor hvordan hvorfor i igen ikke ind inden ingen jeg jo kan klar km kobenhavn kom
        komme kommer kun kunne land lange let lide lidt lige lille love m ma made mal man mand mange maske matte med
        meget mellem men mener mennesker mens mere mest mig min mindre mine mio mm mod nar ned nej nogen noget nogle
        nok nu ny nye og ogsa ok om omkring onsker op os over p pa paris passe r ret rigtig rundt sa sadan sag sagen
        samme sammen samt selv ser ses set show siden sidste sig siger sin sine skal skulle som sta stadig star stor
        store synes tag tage tager tak tal team tid tidligere til tilbage ting tre tror tur ud uden under vaere vaeret
        var ved vej vel vi via vil ville virkelig vis vores
    """,
    "de": """
        ab aber alle aller alles als also alt am an andere anderen anders auch auf aus bei beim bereits berlin besser
        beste bin bis bitte cm da dabei dafur damit dann das dass dazu dem den denn der des deutschen deutschland dich
        die diese diesem diesen dieser dieses dir doch dort drei du durch echt ein eine einem einen einer eines
        einfach einmal ende er erst ersten es etwas eu euch finde foto frau fur g ganz gar gegen geht general gerade
        gerne gibt gut hab habe haben hast hat hatte hatten heute hier ich ihm ihn ihnen ihr ihre ihren ihrer im immer
        in ins ist jahr jahre jahren jeden jetzt kam kann kein keine klar km komme kommen kommt konnen konnte land
        lange lassen leben m machen macht mag mai mal man mann mehr mein meine menschen mich mir mit mm moment muss
        mussen nach neue nicht nichts noch nun nur ob oder ohne ok p paris r sag sagen schon sehen sehr sei sein seine
        seinen seiner seit selbst show sich sie sind so soll sollte sondern sowie staat stadt star steht tag tage team
        u uber uhr um und uns unter us viel viele vielleicht vom von vor wahrend war ware waren warum was weg wegen
        weil weiss weiter wenn wer werden werk wie wieder will wir wird wirklich wo wohl wollen worden wurde wurden
        zeit zu zum zur zwei zwischen
    """,
    "en": """
        a about after again against all also always am an and another any are around as at back bar be because been
        before being best better between big born both but by can car come comment could day did do does dog down due
        during each end even ever every family fan far feel find fine first for found free from g game general get
        give go god going good got grand great had has have he help her here high him his hold home house how i if in
        into is it its just keep know land last let life like little long look love made make man many may me might
        mind mine moment money more most mr much must my need never new next no not now of off ok old on one only or
        other our out over own p paris part people place please put r really right said same say school sea second see
        set she should show since so some someone something star state still store such sure t take team than that the
        their them then there these they thing things think this those three through time to too two under up us use
        used very via want was way we well were what when where which while who why will with without work world would
        year years you your
    """,
    "es": """
        a acuerdo ademas ahora al algo alguien algunos ano anos antes aqui asi aun aunque bajo basta bien bueno cada
        casa caso ciudad como con contra cosa cosas creo cual cualquier cuando cuenta dar de debe decir deja del desde
        despues dia dias dice dijo dios donde dos durante el ella ellos en entonces entre era es esa ese eso esta
        estaba estado estan estar estas este esto estos estoy fin forma foto fue fuera fueron general gente gobierno
        gracias gran grande ha habia hace hacer hacia han hasta hay he hecho historia hoy ido km la las le ley lo los
        luego lugar mal manera mano mas mayor me medio mejor menos mes mi mientras mis mismo modo momento muchas mucho
        muchos mundo muy nacional nada nadie ni no nombre nos nuestra nuestro nueva nuevo nunca o ok oro os otra otras
        otro otros p pais para parece paris parte partido paso pero personas poco poder por porque primer primera
        puede pueden pues que quien quiero r se sea segun ser sera si sido siempre sin sino sistema sobre solo son soy
        su sus tal tambien tan tanto te tener tengo ti tiempo tiene tienen tipo toda todas todo todos trabajo tres tu
        un una uno unos va vas veces ver verdad vez via vida viene visto voy y ya yo
    """,
    "et": """
        aarde aares aarest aastati abil aga ah aina ainiti ainult ajal ajaldi ajel akki akuraat alailma alasti alatasa
        algselt algul all alla alles allpool alt ammugi ammuli ammust angroo ara arevil arevile argsi arkvel arkvele
        arust arvel arvelt asemel asemele asja astmeti aukus ausalt ausasti auvaart avakasi avakil avali avasui
        avasuli ealdasa eales ealeski edasi edukalt eel eeli eelpool eemal eemale eemalt ees eeskatt eespool eest
        eetsi ega egas ehk ehkki ei eile eimiski einoh eks ekstra elevil elevile elik enam enda enese enne ennist ent
        ep eraldi eriti esialgu esile esimene esiteks esiti esmalt et ette franko grupiti hadasti hajali hajevil hakul
        hange harakil harali harevil harkis harva harvem hasti heaks hetkiti hilja hiljem homme hoogvel hoopis hooti
        hukas hulgas hulgast hulgi hulgiti hulka huupi huva iga igapidi igasugu igati igauks ihuuksi iial iialgi ikka
        ikkagi ilma ilmaski ilmselt ilmsi ilmsiks ilusti imevahe irevil irevile irvakil ise iseenda isekalt iseoma
        isepai isepidi isikuti istukil istuli ja jaa jae jah jaitsi jalas jalga jalgsi jalil jalile jalle jallegi
        jaluli jalus jaoks jaoti jarel jarele jarelt jarjest jarsku jarsult jokk jokki jokkis jole jolli jollis jommi
        jonksti jooksul joul jouluti ju juba jube juhuti julgelt julmalt jupiti just justkui juurde juures juurest ka
        kaela kaes kaest kah kaheli kaheti kahjuks kahku kahkvel kaigus kakras kaksi kaksiti kalkvel kallal kallale
        kamul kannul kantsti kaotsi kaotsis kapakil kapukil kapuli kaputt kas kasitsi kasvoi katki katte kaua kauaks
        kaude kaudu kauem kaugel kaunis kaupa keeliti kehkvel keksti kelt kenasti kenus kenusse kergelt kes keset kesk
        keskel keskele keskelt keski kestel kihevil kihiti kihkvel kiirelt kikki kikkis killast kimpus kinni kipras
        kissi kissis kiuste klimpis klomdi kodunt koguni kohal kohale kohalt kohe kohevil kohkvel kohuli koige koigiti
        koik koikjal kokku kole koletu kolmati kolmeti kombel kooku kookus koordi kooriti koos koost kootsu kootsus
        kopsti kord korgele korgelt korpas korraga korraks korral korval korvale korvalt korvuti kovasti koverdi
        krapsti krassu krassus kubinal kuhu kuhugi kui kuid kuidagi kuidas kuigi kuis kuivord kujul kukakil kulge
        kulili kulitsi kuljeli kuljes kuljeti kull kullalt kullap kulul kumaras kumb kumbki kummuli kuna kunagi kunas
        kuni kuniks kuplas kus kusagil kuskil kuskile kuskilt kuspool kust kustki kuusi kuutsus labini lahedal lahti
        lahus laiali laialt laiguti laokil laokile las latsti lausa lehte lemmel libinal lidusse ligi liialt liiasti
        liiati liiga liikvel lodevil lohakil lohki loksti lommi lommis lompsti lonksti looja loojas loppi loppis lorri
        lorris losakil lotakil lounati ma maaratu maatasa maha maitsi man mant manu maoli marksa me meelest meie meil
        meritsi mida midagi mihuke miks millal milline mina mind minu mis misasi miski mislabi mispidi mistap misuke
        mitmes mitmeti mitte mitu moistu mojul molema molemad moneti moni mooda moodas moodi mossi mossis mu muide
        muidu muidugi muiste mujal mujale mujalt mul mulle mullu murtult must muude muudkui muul muuseas na naa nad
        nagi nagu nagunii naiteks najal najale najalt naol naoli naotsi napilt napsti nassu nassus natuke nauhti need
        neid nihu nihuke nii niigi niikaua niimitu niipea niipidi niisama niisiis niivord niksti nimel nimelt ninali
        ning ninuli nipsti nisuke noh nojal nonda nondaks norgus nous nurgeti nurgi nuud odavalt ohevil ohevile ohkagi
        ohtralt ohtuti oieli oieti oige oigesti oiti oled olen olgugi oli oma omaette omapai ometi ometigi on ons
        oositi ornalt osalt osas osavalt ositi otsaees otsast otse otsegu otseks otsekui otseti paeviti pahasti pahe
        paigal paiguti paiku paiste paitsi palju paljuke paljus paokil paokile paraku paralt parast paratu parem
        partsti peaaegu peagu peal peale pealegi pealt pehmelt pelgalt pereti perseli pesiti pigem piires pikali
        pikalt pikku pikuti pilgeni pilukil pimesi pinevil pinguli pisut pohjal poigiti poiki poikvel pole polvili
        ponevil pool poole pooleli poolest poolt pooltki posakil praegu praokil puha puhevil puht puhul puksata purju
        purjus puru puruks pusti raama raamas raames rahul rahule rajuvil rakkus rangelt rantsti rasakil raskelt ratsa
        raudus rihti riidu rikki rikkis rinnati rinnu rinnuli ripakil rippu risakil rohkem roobiti roogatu roostes
        ropusti ruhmiti rutem ruttu sa saadik saarane saatel saati sageli sajuti sakris sala salaja salajas salguti
        salkus sama samune samuti sassis seal sealt seas seast seda sedap sedapsi sedasi see seega seekord seelabi
        seep sees seesama seest seeule sekka seks selgelt selili selitsi seljali sellal selle selline selmet seltsim
        seni seniks senini seoses seotult sest sestap setu sihuke siia siiani siin siiralt siis siiski siit silmi
        silmili silmsi sinna sinnani sipsti sirakil sirevil sirukil siruli sisse sitasti siva sonutsi soojalt sootu
        sootuks sorakil sorgu sorgus sugu sugugi suhtes suikvel suisa sulitsi sunnil suviti suvitsi ta taamal taamale
        taamalt taas taatsi tagant tagasi tagi tahes tahtsi taiesti taitsa takka talviti tanavu tanini tanu taoline
        tapselt targu tarvis tasa te teadagi teel teie teine teisal teisale teisalt teisiti teist tema temake teoksil
        tervelt tihti toel toesti tohutu tollal tolli tollis tookord toona topelt torssi torssis tortis toruli totsti
        tottu touti treppis triiki tsipa tsipake tudule tukati tuksi tuksis tunniti turri tuttu uha uhe uhes uheselt
        uhest uhetasa uheti uhiselt uhkelt uhtaegu uhtakki uhte uhtigi uhtlasi uhtpidi uks uksi uksinda uksiti ukski
        ukskoik ukskord uksnes ukspuha ulal ulalt uldse ule uleeile ulejala ulekuti uleni uleoo ulepea ules ulesse
        uletsi uleval ulgvel ulimalt ulivaga ull ult uluall ulualla ulualt umber umbert umbes unarul unarule uniselt
        untsu untsus upakil upakile uppi uppis upris urvakil usna uuesti uurakil vaart vabalt vael vaevalt vaga vagisi
        vagusi vahe vahegi vahel vahele vahelt vahem vahetsi vaid vait vajaka valesti vallali valtel vanasti vanuigi
        vapralt vara varal varem vargil vargile vargilt vargsi varsti vast vastu veel veelgi veidi veidike vidukil
        viimati viltu vintis vist viuhti voistu vooriti voorsil vorra vurdi vurtsti
    """,
    "fi": """
        aika aikaa aikaan aikana aina ainakin aivan ajan ala alkaa alle antaa asia big cm edes ehka ei eika eivat eli
        en enaa enemman ennen eri esimerkiksi etta ettei eu haluaa han hanen hanet he heidan helsingin heti hieman
        historia hyva hyvaa hyvin ihan ihmiset ilman itse ja jalkeen jo joka joku jonka jopa jos joskus jossa jota
        jotain joten jotka juuri kai kaikki kaksi kanssa kautta kayttaa kerran kertaa kiinni kiitos km koko kolme
        koska koskaan kuin kuinka kuitenkin kukaan kun kuten kylla liian lisaa lisaksi me meidan meilla menee mies
        mika miksi mina missa mista mita mitaan miten mm mukaan mukana mutta muun muuta muuten myos n nain nama
        nayttaa ne new niiden niin niita noin nyt oikein ok ole olen olet olevan oli olisi olivat olla ollut on onko
        osa ottaa ovat p paljon pitaa pitaisi pois r saa saada sai samalla se seka sen siella siihen siina siis siita
        silla silloin silti sina sita sitten suomen suomessa suomi t taalla taas tahan tai takia talla tama taman
        tanaan tassa tasta tata tehda tekee teki tieda todella toi toinen tulee tuli tuo usein uuden uusi vaan vahan
        vai vaikka vain valilla varmaan varmasti vastaan vie viela viime voi voidaan voisi voit vuoden vuonna vuotta
        yhdessa yhta yksi yli
    """,
    "fr": """
        a ai ainsi aller alors annee annees ans apres as au aussi autre autres aux avait avant avec avoir beaucoup
        bien bon bonne c ca car cas ce cela ces cet cette ceux chez chose ci comme comment compte contre cours d dans
        de deja demande depuis des deux dire dit doit donc donne dont du elle elles en encore entre est et etait etat
        ete etre eu faire fais fait faut fin fois francais france g general gens grand grande histoire homme ici il
        ils j jamais je jour jours juste km l la le les leur leurs long lui m ma mai mais mal me meme merci mere mes
        mieux mis mm moi moins mois moment mon monde mort mot n ne ni nombre nos notre nous nouveau nouvelle ok on ont
        ou oui p par parce paris part partie pas passe pays pendant personne petit peu peut peux place plus plusieurs
        politique pour pourquoi premier premiere prendre pres puis qu quand que quel quelques qui quoi r reste rien s
        sa sais sans se second sera ses si soit son sont sous suis sur t temps toi ton toujours tous tout toute toutes
        travail tres trois trop trouve tu un une va vas vers veut via vie viens ville voir voit votre vous vraiment vu
        y
    """,
    "hu": """
        a ahogy ahol akar aki akik akkor ala alatt all altal amely ami amikor amit annak annyira arra az azert azonban
        azt aztan ban bar be ben benne bent biztos budapest cimu cm csak de ebben edes egesz egy egyik egyszer egyutt
        el eleg ellen elo eloszor elott elso ember emberek en ennek erre es este eu ev eves ez ezek ezen ezert ezt
        ezzel fel fele fog fontos g ha hanem harom hat heti hogy hogyan hol hozza ido igen igy illetve ilyen inkabb is
        itt jo jobb jobban jol kell kellett kene ket ki kicsit kis km koszonom kozott legjobb legnagyobb legyen lehet
        lenne lesz lett love ma magyar mai majd mar mas masik masodik meg mellett mert mi miatt miert mikor milyen
        mind minden mindenki mindent mindig mint mit mivel mm mondta most mr nagy nagyon nap ne nehany neked nekem
        neki nelkul nem new nezd nincs noi nok o ok oket old olyan ora os ot ott p part pedig persze r ra rossz s
        sajat sem semmi show sok soran star szep szerint szerintem t tag talan te teljes teljesen tenyleg tobb tok
        tovabb tudja tudom tul ugy uj ujra utan utolso vagy vagyok vagyunk valaki valami valamint valo van vannak vele
        vissza volna volt voltak world
    """,
    "it": """
        a abbiamo ad agli ai al alla alle allora altre altri altro anche ancora anni anno aver avere aveva bar basta
        ben bene c casa caso che chi ci cio citta cm come con contro cosa cose cosi cui d da dai dal dalla dalle degli
        dei del della delle dello detto deve di dice dire donne dopo dove due durante e ed era erano essere fa far
        fare fatto fin fine fino forma forse fosse foto fu g gente gia giorni giorno gli gran grande grazie ha hai
        hanno ho i il in invece io italia km l la lavoro le li lo loro lui ma mai mani mano me medio meglio meno
        mentre mi mia mio modo molto momento mondo ne nei nel nella nelle noi non nostro nuovo o oggi ogni ok oltre
        ora oro p parte per perche pero persone piu po poco poi prima primo proprio puo qualche qualcosa quale quando
        quanto quel quella quello questa queste questi questo quindi r sai sara sarebbe se secondo sei sembra sempre
        senza sera show si sia siamo sino sistema so solo sono sotto sta star stata state stati stato stesso storia su
        sua sul sulla suo suoi tal tanto team tempo ti tipo tra tre troppo tu tuo tutte tutti tutto un una uno va
        vedere vero vi via viene visto vita voi volta
    """,
    "lt": """
        ant apie ar arba as atrodo be bei bent bet beveik budu bus buti butu buvo cia cm d dabar dalis dar darba darbo
        darbu daug daugiau daznai dazniausiai deja del diena dienas dienu esi europos forma g gal gali galima gerai gi
        i iki ir is jam jau jav jei jeigu ji jie jiems jis jo jog jos ju juk jums juos jus jusu k kad kada kai kaip
        kalba kam karta kartu kas kauno kiek kita kiti kitu km ko kodel kol kulturos kuo kur kuri kuria kuriame kurie
        kurio kurios kuris kuriu labai laika laiko laiku lietuva lietuviu lietuvoje lietuvos m man mano meno mes
        metais metu metus miesto mm mokyklos mums musu nama ne nebuvo nei nera nes net nieko nors nuo o oro p pagal
        pasaulio pasaulyje pat pati pats per pirma po prie pries proc puikiai r rajono reikia sake sako salies
        savivaldybes savo si sia siandien sios sis sistema su t ta taciau tada tai taigi taip tam tapo tarp teises ten
        tie tiek tiesiog tik tikrai tipo todel tokia toks toliau tos tris tu tuo tuomet turejo turi uz val valstybes
        vandens veikla vel veliau vien viena vienas vienu vieta vietas vietu vilniaus vis visa visada visai visas visi
        visiskai viskas visu visus yra zemes zinoma zmogus zmones zmoniu
    """,
    "lv": """
        ar ari atkal bet bez biezi bija bijis bus but butu cela cik cilveki cilveks cilveku citu cm dala darba darbu
        darit daudz dazu diena dienas dienu divas doma domu eiropas es esam esi esmu forma foto g gada gadu gadus gan
        iela iespejams iet ir ja jau jo jums jus jusu ka kad kada kads kadu kam kapec karta kas katru kaut km ko kopa
        kur kura kuras kuri kurs kuru laba labak labi lai laika laiks laiku latviesu latvija latvijas lidz liela
        lietas lietuva loti ludzu maja majas man mana mani mans mes mm mums musu nama nav ne neka nekad nekas neko
        nevar neviens no noteikti notiek notika novada nozime nu otra otras otro p paldies par paris pasaule pasaules
        pat pati patik pats pec personas pie piemeram pilsetas pirma pirmo pirms pret protams proti r rada reizi riga
        rigas sai saja saka sava savas savu seit sevi si sis sistema so sodien spele speles sporta starp t ta tacu tad
        tada tads tadu tagad taja tam tapat tapec tas tev tevi tie tiek tiem tiesam tiesi tik tika tikai to tomer tos
        tris tu tur un uz vai vairak vairs vajag valoda valsts var varbut varetu vel vien viena vienas vienkarsi
        vienmer viens vienu vieta vietas vietu vina vinam vinas vini viniem vins vinu visa visai visas visi visiem
        viss visu visus zemes
    """,
    "nb": """
        a akkurat aldri alle aller alltid alt andre annet at av bade bare barn bedre best beste blant ble bli blir
        blitt bor bort bra bruke burde cm da dag danmark de deg dem den denne dere deres derfor det dette din dine
        disse ditt du eller en enn er et etter eu fa far fatt feil fikk fin fine finne finnes flere folk for fordi
        forst forsta forste fra fram frem ga gang gar gi gikk gir gjennom gjor gjorde gjore gjort god gode godt ha
        hadde ham han hans har hele heller helt her hold hos hoy hun hva hvem hver hvis hvor hvordan hvorfor i igjen
        ikke ingen inn jeg jo jobb kan kanskje klar km kom komme kommer kunne land lange lenge lett like liker lille
        lite litt ma mai mal man mange mann matte med meg mellom men mener mennesker mens mer mest min mindre mine
        mitt mot mulig mye na nar ned nei noe noen nok norge norsk norske ny nye og ogsa ok om onsker opp oslo oss
        over p pa paris passe r rett rundt sa saker samme sammen samt satt seg selv ser sett si siden sier sin sine
        siste sitt skal skulle slik som sta stadig star stor store sverige synes ta takk tar tatt team tid tidligere
        til tilbake ting tok tre trenger tror tur under ut uten vaere vaert var vart ved vel veldig vet vi via viktig
        vil ville virkelig
    """,
    "nl": """
        aan aantal al alle alleen allemaal alles als altijd andere anderen anders ben bent best beste beter bij binnen
        cm daar dag dan dat de deel denk deze die dit doen doet door drie dus echt een eens eerste eigen elkaar en er
        erg eu even foto g ga gaan gaat geen gemaakt geven gewoon god goed goede grote haar had heb hebben hebt heeft
        heel hele help hem het hier hij hoe houden huis hun iedereen iemand iets ik in is jaar je jij jullie kan keer
        kinderen km kom komen komt krijgen kunnen kunt laat laatste land lange last laten leven m maakt maar macht mag
        maken man me mee meer mens mensen met mij mijn mis misschien mm moet moeten moment mr naam naar nam nederland
        net niet nieuwe nodig nog nooit nu of ok om omdat onder ons onze ook op over p plaats premier r samen school
        show snel sta staan staat stad steeds t te team tegen ten terug tijd tijdens toch toe toen tot tussen twee u
        uit uur uw van vanaf veel vele ver verschillende via vind vinden volgens voor vrouw waar waarom want waren was
        wat we weer weet weg wel werd werden werk weten wie wij wil willen worden wordt zal ze zeggen zegt zeker zelf
        zich zie zien zij zijn zit zo zoals zonder zou zullen
    """,
    "pl": """
        aby albo ale ani bardziej bardzo beda bede bedzie bez bo by byc byl byla byli bylo byly chce chodzi chyba ci
        cie ciebie cm co cos coz czas czasu czy dalej dla dlaczego dlatego dni dnia do dobre dobrze dom domu duzo dwa
        dzieci dzieki dzien dzis g gdy gdzie go historia i ich innych jak jaki jakie jako jeden jedna jednak jego jej
        jesli jest jestem jestes jeszcze juz kazdy kiedy kilka km kraju kto ktora ktore ktorej ktory ktorych ktorym
        ktorzy ktos lat lepiej lub ludzi ludzie ma maja mam mamy masz mi mial miec miejsce mm mnie moc moga moge moj
        moja moje moment mowi moze mozna mu musi my na nad nam naprawde nas nawet nic nich nie nigdy nikt nim niz o od
        ok ona one oni oraz osob osoby p partie pierwszy po pod podczas polsce polski potem prace pracy premier proste
        prostu przed przez przy r rada raz razem rok roku rowniez rzeczy sa sam same sie siebie sobie sposob stad
        stanie strony swoje ta tak taka taki takie takze tam te tego tej temu ten teraz tez to troche trzeba tu tutaj
        ty tych tylko tym u w we wiec wiecej wiele wiem wlasnie wszyscy wszystkich wszystkie wszystko wtedy z za
        zawsze ze zeby zostal zycia zycie
    """,
    "ru": """
        p а б без более больше будет будут бы был была были было быть в вам вас ведь вместе во вообще вопрос вот
        времени время все всегда всего всем всех вы г где год года году да даже два дело день деньги для дня до должны
        дома других думаю его ее ему если есть еще ж же жизни жизнь за здесь знаю и из или им именно их к как какои
        когда конечно которая которои которые которыи которых кто лет ли лишь лучше людеи люди м между меня место мира
        мне много могу могут может можно мои мы н на над надо нам нас не него несколько нет ни никогда них ничего но
        новыи ну нужно о об области один однако одного около он она они от очень п первыи перед по под пока после
        потом потому почему почти поэтому при просто против р работы ради раз россии с сам своего своеи свои своих
        свою сделать себе себя сегодня сеичас сказал со спасибо стал сша так также такое такои там те тебе тебя тем
        теперь тех то тогда того тоже тои только том тому тот три тут ты у уже украины хорошо хотя хочу чего человек
        человека чем через что чтобы эта эти это этого этои этом этот эту я является
    """,
    "sv": """
        aldrig alla allt alltid an anda anders andra annat ar att av aven bade bar bara barn basta battre behover blev
        bli blir bor borde bort bra da dag danmark dar de dem den denna deras dessa det detta dig din ditt dock dog
        dom du efter eller en ens ett eu fa fan far fatt fel fick fin finns folk for forst forsta fram fran g ga gang
        ganska gar ge genom ger gick gjorde gjort god gor gora ha hade haller han hans har hela heller helt hem
        historia hon honom hos hur i idag igen inga ingen inget innan inom inte jag jobb ju just kan kanner kanske
        klar km kom komma kommer kopa kunde kunna land lange last lat lite man manga manniskor maste med mellan men
        mer mest mig min mina mindre mitt mm mot mycket nagon nagot nagra nar ned nej ner ni nog nu ny nya och ocksa
        ok olika om omkring oss over p pa paris precis r ratt redan riktigt runt sa sadan sag saga sager saker samma
        samt satt sedan sen ser sett sig sin sina sitt sjalv ska skulle som sta stad star stor svenska sverige ta tack
        tag tal tar tid till tillbaka tre tror tur tva tycker under upp ut utan va vad val valdigt var vara varfor
        varit varje vart vem verkligen vet vi via vid viktig vilket vill ville visa vita
    """,
    "uk": """
        а або але б багато без би бо був буде будуть будь була були було бути більше в вам вас вже ви вона вони вот
        все всі всіх від віини він г год грн гроші да два де день для дня до добре дуже думаю дякую дітеи ж же життя з
        за завжди зараз знаю знову зробити зі и иого иому коли краще лише людеи люди м маиже мають має мене мені ми
        може можна можуть між міста місце н на навіть над нам нас не немає них ну нього ні ніж ніколи нічого о об
        області один одного ось осіб от п перед першии питання по потрібно потім при про просто проти під після р ради
        раз разом робити роки року років росіі році рік рішення с сам саме свою своі своіх себе серед собі сша
        сьогодні та так таке такии також такі там те тебе теж тепер територіі ти тим то тобі того тоді тои тому треба
        три тут тільки у уже украіна украіни украінськоі украіні участь хочу хто це цеи цього цьому ця ці час часу
        через чи чого чому шо ще що щоб щодо щось я як яка якии яких якого якщо які є і із ім інших інші іх іі
    """,
}
"""By language: small words that it is known by."""
