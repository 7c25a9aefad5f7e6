"""Who may not be named to somebody, worked out once for each output, with every form of their names.

Rule kept: from outside the living are withheld unless they have consented to be named, and whoever has not consented
to be shown is not shown; of whom contradictions are told neither is done, for two people may stand in one entry. From
each audience is withheld whom the keeper keeps from it.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from boxlore.core.people.consent import Matter, allows, is_taken_back
from boxlore.core.people.names_in_text.finder import NameFinder, name_finder
from boxlore.core.people.names_in_text.search import Hit
from boxlore.core.people.person import Person
from boxlore.core.records.audience_levels import To, may_see
from boxlore.core.records.kin_of_tellers import KinOfTellers
from boxlore.core.records.living import Life
from boxlore.core.records.name_answers import NOTHING_DECIDED, Decided


@dataclass(frozen=True, slots=True)
class Withheld:
    """The people who may not be named, and those who may be named but not shown (`hidden_pictures`), by their ids.

    Someone whose entries were merged stands in both with every id; `first_ids` has the first of each. `finder` knows
    the names of the whole registry: who may be named explains a name that somebody withheld bears too. `whole_names`
    are the names in full, as they are spelled, for a search of bytes; but for those which the keeper has allowed in
    some place, for bytes tell no places.
    """

    people: frozenset[str] = frozenset()
    hidden_pictures: frozenset[str] = frozenset()
    first_ids: frozenset[str] = frozenset()
    finder: NameFinder | None = None
    finder_of_shown: NameFinder | None = None
    """Knows the names of those who may not be shown, whether they may be named or not."""
    kin_of_tellers: KinOfTellers | None = None
    """Knows whom of them a teller tells by kin alone."""
    by_answer: frozenset[str] = frozenset()
    """The first ids of those who may be named, but whom the keeper has answered to hide in some place."""
    finder_of_answers: NameFinder | None = None
    """Knows the names of these."""
    decided: Decided = NOTHING_DECIDED
    never_named: frozenset[str] = frozenset()
    """The ids of those whom no answer of the keeper lets out: they took consent back, or are kept from the audience."""
    whole_names: frozenset[str] = frozenset()

    @property
    def count(self) -> int:
        """How many people are withheld, each counted once."""
        return len(self.first_ids)

    def hits(self, words: str, item: str = "", where: str = "") -> Sequence[Hit]:
        """Every place of the words that names somebody withheld, or may, but for what the keeper has allowed.

        `item` (id) and `where` say of which part of a record they are; without, they are any text.
        """
        hits = self.decided.left(self.finder.hits(words), words, item, where) if self.finder else ()
        if not self.finder_of_answers or not item:
            return hits
        return [*hits, *self.decided.hidden(self.finder_of_answers.hits(words), words, item, where)]

    def hits_of_kin(self, words: str, teller: str, item: str, where: str) -> Sequence[Hit]:
        """Every place where the words of a teller (id) who is named point by kin to somebody withheld alone."""
        hits = self.kin_of_tellers.hits(words, teller) if self.kin_of_tellers else ()
        return self.decided.left(hits, words, item, where)

    def hits_of_shown(self, words: str, item: str = "", where: str = "") -> Sequence[Hit]:
        """Every place of words about what a picture shows that names somebody who may not be shown, or may."""
        return self.decided.left(self.finder_of_shown.hits(words), words, item, where) if self.finder_of_shown else ()

    def surely_finds(self, words: str) -> bool:
        """Whether any text surely names somebody withheld, whatever the keeper has decided of such a place."""
        return self.finder is not None and any(not hit.doubt for hit in self.finder.hits(words))

    def finds(self, words: str, item: str = "", where: str = "") -> bool:
        """Whether the words name somebody withheld, or may: what is in doubt is withheld until it is decided."""
        return bool(self.hits(words, item, where))


NOBODY = Withheld()


def withhold(
    people: Iterable[Person],
    lives: Mapping[str, Life],
    to: To,
    on_day: date | None = None,
    decided: Decided = NOTHING_DECIDED,
) -> Withheld:
    """Whom to withhold from that audience on that day; without a day nothing closed has opened yet.

    `lives` tells of each person, by the first id, who counts as living; it is asked only for outside. `decided` is
    what the keeper has decided of places that name somebody.
    """
    everyone, day = list(people), on_day or date.min
    hidden = [person for person in everyone if _is_hidden(person, lives, to, day)]
    never = _ids(person for person in hidden if _is_never_named(person, to, day))
    decided = decided.closed_to(never)
    not_shown = [person for person in everyone if _is_not_shown(person, lives, to)]
    by_answer = decided.hidden_somewhere - _ids(hidden) if to.is_public else frozenset()
    answered = frozenset(person.id for person in everyone if not by_answer.isdisjoint(person.ids))
    if not hidden and not not_shown and not answered:
        return NOBODY
    neither = frozenset(person.id for person in (*hidden, *not_shown))
    return Withheld(
        people=_ids(hidden),
        hidden_pictures=_ids(not_shown),
        first_ids=frozenset(person.id for person in hidden),
        finder=name_finder(tuple(everyone), frozenset(person.id for person in hidden)) if hidden else None,
        finder_of_shown=name_finder(tuple(everyone), neither),
        by_answer=answered,
        kin_of_tellers=KinOfTellers(everyone, frozenset(person.id for person in hidden)) if hidden else None,
        finder_of_answers=name_finder(tuple(everyone), answered) if answered else None,
        decided=decided,
        never_named=never,
        whole_names=frozenset(
            name
            for person in hidden
            if person.id not in decided.named_somewhere
            for name in (*person.forms, person.name)
            if " " in name
        ),
    )


def _ids(people: Iterable[Person]) -> frozenset[str]:
    return frozenset(ident for person in people for ident in person.ids)


def _is_hidden(person: Person, lives: Mapping[str, Life], to: To, on_day: date) -> bool:
    if _is_kept_from(person, to, on_day):
        return True
    return to.is_public and _is_kept_back(person, lives[person.id], Matter.NAME)


def _is_never_named(person: Person, to: To, on_day: date) -> bool:
    return _is_kept_from(person, to, on_day) or (to.is_public and is_taken_back(person.consents, Matter.NAME))


def _is_kept_from(person: Person, to: To, on_day: date) -> bool:
    kept_for = (person.audience, *person.also_audiences)
    return any(kept != "anyone" and not may_see(kept, to, on_day) for kept in kept_for)


def _is_not_shown(person: Person, lives: Mapping[str, Life], to: To) -> bool:
    return to.is_public and _is_kept_back(person, lives[person.id], Matter.PICTURE)


def _is_kept_back(person: Person, life: Life, matter: Matter) -> bool:
    return bool(life.contradiction) or (life.living and not allows(person.consents, matter))
