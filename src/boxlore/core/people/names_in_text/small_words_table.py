"""Small words and places of many languages, folded: stopwordsiso 0.7.1 (MIT licence), WordNet 3.0, places; made by make_small_words.py."""

SMALL_WORDS = frozenset(
    """
    aacheni aachenns abaens abhaens abiko abikoi acelasi acele acerca adelaideens adelaidens ademas adeni adenns adica
    adoniens adonins aeschylus afin aghast agl agli agraens agus aici aikaan aikajen aikana aikoo ainsi aiotte airani
    airanii airanin airijaens aist ait aixi aiz ajmer ajmerens akashi akashii akashin akita akouze aksu aksun akuze
    alad alam alanya alanyaens alas alaska albaania albaaniaens albania albaniaens albanie albanieens albaniei
    albanien albanienn albanienns albaniens albanija albanijaens albany albo alcuna alcuni aldus alexandriaens alez
    algeriaens algerieens algerien algerienn algerienns algeriens algerijeens algerijen algerijens algo alkoon alkuun
    allas alleen alles allt alltsa almanya als alt altayens alti altii altonaens altoos alussa alwarens alzirens
    alzirijaens alzyras alzyrasi amarillo amarilloens amb ambas ambos amely amelyik amelynek amiens amman ammanens
    ammani ammann ammanns amolens amroha anacoens anasis ancora and andaens anderszins andijoni andoraens andorraens
    andorreens andorrens angarski anjoens ankara annabaens annak annal annat annettu anning anokia anoks anqing ans
    anshan anshani anshann anshun anshuni anshunn antoi anyone anything aon apos apostolic aquele aqueles aquelles
    aqui aquilo arad aradens araki arcked arcking argelia argeliai argi arhus arhusi arica aricaens arish arishens
    arishi armeeniaens armeniaens armenieens armenien armenienn armenienns armeniens armenijaens arose arpus arrahi
    artem artemens arti arusha arushaens ashmun ashmunens ashmuni ashmunn asmaraens assisi asti astonish astoriaens
    asuncionens asuncioni aswani asyuti atani ataniens atanii atanin atanins atariaens athens athensi atita atitia
    atlantaens atlantic atras attendu attesa attica auch aucune aug auras auroraens aus aussi austini austinns
    austriaens austrijaens ausztriaens avendo aver averring avesse avessi avrei avro avulla avuta avute avuti avutta
    awkaens awkan awoke aydini aydinns azareens azarens azokat azokert azokka backs bagaha bagging bago bagoens bah
    baisen baisha baishan baishann baiyini baku bal bali baliens balii balins balkh balkhens balkhi balti baltiens
    baltii baltins bamaens bamenda banani bandaens banning baraki barakii barbaric bardziej bari bariens barii barinas
    barins barretos barrie barrieens barrien barriens barring barsi barsiens barsii barsins baruta bas basel baseli
    bashani bast basta bastiens bastii bastins basuon bata bataens bathens bathi batu bauchi bauchiens bauchii
    bauchins bedzie been beetje begging begins bei bekasi bekasii bekasin belarus belarusi belarusz belaruszi bele
    belice beliceens belicei belicens bellaryens bellaryns bello belloens belying beniens benii benina beninai beninas
    benini beninns benins benned benoniens benonins benxi benxii beppu bergeni bergenns bern bernens berni bernn
    bernns betting bez bezo bidaens bielany bielanyi bielanyn bien bijien bila bili billings bilo bilqas bilqasi
    bimaens binani bine binning biol birganj birganji birganjn bis bishani bisher bist biti bitting biyski blatting
    bled blev blew blidaens bobbing boisen bol bola boleens bolei bolens boli bolj bon bonn bonnens bonni bonnn
    borivli borivlii bos boshani both bova bozhou brackish bragaens bragging brassica bredaens brentens brenti brescia
    bresciaens brest brestens bresti brez brimming britannic british britsi brooklynens brooklyni brooklynns brunei
    bruneii brunej bruneji bryanski bucsu budding budou budu buen buenas buenaventuraens bueno buenos bukani burgas
    burgasi burgos burgosi bursa bursaens bursan busani bushens bushi busi busu byl byla byli bylo byly bym bys byt
    cabo caboens cacaki caci cada cadaens cadas cadascu cadasi caddies caddying caen caenens caeni caenn cairo
    cairoens cala cali caliens calii calins callaoens caly cam caminho cancun cancuni cancunn cankaya canning capping
    carei carolinaens carolinai carolling cary caryens caryi caryns cascavel casi caso cassite catania catar catarens
    cati catting cechiaens ceci cedo cehiaens cehijaens cei cej cekijaens cekyaens cel cela celi celle celo cemo cento
    cerca cerro cerroens ces ceska ceskan cesko ceskoi ceskon cet cette cez cezo chacune chandaens chandelle
    channelling charlotteens charlottens charring chasens chasi chatting cher cherkasy cherkasyi cherokee chez chico
    chiny chitaens christendom christianity cibuti cibutii cibutin ciebie ciemu cikk cikkek cikkeket cile cileens
    cilei cilens cim cima cimahi cimahii cimahin cimi cina cinaens cinai cinci cinco cind cine cinq cipro ciproens
    cipru ciprus ciprusi circa cit cita citi cixi cixiens cixii cixins cladding claro clemming clotting cobani cochini
    cochinns codding cogging cogli coisa col colei coll colombiaens colombieens colombien colombiens colomboens
    columbiaens columbus columbusi como concepcionens concepcioni concordens concordiaens conning constantaens
    constantineens constantinens constantly copping coraz corkens corki coro coroens corralling cos cosa cosas cosi
    cotiaens coz crescendo ctyri cubaens cubbing cui cuito cuitoens cujas cujos cupping curico curicoi cusco cuscoens
    cuscoi cuscon cuttacki cypr cyprens cypri cyprus cyprusi czechiaens czechy czechyens czechyi czechyns czemu czesto
    daar daarin daca dado dadu dagging dagli dai daito daitoens dal dalec dali daliens dalii dalins dall dallas
    dallasi dallo dalsi dalsia dalsie dalsim dalsiu dalsou damming damohi daniaens danijaens dann dans danshuin danska
    danskan dansko danskoi danskon daqing dar darjiling darwinens darwini darwinns das dasha dashaens dass davaoens
    davieens davien daviens davor dawei daweii dawukou dawukoui daxing dayruti dazhou dazu deci degl dei deja deka del
    dela delas dele delei deles dell della dello dem demas den denizli denizlii denn denning deoli deoliens deolii
    deolin deolins depok depoki der deras deseens desei desens deseto desi despite dess dessa dessas dessous dessus
    desta destas det detta dette detto deveto devo dewas dewasi dexterous dez dezhou dhr diasias dich dicho did
    didaoens digos digosi dijon dijonens dijoni dijonn dili diliens dilii dilins dimming dinning dipping dir disuqi
    dit ditas dite ditokia ditoks ditt divo divoens dix diz dobri dobro dobry doch doen does doet doi dol dolisie
    dolisiei dominica dominicaens dominikaens dominiqueens dominiquens donning dort dotting dov dragging drei drie
    dropping drosi dug dumaens dunning during durresi dus duyuni duz duzo dwaj dykk eben edeaens edelle edessa
    edisonens eens egito egitto egli egyes ein eins eis eit eitt ejido ejidoens elcheens elchei elchen elchens
    electric elem elf elgini elginns elizabethens eljen ellei elleni elotte elso elsok embellish embu emilyen emitting
    encara encore engelsi english enkel enkelt ens enshi enshiens enshii enshins ensi eramos erem erg ergens erodeens
    erodens ers esat esilla esmeraldas esmeraldasi esmu espanja espoo essen essendo essenens esseni essenn essenns est
    estas esteis esti estic estijaens estivesse esto estos estou etenkin etessa etoniaens eugeneens eugenens eus eut
    eveneens everettens everyone evvel ezek ezekert ezeket ezekke faccia faccio facendo facesse facessi faco fai
    fanling fanning fanno fara farei faro fas fata fatt fatting fatto faz fazia feb fed fel fem fer fez fidji fidjiens
    fidjii fidjins fidschi fidschii fidzi fidzii fify fiji fijin filipijneni filipijnenns filipinai filipinaii
    filipinas filipinasi filipineens filipinens filipini filipiniens filipinii filipinins filipino filipiny
    filipinyens filipinyi filipinyns filippiiniti filippineens filippinens fin finnas finning fino finska finskan fiti
    fiyin flamming florenceens florencen florencens florenciaens florenciai fomos for fora fordi forli forlii
    fortunately forza foshani fossi francaens francan franceens francei francens franciaens franciai francieens
    franciei francien franciens francija francijaens francijai francja francjaens francjai francuska francuskan fransa
    fransaens fransan frantaens freezing friedrichshain friedrichshainn frigging frisco friscoens friscoi friscon
    fritting frolicked fuling fummo funning furring fushun fushuni fushunn gab gabaoens gabesi gabuni gaelic gagging
    gamming gan gana ganaens ganjaens ganning ganzhou gar gashua gashuan gatineau gatt gayaens gaza gazaens geen gejiu
    gelijk gelling gemena gemenai gemming geneveens genevens gent gentens genti georgeens georgei georgens georgiaens
    georgieens georgien georgienn georgienns georgiens gera geraens geral germania germaniaens germany germanyens
    germanyi germanyn germanyns gern gernsija gernsijai gernsis getting ghana ghanaens ghazni ghaznii gigging gijon
    gijonens gijoni gijonn gilbertens gilberti gine gineens ginei ginens ging gingerly ginning giorni girgaens gisenyi
    gisenyii giza gizaens goda goes goiania goods gor gora got gott gracia graciaens gran gratie graz grazens grazi
    grazie greceens grecei grecens grecia greciaens grecja grecjaens grecko greckoens greeceens greecei greecens
    greeley greeleyens greeleyi gritting guadalupaens guadalupeens guadalupens gueno guileless guilini guilinns guixi
    guixii guli guliens gulii gulini gulinns gulins gulu gumiens gumii gumins gumming guna gunaens gunani gunning
    gunsan gunsani gunsann gur gwineaens gyor gyorens gyori haar haceis hacia had haeju haft hageni hagenns hago haha
    hai haikki haikou haikoun hailuni haina hainaens haldiaens hallo halusi halusin halwani hamahi hamiens hamii
    hamins hamm hammens hammi han handa hanelle hanessa hanjiaens hany har has hassani hast hastings hatting having
    hawassa hayas hebi hebiens hebii hebins hechi hechiens hechii hechins hecho hed hefei hefeii hei heille heissa hej
    helas hellas hellasi hellenic helsinki helsinkii hemming hemos hengshan hengshann hengshuin hep hepo hepoens hepu
    her heraldic herneens hernei hernens hers hes het heti hezeens hezei hezens hezhou hiinaens him himeji himejii hin
    hino hinoens hiri hiriaens hiriens hirii hirins hitting hobbing hoci hogging hogy hol hola homeric homsi hon
    honchoens hopping hora horas horiaens hos hoss houvesse how hozza hrodnaens hrvaska hubli hublii hubo hugli
    hugliens huglii huglins hulani humeni humenns hun hung husz huzhou hyvien hyvina hyvissa iad iako iar iasi iasiens
    iasii iasin iasins ibbens icaens idkun ieri iidaens iisraelens iisraeli iksan iksani iksann ilesa ils ilyen
    imeneens imenens immar imusi inc incat incit ind indeens indei indens indiaens indico indieens indien indienn
    indienns indiens indijaens inget iniaens inisa inkje innocent intiaens into inuti inz iordania iordaniaens ipohi
    iraak iraakens iraaki iraani irak irakaens irakas irakasi irakens iraki irani iraq iraqens iraqi irijaens irska
    irskan irsko irskoi irskon irvineens irvinens irving isahaya iseens isens israele israeleens israelei israelens
    israeli ist isto isvec isveci itaaliaens italieens italien italienn italienns italiens italijaens italyaens
    italyens italyns iwaki iwakii iwoens izmiti jacksonens jag jagging jah jak jakas jakie jakis jako jakos jalkeen
    jamming jammu jaun jaz jeddahi jedno jednou jeemeni jeemenns jeigu jejich jemena jemenai jemeni jemenns jenaens
    jenz jersey jerseyens jerseyi jesmo jestli jewelling jezeli jiamusi jiamusii jiamusin jianshuin jiashani jiaxing
    jiazi jiaziens jiazii jiazins jibbing jieshi jieshiens jieshii jieshins jieshou jigging jijel jijelens jijeli
    jijigaens jilin jilinens jilini jilinn jilinns jimmaens jimman jinani jind jindens jindi jingmeni jingmenns
    jingzhi jingzhii jining jinzhou jisai jiupu jixi jixiens jixii jixins jiyuan jiyuanens jiyuani jiyuann jizani
    jobbing joetsu joetsun joiksi joille joissa joj joji joka joko joksi joku jol jolo joloens jolon jonka jonkin
    jordaania jordaaniaens jordanens jordani jordania jordaniaens jordanie jordanieens jordaniei jordanien jordanienn
    jordanienns jordaniens jordanija jordanijaens jos josens josi josiose joskus jota jotenkin jotka jotting joudutte
    joukossa joutuu jouw judu jugging juk juleoeni juleoenns julij jullie july junij jus juso juuri kabuli kad kada
    kaiken kaikki kaikkien kaikkin kaili kailiens kailii kailins kajti kako kaksi kalisz kaliszens kaliszi kam
    kamaliaens kamoke kamyshin kamyshini kamyshinn kan kana kanaens kandi kandiens kandii kandins kandy kandyens
    kandyi kandyns kani kaniens kanii kanins kankan kankann kann kano kanoens kanski kanssa kanssaan kaolacki kar kara
    karaens kariyaens kas kasseli kasukabe kasukaben katar kataraens kataras katarasi katarens kathin kathkas
    kathkokia kathkoks katras katsina katsuta kayaens kazani kazo kazoens keeniaens keiksi keille keissa kej kell
    kelljen kena kenaens kenelle kenena kenessa keniaens kenijaens kenning kentens kenti kenties kentucky kenyaens ker
    kerchens kermani kerta kes kesken keso kesz ket keta ketka ketto khannaens khardahi khimki khimkii khimkin
    khimkins khowy khowyens khowyi khowyns kicsit kidding kielcen kielens kieli kierunku kiinaens kiitos kilka kilku
    killeeni killeenns kimberleyens kimberleyn kimberleyns kin kina kinaens kinek kinel kini kiniens kinii kinijaens
    kinins kinshasa kipping kipraens kiprasens kiprasi kirik kisi kisiens kisii kisiiens kisiii kisiins kisins kita
    kitas kitokia kitoks kjer klaar kobeens kobei kobens kochi kochiens kochii kochins kogaens koju kol kolei kolik
    kolkata kolmas kolni kolombiyaens kolumbiaens kolumbieens kolumbien kolumbienn kolumbienns kolumbiens kolumbijaens
    kon konyaens kool koos korbaens korso kosice kosicei koska koskaan kostanayens kosti kostiens kostii kostins kot
    kota kotaens kotli kotlii kresek kreseki kubaens kui kuitenkin kumasi kumasii kumasin kun kunshan kunshann kupros
    kuprosi kur kureens kurei kurens kuri kuris kurski kus kushtiaens kust kuubaens kuusi kven kylliksi kym kymu
    kymuze kypr kyprens kypri kypros kyprosi laayoune laayounei lado laev lahke lai laixi laixiens laixii laixins
    lamming langa lange lansing laosa laosas laosi laquelle larisaens larkana las lashio lashioens lassan lati latiens
    latii latina latinai latins lato latt laurelling lausanne lausannei lav led leedsi leedu lei leideni leidenns
    lejos lekki lekkiens lekkii lekkins lenkijaens lennek lenni leonens leonn leonns les leshanens leshani lesz leto
    lett lettek letting levelling levisens levisi levo lianshan lianshann libani libeeriaens liberec libereci
    liberiaens liberieens liberien liberiens liberijaens liberyaens libiaens libie libieens libien libiens libijaens
    libyaens libye libyeens libyen libyenn libyenns libyens lidaens lig ligi lika likasi likasii likasin liki lilleens
    lillei lillens lima limaens linga linshuin linxi linxii linyi linyiens linyii linyins linz linzens linzi lipping
    lira liraens lisaa lishuin lizhi lizhiens lizhii lizhins lleidaens lleva lodz lodzens lodzi logo lojaens lome
    longjing longshuin loniens lonii lonins lopping lor loro lors los lotting lotysskoi loudi loudiens loudii loudins
    loum loumens loumi lowelli luanshya luanshyai lub lubbock lubbocki lubeck lubecki lucena lucenaens lucenai lugging
    lui luminous lutski luzhou lyg lying lyon lyonens lyoni lyonn maak maar mabaens macaeens macaei macaen macaens
    macaoens mackay mackayens mackayi madding madisonens madiuni mag magukat maicaoens maicaon maine maior mais maji
    majieens majiens maju mala malasia maleens malei malens mali maliens malii malindiens malindins malins malis
    malisens malisi malmo malmoens malo maltaens malteens maltei maltens mam mamy manadoens manas manasis manchen
    mandyaens manens manga mani manila manisa manisaens manj mann manning mano manta mantaens manyje manzini manzinii
    marandens marcelling mardani marec mareiaens mariens marii mariliaens marin marins marka markaens markan maroc
    maroccoi maroci marockoi maroka marokkoi marokoi marring mars marshalling martinica martinik martinika martiniki
    martynika maryens maryi maryn maryns mas masani masik masikat masina masinai masok masokat mateixa matiens matii
    matiniki matinikii matinikin matins matsuen mauriceens mauricei mauricens mauricija mauricijaens mauricijusi
    mauricioens mauricioi mauriciusi mauritaania mauritania mauritanie mauritaniei mauritanija mauritiusi mayotte med
    medani medeaens medina medinai medzi meer meeruti megcsinal megis mehhiko mehhikoi mehika mehiko mehikoi meille
    mein meishan meishann meissa mej melko mellan mely melyik mene meni mennessa mennyi meno menos menossa mensch
    menschen mer mera merci merlo merloens mersini mersinns mes mesa mesaens mesec mesi messico messicoi messina
    messinai met metis metzi mezi mezzo mial mich mida mig mijn mijner mikke miksi mil milagroens milanens milani
    milioni milla miltonens milyen mimicked mimo mindenki minek minel minha minhas minka minket minnaens minoens
    minski minu minulla minulle minus minussa mir miri miriens mirii mirins mis missa misschien mit mita mitka mito
    mitoens mitt mitteens mittei mittel mittens moc mod modena modenai modestoens modo moers moersens moersi moet
    mogotte mogule mohammediaens mohou moi moim moj moji mojim mojimi mojou moju mon mondo mones moni mons monza mora
    moras morelia moreliai morenaens morenai morioka moritanya moroccoi morokoi moscow moscowi moshi moshiens moshii
    moshins mosuli moundou mozu mug mugging muj mumis murcia murciai mus musashino musashinoi muscat musi musia musis
    musite muso muss musst muun muy mykje naar nabbing nach nad nadaens nadie nado naer nagaens nagi nagy naha nahaens
    naiksi naille naissa naissalle naissalta naissasta naita naj najino najmanj najrani naju nala nancun nancuni
    nancunn nancyens nancyi nancyns nanjing nanjini nanjinns nanning naoi naples napoleonic napping nar narita nas
    nasa nasej nashik nashiki nasho nasi nasou nasz nasza natalens nato nebo nebyla nech neco necu nedelja neem nehany
    neheens nehei nehens neho nei nej nejaky nejsi nejsou nek neka neke neki nekik nekje neko nekoc neku nel nelkul
    nella nello nem nema nemcija nemcijai nemeckoi nemel nemmeno nemu neni ner nes nessas nessun nessuna nestaci
    nestas nesto netanya netko netting nevis nez ngaika ngaikan niamey niameyens niameyi nibbing nic niceens nicei
    nicens nich nici nicosia nieco nigelens nigeli niiksi niin niissa nije nim nimeni nimesi nimi nimic nior nis
    nisens nishio nishioens nisi nisu nivel niz njen njeno njezina njezino njih njim nnewi nnewiens nnewii nnewins
    noch noda noen noiksi noille noissa noko noll nonsia nor norjaens normanens normani noroc norraens nossa nossas
    nov novas nove novo novos novy nowei noweii nula numas nunca nur nutting nyalaens nyolcat nyt oct odesa odessa
    offaens ofschoon ogaki ogakii ogni olika olisi olisin olitte olympic omaani omaha omani omassa omeens omien omissa
    omski omuta ondo ondoens onitsha onkin onko onokert ootyens ootyns opens oralens oranens orani oraz oreli oricare
    oricat orice ormoc ormoci orshaens orshan orski osaki osakii osani osascoi oshens osmaniye osmaniyei osmi otaens
    otaru otras otro otros otsun ottawaens ours owing owoens oyoens paar paarli padding paeiu paeius pai paitsi pak
    pakeliui pakokku palavens palei palhoca pali paliens palii palins palmaens palmas palmasi palmiraens palu pana
    panchkula pani panicked panning panshan panshani panshann para parca parece parings parisi parle parmaens parmi
    partendo pas pasayens paskos pasto pastoens patani pati patiens paties patii patins patra patraens patting patys
    pauliniaens pecsi pegging pel pelas pelo pelos penina peninai penning penza pepping percio percut perou persino
    perthens perto peru peruu petareens petarens petek peto philippineni philippinenns philippinesi phoenixens
    phoenixi physicked piedi pienelle pieni pieno pilsen pilsenn pinski pipping piripini piripinii pirm pisa pisaens
    pitting plato platonic platting poleni polenns polijaens poljska polni poloniaens polonyaens ponceens poncei
    poncen poncens ponnani ponnanii ponnanin ponto pontos poolaens pooleens poolei poolens por porto portoens possa
    potosi potosii potosin potting potukara pouco poucos povo pow powinna powinni powinno poza prato pratoens prav
    pravi pravo prawie pred predo presa primming proc prof prophesy provo provoens przez puc puqi puqiens puqii puqins
    pur puri puriens purii purins purnia puruliya puruliyai pushkino pushkinoi puthiaens putina putini qarchaki qarshi
    qarshiens qarshii qarshins qatar qatarens qinaens qinzhou quale quali queensi quel quelcom quelli quello queluzi
    queniaens quettaens quin quina quinto quito quiza quizas rabaki rad radom radomens rafahi ragging rajkot rajshahi
    rajshahii rajshahin rakousko rakouskoi rakusko rakuskoi ramadiens ramadins ramenki ramenkii ramenkin ramming
    ranchi ranchiens ranchii ranchins rang ranska ranskan raras rasht rashtens rashti rasi ratok ratt ratting raz
    razie reb rec reckless recko reckoens redding redko ref reginaens reginai reimsi rennesi reno renoens res resende
    resendei retting revving rewa rewaens reynosa ridding riecco riga rigaens rigging rijekaens rimini riminii rimming
    ripiaens rizhaoens robbing rodos rog roku rola romania romaniaens romanya romanyaens rome romeens romei romens
    romunija roorkee roorkeei roorkeen rootsi rootsii rosarioens rosettaens rosja rosjaens rostock rostocki rousseau
    rubbing rudnyy rudnyyi rugaoens ruseens rusei rusens rusia rusiaens rusija rusijaens rusko ruskoi ruskon russia
    russiaens russie russieens russiei russien russiens rusya rusyaens ruthless rutting sabbath sabeis safi safiens
    safii safins sagaens sah saidaens sait saj saki sakiens sakii sakins saksa saksaens saksan saleens salei salemens
    salemi salens salinas salinasi salish salomoneni salomonenns samaan saman samaraens sami samsun samsuni samsunn
    sann sano sanoens sanshuin sant santelena santelenai santiagoens santos santosi sanyaens sapele sapelei sapping
    sarei sariens sarii sarins saro sat sataraens satt saturn savannahens savannahi savas savo savyje scarring
    schaerbeek schaerbeeki schedule schon seamos seba sebi sebou seeb seebens seebi seen sees seething seg segou
    segoun segun sei seja seka selle selv sem semey semeyens semeyi semmi semmilyen sen sendo senki senza seoni
    seoniens seonii seonins ser serai seras serbiaens serbie serbieens serbien serbienn serbienns serbiens serbijaens
    serei sereis serez serraens serrai servie servieens servien serviens ses seszele seszeleens seszelei seszelens
    seto setoens sette severnyy severnyyi severski sevilla shacheens shachei shachens shagging shahkot shall shamming
    shant shantou shanwei shanweii shat shedding shenzheni shenzhenns shes shimming shinning shipping shiqi shiqiaoens
    shiqiens shiqii shiqins shitting shiyan shiyanens shiyani shiyann shook shotting shulini shulinns shunning shunyi
    shunyiens shunyii shunyins shutting siano sibu sich sido sidon sidonens sidonn siegeni siegenns sig sightseen siin
    siis sijaan sikassoi siksi sili siliens silii silins sim simaoens sinahi sinn sino sint sinu sinulla sinulle
    sinussa sipping siriaens sirijaens sirsa sirsan sisli sislii sitt sivas sivasi siverek sivereki siwanens siwani
    skenning skidding skipping skoro slavic slotting snedding soc sochi sochiens sochii sochins sodding sodo sodoens
    soedani sofiaens sok sokaens sola solas solchen sold soledadens solito soll sollt sols som somijaens somos
    songeaens sono sonorous sons sonst soomeens soomei soomens soranens sorani sorocaba sorocaban sot sotto soudani
    sous sousseens soussei soussens soyos sparring stando stanno starei staro starring stavi stavo stepping stessa
    stessi stesso stiano stiri stirring stor sucreens sucrei sucrens sudaani sudani sudaoens sugis sugli sul sulejaens
    sull sullo sumareens sumarens summing sumy sumyens sumyi sumyns sunning sunshiny sur surinam suriye suriyeens
    suriyen suriyens surrey surreyens surreyi sus suta suur suuri suuriaens suurten suzanoens suzhou suzuka suzukai
    svatini svatinii sveicen svezia swanseaens swatting sydneyens syriaens syrie syrieens syrien syrienn syrienns
    syriens syv syyriaens szaz szczecini szerbiaens szerbusz szervusz szet sziriaens szudani szwecja taani taaniens
    taanii taanins taas tabbing tabuki tac tacu tady tadzikija tadzikijan taemmas tagging tahiti tai tainani taishan
    taishani taishann taizi taj tajimiens tajimins tajska tajskan tak taka takei takeii takej takeoens taketo takhle
    taki takie taking tako taksi taku taky takyto tal talca talcan talcked tali talla tallinni tallinnns tamaens
    tamelijk tana tandis tangaens tanggu tangshan tangshann tanning tansaania tansania tanska tanskan tanta tantas
    tanza tanzaens tanzania tanzanie tanzaniei tanzanija tanzanya tapec tapi tapsi tapsim tapsu tarakani tarijaens
    tarring tarsi tarsus tarsusi tas tasias tassa tata tato tatting tavas tave tavo tavyje taza tazaens tebessa tebi
    tebou tedding tedy tego tegu teille teissa tej tejto tel teljes telle telles tem tema temaens temos temu temuco
    tene teneis tengas tengo teni teniens tenii tenins tennessee tenzij ter terei teresinaens teresinai terni ternii
    terrassa tes tessek teteens tetei tetens teto texan tez tezka tezki tezko thajsko thajskoi thajskon than thaneens
    thanei thanens thar that them they thiesens thiesi thinning this thoreau threw thriving thrumming thudding
    tianjini tianjinns tianshuin tid tieli tiez tijdens tika tiki til till tills tima timaens timonens tinc tinning
    tipo tipping tiputi tiputii tiputin tipy tis tisic tisice tista tiste tisti tisto titeket tivesse tiz tobb tobbi
    tobie toda todas todo todos toen toisaalla toisaalle toisaalta toiseen toisen toj toji toko tokoens tokyoens tol
    tole tolei toluca tolucai tomski tomu tonki topeka topping torek torrancen torunens toruni tosiose tot toti
    totting totusi toulouse toulousei toursi tovuzi tramels trans tras trento trentoens tres trigging trimming
    tripping trosku trotting tschechien tschechienn tschechienns tudi tudo tudor tul tulaens tulas tulisi tulisin
    tulitte tulsa tulsan tun tunis tunisi tunisia tunisie tunisiei tunisija tuniskoi tunjaens tunning tunus tunusi
    turchiaens turcia turciai turcija turcijai turcja turcjai tureckoi turini turinns turkei turkeii turkeyens turkeyi
    turkijaens turkije turkijeens turkijen turkijens turkish turkiye turkiyeens turkiyen turkiyens turkki turkkiens
    turkkii turkkin turkkins turku turkun turska turskan tuvo tuyas tuyos tver tverens tveri tych tychy tychyens
    tychyi tychyns tylko tym tymi tyreens tyrei tyrens tys tyto ubeens ubens uber ufaens ujiens ulsan ulsann umanens
    umani umeaens ummanens ummani und unele unless unnaoens uns unsen unto untying upping uppsala urcite urduni usaki
    using uusien uyoens vaak vaan vacija vacijaens vad vagging vagy vagyis vagyok vai vaikka vais vaju valaki valencia
    valenciai valeraens valilla vallejoens valo vam vami vamos van vana vanens vani vann var vara vareji varesi varesu
    vari varie varje varken vas vasa vasej vasen vasho vasi vaticani vatikaani vatikaanii vatikaanin vatikani vatting
    vec ved vedle veel veja vel velik velika veliki veliko vem vend venice venlo venloens vens veronaens ves vetting
    vez vicenza vicino victoriaens vidisha vidishaens vidury vienas vienna viennaens viennese vienokia vienoks vier
    vieressa vieri vigoens viisi vijf vil vilka vilkas vilken vilket vill vilniusi virginiaens viro viroens vis visas
    visok visoka visoke visoki visokia visoks vissza vist vistaens visto vitoriaens viz vladimirens voi voici voisi
    voit vol vols von vor vossa vossas voy vuoksi waar waco wacoens wadding wagging wam wami wann wanning warrenens
    warreni warrenn warrenns warri warriens warrii warrin warring warrins was wasi wasz wasza wat watykani webbing
    weer weg wegens wel welchen welke welkom wells wem wen wenn wenzhou wer weru weve whining wichita wiec wiecej wier
    wieso wigani wigging wil wilfully wir wissen with witteni wittenns wiwi wiwiens wiwii wiwins wlasnie wolaens won
    wonning wonsan wonsann writhing wudaens wuxi wuxii yaizu yakeshi yakeshii yakeshin yakking yanji yanjiens yanjii
    yanjins yankee yaroslavli yeiens yein yeins yemeni yemenns yenned yenning yevlakhi yibini yibinns yibuti yibutii
    yibutin yichuni yiliens yilin yilins yingkou yingkoun yingtani yixing yksi yleensa yono yonoens yorki youd youll
    your yuci yuciens yucii yucins yulini yulinns yushu yuxi yuxii zaco zal zamaens zar zariaens zarqa zarqan zas zeby
    zehn zei zelo zem zemuni zenica zes zhuzhou zich zijn zipping zulke zunyi zunyiens zunyii zunyins албания албанія
    армения без беларусьi беше бил будь был быть вам вас ватиканi ваш ваша ваше ваши ведь весь вид вон вот всем від
    він германия год далекии дания данія дел ден день добър дом доминика домініка душа един есть имел индия иордания
    иорданія ирак иранi италия как катар кем кения кенія кипр колумбия колумбія кіпр лет либерия ливанi ливия лишь лош
    ліберія ліванi лівія маи маленькии малиn маліn мароккоi мартиника мартиніка мать машина мек меля мен меня минута
    мог мож мои моля мор мочь над наи нас наш наша наше наши неи нем нет ним них нов ночь оманi пак пол пор пред раз
    россия росія русскии сам свет себя семь сербия сербія син сирия сирія суданi суть так там танзания танзанія тебя
    тем тои том тот тунисi тунісi франция франція хорошии час часа часть індія ірак іранi італія
    """.split()
)

