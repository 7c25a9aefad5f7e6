"""The occasions told so far, which complete what is typed into their prompt: one occasion has one name."""

from itertools import islice

from boxlore.core.statements import fold
from boxlore.tasks.collection.opening import Collection


class OccasionsTold:
    """Read once, in a thread; `heard` adds what is told after that. Before it is read nothing is completed."""

    def __init__(self) -> None:
        self._words: dict[str, str] = {}

    def read(self, collection: Collection) -> None:
        """Read them all."""
        for _, _, words in collection.store.words_of(("occasion",)):
            self.heard(words)

    def heard(self, words: str) -> None:
        """One more was told; it is the first to be offered now."""
        folded = " ".join(fold(words).split())
        if folded:
            self._words[folded] = self._words.pop(folded, words.strip())

    def begun(self, typed: str, limit: int = 8) -> list[str]:
        """Those any word of which begins as what is typed, and that are not just that; the last told first."""
        start = " ".join(fold(typed).split())
        if not start:
            return []
        latest = reversed(list(self._words.items()))
        begun = (words for folded, words in latest if f" {start}" in f" {folded}" and folded != start)
        return list(islice(begun, limit))
