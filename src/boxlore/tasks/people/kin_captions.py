"""What everyone is to the one an album is made for: “Helmi Tamm (Leida's grandmother)”.

Only in what is for the family: a kin term tells how living people are related, so it never goes outside.
"""

from boxlore.core.errors import WrongUse
from boxlore.core.people.kin import Kin, kin_words
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.audience import To
from boxlore.core.statements import fold


def kin_to(people: Registry, name: str, to: To) -> dict[str, str]:
    """Kin words by person id, relative to the person of that name; empty where no name is given.

    `people` is the registry as those may know it for whom the album is.
    """
    if not name.strip():
        return {}
    if not to.is_family:
        raise WrongUse("Kin are named only in what is for the family.", "Leave out --kin-of, or add --for family.")
    ego = _one(list(people.values()), name)
    kin = Kin(people)
    words_of = ((ident, kin_words(kin, ego, person)) for ident, person in people.items())
    return {ident: words.replace("'", "’") for ident, words in words_of if words}


def _one(people: list[Person], name: str) -> Person:
    """The person of a name: by the whole name or a full form of it, else by a call name that only one goes by."""
    asked = fold(name.strip())
    whole = [person for person in people if asked in {fold(form) for form in (person.name, *person.forms)}]
    matches = whole or [person for person in people if asked in {fold(call) for call in person.calls}]
    if not matches:
        raise WrongUse(f"There is nobody called “{name[:60]}” here.", "Write the name as captions have it.")
    if len(matches) > 1:
        named = ", ".join(sorted(person.name for person in matches)[:6])
        raise WrongUse(f"“{name[:60]}” may be {named}.", "Write the whole name.")
    return matches[0]