CYRILLIC_STOPS = frozenset(
    """
    c а авжеж автентичен адже аз ако ала але алло б бе без белыи беше би бивш бивша бившо бил била били било благодаря
    близко близо более больше большои був будем будет будете будешь будто буду будут будь була були було бути бъдат
    бъде бы бывает бывь был была были было быть бяха більш в важная важное важные важныи вам вами вас ваш ваша ваше
    ваши вверх вдали вдруг ведь везде вернуться вероятно весь вече вечер взгляд вздовж взема взять ви вид видел видеть
    вие винаги вместе вне вниз внизу внимава во вода воина вокруг вон вона вони воно вообще вопрос восемнадцатыи
    восемнадцать восемь восьмои вот впрочем време времени время все всегда всего всеки всем всеми всему всередині всех
    всею всички всичко всю всюду вся всяка всіх второи във въпреки върху вы выити від він г где ги главен главна
    главно главныи глаз глас го говорил говорит говорить год года година години годишен году голова голос город д да
    даваи давати давать давно даже далекии далеко дали дальше даром дать два двадцатыи двадцать двама двамата две
    двенадцатыи двенадцать дверь двете двух де девятнадцатыи девятнадцать девятыи девять деиствительно дел делал
    делать делаю дело ден день деньги десятыи десять дещо для днес дни до добра добре добро добър довольно докато
    докога долго должен должно должныи дом дори дорога досега доста друг друга другая други другие других друго другое
    другои думать душа е евтин его едва един една еднаква еднакви еднакъв едно ее еи екип ему если есть ето еще ею ж
    ждать же жена женщина живот жизнь жить з за забавям завжди зад заедно замість занят занята занято заняты заради
    засега заспал затем зато затова зачем защо защото здесь земля знать значит значить и иди идти из или им има имат
    имеет имел именно иметь ими имя иногда иска их к каждая каждое каждые каждыи кажется каза казаться как какая каква
    какво какои както какъв като кем книга кога когато когда кого което кои които коли колко ком комната кому конец
    конечно которая которого которои которые которыи которых която кроме кругом кто куда къде където към ледве лежать
    лесен лесно лет ли лицо лишь лош лучше любить люди м маи маиже маленькии малко мало мать машина ме между мек меля
    мен менее меньше меня месец место ми миллионов мимо минута мира мне много многочисленная многочисленное
    многочисленные многочисленныи мнозина мнои мною мог мога могат могу могут мое мож може может можно можхо мои мокър
    моля момента мор москва мочь моя му мы н на наверху навколо навіть над надо назад наи наиболее наити наконец нам
    нами направи напред например народ нас начала начать наш наша наше наши не него недавно недалеко нее неи некоторыи
    нельзя нем немного нему непрерывно нередко несколько нет нещо нею нея ни нибудь ние ниже низко никакои никогда
    никои никто никуда ним ними нито них ничего ничто нищо но нов нова нови новина новыи нога ночь ну нужно нужныи нх
    някои няколко няма о об оба обаче обычно один одиннадцатыи одиннадцать однажды однако одного однои оказаться окно
    около он она они оно опять освен особенно особено остаться от ответить отгоре отец отже откуда отново отовсюду
    отож отсюда очень още пак первыи перед писать плечо по повече повечето под подоиди подумать пожалуиста поза позже
    поити пока пол получить помнить поне понимать понять пор пора поради после последнии посмотреть посреди потом
    потому почему почти правда прави пред преди през прекрасно при про просто против процентов путь пък първата първи
    първо пъти пятнадцатыи пятнадцать пятыи пять під работа работать равен равна раз разве рано раньше ребенок решить
    россия рука русскии ряд рядом с са сам сама сами самим самими самих само самого самои самом самому саму самыи свет
    свое своего своеи свои своих свою сделать се сеаои себе себя сега сегодня седьмои сеичас семнадцатыи семнадцать
    семь си сидеть син сих сказал сказала сказать сколько скоро след следващ слишком слово случаи сме смотреть смях
    сначала снова со собои собою советскии совсем спасибо според спросить сразу сред срещу стал старыи стать сте стол
    сторона стоять страна суть считать съм със също т та тази так така такая также таки такива такие такии такое також
    такои такъв там твое твои твоя те тебе тебя тези тем теми теперь тех ти то тобои тобою тобто това товарищ тогава
    тогда того тож тоже този тои толкова только том тому тот точно тощо тою третии три тринадцатыи тринадцать трябва
    ту туда тук тут тъи ты тысяч тя тях у увидеть уж уже улица уметь утре утро харесва хиляди хорошии хорошо хотеть
    хоть хотя хоча хочешь це цеи ч час часа часто часть чаще че чего человек чем чему через често четвертыи четыре
    четырнадцатыи четырнадцать чи чого чрез что чтоб чтобы чуть шестнадцатыи шестнадцать шестои шесть ще що щом эта
    эти этим этими этих это этого этои этом этому этот эту юмрук я являюсь як якии якоі є із інших іх іі
    """.split()
)
