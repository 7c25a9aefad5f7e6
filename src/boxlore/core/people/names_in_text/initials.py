"""By which initials somebody is known: of all names, of the first and the family's, and of two given names alone.

A given name alone is no initial: one letter is a word of many languages. Whoever is married may be known by the family
name of the other too (`G. M. W.` of Grace May Hill, who married a Winter).
"""

from collections.abc import Iterable, Iterator

from boxlore.core.people.names_in_text.inflections import key_of
from boxlore.core.people.names_in_text.text_normalising import read_text, script_of
from boxlore.core.people.person import Person


def letter_key(letter: str) -> str:
    """The Latin letter by which the first letter of a name is known in every script: `Я` and `J` are both `i`."""
    return key_of(letter, script_of(letter))[:1] or letter


def is_initial_of(letter: str, name_letter: str) -> bool:
    """Whether a folded letter may be the first of a name that begins with another, in its own script or in another."""
    if script_of(letter) == script_of(name_letter):
        return letter == name_letter
    return letter_key(letter) == letter_key(name_letter)


def initials_of(person: Person, letters: tuple[str, ...], family_letters: Iterable[str]) -> Iterator[str]:
    """Every run of letters that may stand for somebody whose given names begin with `letters`; `family_letters` are
    those of the family names, of one or more letters each."""
    given = "".join(map(letter_key, letters))
    if len(given) > 1:
        yield given
    for ending in {*family_letters} - {""}:
        yield from {f"{part}{ending}" for part in (given, given[:1]) if part}
    for call in person.calls:  # `ML` for Maarja-Liis, who is called by both names
        double = [letter_key(word.folded[0]) for word in read_text(call).words]
        if "-" in call and len(double) > 1:
            yield "".join(double)
