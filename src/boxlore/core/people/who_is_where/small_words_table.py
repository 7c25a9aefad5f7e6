"""The small words around names in who stands where, which are no part of a name: `then`, `the`, `of him`, `all`, `two`.

Folded (`core.statements.fold`), of every language together. Common practice of captions, from memory; no source.
"""

from boxlore.core.people.who_is_where.position_words_table import TURNED

LEADS = frozenset(
    "starting beginning angefangen beginnend commencant empezando cominciando comecando alustades definitely certainly surely sicher kindlasti only just nur bloss ainult seulement juste solo so alleen kun bare endast vain только tylko tikai tik jen anake "
    "then next but also first finally lastly and we have dann danach aber siis aga puis ensuite mais luego despues pero "
    "poi depois mas dan daarna maar derefter men deretter sedan sitten mutta ko затем потом а но potem ale tad tada bet "
    "sondern vaid sino vaan lecz hanem pak potom".split()
)
"""Words before a name that go on with the list: `then Ruth`."""

SAY_HOW = frozenset(
    "definitely certainly surely sicher kindlasti only just nur bloss ainult seulement juste solo alleen bare endast vain "
    "только tylko tikai tik jen".split()
)
"""Those of them that say more than who is next: `only Ruth`."""

NEXT = frozenset(
    "then dann danach siis ensuite puis luego despues poi depois dan daarna derefter sedan sitten затем потом".split()
)
"""Those of them behind which another one follows: `Ivy, then Stan's wife`."""

SURE_LEADS = frozenset("ko only just nur".split())
"""Those of them that no name begins with, also where they are written large."""

CORRECTIONS = frozenset(
    "vanta vent odota oota warte attends espera aspetta wacht подожди czekaj pockej palauk pagaidi no wait sorry rather correction nein quatsch halt non pardon nee nej nei нет vabandust anteeksi ei".split()
)
"""Words that take back the name before them: `Percy — no, wait, that's Wilf`."""

INTERJECTIONS = frozenset(
    "well oh ah aha hm hmm now ok okay so right let's naja nun tja also noh nii tiens alors bueno pues beh allora ecco bom nou nu na "
    "nou no ну вот вон ach wiec nu noo tak hat jaeja bhuel".split()
)
"""Words that open a sentence and say nothing: `Well, that's Betty`."""

ENDEARMENTS = frozenset(
    "love dear dearie darling pet duck duckie hen sweetheart honey hon mate schatz liebling liebes kallis kullake cherie "
    "cheri carino hijo querida querido cara caro tesoro lieverd schat kaere skat kjaere vannen raring kulta милая милыи "
    "дорогая дорогои голубушка kochanie drahousku mila milais brangioji".split()
)
"""Words for whoever asks, behind what is told to her: `I couldn't tell you, love`."""

BUT = frozenset("but aber sondern aga vaid mais pero sino ma mas maar men mutta vaan но а ale lecz bet nego".split())
"""`but`, before whoever it is instead: `looks like Ruth but it's Edna`."""

THESE = frozenset(
    "here hier ici aqui qui siin har her tassa здесь тут tu tutaj tady zde seit cia "
    "this that these those das dies diese dit dat deze ce ceux-ci ca ci este esta estos estas ese esos aquel aquellos questo "
    "questa questi queste quello quelli esse esses isto isso estes estas det dette disse detta dessa de need see nood tama "
    "nama ne to ta te эти это tie sie tai toto tohle tyto ezek ez thetta".split()
)
"""`these`, before `are` and whoever is seen: `Das sind Mutti und Vati`."""

DENY = frozenset("not nicht ei mitte pas no non nao niet ikke inte не nie ne nav nera".split())
"""`not`, before somebody who is told not to be seen: `not Grandad but his brother`."""

OF_AGES = frozenset(
    "months month weeks week years year yrs yr days old monate monat jahre jahr jahrig jahrige kuud kuune aastat aastane "
    "aastase aastaselt mois ans meses anos anni jaar ar vuotias vuotta лет года год lat lata let roku metu gadi gadus eves v".split()
)
"""Words behind a number that tell an age."""

ARTICLES = frozenset(
    "the an az der die das den dem le la les l' el los las lo il gli i o os as a het de ein eine einen une un una um uma een en "
    "et det".split()
)
"""Articles before a name, a word of kin, or somebody unknown."""

