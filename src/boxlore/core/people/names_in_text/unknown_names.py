"""Names that were told of who is somewhere and were made nobody: where other words hold one of them.

The problem. Nobody knows the bearer of such a name, so it may be any words: `Xanthe Brannock`, `Tamsin Quill`, `Batsman
Brown`, `Port Chalmers School`. Sought by its parts as other names are, an English one would be found in every sentence
of brown horses; not sought at all, somebody living leaves.

The rule.

- The whole name is a hit in any case and order that names have: `tamsin_quill.jpg`, `Quill, Tamsin`, `T. Quill`.
- A part that is no English word is one too: `Tamsin`. Beside an English part it must be written like a name.
- An English part alone is one only where a sentence makes it large for no other reason: `with Quill`, not `Quill
  pens`, nor `Elsie Quill`, who is another. Where it is a given name, `Grace`, it is sought as those of everybody are.
- Of a name told with a title or a word of kin alone, of somebody living (`Dr Raghunathan`, `Auntie Bev`), the name is
  sought without the title too, if it is no English word.
- What begins with a word that is nobody's given name, but English or a title (`Port Chalmers School`, `Dean King`), is
  sought word for word only.

All of this is of our own.
"""

from collections.abc import Iterable, Iterator, Sequence
from hashlib import sha256

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names.words_table import PARTICLES, TITLES
from boxlore.core.people.names_in_text.finder import name_finder
from boxlore.core.people.names_in_text.hits import Hit
from boxlore.core.people.names_in_text.names_of_the_living import name_alone
from boxlore.core.people.names_in_text.ordinary_words import english_words, is_english
from boxlore.core.people.names_in_text.text_normalising import Text, Word, read_text
from boxlore.core.people.person import Person, build_person
from boxlore.core.statements import Kind, Statement, Subject, fold

_ENDINGS = ("s", "es", "ed", "ing")
"""What stands behind an English word that the list has without it: `boys`."""

_ENDS_A_SENTENCE = ".!?:;\n"


class UnknownNames:
    """Seeks `told`, the names of nobody known, in words, and those of the `living`; `everyone` are the people of the
    registry."""

    def __init__(self, everyone: Iterable[Person], told: Iterable[str], living: Iterable[str] = ()) -> None:
        living = set(living)
        titled = {words: read_text(words).words for words in sorted(living) if len(name_alone(words).split()) == 1}
        told = {*told, *living} - titled.keys()
        names = {words: _without_title(read_text(words).words) for words in sorted(told)}
        sought = {words: parts for words, parts in names.items() if _is_written_as_a_name(parts)}
        by_part = [words for words, parts in sought.items() if _is_by_part(parts)]
        self._word_for_word = [_folded(parts) for words, parts in sought.items() if words not in by_part]
        self._word_for_word += map(_folded, titled.values())
        self._mixed = frozenset(
            word.folded for words in by_part for word in sought[words] if any(map(_is_english, _folded(sought[words])))
        )
        self._given = frozenset(sought[words][0].folded for words in by_part) & CALLED
        ends = ((parts[-1], parts[0]) for parts in titled.values() if not _is_english(parts[-1].folded))
        strangers = (
            *map(_nobody, by_part),
            *(_nobody(end.spelled, "family" if begin.folded in TITLES else "given") for end, begin in ends),
        )
        ids = frozenset(person.id for person in strangers)
        self._finder = name_finder((*everyone, *strangers), ids) if strangers else None

    def __bool__(self) -> bool:
        return bool(self._word_for_word or self._finder)

    def places_in(self, words: str) -> list[tuple[int, int]]:
        """(start, end) of each of the names in words, and of each part that may stand for one."""
        hits = self._finder.hits(words) if self._finder else ()
        if not hits and not self._word_for_word:
            return []
        text = read_text(words)
        places = {(hit.start, hit.end) for hit in hits if self._counts(text, hit)}
        places.update(_places_of(self._word_for_word, text))
        return [place for place in sorted(places) if not any(_holds(other, place) for other in places)]

    def _counts(self, text: Text, hit: Hit) -> bool:
        """Whether what a finder of names has found is more than an English word that a name has too."""
        within = [at for at, word in enumerate(text.words) if hit.start < word.end and word.start < hit.end]
        words = [text.words[at] for at in within]
        long = [word for word in words if len(word.folded) > 1]
        if all(_is_english(word.folded) for word in long):
            is_given = len(long) == 1 and long[0].folded in self._given
            return is_given or (_stands_as_a_name(text, within, long) and not self._is_anothers(text, within[0]))
        is_large = text.is_one_case or any(_is_large(word) or word.folded in CALLED for word in words)
        return len(long) > 1 or is_large or self._mixed.isdisjoint(_folded(long))

    def _is_anothers(self, text: Text, at: int) -> bool:
        """Whether a given name that none of these names begins with stands right before."""
        before = text.words[at - 1] if at else None
        is_joined = before is not None and text.words[at].before == " " and _is_large(before)
        return is_joined and before is not None and before.folded in CALLED - self._given - TITLES


