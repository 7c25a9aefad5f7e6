"""Clues of when a picture was taken that are told in a story or a note by another day: “before the house burned”.

A story tells of much that the picture does not show, so only a sentence counts that says of its picture when it was,
and nothing else: the reader of dates reads all of it (`leaning`), but who is in the picture, who stands before the
time, and what is added behind a comma. Of a sentence that is not the first one must see that it is of the picture
(“taken”, “here”). “He” and “her” are the one in the picture who may be meant. All of it is likely at most.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import islice

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.evidence.ages import POINTING, TAKEN_BACK
from boxlore.core.evidence.claims import Claim, dated, of_item, weaker
from boxlore.core.evidence.events import BESIDE
from boxlore.core.evidence.leaning import Lean, Leaning, pieces, pieces_of_names
from boxlore.core.evidence.occasions import of_lean
from boxlore.core.evidence.sentences import Sentence, teller_of, who_is_shown
from boxlore.core.evidence.told_dates import has_a_year, told
from boxlore.core.evidence.turns_told_table import (
    ANSWERS,
    BETWEEN,
    BUT,
    DURING,
    JUST,
    LATER,
    LATER_AT_ITS_END,
    OF_HERS,
    PRONOUNS,
    SO,
    UNDECIDED,
    YES_OR_NO,
)
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Sure

FIELDS = ("story", "note", "inscription")
MOST_OF_WHO = 3
"""Words that say no more than who is in the picture, where they stand before a comma (common practice, no source)."""
A_WEEK = 7
"""Days either side of a feast that somebody remembers by what happened before it."""
MOST_WAYS = 24
"""So many ways to take a sentence are read at most."""
_SIDES = frozenset(("before", "after"))
_TIMES = _SIDES | {"when", "unit", "season", "feast"}
_BEGINS = _TIMES | frozenset("noise doubt about unit season feast ordinal day few last weekday fraction from".split())
_TAKEN = re.compile(
    rf"{POINTING.pattern}|\b(?:taken|picture|photo\w*|snap\w*|shot|aufgenommen|aufnahme|bild|foto\w*|pilt|pildi\w*|tehtud|prise?|"
    r"(?:this|that|last|first|only|good|best|other|next) (?:\w+ )?one|"
    r"photographie|cliché|tomada|tirada|scattata|tagen|taget|tatt|genomen|otettu|kuva|снят\w?|сделан\w?|zrobione)\b",
    re.IGNORECASE,
)
"""That a sentence is of its picture."""


def clues(record: Record, sentences: Sequence[Sentence], leaning: Leaning) -> Iterator[Claim]:
    shown = who_is_shown(record)
    for sentence in sentences:
        is_told_of_it = sentence.is_first or _TAKEN.search(sentence.words) or _goes_on_with_its_time(sentence)
        if sentence.view.field not in FIELDS or not is_told_of_it or has_a_year(sentence.words):
            continue
        if TAKEN_BACK.search(sentence.view.words) or _is_of_a_thing(sentence.words, leaning):
            continue
        claim = told(sentence.view, f"{record.number}: “{one_line(sentence.words)}”")
        claim = replace(claim, sure=weaker(claim.sure, Sure.LIKELY))
        for lean in _leans(sentence, shown, leaning):
            yield from of_lean(claim, of_item(record.id), _as_remembered(lean))
            if lean.known is not None:
                known = replace(claim, words=f"{claim.words} ({lean.on_words})")
                yield dated(known, of_item(record.id), lean.known, beside=A_WEEK)


def _goes_on_with_its_time(sentence: Sentence) -> bool:
    """“You can see the church. It was after the flood.”: that it was then is of the picture where the sentence before
    tells nothing that happened."""
    is_short = len(pieces(sentence.before)) <= MOST_BEFORE
    return is_short and bool(_IT_WAS_THEN.match(sentence.words)) and not _HAPPENED.search(sentence.before)


MOST_BEFORE = 8
"""Words of a sentence that only says what is to be seen (common practice, no source)."""
_IT_WAS_THEN = re.compile(
    r"(?:it (?:is|was|must (?:be|have been))|es (?:ist|war)|c['’](?:est|était)|era|fue|det (?:är|var|er)|oli)\b",
    re.IGNORECASE,
)
_HAPPENED = re.compile(
    r"\b(?:\w+ed|was|were|had|did|went|came|kept|got|made|took|gave|left|said|told|bought|sold|built|wore|ran|sat|"
    r"stood|war|waren|hatte\w*|ging\w*|kam\w*|oli|olid|était|avait|fue|era|var|hade|havde)\b",
    re.IGNORECASE,
)


def _is_of_a_thing(words: str, leaning: Leaning) -> bool:
    """Whether it is told when something else than the picture was made, bought or given: “the frame is from the year
    of the flood”. What is an event's own (“the mill burned down”) is none."""
    match = _OF_A_THING.match(words)
    return match is not None and not _TAKEN.search(match["what"]) and not leaning.may_name_an_event(match["what"])