LADIES = frozenset("signora signor signore signorina senora senorita senor senhora senhor".split())
"""Titles that stand behind an article, and are a part of the name: `la signora Bianchi`."""

THE = frozenset("the der die das den dem le la les l' el il lo het de".split())
"""Articles that say that one and no other is meant."""

OF_ONES_OWN = frozenset("der die das den dem le la l' el il lo o de".split())
"""Articles behind which a family's own word of kin is the teller's own: `la nonna`, `der Opa`, `o avô`."""

OF = frozenset("of to de di do da del della von van der des du av af til".split())
"""Words between kin and whose: `brother of Tom`."""

AT_A_FEAST = frozenset(
    "pulmas pulmades ristimisel ristsetel matustel leeris juubelil peol sunnipaeval haissa ristiaisissa hautajaisissa juhlissa "
    "syntymapaivilla kazas kristibas beres vestuvese krikstynose laidotuvese eskuvojen temetesen".split()
)
"""A feast in the form that says where, before which whose it was is told: `Jaani ja Mari pulmas`, at Jaan's and Mari's
wedding."""

MARRYING = (
    "wedding", "marriage", "marrying", "married", "engagement", "hochzeit", "heirat", "trauung", "verlobung", "mariage", "noces",
    "fiancailles", "se marier", "casarse", "boda", "matrimonio", "nozze", "sposarsi", "casamento", "casar", "huwelijk",
    "bruiloft", "trouwen", "bryllup", "brollop", "giftermal", "haita", "haiden", "avioliit", "abiell", "pulm", "свадьб", "брак",
    "slub", "swatb", "svatb", "kazam", "laulib", "vestuv", "vestuvi", "eskuvo",
)  # fmt: skip
"""How words for a wedding begin: `vor der Hochzeit mit Otto`, with whom somebody was wed."""

BEFORE_OR_AFTER = frozenset(
    "before after vor nach avant apres antes despues prima dopo depois voor na for etter efter fore ennen jalkeen enne parast "
    "до перед после przed po pirms pec pries pred utan elott".split()
)
"""Small words before such a word: when it was, and not that it is seen."""

NAMES_OF_ANIMALS = frozenset(
    "rex rover fido bello hasso waldi azor burek reks medor minou minette musti mirri muri pontu tibby laddie nipper "
    "nero caesar karo шарик мурка барсик тузик рекс жучка васька".split()
)
"""Names of dogs, cats and horses: told alone they may be a person only where the family has one of that name."""

SEX = {
    word: sex
    for sex, words in (
        ("woman", "mother grandmother aunt great-aunt sister great-grandmother wife granddaughter daughter "
                  "woman girl lady bride bridesmaid lass braut frau dame femme fille mariee mujer nina senora novia donna ragazza "
                  "signora sposa mulher senhora noiva vrouw meisje bruid"),
        ("man", "father grandfather uncle great-uncle brother great-grandfather husband grandson son "
                "man boy gentleman lad groom bridegroom brautigam mann junge herr homme garcon hombre nino senor novio uomo ragazzo "
                "signore sposo homem rapaz senhor noivo jongen bruidegom"),
    )
    for word in words.split()
}  # fmt: skip
"""Whether a relation (`names/words_table.KIN_WORDS`) or a word for a kind of people is of a woman or a man."""

PRONOUNS = tuple(
    (
        "of picture|of the picture|of photo|of the photo|of the photograph|of the group|des bildes|de la photo|de la foto|"
        "della foto|da foto|van de foto|"
        "them both|both of them|"
        "of him|of her|her|us|sig|sich|of them|of me|of us|him|them|me|ihm|ihr|ihnen|mir|uns|lui|elle|eux|elles|moi|"
        "nous|di lei|di lui|di loro|de ella|de el|de ellos|ella|dele|dela|deles|hem|hen|mij|ons|hende|"
        "ham|for ham|for hende|for henne|for dem|for mig|for meg|dem|mig|henne|honom|meg|no vina|no vinas|no viniem|no manis|"
        "hanen|heidan|ним|неи|ними|нею|nim|nia|nimi|niego|niej|nich|"
        "vina|vinas|vinu|jo|jos|ju|nim|ni|nimi|temast|neist|minust|meist|hanesta|heista|minusta|ia"
    ).split("|")
)
"""Words behind a row or a side that say whose: `in front of him`."""

