"""What families say for given names where no rule of fond forms tells it, folded; each row: the full form, then those.

Common practice, from memory; no source. They are only looked for in words, always as a question: none counts as a
given name where names are read, since many are words too (`short_forms_table` has those that do).
"""

FOND_FORMS: tuple[str, ...] = tuple(
    """
adelheid heidi; agnes senga nessa nancy aggie neza; alasdair ally eck; alexander eck alick ally lex sawney xander sander
alexandra sandra lexie sandie sanya; alison ally; amanda mandy; amelia milly millie; angelina lina; annabel bel
antonia toni nia; archibald baldie; arabella bella bel; augusta gussie gusta; augustine gus gussie; augustus gus gussie
barbara babs barbie bab babette barbel; barnaby barney; bartholomew bart barty tolly bartley; beatrice trixie bee beattie
belinda bel lindy; benedict ben benny; bernadette bernie detta; bernard bernie barney; bethany beth; brendan bren
bridget bride biddy breda delia; bronwen bron; caroline caro carrie lina; cassandra cass cassie sandra
catherine catriona triona cassie cath kit katrina; cecilia cissie celia sis; cecily cis sis; charlotte lotta lottie chattie
christina kirsty kirstie teenie teena xina chris; christine kirsty kirstie chris chrissy; christian kirsty chris
christopher kit kester topher; clementine clemmie clem; constance connie; cordelia delia; cornelia nelia neely
cornelius neily neil corney con; cuthbert cuddy bert; cynthia cindy; daniel dan danny; deborah debs debbie deb
delilah lilah; denis dinny; dominic dom nick; donald donnie; dorothea thea dot dora dolly; dorothy dot dolly dodie dodo
ebenezer eben; edith edie ede; edmund ned ted; eleanor ellie nora nell lennie; elizabeth elspeth lilibet beth buffy libby lib elsie lisbet
emmeline emmy; ernest ern ernie; ethel eth; euphemia effie phemie fay; evangeline evie vangie; felicity flick fliss
florence flo florrie flossie; frances fanny fran frankie; frederica freddie rica; geoffrey geoff jeff; genevieve ginette; georgina georgie gina
gerald ger gerry; gerard ger gerry; geraldine gerry dina; gilbert gil bert; gillian jill gilly; gwendolen gwen wendy gwenda
gwendoline gwen wendy; gwenllian gwenno llio; gwyneth gwyn gwen; hannah nan; harriet hattie hatty; helena nell lena ella
henrietta hetty etta hettie; hermione hermy; hester hetty essie; hilary hil; hubert bert; hugh hughie shug
humphrey humph; ignatius iggy; irene rene renie; isabel ishbel tibbie bel bella belle izzy; isabella ishbel tibbie izzy bel
isidore izzy; jacqueline jackie; james jamie hamish jimsy jim; jane jean sheena jenny; janet jessie jenny jan
jemima mima jem; jeremiah jer jerry; jeremy jerry jez; johanna hannie jo; john jock iain ian shane jack; jonathan jonty
josephine posy jo fifi; judith judy jude; julian jules; juliana jules; juliet jules; katherine kit kay kath kitty
kathleen kath kay kathy kitty; lancelot lance; lavinia vinnie; leopold leo poldi; letitia letty tish; lillian lily lil
lucinda lucy cindy; lydia liddy; mabel mab; magdalene lena madge; malcolm mal calum; margaret maisie mysie peigi mags madge meta greta daisy
marjorie marge marj madge; marion mamie; mary moll moira maire mamie polly may; matilda tilly tilda; maurice mo morrie maurie
maximilian max; melissa mel missy lissa; michael mick micky; mildred millie; millicent millie milly; miranda mandy
montague monty; mortimer mort; muriel mu; myfanwy myf; nathaniel nat; nicola nicky; octavia tavy; oliver noll ollie
oswald oz ozzie ossie waldo; patricia tricia trish paddy; patrick packie paudie paddy; penelope pen penny nell; petronella nell
philippa pippa pip flip; phyllis phyl; prudence prue; priscilla cilla prissy; rachel rae ray; rebecca becca becky
reginald reg reggie rex; rhiannon non rhi; roderick rory rod; roland roly rollo; rosalind ros; rosamund ros; rosemary ros romy
rowena ena; ruaridh rory; samantha sam; samuel sam; seraphina fina; sibyl sib; sidney sid; siobhan shiv; solomon solly
sophia soph; sylvia syl; tabitha tabby; theodosia dosia; theophilus theo; theresa tess tessa terry; thomasina tamsin ina
tobias toby; ursula ursie; valentine val; valerie val; veronica ronnie nicky; violet vi; vivian viv; wallace wally
walter wat; wilhelmina ina minnie mina billie; williamina mina ina; winifred win una freda; yvonne vonnie; zachary zac zack
dafydd dai; david dai davy; evan ianto; ifan ianto; william wil wull; catrin cadi; blodwen blod; angharad hari; edward ted ned
агафья гаша агаша гафа; аграфена груня груша феня; агриппина груня груша; аксинья ксюша ася сина; акулина акуля куля
александр саша шура саня алик сандр шурик; александра саша шура саня сандра; алексеи леша леха алеша; анастасия настя ася стася тася настена настасья
анатолии толя толик; андреи дрюня; анна нюра нюша нюта аня ася; антон тоша тоха; антонина тося тоня нина; анфиса фиса; аркадии аркаша кеша адик
арсении сеня; артем тема; афанасии афоня фоня; борис боря; вадим дима; валентин валя; валентина валя; варвара варя; василии вася
василиса вася; вениамин веня; викентии кеша; виктор витя; виктория вика тора; виталии витя таля; владислав влад слава; владимир вова володя
всеволод сева; вячеслав слава; гавриил ганя гаврик; галина гала галя; геннадии гена; георгии гоша жора гера юра егор; герасим гера; глафира глаша
григории гриша; даниил даня; дарья даша; демьян дема; дмитрии дима митя; евдокия дуня дуся авдотья; авдотья дуня дуся; евгения женя; евгении женя
егор жора гоша; екатерина катя; елена лена леля; елизавета лиза лиля; емельян емеля; ефим фима; ефросинья фрося; зинаида зина; иван ваня
игнатии игнат; илларион ларя; инна; иннокентии кеша; иосиф осип ося; ирина ариша ира; капитолина капа тола; кирилл кира; клавдия клава клаша; зоя зоенька; милана мила
константин костя; ксения ксюша ксана ася; кузьма кузя; лариса лара; лев лева; леонид леня; лидия лида; лукерья луша; любовь люба; людмила люда мила люся
макар мака; максим макс сима; маргарита рита марго; марина мара; мария маша маня муся маруся; марфа мотя; матвеи мотя; матрена мотя; мстислав слава
митрофан митя; михаил миша; надежда надя; наталия ната туся таша; наталья ната туся таша; никита ника; никифор кифа; николаи коля ника; нинель неля
оксана ксюша ксана; олег лега; олимпиада липа; ольга оля леля; павел паша; пелагея поля палаша; полина поля; прасковья паша параша паня; прокофии проня
прохор проша; раиса рая; родион родя; роман рома; ростислав слава ростик; савелии сава; светлана света лана; семен сеня сема; серафима сима фима; сергеи сережа
софия соня; софья соня; станислав стас слава; степан степа; степанида стеша; таисия тася тая; тамара тома; татьяна таня; тимофеи тима; тихон тиша
трофим троша; ульяна уля; устинья устя; федор федя; федосья феня дося; фекла текла; феодосия феня; филипп филя; эдуард эдик; эмилия миля; юлия юля; юрии юра
яков яша; ярослав слава ярик; игорь гоша гося; олеся леся; алевтина аля тина; альбина аля бина; виолетта вета; елизавета вета; иветта вета; святослав слава свят
aniela nela; apolonia pola; barbara basia baska; bartlomiej bartek; bronislawa bronka bronia; czeslawa czesia; dariusz darek; dorota dosia; edmund mundek
edward edek edzio; eleonora lora nora; eugeniusz gienek genek; feliks felek; felicja fela; franciszka frania; grazyna graza; halina hala halka; ignacy ignac
izabela iza; jadwiga jadzia; jakub kuba kubus; joanna asia aska joasia; jolanta jola; juliusz julek; kazimiera kazia; konstanty kostek; leokadia lodzia
leon lolek; lucja lusia luca; lucyna lusia; ludwik lutek ludek; magdalena magda madzia; maria marysia maryla mania; mieczyslawa miecia; pelagia pela
regina renia; rozalia rozia; salomea salcia sala; teresa renia terenia; urszula ula; waleria wala; walentyna wala; weronika nika wera; wiktoria wika
wincenty wicek; witold witek; zuzanna zuzia zuza; zygmunt zyga; zenon zenek; zenobia zenia; antoni antek tosiek tolek; bogumila bogusia mila; czeslaw czesiek
alois lojza; alzbeta bety betka; antonin tonda; bohumil bohous; dagmar dasa; drahomira draha; emilie mila; frantisek franta fanda; frantiska fanka fany fanynka
jan honza jenda; jarmila jarka; jaroslava jarka slavka; jirina jirka; jiri jirka jura; josef pepa jozka; josefa pepka pepina; katerina kaca; kristyna tyna kiki
libuse liba; ludmila lida mila; magdalena madla majda; marie manka majka; milada milka; miloslava milka; oldrich olda; ruzena ruza; terezie rezka
vilem vila; vojtech vojta; zdenek zdenda; juraj duro; michal miso; ondrej ondra; andrej ondro; stefan stevo; jozef jozo dodo; vendula venda; bedrich beda
agnes agi agica; anna ancsa annus; antal toni; borbala borcsa; erzsebet zsoka bozsi boske; etelka eti etus; gizella gizi; gyorgy gyuri gyurka
hajnalka hajni; ilona ica ili ilka ilcsi icuka icus; jolan joli; julianna juli julcsa; karoly karcsi; katalin kato kata; klara klari; margit manci gitta
maria marcsa manyi mari; marton marci; matyas matyi; orsolya orsi; rozalia rozi; sarolta sari; terezia rezi teri; valeria vali; veronika veron; zsuzsanna zsuzsi zsuka
ferenc feri ferko; istvan pista; sandor sanyi; andras bandi andris; jozsef joska; laszlo laci; mihaly misi; gergely gergo; elemer eli; dezso dodi; jeno jenci
aleksander sass sassi ales sander; august kusti; gustav kusti; eduard eedi; elisabet liisa bet liis; friedrich priidu; heinrich hindrek; helene leeni
jakob jaak jaagup; johannes juss juhan; juhan juss juku; karl kaarel kalle; katariina triinu kaie; kristiina stiina tiina; magdalena malle leena
margareeta reet kreet; maria manni maie mall; mihkel miku; nikolai kolla nigul; peeter petsi; richard riho; rosalie roosi; rudolf ruudi; villem villu
voldemar volli; wilhelmine miina; konstantin kosta; leonhard leho; emilie miili; konrad koit; ferdinand verdi; theodor teodor teedu
antti antsa; heikki heka hessu; jaakko jaska; johannes jussi juho; jorma jomppa; kaarlo kalle; kalevi kalle; lauri lassi; martti mara; matti masa
paavo pave; pentti pena; pertti pera; risto ripa; tapani tapsa; tapio tapsa; toivo topi; tuomas tomppa; vaino vaiski; veikko vekku veke; yrjo yka
kaarina kaisa; katariina kaisa; kristiina kirsti; margareeta reetta kreeta; maria maija mirja; matilda tilda; susanna sanna; terttu tepa; erkki eki eka
ilkka ile; olavi olli; pekka peksi; seppo sepi; raimo raipe; marjatta marja; elisabet liisa elli; helena leena
aleksandrs sandis; elizabete lize liza; jekabs jeks; karlis karls; katrina kate; margrieta grieta; mikelis mikus; antanas antosius; barbora bare
elzbieta elze; kazimieras kazys; magdalena magde; ona onute; pranciskus pranas; stanislovas stasys; vincentas vincas; vladislovas vladas
albrecht brecht; anton toni; brigitte gitti gitte; cacilie zilli; christoph stoffel; dietrich dieter; eleonore lore; ferdinand ferdl; friederike rike rieke fritzi
gabriele gabi; genoveva vevi; gerhard gerd; gisela gila; gottfried friedel; hedwig hedi; helene leni; henriette jette; hildegard hilla hilde; ingeborg inge
irmgard irmi; joachim jochen achim; kreszenz zenzi; kunigunde gundi; leonhard hartl; lorenz lenz; magdalena leni; manfred manni fredi; mathilde hilde
matthias hias hiasl matze; michael michel michi; nikolaus klaus niko; notburga burgl; rosemarie rosi romy; sabine bine; siegfried sigi; veronika vroni
waltraud traudl traude; wilhelmine minna; bo bosse; bengt benke; gudmundur gummi; hans hasse; jan janne; karin kajsa; katarina kajsa; kristina kicki stina
leif leffe; magnus maggi mange; nils nisse; olafur oli; olof olle; per pelle; sigridur sigga; stefan stebbi; stig stickan; sven svenne; ulf uffe
gudrun gurry runa; sieglinde sigi; francesca chicca; padraig podge paudie; thaddeus teddy thad; johannes juku; muriel moo
marguerite margot guite guiguite goton gogo; pierre pierrot; jeanne jeannette jeanneton; jacques jacquot jacquou jacky; francoise fanchon fanny soizic
madeleine madelon mado; antoine toinou toine toinon tonin; simone momone; louise louison loulou; ann nancy; anna andulka andula ancka
hendrik henk hein rik; katharine kitty kit kate kathy katie; may maisie; vigdis vigga; elisabeth lisette; charles charlot; karel karlik kaja; johan janne; catherine cathou
moshe moishe; yitzhak itzik; avraham avremel; wiremu wi; margaret makareta
""".strip()
    .replace("\n", "; ")
    .split("; ")
)
