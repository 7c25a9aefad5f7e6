"""Names by the tradition that they belong to, folded (`core.statements.fold`): what tells a given name from a family name.

Common names of each tradition, from memory; no source. A name that stands here is evidence; one that does not proves
nothing.
"""

from boxlore.core.people.names.given_names_table import GIVEN_OR_FAMILY


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


MEN = _words(
    """
    aaron abel abraham adam adolf adrian alan albert aldo alec alex alexander alf alfonso alfred allan alois alvin ambrose
    anders andre andreas andres andrew andris andrzej angus ansis anthony anton antoine antonin antonio antonis ants archibald archie aleksander aleksandr aleksei
    are aren ari armand arne arno arnold arthur artur arturs arvid arvo august augusts aulis axel barry bartholomew basil ben
    benedikt benjamin bernard bernhard bert berthold bertil bill billy bjorn bob bogdan boris bram brendan brian bruce bruno carl carlo
    carsten cecil charles charlie christian christoph christopher claude clement clive clyde colin con connor conrad
    cornelis cornelius craig cyril dan daniel danny dave david declan denis dennis derek dermot desmond detlef dick didier
    dieter dimitri dirk dmitri dmitry dominic dominik donald dougal douglas duncan dylan eamon eamonn ebbe ed eddie edgar edgars edmund
    eduard edvard edvin edward edwin egil egon einar eino elias emil emile enn eric erich erik erkki ernest ernst erwin esko etienne
    eugen eugene evan evert ewald ewan fedor felix ferdinand fergus finn florian francesco francis francois frank franz
    fred freddie frederick frederik fredrik friedrich frits fritz fyodor gabriel gareth gary gaston gavin geoffrey georg george
    gerald gerard gerd gerhard gerrit giacomo gilbert gildas giles giovanni giulio giuseppe glen glyn gordon gottfried
    graham grant gregor gregory grigori guido guillaume gunnar gunther gustav guy gwilym hal halvor hamish hank hanno hannes hans
    harald harold harry hartmut hector heikki heino heinrich heinz helge helmut hendrik hennie henning henri henrik henry
    herbert herman hermann horace horst howard hubert hugh hugo humphrey iain ian igor ilmar ilya ilmari imants imre ingvar ioan irwin isaac
    isak isidor ivan ivar jaan jaak jaakko jacek jack jacob jacques jakob jakub jalmar james jamie jan janis jarl jaroslav jean
    jeffrey jens jeremiah jeremy jerome jerry jerzy jesper jim jimmy jiri joachim job joe joel johan johann johannes john
    johnny jon jonas jonathan jonas joost jordan joris jorgen jorma josef joseph josh joshua jozef juan juhan juhani jukka jules julian
    julius juozas jurgen juri jurij jurgis kaarel kalev kalle kalju kaj karel karl karlis karol kaspar kauko kazimierz kazimieras keith kenneth kent kevin
    kieran kiril kirill klaus knud knut konrad konstantin kristian kristjan kristoffer kurt kustaa lars lauri laurence lawrence leif lembit len leo
    leon leonard leonid leopold leslie lev lewis liam lionel lloyd louis lubomir luca lucas lucien ludwig luigi lukas luke
    maarten maciej magnus malcolm manfred marc marcel marcin marcus marek mario marius mark markku markus marten martin
    martti martynas massimo mats matt matteo matthew matthias matti maurice mauno max maximilian melvin michael michal michel
    michele mick miguel mihail mihkel mikael mike mikhail mikko mikolaj milan miles miroslav morgan morris mort morten moritz mose moses murdoch
    murray nathan nathaniel neil ned nels nicholas nick nicolas nigel nikita niklas nikolai nikolaus nikolay niels nils noah noel norbert norman
    oisin olaf olav ole oleg olev olivier oliver olli onni orson oskar oscar oswald otto owen padraig paavo pablo paddy pascal pat patrick
    paul paulo pauli pavel pawel peadar pedro peeter pekka per percy peter petr petras philip philipp phil pierre piero pieter pietro piet piotr
    poul povilas pranas preben pyotr quentin rafael ragnar raimo rainer ralf ralph ramon randolph rasmus raymond ray reginald reijo rein reino rene
    rex rhys richard rob robert roberts robin rod roderick rodney roger roland rolf ron ronald rory ross roy rudolf rudolfs rune rupert russell ruben sakari
    sam samuel sandor sandy sean seamus sebastian sepp serge sergei sergey severin sid sidney siegfried sigurd silvester simo simon
    stanislav stanislaw stanley stefan stein stephen stephan steve steven stig stuart sune sven svend sverre sydney tadeusz
    taavi tapio tauno ted teodor terence terje terry theo theodor theodore thibault thomas thor thorsten thure tim timo timothy tiit tobias toby toivo
    tom tomas tomasz tommy toomas tony tor tord torsten trevor tristan uldis ulf ulrich ulrik uno urho urmas uwe vaclav valdemar
    valdis valentin valter vasili vasily veikko vello vernon vic victor viggo vikenti viktor vilhelm viljo villem ville vincent vincenzo vitali vytautas vladimir
    vladislav vlastimil vojtech volker wacław waldemar wallace walter walther warren werner wilbur wilfred wilhelm will
    willem william willi willy winston wim witold wojciech wolfgang wolf yann yuri yves yvon zbigniew zdenek zenon zygmunt
    hone hemi wiremu rangi tane tamati matiu pita hohepa henare rewi apirana tipene nikora eruera hoani wi paora eru
    ange
    прохор ефим матвей тимофей кузьма фома лука игнат егор захар савва назар демьян фрол архип афанасий поликарп геннадий федот трофим
    тарас остап аркадий вячеслав виталий александр алексей анатолий андрей антон борис вадим василий виктор владимир георгий григорий дмитрий евгений иван игорь
    илья константин кирилл лев леонид максим михаил никита николай олег павел петр роман семен сергей степан федор юрий яков
    aabram aadu ado aeneas alasdair alfreds algernon alun amos anatole aneurin anker antek arapeta arvi aubrey
    augustin bronius cadwgan cenek crispin cuthbert dafydd egidio emlyn emrys endel enoch ephraim epiha erasmus ercole
    evander ezekiel farquhar fingal finlay firmin fitzroy gethin goronwy gustl haakon hami hendrikus hezekiah hillar
    hippolyte honore horatio horomona hywel idris ieuan ifor iivari iorwerth isidore islwyn jabez jethro joop kaljo
    kazys kereama klaas kornelis kostas kustas kustav kusti lancelot lemuel leonce llewellyn ludwik manihera marmaduke
    martins meredydd merfyn meurig mungo murdo ninian obadiah octavius phineas piripi priidik rajesh ranald rhodri
    ruairidh ruaridh septimus siim somerled stasiu stasys struan szczepan taavetti tawhai telesforo teunis thorvald
    timoti tonis torquil torvald trygve ulick uuno vaino vambola victorin vilis villu vladas voldemar walenty wilfrid
    wincenty yrjana zachariah zebulon
    alick bernie bud clarrie clem cliff dale des don doug earl ewen fergie geordie gil gordie gus herb hew horrie
    hughie huw kev lance lee lindsay mal maurie merv monty myles nev norm norrie ossie piers reg rollo roman rowan
    rube russ saul scott selwyn solomon sonny stewart stu syd vance vern wes watty
    albie alby antos ats atsi baldie bebert bosse bubi cees checco ciccio clarry davie dod dodie donnie dougie eck
    eckie edek edi felek franzl fritzl gienek gigi hansi hein herbie honza huub jas jeanjean jeannot jirka
    jockie juku jupp kalli karolek kiko klausi kuba kurre lennie loisl lolek lolo loulou ludi maxie michl
    mickey mimmo mossie murdie neddy nelo nisse ossu peppe peppino perico peterle pierrot piotrek pippo poldi
    priidu quim rab rabbie reggie rinus ritchie romek sammie schorsch seppl shug sjaak sjef stefek tam tammas titi
    tonda toto trev venca volli vova wal wattie wullie zeca zygmus вова володя гоша женя жора кирюша леня николаша
    сеня слава степа тима толя
    """
)
"""Given names of men, in and around Europe."""