SURE_SUBJECTS = frozenset("he she they".split())
"""Pronouns that are no word of another language where a verb follows."""

SUBJECTS = SURE_SUBJECTS | frozenset(
    "er sie il elle ils elles el ella ellos ellas lui lei loro ele ela eles elas hij zij ze han hun hon hann "
    "ta tema nad nemad han on ona oni one он она они vins vina vini jis ji jie".split()
)
"""Pronouns of whoever does something, behind which a verb tells of somebody told before: `She was a nurse`."""

OF_SEVERAL = frozenset(
    "them they any anyone anybody these those ihnen ihrer keinen keine neist neid nendest kedagi eux aucun aucune loro "
    "nessuno ellos ninguno ninguna deles nenhum hen geen dem noen nogen nagon heista ketaan них никого nich nikogo".split()
)
"""Words behind `unknown` that say it of several, or of anybody: `I don't remember any of them`."""

SAME = frozenset(
    "same gleiche gleichen selbe selben sama samas meme misma stessa mesma zelfde samme samma samassa samalla тот том "
    "ten tym taki stejna stejne tas pats pati ugyanaz ugyanabban".split()
)
"""`same`, of a row told before."""

EVERYONE = frozenset(
    "all both alle beide koik molemad tous toutes todos todas ambos tutti tutte entrambi allemaal begge alla bada kaikki "
    "molemmat все оба wszyscy oboje visi abi visi abu vsichni oba".split()
)
"""`all` and `both` before a row: `all standing`."""

CARDINALS: dict[str, int] = {
    word: number
    for number, words in enumerate(
        (
            "one eins uks un uno una um uma een en ett yksi один jeden viens vienas jedna tahi",
            "two beiden zwei kaks deux dos due dois duas twee to tva kaksi два две dwa dwie dwoje dwoch divi divas du dvi dva dve rua",
            "three drei kolm trois tres tre drie kolme три trzy troje trzech tris trys tri toru",
            "four vier neli quatre cuatro quattro quatro fire fyra nelja четыре cztery cetri keturi ctyri wha",
            "five funf viis cinq cinco cinque vijf fem viisi пять piec pieci penki pet rima",
            "six sechs kuus six seis sei zes seks sex kuusi шесть szesc sesi sesi sest ono",
            "seven sieben seitse sept siete sette sete zeven syv sju seitseman семь siedem septini septyni sedm whitu",
            "eight acht kaheksa huit ocho otto oito atte otte atta kahdeksan восемь osiem astoni astuoni osm waru",
            "nine neun uheksa neuf nueve nove negen ni nio yhdeksan девять dziewiec devini devyni devet iwa",
            "ten zehn kumme dix diez dieci dez tien ti tio kymmenen десять dziesiec desmit desimt deset",
        ),
        1,
    )
    for word in words.split()
}
"""Numbers in words, behind `number` and before several people."""

KNOW = frozenset(
    "know recognise recognize remember kenne erkenne tunnen tean connais reconnais conozco reconozco conosco riconosco "
    "conheco reconheco ken herken kender genkender kjenner kanner знаю узнаю znam poznaje pazistu zinau "
    "poznavam".split()
)
"""Verbs behind `only`: `I only know the tall one`."""

GROUP = frozenset("group gruppe groupe grupo gruppo groep grupp ryhma группа grupa skupina".split())
"""Before how many are in the picture: `group of seven`."""

MORE = frozenset(
    "more others other further weitere veel teist autres mas otros altri mais outros meer anderen flere andre fler till "
    "andra muuta еще других innych kiti citi dalsi".split()
)
"""Words between a number and `unknown`: `two more unknown`."""

PEOPLE_IN_ALL = frozenset("people persons of us in all personen inimest personnes personas persone pessoas".split())

