"""Lakes, rivers, islands, mountains and the like of northern, western and central Europe, more than `features_table` has.

Common names, from memory, and so are the places: a line begins with the countries (ISO 3166-1, by blanks), a colon and
the kind (a key of `nature.KINDS`), then come the features, parted by `;`: the name, other names behind `=`, latitude
and longitude in degrees of the middle, rounded; a third number is how many degrees it goes each way, where that is far
from what is usual for the kind.
"""

NATURE_NORTH = """
NO: lake Mjøsa 60.7 11.0 .4; Femunden=Femund 62.2 11.9 .3; Randsfjorden 60.4 10.4 .4; Tyrifjorden 60.0 10.1;
 Røssvatnet 65.8 14.1; Snåsavatnet 64.2 12.1; Tinnsjå=Tinnsjø=Tinn lake 59.9 8.9; Krøderen 60.2 9.7; Bygdin 61.3 8.5;
 Gjende 61.5 8.7; Tunhovdfjorden 60.4 8.9; Norsjø 59.3 9.3; Bandak 59.4 8.2; Maridalsvannet 60.0 10.8; Øyeren 59.8
 11.2; Jølstravatnet 61.5 6.4; Lovatnet 61.8 7.0; Loenvatnet 61.85 7.0; Selbusjøen 63.2 10.9; Vansjø 59.4 10.9
NO: river Glomma=Glåma 61.0 11.4 1.6; Gudbrandsdalslågen=Lågen 61.7 9.5; Numedalslågen 59.8 9.7; Drammenselva 59.8
 10.0; Namsen 64.5 12.2; Orkla 63.0 9.8; Gaula 63.1 10.3; Nidelva 63.4 10.4 .3; Altaelva 69.6 23.5; Otra 58.7 7.8;
 Mandalselva 58.4 7.5; Akerselva 59.93 10.75 .06; Hallingdalselva 60.5 9.2; Begna 60.6 9.9; Trysilelva 61.3 12.2;
 Driva 62.5 9.3; Rauma 62.4 7.9; Vefsna 65.6 13.4; Målselva 69.0 18.7
NO FI: river Tana=Tanaelva=Teno=Deatnu 70.0 27.5
NO RU: river Pasvikelva 69.3 29.4
NO: island Hinnøya 68.5 15.6 .5; Senja 69.3 17.2 .4; Langøya 68.8 15.0; Andøya 69.1 15.7; Sørøya 70.6 22.5; Kvaløya
 69.7 18.5; Ringvassøya 69.9 19.2; Magerøya 71.0 25.7; Hitra 63.5 8.8; Frøya 63.7 8.7; Smøla 63.4 8.0; Stord=Stordøya
 59.9 5.4; Karmøy 59.3 5.2; Tysnesøya 60.0 5.6; Osterøy=Osterøya 60.5 5.6; Sotra 60.3 5.1; Tjøme 59.1 10.4; Nøtterøy
 59.2 10.4; Hvaler 59.1 11.0; Bygdøy=Bygdø 59.9 10.7 .03; Røst 67.5 12.1; Værøy 67.7 12.7; Vestvågøya 68.2 13.8;
 Austvågøya 68.3 14.6; Moskenesøya 67.9 13.0; Vega 65.7 11.9; Dønna 66.1 12.5; Alsten=Alstahaug 65.9 12.6; Tautra 63.6
 10.6; Munkholmen 63.45 10.38 .01; Utsira 59.3 4.9; Vesterålen=Vesteraalen 68.8 15.2 .6; Hankø=Hankøy 59.2 10.8;
 Jeløy=Jeløya 59.4 10.6; Malmøya 59.87 10.75 .02; Hovedøya 59.9 10.73 .02
SJ: island Svalbard=Spitsbergen=Spitzbergen 78.5 17.0 2.5; Jan Mayen 71.0 -8.4; Bjørnøya=Bear Island 74.4 19.0
NO: mountain Glittertind 61.65 8.55; Gaustatoppen=Gausta 59.85 8.65; Snøhetta 62.3 9.3; Store Skagastølstind=Storen
 61.46 7.87; Romsdalshorn 62.5 7.8; Trollveggen=Trolltindene=Trolltindan 62.5 7.7; Norefjell 60.3 9.3; Stetind 68.2
 16.6; Svartisen 66.6 14.0 .3; Folgefonna=Folgefonni 60.1 6.4 .2; Jostedalsbreen 61.7 7.0 .3; Preikestolen=Pulpit
 Rock 58.99 6.19; Trolltunga 60.1 6.7; Holmenkollen=Holmenkollbakken 59.96 10.67 .03; Tryvann=Tryvannshøgda 59.98
 10.67 .03; Fløyen 60.39 5.34 .02; Ulriken 60.38 5.39 .02; Skaret 59.9 10.5 .1; Dovrefjell=Dovre fjell 62.2 9.4 .4;
 Rondane 61.9 9.8 .3; Jotunheimen 61.6 8.4 .5; Hardangervidda 60.1 7.5 .5; Finnmarksvidda 69.3 24.0 .8; Trollheimen
 62.8 9.2; Saltfjellet 66.5 15.5; Nordmarka 60.1 10.6 .2; Hemsedalsfjella 60.9 8.4; Filefjell 61.2 8.1; Valdresflya
 61.4 8.8
FI: mountain Halti 69.3 21.3; Kilpisjärvi=Kilpisjärven 69.05 20.8; Ylläs 67.55 24.2; Levi 67.8 24.8; Pyhätunturi
 67.0 27.2; Ounasvaara 66.5 25.8; Ruka 66.2 29.15; Puijo 62.9 27.66; Vuokatti 64.1 28.3; Salpausselkä 61.0 25.6 .5;
 Pyynikki 61.5 23.73 .02; Nuuksio 60.3 24.5; Syöte 65.6 27.6; Porkkala=Porkkalanniemi=Porkala 59.98 24.4; Hanko
 peninsula=Hankoniemi 59.85 23.0
NO: valley Gudbrandsdalen=Gudbrandsdal 61.6 9.6 .6; Østerdalen=Østerdal 61.6 11.0 .7; Hallingdal 60.6 9.0 .4; Valdres
 61.0 9.1 .4; Numedal 60.1 9.2 .4; Setesdal=Setesdalen 59.0 7.5 .5; Sunndalen 62.6 8.7; Gauldalen 63.0 10.6; Stjørdalen
 63.4 11.4; Hemsedal 60.9 8.5; Voss herad 60.6 6.4; Sunnfjord 61.4 5.7 .4; Nordfjord 61.9 6.0 .4; Sunnhordland 59.8 5.6
 .4; Nordhordland 60.7 5.3 .4; Ryfylke 59.3 6.3 .4; Jæren 58.7 5.6 .3; Toten 60.65 10.8 .2; Hadeland 60.4 10.5 .2;
 Ringerike 60.2 10.3 .3; Hedemarken 60.8 11.2 .3; Solør 60.6 12.0 .3; Helgeland 66.0 13.5 .9; Salten 67.3 15.0 .6;
 Innherred 63.9 11.3 .4; Namdalen 64.5 12.0 .6; Fosen 63.8 10.2 .4; Hordaland fylke 60.2 6.0 .9
NO: fjord Oslofjorden=Oslofjord=Kristianiafjorden=Christianiafjord 59.4 10.6 .5;
 Trondheimsfjorden=Trondheimsfjord=Trondhjemsfjorden 63.6 10.8 .4; Lysefjorden=Lysefjord 59.0 6.3; Boknafjorden 59.2
 5.6; Nærøyfjorden 60.9 6.9; Aurlandsfjorden 60.95 7.15; Storfjorden 62.4 6.7; Romsdalsfjorden 62.6 7.3; Ofotfjorden
 68.4 17.0; Vestfjorden 68.0 14.8 .6; Lyngenfjorden=Lyngen 69.7 20.3; Altafjorden 70.1 23.2; Varangerfjorden=Varanger
 70.0 29.8; Porsangerfjorden=Porsanger 70.4 25.4; Saltstraumen 67.2 14.6; Drammensfjorden 59.6 10.4;
 Sandefjordsfjorden 59.1 10.2; Bjørnafjorden=Bjørnefjorden 60.1 5.5; Ålesund fjord 62.5 6.1
NO DK SE: fjord Skagerrak=Skagerak 58.0 9.0 1.2
SE: lake Hjälmaren 59.2 15.8 .2; Storsjön 63.2 14.3 .2; Runn 60.6 15.7; Åsnen 56.6 14.7; Bolmen 56.9 13.7; Sommen
 58.0 15.2; Roxen 58.5 15.6; Vombsjön 55.7 13.6; Ringsjön 55.9 13.6; Torneträsk 68.4 19.1; Hornavan 66.2 17.5;
 Uddjaur 65.9 17.8; Orsasjön 61.0 14.5; Fryken 59.7 13.1 .4; Glafsfjorden 59.5 12.7; Dellen 61.9 16.7; Trummen 56.9
 14.8; Helgasjön 57.0 14.7; Immeln 56.3 14.3; Unden 58.8 14.4
SE: river Dalälven=Dal River 60.6 16.0 1; Klarälven 60.3 13.4 .9; Göta älv 58.0 12.1 .4; Ångermanälven 63.6 17.0 1;
 Indalsälven 63.0 16.5 1; Ljungan 62.4 16.5; Ljusnan 62.0 15.5 1; Umeälven=Ume älv 64.5 18.8 1; Skellefte älv 65.2
 19.0 1; Piteälven 65.9 20.0 1; Luleälven=Lule älv 66.3 21.0 1; Kalixälven 66.8 22.3 1; Fyrisån 59.9 17.6 .2; Lagan
 56.8 13.6; Nissan 57.0 13.2; Ätran 57.2 12.7; Mörrumsån 56.4 14.7; Motala ström 58.6 15.9; Norrström 59.33 18.06
 .02; Göta kanal=Göta Canal 58.5 15.0 .6
SE FI: river Muonioälven=Muonio älv 68.0 23.4 .7
SE: island Orust 58.2 11.7; Tjörn 58.0 11.6; Fårö 57.9 19.1; Ven=Hven 55.9 12.7; Marstrand ön 57.9 11.6; Ingarö 59.3
 18.5; Värmdö 59.3 18.6; Vaxön 59.4 18.35; Sandhamn=Sandön 59.3 18.9; Utö 58.95 18.3; Dalarö 59.1 18.4; Djurgården 59.32
 18.1 .03; Riddarholmen 59.33 18.06 .01; Visingsö 58.05 14.35; Väddö 60.0 18.8; Gräsö 60.4 18.4; Lidingö ön 59.4
 18.15 .05; Adelsö 59.4 17.5; Björkö=Birka 59.3 17.5; Gotska Sandön 58.4 19.2; Hanö 56.0 14.85; Stora Karlsö 57.3
 18.0; Donsö 57.6 11.8; Styrsö 57.6 11.8; Brännö 57.65 11.8; Smögen ön 58.36 11.2; Koster=Kosteröarna 58.9 11.0;
 Stockholms skärgård=Stockholm archipelago 59.4 18.9 .5; Bohuslän skärgård 58.3 11.3 .5
SE: mountain Åreskutan 63.4 13.1; Sylarna 63.0 12.2; Sarek 67.4 17.7 .3; Kinnekulle 58.6 13.4; Omberg 58.3 14.7;
 Halleberg 58.4 12.45; Hunneberg 58.35 12.5; Kullaberg=Kullen 56.3 12.5; Hallandsåsen 56.4 13.0; Kolmården 58.7 16.4;
 Tiveden 58.7 14.6; Dundret 67.1 20.6; Helagsfjället=Helags 62.9 12.45; Fulufjället 61.6 12.7; Gesundaberget 60.9
 14.5; Taberg 57.7 14.1
SE: region Bergslagen 59.9 15.0 .8; Roslagen 59.9 18.6 .5; Österlen 55.6 14.2 .2; Bohuslän 58.4 11.6 .6; Hälsingland
 61.6 16.3 .7; Ångermanland 63.4 17.8 .8; Härjedalen 62.3 13.8 .7; Medelpad 62.5 16.5 .6; Västerbotten 64.5 19.5 1.2;
 Norrbotten 66.5 21.5 1.5; Blekinge 56.3 15.2 .4; Dalsland 58.9 12.3 .4; Närke 59.1 15.1 .3; Gästrikland 60.6 16.6
 .4; Östergötland 58.4 15.7 .6; Sörmland 59.1 16.8 .5
DK SE: sea Öresund=Øresund=the Sound 55.8 12.8 .5; Kattegat=Kattegatt 56.8 11.5 1.2
SE: sea Kalmarsund 56.7 16.5 .7; Bråviken 58.65 16.6; Ålands hav 60.0 19.2 .5
DK: lake Arresø 55.95 12.1; Esrum Sø 56.0 12.4; Furesø=Furesøen 55.8 12.4; Silkeborgsøerne=Silkeborg Lakes 56.1 9.7;
 Himmelbjerget 56.1 9.7; Peblinge Sø 55.69 12.56 .01; Bagsværd Sø 55.77 12.46 .02; Mossø 56.0 9.8; Julsø 56.1 9.65
DK: river Gudenå=Gudenåen 56.2 9.6 .4; Skjern Å=Skjernåen 55.95 8.7; Kongeåen=Kongeå 55.4 8.9; Odense Å 55.4 10.4;
 Suså 55.4 11.8
DK: island Amager 55.6 12.6; Møn 55.0 12.3; Lolland=Laaland 54.75 11.4; Falster 54.8 12.0; Langeland 54.9 10.8;
 Ærø=Ærø ø 54.9 10.4; Als=Alsen 54.95 9.9; Samsø 55.85 10.6; Læsø 57.3 11.0; Anholt 56.7 11.6; Fanø 55.4 8.4; Rømø
 55.1 8.5; Mandø 55.3 8.55; Saltholm 55.6 12.8; Tåsinge=Taasinge 55.0 10.6; Sejerø 55.9 11.15; Sprogø 55.3 11.0;
 Hesselø 56.2 11.7; Christiansø=Ertholmene 55.3 15.2; Mors 56.8 8.7; Fur 56.8 9.0; Endelave 55.75 10.3; Fejø 54.95
 11.4
DK: mountain Møllehøj 55.98 9.83; Yding Skovhøj 55.99 9.8; Skamlingsbanken 55.4 9.55; Møns Klint 54.97 12.55; Stevns
 Klint 55.3 12.45; Rold Skov 56.8 9.8; Råbjerg Mile 57.65 10.4; Dyrehaven 55.8 12.57 .03; Jægersborg Dyrehave 55.8
 12.57 .03
DK: sea Storebælt=Great Belt=Store Bælt 55.4 11.0 .5; Lillebælt=Little Belt=Lille Bælt 55.3 9.8 .5; Limfjorden=Limfjord
 56.9 9.2 .8; Roskilde Fjord 55.8 12.05 .3; Isefjorden=Isefjord 55.8 11.8 .2; Vejle Fjord 55.7 9.7; Flensborg
 Fjord=Flensburger Förde 54.85 9.7 .2; Ringkøbing Fjord 56.0 8.2; Køge Bugt 55.5 12.35; Skagen Gren=Grenen 57.74 10.65;
 Djursland 56.4 10.6 .4; Vendsyssel 57.4 10.0 .5; Thy 56.9 8.5 .4; Himmerland 56.8 9.7 .4
FI: lake Pyhäjärvi 61.4 23.6; Keitele 62.9 25.9 .3; Kallavesi 62.8 27.7 .3; Puruvesi 61.9 29.6; Orivesi 62.2 29.5;
 Haukivesi 62.1 28.5; Höytiäinen 62.8 29.6; Lappajärvi 63.15 23.7; Vesijärvi 61.1 25.5; Puula=Puulavesi 61.8 26.7;
 Konnevesi 62.6 26.6; Kuusamojärvi 65.9 29.2; Kitkajärvi 66.1 28.6; Lohjanjärvi 60.2 24.0; Vanajavesi 61.1 24.2;
 Roine 61.4 24.1; Kuolimo 61.3 27.5; Tuusulanjärvi 60.4 25.05; Bodominjärvi=Lake Bodom=Bodom 60.25 24.7; Pyhäselkä
 62.5 29.8; Suvasvesi 62.6 28.2; Kemijärvi järvi 66.6 27.4; Lokka 68.0 27.7; Köyliönjärvi 61.1 22.3; Längelmävesi
 61.6 24.4; Kyrösjärvi 61.7 23.2
FI: river Kokemäenjoki=Kumo älv 61.4 22.2 .5; Oulujoki=Ule älv 64.9 26.3 .5; Iijoki 65.4 26.5 .6; Ounasjoki 67.3
 25.2 .8; Aurajoki=Aura å 60.5 22.4 .2; Vantaanjoki=Vanda å 60.4 24.9 .3; Porvoonjoki 60.6 25.6; Kyrönjoki 62.9 22.2;
 Lapuanjoki 63.2 22.8; Kalajoki joki 64.1 24.3; Pyhäjoki joki 64.0 25.0; Tammerkoski 61.5 23.77 .02; Karjaanjoki 60.2
 23.8; Simojoki 65.9 25.8; Vuolenkoski 61.1 26.2
FI SE: river Muoniojoki 68.0 23.4 .7
RU: river Rajajoki=Siestarjoki 60.15 29.97 .1
FI: island Hailuoto 65.0 24.7; Kimitoön=Kemiö=Kemiönsaari 60.15 22.7; Korkeasaari 60.17 24.98 .01; Lauttasaari=Drumsö
 60.16 24.87 .02; Ruissalo=Runsala 60.43 22.15 .05; Utö (Finland) 59.8 21.4; Nagu=Nauvo 60.2 21.9; Korpo=Korppoo 60.2
 21.6; Houtskär=Houtskari 60.2 21.4; Replot=Raippaluoto 63.2 21.3; Bengtskär 59.7 22.5; Turun saaristo=Turku
 archipelago=Åbo skärgård 60.2 21.7 .5; Kulosaari=Brändö (Helsinki) 60.19 25.0 .02; Soisalo 62.5 28.2; Kulkkila 60.5
 21.6
AX: island Kökar 59.9 20.9; Brändö 60.4 21.0; Eckerö 60.2 19.6
FI: region Satakunta 61.6 22.3 .6; Varsinais-Suomi=Egentliga Finland 60.6 22.5 .5; Uusimaa=Nyland 60.3 24.8 .6;
 Kainuu=Kajanaland 64.5 28.5 .8; Kymenlaakso 60.8 26.8 .5; Keski-Suomi 62.5 25.5 .7; Pohjois-Karjala 62.9 30.2 .8;
 Etelä-Pohjanmaa 62.8 23.0 .6
RU: region Petsamo region 69.4 30.8 .6
IS: lake Lagarfljót 65.1 -14.7; Tjörnin 64.14 -21.94 .01
IS: mountain Esja 64.25 -21.7; Eyjafjallajökull 63.6 -19.6; Katla 63.6 -19.05; Snæfellsjökull=Snæfell 64.8 -23.8;
 Askja 65.0 -16.75; Herðubreið 65.2 -16.35; Langjökull 64.7 -20.1; Hofsjökull 64.8 -18.8; Mýrdalsjökull 63.65 -19.1;
 Goðafoss 65.7 -17.55; Dettifoss 65.8 -16.4; Skógafoss 63.5 -19.5; Seljalandsfoss 63.6 -20.0; Ásbyrgi 66.0 -16.5;
 Kirkjufell 64.9 -23.3
IS: region Reykjanes 63.9 -22.4; Snæfellsnes 64.9 -23.2 .3; Vestfirðir=Westfjords 65.8 -23.0 .7; Westman
 Islands=Vestmannaeyjar=Heimaey 63.43 -20.27; Grímsey 66.5 -18.0; Surtsey 63.3 -20.6; Faxaflói 64.3 -22.5;
 Eyjafjörður 65.9 -18.2; Breiðafjörður 65.2 -23.0; Skagafjörður 65.9 -19.5; Hvalfjörður 64.4 -21.5; Ísafjarðardjúp
 66.0 -22.8; Viðey 64.16 -21.85 .02
FO: island Streymoy=Strømø 62.1 -7.0; Eysturoy 62.2 -6.9; Vágar 62.1 -7.3; Suðuroy=Suduroy 61.5 -6.9; Sandoy 61.85
 -6.8; Mykines 62.1 -7.6; Nólsoy 62.0 -6.65
EE RU: lake Lake Peipus=Peipsi=Peipsi järv=Peipussee=Peipsijärv=Чудское озеро 58.7 27.5 .5
EE: lake Ülemiste järv=Ülemiste 59.4 24.77 .04; Saadjärv 58.55 26.65; Viljandi järv 58.35 25.6; Tamula 57.84 26.98;
 Vagula 57.8 26.9; Harku järv 59.4 24.6; Kaali=Kaali järv 58.37 22.67; Suur Emumägi 58.9 26.4; Endla järv 58.85 26.2;
 Viitna 59.45 26.0; Paunküla 59.2 25.3; Verevi 58.22 26.4; Veisjärv 58.1 25.75; Valguta 58.2 26.2; Pangodi järv 58.2
 26.6; Otepää järved 58.05 26.5; Rõuge Suurjärv 57.73 26.92; Maardu järv 59.45 25.0
EE: river Pärnu jõgi 58.6 25.3 .5; Põltsamaa jõgi 58.7 26.0; Pedja 58.6 26.3; Ahja jõgi 58.2 27.0; Võhandu=Võhandu
 jõgi 57.95 27.3; Keila jõgi 59.3 24.5; Jägala jõgi 59.4 25.2; Jägala juga=Jägala Falls 59.45 25.18; Keila-Joa 59.4
 24.3; Kasari 58.8 24.0; Valgejõgi 59.5 25.7; Loobu jõgi 59.5 26.0; Kunda jõgi 59.45 26.5; Purtse jõgi 59.4 27.0;
 Navesti 58.5 25.2; Halliste jõgi 58.3 25.2; Õhne 58.1 26.0; Tänassilma 58.4 25.8; Raudna 58.4 25.5; Väike Emajõgi
 57.95 26.2; Valaste 59.44 27.33; Reiu jõgi 58.2 24.6; Sauga jõgi 58.5 24.5
EE RU: river Piusa 57.8 27.4
EE: island Vormsi=Worms 59.0 23.2; Kihnu 58.13 24.0; Ruhnu=Runö 57.8 23.25; Naissaar=Nargen 59.57 24.52; Aegna=Wulf
 59.58 24.75; Prangli 59.62 25.0; Abruka 58.15 22.5; Vilsandi 58.38 21.85; Osmussaar=Odensholm 59.3 23.4;
 Suur-Pakri=Väike-Pakri=Pakri saared=Rogö 59.35 23.95; Kassari 58.8 22.83; Mohni 59.68 25.8; Kolga laht 59.6 25.3;
 Piirissaar 58.37 27.5; Manilaid=Manija 58.2 24.1; Sõrve=Sõrve säär=Sworbe 58.0 22.1; Kõpu 58.9 22.2
EE: mountain Suur Taevaskoda 58.11 27.05; Vällamägi 57.73 27.05; Rebasejärve Tornimägi 57.7 26.9; Panga pank=Panga
 58.57 22.3; Otepää kõrgustik 58.0 26.5 .2; Haanja kõrgustik=Haanja 57.7 27.05; Pandivere 59.1 26.3 .3; Kassinurme
 58.65 26.6; Ontika 59.44 27.3; Lahemaa 59.55 25.8 .2; Soomaa 58.45 25.1 .2; Alutaguse 59.2 27.4 .3; Kõrvemaa 59.2 25.6
 .2; Mulgimaa=Mulgi 58.1 25.5 .3; Vooremaa 58.65 26.6; Kadrina kihelkond 59.35 26.1; Toolse 59.53 26.47
EE: sea Väinameri=Moonsund 58.8 23.2 .4; Suur väin 58.6 23.45; Pärnu laht 58.2 24.3; Tallinna laht=Tallinn Bay 59.5
 24.75; Haapsalu laht 58.97 23.5; Käsmu laht 59.6 25.9; Matsalu=Matsalu laht 58.75 23.6; Kopli laht 59.46 24.65;
 Kakumäe 59.45 24.57; Narva laht 59.5 27.7; Stroomi rand=Stroomi 59.44 24.68 .02; Valgerand 58.37 24.4; Kabli rand
 58.0 24.45; Pirita rand 59.47 24.83 .02
LV: lake Lubāns=Lubāna ezers 56.77 26.9; Usma=Usmas ezers=Usmasee 57.2 22.2; Engure=Engures ezers=Angernsee 57.25
 23.1; Babīte ezers=Babītes ezers 56.9 23.8; Alūksnes ezers 57.45 27.1; Liepājas ezers=Libauer See 56.45 21.05;
 Juglas ezers=Jägelsee 56.98 24.3; Āraišu ezers 57.25 25.28; Baltezers=Lielais Baltezers 57.05 24.35; Ežezers 56.2
 27.6; Drīdzis 55.97 27.3; Durbes ezers 56.6 21.4; Papes ezers 56.2 21.05
LV: river Abava=Abau 57.0 22.6; Ogre upe=Ogre River 56.85 25.2; Aiviekste=Ewst 56.7 26.2; Salaca=Salis 57.8 24.8;
 Mūsa 56.2 24.4; Mēmele=Memel (Latvia) 56.4 24.7; Amata 57.2 25.2; Irbe 57.6 22.0; Rauna upe 57.3 25.5; Ventas rumba
 56.97 21.98
LV: region Mežotne 56.4 24.05; Zilais kalns 57.55 25.15; Staburags 56.6 25.4; Kolka=Kolkasrags=Domesnäs 57.76 22.6;
 Jūrmala jūra=Rigaer Strand=Rīgas jūrmala=Riga Strand 56.97 23.75 .15; Sēlija=Selonia 56.3 25.5 .4; Krāslavas kalni
 55.9 27.2; Ķīpsala 56.95 24.08 .02; Zaķusala 56.93 24.14 .02; Mežaparks=Kaiserwald (Riga) 57.0 24.16 .03;
 Turaida=Treyden 57.18 24.85
LT: lake Drūkšiai 55.6 26.6; Tauragnas 55.45 25.9; Plateliai lake=Platelių ežeras 56.05 21.85; Galvė=Trakai
 lake=Trakų ežeras 54.65 24.93; Dusia 54.3 23.7; Rėkyva 55.87 23.3; Metelys 54.3 23.75; Sartai 55.8 25.85; Kauno
 marios=Kaunas reservoir 54.87 24.1; Lūkstas 55.75 22.35
LT: river Neris=Vilija=Wilia 54.9 24.6 .6; Nevėžis 55.4 24.0 .5; Šventoji=Šventoji upė 55.4 24.8 .6; Minija 55.7
 21.6; Merkys 54.3 24.6; Dubysa 55.4 23.2; Jūra (upė) 55.4 22.2; Šešupė=Scheschuppe 54.8 23.1 .4; Vilnia=Vilnelė 54.7
 25.4 .1; Nemunėlis 56.3 24.9; Rusnė 55.3 21.35; Nida kopos 55.3 21.0
LT: region Žemaitija=Samogitia=Samogitien 55.8 22.2 .6; Dzūkija 54.2 24.2 .5; Aukštojas 54.53 25.63; Gedimino kalnas
 54.687 25.29 .01; Kryžių kalnas=Hill of Crosses 56.02 23.42; Memelland=Klaipėdos kraštas=Memel Territory 55.4 21.7
 .5
GB: lake Bala Lake=Llyn Tegid 52.9 -3.6; Loch Katrine 56.25 -4.5; Loch Tay 56.5 -4.15; Loch Fyne 56.0 -5.3 .3; Loch
 Long 56.05 -4.9; Loch Rannoch 56.7 -4.3; Loch Maree 57.7 -5.5; Loch Earn 56.4 -4.2; Loch Shiel 56.8 -5.5; Loch
 Linnhe 56.6 -5.4; Loch Etive 56.5 -5.2; Loch Morar 56.95 -5.7; Coniston Water 54.35 -3.07;
 Bassenthwaite=Bassenthwaite Lake 54.65 -3.2; Thirlmere 54.53 -3.07; Grasmere (lake) 54.45 -3.02; Rydal Water 54.45
 -3.0; Buttermere 54.53 -3.27; Wastwater=Wast Water 54.44 -3.3; Haweswater 54.52 -2.8; Norfolk Broads=the Broads
 52.65 1.55 .2; Virginia Water (lake) 51.41 -0.6 .03; Serpentine 51.505 -0.165 .01; Lake Vyrnwy 52.77 -3.5; Loch
 Lubnaig 56.28 -4.28; Gare Loch=Gareloch 56.05 -4.8; Holy Loch 55.98 -4.93; Lower Lough Erne 54.5 -7.8; Upper Lough
 Erne 54.2 -7.5
GB: river River Avon=the Avon 51.8 -2.0; River Trent=the Trent 53.1 -1.3; River Ouse=the Ouse 53.8 -1.1; River
 Humber=Humber=the Humber=Humber Estuary 53.65 -.3 .3; River Tees=the Tees 54.6 -1.7; River Wear=the Wear 54.8 -1.6;
 River Dee=the Dee 57.05 -2.9; River Don (Aberdeenshire) 57.2 -2.6; River Spey=Spey=the Spey=Speyside 57.4 -3.4 .4;
 River Exe=the Exe 50.9 -3.5; River Dart=the Dart 50.4 -3.6; River Tamar=the Tamar 50.6 -4.2; River Wye=the Wye=Wye
 Valley 52.0 -2.8; River Usk=the Usk 51.8 -3.0; River Teifi 52.1 -4.4; River Medway=the Medway 51.3 .4; River Cam=the
 Cam 52.2 .12; River Nene 52.5 -.3; River Test 51.1 -1.5; River Itchen 51.1 -1.3; River Wharfe=Wharfedale 54.0 -1.8;
 River Aire=Airedale 53.8 -1.7; River Swale=Swaledale 54.4 -2.0; River Ribble=the Ribble=Ribblesdale 53.9 -2.4; River
 Eden=Eden Valley 54.6 -2.7; River Lune 54.2 -2.7; River Derwent 54.6 -3.2; River Forth 56.1 -4.0; River Nith 55.2
 -3.7; River Annan 55.2 -3.4; River Bann=the Bann 54.8 -6.5; River Lagan=the Lagan=Lagan Valley 54.5 -6.0; River
 Foyle 55.0 -7.4; River Cherwell=the Cherwell 51.8 -1.25; River Isis 51.74 -1.25 .05; Regent's Canal 51.53 -.1 .05;
 Manchester Ship Canal 53.4 -2.5; Caledonian Canal 57.1 -4.7; Leeds and Liverpool Canal 53.7 -2.3; Grand Union Canal
 52.0 -.8; River Esk 55.8 -3.1; River Findhorn 57.4 -3.9; River Ness 57.4 -4.3; River Taff 51.6 -3.3; River Towy=Tywi
 51.9 -4.1; River Stour 52.0 .9; River Orwell 52.0 1.2; River Blackwater (Essex) 51.7 .8; River Arun 50.9 -.5; River
 Lea=River Lee (London)=Lea Valley 51.7 0
GB: island Isle of Bute=Bute (island) 55.8 -5.1; Jura=Isle of Jura 55.95 -5.9; Iona 56.33 -6.4; Isle of Lewis=Lewis
 (island) 58.2 -6.6 .3; Isle of Harris=Harris (island) 57.9 -6.9; North Uist 57.6 -7.3; South Uist 57.25 -7.3;
 Barra=Isle of Barra 57.0 -7.5; Benbecula 57.45 -7.3; St Kilda (Scotland)=Hirta 57.8 -8.6; Tiree=Isle of Tiree 56.5
 -6.9; Coll 56.6 -6.55; Colonsay 56.05 -6.2; Eigg 56.9 -6.15; Rum=Isle of Rum 57.0 -6.35; Raasay 57.4 -6.05; Hoy 58.85
 -3.3; Fair Isle 59.53 -1.63; Unst 60.75 -.9; Yell 60.6 -1.1; Foula 60.13 -2.07; Scapa Flow 58.9 -3.05; Outer
 Hebrides=the Hebrides=Hebrides=Western Isles=Inner Hebrides 57.7 -7.2 .9; Isle of Wight=Wight 50.7 -1.3; Lundy=Lundy
 Island 51.18 -4.67; Isles of Scilly=Scilly=Scilly Isles=the Scillies 49.93 -6.3; Holy Island=Lindisfarne 55.68 -1.8;
 Farne Islands 55.63 -1.65; Isle of Sheppey=Sheppey 51.4 .85; Canvey Island 51.52 .58; Hayling Island 50.78 -.97; Isle
 of Portland=Portland Bill 50.55 -2.44; Isle of Thanet=Thanet 51.35 1.35; Caldey Island=Caldey 51.64 -4.68;
 Bardsey=Bardsey Island 52.76 -4.79; Mersea Island 51.8 .95; Brownsea Island 50.69 -1.97; Isle of Purbeck=Purbeck 50.64
 -2.0; Great Cumbrae=Cumbrae 55.77 -4.92; Inchcolm 56.03 -3.3; Bass Rock 56.08 -2.64; St Michael's Mount 50.117 -5.477
 .01; Mersea 51.8 .95; Walney Island=Walney 54.1 -3.25; Isle of Axholme 53.55 -.85
GB: mountain Helvellyn 54.53 -3.02; Skiddaw 54.65 -3.15; Ingleborough 54.17 -2.4; Whernside 54.23 -2.4; Pen-y-ghent
 54.16 -2.25; Pendle Hill=Pendle 53.87 -2.3; Kinder Scout 53.38 -1.87; Cader Idris=Cadair Idris 52.7 -3.9; Pen y Fan
 51.88 -3.44; Tryfan 53.11 -4.0; Ben Lomond (Scotland) 56.19 -4.63; Ben Macdui 57.07 -3.67; Ben Lawers 56.55 -4.22;
 Lochnagar 56.96 -3.24; Schiehallion 56.67 -4.1; Glencoe=Glen Coe 56.67 -5.0; Ben More 56.4 -6.0; Cuillin=Cuillins=the
 Cuillins 57.22 -6.2; Goat Fell=Goatfell 55.63 -5.19; Box Hill (Surrey) 51.25 -.31; Leith Hill 51.18 -.37; The
 Wrekin=Wrekin 52.67 -2.55; Long Mynd 52.54 -2.85; Malvern Hills=the Malverns 52.1 -2.33; Cleeve Hill 51.93 -2.02;
 Glastonbury Tor 51.144 -2.698 .01; Roseberry Topping 54.5 -1.1; Beachy Head 50.74 .25; Cheviot Hills=the
 Cheviots=Cheviots 55.45 -2.2 .25; Pentland Hills=the Pentlands 55.8 -3.4; Ochil Hills=the Ochils 56.2 -3.7; Campsie
 Fells=the Campsies 56.03 -4.2; Eildon Hills 55.58 -2.72; Slemish 54.88 -6.1; Cave Hill 54.65 -5.95; Cavehill 54.65
 -5.95; Sperrin Mountains=the Sperrins=Sperrins 54.8 -7.1 .3; Great Orme=Great Orme's Head 53.33 -3.85; Snowdonia 52.95
 -3.9 .3; Brecon Beacons 51.88 -3.5 .3; Black Mountains (Wales) 51.95 -3.1; Preseli Hills 51.95 -4.8; Pennines=the
 Pennines 54.4 -2.2 1; Chilterns=the Chilterns=Chiltern Hills 51.7 -.8 .3; Cotswolds=the Cotswolds=Cotswold Hills 51.8
 -1.9 .5; North Downs 51.3 0 .4; South Downs 50.9 -.5 .5; Mendips=the Mendips=Mendip Hills 51.27 -2.7; Quantocks=the
 Quantocks=Quantock Hills 51.13 -3.23; Bodmin Moor 50.55 -4.6; Yorkshire Dales=the Dales 54.2 -2.1 .5; North York
 Moors=North Yorkshire Moors 54.4 -.9 .4; Yorkshire Wolds=Lincolnshire Wolds 53.9 -.6 .4; Forest of Dean 51.8 -2.55;
 New Forest=the New Forest 50.87 -1.6 .2; Epping Forest 51.65 .05 .06; Sherwood Forest 53.2 -1.1; Ashdown Forest 51.07
 .05; Cannock Chase 52.75 -1.98; Fens=the Fens=Fenland 52.6 .1 .5; Romney Marsh 51.0 .9; Salisbury Plain 51.2 -1.9 .3;
 Wirral=the Wirral 53.35 -3.08 .15; Gower=the Gower=Gower Peninsula 51.6 -4.1 .15; Lleyn Peninsula=Llŷn Peninsula=Llyn
 Peninsula 52.9 -4.5 .25; Kintyre=Mull of Kintyre 55.5 -5.6 .3; Black Isle=the Black Isle 57.6 -4.2; Fylde=the Fylde
 53.8 -2.95; Holderness 53.8 0; Rhondda Valley=the Rhondda=Rhondda 51.63 -3.45; Glens of Antrim 55.1 -6.15; Ards
 Peninsula=the Ards 54.5 -5.5; Great Glen=the Great Glen 57.1 -4.7 .4; Trossachs=the Trossachs 56.23 -4.4; Rannoch Moor
 56.63 -4.7; Lammermuir Hills 55.83 -2.7; Lizard=the Lizard=Lizard Point 49.97 -5.2; Land's End=Lands End 50.066
 -5.716; John o' Groats=John o'Groats 58.64 -3.07; Cape Wrath 58.62 -5.0; Cheddar Gorge 51.28 -2.76; Stonehenge 51.179
 -1.826 .02; Dogger Bank 54.7 2.3 .8
GB: sea Solent=the Solent 50.78 -1.3; Spithead 50.75 -1.15; Morecambe Bay 54.1 -3.0; Cardigan Bay 52.4 -4.5 .5;
 Bristol Channel 51.35 -3.8 .6; Menai Strait=Menai Straits 53.18 -4.23; Moray Firth 57.8 -3.7 .5; Cromarty Firth 57.7
 -4.2; Solway Firth=the Solway=Solway 54.8 -3.5 .4; Firth of Tay 56.4 -3.1; Firth of Lorne=Firth of Lorn 56.3 -5.7;
 Pentland Firth 58.7 -3.1; The Minch=the Minch 58.1 -5.9 .5; Sound of Mull 56.5 -5.8; Kyles of Bute 55.9 -5.2; The
 Wash=the Wash 52.95 .3; Thames Estuary 51.5 .8; Torbay (bay)=Tor Bay 50.43 -3.52; Lyme Bay 50.6 -3.0; Mount's Bay
 50.08 -5.45; Plymouth Sound 50.34 -4.14; Swansea Bay 51.58 -3.9; Carmarthen Bay 51.65 -4.5; Robin Hood's Bay 54.43
 -.53; Chesil Beach 50.62 -2.55; Goodwin Sands 51.25 1.5; Portland Harbour 50.58 -2.44; Studland Bay 50.65 -1.93;
 Lulworth Cove 50.618 -2.247; Rhossili Bay 51.57 -4.3; Carlingford Lough 54.05 -6.15; Gulf of Corryvreckan 56.15 -5.7
IE: island Aran Islands=the Aran Islands=Arans 53.1 -9.7; Bere Island=Bear Island (Cork) 51.63 -9.87; Cape Clear=Clear
 Island 51.43 -9.5; Sherkin Island 51.47 -9.4; Spike Island (Cork) 51.83 -8.28 .02; Inishbofin 53.6 -10.2;
 Arranmore=Aranmore 55.0 -8.5; Dalkey Island 53.27 -6.08 .02; Ireland's Eye 53.4 -6.06 .02; Lambay=Lambay Island 53.49
 -6.01; Bull Island=North Bull Island 53.37 -6.14 .03; Garinish Island 51.73 -9.55 .02; Scattery Island 52.61 -9.52
IE: mountain Errigal=Mount Errigal 55.03 -8.11; Mount Leinster 52.62 -6.78; Mount Brandon=Brandon Mountain 52.24
 -10.25; Nephin 54.01 -9.37; Galtymore=Galtee Mountains=Galtees 52.37 -8.18; Knockmealdown Mountains=Knockmealdowns
 52.23 -7.9; Comeragh Mountains=Comeraghs 52.25 -7.55; Slieve Bloom=Slieve Bloom Mountains 53.08 -7.6; Sugar Loaf=Great
 Sugar Loaf 53.15 -6.15; Howth Head=Hill of Howth 53.37 -6.07; Slieve League 54.63 -8.7; Vinegar Hill 52.5 -6.56;
 Twelve Pins=Twelve Bens 53.5 -9.8; Mizen Head 51.45 -9.82; Slea Head 52.1 -10.46; Loop Head 52.56 -9.93; Malin Head
 55.38 -7.37; Hook Head 52.12 -6.93; Inishowen 55.2 -7.3 .2; Beara=Beara Peninsula 51.7 -9.8; Dingle Peninsula 52.2
 -10.1 .2; Iveragh=Ring of Kerry=Iveragh Peninsula 51.9 -10.0 .3; Glen of Imaal 52.97 -6.48; Gap of Dunloe 52.0 -9.63;
 Bog of Allen 53.3 -7.1; Glencree 53.2 -6.28; Golden Vale 52.4 -8.3; Newgrange 53.695 -6.475; Rock of Cashel 52.52
 -7.89
IE: river River Nore=the Nore 52.6 -7.2; River Barrow=the Barrow 52.6 -6.95; River Slaney=the Slaney 52.6 -6.6;
 River Moy=the Moy 54.0 -9.1; River Corrib=the Corrib 53.3 -9.05; River Erne 54.3 -7.8; River Dodder=the Dodder 53.3
 -6.25; Grand Canal (Ireland) 53.3 -7.0; Royal Canal 53.4 -7.0; River Bandon 51.7 -8.8; River Tolka 53.4 -6.3; River
 Finn 54.8 -7.8
IE: sea Dublin Bay 53.33 -6.13; Donegal Bay 54.5 -8.5; Killary Harbour 53.6 -9.8; Wexford Harbour 52.35 -6.4;
 Waterford Harbour 52.2 -6.95; Tralee Bay 52.28 -9.9; Sligo Bay 54.3 -8.6; Kenmare River=Kenmare Bay 51.75 -10.0;
 Lough Gill 54.25 -8.37; Lough Sheelin 53.8 -7.3; Lough Ennell 53.47 -7.4; Lough Owel 53.57 -7.4; Lough Carra 53.7
 -9.25; Lough Allen 54.13 -8.05; Lough Key 54.0 -8.25; Lough Dan 53.07 -6.28; Blessington Lakes=Poulaphouca 53.13
 -6.5; Pollaphuca 53.13 -6.5; Muckross Lake 52.0 -9.52; Glendalough Lake 53.0 -6.33
NL: lake IJsselmeer=Ijsselmeer 52.8 5.4 .3; Zuiderzee=Zuider Zee=Zuyder Zee 52.7 5.3 .4; Loosdrechtse Plassen 52.2
 5.08; Veluwemeer 52.4 5.7; Sneekermeer 53.03 5.75; Kagerplassen 52.2 4.55; Braassemermeer 52.2 4.65; Kralingse Plas
 51.94 4.52; Tjeukemeer 52.9 5.8; Vinkeveense Plassen 52.22 4.95
NL: river IJssel=Gelderse IJssel 52.3 6.1 .5; Waal 51.9 5.3 .4; Lek 51.95 4.9; Amstel 52.3 4.9 .1; Vecht 52.2 5.0;
 Zaan 52.47 4.8; Noordzeekanaal 52.45 4.75; Dommel 51.5 5.45; Nieuwe Waterweg 51.95 4.2; Hollandse IJssel 51.95 4.7;
 Rotte 52.0 4.5; Linge 51.9 5.3; Merwede 51.82 4.9
NL BE FR: river Maas=Meuse=de Maas 51.0 5.5 1.3; Schelde=Scheldt=Escaut=Westerschelde 51.2 4.0 .7
NL: island Texel 53.05 4.8; Terschelling 53.4 5.35; Ameland 53.45 5.75; Vlieland 53.25 5.0; Schiermonnikoog 53.48
 6.2; Walcheren 51.5 3.6; Zuid-Beveland=Beveland 51.45 3.9; Schouwen-Duiveland=Schouwen 51.67 3.9;
 Goeree-Overflakkee=Goeree 51.75 4.1; Tholen eiland 51.57 4.1; Marken (island) 52.46 5.1 .03; Urk eiland 52.66 5.6;
 Wieringen 52.9 4.95; Waddeneilanden=Wadden Islands=West Frisian Islands 53.4 5.5 .7; Voorne 51.87 4.15; IJsselmonde
 51.85 4.55; Wadden Sea=Waddenzee=Wattenmeer 53.5 6.5 1
NL: region Veluwe=de Veluwe 52.2 5.8 .3; Betuwe 51.9 5.5 .3; Achterhoek 52.0 6.5 .3; Twente 52.3 6.7 .3; Het
 Gooi=Gooi=het Gooi 52.25 5.2 .1; Kempen=De Kempen 51.4 5.2 .4; Westland (Netherlands) 52.0 4.2 .1; Zaanstreek 52.47
 4.8; Haarlemmermeer 52.3 4.65; Flevopolder=Noordoostpolder 52.7 5.75 .2; Biesbosch 51.75 4.8; Vaalserberg 50.75
 6.02; Peel=de Peel 51.4 5.85; Kennemerland 52.45 4.65; Vechtstreek 52.2 5.0
BE: river Lys=Leie 50.9 3.3 .3; Yser=IJzer 50.9 2.7 .2; Sambre 50.4 4.4; Ourthe 50.4 5.6; Semois 49.85 5.1; Dender
 50.9 4.0; Dyle=Dijle 50.9 4.7; Amblève=Amel 50.4 5.8; Lesse 50.2 5.0; Albert Canal=Albertkanaal 51.1 5.1;
 Senne=Zenne 50.8 4.3
BE: region Ardennes=the Ardennes=Ardennen=Ardenne 50.2 5.5 .6; Hautes Fagnes=Hohes Venn 50.5 6.1; Kemmelberg=Mont
 Kemmel 50.78 2.82; Messines Ridge 50.77 2.9; Passchendaele Ridge 50.9 3.02; Borinage 50.42 3.85; Hageland 50.95 4.9;
 Pajottenland 50.8 4.15; Ypres Salient 50.86 2.95; Flanders Fields 50.87 2.9 .2; Waasland 51.15 4.1; Belgian
 Coast=Belgische kust 51.25 2.95 .3
LU: river Alzette 49.7 6.1; Sûre=Sauer 49.85 6.2; Our 50.0 6.1; Wiltz 49.95 5.9
"""
