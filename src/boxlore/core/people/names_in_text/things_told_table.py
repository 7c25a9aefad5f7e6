"""What things, waters, weather and seasons do and are in many languages, folded, and nobody is told to do or to be.

What somebody may be told of too, in earnest or in a figure, is left out: one freezes, melts, dries, ripens, is muddy, is
long. From memory of the school dictionaries of each language; no source. A word that ends in `-` stands for all that
begin so.
"""

DO: dict[str, str] = {
    "en": "bloomed blooms flowered withered wilted ripened rotted crumbled silted eroded overflowed flowed flows sprouted "
    "germinated",
    "de": "bluht- erbluht- verbluht- verwelkt- welkte welkten verrottet- floss flossen fliesst fliessen heulten wuchert- "
    "uberflutet- vereiste vereisten versandet-",
    "nl": "bloeide bloeiden bloeit verwelkt- stroomde stroomt rotte rotten verzandde",
    "sv": "blommade blommar vissnade ruttnade porlade porlar brusade brusar forsade forsar hoggs plojdes revs byggdes "
    "planterades svammade",
    "nb": "blomstret blomstrer visnet ratnet bruste bruser fosset fosser",
    "da": "blomstrede blomstrer visnede radnede bruste bruser plojedes byggedes faeldedes",
    "et": "oits- narbus narbusid kohis- voola- sulises- vulises- tarkas tarkasid lehtis raagus jaatus madanes- istutati "
    "raiuti niideti kunti ehitati lammutati kaevati asfalteeriti",
    "fi": "kohis- kukki- kuihtu- virtas- tulvi- lahos- kaadettiin kynnettiin rakennettiin purettiin raivattiin niitettiin",
    "fr": "fleuriss- refleuri- pourriss- murissai-",
    "it": "fioriva fiorivano fiorisc- sboccia- appassi- scorreva scorre scorrevano straripo stariparono",
    "es": "florec- marchit- deshelab- deshiela-",
    "pl": "kwitl- zakwitl- zwiedl- przekwitl- cwierka- kwitn- rozkwit- topnial- szumial- uschl- wyschl- zmurszal- huczal-",
    "cs": "kvetl- rozkvetl- zvadl- odkvetl- taly tekla teklo tekly hucel hucela sumel sumela uschl- vyschl-",
    "ru": "цвел цвела цвели цвело цветет цветут расцвел- завял- отцвел- распустился распустилась распустились журчал- "
    "засох- высох- обмелел- разлился разлилась разлились замерзло",
    "uk": "цвiла цвiли цвiте розквiтл- танув танула дзюрчал- засох- висох- розлилась розлився",
    "lv": "ziedeja zied noviita novita aizsala izkusa teceja nogatavojas izzuva",
    "lt": "zydejo zydi nuvyto uzsalo istirpo tekejo osia prinoko istvino",
    "hu": "viragz- elhervadt befagyott elolvadt kizoldult",
}
"""What plants, waters and weather do, or have done to them."""

ARE: dict[str, str] = {
    "en": "stony rocky wooded marshy steep icy slippery shallow overgrown paved unpaved impassable ploughed plowed unploughed",
    "de": "steinig sandig sumpfig bewaldet steil vereist zugefroren verschneit seicht uberschwemmt zugewachsen gepflastert unpassierbar gepflugt gemaht "
    "schneereich regnerisch verregnet",
    "nl": "steil dichtgevroren besneeuwd ondiep overstroomd overwoekerd geplaveid drooggevallen",
    "sv": "stenig sandig sank brant isbelagd tillfrusen oversvammad igenvuxen plojd torrlagd snorik spegelblank snoig regnig",
    "nb": "bratt bratte islagt oversvommet gjengrodd ployd snorik",
    "da": "stejl tilfrossen lavvandet oversvommet tilgroet plojet snerig",
    "et": "kivine liivane soine ujutatud jarsk korge jaine uleujutatud kuntud niidetud lumerohke udune vihmane jaatunud sillutatud kallaste",
    "fi": "kivinen hiekkainen soinen metsainen jyrkka jainen umpeenkasvanut kynnetty niitetty runsasluminen vahaluminen sateinen",
    "fr": "caillouteu- sablonneu- marecageu- boisee enneige- glissant- inonde- pave- laboure- asseche- ensoleill- pluvieu- neigeu-",
    "it": "sassos- sabbios- paludos- ghiacciat- ripid- innevat- scivolos- allagat- lastricat- arat- piovos- nevos-",
    "es": "pedregos- arenos- pantanos- empinad- nevad- resbaladiz- inundad- empedrad- arad- labrad- lluvios-",
    "pl": "kamienist- piaszczyst- bagnist- zalesion- strom- zamarzniet- oblodzon- sniezn- mrozn- sliska slisko plytk- zalan- zarosniet- brukowan- zaoran- dluga "
    "dlugie deszczow-",
    "cs": "kamenit- piscit- bazinat- zalesnen- strm- zamrzl- zledovatel- snezn- mraziv- kluzk- melk- zaplaven- zarostl- dlazden- zoran- destiv-",
    "ru": "каменист- песчан- болотист- лесист- обледенел- снежн- морозн- скользк- мелководн- заросш- мощен- вспахан- дожд- долг- студен- вьюжн-",
    "uk": "обледенiл- снiжн- морозн- слизьк- мiлк- зорана зоране довга",
    "lv": "akmenain- smilsain- stav- aizsal- apledoj- snieg- slidena sekla parpludu- aizaug- brug- uzart- iestadit-",
    "lt": "akmening- smelet- stat- uzsal- aplede- snieg- slid- seklus sekli uzlieta apaug- grist- suart- pasodint-",
    "hu": "meredek befagyva jeges havas csuszos sekely felszantva",
}
"""What a hill, a road, a water or a season is."""

WAS: dict[str, str] = {
    "en": "is was", "de": "ist war wird wurde", "nl": "is was wordt werd", "sv": "ar var blev", "nb": "er var ble",
    "da": "er var blev", "et": "on oli", "fi": "on oli", "fr": "est etait fut", "it": "e era fu", "es": "es era estaba esta fue",
    "pl": "jest byl byla bylo byly", "cs": "je byl byla bylo byly", "ru": "был была было были выдалась выдалось",
    "uk": "був була було були", "lv": "ir bija", "lt": "yra buvo", "hu": "volt",
}  # fmt: skip
"""Words between a thing and what it is."""

WERE: dict[str, str] = {
    "en": "are were", "de": "sind waren wurden", "nl": "zijn waren werden", "fr": "sont etaient furent",
    "it": "sono erano furono", "es": "son eran estan estaban fueron", "pl": "sa byly", "cs": "jsou byly",
}  # fmt: skip
"""What several are: of one person it is told in another form."""

VERY: dict[str, str] = {
    "en": "very so too still always quite rather", "de": "sehr so zu noch immer ganz recht", "nl": "heel zeer zo te nog",
    "sv": "mycket sa for alltid helt ganska", "nb": "veldig sa for alltid helt", "da": "meget sa for altid helt",
    "fr": "tres si trop toujours toute tout", "it": "molto cosi troppo sempre tutta tutto", "es": "muy tan demasiado siempre",
    "pl": "bardzo tak zbyt zawsze", "cs": "velmi tak moc prilis vzdy", "ru": "очень так слишком всегда",
    "uk": "дуже так занадто завжди", "lv": "loti tik parak vienmer", "lt": "labai tokia toks per visada", "hu": "nagyon",
}  # fmt: skip
"""What stands before a quality. In Estonian and Finnish any word may, since a quality of something else has its case."""
ANY_BETWEEN = frozenset(("et", "fi"))