_OF_A_THING = re.compile(
    r"(?:the|that|his|her|my|our|their|der|die|das|le|la|el|il|den|det|see|tema|minu) "
    r"(?P<what>[^\W\d_]+(?: [^\W\d_]+)?) (?:(?:is|was|are|were|dates?|comes?|came|ist|war|stammt|stammen|est|était|"
    r"date|es|era|viene|är|var|on|oli|pärineb) (?:only |already |first )?(?:(?:made|bought|given|bound|built|sewn|"
    r"painted|printed|framed|hung|put up|gekauft|gemacht|geschenkt|gebunden|achetée?|faite?|offerte?|comprad[oa]|"
    r"hech[oa]|regalad[oa]|ostetud|tehtud|kingitud) )?(?:from|of|in|before|after|since|aus|von|vom|de|du|des|del|da|"
    r"från|fra|enne|pärast|vor|nach|avant|après|antes|después)\b|(?:stammt|stammen|dates?|date|pärineb)\b)",
    re.IGNORECASE,
)


def _leans(sentence: Sentence, shown: Sequence[str], leaning: Leaning) -> list[Lean]:
    """The days that a sentence leans on, and how; as a rule one, two of “between” and of “after … but before …”."""
    teller = teller_of(sentence.view)
    for pattern, *sides in BETWEEN:
        if match := pattern.search(_ADDED.split(sentence.words)[0]):
            both = [_lean([match.expand(side)], teller, shown, leaning) for side in sides]
            return [lean for lean in both if lean is not None] if all(both) else []
    parts = BUT.split(sentence.words)
    found = [_lean(_ways(part, shown, leaning), teller, shown, leaning) for part in parts]
    return [lean for lean in found if lean is not None] if all(found) else []


def _as_remembered(lean: Lean) -> Lean:
    """How far it lies by memory: a month more either side (`events.BESIDE`), never beyond the day that it leans on."""
    least, most = lean.least, lean.most
    is_after = least is not None and least >= 0 and most != 0
    is_before = most is not None and most <= 0 and least != 0
    if least is not None:
        least = max(least - BESIDE, 0) if is_after else least - BESIDE
    if most is not None:
        most = min(most + BESIDE, -1) if is_before else most + BESIDE  # “before” and “after” one day cannot both be
    return replace(lean, least=least, most=most, known=None)


def _lean(ways: Iterable[str], teller: str, shown: Sequence[str], leaning: Leaning) -> Lean | None:
    """The day that words lean on, and how, in the first way to take them that is a time."""
    for words in islice(ways, MOST_WAYS):
        kinds = [token.kinds for token in lex(nfc(words))]
        if not kinds or _BEGINS.isdisjoint(kinds[0]):
            continue
        has_a_side = any(kind & _SIDES for kind in kinds)
        is_a_time = any(kind & _TIMES for kind in kinds)
        if not is_a_time and not (DURING.search(words) and leaning.may_name_an_event(words)):
            continue
        for lean in leaning.of(words, narrator=teller, shown=shown):
            is_the_birth = (lean.least, lean.most) == (0, 0) or (lean.is_of_calendar and lean.years < 0)
            is_an_age = bool(lean.person) and not has_a_side and not is_the_birth  # `ages` has it
            if not is_an_age and (lean.least, lean.most) != (None, None):
                return lean
    return None


