"""Wars, reigns and other stretches of time that families date by, with where they hold.

Each row: names, then (theatre, first month, last month). Several theatres of one war are one row; several wars of one
name are several rows. Outbreak, armistice and surrender, accession and death: from memory.
"""

Theatres = tuple[tuple[str, str, str], ...]

_LAST_YEAR_OF_WAR = (
    "last year of the war|final year of the war|last year of war|krigens siste år|siste krigsår|krigens sidste år"
    "|sidste krigsår|krigets sista år|sista krigsåret|letztes kriegsjahr|letzten kriegsjahr|letzte kriegsjahr"
    "|dernière année de la guerre|dernière année de guerre|ultimo anno di guerra|último año de la guerra"
    "|laatste oorlogsjaar|sõja viimane aasta|sõja viimasel aastal|viimane sõja-aasta|sodan viimeinen vuosi"
    "|sodan viimeisenä vuonna|последний год войны|последнем году войны|ostatni rok wojny|poslední rok války"
    "|pēdējais kara gads|paskutiniai karo metai|a háború utolsó éve"
)
_LAST_WINTER_OF_WAR = (
    "last winter of the war|final winter of the war|krigens siste vinter|krigens sidste vinter|krigets sista vinter"
    "|siste krigsvinter|sidste krigsvinter|sista krigsvintern|letzter kriegswinter|letzten kriegswinter"
    "|dernier hiver de la guerre|laatste oorlogswinter|viimane sõjatalv|viimasel sõjatalvel|viimeinen sotatalvi"
    "|последняя военная зима|последнюю военную зиму|ostatnia zima wojny"
)

_CIVIL_WAR_OF_SPAIN: Theatres = (("ES", "1936-07", "1939-04"),)

_LIBERATIONS: Theatres = (
    ("FR", "1944-06", "1944-08"), ("FR", "1944-09", "1945-05"), ("BE", "1944-09", "1945-02"),
    ("NL", "1945-04", "1945-05"), ("DK", "1945-04", "1945-05"),
    ("NO", "1945-04", "1945-05"), ("IT", "1945-04", "1945-05"), ("PL", "1945-01", "1945-05"), ("CZ", "1945-04", "1945-05"),
)  # fmt: skip
"""The liberation of each land from the Germans, of which nobody says where it is told; it came place by place."""

