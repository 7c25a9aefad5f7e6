"""Short forms of English given names: nicknames 1.0.1 (Apache License 2.0); made by make_nicknames.py."""

NICKNAMES = """
aaron: erin ron ronnie, abbigail: abbe abbey abbi abbie abby gail nabby, abbigale: abbe abbey abbi abbie abby gail
nabby, abednego: bedney, abel: abe ebbie, abigail: abbe abbey abbi abbie abby gail nabby, abigale: abbe abbey abbi
abbie abby gail nabby, abijah: bige, abraham: abe, abram: abe, absalom: abbie app, ada: addy adie, adaline: ada addy
adie delia dell lena, addison: addie addy, adela: adie della, adelaide: addy adele adie dell della heidi, adelbert:
albert bert del delbert, adele: addy dell, adeline: ada addy delia dell lena, adelphia: addy adele dell delphia
philly, adena: adina deena dena dina, adolphus: ado adolph dolph, adrian: rian, adriane: riane, adrienne: addie enne
rienne, agatha: aga aggy, agnes: aggy inez nessa, aileen: allie lena, alanson: lanson, alazama: ali, albert: bert,
alberta: allie bert bertie, aldrich: rich riche richie, aleksandr: alek alex, aleva: leve, alexander: alec alex sandy,
alexandra: alex alla sandra sandy, alexandria: alex alexander alla drina sandra, alexis: alex lexi, alfred: fred
freddy, alfreda: alfy freda freddy frieda, algernon: algy, alice: allie elsie lisa, alicia: allie elsie lisa, alison:
ali allie, alixandra: alix, allan: alan allen, allen: alan allan, allisandra: ali allie, allison: ali allie, allyson:
ali allie, allyssa: ali allie, almena: ali allie mena, almina: minnie, almira: myra, alonzo: lon lonzo, alphinias:
alphus, alverta: vert virdie, alyssa: lissia, alzada: zada, amanda: manda mandy, ambrose: brose, amelia: amy emily mel
millie, anastasia: ana stacy, anderson: andy, andre: drea, andrea: andi andrew andy drea rea, andrew: andy drew randy,
andriane: ada adri rienne, angela: angel angie, angelica: angel angelika angie, angelina: angel angie lina, ann: annie
nan, anna: ann anne annie nan, anne: ann annie nan, annette: anna nettie, annie: ann anna, anselm: ance anse ansel
selma, anthony: tony, antoinette: ann netta tony, antonia: ann netta tony, antonio: tony, appoline: appie appy,
aquilla: quil quillie, ara: arry, arabella: ara arry bella belle, arabelle: ara arry bella belle, araminta: armida
middie minty ruminta, archibald: archie, archilles: killis, ariadne: ari arie, arielle: arie, aristotle: telly,
arizona: ona onie, arlene: arly lena, armanda: mandy, armena: arry mena, armilda: milly, arminda: mindie, arminta:
minite minnie, arnold: arnie, aron: erin ron ronnie, artelepsa: epsey, artemus: art, arthur: art, arthusa: thursa,
arzada: zaddi, asahel: asa, asaph: asa, asenath: assene natty sene, ashley: ashly leah lee, aubrey: bree, audrey:
audree dee, august: gus, augusta: aggy gatsy gussie tina, augustina: aggy gatsy gussie tina, augustine: august austin
gus, augustus: august austin gus, aurelia: aurilla ora orilla ree rilly, avarilla: rilla, azariah: aze riah, bab:
barby, babs: bab barby, barbara: bab babs barbie barby bobbie, barbery: barbara, barnabas: barney, bartholomew: bart
bartel mees meus, barticus: bart, bazaleel: basil, beatrice: bea trisha trix trixie, becca: beck, beck: becky,
bedelia: bridgit delia, belinda: belle linda, bella: belle, benedict: ben bennie, benjamin: ben benjy bennie benny
jamie, bernard: barney berney bernie berny, berney: bernie, bert: bertie bob bobby, bertha: bert bertie birdie,
bertram: bert, bertrand: randy, bess: bessie, beth: betsy betty, bethena: beth thaney, beverly: bev, bezaleel: zeely,
biddie: biddy, bill: billy fred willie, billy: fred, blanche: bea, bob: rob, bobby: bob rob, brad: ford, bradford:
brad ford, bradley: brad, brady: brody, breanna: bree bri, breeanna: bree, brian: bryan, brianna: bri, bridget: biddie
biddy bridgie bridie, brittany: britt brittnie, brittney: britt brittnie, broderick: brady brody rick ricky rod,
bryanna: ana anna bri briana brianna, caitlin: cait caity, caitlyn: cait caity, caleb: cal, california: callie,
calista: kissy, calpurnia: cally, calvin: cal vin vinny, cameron: cam ron ronny, camile: cammie, camille: cammie
millie, campbell: cam, candace: candy dacey, carla: carly karla, carlotta: lottie, carlton: carl, carmellia: mellia,
carmelo: melo, carmon: cammie carm, carol: carri carrie cassie kara kari lynn, carolann: carol carole, caroline: carol
carole carrie cassie lynn, carolyn: carrie cassie lynn, carrie: cassie, carthaette: etta etty, casper: jasper,
cassandra: cassie sandra sandy, cassidy: cass cassie, caswell: cass, catherine: casey cassie cathy kathy katy kay kit
kittie lena trina, cathleen: casey cassie cathy kathy katy kay kit kittie lena trina, cathy: kathy, cecilia: celia
cissy, cedric: ced rick ricky, celeste: celia lessie, celinda: linda lindy lynn, charles: carl charlie chuck, charlie:
charles chuck, charlotte: char lotta lottie, chauncey: chan, chelsey: chelsie, cheryl: cher, chesley: chet, chester:
chet, chick: chuck, chloe: clo, chris: kris, christa: chris, christian: chris kit, christiana: ann chris christy
crissy kris kristy tina, christiano: chris, christina: chris chrissy christy crissy kris kristy tina, christine: chris
chrissy christy crissy kris kristy tina, christoffer: chris, christoph: chris, christopher: chris kit, christy:
crissy, cicely: cilla, cinderella: arilla cindy rella rilla, claire: clair clara clare, clare: clara, clarence: clair
clare, clarinda: clara, clarissa: cissy clara, claudia: claud, clement: clem, clementine: clem clement, clifford:
cliff ford, clifton: cliff tony, cole: colie, columbus: clum, con: conny, conrad: con conny, constance: connie,
cordelia: cordy delia, corey: coco cordy ree, corinne: cora ora, cornelia: cornie corny nelia nelle nelly, cornelius:
con conny corny neil niel, cory: coco cordy ree, courtney: curt, crystal: chris crys stal tal, curtis: curt, cynthia:
cindy cintha, cyrenius: cene renius swene, dahl: dal, dalton: dahl dal, daniel: dan dann danny, danielle: dani ellie,
daphne: daph daphie, darlene: darry lena, david: dave davey, daycia: dacia daisha, deanne: ann dee, debbie: deb debby
debra, debby: deb, debora: deb debbie debby, deborah: deb debbie debby, debra: deb debbie, deidre: deedee, delbert:
bert del, delilah: dell della lil lila, deliverance: della delly dilly, della: adela dell, delores: dee dell della
lola lolly, delphine: del delf delphi, demaris: dea maris mary, demerias: dea maris mary, dennis: dennie denny,
dennison: dennis denny, derek: rick ricky, derick: rick ricky, derrick: eric rick ricky, diana: dicey didi, diane:
dian dicey didi, dicey: dicie, dick: rick, dickson: dick, domenic: dom nic, dominic: dom nic, dominick: dom nick
nicky, dominico: dom, donald: don donnie donny dony, donato: don, donna: dona, donovan: don donnie donny dony, dorcus:
darkey, dorinda: dora, doris: dora, dorothea: doda dora, dorothy: dolly dora dortha dot dottie dotty, dotha: dotty,
dotty: dot, douglas: doug, drusilla: silla, earnest: ernie, ebenezer: ebbie eben, edgar: eddie eddy, edith: edie edye,
edmond: eddie eddy, edmund: eddie eddy ned ted, edna: edny, eduardo: eddie eddy, edward: eddie eddy ned ted teddy,
edwin: eddie eddy ned win, edwina: edwin, edyth: edie edye, edythe: edie edye, egbert: bert burt, eighta: athy,
eileen: helen, elaine: helen lainie, elbert: albert bert, elbertson: bert elbert, eldora: dora, eleanor: elaine ellen
ellie lanna lenora nelly nora, eleazer: lazar, elena: helen, elias: eli lee lias, elijah: eli lige, elisa: lisa,
elisha: eli lish, elizabeth: bess bessie beth betsy betty eliza lib libby lisa liz liza lizzie lizzy, ellen: helen
nell nellie, ellender: ellen helen nellie, ellie: elly, ellswood: elsey, elminie: minnie, elmira: ellie elly mira,
elnora: nora, eloise: louise, elouise: louise, elsie: elsey, elswood: elsey, elvira: elvie, elwood: woody, elysia:
lisa lissa, elze: elsey, emanuel: manny manuel, emeline: emily emma emmy milly, emil: emily, emily: emma emmy mel
millie, emma: emmy, epaphroditius: dite ditus dyce dyche eppa, ephraim: eph, erasmus: rasmus raze, eric: rick ricky,
ernest: ernie, ernestine: erna ernest teeny tina, erwin: irwin, eseneth: senie, estella: essy stella, estelle: essy
stella, esther: essie hester, eudicy: dicey, eudora: dora, eudoris: dosie dossie, eugene: gene, eunice: nicie,
euphemia: effie effy, eurydice: dicey, eustacia: stacia stacy, eva: eve, evaline: eva eve lena, evangeline: evan
vangie, evelyn: eve, experience: exie, ezekiel: zeke, faith: fay, fallon: fal fallie fally falon lon lonnie, felicia:
fel feli felix, feltie: felty, ferdinand: ferdie fred freddie freddy, ferdinando: ferdie fred nando, fidelia: delia,
fionna: fiona, florence: flo flora flossy, floyd: lloyd, fran: frannie, frances: cissy fanny fran francie frankie
frannie franniey franny, francine: fran francie frannie franniey franny, francis: fran frank frankie, frankie: francis
frank, franklin: fran frank, franklind: fran frank, frederica: erica erika freddy frederick rickey, frederick: derick
erick fred freddie freddy fritz rick ricky, fredericka: ericka freda freddy frieda ricka rickey, frieda: fred freddie
freddy, gabriel: gabby gabe, gabriella: ella gabby, gabrielle: ella gabby, gareth: gare gary, garrett: barrett gare
garratt garret garry gary jerry rhett, garrick: garri, genevieve: eve jean jenny, geoffrey: geoff jeff, george:
georgie, georgiana: georgia, georgine: george, gerald: gerry jerry, geraldine: dina gerri gerrie gerry jerry,
gerhardt: gay, gertie: gert, gertrude: gert gertie trudy, gilbert: bert gil wilber, giovanni: gio, glenn: glen,
governor: govie, greggory: gregg, gregory: greg, gretchen: margaret, griselda: grissel, gum: monty, gus: gussie,
gustavus: gus gussie, gwen: wendy, gwendolyn: gwen wendy, hailey: haylee hayley, hannah: anna nan nanny, harold: hal
hap haps harry, harriet: hattie, harrison: hap haps harry, harry: hap haps henry, haseltine: hassie, haylee: hailey
hayley, hayley: hailey haylee, heather: hetty, helen: ella ellen ellie lena, helena: aileen eileen elaine ellen lena
nell nellie, helene: ella ellen ellie lena, heloise: eloise elouise lois, henrietta: etta etty hank henny nettie
retta, henry: hal hank hap haps harry, hephsibah: hipsie, hepsibah: hipsie, herbert: bert herb, herman: dutch harman,
hermione: hermie, hester: esther hessy hetty, hezekiah: hez kiah, hillary: hilary, hipsbibah: hipsie, honora: nora
norah norry, hopkins: hopp, horace: horry, hortense: harty tensey, hosea: hosey hosie, howard: hal howie, hubert: bert
hugh, ignatius: iggy nace nate natius, ignatzio: iggy nace naz, immanuel: emmanuel manuel, india: indie indy, iona:
onnie, irene: rena, irving: irv, irwin: erwin, isaac: ike zeke, isabel: bell bella belle issy nib nibby tibbie,
isabella: bella belle issy nib nibby tibbie, isabelle: bella belle issy nib nibby tibbie, isadora: dora issy, isadore:
izzy, isaiah: zadie zay, isidore: izzy, iva: ivy, ivan: john, jackson: jack, jacob: jaap jake jay, jacobus: jacob,
jacqueline: jack jackie jacqui, jahoda: hoda hodie hody, jakob: jake, jalen: alen jay jaye len lennie lenny, james:
jamie jem jim jimmie jimmy, jamey: james jamie, jamie: james, jane: janie jean jennie jessie, janet: jan jessie,
janice: jan, jannett: nettie, jasper: casper jap, jayme: jay, jean: jane jeannie, jeanette: janet jean jessie nettie,
jeanne: jane jeannie, jebadiah: jeb, jedediah: diah dyer jed, jedidiah: diah dyer jed, jefferey: jeff, jefferson: jeff
sonny, jeffery: jeff, jeffrey: geoff jeff, jehiel: hiel, jehu: hugh, jemima: mima, jennet: jenn jenny jessie,
jennifer: jen jenn jenni jennie jenny, jeremiah: jereme jerry, jeremy: jez jezza, jerita: rita, jerry: geri gerry,
jessica: jess jessie, jessie: jane janet jess, jillian: jill, jim: jimmie, jincy: jane, jinsy: jane, joan: nonie,
joanna: hannah joan jodi jody, joe: joey, johann: john, johannah: hannah joan jody nonie, johannes: john johnny
jonathan, john: ian jack jock johnny jon jonnie jonny, johnathan: john johnathon johny jon jonathan jonathon jonnie
jonny nathan, johnathon: john johnathan johny jon jonathan jonathon jonnie jonny, jon: johnny jonnie jonny, jonathan:
john johny jon jonathon jonnie jonny nathan, jonathon: john johny jon jonathan jonnie jonny, joseph: jody joe joey
jos, josephine: fina jody joey josey josie, josetta: jettie, joshua: joe jos josh, josiah: jos, josophine: joey josey,
joyce: joy, juanita: nettie nita, judah: jude juder, judith: juda jude judi judie judy, judson: jud sonny, julia: jill
jules julie, julian: jule jules, julias: jule jules, julie: jule jules julia, junior: june junie, justin: juston
justus, kaitlin: kait kaitie, kaitlyn: kait kaitie, kaitlynn: kait kaitie, kalli: cali kali, kameron: kam, karla:
carla carly, katarina: tina, kate: kay, katelin: kate kay kaye, katelyn: kate kay kaye, katherine: cassie cathy kate
kathy katy kay kaye kit kittie lena trina, kathleen: cassie cathy kathy katy kay kit kittie lena trina, kathryn: kate
kathy katie, katia: kate katie, katy: kate kathy katie, kayla: kay, kelley: kelli kellie kelly, kendall: ken kenny,
kendra: kay kenj kenji kenny, kendrick: ken kenny, kendrik: ken kenny, kenneth: ken kenny, kenny: ken, kent: ken
kenny, kerry: kerri, kevin: kev, keziah: kizza kizzie, kimberley: kim kimberli kimberly, kimberly: kim kimberley
kimberli, kit: kittie, kristel: kris, kristen: chris, kristin: chris, kristine: chris christy crissy kris kristy tina,
kristofer: chris kris, kristoffer: chris kris, kristopher: chris kris, kristy: chris, kymberly: kym, lafayette:
laffie, lamont: monty, laodicia: cenia dicy, latisha: tish tisha, laurel: laurie, lauren: laurie ren, laurence: larry
lon lonny lorne lorry, laurinda: laura lawrence, lauryn: laurie, laveda: veda, laverne: verna vernon, lavina: ina vina
viney, lavinia: ina vina viney, lavonia: vina viney vonnie wyncha, lavonne: von, lawrence: larry lawrie lon lonny
lorne lorry, leanne: annie lea, lecurgus: curg, leilani: lani, lemuel: lem, lenora: lee nora, leonard: len lenny leo
leon lineau, leonidas: lee leon, leonora: nell nellie nora, leonore: elenor honor nora, leroy: lee roy, lesley: les,
leslie: les, lester: les, letitia: lettice lettie tish titia, levi: lee, levicy: vicy, levone: von, lib: libby, lidia:
lyddy, lil: lilly lily, lillah: lil lilly lily lolly, lillian: lil lilly lolly, lilly: lil lily, linda: lindy lynn,
lindsay: lindsey lindsie lindsy, lindy: lynn, lionel: leon, lisa: liz, lizzie: liz, lois: lou, lonzo: lon, lorelei:
laurie lori lorrie, lorenzo: loren, loretta: etta lorie lorrie retta, lorraine: lorie lorrie, lotta: lottie, louis:
lewis lou louie, louisa: eliza lois lou, louise: eliza lois lou, louvinia: vina viney vonnie wyncha, lucas: luke,
lucia: lucy, lucias: luke, lucille: cille lou lucy, lucina: sinah, lucinda: cindy lou lucy, lucretia: creasey, luella:
ella lula, lunetta: nettie, lurana: lura, luther: luke, lydia: lyddy, lyndon: lindy lynn, mack: mac, mackenzie: kenzy
mac mack, maddison: maddi maddie, maddy: madge, madeline: lena maddi maddie maddy madge madie magda maggie maud,
madelyn: maddy madie, madison: maddy mattie, maegen: meg, magdalena: lena maggie, magdelina: lena madge magda maggie,
mahala: hallie, makayla: kayla, malachi: mally, malcolm: mac mal malc, malinda: lindy, manda: mandy, mandie: amanda,
manerva: eve minerva nerva nervie, manoah: noah, manola: nonnie, manuel: manny, marcus: marc mark, margaret: daisy
gretta madge maggie maggy marge margery margie margy meg midge peg peggy rita, margaretta: daisy gretta madge maggie
marge margery margie meg midge peg peggy rita, margarita: daisy greta madge maggie maisie marge margo meg megan metta
midge peggie rita, marge: margery, margie: marjorie, marguerite: peggy, mariah: maria mary, marian: marion, marie: mae
mary, marietta: mae mamie maria mariah marie marion mary maureen may mercy minnie mitzi mollie molly polly, marilyn:
mary, marion: mary, marissa: rissa, marjorie: margie margy, marni: marnie, marsha: marcia marcie mary, martha: marty
mattie patsy patty, martin: marty, martina: tina, marvin: marv, mary: mae mamie marie mitzi molly polly, masayuki:
masa, mat: mattie, mathew: matt maty, mathilda: patty tillie, matilda: matty maud tilla tilly, matthew: matt mattie
matty thias thys, matthews: matt mattie matty, matthias: matt thias thys, maud: middy, maureen: mary, maurice: morey,
mavery: mave, mavine: mave, maximilian: max, maximillian: max, maxine: max, maxwell: max, may: mae, mckenna: ken kenna
meaka, medora: dora, megan: meg, meghan: meg, mehitabel: hetty hitty mabel mitty, melanie: mellie, melchizedek: dick
zadock, melinda: linda lindy lynn mel mindy, melissa: lisa lissa mel milly missy, mellony: mellia, melody: lodi,
melvin: mel, melvina: vina, mercedes: merci mercy sadie, mervin: merv, mervyn: merv, michael: micah mick mickey micky
mike mikey, micheal: mike mikey miky, michelle: chelle mickey shelley shellie shelly shely, mick: micky, miguel: miggy
mike, mike: mick micky, mildred: milly, millicent: milly missy, minerva: minnie, miranda: mandy mira randi randy,
miriam: mimi mitzi mitzie, mitchell: mitch, mitzi: mary mittie mitty, mitzie: mittie mitty, monet: nettie, monica:
monna monnie, monteleon: monte, montesque: monty, montgomery: monty, morris: morey, mortimer: mort, moses: amos mose,
muriel: mur, myrtle: mert myrt myrti, nadine: deedee nada, nancy: ann nan nanny, naomi: omi, napoleon: leon nap nappy,
natalie: natty nettie, natasha: nat tasha, nathan: nat nate, nathaniel: nat nate nathan natty, nelle: nelly, nelson:
nels, newton: newt, nicholas: claas claes nic nick nickie nicky nico, nicholette: cole nichole nickey nicki nicky
nicole nikki, nicodemus: nic nick nickie nicky nico, nicolas: nic nick nickie nicky nico, nicole: cole nicki nicky
nikki nole, nikolas: claes nic nick nickie nicky nico, nikole: nikki, nora: nonie, norbert: bert norby, norbusamte:
norbu, norman: norm, nowell: noel, obadiah: diah dyer obed obie, obediah: obie, obedience: beda beedy biddie obed,
octavia: tave tavia, odell: odo, olive: livia nollie ollie, oliver: ollie, olivia: livia nollie ollie, onicyphorous:
cyphorus osaforum osaforus syphorous, orilla: ora rilly, orlando: roland, orphelia: phelia, ossy: ozzy, oswald: ossy
ozzy waldo, otis: ode ote, pamela: pam, pandora: dora, parmelia: amelia melia milly, parthenia: parsuny pasoonie
phenie teeny, patience: pat patty, patricia: pat patsy patti patty tricia trish trisha, patrick: paddy pat pate patsy
peter, patsy: patty, paul: polly, paula: lina polly, paulina: lina polly, pauline: polly, peggy: peg, pelegrine:
perry, penelope: penny, percival: percy, peregrine: perry, permelia: mellie melly milly, pernetta: nettie, persephone:
seph sephy, peter: pate pete, petronella: nellie, pheriba: ferbie pherbia, philadelphia: delphia, philander: fie,
philetus: leet phil, philinda: linda lindy lynn, philip: phil pip, philipina: penie phoebe pip, phillip: phil pip,
phoebe: fifi, pleasant: ples, pocahontas: pokey, posthuma: humey, prescott: pres scott scotty, priscilla: cilla cissy
prissy, providence: provy, prudence: prudy prue, rachel: shelly, rafaela: rafa, ramona: mona, randall: randy, randolf:
dolph randy, randolph: dolph randy, raphael: ralph, raymond: ray, reba: beck, rebecca: becca beck becky reba, reggie:
reg, regina: gina reggie, reginald: naldo reg reggie renny, relief: leafa, reuben: rube, rhoda: rodie, rhodella:
della, rhyna: rhynie, ricardo: rick ricky, rich: dick rick, richard: dick dickie dickon dicky rich richie rick ricky,
rick: ricky, ricky: dick rich, robert: bill billy bob bobby dob dobbin hob hobkin rob robby rupert, roberta: bert
bertie birdie birtie bobbie robbie roby, roberto: rob, roderick: erick rickie rod roddy, rodger: bobby hodge rod roge
roger, rodney: rod, roger: bobby hodge rod roge, roland: lanny rollo rolly, ron: ronnie ronny, ronald: naldo ron
ronnie ronny, rosa: rose, rosabel: belle rosa rose roz, rosabella: bella belle rosa rose roz, rosaenn: ann, rosaenna:
ann, rosalinda: linda rosa rose roz, rosalyn: linda rosa rose roz, roscoe: ross, rose: rosie, roseann: ann rose rosie
roz, roseanna: ann rose rosie roz, roseanne: ann, rosemary: marie mary rose rosemarie rosey, rosina: sina, roxane: rox
roxie, roxanna: ann rose roxie, roxanne: ann rose roxie, rudolph: dolph olph rolf rudy, rudolphus: dolph olph rolf
rudy, russell: russ, sabrina: brina, safieel: safie, salome: loomie, salvador: sal sally, sam: sammy, samantha: mantha
sam sammy, sampson: sam sammy, samson: sam sammy, samuel: sam sammy, samyra: myra sam sammy, sandra: sandy, sanford:
sandy, sarah: sadie sally sara, sarilla: silla, savannah: anna savanna vannie, scott: scottie scotty, sebastian: seb
sebby, serena: rena, serilla: rilla, seymour: morey, shaina: sha shay, sharon: sha shay, shaun: shawn, shawn: shaun,
sheldon: shelly, shelton: shel shelly tony, sheridan: dan danny sher, sheryl: cheri cherie sher sheri sherri, shirley:
lee shirl, sibbilla: sibbell sibbie sybill, sidney: sid syd, sigfired: sid, sigfrid: sid, sigismund: sig, silence:
liley, silvester: syl vester, simeon: sion, simon: sion, smith: smitty, solomon: sal saul sol solly zolly, sondra: dre
sonnie, sophia: sophie, sophronia: frona fronia sophia, stacey: staci stacie stacy, stacie: stacey staci stacy, stacy:
staci, stephan: steve, stephanie: annie steffi steffie steph stephani stephany stephie stephine stevie, stephen: steph
steve, steven: steph steve stevie, stuart: stu, sue: susie, sullivan: sully van, susan: sue sukey susie suzie,
susannah: hannah sue sukey susie, susie: suzie, suzanne: sue suki susie, sybill: sibbie, sydney: sid, sylvanus: syl,
sylvester: syl vessie vester, tabitha: tabby, tamarra: tammy, tammie: tami tammy, tammy: tami tammie, tanafra: tanny,
tasha: tash tashie, ted: teddy, temperance: tempy, terence: terry, teresa: terry tess tessa tessie, terri: teri terrie
terry, thaddeus: thad, theodora: dora, theodore: ted teddy theo, theodosia: dosia theo, theophilus: ophi, theotha:
otha, theresa: terry tess tessa tessie thirza thursa traci tracie tracy, thom: tom tommy, thomas: thom tom tommy,
thomasa: tamzine, tiffany: tiff tiffy, tilford: tillie, tim: timmy, timothy: tim timmy, tisha: tish, tobias: toby,
tom: tommy, tony: anthony, tranquilla: quilla trannie, trix: trixie, tryphena: phena, unice: nicie, uriah: riah,
ursula: sula sulie, valentina: felty val vallie, valentine: felty, valeri: val valerie, valerie: val, vanburen: buren,
vandalia: vannie, vanessa: essa nessa vanna, vernisee: nicey, veronica: franky frony ron ronie ronna ronnie ronny
vonnie, vic: vicki vickie vicky, vicki: vickie vicky, victor: vic, victoria: tori torie torri torrie tory vic vicki
vickie vicky, vijay: vij, vincent: vic vin vince vinnie vinny, vincenzo: vic vin vince vinnie vinny, vinson: vin vince
vinnie vinny, viola: ola, violetta: lettie, virginia: ginger ginny jane jennie virgy, vivian: viv, waldo: ossy ozzy,
wallace: wally, wally: walt, walter: wally walt, webster: webb, wendy: wen, wesley: wes, westley: farmboy wes, wilber:
bert will, wilbur: will willie willy, wilda: willie, wilfred: fred wil will willie, wilhelm: wil willie, wilhelmina:
mina minnie willie wilma, will: bill fred willie, william: bela bell bill billy wil will willie willy, willie: fred,
willis: bill willy, wilson: will willie willy, winfield: win winny, winifred: freddie winnet winnie, winnifred: fred
freddie freddy winnie winny, winton: wint, woodrow: drew woody, yeona: ona onie, yoshihiko: yoshi, yulan: lan yul,
yvonne: vonna, zach: zack zak, zachariah: zac zach zachy zack zak zakk zeke, zachary: zac zach zachy zack zak zakk
zeke, zachery: zac zach zachy zack zak zakk zeke, zack: zach zak, zebedee: zeb, zedediah: diah dyer zed, zephaniah:
zeph
"""
