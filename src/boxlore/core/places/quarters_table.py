"""Quarters and suburbs of cities that lists of towns lack: told alone, or before their city, they mean it.

From memory. A line has the country (ISO 3166-1), the city's main name in the gazetteer, a colon and the quarters,
parted by `;`, each with its other names behind `=`. A quarter has no coordinates of its own: the reading is the city.
"""

QUARTERS = """
EE Tallinn: Kopli=Ziegelskoppel; Mustamäe; Kalamaja=Fischermai; Nõmme=Nömme; Kadriorg=Katharinental=Kadriorgu;
 Pirita=Brigitten; Kopli liinid; Pelgulinn; Kassisaba; Lilleküla; Kristiine; Lasnamäe; Haabersti;
 Õismäe=Väike-Õismäe; Rocca al Mare; Kose (Tallinn); Maarjamäe=Marienberg; Vanalinn (Tallinn); Tondi; Järve
 (Tallinn); Hiiu; Rahumäe; Kivimäe; Pääsküla; Merimetsa; Paljassaare; Kitseküla; Juhkentali; Veerenni; Torupilli;
 Sikupilli; Ülemiste linnak; Raua (Tallinn); Kakumäe (Tallinn); Pelguranna; Sitsi; Karjamaa; Mähe; Merivälja;
 Lillepi; Tatari; Keldrimäe; Väike-Õismäe
EE Tartu: Karlova; Supilinn; Tähtvere; Tammelinn; Annelinn; Ülejõe; Toomemägi=Domberg (Dorpat)=Toome hill; Ropka;
 Raadi=Ratshof; Veeriku; Maarjamõisa; Ihaste; Jaamamõisa; Variku; Vaksali; Kesklinn (Tartu); Räni; Tamme (Tartu)
EE Pärnu: Rääma; Raeküla; Ülejõe (Pärnu); Mai (Pärnu); Tammiste; Papiniidu; Sauga (Pärnu)
EE Narva: Kreenholm=Kränholm=Krenholm; Joaorg; Pähklimäe; Kulgu
EE Viljandi: Männimäe; Kantreküla; Paalalinn
EE Haapsalu: Uuemõisa=Neuenhof (Hapsal); Paralepa
FI Helsinki: Töölö=Tölö; Kallio=Berghäll; Sörnäinen=Sörnäs; Hakaniemi=Hagnäs; Kruununhaka=Kronohagen;
 Punavuori=Rödbergen; Ullanlinna=Ulrikasborg; Eira; Kamppi=Kampen; Katajanokka=Skatudden; Munkkiniemi=Munksnäs;
 Meilahti=Mejlans; Haaga=Haga (Helsinki); Käpylä=Kottby; Vallila=Vallgård; Alppila=Alphyddan;
 Pasila=Fredriksberg=Böle; Malmi (Helsinki)=Malm (Helsinki); Oulunkylä=Åggelby; Pakila=Baggböle;
 Herttoniemi=Hertonäs; Hermanni; Arabia (Helsinki)=Arabianranta; Ruskeasuo=Brunakärr; Kulosaari; Lauttasaari;
 Puotila; Vuosaari=Nordsjö; Kontula; Maunula; Jätkäsaari=Busholmen; Linnanmäki
FI Tampere: Pispala; Tammela (Tampere); Amuri; Hervanta; Kaleva; Finlayson; Viinikka; Lielahti;
 Tahmela
FI Espoo: Tapiola=Hagalund; Otaniemi=Otnäs; Leppävaara=Alberga; Matinkylä
FI Turku: Port Arthur (Turku); Martinmäki; Raunistula; Nummi (Turku); Kuralan kylämäki; Naantali road; Hirvensalo
RU Vyborg: Monrepos=Monrepo=Mon Repos
SE Stockholm: Södermalm=Söder; Östermalm; Norrmalm; Vasastan=Vasastaden; Kungsholmen; Gamla stan=Gamla Stan=Staden
 mellan broarna; Djurgården; Gärdet; Hammarby; Årsta; Enskede; Bromma; Hägersten; Midsommarkransen; Aspudden;
 Liljeholmen; Skarpnäck; Vällingby; Kista; Rinkeby; Hornstull; Slussen; Skansen; Birkastan; Johanneshov; Farsta;
 Älvsjö; Hässelby; Brännkyrka; Mosebacke; Katarina församling
SE Göteborg: Majorna; Haga (Göteborg); Masthugget; Linnéstaden; Örgryte; Lundby; Hisingen; Gamlestaden; Lindholmen;
 Johanneberg; Liseberg; Redbergslid; Långedrag; Nya Varvet; Klippan (Göteborg); Stigberget; Landala; Krokslätt;
 Kortedala; Slottsskogen
SE Malmö: Limhamn; Möllevången; Rosengård; Kirseberg; Sofielund; Ribersborg; Husie; Rörsjöstaden; Slottsstaden
SE Uppsala: Luthagen; Kåbo; Svartbäcken; Fyrislund; Gamla Uppsala
NO Oslo: Grünerløkka=Løkka=Grünerlokka; Frogner; Majorstuen=Majorstua; Homansbyen; St. Hanshaugen=Sankthanshaugen;
 Kampen; Vålerenga=Vaalerengen=Vålerengen; Gamlebyen (Oslo)=Gamlebyen; Grønland (Oslo)=Grønland; Tøyen; Sagene;
 Torshov; Bislett; Ullevål; Nordstrand (Oslo); Bekkelaget; Ekeberg; Skøyen; Vinderen; Slemdal; Røa; Grefsen; Kjelsås;
 Sinsen; Bjølsen; Rodeløkka; Briskeby; Uranienborg; Vika=Pipervika; Holmenkollen (district); Smestad; Bygdøy (Oslo);
 Lambertseter; Østensjø; Bryn; Groruddalen; Grorud; Furuset; Akershus festning=Akershus slott; Karl Johans gate=Karl
 Johan=Karl Johan gate; Aker (Oslo)=Østre Aker=Vestre Aker; Kvadraturen; Ruseløkka; Fagerborg; Adamstuen; Ila; Ljan;
 Hauketo
NO Oslo: Fornebu; Stabekk; Høvik; Bekkestua; Lysaker; Sandvika (Bærum); Blommenholm; Haslum
NO Bergen: Sandviken; Nordnes; Møhlenpris; Bryggen=Tyskebryggen=the Hanseatic wharf; Laksevåg; Fana; Åsane; Landås;
 Solheimsviken; Nesttun; Paradis; Kalfaret; Nygård (Bergen); Årstad; Fjøsanger; Minde; Damsgård; Ytre Arna (Bergen)
NO Trondheim: Bakklandet; Ila (Trondheim); Lade; Møllenberg; Singsaker; Rosenborg; Byåsen; Strinda; Heimdal
 (Trondheim); Ranheim; Kalvskinnet; Lademoen; Sluppen; Tempe (Trondheim); Leangen
NO Stavanger: Gamle Stavanger; Storhaug; Hillevåg; Hundvåg; Eiganes; Madla; Våland; Mariero
NO Kristiansand: Posebyen; Lund (Kristiansand); Grim; Kvadraturen (Kristiansand)
NO Tromsø: Tromsdalen (Tromsø); Storgata (Tromsø); Sommerlyst
DK Copenhagen: Vesterbro; Nørrebro; Østerbro; Frederiksberg (Copenhagen); Christianshavn; Valby; Vanløse; Brønshøj;
 Sundby=Sundbyvester=Sundbyøster; Nyhavn; Tivoli; Nyboder; Sydhavnen; Islands Brygge; Bispebjerg; Emdrup; Husum
 (Copenhagen); Hellerup; Gentofte (Copenhagen); Klampenborg; Charlottenlund; Skovshoved; Ordrup; Lyngby (Copenhagen);
 Vesterport; Kastellet; Ryvangen; Utterslev; Refshaleøen; Christiania; Bellahøj; Strøget
DK Århus: Trøjborg; Frederiksbjerg; Latinerkvarteret; Risskov; Åbyhøj; Marselisborg; Viby (Århus)=Viby J; Brabrand;
 Vesterbro (Aarhus); Den Gamle By
DK Odense: Skibhuskvarteret; Vollsmose; Hunderup; Dalum; Bolbro
IS Reykjavík: Vesturbær; Grjótaþorp; Þingholt; Hlíðar; Laugardalur; Breiðholt; Árbær; Skuggahverfi; Grafarvogur;
 Laugarnes; Kleppur; Perlan
LV Riga: Vecrīga=Altstadt Riga=Old Riga; Pārdaugava=Pardaugava=Überdüna=Mitauer Vorstadt;
 Āgenskalns=Hagensberg=Agenskalns; Mežaparks (Riga)=Kaiserwald; Sarkandaugava=Rote Düna; Torņakalns=Thorensberg;
 Čiekurkalns; Bolderāja=Bolderaa; Vecmīlgrāvis=Mühlgraben; Maskavas forštate=Moscow suburb=Moskauer
 Vorstadt=Maskačka=Московский форштадт; Iļģuciems=Ilgezeem; Zasulauks; Teika; Purvciems; Jugla; Ķengarags; Imanta;
 Zolitūde; Pļavnieki; Grīziņkalns=Grisenberg; Brasa; Katlakalns; Šampēteris; Bieriņi; Mārupe (Riga);
 Daugavgrīva=Dünamünde; Vecāķi; Berģi; Alberta iela; Petersburger Vorstadt; Rumbula=Румбула; Biķernieki; Skanste;
 Kundziņsala
LV Jūrmala: Majori=Majorenhof; Dubulti=Dubbeln; Bulduri=Bilderlingshof; Dzintari=Edinburg (Riga Strand);
 Ķemeri=Kemmern; Lielupe (Jūrmala); Asari=Assern; Pumpuri=Karlsbad (Riga Strand); Melluži; Jaunķemeri; Sloka=Schlock;
 Vaivari; Priedaine
LV Liepāja: Karosta=Kriegshafen (Libau)=Karaosta; Vecliepāja; Jaunliepāja
LV Daugavpils: Grīva=Griva=Semgallen; Stropi; Jaunbūve
LT Vilnius: Antakalnis=Antokol; Žvėrynas=Zwierzyniec (Wilno); Užupis=Zarzecze; Šnipiškės=Snipiszki; Naujamiestis;
 Rasos=Rossa; Paneriai=Ponary=Ponar; Trakų Vokė; Naujoji Vilnia=Nowa Wilejka; Pilaitė; Lazdynai; Žirmūnai;
 Karoliniškės; Verkiai=Werki; Kalvarijos; Pavilnys=Kolonia Wileńska; Ostra Brama=Aušros vartai;
 Valakampiai=Wołokumpia
LT Kaunas: Žaliakalnis; Aleksotas; Šančiai; Vilijampolė=Slobodka=Slabodka; Panemunė; Petrašiūnai; Laisvės alėja;
 Senamiestis (Kaunas); Pažaislis; Ninth Fort=IX fortas; Freda; Vytėnai; Eiguliai; Dainava (Kaunas); Lampėdžiai
LT Klaipėda: Smiltynė=Sandkrug; Giruliai=Försterei; Melnragė=Mellneraggen; Vitė; Bomelio Vitė
PL Warsaw: Praga; Praga Północ; Praga Południe; Wola; Mokotów; Żoliborz; Ochota; Powiśle; Saska Kępa; Bielany;
 Czerniaków; Muranów; Stare Miasto (Warszawa)=Starówka; Nowe Miasto (Warszawa); Śródmieście (Warszawa); Targówek;
 Bródno; Grochów; Gocław; Wawer; Ursus; Włochy (Warszawa); Ursynów; Wilanów; Sielce; Marymont; Powązki=Powązki
 Cemetery; Koło; Nalewki; Mirów; Grzybów; Krochmalna; Łazienki=Park Łazienkowski; Pelcowizna; Kamionek;
 Szmulowizna=Szmulki; Rakowiec; Okęcie; Służewiec; Anin; Międzylesie; Radość; Falenica; Falenica-Miedzeszyn;
 Białołęka; Rembertów; Wesoła; Warsaw Ghetto=getto warszawskie=Warschauer Ghetto; Nowy Świat; Krakowskie
 Przedmieście; Marszałkowska; Aleje Jerozolimskie; Pawiak; Plac Saski
PL Kraków: Kazimierz (Kraków)=Kazimierz; Podgórze; Nowa Huta; Zwierzyniec; Półwsie Zwierzynieckie; Salwator;
 Krowodrza; Kleparz; Stradom; Dębniki; Łobzów; Bronowice=Bronowice Małe; Grzegórzki; Prądnik=Prądnik Biały=Prądnik
 Czerwony; Płaszów; Zabłocie; Ludwinów; Zakrzówek; Wola Justowska; Wola Duchacka; Prokocim; Bieżanów; Borek Fałęcki;
 Tyniec; Bielany (Kraków); Mogiła; Czyżyny; Rakowice; Olsza; Azory; Wesoła (Kraków); Piasek (Kraków); Wawel; Planty;
 Rynek Główny; Błonia; Kurdwanów; Swoszowice
PL Łódź: Bałuty=Baluty; Widzew; Górna (Łódź); Polesie (Łódź); Chojny; Księży Młyn; Radogoszcz; Retkinia; Julianów;
 Stoki; Marysin; Ruda Pabianicka; Piotrkowska=Petrikauer Straße; Karolew; Litzmannstadt Ghetto
UA Lviv: Łyczaków=Lychakiv=Личаків; Zamarstynów=Zamarstyniv; Kulparków; Zniesienie=Znesinnia; Gródek suburb;
 Kleparów=Klepariv; Persenkówka; Bogdanówka; Cytadela (Lwów); Sykhiv=Сихів
PL Gdańsk: Wrzeszcz=Langfuhr; Oliwa=Oliva; Nowy Port=Neufahrwasser; Brzeźno=Brösen; Stogi=Heubude; Orunia=Ohra;
 Siedlce (Gdańsk)=Schidlitz; Przymorze; Zaspa=Saspe; Żabianka; Morena; Chełm (Gdańsk)=Stolzenberg; Letnica=Lauental;
 Jelitkowo=Glettkau; Wrzeszcz Górny; Dolne Miasto=Niederstadt; Główne Miasto=Rechtstadt; Biskupia Górka=Bischofsberg;
 Święty Wojciech (Gdańsk)=St. Albrecht; Długi Targ=Langer Markt; Emaus; Zaroślak
PL Gdynia: Orłowo=Adlershorst; Oksywie=Oxhöft; Redłowo; Chylonia=Kielau; Grabówek; Witomino; Kamienna Góra (Gdynia);
 Obłuże; Cisowa; Mały Kack; Wielki Kack; Skwer Kościuszki
PL Poznań: Jeżyce=Jersitz; Wilda; Łazarz=St. Lazarus; Śródka; Rataje; Sołacz=Solatsch; Górczyn; Winiary; Winogrady;
 Grunwald (Poznań); Ławica; Dębiec; Główna; Starołęka; Ostrów Tumski (Poznań); Chwaliszewo; Stary Rynek (Poznań);
 Ogrody; Junikowo; Naramowice
PL Wrocław: Krzyki=Krietern; Psie Pole=Hundsfeld; Ołbin=Elbing (Breslau); Nadodrze=Odervorstadt; Śródmieście
 (Wrocław); Sępolno=Zimpel; Biskupin=Bischofswalde; Karłowice=Carlowitz; Leśnica=Deutsch Lissa; Grabiszyn=Gräbschen;
 Gaj; Borek (Wrocław)=Kleinburg; Brochów=Brockau; Przedmieście Oławskie=Ohlauer Vorstadt; Popowice=Pöpelwitz;
 Pilczyce=Pilsnitz; Zalesie (Wrocław)=Leerbeutel; Szczepin=Tschepine; Oporów=Opperau; Pawłowice (Wrocław)
PL Szczecin: Dąbie=Altdamm; Pogodno=Braunsfelde; Gumieńce=Scheune; Niebuszewo=Zabelsdorf; Golęcino=Frauendorf;
 Stołczyn=Stolzenhagen; Zdroje=Finkenwalde; Podjuchy=Podejuch; Żelechowa=Züllchow; Wały Chrobrego=Hakenterrasse;
 Glinki
PL Katowice: Załęże; Bogucice; Ligota; Brynów; Janów=Janów (Katowice); Nikiszowiec=Nickischschacht;
 Giszowiec=Gieschewald; Szopienice; Dąb; Koszutka; Panewniki; Piotrowice; Wełnowiec; Murcki; Kostuchna
PL Lublin: Czuby; Kalinowszczyzna; Wieniawa; Majdanek; Bronowice (Lublin); Czechów; Stare Miasto (Lublin); Dziesiąta
PL Bydgoszcz: Fordon; Szwederowo=Schwedenhöhe; Okole; Wilczak; Bielawy; Błonie (Bydgoszcz); Czyżkówko; Sielanka;
 Bartodzieje; Osowa Góra
PL Białystok: Bojary; Antoniuk; Dojlidy; Starosielce; Wygoda; Piaski (Białystok)
PL Toruń: Mokre=Mocker; Podgórz=Podgorz; Bydgoskie Przedmieście=Bromberger Vorstadt; Chełmińskie Przedmieście
PL Zakopane: Krupówki; Kuźnice; Olcza; Jaszczurówka; Kalatówki
RU Saint Petersburg: Vasileostrovsky=Vasilievsky Ostrov=Васильевский; Petrograd Side=Petrogradskaya=Петроградская
 сторона=Петроградская=Petersburger Seite; Vyborg Side=Выборгская сторона=Wiborger Seite; Okhta=Охта; Narvskaya
 Zastava=Нарвская застава; Nevskaya Zastava=Невская застава; Kolomna (Petersburg)=Коломна; Lesnoy
 (Petersburg)=Лесное=Лесной; Novaya Derevnya=Новая деревня; Ozerki=Озерки; Shuvalovo=Шувалово; Kupchino=Купчино;
 Ligovo=Лигово; Avtovo=Автово; Nevsky Prospekt=Nevsky=Невский=Невский проспект=Newski-Prospekt=на Невском;
 Liteiny=Литейный; Peski (Petersburg)=Пески; Galernaya Gavan=Гавань; Peter and Paul Fortress=Петропавловская
 крепость; Summer Garden=Летний сад; Piskarevka=Пискарёвка; Udelnaya=Удельная; Volkovo=Волково; Smolny=Смольный;
 Strelna (Petersburg); Palace Square=Дворцовая площадь
RU Moscow: Arbat=Арбат=на Арбате; Zamoskvorechye=Замоскворечье; Presnya=Пресня=Красная Пресня; Sokolniki=Сокольники;
 Taganka=Таганка; Maryina Roshcha=Марьина роща; Lefortovo=Лефортово; Kitai-Gorod=Китай-город; Khamovniki=Хамовники;
 Basmannaya=Басманная; Izmailovo=Измайлово; Kuntsevo=Кунцево; Ostankino=Останкино; Kuskovo=Кусково;
 Tsaritsyno=Царицыно; Kolomenskoye=Коломенское; Perovo=Перово; Tushino=Тушино; Cheryomushki=Черёмушки=Черемушки;
 Meshchanskaya=Мещанская; Kuznetsky Most=Кузнецкий мост; Red Square=Красная площадь; Kremlin=Кремль=Moscow Kremlin;
 Tverskaya=Тверская; Chistye Prudy=Чистые пруды; Patriarch's Ponds=Патриаршие пруды; Zayauzye=Таганская;
 Butyrki=Бутырки; Dorogomilovo=Дорогомилово; Gorky Park=Парк Горького; Serebryany Bor=Серебряный Бор; German
 Quarter=Немецкая слобода
RU Kaliningrad: Amalienau; Maraunenhof; Juditten; Tragheim; Kneiphof; Sackheim; Rossgarten=Roßgarten; Löbenicht;
 Haberberg; Ponarth; Hufen (Königsberg)=Hufen; Ratshof (Königsberg); Ottokar
UA Kyiv: Podil=Podol=Подол=Поділ=Podol (Kiev); Pechersk=Печерск=Печерськ; Lukyanivka=Лукьяновка=Лук'янівка;
 Solomianka=Соломенка; Demiivka=Демиевка; Kurenivka=Куреневка; Syrets=Сырец; Babi Yar=Babyn Yar=Бабий Яр;
 Darnytsia=Дарница; Shuliavka=Шулявка; Sviatoshyn=Святошино; Lypky=Липки; Bessarabka=Бессарабка; Priorka=Приорка;
 Obolon=Оболонь
UA Odesa: Moldavanka=Молдаванка; Peresyp=Пересыпь; Slobodka=Слободка; Arcadia (Odessa)=Аркадия; Lanzheron=Ланжерон;
 Fontan=Большой Фонтан; Deribasovskaya=Дерибасовская; Primorsky Boulevard=Приморский бульвар; Lustdorf; Blizhnie
 Melnitsy=Ближние Мельницы
UA Kharkiv: Saltivka=Салтовка; Kholodna Hora=Холодная гора; Zhuravlivka=Журавлёвка; Pavlove Pole=Павлово Поле
GE Tbilisi: Sololaki=Сололаки; Avlabari=Авлабар; Vera (Tbilisi)=Вера (Тифлис); Mtatsminda (Tbilisi); Ortachala;
 Didube=Дидубе; Vake; Saburtalo; Navtlugi=Навтлуг; Nadzaladevi
AZ Baku: Icherisheher=Ичеришехер; Bibi-Heybat=Биби-Эйбат; Black City=Чёрный город; Balakhany=Балаханы;
 Sabunchi=Сабунчи
HU Budapest: Buda=Ofen; Pest=Pesth; Óbuda=Alt-Ofen=Altofen=Obuda; Újpest=Neu-Pest=Neupest; Kispest; Csepel;
 Pesterzsébet; Pestlőrinc=Pestszentlőrinc=Pestszentimre; Rákospalota; Rákoskeresztúr; Rákosliget; Rákosszentmihály;
 Kőbánya=Steinbruch; Józsefváros=Josefstadt (Budapest); Ferencváros=Franzstadt; Erzsébetváros=Elisabethstadt;
 Terézváros=Theresienstadt (Budapest); Lipótváros=Leopoldstadt (Budapest); Angyalföld; Zugló; Víziváros=Wasserstadt
 (Buda); Krisztinaváros=Christinenstadt; Tabán (Budapest); Kelenföld; Lágymányos; Albertfalva; Budafok=Promontor;
 Nagytétény; Mátyásföld; Cinkota; Sashalom; Soroksár; Békásmegyer; Rómaifürdő=Római-part=Római part; Pasarét;
 Zugliget; Rózsadomb; Hűvösvölgy; Vár (Buda)=Budai Vár=Várnegyed=Buda Castle; Halászbástya; Andrássy út; Váci utca;
 Keleti pályaudvar=Keleti; Nyugati pályaudvar=Nyugati; Pestszenterzsébet=Erzsébetfalva; Pestújhely;
 Wekerle=Wekerletelep; Kamaraerdő; Farkasrét; Kerepesi út=Kerepesi temető; Újlipótváros; Belváros=Belváros (Budapest)
HU Pécs: Mecsekalja; Uránváros; Gyárváros; Budai külváros; Tettye
HU Szeged: Alsóváros; Felsőváros; Rókus; Újszeged; Móraváros; Tápé; Dorozsma=Kiskundorozsma
HU Debrecen: Nagyerdő; Csapókert; Homokkert; Tégláskert; Nyulas
HU Miskolc: Diósgyőr; Tapolca (Miskolc)=Miskolctapolca; Avas; Lillafüred; Pereces; Perecesbánya; Újdiósgyőr; Hámor
HU Győr: Révfalu; Nádorváros; Újváros (Győr); Gyárváros (Győr); Győrsziget
HU Sopron: Lővérek=Lőverek; Balf; Brennbergbánya=Brennberg; Bánfalva=Sopronbánfalva
RO Timişoara: Fabric=Gyárváros (Temesvár)=Fabrikstadt; Iosefin=Józsefváros (Temesvár)=Josefstadt (Temeswar);
 Elisabetin=Erzsébetváros (Temesvár); Mehala; Freidorf; Cetate
RO Cluj-Napoca: Mănăștur=Kolozsmonostor=Monostor; Hajongárd=Házsongárd=Házsongárdi temető; Hóstát; Fellegvár;
 Mărăști; Gruia; Someșeni=Szamosfalva
RO Bucharest: Cotroceni; Dudești; Văcărești; Lipscani; Calea Victoriei; Ferentari; Militari; Drumul Taberei;
 Giulești; Colentina; Băneasa; Floreasca; Dorobanți; Obor; Grivița; Rahova; Berceni; Cișmigiu
RO Braşov: Schei=Bolgárszeg=Obere Vorstadt; Bartolomeu=Bartholomae; Blumăna=Blumenau (Kronstadt); Noua; Tractorul
RO Sibiu: Josefstadt (Hermannstadt); Terezian=Konradwiese
RO Oradea: Velența=Várad-Velence=Velence (Nagyvárad); Olosig=Olaszi; Rogerius; Episcopia Bihor=Biharpüspöki
UA Chernivtsi: Rosch=Rosha; Klokuczka=Klokuchka; Sadagora=Sadgora=Sadhora
SK Bratislava: Petržalka=Ligetfalu=Engerau=Pozsonyligetfalu; Rača=Récse=Ratzersdorf; Devín=Dévény=Theben; Karlova
 Ves=Karlsdorf; Dúbravka; Vajnory; Ružinov; Staré Mesto (Bratislava); Nové Mesto (Bratislava);
 Zuckermandel=Cukrmandl; Patrónka; Koliba; Prievoz=Oberufer; Lamač; Podunajské Biskupice; Slavín
SK Košice: Šaca; Ťahanovce; Barca; Terasa; Kuzmányho; Juh (Košice); Sever (Košice)
HR Zagreb: Gornji Grad; Donji Grad; Kaptol; Gradec; Maksimir; Trešnjevka; Trnje; Črnomerec; Medveščak; Dubrava;
 Šestine; Remete; Tuškanac; Mirogoj; Jelačić Square=Trg bana Jelačića=Jelačić plac; Novi Zagreb; Tkalčićeva; Ksaver;
 Pantovčak
SI Ljubljana: Šiška; Bežigrad; Vič; Trnovo (Ljubljana); Moste; Rožna dolina; Krakovo (Ljubljana); Tivoli
 (Ljubljana); Rudnik (Ljubljana); Šentvid; Poljane (Ljubljana); Stožice
RS Belgrade: Dorćol; Savamala; Vračar; Zvezdara; Topčider; Kalemegdan; Dedinje; Senjak; Čukarica; Palilula; Novi
 Beograd; Terazije; Skadarlija; Košutnjak; Voždovac; Rakovica; Knez Mihailova; Banovo Brdo; Autokomanda
BA Sarajevo: Baščaršija=Bascarsija; Bistrik; Marijin Dvor; Grbavica; Ilidža (Sarajevo); Kovačići; Vratnik;
 Skenderija; Čengić Vila
CZ Prague: Žižkov=Zizkov; Smíchov=Smichow; Karlín=Karolinenthal; Vinohrady=Královské Vinohrady=Königliche Weinberge;
 Vršovice; Nusle; Holešovice; Letná; Malá Strana=Kleinseite=Lesser Town; Staré Město=Staré Město (Praha); Nové
 Město=Nové Město (Praha); Josefov=Josefstadt (Prag); Hradčany=Hradschin (Prag); Břevnov; Dejvice; Bubeneč;
 Libeň=Lieben; Vysočany; Strašnice; Podolí; Braník; Podbaba; Troja; Košíře; Motol; Michle; Krč; Záběhlice; Hostivař;
 Pankrác; Střešovice; Ruzyně; Barrandov; Zbraslav; Radlice; Jinonice; Kobylisy; Prosek; Hloubětín; Bubny; Kampa;
 Václavské náměstí=Wenzelsplatz=Wenceslas Square; Karlův most=Charles Bridge=Karlsbrücke; Olšany=Olšany
 cemetery=Olšanské hřbitovy; Stromovka; Spořilov; Chuchle
CZ Brno: Královo Pole=Königsfeld; Židenice=Schimitz; Husovice=Hussowitz; Žabovřesky; Líšeň; Tuřany;
 Špilberk=Spielberg; Zábrdovice=Obrowitz; Komín; Slatina (Brno); Černá Pole; Staré Brno=Altbrünn; Bystrc; Pisárky;
 Masarykova čtvrť
CZ Ostrava: Vítkovice=Witkowitz; Poruba; Mariánské Hory; Přívoz=Oderfurt; Moravská Ostrava=Mährisch
 Ostrau=Mährisch-Ostrau; Slezská Ostrava=Polnisch Ostrau=Schlesisch Ostrau; Michálkovice; Zábřeh (Ostrava); Hrabůvka;
 Radvanice (Ostrava)
CZ Pilsen: Doudlevce; Lochotín; Skvrňany; Slovany; Doubravka; Bory; Roudná; Petrohrad (Plzeň); Škodovka
CZ Olomouc: Hodolany; Svatý Kopeček=Heiliger Berg; Nová Ulice; Hejčín; Klášterní Hradisko
AT Vienna: Prater=Wurstelprater; Leopoldstadt; Landstraße (Wien)=Landstraße=Landstrasse; Wieden; Margareten; Mariahilf; Neubau;
 Josefstadt; Alsergrund; Favoriten; Simmering; Meidling; Hietzing; Penzing;
 Rudolfsheim=Fünfhaus=Rudolfsheim-Fünfhaus; Ottakring; Hernals; Währing; Döbling; Brigittenau; Floridsdorf;
 Donaustadt; Liesing; Grinzing; Nussdorf; Heiligenstadt; Sievering; Neustift am Walde; Hütteldorf; Schönbrunn;
 Hadersdorf; Mauer (Wien); Atzgersdorf; Stadlau; Aspern; Kaisermühlen; Kagran; Jedlesee; Stammersdorf; Gersthof;
 Pötzleinsdorf; Dornbach; Neuwaldegg; Speising; Lainz; Ober St. Veit; Karl-Marx-Hof; Innere Stadt=Inner City
 (Vienna); Ringstraße=Ringstrasse; Naschmarkt; Steinhof; Zentralfriedhof; Erdberg; Lichtental; Rossau; Spittelberg;
 Gumpendorf; Matzleinsdorf; Inzersdorf; Erlaa
AT Graz: Lend; Gries (Graz); Eggenberg; Andritz; St. Leonhard (Graz); Geidorf; Puntigam; Liebenau; Jakomini;
 Mariatrost; Gösting; Straßgang; Waltendorf
AT Linz: Urfahr; Ebelsberg; Kleinmünchen; Waldegg; St. Magdalena (Linz); Bindermichl
AT Salzburg: Maxglan; Gnigl; Parsch; Aigen; Lehen; Itzling; Mülln; Nonntal; Morzg; Mirabell; Liefering; Hellbrunn
AT Innsbruck: Wilten; Hötting; Pradl; Mühlau; Amras; Igls; St. Nikolaus (Innsbruck); Saggen; Arzl; Berg
 Isel=Bergisel
DE Berlin: Prenzlauer Berg; Friedrichshain; Moabit; Gesundbrunnen; Tiergarten=Tiergarten (Berlin); Scheunenviertel;
 Schöneberg; Neukölln=Rixdorf; Kreuzberg; Wedding; Charlottenburg; Wilmersdorf; Friedenau; Steglitz; Zehlendorf;
 Dahlem; Grunewald; Schmargendorf; Halensee; Westend; Spandau; Tegel; Reinickendorf; Pankow; Weißensee; Lichtenberg;
 Treptow; Köpenick; Adlershof; Tempelhof; Britz; Mariendorf; Lankwitz; Lichterfelde; Nikolassee; Wannsee (Berlin);
 Siemensstadt; Hansaviertel; Stralau; Friedrichshagen; Karlshorst; Grünau; Rudow; Gropiusstadt; Niederschönhausen;
 Buch (Berlin); Frohnau; Hermsdorf (Berlin); Kladow; Gatow; Marienfelde; Unter den Linden;
 Kurfürstendamm=Ku'damm=Kudamm; Alexanderplatz=Alex; Potsdamer Platz; Hasenheide; Bayerisches Viertel; Onkel Toms
 Hütte; Krumme Lanke; Schulzendorf (Berlin); Heiligensee (Berlin); Johannisthal; Baumschulenweg; Oberschöneweide;
 Niederschöneweide; Rummelsburg; Hohenschönhausen; Marzahn
DE Hamburg: Altona=Altona-Altstadt; St. Pauli=Sankt Pauli=St Pauli; St. Georg; Eimsbüttel; Ottensen; Blankenese;
 Harburg=Harburg an der Elbe; Wandsbek; Barmbek; Winterhude; Eppendorf; Harvestehude; Rotherbaum; Uhlenhorst; Hamm
 (Hamburg); Hammerbrook; Rothenburgsort; Veddel; Wilhelmsburg; Finkenwerder=Finkenwärder; Othmarschen; Nienstedten;
 Bahrenfeld; Bergedorf; Fuhlsbüttel; Ohlsdorf; Langenhorn; Rahlstedt; Volksdorf; Poppenbüttel; Reeperbahn;
 Landungsbrücken; Speicherstadt; Grindel; Hoheluft; Eilbek; Billstedt; Horn (Hamburg); Borgfelde; Teufelsbrück;
 BallinStadt=Ballinstadt=Auswandererhallen; Jungfernstieg; Hagenbeck=Hagenbecks Tierpark; Rissen; Wellingsbüttel;
 Neuengamme; Schnelsen; Stellingen; Lokstedt; Niendorf (Hamburg)
DE Munich: Schwabing; Haidhausen; Giesing; Au (München); Sendling; Neuhausen; Nymphenburg; Bogenhausen; Maxvorstadt;
 Lehel; Pasing; Laim; Moosach; Milbertshofen; Thalkirchen; Solln; Obermenzing; Untermenzing; Harlaching; Ramersdorf;
 Berg am Laim; Perlach; Isarvorstadt; Glockenbach; Westend (München)=Schwanthalerhöhe; Theresienwiese; Englischer
 Garten=English Garden; Marienplatz; Viktualienmarkt; Stachus; Grünwald (München); Hellabrunn; Freimann;
 Ludwigsvorstadt; Gern
DE Köln: Ehrenfeld; Nippes; Deutz; Mülheim (Köln)=Mülheim am Rhein; Kalk; Lindenthal; Sülz; Bayenthal; Marienburg;
 Rodenkirchen; Porz; Chorweiler; Severinsviertel; Südstadt (Köln); Zollstock; Braunsfeld; Klettenberg; Müngersdorf;
 Weidenpesch; Dellbrück; Longerich; Merheim
DE Frankfurt am Main: Sachsenhausen; Bornheim (Frankfurt); Bockenheim; Höchst=Höchst am Main; Westend (Frankfurt);
 Ostend (Frankfurt); Nordend (Frankfurt); Rödelheim; Niederrad; Griesheim (Frankfurt); Fechenheim; Eschersheim;
 Ginnheim; Praunheim; Oberrad; Römerstadt; Gallus; Bahnhofsviertel; Seckbach; Römerberg; Zeil
DE Leipzig: Gohlis; Connewitz; Plagwitz; Lindenau; Reudnitz; Schleußig; Stötteritz; Möckern (Leipzig); Eutritzsch;
 Leutzsch; Volkmarsdorf; Kleinzschocher; Schönefeld (Leipzig); Probstheida; Grünau (Leipzig); Völkerschlachtdenkmal
DE Dresden: Blasewitz; Loschwitz; Neustadt (Dresden)=Dresden-Neustadt; Weißer Hirsch; Striesen; Löbtau; Plauen
 (Dresden); Pieschen; Cotta; Pillnitz; Hellerau; Johannstadt; Altstadt (Dresden); Klotzsche; Strehlen (Dresden);
 Gruna; Leuben; Laubegast; Friedrichstadt (Dresden); Zwinger; Brühlsche Terrasse=Brühl Terrace; Großer Garten;
 Trachau; Briesnitz
DE Stuttgart: Bad Cannstatt=Cannstatt; Degerloch; Feuerbach; Zuffenhausen; Vaihingen (Stuttgart); Heslach;
 Untertürkheim; Obertürkheim; Sillenbuch; Möhringen (Stuttgart); Botnang; Gaisburg; Weilimdorf; Stammheim
 (Stuttgart); Weißenhof
DE Hannover: Linden=Linden (Hannover); List; Nordstadt (Hannover); Südstadt (Hannover); Herrenhausen; Döhren;
 Kleefeld; Bothfeld; Hainholz; Ricklingen; Kirchrode; Stöcken; Zooviertel; Waldheim (Hannover); Misburg
DE Bremen: Schwachhausen; Vegesack; Blumenthal; Gröpelingen; Walle; Hemelingen; Neustadt (Bremen);
 Viertel=Ostertor=Steintor; Findorff; Oberneuland; Burglesum=Lesum; Sebaldsbrück; Schnoor; Woltmershausen; Horn-Lehe;
 Osterholz (Bremen); Huchting
DE Düsseldorf: Oberkassel; Bilk; Gerresheim; Kaiserswerth; Derendorf; Flingern; Pempelfort; Benrath; Unterbilk;
 Eller; Grafenberg; Königsallee=Kö; Oberbilk; Rath; Lohausen; Heerdt; Golzheim; Unterrath
DE Dortmund: Hörde; Hombruch; Aplerbeck; Nordstadt (Dortmund); Lütgendortmund; Dorstfeld; Mengede; Eving; Huckarde;
 Brackel
DE Essen: Rüttenscheid; Werden; Kettwig; Altenessen; Borbeck; Steele; Kray; Katernberg; Holsterhausen; Bredeney;
 Margarethenhöhe; Villa Hügel; Frohnhausen; Zollverein
DE Duisburg: Ruhrort; Meiderich; Hamborn; Homberg; Hochfeld; Marxloh; Rheinhausen; Wanheimerort; Laar; Walsum
DE Nürnberg: Gostenhof; St. Johannis (Nürnberg); Wöhrd; Langwasser; Steinbühl; Mögeldorf; Sebald; Lorenz;
 Schweinau; Eibach; Zabo=Zerzabelshof; Luitpoldhain; Reichsparteitagsgelände
DE Mannheim: Neckarau; Käfertal; Sandhofen; Jungbusch; Feudenheim; Waldhof; Lindenhof; Neckarstadt; Seckenheim;
 Schönau (Mannheim); Rheinau
DE Kiel: Gaarden; Wik; Holtenau; Düsternbrook; Friedrichsort; Schilksee; Ellerbek; Hassee; Laboe (Kiel); Pries;
 Wellingdorf; Heikendorf (Kiel)
DE Lübeck: Travemünde; Moisling; St. Gertrud; St. Lorenz; Kücknitz; Schlutup; St. Jürgen (Lübeck); Holstentor
DE Rostock: Warnemünde; Reutershagen; Gehlsdorf; Lichtenhagen; Lütten Klein; Kröpeliner-Tor-Vorstadt
DE Heidelberg: Handschuhsheim; Neuenheim; Rohrbach (Heidelberg); Kirchheim (Heidelberg); Ziegelhausen;
 Philosophenweg; Wieblingen
DE Freiburg: Wiehre; Herdern; Stühlinger; Zähringen; St. Georgen (Freiburg); Littenweiler; Haslach (Freiburg);
 Günterstal
DE Potsdam: Babelsberg=Nowawes; Sanssouci; Neuer Garten; Holländisches Viertel; Bornstedt; Sacrow; Cecilienhof;
 Hermannswerder
DE Chemnitz: Kaßberg; Sonnenberg (Chemnitz); Schloßchemnitz; Siegmar; Hilbersdorf; Bernsdorf (Chemnitz)
DE Halle (Saale): Giebichenstein; Kröllwitz; Trotha; Glaucha; Halle-Neustadt; Paulusviertel; Dölau; Ammendorf
DE Magdeburg: Buckau; Sudenburg; Salbke; Cracau; Stadtfeld; Neue Neustadt=Neustadt (Magdeburg); Fermersleben;
 Diesdorf
DE Wiesbaden: Biebrich; Sonnenberg (Wiesbaden); Bierstadt; Schierstein; Neroberg; Dotzheim; Kastel=Mainz-Kastel
CH Zürich: Wiedikon; Aussersihl; Oerlikon; Wollishofen; Enge; Hottingen; Fluntern; Seefeld; Niederdorf; Albisrieden;
 Altstetten; Höngg; Schwamendingen; Hirslanden; Riesbach; Unterstrass; Oberstrass; Wipkingen; Bahnhofstrasse;
 Lindenhof (Zürich)
CH Basel: Kleinbasel; Gundeldingen=Gundeli; St. Johann (Basel); Bruderholz; Kleinhüningen; Breite; Neubad;
 Bachletten
CH Bern: Bümpliz; Länggasse; Lorraine (Bern); Breitenrain; Matte; Kirchenfeld; Mattenhof; Wabern
CH Genève: Carouge (Genève)=Carouge; Pâquis=Les Pâquis; Plainpalais; Eaux-Vives; Champel; Cologny; Petit-Saconnex;
 Saint-Gervais (Genève); Servette; Les Acacias
CH Lausanne: Ouchy; Sauvabelin; Flon; Chailly (Lausanne); La Sallaz
NL Amsterdam: Jordaan=de Jordaan; De Pijp=Pijp; Oud-Zuid; Watergraafsmeer; Oud-West; Plantage; Rivierenbuurt;
 Transvaalbuurt; Indische Buurt; Kattenburg; Wittenburg; Betondorp; Bijlmer=Bijlmermeer; Sloten=Slotermeer; Osdorp;
 Nieuwendam; Tuindorp Oostzaan; Amsterdam-Noord; Vondelpark; Kalverstraat; Jodenbuurt=Jodenbreestraat; Waterlooplein;
 Kinkerbuurt; Staatsliedenbuurt; Spaarndammerbuurt; Schellingwoude; Leidseplein; Dam Square;
 Prinsengracht=Keizersgracht=Herengracht; Buitenveldert
NL Rotterdam: Kralingen; Crooswijk; Feijenoord; Katendrecht; Delfshaven; Hillegersberg; Charlois; Blijdorp;
 Overschie; Oude Noorden; Spangen; Noordereiland; IJsselmonde (Rotterdam); Pernis; Vreewijk; Kop van Zuid;
 Schiebroek; Pendrecht; Coolsingel; Rozenburg (Rotterdam)
NL The Hague: Scheveningen; Schilderswijk; Bezuidenhout; Statenkwartier; Loosduinen; Archipelbuurt;
 Zeeheldenkwartier; Transvaal (Den Haag)=Transvaalkwartier; Duinoord; Kijkduin; Benoordenhout; Laakkwartier;
 Rijswijkseweg; Mariahoeve; Binnenhof; Madurodam; Ypenburg; Vogelwijk
NL Utrecht: Lombok (Utrecht); Wittevrouwen; Zuilen; Tuindorp; Oog in Al; Hoograven; Ondiep; Tolsteeg; Overvecht;
 Wijk C
NL Haarlem: Schoten; Kleverpark; Spaarndam (Haarlem); Haarlemmerhout; Bosch en Vaart
NL Groningen: Helpman; Oosterpark; Schilderswijk (Groningen); Hoogkerk
NL Nijmegen: Hees; Hatert; Bottendaal; Brakkenstein; Lent
NL Arnhem: Klarendal; Oosterbeek (Arnhem); Sonsbeek; Malburgen; Spijkerkwartier
BE Brussels: Marolles=les Marolles=Marollen; Ixelles=Elsene; Saint-Gilles=Sint-Gillis (Brussels);
 Schaerbeek=Schaarbeek; Laeken=Laken; Uccle=Ukkel; Anderlecht; Etterbeek; Molenbeek=Molenbeek-Saint-Jean;
 Forest=Vorst (Brussels); Jette; Koekelberg; Ganshoren; Auderghem=Oudergem; Watermael=Watermael-Boitsfort=Boitsfort;
 Woluwe=Woluwe-Saint-Lambert; Evere; Haren (Brussels); Sablon=Grand Sablon; Grand-Place=Grote Markt (Brussels);
 Heysel=Heizel; Bois de la Cambre=Ter Kameren; Saint-Josse
BE Antwerpen: Borgerhout; Berchem; Hoboken (Antwerp); Deurne (Antwerp); Merksem; Zurenborg; Eilandje; Wilrijk; Ekeren;
 Red Star Line quay; Seefhoek; Kiel (Antwerp); Linkeroever; Meir; Schipperskwartier; Groenplaats
BE Gent: Ledeberg; Gentbrugge; Patershol; Sint-Amandsberg; Brugse Poort; Mariakerke; Wondelgem; Muide; Rabot;
 Sint-Pieters (Gent)
BE Liège: Outremeuse; Grivegnée; Angleur; Sclessin; Bressoux; Cointe; Jupille; Sainte-Marguerite (Liège); Chênée
FR Paris: Montmartre; Montparnasse; Belleville; Ménilmontant; Le Marais=Marais=le Marais; Quartier Latin=Latin
 Quarter=le Quartier latin; Saint-Germain-des-Prés=St-Germain-des-Prés; Passy; Auteuil; Batignolles=les Batignolles;
 La Villette (Paris); Bercy; Grenelle; Vaugirard; Pigalle; Bastille=la Bastille; Charonne; Les Halles; Pletzl;
 Champs-Élysées=Champs-Elysées=Champs Elysees; Trocadéro; Place de la Concorde; Faubourg Saint-Antoine; Faubourg
 Saint-Germain; Faubourg Saint-Honoré; Buttes-Chaumont; Père-Lachaise=Père Lachaise; La Chapelle (Paris); Gobelins;
 Luxembourg (Jardin du)=Jardin du Luxembourg; Tuileries; Eiffel Tower=Tour Eiffel; Notre-Dame (Paris);
 Butte-aux-Cailles; Gare du Nord; Gare Saint-Lazare; Gare de Lyon; Porte de Clignancourt; Barbès; Monceau=Parc
 Monceau; Invalides; Opéra (Paris)
FR Lyon: Croix-Rousse=la Croix-Rousse; Fourvière; Vieux Lyon; La Guillotière=Guillotière; Vaise; Gerland;
 Monplaisir; Bellecour; Part-Dieu; Presqu'île (Lyon); Perrache; Saint-Just (Lyon); Les Brotteaux=Brotteaux; Tête
 d'Or=Parc de la Tête d'Or; Montchat
FR Marseille: Vieux-Port=le Vieux-Port; Le Panier; L'Estaque=Estaque; Endoume; Belle de Mai=la Belle de Mai;
 Canebière=La Canebière; Les Goudes; Mazargues; Saint-Barnabé; Prado; La Joliette; Castellane (Marseille);
 Saint-Henri (Marseille); Les Catalans
FR Bordeaux: Chartrons=les Chartrons; Saint-Michel (Bordeaux); Bacalan; La Bastide (Bordeaux); Caudéran;
 Saint-Seurin; Saint-Augustin (Bordeaux)
FR Lille: Wazemmes; Fives; Hellemmes; Vieux-Lille; Moulins (Lille); Lomme
FR Strasbourg: Petite France=la Petite France; Neudorf; Robertsau=La Robertsau; Krutenau; Cronenbourg=Kronenburg;
 Koenigshoffen=Königshofen (Strassburg); Neuhof; Orangerie; Meinau
FR Nice: Cimiez; Promenade des Anglais; Vieux Nice; Riquier; Carabacel; Mont Boron; Saint-Roch (Nice)
FR Toulouse: Capitole; Saint-Cyprien (Toulouse); Minimes; Saint-Michel (Toulouse); Lalande; Côte Pavée
FR Nantes: Chantenay; Doulon; Île Feydeau; Sainte-Anne (Nantes); Trentemoult
DZ Algiers: Bab el Oued=Bab-el-Oued; Casbah=la Casbah; Belcourt; Hydra (Alger); El Biar; Hussein Dey; Saint-Eugène
 (Alger)
IT Rome: Trastevere; Testaccio; Garbatella; San Lorenzo (Roma); Prati; Monti; Parioli; Esquilino; Borgo (Roma);
 Ostiense; Campo de' Fiori=Campo dei Fiori; Piazza Navona; Ostia=Ostia Lido; Quarticciolo; Centocelle; Pigneto;
 Nomentano; Salario; Trionfale; Aventino; Celio; Villa Borghese; Colosseum=Colosseo; San Giovanni (Roma); Tor
 Pignattara; Monteverde; EUR (Roma); Cinecittà; Ghetto (Roma)=Ghetto di Roma; Vatican Gardens; Via Appia=Appia
 Antica; Montesacro; Tiburtino; Trevi
IT Milan: Brera; Navigli (Milano)=Naviglio; Porta Romana; Porta Ticinese; Porta Venezia; Porta Genova; Lambrate;
 Bovisa; Isola (Milano); Città Studi; Niguarda; Baggio; San Siro; Greco; Affori; Loreto (Milano); Lorenteggio;
 Giambellino; Quarto Oggiaro; Sempione; Crescenzago; Corso Buenos Aires; Galleria Vittorio Emanuele; Porta Vittoria;
 Calvairate
IT Turin: Borgo San Paolo; Barriera di Milano; Vanchiglia; Lingotto; Mirafiori; San Salvario; Crocetta; Borgo
 Dora=Porta Palazzo; Madonna di Campagna; Valentino=Parco del Valentino; Borgo Po; Aurora (Torino); Pozzo Strada;
 Santa Rita (Torino); Cavoretto
IT Naples: Posillipo; Vomero; Chiaia; Sanità=Rione Sanità; Spaccanapoli; Santa Lucia=Santa Lucia (Napoli);
 Mergellina; Bagnoli; Fuorigrotta; Poggioreale; Quartieri Spagnoli; Forcella; Scampia; Barra (Napoli); Capodimonte;
 Vasto (Napoli); Montesanto; San Giovanni a Teduccio; Ponticelli; Arenella; Mercato (Napoli)
IT Venice: Cannaregio; Dorsoduro; Castello (Venezia); San Marco=Piazza San Marco=St Mark's Square; Santa Croce
 (Venezia); San Polo=San Polo (Venezia); Mestre; Marghera=Porto Marghera; Malamocco; Pellestrina; Sacca Fisola;
 Rialto=Ponte di Rialto; Zattere; Arsenale
IT Genoa: Sampierdarena; Nervi; Boccadasse; Sturla; Pegli; Voltri; Albaro; Castelletto; Marassi; Staglieno; Foce;
 Quarto dei Mille; Cornigliano; Sestri Ponente; Bolzaneto; Pontedecimo; Rivarolo
IT Florence: Oltrarno; San Frediano; Santo Spirito; Santa Croce=Santa Croce (Firenze); San Lorenzo (Firenze); Campo
 di Marte; Careggi; Rifredi; Bellosguardo; Settignano; Coverciano; San Niccolò; Isolotto; Cascine=Le Cascine; Ponte
 Vecchio; Piazzale Michelangelo; Galluzzo; Novoli; San Jacopino
IT Palermo: Mondello; Ballarò; Vucciria; Kalsa; Capo (Palermo); Brancaccio; Acqua dei Corsari; Noce; Zisa; Arenella
 (Palermo); Sferracavallo; Borgo Vecchio
IT Bologna: Bolognina; San Vitale (Bologna); Corticella; Borgo Panigale; Saragozza; San Donato (Bologna); Pratello;
 Barca; San Luca (Bologna)
IT Trieste: San Giacomo; Servola=Škedenj; Barcola=Barkovlje; Opicina=Opčine; Roiano; Cavana; Miramare; San Vito
 (Trieste); Cittavecchia (Trieste); Prosecco (Trieste)
IT Bolzano: Gries (Bozen)=Gries bei Bozen; Oltrisarco=Oberau; Don Bosco (Bolzano); Laubengasse
ES Madrid: Lavapiés; Chamberí; Malasaña; Salamanca (Madrid)=Barrio de Salamanca; Vallecas=Puente de Vallecas;
 Carabanchel; Chueca; La Latina; Cuatro Caminos; Tetuán; Arganzuela; Argüelles; Ventas; Chamartín; Puerta del Sol; El
 Rastro; Retiro=El Retiro; Gran Vía; Moncloa; Ciudad Lineal; Usera; Moratalaz; Barajas; Las Letras; Pacífico;
 Prosperidad; Casa de Campo
ES Barcelona: Gràcia=Gracia; Barceloneta=La Barceloneta; Eixample=Ensanche (Barcelona); Raval=El Raval=Barrio Chino;
 Sants; Poble-sec=Poble Sec; Poblenou=Pueblo Nuevo; Sarrià; Sant Andreu; Horta; Born=El Born; Barri Gòtic=Barrio
 Gótico; Les Corts; Clot=El Clot; Sant Gervasi; Guinardó; Nou Barris; Bonanova; Pedralbes; La Rambla=Las
 Ramblas=Ramblas; Montjuïc (Barcelona); Somorrostro; Carmel (Barcelona)=El Carmel; Vallvidrera; Hostafrancs
ES Sevilla: Triana; Macarena=La Macarena; Santa Cruz (Sevilla)=Barrio de Santa Cruz; Nervión (Sevilla); Alameda de
 Hércules; Los Remedios; San Bernardo (Sevilla); Heliópolis; El Arenal; San Lorenzo (Sevilla); Plaza de España
 (Sevilla)
ES Valencia: Cabanyal=El Cabañal; Grao=El Grao; Ruzafa=Russafa; Carmen=El Carmen=Barrio del Carmen; Malvarrosa;
 Benimaclet; Nazaret; Campanar; Patraix; Benicalap; Malilla
ES Bilbao: Deusto=Deustu; Abando; Casco Viejo=Siete Calles; Begoña; Zorroza; Olabeaga; Rekalde; San Francisco
 (Bilbao); Indautxu; Atxuri
ES Donostia / San Sebastián: Gros; Antiguo=El Antiguo; Amara; Egia; Parte Vieja; Loyola (San Sebastián); Altza=Alza;
 Intxaurrondo
PT Lisbon: Alfama; Bairro Alto; Mouraria; Belém (Lisboa)=Belém; Chiado; Baixa=Baixa Pombalina; Graça; Campo de
 Ourique; Alcântara; Madragoa; Ajuda; Benfica; Estrela; Lapa; Marvila; Xabregas; Castelo (Lisboa); Rossio; Campolide;
 Arroios; Penha de França; Alvalade; Lumiar; Olivais; Cais do Sodré; Santos-o-Velho; Rato; Carnide; Beato
PT Porto: Ribeira; Foz do Douro=Foz; Bonfim; Cedofeita; Massarelos; Campanhã; Paranhos; Miragaia; Lordelo do Ouro;
 Boavista; Aldoar; Ramalde; Vitória (Porto); Batalha (Porto); Santo Ildefonso
GR Athens: Plaka; Monastiraki; Kolonaki; Pangrati; Exarchia; Kypseli; Thiseio; Psyrri; Petralona; Kifissia (Athens);
 Nea Ionia (Athens); Faliro=Palaio Faliro; Omonia; Syntagma; Koukaki; Metaxourgeio; Ampelokipoi; Gazi
GR Thessaloníki: Ano Poli; Ladadika; Kalamaria (Thessaloniki); Toumba; Baron Hirsch quarter; Vardaris; White Tower
TR Istanbul: Pera=Beyoğlu=Péra; Galata=Karaköy; Balat; Fener=Phanar; Kadıköy=Kadikoy=Chalcedon; Üsküdar=Scutari
 (Istanbul)=Uskudar; Beşiktaş; Ortaköy; Bebek; Tarabya=Therapia; Büyükdere; Eyüp; Fatih; Sultanahmet; Kumkapı;
 Samatya=Psamathia; Moda; Şişli; Kurtuluş=Tatavla; Arnavutköy; Kuzguncuk; Beykoz; Sirkeci; Taksim; Yeşilköy=San
 Stefano; Bakırköy=Makriköy; Kasımpaşa; Hasköy; Haydarpaşa; Rumeli Hisarı; Nişantaşı; Cihangir; Yedikule
TR İzmir: Bornova (Smyrna)=Bournabat; Buca=Boudja; Karşıyaka=Cordelio; Konak; Alsancak=Punta; Göztepe; Kordon=the
 Quay (Smyrna); Kadifekale
IL Jerusalem: Rehavia; Talbiya; Katamon; Mea Shearim=Meah Shearim; Nachlaot; Yemin Moshe; Old City (Jerusalem);
 German Colony (Jerusalem)=Deutsche Kolonie; Baka; Beit HaKerem; Musrara; Sheikh Jarrah; American Colony; Kiryat
 Yovel; Talpiot; Ein Kerem
IL Tel Aviv: Jaffa=Yafo; Neve Tzedek; Florentin; Dizengoff; Sarona; Allenby Street; Rothschild Boulevard; Kerem
 HaTeimanim; Ramat Aviv; Hatikva
IL Haifa: Hadar=Hadar HaCarmel; Wadi Nisnas; Bat Galim; Neve Sha'anan; Ahuza; German Colony (Haifa)
GB London: Bethnal Green; Whitechapel; Stepney; Poplar; Limehouse; Wapping; Bow; Mile End; Hackney; Hoxton;
 Shoreditch; Islington; Highbury; Holloway; Clerkenwell; Finsbury; Finsbury Park; Kentish Town; Camden Town=Camden;
 Hampstead; Hampstead Heath; Highgate; St John's Wood=St. John's Wood; Swiss Cottage; Golders Green; Hendon;
 Finchley; Muswell Hill; Crouch End; Hornsey; Wood Green; Tottenham; Walthamstow; Leyton; Leytonstone; Stratford
 (London)=Stratford East; West Ham; East Ham; Plaistow; Canning Town; Silvertown; Isle of Dogs=Millwall; Southwark;
 Bermondsey; Rotherhithe; Deptford; Greenwich; Blackheath; Lewisham; Catford; Peckham; Camberwell; Walworth; Lambeth;
 Kennington; Vauxhall; Brixton; Stockwell; Clapham; Clapham Common; Battersea; Wandsworth; Putney; Fulham;
 Hammersmith; Chelsea; Kensington; Earl's Court; Notting Hill; Paddington (London)=Paddington; Bayswater; Marylebone;
 Mayfair; Soho; Bloomsbury; Holborn; Covent Garden; Westminster; Pimlico; Belgravia; Knightsbridge; Piccadilly;
 Trafalgar Square; Strand=the Strand; Fleet Street; Hyde Park (London)=Hyde Park; Kew; Kew Gardens; Richmond
 (London)=Richmond Park; Twickenham; Wimbledon; Tooting; Balham; Streatham; Norwood=South Norwood; Dulwich; Sydenham;
 Crystal Palace; Penge; Forest Hill; Eltham; Woolwich; Plumstead; Shepherd's Bush; Acton; Ealing; Chiswick;
 Brentford; Harlesden; Willesden; Kilburn; Cricklewood; Wembley; Hoxton Square; Spitalfields; Petticoat Lane; Old
 Kent Road; Elephant and Castle; King's Cross (London)=Kings Cross; Euston; Waterloo (London)=Waterloo Station;
 Victoria Station (London); Charing Cross; East End=the East End; West End=the West End; Tower Bridge; Tower Hill;
 Buckingham Palace; Regent's Park; Stoke Newington; Dalston; Homerton; Clapton; Muswell; Stamford Hill; Earlsfield;
 Nunhead; New Cross
GB Edinburgh: Leith; Portobello (Edinburgh); Morningside; Bruntsfield; Stockbridge (Edinburgh); Newhaven
 (Edinburgh); Marchmont; Gorgie; Dalry; Corstorphine; Canongate; Grassmarket; Cowgate; Newington; Duddingston;
 Colinton; Tollcross; Granton; Trinity; Murrayfield; Comely Bank; Royal Mile; Princes Street; Holyrood; Musselburgh
 Road; Cramond; Costorphine; Liberton; Gilmerton
GB Glasgow: Gorbals=the Gorbals; Partick; Govan; Maryhill; Bridgeton; Calton; Dennistoun; Pollokshields;
 Pollokshaws; Hyndland; Kelvinside; Kelvingrove; Anderston; Springburn; Cowcaddens; Shettleston; Parkhead; Whiteinch;
 Scotstoun; Cathcart; Langside; Govanhill; Sauchiehall Street; Hillhead; Possilpark; Drumchapel; Easterhouse;
 Townhead; Kinning Park; Shawlands; Tollcross (Glasgow); Anniesland
GB Dundee: Broughty Ferry; Lochee; Hilltown; Downfield
GB Aberdeen: Torry; Old Aberdeen; Footdee=Fittie; Woodside (Aberdeen); Rosemount; Ferryhill (Aberdeen)
GB Belfast: Falls Road=the Falls; Shankill (Belfast)=Shankill Road=the Shankill; Ballymacarrett; Ardoyne; Sandy Row;
 Malone; Stranmillis; Knock (Belfast); Strandtown; Sydenham (Belfast); Ormeau; Oldpark; Crumlin Road; York Street
 (Belfast); Andersonstown; Belmont (Belfast); Ballyhackamore
GB Liverpool: Toxteth; Everton; Anfield; Walton; Wavertree; Aigburth; Bootle (Liverpool); Kirkdale; Vauxhall
 (Liverpool); Scotland Road; Edge Hill; Garston; Speke; Allerton; Woolton; Fazakerley; West Derby; Old Swan; Dingle
 (Liverpool)=the Dingle; Mossley Hill; Penny Lane; Pier Head; Norris Green; Knotty Ash; Childwall; Croxteth; Princes
 Landing Stage
GB Manchester: Ancoats; Hulme; Moss Side; Ardwick; Didsbury; Chorlton=Chorlton-cum-Hardy; Withington; Fallowfield;
 Levenshulme; Longsight; Gorton; Rusholme; Cheetham Hill; Harpurhey; Moston; Blackley; Newton Heath; Collyhurst;
 Openshaw; Miles Platting; Wythenshawe; Whalley Range; Victoria Park; Burnage; Old Trafford; Belle Vue; Salford
 Quays; Piccadilly Gardens
GB Birmingham: Aston; Handsworth; Edgbaston; Small Heath; Sparkbrook; Bournville; Selly Oak; Kings Heath; Moseley;
 Balsall Heath; Digbeth; Bordesley; Nechells; Saltley; Erdington; Harborne; Ladywood; Hockley; Kings Norton; Acocks
 Green; Northfield; Longbridge; Winson Green; Yardley; Sparkhill; Perry Barr; Bull Ring; Hall Green; Stirchley;
 Castle Bromwich
GB Leeds: Headingley; Chapeltown; Armley; Holbeck; Hunslet; Beeston (Leeds); Harehills; Kirkstall; Roundhay; Bramley
 (Leeds); Burley; Leylands; Seacroft; Chapel Allerton; Meanwood; Horsforth (Leeds); Woodhouse (Leeds); Wortley;
 Middleton (Leeds)
GB Sheffield: Attercliffe; Hillsborough (Sheffield); Heeley; Walkley; Crookes; Broomhill; Ecclesall; Nether Edge;
 Darnall; Brightside; Burngreave; Pitsmoor; Park Hill; Tinsley; Wincobank
GB Bristol: Clifton (Bristol)=Clifton Suspension Bridge; Bedminster; Redcliffe; Hotwells; St Pauls (Bristol);
 Easton; Fishponds; Knowle (Bristol); Totterdown; Avonmouth; Horfield; Redland; Cotham; Montpelier (Bristol);
 Westbury-on-Trym; Brislington; Southville; Bishopston
GB Cardiff: Tiger Bay=Butetown; Canton (Cardiff); Splott; Grangetown; Roath; Cathays; Llandaff; Riverside (Cardiff);
 Ely (Cardiff); Adamsdown; Rumney; Whitchurch (Cardiff); Rhiwbina; Llanishen; Cardiff Arms Park
GB Swansea: Mumbles=The Mumbles; Morriston; Sketty; Landore; Uplands; Townhill; Brynmill; St Thomas (Swansea)
GB Newcastle upon Tyne: Byker; Jesmond; Gosforth; Heaton; Elswick; Walker; Benwell; Scotswood; Fenham; Quayside
 (Newcastle); Benton; Lemington; Walkergate; Sandyford
GB Portsmouth: Southsea; Fratton; Cosham; Landport; Portsea; Copnor; Eastney; Milton (Portsmouth); Hilsea
GB Plymouth: Devonport; Stonehouse; Mutley; Barbican; Plymouth Hoe=the Hoe=The Hoe; Plympton; Keyham; Stoke
 (Plymouth); Plymstock; Mannamead
GB Southampton: Shirley; Bitterne; Northam; St Mary's (Southampton); Portswood; Woolston; Millbrook; Southampton
 Docks; Swaythling; Freemantle; Bassett
GB Kingston upon Hull: Hessle Road; Holderness Road; Sculcoates; Drypool; Paragon Station; Anlaby Road
GB Nottingham: Lace Market; Sneinton; Basford; Bulwell; Lenton; The Meadows; Radford; Sherwood (Nottingham); St
 Ann's; Hyson Green; Mapperley; Wollaton; Bilborough
GB Brighton: Kemptown=Kemp Town; Hanover (Brighton); Moulsecoomb; Patcham; Rottingdean; Preston (Brighton); Hove
 (Brighton); The Lanes; Palace Pier
IE Dublin: Ringsend; Ballsbridge; Rathmines; Ranelagh; Rathgar; Terenure; Drumcondra; Glasnevin; Phibsborough;
 Clontarf; Sandymount; Irishtown; Donnybrook (Dublin); Kilmainham; Inchicore; Liberties=the Liberties; Stoneybatter;
 Cabra; Crumlin (Dublin); Drimnagh; Harold's Cross; Portobello (Dublin); Smithfield (Dublin); Summerhill (Dublin);
 North Strand; East Wall; Marino; Fairview (Dublin); Killester; Raheny; Howth (Dublin); Sutton (Dublin); Chapelizod;
 Islandbridge; Ballyfermot; Dolphin's Barn; Dalkey (Dublin); Kingstown (Dublin); Blackrock (Dublin); Booterstown;
 Monkstown (Dublin); Finglas; Ballymun; Coolock; O'Connell Street=Sackville Street; Grafton Street; St Stephen's
 Green=Stephen's Green; Temple Bar; Mountjoy; Clontarf West; Milltown (Dublin); Dundrum (Dublin); Churchtown;
 Clonskeagh; Baldoyle
IE Cork: Shandon; Sunday's Well; Blackpool (Cork); Montenotte; Douglas (Cork); Blackrock (Cork); Mayfield (Cork);
 Turners Cross; Patrick Street (Cork); Tivoli (Cork); Gurranabraher; Ballintemple
IE Gaillimh: Salthill; Claddagh=the Claddagh; Eyre Square; Bohermore; Renmore; Shantalla; Woodquay
IE Limerick: Garryowen; Irishtown (Limerick); Ballinacurra; Thomondgate; King's Island; Corbally
IE Waterford: Ballybricken; Ferrybank; the Quay (Waterford)
CA Toronto: Cabbagetown; The Beaches=the Beach=the Beaches (Toronto); Rosedale; Parkdale; Riverdale; Leslieville;
 Yorkville; Kensington Market; The Annex=the Annex; The Junction=West Toronto Junction; Swansea (Toronto); Leaside;
 Corktown; Mimico; New Toronto; Etobicoke; Scarborough (Toronto)=Scarborough; North York; Forest Hill (Toronto); Don
 Mills; Weston; Runnymede; High Park; Danforth=the Danforth; East York; Sunnyside; Bloor Street; Spadina; Liberty
 Village; The Ward=the Ward; Earlscourt; Todmorden; Willowdale; Moss Park; Brockton; Exhibition Place=the Ex=CNE;
 Casa Loma; Scarborough Bluffs; Lawrence Park
CA Montréal: Griffintown; Pointe-Saint-Charles=Point St. Charles=Pointe St-Charles=Point St Charles; Saint-Henri=St.
 Henri=St-Henri; Verdun (Montréal)=Verdun; Outremont; Westmount; Mile End (Montréal); Plateau Mont-Royal=le
 Plateau=Plateau; Hochelaga=Hochelaga-Maisonneuve; Maisonneuve; Rosemont; Villeray; Ahuntsic;
 Notre-Dame-de-Grâce=N.D.G.=NDG; Côte-des-Neiges; Lachine; Ville-Émard; LaSalle; Sainte-Cunégonde; Little
 Burgundy=Petite-Bourgogne; Côte-Saint-Paul; Snowdon (Montreal); Park Extension; St. Lawrence Main=the Main;
 Cartierville; Montréal-Nord; Tétreaultville; Faubourg à m'lasse; Saint-Léonard (Montréal); Goose Village;
 Vieux-Montréal=Old Montreal; Sainte-Marie (Montréal); Saint-Laurent (Montréal); Pointe-aux-Trembles; Golden Square
 Mile; Mile-End
CA Québec: Saint-Roch=St-Roch; Limoilou; Saint-Sauveur (Québec); Sillery; Sainte-Foy; Vieux-Québec=Old Quebec;
 Saint-Jean-Baptiste (Québec); Beauport; Charlesbourg; Cap-Blanc; Loretteville; Château Frontenac; Dufferin Terrace
CA Vancouver: Kitsilano; Strathcona; Gastown; Kerrisdale; Shaughnessy; Fairview (Vancouver); Mount Pleasant
 (Vancouver); Dunbar; Marpole; East Vancouver=East Van; West End (Vancouver); Grandview; Hastings=Hastings-Sunrise;
 Chinatown (Vancouver); Japantown=Powell Street; Point Grey (Vancouver); Yaletown; Kits Beach=Kitsilano Beach;
 Commercial Drive; South Vancouver; Fraserview; Oakridge; False Creek; Jericho Beach; Spanish Banks; Burnaby Heights
CA Victoria: James Bay (Victoria); Fernwood; Oak Bay (Victoria); Esquimalt (Victoria); Fairfield; Rockland
 (Victoria); Beacon Hill Park; Inner Harbour (Victoria); Vic West
CA Winnipeg: North End=the North End; Fort Rouge; Wolseley; St. Boniface=Saint-Boniface=St Boniface; St. Vital;
 Elmwood; Transcona; Point Douglas; Weston (Winnipeg); Fort Garry (Winnipeg); River Heights; Crescentwood;
 Kildonan=West Kildonan=East Kildonan; St. James (Winnipeg); Osborne Village; Portage and Main; Tuxedo
CA Calgary: Inglewood (Calgary)=Inglewood; Bowness; Hillhurst; Mount Royal (Calgary); Bridgeland=Riverside
 (Calgary); Sunnyside (Calgary); Ogden; Forest Lawn; Ramsay; Kensington (Calgary); Elbow Park; Montgomery
CA Edmonton: Strathcona (Edmonton)=Old Strathcona; Calder; Jasper Place; Beverly; Highlands; Garneau; Glenora;
 McCauley; Norwood (Edmonton); Bonnie Doon; North Edmonton; Forest Heights; Oliver (Edmonton)
CA Ottawa: ByWard Market=the Market; Sandy Hill; Lowertown=Lower Town; Glebe=the Glebe; Centretown; LeBreton Flats;
 Rockcliffe=Rockcliffe Park; New Edinburgh; Vanier=Eastview; Hintonburg; Westboro; Mechanicsville; Nepean; Britannia
 (Ottawa); Old Ottawa South; Overbrook; Parliament Hill; Alta Vista
CA Halifax: Richmond (Halifax)=Africville; North End (Halifax); South End (Halifax); Pier 21; Fairview (Halifax);
 Armdale; Point Pleasant Park; Rockingham; Spryfield; Purcell's Cove
CA Hamilton: Corktown (Hamilton); Stoney Creek (Hamilton); Dundurn; Westdale; the North End (Hamilton); Barton
 Street; East Hamilton; Dundas (Hamilton)
CA Regina: Germantown (Regina); Cathedral; North Central; RCMP Depot; Lakeview (Regina)
CA Saskatoon: Nutana; Riversdale; Caswell Hill; Sutherland; Mayfair (Saskatoon); City Park
CA Saint John: Carleton (Saint John)=West Saint John=Saint John West; Indiantown; Portland (Saint John); Reversing
 Falls; Millidgeville; South End (Saint John)
CA St. John's: The Battery=the Battery; Quidi Vidi; Georgestown; Rabbittown; Signal Hill; Water Street; Mundy Pond
US New York City: Lower East Side=the Lower East Side; Hell's Kitchen; Harlem; East Harlem=Spanish Harlem; Greenwich
 Village=the Village; Little Italy; Chinatown (New York); Yorkville (New York); Washington Heights; Inwood; Upper
 West Side; Upper East Side; Bowery=the Bowery; Williamsburg (Brooklyn)=Williamsburg; Bushwick; Flatbush; Bay Ridge;
 Bensonhurst; Brownsville (Brooklyn); East New York; Greenpoint; Park Slope; Red Hook (Brooklyn)=Red Hook; Sunset
 Park; Borough Park; Crown Heights; Bedford-Stuyvesant=Bed-Stuy; Canarsie; Sheepshead Bay (Brooklyn); Brighton Beach;
 Carroll Gardens; Cobble Hill; Brooklyn Heights; Fort Greene; Gravesend; Dyker Heights; Ridgewood (Queens);
 Astoria=Astoria (Queens); Long Island City; Flushing; Jamaica (Queens); Forest Hills; Jackson Heights; Corona
 (Queens); Woodside (Queens); Sunnyside (Queens); Elmhurst (Queens); Maspeth; Richmond Hill (Queens); Ozone Park; Far
 Rockaway=Rockaway Beach=the Rockaways=Rockaway; Bayside; Whitestone; College Point; Mott Haven; Fordham; Morrisania;
 Hunts Point; Arthur Avenue=Belmont (Bronx); Throgs Neck; Riverdale (Bronx); Woodlawn (Bronx); Tremont; Grand
 Concourse; South Bronx; Stapleton (Staten Island); Tottenville; St. George (Staten Island); Port Richmond; New
 Brighton (Staten Island); Todt Hill; Times Square; Central Park; Wall Street; Battery Park; Chelsea (New York);
 Gramercy=Gramercy Park; Murray Hill (New York); Turtle Bay; SoHo; Tribeca; Battery; Fifth Avenue; Hester
 Street=Orchard Street=Delancey Street; Mulberry Street; East Village=Alphabet City; Kips Bay; Morningside Heights;
 Sugar Hill; San Juan Hill; Prospect Park; Ebbets Field; Yankee Stadium; Kleindeutschland=Little Germany
US Chicago: Back of the Yards; Bridgeport (Chicago); Pilsen (Chicago); Hyde Park (Chicago); Lawndale=North Lawndale;
 Humboldt Park; Wicker Park; Bucktown; Lincoln Park; Old Town; Andersonville; Lake View=Lakeview (Chicago); Rogers
 Park; Uptown; Ravenswood; Albany Park; Logan Square; Englewood (Chicago); Pullman; South Chicago; Hegewisch;
 Roseland (Chicago); Beverly (Chicago); South Side=the South Side; West Side=the West Side; North Side; Bronzeville;
 Kenwood; Woodlawn (Chicago); Canaryville; Maxwell Street; Near West Side; Marquette Park; Chicago Lawn; Gage Park;
 Brighton Park; McKinley Park; Ukrainian Village; Noble Square; Jackowo=Avondale (Chicago); Portage Park; Jefferson
 Park; Austin (Chicago); Garfield Park; South Shore; Chatham (Chicago); Morgan Park; Stockyards=Union Stockyards; The
 Loop=the Loop; Taylor Street; Edgewater; Goose Island; Comiskey Park; Wrigley Field; Riverview Park; Little Village;
 Armour Square; Norwood Park; Edison Park; Irving Park; Sauganash; Cragin; Bowmanville
US Boston: South Boston=Southie; North End (Boston)=the North End (Boston); Dorchester; Roxbury; Jamaica Plain;
 Charlestown (Boston)=Charlestown; East Boston=Eastie; Back Bay; Beacon Hill; West End (Boston); South End (Boston);
 Roslindale; Hyde Park (Boston); Mattapan; Brighton (Boston); Allston; West Roxbury; Mission Hill; Neponset; Fields
 Corner; Savin Hill; Scollay Square; Bunker Hill; Boston Common; Fenway=Fenway Park; Faneuil Hall; Grove Hall; Codman
 Square; Castle Island; Nantasket Beach; Revere Beach
US Philadelphia: Kensington (Philadelphia); Fishtown; Port Richmond (Philadelphia); South Philadelphia=South Philly;
 West Philadelphia; North Philadelphia; Germantown (Philadelphia)=Germantown; Mount Airy; Chestnut Hill; Manayunk;
 Roxborough; Frankford; Northern Liberties; Society Hill; Southwark (Philadelphia); Tacony; Holmesburg; Strawberry
 Mansion; Queen Village; Brewerytown; Nicetown; Olney; Logan (Philadelphia); Bridesburg; Mayfair (Philadelphia);
 Grays Ferry; Point Breeze; Fairmount Park; Oxford Circle; Passyunk; Feltonville; Fox Chase; Wissahickon
US Detroit: Hamtramck (Detroit); Poletown; Corktown (Detroit)=Corktown; Delray; Black Bottom; Paradise Valley;
 Greektown; Mexicantown; Brightmoor; Rosedale Park; Indian Village; Warrendale; Highland Park (Detroit); Grosse
 Pointe (Detroit); Palmer Woods; Boston-Edison; Conant Gardens; Dearborn (Detroit); Springwells; River Rouge plant;
 East Side (Detroit); Cass Corridor; Jefferson-Chalmers
US Cleveland: Slavic Village; Tremont (Cleveland); Ohio City; Glenville; Hough; Collinwood; Buckeye Road; Broadway
 (Cleveland); Fleet Avenue; Little Italy (Cleveland); St. Clair Avenue; Mount Pleasant (Cleveland); Old Brooklyn;
 Kinsman; Clark-Fulton; Newburgh (Cleveland); West Park; Edgewater (Cleveland); Euclid Avenue; Warszawa (Cleveland);
 Five Points (Cleveland); Birmingham (Cleveland)
US Pittsburgh: Polish Hill; Bloomfield (Pittsburgh); Lawrenceville; Squirrel Hill; Hill District=the Hill District;
 South Side (Pittsburgh); North Side (Pittsburgh); Oakland (Pittsburgh); East Liberty; Homewood; Shadyside;
 Hazelwood; Mount Washington (Pittsburgh); Strip District; Troy Hill; Deutschtown; Allegheny City=Allegheny
 (Pittsburgh); Manchester (Pittsburgh); Greenfield; Brookline (Pittsburgh); Carrick; Beechview; Garfield; Larimer;
 Homestead works; West End (Pittsburgh)
US Milwaukee: Bay View; Third Ward; Kilbourn Park; Lincoln Village; South Side (Milwaukee); Brady Street; Walker's
 Point; Riverwest; Merrill Park; Jones Island; Bronzeville (Milwaukee); Story Hill; Sherman Park; Harambee
US Minneapolis: Northeast Minneapolis=Nordeast; Cedar-Riverside=Seven Corners; Dinkytown; Seward; Bohemian Flats;
 Camden (Minneapolis); Uptown (Minneapolis); Longfellow; Powderhorn; Linden Hills; Prospect Park (Minneapolis);
 Phillips; North Minneapolis; Minnehaha Falls
US Saint Paul: Frogtown; Swede Hollow; Payne Avenue; Rondo; Summit Avenue; West Seventh; Macalester; Highland Park
 (St. Paul); Como Park; Dayton's Bluff; Merriam Park; Rice Street; North End (St. Paul); Fort Snelling
US St. Louis: Soulard; The Hill=the Hill; Dogtown; Carondelet; Kerry Patch; Lafayette Square; Hyde Park (St. Louis);
 Baden (St. Louis); Forest Park (St. Louis)=Forest Park; Tower Grove; Central West End; The Ville; Bevo Mill=Bevo;
 Cherokee Street; Mill Creek Valley; Benton Park; Old North St. Louis; Gravois; Walnut Park
US San Francisco: North Beach; Mission District=the Mission; Chinatown (San Francisco)=Chinatown; Nob Hill; Russian
 Hill; Telegraph Hill; Pacific Heights; Haight-Ashbury=the Haight; Sunset District=the Sunset; Richmond District=the
 Richmond; Noe Valley; Potrero Hill; Bernal Heights; Fillmore=the Fillmore; Western Addition; Castro=the Castro;
 Marina District; Fisherman's Wharf; Golden Gate Park; Presidio=the Presidio; South of Market; Excelsior; Hunters
 Point; Visitacion Valley; Ocean Beach (San Francisco)=Ocean Beach; Sutro Baths; Cliff House; Twin Peaks; Glen Park;
 Embarcadero; Union Square (San Francisco); Barbary Coast; Tenderloin; Butchertown
US Los Angeles: Hollywood; Boyle Heights; Echo Park; Watts; San Pedro (Los Angeles)=San Pedro; Venice Beach=Venice
 (Los Angeles); Silver Lake; Highland Park (Los Angeles); Lincoln Heights; Bunker Hill (Los Angeles); Little Tokyo;
 Chavez Ravine; Brentwood (Los Angeles); Westwood; Encino; Van Nuys; Reseda; Canoga Park; Sherman Oaks; North
 Hollywood; Pacific Palisades; Wilmington (Los Angeles); Eagle Rock; Los Feliz; Griffith Park; Olvera Street;
 Angelino Heights; East Los Angeles=East L.A.; Leimert Park; Crenshaw; Century City; Bel Air; Sun Valley; Tujunga;
 San Fernando Valley=the Valley; Terminal Island; Elysian Park; Sawtelle; Playa del Rey; Mar Vista
US Seattle: Ballard; Fremont (Seattle); Queen Anne; Capitol Hill; Georgetown (Seattle); West Seattle; Pioneer
 Square; Pike Place=Pike Place Market; Rainier Valley; Beacon Hill (Seattle); Columbia City; Wallingford; University
 District; Magnolia; Central District; Alki=Alki Beach; Phinney Ridge; Nihonmachi; Greenwood (Seattle); Madison Park;
 Montlake
US New Orleans: French Quarter=Vieux Carré; Irish Channel; Garden District; Treme=Tremé; Bywater; Marigny=Faubourg
 Marigny; Algiers (New Orleans)=Algiers Point; Ninth Ward; Gentilly; Mid-City; Carrollton; Storyville; Uptown (New
 Orleans); Lakeview (New Orleans); Bourbon Street; Bayou St. John; Desire
US Baltimore: Fells Point=Fell's Point; Canton (Baltimore); Highlandtown; Locust Point; Federal Hill; Hampden;
 Little Italy (Baltimore); Curtis Bay; Bolton Hill; Pigtown; Roland Park; Pimlico (Baltimore); Hamilton (Baltimore);
 Inner Harbor; Greektown (Baltimore); Mount Vernon (Baltimore)
US Buffalo: Black Rock; Polonia=East Side (Buffalo); Lackawanna works; First Ward=Old First Ward; Elmwood Village;
 Allentown (Buffalo); South Buffalo; Riverside (Buffalo); Kaisertown; Lovejoy (Buffalo); Broadway Market; Parkside;
 Fruit Belt
US Cincinnati: Over-the-Rhine=Over the Rhine; Mount Adams (Cincinnati)=Mt. Adams; Price Hill; Walnut Hills; Avondale
 (Cincinnati); Clifton (Cincinnati); Corryville; Hyde Park (Cincinnati); Northside; Mount Auburn; West End
 (Cincinnati); College Hill; Westwood (Cincinnati); Sedamsville; Crosley Field
US Denver: Globeville; Five Points (Denver); Capitol Hill (Denver); Highlands (Denver); Auraria; Swansea
 (Denver)=Elyria; Park Hill (Denver); Washington Park; City Park (Denver); West Colfax; Larimer Street; North Denver;
 Cherry Creek; Barnum
US Portland: Albina; Sellwood; St. Johns (Portland); Goose Hollow; Nob Hill (Portland); Slabtown; Hawthorne;
 Laurelhurst; Old Town (Portland); Mount Tabor (Portland); Irvington (Portland); Linnton; Kenton; Council Crest;
 Multnomah Village; Washington Park (Portland)
US Washington: Georgetown (Washington)=Georgetown; Foggy Bottom; Capitol Hill (Washington); Anacostia; Adams Morgan;
 Shaw; Dupont Circle; Swampoodle; LeDroit Park; Southwest Waterfront; Brookland; Cleveland Park; Mount Pleasant
 (Washington); Tenleytown; Petworth; U Street; Lafayette Park; Lincoln Memorial; White House=the White House
US Houston: The Heights=Houston Heights=the Heights; Third Ward (Houston); Fourth Ward; Montrose; River Oaks; Fifth
 Ward; Magnolia Park; Second Ward; West University; Harrisburg (Houston)
US Honolulu: Kalihi; Manoa; Makiki; Kaimuki; Waikiki (Honolulu); Nuuanu; Palama; Kakaako; Moiliili; Chinatown
 (Honolulu); Palolo; Punchbowl
US Newark: Ironbound=Down Neck; Weequahic; Vailsburg; Roseville (Newark); Clinton Hill; Forest Hill (Newark);
 Central Ward
US Jersey City: Greenville (Jersey City); Paulus Hook; Journal Square; The Heights (Jersey City); Bergen-Lafayette
US Scranton: Hyde Park (Scranton); Providence (Scranton); Green Ridge; Minooka; South Side (Scranton); West Side
 (Scranton)
US Kansas City: Westport; Strawberry Hill; Armourdale; Northeast (Kansas City); 18th and Vine; Argentine; Country
 Club Plaza=the Plaza; Columbus Park; Brookside; Hyde Park (Kansas City)
AU Sydney: Surry Hills; Glebe (Sydney); Balmain; Paddington (Sydney); The Rocks=the Rocks; Redfern; Newtown
 (Sydney); Bondi; Manly; Mosman; Marrickville; Leichhardt; Annandale; Pyrmont; Ultimo; Darlinghurst; Kings Cross
 (Sydney)=King's Cross; Woolloomooloo; Potts Point; Double Bay; Rose Bay; Vaucluse; Coogee; Bronte; Maroubra;
 Randwick; Kensington (Sydney); Waterloo (Sydney); Alexandria (Sydney); Erskineville; Petersham; Stanmore; Ashfield;
 Burwood (Sydney); Strathfield; Parramatta; Ryde; Hunters Hill; Lane Cove; Chatswood; North Sydney; Neutral Bay;
 Cremorne; Kirribilli; Dee Why; Narrabeen; Palm Beach (Sydney); Cronulla; Sutherland (Sydney); Kogarah; Rockdale;
 Hurstville; Bankstown; Lakemba; Canterbury (Sydney); Campsie; Cabramatta; Villawood; Drummoyne; Five Dock; Rozelle;
 Millers Point; Circular Quay; Darling Harbour; Luna Park; Taronga Park; Centennial Park; Watsons Bay (Sydney); La
 Perouse; Botany; Mascot; Camperdown (Sydney); Dulwich Hill; Summer Hill; Enfield (Sydney); Croydon (Sydney); Auburn
 (Sydney); Granville; Hornsby; Wahroonga; Pymble; Turramurra; Killara; Gordon (Sydney); Roseville; Lindfield; Martin
 Place; Haymarket; Chippendale; Zetland; Dover Heights; Matraville; Little Bay; Long Bay; Freshwater; Curl Curl;
 Collaroy; Avalon (Sydney); Newport (Sydney); Mona Vale; Castle Hill
AU Melbourne: St Kilda=St. Kilda=Saint Kilda; Carlton=Carlton (Melbourne); Fitzroy; Collingwood
 (Melbourne)=Collingwood; Richmond (Melbourne); South Melbourne=Emerald Hill; Port Melbourne=Sandridge (Melbourne);
 Albert Park; Prahran; South Yarra; Toorak; Hawthorn; Kew (Melbourne); Camberwell (Melbourne); Brunswick
 (Melbourne)=Brunswick; Coburg (Melbourne); Footscray; Williamstown; Essendon; Moonee Ponds; Flemington; Kensington
 (Melbourne); North Melbourne=Hotham; West Melbourne; Northcote; Preston (Melbourne); Thornbury; Heidelberg
 (Melbourne); Ivanhoe (Melbourne); Box Hill; Malvern (Melbourne); Caulfield; Elsternwick; Brighton
 (Melbourne)=Brighton Beach (Melbourne); Elwood; Sandringham; Balaclava; Windsor (Melbourne); Abbotsford (Melbourne);
 Clifton Hill; Yarraville; Newport (Melbourne); Spotswood; Sunshine; Altona; Werribee (Melbourne); Broadmeadows;
 Royal Park; Parkville; Glen Iris; Ashburton (Melbourne); Oakleigh; Dandenong (Melbourne); Moorabbin; Mentone;
 Mordialloc; Frankston (Melbourne); Reservoir; Ascot Vale; Maribyrnong; Canterbury (Melbourne); Surrey Hills; Balwyn;
 Burwood (Melbourne); Carnegie; Bentleigh; Black Rock (Melbourne); Beaumaris; Hampton; Lygon Street; Flinders
 Street=Flinders Street Station; Collins Street; Bourke Street; Station Pier; Eltham (Melbourne); Warrandyte; Pascoe
 Vale; Fairfield (Melbourne); Burnley; East Melbourne; Cremorne (Melbourne)
AU Brisbane: Fortitude Valley=the Valley (Brisbane); New Farm; West End (Brisbane); Spring Hill; Paddington
 (Brisbane); Woolloongabba=the Gabba; South Brisbane; Kangaroo Point; Toowong; Ascot; Hamilton (Brisbane); Clayfield;
 Red Hill; Bulimba; Sandgate; Wynnum; Manly (Brisbane); Annerley; Ashgrove; Indooroopilly; Windsor (Brisbane);
 Nundah; Chermside; Yeronga; Coorparoo; Milton (Brisbane); Kedron; Redcliffe (Brisbane); Wacol; Auchenflower;
 Taringa; Greenslopes; Holland Park; Sherwood (Brisbane); Corinda; Breakfast Creek; Newstead; Albion; Teneriffe
 (Brisbane); Shorncliffe
AU Adelaide: Glenelg; Port Adelaide; Norwood (Adelaide)=Norwood; Unley; North Adelaide; Semaphore; Henley Beach;
 Burnside; Prospect (Adelaide); Hindmarsh; Largs Bay; Brighton (Adelaide); Mitcham; Walkerville; Thebarton;
 Torrensville; Goodwood; Hyde Park (Adelaide); Kensington (Adelaide); Magill; Payneham; Woodville (Adelaide);
 Alberton; Grange; Outer Harbor=Outer Harbour; Klemzig; Rundle Street; Semaphore beach; Bowden; Parkside (Adelaide);
 Blackwood (Adelaide); Belair; Glen Osmond
AU Perth: Subiaco; Fremantle; Cottesloe; Northbridge; Claremont; Nedlands; Victoria Park (Perth); Mount Lawley;
 Guildford (Perth)=Guildford; Midland (Perth)=Midland Junction; Leederville; Bayswater (Perth); Maylands; South
 Perth; North Perth; Scarborough (Perth); Peppermint Grove; Mosman Park; Bassendean; East Perth; West Perth;
 Inglewood (Perth); Highgate (Perth); Swanbourne; Applecross; Dalkeith; Wembley (Perth); Crawley; Belmont (Perth);
 Cannington
AU Hobart: Battery Point; Sandy Bay; North Hobart; West Hobart; Glenorchy (Hobart); Moonah; New Town; Bellerive;
 Salamanca=Salamanca Place; South Hobart; Lindisfarne (Hobart); Lenah Valley; Taroona; Claremont (Hobart); Kangaroo
 Bay; Risdon
AU Newcastle: Hamilton (Newcastle); Merewether; Wickham; Stockton (Newcastle); Cooks Hill; Mayfield; Adamstown;
 Waratah; Lambton; Wallsend; Carrington; Tighes Hill; Islington (Newcastle); Broadmeadow
AU Ballarat: Ballarat East; Sebastopol; Golden Point; Soldiers Hill; Eureka Stockade=Eureka; Sturt Street; Black
 Hill
AU Bendigo: Long Gully; Eaglehawk; Golden Square; Quarry Hill; Kangaroo Flat; White Hills; Ironbark (Bendigo)
NZ Auckland: Ponsonby; Parnell; Remuera; Mount Eden=Mt Eden; Grey Lynn; Freemans Bay; Newton; Devonport
 (Auckland)=Devonport; Epsom (Auckland)=Epsom; Onehunga; Otahuhu; Newmarket; Herne Bay (Auckland); Takapuna;
 Northcote (Auckland)=Northcote Point; Birkenhead (Auckland); Mount Albert=Mt Albert; Mount Roskill=Mt Roskill;
 Sandringham (Auckland); Point Chevalier; Avondale (Auckland)=Avondale; Kohimarama; St Heliers; Orakei; Ellerslie;
 Penrose; Panmure; Howick; Grafton; Kingsland (Auckland); Balmoral; Mission Bay (Auckland); Glen Eden; Henderson
 (Auckland); Titirangi; Mangere; Papatoetoe; Manurewa; Papakura; Milford (Auckland); Browns Bay; Queen Street;
 Karangahape Road=K Road=K'Road; Eden Park; Western Springs; Westmere; Glen Innes; Arch Hill; Auckland Domain; Albert
 Park (Auckland); Cornwall Park; Hobsonville; Whenuapai; Bastion Point; Three Kings; Greenlane
NZ Wellington: Thorndon; Te Aro; Mount Victoria=Mt Victoria=Mt Vic; Newtown (Wellington)=Newtown; Kelburn; Karori;
 Island Bay; Kilbirnie; Lyall Bay; Oriental Bay (Wellington); Brooklyn (Wellington); Northland (Wellington);
 Wadestown; Khandallah; Ngaio; Johnsonville; Miramar; Seatoun; Hataitai; Roseneath; Berhampore; Aro Valley=Aro
 Street; Days Bay; Eastbourne (Wellington); Courtenay Place; Lambton Quay; Basin Reserve; Botanic Garden
 (Wellington); Evans Bay; Strathmore (Wellington); Melrose (Wellington); Highbury (Wellington); Somes; Ngauranga;
 Makara; Tawa; Buckle Street; Cuba Street
NZ Christchurch: Sydenham (Christchurch)=Sydenham; Linwood; Addington; Riccarton; Fendalton; Merivale; St Albans
 (Christchurch)=St Albans; Papanui; Sumner; New Brighton=New Brighton (Christchurch); Cashmere; Opawa; Spreydon;
 Woolston (Christchurch); Avonside; Richmond (Christchurch); Burwood (Christchurch); Heathcote Valley; Redcliffs;
 Hornby (Christchurch); Sockburn; Wigram; Beckenham (Christchurch); Shirley (Christchurch); Phillipstown; Waltham
 (Christchurch); Ilam; Bryndwr; Hagley Park; Cathedral Square; Lancaster Park; Upper Riccarton; Halswell
 (Christchurch); Southshore; Bexley; Templeton; Burnside (Christchurch); Harewood; Opawaho; Hoon Hay
NZ Dunedin: St Kilda (Dunedin)=St Kilda; St Clair=St. Clair; Caversham; South Dunedin; North East Valley=NEV; Roslyn
 (Dunedin)=Roslyn; Mornington (Dunedin)=Mornington; Maori Hill; Green Island=Green Island (Dunedin); Ravensbourne;
 Kaikorai=Kaikorai Valley; Opoho; Musselburgh (Dunedin); Andersons Bay=Anderson's Bay; Belleknowes; Wakari;
 Abbotsford (Dunedin); Fairfield (Dunedin); Portobello (Dunedin)=Portobello; Macandrew Bay; Company Bay; Broad Bay;
 Burkes; St Leonards (Dunedin); Corstorphine (Dunedin); Tainui; Waverley (Dunedin); Concord; Halfway Bush; Pine Hill;
 Leith Valley; Woodhaugh; The Octagon=the Octagon=Octagon; Princes Street (Dunedin); George Street (Dunedin);
 Forbury=Forbury Park; Carisbrook; Shiel Hill; Harwood; Burnside (Dunedin); Kew (Dunedin); The Glen; Woodside Glen;
 Brockville; Dunedin Gasworks; Hillside=Hillside Workshops; Logan Park; Larnach Castle=Larnach's Castle; Otakou;
 Vauxhall (Dunedin); Ocean Grove=Tomahawk
NZ Invercargill: Gladstone; Waikiwi; Georgetown (Invercargill); Strathern; Windsor (Invercargill); Appleby; Richmond
 (Invercargill); Grasmere (Invercargill); Queens Park; Otatara; Avenal
NZ Lower Hutt: Petone; Wainuiomata; Naenae; Taita; Alicetown; Moera; Waterloo (Lower Hutt); Woburn; Belmont (Lower
 Hutt); Stokes Valley; Eastern Hutt
NZ Nelson: Tahunanui; The Wood; Stoke (Nelson)=Stoke; Port Nelson; Atawhai; Washington Valley; Toi Toi; Rabbit
 Island
NZ Napier: Ahuriri; Marine Parade; Taradale; Bluff Hill (Napier); Westshore; Greenmeadows; Port Ahuriri; Maraenui
NZ Hamilton: Frankton=Frankton Junction; Claudelands; Hamilton East; Hillcrest; Fairfield (Hamilton); Melville;
 Beerescourt
NZ Oamaru: South Hill; North Road; Oamaru Harbour; Weston
NZ Timaru: Caroline Bay (Timaru); Highfield; Washdyke; Seaview; Watlington
ZA Cape Town: District Six=District 6; Woodstock (Cape Town)=Woodstock; Observatory; Sea Point; Bo-Kaap=Malay
 Quarter; Claremont (Cape Town); Wynberg=Wynberg (Cape Town); Rondebosch; Newlands; Mowbray; Green Point; Camps Bay
 (Cape Town); Gardens; Tamboerskloof; Oranjezicht; Vredehoek; Salt River; Maitland; Kenilworth; Muizenberg; Kalk Bay;
 Simonstown=Simon's Town; Fish Hoek; Constantia; Bellville; Parow; Goodwood (Cape Town); Hout Bay; Athlone; Langa;
 Gugulethu; Plumstead (Cape Town); Diep River; Retreat; St James (Cape Town); Pinelands; Milnerton; Adderley Street;
 Clifton (Cape Town); Bantry Bay (Cape Town); Bishopscourt; Lansdowne; Crawford; Kensington (Cape Town)
ZA Johannesburg: Soweto; Sophiatown; Hillbrow; Yeoville; Doornfontein; Fordsburg; Orange Grove; Houghton; Parktown;
 Kensington (Johannesburg); Jeppestown=Jeppe; Mayfair (Johannesburg); Vrededorp; Berea (Johannesburg); Melville
 (Johannesburg); Turffontein; Rosettenville; Booysens; Brixton (Johannesburg); Rosebank; Norwood (Johannesburg);
 Observatory (Johannesburg); Sandton; Alexandra=Alexandra Township; Malvern (Johannesburg); Troyeville; Bezuidenhout
 Valley; Braamfontein; Newtown (Johannesburg); Orlando (Soweto)=Orlando; Melrose; Westdene; Auckland Park; Crown
 Mines; Robinson Deep; Ferreirastown; Langlaagte; Linksfield; Kliptown; Lenasia; Bertrams; Judith's Paarl; Cleveland
 (Johannesburg)
ZA Durban: Berea=the Berea; Umbilo; Glenwood; Musgrave; Morningside (Durban); Point=the Point (Durban); Addington
 (Durban); Cato Manor; Overport; Bluff (Durban); Umgeni (Durban); Greyville; Congella; Isipingo; Phoenix; Chatsworth
 (Durban); Durban North; Mayville; Clairwood; Sydenham (Durban); Westville; Merebank; Umhlanga; Stamford Hill
 (Durban); Grey Street (Durban); Wentworth (Durban)
ZA Pretoria: Arcadia (Pretoria)=Arcadia; Sunnyside (Pretoria); Hatfield; Brooklyn (Pretoria); Marabastad;
 Muckleneuk; Pretoria West; Church Square; Gezina; Union Buildings; Mamelodi; Roberts Heights=Voortrekkerhoogte;
 Waterkloof; Capital Park; Hercules
ZA Port Elizabeth: Walmer; South End (Port Elizabeth); Humewood; New Brighton (Port Elizabeth); Summerstrand; North End
 (Port Elizabeth); Korsten; Central (Port Elizabeth); Redhouse
ZA Kimberley: Beaconsfield; Kenilworth (Kimberley); the Big Hole=Big Hole; Belgravia (Kimberley); Du Toit's Pan
ZW Harare: Avondale (Salisbury); Highlands (Salisbury); Mbare=Harare township; Borrowdale; Mount Pleasant
 (Salisbury); Hatfield (Salisbury); Marlborough (Salisbury)
KE Nairobi: Karen; Langata; Muthaiga; Parklands; Kilimani; Westlands; Eastleigh; Pangani; Kibera; Hill (Nairobi);
 Pumwani
IN Mumbai: Bandra=Bandora (Bombay); Byculla; Colaba; Malabar Hill (Bombay); Dadar; Mahim; Mazagaon=Mazagon;
 Girgaum=Girgaon; Andheri; Juhu; Worli; Parel; Matunga; Santacruz=Santa Cruz (Bombay); Khar; Vile Parle; Marine
 Drive; Ballard Estate; Ballard Pier; Apollo Bunder=Gateway of India; Fort (Bombay)=the Fort; Grant Road; Dhobi
 Talao; Kalbadevi; Bhuleshwar; Chembur; Kurla; Ghatkopar; Sion; Cuffe Parade; Tardeo; Breach Candy; Peddar Road;
 Walkeshwar; Mulund; Borivali=Borivli; Malad; Goregaon; Versova; Dongri; Bhendi Bazaar; Victoria Terminus=V.T.;
 Prabhadevi; Lalbaug; Sewri; Wadala; Cumballa Hill (Bombay); Altamount Road; Khotachiwadi; Crawford Market; Vikhroli;
 Dharavi; Bhandup; Cavel; Orlem
IN Kolkata: Chowringhee=Chowringhi=Chowringee; Ballygunge; Alipore=Alipur; Garden Reach; Park Street;
 Bhowanipore=Bhawanipur; Kidderpore=Khidirpur; Tollygunge; Bow Bazaar=Bowbazar; Entally; Sealdah; Shyambazar; Bara
 Bazaar=Burrabazar; Dalhousie Square; Kalighat; Dum Dum (Calcutta); Jorasanko; Jadavpur; Tangra; Fort William
 (Calcutta)=Fort William; Cossipore; Behala; Salt Lake; Maidan=the Maidan; Eden Gardens; Beliaghata; College Street;
 Esplanade (Calcutta); Hastings (Calcutta); Lalbazar; Writers' Building; Free School Street; New Market (Calcutta);
 Elgin Road; Theatre Road; Belvedere (Calcutta); Howrah Station; Rashbehari; Lake Gardens; Gariahat; Wellesley;
 Taltala; Ripon Street; Picnic Garden; Park Circus; Maniktala; Bagbazar; Shobhabazar; Baranagar (Calcutta)
IN Chennai: Mylapore; Triplicane; Egmore; George Town=Black Town=Georgetown (Madras); Adyar; Vepery; Royapuram;
 Purasawalkam=Purasawakkam; Nungambakkam; T. Nagar=Thyagaraya Nagar; San Thome=Santhome; St Thomas Mount (Madras);
 Perambur; Royapettah; Kilpauk; Chetput; Mount Road; Fort St George=Fort St. George; Guindy; Washermanpet; Saidapet;
 Besant Nagar; Kodambakkam; Parry's Corner; Poonamallee High Road; Tondiarpet; Teynampet; Alwarpet; Ayanavaram;
 Tambaram (Madras)
IN Delhi: Chandni Chowk; Connaught Place=Connaught Circus; Karol Bagh; Civil Lines (Delhi); Daryaganj; Old
 Delhi=Shahjahanabad; Lajpat Nagar; Hauz Khas; Nizamuddin; Defence Colony; Chanakyapuri; Paharganj; Kashmiri
 Gate=Kashmere Gate; Red Fort=Lal Qila; Mehrauli; Lodi Road=Lodi Colony; Rajinder Nagar; Sadar Bazaar; Gole Market;
 Janpath; Greater Kailash; Model Town; Patel Nagar; Shahdara; Jangpura; Hazrat Nizamuddin; Rajpath=Kingsway (Delhi);
 Khan Market; Sundar Nagar; Kamla Nagar; Okhla; Tis Hazari; Ballimaran; Jama Masjid
IN Bengaluru: Malleswaram=Malleshwaram; Basavanagudi; Cantonment (Bangalore)=Bangalore Cantonment; Fraser Town; Cox
 Town; Richmond Town; Whitefield; Jayanagar; Langford Town; Cooke Town; Benson Town; Ulsoor=Halasuru; Shivajinagar
 (Bangalore); Brigade Road; M.G. Road=MG Road; Cubbon Park; Lalbagh; Chamarajpet; Chickpet; Shankarapuram;
 Indiranagar; Koramangala; Rajajinagar; Austin Town; Murphy Town; Cleveland Town; Jalahalli; Seshadripuram; Frazer
 Town; Sadashivanagar; Yeshwanthpur
IN Hyderābād: Charminar; Banjara Hills; Abids; Begumpet; Secunderabad; Golconda=Golkonda; Bolarum; Himayatnagar;
 Narayanguda; Malakpet; Nampally; Sultan Bazaar; Bolaram; Tirmulgherry=Trimulgherry; Marredpally; Khairatabad; Koti;
 Mehdipatnam
IN Pune: Kirkee=Khadki; Camp (Poona)=Poona Cantonment=Poona Camp; Deccan Gymkhana; Koregaon Park; Shaniwar Peth;
 Yerawada=Yeravda; Sadashiv Peth; Aundh (Poona); Kothrud; Wanowrie; Dehu Road; Ghorpadi; Budhwar Peth; Shivajinagar
 (Poona); Swargate; Fergusson College; Sassoon Road
IN Ahmedabad: Ellis Bridge; Maninagar; Navrangpura; Kalupur; Shahibag; Sabarmati Ashram=Sabarmati (Ahmedabad);
 Paldi; Khanpur; Jamalpur; Gomtipur; Manek Chowk
IN Lucknow: Hazratganj; Chowk (Lucknow); Aminabad; Kaiserbagh=Qaiserbagh; Alambagh; La Martinière; the Residency
 (Lucknow); Charbagh; Dilkusha; Husainabad
IN Kanpur: Civil Lines (Kanpur); Swarup Nagar; Parade (Kanpur); Jajmau; Elgin Mills; Nawabganj
PK Karachi: Saddar; Clifton; Garden East=Garden (Karachi); Soldier Bazaar; Keamari=Kiamari; Lyari; Kharadar;
 Cincinnatus Town; Nazimabad; Drigh Road; Manora=Manora Island; Burns Road; Frere Hall; Bunder Road; PECHS; Malir
 (Karachi); Ranchore Line; Empress Market; Mauripur
PK Lahore: Anarkali; Model Town (Lahore); Gulberg; Mall Road (Lahore)=the Mall (Lahore); Ichhra; Mozang; Krishan
 Nagar; Shalimar (Lahore)=Shalimar Gardens; Mughalpura; Civil Lines (Lahore); Baghbanpura; Walled City; Lahore
 Cantonment; Gowalmandi; Bhati Gate; Icchra; Garhi Shahu; Temple Road
LK Colombo: Fort (Colombo); Pettah; Cinnamon Gardens; Slave Island; Kollupitiya=Colpetty; Wellawatte; Bambalapitiya;
 Mount Lavinia; Borella; Maradana; Kotahena; Mutwal; Mattakkuliya; Dematagoda; Havelock Town; Cotta Road
BD Dhaka: Wari; Ramna; Motijheel; Armanitola; Farashganj; Tejgaon; Dhanmondi; Old Dacca=Old Dhaka; Gandaria;
 Sadarghat
CN Shanghai: Hongkew=Hongkou=Hongkew Ghetto; French Concession=Concession française (Shanghai); International
 Settlement; Bund; Nanking Road; Bubbling Well Road; Avenue Joffre; Zikawei=Xujiahui; Yangtzepoo=Yangpu;
 Chapei=Zhabei; Pootung=Pudong; Nantao; Jessfield Park; Lunghwa=Longhua
CN Harbin: Pristan=Пристань (Харбин)=Daoli; Novy Gorod=Новый город; Modyagou=Модягоу; Fujiadian
CN Tianjin: British Concession (Tientsin); Wudadao=Five Avenues; Italian Concession
HK Hong Kong: Wan Chai=Wanchai; Central (Hong Kong); Mid-Levels; Kowloon Tong; Tsim Sha Tsui; Repulse Bay; Stanley
 (Hong Kong)=Stanley Camp; Happy Valley; Causeway Bay; Sham Shui Po=Shamshuipo; Aberdeen (Hong Kong); Mong Kok; North
 Point; Hung Hom; the Peak (Hong Kong)
SG Singapore: Katong; Tanglin; Geylang; Kampong Glam; Little India; Chinatown (Singapore); Serangoon; Orchard Road;
 Tanjong Pagar; Bukit Timah; Changi; Joo Chiat; Siglap; Raffles Place; Keppel Harbour; Toa Payoh; Farrer Park; Boat
 Quay; Seletar; Sembawang; Holland Village; Nee Soon; Queenstown; Pasir Panjang; Balestier; Newton Circus
ID Jakarta: Weltevreden=Weltevreden (Batavia); Menteng; Kota=Oud Batavia; Glodok; Tanah Abang; Gambir=Koningsplein;
 Tanjung Priok=Tandjong Priok=Tanjong Priok; Meester Cornelis=Jatinegara; Kemayoran=Kemajoran; Pasar Baru; Salemba;
 Tebet; Kramat (Batavia); Kebayoran Baru; Tjideng=Cideng; Senen; Gondangdia; Struiswijk
ID Surabaya: Darmo; Goebeng=Gubeng; Perak (Surabaya)=Tanjung Perak; Wonokromo; Ketabang; Simpang; Ampel; Kembang
 Kuning
ID Bandung: Dago; Lengkong; Cihampelas; Cicadas; Braga; Andir; Cihapit=Tjihapit
ID Medan: Polonia (Medan); Kesawan; Helvetia (Medan)
EG Cairo: Zamalek=Gezira; Heliopolis; Garden City; Maadi; Shubra=Choubra; Old Cairo; Bulaq; Abbassia=Abbasia;
 Zeitoun; Ezbekieh=Azbakeya; Ismailia (Cairo); Khan el-Khalili; Dokki; Mouski=Muski; Kasr el Nil; Mokattam; Helmieh
EG Alexandria: Ramleh; Sidi Gaber; Stanley Bay; Glymenopoulo=Glim; Rushdy; Bacos; Anfushi; Mex; Moharrem Bey;
 Montaza; Corniche; Cleopatra; Bulkeley; San Stefano (Alexandria); Sidi Bishr
BR São Paulo: Mooca; Brás; Bixiga=Bela Vista; Barra Funda; Liberdade; Bom Retiro; Vila Mariana; Higienópolis;
 Ipiranga; Lapa (São Paulo); Pinheiros; Santo Amaro; Penha; Tatuapé; Vila Zelina; Avenida Paulista; Jardins; Cambuci;
 Perdizes; Santana (São Paulo); Tucuruvi; Butantã; Moema; Vila Prudente; Belenzinho; Campos Elíseos; Hospedaria de
 Imigrantes; Casa Verde; Consolação; Luz=Estação da Luz
BR Rio de Janeiro: Copacabana; Ipanema; Botafogo; Flamengo; Santa Teresa; Tijuca; Laranjeiras; Leme; Leblon; Lapa
 (Rio); Catete; Glória; Gávea; Urca; Vila Isabel; São Cristóvão; Madureira; Méier; Grajaú; Jardim Botânico; Penha
 (Rio); Saúde; Gamboa; Praça Onze; Cosme Velho; Engenho Novo; Engenho de Dentro; Cascadura; Campo Grande (Rio);
 Realengo; Bangu; Ilha do Governador; Paquetá; Andaraí; Barra da Tijuca; Humaitá; Maracanã
BR Porto Alegre: Moinhos de Vento; Bom Fim; Navegantes; São João (Porto Alegre); Menino Deus; Floresta; Cidade
 Baixa; Petrópolis (Porto Alegre); Tristeza; Partenon
BR Curitiba: Santa Felicidade; Batel; Água Verde; Portão; Abranches; Orleans (Curitiba); Pilarzinho; Rebouças;
 Juvevê; Mercês
BR Blumenau: Garcia; Itoupava; Velha; Vila Itoupava
AR Buenos Aires: La Boca=Boca; San Telmo; Palermo=Palermo (Buenos Aires); Recoleta; Once=Balvanera; Villa Crespo;
 Belgrano=Belgrano (Buenos Aires); Flores=Flores (Buenos Aires); Caballito; Almagro; Barracas; Villa Devoto; Villa
 Urquiza; Mataderos; Boedo; Constitución; Parque Patricios; Chacarita; Puerto Madero; Villa Ballester; Florida
 (Buenos Aires); Núñez; Saavedra; Retiro (Buenos Aires); Montserrat (Buenos Aires); Liniers; Villa del Parque;
 Colegiales; Abasto; Hotel de Inmigrantes; Avenida de Mayo; Calle Florida; Floresta (Buenos Aires); Paternal;
 Pompeya=Nueva Pompeya; Villa Lugano; Dock Sud; Versalles (Buenos Aires); Coghlan; Parque Chacabuco
AR Rosario: Fisherton; Echesortu; Alberdi (Rosario); Pichincha; Saladillo; Arroyito
AR Córdoba: Alta Córdoba; Nueva Córdoba; Alberdi (Córdoba); General Paz; Güemes; San Vicente (Córdoba)
UY Montevideo: Pocitos; Ciudad Vieja; Cerro=el Cerro; Prado (Montevideo); Carrasco; Unión; Malvín; Paso Molino;
 Villa Muñoz; Punta Carretas; Peñarol; Sayago; Reducto; Aguada; Buceo; Goes; La Teja
CL Santiago: Providencia; Ñuñoa; Recoleta (Santiago); Independencia; Barrio Yungay; Las Condes; Estación Central;
 Bellavista; Quinta Normal; Lastarria; San Miguel (Santiago); La Cisterna; Macul
CL Valparaíso: Cerro Alegre; Cerro Concepción; Playa Ancha; Cerro Barón; Almendral; Cerro Bellavista; Puerto
 (Valparaíso)
MX Mexico City: Coyoacán; Roma (México)=Colonia Roma; Condesa=La Condesa; Tepito; Xochimilco; Tacubaya; San Ángel;
 Tlalpan; Polanco; Tlatelolco; La Merced; Chapultepec; Narvarte; Del Valle; Juárez (México); Santa María la Ribera;
 Doctores; Guerrero (México); Mixcoac; Azcapotzalco; Lomas de Chapultepec; Zócalo; Villa de Guadalupe=La Villa;
 Peralvillo; Iztapalapa
CU Havana: Vedado=El Vedado; Habana Vieja=Old Havana; Centro Habana; Miramar (Havana)=Miramar; Regla; Cerro
 (Habana); Marianao; Guanabacoa; Malecón; Víbora=La Víbora; Luyanó; Jesús María; Casablanca (Havana); Cayo Hueso;
 Santos Suárez; Diez de Octubre; Lawton (Habana); Prado (Habana)
"""