WOMEN = _words(
    """
    aase abigail ada adela adele adelheid aet agata agatha agda agnes agneta agnieszka aili ailsa aino aire aleksandra alexandra alette alexia alice
    alicja alida alina aliide alison alma alva amalia amalie amanda amber amelia amy ana anastasia andrea angela angelica anete
    anette angelina anita anja anke ann anna annabel anne anneli annelies annelise annemarie annette anni annie annika annukka anu antonia
    antonina anya april ariadne armgard asa aslaug asta astrid audrey aune aurelie ava ayse barbara barbro beata beate beatrice
    beatrix bella benedicte berit bernadette bertha beryl bess beth betty bettina bianca birgit birgitta birgitte birte biruta blanche
    bodil bozena brenda briar bridget brigid brigitte britt brita bronwyn camille carina carla carmen carol carole caroline carolina carrie cathrine
    catherine catriona cecilia cecilie celeste celia charlotte chiara chloe chrissie christa christel christiane christina christine cilla claire clara
    claudia claudine clementine colette colleen constance cora cordelia corinne cornelia cristina cynthia dagmar dagny daina
    daisy dana danuta daphne daria darja deborah deirdre delia denise diana diane dina dita dolly dolores dora dorit doris dorota
    dorothea dorothy dorte dot dzidra ebba eda edda edie edith edna eeva effie eha eileen eilidh eira eithne ekaterina elaine eleanor elena eleonora
    elfriede elga elin elina elisa elisabet elisabeth elise eliza elizabeth elke ella elle ellen elli ellinor elly elna elsa elsbeth
    else elsie elspeth elvira elvi elza emilia emilie emily emma emmi emmy ena endla enid eria erica erika erma erna esme estelle esther ester ethel eugenia eugenie
    eulalia eva evdokia eve evelin eveline evelyn ewa fanni fanny fay faith felicity fern fiona flora florence frances francesca francine
    franziska freda frederikke freya frida frieda gabriela gabriele gabrielle galina gemma genevieve georgia georgina gerda germaine gerta
    gertrude gertrud gianna gillian gina ginger gisela giulia giuliana gladys glenys gloria grace grazyna greta gretchen grete gro gudrun gunda gunilla guri gwen
    gwendolyn haldis halina hanna hannah hanne hannelore harriet hazel heather hedda hedvig hedwig heidi heili helen helena helene helga helka
    hella helmi helve henriette henrietta hermine hertha hilaria hilary hilda hilde hildegard hilja hilma honor hope ida ieva ilona ilse
    ilga ilze imogen ina inara inez inga inge ingeborg inger ingrid iolanthe ira irena irene irina iris irja irma irmgard irene isabel
    isabella isabelle isla isobel ivana ivy ivonne jacqueline jadwiga jana jane janet janice janina jeanne jeannette jelena jemima
    jennifer jenny jessica jessie jill jo joan joanna joanne jocelyn johanna joyce josefine josephine judith judy julia juliana
    julie juliet juliette june justine juta kadri kaia kaire kaja kaisa kamila karen kari karin karina karoline katarina katarzyna kate katerina
    kathe katharina katherine kathleen kathrin kati katja katri katrin katrina katya kay kerstin kersti kirsten kirsti kirstie kirsty klara krista
    kristiina kristin kristina krystyna kylie laila laima laimdota laine lara larisa laura lauren leena leida leelo lena leonie leonora lesley leslie leticia
    lia liese lieselotte liina liis liisa liisi lilian liliana lilija lill lillian lilli lilly lily lina linda line linnea lisa lisbeth lise
    liselotte lisette liv liza lizzie loreta lorna lotta lotte lottie louisa louise lucia lucie lucille lucinda lucy ludmila luise lulu lydia lynette lyudmila maaja
    maarja maara mabel madeleine madge madis mae magda magdalena magdalene maggie mahalia mai maie maija maire maiken maj maja malgorzata malin malvina mandy mare
    maren marfa margaret margareta margarete margarita margit margot margrethe margriet margita marguerite mari maria marianna marianne
    marie mariana marieke marika marilyn marina marion marit marita marja marjatta marjorie marju marlene marta martha marthe martina mary
    marya maud maureen mavis maxine may meeri meg mei melanie melissa mercedes merete meri merike merle meta mia michaela michele milda mildred milena millicent millie milda
    mimi mina minna minnie miriam moira moll molly mona monica monika monique morag muriel myra myrtle nadezhda nadia nadine nan nancy
    naomi natalia natalie natalya natasha nell nellie netta nina nora noreen norma odette odile oili olga olive olivia olwen onne ophelia orla ottilie
    paivi pamela patience patricia patsy paula pauline pearl peg peggy penelope penny petra petronella phoebe phyllis pia piia pippa
    pirjo pirkko polly poppy priscilla prudence queenie rachel ragnhild raija raili raisa rasa ramona rebecca reet regina regine renata renate rhona rhoda
    riina riitta rikke rita ritva roberta rosa rosalie rosalind rosamund rose rosemary rosie rosina roswitha rowena roza ruby rut ruta ruth saara
    sabina sabine sadie saga saima salla sally salme samantha sandra sanna sanne sara sarah saskia satu selma serafima senta sheila shirley sibyl sigrid signe sille silja silvi silvia
    simone sinead siobhan siri sirje sirkka siiri sofia sofie solange solveig sonia sonja sophia sophie stefania stella stina
    sue susan susanna susanne susie svetlana sybil sylvi sylvia sylvie tabitha taimi tamara tanja tanya tarja tatiana tatjana
    teele tekla teresa tess tessa thea thelma theresa therese thora thyra tiina tiiu tilda tilly tina tone toini tora tove tracy trine triin truda trudy tuula tyra ulla
    ulrike una urmi ursula uta vaike valborg valda valentina valeria valerie vally valve vanda vanessa veera velma vera verity verena veronica veronika
    vesta vibeke victoria vida vilma viola violet virge virginia virve vivian vivien vivienne wanda wendy wenche wilhelmina wilhelmine winifred winnie wilma xenia
    yngvil yvette yvonne zara zdenka zelda zenta zina zita zoe zofia zuzana
    ngaire ngaio aroha mere huia hinemoa kiri moana anahera ria hana roimata marama ripeka mihi pare whina hera
    александра алла анастасия анна валентина варвара вера галина дарья евгения евдокия екатерина елена елизавета зинаида зоя инна
    ирина клавдия ксения лариса лидия любовь людмила маргарита марина мария надежда наталья нина ольга полина раиса светлана
    софия софья тамара татьяна
    aafke aaltje adah addolorata ailie alfhild alide aliina alphonsine alzira andrewina angharad anielcia anlize
    arihia assuncao atareta balbina bathsheba baukje beulah blodwen bogusia borghild brone bronia bronislawa
    carmencita cecylia ceridwen cissie cissy conceicao concepcion concha czeslawa deolinda dilys dirkje dollie
    domicela donaldina dorcas drusilla edmee effy elske elspet eluned elviira engracia erena ettie etty euphan
    euphemia felicja fokje franciszka geertje geesje genovaite gobnait grietje grizel gwenllian gwennie gwladys
    gwyneth harata haruko heeni heljo hendrika hendrikje heni hephzibah hepzibah hughina immacolata ishbel jamesina
    janneke jantje jerusha jinny juze kaie kaisu kamala katchen katta kazimiera kete keturah kezia keziah
    klaasje leeni lempi lettie liesl lodzia lonni lonny lucyna ludwika lurdes lyyli maali mair mairi maisie makareta
    mall maret marsali marysia meera meeta mehetabel mehitabel mhairi michalina miili miina miralda mizzi murdina
    myfanwy nairne neeltje nerys nesta nettie ngahuia nieves nunzia octavie oie oighrig olwyn ottoline pasqualina peig
    peigi pelagia perpetua peti petronele philomene pietertje piki pirihira pollie praskovia puti queeny rahera
    rangimarie riria robina roma roosi rosario saimi salli senja seonaid sidonie sietske signhild takiri tangiwai
    tegwen teresina thirza thomasina tillie tira tirzah tjitske torborg trijntje trix trixie truus tuihana tyyne vappu
    victorine vieno vilhelmine vroni waclawa wairata waleria weronika wiktoria willemijn williamina wladyslawa
    zillah zipporah zuzia аксинья боря варя вася гена глаша дуся капитолина клава костя лева лида
    лукерья ляля матрена митя муся настя паша поля серафима соня степанида тоня тося устинья федя lil vi
    angel birdie charity clemency dawn gay greer hine jade joy laurel marigold melody mercy nance opal pansy petunia
    primrose prue rae sal tansy val viv willow wren
    addie aita allie andzia ania betka bets bronka burgl cath cathie cesia daph dien dodo dorotka eadie ello emmie
    essie ethie ewunia fannerl fany floss francie frania girlie gracie gre greetje gussie hanicka helcia helju hellin
    hessie hetty hilje ilme impi ishie iza jagoda jarka jasia jeannie jetje jinnie jopie jozia julcia kaca kath kathie
    kazia koosje lal lala lallie lehte leili lenchen lenie letty liduska lieserl liesje liia liisu lillie lisl loli
    lotten loviisa luule maggan maidie maimu margie mariuccia marj marnie marylka mela mientje miep minchen mitzi myrt
    mysie nandl nannerl nena nenette ninette niusia nonie nunziatina oilme pearlie phemie phyl phyll pinuccia pola
    renia renie resl rie riek rosarito rozia sallie sefa sissie sjaan sjaantje sofferl stell stinne sukie suzette
    teenie tereska tessie thel thilde tiio tish titina titine toinette tosia tottie trien trijn trissie trudchen
    truuta urschel urve verka vilja wies wisia wladzia wyn wynne zeza zezette галя гуля даша дуня зина ира клаша ксюша
    леля люба милка наташа нюся рая рита света стеша тася тома уля фрося шурочка юля
    """
)
"""Given names of women, in and around Europe."""

