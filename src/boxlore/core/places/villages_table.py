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
IN: village Mhow 22.55 75.76; Mahabaleshwar=Mahableshwar 17.92 73.66; Khandala=Lonavla hills 18.76 73.37; Landour 30.46
 78.1; Dalhousie hills 32.54 75.97; Sanawar 30.9 76.97; Sonamarg 34.3 75.3; Auli=Badrinath 30.74 79.49; Kalimpong hills
 27.06 88.47; Ghum=Ghoom 27.0 88.26; Coonoor hills 11.35 76.8; Yercaud 11.78 78.2; McCluskieganj 23.63 84.96;
 Jamalpur workshops 25.31 86.49; Kharagpur colony 22.34 87.33; Bhowali sanatorium 29.38 79.52;
 Santiniketan=Shantiniketan 23.68 87.68; Jallianwala Bagh=Golden Temple 31.62 74.88; Wagah=Attari 31.6 74.57
IE: village Kilkee 52.68 -9.65; Kilmore (Wexford) 52.21 -6.55; Ventry 52.13 -10.37; Dunquin=Dún Chaoin 52.13 -10.46;
 Ballyferriter 52.17 -10.41; Annascaul 52.15 -10.06; Castlegregory 52.26 -10.02; Portmagee 51.88 -10.37; Crookhaven
 51.47 -9.73; Goleen 51.5 -9.71; Union Hall 51.56 -9.14; Glandore 51.57 -9.12; Rosscarbery 51.58 -9.04; Timoleague
 51.64 -8.77; Ballycotton 51.83 -8.0; Bunmahon 52.14 -7.37; Duncannon 52.22 -6.93; Fethard-on-Sea 52.2 -6.82;
 Curracloe 52.38 -6.37; Laragh 53.01 -6.3; Clonmacnoise 53.33 -7.99; Shannonbridge 53.28 -8.05; Letterfrack 53.55
 -9.95; Renvyle 53.6 -10.0; Cleggan 53.56 -10.11; Louisburgh 53.76 -9.81; Keel 53.97 -10.07; Dugort 54.01 -10.02;
 Mullaghmore 54.47 -8.45; Drumcliff 54.33 -8.49; Burtonport 54.98 -8.44; Bunbeg 55.06 -8.3; Dunfanaghy 55.18 -7.97;
 Rathmullan 55.09 -7.54; Portsalon 55.21 -7.62; Malin 55.25 -7.26; Culdaff 55.29 -7.17; Downings 55.19 -7.84; Kilronan
 53.12 -9.67; Kilfenora 52.99 -9.22; Quilty 52.82 -9.44; Mountshannon 52.93 -8.43; Blacklion 54.29 -7.88; Swanlinbar
 54.19 -7.7
GB: village Kilmore (Argyll) 56.38 -5.44; Shieldaig 57.52 -5.65; Poolewe 57.77 -5.6; Tongue 58.48 -4.42; Bettyhill
 58.53 -4.22; Tomintoul 57.25 -3.38; Braemar 57.0 -3.4; Crathie 57.04 -3.22; Kirk Yetholm 55.55 -2.28; Balquhidder
 56.36 -4.37; Kilmartin 56.13 -5.48; Fionnphort 56.33 -6.37; Lochboisdale 57.15 -7.31; Lochmaddy 57.6 -7.17; Castlebay
 56.95 -7.49; Leverburgh=Obbe 57.77 -7.02; Callanish 58.2 -6.74; Portmahomack 57.84 -3.83; Inversnaid 56.24 -4.68;
 Acharacle 56.74 -5.8; Strontian 56.69 -5.57; Kinlochbervie 58.46 -5.05; Scourie 58.35 -5.15; Glamis 56.61 -3.0;
 Auchmithie 56.59 -2.52; Pennan 57.68 -2.26; Port William 54.76 -4.58; Corrie 55.64 -5.14; Lochranza 55.7 -5.29;
 Portballintrae 55.22 -6.55; Glenarm 54.97 -5.95; Waterfoot 55.06 -6.05; Killough 54.26 -5.65; Beddgelert 53.01 -4.1;
 Aberdaron 52.8 -4.71; Capel Curig 53.1 -3.91; Dinas Mawddwy 52.72 -3.69; Goathland 54.4 -.72; Ravenglass 54.35 -3.41;
 Craster 55.47 -1.59; Winchelsea 50.92 .71; Dunwich 52.28 1.63; Cley next the Sea=Cley 52.95 1.04; Lamorna 50.06
 -5.56; Zennor 50.19 -5.57; Widecombe-in-the-Moor=Widecombe 50.58 -3.81; Branscombe 50.69 -3.14; Castle Combe 51.49
 -2.23; Bibury 51.76 -1.83; Edale 53.37 -1.82; Tissington 53.07 -1.74; Dent 54.28 -2.46; Muker 54.38 -2.14
