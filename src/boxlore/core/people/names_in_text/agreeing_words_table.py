"""Adjectives and things of many languages, folded; made by make_agreeing_words.py beside the tests.

Some 1,500 words a language (5,100 of Estonian) were taken, from dictionaries that have many times as many, and nothing
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
"""

AGREEING: dict[str, tuple[str, str]] = {
    "cs": (
        """
        americka americke americky anglicka anglicke anglicky bezna bezne bezny bezpecna bezpecne bezpecny bila bile
        bily blba blbe blby bohata bohate bohaty britska britske britsky byvala byvale byvaly cela cele celkova
        celkove celkovy cely cerna cerne cerny cerstva cerstve cerstvy cervena cervene cerveny ceska ceske cesky
        chytra chytre chytry cinska cinske cinsky cista ciste cisty ctvrta ctvrte ctvrty dana dane dany detska detske
        detsky divna divne divny dlouha dlouhe dlouhy dobra dobre dobry dokonala dokonale dokonaly dostupna dostupne
        dostupny dovolena draha drahe drahy druha druhe druhy dulezita dulezite dulezity ekonomicka ekonomicke
        ekonomicky evropska evropske evropsky filmova filmove filmovy fotbalova fotbalove fotbalovy francouzska
        francouzske francouzsky hezka hezke hezky historicka historicke historicky hodna hodne hodny hokejova hokejove
        hokejovy hotovy hrda hrde hrdy hrozna hrozne hrozny hruba hrube hruby internetova internetove internetovy
        islamska islamske islamsky italska italske italsky jaka jake jaky japonska japonske japonsky jasna jasne jasny
        jedina jedine jediny jednoducha jednoduche jednoduchy jina jine jiny jista jiste jisty kazda kazde kazdy
        klasicka klasicke klasicky konecna konecne konecny krasna krasne krasny kratka kratke kratky ktera ktere ktery
        lehka lehke lehky lidska lidske lidsky mala male maly mestska mestske mestsky mila mile mily minula minule
        minuly mlada mlade mlady modra modre modry mozna mozne mozny mrtva mrtve mrtvy muj nadherna nadherne nadherny
        narocna narocne narocny nebezpecna nebezpecne nebezpecny nejaka nejake nejaky nektera nektere nektery nemecka
        nemecke nemecky neuveritelna neuveritelne neuveritelny nova nove novy obcanska obcanske obcansky oblibena
        oblibene oblibeny obrovska obrovske obrovsky obycejna obycejne obycejny olympijska olympijske olympijsky opila
        opile opily otevrena otevrene otevreny pata pate paty pekna pekne pekny plna plne plny plzenska plzenske
        plzensky podobna podobne podobny politicka politicke politicky polska polske polsky poradna poradne poradny
        postovne prava prave pravy prazdna prazdne prazdny prazska prazske prazsky presna presne presny prijemna
        prijemne prijemny prima prime primy pripravena pripravene pripraveny problem prumerna prumerne prumerny
        rodinna rodinne rodinny ruska ruske rusky rychla rychle rychly sama same samostatna samostatne samostatny
        samotna samotne samotny samy schopna schopne schopny silena silene sileny silna silne silny siroka siroke
        siroky skutecna skutecne skutecny skvela skvele skvely slaba slabe slaby slavna slavne slavny slovenska
        slovenske slovensky slusna slusne slusny smutna smutne smutny soucasna soucasne soucasny soukroma soukrome
        soukromy spatna spatne spatny spokojena spokojene spokojeny spolecna spolecne spolecny spravna spravne spravny
        stara stare stary stastna stastne stastny stejna stejne stejny stredoceska stredoceske stredocesky sucha suche
        suchy svata svate svaty svetova svetove svetovy svobodna svobodne svobodny svuj system takova takove takovy
        technicka technicke technicky tezka tezke tezky ticha tiche tichy tvrda tvrde tvrdy tvuj typicka typicke
        typicky uplna uplne uplny urcita urcite urcity uspesna uspesne uspesny utera utere utery uzasna uzasne uzasny
        velika velike veliky velka velke velky verejna verejne verejny vesela vesele vesely vhodna vhodne vhodny
        vitezna vitezne vitezny vojenska vojenske vojensky volna volne volny vtipna vtipne vtipny vyborna vyborne
        vyborny vykonna vykonne vykonny vyrazna vyrazne vyrazny vysoka vysoke vysoky vyznamna vyznamne vyznamny zadna
        zadne zadny zajimava zajimave zajimavy zdrava zdrave zdravy zelena zelene zeleny zenata zenate zenaty zenska
        zenske zensky ziva zive zivy zla zlata zlate zlaty zle zly znama zname znamy
        """,
        """
        absence adresa advokat agent agentura akademie akce akcie aktivita album alexandr alfa alkohol analyza andel
        anglictina aplikace architekt architektura archiv areal armada asistent asociace atentat atmosfera audio auto
        autobus automobil bakterie balicek balik barva baterie batoh bazen beh bezpecnost bible bio bitva blazen
        blbost blesk blok boj bolest bomba bordel boure bracha bricho brod bronz bryle budoucnost buh business
        bydliste caj cas casopis celek centrum cesta cestina chaos chata chemie chlap chod chram chudak chvile chyba
        cibule cil cin cinnost cirkev cislo cit clen cokolada ctvrt cukr cyklus dalnice dama darek datum dav debata
        dech definice dejiny delegace demokracie demonstrace deprese dest dialog dik dil diskuse diskuze divadlo
        divize dluh dnesek dno doba dobro dohled dohoda dojem dokument domacnost domov dopad dopis dostatek dostupnost
        dotace drama dres drevo druh druzstvo dub duch duchodce dukaz dul duvera duvod dvere dvojice dvur edice efekt
        ekonom elektrina emise emoce energie epizoda euro existence expedice expert exploze fakt fakulta fanousek
        fantazie faze federace fenomen festival filozofie forum fotbal fotoaparat fotografie fraze frekvence fronta
        funkce galerie generace gol green guverner gymnazium hala havarie heslo historie hlad hladina hlas hlava hluk
        hmotnost hnizdo hodina hodinky hodnota hokej hora horko house hovno hrabe hrac hrad hradiste hranice hrbitov
        hrdina hriste hrob hromada hrozba hruza hudba hvezda idiot iluze infarkt infekce informace inspekce inspirace
        instituce inteligence interier invaze investice inzenyr inzerat islam jadro jazyk jeskyne jev jezero jidlo jih
        jizda jmeno kabat kafe kalhotky kalhoty kamarad kamen kamera kampan kanal kanalizace kandidat kapacita kapela
        kapitan kapitola kaple kariera karta katastrofa kategorie kauza kava kavarna kilometr kino klavesnice klavir
        klic klid klient klima klobouk klub kluk kmen knez kniha knihovna koalice kod kolac kolega kolegyne kolekce
        koleno kolo kombinace komedie kometa komise komora komunikace koncert konference konflikt konstrukce kontakt
        kontrakt kontrola koruna korupce kosile koule kousek kouzlo krabice kraj krajina kral kralovna krasa krava
        kreslo krev kridlo krize krk krok kruh kuchyne kufr kultura kurva kus kuze kvalita kyselina laborator lahev
        lecba legrace lek lekce letadlo letiste letoun levice lez lidstvo likvidace linie lipa listek literatura logo
        lokalita lov loznice lyze mafie magie majetek malir mandat mapa masaz maslo maso matej maximum mec medaile
        medved mesic mestecko mesto metoda metr mic milion milost miminko minimum ministerstvo ministr ministryne
        minulost mistnost misto mistr mladik mleko mlyn mobil moda moment mozek moznost mraz muz muzeum muzstvo mysl
        mzda nabytek nadace nadeje nadrz nahoda nahrada naklad nakup nalada nalez namestek napad napoj naramek narod
        narok narozeniny narust nasledek nastroj nastup nastupce nausnice navod navrh navsteva nazev nedostatek nehoda
        nemoc nemocnice nenavist nesmysl nezavislost noha notebook novela noviny nuda nuz nuzky obal obcan obchod obed
        obet objekt objem objev oblast oblicej obrana obrance obraz obrazek obsah obsluha obvod obyvatelstvo ocas
        ochrana odchod oddil odhad odkaz odmena odpad odpocinek odpoved odpovednost ohen okamzik okno oko okraj okres
        okruh okupace olej opak operace opice opozice oprava orchestr ordinace organismus organizace orientace
        original oslava osoba osobnost ostrov osud ovce ovoce pacient palac palivo pamet papez papir parada parkoviste
        parlament parta pasmo patro pece pecivo peklo penis penize personal pes pevnost pisek pisen pismo pistole pivo
        pivovar planeta plaz plocha plyn pobyt pocet pocit pocitac podil podnik podpis podpora podvod pohar pohled
        pohoda pohreb pohyb pojem pojistovna poklad pokles pokoj pokrok pokus pokuta policie politik polocas poloha
        polovina pomer popis poplatek populace poradek porno porod porota portret porucha postava postoj postup posun
        potencial potreba pout povest povinnost povrch pozadavek pozar pozemek pozice pozornost prace prach pracoviste
        pradlo prasek pravda pravice pravidlo pravo praxe prazdniny prd prdel prechod predchudce predmet predseda
        predsedkyne predstava preklad presun prevod prezentace prezident pribeh prichod pricina prijem prikaz priklad
        prilezitost princ princezna princip pripad priprava priroda pristroj pristup pritelkyne pritomnost procento
        proces prodej prodejce produkt prohra projekt projev prostredek protokol provoz prsa prst prsten pruh prukaz
        prumysl pruvodce pruzkum prvek psychologie ptak publikace publikum puda puvod radnice radost raj raketa
        rakovina rameno reakce rec recenze referendum region reklama rekonstrukce rekord reportaz reprezentace
        restaurace revoluce rezervace rezim reziser ridic rise riziko robot rodic roh role roman rostlina rozchod
        rozdil rozhlas rozhledna rozkaz rozmer rozpocet rozsudek rozum rozvod rozvoj rukavice ruze ryba rychlost
        rytmus ryze sada salat sance sankce sazba scena schodiste schopnost schuze sef sekce senat serial servis
        sestava seznam sezona sidliste sila silnice situace sjezd sklad skladba sklo skoda skok skola skrin skupina
        skutecnost slabost slava sleva slib slovo slunce slunicko sluzba smer smernice smich smlouva smrt smutek smysl
        snaha snemovna snih snimek socha software sokol souboj soucast soud soudce souhlas souper soused soutez
        souvislost spanek spekulace spolecnost spolek spoluprace sporitelna spousta sprava spravce spravedlnost sranda
        srdce stadion stanice stanoviste starosta status stavba stin stit stiznost strach strategie straz strecha
        stredisko strela stres stret stribro strih stroj strom strop struktura student stul stupen styk styl subjekt
        svatba svatek svaz svazek svet svetlo svetr svoboda syr tah technik technologie telefon televize telo tenis
        teorie teplo teplota terapie termin tesla tezba ticho titul tlacitko tlak tma tok touha tovarna trasa trava
        trest tretina trh tricko trida triko trocha tunel turnaj tvar tvorba tvurce typ ucast ucel ucet ucinek udalost
        uhel ukol ulice unie univerzita uprava urad uroven usek usmev uspech usta ustav utek utok utvar uver vaha
        vanoce varianta vchod vec vecere vecnost vejce velikost verejnost verze vesmir vesnice veta vetsina veznice
        vikend vila vina vira vitr vize vlada vladce vlak vlast vlastnost vlhkost vliv vlk vlna voda vojak volba
        vozidlo vrah vrazda vrchol vrstva vstup vtip vudce vule vune vuz vybuch vychod vycvik vyhoda vyhra vyklad
        vykon vylet vypis vypoved vyraz vyroba vyrobce vyrok vysledek vysocina vystava vystavba vystup vyvoj vyzkum
        vyznam vzdalenost vzduch vzhled vznik vzorek vztah zabava zaber zacatek zachod zadek zadost zahrada zajem
        zajemce zajezd zajimavost zak zakaz zaklad zakladna zakon zalezitost zaludek zamek zamer zapad zapas zapis
        zastupce zatez zaver zavislost zavod zazitek zaznam zazrak zbran zbytek zdroj zed zelenina zeleznice zeme zena
        zidle zisk zivot zivotopis zkusenost zlato zlo zlocin zlodej zmatek zmena znak znalost zodpovednost zpev
        zpevak zpusob zrak zrcadlo ztrata zvire zvuk
        """,
    ),
    "de": (
        """
        absolute absoluter absolutes ahnliche ahnlicher ahnliches aktive aktiver aktives aktuelle aktueller aktuelles
        allee alleer allees allgemeine allgemeiner allgemeines alte alter altes anderere andererer andereres arme
        armer armes aufgenommene beidee beideer beidees bekannte bekannter bekanntes bekommene bekommener bekommenes
        bereite bereiter bereites bewusste bewusster bewusstes blosse blosser blosses bosee boseer bosees coole cooler
        cooles deine deiner deines dere derer deres deutliche deutlicher deutliches deutsche deutscher deutsches
        diesere dieserer dieseres direkte direkter direktes dumme dummer dummes ebene ebener ebenes echte echter
        echtes ehrliche ehrlicher ehrliches eigentliche eigentlicher eigentliches eine einer eines einfache einfacher
        einfaches einigee einigeer einigees endliche endlicher endliches englische englischer englisches entfernte
        entfernter entferntes entschiedene erfahrene erfahrener erfahrenes erfolgreiche erhaltene erhaltener
        erhaltenes erneute erneuter erneutes ernste ernster ernstes erste erster erstes extreme extremer extremes
        falsche falscher falsches fertige fertiger fertiges feste fester festes freie freier freies frohe froher
        frohes fruhe fruher fruhes ganze ganzer ganzes geborene geborener geborenes gefahrene gefahrener gefahrenes
        gefallene gefallener gefallenes gefallte gefallter gefalltes gefundene gefundener gefundenes gegangene
        gegangener gegangenes gegebene gegebener gegebenes gehaltene gehaltener gehaltenes gekommene gekommener
        gekommenes gelesene gelesener gelesenes gemeinsame gemeinsamer gemeinsames genaue genauer genaues genommene
        genommener genommenes geradee geradeer geradees geschehene geschehener geschehenes geschriebene gesehene
        gesehener gesehenes gesprochene gesprochener gestorbene gestorbener gestorbenes getane getaner getanes
        getroffene getroffener getroffenes gewonnene gewonnener gewonnenes gewordene gewordener gewordenes gleiche
        gleicher gleiches gluckliche glucklicher gluckliches grune gruner grunes gute guter gutes harte harter hartes
        haufige haufiger haufiges hintere hinterer hinteres hoche hocher hoches ihre ihrer ihres interessante jedere
        jederer jederes jemande jemander jemandes keine keiner keines klare klarer klares kleine kleiner kleines
        knappe knapper knappes kommene kommener kommenes komplette kompletter komplettes kostenlose kostenloser
        kostenloses kurze kurzer kurzes lange langer langes langsame langsamer langsames laute lauter lautes leichte
        leichter leichtes linke linker linkes lustige lustiger lustiges meine meiner meines meiste meister meistes
        mittele mitteler mitteles mogliche moglicher mogliches naturliche naturlicher naturliches neue neuer neues
        niemande niemander niemandes normale normaler normales notige notiger notiges offene offener offenes perfekte
        perfekter perfektes personliche personlicher personliches plotzliche plotzlicher plotzliches positive
        positiver positives rechte rechter rechtes reiche reicher reiches reine reiner reines relative relativer
        relatives richtige richtiger richtiges rote roter rotes ruhige ruhiger ruhiges runde runder rundes schlechte
        schlechter schlechtes schlimme schlimmer schlimmes schnelle schneller schnelles schone schoner schones
        schwarze schwarzer schwarzes schwere schwerer schweres seine seiner seines seltene seltener seltenes sichere
        sicherer sicheres spate spater spates standige standiger standiges starke starker starkes stolze stolzer
        stolzes tagliche taglicher tagliches tatsachliche tiefe tiefer tiefes tolle toller tolles totale totaler
        totales tote toter totes unbedingte unbedingter unbedingtes unsere unserer unseres untere unterer unteres
        verbundene verbundener verbundenes verfahrene verfahrener verfahrenes vergessene vergessener vergessenes
        verhaltene verhaltener verhaltenes verlassene verlassener verlassenes verlorene verlorener verlorenes
        vermutliche vermutlicher vermutliches verstandene verstandener verstandenes vertretene vertretener vertretenes
        viele vieler vieles volle voller volles vollige volliger volliges vorhandene vorhandener vorhandenes wahre
        wahrende wahrender wahrendes wahrer wahres weisee weiseer weisees weisse weisser weisses weite weiter weites
        welchere welcherer welcheres weltweite weltweiter weltweites wenige weniger weniges were werer weres wichtige
        wichtiger wichtiges wirkliche wirklicher wirkliches wohle wohler wohles ziemliche ziemlicher ziemliches
        zufriedene zufriedener zufriedenes zusatzliche zusatzlicher zusatzliches
        """,
        """
        aachen abitur ablauf ablehnung absatz abschluss absicht abstimmung abteilung account achtung afghanistan
        afrika agenda agentur ahnung akademie akku akt aktion albrecht album ali alkohol allianz alltag altstadt
        amazon american amerika amsterdam amt anblick anderung android anerkennung anfang angabe angebot ankunft
        anlage anleitung anmeldung annahme anruf ansatz anschlag anschluss ansicht anspruch anteil antrag anwalt
        anwendung anzahl app apple arbeitsmarkt arbeitsplatz architektur archiv ard arena argentinien armee armut
        arsch arschloch artikel arzt asien aspekt asyl athen atmosphare aufbau aufenthalt auffassung aufgabe
        aufklarung auflage auflosung aufnahme aufregung aufruf aufstellung auftrag auge augenblick augsburg ausbau
        ausbildung ausdruck ausfuhrung ausgabe ausgang ausgleich auskunft ausland ausnahme ausrichtung ausrustung
        ausschuss aussicht ausstattung ausstellung austausch australien auswahl auszeichnung auto autobahn bach
        bahnhof balkon bank barcelona bargeld basel basis basketball bayern bearbeitung beck bedeutung bedrohung
        begegnung begeisterung begleitung begrundung behandlung behauptung behinderung behorde beispiel beitrag
        belastung belgien beratung bereich bern berufung beschluss beschreibung besetzung bestandteil bestatigung
        bestimmung beteiligung betreuung bevolkerung bewegung bewerbung bewertung bezahlung bezeichnung beziehung
        bezirk bezug bibel bibliothek bielefeld bilanz bildung bischof blatt blodsinn blue bmw bochum boden bonn bord
        borse borussia botschaft brandenburg brasilien braunschweig brd bremen brille brucke brunnen brussel brust
        buhne bund bundesliga bundestag bundeswehr bundnis burg burgerkrieg buro business cafe chaos chemie chemnitz
        chicago china christentum christus city college comic community csu cup danemark darmstadt darstellung datei
        datenbank datenschutz datum daumen dax ddr debatte definition demokratie deutschland dfb diagnose dialog
        diktatur diskussion distanz dollar donau dorf dortmund drama dresden duell duisburg dunkelheit duo
        durchfuhrung dusseldorf dutzend ecke edition effekt eigentum einblick eindruck einfluss einfuhrung eingang
        einheit einladung einrichtung einsatz einschatzung einstellung eintracht eintrag einzelfall einzug elite
        empfehlung energie energiewende engel england entdeckung entfernung entscheidung entstehung entwicklung
        entwurf episode ereignis erfahrung erfullung erfurt ergebnis erhebung erhohung erinnerung erkenntnis erklarung
        erkrankung erlaubnis erlebnis ernahrung eroffnung errichtung ersatz erweiterung erziehung ethik euro europa
        europe existenz experte fabrik facebook fahigkeit fahrrad fahrzeug farbe fassung faust fazit feld ferien
        festival feuerwehr figur finanzierung fitness flasche flug flugel flughafen flugzeug fluss fokus forderung
        formel forschung fortsetzung foto fotografie fpo fraktion franken frankfurt frankreich freiburg freiheit
        freizeit freude freundschaft frieden friedhof fuhrung funktion fussen galerie gattung gebaude geburt
        geburtstag gedachtnis gedanke gedanken geduld gefahr gefangnis gefuhl gegend gegensatz gegenstand gegenteil
        gegenwart gehalt geheimnis gehirn gelande geld gelegenheit gemalde gemeinschaft gemuse genannte genehmigung
        generation genuss geplante germany geruch gesang geschaft geschenk geschichte geschlecht geschmack
        gesellschaft gesetz gesicht gesprach gestaltung gesundheit gewalt gewerbe gewicht gitarre gluckwunsch goethe
        gottingen grad grafik gramm grand graz green griechenland grund grundlage grundschule grundstuck grundung
        gymnasium hafen hahn halbfinale halbzeit halfte haltung hamburg handbuch handlung handwerk handy haufen haupt
        hauptbahnhof hauptsache hauptstadt haushalt heidelberg heimat hektar held herkunft herrschaft herstellung
        hessen hilfe hinblick hinsicht hintergrund hinweis hitze hobby hochschule hochzeit hof hoffnung hohepunkt
        holland holle hollywood hose hotel house hund hurensohn hut hutte ice idee identitat indien industrie info
        inhalt initiative innenstadt innsbruck insel instagram institut integration intelligenz irak irland islam
        italien jacke jackson jagd jahr jahrgang jahrhundert jeans jerusalem jugend justiz kabel kaffee kalifornien
        kamera kampagne kampf kanada kanal kandidat kapitalismus kapitan kapitel karlsruhe karriere kasse kassel
        katalog katastrophe kategorie katze kenntnis kennzeichen kerl kfz kiel kim kindergarten kindheit kino kirche
        kleidung klima klinik klub knochen koalition kollege koln kombination kommentar kommission kompetenz konferenz
        konflikt kongress konig konkurrenz konstanz konstruktion kontakt kontext konto kontrolle konzept konzern
        konzert kooperation kopf krankenhaus krankheit kredit krise kritik kuche kuchen kuhlschrank kultur kumpel
        kunst kuss kuste landkreis landschaft landtag laptop laune lebensmittel leiche leidenschaft leipzig leistung
        leitung leute leverkusen lied lieferung linie linz literatur lkw logik london losung lowen lubeck luft
        luxemburg luxus madchen madrid magdeburg magen mainz malerei mannheim mannschaft marchen marketing marx
        maschine mathe mathematik mecklenburg mehrheit meinung meldung mensch menschheit merkel metall methode mexiko
        milch ministerium mischung mitglied mitleid mitte mitteilung mittelpunkt modell modus moglichkeit monat moral
        moskau motiv motivation motorrad motto munchen mund museum musik muslime mut nachbar nachricht nachweis
        nahrung nation natur nazi neubau neustadt news niederlage niederlande niveau nord norwegen npd nrw nurnberg
        nutzung oberflache objekt ofen ohr opel operation opposition ordnung organisation orientierung osterreich
        paderborn paket panik papst paradies parkplatz partei pech penis performance perspektive pfalz pferd pflicht
        pfund phanomen philosophie physik pizza pkw planung plattform pokal politik polizei porsche portugal potsdam
        prag prasentation praxis preussen prinz prinzip produkt produktion profi profil programm projekt propaganda
        protokoll provinz prufung psychologie publikum qualitat rand rande rassismus rathaus reaktion realitat
        rechnung rechtsanwalt redaktion regelung regensburg regierung regime region regisseur reichweite reihenfolge
        rekord religion republik respekt rettung revolution rezept rheinland richtung risiko rom rostock roth ruckkehr
        rucktritt rumanien russland saal sachsen saison salat salzburg sammlung samsung san satz schande schicksal
        schild schlange schleswig schluss schmidt schnee schokolade schonheit schrank schreibtisch schrift schulz
        schuss schutz schwanz schweden schweiz schwerpunkt schwert sed seele sehnsucht seite sekunde seminar senat
        sendung sicherheit sicherung siemens situation sitzung skandal sky smartphone sofa software solidaritat song
        sowjetunion sozialismus spanien spannung special spektrum spieltag spielzeit spielzeug spo sprache spruch
        sprung stadion stadt stadtteil standard standort statistik status steigerung stellung stern stiftung stil
        stimmung stoff storung strategie strauss street strom struktur studie studium stuhl stuttgart sud sudafrika
        supermarkt syrien szene tabelle tafel tagebuch tasche tatigkeit tatort tatsache technik technologie teilnahme
        telefon telekom tempel temperatur tendenz teppich teufel thema theologie theorie therapie thuringen tirol
        titel toilette toleranz tourismus traum trennung treppe truppe tubingen turkei turm ubergang ubernahme
        uberraschung ubersetzung ubersicht ubertragung uberwachung uberzeugung ubung uhr ukraine ulm umfeld umgang
        umgebung umsatz umsetzung umwelt umzug unfall ungarn ungluck union universitat universum unsinn unterhaltung
        untersuchung ursache ursprung variante veranderung verbesserung verbindung verbreitung vereinbarung
        vereinigung verfassung verfolgung verfugung verhaltnis verlangerung verletzung verlust vernunft verordnung
        versammlung versicherung versorgung verstandnis verteidigung verteilung verwaltung verwendung vielfalt
        vielzahl villa virus vogel volk vorbereitung vorbild vordergrund vorfeld vorlage vorschlag vorsicht
        vorsitzende vorstellung vorteil vortrag vorwurf wachstum waffe wahl wahlkampf wahnsinn wahrheit wahrnehmung
        wald ware warnung washington webseite welt weltkrieg werbung werkstatt westfalen wettbewerb whatsapp white
        widerspruch wien wiesbaden wirklichkeit wirkung wirtschaft wissenschaft witz woche wochenende wohnung
        wolfsburg wort wunsch wuppertal wurst wurttemberg wurzburg wut york zahlung zdf zeichen zeitpunkt zeitraum
        zeitschrift zeitung zelle zentrum zerstorung zitat zoo zufall zug zugang zukunft zunge zurich zusammenhang
        zustimmung
        """,
    ),
    "es": (
        """
        abierta abierto absoluta absoluto activa activo actual aleman alguna alguno alta alto americana americano
        amiga amigo amplia amplio animal anterior anti antigua antiguo anual argentina argentino artista azul baja
        bajo basada basado blanca blanco bonita bonito breve buen buena caballero cadena caliente capaz capital
        celular central cercana cercano cerrada cerrado china chino cientifica cientifico cierta cierto ciudadana
        ciudadano civil clara claro clasica clasico colectiva colectivo comercial compleja complejo completa completo
        comun comunista conjunta conjunto conocida conocido considerada considerado constante contenida contenido
        contraria contrario convertido correcta correcto corriente corta corto creada creado criminal cuarta cuarto
        cuidado cultural dada dado debida debido decidida decidido dedicada dedicado dejado demas derecha derecho
        diaria diario dicha dicho diferente dificil digital directa directo director dirigida dirigido disponible
        dispuesta dispuesto divertida divertido doble dulce dura duro economica economico editorial efectiva efectivo
        ejecutiva ejecutivo electoral electronica electronico elegida elegido encontrada encontrado enemigo enorme
        entendido entera entero enviada enviado escrita escrito espanol especial establecida establecido estatal este
        europea europeo evidente exacta exacto excelente exterior extra extrana extranjera extranjero extrano extrema
        extremo facil falsa falso familiar famosa famoso federal feliz final firme fiscal fisica fisico franca frances
        franco fria frio fuerte funciones fundamental futura futuro ganado ganador gay general genial global gran
        grande grave graves hecha hecho hermosa hermoso historica historico horrible humana humano ideal igual ilegal
        importante imposible impuesta impuesto incluida incluido increible individual industrial infantil inferior
        ingles inicial inmediata inmediato intelectual inteligente interesante interior joven judicial jugador junta
        junto justa justo laboral larga largo legal leido liberal libre limite linda lindo lista listo llamada llamado
        llegada llegado llena lleno llevada llevado loca local loco logrado madura maduro maestra maestro mal mala
        malo material maxima maximo mayor media medica medico medio mejor menor mental menuda menudo mexicana mexicano
        mil minima minimo minuto misma mismo moda moral movil mucha muchisima muchisimo mucho muerta muerto mundial
        municipal musical nacida nacido nacional natural necesaria necesario negra negro normal norte nueva nuevo
        objetiva objetivo obvia obvio occidental ocurrido oeste oficial oriental original oscura oscuro otra otro
        paciente parecida parecido particular pasada pasado pedido penal pensado peor pequena pequeno perdida perdido
        perfecta perfecto periodico permanente personal plana plano plaza plazo pobre poca poco politica politico
        popular poquito posible positiva positivo post potencial presentada presentado presente primera primero
        principal privada privado probable profesional profunda profundo pronto propia propio provincial proxima
        proximo publica publicada publicado publico puesta puesto pura puro querida querido rapida rapido rara raro
        real realizada realizado recibida recibido reciente regional responsable rica rico rock roja rojo rural rusa
        ruso salida salido salva salvador salvo santa santo secreta secreto seguida seguido segunda segundo segura
        seguro sencilla sencillo seria serio sexual siguiente similar simple social socialista sola solo suficiente
        sujeta sujeto superior supuesta supuesto sur tecnica tecnico temprana temprano tercer terreno terrible tomada
        tomado total tradicional tranquila tranquilo tratada tratado triste ultima ultimo unica unico unida unido
        universal usada usado usuario util utilizada utilizado vacia vacio vecina vecino venezolana venezolano venido
        verdadera verdadero verde vestida vestido vieja viejo vista visto viva vivo vuelta vuelto web
        """,
        """
        abogado academia acaso accion aceite aceptacion acta actitud actividad actuacion actualidad adaptacion adios
        adopcion adquisicion aeropuerto agencia agenda agricultura aire alarma album alcalde alcohol aldea alegria
        alianza alimentacion alma almuerzo alquiler altura alumno ambito amistad analisis anillo aniversario ansiedad
        antiguedad aparato aparicion apariencia apartamento apellido apertura aplicacion aprendizaje aprobacion arbol
        arena arquitectura arroz asamblea ascenso asco asesinato asiento asistencia asociacion aspecto asunto ataque
        atencion atentado audiencia ausencia auto autobus autonomia autoridad autorizacion avenida aventura avion
        ayuntamiento azucar bahia banda barco barra basura bateria bebida belleza biblioteca bicicleta bienestar boca
        boda bola bolivar bolsa bolsillo bomba borde bordo bosque botella boton brazo broma busqueda caballo cabello
        cabeza cabo cafe caja calendario calidad cama camara camion camisa camiseta campamento campana campeon
        campeonato cancer cancha cancion candidatura cantidad caos capa capacidad capacitacion capitalismo capitan
        caracter carcel caridad carino carnaval carne carro carta cartel casco castillo casualidad catedral categoria
        celebracion cementerio censo cerebro ceremonia certificado cerveza chica chico chiste chocolate ciclo ciencia
        cierre cifra cincuenta cine cinta circo circuito circulacion cirugia ciudad ciudadania clase clima coalicion
        cobertura coca coche codigo colaboracion colegio colonia columna combinacion combustible comentario comida
        comienzo comision comite compania comparacion competencia composicion comprension compromiso comunicacion
        comunidad concepcion concepto concha concierto conclusion concurso condicion conducta conexion conferencia
        confianza conflicto confusion congreso conocimiento consecuencia consejo consenso conservacion constitucion
        construccion contexto continuacion continuidad convencion convento conversacion convocatoria cooperacion
        coordinacion copa coraje corazon coro coronel corporacion correa correo corrupcion costumbre creacion
        crecimiento credito crema crimen crisis cristal cristo criterio cronica cuadro cuarenta cuello cuenca cuento
        cuerda cuerpo cuestion culo cultura cumbre cumpleanos cumplimiento cuota curiosidad dama debilidad decada
        declaracion dedo defensa deficit definicion delegacion delito democracia departamento dependencia depresion
        desaparicion desastre descripcion descuento desempleo desgracia desigualdad despacho destruccion detencion
        deuda diablo diccionario dictadura dieta dificultad difusion dignidad dios diputado direccion disco discurso
        discusion disposicion dispositivo distancia distribucion distrito diversidad division doce dominio dosis drama
        droga duelo dueno duque duracion eco economia edad edicion edificio educacion efecto ejecucion ejercicio
        elaboracion eleccion electricidad elemento eliminacion embajada embarazo emergencia emision emocion empresa
        empresario encuentro encuesta energia enfermedad enfoque enlace ensenanza entidad entorno entrada entusiasmo
        episodio epoca equilibrio escandalo escena escenario escritura escudo escuela esencia esfuerzo espacio espada
        espalda especie espectaculo espejo esperanza espiritu esquema esquina estabilidad estacion estadio estancia
        estetica estilo estrategia estrella etapa evaluacion evento examen excelencia excepcion exceso excusa
        existencia exito experiencia explicacion explosion explotacion exposicion expresion extension fabricacion
        facilidad facultad fama fantasia fase fecha federacion felicidad fenomeno feria festival fiebre fiesta
        filosofia finalidad financiacion finanzas fiscalia flujo formacion foro fortaleza fortuna foto frase
        frecuencia fruto fuego fuerza fuga funcion funcionario fundacion futbol gabinete galeria gama garantia
        garganta gasolina generacion genio geografia gestion gesto gloria gobierno gol golpe grabacion gracia grado
        granada grasa gravedad grupo guerra guitarra habilidad habitacion hacienda hambre herencia heroe herramienta
        hielo hierro hilo himno hipotesis historia historial hogar hoja hombre hombro homenaje horno hospital hotel
        huelga hueso huevo humanidad humedad humo ida identidad ideologia idioma iglesia ignorancia igualdad ilusion
        imagen imaginacion imperio importancia inauguracion inclusion industria infancia infierno informacion
        ingenieria iniciativa inmigracion innovacion inscripcion inseguridad inspiracion instalacion instancia
        institucion instituto instrumento integracion integridad inteligencia intencion intensidad interes
        intervencion introduccion invasion inversion invitacion isla jardin jefe jornada juego juez justicia juventud
        laboratorio lago lana lanzamiento lealtad leccion leche lectura legado legislacion lengua lenguaje leon letra
        ley leyenda liberacion libertad licencia liderazgo lima limpieza literatura llave lluvia lobo localidad locura
        longitud lujo luz madrugada magia magnitud maiz mapa maquina maravilla margen marido marketing materia
        matrimonio mayoria mecanismo medalla medicina medida memoria mensaje mentira mercado metodo metro miedo miel
        miembro mierda milagro millon mineria ministerio ministro mirada misa miseria mision misterio mitad mito
        modificacion monarquia moneda montana monton monumento moto movimiento muchacho muerte muestra mujer multitud
        mundo municipio muro museo musica nacimiento nacion nacionalidad naranja naturaleza nave necesidad negociacion
        nieve nino nivel norma noticia novela novio nueve obispo obligacion observacion ocasion oceano ocupacion
        oferta oficina oficio oido ojo ola onda opcion operacion oportunidad oposicion oracion organismo organizacion
        organo orgullo orientacion origen oscuridad paciencia pagina paisaje palabra palacio panico panorama pantalla
        papel paquete paraiso pared pareja parque partida partido pasaje pasaporte pasion pasta patio patria
        patrimonio patron pecado pecho pedazo pelicula pelota pena peninsula pensamiento percepcion perfil periodismo
        periodo permiso perro persecucion persona personaje personalidad perspectiva pescado peticion petroleo pez
        piano piedra piel pierna pieza piloto pintura placa planeta plata plataforma plato playa poblacion pobreza
        poema poesia poeta policia pollo polvo popularidad porcentaje portada portal posesion posibilidad posicion
        postura precio prensa preocupacion preparacion presentacion presidencia presion prestamo presupuesto
        prevencion princesa principio prioridad prision privacidad problema produccion producto profesion profundidad
        programacion promedio promesa promocion propaganda propiedad proposito proteccion protocolo provincia prueba
        psicologia publicacion publicidad pueblo puerta puerto puta queso raiz rama rango rato raza razon reaccion
        realidad realizacion receta recibo recorrido recuerdo recuperacion recurso redaccion reduccion referencia
        refugio regimen region regla reglamento regulacion relacion religion reloj rendimiento renovacion represion
        reproduccion republica reputacion residencia resistencia resolucion respuesta resultado resumen reunion reves
        revolucion rey riesgo rincon riqueza risa ritmo roca ronda ropa rosa rosario rostro rueda ruido ruta rutina
        sabiduria sacerdote sacrificio salario salon salsa sanidad satisfaccion seccion secretaria secretario
        seguimiento seguridad seleccion selva semana semestre seminario senal sensacion sentencia sentido sentimiento
        separacion servicio sesion sexo sierra siglo significado signo silva simbolo sindicato sitio situacion
        soberania sociedad socio sol soldado soledad solicitud solidaridad solucion sombra sonido sonrisa sorpresa
        sueldo suelo suerte sufrimiento suicidio superficie suspension tabla talento taller tamano tarea tarjeta tasa
        teatro techo tecnologia temperatura templo temporada tendencia tenis teoria terapia terremoto territorio
        terrorismo tesis tesoro testigo testimonio texto tienda tierra tipo tono tormenta torneo toro totalidad
        tradicion traduccion trampa tranquilidad transicion transmision tratamiento trayectoria tren tribunal tristeza
        turismo turno ubicacion unidad union universidad universo utilizacion vacaciones valencia valle variedad vaso
        velocidad venganza venta ventaja ventana verguenza victima victoria vida vidrio viento vigilancia villa
        violacion violencia virtud virus vistazo vivienda volumen voluntad votacion voz
        """,
    ),
    "et": (
        """
        ablas aegne agar ahas aher ahtake ainuke ainus ajalik alaage aldis algne alp alune ammune are arg argine
        arglik argne armas arukas asine auklik aulik auline aupull aurune aus aval avalik avar beez blond eakas ealine
        eavahe ebaaus edev edukas ehe ehtne eilne ekslik elev elus emalik emane endine epakas ere erk esmane eurone
        folk habras hadine hagus hahk halb hale halgas haljas hall hamar hamune harras harv harvik hatune hele hell
        hellik hepik higine hiir himur holbus holpus homne hoogne hoogus hoolas hore hork hubane hull hupik huplik
        huvak igav igerik ihar ihmjas ihnus ihulik ihusoe iidne ilane ilmlik ilus imal imar imelik irdne irvik isane
        isekas isukas jaane jabur jahe jahune jaik jaine jalane jale jalk jame jamps jarsk johker jonk joodik joonik
        joudik joukas juhm julm kabe kade kaesoe kahar kahe kahune kalane kaldne kale kalk kallak kallis kare karine
        karm karmas karsik karune kauane kaudne kaval keerd kehv keks kelm kelp kenake kesine keskne kibe kidur kihuke
        kihvt kile kilone kimar kime kindel kitine kitsas kitsik kiudne klaar klatt kloss kobe kobus koer kohe kohev
        kohn koikne kole korb kordne kore kork kosser kotjas kover krabe krants kreem krell kribal kriim krobe kuiv
        kuldne kulm kume kumer kups kurb kuri kurt kusene kuudik kuuene kuum kuune laadne labane ladvik lagane lage
        lahe lahine lai laisk laiuke laiune lame lamp lapane lapik lapsik laudne lausik lausk lehine lehtne lepane
        leplik lepne libe ligane lige lihane lihav lihtne liiane liigne liitne limane linane linlik lobus lodev lodine
        logane lohine loid loll lombak loomne loplik lopp lorts lotv luhike luider luine lumine lurr luune madal mage
        magine magus mahe maias maine maokas marg marune matlik mats matt meelas meelne meene mehine merine mesine
        metsik mihkel modern moeehe moekas monus moodne morn motlik mudane mugav muhe mukk muldne munane mure murune
        must muuk nagus nahkne nailik naokas naone napp narb narr narts narune nidus nigel nips nobe noder nogine
        nogus nohik nohune nokjas nome noobel noor nork noukas nukker nurkne nutune nuudne odajas odav ogajas ogar
        ohter ohtlik oksene oksine okslik omane ontlik oomine opakas orajas oranz osav otsene paat paene pahh pahur
        pahv paike paine paks paljas parane paras pasane paslik patune peaehe pealne peatne peen pekine pelk peps
        petis petlik pidev pidune pigine pikk piklik pikuke pilges pime pinev pingne pire pirts pisike pisuke plank
        plass plink podur pogus pohune poline ponev ponks ponts poolik poorne popp porine pouane prink proff pruun
        pude pudel pudev pudine pugal puhas puhev puhune puine pull punane punjas pustne puune rabal rabane rabe
        rabune ragane rahene rajune ramb rame rammus ramps ranine rank rapane raps rase rasune raudne reibas rekk
        renjas rikas risune rogane rohtne rohune roid rokane roobik roogne roomus roopne roosk ropane ropp rove ruljas
        rumal ruve sabar sabrik sage saiane sajane sajune saksik sale samane sant sapine sauene savine sealne segane
        senine siga sihker siidne siinne siiras siivas sile sinine sire sitane sitt sodine sogane soine soodne soodus
        sopane sorav sugune suine suline sulnis sume sumune supine suur suvine
        """,
        """
        aabe aabits aade aadel aaker aaloe aam aar aara aare aaris aas aasta aatom aazio abort absats absint absurd
        abt abtiss adal ader adru advent adverb adzaar aed aeg aer aeroob afaar afekt afgaan afiks afiss agaav agar
        agenda agens agent agin agoraa agu agul aguuti ahe ahel ahhaat ahing ahk ahm ahter ahv ahven aiakas aiatar
        aike aikene aimakk aine aines ainu airaan ais ajam ajastu aje aka ake aken akne akonn akord akt aktiiv aktiva
        aktsia aku akuut alaldi alang alasi aleuut alev alfa alfons alg alge alibi alk alkeen alkoov alleel alluur
        alotsa alpaka alraun altar altonn alune alvar alves amb ambra amet amfiib amfora amm amoob amort ampel amper
        ampiir amps ampull andam andunu ang angaar aniis ankeet ann anne anood anorak anskop antenn aort apard apats
        apeks apell aplomb apogee aprett aps apsat apteek arapp ardenn areaal areen areng arest aretis arganu argoo
        argoon arhiiv arhont ariett arikas arkaad arkaan arkel armee armuke armunu arn arokk aroom arp arrak arriti
        arseen arssin arst arstim artell artu aru arv arve arvuti asalea asbest ase aser asfalt asiaat asjake askees
        askeet aspekt ass astaat astang aste asteek astel aster astma asukas asula asuul atakk ataman atasee atlant
        atlas atlass atleet atoll atskoo aua auk aul aula auster auto auul avaar avang avanss avardi avarii avenuu
        avers aviett aviis avraal baaba baar baas bagi bai bajaan baksis bakter balokk balsa banaan bandzo bantu
        baobab barakk barbar bard barett barokk barter basaar basalt bask bataat batoon batuut beebi beeta beetel beez
        beibe bekaar bekarr bemoll bengal benss bentos berber berull besee bestia betoon bidee bingo binoom bisnis
        bitkii bitt bivakk blokk bluff boa bobi bodi boheem boiler bojaar boliid bonne bonsai bool boon bordoo boson
        boston botas brass bridz briis brioss britt bronh bronsa broom brulee bruto bubert buboon bukett buklee buklet
        buldog bulla bulvar buraan burger burka buroo burs burzui busman bussel butaan daalia daam daativ daina daktul
        damast dandi darg dattel debatt debiil debuut deebet deebit deemon deemos defekt dekaad dekaan dekk delikt
        delta demars denaar denim depess depoo derbi dervis deviis devon diakon diees dieet diiler diisel diiva diivan
        dinaar dinee diood diplom dipood dipool dipp dirhem disain disko diviis djakk dofaan dogi dogma doina dokk
        dollar dolman dolmen domeen doodz doos doping draama drahm draiv drapp drazee dredz dreen drell droog druaad
        druiid duaal dublee duell duett dunamo duo duool duss duubel duuma duun duus dzass dzaul dzemm dziig dziip
        dzinn dzoki dzonki dzott dzuudo dzuut eakas ebard ebe edel edikt eefeu eelis eepos eesel eeta eeter efekt
        egiid ehe ehis ehitis ehmes eideke einela ekker eklaar ekraan eksam ekseem eksiil eksinu ekuu elajas elamu
        elatis elling ellips elukas emakas emane embruo emfaas emiir emm emu enelas ennak ensuum eos eosla epee epohh
        epopoa eputis erak erakas erakla eramu erguti erim eritis erk erker ersats eru eselon esitis eskarp eskiis
        eskimo eskort esprii ess essee essiiv estamp esteet ester etaan etalon etapp etnos etrusk etui etuud eunuhh
        euro eurone eveen evenk faag faas faasan fagott fakiir fakkel faks fakt fallos fanatt farad farmer farss faun
        fauna fellah felukk fenkol fenool ferm fess feta fetis fiasko fiiber fiider filee filler finaal finess finn
        fistul fiting fjord flaam flaier flegma fliis flirt floks floora floot flopi flopp fokk foks fonduu foneem
        foobia foogt foolio foon footon fopaa forell forint fortis foto fraas frakk frees frents fresko friis frits
        frotee frukt fuajee fugass fuksia fulaar fulbe funk fuuga fuurer fuuria fuusal fuusis gaas gael gaid galeer
        gall gallon gallup galopp gameet gamma garaaz garant gaseel gasell gauss gautso gavott geel gei geim geisa
        geiser gemm genees genoom geoid gepard geront geto gibon gigant giid gild gini ginko gipuur gliia glogi gloss
        gneiss gnoom gnuu gondel gong goot gorl graan gramm greif greip grill grimm gringo gripp grisli grivna grogi
        grokk groot grott grunge grupp grups guaano guass gupi gursa guru haab haage haagis haak haal haamer haan
        haare haarem haav haavel habi hada hadron hagu hahk haige haigla haiku haip haire hais hakass hakk hakker
        halatt halg hali halin haljak halo halss halvaa halve hame hammas hamsa hamu hani hansa hant hantel hape harf
        harg hark harta haru hasart hasis haspel hatt haue haug haugas hausa hautis havi hea hedebo heeder heeros heie
        hekk hektar heli helin helk hellen helmes helves helvet henri herero hernes herpes herts hetaar hetero hetk
        hetman hevea hevi hibisk higi hiid hiile hiir hiis hilp himu hindu hinge hink hinne hipi hirm hirss hirv hitt
        hobe hobi hobu hobune hoiak hoid hoidla hoie hoige hoim hoise hoisk hoive hoki holjuk holm holopp holp holst
        homaar homo hong hoob hoog hool hoole hoone hoop hoor hoore hoorel hoov hoovel hopakk hord hornas hosta hostel
        hostia hotell huaan hubin hudi hudra huige huile hukatu hukk huljes hulk hulss humal humin humn hunt hunta
        hupak hupe hupits huraal hurm hurmaa huroon hurt husaar hutike hutt huud huue huul huumen huup huuve huuvis
        huvang huve huvi huvis ibeer ida ideaal idee idioom idioot idu idull ige iglu igrek iguaan iha ihk iibis iidol
        iil iileks iiling iiris iisop iive ike ikoon iks ila ilm ilme ilming ilu ilves imaam imago imar imidz immuti
        imu indeks indigo inerts infiks info ingel inguss ingver inin insekt intern inuit invar ioon ioota irin irv
        irve isake isane ishias islam issi iste istung itk iva ivake jaager jaak jaam jaanu jaanuk jaarak jaatis jahe
        jahm jaht jaide jakk jaks jakuut jalam jalats jalg jaluts jalutu jamb jamps jamss janes janki janku jant
        jaotis jaotla jard jarg jari jark jarl jarsak jarv jase jaspis jate jatis jatk jauram jeekim jeen jenka jeti
        jett jidis jobi jobin jobu jogi jogurt johv joig jokker joll jomin jomm jonks jonn joobnu joode joodu jooga
        jook joom joomar joot jootel joove jope jopp jorin jorjen joru jospel joud jouk juaan judin juha juhe juhis
        juhkam juhm juht jukola julk julla jumal jumbu jume junga junger junn junts juntsu jupats jupp jurta juss juts
        jutt juubel juudas juura juust juut juveel kaabas kaabe kaabel kaabu kaader kaadi kaak kaal kaamel kaamos kaan
        kaanak kaane kaanis kaanon kaap kaar kaard kaarel kaaren kaas kaater kaatet kaav kaba kabala kabard kabe kabel
        kabi kabu kabun kadett kadin kadri kadu kadunu kael kaenal kaer kaetis kaeve kaevis kaftan kagar kagin kagu
        kaha kahhel kahin kahing kahju kahk kahl kahm kahv kahvel kaif kaigas kail kaim kaiman kaimla kainer kainu
        kaisel kaiss kait kaitis kaive kajak kajakk kajut kakao kakk kaks kakuam kala kalasi kaless kalev kali kaliif
        kaljas kalju kalka kalkar kallak kalle kalli kalm kalme kalomm kaloss kalts kama kamal kamar kamass kambas
        kamber kamee kamin kamm kammal kamp kampol kamps kana kanal kanala kandam kaneel kanep kang kangas kanjon
        kankar kanne kannel kanton kantri kants kantu kanuu kanvaa kaos kapak kapard kapell kaplan kapo kapp kappar
        kapral kapron kapsel karaat karask karate karbe karbes karbis karbon kard kardin karg kargas kari karibu
        kariib karin karjak karje kark karm karma karman karn karner karp karr karree karri karss karst kart karter
        karts kartul karu karv kasahh kasarm kask kasn kass kassa kassia kasu kasuub kasv katarr katel katgut katis
        katk katki katood kats katse katt kauboi kaugas kaula kaun kaup kauri kauss kaust kava kaver kavern kebab
        keedis keefir keegel keel keeld keem keemia keerd keere keeris keerub keet keetel kefaal kefiir keha keigar
        keiser kekats keks kelder kelk kellu kelm kelme kelner kelp kelts kemps kenaff kepike kepp keps kera kere
        kerge kerss kese kess kest kesv ketas kets ketser ketsua ketsup kett khaan khaki khmeer kibe kiber kibu kibuts
        kida kidin kigin kihar kihin kihk kihn kiht kihu kihv kihvt kii kiide kiige kiiker kiiks kiil kiim kiip kiir
        kiird kiisel kiisk kiisu kiiver kiivi kikas kiki kiku kilbis kild kile kilg kilge kili kilin kilk kilp kilpla
        kilt kilter kilts kilu kimaar kimar kimber kimm kimmel kimono kimp kinge kink kinnas kinner kinnis kino kints
        kiosk kipp kipper kips kirg kiri kirin kirjak kirje kirka kirmas kirme kirn kirp kirre kirs kirsa kirss kirst
        kirts kirurg kirves kisk kisma kitarr kitoon kits kitt kittel kiud kiun kiust kivi kivike kivim klaas klahv
        klann klants klapp klass klats klaver kleep kleeps kleit klemm klibu klient kliima klikk klimp klint klints
        klipp klips klirin klisee kloaak klobin klomp klonks kloon klopp klops klots kloun klubi klugin klump klutt
        knihv kniks knopka koaala kobar kobi kobjas koblas kobra kobras koda kodar kodi kodu kodutu koelmu koer koeras
        koetis koger kogin koha kohi kohin kohort kohr koht kohuke kohv kohver koi koib koide koidis koiku koiott kois
        koit koiv koka kokard kokats kokett kokill kokk kokni kokott kokpit kolar kolask kolb kold kolgas kolin koljat
        koljee kolju kolk koll kolle kolli kolonn koloss kolp kolu kolumn koma komeet komet komii komin kommu komp
        kompra komps komu konar kong koni konjak konka konks konku konn konnak konsul konto kontra konts konvoi koobas
        kooda koodon kook kookon kool koola koold koolnu koolon koom kooma koome koomen koomes koonal kooner koopia
        koorem koosa kooste koot kopeer kopp koppel kopra kopt kopter koputi koraal koraan korall korb kordne kordon
        korgas korges kori korin korint korje kork korne kornet korp kortel korter korts korup korv kosk koskel kosmos
        koss kosser kosunu kotedz kotkas kotlet kott koturn kou kouss kouts kovasi kover kraabe kraad kraade kraal
        kraam kraan kraana kraap kraaps kraas kraat kraav krabi krabin krae kragin krahh krai kramm kramp krants krapp
        krasu kratt kreedo kreek kreem kreen kreeps kreis kreml kreool krepp kresla kress kribal kribu kribul krigin
        krihv kriim kriips kriis kriise kriket krill krimka krimps kriska kroaat krobi krobin krogin krohv krohva
        kroket krokii kroll kromps kronks kronu krooge krool kroom kroon kroonu kroot kross krudin krunn krunt krupp
        krupt krusa kruss kruup ksero kubar kube kubel kubjas kubu kude kudi kudu kufoos kugin kuhi kuhil kuhje kuhm
        kuhvel kuiv kuju kukal kukits kukk kukkel kula kulak kulbas kulden kulg kulgla kuli kulin kuliss kulits kull
        kuller kulles kulm kulp kult kulv kulvis kumin kumm kummel kummut kumnis kumokk kumoss kumu kuna kungas kunnis
        kunst kunts kupaaz kupar kupee kupits kuplee kupong kupp kuppel kupsis kupuur kuraas kurass kurb kurd kuree
        kurg kurii kurin kurk kurn kurss kuru kurv kusett kusiti kute kutis kuts kutsa kutsar kutse kutt kuu kuub kuul
        kuular kuuld kuulnu kuulo kuun kuunal kuunar kuunis kuup kuur kuuria kuus kuusk kuut kuvaar kuvar kuvoos
        kvadro kvant kvark kvart kvarts kvasar kvint kvoot laad laadne laag laager laam laama laan laap laar laas
        laast laats laava laba labak labu ladem ladin ladu laegas laeng laev lafett laga lagi lagin lagle laguun
        lahang lahas lahe lahi lahin lahing lahits lahk lahker laht lahter laid laide laige laim laine lainer lainu
        laip lakard lakei lakk laks lakuun lalin lamam lamang lambda lamee lamell lament lamm lammas landoo lank lanne
        lants laos lapats lapike lapp lapsaa laptuu larhv larin larm larv lasila lask lass lasso lateks latern latgal
        lats latu latv laube laud laudi laudis laug laugas laul lause lauter lauto lavass lavats leede leeder leedi
        leelis leelo leem leenis leepra leev legaat leheke lehis lehk lehm leht lehter lehtla lehv leib leid leigar
        leil lein leitse leitu lekaal leke lekk lelu lemb lemm lemma lemme lendla lendva leng lennuk leotis lepe
        leping lepp lesbi lesila lesk leu levila levinu levkoi liaan libe libell lible libu lidin ligu liha lihas lihe
        lihter lihv liide liider liides liig liige liiges liikva liilia liim liimes liiper liir liisk liiter liiv
        liivak lill lima limaan limb limbo limps limune limusk lina linask lindla ling linn linnak lint lipats lipiid
        lipits lipoom lipp liru lirva lita lito lits litt litter liud liug liusk livree ljaano ljoo lobu lodin lodu
        lodza loeng loetu loga logar logard logask login logo logu logusk lohang lohe lohi lohin lohis lohk lohn loht
        lohuke lohv loib loide loige loikam loim loit loits loiv lokaal lokats lokaut loke lokk loks lokse lokuti loll
        lombak lomp lonks lont lontu loo loode looder loodu loog loojak looke loom loomar loor loos loosk lootos loots
        loove looz lopnu lopp lops lorin lorts loru lotk loto loug louna loust lovi ludin luga lugem lugu luhis luht
        luhter luide luisk luke lukk lukra lumf lumi lumm lumpen lunk lunoid lupard lups lurin lurr lusi luts lutt luu
        luud luuk luul luule luumen luup luura luure luus luuser maa maadam maag maage maagia maakas maal maaler
        maania maara maare maatu mada madal madar madin madis madjar madu maffia magala mager magi magma magnet magu
        magun mahe mahis mahk mahl maht mahv maia maidel mailer maim maine mait majake makaak makett makk makra makro
        makse maksi malev malk malm malts mambo mamm mammi mammon mammut mamsel manala mandel mander maneer maneez
        mang mango manisk mannas manner mansak mansi mantel mantoo mapp mara marabu maral maran marasm margis markel
        markii marli marsa marss mart marter marul maser masin mastif masu masuut matas matk matsa mauk mauser meede
        meedia meel meem meene meeter meetod megaar mehike mehu meier meigas meiler meioos meisel mekk melanz melass
        meliss melon melu memo menaaz menhir menisk menuk menuu mergel mesila meski meson metaan metall metroo metsis
        mett mihkel miider miil miim miisu miiu mikron mikser miljoo mimoos mink mintai miraaz mirt misjon missis
        mistra mitra mobiil modell modem modu mogin mohaar mohk mohn moigas moira moire mois moiste moiva mokk moks
        moku mola mold molder molin molk moll molu moment momin momm monaad monarh mongol monu moobel mood moode
        moodul mook mool moolok moone moos moot mopeed mopp mops mora moraal mord moreen morg morin morse morsk morss
        morv morvar mosee moslem motell motett motiiv moto muaree muda mudel mudil mudin muffin muflon mufti mugar
        mugri mugul muhin muhk muhkam muhv muie mukoos muks mulaaz mulatt muld mulder mulgas mulin mulje mulk mull
        mults mumm mumps munder munk munn muoom murd mure murel murgel murin murjan murk murkel murr murrak murre
        mursaa mursk murt muru musett muskel musket musli muslim muster musu mutant muti mutike mutoon mutsak mutt
        muuk muumia muuon muur muusa muuser naaber naabob naagel naal naaps naare naasnu naat naba nadi nadiir nadu
        nael nafta naga nagaan nagin nagu nahaal nahe nahin nahk naht nahv nahvak naide naidis nailon nainu najaad
        nake nakk nalg nali namaas namm nanai nandu nann napalm napits napp naps nari narin narkar narmas narta narts
        naru narv narval nasa nasaal nass nats naud neeger neel neer neet nefron neidis neitsi neiu neiuke nekrut
        nektar nelk nelson neoon nepman nepp neuron nibu nigin nihe niide niiduk niis niisk nikk nikkel niknak nilgau
        nina ninats niplis nipp nippel nips nire nirin nirk nisa niss nisu nitrit niue nivh nivoo nodi noel noges nogi
        nogu nohin nohu noid nokats nokis nokk noks noksak noku nolk nolv nolvak nomaad nomm nooge nook nool noomen
        noop nooruk noos noot noova nops nord nore norg norse nospel nosu notk notke notsu nou noue nova novell nuanss
        nublu nubuk nubul nuga nuhk nui nuke nukits nukk nulg numf nunn nupp nuppel nurg nurin nurk nurm nuss nutria
        nutsak nutt nuudel nuukse nuust nuut nuuter oaas objekt oblaat oblast oboe obrok oeldis oeldu ofort ofset oga
        ogard ohakas ohatis oherdi ohk ohmu oht ohtu ohutis ohver oid oie oile oim oinas okaapi okas okis oks okse
        okseti oksiid oksjon oksool oktaan oktaav oktav oktett olak olek olem oleng olg oliiv olme olmeek olnu olu
        omlett onar ong onku onn onnal onnar oober ood oodatu oode ookean ooker ooline oomen oonuks ooper oos oots
        ootse oov opaal opakas ope opiaat oping opitu opman optant oraal oranz oras orav orb orden ordu orel oreool
        orgasm orgia ori orient orikas orin ork orkaan ornaat ornung ors orsted orv osa osak osis osman osmoos osoon
        osseet ost ostjak osuti otoman ots otsak otsing oud ouhka oun ovaal ovraag paabel paabu paak paal paan paapua
        paaria paas paasla paast paaste paasu paat paater paatos paaz paber pabin pabul padi padin padrun padu pael
        paella paev paevak pagas pagi pagin pagood pagu pagun paha pahe pahh pahin pahk pahkel pahmak pahn pahtel pahv
        pahvak paigas paike paine paise paits pajats paju pajuk pakane pake pakett pakis pakitu pakk paks pakutu
        palang palat palee palett palitu paljak palk palkon pall pallon palsam paluke palve pamp pampa pampel paneel
        panek pang pangas pank pann pannal pannoo pant panter papaia papp pappel paps papu paraad parak parask pard
        pardel parees parg pargas pargel parh parin paring paritu parka parkal parkla parl parm parmas parn parool
        parras parsek partei partii partla parv parvis pasha pask paskal pasmas pasmer pasta pastel pasun patt pau
        pauk paun pauper paut pealis pealne peane peats pedaal pedant pede pedell peegel peeker peekon peel peenar
        peenis peerg peeso peet peiar peide peig peil peit peitel peits peiu pekk peks peled pelg peli pell pendel
        pengo peni penn penss peo peoleo peoon pepita pepu perkal perlon perm perse peru perv pesu pesula petis petkel
        pett piaal pidal pidu pidzin pigi pihk pihl piht pihu pihv pii piibel piiber piiga piilar piim piinia piipar
        piir piird piire piisam piisk piison piits pikap pikee pikett pikk pikker pikne pikolo piksel pikuke pilaff
        pilak pilbas pilet pilgar pilge pilk piloot pilsen pilss pilt pilu pilv pime pimss pinal ping pinge pinin pinn
        pinnas pinser pinsol pint pinu pipar pipett piraat pird pirin pirn piroog pirts pisar pisku pissu piste pita
        pits pitsa pitsat pitser piug plaan plaat plaaz pladin plaga plagin plagu plakat plank plarin plaru plasku
        plasma plast platoo platt platu plebei pleebs pleed pleiss plekk plett pleura plevna plii plink ploga plogin
        plokk plomm plonn ploom plumps plutt pluus pobin pobul podest podin poeem pogri pohi pohk pohl poial poid
        poieke poige poim poime pois poiss poisu pojeng poju pojuke pokaal pokats pokker poks pold polder poleer polem
        poleng polenu polg poli poliis polis polk polka pollar polmas polo polt poluup polv pomin pomm pomo pondak
        poni ponks ponn pont ponts pontso poobel poodu poogen pook poom poon poonu poorak poore poorel pooris poort
        poosas popp porge porgu pori porin porm porn porno poro porr porru porsas porss posk posu potas poti potk
        potsku pott pou poud praad praak praam pragin pragu praht pralle prass prees priim priis prikk prill prisma
        prits pritse proff progin promm pronks proosa proov props pross prugi prunn prunt pruss pruuk pruul pruun
        pruut psalm ptii puant pubi pudel puder pudi pudin puding pudu pueblo pugal pugmee pugu puha puhak puhamu
        puhang puhe puhis puhk puhm puhmas puhv puhvel puhver puhvet puiste puit pujaan pujeng puju pukk puks pukser
        pula pulber puldan pulk pulm puloon pulp pulsar pulss pulst pult pumat pumpla punane pundar pune pung punkar
        punker punn punnu puns pupe pupill pupp pura purask purd puree purgaa puri purin purjel purk purre purst
        pursui pusa puskar pusle pussak pustol pustul putk putkes putt puu puud puude puudel puuder puue puuk puuks
        puul puuma puuna puune puunis puur puutia puuton raa raabis raad raadio raag raak raal raam raamat raas raats
        rabak rabal rabatt rabi rabin rabu radoon raev raga ragbi ragin raguu raha rahe rahk rahm rahn rahu rahula
        rahvas rai raibe raie raig raim raitse rajoon raju rakats rake rakett raki rakis rakit rakk raks ramm ramp
        ramps randal randla rani ranits rannak ranne rant rantso rapiir raport rapp rappar rappen raps rapsak rask
        raspel rass rastas raster rasu rasv ratas ratsep ratsu rauk raun rautis ravila ravim reaal rebane rebu redel
        redis redu reeder reegel reeper regaal regatt regi reha rehala rehi rehv reid reig reiv reket rekord relaps
        relee relikt relss relv remark remont rendzu renn rentei reo repro reserv retk retort retro rets retuss reuma
        revaar revans revers revolt revuu rezii reziim riaal riba ribi rida riff rigin rihm rihv rihvel riid riider
        riie riim riis riisk riiul riiv riive rike riksa ringe rinnak rinne ripats ripe rips ripse risoto risu ritv
        riugas rivaal rivi rober robin robot rodeo rodu roe roga rogin rogusk rohk rohtla rohutu roid roie roigas roim
        roimar roisk roivas roju roke rokk rokkar roks romaan romb romu romula rondo rondoo rong rongas rongel ronk
        ront roobas roobe rood roog rooge rook rool roone roop roos roosa roosk roov roovel rops rosett rosin rost
        rotang rott rouk rubaii rubla ruhi ruhk ruhm ruht ruhv ruie ruigam ruiu rukis rulaad rulett rull ruloo ruloon
        rumb rumba rumin rumm rump rungas runk runnak runne runo runt rupp rups rusa ruse rutm rutt ruu ruube ruun
        ruup ruupia ruus ruuste ruut ruutel ruutu ruuz saabas saabel saade saadu saag saaga saago saak saakal saal
        saalep saam saanu saar saaris saaros saask saast saaste saatur saba sabane sabat sabin sabru sadin sadul
        safari safian safiir safott safran sagar sagu sahh sahib sahin sahk sahmak saht sahtel sahvak sahver sahvt
        saiake saida saiga saile sainas saira sajane sakk sakumm salat salg salk sall salm salong salsa salu saluut
        salv salvei samba sambo samet samm sammal sammas samott samp samss sandhi sangar sanss sapp saps saraad saras
        sarg sari sarin sark sarm sarn sarp sarts sarv sarz sasi sassii sataan sate satiir saud sauk saun savann savi
        seade seanss sebra seebu seeder seek seekel seeme seemla seepia seerav seeria seesam seff sefiir segu sehvt
        seib seier seif seim seire seisak seitel sekk sekser sekst sekt seleen selg seljak sell sellak seller selts
        selva selve semlak semu senat senill seong seos seotis sepis seppel sepsis septim serail serif seriif serpa
        serri serv sesoon sess setuke seviot sevroo sfaar sfinks sibi sibul sibull sidrun siesta siffer sifoon sigala
        sigar sigma siht sihvka siiber siid siider siig siil siire siirup sikh sikk siksak sikuti sild silm silo silp
        silt simbel simman simmel simss sindel sinder sinel sinep singal singel sinine sink sinod sips sireen sirel
        sirge sirin sirkel sirm siroko sirp sisal sisin siss sisu sits siug siuu skaala skaar skald skalp skatt skaut
        skeem skets skiff skisma skits skunk skvaar slahta slaid slakk slamm slang slepp slumm snitt snoob sobing soda
        soel soeng soerd sohk sohva sohver soiduk soim sojard sokal sokk sokkel solg solge solin solk solks solkup
        solm somer somp sonaat sonake sonant sone sonett song soobel sooda soode soodom soodu soojak sook sookla sool
        soolak soolo soom soomuk soonu soor soore soos soost soot soov soove sopis sopka sopp sops sorb sorgo sork
        sorm sormis soru sosar sosku soss sostar sotkas sots sotse sott soud soue souke soust sovrin spaa spamm spasm
        sperm sperma spets spinat spinn spioon spits splint sprott srift staap staar staaz stagna staier stants stepp
        stereo stigma stiil stipp stoll stoola strekk strets string stroof stseen stukk stuupa suaree suda sudoku sudu
        sufiks suflee suga suguti suhe suhin suhkar suhvel suige suir sukaad sukk suksu sulam suld sulem suletu sulf
        sulfit sulg suli suller sulp sumahh sumbol sumer sumin summa sump sumu sunaps sunt supee supler suport supp
        surm surnu surve sushi susi susla suss sust sustal suste sustol sutaan suts sutt suu suubla suud suude suue
        suula suulu suume suunis suura suusk suutel suutis suva suvila suvis suzee svaab svamm svert sving taak taaler
        taane taapir taar taaste taav taavet tabatu tabel tabloo tabu tael taevas taft tagala taglas tagune tahe tahis
        tahitu tahk tahm tahn taht tahvel taid taide taie taies taig taiga taigen taim taimer taimla tainas takjas
        takk tako taks taksis takso takson takt tala talaar talb tald talent talje tall talmud talong taloss talrep
        tamber tamiil tamil tamka tamm tamp tandem tang tango tanka tankla tanner tanta tants tanu tapeet tapetu
        tapiir tapp tapper tara taraan tare targe tariif tarin taring tark tarm tarmin tarn tarne taro tarokk tarre
        taru tarvas tarve tase tasku tass taster tatami tatar tatt taud taust tava tavaar tavern tavott teade teater
        teatis teave teder teek teema teenar teene teener tees teesis teflon tehas tehe tehing tehtu teib teinu teip
        teivas teke tekk tekkel tekno tekst telder teleks teler telg telk temp tempel teos teping tera teras terjer
        termin termos terts terve tervis tiaara tibla tibu tibula tigu tihane tihvt tiib tiigel tiiger tiim tiir
        tiisel tiitel tiiter tiivas tike tikk tikker tila tilde tilder tilin tilk timpan timut tina ting tinin tint
        tipp tiraad tiraaz tiree tirel tirk tirts tisler tiss tita titaan tits titt tivoli tobi tobias tobila tobras
        tobu tobuke toeng tofu togu tohk tohl tohman toht tohter toide toigas toim toime toin toit tokat toke tokis
        tokk tola told tolge tolk tolm tolner tolvan tomat tombak tommis tomp tong tonks tonn tont toober toode toodu
        tooga toom tooner toop toora toore toori toos toost tootem tootu topaas topis topka topp topsel topski torge
        tori torin torje torm torp torpar tors torso torts toru torv tosi toslem toste tostuk tots tott totu tou toug
        touge touk traal traan traat traav trafo tragi tragun trahv traks trakt trall tramm trani transa transs trapp
        trass trauma treema treial trekk trell treng trenn trepp tress trett triaad triger triias triip triiv trikk
        trikoo trio triool tripp trits triumf trofee troll tromb troon troop tropp trops troska trots truba trukis
        trukk trull trulla trumm trumoo trupp truup tsaar tsatsa tsehh tsekk tsello tsilli tsink tsoon tsuaan tsumm
        tsunft tsust tsuud tsuuga tuba tuber tudeng tuder tudike tudruk tuff tugi tuhar tuhe tuhin tuhk tuhv tuhvel
        tui tuiam tuige tuisk tuju tukat tukike tukk tukse tulek tulem tull tulnu tulnuk tulp tulu tuluke tulup tulv
        tumin tumm tumps tundel tunder tundra tungal tunn tuntu tupp tups tura turann turb turban turg turm turnee
        turp turse tursk turv turve turvis tusk tuss tutkas tutt tuttav tuub tuuba tuubel tuugas tuukan tuuker tuul
        tuun tuuner tuup tuur tuust tuutu tuvi tuvike tuvila tviid uba ubin udar ude udehe udell udi udmurt udu udusti
        ufo uhhaa uhikas uhing uhistu uhmer uid uim uinak uisk ujuk ujula ukaas uks ulaan ulang ulg ullike ulm ulme
        ultra uluk uluss umbris umin umlaut umme undruk unelm ungas unioon unts uppunu uraan urask urb urg urgas urin
        urjukk urm urn urp urt urve usbekk usk uss utiil utmine utt uudis uuk uulits uur uuratu uure uuring uurits
        vaade vaag vaagen vaal vaane vaanel vaap vaar vaarak vaarao vaas vaat vaavel vabarn vabe vabin vadak vaene
        vaeras vaetis vaev vagant vagel vagi vaha vahe vaheke vaher vahk vaht vahvel vaide vaie vaier vail vaim vainu
        vaip vaits vaiv vajak vakk vaks vaksal vakstu valamu valang vald valem valge valgla valgma vali valim valing
        valitu valjak valk vall valm valss valts valu vamm vamp vanake vandel vang vangla vanill vanka vanker vannas
        vanne vant vants vapiti vapp vaps varamu varav varb vard varin varing vark varn varr varras varske varss varv
        varval varvas varvel vasall vasar vask vastar vaste vastne vatine vatman vats vatt vedru vedu veduk veeb
        veebel veen veene veer veerem veerg veetse vein veis veksel velaar velg velvet vemmal vemp vennas veok veos
        verb verme vermut verst vesi vesiir veski vesper vestu veto vets vibra vibu vidin vidu viga vigane vigel vigin
        vigvam viha vihin vihje vihk vihm viht viibe viidas viig viiger viil viilak viiner viir viires viirg viiruk
        viisa viisk viiul viivis vikaar vikat vikk vikkel vikont viks vile vilets vilge vili vilin vilk villa villak
        vilt vimb vimka vimm vimpel vineer vinin vinkel vinn vinnak vinnal vint vints vinu vinuul vioola vipp viraaz
        virg virin virn viroos virre virtin virts virve visang visiir visin viski vismut vispel viss vobin vobla vodin
        vodka vogul vohang vohk vohm vohmas vohr voim voimla vokaal vokk volang volask volber voldas volg volks voll
        vollas volle voluum volv vombat vomm vonge vonks voo voode vooder voodi voog vool voon voop vooras voos voot
        vope vops voreng vorge vorin vork vorm vormel vorp vorr vorre vorse voru vosa votjak vott vrakk vuaal vuhva
        vulin vull vunk vunts vups vurfel vurhv vurin vurle vurr vurst vurts vusser vutlar vutt vuuk zaboo zanr zelee
        zest zetoon zgutt ziiro zilett zirant zlott zombi zooid zurii
        """,
    ),
    "fi": (
        """
        aamuisin aikainen aikaisin aikuinen ainoa akateeminen aktiivinen ala alainen ale alhainen ali alkuperainen
        alueellinen ankara arkisto aro arsyttava arvoinen arvoitus asiallinen aurinkoinen biologinen brittilainen
        digitaalinen edes edullinen edustava eka elo ely enaa ensisijainen entinen epaselva epavarma era eri erikoinen
        erilainen erillinen erinomainen ero etela etu fiksu fyysinen globaali globaalisti haastava hallitseva hallitus
        hankala harmaa harva harvinainen hassu hauska helle henkinen herkullinen hetero hieno hiljainen hirvea holmo
        houkutteleva huikea huima hullu huomattava huono hurja hyodyllinen hyvaksyttava idea ihana ihmeellinen iho ika
        ikainen ikava ikuinen ilkea ilo iloinen intialainen isa isi islamilainen iso isoisa istuva ita italialainen
        itsenainen jaatava jalo janna jannittava japanilainen jarkeva jarkyttava jatkuva johtava joo jos julkinen
        julkiset julma juutalainen kai kaija kaisa kaksikko kallio kallis kaltainen kamala kannattava kansallinen
        kantava kapea karmea karu kas kateellinen kateva katkera kattava kauhea kaunis kaupallinen keltainen ken
        kesaisin keskeinen keskinainen kestava kevyt kiinalainen kiinnostava kiintea kiireinen kiitollinen kipea
        kirjallinen kiva kivi klassikko klassinen kohtuullinen koko kokonainen komea koomikko korea korkea kotimainen
        kotoisin kova koyha kriittinen kultainen kumma kummallinen kun kusipaa kuu kuuluisa kuuma kuume kuvaava kylma
        kypara kypsa laaja laheinen lahes laiha lailla laillinen laina laine laiska laite laiton laitos laiva lee
        leino lempea levea lieva lihava liikkuva likainen loistava lopullinen luominen luonnollinen luotettava luova
        lyhyt maara mahdollinen mahtava mainio mainos makea maki makinen marka massiivinen matala merkittava miehisto
        miellyttava mieluiten mobiili moderni monipuolinen mukainen mukava muotoiltu muotoinen musta myonteinen
        nakoinen nakyva naurettava nayttava negatiivinen nopea nopein nopeus norja norjalainen normaali nouseva nuori
        nykyaikainen nykyinen nykyisin ohi ohut oikea oiva oleellinen olennainen oma omituinen onnellinen osaava paha
        paikallinen painava pakollinen paksu pari paska pateva pehmea pelottava perinteinen pian piha pimea piru
        pohjoinen poliittinen pop positiivinen puisto punainen puoliso pyha pyorea pysyva raju ranskalainen
        ranskalaiset ratkaiseva rauhallinen realistinen rehellinen reilu riippuvainen riisi riittava rikas rikki
        rikollinen rikos rinne rinta riski risti ritva rohkea romanttinen ruma ruotsalainen ruskea saannollinen
        saarinen sahkoinen saksalainen salainen samanlainen satunnainen sekaisin sekava seksuaalinen selkea selva
        sielu siksi silma silta silti sinikka sininen sisa sisainen sisar sisko sisu siten soitin soitto sokea some
        sopiva sopo sosiaalinen suhteellinen suloinen sunnuntaisin suomalainen suora suositus surkea surullinen suuri
        syva syyllinen taas tai taitava talvisin tanskalainen tappava tarkea tarpeellinen tasainen tavallinen
        taydellinen taysi tekninen terava tieteellinen tietoinen tiivis todellinen toki topi tori torkea tosi tukeva
        tumma tuominen tuomittu turha turvallinen tyhja tyhma tylsa tyly tyo typera tyylikas tyylinen tyypillinen
        tyytyvainen ulkopuolinen unioni upea uskollinen uskottava uuno vaalea vaara vaarallinen vaativa vaha vahainen
        vahva vaihe vaikea vaikuttava vaimo vaiva vajaa vakaa vakava vakio vakuuttava valiaikainen valio valkoinen
        valmis valtava vanha vanki vapaa vappu varat varjo varma varovainen vasen vasta vastaava vastainen
        vastuullinen vatsa vauva venalainen vihainen vihrea villa villi virallinen virheellinen virolainen voiton
        voitto yhteinen yhteiso yhtenainen yksinainen yksityinen yleinen yleisin yleiso yli ylimaarainen ylitse
        ylivoimainen yllattava ylpea ymmarrettava ystavallinen
        """,
        """
        aalto aaltonen aamulehti aanestys aani aari aarnio aarre agentti aho aiempi aihe aiheuttama aikataulu aine
        aino aito aivot ajattelu ajatus ajo akku albumi alko alkoholi alku aloite alue alus alykas amerikka ammatti
        analyysi ankka anne annos areena arki arkkitehti artikkeli arvio arviointi arvo arvokas arvostelu ase asema
        asenne asiakas askel aste asukas asunto aurinko auto avain avaus avioliitto avoin bandi biisi bileet bisnes
        blogi blues brandi budjetti bussi college cup deitti demokratia dokumentti dosentti eduskunta ehdokas ehdoton
        ehdotus elain elake elama elin enemmisto enempi energia englanti ennatys ennuste epailty esimerkki esittely
        esitys etaisyys etsin euro fakta fani farkut feminismi festivaali fiilis finaali galleria haastattelu haaste
        haavisto hahmo hairio haju hakemus haku hallinto haloo haltuun halu hanke hankinta hapea harjoittelu harjoitus
        harmi harrastus harri hata havainto helmi helppo helvetti henki henkilo henkilokunta henkilosto henry heratys
        herkka hetki hevonen hidas hiihto hiljaisuus hinta historia hitti hitto hockey hoito homma homo honka hopea
        hotelli house housut huippu huolto huomio huone huora huumori hymy hyokkays hyoty hyvinvointi idiootti ihme
        ikkuna ilma ilmapiiri ilmasto ilme ilmio ilmoitus iltalehti ilves innokas insinoori investointi isku islam
        istuin italia jakso jalka jalkapallo jalki japani jarjestelma jarjesto jarjestys jarjeton jarki jarvi jasen
        jasenyys jatko jengi jenni joensuu johto joki jokunen jorma joukkue joulu juhla jukka julkaisu julkkis jumala
        juna juoksu juoni jussi juusto kaannos kaasu kahvi kahvila kakkonen kala kalpa kamera kana kangas kannatus
        kannykka kansa kansi kappale karajaoikeus karhu karjala karki kartta kasi kasite kasittely kasitys kasvatus
        kasvot kasvu katastrofi kati kato katse katto katu kaunein kauppa kauppakeskus kauppias kaupunki kausi kavely
        kaveri kaytanto kaytos kaytto keha kehitys keho keikka keino keittio kela kelpo kentta kepu kerros kertomus
        keskiarvo keskus keskustelu kesto ketju kielto kierros kiertue kiina kiinnostus kiire kilpailu kipu
        kirjallisuus kirjasto kirje kirjoitin kirjoitus kirkas kirsi kisa klubi kohde kohta kohtalo kohtaus kohu koira
        koivisto kokeilu kokemus kokki kokoelma kokonaisuus kokoomus kokoonpano kokous kolmannes komissio kommentti
        konsepti konsertti koodi kopio koripallo korjaus korkeus kortti korvaus kotimaa kotka koulu koulutus kovempi
        koyhyys kreikka kriisi kritiikki kuljetus kulutus kumppani kuningas kunnia kunta kunto kuolema kuorma kurkku
        kurssi kuski kustannus kuudes kuukausi kuultu kuvaus kuvernoori kuvio kyky kymmenes kynnys kysely kysymys
        kysynta laadukas laajempi laakari laake laakso laatu lahetys lahin lahjakas lahto lahtokohta lainsaadanto laji
        laki lama lammin lampo lampotila lanka lansi lappi lapsi lasi laskin lasku laukaus laukku laulu lause lausunto
        leffa legenda lehdisto lehma lehti lehto leijona leikkaus leikki leipa lento lentokentta lentokone leveys liha
        liiga liike liikenne liikevaihto liikunta liitto linkki linna lintu lippu lisa lisays logo loma loppu
        lopputulos lordi lounas luettelo lukio luku lukumaara lumi luokka luoma luonne luonto luottamus lupa lupaus
        lyhyempi maa maahanmuutto maailma maajoukkue maakunta maali maalivahti maaritelma maatalous mahdollisuus
        mahdoton maine maisteri maito maksu maku malli manner manu market markkina markkinointi masennus materiaali
        matkailu mega meininki menestys menetelma menetys merkitys merkki mestaruus metro metsa metsastys mielipide
        mikkeli miljoona ministeri minuutti mitali mokki moottori morsian motivaatio muisto mulkku muna muoti muoto
        murha murto museo musiikki muutos muutto myrsky myynti naama nakemys nakokulma naky nakyma nalka natsi natti
        nauha naytelma nayttely naytto neitsyt neljas nelonen nena netti neuvosto niemi nimitys nopeampi normi nosto
        nousu numero nuoriso ohjaus ohje ohjelma oikeisto oikeus oljy olo olosuhteet olut omaisuus ominaisuus ongelma
        onnekas onnettomuus onni opas operaatio opetus opinnot opiskellut opiskelu oppi oppilas oppositio organisaatio
        orpo osa osake osapuoli osasto osoite osoitus osto osuus ote ottelu outo ovi paaasia paakaupunki paallikko
        paaministeri paasy paatos paavi pahempi pahoinpitely paikka paine paino paita paivakoti paivitys paketti
        palaute palkinto palkka pallo paluu palvelu palvelus pankki paperi pappi paras pariskunta parisuhde
        parlamentti patka paula pekka peli pelkka pelko periaate perinne perkele perse perus peruste pettymys pidempi
        piste pitka pituus pizza pohjola poikkeus pointti poisto poliisi politiikka pommi pomo portti porukka postaus
        potilas potkut poyta presidentti prinssi professori profiili projekti prosessi psykologi puhdas puhe puhelin
        puhelu pukki puku pullo puoli puolue puolustus putki putous puu puutarha puute pyora raaka raha rahoitus
        raiskaus rakas rakenne rakennus rakkaus ralli rangaistus rankka ranska ranta raportti rasismi raskas rata
        ratkaisu rauha rauma rauta ravintola reaktio rehtori reika reissu reitti rekisteroity rekka remontti rengas
        rento resepti resurssit rita rivi robotti romaani rooli rotu runko runo runsas ruoka ruokavalio ruotsi ruumis
        ruutu ryhma saanto saatana saatavuus saatio saavutus sahko sairaala sairas sairaus saksa salaisuus salama salo
        sampo sananvapaus sanoma sanomalehti sanonta santa satama satu saudi sauna savy seikkailu seitsemas seksikas
        selitys selka selvitys seppo sergei seura seurakunta seuraus seutu sihteeri siirto sijainti sijoitus sika
        sinkku sisalto sivu sivusto soini sokeri sopimus sota sotilas sovellus strategia stressi suhde suklaa sukunimi
        sukupolvi sukupuoli summa suola suomennos suomi suoritus suosikki suosio susanna susi suu suunnitellut
        suunnitelma suunnittelu suunta suuruus sydan symboli synkka syopa systeemi syy taho tahti tahto taide taistelu
        taito taivas takki talli talo talous talouskasvu talteen tammi tanska tapahtuma tapani tapaus tappara tappio
        tarina tarjonta tarjous tarkka tarkoitus tarve taso tauko tauti tavoite teatteri teema tehdas teho tehokas
        tehokkain teini tekniikka teknologia televisio temppu teollisuus teoria teos termi terrori terve tervetullut
        terveys tiede tieto tietokone tiimi tila tilaisuus tili tiukka todellisuus toiminta toimisto toimitus toive
        torjunta tosiasia toteutus totuus touko treffit trendi tukka tulevaisuus tulipalo tulkinta tulo tulos tunnelma
        tunnus tuomas tuomio tuomioistuin tuore tuotanto tuote tuotto tupakointi turkki turku turnaus turvallisuus
        tutkimus tutkinta tutkinto tuuli tyokalu tyollisyys tyopaikka tyoryhma tyoton tyottomyys tytto tyyli tyyppi
        uhka uhri uima ukraina ulkonako unelma ura urheilu uskomaton uskonto uudistus vaadin vaatimus vaesto vahinko
        vahvempi vahvuus vaihto vaihtoehto vaikeampi vaikutus vaite vaki vakuutus valikoima valine valinta valioliiga
        valit vallankumous valmistus valtaosa valtatie valtio valttamaton valvonta vanhemmat vanhus vapaus varoitus
        vasemmisto vastaanotto vastaus vastuu vauhti vedin veikkaus veljekset velka velvollisuus verkkokauppa verkosto
        verotus versio vesa vesi veto vienti vieras viestinta viety viha viides viihde viikonloppu viimeisin viini
        viisas vika vinkki virhe virka viro virta virus vitsi voima voimakas vuokra vuori vuoro ydin yhdistelma
        yhdistys yhteiskunta yhteistyo yhteys yhtio ykkonen yksikko yksilo yleisurheilu yliopisto yllatys ymparisto
        yritys
        """,
    ),
    "fr": (
        """
        acheter acquis acquise acteur actif actuel agreable agricole aime aimee allant allemand allemande americain
        americaine ami amie amoureux ancien anglais anglaise animal animale anniversaire appele appelee arabe arrive
        arrivee artiste atteint atteinte aucun aucune autre avant bateau beau bebe belge bete bien big bizarre black
        blanc blesse blessee bleu bleue bon boulot bref britannique cafe calme canadien candidat candidate cap capable
        cape capital capitale catholique celebre central centrale certain certaine champion changer chat chaud chaude
        cher chien chinois chinoise choc chocolat chose civil civile clair claire classique cle client cliente
        collectif commandant commencer commercial commerciale commun commune complet complexe complique compliquee
        compose composee con connu connue content contente contenu contraire cool coupable courant courante court
        courte cree creee critique cru crue cul culturel dangereux debout decide decidee declare declaree demi demie
        democratique dernier derniere desole desolee deuxieme different differente difficile direct directe directeur
        disparu disparue disponible divers dix donne donnee double doux droit droite drole dur dure echec economique
        efficace electrique eleve elevee elu elue endroit enfant ennemi ennemie enorme entier envoye envoyee espagnol
        espagnole essayer essentiel est etrange etudiant etudiante etudier europeen evident evidente excellent
        excellente exterieur exterieure extreme facile faible fait faite federal federale ferme fermee festival feu
        fier fille fin final finale fine fini finie fixe fort forte fou francais francaise frere froid froide futur
        future garcon gardien gauche gay general generale genial geniale gentil gerer grand grande gratuit gratuite
        grave haut haute heureux historique humain humaine ideal ideale immense immeuble immobilier impact important
        importante impossible incroyable indique informatique inscrit inscrite instant interessant interessante
        interieur interieure interne inutile inverse italien japonais japonaise jaune jeter jeune joli jolie joseph
        joueur judiciaire juste lancer large leger lever libre limite local locale logique long lourd lourde machine
        magnifique maison maitre mal malade manger manuel marque marquee materiel mauvais mauvaise maximum meilleur
        meilleure membre meme mener militaire mini minimum mobile modele moderne moindre mondial mondiale montant mort
        morte moteur moyen national nationale naturel necessaire net neuf noir noire nombreux nord normal normale
        nouveau nucleaire nul numerique objectif officiel orange original originale oublier ouest ouvert ouverte
        pareil parfait parfaite partager particulier passer patron pauvre payer pendant perso personnel petit petite
        photo physique pire plan plane plat plate plein pleine policier politique populaire portable portant porte
        possible pratique precedent precedente precis precise premier premiere prenant present presente pret prete
        primaire principal principale pris prise pro prochain prochaine proche propre proprietaire proteger public
        puissant puissante putain quasi quatrieme quebecois quebecoise quelque quitte quotidien radio rapide rappeler
        rare record recuperer reduit reduite reel reference regler religieux remplacer responsable retard riche
        ridicule roman rose rouge royal royale russe saint sainte sale sauf scientifique scolaire second secondaire
        seconde secret serieux seul seule simple situe situee social sociale socialiste solide special speciale
        specialiste spectacle sport sud suisse suivant suivante sujet superbe superieur superieure sur sure sympa
        technique tel tele terrible total totale tout toute tranquille triste troisieme trop uni unie unique utile
        vaste verifier veritable vert verte victime vide video vierge vieux vivant vivante voisin voisine vrai vraie
        """,
        """
        abbaye abonnement abri absence academie accident accord accueil accusation achat acquisition acte activite
        actualite adaptation adhesion adieu adoption aeroport agenda agent agression agriculture aile album alcool
        alimentation allure alternative altitude ambassade ambiance ame amelioration amenagement amendement amitie
        amour ange animation anneau annee antenne appareil apparence apparition appart appartement appel application
        apport appui arbre architecte architecture argent arrestation arret arsenal artillerie asile assassinat assaut
        assemblee assiette assistance association assurance atmosphere attentat attente attention aube augmentation
        auto autonomie autorisation autorite autoroute avenir avenue avion avocat axe azur baie bain balle ballon banc
        banlieue banque barrage basse bassin bataille batiment baton batterie beaute benefice benjamin besoin beton
        beurre bible bibliotheque bilan billet blague blessure bloc boite bol bonjour bonsoir bord bordel boston boule
        boulevard bourgogne bourse bouteille boutique bouton bresil brevet bulle bulletin bureau cabinet cadeau caisse
        calcul camera camion campagne canadienne canape canard cancer candidature canton capacite capitaine caractere
        carbone carrefour carte carton casino casque categorie cathedrale ceinture cellule centaine ceremonie
        certificat cerveau chaine chaise chambre championnat changement chanson chapeau charbon charlotte charte
        chateau chauffage chemin chemise cheque cheval chimie chirurgie chomage christ ciel cigarette cinema
        circulation cirque citation civilisation clan classement clef clientele climat clip coalition coffre
        collection college collegue colonie colonisation colonne combinaison comedie comite commandement communaute
        compagnie compagnon comparaison competence competition complot comportement composition concept conception
        concert conclusion condamnation condition confiance confirmation conflit confort confusion conge connaissance
        connerie connexion conquete conscience conseil consentement conservation consommation constat constitution
        construction consultation contexte continuite contrat contribution convention conviction cooperation copain
        corde correction corruption cou coucou couple cout couteau couverture creation cri criminelle crise croissance
        cuir cuivre curiosite debit declaration decor decoration decret defaut defense defi deficit definition degre
        delai delegation delit demission democratie densite dent departement dependance depit deplacement depot
        depression depute descente description desir dessin destin destination destruction detention deuil diagnostic
        diametre dieu difficulte diffusion dignite diminution direction discussion disparition disposition disque
        distinction distribution diversite division dizaine doigt domaine domicile domination dommage dragon drame
        drapeau duo duree eau ecart echantillon ecole ecologie economie ecran ecriture ecrivain edifice edition
        education efficacite egalite egard eglise election electricite element elevage elite emission emotion
        emplacement emploi energie enfance enfer engagement enjeu enseignement entente entourage entrainement entree
        envoi epee episode epoque epreuve equipage equipement espece esperance espoir esprit essence etape etoile
        etude euro evaluation evenement eveque evolution examen excellence exception execution exemple exercice
        existence expansion expedition expertise explication exploitation exploration explosion exposition expression
        extension fabrication fac facade faculte faiblesse faillite faim faune faute fauteuil federation fenetre
        fermeture fibre fiction fidelite fierte fievre figaro filiale financement foie folie fonction fondation
        fontaine foot football foret formation forum frequence fuite fusil fusion gaffe galerie gamme gendarmerie
        generation genie genre geste gestion gloire golfe gout gouvernement gravite gre green grossesse groupe guerre
        guillaume guinee guitare habitat habitation habitude haine harcelement hasard havre herbe heritage heure
        hierarchie histoire hockey hommage homme honte hopital horizon hote hotel huile humanite humour hygiene
        hypothese idee identite ideologie imagination immigration impot impression inde independance individu
        industrie inflation info initiative innovation inquietude inscription inspiration installation institut
        institution instruction integralite integration intelligence intensite intention interdiction interet
        intervention intitule introduction invasion invitation islam ivoire jambe japon jardin jean jeu jeunesse joie
        jour jugement laboratoire lac laicite lait lancement langage langue lapin lecon legislation lendemain lettre
        liaison liberation liberte librairie lieu ligue lion litterature livraison location logement logo loup loyer
        lune luxe lycee magasin magazine magie maillot main mairie maitresse majeste majorite maladie management
        mandat manteau marbre marc marechal mariage marketing marne martin maternelle matinee maturite maxime mec
        mecanisme medaille medecine medicament memoire mensonge merde messe methode metrage metro metropole meurtre
        miel milan milieu milliard ministere ministre minorite miroir misere mobilisation mobilite modification moitie
        moment monde mont montage montagne montee monument morceau mosquee motif motivation moto moulin mouvement
        moyenne municipalite musee musique mystere mythe naissance napoleon nation nationalite navigation navire
        negociation niveau noblesse noel nom nomination norme notion nourriture noyau numero objet obligation
        observation observatoire occident occupation ocean offensive office oiseau ombre operation opportunite
        opposition orchestre ordre oreille organisation organisme orient orientation origine oscar outil ouverture
        pacte paiement paille panne panneau pantalon pape paquet parc parfum paroisse parquet partenariat patience
        patrimoine pauvrete pavillon peau peintre peinture perception performance periode permanence personnage
        personnalite perspective perte petrole peuple phenomene philosophie pied pierre piscine pitie pizza plafond
        plage plaine plaisir planete plateau plateforme plomb pluie plume poche poeme poesie poignee poil poisson
        poitrine pollution pomme pont popularite population porc portail portee portefeuille possibilite pote poubelle
        pouce poudre poule poulet pourcentage poursuite poussee precision prefecture prefet prenom preparation
        presentation presidence pression prestation pretre preuve prevention priorite probleme procedure production
        profession profil progression promenade promesse promo promotion propagande prophete propriete protection
        protocole provenance province proximite psychologie publication publicite puissance quai qualite quantite
        quart quete queue racisme raison rang rappel rapport rayon reaction realisation realite reception recette
        recit recrutement recueil recul redaction reduction referendum reflexion regime region registre reglement
        reine rejet relation religion remplacement remuneration renaissance rendement renovation rentree reparation
        repartition repertoire repetition reponse reportage repression reproduction republique reputation requete
        reseau residence resistance resolution restauration reunion reussite revanche reveil revelation revision
        revolution richard richesse robe robert robin robot roche roi role royaume rugby rupture rythme sagesse saison
        salle salon salope salut sante satisfaction saut scandale scenario schema scrutin seance securite sejour sel
        selection semaine senat sensation sensibilite sentiment separation serge session seuil sexe siecle signature
        situation societe soiree sol soleil solidarite solitude solution sommeil sommet sondage souci souffrance
        souverainete stabilite stade statut stockage strategie substance succession suite suppression surete
        surveillance survie suspension symbole syndicat synthese systeme tableau talent tarif technologie temoignage
        temperature tendance tentative terme terrain territoire terrorisme testament theatre theorie tir tirage tissu
        titre toile toit totalite tourisme tournage tournee traduction tragedie traitement trajet transfert
        transmission transparence travail trentaine tresor tribunal tribune trimestre trio tristesse trophee trou
        troupe truc union universite urgence usage usine utilisation utilite vaisseau vallee variete velo vengeance
        ventre verbe verite verre vertu viande victoire villa village vin vingtaine viol violence visage visibilite
        vitesse vocation voiture volonte volume
        """,
    ),
    "nb": (
        """
        absolutt absolutte aerlig aerlige aktiv aktive aktivt alternativ alternative alvorlig alvorlige amerikansk
        amerikanske andre angaende annerledes ansvarlig ansvarlige antagelig anti apen apent aret arlig arlige artig
        artige automatisk automatiske avgjorende avhengig avhengige best beste betydelig betydelige bevisst bevisste
        billigere bla bra britiske daglig daglige darlig darlige darligere definitivt deilig deilige digital digitale
        direkte diverse dobbelt dobbelte dumt dypt effektiv effektive effektivt egen egentlig egentlige ekstra
        ekstremt eldre eldste elendig elendige endelig endelige engelsk engelske enig enige enkel enkelt enkelte enkle
        enklere enorm enorme europeiske eventuelt evig evige faerre faktisk faktiske falske fantastisk fantastiske
        faren farene farlig farlige fattige ferdig ferdige fett fin fine fjerde flere flest fleste flink flinke
        folgende forelopig forelopige forferdelig forferdelige fornuftig fornuftige forsiktig forsiktige forskjellig
        forskjellige forste frank fransk franske fremst fremste frie frivillig frivillige from fryktelig fryktelige
        full fulle fullstendig fullstendige fullt fysisk fysiske gamle gammel gammelt generell generelle generelt glad
        glade global globale god gode gratis gravid gravide greit gronn gronne hard harde hardt haret harete harry
        heldig heldige hemmelig hemmelige herlig herlige historisk historiske hovedsakelig hoyere hoyeste hoyre hoyt
        hvit hvite hyggelig hyggelige ille imponerende indre ine interessant interessante jaevla jaevlig jevnt kaldt
        kjaereste kjedelig kjedelige klassisk klassiske knapt kommende kortere koselig koselige kraftig kraftige
        kriminelle kristen kritisk kritiske kvinnelige langt latterlig latterlige lavere lavt ledende lengre lengst
        lengste lettere levende lignende lille liten lokal lokale lokalt lovlig lovlige lykkelig lykkelige mange
        manglende mannlige masse materiale max medisinsk medisinske mer mere merkelig merkelige mest meste midlertidig
        midlertidige militaere mindre minst minste mobil mobile moderne moro morsom morsomt mulig mulige mye naermere
        naermest naermeste nasjonal nasjonale nasjonalt naturlig naturlige navaerende negative nodt nodvendig
        nodvendige nordiske normal normale normalt noyaktig noyaktige nydelig nydelige nylig nyttig nyttige offentlig
        offentlige okende okonomisk okonomiske omfattende online opprinnelig opprinnelige ordentlig ordentlige
        overraskende overste ovrig ovrige pen pene pent perfekt perfekte personlig personlige plutselig politisk
        politiske populaere populaert positiv positive positivt praktisk praktiske primaert privat private psykisk
        psykiske rart raskere raskt real relativt relevant relevante religiose ren rene riktig riktige rimelig
        rimelige rodt rolig rolige rosa rundt russisk russiske saerlig saerlige sakalte samtidig sannsynlig
        sannsynlige sant selvfolgelig selvsagt senere sent sentral sentrale sentralt seriost sexy side sikker sikkert
        sint sinte sist siste sistnevnte sivile sjelden skikkelig skikkelige skremmende slags sma smart smarte snart
        snill snille solid solide sort sorte sosial sosiale sosialt spennende spesiell spesielle spesielt stadig
        stadige staende stakkars standard statlige sterk sterke sterkere sterkt stor store storre storst storste stort
        stralende strengt sur sure svaert svak svake svensk svenske syk syke sykt teknisk tekniske tidlig tidlige
        tidligere tilfeldig tilfeldige tilgjengelig tilsvarende tom totale totalt tredje trist triste trolig trygt
        tungt tydelig tydelige typisk typiske tysk tyske uavhengig uavhengige uenig uenige ukjent ukjente ulike
        ulovlig ulovlige umiddelbart umulig umulige ung unge unodvendig unodvendige usikker utenlandske utrolig
        utrolige utseende uvanlig uvanlige vakker vakkert vakre vanlig vanlige vanskelig vanskelige vanskeligere varmt
        vedkommende veldig velkommen venstre verdt verre verste vesentlig vesentlige vestlige videre videregaende vidt
        viktig viktige viktigere viktigste vill ville villig villige virkelig virkelige viss visse voksen voksne vondt
        yngre ytterligere
        """,
        """
        abort adam adgang advarsel advokat aktivitet album albumet alderen alkohol alternativet amerikanere
        amerikanerne andel andelen angst anlegget ansikt ansiktet ansvar ansvaret antall antallet apenhet apningen app
        appen arbeidere arbeidslivet areal arena arene arild aringen armen arne arsaken artikkel artikkelen ass asyl
        asylsokere atferd avdelingen avgjorelse avgjorelsen avisa avisen avisene avstand avtalen bakgrunn bakgrunnen
        bakken ballen banken barna barnehage barnet barnevernet basis baten bedrift bedriften befolkningen begrunnelse
        begynnelsen behandlingen behov behovet bensin beskjed beskrivelse beskyttelse betydningen bevegelse bevegelsen
        bibelen bibliotek biblioteket bidrag bilde bildene bilen bilene billett bistand bjorn blad bladet bloggen bok
        boka boken bokene boksen bolig borgere boston brannen bransjen brev brevet brodre brodrene broen broren bru
        brudd bruken brukere brukeren brukernavn brukerne bryllup budsjett budsjettet budskap bunnen business bussen
        butikk butikken butikkene byen byene bygda bygningen city college cup cupen dagbladet dagene dama damene
        datteren debatt debatten definisjon delene deltakelse deltakere demokrati depresjon dialog diskusjon
        diskusjonen divisjon doden dodsfall dogn dognet dollar dom dommen dommere dommeren dora doren dorene drama
        drammen drapet driften drivstoff drommen dyrene effekt effekten eiendom eiendommen eiere eieren eksamen
        eksempel ekspert ekteskap ekteskapet elev elevene eliteserien elven energi enhet enighet episode episoden
        etasje etikk ettertid euro eventyr faen fag faget fakta faktum fargen farten fattigdom favoritt feilen feltet
        fengsel fenomenet ferie festen festivalen figur filmen filmene filosofi finalen fingeren fingrene firmaet
        fitte fjell fjellene fjellet flertall flertallet flyet flyplass flyplassen fodsel fokus fokuset folelse
        folelsen folelsene folkene folkens forbindelse forbud foredrag foreldre foreldrene foreningen forerkort
        forfatteren forhand forholdene forholdet formal formalet formue fornuft forsiden forskere forskerne forskjell
        forskjellen forskningen forslag forslaget forstaelse forstand forsvaret forum fotball foten foto framtiden
        fravaer fremtid fremtiden frihet frokost fugl funksjon funksjonen funn fyren fysikk gangen gard gata gaten
        gatene generasjon gjengen gjennomgang gjennomsnitt gjestene gleden greia greiene grensen grensene grunnen
        grunnlag grunnlaget grunnloven gruppa gruppe gruppen gruppene gud gull gullet gulvet gutt gutten guttene haer
        haeren hagen halsen halvparten handa handball handel handen handlingen hastighet haugen hav havet helgen
        helhet helse hemmelighet hendelse hendelsen hendene henry hensikt hensikten hensyn herren hilsen himmel
        himmelen historie historien hjemmeside hjemmet hjernen hjerte hjertet hjornet hode hodet hotell hotellet house
        hovedsak hovedstaden hoyde hoyden hoyesterett hoyresiden hud huden hund hunden hundre hverdag hverdagen ida
        ideen identitet idiot idrett industri industrien info informasjon initiativ innbyggere innbyggerne innflytelse
        innhold innholdet innlandet innlegget innovasjon innsats innsatsen innsiden innslag innsyn inntekt inntrykk
        innvandrere inspirasjon institutt intelligens interessen internett isen islam jakten jens jensen jenta jente
        jentene jobben jodene jorden kaffe kamera kameraet kamp kampanje kampen kampene kanal kanalen kanten kaos
        kapasitet kapittel karen karriere karrieren katastrofe kategori kategorien katten kino kirke kirken kjaeresten
        kjaerlighet kjeften kjennskap kjokkenet kjole kjoleskapet kjonn kjoretoy klaer klaerne klassen klima klubben
        klubbene kollega kombinasjon kommentar kommune kommunen kommunene kompetanse kompis konflikt konflikten kong
        konge kongen konklusjon konkurranse konkurransen konsekvens konseptet konsert konserten kontakten konto
        kontoen kontoret kontrakt kontrakten kontroll kontrollen kopi korrupsjon kostnadene kraft kravene kreft krigen
        kriminalitet krise kritikk kritikken kroppen kultur kulturen kundene kunnskap kunnskapen kunst kunsten
        kunstnere kvalitet kvaliteten kvelden kvinnen kvinnene kysten laerere laereren laererne lagene landbruk
        landene landsbyen landslaget langrenn lappen ledelse ledelsen ledere lederen legen legene leilighet
        leiligheten lengde lengden lidelse ligaen likhet linje linjen linken lisa lise litteratur logn losningen loven
        luften lufthavn lund lyden lykke lyset magen makten malene maned maneden manen mangel mangfold mannen mareritt
        markedet maskin maskinen matematikk maten mediene medisin medlem medlemmene medlemskap meldingen mellomtiden
        mengde mengden meningen menn mennene menneske menneskene mennesket mesteparten metode metoden midten
        militaeret miljo miljoet minimum minutt mistanke mobilen modell modellen moral mord moren morgenen morten
        motivasjon motoren motstand mulighet muligheten mulighetene munnen museum musikk musikken myndighet
        myndighetene naboen naerheten naeringsliv narkotika nasjon natten natur naturen navnene nedgang nesen
        nettavisen nettside nettsiden nettsted nettstedet nettverk niva nivaet nokkelen nordland nordmenn nyhetene odd
        offeret okonomi okonomien ola omgang omrade omradene omradet operasjon operasjonen oppdrag oppdraget oppforsel
        oppgave oppgaven oppland opplegg opplevelse opprinnelse opptak orden ordene ordningen orene organisasjon
        ostlandet ovelse overflaten overgang overgangen overgrep overraskelse oversettelse oversikt overskudd overtid
        oya oyeblikk oyeblikket oynene panikk papir parken parorende partiene partiet pasienten passord pastand
        pengene pensjon periode perioden personen personene personlighet perspektiv pizza planen planene planeten
        plass plassen plast poeng poenget polen politi politiet politikere politikerne politikk politikken porno
        posisjon posten praksis presentasjon presidenten prest prinsesse prinsippet prisen prisene problemene
        problemet produksjon produksjonen produkt produktet profil profilen programmet programvare prosess prosessen
        prosjekt prosjektet psykologi publikum pund punktet raeva rapport rapporten rasisme reaksjon reduksjon regel
        regelen regelverk regi region regionen regjeringen reglene reisen reklame rekord religion respekt respons
        resten resultat resultatene resultatet retorikk retten rettighetene revolusjon risiko risikoen rollen roman
        rumpa runden russerne ryggen saken sakene salg salget samfunn samfunnet sammenheng sammenhengen samvittighet
        sangen sannhet sannheten scenen seieren sekund selskap selskapene selskapet selvmord selvtillit semifinalen
        seng senga sengen senteret sentrum serien sesong sesongen setningen sidene sikkerhet sikkerheten sinn
        situasjon situasjonen sjakk sjansen sjefen sjel sjo sjoen sjokolade skala skapet skien skjermen skjonnhet skog
        skogen skolene skudd skylden slutten sofaen sokere soknad soldatene solen solv sonnen soppel sovn sparken
        spillere spilleren spillerne spillet spissen sporsmal sporsmalene sporsmalet spraket stadion stadium stand
        standarden starten stasjon stasjonen staten statistikk statsrad status stedene stedet stemmene stemmerett
        stilen stillingen stjerne stjernen storrelse storrelsen stortinget straffen stranden strategi strekningen
        strommen studentene studie studiene studiet suksess summen svarene svein svenskene sykdom sykdommen sykehus
        sykehuset sykkel sykkelen synet systemet tabellen taket tallene tankene teamet teknikk teknologi teknologien
        teksten telefon telefonen telemark temaet temperatur temperaturen tendens tennene teori teorien tiar tida
        tiden tidene tidspunkt tidspunktet tilbud tilbudet tilfelle tilfellet tilgang tilhengere tillatelse tillit
        tiltak timene tingen tingene tittel tittelen tjeneste tjenesten tonn traden tradisjon trafikk trafikken
        trobbel troen trussel trygghet tunnelen turen tusen typen tyskerne uken ukene ulv ulykke ulykken undersokelse
        ungdom ungdommen ungdommene ungen ungene universitet unntak utdannelse utgangspunkt utgave utgaven utlandet
        utovere utsiden utsikt utslipp utstyret uttalelse uttrykket utvalg utvalget utviklingen valg valget vapen
        varene varsel vedtak veggen vegvesen veien vekst velgere vennen vennene venninne vennskap venstresiden verden
        verdenskrig verdien verken verksted verktoy versjon versjonen vesten videoen viken vilje vilkar villa vin
        vinden vinduet vinnere vinneren virkelighet virksomhet virksomheten vitenskap voldtekt
        """,
    ),
    "nl": (
        """
        aangenomen aanwezig aanwezige aardig aardige absoluut acht actief afgelopen afgesloten afhankelijk afkomstig
        afkomstige akkoord algemeen all alle alleen allen allerlei altijd ander andere anti arm arme bang bar bedoeld
        bedoelde begon begonnen begraven behoorlijk behoorlijke bekend bekende belachelijk belachelijke belangrijk
        belangrijke beneden bepaald bepaalde beperkt beperkte bereid bescherming beschikbaar beschreven besloten
        betaald betaalde betrokken bewust bewuste bezig bezocht bezochte bij bijzonder bijzondere blauw blauwe bleek
        blij blije blijkbaar bloed blog boos centraal compleet dagelijks dagelijkse degene der des dezelfde dicht
        dichtbij dichte die diep diepe dik direct directe dom dome dood drie druk duidelijk duidelijke duits duitse
        duur echt echte een eenmaal eenvoudig eenvoudige eerder eerdere eerlijk eerlijke eigen eigenlijk eigenlijke
        eindelijk engels engelse enkel enkele enorm enorme erg erge europees even extra fantastisch fantastische fijn
        fijne flink flinke fout foute frank frans franse geboren gebouwd gebouwde gebruikt gebruikte gedaan geen
        gegeven gehouden gek gekozen geleerd geleerde gelegen gelezen gelijk gelijke gelukkig gelukkige gemaakt
        gemaakte gemakkelijk genaamd generaal genoeg genoemd genoemde genomen geopend geplaatst geplaatste geraakt
        geregeld gericht gerichte geschreven gesloten gesproken gesteld gestelde getrouwd getrouwde gevaarlijk
        gevaarlijke gevallen gevangen gevangene gevestigd gevestigde gevonden gevraagd geweldig geweldige gewond
        gewonde gewonnen gewoon gezegd gezegde gezellig gezellige gezet gezien gezocht gezond gezonde goud gouden
        graag grappig grappige gratis groen groene groot groote groter grotere half hard harde heeft heel heerlijk
        heerlijke heet helemaal hetzelfde hoeveel hoeveelheid homo honderd hoog hopelijk houten huwelijk ieder iedere
        inclusief ingezet initiatief interessant interessante jammer jee jong jonge juist juiste kamp kant kapot kies
        klaar klein kleine kort korte koud koude kritiek kwaad kwijt laag laat lang lange langzaam lastig lastige leeg
        lekker lekkere letterlijk leuk leuke licht lichte lief link links linkse live los lucht maakte makkelijk
        makkelijke meerdere miljard miljoen min mis model moeilijk moeilijke mogelijk mogelijke momenteel mooi mooie
        moslims naar naast naaste namelijk nationaal natuurlijk natuurlijke nauwelijks nederlands nederlandse negen
        net niets nieuw nieuwe nieuws nodig nodige noord normaal officieel online onmiddellijk onmogelijk onmogelijke
        ontwikkeld ontwikkelde ontworpen ontzettend ook oost open openbaar opgenomen opnieuw oranje oud oude out over
        overleden paar parijs pas perfect perfecte personeel persoonlijk persoonlijke politiek politieke populair
        populaire positief prachtig prachtige precies premier prima pro publiek publieke raar recht rechte rechter
        rechts rechtse regelmatig regelmatige relatief rijk rijke rond ronde rood ruim ruime rust rustig rustige
        schoon schreef schuldig schuldige serieus sexy simpel simpele single slecht slechte slim snel sociaal speciaal
        speelde standaard steeds sterk sterke stijl stil stop stuk super tegenwoordig terecht terug tevreden tien
        tijdelijk tijdelijke tips toegevoegd toegevoegde trots trotse twaalf twee twintig uit uiteindelijk uitgebreid
        uitgebreide vaak vanuit vast vaste veel veilig veilige ver verboden verbonden verdeeld verdwenen vergeten
        verkeerd verkeerde verlaten verleden verliefd verloren verplicht verplichte verwijderd vier vijf vlak vol
        voldoende volledig volledige volwassen volwassene voor voorbij voorbije voormalig voormalige voornamelijk
        vorig vorige vreemd vreemde vreselijk vreselijke vrij vrije vroeg vroege vroeger vroegere waard waarde wakker
        warm warme website week wel welkom wereldwijd wereldwijde werkelijk werkelijke werkte west wit zat zeer zeker
        zekere zelf zes ziek zieke zoek zoveel zuid zwaar zwart zwarte
        """,
        """
        aanbieding aanbod aandacht aandeel aanklacht aankomst aankoop aanleiding aanloop aanmerking aanpak aanslag
        aansluiting aantal aanval aanvang aanvraag aanwezigheid aap aard aardbeving academie account achtergrond
        achternaam acteur actie activiteit actrice adres advertentie advies adviseur advocaat afbeelding afkomst
        aflevering afscheid afsluiting afspraak afstand agenda album alcohol alliantie amateur ambassade ambassadeur
        angst antwoord apparaat appel applaus arena arrestatie artiest artikel arts auteur auto autoriteit avontuur
        baan baard baas balans bank basis basisschool batterij bedrag bedreiging bedrijf beek beeld begrafenis begrip
        begroting behoefte bek bel belang belasting beleid belofte beloning bemanning bende beperking bereik berg
        beroep beschaving beschikking beschrijving besef beslag beslissing bestaan bestel bestemming bestrijding
        bestuur betekenis betrekking beveiliging bevel bevestiging bevolking bevrijding beweging bewijs bezetting
        bezoek bibliotheek bijbel bijdrage bijeenkomst binnenstad bioscoop blad blik bloem bocht bodem boek boel
        boerderij bom boodschap boord bord bos brandstof brein bril broek bron brood brug bruid bruiloft buik buis
        bundel bureau burgeroorlog cadeau cafe camera campagne capaciteit carriere casino categorie cel centrum
        chauffeur circus cirkel client coalitie collectie college combinatie comite commissaris commissie competitie
        concentratie concept concert conclusie conferentie congres constructie crisis cultuur cursus daad dagblad
        dagboek dak datum deal debuut deel deelname definitie deken dekking delta democratie demonstratie depressie
        deur dialoog dieet diefstal dierentuin dijk ding directeur discussie documentaire doek doel doelgroep doelwit
        dollar domein doos dorp draad draai draak drama dreiging droom duel duim duivel duo dvd echtgenoot economie
        editie eenheid eeuw eigendom eiland einde elftal ellende emotie engel erfenis erfgoed erkenning ervaring euro
        eva evolutie examen excuus expeditie expert explosie fabriek faculteit fantasie fase federatie feit fenomeen
        festival fiets figuur filosofie finale financien fles forum foto fotografie fractie frequentie functie gebed
        gebeurtenis gebied gebouw gebrek gebruik gedeelte gedoe geheugen geld gelegenheid geloof geluid geluk gemak
        gemeenschap gemeente gemeentehuis gemeenteraad generatie geschiedenis gesprek getal getuige geur geval
        gevangenis gevecht gevolg geweten gewicht gewoonte gezelschap gezin gezondheid gids gif glas glimlach
        godsdienst goedkeuring gok gouverneur graad grap gras green grens griep groep grond grondgebied grondwet gsm
        haag haal haan handel handtekening hectare hek hekel held helft helm hemel herdenking herinnering hersenen
        heuvel historie hobby hoed hoef hoek hof hogeschool hond honing hoofd hoofdpijn hoofdstad hoofdstuk hoogte
        hoogtepunt hoop hoorn horloge hotel houding huid huis huisarts huiswerk hulp huur hypotheek idee imago indruk
        industrie info ingang inhoud innovatie inrichting inspecteur inspiratie installatie instantie instituut
        interieur introductie invasie invloed inzicht iris item jaap jas jeans jubileum jungle jurk kaas kabel kabinet
        kamerlid kampioen kanaal kandidaat kans kapitein kasteel keel kennis kenteken kerel kerk kern ketting keuken
        keus keuze kijk kijkje kim kip klacht klas klasse kleur klik klimaat kliniek knie knop knuffel koelkast koers
        koffie kogel kok konijn koning koninkrijk kooi koop kop kopie koppel korting kracht krijg kroon kruis kunst
        kunstwerk kus kwaliteit kwart kwestie lach lading lancering landgoed landschap laptop leeftijd leerkracht
        leeuw leiding lengte lening leugen lezing lichaam lid lidmaatschap lied liefde liefje lieverd lijf lijn
        locatie logo loon loopbaan luchthaven luchtmacht luik lul maag maagd maal maaltijd maan maand maat maatregel
        maatschappij marathon massa materiaal maximum medaille meerderheid meid meisje melding melk mening merendeel
        merk metaal methode metro middel milieu ministerie minuut misbruik misdaad misdrijf missie mix mogelijkheid
        mol molen moord moskee motivatie muis museum muur muziek naam nachtmerrie nadeel natuurgebied nederlaag
        neerslag nek netwerk neus nieuwsbrief niveau nood noodzaak oceaan oefening ogenblik olie omgeving omroep
        omschrijving onderdeel onderneming onderwerp onderzoek ongeluk ongeval ontdekking ontmoeting ontslag ontvangst
        ontwerp onzekerheid oog oordeel oorlog opbrengst opdracht operatie opkomst opleiding oplossing opmerking
        opnamen oppervlak oppositie oprichting oproep opslag opstand optie organisatie orkest oven overdracht
        overeenkomst overgang overheid overleg overname overstap overtuiging overval overwinning overzicht paal paard
        pagina paleis pand paniek paradijs partij paspoort passie patient patroon paus pauze penis pensioen periode
        pers persbericht persoon petitie piano piet pijn pik piloot pizza plaat plaats planeet plank platteland plek
        plicht ploeg podium poes poezie poging politicus politie poort portemonnee portret positie presentatie
        prestatie prijs prinses prioriteit probleem procedure proces product productie proef profiel promotie
        provincie psychologie publicatie raad raam ramp rand rapport reactie realiteit recept rechtbank rechtszaak
        redacteur redactie redding reden reeks referendum regel regelgeving regering regime regio regisseur
        registratie rekening relatie religie renovatie republiek reputatie resolutie resultaat revolutie richting rij
        rijbewijs rijkdom risico robot roep rol rubriek rug ruil ruimte ruzie salaris samenleving samenvatting
        samenwerking satelliet scenario schaal schaamte schaduw schakel schatting schedel scheiding schema scherm
        schiereiland schijf schild schilderij schip schoen schoonheid schot schrik schuld schuur seconde secretaris
        sectie seizoen selectie senaat sessie signaal sint situatie sla slaaf slaap slag slang sleutel sluiting smaak
        sms snelheid snelweg soldaat spanning speech speelgoed spel spiegel spin staal stad stadhuis stadion stadium
        staf stam stand standpunt stap status steek steen stel stelsel stemming steun stichting stijging stoel stof
        straal strand strategie streep strijd stroom structuur studie stuur subsidie succes supermarkt symbool systeem
        taak taal taart tabel tafel tandarts techniek technologie teken tekening tekst telefoon televisie tempel
        temperatuur termijn terras terrein terreur thema theorie therapie tijd tijdperk tijdschrift tijdstip titel
        toegang toepassing toernooi toespraak toestand toestel toets toetsenbord toeval toezicht toneel tong toon
        toren traditie traject tram trein trio troon trui tuin twijfel uitbreiding uitdaging uitdrukking uitgave
        uitgeverij uitkering uitleg uitnodiging uitrusting uitslag uitspraak uitvoering uitzending uitzicht
        uitzondering unie universiteit universum uur vacature vaderland vak vakantie vallei veiligheid veld
        verandering verband verbetering verbinding verblijf verbod verdediging verdieping verdrag vereniging verf
        vergadering vergelijking vergunning verhaal verhoging verhouding verjaardag verkiezing verklaring verkrachting
        verlies vermelding verplichting verrassing verschil versie verslag verspreiding verstand versterking
        vertraging vertrek vervolg verwachting verwarring verwijzing verzekering verzoek vestiging videoclip vijand
        villa virus visie vlag vlees vlieg vliegtuig vliegveld voeding voeg voertuig voet voetbal vogel volk volume
        vonnis voorbeeld voordeel voorkeur voorraad voorstel vooruitgang voorwaarde voorwerp vorm vorming vraag
        vrachtwagen vrees vreugde vriend vriendin vriendschap vrijdagavond vrijheid vuur vuurwerk waardering waarheid
        waarschuwing wachtwoord wapen webcam wedstrijd weerstand wens wereld wereldoorlog werk werking wetboek
        wetenschap wetgeving wetsvoorstel wifi wijk wijn wijsheid wijze wijziging winkel winst woestijn woning
        woonplaats woord zaak zaal zak zand zangeres zee zeeland zege zegen zekerheid zetel ziekenhuis ziel zitting
        zoektocht zon zoom zorg zwembad
        """,
    ),
    "pl": (
        """
        aktywny amerykanska amerykanski amerykanskie angielski aresztowany bezpieczne bezpieczny biala biale bialy
        biedny bogaty boze byla byly cala cale caly chora chore chory ciekawa ciekawe ciekawy ciezki ciezkie cudowne
        czarna czarne czarny czerwona czerwone czerwony czwarty czysta czyste czysty dalsze dana dane dany darmowe
        dawna dawne dluga dlugi dlugie dobra dobre dobry dodatkowe domowe dostala dostepna dostepne dostepny drewna
        drobne droga drogi drogie druga drugi drugie dumna dumny duza duze duzy dzisiejszy dziwne dziwny europejska
        europejski europejskie fair fajna fajne fajny finansowe francuski francuskie gdanska generalny glowna glowne
        glowny glupi glupia glupie gorsza gorsze gospodarcze gospodarczy gotowa gotowe gotowy handlowe historyczne
        hiszpanski idealna idealne idealny indywidualne inna inne inny interesujace internetowa internetowe
        internetowy istotne jaka jakas jaki jakie jakiekolwiek jakies jakikolwiek jakis jasna jasne jeden jedna jedno
        jedyna jedyne jedyny kara kary katolicki kazda kazde kazdy kluczowe kolejna kolejne kolejny konieczne
        konkretne krajowa krolowa krotka krotki krotkie ksiezy ktora ktore ktory ktorys kwietnia ladna ladne ladny
        latwe lepsza lepsze lepszy letni letnia letnie liczne lokalne ludzkie mala male maly medyczne mega meskie
        miejska miejski mila mile mily mloda mlode mlody mniejsza mniejsze mocne moj moja moje mozliwe mozna musze
        muzyczny najgorsze najgorszy najlepsza najlepsze najlepszy najwieksza najwieksze najwiekszy najwyzszy narodowa
        narodowe narodowy nastepne nastepny nastepujace nasz nasza nasze naturalne naturalny naukowe niebieski
        niedawna niektore nielegalne niemiecki niemieckie niemozliwe niesamowite niesamowity niewazne niewielkie
        niezalezne niezbedne niezly niski niskie normalne normalny nowa nowe nowoczesna nowy obcy obecna obecne obecny
        oboje oczywiste odpowiedni odpowiednie oficjalna oficjalne oficjalny ogolne ogromna ogromne ogromny okej ona
        online ono open oryginalny osobiste ostatni ostatnia ostatnie otwarta otwarte otwarty panstwowe pelen pelna
        pelne pelny pewien pewna pewne pewny piekna piekne piekny pierwsza pierwsze pierwszy podobna podobne podobny
        podstawowa podstawowe polityczna polityczne polityczny polozony polska polski polskie poludnia poludnie
        poludniowa pop poprzedni popularne popularny porno potrzebna potrzebne potrzebny powazne powazny powierzchni
        powierzchnia powinna powinny powstala powstaly pozostale pozytywne prawa prawdziwa prawdziwe prawdziwy prawne
        prosta proste prosty prowadzacy prowadzona prowadzone prywatne prywatny przekonany przeszla przyszla przyszly
        publiczna publiczne puste rad rada rana rany religijne rodzinne rosyjska rosyjski rosyjskie rozne sam sama
        samo serio silna silne silny skazany slabe slaby slaska slodki slodkie smieszne smutne specjalne specjalny
        spodnie spoko spoleczna spoleczne spoleczny sportowe spory srednia srednie stala stale staly stara stare
        starsze starszy stary stosowane straszne straszny super swe swiatla swieta swietna swietne swietny swiety swoj
        swoja swoje szczesliwa szczesliwy szkolny szybki szybkie taka taki takie tanie techniczne telewizyjne ten
        tradycyjne trudna trudne trudny trwala trwaly trzeci trzecia trzecie twoj twoja twoje tyle typowe typowy
        ulubione ulubiony umowa umowy video warta warte wasz wasza wasze wazna wazne wazniejsze wazny wewnetrzne wideo
        widoczne wieksza wieksze wiekszy wielka wielki wielkie winny wlasciwy wlasne wlasny wola woli wolna wolne
        wolny wroga wspaniala wspaniale wspanialy wspolne wspolny wszelkie wszystkie wszystko wyborcza wyborcze
        wyborczy wybrane wybrany wyjatkowy wysoka wysoki wysokie wyzsza wyzsze wyzszy zabawne zachodnie zaden zadna
        zadne zadowolony zagraniczne zamknieta zamkniete zamkniety zarty zawodowe zdrowe zdrowy zgodne zielona zielone
        zielony zla zle zlota zlote zloty zly zmarla znana znane znany zwiazana zwiazane zwiazany zwykla zwykle zwykly
        """,
        """
        absurd adres afera afryka agencja agnieszka akademia akcent akcja akt aktorka aktualizacja aktywnosc albert
        album alfa alicja alkohol allegro ameryka anglia apel aplikacja archiwum armia artykul aspekt atak atmosfera
        auschwitz australia auto autobus awans babka bajka banda bank basen bateria baza beata berlina bezrobocie
        bialka bialorus bialystok biblia biblioteka bieda bieg bilans bilet biologia bitwa biuro biznes blad blok
        bogactwo bohaterka boisko bok bomba brazylia brytania brzeg brzuch budowa budowie budynek budzet bunt burza
        business buta bydgoszcz bzdura calosc cech cel centrum cenzura chaos charakter chemia chleb choroba chwala
        chwila ciag cialo ciasto cierpliwosc ciezar cisnienie cisza cmentarz college cud cukier cykl cyrk cytat czesc
        czestochowa czolo czyn czynnik dach dama daniel debata debiut decyzja definicja demokracja departament
        depresja deszcz dialog diana dieta dlon dlug dlugopis dlugosc dna dno dobro dochod dodatek dokument dol dom
        domek dostep dowod dramat drewno druzyna drzewo duch dupa dusza dwojka dwor dyplom dysk dyskusja dystans dywan
        dzialalnosc dzialka dziecinstwo dziecko dziedzictwo dzielnica dzielo dziennik dziennikarka dziewczyna
        dziewczynka dzwiek edukacja edycja efekt egzamin ekipa ekran eksperyment element elzbieta emma energia etap
        europa ewa fabryka fabula facebook fakt fala festiwal filip filmik filozofia flaga forum fot fotel fragment
        francja frekwencja fundacja fundusz funkcja gabinet gabriela galeria gardlo garsc gatunek gaz gazeta gdansk
        generacja georgia gest gimnazjum glod glos glowa glupota gmin gmina gniazdo gniew godnosc godzina gospodarka
        gowno granica grecja green grob grunt grupa grzech gwalt gwiazda hajs halas handel hanna haslo herbata
        historia hiszpania holandia hold hollywood horror hotel house hymn ilosc imie imperium impreza informacja
        inicjatywa instagram instytucja instytut interes inwestycja iphone ipn islam istota izba jakosc japonia jazda
        jednostka jersey jezioro jezyk joanna jordan jork juan julia kadr kalendarz kamera kamien kampania kanada
        kanal kapital kariera karma kart karta katalog katarzyna katastrofa kategoria kawa kawal kawalek kierunek kij
        kino klamstwo klasa klimat klub koalicja kobieta kod kodeks kolej kolejka kolekcja kolezanka kolko kolor
        komedia komentarz komiks komisja komitet kompleks komputer komunikacja komunikat koncepcja koncert konferencja
        konflikt kongres koniec koniecznosc konkurencja konkurs konstrukcja konstytucja kontakt kontekst konto
        kontrakt kontrola korea korona korzysc kosciol kosmos koszmar koszt koszulka kradziez kredyt krok krolestwo
        kropka krs kryterium kryzys krzeslo krzyk krzyz ksiazka ksiega ksiezniczka ksiezyc ksztalt kubek kult kultura
        kupa kwas kwestia kwiat kwota laboratorium lancuch laptop laura leb lecha legenda lek lekcja lew lewica liceum
        liczba linia linka liscie lista literatura lodz logo lokalizacja londyn lotnisko lozko lublin lud ludnosc
        ludzkosc lustro madryt magazyn magdalena magia majatek makaron makijaz malgorzata malzenstwo mandat mapa
        marketing marsz masakra maslo maszyna mechanizm medium meksyk mem metoda metro miasteczko miecz miejsce
        miejscowosc miesiac mieso mikolaj mikrofon milosc ministerstwo miod misja mistrzostwo mix mleko mlodziez
        mnostwo moda modlitwa moment monachium montaz morderstwo morze motyw mowa mozg mozliwosc msz muzeum nacisk
        nadzieja nadzor nagroda nakaz narod narzedzie nasa natalia natura nauczycielka nauka nazwa nazwisko news niebo
        nienawisc nieprawda nina noga norma nowosc noz numer obecnosc obiad obiekt oblicze obowiazek oboz obraz
        obrazek obrona obsluga obszar obywatelstwo ocean ocena ochrona odbior odcinek oddech oddzial odleglosc odmiana
        odpowiedz odsetek odwrot oferta ofiara ogien ogol ogrod okazja okladka okno oko okres okret onz opcja operacja
        opinia opis opole opor opowiesc opozycja organizacja organizm osiedle osoba osobowosc osrodek owoc paczka
        pakiet palac palec paliwo pamiec pamietnik panstwo papier parlament partia pasek paszport patriotyzm pawel
        personel pewnosc piekno pietro pilka piosenka pismo pistolet piwo pizza plac plakat planeta platforma plec
        plecak plyt plyta pobyt pocalunek pociag poczatek poczta podatek podium podpis podrecznik podstawa poezja
        poglad pogoda pojazd pokaz pokoj pokolenie policja polnoc polonia polowa polsat pomnik pomoc pomylka pomysl
        popoludnie populacja popularnosc poradnik poranek porazka portal portfel portret porzadek posilek postawa
        postep potencjal potrzeb powiat powietrze powrot pozar pozew poziom pozycja praca prad pragnienie predkosc
        prezent prezentacja proba procedura procent proces produkcja produkt profil projekt prokuratura promocja
        propaganda propozycja prosba protokol prysznic przebieg przedmiot przedszkole przeglad przekaz przemoc
        przemysl przepis przeplyw przerwa przesada przestepstwo przeszlosc przycisk przyczyna przyjaciolka przyjemnosc
        przyklad przypadek przystanek przyszlosc pseudo psl ptak publicznosc publikacja puchar pysk pzpr rachunek
        racja radosc ramie raport rasizm reakcja real realizacja redakcja referendum region regulamin reka reklama
        rekord relacja religia remont republika restauracja reszta rewolucja rezultat robot robota rocznica rocznik
        rodzaj rog rolnictwo romans rosja rower rownosc rozkaz rozklad rozmiar rozmowa roznica roznorodnosc rozum
        rozwoj ruch ryba rynek rysunek rytm ryz ryzyka ryzyko rzad rzeszow rzut salon samobojstwo samochod samolot san
        sanktuarium scena scenariusz schemat sciana sciezka sejm sekcja sektor seminarium senat serce serial serwis
        sesja sezon siec siedziba sierra silnik skandal sklad skok skora skrot skutecznosc skutek slabosc slad slask
        sledztwo slonce slowacja slownik slowo sluzba smak smierc sms smutek snieg sofia solidarnosc sondaz song
        sosnowiec spacer spadek spektakl spektrum spiew spolecznosc spolka sprawa sprzedaz sprzet srodek srodowisko
        stacja stadion standard stanowisko statek status stol stolica stopa stosunek strajk strata strategia straz
        strefa stres strona struktura strzal studium styl stypendium sukces sukienka swiadectwo swiadomosc swiat
        sygnal sytuacja szacunek szalenstwo szansa szczescie szczyt szerokosc szklo szkola szlak szok szpital sztuk
        sztuka szwecja szydlo tablica tajemnica talent taniec tatuaz teatr technikum technologia tekst teledysk
        telefon telewizja telewizor temat temperatura teoria terapia termin terroryzm terytorium tlo towar towarzystwo
        tozsamosc tradycja tragedia trasa trening tresc tron trybunal turcja turniej twarz tworczosc tydzien tygodnik
        tylek tytul ucha ucho uczelnia uklad ukraina ulica umiejetnosc umysl unia uniwersytet upadek urlop uroczystosc
        urzad usmiech ustawa utrata utwor uwaga victoria wad waga walka warszawa wartosc watek wegiel wersja wesele
        wiadomosc wiara wiatr widok wieczor wiedza wiek wiekszosc wielkosc wiersz wies wieza wilk wina wino wirus
        wizerunek wizja wizyta wklad wladza wlasnosc wniosek woda wojewodztwo wojna wojska wojsko wolnosc wpis wplyw
        wroclaw wrzesnia wschod wskaznik wspolnota wspolpraca wstep wybor wybrzeze wybuch wycieczka wydawnictwo
        wydzial wyglad wyjazd wykaz wyklad wymiana wymiar wynik wypadek wypowiedz wyprawa wyraz wyrok wyscig wysilek
        wysokosc wyspa wystawa wystep wywiad wzor wzrok wzrost york youtube zabawa zabieg zabojstwo zachod zakaz
        zaklad zakres zaloga zamach zamek zamiar zapach zapas zapis zarzad zarzut zasada zasieg zaszczyt zawartosc
        zawod zbior zdolnosc zdrowie zegar zegarek zemsta zespol zgoda ziemia ziobro zjawisko zjazd zlo zmiana
        znajomosc znak zrodlo zwiazek zwlok zwrot zwyciestwo zwyczaj zysk zywnosc
        """,
    ),
    "ru": (
        """
        активная активное активныи американская американскии американское англ англииская англиискии англииское белая
        белое белыи близкая близкии близкое боевая боевое боевои больная больное больнои большая большее большии
        большое большои британская британскии британское бывшая бывшее бывшии важная важное важныи ваш ваша ваше
        ведущая ведущее ведущии великая великии великое верховная верховное верховныи весь внешнее внешнии внешняя
        внутреннее внутреннии внутренняя военная военное военныи восточная восточное восточныи все вся всякая всякии
        всякое вторая второе второи высокая высокии высокое генеральная генеральное генеральныи главная главное
        главныи голубая голубое голубои городская городское городскои данная данное данныи детская детскии детское
        добрая доброе добрыи долгая долгии долгое домашнее домашнии домашняя дорогая дорогое дорогои другая другое
        другои единая единое единственная единственное единственныи единыи ета ето етот женская женскии женское живая
        живое живои западная западное западныи зеленая зеленое зеленыи знакомая знакомое знакомыи знаменитая
        знаменитое знаменитыи значительная значительное значительныи золотая золотое золотои игровая игровое игровои
        известная известное известныи иная иное инои интересная интересное интересныи историческая историческии
        историческое каждая каждое каждыи какая какое какои китаиская китаискии китаиское кое кои короткая короткии
        короткое которая которое которыи коя красивая красивое красивыи красная красное красныи крупная крупное
        крупныи летнее летнии летняя личная личное личныи любая любимая любимое любимыи любое любои максимальная
        максимальныи маленькая маленькии маленькое местная местное местныи милая милое милыи мировая мировое мировои
        младшая младшее младшии мое мои молодая молодое молодои морская морское морскои московская московскии
        московское моя мужская мужское мужскои музыкальная музыкальное музыкальныи народная народное народныи
        настоящая настоящее настоящии научная научное научныи национальная национальное национальныи наш наша наше
        небольшая небольшое небольшои некоторая некоторое некоторыи немая немецкая немецкии немецкое немое немои
        нижнее нижнии нижняя никакая никакое никакои новая новое новыи ночная ночное ночнои областная областное
        областнои общая общее общественная общественное общественныи общии обычная обычное обычныи огромная огромное
        огромныи один одна одно основная основное основнои основныи особая особое особыи остальная остальное остальнои
        открытая открытое открытыи отличная отличное отличныи официальная официальное официальныи очередная очередное
        очереднои первая первое первыи плохая плохое плохои подобная подобное подобныи позднее позднии поздняя
        политическая политическии политическое полная полное полныи последнее последнии последняя правая правильная
        правильное правильныи правовая правовое правовои правое правыи прекрасная прекрасное прекрасныи простая
        простое простои прошлая прошлое прошлыи прямая прямое прямои пятая пятое пятыи рабочая рабочее рабочии родная
        родное родныи россииская россиискии россииское русская русскии русское сам сама самая само самое самыи
        свободная свободное свободныи свое свои своя святая святое святои сегодняшнее сегодняшнии сегодняшняя сеи сие
        сильная сильное сильныи синее синии синяя сия следующая следующее следующии сложная сложное сложныи
        собственная собственное собственныи советская советскии советское современная современное современныи
        социальная социальное социальныи специальная специальное специальныи спортивная спортивное спортивныи среднее
        среднии средняя старая старое старыи странная странное странныи супер такая такое такои тверская тверское
        тверскои твое твои твоя телефонная телефонное телефонныи техническая техническии техническое тот третии третье
        третья трудовая трудовое трудовои тяжелая тяжелое тяжелыи уголовная уголовное уголовныи украинская украинскии
        украинское умная умное умныи федеральная федеральное федеральныи французская французскии французское
        футбольная футбольное футбольныи хорошая хорошее хорошии целая целое целыи центральная центральное центральныи
        чеи черная черное черныи четвертая четвертое четвертыи чистая чистое чистыи чужая чужое чужои чье чья широкая
        широкии широкое эта это этот южная южное южныи
        """,
        """
        авария авто автобус автомобиль агентство адрес академия акт активность акция алкоголь альбом америка анализ
        англия аниме аппарат арест армия арсенал архив ассоциация атака атмосфера аэропорт аэс база баку баланс банк
        банка бассеин безопасность беларусь белье берлин библиотека бизнес билет битва болезнь боль больница
        большинство борт борьба бред бригада бюджет бюро вариант варианта вашингтон введение ввп веб верность
        вероятность версия верх вес ветер вечер вещь взгляд вид видео визит вина вино вирус виски вклад вконтакте вкус
        владивосток власть влияние внимание вод вода возвращение воздух возможность возраст воина волна волос воля
        вооружение вопрос воронеж ворот воспитание восток впечатление вред встреча вход выбор вывод вызов вып
        выполнение выпуск выражение высота выставка выступление выход газ газа газета газпром германия гибель глаз год
        голос голосование гонка гордость горло город государство готовность гран граница грудь груз группа грязь
        давление дар дата дверь двигатель движение двор дворец деиствие департамент деревня дерево дерьмо детство
        дефицит деятельность диалог дизаин динамика динамо диплом диск длина дневник днепр днк дно днр добыча доверие
        договор дождь доклад документ долг должность долл доллар доля дом донбасс донецк достижение доступ доход
        дружба дтп душ дым дыхание евро европа египет егэ еда единство екатеринбург желание жизнь жилье журнал жюри
        зависимость завод завтрак задание задача заказ заключение закон законопроект зал зала залог замена занятие
        запад запись запуск зарплата заседание защита заявление звание звук здание здоровье земля зенит зеркало знак
        знакомство знание значение золото зона игра идея изд издание издательство изменение изображение изучение
        имущество имя индекс индия институт инструмент интервью интерес интернет информация иорк иран иск исключение
        искусство испания исполнение испытание исследование история источник италия кабинет казань казахстан казино
        календарь камень камера канада канал капитал карта картина карьера каталог катастрофа кафе качество квартал
        квартира киев кино китаи кладбище класс климат клуб ключ кндр книга кнр код кодекс кожа количество колледж
        коллектив коллекция кольцо команда командование комиссия комитет комментарии комната компания комплекс
        компьютер конгресс конец конкурс контакт контракт контроль конференция конфликт концепция концерт копия
        корабль корпус космос костюм кофе кпрф кпсс краи краснодар красота кредит кремль крепость кресло крест кризис
        крик кровать кровь круг крым кубок культура курс кусок кухня куча лагерь легенда лед ленинград лента лес леса
        лет летие лечение лига линия литература личность лодка ложь локомотив лондон луна магазин маиами маидан мак
        манчестер маршрут масло масса материал матч мая мвд мгу мебель медаль меню место месяц метод метро механизм
        меч мечта миг мид миллион мин министерство минобороны минск мир миссия митинг млн млрд мнение множество мозг
        молодежь молока молоко молчание момент монастырь москва мост мощность мтс музеи музыка мусор мчс мысль мясо
        мяч набор надпись название назначение наказание наличие налог нападение направление напряжение народ нарушение
        население настроение наступление нато наука небо недвижимость неделя недостаток ненависть нефть нии новгород
        новосибирск новость нож ноль номер норма нос ночь нтв нхл оао обвинение обед обеспечение обзор обл область
        обмен оборот оборудование образ образец образование обращение обсе обслуживание обстановка обсуждение обувь
        обучение общение общество объединение объект объявление объяснение огонь одежда одесса озеро океан окно округа
        оон ооо опасность операция описание определение опрос опыт орган организация организм оружие освобождение
        основание остров ответ отдел отделение отдых отель отказ открытие отличие отношение отпуск отряд отсутствие
        отчет офис оформление охрана оценка очередь ошибка ощущение падение пак пакет палец пальто памятник память пар
        пара парад париж парк парламент партия паспорт перевод передача переход перечень период пермь песня песок
        петербург печать пиво пистолет письмо питание план планета плата платье плен плечо плотность площадь победа
        побережье поведение поверхность повесть повод поворот повышение погода подарок подготовка поддержка
        подмосковье подпись подход поезд поездка пожар позиция поиск показ показатель поколение полгода полиция полк
        полка положение получение полчаса польша помещение помощь понимание понятие популярность попытка поражение
        портал портрет порту порядок поселок пособие посольство пост постель потенциал потеря поток поход почта
        появление пояс праздник предложение предмет предприятие преимущество пресс пресса преступление прибыль
        приглашение приговор прием приз признание приказ приложение применение принцип принятие природа присутствие
        причина проблема проведение проверка прогноз программа прогресс продажа продолжение продукт продукция проезд
        проект произведение производство прокуратура проспект пространство просьба протест протокол профиль процент
        процесс пункт путешествие путь работа радио радость развитие разговор размер разница разработка разрешение
        разум раион ран расписание расположение распоряжение рассказ рассмотрение расстояние расчет расширение раунд
        реакция реал реализация реальность революция регион редакция режим результат реис реитинг река рекорд ремонт
        республика ресторан речь решение риа рис риск рисунок родина рок роль россия рост рсфср руб рубль рука
        руководство русь рынок ряд сад саит самолет сан сахар сахара сбор сборник свадьба свобода связь сделка
        севастополь север сезон секрет секс сектор сервис сердце серебро сериал серия сеть сибирь сигнал сила символ
        система сити ситуация ска сказка скандал склад скорость слабость следствие словарь слово служба смена смерть
        смесь смех смысл снг снег снижение собрание событие совет совещание согласие соглашение содержание создание
        сознание сок сокращение солнце соль сон сообщение сообщество состав состояние сохранение сочетание союз спб
        спектакль список спокоиствие спорт способ способность справочник средство срок сср ссср стадион стакан станция
        старт статус статья стен стена степень стиль стоимость стол столица сторона стр страна страница стремление
        стрит структура студия суд судьба сумма суп схема сцена сценарии счастье счет съезд сюжет сюрприз таблица
        такси талант танец танк тбилиси творчество театр текст тел телевидение телевизор телеканал телефон тело
        температура тенденция тень теория термин территория тест технология течение титул тишина товар ток токио толпа
        торговля торпедо точка трагедия традиция транспорт требование трек треть труд труп туалет турнир турция тыс
        убииство уважение увеличение уверенность угол угроза удар удовольствие уефа ужас ужин указ украина укрепление
        улица улучшение умение университет управление урал уровень урожаи успех установка устроиство утро уфа ухо уход
        участие участок учебник училище учреждение ущерб факт фактор фамилия фбр федерация фестиваль фигура философия
        фильм финал фирма флаг флот фонд форма формат формирование формула форум фото фотография франция фрг фронт фсб
        функция футбол характер харьков хвост химия хлеб ход хозяиство хоккеи храм царство цветок цена ценность центр
        церемония церковь цик цикл цру цска час часть челси челябинск чемпионат четверть чикаго чили численность число
        чтение чувство чудо шаг шанс ширина школа шоссе шоу штаб штат штука шум шутка экз экзамен экипаж экономика
        экран экс эксперимент экспорт экспресс элемент энергия эпизод этаж этап эфир эффект явление япония ящик
        """,
    ),
    "sv": (
        """
        absolut absoluta absolutt aktiv aktiva aktivt allman allmana allmant alternativ alternativa alternativt
        amerikansk amerikanska amerikanskt ansvarig ansvariga ansvarigt arg arga argt arlig arliga arligt bekant
        bekanta bekantt beredd beredda bereddt besviken besvikena besvikent bla blaa black blacka blackt blat boken
        bokena bokent dalig daliga daligt dansk danska danskt deltagare deltagarea deltagaret delvis delvisa delvist
        direkt direkta direktt dod doda dodt duktig duktiga duktigt dum duma dumt egen egena egent ekonomisk
        ekonomiska ekonomiskt endast endasta endastt enkel enkela enkelt enorm enorma enormt ensam ensama ensamt exakt
        exakta exaktt fantastisk fantastiska fantastiskt fara faraa farat fast fasta fastt fin fina final finala
        finalt fint fodd fodda foddt forfattare forfattarea forfattaret forklara forklaraa forklarat forskare
        forskarea forskaret forsvara forsvaraa forsvarat fort forta fortt fri fria frisk friska friskt frit from froma
        fromt full fulla fullt galen galena galent genast genasta genastt gift gifta giftt glad glada gladt goa god
        goda godt got grad grada gradt gratis gratisa gratist gravid gravida gravidt gron grona gront grund grunda
        grundt halv halva halvt hard harda hardt harlig harliga harligt hel hela helt hungrig hungriga hungrigt
        intressant intressanta intressantt invanare invanarea invanaret invandrare invandrarea invandraret just justa
        justt kand kanda kandt kasta kastaa kastat knappast knappasta knappastt konstig konstiga konstigt korrekt
        korrekta korrektt kort korta kortt kram krama kramt lagom lagoma lagomt lakare lakarea lakaret larare lararea
        lararet latt latta lattt lea ledare ledarea ledaret ledig lediga ledigt ledsen ledsena ledsent let ljus ljusa
        ljust lugn lugna lugnt lycklig lyckliga lyckligt man mana mant mastare mastarea mastaret medborgare
        medborgarea medborgaret medveten medvetena medvetent minst minsta minstt misstankt misstanktt mobil mobila
        mobilt modern moderna modernt nara naraa narat nervos nervosa nervost nojd nojda nojdt normal normala normalt
        nya nyfiken nyfikena nyfikent nyt offentlig offentliga offentligt ofta oftaa oftat oppen oppena oppent orolig
        oroliga oroligt osaker osakera osakert ovan ovana ovant perfekt perfekta perfektt personlig personliga
        personligt plan plana plant politisk politiska politiskt positiv positiva positivt precis precisa precist
        privat privata privatt radd radda raddt ratt ratta rattt ren rena rent riktig riktiga riktigt rod roda rodt
        rolig roliga roligt rum ruma rumt saker sakera sakert sakta saktaa saktat salt salta saltt satt satta sattt
        sen sena sent serios seriosa seriost sjuk sjuka sjukt skon skona skont skyldig skyldiga skyldigt smart smarta
        smartt snabb snabba snabbt snall snalla snallt snygg snygga snyggt social sociala socialt sot sota sott spara
        sparaa sparat speciell speciella speciellt spelare spelarea spelaret stark starka starkt stolt stolta stoltt
        sugen sugena sugent svag svaga svagt svara svaraa svarat svart svarta svartt svensk svenska svenskt tacksam
        tacksama tacksamt tom toma tomt toppen toppena toppent total totala totalt tranare tranarea tranaret trevlig
        trevliga trevligt trott trotta trottt tvungen tvungena tvungent tydlig tydliga tydligt tyst tysta tystt
        underbar underbara underbart upprord upprorda upprordt utmarkt utmarkta utmarktt valkommen valkommena
        valkomment van vana vanlig vanliga vanligt vant vard varda vardt vare varea varet varm varma varmt vid vida
        vidt viktig viktiga viktigt vinnare vinnarea vinnaret vis visa viss vissa visst vist vit vita vitt vuxen
        vuxena vuxent ytterligare ytterligarea ytterligaret
        """,
        """
        abo abort ack adress advokat affar agenda agg akademiker aktenskap aktivitet alan album alder alkohol
        allmanhet allvar ambulans amne analys andamal andel andetag android ange angest angrepp anka anmalan annons
        ansikte ansokan ansprak ansvar anta antal anvandarnamn apotek app apple apropa arbete arbetsdag arbetskraft
        arbetsloshet arbetsmiljo arbetsplats arbetstid arena arkitektur arkiv armband arsenal artikel asikt ass
        astadkomma asyl ata atanke aterga attityd avbryta avdrag avga avsikt avsnitt avstand avtal axel backa bacon
        bakgrund balans bana barndom batteri bebis bedrageri bedriva befal begaran begrepp behalla behov bekostnad
        bekraftelse bekymmer bensin berattelse beredskap berg besked beskriva besok besvikelse betydelse betyg
        bibliotek bidrag bil bild biljett bistand bit bjuda blasa blick blogginlagg blomma blues bog bok bolag bord
        borjan bostad botten braka branna bransch bransle brev brinna britt brod broder brollop brott brottslighet
        brud bruk bry bryta budskap business butik byggnad byte cafe cancer centimeter centrum chans choklad cigg
        cirkus citat college cup cykel dack dagbok dagis damm dansa datum debatt definition delta demokrati depression
        detalj diabetes diagnos dialog diktatur diskussion distrikt division djur dna dodsfall dollar domstol dorr
        drake drama dricka drift driva dryck dvd effekt efterfragan efternamn egendom egenskap ekonomi elev elit emma
        energi engagemang enhet ensamhet erbjuda erfarenhet etnicitet eurovision eva evenemang evighet examen exempel
        exemplar existens expert fabrik fagel faktum falt familj fangelse fantasi farg fart fartyg fatal fattigdom
        favorit feminism fenomen festival figur fika filosofi finna fisk fitta flagga flertal flicka flickvan flit
        flyga flygplan flygplats foda fodelsedag fokus folkmord fonster foralder forband forbli forbud fordel fordon
        forebild forekomma foremal foresla foretag forlata formaga formogenhet fornuft forran forskola forstaelse
        forsvinna forum fotboll fraga framgang framsteg framtid frihet frisyr fritid frukost funktion fylla fysik gard
        garderob gata gava gemenskap generation geni genombrott genomgang genomsnitt gitarr gladje glasogon glida
        godis gomma gradde grand gras green gren grepp grilla grupp gud guld gymnasium hacka halsa halvtimme hamnd
        handboll handelse hansyn hastighet hav helhet heltid hemland hemlighet hemmaplan hemsida heroin herre hinder
        hinna historia historik hjalm hjalte hjarna hjarta hobby hogskola hojd honung hora hosta hotell house hud
        hudfarg hund husdjur hushall huvud huvudsak huvudstad huvudvark hylla hyra identitet ideologi idiot idol
        idrott inbrott individ industri ingang inge initiativ inkomst innehalla innehav innovation insats insikt
        inspiration integration integritet intelligens intrade intresse intryck inverkan ironi israel jacka jaga jakt
        jamforelse jamstalldhet jarn jarnvag jatte javel jeans jobb jord jordbruk journalistik jude juridik kaffe kaft
        kaka kamera kamp kampanj kamrat kanal kandidat kandis kanon kansla kaos kapacitet kapitel karaktar karl karlek
        karnkraft karriar karta katastrof kategori kebab kemi kille kilometer kina kissa kista klader klagomal klamma
        klass klimat klippa klocka kna kniv kod kok koka kokain kollega kombination komiker kommentar kommun kompetens
        kompis koncept konferens konflikt konkurrens konkurs konsekvens konsert konst konstnar konstruktion konsumtion
        kontakt kontanter kontrakt kontroll konung konversation kopia korkort korruption korv kostnad kostym kott
        kraft krav krava kreditkort krig kriminalitet kritik krona kronika kropp kuk kultur kund kung kunskap kusin
        kvadratmeter kval kvalite kvalitet kvart kyrka lada lagenhet lakemedel lan landskap langd langtan lank lara
        larm lastbil latin laxa ledamot ledarskap lejon lek lektion leverans licens lida likhet lina linda linje lisa
        lista litteratur liv livsstil livstid ljud ljuga logga logik logn lok lon losenord lund luta lycka lyx macka
        magasin mage majoritet maltid manad manager mandat mangd mangfald manus mardrom marke marknad maskin massa
        matematik medalj medans medel medicin medlem medlemskap mejl mellanrum mercedes metall metod metro migration
        miljard miljo miljon minoritet missforstand modell mojlighet moln moms mora moral mord morker morsa mossa
        motiv motivation motsats motstand motsvarighet mun museum musik musiker muslim myndighet mynt namn narhet
        naringsliv nasa nation natur natverk nazism niva njuta nod noje nord nyckel nyfikenhet nyhet nytta objekt odds
        oga ogonblick ohalsa olja olycka omdome omgang omrade omsorg onskan operation opposition organisation original
        ost otur overens overgrepp overleva overlevnad overskott overtygelse paket paminnelse pang panik papper parfym
        pask paus paverkan pengar penis penna pers personal personlighet perspektiv pizza planbok plats plattform
        plikt poang poesi pojke pojkvan pol polis politik politiker porr portratt potatis potential praktik prast
        premiar presentation prestation princip prioritet privatliv produkt produktion proffs profil projekt promenad
        propaganda psykolog psykologi rabatt racka radsla ranta rapport rasism rattegang rattighet rea reaktion
        recension recept reda referens regel regi region reklam rekord relation religion reportage resonemang respekt
        respons restaurang resultat retorik revolution rida riksdag riva roka rom rora rorelse rosengard rost rostratt
        rov rubrik rulla rumpa rygg sakerhet sallad sallskap samarbete samband sambo samhalle sammanhang samtal
        samtycke samvete sanka sannolikhet sasong satan satir scen schema sektion sekund semester semifinal sexualitet
        siffra simma situation sjal sjalvklarhet sjalvmord sjo sjukdom sjukhus sjukvard sjunga sjunka skada skadestand
        skala skam skandal skap skarm skatt skillnad skitsnack skiva skjorta skjuta sko skog skoj skola skonhet skrack
        skratt skrift skrika skriva skugga skuld skydd skyldighet sla slag slagsmal slakt slita sloja sloseri slott
        slutsats slutspel smalta socialism socken socker soffa solidaritet somn sopa soppa sovrum special springa
        sprit spruta stad stalle stamma stand standard statistik status sten sticka stiga stjala stjarna stold
        stolthet storlek stracka straff strategi struktur stuga stund stycke styrelse styrka succe suga summa svaghet
        svamp svard sven svin syfte symptom syskon tabell tacka takt taktik talamod talang tanke tarta teater tecken
        teknik teknologi telefon temperatur tendens teori terapi termin terrorism tex tidpunkt tidsfraga tiggeri
        tillfalle tillgang tillhorighet tillit tillstand tilltrade timma timme tina tingsratt titel tjanst tjej toa
        toalett tobak torg torka tortyr trad tradgard trafik trappa trea tredjedel troja trots trovardighet trupp
        trygghet tugga tunnelbana turne tusan tusen tvaa tvekan tvivel typ tystnad undantag underklader underlag
        undvika ungdom union universitet universum uppgift upplevelse uppratthalla uppsats ursprung urval utanforskap
        utbrott utbud utbyte utga utgang utgangspunkt utkik utrymme utsikt utslapp uttryck vacka vagg vagn vald valdta
        valdtakt valfard vanda vansinne vanskap vantan vapen varannan vardag vardegrund variation varld varna vatten
        vattenfall verklighet verksamhet verkstad verktyg veta vika vikt vila vilja villa vin vinna vinst virus vitlok
        vodka volym webb webbplats yrke yta zon
        """,
    ),
}
"""By language: adjectives as they stand before a thing in the nominative, and such things."""