SPANS: tuple[tuple[str, Theatres], ...] = (
    (
        "first world war|1st ww|first ww|first war|gt war|the gt war|империалистическая война|империалистическую войну|империалистической войны|германская война|германскую войну|германской войны|den første krig|guerre de 14|guerre de 14-18|i világháború|nagy háború|1st war|1st world war|great war|1 world war|world war 1|world war one|world war i|ww1|wwi|ww i|ww 1|1914-18 war|1914-1918 war|14-18 war|kaiser's war|esimene ilmasõda|esimese ilmasõja|esimese ilmasõja ajal|esimene maailmasõda|esimese maailmasõja ajal"
        "|erster weltkrieg|erste weltkrieg|ersten weltkrieg|ersten weltkriegs|1 weltkrieg|i weltkrieg|première guerre mondiale|grande guerre|primera guerra mundial|prima guerra mondiale|eerste wereldoorlog"
        "|första världskriget|første verdenskrig|ensimmäinen maailmansota|первая мировая|первая мировая война|i wojna światowa|pierwsza wojna światowa|pirmais pasaules karš|pirmasis pasaulinis karas|první světová válka",
        (("", "1914-07", "1918-11"), ("US", "1917-04", "1918-11"), ("IT", "1915-05", "1918-11")),
    ),
    (
        "second world war|2nd ww|second ww|second war|ii világháború|2nd war|2nd world war|2 world war|world war 2|world war two|world war ii|ww2|wwii|ww ii|ww 2|1939-45 war|1939-1945 war|39-45 war|hitler's war|teine ilmasõda|teise ilmasõja|teise ilmasõja ajal|teine maailmasõda|teise maailmasõja ajal"
        "|zweiter weltkrieg|zweite weltkrieg|zweiten weltkrieg|zweiten weltkriegs|2 weltkrieg|ii weltkrieg|seconde guerre mondiale|deuxième guerre mondiale|segunda guerra mundial|seconda guerra mondiale|tweede wereldoorlog"
        "|andra världskriget|anden verdenskrig|andre verdenskrig|toinen maailmansota|вторая мировая|вторая мировая война|ii wojna światowa|druga wojna światowa|otrais pasaules karš|antrasis pasaulinis karas|druhá světová válka",
        (("", "1939-09", "1945-09"), ("US", "1941-12", "1945-09"), ("EE", "1941-06", "1944-11"), ("IT", "1940-06", "1945-05")),
    ),
    ("russian revolution|vene revolutsioon|venemaan vallankumous|russische revolution|russischen revolution|révolution russe", (("", "1917-03", "1917-11"),)),
    ("октябрьская революция|октябрьской революции|октябрьскую революцию|великий октябрь|великого октября|october revolution|oktoberrevolution|oktoobrirevolutsioon|oktoobrirevolutsiooni", (("", "1917-11", "1917-11"),)),
    ("февральская революция|февральской революции|февральскую революцию|february revolution|februarrevolution|veebruarirevolutsioon|veebruarirevolutsiooni", (("", "1917-03", "1917-03"),)),
    ("революция|революции|революцию|революцией", (("", "1917-11", "1917-11"),)),
    ("революция|революции|революцию|революцией", (("", "1917-03", "1917-03"),)),
    ("революция|революции|революцию|революцией", (("", "1905-01", "1907-06"),)),
    ("sisällissota|kansalaissota|sisällissodan aikana|kansalaissodan aikana|vapaussota|vapaussodan aikana|finnish civil war", (("FI", "1918-01", "1918-05"),)),
    ("kieltolaki|kieltolain aikana|kieltolain aika", (("FI", "1919-06", "1932-04"),)),
    ("powstanie warszawskie|powstania warszawskiego|powstaniu warszawskim|powstaniem warszawskim|warsaw uprising", (("PL", "1944-08", "1944-10"),)),
    ("stan wojenny|stanu wojennego|stanie wojennym", (("PL", "1981-12", "1983-07"),)),
    ("międzywojnie|międzywojniu|międzywojnia", (("", "1918-11", "1939-09"),)),
    ("za komuny|za prl|czasy prl|czasów prl|za prl-u|w prl", (("PL", "1944-07", "1989-06"),)),
    ("pražské jaro|pražského jara|prague spring", (("", "1968-01", "1968-08"),)),
    ("normalizace|za normalizace", (("CZ", "1969-04", "1989-11"),)),
    ("za komunistů|za komunismu|za totality", (("CZ", "1948-02", "1989-11"),)),
    ("sametová revoluce|sametové revoluce|sametové revoluci|velvet revolution", (("", "1989-11", "1989-12"),)),
    ("unionsoppløsningen|unionsupplösningen", (("", "1905-06", "1905-10"),)),
    ("la república española", (("ES", "1931-04", "1939-04"),)),
    ("dictadura de primo de rivera|con primo de rivera", (("ES", "1923-09", "1930-01"),)),
    ("in der ddr|zu ddr zeiten", (("DE", "1949-10", "1990-10"),)),
    ("der wende|wendezeit", (("DE", "1989-11", "1990-10"),)),
    ("zu kaisers zeiten", (("DE", "1871-01", "1918-11"),)),
    ("застой|в застой|эпоха застоя|во времена застоя", (("", "1964-10", "1985-03"),)),
    ("гражданскую|в гражданскую", (("", "1917-11", "1922-10"),)),
    ("atmoda|atmodas laiks|atmodas laikā", (("LV", "1987-06", "1991-08"),)),
    ("latvijas laiks|latvijas laikā|latvijas laikos|brīvvalsts laikā|pirmās brīvvalsts laikā", (("LV", "1918-11", "1940-06"),)),
    ("sąjūdžio laikais|sąjūdžio laikų", (("LT", "1988-06", "1990-03"),)),
    ("rendszerváltás|rendszerváltáskor|rendszerváltozás", (("HU", "1989-10", "1990-05"),)),
    ("dust bowl", (("US", "1930-01", "1936-12"),)),
    ("gallipoli campaign|gallipoli landings|dardanelles campaign", (("", "1915-04", "1916-01"),)),
    ("battle of the somme", (("", "1916-07", "1916-11"),)),
    ("battle of stalingrad|schlacht um stalingrad|сталинградская битва", (("", "1942-08", "1943-02"),)),
    ("winter of discontent", (("GB", "1978-11", "1979-02"),)),
    ("new zealand wars|land wars|māori wars|maori wars|nga pakanga o aotearoa", (("", "1845-03", "1872-05"),)),
    ("zulu war|anglo-zulu war|zulu wars", (("", "1879-01", "1879-07"),)),
    ("russian civil war|гражданская война|гражданской войны|гражданскую войну|гражданской войной|гражданской войне|vene kodusõda|vene kodusõja ajal", (("", "1917-11", "1922-10"),)),
    ("falklands war|falklands conflict|guerra de las malvinas|guerra de malvinas", (("", "1982-04", "1982-06"),)),
    ("balkan wars|balkankriege|balkankriegen|guerres balkaniques|балканские войны", (("", "1912-10", "1913-08"),)),
    ("polish-soviet war|wojna polsko-bolszewicka|wojny polsko-bolszewickiej|wojna bolszewicka|wojny bolszewickiej", (("", "1919-02", "1920-10"),)),
    ("ditadura|ditadura militar|a ditadura", (("BR", "1964-04", "1985-03"),)),
    ("ditadura|ditadura nacional|a ditadura", (("PT", "1926-05", "1974-04"),)),
    ("boer war|burenkrieg|boerenoorlog|boerkrigen|boerkriget|guerre des boers|guerra de los bóeres|buuri sõda|búr háború|búrská válka|wojna burska", (("", "1899-10", "1902-05"),)),
    ("boer war|first boer war", (("", "1880-12", "1881-03"),)),
    ("south african war|second boer war|anglo-boer war", (("", "1899-10", "1902-05"),)),
    ("russo-japanese war|japanese war", (("", "1904-02", "1905-09"),)),
    ("cold war|kalter krieg|kalten krieg|kalten kriegs|guerre froide|guerra fría|guerra fredda|guerra fria|koude oorlog|kolde krig|den kolde krig|kalla kriget|kalde krigen|den kalde krigen|kylmä sota|kylmän sodan aikana|külm sõda|külma sõja ajal|холодная война|холодной войны|zimna wojna|zimnej wojny|aukstais karš|šaltasis karas|studená válka|studené války|hidegháború", (("", "1947-03", "1991-12"),)),
    ("korean war|koreakrieg|guerre de corée|guerra de corea|guerra di corea|guerra da coreia|koreaanse oorlog|koreakrigen|koreakriget|korean sota|korea sõda|корейская война|корейской войны|wojna koreańska|korejská válka|koreai háború", (("", "1950-06", "1953-07"),)),
    ("war of independence|vabadussõda|vabadussõja ajal|estonian war of independence", (("EE", "1918-11", "1920-02"),)),
    ("war of independence|irish war of independence", (("IE", "1919-01", "1921-07"),)),
    ("winter war|talvisota|talvisotaa|talvesõda|talvesõja|talvesõja ajal|talvisodan aikana|talvisodan|talvisodassa|vinterkriget|vinterkrigen|winterkrieg|finnischer winterkrieg|зимняя война|зимней войны", (("FI", "1939-11", "1940-03"),)),
    ("välirauha|välirauhan aikana|välirauhan aika|välirauhan", (("FI", "1940-03", "1941-06"),)),
    ("continuation war|jatkosota|jatkosotaa|fortsättningskriget|jätkusõda|jatkosodan aikana|jatkosodan|jatkosodassa", (("FI", "1941-06", "1944-09"),)),
    ("great patriotic war|великая отечественная война|великая отечественная", (("RU", "1941-06", "1945-05"),)),
    ("crimean war|krimkrieg|guerre de crimée|guerra de crimea|guerra di crimea|krimoorlog|krimkrigen|krimkriget|krimin sota|krimmi sõda|крымская война|крымской войны|wojna krymska|krymská válka|krími háború", (("", "1853-10", "1856-03"),)),
    ("franco-prussian war|deutsch-französischer krieg|guerre franco-prussienne|guerre de 1870|guerre de 70", (("", "1870-07", "1871-05"),)),
    ("spanish civil war|guerra civil española|guerra civil|spanischer bürgerkrieg|spanischen bürgerkrieg|guerre d'espagne|guerre civile espagnole|guerra di spagna|guerra civil de españa|spaanse burgeroorlog|spanske borgerkrig|spanska inbördeskriget|espanjan sisällissota|hispaania kodusõda", _CIVIL_WAR_OF_SPAIN),
    ("irish civil war", (("IE", "1922-06", "1923-05"),)),
    ("eesti aeg|eesti ajal|eesti vabariik|eesti vabariigi ajal|esimese eesti vabariigi ajal|esimene eesti vabariik|esimese vabariigi ajal", (("EE", "1918-02", "1940-06"),)),
    ("nõukogude aeg|nõukogude ajal|vene aeg|vene ajal|esimene nõukogude aeg|esimese nõukogude ajal", (("EE", "1940-06", "1941-07"),)),
    ("nõukogude aeg|nõukogude ajal|vene aeg|vene ajal", (("EE", "1944-11", "1991-08"),)),
    ("blitz|the blitz", (("GB", "1940-09", "1941-05"),)),
    ("phoney war|drôle de guerre|sitzkrieg", (("", "1939-09", "1940-05"),)),
    ("hunger winter|hongerwinter", (("NL", "1944-11", "1945-05"),)),
    ("occupation of denmark|besættelsen|besættelsestiden", (("DK", "1940-04", "1945-05"),)),
    ("occupation of norway|okkupasjonen", (("NO", "1940-04", "1945-05"),)),
    ("za piłsudskiego|czasy piłsudskiego|za marszałka", (("PL", "1926-05", "1935-05"),)),
    ("sanacja|sanacji|za sanacji|czasy sanacji|rządy sanacji|za rządów sanacji", (("PL", "1926-05", "1939-09"),)),
    ("okupacja|okupacji|pod okupacją", (("PL", "1939-09", "1945-01"),)),
    ("za rakouska|za starého rakouska", (("CZ", "1804-08", "1918-10"),)),
    ("za rakouska-uherska|za rakousko-uherska|za rakouska uherska", (("CZ", "1867-06", "1918-10"),)),
    ("k u k zeit|k und k zeit|zu k u k zeiten", (("AT", "1867-06", "1918-11"),)),
    ("první republika|první republiky|first czechoslovak republic", (("CZ", "1918-10", "1938-09"),)),
    ("libération|la libération|à la libération", (("FR", "1944-06", "1944-08"), ("FR", "1944-09", "1945-05"))),
    ("bevrijding", (("NL", "1944-09", "1944-11"), ("NL", "1945-04", "1945-05"), ("BE", "1944-09", "1945-02"))),
    ("liberazione", (("IT", "1943-07", "1944-09"), ("IT", "1945-04", "1945-05"))),
    ("wyzwolenie|wyzwolenia|wyzwoleniu|wyzwoleniem", (("PL", "1944-07", "1944-09"), ("PL", "1945-01", "1945-05"))),
    ("osvobození", (("CZ", "1944-10", "1945-04"), ("CZ", "1945-04", "1945-05"))),
    ("frigjøringen|frigjøringa", (("NO", "1944-10", "1945-04"), ("NO", "1945-04", "1945-05"))),
    ("liberation|the liberation|befreiung|der befreiung|liberación|libertação|освобождение|освобождения|освобождении", _LIBERATIONS),
    ("exode|l'exode", (("FR", "1940-05", "1940-06"),)),
    ("front populaire", (("FR", "1936-05", "1938-04"),)),
    ("belle époque|belle epoque", (("", "1880-01", "1914-07"),)),
    ("spanish flu|influenza epidemic|flu epidemic|great influenza|spanische grippe|grippe espagnole|espanjantauti|espanjantaudin aikaan|spanska sjukan|spanskesyken|den spanske syge|spaanse griep|hispaania gripp|испанка", (("", "1918-03", "1920-03"),)),
    ("big freeze|the big freeze", (("GB", "1962-12", "1963-03"),)),
    ("põgenemine|põgenemise|põgenemisel|põgenemist|suur põgenemine|suure põgenemise", (("EE", "1944-08", "1944-10"),)),
    ("umsiedlung|umsiedelung|ümberasumine|ümberasumise|umsiedlung der deutschbalten", (("EE LV", "1939-10", "1941-03"),)),
    ("singing revolution|laulev revolutsioon|laulva revolutsiooni", (("EE", "1987-06", "1991-08"),)),
    ("blokaad|блокада|блокады|блокаду|leningrad blockade|siege of leningrad", (("RU", "1941-09", "1944-01"),)),
    ("эвакуация|эвакуации|эвакуацию", (("RU", "1941-06", "1945-05"),)),
    ("нэп|нэпа|нэпе", (("RU", "1921-03", "1928-10"),)),
    ("перестройка|перестройки|перестройку|perestroika", (("RU", "1985-04", "1991-12"),)),
    ("flucht und vertreibung|vertreibung|auf der flucht", (("DE", "1944-10", "1945-12"),)),
    ("kaiserzeit|wilhelminische zeit", (("DE", "1871-01", "1918-11"),)),
    ("tsaariaeg|tsaariajal|zarenzeit|tsarist times|царское время|при царе|царские времена|cara laiki|cara laikos|caro laikai|caro laikais", (("", "1826-01", "1917-03"),)),
    ("ddr-zeit|zu ddr-zeiten|ddr-zeiten", (("DE", "1949-10", "1990-10"),)),
    ("stalin's time|stalin's day|stalini ajal|stalini aeg|stalini aja|stalini aegne|при сталине|сталинские времена|сталинские годы|za stalina|staļina laikā|staļina laikos|stalino laikais|prie stalino|unter stalin|stalinzeit|stalinin aikana", (("", "1924-01", "1953-03"), ("EE LV LT", "1940-06", "1953-03"), ("PL CZ HU", "1945-05", "1953-03"))),
    ("hruštšovi ajal|при хрущёве|хрущёвские времена|hruščova laikā|prie chruščiovo", (("", "1953-09", "1964-10"),)),
    ("brežnevi ajal|брежневские времена|при брежневе|brežņeva laikā|prie brežnevo", (("", "1964-10", "1982-11"),)),
    ("pätsi ajal|pätsi aeg|vaikiv ajastu|vaikival ajastul|vaikiva ajastu ajal", (("EE", "1934-03", "1940-06"),)),
    ("za gomułki|czasy gomułki", (("PL", "1956-10", "1970-12"),)),
    ("za gierka|czasy gierka|za edwarda gierka", (("PL", "1970-12", "1980-09"),)),
    ("za masaryka|za prezidenta masaryka|za tatíčka masaryka", (("CZ", "1918-11", "1935-12"),)),
    ("za beneše|za prezidenta beneše", (("CZ", "1935-12", "1938-10"),)),
    ("za beneše|za prezidenta beneše", (("CZ", "1945-05", "1948-06"),)),
    ("unter hitler|in der ns-zeit|ns-zeit|hitlerzeit|zu hitlers zeiten|in der nazizeit|unter den nazis", (("DE", "1933-01", "1945-05"),)),
    ("weimarer zeit|zur weimarer zeit", (("DE", "1918-11", "1933-01"),)),
    ("con franco|en tiempos de franco|tiempos de franco|época de franco|la época de franco|bajo franco|dictadura de franco|la dictadura de franco|dictadura franquista|la dictadura franquista|posguerra franquista", (("ES", "1939-04", "1975-11"),)),
    ("segunda república|la segunda república|en la república|durante la república|en tiempos de la república|tiempos de la república|años de la república", (("ES", "1931-04", "1939-04"),)),
    ("sotto mussolini|ai tempi di mussolini|tempi di mussolini|ai tempi del duce|tempi del duce|sotto il duce|tempi del fascismo|ai tempi del fascismo", (("IT", "1922-10", "1943-07"),)),
    ("no tempo do salazar|tempo de salazar|tempo do salazar|época de salazar|época do salazar|sob salazar|no salazarismo|salazarismo", (("PT", "1932-07", "1968-09"),)),
    ("primeira república|a primeira república", (("PT", "1910-10", "1926-05"),)),
    ("sous vichy|régime de vichy|sous pétain|sous le maréchal", (("FR", "1940-07", "1944-08"),)),
    ("second empire|sous napoléon iii", (("FR", "1852-12", "1870-09"),)),
    ("kekkosen aikana|kekkosen aika|kekkosen kaudella", (("FI", "1956-03", "1982-01"),)),
    ("années folles|les années folles", (("", "1920-01", "1929-10"),)),
    ("inflation|inflationszeit|in der inflation", (("DE", "1922-06", "1923-11"),)),
    ("wirtschaftswunder", (("DE", "1950-01", "1966-12"),)),
    ("franquismo", (("ES", "1939-04", "1975-11"),)),
    ("ventennio|ventennio fascista|durante il fascismo|del fascismo|sotto il fascismo|epoca fascista|periodo fascista", (("IT", "1922-10", "1943-07"),)),
    ("estado novo", (("PT", "1933-04", "1974-04"),)),
    ("rationing|food rationing|rationing days", (("GB", "1940-01", "1954-07"),)),
    ("prohibition", (("US", "1920-01", "1933-12"),)),
    (_LAST_YEAR_OF_WAR, (("", "1917-11", "1918-11"),)),
    (_LAST_YEAR_OF_WAR, (("", "1944-05", "1945-05"),)),
    (_LAST_WINTER_OF_WAR, (("", "1917-12", "1918-02"),)),
    (_LAST_WINTER_OF_WAR, (("", "1944-12", "1945-02"),)),
    ("great depression|depression|depression years|the depression", (("", "1929-10", "1939-08"),)),
    ("l'occupation|occupation allemande|sous l'occupation", (("FR", "1940-06", "1944-08"),)),
    ("ulmaņlaiki|ulmaņlaikos|ulmaņa laiki|ulmaņa laikos|ulmaņa laikā", (("LV", "1934-05", "1940-06"),)),
    ("protektorát|protektorátu|za protektorátu|protektorátě", (("CZ", "1939-03", "1945-05"),)),
    ("smetonos laikai|smetonos laikais|prie smetonos", (("LT", "1926-12", "1940-06"),)),
    ("beredskapen|beredskapstiden|beredskapsåren|under beredskapen", (("SE", "1939-09", "1945-05"),)),
    ("american civil war", (("US", "1861-04", "1865-04"),)),
    ("spanish-american war|spanish american war", (("US", "1898-04", "1898-08"),)),
    ("vietnam war", (("US", "1965-03", "1973-03"),)),
    ("any time between the wars|interwar|zwischen den kriegen|zwischen den beiden kriegen|zwischen den weltkriegen|zwischen den beiden weltkriegen|entre les deux guerres|entre deux guerres|entre les guerres|entre guerras|entre as guerras|entre as duas guerras|entre las guerras|entre las dos guerras|periodo de entreguerras|entreguerras|fra le due guerre|tra le due guerre|tussen de oorlogen|tussen de twee oorlogen|tussen de wereldoorlogen|mellan krigen|mellan världskrigen|mellom krigene|mellom verdenskrigene|mellem krigene|mellem verdenskrigene|sotien välillä|sotien välinen aika|maailmansotien välillä|sõdade vahel|kahe sõja vahel|между войнами|между двумя войнами|между двух войн|między wojnami|okres międzywojenny|mezi válkami|mezi dvěma válkami|starp kariem|starp abiem kariem|tarp karų|tarp dviejų karų|két háború között|a két háború között|a két világháború között|interwar years|inter-war|between wars|inter-war years|inter-war period|interwar period|between the wars|between the two wars|zwischenkriegszeit|mellankrigstiden|mellomkrigstiden|mellemkrigstiden|interbellum|entre-deux-guerres|tarpukaris|tarpukariu|tarpukario|starpkaru laiks|starpkaru laikā|dwudziestolecie międzywojenne|sõdadevaheline aeg|sõdadevahelisel ajal|maailmansotien välissä", (("", "1918-11", "1939-09"),)),
    ("queen victoria's time|victoria's time|queen victoria's day|queen victoria's days|the old queen's time|old queen's time|old queen's day|victorian times|victorian era|reign of victoria|under queen victoria|victoria's reign|under victoria|queen victoria's reign|reign of queen victoria|victorian period|victorian", (("GB", "1837-06", "1901-01"),)),
    ("king edward's reign|king edward's time|king edward's day|edwardian times|edwardian era|reign of edward vii|under edward vii|edward vii's reign|edwardian period|edwardian", (("GB", "1901-01", "1910-05"),)),
    ("reign of nicholas ii|reign of tsar nicholas ii|under nicholas ii|under tsar nicholas ii|nicholas ii's reign|unter nikolaus ii|при николае ii|nikolai ii ajal", (("RU", "1894-11", "1917-03"),)),
    ("reign of alexander iii|reign of tsar alexander iii|under alexander iii|under tsar alexander iii", (("RU", "1881-03", "1894-11"),)),
    ("first german occupation", (("EE", "1918-02", "1918-11"),)),
    ("vācu laiks|vācu laikā|vācu laikos", (("LV", "1941-07", "1945-05"),)),
    ("german occupation|saksa aeg|saksa ajal", (("EE", "1941-07", "1944-11"),)),
    ("reign of wilhelm ii|under wilhelm ii|under kaiser wilhelm ii|unter wilhelm ii|unter kaiser wilhelm ii", (("DE", "1888-06", "1918-11"),)),
    ("weimar republic|weimarer republik", (("DE", "1918-11", "1933-01"),)),
    ("third reich|nazizeit|drittes reich|dritten reich|dritten reichs|dritten reiches|ns zeit|naziaeg|natsiaeg", (("DE", "1933-01", "1945-05"),)),
)  # fmt: skip

