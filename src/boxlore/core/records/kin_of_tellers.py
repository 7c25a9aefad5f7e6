"""Somebody living whom a teller tells by a word of kin alone: `my brother`, `Mum`, `Grandma's youngest`.

Where the words say who tells them, and the registry knows one living person alone who is that to the teller, they point
to nobody else, and are a question. Where the teller is not named they point to nobody: a narrator has a brother.
"""

from collections.abc import Sequence

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import KIN_ALONE, TITLES
from boxlore.core.people.names_in_text.hits import Doubt, Hit
from boxlore.core.people.names_in_text.kin_beside_names import KinOfHidden, kin_beside, relations_of
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, Word, read_text
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_where.position_words_table import MY_OWN


class KinOfTellers:
    """Finds those of `hidden` (ids) whom a teller tells by kin. Its tables are made at the first question."""

    def __init__(self, everyone: Sequence[Person], hidden: frozenset[str]) -> None:
        self._everyone, self._hidden = everyone, hidden
        self._kin: tuple[KinOfHidden, KinOfHidden] | None = None

    def hits(self, words: str, teller: str) -> list[Hit]:
        """Where the words of a teller (id) point to one of the hidden alone."""
        text = read_text(words)
        own = [(at, relations) for at, word in enumerate(text.words) if (relations := _own(text.words, at))]
        if not own:
            return []
        if self._kin is None:
            everybody = frozenset(person.id for person in self._everyone)
            self._kin = KinOfHidden(self._everyone, self._hidden), KinOfHidden(self._everyone, everybody)
        hidden, all_kin = self._kin
        teller = next((person.id for person in self._everyone if teller in person.ids), "")
        meant = [(at, all_kin.one(teller, relations)) for at, relations in own]
        hits = list(kin_beside(hidden, text.words, ((at, at, ident) for at, ident in meant if ident)))
        for at, relations in own:
            if pointed := hidden.one(teller, relations):
                word = text.words[at]
                hits.append(Hit(word.start, word.end, frozenset((pointed,)), Doubt.KIN))
        return hits


def _own(words: Sequence[Word], at: int) -> tuple[str, ...]:
    """The relations that a word tells of the teller's own kin: behind `my`, or one that stands for a name, `Mum`, but
    beside none: `Aunt Mavis`, `Mr Brother`."""
    before = words[at - 1].folded if at and words[at].before.isspace() else ""
    stem = APOSTROPHES.split(words[at].folded)[0]
    is_name = stem in KIN_ALONE and words[at].spelled[0].isupper() and before not in TITLES | CALLED
    if at + 1 < len(words) and words[at + 1].before == " " and words[at + 1].spelled[0].isupper():
        is_name = False
    return relations_of(words[at]) if is_name or before in MY_OWN else ()