GIVEN = MEN | WOMEN

ICELANDIC_SHORT = _words("sigga siggi gunna gunni nonni gudda bjossi tota disa kiddi geiri svenni doddi")
"""Short forms, by which people are told in pictures too."""

ICELANDIC_GIVEN = _words(
    """
    jon sigurdur gudmundur gunnar olafur einar magnus stefan johann bjorn halldor arni helgi petur gisli ragnar kristjan
    thorsteinn thordur thorbjorn snorri egill eirikur hakon ingolfur ingvar jonas karl kari kjartan olaf skuli steinn sveinn thor haukur orn ari
    bjarni bragi dagur davidur eggert eysteinn finnur hannes hjalti hrafn illugi jokull palmi pall hermann ulfur vilhjalmur aegir valdimar
    gudrun anna kristin sigridur margret helga sigrun ingibjorg johanna maria elin katrin asta ragnheidur vigdis steinunn solveig
    stina addi mundi gudmunda sigurlaug sigurlina thorgerdur thorbjorg herborg
    thora thordis ingunn hildur hulda jonina bjork asdis audur birna dagny erla eyglo freydis halla halldora hallgerdur jorunn kolbrun
    olof run rannveig salvor svava unnur valgerdur yrsa thorunn gudny gudlaug bergthora herdis
    """
).union(ICELANDIC_SHORT)

