"""The words for who stands where, by language: rows, sides, directions, ordinals, and the small words between names.

A row: the language, the class, and its phrases parted by bars, folded (`core.statements.fold`), without points. A star
ends a word whose ending changes with gender and case (`druh*`). Common practice of captions, from memory; no source.

Classes: `front back middle seated standing kneeling lying` name a row (the top of a picture is its back row); `row` is
the word before or behind an ordinal; `ltr rtl clockwise counterclockwise` are directions; `left right centre` sides;
`from_left from_right` stand behind an ordinal; `ordinals` count from one; `weak` are rows and sides that are also plain
words, and count only before a colon or a direction.
"""

from boxlore.core.statements import fold

_ROWS = """
en | front | bott|btm|bott row|up front|front row|bottom row|in front|in the front|in the front row|at the front|at front|front|bottom|foreground|in the foreground|sitting in front|lower row|fore|lower|in the fore|nearest the camera|first row
en | back | in back|back row|rear row|last row|top row|at the back|at back|at rear|at the rear|in the back|in the back row|behind|back|top|rear|in the background|background|standing behind|behind them|behind them stands|behind them stand|standing behind them|standing behind her|standing behind him|upper row|upper|furthest back|rearmost|hindmost row
en | middle | mid row|mid|middle row|centre row|center row|in the middle row|middle
en | seated | seated|sitting|seated row|sitting row|those seated
en | standing | standing|standing row|those standing
en | kneeling | kneeling|kneeling row|crouching|squatting
en | lying | lying|lying down|reclining
en | row | row
en | ltr | from l to r|from l to rt|reading from the left|lft to rt|lft to rgt|lt to rt|lft-rt|l to rt|from lft|fr left|from l|left to right|from left to right|from the left to the right|l to r|l r|from left|from the left|l-r|ltr|reading from left|reading left to right|(l to r)|then going right|going right|then working right|then right from there|starting left|starting on the left|starting from left|starting from the left|starting at the left
en | rtl | rt to lft|rt to lt|r to lft|from rt|right to left|from right to left|r to l|r-l|then going left|going left|then moving left|then working left|working left|from right|from the right|reading from right|reading from the right|from r to l|starting right|starting on the right|starting from right|starting from the right|starting at the right
en | clockwise | clockwise|going clockwise
en | counterclockwise | counterclockwise|anticlockwise|counter-clockwise|anti-clockwise|counter clockwise|anti clockwise
en | left | left half|the left half|lft|far lft|leftmost|left|on the left|at left|at the left|far left|on the far left|to the left|extreme left|extreme l|far l|left side|on the left side|at far left|l|left hand side|on the left hand side|left-hand side|on the left-hand side|on left
en | right | right half|the right half|rgt|rt|far rt|far rgt|rightmost|right|on the right|at right|at the right|far right|on the far right|to the right|extreme right|extreme r|far r|right side|on the right side|at far right|r|right hand side|on the right hand side|right-hand side|on the right-hand side|on right
en | centre | in between|between the two of them|between the two|centre|center|in the centre|in the center|in the middle|between them|at centre|at center
en | from_left | from lft|fr left|frm left|on left|from left|from the left|from l|in from the left|on the left|from left to right
en | from_right | from rt|from rgt|fr right|frm right|on right|from right|from the right|from r|in from the right|on the right
en | ordinals | first second third fourth fifth sixth seventh eighth ninth tenth
en | weak | rt|mid|bott|btm|front|back|behind|middle|rear|right|bottom|top|l|r|background|foreground|standing|sitting|lying|fore|lower|upper
de | front | im vordergrund|vor|vordere reihe|vorderste reihe|vorne|vorn|untere reihe|in der vorderen reihe|unten|vordere|unterste reihe|zuvorderst|davor|ganz vorne|erste reihe
de | back | im hintergrund|hinter|hintere reihe|hinterste reihe|letzte reihe|obere reihe|hinten|in der hinteren reihe|oben|dahinter|hintere|oberste reihe|ganz hinten
de | middle | mittlere reihe|in der mittleren reihe
de | seated | sitzend|sitzende|es sitzen|sitzend sind|die sitzenden
de | standing | stehend|stehende|es stehen|stehend sind|die stehenden
de | kneeling | kniet|knien|hockt|hocken|kniend|kniende|hockend
de | lying | liegend|liegt|liegen
de | row | reihe
de | ltr | dann nach rechts|weiter nach rechts|nach rechts weiter|von links nach rechts|v l n r|v l|von links|links nach rechts|vlnr|von l nach r
de | rtl | dann nach links|weiter nach links|nach links weiter|von rechts nach links|v r n l|von rechts|rechts nach links|v r
de | clockwise | im uhrzeigersinn
de | counterclockwise | im gegenuhrzeigersinn|gegen den uhrzeigersinn|entgegen dem uhrzeigersinn
de | left | links|ganz links|links aussen|auf der linken seite|am linken rand
de | right | rechts|ganz rechts|rechts aussen|auf der rechten seite|am rechten rand
de | centre | mitte|in der mitte|mittig|dazwischen
de | from_left | von links|v l
de | from_right | von rechts|v r
de | ordinals | erst* zweit* dritt* viert* funft* sechst* siebt* acht* neunt* zehnt*
de | weak | mitte|hinter|vor
et | front | alumine|eesmine|tema ees|ta ees|nende ees|minu ees|esiplaanil|esireas|esimeses reas|eesreas|ees|alumine rida|alumises reas|all|esirida|eesmine rida|ees istuvad
et | back | ulemine|tagumine|tema taga|ta taga|nende taga|minu taga|tagaplaanil|tagareas|tagumises reas|viimases reas|taga|tagumine rida|ulemine rida|ulemises reas|tagarida|ulal|taga seisavad
et | middle | keskmises reas|keskmine rida
et | seated | istuvad|istub|istujad|istumas
et | standing | seisavad|seisab|seisjad|pusti|seismas|puusti
et | kneeling | polvitavad|polvili|polvitab|kukitavad
et | lying | lamavad|pikali|lamab
et | row | rida|reas|real
et | ltr | v-lt p-le|v-lt|v p|siis paremale|edasi paremale|siis paremale poole|vasakult paremale|vasakult|vasakult alates|vasakult lugedes
et | rtl | siis vasakule|edasi vasakule|ja vasakule|siis vasakule poole|paremalt vasakule|paremalt|paremalt lugedes
et | clockwise | paripaeva|kellaosuti suunas
et | counterclockwise | vastupaeva
et | left | vasakul aares|vasakus servas|vasakul serval|vasakul pool|vasakut katt|vasakul|koige vasakul|vasemal
et | right | paremal aares|paremas servas|paremal serval|paremal pool|paremat katt|paremal|koige paremal
et | centre | keskmine|keskel|vahel|nende vahel
et | from_left | vasakult
et | from_right | paremalt
et | ordinals | esime* tei* kolma* nelja* viie* kuue* seitsme* kaheksa* uheksa* kumne*
et | weak | all|vahel|alumine|eesmine|ulemine|tagumine
fr | front | premier rang|au premier rang|devant|rang du bas|en bas|1er rang|rang de devant|au premier plan|en avant|rangee du bas|rangee de devant|premiere rangee
fr | back | a l'arriere-plan|au second plan|dernier rang|au dernier rang|derriere|rang du haut|en haut|au fond|rang de derriere|rang arriere|en arriere|rangee du haut|rangee de derriere|derniere rangee
fr | middle | rang du milieu|au rang du milieu|rang central
fr | seated | assis|assises|assise|sont assis
fr | standing | debout|sont debout
fr | kneeling | a genoux|accroupi*|agenouille*
fr | lying | couche|couches|allonges|allonge
fr | row | rang|rangee
fr | ltr | puis vers la droite|ensuite vers la droite|en allant vers la droite|de gauche a droite|de g a d|g a d|a partir de la gauche|de la gauche vers la droite|en partant de la gauche|de g a dr|g a dr|de gauche
fr | rtl | de dr a g|dr a g|de dte a g|d a g|puis vers la gauche|ensuite vers la gauche|en allant vers la gauche|de droite a gauche|de d a g|a partir de la droite|en partant de la droite
fr | clockwise | dans le sens des aiguilles d'une montre|dans le sens des aiguilles|sens horaire|dans le sens horaire
fr | counterclockwise | dans le sens inverse des aiguilles d'une montre|dans le sens contraire des aiguilles d'une montre|dans le sens antihoraire|sens antihoraire
fr | left | a gauche|tout a gauche|a l'extreme gauche|gauche|a sa gauche|a g
fr | right | a droite|tout a droite|a l'extreme droite|droite|a sa droite|a d|a dr
fr | centre | entre les deux|au milieu|au centre|milieu|centre|entre eux|au c
fr | from_left | a partir de la gauche|en partant de la gauche|depuis la gauche|de gauche
fr | from_right | a partir de la droite|en partant de la droite|depuis la droite
fr | ordinals | premi* deuxieme troisieme quatrieme cinquieme sixieme septieme huitieme neuvieme dixieme
fr | weak | centre|milieu
es | front | hilera de abajo|hilera de delante|delante de|primera fila|fila de delante|la fila de delante|en primera fila|delante|fila de abajo|abajo|fila delantera|en la primera fila|en primer plano
es | back | hilera de arriba|hilera de atras|al fondo|en el fondo|detras de|ultima fila|fila de atras|detras|atras|fila de arriba|arriba|fila trasera|en la ultima fila
es | middle | fila del medio|fila central|en la fila del medio
es | seated | sentad*|los sentados|estan sentados
es | standing | de pie|parad*|estan de pie
es | kneeling | de rodillas|agachad*|arrodillad*|en cuclillas
es | lying | tumbad*|acostad*
es | row | fila|hilera
es | ltr | luego hacia la derecha|despues hacia la derecha|y hacia la derecha|de izquierda a derecha|de izq a der|de izq a dcha|de izda a dcha|izq a dcha|izda a dcha|izquierda a derecha|desde la izquierda|empezando por la izquierda
es | rtl | luego hacia la izquierda|despues hacia la izquierda|y hacia la izquierda|de derecha a izquierda|desde la derecha|empezando por la derecha|de der a izq
es | clockwise | en el sentido de las agujas del reloj|en sentido horario
es | counterclockwise | en sentido antihorario|en sentido contrario a las agujas del reloj
es | left | a la izquierda del todo|a la izquierda|izquierda|en el extremo izquierdo|a su izquierda|a la izda|a la izq|de la izquierda|izq|izda
es | right | a la derecha del todo|a la derecha|derecha|en el extremo derecho|a su derecha|a la dcha|a la der|de la derecha|dcha
es | centre | en el centro|en medio|centro|al centro|del centro|de en medio|del medio
es | from_left | por la izquierda|desde la izquierda|de izquierda a derecha|empezando por la izquierda|de la izquierda
es | from_right | por la derecha|desde la derecha|empezando por la derecha
es | ordinals | primer* segund* tercer* cuart* quint* sext* septim* octav* noven* decim*
es | weak | centro|parad*
it | front | davanti a|prima fila|in prima fila|davanti|fila in basso|in basso|fila davanti|in primo piano|sotto|fila inferiore
it | back | sullo sfondo|dietro a|ultima fila|in ultima fila|dietro|fila in alto|in alto|fila dietro|in seconda fila in alto|sopra|fila superiore
it | middle | fila centrale|fila di mezzo|nella fila centrale
it | seated | sedut*|i seduti
it | standing | in piedi
it | kneeling | in ginocchio|inginocchiat*|accovacciat*|accosciat*
it | lying | sdraiat*
it | row | fila
it | ltr | poi verso destra|andando verso destra|e verso destra|da sinistra a destra|da sinistra|da sin a dx|da sx a dx|da sinistra verso destra
it | rtl | poi verso sinistra|andando verso sinistra|e verso sinistra|da destra a sinistra|da destra|da dx a sx
it | clockwise | in senso orario
it | counterclockwise | in senso antiorario
it | left | a sinistra|sinistra|all'estrema sinistra|sulla sinistra|a sin|a sx
it | right | a destra|destra|all'estrema destra|sulla destra|a dx
it | centre | al centro|in mezzo|nel mezzo|centro
it | from_left | da sinistra|a partire da sinistra
it | from_right | da destra|a partire da destra
it | ordinals | prim* second* terz* quart* quint* sest* settim* ottav* nono decim*
it | weak | centro
pt | front | a frente de|em frente de|primeira fila|na primeira fila|a frente|fila de baixo|em baixo|fila da frente|na fila da frente|em primeiro plano|abaixo|da frente
pt | back | atras de|ultima fila|na ultima fila|atras|fila de cima|em cima|fila de tras|na fila de tras|ao fundo|de tras
pt | middle | fila do meio|na fila do meio|fila central
pt | seated | sentad*
pt | standing | de pe|em pe
pt | kneeling | de joelhos|ajoelhad*|agachad*
pt | lying | deitad*
pt | row | fila|fileira
pt | ltr | depois para a direita|e para a direita|da esquerda para a direita|da esq para dir|esq para a dir|da e para a d|da esq|da esq para a dir|a partir da esquerda|da esquerda
pt | rtl | depois para a esquerda|e para a esquerda|da direita para a esquerda|a partir da direita|da direita
pt | clockwise | no sentido dos ponteiros do relogio|no sentido horario
pt | counterclockwise | no sentido anti-horario
pt | left | a esquerda|esquerda|na extrema esquerda|do lado esquerdo|da esquerda|a esq
pt | right | a direita|direita|na extrema direita|do lado direito|a dir
pt | centre | ao centro|no meio|ao meio|no centro|do meio|do centro
pt | from_left | a contar da esquerda|a partir da esquerda|da esquerda
pt | from_right | a contar da direita|a partir da direita|da direita
pt | ordinals | primeir* segund* terceir* quart* quint* sext* setim* oitav* nono decim*
pt | weak | direita|do meio
nl | front | voorste rij|eerste rij|vooraan|onderste rij|beneden|op de voorste rij|op de voorgrond|voor|onder|onderaan|daarvoor
nl | back | op de achtergrond|achterste rij|laatste rij|achteraan|bovenste rij|boven|achter|op de achterste rij|daarachter|bovenaan|erachter
nl | middle | middelste rij|op de middelste rij
nl | seated | zittend|zittende|zitten
nl | standing | staand|staande|staan|staand zijn
nl | kneeling | knielend|geknield|gehurkt
nl | lying | liggend
nl | row | rij
nl | ltr | van links af|dan naar rechts|daarna naar rechts|verder naar rechts|van links naar rechts|v l n r|vlnr|links naar rechts|vanaf links
nl | rtl | van rechts af|dan naar links|daarna naar links|verder naar links|van rechts naar links|v r n l|vrnl|vanaf rechts
nl | clockwise | met de klok mee|met de wijzers van de klok mee
nl | counterclockwise | tegen de klok in
nl | left | links|uiterst links|helemaal links|aan de linkerkant
nl | right | rechts|uiterst rechts|helemaal rechts|aan de rechterkant
nl | centre | ertussen|in het midden|midden|daartussen
nl | from_left | van links
nl | from_right | van rechts
nl | ordinals | eerste tweede derde vierde vijfde zesde zevende achtste negende tiende
nl | weak | voor|achter|boven|midden|onder
da | front | forreste raekke|foran|nederste raekke|i forreste raekke|forrest|forgrunden|nederst|1 raekke|i forgrunden
da | back | bagerst|bagerste raekke|bagest|bagved|overste raekke|i bagerste raekke|bag|bageste raekke|overst|i baggrunden
da | middle | midterste raekke|i midterste raekke
da | seated | siddende|sidder
da | standing | staende|star|stående
da | kneeling | knaelende|pa knae|på knae
da | lying | liggende
da | row | raekke
da | ltr | fra v|sa mod hojre|derefter mod hojre|videre mod hojre|fra venstre mod hojre|fra venstre|fra v mod h|fra venstre til hojre|f v
da | rtl | fra h|sa mod venstre|derefter mod venstre|videre mod venstre|fra hojre mod venstre|fra hojre|fra hojre til venstre
da | clockwise | med uret
da | counterclockwise | mod uret
da | left | til venstre|yderst til venstre|laengst til venstre|venstre|t v
da | right | til hojre|yderst til hojre|laengst til hojre|hojre|t h
da | centre | i midten|midten|imellem|midt i
da | from_left | fra venstre
da | from_right | fra hojre
da | ordinals | forste anden tredje fjerde femte sjette syvende ottende niende tiende
da | weak | bag|star
nb | front | fremste rad|foran|nederste rad|i fremste rad|fremst|forste rad|nederst|i forgrunnen
nb | back | bakerste rad|bakerst|overste rad|i bakerste rad|bak|bakre rad|overst|bakom|i bakgrunnen
nb | middle | midterste rad|i midterste rad|midtre rad
nb | seated | sittende|sitter
nb | standing | staende|stående
nb | kneeling | knelende|pa kne|på kne
nb | lying | liggende
nb | row | rad|rekke
nb | ltr | sa mot hoyre|deretter mot hoyre|videre mot hoyre|fra venstre mot hoyre|fra venstre|fra venstre til hoyre
nb | rtl | sa mot venstre|deretter mot venstre|videre mot venstre|fra hoyre mot venstre|fra hoyre|fra hoyre til venstre
nb | clockwise | med klokken|med klokka
nb | counterclockwise | mot klokken
nb | left | til venstre|lengst til venstre|ytterst til venstre|t v|helt til venstre
nb | right | til hoyre|lengst til hoyre|ytterst til hoyre|t h|helt til hoyre
nb | centre | i midten|midten|mellom dem|midt i
nb | from_left | fra venstre
nb | from_right | fra hoyre
nb | ordinals | forste andre tredje fjerde femte sjette sjuende attende niende tiende
nb | weak | bak
sv | front | framsta raden|framre raden|langst fram|nedre raden|i framre raden|fram|framtill|forsta raden|framfor|nederst|underst|i forgrunden|langst ned|nere|nertill
sv | back | bakre raden|bakersta raden|langst bak|ovre raden|i bakre raden|bak|bakom|baktill|overst|langst upp|i bakgrunden|uppe|upptill
sv | middle | mellersta raden|i mellersta raden|mittersta raden
sv | seated | sittande|sitter|sittande ar
sv | standing | staende|star|stående
sv | kneeling | knaboj*|pa kna|på kna|knastaende
sv | lying | liggande
sv | row | raden|rad
sv | ltr | fran v|sedan at hoger|darefter at hoger|vidare at hoger|fran vanster till hoger|fran vanster|fr v|fr v t h|f v|vanster till hoger|fr vanster
sv | rtl | fran h|sedan at vanster|darefter at vanster|vidare at vanster|fran hoger till vanster|fran hoger|fr h
sv | clockwise | medurs|medsols
sv | counterclockwise | moturs|motsols
sv | left | till vanster|langst till vanster|ytterst till vanster|vanster|t v|tv
sv | right | till hoger|langst till hoger|ytterst till hoger|hoger|t h|th
sv | centre | i mitten|mellan dem|mitten
sv | from_left | fran vanster|fr v
sv | from_right | fran hoger|fr h
sv | ordinals | forsta andra tredje fjarde femte sjatte sjunde attonde nionde tionde
sv | ordinals | etta tvaa trea fyra femma sexa sjua atta nia tia
sv | weak | bak|star|fram
fi | front | eturivissa|eturivi|edessa|alarivissa|alarivi|ensimmaisessa rivissa|ensimmainen rivi|alhaalla|edessaan|etualalla
fi | back | taustalla|takarivissa|takarivi|takana|ylarivissa|ylarivi|viimeisessa rivissa|ylhaalla|taaimmaisena
fi | middle | keskirivissa|keskirivi|keskimmaisessa rivissa
fi | seated | istuvat|istumassa|istuu|istuvat vasemmalta
fi | standing | seisovat|seisomassa|seisoo|seisovat takana
fi | kneeling | polvillaan|polvistuneet|kyykyssa|kyykylla
fi | lying | makaavat|makuulla|makaa
fi | row | rivi|rivissa|rivilla
fi | ltr | sitten oikealle|siita oikealle|vasemmalta oikealle|vasemmalta|vasemmalta lukien|vas
fi | rtl | sitten vasemmalle|siita vasemmalle|oikealta vasemmalle|oikealta
fi | clockwise | myotapaivaan
fi | counterclockwise | vastapaivaan
fi | left | vasemmalla|aarimmaisena vasemmalla|vasemmassa reunassa|vas
fi | right | oikealla|aarimmaisena oikealla|oikeassa reunassa|oik
fi | centre | keskella|valissa|kesk|keskimmaisena
fi | from_left | vasemmalta
fi | from_right | oikealta
fi | ordinals | ensimmai* toi* kolma* neljas viides kuudes seitsemas kahdeksas yhdeksas kymmenes
fi | weak | keskella
ru | front | перед неи|перед ним|перед ними|первый ряд|в первом ряду|передний ряд|в переднем ряду|впереди|спереди|нижний ряд|в нижнем ряду|внизу|на переднем плане
ru | back | за неи|за ним|за ними|за нами|последний ряд|в последнем ряду|задний ряд|в заднем ряду|сзади|позади|верхний ряд|в верхнем ряду|вверху|наверху|на заднем плане
ru | middle | средний ряд|в среднем ряду
ru | seated | сидят|сидит|сидящие|сидя
ru | standing | стоят|стоит|стоящие|стоя
ru | kneeling | на коленях|на корточках
ru | lying | лежат|лежит|лежа
ru | row | ряд|ряду
ru | ltr | далее вправо|затем вправо|дальше вправо|потом вправо|далее направо|дальше направо|от левого к правому|слева на право|слева направо|слева
ru | rtl | далее влево|затем влево|дальше влево|потом влево|далее налево|дальше налево|справа налево
ru | clockwise | по часовои стрелке
ru | counterclockwise | против часовои стрелки
ru | left | слева|краинии слева|краиняя слева|налево
ru | right | справа|краинии справа|краиняя справа
ru | centre | в центре|посередине|в середине|между ними
ru | from_left | слева
ru | from_right | справа
ru | ordinals | перв* втор* трет* четверт* пят* шест* седьм* восьм* девят* десят*
ru | weak | вверху
pl | front | przed nim|przed nia|przed nimi|pierwszy rzad|w pierwszym rzedzie|przedni rzad|z przodu|dolny rzad|w dolnym rzedzie|na dole|u dolu|na pierwszym planie
pl | back | w tle|za nim|za nia|za nimi|ostatni rzad|w ostatnim rzedzie|tylny rzad|z tylu|gorny rzad|w gornym rzedzie|u gory|na gorze|w tylnym rzedzie
pl | middle | srodkowy rzad|w srodkowym rzedzie
pl | seated | siedza|siedzi|siedzacy|siedzace|siedzaca
pl | standing | stoja|stoi|stojacy|stojace|stojaca
pl | kneeling | klecza|kleczy|kleczacy|kucaja
pl | lying | leza|lezy|lezacy
pl | row | rzad|rzedzie
pl | ltr | dalej w prawo|potem w prawo|nastepnie w prawo|od lewej do prawej|od lewej|od lewej strony|od lewej ku prawej
pl | rtl | dalej w lewo|potem w lewo|nastepnie w lewo|od prawej do lewej|od prawej|od prawej strony
pl | clockwise | zgodnie z ruchem wskazowek zegara
pl | counterclockwise | przeciwnie do ruchu wskazowek zegara
pl | left | po lewej|z lewej|po lewej stronie|skrajnie po lewej|na lewo
pl | right | po prawej|z prawej|po prawej stronie|na prawo
pl | centre | w srodku|srodek|posrodku|na srodku|miedzy nimi
pl | from_left | od lewej|z lewej
pl | from_right | od prawej|z prawej
pl | ordinals | pierwsz* drug* trzeci* czwart* piat* szost* siodm* osm* dziewiat* dziesiat*
pl | weak | na dole
lv | front | pirmaja rinda|pirma rinda|prieksa|apakseja rinda|apaksa|prieksejā rinda|prieksplana|1 rinda
lv | back | aiz vinas|aiz vina|aiz viniem|aiz vinam|aiz manis|pedeja rinda|aizmugure|augseja rinda|augsa|aizmugureja rinda|otraja plana
lv | middle | videja rinda
lv | seated | sez|sedosie|sedosi|sedi
lv | standing | stav|stavosie|stavosi
lv | kneeling | uz celiem|tup
lv | lying | gul
lv | row | rinda
lv | ltr | talak pa labi|tad pa labi|talak uz labo pusi|no kreisas uz labo|no kreisas|no kreisas puses|no kreisas uz labo pusi
lv | rtl | talak pa kreisi|tad pa kreisi|talak uz kreiso pusi|no labas uz kreiso|no labas|no labas puses
lv | clockwise | pulkstenraditaja virziena
lv | counterclockwise | pretēji pulkstenraditaja virzienam|preteji pulkstenraditaja virzienam
lv | left | pa kreisi|kreisaja puse|kreisaja mala
lv | right | pa labi|labaja puse|labaja mala
lv | centre | vidu|centra|pa vidu
lv | from_left | no kreisas|no kreisas puses
lv | from_right | no labas|no labas puses
lv | ordinals | pirm* otr* tres* ceturt* piekt* sest* septit* astot* devit* desmit*
lv | weak | vidu|gul
lt | front | pirmoje eileje|pirma eile|priekyje|apatineje eileje|apacioje|priekineje eileje|apatine eile
lt | back | uz jos|uz jo|uz ju|uz manes|paskutineje eileje|gale|virsutineje eileje|virsuje|galineje eileje|galine eile|virsutine eile
lt | middle | vidurineje eileje|vidurine eile
lt | seated | sedi|sedintys|sedincios
lt | standing | stovi|stovintys|stovincios
lt | kneeling | klupi|tupi|atsiklaupe|priklaupe
lt | lying | guli
lt | row | eile|eileje
lt | ltr | toliau i desine|tada i desine|is kaires i desine|is kaires|nuo kaires|is kaires puses
lt | rtl | toliau i kaire|tada i kaire|is desines i kaire|is desines|nuo desines
lt | clockwise | pagal laikrodzio rodykle
lt | counterclockwise | pries laikrodzio rodykle
lt | left | kaireje|is kaires puses|kairiajame krasta
lt | right | desineje|desiniajame kraste
lt | centre | viduryje|centre|per viduri
lt | from_left | is kaires|nuo kaires
lt | from_right | is desines|nuo desines
lt | ordinals | pirm* antr* trec* ketvirt* penkt* sest* septint* astunt* devint* desimt*
lt | weak | gale
cs | front | pred nim|pred ni|pred nimi|pred mnou|prvni rada|v prvni rade|vpredu|predni rada|dolni rada|dole|v predni rade|v popredi|spodni rada
cs | back | za nim|za ni|za mnou|posledni rada|v posledni rade|vzadu|zadni rada|horni rada|nahore|v zadni rade|za nimi|v pozadi
cs | middle | prostredni rada|v prostredni rade|stredni rada
cs | seated | sedi|sedici
cs | standing | stoji|stojici
cs | kneeling | kleci|klecici|v podrepu
cs | lying | lezi|lezici
cs | row | rada|rade
cs | ltr | pak doprava|dale doprava|potom doprava|zleva doprava|zleva|odleva
cs | rtl | pak doleva|dale doleva|potom doleva|zprava doleva|zprava
cs | clockwise | ve smeru hodinovych rucicek
cs | counterclockwise | proti smeru hodinovych rucicek
cs | left | vlevo|uplne vlevo|nalevo|zcela vlevo
cs | right | vpravo|uplne vpravo|napravo|zcela vpravo
cs | centre | uprostred|ve stredu|mezi nimi
cs | from_left | zleva
cs | from_right | zprava
cs | ordinals | prvni druh* treti ctvrt* pat* sest* sedm* osm* devat* desat*
cs | weak | dole
mi | front | rarangi o mua|rarangi mua|kei mua|i mua|kei te mua|rarangi o raro|kei raro
mi | back | rarangi o muri|rarangi muri|kei muri|i muri|kei te muri|rarangi o runga|kei runga
mi | middle | rarangi o waenganui|rarangi waenganui
mi | seated | e noho ana|noho ana|nga mea e noho ana
mi | standing | e tu ana|tu ana|nga mea e tu ana
mi | kneeling | e tuturi ana
mi | lying | e takoto ana
mi | row | rarangi
mi | ltr | mai i te maui|mai i te taha maui|mai i maui ki matau|mai i te maui ki te matau|mai i te taha maui ki te taha matau|mai i maui
mi | rtl | mai i te taha matau|mai i matau ki maui|mai i te matau ki te maui|mai i te taha matau ki te taha maui
mi | clockwise | karaka whakamatau
mi | counterclockwise | karaka whakamaui
mi | left | kei tona taha maui|ki tona taha maui|kei te taha maui|i te taha maui|taha maui|kei maui
mi | right | kei tona taha matau|ki tona taha matau|kei te taha matau|i te taha matau|taha matau|kei matau
mi | centre | kei waenganui|i waenganui|waenganui
mi | from_left | mai i te taha maui|mai i te maui|mai i maui
mi | from_right | mai i te taha matau|mai i te matau|mai i matau
mi | ordinals | tuatahi tuarua tuatoru tuawha tuarima tuaono tuawhitu tuawaru tuaiwa tekau
mi | weak | waenganui
hu | front | elso sor|elso sorban|az elso sorban|az elso sor|elolso sor|elulso sor|elol|elorol|also sor|also sorban|lent|az eloterben|eloterben
hu | back | hatso sor|hatso sorban|a hatso sorban|a hatso sor|hatul|utolso sor|utolso sorban|felso sor|felso sorban|fent|a hatterben|hatterben|mogottuk|mogotte
hu | middle | kozepso sor|kozepso sorban|a kozepso sorban
hu | seated | ulnek|ulve|ulok|az ulok|ulo sor
hu | standing | allnak|allva|allok|az allok|allo sor
hu | kneeling | terdelnek|terdel|terdelve|guggolnak|guggol|guggolva
hu | lying | fekszik|fekszenek|fekve
hu | row | sor|sorban
hu | ltr | balrol jobbra|balrol|balrol a|balrol az|balrol jobbra haladva|balrol kezdve
hu | rtl | jobbrol balra|jobbrol|jobbrol a|jobbrol az|jobbrol kezdve
hu | clockwise | az oramutato jarasa szerint|az oramutato jarasaval megegyezo iranyban
hu | counterclockwise | az oramutato jarasaval ellentetesen|az oramutato jarasaval ellentetes iranyban
hu | left | bal oldalon|a bal oldalon|bal szelen|a bal szelen|bal szelso|bal szelrol|bal oldalt|baloldalt|balra
hu | right | jobb oldalon|a jobb oldalon|jobb szelen|a jobb szelen|jobb szelso|jobb szelrol|jobb oldalt|jobboldalt|jobbra
hu | centre | kozepen|a kozepen|kozottuk|kozepso
hu | from_left | balrol|balrol a|balrol az
hu | from_right | jobbrol|jobbrol a|jobbrol az
hu | ordinals | elso* masodik* harmadik* negyedik* otodik* hatodik* hetedik* nyolcadik* kilencedik* tizedik*
hu | weak | lent|fent
is | front | fremri rod|fremsta rod|i fremri rod|i fremstu rod|fyrsta rod|i fyrstu rod|fremst|fyrir framan|nedri rod|nedsta rod|i nedri rod|nedst
is | back | aftari rod|aftasta rod|i aftari rod|i oftustu rod|aftast|fyrir aftan|fyrir aftan thau|efri rod|efsta rod|i efri rod|efst
is | middle | midrod|mid rod|i midrod|midjurod
is | seated | sitjandi|sitja|situr
is | standing | standandi|standa|stendur
is | kneeling | krjupandi|krjupa|krypur
is | lying | liggjandi|liggja|liggur
is | row | rod
is | ltr | fra vinstri til haegri|fra vinstri|talid fra vinstri
is | rtl | fra haegri til vinstri|fra haegri|talid fra haegri
is | clockwise | rettsaelis
is | counterclockwise | rangsaelis
is | left | til vinstri|vinstra megin|lengst til vinstri|yst til vinstri
is | right | til haegri|haegra megin|lengst til haegri|yst til haegri
is | centre | i midju|i midjunni|fyrir midju|a milli theirra
is | from_left | fra vinstri
is | from_right | fra haegri
is | ordinals | fyrst* onnur thridj* fjord* fimmt* sjott* sjound* attund* niund* tiund*
is | ordinals | fyrst* annar
is | weak | efst|nedst
ga | front | chun tosaigh|ar aghaidh|an tsraith tosaigh|sa tsraith tosaigh|an chead sraith|sa chead sraith
ga | back | ar cul|ar chul|an tsraith chuil|sa tsraith chuil|taobh thiar|an tsraith deiridh|sa tsraith deiridh
ga | middle | an tsraith lair|sa tsraith lair
ga | seated | ina sui|ina shui|ina suidhe|suite
ga | standing | ina seasamh|ina sheasamh
ga | kneeling | ar a nglune|ar a nglunaibh|ar a ghlune
ga | lying | ina lui
ga | row | sraith|tsraith
ga | ltr | o chle|o chle go deas|o chle go dtí an taobh deas
ga | rtl | o dheas|o dheas go cle|o dheis go cle
ga | clockwise | deiseal
ga | counterclockwise | tuathal
ga | left | ar cle|ar chle|ar thaobh na laimhe cle|ar an taobh cle
ga | right | ar dheis|ar deis|ar thaobh na laimhe deise|ar an taobh deas
ga | centre | sa lar|i lar
ga | from_left | o chle
ga | from_right | o dheis|o dheas
ga | ordinals | chead dara triu ceathru cuigiu seu seachtu ochtu naou deichiu
ga | weak | suite
"""

