"""The sentences that are told of a picture, questions left out: of its story, title and notes, and what is said of
somebody with a name."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from boxlore.core.dates.ages import STAGES
from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.people.who_is_where.item_words import is_noun_of_one
from boxlore.core.people.who_is_where.small_words_table import ARTICLES
from boxlore.core.records.item_record import PersonShown, Record, StatementView
from boxlore.core.statements import Said, fold

TOLD = ("title", "story", "note", "inscription", "occasion")
LONGEST = 160
"""Letters of a sentence; a longer one tells more than one thing."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sentence:
    """A sentence with the statement that it is of; `is_first` that no other is before it there, and `before` what the
    one before it says. `of` is who is told of where it stands beside a name; `as_told` what was told, where `words` are
    a part of it or put otherwise."""

    view: StatementView
    words: str
    is_first: bool = True
    of: tuple[str, ...] = ()
    before: str = ""
    as_told: str = ""


_END = re.compile(r"(?<=[.!?;])(?<!\bno\.)(?<!\bnr\.)(?<!\bnum\.)(?<!\bpic\.)\s+|\n+", re.IGNORECASE)


def sentences(record: Record) -> Iterator[Sentence]:
    for name in TOLD:
        for view in record.all(name):
            said = ""
            for at, (plain, is_denied) in enumerate(_told(view.words)):
                if plain and len(plain) <= LONGEST and not plain.endswith("?") and not is_denied:
                    yield Sentence(view=view, words=plain, is_first=at == 0, before=said)
                said = plain
    before: tuple[str, ...] = ()
    for shown in record.shown():
        words = " ".join(shown.told.words.split())
        if not shown.person and before and not is_somebody(words):  # “Isaac Saar, about twelve” is told as two names
            yield Sentence(view=shown.told, words=f"{before[0]}, {_with_its_number(shown, words)}", of=(before[1],))
        before = (shown.name, shown.person) if shown.person else ()
        if shown.person and shown.told.words != shown.name and len(shown.told.words) <= LONGEST:
            yield Sentence(view=shown.told, words=words, of=(shown.person,))


def _with_its_number(shown: PersonShown, words: str) -> str:
    """“Helga, 9-aastane” may be told as two in a row, the second of whom has the number 9."""
    count = shown.number or shown.position
    is_an_age = bool(count) and any(token.is_any(_UNITS) for token in lex(nfc(words))[:1])
    return f"{count}{' ' if words.endswith('.') else '-'}{words}" if is_an_age else words


_UNITS = frozenset(("years_old", "unit", "at_years"))
_DENIAL = re.compile(
    r"(?:[\w'’-]+ ){0,4}(?:not|never|no|nonsense|\w+n['’]t|nicht|nie|mitte|pas)(?: (?:so|true|right|wahr|vrai))?",
    re.IGNORECASE,
)
"""Few words that end in a denial (“it was not”, “maybe not”); ours, common practice, no source."""


def _told(words: str) -> Iterator[tuple[str, bool]]:
    """Each sentence, and whether it is denied by its own last words or by how the one behind it begins."""
    plain = [" ".join(sentence.split()).rstrip(".!;") for sentence in _END.split(words)]
    for sentence, behind in pairwise((*plain, "")):
        _, *parts = sentence.split(", ")
        yield sentence, any(map(_DENIAL.fullmatch, (*parts, behind.split(", ")[0])))


def has_something_denied(words: str) -> bool:
    return any(is_denied for _, is_denied in _told(words))


def is_somebody(words: str) -> bool:
    """Whether words without a name tell of one more person (“a baby”, “her toddler”, “a boy of about ten”), and not
    only how old the one before them is (“about ten”, “in her thirties”): the age in them is nobody's with a name."""
    tokens = lex(nfc(words))
    told = fold(words).split()
    is_led = not ARTICLES.isdisjoint(told[:1]) or any("possessive" in token.kinds for token in tokens[:1])
    if is_led and not any("years_old" in token.kinds for token in tokens[1:2]):  # “ein Jahr alt” is an age
        return True
    return any(token.is_any(STAGES) for token in tokens) or any(map(is_noun_of_one, _WORD.findall(words)))


_WORD = re.compile(r"[^\W\d_]+")


def who_is_shown(record: Record) -> tuple[str, ...]:
    """The ids of everybody in a picture, empty for somebody who is in no registry."""
    return tuple(shown.person for shown in record.shown())


def teller_of(view: StatementView) -> str:
    return view.source.ref if view.source.said is Said.NARRATOR else ""
