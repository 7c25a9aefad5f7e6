"""The small words around names in who stands where, which are no part of a name: `then`, `the`, `of him`, `all`, `two`.

Folded (`core.statements.fold`), of every language together. Common practice of captions, from memory; no source.
"""

LEADS = frozenset(
    "then next but also first finally lastly and we have dann danach aber siis aga puis ensuite mais luego despues pero "
    "poi depois mas dan daarna maar derefter men deretter sedan sitten mutta ko затем потом но potem ale tad tada bet "
    "pak potom".split()
)
"""Words before a name that go on with the list: `then Ruth`."""

ARTICLES = frozenset(
    "the an der die das den dem le la les l' el los las lo il gli i o os as a het de ein eine einen une un una um uma een en "
    "et det".split()
)
"""Articles before a name, a word of kin, or somebody unknown."""

THE = frozenset("the der die das den dem le la les l' el il lo het de".split())
"""Articles that say that one and no other is meant."""

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
"""Whether a relation (`name_words_table.KIN_WORDS`) or a word for a kind of people is of a woman or a man."""

PRONOUNS = tuple(
    (
        "of him|of her|of them|of me|of us|him|them|me|ihm|ihr|ihnen|mir|uns|lui|elle|eux|elles|moi|"
        "nous|di lei|di lui|di loro|de ella|de el|de ellos|ella|dele|dela|deles|hem|hen|mij|ons|hende|"
        "ham|dem|mig|henne|honom|ham|meg|hanen|heidan|ним|неи|ними|нею|nim|nia|nimi|niego|niej|nich|"
        "vina|vinas|vinu|jo|jos|ju|nim|ni|nimi|temast|neist|minust|meist|hanesta|heista|minusta|ia"
    ).split("|")
)
"""Words behind a row or a side that say whose: `in front of him`."""

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
            "two zwei kaks deux dos due dois duas twee to tva kaksi два две dwa dwie dwoje dwoch divi divas du dvi dva dve rua",
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

PEOPLE_IN_ALL = frozenset("people persons of us in all personen inimest personnes personas persone pessoas".split())

NO_NOUNS = frozenset(("père",))
"""Words whose accent makes them no noun of several people: `père` is no Estonian `pere`."""

FINNISH_KIN = frozenset(
    "aiti isa sisko velje seta eno tati mummo mummi ukki vaari vaimo miehe poika tyttare serkku isoisa isoaiti".split()
)
"""Kin words that say whose by an ending: `setäni`, my uncle."""

HOLDING = frozenset(
    (
        "holding", "carrying", "holds", "is holding", "hugging", "tient", "tenant", "halt", "tragt", "hoiab", "sostiene",
        "tiene en brazos", "segura", "houdt", "holder", "haller", "pitaa sylissaan", "держит", "trzyma", "tur", "laiko", "drzi",
    )
)  # fmt: skip
"""Words before somebody who is held, and so has no place of her own in a row."""

POSTPOSITIONS = frozenset("taga ees takana edessa".split())
"""Estonian and Finnish rows that may stand behind a name in the genitive: `Meeta taga`, behind Meeta."""

BEFORE_EXACTLY = {"är": "verb", "è": "verb", "é": "verb", "È": "verb", "É": "verb", "I": "me"}
"""Words whose accent makes them another word than the folded one: as told -> the class."""
