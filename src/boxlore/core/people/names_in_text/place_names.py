"""Whether a name is a part of the name of a place: `Graham Land`, `Tamme tänaval`, `Mont Blanc`, `Albergo Fiore`.

Rule kept: somebody may stand in a street, so that `Mari tänaval`, `Dans la rue Pierre joue` are of a person. A word of
a place that is written small counts only behind a name in another form than the first, or before `of`. Words of places
by their kinds, from memory of each language (common practice, no source).
"""

from collections.abc import Sequence

from boxlore.core.people.names.words_table import TITLES
from boxlore.core.people.names_in_text.named_after_table import CROWNED_OR_HOLY
from boxlore.core.people.names_in_text.text_normalising import Word

_BEHIND = frozenset(
    "river street road avenue terrace crescent quay wharf bay island islands land peninsula glacier strait railway "
    "station hotel hospital college university theatre cathedral museum county shire harbour harbor basin airport "
    "cemetery tanav maantee strasse rue gardens arcade".split()
)
"""Behind the name, written large."""
_STREETS_BEHIND = ("tanav", "maantee", "puiestee", "iela", "gatve")
"""How words of streets begin that stand behind the genitive of the name, small too, with whatever ending."""
_BEFORE = frozenset(
    "mount mt cape lake port fort loch st river san santa sao saint ss rms hms hmnzs tss mv "
    "mont monte puerto porto lac lago capo cabo sierra isla ile isola pico cerro "
    "hotel albergo gasthof gasthaus cafe kohvik kahvila kawiarnia kavarna restaurant ristorante "
    "trattoria pension pensione pensao teatro theater kino cinema".split()
)
"""Before the name, written large."""
_HOLY = frozenset("saint sainte st ste sankt".split())
"""Before the name of somebody holy, and joined to it: `la Saint-Jean`."""
_OF_PLACES = frozenset(
    "rue avenue boulevard quai calle avenida plaza rua puerto port porto lac lago rio isla ile isola sierra monte "
    "mont".split()
)
"""Before `of` and the name, small too."""
_PLACES = frozenset(("place", "port"))
"""What a place is, before `of` and its name: `Place de la République`."""
_OF = frozenset("de di du del da do".split())


def is_of_a_place(words: Sequence[Word], at: int) -> bool:
    """Whether a word written large is a part of a place's name, of a ship's with her letters, or of somebody holy's."""
    before = words[at - 1] if at and words[at].before in (" ", ". ") else None
    is_titled = before is not None and before.folded in TITLES
    if (
        at + 1 < len(words)
        and words[at + 1].before in (" ", "-")
        and not is_titled
        and _is_large(words[at + 1], _BEHIND)
    ):
        return True
    behind = words[at + 1] if at + 1 < len(words) and words[at + 1].before == " " else None
    if behind is not None and words[at].folded in _PLACES and behind.is_small and behind.folded in _OF:
        return True
    is_joined = at > 0 and words[at].before == "-" and not words[at - 1].is_small
    if is_joined and words[at - 1].folded in _HOLY:
        return True
    if before is None:
        return False
    if before.folded in CROWNED_OR_HOLY and words[at].before == " ":
        return True
    is_ship = at > 1 and [word.spelled for word in words[at - 2 : at]] == ["S", "S"]
    if is_ship or _is_large(before, _BEFORE):
        return True
    return at > 1 and words[at - 1].before == " " and before.folded in _OF and words[at - 2].folded in _OF_PLACES


def is_of_a_street(words: Sequence[Word], at: int) -> bool:
    """`Tamme tänaval`, of a name in another form than the first."""
    behind = words[at + 1] if at + 1 < len(words) and words[at + 1].before == " " else None
    return behind is not None and behind.folded.startswith(_STREETS_BEHIND)


def _is_large(word: Word, kinds: frozenset[str]) -> bool:
    return word.folded in kinds and word.spelled[0].isupper()