EE: village Viru-Nigula=Maholm 59.45 26.69; Meriküla=Merreküll 59.41 27.9; Nissi=Riisipere=Nissi kirik 59.11 24.31;
 Lais 58.8 26.53; Maarja-Magdaleena=Marien-Magdalenen (Tartu) 58.6 26.72; Paistu=Paistel 58.28 25.6; Werpel 58.43
 23.75; Kullamaa=Goldenbeck 58.88 24.08; Hanila=Hannehl 58.63 23.59; Martna=St. Martens 58.86 23.79; Harju-Madise=St.
 Matthias 59.27 24.14; Simuna=St. Simonis 59.05 26.4; Vaivara=Waiwara 59.37 27.75; Lüganuse=Luggenhusen 59.38 27.04;
 Reigi=Roicks 58.97 22.52; Pühalepa=Pühhalep 58.85 22.93; Mustel 58.47 22.24; Pöide=Peude 58.51 23.05; Laisberg 58.58
 22.68; Karula=Karolen 57.73 26.5; Hargla=Harjel 57.62 26.39; Wöso 59.58 25.97; Saggad 59.54 26.08; Jõelähtme=Jeglecht
 59.44 25.13; Saka 59.44 27.18; Kiltsi=Schloss Ass 59.08 26.17; Kaltenbrunn 59.03 25.71; Kuiwast 58.57 23.39; Rohuküla
 58.91 23.42; Dagerort 58.91 22.2; Filsand 58.38 21.86; Abro 58.16 22.5; Kabli 57.99 24.45; Treimani 57.93 24.39;
 Helme=Helmet 58.02 25.87; Hummuli=Hummelshof 57.9 26.05; Kavastu=Kawast 58.39 27.09; Rathshof 58.4 26.74; Klein St.
 Johannis 58.48 25.94
LV: village Piebalga=Vecpiebalga=Pebalg 57.06 25.82; Klein Irben 57.68 22.32; Sece=Setzen 56.52 25.35;
 Madliena=Sissegal 56.84 25.15
FI: village Ylistaro 62.94 22.51; Nurmo 62.83 22.91; Munsala 63.45 22.4; Bromarv 59.99 23.0; Ahlainen=Vittisbofjärd
 61.67 21.65; Reposaari=Räfsö 61.62 21.45; Tyrvää 61.35 22.9; Karkku 61.42 23.01; Teisko 61.68 23.78; Aitolahti 61.53
 23.87; Sippola 60.73 27.0; Kuorevesi 61.9 24.7; Tenhola=Tenala 60.06 23.3; Snappertuna 60.0 23.66
RU: village Melnikovo 60.91 29.8; Kondratyevo 60.62 28.12; Mohla 60.55 29.2; Kurkijoki=Kronoborg 61.3 29.89;
 Jakimvaara 61.5 30.2; Impilax 61.65 31.1; Suistamo 61.9 31.1; Vuoksela 60.7 29.8; Kaukola 60.97 29.8; Metsäpirtti
 60.57 30.55; Kanneljärvi 60.35 29.35; Nykyrka 60.37 29.15; Perkjärvi=Perkjärvi asema 60.47 29.35; Vuokkiniemi 65.03
 30.5; Rominten=Gross Rominten 54.4 22.5; Gilge 55.02 21.25; Lavry=Laura 57.6 27.5; Yasnaya Polyana 54.07 37.53