KIN_IN_A_CASE = {
    word: relation
    for relation, words in (
        ("son", "synem dels delu sunumi poja pojaga poikineen fiaval"),
        ("daughter", "dcerou corka meitu dukra dukteria tutre tutrega tyttarineen lanyaval"),
        ("wife", "manzelkou zenou zona sievu zmona naise naisega vaimoineen felesegevel"),
        ("husband", "manzelem muzem mezem viru vyru mehega miehineen ferjevel"),
        ("brother", "bratrem bratem brali broliu venna vennaga batyjaval occsevel"),
        ("sister", "sestrou siostra masu seserimi oega noverevel hugaval"),
        ("mother", "matkou maminkou mamou matka mama mati mammu motina emaga anyjaval"),
        ("father", "otcem tatinkem tatou ojcem tata tevu isaga apjaval"),
        ("grandmother", "babickou babcia vecmaminu mociute vanaemaga nagymamajaval"),
        ("grandfather", "dedou dedeckem dziadkiem vectevu seneliu vanaisaga nagyapjaval"),
        ("aunt", "tetou ciocia ciotka tanti teta tadiga"),
        ("uncle", "strycem stryckem wujkiem wujem onkuli onuga"),
        ("grandson", "vnukem wnukiem mazdelu anuku"),
        ("granddaughter", "vnuckou wnuczka mazmeitu anuke"),
    )
    for word in words.split()
}
"""Words of kin behind `with` in Czech, Polish, Latvian, Lithuanian, Estonian and Hungarian -> the relation."""

WIDOWED = frozenset(
    "widow widower witwe witwer lesk veuve veuf viuda viudo vedova vedovo viuva weduwe enke anka leski вдова wdowa vdova".split()
)
"""Kin of somebody who is dead: `widow of Albert Mudge`."""

BLESSED_WITH = frozenset(
    "aere ait alma ame anima atilsi bekeben bless descanse fred frid friede frieden gloria hebbe ilsisi kerge "
    "lepaa levatkoon mieru minne nyugodjek nyugodjon nyugosztalja odpoczynek pace paix paz peace piemina pokoji "
    "pokoju puhaku r.i.p rahu rahus ramybeje rauha rauhassa repose rest rip ruhe seelig selig slavu smiltis soul "
    "buonanima zaliger salig q.e.p.d qepd swiec temaga valsigna velsigne vrede ziel память пухом упокои царствие царствия царство".split()
)
"""What is wished to the dead: rest, peace, glory."""

BLESSINGS = BLESSED_WITH | frozenset(
    "a all'anima amzina amzinaji asche at buh che dej dell'anima deus dieu dio dios dus dusza el em en eternal god "
    "gott gud haar hab habe ham hanen hans haya he hem hende hendes hennes her him his ihn ihrer in isten jego jej "
    "ji jim jumal jumala keep l'abbia la lai lo lord love may med mu muld muziga nad nella niech o odpociva olgu "
    "over panbuh panie pormule puhka que riposi rust santa seele seiner she sie sielulleen son spoczywa su sua "
    "talle tegul tema tenga tenha the their them they tuhale v vaere vare vecnou vieglas vinai vinam w wieczny "
    "zacht zijn вечная господи душу его ее еи ему земля им небесное".split()
)
"""All words of such wishes: `God rest him`, `que en paz descanse`."""

NO_NOUNS = frozenset(("père", "bruder", "tochter", "born", "pål"))
"""Words whose accents tell them from a noun of several people: `père` is no Estonian `pere`, `Bruder` is one."""

FINNISH_KIN = frozenset(
    "aiti isa sisko velje seta eno tati mummo mummi ukki vaari vaimo miehe poika tyttare serkku isoisa isoaiti".split()
)
"""Kin words that say whose by an ending: `setäni`, my uncle."""

NOT_IN_IT = frozenset(
    """
    snapped foto fot zdjecie фото снимок fotograf fotografka fotograaf fotografo fotografa photographe valokuvaaja kuvaaja
    can't cannot couldn't nobody noone niemand personne nadie nessuno ninguem ingen ingenting kukaan никто nikt neviens niekas nikdo
    camera kamera camara fotoapparat fotoaparat камерои isn't wasn't not no took takes taken photographed photographer missing absent except without excluding minus photo photograph
    nicht fehlt fehlen ausser ohne aufgenommen fotografiert knipste machte abwesend
    ei pole puudub puuduvad pildistas pildistanud ilma valja peale
    pas absent absente absents manque sauf sans prise photographie
    no falta faltan excepto menos sin tomo tomada
    non manca mancano tranne eccetto senza scattata
    nao falta exceto sem tirou tirada
    niet ontbreekt behalve zonder genomen nam
    ikke mangler undtagen uden uten unntatt tog taget tok tatt
    inte saknas utom utan tagit
    ole puuttuu paitsi ilman otti kuvasi
    не нет отсутствует кроме без снял сняла снимал снимала фотографировал фотографировала
    nie brakuje oprocz bez zrobil zrobila
    nav truka iznemot
    nera truksta isskyrus
    neni chybi krome
    ehara
    nincs hianyzik hianyoznak kiveve nelkul fenykepezte vantar nema
    """.split()
)
"""Words, written small, that say that somebody is not in the picture, or took it."""

