"""Names in words: whether any form of a name stands in a sentence, on a box or in the name of a file.

Rule kept: case, accents and points do not count; a form is found as whole words only; the last word of a form may
carry a case ending (Estonian `Leidalt` is “from Leida”). Which forms somebody has, `core.people.names` says.
"""

import re
import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from dataclasses import field as starts

from boxlore.core.statements import fold

SHORTEST_STEM = 4
"""Letters that must be left of a word when an ending is cut off, so that `Annast` is not looked up as `Ann`."""

LONGEST_ENDING = 4

_TOKEN = re.compile(r"[^\W_]+")


def tokens_of(words: str) -> list[str]:
    """The folded words of a text: runs of letters and digits, so that `leida_rourke.jpg` has three.

    Characters that nobody sees (soft hyphens, zero-width spaces, direction marks: category Cf of the Unicode
    Standard, 4.5) are passed over first: a name with one inside it is the same name to whoever reads it.
    """
    if not words.isascii():
        words = "".join(letter for letter in words if unicodedata.category(letter) != "Cf")
    return _TOKEN.findall(fold(words))


@dataclass(frozen=True, slots=True)
class NameForms:
    """Forms of names to look for, as folded words: those of one word, and the longer ones under the first of theirs."""

    alone: frozenset[str] = frozenset()
    longer: Mapping[str, tuple[tuple[str, ...], ...]] = starts(default_factory=dict)

    def __bool__(self) -> bool:
        return bool(self.alone or self.longer)

    def stand_in(self, tokens: Sequence[str]) -> bool:
        """Whether any of the forms stands in these words (as `tokens_of` gives them)."""
        if any(not self.alone.isdisjoint(stems(token)) for token in tokens):
            return True
        return any(token in self.longer and self._stands_at(tokens, at) for at, token in enumerate(tokens))

    def _stands_at(self, tokens: Sequence[str], at: int) -> bool:
        for *first, last in self.longer[tokens[at]]:
            end = at + len(first)
            if end < len(tokens) and first == list(tokens[at:end]) and last in stems(tokens[end]):
                return True
        return False


def name_forms(forms: Iterable[str]) -> NameForms:
    """The forms as they are looked for; one without a letter or digit is no form."""
    words = {tuple(tokens_of(form)) for form in forms} - {()}
    longer: dict[str, tuple[tuple[str, ...], ...]] = {}
    for form in sorted(form for form in words if len(form) > 1):
        longer[form[0]] = (*longer.get(form[0], ()), form)
    return NameForms(frozenset(form[0] for form in words if len(form) == 1), longer)


def stems(token: str) -> list[str]:
    """The word, and the word with its last 1 to 4 letters cut off while at least four remain.

    So `leidalt` is looked up as `leidalt`, `leidal`, `leida` and `leid`, and `anna` as itself alone.
    """
    most = min(LONGEST_ENDING, len(token) - SHORTEST_STEM)
    return [token, *(token[:-cut] for cut in range(1, most + 1))]