PL: village Stębark 53.49 20.13; Kreisau=Krzyżowa 50.79 16.52; Jurata 54.68 18.71; Kahlberg 54.38 19.45
CA: village Battleford 52.74 -108.31; Harbour Grace 47.7 -53.22; Trepassey 46.74 -53.36; York Factory 57.0 -92.3;
 Norway House 53.97 -97.83; Cumberland House 53.96 -102.27; Lytton 50.23 -121.58; Yale 49.57 -121.43; Sandon 49.98
 -117.23; Annapolis Royal 44.74 -65.52; Hopewell Cape 45.85 -64.58; Fort Qu'Appelle 50.77 -103.8; Eganville 45.53
 -77.1; Barry's Bay 45.49 -77.68; Placentia 47.25 -53.96; Ferryland 47.02 -52.88; Port Union 48.5
 -53.08; Greenspond 49.07 -53.57; St. Anthony 51.37 -55.58; Red Bay 51.73 -56.43; Cupids 47.55 -53.23
AU: village Burketown -17.74 139.55; Birdsville -25.9 139.35; Innamincka -27.75 140.74; Marree=Hergott Springs -29.65
 138.06; Oodnadatta -27.55 135.45; Gwalia -28.92 121.33; Cue -27.42 117.9; Ravenswood -20.1 146.89; Silverton -31.89
 141.22; Tibooburra -29.43 142.01; White Cliffs -30.85 143.09; Croydon (Queensland) -18.2 142.24; Omeo -37.1 147.6;
 Mungerannie -28.02 138.66; Kanowna -30.6 121.6; Sandfire -19.77 121.09; Hartley -33.54 150.18; Sofala -33.08 149.69;
 Steiglitz -37.88 144.18; Cossack -20.68 117.19; Torbay -35.03 117.62; Swansea -42.12 148.07; Richmond (Tasmania)
 -42.73 147.44
ZA: village Matjiesfontein -33.23 20.58; Genadendal -34.03 19.55; Colenso -28.74 29.82; Pilgrim's Rest -24.9 30.75;
 Nieu-Bethesda -31.87 24.55; Wupperthal -32.28 19.22; Simonstown=Simon's Town -34.19 18.43; Kalk Bay -34.13 18.45;
 Adams Mission -30.0 30.78; Lovedale -32.77 26.83; Healdtown -32.7 26.6; Hogsback -32.58 26.95
EE: village Karuse=Karusen 58.63 23.71; Kolgaküla 59.52 25.65
NZ: mountain Signal Hill (Dunedin) -45.85 170.55 .03
NZ: village Shag Point -45.47 170.82; Maheno -45.17 170.83; Kakanui -45.19 170.9; Livingstone -44.97 170.57; Tokarahi
 -44.97 170.65; Kyeburn -45.15 170.25; Wedderburn -45.03 170.01; Oturehua -45.0 169.9; Lauder -45.05 169.66; Tarras
 -44.84 169.42; Macetown -44.86 168.82; Millers Flat -45.66 169.41; Beaumont -45.82 169.53; Waikaka -45.92 169.02;
 Waikaia -45.73 168.85; Colac Bay -46.36 167.88; Waikawa -46.63 169.12; Waitahuna -45.98 169.77; Gabriels
 Gully=Gabriel's Gully -45.88 169.7; Half Moon Bay -46.9 168.13; Pukehiki -45.86 170.6; Goodwood -45.53 170.7;
 Waynes=Waynestown -45.67 170.6; Woodside -45.87 170.17; Momona -45.91 170.2; Milburn -46.07 170.0; Lovells Flat
 -46.15 169.83; Stirling -46.25 169.78; Port Molyneux -46.35 169.79; Tahakopa -46.51 169.38; Gore Bay -42.86 173.3;
 Okains Bay -43.7 173.06; Le Bons Bay -43.74 173.1; Pigeon Bay -43.68 172.9; Arthur's Pass
 village -42.94 171.56; Ikamatua -42.27 171.69; Waiuta -42.29 171.82; Brunner=Brunnerton -42.43 171.32;
 Waipoua -35.65 173.55; Port Fitzroy -36.2 175.35; Kuaotunu -36.72 175.73; Whangara
 -38.56 178.22; Kingston -45.34 168.72; Garston -45.47 168.68; Athol -45.51 168.58
"""
