"""Words of kin in the cases of their languages: `babičce`, `močiutei`, `mummolla`, `Omas`.

A row is a language: what is written for what at the end of its words of kin (each ending of the plain word, and those
of its other cases), and the words. Letters are folded. Declensions of the school grammars, from memory.
"""

from functools import cache

_ROWS: tuple[tuple[str, str], ...] = (
    (  # German
        "* s",
        "oma opa grossmutter grossvater mutter vater mama papa mutti vati omi opi tante onkel schwester bruder uroma "
        "uropa",
    ),
    (  # Danish, Norwegian, Swedish
        "* s",
        "mor far farmor farfar mormor morfar bestemor bestefar bedstemor bedstefar mamma pappa oldemor oldefar faster "
        "moster farbror morbror tante onkel soster syster bror",
    ),
    ("* s", "oma opa moeder vader mama papa grootmoeder grootvader tante oom zus broer"),  # Dutch
    (  # Estonian
        "* l le lt ga ks sse s st ni na|ode oel oele oelt oega oe|vend venna vennal vennale vennalt vennaga",
        "ema isa vanaema vanaisa memme taat tadi onu ode vend vanavanaema vanavanaisa",
    ),
    (  # Finnish
        "iti idin idilla idille idilta idista itia|aari aarin aarilla aarille aarilta aarista aaria"
        "|appa apan apalla apalle apalta apasta appaa|kki kin killa kille kilta kista kkia"
        "|seta sedalla sedalle sedalta setaa|tati tadin tadilla tadille tadilta tatia"
        "|sko skon skolla skolle skolta skoa|eli eljen eljella eljelle eljelta eljea"
        "|* n lla lle lta sta a ta",
        "aiti isa mummo mummi mummu vaari pappa ukki isoaiti isoisa mamma tati seta eno sisko veli",
    ),
    (  # Polish
        "cia ci cie|dek dka dkowi dkiem dku|jek jka jkowi jkiem jku|jciec jca jcu jcem|tka tki tce tke|ma my mie me mo"
        "|ta ty cie te to|stra stry strze stre|rat rata ratu ratem racie|sia si sie",
        "babcia dziadek prababcia pradziadek mama tata ojciec matka ciocia ciotka wujek siostra brat mamusia",
    ),
    (  # Latvian
        "ina inas inai inu ina|ma mas mai mu|ate ates atei ati|evs eva evam evu|tis ta tim ti|asa asas asai asu"
        "|alis ala alim ali|ante antes antei anti",
        "vecmamina vecamamma vecmate mamma mamina mate tevs tetis vectevs masa bralis tante",
    ),
    (  # Lithuanian
        "te tes tei te|ele eles elei|elis elio eliui eli|ma mos mai ma|ina inos inai|tis cio ciui ti|evas evo evui eva"
        "|uo ers eriai eri|olis olio oliui oli",
        "mociute bobute senele senelis mama motina tetis tevas sesuo brolis",
    ),
    (  # Czech
        "ka ky ce ku kou ko|cek cka ckovi cku ckem ckuv ckova ckove ckovou ckovo"
        "|nek nka nkovi nku nkem nkuv nkova nkove nkovou"
        "|ma my me mu mou|ta ty tovi tu tou"
        "|deda dedy dedovi dedu dedou|tec tce tci tcem|tra try tre tru trou|tr tra trovi trem"
        "|ka cin cina cino ciny cine",
        "babicka maminka matka prababicka teta dedecek tatinek mama tata deda otec sestra bratr pradedecek",
    ),
    (  # Russian, of whom something is
        "шка шкин шкина шкино шкины шкиного шкином|ма мин мина мино мины|па пин пина пино пины"
        "|дя дин дина дино|тя тин тина тино",
        "бабушка дедушка мама папа дядя тетя",
    ),
)
"""Rows of `plain-ending other-ending …`, `*` for none, then the words."""


@cache
def plain_forms() -> dict[str, str]:
    """A word of kin in another case, folded, → the plain word; one that is another plain word is left out."""
    forms: dict[str, str] = {}
    plain: set[str] = set()
    for endings, words in _ROWS:
        for word in words.split():
            plain.add(word)
            for row in endings.split("|"):
                ending, *others = row.split()
                end = ending.removeprefix("*")
                if word.endswith(end):
                    forms |= {f"{word.removesuffix(end)}{other}": word for other in others}
    return {form: word for form, word in forms.items() if form not in plain}