_BETWEEN = """
nextto | jam is desines|jai is desines|jam is kaires|jai is kaires|either side of her|either side of him|either side of them|either side of me|on either side of her|on either side of him|on either side of them|on either side of me|her left|his left|her right|his right|my left|my right|po jeho pravici|po jeji pravici|po jeho levici|po jeji levici|po pravici|po levici|nxt to him|nxt to her|nxt to me|on my left|on my right|to my left|to my right|a ma gauche|a ma droite|a mi izquierda|a mi derecha|alla mia destra|alla mia sinistra|alla sua destra|alla sua sinistra|a minha direita|a minha esquerda|rechts von mir|links von mir|neben mir|справа от меня|слева от меня|рядом со мной|obok mnie|vedle me|vlevo od nej|vpravo od nej|vlevo od ni|vpravo od ni|nalevo od nej|napravo od nej|till hoger om mig|till vanster om mig|minu korval|minust paremal|minust vasakul|temast paremal|temast vasakul|korval|vierella|next to her|next to him|next to them|next to me|beside her|beside him|beside them|beside me|by her side|by his side|on her left|on her right|on his left|on his right|to her left|to her right|to his left|to his right|on either side|either side|neben ihr|neben ihm|neben ihnen|daneben|links von ihr|links von ihm|rechts von ihr|rechts von ihm|tema korval|ta korval|nende korval|a cote d'elle|a cote de lui|a cote|a ses cotes|de chaque cote|a su lado|al lado|junto a ella|junto a el|a cada lado|accanto|accanto a lei|accanto a lui|ao lado|ao lado dela|ao lado dele|naast haar|a los lados|aos lados|ai lati|auf beiden seiten|aan weerszijden|pa hver side|pa var sida|kummallakin puolella|molemal pool|below her|below him|below them|above her|above him|above them|under her|under him|hanen oikealla puolellaan|hanen vasemmalla puolellaan|unter ihr|uber ihr|links davon|rechts davon|links daneben|rechts daneben|links van haar|links van hem|rechts van haar|rechts van hem|left of her|left of him|right of her|right of him|a gauche d'elle|a droite d'elle|a gauche de lui|a droite de lui|a la izquierda de ella|a la derecha de ella|слева от нее|справа от нее|слева от него|справа от него|na lewo od niej|na prawo od niej|naast hem|daarnaast|ernaast|ved siden af|ved siden af hende|ved siden af ham|ved siden av|ved siden av henne|ved siden av ham|ved hennes side|bredvid|bredvid henne|bredvid honom|hanen vieressaan|vieressa|hanen vierellaan|рядом|рядом с ним|рядом с неи|рядом с ними|по бокам|obok|obok niego|obok niej|po bokach|blakus|blakus vinai|blakus vinam|salia|salia jos|salia jo|vedle|vedle ni|vedle nej|vedle neho|po stranach|kei tona taha|mellette|mellettuk|mellett|vid hlidina a honum|vid hlidina a henni|vid hlid hans|vid hlid hennar
and | and|n|agus|raua ko|ratou ko|ratou|&|und|et|y|e|ja|en|og|och|i|и|oraz|un|ir|a|sekä|seka|plus|+|sowie|ning|samt|ed|as well as
held | на коленях у|на руках у|on her lap|on his lap|on my lap|on her knee|on his knee|in her arms|in his arms|auf dem schoss|auf dem arm|sules|sylissa|sur les genoux|dans les bras|en brazos|in braccio|ao colo|op schoot|op de arm|pa skodet|pa fanget|i knat|i famnen|na kolanach|na rekach|na kline|klepi|ant keliu|на руках|holds|is holding|hugging|tient|tenant|halt|tragt|hoiab|sostiene|tiene en brazos|segura|houdt|holder|haller|pitaa sylissaan|держит|trzyma|tur|laiko|drzi|holding|carrying|carries|is carrying|nursing|cuddling|oleben|az oleben|karjan|karjaban|a karjan|oleben tartja|i fanginu|heldur a|in the arms of|on the knee of|on the lap of
with | with|in eineacht le|next to|between|между|miedzy|mezi|tarp|zwischen|entre|tussen|mellem|mellom|mellan|beside|neben|a cote de|junto a|accanto a|ao lado de|naast|ved siden af|ved siden av|bredvid|mit|avec|con|com|met|med|kanssa|koos|с|со|z|ze|ar|su|s|se|together with|nebst|samt|zusammen mit|along with|nxt to|flankiert von|flanque de|flanquee de|flanques de|flanqueado por|flanqueada por|fiancheggiato da|flanked by|surrounded by|accompanied by|eingerahmt von|umringt von|umgeben von|begleitet von|entoure de|entouree de|rodeado de|rodeada de|circondato da|circondata da|rodeado por|omringd door|omgivet af|omgitt av|omgiven av|asamt
from_back | dall'alto|d'en haut|desde arriba|van boven|ovenfra|oppefra|uppifran|od gory|no augsas|nuo virsaus|shora|down|from the top|from top|from the back|from back|from behind|von hinten|tagant|tagantpoolt|a partir du fond|en partant du fond|desde atras|por atras|dal fondo|a contar de tras|van achteren|bagfra|bakfra|bakifran|takaa|с конца|od tylu|no aizmugures|nuo galo|zezadu|mai i muri
from_front | up|from the front|from front|von vorne|von vorn|eestpoolt|a partir du devant|desde delante|por delante|dal davanti|a contar da frente|van voren|forfra|framifran|edesta|с начала|od przodu|no prieksas|nuo priekio|zepredu|mai i mua
second from the back | vorletzte reihe|zweitletzte reihe|eelviimane rida|eelviimases reas|avant-dernier rang|avant-derniere rangee|penultima fila|penultima fileira|op een na achterste rij|voorlaatste rij|naestbageste raekke|naestsidste raekke|nest bakerste rad|nest siste rad|nast sista raden|nast bakersta raden|toiseksi viimeinen rivi|toiseksi viimeisessa rivissa|предпоследнии ряд|в предпоследнем ряду|przedostatni rzad|w przedostatnim rzedzie|priekspedeja rinda|priespaskutine eile|priespaskutineje eileje|predposledni rada|v predposledni rade|last row but one|penultimate row|next to last row|next-to-last row|second to last row|second last row|row before last
verb | that'll be|this'll be|it'll be|that'd be|that would be|then it goes|it goes|sta|stehe|sitze|istun|seisan|stoje|siedze|сижу|стою|estoy|estou|drauf sind|drauf ist|darauf sind|darauf ist|zu sehen sind|peal on|peal|on voit|on y voit|on reconnait|salen|aparecen|aparece|se ve|se ven|si vedono|si vede|estao|veem-se|ve-se|erop staan|erop staat|je ziet|man ser|vi ser|siina ovat|siina on|kuvassa ovat|kuvassa on|nakyvissa|na nim sa|na niej sa|widac|jsou na ni|je na ni|bilde ir|redzami|matosi|sou|is it|could it be|could this be|could that be|c'e|ci sono|ecco|на снимке|на фото|на фотографии|na fotce|na snimku|na fotografii|foton|fotol|ses|its|thats|theres|heres|il y a|hay|es gibt|come|comes|follows|kommt|kommen|folgt|folgen|vient|viennent|bin|suis|soy|olen|jestem|jsem|esmu|it is|it was|here we have|we've got|here you see|here's|there's|that will be|this will be|this here is|'m|is that|is this|is called|is named|heisst|heet|hedder|heter|se tient|se tiennent|se trouve|s'appelle|se llama|si chiama|chama-se|jmenuje se|nazywa sie|зовут|in the picture|in the photo|in this picture|in this photo|on the photo|im bild|auf dem bild|auf dem foto|pildil|sur la photo|sur la photographie|en la foto|nella foto|na foto|op de foto|pa billedet|pa bildet|pa fotot|kuvassa|na zdjeciu|attela|fotografija|nuotraukoje|i te whakaahua|is|are|to|to jest|c'etait|esto es|questo e|questa e|isto e|dit is|dat is|dette er|det er|det ar|tama on|see on|te on|so|sitzen|stehen|sits|leans|we have|we see|pictured are|shown are|seen here are|was|were|stands|stand|sit|ist|sind|steht|sitzt|war|waren|est|sont|era|es|son|esta|estan|e'|sono|sao|staat|zit|er|ar|on|ovat|oli|это|jest|sa|ir|yra|je|jsou|he's|she's|that's|that is|this is|das ist|c'est|it's|you can see|here are|here is|shows|there is|there are|kneels|lies|itt|ez itt|a kepen|a foton|eru|thetta er|a myndinni
unknown | search me|beats me|god knows|god knows who|heaven knows|goodness knows|lord knows|you tell me|i wish i knew|before my time|no clue|not a clue|haven't a clue|haven't a clue who|haven't the faintest|haven't the foggiest|i haven't a clue|i haven't the faintest|i haven't the foggiest|couldn't say who|can't say|i've forgotten his name|i've forgotten her name|i've forgotten their names|i've forgotten|never seen them before|never seen him before|never seen her before|who knows|anyone's guess|couldn't tell you who|i really don't know|really don't know|i honestly don't know|wer weiss|weiss der himmel|weiss der kuckuck|keinen schimmer|keinen blassen schimmer|habe ich vergessen|hab ich vergessen|ich weiss nicht|ich weiss es nicht|weiss ich nicht mehr|kes teab|mine tea|ei mul pole aimugi|pole ornagi|pole ornaimugi|mul pole aimugi|ei oska oelda|ma ei oska oelda|ei mu ei tea|ei tea keegi|qui sait|pas la moindre idee|aucune idee qui|je n'en sais rien|je n'ai aucune idee|je ne saurais dire|va savoir|quien sabe|no lo se|ni la menor idea|vaya usted a saber|no sabria decir|ni la mas remota idea|chi lo sa|chi sa|boh|non saprei|non saprei dire|chissa|non ne ho la minima idea|quem sabe|sei la|nao faco a minima ideia|nao faco a menor ideia|nao sei dizer|wie weet|geen flauw idee|ik zou het niet weten|zou het niet weten|ik weet niet|geen benul|hvem ved|det ved jeg ikke|aner det ikke|jeg aner ikke|jeg ved ikke|jeg ved det ikke|jeg vet ikke|det vet jeg ikke|hvem vet|ingen aning om|vem vet|det vet jag inte|jag vet inte|jag har ingen aning|inte en aning|har ingen aning|kuka tietaa|mista mina tietaisin|ei hajuakaan|ei mitaan hajua|en mina tieda|en osaa sanoa|кто знает|кто его знает|без понятия|ни малеишего понятия|не могу сказать|затрудняюсь сказать|бог его знает|кто их знает|kto wie|pojecia nie mam|bladego pojecia|nie mam zielonego pojecia|nie potrafie powiedziec|bog wie|kdovi|kdo vi|netusim|nemam poneti|nemam ani poneti|nevim to|buh vi|kas zina|nav ne mazakas nojausmas|nevaru pateikt|es nezinu|kas zino|neisivaizduoju|negaliu pasakyti|as nezinau|ki tudja|fogalmam sincs|sejtelmem sincs|nem tudom megmondani|non lo so|non ne ho idea|aucune idee|pas d'idee|pole aimugi|pole aimu|aimugi pole|kaore au e mohio|kare au e mohio|ni idea|no tengo idea|nao faco ideia|geen idee|aner ikke|ingen anelse|ingen aning|ei aavistustakaan|ei tietoa|понятия не имею|nie mam pojecia|nemam tuseni|nav ne jausmas|neturiu supratimo|nezinia|je ne sais plus|ma ei tea|ma ei maleta|non ricordo|no recuerdo|nao me lembro|jeg husker ikke|husker ikke|jag minns inte|minns inte|ik weet het niet|weet het niet|я не знаю|nie pamietam|nepamatuji|neatceros|neprisimenu|dunno|dunno who|blank|none known|none of them known|i've no idea|no idea|weet ik niet|weet ik niet meer|kenne ich nicht|kenn ich nicht|kennen wir nicht|erkenne ich nicht|non lo conosco|non la conosco|non li conosco|non le conosco|no lo conozco|nao conheco|ken ik niet|onbekenden|kender jeg ikke|kjenner jeg ikke|kanner jag inte|tundmatut|tundmatud|no se quien|no se quien es|no se quienes son|non so chi|non so chi sia|non so chi e|nao sei quem|nao sei quem e|je ne sais pas qui|je ne sais pas qui c'est|weiss nicht wer|not sure which is which|don't know which is which|can't tell which is which|not sure who is who|don't know who is who|can't tell who is who|en muista|en tunne|i couldn't say|i can't say|couldn't say|couldn't tell you|i couldn't tell you|?|not identified|unidentified|nicht identifiziert|non identifie|non identifiee|no identificado|no identificada|nobody i know|no one i know|nobody we know|no one we know|nobody i recognise|nobody i recognize|nobody we recognise|nobody we recognize|no one i recognise|no one i recognize|no one we recognise|no one we recognize|someone i don't know|somebody i don't know|naha pole|pole naha|nie wiadomo kto|nie wiadomo|no se sabe|no se sabe quien|on ne sait pas|on ne sait pas qui|man weiss nicht wer|neni znamo|nav zinams|isn't known|is not known|aren't known|are not known|is unknown|are unknown|anaithnid|duine anaithnid|ni fios|nil a fhios agam|i can't name|i cannot name|i couldn't name|we can't name|can't name|cannot name|i don't recognise|i don't recognize|i do not know|not sure which|don't know which|onbekende|unbekannter|unbekannten|unbekanntes|inconnus|uno sconosciuto|una sconosciuta|un sconosciuto|ukendte|ukjente|okanda|nieznane|nieznani|неизвестное|неизвестные|n n|nn|i can't make out|i cannot make out|i can't place|i can't remember|i can't recall|i can't tell|i can't make out who|i can't make out who this is|i do not remember|i don't remember|i don't know who|i don't know who this is|not sure who|not sure|someone i do not know|i'm not sure|don't remember|i forget|i forget who|i forget his name|i forget her name|forgotten|no idea who|can't place|can't make out|can't tell|can't think who|can't recall|who is this|who's this|who is that|who's that|weet niet|weiss nicht|weiss ich nicht|keine ahnung|wer ist das|keegi|ei tea|ei maleta|kes see on|je ne sais pas|quelqu'un|qui est-ce|no se|no me acuerdo|alguien|quien es|non so|qualcuno|nao sei|alguem|iemand|ved ikke|ved ikke hvem|vet ikke|vet inte|vet ej|nagon|noen|en tieda|joku|не знаю|не помню|кто-то|nie wiem|ktos|nezinu|kads|nezinau|kazkas|nevim|nekdo|he tangata|kaore i te mohiotia|??|???|unknown|not known|nobody knows|nk|n k|don't know|do not know|i don't know|can't remember|name unknown|unbekannt|unbekannte|tundmatu|teadmata|inconnu|inconnue|desconocido|desconocida|sconosciuto|sconosciuta|ignoto|ignota|desconhecido|desconhecida|onbekend|ukendt|ukjent|okand|tuntematon|неизвестный|неизвестная|неизвестно|nieznany|nieznana|nezinams|nezinama|nezinomas|nezinoma|neznamy|neznama|someone|somebody|ismeretlen|ismeretlenek|okunnur|okunnug|okunnugur|ukunnur|nem tudom|nem tudom ki|nem tudni|nem emlekszem|valaki|ki ez|othekktur|othekkt|othekktir|veit ekki|man ekki|ekki vitad|einhver|unk|unkn|unbek|неизв|ei tunne|nie wiem kto|not named|name forgotten|tunnistamaton|tuvastamata|unerkannt|sin identificar|nao identificado|nao identificada|niet herkend|nierozpoznany|nierozpoznana|неопознан|неопознанная|неопознанныи|oidentifierad|non identificato|non identificata|uidentificeret|uidentifisert|не видно|nie widac|ei nay|ei ole naha|nicht zu sehen|nicht zu erkennen|niet te zien|syns inte|ses ikke|nao se ve|no se ve|non si vede
in the middle of the picture | in the middle of the picture|in the centre of the picture|in the center of the picture
or | or|oder|või|ou|eller|tai|или|albo|lub|arba|nebo|vagy|eda
filler | i mean|i meant|ich meine|je veux dire|quiero decir|tarkoitan siis|ma motlen|jag menar|jeg mener|ik bedoel|to znaczy|то есть|intendo dire
top to bottom | ulevalt|ylhaalta|von oben|from top to bottom|top to bottom|going down|from the top down|von oben nach unten|ulevalt alla|de haut en bas|de arriba abajo|de arriba a abajo|dall'alto in basso|de cima para baixo|van boven naar beneden|ovenfra og ned|oppefra og ned|uppifran och ner|uppifran och ned|ylhaalta alas|сверху вниз|od gory do dolu|no augsas uz leju|is virsaus i apacia|shora dolu|mai i runga ki raro
bottom to top | from bottom to top|bottom to top|from the bottom up|from the bottom|going up|von unten nach oben|alt ules|de bas en haut|de abajo arriba|dal basso in alto|de baixo para cima|van beneden naar boven|nedenfra og op|nedenfra og opp|nerifran och upp|alhaalta ylos|снизу вверх|od dolu do gory|zdola nahoru|mai i raro ki runga
diagonally | diagonally|diagonally from bottom left|diagonally from top left|diagonally from the top left|diagonally from the bottom left|diagonal von links unten|diagonal von links oben|en diagonale|in diagonale|diagonaalis|diagonaalselt|по диагонали|na ukos
me | je suis|mig|meg|me|mig selv|meg selv|mig sjalv|ko au|ahau|me fein|mise|myself|i|ich|ich selbst|moi|moi-meme|mina|ma ise|mina ise|mina itse|yo|io|eu|ik|ikzelf|jeg|jeg selv|jag|jag sjalv|minä|я|ja|ja sam|es|es pati|as|as pats|já|self|me myself|en magam|eg|eg sjalf|eg sjalfur|yours truly|meine wenigkeit
my | my|deren|dessen|mo|taku|toku|tana|tona|aku|deras|vinu|vina|vinas|ju|jejich|musu|их|our|his|her|their|your|mein*|unser*|sein*|ihr*|mon|ma|mes|notre|nos|son|sa|ses|leur|leurs|minu|mu|meie|tema|nende|mi|mis|nuestr*|su|sus|mio|mia|miei|nostr*|suo|sua|suoi|loro|meu|minha|meus|minhas|nossos|nossas|seus|suas|nosso|nossa|seu|mijn|ons|onze|zijn|haar|hun|min|mit|mine|vores|hans|hendes|deres|var|vart|vara|sin|hennes|mein|minun|meidan|hanen|heidan|мой|моя|мои|наш|наша|его|ее|moj|moja|nasz|nasza|jego|jej|ich|mans|mana|savo|mano|jo|jos|muj|moje|nas|nase|jeho|jeji|minn|mitt|minum|hennar|theirra|sinn|sinni
"""

