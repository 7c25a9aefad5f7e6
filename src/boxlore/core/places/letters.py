"""In which countries a name lies by the letters that it is written with: `Rømø` not in Italy, `Łazy` not in Spain."""

from collections.abc import Iterable

from boxlore.core.places.letters_table import LETTERS

_LANDS = {letter: frozenset(lands.split()) for letters, lands in LETTERS.items() for letter in letters}


def lands_of_letters(names: Iterable[str]) -> frozenset[str]:
    """The countries that all such letters of the names have; none where the names have none."""
    lands = [_LANDS[letter] for name in names for letter in name.casefold() if letter in _LANDS]
    return frozenset.intersection(*lands) if lands else frozenset()
