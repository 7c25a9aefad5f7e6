"""Clues of whose wedding a picture is of, where that is told in words: “Granny and Granddad on their wedding day”.

The couple must be told: by names, by words of kin of whoever tells (“my parents' wedding”), or by one of the two who
married once; of several who may be meant by “Granny”, who is in the picture is. Where more is said than that it is
their wedding, nothing follows: a guest, a cake and an anniversary are of another day. The picture was taken on the day
or close by (`events.BESIDE`). The words are ours, from what is said in each language (common practice, no source).
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.evidence.claims import Claim, after, of_item, weaker
from boxlore.core.evidence.events import BESIDE
from boxlore.core.evidence.leaning import Leaning, pieces, pieces_of_names
from boxlore.core.evidence.sentences import Sentence, teller_of, who_is_shown
from boxlore.core.evidence.told_dates import told
from boxlore.core.evidence.weddings import day_of
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Sure

_WEDDING = re.compile(
    r"\b(?:in (?:her|his|the|a|my) wedding (?:dress|gown|clothes)|"
    r"wedding(?:[ -](?:day|picture|photo|photograph|portrait|morning))?|marriage|"
    r"just married|frisch verheiratet|vastabiellunu\w{1,4}|recién casados|"
    r"bride and (?:bride)?groom|as (?:a |the )?bride|bridal (?:pair|couple)|newly[- ]?weds|getting married|"
    r"hochzeit(?:s(?:bild|foto|tag|tage|paar|kleid))?|trauung|brautpaar|als braut|"
    r"pulma(?:pilt|pildil|foto|fotol|päev|päeval|paar)?|pulmad|pulmas|laulatus(?:el|pilt)?|pruutpaar|"
    r"(?:photo |portrait )?(?:de |du )?(?:leur |son )?mariage|noces|jeunes mariés|"
    r"häät|häissä|hääkuva|hääpäivä\w*|bröllop(?:et|sbild|sfoto|sdag)?|brudpar(?:et)?|bryllup(?:et|sbilde|sbillede|sdag)?|"
    r"brudepar(?:ret|et)?|bruiloft|trouw(?:foto|dag)|huwelijk|boda|casamiento|matrimonio|nozze|casamento|"
    r"свадьб\w{1,3}|венчани\w|ślub\w{0,3}|wesele|svatb\w{1,2}|kāz\w{1,3}|vestuv\w{1,3})\b",
    re.IGNORECASE,
)
_ANOTHER_DAY = re.compile(
    r"\b(?:anniversar\w+|silver|golden|gold|diamond|ruby|pearl|before|after|until|since|not|no|never|"
    r"silberne?\w?|goldene?\w?|vor|nach|nicht|kuld\w*|hõbe\w*|enne|pärast|mitte|d['’]or|d['’]argent|avant|après|pas|"
    r"guests?|hopea\w*|kulta\w*)\b",
    re.IGNORECASE,
)
_AT = re.compile(r"\b(?:at|bei|auf|à|au|på|en la|op|na)\s", re.IGNORECASE)
"""Whoever stands before such a word may be a guest."""
_THEIRS = frozenset("their oma nende leur deres hun loro".split())
_HERS = _THEIRS | frozenset("her his ihrem ihrer ihren seiner seinem son hennes hans haar su suo sua".split())
_PARENTS = re.compile(
    r"\b(?:(?:my|our|meiner?|unserer?|minu|meie|mes|nos|mis|mina|mine|mijn|meus|moich|mých)\s+)?(?P<who>"
    r"(?P<old>grand-?parents|grosseltern|großeltern|vanavanema(?:d|te)|grands-parents|abuelos|nonni|avós|isovanhem\w+|"
    r"mor- och farföräldrar|besteforeldre\w*|bedsteforældre\w*|grootouders|dziadk\w+|prarodič\w+)|"
    r"parents|folks|eltern|vanema(?:d|te)|padres|genitori|pais|vanhem\w+|föräldrar\w?|foreldre\w*|forældre\w*|ouders|"
    r"родител\w+|rodzic\w+|rodič\w+|vecāk\w+|tėv\w{2,4})\b['’]?s?",
    re.IGNORECASE,
)
OURS = frozenset(
    """our my unser unsere unserer meine meiner meie minu notre nos mon ma nuestra mi vårt vores vår min mit ons onze
    nostro mio nosso meu наша моя nasz nasze mój mūsu mana mūsų mano naše moje""".split()
)
"""Words that say that it is the teller's own."""
_OWNER = re.compile(r"\w+['’]s\b")
_SMALL = frozenset(
    """the a an on of in at her his their my our from and day und am auf ihrem ihrer ihren seiner seinem an dem der die
    das von vom ja oma nende le la les de du des et leur son sur photo photograph picture portrait here this is that it
    was s reverend rev mr mrs miss dr frau herr fräulein taken y e en och og i и con el los il di da do und zur zum mein
    meine meiner minu meie mes mon ma mis mi mio mia foto bild pilt""".split()
)