_FROM_THE_END = """
from_end | ultim*|letzt*|dernier*|viimane|viimast|viimase|sista|siste|sidste|viimeinen|последн*|ostatni*|posledni|pedej*|paskutin*|laatste|to last|to the last|from last|from the last|from the end|from end|last
2 | last but one|next to last|penultimate|second-last|vorletzt*|zweitletzt*|eelviima*|avant-dernier*|penultim*|op een na laatste|voorlaatst*|naestsidst*|nest sist*|nast sist*|toiseksi viimei*|предпоследн*|przedostatni*|priekspedej*|priespaskutin*|predposledn*
3 | last but two|third-last|drittletzt*|antepenultim*
"""

_PEOPLE = """
one | groomsman|amm|minia|vaimees|patentante|patenonkel|taufling|taufpate|taufpatin|maire|alcalde|sindaco|burgemeester|burgermeister|borgmester|ordforer|mayor|prefeito|староста|soltys|mloda|mlody|sulane|teenija|teenijatudruk|karjapoiss|karjatudruk|koolmeister|kirikuopetaja|naabrimees|naabrinaine|balia|nodriza|isamees|pruutneitsi|peiupoiss|mokytoja|mokytojas|skolotaja|skolotajs|ucitel|ucitelka|nauczyciel|nauczycielka|konfirmanten|gardejer|husmand|opettaja|morsiamen|sulhasen|hustru|fella|bloke|missus|isanta|emanta|bestman|madrinha|padrinho|madrina|padrino|marraine|parrain|drangen|drang|pigan|piga|karlen|karl|kochin|dienstmadchen|hausmadchen|laereren|laererinden|laererinnen|laerer|larare|larer|presten|prest|praesten|praest|prast|nevesta|zenich|druzba|druzicka|jaunikis|nuotaka|jaunoji|jaunasis|ligava|ligavainis|svedek|svedkyne|swiadek|liecinieks|liecinieki|tunnistaja|forlover|testimone|testigo|temoin|свидетель|свидетельница|trauzeuge|trauzeugin|konfirmand|konfirmandin|mascot|valet|chauffeur|secretary|footman|groundskeeper|waitress|waiter|barmaid|shopgirl|seamstress|blacksmith|carpenter|mechanic|trawlerman|skipper|bosun|pupil|twin|student|godson|goddaughter|stepson|stepdaughter|classmate|trainee|stranger|butler|housemaid|gardener|facteur|prosten|klockaren|prasten|doktorn|lararen|lararinnan|smeden|kantorn|associe|socio|compagno|airman|postman|milkman|fireman|policeman|chairman|salesman|workman|coachman|boatman|fisherman|stockman|clergyman|seaman|rifleman|signalman|ploughman|huntsman|barman|doorman|meester|juf|verger|sexton|curate|stationmaster|harbourmaster|institutrice|instituteur|gent|beau|sweetheart|chum|mate|pal|workmate|colleague|boss|lodger|governess|apprentice|foreman|manager|schoolmaster|headmaster|organist|postmistress|midwife|cowman|groundsman|trainer|coach|conductor|intended|fiance|fiancee|verlobter|verlobte|maestra|maestro|kihlatu|prometido|prometida|fidanzato|fidanzata|noivo|verloofde|forlovede|fastman|fastmo|kihlattu|narzeczony|narzeczona|snoubenec|snoubenka|sadernieks|suzadetinis
one | cailin|buachaill|paiste|leanbh|sagart|fremmed|frammande|framling|vreemde|fremder|fremde|fremden|etranger|etrangere|forastero|forastera|forestiero|estranho|estranha|vooras|vieras|obcy|незнакомец|незнакомка|svesinieks|nepazistamais|cizinec|idegen
one | one|other|usher|witness|captain|driver|officer|shopkeeper|man|woman|boy|girl|child|baby|lady|gentleman|fellow|chap|lad|lass|kid|infant|toddler|youth|person|bride|groom|bridegroom|bridesmaid|soldier|sailor|nurse|maid|servant|cook|gardener|teacher|minister|priest|vicar|doctor|baker|farmer|neighbour|neighbor|friend|guest|stranger|visitor|postman|midwife|schoolmaster|uncle|aunt|someone|bloke|mokopuna|nanny|governess|housekeeper|lodger|boarder|coach|pal|mate|sweetheart
one | mann|frau|junge|madchen|kind|saugling|baby|herr|dame|braut|brautigam|soldat|freund|freundin|nachbar|nachbarin|lehrer|lehrerin|pfarrer|knecht|magd
one | mees|naine|poiss|tudruk|laps|pruut|peigmees|sodur|sober|sobranna|naaber|opetaja|imik|poisike|vanamees
one | homme|femme|garcon|fille|enfant|bebe|dame|monsieur|mariee|marie|soldat|ami|amie|voisin|voisine|cure|cura|parroco
one | hombre|mujer|nino|nina|chico|chica|senor|senora|novia|novio|soldado|amigo|amiga|vecino|vecina|bebe
one | uomo|donna|ragazzo|ragazza|bambino|bambina|signore|signora|sposa|sposo|soldato|amico|amica|vicino|vicina
one | homem|mulher|rapaz|rapariga|menino|menina|crianca|senhor|senhora|noiva|noivo|soldado|amigo|amiga|vizinho|vizinha
one | vrouw|jongen|meisje|kind|heer|bruid|bruidegom|soldaat|vriend|vriendin|buurman|buurvrouw|man
one | mand|kvinde|dreng|pige|barn|brud|brudgom|jenta|gutten|mannen|kvinnen|damen|drengen|pigen|manden|kvinden|flickan|pojken|kvinnan|barnet|bruden|nabo|ven|veninde|kvinne|gutt|jente|venn|flicka|pojke|kvinna|granne|van|vaninna
one | mies|nainen|poika|tytto|lapsi|morsian|sulhanen|naapuri|ystava|vauva
one | человек|мужчина|женщина|мальчик|девочка|девушка|ребенок|невеста|жених|солдат|друг|подруга|сосед|соседка|учитель|учительница
one | mezczyzna|kobieta|chlopiec|dziewczynka|dziewczyna|dziecko|zolnierz|przyjaciel|sasiad|sasiadka|virietis|sieviete|zens|meitene|berns|kaiminš|kaimins|vyras|moteris|berniukas|mergaite|vaikas|kaimynas|muz|zena|chlapec|divka|dite|soused|sousedka
one | ferfi|fiu|lany|kislany|kisfiu|gyerek|gyermek|kisbaba|menyasszony|volegeny|plebanos|tanito|tanitono|szomszed|szomszedasszony|katona|holgy|stulka|strakur|drengur|prestur|nagranni|nagrannakona
many | syskonen|syskon|soskendene|sosknene|sosken|sodskende|sitters|strangers|konfirmanden|trauzeugen|konfirmandid|triplets|misses|messrs|mesdames|ptes|sgts|cpls|drs|revs|mmes|mlles|daughters|aunties|grandmas|grannies|grandpas|nieces|nephews|cousins|sons|aunts|uncles|tochter|sohne|schwestern|bruder|filles|fils|soeurs|freres|hijas|hijos|figlie|figli|filhas|filhos|dochters|zonen|dotre|sonner|dottrar|soner|tyttaret|pojat|tutred|pojad|дочери|сыновья|corki|synowie|dcery|synove
many | grandkids|kiddies|youngsters|kleinkinderen|petits-enfants|lapselapset|tarnor|brudtarnor|brudepiker|brudepiger|probationers|conscrits|soskende|foreldrene|foraeldrene|foraldrarna|свидетели|svedci|swiadkowie|liecinieki|liudininkai|servants|commilitoni|camerati|kameraden|camaradas|companeros|companeras|kammerater|kamrater|kamerater|sotilaat|kamarades|camarades|kolegi|koledzy|ученики|ученицы|одноклассники|opilased|opilastega|klassikaaslased|uczniowie|uczniami|oppilaat|schuler|schulern|eleves|alumnos|leerlingen|elever|zaci|bridesmaids|ushers|pageboys|attendants|witnesses|officers|crew|staff|al|etc|etcetera|usw|jne|itd|atd|mfl|osv|ym|ecc|adults|grown-ups|ladies|gentlemen|pupils|students|teachers|workers|players|team|sailors|farmers|family|twins|children|parents|boys|girls|men|women|soldiers|brothers|sisters|grandparents|neighbours|neighbors|friends|people|couple|cousins|kids|babies|others|guests|family*|grandchildren
many | padrinos|testimoni|testigos|temoins|padrinhos|testemunhas|getuigen|vidner|vitner|vittnen|todistajat|tunnistajad|свидетели|swiadkowie|liecinieki|liudininkai|svedkove|nowozency|neveux|nieces|sobrinos|sobrinas|sobrinhos|sobrinhas|nipoti|neffen|nichten|neven|nevoer|niecer|brorsoner|teachers|pupils|triplets|drillinge|kolmikud|triplees|triples|trillizos|drieling|trillinger|trillingar|kolmoset|troiki|sonerna|dottrarna|barna|bornene|sonnene|dotrene|apprentices|workmates|colleagues|mates|chums|lodgers|primas|primos|tias|tios|barnen|lapset|twins|zusjes|broertjes|gebroeders|gezusters|jongens|meisjes|broderna|systrarna|flickorna|pojkarna|brodrene|sostrene|сестры|братья|братьев|сестер|ребята|девочки|мальчики|bratia|kindern|jungen|buben|bambine|ragazze|ragazzi
many | veljekset|siskokset|sisarukset|pojat|tytot|vennad|oed|venda|poisid|poissi|tudrukud|tudrukut|chlopcy|dziewczynki|chlapci|meiteni|meitenes|zeni|fiuk|lanyok|testverek|systkini|brothers|misses
many | hermanas|hermanos|sorelle|fratelli|irmas|irmaos|zussen|broers|sostre|brodre|systrar|broder|siskot|veljet|siostry|bracia|sestry|bratri|masas|brali|seserys|broliai|noverek|jumelles|mellizos|nonni|abuelos|avos|grands-parents|vanavanemad|isovanhemmat|besteforeldre|bedsteforaeldre|dziadkowie|prarodice|nagyszulok|seneliai|vecvecaki|seanthuismitheoiri
many | familie|zwillinge|kinder|eltern|manner|frauen|geschwister|grosseltern|nachbarn|freunde|leute|pere|perekond|kaksikud|lapsed|vanemad|famille|jumeaux|enfants|parents|familia|gemelos|ninos|padres|famiglia|gemelli|bambini|genitori|gemeos|pais|gezin|tweeling|kinderen|ouders|tvillinger|tvillingene|tvillingerne|tvillingarna|tviburarnir|born|foraeldre|barna|foreldre|familj|tvillingar|foraldrar|perhe|kaksoset|lapset|vanhemmat|семья|близнецы|дети|родители|rodzina|blizniaki|dzieci|rodzice|gimene|dvini|berni|vecaki|seima|dvyniai|vaikai|tevai|rodina|dvojcata|deti|rodice|gyerekek|lanyok|fiuk|csalad|ikrek|szomszedok|baratok|szulok|testverek|systkini|tviburar|foreldrar|bornin|fjolskyldan|fjolskylda
thing | mare|gelding|stallion|foal|filly|heifer|calf|bull|bullock|ewe|pig|piglet|sow|goose|gander|duckling|rooster|cockatoo|pup|tomcat|kelpie|labrador|greyhound|whippet|poodle|dachshund|retriever|alsatian|sheepdog|lurcher|tortoise|hedgehog|ferret|stute|hengst|fohlen|dackel|welpe|schaf|ziege|esel|kuh|mara|takk|varss|kutsikas|lehm|lammas|kits|jument|poulain|chiot|vache|mouton|chevre|yegua|potro|burro|cachorro|vaca|oveja|cavalla|puledro|asino|cucciolo|mucca|pecora|egua|ovelha|merrie|veulen|ezel|koe|schaap|hoppe|asen|valp|tamma|varsa|aasi|pentu|lehma|кобыла|жеребенок|щенок|осел|корова|овца|коза|klacz|zrebak|szczeniak|osiol|krowa|klisna|hribe|stene|osel|krava|kumels|kuceens|govs|kumele|suniukas|karve|kanca|csiko|tehen|psem|kotem|konem|suni|kaki|sunimi|собакои|кошкои|котом|псом|koeraga|kassiga|hobusega|hound|puppy|kitten|terrier|spaniel|collie|donkey|lamb|parrot|budgie|canary|rabbit|doll|teddy|tractor|lorry|truck|motorbike|cart|dog|cat|horse|cow|pony|goat|hen|car|bicycle|bike|house|barn|tree|boat|ship|hund|katze|pferd|auto|haus|koer|kass|hobune|maja|chien|chat|cheval|maison|voiture|perro|gato|caballo|cane|gatto|cavallo|cao|cavalo|hond|kat|paard|hest|kissa|koira|hevonen|собака|кошка|лошадь|pies|kot|kon|suns|kakis|zirgs|suo|kate|arklys|pes|kocka|kun
"""

