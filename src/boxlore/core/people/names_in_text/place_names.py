"""Whether a name is a part of the name of a place: `Graham Land`, `Kivi tänava nurgal`, `Mont Blanc`, `Albergo Fiore`.

Words of places by their kinds, from memory of each language (common practice, no source). Which of them stand before
the name, which behind it, and which of them small as well, is what the tables tell apart.
"""

from collections.abc import Sequence

from boxlore.core.people.names.words_table import TITLES
from boxlore.core.people.names_in_text.text_normalising import Word

_BEHIND = frozenset(
    "river street road avenue terrace crescent quay wharf bay island islands land peninsula glacier strait railway "
    "station hotel hospital college university theatre cathedral museum county shire harbour harbor basin airport "
    "cemetery tanav maantee strasse rue gardens arcade".split()
)
"""Behind the name, written large."""
_STREETS_BEHIND = ("tanava", "tanav", "maantee", "puiestee", "katu", "kadu", "gatan", "iela", "gatve", "utca", "ulica")
"""How words of streets begin that stand behind the name, small too, with whatever ending."""
_BEFORE = frozenset(
    "mount mt cape lake port fort loch st river san santa sao saint ss rms hms hmnzs tss mv "
    "mont monte puerto porto lac lago cap capo cabo rio sierra isla ile isola pico cerro "
    "via viale piazza corso hotel albergo gasthof gasthaus cafe kohvik kahvila kawiarnia kavarna restaurant ristorante "
    "trattoria pension pensione pensao teatro theater kino cinema".split()
)
"""Before the name, written large."""
_STREETS_BEFORE = frozenset(
    "rue avenue boulevard quai calle avenida plaza rua praca ulica ulicy ulice ulici ulicu улица улице улицы улицу "
    "вулиця вулиці".split()
)
"""Before the name, small too."""
_OF = frozenset("de di du del da do".split())
"""What may stand between a word of a place, small too, and the name."""

_BEFORE_HOLY = frozenset("ave salve virgin blessed queen emperor tsar pope".split())
"""Before `Maria`, `Mary` and `Victoria` nobody of the family is meant."""


def is_of_a_place(words: Sequence[Word], at: int) -> bool:
    """Whether a word written large is a part of a place's name, of a ship's with her letters, or of somebody holy's."""
    before = words[at - 1] if at and words[at].before in (" ", ". ") else None
    is_titled = before is not None and before.folded in TITLES
    if at + 1 < len(words) and words[at + 1].before in (" ", "-") and not is_titled and _is_behind(words[at + 1]):
        return True
    if before is None:
        return False
    if before.folded in _BEFORE_HOLY and words[at].before == " ":
        return True
    is_ship = at > 1 and [word.spelled for word in words[at - 2 : at]] == ["S", "S"]
    is_large = before.spelled[0].isupper()
    if is_ship or before.folded in _STREETS_BEFORE or (is_large and before.folded in _BEFORE):
        return True
    kind = words[at - 2].folded if at > 1 and words[at - 1].before == " " and before.folded in _OF else ""
    return kind in _STREETS_BEFORE or kind in _BEFORE


def _is_behind(word: Word) -> bool:
    return (word.folded in _BEHIND and word.spelled[0].isupper()) or word.folded.startswith(_STREETS_BEHIND)
