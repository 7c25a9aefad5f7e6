"""Ages as they stand beside a name among those who are in a picture: “Dora (3)”, “Leonard, 10 yrs”, “Ellen c. 40”.

Each is made one sentence, which the reader of ages has (`ages`). The name may be told as no more than words, “Una 9”:
then it must be one person's who is known. Numbers that count the names, from 1 on, are no ages.
"""

import re
from collections.abc import Iterator

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.evidence.leaning import Leaning, pieces, pieces_of_names
from boxlore.core.evidence.sentences import Sentence, is_somebody
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.records.item_record import Record

_WORD = re.compile(r"[^\W\d_]+(?:['’-][^\W\d_]+)*")
_CALLED = frozenset("baby young little wee small our my".split())
_MARKS = " ,;:()[]–—-"
_LEAD = re.compile(
    r"^(?:(?P<about>(?:about|around|c|ca|circa|nearly|almost|maybe|perhaps|say|would (?:be|have been)|"
    r"must (?:be|have been)|"
    r"(?:i['’]d|i would) say|i think|umbes|etwa|ungefähr|environ|unos|omtrent|circa|cirka|noin)\b\.? ?)|"
    r"(?:who (?:was|is)|was|is|aged?|at|when (?:she|he) was|only|just|then)\b ?)+",
    re.IGNORECASE,
)
_UNITS = (
    (
        re.compile(r"^(\w+(?: or \w+)?|a few|some) ?(?:mths?|mos?|months?)\b\.?(?: old)?$", re.IGNORECASE),
        r"\1 months old",
    ),
    (re.compile(r"^(\w+(?: or \w+)?|a few|some) ?(?:wks?|weeks?)\b\.?(?: old)?$", re.IGNORECASE), r"\1 weeks old"),
    (re.compile(r"^(\w+(?: or \w+)?) ?(?:yrs?|y\.?o|years?)\b\.?(?: old| of age)?$", re.IGNORECASE), r"\1 years old"),
    (re.compile(r"^(\w+ or \w+|\w+)(?: and a half)?(?: here| then)?$"), r"\1"),
)
_STAGE = re.compile(r"^as an? .+$|^newborn$", re.IGNORECASE)
_COUNT = frozenset(("day",))


def told_beside_names(record: Record, leaning: Leaning) -> Iterator[Sentence]:
    rows = [(shown, one_line(shown.told.words)) for shown in record.shown()]
    numbers = [int(match[1]) for _, words in rows if (match := re.search(r"[ (](\d{1,3})\)?$", words))]
    if len(numbers) > 1 and sorted(numbers) == list(range(1, len(numbers) + 1)):
        return
    yield from _inscribed(record, leaning)
    before: Person | None = None
    for shown, words in rows:
        person = leaning.person(shown.person) or _only_one(words, leaning)
        rest = _behind(words, person) if person is not None else ""
        if person is None and before is not None and not is_somebody(words):
            person, rest = before, words
        if person is not None and (told := _as_told(person.name, rest)):
            yield Sentence(view=shown.told, words=told, of=(person.id,))
        before = person


_BY_AN_INITIAL = re.compile(r"^(?P<initial>[^\W\d_])\. ?(?P<name>[^\W\d_]+),? (?P<rest>aged? .+)$")


def _inscribed(record: Record, leaning: Leaning) -> Iterator[Sentence]:
    """“R. Marsh aged 14” on the back, where she alone is in the picture."""
    persons = [leaning.person(shown.person) for shown in record.shown()]
    only = persons[0] if len(persons) == 1 else None
    for view in record.all("inscription") if only is not None else ():
        match = _BY_AN_INITIAL.match(one_line(view.words))
        if (
            only
            and match
            and match["name"].casefold() in pieces_of_names([only])
            and only.name.startswith(match["initial"])
        ):
            yield Sentence(view=view, words=_as_told(only.name, match["rest"]), of=(only.id,))


def _only_one(words: str, leaning: Leaning) -> Person | None:
    named = [*leaning.named(words, pieces(words), "").values()]
    return named[0] if len(named) == 1 else None


def _behind(words: str, person: Person) -> str:
    """What stands behind the name and words of kin with which words begin."""
    names = pieces_of_names([person])
    ends = 0
    for match in _WORD.finditer(words):
        said = match[0].casefold()
        if words[ends : match.start()].strip() or not (
            said in names or said in _CALLED or own_relation(said) not in ("", "self")
        ):
            break
        ends = match.end()
    return words[ends:]


def _as_told(name: str, rest: str) -> str:
    """`Dora was about 3`; empty where no age is left when what leads it is taken away."""
    rest = rest.strip(_MARKS)
    if _STAGE.match(rest):
        return f"{name} {rest}"
    lead = _LEAD.match(rest)
    age = rest[lead.end() :] if lead else rest
    for pattern, instead in _UNITS:
        if pattern.match(age) and any(token.is_any(_COUNT) for token in lex(nfc(age))):
            about = "about " if lead and lead["about"] else ""
            return f"{name} was {about}{pattern.sub(instead, age)}"
    return ""