LEAVES_OUT_OTHERS = frozenset(
    "without except excluding minus taken photographed photo ohne ausser aufgenommen fotografiert ilma sans sauf prise sin menos "
    "excepto tomada senza tranne eccetto scattata sem exceto tirada zonder behalve genomen uden uten undtagen taget tatt utan utom "
    "tagit ilman paitsi без кроме bez oprocz iznemot isskyrus krome".split()
)
"""Those of them behind which somebody else is told: whoever stands before them is in the picture."""

DEAD = frozenset(
    "dead died passed tot gestorben verstorben surnud mort morte muerto muerta morto morta overleden dod dode kuollut "
    "умер умерла zmarl zmarla miris mirusi mires zemrel zemrela meghalt halott".split()
)
"""Words of somebody's death."""

BY_THEN = frozenset(
    "had then already schon bereits damals juba siis deja alors ya entonces gia allora ja entao al toen da allerede "
    "redan jo silloin уже тогда juz wtedy jau tad uz tehdy mar akkor".split()
)
"""Words beside them that say that it was before the picture: whoever they are told of is not in it."""

RELATIVES = frozenset(
    "who whom kes qui que che joka som ktory ktora ktorzy ktere ktera jenz kurs kura kuris kuri которыи которая которые".split()
)
"""Words that go on with somebody told before: `Uncle Joe, who is sitting`."""

BEGIN_A_REMARK = frozenset(
    """
    utanfor utenfor udenfor ulkona ausserhalb dehors fuera fuori fora buiten vor hinter devant derriere davanti dietro
    delante detras framfor bakom foran bagved voor vid
    standing sitting behind beside against atop round around outside inside in at on by under near who whose wearing holding carrying aged age dressed smiling looking leaning pointing waving laughing
    kelle kellel keda dont cuyo cuya hvis vars jonka ktorego ktorej которого которой whom
    rest bless
    from of as just partly partially half hidden obscured cropped cut next beyond
    im am bei auf beim
    dans sur chez qui en portant
    sobre vestido vestida
    sul sulla nel nella
    op bij
    pa ved som
    hos
    на за у которыи которая
    przy ktory ktora
    """.split()
)
"""Small words with which a remark begins that stands behind a comma: `Nora, in her best dress`."""

TAKE_A_CASE = frozenset("с со z ze s se su ar между miedzy mezi tarp".split())
"""Words behind which a name has another form in Russian, Polish, Czech, Lithuanian and Latvian."""

WITH = frozenset("with mit avec con com met med koos kanssa с z ze ar su s".split())

IS = frozenset(
    "is are was were ist sind war waren est sont etait etaient es son era eran e' sono erano sao eram zijn er var ar on oli olid olivat "
    "это byl jest sa byli ir bija yra buvo je jsou volt voltak eru that's here's there's "
    "e c'est c'etait esta estan 'm it's bin suis to am i'm this that it here the das dit dat dette det esto questo see".split()
)
"""The words of verbs that say only that somebody is there."""

BEFORE_A_SIDE = frozenset(
    "til till po pa z u o w kei te t v h side seite kant puse pool poole lado cote taha hand row down rad rida raden rivi rindu fila hilera "
    "rangee rang dol od".split()
)
"""Words that stand beside those for a row or a side in longer phrases, and tell nothing more."""

EMPHASIS = frozenset(
    "far very quite extreme ganz geheel volledig uiterst helemaal tout toute "
    "estrema visai pasa aussen ihan aivan mest allra heilt helt laengst langst lengst ytterst yderst koige uplne zcela самыи самая kohe".split()
)
"""Small words before a row or a side that say how far."""

