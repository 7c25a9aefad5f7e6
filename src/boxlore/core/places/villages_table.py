"""Villages, resorts, camps and battlefields that lists of towns lack and families tell of.

From memory, written as `nature_north_table` tells.
"""

VILLAGES = """
NZ: village Waikouaiti -45.6 170.67; Mosgiel -45.88 170.35; Kaka Point -46.38 169.78; Trentham=Trentham Camp -41.13
 175.03; Featherston=Featherston Camp=Featherston Military Camp -41.12 175.33; Purakaunui=Purakanui -45.74 170.6;
 Warrington -45.72 170.59; Seacliff -45.68 170.62; Karitane -45.64 170.66; Evansdale -45.72 170.56; Hampden -45.33
 170.82; Moeraki -45.36 170.85; Herbert -45.22 170.78; Allanton -45.92 170.27; Berwick -45.98 170.1; Henley -45.98
 170.17; Brighton -45.95 170.33; Taieri Mouth -46.06 170.2; Waihola -46.03 170.1; Lawrence -45.91 169.69; Omakau -45.09
 169.6; Ophir -45.11 169.6; St Bathans=Saint Bathans -44.87 169.81; Naseby -45.03 170.15; Middlemarch -45.51 170.12;
 Hyde -45.3 170.25; Macraes Flat=Macraes -45.38 170.43; Dunback -45.39 170.63; Kurow -44.73 170.47; Duntroon -44.86
 170.68; Ngapara -44.95 170.75; Owaka -46.45 169.66; Clinton -46.2 169.38; Tapanui -45.95 169.27; Heriot -45.84 169.27;
 Lumsden -45.74 168.44; Mossburn -45.67 168.23; Riversdale -45.9 168.74; Tokanui -46.57 168.95; Fortrose -46.57 168.8;
 Curio Bay -46.66 169.1; Orepuki -46.28 167.73; Nightcaps -45.97 168.03; Glenorchy -44.85 168.39; Makarora -44.23
 169.23; Haast -43.88 169.04; Okarito -43.22 170.16; Whataroa -43.26 170.36; Hari Hari -43.15 170.55; Ross -42.9
 170.81; Kumara -42.63 171.18; Blackball -42.36 171.41; Runanga -42.4 171.25; Denniston -41.74 171.8; Karamea -41.25
 172.11; Granity -41.63 171.86; Otira -42.83 171.56; Jacksons -42.75 171.51; Cass -43.03 171.76; Springfield -43.34
 171.93; Little River -43.77 172.79; Diamond Harbour -43.63 172.73; Peel Forest -43.9 171.26; Glenavy -44.92 171.1;
 Albury -44.23 170.88; Cave -44.31 170.95; Waipara -43.06 172.76; Cheviot -42.81 173.27; Canvastown -41.29 173.66;
 Collingwood -40.68 172.68; Kaiteriteri -41.04 173.02; Greytown -41.08 175.46; Martinborough -41.22 175.46; Cross Creek
 -41.16 175.2; Eketahuna -40.65 175.7; Pongaroa -40.54 176.18; Apiti -39.97 175.87; Mangaweka -39.81 175.79; Ohakune
 -39.42 175.4; Raetihi -39.43 175.28; Raurimu -39.12 175.4; Waiouru Camp -39.48 175.67; Pipiriki -39.48 175.05;
 Parihaka -39.29 173.84; Whangamomona -39.14 174.74; Te Araroa -37.63 178.37; Tuai -38.81 177.15; Ruatahuna -38.63
 176.96; Te Aroha -37.54 175.71; Waikino -37.41 175.77; Whiritoa -37.28 175.9; Hahei -36.84 175.8; Puhoi -36.51 174.66;
 Waiwera -36.54 174.71; Piha -36.95 174.47; Kohukohu -35.36 173.54; Waitangi Treaty Grounds -35.27 174.08; Mangonui
 -34.99 173.53; Pukenui -34.81 173.12; Oban -46.9 168.13; Scott's Ferry -40.23 175.25; Cape Runaway -37.55 178.0
AU: village Bonegilla camp=Bonegilla Migrant Camp -36.14 147.0; Walhalla -37.94 146.45; Sovereign Hill -37.58
 143.87; Hill End -33.03 149.42; Tarcoola -30.71 134.57; Farina -30.07 138.27; Broad Arrow -30.45 121.33; Wittenoom
 -22.24 118.34; Gundagai goldfields -35.07 148.1; Woomera -31.2 136.83; Villawood Hostel -33.88 150.98; Greta
 Camp=Greta Migrant Camp -32.67 151.38; Cowra Camp -33.81 148.7; Queenscliff fort -38.27 144.67; Thredbo -36.5
 148.31; Cabramurra -35.94 148.38; Port Arthur -43.15 147.85
IE: village Glencolmcille=Glencolumbkille 54.71 -8.73; Leenane=Leenaun 53.6 -9.69; Roundstone 53.4 -9.92; Spiddal 53.24
 -9.3; Carna 53.32 -9.83; Doolin 53.02 -9.38; Ballyvaughan 53.12 -9.15; Liscannor 52.94 -9.39; Ballinskelligs 51.82
 -10.27; Waterville 51.83 -10.17; Sneem 51.84 -9.9; Allihies 51.64 -10.04; Glengarriff 51.75 -9.55; Ballydehob 51.56
 -9.46; Baltimore 51.48 -9.37; Inchigeelagh 51.84 -9.12; Ardmore 51.95 -7.72; Lismore 52.14 -7.93; Mulranny 53.9 -9.78;
 Cong 53.54 -9.29; Tramore strand 52.16 -7.13; Rosslare Strand=Rosslare Harbour 52.27 -6.39; Kilmore Quay 52.17 -6.59;
 Soloheadbeg 52.5 -8.2; Beal na mBlath=Béal na Bláth 51.81 -8.86
GB: village Ballykinlar=Ballykinler 54.26 -5.8
GB: village Frongoch camp 52.94 -3.63; Cushendun 55.12 -6.04; Ballintoy 55.24 -6.37; Portbraddan 55.24 -6.42;
 Strangford 54.37 -5.55; Tyrella 54.25 -5.77; Plockton 57.34 -5.65; Applecross 57.43 -5.81; Durness 58.57 -4.75;
 Lochinver 58.15 -5.24; Ullapool pier 57.9 -5.16; Glenfinnan 56.87 -5.44; Arisaig 56.91 -5.84; Crinan 56.09 -5.56;
 Culross 56.06 -3.63; Catterick Camp 54.37 -1.71; Aldershot Camp 51.25 -.77; Bletchley Park 51.997 -.741; Sling
 Camp=Bulford Camp 51.19 -1.73; Brocton Camp=Cannock Chase Camp 52.76 -2.04; Walton-on-Thames hospital 51.39 -.41;
 Hornchurch Camp 51.56 .22; Runswick Bay 54.53 -.75; Malham 54.06 -2.15; Hawkshead 54.37 -3.0; Clovelly 50.999 -4.4;
 Lynmouth 51.23 -3.83; Port Isaac 50.59 -4.83; Cadgwith 49.99 -5.18; Portmeirion 52.91 -4.1; Llangrannog 52.16 -4.47;
 Lulworth 50.62 -2.25; Dungeness 50.92 .97; Camber Sands 50.93 .8; Walberswick 52.31 1.66; Blakeney 52.95 1.02; Isle
 of Whithorn 54.7 -4.37; Gretna Green 55.0 -3.06; Bannockburn field 56.09 -3.94; Peterhead Prison 57.5 -1.79
CA: village Chicoutimi 48.43 -71.06; Arvida 48.43 -71.18; Percé 48.52 -64.21; Métis-sur-Mer=Métis Beach=Metis Beach
 48.66 -68.02; Murray Bay=La Malbaie (bay)=Pointe-au-Pic 47.62 -70.14; Cap-à-l'Aigle 47.66 -70.1; Les Éboulements
 47.48 -70.32; North Hatley 45.27 -71.97; Georgeville 45.13 -72.24; Ayer's Cliff 45.17 -72.05; Hudson Heights 45.46
 -74.14; Sainte-Adèle slopes 45.95 -74.13; Port Royal 44.71 -65.61; Grand-Pré=Grand Pré=Grand Pre 45.1 -64.31;
 Lunenburg harbour 44.37 -64.31; Louisbourg 45.92 -59.97; Chéticamp=Cheticamp 46.63 -61.01; Baddeck 46.1 -60.75; Iona
 45.96 -60.8; Whycocomagh 45.97 -61.12; Glace Bay mines 46.2 -59.96; Caraquet coast 47.79 -64.94; Cavendish 46.49
 -63.38; Rustico=North Rustico 46.45 -63.3; Tignish 46.95 -64.03; Twillingate 49.65 -54.77; Trinity 48.36 -53.36;
 Bonavista cape 48.65 -53.11; Brigus 47.53 -53.21; Petty Harbour 47.46 -52.71; Fogo 49.71 -54.27; Battle Harbour
 52.27 -55.58; Grosse-Île quarantine 47.03 -70.67; Muskoka Wharf 44.92 -79.38; Port Carling 45.12 -79.58; Bala 45.02
 -79.62; Dwight 45.33 -79.02; Temagami 47.06 -79.79; Cobalt 47.39 -79.69; Port Dalhousie 43.2 -79.27;
 Niagara-on-the-Lake camp=Niagara Camp 43.26 -79.07; Camp X 43.85 -78.89; Batoche 52.75 -106.1; Duck Lake 52.81
 -106.23; Fort Qu'Appelle valley 50.77 -103.8; Cannington Manor 49.72 -102.03; Batoche battlefield 52.75 -106.12;
 Frank=Frank Slide 49.6 -114.39; Hillcrest mines 49.57 -114.38; Lake Louise village 51.43 -116.18; Yoho=Field 51.4
 -116.49; Bamfield 48.83 -125.14; Telegraph Cove 50.55 -126.83; Alert Bay 50.58 -126.93; Bella Coola 52.37 -126.75;
 Hope Slide 49.3 -121.25; Steveston 49.13 -123.18; Cultus Lake 49.06 -121.98; Deep Cove 49.33 -122.95; Kaslo 49.91
 -116.91; Slocan 49.77 -117.47; New Denver 49.99 -117.37; Greenwood camp 49.09 -118.68
NO: village Grini 59.95 10.6; Finse 60.6 7.5; Stiklestad 63.8 11.56; Os=Os i Hordaland 60.19 5.47; Sørlandet 58.4 8.0
 .7; Vestlandet=Vestland 61.0 6.3 1.5; Østlandet 60.3 10.8 1.2; Nord-Norge 69.0 19.0 2.5; Trøndelag (region) 63.7 10.8
 1; Nesodden 59.83 10.66; Flåm 60.86 7.12; Gudvangen 60.88 6.84; Fjærland 61.42 6.75; Geiranger 62.1 7.2; Hellesylt
 62.09 6.86; Olden 61.84 6.81; Loen 61.87 6.85; Urnes 61.3 7.32; Bondhus 60.1 6.3; Vemork 59.87 8.49; Morgedal 59.45
 8.44; Bykle 59.35 7.34; Vågå 61.88 9.1; Oppdal fjell 62.6 9.7; Brevik fjord 59.05 9.7; Hankø bad 59.2 10.78;
 Hammerfest ruins 70.66 23.68; Falstad 63.69 11.04; Berg interneringsleir 59.29 10.42; Riksgränsen 68.43 18.13
SJ: village Ny-Ålesund 78.92 11.93; Barentsburg 78.06 14.22
SE: village Grisslehamn 60.1 18.8; Marstrand 57.89 11.59; Brantevik 55.52 14.35; Skanör=Falsterbo=Skanör-Falsterbo 55.4
 12.85; Dalarö samhälle 59.13 18.4; Furusund 59.66 18.91; Leksand church 60.73 15.0; Storlien 63.32 12.1; Abisko 68.35
 18.83; Jokkmokk market 66.6 19.83; Visby ringmur 57.64 18.3; Ljugarn 57.32 18.71; Böda 57.25 17.06; Växjö domkyrka
 56.88 14.81; Vadstena kloster 58.45 14.89
FI: village Aulanko 61.02 24.46; Suovanlahti=Suovanlahden 63.0 26.4; Valamo=Uusi Valamo=New Valamo 62.56 28.77; Runni
 63.6 26.9; Hiidenvesi 60.35 24.2; Fiskars=Fiskari 60.13 23.54; Billnäs 60.08 23.5; Nuutajärvi 61.02 23.4; Vaasan
 saaristo 63.2 21.3 .3; Hamina garrison 60.57 27.2; Porlammi 60.7 26.05; Savossa=Savon 62.3 27.8 .9
RU: village Muolaa 60.6 29.2; Säkkijärvi 60.65 28.0; Räisälä 60.85 29.6; Kirvu 61.0 29.3; Jaakkima 61.52 30.2;
 Lumivaara 61.43 30.1
RU: village Pyhäjärvi Vpl 60.7 30.1; Vammelsuu 60.19 29.5; Uusikirkko Vpl 60.3 29.2; Summa 60.52 28.85; Impilahti
 61.65 31.15; Petsamon Liinahamari=Liinahamari 69.64 31.36; Karjalassa=Karjalan kannaksella=Kannaksella 60.6 29.5 .7;
 Trakehnen=Ясная Поляна (Kaliningrad) 54.57 22.5; Don Bend=Don-kanyar 51.0 39.0 .8; Lisy Nos 60.02 30.0; Oranienbaum
 park=Ораниенбаум парк 59.91 29.76; Siverskaya=Сиверская 59.35 30.08; Vyra=Выра 59.33 29.95; Martyshkino=Мартышкино
 59.9 29.8; Abramtsevo=Абрамцево 56.23 37.97; Mikhailovskoye=Михайловское 57.06 28.92; Optina=Оптина пустынь 54.05
 35.83; Vorkuta camp=Воркута лагерь 67.5 64.0; Magadan camps=Магаданские лагеря 59.56 150.8; Potma=Потьма=Dubravlag
 54.06 42.9; Butovo=Бутово 55.53 37.59; Sandarmokh=Сандармох 62.86 34.68
EE: village Käsmu=Kasperwiek 59.6 25.92; Võsu 59.57 25.97; Altja 59.58 26.12; Palmse=Palms 59.51 25.96; Sagadi 59.54
 26.09; Vihula 59.55 26.19; Viinistu 59.64 25.75; Narva-Jõesuu rand 59.46 28.04; Vasknarva=Syrenetz 58.99 27.73;
 Kuremäe=Pühtitsa 59.2 27.53; Kolkja 58.53 27.2; Mustvee rand 58.85 26.95; Kallaste rand 58.66 27.16; Laiuse 58.79
 26.5; Vara 58.53 26.8; Kambja 58.23 26.7; Sangaste=Sagnitz 57.9 26.29; Taagepera=Wagenküll 58.0 25.68; Petseri
 kloster=Pechory monastery 57.81 27.62; Obinitsa 57.81 27.44; Taevaskoja 58.11 27.05; Kiidjärve 58.13 26.98;
 Heimtali=Heimtal 58.33 25.5; Kabala 58.7 25.5; Kolga=Kolk 59.49 25.6; Kolga-Jaani 58.48 25.95; Albu 59.17 25.6;
 Ambla=Ampel 59.19 25.83; Järva-Madise 59.1 25.7; Roosna-Alliku 59.03 25.7; Padise=Padis 59.23 24.14; Haapsalu
 Paralepa 58.93 23.52; Noarootsi=Nuckö=Pürksi 59.05 23.5; Ridala=Röthel 58.9 23.6; Lihula mõis 58.69 23.84;
 Varbla=Warbel 58.43 23.75; Kuivastu 58.57 23.4; Leisi 58.57 22.7; Kihelkonna=Kielkond 58.36 22.04; Mustjala 58.47
 22.2; Sõru 58.69 22.52; Emmaste 58.7 22.6; Kõrgessaare=Hohenholm=Viskoosa 58.98 22.47; Heltermaa 58.86 23.05;
 Suuremõisa=Großenhof 58.87 22.95; Harku mõis 59.39 24.57; Rannamõisa 59.43 24.52; Vigala=Fickel 58.77 24.27; Velise
 58.8 24.4; Märjamaa kihelkond 58.9 24.43; Kodavere=Koddafer 58.7 27.1; Äksi=Ecks 58.52 26.67; Rannu=Randen 58.23
 26.2; Urvaste=Urbs 57.85 26.6; Räpina vald=Rappin 58.1 27.46; Mehikoorma 58.23 27.48
LV: village Mazirbe 57.68 22.32; Tūja 57.5 24.38; Salaspils camp=Kurtenhof 56.87 24.33; Jūrkalne=Felixberg 57.0
 21.38; Kokna 56.65 25.43; Cesvaine castle=Seßwegen 56.97 26.3; Stāmeriena=Stomersee 57.22 26.9; Raiskums 57.32
 25.15; Rubene=Papendorf 57.46 25.25; Trikāta=Trikaten 57.54 25.71; Straupe=Roop 57.35 24.95; Krimulda=Cremon=Kremon
 57.17 24.83; Kazdanga=Katzdangen 56.73 21.74; Dundaga=Dondangen 57.5 22.35; Mangaļsala 57.06 24.04
PL: village Rozewie=Rixhöft 54.83 18.34; Dębki 54.83 18.07; Ciechocinek tężnie 52.88 18.79; Żegiestów 49.37 20.79;
 Iwonicz 49.57 21.79; Żelazowa Wola 52.26 20.32; Arkadia 52.08 20.1; Wilczy Szaniec=Wolfsschanze=Wolf's Lair 54.08
 21.49; Święta Lipka=Heiligelinde 54.03 21.22; Nikiszki 53.5 21.6; Bóbrka 49.6 21.7; Oświęcim
 camp=Auschwitz-Birkenau=Birkenau 50.03 19.18; Treblinka 52.63 22.05; Sobibór=Sobibor 51.45 23.6; Stutthof
 camp=Stutthof 54.33 19.15; Gross-Rosen=Rogoźnica 51.0 16.28; Palmiry 52.35 20.75; Ossów=Radzymin battlefield 52.3
 21.2; Grunwald field=Tannenberg 53.48 20.1; Dęblin lotnisko 51.55 21.89; Wysowa 49.43 21.17; Cadinen=Kadyny 54.3
 19.49; Steinort=Sztynort 54.13 21.68
DE: village Dachau camp=KZ Dachau 48.27 11.47; Bergen-Belsen=Belsen 52.76 9.91; Buchenwald 51.02 11.25; Ravensbrück
 53.19 13.17; Colditz castle=Oflag IV-C 51.13 12.81; Peenemünde 54.14 13.77; Büsum strand 54.13 8.86; Neuschwanstein
 47.557 10.75; Oberammergau play 47.6 11.07; Obersalzberg 47.63 13.04; Wies=Wieskirche 47.68 10.9; Bastei=Rathen 50.96
 14.07; Nürburgring 50.34 6.95; Rüdesheim vineyards=Niederwalddenkmal 49.98 7.9; Assmannshausen 49.99 7.87; Marienfelde
 camp 52.42 13.37; Kloster Banz 50.13 11.0
BE: village Spa camp 50.49 5.87
BE: village Gravenstafel 50.89 2.98; Polygon Wood 50.86 2.99; Hill Sixty 50.82 2.93; Waterloo battlefield 50.68
 4.41; Bastogne woods 50.0 5.72; Mechelen Dossin 51.03 4.48
FR: village Longueval=Delville Wood 50.03 2.81; Flers 50.05 2.82; Pozières=Pozieres 50.04 2.73;
 Beaumont-Hamel=Beaumont Hamel 50.08 2.66; Thiepval 50.05 2.68; Bullecourt 50.19 2.93; Le Quesnoy ramparts 50.25
 3.64; Étaples camp 50.51 1.64; Verdun battlefield=Fort Vaux=Ossuaire 49.2 5.43; Belleau Wood 49.07 3.29;
 Saint-Mihiel salient 48.9 5.54; Chemin des Dames ridge 49.44 3.75; Drancy camp 48.92 2.46; Rivesaltes camp 42.81
 2.87; Gurs 43.27 -.74; Les Baux 43.74 4.8; Ploumanac'h 48.83 -3.49
IT: village Vallombrosa 43.73 11.56; Camaldoli=La Verna 43.8 11.82; Asiago ossuary 45.87 11.52; Vittorio Veneto
 front 45.98 12.3; Anzio landing 41.45 12.62; Cefalù rocca 38.04 14.02; San Fruttuoso 44.32 9.17; Selinunte=Segesta
 37.7 12.85 .3; Paestum 40.42 15.0; Pompeii ruins=Pompei scavi 40.75 14.49; Bressanone road 46.7 11.65
AT: village Mayerling 48.05 16.1; Gösing 47.88 15.3; Alt-Aussee 47.64 13.76; Mariazell basilica 47.77 15.32
HU: village Balatonszemes 46.81 17.78; Balatonfüred sétány 46.95 17.9; Zebegény 47.8 18.91; Visegrádi vár 47.79
 18.98; Királyrét 47.9 18.98; Mátrafüred 47.83 19.97; Mátraháza 47.87 19.98; Parádfürdő 47.92 20.05; Hollókő 48.0
 19.59; Bugacpuszta 46.68 19.63; Mezőhegyesi ménes 46.32 20.82
RO: village Félixfürdő=Băile Felix 46.99 21.98; Csíksomlyó=Șumuleu Ciuc 46.38 25.82; Michelsberg=Cisnădioara 45.7
 24.1; Gyimes=Gyimesek 46.57 26.05
CZ: village Lidice 50.14 14.19; Terezín fortress=Malá pevnost 50.51 14.16; Prachov 50.47 15.28; Kvilda 49.02 13.58;
 Modrava 49.02 13.5; Karlova Studánka=Karlsbrunn 50.07 17.3; Pustevny 49.49 18.27; Hluboká 49.05 14.44; Kokořín 50.44
 14.58; Slavkov battlefield=Mohyla míru 49.13 16.76; Jáchymov mines 50.37 12.91; Sedmihorky 50.56 15.19
UA: village Artek=Артек 44.55 34.3
US: village Siasconset='Sconset 41.26 -69.96; Chautauqua Institution 42.21 -79.47; Grossinger's=Borscht Belt 41.8
 -74.65 .3; Kutsher's 41.65 -74.7; Asbury Park boardwalk 40.22 -74.0; Camp Grant 42.2 -89.07; Camp Upton 40.87
 -72.89; Camp Kilmer 40.52 -74.44; Camp Shanks 41.03 -73.96; Camp Funston=Fort Riley 39.07 -96.78; Camp Custer=Fort
 Custer 42.32 -85.3; Camp Dodge 41.7 -93.7; Camp Kearny 32.87 -117.14; Camp Polk 31.05 -93.2; Camp Pendleton 33.35
 -117.42; Camp McCoy 44.0 -90.68; Fort Sheridan 42.22 -87.81; Fort Devens=Camp Devens 42.54 -71.6; Fort Benning=Camp
 Benning 32.36 -84.95; Fort Ord 36.65 -121.79; Fort Sill 34.65 -98.4; Great Lakes=Great Lakes Naval Station 42.31
 -87.85; Camp Lejeune 34.67 -77.35; Manzanar 36.73 -118.15; Gettysburg battlefield 39.81 -77.23; Antietam 39.47
 -77.74; Yaddo 43.07 -73.76; Hershey Park 40.29 -76.66; Hull House 41.87 -87.65; Cedar Point 41.48 -82.68; Calumet
 mines 47.25 -88.45; Amana=Amana Colonies 41.8 -91.87; Frankenmuth farm 43.33 -83.74; Solvang mission 34.6 -120.14;
 Estes Park lodge 40.38 -105.52; Sun Valley resort 43.7 -114.35; Deadwood gulch 44.38 -103.73; Wounded Knee 43.14
 -102.36
IN: village Mhow 22.55 75.76; Mahableshwar 17.92 73.66; Khandala=Lonavla hills 18.76 73.37; Landour 30.46 78.1;
 Dalhousie hills 32.54 75.97; Sanawar 30.9 76.97; Sonamarg 34.3 75.3; Auli=Badrinath 30.74 79.49; Kalimpong hills
 27.06 88.47; Ghum=Ghoom 27.0 88.26; Coonoor hills 11.35 76.8; Yercaud 11.78 78.2; McCluskieganj 23.63 84.96;
 Jamalpur workshops 25.31 86.49; Kharagpur colony 22.34 87.33; Bhowali sanatorium 29.38 79.52;
 Santiniketan=Shantiniketan 23.68 87.68; Jallianwala Bagh=Golden Temple 31.62 74.88; Wagah=Attari 31.6 74.57
"""