def clues(record: Record, sentences: Sequence[Sentence], leaning: Leaning) -> Iterator[Claim]:
    shown = who_is_shown(record)
    for sentence in sentences:
        if sentence.view.field in ("title", "story", "occasion"):
            couple = couple_in(sentence.words, leaning, narrator=teller_of(sentence.view), shown=shown)
            if couple:
                claim = told(sentence.view, f"{record.number} is of a wedding: “{one_line(sentence.words)}”")
                limits = after(of_item(record.id), day_of(couple), -BESIDE, BESIDE)
                yield replace(claim, sure=weaker(claim.sure, Sure.LIKELY), limits=limits)


def couple_in(words: str, leaning: Leaning, *, narrator: str, shown: Sequence[str]) -> tuple[str, ...]:
    """The couple whose wedding the words tell of; empty where they tell of none, or of more than that."""
    match = _WEDDING.search(words)
    if match is None or _ANOTHER_DAY.search(words):
        return ()
    parts = [part.strip() for part in f"{words[: match.start()]} § {words[match.end() :]}".split(",")]
    at = next(place for place, part in enumerate(parts) if "§" in part)
    *guests, whose = _AT.split(parts[at])
    hers = _HERS & set(pieces(whose))
    before = [", ".join((*parts[:at], *guests, whose))] if hers or not guests else []
    own = leaning.weddings.couples_of(narrator)
    is_ours = bool(OURS & set(pieces(_OWNER.sub("", whose)))) and set(pieces(whose)) <= _SMALL | OURS
    if len(own) == 1 and not guests and is_ours:
        return own[0]  # “our wedding”, not “Ma's wedding”
    for said in (whose, *before):
        meant, is_plain = _persons(said, leaning, narrator)
        if not is_plain:
            return _only_couple(leaning, shown) if hers & _THEIRS and not guests else ()
        if meant:
            return _couple(meant, leaning, shown) if len(meant) > 1 or not hers & _THEIRS or not guests else ()
    return _only_couple(leaning, shown) if hers & _THEIRS and not guests else ()


def _only_couple(leaning: Leaning, shown: Sequence[str]) -> tuple[str, ...]:
    """The couple that a picture is of and of nobody else, whatever the two are called (“Granny and Grandfer on their
    wedding day”)."""
    couples = {couple for ident in shown for couple in leaning.weddings.couples_of(ident) if set(couple) == set(shown)}
    return couples.pop() if len(couples) == 1 else ()


def _couple(meant: Sequence[set[str]], leaning: Leaning, shown: Sequence[str]) -> tuple[str, ...]:
    """The couple of whom everybody is that is meant; of several, the one that is in the picture."""
    everybody = set().union(*meant)
    couples = {couple for ident in everybody for couple in leaning.weddings.couples_of(ident)}
    couples = {couple for couple in couples if all(idents & set(couple) for idents in meant)}
    if len(couples) > 1:
        couples = {couple for couple in couples if set(couple) & set(shown)}
    return couples.pop() if len(couples) == 1 else ()


def _persons(words: str, leaning: Leaning, narrator: str) -> tuple[list[set[str]], bool]:
    """Whoever is told in words, each with everybody who may be meant; and whether nothing else is told."""
    if match := _PARENTS.search(words):
        rest = words[: match.start()] + words[match.end() :]
        meant = _parents(leaning, narrator, is_old=bool(match["old"]))
        names_of = pieces_of_names(who for ident in set().union(*meant) if (who := leaning.person(ident)))
        return meant, bool(meant) and set(pieces(rest)) <= _SMALL | names_of
    by_kin = leaning.kin_told(words, narrator)
    meant = [set(idents) for idents in by_kin.values()]
    named = leaning.named(words, pieces(words), narrator)
    names = {piece: set[str]() for piece in pieces(words)}
    for ident, person in named.items():
        if not any(ident in idents for idents in meant):
            first = next(piece for piece in names if piece.startswith(tuple(pieces_of_names([person]))))
            names[first].add(ident)
    known = (*pieces_of_names(named.values()), *(piece for phrase in by_kin for piece in pieces(phrase)))
    left = [piece for piece in pieces(words) if piece not in _SMALL and not piece.startswith(known)]
    return [*meant, *filter(None, names.values())], not left


def _parents(leaning: Leaning, narrator: str, *, is_old: bool) -> list[set[str]]:
    """Both parents of whoever tells; or the mothers and the fathers of both, each of whom has the other."""
    teller = leaning.person(narrator)
    if teller is None:
        return []
    children = [parent for ident in teller.parents if (parent := leaning.person(ident))] if is_old else [teller]
    pairs = [child.parents for child in children if len(child.parents) == 2]
    return [set(side) for side in zip(*pairs, strict=True)] if pairs else []