OF_LANDS: dict[Theatres, Theatres] = {
    SPANS[0][1]: (
        ("GB IE NZ AU CA ZA EE LV LT PL DE FR BE", "1914-08", "1918-11"), ("RU UA", "1914-08", "1918-03"),
        ("NO DK SE FI NL CH ES CZ HU AT AR BR CL UY MX IS", "1914-07", "1918-11"), ("PT", "1916-03", "1918-11"),
    ),
    SPANS[1][1]: (
        ("GB IE NZ AU CA ZA SE CH ES PT AR BR CL UY MX IS", "1939-09", "1945-09"), ("DE FR AT PL CZ", "1939-09", "1945-05"),
        ("NO DK", "1940-04", "1945-05"), ("NL BE", "1940-05", "1945-05"), ("LV LT RU UA", "1941-06", "1945-05"),
        ("FI", "1939-11", "1945-04"), ("HU", "1941-06", "1945-04"),
    ),
}  # fmt: skip
"""When the world wars came to further lands, or were around those that kept out; from memory. They narrow what is asked
where the collection is of such a land, and are no choices elsewhere."""

UNNAMED: tuple[Theatres, ...] = (SPANS[0][1], SPANS[1][1])
"""What “the war” may be, where nobody says which."""

WARS_AT_HOME: dict[str, tuple[Theatres, ...]] = {"ES": (_CIVIL_WAR_OF_SPAIN,)}
"""By country the war that its families mean first by “the war”, because it was fought there and the world wars were
not (common practice, no source)."""

