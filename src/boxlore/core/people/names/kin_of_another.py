"""Kin told by whose it is, which is nobody's name: `oncle de Pierre`, `Sohn vom Bäcker`, `moglie di Luigi`.

    kin of another = kin that nobody is called by, "of", a word written large        ; moglie di Luigi, Sohn vom Bäcker
                   / other kin, "of", a given name                                   ; oncle de Pierre, Oma van Piet

`Tante de Vries` is an aunt by her family name: whom a family calls by the word of kin is told by that too.
"""

from collections.abc import Sequence

from boxlore.core.people.names.tokens import Token
from boxlore.core.people.names.words_table import KIN_WORDS

_OF = frozenset("de du d' di do da del della dello van von vom of til till av af".split())
_NOT_CALLED_SO = frozenset(
    ("wife", "husband", "son", "daughter", "sister", "brother", "nephew", "niece", "grandson", "granddaughter",
     "brother-in-law", "sister-in-law", "son-in-law", "daughter-in-law", "fiancee")
)  # fmt: skip
_SHORTEST = 3


def is_kin_of_another(tokens: Sequence[Token]) -> bool:
    """Whether the words, without an article before them, tell somebody by whose kin that one is."""
    if len(tokens) < _SHORTEST or (not tokens[0].is_small and tokens[0].is_given):
        return False
    kin = KIN_WORDS.get(tokens[0].plain)
    of, name = tokens[1], tokens[2]
    is_named = all(token.is_particle or not token.is_small for token in tokens[2:]) and not tokens[-1].is_small
    is_of = of.is_small and of.plain in _OF and is_named
    return kin is not None and is_of and (kin in _NOT_CALLED_SO or name.is_given)