ETHIOPIAN_GIVEN = _words(
    """
    haile tesfaye tadesse bekele kebede abebe alemayehu getachew girma mengistu mulugeta desta lemma tekle wolde gebre selassie
    assefa ayele demissie kassa mesfin negash negussie tilahun worku yohannes zewde zewdie teshome tafari makonnen menelik
    abeba almaz aster genet hirut lemlem mulu senait tigist tsehay workinesh zenebech
    """
)

HUNGARIAN_GIVEN = _words(
    """
    laszlo istvan jozsef janos zoltan sandor ferenc gabor attila peter tamas zsolt tibor andras csaba imre lajos gyorgy balazs gyula
    mihaly karoly robert bela geza kalman miklos pal adam akos almos antal arpad denes domokos dezso ede elemer endre erno gaspar
    gergely gyorgy ignac ivan jeno kristof levente lorant lorinc marton mate matyas odon oszkar otto rezso samuel simon szabolcs szilard tivadar
    vilmos vince zsigmond bence benedek
    maria erzsebet ilona katalin eva anna zsuzsanna margit judit agnes julianna andrea ildiko erika krisztina iren eszter magdolna
    edit gabriella gyongyi gyongyver aniko marta klara borbala piroska rozalia terez teréz viktoria sarolta etelka emma jolan julia
    albert alfred aladar agoston barnabas bertalan boldizsar domonkos emil frigyes gellert henrik jakab kazmer konrad kornel
    lipot menyhert mozes nandor rudolf salamon samu sebestyen soma szilveszter tihamer vendel zsombor
    adel agota alice amalia antonia aurelia berta cecilia dorottya elvira eleonora elza erna etel flora franciska frida
    gertrud gizella gizi hedvig hermina hortenzia ida irma izabella janka johanna jozsefa karolina lidia livia lujza mathild
    matild nelli nora olga otilia paula regina rebeka rozina sara stefania szeren szidonia tekla vera veronika viola
    terezia mariska marika mari juliska julcsi erzsi erzsike kati katica ilus ilonka ica jutka zsuzsi zsuzska terka terus rozsi
    rozsika margitka manci piri annus panni panka bori boriska etus ili lenke pista pisti joska jani feri ferko laci sanyi gyuri
    gyurka jozsi misi miska bandi andris lali karcsi zoli peti imi imike miki dodi
    kinga lilla boglarka reka dora timea noemi orsolya ibolya zsofia zita emese hajnalka csilla aranka valeria roza vilma melinda
    """
)
HUNGARIAN_FAMILY = _words(
    """
    nagy kovacs toth szabo horvath varga kiss molnar nemeth farkas balogh papp takacs juhasz lakatos meszaros olah simon racz
    fekete szilagyi torok feher balazs gal kis szucs kocsis orsos pinter fodor szalai sipos magyar lukacs gulyas biro kiraly
    laszlo katona jakab bogdan balog sandor boros fazekas kelemen antal somogyi fulop orosz vincze veres hegedus deak budai pal
    barta illes pap bartok kodaly liszt jokai petofi arany ady moricz mora szekely major bodnar bardos erdelyi halasz kallai
    """
)

