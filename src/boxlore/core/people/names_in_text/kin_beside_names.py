"""Somebody told without a name, by a word of kin beside the name of another: `the son of August Tamm`, `Leida's boy`.

Where the registry knows one living person alone who is that to the one named, the words point to nobody else, and are a
question. The kin word stands behind the name with at most two words between, or before it with none but `of` and its
like. Words that are not only of kin (`boy`, `youngest`) count where something says whose: `Leida's`, `with her`.

The words of kin are those by which families tell (`words_table.KIN_WORDS`); the rest of the words is from memory.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cache

from boxlore.core.people.kin import Kin
from boxlore.core.people.names.words_table import KIN_WORDS, PARTICLES
from boxlore.core.people.names_in_text.hits import Doubt, Hit
from boxlore.core.people.names_in_text.inflections import cyrillic_forms, key_of, latin_forms
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, CYRILLIC, Word, script_of
from boxlore.core.people.person import Person

SHORTEST_IN_A_FORM = 4
"""Letters of a word of kin that is known with an ending too."""
FAR = 3
"""So far behind the name a word of kin may stand, in words."""

_NOT_ONLY_KIN = {
    "son": "boy lad laddie youngest eldest oldest firstborn child baby kid poiss poisike laps lapsuke pesamuna мальчик "
    "мальчуган ребенок дитя младший старший chlopiec dziecko lapsi poju kind junge enfant barn",
    "daughter": "girl lass lassie youngest eldest oldest firstborn child baby kid tudruk piiga laps lapsuke pesamuna "
    "девочка ребенок дитя младшая старшая dziewczynka dziecko lapsi tytto kind madchen enfant barn",
    "wife": "widow bride lesk вдова wdowa leski",
    "husband": "widower groom",
    "brother": "twin",
    "sister": "twin",
}
_OWNS = frozenset(
    "his her their its tema ta nende oma его ее их свои своим своеи jego jej ich swoim hanen sein ihr son sa".split()
)
"""What says between a name and a word that it is the named one's."""
_OF = PARTICLES | frozenset("of the to from little only youngest eldest".split())
"""What may stand between a word of kin and the name behind it."""
_ENDS = ".!?;:\n"


class KinOfHidden:
    """Who is what to whom in a registry, as far as it leads to one of `hidden` (ids)."""

    def __init__(self, people: Iterable[Person], hidden: frozenset[str]) -> None:
        by_id = {ident: person for person in people for ident in person.ids}
        kin = Kin({person.id: person for person in by_id.values()})
        self._hidden = hidden
        self._sex = {ident: person.sex[:1].lower() for ident, person in by_id.items()}
        self._of: dict[tuple[str, str], set[str]] = {}
        for ident in hidden & by_id.keys():
            self._relate(kin, ident)

    def __bool__(self) -> bool:
        return bool(self._of)

    def one(self, named: str, relations: Iterable[str]) -> str:
        """The one hidden who is that to the one named; '' where nobody is, or several are."""
        are = set().union(*(self._of.get((named, relation), ()) for relation in relations))
        return are.pop() if len(are) == 1 else ""

    def _relate(self, kin: Kin, ident: str) -> None:
        parents, siblings, children = kin.parents(ident), kin.siblings(ident), kin.children(ident)
        self._add(ident, (*parents, *kin.raised_by(ident)), "son", "daughter")
        self._add(ident, children, "father", "mother")
        self._add(ident, siblings, "brother", "sister")
        self._add(ident, kin.spouses(ident), "husband", "wife")
        self._add(ident, (each for parent in parents for each in kin.parents(parent)), "grandson", "granddaughter")
        self._add(ident, (each for child in children for each in kin.children(child)), "grandfather", "grandmother")
        self._add(ident, (each for parent in parents for each in kin.siblings(parent)), "nephew", "niece")
        self._add(ident, (each for sibling in siblings for each in kin.children(sibling)), "uncle", "aunt")
        spouses = kin.spouses(ident)
        self._add(ident, (each for spouse in spouses for each in kin.parents(spouse)), "son-in-law", "daughter-in-law")

    def _add(self, ident: str, to: Iterable[str], man: str, woman: str) -> None:
        """Note what somebody is to others; both where the sex is not told."""
        words = {"m": (man,), "f": (woman,)}.get(self._sex[ident], (man, woman))
        for named in to:
            for word in words:
                self._of.setdefault((named, word), set()).add(ident)


