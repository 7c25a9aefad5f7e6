"""Clues of ages and stages that are told of somebody in a picture (“Liisi looks about five”, “Ants as a baby”).

Each sentence is read as a date that leans on a birth (`leaning`), with the words that only point at the picture left
out; what is not read so is looked through for an age as `core.rules.ages_told` does. In a story an age counts only of
somebody who is in the picture or who tells it: others are told of who were never there.

An age that is told plainly is taken as right within a year, for the birthday and the memory; one that is estimated is
wrong the more the older somebody is. SLACK is common practice, no source; it is wider than what was measured: people
who estimated ages from photographs were wrong by 4.7 years in the mean where many were children, and by 7.2 with
adults (H. Han, C. Otto, A. Jain, “Age Estimation from Face Images: Human vs. Machine Performance”, 2013; the figures
from memory). A baby or a small child may be a year older than the reader of dates has it. The words are ours, from
what is said in each language (common practice, no source).
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.evidence.age_clauses import COUNT, clauses, is_an_age, of_whom, whole_ages
from boxlore.core.evidence.ages_beside_names import told_beside_names
from boxlore.core.evidence.claims import Claim, after, of_birth, of_item, weaker, years_after
from boxlore.core.evidence.even_years import YEAR, days
from boxlore.core.evidence.events import BESIDE
from boxlore.core.evidence.leaning import Lean, Leaning, pieces, pieces_of_names
from boxlore.core.evidence.network import Limit
from boxlore.core.evidence.occasions import is_an_occasion
from boxlore.core.evidence.sentences import Sentence, has_something_denied, is_somebody, teller_of, who_is_shown
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person, Registry
from boxlore.core.people.who_is_where.item_words import is_noun_of_one
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.people.who_is_where.small_words_table import ARTICLES
from boxlore.core.records.item_record import Record
from boxlore.core.rules.ages_told import whose_ages
from boxlore.core.statements import Sure

SLACK = ((2, 1), (6, 2), (12, 3), (19, 4), (39, 8), (200, 12))
"""Up to an age in years, how many years more or fewer an estimate may mean."""
HALF_A_YEAR = days(183)

_AGED = re.compile(
    r"[\d\u0080-\uffff]|\b(?:baby|infant|toddler|newborn|little|small|expecting|carrying|pregnant|years?|aged?|teens|\w+ties|"
    r"at|was|is|looks|about|turned|birthday|aasta\w*|vana|jahr\w*|kind|bébé|ans?)\b|, [\w-]+\Z",
    re.IGNORECASE,
)
"""Words without one of which no age is looked for, so that long stories cost little."""


def clues(record: Record, sentences: Sequence[Sentence], people: Registry, leaning: Leaning) -> Iterator[Claim]:
    read: set[tuple[str, int]] = set()
    for sentence in (part for whole in sentences for part in _one_by_one(whole, leaning, who_is_shown(record))):
        if _AGED.search(sentence.words) and not TAKEN_BACK.search(sentence.view.words):
            for claim, lean in _of_sentence(record, sentence, leaning):
                read.add((sentence.view.statement, lean.years))
                yield claim
    for sentence in told_beside_names(record, leaning):
        if not any(statement == sentence.view.statement for statement, _ in read):
            for claim, lean in _of_sentence(record, sentence, leaning):
                read.add((sentence.view.statement, lean.years))
                yield claim
    for view, age, person in whose_ages(record, people):
        is_denied = _IT_IS_NOT.search(view.words) or has_something_denied(view.words) or TAKEN_BACK.search(view.words)
        if (view.statement, age.years) in read or is_denied:
            continue
        limits = _limits(record, of_birth(person.id), age.years, is_about=bool(age.slack))
        words = f"{person.name} in {record.number}: “{one_line(age.words)}”"
        sure = weaker(view.sure, Sure.LIKELY) if age.slack else view.sure
        yield replace(told(view, words), sure=sure, limits=limits)


_LISTED = re.compile(r", (?:and |und |ja |et |y )?| (?:and|und|ja|et|y|e|og|och) ")
_EACH = re.compile(
    r"(?P<who>[^\W\d_][\w'’ -]*?)(?P<verb> (?:was|is|war|ist|oli|on|avait|a|looks|tenía|tiene|aveva|ha|var|är))?"
    r"(?: (?:about|only|just|etwa|ungefähr|umbes|environ|unos|circa|ungefär|omkring))? "
    r"(?P<age>[\w-]+(?:['’]anni)?)"
    r"(?P<unit> (?:years? old|jahre?(?: alt)?|aastane|aastat? vana|ans?|años?|anni|år))?",
    re.IGNORECASE,
)


def _one_by_one(sentence: Sentence, leaning: Leaning, shown: Sequence[str]) -> Iterator[Sentence]:
    """The parts of “David was three, Judy seven and Peter ten”, each with its verb; “about nine” with the name of the
    only one who is there; the clauses of any other sentence."""
    only = leaning.person(shown[0]) if len(shown) == 1 else None
    is_alone = sentence.is_first and sentence.view.field == "story"
    if only is not None and is_alone and is_an_age(sentence.words):
        words = f"{only.name} was {sentence.words[:1].lower()}{sentence.words[1:]}"
        yield replace(sentence, words=words, as_told=sentence.words)
        return
    parts = [_EACH.fullmatch(part) for part in _LISTED.split(sentence.words)]
    if len(parts) < 2 or not all(part and _is_somebodys_age(part, leaning, shown) for part in parts):
        for clause in clauses(sentence, leaning, shown):
            yield from of_whom(clause, leaning, shown)
        return
    for part in filter(None, parts):
        words = part[0] if part["verb"] else f"{part['who']} was {part['age']}{part['unit'] or ''}"
        yield replace(sentence, words=words, as_told=sentence.words)


def _is_somebodys_age(part: re.Match[str], leaning: Leaning, shown: Sequence[str]) -> bool:
    who = part["who"]
    is_there = bool(_ME.fullmatch(who)) or not leaning.named(who, pieces(who), "").keys().isdisjoint(shown)
    return is_there and any(token.is_any(COUNT) for token in lex(nfc(part["age"])))


def _limits(record: Record, birth: str, years: int, *, is_about: bool) -> tuple[Limit, ...]:
    slack = next(most for oldest, most in SLACK if years <= oldest) if is_about else 1
    return years_after(of_item(record.id), birth, max(years - slack, 0), years + 1 + slack)


def _of_sentence(record: Record, sentence: Sentence, leaning: Leaning) -> Iterator[tuple[Claim, Lean]]:
    teller = teller_of(sentence.view)
    shown = who_is_shown(record)
    goes_on = sentence.is_first or (len(shown) == 1 and _goes_on_of(sentence, leaning.person(shown[0])))
    beside = shown if goes_on else ("", *shown)
    head = next(iter(pieces(sentence.words)), "")
    is_of_somebody = bool(own_relation(head)) or any(ident in shown for ident in leaning.named(head, pieces(head), ""))
    is_of_the_only_one = len(shown) == 1 and bool(_SHE.match(sentence.words))
    is_then = leaning.may_name_an_event(sentence.before) and not POINTING.search(sentence.words)
    if _HERS_ALONE.fullmatch(sentence.words):
        return  # “Vera's hat”, though “hat” is six in Hungarian
    if is_then or _COMPARED.search(sentence.words):  # “We moved to Elm Row. I was ten.”
        return
    if _HE.search(sentence.words) and _ALSO_SHE.search(sentence.words) and not is_of_somebody:
        return  # “he was six, she thirty”, of one of whom nobody knows which it is
    is_told = is_of_somebody or is_of_the_only_one
    shown = (*shown, *sentence.of)
    for words in filter(leaning.may_be_an_age, as_the_reader_has_it(sentence.words, is_of_somebody=is_told)):
        for lean in leaning.of(words, narrator=teller, shown=sentence.of or beside):
            if not may_be(leaning.person(lean.person), words) or not _is_of_one_alone(words, lean, leaning):
                continue
            is_said = lean.person == teller and bool(_I_SAY.match(sentence.words))  # “I say twenty-five”, of another
            if is_said or not _counts(lean, sentence, shown, teller, leaning):
                continue
            claim = told(
                sentence.view, f"{lean.name} in {record.number}: “{one_line(sentence.as_told or sentence.words)}”"
            )
            is_likely = lean.is_asked or lean.is_about or lean.years < 0 or sentence.view.field == "story"
            yield (
                replace(
                    claim, sure=weaker(claim.sure, Sure.LIKELY) if is_likely else claim.sure, limits=_of(record, lean)
                ),
                lean,
            )
            return


_NUMBERS = frozenset(("day", "ordinal", "decade", "infant", "small"))


def _is_of_one_alone(words: str, lean: Lean, leaning: Leaning) -> bool:
    """Whether nobody and nothing else is named before the age (“Ivy’s dog, aged five”, “worked there for ten years”),
    nor behind one of which the reader asks."""
    person = leaning.person(lean.person)
    known = tuple(pieces_of_names([person] if person else []))
    is_behind = False
    for token in lex(nfc(words)):
        if token.is_any(_NUMBERS):
            _, *beside = _BESIDE_HER.split(words[: token.end])
            if any(map(is_somebody, beside[-1:])):
                return False  # “Ivy and a boy of about ten”
            if not lean.is_asked:
                return True
            is_behind = True
        told_here = pieces(words[token.start : token.end])
        is_unknown = token.kinds == {"name"} and not any(piece.startswith(known) for piece in told_here)
        if is_unknown and is_behind:
            return False  # “when I was five Ivy gave me this picture”, of which the reader asks
        if is_unknown and not own_relation(" ".join(told_here)):
            return lean.least is not None and lean.least < 0  # “Ivy was carrying Ned” has a verb of its own
    return True


_PRONOUNS = {
    "male": frozenset("she her hers elle hon hun она ella zij ona viņa lei".split()),
    "female": frozenset("he his him il han он él hij jis viņš lui".split()),
}
"""Words that begin a sentence of somebody who is not of that sex."""


def may_be(person: Person | None, words: str) -> bool:
    """Whether nothing in the words is said of a man or a woman that a person, who is not named there, is not."""
    if person is None or person.sex not in _PRONOUNS:
        return True
    told = pieces(words)
    is_named = any(piece.startswith(tuple(pieces_of_names([person]))) for piece in told)
    return is_named or not _PRONOUNS[person.sex] & {*told[:1]}


def _counts(lean: Lean, sentence: Sentence, shown: Sequence[str], teller: str, leaning: Leaning) -> bool:
    """Whether a lean is an age, or a time before a birth that the mother is in the picture of, and of one it can be."""
    if lean.is_birthday and sentence.view.field in ("occasion", "title"):
        return False  # `occasions` has it
    if lean.least == lean.most == 0:
        return False  # “I was born here”
    if (
        not lean.person
        or lean.least is None
        or lean.most is None
        or (lean.is_of_calendar and lean.years < 0 and lean.least < 0)
    ):
        return False
    if sentence.view.field == "title" or lean.person in shown or lean.person == teller:
        return lean.least >= 0 or lean.is_about or (lean.most <= 31 and lean.least > -YEAR)
    child = leaning.person(lean.person)
    return lean.least > -YEAR and lean.most <= 31 and child is not None and bool(set(child.parents) & set(shown))


def _of(record: Record, lean: Lean) -> tuple[Limit, ...]:
    assert lean.least is not None and lean.most is not None
    if lean.is_birthday:
        return after(of_item(record.id), lean.on, lean.years * YEAR - BESIDE, lean.years * YEAR + BESIDE)
    if lean.years > 0:
        return _limits(record, lean.on, lean.years, is_about=lean.is_about)
    if lean.least >= 0 and lean.most < 3 * YEAR:
        slack = YEAR if lean.most - lean.least > YEAR else HALF_A_YEAR
        return after(of_item(record.id), lean.on, max(lean.least - slack, 0), lean.most + slack)
    if lean.least == 0:  # “no more than seven” is estimated too
        slack = next(most for oldest, most in SLACK if lean.most // YEAR <= oldest) * YEAR
        return after(of_item(record.id), lean.on, 0, lean.most + slack)
    if lean.least > 0:  # a year either side, as of any age that is told
        return after(of_item(record.id), lean.on, lean.least - YEAR, lean.most + YEAR)
    return after(of_item(record.id), lean.on, lean.least, lean.most)


_HERS_ALONE = re.compile(r"\w+(?: \w+)?['’]s [^\W\d_]+")
_COMPARED = re.compile(
    r"\b(?:years?|jahre|aastat|ans|år) (?:older|younger|jünger|älter|noorem|vanem|plus|yngre|äldre|eldre)\b",
    re.IGNORECASE,
)
TAKEN_BACK = re.compile(
    r"\b(?:really|actually|in truth|in fact|in reality|wrongly|mislabel\w*|taken for|"
    r"(?:tiny|small|big|tall|old|young) for "
    r"(?:his|her) age|but (?:she|he|i) was|in wirklichkeit|eigentlich|tatsächlich|tegelikult|en réalité|en realidad|"
    r"i verkligheten|egentlig)\b",
    re.IGNORECASE,
)
"""That what was told of an age is taken back where it is told: “looks about five, but she was really nine”."""
_IT_IS_NOT = re.compile(r"\b(?:(?:is|was)n['’]t|(?:is|was) not) (?:her|him|she|he|me)\b", re.IGNORECASE)
"""That somebody whose age was told is not the one who is in the picture."""
_SAYS = re.compile(
    r"^(?P<who>[\w ]{1,30}?) (?:said|says|thinks|thought|reckons|reckoned) (?:that )?(?=.*\bin th(?:is|at) one\b)",
    re.IGNORECASE,
)
"""Who has said what is told of the picture; what was said without pointing at it may be of any time."""
_I_SAY = re.compile(r"I (?:say|said|think|guess|reckon|believe)\b", re.IGNORECASE)
_SHE = re.compile(r"(?:she|he|er|sie|elle|il|ta|hon|han|hun|hän)\b", re.IGNORECASE)
_HE = re.compile(r"\b(?:he|er|il|han|él|lui)\b", re.IGNORECASE)
_ALSO_SHE = re.compile(r"\b(?:she|sie|elle|hon|hun|ella|lei)\b", re.IGNORECASE)
_OF_HERSELF = re.compile(r"^(?:she|he) (?=(?:was|is|looks)\b)", re.IGNORECASE)
_AGE_ALONE = re.compile(r"(?P<who>[\w'’ ]{1,40}), (?P<age>\d{1,2}|[^\W\d_]+(?:-[^\W\d_]+)?)(?: years old)?\Z")
"""Somebody, and an age without a verb."""
_STAGE = re.compile(
    r"\b(?:as|is|was|am|['’]m) (?:the|a|an) "
    r"(?P<stage>baby|infant|toddler|small child|little girl|little boy)\b(?! of\b)",
    re.IGNORECASE,
)
"""What stands behind such words is not of the age: “the baby in her arms”."""
POINTING = re.compile(
    r"\b(?:here|in th(?:is|at|e) (?:one|picture|photo|photograph)|by the look of (?:it|her|him)|i'd say|i would say|"
    r"i should say|that's|that is|this is|when (?:this|it|the (?:picture|photo|photograph)) was taken|at the time|hier|"
    r"auf diesem bild|das bin|siin|sellel pildil|see olen|ici|aquí|qui|det är|det er|dit ben|to ja)\b,?",
    re.IGNORECASE,
)
"""Words that only point at the picture (common practice, no source)."""
_IS = (
    (re.compile(r"(?:\b(?:must|would|could|might|may|will)|(?<=\w)['’]d) (?:have been|be)\b", re.IGNORECASE), " was"),
    (
        re.compile(
            r"(?<=\bI)(?:['’]m| am) (?=(?:about |only |just )?[\w-]+(?: or [\w-]+)?(?: years old)?"
            r"(?: (?:here|in|on|with|and)\b|,|$))"
        ),
        " was ",
    ),
    (
        re.compile(
            r"(?:(?<=\bhe)|(?<=\bshe))['’]s (?=(?:about |only |just )?[\w-]+(?: here| years old|$|,))", re.IGNORECASE
        ),
        " was ",
    ),
    (re.compile(r"\b(?:only|just|barely) (?=\w+(?: years old)?(?: here)?$)", re.IGNORECASE), ""),
    (re.compile(r"^([\w'’ ]{1,40}?),? about ([\w-]+)$", re.IGNORECASE), r"\1 was about \2"),
    (re.compile(r"\b(\d{1,2}) (?:yrs?|y\.o|v|vk|j|J|a)\.?$"), r"\1 years old"),
    (re.compile(r"^me was\b", re.IGNORECASE), "I was"),
    (re.compile(r"^who(?:['’]s| is| was)\b", re.IGNORECASE), "was"),
    (re.compile(r"\bat (\w+ (?:months?|weeks?))(?: old)?$", re.IGNORECASE), r"was \1 old"),
    (re.compile(r"\b(?:da war|bin) ich\b|\bich bin\b", re.IGNORECASE), "ich war"),
    (re.compile(r"\bolen\b", re.IGNORECASE), "olin"), (re.compile(r"\bj['’]ai (?=\w+ ans)", re.IGNORECASE), "j'avais "),
    (re.compile(r"\bcan(?:'|’)?t be (?:any )?more than\b", re.IGNORECASE), "was no more than"),
    (re.compile(r"\bcannot be (?:any )?more than\b", re.IGNORECASE), "was no more than"),
    (re.compile(r"\b(?:is|be) (?=(?:about |only |just |maybe |perhaps |some )?\w)", re.IGNORECASE), "was "),
    (re.compile(r"\bbetween (\w+) and (\w+)\b", re.IGNORECASE), r"\1 or \2"),
    (re.compile(r"\btiene (?=.*\baños?\b)"), "tenía "), (re.compile(r"\btem (?=.*\banos?\b)"), "tinha "),
    (re.compile(r"\bha (?=.*\bann[oi]\b)"), "aveva "), (re.compile(r"\bär (?=.*\bår\b)"), "var "),
    (re.compile(r"\bist\b"), "war"), (re.compile(r"\bon (?=\w+[ -]?aastane)"), "oli "),
)  # fmt: skip
"""What is told of a picture is told in the present as well; the reader of dates has the past."""


_ME = re.compile(
    r"^(?P<me>(?:(?:that|this|it)(?:['’]s| is) )?(?:me|I|ich|mina|moi|jag|jeg|minä|ik|yo|io))\b", re.IGNORECASE
)
_WITH = re.compile(
    r",? (?:with|mit|koos|avec|con|com|med|met|z)\b(?! (?:about|around))(?=\s+\w).*\Z|"
    r", (?:in|on|at|by|and|but|im|auf|am|bei|und|aber|ja|dans|sur|et|en|och|og|so|also|seega|donc) (?!\w+\Z).*\Z",
    re.IGNORECASE,
)
_IN = re.compile(r" (?:(?:in|im) (?:(?!, ).)*|(?:at|on|bei|auf|zu|à) [^A-ZÄÖÜÕŠŽ,]*)(?=, )")
_AND_MORE = re.compile(r" (?:and|und|ja|et) .*\Z", re.IGNORECASE)
_BESIDE_HER = re.compile(r"\b(?:with|and|beside|holding|mit|und|koos|ja|avec|et)\b", re.IGNORECASE)
_SOMEBODY_ELSE = re.compile(rf"{_BESIDE_HER.pattern}|['’]s\b", re.IGNORECASE)
_SO_I = re.compile(r", (?:so |also |seega |donc )?(?=(?:I|ich|ma|mina|je|j['’])\b)", re.IGNORECASE)
_SHE_IS = re.compile(r", (?=(?:who|she|he|il|elle|er|sie|hon|han|ta)\b)", re.IGNORECASE)


def as_the_reader_has_it(words: str, *, is_of_somebody: bool) -> Iterator[str]:
    """The words as they are told, and as the reader of dates has them. What somebody whom they begin with has with her
    or is in (“me at ten with my first rifle”, “Ivy at her confirmation, fifteen years old”) is not of an age, and is
    left out; and so is whom “he” stands for, where nobody else is told of."""
    yield from _plain_forms(words)
    if is_of_somebody or _ME.search(words):
        shorter = _IN.sub("", _WITH.sub("", words), count=1)
        for form in (shorter, _AND_MORE.sub("", shorter) if _ME.search(words) else shorter):
            if form != words:
                yield from _plain_forms(form)
        for form in whole_ages(words):
            yield from _plain_forms(form)
    for part in _SO_I.split(words)[1:]:
        yield from _plain_forms(part)
    before, *behind = _SHE_IS.split(words, maxsplit=1)
    is_of_another = _SOMEBODY_ELSE.search(before) or (not is_of_somebody and _has_a_subject_of_its_own(before))
    if behind and (not is_of_another or is_an_occasion(before)):
        yield from _plain_forms(behind[0])


def _goes_on_of(sentence: Sentence, person: Person | None) -> bool:
    """Whether “she”, in the sentence behind one, is the only one in the picture: that one tells of nobody else and of
    nothing that has a name (“Peeter in his cap. He was fifteen.”)."""
    before, told = sentence.before, pieces(sentence.before)
    if person is None or not _SHE.match(sentence.words) or len(told) > MOST_BEFORE:
        return False
    own = pieces_of_names([person])
    is_of_her = not own.isdisjoint(told[:2])
    if _SOMEBODY_ELSE.search(before) or not (is_of_her or _OF_HERS.match(before) or is_an_occasion(before)):
        return False
    if not is_of_her and _NAMED_LATER.search(before):
        return False  # “in the garden of Anna Hay”
    return not any(is_noun_of_one(piece) or own_relation(piece) for piece in told if piece not in own)


MOST_BEFORE = 12
"""Words of a sentence behind which “she” is still who it tells of; a longer one tells of more (common practice)."""
_NAMED_LATER = re.compile(r"(?<=\W)[A-ZÄÖÜÕŠŽ][a-zäöüõšžéèëß]+\b")
_OF_HERS = re.compile(
    r"(?:in|on|at|im|am|auf|bei|dans|en|nel|på|i) |(?:his|her|seine?|ihre?|sa|son|su|sus|hans|hennes) "
    r"(?:first|last|new|erste\w*|letzte\w*|neue\w*|premi\w+|primer\w*|nouve\w+|nuev\w+|första|første|nya|nye) |"
    r"the (?:day|year|summer) (?:she|he) ",
    re.IGNORECASE,
)


def _has_a_subject_of_its_own(words: str) -> bool:
    """“The old lady is Mrs Pask”, “the pony is called Rex”: whoever “she” is behind it need not be in the picture."""
    tokens = lex(nfc(words))
    first = words.split(" ")[0].casefold()
    is_led = first in ARTICLES or any("possessive" in token.kinds for token in tokens[:1])
    is_of_a_time = any(token.is_any(_OF_A_TIME) for token in tokens)
    return bool(_WHOLE_NAME.search(words)) or (is_led and not is_of_a_time and bool(_VERB.search(words)))


_WHOLE_NAME = re.compile(r"\b[A-ZÄÖÜÕŠŽ][^\W\d_]+\.? [A-ZÄÖÜÕŠŽ][^\W\d_]+")
_VERB = re.compile(r"\b(?:is|was|were|are|had|has|ist|war|hieß|oli|on|est|était|era|es|är|var|er)\b", re.IGNORECASE)
_OF_A_TIME = frozenset(("unit", "season", "feast"))


def _plain_forms(words: str) -> Iterator[str]:
    yield words
    as_told = words
    if says := _SAYS.search(words):
        words = words[says.end() :]
        if _OF_HERSELF.search(words):  # “Mom said she was twelve in that one”, where she may be in it herself
            yield from _plain_forms(_OF_HERSELF.sub(f"{says['who']} ", words))
    if stage := _STAGE.search(words):
        words = f"{words[: stage.start()].rstrip()} as a {stage['stage']}".strip()
    shorter = POINTING.sub(" ", words).strip(" ,")
    for pattern, instead in _IS:
        shorter = pattern.sub(instead, shorter)
    shorter = " ".join(shorter.split()).strip(" ,")
    if shorter and shorter != as_told:
        yield shorter
    if (alone := _AGE_ALONE.match(shorter)) and any(token.is_any(COUNT) for token in lex(nfc(alone["age"]))):
        yield f"{alone['who']} was {alone['age']}"