PLACE_BY_PLACE = frozenset(
    theatres
    for names, theatres in SPANS
    if {*names.split("|")}
    & {"liberation", "libération", "bevrijding", "liberazione", "wyzwolenie", "osvobození", "frigjøringen"}
)
"""What came to a land place by place, so that nobody can say when it was who does not know where."""

DAYS_OF_A_LAND = {
    "PT": {"04-25": "1974", "10-05": "1910"}, "IT": {"04-25": "1945", "09-08": "1943"},
    "ES": {"07-18": "1936", "04-14": "1931"}, "DK": {"04-09": "1940", "05-05": "1945"},
    "NO": {"04-09": "1940", "05-08": "1945", "06-07": "1905"}, "PL": {"09-01": "1939", "09-17": "1939"},
    "DE": {"07-20": "1944", "06-17": "1953", "11-09": "1989"}, "RU": {"06-22": "1941", "05-09": "1945"},
    "EE": {"06-14": "1941", "03-25": "1949"}, "LV": {"06-14": "1941", "03-25": "1949"}, "LT": {"06-14": "1941"},
    "CZ": {"08-21": "1968", "11-17": "1989", "03-15": "1939"}, "HU": {"10-23": "1956"}, "NL": {"05-10": "1940"},
    "FR": {"06-06": "1944", "06-18": "1940"}, "FI": {"11-30": "1939"},
}  # fmt: skip
"""Days that a land calls by their date alone (“depois do 25 de Abril”), and their year; from memory. They are only ever
choices of the question in which year it was."""