DOUBTING = ("may", "might", "could", "must", "should")
_MODAL = [
    f"{who}{verb} {how}{be}"
    for who in ("", "it ", "this ", "that ")
    for verb in DOUBTING
    for how in ("", "well ", "just ")
    for be in ("be", "have been")
]
"""`may be`, `it could well have been`."""

UNSURE = "|".join(_MODAL) + (
    "|prob|probs|poss|mebbe|praps|prolly|i'd say|i would say|i reckon|i'd guess|i'd have said|if i remember|if i remember right|if i remember rightly|if i remember correctly|if memory serves|as far as i know|as far as i remember|i'm fairly sure|i'm pretty sure|that has to be|it has to be|has to be|"
    "wurde ich sagen|soweit ich weiss|wenn ich mich recht erinnere|wenn ich mich nicht irre|kui ma oigesti maletan|kui ma ei eksi|minu teada|si je me souviens bien|si je ne me trompe|sauf erreur|je dirais|si no me equivoco|si mal no recuerdo|yo diria|se non sbaglio|se ricordo bene|direi|se nao me engano|se bem me lembro|als ik me niet vergis|als ik het goed heb|hvis jeg husker rett|hvis jeg husker ret|hvis jeg ikke tar feil|hvis jeg ikke tager fejl|om jag minns ratt|om jag inte minns fel|jos oikein muistan|ellen erehdy|если не ошибаюсь|если я не ошибаюсь|если память не изменяет|jesli sie nie myle|o ile pamietam|jestli se nemylim|jestli se nepletu|pokud vim|ja nemaldos|cik atceros|jei neklystu|kiek pamenu|ha jol emlekszem|ha nem tevedek|"
    "a lo mejor|tal vez|может быть|вроде бы|похоже на|mozda|i couldn't swear to it|i can't swear to it|i wouldn't swear to it|couldn't swear to it|i'm not certain|i am not certain|not certain|i'm not positive|"
    "we think it's|we think it is|we think this is|we think that's|we think|we believe|we believe it's|troligen|antagligen|formodentlig|sannsynligvis|luultavasti|prawdopodobnie|pravdepodobne|nejspis|laikam|tikriausiai|turbut|"
    "вероятно|probablemente|probabilmente|provavelmente|waarschijnlijk|probablement|toenaoliselt|believed to be|thought to be|said to be|supposed to be|identified as|i think this is|i think that's|i think that is|i think it's|i think it is|looks to be|definitely i think|or so|i believe|i guess|glaube ich|denke ich|meine ich|that looks like|muss|musste|probably|perhaps|maybe|possibly|i think|vermutlich|pole kindel|ei ole kindel|en ole varma|nicht sicher|pas sur|niet zeker|не уверена|не уверен|nie jestem pewna|inte saker|wohl|vielleicht|peut-etre|arvatavasti|vist|ehk|quiza|forse|talvez|"
    "talan|valoszinuleg|azt hiszem|liklega|sennilega|held ad|misschien|maske|kanske|kanskje|ehka|наверное|возможно|chyba|varbut|gal|asi|кажется|наверно|wahrscheinlich|je crois|creo que|credo|acho que|tror jag|luulen|zdaje sie|looks like"
)

