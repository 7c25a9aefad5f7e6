"""Short and pet forms of given names, folded; each row: the full form, then what people say for it.

Common practice, from memory; no source. Used to propose that two entries may be one person, never to decide it,
and to find the names of the living under forms that nobody told us.
"""

SHORT_FORMS: tuple[tuple[str, ...], ...] = tuple(
    tuple(line.split())
    for line in """
abigail abby gail
agnes aggie nessie agi agica
albert al bert bertie
dorothea dot dottie dolly dora thea
людмила люда люся людочка мила
alexander alex alec sandy sasha
alfred alf alfie fred
andrew andy drew
anna ann anne annie nan nancy anni annike
anthony tony
archibald archie
arthur art
barbara barb babs barbie basia baska
benjamin ben benny
bridget biddy bridie
catherine katherine kathryn kate katie kathy cathy kitty kat katrin kati
charles charlie chas chuck
charlotte lottie charlie
christina christine chris tina chrissie
christopher chris kit
cornelius con connie
daniel dan danny
david dave davy taavet taavi
dorothy dot dottie dolly
edith edie
edmund ed eddie ned ted
edward ed eddie ned ted teddy
eleanor ellen nell nellie nora
elizabeth eliza liz lizzie beth betty bess bessie betsy elsie libby lisa liisi liisa
emily em emmy millie
eric rick
ernest ern ernie
eugene gene
evelyn eve evie
florence flo florrie flossie
frances fran fanny frankie
francis frank frankie
franklin frank
frederick fred freddie fritz
george georgie juri
gerald gerry jerry
gertrude gert gertie trudy
gregory greg
harold harry hal
helen nell nellie lena helmi
henry harry hank hal heino
isabella isabel bella bell belle
jacob jake jaak jaagup
james jim jimmy jamie jem
jane jenny janie
janet jan jenny
jennifer jen jenny
jeremiah jerry
johanna joanna jo joey hanna
john johnny jack jock juhan jaan johannes ivan
jonathan jon jonny
joseph joe joey joosep
juri jurg jurka jura
layla leila laila leyla lejla
mohammed muhammad mohamed mohamad mehmed mehmet
ahmed ahmad ahmet
hussein hussain hossein husain huseyin
fatima fatma fatimah fatoumata
khadija khadijah hadija khadidja
aisha aicha ayesha aysha aischa
omar umar omer
said saeed sayed sayid
karim kareem
rashid rachid rasheed
nadia nadya nadja
zainab zeinab zaynab zineb zeynep
ibrahim brahim ebrahim
khalid khaled haled
mustafa moustafa mostafa
idris idriss driss edris
nawal naoual
nura noura noora
jamal gamal djamal
jamila djamila gamila
salim saleem selim
hamid hameed
tarek tariq tarik
jurgen jurg jurka
josephine jo josie
joshua josh
katarina kati katri triin kadri
kenneth ken kenny
kristjan christian kris krister
lawrence laurence larry laurie
leonard len lenny leo
leonora nora
lewis louis lou lew
louisa louise lou
madeleine maddie
magdalena lena magda leena madzia
margaret maggie meg peg peggy madge daisy greta marge rita reet mari
martha mattie patty
martin marty mart
mary molly polly may mamie minnie mari mia maria marie maarja
matilda tilly mattie
matthew matt mattie
michael mike mick micky mihkel
mildred millie
nathaniel nat nate
nicholas nick nicky niels nigul
oliver ollie
oskar oscar
patricia pat patsy tricia
patrick pat paddy
paul paavel
peter pete peeter peet petike
philip phil pip
raymond ray
rebecca becky
richard dick dickie rich rick rob
robert bob bobby rob robbie bert
ronald ron ronnie
rose rosie rosa
ruth ruthie
samuel sam sammy
sarah sally sadie sal sarita sari
simon si
stanley stan
stephen steven steve tiit
susan susanna susannah sue susie
terence terry
theodore ted teddy theo
theresa teresa terry tess tessa
thomas tom tommy toomas
timothy tim
victoria vicky tori
vincent vince
virginia ginny
walter wally walt
wilhelmina mina minnie willa
harriet hattie hettie
wilfred wilf
percival percy perce
peregrine perry
beatrice bea
григории гриша
william bill billy will willie liam villem
winifred win winnie freda
zsofia zsofi
erzsebet erzsi bozsi bozske
istvan pista pisti pistike
jozsef joska jozsi
katalin kati kata katica
ilona ilus ilonka
margit manci
gyorgy gyuri
laszlo laci lacika
janos jancsi
ferenc feri
sandor sanyi
maria mari mariska marika mariechen mariella marietta mimi mizzi marichen
александр саша шура саня шурик алик сашка сашенька сашуля сашок
алексеи алеша леша лешка алешка леха
анна аня анюта нюра анечка анюся нюша анька
екатерина катя катюша катенька катька
елена лена леночка ленка еленка алена
елизавета лиза
иван ваня ванюша ванька ванечка
мария маша маруся машенька маня машка муся маняша
михаил миша мишка мишаня мишенька
надежда надя надюша наденька надька
николаи коля колька коленька колян
ольга оля олечка оленька олька
петр петя петька петруша петенька
сергеи сережа сережка серега сереженька
татьяна таня танька танечка танюша
юрии юра юрка юрочка
zbigniew zbyszek zbyszko zbych zbysio zbysiu
stanislaw staszek stas stach staszko
stanislawa stasia staska
krzysztof krzysiek krzys krzysio
maciej maciek macius
wojciech wojtek wojtus
grzegorz grzesiek grzes grzesio
andrzej jedrek jedrus andrzejek
jerzy jurek jerzyk
ryszard rysiek rys rysio
kazimierz kazik kazio kaziu
wladyslaw wladek wladzio
wlodzimierz wlodek wlodzio
tadeusz tadek tadzio tadziu
mieczyslaw mietek miecio
czeslaw czesiek czesio
boguslaw bogus bogdan
boleslaw bolek bolus
bronislaw bronek bronus
jaroslaw jarek jaro
miroslaw mirek mireczek
slawomir slawek slawus
zdzislaw zdzisiek zdzich
jozef jozek jozio josef pepa pepik
franciszek franek franus
henryk heniek henio
waclaw wacek wacus
wieslaw wiesiek wieslawek
leszek lech lesio
zofia zosia zoska
katarzyna kasia kaska kasienka
malgorzata gosia malgosia goska
hanna hania hanka
agnieszka agnisia aga
elzbieta ela elzunia
jadwiga jadzia jadzka
aleksandra ola olenka sanni santra
aleksander olek alek
krystyna krysia kryska
danuta danka danusia
helena hela helenka
irena irka irenka
stefania stefcia stefa
genowefa gienia genia
wanda wandzia wandeczka
jan janek jasiek jasio
vaclav vasek vena
frantisek franta fanda
jaroslav jarda jarek
ladislav lada laco
stanislav standa stano
zdenek zdena zdenda
vladimir vlada vladko
ludmila lida lidka
bozena bozka bozenka
marie marenka maruska
katerina katka kacenka
евгении женя женька женечка
евгения женя женька женечка
дмитрии дима димка митя димочка
владимир вова вовка володя вовочка володька
виктор витя витька витюша
василии вася васька васенька
борис боря борька
павел паша пашка павлик
константин костя костик
геннадии гена генка
анатолии толя толик толька
валентина валя валька валечка
галина галя галка галочка
наталья наташа ната наташка таша
наталия наташа ната наташка
светлана света светка светик
любовь люба любаша любка
ирина ира ирочка ирка ириша
зинаида зина зинка зиночка
антонина тоня тонечка тося
александра саша шура сашенька шурочка
ксения ксюша ксюня
вячеслав слава славик
станислав стас стасик слава
тамара тома томочка
нина ниночка нинка
роман рома ромка
валерии валера валерик
dolores lola loli lolita
francisco paco pancho curro paquito kiko fran
francisca paca paquita paqui
jose pepe pepito chepe
josefa pepa pepita fina
ignacio nacho
enrique quique kike
manuel manolo manu lolo
mercedes merche meche
concepcion concha conchita
guadalupe lupe lupita
rosario charo chayo
consuelo chelo
jesus chus chuy
antonio tonio toni
isabel isa chabela
eduardo edu lalo
alberto beto
roberto beto
alejandro alex jandro
rafael rafa
santiago santi chago
guillermo guille
giuseppina pina pinuccia peppina giusy
giuseppe beppe peppe pino peppino
francesco franco ciccio cecco checco
francesca franca cecca
giovanni gianni nanni vanni nino
giovanna gianna vanna
luigi gigi gino
luigia gina
domenico mimmo menico
salvatore turi toto
vincenzo enzo cenzo
lorenzo renzo
teresa teresina resi tere
carmela melina lina
concetta tina cettina
antonietta etta nietta
giacomo mino
raffaele lello
katharina kathi kathe kathrin trine tina rina kati kathl katja
elisabeth lisl sissi elli lisbeth ella ilse liesl
margarethe grete gretl gretel gretchen
margarete grete gretl gretel gretchen
johann hans hansl hannes
johannes hans hannes jo hannu juhani jussi
josef sepp seppl pepi beppi
georg schorsch girgl jorg
ludwig wiggerl luggi lutz
theresia resi reserl thesi
franziska franzi fanny zissi
franz franzl
maximilian maxl max maxi
sebastian wastl basti
wolfgang wolfi wolf
ursula ulla uschi ursel ursl
gertrud trude traudl gerti trudi
walburga burgi wally
aloysius alois loisl
ignaz naz
friedrich fritz fiete
heinrich heinz heini hein hinnerk
zoltan zoli zolika zolcsi
andras andris bandi
gabor gabi
ildiko ildi
tamas tomi tamaska
miklos miki
mihaly misi miska
lajos lali lajcsi
eva evi evike vica
judit jutka jucus
magdolna magdi
terez terus terka
borbala bori borka
krisztina kriszti
viktoria viki
piroska piri
elisabet lisbeth elsa lisa bettan liisa elli
margareta greta maggan
birgitta gitta bibbi gittan
lars lasse
karl kalle
anders ante
gustav gosta gurra
fredrik frippe
gudrun gunna gudda
sigurdur siggi
jon nonni
kristin stina
margret magga greta
juhani jussi juha
katariina kaisa kati katri
""".strip().splitlines()
)

