"""Names in words: whether any form of a name stands in a sentence, on a box or in the name of a file.

Rule kept: case, accents and points do not count; a form is found as whole words only; the last word of a form may
carry a case ending (Estonian `Leidalt` is “from Leida”). Which forms somebody has, `core.people.names` says.
"""

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from dataclasses import field as starts

from boxlore.core.statements import fold

SHORTEST_STEM = 4
"""Letters that must be left of a word when an ending is cut off, so that `Annast` is not looked up as `Ann`."""

LONGEST_ENDING = 4

_TOKEN = re.compile(r"[^\W_]+")


def tokens_of(words: str) -> list[str]:
    """The folded words of a text: runs of letters and digits, so that `leida_rourke.jpg` has three."""
    return _TOKEN.findall(fold(words))


@dataclass(frozen=True, slots=True)
class NameForms:
    """Forms of names to look for: each as its folded words, under the first of them."""

    by_first: Mapping[str, tuple[tuple[str, ...], ...]] = starts(default_factory=dict)

    def stand_in(self, tokens: Sequence[str]) -> bool:
        """Whether any of the forms stands in these words (as `tokens_of` gives them)."""
        return bool(self.by_first) and any(self._stands_at(tokens, at) for at in range(len(tokens)))

    def _stands_at(self, tokens: Sequence[str], at: int) -> bool:
        if any((stem,) in self.by_first.get(stem, ()) for stem in stems(tokens[at])):
            return True
        return any(
            len(form) > 1
            and tuple(tokens[at : at + len(form) - 1]) == form[:-1]
            and at + len(form) <= len(tokens)
            and form[-1] in stems(tokens[at + len(form) - 1])
            for form in self.by_first.get(tokens[at], ())
        )


def name_forms(forms: Iterable[str]) -> NameForms:
    """The forms as they are looked for; one without a letter or digit is no form."""
    by_first: dict[str, set[tuple[str, ...]]] = {}
    for form in forms:
        if tokens := tuple(tokens_of(form)):
            by_first.setdefault(tokens[0], set()).add(tokens)
    return NameForms({first: tuple(sorted(whole)) for first, whole in by_first.items()})


def stems(token: str) -> list[str]:
    """The word, and the word with its last 1 to 4 letters cut off while at least four remain.

    So `leidalt` is looked up as `leidalt`, `leidal`, `leida` and `leid`, and `anna` as itself alone.
    """
    most = min(LONGEST_ENDING, len(token) - SHORTEST_STEM)
    return [token, *(token[:-cut] for cut in range(1, most + 1))]
