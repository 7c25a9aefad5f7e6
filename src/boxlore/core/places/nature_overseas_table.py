"""Lakes, rivers, islands, mountains and the like outside Europe.

From memory, written as `nature_north_table` tells.
"""

NATURE_OVERSEAS = """
CA US: lake Lake Memphremagog=Memphremagog=Lac Memphrémagog 45.1 -72.25 .25
CA: lake Lake Athabasca 59.2 -109.5 1; Reindeer Lake 57.3 -102.3; Lake Manitoba 50.8 -98.7 .7; Lake Winnipegosis
 52.3 -100.0 .7; Lake Nipigon 49.8 -88.5 .4; Lake St. Clair=Lake Saint Clair 42.45 -82.7; Lake Abitibi=Lac Abitibi
 48.7 -79.8; Lac Saint-Jean=Lake St. John=Lac St-Jean 48.6 -72.0 .3; Lac Mégantic=Lake Megantic 45.5 -70.88; Lake
 Massawippi=Massawippi 45.22 -72.0; Brome Lake=Lac Brome 45.25 -72.5; Lac des Deux Montagnes=Lake of Two Mountains
 45.45 -74.0; Lac Saint-Louis=Lake St. Louis 45.4 -73.8; Lac Saint-Pierre 46.2 -72.8; Rice Lake 44.2 -78.2; Stony
 Lake=Stoney Lake 44.55 -78.1; Lake Scugog=Scugog 44.15 -78.83; Sturgeon Lake (Ontario) 44.47 -78.72; Lake
 Couchiching=Couchiching 44.68 -79.38; Lake Rosseau 45.17 -79.58; Lake Joseph 45.17 -79.72; Lake of Bays 45.25
 -79.05; Kawartha Lakes=Kawarthas=the Kawarthas 44.5 -78.6 .4; Lake Temagami=Temagami (lake) 47.0 -80.1; Lake
 Timiskaming=Lake Temiskaming 47.3 -79.5; Rainy Lake 48.65 -93.0; Charleston Lake 44.53 -76.0; Rideau Lakes=Big
 Rideau Lake 44.75 -76.2; Bras d'Or Lake=Bras d'Or=Bras d'Or Lakes 45.9 -60.8 .3; Lake Ainslie 46.13 -61.18; Grand
 Lake (New Brunswick) 45.95 -66.05; Gander Lake 48.93 -54.6; Kootenay Lake 49.6 -116.9 .5; Arrow Lakes 50.3 -117.9
 .6; Shuswap Lake=Shuswap 50.95 -119.2 .3; Harrison Lake 49.5 -121.8; Lake Cowichan (lake)=Cowichan Lake 48.87
 -124.3; Kalamalka Lake 50.17 -119.35; Skaha Lake 49.42 -119.58; Maligne Lake 52.66 -117.53; Moraine Lake 51.32
 -116.18; Emerald Lake 51.44 -116.53; Lake Minnewanka=Minnewanka 51.25 -115.4; Waterton Lakes=Waterton Lake 49.05
 -113.9; Lesser Slave Lake 55.45 -115.5; Last Mountain Lake 51.1 -105.2; Wascana Lake 50.43 -104.61 .02; Lac La Ronge
 55.1 -105.0; Lac Ste. Anne=Lac Ste Anne 53.7 -114.4; Gull Lake (Alberta) 52.55 -114.0; Sylvan Lake (lake) 52.33
 -114.15; Pigeon Lake 53.0 -114.05; Cold Lake (lake) 54.53 -110.1; Clear Lake (Manitoba) 50.68 -100.0; Okanagan=the
 Okanagan=Okanagan Valley 49.8 -119.5 .6
CA US: river Saint John River=St. John River=St John River=Fleuve Saint-Jean=River Saint John 46.2 -67.0 1; St.
 Lawrence River=Saint Lawrence River=St Lawrence=the St. Lawrence=Saint-Laurent=Fleuve Saint-Laurent=St. Lawrence
 46.8 -71.5 3; Niagara River 43.1 -79.05; Detroit River 42.2 -83.1; Columbia River=the Columbia 48.5 -118.5 3
CA: river Saguenay River=Saguenay=the Saguenay 48.3 -70.5 .5; Rivière Richelieu=Richelieu River 45.4 -73.25;
 Saint-Maurice River=Rivière Saint-Maurice 47.0 -72.8; Gatineau River=the Gatineau=Gatineau Hills 45.9 -75.9; Rideau
 River=Rideau Canal=the Rideau 44.9 -75.9 .5; Grand River=Grand River (Ontario) 43.4 -80.4 .5; Thames River (Ontario)
 42.7 -81.8; Humber River 43.75 -79.6; Credit River 43.6 -79.7; Trent River=Trent-Severn Waterway 44.3 -78.0 .6;
 Niagara=Niagara Peninsula=Niagara region 43.1 -79.3; St. Clair River 42.7 -82.5; French River 46.0 -80.6; Moose
 River 51.0 -81.0; Albany River 51.5 -85.0 1.5; Nelson River 56.0 -95.0 1.5; Churchill River 57.0 -98.0 3;
 Assiniboine River=the Assiniboine 50.2 -99.5 1; Qu'Appelle River=Qu'Appelle Valley 50.6 -103.5 .8; Bow River=the Bow
 50.9 -114.0 1; Red Deer River 51.8 -112.5 1; Athabasca River 56.0 -113.0 2.5; Peace River (river)=the Peace=Peace
 River Country 56.3 -117.5 2; Thompson River 50.6 -120.8; Skeena River=the Skeena 54.7 -128.8; Stikine River 57.5
 -131.0; Kootenay River=the Kootenays=Kootenays=Kootenay 49.6 -117.0 1; Miramichi River=the Miramichi 46.8 -65.7;
 Restigouche River 47.8 -67.0; Petitcodiac River 45.95 -64.8; LaHave River 44.4 -64.5; Margaree River=Margaree Valley
 46.35 -61.0; Exploits River 48.9 -56.2; Humber River (Newfoundland) 49.0 -57.6; Lachine Canal 45.46 -73.62 .05;
 Welland Canal 43.1 -79.2
CA: island Grand Manan=Grand Manan Island 44.7 -66.8; Campobello Island=Campobello 44.88 -66.93; Deer Island (New
 Brunswick) 44.99 -66.97; Partridge Island (Saint John) 45.24 -66.05 .01; Cape Breton Island=Cape Breton=Île du
 Cap-Breton=Cape Breton Highlands 46.2 -60.8 .8; Sable Island 43.93 -60.0; Brier Island 44.26 -66.36; Isle Madame 45.55
 -60.95; Georges Island=McNabs Island 44.63 -63.55 .03; Prince Edward Island (island)=the Island 46.4 -63.2 .8; Fogo
 Island 49.65 -54.2; Bell Island 47.62 -52.97; Anticosti=Anticosti Island=Île d'Anticosti 49.5 -63.0 .8; Île
 d'Orléans=Ile d'Orleans=Island of Orleans=Isle of Orleans 46.92 -70.97; Grosse Île=Grosse Isle=Grosse-Île 47.03
 -70.67; Île aux Coudres=Isle-aux-Coudres 47.4 -70.38; Île Sainte-Hélène=St. Helen's Island=Île Notre-Dame 45.52 -73.53
 .02; Île Jésus 45.6 -73.75; Pelee Island=Point Pelee 41.77 -82.6; Wolfe Island 44.2 -76.4; Amherst Island 44.15
 -76.72; Toronto Islands=Toronto Island=Centre Island=Ward's Island=Hanlan's Point 43.62 -79.38 .03; Christian Island
 44.83 -80.2; St. Joseph Island=St Joseph Island 46.2 -83.95; Salt Spring Island=Saltspring Island=Saltspring 48.8
 -123.5; Gabriola=Gabriola Island 49.16 -123.8; Galiano Island 48.95 -123.45; Mayne Island 48.85 -123.28; Pender Island
 48.77 -123.28; Bowen Island 49.38 -123.37; Denman Island=Hornby Island 49.53 -124.75; Quadra Island 50.2 -125.25; Gulf
 Islands 48.9 -123.5; Haida Gwaii=Queen Charlotte Islands=Queen Charlottes 53.2 -132.0 1; Texada Island 49.65 -124.4;
 Granville Island 49.27 -123.134 .01; Baffin Island 68.0 -70.0 5; Ellesmere Island 79.0 -80.0 4; Victoria Island 71.0
 -109.0 3; Herschel Island 69.58 -139.08; Southampton Island 64.5 -84.0 1.2; Labrador=Labrador Coast=the Labrador 54.0
 -61.0 3
CA: mountain Mount Logan 60.57 -140.4; Mount Assiniboine 50.87 -115.65; Mount Rundle=Rundle 51.12 -115.47; Mount Edith
 Cavell 52.67 -118.06; Sulphur Mountain=Tunnel Mountain=Cascade Mountain 51.18 -115.57; Castle Mountain=Mount
 Eisenhower 51.3 -115.93; Mount Columbia=Columbia Icefield=Athabasca Glacier 52.15 -117.4; Mount Seymour 49.39 -122.94;
 Cypress Mountain=Hollyburn=Black Mountain 49.39 -123.2; The Lions=Lions Gate 49.46 -123.19; Mount
 Tremblant=Mont-Tremblant (mountain)=Mont Tremblant (mountain) 46.21 -74.56; Mont Sainte-Anne 47.1 -70.9; Mount
 Orford=Mont Orford 45.31 -72.24; Mont-Saint-Hilaire (mountain)=Mount St. Hilaire 45.55 -73.16; Blue Mountain (Ontario)
 44.5 -80.32; Hamilton Mountain=the Mountain 43.23 -79.87 .05; Turtle Mountain 49.0 -100.2; Riding Mountain 50.85
 -100.0; Cypress Hills 49.6 -110.0; Signal Hill (St. John's) 47.571 -52.682 .01; Citadel Hill 44.6475 -63.58 .01;
 Plains of Abraham 46.8 -71.22 .01; Laurentians=the Laurentians=Laurentides=les Laurentides=Laurentian Mountains 46.3
 -74.5 .7; Eastern Townships=Cantons de l'Est=Estrie=the Townships 45.35 -72.0 .5; Gaspé Peninsula=Gaspésie=Gaspe
 Coast=the Gaspé=Gaspe Peninsula 48.6 -65.7 .6; Beauce (Quebec)=la Beauce québécoise 46.2 -70.8; Charlevoix 47.6 -70.3;
 Mauricie 47.2 -73.0; Abitibi=Abitibi-Témiscamingue 48.3 -78.5 1; Haliburton Highlands 45.1 -78.5; Algonquin
 Park=Algonquin 45.6 -78.4 .5; Ottawa Valley 45.6 -76.6 .6; Bruce Peninsula=the Bruce 44.9 -81.2 .3; Prince Edward
 County (Ontario) 44.0 -77.2 .3; Peace Country 55.8 -118.5 1.2; Palliser's Triangle=Canadian Prairies=the
 Prairies=Prairies 51.0 -106.0 4; Cariboo=the Cariboo 52.5 -121.8 .9; Similkameen 49.3 -120.0; Fraser Valley 49.15
 -122.0 .4; Avalon Peninsula=the Avalon 47.3 -53.3 .5; Burin Peninsula 47.0 -55.5; Bonavista Bay=Trinity Bay=Conception
 Bay=Notre Dame Bay=Placentia Bay 48.0 -53.3 1; Cabot Trail 46.7 -60.7; Kicking Horse Pass=Rogers Pass=Crowsnest Pass
 (pass)=Yellowhead Pass 51.3 -117.0 .8; Cape Spear 47.52 -52.62; Cape Race 46.66 -53.07; Percé Rock=Rocher Percé 48.52
 -64.2; Canadian Shield 50.0 -85.0 5; Barkerville 53.07 -121.52; Ungava=Ungava Bay=Nunavik 59.0 -68.0 2; Point Grey
 49.26 -123.25 .03; Camp Petawawa=Petawawa Camp 45.9 -77.3; Valcartier Camp=Camp Valcartier=Valcartier 46.9 -71.5; Camp
 Hughes 49.88 -99.55; Sarcee Camp 51.0 -114.15
CA US: mountain Chilkoot Pass=the Chilkoot=White Pass 59.7 -135.24
CA: sea Gulf of St. Lawrence=Gulf of Saint Lawrence=Golfe du Saint-Laurent 48.0 -62.0 2; Strait of Georgia=Georgia
 Strait 49.3 -123.9 .8; English Bay 49.285 -123.15 .02; Burrard Inlet=Indian Arm=Howe Sound 49.3 -123.0 .2; Juan de
 Fuca Strait=Strait of Juan de Fuca 48.3 -124.0 .6; Northumberland Strait 46.1 -63.5 .7; Bay of Quinte 44.15 -77.2;
 Minas Basin=Cobequid Bay 45.3 -64.2; Mahone Bay (bay) 44.45 -64.3; St. Margaret's Bay=St. Margarets Bay 44.6 -64.0;
 Bedford Basin=Halifax Harbour 44.68 -63.62; Chaleur Bay=Baie des Chaleurs=Bay of Chaleur 47.9 -65.5 .6; James
 Bay=Baie James 53.5 -80.5 1.5; Hudson Strait=Davis Strait 62.5 -70.0 3; Desolation Sound 50.1 -124.7; Long Beach
 (Vancouver Island)=Clayoquot Sound=Nootka Sound=Barkley Sound 49.2 -125.8 .6; Wasaga Beach (beach) 44.5 -80.03;
 Crystal Beach 42.86 -79.06; Long Point 42.57 -80.3
US: lake Lake Winnipesaukee=Winnipesaukee 43.6 -71.3; Moosehead Lake 45.65 -69.65; Sebago Lake 43.85 -70.57; Lake
 Sunapee 43.38 -72.06; Squam Lake 43.75 -71.53; Finger Lakes=the Finger Lakes 42.7 -76.9 .4; Cayuga Lake 42.7 -76.7;
 Seneca Lake 42.65 -76.9; Keuka Lake 42.5 -77.15; Canandaigua Lake 42.75 -77.3; Skaneateles Lake 42.85 -76.38; Oneida
 Lake 43.2 -75.9; Chautauqua Lake=Chautauqua 42.17 -79.4; Saranac Lake (lake)=Lower Saranac Lake 44.3 -74.2; Lake
 Hopatcong 40.95 -74.63; Lake Wallenpaupack 41.42 -75.22; Lake Mead 36.25 -114.4 .4; Lake Powell 37.1 -111.3 .6; Lake
 Okeechobee=Okeechobee 26.95 -80.8; Lake Pontchartrain=Pontchartrain 30.18 -90.1; Lake Itasca 47.22 -95.2; Mille
 Lacs=Mille Lacs Lake 46.24 -93.65; Leech Lake 47.15 -94.4; Lake Minnetonka=Minnetonka (lake) 44.92 -93.6; Lake
 Harriet=Lake Calhoun=Lake Nokomis 44.93 -93.3 .04; Lake Pepin 44.5 -92.3; Lake Vermilion=Vermilion Lake 47.87 -92.4;
 Lake Winnebago 44.0 -88.4; Lake Mendota=Lake Monona 43.1 -89.4; Lake Geneva (Wisconsin)=Geneva Lake 42.57 -88.5;
 Devils Lake (Wisconsin) 43.42 -89.73; Wisconsin Dells (dells) 43.63 -89.77; Torch Lake 45.0 -85.3; Houghton Lake
 (lake) 44.35 -84.7; Higgins Lake 44.48 -84.7; Torch Lake (Michigan) 44.95 -85.3; Lake Charlevoix 45.27 -85.15;
 Walloon Lake 45.3 -85.0; Mullett Lake 45.5 -84.5; Crystal Lake (Michigan) 44.67 -86.15; Glen Lake 44.87 -85.95; Lake
 Wawasee 41.4 -85.7; Lake of the Ozarks 38.15 -92.8 .3; Lake Texoma 33.9 -96.6 .3; Caddo Lake 32.7 -94.1; Reelfoot
 Lake 36.4 -89.37; Devils Lake (lake) 48.0 -98.9; Flathead Lake 47.9 -114.1; Lake McDonald=St. Mary Lake 48.6 -113.9;
 Jenny Lake=Jackson Lake 43.8 -110.7; Yellowstone Lake 44.45 -110.35; Lake Coeur d'Alene=Coeur d'Alene Lake 47.5
 -116.8; Lake Pend Oreille=Pend Oreille 48.15 -116.35; Lake Chelan=Chelan (lake) 47.95 -120.3; Lake Washington 47.6
 -122.25; Green Lake (Seattle)=Lake Union 47.66 -122.34 .03; Crater Lake 42.94 -122.1; Clear Lake (California) 39.03
 -122.8; Big Bear Lake (lake) 34.25 -116.95; Lake Arrowhead (lake) 34.26 -117.18; Salton Sea 33.3 -115.8; Mono Lake
 38.0 -119.0; Donner Lake=Donner Pass 39.32 -120.27; Fallen Leaf Lake 38.9 -120.06; Walden Pond=Walden 42.44 -71.34
 .01; Quinsigamond=Lake Quinsigamond 42.26 -71.75; Jamaica Pond 42.317 -71.12 .01; White Bear Lake (lake) 45.08
 -92.98
US: river Connecticut River 42.5 -72.5 2; Delaware River=the Delaware 40.7 -75.0 1.2; Susquehanna
 River=Susquehanna=the Susquehanna 40.8 -76.6 1.2; Schuylkill River=Schuylkill=the Schuylkill 40.2 -75.6; Potomac
 River=Potomac=the Potomac 38.9 -77.4 1; James River=James River (Virginia) 37.5 -77.8; Shenandoah
 River=Shenandoah=Shenandoah Valley 38.6 -78.6 .6; Rappahannock River 38.2 -77.3; Allegheny River=the Allegheny 41.0
 -79.6 .8; Monongahela River=Monongahela=the Monongahela=the Mon 40.0 -79.9; Kanawha River 38.4 -81.8; Cuyahoga
 River=the Cuyahoga 41.3 -81.6; Maumee River 41.4 -83.9; Wabash River=the Wabash=Wabash (river) 39.5 -87.4 1;
 Tennessee River 35.5 -87.0 1.5; Cumberland River 36.5 -86.5 1.2; Kentucky River 38.0 -84.5; Illinois River 40.5
 -89.7 1; Chicago River 41.88 -87.64 .04; Wisconsin River 43.8 -89.8 1; Fox River 42.0 -88.3; St. Croix River=Saint
 Croix River 45.3 -92.8; Minnesota River 44.7 -95.0; Des Moines River 41.6 -93.6; Platte River=the Platte 41.0 -99.0
 1.5; Arkansas River 37.0 -98.0 3; Red River (Texas) 33.8 -97.0 2; Colorado River=the Colorado 36.5 -112.5 3;
 Colorado River (Texas) 30.5 -98.0; Brazos River=the Brazos 31.8 -97.5 1.5; Guadalupe River 29.8 -98.0; Snake
 River=the Snake 44.0 -116.0 2.5; Willamette River=Willamette=Willamette Valley 44.8 -123.0 .8; Sacramento River 39.5
 -121.8; American River 38.7 -121.0; Russian River (California) 38.6 -123.0; San Joaquin Valley=San Joaquin River
 36.7 -120.2 1; East River 40.74 -73.96 .06; Harlem River 40.84 -73.93 .03; Bronx River 40.87 -73.87 .05; Charles
 River=the Charles 42.35 -71.15 .1; Merrimack River=the Merrimack 42.9 -71.4; Kennebec River=the Kennebec 44.4 -69.7;
 Penobscot River=Penobscot=Penobscot Bay 44.5 -68.8; Mohawk River=Mohawk Valley=the Mohawk 43.0 -74.7 .5; Genesee
 River=the Genesee=Genesee Valley 42.7 -77.8; Erie Canal 43.1 -76.5 1.5; Savannah River 33.0 -81.8; St. Johns
 River=St Johns River 29.8 -81.6; Suwannee River=Swanee River 30.0 -82.9; Chattahoochee River 33.5 -84.8; Alabama
 River=Mobile Bay 30.5 -88.0; Yazoo River=Mississippi Delta=the Delta 33.3 -90.5 .8; Cape Cod Canal 41.75 -70.58;
 Yellowstone River 46.0 -108.5; Milk River 48.5 -108.5; Musselshell River 46.4 -108.8; Big Horn River=Bighorn
 River=Little Bighorn=Little Big Horn 45.5 -107.6; Gila River 33.0 -111.0; Klamath River 41.7 -123.2; Hood Canal 47.6
 -122.9; Roaring Fork=Frying Pan 39.4 -107.0
US MX: river Rio Grande=Río Grande=Rio Bravo 31.0 -104.0 4
US: island Manhattan=Manhattan Island 40.78 -73.97 .08; Staten Island (island) 40.58 -74.15 .08; Coney Island 40.574
 -73.98 .02; Fire Island 40.65 -73.15; Shelter Island (New York) 41.07 -72.33; Block Island 41.17 -71.58; Nantucket
 Island 41.28 -70.1; Martha's Vineyard=Marthas Vineyard=the Vineyard 41.39 -70.64; Cape Cod=the Cape=Cape Cod (cape)
 41.75 -70.2 .3; Cape Ann 42.65 -70.62; Mount Desert Island=Mt. Desert 44.33 -68.3; Monhegan 43.76 -69.32; Isle au Haut
 44.05 -68.63; Deer Isle (Maine) 44.22 -68.68; Isles of Shoals 42.98 -70.61; Castle Garden 40.703 -74.017 .005;
 Governors Island=Governor's Island 40.69 -74.017 .01; Roosevelt Island=Blackwell's Island=Welfare Island 40.76 -73.95
 .01; Rikers Island 40.79 -73.885 .01; City Island 40.85 -73.79 .01; Liberty Island=Bedloe's Island=Statue of Liberty
 40.689 -74.045 .005; Long Beach Island 39.65 -74.2; Chincoteague Island=Assateague 37.95 -75.35; Outer Banks=Cape
 Hatteras=Kill Devil Hills (dunes)=Hatteras 35.3 -75.6 .6; Roanoke Island 35.9 -75.68; Hilton Head Island 32.2 -80.75;
 Sea Islands 32.0 -80.9 .6; Parris Island 32.33 -80.69; Jekyll Island=St. Simons Island 31.1 -81.4; Amelia Island 30.6
 -81.45; Florida Keys=the Keys 24.8 -80.9 .5; Sanibel=Captiva 26.44 -82.1; Galveston Island 29.25 -94.9; Padre Island
 27.0 -97.38 .5; Mackinac Island (island)=Mackinac=Mackinaw Island 45.86 -84.62; Isle Royale 48.0 -88.9; Beaver Island
 45.65 -85.55; Drummond Island 46.0 -83.7; Belle Isle (Detroit) 42.34 -82.98 .02; Madeline Island=Apostle Islands 46.8
 -90.7; Washington Island 45.38 -86.9; Put-in-Bay (island)=South Bass Island 41.65 -82.82; Kelleys Island (island) 41.6
 -82.7; Catalina Island=Santa Catalina Island=Catalina 33.4 -118.4; Angel Island 37.86 -122.43 .02; Alcatraz 37.827
 -122.423 .005; Treasure Island (San Francisco) 37.824 -122.37 .01; Coronado Island 32.68 -117.18; Whidbey Island 48.15
 -122.6; San Juan Islands=Orcas Island 48.55 -123.0; Vashon Island=Vashon 47.43 -122.46; Bainbridge Island (island)
 47.65 -122.53; Mercer Island (island) 47.57 -122.22; Kodiak Island 57.4 -153.5; Aleutians=Aleutian Islands=Attu 52.5
 -175.0 4; Oahu=O'ahu 21.45 -158.0 .3; Maui 20.8 -156.3 .3; Kauai=Kaua'i 22.05 -159.55; Hawaii (island)=Big Island=the
 Big Island 19.6 -155.5 .5; Molokai=Moloka'i 21.13 -157.0; Lanai 20.83 -156.93; Pearl Harbor 21.36 -157.96 .04
GU: island Guam (island) 13.45 144.78
UM: island Midway=Midway Island 28.21 -177.37; Wake Island 19.28 166.65
US: mountain Mount Mitchell 35.76 -82.27; Clingmans Dome 35.56 -83.5; Lookout Mountain=Missionary Ridge 34.98 -85.34;
 Stone Mountain (mountain) 33.8 -84.15; Mount Monadnock=Monadnock 42.86 -72.11; Mount Katahdin=Katahdin 45.9 -68.92;
 Cadillac Mountain 44.35 -68.22; Mount Mansfield 44.54 -72.81; Mount Marcy 44.11 -73.92; Mount Greylock 42.64 -73.17;
 Whiteface=Whiteface Mountain 44.37 -73.9; Bear Mountain 41.31 -74.0; Mount Rushmore 43.88 -103.46; Harney Peak 43.87
 -103.53; Devils Tower 44.59 -104.715; Longs Peak 40.25 -105.62; Mount Evans 39.59 -105.64; Mount Elbert 39.12 -106.45;
 Mount Whitney 36.58 -118.29; Half Dome=El Capitan 37.74 -119.55; Mount Lassen=Lassen Peak 40.49 -121.5; Mount St.
 Helens=Mount Saint Helens=Mt. St. Helens 46.2 -122.18; Mount Adams 46.2 -121.49; Mount Baker 48.78 -121.81; Mount
 Olympus (Washington)=Olympic Mountains=Hurricane Ridge=Olympic Peninsula 47.8 -123.7 .6; Mount Tamalpais=Mount
 Tam=Tamalpais 37.92 -122.58; Mount Diablo 37.88 -121.91; Mount Wilson 34.22 -118.06; Mount Lowe 34.23 -118.11; Mount
 San Jacinto 33.81 -116.68; Grand Teton=the Tetons=Tetons 43.74 -110.8; Diamond Head 21.26 -157.8; Mauna
 Loa=Kilauea=Mauna Kea 19.5 -155.5 .3; Haleakala 20.71 -156.25; Stone Mountain park 33.81 -84.15; Starved Rock 41.32
 -88.99; Old Faithful=Mammoth Hot Springs 44.6 -110.8; Bryce Canyon 37.6 -112.2; Zion=Zion Canyon=Zion National Park
 37.25 -113.0; Death Valley 36.4 -116.9 .6; Monument Valley 37.0 -110.1; Painted Desert=Petrified Forest 35.0 -109.8;
 Carlsbad Caverns (caves) 32.15 -104.45; Mammoth Cave 37.19 -86.1; Luray Caverns 38.66 -78.48; Niagara Falls (American)
 43.08 -79.07; Muir Woods 37.89 -122.57; Cumberland Gap 36.6 -83.67; Harpers Ferry heights 39.32 -77.74; Valley Forge
 40.1 -75.45; Appalachians=the Appalachians=Appalachian Mountains=Appalachia 38.0 -80.5 4; Smokies=the Smokies=Smoky
 Mountains=Great Smoky Mountains=Smokey Mountains 35.6 -83.5 .4; Blue Ridge Mountains=Blue Ridge=the Blue Ridge 36.5
 -81.0 1.5; Alleghenies=Allegheny Mountains=the Alleghenies 39.0 -79.5 1.5; Poconos=the Poconos=Pocono Mountains 41.1
 -75.4 .4; Berkshires=the Berkshires=Berkshire Hills 42.4 -73.25 .4; White Mountains=the White Mountains 44.2 -71.4 .4;
 Green Mountains=the Green Mountains 43.8 -72.8 .8; Finger Lakes wine region 42.6 -77.0; Hudson Valley=Hudson River
 Valley 41.8 -73.9 .8; Lehigh Valley 40.65 -75.4; Pine Barrens 39.8 -74.5; Jersey Shore=the Jersey Shore=the Shore 39.9
 -74.1 .7; Eastern Shore=Delmarva=Delmarva Peninsula 38.4 -75.8 .8; Tidewater=Hampton Roads 36.95 -76.4; Low
 Country=Lowcountry 32.6 -80.4; Everglades=the Everglades 25.6 -80.8 .5; Okefenokee=Okefenokee Swamp 30.75 -82.3; Ozark
 hills 36.5 -92.5; Bluegrass=Bluegrass Region 38.1 -84.5; Upper Peninsula=the U.P.=the UP=Upper Michigan 46.4 -87.3
 1.5; Keweenaw=Keweenaw Peninsula=Copper Country=the Keweenaw 47.2 -88.4 .4; Door County peninsula=Door Peninsula 44.95
 -87.3; Iron Range=Mesabi Range=the Iron Range=Mesabi=Cuyuna Range=Gogebic Range 47.4 -92.8 .8; North Shore (Minnesota)
 47.3 -91.3; Driftless Area 43.5 -90.8; Flint Hills 38.4 -96.5; Sandhills=Sand Hills (Nebraska)=Nebraska Sandhills 42.0
 -101.0 1; Badlands=the Badlands 43.8 -102.3; Texas Hill Country=Hill Country 30.3 -99.0 .8; Texas Panhandle=the
 Panhandle 35.3 -101.5 1; Oklahoma Panhandle 36.75 -101.5; Indian Territory=Cherokee Strip=Oklahoma Territory 35.7
 -96.5 1.8; Big Bend 29.3 -103.2; Palouse=the Palouse 46.9 -117.2; Columbia Gorge=Columbia River Gorge=Multnomah Falls
 45.6 -121.7 .4; Puget Sound=the Sound (Seattle) 47.7 -122.45 .6; Napa Valley 38.4 -122.35; Sierra Nevada=the
 Sierra=Sierras=the Sierras=High Sierra 37.8 -119.3 1.5; Mother Lode=Gold Country 38.4 -120.8 .8; Big Sur 36.2 -121.7;
 Mojave Desert=Mojave 35.0 -116.0 1; Imperial Valley 32.9 -115.5; Wasatch=Wasatch Front=Wasatch Range 40.7 -111.7;
 Midwest=the Midwest=Middle West 41.5 -90.5 5; Deep South=the South (States) 32.5 -87.0 3; Great Plains=the Plains 42.0
 -100.0 6; Dust Bowl 36.5 -101.0 1.5; Cascades=Cascade Range=the Cascades 45.5 -121.8 2; Inside Passage=Glacier Bay
 58.0 -135.5 1.5; Red Hook (point) 40.675 -74.01 .01
US CA: mountain Boundary Waters 48.0 -91.5
US: sea Chesapeake Bay=Chesapeake=the Chesapeake 38.0 -76.2 1.2; Delaware Bay 39.1 -75.2; Cape May Point=Cape May
 (cape) 38.93 -74.96; Long Island Sound 41.1 -72.9 .6; Great South Bay 40.68 -73.2; Sheepshead Bay 40.585 -73.945
 .01; Jamaica Bay 40.61 -73.84 .05; Narragansett Bay 41.6 -71.37; Buzzards Bay (bay) 41.55 -70.75; Casco Bay 43.7
 -70.1; Boston Harbor 42.33 -70.97; New York Harbor=New York Harbour=the Narrows=Upper New York Bay 40.66 -74.04 .06;
 Raritan Bay=Sandy Hook 40.46 -74.0; Tampa Bay 27.75 -82.55; Biscayne Bay 25.6 -80.25; Gulf of Mexico=the Gulf=Golfo
 de México 25.5 -90.0 5; Green Bay (bay) 45.0 -87.5 .6; Saginaw Bay 43.9 -83.6; Grand Traverse Bay=Little Traverse
 Bay 45.0 -85.5; Straits of Mackinac 45.82 -84.73; San Francisco Bay=the Bay=Bay Area=Golden Gate 37.7 -122.3 .4;
 Monterey Bay 36.8 -122.0; Santa Monica Bay=Santa Monica Pier 33.95 -118.5; Morro Bay (bay)=Morro Rock 35.37 -120.87;
 Half Moon Bay (bay) 37.48 -122.46; Elliott Bay 47.61 -122.38; Prince William Sound=Cook Inlet 60.5 -148.5 1;
 Waikiki=Waikiki Beach 21.277 -157.827 .01
US CA NZ AU CL PE JP RU: sea Pacific Ocean=the Pacific=Pacific=Stiller Ozean 0 -160.0 40
US CA GB IE FR ES PT BR AR ZA: sea Atlantic Ocean=the Atlantic=Atlantic=Atlantik=Mid-Atlantic=Atlantti=Atlandi
 ookean 25.0 -40.0 40
AU: lake Lake Macquarie=Lake Macquarie (lake) -33.1 151.6; Lake Illawarra -34.52 150.84; Tuggerah Lake=Tuggerah
 Lakes -33.3 151.5; Lake Burley Griffin -35.3 149.1 .04; Lake Burragorang=Burragorang Valley -34.0 150.4; Lake Eildon
 -37.2 145.95; Lake Wendouree -37.55 143.835 .02; Gippsland Lakes=Lake Wellington (Victoria)=Lakes Entrance (lakes)
 -37.95 147.7 .3; Lake Colac -38.3 143.6; Lake Torrens -31.0 137.8 .7; Lake Alexandrina=the Coorong=Coorong -35.9
 139.3 .4; Blue Lake (Mount Gambier) -37.85 140.78 .01; Great Lake (Tasmania) -41.9 146.75; Lake St Clair=Lake St.
 Clair (Tasmania) -42.1 146.2; Lake Pedder -42.95 146.2; Albert Park Lake -37.845 144.97 .01; Lake Argyle -16.3
 128.8; Jindabyne lake=Lake Jindabyne=Lake Eucumbene -36.2 148.6; Lake Mulwala -36.0 146.0; Lake Hume -36.1 147.1;
 Menindee Lakes -32.35 142.35
AU: river Murrumbidgee=Murrumbidgee River -34.8 145.8 1.5; Lachlan River -33.7 146.5; Macquarie River -32.0 148.2;
 Hunter River=Hunter Valley=the Hunter -32.5 151.0 .6; Parramatta River -33.83 151.1 .05; Georges River -34.0 151.0;
 Nepean River -33.8 150.7; Shoalhaven River=Shoalhaven -34.9 150.5; Clarence River -29.5 152.8; Richmond River -28.9
 153.3; Tweed River -28.3 153.4; Macleay River -31.0 152.8; Manning River -31.9 152.4; Yarra River=the
 Yarra=Yarra=Yarra Valley -37.75 145.3 .3; Barwon River -38.2 144.2; Goulburn River -36.8 145.3; Ovens River -36.5
 146.6; Campaspe=Loddon River -36.7 144.3; Maribyrnong River -37.75 144.87; Latrobe Valley -38.2 146.4; Torrens=River
 Torrens -34.9 138.65; Onkaparinga -35.1 138.6; Derwent River=River Derwent (Tasmania)=Derwent Valley -42.7 147.0;
 Tamar River=River Tamar (Tasmania)=Tamar Valley -41.25 146.95; Huon River=Huon Valley=the Huon -43.1 147.0; Gordon
 River=Franklin River -42.5 145.8; South Esk -41.6 147.4; Brisbane River -27.5 152.9; Burdekin River -19.8 147.2;
 Fitzroy River -23.3 150.5; Mary River -26.2 152.6; Burnett River -25.0 152.0; Daintree=Daintree River -16.25 145.35;
 Katherine Gorge -14.3 132.45; Avon River (Western Australia)=Avon Valley -31.8 116.5; Ord River -15.8 128.7; Gascoyne
 River -24.9 114.5; Blackwood River -34.1 115.5; Cooper Creek=Cooper's Creek -27.6 140.8; Riverina=the Riverina -34.8
 145.8 1; Wimmera=the Wimmera -36.5 142.2 .8; New England (Australia)=New England Tableland -30.2 151.6; Monaro=the
 Monaro -36.5 149.0; Illawarra=the Illawarra -34.5 150.8; Southern Highlands -34.5 150.4; Bellarine=Bellarine Peninsula
 -38.2 144.6; Fleurieu=Fleurieu Peninsula -35.5 138.5; Pilbara=the Pilbara -22.0 119.0 2; Goldfields (Western
 Australia) -30.8 121.3 .6; Arnhem Land -13.0 134.5 1.5; Cape York=Cape York Peninsula -13.5 142.8 2.5; Gold Coast
 beaches -28.0 153.43; Sunshine Coast -26.6 153.05 .3; Channel Country -25.5 141.5 1.5; Outback=the Outback -26.0 135.0
 6
AU: island Flinders Island -40.0 148.1; Bruny Island=Bruny -43.3 147.3; Maria Island -42.63 148.08; Phillip Island
 -38.48 145.23; French Island -38.35 145.35; Lord Howe Island=Lord Howe -31.55 159.08; Stradbroke Island=North
 Stradbroke=Straddie -27.5 153.43; Moreton Island -27.15 153.4; Bribie Island=Bribie -27.0 153.13; Great Keppel Island
 -23.18 150.95; Hayman Island=Whitsundays=Whitsunday Islands=Hamilton Island=Daydream Island=Lindeman Island -20.2
 148.95 .3; Dunk Island -17.95 146.15; Green Island (Queensland) -16.76 145.97; Thursday Island -10.58 142.22; Palm
 Island (Queensland) -18.73 146.6; Melville Island=Bathurst Island=Tiwi Islands -11.5 130.9; Groote Eylandt -14.0
 136.6; Cockatoo Island -33.847 151.172 .005; Garden Island (Sydney)=Pinchgut=Fort Denison -33.86 151.225 .01; Goat
 Island -33.85 151.197 .005; Scotland Island -33.64 151.29 .01; Churchill Island -38.5 145.34; Sarah Island -42.39
 145.45; Granite Island -35.565 138.63 .01; Peel Island (Queensland)=St Helena Island (Queensland) -27.45 153.3
NF: island Norfolk Island (island) -29.03 167.95
AU: mountain Mount Macedon -37.37 144.58; Mount Buffalo -36.77 146.8; Mount Buller -37.15 146.45; Mount Hotham
 -36.98 147.13; Mount Bogong -36.73 147.3; Mount Baw Baw -37.84 146.27; Mount Lofty=Adelaide Hills -35.0 138.75 .2;
 Mount Warning -28.4 153.27; Mount Tomah=Mount Wilson (New South Wales) -33.5 150.4; Three Sisters=Echo Point=Jenolan
 Caves=Wentworth Falls (falls)=Govetts Leap -33.75 150.25 .15; Mount Tamborine=Tamborine Mountain -27.95 153.2; Glass
 House Mountains -26.9 152.95; Mount Coot-tha -27.476 152.95 .02; Mount Field=Russell Falls -42.68 146.6; Mount
 Roland -41.47 146.25; Ben Lomond (Tasmania) -41.55 147.66; Mount Arapiles -36.75 141.85; Mount Feathertop -36.9
 147.13; Mount Morgan (mountain) -23.65 150.38; Bunya Mountains -26.87 151.58; Lamington=Lamington Plateau -28.25
 153.1; Kings Park -31.96 115.835 .01; The Olgas=Kata Tjuta -25.3 130.74; Alice Springs ranges=MacDonnell Ranges
 -23.7 133.0; Ayers Range -25.4 131.0; Wave Rock -32.44 118.9; Great Dividing Range=the Divide -33.0 150.0 8;
 Australian Alps=Snowy Mountains Scheme -36.5 148.3; Otways=Otway Ranges=Cape Otway -38.7 143.5; Strzelecki
 Ranges=Dandenong hills -38.3 146.2; Barrington Tops -32.0 151.5; Warrumbungles -31.3 149.0; Bass Strait islands
 -40.2 147.0; Port Arthur ruins -43.147 147.85; Cape Leeuwin -34.37 115.14; Cape Byron -28.63 153.64; The Nut -40.76
 145.3; The Gap -33.843 151.28 .005; Watsons Bay -33.844 151.28 .01; Simpson Desert -25.0 137.0 1.5; Tanami=Gibson
 Desert -23.0 127.0 2
AU: sea Botany Bay -33.98 151.2; Broken Bay=Pittwater -33.58 151.32; Jervis Bay -35.08 150.73; Twofold Bay -37.08
 149.93; Bondi=Bondi Beach (beach)=Coogee Beach=Bronte Beach -33.9 151.27 .03; Manly Beach=Manly Beach (beach) -33.795 151.288 .02; Hervey Bay (bay) -25.1
 152.9; Western Port=Westernport -38.38 145.3; Corio Bay -38.1 144.4; Apollo Bay (bay) -38.76 143.67; Spencer Gulf
 -34.0 137.0 1; Gulf St Vincent=St Vincent Gulf -35.0 138.1 .5; Encounter Bay -35.6 138.7; Great Australian Bight=the
 Bight -33.0 131.0 3; Storm Bay=D'Entrecasteaux Channel -43.2 147.4; Macquarie Harbour -42.3 145.4; Wineglass
 Bay=Freycinet=Coles Bay (bay)=Freycinet Peninsula -42.2 148.3; Shark Bay -25.5 113.5; King George Sound=Princess Royal
 Harbour -35.03 117.95; Geographe Bay -33.6 115.2; Exmouth Gulf=Ningaloo -22.2 114.2; Gulf of Carpentaria=the Gulf
 Country -14.0 139.0 3; Coral Sea -17.0 152.0 4; Darwin Harbour -12.5 130.8
AU PG: sea Torres Strait -10.0 142.2
NZ: lake Lake Wairarapa -41.2 175.25; Lake Rotomahana -38.26 176.44; Lake Tarawera -38.2 176.43; Lake Okataina
 -38.13 176.43; Blue Lake (Rotorua)=Tikitapu -38.2 176.33; Lake Hayes -44.98 168.81; Lake Ohau -44.23 169.85; Lake
 Benmore -44.4 170.2; Lake Coleridge -43.3 171.5; Lake Sumner -42.7 172.22; Lake Matheson -43.44 169.97; Lake Kaniere
 -42.83 171.15; Lake Hauroko -45.97 167.3; Lake Monowai -45.87 167.45; Lake Waihola (lake) -46.0 170.1; Lake Forsyth
 -43.8 172.75; Lake Horowhenua -40.6 175.25; Lake Karapiro -37.94 175.6; Lake Pupuke -36.78 174.77 .01; Lake
 Mahinerangi -45.85 169.95; Lake Rotoroa=Lake Rotoroa (Nelson) -41.87 172.63; Lake Dunstan -44.95 169.25; Lake
 Alexandrina (NZ) -43.93 170.45; Lake Heron -43.48 171.17; Lake Grassmere -41.73 174.15; Diamond Lake=Mirror Lakes
 -45.03 168.0
NZ: river Avon (Christchurch)=River Avon (Christchurch)=Avon River=the Avon (Christchurch) -43.52 172.65 .05; Heathcote
 River=the Heathcote -43.56 172.68 .04; Leith=Water of Leith -45.86 170.52 .02; Kawarau River=Kawarau Gorge=the Kawarau
 -45.0 168.95; Shotover River=the Shotover=Skippers Canyon=Skippers -44.9 168.7; Arrow River -44.9 168.85; Mataura
 River=the Mataura -46.0 168.9; Oreti River -45.9 168.3; Aparima -46.1 168.0; Waiau River -45.9 167.6; Rangitata
 River=the Rangitata -43.8 171.3; Ashburton River -43.7 171.6; Opihi River -44.25 171.1; Hurunui River -42.8 172.6;
 Clarence River (NZ) -42.2 173.7; Wairau River=Wairau Valley=Wairau Plains -41.6 173.5; Motueka River=Motueka Valley
 -41.4 172.8; Buller River=Buller Gorge=the Buller -41.8 171.9 .5; Grey River=the Grey -42.4 171.4; Hokitika River
 -42.85 171.0; Haast River=Haast Pass -43.95 169.2; Hutt River=the Hutt=Hutt Valley -41.15 175.0; Manawatu
 River=Manawatu Gorge=Manawatū -40.35 175.5; Rangitikei River -39.8 175.8; Mokau River -38.7 174.9; Waipa River -38.0
 175.2; Waihou River -37.4 175.6; Ohinemuri River=Karangahake Gorge -37.42 175.72; Wairoa River (NZ) -39.0 177.4;
 Ngaruroro=Tutaekuri -39.6 176.7; Tukituki River -39.9 176.7; Mohaka River -39.1 176.9; Waipaoa River -38.5 177.85;
 Motu River -38.0 177.6; Hokianga=Hokianga Harbour -35.5 173.4; Nevis Valley=Nevis -45.1 169.0; Maniototo=Maniototo
 Plain=the Maniototo -45.2 170.2 .4; Ida Valley -45.05 169.85; Strath Taieri -45.4 170.25; Mackenzie Country=the
 Mackenzie Country=Mackenzie Basin -44.2 170.3 .5; Canterbury Plains=the Plains (Canterbury) -43.8 171.8 .7;
 Catlins=the Catlins=Catlins River -46.5 169.4 .3; Urewera=Te Urewera=the Ureweras -38.6 177.0 .4; East Coast (NZ)=East
 Coast Gisborne -38.2 178.0 .6; Wairarapa=the Wairarapa -41.0 175.6 .4; Coromandel Peninsula=the Coromandel -36.9 175.6
 .4; Heretaunga Plains -39.6 176.8; Otago Peninsula=the Peninsula (Otago) -45.85 170.65; Karitane coast -45.64 170.66;
 Far North=Ninety Mile Beach=Northland peninsula -35.0 173.3 .5; West Coast (NZ)=the Coast -42.8 171.0 1.2; Westland
 forest -43.4 170.0; Central Otago goldfields=Dunstan goldfields=Tuapeka goldfields -45.3 169.3 .6
NZ: island Stewart Island (island) -47.0 168.0 .3; Waiheke=Waiheke Island -36.8 175.1; Great Barrier Island=Great
 Barrier -36.2 175.4; Little Barrier Island -36.2 175.08; Kawau=Kawau Island -36.42 174.85; Rangitoto=Rangitoto
 Island -36.79 174.86; Motutapu -36.77 174.92; Motuihe -36.81 174.94; Kapiti Island=Kapiti -40.86 174.91; Matiu Somes
 Island=Somes Island -41.257 174.865 .01; D'Urville Island -40.83 173.85; Quarantine Island=Quail Island=Kamau Taurua
 -45.828 170.635 .02; Ripapa Island=Ripa Island -43.62 172.755 .01; Ruapuke=Ruapuke Island -46.77 168.5; Codfish
 Island -46.78 167.63; White Island=Whakaari -37.52 177.18; Mayor Island=Tuhua -37.28 176.25; Mokoia=Mokoia Island
 -38.08 176.285 .02; Matakana Island -37.55 176.05; Chatham Islands (islands)=Pitt Island -44.1 -176.5; Campbell
 Island=Auckland Islands -51.0 167.5 1.8; Browns Island=Motukorea -36.83 174.895 .01; Arapawa Island=Arapaoa -41.18
 174.3; Goat Island (Otago)=Rakiriri -45.822 170.63 .01; Tiritiri Matangi -36.6 174.89; Kermadecs=Raoul Island -29.27
 -177.92; Green Island bush -45.95 170.38; Ulva Island=Ulva -46.93 168.13
NZ: mountain Rangitoto volcano -36.786 174.86; Mount Hutt -43.47 171.53; Mount Peel (mountain) -43.83 171.18; Mount
 Somers (mountain) -43.65 171.33; Mount Earnslaw=Earnslaw -44.62 168.4; Coronet Peak -44.92 168.73; The
 Remarkables=Remarkables=the Remarkables -45.05 168.81; Ben Lomond (NZ) -45.0 168.61; Tapuae-o-Uenuku=Tapuaenuku
 -42.0 173.66; Mount Hikurangi=Hikurangi -37.92 178.06; Mount Maunganui (mountain)=Mauao=the Mount -37.63 176.17;
 Mount Eden (hill)=Maungawhau -36.877 174.764 .01; One Tree Hill=Maungakiekie -36.9 174.783 .01; Mount Victoria
 (Wellington) -41.296 174.795 .01; Mount Cargill lookout -45.81 170.55; Flagstaff=Flagstaff Hill=Signal Hill
 (Dunedin) -45.84 170.5 .05; Saddle Hill -45.91 170.35 .02; Mount Kaukau=Tinakori Hill -41.24 174.78; Mount
 Holdsworth -40.88 175.4; Mount Hector=Tararuas=Tararua Range=the Tararuas -40.8 175.4 .3; Ruahine Range=Ruahines
 -39.9 176.1; Kaimai Range=Kaimais -37.7 175.9; Waitakere Ranges=Waitakeres=the Waitakeres -36.95 174.5; Hunua Ranges
 -37.05 175.2; Kaikoura Ranges=Seaward Kaikouras -42.1 173.6; Port Hills=the Port Hills -43.6 172.7; Rock and
 Pillar=Rock and Pillar Range -45.4 170.1; Lammermoor Range=Old Man Range -45.4 169.4; Takitimu Mountains=Takitimus
 -45.7 167.8; Bluff Hill -46.61 168.35 .02; Lewis Pass -42.38 172.4; Lindis Pass -44.59 169.64; Burkes Pass (pass)
 -44.1 170.6; Crown Range -44.98 168.9; Takaka Hill -41.0 172.85; Milford Track=Sutherland Falls=Homer Tunnel -44.8
 167.85; Huka Falls -38.65 176.09; Bridal Veil Falls -37.9 174.9; Purakaunui Falls=Nugget Point=Cathedral Caves -46.5
 169.6; Punakaiki=Pancake Rocks -42.12 171.33; Moeraki Boulders -45.345 170.826; Waitomo Caves (caves)=Glowworm Caves
 -38.26 175.1; Pink and White Terraces=Pink Terraces=White Terraces -38.25 176.43;
 Whakarewarewa=Whaka=Wairakei=Waiotapu -38.16 176.26 .05; Cape Palliser -41.61 175.29; Cape Kidnappers -39.64 177.09;
 Cape Egmont -39.28 173.75; Cape Foulwind -41.75 171.46; Taiaroa Head=Taiaroa Heads=Otago Heads=the Heads -45.775
 170.73 .03; Pencarrow=Pencarrow Head -41.36 174.85; Volcanic Plateau=Desert Road=National Park (plateau) -39.2 175.6
 .4
NZ: sea Hawke Bay=Hawke's Bay (bay) -39.3 177.4 .4; Bay of Plenty (bay) -37.6 177.0 .6; Tasman Bay -40.95 173.2;
 Manukau Harbour -37.0 174.7; Waitemata Harbour=Waitemata=the Waitemata -36.83 174.75; Kaipara Harbour=Kaipara -36.4
 174.3; Whangarei Harbour -35.8 174.45; Raglan Harbour -37.8 174.9; Kawhia Harbour=Kawhia -38.08 174.85; Wellington
 Harbour=Port Nicholson -41.27 174.85; Lyttelton Harbour -43.61 172.75; Akaroa Harbour -43.82 172.93; Pegasus Bay -43.3
 172.9; Caroline Bay -44.388 171.25 .01; St Clair beach=St. Clair Beach=St Kilda Beach -45.913 170.495 .01; Paterson
 Inlet=Halfmoon Bay -46.93 168.1; Jackson Bay=Jacksons Bay -44.0 168.6; Dusky Sound=Preservation Inlet -45.75 166.8;
 Queen Charlotte Sound (NZ) -41.15 174.2; Tory Channel -41.2 174.3; Cloudy Bay -41.45 174.1; Blueskin Bay=Blueskin
 -45.72 170.6; Aramoana=Aramoana Spit=the Spit=the Mole -45.78 170.71 .02; Hoopers Inlet=Papanui Inlet -45.86 170.67;
 Oriental Bay -41.29 174.79 .01; Mission Bay -36.85 174.83 .01; Long Beach (Otago)=Murdering Beach=Whareakeake -45.76
 170.65; Careys Bay=Carey's Bay -45.81 170.63 .02;
 Sawyers Bay=Sawyer's Bay -45.82 170.6 .02; Deborah Bay -45.8 170.63 .02; Palliser Bay -41.45 175.1;
 Great Exhibition Bay=Doubtless Bay -34.9 173.5
ZA: river Tugela=Tugela River=Thukela -28.7 30.2 .8; Limpopo=Limpopo River -22.5 29.5 1.5; Great Fish River=Fish
 River -33.0 26.5; Kei River=Great Kei River -32.4 28.0; Sundays River -33.3 25.4; Breede River=Breede River Valley
 -33.9 20.0; Berg River -33.2 18.8; Olifants River -32.2 18.9; Umgeni=Umgeni River=Howick Falls -29.6 30.5; Buffalo
 River (Natal) -28.3 30.5; Modder River -29.0 25.0; Riet River -29.3 24.9; Crocodile River -25.4 31.0; Letaba=Sabie
 River -24.5 31.2; Liesbeek=Liesbeek River -33.95 18.47 .03; Kowie River -33.55 26.8; Knysna Lagoon=the Knysna Heads
 -34.06 23.05; Hartbeespoort Dam=Hartebeespoort -25.75 27.87; Vaal Dam -26.9 28.2; Zoo Lake=Emmarentia=Germiston Lake
 -26.16 28.03 .02; Lake St Lucia=St Lucia -28.1 32.45; Lake Chrissie (lake) -26.3 30.2; Augrabies Falls=Aughrabies
 Falls -28.6 20.34
ZA: mountain Devil's Peak=Lion's Head=Signal Hill (Cape Town)=Lions Head -33.945 18.41 .03; Cape Point=Cape of Good
 Hope (cape)=Kap der Guten Hoffnung -34.35 18.49; Cape Agulhas=Agulhas -34.83 20.0; Chapman's Peak -34.09 18.36 .03;
 Kirstenbosch -33.988 18.432 .01; Giant's Castle -29.27 29.5; Champagne Castle=Cathedral Peak=Mont-aux-Sources -28.9
 29.1 .3; Spion Kop=Spioenkop -28.65 29.52; Majuba=Majuba Hill=Amajuba -27.48 29.85; Isandlwana=Isandhlwana=Rorke's
 Drift -28.36 30.6; Magersfontein -28.97 24.7; Paardeberg -28.98 25.1; Elandslaagte=Colenso battlefield -28.42 29.98;
 Voortrekker Monument -25.776 28.176 .01; Magaliesberg (range)=Magaliesberg Mountains -25.8 27.3; Waterberg (Transvaal)
 -24.3 28.2; Soutpansberg=Zoutpansberg -22.95 29.8; Witwatersrand=the Rand=Rand=the Reef=East Rand=West Rand -26.2 28.0
 .4; Swartberg -33.35 22.3; Cederberg=Cedarberg -32.4 19.2; Hottentots Holland=Sir Lowry's Pass -34.1 18.95; Bain's
 Kloof=Du Toit's Kloof -33.6 19.1; Karoo=Karroo=Great Karoo=the Karoo=Little Karoo=Klein Karoo -32.5 22.5 2;
 Bushveld=the Bushveld=Lowveld=the Lowveld=Highveld=the Highveld -25.0 29.5 1.5; Kruger National Park=Kruger Park -24.0
 31.5 1.2; Garden Route -34.0 23.0 .6; Overberg -34.3 19.8; Boland -33.8 19.2; Sandveld=Namaqualand=Little Namaqualand
 -30.5 18.0 1; Griqualand West=Griqualand East=Griqualand -28.7 23.7 .9; Bechuanaland=British Bechuanaland -26.5 24.5
 1; Pondoland=Wild Coast -31.3 29.4 .6; Ciskei=Kaffraria=British Kaffraria=Border region -32.8 27.2 .6; Robben Island
 -33.806 18.366 .02; Seal Island -34.137 18.583 .01; Valley of a Thousand Hills -29.7 30.7; Meiringspoort=Cango Caves
 -33.39 22.21; Houw Hoek=Franschhoek Pass -34.2 19.15
LS: mountain Basutoland=Drakensberg foothills -29.5 28.3 .8
BW ZA NA: mountain Kalahari=Kalahari Desert -23.5 22.5 3
SZ: mountain Swaziland hills=Swazieland -26.5 31.4
NA: mountain Namib=Namib Desert -23.5 15.3 2
ZM ZW: mountain Victoria Falls=Mosi-oa-Tunya -17.925 25.857
ZA: sea Table Bay -33.85 18.4; False Bay=Valsbaai -34.2 18.65; Algoa Bay -33.85 25.85; Saldanha Bay (bay)=Langebaan
 Lagoon -33.05 18.0; Plettenberg Bay (bay) -34.05 23.4; Mossel Bay (bay) -34.15 22.15; Hout Bay (bay)=Camps
 Bay=Clifton Beach -34.0 18.36 .05; Durban Bay=Durban beachfront=Umhlanga Rocks (beach)=Isipingo Beach -29.8 31.05;
 Sodwana Bay=Kosi Bay -27.5 32.7; Gordon's Bay (bay) -34.17 18.85
NA: sea Walvis Bay (bay) -22.9 14.45
MZ: sea Delagoa Bay -26.0 32.7
IN BD: river Brahmaputra=the Brahmaputra 26.5 92.5 2.5
PK IN: river Jhelum River=Jhelum=the Jhelum 33.0 73.5 1; Indus=the Indus=Sindhu 30.0 71.0 5
IN: river Yamuna=Jumna=the Jumna=the Yamuna 28.0 78.0 2.5; Beas (river)=the Beas 31.7 76.0; Godavari=the Godavari 18.5
 79.0 2.5; Krishna=Kistna=the Krishna 16.5 77.5 2; Kaveri=Cauvery=the Cauvery=Cauvery River 11.5 77.8 1.2;
 Narmada=Nerbudda=the Narmada 22.3 77.0 2; Tapti=Tapi 21.3 75.5 1.5; Hooghly=Hugli River=the Hooghly=Hooghly River 22.4
 88.2 .8; Mahanadi 20.8 84.0; Damodar 23.6 87.0; Gomti=Gumti 26.8 81.2; Son=Sone River 24.5 83.5; Chambal 26.0 77.5;
 Ghaghara=Gogra 27.0 82.0; Kosi=Kosi River 26.3 86.8; Teesta=Tista 27.0 88.5; Periyar 10.0 76.8; Pamba 9.4 76.7;
 Tungabhadra 15.3 76.5; Sabarmati 23.0 72.6; Adyar River=Cooum 13.02 80.25 .04; Jog Falls=Gersoppa Falls 14.23 74.81;
 Dudhsagar 15.31 74.31; Mandovi=Zuari 15.5 73.85; Upper Ganges Canal=Ganges Canal 29.5 77.9
PK IN: river Chenab=the Chenab 32.0 74.0; Ravi=the Ravi 31.3 74.0; Sutlej=the Sutlej 31.0 75.0 1.5
BD: river Padma=the Padma 23.7 89.8; Meghna 23.5 90.7
MM: river Irrawaddy=the Irrawaddy=Ayeyarwady 20.5 95.0 4
AF: river Kabul River 34.3 70.5
PK: river Swat=Swat Valley 35.2 72.4; Khyber=Khyber Agency 34.1 71.1
IN: lake Chilika=Chilka Lake=Chilika Lake 19.7 85.35; Wular=Wular Lake 34.35 74.57; Naini Lake=Nainital Lake 29.387
 79.457 .01; Nagin Lake=Nigeen Lake 34.12 74.84; Ooty Lake=Ootacamund Lake 11.405 76.69 .01; Kodaikanal Lake 10.233
 77.487 .01; Pichola=Lake Pichola 24.572 73.68; Pushkar Lake 26.487 74.555; Sambhar Lake 26.9 75.1; Hussain
 Sagar=Husain Sagar 17.424 78.474 .01; Powai Lake=Vihar Lake 19.13 72.905 .03; Dhakuria Lake=Dhakuria Lakes=Rabindra
 Sarobar 22.513 88.363 .01; Vembanad=Kerala backwaters=Backwaters 9.6 76.4 .3; Loktak 24.55 93.8; Umiam=Barapani
 25.66 91.89; Ulsoor Lake 12.983 77.62 .01; Pangong=Pangong Tso 33.75 78.7; Tsomgo=Changu Lake 27.374 88.763; Periyar
 Lake 9.53 77.2; Rankala 16.69 74.21 .01
CN: lake Manasarovar=Mansarovar=Mount Kailash=Kailash 31.0 81.4
IN: mountain Nanda Devi 30.37 79.97; Trisul 30.31 79.77; Tiger Hill 26.995 88.287; Observatory Hill=Birch Hill 27.045
 88.265 .02; Sandakphu=Singalila 27.105 88.0; Mount Abu (mountain)=Guru Shikhar 24.65 72.78; Doddabetta=Dodabetta 11.4
 76.736; Anamudi=Anai Mudi 10.17 77.06; Jakko=Jakko Hill=Jakhoo 31.105 77.185 .01; Gun Hill=Lal Tibba 30.46 78.08 .02;
 Malabar Hill=Cumballa Hill 18.955 72.8 .01; St Thomas Mount=St. Thomas Mount=Parangimalai 13.004 80.193 .02; Chamundi
 Hill=Chamundi Hills=Chamundi 12.272 76.67; Nandi Hills=Nandidrug=Nandi Droog 13.37 77.68; Parasnath=Parasnath Hill
 23.96 86.13; Rohtang=Rohtang Pass 32.37 77.25; Zoji La=Zojila 34.28 75.47; Banihal Pass 33.5 75.2; Kala Pani=Cellular
 Jail 11.674 92.747 .01; Nilgiri Hills=Nilgiris=the Nilgiris=Blue Mountains (India)=Neilgherries=Nilgiri 11.4 76.7 .4;
 Western Ghats=the Ghats=Sahyadri=Eastern Ghats 14.0 75.5 5; Aravalli=Aravallis 25.0 73.5 1.5; Vindhya=Vindhyas=Satpura
 22.8 78.0 2; Garo Hills=Khasi Hills=Naga Hills=Lushai Hills=Jaintia Hills=Cachar 25.3 92.0 1.8; Shevaroy
 Hills=Shevaroys 11.8 78.2; Palani Hills=Anamalai Hills=Anaimalai 10.3 77.3; Cardamom Hills=High Range=High Ranges 9.9
 77.1; Coorg hills=Kodagu=Coorg 12.35 75.8; Wayanad=Wynaad 11.65 76.1; Araku Valley 18.33 82.87; Kashmir Valley=Vale of
 Kashmir=Cashmere (India) 34.0 74.8 .5; Kulu Valley=Kullu Valley=Kulu 31.95 77.1; Kangra Valley=Kangra (valley) 32.1
 76.4; Doon Valley=Dun=Dehra Dun valley 30.3 78.0; Kumaon=Kumaun=Garhwal 29.8 79.6 .8; Terai=Dooars=Duars=the
 Dooars=the Terai 26.9 89.0 1.5; Doab=the Doab 27.5 78.5 1; Deccan=the Deccan=Deccan Plateau 17.5 77.0 3;
 Konkan=Malabar Coast=Malabar=Coromandel Coast=Konkan Coast 14.5 74.0 3; Kutch=Rann of Kutch=Cutch=Kachchh 23.7 70.0 1;
 Kathiawar=Saurashtra=Kattywar 22.0 71.0 1; Rajputana=Marwar=Mewar=Shekhawati 26.5 73.8 2;
 Bundelkhand=Baghelkhand=Rohilkhand=Oudh=Awadh 25.8 80.0 2; Chota Nagpur=Chhota Nagpur 23.3 85.3 .9;
 Sundarbans=Sunderbans 21.9 89.0 .6; Thar=Thar Desert 27.0 71.0 1.5; Malwa 23.3 76.0; Telangana plateau=Rayalaseema
 15.0 78.5; Travancore=Cochin State=Travancore-Cochin 9.2 76.8 .9; Carnatic=Karnatak 12.0 79.0 1.5; Kolar Gold
 Fields=K.G.F.=KGF=Champion Reefs 12.96 78.27; Elephanta=Elephanta Caves=Elephanta Island 18.963 72.931; Ajanta=Ajanta
 Caves=Ellora=Ellora Caves 20.3 75.5 .4; Taj Mahal 27.175 78.042 .01; Qutb Minar=Kutub Minar=Qutub Minar 28.524 77.185
 .01
PK IN CN: mountain Karakoram 36.0 76.0 1.5
PK IN: mountain Punjab plains=the Punjab 31.0 74.5 2.5
PK: mountain Sind=Scinde=Sindh (region) 26.0 68.5 1.8; Baluchistan=Balochistan (region)=Beluchistan 28.5 65.5 3
MM: mountain Chin Hills=Arakan=Tenasserim 21.0 94.0 3
PK: mountain Nanga Parbat 35.24 74.59; K2=Mount Godwin-Austen=Godwin Austen 35.88 76.51; Bolan Pass=Bolan 29.5 67.4;
 Chitral valley 35.85 71.8; Hunza 36.3 74.65; Quetta valley 30.2 67.0; Clifton (Karachi) 24.81 67.03 .03; Siachen
 35.5 77.0
IN NP BT PK CN: mountain Himalayas=the Himalayas=Himalaya=the Himalaya 29.5 82.0 6
AF: mountain Hindu Kush 35.5 71.0 1.5
PK: mountain Waziristan=North-West Frontier=Northwest Frontier=NWFP 33.5 70.5 1.5
IN: island Andaman Islands=Andamans=the Andamans 12.0 92.8 1.6; Nicobar Islands=Car Nicobar=Great Nicobar=Nicobars
 8.0 93.6 1.3; Ross Island=Viper Island 11.675 92.76 .02; Lakshadweep=Laccadive Islands=Laccadives 10.6 72.6 1;
 Salsette=Salsette Island 19.15 72.9; Sagar Island=Saugor Island 21.75 88.1; Diu (island) 20.71 70.98; Majuli 26.95
 94.2; Rameswaram Island=Pamban 9.28 79.3; Vypeen=Willingdon Island 9.97 76.26 .05; Divar=Chorao 15.53 73.9; Juhu
 Beach=Chowpatty=Chowpatty Beach=Back Bay 19.05 72.825 .08; Marina Beach=the Marina 13.05 80.283 .02; Puri Beach
 19.797 85.826; Cape Comorin=Kanyakumari (cape) 8.08 77.55; Bay of Bengal 15.0 88.0 5; Arabian Sea 16.0 65.0 7; Gulf
 of Mannar=Palk Strait 9.3 79.2 .8; Gulf of Cambay=Gulf of Khambhat 21.5 72.4
IN LK AU ZA KE: island Indian Ocean=the Indian Ocean -15.0 80.0 25
LK: mountain Adam's Peak=Sri Pada 6.81 80.5; Horton Plains=World's End 6.8 80.8; Mahaweli=Mahaweli Ganga 7.8 81.0;
 Kandy Lake 7.292 80.642 .01; Galle Face=Galle Face Green 6.925 79.844 .01
NP: mountain Annapurna 28.6 83.82; Kathmandu Valley 27.7 85.35
NP IN: mountain Gandak 27.0 84.2
BD: mountain Chittagong Hill Tracts 22.5 92.2; Cox's Bazar beach 21.43 91.97
MM: mountain Inle Lake 20.55 96.92; Shan Hills=Shan States 21.5 98.0 1.5; Shwedagon=Shwedagon Pagoda 16.798 96.15
 .01; Mount Popa 20.92 95.25
JP: island Hokkaido=Hokkaidō=Yezo 43.3 142.8 1.8; Honshu=Honshū 36.5 138.5 3.5; Kyushu=Kyūshū 32.5 131.0 1.5;
 Shikoku 33.7 133.5 .8; Okinawa=Okinawa Island 26.5 127.9 .4; Iwo Jima 24.78 141.32; Inland Sea=Seto Inland Sea 34.2
 133.2; Mount Aso=Aso-san 32.88 131.1; Japanese Alps 36.3 137.7
TW: island Taiwan Island=Formosa 23.7 121.0 1.3
CN: island Hainan Island 19.2 109.7 .8; Huangpu=Whangpoo=the Bund 31.23 121.49 .03; Yellow River=Huang He=Hwang Ho 36.0
 110.0 5; Pearl River 22.9 113.5; West Lake=Xi Hu 30.245 120.14; Manchuria=Mandschurei=Маньчжурия=Mandzsúria=Mandżuria
 45.0 125.0 5; Sungari=Songhua=Сунгари 46.0 128.0; Tibet (region)=Tibetan Plateau 31.5 88.0 5; East China Sea 29.0
 124.5 3; Peitaiho=Beidaihe 39.83 119.48; Kuling=Lushan 29.57 115.98
HK: island Hong Kong Island 22.26 114.19 .06; Lantau=Lantau Island 22.26 113.95; Victoria Peak=the Peak 22.275 114.145
 .01; Kowloon Peninsula 22.32 114.17 .04
MN CN: island Mongolia steppe=Gobi=Gobi Desert 43.0 105.0 4
PH: island Corregidor=Bataan 14.5 120.5
ID: island Java=Jawa=Djawa -7.3 110.0 3; Bali=Bali Island -8.4 115.15; Lombok -8.6 116.3; Moluccas=Maluku=Spice Islands
 -3.5 128.5 3; Ambon (island)=Ambon Island -3.65 128.2; Timor -9.0 125.0 1.2; Lake Toba=Toba 2.6 98.9; Bromo=Mount
 Bromo=Semeru -7.94 112.95; Preanger=Priangan -7.2 107.6; Deli=Deli (region) 3.7 98.7
ID MY: island Sumatra=Sumatera 0.0 101.5 5; Strait of Malacca=Straits of Malacca=Malacca Strait 3.0 101.0 2.5
ID MY PH: island Borneo=Kalimantan 1.0 114.0 4
MY: island Penang Island=Pulau Pinang=Prince of Wales Island 5.38 100.25; Penang Hill 5.42 100.27 .02; Langkawi 6.35
 99.8; Cameron Highlands 4.5 101.4; Mount Kinabalu=Kinabalu 6.075 116.56
SG: island Sentosa=Pulau Blakang Mati 1.248 103.83 .01
TH: island Phuket Island 7.9 98.35; River Kwai=Kwai 14.05 99.5
VN KH LA TH CN MM: island Mekong=the Mekong 15.0 104.5 5
PH VN CN: island South China Sea 14.0 114.0 7
CN KR: island Yellow Sea 36.0 123.0 3
PG: island Kokoda=Kokoda Track=Kokoda Trail -9.1 147.6; Bougainville=Bougainville Island -6.2 155.2; New
 Britain=Neubritannien=Neupommern -5.6 151.0 1; New Ireland=Neumecklenburg -3.5 152.0; Sepik=Sepik River=Fly River
 -4.3 143.5
ET: island Blue Nile Gorge 10.5 37.0; Lake Tana 12.0 37.3
EG: river Nile Delta=the Delta (Egypt) 31.0 31.0 .8; Giza Pyramids=Pyramids=the Pyramids=Pyramids of Giza=Sphinx
 29.976 31.132 .02; Sinai Peninsula 29.5 33.8 1; Western Desert=Libyan Desert=El Alamein battlefield 29.0 27.0 2
EG: island Mena Camp=Mena 29.99 31.13; Valley of the Kings 25.74 32.6; Bitter Lakes=Great Bitter Lake 30.35 32.37
KE: island Lake Naivasha 0 36.35; Lake Nakuru -.37 36.1; Lake Rudolf=Lake Turkana 3.5 36.0
KE: river White Highlands=Kenya Highlands=Aberdares=Ngong Hills -.3 36.5 .7
UG: island Lake Albert 1.7 31.0; Ruwenzori=Rwenzori 0.38 29.9; Mount Elgon=Elgon 1.13 34.55
GH: river Lake Volta 7.5 0 1.2; Volta River=River Volta 7.0 0.0; Gold Coast (Africa) 6.0 -1.5 1.2
NG NE ML GN: river Niger (river)=River Niger 11.0 2.0 6
CD CG: river Congo River=River Congo=Zaire River 0 20.0 5
TZ: island Ngorongoro -3.2 35.5; Serengeti -2.3 34.8; Mount Meru -3.25 36.75; Zanzibar Island=Unguja -6.1 39.3;
 Pemba -5.2 39.75
KE UG TZ: river Rift Valley=Great Rift Valley -.5 36.1 2
MA: river Atlas Mountains=Atlas=High Atlas 31.5 -6.5 3
MA: island Rif=the Rif 35.1 -4.5
DZ LY EG TN MA ML NE TD SD: river Sahara=Sahara Desert=the Sahara 23.0 5.0 12
DZ: river Kabylia=Kabylie=Aurès 36.4 4.7 .8
TN: island Cape Bon 36.9 10.8; Djerba 33.8 10.9
BJ TG NG GH: river Slave Coast=Ivory Coast (coast) 6.0 2.0 1.2
MU: river Mauritius island -20.25 57.55 .3
RE: river Réunion=La Réunion=Bourbon -21.1 55.5
SH: river St Helena (island)=Saint Helena (island) -15.96 -5.7; Tristan da Cunha -37.1 -12.3; Ascension Island -7.95
 -14.36
SC: river Seychelles (islands)=Mahé -4.68 55.47
AR BR PY: river Paraná=Rio Paraná=Río Paraná -27.0 -57.0 6
AR UY BR: river Uruguay River=Río Uruguay -30.5 -57.5 2.5
AR: island Iguazu Falls=Iguaçu Falls=Cataratas do Iguaçu=Cataratas del Iguazú=Foz do Iguaçu (falls) -25.69 -54.44;
 Tigre Delta=Delta del Tigre=el Tigre -34.35 -58.6; Misiones (region) -27.0 -54.7; Sierras de Córdoba=Sierra de
 Córdoba -31.5 -64.7
BR: island Itajaí=Rio Itajaí=Itajaí-Açu=Vale do Itajaí -27.0 -49.3; Rio dos Sinos=Vale dos Sinos -29.6 -51.0; Rio
 Jacuí -29.9 -52.0; Guanabara Bay=Baía de Guanabara -22.8 -43.15; Serra Gaúcha -29.1 -51.2; Ilha Grande -23.15
 -44.23; Ilhabela (island)=São Sebastião island -23.8 -45.35; Florianópolis Island=Ilha de Santa Catarina -27.6 -48.5
BR: river Lagoa dos Patos -31.0 -51.2 .9; Lagoa Rodrigo de Freitas -22.97 -43.21 .01; Copacabana beach=Ipanema
 beach=Praia de Copacabana -22.975 -43.19 .02; Serra do Mar -24.5 -48.8 1.5; Ilha das Flores -22.84 -43.11 .01; São
 Francisco River=Rio São Francisco -12.0 -43.0 4
BR BO: river Pantanal=Mato Grosso wetlands -18.0 -57.0 2
AR CL: river Patagonia=Patagonien=la Patagonia -45.0 -69.0 6; Tierra del Fuego=Feuerland=Fireland -54.0 -68.0 1.5
AR UY: river Pampas=Pampa=the Pampas=la Pampa húmeda -35.5 -61.5 3; Entre Ríos colonies -31.8 -59.5 1
FK: river Falkland Islands (islands)=East Falkland=West Falkland -51.7 -59.5 1
GS: river South Georgia=Grytviken -54.3 -36.5
AR BR BO: river Chaco=Gran Chaco=el Chaco -24.0 -60.0 3
CL: island Lago Llanquihue=Llanquihue -41.1 -72.8; Juan Fernández=Robinson Crusoe Island -33.64 -78.85; Easter
 Island=Rapa Nui=Isla de Pascua -27.12 -109.35; Osorno volcano=Volcán Osorno -41.1 -72.5
CL: river Chiloé=Isla de Chiloé -42.6 -73.9 .6; Bío Bío=Biobío River -37.4 -72.0
CL AR: river Atacama=Atacama Desert -23.5 -69.0 2
PE: island Machu Picchu -13.163 -72.545
AR CL PE BO EC CO VE: river Andes=the Andes=Anden=Cordillera=los Andes -20.0 -68.0 20
CO: river Magdalena River=Río Magdalena 7.0 -74.5
VE: island Lake Maracaibo=Lago de Maracaibo 9.8 -71.6
PA: island Canal Zone=Panama Canal Zone 9.1 -79.7
VE CO: river Orinoco=the Orinoco 7.5 -65.0 3
TT: island Tobago 11.25 -60.7
MX: island Popocatépetl=Popocatepetl 19.02 -98.62; Lake Chapala=Lago de Chapala=Chapala (lake) 20.25 -103.0
MX: river Yucatán Peninsula=Yucatan=Yucatán (peninsula) 20.5 -89.0 1.5; Baja California peninsula=Lower California
 28.0 -113.5 4
JM CU DO HT TT BB PR MX CO VE: river Caribbean=Caribbean Sea=the Caribbean=West Indies=the West Indies 16.0 -72.0 8
JM: island Blue Mountains (Jamaica) 18.05 -76.6
CU: island Guantanamo Bay 19.95 -75.15
FJ: island Viti Levu -17.8 178.0 .7; Vanua Levu -16.6 179.2; Ovalau -17.68 178.8
WS: island Upolu=Apia island -13.9 -171.75; Savai'i=Savaii -13.6 -172.4
AS: island Tutuila -14.3 -170.7
TO: island Tongatapu -21.17 -175.2; Vava'u -18.65 -174.0
SB: island Guadalcanal -9.6 160.2
VU: island Espiritu Santo (Vanuatu)=Santo -15.3 166.9
PF: island Tahiti -17.65 -149.45 .3; Moorea -17.53 -149.83; Bora Bora -16.5 -151.74
CK: island Rarotonga -21.23 -159.78
NU: island Niue Island -19.05 -169.87
NR: island Nauru Island -.53 166.93
PN: island Tokelau=Pitcairn Island=Pitcairn -25.07 -130.1
IL: mountain Mount Carmel=Carmel 32.73 35.05; Mount Tabor=Tabor 32.687 35.39; Galilee=Galil=Galilee (region) 32.9
 35.4 .4; Golan=Golan Heights 33.0 35.8; Jezreel Valley=Emek=Plain of Esdraelon 32.6 35.25; Sharon=Sharon Plain=Plain
 of Sharon 32.3 34.9
PS: mountain Mount of Olives=Ölberg=Mount Scopus=Mount Zion=Gethsemane 31.778 35.245 .01; Judean Hills=Judea=Judean
 Desert 31.6 35.1; Samaria 32.2 35.2
LB: mountain Mount Hermon=Hermon 33.416 35.857
IL PS JO: mountain Negev 30.7 34.8 .8; Transjordan=Trans-Jordan 31.5 36.2 1.2
SY LB IL: mountain Mount Lebanon=Lebanon Mountains=Beqaa=Bekaa=Bekaa Valley 33.8 35.8 .6
IQ SY TR: mountain Euphrates=the Euphrates=Firat 35.5 40.0 3
IQ TR SY: mountain Tigris=the Tigris=Dicle 35.5 43.5 3
IR: mountain Shatt al-Arab 30.4 48.1; Mount Damavand=Demavend 35.95 52.11
IQ IR SY: mountain Mesopotamia=Mesopotamien 34.0 43.5 3; Kurdistan 36.5 43.5 2
IR IQ KW SA: mountain Persian Gulf=the Gulf (Persian)=Arabian Gulf 27.0 51.0 3
SY: mountain Jabal al-Druze=Hauran=Jebel Druze 32.7 36.7
JO: mountain Gulf of Aqaba 28.8 34.8
SA: mountain Hejaz=Hedjaz 24.0 39.0 3
GL: island Greenland coast 64.5 -51.0 3; Disko Bay=Disko 69.2 -52.0
BM: island Bermuda (island)=Somers Isles 32.3 -64.8
AQ: region Antarctica=Antarktis=the Antarctic=McMurdo Sound=Ross Sea=Ross Island (Antarctica)=Scott Base=Graham Land
 77.5 167.0 5
"""
