"""Short and pet forms of given names, folded; each row: the full form, then what people say for it.

Common practice, from memory; no source. Used to propose that two entries may be one person, never to decide it,
and to find the names of the living under forms that nobody told us.
"""

SHORT_FORMS: tuple[tuple[str, ...], ...] = tuple(
    tuple(line.split())
    for line in """
abigail abby gail
agnes aggie nessie
albert al bert bertie
alexander alex alec sandy sasha
alfred alf alfie fred
andrew andy drew
anna ann anne annie nan nancy anni annike
anthony tony
archibald archie
arthur art
barbara barb babs barbie
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
magdalena lena magda leena
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
peter pete peeter peet
philip phil pip
raymond ray
rebecca becky
richard dick dickie rich rick rob
robert bob bobby rob robbie bert
ronald ron ronnie
rose rosie rosa
ruth ruthie
samuel sam sammy
sarah sally sadie
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
william bill billy will willie liam villem
winifred win winnie freda
""".strip().splitlines()
)

ORDINARY = frozenset(
    "al art bell bill bob chuck con daisy dick dolly dot drew em eve fanny flo gail gene hank jack jerry jo kit lou "
    "mark mart may meg mia mike mina minnie molly nan nat ned nick pat paddy peg pip ray reet rich rick rita rob rose "
    "sandy sue ted tilly tim tori will win".split()
)
"""Forms that are also words, or other people's whole names: alone they point to nobody."""