CERTAIN = (
    "i'm sure of it|i'm sure of that|i'm sure|i am sure|i'm certain of it|i'm certain|i am certain|i'm positive|for sure|no doubt|"
    "no doubt about it|without a doubt|da bin ich sicher|da bin ich mir sicher|ganz sicher|ganz bestimmt|olen kindel|selles olen kindel|"
    "j'en suis sur|j'en suis sure|j'en suis certaine|sans aucun doute|estoy seguro|estoy segura|sin duda|ne sono sicuro|ne sono sicura|"
    "senza dubbio|tenho a certeza|tenho certeza|sem duvida|dat weet ik zeker|zeker weten|det er jeg sikker pa|det ar jag saker pa|"
    "det ved jeg|olen varma|siita olen varma|я уверен|я уверена|точно|jestem pewien|jestem pewna|na pewno|tim jsem si jista|tim jsem si jisty|"
    "urcite|esmu parliecinata|esmu parliecinats|esu tikra|esu tikras|biztos vagyok benne"
)
"""Phrases that say that it is surely so, parted by bars: they say nothing more."""

TURNED = (
    "the other way|the other way round|the other way around|dans l'autre sens|al reves|en sentido contrario|"
    "nell'altro senso|al contrario|ao contrario|de andere kant op|den anden vej|andre veien|at andra hallet|"
    "toisin pain|в другую сторону|w druga strone|uz otru puse|i kita puse"
)
"""Phrases that turn the order of a row round, parted by bars."""