ITALIAN_GIVEN = _words(
    """
    giovanni giuseppe giulio giulia giuliana luigi carlo francesco francesca paolo pietro vittorio enrico edmondo
    gabriele leonardo lorenzo matteo michele nicola salvatore stefano tommaso umberto vincenzo chiara lucia maria
    caterina antonio alessandro alessandra gianni gianna rosa teresa grazia ada bruno guido marco pier aldo dino
    giovanna massimo raffaele raffaella silvia simona sofia elisabetta giorgio domenico filippo concetta assunta carmela
    """
)

RUSSIAN_GIVEN = frozenset(name for name in GIVEN if "а" <= name[0] <= "я") | _words(
    """
    aleksandr aleksei alexei anatoly andrei andrey anton boris vadim vasily vasili viktor vladimir georgy grigory
    dmitry dmitri yevgeny evgeny ivan igor ilya konstantin kirill lev leonid maksim maxim mikhail nikita nikolai
    nikolay oleg pavel pyotr petr roman semyon sergei sergey stepan fyodor yuri yury yakov timofey anastasia anna
    valentina varvara vera galina darya yevgenia ekaterina yekaterina elena yelena yelizaveta zinaida zoya inna
    irina klavdia ksenia larisa lidia lyubov lyudmila margarita marina maria mariya nadezhda natalia natalya nina
    olga polina raisa svetlana sofia tamara tatiana tatyana olha oksana taras bohdan olena
    """
)
"""Those of `GIVEN` in Cyrillic, and how they are written in Latin letters."""