NAMED_YEARS = {
    "1936": "year of the three kings|year of three kings",
    "1888": "year of the three emperors|year of three emperors|dreikaiserjahr",
}
"""Years that are called by who reigned in them (from memory)."""

CALLED: dict[Theatres, str] = {
    theatres: "the First World War" if theatres[0][1] < "1930" else "the Second World War"
    for names, theatres in SPANS
    if theatres in (SPANS[0][1], SPANS[1][1]) or names in (_LAST_YEAR_OF_WAR, _LAST_WINTER_OF_WAR)
}
CALLED[_CIVIL_WAR_OF_SPAIN] = "the Spanish Civil War"
"""What a question calls the wars that are meant by “the war”."""

OVER_BY_THEN = {"1945-09": "1945-05"}
"""The month in which a war may be said to be over already: in Europe (8 May 1945) before Japan's surrender. Whatever is
“after the war” is after that."""

WHICH_WAR = {
    "en": "war|war years|wartime|wartimes|war time|last war|wars",
    "et": "sõda|sõja|sõja ajal|sõjaaeg|sõja aeg|sõjaaja|sõjaajal|sõda ajal|sõjas|sõdade|sõdade ajal",
    "de": "kriegsjahre|kriegsjahren|krieg|krieges|kriegs|kriegszeit|kriege|kriegszeiten",
    "fr": "guerre|années de guerre|temps de guerre", "es it pt": "guerra",
    "es": "años de guerra|años de la guerra|en los años de guerra|los años de guerra|los años de la guerra|en los años de la guerra|tiempos de guerra|tiempo de guerra",
    "it": "anni di guerra|anni della guerra|tempo di guerra|tempi di guerra",
    "pt": "anos de guerra|anos da guerra|nos anos da guerra|nos anos de guerra|tempo da guerra|tempos de guerra",
    "nl": "oorlog|oorlogstijd|oorlogsjaren",
    "hu": "háború|háborúban|háborús évek|háborús években|a háború idején",
    "da nb": "krig|krigen|krigens|krigens tid|krigsårene|krigstiden", "sv": "krig|kriget|krigets|krigsåren|krigstiden",
    "fi": "sota|sodan|sodan aikana|sotaa|sota-aika|sota-aikana|sotavuodet|sotavuosina|sotia|sotien|sotien aikana",
    "ru": "война|войны|войну|войной|военное время|военные годы",
    "pl": "wojna|wojny|wojną|wojnie|wojnę",
    "lv": "karš|kara|karam|kara laikā|kara gados",
    "lt": "karas|karo|karą|karo metu|karo metais",
    "cs": "válka|války|válce|válku|válkou",
    "mi": "pakanga",
}  # fmt: skip
"""Names of a war that does not say which one, by language: it is asked, with the two world wars as choices."""