LIKELY = frozenset(
    "probably prob wahrscheinlich vermutlich toenaoliselt arvatavasti probablement probablemente probabilmente provavelmente "
    "waarschijnlijk вероятно troligen antagligen formodentlig sannsynligvis luultavasti prawdopodobnie pravdepodobne "
    "valoszinuleg liklega sennilega tikriausiai".split()
)
"""Those of them that say more than `perhaps`."""

_SMALL = "kis|oreg|litla|litli|gamla|gamli|wee|bonnie|pisike|tilluke|lilla|mala|maly|malutka|maza|mazais|маленькая|маленькии|little|old|young|small|big|baby|tall|great|dear|late|poor|kleine|kleiner|kleinen|kleines|alte|alten|junge|petit|petite|pequeno|piccolo|liten|lille|vaike|pikku"


def _rows(text: str) -> list[list[str]]:
    return [[piece.strip() for piece in line.split(" | ")] for line in text.strip().splitlines()]


ROW_CLASSES = ("front", "back", "middle", "seated", "standing", "kneeling", "lying")
DIRECTIONS = ("ltr", "rtl", "clockwise", "counterclockwise")
SIDES = ("left", "centre", "right")
ORDERS = ("clockwise", "counterclockwise", "top to bottom", "bottom to top", "diagonally")
"""Orders around or down a picture."""