SPANISH_GIVEN = _words(
    """
    jose juan antonio manuel francisco luis carlos miguel pedro jesus angel javier rafael fernando ramon vicente alberto alejandro
    andres enrique joaquin diego emilio eduardo pablo julio felipe ignacio jorge jaime ricardo roberto sergio tomas gabriel mario
    santiago salvador agustin alfonso alfredo alvaro arturo benito bernardo cesar domingo eugenio federico felix gonzalo gregorio guillermo
    gustavo hector hugo isidro leandro lorenzo marcos mariano martin mateo nicolas octavio oscar pascual raul rodrigo ruben simon teodoro valentin victor
    maria carmen ana isabel dolores pilar josefa teresa rosa angeles cristina laura francisca antonia mercedes luisa concepcion rosario
    elena juana manuela raquel marta lucia pilar beatriz silvia patricia consuelo esperanza esther eva amparo asuncion aurora
    catalina clara encarnacion emilia gloria ines inmaculada irene julia leonor lourdes luz margarita montserrat natalia nieves nuria paz
    belen blanca alba marisol noelia monica nuria olga ramona remedios rocio sofia soledad susana trinidad veronica victoria violeta ximena yolanda guadalupe graciela
    adolfo amador ambrosio anselmo aquilino arsenio baltasar bartolome basilio benigno blas braulio camilo casimiro celestino cipriano
    cristobal demetrio dionisio efrain eladio eloy emeterio epifanio esteban estanislao eusebio evaristo ezequiel fabian faustino
    feliciano fermin fidel florencio florentino gerardo geronimo gervasio gines heriberto hilario hipolito honorio ildefonso
    indalecio inocencio isaias jacinto jeronimo julian justo laureano lisardo macario manolo marcelino marcial mauricio melchor narciso
    nicanor olegario onofre pio ponciano prudencio quintin ramiro reinaldo rigoberto rogelio rufino saturnino segundo serafin servando
    sixto telmo tiburcio toribio valeriano venancio wenceslao zacarias iker unai aitor ander mikel xabier gorka koldo jordi josep lluis oriol
    adelaida adoracion agueda angustias araceli ascension balbina benita bernarda brigida candelaria carlota caridad concha covadonga
    delfina dominga dorotea eloisa encarna enriqueta estefania estrella eusebia fermina felisa florencia gregoria gertrudis herminia
    hortensia ignacia isidora jacinta jesusa joaquina justa leocadia ludivina macarena manolita marcelina maruja matilde maximina micaela
    milagros modesta natividad nati obdulia paloma paquita petronila presentacion pura purificacion rafaela rosalia rufina sagrario
    salvadora socorro teodora tomasa vicenta virtudes visitacion zoraida amaia ainhoa itziar nerea leire edurne miren begona arantxa
    maite montse merce
    """
)
SPANISH_FAMILY = _words(
    """
    garcia fernandez gonzalez rodriguez lopez martinez sanchez perez gomez martin jimenez ruiz hernandez diaz moreno alvarez munoz
    romero alonso gutierrez navarro torres dominguez vazquez ramos gil ramirez serrano blanco suarez molina morales ortega delgado
    castro ortiz rubio marin sanz iglesias nunez medina garrido cortes castillo lozano guerrero cano prieto mendez cruz gallego
    vidal leon herrera marquez pena cabrera flores campos vega diez fuentes carrasco caballero nieto reyes aguilar pascual herrero
    santana lorenzo hidalgo montero ibanez gimenez ferrer duran vicente benitez mora arias vargas carmona crespo roman pastor soto
    saez velasco soler moya esteban parra bravo gallardo rojas silva mendoza salazar lorca allende neruda cervantes saavedra ochoa zapata
    quintero rivera acosta espinosa pizarro valdes figueroa escobar bolivar borges llosa paz picasso
    """
)
PORTUGUESE_GIVEN = _words(
    """
    joao jose antonio manuel francisco luis carlos pedro paulo miguel joaquim jorge fernando rui nuno tiago goncalo duarte afonso
    alvaro amadeu anibal armando artur augusto bernardo domingos eduardo egas estevao filipe gaspar gil guilherme henrique inacio jaime leonel
    lourenco luiz marcelo mario martim mateus nicolau raul ricardo rodrigo sebastiao simao tomas vasco vitor zeferino
    maria ana antonia isabel teresa rosa fernanda manuela helena luisa ines catarina beatriz joana margarida matilde mariana leonor carolina
    conceicao amelia amalia aurora beatriz benedita celeste clarice cecilia deolinda emilia fatima filomena florbela gloria graca guiomar
    idalina josefa judite julia laura lidia lourdes lucia madalena olivia otilia palmira piedade raquel rita sara sofia susana
    """
)
PORTUGUESE_FAMILY = _words(
    """
    silva santos ferreira pereira oliveira costa rodrigues martins sousa souza fernandes goncalves gomes lopes marques alves almeida
    ribeiro pinto carvalho teixeira moreira correia mendes nunes soares vieira monteiro cardoso rocha neves coelho cruz cunha pires
    ramos reis simoes antunes matos fonseca machado araujo barbosa tavares lourenco castro figueiredo azevedo freitas magalhaes lima
    henriques guerreiro baptista batista faria miranda barros esteves nogueira queiros queiroz saramago pessoa andrade melo mello moura brito
    leite abreu guimaraes vaz campos borges morais moraes saraiva braga cabral dias duarte mota pacheco salgado sampaio torres
    """
)

CHINESE_FAMILY = _words(
    """
    wang li zhang liu chen yang huang zhao wu zhou xu sun ma zhu hu guo he lin gao luo zheng liang xie song tang deng han feng cao
    peng zeng xiao tian dong pan yuan cai jiang yu du ye cheng wei su lu lv ding ren yao shen zhong cui tan fan liao shi jin jia xia fu
    fang bai zou meng xiong qin qiu hou yin xue yan lei long tao hao shao mao wan qian gu kong
    chang chan chow chiang tsai tseng hsu hsieh kuo kwok lau leung wong cheung ng lam ho lo mak tam yip yeung yuen lai lui siu lee
    chu chou teng tsao sung ouyang situ sima zhuge szeto chin soong tsang kwan fong hui poon tse chung loh goh teo toh koh ong lim
    """
)
CHINESE_COMPOUND = ("欧阳", "歐陽", "司马", "司馬", "诸葛", "諸葛", "上官", "司徒", "东方", "夏侯", "慕容", "尉迟")
CHINESE_CHARACTERS = frozenset(
    "王李张張刘劉陈陳杨楊黄黃赵趙吴吳周徐孙孫马馬朱胡郭何林高罗羅郑鄭梁谢謝宋唐邓鄧韩韓冯馮曹彭曾肖萧蕭田董潘袁蔡蒋蔣余于杜叶葉程魏苏蘇吕呂丁任卢盧姚沈钟鍾姜崔谭譚陆陸范汪廖石金贾賈夏付傅方邹鄒熊白孟秦邱侯江尹薛闫阎閻段雷龙龍黎史陶贺賀毛郝顾顧龚龔邵万萬钱錢严嚴"
)