BESIDE_WAR = {
    "before": "prewar|pre-war|vorkriegszeit|vorkriegsjahre|vorkriegs|vooroorlogs|vooroorlogse|avant-guerre|anteguerra"
    "|preguerra|førkrigstiden|förkrigstiden|ennesõjaaegne|sõjaeelne|sõjaeelsel ajal|sõjaeelne aeg"
    "|предвоенный|предвоенные|предвоенное|довоенный|довоенные|довоенное|przedwojenny|przedwojenne|przedwojenna|předválečný|předválečné"
    "|pirmskara|pirmskara laiks|prieškaris|prieškariu|prieškario|háború előtti",
    "after": "postwar|post-war|nachkriegszeit|nachkriegsjahre|nachkriegs|naoorlogs|naoorlogse|après-guerre|dopoguerra|posguerra"
    "|postguerra|pós-guerra|efterkrigstiden|etterkrigstiden|sõjajärgne|sõjajärgsel ajal|sõjajärgne aeg|sodanjälkeinen"
    "|послевоенный|послевоенные|послевоенное|powojenny|powojenne|powojenna|poválečný|poválečné|pēckara|pēckara laiks"
    "|pokaris|pokariu|pokario|háború utáni",
}  # fmt: skip
"""Words for the time before a war or after it, in one: which war is asked."""

