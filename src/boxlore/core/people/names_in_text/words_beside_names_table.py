"""Words that stand beside names, by what they say of them; folded, from memory of each language (common practice, no
source). They are closed classes, the small words of a language and the kinds of things, not names of things."""

from boxlore.core.people.names.words_table import FAMILY_WORDS

WITH = frozenset(
    "with mit avec con com med z ze s с со met koos kanssa cu cum με beside by von przez od от par di de door af av "
    "van".split()
)
"""Before whom one is with, and who made something."""
AT_A_FAMILYS = frozenset("bei chez hos bij u у visiting".split())
"""Before a family at whose house one is."""
AT_PEOPLES = AT_A_FAMILYS | frozenset("with mit avec con com med z с kanssa koos".split())
"""Before people, also in words about a place."""
OF_FAMILIES = FAMILY_WORDS | frozenset("familjen perekonna οικογενεια عايلة משפחת משפחה".split())
"""What a family is called, before its name."""
OF_MANY = frozenset("the die les los las i gli de οι os".split())
"""Articles of many."""
OF_MANY_ALIKE = frozenset("les los dei i gli os".split())
"""The same in languages whose families have no plural: `les Morvan`."""
OF = frozenset("of from de di von aus uit av af z из".split())
BORN = frozenset("nee geb geborene born fodt fodd sundinud synt urodzona рожд урожд".split())
"""Before the name that somebody had before marrying."""
GREETINGS = frozenset("birthday love dear hi hello thanks bye merci danke kallis rakas hola ciao".split())
LITTLE = frozenset(
    "little wee baby old young our dear love grandma poor big small dearest happy birthday kleine kleiner klein kleinen "
    "petit petite piccola piccolo pequena pequeno lille lilla vaike pikku mala maly маленькая маленькии".split()
)
"""What somebody is called in fondness, before the name."""
JOINS = frozenset("and & + und ja et y e og och i и un ir a n".split())
TITLES_ALONE = frozenset("mr mrs ms miss mme mlle herr frau fru sr sra proua rouva pani rev dr prof".split())
"""Titles that are nothing else, also in small letters."""
ARTICLES = frozenset("the a an der die das el la le il lo les los".split())
AT = frozenset("in at to near from en nach".split())
SEEN = frozenset("in from after before during im am en sous en na w по".split())
"""Between a place and the time or the side from which it is seen."""
SEEN_FROM = frozenset(("from", "after"))
SEASONS = frozenset(
    "spring summer autumn winter morning evening dawn rain snow frost fog flood january february march april june july "
    "august september october november december".split()
)
ARTICLES_BEHIND = frozenset("the la le les der die das il el η ο".split())
"""Behind a place and a comma, before what is seen there: `Florence, the Duomo`."""
GIVING = frozenset("from for to".split())
"""Before who gave a thing, or whose it is, where no more is told: `from ross`."""
SEEN_AT = frozenset(
    "street streets road beach bridge wharf races harbour station church hotel town city river lake bay port market "
    "square main gardens park island isle county district valley".split()
)
"""Behind a place and a comma, what is seen there: `Lawrence, main street`."""
MONTHS = frozenset("january february march july september october november december januar februar".split())
"""Months that nobody is called by."""
STREETS = frozenset("streets roads sts rds avenues".split())
WORKS = frozenset(
    "play opera film movie novel book story tale poem song hymn ballet operetta musical pantomime drama comedy tragedy "
    "pageant costume programme program performance rehearsal copy page chapter reading theatre theater cinema puppet "
    "schauspiel oper roman marchen buch theaterstuck auffuhrung lied piece livre conte chanson obra libro novela "
    "cuento dramma romanzo sztuka powiesc ksiazka naidend raamat etendus lavastus kirja naytelma pjas bok "
    "спектакль опера роман книга пьеса балет фильм сказка песня повесть".split()
)
"""What people write, play and sing."""
WORKS_END = ("theater", "theatre", "oper", "schauspiel", "roman")
GOODS = frozenset(
    "tractor truck lorry bus car motor motorbike motorcycle engine locomotive aeroplane airplane plane van sedan "
    "saloon ute bike bicycle camera film machine sponge apple apples pear pears cheese chair desk boots hat rifle gun "
    "pistol terrier spaniel retriever collie sheep cattle cow bull rose roses pattern wireless radio gramophone "
    "typewriter mower plough reaper binder harvester stove range watch clock piano organ violin".split()
)
"""What is called after who makes it, or bred it first."""
HOLY = ("свят", "swiet", "αγι", "sankt", "puha", "svat", "szent", "παναγ")
"""How words before somebody holy begin, or are, in any case."""
SMALL_IN_GREEK = frozenset("ο η το οι τα του τησ τον την των με στο στη στην στον και".split())
"""With which a Greek sentence begins."""
OF_FILES = frozenset("jpg jpeg png tif tiff webp img dsc dscf scan pict photo".split())
"""What stands in names of files."""