VIETNAMESE_FAMILY = _words(
    "nguyen tran le pham hoang huynh phan vu vo dang bui do ho ngo duong ly dinh truong doan lam mai trinh cao to ha ta luong "
    "dao thai chau quach kieu"
)
VIETNAMESE_MIDDLE = _words("van thi huu duc dinh quang cong ngoc xuan minh thanh kim ba")

KOREAN_FAMILY = _words(
    "kim lee yi rhee park pak bak choi choe jung chung jeong chong kang gang cho jo yoon yun jang chang lim im rim han oh seo suh shin sin "
    "kwon hwang ahn an song yoo yu ryu hong moon mun bae paik baek no roh nam ko goh"
)

KOREAN_SYLLABLES = _words(
    """
    min jun su soo seo hyun hyeon ji young yeong hee hui eun woo sung seong jin jung joon jeong kyung gyeong ho
    hye mi sook suk sun seon chul cheol hwan dong sang won gyu kyu tae il ki gi yong nam ah ha yeon na ri rin bin
    chan hoon hun in kwang gwang myung myeong ok sil ja hwa jae seok suk hak beom bum geun keun
    """
)
"""Of which given names are made."""

JAPANESE_FAMILY = _words(
    """
    sato suzuki takahashi tanaka watanabe ito itoh yamamoto nakamura kobayashi kato yoshida yamada sasaki yamaguchi matsumoto inoue
    kimura hayashi shimizu saito yamazaki mori abe ikeda hashimoto yamashita ishikawa nakajima maeda fujita ogawa goto okada hasegawa
    murakami kondo ishii sakamoto endo aoki fujii nishimura fukuda ota miura okamoto fujiwara matsuda nakagawa nakano harada ono
    tamura takeuchi kaneko wada nakayama ishida ueda morita hara shibata sakai kudo yokoyama miyazaki miyamoto uchida takagi ando
    taniguchi ohno maruyama imai takada fujimoto takeda murata ueno sugiyama masuda sugawara hirano kojima otsuka chiba kubo matsui
    iwasaki sakurai kinoshita noguchi matsuo nomura kikuchi sano onishi sugimoto arai hamada ichikawa furukawa mizuno komatsu shimada
    koyama natsume kawabata mishima kurosawa ozu honda toyoda oe dazai akutagawa fujimori tokugawa oda toyotomi shinohara kitagawa
    hokama higa shimabukuro oshiro kaneshiro nakama
    """
)
JAPANESE_GIVEN = _words(
    """
    hiroshi takashi kenji kazuo makoto akira minoru masao yoshio shigeru susumu isamu kiyoshi tadashi hideo hideki haruki haruto kenta
    ken ichiro jiro saburo taro shiro goro yukio osamu satoshi tetsuo tsutomu yasuo noboru mamoru manabu toru daisuke kaito ren sota
    shinji shoji koji seiji eiji ryuji yuji junichi shinichi kenichi koichi yuichi eiichi kazuki naoki yuki yoshiaki masaaki tomoaki
    yoko keiko kazuko sachiko hiroko kyoko michiko yoshiko fumiko chieko toshiko masako akiko setsuko kiyoko hisako yasuko hanako
    haruko haruka natsuko fuyuko yuko yumiko mayumi emiko tomoko noriko reiko junko mariko eiko mieko teruko sumiko shizuko
    aiko kumiko naomi megumi sakura aoi hina yui misaki ayumi ayako asuka kaori midori sayuri shizue chiyo fumi haru hisa
    """
)

SHORTENED_GIVEN = _words(
    "wm thos chas geo jas jno saml robt benj edwd alexr andw danl fredk margt eliz richd jos geof nathl patk michl archd hy edmd cath cathe"
)
"""English given names that are written short, with a point behind them or without."""