EVERYDAY = frozenset(
    (
        "amber april art august ash autumn bay bell bill box brook buck candy carol chance chase chip christian "
        "clay cliff coral crystal daisy dale dawn dean don drew earl faith fern "
        "forest frank gene ginger glen grace grant guy hazel heath holly hope hunter iris ivy jack jade "
        "jasmine jay jean joy june kit lance lane lily mark mart may miles misty "
        "nick olive opal page pansy patience pearl penny pip place poppy prudence "
        "reed reid rich rick river rob robin rose ruby rusty sandy scout skip sky spring stone storm sue "
        "pat ray don josh peg tad major "
        "summer sunny title victor viola violet wade will win winter "
        "abbot archer baker banks barber bird black bishop brown bush butler carpenter church cook cooper cross day "
        "farmer field fisher ford fox garden gardener gray green grey hall harbour hill house king knight lake little "
        "long marsh mason miller moon park parsons pond pool pope potter price prince rivers sharp shepherd short "
        "singer smith street swan taylor waters weaver west white wolf wood woods young folder item number letter "
        "album photo print picture family mother father sister brother aunt uncle captain "
        "ida helle kalju rein urve lemmit oie aare meeli tamm kask saar poder lepp kivi lill ilm mets oja kukk rebane "
        "hunt karu koppel kuusk mand org paju parn raud roos sepp uibo vaher valk lind luik jogi jarv magi soo poll "
        "virta maki lahti koski salo ranta laine niemi joki "
        "liepa ozols berzins kalns vilks lacis vanags rasa ausra aidas "
        "vera nadezda ljubov вера надежда любовь роза лилия слава роман волков мороз король "
        "rosa perla luz stern klein gross lang jung berg wolf koch vogel blum "
        "aroha mana tui moana marama ngaio huia kowhai rimu rata miro nikau kahu rangi whetu tama manu maia manaia "
        "aino meri ilta toivo onni rauha lahja taimi satu suvi tuuli usko lumi pilvi sini orvokki kielo kukka marja "
        "helmi impi armas sulo ilma lempi toini urho oie virve leelo maimu vaike vilja valve luule lehte mai eha koit "
        "onne ilme hilja marju alba blanca dolores mercedes esperanza consuelo pilar soledad paz sol gloria estrella "
        "rocio nieves cruz domingo leon flor margarita violeta mar rosario aurora amparo marguerite blanche france "
        "celeste marine prune heide linde ernst stella gioia bianca viola luce grazia fiore bruno primo natale "
        "avril abril julio junio summer justice mercy charity clement constant amity temperance melody harmony sienna "
        "heather charlotte moss lee petit blanc pierre лев заяц york holland "
        "carmen savannah paris chelsea brooklyn london sydney florence virginia georgia carolina victoria israel jordan"
    ).split()
)
"""Words of names that are words of every day or places too, folded: alone they point to nobody, but may. From memory."""

TIMES = frozenset(
    "april may june august avril abril junio julio mai juuni maj juni juli май август spring summer autumn winter".split()
)
"""Those of them that are months and seasons."""

NUMBERED = TIMES | frozenset("box folder item number letter album photo print picture page house lane box lot".split())
"""Those of them that stand before a number and name nobody there: `May 1964`, `Box 3`."""