SIDE_OF = frozenset("of von от van om od".split())
"""Words behind a side, before whoever stands there: `to the left of Nora`, `rechts von Oma`, `справа от мамы`."""

HIDDEN = tuple(
    "hidden obscured obliterated illegib unreadab unrecogni blurr smudge scratched torn invisib conceal masked covered faded cut-off "
    "indistinct unclear unseen verdeck verborgen unleserlich unkenntlich unsichtbar verwischt verschwommen abgeschnitten erkennbar sichtbar lesbar "
    "varja varjus loetamatu nahtamatu nahtav loetav kaetud peidus ebaselge hagune cache masque illisib effac flou invisibl visible lisible "
    "tapad ocult ilegib borros borrad escondid ilegiv encobert tremid nascost copert illeggibil sfocat visibile leggibile onleesba "
    "verscholen bedekt onzichtba onherkenba onscherp zichtbaar leesbaar skjult ulaeselig uleselig daekket tildekket utydelig synlig skymd skymt dold "
    "olaslig otydlig suddig peitossa piilossa epaselv nakymattom nakyvissa sumea закрыт скрыт заслон неразборчив стерт спрятан размыт виден видно "
    "zasloniet ukryt niewidoczn nieczyteln zamazan nierozpoznawaln aizsegt nesalasam neredzam uzdengt neiskaitom nematom zakryt necitel skryt "
    "rozmazan takar olvashatatlan hulinn olaesileg bhfolach huna".split()
)
"""Beginnings of words that say of somebody in a row that she cannot be seen, or her name not be read: `T. Cole,
(obscured), N. Cole`."""

NEGATIONS = frozenset("not out off nicht ei pas no non nao niet ikke inte не nie ne nem ekki behind away".split())
"""Small words beside them: `nicht erkennbar`, `scratched out`."""

FACES = frozenset(
    "face head name person figure gesicht kopf name nagu pea nimi visage tete nom cara rostro nombre rosto nome viso volto naam gezicht hoofd "
    "ansigt ansikt navn ansikte namn kasvot nimi лицо имя twarz nazwisko seja veidas oblicej tvar arc".split()
)
"""What of somebody is hidden: it may be of whoever is told before too."""

PARTLY = frozenset(
    "partly partially half almost mostly nearly teilweise halb fast osaliselt pooleldi peaaegu partiellement demi presque medio parcialmente "
    "casi quase meio parzialmente quasi deels half bijna delvist delvis nesten naesten nastan osittain puoliksi частично почти наполовину "
    "czesciowo prawie dalji is iscaly zpola castecne felig reszben".split()
)
"""Words before one of hiding that say it of somebody of whom something is seen."""

SEVERAL_BEHIND_A_FORM = frozenset(
    "vennad oed venda poisid poissi tudrukud tudrukut tutred pojad lapsed last veljekset siskokset sisarukset pojat tytot "
    "lapset kaksoset kaksikud perhe perekond pere seima gimene rodina семья".split()
)
"""Estonian and Finnish words of several, before which a family name stands in the genitive: `Virtasen veljekset`."""

SAID_OF_SEVERAL = frozenset(
    "teachers farmers partners friends neighbours newlyweds pupils colleagues twins sisters brothers cousins siblings zwillinge geschwister schwestern bruder kaksikud oed vennad jumeaux jumelles soeurs freres "
    "gemelos gemelas hermanas hermanos gemelli gemelle sorelle fratelli gemeos gemeas irmas irmaos tweeling zussen broers tvillinger "
    "sostre brodre tvillingar systrar broder kaksoset siskokset veljekset близнецы сестры братья blizniaki bliznieta siostry bracia".split()
)
"""Words that, behind a comma and two who are joined, say what these are."""

KIN_BEHIND_WHOSE = frozenset("ode vend tutar poeg mees naine abikaasa ema isa".split())
"""Estonian words of kin, before which it is told whose by a name that may stand in the same form: `Salme õde Hilda`."""

BEFORE_IN_A_CASE = frozenset("за перед przed za pred".split())
"""Words written as plain ones elsewhere, behind which it is told whom somebody stands behind or before."""