GIVEN_IN_PICTURES = _words(
    """
    truus kees klaas piet mien riet henk nel cor wout sijtje neeltje tjitske aukje sjoerd gerrit bram teun jaap joop wim dirk bep
    annie toos greet marijke hennie femke sietske torleif solveig borghild sverre ejnar bodil vivi ture gun sixten endel lempi
    hilkka vaino saimi raija meeta ulo milvi kalju piret maie leida vaike hilja helmi tauno urho bolek zosia hania kazys stase
    birute aldona danute brone genovaite algis bronius pranas lurdes odete armindo zulmira duarte cec dulcie maisie reg syd dorcas
    theos amos zeb lis lore peep ants endla kersti heli tame heni ripeka gus firmin nello alberts тоня гриша
    aatu abena achieng adaeze adeele adjoa agrafena ailean ajay akenehi akinyi akosua akulina alcide alviine amrit
    anahit anand anwar aonghas aperahama apisai arapata araxie armande arpine ashok ashot avraham ayodele aziza
    babatunde balwant beathag bhula bishan bluma butrus cairistiona ceinwen cesira chaim chhagan chidi chinua chrysoula
    ciorstaidh clovis coinneach dahya daithi daljit davit deepak delyth dinesh domininkas donnchadh douwe dvora eachann
    ealasaid efua eibhlin eirlys epp ersilia eulalie faisal farai fearchar feige feivel felismina fionn fionnlagh
    floraidh foma fotini frane freydl garabed gedeon geertruida geraint gertrudes giannis giorgi gittel govind gulsum
    gurbachan gurmit habib habiba hagop hakopa halide hapeta harbhajan harjit hasmik heledd hersh hiltje hindrek
    hinerangi hohaia honorine hori hovhannes huria ianto ifan ihaka ioane iolo iosefa irakli irihapeti iseabail jaswant
    jayanti jeram kalani kalliope kamau karaitiana karam kartar kawana kenana keoni keshav ketevan kofi krikor kusta
    kuzma kwabena kwame lachlann lakshmibai lalita laurinda leenu leib lemalu levon litia llew lowri madala madli
    mahesh makanji malka mandica mangal manjit mansour maolra marcele meirion mele mendel menna mereoni mohan mordechai
    morfydd motiejus muiris mukesh munir murchadh mwangi nadim najib narain naresh nasser nazim nelisiwe nestori
    nganeko ngozi nikifor njeri nomvula nshan nurul obinna odilon oluwaseun onesime otieno padma panagiotis paraskevi
    paratene parbhu pareraukawa parvati pateriki pelageya perl pietje prakash praskovya proinsias prokhor puea rahimah
    raibeart raiha raizel ramesh ranchhod rangihiroa ranjit ratu rauha raukura riona rivka rivke rohani ropata ropere
    ruiha rukmini rutendo sadhbh safiya sanelma sanjay saraswati sarojini savitri savva sebastiana semisi seonag seru
    settimio seumas shankar shlomo shmuel shota siencyn sietse sipho siranush siti sitiveni siwan sjoukje somhairle
    spyros stavroula stelios subramaniam suharni suharti sulaiman sultana suresh surjit sushila taare tagaloa taliesin
    tamahau tavita tegwyn tendai tevita thabo thandi themba tiaki timofei tiopira tiria tonica tonka tormod triinu
    trino tuhoe tupou turia turupa uilleam ursule ustinya vahan vartan vasanthi vasiliki vasilis vihtori viiu vijay
    viliami villemine vimala vuk wanjiku whetu wiebe yaakov yankel yasar yefrosinya yermolai yevdokiya yiannis yitzhak
    zainal zalman zurab аграфена анисья ефросинья иоанн параскева
    """
).union(ICELANDIC_SHORT, SHORTENED_GIVEN)
"""Further given names and short forms by which people are told in pictures: they make a word a name where it stands
alone, and take no name apart."""

NORTHERN_GIVEN = _words(
    "harald leif rolf arnulf ottar roald odd per pal jorund bernt bent sverre torvald tormod trygve yngve solveig astrid "
    "anders anne arne asbjorn aslak berit birger birgitte bjorn borghild cecilie dorthe einar eivind elling embret erik erling "
    "espen gjertrud guri gunnar gudbrand gudrun haakon hakon halvard halvor hans helge ingeborg ingrid iver ivar jens johan jorgen "
    "jorgine kari karen kirsten kjell kjersti knud knut kristen kristian lars lisbet magnus maren margit marit marte mads mikkel "
    "morten niels nils ola olaf olav ole oluf oline peder peter ragnhild randi rasmus reidar sigrid signe sigurd simen sissel "
    "siri sjur sofus soren sondre steinar sven svein syver tarjei thora tollef tor torbjorn torgeir torgrim torkel torsten "
    "trond ulrik aage aase asa"
)
"""Given names of Norway and Denmark behind which a father's name may stand before a farm's. From memory; no source."""

BALINESE_ORDER = _words("wayan putu gede luh made kadek nengah nyoman komang ketut gusti dewa")
"""Balinese names of the how-manieth child, and of rank."""

MEN_ALONE, WOMEN_ALONE = MEN - WOMEN, WOMEN - MEN
"""Given names of men that are none of women, and the other way."""

FAMILY_TOO = frozenset(GIVEN_OR_FAMILY.split())
"""Given names that are family names too."""

GIVEN_ELSEWHERE = frozenset().union(
    SPANISH_GIVEN, PORTUGUESE_GIVEN, ITALIAN_GIVEN, ICELANDIC_GIVEN, HUNGARIAN_GIVEN, RUSSIAN_GIVEN
)
"""Given names that are known by the lists of one people alone."""