def _ways(words: str, shown: Sequence[str], leaning: Leaning) -> Iterator[str]:
    """The words, and less of them: without who is there, and what is added; each as told and as the reader has it."""
    words = _IT_IS.sub(r"\1 is", YES_OR_NO.sub("", words))
    head, rest = _without_who(words, shown, leaning)
    named = leaning.named(head, pieces(head), "")
    persons = [person for ident in shown if (person := leaning.person(ident)) is not None]
    meant = [person for person in persons if person.id in named] or persons
    behind = [part[led.end() :] for part in words.split(", ")[1:] if (led := SO.search(part))]
    first, *others = words.split(", ")
    if _TAKEN.search(first) or _WHERE.search(first) or _WHERE.search(rest.split(", ")[0]):
        behind += others  # “the first picture at the new house, just after we left the croft”
    if len(first.split()) <= MOST_OF_WHO:
        behind += [part for part in others if LATER_AT_ITS_END.search(part)]  # “Len in uniform, he died a year later”
    for said in dict.fromkeys((words, rest, *behind)):
        for told_so in _with_less(said):
            yield from dict.fromkeys(_as_the_reader_has_it(told_so, meant, head.strip(" ,")))


def _without_who(words: str, shown: Sequence[str], leaning: Leaning) -> tuple[str, str]:
    """Who is in the picture, where words begin with that, and the rest."""
    persons = [person for ident in shown if (person := leaning.person(ident)) is not None]
    names = pieces_of_names(persons)
    ends = 0
    for match in _WORD.finditer(words):
        told_here = match[0].casefold()
        if told_here not in names and told_here not in _JOINED and not own_relation(told_here):
            break
        ends = match.end()
    return words[:ends], words[ends:].lstrip(" ,:–—-")


_WORD = re.compile(r"[^\W\d_]+(?:['’-][^\W\d_]+)*|&")
_JOINED = frozenset("and und ja et y e en och og i и & me us ich wir mich uns mina meie moi nous".split())


def _goes_on(added: str) -> bool:
    """Whether a sentence with a subject of its own follows: “before Dora was born, Mother worked at the mill” tells
    when she worked."""
    first, _, rest = added.partition(" ")
    begins = bool(_SUBJECT.match(first) or own_relation(first)) and not _THINKS.match(rest)
    return begins and bool(rest)


_SUBJECT = re.compile(
    r"(?:I|we|he|she|they|it|you|ich|wir|er|sie|es|ma|me|mina|meie|ta|tema|nad|je|nous|il|elle|ils|yo|nosotros|"
    r"[A-ZÄÖÜÕÉ]\w+)$"
)
_THINKS = re.compile(r"(?:think|guess|believe|reckon|suppose|am|['’]m|glaube|denke|arvan|crois|creo)\b", re.IGNORECASE)
_IT_WAS = re.compile(
    r"(?:this|that|it|must|taken|here|see|das|dies|aufgenommen|ce|c['’]|cette|esto?|questo|det)\b", re.IGNORECASE
)
"""How a sentence begins that is whole before what is added."""
_IT_IS = re.compile(r"^(that|this|it)['’]s\b", re.IGNORECASE)
_WHERE = re.compile(
    r"^(?:on|in|at|by|near|outside|under|behind|with|holding|mit|avec|con|auf|im|an|am|bei|sur|dans|"
    r"à|chez|en)(?: \w+){1,4}$",
    re.IGNORECASE,
)
_ADDED = re.compile(r",\s|\s[–—-]\s|\s\(")


def _with_less(words: str) -> Iterator[str]:
    """The words, and without what is added behind each comma, the last first; not where it leaves open which it was."""
    yield words
    is_whole = bool(_IT_WAS.match(words))
    for match in reversed([*_ADDED.finditer(words)]):
        added = words[match.end() :]
        if UNDECIDED.search(added) or (not is_whole and _goes_on(added)):
            return
        yield words[: match.start()]


def _as_the_reader_has_it(told_so: str, meant: Sequence[Person], called: str) -> Iterator[str]:
    """The words as told, and with the name for “he” and “her”; what is told the other way round as a time."""
    first, blank, rest = told_so.partition(" ")
    within = (
        f"{first.lower() if own_relation(first.lower()) else first}{blank}{rest}"  # “kaks aastat enne kui isa suri”
    )
    turned = [pattern.sub(instead, within) for pattern, instead in (*JUST, *ANSWERS, *LATER) if pattern.search(within)]
    for words in (told_so, *turned):
        yield words
        for sex, pronoun in PRONOUNS.items():
            persons = [person for person in meant if not sex or person.sex in (sex, "", "unknown")]
            if len(persons) == 1 and pronoun.search(words):
                for name in dict.fromkeys((called or persons[0].name.split()[0], persons[0].name)):
                    yield pronoun.sub(name, words)
        if len(meant) == 1:
            for pattern, instead in OF_HERS:
                if pattern.search(words):
                    yield pattern.sub(instead.format(who=meant[0].name), words)