PLACE_PHRASES: tuple[tuple[str, str], ...] = tuple(
    (kind, phrase)
    for _, kind, phrases in _rows(_ROWS)
    if kind not in ("ordinals", "weak")
    for phrase in phrases.split("|")
)
"""(class, phrase) of every language."""

ORDINALS: tuple[tuple[int, str], ...] = tuple(
    (number, word)
    for _, kind, words in _rows(_ROWS)
    if kind == "ordinals"
    for number, word in enumerate(words.split(), 1)
)
"""(number, word) of every language."""

WEAK = frozenset(phrase for _, kind, phrases in _rows(_ROWS) if kind == "weak" for phrase in phrases.split("|"))
"""Rows and sides that are plain words too."""

WORDS_BETWEEN: tuple[tuple[str, str], ...] = tuple(
    ("with" if kind == "held" else kind, phrase)
    for kind, phrases in (*_rows(_BETWEEN), ["unsure", UNSURE], ["of", TURNED], ["of", CERTAIN])
    for phrase in phrases.replace("i'm ", "i 'm ").split("|")
)
"""(and, with, verb, unknown, or, me, my or unsure; phrase) of every language."""

COUNTED_FROM_THE_END: tuple[tuple[str, str], ...] = tuple(
    (kind, phrase) for kind, phrases in _rows(_FROM_THE_END) for phrase in phrases.split("|")
)
"""(`from_end` for what stands behind an ordinal, or the place from the right; phrase): `second to last`."""