_FIRST_OR_SECOND = (
    ("esimene esimese esimest esimeses", "teine teise teist teises", "maailmasõda maailmasõja maailmasõjas ilmasõda ilmasõja ilmasõjas sõda sõja sõjas"),
    ("erster erste ersten", "zweiter zweite zweiten", "weltkrieg weltkriegs weltkrieges weltkriege krieg kriegs krieges kriege"),
    ("первая первой первую", "вторая второй вторую", "мировая мировой мировую мировая-война мировой-войны мировой-войной мировой-войне мировую-войну война войны войной войне войну"),
    ("pierwsza pierwszej pierwszą", "druga drugiej drugą", "wojna wojny wojnie wojnę wojną wojna-światowa wojny-światowej wojnie-światowej wojnę-światową wojną-światową"),
    ("první", "druhá druhé druhou", "válka války válce válku válkou světová světové světovou světová-válka světové-války světové-válce světovou-válku světovou-válkou"),
    ("pirmais pirmā pirmajā pirmo", "otrais otrā otrajā otro", "karš kara karā karu pasaules-karš pasaules-kara pasaules-karā pasaules-karu"),
    ("pirmasis pirmojo pirmąjį pirmajame pirmajam", "antrasis antrojo antrąjį antrajame antrajam", "karas karo karą kare karui pasaulinis pasaulinio pasaulinis-karas pasaulinio-karo pasaulinį-karą pasauliniame-kare pasauliniam-karui"),
    ("ensimmäinen ensimmäisen ensimmäistä ensimmäisessä", "toinen toisen toista toisessa", "maailmansota maailmansodan maailmansotaa maailmansodassa sota sodan sotaa sodassa"),
    ("första", "andra", "världskriget världskrigets kriget krigets"),
    ("første", "anden andre annen", "verdenskrig verdenskrigen krig krigen"),
    ("eerste", "tweede", "wereldoorlog oorlog"),
    ("première 1ère", "seconde deuxième 2e 2ème", "guerre guerre-mondiale"),
    ("primera", "segunda", "guerra guerra-mundial"),
    ("prima", "seconda", "guerra guerra-mondiale"),
    ("primeira", "segunda", "guerra guerra-mundial grande-guerra"),
    ("első", "második", "háború háborúban háborút háborús világháború világháborúban világháborút"),
)  # fmt: skip
"""Forms of “first” and of “second”, and of the wars that they may stand before, in each language (a stroke for a blank)."""

