"""Lakes, rivers, islands, mountains and the like of central, southern and eastern Europe, and of Russia.

From memory, written as `nature_north_table` tells.
"""

NATURE_SOUTH = """
DE: lake Schliersee (lake) 47.72 11.86; Walchensee 47.6 11.33; Kochelsee 47.65 11.35; Eibsee 47.46 10.98; Staffelsee
 47.7 11.16; Simssee 47.87 12.25; Schluchsee (lake) 47.82 8.17; Titisee 47.9 8.15; Plöner See=Großer Plöner See 54.13
 10.4; Ratzeburger See 53.73 10.77; Schaalsee 53.6 10.93; Schweriner See 53.72 11.47; Kölpinsee 53.5 12.57; Plauer See
 53.47 12.32; Fleesensee 53.5 12.45; Tollensesee 53.5 13.2; Müggelsee=Großer Müggelsee 52.44 13.65 .06; Scharmützelsee
 52.25 14.05; Schwielowsee 52.33 12.95; Werbellinsee 52.93 13.7; Stechlinsee=Stechlin 53.15 13.03; Schlachtensee (lake)
 52.44 13.21 .02; Grunewaldsee 52.46 13.26 .02; Edersee 51.18 9.0; Laacher See=Maria Laach 50.41 7.27; Möhnesee (lake)
 51.48 8.1; Dümmer=Dümmersee 52.5 8.35; Zwischenahner Meer 53.2 8.0; Alpsee 47.55 10.2; Tegeler See 52.57 13.25 .03;
 Maschsee 52.35 9.74 .02; Federsee 48.08 9.63; Selenter See 54.3 10.45; Wörthsee 48.05 11.18; Waginger See 47.93 12.78;
 Schwansee 47.57 10.73
DE AT SK HU HR RS RO BG UA: river Donau=Danube=Duna=Dunaj=Dunărea=Dunav=Dunay=Дунай=the Danube=River Danube 47.0
 17.5 4
AT DE CH: river Inn (river)=River Inn 47.8 12.5 .8
DE: river Lech 48.0 10.8 .7; Salzach 47.8 12.9; Saale=die Saale 51.0 11.8 .9; Unstrut 51.2 11.2; Mulde 51.4 12.7;
 Weiße Elster=Weisse Elster 51.0 12.2; Pleiße 51.2 12.4; Werra 51.0 10.0; Fulda (river)=die Fulda 51.0 9.6; Lahn=die
 Lahn 50.5 8.0; Sieg 50.8 7.6; Ruhr (river)=die Ruhr 51.4 7.5; Ruhrgebiet=Ruhr=Ruhr area=Ruhrpott 51.5 7.2 .4; Wupper
 51.1 7.1; Lippe (river) 51.65 7.4; Ems=die Ems 52.7 7.3; Aller=die Aller 52.7 10.0; Leine=die Leine 52.0 9.8; Oker
 52.2 10.5; Bode 51.8 11.0; Hunte 53.0 8.4; Trave 53.9 10.6; Eider 54.3 9.2; Warnow 53.9 12.1; Peene 53.9 13.3; Nahe
 49.8 7.6; Ahr=Ahrtal 50.5 7.0; Nidda 50.25 8.8; Tauber 49.5 9.8; Regnitz 49.7 10.95; Pegnitz (river) 49.5 11.3;
 Altmühl=Altmühltal 49.0 11.3; Naab 49.4 12.1; Regen (river) 49.1 12.6; Iller 48.0 10.1; Jagst 49.2 9.8; Kocher 49.2
 9.6; Enz 48.9 8.8; Murg 48.7 8.3; Mittellandkanal 52.35 9.5 .8; Landwehrkanal 52.5 13.38 .06; Nahetal 49.8 7.6
DE FR: river Saar=Sarre 49.4 6.8
DE PL: river Neisse=Lausitzer Neiße=Nysa Łużycka=Görlitzer Neisse 51.5 14.8
DE: island Sylt 54.9 8.33; Föhr 54.72 8.5; Amrum 54.65 8.35; Helgoland=Heligoland 54.18 7.88; Norderney (island)
 53.71 7.2; Borkum (island) 53.59 6.7; Juist (island) 53.68 7.0; Langeoog (island) 53.75 7.5; Spiekeroog (island)
 53.77 7.7; Wangerooge (island) 53.79 7.9; Baltrum 53.73 7.38; Pellworm 54.52 8.65; Nordstrand 54.5 8.9; Hallig
 Hooge=Hooge 54.57 8.55; Halligen=die Halligen 54.6 8.6; Fehmarn=Femern 54.45 11.15; Hiddensee 54.55 13.1; Poel=Insel
 Poel 54.0 11.45; Mainau=Insel Mainau 47.705 9.196 .01; Reichenau=Insel Reichenau 47.69 9.06; Lindau Insel 47.55
 9.68; Fraueninsel=Frauenchiemsee 47.87 12.43; Herreninsel=Herrenchiemsee 47.86 12.4; Pfaueninsel 52.43 13.13 .01;
 Museumsinsel 52.52 13.4 .01; Darß=Fischland-Darß-Zingst=Fischland 54.4 12.5; Zingst 54.43 12.7; Eiderstedt 54.33
 8.8; Ostfriesische Inseln=East Frisian Islands=Nordfriesische Inseln=North Frisian Islands 53.75 7.4 .7; Mönchgut
 54.33 13.7; Kap Arkona=Arkona=Cape Arkona 54.68 13.43; Königsstuhl=Stubbenkammer=Stubnitz 54.57 13.66; Darßer Ort
 54.47 12.5
DE: mountain Wendelstein 47.7 12.01; Herzogstand 47.62 11.3; Hochgrat 47.5 10.08; Nebelhorn 47.42 10.34; Alpspitze
 47.43 11.05; Karwendel 47.42 11.4; Wettersteingebirge=Wetterstein 47.4 11.1; Kampenwand 47.76 12.37; Benediktenwand
 47.65 11.47; Großer Arber=Arber=Grosser Arber 49.11 13.14; Großer Inselsberg=Inselsberg=Inselberg 50.85 10.47;
 Fichtelberg (mountain) 50.43 12.95; Ochsenkopf 50.03 11.81; Schneeberg (Fichtelgebirge) 50.05 11.86; Wasserkuppe 50.5
 9.94; Feldberg (Taunus)=Großer Feldberg=Grosser Feldberg 50.23 8.46; Kahler Asten 51.18 8.49; Melibokus 49.73 8.64;
 Königstuhl (Heidelberg) 49.4 8.72; Hohenzollern=Burg Hohenzollern=Hohenzollern Castle 48.32 8.97 .02; Wartburg=die
 Wartburg 50.966 10.307 .01; Kyffhäuser 51.42 11.1; Petersberg (Siebengebirge)=Siebengebirge 50.67 7.25; Teutoburger
 Wald=Teutoburg Forest=Hermannsdenkmal 51.95 8.7 .4; Deister 52.25 9.5; Ith 52.0 9.6; Solling 51.75 9.6; Weserbergland
 52.0 9.3 .4; Sauerland 51.2 8.1 .5; Siegerland 50.9 8.0; Bergisches Land 51.1 7.2 .3; Münsterland 51.95 7.5 .5;
 Hunsrück 49.9 7.1 .4; Taunus 50.2 8.3 .3; Westerwald 50.6 7.9 .4; Vogelsberg 50.53 9.23; Rhön 50.5 10.0 .3; Spessart
 50.0 9.4 .3; Odenwald 49.6 8.9 .3; Bergstraße 49.6 8.65; Kraichgau 49.2 8.8; Schwäbische Alb=Swabian Jura=Rauhe Alb
 48.4 9.5 .7; Fränkische Schweiz=Franconian Switzerland=Fränkische Alb 49.8 11.3 .3; Fichtelgebirge 50.05 11.9;
 Bayerischer Wald=Bavarian Forest=Böhmerwald (Bayern) 49.0 13.2 .5; Frankenwald 50.35 11.5; Sächsische Schweiz=Saxon
 Switzerland=Elbsandsteingebirge=Bastei 50.93 14.15; Zittauer Gebirge 50.85 14.7; Oderbruch 52.7 14.2; Havelland 52.6
 12.6 .4; Fläming 52.1 12.7 .5; Prignitz 53.1 12.0 .4; Barnim 52.75 13.6; Märkische Schweiz 52.56 14.05; Holsteinische
 Schweiz=Holstein Switzerland 54.15 10.5; Dithmarschen 54.15 9.1 .3; Angeln 54.7 9.7; Schwansen 54.6 9.9; Altes Land
 53.55 9.6; Vierlande 53.43 10.2; Wendland 53.0 11.1; Ammerland 53.2 7.9; Emsland 52.8 7.4 .5; Butjadingen 53.55 8.35;
 Land Wursten 53.7 8.6; Sachsenwald 53.54 10.4; Grunewald (forest) 52.48 13.23 .04; Reinhardswald 51.5 9.55;
 Habichtswald 51.32 9.35; Hainich 51.1 10.4; Eichsfeld 51.4 10.2 .3; Dübener Heide 51.7 12.6; Colbitz-Letzlinger Heide
 52.4 11.5; Breisgau 48.0 7.8; Hegau 47.8 8.8; Kaiserstuhl 48.08 7.67; Markgräflerland 47.75 7.6; Ortenau 48.45 7.95;
 Rheingau 50.0 8.0; Hallertau=Holledau 48.6 11.8; Chiemgau 47.8 12.5 .3; Ries=Nördlinger Ries 48.87 10.5; Hohenlohe
 49.2 9.8; Rheinfall=Rhine Falls 47.678 8.615
DE: sea Kieler Förde=Kiel Fjord 54.4 10.2; Lübecker Bucht=Bay of Lübeck 54.05 10.95; Jadebusen 53.47 8.2; Schlei
 54.6 9.8; Greifswalder Bodden 54.25 13.5; Deutsche Bucht=German Bight 54.3 7.5 .7; Dollart 53.3 7.1
PL DE: sea Stettiner Haff=Oderhaff=Zalew Szczeciński=Szczecin Lagoon 53.75 14.2 .3
EE FI SE LV LT PL DE DK RU: sea Ostsee=Baltic Sea=Baltic=the Baltic=Läänemeri=Itämeri=Östersjön=Baltyk=Bałtyk=Morze
 Bałtyckie=Baltijas jūra=Baltijos jūra=Балтийское море=Балтика 57.5 19.5 4
AT: lake Wolfgangsee=St. Wolfgangsee=Abersee 47.74 13.42; Attersee (lake) 47.9 13.55; Traunsee 47.87 13.8; Mondsee
 (lake) 47.83 13.37; Wörthersee=Wörther See 46.62 14.15; Millstätter See 46.8 13.57; Ossiacher See 46.67 13.97;
 Weissensee (Kärnten) 46.7 13.33; Faaker See 46.57 13.93; Zeller See=Zell am See lake 47.32 12.8; Achensee 47.45
 11.7; Plansee 47.47 10.8; Hallstätter See=Hallstättersee 47.58 13.66; Grundlsee (lake) 47.63 13.87; Altausseer See
 47.64 13.78; Fuschlsee 47.8 13.27; Wallersee 47.92 13.18; Erlaufsee 47.79 15.27; Lunzer See 47.85 15.05; Klopeiner
 See 46.6 14.58; Alte Donau=Old Danube 48.24 16.42 .03
AT: river Enns (river)=die Enns 47.7 14.4; Traun (river) 48.0 13.9; Ybbs (river) 47.95 14.9; Leitha=Lajta 47.9 16.8;
 Raab (river)=Rába 47.2 16.7; Thaya=Dyje 48.8 16.0; Kamp=Kamptal 48.6 15.5; Donaukanal 48.22 16.37 .03; Gail=Gailtal
 46.63 13.4; Ziller=Zillertal 47.25 11.9; Ötz=Ötztal=Oetztal 47.0 10.95; Sill 47.15 11.4; Steyr (river) 47.9 14.3;
 Mürz=Mürztal 47.55 15.4
AT SI HR HU: river Mur=Mura=die Mur 46.9 15.5 .8; Drau=Drava=Dráva=Drave 46.3 16.0 1.5
CZ SK AT: river March (river)=Morava=Morva=March 48.9 17.0 .8
AT: mountain Schneeberg (Austria) 47.77 15.8; Rax=Raxalpe 47.7 15.7; Semmering=Semmeringpass 47.63 15.83; Dachstein
 47.47 13.6; Schafberg 47.78 13.43; Gaisberg 47.8 13.11; Untersberg 47.72 13.0; Kahlenberg 48.275 16.337 .01;
 Leopoldsberg 48.277 16.347 .01; Patscherkofel 47.2 11.46; Nordkette=Hafelekar 47.29 11.4; Wilder Kaiser=Kaisergebirge
 47.56 12.3; Kitzbüheler Horn=Hahnenkamm 47.47 12.4; Ortler=Ortles 46.51 10.54; Großvenediger=Grossvenediger 47.11
 12.35; Hochkönig 47.42 13.06; Ötscher 47.86 15.2; Schöckl 47.2 15.47; Traunstein (mountain) 47.87 13.84; Pöstlingberg
 48.32 14.26 .01; Brenner=Brenner Pass=Brennerpass=Brennero=Passo del Brennero 47.0 11.5; Arlberg=Arlbergpass 47.13
 10.2; Großglockner Hochalpenstraße=Hochtor 47.1 12.84; Hochschwab 47.62 15.14; Krimmler Wasserfälle 47.2 12.17; Hohe
 Tauern 47.1 12.8 .5; Wienerwald=Vienna Woods 48.1 16.0 .3; Lobau 48.18 16.5; Wachau 48.37 15.4; Waldviertel 48.6 15.2
 .5; Weinviertel 48.6 16.4 .5; Mühlviertel 48.45 14.4 .4; Innviertel 48.2 13.2 .4; Salzkammergut 47.7 13.6 .4;
 Burgenland hills 47.5 16.4; Pinzgau 47.25 12.7 .3; Pongau 47.35 13.2; Lungau 47.1 13.8; Montafon 47.05 9.95;
 Bregenzerwald 47.35 9.9; Stubaital=Stubai 47.1 11.25; Marchfeld 48.25 16.75; Bucklige Welt 47.6 16.1
AT IT: mountain Pustertal=Val Pusteria 46.78 12.0 .4
IT: mountain Vinschgau=Val Venosta 46.65 10.6 .3
CH: lake Lake Thun=Thunersee 46.7 7.7; Lake Brienz=Brienzersee 46.73 7.97; Lake Zug=Zugersee 47.1 8.48; Lake
 Neuchâtel=Neuenburgersee=Lac de Neuchâtel 46.9 6.85; Lake Biel=Bielersee=Lac de Bienne 47.08 7.17; Walensee 47.12 9.2;
 Sempachersee 47.15 8.15; Hallwilersee 47.28 8.22; Greifensee (lake) 47.35 8.68; Murtensee=Lac de Morat 46.93 7.08;
 Oeschinensee 46.5 7.73; Silsersee=Lake Sils 46.42 9.73; Aare=Aar 47.0 7.6 .7; Limmat 47.4 8.4; Untersee 47.68 9.0; St.
 Petersinsel=St Peter's Island 47.07 7.14
CH IT: lake Lake Lugano=Lago di Lugano=Luganersee 45.98 9.0
CH: mountain Pilatus=Mount Pilatus 46.98 8.25; Titlis 46.77 8.44; Säntis 47.25 9.34; Mönch 46.56 7.99; Monte
 Rosa=Dufourspitze 45.94 7.87; Weisshorn 46.1 7.72; Piz Bernina=Bernina 46.38 9.9; Piz Palü 46.38 9.96; Schilthorn
 46.56 7.83; Niesen 46.64 7.65; Stanserhorn 46.93 8.34; Uetliberg 47.35 8.49; Gornergrat 45.98 7.78; Jungfraujoch
 46.55 7.98; Kleine Scheidegg 46.585 7.96; Schynige Platte 46.65 7.91; Wetterhorn 46.64 8.12; Finsteraarhorn 46.54
 8.13; St. Gotthard=Gotthard=Gotthardpass=St Gotthard Pass=San Gottardo 46.56 8.56; Simplon=Simplonpass=Simplon Pass
 46.25 8.03; Great St Bernard=Grosser St. Bernhard=Grand Saint-Bernard=Great St Bernard Pass 45.87 7.17;
 Furka=Furkapass 46.57 8.41; Grimsel=Grimselpass 46.56 8.34; Albula 46.58 9.84; Julier 46.47 9.73; Aletsch
 Glacier=Aletschgletscher 46.44 8.08; Rhône Glacier=Rhonegletscher 46.6 8.38;
 Engadin=Engadine=Oberengadin=Unterengadin 46.6 10.0 .4; Berner Oberland=Bernese Oberland 46.6 7.8 .4; Emmental 46.95
 7.8; Simmental 46.6 7.4; Toggenburg 47.25 9.1; Appenzellerland 47.35 9.4; Lötschental 46.42 7.8; Val d'Hérens 46.15
 7.45; Goms 46.48 8.25; Lavaux 46.48 6.75; Prättigau 46.93 9.75; Valle Maggia=Valle Verzasca 46.3 8.7;
 Lauterbrunnental 46.57 7.91
CH FR: mountain Jura mountains=Jura=the Jura=Jura (mountains)=Schweizer Jura 47.0 6.5 .8
PL: lake Niegocin=Löwentinsee 54.0 21.78; Wigry 54.03 23.08; Jeziorak=Geserichsee 53.72 19.62; Drawsko=Dratzigsee
 53.6 16.2; Łebsko=Jezioro Łebsko=Lebasee 54.72 17.4; Gardno=Garder See 54.65 17.1; Nidzkie 53.6 21.57; Roś 53.67
 21.92; Hańcza 54.27 22.82; Powidzkie=Jezioro Powidzkie 52.4 17.95; Miedwie=Madüsee 53.28 14.9; Czorsztyn
 lake=Jezioro Czorsztyńskie 49.45 20.3; Solina lake=Jezioro Solińskie 49.38 22.45; Czarny Staw=Czarny Staw
 Gąsienicowy 49.23 20.02; Zegrze=Zalew Zegrzyński 52.46 21.05; Jezioro Żywieckie 49.72 19.2; Drwęckie 53.7 19.9;
 Charzykowskie=Jezioro Charzykowskie 53.77 17.5; Wdzydze=Jezioro Wdzydze 53.98 17.9; Malta=Jezioro Malta 52.4 16.97
 .02; Necko 53.87 22.95; Serwy 53.9 23.2; Bełdany 53.72 21.57; Mikołajskie 53.78 21.58; Wielkie Jeziora
 Mazurskie=Masurian Lakes=Mazury=Masurische Seen=Great Masurian Lakes 53.9 21.7 .6
PL: river Pilica 51.5 20.3 .7; Bzura 52.2 19.8; Noteć=Netze 53.0 16.8 .7; Wieprz 51.3 22.8; Nida 50.5 20.6; Wisłoka
 50.0 21.4; Wisłok 49.9 21.9; Poprad (river) 49.4 20.7; Raba 49.9 20.2; Skawa 49.8 19.5; Soła 49.8 19.2; Biebrza 53.6
 22.8 .4; Drwęca=Drewenz 53.3 19.3; Brda=Brahe 53.6 17.8; Bóbr=Bober 51.4 15.5; Kwisa=Queis 51.2 15.4; Nysa
 Kłodzka=Glatzer Neisse 50.6 17.0; Barycz 51.55 17.0; Prosna 51.8 18.1; Ner 52.0 19.0; Rega 53.9 15.3;
 Parsęta=Persante 54.0 15.8; Słupia=Stolpe 54.4 17.1; Łeba=Leba 54.6 17.6; Radunia 54.25 18.4; Motława=Mottlau 54.34
 18.67 .05; Nogat 54.1 19.1; Łyna=Alle=Лава 54.1 20.6; Pasłęka=Passarge 54.2 20.0; Krutynia 53.7 21.4; Czarna Hańcza
 54.0 23.2; Augustów Canal=Kanał Augustowski 53.85 23.2; Kanał Elbląski=Elbląg Canal=Oberländischer Kanal 53.9 19.6;
 Rudawa (river) 50.1 19.8; Narewka 52.8 23.8
PL: island Wolin (island)=Wollin 53.9 14.6; Hel Peninsula=Półwysep Helski=Halbinsel Hela=Mierzeja Helska 54.7 18.6;
 Westerplatte 54.406 18.67 .01; Żuławy=Żuławy Wiślane=Großes Werder 54.15 19.1 .3; Wyspa Sobieszewska=Bohnsack 54.34
 18.83; Ostrów Tumski=Dominsel 51.114 17.046 .01; Saska Kępa (island) 52.23 21.05 .02; Bielinek 52.9 14.15
PL: mountain Śnieżnik=Glatzer Schneeberg 50.2 16.85; Szrenica=Reifträger 50.79 15.51; Ślęża=Zobten 50.87 16.71;
 Chojnik=Kynast 50.83 15.64; Pilsko 49.53 19.32; Turbacz 49.54 20.11; Trzy Korony 49.41 20.41; Tarnica 49.07 22.73;
 Czantoria 49.68 18.8; Skrzyczne 49.68 19.03; Łysica=Łysa Góra=Święty Krzyż 50.89 20.9; Świnica 49.22 20.0; Zawrat
 49.22 20.02; Dolina Chochołowska 49.25 19.8; Hala Gąsienicowa 49.24 20.0; Dolina Pięciu Stawów 49.21 20.05; Ojców
 (valley)=Dolina Prądnika 50.2 19.83; Klimczok 49.74 19.0; Szyndzielnia 49.76 19.0; Równica 49.72 18.84; Kopiec
 Kościuszki=Kościuszko Mound 50.055 19.893 .01; Jasna Góra=Yasna Gora 50.813 19.097 .01; Góra Świętej Anny=Annaberg
 (Silesia)=St. Annaberg 50.45 18.17; Bieszczady 49.2 22.5 .4; Pieniny=Pieniny Mountains 49.42 20.4; Gorce 49.55 20.15;
 Góry Stołowe=Heuscheuer 50.48 16.35; Góry Sowie=Eulengebirge 50.65 16.5; Świętokrzyskie=Góry Świętokrzyskie=Holy Cross
 Mountains 50.9 20.9 .3; Roztocze 50.6 23.2 .4; Podhale 49.4 20.0 .3; Spisz=Polish Spisz 49.4 20.2; Orawa=Orava 49.4
 19.6; Białowieża Forest=Puszcza Białowieska=Białowieża (forest) 52.75 23.9 .3; Puszcza Kampinoska=Kampinos 52.3 20.6;
 Puszcza Augustowska 53.9 23.3; Bory Tucholskie=Tucheler Heide 53.7 17.9 .4; Puszcza Piska=Johannisburger Heide 53.65
 21.6; Puszcza Niepołomicka 50.05 20.35; Jura Krakowsko-Częstochowska=Jura Krakowska 50.5 19.5 .4; Kociewie 53.9 18.5;
 Krajna 53.4 17.4; Ziemia Dobrzyńska 52.9 19.2; Zagłębie=Zagłębie Dąbrowskie 50.33 19.2; Beskid
 Niski=Łemkowszczyzna=Lemko region 49.45 21.4 .4; Zamojszczyzna 50.7 23.2 .4; Kurpie 53.2 21.4; Suwalszczyzna 54.2 22.9
BY LT UA: mountain Kresy=Kresy Wschodnie 50.5 25.5 3
PL SK: mountain Tatry=Tátra=Tátrák=Tatra Mountains=Tatras=the Tatras=High Tatras=Hohe Tatra=Vysoké
 Tatry=Tatra=Wysokie Tatry 49.2 20.0 .3
CZ: region Zaolzie=Zaolší=Olsagebiet 49.7 18.6 .2
PL SK CZ: mountain Beskidy=Beskids=Beskiden=Beskid=Beskid Śląski=Beskid Żywiecki 49.6 19.3 .5
PL CZ: mountain Sudety=Sudetes=Sudeten=Sudeten Mountains 50.6 16.3 1
PL: sea Zatoka Gdańska=Gdańsk Bay=Danziger Bucht=Bay of Danzig 54.5 19.0 .4; Zatoka Pucka=Puck Bay 54.65 18.55;
 Zalew Wiślany=Frisches Haff=Vistula Lagoon 54.4 19.8 .4; Pomeranian Bay=Zatoka Pomorska 54.1 14.4 .4
CZ: lake Máchovo jezero=Máchasee 50.58 14.65; Lipno=Lipno lake=Lipenská přehrada 48.65 14.1; Slapy=Slapská přehrada
 49.78 14.4; Orlík=Orlická přehrada 49.55 14.17; Rožmberk 49.05 14.77; Černé jezero 49.18 13.18; Svět 48.99 14.76;
 Brněnská přehrada=Kníničky 49.25 16.5; Vranovská přehrada 48.9 15.8; Seč 49.83 15.65
CZ: river Sázava (river)=Sázava 49.8 15.0; Berounka 49.95 13.9; Otava 49.25 13.9; Lužnice (river) 49.2 14.7;
 Ohře=Eger 50.3 13.0 .8; Jizera=Iser 50.5 15.0; Orlice=Adler 50.15 16.2; Úpa 50.5 16.0; Morava (river)=Morava řeka
 49.2 17.3 .8; Svratka (river) 49.2 16.5; Svitava=Zwittawa 49.4 16.65; Bečva=Betschwa 49.45 17.7; Opava (river)=Oppa
 49.95 17.8; Ostravice=Ostrawitza 49.7 18.4; Jihlava (river)=Igel 49.2 16.0; Bílina (river) 50.5 13.9; Chrudimka 49.8
 15.8; Malše 48.85 14.5; Radbuza 49.6 13.2; Mže=Mies 49.75 13.1; Botič 50.06 14.5 .06; Metuje 50.35 16.1
CZ: mountain Říp=Georgsberg 50.386 14.289; Praděd=Altvater 50.08 17.23; Ještěd=Jeschken 50.73 14.985;
 Milešovka=Milleschauer 50.555 13.93; Radhošť=Radhoscht 49.49 18.22; Lysá hora 49.55 18.45; Klínovec=Keilberg 50.4
 12.97; Boubín=Kubany 49.0 13.82; Kleť=Schöninger 48.865 14.285; Blaník=Velký Blaník 49.64 14.87; Bezděz=Bösig 50.54
 14.72; Trosky=Trosky hrad 50.517 15.23; Macocha 49.37 16.73; Hostýn=Svatý Hostýn 49.38 17.7; Pálava=Pollauer
 Berge=Děvín 48.87 16.65; Petřín=Laurenziberg 50.083 14.395 .01; Vyšehrad 50.064 14.42 .01; Vítkov (hill)=Žižkov Hill
 50.088 14.45 .01; Hradčany castle=Pražský hrad=Prague Castle=Hradschin 50.09 14.4 .01; Karlštejn hrad 49.94 14.19;
 Svatá hora 49.686 14.018 .01; Šumava=Böhmerwald=Bohemian Forest 49.0 13.5 .5; Jeseníky=Altvatergebirge 50.1 17.2 .3;
 Orlické hory=Adlergebirge 50.25 16.4; Jizerské hory=Isergebirge 50.83 15.2; Beskydy=Moravskoslezské Beskydy 49.5
 18.4 .3; Český ráj=Bohemian Paradise 50.55 15.2; České středohoří 50.55 14.0 .3; Českomoravská vrchovina=Vysočina
 (highlands) 49.4 15.8 .5; Krkonoš 50.73 15.6; Moravský kras=Moravian Karst 49.37 16.73; Haná=Hanna 49.4 17.3 .3;
 Slovácko=Slovácko region=Moravian Slovakia 48.95 17.3 .3; Valašsko=Wallachia (Moravia) 49.4 18.0 .3; Chodsko 49.4
 12.95; Hřebeny=Brdy 49.7 13.9; Podkrkonoší 50.5 15.7; Těšínsko=Teschen Silesia=Śląsk Cieszyński=Cieszyn Silesia 49.7
 18.6 .3; Hlučínsko=Hultschiner Ländchen 49.95 18.15; Posázaví 49.85 14.9; Polabí 50.15 15.0 .4; Sudetenland=Sudety
 (region)=the Sudetenland 50.4 13.5 1.6; Adršpach rocks=Adršpašské skály=Prachovské skály 50.5 15.7 .3
SK: lake Štrbské pleso=Csorbató=Csorba-tó 49.12 20.06; Popradské pleso=Poprádi-tó 49.15 20.08; Oravská priehrada
 49.4 19.55; Zemplínska šírava 48.8 22.0; Liptovská Mara 49.1 19.5; Počúvadlo 48.4 18.85; Skalnaté pleso 49.19 20.23
SK: river Váh=Vág=Waag 48.7 18.2 1; Hron=Garam=Gran 48.5 18.9 .7; Nitra (river)=Nyitra folyó 48.3 18.1; Hornád=Hernád
 48.8 21.0 .5; Ipeľ=Ipoly=Eipel 48.1 19.1; Ondava 48.9 21.7; Laborec=Laborc 48.9 21.9; Torysa 49.0 21.2; Orava
 (river)=Árva folyó 49.3 19.4; Turiec 48.95 18.9; Poprad (Slovakia) 49.2 20.5; Malý Dunaj=Little Danube 48.0 17.5;
 Slaná=Sajó 48.3 20.5
SK HU: river Bodrog 48.3 21.7
SK: mountain Gerlachovský štít=Gerlach=Gerlachfalvi-csúcs 49.16 20.13; Lomnický štít=Lomnici-csúcs=Lomnitzer Spitze
 49.2 20.21; Kriváň 49.16 20.0; Chopok 48.94 19.59; Ďumbier 48.94 19.64; Slavkovský štít 49.17 20.18; Sitno 48.4
 18.88; Zobor 48.35 18.1; Kráľova hoľa 48.88 20.14; Devín (castle)=Dévény vára=Devín castle 48.175 16.98; Spišský
 hrad=Szepesi vár=Zipser Burg=Spiš Castle 49.0 20.77; Nízke Tatry=Low Tatras=Alacsony-Tátra 48.93 19.6 .3; Malá
 Fatra=Kis-Fátra=Veľká Fatra 49.1 19.0; Malé Karpaty=Little Carpathians=Kleine Karpaten 48.4 17.3 .3; Slovenský raj
 48.92 20.35; Magas-Tátra 49.17 20.13; Záhorie 48.6 17.1; Žitný ostrov=Csallóköz=Große Schütt=Schütt Island 47.95
 17.6 .3; Liptov=Liptó 49.1 19.6; Turiec (region)=Turóc 48.95 18.9; Gemer=Gömör 48.5 20.2; Zemplín=Zemplén 48.7 21.8;
 Šariš=Sáros 49.1 21.2; Spiš=Szepes=Szepesség 49.0 20.6; Novohrad=Nógrád 48.2 19.5; Abov=Abaúj 48.4 21.1; Honte=Hont
 48.2 19.0; Tekov=Bars 48.3 18.5; Hauerland 48.75 18.8; Felvidék=Upper Hungary=Oberungarn 48.7 19.5 1.2; Mátyusföld
 48.1 17.9; Ung=Ung megye 48.7 22.3
SK PL UA RO HU CZ: mountain Karpaty=Carpathians=Carpathian Mountains=Kárpátok=Karpaten=Carpați=the
 Carpathians=Карпаты=Карпати 48.5 23.0 3
HU: lake Velencei-tó=Velence lake=Lake Velence=Velencei tó 47.2 18.6; Tisza-tó=Lake Tisza 47.6 20.7; Öreg-tó 47.64
 18.32; Hévízi-tó=Lake Hévíz 46.787 17.193; Feneketlen-tó 47.478 19.042 .01; Hámori-tó=Lillafüred lake 48.1 20.62;
 Szelidi-tó 46.62 19.04; Bánki-tó 47.92 19.17; Fehér-tó=Szegedi Fehér-tó 46.33 20.1
HU UA RO SK RS: river Tisza=Theiss=Theiß=Tisa=the Tisza=Tiszaparton 47.2 20.8 1.8
HU: river Zagyva 47.6 19.8; Körös=Kőrös=Hármas-Körös=Kőrösök=Criș=Fekete-Körös=Fehér-Körös=Sebes-Körös 46.9 20.9 .6;
 Kapos 46.5 18.1; Sió=Sió-csatorna=Sió csatorna 46.6 18.4; Zala (river) 46.8 16.9; Marcal 47.2 17.2; Rábca 47.7 17.2;
 Berettyó 47.2 21.4; Túr 47.9 22.7; Hernád folyó 48.2 21.0; Sajó folyó 48.1 20.9; Ipoly folyó 48.0 19.1;
 Duna-part=Dunakorzó=Duna-korzó 47.495 19.048 .02; Szamos folyó 47.8 22.5; Dunakanyar=Danube Bend=Donauknie 47.8 18.95
RO HU: river Maros=Mureș=Mieresch 46.3 22.3 1.6; Szamos=Someș=Samosch 47.5 23.0 .9
HU: island Margitsziget=Margaret Island=Margareteninsel 47.527 19.047 .02; Csepel-sziget=Csepel Island 47.3 19.0;
 Szentendrei-sziget=Szentendre Island 47.75 19.1; Óbudai-sziget=Hajógyári-sziget 47.55 19.053 .01; Szigetköz 47.9
 17.4; Mohácsi-sziget 46.0 18.75; Tihany (peninsula)=Tihanyi-félsziget 46.91 17.88; Tabán 47.49 19.042 .01; Népliget
 47.475 19.105 .01; Városliget=City Park (Budapest)=Stadtwäldchen 47.515 19.085 .02
HU: mountain Kékestető=Kékes=Kékes-tető 47.873 20.008; Galyatető=Galya-tető 47.915 19.92; Dobogókő=Dobogó-kő 47.72
 18.9; Gellérthegy=Gellért-hegy=Gellért Hill=Blocksberg 47.487 19.043 .01; János-hegy=Jánoshegy=János Hill 47.518
 18.958 .01; Svábhegy=Sváb-hegy=Schwabenberg 47.5 18.98 .02; Normafa 47.503 18.965 .01; Hármashatár-hegy 47.555 18.998
 .01; Budai-hegység=Budai hegyek=Buda Hills 47.52 18.95 .08; Badacsony 46.805 17.495; Tátika 46.9 17.25; Szent
 György-hegy 46.843 17.45; Somló=Somló-hegy 47.147 17.37; Sághegy=Ság hegy 47.232 17.113; Naszály 47.83 19.14; Bánkút
 (mountain)=Bükk=Bükk Mountains=Bükk hegység 48.07 20.5 .3; Mátra=Mátra Mountains=Mátra hegység 47.88 19.95 .3;
 Börzsöny 47.93 18.9; Pilis (mountains)=Pilis hegység=Visegrádi-hegység 47.7 18.85; Mecsek 46.12 18.2; Bakony=Bakony
 hegység 47.2 17.8 .5; Vértes 47.4 18.35; Gerecse 47.68 18.5; Cserhát 47.95 19.5; Zempléni-hegység=Zemplén Mountains
 48.35 21.4 .3; Karancs 48.16 19.79; Tokaj hill=Tokaji-hegy=Kopasz-hegy=Tokajhegyalja=Hegyalja=Tokaj-Hegyalja 48.2
 21.35; Kőszegi-hegység=Írott-kő=Geschriebenstein 47.353 16.434; Hortobágy=Hortobágyi puszta=Puszta 47.58 21.15 .3;
 Bugac=Bugaci puszta 46.65 19.6; Alföld=Great Hungarian Plain=Nagyalföld=Nagy Magyar Alföld 47.0 20.5 1.2;
 Dunántúl=Transdanubia 46.8 17.8 1.2; Kiskunság=Kis-Kunság=Little Cumania 46.7 19.5 .5; Nagykunság=Kunság=Cumania 47.3
 20.8; Jászság=Jazygia 47.5 19.95; Nyírség=Nyíri 47.9 22.0 .4; Hajdúság 47.6 21.5; Baranya (region)=Baranyai háromszög
 45.9 18.3; Göcsej 46.7 16.7; Őrség (region)=Őrség 46.87 16.4; Sokoró 47.55 17.65; Rábaköz 47.6 17.0; Palócföld 48.1
 19.7; Matyóföld 47.8 20.6; Ormánság 45.87 18.0; Sárköz (region) 46.3 18.75; Baradla=Aggtelek
 cave=Aggteleki-cseppkőbarlang 48.47 20.5
RO: mountain Szilágyság=Sălaj (region)=Sălaj 47.2 23.0 .4;
 Erdély=Siebenbürgen=Transylvania=Ardeal=Transilvania=Siedmiogród 46.5 24.3 1.6; Partium 47.3 22.3 .8
UA: mountain Kárpátalja=Zakarpattia (region)=Subcarpathian Rus=Subcarpathian Ruthenia=Podkarpatská Rus=Carpathian
 Ruthenia=Karpatenland=Kárpátukránia 48.4 23.0 .8
RS: mountain Délvidék=Southern Hungary 45.5 20.0 .8
HR: mountain Muraköz=Međimurje=Murinsel 46.4 16.5
AT: mountain Őrvidék=Burgenland (region) 47.5 16.5
RO UA: mountain Máramaros=Maramureș (region)=Marmarosch=Maramaros 47.8 24.2 .6
RO RS HU: mountain Bánság=Bánát=Banat=Temesköz 45.6 21.2 .8
RO: mountain Székelyföld=Szeklerland=Székely Land=Ținutul Secuiesc 46.3 25.6 .7; Kalotaszeg=Țara Călatei 46.8 23.1;
 Burzenland=Barcaság=Țara Bârsei 45.7 25.6; Mezőség=Câmpia Transilvaniei 46.8 24.1 .4; Csíki-medence=Csíkszék=Csík
 46.35 25.8; Háromszék 45.9 26.0; Gyergyó=Gyergyói-medence 46.7 25.6; Moldoveanu 45.6 24.74; Negoiu 45.585 24.56;
 Omu=Vârful Omu 45.445 25.457; Ceahlău=Toaca 46.98 25.95; Retezat 45.37 22.9; Făgăraș
 Mountains=Fogarasi-havasok=Fogarascher Gebirge=Munții Făgăraș 45.6 24.6 .3; Bucegi=Bucegi Mountains 45.4 25.45;
 Apuseni=Apuseni Mountains=Munții Apuseni 46.5 23.0 .5; Hargita (mountain)=Harghita (mountain)=Hargita 46.43 25.6;
 Gutin=Gutâi 47.7 23.85; Rodna Mountains=Radnai-havasok=Munții Rodnei 47.55 24.85; Tâmpa=Cenk=Zinne 45.635 25.594;
 Semenic 45.18 22.05; Postăvaru=Schuler=Keresztényhavas 45.57 25.57; Bran Castle=Törcsvár=Törzburg=Bran 45.515
 25.367; Predeal Pass 45.5 25.58; Tihuța Pass=Borgo Pass=Borgói-hágó 47.27 24.93; Vatra (mountain) 47.4 25.3;
 Bărăgan=Bărăgan Plain 44.6 27.5 .7; Muntenia=Greater Wallachia=Walachei 44.7 26.0 1; Hațeg 45.6 22.95; Oaș=Țara
 Oașului 47.8 23.4; Valea Jiului=Jiu Valley=Zsil-völgy 45.4 23.3; Prahova Valley=Valea Prahovei 45.4 25.6;
 Nösnerland=Nösnergau 47.1 24.5
RO: lake Lacul Roșu=Gyilkos-tó 46.79 25.79; Lacul Sfânta Ana=Szent Anna-tó 46.126 25.888; Bâlea Lac=Bâlea 45.6
 24.62; Herăstrău=Parcul Herăstrău 44.475 26.08 .02; Medve-tó=Lacul Ursu 46.6 25.08
RO: river Olt=Alt (river)=Aluta 45.0 24.4 1.3; Prut=Pruth=Прут 47.3 27.2 1.6; Siret=Sereth=Сирет 46.5 27.0 1.5;
 Jiu=Schil=Zsil 44.7 23.5 1; Târnava=Küküllő=Kokel=Nagy-Küküllő=Kis-Küküllő=Große Kokel=Târnava Mare=Târnava Mică
 46.2 24.5 .5; Argeș (river) 44.5 25.5; Ialomița (river) 44.7 26.5; Bega=Béga 45.7 21.0; Timiș (river)=Temes
 folyó=Temesch 45.4 21.5; Bistrița (river)=Bistritz (river) 47.2 25.5; Moldova (river) 47.2 26.3; Nera 44.9 21.7;
 Crișul Repede 47.0 22.3; Dâmbovița (river) 44.5 26.0; Iza 47.75 24.1; Cazane=Kazan Gorge=Iron Gates=Iron
 Gate=Porțile de Fier=Vaskapu=Eisernes Tor 44.6 22.3 .3; Danube Delta=Delta Dunării=Donaudelta 45.1 29.3 .5; Bicaz
 Gorge=Cheile Bicazului=Békás-szoros 46.81 25.83; Turda Gorge=Cheile Turzii=Tordai-hasadék 46.56 23.68; Tusnad gorge
 46.1 25.87
RO: island Ada Kaleh=Ada-Kaleh 44.716 22.456
UA RO: mountain Bukowina=Bukovina=Bucovina=Буковина=Buchenland 47.9 25.7 .8
MD UA: mountain Bessarabia=Bessarabien=Basarabia=Бессарабия 47.0 28.7 1.5
RO BG: mountain Dobruja=Dobrogea=Dobrudscha=Dobrudja=Добруджа 44.3 28.2 .8
HR: island Krk=Veglia 45.1 14.6; Cres=Cherso 44.9 14.4; Lošinj=Lussino=Lussin 44.6 14.45; Rab (island)=Arbe 44.77
 14.77; Pag (island)=Pago 44.45 15.0; Brač=Brazza 43.3 16.6; Hvar (island)=Lesina 43.15 16.7; Vis (island)=Lissa=Vis
 43.05 16.15; Korčula (island)=Curzola 42.95 16.9; Mljet=Meleda 42.75 17.5; Lastovo=Lagosta 42.75 16.9;
 Brijuni=Brioni=Brionian Islands 44.92 13.75; Dugi Otok=Isola Lunga 44.0 15.05; Kornati 43.8 15.3; Šolta=Solta 43.38
 16.3; Ugljan 44.1 15.15; Pašman 43.95 15.35; Lokrum=Lacroma 42.626 18.122 .01; Lopud 42.69 17.94; Goli Otok 44.84
 14.82; Čiovo=Bua 43.5 16.3; Pelješac=Sabbioncello 42.95 17.4 .3; Susak=Sansego 44.51 14.3; Murter 43.8 15.6
HR: mountain Velebit 44.5 15.3 .5; Medvednica=Sljeme 45.9 15.97; Biokovo 43.33 17.05; Učka=Monte Maggiore 45.28 14.2;
 Marjan 43.51 16.41 .02; Dinara=Dinaric Alps=Dinaric Mountains 44.06 16.4; Papuk 45.5 17.65; Plitvice Lakes=Plitvička
 jezera=Plitvicer Seen 44.88 15.62; Krka Falls=Slapovi Krke=Skradinski buk 43.8 15.97; Lika 44.6 15.5 .5; Gorski Kotar
 45.35 14.8; Zagorje=Hrvatsko zagorje 46.1 15.9; Podravina 45.9 17.3; Posavina 45.2 17.0 .7; Baranja=Baranya (Croatia)
 45.75 18.6; Kordun 45.2 15.7; Banija=Banovina 45.3 16.2; Dalmatinska zagora 43.7 16.5; Konavle 42.5 18.35;
 Kvarner=Quarnero 44.9 14.5 .4; Bay of Kotor=Boka Kotorska=Bocche di Cattaro=Boka 42.45 18.65; Kupa=Kolpa 45.5 15.5;
 Una 44.9 16.2; Cetina 43.6 16.8; Krka (river) 43.9 16.0; Zrmanja 44.2 15.8
BA HR: mountain Neretva=Narenta 43.3 17.8
SI HR BA RS: mountain Sava=Save=Száva=Sau 45.2 17.0 2
SI: lake Bohinj lake=Bohinjsko jezero=Wocheiner See=Lake Bohinj=Bohinj 46.28 13.86; Cerknica lake=Cerkniško
 jezero=Zirknitzer See 45.75 14.36; Bled lake=Blejski otok 46.36 14.09; Krka (Slovenia)=Gurk 45.85 15.1; Savinja=Sann
 46.3 15.1; Ljubljanica 46.0 14.4; Postojna Cave=Postojnska jama=Adelsberger Grotte 45.783 14.204; Škocjan
 Caves=Škocjanske jame 45.664 13.99; Vršič=Vršič Pass 46.43 13.74; Pohorje=Bachern 46.5 15.4;
 Karavanke=Karawanken=Karawanks 46.45 14.3 .5; Kamnik Alps=Steiner Alpen=Kamniške Alpe 46.35 14.6;
 Prekmurje=Übermurgebiet=Muravidék 46.7 16.2; Gorenjska=Upper Carniola=Oberkrain 46.3 14.2; Dolenjska=Lower
 Carniola=Unterkrain 45.8 14.9; Štajerska=Untersteiermark=Lower Styria 46.5 15.6; Gottschee=Kočevsko=Gottscheerland
 45.6 14.85; Šmarna gora 46.13 14.46; Bela krajina 45.55 15.2; Goriška 46.0 13.7; Bovec basin=Kobarid valley 46.3
 13.55
SI IT: lake Soča=Isonzo=Sontig 46.1 13.6 .4; Julian Alps=Julische Alpen=Julijske Alpe=Alpi Giulie 46.4 13.7 .4;
 Karst=Kras=Carso 45.75 13.8
RS BA ME: river Drina 43.9 19.4 .9
RS: island Zlatibor 43.7 19.7; Nišava 43.2 22.3; Timok 44.1 22.4; Avala 44.69 20.51; Šumadija 44.1 20.8; Ibar 43.3
 20.7; Kopaonik 43.27 20.8; Lim 43.2 19.7; Fruška Gora 45.15 19.7; Srem=Srijem=Szerém=Szerémség=Syrmien 45.1 19.5;
 Sandžak=Sandjak 43.2 20.0
XK: island Kosovo Polje=Kosovo Field 42.65 21.05
BA: island Vrbas (river) 44.5 17.2; Bjelašnica 43.7 18.25; Petrova Gora=Kozara 45.0 16.9; Jahorina 43.73 18.57;
 Sutjeska 43.3 18.65; Romanija 43.9 18.7
RS: river Velika Morava=Morava (Serbia) 44.2 21.1 .7
ME: island Tara 43.1 19.2; Durmitor 43.13 19.03; Lovćen 42.4 18.82; Skadar Lake=Lake Skadar=Skutarisee=Skadarsko
 jezero=Liqeni i Shkodrës 42.2 19.3
XK: island Metohija 42.5 20.5
MK: river Vardar 41.6 21.9 .8
MK: island Kajmakčalan=Kaimakchalan 40.93 21.79; Prespa=Lake Prespa 40.9 21.0
BG GR TR: river Maritsa=Evros=Meriç=Hebrus 41.9 25.6 1.2; Stara Planina=Balkan Mountains=Balkan=the Balkans=Balkan
 Range 42.8 24.8 2
GR BG: river Struma=Strymon 41.8 23.2 .7; Rhodope=Rhodopes=Rhodope Mountains=Rodopi 41.6 24.6 .6
BG: island Iskar 43.0 23.9; Vitosha 42.56 23.28; Rila=Rila Mountains 42.15 23.5; Shipka Pass=Shipka=Schipka 42.75
 25.32; Musala 42.18 23.585; Pirin 41.75 23.4
GR: island Kastellorizo=Castelrosso=Castellorizo 36.14 29.58; Axios 40.9 22.6; Aliakmon 40.2 21.7; Pineios=Peneios 39.7 22.2; Mount Parnassus=Parnassos=Parnass 38.53
 22.62; Mount Ida=Psiloritis 35.23 24.77; Taygetus=Taygetos 36.95 22.35; Hymettus=Ymittos 37.95 23.8; Meteora 39.72
 21.63; Delphi (ruins) 38.48 22.5; Cape Sounion=Sounion=Cape Sunium 37.65 24.02; Marathon plain 38.12 23.95;
 Thermopylae 38.8 22.54; Monemvasia rock 36.69 23.05; Mani=Mani Peninsula=Maina 36.6 22.4; Boeotia 38.4 23.1; Arcadia
 (Greece)=Arkadia 37.5 22.2; Argolis=Argolid 37.6 22.9; Saronic Gulf 37.7 23.4; Corinth Canal 37.935 22.985;
 Zante=Zakynthos 37.8 20.8; Ithaca (Greece)=Ithaki 38.4 20.7; Lefkada=Leucas=Santa Maura 38.7 20.65; Thasos 40.7
 24.7; Naxos 37.05 25.5; Paros 37.07 25.2; Mykonos 37.45 25.35; Santorini=Thira=Thera 36.4 25.43; Delos 37.4 25.27;
 Syros=Syra 37.43 24.92; Hydra (Greece)=Ydra 37.33 23.47; Aegina=Egina 37.73 23.5; Poros (Greece) 37.5 23.5; Spetses
 37.26 23.13; Skyros 38.87 24.53; Kythira=Cerigo 36.25 23.0; Karpathos=Scarpanto 35.6 27.13; Lesbos=Lesvos=Mytilene
 (island)=Midilli 39.2 26.3; Chios (island)=Khios 38.4 26.0; Lemnos=Limnos=Mudros=Moudros 39.9 25.25;
 Samothrace=Samothraki 40.45 25.6; Kos (island)=Cos 36.8 27.1; Kalymnos 37.0 26.97; Leros 37.13 26.85; Patmos 37.32
 26.55; Samos (island) 37.75 26.85
GR: river Lycabettus=Lykavittos 37.98 23.74 .01; Acropolis=Akropolis=the Acropolis 37.971 23.726 .01;
 Chalkidiki=Halkidiki=Chalcidice 40.3 23.5 .4; Attica=Attika 38.0 23.7 .3; Gulf of Corinth 38.2 22.5 .5;
 Corfu=Kerkyra=Korfu=Corfou 39.6 19.8 .3; Cephalonia=Kefalonia=Kephallonia 38.2 20.55 .25; Euboea=Evia=Negroponte
 38.6 23.8 .6; Rhodes (island)=Rodos 36.2 28.0 .3
GR TR BG: river Thrace=Thrakien=Trakya=Thraki 41.4 26.3 .9
GR MK BG: river Macedonia (region) 41.0 22.5 1
GR TR: river Aegean Sea=Aegean=the Aegean=Ägäis=Egeo 38.5 25.2 3
TR: river Sea of Marmara=Marmara=Marmarameer 40.7 28.2 .6; Gallipoli Peninsula=Gallipoli=Gelibolu
 Yarımadası=Suvla=Suvla Bay=Cape Helles=Lone Pine=Chunuk Bair 40.25 26.3 .25; Lake Van 38.6 42.9 .5; Taurus
 Mountains=Toros 37.0 33.0 2; Cilicia=Kilikien 37.0 35.5 .7; Cappadocia=Kappadokien 38.6 34.8 .6;
 Anatolia=Anatolien=Anadolu=Asia Minor=Kleinasien 39.0 33.0 4; Pontus=Pontos=Pontic coast 40.8 38.5 1.5
TR: island Princes' Islands=Prinkipo=Büyükada=Princes Islands 40.87 29.1;
 Golden Horn=Haliç 41.03 28.95; Uludağ=Mysian Olympus=Mount Uludag 40.07 29.22; Musa Dagh=Musa Dağ 36.1 35.95;
 Imbros=Imroz=Gökçeada 40.17 25.85; Tenedos=Bozcaada 39.82 26.05
CY: island Cyprus coast 35.0 33.0
GR IT: river Ionian Sea 38.5 18.5 2
AL: island Vjosa=Vjosë 40.3 20.0
IT: lake Lake Iseo=Lago d'Iseo=Iseosee 45.72 10.07; Lake Orta=Lago d'Orta 45.82 8.4; Lake Trasimeno=Lago
 Trasimeno=Trasimeno 43.13 12.1; Lake Bolsena=Lago di Bolsena 42.6 11.93; Lake Bracciano=Lago di Bracciano 42.12
 12.23; Lake Varese=Lago di Varese 45.82 8.73; Lago di Braies=Pragser Wildsee 46.694 12.085; Kalterer See=Lago di
 Caldaro 46.38 11.26; Lake Idro=Lago d'Idro 45.77 10.52; Lago di Albano=Lake Albano=Lago di Nemi 41.75 12.67; Lago di
 Molveno=Lago di Ledro=Lago di Toblino 46.1 10.9; Reschensee=Lago di Resia 46.81 10.53; Lago di Misurina=Misurina
 46.58 12.25; Lago di Fusaro=Lago d'Averno 40.83 14.07
IT: river Arno=l'Arno=River Arno 43.75 11.0 .6; Adige=Etsch=l'Adige 46.0 11.1 .9; Piave=il Piave=River Piave 46.0
 12.4 .5; Tagliamento 46.1 12.9; Adda=l'Adda 45.8 9.4; Mincio 45.2 10.75; Oglio 45.4 10.0; Brenta=il Brenta 45.6
 11.7; Tanaro 44.8 8.2; Dora Baltea 45.6 7.5; Sesia 45.6 8.4; Reno (Italy) 44.5 11.3; Metauro 43.7 12.7; Volturno
 41.2 14.1; Garigliano=Rapido=Liri 41.5 13.8; Sangro 42.0 14.4; Ofanto 41.1 15.8; Rubicon=Rubicone 44.1 12.3; Sile
 45.65 12.2; Eisack=Isarco 46.7 11.6; Passirio=Passer 46.75 11.2; Serchio 44.0 10.4; Trebbia 44.8 9.5;
 Navigli=Naviglio Grande 45.45 9.17 .05; Grand Canal (Venice)=Canal Grande=Canalazzo 45.438 12.33 .02
IT CH: river Ticino (river)=il Ticino 45.4 8.8
IT: island Capri=Isola di Capri 40.55 14.23; Ischia=Isola d'Ischia 40.73 13.9; Procida 40.76 14.02; Elba=Isola
 d'Elba 42.77 10.25; Giglio=Isola del Giglio 42.36 10.9; Ponza 40.9 12.96; Ventotene 40.8 13.43; Lipari=Aeolian
 Islands=Isole Eolie=Lipari Islands=Liparische Inseln 38.5 14.93 .3; Vulcano 38.4 14.97; Salina 38.56 14.83;
 Pantelleria 36.78 11.98; Lampedusa 35.51 12.6; Ustica 38.71 13.18; Favignana=Egadi=Isole Egadi 37.93 12.33; Murano
 45.459 12.353 .01; Burano 45.485 12.417 .01; Torcello 45.498 12.418 .01; Lido di Venezia=the Lido=Lido (Venice) 45.4
 12.36 .06; Giudecca=la Giudecca 45.425 12.327 .01; San Giorgio Maggiore 45.429 12.343 .005; Isola Bella=Borromean
 Islands=Isole Borromee=Isola Madre=Isola dei Pescatori 45.9 8.53 .02; La Maddalena=Maddalena 41.22 9.41; Caprera
 41.2 9.46; Asinara 41.06 8.27; Gorgona=Capraia=Montecristo=Pianosa 42.9 9.9 .6; Grado (lagoon) 45.69 13.38; Isole
 Tremiti=Tremiti 42.12 15.5; San Michele (island) 45.447 12.347 .005; San Lazzaro degli Armeni 45.412 12.361 .005
IT: mountain Gran Sasso=Gran Sasso d'Italia 42.47 13.57; Gran Paradiso 45.52 7.27; Monviso=Monte Viso 44.67 7.09;
 Marmolada 46.43 11.85; Tre Cime di Lavaredo=Drei Zinnen=Tre Cime 46.62 12.3; Monte Grappa=Mount Grappa 45.87 11.8;
 Monte Cassino=Montecassino 41.49 13.81; Monte Baldo 45.73 10.85; Monte Pasubio=Pasubio 45.79 11.18; Adamello 46.16
 10.5; Monte Amiata 42.89 11.62; Monte Circeo=Circeo 41.23 13.05; Monte Conero=Conero 43.55 13.6; Monte Bondone 46.0
 11.05; Monte Pellegrino 38.17 13.35; Monte Argentario=Argentario 42.4 11.15; Schlern=Sciliar 46.51 11.57;
 Rosengarten=Catinaccio 46.46 11.62; Stelvio=Stelvio Pass=Stilfser Joch=Passo dello Stelvio 46.53 10.45; Mont
 Cenis=Moncenisio 45.25 6.9; Superga 45.08 7.77 .01; Seiser Alm=Alpe di Siusi 46.54 11.65; Sila=la Sila 39.3 16.5;
 Aspromonte 38.15 15.95; Pollino 39.9 16.2; Maiella=Majella 42.08 14.1; Gargano 41.8 15.9 .3;
 Apennines=Appennini=Appennino=Apenninen=Apennin 43.0 12.8 2.5; Dolomites=Dolomiti=Dolomiten=the Dolomites 46.4 11.9
 .5; Langhe=le Langhe=Monferrato 44.7 8.1 .3; Chianti 43.5 11.3; Maremma 42.6 11.2 .5; Garfagnana 44.15 10.4;
 Lunigiana 44.25 10.0; Versilia 43.9 10.25; Mugello 43.95 11.4; Casentino 43.75 11.8; Cinque Terre=le Cinque Terre
 44.12 9.7; Riviera=Italian Riviera=Riviera di Ponente=Riviera di Levante=Riviera ligure 44.1 8.8 .8; Val
 d'Aosta=Valle d'Aosta=Aosta Valley 45.7 7.3 .4; Val Gardena=Gröden=Grödnertal 46.56 11.72; Val di Fassa=Fassatal
 46.42 11.7; Val Camonica=Valcamonica 46.0 10.3 .4; Valtellina=Veltlin 46.2 9.9 .5; Brianza=la Brianza 45.72 9.25;
 Polesine 45.05 11.8 .4; Carnia 46.4 13.0 .3; Cadore 46.45 12.3; Altopiano di Asiago=Asiago plateau=Sette Comuni 45.9
 11.5; Euganean Hills=Colli Euganei 45.3 11.7; Castelli Romani=Alban Hills=Colli Albani 41.75 12.7; Agro
 Pontino=Pontine Marshes=Paludi Pontine 41.4 13.0 .3; Campagna Romana=Roman Campagna 41.9 12.5 .4; Ciociaria 41.6
 13.4; Cilento 40.3 15.2 .3; Salento 40.2 18.1 .4; Terra di Bari=Murgia 41.0 16.7; Costa Smeralda 41.1 9.5; Barbagia
 40.1 9.3; Conca d'Oro 38.1 13.3; Amalfi Coast=Costiera Amalfitana=Costa Amalfitana 40.63 14.6; Gennargentu 40.0 9.3;
 South Tyrol (valley)=Überetsch=Südtirol (Überetsch) 46.4 11.27; Anzio beachhead 41.5 12.65; Blue Grotto=Grotta
 Azzurra 40.56 14.205 .01; Campi Flegrei=Phlegraean Fields 40.83 14.13
IT: sea Gulf of Naples=Bay of Naples=Golfo di Napoli 40.75 14.25 .2; Gulf of Genoa=Golfo di Genova=Ligurian Sea=Mar
 Ligure 44.1 8.9 .6; Gulf of Trieste=Golfo di Trieste 45.6 13.6; Gulf of Taranto=Golfo di Taranto 40.0 17.2 .6;
 Strait of Messina=Straits of Messina=Stretto di Messina 38.2 15.6; Venetian Lagoon=Laguna di Venezia=Laguna=Lagoon
 of Venice 45.4 12.3; Tyrrhenian Sea=Mar Tirreno=Tirreno 40.0 12.5 2; Gulf of Salerno=Golfo di Salerno 40.5 14.8;
 Gulf of La Spezia=Golfo dei Poeti=Golfo della Spezia 44.05 9.85; Tigullio=Golfo del Tigullio 44.3 9.25
IT FR ES GR HR TR EG IL LB TN DZ MA MT CY: sea Mediterranean=Mediterranean
 Sea=Mittelmeer=Méditerranée=Mediterraneo=the Med=Vahemeri 38.0 15.0 8
FR: lake Lac d'Annecy=Lake Annecy 45.86 6.17; Lac du Bourget=Lake Bourget 45.73 5.87; Lac de Gérardmer 48.07 6.85;
 Lac d'Aiguebelette 45.55 5.8; Étang de Thau=Bassin de Thau 43.4 3.6; Étang de Berre 43.45 5.1; Lac de Serre-Ponçon
 44.52 6.35; Lac de Sainte-Croix 43.77 6.18; Lac de Gaube=Lac d'Oô 42.8 -.1; Lac Pavin 45.495 2.888; Étang de
 Vaccarès 43.53 4.57; Lac de Saint-Point 46.8 6.3; Lac de Lacanau 44.97 -1.12
FR: river Garonne=la Garonne 44.2 .3 1.2; Dordogne (river)=Dordogne=la Dordogne 45.0 1.2 .9; Saône=la Saône 46.6 4.9
 .9; Marne=la Marne=River Marne 48.9 3.8 1; Somme=la Somme=River Somme=the Somme 49.97 2.4 .5; Oise (river) 49.5 2.8;
 Aisne (river)=River Aisne 49.35 3.6; Doubs (river) 47.2 6.2; Isère (river) 45.2 5.6; Durance 43.9 5.8 .6; Lot
 (river)=le Lot 44.5 1.7; Tarn (river)=le Tarn=Gorges du Tarn 44.0 2.0 .6; Allier (river)=l'Allier 46.0 3.3 .9; Cher
 (river)=le Cher 47.0 1.7; Indre (river) 47.1 1.0; Vienne (river) 46.7 .6; Charente (river)=la Charente 45.7 -.2;
 Adour=l'Adour 43.6 -.8; Gironde (estuary)=Gironde estuary 45.3 -.8; Vilaine 47.7 -1.9; Rance=la Rance 48.5 -2.0;
 Orne (river) 49.0 -.3; Eure (river) 48.9 1.4; Yonne (river) 48.0 3.4; Aube (river) 48.3 4.2; Ardèche (river)=Gorges
 de l'Ardèche 44.4 4.4; Verdon=Gorges du Verdon 43.75 6.4; Var (river) 43.9 7.1; Hérault (river) 43.7 3.5; Aude
 (river) 43.1 2.4; Aveyron (river) 44.2 2.0; Corrèze (river) 45.2 1.7; Creuse (river) 46.4 1.7; Mayenne (river) 47.9
 -.7; Sarthe (river) 47.9 -.1; Ill (river) 48.4 7.5; Canal du Midi 43.4 2.2 .7; Canal Saint-Martin 48.873 2.364 .01;
 Ancre=River Ancre 50.05 2.65; Cousin (river) 47.5 3.9; Loir (river) 47.8 .8
FR: island Île de Ré=Ile de Ré=Isle of Re 46.2 -1.42; Île d'Oléron=Oléron=Ile d'Oléron 45.93 -1.3;
 Belle-Île=Belle-Île-en-Mer=Belle Ile 47.33 -3.18; Noirmoutier=Île de Noirmoutier 47.0 -2.25; Île d'Yeu 46.72 -2.35;
 Ouessant=Ushant=Île d'Ouessant 48.46 -5.1; Île de Groix=Groix 47.64 -3.46; Île de Bréhat=Bréhat 48.85 -3.0; Île de
 Sein 48.04 -4.85; Porquerolles=Îles d'Hyères 43.0 6.2; Île du Levant=Port-Cros 43.02 6.45; Château d'If=Frioul 43.28
 5.325; Île Sainte-Marguerite=Îles de Lérins=Lérins 43.52 7.05; Île Saint-Louis 48.852 2.357 .005; Île de la Cité
 48.855 2.347 .005; Île d'Aix 46.01 -1.17; Mont-Saint-Michel=Mont Saint-Michel=Le Mont-Saint-Michel 48.636 -1.511;
 Chausey=Îles Chausey 48.88 -1.83; Camargue=la Camargue 43.5 4.5 .3; Crozon=Presqu'île de Crozon 48.25 -4.5;
 Cotentin=Cotentin Peninsula 49.4 -1.6 .3; Quiberon (peninsula)=Presqu'île de Quiberon 47.5 -3.13
FR: mountain Puy de Dôme=Puy-de-Dôme (mountain) 45.772 2.964; Mont Ventoux=Ventoux 44.174 5.278; Ballon d'Alsace
 47.82 6.85; Grand Ballon=Hartmannswillerkopf=Vieil Armand 47.9 7.1; Hohneck 48.04 7.02; Mont Aigoual=Aigoual 44.12
 3.58; Mont Sainte-Odile=Odilienberg 48.438 7.404; Canigou=Pic du Canigou 42.52 2.457; Pic du Midi=Pic du Midi de
 Bigorre 42.937 .14; Vignemale 42.774 -.147; Aiguille du Midi=Mer de Glace 45.88 6.9; Meije=la Meije 45.005 6.31;
 Barre des Écrins 44.92 6.36; Sainte-Victoire=Montagne Sainte-Victoire 43.53 5.6; Plomb du Cantal=Puy Mary 45.08 2.7;
 Mont Dore (massif)=Puy de Sancy 45.53 2.81; Ménez-Hom 48.22 -4.23; Cirque de Gavarnie=Gavarnie 42.7 0; Mont Valérien
 48.873 2.213 .01; Butte Montmartre=Sacré-Cœur 48.887 2.343 .01; Vimy Ridge=Vimy (ridge)=Crête de Vimy 50.37 2.77;
 Notre-Dame de Lorette 50.4 2.72; Chemin des Dames 49.44 3.75; Douaumont=Fort de Douaumont=Mort-Homme 49.22 5.43; Cap
 Gris-Nez=Cap Blanc-Nez 50.87 1.58; Cap Fréhel 48.68 -2.32; Pointe du Raz 48.04 -4.74; Cap d'Antibes 43.55 7.13; Cap
 Ferrat=Cap-Ferrat 43.68 7.33; Col du Galibier=Galibier 45.06 6.41; Col du Tourmalet=Tourmalet 42.91 .145; Dune du
 Pilat=Pyla 44.59 -1.21; Étretat cliffs 49.71 .2; Vosges=les Vosges=Vogesen=the Vosges 48.2 7.0 .6; Cévennes=les
 Cévennes 44.2 3.7 .5; Massif Central=Auvergne mountains 45.2 2.9 1.2; Vercors 44.95 5.45 .3; Chartreuse=Grande
 Chartreuse=Massif de la Chartreuse 45.35 5.8; Luberon=le Luberon=Lubéron 43.8 5.4; Alpilles=les Alpilles 43.75 4.85;
 Estérel 43.48 6.9; Maures=Massif des Maures 43.25 6.35; Corbières 42.95 2.6; Morvan=le Morvan 47.1 4.0 .4;
 Sologne=la Sologne 47.5 2.0 .4; Beauce=la Beauce 48.1 1.7 .5; Brie=la Brie 48.65 3.1 .4; Perche=le Perche 48.4 .7;
 Landes=les Landes=Landes de Gascogne 44.2 -.8 .6; Médoc 45.2 -.9; Périgord 45.0 .8 .6; Quercy 44.5 1.5; Rouergue
 44.3 2.6; Béarn 43.3 -.5; Pays Basque=French Basque Country=Labourd=Iparralde 43.3 -1.3; Roussillon 42.6 2.7;
 Limousin 45.8 1.6 .7; Berry=le Berry 46.9 2.1 .7; Bourbonnais 46.4 3.1; Forez 45.7 4.0; Velay 45.1 3.9; Vivarais
 44.7 4.4; Bresse=la Bresse 46.5 5.2; Dombes 46.0 5.0; Bugey 45.9 5.6; Beaujolais 46.1 4.65; Dauphiné=le Dauphiné
 45.0 5.6 .9; Comtat Venaissin=Vaucluse (region) 44.0 5.1; Artois=l'Artois 50.4 2.5 .5; Boulonnais 50.7 1.8; Vexin
 49.1 1.9; Pays de Caux 49.6 .6; Pays d'Auge 49.1 .2; Bocage normand=Suisse normande 48.9 -.6 .4; Finistère
 coast=Cornouaille 48.0 -4.2; Léon=Pays de Léon 48.5 -4.2; Trégor 48.7 -3.3; Vendée coast=Marais poitevin 46.3 -.9;
 Saintonge 45.8 -.7; Aunis 46.2 -.8; Angoumois 45.7 .2; Touraine 47.2 .8 .5; Anjou 47.4 -.5 .6; Poitou 46.6 .2 .8;
 Gâtinais 48.0 2.7; Argonne=the Argonne=Forêt d'Argonne 49.2 5.0; Champagne (region)=la Champagne 49.0 4.1 .8;
 Flandre française=French Flanders 50.7 2.7 .4; Sundgau 47.55 7.2; Côte d'Azur=Cote d'Azur=French Riviera=the Riviera
 43.5 7.0 .5; Bois de Boulogne 48.863 2.25 .02; Bois de Vincennes 48.83 2.435 .02; Forêt de Fontainebleau 48.4 2.65;
 Forêt de Compiègne 49.35 2.9; Forêt de Brocéliande=Paimpont (forest) 48.0 -2.25; Savoie (region)=Haute-Savoie
 mountains 45.7 6.5; Tarentaise 45.5 6.7; Maurienne 45.25 6.5; Ubaye 44.4 6.6; Queyras 44.75 6.8; Les
 Calanques=Calanques 43.21 5.45; Omaha Beach=Utah Beach=Gold Beach=Juno Beach=Sword Beach 49.36 -.75 .4
FR ES AD: mountain Pyrenees=Pyrénées=the Pyrenees=Pirineos=Pyrenäen=Pirineus=Pirenei 42.7 .7 2
CH AT FR IT DE SI: mountain Alps=the Alps=Alpen=Alpes=Alpi=les Alpes=Alpy 46.2 9.5 4
FR: sea Baie de Somme=Somme Bay 50.2 1.6; Golfe du Morbihan=Gulf of Morbihan 47.58 -2.83; Baie de Seine=Seine Bay
 49.5 -.3; Bassin d'Arcachon=Arcachon Bay 44.7 -1.15; Golfe de Saint-Tropez 43.28 6.65; Rade de Brest=Brest roads
 48.33 -4.45; Golfe du Lion=Gulf of Lion 43.0 4.0 .8; Baie de Quiberon 47.53 -3.0; Baie des Anges 43.68 7.24
FR GB: sea Pas de Calais (strait)=Strait of Dover=Straits of Dover=Dover Strait 51.0 1.5
ES: river Ebro=Río Ebro=l'Ebre=el Ebro=River Ebro 41.7 -.9 1.5; Guadalquivir=Río Guadalquivir 37.7 -5.0 1.5;
 Llobregat 41.6 1.9; Segre 42.0 1.0; Júcar=Xúquer 39.2 -1.0; Turia 39.7 -1.0; Segura 38.1 -1.3; Manzanares (river)
 40.5 -3.7; Jarama 40.3 -3.5; Sella 43.3 -5.1; Nervión=Ría de Bilbao 43.3 -3.0; Nalón 43.3 -5.8; Genil 37.3 -4.3;
 Tormes 40.8 -5.8; Pisuerga 42.2 -4.4; Ter 42.1 2.7
ES PT: river Duero=Douro=Rio Douro=Río Duero 41.3 -5.5 2.5; Tajo=Tagus=Tejo=Rio Tejo=Río Tajo 39.8 -5.0 3; Guadiana
 38.8 -6.0 2; Miño=Minho=Rio Minho 42.2 -8.0 .8
ES FR: river Bidasoa=Bidassoa 43.3 -1.75
ES: island Mallorca=Majorca=Maiorca 39.6 3.0 .5; Menorca=Minorca 39.95 4.1 .25; Ibiza=Eivissa 39.0 1.4; Formentera
 38.7 1.45; Cabrera 39.14 2.95; Balearic Islands=Baleares=Islas Baleares=Illes Balears=Balearen 39.5 2.8 1.2;
 Tenerife=Teneriffa=Teneriffe 28.3 -16.6 .3; Gran Canaria=Grand Canary 28.0 -15.6 .25; Lanzarote 29.0 -13.6 .25;
 Fuerteventura 28.4 -14.0 .4; La Palma=Isla de La Palma 28.7 -17.85; La Gomera=Gomera 28.1 -17.2; El Hierro=Hierro
 27.75 -18.0; Canary Islands=Canaries=the Canaries=Canarias=Islas Canarias=Kanarische Inseln 28.3 -15.8 1.2; Tabarca
 38.165 -0.47; Islas Cíes=Cies Islands 42.22 -8.9; Isla de la Toja=La Toja 42.48 -8.85; Isla de Arosa 42.55 -8.87
ES: mountain Teide=Mount Teide=Pico del Teide 28.27 -16.64; Montserrat=Monastery of Montserrat 41.6 1.81; Tibidabo
 41.42 2.12 .01; Montjuïc=Montjuich 41.364 2.158 .02; Mulhacén 37.05 -3.31; Peñón de Ifach=Penyal d'Ifac 38.63 .075;
 Monte Igueldo=Igueldo 43.317 -2.01; Urgull=Monte Urgull 43.325 -1.99; Aneto 42.63 .66; Monte Perdido=Ordesa 42.67
 .03; Gorbea=Gorbeia 43.03 -2.78; Moncayo 41.79 -1.84; Naranjo de Bulnes 43.2 -4.82; Covadonga=Lagos de Covadonga
 43.31 -5.05; Roncesvalles=Roncevaux=Ibañeta 43.01 -1.32; Somosierra=Navacerrada=Puerto de Navacerrada 40.8 -4.0 .3;
 Monte do Gozo 42.89 -8.49; Cabo Finisterre=Cape Finisterre=Fisterra 42.88 -9.27; Cabo de Gata 36.72 -2.19; Cabo
 Trafalgar=Cape Trafalgar 36.18 -6.03; Cabo de Palos 37.63 -.69; Sierra Nevada (Spain) 37.1 -3.2 .3; Sierra de
 Guadarrama=Guadarrama (sierra)=Sierra de Madrid 40.8 -4.0 .4; Sierra de Gredos=Gredos 40.25 -5.2; Sierra Morena 38.3
 -4.0 1.2; Picos de Europa 43.2 -4.8; Cordillera Cantábrica 43.0 -5.5 1.2; Serranía de Ronda 36.7 -5.1;
 Alpujarras=las Alpujarras=La Alpujarra 36.9 -3.2; Costa Brava 41.9 3.1 .4; Costa del Sol 36.6 -4.6 .5; Costa Blanca
 38.4 -.2 .5; Costa Dorada=Costa Daurada 41.1 1.2; La Mancha=Mancha 39.2 -3.0 1; Tierra de Campos 42.1 -5.0; Las
 Hurdes=Hurdes 40.4 -6.3; La Rioja Alta 42.5 -2.8; Alcarria=La Alcarria 40.5 -2.8; Maestrazgo=Maestrat 40.5 -.3;
 Ampurdán=Empordà=Alt Empordà 42.2 3.0; Priorat=Priorato 41.15 .85; Penedès=Penedés 41.35 1.6;
 Cerdanya=Cerdaña=Cerdagne 42.4 1.9; Val d'Aran=Valle de Arán=Vall d'Aran 42.7 .8; Baztan=Valle de Baztán 43.15 -1.5;
 Liébana 43.15 -4.6; Rías Baixas=Rías Bajas 42.4 -8.8 .4; Extremadura (region) 39.2 -6.2 1.2; Ebro Delta=Delta del
 Ebro 40.72 .75; Doñana=Coto de Doñana 37.0 -6.45; Ría de Arousa=Ría de Vigo=Ría de Pontevedra 42.4 -8.8; Bahía de
 Cádiz=Bay of Cadiz 36.55 -6.25; Bay of Palma=Bahía de Palma 39.5 2.65; La Concha=Playa de la Concha 43.317 -1.99
 .01; Mar Menor 37.73 -.78; Gibraltar Rock=Rock of Gibraltar=the Rock 36.14 -5.345 .02; Strait of Gibraltar=Straits
 of Gibraltar=Estrecho de Gibraltar 35.95 -5.6
PT: island Madeira=Ilha da Madeira 32.75 -17.0 .25; Porto Santo 33.07 -16.34; Azores=Açores=the Azores=Azoren 38.5
 -28.0 2; São Miguel=Sao Miguel 37.8 -25.5; Terceira 38.73 -27.2; Faial=Fayal 38.57 -28.7; Pico (island)=Ilha do Pico
 38.47 -28.35; São Jorge=Sao Jorge 38.65 -28.05; Flores (Azores)=Ilha das Flores 39.45 -31.2; Graciosa (Azores) 39.05
 -28.0; Santa Maria (Azores) 36.97 -25.1; Corvo 39.7 -31.1; Berlengas 39.41 -9.51
PT: mountain Serra da Estrela=Torre (Serra da Estrela) 40.33 -7.6; Sintra hills=Serra de Sintra 38.79 -9.43;
 Gerês=Serra do Gerês=Peneda-Gerês 41.75 -8.15; Marão=Serra do Marão 41.25 -7.88; Arrábida=Serra da Arrábida 38.48
 -8.98; Bom Jesus=Bom Jesus do Monte 41.555 -8.377 .01; Buçaco=Bussaco 40.376 -8.365; Cabo da Roca=Cape Roca 38.78
 -9.5; Cabo de São Vicente=Cape St Vincent 37.02 -9.0; Cabo Espichel 38.415 -9.216; Mondego=Rio Mondego 40.2 -8.3;
 Sado=Rio Sado 38.3 -8.5; Vouga 40.6 -8.4; Tâmega 41.3 -8.0; Alentejo 38.2 -7.9 1; Algarve=the Algarve 37.2 -8.2 .4;
 Ribatejo 39.2 -8.5 .5; Estremadura (Portugal) 39.2 -9.0; Beira=Beira Alta=Beira Baixa=Beira Litoral 40.3 -7.8 .8;
 Trás-os-Montes=Tras os Montes 41.5 -7.0 .6; Minho (region) 41.7 -8.4; Ria de Aveiro 40.7 -8.68; Ria Formosa 37.0
 -7.85; Estoril Coast=Costa do Estoril 38.7 -9.4; Costa da Caparica beach 38.63 -9.24; Douro Valley=Vale do Douro
 41.15 -7.6
MT: island Gozo=Għawdex 36.05 14.25; Comino 36.01 14.34; Grand Harbour=Marsamxett 35.893 14.517 .02; Spinola=St
 Julian's Bay 35.918 14.49 .01; Dingli Cliffs 35.85 14.38
RU: village Переделкино 55.66 37.35
RU: lake Lake Ilmen=Ilmen=Ильмень=озеро Ильмень 58.27 31.3; Lake Seliger=Seliger=Селигер=озеро Селигер 57.25 33.05;
 Lake Svetloyar=Светлояр 56.82 45.09; White Lake (Russia)=Белое озеро=Beloye Ozero=Белоозеро 60.2 37.6; Lake
 Vyg=Выгозеро 63.6 34.7; Imandra=Имандра 67.6 32.9; Lake Chany=Чаны 54.8 77.4; Teletskoye=Телецкое озеро=Telezker See
 51.55 87.7; Turgoyak=Тургояк 55.15 60.05; Lake Taymyr=Таймыр 74.5 102.5; Pleshcheyevo=Плещеево озеро 56.77 38.78;
 Lake Pskov=Псковское озеро=Pihkva järv 58.05 28.0; Lake Khanka=Ханка 45.0 132.4; Valdai lake=Валдайское озеро=Валдай
 озеро 57.98 33.28; Shlisselburg bay 59.95 31.1
AM: lake Lake Sevan=Севан=Sevan 40.35 45.3
KG: lake Issyk-Kul=Иссык-Куль=Issyk Kul 42.4 77.2
KZ UZ: lake Aral Sea=Аральское море=Aralsee=Арал 45.0 60.0 1
KZ: lake Lake Balkhash=Балхаш озеро 46.5 74.5 1
RU: river Oka=Ока 55.0 39.5 2; Kama=Кама=the Kama 57.5 55.0 2.5; Ob=Обь=the Ob 60.0 75.0 7;
 Yenisei=Енисей=Jenissei=Yenisey 62.0 90.0 9; Lena=Лена (река)=река Лена=Lena River=the Lena 64.0 123.0 7;
 Angara=Ангара 57.0 102.0 3; Kuban (river)=река Кубань=Кубань река 45.2 40.0 1.5; Terek (river)=Терек=река Терек 43.5
 45.5 1; Moskva River=Москва-река=Moscow River=Moskwa (river) 55.5 37.5 .8; Northern Dvina=Северная Двина=Nördliche
 Dwina 63.0 43.5 1.8; Pechora=Печора река=Petschora 65.5 56.0 2.5; Onega river=Онега река 62.5 39.0; Svir=Свирь=Swir
 60.8 34.0; Volkhov (river)=Волхов=Wolchow 59.0 31.7; Luga (river)=Луга река 59.0 30.0; Izhora=Ижора 59.6 30.6;
 Fontanka=Фонтанка 59.93 30.33 .03; Moika=Мойка 59.93 30.31 .03; Sestra=Сестра река 60.1 30.0; Velikaya=Великая
 река=река Великая 57.0 28.7 .8; Msta=Мста 58.4 32.8; Vyatka (river)=Вятка река 58.0 50.0; Belaya=Белая река=река Белая
 54.5 56.0; Tobol=Тобол 55.5 66.0 2; Tom=Томь 55.5 86.0; Selenga=Селенга 51.0 107.0; Shilka=Шилка река 52.5 117.5;
 Ussuri=Уссури 46.5 134.2; Kolyma=Колыма 65.5 152.0 4; Indigirka=Индигирка 67.5 146.0 3; Aldan=Алдан река 60.5 131.0 2;
 Vychegda=Вычегда 62.0 50.0; Sukhona=Сухона 60.0 43.0; Mologa=Молога 58.5 36.5; Sheksna=Шексна река 59.2 38.3; Tsna=Цна
 53.5 41.8; Khopyor=Хопёр=Хопер 51.5 42.5; Medveditsa=Медведица 50.5 44.5; Moscow Canal=Канал имени Москвы 56.3 37.4;
 White Sea Canal=Беломорканал=Belomorkanal 63.3 34.5 1; Klyazma=Клязьма 56.0 40.5; Nerl=Нерль 56.3 40.4; Sura=Сура 54.5
 46.0; Sakmara=Сакмара 52.0 57.0; Chusovaya=Чусовая 57.5 59.0
RU UA: river Vorskla=Ворскла 50.0 34.5
KZ RU: river Ilek=Илек 51.0 54.0
RU KZ: river Irtysh=Иртыш=Irtysch 56.0 72.0 5; Ural=Урал река=Ural River=река Урал 50.5 54.0 3.5
RU CN: river Amur=Амур=the Amur 50.0 130.0 5
KZ RU: river Ishim (river)=Ишим река 53.0 69.0
UA RU: river Donets=Северский Донец=Северский Донец=Donez=Siverskyi Donets=Seversky Donets 49.0 38.0 1.5;
 Desna=Десна 52.0 32.8 1.5; Psel=Псел=Псёл 50.0 34.0
RU UA: river Seym=Сейм 51.5 35.0
RU: island Sakhalin=Сахалин=Sachalin 50.5 142.9 4.3; Valaam=Валаам=Valamo 61.38 30.95; Kizhi=Кижи 62.08 35.22;
 Solovki=Соловки=Solovetsky Islands=Соловецкие острова=Solowezki 65.08 35.7; Kotlin=Котлин=Kronstadt island 60.0
 29.73; Novaya Zemlya=Новая Земля=Nowaja Semlja 74.0 57.0 3.5; Franz Josef Land=Земля Франца-Иосифа 80.7 55.0 1.5;
 Wrangel Island=остров Врангеля 71.2 -179.0 .6; Vasilyevsky Island=Васильевский остров=Vasilievsky
 Island=Wassiljewski-Insel=Wassili-Ostrow 59.94 30.25 .03; Krestovsky Island=Крестовский остров=Елагин остров=Yelagin
 Island=Каменный остров 59.97 30.25 .02; Olkhon=Ольхон 53.15 107.4 .3; Big Diomede 65.78 -169.06; Commander
 Islands=Командорские острова 55.0 166.5; Russky Island=остров Русский 43.0 131.85; Kolguyev=Колгуев 69.1 49.0;
 Vaygach=Вайгач 70.0 59.5; Suursaari=Hogland=Гогланд 60.05 27.0; Lavansaari=Мощный 60.0 27.83; Seskar=Seiskari 60.03
 28.37; Tyutersaari=Tytärsaari 59.85 27.2; Koivisto (islands)=Берёзовые острова 60.3 28.9
UA: mountain Ai-Petri=Ай-Петри 44.45 34.06; Hoverla=Говерла=Howerla 48.16 24.5; Ai-Petri
 (Crimea)=Ayu-Dag=Аюдаг=Аю-Даг 44.56 34.33; Chatyr-Dag=Чатырдаг 44.75 34.3; Malakhov Kurgan=Малахов курган 44.604
 33.549; Chersonesos=Херсонес=Chersonese 44.61 33.49; Chornohora=Чорногора=Czarnohora 48.1 24.5; Gorgany=Gorgany
 mountains=Горгани 48.6 24.1; Hutsulshchyna=Hutsul region=Гуцульщина=Huculszczyzna=Huzulen 48.2 24.8;
 Boikivshchyna=Бойківщина 49.0 23.1; Podolia=Поділля=Подолия 49.0 27.5 1.2;
 Slobozhanshchyna=Слобожанщина=Sloboda Ukraine 50.0 36.3 1; Zaporozhia steppe=Запорожье
 степь=Khortytsia=Хортиця=Хортица=Chortitza island 47.85 35.07; Molotschna=Молочна=Molochna=Molotschnaja 47.1 35.6;
 Chortitza=Chortitza colony 47.85 35.0; Arabat Spit=Арабатская стрелка 45.7 35.0; Perekop=Перекоп 46.15 33.7;
 Tavria=Таврия=Taurien=Таврида 46.5 33.5 1; Budjak=Буджак=Budschak=Bugeac 45.9 29.3 .5; Kiev Mountains=Vladimir
 Hill=Володимирська гірка=Владимирская горка 50.456 30.527 .01; Kiev Pechersk Lavra=Киево-Печерская
 лавра=Києво-Печерська лавра 50.434 30.559 .01; Chernobyl zone 51.4 30.1; Khreshchatyk=Крещатик=Хрещатик 50.447
 30.522 .01
RU: mountain Belukha=Белуха 49.8 86.59; Mashuk=Машук 44.05 43.09; Beshtau=Бештау 44.1 43.02; Dombay=Домбай 43.29 41.62;
 Yaman-Tau=Ямантау 54.25 58.1; Taganay=Таганай 55.3 59.8; Mount Narodnaya=Народная гора 65.03 60.12; Klyuchevskaya
 Sopka=Ключевская сопка 56.06 160.64; Mamayev Kurgan=Мамаев курган=Mamai Hill 48.742 44.537 .01; Sparrow
 Hills=Воробьёвы горы=Воробьевы горы=Ленинские горы=Lenin Hills 55.71 37.55 .02; Poklonnaya Hill=Поклонная гора 55.73
 37.5 .02; Zhiguli=Жигули=Жигулёвские горы 53.4 49.5 .3; Khibiny=Хибины 67.7 33.7 .3; Ural Mountains=the
 Urals=Урал=Ural Gebirge=Уральские горы=Urals=Уральские горы 58.0 59.5 5; Altai=Алтай=Altai Mountains=Altaj 50.5 87.0
 2; Sayan=Саяны=Sayan Mountains 53.0 95.0 2; Georgian Military Road=Военно-Грузинская дорога=Grusinische Heerstraße
 42.5 44.6 .5; Valdai Hills=Валдайская возвышенность 57.5 33.0 .8; Kola Peninsula=Кольский полуостров=Kola=Halbinsel
 Kola 67.5 36.0 2; Kamchatka=Камчатка=Kamtschatka 56.0 159.5 4; Chukotka=Чукотка 66.5 -175.0 4; Taman
 Peninsula=Таманский полуостров=Taman 45.2 36.8; Taymyr Peninsula=Таймырский полуостров 74.0 100.0 3; Yamal=Ямал 70.5
 70.0 2; Siberia=Сибирь=Sibirien=Siber=Sybir=Sibérie=Siperia=Szibéria=Sībirija=Sibiras=Siberia (region) 58.0 90.0 14;
 Transbaikal=Забайкалье=Transbaikalia=Zabaikal 51.5 113.0 4; Far East=Дальний Восток=Russian Far East 55.0 135.0 12;
 Ingria=Ингерманландия=Ingermanland=Ingeri=Ingerimaa=Inkeri 59.6 29.8 .8; Kuban region=Кубанская область 45.2 39.5 1;
 Volga region=Поволжье=Povolzhye=Wolgagebiet=Volga German region=Wolgadeutsche 51.5 46.0 2;
 Bashkiria=Башкирия=Baschkirien 54.5 56.5 1.5; Kalmykia steppe=Калмыцкая степь 46.5 45.0 1; Barabinsk
 Steppe=Барабинская степь 55.0 78.5; Meshchera=Мещера 55.2 40.3; Borodino field=Бородинское поле=Borodino 55.52 35.82;
 Kulikovo Field=Куликово поле 53.65 38.65; Vorkuta camps=Vorkutlag=Воркутлаг 67.5 64.0; Gulag Kolyma=Kolyma
 (region)=Колымский край 63.0 152.0 3; Svetlogorsk coast=Samland=Самбия=Sambia 54.85 20.2 .3; Gatchina park=Гатчинский
 парк 59.565 30.11 .01; Petergof park=Peterhof palace=Петергоф дворец 59.885 29.905 .02
UA: mountain Kerch Peninsula 45.2 36.0
RU PL: mountain Rominter Heide=Роминтская пуща 54.35 22.5
UZ KZ KG TJ TM: mountain Turkestan (region)=Туркестан=Russian Turkestan=Turkestanis 42.0 66.0 6
BY UA: mountain Polesye=Полесье=Polesie=Polesia=Pripet Marshes=Pripyat Marshes=Pinsk Marshes 52.0 27.5 2
RU: sea White Sea=Белое море=Weißes Meer=Valge meri=Vienanmeri 65.5 38.0 2; Kara Sea=Карское море 75.0 70.0 6; Kerch
 Strait=Керченский пролив 45.3 36.6; Peter the Great Gulf=Амурский залив=Золотой Рог=Golden Horn Bay 43.0 131.9;
 Nevskaya Guba=Невская губа=Finski zaliv=Финский залив=Маркизова лужа 59.95 29.9 .3; Vyborg Bay=Выборгский
 залив=Viipurinlahti 60.6 28.6
RU NO: sea Barents Sea=Баренцево море 73.0 40.0 6
RU UA: sea Sea of Azov=Азовское море=Asowsches Meer=Азов море 46.0 36.5 1.2
RU JP: sea Sea of Okhotsk=Охотское море 53.0 148.0 6
RU US: sea Bering Sea=Берингово море 58.0 -178.0 7; Bering Strait=Берингов пролив 65.8 -169.0 1
JP RU KR: sea Sea of Japan=Японское море 40.0 135.0 6
UA: river Southern Bug=Південний Буг=Южный Буг=Boh=Südlicher Bug=Pivdennyi Buh 48.3 30.0 1.5; Styr=Стир=Стырь 50.8
 25.3; Horyn=Goryn=Горынь=Горинь 50.9 26.6; Sluch=Случ=Слуцк река 50.5 27.3; Zbruch=Збруч=Zbrucz 49.3 26.2; Stryi
 (river)=Стрий річка 49.1 23.5; Strypa=Стрипа 49.3 25.3; Seret (Ukraine)=Серет 49.3 25.6; Cheremosh=Черемош=Czeremosz
 48.1 25.0; Uzh=Уж=Ung (river) 48.6 22.3; Latorica=Латориця 48.5 22.6; Ingul=Інгул=Ингул 47.8 32.0; Ingulets=Інгулець
 47.7 33.2; Sula=Сула 50.2 33.2; Ros=Рось 49.5 30.8; Teteriv=Тетерів 50.5 29.3; Lake Sinevir=Синевир=Synevyr 48.617
 23.684
BY UA: river Pripyat=Prypiat=Припять=Прип'ять=Pripet=Prypeć 51.9 27.5 1.5
BY: river Berezina=Березина=Бярэзіна=Beresina=Berezyna 53.6 28.8; Viliya=Вілія=Вилия 54.8 26.5;
 Svisloch=Свислочь=Свіслач 53.7 27.7; Lake Naroch=Нарочь=Нарач=Narocz 54.85 26.75; Braslav Lakes=Браславские
 озёра=Jeziora Brasławskie 55.6 27.05
BY RU: river Sozh=Сож 53.2 31.2
UA BY: river Lake Svityaz=Світязь=Свитязь=Świteź 51.5 23.85
MD UA: river Byk=Бык река=Bîc 47.0 28.8; Reut=Răut 47.6 28.5
UA BY: mountain Polissia=Полісся 51.3 27.5 1.2
BY: mountain Naliboki Forest=Налибокская пуща=Puszcza Nalibocka 53.9 26.3
GE: mountain Svaneti=Сванетия=Swanetien 42.9 42.8; Imereti=Имеретия 42.2 42.8; Mingrelia=Samegrelo=Мегрелия 42.5
 41.9; Adjara=Аджария=Adscharien 41.6 42.1; Rioni=Риони 42.2 42.5; Alazani=Алазани 41.8 46.0;
 Mtatsminda=Мтацминда=Mount Mtatsminda 41.695 44.785 .01; Lake Ritsa=Рица=озеро Рица 43.475 40.54; Cross
 Pass=Крестовый перевал 42.5 44.45; Pankisi=Tusheti=Тушетия 42.4 45.5; Abkhazia=Абхазия=Abchasien=Apkhazeti 43.0 41.2
 .5; South Ossetia=Осетия=Ossetia=North Ossetia=Ossetien 42.7 44.2 .6
GE AZ AM: mountain Kakheti=Кахетия=Kachetien 41.8 45.7 .6
AZ AM: mountain Karabakh=Nagorno-Karabakh=Карабах=Arzach=Artsakh 39.8 46.8 .6
AM: mountain Zangezur=Зангезур 39.3 46.3; Aragats=Арагац=Alagöz 40.53 44.2
AZ: mountain Absheron=Апшерон=Apsheron 40.45 50.0
RU: mountain Dagestan mountains=Дагестан горы 42.5 47.0 .8
AM AZ GE: mountain Mtkvari=Kura=Кура 41.0 46.0 1.5
AM AZ: mountain Aras=Araxes=Аракс 39.5 46.0 1.2
"""