HOLDING = frozenset(phrase for kind, phrases in _rows(_BETWEEN) if kind == "held" for phrase in phrases.split("|"))
"""Those of `with` before somebody who is held, and so has no place of her own in a row."""

FAMILY = frozenset(
    "coniugi conyuges conjuges aviopari brautpaar haapari pruutpaar brudpar brudepar bruidspaar maries novios sposi noivos молодые молодожены novomanzele jaunavedziai "
    "eheleute ehepaar gebruder gebroeders echtpaar panstwo abielupaar pariskunta epoux matrimonio sposi casal aegteparret ekteparet "
    "makarna familjen familien perhe suku perekonnad супруги manzele familie perekond familia famille famiglia familj family gezin семья rodzina gimene seima rodina csalad fjolskylda fjolskyldan".split()
)
"""`family`, before or behind its name."""

COUPLES = frozenset(
    "coniugi conyuges conjuges aviopari brautpaar ehepaar eheleute haapari pruutpaar abielupaar brudpar brudepar bruidspaar echtpaar pariskunta epoux maries "
    "novios sposi noivos casal молодые молодожены супруги novomanzele manzele aegteparret ekteparet "
    "panstwo".split()
)
"""Words for two of a couple, which may stand before the first of their names."""

MY_OWN = frozenset(
    fold(word)
    for word in "meus minhas nossos nossas mis mes nos my mo our mein meine unser unsere mon ma notre minu mu meie mi nuestro nuestra mio mia nostro nostra meu minha nosso "
    "nossa mijn ons onze min mit vores vores var vart vår minun moj moja nasz nasza mans mana musu mano muj moje nas nase "
    "мой моя наш наша mina minn mitt okkar taku toku".split()
)
"""`my` and `our`: what is told behind it is the teller's own."""

BEFORE_A_PLACE = frozenset(
    "geheel volledig ihan mest allra heilt estrema visai pasa aussen row there here dort siin seal last in the im am an on at a au aux en la le les el al na no nos nas w we v ve в во на i pa do da del della dello du of quite very just helt ganz tout toute uiterst helemaal laengst langst lengst ytterst yderst koige uplne zcela far aivan самыи самая kohe at den det der die das dem da do "
    "aan op het de te l' dans sur uz ant pri ja il".split()
)
"""Small words before a row or a side that are a part of it."""

HEADS = frozenset(
    fold(word)
    for word in (
        "school schools class form standard primer grade team eleven fifteen club band choir orchestra wedding reunion "
        "picnic christening baptism confirmation funeral camp company regiment battalion platoon squad brigade corps committee "
        "excursion outing party anniversary exhibition parade "
        "schule klasse hochzeit taufe verein mannschaft chor ausflug konfirmation beerdigung "
        "kool klass pulmad pulm ristimine matused leer koor meeskond "
        "ecole classe mariage noces bapteme equipe chorale enterrement communion "
        "escuela colegio clase boda bautizo equipo coro scuola classe matrimonio nozze battesimo squadra escola turma "
        "casamento batizado batismo equipa school klas bruiloft huwelijk doop elftal koor skole bryllup dap barnedab "
        "konfirmasjon lag hold skola klass brollop dop konfirmation lag koulu luokka haat kastajaiset rippijuhla joukkue "
        "школа класс свадьба крестины команда хор похороны szkola klasa wesele slub chrzciny druzyna chor skola klase kazas kristibas komanda koris "
        "mokykla klase vestuves krikstynos komanda skola trida svatba krtiny muzstvo sbor iskola osztaly eskuvo keresztelo csapat "
        "skoli bekkur brudkaup skirn ferming kura marena moenga scoil rang bainis foireann"
    ).split()
)
"""Words of a school, a team or a feast, which head a list of people: `Port Chalmers School, Standard 4, 1931: …`."""

NUMBER_WORDS = frozenset(
    "no nos nr nrs num nro numero numer номер numurs numeris cislo number nummer numero num. n° # № nro c".split()
)
"""Words before a number."""

OF_THE_DEAD = frozenset(
    "sp swp late feu feue wijlen zaliger kadunu kadunud покоиныи покоиная nebozka nebozky zesnuly zesnula nelaikis nelaika velionis velione "
    "salig avdode afdode finado finada falecido falecida difunto difunta defunto defunta compianto compianta edesmennyt "
    "edesmenneet vainaja selige seliger nieboszczyk nieboszczka".split()
)
"""What is said of the dead, before their names."""

BEFORE_A_NAME = OF_THE_DEAD | frozenset(_SMALL.split("|"))
"""Small words that may stand before a name and are no part of it."""

PEOPLE_NOUNS: tuple[tuple[str, str], ...] = tuple(
    (kind, word.rstrip("*")) for kind, words in _rows(_PEOPLE) for word in words.split("|")
)
"""(one, many or thing; word): whether a description is of one person, of several, or of none."""

NOUNS = {fold(word): kind for kind, word in reversed(PEOPLE_NOUNS)}
"""The same by the word; of two kinds the first row's."""

ROW_ADJECTIVES: tuple[tuple[str, tuple[str, ...]], ...] = tuple(
    (row, tuple(stems.split()))
    for row, stems in (
        ("front", "front frt bottom lower nearest vorder unter eesmi alum ees inferieur anterieur avant delanter inferior anterior "
                  "dianteir voorst onderst forrest nederst fremst fremre framst framre nedre underst etu ala etummai alimmai "
                  "передн нижн przedni doln priekse apakse priekin apatin predn spodn"),
        ("back", "back rear last top upper hinter ober letzt taga tagum ulem viima superieur posterieur arriere dernier "
                 "traser superior posterior ultim achterst bovenst laatst bager bagest overst sidst bakerst bakre siste "
                 "bakerst ovre sista taka yla taaimmai ylimmai viimei задн верхн последн tyln gorn ostatni aizmugure augse "
                 "pedej galin virsutin paskutin zadn horn posledn"),
        ("middle", "middle centre center mittler keskmi central middelst midterst midtre mellerst mitterst keski keskimmai "
                   "средн srodkow videj vidurin prostredn stredn"),
    )
)  # fmt: skip
"""Beginnings of words that name a row before the word for row, whatever their ending: `in der hinteren Reihe`."""