SPAN_NAMES: dict[str, object] = {}
for _names, _theatres in SPANS:
    for _name in _names.split("|"):
        SPAN_NAMES[_name] = (*SPAN_NAMES.get(_name, ()), _theatres)  # type: ignore[misc]
for _firsts, _seconds, _wars in _FIRST_OR_SECOND:
    for _ordinals, _row in ((_firsts, SPANS[0]), (_seconds, SPANS[1])):
        for _name in (f"{ordinal} {war.replace('-', ' ')}" for ordinal in _ordinals.split() for war in _wars.split()):
            SPAN_NAMES.setdefault(_name, (_row[1],))
_REIGNS = {
    "queen victoria": ("1837-06", "1901-01"), "edward vii": ("1901-01", "1910-05"), "george v": ("1910-05", "1936-01"),
    "edward viii": ("1936-01", "1936-12"), "george vi": ("1936-12", "1952-02"),
}  # fmt: skip
"""First and last month of reigns in Britain, which are told by whoever reigned: “during George VI’s reign”."""

for _ruler, _months in _REIGNS.items():
    for _called in (_ruler, f"king {_ruler}" if _ruler[0] != "q" else "victoria"):
        for _name in (f"{_called}'s reign", f"{_called}'s time", f"reign of {_called}", f"under {_called}"):
            SPAN_NAMES.setdefault(_name, ((("GB", *_months),),))
for _war in "guerre|guerre de|krieg|weltkrieg|oorlog|guerra|guerra del|guerra de|krig|krigen|kriget|sõda|sota|war|wojna|válka".split(
    "|"
):
    SPAN_NAMES |= {f"{_war} 14-18": (SPANS[0][1],), f"{_war} 14/18": (SPANS[0][1],)}
LANGUAGES_OF_WAR: dict[str, str] = {}
"""The codes of the languages of each of the names of `WHICH_WAR`."""

for _codes, _names in WHICH_WAR.items():
    for _name in _names.split("|"):
        SPAN_NAMES[_name] = UNNAMED
        LANGUAGES_OF_WAR[_name] = f"{LANGUAGES_OF_WAR.get(_name, '')} {_codes}".strip()

NO_WARS = frozenset((*SPAN_NAMES["революция"], *SPAN_NAMES["ditadura"]))  # type: ignore[misc]  # rows of theatres
"""Times of one name that are no wars: which of them is meant is asked in other words."""
