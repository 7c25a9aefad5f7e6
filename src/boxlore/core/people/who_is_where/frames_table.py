"""The small words in which it is told how sure somebody is of a name: `I think that it is`, `we always said it was`.

Folded (`core.statements.fold`), of every language together, in the forms in which a family tells. From memory; no
source.
"""

THINKING = frozenset(
    "think thinks believe guess suppose reckon fancy presume suspect assume imagine gather "
    "glaub glaube glauben denke denken vermute schatze konnte konnten musste durfte mochte nehme wohl "
    "arvan arvame usun pakun peaks voiks pidi "
    "crois croit croyons pense pensons suppose dirait doit semble devrait pourrait "
    "creo creemos pienso supongo diria parece debe puede podria "
    "credo crediamo penso pensiamo suppongo direi sembra pare dovrebbe potrebbe deve "
    "acho achamos creio suponho diria deve pode podia "
    "denk denken geloof vermoed gok lijkt moet zou "
    "tror synes mener formoder gjetter "
    "gissar tycker maste borde "
    "luulen luulemme arvelen uskon veikkaan taitaa saattaa "
    "думаю думаем полагаю считаю кажется похоже может должно "
    "mysle myslimy sadze wydaje zdaje "
    "myslim myslime tusim zda mohl mohla mohlo muze "
    "domaju skiet liekas varetu "
    "manau rodos atrodo spejame galetu "
    "hiszem gondolom lehet lehetne".split()
)
"""Verbs of whoever is not sure, and those that say that something may be."""

PERHAPS = frozenset(
    "maybe perhaps possibly probably likely presumably seemingly apparently "
    "vielleicht wahrscheinlich vermutlich moglicherweise eventuell womoglich anscheinend scheinbar "
    "vist ehk vahest akki voib-olla voibolla ilmselt arvatavasti toenaoliselt kullap nahtavasti "
    "peut-etre probablement possiblement apparemment "
    "quiza quizas tal vez acaso posiblemente probablemente seguramente "
    "forse magari probabilmente possibilmente "
    "talvez provavelmente possivelmente porventura "
    "misschien wellicht waarschijnlijk vermoedelijk mogelijk "
    "maske kanskje muligens muligvis formodentlig sannsynligvis trolig vistnok antakelig antageligvis "
    "kanske mojligen troligen antagligen formodligen "
    "ehka kai varmaan kenties mahdollisesti luultavasti todennakoisesti "
    "наверное наверно возможно видимо вероятно вроде по-моему пожалуи "
    "chyba moze mozliwe prawdopodobnie podobno "
    "mozna asi snad nejspis pravdepodobne zrejme "
    "varbut laikam iespejams droši drosi "
    "galbut gal turbut tikriausiai greiciausiai "
    "talan szerintem valoszinuleg esetleg liklega kannski sennilega".split()
)
"""Words for `perhaps`."""

SAID = frozenset(
    "said say says told tell thought labelled labeled marked written supposed supposedly allegedly meant reads called "
    "believed assumed used always "
    "sagten sagte sagen sagt dachten dachte glaubten hiess immer angeblich "
    "arvasime arvasin arvati oeldi oeldakse utlesid raagitakse arvavad vaidetavalt alati "
    "disait dit disent pensait croyait croyaient pensais croyais toujours soi-disant "
    "deciamos decian dicen dice pensabamos creiamos pensaba creia siempre "
    "dicono diceva dicevano dicevamo pensavamo credevamo pensavo credevo sempre "
    "diziamos diziam dizem pensavamos achavamos pensava achava sempre "
    "zegt zeggen zeiden zei dachten dacht altijd "
    "siger sagde troede altid sier sa trodde alltid sager sade "
    "sanovat sanoivat sanottiin luulimme luultiin luulin aina "
    "говорят говорили сказали думали думала думал считали всегда "
    "mowia mowili mowilismy mysleli myslelismy zawsze "
    "rikaji rikali mysleli mysleli jsme vzdycky "
    "saka teica domajam vienmer sako sake manome visada mondtak mondjak hittuk gondoltuk mindig".split()
)
"""Words of what was said or thought before: somebody named with them need not be who is seen."""

THOUGHT_ONCE = frozenset(
    "thought believed assumed used always dachten dachte glaubten arvasime arvasin pensait croyait pensais croyais "
    "pensabamos creiamos pensaba creia pensavamo credevamo pensavo credevo pensavamos achavamos pensava achava "
    "dachten dacht troede trodde luulimme luultiin luulin думали думала думал mysleli myslelismy domajam manome "
    "hittuk gondoltuk".split()
)
"""Those of them that say that it is no longer thought."""

REALLY = frozenset(
    "actually really truly fact wrong mistake mistaken turned out rather "
    "eigentlich wirklich tatsachlich wirklichkeit falsch hoopis tegelikult tegelikkuses vale "
    "fait vraiment realite realidad verdad realmente equivocado realta veramente invece sbagliato verdade errado "
    "eigenlijk werkelijkheid feite fout egentlig faktisk virkeligheden egentligen verkligheten fel feil forkert "
    "oikeasti oikeastaan todellisuudessa vaarin деле самом ошибка naprawde rzeczywistosci pomylka skutecnosti vlastne "
    "omyl patiesiba patiesam tikruju valojaban".split()
)
"""Words that say that it is so, and not as was thought."""

LEAD = frozenset(
    "i we it this that one's that's these he she they is was are were be been being to of in out at on by now the all own know say swear "
    "for well just very much a "
    "ich wir es das dass dies er sie ist war sei sein der die in an mir "
    "ma mina me see et on oli olla seda minu "
    "je nous on ce c c'est que qu que c'etait cela ca est etait soit serait en etre bien il elle "
    "yo que es era sea ser fue eso esto me en la a lo mejor debe "
    "io che e era sia fosse essere lei lui in si "
    "eu que e era seja fosse ser na ela ele isso se "
    "ik dat het dit is was zijn zou wezen in volgens mij wel "
    "jeg vi at det dette den er var vaere i virkeligheten pa "
    "jag att det ar vara nok i "
    "mina etta se han on oli olla olisi minusta "
    "я мы что это он она бы быть был была на мне "
    "ja ze to jest byl byla byc sie mi w "
    "ze to je byl byla byt se ve ja mi "
    "es ka tas ta ir bija tai kad yra buvo buti as man jau is isa "
    "en hogy ez az o volt van a".split()
)
"""Small words that stand among these and say nothing more."""

BE_AT_THE_END = frozenset("sein gewesen is zijn was be olla volt olevat".split())
"""`is` where it stands behind the name: `das könnte Karl sein`, `ik denk dat het Truus is`."""