Reference = tuple[int, int, str]
"""The numbers of the first and the last word of a name, and whose it is."""


def kin_beside(kin: KinOfHidden, words: Sequence[Word], names: Iterable[Reference]) -> Iterator[Hit]:
    """The one hidden whom a word of kin beside one of the names points to."""
    for first, last, named in names:
        for at, is_owned in (*_behind(words, last), *_before(words, first)):
            relations = relations_of(words[at], is_owned=is_owned)
            if relations and (pointed := kin.one(named, relations)):
                start, end = words[min(at, first)].start, words[max(at, last)].end
                yield Hit(start, end, frozenset((pointed,)), Doubt.KIN)


def _behind(words: Sequence[Word], last: int) -> Iterator[tuple[int, bool]]:
    """(number of a word, whether something says that it is the named one's) behind a name, up to another name."""
    is_owned = bool(APOSTROPHES.search(words[last].spelled))
    for at in range(last + 1, min(last + 1 + FAR, len(words))):
        if any(sign in words[at].before for sign in _ENDS):
            return
        yield at, is_owned
        if words[at].spelled[0].isupper():
            return
        is_owned = is_owned or words[at].folded in _OWNS


def _before(words: Sequence[Word], first: int) -> Iterator[tuple[int, bool]]:
    is_owned = False
    for at in range(first - 1, max(-1, first - 1 - FAR), -1):
        if any(sign in words[at + 1].before for sign in _ENDS):
            return
        yield at, is_owned
        if words[at].folded not in _OF:
            return
        is_owned = True


def relations_of(word: Word, *, is_owned: bool = False) -> tuple[str, ...]:
    """The relations that a word tells, also in a form of a sentence and with `'s`."""
    stems = {word.folded, APOSTROPHES.split(word.folded)[0]}
    if _is_cyrillic(word.folded):
        stems = {key_of(stem, CYRILLIC) for stem in stems}
    tables = (_kin_forms(), _others()) if is_owned else (_kin_forms(),)
    return tuple(relation for table in tables for stem in stems for relation in table.get(stem, ()))


@cache
def _kin_forms() -> Mapping[str, tuple[str, ...]]:
    return _with_endings((word, relation) for word, relation in KIN_WORDS.items())


@cache
def _others() -> Mapping[str, tuple[str, ...]]:
    return _with_endings((word, relation) for relation, words in _NOT_ONLY_KIN.items() for word in words.split())


def _with_endings(rows: Iterable[tuple[str, str]]) -> Mapping[str, tuple[str, ...]]:
    """Each form of a word with its relations; a word as it is goes before another one with an ending."""
    forms: dict[str, set[str]] = {}
    told = [(key_of(word, CYRILLIC) if _is_cyrillic(word) else word, _is_cyrillic(word), kin) for word, kin in rows]
    for word, _, relation in told:
        forms.setdefault(word, set()).add(relation)
    as_told = frozenset(forms)
    for word, is_cyrillic, relation in told:
        made = cyrillic_forms(word) if is_cyrillic else latin_forms(word)
        for form in made - as_told if len(word) >= SHORTEST_IN_A_FORM or is_cyrillic else ():
            forms.setdefault(form, set()).add(relation)
    return {form: tuple(sorted(relations)) for form, relations in forms.items()}


def _is_cyrillic(word: str) -> bool:
    return script_of(word[0]) == CYRILLIC
