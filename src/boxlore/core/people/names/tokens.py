"""The words of a name as tokens, each with what it is besides a name: a title, a kin word, a particle, an initial."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.given_names_table import FURTHER_GIVEN
from boxlore.core.people.names.lists_table import GIVEN, SHORTENED_GIVEN
from boxlore.core.people.names.short_forms_table import SHORT_FORMS
from boxlore.core.statements import fold

_INITIALS = re.compile(r"(?:[^\W\d_]\.[- ]?)+[^\W\d_]?\.?")
_NAME = re.compile(r"[^\W\d_]")
_IN_THE = re.compile(r"(?<= )(in|op) ('t|’t|de|der|den)(?= )")
"""Dutch particles of two words that are no particles alone."""
_OF_THE = re.compile(r"\b(Mac|Mhac|Mag|Nic|Ní|Mhic|Uí|Ó) (Giolla|an|na|’n|'n)(?= )")
"""Irish families of an office or a trade: `Mac an Bháird`, son of the bard."""

_DOTTED = re.compile(r"(?<=\.)(?=[^\W\d_]{2})")


CALLED = GIVEN.union(FURTHER_GIVEN.split(), *SHORT_FORMS)
"""Every known given name and pet form, folded."""


@dataclass(frozen=True, slots=True)
class Token:
    """One word as told, and `plain`: folded, without points, with a straight apostrophe."""

    text: str
    plain: str

    @property
    def is_small(self) -> bool:
        """Whether no letter of it is large: `von`, but not `d'Estaing` (letters without case are not small)."""
        return self.text.islower()

    @property
    def is_capitals(self) -> bool:
        """Whether it is written in capitals throughout, and is more than initials."""
        return len(self.plain) > 2 and self.text.isupper() and not self.is_initial

    @property
    def is_initial(self) -> bool:
        """`J.`, `J.R.`, or one letter alone."""
        return (len(self.plain) == 1 and not self.is_small) or (
            "." in self.text and _INITIALS.fullmatch(self.text) is not None
        )

    @property
    def is_given(self) -> bool:
        """Whether it is a known given name or pet form, or two joined by a hyphen (`Aino-tädi` too)."""
        if self.text.endswith(".") and self.plain in SHORTENED_GIVEN:
            return True  # `Wm.`
        first, *further = self.plain.split("-")
        return first in CALLED and all(part in CALLED or part in words_of.KIN_BEHIND for part in further)

    @property
    def is_particle(self) -> bool:
        """A small word inside a family name, written small, also shortened: `v. d. Heide`."""
        return self.text in ("v.", "d.", "v.d.") or (
            self.is_small and (self.plain in words_of.PARTICLES or "\u00a0" in self.text)
        )

    @property
    def is_filiation(self) -> bool:
        """Son of, daughter of, written small."""
        return self.is_small and self.plain in words_of.FILIATION

    @property
    def has_article(self) -> bool:
        """Whether it begins with the Arabic article."""
        return self.plain.startswith(words_of.ARTICLES) or self.text.startswith("ال")

    @property
    def is_describing(self) -> bool:
        """A word of a description, or one with a possessive: no part of a name."""
        plain = self.plain
        describes = self.is_small and plain in words_of.DESCRIBING and not self.is_particle
        return describes or plain.endswith(("'s", "s'")) or not _NAME.search(plain)


def tokens_of(words: str) -> tuple[Token, ...]:
    """The tokens of a name; `Dr.Pell` is two."""
    bound = _OF_THE.sub("\\1\u00a0\\2", _IN_THE.sub("\\1\u00a0\\2", words))
    pieces = (piece for word in bound.split(" ") for piece in _DOTTED.split(word))
    return tuple(token for piece in pieces if (token := token_of(piece.strip(",;:"))).plain)


@lru_cache(maxsize=16384)
def token_of(text: str) -> Token:
    """One word."""
    told = text.replace("ª", "").replace("º", "")  # `Mª`, short for María
    return Token(text, fold(told).replace("’", "'").replace("ʻ", "'").replace(".", ""))


def written(tokens: Iterable[Token]) -> str:
    """The tokens as told, with a blank between two."""
    return " ".join(token.text for token in tokens).replace("\u00a0", " ")


def first_word(token: Token) -> str:
    """The word under which a marker that begins with this token is looked up: `o` for `o.s.`."""
    return fold(token.text).partition(".")[0]


def starts_with(tokens: Sequence[Token], words: str) -> int:
    """How many tokens the words (folded, parted by blanks) take at the beginning of `tokens`; 0 if they are not there.

    Points part as blanks do: `o.s.` is `o s` of the table, written together.
    """
    together = fold(tokens[0].text).rstrip(".")
    if "." in together and together.replace(".", " ") == words:
        return 1
    wanted = words.split()
    return len(wanted) if [token.plain for token in tokens[: len(wanted)]] == wanted else 0
