"""Words of a text that may be a name, with what stands beside them: what `speaks_for_people` weighs."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from boxlore.core.people.names.words_table import KIN_WORDS, PARTICLES, TITLES
from boxlore.core.people.names_in_text import words_beside_names_table as beside
from boxlore.core.people.names_in_text.borne_names import family_of, given_of, places
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, languages_with
from boxlore.core.people.names_in_text.known_words_table import KNOWN
from boxlore.core.people.names_in_text.languages_told import is_any_told, languages_told
from boxlore.core.people.names_in_text.ordinary_words import is_english
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, Word
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary

_OWNER = re.compile(rf"{APOSTROPHES.pattern}s?$")
_PLURALS = ("s", "ы", "ых", "ым", "owie", "skich", "scy", "set", "sten", "ов")
"""How families end in the plural, and in its cases."""
_SENTENCE_BEGINS = '.!?:;\n"“„«('
_QUOTES = {"“": "”", "„": "“”", "«": "»", '"': '"', "»": "«", "‘": "’", "‚": "‘"}
_OPENED = re.compile(r"([“„«»\"‘‚])[^“”„«»\"]{0,40}$")
_NEAR = 40
"""Letters behind a name in which a quotation ends."""


@dataclass(frozen=True)
class Candidate:
    """Words `first` to `last` of a text, that may be a name."""

    told: str
    words: Sequence[Word]
    first: int
    last: int

    @cached_property
    def bare(self) -> list[str]:
        """The words, folded, without the ending of whose something is."""
        return [_OWNER.sub("", word.folded) for word in self.words[self.first : self.last + 1]]

    @cached_property
    def is_owner(self) -> bool:
        """Whether something is said to be theirs."""
        last = self.words[self.last]
        if _OWNER.search(last.folded):
            return True
        return last.folded.endswith("s") and APOSTROPHES.match(self.told, last.end) is not None

    @cached_property
    def led(self) -> str:
        """The word right before, folded."""
        at = self.words[self.first]
        return self.words[self.first - 1].folded if self.first and at.before in (" ", "\u00a0", "-", "_", ". ") else ""

    @cached_property
    def behind(self) -> list[Word]:
        """The words right behind, as far as blanks alone part them."""
        found: list[Word] = []
        for word in self.words[self.last + 1 : self.last + 4]:
            if word.before not in (" ", "-", "_", "\u00a0"):
                break
            found.append(word)
        return found

    @cached_property
    def begins(self) -> bool:
        """Whether a sentence begins with it."""
        return not self.first or any(sign in self.words[self.first].before for sign in _SENTENCE_BEGINS)

    @cached_property
    def languages(self) -> frozenset[str]:
        """Of which the sentence may be; none where nothing tells."""
        told = languages_told(self.words, self.first)
        return told if is_any_told(told) else frozenset()

    @cached_property
    def is_alone(self) -> bool:
        """Whether it is one word."""
        return self.first == self.last

    @cached_property
    def family(self) -> str:
        """The family name that the last word is, or a form of."""
        return family_of(self.bare[-1])

    @cached_property
    def given(self) -> str:
        """The given name that the first word is, or a form of."""
        return given_of(self.bare[0])

    @cached_property
    def is_word(self) -> bool:
        """Whether the first word is one of a language that the sentence may be of; where nothing tells one, English."""
        bare = self.bare[0]
        return is_english(bare) or is_ordinary(bare) or bool(languages_with(bare, self.languages))

    @cached_property
    def is_ambiguous(self) -> bool:
        """Whether nothing tells the language, and the first word is one of some language."""
        if self.languages or not is_known_anywhere(self.bare[0]):
            return False
        then = self.behind[0].folded if self.behind else ""
        having = languages_with(self.bare[0], KNOWN)
        return not then or bool(languages_with(then, having)) or not is_known_anywhere(then)

    @cached_property
    def place(self) -> bool:
        """Whether all of it is what a place is called."""
        return "_".join(self.bare) in places()

    @cached_property
    def many(self) -> bool:
        """Whether it is a family name in the plural."""
        return self.is_alone and self.bare[0].endswith(_PLURALS) and bool(self.family) and self.family != self.bare[0]

    @cached_property
    def quoted(self) -> bool:
        """Whether quotation marks stand around it."""
        start, end = self.words[self.first].start, self.words[self.last].end
        opened = _OPENED.search(self.told, 0, start)
        return opened is not None and any(mark in self.told[end : end + _NEAR] for mark in _QUOTES[opened[1]])

    @cached_property
    def is_borne(self) -> bool:
        """Whether the words before it lead to a family, with particles of its name between: `Familie van Dijk`."""
        before = [word.folded for word in self.words[max(0, self.first - 3) : self.first]]
        while len(before) > 1 and before[-1] in PARTICLES:
            before.pop()
        return bool(before) and before[-1] in beside.OF_FAMILIES and bool(self.led)

    @cached_property
    def work(self) -> bool:
        """Whether the words before it lead to what was written, played or sung: `School play: …`, `A copy of …`."""
        leads = [word.folded for word in self.words[max(0, self.first - 3) : self.first]]
        while leads and (leads[-1] in TITLES or leads[-1] in KIN_WORDS):
            leads.pop()
        is_led = bool(leads) and (
            leads[-1] in beside.WORKS or (leads[-1] in beside.OF and not beside.WORKS.isdisjoint(leads[:-1]))
        )
        return is_led or (self.quoted and any(_is_work(word.folded) for word in self.words))


def _is_work(folded: str) -> bool:
    return folded in beside.WORKS or folded.endswith(beside.WORKS_END)