WITH_AN_ARTICLE = frozenset("au aux à na no nas nos alla allo sul sulla nel nella al".split())
"""Small words that hold an article, as they are written: `à porta`, `au piano`, `sulla spiaggia`."""

BETWEEN_THEM = frozenset(
    "between them|between the two|between the two of them|in between|dazwischen|nende vahel|vahel|entre eux|entre les deux|entre ellos|"
    "tra loro|fra loro|entre eles|daartussen|imellem|mellom dem|mellan dem|valissa|между ними|miedzy nimi|mezi nimi|kozottuk|"
    "a milli theirra".split("|")
)
"""Those of the words for the middle that say it of two who are told."""

ABOVE_OR_BELOW = ("below", "above", "under", "over", "unter", "uber")
"""Beginnings of what says that somebody stands above or below another, and so not at her side."""

BEFORE_WHOM = frozenset(
    "behind|standing behind|in front|sitting in front|hinter|vor|derriere|devant|detras de|detras|delante de|delante|dietro|dietro a|davanti a|davanti|atras de|"
    "atras|a frente de|a frente|em frente de|achter|voor|bag|bagved|foran|bak|bakom|framfor|за".split("|")
)
"""Rows by a word behind which whom somebody stands behind or before is told: `behind Nora`."""

WORN_OR_HELD = frozenset(
    "hut mutze stock regenschirm korb fahrrad pferd hund katze pfeife puppe ball hat cap pipe umbrella bicycle".split()
)
"""Things that somebody is told with, also written large in German: `Fritz mit Hut`."""

OF_ANOTHER = frozenset(
    "his her their sein seine ihr ihre son sa leur su suo sua seu zijn haar hans hennes hendes jego jej jeho jeji его ee".split()
)
"""Words that say that kin is of somebody told before: of the first one told, `her mother` is no remark."""

BEHIND_ME = frozenset(
    "als comme como da de jako kao kui kuin vauvana nuorena pienena beebina lapsena mint que som als kak как w na z v i en no".split()
)
"""Small words with which it goes on how the teller looked, or where she was: `yo de pequeña`, `ich als Kind`."""

KIN_BEFORE_A_PLACE = frozenset(
    "ema isa vanaema vanaisa emme memm taat onu tadi vend ode aiti isoaiti isoisa mummo mummi ukki vaari eno seta tati "
    "sisko veli".split()
)
"""Estonian and Finnish words of kin, behind which a place may be told."""

BESIDE_SEVERAL = WITH | frozenset(
    "between among amongst amid behind beside zwischen unter entre parmi tra fra tussen mellem mellom mellan между среди "
    "miedzy wsrod starp tarp mezi".split()
)
"""Words behind which those are told whom somebody is beside: `between her parents`."""

SAYING = frozenset(
    "wrote writes says said thinks thought reckons reckoned believes believed told claims claimed noted remembers recalls "
    "schrieb sagt sagte meint meinte glaubt notierte kirjutas utles utleb arvab arvas ecrit dit pense disait croit dice "
    "dijo escribio cree scrisse disse crede diz escreveu acha zegt zei schreef denkt siger sagde skrev tror sier sa sager "
    "sanoi kirjoitti luulee говорит сказала сказал написала написал думает считает mowi napisal napisala mysli rika napsal "
    "napsala mondta irta azt".split()
)
"""Verbs of whoever says who is in the picture, and need not be in it: `Ethel wrote that this is Harold`."""

LEAD_TO_WHAT_IS_SAID = ("that", "it", "this", "dass", "et", "que", "che", "dat", "at", "att", "что", "ze", "hogy")

CALLING = frozenset(
    "called call calls named known nicknamed nannten nannte genannt hiess heisst rufen riefen bekannt kutsusime kutsuti "
    "kutsutud huuti tuntud appelait appelions appelaient appelle dit dite surnomme surnommee connu connue llamabamos "
    "llamaban llamado llamada conocida conocido deciamos chiamavamo chiamavano chiamato chiamata detta detto conosciuta "
    "chamavamos chamava chamada chamado conhecida noemden noemde genoemd genaamd bekend kaldte kaldet kendt kalte kalt "
    "kjent kallade kallad kallades kand kutsuttiin kutsuimme kutsuttu sanottiin звали называли прозвали известная "
    "nazywalismy zwana zwany znana rikali rikalo zvana zvany saucam sauca saukta vadinome vadino vadinama hivtuk hivtak".split()
)
"""Verbs behind which it is told what somebody was called: `whom we called Dolly`."""

