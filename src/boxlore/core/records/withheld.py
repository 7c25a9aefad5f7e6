"""Who may not be named to somebody, worked out once for each output, with every form of their names.

Rule kept: from outside the living are withheld unless they have consented to be named, and whoever has not consented
to be shown is not shown; from each audience is withheld whom the keeper keeps from it.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from dataclasses import field as starts
from datetime import date

from boxlore.core.people.consent import Matter, allows
from boxlore.core.people.names import sought_forms
from boxlore.core.people.names_in_words import NameForms, name_forms, tokens_of
from boxlore.core.people.person import Person
from boxlore.core.records.audience_levels import To, may_see
from boxlore.core.records.living import Life
from boxlore.core.statements import fold


@dataclass(frozen=True, slots=True)
class Withheld:
    """The people who may not be named, and those who may be named but not shown (`hidden_pictures`), by their ids.

    Someone whose entries were merged stands in both with every id. `forms` are all forms of all their names;
    `by_person` the same for each alone, under the first of the ids; `whole_names` the names in full, as they are
    spelled, for a search of bytes.
    """

    people: frozenset[str] = frozenset()
    forms: NameForms = starts(default_factory=NameForms)
    hidden_pictures: frozenset[str] = frozenset()
    by_person: Mapping[str, NameForms] = starts(default_factory=dict)
    whole_names: frozenset[str] = frozenset()

    @property
    def count(self) -> int:
        """How many people are withheld, each counted once."""
        return len(self.by_person)

    def finds(self, words: str) -> bool:
        """Whether the words hold any form of a withheld name (case, accents and points aside, whole words)."""
        return bool(self.forms) and self.forms.stand_in(tokens_of(words))

    def named_in(self, words: str) -> frozenset[str]:
        """Whose names stand in the words, by the first id of each.

        In words that hold a withheld name, a family name alone may mean anyone withheld who bears it.
        """
        tokens = tokens_of(words) if self.forms else []
        if not self.forms.stand_in(tokens):
            return frozenset()
        return frozenset(ident for ident, forms in self.by_person.items() if forms.stand_in(tokens))


NOBODY = Withheld()


def withhold(people: Iterable[Person], lives: Mapping[str, Life], to: To, on_day: date | None = None) -> Withheld:
    """Whom to withhold from that audience on that day; without a day nothing closed has opened yet.

    `lives` tells of each person, by the first id, who counts as living; it is asked only for outside.
    """
    everyone = list(people)
    hidden = [person for person in everyone if _is_hidden(person, lives, to, on_day or date.min)]
    not_shown = [person for person in everyone if _is_not_shown(person, lives, to)]
    if not hidden and not not_shown:
        return NOBODY
    by_id = {ident: person for person in everyone for ident in person.ids}
    sought = {person.id: _forms_of(person, by_id) for person in hidden}
    own = _own_surnames(everyone, hidden)
    return Withheld(
        people=_ids(hidden),
        forms=name_forms(form for person in hidden for form in sought[person.id] | own[person.id]),
        hidden_pictures=_ids(not_shown),
        by_person={person.id: name_forms(sought[person.id] | set(map(fold, person.surnames))) for person in hidden},
        whole_names=frozenset(name for person in hidden for name in (*person.forms, person.name) if " " in name),
    )


def _ids(people: Iterable[Person]) -> frozenset[str]:
    return frozenset(ident for person in people for ident in person.ids)


def _is_hidden(person: Person, lives: Mapping[str, Life], to: To, on_day: date) -> bool:
    if person.audience != "anyone" and not may_see(person.audience, to, on_day):
        return True
    return to.is_public and lives[person.id].living and not allows(person.consents, Matter.NAME)


def _is_not_shown(person: Person, lives: Mapping[str, Life], to: To) -> bool:
    return to.is_public and lives[person.id].living and not allows(person.consents, Matter.PICTURE)


def _own_surnames(everyone: Iterable[Person], hidden: Iterable[Person]) -> dict[str, set[str]]:
    """Of each hidden person the family names that nobody who may be named bears: they point to her even alone."""
    hidden_ids = {person.id for person in hidden}
    nameable = [person for person in everyone if person.id not in hidden_ids]
    shared = {fold(name) for person in nameable for name in (*person.surnames, *person.name.split()[-1:])}
    return {person.id: set(map(fold, person.surnames)) - shared for person in hidden}


def _forms_of(person: Person, by_id: Mapping[str, Person]) -> set[str]:
    """Every form someone would be found by; a wife also as “Mrs Tom Rourke”."""
    forms = sought_forms((*person.forms, person.name), person.calls, person.surnames)
    if person.sex[:1].lower() != "m":
        for spouse in (by_id[ident] for ident in person.spouses if ident in by_id):
            for name in (spouse.name, *spouse.forms):
                forms |= {f"mrs {fold(name)}", f"mrs. {fold(name)}"} if "," not in name else set()
    return forms
