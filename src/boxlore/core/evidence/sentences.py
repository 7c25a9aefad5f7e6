"""The sentences that are told of a picture, questions left out: of its story, title and notes, and what is said of
somebody with a name."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said

TOLD = ("title", "story", "note", "inscription", "occasion")
LONGEST = 160
"""Letters of a sentence; a longer one tells more than one thing."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sentence:
    """A sentence with the statement that it is of; `is_first` that no other is before it there. `of` is who is told of
    where it stands beside a name."""

    view: StatementView
    words: str
    is_first: bool = True
    of: tuple[str, ...] = ()


_END = re.compile(r"(?<=[.!?;])(?<!\bno\.)(?<!\bnr\.)(?<!\bnum\.)(?<!\bpic\.)\s+|\n+", re.IGNORECASE)


def sentences(record: Record) -> Iterator[Sentence]:
    for name in TOLD:
        for view in record.all(name):
            for at, words in enumerate(_END.split(view.words)):
                plain = " ".join(words.split()).rstrip(".!;")
                if plain and len(plain) <= LONGEST and not plain.endswith("?"):
                    yield Sentence(view=view, words=plain, is_first=at == 0)
    before: tuple[str, ...] = ()
    for shown in record.shown():
        if not shown.person and before:  # “Isaac Saar, about twelve” is told as two names
            words = f"{before[0]}, {' '.join(shown.told.words.split())}"
            yield Sentence(view=shown.told, words=words, of=(before[1],))
        before = (shown.name, shown.person) if shown.person else ()
        if shown.person and shown.told.words != shown.name and len(shown.told.words) <= LONGEST:
            yield Sentence(view=shown.told, words=" ".join(shown.told.words.split()), of=(shown.person,))


def who_is_shown(record: Record) -> tuple[str, ...]:
    """The ids of everybody in a picture, empty for somebody who is in no registry."""
    return tuple(shown.person for shown in record.shown())


def teller_of(view: StatementView) -> str:
    return view.source.ref if view.source.said is Said.NARRATOR else ""