SAID_BY = frozenset(
    "according laut d'apres selon segun secondo segundo volgens ifolge enligt mukaan по wedlug podle szerint".split()
)
"""Words before whoever says so: `according to Ethel`."""

TIMES_OF_THE_YEAR = frozenset(
    "january february march april may june july august september october november december spring summer autumn winter easter "
    "christmas dawn sunday monday mai juni juli juin juillet mayo junio abril avril maio juuni juuli noel natal pascua heather "
    "harbour sunset".split()
)
"""Words that are names of people too, but that alone before a remark tell a time: `May in Leith`."""

HELD_ON = frozenset(
    "skirt apron hand hands neck side head lap knee knees arm arms shoulder shoulders hip back schoss arme armen knie knien schultern rucken sules polvel polvedel "
    "kaenlas olgadel kukil genoux bras epaules dos rodillas regazo brazos hombros braccio ginocchia spalle colo joelhos bracos "
    "ombros schoot knieen schouders skodet fanget knaet kneet armene knat famnen axlarna sylissa polvella olkapailla "
    "harteilla kolanach rekach barana ramionach руках коленях плечах kline naruci ramenou klepi rokas pleciem keliu rankose "
    "peciu".split()
)
"""Parts of the body on or by which somebody is held: `Tom on her knee`."""

OF_THINGS = frozenset("dem der den einem einer".split())
"""German articles behind `mit`."""

OF_ONE = frozenset(
    "sits stands kneels lies sitzt steht kniet liegt istub seisab polvitab lamab istuu seisoo makaa zit staat "
    "сидит стоит лежит siedzi stoi kleczy lezy".split()
)
"""Postures that are told of one person alone."""

BESIDE_BEHIND = frozenset("mellett korval vieressa vierella".split())
"""Words that stand behind whom somebody is beside of: `Juhani kõrval`, beside Juhan."""

POSTPOSITIONS = frozenset("taga ees takana edessa prieksa".split())
"""Estonian, Finnish and Latvian rows that may stand behind a name in the genitive: `Meeta taga`, behind Meeta."""

GERMAN_ARTICLES = frozenset("der die das den dem des ein eine einem einer einen unserem unserer ihrem ihrer".split())
"""Articles and the like behind which a noun stands written large."""

BEFORE_EXACTLY = {
    "és": "and",
    "Ül": "seated",
    "ül": "seated",
    "Áll": "standing",
    "áll": "standing",
    "én": "me",
    "są": "verb",
    "så": "verb",
    "Så": "verb",
    "já": "me",
    "är": "verb",
    "è": "verb",
    "é": "verb",
    "È": "verb",
    "É": "verb",
    "I": "me",
    "Zé": "word",
}
"""Words whose accent makes them another word than the folded one: as told -> the class."""

THE_OTHER_WAY = frozenset(
    "reversed umgekehrt andersherum umberpoordult vastupidi inversement omgekeerd omvendt omvant tvartom painvastoin "
    "наоборот odwrotnie otradi atvirksciai naopak andersom opacne".split()
).union(TURNED.split("|"))
"""Words that turn the order of a row round."""

DEDICATED = frozenset("to for an fur a para per pour aan voor til till dla для".split())
"""Words with which a dedication begins: `To Doreen with love from Joyce`."""

WITH_LOVE = frozenset("from love von de da van fra fran от od liebe amour carino affetto liefs".split())
"""Words of a dedication behind whom it is to."""

BESIDE_THINGS = (
    "behind",
    "in front",
    "dahinter",
    "davor",
    "derriere",
    "devant",
    "detras",
    "delante",
    "dietro",
    "davanti",
)
"""Places of a thing that somebody is beside: `Joyce with a poster of Garbo behind`."""

GONE = frozenset("missing gone lost fehlt puudub manque falta manca ontbreekt mangler saknas puuttuu".split())
"""Words behind a row that is not there: `Front row torn off.`"""

MAORI_MY = ("taku", "toku", "tana", "tona")
"""`my`, `his` and `her` in Māori, of one of the kin."""
