"""The clauses of a sentence that tell ages, each with the one whose age it is (“Eve was a baby, I was eleven”).

An age is of the subject of its own clause: what the teller says of herself stays hers, whoever is named before it, and
what is said of somebody with a name is that one's. So a sentence is taken apart before a clause with a subject of its
own that tells an age. What has no subject (“about one”) is of whom the sentence begins with, where nobody else is told
of between. Subjects and verbs are those of the reader of dates, in all its languages; the other words are ours, from
what is said in each language (common practice, no source).
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.dates.ages import STAGES
from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.evidence.leaning import Leaning, pieces, pieces_of_names
from boxlore.core.evidence.sentences import Sentence, teller_of
from boxlore.core.people.who_is_where.kin_words import own_relation

COUNT = frozenset(("day",))
ABOUT = frozenset(("about", "about_behind", "doubt"))
_OF_AN_AGE = COUNT | STAGES
_JOINT = re.compile(
    r"(?:,|;|:|\s[–—-])\s+(?:(?:and|but|und|aber|ja|aga|et|mais|y|pero|e|og|och|men|en)\s+)?"
    r"|\s+(?:and|und|ja|et|y|e|og|och|en)\s+",
    re.IGNORECASE,
)
_ONE = re.compile(r"\b(was|is|about|only|just) one(?= year old\b|[,;:]|\s[–—-]\s| and\b|$)")
"""“Eve was one” tells an age, “Eve was one of seven” none; and the reader of dates has “one” for no number."""
LAP = re.compile(
    r"\b(?:on|in) (?:(?:(?:her|his|my|their) )?[^\W\d_]+['’]s|her|his|my|their) (?:lap|knees?|arms?)\b"
    r"|\bauf (?:dem|ihrem|seinem|meinem|Mutters) (?:Schoß|Arm)\b|\b(?:ema|isa|minu) süles\b"
    r"|\bsur (?:les|mes|ses) genoux\b|\bdans (?:les|mes|ses) bras\b|\ben (?:los )?brazos\b",
    re.IGNORECASE,
)
"""Where a child is, which tells of nobody else."""
_SMALL = re.compile(
    r"^(?:(?:our|my|the|dear|little|young|wee|small|baby|klein\w*|väike|petite?|peque\w+) )+(?=\w)", re.IGNORECASE
)
_A_BABY = re.compile(r"(?<=\w),? (?:a|ein|un|une) (?P<stage>baby|bébé|bebé|toddler|newborn)$", re.IGNORECASE)
_NOUN = re.compile(
    r"^(?P<who>[\w'’ ]+?) (?:was|is|war|ist|oli|on|était|est|era|es) (?:an? |the |eine? |une? |una )?"
    r"[^\W\d_]+(?: [^\W\d_]+)?, (?P<age>[^,]+)$"
)
"""“Father was a young man, about 24”."""
_OPEN = re.compile(
    r"(?:when|as|before|after|until|than|or|if|maybe|perhaps|als|bevor|nachdem|oder|vielleicht|kui|enne|pärast|või|"
    r"quand|avant|après|ou|peut-être|cuando|antes|después|o|quizá|not|nicht|mitte|pas|no)\b",
    re.IGNORECASE,
)
"""How words behind an age begin that tell when it was, or that leave it open."""
_WHO = re.compile(r"^(?P<before>.+), (?:who|die|der|qui|que|kes) (?P<rest>(?:was|had|is|war|était|tenía|oli)\b.+)$")
_TWINS = re.compile(
    r"(?:^|^.*\b(?:of|der|des|de los|de las) )(?:the |die |les |los |las )?"
    r"(?:twins|zwillinge|kaksiku\w*|jumeaux|jumelles|gemelos|gemelas|mellizos|tvillingarna|tvillingerne|gemelli|gemelle)\b",
    re.IGNORECASE,
)
_EACH = {
    "were": "was", "waren": "war", "olid": "oli", "avaient": "avait", "tenían": "tenía", "var": "var",
    "avevano": "aveva",
}  # fmt: skip
"""What is said of several, and what of one of them."""
_OF_MANY = re.compile(
    rf"^(?:da )?(?:(?:they|sie|nad|ils|elles|de|loro) )?(?P<verb>{'|'.join(_EACH)})(?: sie)? |^at ", re.IGNORECASE
)


def _of_each(part: str) -> str:
    """What is said of two, as it is of each: “da waren sie vierzehn” is “war vierzehn”."""
    many = _OF_MANY.match(part)
    verb = _EACH[many["verb"].casefold()] if many and many["verb"] else "was"
    return f"{verb} {_OF_MANY.sub('', part)}"


def clauses(sentence: Sentence, leaning: Leaning, shown: Sequence[str]) -> list[Sentence]:
    """The sentence, taken apart before each clause with a subject of its own that tells an age."""
    words = _ONE.sub(r"\1 1", sentence.words)
    first = lex(nfc(words))[:1]
    if not leaning.may_be_an_age(words) or any("when" in token.kinds for token in first):
        return [sentence]
    joints = [joint for joint in _JOINT.finditer(words) if _begins_a_clause(words[joint.end() :], leaning, shown)]
    ends = [*(joint.start() for joint in joints), len(words)]
    parts = [words[begins:end] for begins, end in zip((0, *(joint.end() for joint in joints)), ends, strict=True)]
    told = sentence.as_told or sentence.words
    return [
        replace(sentence, words=part, as_told=told, before=" ".join((sentence.before, *parts[:at])).strip())
        for at, part in enumerate(parts)
    ]


def _begins_a_clause(words: str, leaning: Leaning, shown: Sequence[str]) -> bool:
    """Whether the teller, or somebody in the picture, is the subject of what follows up to the next joint, and an age
    or a stage of life is told of them."""
    joint = _JOINT.search(words)
    clause = words[: joint.start()] if joint else words
    tokens = lex(nfc(clause))
    if not any(token.is_any(_OF_AN_AGE) for token in tokens) or not any("was" in token.kinds for token in tokens[:4]):
        return False
    if any("i" in token.kinds for token in tokens[:3]):
        return tokens[0].kinds not in ({"name"}, {"when"})
    head = next(iter(pieces(clause)), "")
    return not leaning.named(head, [head], "").keys().isdisjoint(shown)


def whole_ages(words: str) -> Iterator[str]:
    """Less of what somebody is told of with whom words begin: without what stands behind an age, or between."""
    plain = " ".join(LAP.sub("", words).split()).replace(" ,", ",")
    if plain != words:
        yield plain
    if _A_BABY.search(plain):
        yield _A_BABY.sub(r" as a \g<stage>", plain)
    who, comma, age = plain.partition(", ")
    if comma and _is_an_age_in_units(age):
        yield f"{who} was {age}"
    if (noun := _NOUN.match(plain)) and is_an_age(noun["age"]):
        yield f"{noun['who']} was {noun['age']}"
    for joint in _JOINT.finditer(plain):
        if any(token.is_any(_OF_AN_AGE) for token in lex(nfc(plain[: joint.start()]))):
            behind = plain[joint.end() :]
            if joint[0].strip()[:1] in (",", ";", ":", "–", "—", "-") and not _leaves_it_open(behind):
                yield plain[: joint.start()]
            return


def _leaves_it_open(behind: str) -> bool:
    return bool(_OPEN.match(behind)) or any(token.is_any(COUNT) for token in lex(nfc(behind))[:1])


def is_an_age(words: str) -> bool:
    """“About nine”, “thirty or so”, and nothing else: an estimate without a subject."""
    tokens = lex(nfc(words))
    is_alone = all(token.is_any(_OF_AN_ESTIMATE) for token in tokens)
    is_hers = any("i" in token.kinds for token in tokens) and any("was" in token.kinds for token in tokens)
    has_both = any(token.is_any(COUNT) for token in tokens) and any(token.is_any(ABOUT) for token in tokens)
    return is_alone and has_both and not is_hers


def _is_an_age_in_units(words: str) -> bool:
    """“A few months old”, and nothing else."""
    tokens = lex(nfc(words))
    return all(token.is_any(_OF_UNITS) for token in tokens) and any("years_old" in token.kinds for token in tokens)


_OF_UNITS = COUNT | ABOUT | {"few", "unit", "numbered", "years_old", "noise"}
_OF_AN_ESTIMATE = COUNT | ABOUT | {"or", "comma", "noise", "i"}


def of_whom(sentence: Sentence, leaning: Leaning, shown: Sequence[str]) -> list[Sentence]:
    """The sentence with the name of whom it is of: of each of two who are told of as twins, of whom “who” stands for,
    and without a small word before a name."""
    told = sentence.as_told or sentence.words
    persons = [person for ident in shown if (person := leaning.person(ident)) is not None]
    if (twins := _TWINS.match(sentence.words)) and len(persons) == len(shown) == 2:
        parts = [part for part in sentence.words[twins.end() :].strip(" ,").split(", ") if leaning.may_be_an_age(part)]
        return [
            replace(sentence, words=f"{person.name} {_of_each(part)}", as_told=told, of=(person.id,))
            for part in parts[:1]
            for person in persons
        ]
    if who := _WHO.match(sentence.words):
        last = pieces(who["before"])[-1]
        meant = [person for person in persons if last in pieces_of_names([person])]
        if len(meant) == 1:
            return [replace(sentence, words=f"{meant[0].name} {who['rest']}", as_told=told, of=(meant[0].id,))]
    if small := _SMALL.match(sentence.words):
        rest = sentence.words[small.end() :]
        head = next(iter(pieces(rest)), "")
        is_there = not leaning.named(head, [head], teller_of(sentence.view)).keys().isdisjoint(shown)
        if is_there and not own_relation(head):
            return [replace(sentence, words=rest, as_told=told)]
    return [sentence]
