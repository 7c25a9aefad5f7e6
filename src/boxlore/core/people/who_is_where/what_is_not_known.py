"""Words that say what the teller does not know: they are nobody's name.

    , I don't know the others         ; others, and a verb of knowing: nobody; the answer is kept whole (`words_left`)
    not sure , but I think it's …     ; the doubt is of whoever is told behind it
    , den Namen weiß ich nicht        ; a name, and such a verb: a note on whoever was told without one before it

What stands between two commas, points or dashes is looked at as a whole, and behind an `and` if names stand before it.
Common practice, from memory; no source.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.people.names.tokens import token_of, tokens_of
from boxlore.core.people.names.words_table import KIN_WORDS
from boxlore.core.people.who_is_where.position_words_table import NOUNS
from boxlore.core.people.who_is_where.small_words_table import ARTICLES, BUT, ENDEARMENTS, IS, SUBJECTS, THESE
from boxlore.core.people.who_is_where.tokens import PLACES, Element

_OTHERS = frozenset(
    "otro otra others other rest remaining anderen andern andere ubrigen teised teisi ulejaanud ulejaanuid "
    "autre autres reste otros otras demas resto altri altre outros outras overigen andre ovrige resten andra ovriga "
    "else anyone sonst keinen keiner niemanden niemand personne "
    "muut muita loput остальные остальных других другие reszta reszty innych inni pozostalych parejos parejie "
    "parejo citus kitus kiti kitu likusiu ostatni ostatnich tobbiek tobbit tobbieket tobbi hina hinir eile".split()
)
"""The rest of those in the picture."""

_NAME = frozenset(
    "name names surname namen nachnamen vornamen nimi nime perekonnanime nom prenom nombre apellido nome "
    "cognome sobrenome naam voornaam achternaam navn efternavn namn efternamn nimea sukunimea имя имени "
    "фамилию фамилии imienia imie nazwiska nazwisko vards vardu uzvardu vardo pavardes jmeno prijmeni nevet "
    "neve nevere nafnid nafn ainm ingoa".split()
)
_FAMILY_NAME = frozenset(
    "surname nachnamen perekonnanime apellido cognome sobrenome achternaam efternavn efternamn sukunimea "
    "фамилию фамилии nazwiska nazwisko uzvardu pavardes prijmeni".split()
)
KNOWING = frozenset(
    "know knew known idea think kenn acuerdo remember recall recognise recognize forget forgotten "
    "kenne kennt erkenne weiss erinnere "
    "vergessen tunne tea maleta maletan unustanud connais connait reconnais sais oublie rappelle conozco "
    "reconozco recuerdo olvide se conosco riconosco ricordo dimenticato conheco reconheco lembro esqueci ken "
    "herken weet vergeten kender husker glemt kjenner kanner minns vet glomt tieda tunnista muista unohtanut "
    "знаю помню узнаю забыл забыла znam poznaje pamietam wiem zapomnialem zapomnialam zinu pazistu atceros "
    "aizmirsu nezinu nepazistu neatceros zinau prisimenu pamirsau nezinau neprisimenu neznam nepoznavam "
    "neatsimenu nepamenu "
    "nepamatuji nevim zapomnel ismerem emlekszem elfelejtettem thekki man gleymt aithnim dearmad".split()
)
"""Verbs of knowing, in the first person, of which the sense is the same with and without a `not`."""

STRANGERS = frozenset(
    "strangers stranger fremde fremd voorad inconnus inconnu desconocidos extranos sconosciuti estranei desconhecidos "
    "vreemden onbekend onbekenden fremmede ukendte ukjente frammande okanda tuntemattomia vieraita незнакомые чужие "
    "неизвестные obcy nieznani svesi svesinieki nepazistami nezinami svetimi nezinomi "
    "tundmatud inconnues desconocidas sconosciute "
    "tuntematonta unbekannte cizi neznami idegenek".split()
)
"""People whom nobody knows: `the rest are strangers`."""

_WHOM = frozenset(
    "di dont cuyo whose deren dessen wiens hvis vars jonka die den das wen qui que che dien som keda kelle "
    "которого которую ktorego ktora kuru kurio koho akit sem whom".split()
)
"""Behind a comma, with such a verb: `eine Frau, die ich nicht kenne`."""

_PARTS = ("comma", "end", "dash", "colon")


def without_what_is_not_known(elements: Sequence[Element]) -> list[Element]:
    """The elements without those who are told to be unknown and others; that a name is not known as a note."""
    kept: list[Element] = []
    told = _without_asked_before_but(_without_first_doubt(_each_as_one(elements)))
    parts = list(_parts(told))
    asked = [n for n, part in enumerate(parts[1:]) if _asks_who(parts[n], part)]
    for n, part in enumerate(parts):
        if n in asked or n - 1 in asked:
            places = [piece for piece in part if piece.kind in PLACES]
            kept += [*places, replace(parts[n + 1][1], text="?")] if places and n in asked else []
            continue
        at = _begins(part)
        said = part[at:]
        if _tells_not_known(said, _OTHERS) or _heads_others(part, elements):
            kept += part[:at]
        elif _is_a_remark(said, kept):
            kept.append(replace(said[1], kind="note", text=_text(said[1:]), end=said[-1].end, inside=()))
        else:
            kept += _with_notes(part)
    return kept


def _each_as_one(elements: Sequence[Element]) -> list[Element]:
    """The elements, each sentence of not knowing as one: `Jag vet inte vem det är`, `Nevím, kdo to je`, `I couldn't
    tell you, love`."""
    kept: list[Element] = []
    at = 0
    while at < len(elements):
        element = elements[at]
        if element.kind != "unknown" or not says_not_known(element):
            kept.append(element)
            at += 1
            continue
        if kept and kept[-1].kind == "me" and (len(kept) == 1 or kept[-2].kind in _PARTS):
            kept.pop()
        kept.append(element)
        at = _end_of_question(elements, at + 1)
    return kept


def says_not_known(piece: Element) -> bool:
    """`не знаю`, `non so`: a verb of knowing, or several words; not `unknown`, which is somebody."""
    words = piece.plain.split()
    return len(words) > 1 or not KNOWING.isdisjoint(words)


def _end_of_question(elements: Sequence[Element], at: int) -> int:
    """Behind `who that is` and behind a word of endearment, up to a mark; `at` itself where something else follows."""
    begins = at + (elements[at : at + 1] != [] and elements[at].kind == "comma")
    end = next((end for end in range(begins, len(elements)) if elements[end].kind in _PARTS), len(elements))
    said = elements[begins:end]
    if len(said) == 1 and begins > at and not said[0].is_large:
        is_asked = said[0].kind == "unknown" and said[0].plain.split()[0] in _WHO  # `kes see on`
        return end if is_asked or said[0].plain in ENDEARMENTS else at
    asks = bool(said) and (said[0].plain in _WHO or elements[at - 1].plain.split()[-1] in _WHO)
    if begins > at and said and said[0].plain in _HOW and not any(map(_may_tell_somebody, said)):
        return end
    if begins > at and not (said and said[0].plain in _WHO):
        return at
    small = all(piece.kind == "verb" or piece.plain in _ASKED | _WHO | IS | THESE | SUBJECTS for piece in said)
    return end if asks and small else at


_HOW = frozenset("what how wie kuidas mis comment como come hoe hvad hva vad mika как jak kaip ka hogyan hogy".split())
"""Words of a question of how somebody is called: `Не помню, как её зовут`."""


def _may_tell_somebody(piece: Element) -> bool:
    return piece.is_large or piece.kind in (*PLACES, "and", "with") or bool(NOUNS.get(piece.plain))


_ASKED = frozenset(
    "they people is are was it this that these those be on see seda pildil fotol there here in picture photo the "
    "bild auf dem das da la foto sur photo sulla op de foto pa billedet bildet bilden kuvassa na zdjeciu obrazku "
    "attela nuotraukoje снимке фото на ser tama tuo nuo nama need tas ta tai cia ten".split()
)
"""Small words of a question that names nobody: `who these people are`."""


def tells_nothing_known(elements: Sequence[Element]) -> bool:
    """Whether an answer says no more than that nobody is known: `No idea who these people are`; not where somebody is
    named, or a place is told."""
    opens = elements[:1] != [] and elements[0].kind == "unknown"
    asks = elements[:1] != [] and elements[0].plain in _WHO  # `Wer das ist, weiß ich nicht`
    opens = opens or (asks and any(piece.kind == "unknown" for piece in elements))
    return opens and not any(
        (piece.is_large and piece.kind == "word" and at) or piece.kind in (*PLACES, "number", "note")
        for at, piece in enumerate(elements)
    )


def says_nobody(note: str) -> bool:
    """Whether what is told of somebody unknown is no description: `sorry` of `don't know sorry`."""
    tokens = tokens_of(note)
    return not any(NOUNS.get(token.plain) or token.plain in KIN_WORDS or not token.is_small for token in tokens)


def _without_first_doubt(elements: Sequence[Element]) -> list[Element]:
    """`Not sure, but I think that's Tom`: Tom alone, in doubt, and nobody unknown before him."""
    kept: list[Element] = []
    for element in elements:
        before = [piece for piece in kept[-_DOUBT_LEADS:] if piece.kind != "comma"]
        leads = [piece.kind for piece in before[-2:]] == ["unknown", "word"] and before[-1].plain in BUT
        if element.kind == "unsure" and leads:
            while kept[-1].kind != "unknown":
                kept.pop()
            kept.pop()
        kept.append(element)
    return kept


_DOUBT_LEADS = 3


def _without_asked_before_but(elements: Sequence[Element]) -> list[Element]:
    """`Not sure who the man is but the woman is Kate`: what is told behind `but` alone."""
    kept = list(elements)
    for at in reversed(range(len(kept) - 1)):
        asked = {kept[at + 1].plain, *kept[at].plain.split()} & _WHO
        if kept[at].kind != "unknown" or not asked:
            continue
        end = next((end for end, piece in enumerate(kept) if end > at and piece.kind in _PARTS), len(kept))
        but = next((but for but in range(at, end) if kept[but].plain in BUT), 0)
        if but and not any(_is_called(piece) for piece in kept[at + 1 : but]):
            del kept[at : but + 1]
    return kept


def _asks_who(part: Sequence[Element], behind: Sequence[Element]) -> bool:
    """`кто на снимке, не знаю`: a question, and behind a comma that nobody knows."""
    words = [piece for piece in part if piece.kind not in _PARTS]
    is_asked = bool(words) and words[0].plain in _WHO
    is_asked = is_asked and not any(map(_is_called, words[1:]))
    return is_asked and [piece.kind for piece in behind] == ["comma", "unknown"]


def _is_called(piece: Element) -> bool:
    """A large word that is no noun of German (`wer der Mann ist`)."""
    return piece.is_large and NOUNS.get(piece.plain) != "one"


_WHO = frozenset(
    "who wer wen kes keda qui quien quienes chi quem wie hvem vem kuka keta kas кто kto kim kdo kym ki kit hver".split()
)


def _heads_others(part: Sequence[Element], elements: Sequence[Element]) -> bool:
    """`остальные —`, before those others are named."""
    words = [piece for piece in part if piece.kind not in _PARTS and piece.plain not in ARTICLES]
    if len(words) != 1 or words[0].plain not in _OTHERS or words[0].is_large:
        return False
    behind = next((element for element in elements if element.start >= words[0].end), None)
    return behind is not None and behind.kind == "dash"


def _parts(elements: Sequence[Element]) -> Iterator[list[Element]]:
    """What stands between the marks, each with the mark before it."""
    part: list[Element] = []
    for element in elements:
        if element.kind in _PARTS and part:
            yield part
            part = []
        part.append(element)
    if part:
        yield part


def _with_notes(part: list[Element]) -> list[Element]:
    """`un homme que je ne connais pas` with the words behind the noun as a note."""
    at = next((at for at, element in enumerate(part) if at and NOUNS.get(part[at - 1].plain) == "one"), len(part))
    said = part[at:]
    end = next((end for end, element in enumerate(said) if element.kind in ("and", "with")), len(said))
    of_whom = bool(said[:end]) and said[0].plain in _WHOM and _tells_not_known(said[:end], KNOWING)
    if not of_whom and not (said[:end] and _tells_not_known(said[:end], _NAME)):  # `a noiva não me lembro do nome`
        return part
    note = replace(said[0], kind="note", text=_text(said[:end]), end=said[end - 1].end, inside=())
    return [*part[:at], note, *said[end:]]


def _begins(part: Sequence[Element]) -> int:
    """Behind the last `and` or `with` where somebody is named before it, and behind a comma and `and` where somebody is
    described (`, and a neighbour whose name I forget`); else at the beginning."""
    if [element.kind for element in part[:2]] == ["comma", "and"] and any(
        NOUNS.get(element.plain) == "one" for element in part[2:]
    ):
        return 1
    joins = [at for at, element in enumerate(part) if element.kind in ("and", "with") and at]
    named = [at for at, element in enumerate(part) if element.is_large and token_of(element.text).is_given]
    return next((at for at in reversed(joins) if named and named[-1] < at), 0)


def _tells_not_known(part: Sequence[Element], of_what: frozenset[str]) -> bool:
    plains = {word for element in part for word in element.plain.replace("’", "'").split()}
    plains |= {word.rpartition("'")[2] for word in plains}
    says = bool(plains & KNOWING) or any(element.kind == "unknown" for element in part)
    says = says or (of_what is _OTHERS and bool(plains & STRANGERS))
    names = any(element.is_large and token_of(element.text).is_given and element.kind == "word" for element in part)
    return bool(says and plains & of_what and not names)


def _is_a_remark(said: Sequence[Element], kept: Sequence[Element]) -> bool:
    """Whether it is told of whoever stands before it that she, or her name, is not known."""
    if len(said) < 2 or said[0].kind not in _PARTS:
        return False
    of_whom = said[0].kind == "comma" and said[1].plain in _WHOM and _tells_not_known(said, _WHOM)
    return of_whom or (_tells_not_known(said, _NAME) and _is_of_her(kept, said))


def _is_of_her(kept: Sequence[Element], said: Sequence[Element]) -> bool:
    """Whether it is said of whoever was told before: somebody without a name, or it is the family name."""
    start = next((at for at in range(len(kept) - 1, -1, -1) if kept[at].kind in (*_PARTS, "and", "with")), -1)
    before = kept[start + 1 :]
    named = any(element.is_large and token_of(element.text).is_given for element in before)
    return bool(before) and (not named or any(element.plain in _FAMILY_NAME for element in said))


def _text(part: Sequence[Element]) -> str:
    return " ".join(element.text for element in part)