def _nobody(words: str, field: str = "name") -> Person:
    ident = f"unknown {sha256(fold(words).encode()).hexdigest()}"
    named = Statement(id="", act="", subject=Subject(Kind.PERSON, ident), field=field, words=words, recorded_at="")
    return build_person(ident, [(named, None)])


def _folded(words: Iterable[Word]) -> tuple[str, ...]:
    return tuple(word.folded for word in words)


def _without_title(words: Sequence[Word]) -> Sequence[Word]:
    """A name of two words and more without the titles before it; `Earl` is a given name too."""
    start = next((at for at, word in enumerate(words) if word.folded not in TITLES - CALLED), len(words))
    return words[start:] if len(words) > start + 1 else words


def _is_written_as_a_name(parts: Sequence[Word]) -> bool:
    """Whether a name has two words and more, each written large or in letters that are never."""
    own = [word for word in parts if word.folded not in PARTICLES]
    return len(own) > 1 and all(word.spelled[0].isalpha() and _is_large(word) for word in own)


def _is_by_part(parts: Sequence[Word]) -> bool:
    """Whether one part may stand for the whole: the first is a given name, or no English word and no title."""
    first = parts[0].folded
    return first in CALLED or not (_is_english(first) or first in TITLES)


def _is_english(folded: str) -> bool:
    stems = (folded.removesuffix(ending) for ending in _ENDINGS)
    return is_english(folded) or any(stem in english_words() for stem in stems)


def _is_large(word: Word) -> bool:
    return not word.spelled[0].islower()


def _stands_as_a_name(text: Text, within: Sequence[int], words: Sequence[Word]) -> bool:
    """Whether English words are written here as only names are.

    Several are where each is large, or all letters of the text are alike; one where it is large behind other words of
    its sentence.
    """
    if len(words) > 1:
        return text.is_one_case or all(map(_is_large, words))
    first = text.words[within[0]]
    behind = bool(within[0]) and not any(sign in first.before for sign in _ENDS_A_SENTENCE)
    return all(map(_is_large, words)) and not text.is_one_case and (behind or len(within) > 1)


def _holds(longer: tuple[int, int], place: tuple[int, int]) -> bool:
    return longer != place and longer[0] <= place[0] and place[1] <= longer[1]


def _places_of(names: Iterable[Sequence[str]], text: Text) -> Iterator[tuple[int, int]]:
    """Where one of the names stands in the text word for word; one of English words alone is written large there."""
    folded = _folded(text.words)
    for name in names:
        for at in range(len(folded) - len(name) + 1):
            if folded[at : at + len(name)] == tuple(name):
                words = text.words[at : at + len(name)]
                if not all(map(_is_english, name)) or all(map(_is_large, words)):
                    yield words[0].start, words[-1].end
