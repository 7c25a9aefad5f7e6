"""What everyone is to the one an album is made for: “Helmi Tamm (Leida's grandmother)”.

Only in what is for the family: a kin term tells how living people are related, so it never goes outside.
"""

from boxlore.core.errors import WrongUse
from boxlore.core.people.kin import Kin, kin_words
from boxlore.core.people.person import Registry, known_names
from boxlore.core.people.who_is_meant import known_by, the_one
from boxlore.core.records.audience import To
from boxlore.core.wording.catalogue import ENGLISH, Say


def kin_to(people: Registry, name: str, to: To, say: Say = ENGLISH) -> dict[str, str]:
    """Kin words by person id, relative to the person of that name; empty where no name is given.

    `people` is the registry as those may know it for whom the album is.
    """
    if not name.strip():
        return {}
    if not to.is_family:
        raise WrongUse("Kin are named only in what is for the family.", "Leave out --kin-of, or add --for family.")
    ego = the_one(known_by(people.values(), name, known_names(people.values())), name)
    if ego is None:
        raise WrongUse(f"There is nobody called “{name.strip()[:60]}” here.", "Write the name as captions have it.")
    kin = Kin(people)
    words_of = ((ident, kin_words(kin, ego, person, say)) for ident, person in people.items())
    return {ident: words.replace("'", "’") for ident, words in words_of if words}
